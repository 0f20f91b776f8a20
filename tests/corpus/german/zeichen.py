"""Each warning sign in German: real, denied, long past, feared, a figure of speech, somebody else's."""

from tests.corpus.lines import Theme

THEME = Theme("signs", "de")
say = THEME.say

REAL = (
    ("hat im linken Ellbogen laut geknackt und tut jetzt weh", "pop", "elbow L -", ("elbow L - during",)),
    ("im rechten Bizeps ist was gerissen, hab es schnalzen gehört", "pop", "biceps R -", ()),
    ("rechter Unterarm ganz blau", "bruising", "forearm R -", ()),
    ("linker Bizeps grün und blau, ohne Stoß", "bruising", "biceps L -", ()),
    ("Handgelenk rechts angeschwollen", "swelling", "wrist R -", ()),
    ("Knie links dick geworden", "swelling", "knee L -", ()),
    ("mein Finger steht schief, rechte Hand", "deformity", "hand R -", ()),
    ("Daumen links eingeschlafen und wird nicht besser", "numbness", "hand L -", ()),
    ("rechter Arm kribbelt beim Hängen", "numbness", "other R - during", ("other R -",)),
    ("spür zwei Finger der linken Hand nicht mehr", "numbness", "hand L -", ()),
    ("rechter Arm auf einmal kraftlos, konnte nicht mal die Tasse halten", "sudden_weakness", "other R -", ()),
    ("wache nachts vom Ellbogen auf, links", "night_pain", "elbow L - rest", ("elbow L -",)),
    ("Schulter hat mich die halbe Nacht wachgehalten", "night_pain", "shoulder - - rest", ("shoulder - -",)),
    ("Druck auf der Brust seit dem Training", "chest_pain", "chest - -", ("chest - - after",)),
    ("krieg schlecht Luft seit gestern", "breathless", "", ()),
    ("bin nach dem Satz fast umgekippt", "dizziness", "", ()),
    ("alles hat sich gedreht", "dizziness", "", ()),
    ("mir ist total schwindelig", "dizziness", "", ()),
    ("Ellbogen links hängt fest, krieg ihn nicht gestreckt", "locking", "elbow L -", ()),
)
for text, flags, place, others in REAL:
    say(text, pain=place, flags=flags, pain_or=others, does_or=("pain report",))

for text in (
    "Dips 3x5, nix geknackt",
    "Dips 3x6, keine Schwellung",
    "Dips 3x7, nichts taub",
    "Dips 3x9, kein Schwindel",
    "Dips 3x10, kein Kribbeln mehr",
    "Dips 4x5, kein Druck auf der Brust",
    "vor Jahren Bizeps gerissen, Dips 4x6",
    "als Kind mal ohnmächtig geworden, Dips 4x7",
    "hoffentlich schwillt nix an, Dips 4x8",
    "Angst vor Taubheit in den Fingern, Dips 4x9",
    "meine Schwester ist umgekippt, war im Krankenhaus. Dips 5x5",
    "der Typ neben mir hat sich den Bizeps gerissen. Dips 5x6",
    "atemberaubende Aussicht im Park, Dips 5x7",
    "Brusttag! Dips 5x8",
    "Schwindelerregend gut heute, Dips 5x9",
    "die Musik hat geknallt, Dips 2x10",
    "Fieberträume von Klimmzügen 😂 Dips 2x11",
):
    work = next(w.strip(",.") for w in text.split() if w[0].isdigit() and "x" in w)
    say(text, f"dip {work}")

# Tagebuch; Stelle und Zahl getrennt; Seiten für alle; was sich geändert hat.
say(
    "Handgelenk-Tagebuch, Tag 4. Morgens 3, Training 2, abends 1. Rechts.",
    pain="wrist R 3 morning; wrist R 2 during; wrist R 1",
    pain_or=("wrist R 3 morning; wrist R 2 during; wrist R 1 after",),
)
say("Wo? Linkes Handgelenk. Wie stark? 3. Wann? Danach.", pain="wrist L 3 after")
say("Ellbogen 2, Handgelenk 1, beides rechts", pain="elbow R 2; wrist R 1")
say("rechter Ellbogen 2, linker 4, beide außen", pain="elbow_outer R 2; elbow_outer L 4")
say("war am Sonntag eine 6, heute eine 2, rechtes Knie", pain="knee R 2")
say("Schmerz ging von 4 auf 1. linke Schulter", pain="shoulder L 1")
say("Handgelenk 2 statt der üblichen 4", pain="wrist - 2")
say("Nacken 2/10 in Ruhe und 3 im Training", pain="neck - 2 rest; neck - 3 during")
say("eher ein 3er im rechten Ellbogen", pain="elbow R 3")
say("Ellbogen 3, nein, 4", pain="elbow - 4")
say("Ellbogen heute schmerzfrei, gestern war es eine 4", pain="elbow - 0")
say("Ellbogen 3 danach, vorher 1", pain="elbow - 3 after")
say("der Ellbogen meiner Frau ist eine 4, meiner eine 1", pain="elbow - 1")
