"""Loads that change from set to set: ramps, back-offs, loads behind their sets, tries of a maximum, misses."""

from tests.corpus.lines import Theme

THEME = Theme("loads_told", "en")
say = THEME.say
RAMP = "pull_up 3 +15; pull_up 3 +17.5; pull_up 3 +20; pull_up 3 +22.5; pull_up 3 +25"

# By their step
say("pull ups 5x3, added 2.5 each set starting at 15", RAMP)
say("pull ups 5x3 at 15, adding 2.5 every set", RAMP)
say("pull ups: started at 15, 5 sets of 3, 2.5kg jumps", RAMP)
say(
    "4 sets of pull ups going up 5kg each time from 10, 5 reps each",
    "pull_up 5 +10; pull_up 5 +15; pull_up 5 +20; pull_up 5 +25",
)
say("dips 3x6, dropped 5 each set from 30", "dip 6 +30; dip 6 +25; dip 6 +20")
say("dips 4x5 at 10kg, 2.5kg more each set", "dip 5 +10; dip 5 +12.5; dip 5 +15; dip 5 +17.5")
say("pull ups 5x3 going up 2.5 per set", "pull_up 5x3 +?", ask="load_kg: going up 2.5 per set")
say("pull ups 5x3 +20 each set", "pull_up 5x3 +20")
# One a set, behind the sets
say("pull ups 5x3 @ 20, 22.5, 22.5, 25, 25", "pull_up 3 +20; pull_up 2x3 +22.5; pull_up 2x3 +25")
say("pull ups 5x3 @ 20, 20, 22, 24, 24", "pull_up 2x3 +20; pull_up 3 +22; pull_up 2x3 +24")
say("dips 3x5 at 20, 25, 30", "dip 5 +20; dip 5 +25; dip 5 +30")
say("pull ups 4x4 with 20kg, 22.5 and 25kg", "pull_up 4x4 +?", ask="load_kg: 20kg, 22.5 and 25kg")
say(
    "dips 5 and 3 to warm up, then 3x3 with 20, 22.5 and 25",
    "dip 5,3; dip 3 +20; dip 3 +22.5; dip 3 +25",
)
# Before the sets that they are of
say(
    "pullups 5 sets: 3 3 3 2 2. weight 25 for the first three, 20 for the last two",
    "pull_up 3x3 +25; pull_up 2x2 +20",
)
say(
    "3 sets of 5 pull ups. 15 first set, 17.5 second, 20 third",
    "pull_up 5 +15; pull_up 5 +17.5; pull_up 5 +20",
)
say("pull ups 4x5, 15 on the first, 20 on the rest", "pull_up 5 +15; pull_up 3x5 +20")
say("chins 3x5, 20 the first two sets, 22.5 the last", "chin_up 2x5 +20; chin_up 5 +22.5")
say("pull ups 5x3 with 20, 22.5 on the last two", "pull_up 3x3 +20; pull_up 2x3 +22.5")
# Changed for what follows
say("chin-ups: worked up to 30kg x 2, then dropped back to 20 and did 3x5", "chin_up 2 +30; chin_up 3x5 +20")
say("pull ups 5x3 at 20, last set dropped to 17.5", "pull_up 4x3 +20; pull_up 3 +17.5")
say(
    "I did three sets of pull-ups with twenty kilos, five, five and then four, and then I dropped it to fifteen and "
    "got another six",
    "pull_up 5,5,4 +20; pull_up 6 +15",
)
say("dips 3x8 at 15 then dropped down to 10 for 2x10", "dip 3x8 +15; dip 2x10 +10")
say("chins 3x5 at 25 then back down to 20, 2x6", "chin_up 3x5 +25; chin_up 2x6 +20")
say("pull ups 3x5 at 25 then dropped to 20 for two more sets", "pull_up 3x5 +25; pull_up 2x5 +20")
say("pull ups 5x5 at 20, dropped to 3 on the last set", "pull_up 4x5 +20; pull_up 3 +20")
say("pull ups 4x4 at 20 then bumped it up to 22.5 for the last one", "pull_up 3x4 +20; pull_up 4 +22.5")
say("pull ups 3x5 (20kg), then same with 15kg", "pull_up 3x5 +20; pull_up 3x5 +15")
say("pull ups 4x4 with 20kg, then again with 22.5kg", "pull_up 4x4 +20; pull_up 4x4 +22.5")
say("pull ups 3x5 at 20, felt good so added a fourth set at 22.5", "pull_up 3x5 +20; pull_up 5 +22.5")
say("pull ups 4x6 but the belt was only 10 not 15", "pull_up 4x6 +10")
# Reps, load and sets in other orders
say(
    "pull-ups: 5 reps @ 20 x 3 sets, then 1 set of 3 @ 25, and 1 set of 8 without weight",
    "pull_up 3x5 +20; pull_up 3 +25; pull_up 8",
)
say("chins 3 @ 25 x 4", "", "report", ask="sets: 3 @ 25 x 4")
say(
    "pull ups 20kg 5 reps, 22.5 5 reps, 25 4 reps, 27.5 failed",
    "pull_up 5 +20; pull_up 5 +22.5; pull_up 4 +25; pull_up 0 +27.5 fail",
)
say("warmed up with 5 bw and 3 at 10, then 5x3 at 22.5 pull ups", "pull_up 5; pull_up 3 +10; pull_up 5x3 +22.5")
say("pull-ups 5x3 with one 20 and one 5", "pull_up 5x3 +?", ask="load_kg: one 20 and one 5")
say(
    "did 5 singles at 40, 3 min rest, then 3 doubles at 35. all clean except single 4 which was a grind",
    "_ 5x1 +40; _ 3x2 +35",
    ask="movement: 5 singles at 40",
)
# Misses
say("two sets of five pull-ups, third set failed at four", "pull_up 2x5; pull_up 4 fail")
say("pull ups 5x5 @15, failed at 4 on the last", "pull_up 4x5 +15; pull_up 4 +15 fail")
say("pullups 6x2 with 30 but only got 1 on the last two", "pull_up 4x2 +30; pull_up 2x1 +30")
say("pull ups 5 singles at 40, single 4 failed", "pull_up 3x1 +40; pull_up 0 +40 fail; pull_up 1 +40")
say(
    "one arm chin singles 5 each side, last two on the left failed",
    "one_arm_chin_up LR 3x1; one_arm_chin_up L 0 fail; one_arm_chin_up R 1; one_arm_chin_up L 0 fail; "
    "one_arm_chin_up R 1",
)
say(
    "first set 5 at 20, second set 5 at 20, third set 4, all pull ups",
    "pull_up 2x5 +20; pull_up 4 +?",
    ask="load_kg: third set 4",
)
# Maxima
say(
    "tested my weighted pull-up max. 40 easy, 45 ok, 47.5 grinder, 50 no chance",
    "pull_up 1 +40; pull_up 1 +45; pull_up 1 +47.5; pull_up 0 +50 fail",
)
say(
    "hit a new pr! 42.5 for a single on pull-ups, then tried 45 twice and failed both",
    "pull_up 1 +42.5; pull_up 2x0 +45 fail",
)
say(
    "worked up to a heavy single on pull ups: 20, 30, 40, 45, failed 47.5",
    "pull_up 1 +20; pull_up 1 +30; pull_up 1 +40; pull_up 1 +45; pull_up 0 +47.5 fail",
)
say("pull-up ladder up to 6, bodyweight", "pull_up 1,2,3,4,5,6")
# Sets named beside their load
say("chinups today 6 sets of 2, first three at 25, next three at 27.5", "chin_up 3x2 +25; chin_up 3x2 +27.5")
say(
    "did ten singles EMOM at 30, missed number 9",
    "_ 8x1 +30; _ 0 +30 fail; _ 1 +30",
    ask="movement: ten singles",
)
say("pull ups 8/7/6/5 with the 10 kg plate, last two sets without", "pull_up 8,7 +10; pull_up 6,5")
say(
    "my pull ups were 3x4 with 22.5 except the last set where I only had 17.5 on",
    "pull_up 2x4 +22.5; pull_up 4 +17.5",
)
say(
    "pull-ups 4 sets: 5@15 5@15 4@17.5 4@17.5 rpe 8 on the last",
    "pull_up 2x5 +15; pull_up 4 +17.5; pull_up 4 +17.5 @8",
)
say(
    "2 sets 10kg, 2 sets 15kg, 1 set 20kg, all of 5 pull-ups",
    "pull_up 2x5 +10; pull_up 2x5 +15; pull_up 5 +20",
)
say(
    "pullups 20kg 3x5, last set only 4 and then dropped weight for 6 more bw",
    "pull_up 5,5,4 +20; pull_up 6",
)
say(
    "4 doubles with 32.5 on pull ups, third one second rep didn't clear the bar",
    "pull_up 2x2 +32.5; pull_up 1 +32.5 fail; pull_up 2 +32.5",
)
say(
    "pull ups singles @ 35 37.5 40 42.5(f)",
    "pull_up 1 +35; pull_up 1 +37.5; pull_up 1 +40; pull_up 0 +42.5 fail",
)
say("did 3 pull-ups every 90 seconds for 10 rounds at +15", "pull_up 10x3 +15")
say("cluster: 5 singles with 35, 20 sec between, pull ups", "pull_up 1 +35; pull_up 4x1 +35 link")
say(
    "pull-ups: first set 6 with 15, then 5 with 17.5, then 4 with 20, last one 8 with nothing",
    "pull_up 6 +15; pull_up 5 +17.5; pull_up 4 +20; pull_up 8",
)
say("pull-up ladder up to 5 and back down to 1", "pull_up 1,2,3,4,5,4,3,2,1")
# More shapes
say(
    "pull ups today: 4 sets of 5, load was 15, 15, 17.5, 17.5, last set had to fight for the fifth",
    "pull_up 2x5 +15; pull_up 2x5 +17.5",
)
say(
    "pull ups 5 reps at 15kg, 5 reps at 17.5kg, failed on rep 4 at 20kg",
    "pull_up 5 +15; pull_up 5 +17.5; pull_up 3 +20 fail",
)
say(
    "weighted pull ups 3 sets: 20kg 6 reps, 20kg 5 reps, 17.5kg 6 reps",
    "pull_up 6,5 +20; pull_up 6 +17.5",
)
say("20 pull ups in as few sets as possible with 10kg: 7, 6, 4, 3", "pull_up 7,6,4,3 +10")
say("100 dips total, bw, sets of 15 till the last one which was 10", "dip 6x15; dip 10")
say("every 2 min x 6: 3 pull ups with 20", "pull_up 6x3 +20")
say("Myo reps on the chins, 12 then 4 4 3, bodyweight", "chin_up 12; chin_up 4,4,3 link")
say("pull ups +17.5: 5/5/5/4 then a back off set with just the belt, 9 reps", "pull_up 5,5,5,4 +17.5; pull_up 9")
say(
    "doubles: 30, 32.5, 35, 37.5 — pull ups, all good",
    "pull_up 2 +30; pull_up 2 +32.5; pull_up 2 +35; pull_up 2 +37.5",
)
say("3 singles at 42.5 for pullups, two of them clean and one missed", "pull_up 2x1 +42.5; pull_up 0 +42.5 fail")
say(
    "pull ups: triple at 25, triple at 27.5, double at 30 (meant to be a triple)",
    "pull_up 3 +25; pull_up 3 +27.5; pull_up 2 +30",
)
say("pull ups weren't great: 5 4 3 at 20 and I had planned 5 5 5", "pull_up 5,4,3 +20")
say(
    "set 1: 5 @ 20kg, set 2: 5 @ 20kg, set 3: 4 @ 20kg (fail on 5), set 4: 6 @ 15kg - pull ups",
    "pull_up 2x5 +20; pull_up 4 +20 fail; pull_up 6 +15",
)
say("pull up 5RM: 27.5. previous was 25", "pull_up 5 +27.5")
say(
    "pull ups 6 sets 2 reps, alternating 25 and 30",
    "pull_up 2 +25; pull_up 2 +30; pull_up 2 +25; pull_up 2 +30; pull_up 2 +25; pull_up 2 +30",
)
say(
    "tried 50 on the pull-up again, no chance, so did 45 for a single and called it",
    "pull_up 0 +50 fail; pull_up 1 +45",
)
say(
    "I put twenty five kilos on and did five sets of two, then took ten off and did one set of six, pull ups",
    "pull_up 5x2 +25; pull_up 6 +15",
)
say("pull ups 7.5kg 8,8 / 10kg 6,6 / 12.5kg 5", "pull_up 2x8 +7.5; pull_up 2x6 +10; pull_up 5 +12.5")
say("4x4 chins, 10 10 12.5 12.5kg", "chin_up 2x4 +10; chin_up 2x4 +12.5")
say(
    "ten sets of three on the minute, chin-ups, started with 10kg and switched to 5kg from set 7",
    "chin_up 6x3 +10; chin_up 4x3 +5",
)
