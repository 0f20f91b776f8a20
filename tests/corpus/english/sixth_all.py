"""A sixth look, written blind: numbers that are not what they look like, far negations, long talk, all subjects."""

from tests.corpus.lines import Theme, asks
from tests.corpus.notation import KG_PER_LB, sets

THEME = Theme("sixth-all", "en")
say = THEME.say

WEDNESDAY = "2027-03-24 19:00"
FULL = "w scapular_pull_up 2x8; m/weighted_pull_up pull_up 5x3 +20 @8; a face_pull 3x15 +15"
BOTH = "m/weighted_pull_up pull_up 4x4 +22.5 @8; a dip 3x6 +12.5 @8"
CHINS = "m chin_up 4x5 +10 @7"
PULLS = "m/weighted_pull_up pull_up 4x4 +15 @8"
ARCHER = "s/archer_elbow_full archer_ring_elbow 2x2 LR @7; m/weighted_pull_up pull_up 4x4 +20 @7"
PLANCHE = "s/tuck_planche tuck_planche 5x10s @8; a dip 3x8 +10"
POUNDS = "m/weighted_pull_up pull_up 4x3 +45lb @8"
SHOULDER = "s/hand_on_shoulder one_arm_hand_on_shoulder 2x1 LR @8"


def other_movement(field: str, was: object, now: object, movement: str | None, which: str = "all") -> dict[str, object]:
    """The same correction with another movement named, as good where the message leaves it open."""
    return {
        "correction": {"field": field, "was": was, "now": now, "movement": movement, "side": None, "which": which},
    }


# Work as it is noted down.
say("Bay 12 at the sports hall was free, chin ups 5x2 +30", "chin_up 5x2 +30")
say(
    "Gym's on the 3rd floor and the lift is broken, so 60 stairs as a warm-up. Then pull ups 4x4 +17.5",
    "pull_up 4x4 +17.5",
    maybe_unread=("60 stairs",),
)
say("dips, 20kg: 6 then 6 then 5 then a sad 4", "dip 6,6,5,4 +20")
say("pull-ups. 3 sets. 5 reps. 15 kilos. no talking.", "pull_up 3x5 +15")
say("did sets of 4 on the chins, five of them, 12.5 on the belt", "chin_up 5x4 +12.5")
say(
    "5 singles with 40 on pull ups, a minute and a half between",
    "pull_up 5x1 +40",
    maybe_unread=("a minute and a half between",),
)
say(
    "pull ups: 3 reps at 20, 3 at 25, 3 at 30, 1 at 35",
    "pull_up 3 +20; pull_up 3 +25; pull_up 3 +30; pull_up 1 +35",
)
say(
    "weighted dips ramp: 10kg x 5, 20kg x 5, 30kg x 3, 35kg x 2",
    "dip 5 +10; dip 5 +20; dip 3 +30; dip 2 +35",
)
say("Chins +7.5 for 6 6 6 5, song 14 on the playlist was the good one", "chin_up 6,6,6,5 +7.5")
say("push ups 40 in one go then 3 sets of 20", "push_up 40; push_up 3x20")
say("25 pull ups in total, as 7 6 5 4 3", "pull_up 7,6,5,4,3")
say("muscle ups: two doubles and four singles, all strict", "muscle_up 2x2; muscle_up 4x1")
say(
    "neutral grip pull ups, a triple at 27.5 and two triples at 25",
    "neutral_grip_pull_up 3 +27.5; neutral_grip_pull_up 2x3 +25",
)
say("ring rows 3 by 12, feet on a 40 cm box", "ring_row 3x12")
say("lat pulldown at pin 9, the stack says 58 kg, 4x10", "lat_pulldown 4x10 +58", maybe_unread=("pin 9",))
say("pull ups 6x3 on the 28 mm bar, +12.5", "pull_up 6x3 +12.5")
say("squats 5 sets of 5, bar plus 60 so 80 kg in all", "squat 5x5 +80")
say("pistols 3x4 per leg holding an 8 kg bell at 7 am, neighbours loved it", "pistol_squat 3x4 LR +8")
say("hollow holds 4x30, L-sit 4x15, all in seconds obviously", "hollow_hold 4x30s; l_sit 4x15s")
say("half a minute dead hang, three times", "dead_hang 3x30s")
say("handstands: 28s, 31s, 40s. Kicked a lamp at 41", "handstand_hold 28s,31s,40s")
say("one arm hang: right 31 seconds, left 24", "one_arm_hang 31s R; one_arm_hang 24s L")
say(
    "archer pull ups right 4 left 3, right 4 left 3, right 3 left 3",
    "archer_pull_up 4 R; archer_pull_up 3 L; archer_pull_up 4 R; archer_pull_up 3 L; archer_pull_up 3 RL",
)
say(
    "one arm pull up, lowering only, 2x1 a side, eight seconds each",
    "one_arm_pull_up 2x1 LR ecc",
    maybe_unread=("eight seconds each",),
)
say(
    "pulley one-armers with 6 kg helping: left 3 and 2, right 3 and 3",
    "one_arm_counterweight 3,2 L -6; one_arm_counterweight 3,3 R -6",
)
say("hand-on-shoulder one-armers, upper half only, 3x1 each side", "one_arm_hand_on_shoulder 3x1 LR upper")
say(
    "chin ups 4x3 +20, stopping for two seconds at the bottom of every rep",
    "chin_up 4x3 +20 bottom",
    maybe_unread=("two seconds",),
)
say("pull ups, lower half only under the stairs, ceiling is 1.9 m, 4x5", "pull_up 4x5 lower")
say("Paused to let an old lady past. chins 4x4 +10", "chin_up 4x4 +10")
say("held the door for a neighbour, then held the top of a pull up 3 x 12 seconds", "pull_up_top_hold 3x12s")
say(
    "Pull-up cluster at 35: 1+1+1+1, 20 s apart",
    "pull_up 1 +35; pull_up 1,1,1 +35 link",
    maybe_unread=("20 s apart",),
)
say(
    "two clusters of chins with 30: 2+1+1 and 2+1+1",
    "chin_up 2 +30; chin_up 1,1 +30 link; chin_up 2 +30; chin_up 1,1 +30 link",
)
say("rest-pause push ups 30, 9, 6 with ten breaths between", "push_up 30; push_up 9,6 link")
say(
    "Drop set on the pulldown: 70kg x 6, 55kg x 8, 40kg x 12, no rest",
    "lat_pulldown 6 +70; lat_pulldown 8 +55 link; lat_pulldown 12 +40 link",
)
say("EMOM for 8 minutes, 2 chins at +10 every minute", "chin_up 8x2 +10", maybe_unread=("EMOM for 8 minutes",))
say("three ladders of 1,2,3 chin-ups", "chin_up 3x1,2,3")
say("4 rounds: 3 muscle ups, 6 ring dips, 9 hanging leg raises", "muscle_up 4x3; ring_dip 4x6; hanging_leg_raise 4x9")
say("chins 3x6 +10, then belt off and AMRAP, got 11", "chin_up 3x6 +10; chin_up 11")
say("chin ups 3x8 bw @7", "chin_up 3x8 last@7")
say("pull-ups 5x3 @ 7 kg, rpe 7", "pull_up 5x3 +7 last@7")
say("dips 3x5 @8kg @8", "dip 3x5 +8 last@8")
say(
    "pull-ups 4x5 +10kg, RIR 3 2 2 1",
    "pull_up 5 +10 @7; pull_up 2x5 +10 @8; pull_up 5 +10 @9",
)
say("two left in the tank on every set, dips 4x6 +22.5", "dip 4x6 +22.5 @8")
say("chins 4x4 +15, first set @6, last set @8", "chin_up 4 +15 @6; chin_up 2x4 +15; chin_up 4 +15 @8")
say(
    "Pull ups 3x4 +20, second set rpe 9 because the dog walked underneath",
    "pull_up 4 +20; pull_up 4 +20 @9; pull_up 4 +20",
)
say(
    "5 sets of 2 pull-ups at 32.5, one was rpe 9, the other four @8",
    "pull_up 4x2 +32.5 @8; pull_up 2 +32.5 @9",
)
say("dips 4x6 +20 @7, chins 4x6 +10 @8, whole thing a 7.5", "dip 4x6 +20 last@7; chin_up 4x6 +10 last@8", srpe=7.5)
say("chins 4x5 +12.5, dips 4x8. RPE 8", "chin_up 4x5 +12.5; dip 4x8", srpe=8)
say("rpe 6 day. ring rows 4x10, push ups 4x20", "ring_row 4x10; push_up 4x20", srpe=6)
say(
    "dips 4x5 +70, chins 4x5 +25, bw 184.6",
    "dip 4x5 +70lb; chin_up 4x5 +25lb",
    unit="lb",
    body=84,
    bw=184.6 * KG_PER_LB,
)
say(
    "+15 lb vest for pull ups 3x6 and a 5 kg plate for dips 3x8",
    "pull_up 3x6 +15lb; dip 3x8 +5",
    unit="lb",
    body=77,
)
say(
    "pull ups 3x3 with a 35 and a 10 on the belt",
    "pull_up 3x3 +45lb",
    unit="lb",
    body=80,
    also=({"sets": sets("pull_up 3x3 +?"), "ask": asks("load_kg: a 35 and a 10")},),
)
say("1,25 kg more than last time so 18,75: pull ups 4x4", "pull_up 4x4 +18.75")
say("the band takes 18 kilos off according to my scale, 4x4 pull ups with it", "band_pull_up 4x4 -18")
say("band pull ups, red band for 3x6 then the thin one 2x5", "band_pull_up 3x6; band_pull_up 2x5")
say(
    "wearing the 8 kg vest all the way: push ups 3x15, pike push ups 3x8, squats 3x20",
    "push_up 3x15 +8; pike_push_up 3x8 +8; squat 3x20 +8",
)
say(
    "so uh today chin ups i did three sets of six with ten kilos and on the last one i had two left and then ring rows"
    " two sets of fifteen",
    "chin_up 3x6 +10 last@8; ring_row 2x15",
)
say("pullups twelve point five kilos four sets of five last set rpe eight", "pull_up 4x5 +12.5 last@8")
say(
    "chinnups 4x4 +15kg, pusups 3x20, hangign leg raises 3x10",
    "chin_up 4x4 +15; push_up 3x20; hanging_leg_raise 3x10",
)
say("face pulls 3x20, that's with the red tube, not the 15 kg stack", "face_pull 3x20")
say("no dips, no chins, just pull ups 3x5 +15", "pull_up 3x5 +15")
say("not 5x5 but 5x4, pull ups +17.5", "pull_up 5x4 +17.5")
say("missed a single at 47.5, then got 45 for one. pull ups", "pull_up 0 +47.5 fail; pull_up 1 +45")
say(
    "chins 4x3 +30 but on the third set the last rep didn't make it over the bar",
    "chin_up 2x3 +30; chin_up 2 +30 fail; chin_up 3 +30",
)
say("Failed the 7th ring dip, so 6. Then 2x5", "ring_dip 6 fail; ring_dip 2x5")
say("OAC attempts: left went up once, right got stuck at 90 degrees", "one_arm_chin_up 1 L; one_arm_chin_up 0 R fail")
say("cycled 40 km there and back, chins 3x8 in between", "chin_up 3x8", unread=("cycled 40 km",))
say("bench 5x5 80kg with the lads, then pull ups 4x4 +15", "pull_up 4x4 +15", unread=("bench 5x5 80kg",))
say(
    "played 90 minutes of football, so only push ups 2x20",
    "push_up 2x20",
    unread=("90 minutes of football",),
    also=({"unread": []},),
)
say("100 kettlebell swings with 20kg, then L-sit 5x10s", "l_sit 5x10s", unread=("100 kettlebell swings with 20kg",))
say("swam 1200 m before, then tuck planche 4x10s", "tuck_planche 4x10s", unread=("swam 1200 m",))

# Wanted, remembered, other people's, mended on the spot.
say("Wanted 5x4 at 25. Reality: 5x4 at 22.5. Chins.", "chin_up 5x4 +22.5")
say("planned on ten sets, did six: 6x2 pull ups +25", "pull_up 6x2 +25")
say("last week 4x4 +17.5, today 4x4 +20, next week hopefully +22.5. Pull ups", "pull_up 4x4 +20")
say("best before today was 14 chins, today 16 and dead", "chin_up 16", sets_or=("chin_up 16 @10",))
say("my training partner pulled +40 for three. I pulled +27.5 for three. pull-ups, one set", "pull_up 3 +27.5")
say("Dad (61!) did 8 chins. I did 3x9 and he still thinks he won", "chin_up 3x9")
say(
    "goal for summer: 3 one arm chins per side. today: 1 left, 0 right (missed)",
    "one_arm_chin_up 1 L; one_arm_chin_up 0 R fail",
)
say("Remember when 10 kg was heavy? 4x5 chins with 20 just now", "chin_up 4x5 +20")
say("next time I'd go 30, today it was pull ups 4x2 +27.5", "pull_up 4x2 +27.5")
say("used to do 20 pull ups at uni, did 3x7 today", "pull_up 3x7")
say("pull ups 4x4 +20. no sorry, 3x4. the fourth I only thought about", "pull_up 3x4 +20")
say("dips 3x8 +15, wait, the third was 7", "dip 8,8,7 +15")
say("chins 5x3 with 25, I mean 22.5", "chin_up 5x3 +22.5")
say("yesterday, no, the day before: chins 3x6 +10", "chin_up 3x6 +10", at=WEDNESDAY, on="2027-03-22")
say("slept 6, sorry, 7 hours", does="report", sleep=7)
say(
    "if the bar is free tonight I'll do 5x3 with 25",
    does="smalltalk",
    does_or=("unknown",),
    maybe_unread=("5x3 with 25",),
)
say(
    "In the clip a guy does 12 one arm pull ups in a row. I did 4x5 normal ones, no weight",
    "pull_up 4x5",
)

# Against the day's plan.
say("ticked off, the lot", "scapular_pull_up 2x8; pull_up 5x3 +20; face_pull 3x15 +15", today=FULL)
say("all but the face pulls", "scapular_pull_up 2x8; pull_up 5x3 +20", today=FULL)
say("everything minus one set of dips", "pull_up 4x4 +22.5; dip 2x6 +12.5", today=BOTH)
say("pull ups as planned, dips 6 6 4", "pull_up 4x4 +22.5; dip 6,6,4 +12.5", today=BOTH)
say("archers as planned, pull-ups 4 4 3 2", "archer_ring_elbow 2x2 LR; pull_up 4,4,3,2 +20", today=ARCHER)
say("no archers. pull ups yes, all four sets", "pull_up 4x4 +20", today=ARCHER)
say(
    "done. the last set of pull ups was more of a 9",
    "pull_up 4x4 +22.5 last@9; dip 3x6 +12.5",
    today=BOTH,
)
say(
    "archers left 2 and 1, right 2 and 2, pull ups done",
    "archer_ring_elbow 2,1 L; archer_ring_elbow 2,2 R; pull_up 4x4 +20",
    today=ARCHER,
)
say("planche 10 10 9 8 8, dips fine", "tuck_planche 10s,10s,9s,8s,8s; dip 3x8 +10", today=PLANCHE)
say(
    "same as written but bodyweight only, belt's at my mum's",
    "pull_up 4x4; dip 3x6",
    today=BOTH,
    maybe="equipment",
)
say("1.25 kg more on all sets", "chin_up 4x5 +11.25", today=CHINS)
say("4x5 done, 12.5 in place of 10, rpe 7", "chin_up 4x5 +12.5 last@7", today=CHINS)
say("first set 5, then 4 4 4", "chin_up 5,4,4,4 +10", today=CHINS)
say("stopped one set short, the bus at 18:05 is the last one", "chin_up 3x5 +10", today=CHINS)
say("did the pull ups but not the dips, nothing hurts, just late", "pull_up 4x4 +22.5", today=BOTH, pain="- - 0")
say("half of it done, two sets", "chin_up 2x5 +10", today=CHINS)
say("skipped set 3, rest fine", "chin_up 3x5 +10", today=CHINS)
say(
    "did it all, +5 on every set",
    "pull_up 4x3 +50lb",
    unit="lb",
    body=81,
    today=POUNDS,
    also=({"sets": sets("pull_up 4x3 +?"), "ask": asks("load_kg: +5")},),
    why="five more than planned; five in all is not ruled out",
)
say("the 3s at 55, all four", "pull_up 4x3 +55lb", unit="lb", body=81, today=POUNDS)
say("done and 2 extra sets", "chin_up 6x5 +10", today=CHINS)
say(
    "1/1 and 1/0, missed the right one by a whisker",
    "one_arm_hand_on_shoulder 1/1 LR; one_arm_hand_on_shoulder 1 L; one_arm_hand_on_shoulder 0 R fail",
    today=SHOULDER,
)
say(
    "as planned, right elbow a 2 during the second pair",
    "one_arm_hand_on_shoulder 2x1 LR",
    today=SHOULDER,
    pain="elbow R 2 during",
)
say(
    "As prescribed. Session effort 6, 52 minutes, slept 7.5",
    "scapular_pull_up 2x8; pull_up 5x3 +20; face_pull 3x15 +15",
    today=FULL,
    srpe=6,
    mins=52,
    sleep=7.5,
)
say(
    "swapped the pull ups for neutral grip ones, everything else the same",
    "neutral_grip_pull_up 4x4 +22.5; dip 3x6 +12.5",
    today=BOTH,
)
say("only the skill work today, hall closes at 9", "archer_ring_elbow 2x2 LR", today=ARCHER)
say(
    "first two sets of pull ups as planned, last two at 20. dips as planned",
    "pull_up 2x4 +22.5; pull_up 2x4 +20; dip 3x6 +12.5",
    today=BOTH,
)
say("went down to 7.5 after the second set, otherwise as planned", "chin_up 2x5 +10; chin_up 2x5 +7.5", today=CHINS)
say("one set at a time between calls, all there by 17:30", "pull_up 4x4 +22.5; dip 3x6 +12.5", today=BOTH)
say(
    "nope. tomorrow instead?",
    does="move",
    maybe="missed",
    at=WEDNESDAY,
    today=CHINS,
    dates="2027-03-24..2027-03-25",
)
say(
    "not a single rep today, deadline at midnight",
    does="missed",
    at=WEDNESDAY,
    today=CHINS,
    dates="2027-03-24",
)

# Pain.
say("Left inner elbow 2/10, only on the way down", pain="elbow_inner L 2 during")
say("was a 4 on Monday, is a 1 today, left wrist", pain="wrist L 1", pain_or=("wrist L 4; wrist L 1",))
say(
    "pain went from 2 to 4 over the week. right elbow, outside",
    pain="elbow_outer R 4",
    pain_or=("elbow_outer R 2; elbow_outer R 4",),
)
say("no pain in the elbow for the first time in 3 weeks", pain="elbow - 0")
say(
    "left elbow 3, right one 1, both on the inside, after training",
    pain="elbow_inner L 3 after; elbow_inner R 1 after",
)
say("neck is stiff, 2, that's the pillow and not the training", pain="neck - 2")
say("thumb 3/10 after the muscle ups (4x2)", "muscle_up 4x2", pain="hand - 3 after")
say("shin 1, calf 2, both left", pain="other L 1; other L 2")
say("how bad? 6. where? right shoulder. when? during the dips", pain="shoulder R 6 during")
say("it was a solid 7 out of 10 session, elbow 0", srpe=7, pain="elbow - 0")
say("pain: two. session: eight.", srpe=8, pain="- - 2")
say("my wife's knee is 6/10 but she runs anyway. my own knee 1", pain="knee - 1")
say("slept on it funny, left shoulder 2 when I woke up", pain="shoulder L 2 morning")
say("1 during, 3 this morning, outer right elbow", pain="elbow_outer R 1 during; elbow_outer R 3 morning")
say("nothing hurts except my pride and the left wrist (2)", pain="wrist L 2")
say("doesn't hurt any more", pain="- - 0")
say("Left elbow, no, right elbow, 2/10 after", pain="elbow R 2 after")
say("lower back 3/10 at rest and 1 in training", pain="lower_back - 3 rest; lower_back - 1 during")

# Warning signs, real and not.
say(
    "something snapped in my left elbow, sounded like a twig",
    pain="elbow L -",
    flags="pop",
)
say(
    "pain in the shoulder wakes me at 2 and at 4 most nights",
    pain="shoulder - - rest",
    pain_or=("shoulder - -",),
    flags="night_pain",
)
say(
    "my right hand falls asleep on one arm hangs, pins and needles up to the thumb",
    pain="hand R - during",
    pain_or=("hand R -",),
    flags="numbness",
)
say(
    "knee got stuck at the bottom of a pistol and wouldn't straighten for a minute",
    pain="knee - - during",
    pain_or=("knee - -",),
    flags="locking",
)
say(
    "tight chest after an easy warm-up, had to sit down for 5 minutes",
    pain="chest - - after",
    pain_or=("chest - -",),
    flags="chest_pain",
    maybe="report",
)
say("blacked out for a second at the top of the last set", flags="dizziness", maybe="report")
say("still gasping for air ten minutes after the session, that's not me", flags="breathless", maybe="report")
say(
    "left calf is hot, red and twice the size of the other one",
    pain="other L -",
    flags="swelling",
)
say("Ankle blew up like a balloon overnight", pain="ankle - -", pain_or=("ankle - - rest",), flags="swelling")
say(
    "38.7 this morning, not leaving the bed today",
    does="ill",
    flags="fever",
    at=WEDNESDAY,
    dates="2027-03-24",
    dates_or=("2027-03-24..",),
    maybe="missed",
)
say(
    "grip suddenly gone in the right hand, dropped a 10 kg plate on the mat",
    pain="hand R -",
    flags="sudden_weakness",
)
say(
    "the biceps on the right looks bunched up, there's a lump that wasn't there yesterday",
    pain="biceps R -",
    flags="deformity",
    flags_or=("deformity swelling", "swelling"),
)
say(
    "forearm has turned purple where the strap was, 1/10",
    pain="forearm - 1",
    flags="bruising",
)
say("checked for swelling like you asked: none. elbow 2", pain="elbow - 2")
say("nothing popped, nothing swelled, I just chickened out. chins 3x3 +30", "chin_up 3x3 +30")
say("dislocated that shoulder in 2016, it's been quiet since. Pull-ups 4x4 +10", "pull_up 4x4 +10")
say(
    "my lad bruised his shin at football, 2 hours in A&E, no training for me today",
    does="missed",
    at=WEDNESDAY,
    dates="2027-03-24",
)
say("numbers so good I'm dizzy: chins 3x5 +25", "chin_up 3x5 +25")
say("breathtaking view from the bars on the 14th floor. 5x5 pull ups", "pull_up 5x5")
say("popped a button on the second set, pull ups 4x4 +15", "pull_up 4x4 +15")
say("locked out every rep, dips 4x5 +30", "dip 4x5 +30")
say("the bar is numbingly cold, -4 outside, gloves on. pull ups 5x4 +10", "pull_up 5x4 +10")

# Bodyweight, sleep, minutes.
say("79.4 on the scale, 1.2 down on last week", bw=79.4, body=80.5)
say("scales say 12 st 4, so 78 kg", bw=78, body=78.4)
say("bw 158.2 lb", bw=158.2 * KG_PER_LB)
say("8 hours in bed, 6 of them asleep", does="report", sleep=6)
say("flight was 9 hours, slept 3 of them", does="report", sleep=3)
say("Slept 4h, baby. Still did pull ups 3x3 +15, session rpe 9, 30 min", "pull_up 3x3 +15", sleep=4, srpe=9, mins=30)
say("dips 3x8 in 20 minutes flat, then a 15 min walk home", "dip 3x8", mins=20, maybe_unread=("15 min walk",))
say("my sister weighs 62 and out-pulls me. me: 77.8", bw=77.8, body=78)

# Days and absences.
say("can Saturday's go to Sunday? it's my mum's 60th", does="move", at=WEDNESDAY, dates="2027-03-27..2027-03-28")
say("Friday is out, can I do it on Thursday instead?", does="move", at=WEDNESDAY, dates="2027-03-26..2027-03-25")
say(
    "I skipped Monday on purpose, legs were shot from 20k steps",
    does="missed",
    at=WEDNESDAY,
    dates="2027-03-22",
)
say(
    "gone Fri-Sun, a hut without a bar",
    does="away equipment",
    does_or=("away",),
    at=WEDNESDAY,
    dates="2027-03-26..2027-03-28",
)
say(
    "in the mountains for 10 days from Saturday",
    does="away",
    at=WEDNESDAY,
    dates="2027-03-27..2027-04-05",
    dates_or=("2027-03-27..2027-04-06",),
)
say("tummy bug since last night, nothing stays in", does="ill", at=WEDNESDAY, dates="2027-03-23..")
say(
    "the cold is over, was down with it Friday to Monday",
    does="ill",
    maybe="resume",
    does_or=("resume",),
    at=WEDNESDAY,
    dates="2027-03-19..2027-03-22",
)
say("kid's sick, I'm not. no session today though", does="missed", at=WEDNESDAY, dates="2027-03-24")
say("freeze my plan until the 5th, 2 exams", does="pause", at=WEDNESDAY, dates="2027-03-24..2027-04-05")
say(
    "I'm not quitting, just need two weeks off from everything",
    does="pause",
    does_or=("away",),
    at=WEDNESDAY,
    dates="2027-03-24..2027-04-06",
    dates_or=("2027-03-24..2027-04-07", "2027-03-25..2027-04-07"),
)
say("you can start sending me sets again", does="resume")
say("please don't write to me any more, I've found another coach", does="stop")
say(
    "don't send it at 5 am please, 7 would be fine",
    does="for_coach",
    does_or=("smalltalk", "unknown", "help"),
)
say("it's 00:40, just back from the hall, dips 4x6 +15", "dip 4x6 +15", at="2027-03-24 00:41", on="2027-03-23")
say("yesterday chins 3x5 +15", "chin_up 3x5 +15", at="2027-03-24 02:10", on="2027-03-23")
say("early shift starts at 5. pull ups 3x5 before it", "pull_up 3x5", at="2027-03-24 04:30", on="2027-03-24")
say(
    "Sunday pull ups 5x3 +20, Monday nothing, yesterday dips 3x8 +10",
    "pull_up 5x3 +20 on=2027-03-21; dip 3x8 +10 on=2027-03-23",
    at=WEDNESDAY,
)
say(
    "On Saturday I did 4x4 pull-ups with 20. Next Saturday I want 22.5.",
    "pull_up 4x4 +20",
    at=WEDNESDAY,
    on="2027-03-20",
)
say(
    "Thursday's pull ups were 5x3 +17.5 and Saturday's 5x3 +20",
    "pull_up 5x3 +17.5 on=2027-03-18; pull_up 5x3 +20 on=2027-03-20",
    at=WEDNESDAY,
)

# Mends.
say("the dips I sent were +12.5, I wrote +15", fix=("load_kg", 15, 12.5, "dip"))
say("oops, the chins were 6 reps, not 5", fix=("reps", 5, 6, "chin_up"))
say("third set of the pull ups should read 2 instead of 3", fix=("reps", 3, 2, "pull_up", None, 3))
say(
    "bodyweight was 72.6 not 76.2",
    fix=("bodyweight_kg", 76.2, 72.6),
    also=({"bodyweight_kg": 72.6, "intents": ["correction", "bodyweight"]}, {"bodyweight_kg": 72.6}),
)
say("it took 55 minutes, not 35", fix=("duration_min", 35, 55), also=({"duration_min": 55},))
say("session rpe should be 7, I said 8", fix=("session_rpe", 8, 7), also=({"session_rpe": 7},))
say("last hold was 9 s, not 12", fix=("hold_s", 12, 9, None, None, "last"))
say("counted wrong: the left arm had 3, not 2", fix=("reps", 2, 3, None, "left"))
say(
    "hey, Monday's pull ups: that was 5x3 with 22.5 and not 20",
    "pull_up 5x3 +22.5",
    fix=("load_kg", 20, 22.5, "pull_up"),
    maybe="report",
    at=WEDNESDAY,
    on="2027-03-22",
)
say(
    "the pulley weight was 5 not 7.5",
    fix=("assist_kg", 7.5, 5),
    also=(other_movement("assist_kg", 7.5, 5, "one_arm_counterweight"),),
)
say("take out what I logged a minute ago, that was my brother's session", does="undo")
say("bin the last one pls", does="undo")

# Questions, things, words for the coach, talk.
say("is today a rest day?", does="plan_today", at=WEDNESDAY, dates_or=("2027-03-24",))
say(
    "what do I lift on Friday?",
    does="plan_today",
    does_or=("plan_week",),
    at=WEDNESDAY,
    dates="2027-03-26",
    dates_or=("",),
)
say("what's left this week?", does="plan_week")
say("why chins and not pull-ups this block?", does="why")
say("why is it only 15 when I did 20 last week", does="why", maybe_unread=("20 last week",))
say("how many kilos until I may try archers?", does="progress")
say("what was my best chin-up this year?", does="progress")
say("can I write to you in pounds?", does="help")
say("can you ask the coach whether 3 rest days in a row are too many", does="for_coach")
say("coach, please look at clip 2, not clip 1", does="for_coach")
say("gym moved the pulley out, there's only a lat tower now", does="equipment")
say("new plates came: 0.5, 1 and 2.5 kg", does="equipment")
say("rings got stolen from the garage 😡", does="equipment")
say("bus 20 was late again, 15 minutes in the rain", does="smalltalk", does_or=("unknown",))
say("lost 4-0 on Sunday, don't ask", does="smalltalk", does_or=("unknown",))
say("my daughter turned 5 and wants rings for her birthday 😍", does="smalltalk", does_or=("unknown",))
say("10/10 would hang again", does="smalltalk", does_or=("unknown",))
say("fjdk 5 vvx", does="unknown", maybe_unread=("5",), ask_or="intents: fjdk 5 vvx")

# What must be asked.
say("chin ups 18", "chin_up ? +?", ask="reps: 18")
say(
    "ring dips 4x8 @7",
    "ring_dip 4x8 +?",
    ask="load_kg: @7",
    sets_or=("ring_dip 4x8 +? last@7", "ring_dip 4x8 last@7", "ring_dip 4x8"),
)
say("did the doubles with 35", does="report", ask="movement: did the doubles with 35", sets_or=("_ 2 +35",))
say("archers 4x2 each arm", "_ 4x2 LR", ask="movement: archers")
say("FL 5x6s", "_ 5x6s", ask="movement: FL")
say("pull ups 5x3 +300", "pull_up 5x3 +?", ask="load_kg: +300")
say("partial chins 3x6 +10", "chin_up 3x6 +10 rom?", ask="rom: partial chins")
say(
    "weak arm 2, strong arm 3 on the one arm chins",
    "one_arm_chin_up 2; one_arm_chin_up 3",
    ask="side: weak arm 2, strong arm 3",
)
say(
    "never sent you the session from the other week: chins 4x4 +15",
    "chin_up 4x4 +15",
    on=None,
    ask="performed_on: the other week",
)
say("pull ups 4x4 with 15 or 17.5, no idea which", "pull_up 4x4 +?", ask="load_kg: 15 or 17.5")
say("did 4 or 5 sets of 3 chins +20", does="report", ask="sets: 4 or 5 sets", sets_or=("chin_up 3 +20",))
say("dips 3x6 +10, rpe anywhere from 6 to 9", "dip 3x6 +10", ask="rpe: from 6 to 9")
say("bw 780", does="bodyweight", ask="bodyweight_kg: 780")
say("wrist is a 15 today", pain="wrist - -", ask="score: 15")
say("4x5 +20 today", "_ 4x5 +20", ask="movement: 4x5 +20")
say("all done 👍", does="report", ask="sets: all done")

# Long and rambling.
say(
    "Long day. 11 hours on site, two espressos, one flat tyre. Got to the bars at 20:45 and did pull-ups anyway, 4x4"
    " with 17.5. The last set was an 8. Elbow quiet for once, call it 0.",
    "pull_up 4x4 +17.5 last@8",
    pain="elbow - 0",
)
say(
    "Hi coach! Short update from the seaside, we're on the 6th floor and I carried 2 suitcases up. The bar in the park"
    " is about 2.5 m high. Chin-ups 5x4 bodyweight, dips 4x10 on the railing. Coffee here is 90 cents.",
    "chin_up 5x4; dip 4x10",
)
say(
    "Right. So I wanted to test the one arm pull up today. Left: nope, stuck a third of the way. Right: one clean"
    " rep!!! Then 3x3 pull-ups +20 because I had to do something with the adrenaline.",
    "one_arm_pull_up 0 L fail; one_arm_pull_up 1 R; pull_up 3x3 +20",
)
say(
    "Today was strange. First set of dips felt heavy, second felt light, third felt heavy again. All three were 6 with"
    " 15. My scale at home says 76.1 so maybe it's the food. Slept 7 h.",
    "dip 3x6 +15",
    bw=76.1,
    body=76,
    sleep=7,
)
say(
    "Training log. Warm-up 10 minutes skipping. Pull-ups 20kg 4/4/4/3. Ring rows 3x12. Cool-down 5 minutes. Session"
    " 7/10, 55 minutes in total.",
    "pull_up 4,4,4,3 +20; ring_row 3x12",
    srpe=7,
    mins=55,
    maybe_unread=("10 minutes skipping", "Cool-down 5 minutes"),
)
say(
    "My partner and I shared a bar. She did 3x8 with the band, I did 5x3 with 25. Pull-ups both. She's 12 years"
    " younger, for the record.",
    "pull_up 5x3 +25",
)
say(
    "Sorry for the silence, moving house ate me alive. 34 boxes, 4th floor, no lift. Did one session on Sunday: chins"
    " 4x5 +10. Lower back 2/10 from the boxes. What's on for the rest of this week?",
    "chin_up 4x5 +10",
    "plan_week",
    at=WEDNESDAY,
    on="2027-03-21",
    pain="lower_back - 2",
    pain_or=("lower_back - 2 after",),
)
say(
    "Bad news first. Right shoulder 4/10 on the dips, so I stopped after two sets of 8. Good news: pull-ups 4x4 +20"
    " flew. Tell coach please.",
    "dip 2x8; pull_up 4x4 +20",
    "for_coach",
    pain="shoulder R 4 during",
)
say(
    "I did something stupid. Tried the 45 kg single on pull-ups without warming up, missed it, then hit 42.5. After"
    " that 3x3 with 32.5. No pain, no drama.",
    "pull_up 0 +45 fail; pull_up 1 +42.5; pull_up 3x3 +32.5",
    pain="- - 0",
)
say(
    "Question and report. Report: chin-ups 4x6 +7.5, two in reserve on the last. Question: why did the weight go down"
    " by 5? I'm not complaining, just curious.",
    "chin_up 4x6 +7.5 last@8",
    "why",
)
say(
    "Quick one between meetings. 6 sets of 2 pull-ups, 30 on the belt, every set rpe 7. Twenty-five minutes. Meeting"
    " number 5 starts in 3.",
    "pull_up 6x2 +30 @7",
    mins=25,
)
say(
    "OK so the gym has renumbered the racks and number 8 is now number 12. That's where the good bar lives. Neutral"
    " grip pull-ups 4x5 +12.5 there. Then biceps curls, 3x10 with the 12s, nothing fancy.",
    "neutral_grip_pull_up 4x5 +12.5; biceps_curl 3x10 +12",
)
say(
    "Went up with the weight and down with the reps. 3 sets of 2 at 37.5. Pull-ups, in case that's not clear. Then a"
    " back-off set of 6 at 25, one left in the tank.",
    "pull_up 3x2 +37.5; pull_up 6 +25 @9",
)
say(
    "Kids' birthday party at the climbing hall. 14 six-year-olds. I managed 3 sets of 10 push-ups in the corridor,"
    " don't laugh. Slept 5 hours. Can I do today's session tomorrow?",
    "push_up 3x10",
    "move",
    at=WEDNESDAY,
    dates="2027-03-24..2027-03-25",
    sleep=5,
)
say(
    "Back from the physio. She says the inner elbow (left) is irritated, not torn. Pain 3/10 when gripping, 0 at rest."
    " Please tell coach.",
    does="for_coach",
    pain="elbow_inner L 3 during; elbow_inner L 0 rest",
)
say(
    "The week in short. Monday pull-ups 5x3 +20. Tuesday nothing. Today dips 4x6 +17.5, last one @9. Weight this"
    " morning 81.0.",
    "pull_up 5x3 +20 on=2027-03-22; dip 4x6 +17.5 last@9 on=2027-03-24",
    at=WEDNESDAY,
    bw=81,
    body=81.5,
)
say(
    "I'm travelling again. Leaving on Friday, back on the 2nd of April. The hotel has a gym but no bar, so only rings"
    " from the door frame. Could you plan around that?",
    does="away equipment",
    maybe="for_coach",
    at=WEDNESDAY,
    dates="2027-03-26..2027-04-01",
)
say(
    "Rainy, 6 degrees, nobody there. I love it. Ring muscle-ups 3x2, ring dips 3x8, ring rows 2x15. 40 minutes and"
    " soaked.",
    "ring_muscle_up 3x2; ring_dip 3x8; ring_row 2x15",
    mins=40,
)
say(
    "Confession time. I only did half of the plan. Two sets of pull-ups rather than four, no dips at all. Sofa won.",
    "pull_up 2x4 +22.5",
    today=BOTH,
)
say(
    "New personal best! The old one was 12 seconds of tuck planche, from January. Today 17s, then 14s and 13s. I'm 52,"
    " by the way. Never too late.",
    "tuck_planche 17s,14s,13s",
)
say(
    "Went for the full front lever. First try 2 seconds, second try 3 seconds. After that advanced tuck 4x10s. Arms"
    " like noodles.",
    "full_front_lever 2s,3s; advanced_tuck_front_lever 4x10s",
)
say(
    "Hello. It's me, the one with the noisy elbow. It's at 2 today during the pull-ups, 1 after, left side. I did all"
    " sets as planned. Good night.",
    "pull_up 4x4 +15",
    today=PULLS,
    pain="elbow L 2 during; elbow L 1 after",
)
say(
    "Neighbour complained about the chalk on the railing. 200 euros if it happens again. So liquid chalk from now on."
    " Chin-ups 4x3 +22.5 and a lot of hand washing.",
    "chin_up 4x3 +22.5",
)
say(
    "Lost my notebook so this is from memory. Pull-ups were 4 sets, 5 reps. 15 kg on the belt. The coffee after was 4"
    " euros, that I remember.",
    "pull_up 4x5 +15",
)
say(
    "Heads up, I'll be at my in-laws from the 27th to the 30th. No bar, no rings, 2 dogs. Today was fine: chins 4x4"
    " +15.",
    "chin_up 4x4 +15",
    "away equipment",
    at=WEDNESDAY,
    dates="2027-03-27..2027-03-30",
)
say(
    "So we measured it properly. My grip on the bar is 51 cm wide, used to be 60. With that: pull-ups 5x3 +17.5. Felt"
    " smoother, elbow a 1 rather than the usual 3.",
    "pull_up 5x3 +17.5",
    pain="elbow - 1",
)
say(
    "Had to cut it short. Set one 4, set two 4, set three 3 and then the fire alarm. Chins, 17.5 kg. 20 min all told.",
    "chin_up 4,4,3 +17.5",
    mins=20,
)
say(
    "Three things. One: pull-ups 4x4 +20 done. Two: my belt is falling apart. Three: can we move Friday to Saturday?",
    "pull_up 4x4 +20",
    "equipment move",
    at=WEDNESDAY,
    dates="2027-03-26..2027-03-27",
)
say(
    "Good session. Started with scap pull-ups 2x10. Main work was pull-ups 5x2 at 35 with long breaks, I'd say 4"
    " minutes. Finished with a dead hang, 2x60s. RPE 8 for the day.",
    "scapular_pull_up 2x10; pull_up 5x2 +35; dead_hang 2x60s",
    srpe=8,
    maybe_unread=("4 minutes",),
)
say(
    "I was 15 minutes late, the hall closes at 22:00 and the showers are cold. That's the bad part. Good part: 3 archer"
    " pull-ups per arm, twice. Then 2x8 ring rows.",
    "archer_pull_up 2x3 LR; ring_row 2x8",
)
say(
    "Somebody asked how old I am in the middle of my set. 47! He was 22 and did 9, I did 13. Bodyweight pull-ups, one"
    " set, that was all.",
    "pull_up 13",
)
say(
    "Elbow diary, day 9. Morning 2, training 1, evening 0. Left, on the inside. No dips today.",
    pain="elbow_inner L 2 morning; elbow_inner L 1 during; elbow_inner L 0",
    pain_or=("elbow_inner L 2 morning; elbow_inner L 1 during; elbow_inner L 0 after",),
)
say(
    "Just hanging around today, literally. Dead hang 3x45s, left one-arm hang 15s, right 19s. Next week I want to be"
    " back at 20.",
    "dead_hang 3x45s; one_arm_hang 15s L; one_arm_hang 19s R",
)
say(
    "It's 31 degrees and the bar burns. Gloves on. 4 sets of chins: 6, 6, 5, 5. No plate today, not even the small"
    " one.",
    "chin_up 6,6,5,5",
)
say(
    "hey coach so yesterday i could not train because of the strike but today i did pull ups four by four with twenty"
    " and it was okay i guess last set was a nine and my left wrist is a two",
    "pull_up 4x4 +20 last@9",
    "missed",
    at=WEDNESDAY,
    dates="2027-03-23",
    pain="wrist L 2",
)
say(
    "did chins 4x4 with 15 then the radio played that song for the 3rd time and i did 8 push ups out of rage",
    "chin_up 4x4 +15; push_up 8",
)
