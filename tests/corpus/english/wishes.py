"""Every intent in many wordings, and several in one message."""

from tests.corpus.lines import Theme

THEME = Theme("wishes", "en")
say = THEME.say
LON = "Europe/London"
WED = {"at": "2027-03-10 12:00", "tz": LON}
DAY = {**WED, "dates_or": ("2027-03-10",)}

for text in (
    "what's today?",
    "What do I have today",
    "todays session pls",
    "whats on the menu today coach",
    "send me the workout",
    "gym in 10 min, what am I doing?",
    "plan?",
    "what should I lift today",
):
    say(text, "", "plan_today", **DAY)
say(
    "what's on Friday?",
    "",
    "plan_today",
    **{**WED, "dates_or": ("2027-03-12",)},
    does_or=("plan_week",),
    why="the plan of one day ahead: today's question or the week's",
)
say("what do I do tomorrow", "", "plan_today", **{**WED, "dates_or": ("2027-03-11",)}, does_or=("plan_week",))
for text in (
    "show me the week",
    "what does this week look like?",
    "week ahead please",
    "rest of the week?",
    "which days am I training this week",
    "next week's plan?",
):
    say(
        text,
        "",
        "plan_week",
        **WED,
        dates_or=("2027-03-15..2027-03-21", "2027-03-10..2027-03-14", "2027-03-08..2027-03-14"),
    )
for text in (
    "why less weight today?",
    "why am I doing only 3 sets",
    "how come there are no archers this week",
    "Why the drop to 17.5?",
    "what's the reason for the deload",
    "why do I hold this rung again",
    "explain the 20kg please",
):
    say(text, "", "why", **DAY)
for text in (
    "how am I doing?",
    "show my progress",
    "am I getting stronger",
    "how far is the one arm pull up",
    "what's my estimated max on pull ups",
    "chart of my chin-ups please",
    "when will I be ready for archers?",
    "my numbers for the last 4 weeks",
):
    say(text, "", "progress")
say("can I move today to tomorrow?", "", "move", dates="2027-03-10..2027-03-11", **WED)
say("Need to shift Friday's workout to Saturday", "", "move", dates="2027-03-12..2027-03-13", **WED)
say("swap thursday for friday this week pls", "", "move", dates="2027-03-11..2027-03-12", **WED)
say("could we push monday to tuesday", "", "move", dates="2027-03-15..2027-03-16", **WED)
say("I'll train on Sunday instead of Saturday", "", "move", dates="2027-03-13..2027-03-14", **WED)
say("Move the session on the 14th to the 16th please", "", "move", dates="2027-03-14..2027-03-16", **WED)
say("can't do thursday, friday works", "", "move", dates="2027-03-11..2027-03-12", maybe="missed", **WED)
say("Any chance of training tomorrow rather than today?", "", "move", dates="2027-03-10..2027-03-11", **WED)
say("can we move it?", "", "move", ask="dates: move it", **WED)
say("move friday please", "", "move", dates="2027-03-12..", ask="dates: friday", dates_or=("",), **WED)
say("skipped today", "", "missed", dates="2027-03-10", **WED)
say("didn't train yesterday, work exploded", "", "missed", dates="2027-03-09", **WED)
say("couldn't make it on Monday", "", "missed", dates="2027-03-08", **WED)
say("no training today, too tired", "", "missed", dates="2027-03-10", **WED)
say("missed sunday and monday", "", "missed", dates="2027-03-07..2027-03-08", **WED)
say("won't make it today sorry", "", "missed", dates="2027-03-10", **WED)
say("life got in the way yesterday, nothing done", "", "missed", dates="2027-03-09", **WED)
say("I'm away from the 15th to the 20th", "", "away", dates="2027-03-15..2027-03-20", **WED)
say(
    "holiday next Friday until 28 March, no bar",
    "",
    "away equipment",
    dates="2027-03-19..2027-03-28",
    dates_or=("2027-03-12..2027-03-28",),
    does_or=("away",),
    **WED,
    why="'next Friday' on a Wednesday is read both ways",
)
say("travelling tomorrow till Sunday", "", "away", dates="2027-03-11..2027-03-14", **WED)
say("off to Norway on Saturday, back on the 20th", "", "away", dates="2027-03-13..2027-03-19", **WED)
say(
    "business trip 22-26 March, hotel gym with dumbbells only",
    "",
    "away equipment",
    dates="2027-03-22..2027-03-26",
    **WED,
)
say("on vacation from April 3 through April 10", "", "away", dates="2027-04-03..2027-04-10", **WED)
say("will be away from saturday", "", "away", dates="2027-03-13..", **WED)
say(
    "at my parents' this weekend, only a tree branch to hang from",
    "",
    "away equipment",
    dates="2027-03-13..2027-03-14",
    does_or=("equipment",),
    **WED,
)
say("28 dec to 3 jan I'm at the cabin", "", "away", dates="2027-12-28..2028-01-03", at="2027-12-20 12:00", tz=LON)
say("sick since Monday", "", "ill", dates="2027-03-08..", **WED)
say("I've got the flu", "", "ill", dates="2027-03-10..", dates_or=("",), **WED)
say(
    "feeling ill, skipping today",
    "",
    "ill missed",
    dates="2027-03-10",
    does_or=("ill",),
    dates_or=("2027-03-10..",),
    **WED,
    why="only today is named off",
)
say("stomach bug, out until Friday", "", "ill", dates="2027-03-10..2027-03-12", **WED, maybe="missed")
say(
    "caught a cold yesterday, throat like sandpaper",
    "",
    "ill",
    dates="2027-03-09..",
    **WED,
    maybe="pain",
    pain_or=("other - -", "neck - -"),
)
say("was sick Friday to Sunday, fine now", "", "ill", dates="2027-03-05..2027-03-07", maybe="resume", **WED)
say("no rings this week", "", "equipment", **WED, dates_or=("2027-03-10..2027-03-14", "2027-03-08..2027-03-14"))
say("my pull-up bar came off the wall", "", "equipment")
say("got new rings!!", "", "equipment", does_or=("smalltalk",))
say("I only have a bar and bands at home from now on", "", "equipment")
say("bought a dip belt today, so plates are possible now", "", "equipment")
say("gym's pulley is broken, can't do counterweight work", "", "equipment")
say("smallest plates here are 2.5 kg", "", "equipment", does_or=("for_coach", "equipment for_coach"))
say("tell coach I'll be late with the video", "", "for_coach")
say("can the coach have a look at my form?", "", "for_coach")
say("please ask coach whether belts are ok", "", "for_coach")
say("Message for the coach: thanks for last week!", "", "for_coach")
say("need to talk to my coach", "", "for_coach")
say("coach, could you call me tonight?", "", "for_coach")
say("pause my plan until April 1st", "", "pause", dates="2027-03-10..2027-04-01", **WED)
say(
    "please put training on hold for two weeks",
    "",
    "pause",
    dates="2027-03-10..2027-03-23",
    dates_or=("2027-03-10..2027-03-24",),
    **WED,
)
say("need a break, pause everything", "", "pause", dates="2027-03-10..", dates_or=("",), **WED)
say("freeze the programme from Monday till the 28th", "", "pause", dates="2027-03-15..2027-03-28", **WED)
say("pause until I say otherwise", "", "pause", dates="2027-03-10..", dates_or=("",), **WED)
for text in (
    "I'm back",
    "ready to go again",
    "unpause please",
    "let's resume",
    "healthy again, want to start training again",
    "back from holiday, continue!",
    "can we pick the plan up again?",
):
    say(text, "", "resume", **WED)
for text in (
    "stop messaging me",
    "unsubscribe",
    "Please stop.",
    "I quit, delete me from this",
    "don't text me anymore",
    "STOP",
):
    say(text, "", "stop")
for text in (
    "help",
    "how does this work?",
    "what can you do",
    "which commands are there?",
    "how do I log a set?",
    "what do I write after training?",
    "?? how do i use this",
):
    say(text, "", "help")
for text in (
    "thanks!",
    "good morning ☀️",
    "haha",
    "ok",
    "👍",
    "you're the best",
    "see you tomorrow",
    "lol my cat slept on the rings",
    "happy new year!",
    "🔥🔥🔥",
    "nice",
):
    say(text, "", "smalltalk", does_or=("unknown",))
for text in (
    "qwertz",
    "....",
    "xX_77_Xx blarg",
    "12345678",
    "شكرا جزيلا",
    "おはよう",
    "٥×٣",
    "привет",
    "/foo",
    "%$#@!",
):
    say(
        text,
        "",
        "unknown",
        lang=None,
        body=None,
        does_or=("smalltalk",),
        ask_or="intents: " + text,
        also=({"unread": [text]},),
    )
# Several at once
say(
    "pull-ups 5x3 +20. what's tomorrow?",
    "pull_up 5x3 +20",
    "plan_today",
    **{**WED, "dates_or": ("2027-03-11",)},
    does_or=("report plan_week",),
)
say("dips 3x8 +10, bw 71.8, slept 7h, why so light?", "dip 3x8 +10", "why", bw=71.8, sleep=7)
say("done! how am I doing overall?", "pull_up 5x3 +20", "progress", today="m/weighted_pull_up pull_up 5x3 +20 @8")
say("missed yesterday, can I do it today?", "", "missed move", dates="2027-03-09..2027-03-10", does_or=("move",), **WED)
say("left elbow 4/10 since yesterday, please tell the coach", "", "for_coach", pain="elbow L 4", **WED)
say(
    "sick with fever 38.5 since last night, and ask coach if I lose progress",
    "",
    "ill for_coach",
    flags="fever",
    dates="2027-03-09..",
    **WED,
)
say(
    "I'm away Friday to Sunday. Also what does next week look like?",
    "",
    "away plan_week",
    dates="2027-03-12..2027-03-14",
    **WED,
)
say("chin-ups 4x5 +10, thanks coach, you rock", "chin_up 4x5 +10", maybe="for_coach")
say("back from the trip, what's today?", "", "resume plan_today", does_or=("plan_today",), **DAY)
say(
    "Pull ups 4x4 +20, elbow 0, bw 72, session 7, 55min, slept 8. All good, see you Friday",
    "pull_up 4x4 +20",
    pain="elbow - 0",
    bw=72,
    srpe=7,
    mins=55,
    sleep=8,
)
say("belt broke so did 4x8 bw pull ups instead", "pull_up 4x8", "equipment", does_or=("report",))
say(
    "can we move friday to saturday and tell coach my elbow is at 3",
    "",
    "move for_coach",
    dates="2027-03-12..2027-03-13",
    pain="elbow - 3",
    **WED,
)
