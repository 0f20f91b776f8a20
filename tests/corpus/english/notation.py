"""Sets in every notation of the trade."""

from tests.corpus.lines import Theme

THEME = Theme("notation", "en")
say = THEME.say

# Sets by reps
say("pull-ups 5x3 +20", "pull_up 5x3 +20")
say("Pull ups 5 X 3 at 20 kg. Bar was freezing.", "pull_up 5x3 +20")
say("PULLUPS 3×5+20", "pull_up 3x5 +20")
say("pullups 20kg: 5,5,4", "pull_up 5,5,4 +20")
say("chin-ups with 12.5: 6/6/5", "chin_up 6,6,5 +12.5")
say("dips +20x5x3 sets", "dip 3x5 +20")
say("chins 5@15 5@17.5 3@20 2@22.5", "chin_up 5 +15; chin_up 5 +17.5; chin_up 3 +20; chin_up 2 +22.5")
say("2 sets of 6 weighted dips, 15 kilos hanging off me", "dip 2x6 +15")
say("three sets of five ring rows", "ring_row 3x5")
say("pull-ups, a triple at 30 and two doubles at 32.5", "pull_up 3 +30; pull_up 2x2 +32.5")
say("chin ups: top set 2 @ 40 then 3x4 @ 32.5", "chin_up 2 +40; chin_up 3x4 +32.5")
say("neutral grip 4x6 @ 10 kg", "neutral_grip_pull_up 4x6 +10")
say("5x3 weighted pullups w/ 20kg on the belt", "pull_up 5x3 +20")
say("4 sets x 5 reps chin-ups, +7.5kg", "chin_up 4x5 +7.5")
say("5 reps x 4 sets ring dips", "ring_dip 4x5")
say("pull up 3 reps for 5 sets with 17.5kg", "pull_up 5x3 +17.5")
say("20kg x 3 x 5 sets pull-ups", "pull_up 5x3 +20")
say("Pull-ups:\n20 kg x 5\n22.5 kg x 4\n25 kg x 3", "pull_up 5 +20; pull_up 4 +22.5; pull_up 3 +25")
say(
    "Pull-ups\n- 5 x 20kg\n- 5 x 20kg\n- 4 x 20kg",
    "pull_up 5,5,4 +20",
    why="'5 x 20kg' with the unit on the second number is reps by load",
)
say("1) chin ups 5x5\n2) dips 4x8\n3) hollow hold 3x30s", "chin_up 5x5; dip 4x8; hollow_hold 3x30s")
say("dips 10, 9, 8, 8", "dip 10,9,8,8")
say("pushups 20-18-15", "push_up 20,18,15", why="three numbers parted by dashes are a set each")
say("set 1: 5 pull ups +20, set 2: 5 same weight, set 3: 4", "pull_up 5,5,4 +20")
say("Muscle-ups 3 singles and a double", "muscle_up 3x1; muscle_up 2")
say("weighted chins: 1x35, then 4 sets of 3 at 27.5", "chin_up 1 +35; chin_up 4x3 +27.5")
say("singles on pull-ups today, 6 of them with 45kg", "pull_up 6x1 +45")
say("doubles: 5x2 pull ups +32.5", "pull_up 5x2 +32.5")
say("pull-ups bw 8 8 7 6", "pull_up 8,8,7,6")
say("bodyweight pull-ups, 4 sets of 8", "pull_up 4x8")
say("2 warm-up sets of 5 bodyweight pull ups then 5x3 +22.5", "pull_up 2x5; pull_up 5x3 +22.5")
say(
    "warmup 5 bw, 3 @10, 1 @20, then work sets 4x3 @27.5. all pull-ups",
    "pull_up 5; pull_up 3 +10; pull_up 1 +20; pull_up 4x3 +27.5",
    ask_or="rpe: @10",
    also=({"sets": [], "ask": [{"about": "load_kg", "span": "3 @10"}]},),
    why="10 beside 20 and 27.5 in a ramp is kilograms; asking is as good",
)
say("ramped up the chins: 5 at 0, 5 at 10, 3 at 20, 1 at 30", "chin_up 5; chin_up 5 +10; chin_up 3 +20; chin_up 1 +30")
say("1 set of 12 chin-ups", "chin_up 12")
say("one set of pull-ups today, nine reps", "pull_up 9")
say("did 15 pull-ups in one go!!", "pull_up 15")
say("squats 5x5 @ 82,5", "squat 5x5 +82.5")
say("rows 3x8 with 32.5kg", "row 3x8 +32.5")
say("pull-ups 5×3 (+20 kg), dips 3×8 (bw)", "pull_up 5x3 +20; dip 3x8")
say("Pull-up: 5*3*20kg", "pull_up 5x3 +20", ask_or="sets: 5*3*20kg", why="sets by reps by load, in the trade's order")
say("4x3-4 chin ups? no: 4, 4, 3, 3. +20 on all of them", "chin_up 4,4,3,3 +20")
say("chin-ups 5,5,5,4,4 all with 10 extra", "chin_up 5,5,5,4,4 +10")
say("Pull-ups w/ plus 20: 3/3/3/3/3", "pull_up 3,3,3,3,3 +20")
say("sets of 3 pull ups, 5 of those, 25 on the belt", "pull_up 5x3 +25")
say("pull ups +20: five, five, four", "pull_up 5,5,4 +20")
say("ring pull ups, 3x6, last set only 4", "ring_pull_up 6,6,4")
say("dips 5x5 +30 but the final set was 3", "dip 5,5,5,5,3 +30")
say("5x3 chins, first two at 20 the other three at 22.5", "chin_up 2x3 +20; chin_up 3x3 +22.5")
say("Pull-ups 4x4: 15, 17.5, 17.5, 20 kg", "pull_up 4 +15; pull_up 2x4 +17.5; pull_up 4 +20")
say("pull-ups 3x5 with 20kg, 22.5kg and 25kg", "pull_up 5 +20; pull_up 5 +22.5; pull_up 5 +25")
say("dips: 8 reps at +10, 6 at +15, 4 at +20, 2 at +25", "dip 8 +10; dip 6 +15; dip 4 +20; dip 2 +25")
say("pike push ups 3x10, elevated feet btw", "pike_push_up 3x10")
say("hspu against wall 6,5,4", "handstand_push_up 6,5,4")
say("toes to bar is not on the list so: hanging leg raises 3x8", "hanging_leg_raise 3x8")
say(
    "lat pull down 60kg 3x10, face pulls 15kg 3x20, hammers 14 kg 3x8",
    "lat_pulldown 3x10 +60; face_pull 3x20 +15; hammer_curl 3x8 +14",
)
say("biceps curls 12.5kg dumbbells 3x10", "biceps_curl 3x10 +12.5", why="a dumbbell's figure as stated")
say("nordics 3x4, Bulgarian split squats 3x8 each leg", "nordic_curl 3x4; split_squat LR 3x8")
say("ring muscle ups 2,2,1", "ring_muscle_up 2,2,1")
say("wrist curls 3x15 8kg + ext rotations 2x12 per side 3kg", "wrist_curl 3x15 +8; external_rotation LR 2x12 +3")
say("pistols 3x5/5, nothing else", "pistol_squat LR 3x5")
# Ladders, every-minute work, totals
say("pull up ladder 1-2-3-4-5", "pull_up 1,2,3,4,5")
say("chin up ladders 1,2,3 three times through", "chin_up 1,2,3,1,2,3,1,2,3")
say("EMOM 10 min: 3 pull-ups every minute", "pull_up 10x3")
say("emom for 8 mins, 2 chins +15 each minute", "chin_up 8x2 +15")
say("every 2 min for 12 min, 4 dips +20", "dip 6x4 +20")
say("50 dips total, in sets of ten", "dip 5x10")
say(
    "did 100 pushups over the day, no idea how many sets",
    "push_up ?",
    ask="sets: 100 pushups",
    also=({"sets": []},),
    why="the total is said, the sets are not",
)
say("AMRAP pull-ups: 14", "pull_up 14")
say("pull ups amrap 11 then amrap 8", "pull_up 11,8")
say("chin ups pyramid: 2 4 6 4 2", "chin_up 2,4,6,4,2")
# Supersets and rounds
say("superset 4 rounds: 5 pull-ups +10 / 8 dips", "pull_up 4x5 +10; dip 4x8")
say("3 rounds of 10 push ups, 5 chin ups and a 20s L-sit", "push_up 3x10; chin_up 3x5; l_sit 3x20s")
say("A1 chin-ups 4x5 +15\nA2 ring dips 4x6\nB hollow hold 3x40s", "chin_up 4x5 +15; ring_dip 4x6; hollow_hold 3x40s")
# Clusters, rest-pause, drop sets
say(
    "cluster on pull-ups +32.5: 2+2+1 with 15s between",
    "pull_up 2 +32.5; pull_up 2,1 +32.5 link",
    maybe_unread=("15s between",),
)
say("chin-ups rest-pause 8+3+2 with 10kg", "chin_up 8 +10; chin_up 3,2 +10 link")
say("dips drop set: 6 at +25, straight into 5 at +15, straight into 8 bw", "dip 6 +25; dip 5 +15 link; dip 8 link")
say(
    "3 clusters of 1+1+1 pull ups at +40",
    "pull_up 1 +40; pull_up 1,1 +40 link; pull_up 1 +40; pull_up 1,1 +40 link; pull_up 1 +40; pull_up 1,1 +40 link",
)
say(
    "pull-ups 3x5 +20, drop set at the end: 6 more with no weight straight off the belt",
    "pull_up 3x5 +20; pull_up 6 link",
)
say("myo reps ring rows 12+4+4+3", "ring_row 12; ring_row 4,4,3 link")
