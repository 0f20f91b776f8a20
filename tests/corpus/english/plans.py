"""Messages that lean on the plan of the day."""
# ruff: noqa: E501

from tests.corpus.lines import Theme

THEME = Theme("plans", "en")
say = THEME.say

MAIN = "m/weighted_pull_up pull_up 5x3 +22.5 @8"
WITH_DIPS = "m/weighted_pull_up pull_up 4x4 +20 @8; a dip 3x6 +15 @8"
FULL = "w scapular_pull_up 2x8; w pull_up 5; m/weighted_pull_up pull_up 4x4 +20 @7; a external_rotation LR 2x12 +4; a face_pull 2x15 +15"
SKILL = (
    "w scapular_pull_up 2x6; s/archer_elbow_full archer_ring_elbow LR 2x2 @7; m/weighted_pull_up pull_up 5x3 +25 @7.5"
)
ARM = "s/hand_on_biceps one_arm_hand_on_biceps LR 2x2 @8"
LEVER = "s/advanced_tuck_front_lever advanced_tuck_front_lever 4x8s @8; m/weighted_pull_up pull_up 4x6 +15 @7"

say("done ✅", "pull_up 5x3 +22.5", today=MAIN)
say("Did everything as written.", "pull_up 4x4 +20; dip 3x6 +15", today=WITH_DIPS)
say(
    "all done",
    "scapular_pull_up 2x8; pull_up 5; pull_up 4x4 +20; external_rotation LR 2x12 +4; face_pull 2x15 +15",
    today=FULL,
)
say("as planned 🤙", "scapular_pull_up 2x6; archer_ring_elbow LR 2x2; pull_up 5x3 +25", today=SKILL)
say(
    "finished today's session, all sets all reps",
    "archer_ring_elbow LR 2x2; scapular_pull_up 2x6; pull_up 5x3 +25",
    today=SKILL,
)
say("check. everything per plan, rpe 7 for the session", "pull_up 4x4 +20; dip 3x6 +15", srpe=7, today=WITH_DIPS)
say("done, last set @9", "pull_up 4x3 +22.5; pull_up 3 +22.5 @9", today=MAIN)
say("done, all sets @8", "pull_up 5x3 +22.5 @8", today=MAIN)
say("as planned but only 2 on the last set", "pull_up 4x3 +22.5; pull_up 2 +22.5", today=MAIN)
say("same but 25 instead of 22.5", "pull_up 5x3 +25", today=MAIN)
say(
    "did the 3s with 20, elbow felt a bit meh",
    "pull_up 5x3 +20",
    today=MAIN,
    maybe="pain",
    pain_or=("elbow - -",),
    why="a joint that feels meh has no number; it may be taken as pain",
)
say("got 4 of the 5", "pull_up 4x3 +22.5", today=MAIN)
say("only managed three sets", "pull_up 3x3 +22.5", today=MAIN)
say("stopped after set 2, no time", "pull_up 2x3 +22.5", today=MAIN)
say("3,3,3,2,2", "pull_up 3,3,3,2,2 +22.5", today=MAIN)
say("3 3 3 3 2, the last one a grinder", "pull_up 3,3,3,3,2 +22.5", today=MAIN)
say("+22.5: 3/3/3/3/3 ✔️", "pull_up 5x3 +22.5", today=MAIN)
say(
    "3x5 at 20 done",
    "pull_up 5x3 +20",
    today=MAIN,
    ask_or="sets: 3x5 at 20",
    why="the plan is five sets of three; reps by sets",
)
say("skipped the dips, pull-ups as planned", "pull_up 4x4 +20", today=WITH_DIPS)
say("pull-ups done, dips 6,6,5", "pull_up 4x4 +20; dip 6,6,5 +15", today=WITH_DIPS)
say("Everything except the last set of dips", "pull_up 4x4 +20; dip 2x6 +15", today=WITH_DIPS)
say("all good but dips with 12.5 instead of 15", "pull_up 4x4 +20; dip 3x6 +12.5", today=WITH_DIPS)
say("as planned plus one extra set of dips", "pull_up 4x4 +20; dip 4x6 +15", today=WITH_DIPS)
say("done but 5 less on everything", "pull_up 4x4 +15; dip 3x6 +10", today=WITH_DIPS)
say("did the pull ups with 2.5 more, dips as written", "pull_up 4x4 +22.5; dip 3x6 +15", today=WITH_DIPS)
say("just the pull-ups today, ran out of time for the rest", "pull_up 4x4 +20", today=WITH_DIPS)
say("only did the dips, bar was taken", "dip 3x6 +15", today=WITH_DIPS)
say("one rep less on every set of pull ups, dips ok", "pull_up 4x3 +20; dip 3x6 +15", today=WITH_DIPS)
say("pull-ups 4x4 +20, dips 3x6 +15", "pull_up 4x4 +20; dip 3x6 +15", today=WITH_DIPS)
say("skipped accessories, all the rest done", "scapular_pull_up 2x8; pull_up 5; pull_up 4x4 +20", today=FULL)
say(
    "done, but no face pulls, cable machine broken",
    "scapular_pull_up 2x8; pull_up 5; pull_up 4x4 +20; external_rotation LR 2x12 +4",
    today=FULL,
    maybe="equipment",
)
say(
    "warm-up and main work done, rest tomorrow maybe",
    "scapular_pull_up 2x8; pull_up 5; pull_up 4x4 +20",
    today=FULL,
    maybe="move",
    ask_or="dates: tomorrow maybe",
)
say("main work only: 4x4 +20", "pull_up 4x4 +20", today=FULL)
say("Archers done. Pull-ups 5x3 +25, last rpe 8", "archer_ring_elbow LR 2x2; pull_up 5x3 +25 last@8", today=SKILL)
say(
    "archers 2/2 and 2/1, pull ups as planned",
    "archer_ring_elbow LR 2/2; archer_ring_elbow LR 2/1; pull_up 5x3 +25",
    today=SKILL,
)
say(
    "archers 2x2 each side @7",
    "archer_ring_elbow LR 2x2 last@7",
    today=SKILL,
    why="bodyweight implied by the plan, @7 is effort",
)
say(
    "no archers today, shoulder felt off. pull-ups done",
    "pull_up 5x3 +25",
    today=SKILL,
    maybe="pain",
    pain_or=("shoulder - -",),
)
say("hand on biceps: left 2,2 right 2,1", "one_arm_hand_on_biceps L 2,2; one_arm_hand_on_biceps R 2,1", today=ARM)
say("L as planned, R 1 rep only each time", "one_arm_hand_on_biceps L 2x2; one_arm_hand_on_biceps R 2x1", today=ARM)
say("right arm done, left only one set", "one_arm_hand_on_biceps R 2x2; one_arm_hand_on_biceps L 2", today=ARM)
say("2/2, 2/2", "one_arm_hand_on_biceps LR 2; one_arm_hand_on_biceps LR 2", today=ARM)
say("all as planned, rpe 8 on the last pair", "one_arm_hand_on_biceps LR 2; one_arm_hand_on_biceps LR 2 @8", today=ARM)
say(
    "front levers 8,8,7,6 then pull ups as planned",
    "advanced_tuck_front_lever 8s,8s,7s,6s; pull_up 4x6 +15",
    today=LEVER,
)
say("levers done, pull-ups 6 6 6 5", "advanced_tuck_front_lever 4x8s; pull_up 6,6,6,5 +15", today=LEVER)
say("front lever 4x8s @7", "advanced_tuck_front_lever 4x8s last@7", today=LEVER)
say("did the lot. holds were 10s instead of 8", "advanced_tuck_front_lever 4x10s; pull_up 4x6 +15", today=LEVER)
say(
    "everything, session rpe 8, 70 mins, slept 6h",
    "advanced_tuck_front_lever 4x8s; pull_up 4x6 +15",
    srpe=8,
    mins=70,
    sleep=6,
    today=LEVER,
)
say(
    "did it yesterday already, as planned",
    "pull_up 5x3 +22.5",
    on="2027-03-08",
    at="2027-03-09 09:00",
    tz="Europe/London",
    today=MAIN,
)
say("Done. 2 in the tank at the end", "pull_up 4x3 +22.5; pull_up 3 +22.5 @8", today=MAIN)
say("missed the last rep of the last set, otherwise all there", "pull_up 4x3 +22.5; pull_up 2 +22.5 fail", today=MAIN)
say("failed rep 3 on sets 4 and 5, others fine", "pull_up 3x3 +22.5; pull_up 2,2 +22.5 fail", today=MAIN)
say("did them as chin-ups instead, same sets and weight", "chin_up 5x3 +22.5", today=MAIN)
say("chins 4x5 +20 instead of the pull ups", "chin_up 4x5 +20", today=MAIN)
say("wanted the 5x3 with 22.5, got 4x3", "pull_up 4x3 +22.5", today=MAIN)
say("plan said 5x3, I did 6x3", "pull_up 6x3 +22.5", today=MAIN)
say(
    "45s on everything, felt great",
    "pull_up 4x4 +45lb; dip 3x6 +45lb",
    unit="lb",
    body=82.0,
    today="m/weighted_pull_up pull_up 4x4 +18.1436948 @8; a dip 3x6 +18.1436948 @8",
    ask_or="load_kg: 45s",
    why="45s is a plate of 45 pounds; asking whether they are seconds is as good",
)
say(
    "finished all of it, 40 lb instead of 35",
    "pull_up 4x4 +40lb",
    unit="lb",
    body=82.0,
    today="m/weighted_pull_up pull_up 4x4 +15.87573295 @8",
)
say(
    "nailed it 💯",
    "pull_up 5x3 +22.5",
    today=MAIN,
    ask_or="sets: nailed it",
    also=({"intents": ["smalltalk"], "performed_on": None, "sets": []},),
    why="a boast beside a plan is most likely all of it",
)
say("done except set 3 where I only got 2", "pull_up 3,3,2,3,3 +22.5", today=MAIN)
say("first two sets with 22.5, the rest with 20", "pull_up 2x3 +22.5; pull_up 3x3 +20", today=MAIN)
say("swapped the order but everything done, dips first", "dip 3x6 +15; pull_up 4x4 +20", today=WITH_DIPS)
say("planned stuff done + 3x10 ring rows for fun", "pull_up 5x3 +22.5; ring_row 3x10", today=MAIN)
say(
    "nothing done, kid woke up", "", "missed", today=MAIN, at="2027-03-09 20:00", tz="Europe/London", dates="2027-03-09"
)
say(
    "will do the session tonight",
    "",
    "smalltalk",
    today=MAIN,
    does_or=("unknown",),
    at="2027-03-09 08:00",
    tz="Europe/London",
    why="an intention is no report",
)
say(
    "about to start, what were the weights again?",
    "",
    "plan_today",
    today=MAIN,
    at="2027-03-09 18:00",
    tz="Europe/London",
    dates_or=("2027-03-09",),
)
