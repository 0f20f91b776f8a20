"""A second look, written blind: days, wishes, mends, what must be asked, what finds no place, and mixtures."""

from typing import Any

from tests.corpus.lines import Theme
from tests.corpus.notation import sets

THEME = Theme("second-wishes", "en")


def say(text: str, work: str = "", does: str = "", **more: Any) -> None:
    """A message sent on a Wednesday evening unless it says otherwise."""
    THEME.say(text, work, does, **({"at": "2027-02-17 18:42", "tz": "Europe/London"} | more))


MAIN = "m/weighted_pull_up pull_up 4x4 +20 @8"
LEVER = "s advanced_tuck_front_lever 4x10s @8"

# Days
say("monday: chins 4x5 +10", "chin_up 4x5 +10", on="2027-02-15")
say("forgot to log yesterdays dips, 4x6 +20", "dip 4x6 +20", on="2027-02-16")
say("on friday I did pull ups 3x5", "pull_up 3x5", on="2027-02-12")
say("2 days ago, ring rows 3x15", "ring_row 3x15", on="2027-02-15")
say("sat pull ups 5x5, sun dips 5x5", "pull_up 5x5 on=2027-02-13; dip 5x5 on=2027-02-14")
say("14/2 pull ups 3x3 +30", "pull_up 3x3 +30", on="2027-02-14", ask_or="performed_on: 14/2")
say("Feb 9th: muscle ups 4x2", "muscle_up 4x2", on="2027-02-09")
say("last night chins 3x8", "chin_up 3x8", on="2027-02-16")
say("this morning before work push ups 4x25", "push_up 4x25")
say("late one, pull ups 4x4 +15", "pull_up 4x4 +15", at="2027-02-18 01:20", on="2027-02-17")
say("yesterday dips 3x10", "dip 3x10", at="2027-02-18 02:10", on="2027-02-17")
say(
    "sometime last weekend did dips 3x10",
    "dip 3x10",
    on=None,
    ask="performed_on: last weekend",
    on_or=("2027-02-13", "2027-02-14"),
)
say("Tuesday pull ups 4x4 +20 and today dips 3x6 +15", "pull_up 4x4 +20 on=2027-02-16; dip 3x6 +15 on=2027-02-17")
# Plans, why, progress
say("what do I have to do today", does="plan_today", dates_or=("2027-02-17",))
say("todays workout pls", does="plan_today", dates_or=("2027-02-17",))
say("send me the plan", does="plan_today", does_or=("plan_week",))
say("whats tomorrow", does="plan_week", does_or=("plan_today",), dates_or=("2027-02-18",))
say("what does my week look like", does="plan_week")
say("which days am I training this week??", does="plan_week")
say("why only 3 sets today", does="why")
say("how come i'm doing negatives again", does="why")
say("what's the reason for the lighter weight?", does="why")
say("am I getting stronger at all?", does="progress")
say("how close am I to a one arm chin", does="progress")
say("what's my best weighted pull up so far", does="progress")
# Moves and absences
say("can i do thursdays session on friday", does="move", dates="2027-02-18..2027-02-19")
say("need to push tomorrow to saturday, work dinner", does="move", dates="2027-02-18..2027-02-20")
say("any chance we swap today for tomorrow", does="move", dates="2027-02-17..2027-02-18")
say("didn't train yesterday sorry", does="missed", dates="2027-02-16")
say("skipped today, too knackered", does="missed", dates="2027-02-17")
say("couldn't train Monday because of the kids", does="missed", dates="2027-02-15")
say("I'm away from Friday till next Wednesday", does="away", dates="2027-02-19..2027-02-24")
say("on holiday 1-8 march, no gym at all", does="away equipment", dates="2027-03-01..2027-03-08", does_or=("away",))
say("travelling for work all next week, back monday the 1st", does="away", dates="2027-02-22..2027-02-28")
say("got covid, out until further notice", does="ill", dates="2027-02-17..", does_or=("ill pause",))
say("stomach bug today, not training", does="ill", dates_or=("2027-02-17..",), dates="2027-02-17", maybe="missed")
say("been sick since sunday but getting better", does="ill", dates="2027-02-14..")
say(
    "I've got a cold, should I train?",
    does="ill",
    dates="2027-02-17..",
    dates_or=("2027-02-17",),
    does_or=("ill for_coach", "ill plan_today", "ill help"),
)
say("pause my program until the 28th please", does="pause", dates="2027-02-17..2027-02-28")
say(
    "taking a break for 2 weeks",
    does="pause",
    dates="2027-02-17..2027-03-02",
    dates_or=("2027-02-17..2027-03-03", "2027-02-17..", "2027-02-18..2027-03-03"),
    does_or=("away",),
)
say("back from holiday and ready to go", does="resume")
say("feeling healthy again, let's restart", does="resume")
say("please stop messaging me", does="stop")
say("unsubscribe", does="stop")
say("help", does="help")
say("how do i log a hold?", does="help")
say(
    "gym closed for refurb, only have rings at home for the next 2 weeks",
    does="equipment",
    dates_or=("2027-02-17..2027-03-02", "2027-02-17..2027-03-03", "2027-02-17.."),
)
say("bought a 10kg and a 1.25 plate so I can load in smaller steps now", does="equipment")
say("tell coach I'll send the video later", does="for_coach")
say("@coach can you look at my form vid when you get a min", does="for_coach")
say("thanks mate", does="smalltalk")
say("👍", does="smalltalk", does_or=("unknown",))
say("🏋️🔥🔥", does="smalltalk", does_or=("unknown",))
say("good morning!", does="smalltalk")
say("lkjsdf", does="unknown")
say(
    "7 7 7 hgf",
    does="unknown",
    also=(
        {"intents": ["report"], "performed_on": "2027-02-17", "ask": [{"about": "movement", "span": "7 7 7"}]},
        {
            "intents": ["report"],
            "performed_on": "2027-02-17",
            "sets": sets("_ 3x7"),
            "ask": [{"about": "movement", "span": "7 7 7"}],
        },
        {"ask": [{"about": "intents", "span": "7 7 7 hgf"}]},
    ),
    maybe_unread=("7 7 7",),
)
say("my dog ate my lifting straps", does="smalltalk", does_or=("unknown", "equipment"))
say("привет", does="unknown", does_or=("smalltalk",))
# Mends
say(
    "sorry that was 4 sets not 5",
    fix=("sets", 5, 4),
    on=None,
    also=({"intents": ["correction"], "ask": [{"about": "sets", "span": "4 sets not 5"}]},),
)
say("oops I meant dips 3x8 not 3x10", "dip 3x8", fix=("reps", 10, 8, "dip"), on=None, also=({"sets": []},))
say(
    "typo, bw is 71.5 not 75.1",
    does="",
    bw=71.5,
    fix=("bodyweight_kg", 75.1, 71.5),
    on=None,
    also=({"bodyweight_kg": None, "intents": ["correction"]}, {"bodyweight_kg": None}),
)
say(
    "it was the right elbow not the left",
    fix=("side", "left", "right"),
    on=None,
    pain_or=("elbow R -",),
    also=(
        {"intents": ["pain", "correction"]},
        {"intents": ["correction", "pain"], "pain": [{"site": "elbow", "side": "right", "score": None, "when": None}]},
        {"correction": {"field": "pain", "was": None, "now": None, "movement": None, "side": None, "which": "all"}},
    ),
)
say("second set was 4 actually", fix=("reps", None, 4, None, None, 2), on=None)
say("change the chins to 17.5kg pls", fix=("load_kg", None, 17.5, "chin_up"), on=None)
say("rpe on the last one was more like 9 than 8", fix=("rpe", 8, 9, None, None, "last"), on=None)
say(
    "yesterday's pull ups were +25 not +20",
    fix=("load_kg", 20, 25, "pull_up"),
    on="2027-02-16",
    also=({"performed_on": None},),
)
say("delete that", does="undo")
say("undo my last message", does="undo")
say("ignore that, wrong person", does="undo")
# Must be asked
say("dips 15", "dip ? +?", ask="reps: 15", sets_or=("",))
say("chin ups 12.5", "chin_up ? +12.5", ask="reps: 12.5", sets_or=("", "chin_up ? +?"))
say("4x4 with 20", "_ 4x4 +20", ask="movement: 4x4 with 20", sets_or=("",))
say("front lever 3x8s", "_ 3x8s", ask="movement: front lever", sets_or=("",))
say("front lever 3x8s, felt strong", "advanced_tuck_front_lever 3x8s", today=LEVER)
say("planche 4x6s", "_ 4x6s", ask="movement: planche", sets_or=("",))
say("archers 3x4 each", "_ 3x4 LR", ask="movement: archers", sets_or=("",))
say("pull ups 5x3 +200kg", "pull_up 5x3 +?", ask="load_kg: +200kg", sets_or=("",))
say("pull ups 300 reps with 40kg in one set", "pull_up ? +40", ask="reps: 300 reps", sets_or=("", "pull_up ? +?"))
say("dead hang 3 hours", "dead_hang ?", ask="hold_s: 3 hours", sets_or=("",))
say("one arm chin 3x1", "one_arm_chin_up 3x1", ask="side: 3x1", also=({"ask": []},))
say("pull ups a few sets of 5", "", ask="sets: a few sets", does="report", sets_or=("pull_up 5", "pull_up ?"))
say("chins about 6-8 reps, 3 sets", "chin_up 3x?", ask="reps: 6-8", sets_or=("",))
say(
    "chins 4x6 @9",
    "chin_up 4x6 +?",
    ask="load_kg: @9",
    sets_or=("", "chin_up 4x6", "chin_up 4x6 last@9", "chin_up 4x6 +? last@9"),
)
say("did the usual", does="report", ask="sets: the usual")
say("rows 3x10", "row 3x10", sets_or=("ring_row 3x10",), ask_or="movement: rows")
say("slept 70 hours", does="report", ask="sleep_h: 70 hours", does_or=("unknown",))
say("session took 900 minutes", does="report", ask="duration_min: 900 minutes")
say("partial pull ups 3x6 +10", "pull_up 3x6 +10 rom?", ask="rom: partial")
say("dips 3x8 rpe 18", "dip 3x8", ask="rpe: rpe 18", sets_or=("dip 3x?",))
say("could we move a session", does="move", ask="dates: a session")
say(
    "5",
    does="unknown",
    does_or=("pain",),
    also=({"intents": ["pain"], "pain": [{"site": None, "side": None, "score": 5, "when": None}]},),
)
# No place
say("ran 8k in 41 min then chins 3x8", "chin_up 3x8", unread=("ran 8k in 41 min",))
say("deadlift 5x5 120kg, pull ups 3x6 +10", "pull_up 3x6 +10", unread=("deadlift 5x5 120kg",))
say(
    "boulder session 2h, sent a 7a, then hangboard 20mm 6x10s +15",
    does="report",
    unread=("hangboard 20mm 6x10s +15",),
    maybe_unread=("boulder session 2h", "sent a 7a"),
    does_or=("unknown", "smalltalk"),
    also=(
        {"duration_min": 120, "intents": ["report"]},
        {"duration_min": 120, "intents": ["report"], "unread": ["hangboard 20mm 6x10s +15", "7a"]},
    ),
)
say(
    "kb swings 5x20 24kg and bench 3x5 80",
    does="report",
    unread=("kb swings 5x20 24kg", "bench 3x5 80"),
    does_or=("unknown",),
    on_or=(None,),
)
say("rowed 2000m in 7:50, dips 4x10", "dip 4x10", unread=("rowed 2000m in 7:50",))
say("30 burpees for time and then ring dips 3x6", "ring_dip 3x6", unread=("30 burpees",))
say("hr avg 132 max 171, pull ups 10x3", "pull_up 10x3", maybe_unread=("hr avg 132 max 171",))
# Mixtures
say(
    "pull ups 4x4 +20 last @8, elbow 1/10 left, bw 71, slept 8h, can we move friday to saturday?",
    "pull_up 4x4 +20 last@8",
    does="move",
    pain="elbow L 1",
    bw=71,
    sleep=8,
    dates="2027-02-19..2027-02-20",
)
say(
    "ok done as planned, missed monday though cos of the dentist. whats on friday",
    "pull_up 4x4 +20",
    does="missed plan_week",
    today=MAIN,
    dates="2027-02-15",
    does_or=("report missed plan_today", "report missed"),
)
say(
    "Dips 3x8 +10, then my wrist swelled up, 4/10 right. Tell coach please. Also away next week mon-thu",
    "dip 3x8 +10",
    does="for_coach away",
    pain="wrist R 4 after",
    pain_or=("wrist R 4",),
    flags="swelling",
    dates="2027-02-22..2027-02-25",
)
say(
    "slept bad 5h, kids ill, still did chins 3x5 +10 and l sit 3x10s, why no dips this week?",
    "chin_up 3x5 +10; l_sit 3x10s",
    does="why",
    sleep=5,
)
say(
    "Yesterday 5x3 pull ups +20 @8 last, today bw 73.2 and no pain in the elbow. What's today?",
    "pull_up 5x3 +20 last@8",
    does="plan_today",
    on="2027-02-16",
    bw=73.2,
    pain="elbow - 0",
    dates_or=("2027-02-17",),
)
say(
    "hello coach, today I am sick with fever 38.5 so I don't train, please move it to Saturday thank you",
    does="ill move",
    flags="fever",
    dates="2027-02-17..2027-02-20",
    maybe="for_coach",
    does_or=("ill move missed", "ill move missed for_coach"),
)
say(
    "Gym was rammed so did ring pull ups 4x5 instead, 35 min, rpe 6 overall. "
    "Shoulder L 2/10 after. Belt broke btw, no weights for now",
    "ring_pull_up 4x5",
    does="equipment",
    mins=35,
    srpe=6,
    pain="shoulder L 2 after",
)
say(
    "okay so um pull ups twenty kilos four sets of four last one was like an eight "
    "and then my left elbow was maybe a two and I slept seven hours and what's tomorrow",
    "pull_up 4x4 +20 last@8",
    does="plan_week",
    pain="elbow L 2",
    sleep=7,
    does_or=("report pain plan_today",),
    dates_or=("2027-02-18",),
)
say(
    "scratch the last one. it was chins not pull ups. also bw 70.4",
    does="undo",
    bw=70.4,
    fix=("movement", "pull_up", "chin_up"),
    on=None,
    does_or=("correction bodyweight",),
    also=({"intents": ["correction", "bodyweight"]},),
)
say(
    "Been off since Thursday with flu, back today! pull ups 3x5 +10, super light",
    "pull_up 3x5 +10",
    does="ill resume",
    dates="2027-02-11..2027-02-16",
    does_or=("report ill",),
    dates_or=("2027-02-11..",),
)
