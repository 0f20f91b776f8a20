"""The fine points of the contract, one message each."""

from tests.corpus.lines import Theme
from tests.corpus.notation import sets

THEME = Theme("fine", "en")
say = THEME.say
NIGHT = {"at": "2027-03-10 01:30", "tz": "Europe/London"}
WED = {"at": "2027-03-10 12:00", "tz": "Europe/London"}

say(
    "pull-ups 5x3 +20, dips 3x8 +10, rpe 8",
    "pull_up 5x3 +20; dip 3x8 +10",
    srpe=8,
    also=({"sets": sets("pull_up 5x3 +20; dip 3x8 +10 last@8"), "session_rpe": None},),
    why="after several movements an effort is the session's; said in the same breath some hear the last set's",
)
say("pull-ups 5x3 +20\ndips 3x8 +10\n\n@8 overall", "pull_up 5x3 +20; dip 3x8 +10", srpe=8)
say("trained today, session rpe 8, 60 min", "", srpe=8, mins=60)
say("session rpe 7", "", srpe=7)
say("missed today's session", "", "missed", dates="2027-03-09", **NIGHT)
say("didn't train yesterday", "", "missed", dates="2027-03-09", **NIGHT)
say("skipped it tonight", "", "missed", dates="2027-03-09", **NIGHT)
say(
    "was ill Monday and Tuesday, and I'm away from Friday to Sunday",
    "",
    "ill away",
    dates="2027-03-12..2027-03-14",
    does_or=("away",),
    **WED,
    why="of two spans the one that changes the plan",
)
say("pull-ups 3x3 +30, failed the last rep of the last set, that was a 10", "pull_up 2x3 +30; pull_up 2 +30 @10 fail")
say("missed the 5th rep at +25 on pull ups, got 4", "pull_up 4 +25 fail")
say("chins 5@8", "chin_up ?", ask="load_kg: 5@8", also=({"sets": sets("chin_up 5 +?")}, {"sets": []}))
say("pull ups BW+20 5x3", "pull_up 5x3 +20")
say("dips bw x 12, bw x 10", "dip 12,10")
say("pull-ups 5x3 +1.25", "pull_up 5x3 +1.25")
say("pull-ups +2.5kg 8,8,6", "pull_up 8,8,6 +2.5")
say("weighted chin-ups: 22.5 kg for 5, 5 and 4", "chin_up 5,5,4 +22.5")
say("pull-ups 20 kg, 22.5 kg, 25 kg for a triple each", "pull_up 3 +20; pull_up 3 +22.5; pull_up 3 +25")
say("pull-ups 4x4 @ 20 @ 8", "pull_up 4x4 +20 last@8")
say("pull-ups 4x4@20@8", "pull_up 4x4 +20 last@8")
say("bw pull-ups 5x5 @7", "pull_up 5x5 last@7")
say("L-sit 15s @9", "l_sit 15s @9")
say(
    "pull-ups 5x3 w/ 20kg, felt like 8/10",
    "pull_up 5x3 +20 last@8",
    also=({"sets": sets("pull_up 5x3 +20"), "session_rpe": 8},),
    why="an effort that closes one movement is its last set's; some hear the session's",
)
say(
    "everything at rpe 7: pull-ups 4x5 +10",
    "pull_up 4x5 +10 @7",
    also=({"sets": sets("pull_up 4x5 +10"), "session_rpe": 7},),
)
say(
    "back on the 20th",
    "",
    "away",
    dates="2027-03-10..2027-03-19",
    dates_or=("..2027-03-19",),
    does_or=("resume",),
    ask_or="dates: back on the 20th",
    **WED,
)
say("pause until 1 May", "", "pause", dates="2027-03-10..2027-05-01", **WED)
say(
    "hips and ankles fine, knees 1",
    pain="knee - 1",
    pain_or=(
        "hip - 0; ankle - 0; knee - 1",
        "knee L 1; knee R 1",
        "hip L 0; hip R 0; ankle L 0; ankle R 0; knee L 1; knee R 1",
    ),
)
say("leg 2/10", pain="other - 2")
say("middle finger left 3", pain="hand L 3")
say("grip sore, 2", pain="hand - 2")
say("woke up twice because of my left elbow, 4/10", pain="elbow L 4 rest", flags="night_pain")
say("fever 38.2", "", "ill", flags="fever", dates="2027-03-10..", dates_or=("", "2027-03-10"), **WED)
say("10 min EMOM, 2 pull-ups +10", "pull_up 10x2 +10")
say("trained 19:00 to 20:15, dips 4x8", "dip 4x8", why="clock times are no duration")
say("archer pull-ups 4/3, 4/3", "archer_pull_up LR 4/3; archer_pull_up LR 4/3")
say(
    "one arm counterweight pull-ups, 5 kg off, L 2 2 R 2 1",
    "one_arm_counterweight L 2,2 -5; one_arm_counterweight R 2,1 -5",
)
say("band pull-ups 3x5, thick band", "band_pull_up 3x5")
say("red band minus 25 kg: pull-ups 3x6", "band_pull_up 3x6 -25")
say("DB row 22.5 3x10", "row 3x10 +22.5", ask_or="load_kg: 22.5")
say("pulldown 50 3x12", "lat_pulldown 3x12 +50", ask_or="load_kg: 50")
say("3 rounds: 5 dips, 5 pull-ups, 10 push-ups", "dip 3x5; pull_up 3x5; push_up 3x10")
say("dips 5x5 +20 and no, not 8x8 like last time", "dip 5x5 +20")
say("two sessions today: am pull-ups 5x3 +20, pm dips 3x8", "pull_up 5x3 +20; dip 3x8")
say("today: nothing but a hang, 40 sec", "dead_hang 40s")
say("1x8 pull ups +0", "pull_up 8")
