"""Contado frente a planes de todo tipo: un ejercicio, isométricos, singles por lado, día de test; y días y correcciones."""
# ruff: noqa: E501

from functools import partial

from tests.corpus.english.other_plans import CHINS, HOLDS, LEVERS, ONE, RINGS, SINGLES, TEST, WARM, WARMED
from tests.corpus.lines import Theme

THEME = Theme("otros_planes", "es")
say = partial(THEME.say, at="2027-03-04 18:00", tz="Europe/Madrid")

say("series 1 a 3 con 22,5, la 4 con 20, la 5 con 17,5", "pull_up 3x3 +22.5; pull_up 3 +20; pull_up 3 +17.5", today=ONE)
say("en la primera serie 4 en vez de 3, el resto 3", "pull_up 4 +22.5; pull_up 4x3 +22.5", today=ONE)
say("ya lo hice ayer", "pull_up 5x3 +22.5", today=ONE, on="2027-03-03")
say("hice 6 series por error", "pull_up 6x3 +22.5", today=ONE)
say("según el plan pero una más", "pull_up 5x3 +22.5", today=ONE, ask="sets: una más")
say("elevaciones de piernas con 12 reps, lo demás igual", f"{LEVERS}; l_sit 3x20s; hanging_leg_raise 3x12", today=HOLDS)
say("L-sit todas de 20, elevaciones 10 10 8", "l_sit 3x20s; hanging_leg_raise 10,10,8", today=HOLDS)
say(
    "4 levers en vez de 5, el resto bien",
    "advanced_tuck_front_lever 4x10s; l_sit 3x20s; hanging_leg_raise 3x10",
    today=HOLDS,
)
say(
    "primero los L-sit, luego los levers y las elevaciones. Todo como ponía",
    f"{LEVERS}; l_sit 3x20s; hanging_leg_raise 3x10",
    today=HOLDS,
)
say(
    "fallé el single con la izquierda, con la derecha salió",
    "",
    "report",
    today=WARM,
    ask="sets: fallé el single con la izquierda, con la derecha salió",
)
say(
    "flexiones 15 15 12, todo lo demás como en el papel",
    f"{WARMED}; one_arm_hand_on_biceps LR 2x1; pull_up 4x4 +25; push_up 15,15,12",
    today=WARM,
)
say("dominadas 4 4 4 3, sin flexiones", "pull_up 4,4,4,3 +25", today=WARM)
say(
    "serie top 3 con 37,5, rpe 9, luego a un brazo: izquierda sí, derecha no",
    "chin_up 3 +37.5 @9; one_arm_pull_up L 1; one_arm_pull_up R 0 fail",
    today=TEST,
)
say(
    "supinas 6 6 6 5, remo hecho, fondos 10 10 8, sin curls",
    "chin_up 6,6,6,5 +15; ring_row 3x12; dip 10,10,8",
    today=CHINS,
)
say("3 por brazo, flexiones 20 20 18", "one_arm_chin_up LR 3x1; push_up 20,20,18", today=SINGLES)
say("dominadas: 30 pesaba demasiado así que 27,5 en las cuatro", "pull_up 4x2 +27.5", today=RINGS)
say("dominadas todas con 30, remo con 35", "pull_up 4x2 +30; row 3x10 +35", today=RINGS)

say("tengo gripe, fuera el resto de la semana", does="ill", maybe="away", dates="2027-03-04..2027-03-07")
say("pausa todo hasta abril por favor", does="pause", dates="2027-03-04..2027-03-31")
say("este finde nos mudamos, así que nada sábado y domingo", does="missed", dates="2027-03-06..2027-03-07")
say("la sesión de ayer era en realidad la del lunes", fix=("performed_on", "2027-03-03", "2027-03-01"), on=None)
say("ups mal, los fondos fueron con 15", fix=("load_kg", None, 15, "dip"))
say("mi vecino tiene 68 y hace 12 fondos cada mañana", does="smalltalk", does_or=("unknown",))
say("el gimnasio solo tiene un disco de 20 y uno de 10, ¿qué uso para 22,5?", does="equipment", maybe="help")

say("las 3 primeras rpe 6, las 2 últimas rpe 8", "pull_up 3x3 +22.5 @6; pull_up 2x3 +22.5 @8", today=ONE)
say("movilidad hecha, dominadas solo 3 series", "pull_up 3x4 +25", today=WARM)
say("calentamiento y serie top, nada más", "chin_up 5; chin_up 3 +15; chin_up 2 +25; chin_up 3 +37.5", today=TEST)
say(
    "2x3 arqueras bien, 4x2 con 30 bien, sin remo, 3 de los 4 pinos",
    "archer_ring_shoulder LR 2x3; pull_up 4x2 +30; handstand_hold 3x20s",
    today=RINGS,
)
say("mañana imposible, ¿qué tal el domingo?", does="move", dates="2027-03-05..2027-03-07")
say("hoy me tomé el día libre", does="missed", dates="2027-03-04")
say("quiero dejar el programa", does="stop")
say("¿la semana que viene es descarga?", does="plan_week", dates_or=("2027-03-08..2027-03-14",))
