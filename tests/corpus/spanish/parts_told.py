"""Partes del recorrido, lo que se niega, series de tantas, dolor de noche."""

from __future__ import annotations

from tests.corpus.lines import Theme

THEME = Theme("parts", "es")
say = THEME.say

say("dominadas a una mano: mitad de abajo 2x2, completas 1x1", "one_arm_pull_up 2x2 lower; one_arm_pull_up 1")
say("dominadas 5x3 sin negativas", "pull_up 5x3")
say("dominadas 5x3 sin pausa arriba", "pull_up 5x3")
say("dominadas 4x3 con pausa arriba, la última sin pausa", "pull_up 3x3 top; pull_up 3")
say("fondos 2 series: 12 (RPE 7) y 12 (RPE 8)", "dip 12 @7; dip 12 @8")
say("3 dominadas de 5 con 15", "pull_up 3x5 +15")
say("dominadas 5x3 +20, fondos 3x8 +10, todo RPE 8", "pull_up 5x3 +20 @8; dip 3x8 +10 @8")
say("desperté a las 4 con el hombro latiendo", flags="night_pain", pain="shoulder - - rest")
say("me he despertado con el codo doliendo", flags="night_pain", pain="elbow - - rest")
say("me desperté a las 4 con el corazón latiendo a mil", does="unknown", does_or=("smalltalk",))
say("sin dolor, a lo sumo un 1", pain="- - 1")
