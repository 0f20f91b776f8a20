"""A third look, written blind: a dozen Spanish-speaking voices, from Bilbao to Buenos Aires."""

from typing import Any

from tests.corpus import notation
from tests.corpus.lines import Theme, asks

THEME = Theme("third", "es")
MEXICO = {"tz": "America/Mexico_City", "lang": "es-MX"}
PLATA = {"tz": "America/Argentina/Buenos_Aires", "lang": "es-AR"}
BOGOTA = {"tz": "America/Bogota"}


def say(text: str, sets: str = "", does: str = "", **more: Any) -> None:
    """A message sent on a Tuesday evening unless it says otherwise."""
    THEME.say(text, sets, does, **({"at": "2027-09-14 20:30", "tz": "Europe/Madrid"} | more))


def asked(words: str, sets: str = "", **more: Any) -> dict[str, Any]:
    """An alternative that asks back and leaves the sets as open as that."""
    return {"ask": asks(words), "sets": notation.sets(sets)} | more


HEAVY = "w ring_row 2x10; m/weighted_pull_up pull_up 5x3 +27.5 @8"
VOLUME = "m/weighted_pull_up pull_up 4x6 +10 @7; a ring_dip 3x6; a biceps_curl 2x12 +12"
DIPS = "m dip 4x5 +20 @8"
ELBOW = "s/archer_elbow_full archer_ring_elbow 2x2 LR @7; m/weighted_pull_up pull_up 4x4 +15 @8"
PULLEY = "s/counterweight one_arm_counterweight 3x2 LR -7.5 @8"
STRADDLE = "s/straddle_front_lever straddle_front_lever 5x5s @7; a hanging_leg_raise 3x10"
HANDSTAND = "s handstand_hold 4x30s; a pike_push_up 3x8"
CLUSTER = "chin_up 3 +20; chin_up 2 +20 link; chin_up 1 +20 link;"

# Álvaro, Madrid
say("dominadas 4x4 +22,5, volando", "pull_up 4x4 +22.5", at="2027-02-04 21:40")
say("fondos +15: 8/8/6", "dip 8,8,6 +15", lang=None)
say(
    "doms lastradas 3@30 3@32,5 2@35",
    "pull_up 3 +30; pull_up 3 +32.5; pull_up 2 +35",
    also=(asked("movement: doms", "_ 3 +30; _ 3 +32.5; _ 2 +35"),),
)
say("pronas 5x5 bw, supinas 3x6 +5. tío qué paliza", "pull_up 5x5; chin_up 3x6 +5", at="2027-05-27 07:45")
say("mu 4x2 y luego 1 fallido", "muscle_up 4x2; muscle_up 0 fail")
say("10x3 neutras con 16kg, curro 9h y aún así", "neutral_grip_pull_up 10x3 +16")
say("FL straddle 4x4s, adv tuck 3x9s", "straddle_front_lever 4x4s; advanced_tuck_front_lever 3x9s")
say("fondos 5@20@7 5@22,5@8 5@25@9", "dip 5 +20 @7; dip 5 +22.5 @8; dip 5 +25 @9")
say("dominadas 3x5 +20, rpe 8 la última", "pull_up 3x5 +20 last@8")
say("remo con mancuerna 3x10/lado 24kg", "row 3x10 LR +24")
# Lupita, Ciudad de México
say("lagartijas 30, 25 y 20 wey, con 38 años y 2 hijos 😎", "push_up 30,25,20", **MEXICO)
say("hoy me aventé 4 series de 6 dominadas sin peso, bien padre", "pull_up 4x6", **MEXICO)
say("fondos en argollas 3x5, remo en argollas 3x12", "ring_dip 3x5; ring_row 3x12", **MEXICO)
say(
    "sentadillas 4x8 con 60 kg, búlgaras 3x10 por pierna con 10 kg, luego 2 tacos al pastor",
    "squat 4x8 +60; split_squat 3x10 LR +10",
    **MEXICO,
)
say("parada de manos contra la pared 45s 40s 38s", "handstand_hold 45s,40s,38s", **MEXICO)
say("jalones al pecho 4x10 con 90 lbs", "lat_pulldown 4x10 +90lb", **MEXICO)
say("dominadas 5x3 con 25", "pull_up 5x3 +25lb", unit="lb", **MEXICO)
say("ahorita terminé: supinas 4x5 con 10 kg, la última ya no salía ni una más", "chin_up 4x5 +10 last@10", **MEXICO)
# Nacho, Buenos Aires
say("che hoy metí dominadas 4x5 con 12,5, re bien", "pull_up 4x5 +12.5", **PLATA)
say(
    "salí del laburo a las 7 y pico y llegué a hacer 3 series de paralelas, 10 9 8",
    "dip 10,9,8",
    **PLATA,
)
say("vertical contra la pared 3x40 seg, flexiones de brazos 3x20", "handstand_hold 3x40s; push_up 3x20", **PLATA)
say(
    "colgado a una mano: der 20 seg, izq 17 seg, dos veces cada una",
    "one_arm_hang 20s,20s R; one_arm_hang 17s,17s L",
    **PLATA,
)
say("quería hacer 5x5 pero me quedé en 5, 5 y 3 dominadas, con 10 kilos", "pull_up 5,5,3 +10", **PLATA)
say("mi viejo, 63 pirulos, se mandó 8 dominadas. yo 12 y 10 jajaja", "pull_up 12,10", **PLATA)
say("arqueras 3x3 por lado en la barra, dominadas arqueras digo", "archer_pull_up 3x3 LR", **PLATA)
say("pistols 4 y 4, después 3 y 3 (izq y der)", "pistol_squat 4 LR; pistol_squat 3 LR", **PLATA)
# Yuli, Bogotá
say("hice barra, agarre supino, 3x8, sin peso", "chin_up 3x8", **BOGOTA)
say("hoy fueron 60 flexiones: 20, 20, 12 y 8", "push_up 20,20,12,8", **BOGOTA)
say("dominadas con banda de 15 kg 3x6, y con la delgadita 2x3", "band_pull_up 3x6 -15; band_pull_up 2x3", **BOGOTA)
say("elevaciones de piernas colgada 3x10, hollow 3x30 segundos", "hanging_leg_raise 3x10; hollow_hold 3x30s", **BOGOTA)
say("aguanté arriba con la barbilla sobre la barra 15 s, 12 s, 10 s", "pull_up_top_hold 15s,12s,10s", **BOGOTA)
say("me colgué de la barra 1 min y medio de una", "dead_hang 90s", **BOGOTA)
say(
    "bajé lento: negativas de dominada 4x3, 5 segundos cada una",
    "pull_up 4x3 ecc",
    maybe_unread=("5 segundos cada una",),
    **BOGOTA,
)
# Carmen dicta
say(
    "hola hoy he hecho dominadas cinco series de tres con veintidós kilos y medio y luego fondos "
    "tres series de ocho sin peso",
    "pull_up 5x3 +22.5; dip 3x8",
)
say(
    "primera serie diez segunda serie nueve tercera serie siete todo fondos y con cinco kilos",
    "dip 10,9,7 +5",
)
say(
    "he entrenado tres cuartos de hora y han sido cuatro series de cuatro supinas con quince kilos",
    "chin_up 4x4 +15",
    mins=45,
)
say(
    "a ver dominadas con agarre neutro tres por seis con siete coma cinco kilos en la última me quedaban dos más",
    "neutral_grip_pull_up 3x6 +7.5 last@8",
)
say(
    "ayer en casa de mi hermana que vive en un quinto sin ascensor hice dos series de quince flexiones y una de doce",
    "push_up 15,15,12",
    on="2027-09-13",
)
say(
    "colgada de un brazo veinte segundos con el izquierdo y veintidós con el derecho",
    "one_arm_hang 20s L; one_arm_hang 22s R",
)
say(
    "pues la plancha en tuck cinco veces ocho segundos y luego el pino treinta segundos dos veces",
    "tuck_planche 5x8s; handstand_hold 2x30s",
)
# Iker, con prisa
say("domindas 3x8 , fodos 3x10 +10kg , fin", "pull_up 3x8; dip 3x10 +10")
say("dominads lastadas 4x3 con 27.5 , ultima serie rpe9", "pull_up 4x3 +27.5 last@9", lang=None)
say("flexines 25 25 22", "push_up 25,25,22")
say("curl biceps 3x12 12kg , curl martiyo 3x10 14kg", "biceps_curl 3x12 +12; hammer_curl 3x10 +14")
say("supinas al fayo 13 , luego 9 y 8", "chin_up 13 @10; chin_up 9,8")
say(
    "pesas: sentadilla 5x5 90kg , peso muerto 3x5 120kg , nordicos 3x4",
    "squat 5x5 +90; nordic_curl 3x4",
    unread=("peso muerto 3x5 120kg",),
    ask_or="movement: peso muerto",
)
say("face pull 3x15 15 kg , rotacion externa 2x12 x lado 3kg", "face_pull 3x15 +15; external_rotation 2x12 LR +3")
# Don Ramón, Monterrey
say("dominadas 3x4 con 10 libras, a mis 61 años", "pull_up 3x4 +10lb", **MEXICO)
say("fondos 3x6 +35#", "dip 3x6 +35lb", **MEXICO)
say("buenas tardes, se hicieron 5 series de 2 dominadas con 15 kg cada una", "pull_up 5x2 +15", unit="lb", **MEXICO)
say("hace 30 años hacía 20 dominadas seguidas, hoy 6, 5 y 5", "pull_up 6,5,5", **MEXICO)
say(
    "curl de muñeca 2x20 con 15 lb y retracciones escapulares 2x10",
    "wrist_curl 2x20 +15lb; scapular_pull_up 2x10",
    **MEXICO,
)
# Sofi mezcla
say("pull ups: top set 3 @ 25 RPE 8, back off 3x5 @ 17,5", "pull_up 3 +25 @8; pull_up 3x5 +17.5")
say(
    "ring muscle ups 3x1, L-sit 4x15s, handstand push ups 3x4", "ring_muscle_up 3x1; l_sit 4x15s; handstand_push_up 3x4"
)
say("drop set de fondos: 6 con 20, directo 5 con 10, directo 8 sin nada", "dip 6 +20; dip 5 +10 link; dip 8 link")
say("rest pause en chin ups +12: 5+2+1", "chin_up 5 +12; chin_up 2 +12 link; chin_up 1 +12 link")
say("superserie x3: 5 pull ups y 12 push ups", "pull_up 5; push_up 12; pull_up 5; push_up 12; pull_up 5; push_up 12")
say("OAP negativas 3x1 por brazo, full control", "one_arm_pull_up 3x1 LR ecc")
say("pike push ups 3x10, planche lean 4x15s. outfit nuevo de 40 pavos", "pike_push_up 3x10; planche_lean 4x15s")
say("chin ups 4x6 bw @7, 2 min rest", "chin_up 4x6 last@7", maybe_unread=("2 min rest",))
say(
    "EMOM 10 min de 3 dominadas",
    "pull_up 10x3",
    also=(asked("sets: EMOM 10 min", "pull_up 3"), asked("sets: EMOM 10 min")),
    maybe_unread=("EMOM 10 min",),
)
# Pau lo apunta todo
say(
    "Dominadas:\n- 1ª: 5 reps, 15 kg, RPE 7\n- 2ª: 5 reps, 17,5 kg, RPE 8\n- 3ª: 4 reps, 20 kg, RPE 9",
    "pull_up 5 +15 @7; pull_up 5 +17.5 @8; pull_up 4 +20 @9",
)
say(
    "cluster de supinas: 3 x (3+2+1) con 20 kg, 20 s entre mini series",
    CLUSTER * 3,
    maybe_unread=("20 s entre mini series",),
)
say("Escalera de dominadas 1-2-3-4-5, dos vueltas, 30 en total", "pull_up 1,2,3,4,5,1,2,3,4,5")
say(
    "Un brazo en polea. 15 kg de ayuda: 2x3 por brazo. 10 kg de ayuda: 2x1 por brazo. 5 kg: izq 0 (fallo), der 1",
    "one_arm_counterweight 2x3 LR -15; one_arm_counterweight 2x1 LR -10; "
    "one_arm_counterweight 0 L -5 fail; one_arm_counterweight 1 R -5",
)
say(
    "A un brazo con la otra mano en el bíceps, mitad inferior: 3/2, 3/2",
    "one_arm_hand_on_biceps 3/2 LR lower; one_arm_hand_on_biceps 3/2 LR lower",
)
say("mano en el hombro, a un brazo, 2x1 por lado, recorrido completo", "one_arm_hand_on_shoulder 2x1 LR")
say("Dominadas 3x4 +12,5 con parada a media subida y otra arriba", "pull_up 3x4 +12.5 middle top")
say("Test de 1RM dominada: 50 sí, 55 sí, 57,5 no", "pull_up 1 +50; pull_up 1 +55; pull_up 0 +57.5 fail")
say("dominadas, solo mitad de arriba, 4x4 +25", "pull_up 4x4 +25 upper")
say(
    "Fondos 3x5 +22,5, tempo 4-0-1, pulso máx 158, descansos de 3 min",
    "dip 3x5 +22.5",
    maybe_unread=("tempo 4-0-1", "pulso máx 158", "descansos de 3 min"),
)
say("50 dominadas en 7 series, no apunté cuántas en cada una", "pull_up 7x?", ask="reps: 50 dominadas en 7 series")
say("Back lever 3x10s, una pierna front lever 2x6s por pierna", "back_lever 3x10s; one_leg_front_lever 2x6s LR")
say(
    "arqueras con el brazo recto en la anilla a la altura del codo: 3x2 por lado, todas rpe 7",
    "archer_ring_elbow 3x2 LR @7",
)
# Marisa manda tarde
say("el domingo dominadas 3x5 +5, hoy fondos 3x8", "pull_up 3x5 +5 on=2027-09-12; dip 3x8 on=2027-09-14")
say("se me olvidó mandarlo: el viernes supinas 4x4 con 7,5", "chin_up 4x4 +7.5", on="2027-09-10")
say(
    "Sáb: dominadas 5x3 +20\nLun: fondos 4x6 +10\nHoy: remo en anillas 3x15",
    "pull_up 5x3 +20 on=2027-09-11; dip 4x6 +10 on=2027-09-13; ring_row 3x15 on=2027-09-14",
)
say("anteayer 3x12 flexiones en el parque, con los mellizos (6 años) encima del banco", "push_up 3x12", on="2027-09-12")
say("acabo de llegar del gym, fondos 5x5 +15", "dip 5x5 +15", at="2027-09-15 00:50")
say("ayer dominadas 4x3 +20, no duermo", "pull_up 4x3 +20", at="2027-09-15 03:10", on="2027-09-14")
say("el 9 hice muscle ups 5x1", "muscle_up 5x1", on="2027-09-09")
# Deseos, historia, los demás, rectificar al vuelo
say("dominadas 5x3, no perdón, 4x3 con 25", "pull_up 4x3 +25")
say("fondos con 20... miento, con 22,5: 4x4", "dip 4x4 +22.5")
say("a ver si en octubre saco +40. hoy dominadas 3x3 con 30", "pull_up 3x3 +30")
say(
    "mañana haré fondos 4x8 con 10",
    does="smalltalk",
    does_or=("unknown",),
    maybe_unread=("fondos 4x8 con 10",),
)
say("mi compañera ya va por 3x5 +15, yo hoy dominadas 3x5 sin lastre", "pull_up 3x5")
say("fondos hoy no, que me dolía el bolsillo (35€ el gym jaja). dominadas 4x6", "pull_up 4x6")
say("dominadas +25: 4, 4, y en la tercera la cuarta no subió", "pull_up 4,4 +25; pull_up 3 +25 fail")
say("dominadas 3x4, una con 10, otra con 12,5 y otra con 15", "pull_up 4 +10; pull_up 4 +12.5; pull_up 4 +15")
say("en 2025 hacía fondos 3x10 con 30; hoy 3x10 con 5, poco a poco", "dip 3x10 +5")
# Con plan
say("hecho 👌", "ring_row 2x10; pull_up 5x3 +27.5", today=HEAVY)
say("todo igual menos la última de dominadas, que fue de 2", "ring_row 2x10; pull_up 3,3,3,3,2 +27.5", today=HEAVY)
say("me salté el calentamiento, lo demás tal cual", "pull_up 5x3 +27.5", today=HEAVY)
say("todo menos los curls, 1h justa", "pull_up 4x6 +10; ring_dip 3x6", mins=60, today=VOLUME)
say("dominadas 6 6 6 4, el resto como ponía", "pull_up 6,6,6,4 +10; ring_dip 3x6; biceps_curl 2x12 +12", today=VOLUME)
say("cumplido, pero con 17,5 en vez de 20", "dip 4x5 +17.5", today=DIPS)
say("solo 2 de las 4 series, me llamaron del cole", "dip 2x5 +20", today=DIPS)
say("5x4 con 20 listo", "dip 4x5 +20", today=DIPS)
say("5 5 4 4", "dip 5,5,4,4 +20", today=DIPS)
say("listo jefe, la última a rpe 9", "dip 4x5 +20 last@9", today=DIPS, lang="es-MX")
say("una repe más de lo previsto en cada serie", "dip 4x6 +20", today=DIPS)
say(
    "izquierda según el plan, derecha en la última solo 1",
    "one_arm_counterweight 2,2,2 L -7.5; one_arm_counterweight 2,2,1 R -7.5",
    today=PULLEY,
)
say(
    "arqueras 2x2 por lado y dominadas 4x4 con 17,5 al final",
    "archer_ring_elbow 2x2 LR; pull_up 4x4 +17.5",
    today=ELBOW,
)
say("arqueras hechas, las dominadas no, se me fue la hora", "archer_ring_elbow 2x2 LR", today=ELBOW)
say(
    "todo ok, el último straddle 3s en vez de 5",
    "straddle_front_lever 4x5s; straddle_front_lever 3s; hanging_leg_raise 3x10",
    today=STRADDLE,
)
say(
    "pino 4x30s y las pike según lo escrito, todo en 35 minutos",
    "handstand_hold 4x30s; pike_push_up 3x8",
    mins=35,
    today=HANDSTAND,
)
say("hice todo con 2,5 más", "dip 4x5 +22.5", today=DIPS)
say("como estaba escrito, 4x5 con 25", "dip 4x5 +25", today=DIPS, also=(asked("load_kg: 25", "dip 4x5 +?"),))
say("los de 5 salieron con 20, todos a rpe 7", "dip 4x5 +20 @7", today=DIPS)
say("hecho todo. bueno no, la última serie de dominadas no", "ring_row 2x10; pull_up 4x3 +27.5", today=HEAVY)
say(
    "nada de lo que tocaba, hice flexiones 3x15 en el hotel",
    "push_up 3x15",
    today=HEAVY,
    maybe="missed equipment",
    dates_or=("2027-09-14",),
)
# Hay que preguntar
say("fondos 12", "dip ? +?", ask="reps: 12")
say("supinas 6,5", "chin_up ? +?", ask="load_kg: 6,5")
say("front lever 4x6s", "_ 4x6s", ask="movement: front lever")
say("arqueras 3x3 por lado", "_ 3x3 LR", ask="movement: arqueras")
say("4x4 con 15", "_ 4x4 +15", ask="movement: 4x4 con 15")
say("dominadas 3x5-7 con 5 kg", "pull_up 3x? +5", ask="reps: 5-7")
say(
    "dominadas 4x6 @8",
    "pull_up 4x6 +?",
    ask="load_kg: @8",
    sets_or=("pull_up 4x6", "pull_up 4x6 last@8", "pull_up 4x6 +? last@8"),
)
say("dominadas 5x3 con 275 kg", "pull_up 5x3 +?", ask="load_kg: 275 kg")
say(
    "chin up a un brazo: con uno 2 y con el otro 1",
    "one_arm_chin_up 2; one_arm_chin_up 1",
    ask="side: con uno 2 y con el otro 1",
)
say("la semana pasada hice fondos 3x10, no te lo dije", "dip 3x10", on=None, ask="performed_on: la semana pasada")
say("medias dominadas 4x6", "pull_up 4x6 rom?", ask="rom: medias")
say("fondos 5x4 +20, rpe entre 6 y 9 según la serie", "dip 5x4 +20", ask="rpe: entre 6 y 9")
say("una serie de dominadas con 10, 7 u 8, perdí la cuenta", "pull_up ? +10", ask="reps: 7 u 8")
say(
    "lo mismo que el otro día", does="report", ask="sets: lo mismo que el otro día", does_or=("unknown",), on_or=(None,)
)
say("peso 702", does="bodyweight", ask="bodyweight_kg: 702")
# Dolor
say("codo derecho por dentro 2/10", pain="elbow_inner R 2", at="2027-12-01 08:15")
say("me molesta la muñeca izq en el pino, un 3", pain="wrist L 3 during")
say("los dos hombros 1/10 al levantarme", pain="shoulder L 1 morning; shoulder R 1 morning")
say("cero dolor 🙌", pain="- - 0", **PLATA)
say("5", pain="- - 5")
say("2 mientras entrenaba, 0 después", pain="- - 2 during; - - 0 after")
say("rodilla izq 4, tobillo der 1", pain="knee L 4; ankle R 1", **BOGOTA)
say("la zona lumbar 3/10 después de las sentadillas", pain="lower_back - 3 after", **MEXICO)
say(
    "el fisio (45€, 50 minutos) dice que es codo de tenista, el izquierdo, un 2-3",
    pain="elbow_outer L 3",
    pain_or=("elbow L 3",),
)
say("el hombro ya no me duele nada, por fin", pain="shoulder - 0")
say(
    "cuello 2/10 en reposo, cadera bien",
    pain="neck - 2 rest",
    pain_or=("neck - 2 rest; hip - 0", "neck - 2 rest; hip - 0 rest"),
)
# Señales
say(
    "en la segunda serie de dominadas me tronó el codo derecho y ya se está poniendo morado",
    pain="elbow R - during",
    pain_or=("elbow R -",),
    flags="pop bruising",
    maybe="report",
    **MEXICO,
)
say(
    "se me durmió el meñique derecho y sigue dormido 3 horas después",
    pain="hand R -",
    pain_or=("hand R - after",),
    flags="numbness",
    **PLATA,
)
say("me desperté 2 veces anoche del dolor de hombro izq", pain="shoulder L - rest", flags="night_pain")
say("tengo la rodilla derecha hinchada como un melón", pain="knee R -", flags="swelling")
say("me mareé al bajar del pino, casi me caigo", flags="dizziness", maybe="report")
say(
    "opresión en el pecho subiendo 4 pisos y me falta el aire",
    pain="chest - -",
    pain_or=("chest - - during",),
    flags="chest_pain breathless",
)
say(
    "la rodilla izquierda se me queda trabada al estirar",
    pain="knee L -",
    pain_or=("knee L - during",),
    flags="locking",
    **PLATA,
)
say("de golpe no tengo fuerza en la mano izq, se me cayó el mate", pain="hand L -", flags="sudden_weakness", **PLATA)
say("el dedo índice derecho me quedó torcido, apunta para otro lado", pain="hand R -", flags="deformity", **BOGOTA)
say("estoy con fiebre, 38,4, desde el domingo", does="ill", flags="fever", dates="2027-09-12..")
say("codo izq 1/10, ni hinchado ni morado ni hormigueo", pain="elbow L 1")
say("me quedé sin aire al ver la factura de 300 euros. dominadas 3x5 +10", "pull_up 3x5 +10")
say("cruje la barra de 20 euros que da miedo jaja", does="smalltalk", does_or=("equipment",))
say("hace 4 años se me hinchó la rodilla feo, hoy pistols 3x3 por pierna", "pistol_squat 3x3 LR")
say("mi hija con 39 de fiebre, hoy no entreno", does="missed", dates="2027-09-14")
say("tengo miedo de que me reviente el bíceps, así que hoy supinas suaves 3x5", "chin_up 3x5")
say("se me taparon los oídos en el avión y a uno le hizo pop, pero bien. fondos 3x8", "dip 3x8", **MEXICO)
# Cuerpo, sueño, duración
say("68,9 en ayunas", bw=68.9, body=69.4)
say("peso 158 hoy", bw=158 * notation.KG_PER_LB, unit="lb", **MEXICO)
say("dormí 5 horas y media, el peque con pesadillas", does="report", sleep=5.5)
say("sueño 8h, peso 74,1", bw=74.1, sleep=8)
say("sesión de 7/10, 50 minutos", srpe=7, mins=50)
say("dominadas 3x6, fondos 3x8, hora y media, esfuerzo general 6", "pull_up 3x6; dip 3x8", srpe=6, mins=90)
say("de 19:10 a 20:00 fondos 5x5 +10", "dip 5x5 +10")
# Días
say("¿puedo hacer el jueves lo del viernes?", does="move", dates="2027-09-17..2027-09-16")
say("pasame lo de mañana al domingo porfa", does="move", dates="2027-09-15..2027-09-19", **PLATA)
say("el domingo y ayer no entrené, boda en Cuenca, 200 invitados", does="missed", dates="2027-09-12..2027-09-13")
say("hoy no llego, reunión hasta las 10", does="missed", dates="2027-09-14")
say("del 20 al 27 estoy en Perú, sin barra", does="away equipment", dates="2027-09-20..2027-09-27")
say(
    "me voy el jueves, vuelvo el lunes",
    does="away",
    dates="2027-09-16..2027-09-19",
)
say("gripe desde ayer, 2 cajas de pañuelos", does="ill", dates="2027-09-13..")
say(
    "ando enferma, creo que hasta el viernes",
    does="ill",
    dates="2027-09-14..2027-09-17",
    dates_or=("2027-09-14..",),
    **MEXICO,
)
say("mudanza a un 3º sin ascensor, páralo todo hasta el 30", does="pause", dates="2027-09-14..2027-09-30")
say("ya estoy de vuelta, dale para adelante", does="resume", **PLATA)
say("hoy imposible, lo hago el jueves", does="move", dates="2027-09-14..2027-09-16", does_or=("move missed",))
say(
    "hoy no pude, lo hago mañana",
    does="move missed",
    does_or=("move", "missed"),
    at="2027-09-15 02:20",
    dates="2027-09-14..",
    dates_or=("", "2027-09-14"),
    ask="dates: mañana",
)
# Corregir
say("ojo, los fondos de ayer fueron con 15, no con 20", fix=("load_kg", 20, 15, "dip"), on="2027-09-13")
say("puse 6 y eran 5 en la tercera serie", fix=("reps", 6, 5, None, None, 3))
say("la última fue rpe 9, no 8", fix=("rpe", 8, 9, None, None, "last"))
say(
    "corrijo: hoy dominadas 5x3 con 22,5 en lugar de 25",
    "pull_up 5x3 +22.5",
    fix=("load_kg", 25, 22.5, "pull_up"),
    on="2027-09-14",
    maybe="report",
)
say("borrá eso último, era para mi vieja", does="undo", **PLATA)
# Preguntas y lo demás
say("¿hoy qué hay?", does="plan_today", dates_or=("2027-09-14",))
say("mandame el plan de la semana", does="plan_week", **PLATA)
say("¿por qué me quitaste 5 kilos en las dominadas?", does="why")
say("¿cuánto me falta para la dominada a un brazo?", does="progress")
say("no sé cómo usar esto, ayuda", does="help")
say("avísale al entrenador que le mando el video el jueves", does="for_coach", **MEXICO)
say("se me rompió la anilla, la nueva llega en 10 días", does="equipment")
say("dame de baja, ya no quiero mensajes", does="stop")
say("jajaja qué grande, gracias!! 3 horas de cola y aquí seguimos", does="smalltalk")
say("zzkq 9 pfff", does="unknown", does_or=("smalltalk",), maybe_unread=("9",), ask_or="intents: zzkq 9 pfff")
# Mezclas
say(
    "dominadas 4x4 +20, última rpe 8. codo der por fuera 1/10. peso 71,8, dormí 7h. ¿qué toca esta semana?",
    "pull_up 4x4 +20 last@8",
    does="plan_week",
    pain="elbow_outer R 1",
    bw=71.8,
    sleep=7,
)
say(
    "todo hecho en 40 min. ¿lo del sábado puede ser el domingo? tengo bautizo",
    "dip 4x5 +20",
    does="move",
    mins=40,
    dates="2027-09-18..2027-09-19",
    today=DIPS,
)
say(
    "fondos 3x8 +10 y después se me hinchó la muñeca derecha, 4/10. decile al coach",
    "dip 3x8 +10",
    does="for_coach",
    pain="wrist R 4 after",
    pain_or=("wrist R 4",),
    flags="swelling",
    **PLATA,
)
say(
    "corrí 5 km en 27 min y luego supinas 3x6. por qué solo 3 series?",
    "chin_up 3x6",
    does="why",
    unread=("corrí 5 km en 27 min",),
)
say(
    "el lunes no pude, trabajo. hoy dominadas 3x5 +12,5 sin molestias",
    "pull_up 3x5 +12.5",
    does="missed",
    pain="- - 0",
    pain_or=("- - 0 during",),
    dates="2027-09-13",
)
