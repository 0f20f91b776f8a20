"""Whole Spanish messages: long logs, regional voices, plans with efforts, signs and questions in more words."""
# ruff: noqa: E501

from tests.corpus.lines import Theme
from tests.corpus.notation import sets

THEME = Theme("whole", "es")
say = THEME.say
WED = {"at": "2027-03-10 19:00", "tz": "Europe/Madrid"}
DIPS = "m/weighted_pull_up pull_up 4x4 +20 @8; a dip 3x6 +15 @8"
RUNG = "s/archer_shoulder archer_ring_shoulder LR 2x2 @7; m/weighted_pull_up pull_up 4x3 +27.5 @8"
LEVER = "s/advanced_tuck_front_lever advanced_tuck_front_lever 4x8s @8; m/weighted_pull_up pull_up 4x6 +15 @7"

say("dominadas @8, fondos @7, todo hecho", "pull_up 4x4 +20 last@8; dip 3x6 +15 last@7", today=DIPS)
say("todo, solo la segunda de fondos fueron 5", "pull_up 4x4 +20; dip 6,5,6 +15", today=DIPS)
say("solo las dominadas, sin tiempo para fondos", "pull_up 4x4 +20", today=DIPS)
say("con 2,5 kg menos en todo, lo demás según plan", "pull_up 4x4 +17.5; dip 3x6 +12.5", today=DIPS)
say("hoy nada, mucho lío en el trabajo", "", "missed", dates="2027-03-10", today=DIPS, **WED)
say(
    "arqueras 2/2 y 2/1, dominadas 3,3,3,2",
    "archer_ring_shoulder LR 2; archer_ring_shoulder LR 2/1; pull_up 3,3,3,2 +27.5",
    today=RUNG,
)
say(
    "arqueras @6, dominadas como estaba",
    "archer_ring_shoulder LR 2; archer_ring_shoulder LR 2 @6; pull_up 4x3 +27.5",
    today=RUNG,
)
say(
    "front lever 8,8,7,6 segundos, dominadas hechas",
    "advanced_tuck_front_lever 8s,8s,7s,6s; pull_up 4x6 +15",
    today=LEVER,
)
say("front lever hecho, dominadas solo 3 series", "advanced_tuck_front_lever 4x8s; pull_up 3x6 +15", today=LEVER)
say(
    "fallé la última rep de la última serie de dominadas, lo demás bien",
    "advanced_tuck_front_lever 4x8s; pull_up 3x6 +15; pull_up 5 +15 fail",
    today=LEVER,
)
say(
    "hecho",
    "",
    "report",
    ask="sets: hecho",
    also=(
        {"intents": ["smalltalk"], "performed_on": None, "ask": []},
        {"intents": ["unknown"], "performed_on": None, "ask": []},
    ),
)
say(
    "Martes:\nPeso 72,2\nSueño 7h\nDominadas 4x4 +22,5, la última @8\nFondos 3x8 +10\nHollow 3x30s\n65 min, sesión RPE 7\nCodo derecho por dentro 1/10 después",
    "pull_up 4x4 +22.5 last@8; dip 3x8 +10; hollow_hold 3x30s",
    pain="elbow_inner R 1 after",
    bw=72.2,
    sleep=7,
    mins=65,
    srpe=7,
    on="2027-03-09",
    body=72.0,
    **WED,
)
say(
    "A supinas 4x5 +15\nB fondos en anillas 4x6\nC hollow hold 3x40s",
    "chin_up 4x5 +15; ring_dip 4x6; hollow_hold 3x40s",
)
say(
    "día de test! máximo en dominadas: 45 ok, 47,5 ok, 50 fallada", "pull_up 1 +45; pull_up 1 +47.5; pull_up 0 +50 fail"
)
say("ocho dominadas limpias seguidas, primera vez!!", "pull_up 8")
say("dominadas 20 kg 3x5, fondos 30 kg 3x5", "pull_up 3x5 +20; dip 3x5 +30")
say("dominadas con chaleco de 8kg 3x6", "pull_up 3x6 +8")
say("dominadas 1x5 +10, 1x5 +15, 3x5 +20", "pull_up 5 +10; pull_up 5 +15; pull_up 3x5 +20")
say(
    "a un brazo libre, dominadas. Izquierda: 2, 2, 1. Derecha: 2, 1, 1.",
    "one_arm_pull_up L 2,2,1; one_arm_pull_up R 2,1,1",
)
say(
    "contrapeso 10 kg a un brazo, der 3 izq 2, luego con 7,5 kg der 2 izq 1",
    "one_arm_counterweight R 3 -10; one_arm_counterweight L 2 -10; one_arm_counterweight R 2 -7.5; one_arm_counterweight L 1 -7.5",
)
say("media hora bien aprovechada: flexiones 5x20", "push_up 5x20", mins=30)
say("dominadas 5x3 +20, pesadas, RIR 1", "pull_up 5x3 +20 last@9")
say("fondos 4x5 +25, 2 en reserva en cada una", "dip 4x5 +25 @8")
say("dominadas 3x4 solo bajada, 5 segundos", "pull_up 3x4 ecc", maybe_unread=("5 segundos",))
say(
    "dominadas 4x3 con el 30% de mi peso",
    "pull_up 4x3 +24",
    body=80.0,
    also=({"sets": sets("pull_up 4x3 +?"), "ask": [{"about": "load_kg", "span": "30%"}]},),
)
say(
    "barras: 4x5, joya",
    "_ 4x5",
    ask="movement: barras",
    also=({"sets": []}, {"sets": sets("pull_up 4x5"), "ask": []}),
    why="in parts of Latin America barras are pull-ups",
)
say("hoy me mandé 5x3 de dominadas con 15 kilitos, de lujo", "pull_up 5x3 +15")
say("4 x 6 fondos\n3 x 8 remo 40 kg\nlisto 👍", "dip 4x6; row 3x8 +40")
say("el plan era 5x3 con 25, al final 4x3 con 22,5 (dominadas)", "pull_up 4x3 +22.5")
say("la semana que viene quiero probar 5x5 con 20", "", "smalltalk", does_or=("unknown", "for_coach"))
say("¿hago hoy 5x3 con 22,5?", "", "plan_today", does_or=("for_coach", "unknown", "why"))
say("el codo la semana pasada era un 4, ahora 1", pain="elbow - 1")
say("codo de tenista izquierdo 3", pain="elbow_outer L 3", pain_or=("elbow L 3",))
say("las dos muñecas 2 durante el pino", pain="wrist L 2 during; wrist R 2 during")
say("me tira la cadera derecha, 2/10", pain="hip R 2")
say("cuello 3 esta mañana", pain="neck - 3 morning")
say("dolor 13", pain="- - -", ask="pain: 13", pain_or=("",))
say("ingle derecha 2", pain="hip R 2", pain_or=("other R 2",))
say("el bíceps derecho se ve raro, como una bola arriba", pain="biceps R -", flags="deformity")
say("no pude dormir del dolor de hombro", pain="shoulder - - rest", flags="night_pain", pain_or=("shoulder - -",))
say("me hormiguean los dedos desde ayer, mano derecha", pain="hand R -", flags="numbness")
say("ya sin fiebre, puedo volver", "", "resume")
say("mi hermano se dislocó el hombro. yo: fondos 3x8", "dip 3x8")
say("fuera hasta el 20 de marzo, solo con gomas", "", "away equipment", dates="2027-03-10..2027-03-20", **WED)
say("desde el sábado de vacaciones, vuelvo el 20", "", "away", dates="2027-03-13..2027-03-19", **WED)
say("el jueves no puedo, el viernes sí", "", "move", dates="2027-03-11..2027-03-12", maybe="missed", **WED)
say("me perdí lunes y martes, el niño malo", "", "missed", dates="2027-03-08..2027-03-09", **WED)
say("¿mañana en vez de hoy?", "", "move", dates="2027-03-10..2027-03-11", **WED)
say(
    "mañana en lugar de hoy?",
    "",
    "move",
    ask="dates: mañana",
    dates="2027-03-09..",
    dates_or=("",),
    at="2027-03-10 01:30",
    tz="Europe/Madrid",
    why="before 04:00 tomorrow is asked",
)
say("pausa indefinida por favor", "", "pause", dates="2027-03-10..", dates_or=("",), **WED)
say("la última fue @9, no @8", on=None, fix=("rpe", 8, 9, None, None, "last"))
say("con la derecha fueron 2, no 3, en las dominadas arqueras", on=None, fix=("reps", 3, 2, "archer_pull_up", "right"))
say(
    "el peso era 72,4 y no 74,2",
    on=None,
    fix=("bodyweight_kg", 74.2, 72.4),
    ask_or="field: 72,4",
    also=(
        {"bodyweight_kg": 72.4, "intents": ["correction", "bodyweight"]},
        {"bodyweight_kg": 72.4},
        {
            "correction": {
                "field": "load_kg",
                "was": 74.2,
                "now": 72.4,
                "movement": None,
                "side": None,
                "which": "all",
            },
            "ask": [{"about": "field", "span": "72,4"}],
        },
    ),
    body=72.0,
)
