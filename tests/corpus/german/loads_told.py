"""Lasten, die sich von Satz zu Satz ändern."""

from tests.corpus.lines import Theme

THEME = Theme("loads_told", "de")
say = THEME.say

say(
    "Klimmzüge 5x3, angefangen mit 15, jeden Satz 2,5 mehr",
    "pull_up 3 +15; pull_up 3 +17.5; pull_up 3 +20; pull_up 3 +22.5; pull_up 3 +25",
)
say("Dips 4x6 pro Satz 2,5 kg mehr, Start bei 15", "dip 6 +15; dip 6 +17.5; dip 6 +20; dip 6 +22.5")
say("Klimmzüge 4x5, 15 im ersten Satz, 20 in den letzten drei", "pull_up 5 +15; pull_up 3x5 +20")
say("Klimmzüge 5x3, 22,5 für die ersten drei, 20 für die letzten zwei", "pull_up 3x3 +22.5; pull_up 2x3 +20")
say("Klimmzüge 3x5 mit 20, dann runter auf 15 und noch 2x6", "pull_up 3x5 +20; pull_up 2x6 +15")
say("Klimmzüge 3x5 mit 20, dann dasselbe mit 15", "pull_up 3x5 +20; pull_up 3x5 +15")
say("Klimmzüge 4x6, aber es waren nur 10, nicht 15", "pull_up 4x6 +10")
say(
    "Maximalversuch Klimmzüge: 40 leicht, 45 ging, 47,5 zäh, 50 nicht geschafft",
    "pull_up 1 +40; pull_up 1 +45; pull_up 1 +47.5; pull_up 0 +50 fail",
)
