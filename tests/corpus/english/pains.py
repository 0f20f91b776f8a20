"""Pain, warning signs, and what only sounds like them."""

from tests.corpus.lines import Theme

THEME = Theme("pains", "en")
say = THEME.say

# Scores
say("0", pain="- - 0")
say("2/10", pain="- - 2")
say("4", pain="- - 4")
say("pain free", pain="- - 0")
say("nothing hurts", pain="- - 0")
say("elbow 3", pain="elbow - 3")
say("left elbow 2/10", pain="elbow L 2")
say("R elbow 4 out of 10 while pulling", pain="elbow R 4 during")
say("inside of my right elbow is at a 3 after training", pain="elbow_inner R 3 after")
say("outer elbow left 2 this morning", pain="elbow_outer L 2 morning")
say("golfer's elbow again, right side, 4/10", pain="elbow_inner R 4", pain_or=("elbow R 4",))
say("tennis elbow left 3", pain="elbow_outer L 3", pain_or=("elbow L 3",))
say("both elbows 3/10", pain="elbow L 3; elbow R 3")
say("both wrists about a 2 during the handstands", pain="wrist L 2 during; wrist R 2 during")
say("wrist pain 2-3 after", pain="wrist - 3 after", why="a range of pain is its upper end")
say(
    "shoulder R 1, elbow L 2, everything else 0",
    pain="shoulder R 1; elbow L 2",
    pain_or=("shoulder R 1; elbow L 2; - - 0",),
)
say("2 during, 0 after", pain="- - 2 during; - - 0 after")
say("elbow: during 3, after 1, this morning 0", pain="elbow - 3 during; elbow - 1 after; elbow - 0 morning")
say("my lower back is a 4 today", pain="lower_back - 4")
say("biceps tendon left sore, maybe 2", pain="biceps L 2", pain_or=("shoulder L 2", "elbow L 2"))
say("neck 2/10 after sleeping funny", pain="neck - 2", pain_or=("neck - 2 morning", "neck - 2 after"))
say("left shoulder hurts even at rest, 5/10", pain="shoulder L 5 rest")
say(
    "knees fine, hip right 3 on the pistols",
    pain="knee - 0; hip R 3 during",
    pain_or=("hip R 3 during", "hip R 3", "knee - 0; hip R 3"),
)
say("forearms 3 and 3", pain="forearm L 3; forearm R 3", pain_or=("forearm - 3; forearm - 3", "forearm - 3"))
say("elbow hurts", pain="elbow - -")
say("ankle twinge left, 1", pain="ankle L 1")
say(
    "achilles 2 both sides after jogging",
    pain="ankle L 2 after; ankle R 2 after",
    pain_or=("other L 2 after; other R 2 after",),
)
say(
    "my ring finger is at 3 from the ring rows, right hand",
    pain="hand R 3",
    pain_or=("hand R 3 during", "hand R 3 after"),
)
say("upper back tight, 2/10", pain="upper_back - 2")
say("ribs on the left 4/10 when I breathe in", pain="chest L 4", pain_or=("other L 4",))
say("no pain in the elbow for a week now 🎉", pain="elbow - 0")
say("elbow pain is gone", pain="elbow - 0")
say("pain is 1. not worried", pain="- - 1")
say("right elbow two out of ten, left one out of ten", pain="elbow R 2; elbow L 1")
say("elbow went from 4 to 2 since Monday", pain="elbow - 2")
say("elbow was a 5 last week, it's a 2 now", pain="elbow - 2")
say(
    "Elbow's about 3ish, outside, left. only when gripping.",
    pain="elbow_outer L 3 during",
    pain_or=("elbow_outer L 3",),
)
say("woke up with elbow at 3", pain="elbow - 3 morning", pain_or=("elbow - 3",))
say("zero pain during, zero after", pain="- - 0 during; - - 0 after")
say("elbow 15/10 lol", pain="elbow - -", ask="pain: 15/10")
say("pain 11", pain="- - -", ask="pain: 11", pain_or=("",))
say("one of my elbows is at 3", pain="elbow - 3", ask_or="side: one of my elbows")
say("my elbow hates me, 6/10, hurts when I'm just sitting here", pain="elbow - 6 rest")
say("shin splint 2 right leg", pain="other R 2")
say(
    "quad sore",
    pain="other - -",
    also=({"intents": ["smalltalk"], "pain": []}, {"intents": ["unknown"], "pain": []}),
    why="soreness of a muscle may or may not be taken as pain",
)
say("triceps left 2/10", pain="other L 2")
# With a report
say("pull-ups 5x3 +20, left elbow 2/10 during", "pull_up 5x3 +20", pain="elbow L 2 during")
say("Dips 4x6 +20. R shoulder 3 after.", "dip 4x6 +20", pain="shoulder R 3 after")
say("chins 5x5, no pain", "chin_up 5x5", pain="- - 0")
say("pull-ups 4x4 +15 pain 0/10", "pull_up 4x4 +15", pain="- - 0")
say("ring rows 3x12, elbows happy", "ring_row 3x12", maybe="pain", pain_or=("elbow - 0", "elbow L 0; elbow R 0"))
say("pull-ups 5x3 +20 @8, inner elbow both sides 2", "pull_up 5x3 +20 last@8", pain="elbow_inner L 2; elbow_inner R 2")
say("done, elbow 1", "pull_up 5x3 +20", pain="elbow - 1", today="m/weighted_pull_up pull_up 5x3 +20 @8")
say(
    "all as planned but wrist hurts 3/10 left on the last set",
    "pull_up 5x3 +20",
    pain="wrist L 3 during",
    pain_or=("wrist L 3",),
    today="m/weighted_pull_up pull_up 5x3 +20 @8",
)
say(
    "stopped after 3 sets because elbow went to 5",
    "pull_up 3x3 +20",
    pain="elbow - 5 during",
    pain_or=("elbow - 5",),
    today="m/weighted_pull_up pull_up 5x3 +20 @8",
)
say(
    "dips felt sketchy on the right shoulder, 4/10, cut them. Pull-ups 4x4 +20 fine",
    "pull_up 4x4 +20",
    pain="shoulder R 4 during",
    pain_or=("shoulder R 4",),
)
# Warning signs
say(
    "felt something pop in my left elbow on the second rep",
    pain="elbow L - during",
    flags="pop",
    pain_or=("elbow L -",),
    maybe="report",
)
say("heard a loud snap in the right shoulder", pain="shoulder R -", flags="pop")
say(
    "big bruise on the inside of my left upper arm this morning and I didn't hit anything",
    pain="biceps L - morning",
    flags="bruising",
    pain_or=("other L - morning", "other L -", "biceps L -"),
)
say(
    "biceps right turned black and blue overnight",
    pain="biceps R -",
    flags="bruising",
    pain_or=("biceps R - rest", "biceps R - morning"),
)
say("elbow swollen like a golf ball", pain="elbow - -", flags="swelling")
say("right wrist swelled up after the planche work, 4/10", pain="wrist R 4 after", flags="swelling")
say("my biceps looks like it rolled up towards the shoulder, right arm", pain="biceps R -", flags="deformity")
say("pinky and ring finger tingle on the left after training", pain="hand L - after", flags="numbness")
say("numb thumb since the one arm hangs", pain="hand - -", flags="numbness", pain_or=("hand - - after",))
say("pins and needles down the right arm when I hang", pain="other R - during", flags="numbness")
say("suddenly no strength in the right grip, dropped my coffee", pain="hand R -", flags="sudden_weakness")
say(
    "left arm just went dead mid set, could not pull at all",
    pain="other L - during",
    flags="sudden_weakness",
    flags_or=("sudden_weakness numbness", "numbness"),
    maybe="report",
)
say("shoulder pain wakes me every night", pain="shoulder - - rest", flags="night_pain", pain_or=("shoulder - -",))
say(
    "elbow throbbed all night, could hardly sleep, 6/10",
    pain="elbow - 6 rest",
    flags="night_pain",
    pain_or=("elbow - 6",),
)
say("tight pressure in my chest during the last set", pain="chest - - during", flags="chest_pain", maybe="report")
say(
    "chest hurts and left arm feels heavy",
    pain="chest - -; other L -",
    flags="chest_pain",
    pain_or=("chest - -",),
    flags_or=("chest_pain sudden_weakness",),
)
say("could not catch my breath for ten minutes after hardly any work", flags="breathless", maybe="report")
say("short of breath just walking upstairs today", flags="breathless")
say("nearly blacked out after the top hold", flags="dizziness", maybe="report")
say("everything was spinning when I came off the rings", flags="dizziness")
say("fainted in the shower after training", flags="dizziness")
say("my right knee locked and I had to wiggle it free", pain="knee R -", flags="locking")
say("elbow gets stuck, can't straighten it", pain="elbow - -", flags="locking")
say(
    "got a fever, 38.9",
    "",
    "ill",
    flags="fever",
    dates="2027-04-15..",
    dates_or=("", "2027-04-15"),
    at="2027-04-15 10:00",
    tz="Europe/London",
)
say(
    "temperature of 39.2 and shivering, no training today",
    "",
    "ill",
    flags="fever",
    dates="2027-04-15..",
    dates_or=("2027-04-15",),
    maybe="missed",
    at="2027-04-15 10:00",
    tz="Europe/London",
)
say(
    "pull-ups 4x3 +25, then a pop in the left forearm and now it's swelling. 6/10",
    "pull_up 4x3 +25",
    pain="forearm L 6",
    flags="pop swelling",
    pain_or=("forearm L 6 during", "forearm L 6 after"),
)
say(
    "three fingers on my right hand go numb at night",
    pain="hand R - rest",
    flags="numbness",
    pain_or=("hand R -",),
    flags_or=("numbness night_pain",),
)
# Denied
say("elbow 3/10, no swelling, no bruise", pain="elbow - 3")
say("shoulder 2. no pop or anything", pain="shoulder - 2")
say("No numbness or tingling, wrist left 1", pain="wrist L 1")
say("didn't feel dizzy this time, handstands 3x30s", "handstand_hold 3x30s")
say("left elbow 2/10, nothing swollen, no weakness, sleeps fine", pain="elbow L 2")
say("not swollen any more, elbow down to 1", pain="elbow - 1")
say("no fever, just a cold since yesterday", "", "ill", dates="2027-03-03..", at="2027-03-04 12:00", tz="Europe/London")
say("never had chest pain or dizziness, why do you ask?", "", "why", does_or=("smalltalk", "unknown", "help"))
# Past, feared, idiomatic, somebody else's
say(
    "three years ago my right biceps popped, all good since. chin-ups 4x5 +10",
    "chin_up 4x5 +10",
    maybe="pain",
    pain_or=("biceps R 0",),
)
say(
    "back in 2021 I had swelling in this knee. squats 5x5 60kg no issues",
    "squat 5x5 +60",
    maybe="pain",
    pain_or=("knee - 0", "- - 0"),
)
say("worried something will pop if I go heavier. pull-ups 3x3 +30", "pull_up 3x3 +30")
say("my ears popped on the flight lol. push ups 3x20", "push_up 3x20")
say(
    "my brother had chest pain last night so I was at the hospital, missed training",
    "",
    "missed",
    dates="2027-03-09",
    at="2027-03-10 09:00",
    tz="Europe/London",
    dates_or=("2027-03-10", ""),
    ask_or="dates: missed training",
)
say("popped in for a quick one: dips 3x8", "dip 3x8")
say("dizzy with joy, first muscle-up!!!", "muscle_up 1")
say("forearms pumped to bursting, pull-ups 6x4", "pull_up 6x4")
say("lungs on fire but loved it, ring dips 4x8", "ring_dip 4x8")
say(
    "numb from the cold, -8 outside. chins 4x4",
    "chin_up 4x4",
    why="the weather's numbness is no sign",
    flags_or=("numbness",),
    maybe="pain",
)
say(
    "the missus has a fever so I'm home with the kids, no session today",
    "",
    "missed",
    dates="2027-03-10",
    at="2027-03-10 18:00",
    tz="Europe/London",
)
say("gym fever got me 😂 pull-ups 10x2", "pull_up 10x2")
say("locked out every rep. dips 5x5 +30", "dip 5x5 +30")
say("elbows locked on the front lever 4x8s, straddle, finally", "straddle_front_lever 4x8s")
say("knee clicks but doesn't hurt, pistols 3x3 each", "pistol_squat LR 3x3", maybe="pain", pain_or=("knee - 0",))
say("felt weak today, pull-ups 3x3 +15", "pull_up 3x3 +15", why="a weak day is no sudden weakness")
say(
    "out of breath as always after squats 5x10 60kg",
    "squat 5x10 +60",
    flags_or=("breathless",),
    maybe="pain",
    why="usual panting is no sign; taking it as one errs on the safe side",
)
say("if my elbow swells up again I'll tell you. today 1/10", pain="elbow - 1", pain_or=("- - 1",))
say("my training partner's shoulder popped out, poor guy. I did chins 4x6", "chin_up 4x6")
say(
    "what would numb fingers mean?",
    "",
    "help",
    does_or=("unknown", "why", "for_coach"),
    why="a question about a sign is not the sign",
)

# A diary; places and scores told apart; sides and parts of all; a score that changed.
say("Wrist log, day 4. Morning 3, training 2, evening 1. Right.", pain="wrist R 3 morning; wrist R 2 during; wrist R 1")
say("knee: 2 in the morning, 1 during, 0 after. Right one.", pain="knee R 2 morning; knee R 1 during; knee R 0 after")
say("Where? left wrist. How much? 3. When? after.", pain="wrist L 3 after")
say("elbow 2, wrist 1, both on the right", pain="elbow R 2; wrist R 1")
say("right elbow 2, left one 4, both on the outside", pain="elbow_outer R 2; elbow_outer L 4")
say("was a 6 on Sunday, is a 2 today, right knee", pain="knee R 2")
say("pain went from 4 to 1. left shoulder", pain="shoulder L 1")
say("wrist a 2 instead of the usual 4", pain="wrist - 2")
say("neck 2/10 at rest and 3 in training", pain="neck - 2 rest; neck - 3 during")
say("knee 5 before, 3 after", pain="knee - 3 after", pain_or=("knee - 5; knee - 3 after",))
say(
    "it's the noisy shoulder again. It's at 3 during the dips, 1 after, left side",
    pain="shoulder L 3 during; shoulder L 1 after",
)
say("elbow 3, no wait, 4", pain="elbow - 4")
say(
    "38.4 this morning, staying in bed",
    flags="fever",
    does="ill",
    dates="2027-03-10..",
    dates_or=("2027-03-10",),
    at="2027-03-10 10:00",
    tz="Europe/London",
)
say("dizzy 20 minutes into the session", flags="dizziness")
say("left hand falls asleep on one arm hangs", flags="numbness", pain="hand L -")
# Earlier scores beside today's.
say("elbow 3 after, was 1 before", pain="elbow - 3 after")
say("no elbow pain today, yesterday it was a 4", pain="elbow - 0")
say("left elbow 3 after training, was a 2 on Monday", pain="elbow L 3 after")
say("woke at 3 because my shoulder throbbed", pain="shoulder - - rest", flags="night_pain")
say("shoulder 2/10 left after pull-ups 4x4 +20", "pull_up 4x4 +20", pain="shoulder L 2 after")
say("the elbow of my wife is a 4, mine is a 1", pain="elbow - 1")
