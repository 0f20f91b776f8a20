"""Mensajes contados frente al plan del día: menos, más, otra carga, marcados, por lados."""
# ruff: noqa: E501

from tests.corpus.lines import Theme

THEME = Theme("del_plan", "es")
say = THEME.say

DAY = "w scapular_pull_up 2x8; m/weighted_pull_up pull_up 5x3 +22.5 @8; a external_rotation LR 2x12 +4"
VOLUME = "m/weighted_pull_up pull_up 4x6 +15 @7.5"
DIPS = "m/weighted_pull_up pull_up 4x4 +20 @8; a dip 3x6 +15 @8"
FULL = "w scapular_pull_up 2x8; w pull_up 5; m/weighted_pull_up pull_up 4x4 +20 @7; a external_rotation LR 2x12 +4; a face_pull 2x15 +15"
SKILL = (
    "w scapular_pull_up 2x6; s/archer_elbow_full archer_ring_elbow LR 2x2 @7; m/weighted_pull_up pull_up 5x3 +25 @7.5"
)
ARM = "s/hand_on_biceps one_arm_hand_on_biceps LR 2x2 @8"
ARCHERS = "s/archer_elbow_full archer_ring_elbow LR 3x4 @7"
LEVER = "s/advanced_tuck_front_lever advanced_tuck_front_lever 4x8s @8; m/weighted_pull_up pull_up 4x6 +15 @7"
PLANCHE = "s/tuck_planche tuck_planche 5x12s @8"
TEST = "w pull_up 5; m/weighted_pull_up pull_up 1x3 +30 @9; s/hand_on_biceps one_arm_hand_on_biceps LR 1x1 @9"
CHINS = "m/weighted_pull_up chin_up 4x5 +15 @8; a push_up 3x15; a hanging_leg_raise 3x10"

say(
    "hecho todo, las dos últimas series con 20 porque falló el agarre",
    "scapular_pull_up 2x8; pull_up 3x3 +22.5; pull_up 2x3 +20; external_rotation LR 2x12 +4",
    today=DAY,
)
say("calentamiento y 3 series de trabajo", "scapular_pull_up 2x8; pull_up 3x3 +22.5", today=DAY)
say("hice supinas en vez de dominadas, con 20", "chin_up 5x3 +20", today=DAY)
say("dominadas ✅ resto ❌", "pull_up 5x3 +22.5", today=DAY)
say("5x3 ✅ rotaciones ✅", "pull_up 5x3 +22.5; external_rotation LR 2x12 +4", today=DAY)
say("hecho, y una sexta serie", "scapular_pull_up 2x8; pull_up 6x3 +22.5; external_rotation LR 2x12 +4", today=DAY)
say("las cinco series, solo que puse 20", "pull_up 5x3 +20", today=DAY)
say("dominadas solo 3 series en vez de 5 y con 2,5 menos", "pull_up 3x3 +20", today=DAY)
say("como en el plan, 2,5 más", "scapular_pull_up 2x8; pull_up 5x3 +25; external_rotation LR 2x12 +4", today=DAY)
say("hecho pero solo 20 kg", "scapular_pull_up 2x8; pull_up 5x3 +20; external_rotation LR 2x12 +4", today=DAY)
say("sin rotaciones, lo demás todo hecho", "scapular_pull_up 2x8; pull_up 5x3 +22.5", today=DAY)
say("todo menos las rotaciones", "scapular_pull_up 2x8; pull_up 5x3 +22.5", today=DAY)
say(
    "todo hecho salvo la última serie de dominadas",
    "scapular_pull_up 2x8; pull_up 4x3 +22.5; external_rotation LR 2x12 +4",
    today=DAY,
)
say(
    "plan completado, última serie solo 2",
    "scapular_pull_up 2x8; pull_up 4x3 +22.5; pull_up 2 +22.5; external_rotation LR 2x12 +4",
    today=DAY,
)
say(
    "plan completo. RPE 8 en la última serie, 58 minutos",
    "scapular_pull_up 2x8; pull_up 4x3 +22.5; pull_up 3 +22.5 @8; external_rotation LR 2x12 +4",
    today=DAY,
    mins=58,
)
say("4 de 5 series y lo dejé", "scapular_pull_up 2x8; pull_up 4x3 +22.5", today=DAY)
say("hice 4 series, la última fue RPE 9,5", "scapular_pull_up 2x8; pull_up 3x3 +22.5; pull_up 3 +22.5 @9.5", today=DAY)
say(
    "lo hice todo con 20 en vez de con 22,5",
    "scapular_pull_up 2x8; pull_up 5x3 +20; external_rotation LR 2x12 +4",
    today=DAY,
)
say(
    "hoy con 20 en lugar de 22,5, lo demás como estaba",
    "scapular_pull_up 2x8; pull_up 5x3 +20; external_rotation LR 2x12 +4",
    today=DAY,
)
say("22,5 pesaba mucho, usé 20", "pull_up 5x3 +20", today=DAY)
say("las dos primeras con 22,5, el resto con 20", "pull_up 2x3 +22.5; pull_up 3x3 +20", today=DAY)
say("a partir de la tercera serie 20 kg", "pull_up 2x3 +22.5; pull_up 3x3 +20", today=DAY)
say("3/3/3/2/2, rotaciones hechas", "pull_up 3x3 +22.5; pull_up 2x2 +22.5; external_rotation LR 2x12 +4", today=DAY)
say(
    "dominadas 3 3 3 3 2, resto como en el plan",
    "scapular_pull_up 2x8; pull_up 4x3 +22.5; pull_up 2 +22.5; external_rotation LR 2x12 +4",
    today=DAY,
)
say(
    "no pude acabar la última serie, hice 1",
    "scapular_pull_up 2x8; pull_up 4x3 +22.5; pull_up 1 +22.5 fail; external_rotation LR 2x12 +4",
    today=DAY,
)
say("me salté el calentamiento, lo principal hecho", "pull_up 5x3 +22.5", today=DAY)
say("solo lo principal", "pull_up 5x3 +22.5", today=DAY)
say("rotaciones solo con la derecha", "external_rotation R 2x12 +4", today=DAY)
say(
    "rotaciones 2x15 en vez de 2x12, lo demás bien",
    "scapular_pull_up 2x8; pull_up 5x3 +22.5; external_rotation LR 2x15 +4",
    today=DAY,
)
say(
    "una serie menos, por lo demás bien",
    "scapular_pull_up 2x8; pull_up 4x3 +22.5; external_rotation LR 2x12 +4",
    today=DAY,
)
say(
    "una serie más de dominadas, lo demás según el plan",
    "scapular_pull_up 2x8; pull_up 6x3 +22.5; external_rotation LR 2x12 +4",
    today=DAY,
)
say("todo hecho pero con peso corporal", "scapular_pull_up 2x8; pull_up 5x3; external_rotation LR 2x12 +4", today=DAY)
say("series 1-3 RPE 7, series 4 y 5 RPE 8", "pull_up 3x3 +22.5 @7; pull_up 2x3 +22.5 @8", today=DAY)
say("hoy solo 2 series, estaba reventado", "scapular_pull_up 2x8; pull_up 2x3 +22.5", today=DAY)
say("5 singles en vez de triples, mismo peso", "pull_up 5x1 +22.5", today=DAY)
say("dobles en vez de triples", "scapular_pull_up 2x8; pull_up 5x2 +22.5; external_rotation LR 2x12 +4", today=DAY)
say("5x2 en vez de 5x3", "pull_up 5x2 +22.5", today=DAY)
say("paré después de la segunda serie", "scapular_pull_up 2x8; pull_up 2x3 +22.5", today=DAY)
say(
    "todo como planeado, rotaciones con 5 kg",
    "scapular_pull_up 2x8; pull_up 5x3 +22.5; external_rotation LR 2x12 +5",
    today=DAY,
)
say("listo 💪 todo según el plan", "scapular_pull_up 2x8; pull_up 5x3 +22.5; external_rotation LR 2x12 +4", today=DAY)
say(
    "completé todo excepto la quinta serie",
    "scapular_pull_up 2x8; pull_up 4x3 +22.5; external_rotation LR 2x12 +4",
    today=DAY,
)
say("primera serie 22,5 y las demás 20", "pull_up 3 +22.5; pull_up 4x3 +20", today=DAY)
say(
    "todo, pero rotaciones solo 10 por lado",
    "scapular_pull_up 2x8; pull_up 5x3 +22.5; external_rotation LR 2x10 +4",
    today=DAY,
)
say(
    "plan hecho, rotaciones con 3 kg",
    "scapular_pull_up 2x8; pull_up 5x3 +22.5; external_rotation LR 2x12 +3",
    today=DAY,
)
say("arqueras hechas, dominadas 4 series", "archer_ring_elbow LR 2x2; pull_up 4x3 +25", today=SKILL)
say(
    "arqueras 2/2 y 2/1, dominadas según el plan",
    "archer_ring_elbow LR 2; archer_ring_elbow L 2; archer_ring_elbow R 1; pull_up 5x3 +25",
    today=SKILL,
)
say("izquierda 2 derecha 2, las dos series", "one_arm_hand_on_biceps LR 2x2", today=ARM)
say(
    "como el plan, en la segunda derecha solo 1",
    "one_arm_hand_on_biceps LR 2; one_arm_hand_on_biceps L 2; one_arm_hand_on_biceps R 1",
    today=ARM,
)
say("solo el brazo derecho", "one_arm_hand_on_biceps R 2x2", today=ARM)
say("izq ✅ der ❌", "one_arm_hand_on_biceps L 2x2", today=ARM)
say("las dos series 2/2", "one_arm_hand_on_biceps LR 2x2", today=ARM)
say(
    "3x4, en la última izquierda solo 3",
    "archer_ring_elbow LR 2x4; archer_ring_elbow L 3; archer_ring_elbow R 4",
    today=ARCHERS,
)
say(
    "las tres rondas, la última 3/4",
    "archer_ring_elbow LR 2x4; archer_ring_elbow L 3; archer_ring_elbow R 4",
    today=ARCHERS,
)
say(
    "palancas 8 8 7 6, dominadas según el plan",
    "advanced_tuck_front_lever 2x8s; advanced_tuck_front_lever 7s; advanced_tuck_front_lever 6s; pull_up 4x6 +15",
    today=LEVER,
)
say(
    "front lever solo 6 segundos cada una, dominadas hechas",
    "advanced_tuck_front_lever 4x6s; pull_up 4x6 +15",
    today=LEVER,
)
say(
    "hecho, la última solo 5 s",
    "advanced_tuck_front_lever 3x8s; advanced_tuck_front_lever 5s; pull_up 4x6 +15",
    today=LEVER,
)
say("10 s en vez de 8, lo demás según el plan", "advanced_tuck_front_lever 4x10s; pull_up 4x6 +15", today=LEVER)
say("12 12 11 10 9", "tuck_planche 2x12s; tuck_planche 11s; tuck_planche 10s; tuck_planche 9s", today=PLANCHE)
say("las dos últimas solo 10", "tuck_planche 3x12s; tuck_planche 2x10s", today=PLANCHE)
say("serie top solo 2, fallé la tercera", "pull_up 2 +30 fail", today=TEST)
say(
    "flexiones 15 15 12, elevaciones hechas, supinas según el plan",
    "chin_up 4x5 +15; push_up 2x15; push_up 12; hanging_leg_raise 3x10",
    today=CHINS,
)
say("supinas hechas, flexiones 3x20, sin elevaciones", "chin_up 4x5 +15; push_up 3x20", today=CHINS)
say("todo, pero solo 2 series de flexiones", "chin_up 4x5 +15; push_up 2x15; hanging_leg_raise 3x10", today=CHINS)
say("fondos solo con 10, dominadas bien", "pull_up 4x4 +20; dip 3x6 +10", today=DIPS)
say("las dos cosas según el plan", "pull_up 4x4 +20; dip 3x6 +15", today=DIPS)
say("4x4 y 3x6 hechos", "pull_up 4x4 +20; dip 3x6 +15", today=DIPS)
say("dominadas última serie solo 3, fondos bien", "pull_up 3x4 +20; pull_up 3 +20; dip 3x6 +15", today=DIPS)
say("quité los fondos, dominadas con 22,5", "pull_up 4x4 +22.5", today=DIPS)
say("todo 2,5 más pesado", "pull_up 4x4 +22.5; dip 3x6 +17.5", today=DIPS)
say("hecho, 2,5 más", "pull_up 4x4 +?; dip 3x6 +?", today=DIPS, ask="load_kg: 2,5 más")
say("en vez de fondos flexiones 3x15", "push_up 3x15", today=DIPS)
say(
    "calentamiento y dominadas hechas, el resto sin tiempo",
    "scapular_pull_up 2x8; pull_up 5; pull_up 4x4 +20",
    today=FULL,
)
say("accesorios fuera", "", "report", today=FULL, ask="sets: fuera")
say(
    "principal con 17,5, accesorios según el plan",
    "pull_up 4x4 +17.5; external_rotation LR 2x12 +4; face_pull 2x15 +15",
    today=FULL,
)
say(
    "face pulls solo 1 serie, lo demás completo",
    "scapular_pull_up 2x8; pull_up 5; pull_up 4x4 +20; external_rotation LR 2x12 +4; face_pull 15 +15",
    today=FULL,
)
say("6 6 6 5", "pull_up 3x6 +15; pull_up 5 +15", today=VOLUME)
say("6,6,6,5 la última RPE 9", "pull_up 3x6 +15; pull_up 5 +15 @9", today=VOLUME)
say("4x6 con 17,5", "pull_up 4x6 +17.5", today=VOLUME)
say("hecho con 17,5 ✅", "pull_up 4x6 +17.5", today=VOLUME)
say("hoy flojo, solo 4x5", "pull_up 4x5 +15", today=VOLUME)
say("3 series en vez de 4, con 12,5", "pull_up 3x6 +12.5", today=VOLUME)
say("hice las 4 series pero en la última solo 4", "pull_up 3x6 +15; pull_up 4 +15", today=VOLUME)
say("terminado. última serie al fallo", "pull_up 3x6 +15; pull_up 6 +15 @10", today=VOLUME)
say("una repetición menos en cada serie", "pull_up 4x5 +15", today=VOLUME)
say("me quedé en 3 series", "pull_up 3x6 +15", today=VOLUME)
say("hice todo excepto el calentamiento", "pull_up 5x3 +22.5; external_rotation LR 2x12 +4", today=DAY)
say("con 20 todas", "pull_up 5x3 +20", today=DAY)
say("con 20 las dos últimas", "pull_up 3x3 +22.5; pull_up 2x3 +20", today=DAY)
say("primero calentamiento, luego 5x3 con 22,5, sin rotaciones", "scapular_pull_up 2x8; pull_up 5x3 +22.5", today=DAY)
say("✅ calentamiento\n✅ dominadas\n❌ rotaciones", "scapular_pull_up 2x8; pull_up 5x3 +22.5", today=DAY)
say(
    "calentamiento: hecho\ndominadas: 3 3 3 3 2\nrotaciones: no",
    "scapular_pull_up 2x8; pull_up 4x3 +22.5; pull_up 2 +22.5",
    today=DAY,
)
