"""Parts of the way, marks denied, sets done several times, help and efforts by set."""

from __future__ import annotations

from tests.corpus.lines import Theme

THEME = Theme("parts", "en")
say = THEME.say

say("one-arm pull-ups: 2x1 lower half, 1x1 full", "one_arm_pull_up 2x1 lower; one_arm_pull_up 1")
say("archer pull-ups lower half 2x2, then full range 1x1", "archer_pull_up 2x2 lower; archer_pull_up 1")
say("one-arm pull-ups: 2x1 lower half right, 1x1 full left", "one_arm_pull_up 2x1 R lower; one_arm_pull_up 1 L")
say("2x2 lower half and then 3x1 the whole way, archer pull-ups", "archer_pull_up 2x2 lower; archer_pull_up 3x1")
say("one-arm chin-ups 3 negatives, 1 full rep", "one_arm_chin_up 3 ecc; one_arm_chin_up 1")
say("one-arm pull-ups 3x1 negatives, 2x1", "one_arm_pull_up 3x1 ecc; one_arm_pull_up 2x1")
say("OAC negatives 3x2, then 2 singles full", "one_arm_chin_up 3x2 ecc; one_arm_chin_up 2x1")
say("archer pull-ups: 3x2 each, full range, no negatives", "archer_pull_up 3x2 LR")
say("pull-ups 5x3 +20, no pause at the top", "pull_up 5x3 +20")
say("one-arm chin-up 3x1, negatives left out", "one_arm_chin_up 3x1")
say("one-arm chin-up 3x1, negatives next time", "one_arm_chin_up 3x1")
say("pull-ups 4x3 with 1s hold at the top, last set no hold", "pull_up 3x3 top; pull_up 3")
say("pull-ups 5x3, pause at the top except the last", "pull_up 4x3 top; pull_up 3")
say("pull-ups 3, 3, 3, 2(f) at 20", "pull_up 3x3 +20; pull_up 2 +20 fail")
say("archer pull-ups 4 x 8 / 8", "archer_pull_up 4x8 LR")
say("dips 2 sets: 12 (RPE 7), 12 (RPE 8)", "dip 12 @7; dip 12 @8")
say("pull-ups 5x3 +20, dips 3x8 +10, all rpe 8", "pull_up 5x3 +20 @8; dip 3x8 +10 @8")
say("pull-ups 5x3 +20 and dips 3x8 +10, both rpe 8", "pull_up 5x3 +20 last@8; dip 3x8 +10 last@8")
say("dips 4x8, after each set 10 push-ups", "dip 4x8; push_up 4x10")
say("she did 3x5, I did 3x8 pull-ups", "pull_up 3x8")
say("pull-ups 5x5 with 20, then added ten kilos and did five more", "pull_up 5x5 +20; pull_up 5 +30")
say(
    "one-arm with pulley 3x2 per arm, 12 kg off first set, 10 off the other two",
    "one_arm_counterweight 2 LR -12; one_arm_counterweight 2x2 LR -10",
)
say("pull-ups 3x2, 12 kg first set, 10 the other two", "pull_up 2 +12; pull_up 2x2 +10")
say("band pull-ups 3x8, 15 kg off the first two, 20 off the last", "band_pull_up 2x8 -15; band_pull_up 8 -20")
say("ladder 1,2,3,4,5 x3 chins", "; ".join(["chin_up 1,2,3,4,5"] * 3))
say("pull-ups (5,4,3) x2", "pull_up 5,4,3,5,4,3")
say("advanced tuck front lever 8s, 7s, 6s; then 3 rows of 5", "advanced_tuck_front_lever 8s,7s,6s; row 3x5")
say("pull-ups dropset: 30x3, 20x4, 10x5, bw 8", "pull_up 3 +30; pull_up 4 +20 link; pull_up 5 +10 link; pull_up 8 link")
say("1RM test: 40 ok, 45 ok, 47.5 miss", "_ 1 +40; _ 1 +45; _ 0 +47.5 fail", ask="movement: 40 ok, 45 ok, 47.5")
say("no real pain, maybe 1", pain="- - 1")
say("no pain really, maybe 1/10", pain="- - 1")
say("no pain, energy 6/10", pain="- - 0")
say(
    "move Friday to Saturday, sorry, Sunday",
    does="move",
    at="2027-03-04 18:00",
    tz="Europe/London",
    dates="2027-03-05..2027-03-07",
)
