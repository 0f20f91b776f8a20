"""The fine points of the contract in German, one message each."""

from tests.corpus.lines import Theme
from tests.corpus.notation import sets

THEME = Theme("fine", "de")
say = THEME.say
NIGHT = {"at": "2027-03-10 01:30", "tz": "Europe/Berlin"}
WED = {"at": "2027-03-10 12:00", "tz": "Europe/Berlin"}

say("Klimmzüge 5x3 +20, Dips 3x8 +10, insgesamt RPE 8", "pull_up 5x3 +20; dip 3x8 +10", srpe=8)
say("Einheit RPE 7, 50 min", "", srpe=7, mins=50)
say("heute nicht trainiert", "", "missed", dates="2027-03-09", **NIGHT)
say("Klimmzüge 3x3 +30, letzte Wdh im letzten Satz nicht geschafft", "pull_up 2x3 +30; pull_up 2 +30 fail")
say("Klimmzüge 5@8", "pull_up ?", ask="load_kg: 5@8", also=({"sets": sets("pull_up 5 +?")}, {"sets": []}))
say(
    "Klimmzüge KG+20 5x3",
    "pull_up 5x3 +20",
    ask_or="load_kg: KG+20",
    why="KG for the body's weight is used, and is easily misread",
)
say("Klimmzüge +1,25 5x3", "pull_up 5x3 +1.25")
say("Chin-ups: 22,5 kg für 5, 5 und 4", "chin_up 5,5,4 +22.5")
say("Klimmzüge 4x4 @ 20 @ 8", "pull_up 4x4 +20 last@8")
say("Pause bis 1. Mai", "", "pause", dates="2027-03-10..2027-05-01", **WED)
say("Bein 2/10", pain="other - 2")
say("Mittelfinger links 3", pain="hand L 3")
say("zweimal aufgewacht wegen dem linken Ellbogen, 4/10", pain="elbow L 4 rest", flags="night_pain")
say("von 19:00 bis 20:15 trainiert, Dips 4x8", "dip 4x8", why="clock times are no duration")
say("Archer-Klimmzüge 4/3, 4/3", "archer_pull_up LR 4/3; archer_pull_up LR 4/3")
say("3 Runden: 5 Dips, 5 Klimmzüge, 10 Liegestütze", "dip 3x5; pull_up 3x5; push_up 3x10")
say("Klimmzüge 5x4 +15, RPE 7-9 über alle Sätze", "pull_up 5x4 +15", ask="rpe: RPE 7-9")
say("vor ein paar Tagen Dips 4x6", "dip 4x6", on=None, ask="performed_on: vor ein paar Tagen", **WED)
say("am Wochenende Chin-ups 5x5", "chin_up 5x5", on=None, ask="performed_on: am Wochenende", **WED)
say("Klimmzüge mit 20, einige", "pull_up ? +20", ask="reps: einige", also=({"sets": []},))
say("Dips 4x6 mit zwei Scheiben", "dip 4x6 +?", ask="load_kg: zwei Scheiben", also=({"sets": []},))
say("100 Liegestütze über den Tag verteilt", "push_up ?", ask="sets: 100 Liegestütze", also=({"sets": []},))
say("50 Dips in Zehnersätzen", "dip 5x10", ask_or="sets: Zehnersätzen")
say("zwei Einheiten heute: morgens Klimmzüge 5x3 +20, abends Dips 3x8", "pull_up 5x3 +20; dip 3x8")
say(
    "seit gestern Fieber, 38,9, und Hals kratzt",
    "",
    "ill",
    flags="fever",
    dates="2027-03-09..",
    maybe="pain",
    pain_or=("neck - -", "other - -"),
    **WED,
)
