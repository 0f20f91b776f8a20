"""Cargas que cambian de serie en serie."""

from tests.corpus.lines import Theme

THEME = Theme("loads_told", "es")
say = THEME.say

say(
    "dominadas 5x3 subiendo 2,5 cada serie desde 15",
    "pull_up 3 +15; pull_up 3 +17.5; pull_up 3 +20; pull_up 3 +22.5; pull_up 3 +25",
)
say(
    "dominadas 4x4 empezando con 10 y sumando 5 kg por serie",
    "pull_up 4 +10; pull_up 4 +15; pull_up 4 +20; pull_up 4 +25",
)
say("fondos 3x8, empecé con 20 y fui bajando 5 cada serie", "dip 8 +20; dip 8 +15; dip 8 +10")
say("dominadas 5x3, 20 las dos primeras, 22,5 las tres últimas", "pull_up 2x3 +20; pull_up 3x3 +22.5")
say("dominadas 3x5 con 20, luego bajé a 15 e hice 2x6", "pull_up 3x5 +20; pull_up 2x6 +15")
say("dominadas 3x5 con 20, luego lo mismo con 15", "pull_up 3x5 +20; pull_up 3x5 +15")
say("dominadas 4x6 pero eran 10 y no 15", "pull_up 4x6 +10")
say("test de máximo en dominadas: 40 fácil, 45 bien, 50 fallo", "pull_up 1 +40; pull_up 1 +45; pull_up 0 +50 fail")
