"""A fourth look, written blind in the manner of the shared examples: all subjects, German."""

from tests.corpus.lines import Theme

THEME = Theme("fourth-alles", "de")
say = THEME.say

MAIN = "m/weighted_pull_up pull_up 4x4 +17.5 @8"
DAY = "w scapular_pull_up 2x8; m/weighted_pull_up pull_up 5x3 +20 @8; a face_pull 3x15 +15"
TWO = "m chin_up 4x6 +10 @7; a dip 3x8 +15 @8"
CHIN = "m chin_up 4x5 +12.5 @8"
HOLD = "s/advanced_tuck_front_lever advanced_tuck_front_lever 4x10s @8"
PULLEY = "m/counterweight one_arm_counterweight 3x2 LR -7.5 @8"
ARCH = "s/archer_elbow_full archer_ring_elbow 2x2 LR @7; m/weighted_pull_up pull_up 4x4 +25 @8"

# Reports
say("Klimmzüge 4x4 mit 17,5 kg, sauber", "pull_up 4x4 +17.5")
say("Klimmis 10/8/7 ohne Zusatzgewicht", "pull_up 10,8,7")
say("Dips +30x4x5 Sätze, oben sauber durchgestreckt", "dip 5x4 +30")
say("Chin-ups 3 x 6 @ 12,5kg, letzter Satz RPE 8,5", "chin_up 3x6 +12.5 last@8.5")
say("Klimmzüge: 5@15 4@20 3@25 1@32,5", "pull_up 5 +15; pull_up 4 +20; pull_up 3 +25; pull_up 1 +32.5")
say("Klimmzüge im Parallelgriff 4 Sätze à 6 mit 7,5 Kilo", "neutral_grip_pull_up 4x6 +7.5")
say("Untergriff 5x5 +10, alle @8", "chin_up 5x5 +10 @8")
say("Topsatz Klimmzüge 2 @ 37,5, danach 4x3 @ 30", "pull_up 2 +37.5; pull_up 4x3 +30", body=82)
say("Ringdips 9, 8, 6, beim letzten wär keine mehr gegangen", "ring_dip 9,8,6 last@10")
say("Liegestütze 40 bis zum Versagen, dann 25 und 20", "push_up 40 @10; push_up 25; push_up 20")
say(
    "einarmig mit 5 kg Gegengewicht am Seilzug: rechts 2, links 1",
    "one_arm_counterweight 2 R -5; one_arm_counterweight 1 L -5",
)
say("EINARMIGER KLIMMZUG!!! Links 1, rechts 1 🥳", "one_arm_pull_up 1 L; one_arm_pull_up 1 R")
say("Einarmige mit der freien Hand am Bizeps 3x2 pro Arm, RPE 8", "one_arm_hand_on_biceps 3x2 LR last@8")
say("Archer-Klimmzüge 3x4 je Seite, schön langsam", "archer_pull_up 3x4 LR")
say("Archer, gestreckter Arm am Ring auf Schulterhöhe: 4x1 je Seite", "archer_ring_shoulder 4x1 LR")
say("Aushängen 70s, 60s. Einarmig hängen 2x20s pro Hand", "dead_hang 70s,60s; one_arm_hang 2x20s LR")
say("Front Lever: adv tuck 4x9 Sek, gegrätscht 3x4 Sek", "advanced_tuck_front_lever 4x9s; straddle_front_lever 3x4s")
say(
    "Planche Leans 3x25s, Tuck Planche 4x10s, Handstand an der Wand 50s",
    "planche_lean 3x25s; tuck_planche 4x10s; handstand_hold 50s",
)
say(
    "Kniebeugen 5x5 mit 85 kg, Bulgarians 3x8 pro Bein mit 14 kg, Pistols 2x5 je Bein. Treppe war Feind",
    "squat 5x5 +85; split_squat 3x8 LR +14; pistol_squat 2x5 LR",
    body=78,
)
say(
    "Latzug 3x10 mit 60, Rudern mit der Langhantel 4x8 mit 55 kg, Facepulls 3x15 mit 15 kg",
    "lat_pulldown 3x10 +60; row 4x8 +55; face_pull 3x15 +15",
)
say(
    "Scap Pulls 2x10, Ringrudern 3x12, Klimmzüge mit Band 3x6, das Band nimmt ca. 15 kg ab",
    "scapular_pull_up 2x10; ring_row 3x12; band_pull_up 3x6 -15",
)
say(
    "Negative einarmige Klimmzüge 3x1 pro Arm, je 6 Sekunden runter",
    "one_arm_pull_up 3x1 LR ecc",
    maybe_unread=("je 6 Sekunden runter",),
)
say("Klimmzüge 4x3 +15 mit Pause oben", "pull_up 4x3 +15 top")
say("nur die obere Hälfte: Klimmzüge 3x5 +25", "pull_up 3x5 +25 upper")
say("Muscle-ups 5 Einzelne, der sechste ging nicht", "muscle_up 5x1; muscle_up 0 fail")
say(
    "Geschlafen 7,5 h, 73,8 kg auf der Waage. Klimmzüge 5x2 +25, letzter @9. 50 min",
    "pull_up 5x2 +25 last@9",
    sleep=7.5,
    bw=73.8,
    mins=50,
)
say(
    "Klimmzüge 4x5\nDips 4x8\nBeinheben 3x10\n\nRPE 7, Dauer 1h05",
    "pull_up 4x5; dip 4x8; hanging_leg_raise 3x10",
    srpe=7,
    mins=65,
)
say(
    "also heut warns Dips vier Sätze zu sechs mit zwanzig Kilo und dann noch drei mal acht Klimmzüge ohne alles",
    "dip 4x6 +20; pull_up 3x8",
)
say("Klimzüge 3x5 +10kg, Lieegstütz 3x20", "pull_up 3x5 +10; push_up 3x20")
say("hüt 4x3 Chlimmzüg mit 20 kilo, denn no Dips 3x8", "pull_up 4x3 +20; dip 3x8", tz="Europe/Zurich", lang="de-CH")
say(
    "Dips 4x6 +20, dann Kreuzheben 3x5 mit 120 kg und 6 km gelaufen",
    "dip 4x6 +20",
    unread=("Kreuzheben 3x5 mit 120 kg", "6 km gelaufen"),
    ask_or="movement: Kreuzheben",
)
say(
    "Cluster Klimmzüge +30: 2+2+1, je 20 Sek dazwischen",
    "pull_up 2 +30; pull_up 2,1 +30 link",
    maybe_unread=("20 Sek dazwischen",),
)
say(
    "Klimmzüge 4x3 +22,5, noch zwei im Tank beim letzten Satz. Bim war zu spät, 12 Minuten in der Kälte",
    "pull_up 4x3 +22.5 last@8",
)
say("Pike-Liegestütz 3x10, HSPU 3x3, L-Sit 4x15s", "pike_push_up 3x10; handstand_push_up 3x3; l_sit 4x15s")
say(
    "Curls 3x10 mit 12 kg, Hammercurls 2x12 mit 10 kg, Außenrotation 2x15 pro Seite mit 3 kg",
    "biceps_curl 3x10 +12; hammer_curl 2x12 +10; external_rotation 2x15 LR +3",
)

say("5 Runden: 15 Liegestütze, 5 Klimmzüge", "push_up 5x15; pull_up 5x5")
say("Klimmzüge mit der 10-kg-Weste 4x6, jeder Satz RPE 7", "pull_up 4x6 +10 @7")
say("RPE 8 insgesamt. Dips 4x5 +25, Klimmzüge 4x4 +15", "dip 4x5 +25; pull_up 4x4 +15", srpe=8)
say("Im Flieger sind mir die Ohren aufgegangen, drei Stunden Verspätung. Abends noch Dips 3x8", "dip 3x8")
say("Tuck Front Lever 4x12s @7", "tuck_front_lever 4x12s last@7")

# To ask
say("Dips 12", "dip ? +?", "report", ask="reps: 12")
say(
    "Klimmzüge 3x5 @9",
    "pull_up 3x5 +?",
    ask="load_kg: @9",
    sets_or=("pull_up 3x5 +? last@9", "pull_up 3x5", "pull_up 3x5 last@9", ""),
)
say("Front Lever 4x8s", "_ 4x8s", ask="movement: Front Lever", sets_or=("",))
say("Archer 3x2 je Arm", "_ 3x2 LR", ask="movement: Archer", sets_or=("",))
say("halbe Klimmzüge 3x6 +15", "pull_up 3x6 +15 rom?", ask="rom: halbe Klimmzüge")
say("Dips 4x5 +320", "dip 4x5 +?", ask="load_kg: +320")
say("Fünfer mit 20, zäh", "", "report", ask="movement: Fünfer mit 20", sets_or=("_ 5 +20",))
say("Klimmzüge +15, ein Satz, 6 oder 7 Stück", "pull_up ? +15", ask="reps: 6 oder 7")
say(
    "einarmig hängen 25s auf der einen, 18s auf der anderen Seite",
    "one_arm_hang 25s,18s",
    ask="side: 25s auf der einen, 18s auf der anderen Seite",
)
say("wie letztes Mal", "", "report", ask="sets: wie letztes Mal")
say("Gewicht heut 738", "", "bodyweight", ask="bodyweight_kg: 738")

# With the plan
say("alles erledigt 💪", "scapular_pull_up 2x8; pull_up 5x3 +20; face_pull 3x15 +15", today=DAY)
say("nach Plan, letzter Satz @9", "chin_up 4x5 +12.5 last@9", today=CHIN)
say("wie vorgegeben, aber mit 20 statt 17,5", "pull_up 4x4 +20", today=MAIN)
say("Hauptteil ja, Face Pulls und Aufwärmen weggelassen", "pull_up 5x3 +20", today=DAY)
say("5, 5, 4, 4", "chin_up 5,5,4,4 +12.5", today=CHIN)
say("die Vierer sind mit 15 gegangen", "pull_up 4x4 +15", today=MAIN)
say("alles wie geplant, Dips 2,5 leichter", "chin_up 4x6 +10; dip 3x8 +12.5", today=TWO)
say("nur 3 von 4 Sätzen, dann hat die Halle zugesperrt", "pull_up 3x4 +17.5", today=MAIN)
say(
    "rechts wie geplant, links im letzten Satz nur 1",
    "one_arm_counterweight 2x2 LR -7.5; one_arm_counterweight 1/2 LR -7.5",
    today=PULLEY,
)
say("Halten: 10, 10, 9, 7", "advanced_tuck_front_lever 10s,10s,9s,7s", today=HOLD)
say(
    "Archer 2/2 und 2/1, Klimmzüge wie geplant. Einheit RPE 8",
    "archer_ring_elbow 2 LR; archer_ring_elbow 2/1 LR; pull_up 4x4 +25",
    today=ARCH,
    srpe=8,
)
say(
    "im zweiten Satz die letzte Wdh nicht geschafft, sonst passt alles",
    "pull_up 4 +17.5; pull_up 3 +17.5 fail; pull_up 2x4 +17.5",
    today=MAIN,
)
say("fertig, Ellbogen rechts außen 2/10 danach", "chin_up 4x5 +12.5", today=CHIN, pain="elbow_outer R 2 after")

# Pain and signs
say("linke Schulter 3/10 beim Drücken", pain="shoulder L 3 during")
say("beide Ellbogen 2/10 heute früh", pain="elbow L 2 morning; elbow R 2 morning")
say("Handgelenk rechts dick geschwollen, 4 von 10", pain="wrist R 4", flags="swelling")
say(
    "mir schlafen beim Hängen rechts zwei Finger ein",
    pain="hand R - during",
    pain_or=("hand R -", ""),
    flags="numbness",
)
say(
    "bin nachts wegen dem linken Ellbogen aufgewacht", pain="elbow L - rest", pain_or=("elbow L -",), flags="night_pain"
)
say(
    "Druck auf der Brust nach den Dips und kaum Luft gekriegt",
    pain="chest - - after",
    flags="chest_pain breathless",
    does_or=("report pain",),
)
say("Knie rechts blockiert in der Hocke, 2/10", pain="knee R 2 during", pain_or=("knee R 2",), flags="locking")
say("keine Schmerzen, nichts blau, nichts dick", pain="- - 0")
say("Bizeps links 2-3 während, 1 danach", pain="biceps L 3 during; biceps L 1 after")
say("4", pain="- - 4")
say(
    "Klimmzüge 3x3 +20, Nacken 2/10 in der Früh, Hüfte tut nimmer weh",
    "pull_up 3x3 +20",
    pain="neck - 2 morning; hip - 0",
    does_or=("report pain",),
)
say(
    "39 Fieber, bin flach gelegen seit gestern",
    "",
    "ill",
    flags="fever",
    at="2027-02-18 10:00",
    tz="Europe/Berlin",
    dates="2027-02-17..",
)

# The rest
say("was gibts heut?", "", "plan_today", at="2027-02-18 07:10", tz="Europe/Vienna", dates_or=("2027-02-18",))
say("Zeig mir die Woche und sag mir, warum ich weniger drauf hab", "", "plan_week why")
say("Wie hat sich mein Klimmzug seit Herbst entwickelt?", "", "progress")
say(
    "Freitag geht nicht, geht Sonntag?",
    "",
    "move",
    at="2027-02-16 18:00",
    tz="Europe/Berlin",
    dates="2027-02-19..2027-02-21",
    maybe="missed",
)
say(
    "Dienstag nicht geschafft, Elternabend", "", "missed", at="2027-05-07 08:00", tz="Europe/Zurich", dates="2027-05-04"
)
say(
    "Ab morgen bis 20.10. auf Dienstreise, Hotel ohne Stange",
    "",
    "away equipment",
    at="2027-10-12 20:55",
    tz="Europe/Zurich",
    dates="2027-10-13..2027-10-20",
)
say(
    "verkühlt seit Dienstag, heute sicher nix",
    "",
    "ill",
    at="2027-02-18 16:00",
    tz="Europe/Vienna",
    dates="2027-02-16..",
    maybe="missed",
)
say(
    "Sohn hat Fieber, ich komm morgen nicht zum Training",
    "",
    "missed",
    at="2027-02-18 19:00",
    tz="Europe/Vienna",
    dates="2027-02-19",
)
say("mein Türreck ist hin", "", "equipment")
say("Korrektur: letzter Satz waren 4 Wdh, nicht 5", "", fix=("reps", 5, 4, None, None, "last"))
say(
    "Fehler von mir, Dips gestern waren 3x8 mit 12,5 und nicht 15",
    "dip 3x8 +12.5",
    at="2027-05-05 07:22",
    tz="Europe/Vienna",
    fix=("load_kg", 15, 12.5, "dip", None, "all"),
    on="2027-05-04",
    does_or=("report correction",),
)
say("nimm das Letzte bitte wieder raus", "", "undo")
say("Frag den Coach bitte, ob er das Video gesehen hat", "", "for_coach")
say(
    "Baby ist da, Plan bitte bis 30. Mai auf Eis legen",
    "",
    "pause",
    at="2027-05-05 12:00",
    tz="Europe/Vienna",
    dates="2027-05-05..2027-05-30",
)
say("bin wieder da, weiter gehts", "", "resume")
say("Bitte keine Nachrichten mehr, ich hör auf", "", "stop")
say("Was kannst du alles?", "", "help")
say("danke dir, schönen Abend 🙂", "", "smalltalk")
say("qwp 3 lks", "", "unknown", maybe_unread=("3",), ask_or="intents: qwp 3 lks")
say(
    "Mo Klimmzüge 4x4 +15, Mi Dips 3x8 +10",
    "pull_up 4x4 +15 on=2027-02-15; dip 3x8 +10 on=2027-02-17",
    at="2027-02-18 18:40",
    tz="Europe/Berlin",
)
say("vorgestern Chin-ups 3x6 +10", "chin_up 3x6 +10", at="2027-02-18 18:40", tz="Europe/Berlin", on="2027-02-16")
say("noch schnell vor dem Bett: Dips 3x10", "dip 3x10", at="2027-05-06 00:50", tz="Europe/Vienna", on="2027-05-05")
