"""Each warning sign in more words: real, denied, long past, feared, a figure of speech, somebody else's."""

from tests.corpus.lines import Theme

THEME = Theme("signs", "en")
say = THEME.say

REAL = (
    ("there was a crack in my right elbow during the dips and it hurts now", "pop", "elbow R - during", ("elbow R -",)),
    ("something snapped in my left biceps", "pop", "biceps L -", ()),
    ("my shoulder went pop on the muscle up, left one", "pop", "shoulder L - during", ("shoulder L -",)),
    ("forearm is all purple since yesterday, right", "bruising", "forearm R -", ()),
    ("there's a bruise spreading down my left biceps", "bruising", "biceps L -", ()),
    ("left elbow blew up like a balloon", "swelling", "elbow L -", ()),
    ("my right knee is really puffy", "swelling", "knee R -", ()),
    ("swollen wrist, left, 3/10", "swelling", "wrist L 3", ()),
    ("there's a weird dent in my right biceps", "deformity", "biceps R -", ()),
    ("my finger is crooked after that fall, left hand", "deformity", "hand L - after", ("hand L -",)),
    ("can't feel my left thumb", "numbness", "hand L -", ()),
    ("right hand falls asleep whenever I hang", "numbness", "hand R - during", ("hand R -",)),
    (
        "tingling in both hands since this morning",
        "numbness",
        "hand L -; hand R -",
        ("hand L - morning; hand R - morning",),
    ),
    ("my right arm suddenly has no power, can't even hold a cup", "sudden_weakness", "other R -", ("hand R -",)),
    ("left grip just failed out of nowhere and stays weak", "sudden_weakness", "hand L -", ("hand L - during",)),
    ("the elbow keeps me awake at night, left side", "night_pain", "elbow L - rest", ("elbow L -",)),
    ("woke up at 3am because of my shoulder, 5/10", "night_pain", "shoulder - 5 rest", ("shoulder - 5",)),
    ("sharp pain in my chest when I pull", "chest_pain", "chest - - during", ()),
    ("my chest feels squeezed since the session", "chest_pain", "chest - -", ("chest - - after",)),
    ("gasping for air after two flights of stairs, that's new", "breathless", "", ()),
    ("can't breathe properly since the last set", "breathless", "", ()),
    ("got lightheaded and had to lie down", "dizziness", "", ()),
    ("saw stars and almost fell off the bar", "dizziness", "", ()),
    ("I passed out for a second after the hold", "dizziness", "", ()),
    ("left elbow locks up halfway", "locking", "elbow L -", ("elbow L - during",)),
    ("my knee is jammed, won't bend", "locking", "knee - -", ()),
)
for text, flags, place, others in REAL:
    say(text, pain=place, flags=flags, pain_or=others, does_or=("pain report",))

for text in (
    "chins 4x5, no popping or clicking",
    "chins 4x6, nothing bruised this time",
    "dips 3x8, zero swelling",
    "dips 3x9, fingers not numb at all",
    "ring rows 3x12, no chest pain, no dizziness",
    "ring rows 3x11, wasn't dizzy",
    "pull-ups 4x6, no tingling",
    "pull-ups 4x7 without any locking",
    "push ups 3x20, breathing fine, not short of breath",
    "push ups 3x21, no fever any more",
    "pull-ups 3x7. I don't have any numbness, if you ask",
    "pull-ups 3x9, slept through, no night pain",
):
    name = {"chins": "chin_up", "dips": "dip", "ring": "ring_row", "pull": "pull_up", "push": "push_up"}[
        text.replace("-", " ").split()[0]
    ]
    work = next(w for w in text.replace(",", " ").replace(".", " ").split() if w[0].isdigit())
    say(text, f"{name} {work}", maybe="pain", pain_or=("- - 0",) if "pain" in text else ())

for text in (
    "I tore my biceps in 2019, it popped back then. dips 3x7",
    "as a kid I fainted once on a swing. dips 3x6",
    "last year my elbow was swollen for a month, dips 3x5 today",
    "years ago I had numb fingers from climbing. dips 4x5",
    "afraid my shoulder could pop out, so dips 4x6 without weight",
    "hope my elbow doesn't swell up tomorrow. dips 4x7",
    "my sister fainted at work, crazy day. dips 4x8",
    "a guy in the gym tore his biceps, you could hear the pop. dips 4x9",
    "my son has 39 fever, poor thing. dips 5x5",
    "breathtaking view from the park bar, dips 5x6",
    "the music was popping, dips 5x7",
    "locked in today, dips 5x8",
    "mind numbing commute, then dips 5x9",
    "that set took my breath away lol, dips 2x8",
    "chest day! dips 2x9",
    "bruised ego only, dips 2x10",
    "biceps swollen with pump 💪 dips 2x12",
    "dizzying heights of 12 reps: dips 2x11",
):
    work = next(w.strip(",.") for w in text.split() if w[0].isdigit() and "x" in w)
    say(
        text,
        f"dip {work}",
        maybe="pain" if "elbow" in text or "shoulder" in text else "",
        pain_or=("elbow - -",) if "elbow was" in text else (),
    )
