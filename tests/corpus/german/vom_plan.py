"""Nachrichten, die vom Tagesplan her erzählt sind: weniger, mehr, anders, abgehakt, nach Seiten."""
# ruff: noqa: E501

from tests.corpus.lines import Theme

THEME = Theme("vom_plan", "de")
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
DELOAD = "m/weighted_pull_up pull_up 2x3 +17.5 @6"
CHINS = "m/weighted_pull_up chin_up 4x5 +15 @8; a push_up 3x15; a hanging_leg_raise 3x10"

say(
    "alles erledigt, die letzten zwei Sätze mit 20 weil der Griff aufging",
    "scapular_pull_up 2x8; pull_up 3x3 +22.5; pull_up 2x3 +20; external_rotation LR 2x12 +4",
    today=DAY,
)
say(
    "nur die ersten drei Sätze gemacht, dann Ellbogen gemerkt und aufgehört",
    "scapular_pull_up 2x8; pull_up 3x3 +22.5",
    today=DAY,
)
say("Aufwärmen und 3 Arbeitssätze, dann keine Zeit mehr", "scapular_pull_up 2x8; pull_up 3x3 +22.5", today=DAY)
say("statt Klimmzüge Chin-ups gemacht, mit 20", "chin_up 5x3 +20", today=DAY)
say("Chin-ups stattdessen, gleiches Gewicht", "chin_up 5x3 +22.5", today=DAY)
say("Klimmzüge ✅ Rest ❌", "pull_up 5x3 +22.5", today=DAY)
say("5x3 ✅ Rotationen ✅", "pull_up 5x3 +22.5; external_rotation LR 2x12 +4", today=DAY)
say(
    "fertig, noch einen sechsten Satz drangehängt",
    "scapular_pull_up 2x8; pull_up 6x3 +22.5; external_rotation LR 2x12 +4",
    today=DAY,
)
say(
    "alle fünf Sätze, nur hab ich 20 drangehängt",
    "scapular_pull_up 2x8; pull_up 5x3 +20; external_rotation LR 2x12 +4",
    today=DAY,
)
say("Klimmzüge nur 3 statt 5 Sätze und 2,5 weniger", "pull_up 3x3 +20", today=DAY)
say("wie geplant, 2,5 mehr", "scapular_pull_up 2x8; pull_up 5x3 +25; external_rotation LR 2x12 +4", today=DAY)
say("erledigt aber nur 20 kg", "scapular_pull_up 2x8; pull_up 5x3 +20; external_rotation LR 2x12 +4", today=DAY)
say("Rotationen weggelassen, sonst alles gemacht", "scapular_pull_up 2x8; pull_up 5x3 +22.5", today=DAY)
say("alles außer den Rotationen", "scapular_pull_up 2x8; pull_up 5x3 +22.5", today=DAY)
say(
    "alles gemacht bis auf den letzten Satz Klimmzüge",
    "scapular_pull_up 2x8; pull_up 4x3 +22.5; external_rotation LR 2x12 +4",
    today=DAY,
)
say(
    "Plan erfüllt, letzter Satz nur 2",
    "scapular_pull_up 2x8; pull_up 4x3 +22.5; pull_up 2 +22.5; external_rotation LR 2x12 +4",
    today=DAY,
)
say(
    "Plan abgearbeitet. RPE 8 im letzten Satz, 58 Minuten",
    "scapular_pull_up 2x8; pull_up 4x3 +22.5; pull_up 3 +22.5 @8; external_rotation LR 2x12 +4",
    today=DAY,
    mins=58,
)
say("4 von 5 Sätzen, dann war Schluss", "scapular_pull_up 2x8; pull_up 4x3 +22.5", today=DAY)
say(
    "4 Sätze geschafft, der letzte war RPE 9,5",
    "scapular_pull_up 2x8; pull_up 3x3 +22.5; pull_up 3 +22.5 @9.5",
    today=DAY,
)
say(
    "hab alles mit 20 gemacht statt mit 22,5",
    "scapular_pull_up 2x8; pull_up 5x3 +20; external_rotation LR 2x12 +4",
    today=DAY,
)
say(
    "heute mit 20 statt 22,5, sonst wie geschrieben",
    "scapular_pull_up 2x8; pull_up 5x3 +20; external_rotation LR 2x12 +4",
    today=DAY,
)
say("22,5 war zu schwer, hab 20 genommen", "pull_up 5x3 +20", today=DAY)
say("erste zwei Sätze 22,5, Rest 20", "pull_up 2x3 +22.5; pull_up 3x3 +20", today=DAY)
say("ab dem dritten Satz 20 kg", "pull_up 2x3 +22.5; pull_up 3x3 +20", today=DAY)
say(
    "Nach Satz 3 auf 20 runter, sonst alles wie im Plan",
    "scapular_pull_up 2x8; pull_up 3x3 +22.5; pull_up 2x3 +20; external_rotation LR 2x12 +4",
    today=DAY,
)
say("3/3/3/2/2, Rotationen erledigt", "pull_up 3x3 +22.5; pull_up 2x2 +22.5; external_rotation LR 2x12 +4", today=DAY)
say(
    "Klimmzüge 3 3 3 3 2, Rest wie geplant",
    "scapular_pull_up 2x8; pull_up 4x3 +22.5; pull_up 2 +22.5; external_rotation LR 2x12 +4",
    today=DAY,
)
say(
    "letzten Satz nicht geschafft, nur 1",
    "scapular_pull_up 2x8; pull_up 4x3 +22.5; pull_up 1 +22.5 fail; external_rotation LR 2x12 +4",
    today=DAY,
)
say(
    "letzte Wdh vom letzten Satz nicht geschafft, sonst alles",
    "scapular_pull_up 2x8; pull_up 4x3 +22.5; pull_up 2 +22.5 fail; external_rotation LR 2x12 +4",
    today=DAY,
)
say("Aufwärmen ausgelassen, Hauptteil gemacht", "pull_up 5x3 +22.5", today=DAY)
say("nur Hauptteil gemacht", "pull_up 5x3 +22.5", today=DAY)
say("Rotationen nur rechts", "external_rotation R 2x12 +4", today=DAY)
say(
    "Rotationen 2x15 statt 2x12, Rest passt",
    "scapular_pull_up 2x8; pull_up 5x3 +22.5; external_rotation LR 2x15 +4",
    today=DAY,
)
say(
    "ein Satz weniger, ansonsten alles gut",
    "scapular_pull_up 2x8; pull_up 4x3 +22.5; external_rotation LR 2x12 +4",
    today=DAY,
)
say(
    "ein Satz mehr Klimmzüge, Rest nach Plan",
    "scapular_pull_up 2x8; pull_up 6x3 +22.5; external_rotation LR 2x12 +4",
    today=DAY,
)
say(
    "alles gemacht, aber mit Körpergewicht",
    "scapular_pull_up 2x8; pull_up 5x3; external_rotation LR 2x12 +4",
    today=DAY,
)
say("Satz 1-3 RPE 7, Satz 4 und 5 RPE 8", "pull_up 3x3 +22.5 @7; pull_up 2x3 +22.5 @8", today=DAY)
say("heute nur 2 Sätze, war platt", "scapular_pull_up 2x8; pull_up 2x3 +22.5", today=DAY)
say("5 Einer statt der Dreier, gleiches Gewicht", "pull_up 5x1 +22.5", today=DAY)
say("Doubles statt Triples gemacht", "scapular_pull_up 2x8; pull_up 5x2 +22.5; external_rotation LR 2x12 +4", today=DAY)
say("5x2 statt 5x3", "pull_up 5x2 +22.5", today=DAY)
say("hab nach dem zweiten Satz abgebrochen", "scapular_pull_up 2x8; pull_up 2x3 +22.5", today=DAY)
say(
    "alles wie geplant, Rotationen mit 5 kg",
    "scapular_pull_up 2x8; pull_up 5x3 +22.5; external_rotation LR 2x12 +5",
    today=DAY,
)
say(
    "durchgezogen 💪 alles nach Plan",
    "scapular_pull_up 2x8; pull_up 5x3 +22.5; external_rotation LR 2x12 +4",
    today=DAY,
)
say(
    "alles gemacht, Archer links nur 1",
    "scapular_pull_up 2x6; archer_ring_elbow L 1; archer_ring_elbow R 2; archer_ring_elbow L 1; archer_ring_elbow R 2; pull_up 5x3 +25",
    today=SKILL,
)
say("Archer erledigt, Klimmzüge 4 Sätze", "archer_ring_elbow LR 2x2; pull_up 4x3 +25", today=SKILL)
say(
    "Archer 2/2, 2/1, Klimmzüge nach Plan",
    "archer_ring_elbow LR 2; archer_ring_elbow L 2; archer_ring_elbow R 1; pull_up 5x3 +25",
    today=SKILL,
)
say("Archer ausgelassen, Klimmzüge 3 3 3 2 2", "pull_up 3x3 +25; pull_up 2x2 +25", today=SKILL)
say(
    "Archer wie geplant, letzter rechts nicht geschafft",
    "archer_ring_elbow LR 2; archer_ring_elbow L 2; archer_ring_elbow R ? fail",
    today=SKILL,
    ask="reps: nicht geschafft",
)
say("links 2 rechts 2, beide Sätze", "one_arm_hand_on_biceps LR 2x2", today=ARM)
say(
    "wie geplant, im zweiten Satz rechts nur 1",
    "one_arm_hand_on_biceps LR 2; one_arm_hand_on_biceps L 2; one_arm_hand_on_biceps R 1",
    today=ARM,
)
say("nur der rechte Arm", "one_arm_hand_on_biceps R 2x2", today=ARM)
say(
    "links 2, 2. rechts 2, 1",
    "one_arm_hand_on_biceps L 2x2; one_arm_hand_on_biceps R 2; one_arm_hand_on_biceps R 1",
    today=ARM,
)
say("rechts ein Satz weniger", "one_arm_hand_on_biceps LR 2; one_arm_hand_on_biceps L 2", today=ARM)
say("L ✅ R ❌", "one_arm_hand_on_biceps L 2x2", today=ARM)
say("beide Sätze 2/2", "one_arm_hand_on_biceps LR 2x2", today=ARM)
say(
    "3x4, im letzten links nur 3",
    "archer_ring_elbow LR 2x4; archer_ring_elbow L 3; archer_ring_elbow R 4",
    today=ARCHERS,
)
say(
    "alle drei Runden, letzte 3/4",
    "archer_ring_elbow LR 2x4; archer_ring_elbow L 3; archer_ring_elbow R 4",
    today=ARCHERS,
)
say(
    "Hebel 8 8 7 6, Klimmzüge nach Plan",
    "advanced_tuck_front_lever 2x8s; advanced_tuck_front_lever 7s; advanced_tuck_front_lever 6s; pull_up 4x6 +15",
    today=LEVER,
)
say("Front Lever nur je 6 Sekunden, Klimmzüge erledigt", "advanced_tuck_front_lever 4x6s; pull_up 4x6 +15", today=LEVER)
say(
    "erledigt, letzter Halt nur 5 s",
    "advanced_tuck_front_lever 3x8s; advanced_tuck_front_lever 5s; pull_up 4x6 +15",
    today=LEVER,
)
say("10 s statt 8 gehalten, Rest nach Plan", "advanced_tuck_front_lever 4x10s; pull_up 4x6 +15", today=LEVER)
say("12 12 11 10 9", "tuck_planche 2x12s; tuck_planche 11s; tuck_planche 10s; tuck_planche 9s", today=PLANCHE)
say("die letzten zwei nur 10", "tuck_planche 3x12s; tuck_planche 2x10s", today=PLANCHE)
say("erledigt, alle 12 s", "tuck_planche 5x12s", today=PLANCHE)
say("Topsatz 3 mit 30, RPE 9. Einarmig links 1 rechts 1", "pull_up 3 +30 @9; one_arm_hand_on_biceps LR 1", today=TEST)
say("Topsatz nur 2, den dritten nicht geschafft", "pull_up 2 +30 fail", today=TEST)
say("links geschafft, rechts nicht", "one_arm_hand_on_biceps L 1; one_arm_hand_on_biceps R 0 fail", today=TEST)
say("Deload erledigt, ging locker", "pull_up 2x3 +17.5", today=DELOAD)
say(
    "Liegestütze 15 15 12, Beinheben gemacht, Chin-ups nach Plan",
    "chin_up 4x5 +15; push_up 2x15; push_up 12; hanging_leg_raise 3x10",
    today=CHINS,
)
say("Chin-ups erledigt, Liegestütze 3x20, kein Beinheben", "chin_up 4x5 +15; push_up 3x20", today=CHINS)
say("alles, aber nur 2 Sätze Liegestütze", "chin_up 4x5 +15; push_up 2x15; hanging_leg_raise 3x10", today=CHINS)
say("Dips nur mit 10, Klimmzüge passen", "pull_up 4x4 +20; dip 3x6 +10", today=DIPS)
say("beides nach Plan", "pull_up 4x4 +20; dip 3x6 +15", today=DIPS)
say("4x4 und 3x6 erledigt", "pull_up 4x4 +20; dip 3x6 +15", today=DIPS)
say("Klimmzüge im letzten Satz nur 3, Dips passen", "pull_up 3x4 +20; pull_up 3 +20; dip 3x6 +15", today=DIPS)
say("Klimmzüge letzter Satz nur 3", "pull_up 3x4 +20; pull_up 3 +20", today=DIPS)
say("Dips gestrichen, Klimmzüge mit 22,5", "pull_up 4x4 +22.5", today=DIPS)
say("alles 2,5 schwerer", "pull_up 4x4 +22.5; dip 3x6 +17.5", today=DIPS)
say("erledigt, 2,5 mehr", "pull_up 4x4 +?; dip 3x6 +?", today=DIPS, ask="load_kg: 2,5 mehr")
say("statt Dips Liegestütze 3x15", "push_up 3x15", today=DIPS)
say("Aufwärmen und Klimmzüge gemacht, Rest keine Zeit", "scapular_pull_up 2x8; pull_up 5; pull_up 4x4 +20", today=FULL)
say("Zubehör weggelassen", "", "report", today=FULL, ask="sets: weggelassen")
say(
    "Hauptteil mit 17,5, Zubehör nach Plan",
    "pull_up 4x4 +17.5; external_rotation LR 2x12 +4; face_pull 2x15 +15",
    today=FULL,
)
say(
    "face pulls nur 1 Satz, sonst komplett",
    "scapular_pull_up 2x8; pull_up 5; pull_up 4x4 +20; external_rotation LR 2x12 +4; face_pull 15 +15",
    today=FULL,
)
say("6 6 6 5", "pull_up 3x6 +15; pull_up 5 +15", today=VOLUME)
say("6,6,6,5 letzte RPE 9", "pull_up 3x6 +15; pull_up 5 +15 @9", today=VOLUME)
say("4x6 mit 17,5", "pull_up 4x6 +17.5", today=VOLUME)
say("erledigt mit 17,5 ✅ letzter Satz 9", "pull_up 4x6 +17.5", today=VOLUME, ask="reps: 9")
say("war heute schwach, nur 4x5", "pull_up 4x5 +15", today=VOLUME)
say("3 Sätze statt 4, mit 12,5", "pull_up 3x6 +12.5", today=VOLUME)
