"""A second look, written blind: what German-speaking athletes write."""

from typing import Any

from tests.corpus.lines import Theme

THEME = Theme("second", "de")


def say(text: str, sets: str = "", does: str = "", **more: Any) -> None:
    """A message sent on a Wednesday evening unless it says otherwise."""
    THEME.say(text, sets, does, **({"at": "2027-02-17 18:42", "tz": "Europe/Berlin"} | more))


MAIN = "m/weighted_pull_up pull_up 4x4 +20 @8"
TWO = "m/weighted_pull_up pull_up 4x4 +15 @8; a dip 3x8 +10"
PULLEY = "m one_arm_counterweight 3x2 LR -10 @8"

# Sätze
say("Klimmzüge 4x4 +17,5", "pull_up 4x4 +17.5")
say("heute 5 Sätze Klimmzüge mit je 3 Wdh und 20 kg Zusatzgewicht", "pull_up 5x3 +20")
say("dips 12 10 8 ohne zusatzgewicht", "dip 12,10,8")
say("Chinups 3x6 mit 10kg, Dips 3x8 mit 15kg", "chin_up 3x6 +10; dip 3x8 +15")
say("klimmzuege 3x8, umlaute gehn am handy grad nicht", "pull_up 3x8")
say("Muscle Ups: 3 Einzelne, dann noch ein Doppelter", "muscle_up 1,1,1,2")
say("Ringdips 8/8/7", "ring_dip 8,8,7")
say("Klimmzüge eng im Untergriff 4x6", "chin_up 4x6")
say("Klimmzüge im Neutralgriff, 3 mal 5 mit 12 Kilo", "neutral_grip_pull_up 3x5 +12")
say("Ringklimmzüge 4x5, danach Ringrudern 3x12", "ring_pull_up 4x5; ring_row 3x12")
say(
    "ich hab heute vier Sätze Klimmzüge gemacht jeweils fünf Stück "
    "mit zehn Kilo und dann noch drei mal zehn Liegestütze",
    "pull_up 4x5 +10; push_up 3x10",
)
say("Liegestütze 40, 30, 25", "push_up 40,30,25")
say("Kniebeugen 5x5 mit 90 kg, Kreuzheben 3x5 130", "squat 5x5 +90", unread=("Kreuzheben 3x5 130",))
say("Bizepscurls 3x12 12,5 kg, Hammercurls 3x10 14 kg", "biceps_curl 3x12 +12.5; hammer_curl 3x10 +14")
say("Latzug 4x10 65kg", "lat_pulldown 4x10 +65")
say("Aufwärmen Schulterblatt-Klimmzüge 2x10, dann Klimmzüge +25 3x3", "scapular_pull_up 2x10; pull_up 3x3 +25")
say("+20x4, +22,5x3, +25x2 Klimmzüge", "pull_up 4 +20; pull_up 3 +22.5; pull_up 2 +25")
say("Handstandliegestütze 4x3 an der Wand", "handstand_push_up 4x3")
say("Beinheben 3x12 hängend", "hanging_leg_raise 3x12")
say("Face Pulls 3x15 17,5 kg, Außenrotation 2x12 pro Seite 3 kg", "face_pull 3x15 +17.5; external_rotation 2x12 LR +3")
say("Bulgarische Kniebeuge 3x10 je Bein mit 12kg, Pistols 3x5 je Seite", "split_squat 3x10 LR +12; pistol_squat 3x5 LR")
say("Klimmzug 3x5 + 22.5 pfund", "pull_up 3x5 +22.5lb")
# Anstrengung
say("Klimmzüge 4x3 +25 RPE 8", "pull_up 4x3 +25 last@8")
say("Dips 3x8 +10, 2 im Tank beim letzten", "dip 3x8 +10 last@8")
say("Klimmzüge 3x6, letzter Satz bis zum Versagen", "pull_up 3x6 last@10")
say("Chins 4x4 +15 alle rpe 7", "chin_up 4x4 +15 @7")
say("Dips 4x6 +20. war zäh", "dip 4x6 +20")
say("Klimmzüge 3x5 +10, Dips 3x8. Training insgesamt RPE 7, 50 Minuten", "pull_up 3x5 +10; dip 3x8", srpe=7, mins=50)
say("4x5 Klimmzüge +10, eine wär beim letzten Satz noch drin gewesen", "pull_up 4x5 +10 last@9")
say(
    "Klimmzüge 5x3 +20 RPE 7-8",
    "pull_up 5x3 +20",
    ask="rpe: RPE 7-8",
    sets_or=("pull_up 5x3 +20 last@7.5",),
    also=({"ask": []},),
)
# Seiten, Halten, Umfang
say("einarmig hängen links 20 s, rechts 25 s", "one_arm_hang L 20s; one_arm_hang R 25s")
say("Archer Klimmzüge 3x4 pro Seite", "archer_pull_up 3x4 LR")
say("einarmiger Klimmzug rechts 1, links 0 (knapp)", "one_arm_pull_up R 1; one_arm_pull_up L 0 fail")
say("Seilzug mit 7,5 kg Entlastung, einarmig, 3x2 pro Arm", "one_arm_counterweight 3x2 LR -7.5")
say("Aushängen 60 Sek und 45 Sek", "dead_hang 60s,45s")
say("Toter Hang 1 Minute", "dead_hang 60s")
say("L-Sitz 4x10 sek", "l_sit 4x10s")
say("Tuck Planche 5x6s, Planche Lean 3x20s", "tuck_planche 5x6s; planche_lean 3x20s")
say("Handstand frei 10s 15s 22s", "handstand_hold 10s,15s,22s")
say("Straddle Front Lever 4x5 Sekunden", "straddle_front_lever 4x5s")
say("oben halten, Kinn über der Stange, 2x20 Sekunden", "pull_up_top_hold 2x20s")
say("Negative Klimmzüge 4x2 mit +30", "pull_up 4x2 +30 ecc")
say("negative einarmige Chins 3x1 je Arm", "one_arm_chin_up 3x1 LR ecc")
say("obere Hälfte Klimmzüge 3x5 +25", "pull_up 3x5 +25 upper")
say("untere Hälfte Dips 3x6", "dip 3x6 lower")
say("halbe Klimmzüge 3x5 +20", "pull_up 3x5 +20 rom?", ask="rom: halbe")
say("Klimmzüge mit Pause oben 4x3 +10", "pull_up 4x3 +10 top")
say("Klimmzüge +45 ein Versuch, nicht geschafft", "pull_up 0 +45 fail")
say("Klimmzüge 3,3 und im dritten Satz beim dritten gescheitert, +25", "pull_up 3,3 +25; pull_up 2 +25 fail")
say("Cluster Klimmzüge +30: 2+2+1", "pull_up 2 +30; pull_up 2 +30 link; pull_up 1 +30 link")
say("Klimmzüge mit Band 3x6, grünes Band", "band_pull_up 3x6")
# Plan
say("erledigt", "pull_up 4x4 +20", today=MAIN)
say(
    "alles wie vorgegeben, Schluss war ne 9",
    "pull_up 4x4 +20 last@9",
    today=MAIN,
    sets_or=("pull_up 4x4 +20",),
    also=({"session_rpe": 9},),
)
say("gemacht, aber mit 17,5 statt 20", "pull_up 4x4 +17.5", today=MAIN)
say("4 4 3 3", "pull_up 4,4,3,3 +20", today=MAIN)
say("nur 3 Sätze geschafft, Kind abgeholt", "pull_up 3x4 +20", today=MAIN)
say("Klimmzüge nach Plan, Dips ausgelassen", "pull_up 4x4 +15", today=TWO)
say("alles gemacht, Dips waren aber nur 8 7 6", "pull_up 4x4 +15; dip 8,7,6 +10", today=TWO)
say(
    "links wie geplant, rechts beim letzten nur 1",
    "one_arm_counterweight -10 L 2,2,2; one_arm_counterweight -10 R 2,2,1",
    today=PULLEY,
)
say("passt, alles geschafft, 45min, Ellbogen 0", "pull_up 4x4 +15; dip 3x8 +10", mins=45, pain="elbow - 0", today=TWO)
# Schmerz und Zeichen
say("Ellbogen links innen 3/10", pain="elbow_inner L 3")
say("Schulter tut weh, so 4 von 10, rechts beim Drücken", pain="shoulder R 4 during")
say("beide Handgelenke 2/10", pain="wrist L 2; wrist R 2")
say("keine Schmerzen", pain="- - 0")
say("unterer Rücken 2 nach dem Training", pain="lower_back - 2 after")
say("Knie rechts morgens 3/10", pain="knee R 3 morning")
say("hat im rechten Ellbogen geknackt und ist jetzt dick", pain="elbow R -", flags="pop swelling")
say(
    "Finger kribbeln nach dem Hängen, linke Hand",
    pain="hand L - after",
    pain_or=("hand L -",),
    flags="numbness",
    maybe="report",
)
say("kleiner Finger ist taub", pain="hand - -", flags="numbness")
say("bin nachts aufgewacht wegen der linken Schulter", pain="shoulder L - rest", flags="night_pain")
say("mir wurde nach dem letzten Satz schwarz vor Augen", flags="dizziness", maybe="report")
say(
    "Druck auf der Brust und keine Luft mehr bekommen beim Training",
    pain="chest - - during",
    pain_or=("chest - -", ""),
    flags="chest_pain breathless",
    maybe="report",
)
say("Fieber seit gestern, 38,5", does="ill", flags="fever", dates="2027-02-16..")
say("linker Arm plötzlich ganz schwach, konnte das Glas nicht halten", pain="other L -", flags="sudden_weakness")
say("Knie blockiert beim Strecken", pain="knee - -", flags="locking", pain_or=("knee - - during",))
say("blauer Fleck am Bizeps links, keine Ahnung woher", pain="biceps L -", flags="bruising")
say("nichts geschwollen, nichts taub, Ellbogen 1/10", pain="elbow - 1")
say("Mein Bruder hat Fieber, ich nicht. Klimmzüge 3x5", "pull_up 3x5")
say("das hat geknallt heute, Klimmzüge 5x3 +30 💥", "pull_up 5x3 +30")
say("letztes Jahr war die Schulter mal geschwollen, heute alles gut. Dips 3x8", "dip 3x8")
# Körper
say("wiege 72,4", bw=72.4)
say("Gewicht 70,9 kg, 7h geschlafen", bw=70.9, sleep=7)
say("nur 5 Stunden geschlafen", does="report", sleep=5)
say("Schlaf 6:30, Klimmzüge 3x5 +10, 40 min", "pull_up 3x5 +10", sleep=6.5, mins=40)
# Tage und Wünsche
say("gestern Dips 4x6 +20", "dip 4x6 +20", on="2027-02-16")
say("Montag Klimmzüge 3x5, Dienstag Dips 3x8", "pull_up 3x5 on=2027-02-15; dip 3x8 on=2027-02-16")
say("vorgestern Ringrudern 3x15", "ring_row 3x15", on="2027-02-15")
say("am 14.2. Klimmzüge 3x3 +30", "pull_up 3x3 +30", on="2027-02-14")
say("was muss ich heute machen?", does="plan_today", dates_or=("2027-02-17",))
say("wie sieht meine woche aus", does="plan_week")
say("warum weniger Gewicht diesmal?", does="why")
say("werd ich eigentlich stärker?", does="progress")
say("kann ich morgen auf Freitag verschieben?", does="move", dates="2027-02-18..2027-02-19")
say("gestern nicht trainiert, sorry", does="missed", dates="2027-02-16")
say("heute schaff ich's nicht, mach ich morgen", does="move", dates="2027-02-17..2027-02-18", does_or=("move missed",))
say("bin von Freitag bis Sonntag weg", does="away", dates="2027-02-19..2027-02-21")
say(
    "ab 1. März zwei Wochen Urlaub ohne Stange",
    does="away equipment",
    dates="2027-03-01..2027-03-14",
    dates_or=("2027-03-01..2027-03-15", "2027-03-01.."),
    does_or=("away",),
)
say("bin krank, melde mich", does="ill", dates="2027-02-17..")
say("wieder gesund, weiter gehts", does="resume")
say("bitte Pause bis 28.2.", does="pause", dates="2027-02-17..2027-02-28")
say("keine Nachrichten mehr bitte", does="stop")
say("Hilfe", does="help")
say("sag dem Coach ich schick das Video später", does="for_coach")
say("das letzte bitte löschen", does="undo")
say("Korrektur: es waren 22,5 statt 20", fix=("load_kg", 20, 22.5), on=None)
say("letzter Satz waren 4 nicht 5", fix=("reps", 5, 4, None, None, "last"), on=None)
say("Studio hat zu, hab nur Ringe daheim", does="equipment")
say("danke dir!", does="smalltalk")
say("haha der Hund hat mir beim Handstand das Gesicht abgeschleckt", does="smalltalk")
say("xkcdf", does="unknown")
# Nachfragen
say("Dips 20", "dip ? +?", ask="reps: 20", sets_or=("",))
say(
    "Klimmzüge 4x5 @9",
    "pull_up 4x5 +?",
    ask="load_kg: @9",
    sets_or=("", "pull_up 4x5", "pull_up 4x5 last@9", "pull_up 4x5 +? last@9"),
)
say("Klimmzüge 5x3 +225", "pull_up 5x3 +?", ask="load_kg: +225", sets_or=("",))
say("Front Lever 4x8s", "_ 4x8s", ask="movement: Front Lever", sets_or=("",))
say("wie immer", does="report", ask="sets: wie immer", does_or=("unknown",), on_or=(None,))
say(
    "ein paar Klimmzüge gemacht",
    does="report",
    ask="sets: ein paar",
    does_or=("smalltalk", "unknown"),
    also=({"intents": ["smalltalk"], "performed_on": None, "ask": []},),
)
say(
    "Sonntag 10 km gelaufen, heute Chins 3x6",
    "chin_up 3x6",
    unread=("10 km gelaufen",),
    maybe_unread=("Sonntag 10 km gelaufen",),
)
# Gemischt
say(
    "Klimmzüge 4x4 +20 letzter RPE 8, Ellbogen links 1/10, Gewicht 71, geschlafen 8h. "
    "Kann ich Freitag auf Samstag schieben?",
    "pull_up 4x4 +20 last@8",
    does="move",
    pain="elbow L 1",
    bw=71,
    sleep=8,
    dates="2027-02-19..2027-02-20",
)
say(
    "Wie geplant gemacht. Montag hab ich verpasst wegen Zahnarzt. Sag bitte dem Trainer Bescheid",
    "pull_up 4x4 +20",
    does="missed for_coach",
    today=MAIN,
    dates="2027-02-15",
)
say(
    "Dips 3x8 +10, danach Handgelenk rechts geschwollen 4/10. Warum eigentlich keine Klimmzüge heute?",
    "dip 3x8 +10",
    does="why",
    pain="wrist R 4 after",
    pain_or=("wrist R 4",),
    flags="swelling",
)
