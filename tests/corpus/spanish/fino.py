"""The fine points of the contract in Spanish, one message each."""

from tests.corpus.lines import Theme
from tests.corpus.notation import sets

THEME = Theme("fine", "es")
say = THEME.say
NIGHT = {"at": "2027-03-10 01:30", "tz": "Europe/Madrid"}
WED = {"at": "2027-03-10 12:00", "tz": "Europe/Madrid"}

say("dominadas 5x3 +20, fondos 3x8 +10, en general rpe 8", "pull_up 5x3 +20; dip 3x8 +10", srpe=8)
say("sesión rpe 7, 50 min", "", srpe=7, mins=50)
say("hoy no entrené", "", "missed", dates="2027-03-09", **NIGHT)
say("dominadas 3x3 +30, fallé la última rep de la última serie", "pull_up 2x3 +30; pull_up 2 +30 fail")
say("dominadas 5@8", "pull_up ?", ask="load_kg: 5@8", also=({"sets": sets("pull_up 5 +?")}, {"sets": []}))
say("dominadas +1,25 5x3", "pull_up 5x3 +1.25")
say("supinas: 22,5 kg para 5, 5 y 4", "chin_up 5,5,4 +22.5")
say("dominadas 4x4 @ 20 @ 8", "pull_up 4x4 +20 last@8")
say("pausa hasta el 1 de mayo", "", "pause", dates="2027-03-10..2027-05-01", **WED)
say("pierna 2/10", pain="other - 2")
say("dedo medio izquierdo 3", pain="hand L 3")
say("me desperté dos veces por el codo izquierdo, 4/10", pain="elbow L 4 rest", flags="night_pain")
say("entrené de 19:00 a 20:15, fondos 4x8", "dip 4x8", why="clock times are no duration")
say("dominadas arqueras 4/3, 4/3", "archer_pull_up LR 4/3; archer_pull_up LR 4/3")
say("3 rondas: 5 fondos, 5 dominadas, 10 flexiones", "dip 3x5; pull_up 3x5; push_up 3x10")
say("dominadas 5x4 +15, rpe 7-9 entre todas", "pull_up 5x4 +15", ask="rpe: rpe 7-9")
say("hace unos días fondos 4x6", "dip 4x6", on=None, ask="performed_on: hace unos días", **WED)
say("el finde supinas 5x5", "chin_up 5x5", on=None, ask="performed_on: el finde", **WED)
say("dominadas con 20, unas cuantas", "pull_up ? +20", ask="reps: unas cuantas", also=({"sets": []},))
say("fondos 4x6 con dos discos", "dip 4x6 +?", ask="load_kg: dos discos", also=({"sets": []},))
say("100 flexiones a lo largo del día", "push_up ?", ask="sets: 100 flexiones", also=({"sets": []},))
say("50 fondos en series de diez", "dip 5x10", ask_or="sets: series de diez")
say("dos sesiones hoy: por la mañana dominadas 5x3 +20, por la tarde fondos 3x8", "pull_up 5x3 +20; dip 3x8")
say("un lado 2 y el otro 1, dominadas a un brazo", "one_arm_pull_up 2,1", ask="side: un lado 2 y el otro 1")
say(
    "fiebre 38,9 desde ayer, y me duele la garganta",
    "",
    "ill",
    flags="fever",
    dates="2027-03-09..",
    maybe="pain",
    pain_or=("neck - -", "other - -"),
    **WED,
)
