"""Gegen Pläne aller Art erzählt: eine Übung allein, Halten, Singles je Seite, Testtag; dazu Tage und Korrekturen."""

from functools import partial

from tests.corpus.english.other_plans import CHINS, HOLDS, LEVERS, ONE, RINGS, SINGLES, TEST, WARM, WARMED
from tests.corpus.lines import Theme

THEME = Theme("andere_plaene", "de")
say = partial(THEME.say, at="2027-03-04 18:00", tz="Europe/Berlin")

say("im ersten Satz 4 statt 3, Rest 3er", "pull_up 4 +22.5; pull_up 4x3 +22.5", today=ONE)
say("Sätze 1 bis 3 mit 22,5, 4 mit 20, 5 mit 17,5", "pull_up 3x3 +22.5; pull_up 3 +20; pull_up 3 +17.5", today=ONE)
say("hab ich gestern schon gemacht", "pull_up 5x3 +22.5", today=ONE, on="2027-03-03")
say("Beinheben mit 12 Wdh, sonst wie geplant", f"{LEVERS}; l_sit 3x20s; hanging_leg_raise 3x12", today=HOLDS)
say("L-Sit alle 20, Beinheben 10 10 8", "l_sit 3x20s; hanging_leg_raise 10,10,8", today=HOLDS)
say("4 Lever statt 5, Rest passt", "advanced_tuck_front_lever 4x10s; l_sit 3x20s; hanging_leg_raise 3x10", today=HOLDS)
say("Klimmzüge 4 4 4 3, Liegestütze ausgelassen", "pull_up 4,4,4,3 +25", today=WARM)
say(
    "Aufwärmen und Einarmige erledigt, dann keine Zeit mehr. Keine Klimmzüge, keine Liegestütze",
    f"{WARMED}; one_arm_hand_on_biceps LR 2x1",
    today=WARM,
)
say(
    "links beim Single gescheitert, rechts geschafft",
    "",
    "report",
    today=WARM,
    ask="sets: links beim Single gescheitert, rechts geschafft",
)
say(
    "Top-Satz 3 mit 37,5, RPE 9, danach einarmig: links geschafft, rechts nicht",
    "chin_up 3 +37.5 @9; one_arm_pull_up L 1; one_arm_pull_up R 0 fail",
    today=TEST,
)
say("nur 2 beim Top-Satz, Einarmige nicht probiert", "chin_up 2 +37.5", today=TEST)
say(
    "Chins 6 6 6 5, Rudern erledigt, Dips 10 10 8, keine Curls",
    "chin_up 6,6,6,5 +15; ring_row 3x12; dip 10,10,8",
    today=CHINS,
)
say(
    "Chins fertig, vom Rest nur je 2 Sätze",
    "chin_up 4x6 +15; ring_row 2x12; dip 2x10; biceps_curl 2x12 +10",
    today=CHINS,
)
say("alle drei rechts, links nur einer", "", "report", today=SINGLES, ask="sets: alle drei rechts, links nur einer")
say("3 pro Arm, Liegestütze 20 20 18", "one_arm_chin_up LR 3x1; push_up 20,20,18", today=SINGLES)
say("Klimmzüge: 30 war zu schwer, also 27,5 bei allen vier", "pull_up 4x2 +27.5", today=RINGS)
say("Klimmzüge alle mit 30, Rudern mit 35", "pull_up 4x2 +30; row 3x10 +35", today=RINGS)

say("Flieg Montag weg, am Sonntag drauf wieder da", does="away", dates="2027-03-08..2027-03-13")
say("hab Grippe, fall den Rest der Woche aus", does="ill", dates="2027-03-04..2027-03-07")
say("seit Dienstag krank, ab morgen geht's wieder los", does="ill resume", dates="2027-03-02..2027-03-04")
say("bitte alles pausieren bis April", does="pause", dates="2027-03-04..2027-03-31")
say("wir ziehen am Wochenende um, also Samstag und Sonntag nix", does="missed", dates="2027-03-06..2027-03-07")
say("die Einheit von gestern war eigentlich vom Montag", fix=("performed_on", "2027-03-03", "2027-03-01"), on=None)
say("ups falsch, Dips waren mit 15", fix=("load_kg", None, 15, "dip"))
say("mein Nachbar ist 68 und macht jeden Morgen 12 Dips", does="smalltalk", does_or=("unknown",))
say("aus Versehen 6 Sätze gemacht", "pull_up 6x3 +22.5", today=ONE)

say("erste 3 Sätze RPE 6, letzte 2 RPE 8", "pull_up 3x3 +22.5 @6; pull_up 2x3 +22.5 @8", today=ONE)
say("Mobility gemacht, Klimmzüge nur 3 Sätze", "pull_up 3x4 +25", today=WARM)
say("nur Aufwärmen und 2 Singles pro Arm", f"{WARMED}; one_arm_hand_on_biceps LR 2x1", today=WARM)
say("Singles ausgelassen, 4x4 mit 25, Liegestütze 15 15 15", "pull_up 4x4 +25; push_up 3x15", today=WARM)
say("Aufwärmen + Topsatz, mehr nicht", "chin_up 5; chin_up 3 +15; chin_up 2 +25; chin_up 3 +37.5", today=TEST)
say(
    "Chins 6,6,6,6 Ringrudern 12,12,12 Dips 10,10,10",
    "chin_up 4x6 +15; ring_row 3x12; dip 3x10",
    today=CHINS,
)
say("morgen geht gar nicht, wie wär's mit Sonntag", does="move", dates="2027-03-05..2027-03-07")
say("hab mir heute freigenommen vom Training", does="missed", dates="2027-03-04")
say("konnte Dienstag nicht, saß bis 9 im Büro", does="missed", dates="2027-03-02")
say("ich will mit dem Programm aufhören", does="stop")
say("ist nächste Woche Deload?", does="plan_week", dates_or=("2027-03-08..2027-03-14",))
