"""Sides, holds and several days in one message, other training among the movements, body data beside the sets."""
# ruff: noqa: E501

from tests.corpus.lines import Theme

THEME = Theme("sides_days", "en")
say = THEME.say
THURSDAY = {"at": "2027-03-04 18:00", "tz": "Europe/London"}
TODAY = "s/archer archer_pull_up LR 3x2; m/weighted_pull_up pull_up 5x3 +20 @8; a dip 3x8 +10"

# Sides
say("one arm hang 20s left 25 right x 3", "one_arm_hang L 3x20s; one_arm_hang R 3x25s")
say(
    "pulley 10kg off: 2 left, 2 right, x2. pulley 7.5 off: 1 left, 1 right",
    "one_arm_counterweight LR 2x2 -10; one_arm_counterweight LR 1 -7.5",
)
say("Assisted OAC with pulley: 12.5 off, 3 sets of 2 each arm", "one_arm_counterweight LR 3x2 -12.5")
say("band pull ups, 20 off, 3x5", "band_pull_up 3x5 -20")
say("archers bar 3 3 2 left, 3 3 3 right", "archer_pull_up L 3,3,2; archer_pull_up R 3,3,3")
say("archers on the bar, 3 2 left 3 3 right", "archer_pull_up L 3,2; archer_pull_up R 3,3")
say("one arm hangs 20s 22s 19s left, 25s 24s 26s right", "one_arm_hang L 20s,22s,19s; one_arm_hang R 25s,24s,26s")
say(
    "hello! 3 one arm hangs each arm, 25 sec left arm and 30 sec right arm",
    "one_arm_hang L 3x25s; one_arm_hang R 3x30s",
)
say("archers bar 3 sets each arm, left 3 right 2", "archer_pull_up LR 3x3/2")
say("pistol squat: left leg 5 5 4, right leg 5 5 5, holding 8kg", "pistol_squat L 5,5,4 +8; pistol_squat R 5,5,5 +8")
say(
    "3x5 archers each side bar, 3x15 face pulls 10kg, stretching",
    "archer_pull_up LR 3x5; face_pull 3x15 +10",
    maybe_unread=("stretching",),
)
say("oap hand on biceps 2x2 each, left first, rpe 8", "one_arm_hand_on_biceps LR 2x2 last@8")
say(
    "L arm: 3 negatives 6s each, R arm: 4 negatives",
    "",
    "report",
    ask="movement: L arm: 3 negatives 6s each, R arm: 4 negatives",
)
say("left 3 right 2", "", "report", ask="movement: left 3 right 2")
say("L 2 2 1 R 2 2 2", "archer_pull_up L 2,2,1; archer_pull_up R 2,2,2", today=TODAY)
say("left arm 2, 2, 2", "archer_pull_up L 2,2,2", today=TODAY)
say("left 3 right 2", "", "report", ask="sets: left 3 right 2", today=TODAY)
# Efforts
say(
    "ring archers elbow height lower half 2x2 each side, left felt like 7, right like 8",
    "archer_ring_elbow LR 2 lower; archer_ring_elbow L 2 lower @7; archer_ring_elbow R 2 lower @8",
)
say(
    "top half only, hand on biceps, 2x2 each, rpe 7 left rpe 8 right",
    "one_arm_hand_on_biceps LR 2 upper; one_arm_hand_on_biceps L 2 upper @7; one_arm_hand_on_biceps R 2 upper @8",
)
say(
    "with pulley, 8kg counterweight: right 3, 3, 2; left 3, 2, 2. rpe 8ish right, 9 left",
    "one_arm_counterweight R 3,3 -8; one_arm_counterweight R 2 -8 @8; one_arm_counterweight L 3,2 -8; one_arm_counterweight L 2 -8 @9",
)
say(
    "Archer pull ups on bar, left 3 3 2, right 4 3 3. rpe about 8 on the last pair",
    "archer_pull_up L 3,3; archer_pull_up L 2 @8; archer_pull_up R 4,3; archer_pull_up R 3 @8",
)
say(
    "did pull ups 5x3 @20kg (8,8,8,8.5,9) and then front lever tuck 4x12s",
    "pull_up 3x3 +20 @8; pull_up 3 +20 @8.5; pull_up 3 +20 @9; tuck_front_lever 4x12s",
)
say(
    "Warm up 2x5 bw pull ups, main 4x4 at 22.5kg rpe 7 8 8 9, accessories dips 3x10",
    "pull_up 2x5; pull_up 4 +22.5 @7; pull_up 2x4 +22.5 @8; pull_up 4 +22.5 @9; dip 3x10",
)
# Holds
say("front lever adv tuck 4 holds of 8 sec, last one maybe 6", "advanced_tuck_front_lever 8s,8s,8s,6s")
say("pull up hold at the top 3 x 20 sec with 5kg", "pull_up_top_hold 3x20s +5")
say("Did 3 sets of 4 with the 16 kg kettlebell hanging", "_ 3x4 +16", ask="movement: 3 sets of 4")
say(
    "hollow 3x40s, arch hold 3x30s, l-sit 5x12s on parallettes",
    "hollow_hold 3x40s; l_sit 5x12s",
    unread=("arch hold 3x30s",),
)
# Other training
say("strict press 40kg 5x5, pull ups 5x5 15kg", "pull_up 5x5 +15", unread=("strict press 40kg 5x5",))
say(
    "pull ups 6 6 5 rpe 9. pushed sled 4x20m with 60kg. dips 10 9 9",
    "pull_up 6,6; pull_up 5 @9; dip 10,9,9",
    unread=("pushed sled 4x20m with 60kg",),
)
say(
    "one arm rows 24kg 3x10 each, one arm kb press 16kg 3x8 each",
    "row LR 3x10 +24",
    unread=("one arm kb press 16kg 3x8 each",),
)
say("4x3 60 kg, then chins 3x5", "_ 4x3 +60; chin_up 3x5", ask="movement: 4x3 60 kg")
say(
    "split squats 3x8 each leg with 2x12kg, leg raises 3x10",
    "split_squat LR 3x8 +12; hanging_leg_raise 3x10",
    why="dumbbells by the figure stated",
)
say("pull ups 3x8 with 2x10kg", "pull_up 3x8 +?", ask="load_kg: 2x10kg", why="two plates, or a pair told by its figure")
say("pull-up negatives with 10 sec descent 5x1, band pull-ups green 3x5", "pull_up 5x1 ecc; band_pull_up 3x5")
say(
    "muscle up attempts: got 2 then failed 3 times",
    "muscle_up 2; muscle_up 3x0 fail",
    sets_or=("muscle_up 2x1; muscle_up 3x0 fail",),
    ask_or="sets: got 2",
)
# Days
say(
    "5x3 yesterday with 20 and today 4x8 dips",
    "_ 5x3 +20 on=2027-03-03; dip 4x8 on=2027-03-04",
    ask="movement: 5x3",
    **THURSDAY,
)
say(
    "yesterday nothing, monday 5x3 at 20, saturday 4x4 at 17.5",
    "_ 5x3 +20 on=2027-03-01; _ 4x4 +17.5 on=2027-02-27",
    ask="movement: 5x3 at 20, saturday 4x4",
    **THURSDAY,
)
say(
    "Did Monday's session: 5x3 at 22.5. Did Wednesday's: 4x6 at 12.5. All pull ups.",
    "pull_up 5x3 +22.5 on=2027-03-01; pull_up 4x6 +12.5 on=2027-03-03",
    **THURSDAY,
)
say(
    "week recap: mon 5x3 pull ups +22.5 @8; wed 4x6 pull ups +12.5 @7; sat hiking",
    "pull_up 5x3 +22.5 last@8 on=2027-03-01; pull_up 4x6 +12.5 last@7 on=2027-03-03",
    maybe_unread=("sat hiking",),
    **THURSDAY,
)
say("today nothing but yesterday I did 4 x 5 chin-ups with 12 kg", "chin_up 4x5 +12", on="2027-03-03", **THURSDAY)
say(
    "pull ups 5x3 on tuesday, wednesday off, thursday nothing",
    "pull_up 5x3",
    on="2027-03-02",
    maybe="missed",
    **THURSDAY,
)
say("did 5x3 pull-ups monday. rested tuesday and wednesday.", "pull_up 5x3", on="2027-03-01", **THURSDAY)
# Body data
say("front lever tuck 3x12s. done in 48 mins", "tuck_front_lever 3x12s", mins=48)
say("pull ups 4x5 20kg felt light, sleep 8h 15", "pull_up 4x5 +20", sleep=8.25)
# Sides told in turn
say(
    "one arm hangs 3 rounds: 20s right, 15s left, rest 90s",
    "one_arm_hang R 3x20s; one_arm_hang L 3x15s",
    maybe_unread=("rest 90s",),
)
say(
    "OAP negative: right 6 sec, left 4 sec, two of each",
    "one_arm_pull_up RL 2x1 ecc",
    why="the seconds of a lowering have no field",
)
say(
    "left side pistol 5, right side pistol 6, then 5 and 5, then 4 and 5",
    "pistol_squat LR 5/6; pistol_squat LR 5; pistol_squat LR 4/5",
)
say(
    "one arm hang from the ring, right 12 secs then 10, left 10 secs then 8",
    "one_arm_hang R 12s,10s; one_arm_hang L 10s,8s",
)
say("hand on biceps, 3 each side, lower half, x2", "one_arm_hand_on_biceps LR 2x3 lower")
say(
    "ring archers shoulder height: 2 left 3 right first set, 2 left 2 right second set",
    "archer_ring_shoulder LR 2/3; archer_ring_shoulder LR 2",
)
say("archers bar: 3 sets left 2 reps, 3 sets right 2 reps", "archer_pull_up LR 3x2")
say("weighted one arm hang: 5kg 15s each, 10kg 8s each", "one_arm_hang LR 15s +5; one_arm_hang LR 8s +10")
say(
    "one arm pull ups with a band 3x2 each side",
    "_ LR 3x2",
    ask="movement: one arm pull ups with a band",
    why="no free one-arm pull-up",
)
# Movements
say(
    "wide pull ups 8 8 7, neutral grip 7 7 6, chin ups 6 6 5",
    "pull_up 8,8,7; neutral_grip_pull_up 7,7,6; chin_up 6,6,5",
)
say("did 5 sets: 5 pull ups, 10 dips, 15 squats, 24 minutes", "pull_up 5x5; dip 5x10; squat 5x15", mins=24)
say("3 sets each: pull ups 6, dips 8, leg raises 10", "pull_up 3x6; dip 3x8; hanging_leg_raise 3x10")
say("3xpull ups 8, 3xdips 10", "pull_up 3x8; dip 3x10")
say("15kg: 5 5 5 5. bw: 10 8 7. pull ups", "pull_up 4x5 +15; pull_up 10,8,7")
say("did 20 pull ups total today (4 sets) with 10kg", "pull_up ? +10", ask="sets: 4 sets")
say("mu 5 singles, ring dips 3x5, pull-ups 30 total in sets of 6", "muscle_up 5x1; ring_dip 3x5; pull_up 5x6")
say("15 min row erg, then weighted pull ups 3x3 30kg and that's it", "pull_up 3x3 +30", unread=("15 min row erg",))
say("5k row in 21 min then 4x8 ring rows and 4x10 push ups", "ring_row 4x8; push_up 4x10", unread=("5k row in 21 min",))
say(
    "10x1 muscle-up emom, 3x12 ring rows, then 15 minutes handstand practice",
    "muscle_up 10x1; ring_row 3x12",
    unread=("15 minutes handstand practice",),
)
say("handstands 15 min, dips 3x8", "handstand_hold ?; dip 3x8", ask="hold_s: handstands 15 min")
say(
    "back lever tuck 12 s x 4; skin the cats 4x3; german hang 3x20s",
    "back_lever 4x12s",
    unread=("skin the cats 4x3", "german hang 3x20s"),
)
say("hs wall 3x45s, freestanding 10s 14s 8s", "handstand_hold 3x45s; handstand_hold 10s,14s,8s")
# Days named together
say(
    "mon/wed/fri: 5x5 pull ups +15 each day",
    "pull_up 5x5 +15 on=2027-02-26; pull_up 5x5 +15 on=2027-03-01; pull_up 5x5 +15 on=2027-03-03",
    **THURSDAY,
)
say(
    "Monday and Wednesday 5x3 pull ups with 20kg, today dips 3x8",
    "pull_up 5x3 +20 on=2027-03-01; pull_up 5x3 +20 on=2027-03-03; dip 3x8 on=2027-03-04",
    **THURSDAY,
)
say(
    "did pull ups 3x8 and dips 3x10 on monday and tuesday",
    "pull_up 3x8; dip 3x10",
    on=None,
    ask="performed_on: monday and tuesday",
    **THURSDAY,
)
say("rested monday and tuesday, pull ups 5x3", "pull_up 5x3", **THURSDAY)
# Sides, efforts and lowering
say(
    "counterweight one arm: 15kg off x 3, 12.5 off x 2, 10 off x 1 each arm",
    "one_arm_counterweight LR 3 -15; one_arm_counterweight LR 2 -12.5; one_arm_counterweight LR 1 -10",
)
say(
    "did 3 OAC negatives L (5s,5s,4s) and 3 R (6s,6s,6s)",
    "one_arm_chin_up LR 3 ecc",
    sets_or=("one_arm_chin_up LR 3x1 ecc",),
)
say("5x3 pull ups (20kg), last set to failure got 2", "pull_up 4x3 +20; pull_up 2 +20 @10")
say(
    "elbow height ring archers, 3 sets of 2, left rpe 7.5, right rpe 6.5",
    "archer_ring_elbow LR 2x2; archer_ring_elbow L 2 @7.5; archer_ring_elbow R 2 @6.5",
)
say(
    "3 sets of 1 each arm lower half, 2 sets of 1 each arm top half, hand on biceps",
    "one_arm_hand_on_biceps LR 3x1 lower; one_arm_hand_on_biceps LR 2x1 upper",
)
say(
    "right arm first. 3, 3, 2 on the right and 2, 2, 2 on the left, archers bar",
    "archer_pull_up R 3,3,2; archer_pull_up L 2,2,2",
)
say(
    "Workout: 3 sets archer pull ups bar (3 left, 3 right), 3 sets dips (8 reps, +10kg)",
    "archer_pull_up LR 3x3; dip 3x8 +10",
)
say("45s hang then 45s rest x5", "dead_hang 5x45s", maybe_unread=("45s rest",))
say(
    "Yesterday's session (forgot to send): chin 4x6 +10, pike push-ups 3x8. Today's: row 3x10 32kg, hang 2x45s",
    "chin_up 4x6 +10 on=2027-03-03; pike_push_up 3x8 on=2027-03-03; row 3x10 +32 on=2027-03-04; dead_hang 2x45s on=2027-03-04",
    **THURSDAY,
)
say(
    "on Sunday I managed 3 sets of 5 and on Tuesday 4 sets of 5, pull ups",
    "pull_up 3x5 on=2027-02-28; pull_up 4x5 on=2027-03-02",
    **THURSDAY,
)
say(
    "bench then 5x3 chins with 22.5, 3x8 dips no weight, cardio 20 min",
    "chin_up 5x3 +22.5; dip 3x8",
    unread=("cardio 20 min",),
    maybe_unread=("bench",),
)
# Headings, body data, what is of which
say("Todays training pull ups 5x4 15kg, dips 5x8, bw 70.9", "pull_up 5x4 +15; dip 5x8", bw=70.9)
say("slept 7:30, 71.9kg, chin 4x4 20kg", "chin_up 4x4 +20", bw=71.9, sleep=7.5, why="a weight that no plates make")
say(
    "Then finished w/ 2x60s dead hangs, 2x25s one arm each side. First part: 4x4 weighted pull ups 22.5",
    "dead_hang 2x60s; one_arm_hang LR 2x25s; pull_up 4x4 +22.5",
)
say("3 min handstand total, 5x20s l-sit", "l_sit 5x20s", ask="sets: 3 min")
say(
    "archers bar, 3 each side, 2 sets. rpe left 8 right 7",
    "archer_pull_up LR 3; archer_pull_up L 3 @8; archer_pull_up R 3 @7",
)
say("2 pulls with left arm on the pulley (10 off) and 3 with right, 3 rounds", "one_arm_counterweight LR 3x2/3 -10")
say("3x12 face pulls 3x12 curls 8kg 3x12 hammer 10kg", "face_pull 3x12; biceps_curl 3x12 +8; hammer_curl 3x12 +10")
say(
    "Chest to bar 5x5 @ BW, rest 2:00. Dips 5x5 @ 20kg, rest 2:00",
    "pull_up 5x5; dip 5x5 +20",
    maybe_unread=("rest 2:00",),
)
say(
    "did my one arm work: 2 singles left, 3 singles right, pulley 5kg",
    "one_arm_counterweight L 2x1 -5; one_arm_counterweight R 3x1 -5",
)
say("left arm 4 reps right arm 5 reps on archers bar, second set 4 and 4", "archer_pull_up LR 4/5; archer_pull_up LR 4")
say(
    "Pulls 5x5. Squats 5x5 80kg. Bench 5x5 70kg. All RPE 8",
    "pull_up 5x5 @8; squat 5x5 +80 @8",
    unread=("Bench 5x5 70kg",),
)
say(
    "RPE 8 pull ups 4x5 +17.5, RPE 7 dips 4x8 +10",
    "pull_up 4x5 +17.5; dip 4x8 +10",
    ask="rpe: RPE 8",
    why="of which set each is, is not said",
)
say(
    "ring support hold 3x20s, ring dips 3x5, RTO push ups 3x8",
    "ring_dip 3x5; push_up 3x8",
    unread=("ring support hold 3x20s",),
)
say("hanging leg raises 12/12/10, L-sit hang 3x12s", "hanging_leg_raise 12,12,10; l_sit 3x12s")
say("two-minute hang attempt: got 1:48", "dead_hang 108s", sets_or=("dead_hang 108s fail",))
say("straddle planche 3 tries 4s 3s 3s, adv tuck 3x10s", "straddle_planche 4s,3s,3s; advanced_tuck_planche 3x10s")
say("1-arm DB row: 30kg x 8/8, 30kg x 8/8, 32kg x 6/6", "row LR 2x8 +30; row LR 6 +32")
say("90 deg hold 3x10s, chin over bar 3x10s", "pull_up_top_hold 3x10s", unread=("90 deg hold 3x10s",))
say("8 rounds 20s on 10s off hollow hold", "hollow_hold 8x20s")
say("3x5 muscle-ups, 3x8 dips, total time 40", "muscle_up 3x5; dip 3x8", mins=40)
say("3 supersets: 8 chin ups + 12 dips, 10kg vest for both", "chin_up 3x8 +10; dip 3x12 +10")
say(
    "inverted hang 3x20s, german hang 2x15s, tuck bl 3x10s",
    "back_lever 3x10s",
    unread=("inverted hang 3x20s", "german hang 2x15s"),
)
