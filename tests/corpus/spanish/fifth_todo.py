"""Una quinta mirada, escrita a ciegas: notación, plan, dolor, señales, días y deseos, mezclados."""

from tests.corpus.lines import Theme
from tests.corpus.notation import sets

THEME = Theme("fifth-todo", "es")
say = THEME.say

MIERCOLES = "2027-03-24 19:00"
TODO = "w scapular_pull_up 2x10; m/weighted_pull_up pull_up 4x4 +17.5 @7; a face_pull 3x15 +15"
CUATROS = "m chin_up 4x4 +15 @8"
TRESES = "m/weighted_pull_up pull_up 5x3 +22.5 @8"
AMBOS = "m/weighted_pull_up pull_up 4x3 +25 @8; a dip 3x8 +10 @8"
POLEA = "m/one_arm_counterweight one_arm_counterweight 3x2 LR -7.5 @8"
SOSTENER = "s/tuck_front_lever tuck_front_lever 4x12s @8"

# Lo hecho.
say("Dominadas lastradas 4x4 +17,5, salieron limpias", "pull_up 4x4 +17.5")
say("dominadas supinas 3x6 sin peso y luego 2x3 con 7,5 kg", "chin_up 3x6; chin_up 2x3 +7.5")
say("fondos lastrados 12,5 kg: 10-9-8, en la última me quedaba una", "dip 10,9 +12.5; dip 8 +12.5 @9")
say("supinas: un triple con 30 y luego 4x4 con 22,5. El triple a rpe 8,5", "chin_up 3 +30 @8.5; chin_up 4x4 +22.5")
say("agarre neutro 4x5 con 10, en la última me quedaban dos más", "neutral_grip_pull_up 4x5 +10 last@8")
say(
    "dominada a un brazo con la mano libre en el bíceps 2x2 por brazo, solo mitad inferior",
    "one_arm_hand_on_biceps 2x2 LR lower",
)
say("dominadas arqueras 3x3 por lado, sin prisa", "archer_pull_up 3x3 LR")
say(
    "arqueras con el brazo estirado en la anilla a la altura del hombro, 3x2 por lado, todas RPE 8",
    "archer_ring_shoulder 3x2 LR @8",
)
say("dominada a una mano: izq 1, der fallada por nada", "one_arm_pull_up 1 L; one_arm_pull_up 0 R fail")
say("dominadas en anillas 6/6/5 y colgado de la barra 70s", "ring_pull_up 6,6,5; dead_hang 70s")
say(
    "back lever 3x8s, straddle front lever 4s 4s 3s, flexiones en pica 2x10",
    "back_lever 3x8s; straddle_front_lever 4s,4s,3s; pike_push_up 2x10",
)
say(
    "L-sit 4x15s, hollow hold 3x40s, elevaciones de piernas colgado 3x8",
    "l_sit 4x15s; hollow_hold 3x40s; hanging_leg_raise 3x8",
)
say(
    "zancadas búlgaras 3x9 por pierna con 14kg, sentadillas 4x6 70kg. mañana no bajo escaleras",
    "split_squat 3x9 LR +14; squat 4x6 +70",
)
say(
    "curl martillo 3x12 con 9 kg, rotación externa 2x15 por brazo 3 kg, remo 4x8 50 kg",
    "hammer_curl 3x12 +9; external_rotation 2x15 LR +3; row 4x8 +50",
)
say("dominadas con banda 3x6, la banda me quita 15 kg", "band_pull_up 3x6 -15")
say("excéntricas de dominada a un brazo 3x1 por brazo", "one_arm_pull_up 3x1 LR ecc")
say(
    "dominadas 3x3 +15 con pausa arriba, luego 2x4 +25 solo la mitad de arriba",
    "pull_up 3x3 +15 top; pull_up 2x4 +25 upper",
)
say(
    "te cuento hoy dominadas cinco series de dos con veinticinco kilos y luego fondos doce diez y nueve sin peso",
    "pull_up 5x2 +25; dip 12,10,9",
)
say("domindas 3x5 +20kg , fonods 3x8 sin peso", "pull_up 3x5 +20; dip 3x8")
say(
    "peso muerto 3x5 120 kg y después supinas 4x5",
    "chin_up 4x5",
    unread=("peso muerto 3x5 120 kg",),
    ask_or="movement: peso muerto",
)
say("corrí 6 km y luego dominadas 3x8", "pull_up 3x8", unread=("corrí 6 km",))
say("drop set de fondos: 6 con 20 kg, seguido 9 sin peso", "dip 6 +20; dip 9 link")
say("muscle ups 3x2, en la última serie fallé la segunda", "muscle_up 2,2; muscle_up 1 fail")
say("flexiones al fallo 48, después 30 y 22", "push_up 48 @10; push_up 30,22")
say(
    "70,4 kg en la báscula. supinas 4x5 +12,5, la última me quedaban 2. total 1h10",
    "chin_up 4x5 +12.5 last@8",
    bw=70.4,
    mins=70,
)
say("dominadas 4x4\nfondos 4x8\n\nRPE 7\ntres cuartos de hora", "pull_up 4x4; dip 4x8", srpe=7, mins=45)
say("hoy metí dominadas 4x5 con 10 kilos, re bien", "pull_up 4x5 +10", tz="America/Argentina/Buenos_Aires")
say("superserie: dominadas 4x5 +10 y fondos 4x8 +10", "pull_up 4x5 +10; dip 4x8 +10")

# Lo que hay que preguntar.
say("supinas 20", "chin_up ? +?", ask="reps: 20")
say(
    "dominadas 4x4 @9",
    "pull_up 4x4 +?",
    ask="load_kg: @9",
    also=tuple({"sets": sets(s)} for s in ("pull_up 4x4 +? last@9", "pull_up 4x4 last@9", "pull_up 4x4")),
)
say("hice las de 5 con 15", does="report", ask="movement: hice las de 5 con 15", also=({"sets": sets("_ 5 +15")},))
say("arqueras 3x2 por lado", "_ 3x2 LR", ask="movement: arqueras")
say("dominadas con 20, 22,5 y 25, 5x4", "pull_up 5x4 +?", ask="load_kg: 20, 22,5 y 25")
say("una serie de dominadas con 15, 7 u 8, perdí la cuenta", "pull_up ? +15", ask="reps: 7 u 8")
say("dominadas 4x5 +10, rpe 6-9 en todas", "pull_up 4x5 +10", ask="rpe: rpe 6-9 en todas")
say("a un brazo supino: 2 con un brazo y 1 con el otro", "one_arm_chin_up 2; one_arm_chin_up 1", ask="side: un brazo")
say("la semana pasada hice fondos 4x8, se me olvidó avisar", "dip 4x8", on=None, ask="performed_on: la semana pasada")
say("lo mismo que la última vez", does="report", ask="sets: lo mismo que la última vez")

# Según el plan.
say("listo todo, calentamiento incluido", "scapular_pull_up 2x10; pull_up 4x4 +17.5; face_pull 3x15 +15", today=TODO)
say("según el plan, la última serie a RPE 9", "chin_up 4x4 +15 last@9", today=CUATROS)
say(
    "fallé la última repe de la tercera serie, lo demás según el plan",
    "chin_up 2x4 +15; chin_up 3 +15 fail; chin_up 4 +15",
    today=CUATROS,
)
say("sin tiempo para los fondos, el resto hecho, 30 min", "pull_up 4x3 +25", today=AMBOS, mins=30)
say("hice las de 3 con 27,5 y tuve que irme", "pull_up 4x3 +27.5", today=AMBOS)
say("5x3 con 22,5 ✅", "pull_up 5x3 +22.5", today=TRESES)
say("4, 4, 4, 3", "chin_up 4,4,4,3 +15", today=CUATROS)
say("paré en la segunda serie porque se fue la luz. las 2 con 22,5", "pull_up 2x3 +22.5", today=TRESES)
say("izquierda como estaba previsto, derecha solo 1 en todas", "one_arm_counterweight 3x2/1 LR -7.5", today=POLEA)
say("hecho con 2,5 kg menos en los dos ejercicios", "pull_up 4x3 +22.5; dip 3x8 +7.5", today=AMBOS)
say("tuck: 12, 12, 10 y 8 segundos", "tuck_front_lever 12s,12s,10s,8s", today=SOSTENER)
say("como estaba planeado, todas @7", "chin_up 4x4 +15 @7", today=CUATROS)
say("una repetición más de lo previsto en cada serie", "dip 3x7 +15", today="m dip 3x6 +15 @8")
say(
    "plan cumplido, codo izquierdo por dentro 2/10 después",
    "pull_up 5x3 +22.5",
    pain="elbow_inner L 2 after",
    today=TRESES,
)

# Dolor y señales.
say(
    "lumbar 2/10 al levantarme, cadera 0",
    pain="lower_back - 2 morning; hip - 0",
    pain_or=("lower_back - 2 morning; hip - 0 morning",),
)
say("los dos codos 2/10 después de entrenar", pain="elbow L 2 after; elbow R 2 after")
say(
    "sentí un chasquido en el bíceps izquierdo bajando de la barra y ahora está morado",
    pain="biceps L -",
    pain_or=("biceps L - during",),
    flags="pop bruising",
    maybe="report",
)
say(
    "antebrazo derecho 3 al colgarme y se me duermen dos dedos",
    pain="forearm R 3 during; hand R - during",
    pain_or=(
        "forearm R 3 during; hand - - during",
        "forearm R 3 during; hand - -",
        "forearm R 3 during; hand R -",
        "forearm R 3 during",
    ),
    flags="numbness",
)
say("me mareé mucho después del pino 3x30s y tuve que sentarme", "handstand_hold 3x30s", flags="dizziness")
say(
    "dolor en el pecho después de las dominadas y me faltaba el aire",
    pain="chest - - after",
    flags="chest_pain breathless",
    maybe="report",
)
say("dominadas 4x4 +10. rodilla derecha 1/10, sin hinchazón ni chasquidos", "pull_up 4x4 +10", pain="knee R 1")
say("cero dolor 🙏", pain="- - 0")
say("2", pain="- - 2")
say(
    "la rodilla izquierda se me bloquea en las pistols, 3/10",
    pain="knee L 3 during",
    pain_or=("knee L 3",),
    flags="locking",
)

# Deseos y días.
say("¿qué me toca hoy?", does="plan_today", at=MIERCOLES, dates_or=("2027-03-24",))
say("¿por qué menos peso? y mándame lo que queda de semana", does="why plan_week")
say("¿cuánto me falta para la dominada a un brazo?", does="progress")
say("¿puedo cambiar el viernes al domingo?", does="move", at=MIERCOLES, dates="2027-03-26..2027-03-28")
say("lunes y martes no entrené, mucho lío en el trabajo", does="missed", at=MIERCOLES, dates="2027-03-22..2027-03-23")
say("se rompió mi barra de puertas, por ahora solo anillas", does="equipment")
say("tengo 38,5 de fiebre desde ayer", does="ill", at=MIERCOLES, flags="fever", dates="2027-03-23..")
say("perdón, eran 27,5 y no 25", fix=("load_kg", 25, 27.5))
say("me confundí, en la última serie fueron 2 y no 3", fix=("reps", 3, 2, None, None, "last"))
say("borra el último registro porfa", does="undo")
say("mudanza. pausa todo hasta el 12 de abril", does="pause", at=MIERCOLES, dates="2027-03-24..2027-04-12")
say("ya estoy bien, podemos seguir", does="resume")
say("no quiero más mensajes, me doy de baja", does="stop")
say("¿qué sabes hacer?", does="help")
say("dile al entrenador que ya subí el vídeo", does="for_coach")
say("jajaja el gato del vecino otra vez mirando 😹", does="smalltalk")
say(
    "lun dominadas 5x3 +20, mar fondos 4x6 +15",
    "pull_up 5x3 +20 on=2027-03-22; dip 4x6 +15 on=2027-03-23",
    at=MIERCOLES,
)
say("el sábado dominadas 3x6 +10", "pull_up 3x6 +10", at=MIERCOLES, on="2027-03-20")
say("recién llego a casa, supinas 4x4 +10", "chin_up 4x4 +10", at="2027-03-24 01:30", on="2027-03-23")
say("el 28 hice fondos 5x5 +20, olvidé escribirlo", "dip 5x5 +20", at="2027-02-03 10:00", on="2027-01-28")
