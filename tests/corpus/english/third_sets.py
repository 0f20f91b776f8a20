"""A third look, written blind: what was done, as fifteen different people would put it."""

from typing import Any

from tests.corpus.lines import Theme, asks
from tests.corpus.notation import sets

THEME = Theme("third-sets", "en")
say = THEME.say

PULLS = "m/weighted_pull_up pull_up 5x3 +20 @8"
PULLS_DIPS = "m/weighted_pull_up pull_up 4x4 +17.5 @7; a dip 3x6 +15 @8"
DAY = (
    "w scapular_pull_up 2x8; s/archer_elbow_full archer_ring_elbow 2x2 LR @7; "
    "m/weighted_pull_up pull_up 4x4 +17.5 @7; a dip 3x6 +15 @8"
)
ONE_ARM = "s/counterweight one_arm_counterweight 3x2 LR -10 @8"
HOLDS = "s/tuck_planche tuck_planche 4x10s @8"


def rounds(times: int, entry: str) -> str:
    return "; ".join([entry] * times)


def asked(words: str, *readings: str) -> dict[str, Any]:
    """The message asked back instead, with any of the sets in `readings`."""
    return {"also": tuple({"sets": sets(one), "ask": asks(words)} for one in readings)}


# The terse lifter
say("PU 5x5 BW", "pull_up 5x5", **asked("movement: PU", "_ 5x5", "pull_up 5x5"))
say("chins +25 5/5/5/4/4", "chin_up 5,5,5,4,4 +25")
say("wpu 3@30 3@30 2@32.5", "pull_up 3,3 +30; pull_up 2 +32.5", **asked("movement: wpu", "_ 3,3 +30; _ 2 +32.5"))
say("Dips. 3x5. 35kg. Done.", "dip 3x5 +35")
say("pullup 1x+50. pr.", "pull_up 1 +50")
say("muscle ups 3 3 2 2 1", "muscle_up 3,3,2,2,1")
say("ngpu 4x6+7.5", "neutral_grip_pull_up 4x6 +7.5", **asked("movement: ngpu", "_ 4x6 +7.5"))
say("+40: 2,2,2 chins. +30: 4,4", "chin_up 2,2,2 +40; chin_up 4,4 +30")
say("HSPU 5 4 4 3 wall", "handstand_push_up 5,4,4,3")
say("Squat 100x5 110x5 120x3", "squat 5 +100; squat 5 +110; squat 3 +120")
say("pull-ups 6 sets of 3, +22,5kg, @8 on set six", "pull_up 6x3 +22.5 last@8")
say("dips bw 3x12 @9", "dip 3x12 last@9")
say("tuck FL 5x12s @7", "tuck_front_lever 5x12s last@7")
say(
    "dips 4x8 @7",
    "dip 4x8 +?",
    ask="load_kg: @7",
    sets_or=("dip 4x8", "dip 4x8 +? last@7", "dip 4x8 last@7"),
)
say("chins 5x2+37.5 RPE 7 7 7.5 8 8", "chin_up 2,2 +37.5 @7; chin_up 2 +37.5 @7.5; chin_up 2,2 +37.5 @8")
# The chatty student
say(
    "omg ok so library till 4 then legged it to the gym (3 floors of stairs, dead already) and STILL got 4x5 pull ups "
    "with the 10 plate!!",
    "pull_up 4x5 +10",
)
say(
    "two exams down one to go 😭 anyway chin ups 3x8 and then push ups 20 18 15 in my room bc the gym wanted 7 euros",
    "chin_up 3x8; push_up 20,18,15",
)
say("soooo my flatmate did 12 pull ups first try (???) and i did 9 like a loser", "pull_up 9")
say("dips 3x10 and i swear the last set took 3 years off my life", "dip 3x10")
say(
    "did ring rows today, 4 sets of 12, and then my phone died at 2% so no video sorry",
    "ring_row 4x12",
)
say("wanted 5x5 got 5,5,5,4,4. pull ups no weight. blame the 2 hour lecture", "pull_up 5,5,5,4,4")
say("tried my first muscle up today!! 0/6 attempts lol", "muscle_up 6x0 fail", sets_or=("muscle_up 0 fail",))
say("hollow hold 3 x 30 secs, 1st one shook like a washing machine", "hollow_hold 3x30s")
say("pike pushups 8, 8, and then 7 because the cat", "pike_push_up 8,8,7")
say(
    "pull ups for the charity thing: 100 in total!!! raised 340 euros",
    "pull_up ?",
    ask="sets: 100 in total",
)
# The nurse on nights
say(
    "off a 12h shift, slept 4 hrs, still did pull-ups 3x4 +15. not pretty",
    "pull_up 3x4 +15",
    sleep=4,
)
say(
    "Finished ward at 7, gym at 8. Chin-ups 4x3 +20kg, last set 1 RIR",
    "chin_up 4x3 +20 last@9",
)
say(
    "up since midnight, two admissions and 14 beds. got in 3 sets of 8 dips before breakfast",
    "dip 3x8",
    at="2027-03-09 07:40",
    tz="Europe/London",
)
say(
    "trained in the break room: band pull-ups 3x8 with the one that takes off 20 kg. patients 1, me 0",
    "band_pull_up 3x8 -20",
)
say("just home. pull ups 5x3 +17.5", "pull_up 5x3 +17.5", on="2027-03-08", at="2027-03-09 02:20", tz="Europe/London")
say(
    "yesterday before the shift: dips 4x6 +10",
    "dip 4x6 +10",
    on="2027-03-08",
    at="2027-03-09 03:10",
    tz="Europe/London",
)
say(
    "Session from Sunday, sorry, 3 nights in a row: pull-ups 4x4 +20, face pulls 3x15 at 12 kg",
    "pull_up 4x4 +20; face_pull 3x15 +12",
    on="2027-06-06",
    at="2027-06-10 09:30",
    tz="Europe/Dublin",
)
# The non-native speaker
say("Hello coach, today I have made 5 series of 3 pull-ups with 20 kilogramms.", "pull_up 5x3 +20")
say("Today was chin ups, 4 times 6 repeats with the weight 7,5 kg. I am content.", "chin_up 4x6 +7.5")
say("I did make dips 3 x 10 and after front lever in tuck 4 x 8 seconds", "dip 3x10; tuck_front_lever 4x8s")
say("Pull up with weight: first 3 with 25, second 3 with 25, third 2 with 25", "pull_up 3,3,2 +25")
say("My muscles are like stone. Ring dip 6-6-5.", "ring_dip 6,6,5")
say(
    "One arm hanging: left 20 seconds, right 25 seconds, two times",
    "one_arm_hang L 20s; one_arm_hang R 25s; one_arm_hang L 20s; one_arm_hang R 25s",
)
say("I trained since 55 minutes: pull-ups 4x5 with 10 kg, dips 4x8", "pull_up 4x5 +10; dip 4x8", mins=55)
say("Archer pull ups each side 3, four sets", "archer_pull_up 4x3 LR")
say("Today only legs: squat 5x5 with 70 kg, nordic curl 3x3", "squat 5x5 +70; nordic_curl 3x3")
say("Back lever 12 sec and 10 sec and 9 sec, no weight of course", "back_lever 12s,10s,9s")
# The driver who dictates
say(
    "hi coach driving home so dictating pull ups four sets of four with seventeen and a half kilos last set eight and "
    "a half out of ten",
    "pull_up 4x4 +17.5 last@8.5",
)
say("did chin ups today five five four and three with twelve point five kilos on the belt", "chin_up 5,5,4,3 +12.5")
say(
    "dips three sets of eight no weight then pull ups two sets of five with ten kilos traffic is terrible by the way "
    "forty minutes for six kilometres",
    "dip 3x8; pull_up 2x5 +10",
)
say("dead hang one minute ten then fifty five seconds then forty", "dead_hang 70s,55s,40s")
say("one arm chin ups two singles on the right one single on the left", "one_arm_chin_up R 1,1; one_arm_chin_up L 1")
say("pull ups ladder one two three four five and then back down four three two one", "pull_up 1,2,3,4,5,4,3,2,1")
say("weighted pull up single at fifty then a single at fifty five missed it", "pull_up 1 +50; pull_up 0 +55 fail")
say("ring rows three by twelve face pulls three by fifteen with fifteen kilos", "ring_row 3x12; face_pull 3x15 +15")
say(
    "okay new message dips four sets no wait three sets of ten with five kilos",
    "dip 3x10 +5",
)
say("push ups thirty twenty five twenty and a hundred metres to the nearest parking spot", "push_up 30,25,20")
# The parent
say("Kid (4) wanted a ride on my back for the push-ups. Vetoed. 3x10 without her.", "push_up 3x10")
say("5x3 pull ups +20 between the school run and a dentist for two kids", "pull_up 5x3 +20")
say("3 kids, 1 bathroom, 25 minutes. Dips 4x6 +10.", "dip 4x6 +10", mins=25, also=({"duration_min": None},))
say(
    "my son is 9 and does 6 pull-ups. his old man did 8, 8, 7 with 5 kg",
    "pull_up 8,8,7 +5",
)
say("L-sits on the playground bars, 15s 12s 10s, an audience of eleven toddlers", "l_sit 15s,12s,10s")
say(
    "had 30 min during football practice: chins 10x2 +20, one set every 90 s",
    "chin_up 10x2 +20",
    mins=30,
    also=({"duration_min": None},),
    maybe_unread=("one set every 90 s",),
)
say("baby slept 5h, me 4.5h. pull-ups 3x5, that's it", "pull_up 3x5", sleep=4.5)
say("Pistols 3x4 each leg while the pasta boiled (11 minutes)", "pistol_squat 3x4 LR")
# The retired climber
say(
    "Back in '94 I could do three one-armers on a door frame. Today: 3x3 pull-ups +10. Humbling.",
    "pull_up 3x3 +10",
)
say(
    "Fifty years of climbing and I had never timed a dead hang: 92 seconds, then 70.",
    "dead_hang 92s,70s",
)
say(
    "Offset work on the rings, free arm straight at elbow height, 2x2 each side. Then a wander up a 12 m slab.",
    "archer_ring_elbow 2x2 LR",
    **asked("movement: Offset work on the rings", "_ 2x2 LR"),
)
say("One-arm hangs, 10 s per hand, five rounds. Age 67, for the record.", "one_arm_hang 5x10s LR")
say(
    "Lowered myself from the top, chin grip, four singles, six seconds each, with 10 kg.",
    "chin_up 4x1 +10 ecc",
    **asked("movement: Lowered myself from the top, chin grip", "_ 4x1 +10 ecc"),
    maybe_unread=("six seconds each",),
)
say(
    "Pull-ups: 12, then 10, then 8. My knees would like it noted that the hut is at 2,300 m.",
    "pull_up 12,10,8",
)
say("Top half only, 3x4 with 15 kg (pull-ups). The lower half I leave to the young.", "pull_up 3x4 +15 upper")
say("Rows with the 20 kg bell, 3x10 per arm.", "row 3x10 LR +20")
say(
    "A quiet hour: wrist curls 2x20 at 8 kg, external rotations 2x15 a side with 3 kg.",
    "wrist_curl 2x20 +8; external_rotation 2x15 LR +3",
    mins=60,
    also=({"duration_min": None},),
)
# Teen slang
say("bro 15 pullups no cap 💀 then 11 then 9", "pull_up 15,11,9")
say("lowkey cooked on dips 12 10 8 but we move", "dip 12,10,8")
say("hit a 3 sec full front lever fr fr 🔥🔥", "full_front_lever 3s")
say("mu's 2x3 then i fell off the bar 😭 20 ppl watching", "muscle_up 2x3", **asked("movement: mu's", "_ 2x3"))
say("pullups 4x4 w 10 kilo bag 6/10 vibes overall", "pull_up 4x4 +10", ask_or="session_rpe: 6/10 vibes overall")
say("straddle planche 2s 2s 1s LETS GOOO", "straddle_planche 2s,2s,1s")
say("handstand pushup neg 3x3, gym bro says 20 is the new 10 whatever that means", "handstand_push_up 3x3 ecc")
say(
    "w session. chins 3x6 +5, dips 3x6 +5, all to failure",
    "chin_up 3x6 +5 @10; dip 3x6 +5 @10",
    sets_or=("chin_up 3x6 +5; dip 3x6 +5 @10",),
)
say(
    "archers 3x3 each side on the bar, left side mid", "archer_pull_up 3x3 LR", **asked("movement: archers", "_ 3x3 LR")
)
# The engineer who logs everything
say(
    "A1 pull-up +20: 3/3/3 · A2 dip +15: 6/6/6 · rest 120 s · HR max 158",
    "pull_up 3,3,3 +20; dip 6,6,6 +15",
    maybe_unread=("rest 120 s", "HR max 158"),
)
say(
    "Pull-up 5x3, load 22.5, tempo 20X1, rest 3:00, mean velocity 0.41 m/s",
    "pull_up 5x3 +22.5",
    maybe_unread=("tempo 20X1", "rest 3:00", "mean velocity 0.41 m/s"),
)
say(
    "set 1: 4 reps 20 kg rpe 7 | set 2: 4 reps 20 kg rpe 7.5 | set 3: 3 reps 20 kg rpe 8.5 (chin-ups)",
    "chin_up 4 +20 @7; chin_up 4 +20 @7.5; chin_up 3 +20 @8.5",
)
say(
    "chin-ups 3x3 with a quarter... sorry, with 25% of bodyweight on",
    "chin_up 3x3 +20",
    body=80,
    also=({"sets": sets("chin_up 3x3 +?"), "ask": [{"about": "load_kg", "span": "25% of bodyweight"}]},),
)
say("pull-ups 4x3 at 85%", "pull_up 4x3 +?", ask="load_kg: at 85%")
say(
    "Clusters, pull-up +35: 2+2+1, 20 s inside, three times, 4 min between",
    rounds(3, "pull_up 2 +35; pull_up 2 +35 link; pull_up 1 +35 link"),
    maybe_unread=("20 s inside", "4 min between"),
)
say(
    "Counterweight one-arm, assist 7.5 kg, L/R 2/3, 2/3",
    "one_arm_counterweight 2/3 LR -7.5; one_arm_counterweight 2/3 LR -7.5",
)
say(
    "Top set 2 @ 40, rpe 9. Back-off 3x4 @ 32. Pull-ups, pronated.",
    "pull_up 2 +40 @9; pull_up 3x4 +32",
)
say(
    "Warm-up: scap pulls 2x10, ring rows 1x8. Work: chin-ups 4x4 +22.5 kg. 48 min door to door.",
    "scapular_pull_up 2x10; ring_row 8; chin_up 4x4 +22.5",
    mins=48,
    also=({"duration_min": None},),
)
say("EMOM 8 min: 2 chins +10", "chin_up 8x2 +10", **asked("sets: EMOM 8 min", "", "chin_up 2 +10", "chin_up 8x2 +10"))
say(
    "Superset x4: 5 pull-ups +10 / 10 push-ups, HR never under 140",
    "pull_up 4x5 +10; push_up 4x10",
    maybe_unread=("HR never under 140",),
)
say("lat pulldown 60 kg: 12, 12, 10; hammer curl 14 kg: 10, 10", "lat_pulldown 12,12,10 +60; hammer_curl 10,10 +14")
# The garage gym in pounds
say("Wtd pullups 5x3 w/ 50, dips 4x6 w/ 70", "pull_up 5x3 +50lb; dip 4x6 +70lb", unit="lb")
say("35# chins 4x5, last set 2 in the tank", "chin_up 4x5 +35lb last@8", unit="lb")
say(
    "Pullups +25x5 +35x5 +45x3, 40 degrees in the garage",
    "pull_up 5 +25lb; pull_up 5 +35lb; pull_up 3 +45lb",
    unit="lb",
)
say(
    "one 20 kg plate on the belt because that's what the club had, pullups 3x4",
    "pull_up 3x4 +20",
    unit="lb",
)
say("dips: 3 plates of 10 lbs each on the chain so 30 lbs, 3x8", "dip 3x8 +30lb")
say("DB rows 55s 3x10 e/s", "row 3x10 LR +55lb", unit="lb")
say("Squats 225 5x5. Chins bodyweight 3x8. Truck still broken.", "squat 5x5 +225lb; chin_up 3x8", unit="lb")
say("banded pullups, the band helps 40 lb, 3x6", "band_pull_up 3x6 -40lb", unit="lb")
# Autocorrect and thumbs
say("Pill ups 4x4 +15, duck this keyboard", "pull_up 4x4 +15", **asked("movement: Pill ups", "_ 4x4 +15"))
say("weighed pull ups 5x3 +2O", "pull_up 5x3 +20", **asked("load_kg: +2O", "pull_up 5x3 +?"))
say("chin upa 3x6 +12.5kh", "chin_up 3x6 +12.5", **asked("load_kg: +12.5kh", "chin_up 3x6 +?"))
say("dops 3x8. *dips", "dip 3x8")
say("pullups4x5+10kg dips3x8+5kg", "pull_up 4x5 +10; dip 3x8 +5")
say("Dead hand 45s 40s 38s (hang! dead HANG)", "dead_hang 45s,40s,38s")
say("ringdips 3X5.chinups 3X5", "ring_dip 3x5; chin_up 3x5")
say("front level tuck 4x10s", "tuck_front_lever 4x10s", **asked("movement: front level tuck", "_ 4x10s"))
say("Pull us: 8,7,6", "pull_up 8,7,6", **asked("movement: Pull us", "_ 8,7,6"))
# Self-corrections and wishes
say("pull ups 5x3 +20 – sorry, 22.5, mixed up the plates", "pull_up 5x3 +22.5")
say("chins 4x5, no hang on, the last one was 4. +10", "chin_up 5,5,5,4 +10")
say("dips 3x8 +20... scratch that, +15", "dip 3x8 +15")
say("planned 4x4 +25 pull-ups, did 3x4 +25 because the bus leaves at 9", "pull_up 3x4 +25")
say("Next week I want 5x5 with 25. Today it was pull-ups 5x4 with 25.", "pull_up 5x4 +25")
say("coach's sheet says dips 4x6 +20. I did 4x6 +15, the 5s were all in use", "dip 4x6 +15")
say("should have been 3x10, was 3x7. ring dips", "ring_dip 3x7")
say("I did not do the dips. Pull-ups 4x4 +17.5 yes.", "pull_up 4x4 +17.5")
say("no pull-ups today, only push ups 3x25", "push_up 3x25")
say("oh sure, 5x5 at +50 was 'easy' said nobody. pull ups 5x2 +30", "pull_up 5x2 +30")
say(
    "left 3, right 3 - no, right was 2. One arm pull ups, hand on the biceps",
    "one_arm_hand_on_biceps L 3; one_arm_hand_on_biceps R 2",
)
say("my coach at the club wants 60 kg squats, I did 50: 3x8", "squat 3x8 +50")
# Efforts
say("chin-ups 5x3 +25, first four rpe 7, last 8.5", "chin_up 4x3 +25 @7; chin_up 3 +25 @8.5")
say("pull ups 3x4 +20 with two left in the tank each time", "pull_up 3x4 +20 @8")
say(
    "dips 4x5 +30, effort crept from 7 to 9",
    "dip 4x5 +30",
    ask="rpe: from 7 to 9",
    also=({"sets": sets("dip 5 +30 @7; dip 2x5 +30; dip 5 +30 @9"), "ask": []},),
)
say("ring pull ups 3x5, almost to failure", "ring_pull_up 3x5")
say("pull ups 3xAMRAP: 13, 10, 8", "pull_up 13,10,8")
say("pull-ups 4x4 +20, dips 3x8 +10, push ups 2x20. overall an 8", "pull_up 4x4 +20; dip 3x8 +10; push_up 2x20", srpe=8)
say("rpe 6 today. chin ups 3x5 +15", "chin_up 3x5 +15", srpe=6)
say("chins 4x4 +20 was brutal, dips 3x6 was a joke", "chin_up 4x4 +20; dip 3x6")
say(
    "planche leans 3x20s, couldn't have held a second longer on the last",
    "planche_lean 3x20s last@10",
    sets_or=("planche_lean 3x20s",),
)
say("one arm pulley 3x2 per side, 10 kg off, rpe 8.5", "one_arm_counterweight 3x2 LR -10 last@8.5")
# Drop sets, rest-pause, failures, pauses
say(
    "chins drop set: 4 at +20, strip it, 5 more at +10, strip it, 6 more",
    "chin_up 4 +20; chin_up 5 +10 link; chin_up 6 link",
)
say(
    "rest pause dips +20: 8 / 3 / 2, 15 sec each",
    "dip 8 +20; dip 3 +20 link; dip 2 +20 link",
    maybe_unread=("15 sec each",),
)
say("pull ups +35: got 3, got 3, died halfway through the third rep of the last", "pull_up 3,3 +35; pull_up 2 +35 fail")
say("went for the one arm chin, left arm no, right arm YES", "one_arm_chin_up L 0 fail; one_arm_chin_up R 1")
say(
    "pull ups 3x3 +15 with a 2 second stop at chin height of each rep... top I mean",
    "pull_up 3x3 +15 top",
    maybe_unread=("2 second stop",),
)
say("dips 3x4 +10 dead stop in the bottom", "dip 3x4 +10 bottom")
say(
    "full planche attempt, nope. straddle 3s though, and adv tuck 8s 8s",
    "full_planche 0s fail; straddle_planche 3s; advanced_tuck_planche 8s,8s",
    sets_or=(
        "full_planche ? fail; straddle_planche 3s; advanced_tuck_planche 8s,8s",
        "full_planche 0 fail; straddle_planche 3s; advanced_tuck_planche 8s,8s",
    ),
)
say("ring muscle ups 3 singles, 4th stuck in the transition", "ring_muscle_up 3x1; ring_muscle_up 0 fail")
say("three ladders 1-2-3 of chins with 10kg", "chin_up 3x1,2,3 +10")
say("held the top of the pull up 3 times for 12 seconds with 10 kg hanging", "pull_up_top_hold 3x12s +10")
# Ambiguous: these must be asked
say("dips 15", "dip ? +?", ask="reps: 15")
say("did 4 sets of pull ups", "pull_up ?,?,?,?", ask="reps: 4 sets of pull ups")
say("front lever 4x6s", "_ 4x6s", ask="movement: front lever")
say("planche 3x5 secs, 2 witnesses", "_ 3x5s", ask="movement: planche")
say("Pull-ups 3x3 +200, feeling strong", "pull_up 3x3 +?", ask="load_kg: +200", body=70)
say("3x8 +10 this morning", "_ 3x8 +10", ask="movement: 3x8 +10")
say(
    "pull ups either 4 or 5 sets of 3 with 20, lost count when my mum rang",
    "",
    "report",
    ask="sets: either 4 or 5 sets of 3",
    sets_or=("pull_up 4x3 +20", "pull_up 5x3 +20", "pull_up 3 +20", "pull_up ? +20"),
)
say("one arm pull ups: three with the good arm, two with the bad one", "one_arm_pull_up 3,2", ask="side: the good arm")
say("usual stuff, usual weights", "", "report", ask="sets: usual stuff, usual weights")
say("chins 3x6, 10 12.5", "chin_up 3x6 +?", ask="load_kg: 10 12.5")
say("half dips 3x10", "dip 3x10 rom?", ask="rom: half dips")
say(
    "5x3 pull ups +20: 3, 3, 2",
    "",
    "report",
    ask="sets: 5x3 pull ups +20: 3, 3, 2",
    sets_or=("pull_up 3,3,2 +20", "pull_up 5x3 +20", "pull_up ? +20"),
)
# Digits of the world
say("pull ups ٥x٣ +٢٠", "pull_up 5x3 +20")
say("dips ３×８ +１０kg", "dip 3x8 +10")
say("chin-ups ४x५", "chin_up 4x5")
say("L-sit 3️⃣x15s", "l_sit 3x15s")
say("pull-ups 5 × 3 @ 17½ kg", "pull_up 5x3 +17.5", **asked("load_kg: 17½ kg", "pull_up 5x3 +?"))
# Against the day's plan
say("done as written", "scapular_pull_up 2x8; archer_ring_elbow 2x2 LR; pull_up 4x4 +17.5; dip 3x6 +15", today=DAY)
say("all but the archers", "scapular_pull_up 2x8; pull_up 4x4 +17.5; dip 3x6 +15", today=DAY)
say("same but 2 on the last", "pull_up 4x3 +20; pull_up 2 +20", today=PULLS)
say(
    "as planned, second set only one on the left",
    "one_arm_counterweight 2/2 LR -10; one_arm_counterweight 1/2 LR -10; one_arm_counterweight 2/2 LR -10",
    today=ONE_ARM,
)
say("as planned but only 2 reps on set six", "pull_up 5x3 +20", today=PULLS, ask="sets: set six", sets_or=("",))
say("ticked everything off, 22.5 instead of 20, last one was a 9", "pull_up 5x3 +22.5 last@9", today=PULLS)
say("only the main lift today, as prescribed. kid's birthday, 12 guests", "pull_up 4x4 +17.5", today=DAY)
say("Did the plan but swapped the pull-ups for chins, same numbers", "chin_up 5x3 +20", today=PULLS)
say("plan + one extra set of pull ups because I felt 25 again", "pull_up 6x3 +20", today=PULLS)
say("first three sets as planned, dropped to 15 for the last two", "pull_up 3x3 +20; pull_up 2x3 +15", today=PULLS)
say("4 4 4 3 on the pull-ups, dips as planned", "pull_up 4,4,4,3 +17.5; dip 3x6 +15", today=PULLS_DIPS)
say("pull-ups as planned, one rep less on every set of dips", "pull_up 4x4 +17.5; dip 3x5 +15", today=PULLS_DIPS)
say("most of it", "", "report", today=DAY, ask="sets: most of it")
say("right arm as planned, left one rep less every set", rounds(3, "one_arm_counterweight 1/2 LR -10"), today=ONE_ARM)
say("done, but took 15 kg off instead of 10", "one_arm_counterweight 3x2 LR -15", today=ONE_ARM)
say("holds done, third one 7 secs", "tuck_planche 10s,10s,7s,10s", today=HOLDS)
say("12, 12, 10, 9 seconds. the carpet now knows my face", "tuck_planche 12s,12s,10s,9s", today=HOLDS)
say("5x3 +22.5 ✔", "pull_up 5x3 +22.5", today=PULLS)
say("5x3 @8", "pull_up 5x3 +20 last@8", today=PULLS)
say("everything done, all sets rpe 7", "pull_up 5x3 +20 @7", today=PULLS)
say("3 sets then the fire alarm went. rest of them not done", "pull_up 3x3 +20", today=PULLS)
say("bar was taken the whole hour, so ring rows 4x10", "ring_row 4x10", today=PULLS, maybe="equipment")
say(
    "Archers 2x2 a side, felt crisp, rpe 6. Nothing else today, the little one threw up.",
    "archer_ring_elbow 2x2 LR last@6",
    today=DAY,
)
say("done at 40 instead of 45", "pull_up 4x3 +40lb", today="m/weighted_pull_up pull_up 4x3 +45lb @8", unit="lb")
say("did the 4s with 20, dips skipped", "pull_up 4x4 +20", today=PULLS_DIPS)
say(
    "yesterday's plan done yesterday to the letter: pull-ups 5x3 +20",
    "pull_up 5x3 +20",
    on="2027-03-03",
    at="2027-03-04 10:00",
    tz="Europe/London",
)
# Diaries and several days
say(
    "Long day. Woke at 5:30, 2 coffees, train 20 min late, 3 meetings. At lunch I walked 25 minutes to the gym and did "
    "pull-ups: 3 with 20, 3 with 20, 3 with 22.5. A man of about 60 next to me did 8 with nothing and asked my age. "
    "Then dips, 3 sets of 8, no weight. I lost 2 kilos since January, apparently. Home by 9.",
    "pull_up 3,3 +20; pull_up 3 +22.5; dip 3x8",
)
say(
    "Dear diary coach,\nthe good: chin-ups 4x5 +12.5, last one @8.\nthe bad: no dips, shoulders tired.\nthe ugly: 14 "
    "euros for a sandwich at the station.",
    "chin_up 4x5 +12.5 last@8",
)
say(
    "Mon: chins 4x4 +10\nThu: chins 4x5 +10, dips 3x8\nrest of the week was 2 birthdays and 1 wedding",
    "chin_up 4x4 +10 on=2027-03-01; chin_up 4x5 +10 on=2027-03-04; dip 3x8 on=2027-03-04",
    at="2027-03-05 21:00",
    tz="Europe/London",
)
say(
    "Tuesday pull-ups 5x3 +20. Yesterday ring dips 8,8,7. Today nothing but a bath.",
    "pull_up 5x3 +20 on=2027-03-09; ring_dip 8,8,7 on=2027-03-10",
    at="2027-03-11 20:15",
    tz="Europe/Dublin",
)
say(
    "on the 2nd: squats 3x5 80kg, on the 4th: pull ups 3x5 +15",
    "squat 3x5 +80 on=2027-06-02; pull_up 3x5 +15 on=2027-06-04",
    at="2027-06-06 11:00",
    tz="America/Toronto",
)
say(
    "yesterday push-ups 3x20, today push-ups 3x22, tomorrow my funeral",
    "push_up 3x20 on=2027-09-14; push_up 3x22 on=2027-09-15",
    at="2027-09-15 19:00",
    tz="Africa/Johannesburg",
)
# Beside other training
say(
    "pull-ups 4x4 +15 then deadlifts 3x5 at 120",
    "pull_up 4x4 +15",
    unread=("deadlifts 3x5 at 120",),
    also=({"unread": [], "ask": asks("movement: deadlifts")},),
)
say("ran 8 km in 44 min, then chin-ups 3x8", "chin_up 3x8", unread=("ran 8 km in 44 min",))
say("dips 3x10 +10, rowed 2000 m after in 7:58", "dip 3x10 +10", unread=("rowed 2000 m after in 7:58",))
# More of everything
say(
    "Week in review, 3 trains missed and 1 tooth out.\nMonday: pull-ups 4x4 +17.5, last one @8\nTuesday: dentist, "
    "nothing\nThursday: dips 4x6 +10, L-sit 3x15s\nFriday: 2 h of gardening",
    "pull_up 4x4 +17.5 last@8 on=2027-03-01; dip 4x6 +10 on=2027-03-04; l_sit 3x15s on=2027-03-04",
    at="2027-03-06 10:10",
    tz="Europe/London",
    maybe_unread=("2 h of gardening",),
)
say(
    "You wrote: 'pull-ups 5x3 +20 @8, dips 3x8'. I did the pull-ups as you wrote and no dips, bus 6 minutes early.",
    "pull_up 5x3 +20",
    today="m/weighted_pull_up pull_up 5x3 +20 @8; a dip 3x8",
)
say(
    "voice note because of chalky hands monday pull ups four by four with fifteen kilos then on wednesday chin ups "
    "three by six with ten kilos and today just dead hangs forty seconds and thirty five seconds",
    "pull_up 4x4 +15 on=2027-03-01; chin_up 3x6 +10 on=2027-03-03; dead_hang 40s,35s on=2027-03-05",
    at="2027-03-05 18:30",
    tz="Europe/Dublin",
)
say(
    "3 coffees, 1 banana. Set one 5 pull-ups with 15 kg. Set two 5 with 15. Set three 4 with 15, pulse 160 after. "
    "Then 10 minutes of staring.",
    "pull_up 5,5,4 +15",
    maybe_unread=("pulse 160 after",),
)
say("pull ups 4x4 +20. yes i know, the plan said 5x3, i can't read before coffee", "pull_up 4x4 +20", today=PULLS)
say("club coach said 8 reps, my dad said 6, i did 7. chin ups, 3 sets, no weight", "chin_up 3x7")
say("3x5 pull ups with 20, then one more set of 5 with 25 for the camera", "pull_up 3x5 +20; pull_up 5 +25")
say("first pull up since the baby (14 months)!!! just one, but ONE", "pull_up 1")
say("dips 3x8 w/ a 16kg kettlebell, 2nd set only 7", "dip 8,7,8 +16")
say("chins: 20 reps in total, as 6, 5, 5, 4, with 10 kg", "chin_up 6,5,5,4 +10")
say("pull-ups 3x5 @ bodyweight, the belt is at my ex's", "pull_up 3x5", maybe="equipment")
say("+17,5 kg, 4 sets of 4, pull-ups, rpe 8 8 8 9", "pull_up 3x4 +17.5 @8; pull_up 4 +17.5 @9")
say(
    "L 2 R 3 one arm chins, then L 2 R 2, 41 years old, never too late",
    "one_arm_chin_up 2/3 LR; one_arm_chin_up 2/2 LR",
)
say(
    "skin tears on 2 fingers so no bar. 3x15 push ups, 3x30s hollow",
    "push_up 3x15; hollow_hold 3x30s",
    pain_or=("hand - -",),
    maybe="pain",
)
