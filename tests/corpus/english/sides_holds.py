"""One-sided work, holds, half ranges, lowering, pauses, missed reps, bands and counterweights."""
# ruff: noqa: E501

from tests.corpus.lines import Theme
from tests.corpus.notation import sets

THEME = Theme("sides", "en")
say = THEME.say

say("one arm pull ups L 2 R 1", "one_arm_pull_up L 2; one_arm_pull_up R 1")
say("OAP 3 left 2 right!!", "one_arm_pull_up L 3; one_arm_pull_up R 2")
say("oap: 1 each side", "one_arm_pull_up LR 1")
say("one-arm chin ups 2x1 e/s", "one_arm_chin_up LR 2x1")
say("archers at elbow height on the ring, 3x2 per arm", "archer_ring_elbow LR 3x2")
say("ring archers, straight arm ring at shoulder height, 2x3 each arm", "archer_ring_shoulder LR 2x3")
say("archer pull-ups 4/4, 4/4, 3/3", "archer_pull_up LR 4; archer_pull_up LR 4; archer_pull_up LR 3")
say("archer pull ups 5/4", "archer_pull_up LR 5/4")
say("archer pull-ups 5/4/4", "archer_pull_up 5,4,4", why="three numbers are three sets, side null")
say("hand on biceps one arm pulls: 2/2 then 2/1", "one_arm_hand_on_biceps LR 2/2; one_arm_hand_on_biceps LR 2/1")
say("one arm with the other hand on the shoulder, 3 singles per side", "one_arm_hand_on_shoulder LR 3x1")
say("pulley one-armers 5kg counterweight, 2 sets of 2 per arm", "one_arm_counterweight LR 2x2 -5")
say(
    "counterweight 7.5: right 2, left 2, right 1, left 2",
    "one_arm_counterweight R 2 -7.5; one_arm_counterweight L 2 -7.5; one_arm_counterweight R 1 -7.5; one_arm_counterweight L 2 -7.5",
)
say(
    "one arm pulley pull ups with 12.5 kg assistance: L 3 3 2, R 3 3 3",
    "one_arm_counterweight L 3,3,2 -12.5; one_arm_counterweight R 3,3,3 -12.5",
)
say("one arm hangs 20s left, 25s right", "one_arm_hang L 20s; one_arm_hang R 25s")
say("one-arm dead hangs 3 x 15 sec per side", "one_arm_hang LR 3x15s")
say("pistols 3x6 per leg", "pistol_squat LR 3x6")
say("split squats with 20kg, 10/10 twice", "split_squat LR 2x10 +20", why="10/10 is left and right, twice")
say("left arm only today: archer pull ups 3x3 left", "archer_pull_up L 3x3")
say("OAC right arm 1, left arm missed", "one_arm_chin_up R 1; one_arm_chin_up L 0 fail")
say("archers on rings elbow height, 2x2 per side, rpe 8", "archer_ring_elbow LR 2x2 last@8")
say("one arm pull up hand on biceps 2x1 each, all @7", "one_arm_hand_on_biceps LR 2x1 @7")
say(
    "OAP singles: L @8, R @9",
    "one_arm_pull_up L 1 @8; one_arm_pull_up R 1 @9",
    ask_or="rpe: @8",
    also=({"sets": [], "ask": [{"about": "rpe", "span": "@8"}]},),
    why="bodyweight is the only load of a free one-arm pull-up, so @ is effort",
)
say("single arm DB row 3x12/12 26kg", "row LR 3x12 +26")
say("one arm chin: right went up twice, left once", "one_arm_chin_up R 2; one_arm_chin_up L 1")
say(
    "Archer pull ups, 4 reps each arm, 3 sets, second set right only 3",
    "archer_pull_up LR 4; archer_pull_up LR 4/3; archer_pull_up LR 4",
)
say("one leg front lever 3x8s per leg", "one_leg_front_lever LR 3x8s")
# Weaker arm named
say(
    "weaker arm (left) first: one arm pulley 2 reps, right 2 as well, -10kg",
    "one_arm_counterweight L 2 -10; one_arm_counterweight R 2 -10",
)
say(
    "one arm chins: good arm 2, bad arm 1",
    "one_arm_chin_up 2,1",
    ask="side: good arm 2, bad arm 1",
    why="which arm is the good one is not said",
)
say("oap 2 with my strong side (right), 1 with the other", "one_arm_pull_up R 2; one_arm_pull_up L 1")
# Holds
say("dead hang 70 sec", "dead_hang 70s")
say("dead hang: 1 min, 50s, 45s", "dead_hang 60s,50s,45s")
say("hung on the bar for 1:30", "dead_hang 90s")
say("dead hang 2x1min", "dead_hang 2x60s")
say("tuck FL 5x10s", "tuck_front_lever 5x10s")
say("adv. tuck front lever 12s 10s 9s", "advanced_tuck_front_lever 12s,10s,9s")
say("straddle planche 3 seconds, twice", "straddle_planche 2x3s")
say("full front lever hold: 4 sec hold, 3 sec hold, 3 sec hold", "full_front_lever 4s,3s,3s")
say("back lever 3 x 10 seconds", "back_lever 3x10s")
say("L-sit 4x12s @8", "l_sit 4x12s last@8", why="a hold counts as a load, so @8 is effort")
say("handstand 30s free standing!!", "handstand_hold 30s")
say("hollow body hold 3x45 secs", "hollow_hold 3x45s")
say("chin over bar hold 20s + 15s", "pull_up_top_hold 20s,15s")
say("top hold with +10kg: 3x12s", "pull_up_top_hold 3x12s +10")
say("planche lean 30s,30s,25s every one rpe 7", "planche_lean 30s,30s,25s @7")
say("tuck planche 8-8-7 secs", "tuck_planche 8s,8s,7s")
say("wall handstand for a minute and ten", "handstand_hold 70s")
say("fl tuck 4x12 sec, fl adv tuck 3x6 sec", "tuck_front_lever 4x12s; advanced_tuck_front_lever 3x6s")
# Half ranges
say("top half pull-ups 3x5 +25", "pull_up 3x5 +25 upper")
say("lower half archers elbow-height ring 2x3 each", "archer_ring_elbow LR 2x3 lower")
say(
    "pull-ups from the dead hang to 90 degrees only, 4x4 +30",
    "pull_up 4x4 +30 lower",
    ask_or="rom: to 90 degrees only",
    why="from the hang to a right angle is the lower half",
)
say("partial chin ups 3x4 +20, upper half", "chin_up 3x4 +20 upper")
say("hand on biceps, bottom half only, 2x2 per arm", "one_arm_hand_on_biceps LR 2x2 lower")
say("partials on the chins today, 3x5 +15", "chin_up 3x5 +15 rom?", ask="rom: partials", why="which half is not said")
# Lowering
say("pull-up negatives 3x3, 5s down", "pull_up 3x3 ecc", maybe_unread=("5s down",))
say("eccentric chin ups 4x2 +30", "chin_up 4x2 +30 ecc")
say("muscle up negatives 3x2 slow", "muscle_up 3x2 ecc")
say(
    "one arm pull up lowering only, 2 per side",
    "one_arm_pull_up LR 2 ecc",
    also=({"sets": sets("one_arm_pull_up LR 2x1 ecc")},),
    why="'2 per side' could be two singles as well",
)
say("jumped up and lowered slowly, pull ups 4x3", "pull_up 4x3 ecc")
# Pauses
say("pull-ups 5x2 +10 with a 2s pause at the top", "pull_up 5x2 +10 top", maybe_unread=("2s pause",))
say("paused dips 4x4, pause at the bottom", "dip 4x4 bottom")
say("chin-ups 3x3, hold at the top and in the middle", "chin_up 3x3 top middle")
say("pull ups 3x3 +20 full stop at the bottom each rep", "pull_up 3x3 +20 bottom")
say("pull-ups 4x2 +15 stop halfway up", "pull_up 4x2 +15 middle")
# Missed reps
say("pull-ups +50: 1, 1, then failed the third", "pull_up 2x1 +50; pull_up 0 +50 fail")
say("tried 45 on pull ups, missed it. Got 42.5 after", "pull_up 0 +45 fail; pull_up 1 +42.5")
say("muscle up attempts: no, no, yes", "muscle_up 0,0 fail; muscle_up 1")
say("one arm chin right: fail. left: fail. Next year", "one_arm_chin_up R 0 fail; one_arm_chin_up L 0 fail")
say("chin-ups +40 2 reps and missed the 3rd", "chin_up 2 +40 fail")
say("Pull-ups 3,3,2 +27.5, the last set failed on the third rep", "pull_up 3,3 +27.5; pull_up 2 +27.5 fail")
say("4 good singles at +47.5 pull-up and one no-rep at 50", "pull_up 4x1 +47.5; pull_up 0 +50 fail")
# Bands and stacks
say("band pull-ups 4x6 red band", "band_pull_up 4x6")
say("assisted pull ups with a band worth 20kg, 3x8", "band_pull_up 3x8 -20")
say("pull-ups with green band 5,5,5", "band_pull_up 5,5,5")
say("banded pullups (takes off 10 kg) 5x4", "band_pull_up 5x4 -10")
say("lat pulldown 70kg stack 3x6", "lat_pulldown 3x6 +70")
say("pulldowns 12 reps at 45, 10 at 50, 8 at 55", "lat_pulldown 12 +45; lat_pulldown 10 +50; lat_pulldown 8 +55")
