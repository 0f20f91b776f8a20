"""Gente de cinco países que cuenta lo suyo: en orden, con lo que se calla la segunda vez, intentos, avisos, cambios."""
# ruff: noqa: E501

from tests.corpus.lines import Theme

THEME = Theme("gente", "es")
say = THEME.say

PLAN = "s/archer archer_pull_up 3x2 LR; m/weighted_pull_up pull_up 5x3 +20 @8; a dip 3x8 +10"
ARCHERS, MAIN, DIPS = "archer_pull_up 3x2 LR", "pull_up 5x3 +20", "dip 3x8 +10"
THURSDAY = {"at": "2027-03-04 18:00", "tz": "Europe/Madrid"}

# Series contadas en orden.
say(
    "Pues mira, hoy he hecho dominadas lastradas, primero cinco con diez kilos, luego cuatro con quince y para terminar tres con veinte",
    "pull_up 5 +10; pull_up 4 +15; pull_up 3 +20",
)
say("l-sit 4 veces, 12 15 14 y 10 segundos", "l_sit 12s,15s,14s,10s")
say("remo con mancuerna de 24, 4x8 por lado", "row 4x8 LR +24")
say("tres series de arqueras con anilla al hombro, dos por brazo", "archer_ring_shoulder 3x2 LR")
say("con una mano en el bíceps: 2 reps por brazo, 3 series", "one_arm_hand_on_biceps 3x2 LR")
say("3 bloques de 4 dominadas + 6 fondos + 10 flexiones sin parar", "pull_up 3x4; dip 3x6; push_up 3x10")
say("hice 3 series de fondos de 8 y 4 de dominadas de 5", "dip 3x8; pull_up 4x5")
say("dominadas con lastre 4x5 a 15kg, la última me quedé sin nada", "pull_up 4x5 +15 last@10")

# Intentos.
say("dominadas: intenté un single con 45 pero no subió, me quedé en 42,5", "pull_up 0 +45 fail; pull_up 1 +42.5")
say("dominadas: probé 1 con 45 y no subió", "pull_up 0 +45 fail")
say(
    "dominada a una mano, intenté 3 veces con la derecha y me salió 1",
    "one_arm_pull_up 1 R; one_arm_pull_up 2x0 R fail",
)
say("la derecha me salió, la izquierda no, dominada a una mano", "one_arm_pull_up 1 R; one_arm_pull_up 0 L fail")

# Frente al plan.
say("al final hice 4 series de dominadas, no 5", "pull_up 4x3 +20", today=PLAN)
say("le subí 2,5 a las dominadas y me salieron todas", "pull_up 5x3 +22.5", today=PLAN)
say(
    "solo alcancé a hacer 2 series de arqueras y 4 de dominadas, nada más",
    "archer_pull_up 2x2 LR; pull_up 4x3 +20",
    today=PLAN,
)
say("listo, todo según lo planeado, fondos a 9", f"{ARCHERS}; {MAIN}; dip 3x8 +?", ask="load_kg: a 9", today=PLAN)
say("dominadas hechas, a 9 la última", f"{MAIN} last@9", today=PLAN)

say(
    "las arqueras con rpe 8, las dominadas 9 y los fondos 7",
    f"{ARCHERS} last@8; {MAIN} last@9; {DIPS} last@7",
    today=PLAN,
)
say("hice las 3 de arqueras, y de dominadas solo 3 series", f"{ARCHERS}; pull_up 3x3 +20", today=PLAN)
say("las 5 de dominadas hechas, fondos nada", MAIN, today=PLAN)

# Días y esfuerzo.
say(
    "antier 5x3 con 20 de dominadas y ayer 3x10 de fondos",
    "pull_up 5x3 +20 on=2027-03-02; dip 3x10 on=2027-03-03",
    **THURSDAY,
)
say(
    "el lunes 5x3 de dominadas y el martes 3x10 de fondos",
    "pull_up 5x3 on=2027-03-01; dip 3x10 on=2027-03-02",
    **THURSDAY,
)
say("planche lean 4 de 20 segundos, tuck 5 de 8", "planche_lean 4x20s; tuck_planche 5x8s")
say("la sesión estuvo pesada, un 9 en total, hice dominadas 5x5 con 15", "pull_up 5x5 +15", srpe=9)

say("le cuento que ayer hice tres series de cinco dominadas", "pull_up 3x5", on="2027-03-03", **THURSDAY)
say("te aviso que el lunes hice 5x3 dominadas", "pull_up 5x3", on="2027-03-01", **THURSDAY)
say("por fin me salió el muscle up!!", "muscle_up 1")
say("dominadas con goma 4x6 y con la que me quita 15 kg 2x5", "band_pull_up 4x6; band_pull_up 2x5 -15")
say(
    "hice dos rondas: 8 fondos, 10 flexiones y 20 segundos de hollow en cada una",
    "dip 2x8; push_up 2x10; hollow_hold 2x20s",
)
say("peso setenta y un kilos con trescientos gramos", bw=71.3)
say("me colgué ciento diez segundos", "dead_hang 110s")
say("dominadas cinco cinco cuatro y la última ya solo tres", "pull_up 5,5,4,3")
say("hoy 20 minutos nada más, dominadas 3x5", "pull_up 3x5", mins=20)

# Avisos.
say("llevo dos noches despertándome por el dolor de codo", pain="elbow - - rest", flags="night_pain")
say("Profe, mañana no puedo entrenar, lo paso al sábado?", does="move", dates="2027-03-05..2027-03-06", **THURSDAY)
