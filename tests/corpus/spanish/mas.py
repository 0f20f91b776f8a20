"""Notaciones, intentos, rondas y los números de la vida al lado."""

from tests.corpus.lines import Theme

THEME = Theme("mas", "es")
say = THEME.say

say("dominadas 5x5: 5,5,5,4,3", "pull_up 5,5,5,4,3")
say("hoy fueron 60 flexiones: 20, 20, 12 y 8", "push_up 20,20,12,8")
say("dominadas x10 x8 x7", "pull_up 10,8,7")
say("EMOM 10 minutos: 2 dominadas +20", "pull_up 10x2 +20")
say("superserie x3: 5 pull ups y 12 push ups", "pull_up 3x5; push_up 3x12")
say(
    "cluster de supinas: 2 x (3+2+1) con 20 kg, 20 s entre mini series",
    "; ".join(["chin_up 3 +20; chin_up 2 +20 link; chin_up 1 +20 link"] * 2),
)
say("primeras dos series 5, la tercera 4, la última 3 dominadas +20", "pull_up 5,5,4,3 +20")
say("dos series de seis y tres de cuatro dominadas", "pull_up 2x6; pull_up 3x4")
say("una con 40, una con 42,5, con 45 fallé (dominada)", "pull_up 1 +40; pull_up 1 +42.5; pull_up 0 +45 fail")
say("Test de 1RM dominada: 50 sí, 55 sí, 57,5 no", "pull_up 1 +50; pull_up 1 +55; pull_up 0 +57.5 fail")
say("dominadas 3x4, una con 10, otra con 12,5 y otra con 15", "pull_up 4 +10; pull_up 4 +12.5; pull_up 4 +15")
say(
    "Dominadas:\n- 1ª: 5 reps, 15 kg, RPE 7\n- 2ª: 5 reps, 17,5 kg, RPE 8\n- 3ª: 4 reps, 20 kg, RPE 9",
    "pull_up 5 +15 @7; pull_up 5 +17.5 @8; pull_up 4 +20 @9",
)
say(
    "Un brazo en polea. 15 kg de ayuda: 2x3 por brazo. 10 kg de ayuda: 1x1 por brazo. 5 kg: izq 0 (fallo), der 1",
    "one_arm_counterweight 2x3 LR -15; one_arm_counterweight 1x1 LR -10; "
    "one_arm_counterweight 0 L -5 fail; one_arm_counterweight 1 R -5",
)
say("cinco series de cuatro fondos en anillas con once kilos", "ring_dip 5x4 +11")
say("arqueras anilla baja 2x2 por lado RPE 7", "archer_ring_elbow 2x2 LR last@7")
say("quería hacer 5x5 pero me quedé en 5, 5 y 3 dominadas, con 10 kilos", "pull_up 5,5,3 +10")
say("lagartijas 30, 25 y 20, con 38 años y 2 hijos", "push_up 30,25,20")
say("10x3 neutras con 16kg, curro 9h y aún así", "neutral_grip_pull_up 10x3 +16")
say("hace 30 años hacía 20 dominadas seguidas, hoy 6, 5 y 5", "pull_up 6,5,5")
say("mi compañera ya va por 3x5 +15, yo hoy dominadas 3x5 sin lastre", "pull_up 3x5")
say("drop set de fondos: 6 con 20, directo 5 con 10, directo 8 sin nada", "dip 6 +20; dip 5 +10 link; dip 8 link")
say(
    "dominadas a un brazo 4 izq 2 der; dominadas neutras 5/5/4 con 32,5 kilos",
    "one_arm_pull_up 4 L; one_arm_pull_up 2 R; neutral_grip_pull_up 5,5,4 +32.5",
)
say("fondos lastrados 9/9/8  + 32", "dip 9,9,8 +32")
say("2 series de dominadas, 8 y 7", "pull_up 8,7")
say("dominadas 4x4 con 10 y otra serie de 2", "pull_up 4x4 +10; pull_up 2 +10")
say("todo hecho y una serie más de 2", "pull_up 4x3 +15; pull_up 2 +15", today="m pull_up 4x3 +15 @8")

# Ordinales que cuentan; lo corregido al momento; cuerpo y minutos al lado de otros.
say("vivo en el 3er piso sin ascensor. dominadas 4x4 +10", "pull_up 4x4 +10")
say(
    "ayer, no, el día anterior: dominadas 3x6",
    "pull_up 3x6",
    on="2027-05-11",
    at="2027-05-13 18:00",
    tz="Europe/Madrid",
)
say("dormí 5, perdón, 6 horas", does="report", sleep=6)
say("9 horas en la cama, 6 de ellas dormido", does="report", sleep=6)
say("mi hermano pesa 92. Yo: 70,9", bw=70.9)
say("día de rpe 7. remo en anillas 4x10, fondos 4x8", "ring_row 4x10; dip 4x8", srpe=7)
say("dominadas 5x3 +15. 35 minutos en total.", "pull_up 5x3 +15", mins=35)
say(
    "38,4 esta mañana, no salgo de la cama",
    flags="fever",
    does="ill",
    dates="2027-05-13..",
    dates_or=("2027-05-13..2027-05-13",),
    at="2027-05-13 10:00",
    tz="Europe/Madrid",
)
say("mareado diez minutos después de entrenar", flags="dizziness")

# Ausencias, cambios y preguntas con otras palabras.
TUESDAY = {"at": "2027-05-11 18:00", "tz": "Europe/Madrid"}
say("de viernes a domingo no estoy", does="away", dates="2027-05-14..2027-05-16", **TUESDAY)
say(
    "te dije que del 1 al 9 de junio no estaba. Ahora es del 3 al 9 de junio.",
    does="away",
    dates="2027-06-03..2027-06-09",
    **TUESDAY,
)
say("hoy ni una sola repetición, perdón", does="missed", dates="2027-05-11", **TUESDAY)
say("no pisé el gym ayer", does="missed", dates="2027-05-10", **TUESDAY)
say("ayer hice supinas 4x4, hoy no puedo con los brazos jaja", "chin_up 4x4", on="2027-05-10", **TUESDAY)
say("¿puedo pasar lo del viernes a mañana?", does="move", dates="2027-05-14..2027-05-12", **TUESDAY)
say("¿cuánto peso me pongo hoy?", does="plan_today")
say("olvida lo que acabo de mandar", does="undo")
say("80 minutos contando el calentamiento, supinas 5x5", "chin_up 5x5", mins=80)
say("rodilla molesta en las pistols, 3", pain="knee - 3 during")
say("hice 10 fondos, la semana pasada eran 8", "dip 10")
say("el gimnasio cierra a las 9", does="smalltalk", does_or=("unknown",))
say("el gimnasio cierra esta semana", does="equipment")
say("dominadas 1-2-3-4-5 y de vuelta", "pull_up 1,2,3,4,5,4,3,2,1")
say("72 kg, antes 71,4 la semana pasada", bw=72)
say("peso corporal 72 4x4 supinas", "chin_up 4x4", bw=72)
