"""Teile des Weges, verneinte Zusätze, Sätze mehrmals, Scheiben vor ihrer Liste."""

from __future__ import annotations

from tests.corpus.lines import Theme

THEME = Theme("parts", "de")
say = THEME.say

say("Einarmige Klimmzüge untere Hälfte 2x2, dann ganze 1x1", "one_arm_pull_up 2x2 lower; one_arm_pull_up 1")
say("Klimmzüge 5x3, keine Negativen", "pull_up 5x3")
say("Klimmzüge 5x3 ohne Pause oben", "pull_up 5x3")
say("Klimmzüge 4x3 oben 2s gehalten, letzter Satz ohne Pause", "pull_up 3x3 top; pull_up 3")
say("Klimmzüge 20er: 5 5 4, 15er: 6 6", "pull_up 5,5,4 +20; pull_up 6,6 +15")
say("Klimmzüge 5x3 +20, Dips 3x8 +10, alles RPE 8", "pull_up 5x3 +20 @8; dip 3x8 +10 @8")
say("Klimmzüge 5x3 +20, Dips 3x8 +10, beide RPE 8", "pull_up 5x3 +20 last@8; dip 3x8 +10 last@8")
say("Waren zu zweit, sie 3x5, ich 3x8 Klimmzüge", "pull_up 3x8")
say("Die Hand schläft mir nachts ein", flags="numbness", pain="hand - - rest", pain_or=("hand - -",))
say("um 4 aufgewacht mit pochender Schulter", flags="night_pain", pain="shoulder - - rest")
say("kein Schmerz, höchstens eine 1", pain="- - 1")
say("keine Schmerzen, Laune 7/10", pain="- - 0")
