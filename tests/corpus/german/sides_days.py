"""Sides, holds and several days in one message, other training among the movements."""

from tests.corpus.lines import Theme

THEME = Theme("sides_days", "de")
say = THEME.say
THURSDAY = {"at": "2027-03-04 18:00", "tz": "Europe/Berlin"}

say("einarmiges hängen 20 s links 25 rechts x 3", "one_arm_hang L 3x20s; one_arm_hang R 3x25s")
say("einarmig mit Gegengewicht, 10 kg weg, 3x2 pro Seite", "one_arm_counterweight LR 3x2 -10")
say("Einarmiges Hängen 20s 22s 19s links, 25s 24s 26s rechts", "one_arm_hang L 20s,22s,19s; one_arm_hang R 25s,24s,26s")
say("Pistols 5 5 4 links, 5 5 5 rechts", "pistol_squat L 5,5,4; pistol_squat R 5,5,5")
say("Stoßdrücken 40 kg 5x5, Klimmzüge 5x5 15 kg", "pull_up 5x5 +15", unread=("Stoßdrücken 40 kg 5x5",))
say("Split Squats 3x8 mit 2x12 kg", "split_squat 3x8 +12", why="dumbbells by the figure stated")
say("gestern nichts, vorgestern Klimmzüge 5x3", "pull_up 5x3", on="2027-03-02", **THURSDAY)
say(
    "5x3 gestern mit 20 und heute 4x8 Dips",
    "_ 5x3 +20 on=2027-03-03; dip 4x8 on=2027-03-04",
    ask="movement: 5x3",
    **THURSDAY,
)
say("links 3 rechts 2", "", "report", ask="movement: links 3 rechts 2")
say("Klimmzüge 5x3 @20kg (8/8/8/8.5/9)", "pull_up 3x3 +20 @8; pull_up 3 +20 @8.5; pull_up 3 +20 @9")
say("Montag und Mittwoch Klimmzüge 5x5", "pull_up 5x5 on=2027-03-01; pull_up 5x5 on=2027-03-03", **THURSDAY)
say("einarmige Klimmzüge mit Band 3x2 pro Seite", "_ LR 3x2", ask="movement: einarmige Klimmzüge mit Band")
say(
    "Pistols links 5, rechts 6, dann 5 und 5, dann 4 und 5",
    "pistol_squat LR 5/6; pistol_squat LR 5; pistol_squat LR 4/5",
)
say("Einarmiges Hängen: rechts 12 s, dann 10, links 10 s, dann 8", "one_arm_hang R 12s,10s; one_arm_hang L 10s,8s")
say("15 Minuten Handstand üben, dann Dips 3x8", "dip 3x8", unread=("15 Minuten Handstand üben",))
say("3 Runden: Klimmzüge 6, Dips 8, Beinheben 10", "pull_up 3x6; dip 3x8; hanging_leg_raise 3x10")
say("Klimmzüge 5x5 mit 15, letzter Satz bis zum Versagen, 4 geschafft", "pull_up 4x5 +15; pull_up 4 +15 @10")
say("Einarmige Negative: links 8s 7s, rechts 9s 9s, Chin-ups", "one_arm_chin_up LR 2x1 ecc")
say("7:30 geschlafen, 71,9 kg, Chin-ups 4x4 20 kg", "chin_up 4x4 +20", bw=71.9, sleep=7.5)
say(
    "Archer am Barren, 3 pro Seite, 2 Sätze. RPE links 8 rechts 7", "_ LR 3; _ L 3 @8; _ R 3 @7", ask="movement: Archer"
)
say("Klimmzüge 5x5. Kniebeugen 5x5 80 kg. Alle RPE 8", "pull_up 5x5 @8; squat 5x5 +80 @8")
say("Stützhalten 3x20s, Ring Dips 3x5", "ring_dip 3x5", unread=("Stützhalten 3x20s",))
say("Klimmzüge 5x5, Gesamtzeit 45", "pull_up 5x5", mins=45)
