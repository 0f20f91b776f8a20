"""Sets in German: notations, sides, holds, efforts, dictation, dialect, typos."""

from tests.corpus.lines import Theme
from tests.corpus.notation import sets

THEME = Theme("sets", "de")
say = THEME.say

say("Klimmzüge 4x5 +15", "pull_up 4x5 +15")
say("Klimmzüge 5 x 3 mit 22,5 kg Zusatzgewicht", "pull_up 5x3 +22.5")
say("KLIMMZÜGE 3x8 💪💪", "pull_up 3x8")
say("klimmzuege 4x4 +17,5kg", "pull_up 4x4 +17.5")
say("Klimmzüge 17,5kg: 5,5,4", "pull_up 5,5,4 +17.5")
say("Klimmzüge 8/7/6", "pull_up 8,7,6")
say("5 Sätze Klimmzüge zu je 3 mit 20 Kilo", "pull_up 5x3 +20")
say("drei Sätze à acht Dips", "dip 3x8")
say("Untergriff 4x6 mit 10 kg", "chin_up 4x6 +10")
say("Chin-ups 3x5 +12,5", "chin_up 3x5 +12.5")
say("Klimmzüge im Neutralgriff 3x6 +10", "neutral_grip_pull_up 3x6 +10")
say("Parallelgriff-Klimmzüge 4x5", "neutral_grip_pull_up 4x5")
say("Ringklimmzüge 3x7", "ring_pull_up 3x7")
say("Ringrudern 3x12, danach Liegestütze 3x20", "ring_row 3x12; push_up 3x20")
say("Dips mit Gewicht 4x6 +25kg", "dip 4x6 +25")
say("Barrenstütz 3x10", "dip 3x10", ask_or="movement: Barrenstütz")
say("Topsatz 2 mit 40, dann 3x4 mit 32,5 (Klimmzüge)", "pull_up 2 +40; pull_up 3x4 +32.5")
say("Klimmzüge: ein Dreier mit 30 und zwei Zweier mit 32,5", "pull_up 3 +30; pull_up 2x2 +32.5")
say("Muscle-ups 5 Einzelne", "muscle_up 5x1")
say("Handstandliegestütz 3x4", "handstand_push_up 3x4")
say("Handstand an der Wand 40s, 45s, 50s", "handstand_hold 40s,45s,50s")
say("Kniebeugen 5x5 mit 80 kg, Rudern mit der Langhantel 3x8 50kg", "squat 5x5 +80; row 3x8 +50")
say("Kurzhantelrudern 3x10 je Seite 24 kg", "row LR 3x10 +24")
say("Latzug 60 kg 3x10, Face Pulls 3x15 15 kg", "lat_pulldown 3x10 +60; face_pull 3x15 +15")
say("Bizepscurls 3x12 mit 10kg, Hammercurls 3x10 12kg", "biceps_curl 3x12 +10; hammer_curl 3x10 +12")
say("Pistols 3x5 pro Bein", "pistol_squat LR 3x5")
say("Bulgarische Kniebeugen 3x8 pro Bein mit 16 kg", "split_squat LR 3x8 +16")
say("Schulterblattklimmzüge 2x8, Aushängen 60 Sekunden", "scapular_pull_up 2x8; dead_hang 60s")
say("Klimmzüge mit grünem Band 3x6", "band_pull_up 3x6")
say("Klimmzüge mit Band (nimmt 15 kg weg) 4x5", "band_pull_up 4x5 -15")
say("Außenrotation 2x15 je Seite 3kg", "external_rotation LR 2x15 +3")
say("Klimmzüge Leiter 1-2-3-4-5", "pull_up 1,2,3,4,5")
say("EMOM 10 min, jede Minute 3 Klimmzüge", "pull_up 10x3")
say("Supersatz 4 Runden: 5 Klimmzüge, 8 Dips", "pull_up 4x5; dip 4x8")
say("Cluster Klimmzüge +35: 2+1+1", "pull_up 2 +35; pull_up 1,1 +35 link")
say("Dropsatz Dips: 6 mit 20, direkt danach 8 ohne Gewicht", "dip 6 +20; dip 8 link")
# Sides
say("einarmige Klimmzüge links 2 rechts 1", "one_arm_pull_up L 2; one_arm_pull_up R 1")
say("Einarmiger Klimmzug 2x1 pro Seite", "one_arm_pull_up LR 2x1")
say("einarmig Untergriff: li 1, re 2", "one_arm_chin_up L 1; one_arm_chin_up R 2")
say("Archer-Klimmzüge 3x4 pro Arm", "archer_pull_up LR 3x4")
say("Archer mit Ring auf Schulterhöhe 2x3 je Seite", "archer_ring_shoulder LR 2x3")
say("einarmig mit Hand am Bizeps, 3x2 pro Arm, letzter Satz RPE 8", "one_arm_hand_on_biceps LR 3x2 last@8")
say(
    "einarmig, andere Hand auf der Schulter: rechts 1, links 0 (nicht geschafft)",
    "one_arm_hand_on_shoulder R 1; one_arm_hand_on_shoulder L 0 fail",
)
say("Gegengewicht 7,5 kg: je 2 pro Arm, zwei Sätze", "one_arm_counterweight LR 2x2 -7.5")
say("einarmiges Hängen 3x15s pro Hand", "one_arm_hang LR 3x15s")
say("Archer-Klimmzüge 5/4", "archer_pull_up LR 5/4")
# Holds and modes
say("Tuck Front Lever 4x10s alle RPE 7", "tuck_front_lever 4x10s @7")
say("Front Lever gegrätscht 3x5 Sekunden", "straddle_front_lever 3x5s")
say("Hangwaage rückwärts 3x10s", "back_lever 3x10s", ask_or="movement: Hangwaage rückwärts")
say("Planche Leans 4x20 Sek", "planche_lean 4x20s")
say("L-Sitz 3x15s", "l_sit 3x15s")
say("oben halten 2x20s, Kinn über der Stange", "pull_up_top_hold 2x20s")
say("Negative Klimmzüge 3x3", "pull_up 3x3 ecc")
say("Klimmzüge 4x2 +15 mit Pause oben", "pull_up 4x2 +15 top")
say("Chin-ups 3x3 +10 mit Stopp in der Mitte", "chin_up 3x3 +10 middle")
say("Klimmzüge nur untere Hälfte 3x4 +30", "pull_up 3x4 +30 lower")
say("Klimmzüge obere Hälfte 3x5 +25", "pull_up 3x5 +25 upper")
# Effort
say("Klimmzüge 5x3 +20 @8", "pull_up 5x3 +20 last@8")
say("Dips 4x5 +25, alle Sätze @8", "dip 4x5 +25 @8")
say("Klimmzüge 3x3 +25: RPE 7, 8, 9", "pull_up 3 +25 @7; pull_up 3 +25 @8; pull_up 3 +25 @9")
say("Klimmzüge 4x4 +15, 2 RIR beim letzten", "pull_up 4x4 +15 last@8")
say("Chin-ups 12, nichts mehr drin", "chin_up 12 @10")
say("Liegestütze bis zum Versagen: 38", "push_up 38 @10")
say("Klimmzüge 3x5 +20, eine wär noch gegangen", "pull_up 3x5 +20 last@9")
say("Klimmzüge 4x5 +10, fast bis zum Versagen", "pull_up 4x5 +10")
say("Klimmzüge 4x4 +20, Dips 3x8, Rudern 3x10 40kg. RPE 7", "pull_up 4x4 +20; dip 3x8; row 3x10 +40", srpe=7)
say("Klimmzüge 5x3 +20 zwischen RPE 7 und 9", "pull_up 5x3 +20", ask="rpe: zwischen RPE 7 und 9")
say("Training heute 8 von 10, Klimmzüge 5x5, eine Stunde 10", "pull_up 5x5", srpe=8, mins=70)
say("anderthalb Stunden, Dips 5x8", "dip 5x8", mins=90)
say("Dips 3x8, dreiviertel Stunde", "dip 3x8", mins=45)
say("Klimmzüge 4x4 +45 lbs", "pull_up 4x4 +45lb")
say("Klimmzüge 5x3 +20, 3 min Pause", "pull_up 5x3 +20", maybe_unread=("3 min Pause",))
say(
    "Klimmzüge 3x3 +47,5, den vierten Satz verhauen, nur 1 und dann nix mehr",
    "pull_up 3x3 +47.5; pull_up 1 +47.5 fail",
    sets_or=("pull_up 3x3 +47.5; pull_up 1 +47.5",),
)
say("Muscle-ups: 1, 1, Fehlversuch", "muscle_up 1,1; muscle_up 0 fail")
say(
    "Kreuzheben 5x5 120 kg und Klimmzüge 3x6",
    "pull_up 3x6",
    unread=("Kreuzheben 5x5 120 kg",),
    ask_or="movement: Kreuzheben",
)
say("5 km gelaufen in 28:10, danach Dips 3x8", "dip 3x8", unread=("5 km gelaufen in 28:10",), ask_or="movement: 5 km")
# Voices
say("ja also ich hab fünf mal drei klimmzüge mit zwanzig kilo gemacht", "pull_up 5x3 +20")
say("klimmzüge vier sätze mit je fünf wiederholungen und zweieinhalb kilo", "pull_up 4x5 +2.5")
say("dips zwölf zehn neun ohne gewicht", "dip 12,10,9")
say("klimzüge 4x4 +15", "pull_up 4x4 +15")
say("Klimmzuge 3x5+10kg rpe8", "pull_up 3x5 +10 last@8")
say("liegestütz 3x20, knibeugen 3x15", "push_up 3x20; squat 3x15")
say("Heut warns a 5x3 Klimmzüg mit 15 Kilo, passt scho", "pull_up 5x3 +15")
say("hüt Chlimmzüg 4x5 mit 10 kilo gmacht", "pull_up 4x5 +10", lang="de-CH")
say("Moin! Klimmis 3x6, is kalt hier (-4 Grad)", "pull_up 3x6")
say("Bahn 30 min zu spät, Studio voll, trotzdem Dips 4x6 +20 🥳", "dip 4x6 +20")
say("Klimmzüge 5x3 +20, nee quatsch, +22,5", "pull_up 5x3 +22.5")
say("wollte 5x5 Klimmzüge, waren dann 4x5", "pull_up 4x5")
say("mein Kumpel hat 20 Klimmzüge gemacht, ich 11", "pull_up 11")
say("letzten Monat warens 5, heute 8 Klimmzüge!", "pull_up 8")
say("Klimmzüge mit Körpergewicht 4x8", "pull_up 4x8")
say("Klimmzüge 3x8 ohne alles, Ringdips 3x6", "pull_up 3x8; ring_dip 3x6")
say("Klimmzüge:\n20 kg x 5\n22,5 kg x 4\n25 kg x 3", "pull_up 5 +20; pull_up 4 +22.5; pull_up 3 +25")
say("Aufwärmen 2x5 Klimmzüge ohne Gewicht, dann 4x3 mit 25", "pull_up 2x5; pull_up 4x3 +25")
# Asked
say("Dips 15", "dip ? +?", ask="reps: 15", also=({"sets": []},))
say("Klimmzüge 4x5 @8", "pull_up 4x5 +?", ask="load_kg: @8", also=({"sets": []},))
say("Archer 3x3 pro Seite", "_ LR 3x3", ask="movement: Archer", also=({"sets": []},))
say("Front Lever 4x8s", "_ 4x8s", ask="movement: Front Lever", also=({"sets": []},))
say("halbe Klimmzüge 3x5 +10", "pull_up 3x5 +10 rom?", ask="rom: halbe Klimmzüge")
say("Klimmzüge 5x3 +225", "pull_up 5x3 +?", ask="load_kg: +225", also=({"sets": []},))
say("Klimmzüge +20, 4 oder 5, weiß nicht mehr", "pull_up ? +20", ask="reps: 4 oder 5")
say("wie letztes Mal", "", "report", ask="sets: wie letztes Mal")
say(
    "einarmig: auf einer Seite 2, auf der anderen 1",
    "one_arm_pull_up 2,1",
    ask="side: auf einer Seite 2",
    also=({"sets": sets("_ 2,1")}, {"sets": []}),
)
