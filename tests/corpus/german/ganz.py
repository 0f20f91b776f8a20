"""Whole German messages: long logs, regional voices, plans with efforts, signs and questions in more words."""
# ruff: noqa: E501

from tests.corpus.lines import Theme
from tests.corpus.notation import sets

THEME = Theme("whole", "de")
say = THEME.say
WED = {"at": "2027-03-10 19:00", "tz": "Europe/Berlin"}
DIPS = "m/weighted_pull_up pull_up 4x4 +20 @8; a dip 3x6 +15 @8"
RUNG = "s/archer_shoulder archer_ring_shoulder LR 2x2 @7; m/weighted_pull_up pull_up 4x3 +27.5 @8"
LEVER = "s/advanced_tuck_front_lever advanced_tuck_front_lever 4x8s @8; m/weighted_pull_up pull_up 4x6 +15 @7"

say("Klimmzüge @8, Dips @7, alles geschafft", "pull_up 4x4 +20 last@8; dip 3x6 +15 last@7", today=DIPS)
say("alles gemacht, beim zweiten Satz Dips nur 5", "pull_up 4x4 +20; dip 6,5,6 +15", today=DIPS)
say("nur die Klimmzüge, für Dips keine Zeit", "pull_up 4x4 +20", today=DIPS)
say("bei allem 2,5 kg weniger, sonst nach Plan", "pull_up 4x4 +17.5; dip 3x6 +12.5", today=DIPS)
say("nix gemacht heute, Büro", "", "missed", dates="2027-03-10", today=DIPS, **WED)
say(
    "Archer 2/2 und 2/1, Klimmzüge 3,3,3,2",
    "archer_ring_shoulder LR 2; archer_ring_shoulder LR 2/1; pull_up 3,3,3,2 +27.5",
    today=RUNG,
)
say(
    "Archer @6, Klimmzüge wie geplant",
    "archer_ring_shoulder LR 2; archer_ring_shoulder LR 2 @6; pull_up 4x3 +27.5",
    today=RUNG,
)
say("Hebel 8,8,7,6 Sekunden, Klimmzüge gemacht", "advanced_tuck_front_lever 8s,8s,7s,6s; pull_up 4x6 +15", today=LEVER)
say("Front Lever erledigt, Klimmzüge nur 3 Sätze", "advanced_tuck_front_lever 4x8s; pull_up 3x6 +15", today=LEVER)
say(
    "Letzte Wdh vom letzten Satz Klimmzüge nicht geschafft, Rest passt",
    "advanced_tuck_front_lever 4x8s; pull_up 3x6 +15; pull_up 5 +15 fail",
    today=LEVER,
)
say(
    "erledigt",
    "",
    "report",
    ask="sets: erledigt",
    also=(
        {"intents": ["smalltalk"], "performed_on": None, "ask": []},
        {"intents": ["unknown"], "performed_on": None, "ask": []},
    ),
)
say(
    "Log Dienstag:\nGewicht 74,2\nSchlaf 7h\nKlimmzüge 4x4 +22,5, letzter @8\nDips 3x8 +10\nHollow Hold 3x30s\nDauer 65 min, Einheit RPE 7\nEllbogen rechts innen 1/10 danach",
    "pull_up 4x4 +22.5 last@8; dip 3x8 +10; hollow_hold 3x30s",
    pain="elbow_inner R 1 after",
    bw=74.2,
    sleep=7,
    mins=65,
    srpe=7,
    on="2027-03-09",
    body=74.0,
    **WED,
)
say("A Chin-ups 4x5 +15\nB Ringdips 4x6\nC Hollow Hold 3x40s", "chin_up 4x5 +15; ring_dip 4x6; hollow_hold 3x40s")
say(
    "Testtag! Klimmzug Maximum: 45 ok, 47,5 ok, 50 nicht geschafft",
    "pull_up 1 +45; pull_up 1 +47.5; pull_up 0 +50 fail",
)
say("acht saubere Klimmzüge am Stück, erstes Mal!!", "pull_up 8")
say("Klimmzüge 20 kg 3x5, Dips 30 kg 3x5", "pull_up 3x5 +20; dip 3x5 +30")
say("Klimmzüge mit 8kg Weste 3x6", "pull_up 3x6 +8")
say("Klimmzüge 1x5 +10, 1x5 +15, 3x5 +20", "pull_up 5 +10; pull_up 5 +15; pull_up 3x5 +20")
say("Einarmig links: 2, 2, 1. Rechts: 2, 1, 1. (Klimmzüge, frei)", "one_arm_pull_up L 2,2,1; one_arm_pull_up R 2,1,1")
say(
    "Gegengewicht 10 kg, rechts 3 links 2, dann 7,5 kg rechts 2 links 1",
    "one_arm_counterweight R 3 -10; one_arm_counterweight L 2 -10; one_arm_counterweight R 2 -7.5; one_arm_counterweight L 1 -7.5",
)
say("die halbe Stunde gut genutzt: Liegestütze 5x20", "push_up 5x20", mins=30)
say("Klimmzüge 5x3 +20, ziemlich zäh, RIR 1", "pull_up 5x3 +20 last@9")
say("Dips 4x5 +25, jeweils 2 im Tank", "dip 4x5 +25 @8")
say("Klimmzüge 3x4, alle negativ, 5 Sekunden runter", "pull_up 3x4 ecc", maybe_unread=("5 Sekunden runter",))
say(
    "Klimmzüge 4x3 mit 30 % Körpergewicht",
    "pull_up 4x3 +24",
    body=80.0,
    also=({"sets": sets("pull_up 4x3 +?"), "ask": [{"about": "load_kg", "span": "30 %"}]},),
)
say(
    "Heid Klimmzig 4x5, schee wars",
    "pull_up 4x5",
    ask_or="movement: Klimmzig",
    also=({"sets": [], "ask": [{"about": "movement", "span": "Klimmzig"}]},),
)
say("gsi im gym, dips 3x8 mit 10 kilo, merci", "dip 3x8 +10", lang="de-CH")
say(
    "Jo servas, heit Klimmziag 5x3 mit fuchzehn Kilo",
    "pull_up 5x3 +15",
    ask_or="movement: Klimmziag",
    also=({"sets": [], "ask": [{"about": "movement", "span": "Klimmziag"}]},),
)
say("4 x 6 Dips\n3 x 8 Rudern 40 kg\nfertig 👍", "dip 4x6; row 3x8 +40")
say("Plan war 5x3 mit 25, wurden 4x3 mit 22,5 (Klimmzüge)", "pull_up 4x3 +22.5")
say("ich will nächste Woche 5x5 mit 20 probieren", "", "smalltalk", does_or=("unknown", "for_coach"))
say("soll ich heute 5x3 mit 22,5 machen?", "", "plan_today", does_or=("for_coach", "unknown", "why"))
say("Ellbogen war letzte Woche 4, jetzt 1", pain="elbow - 1")
say("Tennisarm links 3", pain="elbow_outer L 3", pain_or=("elbow L 3",))
say("Handgelenke beide 2 beim Handstand", pain="wrist L 2 during; wrist R 2 during")
say("Hüfte rechts zwickt, 2/10", pain="hip R 2")
say("Nacken 3 heute früh", pain="neck - 3 morning")
say("Schmerz 13", pain="- - -", ask="pain: 13", pain_or=("",))
say("Achillessehne 2", pain="ankle - 2", pain_or=("other - 2",))
say(
    "Oberarm sieht komisch aus, der Bizeps ist wie hochgerutscht, rechts",
    pain="biceps R -",
    flags="deformity",
    pain_or=("biceps R -; other R -", "other R -"),
)
say(
    "konnte nicht schlafen vor Schulterschmerzen",
    pain="shoulder - - rest",
    flags="night_pain",
    pain_or=("shoulder - -",),
)
say("Finger kribbeln seit gestern, rechte Hand", pain="hand R -", flags="numbness")
say("kein Fieber mehr, kann wieder", "", "resume")
say("Herzrasen vor Freude, erster Muscle-up!", "muscle_up 1")
say("mein Bruder hat sich die Schulter ausgekugelt. Ich: Dips 3x8", "dip 3x8")
say("bis zum 20. März weg, nur Bänder dabei", "", "away equipment", dates="2027-03-10..2027-03-20", **WED)
say("ab Samstag Urlaub, am 20. zurück", "", "away", dates="2027-03-13..2027-03-19", **WED)
say("kann Donnerstag nicht, Freitag geht", "", "move", dates="2027-03-11..2027-03-12", maybe="missed", **WED)
say("Montag und Dienstag ausgefallen, Kind krank", "", "missed", dates="2027-03-08..2027-03-09", **WED)
say("morgen statt heute ok?", "", "move", dates="2027-03-10..2027-03-11", **WED)
say(
    "morgen statt heute?",
    "",
    "move",
    ask="dates: morgen",
    dates="2027-03-09..",
    dates_or=("",),
    at="2027-03-10 01:30",
    tz="Europe/Berlin",
    why="before 04:00 tomorrow is asked",
)
say("Pause bis auf Weiteres bitte", "", "pause", dates="2027-03-10..", dates_or=("",), **WED)
say("letzter Satz war @9, nicht @8", on=None, fix=("rpe", 8, 9, None, None, "last"))
say("rechts waren es 2, nicht 3, bei den Archer-Klimmzügen", on=None, fix=("reps", 3, 2, "archer_pull_up", "right"))
say(
    "Gewicht war 74,2 nicht 72,4",
    on=None,
    fix=("bodyweight_kg", 72.4, 74.2),
    also=({"bodyweight_kg": 74.2, "intents": ["correction", "bodyweight"]}, {"bodyweight_kg": 74.2}),
    body=74.0,
)
