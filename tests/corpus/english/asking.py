"""What reads two ways, what is over the plausible, what lacks a part: to be asked, never guessed."""

from tests.corpus.lines import Theme

THEME = Theme("asking", "en")
say = THEME.say
WED = {"at": "2027-03-10 12:00", "tz": "Europe/London"}

# One bare number
for number in ("12", "15", "18"):
    say(f"dips {number}", "dip ? +?", ask=f"reps: {number}", also=({"sets": []},))
say("Chin ups 10 today", "chin_up ? +?", ask="reps: 10", also=({"sets": []},))
say("pull ups: 25", "pull_up ? +?", ask="load_kg: 25", also=({"sets": []},))
say("5x5", "_ 5x5 +?", ask="movement: 5x5", also=({"sets": []},))
say("3x8 @ 20kg, all good", "_ 3x8 +20", ask="movement: 3x8 @ 20kg")
say("did 4 sets today", "", "report", ask="movement: 4 sets")
say(
    "trained today, went well",
    "",
    "smalltalk",
    does_or=("unknown", "report"),
    ask_or="sets: trained today",
    on_or=("2027-03-10",),
    **WED,
    why="training spoken of without a set or effort is no report",
)
say("the doubles with 40, smooth", "_ ?", "report", ask="movement: doubles with 40", also=({"sets": []},))
say("did the usual", "", "report", ask="sets: the usual")
say("same as monday", "", "report", ask="sets: same as monday", on_or=(None,), **WED)
say("pull ups with 20, lots", "pull_up ? +20", ask="reps: lots", also=({"sets": []},))
say("a few sets of chin-ups", "chin_up ?", ask="reps: a few sets", also=({"sets": []},))
say(
    "some dips and some pull ups",
    "",
    "report",
    ask="reps: some dips",
    also=(
        {"sets": [], "intents": ["smalltalk"], "performed_on": None, "ask": []},
        {"sets": [], "intents": ["unknown"], "performed_on": None, "ask": []},
    ),
)
# @ without a unit
say("dips 4x6 @7", "dip 4x6 +?", ask="load_kg: @7", also=({"sets": []},))
say("chin-ups 3x5 @9", "chin_up 3x5 +?", ask="load_kg: @9", also=({"sets": []},))
say("pull ups 5x5 @10", "pull_up 5x5 +?", ask="load_kg: @10", also=({"sets": []},))
say("pull-ups 4x6 @15", "pull_up 4x6 +15", why="@15 can be no effort")
say("pull-ups 4x6 @8kg", "pull_up 4x6 +8")
say("pull-ups 4x6 @ rpe 8", "pull_up 4x6 last@8")
# Family names
say("archers 3x3 each side", "_ LR 3x3", ask="movement: archers", also=({"sets": []},))
say("front lever 4x10s", "_ 4x10s", ask="movement: front lever", also=({"sets": []},))
say("planche 5x6s", "_ 5x6s", ask="movement: planche", also=({"sets": []},))
say("one arm work: 2 left, 2 right", "_ L 2; _ R 2", ask="movement: one arm work", also=({"sets": []},))
say("levers 10s 8s 8s then dips 3x8", "_ 10s,8s,8s; dip 3x8", ask="movement: levers")
say(
    "curls 3x12 with 10",
    "biceps_curl 3x12 +10",
    ask_or="movement: curls",
    also=({"sets": [], "ask": [{"about": "movement", "span": "curls"}]},),
)
# Over the plausible
say("pull-ups 5x3 +220", "pull_up 5x3 +?", ask="load_kg: +220", also=({"sets": []},))
say("dips 3x5 +2000", "dip 3x5 +?", ask="load_kg: +2000", also=({"sets": []},))
say("pull ups 5x300", "pull_up ?; pull_up ?; pull_up ?; pull_up ?; pull_up ?", ask="reps: 5x300", also=({"sets": []},))
say("chin ups 99x99", "chin_up ?", ask="reps: 99x99", also=({"sets": []},))
say("handstand 4000s", "handstand_hold ?", ask="hold_s: 4000s", also=({"sets": []},))
say("pull-ups 5x3 +20 rpe 85", "pull_up 5x3 +20", ask="rpe: rpe 85")
say("chin-ups 4x5 rpe 12", "chin_up 4x5", ask="rpe: rpe 12")
say("slept 27 hours", "", "report", ask="sleep_h: 27 hours", on_or=(None,))
say("pull-ups 3x5 +20, took 900 min", "pull_up 3x5 +20", ask="duration_min: 900 min")
# Half said
say("half chin ups 3x6", "chin_up 3x6 rom?", ask="rom: half chin ups")
say("pull-ups 3x5 +15 half reps only", "pull_up 3x5 +15 rom?", ask="rom: half reps")
say("archer pull ups, one side 4, other side 3", "archer_pull_up 4,3", ask="side: one side 4, other side 3")
say("pull ups +20: 4 or 5 reps, then 3", "pull_up ? +20; pull_up 3 +20", ask="reps: 4 or 5")
say("dips 3x8 with 10 or 12.5, can't remember", "dip 3x8 +?", ask="load_kg: 10 or 12.5", also=({"sets": []},))
say("chins 5x3, 15 17.5", "chin_up 5x3 +?", ask="load_kg: 15 17.5", also=({"sets": []},), why="two loads for five sets")
say("dips 4x5, +20 and +25", "dip 4x5 +?", ask="load_kg: +20 and +25", also=({"sets": []},))
say("pull-ups 3-5 sets of 5 at +10", "pull_up ? +10", ask="sets: 3-5 sets", also=({"sets": []},))
say("pull ups 4 sets with 20", "pull_up 4x? +20", ask="reps: 4 sets", also=({"sets": []},))
say(
    "dips 3 sets",
    "dip 3x?",
    ask="reps: 3 sets",
    also=({"sets": []}, {"sets": [], "ask": [{"about": "reps", "span": "dips 3 sets"}]}),
)
say("pull-ups 5x3 with two plates", "pull_up 5x3 +?", ask="load_kg: two plates", also=({"sets": []},))
say(
    "dips with the heavy vest 3x6",
    "dip 3x6 +?",
    ask="load_kg: heavy vest",
    also=({"sets": []},),
    why="a load without its figure",
)
say(
    "can we do it tomorrow instead of today?",
    "",
    "move",
    dates="2027-03-09..",
    ask="dates: tomorrow",
    dates_or=("",),
    at="2027-03-10 01:30",
    tz="Europe/London",
    why="before 04:00 tomorrow is asked",
)
say("elbow is a 33", pain="elbow - -", ask="score: 33")
say("weight 7.2", "", "bodyweight", ask="bodyweight_kg: 7.2")
say(
    "bw 171, chins 4x5",
    "chin_up 4x5",
    "bodyweight",
    ask="bodyweight_kg: 171",
    body=77.5,
    also=({"bodyweight_kg": None, "intents": ["report"]},),
    why="171 kg, said by someone of 77.5 kg, is pounds or a slip",
)
