"""Told against plans of many kinds: one lift alone, holds, singles by side, warm-ups like the lift, a test day; talk."""
# ruff: noqa: E501

from functools import partial

from tests.corpus.lines import Theme

THEME = Theme("other_plans", "en")
say = partial(THEME.say, at="2027-03-04 18:00", tz="Europe/London")

ONE = "m/weighted_pull_up pull_up 5x3 +22.5 @8"
HOLDS = "s/tuck advanced_tuck_front_lever 5x10s @8; a l_sit 3x20s; a hanging_leg_raise 3x10"
WARM = "w pull_up 5; w pull_up 3 +10; s/hand_on_biceps one_arm_hand_on_biceps 2x1 LR @8; m/weighted_pull_up pull_up 4x4 +25 @7; a push_up 3x15"
TEST = "w chin_up 5; w chin_up 3 +15; w chin_up 2 +25; m/weighted_pull_up chin_up 1x3 +37.5 @9; s/oap one_arm_pull_up 1x1 LR"
CHINS = "m/weighted_pull_up chin_up 4x6 +15 @7; a ring_row 3x12; a dip 3x10; a biceps_curl 3x12 +10"
SINGLES = "s/oac one_arm_chin_up 3x1 LR @8; a push_up 3x20"
RINGS = "s/shoulder archer_ring_shoulder 2x3 LR @7; m/weighted_pull_up pull_up 4x2 +30 @8.5; a row 3x10 +40; a handstand_hold 4x20s"

WARMED = "pull_up 5; pull_up 3 +10"
ARMS = "one_arm_hand_on_biceps LR 2x1"
LEVERS = "advanced_tuck_front_lever 5x10s"

# One movement
say("did 6 sets by accident lol", "pull_up 6x3 +22.5", today=ONE)
say(
    "sets 1-3 at 22.5, 4 at 20, 5 at 17.5",
    "pull_up 3x3 +22.5; pull_up 3 +20; pull_up 3 +17.5",
    today=ONE,
)
say("got 4 on the first set instead of 3, rest 3s", "pull_up 4 +22.5; pull_up 4x3 +22.5", today=ONE)
say("as planned but one extra", "pull_up 5x3 +22.5", today=ONE, ask="sets: one extra")
say("I did it yesterday already", "pull_up 5x3 +22.5", today=ONE, on="2027-03-03")

# Holds
say(
    "did the L sits first then levers then leg raises. everything as prescribed",
    f"{LEVERS}; l_sit 3x20s; hanging_leg_raise 3x10",
    today=HOLDS,
)
say(
    "levers: 10, 10, 8, 8, 6. L-sits all 20. leg raises 10, 10, 8",
    "advanced_tuck_front_lever 10s,10s,8s,8s,6s; l_sit 3x20s; hanging_leg_raise 10,10,8",
    today=HOLDS,
)
say(
    "did 4 levers instead of 5, everything else by the book",
    "advanced_tuck_front_lever 4x10s; l_sit 3x20s; hanging_leg_raise 3x10",
    today=HOLDS,
)
say("L-sits 15s each, couldn't hold 20", "l_sit 3x15s", today=HOLDS)
say("leg raises with 12 reps, otherwise as planned", f"{LEVERS}; l_sit 3x20s; hanging_leg_raise 3x12", today=HOLDS)

# A warm-up of the main lift's movement, singles by side
say(
    "warm up and one arm work done, then ran out of time. no pull-ups or push-ups",
    f"{WARMED}; {ARMS}",
    today=WARM,
)
say(
    "left singles were clean, right second one failed",
    "one_arm_hand_on_biceps LR 1; one_arm_hand_on_biceps L 1; one_arm_hand_on_biceps R 0 fail",
    today=WARM,
)
say(
    "missed the single on the left, got it on the right. rest as planned",
    f"{WARMED}; pull_up 4x4 +25; push_up 3x15",
    today=WARM,
    ask="sets: missed the single on the left, got it on the right",
)
say(
    "one arm stuff was fine, pull ups 4 4 4 3, skipped push ups",
    f"{ARMS}; pull_up 4,4,4,3 +25",
    today=WARM,
)
say(
    "pushups 15 15 12, everything else as on the paper",
    f"{WARMED}; {ARMS}; pull_up 4x4 +25; push_up 15,15,12",
    today=WARM,
)
say(
    "did all four sets of pull ups with 27.5, felt good, other stuff as planned",
    f"{WARMED}; {ARMS}; pull_up 4x4 +27.5; push_up 3x15",
    today=WARM,
)
say("ran out of time after the pull ups", f"{WARMED}; {ARMS}; pull_up 4x4 +25", today=WARM)
say(
    "the first single on each side was clean, the second not. rest done",
    f"{WARMED}; one_arm_hand_on_biceps LR 1; one_arm_hand_on_biceps LR 0 fail; pull_up 4x4 +25; push_up 3x15",
    today=WARM,
)
say("mobility done, pull-ups 4 4 4 3", "pull_up 4,4,4,3 +25", today=WARM)
say("stretching done, pull-ups only 3 sets", "pull_up 3x4 +25", today=WARM, maybe_unread=("stretching",))

# A test day
say(
    "top set 3 @ 37.5 rpe 9, then one arm: got the left, missed the right",
    "chin_up 3 +37.5 @9; one_arm_pull_up L 1; one_arm_pull_up R 0 fail",
    today=TEST,
)
say(
    "test day! hit 3 at 37.5 and the one arm pull up on BOTH arms!!!!",
    "chin_up 3 +37.5; one_arm_pull_up LR 1",
    today=TEST,
)
say("only got 2 on the top set, one arms not tried", "chin_up 2 +37.5", today=TEST)
say(
    "warm up as planned, top set went up to 40 for 2",
    "chin_up 5; chin_up 3 +15; chin_up 2 +25; chin_up 2 +40",
    today=TEST,
)
say("missed the single on the left, got it on the right", "one_arm_pull_up L 0 fail; one_arm_pull_up R 1", today=TEST)
say("hit the 3, didnt bother with one arm today", "chin_up 3 +37.5", today=TEST)
say(
    "only 1 at 37.5, dropped to 32.5 and got 3. skipped the one arms",
    "chin_up 1 +37.5",
    today=TEST,
    ask="sets: dropped to 32.5",
)
say(
    "top set as planned. OAP left yes right no",
    "chin_up 3 +37.5; one_arm_pull_up L 1; one_arm_pull_up R 0 fail",
    today=TEST.replace("w chin_up 5; w chin_up 3 +15; w chin_up 2 +25; ", ""),
)

# Several accessories
say(
    "chins 6 6 6 5, rows done, dips 10 10 8, no curls",
    "chin_up 6,6,6,5 +15; ring_row 3x12; dip 10,10,8",
    today=CHINS,
)
say(
    "4x6 done with 15, everything after that only 2 sets each",
    "chin_up 4x6 +15; ring_row 2x12; dip 2x10; biceps_curl 2x12 +10",
    today=CHINS,
)
say(
    "chins done, accessories only two sets each",
    "chin_up 4x6 +15; ring_row 2x12; dip 2x10; biceps_curl 2x12 +10",
    today=CHINS,
)
say(
    "chins as planned, everything else just one set",
    "chin_up 4x6 +15; ring_row 12; dip 10; biceps_curl 12 +10",
    today=CHINS,
)
say(
    "curls with 8s instead of 10s, otherwise done",
    "chin_up 4x6 +15; ring_row 3x12; dip 3x10; biceps_curl 3x12 +8",
    today=CHINS,
)
say(
    "first two sets of chins 6, then 5 and 4. Everything after as normal",
    "chin_up 6,6,5,4 +15; ring_row 3x12; dip 3x10; biceps_curl 3x12 +10",
    today=CHINS,
)
say(
    "got all three on the right, only one on the left",
    "",
    "report",
    today=SINGLES,
    ask="sets: got all three on the right, only one on the left",
)
say(
    "2 per side then elbow felt off so i stopped", "", "report", pain="elbow - -", today=SINGLES, ask="sets: 2 per side"
)
say("3 each arm, push-ups 20 20 18", "one_arm_chin_up LR 3x1; push_up 20,20,18", today=SINGLES)
say("pullups: 30 felt too heavy so 27.5 for all four", "pull_up 4x2 +27.5", today=RINGS)
say(
    "handstands all under 15s today. rest good",
    "archer_ring_shoulder LR 2x3; pull_up 4x2 +30; row 3x10 +40",
    today=RINGS,
    ask="hold_s: under 15s",
)
say("rows with 35, handstands 20 20 15 10", "row 3x10 +35; handstand_hold 20s,20s,15s,10s", today=RINGS)

# Talk
say("won't make it Friday, will do it Saturday morning instead", does="move", dates="2027-03-05..2027-03-06")
say("flying out Monday back the following Sunday", does="away", dates="2027-03-08..2027-03-13")
say("got the flu, out for the rest of the week", does="ill", dates="2027-03-04..2027-03-07")
say("I've been off sick since Tuesday, starting again tomorrow", does="ill resume", dates="2027-03-02..2027-03-04")
say("pause everything please until april", does="pause", dates="2027-03-04..2027-03-31")
say("I'm out until April", does="away", dates="2027-03-04..2027-03-31")
say("missed Monday and Tuesday, in-laws visiting", does="missed", dates="2027-03-01..2027-03-02")
say("the gym only has a 20 and a 10 plate, what should I use for 22.5?", does="equipment", maybe="help")
say("yesterday's session was actually Monday's", fix=("performed_on", "2027-03-03", "2027-03-01"), on=None)
say("yesterday's was Monday's", fix=("performed_on", "2027-03-03", "2027-03-01"), on=None)
say("oops wrong, dips were with 15", fix=("load_kg", None, 15, "dip"))
say("on set 3 I did 4 not 5", fix=("reps", 5, 4, None, None, 3))
say("tell Anna I'll send the video tomorrow", does="for_coach")
say("ran into my old coach, he's 72 and still does 10 pull ups", does="smalltalk", does_or=("unknown",))
say("met a guy at the park, 60 years old, does 15 chin ups easy", does="smalltalk", does_or=("unknown",))

# A second round, mended later
say("doubles not triples today, all 5", "pull_up 5x2 +22.5", today=ONE)
say("first 3 sets easy (rpe 6), last 2 rpe 8", "pull_up 3x3 +22.5 @6; pull_up 2x3 +22.5 @8", today=ONE)
say(
    "one lever short, everything else done",
    "advanced_tuck_front_lever 4x10s; l_sit 3x20s; hanging_leg_raise 3x10",
    today=HOLDS,
)
say(
    "Did the pull-ups first, then singles were terrible: only one per arm. Push-ups normal",
    f"{WARMED}; {ARMS}; pull_up 4x4 +25; push_up 3x15",
    today=WARM,
)
say("Just the warm-up and 2 singles per arm today", f"{WARMED}; {ARMS}", today=WARM)
say(
    "37.5 for 3, could have done 4. OAP: left 1, right 1",
    "chin_up 3 +37.5; one_arm_pull_up LR 1",
    today=TEST,
)
say("warmup + top set only", "chin_up 5; chin_up 3 +15; chin_up 2 +25; chin_up 3 +37.5", today=TEST)
say(
    "chins 6,6,6,6 ring rows 12,12,12 dips 10,10,10 curls 10,10,10",
    "chin_up 4x6 +15; ring_row 3x12; dip 3x10; biceps_curl 3x10 +10",
    today=CHINS,
)
say("chins 6,6,6,6 ring rows 12,12,12 dips 10,10,10", "chin_up 4x6; ring_row 3x12; dip 3x10")
say("singles 3/2, push ups done", "push_up 3x20", today=SINGLES, ask="sets: 3/2")
say(
    "2x3 archers ok, 4x2 with 30 ok, rows skipped, 3 of the 4 handstands",
    "archer_ring_shoulder LR 2x3; pull_up 4x2 +30; handstand_hold 3x20s",
    today=RINGS,
)
say("tomorrow is impossible, what about Sunday", does="move", dates="2027-03-05..2027-03-07")
say(
    "can I shift everything by two days, just got back from a night shift",
    does="move",
    dates="2027-03-04..2027-03-06",
)
say("Not today. Migraine.", does="ill", dates="2027-03-04")
say("took the day off, needed it", does="missed", dates="2027-03-04")
say("couldn't train on Tuesday, was stuck at work until 9", does="missed", dates="2027-03-02")
say("I want to stop the programme", does="stop")
say("is next week a deload?", does="plan_week", dates_or=("2027-03-08..2027-03-14",))
say("what was my bodyweight in January vs now", does="progress")
say("left arm did 1 on the second set, not 2", fix=("reps", 2, 1, None, "left", 2))
say("same as the paper says, took 90 minutes", "pull_up 5x3 +22.5", mins=90, today=ONE)
say("didn't dare the one arm. top set 3 reps", "chin_up 3 +37.5", today=TEST)
say(
    "pull ups 4x2, weight 27.5. everything else by plan",
    "archer_ring_shoulder LR 2x3; pull_up 4x2 +27.5; row 3x10 +40; handstand_hold 4x20s",
    today=RINGS,
)
say("I'm out tomorrow, Saturday works though", does="move", dates="2027-03-05..2027-03-06")
say("I'm out Friday", does="missed", dates="2027-03-05")
