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
say("fondos con 15kg: 8,7,7 la última a RPE 9,5", "dip 8,7 +15; dip 7 +15 @9.5")
say("dominadas 4@20 4@22,5 2@25 y a casa", "pull_up 4 +20; pull_up 4 +22.5; pull_up 2 +25")
say("agarre neutro 4x5 con 10, en la última me quedaban dos más", "neutral_grip_pull_up 4x5 +10 last@8")
say(
    "a un brazo con polea, contrapeso de 5 kg: izquierda 2, derecha 1",
    "one_arm_counterweight 2 L -5; one_arm_counterweight 1 R -5",
)
say("dominadas arqueras 3x3 por lado, sin prisa", "archer_pull_up 3x3 LR")
say(
    "arqueras con el brazo estirado en la anilla a la altura del hombro, 3x2 por lado, todas RPE 8",
    "archer_ring_shoulder 3x2 LR @8",
)
say("colgado a una mano 20s izquierda, 17s derecha", "one_arm_hang 20s L; one_arm_hang 17s R")
say("fondos en anillas 9/8/7, remo en anillas 3x12", "ring_dip 9,8,7; ring_row 3x12")
say(
    "tuck planche 4x9s, planche lean 3x25s, pino en la pared 2x50s",
    "tuck_planche 4x9s; planche_lean 3x25s; handstand_hold 2x50s",
)
say(
    "L-sit 4x15s, hollow hold 3x40s, elevaciones de piernas colgado 3x8",
    "l_sit 4x15s; hollow_hold 3x40s; hanging_leg_raise 3x8",
)
say(
    "piernas: sentadillas 5x5 80kg, pistols 3x4 por pierna, nórdicos 3x5",
    "squat 5x5 +80; pistol_squat 3x4 LR; nordic_curl 3x5",
)
say(
    "jalón al pecho 3x12 55 kg, face pull 3x15 20 kg, curl de bíceps 3x10 12 kg",
    "lat_pulldown 3x12 +55; face_pull 3x15 +20; biceps_curl 3x10 +12",
)
say("dominadas con banda 3x6, la banda me quita 15 kg", "band_pull_up 3x6 -15")
say("dominadas negativas 4x3, bajando en 5 segundos", "pull_up 4x3 ecc", maybe_unread=("bajando en 5 segundos",))
say(
    "dominadas 3x3 +15 con pausa arriba, luego 2x4 +25 solo la mitad de arriba",
    "pull_up 3x3 +15 top; pull_up 2x4 +25 upper",
)
say(
    "bueno hoy hice fondos cuatro series de seis con diez kilos la última fue un nueve de diez y después tres series de"
    " veinte flexiones",
    "dip 4x6 +10 last@9; push_up 3x20",
)
say("domindas 3x5 +20kg , fonods 3x8 sin peso", "pull_up 3x5 +20; dip 3x8")
say(
    "peso muerto 3x5 120 kg y después supinas 4x5",
    "chin_up 4x5",
    unread=("peso muerto 3x5 120 kg",),
    ask_or="movement: peso muerto",
)
say("corrí 6 km y luego dominadas 3x8", "pull_up 3x8", unread=("corrí 6 km",))
say("rest-pause de dominadas sin lastre: 11 + 4 + 3", "pull_up 11; pull_up 4,3 link")
say("muscle ups en anillas, 5 singles y fallé el sexto", "ring_muscle_up 5x1; ring_muscle_up 0 fail")
say("flexiones al fallo 48, después 30 y 22", "push_up 48 @10; push_up 30,22")
say(
    "Dormí 7,5 h, peso 71,8. Dominadas 5x3 +20, la última @8. 55 minutos, sesión 7/10",
    "pull_up 5x3 +20 last@8",
    sleep=7.5,
    bw=71.8,
    mins=55,
    srpe=7,
)
say("dominadas 4x4\nfondos 4x8\n\nRPE 7\ntres cuartos de hora", "pull_up 4x4; dip 4x8", srpe=7, mins=45)
say("hoy metí dominadas 4x5 con 10 kilos, re bien", "pull_up 4x5 +10", tz="America/Argentina/Buenos_Aires")
say("fondos 3x6 con 45 lbs", "dip 3x6 +45lb")

# Lo que hay que preguntar.
say("supinas 20", "chin_up ? +?", ask="reps: 20")
say(
    "dominadas 4x4 @9",
    "pull_up 4x4 +?",
    ask="load_kg: @9",
    also=tuple({"sets": sets(s)} for s in ("pull_up 4x4 +? last@9", "pull_up 4x4 last@9", "pull_up 4x4")),
)
say("hice las de 5 con 15", does="report", ask="movement: hice las de 5 con 15", also=({"sets": sets("_ 5 +15")},))
say("front lever 4x9s", "_ 4x9s", ask="movement: front lever")
say("fondos 4x5 +210", "dip 4x5 +?", ask="load_kg: +210")
say("una serie de dominadas con 15, 7 u 8, perdí la cuenta", "pull_up ? +15", ask="reps: 7 u 8")
say("dominadas 4x5 +10, rpe 6-9 en todas", "pull_up 4x5 +10", ask="rpe: rpe 6-9 en todas")
say("el hombro hoy es un 14", pain="shoulder - -", ask="score: 14")
say("la semana pasada hice fondos 4x8, se me olvidó avisar", "dip 4x8", on=None, ask="performed_on: la semana pasada")
say("lo mismo que la última vez", does="report", ask="sets: lo mismo que la última vez")

# Según el plan.
say("todo hecho 👍", "scapular_pull_up 2x10; pull_up 4x4 +17.5; face_pull 3x15 +15", today=TODO)
say("según el plan, la última serie a RPE 9", "chin_up 4x4 +15 last@9", today=CUATROS)
say("todo según el plan, solo que en la última 3 en vez de 4", "chin_up 3x4 +15; chin_up 3 +15", today=CUATROS)
say("hice todo menos los face pulls, 40 min", "scapular_pull_up 2x10; pull_up 4x4 +17.5", today=TODO, mins=40)
say("hice las de 3 con 27,5 y tuve que irme", "pull_up 4x3 +27.5", today=AMBOS)
say("5x3 con 22,5 ✅", "pull_up 5x3 +22.5", today=TRESES)
say("4, 4, 4, 3", "chin_up 4,4,4,3 +15", today=CUATROS)
say("solo pude con 3 de las 5 series, cerraban el gimnasio", "pull_up 3x3 +22.5", today=TRESES)
say("izquierda como estaba previsto, derecha solo 1 en todas", "one_arm_counterweight 3x2/1 LR -7.5", today=POLEA)
say("hecho pero con 20 en lugar de 22,5", "pull_up 5x3 +20", today=TRESES)
say("los holds bien, el último 9s en vez de 12", "tuck_front_lever 12s,12s,12s,9s", today=SOSTENER)
say("como estaba planeado, todas @7", "chin_up 4x4 +15 @7", today=CUATROS)
say("una repetición más de lo previsto en cada serie", "dip 3x7 +15", today="m dip 3x6 +15 @8")
say(
    "plan cumplido, codo izquierdo por dentro 2/10 después",
    "pull_up 5x3 +22.5",
    pain="elbow_inner L 2 after",
    today=TRESES,
)

# Dolor y señales.
say("hombro derecho 3/10, solo en los fondos", pain="shoulder R 3 during")
say("los dos codos 2/10 después de entrenar", pain="elbow L 2 after; elbow R 2 after")
say("la muñeca izquierda amaneció hinchada, 4/10", pain="wrist L 4 morning", flags="swelling")
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
say(
    "anoche el hombro izquierdo me despertó dos veces",
    pain="shoulder L - rest",
    pain_or=("shoulder L -",),
    flags="night_pain",
)
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
say("ayer me lo salté, el niño estaba malo", does="missed", at=MIERCOLES, dates="2027-03-23")
say(
    "del 3 al 10 de abril estoy de viaje, solo llevo las anillas",
    does="away equipment",
    at=MIERCOLES,
    dates="2027-04-03..2027-04-10",
)
say("con gripe desde el lunes, en cama", does="ill", at=MIERCOLES, dates="2027-03-22..")
say("perdón, eran 27,5 y no 25", fix=("load_kg", 25, 27.5))
say("corrijo: la última serie fue RPE 9, no 8", fix=("rpe", 8, 9, None, None, "last"))
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
say("anteayer muscle ups 4x2", "muscle_up 4x2", at=MIERCOLES, on="2027-03-22")
say("recién llego a casa, supinas 4x4 +10", "chin_up 4x4 +10", at="2027-03-24 01:30", on="2027-03-23")
say("el 28 hice fondos 5x5 +20, olvidé escribirlo", "dip 5x5 +20", at="2027-02-03 10:00", on="2027-01-28")
