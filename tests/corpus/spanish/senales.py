"""Each warning sign in Spanish: real, denied, long past, feared, a figure of speech, somebody else's."""

from tests.corpus.lines import Theme

THEME = Theme("signs", "es")
say = THEME.say

REAL = (
    ("sonó un crac en el codo izquierdo y ahora me duele", "pop", "elbow L -", ("elbow L - during",)),
    ("noté un tirón con chasquido en el bíceps derecho", "pop", "biceps R -", ()),
    ("el antebrazo derecho está todo morado", "bruising", "forearm R -", ()),
    ("me salió un hematoma en el bíceps izquierdo sin golpe", "bruising", "biceps L -", ()),
    ("la muñeca derecha se me inflamó", "swelling", "wrist R -", ()),
    ("rodilla izquierda hinchada como un globo", "swelling", "knee L -", ()),
    ("tengo el dedo torcido, mano derecha", "deformity", "hand R -", ()),
    ("no siento el pulgar izquierdo", "numbness", "hand L -", ()),
    ("se me duerme el brazo derecho al colgarme", "numbness", "other R - during", ("other R -",)),
    ("dedos entumecidos en la mano izquierda", "numbness", "hand L -", ()),
    ("de golpe el brazo derecho sin fuerza, ni la taza podía sujetar", "sudden_weakness", "other R -", ()),
    ("me despierto por la noche por el codo izquierdo", "night_pain", "elbow L - rest", ("elbow L -",)),
    ("el hombro no me dejó dormir", "night_pain", "shoulder - - rest", ("shoulder - -",)),
    ("opresión en el pecho desde el entreno", "chest_pain", "chest - -", ("chest - - after",)),
    ("me cuesta respirar desde ayer", "breathless", "", ()),
    ("casi me caigo, todo me daba vueltas", "dizziness", "", ()),
    ("estoy muy mareado", "dizziness", "", ()),
    ("me desmayé un segundo después de la serie", "dizziness", "", ()),
    ("el codo izquierdo se traba, no lo puedo estirar", "locking", "elbow L -", ()),
)
for text, flags, place, others in REAL:
    say(text, pain=place, flags=flags, pain_or=others, does_or=("pain report",))

for text in (
    "fondos 3x5, nada crujió",
    "fondos 3x6, sin hinchazón",
    "fondos 3x7, nada dormido",
    "fondos 3x9, sin mareo",
    "fondos 3x10, ya no hay hormigueo",
    "fondos 4x5, nada de opresión en el pecho",
    "hace años me rompí el bíceps, fondos 4x6",
    "de niño me desmayé una vez, fondos 4x7",
    "espero que no se hinche nada, fondos 4x8",
    "miedo a que se me duerman los dedos, fondos 4x9",
    "mi hermana se desmayó, estuve en el hospital. fondos 5x5",
    "el de al lado se rompió el bíceps. fondos 5x6",
    "vista que quita el aliento en el parque, fondos 5x7",
    "día de pecho! fondos 5x8",
    "la música estaba que explotaba, fondos 5x9",
    "tengo fiebre de dominadas 😂 fondos 2x10",
):
    work = next(w.strip(",.") for w in text.split() if w[0].isdigit() and "x" in w)
    say(text, f"dip {work}")

# Diario; lugar y número aparte; lados de todos; lo que cambió.
say(
    "Diario de la muñeca, día 4. Mañana 3, entreno 2, noche 1. Derecha.",
    pain="wrist R 3 morning; wrist R 2 during; wrist R 1",
)
say("¿Dónde? Muñeca izquierda. ¿Cuánto? 3. ¿Cuándo? Después.", pain="wrist L 3 after")
say("codo 2, muñeca 1, los dos a la derecha", pain="elbow R 2; wrist R 1")
say("codo derecho 2, el izquierdo 4, los dos por fuera", pain="elbow_outer R 2; elbow_outer L 4")
say("era un 6 el domingo, hoy es un 2, rodilla derecha", pain="knee R 2")
say("el dolor pasó de 4 a 1. hombro izquierdo", pain="shoulder L 1")
say("muñeca 2 en vez del 4 de siempre", pain="wrist - 2")
say("cuello 2/10 en reposo y 3 entrenando", pain="neck - 2 rest; neck - 3 during")
say("codo 3, no, espera, 4", pain="elbow - 4")
say("codo sin dolor hoy, ayer era un 4", pain="elbow - 0")
say("el codo de mi mujer está en 4, el mío en 0", pain="elbow - 0")
