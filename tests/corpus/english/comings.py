"""Moves, absences and calls for a person; and body and minutes told in passing. A Wednesday, 10 March 2027."""

from functools import partial

from tests.corpus.lines import Theme

THEME = Theme("comings", "en")
say = partial(THEME.say, at="2027-03-10 18:42", tz="Europe/London")

# Moves
say("Thursday's session to Saturday", does="move", dates="2027-03-11..2027-03-13")
say("today's session to tomorrow pls", does="move", dates="2027-03-10..2027-03-11")
say("can friday's workout be on sunday", does="move", dates="2027-03-12..2027-03-14")
say("exchange today with tomorrow", does="move", dates="2027-03-10..2027-03-11")
say("can we trade Monday for Tuesday", does="move", dates="2027-03-15..2027-03-16")
# Absences
say("leaving Thursday, back Monday", does="away", dates="2027-03-11..2027-03-14")
say("I leave on Thursday and return on Monday", does="away", dates="2027-03-11..2027-03-14")
say("flying out Friday, home on Wednesday", does="away", dates="2027-03-12..2027-03-16")
say("in Rome 20-24 April", does="away", dates="2027-04-20..2027-04-24")
say("in Leeds for work 15-19 March", does="away", dates="2027-03-15..2027-03-19")
say("gone hiking from the 20th, back on the 27th", does="away", dates="2027-03-20..2027-03-26")
say(
    "son is ill, stuck at home till friday, no training",
    does="missed",
    dates="2027-03-10..2027-03-12",
    does_or=("away", "pause"),
)
say("working late till Friday, can't train", does="missed", dates="2027-03-10..2027-03-12")
say("missed yesterday, double shift, 16 hours", does="missed", dates="2027-03-09")
say("fever 39, off today", does="ill", flags="fever", dates="2027-03-10")
say("temperature 38.6 since Monday, in bed", does="ill", flags="fever", dates="2027-03-08..")
say("sick today", does="ill", dates="2027-03-10")
say("need a break from training, dont know how long", does="pause", dates="2027-03-10..")
# A person is wanted, or only greeted
say("hi coach", does="smalltalk")
say("hello coach, pull-ups 5x3 +20", "pull_up 5x3 +20")
say("hi coach, missed yesterday", does="missed", dates="2027-03-09")
say("hey coach can you look at my video", does="for_coach")
say("call me please", does="for_coach")
say("can a human read this", does="for_coach")
say("coach, what do you think of my form?", does="for_coach")
say("switch me back on", does="resume")
say("plan for tonight: pizza", does="smalltalk", does_or=("unknown",))
say("how does this app work", does="help")
say("only a 16 and a 24 kg kettlebell at home", does="equipment")
# Body and minutes
say("now at 77.5 kg", bw=77.5)
say("I'm 79.9 kg!! finally under 80", bw=79.9, body=81)
say("back home, heavier (74.5 kg)", bw=74.5, does_or=("resume",))
say("bodyweight 72 or 73, the scale jumps", does="bodyweight", ask="bodyweight_kg: 72 or 73")
say("want to get down to 68kg by summer", does="smalltalk", does_or=("unknown", "for_coach"))
say("the baby slept 4 hours", does="smalltalk", does_or=("unknown",))
say("physio took 50 minutes. chins 3x5", "chin_up 3x5")
say("ran 400 m to the park, pull-ups 3x8", "pull_up 3x8", maybe_unread=("ran 400 m", "ran 400 m to the park"))
# Corrections
say("session took 60 min, not 90", fix=("duration_min", 90, 60, None, None, "all"))
say("I wrote bodyweight 71, meant 77", fix=("bodyweight_kg", 71, 77, None, None, "all"))
say("I put 6 and it was 5 on the third set", fix=("reps", 6, 5, None, None, 3))
say("I said 3 sets of dips, it was 4", fix=("sets", 3, 4, "dip", None, "all"))

# Told in passing, in two sentences, anew; questions and calls in other words.
say("Friday-Sunday I'm away", does="away", dates="2027-03-12..2027-03-14")
say("gone Fri-Sun", does="away", dates="2027-03-12..2027-03-14")
say("I'll be at my parents' from Friday to Monday", does="away", dates="2027-03-12..2027-03-15")
say("Saturday doesn't fit. Can we move it to Monday?", does="move", dates="2027-03-13..2027-03-15")
say("Thursday next week doesn't work. Can we move it to Friday?", does="move", dates="2027-03-18..2027-03-19")
say("I wrote that I'm away 1-9 May. Now it's 3-9 May.", does="away", dates="2027-05-03..2027-05-09")
say("not one rep today, sorry", does="missed", dates="2027-03-10")
say("yesterday did chins 4x4, today I can't feel my triceps", "chin_up 4x4", on="2027-03-09")
say("yesterday no training but today I did dips 3x8", "dip 3x8", "missed", dates="2027-03-09")
say("start sending me plans again please", does="resume")
say("please don't text me any more, I have a new coach", does="stop")
say("just back from the club: dips 4x6", "dip 4x6")
say("is Saturday a training day?", does="plan_today", dates_or=("2027-03-13",))
say("how many kilos until I may try the lever?", does="progress")
say("they took the rings down at the gym", does="equipment")
say("forget what I just sent", does="undo")
say("what's the rest of this week?", does="plan_week")
say("miscounted: the right arm had 4, not 5", fix=("reps", 5, 4, None, "right", "all"))
say("chins 3x5, about 80 minutes including warm-up", "chin_up 3x5", mins=80)
say("10 pull ups, last week were 8", "pull_up 10")
say(
    "Two things. First, yesterday's dips were with 15, not 25. Second, today pull-ups 4x4 with 20.",
    "pull_up 4x4 +20",
    "report",
    fix=("load_kg", 25, 15, "dip", None, "all"),
    on="2027-03-10",
)
say(
    "a run yesterday, 10 km in 48:20. no legs, so not training today",
    does="missed",
    dates="2027-03-10",
    unread=("10 km in 48:20",),
    also=({"unread": ["a run yesterday, 10 km in 48:20"]}, {"unread": []}),
)
say("no strength left in my legs after the race, no training today", does="missed", dates="2027-03-10")
say("if the bar is free on Friday I'll do 5x3 with 25", does="smalltalk", does_or=("unknown",))
say("nothing today, too tired", does="missed", dates="2027-03-10")
say("nothing today, was stuck at work", does="missed", dates="2027-03-10")
say("72 kg, up from 71.4 last week", bw=72)
say("bodyweight 72 4x4 chins", "chin_up 4x4", bw=72)
say("chins 3x5 +20, up from 17.5 last week", "chin_up 3x5 +20")
