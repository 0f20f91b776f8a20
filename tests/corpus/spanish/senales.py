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
