"""Plain speech: sets as people tell them, with loads for reps, misses, more of the same, and days against the plan."""

from tests.corpus.lines import Theme

THEME = Theme("plain", "en")
say = THEME.say

PLAN = "w scapular_pull_up 5; s archer_ring_elbow 2x2 LR @7; m pull_up 4x4 +20 @7; a dip 3x8 +10"
WARM = "scapular_pull_up 5; "
SKILL = "archer_ring_elbow 2x2 LR; "
MAIN = "pull_up 4x4 +20; "
DIPS = "dip 3x8 +10"

# Told in passing.
say(
    "Did my pull ups. Four sets of four with twenty kilos. Last one was a grinder, maybe a 9.", "pull_up 4x4 +20 last@9"
)
say(
    "warmed up with 2x5 scaps, then 5x3 weighted pull ups, 22.5 on the belt. finished with 3x8 dips bodyweight",
    "scapular_pull_up 2x5; pull_up 5x3 +22.5; dip 3x8",
)
say("Managed 3 sets out of 4, 4 reps each with 20 on pull ups", "pull_up 3x4 +20")
say("3 sets of 4, 4 reps each, pull ups", "pull_up 3x4")
say("chin ups +10: first two sets 5, last two 4", "chin_up 5,5,4,4 +10")
say("first two sets 5, then 4 and 4. Chin-ups +10", "chin_up 5,5,4,4 +10")
say("Singles: 5 at 40kg pull-ups, all clean, rpe 8", "pull_up 5x1 +40 last@8")
say("doubles: 4 with 35, pull ups", "pull_up 4x2 +35")
say("Wanted to do 5x5 but my grip gave out so 5,5,4 pull ups at +15", "pull_up 5,5,4 +15")
say("pull-ups in a ladder 1,2,3,4,5 then back down to 1", "pull_up 1,2,3,4,5,4,3,2,1")
say("pull ups 5, 5, 5 and 4, 4", "pull_up 5,5,5,4,4")
say("4 4 4 4 pull ups and 8 8 8 dips", "pull_up 4,4,4,4; dip 8,8,8")
say("did the same as Monday plus 2.5 kg", does="report", ask="sets: the same as")
say("+20: 4,4,4,4 / dips +10: 8,8,7", "_ 4,4,4,4 +20; dip 8,8,7 +10", ask="movement: 4,4,4,4")

# Loads told for reps.
say("pull ups 20 for 5, 22.5 for 3", "pull_up 5 +20; pull_up 3 +22.5")
say("pull-ups: 25 for a triple, then 20 for 2 sets of 4", "pull_up 3 +25; pull_up 2x4 +20")
say("dips 20 kg for 8, 25 kg for 5", "dip 8 +20; dip 5 +25")
say("worked up to 35 for 2 on pull ups", "pull_up 2 +35")
say("squats 100 for 5, 110 for 3, 120 for 1", "squat 5 +100; squat 3 +110; squat 1 +120")
say("pull ups 20 kg 4x, then 22.5 3x, then 25 2x", "pull_up 4 +20; pull_up 3 +22.5; pull_up 2 +25")
say("pull ups 20/4 20/4 22.5/3", "pull_up 4 +20; pull_up 4 +20; pull_up 3 +22.5")
say("pull ups 4x4 with 22.5, not 20", "pull_up 4x4 +22.5")
say("pull ups 4x4 with 22.5 and not the 20 on the sheet", "pull_up 4x4 +22.5")
say("face pulls 3x20, that's the red tube, not the 15 kg stack", "face_pull 3x20")
say("with the 10 kg vest: push ups 3x15, squats 3x20. Then chins 3x5", "push_up 3x15 +10; squat 3x20 +10; chin_up 3x5")

# Misses.
say("tried the 45 kg single on pull-ups, missed it, then hit 42.5", "pull_up 0 +45 fail; pull_up 1 +42.5")
say("pull ups: missed a single at 50, 3x3 at 40", "pull_up 0 +50 fail; pull_up 3x3 +40")
say("single at 45 failed, then 3x3 with 35, pull ups", "pull_up 0 +45 fail; pull_up 3x3 +35")
say("Failed the 7th ring dip, so 6. Then 2x5", "ring_dip 6 fail; ring_dip 2x5")
say("muscle ups: 3, 2, 2 and one fail", "muscle_up 3,2,2; muscle_up 0 fail")
say(
    "chins 4x3 +30 but on the third set the last rep didn't make it over the bar",
    "chin_up 3,3 +30; chin_up 2 +30 fail; chin_up 3 +30",
)
say(
    "missed the double at 40 on pull ups, then 3x3 at 35", "pull_up ? +40 fail; pull_up 3x3 +35", ask="reps: the double"
)

# Efforts in a row.
say("pull-ups 4x5 +10kg, RIR 3 2 2 1", "pull_up 5 +10 @7; pull_up 5 +10 @8; pull_up 5 +10 @8; pull_up 5 +10 @9")
say("pull-ups 3x5 +10, RIR 2/2/1", "pull_up 5 +10 @8; pull_up 5 +10 @8; pull_up 5 +10 @9")
say("two left in the tank on every set, dips 4x6 +22.5", "dip 4x6 +22.5 @8")
say("Pull ups 3x4 +20, second set rpe 9 because the dog walked by", "pull_up 4 +20; pull_up 4 +20 @9; pull_up 4 +20")

# Sides.
say("one one-arm pull up per side!!! first ever", "one_arm_pull_up 1 LR")
say("1 one arm pull up left, 2 right", "one_arm_pull_up 1 L; one_arm_pull_up 2 R")
say("one clean one arm pull-up on the left, zero on the right", "one_arm_pull_up 1 L; one_arm_pull_up 0 R fail")
say("one arm pull up. Left: nope, stuck. Right: one clean rep!!!", "one_arm_pull_up 0 L fail; one_arm_pull_up 1 R")
say("one arm chins left 2 then 1, right 3 then 2", "one_arm_chin_up 2,1 L; one_arm_chin_up 3,2 R")
say("half a minute dead hang, three times", "dead_hang 3x30s")
say("3 one arm hangs left 10s", "one_arm_hang 3x10s L")

# Against the plan.
say("all good today, last set of pull ups only 3", WARM + SKILL + "pull_up 4,4,4,3 +20; " + DIPS, today=PLAN)
say("pull ups 5 5 5 5 instead of 4", "pull_up 5,5,5,5 +20", today=PLAN)
say("done but swapped dips for push ups 3x12", WARM + SKILL + MAIN + "push_up 3x12", today=PLAN)
say("did the main work. accessories tomorrow", MAIN, today=PLAN)
say("done, will do dips later", WARM + SKILL + MAIN, today=PLAN)
say("did 3 sets out of 4", WARM + "pull_up 3x4 +20", today=PLAN)
say("done and 2 extra sets", WARM + SKILL + "pull_up 6x4 +20; " + DIPS, today=PLAN)
say("from the third set on 15, rest as planned", WARM + SKILL + "pull_up 4,4 +20; pull_up 4,4 +15; " + DIPS, today=PLAN)
say("went down to 15 after the second set", "pull_up 4,4 +20; pull_up 4,4 +15", today="m pull_up 4x4 +20 @7")
say("did half the dips", does="report", today=PLAN, ask="sets: half the")
say("4 4 4 4 and 8 8 8", does="report", today=PLAN, ask="movement: 4 4 4 4 and 8 8 8")
say("first set 2, then 3 3 3", "pull_up 2,3,3,3 +20", today="m pull_up 4x3 +20 @7")
say("same as written but bodyweight only", "pull_up 4x4; dip 3x8", today="m pull_up 4x4 +20 @7; a dip 3x8 +10")
say("only the first two sets, hall closes at 9", "pull_up 4,4 +20", today="m pull_up 4x4 +20 @7")

# Other people, other days.
say("Dad (61!) did 8 chins. I did 3x9 and he still thinks he won", "chin_up 3x9")
say(
    "goal for summer: 3 one arm chins per side. today: 1 left, 0 right (missed)",
    "one_arm_chin_up 1 L; one_arm_chin_up 0 R fail",
)
say("The old one was 12 seconds of tuck planche. Today 17s, then 14s and 13s.", "tuck_planche 17s,14s,13s")
say("planned on ten sets, did six: 6x2 pull ups +25", "pull_up 6x2 +25")

# Circuits, further words for loads, schemes told twice.
say("10 min amrap: 5 pull ups 10 push ups, got 6 rounds", "pull_up 6x5; push_up 6x10")
say("3 sets: 5 pull ups, 8 dips", "pull_up 3x5; dip 3x8")
say("pull ups 4 x 4, added 20kg, rested 3min", "pull_up 4x4 +20")
say("weighted pullups 5x5 (two 5kg plates)", "pull_up 5x5 +10")
say("pull ups with 20 kg. Set 1: 4. Set 2: 4. Set 3: 3.", "pull_up 4,4,3 +20")
say("did 4 sets, three pull ups each with 20", "pull_up 4x3 +20")
say("pull ups 4x4 +17.5, the first rpe 7 and the others rpe 8", "pull_up 4 +17.5 @7; pull_up 3x4 +17.5 @8")
say("ring dips 8, 7, and on the third I failed the 7th", "ring_dip 8,7; ring_dip 6 fail")
say("pull ups 3x8 or 4x8, can't remember, with 5", does="report", ask="sets: 3x8 or 4x8")
say("pull ups 3 sets of 8, dips the same", "pull_up 3x8", ask="sets: dips the same")
say(
    "same but one rep less on the last two",
    "pull_up 4,4,3,3 +20; dip 3x8 +10",
    today="m pull_up 4x4 +20 @7; a dip 3x8 +10",
)
