"""Corrections of earlier reports, taking back, and self-corrections inside one message."""

from tests.corpus.lines import Theme

THEME = Theme("mends", "en")
say = THEME.say

say("that was 22.5, not 20", "", on=None, fix=("load_kg", 20, 22.5))
say("sorry it was 25 instead of 22.5 on the pull ups", on=None, fix=("load_kg", 22.5, 25, "pull_up"))
say("correction: last set of dips was 5 reps not 6", on=None, fix=("reps", 6, 5, "dip", None, "last"))
say("the last set was 2 reps, not 3", on=None, fix=("reps", 3, 2, None, None, "last"))
say("oops, third set of chin-ups was 4, not 5", on=None, fix=("reps", 5, 4, "chin_up", None, 3))
say(
    "I meant chin-ups, not pull-ups",
    on=None,
    fix=("movement", "pull_up", "chin_up"),
    also=(
        {
            "correction": {
                "field": "movement",
                "was": "pull_up",
                "now": "chin_up",
                "movement": "pull_up",
                "side": None,
                "which": "all",
            }
        },
    ),
)
say(
    "those were neutral grip pull ups, not chin ups",
    on=None,
    fix=("movement", "chin_up", "neutral_grip_pull_up"),
    also=(
        {
            "correction": {
                "field": "movement",
                "was": "chin_up",
                "now": "neutral_grip_pull_up",
                "movement": "chin_up",
                "side": None,
                "which": "all",
            }
        },
    ),
)
say(
    "make that rpe 9 not 8",
    on=None,
    fix=("rpe", 8, 9),
    also=(
        {"correction": {"field": "rpe", "was": 8, "now": 9, "movement": None, "side": None, "which": "last"}},
        {"correction": {"field": "session_rpe", "was": 8, "now": 9, "movement": None, "side": None, "which": "all"}},
    ),
    why="whose effort is not said",
)
say("the rpe on the last one was 8, I wrote 7", on=None, fix=("rpe", 7, 8, None, None, "last"))
say(
    "wrong side!! that was my right arm, not left, on the one arm pull ups",
    on=None,
    fix=("side", "left", "right", "one_arm_pull_up"),
    also=(
        {
            "correction": {
                "field": "side",
                "was": "left",
                "now": "right",
                "movement": "one_arm_pull_up",
                "side": "left",
                "which": "all",
            }
        },
    ),
)
say(
    "right arm was 2 not 3 on the archers",
    on=None,
    fix=("reps", 3, 2, None, "right"),
    ask_or="movement: archers",
    also=(
        {
            "correction": {
                "field": "reps",
                "was": 3,
                "now": 2,
                "movement": "archer_pull_up",
                "side": "right",
                "which": "all",
            }
        },
    ),
    why="archers: which ones the message does not say",
)
say(
    "typo, bodyweight is 71.2 not 72.1",
    "",
    on=None,
    fix=("bodyweight_kg", 72.1, 71.2),
    maybe="bodyweight",
    also=({"bodyweight_kg": 71.2, "intents": ["correction", "bodyweight"]}, {"bodyweight_kg": 71.2}),
)
say(
    "elbow was a 3, not a 2",
    "",
    on=None,
    fix=("score", 2, 3),
    maybe="pain",
    pain_or=("elbow - 3",),
    also=(
        {"correction": {"field": "pain", "was": 2, "now": 3, "movement": None, "side": None, "which": "all"}},
        {
            "correction": {"field": "pain", "was": 2, "now": 3, "movement": None, "side": None, "which": "all"},
            "pain": [{"site": "elbow", "side": None, "score": 3, "when": None}],
            "intents": ["correction", "pain"],
        },
    ),
)
say(
    "it was yesterday, not today",
    "",
    fix=("performed_on", "2027-03-10", "2027-03-09"),
    on=None,
    on_or=("2027-03-09",),
    at="2027-03-10 20:00",
    tz="Europe/London",
)
say(
    "hold was 8s not 10s on the last lever",
    "",
    on=None,
    fix=("hold_s", 10, 8, None, None, "last"),
    ask_or="movement: lever",
)
say(
    "correction, dips yesterday were 4x6 at +15 not +20",
    "dip 4x6 +15",
    fix=("load_kg", 20, 15, "dip"),
    on="2027-03-09",
    at="2027-03-10 20:00",
    tz="Europe/London",
    maybe="report",
)
say(
    "pull-ups were 5x3 +20, not 4x3",
    "pull_up 5x3 +20",
    fix=("sets", "4x3", "5x3", "pull_up"),
    on=None,
    maybe="report",
    on_or=("2027-03-10",),
    at="2027-03-10 20:00",
    tz="Europe/London",
    also=(
        {
            "correction": {
                "field": "sets",
                "was": None,
                "now": None,
                "movement": "pull_up",
                "side": None,
                "which": "all",
            }
        },
        {"correction": {"field": "sets", "was": 4, "now": 5, "movement": "pull_up", "side": None, "which": "all"}},
    ),
    why="how a count of sets is put into was and now the contract leaves open",
)
say(
    "session was 65 minutes, not 45",
    "",
    "-report",
    mins=None,
    on=None,
    fix=("duration_min", 45, 65),
    also=({"duration_min": 65},),
)
say("my bad, first set was with 17.5 not 20", on=None, fix=("load_kg", 20, 17.5, None, None, 1))
say(
    "I typed 30, should be 20, pull ups",
    on=None,
    fix=("load_kg", 30, 20, "pull_up"),
    ask_or="field: 30, should be 20",
    also=(
        {
            "correction": {"field": "reps", "was": 30, "now": 20, "movement": "pull_up", "side": None, "which": "all"},
            "ask": [{"about": "field", "span": "30"}],
        },
    ),
    why="loads are the likelier thirty",
)
say(
    "change the counterweight to 7.5, I said 5",
    on=None,
    fix=("assist_kg", 5, 7.5),
    also=(
        {
            "correction": {
                "field": "assist_kg",
                "was": 5,
                "now": 7.5,
                "movement": "one_arm_counterweight",
                "side": None,
                "which": "all",
            }
        },
    ),
)
say("dips were weighted btw, +10 not bodyweight", on=None, fix=("load_kg", 0, 10, "dip"))
# Undo
for text in (
    "undo",
    "delete my last message",
    "forget what I just sent, wrong person",
    "please remove that last log",
    "ignore that, pocket typing",
    "take that back, I didn't train at all",
    "cancel the last entry 🙈",
    "oops wrong chat, delete pls",
):
    say(text, "", "undo", maybe="missed" if "didn't train" in text else "")
# Mended within the message
say("pull-ups 5x3 +20, no wait, +22.5", "pull_up 5x3 +22.5")
say("chins 4x5 +10.. sorry 4x6", "chin_up 4x6 +10")
say("Did 4 sets, no 5 sets of 3 pull ups with 20", "pull_up 5x3 +20")
say("dips 3x8, actually the last was 7", "dip 8,8,7")
say(
    "left 3 right 2, sorry other way round, on the one arm pulley with 5kg",
    "one_arm_counterweight L 2 -5; one_arm_counterweight R 3 -5",
)
say("pull ups yesterday, I mean today: 4x4 +15", "pull_up 4x4 +15", at="2027-03-10 20:00", tz="Europe/London")
say("chin ups, scratch that, pull ups 5x5", "pull_up 5x5")
say("ring rows 3x10, oops 3x12", "ring_row 3x12")
say("elbow 4... hm more like a 3", pain="elbow - 3")
say("rpe 8 no 9 on the last, pull-ups 4x3 +25", "pull_up 4x3 +25 last@9")
# Wishes, intentions, quoted plans, others' numbers
say("wanted 5x5 pull-ups, got 3x5", "pull_up 3x5")
say("plan was 5x3 +25 but I only did 4x3 +22.5, pull ups", "pull_up 4x3 +22.5")
say("was supposed to do 4x6 dips at +20. Did 4x4 at +20.", "dip 4x4 +20")
say(
    "tomorrow I want to try 3x3 with 30",
    "",
    "smalltalk",
    does_or=("unknown", "for_coach", "plan_today"),
    why="an intention is no report",
)
say("hoping for 10 pull-ups by june", "", "smalltalk", does_or=("unknown", "progress"))
say("my mate did 20 pull ups today, I did 12", "pull_up 12")
say("The guy next to me repped 40kg pull-ups. Me: 3x5 +10", "pull_up 3x5 +10")
say("my wife just did her first pull up!!", "", "smalltalk", does_or=("unknown",))
say(
    "Coach wrote: 'pull ups 5x3 +20'. Is that right after last week?",
    "",
    "why",
    does_or=("plan_today", "for_coach", "help", "unknown"),
    why="a quoted plan is no report",
)
say(
    "should I do 5x3 with 22.5 today?",
    "",
    "plan_today",
    does_or=("for_coach", "unknown", "why"),
    why="a question is no report",
)
say(
    "can I do dips 3x8 instead of the ring dips?",
    "",
    "for_coach",
    does_or=("unknown", "equipment", "plan_today", "why"),
)
say("next week I'd love to go 5x5 +20", "", "smalltalk", does_or=("unknown", "for_coach"))
say("if I had slept I would have done 5x5. Did 4x4 chins +10", "chin_up 4x4 +10")
say(
    "last week 4x4 +20, this week 4x4 +22.5, pull-ups",
    "pull_up 4x4 +22.5",
    also=({"performed_on": None, "ask": [{"about": "performed_on", "span": "this week"}]},),
)
say("in my twenties I did 20 pull-ups. today: 9", "pull_up 9")
say("PR! old best was 3 @ 40, now 4 @ 40 pull-up", "pull_up 4 +40")
say("need to get to 0.45 bodyweight... pull ups 3x3 +30", "pull_up 3x3 +30")
say("oh great, another 5x3 day, thrilled. did it though, pull-ups +20", "pull_up 5x3 +20")
say(
    "sure, because doing 5x20 one arm pull ups is totally normal 🙄",
    "",
    "smalltalk",
    does_or=("unknown",),
    why="sarcasm reports nothing",
)
