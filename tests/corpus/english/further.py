"""Notations, tries, rounds and the numbers of everyday life beside them."""

from tests.corpus.lines import Theme

THEME = Theme("further", "en")
say = THEME.say

# A list tells the sets of a scheme one by one, or contradicts it.
say("5x5 pull ups: 5,5,5,4,3", "pull_up 5,5,5,4,3")
say("pull ups 5x5 +10 (5 5 5 5 4)", "pull_up 5,5,5,5,4 +10")
say("5x3 dips +20: 3, 3, 2", "dip 5x3 +20", ask="sets: 3, 3, 2", sets_or=("dip 3,3,2 +20", ""))
say("60 push-ups: 20, 20, 12, 8", "push_up 20,20,12,8")
say("chins: 20 reps in total, as 6, 5, 5, 4, with 10 kg", "chin_up 6,5,5,4 +10")
say("+40: 2,2,2 chins. +30: 4,4", "chin_up 2,2,2 +40; chin_up 4,4 +30")
# Reps by sign, load by sign.
say("chinups x10 x8 x7", "chin_up 10,8,7")
say("30 squats x3", "squat 3x30")
say("pull ups x 8, x 7, x 6", "pull_up 8,7,6")
say(
    "neutral grip 5x4 +17.5kg rpe 8/8/8.5/9/9",
    "neutral_grip_pull_up 2x4 +17.5 @8; neutral_grip_pull_up 4 +17.5 @8.5; neutral_grip_pull_up 2x4 +17.5 @9",
)
say("chins 5x2+37.5 RPE 7 7 7.5 8 8", "chin_up 2x2 +37.5 @7; chin_up 2 +37.5 @7.5; chin_up 2x2 +37.5 @8")
say("DB rows 55s 3x10 e/s", "row 3x10 LR +55lb", unit="lb")
say("STILL got 4x5 pull ups with the 10 plate!!", "pull_up 4x5 +10")
# Rounds.
say("EMOM10: 3 chins +10", "chin_up 10x3 +10")
say("EMOM x 8 - 2 pull ups +20", "pull_up 8x2 +20")
say("three ladders 1-2-3 of chins with 10kg", "chin_up 1,2,3 +10; chin_up 1,2,3 +10; chin_up 1,2,3 +10")
say("Superset x3: 5 pull-ups +10 / 10 push-ups", "pull_up 3x5 +10; push_up 3x10")
say(
    "one arm hanging: left 20 seconds, right 25 seconds, two times",
    "one_arm_hang 20s L; one_arm_hang 25s R; one_arm_hang 20s L; one_arm_hang 25s R",
)
say("archer with low ring 2 each side x2", "archer_ring_elbow 2x2 LR")
# Sets told by their place, and line by line.
say("1st set 5, 2nd set 4, 3rd set 4 chins +10", "chin_up 5,4,4 +10")
say("first two sets 5, third 4, last 3, pull ups +20", "pull_up 5,5,4,3 +20")
say("1) pull ups 5x3 +20 2) dips 3x8", "pull_up 5x3 +20; dip 3x8")
say("two sets of six and three of four pull ups", "pull_up 2x6; pull_up 3x4")
# Tries.
say("hit 42.5 for a single on pull ups, missed 45 twice", "pull_up 1 +42.5; pull_up 2x0 +45 fail")
say("pull ups: one at 40, one at 42.5, failed at 45", "pull_up 1 +40; pull_up 1 +42.5; pull_up 0 +45 fail")
say("pull-ups bw x 8, +10 x 5, +25 x 1 (fail)", "pull_up 8; pull_up 5 +10; pull_up 0 +25 fail")
say("tried my first muscle up today!! 0/6 attempts lol", "muscle_up 6x0 fail", sets_or=("muscle_up 0 fail",))
say("muscle ups 5x1, then 2 missed", "muscle_up 5x1; muscle_up 2x0 fail")
# Mends.
say("pull ups 5x3 +20 - sorry, 22.5, mixed up the plates", "pull_up 5x3 +22.5")
say(
    "left 3, right 3 - no, right was 2. One arm pull ups, hand on the biceps",
    "one_arm_hand_on_biceps 3 L; one_arm_hand_on_biceps 2 R",
)
say("chins 4x5, no hang on, the last one was 4. +10", "chin_up 5,5,5,4 +10")
# Loads in turn.
say("chins 3x5, first with 10, then 15, then 20", "chin_up 5 +10; chin_up 5 +15; chin_up 5 +20")
say("rest pause dips +20: 8 / 3 / 2, 15 sec each", "dip 8 +20; dip 3 +20 link; dip 2 +20 link")
# Written together, by slips.
say("ringdips 3X5.chinups 3X5", "ring_dip 3x5; chin_up 3x5")
say("weighed pull ups 5x3 +2O", "pull_up 5x3 +20")
say("arcer pull-ups 2 left 2 right", "archer_pull_up 2 L; archer_pull_up 2 R")
# Numbers of everyday life.
say("planche lean 3x5 secs, 2 witnesses", "planche_lean 3x5s")
say("pull-ups 4x3 at lunch, 2 coffees", "pull_up 4x3")
say("Kid (4) wanted a ride on my back for the push-ups. Vetoed. 3x10 without her.", "push_up 3x10")
say("planned 4x4 +25 pull-ups, did 3x4 +25 because the bus leaves at 9", "pull_up 3x4 +25")
say("One-arm hangs, 10 s per hand, two rounds. Age 67, for the record.", "one_arm_hang 2x10s LR")
say("soooo my flatmate did 12 pull ups first try and i did 9 like a loser", "pull_up 9")
say("Back in '94 I could do three one-armers. Today: 3x3 pull-ups +10.", "pull_up 3x3 +10")
say("oh sure, 5x5 at +50 was 'easy' said nobody. pull ups 5x2 +30", "pull_up 5x2 +30")
say("trained at the hut, 2,300 m up: pull-ups 12, 10, 8", "pull_up 12,10,8")
say("ring rows 4 sets of 12, and then my phone died at 2%", "ring_row 4x12")
# Further sets, and sets told one by one after their number.
say("2 sets of pull ups, 8 and 7", "pull_up 8,7")
say("pull-ups +10, 2 sets of 6, then dips", "pull_up 2x6 +10")
say("dips, two sets, 9 then 8", "dip 9,8")
say("2 extra sets of chins, 4 and 3", "chin_up 4,3")
say("did 3 extra sets of 5 push ups", "push_up 3x5")
say("pull ups 5x3 +15, then one more set of 2", "pull_up 5x3 +15; pull_up 2 +15")
say("chins 4x4 +10 and another set of 3 with 15", "chin_up 4x4 +10; chin_up 3 +15")
say("pull ups 4x4 +20, one more with 10 kg x 8", "pull_up 4x4 +20; pull_up 8 +10")
say("all done, plus an extra set of 2 at +20", "pull_up 4x3 +15; pull_up 2 +20", today="m pull_up 4x3 +15 @8")
say("one more set of pull ups, 2 reps", "pull_up 4x3 +15; pull_up 2 +15", today="m pull_up 4x3 +15 @8")
say("did one more set of 3", "_ 3", ask="movement: 3")
