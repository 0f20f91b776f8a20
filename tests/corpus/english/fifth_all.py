"""A fifth look, written blind: notations, plans, pain, signs, days and wishes in the mix of the house's examples."""

from tests.corpus.lines import Theme
from tests.corpus.notation import KG_PER_LB, sets

THEME = Theme("fifth-all", "en")
say = THEME.say

WEDNESDAY = "2027-03-24 19:00"
FULL = "w scapular_pull_up 2x10; m/weighted_pull_up pull_up 4x4 +17.5 @7; a external_rotation 2x15 LR +3"
CHINS = "m chin_up 4x4 +15 @8"
FIVES = "m/weighted_pull_up pull_up 5x3 +22.5 @8"
BOTH = "m/weighted_pull_up pull_up 4x3 +25 @8; a dip 3x8 +10 @8"
PULLEY = "m/one_arm_counterweight one_arm_counterweight 3x2 LR -7.5 @8"
ARCHER = "s/archer_shoulder archer_ring_shoulder 3x2 LR @7"
LEVER = "s/advanced_tuck_front_lever advanced_tuck_front_lever 4x12s @8"

# Work as it is noted down.
say("Weighted chins 6x2 +27.5, bar speed never dropped", "chin_up 6x2 +27.5")
say("Dips: 4 sets of 7 with 15kg hanging off me", "dip 4x7 +15")
say("3×8 ring dips, bw, wobbled like jelly", "ring_dip 3x8")
say("pull-ups 12.5kg: 7/6/6", "pull_up 7,6,6 +12.5")
say(
    "neutral grip pull ups 4@17.5 4@20 2@22.5, then home for dinner",
    "neutral_grip_pull_up 4 +17.5; neutral_grip_pull_up 4 +20; neutral_grip_pull_up 2 +22.5",
)
say("chin ups +30x2x5 sets and that's me done for", "chin_up 5x2 +30")
say("Bar muscle ups 3, 3, 2. Hands are toast", "muscle_up 3,3,2")
say("Pull ups: a heavy double at 40, then 3x5 @ 25kg. RPE 9 on the double.", "pull_up 2 +40 @9; pull_up 3x5 +25")
say("push ups 3x25, pike push ups 3x9, HSPU negatives 4x1", "push_up 3x25; pike_push_up 3x9; handstand_push_up 4x1 ecc")
say("archer pull ups 4x3 each side, bodyweight only", "archer_pull_up 4x3 LR")
say(
    "one arm on the pulley, counterweight 5kg: L 2 R 2, L 2 R 1",
    "one_arm_counterweight LR 2/2 -5; one_arm_counterweight LR 2/1 -5",
)
say(
    "One-arm pulls with the free hand on the biceps, bottom half only: 2x3 per arm",
    "one_arm_hand_on_biceps 2x3 LR lower",
)
say("one arm hang 25s left, 22s right", "one_arm_hang 25s L; one_arm_hang 22s R")
say("Tuck front lever 3x15s, adv tuck FL 10s 9s 8s", "tuck_front_lever 3x15s; advanced_tuck_front_lever 10s,9s,8s")
say("L-sits 4x20s and hollow holds 2 x 45 sec between two phone calls", "l_sit 4x20s; hollow_hold 2x45s")
say("handstand 3x60s against the wall, then 11s freestanding 🤸", "handstand_hold 3x60s; handstand_hold 11s")
say("squats 3x5 @ 100kg, nordics 3x6, pistols 2x6 per leg", "squat 3x5 +100; nordic_curl 3x6; pistol_squat 2x6 LR")
say("split squats 3x10 per leg with a 20kg vest. stairs are cancelled", "split_squat 3x10 LR +20")
say(
    "Lat pulldown 4x10 60kg, face pulls 3x20 15kg, ext rotations 3x12 per arm 3kg",
    "lat_pulldown 4x10 +60; face_pull 3x20 +15; external_rotation 3x12 LR +3",
)
say(
    "Arms: curls 3x10 @ 14kg, hammer curls 2x12 @ 12kg, wrist curls 3x15 10kg",
    "biceps_curl 3x10 +14; hammer_curl 2x12 +12; wrist_curl 3x15 +10",
)
say(
    "band pull-ups 4x5 (band takes 20 kg off), then 2x8 with the fat black band",
    "band_pull_up 4x5 -20; band_pull_up 2x8",
)
say("OAP eccentrics 2x2 per arm, controlled", "one_arm_pull_up 2x2 LR ecc")
say("top half chin-ups 3x3 +35", "chin_up 3x3 +35 upper")
say(
    "Pull-ups 3x3 +17.5 with a pause at the top, then 2x3 +10 pausing in the middle",
    "pull_up 3x3 +17.5 top; pull_up 2x3 +10 middle",
)
say("chin ups 4x4 with 35", "chin_up 4x4 +35lb", unit="lb", body=78)
say("Dips 45#: 8,8,6", "dip 8,8,6 +45lb", body=80)
say("dips 5x5 +50 @8. bw 182.4", "dip 5x5 +50lb last@8", unit="lb", body=82.5, bw=182.4 * KG_PER_LB)
say(
    "Slept 8h, bw 70.9 this morning. Chins 4x5 +15, last @8.5. 50 min.",
    "chin_up 4x5 +15 last@8.5",
    sleep=8,
    bw=70.9,
    mins=50,
)
say(
    "pull-ups 4x4\nring rows 3x15\nHLR 3x12\n\nsession RPE 6, 48 min",
    "pull_up 4x4; ring_row 3x15; hanging_leg_raise 3x12",
    srpe=6,
    mins=48,
)
say(
    "hey so did chin ups four sets of four with fifteen kilos the last one was an eight out of ten and then two sets of"
    " ten push ups",
    "chin_up 4x4 +15 last@8; push_up 2x10",
)
say("pul ups 3x5 +22,5kg, dipps 3x8 +10", "pull_up 3x5 +22.5; dip 3x8 +10")
say("pull-ups 5x2 +32.5, rested 4 min", "pull_up 5x2 +32.5", maybe_unread=("rested 4 min",))
say("Rowed 2k in 7:50, then pull ups 4x6", "pull_up 4x6", unread=("Rowed 2k in 7:50",))
say("deadlifts 3x5 140kg, then dips 3x10", "dip 3x10", unread=("deadlifts 3x5 140kg",), ask_or="movement: deadlifts")
say(
    "chin-ups 4x3 with 25% of my bodyweight",
    "chin_up 4x3 +20",
    body=80,
    also=({"sets": sets("chin_up 4x3 +?"), "ask": [{"about": "load_kg", "span": "25% of my bodyweight"}]},),
)
say("Trained in the shed, 4 degrees, radio on, started 18:40. 15 kg chin-ups, 4x4", "chin_up 4x4 +15")
say(
    "pull up cluster at +30: 2, 2, 2 with 15 s between",
    "pull_up 2 +30; pull_up 2,2 +30 link",
    maybe_unread=("15 s between",),
)
say("dip drop set: 6 @ 25kg, straight into 8 @ 10kg, straight into 12 bw", "dip 6 +25; dip 8 +10 link; dip 12 link")
say("Rest-pause pull ups, bw: 12 + 4 + 3", "pull_up 12; pull_up 4,3 link")
say("Pull-ups at 27.5: got 4, failed the 5th", "pull_up 4 +27.5 fail")
say("One arm chin-up: left 1, right missed", "one_arm_chin_up 1 L; one_arm_chin_up 0 R fail")
say("pull ups 3x6 +10, 3 RIR on all of them", "pull_up 3x6 +10 @7")
say("dips 4x6 +20. could have done two more on the last one", "dip 4x6 +20 last@8")
say("push ups to failure: 52 🥵", "push_up 52 @10")
say("ring pull ups 5,5,5 all rpe 7.5; ring rows 3x12 after", "ring_pull_up 5,5,5 @7.5; ring_row 3x12")
say("tuck planche 5x10s, planche leans 3x30s, last lean rpe 8", "tuck_planche 5x10s; planche_lean 3x30s last@8")
say("back lever 8s, 8s, 10s, rpe 7-8 on the last", "back_lever 8s,8s; back_lever 10s @7.5")
say("full front lever 4 x 2s. shaky but it counts", "full_front_lever 4x2s")
say("one leg front lever 3x6s each leg", "one_leg_front_lever 3x6s LR")
say(
    "negative chin ups 4x3, 5 seconds down each",
    "chin_up 4x3 ecc",
    maybe_unread=("5 seconds down each",),
)
say("Superset: pull ups 3x5 +15 with dips 3x8 +15", "pull_up 3x5 +15; dip 3x8 +15")
say("5 rounds of 5 pull ups, 10 dips and 15 squats, no weight", "pull_up 5x5; dip 5x10; squat 5x15")
say("Ring archers with the ring at elbow height: 3 sets of 5/4", "archer_ring_elbow 3x5/4 LR")
say(
    "archers, straight arm on the ring at shoulder height: 2/2, 2/1",
    "archer_ring_shoulder 2/2 LR; archer_ring_shoulder 2/1 LR",
)
say("ring muscle ups, 5 singles, missed the 6th", "ring_muscle_up 5x1; ring_muscle_up 0 fail")
say("Scap pulls 2x12, dead hang 90s, off to the pub", "scapular_pull_up 2x12; dead_hang 90s")
say("no weight today: pull ups 10, 9, 8, 7. took 25 min", "pull_up 10,9,8,7", mins=25)
say("Chin-ups 4x4 +20, rpe 8. Dips 4x6 +20, rpe 7 on the last set.", "chin_up 4x4 +20 last@8; dip 4x6 +20 last@7")
say("pull ups 4x3 +20. whole session about a 7", "pull_up 4x3 +20", srpe=7)
say("Pull ups 4x3 +22.5. RPE 8", "pull_up 4x3 +22.5 last@8")
say("rows 4x8 60kg, chins 3x6, 9/10 overall, 70 minutes", "row 4x8 +60; chin_up 3x6", srpe=9, mins=70)
say("pull-up top hold 25s, 20s, 15s with +10", "pull_up_top_hold 25s,20s,15s +10")
say("one arm with hand on the opposite shoulder, 3x1 per arm, all rpe 9", "one_arm_hand_on_shoulder 3x1 LR @9")
say("HSPU 5/4/4 last set nothing left", "handstand_push_up 5,4; handstand_push_up 4 @10")
say("straddle planche 3 x 5 sec, adv tuck planche 4 x 9 sec", "straddle_planche 3x5s; advanced_tuck_planche 4x9s")

# What must be asked.
say("chin ups 25", "chin_up ? +?", ask="reps: 25", body=70)
say(
    "dips 4x5 @9",
    "dip 4x5 +?",
    ask="load_kg: @9",
    also=tuple({"sets": sets(s)} for s in ("dip 4x5 +? last@9", "dip 4x5 last@9", "dip 4x5")),
)
say("did the 5s with 15", does="report", ask="movement: did the 5s with 15", also=({"sets": sets("_ 5 +15")},))
say("Pull ups 4x4 +180 💪", "pull_up 4x4 +?", ask="load_kg: +180")
say("half chin-ups 2x8 today", "chin_up 2x8 rom?", ask="rom: half chin-ups")
say(
    "one arm hangs: 30 sec with one hand, 20 sec with the other",
    "one_arm_hang 30s; one_arm_hang 20s",
    ask="side: one hand",
)
say(
    "did chins at some point last week, 4x5 +10, never told you",
    "chin_up 4x5 +10",
    on=None,
    ask="performed_on: last week",
)
say("chins 4x4, 10 12.5 15", "chin_up 4x4 +?", ask="load_kg: 10 12.5 15")
say("weighed in at 7.12 this morning", does="bodyweight", ask="bodyweight_kg: 7.12")
say("shoulder's at 20 today", pain="shoulder - -", ask="score: 20")
say("planche 4x10s", "_ 4x10s", ask="movement: planche")
say("archers 3x3 per side", "_ 3x3 LR", ask="movement: archers")
say("one set of dips at +15, 8 or 9, lost count", "dip ? +15", ask="reps: 8 or 9")
say("chins 4x6 +5, rpe 6-9 across the sets", "chin_up 4x6 +5", ask="rpe: rpe 6-9 across the sets")
say("repeated my last session 👌", does="report", ask="sets: repeated my last session")
say("front lever 12s, 10s", "_ 12s,10s", ask="movement: front lever")
say("pull ups 4x3 +20, last set rpe 11", "pull_up 4x3 +20", ask="rpe: rpe 11")
say("bodyweight 6900 today lol typo maybe", does="bodyweight", ask="bodyweight_kg: 6900")

# Against the day's plan.
say("all done 💥", "scapular_pull_up 2x10; pull_up 4x4 +17.5; external_rotation 2x15 LR +3", today=FULL)
say("Everything as written, last set @9", "chin_up 4x4 +15 last@9", today=CHINS)
say("as prescribed apart from the last set, 2 reps", "pull_up 4x3 +22.5; pull_up 2 +22.5", today=FIVES)
say("did the 3s with 27.5, then my lift home arrived", "pull_up 4x3 +27.5", today=BOTH)
say("4x5 at 15 ✔️", "pull_up 5x4 +15", today="m/weighted_pull_up pull_up 5x4 +15 @8")
say("no time for dips, the rest done. 35 min", "pull_up 4x3 +25", today=BOTH, mins=35)
say("got through 2 of the 4 sets before the fire alarm went off", "chin_up 2x4 +15", today=CHINS)
say("right as planned, left one rep less on every set", "one_arm_counterweight 3x1/2 LR -7.5", today=PULLEY)
say("Done, just 2.5 kg lighter on both exercises", "pull_up 4x3 +22.5; dip 3x8 +7.5", today=BOTH)
say("done, every set @7", "chin_up 4x4 +15 @7", today=CHINS)
say(
    "missed the last rep of set 2, otherwise by the book",
    "chin_up 4 +15; chin_up 3 +15 fail; chin_up 2x4 +15",
    today=CHINS,
)
say("holds done, last two 8s rather than 12s", "advanced_tuck_front_lever 12s,12s,8s,8s", today=LEVER)
say("4, 4, 3, 3", "chin_up 4,4,3,3 +15", today=CHINS)
say("two reps more than planned on each set 😤", "dip 3x8 +15", today="m dip 3x6 +15 @8")
say(
    "did it all, used 30 rather than 25. last one rpe 8",
    "chin_up 3x5 +30lb last@8",
    unit="lb",
    today="m chin_up 3x5 +25lb @8",
)
say(
    "did today's session yesterday evening already, complete",
    "pull_up 5x3 +22.5",
    at="2027-03-24 08:10",
    on="2027-03-23",
    today=FIVES,
)
say(
    "as planned but left only 1 on the last one",
    "archer_ring_shoulder 2x2 LR; archer_ring_shoulder 1/2 LR",
    today=ARCHER,
)
say("archers 2/2, 2/2, 2/1", "archer_ring_shoulder 2x2 LR; archer_ring_shoulder 2/1 LR", today=ARCHER)
say("front lever 12, 10, 10, 9 seconds", "advanced_tuck_front_lever 12s,10s,10s,9s", today=LEVER)
say("pull ups as planned, last set @8.5. skipped the dips", "pull_up 4x3 +25 last@8.5", today=BOTH)
say("first three sets fine, on the 4th only 2 reps", "chin_up 3x4 +15; chin_up 2 +15", today=CHINS)
say("did one set more than planned", "dip 4x5 +20", today="m dip 3x5 +20 @8")
say("as planned with 25 on the last two sets", "pull_up 3x3 +22.5; pull_up 2x3 +25", today=FIVES)
say("warm-up and main lift done, left out the rotations", "scapular_pull_up 2x10; pull_up 4x4 +17.5", today=FULL)
say(
    "all sets done with 20 instead of 22.5, small plates have vanished",
    "pull_up 5x3 +20",
    today=FIVES,
    maybe="equipment",
)
say(
    "all by the plan, session 7/10, right elbow 1/10 after",
    "chin_up 4x4 +15",
    today=CHINS,
    srpe=7,
    pain="elbow R 1 after",
)
say("as planned. what's coming up the rest of this week?", "chin_up 4x4 +15", "plan_week", today=CHINS)

# Pain and warning signs.
say(
    "something popped in my left shoulder on the third dip and it swelled up within the hour",
    pain="shoulder L - during",
    pain_or=("shoulder L -",),
    flags="pop swelling",
    maybe="report",
)
say("Right ankle swollen this morning, 4/10", pain="ankle R 4 morning", flags="swelling")
say(
    "came off the rings and now my pinky sticks out sideways, 6/10",
    pain="hand - 6",
    pain_or=("hand - 6 after", "hand - 6 during"),
    flags="deformity",
)
say("left forearm goes numb during hangs", pain="forearm L - during", flags="numbness")
say(
    "my right arm suddenly had no strength left mid rep. pain 0",
    pain="other R 0 during",
    pain_or=("other R 0", "- R 0", "- - 0", "- - 0 during", "other R -; - - 0", "other R - during; - - 0"),
    flags="sudden_weakness",
)
say("left inner elbow keeps waking me up at night, about a 4", pain="elbow_inner L 4 rest", flags="night_pain")
say(
    "chest pain after training and I was short of breath on the stairs",
    pain="chest - - after",
    flags="chest_pain breathless",
)
say("nearly fainted after the last handstand, very dizzy", flags="dizziness", maybe="report")
say(
    "right knee got locked at the bottom of a pistol, 3/10",
    pain="knee R 3 during",
    pain_or=("knee R 3",),
    flags="locking",
)
say(
    "Chins 3x5 +10. Inner elbow left 2/10 during, no swelling, no bruise",
    "chin_up 3x5 +10",
    pain="elbow_inner L 2 during",
)
say(
    "L shoulder 3, R shoulder 1",
    pain="shoulder L 3; shoulder R 1",
)
say("both knees 2/10 after pistols", pain="knee L 2 after; knee R 2 after")
say("4", pain="- - 4")
say("pain: 0", pain="- - 0")
say("neck 4 when I woke up", pain="neck - 4 morning")
say("biceps right 2-3 during curls", pain="biceps R 3 during")
say("ears popped on the plane, haha. chins 3x4 +10", "chin_up 3x4 +10")
say("My brother heard a pop in his biceps on Sunday, poor guy. Me: dips 3x6 +5, all good", "dip 3x6 +5")
say("scared that elbow might pop one day lol. pull ups 4x4 +5", "pull_up 4x4 +5")
say(
    "temp of 38.4, staying in bed today",
    does="ill",
    flags="fever",
    at=WEDNESDAY,
    dates="2027-03-24",
    dates_or=("2027-03-24..",),
    maybe="missed",
)
say("hip right 1, lower back 0", pain="hip R 1; lower_back - 0")
say("Elbow: 3 in the morning, 1 during, 2 after", pain="elbow - 3 morning; elbow - 1 during; elbow - 2 after")
say("outer elbow left 4/10, even at rest", pain="elbow_outer L 4 rest")
say("pull ups 4x5, pain free", "pull_up 4x5", pain="- - 0", pain_or=("- - 0 during",))
say(
    "stopped after 2 sets of 4 pull ups at +20 because of chest pain",
    "pull_up 2x4 +20",
    pain="chest - -",
    pain_or=("chest - - during",),
    flags="chest_pain",
)
say(
    "left calf 2/10 from running, hand and wrist pain free",
    pain="other L 2; hand - 0; wrist - 0",
    pain_or=("other L 2 during; hand - 0; wrist - 0", "other L 2 after; hand - 0; wrist - 0"),
)

# Wishes, comings and goings.
say("what am I doing today?", does="plan_today", at=WEDNESDAY, dates_or=("2027-03-24",))
say("send me the rest of my week please", does="plan_week")
say("why only 4 sets this time?", does="why")
say("how's my planche coming along?", does="progress")
say("how far am I from the next rung, and why is the load down?", does="progress why")
say("can you swap Friday's session to Sunday?", does="move", at=WEDNESDAY, dates="2027-03-26..2027-03-28")
say(
    "can't today, will do it tomorrow instead",
    does="move",
    maybe="missed",
    at=WEDNESDAY,
    dates="2027-03-24..2027-03-25",
    today=CHINS,
)
say("skipped yesterday, was dead on my feet after a double shift", does="missed", at=WEDNESDAY, dates="2027-03-23")
say(
    "Away from the 3rd to the 10th of April, the hotel only has a pulldown machine",
    does="away equipment",
    at=WEDNESDAY,
    dates="2027-04-03..2027-04-10",
)
say("travelling from the 14th, back on the 20th", does="away", at="2027-04-07 12:00", dates="2027-04-14..2027-04-19")
say("caught a stomach bug, out since Monday", does="ill", at=WEDNESDAY, dates="2027-03-22..")
say("my pull-up bar came off the wall, only rings left for now", does="equipment")
say(
    "sorry, the chins yesterday were 4x3, not 4x4",
    "chin_up 4x3 +?",
    sets_or=("chin_up 4x3",),
    fix=("reps", 4, 3, "chin_up", None, "all"),
    maybe="report",
    at=WEDNESDAY,
    on="2027-03-23",
)
say("that should have been 27.5, not 25", fix=("load_kg", 25, 27.5))
say("my mistake, the last set was rpe 9, not 8", fix=("rpe", 8, 9, None, None, "last"))
say("left was 2 not 3 on the one arm chins", fix=("reps", 3, 2, "one_arm_chin_up", "left", "all"))
say("delete what I just sent, thumbs too fat", does="undo")
say("put my plan on pause until 12 April, moving house", does="pause", at=WEDNESDAY, dates="2027-03-24..2027-04-12")
say("I'm healthy again, let's carry on 🙌", does="resume")
say("unsubscribe me please, I'm done with this", does="stop")
say("how does this work, what do you understand?", does="help")
say("tell coach the new clips are uploaded", does="for_coach")
say("lol the pigeons in the park were judging me again", does="smalltalk")
say("qpwo 44 zz", does="unknown", maybe_unread=("44",), ask_or="intents: qpwo 44 zz")
say("slept 6h30", does="report", sleep=6.5)
say("bw 69.8", bw=69.8)
say("took 1h25 all in, session rpe 8", srpe=8, mins=85)

# Days.
say("only just home, pull-ups 3x4 +15", "pull_up 3x4 +15", at="2027-03-24 01:20", on="2027-03-23")
say("dips 4x8 before dawn", "dip 4x8", at="2027-03-24 04:40", on="2027-03-24")
say("on the 28th: chins 4x6, forgot to write", "chin_up 4x6", at="2027-02-03 10:00", on="2027-01-28")
say(
    "Sat: dips 4x5 +20\nSun: pull ups 4x4 +20", "dip 4x5 +20 on=2027-03-20; pull_up 4x4 +20 on=2027-03-21", at=WEDNESDAY
)
say("Friday's session, sorry I'm late with it: muscle ups 4x2", "muscle_up 4x2", at="2027-03-22 09:00", on="2027-03-19")
say("two days ago chins 3x5 +10", "chin_up 3x5 +10", at=WEDNESDAY, on="2027-03-22")
say(
    "yesterday pull ups 3x3 +30, today dips 3x5 +30",
    "pull_up 3x3 +30 on=2027-03-23; dip 3x5 +30 on=2027-03-24",
    at=WEDNESDAY,
)
say("can't train tomorrow", does="missed", does_or=("away",), at="2027-03-24 01:05", ask="dates: tomorrow")
