"""Una sexta mirada, escrita a ciegas: cifras que no son lo que parecen, negaciones lejanas y relatos largos."""

from typing import Any

from tests.corpus import notation
from tests.corpus.lines import Theme, asks

THEME = Theme("sixth-todo", "es")


def say(text: str, sets: str = "", does: str = "", **more: Any) -> None:
    """A message sent on a Friday evening unless it says otherwise."""
    THEME.say(text, sets, does, **({"at": "2027-06-11 20:15", "tz": "Europe/Madrid"} | more))


def asked(words: str, sets: str = "", **more: Any) -> dict[str, Any]:
    """An alternative that asks back and leaves the sets as open as that."""
    return {"ask": asks(words), "sets": notation.sets(sets)} | more


MEXICO = {"tz": "America/Mexico_City"}
PLATA = {"tz": "America/Argentina/Buenos_Aires"}
BOGOTA = {"tz": "America/Bogota"}

PESADO = "w ring_row 2x8; m/weighted_pull_up pull_up 4x3 +27.5 @8; a biceps_curl 3x10 +12"
VOLUMEN = "m/weighted_pull_up pull_up 4x6 +10 @7; a ring_dip 3x8"
FONDOS = "m dip 5x4 +22.5 @8"
POLEA = "s/counterweight one_arm_counterweight 3x2 LR -10 @7"
STRADDLE = "s/straddle_front_lever straddle_front_lever 4x6s @8; a hanging_leg_raise 3x8"
HOMBRO = "s/hand_on_shoulder one_arm_hand_on_shoulder 2x1 LR lower @8; m pull_up 4x4 +25 @8"

# Lo hecho.
say("hice tres de fondos: 11, 9 y 8, sin nada de peso", "dip 11,9,8")
say("me salieron 9 dominadas seguidas, la semana pasada eran 7", "pull_up 9")
say("cuatro series de tres supinas con doce y medio de lastre", "chin_up 4x3 +12.5")
say("neutras 6-6-5 con 7.5", "neutral_grip_pull_up 6,6,5 +7.5")
say("fondos: dos de calentamiento de 8 sin lastre y luego 4x5 con 20", "dip 2x8; dip 4x5 +20")
say(
    "dominada a una mano: con la derecha 2, con la izquierda ninguna, me quedé a media subida",
    "one_arm_pull_up 2 R; one_arm_pull_up 0 L fail",
)
say(
    "polea a un brazo con 12,5 kg de ayuda: izq 3-3-2, der 3-2-2",
    "one_arm_counterweight 3,3,2 L -12.5; one_arm_counterweight 3,2,2 R -12.5",
)
say(
    "dominadas arqueras: 4 izq y 3 der, segunda vuelta 3 y 3",
    "archer_pull_up 4/3 LR; archer_pull_up 3/3 LR",
)
say("colgado de la barra un minuto, luego 45 segundos y luego 40", "dead_hang 60s,45s,40s")
say("tuck planche 6s, 6s y 5s. pino contra la pared 50 segundos", "tuck_planche 6s,6s,5s; handstand_hold 50s")
say("fondos con una pesa rusa de 24 colgada, 3x5", "dip 3x5 +24")
say("zancadas búlgaras 3x8 por pierna, mancuernas de 10 kg", "split_squat 3x8 LR +10")
say("dominadas con liga verde 3x6 y después con la morada 2x8", "band_pull_up 3x6; band_pull_up 2x8", **MEXICO)
say("dominadas asistidas con goma, me quita unos 12 kilos, 4x6", "band_pull_up 4x6 -12")
say(
    "dominadas 3x3 +20 aguantando 2 segundos arriba en cada una",
    "pull_up 3x3 +20 top",
    maybe_unread=("2 segundos",),
)
say("dominadas de abajo a la mitad nada más, 3x5 con 25", "pull_up 3x5 +25 lower", ask_or="rom: de abajo a la mitad")
say(
    "negativas a un brazo en supino, 3x1 por brazo, bajando en 6 s", "one_arm_chin_up 3x1 LR ecc", maybe_unread=("6 s",)
)
say("fondos en anillas 8, 7, y en la tercera fallé la séptima", "ring_dip 8,7; ring_dip 6 fail")
say("5 intentos sueltos de muscle up: 4 buenos y el último nulo", "muscle_up 4x1; muscle_up 0 fail")
say(
    "cluster de dominadas con 30: 2, diez segundos, 1, diez segundos, 1",
    "pull_up 2 +30; pull_up 1,1 +30 link",
    maybe_unread=("diez segundos",),
)
say(
    "drop set de supinas: 5 con 15, suelto un disco y 4 con 5, suelto todo y 6 más",
    "chin_up 5 +15; chin_up 4 +5 link; chin_up 6 link",
)
say("escalera 1-2-3-2-1 de fondos, dos vueltas", "dip 1,2,3,2,1; dip 1,2,3,2,1")
say(
    "2 dominadas cada minuto durante 15 minutos",
    "pull_up 15x2",
    also=(asked("sets: 15 minutos", "pull_up 2"), asked("sets: 15 minutos")),
    maybe_unread=("durante 15 minutos",),
)
say(
    "circuito de 4 vueltas: 5 supinas, 10 lagartijas, 15 sentadillas",
    "chin_up 4x5; push_up 4x10; squat 4x15",
    **BOGOTA,
)
say("rest pause de fondos sin lastre: 10, respiro y 4, respiro y 2", "dip 10; dip 4,2 link")
say("dominadas 4x4 +17,5, la primera a rpe 7 y las demás a rpe 8", "pull_up 4 +17.5 @7; pull_up 3x4 +17.5 @8")
say("supinas 3x5 +10, rpe 7/8/9", "chin_up 5 +10 @7; chin_up 5 +10 @8; chin_up 5 +10 @9")
say("fondos 3x6 con 25, la última casi al fallo", "dip 3x6 +25")
say("esfuerzo global 8. dominadas 4x4 +20, fondos 3x8", "pull_up 4x4 +20; dip 3x8", srpe=8)
say("dos series AMRAP de dominadas sin lastre, 13 y 10", "pull_up 13,10")
say("fondos 4x6 +15, me guardé 3 en la última", "dip 4x6 +15 last@7")
say("domindas 4x5 +12.5kg . lagartjas 3x20 , listo", "pull_up 4x5 +12.5; push_up 3x20", **MEXICO)
say("che, hoy le di a las supinas: 4x6 con el disco de 5", "chin_up 4x6 +5", **PLATA)

# Cifras de ayer, del plan, de otros.
say("dominadas 4x3 con 27.5, subieron como si fueran 20", "pull_up 4x3 +27.5")
say("hace un mes hacía 3x5 con 10 y hoy 3x5 con 17,5, hablo de dominadas", "pull_up 3x5 +17.5")
say("mi novia hizo 5 dominadas, yo 11, mi perro 0", "pull_up 11")
say("quiero llegar a +40 este año. de momento dominadas 3x2 +32,5", "pull_up 3x2 +32.5")
say("el próximo día subo a 25; hoy fondos 4x5 con 22,5", "dip 4x5 +22.5")
say("tenía que hacer 5x5 y solo pude 4x5, supinas con 10", "chin_up 4x5 +10")
say("dominadas 4x4 con 15, no, espera, 4x5 con 15", "pull_up 4x5 +15")
say("pensé que eran 20 kilos pero el disco era de 15. fondos 3x6", "dip 3x6 +15")
say("fondos 3x8, 34 grados en el parque, 2 litros de agua y un helado de 3 euros", "dip 3x8")
say("hoy ni una dominada, solo remo en anillas 4x10", "ring_row 4x10", maybe="missed")
say("una serie de dominadas con 15, estuve a nada de sacar la sexta pero no subió", "pull_up 5 +15 fail")
say("cumplí 50 y me regalé 50 flexiones: 20, 15 y 15", "push_up 20,15,15")
say("el coach me puso 4x3 y metí 5x3, dominadas con 20, no me pude aguantar", "pull_up 5x3 +20")
say(
    "mañana toca intentar 3x3 con 35, deséame suerte",
    does="smalltalk",
    does_or=("unknown",),
    maybe_unread=("3x3 con 35",),
)

# Lo que hay que preguntar.
say("dominadas 3x4 o 4x4, no me acuerdo, con 10", "pull_up ? +10", does="report", ask="sets: 3x4 o 4x4")
say("hice las de 2 con 30", does="report", ask="movement: hice las de 2 con 30", sets_or=("_ 2 +30",))
say("plancha 4x6 segundos, muñecas bien", "_ 4x6s", ask="movement: plancha", pain_or=("wrist - 0",), maybe="pain")
say("fondos 3x5 con 20 o 25, los discos no tenían número", "dip 3x5 +?", ask="load_kg: 20 o 25")
say("la rodilla hoy es un 13", pain="knee - -", ask="score: 13")
say("el otro día hice supinas 4x4, no te avisé", "chin_up 4x4", on=None, ask="performed_on: el otro día")
say("peso 6,94", does="bodyweight", ask="bodyweight_kg: 6,94")
say(
    "a un brazo con la mano en el bíceps, con uno 2 y con el otro 3",
    "one_arm_hand_on_biceps 2,3",
    ask="side: con uno 2 y con el otro 3",
)

# Según el plan.
say("hecho, sin los curls", "ring_row 2x8; pull_up 4x3 +27.5", today=PESADO)
say(
    "todo como tocaba, pero en las dominadas bajé a 25",
    "ring_row 2x8; pull_up 4x3 +25; biceps_curl 3x10 +12",
    today=PESADO,
)
say("6, 6, 6, 4 y los fondos según el plan", "pull_up 6,6,6,4 +10; ring_dip 3x8", today=VOLUMEN)
say("las de 4 me salieron con 25", "dip 5x4 +25", today=FONDOS)
say(
    "izquierda 2 en todas, derecha 2, 2 y 1",
    "one_arm_counterweight 2,2,2 L -10; one_arm_counterweight 2,2,1 R -10",
    today=POLEA,
)
say("todo hecho, y eso que dormí 5 horas. la última a rpe 9", "dip 5x4 +22.5 last@9", sleep=5, today=FONDOS)
say("cambié los fondos por flexiones 3x20", "push_up 3x20", today=FONDOS, maybe="missed")
say("igual que el plan solo que con 2 repes menos en la quinta", "dip 4x4 +22.5; dip 2 +22.5", today=FONDOS)
say(
    "aguantes: 6, 6, 5 y 4. las elevaciones, hechas",
    "straddle_front_lever 6s,6s,5s,4s; hanging_leg_raise 3x8",
    today=STRADDLE,
)
say("plan cumplido, todas las series a rpe 7,5", "dip 5x4 +22.5 @7.5", today=FONDOS)
say("el calentamiento no lo hice, y los curls tampoco, dominadas sí", "pull_up 4x3 +27.5", today=PESADO)
say(
    "mano en el hombro: izq 1 y 1, der 1 y un fallo. las dominadas tal cual",
    "one_arm_hand_on_shoulder 1 LR lower; one_arm_hand_on_shoulder 1 L lower; one_arm_hand_on_shoulder 0 R lower fail; "
    "pull_up 4x4 +25",
    today=HOMBRO,
)

# Varios días.
say(
    "lunes dominadas 4x4 +20, miércoles fondos 4x6 +15, hoy descanso",
    "pull_up 4x4 +20 on=2027-06-07; dip 4x6 +15 on=2027-06-09",
)
say("anteayer por la noche fondos 3x10, 40 minutos", "dip 3x10", mins=40, on="2027-06-09")
say("ya en casa, supinas 4x4 +12,5", "chin_up 4x4 +12.5", at="2027-06-12 00:55", on="2027-06-11")

# Dolor y señales.
say(
    "codo izquierdo por dentro: 3 entrenando, 1 después, 0 esta mañana",
    pain="elbow_inner L 3 during; elbow_inner L 1 after; elbow_inner L 0 morning",
)
say("el hombro derecho, que la semana pasada era un 5, hoy un 1", pain="shoulder R 1")
say("la verdad es que ya no me duele nada de nada", pain="- - 0")
say("entre los omóplatos un 2, lo demás perfecto", pain="upper_back - 2")
say("me tira el bíceps derecho, un 2, sin chasquido ni hinchazón ni nada raro", pain="biceps R 2")
say(
    "no pegué ojo por el dolor en el hombro izquierdo",
    pain="shoulder L - rest",
    pain_or=("shoulder L -",),
    flags="night_pain",
)
say(
    "en la segunda serie algo me hizo crac en la muñeca derecha, paré ahí mismo",
    pain="wrist R - during",
    pain_or=("wrist R -",),
    flags="pop",
    maybe="report",
)
say("al bajar de la barra se me fue la vista unos segundos", flags="dizziness", maybe="report")
say(
    "a mi suegro le dio un dolor en el pecho ayer y pasé la tarde en urgencias, no entrené",
    does="missed",
    dates="2027-06-10",
)
say("acabé resoplando como un toro pero ahí están los fondos, 5x5 con 20", "dip 5x5 +20")
say("tengo el gemelo izquierdo lleno de moretones y no me di con nada", pain="other L -", flags="bruising")
say("de joven me rompí la muñeca y se me quedó torcida meses; hoy pino 3x30s sin drama", "handstand_hold 3x30s")
say("me parto con tus mensajes, casi me ahogo de la risa 😂", does="smalltalk")
say(
    "la mano derecha se me queda sin fuerza de golpe, no pude ni cerrar el puño",
    pain="hand R -",
    flags="sudden_weakness",
)

# Cuerpo, sueño, duración.
say("la báscula dice 77,8, ayer decía 78,6", bw=77.8, body=78)
say("de seis y media a ocho menos cuarto, 75 minutos: supinas 5x5", "chin_up 5x5", mins=75)
say("sesión de 6 sobre 10, hora y media contando el calentamiento y la cháchara", srpe=6, mins=90)

# Días.
say("¿puedo adelantar lo del domingo a mañana?", does="move", dates="2027-06-13..2027-06-12")
say(
    "ayer carrera, 10 km en 48:20. hoy sin piernas, no entreno",
    does="missed",
    dates="2027-06-11",
    unread=("10 km en 48:20",),
)
say("con 38,7 de fiebre desde anoche", does="ill", flags="fever", dates="2027-06-10..", dates_or=("2027-06-11..",))
say("oposiciones, ponme en pausa hasta el 3 de julio", does="pause", dates="2027-06-11..2027-07-03")
say("de lunes a jueves estoy en Oporto por curro", does="away", dates="2027-06-14..2027-06-17")

# Corregir, preguntar, hablar.
say("en la segunda serie de fondos fueron 7, no 8", fix=("reps", 8, 7, "dip", None, 2))
say("me colé, ayer eran 17,5 y no 20", fix=("load_kg", 20, 17.5), on="2027-06-10")
say("olvida lo que te acabo de mandar, era de otro día", does="undo")
say("¿el entrenador puede mirar mi vídeo de ayer?", does="for_coach")
say("¿y este descargón a santo de qué? ¿por qué bajan los kilos?", does="why")
say("¿he mejorado algo en fondos desde enero?", does="progress")
say("¿cuánto lastre me pongo hoy?", does="plan_today", dates_or=("2027-06-11",))

say("se me reventó la goma gorda, por ahora me queda solo la fina", does="equipment")
say("ya no sigo con esto, no me escribas más por favor", does="stop")

# Relatos.
say(
    "Por partes. Calenté con 2x8 retracciones escapulares, luego dominadas, un top set de 2 con 37,5 a RPE 9. "
    "Quería bajar a 30 y hacer 4x3, pero me planté en la tercera serie. Rematé con flexiones, 20 y 18.",
    "scapular_pull_up 2x8; pull_up 2 +37.5 @9; pull_up 3x3 +30; push_up 20,18",
)
say(
    "Ayer entrené con un colega que mueve 45 kilos como si nada. Yo arranqué con 20 y saqué 4, luego dos series de 3 "
    "con 22,5. Todo dominadas pronas. Hoy no siento los brazos jaja, pero de las agujetas.",
    "pull_up 4 +20; pull_up 2x3 +22.5",
    on="2027-06-10",
)
say(
    "Dormí fatal, unas 4 horas. Peso 68,7. Aun así fondos 4x6 +20, la última a rpe 9. La muñeca ya no duele.",
    "dip 4x6 +20 last@9",
    sleep=4,
    bw=68.7,
    body=69,
    pain="wrist - 0",
)
say(
    "Día de test. Supina con 35 arriba, con 40 arriba, con 42,5 no pude. El año pasado mi tope era 30. Contentísimo.",
    "chin_up 1 +35; chin_up 1 +40; chin_up 0 +42.5 fail",
)
say(
    "Hoy polea a un brazo. Con 12,5 de contrapeso, 3 por lado. Con 10, izquierda 2 y derecha 1. Con 7,5 ni lo intenté.",
    "one_arm_counterweight 3 LR -12.5; one_arm_counterweight 2/1 LR -10",
)
say(
    "Me preocupa un poco el hombro izquierdo. En los fondos llegó a 4. No está hinchado ni he perdido fuerza. "
    "Pregúntale al entrenador si el domingo empujo o no.",
    does="for_coach",
    pain="shoulder L 4 during",
)
say(
    "De lunes a miércoles no pisé el gym, cierre de trimestre. Hoy sí: dominadas 4x4 con 20, la última @8,5. "
    "Fondos 3x10. Una hora escasa.",
    "pull_up 4x4 +20 last@8.5; dip 3x10",
    does="missed",
    dates="2027-06-07..2027-06-09",
    mins=60,
)
say(
    "Estrené el chaleco nuevo, 6 kilos, el viejo era de 10. Cuatro series de 7 dominadas. En la última me "
    "sobraban dos.",
    "pull_up 4x7 +6 last@8",
    maybe="equipment",
)
say(
    "hola pues hoy primero me colgué de la barra un minuto y luego cincuenta segundos y después dominadas "
    "cuatro series "
    "de tres con diecisiete kilos y medio y al final el pino en la pared cuarenta segundos",
    "dead_hang 60s,50s; pull_up 4x3 +17.5; handstand_hold 40s",
)
say(
    "Dos cosas. La primera, que lo de ayer está mal, los fondos fueron con 15 y no con 25. "
    "La segunda, hoy dominadas 4x4 con 20.",
    "pull_up 4x4 +20",
    does="report",
    fix=("load_kg", 25, 15, "dip"),
    on="2027-06-11",
    on_or=("2027-06-10",),
)
say(
    "El jueves que viene no puedo, es el festival del cole. ¿Lo pasamos al viernes? Hoy por cierto fondos 5x8 "
    "sin nada.",
    "dip 5x8",
    does="move",
    dates="2027-06-17..2027-06-18",
    maybe="missed",
)
say(
    "Mi hijo hizo su primera dominada, ¡y tiene 7 años! Con la emoción solo hice 3 de mis 5 series. Pero con el "
    "peso que "
    "ponía.",
    "dip 3x4 +22.5",
    today=FONDOS,
)
say(
    "Tenía miedo de que se me hinchara la rodilla como en abril. Pues nada de eso. Sentadillas 4x5 con 70, "
    "todas rpe 7. "
    "El lunes pruebo 75.",
    "squat 4x5 +70 @7",
    pain_or=("knee - 0",),
    maybe="pain",
)
say(
    "Hoy no llego ni de broma. Lo hago mañana a primera hora. Y me pesé: 75,0 clavados.",
    does="move",
    does_or=("move missed bodyweight",),
    dates="2027-06-11..2027-06-12",
    bw=75,
    body=75.4,
)
say(
    "Desde el mediodía tengo el meñique derecho dormido. En las dominadas de antes, 4x3 con 25, todo normal. "
    "Doler no duele.",
    "pull_up 4x3 +25",
    pain="hand R 0",
    pain_or=("hand R -; - - 0", "hand R -"),
    flags="numbness",
)
say(
    "Hoy tocó pierna, qué sufrimiento. Sentadilla 1x8 con 60 para entrar en calor y después 3x5 con 90. Búlgaras 2x10 "
    "por pierna sin peso. Peso muerto quería hacer pero lo dejé. En total 1h10.",
    "squat 8 +60; squat 3x5 +90; split_squat 2x10 LR",
    mins=70,
)
say(
    "Te escribí que del 1 al 9 de julio no estaba. Al final es del 3 al 9 de julio. Allá hay barra pero discos no.",
    does="away equipment",
    dates="2027-07-03..2027-07-09",
    maybe="correction",
    **BOGOTA,
)
say(
    "Qué onda coach. Ando medio apurado, así que corto: dominadas 3x5 con 15, la última ya no daba para una más. Los "
    "fondos los dejé para otro día. El codo derecho anda en 1.",
    "pull_up 3x5 +15 last@10",
    pain="elbow R 1",
    **MEXICO,
)
say(
    "Buenas!! Ya desarmé la mudanza, así que desde hoy estoy de vuelta. Para arrancar suave hice lagartijas 3x15 y "
    "colgado 3x30 segundos. Nada me molestó.",
    "push_up 3x15; dead_hang 3x30s",
    does="resume",
    pain="- - 0",
    **PLATA,
)
