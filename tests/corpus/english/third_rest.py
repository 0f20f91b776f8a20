"""A third look, written blind: bodies, days, mends, questions and talk, as many different people would put them."""

from typing import Any

from tests.corpus.lines import Theme, asks
from tests.corpus.notation import KG_PER_LB

THEME = Theme("third-rest", "en")
TODAY = "2027-03-10"


def say(text: str, work: str = "", does: str = "", **more: Any) -> None:
    """A message sent on a Wednesday evening unless it says otherwise."""
    THEME.say(text, work, does, **({"at": f"{TODAY} 18:42", "tz": "Europe/London"} | more))


MAIN = "m/weighted_pull_up pull_up 4x4 +20 @8; a dip 3x8 +10"

# Pain
say("inside of my right elbow, 3 out of 10, during the chins", pain="elbow_inner R 3 during")
say("outer elbow left 2-3 this morning", pain="elbow_outer L 3 morning")
say("Both wrists 2/10 after handstands", pain="wrist L 2 after; wrist R 2 after")
say("5/10", pain="- - 5")
say("zero pain today", pain="- - 0")
say("pain free for the first time since my second kid was born", pain="- - 0")
say(
    "my knee does hurt when I go down the stairs, I give it a 4",
    pain="knee - 4",
    pain_or=("knee - 4 during",),
)
say(
    "lower back 5 after the squats, 2 this morning. I am 41 and it shows",
    pain="lower_back - 5 after; lower_back - 2 morning",
)
say("neck 2/10 from sleeping on a hospital chair", pain="neck - 2", pain_or=("neck - 2 rest",))
say("right hip 1/10, both kids sat on it", pain="hip R 1")
say("woke up with a sore bicep on the left, maybe a 3", pain="biceps L 3 morning", pain_or=("biceps L 3",))
say("fingers are killing me after 3 hours on plastic holds, call it a 6", pain="hand - 6 after")
say("elbow went from a 4 last week to a 2", pain="elbow - 2", pain_or=("elbow - 4; elbow - 2",))
say("shoulder R 0, elbow R 0, ego 7", pain="shoulder R 0; elbow R 0")
say(
    "it hurts in the upper back when I row, sorry, no idea what number", pain="upper_back - - during", maybe="for_coach"
)
say("left achilles 2", pain="ankle L 2", pain_or=("other L 2",))
say("my shin 3/10, walked into a pram", pain="other - 3")
say("inner elbows: left 2, right 4", pain="elbow_inner L 2; elbow_inner R 4")
say("right wrist 11/10 lol", pain="wrist R -", ask="score: 11/10")
say("bit of elbow, bit of knee, both a 1", pain="elbow - 1; knee - 1")
say("the elbow behaves, 0 for the third day", pain="elbow - 0")
say(
    "cant tell if its a 3 or a 5, left elbow",
    pain="elbow L -",
    ask="score: a 3 or a 5",
    also=({"pain": [{"site": "elbow", "side": "left", "score": 5, "when": None}], "ask": []},),
)
say("tennis elbow on the right again, 4/10", pain="elbow_outer R 4", pain_or=("elbow R 4",))
say(
    "golfers elbow left: 2 in the morning, 0 in training",
    pain="elbow_inner L 2 morning; elbow_inner L 0 during",
    pain_or=("elbow L 2 morning; elbow L 0 during",),
)
say("left forearm a three while hanging", pain="forearm L 3 during")
say("I have a pain of 4 at the front of the left shoulder when I rest on the sofa", pain="shoulder L 4 rest")
say("my wife says my shoulder can't hurt because I carry 2 toddlers. it's a 3, right one", pain="shoulder R 3")
# Warning signs, real
say(
    "heard a loud pop in my left shoulder on the second rep",
    pain="shoulder L - during",
    flags="pop",
    pain_or=("shoulder L -",),
    maybe="report",
)
say("right elbow swollen like a tennis ball since last night", pain="elbow R -", flags="swelling")
say("big purple bruise on my right arm, dont know where from", pain="other R -", flags="bruising")
say(
    "pinky and ring finger on the left go numb when i hang",
    pain="hand L - during",
    flags="numbness",
    pain_or=("hand L -",),
)
say("cannot lift my right arm since this afternoon, simply no power in it", pain="other R -", flags="sudden_weakness")
say("the left shoulder wakes me at 3 at night, every night", pain="shoulder L - rest", flags="night_pain")
say(
    "got chest pains on the stairs today, 4 floors", pain="chest - -", flags="chest_pain", pain_or=("chest - - during",)
)
say("couldnt breathe properly after set two, scared me a bit", flags="breathless", maybe="report")
say("nearly fainted after the squats", flags="dizziness", maybe="report")
say("knee locked at 90 degrees, had to push it straight with my hand", pain="knee - -", flags="locking")
say("my thumb points the wrong way since the fall", pain="hand - -", flags="deformity", pain_or=("hand - - after",))
say("fever 39, off today", does="ill", flags="fever", dates=TODAY, maybe="missed")
say("temperature 38.6 since yesterday, in bed", does="ill", flags="fever", dates="2027-03-09..")
say(
    "everything went black for a second when i stood up from the mat, dips 3x8 were before that",
    "dip 3x8",
    flags="dizziness",
)
say(
    "left wrist swollen, 4/10, fell off my bike at 12 km/h",
    pain="wrist L 4",
    flags="swelling",
    pain_or=("wrist L 4 after",),
)
say(
    "snap in the right biceps at rep 2 of 3 and the muscle looks balled up now",
    pain="biceps R - during",
    flags="pop deformity",
    pain_or=("biceps R -",),
    maybe="report",
    flags_or=("deformity",),
)
# Warning signs that are none
say("no pop, no swelling, just a dull 2 in the right elbow", pain="elbow R 2")
say("Nothing numb, nothing swollen. Left shoulder 1.", pain="shoulder L 1")
say("ears popped on the flight, landed, slept 6h", does="report", sleep=6)
say("my mind is numb after 3 night shifts", does="smalltalk", does_or=("unknown",))
say("that set took my breath away, in a good way. chins 3x5 +15", "chin_up 3x5 +15")
say("dizzy with joy: first ring muscle up!!", "ring_muscle_up 1")
say("bruised ego, nothing else. push ups 3x20", "push_up 3x20")
say("swollen with pride: dips 3x10 bodyweight", "dip 3x10")
say("In 2015 I popped my shoulder out skiing, never a problem since. Pull-ups 3x5.", "pull_up 3x5")
say("Years ago that shoulder kept me up at night. Now 0/10.", pain="shoulder - 0")
say("my daughter's ankle is swollen after ballet, so no training for me tonight", does="missed", dates=TODAY)
say("husband has chest pain, we're in A&E, skip today", does="missed", dates=TODAY)
say("a patient fainted on me at 4 am. anyway: dips 3x8", "dip 3x8")
say("always scared my elbow will pop on negatives. nothing happened. pull up negatives 3x1 +30", "pull_up 3x1 +30 ecc")
# Bodyweight
say("scale says 82.4", bw=82.4, body=82)
say("weight 71,2 kg today in the morning", bw=71.2)
say("bw 165", bw=165 * KG_PER_LB, unit="lb", body=75.3)
say(
    "11 stone 6 on the scales",
    bw=160 * KG_PER_LB,
    body=72,
    also=({"bodyweight_kg": None, "ask": asks("bodyweight_kg: 11 stone 6")},),
)
say("weighed in at 68 even, down 2 kilos since christmas", bw=68, body=69)
say("lost 3 kg in the flu weeks, now at 77.5 kg", bw=77.5, body=79, maybe="ill")
say("my dog weighs 31 kg now", does="smalltalk", does_or=("unknown",))
say("bodyweight 7.2", does="bodyweight", ask="bodyweight_kg: 7.2")
say("bodyweight 72 or 73, the scale jumps", does="bodyweight", ask="bodyweight_kg: 72 or 73")
say("I'm 79.9 kg!! finally under 80", bw=79.9, body=80.4)
say("I can't stop eating, 83.0 kg on the scale", bw=83, body=81)
# Sleep, effort, minutes
say("slept 7.5 hours", does="report", sleep=7.5)
say("5h sleep, two new baby teeth", does="report", sleep=5)
say("slept six and a half hours, session was a 6 out of 10", sleep=6.5, srpe=6)
say("rpe for the whole thing 8.5, 70 minutes", srpe=8.5, mins=70)
say("session took me an hour and a quarter", mins=75)
say("trained 1h20 today, details later, 2 kids to bed first", mins=80)
say("went to the gym, felt great, 25 min walk there and 25 back", does="smalltalk", does_or=("unknown",))
say("trained today! loved it", does="smalltalk", does_or=("unknown",))
say("move tomorrow to friday?", does="move", dates="2027-03-11..2027-03-12")
say("can friday's session be on sunday instead, double shift", does="move", dates="2027-03-12..2027-03-14")
say("Rota changed. Thursday's pull day to Saturday please.", does="move", dates="2027-03-11..2027-03-13")
say("I would like to exchange today with tomorrow", does="move", dates="2027-03-10..2027-03-11")
say("could we do mondays one on tuesday", does="move", dates="2027-03-15..2027-03-16")
say("move my next session please", does="move", ask="dates: my next session", also=({"ask": []},))
say("missed yesterday, double shift, 16 hours", does="missed", dates="2027-03-09")
say("didn't make it on Monday, kid's recital", does="missed", dates="2027-03-08")
say("skipping today, 2 hours of sleep", does="missed", dates=TODAY, sleep=2)
say("won't train on Saturday, wedding, 120 guests", does="missed", does_or=("away",), dates="2027-03-13")
say("missed monday and tuesday, 2 exams", does="missed", dates="2027-03-08..2027-03-09")
say("missed today", does="missed", dates="2027-03-09", at="2027-03-10 02:30")
say(
    "can i train tomorrow instead of today",
    does="move",
    dates="2027-03-09..",
    dates_or=("",),
    ask="dates: tomorrow",
    at="2027-03-10 02:30",
)
# Days: away, ill, paused
say("away from saturday to tuesday", does="away", dates="2027-03-13..2027-03-16")
say(
    "In Lyon for work 15-21 March, 3 floors of hotel gym",
    does="away",
    dates="2027-03-15..2027-03-21",
    maybe="equipment",
)
say("Gone climbing from the 20th, back on the 27th", does="away", dates="2027-03-20..2027-03-26")
say("I am away next week, whole of it", does="away", dates="2027-03-15..2027-03-21")
say("skiing until the 21st, 40 cm fresh snow", does="away", dates="2027-03-10..2027-03-21")
say(
    "off to see family for two weeks from Monday",
    does="away",
    dates="2027-03-15..2027-03-28",
    dates_or=("2027-03-15..2027-03-29",),
)
say("away from 1 April, no idea when I return", does="away", dates="2027-04-01..")
say(
    "no bar in the hotel till sunday, only floor space",
    does="equipment",
    does_or=("away equipment",),
    dates="2027-03-10..2027-03-14",
    dates_or=("",),
)
say("flu since monday", does="ill", dates="2027-03-08..")
say("sick today, staying in bed with 3 seasons of something", does="ill", dates=TODAY, maybe="missed")
say("had a cold from friday to sunday, fine again", does="ill", dates="2027-03-05..2027-03-07", maybe="resume")
say("food poisoning, out until saturday", does="ill", dates="2027-03-10..2027-03-13")
say(
    "my kid is ill, stuck at home till friday, no training",
    does="missed",
    does_or=("away", "pause"),
    dates="2027-03-10..2027-03-12",
)
say("pause me until 1 May", does="pause", dates="2027-03-10..2027-05-01")
say(
    "put the plan on ice for three weeks",
    does="pause",
    dates="2027-03-10..2027-03-30",
    dates_or=("2027-03-10..2027-03-31",),
)
say("need a break from training, dont know how long", does="pause", dates="2027-03-10..")
say(
    "freeze the programme from Monday until the 2nd, thesis, 80 pages to go",
    does="pause",
    dates="2027-03-15..2027-04-02",
)
say("ok im ready again, switch it back on", does="resume")
say("the break is over, please start my plan again", does="resume")
# Mends and undoing
say("typo, dips were +15 not +25", fix=("load_kg", 25, 15, "dip"), on=None)
say("that last set was 3, not 4", fix=("reps", 4, 3, None, None, "last"), on=None)
say("first set was with 20 kg, not 22.5", fix=("load_kg", 22.5, 20, None, None, 1), on=None)
say(
    "I wrote bodyweight 71, meant 77",
    fix=("bodyweight_kg", 71, 77),
    on=None,
    also=({"bodyweight_kg": 77, "intents": ["correction", "bodyweight"]},),
)
say(
    "the chins yesterday were 4x5, not 4x4",
    "chin_up 4x5 +?",
    fix=("reps", 4, 5, "chin_up"),
    on="2027-03-09",
    sets_or=("chin_up 4x5", ""),
    also=({"intents": ["report", "correction"]},),
)
say("sleep was 6 hours not 7", fix=("sleep_h", 7, 6), on=None, also=({"sleep_h": 6},))
say("session took 60 min, not 90", fix=("duration_min", 90, 60), on=None, also=({"duration_min": 60},))
say("they were chin-ups, not pull-ups. autocorrect hates me", fix=("movement", "pull_up", "chin_up"), on=None)
say("rpe of the last one was 9, i put 7", fix=("rpe", 7, 9, None, None, "last"), on=None)
say(
    "the counterweight was 10 kg, not 12",
    fix=("assist_kg", 12, 10),
    on=None,
    also=(
        {
            "correction": {
                "field": "assist_kg",
                "was": 12,
                "now": 10,
                "movement": "one_arm_counterweight",
                "side": None,
                "which": "all",
            }
        },
    ),
)
say("I said 3 sets of dips, it was 4", fix=("sets", 3, 4, "dip"), on=None)
say("set two on the left was 2 reps, not 3", fix=("reps", 3, 2, None, "left", 2), on=None)
say("undo", does="undo")
say("please delete my last entry, a toddler typed it", does="undo")
say("forget what i just sent, that was for my brother", does="undo")
# Questions
say("what am i doing today", does="plan_today", dates_or=(TODAY,))
say("send me todays sets pls, at the gym in 20 min", does="plan_today", dates_or=(TODAY,))
say("whats tomorrow?", does="plan_today", does_or=("plan_week",), dates="2027-03-11", dates_or=("",))
say("how does my week look", does="plan_week")
say("which days do I pull this week? have 3 night shifts to place", does="plan_week")
say("why only 17.5 today?", does="why")
say("why are there no dips any more", does="why")
say("For what reason must I stop already at RPE 7?", does="why")
say("am i getting stronger or just older", does="progress")
say("show my pull-up curve since january", does="progress")
say("how far from the one arm am I", does="progress")
say("help", does="help")
say("what can you do?", does="help")
say("how does this bot work, i'm 67", does="help")
say("can a human look at my video please", does="for_coach")
say("message for the coach: thank you for the 2 calls", does="for_coach")
say("tell coach my new number ends in 44", does="for_coach")
# Things and goodbyes
say("my rings broke", does="equipment")
say("the new gym has no pulley", does="equipment")
say("got a dip belt now, 30 euros second hand", does="equipment")
say("only a 16 and a 24 kg kettlebell at my mum's", does="equipment", maybe="away")
say("stop writing to me", does="stop")
say("unsubscribe", does="stop")
# Talk
say("thanks!", does="smalltalk")
say("good morning from 2,300 m", does="smalltalk")
say("3 pigeons on my bar again lol", does="smalltalk")
say("my cat is 15 today 🎂", does="smalltalk", does_or=("unknown",))
say("4 kids, 2 cars, 0 patience", does="smalltalk", does_or=("unknown",))
say("my progress in pastry: 4 croissants", does="smalltalk", does_or=("unknown",))
say("the bus stop is 3 minutes closer to the new gym", does="smalltalk", does_or=("unknown",))
say("plan for tonight: pizza", does="smalltalk", does_or=("unknown",))
say("moved house today, fourth floor, no lift 😅", does="smalltalk", does_or=("unknown",))
say(
    "back in the day I did +60 for a single, 20 kilos ago",
    does="smalltalk",
    does_or=("unknown",),
    maybe_unread=("+60 for a single",),
)
say(
    "my brother did 18 pull ups yesterday, show-off",
    does="smalltalk",
    does_or=("unknown",),
    maybe_unread=("18 pull ups",),
)
say(
    "one day I'll do 3 one arm pull ups. one day.",
    does="smalltalk",
    does_or=("unknown",),
    maybe_unread=("3 one arm pull ups",),
)
say("blorp 12 fnord", does="unknown", maybe_unread=("12",), ask_or="intents: blorp 12 fnord")
say("🤷", does="unknown", does_or=("smalltalk",))
# Mixtures
say(
    "pull-ups 4x4 +20, left elbow 3 after, slept 6h. how's the rest of the week looking?",
    "pull_up 4x4 +20",
    "plan_week",
    pain="elbow L 3 after",
    sleep=6,
)
say("missed monday. dips today 4x6 +15", "dip 4x6 +15", "missed", dates="2027-03-08")
say("BW 74.1, chin-ups 3x6 +10, dips 3x8, session 7", "chin_up 3x6 +10; dip 3x8", bw=74.1, srpe=7, body=74)
say("ill since yesterday, fever 38.9, please tell the coach", does="ill for_coach", flags="fever", dates="2027-03-09..")
say("away 20-27 March. and why did my load go down?", does="away why", dates="2027-03-20..2027-03-27")
say("dips 3x8 +10. the belt ripped on the way out though", "dip 3x8 +10", "equipment")
say("all done, no pain", "pull_up 4x4 +20; dip 3x8 +10", pain="- - 0", today=MAIN)
say(
    "done as planned, right shoulder 2/10 during the dips, bw 80.2",
    "pull_up 4x4 +20; dip 3x8 +10",
    pain="shoulder R 2 during",
    bw=80.2,
    body=80,
    today=MAIN,
)
say("pause until sunday, lower back 4", does="pause", dates="2027-03-10..2027-03-14", pain="lower_back - 4")
say(
    "skipped yesterday, left wrist was a 5. today push ups 3x15",
    "push_up 3x15",
    "missed",
    pain="wrist L 5",
    dates="2027-03-09",
)
say("back from Spain, heavier (79.5 kg) and ready, switch me on", does="resume", bw=79.5, body=77)
say(
    "what's today? also slept 5.5h and left elbow 1/10",
    does="plan_today",
    sleep=5.5,
    pain="elbow L 1",
    dates_or=(TODAY,),
)
say(
    "can we move friday to saturday, and tell coach the clip is up",
    does="move for_coach",
    dates="2027-03-12..2027-03-13",
)
say("how far am I from the one arm and why no archers this week", does="progress why")
say("why oh why did I eat 3 burgers. dips 4x8", "dip 4x8")
say("thanks coach!! pull ups 5x5 no weight, 38 min, easy", "pull_up 5x5", mins=38)
say("couldnt sleep (3h), trained anyway, rpe 9 for what should be a 6", srpe=9, sleep=3)
say("tell coach i did chins 3x5 +20 and that my son, 7, did his first", "chin_up 3x5 +20", "for_coach")
