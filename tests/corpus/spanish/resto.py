"""Plans, days, pain, signs, wishes and corrections in Spanish."""

from tests.corpus.lines import Theme

THEME = Theme("rest", "es")
say = THEME.say

MAIN = "m/weighted_pull_up pull_up 5x3 +22.5 @8"
WITH_DIPS = "w scapular_pull_up 2x8; m/weighted_pull_up pull_up 4x4 +20 @8; a dip 3x6 +15 @8"
ARM = "s/hand_on_biceps one_arm_hand_on_biceps LR 2x2 @8; m/weighted_pull_up pull_up 4x3 +25 @8"
MAD = "Europe/Madrid"
WED = {"at": "2027-03-10 12:00", "tz": MAD}
DAY = {**WED, "dates_or": ("2027-03-10",)}

# Plan
say("hecho", "pull_up 5x3 +22.5", today=MAIN)
say("todo según el plan ✅", "scapular_pull_up 2x8; pull_up 4x4 +20; dip 3x6 +15", today=WITH_DIPS)
say("listo, la última @9", "pull_up 4x3 +22.5; pull_up 3 +22.5 @9", today=MAIN)
say("solo hice 4 de las 5 series", "pull_up 4x3 +22.5", today=MAIN)
say("como estaba planeado pero con 25 en vez de 22,5", "pull_up 5x3 +25", today=MAIN)
say("me salté los fondos, el resto como estaba", "scapular_pull_up 2x8; pull_up 4x4 +20", today=WITH_DIPS)
say("dominadas según plan, fondos 6,6,5", "pull_up 4x4 +20; dip 6,6,5 +15", today=WITH_DIPS)
say(
    "todo hecho, sesión rpe 7, 60 minutos",
    "scapular_pull_up 2x8; pull_up 4x4 +20; dip 3x6 +15",
    srpe=7,
    mins=60,
    today=WITH_DIPS,
)
say("3,3,3,2,2", "pull_up 3,3,3,2,2 +22.5", today=MAIN)
say("hice los triples con 20", "pull_up 5x3 +20", today=MAIN)
say(
    "izquierda como estaba, derecha solo 1 cada vez, dominadas todas",
    "one_arm_hand_on_biceps L 2,2; one_arm_hand_on_biceps R 1,1; pull_up 4x3 +25",
    today=ARM,
)
say(
    "a un brazo 2/2 y 2/1, dominadas según plan",
    "one_arm_hand_on_biceps LR 2/2; one_arm_hand_on_biceps LR 2/1; pull_up 4x3 +25",
    today=ARM,
)
say("una repetición más en cada serie", "pull_up 5x4 +22.5", today=MAIN)
say("paré después de dos series", "pull_up 2x3 +22.5", today=MAIN)
say("lo hice ayer, todo", "pull_up 5x3 +22.5", on="2027-03-09", today=MAIN, **WED)
say("hecho, me quedaban 2 en reserva al final", "pull_up 4x3 +22.5; pull_up 3 +22.5 @8", today=MAIN)
say("lo hago esta noche", "", "smalltalk", does_or=("unknown",), today=MAIN, **WED)
# Days
say("ayer fondos 3x8", "dip 3x8", on="2027-03-09", **WED)
say("el lunes dominadas 4x5", "pull_up 4x5", on="2027-03-08", **WED)
say("anteayer dominadas 3x3 +25", "pull_up 3x3 +25", on="2027-03-08", **WED)
say("el día 3 dominadas 5x3 +20", "pull_up 5x3 +20", on="2027-03-03", **WED)
say("viernes: pino 3x30s", "handstand_hold 3x30s", on="2027-03-05", **WED)
say("28 de febrero dominadas 5x5", "pull_up 5x5", on="2027-02-28", **WED)
say("lun dominadas 5x3 +20, mar fondos 4x6 +15", "pull_up 5x3 +20 on=2027-03-08; dip 4x6 +15 on=2027-03-09", **WED)
say("recién llego del gym, dominadas 4x4", "pull_up 4x4", on="2027-03-09", at="2027-03-10 01:10", tz=MAD)
say("en nochevieja hice dominadas 10x2", "pull_up 10x2", on="2027-12-31", at="2028-01-02 12:00", tz=MAD)
say("la semana pasada hice dominadas 5x3 +20", "pull_up 5x3 +20", on=None, ask="performed_on: la semana pasada", **WED)
say("esta mañana antes del curro flexiones 3x25", "push_up 3x25", **WED)
say("anoche fondos 4x6", "dip 4x6", on="2027-03-09", **WED)
# Body
say("peso 72,3", bw=72.3, body=72.0)
say("71,8 kg esta mañana en la báscula", bw=71.8, body=72.0)
say("peso 72 y dormí 7 horas", bw=72, sleep=7, body=72.0)
say("dormí siete horas y media", "", "report", sleep=7.5, on_or=(None,))
say("peso 723", "", "bodyweight", ask="bodyweight_kg: 723", body=72.0)
say("dormí mal, 5h, dominadas 4x4", "pull_up 4x4", sleep=5)
# Pain
say("sin dolor", pain="- - 0")
say("codo 3", pain="elbow - 3")
say("codo izquierdo por dentro 2/10 al tirar", pain="elbow_inner L 2 during")
say("codo derecho por fuera 4, también en reposo", pain="elbow_outer R 4 rest")
say("los dos codos 2", pain="elbow L 2; elbow R 2")
say(
    "hombro izquierdo 3/10 después, muñeca 1",
    pain="shoulder L 3 after; wrist - 1",
    pain_or=("shoulder L 3 after; wrist - 1 after",),
)
say("esta mañana codo 1", pain="elbow - 1 morning")
say("2 durante, 0 después", pain="- - 2 during; - - 0 after")
say("dominadas 5x3 +20, codo derecho 2/10", "pull_up 5x3 +20", pain="elbow R 2")
say("lumbar 4 después de las sentadillas", pain="lower_back - 4 after")
say("me duele la rodilla", pain="knee - -")
say("codo 2-3", pain="elbow - 3")
say("fondos 3x8, no me duele nada", "dip 3x8", pain="- - 0")
# Signs
say("me crujió fuerte el bíceps derecho, como un latigazo", pain="biceps R -", flags="pop")
say("codo izquierdo hinchado", pain="elbow L -", flags="swelling")
say("tengo un moratón enorme en el bíceps derecho y no me di ningún golpe", pain="biceps R -", flags="bruising")
say("el meñique izquierdo dormido desde ayer", pain="hand L -", flags="numbness")
say("hormigueo en la mano derecha al colgarme", pain="hand R - during", flags="numbness")
say("el hombro me despierta todas las noches", pain="shoulder - - rest", flags="night_pain", pain_or=("shoulder - -",))
say("pinchazo en el pecho en la última serie", pain="chest - - during", flags="chest_pain", maybe="report")
say("me faltaba el aire después de los fondos", flags="breathless", maybe="report")
say("casi me desmayo al bajar de la barra", flags="dizziness", maybe="report")
say("la rodilla derecha se me quedó bloqueada", pain="knee R -", flags="locking")
say("39 de fiebre desde ayer", "", "ill", flags="fever", dates="2027-03-09..", **WED)
say("de repente sin fuerza en la mano izquierda", pain="hand L -", flags="sudden_weakness")
say("codo 2/10, sin hinchazón ni moratones", pain="elbow - 2")
say("esta vez sin mareos, pino 3x30s", "handstand_hold 3x30s")
say("miedo a que algo se rompa. dominadas 3x3 +30", "pull_up 3x3 +30")
say(
    "hace dos años me crujió el hombro, hoy fondos 3x8 sin problema",
    "dip 3x8",
    maybe="pain",
    pain_or=("shoulder - 0", "- - 0"),
)
say("mi hija tiene fiebre, hoy no entreno", "", "missed", dates="2027-03-10", **WED)
say("mareado de felicidad, primer muscle up!!", "muscle_up 1")
# Wishes
for text in ("¿qué hago hoy?", "qué me toca hoy", "el plan de hoy porfa"):
    say(text, "", "plan_today", **DAY)
for text in ("enséñame la semana", "cómo pinta la semana?"):
    say(text, "", "plan_week", **{**WED, "dates_or": ("2027-03-08..2027-03-14", "2027-03-10..2027-03-14")})
for text in ("¿por qué menos peso?", "por qué solo 2 series hoy?"):
    say(text, "", "why", **DAY)
for text in ("¿cómo voy?", "muéstrame mi progreso", "estoy más fuerte?"):
    say(text, "", "progress")
say("¿puedo entrenar mañana en vez de hoy?", "", "move", dates="2027-03-10..2027-03-11", **WED)
say("pasa el viernes al sábado por favor", "", "move", dates="2027-03-12..2027-03-13", **WED)
say("ayer no entrené, mucho curro", "", "missed", dates="2027-03-09", **WED)
say("hoy no puedo entrenar", "", "missed", dates="2027-03-10", **WED)
say("estoy fuera de viernes a domingo", "", "away", dates="2027-03-12..2027-03-14", **WED)
say("vacaciones del 1 al 10 de abril, solo llevo anillas", "", "away equipment", dates="2027-04-01..2027-04-10", **WED)
say("resfriado desde el lunes", "", "ill", dates="2027-03-08..", **WED)
say("estoy enfermo", "", "ill", dates="2027-03-10..", dates_or=("",), **WED)
say("se me rompió la barra de dominadas", "", "equipment")
say("dile al entrenador gracias por la semana pasada", "", "for_coach")
say("¿me puede llamar el coach?", "", "for_coach")
say("pausa el plan hasta el 1 de mayo", "", "pause", dates="2027-03-10..2027-05-01", **WED)
for text in ("ya estoy de vuelta", "ya estoy bien, seguimos", "podemos retomar el plan"):
    say(text, "", "resume", **WED)
for text in ("para, no más mensajes", "no me escribas más", "STOP"):
    say(text, "", "stop")
for text in ("ayuda", "¿qué te puedo escribir?", "cómo funciona esto?"):
    say(text, "", "help")
for text in ("gracias!", "buenos días", "jajaja ok", "hasta mañana"):
    say(text, "", "smalltalk", does_or=("unknown",))
say(
    "dominadas 4x4 +20, ¿qué toca mañana?",
    "pull_up 4x4 +20",
    "plan_today",
    does_or=("report plan_week",),
    **{**WED, "dates_or": ("2027-03-11",)},
)
say(
    "hecho, peso 72,1, codo 1, por qué tan ligero?",
    "pull_up 5x3 +22.5",
    "why",
    bw=72.1,
    pain="elbow - 1",
    today=MAIN,
    body=72.0,
)
# Mends
say("eran 22,5, no 20", on=None, fix=("load_kg", 20, 22.5))
say("la última serie de fondos fueron 5, no 6", on=None, fix=("reps", 6, 5, "dip", None, "last"))
say(
    "corrección: eran supinas, no dominadas normales",
    on=None,
    fix=("movement", "pull_up", "chin_up"),
    also=(
        {
            "correction": {
                "field": "movement",
                "was": "pull_up",
                "now": "chin_up",
                "movement": "pull_up",
                "side": None,
                "which": "all",
            }
        },
    ),
)
say("la tercera serie fueron 4 en vez de 5", on=None, fix=("reps", 5, 4, None, None, 3))
say("me equivoqué, rpe 9 y no 8 en la última", on=None, fix=("rpe", 8, 9, None, None, "last"))
say("borra el último mensaje", "", "undo")
say("olvida eso, chat equivocado", "", "undo")
