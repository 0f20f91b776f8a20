"""Sets told as on a form, totals beside them, what could have been, nights by the clock, days since and by how many."""

from tests.corpus.lines import Theme

THEME = Theme("unsure", "en")
say = THEME.say
PLAN = "s/archer archer_pull_up 3x2 LR; m/weighted_pull_up pull_up 5x3 +20 @8; a dip 3x8 +10"

# As on a form.
say("pull-ups S1 5 S2 5 S3 4", "pull_up 5,5,4")
say("pull-ups set 1 5, set 2 5, set 3 4 with 20 kg", "pull_up 5,5,4 +20")
say("pull-ups reps 5 5 4 kilos 20", "pull_up 5,5,4 +20")
say("pull-ups weight 20 reps 5 5 4", "pull_up 5,5,4 +20")

# Totals.
say("pull-ups 5x5, 25 total", "pull_up 5x5")
say("pull-ups 5x5, dips 5x5, 50 reps total", "pull_up 5x5; dip 5x5")
say("pull-ups 5x5, got 22 in total", "pull_up 5x5", ask="sets: 22 in total")
say("pull-ups 5x5, missed 2", "pull_up 5x5", ask="sets: missed 2")

# What could have been, and what others say.
say("could have done 5x5 pull-ups but stopped at 4x5", "pull_up 4x5")
say("almost got 4x5 pull-ups, ended up with 5 5 5 4", "pull_up 5,5,5,4")
say("my physio reckons 3x15 push ups, did 2x15", "push_up 2x15")

# Efforts and misses of the last set.
say("pull-ups 5x3 with 20, last set solid 9", "pull_up 5x3 +20 last@9")
say("pull-ups 5x3 with 20, last set 9", "pull_up 4x3 +20; pull_up ? +20", ask="reps: 9")
say("pull-ups 4x4, failed on the fourth of the last set", "pull_up 4,4,4; pull_up 3 fail")

# Nights by the clock.
say("slept from 11 to 6", sleep=7, does="report")
say("slept 11pm - 6:30am", sleep=7.5, does="report")
say("slept 10 to 6", sleep=8, does="report")

# A run before sets.
say("after an 8 km run 3x10 push-ups", "push_up 3x10", unread=("8 km run",))

# Put right the other way round.
say("it wasn't pull-ups, it was chin-ups", fix=("movement", "pull_up", "chin_up"), does="correction")

# Days.
say("2 weeks until my holiday. pull-ups 5x3", "pull_up 5x3")
say(
    "could we do friday's one day earlier",
    does="move",
    dates="2027-03-05..2027-03-04",
    at="2027-03-01 09:00",
    tz="Europe/London",
)
say(
    "push saturday back by a day",
    does="move",
    dates="2027-03-06..2027-03-07",
    at="2027-03-04 18:00",
    tz="Europe/London",
)
say(
    "haven't trained since sunday",
    does="missed",
    dates="2027-03-01..2027-03-04",
    at="2027-03-04 18:00",
    tz="Europe/London",
)

# Of the body.
say("71.9 / 7.5h / elbow 1", bw=71.9, sleep=7.5, pain="elbow - 1", does="pain bodyweight")
say("elbow pain 2/10 on the right after the session", pain="elbow R 2 after")

# Beside a plan.
say("8-7-7-7", does="report", ask="movement: 8-7-7-7", today=PLAN)
say("did the plan twice", does="report", ask="sets: twice", today=PLAN)
