"""A second look, written blind: pain, warning signs, body facts and what the day's plan lets one leave out."""

from tests.corpus.lines import Theme
from tests.corpus.notation import pain, sets

THEME = Theme("second-body", "en")
say = THEME.say

MAIN = "m/weighted_pull_up pull_up 4x4 +20 @8"
DAY = "w scapular_pull_up 2x8; m/weighted_pull_up pull_up 5x3 +22.5 @8; a external_rotation 2x12 LR +4"
TWO = "m/weighted_pull_up pull_up 4x4 +15 @8; a dip 3x8 +10"
PULLEY = "m one_arm_counterweight 3x2 LR -10 @8"
LEVER = "s advanced_tuck_front_lever 4x10s @8"

say("Left elbow is about a 3 today, on the inside", pain="elbow_inner L 3")
say("elbow 2", pain="elbow - 2")
say("pain 4 right shoulder when I pull", pain="shoulder R 4 during")
say(
    "my wrists hurt a bit after handstands, maybe 2 out of 10 both",
    pain="wrist L 2 after; wrist R 2 after",
    pain_or=("wrist L 2; wrist R 2", "wrist - 2 after"),
)
say("golfers elbow right side 4/10 this morning", pain="elbow_inner R 4 morning")
say("tennis elbow acting up, left, 3/10", pain="elbow_outer L 3")
say("knee is fine now, 0", pain="knee - 0")
say("zero pain today", pain="- - 0")
say(
    "No pain at all in the elbow during or after. Chins 3x5 +10",
    "chin_up 3x5 +10",
    pain="elbow - 0",
    pain_or=("elbow - 0 during", "elbow - 0 after", "elbow - 0 during; elbow - 0 after"),
)
say("bicep tendon 1-2 left while curling", pain="biceps L 2 during")
say("5/10 lower back since the deadlift thing on sunday", pain="lower_back - 5", maybe_unread=("deadlift",))
say("hip flexor on the right is tight, like 2/10 pain", pain="hip R 2")
say("my ring finger A2 pulley is sore, right hand, 3/10", pain="hand R 3")
say("Forearms both sore 4", pain="forearm L 4; forearm R 4", pain_or=("forearm - 4",))
say("neck stiff 3 when i wake up", pain="neck - 3 morning", pain_or=("neck - 3",))
say("sternum hurts 3/10 after dips", pain="chest - 3 after", flags_or=("chest_pain",), flags="")
say("shoulder pain went from 4 to 2", pain="shoulder - 2")
say("0 during, 2 after, elbow left", pain="elbow L 0 during; elbow L 2 after")
say(
    "upper back 2/10 at rest, ankle left 1/10 walking",
    pain="upper_back - 2 rest; ankle L 1",
    pain_or=("upper_back - 2 rest; ankle L 1 during",),
)
say("calf 3/10 right, cramp from running", pain="other R 3")
say("Shoulder hurts", pain="shoulder - -", ask_or="score: hurts")
say(
    "inner elbow right 15/10 haha no like a 3",
    pain="elbow_inner R 3",
    ask_or="score: 15/10",
    also=({"pain": pain("elbow_inner R -"), "ask": [{"about": "score", "span": "15/10"}]},),
)
say(
    "pull ups 4x4 +15, elbow L 2/10 during, R 0, then nothing after",
    "pull_up 4x4 +15",
    pain="elbow L 2 during; elbow R 0",
    pain_or=(
        "elbow L 2 during; elbow R 0 during",
        "elbow L 2 during; elbow R 0; elbow - 0 after",
        "elbow L 2 during; elbow R 0 during; elbow - 0 after",
        "elbow L 2 during; elbow R 0 during; elbow L 0 after; elbow R 0 after",
        "elbow L 2 during; elbow R 0; elbow L 0 after",
    ),
)
# Warning signs that hold
say(
    "heard a snap in my left elbow on the third rep, stopped",
    pain="elbow L -",
    pain_or=("elbow L - during",),
    flags="pop",
    maybe="report",
)
say(
    "there was a pop in my finger on the crimp and it's swelling up",
    pain="hand - -",
    pain_or=("hand - - during",),
    flags="pop swelling",
    maybe="report",
)
say(
    "my pinky and ring finger keep tingling after pull ups",
    pain="hand - - after",
    pain_or=("hand - -",),
    flags="numbness",
    maybe="report",
)
say("pins and needles down the right arm", pain="other R -", pain_or=("- R -",), flags="numbness")
say("woke up at 3 from shoulder pain, left one", pain="shoulder L - rest", flags="night_pain")
say(
    "can't sleep on my right side because of the shoulder, it aches all night",
    pain="shoulder R - rest",
    pain_or=("shoulder - - rest",),
    flags="night_pain",
)
say("got light headed on the last set and saw stars", flags="dizziness", maybe="report")
say(
    "tight chest and short of breath just walking up the stairs",
    pain="chest - -",
    pain_or=("",),
    flags="chest_pain breathless",
)
say("elbow gets stuck when I straighten it, have to wiggle it loose", pain="elbow - -", flags="locking")
say("my grip suddenly just went, cant hold a cup in my left hand", pain="hand L -", flags="sudden_weakness")
say(
    "big purple bruise on the inside of the right arm and I never hit it",
    pain="other R -",
    pain_or=("- R -", ""),
    flags="bruising",
)
say(
    "temperature of 38.9, staying in bed",
    does="ill",
    flags="fever",
    dates="2027-02-17..",
    dates_or=("2027-02-17",),
    at="2027-02-17 09:42",
    tz="Europe/London",
)
say(
    "shivering and feverish since last night, no training",
    does="ill",
    flags="fever",
    dates="2027-02-16..",
    at="2027-02-17 09:42",
    tz="Europe/London",
    maybe="missed",
)
say(
    "bicep looks weird, like it's bunched up near the elbow. heard a crack earlier",
    pain="biceps - -",
    pain_or=("biceps - -; elbow - -",),
    flags="pop deformity",
    flags_or=("pop",),
)
say("knee blew up like a balloon after pistols", pain="knee - - after", flags="swelling", maybe="report")
say(
    "pulling pain across my chest and left arm during dips",
    pain="chest - - during; other L - during",
    pain_or=("chest - - during", "chest - -; other L -", "chest - - during; - L - during"),
    flags="chest_pain",
    maybe="report",
)
say("Blacked out for a second after the max attempt!!", flags="dizziness", maybe="report")
say("nearly fainted after the dead hangs", flags="dizziness", maybe="report")
say(
    "right hand fell asleep during hangs and hasn't come back, also elbow 5/10",
    pain="hand R - during; elbow - 5",
    pain_or=("hand R -; elbow - 5", "hand R - during; elbow R 5"),
    flags="numbness",
    maybe="report",
)
say(
    "chins 3x5 +10. after the last one my left arm went dead weak, couldn't even lift the bag",
    "chin_up 3x5 +10",
    pain="other L - after",
    pain_or=("other L -", "- L - after"),
    flags="sudden_weakness",
)
say("swolen elbow left 4/10", pain="elbow L 4", flags="swelling")
# Denied, past, feared, idiomatic, other people's
say("no popping, no swelling, just 2/10 outer elbow left", pain="elbow_outer L 2")
say("I popped to the shop and then did dips 3x10", "dip 3x10")
say("chins 3x6. my mate's knee swelled up so we left early", "chin_up 3x6")
say("last year I tore my biceps and had bruising everywhere, but now all good. pull ups 3x5", "pull_up 3x5")
say("pull ups 5x3 +20, that last rep took my breath away, what a view from that bar", "pull_up 5x3 +20")
say(
    "is it normal to feel numb after long hangs? not happened to me, just read it",
    does="smalltalk",
    does_or=("help", "for_coach", "unknown", "why"),
)
say("my lats are swole haha. pull ups 5x5 +15", "pull_up 5x5 +15")
say("dips 3x8, a bit out of breath as you'd expect", "dip 3x8")
say("locked in today. pull ups 6x2 +32.5", "pull_up 6x2 +32.5")
say("daughter has a temp of 39 so training moved to the living room: push ups 4x20", "push_up 4x20")
say("worried I'd hear a pop again but nothing. one arm hangs 3x10s each", "one_arm_hang 3x10s LR")
say("ears popped on the plane, otherwise good", does="smalltalk", maybe="", does_or=("unknown",))
say("saw a dead numb looking pigeon under the pull up bar. 4x6 chins anyway", "chin_up 4x6")
say(
    "doc says no fracture, no swelling any more, can bend it fully",
    does="smalltalk",
    does_or=("unknown", "for_coach", "resume"),
)
say(
    "skin on my palm ripped, bit of blood but fine. ring pull ups 3x8",
    "ring_pull_up 3x8",
    pain_or=("hand - -",),
    does_or=("report pain",),
)
say("MASSIVE pump, veins popping, curls 3x15 12kg", "biceps_curl 3x15 +12")
# Body facts
say("weighed 70.8 this morning", bw=70.8)
say("bw 72", bw=72)
say("172.4 lbs on the scale today", bw=172.4 * 0.45359237, unit="kg", body=78)
say(
    "I'm 158 now",
    bw=158 * 0.45359237,
    unit="lb",
    body=72,
    also=(
        {"intents": ["bodyweight"], "bodyweight_kg": None, "ask": [{"about": "bodyweight_kg", "span": "158"}]},
        {"intents": ["unknown"], "bodyweight_kg": None, "ask": [{"about": "bodyweight_kg", "span": "158"}]},
    ),
)
say("weight: 71,3kg. slept 7 and a half hours", bw=71.3, sleep=7.5)
say("only 4 hours sleep, baby teething", does="report", sleep=4)
say("slept like a baby 9h", does="report", sleep=9)
say("bw 7.15", does="bodyweight", ask="bodyweight_kg: 7.15", also=({"bodyweight_kg": 71.5, "ask": []},))
say(
    "slept 5:45, weigh 69.9, chin ups 4x5 +10, 40 minutes, effort 6",
    "chin_up 4x5 +10 last@6",
    sleep=5.75,
    bw=69.9,
    mins=40,
    also=({"sets": sets("chin_up 4x5 +10"), "session_rpe": 6},),
)
say(
    "11 stone 4 this morning",
    bw=158 * 0.45359237,
    ask_or="bodyweight_kg: 11 stone 4",
    also=(
        {"bodyweight_kg": None, "intents": ["bodyweight"], "ask": [{"about": "bodyweight_kg", "span": "11 stone 4"}]},
    ),
)
say("workout took 35 mins, ring rows 4x12", "ring_row 4x12", mins=35)
# With the plan
say("done!!", "scapular_pull_up 2x8; pull_up 5x3 +22.5; external_rotation 2x12 LR +4", today=DAY)
say("ticked it all off, felt good", "pull_up 4x4 +20", today=MAIN)
say("everything as written, last set was a 9", "pull_up 4x4 +20 last@9", today=MAIN)
say("did the lot but 22.5 on the bar instead of 20", "pull_up 4x4 +22.5", today=MAIN)
say("as planned but only 3 on the last set", "pull_up 4,4,4,3 +20", today=MAIN)
say("4 4 4 2", "pull_up 4,4,4,2 +20", today=MAIN)
say("only managed two sets then had to pick up the kids", "pull_up 2x4 +20", today=MAIN)
say(
    "main lift done, skipped the rotations",
    "scapular_pull_up 2x8; pull_up 5x3 +22.5",
    today=DAY,
    sets_or=("pull_up 5x3 +22.5",),
)
say("pull ups done as planned, no dips, bench was taken", "pull_up 4x4 +15", today=TWO)
say("all done, dips were 10 9 8 tho", "pull_up 4x4 +15; dip 10,9,8 +10", today=TWO)
say("done with 5kg less on everything", "pull_up 4x4 +10; dip 3x8 +5", today=TWO)
say(
    "plan done. left 2 2 2, right 2 2 1",
    "one_arm_counterweight -10 L 2,2,2; one_arm_counterweight -10 R 2,2,1",
    today=PULLEY,
)
say("did it with 7.5 off instead of 10", "one_arm_counterweight 3x2 LR -7.5", today=PULLEY)
say("10s 10s 9s 7s", "advanced_tuck_front_lever 10s,10s,9s,7s", today=LEVER)
say("front lever 4x8 today", "advanced_tuck_front_lever 4x8s", today=LEVER, ask_or="hold_s: 4x8")
say(
    "all of it, rpe 7 for the session, 48min, no elbow pain",
    "pull_up 4x4 +15; dip 3x8 +10",
    pain="elbow - 0",
    srpe=7,
    mins=48,
    today=TWO,
)
say("an extra set on the pull ups, rest the same", "pull_up 5x4 +15; dip 3x8 +10", today=TWO)
say("dropped one set of dips, otherwise as planned", "pull_up 4x4 +15; dip 2x8 +10", today=TWO)
say(
    "done yesterday instead, all good",
    "pull_up 4x4 +20",
    today=MAIN,
    on="2027-02-16",
    at="2027-02-17 18:42",
    tz="Europe/London",
    maybe="move",
)
say("nailed it 💯", "pull_up 4x4 +20", today=MAIN)
say("first three sets fine, failed the last rep of the fourth", "pull_up 3x4 +20; pull_up 3 +20 fail", today=MAIN)
say("4x4 with 20 @9", "pull_up 4x4 +20 last@9", today=MAIN)
say("couldnt do it as planned, went 4x4 at 17.5", "pull_up 4x4 +17.5", today=MAIN)
say("swapped the pull ups for chins, same weight and reps, dips done", "chin_up 4x4 +15; dip 3x8 +10", today=TWO)
