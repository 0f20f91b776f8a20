"""A second look, written blind: what Spanish-speaking athletes write."""

from typing import Any

from tests.corpus.lines import Theme

THEME = Theme("second", "es")


def say(text: str, sets: str = "", does: str = "", **more: Any) -> None:
    """A message sent on a Wednesday evening unless it says otherwise."""
    THEME.say(text, sets, does, **({"at": "2027-02-17 18:42", "tz": "Europe/Madrid"} | more))


MAIN = "m/weighted_pull_up pull_up 4x4 +20 @8"
TWO = "m/weighted_pull_up pull_up 4x4 +15 @8; a dip 3x8 +10"
PULLEY = "m one_arm_counterweight 3x2 LR -10 @8"

# Series
say("dominadas 4x4 +17,5", "pull_up 4x4 +17.5")
say("hoy 5 series de 3 dominadas con 20 kilos de lastre", "pull_up 5x3 +20")
say("fondos 12 10 8 sin peso", "dip 12,10,8")
say("dominadas supinas 3x6 con 10kg y fondos 3x8 con 15kg", "chin_up 3x6 +10; dip 3x8 +15")
say("domis 3x8", "pull_up 3x8")
say(
    "hice cuatro series de dominadas de cinco repeticiones con diez kilos y despues tres de diez flexiones",
    "pull_up 4x5 +10; push_up 3x10",
)
say("muscle ups: 3 sencillos y un doble", "muscle_up 1,1,1,2")
say("fondos en anillas 8/8/7", "ring_dip 8,8,7")
say("chin ups 4x6 bw", "chin_up 4x6")
say("dominadas agarre neutro 3x5 con 12 kg", "neutral_grip_pull_up 3x5 +12")
say("dominadas en anillas 4x5, remo en anillas 3x12", "ring_pull_up 4x5; ring_row 3x12")
say("lagartijas 40, 30, 25", "push_up 40,30,25")
say("sentadillas 5x5 90kg y peso muerto 3x5 130", "squat 5x5 +90", unread=("peso muerto 3x5 130",))
say("curl de bíceps 3x12 12,5 kg, curl martillo 3x10 14kg", "biceps_curl 3x12 +12.5; hammer_curl 3x10 +14")
say("jalón al pecho 4x10 65kg", "lat_pulldown 4x10 +65")
say("calenté con dominadas escapulares 2x10, luego dominadas 3x3 +25", "scapular_pull_up 2x10; pull_up 3x3 +25")
say("dominadas +20x4, +22,5x3, +25x2", "pull_up 4 +20; pull_up 3 +22.5; pull_up 2 +25")
say("flexiones en pino 4x3 contra la pared", "handstand_push_up 4x3")
say("elevaciones de piernas colgado 3x12", "hanging_leg_raise 3x12")
say("face pull 3x15 17,5kg, rotación externa 2x12 por lado 3kg", "face_pull 3x15 +17.5; external_rotation 2x12 LR +3")
say(
    "sentadilla búlgara 3x10 por pierna con 12kg, pistols 3x5 cada pierna",
    "split_squat 3x10 LR +12; pistol_squat 3x5 LR",
)
say("dominadas 3x5 +25 libras", "pull_up 3x5 +25lb")
say("pull ups lastradas 3 x 5 @ 20kg", "pull_up 3x5 +20")
# Esfuerzo
say("dominadas 4x3 +25 rpe 8", "pull_up 4x3 +25 last@8")
say("fondos 3x8 +10, me quedaban 2 en la última", "dip 3x8 +10 last@8")
say("dominadas 3x6, la última al fallo", "pull_up 3x6 last@10")
say("supinas 4x4 +15 todas rpe 7", "chin_up 4x4 +15 @7")
say("fondos 4x6 +20, costó", "dip 4x6 +20")
say("dominadas 3x5 +10, fondos 3x8. la sesión un 7, 50 minutos", "pull_up 3x5 +10; dip 3x8", srpe=7, mins=50)
say("dominadas 4x5 +10, podría haber hecho una más en la última", "pull_up 4x5 +10 last@9")
say("dominadas 3x5 +20 RIR 2", "pull_up 3x5 +20 last@8")
# Lados, isométricos, rango
say("colgado a un brazo izquierda 20s derecha 25s", "one_arm_hang L 20s; one_arm_hang R 25s")
say("dominadas arquero 3x4 por lado", "archer_pull_up 3x4 LR")
say("dominada a un brazo: derecha 1, izquierda 0 (por poco)", "one_arm_pull_up R 1; one_arm_pull_up L 0 fail")
say("polea con 7,5 kg de contrapeso a un brazo 3x2 por brazo", "one_arm_counterweight 3x2 LR -7.5")
say("colgarse de la barra 60 seg y 45 seg", "dead_hang 60s,45s")
say("dead hang 1 minuto", "dead_hang 60s")
say("L-sit 4x10 seg", "l_sit 4x10s")
say("tuck planche 5x6s, inclinación de plancha 3x20s", "tuck_planche 5x6s; planche_lean 3x20s")
say("pino libre 10s 15s 22s", "handstand_hold 10s,15s,22s")
say("straddle front lever 4x5 segundos", "straddle_front_lever 4x5s")
say("aguanté arriba con la barbilla sobre la barra 2x20s", "pull_up_top_hold 2x20s")
say("dominadas negativas 4x2 con +30", "pull_up 4x2 +30 ecc")
say("negativas a un brazo supinas 3x1 cada brazo", "one_arm_chin_up 3x1 LR ecc")
say("mitad superior de dominadas 3x5 +25", "pull_up 3x5 +25 upper")
say("medias dominadas 3x5 +20", "pull_up 3x5 +20 rom?", ask="rom: medias")
say("dominadas con pausa arriba 4x3 +10", "pull_up 4x3 +10 top")
say("intento de dominada con +45, fallé", "pull_up 0 +45 fail")
say("cluster dominadas +30: 2+2+1", "pull_up 2 +30; pull_up 2 +30 link; pull_up 1 +30 link")
say("dominadas con banda verde 3x6", "band_pull_up 3x6")
say("back lever 3x8s y hollow 3x40s", "back_lever 3x8s; hollow_hold 3x40s")
# Con plan
say("hecho", "pull_up 4x4 +20", today=MAIN)
say("todo según el plan, la última un 9", "pull_up 4x4 +20 last@9", today=MAIN)
say("lo hice pero con 17,5 en vez de 20", "pull_up 4x4 +17.5", today=MAIN)
say("4 4 3 3", "pull_up 4,4,3,3 +20", today=MAIN)
say("solo 3 series, tuve que recoger a los niños", "pull_up 3x4 +20", today=MAIN)
say("dominadas según plan, fondos no los hice", "pull_up 4x4 +15", today=TWO)
say("todo hecho, los fondos fueron 8 7 6", "pull_up 4x4 +15; dip 8,7,6 +10", today=TWO)
say(
    "izquierda como estaba, derecha la última solo 1",
    "one_arm_counterweight -10 L 2,2,2; one_arm_counterweight -10 R 2,2,1",
    today=PULLEY,
)
say("listo, todo cumplido, 45min, codo 0", "pull_up 4x4 +15; dip 3x8 +10", mins=45, pain="elbow - 0", today=TWO)
# Dolor y señales
say("codo izquierdo por dentro 3/10", pain="elbow_inner L 3")
say("me duele el hombro derecho, un 4, al empujar", pain="shoulder R 4 during")
say("las dos muñecas 2/10", pain="wrist L 2; wrist R 2")
say("sin dolor", pain="- - 0")
say("lumbar 2 después de entrenar", pain="lower_back - 2 after")
say("rodilla derecha 3/10 por la mañana", pain="knee R 3 morning")
say("me crujió el codo derecho y se me hinchó", pain="elbow R -", flags="pop swelling")
say(
    "hormigueo en los dedos de la mano izquierda después de colgarme",
    pain="hand L - after",
    flags="numbness",
    maybe="report",
)
say("tengo el meñique dormido", pain="hand - -", flags="numbness")
say("el hombro izquierdo me despertó anoche", pain="shoulder L - rest", flags="night_pain")
say("casi me desmayo en la última serie", flags="dizziness", maybe="report")
say("presión en el pecho y me faltaba el aire", pain="chest - -", pain_or=("",), flags="chest_pain breathless")
say("fiebre desde ayer, 38,5", does="ill", flags="fever", dates="2027-02-16..")
say("de repente sin fuerza en el brazo izquierdo, no podía sostener el vaso", pain="other L -", flags="sudden_weakness")
say("se me traba la rodilla al estirarla", pain="knee - -", pain_or=("knee - - during",), flags="locking")
say("moretón en el bíceps izquierdo y no sé de qué", pain="biceps L -", flags="bruising")
say("nada hinchado, nada dormido, codo 1/10", pain="elbow - 1")
say("mi hijo tiene fiebre, yo no. dominadas 3x5", "pull_up 3x5")
say("qué bomba, los brazos a reventar! curl 3x15 12kg", "biceps_curl 3x15 +12")
say(
    "el año pasado se me hinchó el hombro pero ya está bien. fondos 3x8",
    "dip 3x8",
    pain_or=("shoulder - 0",),
    does_or=("report pain",),
)
# Cuerpo
say("peso 72,4", bw=72.4)
say("70,9 kg esta mañana, dormí 7h", bw=70.9, sleep=7)
say("solo dormí 5 horas", does="report", sleep=5)
say("dormí 6:30, dominadas 3x5 +10, 40 min", "pull_up 3x5 +10", sleep=6.5, mins=40)
# Días y deseos
say("ayer fondos 4x6 +20", "dip 4x6 +20", on="2027-02-16")
say("lunes dominadas 3x5, martes fondos 3x8", "pull_up 3x5 on=2027-02-15; dip 3x8 on=2027-02-16")
say("anteayer remo en anillas 3x15", "ring_row 3x15", on="2027-02-15")
say("el 14 de febrero dominadas 3x3 +30", "pull_up 3x3 +30", on="2027-02-14")
say("qué me toca hoy?", does="plan_today", dates_or=("2027-02-17",))
say("cómo viene la semana", does="plan_week")
say("por qué menos peso esta vez?", does="why")
say("estoy mejorando o no?", does="progress")
say("puedo pasar lo de mañana al viernes?", does="move", dates="2027-02-18..2027-02-19")
say("ayer no entrené, perdón", does="missed", dates="2027-02-16")
say("me voy de viernes a domingo", does="away", dates="2027-02-19..2027-02-21")
say(
    "del 1 al 8 de marzo de vacaciones sin barra",
    does="away equipment",
    dates="2027-03-01..2027-03-08",
    does_or=("away",),
)
say("estoy malo, no puedo entrenar", does="ill", dates="2027-02-17..", dates_or=("2027-02-17",), maybe="missed")
say("ya estoy bien, volvemos", does="resume")
say("pausa hasta el 28 de febrero por favor", does="pause", dates="2027-02-17..2027-02-28")
say("no me escribas más", does="stop")
say("ayuda", does="help")
say("dile al entrenador que luego mando el video", does="for_coach")
say("borra lo último", does="undo")
say("corrección: eran 22,5, no 20", fix=("load_kg", 20, 22.5), on=None)
say("la última serie fueron 4, no 5", fix=("reps", 5, 4, None, None, "last"), on=None)
say("el gym está cerrado, solo tengo anillas en casa", does="equipment")
say("gracias crack", does="smalltalk")
say("jaja mi gato se subió a la barra", does="smalltalk", does_or=("unknown",))
say("xkcdf", does="unknown")
# Preguntar
say("fondos 20", "dip ? +?", ask="reps: 20", sets_or=("",))
say(
    "dominadas 4x5 @9",
    "pull_up 4x5 +?",
    ask="load_kg: @9",
    sets_or=("", "pull_up 4x5", "pull_up 4x5 last@9", "pull_up 4x5 +? last@9"),
)
say("dominadas 5x3 +225", "pull_up 5x3 +?", ask="load_kg: +225", sets_or=("",))
say("front lever 4x8s", "_ 4x8s", ask="movement: front lever", sets_or=("",))
say("lo de siempre", does="report", ask="sets: lo de siempre", does_or=("unknown",), on_or=(None,))
say("corrí 8 km y luego supinas 3x6", "chin_up 3x6", unread=("corrí 8 km",))
# Mezclados
say(
    "dominadas 4x4 +20 la última rpe 8, codo izquierdo 1/10, peso 71, dormí 8h. puedo pasar el viernes al sábado?",
    "pull_up 4x4 +20 last@8",
    does="move",
    pain="elbow L 1",
    bw=71,
    sleep=8,
    dates="2027-02-19..2027-02-20",
)
say(
    "hecho como estaba. el lunes falté por el dentista. avisa al coach porfa",
    "pull_up 4x4 +20",
    does="missed for_coach",
    today=MAIN,
    dates="2027-02-15",
)
say(
    "fondos 3x8 +10, después se me hinchó la muñeca derecha, 4/10. por qué hoy no hay dominadas?",
    "dip 3x8 +10",
    does="why",
    pain="wrist R 4 after",
    pain_or=("wrist R 4",),
    flags="swelling",
)
