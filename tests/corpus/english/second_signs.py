"""A second look, written blind: warning signs in roundabout words, and words that only look like them."""

from tests.corpus.lines import Theme

THEME = Theme("second-signs", "en")
say = THEME.say

say(
    "something went twang in my left bicep mid rep",
    pain="biceps L - during",
    pain_or=("biceps L -",),
    flags="pop",
    maybe="report",
)
say(
    "couldnt feel my fingers for like ten minutes after hanging",
    pain="hand - - after",
    pain_or=("hand - -",),
    flags="numbness",
    maybe="report",
)
say("elbow the size of a tennis ball this morning", pain="elbow - - morning", pain_or=("elbow - -",), flags="swelling")
say(
    "my arm has gone black and blue since yesterdays session",
    pain="other - -",
    pain_or=("- - -", ""),
    flags="bruising",
    maybe="report",
)
say("left shoulder keeps me up at night", pain="shoulder L - rest", flags="night_pain")
say("room was spinning after the handstands", flags="dizziness", maybe="report")
say(
    "heart pain? like a stabbing on the left of my chest when i pull",
    pain="chest L - during",
    pain_or=("chest - - during", "chest L -", "chest - -"),
    flags="chest_pain",
)
say("could hardly breathe after an easy set, never had that", flags="breathless", maybe="report")
say(
    "right arm just dropped, no power at all, can't even make a fist",
    pain="other R -",
    pain_or=("other R -; hand - -", "other R -; hand R -", "- R -"),
    flags="sudden_weakness",
)
say("elbow catches and locks when i bend it past 90", pain="elbow - -", pain_or=("elbow - - during",), flags="locking")
say("My finger points the wrong way now", pain="hand - -", flags="deformity")
say(
    "39.2 on the thermometer lol no training",
    does="ill",
    flags="fever",
    dates="2027-02-17",
    dates_or=(
        "",
        "2027-02-17..",
    ),
    does_or=("missed", "ill missed"),
    at="2027-02-17 09:00",
    tz="Europe/London",
)
say(
    "pulls 4x4 +20 fine but numb thumb on the right since",
    "pull_up 4x4 +20",
    pain="hand R -",
    pain_or=("hand R - after",),
    flags="numbness",
    ask_or="movement: pulls",
)
say("no pop no bruise but elbow a bit swollen, 3", pain="elbow - 3", flags="swelling")
say("not dizzy today, not out of breath, dips 3x8 +10", "dip 3x8 +10")
say("swelling gone since monday, elbow 1/10. chins 3x5", "chin_up 3x5", pain="elbow - 1")
say("when I was 16 I dislocated that shoulder, anyway 3x5 pull ups +10 today", "pull_up 3x5 +10")
say("my training partner fainted today, mad. i did 4x5 chins +10", "chin_up 4x5 +10")
say("pop music on loud and pull ups 5x4 +15", "pull_up 5x4 +15")
say(
    "knees crack when I squat, always have, no pain. squats 3x5 80",
    "squat 3x5 +80",
    pain="knee - 0",
    pain_or=("- - 0", "knee - 0 during", ""),
    ask_or="load_kg: 80",
    does_or=("report",),
)
say("my numbers are dizzying lately haha. dips 3x5 +40", "dip 3x5 +40")
say("fever dream of a session, muscle ups 5x2", "muscle_up 5x2")
say(
    "chest day! dips 4x10 +10, chest is sore from it in a good way",
    "dip 4x10 +10",
    pain_or=("chest - -",),
    does_or=("report pain",),
)
say("If I feel a pop should I stop? hasn't happened", does="help", does_or=("for_coach", "unknown", "smalltalk", "why"))
