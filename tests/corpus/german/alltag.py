"""Ganz gewöhnliche Nachrichten: Satz für Satz erzählt, vom Plan, Rückmeldungen, Runden, Schmerzen, Tage."""

from functools import partial

from tests.corpus.lines import Theme

THEME = Theme("alltag", "de")
DAY = "s/archer archer_pull_up 3x2 LR; m/weighted_pull_up pull_up 5x3 +20 @8; a dip 3x8 +10"
say = partial(THEME.say, at="2027-03-04 19:00", tz="Europe/Berlin")
plan = partial(say, today=DAY)
ARCHERS = "archer_pull_up 3x2 LR"
PULLS = "pull_up 5x3 +20"
DIPS = "dip 3x8 +10"

# Satz für Satz
say(
    "Also gestern Abend war ich noch im Park, hab drei Sätze Klimmzüge gemacht, den ersten mit acht, den zweiten mit "
    "sieben und den dritten mit fünf, alles ohne Gewicht",
    "pull_up 8,7,5",
    on="2027-03-03",
)
say(
    "Habe mich hochgearbeitet: erst 5 mit 10, dann 4 mit 15, dann 3 mit 20 und am Ende einer mit 25 Kilo. Klimmzüge "
    "natürlich",
    "pull_up 5 +10; pull_up 4 +15; pull_up 3 +20; pull_up 1 +25",
)
say(
    "Hab 25 kg drangehängt und 3 Wiederholungen geschafft, dann 20 und 5, dann 15 und 7 Klimmzüge",
    "pull_up 3 +25; pull_up 5 +20; pull_up 7 +15",
)
say("4 Sätze Klimmis, immer 5, bis auf den letzten da waren's nur 3, Gewicht war 12,5", "pull_up 5,5,5,3 +12.5")
say("Klimmzüge 5x3, erster Satz 20 kg, Rest 17,5", "pull_up 3 +20; pull_up 4x3 +17.5")
say("Dips 3x5 mit 20er Scheibe plus 5er", "dip 3x5 +25")
say("Heute mal Maximaltest: 1 Klimmzug mit 47,5 kg. 50 ging nicht.", "pull_up 1 +47.5; pull_up 0 +50 fail")
say("Heute 1RM Klimmzug: 52,5kg hochbekommen, 55 gescheitert", "pull_up 1 +52.5; pull_up 0 +55 fail")
say("Muscle Up erster Versuch ging, zweiter auch, dritter nicht mehr", "muscle_up 2x1; muscle_up 0 fail")
say(
    "6 Versuche Einarmiger rechts, 2 davon sauber",
    "_ 2x1 R; _ 4x0 R fail",
    ask="movement: Einarmiger",
)
say("bulgarische 3x8 mit 2x16kg", "split_squat 3x8 +16")
say("klimmzüge 3x5 mit 2x10kg", "pull_up 3x5 +?", ask="load_kg: 2x10kg")
say("hab nach der arbeit noch schnell 50 klimmzüge gemacht in 5er sätzen", "pull_up 10x5")
say(
    "Klimmzüge 8, 8, 7, 6 - letzte Wdh vom letzten Satz nicht mehr ganz hoch",
    "pull_up 8,8,7; pull_up 5 fail",
)
say("Heute wirklich mies geschlafen, 4h, trotzdem 4x4 Klimmzüge mit 15, alle bei 8", "pull_up 4x4 +15 @8", sleep=4)
say("Hängen: 1 Minute 20", "dead_hang 80s")
say("10 Sätze à 1 mit 30 kg, jede Minute einer, Klimmzüge", "pull_up 10x1 +30")
say("Supersatz Klimmzüge 8 und Dips 12, vier Runden", "pull_up 4x8; dip 4x12")
say(
    "zwei Sätze einarmig mit Flaschenzug, 8 kg Gegengewicht, 3 links 4 rechts",
    "one_arm_counterweight 3 L -8; one_arm_counterweight 4 R -8; one_arm_counterweight 3 L -8; "
    "one_arm_counterweight 4 R -8",
)
say("Einarmig hängen je 20s, 3x", "one_arm_hang 3x20s LR")
say(
    "Einarmer mit Hand am Bizeps: links einer, rechts zwei",
    "one_arm_hand_on_biceps 1 L; one_arm_hand_on_biceps 2 R",
)
say(
    "links 2, rechts 3 Archer, zwei Durchgänge, Ring schulterhoch",
    "archer_ring_shoulder 2x2/3 LR",
)

# Vom Plan
plan("Archer rechts nur eine, sonst alles", f"archer_pull_up 3x2/1 LR; {PULLS}; {DIPS}")
plan("Klimmzüge 20 22,5 25 25 25 jeweils 3", "pull_up 3 +20; pull_up 3 +22.5; pull_up 3x3 +25")
plan("heute nur die Klimmzüge geschafft, der Rest muss warten", PULLS)
plan("alles gemacht, letzter Satz Klimmzüge war ne 9", f"{ARCHERS}; {PULLS} last@9; {DIPS}")
plan(
    "Fertig! Klimmzüge waren brutal, musste beim 4. und 5. Satz auf 17,5 runter",
    f"{ARCHERS}; pull_up 3x3 +20; pull_up 2x3 +17.5; {DIPS}",
)
plan(
    "Archer hab ich gelassen, Ellbogen links 4/10, Klimmzüge und Dips normal",
    f"{PULLS}; {DIPS}",
    pain="elbow L 4",
)
plan("heute nur 3 Klimmzugsätze statt 5, Dips voll, Archer hab ich weggelassen", f"pull_up 3x3 +20; {DIPS}")
plan("4 von 5 Sätzen Klimmzüge, beim fünften nur eine Wiederholung", "pull_up 4x3 +20; pull_up 1 +20")

# Schmerz, Tage, Wünsche
say("Finger taub nach dem Hängen, ging nach 5 min weg", pain="hand - - after", flags="numbness")
say("Schulter links beim Dippen 4, danach weg", pain="shoulder L 4 during")
say("Rücken verrissen, heute lieber nix", does="missed", pain="lower_back - -", dates="2027-03-04")
say("Handgelenk verdreht beim Volleyball, 5/10", pain="wrist - 5 during", pain_or=("wrist - 5",))
say("nachricht war doppelt, eine kann weg", does="undo")
say("hab die Sache von gestern doppelt geschickt, bitte eine löschen", does="undo")
say("Wie schwer soll ich heute bei den Klimmzügen gehen?", does="plan_today", dates_or=("2027-03-04",))
say("wie viel gewicht soll ich bei den dips nehmen?", does="plan_today")
say("ich darf laut Physio eine Woche nicht trainieren", does="pause", dates="2027-03-04..2027-03-10")
say("War beim Arzt, darf 10 Tage nichts machen", does="pause", dates="2027-03-04..2027-03-13")
say("ziehe heute vor was morgen dran wäre, ok?", does="move", dates="2027-03-05..2027-03-04")
say("Ich hätte da mal ne Frage: wird das mit dem Einarmigen noch was dieses Jahr?", does="progress")

# Mehr vom Plan
plan(
    "Archer 2/2 2/2 2/1, Klimmzüge alle fünf, Dips auch",
    f"archer_pull_up 2x2/2 LR; archer_pull_up 2/1 LR; {PULLS}; {DIPS}",
)
plan("hab vergessen Dips zu machen, sonst wie geplant", f"{ARCHERS}; {PULLS}")
plan("erledigt bis auf Dips, da nur 8 6 6", f"{ARCHERS}; {PULLS}; dip 8,6,6 +10")
plan(
    "bin nach dem dritten Satz Klimmzüge raus, Ellbogen 5",
    f"{ARCHERS}; pull_up 3x3 +20",
    pain="elbow - 5",
    pain_or=("elbow - 5 after", "elbow - 5 during"),
)
plan(
    "alles wie vorgegeben nur ohne Zusatzgewicht bei den Klimmzügen weil ich unterwegs bin",
    f"{ARCHERS}; pull_up 5x3; {DIPS}",
)
plan(
    "komplett durch. RPE: Archer 7, Klimmzüge 8,5, Dips 8",
    "archer_pull_up 3x2 LR last@7; pull_up 5x3 +20 last@8.5; dip 3x8 +10 last@8",
)
plan("Klimmzüge 8, Dips 7 RPE", "pull_up 5x3 +20 last@8; dip 3x8 +10 last@7")
plan("20kg 3,3,3,3,3 dann Dips 10kg 8,8,7", f"{PULLS}; dip 8,8,7 +10")
plan("ich hab nur die Hälfte der Dips geschafft", does="report", ask="sets: die Hälfte")
plan("alles halb so viel gemacht", does="report", ask="sets: halb so viel")
plan("1. Satz 20kg, dann runter auf 17,5 für die restlichen 4", "pull_up 3 +20; pull_up 4x3 +17.5")
plan("gemacht, +3x12 Facepulls", f"{ARCHERS}; {PULLS}; {DIPS}; face_pull 3x12")

# Gesprochen, abgehakt
say(
    "Moin, Klimmzüge heute bisschen zäh: 5, 4, 4, 3 mit 15 kg, RPE beim letzten 9,5",
    "pull_up 5,4,4,3 +15 last@9.5",
)
say(
    "Heute 5 mal 4 Klimmzüge mit 12 Komma 5 Kilo die letzten zwei Sätze waren RPE 9",
    "pull_up 3x4 +12.5; pull_up 2x4 +12.5 @9",
)
say(
    "ich hab erst dips gemacht 3 sätze mit 12 und dann noch klimmzüge 3 sätze mit 8",
    "dip 3x? +?; pull_up 3x? +?",
    ask="reps: 3 sätze mit 12|reps: 3 sätze mit 8",
)
say(
    "Trainingstag 2: Klimmzüge 4x6 mit 10kg ✅ Dips 3x10 ✅ Hollow 3x30s ❌",
    "pull_up 4x6 +10; dip 3x10",
    maybe_unread=("Hollow 3x30s ❌",),
)
say("Brust zieht bei jedem Atemzug, stechend", pain="chest - - during", flags="chest_pain", pain_or=("chest - -",))

# Leute
say(
    "Guten Abend, hier ist der Werner. Ich habe heute dreimal sechs Klimmzüge geschafft und anschließend viermal zehn "
    "Liegestütze. Am Ende war ich ziemlich geschafft.",
    "pull_up 3x6; push_up 4x10",
)
say("leider musste ich nach zwei Sätzen Dips abbrechen, 8 und 6 waren es mit 10 kg.", "dip 8,6 +10")
say(
    "Heute die schweren Klimmzüge: 3 Wiederholungen mit 25, 2 mit 27,5, und dann hab ich noch 30 probiert, ging aber "
    "nur eine",
    "pull_up 3 +25; pull_up 2 +27.5; pull_up 1 +30",
)
say("4x Klimmzüge à 5 mit 10 kg, 3x Dips à 10", "pull_up 4x5 +10; dip 3x10")
say("hab die 20kg heute 5 mal hochgezogen, dann 4 mal, dann nochmal 4 mal. klimmzüge", "pull_up 5,4,4 +20")
say(
    "li 3 re 3 / li 3 re 3 / li 2 re 3 hand am bizeps obere hälfte",
    "one_arm_hand_on_biceps 2x3/3 LR upper; one_arm_hand_on_biceps 2/3 LR upper",
)
say("letzter Satz bis Muskelversagen: 9 Klimmzüge, davor 3x6", "pull_up 3x6; pull_up 9 @10")
say("Dips 3x8, RPE stieg von 7 auf 9", "dip 3x8", ask="rpe: von 7 auf 9")
say(
    "heute Schultertag: HSPU an der Wand 4x3, Pikes 3x8, Facepulls 3x15 mit Band",
    "handstand_push_up 4x3; pike_push_up 3x8; face_pull 3x15",
)
say(
    "nach 3 wochen pause wieder klimmzüge, 4x4 ohne gewicht, muskelkater vorprogrammiert",
    "pull_up 4x4",
)

# Tage und Wünsche
say("Montag und Dienstag geht bei mir nicht, Kongress", does="missed", dates="2027-03-08..2027-03-09")
say(
    "Hab ab dem 15.3. zwei Wochen Ferien in Südtirol, dort gibts nur nen Spielplatz",
    does="away equipment",
    dates="2027-03-15..2027-03-28",
)
say("heut is nix gworden, hab mi verschlofn", does="missed", dates="2027-03-04")
say(
    "Ich würde gerne vom Donnerstag auf den Freitag wechseln, wenn das passt",
    does="move",
    dates="2027-03-04..2027-03-05",
)
say("Klimmzugstange ist abgebaut, was kann ich stattdessen machen?", does="equipment")
say("kannst du dem coach sagen dass er mich mal anrufen soll", does="for_coach")
say("Schau dir bitte das Video an, bin mir bei der Technik unsicher", does="for_coach")
say("Wie schauts denn aus mit meinem Fortschritt bei den Dips?", does="progress")
say("welches Gewicht steht bei den Dips?", does="plan_today")
say("Wir fliegen morgen nach Kreta, 10 Tage", does="away", dates="2027-03-05..2027-03-14")
say("Bitte Training am Samstag streichen", does="missed", dates="2027-03-06")
say(
    "Trainiere heute nicht, Ellbogen zwickt noch (3/10)",
    does="missed",
    pain="elbow - 3",
    dates="2027-03-04",
)
say("sag mal wie viel hab ich letzten Monat zugelegt bei den Klimmzügen", does="progress")

# Ganze Sätze, gesprochen
say("zuerst drei mal Archer mit zwei pro Seite auf Ellbogenhöhe", "archer_ring_elbow 3x2 LR")
say(
    "Hab 3 Sätze Klimmzüge mit 20 Kilo gemacht, erst 5, dann 4, dann noch 3, und danach 2 Sätze Dips mit 15 Kilo zu 8 "
    "und 7",
    "pull_up 5,4,3 +20; dip 8,7 +15",
)
say(
    "Einarmiges Hängen links hab ich 20 Sekunden geschafft und rechts 25, das hab ich dreimal wiederholt",
    "one_arm_hang 20s L; one_arm_hang 25s R; one_arm_hang 20s L; one_arm_hang 25s R; one_arm_hang 20s L; "
    "one_arm_hang 25s R",
)
say(
    "Also die Klimmzüge waren wie letztes Mal, 4x5, aber diesmal mit 2,5 kg mehr",
    "pull_up 4x5 +?",
    ask="load_kg: 2,5 kg mehr",
)
say(
    "mit 20 Kilo dreimal drei Klimmzüge, mit 15 Kilo zweimal fünf und zum Schluss ohne alles zehn",
    "pull_up 3x3 +20; pull_up 2x5 +15; pull_up 10",
)
say("letzte Woche hab ich 5x3 mit 20 geschafft, heute 5x3 mit 22,5! Klimmzüge", "pull_up 5x3 +22.5")
say("geplant 4x8 Dips, gemacht 4x6 wegen Schulter (3/10)", "dip 4x6", pain="shoulder - 3")
say(
    "Wenn ich 5x5 mit 20 schaffe geh ich nächste Woche auf 22,5. Heute waren es 5,5,4,4,4 Klimmzüge mit 20",
    "pull_up 5,5,4,4,4 +20",
)
say(
    "vier Sätze Klimmzüge mit fünfzehn Kilo gemacht, in den ersten drei jeweils fünf und im letzten vier.",
    "pull_up 5,5,5,4 +15",
)
say("Habe 2 Minuten am Stück gehangen!! Neuer PB", "dead_hang 120s")
say("L-Sit 3 Versuche: 12s, 14s, 11s", "l_sit 12s,14s,11s")
say("Frontlever gehockt 20 Sekunden gehalten, 3x, dazwischen 2 Minuten Pause", "tuck_front_lever 3x20s")
say("Klimmzüge mit 5 kg Weste 8 7 7 und zum Schluss ohne Weste 10", "pull_up 8,7,7 +5; pull_up 10")
say(
    "RPE 7 7 8 9 bei 4x4 Klimmzügen mit 20 kg",
    "pull_up 2x4 +20 @7; pull_up 4 +20 @8; pull_up 4 +20 @9",
)
say("Klimmzüge 3x3, oben 2 Sekunden gehalten", "pull_up 3x3 top")
say("Dips 10: 8 8 7", "dip 8,8,7 +10")
plan("zu müde gewesen, nur 2 Runden Archer und 3 Sätze KZ", "archer_pull_up 2x2 LR; pull_up 3x3 +20")
plan(
    "alles ein bisschen leichter gemacht",
    f"{ARCHERS}; pull_up 5x3 +?; dip 3x8 +?",
    ask="load_kg: alles ein bisschen leichter",
)
plan("Klimmzüge: erster Satz 20kg, dann 4 Sätze mit 17,5kg", "pull_up 3 +20; pull_up 4x3 +17.5")
plan("3/3/3/2/2 und 8/8/7", does="report", ask="movement: 3/3/3/2/2 und 8/8/7")
plan("KZ 20: 3 3 3 2 2, Dips 10: 8 8 7", "pull_up 3,3,3,2,2 +20; dip 8,8,7 +10")
