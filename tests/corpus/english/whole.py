"""Whole messages as they come: long logs, plans with efforts, several things at once, two languages in one."""
# ruff: noqa: E501

from tests.corpus.lines import Theme
from tests.corpus.notation import sets

THEME = Theme("whole", "en")
say = THEME.say
WED = {"at": "2027-03-10 19:00", "tz": "Europe/London"}
DIPS = "m/weighted_pull_up pull_up 4x4 +20 @8; a dip 3x6 +15 @8"
MAIN = "m/weighted_pull_up pull_up 5x3 +22.5 @8"
RUNG = "s/archer_shoulder archer_ring_shoulder LR 2x2 @7; m/weighted_pull_up pull_up 4x3 +27.5 @8"

say("pull-ups done @8, dips done @7", "pull_up 4x4 +20 last@8; dip 3x6 +15 last@7", today=DIPS)
say("pull ups all @7, dips all @8, as planned", "pull_up 4x4 +20 @7; dip 3x6 +15 @8", today=DIPS)
say("did pull-ups with 22.5, last @9. dips as written", "pull_up 4x4 +22.5 last@9; dip 3x6 +15", today=DIPS)
say("all done. 2nd set of dips only 5", "pull_up 4x4 +20; dip 6,5,6 +15", today=DIPS)
say("pull-ups yes, dips no", "pull_up 4x4 +20", today=DIPS)
say("half of it: pull ups only", "pull_up 4x4 +20", today=DIPS)
say("5x3 @ 25, last @9", "pull_up 5x3 +25 last@9", today=MAIN)
say("did the triples with 25. last one two and a half lol so call it 2", "pull_up 4x3 +25; pull_up 2 +25", today=MAIN)
say("everything as planned except I used 20", "pull_up 5x3 +20", today=MAIN)
say("done, wrist 2/10 left, 48 min, bw 71.9", "pull_up 5x3 +22.5", pain="wrist L 2", mins=48, bw=71.9, today=MAIN)
say("set 1-3 fine, set 4 two reps, set 5 skipped", "pull_up 3,3,3,2 +22.5", today=MAIN)
say(
    "archers: left 2, right 2, left 2, right 1. pull ups all there @8",
    "archer_ring_shoulder L 2; archer_ring_shoulder R 2; archer_ring_shoulder L 2; archer_ring_shoulder R 1; pull_up 4x3 +27.5 last@8",
    today=RUNG,
)
say(
    "archers as planned, rpe 6. pull-ups 3,3,3,2",
    "archer_ring_shoulder LR 2; archer_ring_shoulder LR 2 @6; pull_up 3,3,3,2 +27.5",
    today=RUNG,
)
say(
    "only the first archer set, then elbow said no (4/10 left inside). skipped pull ups",
    "archer_ring_shoulder LR 2",
    pain="elbow_inner L 4 during",
    pain_or=("elbow_inner L 4",),
    today=RUNG,
)
say(
    "done",
    "",
    "report",
    ask="sets: done",
    also=(
        {"intents": ["smalltalk"], "performed_on": None, "ask": []},
        {"intents": ["unknown"], "performed_on": None, "ask": []},
    ),
    why="nothing was planned that could be done",
)
say(
    "as planned",
    "",
    "report",
    ask="sets: as planned",
    also=(
        {"intents": ["smalltalk"], "performed_on": None, "ask": []},
        {"intents": ["unknown"], "performed_on": None, "ask": []},
    ),
)
# Long logs
say(
    "Tuesday log:\nBW 72.4\nSleep 7.5h\nScap pulls 2x8\nArcher ring, elbow height: 2x2 per side @7\nWeighted pull-ups 4x4 +22.5, last @8\nFace pulls 3x15 15kg\nExt. rotation 2x12 each side 3kg\nTotal 70 min, session RPE 7\nR elbow inside 1/10 after",
    "scapular_pull_up 2x8; archer_ring_elbow LR 2x2 last@7; pull_up 4x4 +22.5 last@8; face_pull 3x15 +15; external_rotation LR 2x12 +3",
    pain="elbow_inner R 1 after",
    bw=72.4,
    sleep=7.5,
    mins=70,
    srpe=7,
    on="2027-03-09",
    **WED,
)
say(
    "Felt flat today. Pull-ups: 3 @ 25, 3 @ 25, 2 @ 25 and racked it. Dips 6, 6, 5 at +20. Left shoulder 2/10 during dips, gone after. Slept 5.5 hours which explains it. 50 min.",
    "pull_up 3,3,2 +25; dip 6,6,5 +20",
    pain="shoulder L 2 during",
    pain_or=("shoulder L 2 during; shoulder L 0 after",),
    sleep=5.5,
    mins=50,
)
say(
    "Gym log\nPull-ups - 5x3 - 20kg - RPE 8\nDips - 3x8 - 10kg - RPE 7\nHollow - 3x30s",
    "pull_up 5x3 +20 last@8; dip 3x8 +10 last@7; hollow_hold 3x30s",
)
say(
    "A. Chin-up 5x4 @ 17.5 kg (RPE 8)\nB. Ring row 3x10\nC. L-sit 4x12 s",
    "chin_up 5x4 +17.5 last@8; ring_row 3x10; l_sit 4x12s",
)
say(
    "test day!! pull-up max single: 45 ok, 47.5 ok, 50 miss. so 47.5 it is",
    "pull_up 1 +45; pull_up 1 +47.5; pull_up 0 +50 fail",
)
say(
    "Test: one arm hand on shoulder, left 3 right 3!!! coach are you seeing this",
    "one_arm_hand_on_shoulder LR 3",
    maybe="for_coach",
)
say("Front lever test: best hold adv tuck 17s", "advanced_tuck_front_lever 17s")
say("8 clean pull ups from a dead hang, first time ever", "pull_up 8")
say("tested pull ups bw: 13 (rpe 10), 2 min rest then 8", "pull_up 13 @10; pull_up 8", maybe_unread=("2 min rest",))
say(
    "chins 6x3 +25 and after that rings: rows 3x12, push ups 3x15",
    "chin_up 6x3 +25; ring_row 3x12; push_up 3x15",
    why="push-ups on rings are push-ups",
)
say("did the pull ups (4x5 +15), skipped dips, shoulder 0", "pull_up 4x5 +15", pain="shoulder - 0")
say(
    "warm up 10 push ups and 10 ring rows, work: hspu 5x3, pike push ups 3x8",
    "push_up 10; ring_row 10; handstand_push_up 5x3; pike_push_up 3x8",
)
say("pull ups 1x5 +10, 1x5 +15, 3x5 +20", "pull_up 5 +10; pull_up 5 +15; pull_up 3x5 +20")
say("pull-ups 20kg 3x5, dips 30kg 3x5, squats 100kg 3x5", "pull_up 3x5 +20; dip 3x5 +30; squat 3x5 +100")
say("Pull-ups 5/5/5/4/3 (+15) and chins 8/7 (no weight)", "pull_up 5,5,5,4,3 +15; chin_up 8,7")
say("Dips: 5x30kg 5x30kg 4x30kg", "dip 5,5,4 +30")
say("neutral pull-ups, 24 kg kettlebell between the feet, 4x3", "neutral_grip_pull_up 4x3 +24")
say("ring dips 3x6 w/ 8kg vest", "ring_dip 3x6 +8")
say(
    "pull-ups with a 10kg vest plus 10kg on the belt, 3x4",
    "pull_up 3x4 +20",
    also=({"sets": sets("pull_up 3x4 +?"), "ask": [{"about": "load_kg", "span": "10kg vest plus 10kg"}]},),
)
say(
    "negatives: chin-ups 3x3 5 sec each, then dead hang till grip gave out 52s",
    "chin_up 3x3 ecc; dead_hang 52s",
    sets_or=("chin_up 3x3 ecc; dead_hang 52s @10",),
    maybe_unread=("5 sec each",),
)
say("tuck planche 5x8s, band? no. straight. rpe 8 on the last", "tuck_planche 4x8s; tuck_planche 8s @8")
say("Pull-ups +30 3x3. Not my best but ok. Previous best 3x4.", "pull_up 3x3 +30")
say("hoy dominadas 5x3 +20, felt great", "pull_up 5x3 +20", lang=None)
say("Klimmzüge 4x5 +10 today, thx coach", "pull_up 4x5 +10", lang=None, maybe="for_coach")
say("pull-ups 5x3 +20 heute, slept 7h", "pull_up 5x3 +20", sleep=7, lang=None)
say(
    "First session after the flu: chin-ups 3x5, easy. Fever gone for 4 days.",
    "chin_up 3x5",
    "",
    maybe="resume",
    does_or=("report ill",),
)
say(
    "ill all week, back in the gym today with dips 3x8",
    "dip 3x8",
    "ill",
    does_or=("report", "report resume", "report ill resume"),
    dates_or=("2027-03-03..2027-03-09", "2027-03-08..2027-03-09", "2027-03-04..2027-03-09", "2027-03-08..2027-03-10"),
    **WED,
    why="the week is not named in days",
)
say(
    "missed Monday, did it today: pull-ups 4x4 +20",
    "pull_up 4x4 +20",
    "missed",
    dates="2027-03-08",
    does_or=("report missed move", "report move", "report"),
    dates_or=("2027-03-08..2027-03-10", ""),
    **WED,
)
say(
    "away from Friday, back on the 20th. Today: pull ups 5x3 +20",
    "pull_up 5x3 +20",
    "away",
    dates="2027-03-12..2027-03-19",
    **WED,
)
