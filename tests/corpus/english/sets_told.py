"""Sets in everyday words: counted and then told one by one, mended, rated by the side, tried at falling loads."""

from tests.corpus.lines import Theme

THEME = Theme("sets-told", "en")
say = THEME.say

# Counted, then told.
say("3 sets of chins with a 16 kg bell hanging off me, 5 reps, 5 reps, 4 reps", "chin_up 5,5,4 +16")
say(
    "pull-ups 3 sets at +15: 6 reps 3 RIR, 6 reps 2 RIR, 5 reps 0 RIR",
    "pull_up 6 +15 @7; pull_up 6 +15 @8; pull_up 5 +15 @10",
)
say("chin ups to failure 3 sets 12 10 8 and weighted 2x5 10kg", "chin_up 12,10,8 @10; chin_up 2x5 +10")
say("first two sets of pull ups 5 reps at 20, next two 4 reps at 22.5", "pull_up 2x5 +20; pull_up 2x4 +22.5")
say("sets: 5 reps: 3 weight: 20kg exercise: pull ups", "pull_up 5x3 +20")
say("Pull-ups weight 12.5 sets 5 reps 4 rpe 8", "pull_up 5x4 +12.5 last@8")
say("4 bar muscle ups, one at a time with a proper break", "muscle_up 4x1")
say("5x1 one arm hangs, 12 seconds each side", "one_arm_hang 5x12s LR")
say("pull ups 5x3 20kg, only 2 reps on the fifth", "pull_up 3,3,3,3,2 +20")
say("two back off sets of 8 with 5kg after 3x5 at 17.5, chins", "chin_up 2x8 +5; chin_up 3x5 +17.5")

# Loads.
say("chin ups 22.5 x 3 x 5 sets", "chin_up 5x3 +22.5")
say("pullups 15kgx6 17.5kgx5 17.5kgx5", "pull_up 6 +15; pull_up 5,5 +17.5")
say("pull ups 4x3 27.5", "pull_up 4x3 +27.5")
say("Pullups (kg): 10x5, 15x4, 20x3", "pull_up 5 +10; pull_up 4 +15; pull_up 3 +20")
say("pull ups 4x5 with a 10k plate", "pull_up 4x5 +10")
say("pull ups 4x5 (added 10)", "pull_up 4x5 +10")
say("went from 15 to 17.5 on pull ups, 5x4", "pull_up 5x4 +17.5")
say(
    "pull ups 5x4 at 17.5 which is 2.5 more than last week",
    "pull_up 5x4 +17.5",
    maybe_unread=("2.5 more than last week",),
)
say("pull ups: worked up to 35 for a single, then 3x3 at 27.5", "pull_up 1 +35; pull_up 3x3 +27.5")
say("pull ups got 5 then 4 then 4 then 3 with the 20s", "pull_up 5,4,4,3 +20")
say("row 40kg barbell 4x8 and curls 3x12 with the 8s", "row 4x8 +40; biceps_curl 3x12 +8")
say("five sets of two pull ups and the belt had thirty no sorry thirty two point five kilos on it", "pull_up 5x2 +32.5")
say(
    "5 min warmup, then OAP: 1 on the right, 0 on the left (missed). then 3x3 +30",
    "one_arm_pull_up 1 R; one_arm_pull_up 0 L fail; one_arm_pull_up 3x3 +?",
    ask="load_kg: +30",
)
say("pull ups 5 with 20, then 5 and 4", "pull_up 5 +20; pull_up 5,4 +?", ask="load_kg: with 20")

# Plausible or not.
say("pull ups\n5 x 20\n5 x 20\n4 x 20", "pull_up ?", ask="sets: pull ups")
say("pull-ups 25 reps +30", "pull_up 25 +?", ask="load_kg: +30")
say("tuck fl pulls 4x5", does="report", unread=("tuck fl pulls 4x5",))

# Mended.
say("5 sets of 3 chins with 15 kg. Hang on, checked the video, only 4 sets.", "chin_up 4x3 +15")
say("dips 3x8 +10, no wait that was pull ups. So pull ups 3x8 +10 and no dips at all", "pull_up 3x8 +10")
say("dips 3x8 +10, sorry, that was pull ups", "pull_up 3x8 +10")

# Misses.
say(
    "Went for a 45 kg pull-up single and missed. 42.5 also missed. 40 went up fine.",
    "pull_up 0 +45 fail; pull_up 0 +42.5 fail; pull_up 1 +40",
)
say(
    "OAP attempts. Right: 1, 1, miss. Left: miss, miss.",
    "one_arm_pull_up 1,1 R; one_arm_pull_up 0 R fail; one_arm_pull_up 0,0 L fail",
)
say("pull ups 4x3 25kg, tried a 5th but failed at 2", "pull_up 4x3 +25; pull_up 2 +25 fail")
say("pull ups 5x3 20kg last rep of the last set failed", "pull_up 3,3,3,3 +20; pull_up 2 +20 fail")
say("3 pull ups on the minute for 10 minutes, didn't miss one", "pull_up 10x3")

# Drops, short rests, tempo.
say(
    "dips 3x5 +25, last set straight into a drop: 6 at +10, then 9 at bodyweight",
    "dip 3x5 +25; dip 6 +10 link; dip 9 link",
)
say(
    "rest-pause chin ups, bodyweight: 10, 15s breather, 4, 15s breather, 3",
    "chin_up 10; chin_up 4 link; chin_up 3 link",
)
say("tempo pull ups 3-1-3, 3x4 bw", "pull_up 3x4", maybe_unread=("tempo", "3-1-3"))

# Sides.
say("Got my first one arm chin on the left!!! Just the one rep.", "one_arm_chin_up 1 L")
say(
    "A double and three singles of one-arm pull up, right arm. Left arm four singles.",
    "one_arm_pull_up 2,1,1,1 R; one_arm_pull_up 1,1,1,1 L",
)
say(
    "hand on biceps lower half 2x2 each, rpe 7 left 8 right",
    "one_arm_hand_on_biceps 1x2 LR lower; one_arm_hand_on_biceps 2 L lower @7; one_arm_hand_on_biceps 2 R lower @8",
)
say("left arm hang 25s right 31s", "one_arm_hang 25s L; one_arm_hang 31s R")
say(
    "hand on shoulder 2 sets of 1 each side, then weighted pull ups 4x3 20kg",
    "one_arm_hand_on_shoulder 2x1 LR; pull_up 4x3 +20",
)
say("one arm lat pulldown 3x8 each 35kg", "lat_pulldown 3x8 LR +35")

# Efforts.
say("5x2 at 30. pull ups. heavy but clean, 9 on the last", "pull_up 5x2 +30 last@9")
say("4@25, 4@25, 3@25, 3@25 pull ups rpe 8,8.5,9,9", "pull_up 4 +25 @8; pull_up 4 +25 @8.5; pull_up 3,3 +25 @9")
say("5 sets pull-ups, 5 reps each, 12.5 kilos. felt about a 7", "pull_up 5x5 +12.5 last@7")

# Not mine, not now.
say("my daughter can hang for 90 seconds, I managed 55 and 50 dead hang", "dead_hang 55s,50s")
say("chins 4x5 +12.5, up from 4x5 +10 on Monday", "chin_up 4x5 +12.5")
say("bought a dip belt and 2 x 10 kg plates, so I can load up now", does="equipment")
say("planned 5x5 but stopped at 3x5, pull ups +10", "pull_up 3x5 +10")
say("just 3 sets today instead of 5, 4 reps with 20", does="report", ask="movement: with 20")

# Pluses, tries, other hands.
say("pull ups 5 5 4+1", "pull_up 5,5,4; pull_up 1 link")
say("3x5+ pull ups 15kg, got 8 on the last", "pull_up 5,5,8 +15")
say("top single 40 pull up, backoffs 4x3 at 32.5", "pull_up 1 +40; pull_up 4x3 +32.5")
say("pull ups 5r 20kg 4r 20kg 4r 20kg", "pull_up 5 +20; pull_up 4,4 +20")
say("4x4 pull ups 17.5 in under 20 minutes", "pull_up 4x4 +17.5", maybe_unread=("in under 20 minutes",))
say("W3D1 pull ups 5x3 22.5", "pull_up 5x3 +22.5")
say("Workout #45 - pull ups 5x5 - 10kg - 40min", "pull_up 5x5 +10", mins=40)
say("did pull ups with 1/4 bw, 3x5", "pull_up 3x5 +18", body=72.0)

# Weights and numbers that are not told.
say("4x5 pull ups at my usual weight", "pull_up 4x5 +?", ask="load_kg: my usual weight")
say("pull ups with the rucksack 4x5", "pull_up 4x5 +?", ask="load_kg: rucksack")
say("4x5 pull ups slightly heavier than last time", "pull_up 4x5 +?", ask="load_kg: slightly heavier than last time")
say("did the pull ups, forgot to count", does="report", ask="sets: forgot to count")
say("4 sets pull ups. 17.5. 4,4,4,3.", "pull_up 4,4,4,3 +17.5")

# Dictated.
say("first set five second set five third set four pull ups with fifteen kilos", "pull_up 5,5,4 +15")
say("four fours at twenty pull ups", "pull_up 4x4 +20")
say("ten singles at thirty five pull ups every minute", "pull_up 10x1 +35")
say("hundred pushups in sets of twenty", "push_up 5x20")
say("twenty kilos three by five chin ups then bodyweight to failure eleven", "chin_up 3x5 +20; chin_up 11 @10")
say("chins four sets of six with twelve kilos, last one like an eight and a half", "chin_up 4x6 +12 last@8.5")
say("pull ups, fifteen for four, and twenty for three", "pull_up 4 +15; pull_up 3 +20")

# Yet to be done, or long past.
say("will do 3x8 dips later", does="smalltalk", does_or=("unknown",))
say("going to do 4x4 pull ups tonight", does="smalltalk", does_or=("unknown",))
say("plan for today: 5x3 pull ups 22.5. I'll report later", does="smalltalk")
say("I can do 12 pull ups now", does="smalltalk", does_or=("unknown",))
say("the video shows 5x5 but I only did 4x5 pull ups", "pull_up 4x5")
say("day 3 of 30: 50 push ups", "push_up 50")
say("session 5: chins 4x4 +15", "chin_up 4x4 +15")
