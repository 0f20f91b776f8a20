"""How people write: dictation, typos, caps, emoji, chatter, coaches' notes, long and odd messages."""
# ruff: noqa: E501

from tests.corpus.lines import Theme

THEME = Theme("voices", "en")
say = THEME.say

# Dictation
say(
    "okay so pull ups i did four sets of five with fifteen kilos and then chin ups two sets of eight",
    "pull_up 4x5 +15; chin_up 2x8",
)
say("weighted dips three by eight with twenty two and a half kilos", "dip 3x8 +22.5")
say("uh one arm pull ups two on the left and one on the right", "one_arm_pull_up L 2; one_arm_pull_up R 1")
say("dead hang for sixty seconds then forty five seconds period", "dead_hang 60s,45s")
say("pull ups five five four with twenty kilograms comma last one rpe nine", "pull_up 5,5 +20; pull_up 4 +20 @9")
say("today i weighed seventy one point five", bw=71.5)
say(
    "slept seven and a half hours elbow is two out of ten",
    pain="elbow - 2",
    sleep=7.5,
)
say("front lever tuck five times ten seconds", "tuck_front_lever 5x10s")
say("archer pull ups three sets of four per arm um right one was harder", "archer_pull_up LR 3x4")
say("did ten pull ups nine pull ups eight pull ups", "pull_up 10,9,8")
# Typos and haste
say("pul ups 5x3 +20", "pull_up 5x3 +20")
say("pullusp 4x4 +15kg", "pull_up 4x4 +15")
say("chinup 3x5+10kg rpe8", "chin_up 3x5 +10 last@8")
say("weighted pull-upss 5x3w/20kg", "pull_up 5x3 +20")
say("dpis 3x8", "dip 3x8")
say("neutrl grip pulls 4x5 +10", "neutral_grip_pull_up 4x5 +10")
say("muscel ups 3x2", "muscle_up 3x2")
say("hansdtand 3x30s", "handstand_hold 3x30s")
say("hollow hodl 3x40sec", "hollow_hold 3x40s")
say("pullups5x3+20", "pull_up 5x3 +20")
say(
    "pull ups 5x3 +20lk",
    "pull_up 5x3 +20",
    ask_or="load_kg: +20lk",
    also=({"sets": [], "ask": [{"about": "load_kg", "span": "+20lk"}]},),
)
say("ringrows 3x12", "ring_row 3x12")
say("pul-ups 3x6 , dpis 3x10 , hollw holds 3x30s", "pull_up 3x6; dip 3x10; hollow_hold 3x30s")
say("lsit 4x12s", "l_sit 4x12s")
say("bicep crls 3x12 10kg", "biceps_curl 3x12 +10")
# Autocorrect
say("Chin-ups 5x5. Duck, that was heavy. +20", "chin_up 5x5 +20")
say("Pull-ups 5×3 + 20 kg – felt ducking great", "pull_up 5x3 +20")
# Caps and emoji
say("DIPS 5X5 +40!!! LETS GOOOO", "dip 5x5 +40")
say("💪 pull-ups 💪 5x3 💪 +20 💪", "pull_up 5x3 +20")
say("🔥🔥 MUSCLE UPS 🔥🔥 3 x 3 🔥🔥", "muscle_up 3x3")
say(
    "pull-ups 5️⃣x3️⃣ +20",
    "pull_up 5x3 +20",
    ask_or="sets: 5️⃣x3️⃣",
    also=({"sets": [], "ask": [{"about": "sets", "span": "5️⃣x3️⃣"}]},),
)
say("chin ups ✅ 4x6\ndips ✅ 3x8\nrows ❌", "chin_up 4x6; dip 3x8")
say(
    "PULLUPS\n5\n5\n4\n\n+17,5",
    "pull_up 5,5,4 +17.5",
    ask_or="load_kg: +17,5",
    also=({"sets": [], "ask": [{"about": "load_kg", "span": "+17,5"}]},),
)
# Chatter
say(
    "Rained all day, missed the bus, gym was packed with 30 people and someone stole my chalk. Anyway: chins 4x5 +12.5. Pizza now.",
    "chin_up 4x5 +12.5",
)
say("Room 12 was locked so we used the cage on floor 3. pull-ups 3x6 +10", "pull_up 3x6 +10")
say("42 today! 🎂 celebrated with dips 4x10", "dip 4x10")
say("watched 2 episodes, ate 3 eggs, did 4x4 pull ups +20", "pull_up 4x4 +20")
say("paid 35 euros for this new belt lol, dips 3x5 +30", "dip 3x5 +30")
say("Track 7 on the album is the one for front levers: full 3s, 3s, 2s", "full_front_lever 3s,3s,2s")
say("bus 25 late. chins 3x6 w/ 10", "chin_up 3x6 +10")
say(
    "haha 10/10 session, chin-ups 5x5",
    "chin_up 5x5",
    also=({"session_rpe": 10},),
    why="ten out of ten is praise here, no effort; some would take it as one",
)
say("it's 30 degrees in here!! ring dips 3x6", "ring_dip 3x6")
say("New shoes size 44 😎 squats 5x5 100kg", "squat 5x5 +100")
# Notes as coaches keep them
say("PU 5x3 +20 @8, Dips 3x8 BW, HLR 3x10", "pull_up 5x3 +20 last@8; dip 3x8; hanging_leg_raise 3x10")
say(
    "WPU: 20x5, 22.5x4, 25x3",
    "pull_up 5 +20; pull_up 4 +22.5; pull_up 3 +25",
    ask_or="load_kg: 20x5",
    also=({"sets": [], "ask": [{"about": "load_kg", "span": "20x5"}]},),
)
say(
    "CU +10: 6/6/6/5 | RD: 8/8/7",
    "chin_up 6,6,6,5 +10; ring_dip 8,8,7",
    ask_or="movement: RD",
    also=({"sets": [], "ask": [{"about": "movement", "span": "CU"}]},),
)
say("MU 5x2, HS 3x40s, L-sit 3x15s", "muscle_up 5x2; handstand_hold 3x40s; l_sit 3x15s")
say(
    "NGPU 4x5 +12.5",
    "neutral_grip_pull_up 4x5 +12.5",
    ask_or="movement: NGPU",
    also=({"sets": [], "ask": [{"about": "movement", "span": "NGPU"}]},),
)
say(
    "adv tuck FL 4x8s; tuck planche 4x10s; BL 3x12s",
    "advanced_tuck_front_lever 4x8s; tuck_planche 4x10s; back_lever 3x12s",
)
say(
    "Main: weighted pull-ups 4x4 @ 25 kg. Accessory: hammer curls 3x10 @ 14 kg, face pulls 3x15 @ 20 kg.",
    "pull_up 4x4 +25; hammer_curl 3x10 +14; face_pull 3x15 +20",
)
say(
    "Warm-up: scap pulls 2x8, ring rows 1x10. Main: chin-ups 5x4 +17.5.",
    "scapular_pull_up 2x8; ring_row 10; chin_up 5x4 +17.5",
)
say("pull ups\n+20 5 5 5\n+25 3 3", "pull_up 5,5,5 +20; pull_up 3,3 +25")
say("Chin-ups (supinated, shoulder width): 4 x 6 @ bodyweight", "chin_up 4x6")
say("pullups overhand 3x5, underhand 3x5, neutral 3x5", "pull_up 3x5; chin_up 3x5; neutral_grip_pull_up 3x5")
say("Strict pull ups, no kip. 12 / 10 / 9", "pull_up 12,10,9")
say("Wide grip pull-ups 3x6", "pull_up 3x6")
say("push-ups on rings? no, floor. 3x25", "push_up 3x25")
say("did my weighted pulls: 5 x 3, 20kg", "pull_up 5x3 +20")
say("goblet squats 3x12 20kg, then wall sit... no, just squats", "squat 3x12 +20")
say(
    "one arm chin-up negatives 2x1 per arm, hand on biceps 3x2 per arm",
    "one_arm_chin_up LR 2x1 ecc; one_arm_hand_on_biceps LR 3x2",
)
say("Kinda tired, kinda happy. Three sets of handstand pushups, 5 each.", "handstand_push_up 3x5")
say("no pull ups today but dips 4x8 +15", "dip 4x8 +15")
say("forgot my belt so pull-ups w/o weight 4x8", "pull_up 4x8", maybe="equipment")
say(
    "Hey coach! Hope you're well. Chins went 5, 5, 5, 4 with the 10 kg plate. Cheers, J.",
    "chin_up 5,5,5,4 +10",
    maybe="for_coach",
)
say("x " * 400 + "pull-ups 5x3 +20", "pull_up 5x3 +20")
say("blah " * 1500, "", "unknown", does_or=("smalltalk",), ask_or="intents: blah")
say("\u200fpull-ups 5x3 +20\u200f", "pull_up 5x3 +20")
say("pull-ups ５x３ +２０", "pull_up 5x3 +20", ask_or="sets: ５x３", why="full-width digits")
