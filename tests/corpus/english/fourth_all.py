"""A fourth look, written blind in the manner of the shared examples: all subjects, English."""

from tests.corpus.lines import Theme
from tests.corpus.notation import KG_PER_LB

THEME = Theme("fourth-all", "en")
say = THEME.say

MAIN = "m/weighted_pull_up pull_up 5x3 +17.5 @8"
DAY = "w scapular_pull_up 2x10; m/weighted_pull_up pull_up 4x4 +20 @7.5; a face_pull 3x15 +18"
TWO = "m/weighted_pull_up pull_up 4x6 +10 @7; a dip 3x8 +12.5 @8"
CHIN = "m chin_up 4x5 +12.5 @8"
HOLD = "s/tuck_front_lever tuck_front_lever 4x12s @8"
ARCH = "s/archer_shoulder archer_ring_shoulder 2x2 LR @7; m/weighted_pull_up pull_up 4x4 +25 @8"
BICEPS = "s/hand_on_biceps one_arm_hand_on_biceps 2x2 LR @8"
POUNDS = "m/weighted_pull_up pull_up 4x4 +50lb @8"

# Reports in the notations of the trade
say("Chin-ups today, 4x4 with 12.5 on the belt, moved well", "chin_up 4x4 +12.5")
say("4 sets of 5 pullups, bodyweight", "pull_up 4x5", lang=None)
say("weighted chins 6 x 2 @ 35kg 🔨", "chin_up 6x2 +35")
say("Dips: 27.5kg 4/4/3. neutral pull ups after that, 3x8 bw", "dip 4,4,3 +27.5; neutral_grip_pull_up 3x8")
say(
    "pull ups 6@12.5 5@17.5 3@22.5 1@27.5, ramped it up on purpose",
    "pull_up 6 +12.5; pull_up 5 +17.5; pull_up 3 +22.5; pull_up 1 +27.5",
)
say(
    "Pull-ups, heavy day. A single at +42.5, a single at 45, then three doubles with 37.5.",
    "pull_up 1 +42.5; pull_up 1 +45; pull_up 3x2 +37.5",
    body=84,
)
say("chins: top single +40 @9, back-offs 3x4 +30", "chin_up 1 +40 @9; chin_up 3x4 +30", body=79)
say("dips 5x4 +32.5 @8, elbows tucked", "dip 5x4 +32.5 last@8")
say("tuck planche 5x12s all rpe 8, finally feels like a position", "tuck_planche 5x12s @8")
say("3x6 pull-ups w/ 12kg, 3 in reserve on the last", "pull_up 3x6 +12 last@7")
say("Ring dips 9, 8, 6. One more in the tank on that 6", "ring_dip 9,8,6 last@9")
say("max set of chins: 14 and absolutely nothing left. After a long break 2x7", "chin_up 14 @10; chin_up 2x7")
say(
    "pulley one-armers, counterweight 5kg: right 3, left 2, right 2, left 2",
    "one_arm_counterweight 3 R -5; one_arm_counterweight 2 L -5; "
    "one_arm_counterweight 2 R -5; one_arm_counterweight 2 L -5",
)
say("OAP!!! left 1, right 1. still shaking 😭", "one_arm_pull_up 1 L; one_arm_pull_up 1 R")
say("one arm chin up 3x1 per side, weak side first", "one_arm_chin_up 3x1 LR")
say("one arm pull-ups with the other hand on my biceps 2x3 each arm, rpe 7", "one_arm_hand_on_biceps 2x3 LR last@7")
say("Archers with the straight arm on a ring at shoulder height: 3x2 e/s", "archer_ring_shoulder 3x2 LR")
say(
    "dead hangs 75s then 60s, one-arm hangs 20s left 17s right, hands are toast",
    "dead_hang 75s,60s; one_arm_hang 20s L; one_arm_hang 17s R",
)
say(
    "Adv tuck front lever 4x9s. Straddle FL 5s, 4s, 4s",
    "advanced_tuck_front_lever 4x9s; straddle_front_lever 5s,4s,4s",
)
say("full front lever 2x4s, six months ago I couldn't hold it at all", "full_front_lever 2x4s")
say(
    "back lever 15s 12s 12s, L-sit on the floor 3x20s, hollow hold 2x60s",
    "back_lever 15s,12s,12s; l_sit 3x20s; hollow_hold 2x60s",
)
say("holding the top of a pull-up, chin above the bar, 3x15s with 10kg", "pull_up_top_hold 3x15s +10")
say(
    "ring muscle ups 3, 3, 2. then rested 10 minutes, tried a single and missed it",
    "ring_muscle_up 3,3,2; ring_muscle_up 0 fail",
    maybe_unread=("rested 10 minutes",),
)
say(
    "wall handstand 60/50/45 seconds, HSPU 4x4",
    "handstand_hold 60s,50s,45s; handstand_push_up 4x4",
)
say("pike push-ups 3x10, feet up on the box. push ups 2x25", "pike_push_up 3x10; push_up 2x25")
say(
    "Legs. squats 4x6 @ 95kg, split squats 3x10 per leg holding 20kg, nordics 4x3, pistols 2x4 each. RIP stairs",
    "squat 4x6 +95; split_squat 3x10 LR +20; nordic_curl 4x3; pistol_squat 2x4 LR",
    body=90,
)
say(
    "barbell row 4x8 60kg, hammer curls 3x12 14kg, face pulls 3x20 15kg, external rotation 2x12 per side 3kg",
    "row 4x8 +60; hammer_curl 3x12 +14; face_pull 3x20 +15; external_rotation 2x12 LR +3",
)
say(
    "lat pulldown 60kg x 10, 65kg x 8, 70kg x 6",
    "lat_pulldown 10 +60; lat_pulldown 8 +65; lat_pulldown 6 +70",
)
say(
    "scap pull ups 3x10, ring rows 4x10, band assisted pull-ups 3x5 (the band takes 20 kg off me)",
    "scapular_pull_up 3x10; ring_row 4x10; band_pull_up 3x5 -20",
)
say("pull ups with the purple band 4x6, then 1 min dead hang", "band_pull_up 4x6; dead_hang 60s")
say(
    "One-arm chin negatives 4x1 each side, five seconds down every time",
    "one_arm_chin_up 4x1 LR ecc",
    maybe_unread=("five seconds down every time",),
)
say("Pull-ups top half only 4x5 +25, bottom half only 2x5 +25", "pull_up 4x5 +25 upper; pull_up 2x5 +25 lower")
say("pull-ups 5x2 +20, each rep paused at the top", "pull_up 5x2 +20 top")
say(
    "Chins 3x4 +7.5 with a 2s pause halfway up, push-ups 2x15 with a pause on the floor",
    "chin_up 3x4 +7.5 middle; push_up 2x15 bottom",
    maybe_unread=("2s pause",),
)
say("Pull ups 4x5 with 35, dips 3x8 with 45", "pull_up 4x5 +35lb; dip 3x8 +45lb", unit="lb", body=77)
say("+10kg chins 5x4, somebody walked off with all the lb plates", "chin_up 5x4 +10", unit="lb", body=80.3)
say("3x6 dips with a 25# dumbbell between my feet", "dip 3x6 +25lb")
say(
    "slept 8h, bw 70.4, chins 4x5 +10, last set rpe 8, 50 minutes",
    "chin_up 4x5 +10 last@8",
    sleep=8,
    bw=70.4,
    mins=50,
)
say(
    "pull-ups 3x5\npush-ups 3x20\nhanging leg raises 3x8\n\nsession rpe 6, 40 min",
    "pull_up 3x5; push_up 3x20; hanging_leg_raise 3x8",
    srpe=6,
    mins=40,
)
say(
    "okay so chin ups four sets of four with fifteen kilos last was an eight out of ten then push ups three by twenty",
    "chin_up 4x4 +15 last@8; push_up 3x20",
)
say("puulups 3x5 +15kg , dipps 3x10 no weihgt", "pull_up 3x5 +15; dip 3x10")
say("dips 4x8 +10, 90s rest", "dip 4x8 +10", maybe_unread=("90s rest",))
say(
    "chin-ups 5x3 +17.5, deadlifts 3x5 140kg, then swam 1500 m to cool off",
    "chin_up 5x3 +17.5",
    unread=("deadlifts 3x5 140kg", "swam 1500 m"),
    ask_or="movement: deadlifts",
)
say("Superset, 3 rounds: pull-ups +10 x 6 and dips +15 x 6", "pull_up 3x6 +10; dip 3x6 +15")
say("5 rounds of 5 pull-ups, 10 push-ups, 15 squats", "pull_up 5x5; push_up 5x10; squat 5x15")
say(
    "Pull-up cluster at +30: 2, 2, 2 with 15 s between",
    "pull_up 2 +30; pull_up 2,2 +30 link",
    maybe_unread=("15 s between",),
)
say(
    "chins drop set: 4 with 25kg, straight to 15kg for 4, straight to bodyweight for 6",
    "chin_up 4 +25; chin_up 4 +15 link; chin_up 6 link",
)
say("rest-pause dips with 10kg: 8, 3, 2. then normal dips 2x8", "dip 8 +10; dip 3,2 +10 link; dip 2x8")
say("EMOM 10 min, 3 pull-ups each minute", "pull_up 10x3", maybe_unread=("EMOM 10 min",))
say("bus broke down and it was 4 degrees at the bars. pull ups 3x4 +20 anyway", "pull_up 3x4 +20")
say("my 3 year old did the counting 😂 push-ups 30, 25, 22", "push_up 30,25,22")
say(
    "Planche leans 3x30s, adv tuck planche 4x8s and one go at straddle planche, 2 seconds",
    "planche_lean 3x30s; advanced_tuck_planche 4x8s; straddle_planche 2s",
)
say("3x5 dips +20kg, third one was ugly, call it rpe 9.5", "dip 3x5 +20 last@9.5")
say("Pull ups 4x3 +27.5 (3 RIR, 2 RIR, 2 RIR, 1 RIR)", "pull_up 3 +27.5 @7; pull_up 2x3 +27.5 @8; pull_up 3 +27.5 @9")
say("ring pull-ups 3x5 +5, rpe 7, 8, 9", "ring_pull_up 5 +5 @7; ring_pull_up 5 +5 @8; ring_pull_up 5 +5 @9")
say("pull up ladder at bodyweight: 1, 2, 3, 4, 5, done", "pull_up 1,2,3,4,5")
say("one leg front lever 3x6s each leg. wrist curls 3x25 with 6kg", "one_leg_front_lever 3x6s LR; wrist_curl 3x25 +6")
say(
    "muscle-ups: 4 singles, then a double, then failed the next one completely",
    "muscle_up 4x1; muscle_up 2; muscle_up 0 fail",
)
say("Chins 5x3 +20. Tried a triple at 30, got 2, third one stuck at the nose", "chin_up 5x3 +20; chin_up 2 +30 fail")
say(
    "hand on shoulder one-armers: R 2 L 1, R 1 L 1",
    "one_arm_hand_on_shoulder 2 R; one_arm_hand_on_shoulder 1 L; "
    "one_arm_hand_on_shoulder 1 R; one_arm_hand_on_shoulder 1 L",
)
say("felt flat but whatever, 6x3 pull ups +15, easy on paper, hard in real life", "pull_up 6x3 +15")
say(
    "ext rotations with the mini band 2x20 per arm, biceps curls 3x10 @ 11kg",
    "external_rotation 2x20 LR; biceps_curl 3x10 +11",
)
say(
    "neutral grip 4x6 pull-ups bw @7, dips 4x8 bw @8",
    "neutral_grip_pull_up 4x6 last@7; dip 4x8 last@8",
)
say("archer pull-ups 3x 4/3 (L/R), the right is catching up", "archer_pull_up 3x4/3 LR")
say("no added weight, pull-ups 10/9/8, the last one with 0 RIR", "pull_up 10,9,8 last@10")
say("Short one: chins 3x8, the last set AMRAP, got 11 there", "chin_up 8,8,11")

say("pull-ups in the 10kg vest 4x6, @7 @7 @8 @8.5", "pull_up 2x6 +10 @7; pull_up 6 +10 @8; pull_up 6 +10 @8.5")
say("1 chin-up with 50kg. That's it, that's the session", "chin_up 1 +50", body=86)
say("weighted pull up at bw+24, three doubles", "pull_up 3x2 +24")
say("pull ups 5,5,5 @ 15kg, then 4 @ 20kg (missed the 5th)", "pull_up 3x5 +15; pull_up 4 +20 fail")
say(
    "one arm with a 2.5 kg counterweight on the pulley: left 2, right the same",
    "one_arm_counterweight 2 LR -2.5",
)
say("left arm only today, one-arm hang 3x20s", "one_arm_hang 3x20s L")
say("Dips - 4 sets, 8 reps, 16 kg kettlebell on the belt.", "dip 4x8 +16", lang=None, body=None)
say(
    "FL: tuck 3x15s, adv tuck 3x8s, one try at straddle for 2s",
    "tuck_front_lever 3x15s; advanced_tuck_front_lever 3x8s; straddle_front_lever 2s",
)
say("25 minutes only, push-ups 5x15 and ring rows 5x10", "push_up 5x15; ring_row 5x10", mins=25)
say("RPE 8 session. pull-ups 4x5 +12.5, dips 4x6 +15", "pull_up 4x5 +12.5; dip 4x6 +15", srpe=8)
say("chins 3x5 +15, 2 RIR on every set", "chin_up 3x5 +15 @8")
say("my ears popped on the plane and I slept on a floor. dips 3x6 +10 regardless", "dip 3x6 +10")
say(
    "Tues log\nscap pulls 2x10\nchins 15kg 5/5/5/4\ndips 20kg 6/6/5\nBW 75.1, sleep 6h",
    "scapular_pull_up 2x10; chin_up 5,5,5,4 +15; dip 6,6,5 +20",
    bw=75.1,
    body=75,
    sleep=6,
    at="2027-03-04 07:15",
    tz="Europe/Dublin",
    on="2027-03-02",
)

# What must be asked
say("dips 15", "dip ? +?", ask="reps: 15", does="report")
say("hit my fives at 15 today", "", "report", ask="movement: hit my fives at 15", sets_or=("_ 5 +15",))
say("chins 4x4 +175 🦍", "chin_up 4x4 +?", ask="load_kg: +175")
say("half dips 3x8", "dip 3x8 rom?", ask="rom: half dips")
say("partial pull-ups 4x3 +30", "pull_up 4x3 +30 rom?", ask="rom: partial pull-ups")
say(
    "chins 3x6 @9",
    "chin_up 3x6 +?",
    ask="load_kg: @9",
    sets_or=("chin_up 3x6 +? last@9", "chin_up 3x6", "chin_up 3x6 last@9", ""),
)
say(
    "ring dips 5x5 @ 7",
    "ring_dip 5x5 +?",
    ask="load_kg: @ 7",
    sets_or=("ring_dip 5x5 +? last@7", "ring_dip 5x5", "ring_dip 5x5 last@7", ""),
)
say("one arm hangs: good side 20s, bad side 14s", "one_arm_hang 20s,14s", ask="side: good side 20s, bad side 14s")
say(
    "muscle-ups 5x1 @9",
    "muscle_up 5x1 +?",
    ask="load_kg: @9",
    sets_or=("muscle_up 5x1 +? last@9", "muscle_up 5x1", "muscle_up 5x1 last@9", ""),
)
say(
    "never logged this one from a couple of weeks ago: chins 3x5 +10",
    "chin_up 3x5 +10",
    ask="performed_on: a couple of weeks ago",
    on=None,
)
say("dips 4x6, 10 12.5 15", "dip 4x6 +?", ask="load_kg: 10 12.5 15", sets_or=("",))
say("scale said 7.15 this morning", "", "bodyweight", ask="bodyweight_kg: 7.15")
say("knee 14 out of 10 lol", pain="knee - -", ask="score: 14 out of 10")
say("archers 3x3 each arm", "_ 3x3 LR", ask="movement: archers", sets_or=("",))
say("planche 5x10s, wobbly", "_ 5x10s", ask="movement: planche", sets_or=("",))
say("front lever 6s 6s 5s", "_ 6s,6s,5s", ask="movement: front lever", sets_or=("",))
say("3 or 4 sets of pull ups, 5 each, +15", "", "report", ask="sets: 3 or 4 sets")
say("chins +10, one set, 7 or 8 reps", "chin_up ? +10", ask="reps: 7 or 8 reps")
say("repeat of Monday's session, start to finish", "", "report", ask="sets: repeat of Monday's session", on_or=(None,))
say("dips 3x8 +15, efforts were between 7 and 9", "dip 3x8 +15", ask="rpe: between 7 and 9")
say("pull ups 4x4 with 20 or 22.5, can't remember", "pull_up 4x4 +?", ask="load_kg: 20 or 22.5")
say("rings, 3x8", "_ 3x8", ask="movement: rings", sets_or=("",))
say("as planned ✅", "", "report", ask="sets: as planned")

# With the day's plan
say("All done", "scapular_pull_up 2x10; pull_up 4x4 +20; face_pull 3x15 +18", today=DAY)
say(
    "finished everything as written, last pull-up set was a 9",
    "scapular_pull_up 2x10; pull_up 4x4 +20 last@9; face_pull 3x15 +18",
    today=DAY,
)
say("done, 40 mins, overall 6", "pull_up 4x6 +10; dip 3x8 +12.5", today=TWO, srpe=6, mins=40)
say("as prescribed except the dips, skipped those", "pull_up 4x6 +10", today=TWO)
say("Same but with 20 instead of 17.5", "pull_up 5x3 +20", today=MAIN)
say("4 of the 5 sets, then a boot camp took over the bar", "pull_up 4x3 +17.5", today=MAIN)
say("5 5 5 4", "chin_up 5,5,5,4 +12.5", today=CHIN)
say("everything as planned but one rep short on the last two sets", "chin_up 5,5,4,4 +12.5", today=CHIN)
say("fives done at 15", "chin_up 4x5 +15", today=CHIN)
say("left 2 and 2, right 2 and 1", "one_arm_hand_on_biceps 2 LR; one_arm_hand_on_biceps 2/1 LR", today=BICEPS)
say("holds were 12, 12, 11, 9", "tuck_front_lever 12s,12s,11s,9s", today=HOLD)
say("warm-up and main lift only, no time for the face pulls", "scapular_pull_up 2x10; pull_up 4x4 +20", today=DAY)
say("All of it, 2.5 heavier on the pull-ups", "pull_up 4x6 +12.5; dip 3x8 +12.5", today=TWO)
say("4x5 @8", "chin_up 4x5 +12.5 last@8", today=CHIN)
say("archers 2/2, 2/2, then pull ups 4x4 at 25", "archer_ring_shoulder 2x2 LR; pull_up 4x4 +25", today=ARCH)
say("archers as written. pull ups only 3 sets and 22.5", "archer_ring_shoulder 2x2 LR; pull_up 3x4 +22.5", today=ARCH)
say("done, one rep in reserve on the last set", "chin_up 4x5 +12.5 last@9", today=CHIN)
say("all sets @8, otherwise nothing to add", "chin_up 4x5 +12.5 @8", today=CHIN)
say(
    "on the third set I missed the last rep, others went fine",
    "pull_up 2x3 +17.5; pull_up 2 +17.5 fail; pull_up 2x3 +17.5",
    today=MAIN,
)
say("swapped the pull-ups for chins, same weight and reps", "chin_up 5x3 +17.5", today=MAIN)
say("Done, but 5 lb less on every set", "pull_up 4x4 +45lb", today=POUNDS, unit="lb", body=80)
say("dropped the last set, rest ok", "chin_up 3x5 +12.5", today=CHIN)
say("only did the warm-up, then the fire alarm went off", "scapular_pull_up 2x10", today=DAY)
say("one extra set of dips, rest to the letter", "pull_up 4x6 +10; dip 4x8 +12.5", today=TWO)
say("Everything at bodyweight, belt was in the other bag", "pull_up 4x6; dip 3x8", today=TWO, maybe="equipment")
say("done ✅ elbow 2/10 after, left inside", "pull_up 5x3 +17.5", today=MAIN, pain="elbow_inner L 2 after")
say("6 on the first set, then 5s like you said", "chin_up 6,5,5,5 +12.5", today=CHIN)
say(
    "crossed it off a day early: did today's stuff yesterday, complete",
    "tuck_front_lever 4x12s",
    at="2027-04-14 09:10",
    tz="America/Toronto",
    today=HOLD,
    on="2027-04-13",
)
say(
    "not happening today, work is on fire",
    "",
    "missed",
    today=MAIN,
    at="2027-03-04 18:05",
    tz="Europe/London",
    dates="2027-03-04",
)
say("3x5 at 17.5 and that's me", "pull_up 5x3 +17.5", today=MAIN)

# Pain and warning signs
say(
    "something popped in my left forearm on the last pull and the hand's gone weak",
    flags="pop sudden_weakness",
    pain="forearm L - during; hand L -",
    pain_or=(
        "forearm L -; hand L -",
        "forearm L - during; hand - -",
        "forearm L -; hand - -",
        "forearm L - during; hand L - during",
        "forearm L - during",
        "forearm L -",
    ),
    does_or=("report pain",),
)
say("R wrist swollen since last night, 4/10", pain="wrist R 4", flags="swelling")
say(
    "big purple bruise on the inside of my right elbow, no idea from what",
    pain="elbow_inner R -",
    flags="bruising",
    pain_or=("elbow R -",),
)
say("left pinky and ring finger tingling while I hang, 2/10", pain="hand L 2 during", flags="numbness")
say(
    "couldn't sleep because of my left shoulder, it aches when I lie still. 5/10",
    flags="night_pain",
    pain="shoulder L 5 rest",
)
say(
    "tight feeling across the chest during the last set of dips, hurts to breathe in",
    flags="chest_pain",
    pain="chest - - during",
    pain_or=("chest - -",),
    flags_or=("chest_pain breathless",),
    does_or=("report pain",),
)
say("pull ups 3x3 +20 then I nearly fainted, everything went black for a second", "pull_up 3x3 +20", flags="dizziness")
say("right elbow locks when I try to straighten it, 3/10", pain="elbow R 3", flags="locking")
say(
    "temperature of 38.9, staying in bed today",
    "",
    "ill",
    flags="fever",
    at="2027-02-17 08:12",
    tz="Europe/London",
    dates="2027-02-17",
    dates_or=("2027-02-17..",),
    maybe="missed",
)
say("outer elbow left 2/10 after, no bruise, nothing swollen", pain="elbow_outer L 2 after")
say("L shoulder 1, R shoulder 3", pain="shoulder L 1; shoulder R 3")
say("both wrists 2/10 after the planche leans", pain="wrist L 2 after; wrist R 2 after")
say(
    "This morning the elbow was 1, during training 3, now 0",
    pain="elbow - 1 morning; elbow - 3 during; elbow - 0",
    pain_or=("elbow - 1 morning; elbow - 3 during; elbow - 0 after",),
)
say("2-3 in the right biceps when pulling", pain="biceps R 3 during")
say("0", pain="- - 0")
say("it's a 4 now", pain="- - 4")
say("Nothing hurts 🎉", pain="- - 0", lang=None)
say("lower back 4/10 after squats 3x8 70kg. No pop, no numbness", "squat 3x8 +70", pain="lower_back - 4 after", body=82)
say(
    "neck 2 this morning, hip pain free",
    pain="neck - 2 morning; hip - 0",
    pain_or=("neck - 2 morning; hip - 0 morning",),
)
say(
    "knee L 3/10 on the pistols, ankle R 1",
    pain="knee L 3 during; ankle R 1",
    pain_or=("knee L 3 during; ankle R 1 during",),
)
say(
    "chins 4x4 +15. inside of the right elbow 3 during, 1 after",
    "chin_up 4x4 +15",
    pain="elbow_inner R 3 during; elbow_inner R 1 after",
)
say("my training partner's elbow is swollen like a balloon, mine is 0", pain="elbow - 0")
say("left calf 3/10 even at rest", pain="other L 3 rest")
say("legs were numb with boredom on the bike. upper back 1/10", pain="upper_back - 1")
say(
    "forearm L 2 while gripping, R 2 as well",
    pain="forearm L 2 during; forearm R 2 during",
    pain_or=("forearm L 2 during; forearm R 2",),
)

say("my right elbow is a bit cranky", pain="elbow R -", ask_or="score: a bit cranky")
say("tore a finger pulley in 2019 and I'm always scared of another pop. pull-ups 3x3 +10 went fine", "pull_up 3x3 +10")

# Everything else they want
say("What have I got today?", "", "plan_today", at="2027-02-17 07:02", tz="Europe/London", dates_or=("2027-02-17",))
say("send me the whole week please", "", "plan_week")
say("why am I on 15 again when 17.5 went fine?", "", "why")
say("am I any closer to the one arm? how has my pull-up max moved since January", "", "progress")
say(
    "could Friday's session go on Sunday instead?",
    "",
    "move",
    at="2027-03-02 12:00",
    tz="Europe/Dublin",
    dates="2027-03-05..2027-03-07",
)
say(
    "swap tomorrow for Thursday, dentist",
    "",
    "move",
    at="2027-04-13 19:20",
    tz="America/Toronto",
    dates="2027-04-14..2027-04-15",
)
say(
    "Skipped Saturday, wedding. 3 slices of cake, zero pull-ups",
    "",
    "missed",
    at="2027-05-24 09:00",
    tz="Australia/Sydney",
    dates="2027-05-22",
)
say(
    "away from the 3rd to the 10th of July, hotel gym has a cable stack and dumbbells up to 20",
    "",
    "away equipment",
    at="2027-06-28 18:30",
    tz="Europe/London",
    dates="2027-07-03..2027-07-10",
)
say(
    "off camping tomorrow, back on the 14th, nothing to hang from",
    "",
    "away equipment",
    at="2027-06-08 12:00",
    tz="America/Los_Angeles",
    dates="2027-06-09..2027-06-13",
)
say("head cold since Sunday", "", "ill", at="2027-09-30 18:00", tz="Africa/Johannesburg", dates="2027-09-26..")
say(
    "stomach bug, no training Wednesday or Thursday",
    "",
    "ill",
    at="2027-02-16 21:00",
    tz="Europe/London",
    dates="2027-02-17..2027-02-18",
    does_or=("ill missed",),
)
say("got rings at home now! and the gym took the pulley away", "", "equipment")
say("oops, the dips were 12.5 not 15", "", fix=("load_kg", 15, 12.5, "dip", None, "all"))
say("I wrote 3 reps for the last set, it was 2", "", fix=("reps", 3, 2, None, None, "last"))
say("typo, left side was 2 reps and not 3", "", fix=("reps", 3, 2, None, "left", "all"))
say("second set was rpe 9, not 8", "", fix=("rpe", 8, 9, None, None, 2))
say(
    "Correction for Monday: chins were 4x5 +10, not +12.5",
    "chin_up 4x5 +10",
    at="2027-03-04 08:00",
    tz="Europe/Dublin",
    fix=("load_kg", 12.5, 10, "chin_up", None, "all"),
    on="2027-03-01",
    does_or=("report correction",),
)
say("delete what I just sent please", "", "undo")
say("tell coach the clip is uploaded, and can he look at my left scapula", "", "for_coach")
say(
    "moving house, pause the plan until June 20",
    "",
    "pause",
    at="2027-06-08 10:00",
    tz="America/Los_Angeles",
    dates="2027-06-08..2027-06-20",
)
say("moved in, ready to go again", "", "resume")
say("unsubscribe me, I'm done with this", "", "stop")
say("how does this work, what do I type after a session?", "", "help")
say("thanks, you're the best robot I know 😄", "", "smalltalk")
say("lkj 4 ;; zz", "", "unknown", does_or=("smalltalk",), maybe_unread=("4",), ask_or="intents: lkj 4 ;; zz")
say("weighed 172 today, slept 6 hours", bw=172 * KG_PER_LB, sleep=6, unit="lb", body=78.5)
say("slept 5 and a half hours", "", "report", sleep=5.5, on_or=(None,))
say("what's left this week? and why no dips all of a sudden", "", "plan_week why")

say(
    "in Lisbon until Friday, there is no bar anywhere",
    "",
    "away equipment",
    at="2027-06-08 12:00",
    tz="Europe/Lisbon",
    dates="2027-06-08..2027-06-11",
    dates_or=("..2027-06-11",),
)
say(
    "my daughter is running a fever so no training for me tomorrow",
    "",
    "missed",
    at="2027-04-13 20:10",
    tz="America/Toronto",
    dates="2027-04-14",
)

# Days and hours
say("home at last. dips 4x5 +20", "dip 4x5 +20", at="2027-05-22 01:25", tz="Australia/Sydney", on="2027-05-21")
say(
    "yesterday: chins 3x6 +10, bw 80.9 before",
    "chin_up 3x6 +10",
    bw=80.9,
    body=81,
    at="2027-02-17 09:00",
    tz="Europe/London",
    on="2027-02-16",
)
say(
    "on the 28th I did pull-ups 4x4 +15, only telling you now",
    "pull_up 4x4 +15",
    at="2027-03-04 07:15",
    tz="Europe/Dublin",
    on="2027-02-28",
)
say(
    "Tue: chins 4x5 +10\nThu: dips 3x8, pull-ups 3x5",
    "chin_up 4x5 +10 on=2027-02-16; dip 3x8 on=2027-02-18; pull_up 3x5 on=2027-02-18",
    at="2027-02-19 08:00",
    tz="Europe/London",
)
say(
    "Sunday I got 5x2 muscle-ups done before brunch",
    "muscle_up 5x2",
    at="2027-04-13 12:20",
    tz="America/Toronto",
    on="2027-04-11",
)
say(
    "5am club: ring rows 3x12, push ups 3x15",
    "ring_row 3x12; push_up 3x15",
    at="2027-03-04 05:31",
    tz="Europe/Dublin",
    on="2027-03-04",
)
say(
    "can I do today's session tomorrow?",
    "",
    "move",
    at="2027-02-18 01:40",
    tz="Europe/London",
    dates="2027-02-17..",
    ask="dates: tomorrow",
    dates_or=("",),
)
say(
    "two days ago pull ups 6x2 +25, all rpe 8",
    "pull_up 6x2 +25 @8",
    at="2027-09-30 17:58",
    tz="Africa/Johannesburg",
    on="2027-09-28",
)
