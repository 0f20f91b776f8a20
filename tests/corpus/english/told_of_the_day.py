"""Messages told against the day's plan: sets fewer and more, other loads, swaps, ticks, sides and holds."""
# ruff: noqa: E501

from tests.corpus.lines import Theme

THEME = Theme("told_of_the_day", "en")
say = THEME.say

DAY = "w scapular_pull_up 2x8; m/weighted_pull_up pull_up 5x3 +22.5 @8; a external_rotation LR 2x12 +4"
DIPS = "m/weighted_pull_up pull_up 4x4 +20 @8; a dip 3x6 +15 @8"
SKILL = (
    "w scapular_pull_up 2x6; s/archer_elbow_full archer_ring_elbow LR 2x2 @7; m/weighted_pull_up pull_up 5x3 +25 @7.5"
)
ARM = "s/hand_on_biceps one_arm_hand_on_biceps LR 2x2 @8"
ARCHERS = "s/archer_elbow_full archer_ring_elbow LR 3x4 @7"
LEVER = "s/advanced_tuck_front_lever advanced_tuck_front_lever 4x8s @8; m/weighted_pull_up pull_up 4x6 +15 @7"
PLANCHE = "s/tuck_planche tuck_planche 5x12s @8"
TEST = "w pull_up 5; m/weighted_pull_up pull_up 1x3 +30 @9; s/hand_on_biceps one_arm_hand_on_biceps LR 1x1 @9"
DELOAD = "m/weighted_pull_up pull_up 2x3 +17.5 @6"
CHINS = "m/weighted_pull_up chin_up 4x5 +15 @8; a push_up 3x15; a hanging_leg_raise 3x10"

say("did the first three sets then stopped, elbow", "scapular_pull_up 2x8; pull_up 3x3 +22.5", today=DAY)
say("did the warm up and 3 work sets", "scapular_pull_up 2x8; pull_up 3x3 +22.5", today=DAY)
say("warm-up and 3 work sets", "scapular_pull_up 2x8; pull_up 3x3 +22.5", today=DAY)
say("did chins instead with 20", "chin_up 5x3 +20", today=DAY)
say("pull-ups ✅ rest ❌", "pull_up 5x3 +22.5", today=DAY)
say(
    "done, the last two sets with 20 because grip failed",
    "scapular_pull_up 2x8; pull_up 3x3 +22.5; pull_up 2x3 +20; external_rotation LR 2x12 +4",
    today=DAY,
)
say("5x3 ✅ rotations ✅", "pull_up 5x3 +22.5; external_rotation LR 2x12 +4", today=DAY)
say("done. added a sixth set", "scapular_pull_up 2x8; pull_up 6x3 +22.5; external_rotation LR 2x12 +4", today=DAY)
say("all five sets in, only I put 20 on", "pull_up 5x3 +20", today=DAY)
say("pull ups only 3 sets instead of 5 and with 2.5 less", "pull_up 3x3 +20", today=DAY)
say("same as plan, 2.5 more", "scapular_pull_up 2x8; pull_up 5x3 +25; external_rotation LR 2x12 +4", today=DAY)
say("done but only 20kg", "scapular_pull_up 2x8; pull_up 5x3 +20; external_rotation LR 2x12 +4", today=DAY)
say("12/12 and 10/12", "", "report", today=DAY, ask="movement: 12/12 and 10/12")
say(
    "3x4, last one only 3 on the left",
    "archer_ring_elbow LR 2x4; archer_ring_elbow L 3; archer_ring_elbow R 4",
    today=ARCHERS,
)
say("warm up ✅ pull ups ✅ rotations ❌", "scapular_pull_up 2x8; pull_up 5x3 +22.5", today=DAY)
say("Pull-ups 5x3 ✅\nRotations ❌ no time", "pull_up 5x3 +22.5", today=DAY)
say("everything bar the rotations", "scapular_pull_up 2x8; pull_up 5x3 +22.5", today=DAY)
say("all sets done at 20", "scapular_pull_up 2x8; pull_up 5x3 +20; external_rotation LR 2x12 +4", today=DAY)
say("did it all at 25! felt strong", "scapular_pull_up 2x8; pull_up 5x3 +25; external_rotation LR 2x12 +4", today=DAY)
say(
    "did 4 sets, last one was a grinder, rpe 9.5",
    "scapular_pull_up 2x8; pull_up 3x3 +22.5; pull_up 3 +22.5 @9.5",
    today=DAY,
)
say("pullups done, rotations only one set", "pull_up 5x3 +22.5; external_rotation LR 12 +4", today=DAY)
say("all done, rotations with 3kg", "scapular_pull_up 2x8; pull_up 5x3 +22.5; external_rotation LR 2x12 +3", today=DAY)
say(
    "finished but had to drop to 20 after the third set",
    "scapular_pull_up 2x8; pull_up 3x3 +22.5; pull_up 2x3 +20; external_rotation LR 2x12 +4",
    today=DAY,
)
say(
    "done, 22.5 for the first 3 then 20",
    "scapular_pull_up 2x8; pull_up 3x3 +22.5; pull_up 2x3 +20; external_rotation LR 2x12 +4",
    today=DAY,
)
say("warm-up, then 5x3 at 22.5, no rotations", "scapular_pull_up 2x8; pull_up 5x3 +22.5", today=DAY)
say("only had time for the pull-ups today", "pull_up 5x3 +22.5", today=DAY)
say("only had time for 3 sets", "scapular_pull_up 2x8; pull_up 3x3 +22.5", today=DAY)
say("no time for rotations but the rest is done", "scapular_pull_up 2x8; pull_up 5x3 +22.5", today=DAY)
say("main sets done, skipped warmup and rotations", "pull_up 5x3 +22.5", today=DAY)
say("3 3 3 3 2, rotations done", "pull_up 4x3 +22.5; pull_up 2 +22.5; external_rotation LR 2x12 +4", today=DAY)
say(
    "did everything + 1 extra set of pull-ups",
    "scapular_pull_up 2x8; pull_up 6x3 +22.5; external_rotation LR 2x12 +4",
    today=DAY,
)
say(
    "everything done plus 2 sets of dips x8",
    "scapular_pull_up 2x8; pull_up 5x3 +22.5; external_rotation LR 2x12 +4; dip 2x8",
    today=DAY,
)
say(
    "done, rpe 8, rotations 15 reps instead of 12",
    "scapular_pull_up 2x8; pull_up 5x3 +22.5; external_rotation LR 2x15 +4",
    today=DAY,
    srpe=8,
)
say(
    "all good, last set rpe 9",
    "scapular_pull_up 2x8; pull_up 4x3 +22.5; pull_up 3 +22.5 @9; external_rotation LR 2x12 +4",
    today=DAY,
)
say(
    "managed 3,3,3,2,1. rotations as planned",
    "pull_up 3x3 +22.5; pull_up 2 +22.5; pull_up 1 +22.5; external_rotation LR 2x12 +4",
    today=DAY,
)
say("did 5x2 instead of 5x3", "pull_up 5x2 +22.5", today=DAY)
say("did 5x2 instead", "pull_up 5x2 +22.5", today=DAY)
say("5 singles instead of the triples, same weight", "pull_up 5x1 +22.5", today=DAY)
say(
    "couldn't finish the last set, got 2",
    "scapular_pull_up 2x8; pull_up 4x3 +22.5; pull_up 2 +22.5 fail; external_rotation LR 2x12 +4",
    today=DAY,
)
say(
    "missed the third rep on sets 4 and 5",
    "scapular_pull_up 2x8; pull_up 3x3 +22.5; pull_up 2x2 +22.5 fail; external_rotation LR 2x12 +4",
    today=DAY,
)
say("bodyweight only today, all sets", "pull_up 5x3", today=DAY)
say("ring rows instead of pull-ups, 5x8", "ring_row 5x8", today=DAY)
say(
    "done except rotations only 10 on the left",
    "scapular_pull_up 2x8; pull_up 5x3 +22.5; external_rotation L 10 +4; external_rotation R 12 +4; external_rotation L 10 +4; external_rotation R 12 +4",
    today=DAY,
)
say(
    "rotations 12/12 12/10",
    "external_rotation LR 12 +4; external_rotation L 12 +4; external_rotation R 10 +4",
    today=DAY,
)
say("done ✅ 55 min", "scapular_pull_up 2x8; pull_up 5x3 +22.5; external_rotation LR 2x12 +4", today=DAY, mins=55)
say(
    "all done. Sets 1-3 rpe 7, 4-5 rpe 8",
    "scapular_pull_up 2x8; pull_up 3x3 +22.5 @7; pull_up 2x3 +22.5 @8; external_rotation LR 2x12 +4",
    today=DAY,
)
say("pull-ups all 5 sets rpe 8, rotations easy", "pull_up 5x3 +22.5 @8; external_rotation LR 2x12 +4", today=DAY)
say(
    "one set less, otherwise all good",
    "scapular_pull_up 2x8; pull_up 4x3 +22.5; external_rotation LR 2x12 +4",
    today=DAY,
)
say("stayed at 20 for all sets", "pull_up 5x3 +20", today=DAY)
say(
    "Done. Only change: 20 instead of 22.5",
    "scapular_pull_up 2x8; pull_up 5x3 +20; external_rotation LR 2x12 +4",
    today=DAY,
)
say("went with 20 today, all 5 sets", "scapular_pull_up 2x8; pull_up 5x3 +20; external_rotation LR 2x12 +4", today=DAY)
say("all done but pull-ups with 20", "scapular_pull_up 2x8; pull_up 5x3 +20; external_rotation LR 2x12 +4", today=DAY)
say(
    "followed the plan but went up to 25 on the last set",
    "scapular_pull_up 2x8; pull_up 4x3 +22.5; pull_up 3 +25; external_rotation LR 2x12 +4",
    today=DAY,
)
say(
    "did the plan, last two sets were doubles",
    "scapular_pull_up 2x8; pull_up 3x3 +22.5; pull_up 2x2 +22.5; external_rotation LR 2x12 +4",
    today=DAY,
)
say(
    "did the plan but last two sets were only 2 reps",
    "scapular_pull_up 2x8; pull_up 3x3 +22.5; pull_up 2x2 +22.5; external_rotation LR 2x12 +4",
    today=DAY,
)
say(
    "pull-ups: 3 3 3 2 2. Rotations: done",
    "pull_up 3x3 +22.5; pull_up 2x2 +22.5; external_rotation LR 2x12 +4",
    today=DAY,
)
say("pull-ups 3-3-3-2-2, rotations ok", "pull_up 3x3 +22.5; pull_up 2x2 +22.5; external_rotation LR 2x12 +4", today=DAY)
say("Warm-up ok. Pull-ups 5x3. Rotations 2x10", "pull_up 5x3 +22.5; external_rotation LR 2x10 +4", today=DAY)
say("warm up done, pullups 5x3@20, rotations skipped", "scapular_pull_up 2x8; pull_up 5x3 +20", today=DAY)
say("skipped the warm-up, everything else done", "pull_up 5x3 +22.5; external_rotation LR 2x12 +4", today=DAY)
say("only the warm up and rotations, bar was taken", "scapular_pull_up 2x8; external_rotation LR 2x12 +4", today=DAY)
say("just did rotations", "external_rotation LR 2x12 +4", today=DAY)
say("nothing but the warm-up", "scapular_pull_up 2x8", today=DAY)
say("did not do the rotations. the rest yes", "scapular_pull_up 2x8; pull_up 5x3 +22.5", today=DAY)
say("all but two sets of pull-ups", "scapular_pull_up 2x8; pull_up 3x3 +22.5; external_rotation LR 2x12 +4", today=DAY)
say("everything minus the last set", "scapular_pull_up 2x8; pull_up 4x3 +22.5; external_rotation LR 2x12 +4", today=DAY)
say(
    "did it minus 1 set of pull-ups", "scapular_pull_up 2x8; pull_up 4x3 +22.5; external_rotation LR 2x12 +4", today=DAY
)
say("5/5 sets ✅", "scapular_pull_up 2x8; pull_up 5x3 +22.5", today=DAY)
say("4/5 sets ✅", "scapular_pull_up 2x8; pull_up 4x3 +22.5", today=DAY)
say("done 4/5", "scapular_pull_up 2x8; pull_up 4x3 +22.5; external_rotation LR 2x12 +4", today=DAY)
say(
    "sets 1-4 fine, set 5 only 2",
    "scapular_pull_up 2x8; pull_up 4x3 +22.5; pull_up 2 +22.5; external_rotation LR 2x12 +4",
    today=DAY,
)
say("sets 1 to 3 at 22.5, 4 and 5 at 20", "pull_up 3x3 +22.5; pull_up 2x3 +20", today=DAY)
say("first set 22.5, rest 20", "pull_up 3 +22.5; pull_up 4x3 +20", today=DAY)
say("started with 22.5 but switched to 20 after two sets", "pull_up 2x3 +22.5; pull_up 3x3 +20", today=DAY)
say("22.5 felt heavy so I did 20", "pull_up 5x3 +20", today=DAY)
say("22.5 was too heavy, took 17.5 for everything", "pull_up 5x3 +17.5", today=DAY)
say(
    "tried 25 on set 1, then back to 22.5. all sets done",
    "scapular_pull_up 2x8; pull_up 3 +25; pull_up 4x3 +22.5; external_rotation LR 2x12 +4",
    today=DAY,
)
say("Pull ups 5x3 done with 22.5 kg, no rotations today, shoulder tired", "pull_up 5x3 +22.5", today=DAY)
say("done, rotations 4.5 kg", "scapular_pull_up 2x8; pull_up 5x3 +22.5; external_rotation LR 2x12 +4.5", today=DAY)
say("done, rotations only with 3", "scapular_pull_up 2x8; pull_up 5x3 +22.5; external_rotation LR 2x12 +3", today=DAY)
say("rotations only right side", "external_rotation R 2x12 +4", today=DAY)
say(
    "rotations: left 12 12, right 12 10",
    "external_rotation L 2x12 +4; external_rotation R 12 +4; external_rotation R 10 +4",
    today=DAY,
)
say("no warm-up today, straight to work sets. All done.", "pull_up 5x3 +22.5; external_rotation LR 2x12 +4", today=DAY)
say(
    "session complete. rpe of last set 8.5. 62 minutes",
    "scapular_pull_up 2x8; pull_up 4x3 +22.5; pull_up 3 +22.5 @8.5; external_rotation LR 2x12 +4",
    today=DAY,
    mins=62,
)
say(
    "finished. felt like rpe 7 overall",
    "scapular_pull_up 2x8; pull_up 5x3 +22.5; external_rotation LR 2x12 +4",
    today=DAY,
    srpe=7,
)
say(
    "done! sets felt like 7, 7, 8, 8, 9",
    "scapular_pull_up 2x8; pull_up 2x3 +22.5 @7; pull_up 2x3 +22.5 @8; pull_up 3 +22.5 @9; external_rotation LR 2x12 +4",
    today=DAY,
)
say(
    "all as planned, rpe 7 7 8 8 9",
    "scapular_pull_up 2x8; pull_up 2x3 +22.5 @7; pull_up 2x3 +22.5 @8; pull_up 3 +22.5 @9; external_rotation LR 2x12 +4",
    today=DAY,
)
say("pull-ups 7/7/8/8/9 rpe", "pull_up 2x3 +22.5 @7; pull_up 2x3 +22.5 @8; pull_up 3 +22.5 @9", today=DAY)
say("done except for the warm-up and the last set", "pull_up 5x3 +22.5; external_rotation LR 2x12 +4", today=DAY)
say("first two sets at 22.5, rest at 20", "pull_up 2x3 +22.5; pull_up 3x3 +20", today=DAY)
say("first set 25, then 22.5", "pull_up 3 +25; pull_up 4x3 +22.5", today=DAY)
say(
    "all reps done except set 5, where I did 2",
    "scapular_pull_up 2x8; pull_up 4x3 +22.5; pull_up 2 +22.5; external_rotation LR 2x12 +4",
    today=DAY,
)
say("archers done, pull-ups 4 sets", "archer_ring_elbow LR 2x2; pull_up 4x3 +25", today=SKILL)
say("archers 2/2 2/2, pull-ups 3 3 3 3 3", "archer_ring_elbow LR 2x2; pull_up 5x3 +25", today=SKILL)
say(
    "archers left 2 2 right 2 1, rest as planned",
    "scapular_pull_up 2x6; archer_ring_elbow L 2x2; archer_ring_elbow R 2; archer_ring_elbow R 1; pull_up 5x3 +25",
    today=SKILL,
)
say("archers only 1 per side on the second set", "archer_ring_elbow LR 2; archer_ring_elbow LR 1", today=SKILL)
say(
    "skipped archers on the right, elbow. Everything else done",
    "scapular_pull_up 2x6; archer_ring_elbow L 2x2; pull_up 5x3 +25",
    today=SKILL,
)
say("archers ✅ pull-ups ✅ 25kg", "archer_ring_elbow LR 2x2; pull_up 5x3 +25", today=SKILL)
say("archers L2 R2, L2 R1", "archer_ring_elbow LR 2; archer_ring_elbow L 2; archer_ring_elbow R 1", today=SKILL)
say(
    "left side was weaker, only got 1 on the last set left. rest fine",
    "scapular_pull_up 2x6; archer_ring_elbow LR 2; archer_ring_elbow L 1; archer_ring_elbow R 2; pull_up 5x3 +25",
    today=SKILL,
)
say("left 2 right 2 both sets", "one_arm_hand_on_biceps LR 2x2", today=ARM)
say("2/2 2/1", "one_arm_hand_on_biceps LR 2; one_arm_hand_on_biceps L 2; one_arm_hand_on_biceps R 1", today=ARM)
say(
    "as planned, except 2nd set right only 1",
    "one_arm_hand_on_biceps LR 2; one_arm_hand_on_biceps L 2; one_arm_hand_on_biceps R 1",
    today=ARM,
)
say("done, both sets. right felt easy", "one_arm_hand_on_biceps LR 2x2", today=ARM)
say("did only the right arm", "one_arm_hand_on_biceps R 2x2", today=ARM)
say(
    "left 2, 2. right 2, 1",
    "one_arm_hand_on_biceps L 2x2; one_arm_hand_on_biceps R 2; one_arm_hand_on_biceps R 1",
    today=ARM,
)
say("one extra set per arm", "one_arm_hand_on_biceps LR 3x2", today=ARM)
say("L ✅ R ❌", "one_arm_hand_on_biceps L 2x2", today=ARM)
say("only one set", "one_arm_hand_on_biceps LR 2", today=ARM)
say("3/3 both sets", "one_arm_hand_on_biceps LR 2x3", today=ARM)
say(
    "got 3 on the right both times, left as planned",
    "one_arm_hand_on_biceps L 2; one_arm_hand_on_biceps R 3; one_arm_hand_on_biceps L 2; one_arm_hand_on_biceps R 3",
    today=ARM,
)
say("3x4 each", "archer_ring_elbow LR 3x4", today=ARCHERS)
say("3x4 left, 3x3 right", "archer_ring_elbow L 3x4; archer_ring_elbow R 3x3", today=ARCHERS)
say(
    "all three rounds, last one 3/4",
    "archer_ring_elbow LR 2x4; archer_ring_elbow L 3; archer_ring_elbow R 4",
    today=ARCHERS,
)
say("left 4 4 3, right 4 4 4", "archer_ring_elbow L 2x4; archer_ring_elbow L 3; archer_ring_elbow R 3x4", today=ARCHERS)
say("4/4, 4/4, 3/4", "archer_ring_elbow LR 2x4; archer_ring_elbow L 3; archer_ring_elbow R 4", today=ARCHERS)
say("4 4 3", "archer_ring_elbow LR 2x4; archer_ring_elbow LR 3", today=ARCHERS)
say(
    "levers 8 8 7 6, pull-ups as planned",
    "advanced_tuck_front_lever 2x8s; advanced_tuck_front_lever 7s; advanced_tuck_front_lever 6s; pull_up 4x6 +15",
    today=LEVER,
)
say(
    "front lever holds only 6 seconds each, pull-ups done",
    "advanced_tuck_front_lever 4x6s; pull_up 4x6 +15",
    today=LEVER,
)
say("holds 10s instead of 8. rest as planned", "advanced_tuck_front_lever 4x10s; pull_up 4x6 +15", today=LEVER)
say(
    "done but last hold only 5s",
    "advanced_tuck_front_lever 3x8s; advanced_tuck_front_lever 5s; pull_up 4x6 +15",
    today=LEVER,
)
say("levers done, no pull-ups", "advanced_tuck_front_lever 4x8s", today=LEVER)
say(
    "hold time dropped to 6 on the last two",
    "advanced_tuck_front_lever 2x8s; advanced_tuck_front_lever 2x6s",
    today=LEVER,
)
say("lever 4x8, pull-ups 4x6 at 15 ✅", "advanced_tuck_front_lever 4x8s; pull_up 4x6 +15", today=LEVER)
say("12 12 11 10 9", "tuck_planche 2x12s; tuck_planche 11s; tuck_planche 10s; tuck_planche 9s", today=PLANCHE)
say("done, last two 10s", "tuck_planche 3x12s; tuck_planche 2x10s", today=PLANCHE)
say("5x12 done", "tuck_planche 5x12s", today=PLANCHE)
say("3 holds then wrists gave up", "tuck_planche 3x12s", today=PLANCHE)
say("top set 3 @ 30, rpe 9. one arm: left 1 right 1", "pull_up 3 +30 @9; one_arm_hand_on_biceps LR 1", today=TEST)
say("top set only 2, failed the third", "pull_up 2 +30 fail", today=TEST)
say("32.5 for 3 instead", "pull_up 3 +32.5", today=TEST)
say("warm-up ok, top set done rpe 9, arms 1/1", "pull_up 5; pull_up 3 +30 @9; one_arm_hand_on_biceps LR 1", today=TEST)
say("deload done", "pull_up 2x3 +17.5", today=DELOAD)
say("deload done, felt light", "pull_up 2x3 +17.5", today=DELOAD)
say(
    "push-ups 15 15 12, leg raises done, chins as planned",
    "chin_up 4x5 +15; push_up 2x15; push_up 12; hanging_leg_raise 3x10",
    today=CHINS,
)
say("chins done, push ups 3x20, no leg raises", "chin_up 4x5 +15; push_up 3x20", today=CHINS)
say("everything but only 2 sets of push-ups", "chin_up 4x5 +15; push_up 2x15; hanging_leg_raise 3x10", today=CHINS)
say("chins 5 5 5 4, rest done", "chin_up 3x5 +15; chin_up 4 +15; push_up 3x15; hanging_leg_raise 3x10", today=CHINS)
say("dips only with 10, pull-ups fine", "pull_up 4x4 +20; dip 3x6 +10", today=DIPS)
say("both as planned", "pull_up 4x4 +20; dip 3x6 +15", today=DIPS)
say("both done, dips 7 reps each", "pull_up 4x4 +20; dip 3x7 +15", today=DIPS)
say("4x4 3x6 done", "pull_up 4x4 +20; dip 3x6 +15", today=DIPS)
say("dips 6/6/5", "dip 2x6 +15; dip 5 +15", today=DIPS)
say("pull-ups done. Dips: first two sets 6, last 4", "pull_up 4x4 +20; dip 2x6 +15; dip 4 +15", today=DIPS)
say("done but swapped dips for push ups, 3x15", "pull_up 4x4 +20; push_up 3x15", today=DIPS)
say("4x4, 3x6", "pull_up 4x4 +20; dip 3x6 +15", today=DIPS)
say("pull-ups only 3 on the last set", "pull_up 3x4 +20; pull_up 3 +20", today=DIPS)
