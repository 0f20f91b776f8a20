"""Sätze wie im Formular, Summen daneben, was hätte sein können, Nächte nach der Uhr, Tage um wie viele."""

from tests.corpus.lines import Theme

THEME = Theme("unsicher", "de")
say = THEME.say

say("Klimmzüge Satz 1 5 Satz 2 5 Satz 3 4", "pull_up 5,5,4")
say("Klimmzüge Gewicht 20 Wdh 5 5 4", "pull_up 5,5,4 +20")
say("Klimmzüge 5x5, insgesamt 22", "pull_up 5x5", ask="sets: insgesamt 22")
say("hätte 5x5 Klimmzüge machen können, hab 4x5 gemacht", "pull_up 4x5")
say("Mein Physio meint 3x15 Liegestütze, hab 2x15 gemacht", "push_up 2x15")
say("Klimmzüge 5x3 mit 20, letzter Satz glatte 9", "pull_up 5x3 +20 last@9")
say("Klimmzüge 4x4, die vierte im letzten Satz nicht geschafft", "pull_up 4,4,4; pull_up 3 fail")
say(
    "Klimmzüge 5x3 mit einer 20er und einer 5er Scheibe",
    "pull_up 5x3 +?",
    ask="load_kg: mit einer 20er und einer 5er Scheibe",
)
say("Klimmzüge 2x5, einer mit 10 und einer mit 15", "pull_up 5 +10; pull_up 5 +15")
say("hab von 23 bis 6 geschlafen", sleep=7, does="report")
say("7-8 Stunden geschlafen", sleep=7.5, does="report")
say("Nach 8 km Laufen noch 3x10 Liegestütze", "push_up 3x10", unread=("8 km Laufen",))
say("das waren keine Klimmzüge, das waren Chin-ups", fix=("movement", "pull_up", "chin_up"), does="correction")
say("Noch 2 Wochen bis zum Urlaub. Klimmzüge 5x3 mit 20", "pull_up 5x3 +20")
say(
    "Samstag einen Tag nach hinten schieben?",
    does="move",
    dates="2027-03-06..2027-03-07",
    at="2027-03-04 18:00",
    tz="Europe/Berlin",
)
say("72,1 / 7h / Ellbogen 0", bw=72.1, sleep=7, pain="elbow - 0", does="pain bodyweight")
