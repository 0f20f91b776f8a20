"""Hablado: series como se cuentan."""

from tests.corpus.lines import Theme

THEME = Theme("hablado", "es")
say = THEME.say

PLAN = "w scapular_pull_up 5; s archer_ring_elbow 2x2 LR @7; m pull_up 4x4 +20 @7; a dip 3x8 +10"
REST = "scapular_pull_up 5; archer_ring_elbow 2x2 LR; "

say("hice dominadas, cuatro series de cuatro con veinte kilos, la última costó, un 9", "pull_up 4x4 +20 last@9")
say("solo saqué 3 series de 4, dominadas con 20, 4 reps cada una", "pull_up 3x4 +20")
say("dominadas supinas +10: las dos primeras series 5, las dos últimas 4", "chin_up 5,5,4,4 +10")
say("singles: 5 a 40 kg en dominadas, todas limpias, rpe 8", "pull_up 5x1 +40 last@8")
say("quería 5x5 pero el agarre no dio así que 5,5,4 dominadas con 15", "pull_up 5,5,4 +15")
say("25 para un triple y luego 20 para 2 series de 4, dominadas", "pull_up 3 +25; pull_up 2x4 +20")
say("sentadilla 100 por 5, 110 por 3", "squat 5 +100; squat 3 +110")
say("dominadas 4x4 con 22,5, no 20", "pull_up 4x4 +22.5")
say("fallé un single con 47,5, después 3x3 con 40, dominadas", "pull_up 0 +47.5 fail; pull_up 3x3 +40")
say("muscle ups: 3, 2, 2 y un fallo", "muscle_up 3,2,2; muscle_up 0 fail")
say("primero 12 dominadas seguidas, después 8 y 6", "pull_up 12,8,6")
say("una dominada a un brazo por lado!!! la primera", "one_arm_pull_up 1 LR")
say("escalera 1 2 3 4 5 y bajando, dominadas", "pull_up 1,2,3,4,5,4,3,2,1")
say("a partir de la tercera serie bajé a 15", "pull_up 4,4 +20; pull_up 4,4 +15", today=PLAN)
say("cambié los fondos por flexiones 3x12, lo demás igual", REST + "pull_up 4x4 +20; push_up 3x12", today=PLAN)
say("las dos últimas series con 17,5", "pull_up 4,4 +20; pull_up 4,4 +17.5", today=PLAN)
