"""A fourth look, written blind in the manner of the shared examples: all subjects, Spanish."""

from tests.corpus.lines import Theme

THEME = Theme("fourth-todo", "es")
say = THEME.say

MAIN = "m/weighted_pull_up pull_up 4x4 +17.5 @8"
DAY = "w scapular_pull_up 2x8; m/weighted_pull_up pull_up 5x3 +22.5 @8; a external_rotation 2x12 LR +3"
TWO = "m chin_up 4x6 +10 @7; a dip 3x8 +15 @8"
CHIN = "m chin_up 4x5 +12.5 @8"
HOLD = "s/tuck_front_lever tuck_front_lever 5x10s @8"
BICEPS = "s/hand_on_biceps one_arm_hand_on_biceps 2x2 LR @8"

# Reports
say("Dominadas 4x4 +17,5, sobradas", "pull_up 4x4 +17.5")
say("4 series de 6 dominadas sin peso", "pull_up 4x6")
say("fondos con 25kg: 5,5,4,3", "dip 5,5,4,3 +25")
say("dominadas supinas 5 x 3 @ 20kg", "chin_up 5x3 +20")
say("dominadas 6@12,5 4@17,5 2@25", "pull_up 6 +12.5; pull_up 4 +17.5; pull_up 2 +25")
say("top set de dominadas 3 @ 30 y luego 3x4 @ 22,5. El top set rpe 9", "pull_up 3 +30 @9; pull_up 3x4 +22.5")
say("agarre neutro 4x5 +10 todas @7", "neutral_grip_pull_up 4x5 +10 @7")
say("fondos en anillas 10, 8, 7, me quedaba una en la última", "ring_dip 10,8,7 last@9")
say("Test de dominadas: 16, no me quedaba nada", "pull_up 16 @10")
say("flexiones 38 al fallo, después 22 y 18", "push_up 38 @10; push_up 22; push_up 18")
say(
    "polea a un brazo con 10 kg de contrapeso: der 3 izq 2",
    "one_arm_counterweight 3 R -10; one_arm_counterweight 2 L -10",
)
say("DOMINADA A UN BRAZO!!! izquierda 1, derecha 1 🎉", "one_arm_pull_up 1 L; one_arm_pull_up 1 R")
say("a un brazo con la otra mano en el bíceps, 3x2 por lado, rpe 8", "one_arm_hand_on_biceps 3x2 LR last@8")
say("arqueras con la mano de apoyo en la anilla a la altura del codo, 4x2 por brazo", "archer_ring_elbow 4x2 LR")
say("dominadas arqueras 3x5 cada lado, lentitas", "archer_pull_up 3x5 LR")
say("colgarse 60s, 50s y 45s, a una mano 2x15s por mano", "dead_hang 60s,50s,45s; one_arm_hang 2x15s LR")
say("front lever straddle 4x5s, tuck avanzado 3x10s", "straddle_front_lever 4x5s; advanced_tuck_front_lever 3x10s")
say(
    "Plancha tuck 5x8s, inclinaciones de plancha 3x25s, pino en la pared 60s",
    "tuck_planche 5x8s; planche_lean 3x25s; handstand_hold 60s",
)
say(
    "sentadillas 5x5 con 80kg, búlgaras 3x8 por pierna con 12kg, pistols 2x5 por pierna. mañana no camino",
    "squat 5x5 +80; split_squat 3x8 LR +12; pistol_squat 2x5 LR",
)
say(
    "jalón al pecho 3x12 55kg, remo con barra 4x8 50kg, face pulls 3x15 con 15kg",
    "lat_pulldown 3x12 +55; row 4x8 +50; face_pull 3x15 +15",
)
say(
    "dominadas con banda 4x6 (la banda me quita unos 15 kg), remo en anillas 3x12",
    "band_pull_up 4x6 -15; ring_row 3x12",
)
say("negativas a un brazo supinas 3x1 por brazo", "one_arm_chin_up 3x1 LR ecc")
say("dominadas 4x3 +10 con pausa abajo", "pull_up 4x3 +10 bottom")
say("solo media dominada de arriba: 3x5 con 25", "pull_up 3x5 +25 upper")
say("muscle ups 3, 2, 2 y fallé el siguiente", "muscle_up 3,2,2; muscle_up 0 fail")
say(
    "dormí 6h, peso 71,3, supinas 4x5 +12,5 la última @9, 55 min", "chin_up 4x5 +12.5 last@9", sleep=6, bw=71.3, mins=55
)
say(
    "dominadas 3x6\nfondos 3x10\nelevaciones de piernas colgado 3x8\n\nRPE 6, una hora",
    "pull_up 3x6; dip 3x10; hanging_leg_raise 3x8",
    srpe=6,
    mins=60,
)
say(
    "bueno hoy hice dominadas cuatro series de cinco con diez kilos y después tres series de doce fondos sin peso",
    "pull_up 4x5 +10; dip 3x12",
)
say("dominads 3x5 +15kg, fondso 3x8", "pull_up 3x5 +15; dip 3x8")
say("fondos 4x6 con 35 lbs", "dip 4x6 +35lb", tz="America/Mexico_City")
say(
    "fondos 3x8 +10, peso muerto 3x5 120kg y 5 km de trote",
    "dip 3x8 +10",
    unread=("peso muerto 3x5 120kg", "5 km de trote"),
    ask_or="movement: peso muerto",
)
say(
    "cluster de dominadas +27,5: 2+2+2, 20 s entre cada una",
    "pull_up 2 +27.5; pull_up 2,2 +27.5 link",
    maybe_unread=("20 s entre cada una",),
)
say("el perro se comió mi magnesio. dominadas 5x2 +25, 2 en reserva la última", "pull_up 5x2 +25 last@8")
say("flexiones en pica 3x8, flexiones de pino 3x4, L-sit 3x20s", "pike_push_up 3x8; handstand_push_up 3x4; l_sit 3x20s")
say("3 rondas: 6 dominadas, 10 fondos, 15 flexiones", "pull_up 3x6; dip 3x10; push_up 3x15")
say("curl martillo 3x10 con 12kg, curl de muñeca 2x20 con 6kg", "hammer_curl 3x10 +12; wrist_curl 2x20 +6")

say("con chaleco de 10 kg: dominadas 4x5, todas a rpe 7", "pull_up 4x5 +10 @7")
say("sesión RPE 7. fondos 4x6 +20, remo 3x10 con 40kg", "dip 4x6 +20; row 3x10 +40", srpe=7)
say("fondos 3x6 con 25, dominadas 3x5 con 10", "dip 3x6 +25lb; pull_up 3x5 +10lb", unit="lb", tz="America/Mexico_City")

# To ask
say("fondos 18", "dip ? +?", "report", ask="reps: 18")
say(
    "supinas 3x5 @8",
    "chin_up 3x5 +?",
    ask="load_kg: @8",
    sets_or=("chin_up 3x5 +? last@8", "chin_up 3x5", "chin_up 3x5 last@8", ""),
)
say("front lever 3x6s", "_ 3x6s", ask="movement: front lever", sets_or=("",))
say("arqueras 3x3 por lado", "_ 3x3 LR", ask="movement: arqueras", sets_or=("",))
say("medias dominadas 3x6", "pull_up 3x6 rom?", ask="rom: medias dominadas")
say("dominadas 4x4 +180", "pull_up 4x4 +?", ask="load_kg: +180")
say("hice las de 5 con 20", "", "report", ask="movement: hice las de 5 con 20", sets_or=("_ 5 +20",))
say("una serie de fondos +15, 7 u 8, perdí la cuenta", "dip ? +15", ask="reps: 7 u 8")
say("lo mismo que la otra vez", "", "report", ask="sets: lo mismo que la otra vez")
say("peso 7,24", "", "bodyweight", ask="bodyweight_kg: 7,24")
say(
    "la semana pasada hice dominadas 4x5 +10 y no te lo pasé",
    "pull_up 4x5 +10",
    on=None,
    ask="performed_on: la semana pasada",
)

# With the plan
say("listo, todo 💪", "scapular_pull_up 2x8; pull_up 5x3 +22.5; external_rotation 2x12 LR +3", today=DAY)
say("según el plan, la última @9", "chin_up 4x5 +12.5 last@9", today=CHIN)
say("igual pero con 15 en vez de 17,5", "pull_up 4x4 +15", today=MAIN)
say("todo menos los fondos", "chin_up 4x6 +10", today=TWO)
say("5, 5, 5, 3", "chin_up 5,5,5,3 +12.5", today=CHIN)
say("hice las de 4 con 20", "pull_up 4x4 +20", today=MAIN)
say("solo 3 de las 4 series, cerraban el parque", "pull_up 3x4 +17.5", today=MAIN)
say("izq 2 y 2, der 2 y 1", "one_arm_hand_on_biceps 2 LR; one_arm_hand_on_biceps 2/1 LR", today=BICEPS)
say("aguantes bien, los dos últimos 8s", "tuck_front_lever 10s,10s,10s,8s,8s", today=HOLD)
say("hecho todo, 2,5 más en los dos ejercicios. 60 min", "chin_up 4x6 +12.5; dip 3x8 +17.5", today=TWO, mins=60)
say("una serie más de dominadas, el resto como estaba", "pull_up 5x4 +17.5", today=MAIN)
say("hecho, codo derecho por dentro 2/10 durante", "chin_up 4x5 +12.5", today=CHIN, pain="elbow_inner R 2 during")

# Pain and signs
say("hombro izquierdo 3/10 al empujar", pain="shoulder L 3 during")
say("los dos codos 2/10 por la mañana", pain="elbow L 2 morning; elbow R 2 morning")
say("se me hinchó la muñeca derecha, 4/10", pain="wrist R 4", flags="swelling")
say("me despertó el hombro derecho anoche, 5/10", pain="shoulder R 5 rest", flags="night_pain")
say("hormigueo en el antebrazo izquierdo cuando me cuelgo", pain="forearm L - during", flags="numbness")
say(
    "tras los fondos me dolía el pecho y me faltaba el aire",
    pain="chest - - after",
    flags="chest_pain breathless",
    does_or=("report pain",),
)
say("pino 3x30s y me mareé un montón", "handstand_hold 3x30s", flags="dizziness")
say("nada de dolor, ni hinchazón ni moretones", pain="- - 0")
say("bíceps derecho 2-3 durante, 0 después", pain="biceps R 3 during; biceps R 0 after")
say("2", pain="- - 2")
say("cuello 2, lumbar 1, rodilla sin dolor", pain="neck - 2; lower_back - 1; knee - 0")
say(
    "38,5 de fiebre desde ayer",
    "",
    "ill",
    flags="fever",
    at="2027-02-23 10:00",
    tz="Europe/Madrid",
    dates="2027-02-22..",
)

say("una molestia en el codo izquierdo, nada grave", pain="elbow L -", ask_or="score: una molestia")

# The rest
say("qué me toca hoy?", "", "plan_today", at="2027-02-23 08:10", tz="Europe/Madrid", dates_or=("2027-02-23",))
say("cómo queda la semana?", "", "plan_week")
say("¿por qué me bajaste las series?", "", "why")
say("cuánto me falta para la dominada a un brazo?", "", "progress")
say(
    "el viernes no puedo, ¿lo paso al domingo?",
    "",
    "move",
    at="2027-05-12 08:05",
    tz="America/Mexico_City",
    dates="2027-05-14..2027-05-16",
    maybe="missed",
)
say(
    "falté el lunes, finales en la facu",
    "",
    "missed",
    at="2027-11-03 21:45",
    tz="America/Argentina/Buenos_Aires",
    dates="2027-11-01",
)
say(
    "de viaje del 25 al 30 de julio, sin barra ni nada",
    "",
    "away equipment",
    at="2027-07-20 17:30",
    tz="America/Bogota",
    dates="2027-07-25..2027-07-30",
)
say("resfriado desde el domingo", "", "ill", at="2027-02-23 19:10", tz="Europe/Madrid", dates="2027-02-21..")
say(
    "mi hija tiene fiebre, mañana no entreno",
    "",
    "missed",
    at="2027-02-23 19:10",
    tz="Europe/Madrid",
    dates="2027-02-24",
)
say("se me rompió el cinturón de lastre", "", "equipment")
say("corrijo: la última serie fueron 3 reps, no 4", "", fix=("reps", 4, 3, None, None, "last"))
say(
    "perdón, los fondos de ayer eran 3x8 con 10 y no con 12,5",
    "dip 3x8 +10",
    at="2027-05-13 08:05",
    tz="America/Mexico_City",
    fix=("load_kg", 12.5, 10, "dip", None, "all"),
    on="2027-05-12",
    does_or=("report correction",),
)
say("elimina el último registro, me equivoqué de chat", "", "undo")
say("dile al entrenador que ya subí el vídeo", "", "for_coach")
say(
    "pausa todo hasta el 15 de agosto, me operan la muela",
    "",
    "pause",
    at="2027-07-20 17:30",
    tz="America/Bogota",
    dates="2027-07-20..2027-08-15",
)
say("ya estoy de vuelta, retomamos", "", "resume")
say("no quiero recibir más mensajes", "", "stop")
say("¿qué te puedo preguntar?", "", "help")
say("jaja gracias crack, buen finde", "", "smalltalk")
say("zxk 5 pqr", "", "unknown", maybe_unread=("5",), ask_or="intents: zxk 5 pqr")
say(
    "lun: dominadas 4x4 +15\nmié: fondos 3x8 +10",
    "pull_up 4x4 +15 on=2027-02-22; dip 3x8 +10 on=2027-02-24",
    at="2027-02-25 09:00",
    tz="Europe/Madrid",
)
say("anteayer supinas 3x6 +10", "chin_up 3x6 +10", at="2027-02-23 19:10", tz="Europe/Madrid", on="2027-02-21")
say(
    "recién llego a casa, fondos 4x8",
    "dip 4x8",
    at="2027-11-04 01:20",
    tz="America/Argentina/Buenos_Aires",
    on="2027-11-03",
)
