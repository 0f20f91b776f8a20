"""A second look, written blind: sets as loggers, storytellers and dictation give them."""

from tests.corpus.lines import Theme
from tests.corpus.notation import sets

THEME = Theme("second-sets", "en")
say = THEME.say

say(
    "PU 4x4 +15, D 3x8, same bar as ever",
    "pull_up 4x4 +15",
    sets_or=("pull_up 4x4 +15; dip 3x8",),
    maybe_unread=("D 3x8",),
)
say("chin ups 8 7 6 5 bodyweight only", "chin_up 8,7,6,5")
say("3 by 5 weighted dips with a 10 kilo plate between my knees", "dip 3x5 +10")
say("pull-ups: 6 sets, 2 reps each, +32.5kg", "pull_up 6x2 +32.5")
say("Wtd chin 4×3 @ +27,5", "chin_up 4x3 +27.5")
say("today was ring dips, 10 10 9 8. shoulders felt great", "ring_dip 10,10,9,8")
say("muscleups 5 singles on the low bar", "muscle_up 5x1")
say("a double, a double and a single with 40 on the belt, pullups", "pull_up 2,2,1 +40")
say(
    "hey coach so i just finished and i did four sets of pull ups with fifteen kilos five reps each set and then "
    "i did dips three sets of ten",
    "pull_up 4x5 +15; dip 3x10",
)
say(
    "eight chin ups then seven then six no weight rest was about two minutes",
    "chin_up 8,7,6",
    maybe_unread=("rest was about two minutes",),
)
say("pull ups, +10: 6/6/5/5", "pull_up 6,6,5,5 +10")
say("neutral grip: 3x6 with 12kg kettlebell hanging off the belt", "neutral_grip_pull_up 3x6 +12")
say("push ups 50 straight, then 35, then 28. arms are jelly", "push_up 50,35,28")
say("pulups 3x8. my phone changes it to pullies every time lol", "pull_up 3x8")
say("Chinups 5 sets of 4 reps with 35lb", "chin_up 5x4 +35lb")
say("weighted pull ups 3x5 +45", "pull_up 3x5 +45lb", unit="lb")
say("dips 45x5 55x5 65x3 (lb obviously)", "dip 5 +45lb; dip 5 +55lb; dip 3 +65lb", unit="lb")
say(
    "pull ups 5x3 #25",
    "pull_up 5x3 +25lb",
    ask_or="load_kg: #25",
    also=({"sets": [], "ask": [{"about": "load_kg", "span": "#25"}]},),
)
say("25# pull ups 4x4", "pull_up 4x4 +25lb")
say(
    "worked up: bw x5, +10x3, +20x2, +30x1, +40x1. pullups. 40 was a PR!!",
    "pull_up 5; pull_up 3 +10; pull_up 2 +20; pull_up 1 +30; pull_up 1 +40",
)
say("ring pullups, bodyweight, 12-10-8", "ring_pull_up 12,10,8")
say("Pull-ups\n+20 x 3\n+20 x 3\n+22.5 x 2", "pull_up 3,3 +20; pull_up 2 +22.5")
say(
    "1) pull ups 4x6\n2) dips 4x8\n3) face pulls 3x15 15kg\n4) leg raises 3x12",
    "pull_up 4x6; dip 4x8; face_pull 3x15 +15; hanging_leg_raise 3x12",
)
say("- chins 3x5 +20\n- HSPU 4x3\n- L sit 4x12s", "chin_up 3x5 +20; handstand_push_up 4x3; l_sit 4x12s")
say("Squatted 3x5 at 100 and then did lat pulldowns 3x10 at 60", "squat 3x5 +100; lat_pulldown 3x10 +60")
say("DB row 3x12 with the 22s each arm", "row 3x12 LR +22")
say("barbell rows 4x8 60kg, hammer curls 3x12 14kg", "row 4x8 +60; hammer_curl 3x12 +14")
say("scap pulls 3x10 for warmup then pullups 5x5 at 12.5", "scapular_pull_up 3x10; pull_up 5x5 +12.5")
say("I have done pull-up five series of four with ten kilogram", "pull_up 5x4 +10")
say("Today I make the dips, 4 serie x 6 repetition, weight 15 kg, very good feeling", "dip 4x6 +15")
say("pull ups ladder 1 2 3 4 5", "pull_up 1,2,3,4,5")
say("pyramid on dips: 4,6,8,6,4 all bodyweight", "dip 4,6,8,6,4")
say("ran out of time so only 2x5 chins +15 😩", "chin_up 2x5 +15")
say("pistol squats 3x4 each leg holding 8kg", "pistol_squat 3x4 LR +8")
say("nordics 3x5, split squats 3x10 per side w/ 12kg", "nordic_curl 3x5; split_squat 3x10 LR +12")
say("Bicep curls 3 x 12 x 12.5kg", "biceps_curl 3x12 +12.5")
say("pull ups 10x1 +40 on the minute", "pull_up 10x1 +40")
say("EMOM 10 min: 3 pull ups every minute", "pull_up 10x3", sets_or=("",), ask_or="sets: EMOM 10 min")
# Effort
say("chins 3x5 +20 @7, @7.5, @8.5", "chin_up 5 +20 @7; chin_up 5 +20 @7.5; chin_up 5 +20 @8.5")
say("pull-ups 4x3 +27.5 rpe 8.5", "pull_up 4x3 +27.5 last@8.5")
say("dips 3x8 +10 3 reps left in the tank on the last one", "dip 3x8 +10 last@7")
say("dips 3x10, all sets RIR 3", "dip 3x10 @7")
say("pull ups 3x6, last set to failure", "pull_up 3x6 last@10")
say("chin-ups 4x5 +10. easy", "chin_up 4x5 +10")
say("pull ups 5x2 +35 hard but clean", "pull_up 5x2 +35")
say("pull-ups 4x5 +10, dips 4x8. whole session was a 7", "pull_up 4x5 +10; dip 4x8", srpe=7)
say("chin ups 3x4 +25, maybe two more in me on the last", "chin_up 3x4 +25 last@8")
say("5x3 pull ups +20, sets 1-4 rpe 7, last one 9", "pull_up 4x3 +20 @7; pull_up 3 +20 @9")
say("Amrap pull ups: 14", "pull_up 14")
say("ring dips 8,8,6 - the 6 was absolutely everything i had", "ring_dip 8,8,6 last@10", sets_or=("ring_dip 8,8,6",))
say("dips +30 x 4 @8, +32.5 x 4 @9", "dip 4 +30 @8; dip 4 +32.5 @9")
say(
    "pull ups 5x3 +20 rpe between 7 and 8",
    "pull_up 5x3 +20",
    ask="rpe: rpe between 7 and 8",
    also=({"sets": sets("pull_up 5x3 +20 last@7.5"), "ask": []},),
)
say(
    "session RPE 6, 50 minutes. Pull-ups 4x4 +15 and planche leans 4x15s",
    "pull_up 4x4 +15; planche_lean 4x15s",
    srpe=6,
    mins=50,
)
say("chins 4x4 +20. 8/10 effort overall, about an hour and a half", "chin_up 4x4 +20", srpe=8, mins=90)
say("from 6:30 to 7:15 pull ups 6x3 +15", "pull_up 6x3 +15")
# Sides and holds
say("one arm hang L 22s R 18s", "one_arm_hang L 22s; one_arm_hang R 18s")
say(
    "archers on the bar 4x3 each side",
    "archer_pull_up 4x3 LR",
    also=({"sets": sets("_ 4x3 LR"), "ask": [{"about": "movement", "span": "archers"}]},),
)
say("archer pull ups left 4 4 3 right 4 3 3", "archer_pull_up L 4,4,3; archer_pull_up R 4,3,3")
say(
    "oap counterweight 12.5kg off: L 3,3,2 R 3,2,2",
    "one_arm_counterweight -12.5 L 3,3,2; one_arm_counterweight -12.5 R 3,2,2",
)
say("pulley one arm, minus 10kg, 3x2 both arms", "one_arm_counterweight 3x2 LR -10")
say(
    "OAP!!! right arm, 1 rep, left still nothing",
    "one_arm_pull_up R 1",
    sets_or=("one_arm_pull_up R 1; one_arm_pull_up L 0 fail",),
)
say("one arm chin 2/1", "one_arm_chin_up LR 2/1")
say("one arm pull ups with the free hand on my shoulder 3x1 per arm", "one_arm_hand_on_shoulder 3x1 LR")
say(
    "hand on biceps one armers: right 3 left 2, then right 2 left 2",
    "one_arm_hand_on_biceps R 3; one_arm_hand_on_biceps L 2; one_arm_hand_on_biceps R 2; one_arm_hand_on_biceps L 2",
)
say("ring archers (ring at elbow height) 3x3 l/r", "archer_ring_elbow 3x3 LR")
say("archer with ring at shoulder level: 2 left 2 right, x3", "archer_ring_shoulder 3x2 LR")
say("dead hang 1:15, 1:02", "dead_hang 75s,62s")
say("deadhang one minute then fifty seconds", "dead_hang 60s,50s")
say("handstand hold freestanding 12s, 20s, 31 sec (pb)", "handstand_hold 12s,20s,31s")
say("tuck planche 5x8 sec, adv tuck 3 x 4 sec", "tuck_planche 5x8s; advanced_tuck_planche 3x4s")
say("FL full 2s, straddle 5s 4s, tuck 15s", "full_front_lever 2s; straddle_front_lever 5s,4s; tuck_front_lever 15s")
say("back lever 10 secs x 3", "back_lever 3x10s")
say("hollow body 3 times 45 seconds", "hollow_hold 3x45s")
say("Held my chin over the bar for 25 seconds, twice", "pull_up_top_hold 2x25s")
say("L-sit 20s on the parallettes 20s 15s", "l_sit 20s,20s,15s")
say("one leg FL L 7s R 6s", "one_leg_front_lever L 7s; one_leg_front_lever R 6s")
say("weighted dead hangs 3x20s +20kg", "dead_hang 3x20s +20")
# ROM, lowering, pauses, failures, clusters
say("top half chins 3x5 +25", "chin_up 3x5 +25 upper")
say("bottom half dips 3x6", "dip 3x6 lower")
say("pull up negatives 5x1 with +40, 5 seconds down each", "pull_up 5x1 +40 ecc", maybe_unread=("5 seconds down each",))
say(
    "eccentric only one arm chins, 4 each arm, singles",
    "one_arm_chin_up 4x1 LR ecc",
    sets_or=("one_arm_chin_up 4 LR ecc",),
    ask_or="reps: 4 each arm",
)
say("negatives on muscle ups 3x3", "muscle_up 3x3 ecc")
say("pull-ups with 2s pause at the top 4x3 +10", "pull_up 4x3 +10 top", maybe_unread=("2s pause",))
say("paused dips 3x5 +15, held at the bottom", "dip 3x5 +15 bottom")
say("chins 3x2 with stops at 90 and at the top", "chin_up 3x2 middle top")
say("chin up +45 single, failed. then +42.5 and got it", "chin_up 0 +45 fail; chin_up 1 +42.5")
say("pullups 3,3,3 +30 missed the last rep of the third so 2", "pull_up 3,3 +30; pull_up 2 +30 fail", ask_or="reps: 2")
say("tried +50 pull up twice. no.", "pull_up 2x0 +50 fail")
say(
    "cluster: 2+2+2 pull ups at +35, 20s between",
    "pull_up 2 +35; pull_up 2 +35 link; pull_up 2 +35 link",
    maybe_unread=("20s between",),
)
say("rest pause chins +15: 6, 3, 2", "chin_up 6 +15; chin_up 3 +15 link; chin_up 2 +15 link")
say("drop set dips: 6 at +25, straight to 8 at +10, then 12 bodyweight", "dip 6 +25; dip 8 +10 link; dip 12 link")
say("superset pull ups 3x5 +15 with dips 3x8 +15", "pull_up 3x5 +15; dip 3x8 +15")
say("3 rounds of 5 pull ups and 10 push ups", "pull_up 3x5; push_up 3x10")
say("band assisted pull ups red band 3x6", "band_pull_up 3x6")
say("band pull-ups (band gives 20kg) 4x5", "band_pull_up 4x5 -20")
say("ext rotations 2x15 per arm 3kg, wrist curls 3x20 10kg", "external_rotation 2x15 LR +3; wrist_curl 3x20 +10")
say("pike pushups 3x8 on the box, HSPU to the wall 3,3,2", "pike_push_up 3x8; handstand_push_up 3,3,2")
say("tempo pull ups 3x4 31X1 +10", "pull_up 3x4 +10", maybe_unread=("31X1", "tempo"))
say("pullups 5x3 20kg except set 4 which was only 2", "pull_up 3,3,3,2,3 +20")
say("chin ups 4x5: first two sets +10, last two +12.5", "chin_up 2x5 +10; chin_up 2x5 +12.5")
say("added 5 kg for the last set: pull ups 3x4 +20, 1x4 +25", "pull_up 3x4 +20; pull_up 4 +25")
