"""Escrito como se teclea: abreviaturas, cargas de cada serie, cintas a medias, lo dicho contra el plan."""

from tests.corpus.lines import Theme

THEME = Theme("septimo", "es")
say = THEME.say

PLAN = "w scapular_pull_up 2x8; m pull_up 5x3 +22.5 @8; a external_rotation 2x12 LR +4"
WARM, MAIN, CUFF = "scapular_pull_up 2x8", "pull_up 5x3 +22.5", "external_rotation 2x12 LR +4"
MADRID = {"at": "2027-03-10 19:00", "tz": "Europe/Madrid"}

# Abreviaturas.
say("dominadas 4x5 c/20, fondos 3x8 s/peso", "pull_up 4x5 +20; dip 3x8")
say("búlgaras 3x8 c/p con 16 kg", "split_squat 3x8 LR +16")
say("hice 3 series d supinas d 6 c 12,5 xq no había mas discos", "chin_up 3x6 +12.5")
say("no pude ir pq tenia curro", does="missed", dates="2027-03-10", **MADRID)
say("dominadas 3x5, desc 2'30''", "pull_up 3x5")
say("fondos 4x8, 90'' entre series", "dip 4x8")
say("l-sit 3x15''", "l_sit 3x15s")
say("entrené 55'", mins=55)
say("curl martillo 3x10 10kg, rot. externa 2x15 c/lado 3kg", "hammer_curl 3x10 +10; external_rotation 2x15 LR +3")
say("xq bajamos el peso?", does="why")
say("hice 4x5 dominadas porque no daba más", "pull_up 4x5 last@10")

# Esfuerzos por serie, cargas por serie.
say("dominadas 3x3 con 20, rpe por serie: 7, 8 y 9", "pull_up 3 +20 @7; pull_up 3 +20 @8; pull_up 3 +20 @9")
say("dominadas 20kg: 1a serie 5, 2a 5, 3a 4", "pull_up 5,5,4 +20")
say("5 dominadas con 15kg, luego 4, 4 y 3", "pull_up 5,4,4,3 +15")
say("fondos con veinte kilos tres series de ocho y una más de diez sin peso", "dip 3x8 +20; dip 10")
say("dominadas 4x5 con dos discos de 5", "pull_up 4x5 +10")
say("dominadas lastradas 4x5", "pull_up 4x5 +?", ask="load_kg: lastradas")
say("dominadas 4x5 con el mismo peso", "pull_up 4x5 +?", ask="load_kg: con el mismo peso")
say("dominadas 4x5 con 15, fondos 3x8 con el mismo peso", "pull_up 4x5 +15; dip 3x8 +15")
say("dominadas 5x15 4x20 3x25", does="report", ask="sets: 5x15 4x20 3x25")
say("peso muerto 5x5 a 120, sentadilla 5x5 a 90", "squat 5x5 +90", unread=("peso muerto 5x5 a 120",))
say("A1 dominadas 4x5 +15\nA2 fondos 4x8", "pull_up 4x5 +15; dip 4x8")

# Cintas.
say("dominadas asistidas 3x8 y 2x5 sin goma", "band_pull_up 3x8; pull_up 2x5")
say("supinas con banda 3x6 y luego 3 sin banda", "band_pull_up 3x6; chin_up 3")
say("fondos asistidos con banda 3x8", "dip 3x8")
say(
    "empecé con 10 dominadas sin peso de calentamiento, luego 5x3 con 22,5 y acabé con 2x8 con goma",
    "pull_up 10; pull_up 5x3 +22.5; band_pull_up 2x8",
)
say("terminé con 15 fondos", "dip 15")

# Intentos y marcas.
say("muscle up: 5 intentos, 3 buenos", "muscle_up 3x1; muscle_up 2x0 fail")
say("hice 6 intentos de muscle up y me salieron 4", "muscle_up 4x1; muscle_up 2x0 fail")
say("intenté 45 y no salió, antes 42,5x1, dominadas", "pull_up 0 +45 fail; pull_up 1 +42.5")
say("handstand: 3 intentos de 20 seg", "handstand_hold 3x20s")
say("por fin me salió mi primer muscle up", "muscle_up 1")
say("mi récord son 18 dominadas", does="smalltalk", does_or=("unknown",))
say("hoy 8 dominadas, la semana pasada 6", "pull_up 8")

# Días.
say("Jueves 4/3\nDominadas +15: 5 5 4", "pull_up 5,5,4 +15", on="2027-03-04", **MADRID)
say("lunes 3/8\nfondos 3x8", "dip 3x8", on=None, ask="performed_on: lunes 3/8", **MADRID)
say("4-3-27\ndominadas 3x5", "pull_up 3x5", on="2027-03-04", **MADRID)
say("jueves no pude entrenar, hoy 4x4 dominadas", "pull_up 4x4", "missed", dates="2027-03-04", **MADRID)
say("me mudo el sábado, ¿puedo hacer lo del sábado el lunes?", does="move", dates="2027-03-13..2027-03-15", **MADRID)
say("ni el viernes ni ayer pude entrenar", does="missed", dates="2027-03-05..2027-03-09", **MADRID)

# Dolor.
say("nada de dolor en el codo, hombro un 1", pain="elbow - 0; shoulder - 1")
say("codo mejor, pasó de un 4 a un 2", pain="elbow - 2")
say("le doy un 2 al codo", pain="elbow - 2")
say("el codo igual que ayer, un 2", pain="elbow - 2")
say("un 6 el hombro!! paré", pain="shoulder - 6")
say("hombro izquierdo entre 2 y 3", pain="shoulder L 3")
say("molestias: no", pain="- - 0")
say("codo derecho por la parte de fuera, 3/10", pain="elbow_outer R 3")
say("me desperté con el cuello duro, 3/10", pain="neck - 3 morning")
say("peso setenta y cuatro con dos", bw=74.2, body=73)

# Contra el plan.
say("en lugar de 5 hice 4 series", f"{WARM}; pull_up 4x3 +22.5", today=PLAN)
say("en vez de 22,5 puse 20", f"{WARM}; pull_up 5x3 +20; {CUFF}", today=PLAN)
say("en vez de 20 puse 22,5 y salieron 4x4 de dominadas", "pull_up 4x4 +22.5")
say("no hice rotaciones, lo demás sí", f"{WARM}; {MAIN}", today=PLAN)
say("no me dio tiempo a las rotaciones, dominadas completas", MAIN, today=PLAN)
say("en la cuarta solo saqué 2 y la quinta no la hice", "pull_up 3x3 +22.5; pull_up 2 +22.5", today=PLAN)
say("dos series menos de lo que ponía", "pull_up 3x3 +22.5", today=PLAN)
say("bajé 2,5 kilos en dominadas", "pull_up 5x3 +20", today=PLAN)
say("iba a por 5x5 y me quedé en 3x5, pronas con 15", "pull_up 3x5 +15")
say("la semana pasada 4x4 con 20 en supino, hoy 4x5 con el mismo peso", "chin_up 4x5 +20")
say(
    "hecho pero con banda en vez de lastre",
    f"{WARM}; {MAIN}; {CUFF}",
    ask="sets: con banda en vez de lastre",
    today=PLAN,
)

# Lo que parecía otra cosa.
say("dominadas 5x3 con 20, podría hacer una más", "pull_up 5x3 +20 last@9")
say("dominadas 5x3 con 20 bastante fáciles", "pull_up 5x3 +20")
say("dominadas 5x5 -> 5 5 5 4 3", "pull_up 5,5,5,4,3")
say("dominadas 5x5 última incompleta (3)", "pull_up 5,5,5,5,3")
say("dominadas 4 series: 5, 5, 4 y la otra 3", "pull_up 5,5,4,3")
say("dominadas 4x5 con 20 25 25 30", "pull_up 5 +20; pull_up 2x5 +25; pull_up 5 +30")
say("fondos: cuatro de ocho con veinte; dominadas: cinco de tres con veinticinco", "dip 4x8 +20; pull_up 5x3 +25")
say("remo con mancuerna de veinte tres por diez por lado", "row 3x10 LR +20")
say("l-sit paralelas 4x12s", "l_sit 4x12s")
say("100 flexiones en 10 series de 10", "push_up 10x10")
say("escalera de 1 a 5 dominadas", "pull_up 1,2,3,4,5")
say("calentamiento y 3 series, tuve que parar", f"{WARM}; pull_up 3x3 +22.5", today=PLAN)
say("dominadas con 25 la primera y el resto con 22,5", "pull_up 3 +25; pull_up 4x3 +22.5", today=PLAN)
