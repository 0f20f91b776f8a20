"""Schreibweisen, Versuche, Runden und die Zahlen des Alltags daneben."""

from tests.corpus.lines import Theme

THEME = Theme("weiteres", "de")
say = THEME.say

say("Klimmzüge 5x5: 5,5,5,4,3", "pull_up 5,5,5,4,3")
say("60 Liegestütze: 20, 20, 12, 8", "push_up 20,20,12,8")
say("Klimmzüge x10 x8 x7", "pull_up 10,8,7")
say("EMOM 10 Minuten: 2 Klimmzüge +20", "pull_up 10x2 +20")
say("Superset 3 Runden: 6 Chins + 10 Pushups", "chin_up 3x6; push_up 3x10")
say("Cluster 4 x (2+1+1) Klimmzüge mit 35 kg", "; ".join(["pull_up 2 +35; pull_up 1 +35 link; pull_up 1 +35 link"] * 4))
say("Pyramide Dips ohne Zusatz: 2-4-6-8-6-4-2 = 34", "dip 2,4,6,8,6,4,2")
say(
    "einarmiges Hängen links 18 Sekunden rechts 20 Sekunden und das Ganze zweimal",
    "one_arm_hang 18s L; one_arm_hang 20s R; one_arm_hang 18s L; one_arm_hang 20s R",
    sets_or=("one_arm_hang 18s L; one_arm_hang 18s L; one_arm_hang 20s R; one_arm_hang 20s R",),
)
say("erste zwei Sätze 5, dritter 4, letzter 3 Klimmzüge +20", "pull_up 5,5,4,3 +20")
say("zwei Sätze zu sechs, dann drei zu vier Klimmzüge", "pull_up 2x6; pull_up 3x4")
say("zweimal acht Schulterblattklimmzüge, danach Dips 3x8", "scapular_pull_up 2x8; dip 3x8")
say("Einer mit 40, einer mit 42,5, bei 45 gescheitert (Klimmzug)", "pull_up 1 +40; pull_up 1 +42.5; pull_up 0 +45 fail")
say("Klimmzug Max-Test: 40 ✓ 45 ✓ 47,5 ✗", "pull_up 1 +40; pull_up 1 +45; pull_up 0 +47.5 fail")
say("MU 5x1, dann 2 vergeigt", "muscle_up 5x1; muscle_up 2x0 fail")
say("Klimmzüge 3x5, erst mit 10, dann 15, dann 20", "pull_up 5 +10; pull_up 5 +15; pull_up 5 +20")
say("5 Dreier Klimmzüge mit der 20er Scheibe", "pull_up 5x3 +20")
say("Klimmzüge 4x3 mit zweiundzwanzigeinhalb Kilo", "pull_up 4x3 +22.5")
say("KH-Rudern 3x10/Seite 26kg", "row 3x10 LR +26")
say("Archer tiefer Ring 2x2 je Seite RPE 7", "archer_ring_elbow 2x2 LR last@7")
say("OAC negatives 2x1 je Arm, danach Foam Roller", "one_arm_chin_up 2x1 LR ecc")
say("heit Klimmzüg 4 moi 5 mit 10 Kilo", "pull_up 4x5 +10")
say(
    "Samstag 4x4 +10 Klimmzüge und gestern 4x4 mit 12,5",
    "pull_up 4x4 +10 on=2027-02-13; pull_up 4x4 +12.5 on=2027-02-17",
    at="2027-02-18 18:40",
    tz="Europe/Berlin",
    on="2027-02-17",
)
say("Liegestütz 25, 22, 18. Der Bub (4 Jahre) hat mitgezählt, bis 100", "push_up 25,22,18")
say("Bin 45 geworden und habe 45 Liegestütze am Stück gemacht", "push_up 45")
say("Dips 3x8, mussten 3 Kinder und 2 Hunde zuschauen", "dip 3x8")
say("vor zwei Jahren noch Dips 3x10 mit 40, heute 3x6 mit 10. Das Alter (52)!", "dip 3x6 +10")
say("mein Vater hat 3 Klimmzüge geschafft, ich 12", "pull_up 12")
say("hätte gern 5x5 gemacht, wurden dann 5, 4 und 4 Dips", "dip 5,4,4")
say("zwei Sätze Klimmzüge, 8 und 7", "pull_up 8,7")
say("2 zusätzliche Sätze Dips, 6 und 5", "dip 6,5")
say("alles gemacht und noch einen Satz mit 20 kg", "pull_up 4x3 +15; pull_up 3 +20", today="m pull_up 4x3 +15 @8")

# Ordnungszahlen, die zählen; gleich Berichtigtes; Körper und Minuten neben anderem.
say("wohne im 3. Stock ohne Lift. Klimmzüge 4x4 +10", "pull_up 4x4 +10")
say("am 3. Tag in Folge trainiert: Dips 3x8", "dip 3x8")
say("gestern, nein, am Tag davor: Chins 4x6", "chin_up 4x6", on="2027-05-03", at="2027-05-05 18:00", tz="Europe/Vienna")
say("geschlafen 5, sorry, 6 Stunden", does="report", sleep=6)
say("9 Stunden im Bett, davon 6 geschlafen", does="report", sleep=6)
say("mein Bruder wiegt 92. Ich: 70,9", bw=70.9)
say("RPE 7 Tag. Ring Rows 4x10, Dips 4x8", "ring_row 4x10; dip 4x8", srpe=7)
say("Chins 5x3 +15. 35 Minuten alles zusammen.", "chin_up 5x3 +15", mins=35)
say(
    "38,4 heute früh, bleibe im Bett",
    flags="fever",
    does="ill",
    dates="2027-05-05..2027-05-05",
    dates_or=("2027-05-05..",),
    at="2027-05-05 10:00",
    tz="Europe/Vienna",
)
say("zehn Minuten nach dem Training noch schwindlig", flags="dizziness")

# Absagen, Verschieben und Fragen mit anderen Worten.
TUESDAY = {"at": "2027-05-04 18:00", "tz": "Europe/Vienna"}
say("Fr-So weg", does="away", dates="2027-05-07..2027-05-09", **TUESDAY)
say("bin Mo-Mi nicht da", does="away", dates="2027-05-10..2027-05-12", **TUESDAY)
say(
    "Donnerstag nächste Woche geht nicht. Können wir das auf Freitag legen?",
    does="move",
    dates="2027-05-13..2027-05-14",
    **TUESDAY,
)
say("Samstag passt nicht. Können wir auf Montag verschieben?", does="move", dates="2027-05-08..2027-05-10", **TUESDAY)
say("heute keine einzige Wiederholung, sorry", does="missed", dates="2027-05-04", **TUESDAY)
say("war gestern nicht im Training", does="missed", dates="2027-05-03", **TUESDAY)
say("gestern Chins 4x4 gemacht, heute krieg ich die Arme nicht hoch haha", "chin_up 4x4", on="2027-05-03", **TUESDAY)
say("setz meinen Plan bitte auf Pause", does="pause", dates="2027-05-04..", **TUESDAY)
say("der Weg zum Gym war lang, Dips 4x6", "dip 4x6")
say("Wie viel soll ich heute dranhängen?", does="plan_today")
say("vergiss was ich grad geschickt hab", does="undo")
say("Chins 3x5, 80 Minuten inklusive Aufwärmen", "chin_up 3x5", mins=80)
say("Knie zwickt bei den Pistols, 3", pain="knee - 3 during")
say("hab kein Auge zugetan wegen der Schulter", flags="night_pain", pain="shoulder - - rest")
say("heute nichts, zu müde", does="missed", dates="2027-10-12")
say("das Studio macht heute um 21 Uhr zu", does="smalltalk", does_or=("unknown",))
say("72 kg, rauf von 71,4 letzte Woche", bw=72)
say("Körpergewicht 72 4x4 Chins", "chin_up 4x4", bw=72)
