"""Ein fünfter Blick, blind geschrieben: Notation, Plan, Schmerz, Zeichen, Tage und Wünsche, gemischt."""

from tests.corpus.lines import Theme
from tests.corpus.notation import sets

THEME = Theme("fifth-alles", "de")
say = THEME.say

MITTWOCH = "2027-03-24 19:00"
ALLES = "w scapular_pull_up 2x10; m/weighted_pull_up pull_up 4x4 +17.5 @7; a face_pull 3x15 +15"
VIERER = "m chin_up 4x4 +15 @8"
DREIER = "m/weighted_pull_up pull_up 5x3 +22.5 @8"
BEIDE = "m/weighted_pull_up pull_up 4x3 +25 @8; a dip 3x8 +10 @8"
ZUG = "m/one_arm_counterweight one_arm_counterweight 3x2 LR -7.5 @8"
HALTEN = "s/tuck_front_lever tuck_front_lever 4x12s @8"

# Was gemacht wurde.
say("Klimmzüge 4x4 +17,5 kg, ging gut weg", "pull_up 4x4 +17.5")
say("Chin-ups 3 Sätze à 6 ohne Gewicht, danach 2x3 mit 7,5 kg", "chin_up 3x6; chin_up 2x3 +7.5")
say("Dips 15kg: 8,7,7. letzter Satz RPE 9,5", "dip 8,7 +15; dip 7 +15 @9.5")
say("Klimmis 4@20 4@22,5 2@25 und dann ab aufs Sofa", "pull_up 4 +20; pull_up 4 +22.5; pull_up 2 +25")
say(
    "Klimmzüge im Neutralgriff 4x5 mit 10 kg, beim letzten wären noch zwei gegangen",
    "neutral_grip_pull_up 4x5 +10 last@8",
)
say(
    "einarmig am Flaschenzug, 5 kg Gegengewicht: links 2, rechts 1",
    "one_arm_counterweight 2 L -5; one_arm_counterweight 1 R -5",
)
say("Archer-Klimmzüge 3x3 pro Seite, sauber", "archer_pull_up 3x3 LR")
say(
    "Bogenschützen, gestreckter Arm am Ring auf Schulterhöhe, 3x2 je Seite, alle RPE 8",
    "archer_ring_shoulder 3x2 LR @8",
)
say("einarmiges Hängen 20 Sek. links, 17 Sek. rechts", "one_arm_hang 20s L; one_arm_hang 17s R")
say("Ringdips 9/8/7, Ringrudern 3x12", "ring_dip 9,8,7; ring_row 3x12")
say(
    "Tuck Planche 4x9 Sek., Planche Leans 3x25 Sek., Handstand an der Wand 2x50 Sek.",
    "tuck_planche 4x9s; planche_lean 3x25s; handstand_hold 2x50s",
)
say(
    "L-Sit 4x15 Sek, Hollow Hold 3x40 Sek, Beinheben im Hang 3x8",
    "l_sit 4x15s; hollow_hold 3x40s; hanging_leg_raise 3x8",
)
say(
    "Beine: Kniebeugen 5x5 80kg, Pistols 3x4 je Bein, Nordics 3x5",
    "squat 5x5 +80; pistol_squat 3x4 LR; nordic_curl 3x5",
)
say(
    "Latzug 3x12 55 kg, Face Pulls 3x15 20 kg, Bizepscurls 3x10 12 kg",
    "lat_pulldown 3x12 +55; face_pull 3x15 +20; biceps_curl 3x10 +12",
)
say("Klimmzüge mit Band 3x6, das Band nimmt 15 kg weg", "band_pull_up 3x6 -15")
say("negative Klimmzüge 4x3, je 5 Sekunden runter", "pull_up 4x3 ecc", maybe_unread=("je 5 Sekunden runter",))
say("Klimmzüge 3x3 +15 mit Pause oben, dann 2x4 nur die obere Hälfte +25", "pull_up 3x3 +15 top; pull_up 2x4 +25 upper")
say(
    "also ich hab heute Dips gemacht vier Sätze zu sechs mit zehn Kilo der letzte war neun von zehn und dann drei mal"
    " zwanzig Liegestütze",
    "dip 4x6 +10 last@9; push_up 3x20",
)
say("Klimmzueg 3x5 +20kg , Dipps 3x8 ohne gewicht", "pull_up 3x5 +20; dip 3x8")
say(
    "Kreuzheben 3x5 120 kg, danach Chin-ups 4x5",
    "chin_up 4x5",
    unread=("Kreuzheben 3x5 120 kg",),
    ask_or="movement: Kreuzheben",
)
say("6 km gelaufen, dann Klimmzüge 3x8", "pull_up 3x8", unread=("6 km gelaufen",))
say("Rest-Pause Klimmzüge ohne Gewicht: 11 + 4 + 3", "pull_up 11; pull_up 4,3 link")
say("Ring-Muscle-ups 5 Einzelne, den sechsten nicht geschafft", "ring_muscle_up 5x1; ring_muscle_up 0 fail")
say("Liegestütze bis zum Versagen: 48, dann noch 30 und 22", "push_up 48 @10; push_up 30,22")
say(
    "Geschlafen 7,5 h, Gewicht 74,1. Klimmzüge 5x3 +20, letzter @8. 55 Minuten, Einheit insgesamt 7",
    "pull_up 5x3 +20 last@8",
    sleep=7.5,
    bw=74.1,
    mins=55,
    srpe=7,
)
say("Klimmzüge 4x4\nDips 4x8\n\nRPE 7\neine Dreiviertelstunde", "pull_up 4x4; dip 4x8", srpe=7, mins=45)
say("heut Klimmzüg 4x5 mit 10 Kilo, guat is gangen", "pull_up 4x5 +10", tz="Europe/Vienna")
say("Dips 3x6 mit 45 lbs", "dip 3x6 +45lb")

# Rückfragen.
say("Chin-ups 20", "chin_up ? +?", ask="reps: 20")
say(
    "Klimmzüge 4x4 @9",
    "pull_up 4x4 +?",
    ask="load_kg: @9",
    also=tuple({"sets": sets(s)} for s in ("pull_up 4x4 +? last@9", "pull_up 4x4 last@9", "pull_up 4x4")),
)
say(
    "hab die 5er mit 15 gemacht",
    does="report",
    ask="movement: hab die 5er mit 15 gemacht",
    also=({"sets": sets("_ 5 +15")},),
)
say("Front Lever 4x9 Sek.", "_ 4x9s", ask="movement: Front Lever")
say("Dips 4x5 +210", "dip 4x5 +?", ask="load_kg: +210")
say("ein Satz Klimmzüge mit 15, 7 oder 8, hab mich verzählt", "pull_up ? +15", ask="reps: 7 oder 8")
say("Klimmzüge 4x5 +10, RPE 6-9 über alle Sätze", "pull_up 4x5 +10", ask="rpe: RPE 6-9 über alle Sätze")
say("Schulter ist heut eine 14", pain="shoulder - -", ask="score: 14")
say("letzte Woche irgendwann noch Dips 4x8 gemacht", "dip 4x8", on=None, ask="performed_on: letzte Woche")
say("das Gleiche wie beim letzten Mal", does="report", ask="sets: das Gleiche wie beim letzten Mal")

# Nach Plan.
say("alles erledigt 👍", "scapular_pull_up 2x10; pull_up 4x4 +17.5; face_pull 3x15 +15", today=ALLES)
say("wie geplant, letzter Satz RPE 9", "chin_up 4x4 +15 last@9", today=VIERER)
say("alles nach Plan, nur im letzten Satz 3 statt 4", "chin_up 3x4 +15; chin_up 3 +15", today=VIERER)
say("alles gemacht außer Face Pulls, 40 min", "scapular_pull_up 2x10; pull_up 4x4 +17.5", today=ALLES, mins=40)
say("die 3er mit 27,5 gemacht, musste dann los", "pull_up 4x3 +27.5", today=BEIDE)
say("5x3 mit 22,5 ✅", "pull_up 5x3 +22.5", today=DREIER)
say("4, 4, 4, 3", "chin_up 4,4,4,3 +15", today=VIERER)
say("nur 3 von 5 Sätzen geschafft, dann hat das Studio zugemacht", "pull_up 3x3 +22.5", today=DREIER)
say("links wie geplant, rechts immer nur 1", "one_arm_counterweight 3x2/1 LR -7.5", today=ZUG)
say("gemacht, aber mit 20 statt 22,5", "pull_up 5x3 +20", today=DREIER)
say("Halten alle ok, der letzte nur 9 s statt 12", "tuck_front_lever 12s,12s,12s,9s", today=HALTEN)
say("wie vorgegeben, alle @7", "chin_up 4x4 +15 @7", today=VIERER)
say("in jedem Satz eine mehr als geplant", "dip 3x7 +15", today="m dip 3x6 +15 @8")
say("Plan erfüllt, Ellbogen links innen 2/10 danach", "pull_up 5x3 +22.5", pain="elbow_inner L 2 after", today=DREIER)

# Schmerz und Zeichen.
say("Schulter rechts 3/10, nur bei den Dips", pain="shoulder R 3 during")
say("beide Ellbogen 2/10 nach dem Training", pain="elbow L 2 after; elbow R 2 after")
say("Handgelenk links heute früh dick geschwollen, 4/10", pain="wrist L 4 morning", flags="swelling")
say(
    "rechter Unterarm 3 beim Hängen und zwei Finger werden taub",
    pain="forearm R 3 during; hand R - during",
    pain_or=(
        "forearm R 3 during; hand - - during",
        "forearm R 3 during; hand - -",
        "forearm R 3 during; hand R -",
        "forearm R 3 during",
    ),
    flags="numbness",
)
say(
    "die linke Schulter hat mich letzte Nacht zweimal geweckt",
    pain="shoulder L - rest",
    pain_or=("shoulder L -",),
    flags="night_pain",
)
say(
    "Brustschmerzen nach den Klimmzügen und ich hab kaum Luft bekommen",
    pain="chest - - after",
    flags="chest_pain breathless",
    maybe="report",
)
say("Klimmzüge 4x4 +10. Knie rechts 1/10, keine Schwellung, kein Knacken", "pull_up 4x4 +10", pain="knee R 1")
say("schmerzfrei 🙏", pain="- - 0")
say("2", pain="- - 2")
say(
    "Knie links blockiert immer wieder beim Pistol, 3/10",
    pain="knee L 3 during",
    pain_or=("knee L 3",),
    flags="locking",
)

# Wünsche und Tage.
say("was steht heut am Programm?", does="plan_today", at=MITTWOCH, dates_or=("2027-03-24",))
say("Warum ist das Gewicht runtergegangen? Und wie läuft die Woche weiter?", does="why plan_week")
say("wie weit bin ich vom Front Lever weg?", does="progress")
say("Kann ich Freitag auf Sonntag verschieben?", does="move", at=MITTWOCH, dates="2027-03-26..2027-03-28")
say("gestern ausgefallen, Kind war krank", does="missed", at=MITTWOCH, dates="2027-03-23")
say(
    "Bin vom 3. bis 10. April in den Bergen, nur Ringe dabei",
    does="away equipment",
    at=MITTWOCH,
    dates="2027-04-03..2027-04-10",
)
say("seit Montag Grippe, lieg flach", does="ill", at=MITTWOCH, dates="2027-03-22..")
say("das waren 27,5 und nicht 25", fix=("load_kg", 25, 27.5))
say("Korrektur: letzter Satz war RPE 9, nicht 8", fix=("rpe", 8, 9, None, None, "last"))
say("bitte den letzten Eintrag löschen", does="undo")
say("Umzug. Bitte bis 12. April alles pausieren", does="pause", at=MITTWOCH, dates="2027-03-24..2027-04-12")
say("bin wieder gesund, kann weitergehen", does="resume")
say("bitte keine Nachrichten mehr, ich hör auf", does="stop")
say("was kannst du alles?", does="help")
say("richte dem Trainer aus, dass das Video oben ist", does="for_coach")
say("haha die Nachbarskatze hat wieder zugeschaut 😹", does="smalltalk")
say("Mo Klimmzüge 5x3 +20, Di Dips 4x6 +15", "pull_up 5x3 +20 on=2027-03-22; dip 4x6 +15 on=2027-03-23", at=MITTWOCH)
say("vorgestern Muscle-ups 4x2", "muscle_up 4x2", at=MITTWOCH, on="2027-03-22")
say("grad erst heimgekommen, Chin-ups 4x4 +10", "chin_up 4x4 +10", at="2027-03-24 01:30", on="2027-03-23")
say("am 28. Dips 5x5 +20, hab ich vergessen zu schreiben", "dip 5x5 +20", at="2027-02-03 10:00", on="2027-01-28")
