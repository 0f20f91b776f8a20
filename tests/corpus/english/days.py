"""Days: named, counted, across zones and years, before four in the morning; bodyweight and sleep."""

from tests.corpus.lines import Theme

THEME = Theme("days", "en")
say = THEME.say
LON, NY, AKL = "Europe/London", "America/New_York", "Pacific/Auckland"

# 2027-03-10 is a Wednesday.
say("yesterday pull-ups 5x3 +20", "pull_up 5x3 +20", on="2027-03-09", at="2027-03-10 08:00", tz=LON)
say("Monday: dips 4x6 +15", "dip 4x6 +15", on="2027-03-08", at="2027-03-10 08:00", tz=LON)
say("on friday i did chin-ups 4x5 +10", "chin_up 4x5 +10", on="2027-03-05", at="2027-03-10 08:00", tz=LON)
say("forgot to log sunday's session, pull ups 4x4", "pull_up 4x4", on="2027-03-07", at="2027-03-10 08:00", tz=LON)
say("day before yesterday: ring dips 3x8", "ring_dip 3x8", on="2027-03-08", at="2027-03-10 08:00", tz=LON)
say("two days ago, muscle ups 4x2", "muscle_up 4x2", on="2027-03-08", at="2027-03-10 08:00", tz=LON)
say("on the 3rd: pull-ups 5x3 +20", "pull_up 5x3 +20", on="2027-03-03", at="2027-03-10 08:00", tz=LON)
say("28 Feb: dips 5x5 +20", "dip 5x5 +20", on="2027-02-28", at="2027-03-10 08:00", tz=LON)
say("March 2nd pull-ups 3x8", "pull_up 3x8", on="2027-03-02", at="2027-03-10 08:00", tz=LON)
say("2027-03-06 chin ups 5x5", "chin_up 5x5", on="2027-03-06", at="2027-03-10 08:00", tz=LON)
say("last night after work: pull ups 4x3 +25", "pull_up 4x3 +25", on="2027-03-09", at="2027-03-10 07:00", tz=LON)
say("this morning before breakfast, push ups 3x20", "push_up 3x20", on="2027-03-10", at="2027-03-10 19:00", tz=LON)
say("Wed session: pull-ups 4x4 +20", "pull_up 4x4 +20", on="2027-03-10", at="2027-03-10 19:00", tz=LON)
say(
    "last tuesday dips 3x10",
    "dip 3x10",
    on="2027-03-09",
    on_or=("2027-03-02",),
    at="2027-03-10 19:00",
    tz=LON,
    ask_or="performed_on: last tuesday",
    why="'last Tuesday' on a Wednesday: the nearest by the contract, though some mean the week before",
)
say("just back from the gym, chins 5x4 +15", "chin_up 5x4 +15", on="2027-03-09", at="2027-03-10 01:20", tz=LON)
say(
    "yesterday's set: pull-ups 3x6",
    "pull_up 3x6",
    on="2027-03-09",
    at="2027-03-10 02:30",
    tz=LON,
    why="before 04:00 today and yesterday both mean the evening before",
)
say("today: dips 4x8", "dip 4x8", on="2027-03-09", at="2027-03-10 03:59", tz=LON)
say("today: dips 4x9", "dip 4x9", on="2027-03-10", at="2027-03-10 04:00", tz=LON)
say("early bird pull ups 3x5 +10", "pull_up 3x5 +10", on="2027-03-10", at="2027-03-10 05:10", tz=LON)
say("pull-ups 4x4 +20", "pull_up 4x4 +20", on="2027-12-31", at="2028-01-01 00:40", tz=LON)
say("NYE session: chin-ups 5x5", "chin_up 5x5", on="2027-12-31", at="2028-01-02 12:00", tz=LON)
say(
    "did the last workout of the year on the 31st, pull ups 10x2",
    "pull_up 10x2",
    on="2027-12-31",
    at="2028-01-03 12:00",
    tz=LON,
)
say("30 December: muscle-ups 3x3", "muscle_up 3x3", on="2027-12-30", at="2028-01-04 12:00", tz=LON)
say("feb 29: dips 3x8", "dip 3x8", on="2028-02-29", at="2028-03-02 12:00", tz=LON)
say(
    "yesterday chins 4x6",
    "chin_up 4x6",
    on="2027-03-13",
    at="2027-03-14 12:00",
    tz=NY,
    why="the day the clocks go forward there",
)
say(
    "yesterday pull ups 3x3 +30",
    "pull_up 3x3 +30",
    on="2027-10-30",
    at="2027-10-31 10:00",
    tz=LON,
    why="the clocks went back in the night",
)
say("today pull ups 4x2 +30", "pull_up 4x2 +30", on="2027-04-04", at="2027-04-04 21:00", tz=AKL)
say("saturday hspu 4x4", "handstand_push_up 4x4", on="2027-03-06", at="2027-03-08 06:00", tz=AKL)
say("Sat: push ups 3x25", "push_up 3x25", on="2027-03-06", at="2027-03-06 18:00", tz=NY)
say("Thursday last week I did pull-ups 5x3 +20", "pull_up 5x3 +20", on="2027-03-04", at="2027-03-10 12:00", tz=LON)
say("a few days ago: dips 4x6", "dip 4x6", on=None, ask="performed_on: a few days ago", at="2027-03-10 12:00", tz=LON)
say(
    "some time last week, pull-ups 4x5 +15",
    "pull_up 4x5 +15",
    on=None,
    ask="performed_on: last week",
    at="2027-03-10 12:00",
    tz=LON,
)
say("on the 35th I did pull ups 3x5", "pull_up 3x5", on=None, ask="performed_on: 35th", at="2027-03-10 12:00", tz=LON)
say(
    "over the weekend: chin-ups 5x5",
    "chin_up 5x5",
    on=None,
    ask="performed_on: over the weekend",
    at="2027-03-10 12:00",
    tz=LON,
)
say("last month it was 5, today 8 pull-ups!", "pull_up 8", at="2027-03-10 12:00", tz=LON)
say("used to do 3x5 +10 in January, pull-ups 3x5 +20 now", "pull_up 3x5 +20", at="2027-03-10 12:00", tz=LON)
# Several days
say(
    "Mon pull-ups 5x3 +20, Tue dips 4x6 +15",
    "pull_up 5x3 +20 on=2027-03-08; dip 4x6 +15 on=2027-03-09",
    at="2027-03-10 12:00",
    tz=LON,
)
say(
    "Catching up:\nSat - chins 4x5 +10\nSun - rest\nMon - ring dips 3x8",
    "chin_up 4x5 +10 on=2027-03-06; ring_dip 3x8 on=2027-03-08",
    at="2027-03-10 12:00",
    tz=LON,
)
say(
    "yesterday pull-ups 4x4 +20 and today dips 3x10",
    "pull_up 4x4 +20 on=2027-03-09; dip 3x10 on=2027-03-10",
    at="2027-03-10 21:00",
    tz=LON,
)
say(
    "1 March: pull ups 5x5. 4 March: pull ups 4x4 +10. 8 March: pull-ups 3x3 +20",
    "pull_up 5x5 on=2027-03-01; pull_up 4x4 +10 on=2027-03-04; pull_up 3x3 +20 on=2027-03-08",
    at="2027-03-10 12:00",
    tz=LON,
)
say(
    "Thursday: push ups 3x20. Friday: squats 5x5 70kg. Sorry for the late log",
    "push_up 3x20 on=2027-03-04; squat 5x5 +70 on=2027-03-05",
    at="2027-03-10 12:00",
    tz=LON,
)
say("this morning pull-ups 3x3 +20, tonight another 3x3 +20", "pull_up 6x3 +20", at="2027-03-10 22:00", tz=LON)
# Bodyweight
say("bw 71.2", bw=71.2)
say("Weight this morning: 70.8 kg", bw=70.8)
say("I weigh 72 now", bw=72)
say("scale says 69,9 🙃", bw=69.9)
say(
    "160 lbs today",
    bw=160 * 0.45359237,
    body=72.6,
    ask_or="bodyweight_kg: 160 lbs",
    why="pounds alone, near the last known weight: a bodyweight; asking is as good",
    also=({"intents": ["unknown"], "bodyweight_kg": None, "ask": [{"about": "bodyweight_kg", "span": "160 lbs"}]},),
)
say("BW: 158.4", bw=158.4 * 0.45359237, unit="lb", body=72.0)
say("bw down to 70.1kg, slept 8h", bw=70.1, sleep=8)
say("bodyweight 71 and pull-ups 5x3 +20", "pull_up 5x3 +20", bw=71)
say("pull-ups 3x8 at bw 70.5", "pull_up 3x8", bw=70.5)
say("bodyweight 7.15", "", "bodyweight", ask="bodyweight_kg: 7.15")
say("weighed in at 715", "", "bodyweight", ask="bodyweight_kg: 715")
say(
    "want to get down to 68kg by summer",
    "",
    "smalltalk",
    does_or=("unknown", "for_coach"),
    why="a wish is no bodyweight",
)
say("my dog weighs 34 kg and still does more than me", "", "smalltalk", does_or=("unknown",))
say("was 75 at Christmas, 71.5 today on the scale", bw=71.5)
say("72.3kg fasted, 6h sleep, elbow 1", bw=72.3, sleep=6, pain="elbow - 1")
# Sleep
say("slept 7 hours", "", "report", sleep=7, on_or=(None,))
say("6.5h sleep", "", "report", sleep=6.5, on_or=(None,))
say("sleep: 7h30", "", "report", sleep=7.5, on_or=(None,))
say("bad night, barely 4 hours", "", "report", sleep=4, on_or=(None,))
say(
    "slept from 11 to 7. chin-ups 4x5",
    "chin_up 4x5",
    also=({"sleep_h": 8},),
    why="clock times; a difference worked out is right as well",
)
say("pull-ups 5x3 +20, 8 hrs of sleep", "pull_up 5x3 +20", sleep=8)
say("slept like a baby. dips 3x8", "dip 3x8")
say("got about seven and a half hours of sleep, pull ups 3x5 +15", "pull_up 3x5 +15", sleep=7.5)

# Ordinals that count, thoughts put right at once, and body and minutes told beside others.
say("lunch on the 3rd floor, then pull ups 4x4 +10", "pull_up 4x4 +10", at="2027-03-10 18:42", tz=LON)
say("for the 5th time: dips 3x8", "dip 3x8", at="2027-03-10 18:42", tz=LON)
say(
    "can Friday's go to Sunday? it's dad's 60th",
    does="move",
    dates="2027-03-12..2027-03-14",
    at="2027-03-10 18:42",
    tz=LON,
)
say("yesterday, no, the day before: chins 4x6", "chin_up 4x6", on="2027-03-08", at="2027-03-10 18:42", tz=LON)
say("Sunday, sorry, Monday: ring rows 3x12", "ring_row 3x12", on="2027-03-08", at="2027-03-10 18:42", tz=LON)
say("slept 5, sorry, 6 hours", does="report", sleep=6)
say("bodyweight 72.1, sorry, 71.8", bw=71.8)
say("9 hours in bed, 6 of them asleep", does="report", sleep=6)
say("in bed for 9 hours, asleep for 5", does="report", sleep=5)
say("my brother weighs 92. me: 70.9", bw=70.9)
say("my wife is 58 kg, I'm 72", bw=72)
say("70.8 on the scale, 0.9 down on last week", bw=70.8)
say("the scale at home says 72.3", bw=72.3)
say("scales say 11 st 4, so 71.7 kg", bw=71.7)
say("ring dips 3x8. 40 minutes and soaked.", "ring_dip 3x8", mins=40)
say("chins 5x3 +15. Thirty-five minutes all told.", "chin_up 5x3 +15", mins=35)
say("rpe 7 day. ring rows 4x10, dips 4x8", "ring_row 4x10; dip 4x8", srpe=7)
