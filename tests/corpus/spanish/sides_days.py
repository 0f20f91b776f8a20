"""Sides, holds and several days in one message, other training among the movements."""

from tests.corpus.lines import Theme

THEME = Theme("sides_days", "es")
say = THEME.say
THURSDAY = {"at": "2027-03-04 18:00", "tz": "Europe/Madrid"}

say("colgado a un brazo 20 s izquierda 25 derecha x 3", "one_arm_hang L 3x20s; one_arm_hang R 3x25s")
say("a un brazo con contrapeso, 10 kg menos, 3x2 por lado", "one_arm_counterweight LR 3x2 -10")
say("arqueras en barra 3 3 2 izquierda, 3 3 3 derecha", "archer_pull_up L 3,3,2; archer_pull_up R 3,3,3")
say("pistols 5 5 4 izquierda, 5 5 5 derecha", "pistol_squat L 5,5,4; pistol_squat R 5,5,5")
say("press con mancuernas 20kg 4x8, dominadas 5x5 10kg", "pull_up 5x5 +10", unread=("press con mancuernas 20kg 4x8",))
say("búlgaras 3x8 por pierna con 2x12kg", "split_squat LR 3x8 +12", why="dumbbells by the figure stated")
say("hoy nada, ayer dominadas 5x3", "pull_up 5x3", on="2027-03-03", **THURSDAY)
say(
    "5x3 ayer con 20 y hoy 4x8 fondos",
    "_ 5x3 +20 on=2027-03-03; dip 4x8 on=2027-03-04",
    ask="movement: 5x3",
    **THURSDAY,
)
say("izquierda 3 derecha 2", "", "report", ask="movement: izquierda 3 derecha 2")
say("lunes y miércoles dominadas 5x5", "pull_up 5x5 on=2027-03-01; pull_up 5x5 on=2027-03-03", **THURSDAY)
say(
    "pistols izquierda 5, derecha 6, luego 5 y 5, luego 4 y 5",
    "pistol_squat LR 5/6; pistol_squat LR 5; pistol_squat LR 4/5",
)
say(
    "colgado a un brazo: derecha 12 s, luego 10, izquierda 10 s, luego 8",
    "one_arm_hang R 12s,10s; one_arm_hang L 10s,8s",
)
say("15 minutos de pino practicando, luego fondos 3x8", "dip 3x8", unread=("15 minutos de pino practicando",))
say("3 series: dominadas 6, fondos 8", "pull_up 3x6; dip 3x8")
say(
    "a un brazo con mano en el bíceps: 3x1 por brazo mitad inferior, 2x1 por brazo mitad superior",
    "one_arm_hand_on_biceps LR 3x1 lower; one_arm_hand_on_biceps LR 2x1 upper",
)
say("dormí 7:30, 71,9 kg, supinas 4x4 20 kg", "chin_up 4x4 +20", bw=71.9, sleep=7.5)
say(
    "arqueras en barra, 3 por lado, 2 series. rpe izquierda 8 derecha 7",
    "archer_pull_up LR 3; archer_pull_up L 3 @8; archer_pull_up R 3 @7",
)
say("dominadas 5x5. sentadillas 5x5 80kg. Todas rpe 8", "pull_up 5x5 @8; squat 5x5 +80 @8")
say("apoyo en anillas 3x20s, fondos 3x5", "dip 3x5", unread=("apoyo en anillas 3x20s",))
say("dominadas 5x5, tiempo total 45", "pull_up 5x5", mins=45)
