"""Gesprochenes: Sätze, wie man sie erzählt."""

from tests.corpus.lines import Theme

THEME = Theme("gesprochen", "de")
say = THEME.say

PLAN = "w scapular_pull_up 5; s archer_ring_elbow 2x2 LR @7; m pull_up 4x4 +20 @7; a dip 3x8 +10"
WARM = "scapular_pull_up 5; "
SKILL = "archer_ring_elbow 2x2 LR; "
MAIN = "pull_up 4x4 +20; "
DIPS = "dip 3x8 +10"

say(
    "Hab Klimmzüge gemacht, vier Sätze mit vier Wiederholungen und 20 Kilo, der letzte war zäh, RPE 9",
    "pull_up 4x4 +20 last@9",
)
say("zwei Sätze Chin-ups, 8 und 7", "chin_up 8,7")
say("nur 3 von 4 Sätzen geschafft, Klimmzüge mit 20, je 4", "pull_up 3x4 +20")
say("erste zwei Sätze 5, danach 4 und 4. Chin-ups +10", "chin_up 5,5,4,4 +10")
say("Klimmzüge 25 für 3, dann 20 für 5", "pull_up 3 +25; pull_up 5 +20")
say("Klimmzüge erst 20 kg 4x, dann 22,5 3x, dann 25 2x", "pull_up 4 +20; pull_up 3 +22.5; pull_up 2 +25")
say("Klimmzüge 4x4 mit 22,5 und nicht 20", "pull_up 4x4 +22.5")
say("Single mit 45 gescheitert, danach 3x3 mit 35, Klimmzüge", "pull_up 0 +45 fail; pull_up 3x3 +35")
say("Muscle-ups 3, 2, 2 und ein Fehlversuch", "muscle_up 3,2,2; muscle_up 0 fail")
say("Klimmzüge Leiter 1-2-3-4 und wieder runter", "pull_up 1,2,3,4,3,2,1")
say("einen einarmigen Klimmzug pro Seite geschafft!", "one_arm_pull_up 1 LR")
say("alles gemacht, 2 Sätze mehr", "pull_up 6x4 +20", today="m pull_up 4x4 +20 @7")
say("ab dem dritten Satz auf 15 runter", "pull_up 4,4 +20; pull_up 4,4 +15", today=PLAN)
say("Zubehör morgen, Rest gemacht", WARM + SKILL + MAIN, today=PLAN)
say("letzter Satz nur 3, sonst alles 4er. Klimmzüge +20, 4 Sätze", "pull_up 3 +20", ask="sets: 4 Sätze")
