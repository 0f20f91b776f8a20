"""Plans, days, pain, signs, wishes and corrections in German."""

from tests.corpus.lines import Theme

THEME = Theme("rest", "de")
say = THEME.say

MAIN = "m/weighted_pull_up pull_up 5x3 +22.5 @8"
WITH_DIPS = "w scapular_pull_up 2x8; m/weighted_pull_up pull_up 4x4 +20 @8; a dip 3x6 +15 @8"
ARM = "s/hand_on_biceps one_arm_hand_on_biceps LR 2x2 @8; m/weighted_pull_up pull_up 4x3 +25 @8"
BER = "Europe/Berlin"
WED = {"at": "2027-03-10 12:00", "tz": BER}
DAY = {**WED, "dates_or": ("2027-03-10",)}

# Plan
say("erledigt", "pull_up 5x3 +22.5", today=MAIN)
say("alles wie geplant ✅", "scapular_pull_up 2x8; pull_up 4x4 +20; dip 3x6 +15", today=WITH_DIPS)
say("fertig, letzter Satz @9", "pull_up 4x3 +22.5; pull_up 3 +22.5 @9", today=MAIN)
say("nur 4 von 5 Sätzen geschafft", "pull_up 4x3 +22.5", today=MAIN)
say("wie geplant, aber mit 25 statt 22,5", "pull_up 5x3 +25", today=MAIN)
say("Dips weggelassen, Rest nach Plan", "scapular_pull_up 2x8; pull_up 4x4 +20", today=WITH_DIPS)
say("Klimmzüge nach Plan, Dips 6,6,5", "pull_up 4x4 +20; dip 6,6,5 +15", today=WITH_DIPS)
say(
    "alles gemacht, Einheit RPE 7, 60 Minuten",
    "scapular_pull_up 2x8; pull_up 4x4 +20; dip 3x6 +15",
    srpe=7,
    mins=60,
    today=WITH_DIPS,
)
say("3,3,3,2,2", "pull_up 3,3,3,2,2 +22.5", today=MAIN)
say("die 3er mit 20 gemacht", "pull_up 5x3 +20", today=MAIN)
say(
    "links wie geplant, rechts immer nur 1, Klimmzüge alle",
    "one_arm_hand_on_biceps L 2,2; one_arm_hand_on_biceps R 1,1; pull_up 4x3 +25",
    today=ARM,
)
say(
    "einarmig 2/2 und 2/1, Klimmzüge passen",
    "one_arm_hand_on_biceps LR 2/2; one_arm_hand_on_biceps LR 2/1; pull_up 4x3 +25",
    today=ARM,
)
say("eine Wiederholung mehr bei jedem Satz", "pull_up 5x4 +22.5", today=MAIN)
say("nach zwei Sätzen abgebrochen", "pull_up 2x3 +22.5", today=MAIN)
say("gestern schon alles gemacht", "pull_up 5x3 +22.5", on="2027-03-09", today=MAIN, **WED)
say("passt, 2 in Reserve am Schluss", "pull_up 4x3 +22.5; pull_up 3 +22.5 @8", today=MAIN)
say("mach ich heute Abend", "", "smalltalk", does_or=("unknown",), today=MAIN, **WED)
# Days
say("gestern Dips 3x8", "dip 3x8", on="2027-03-09", **WED)
say("am Montag Klimmzüge 4x5", "pull_up 4x5", on="2027-03-08", **WED)
say("vorgestern Klimmzüge 3x3 +25", "pull_up 3x3 +25", on="2027-03-08", **WED)
say("am 3. Klimmzüge 5x3 +20", "pull_up 5x3 +20", on="2027-03-03", **WED)
say("Freitag: Handstand 3x30s", "handstand_hold 3x30s", on="2027-03-05", **WED)
say("28.02. Klimmzüge 5x5", "pull_up 5x5", on="2027-02-28", **WED)
say("Mo Klimmzüge 5x3 +20, Di Dips 4x6 +15", "pull_up 5x3 +20 on=2027-03-08; dip 4x6 +15 on=2027-03-09", **WED)
say("grad heim vom Training, Klimmzüge 4x4", "pull_up 4x4", on="2027-03-09", at="2027-03-10 01:10", tz=BER)
say("zu Silvester noch Klimmzüge 10x2 gemacht", "pull_up 10x2", on="2027-12-31", at="2028-01-02 12:00", tz=BER)
say("letzte Woche mal Klimmzüge 5x3 +20", "pull_up 5x3 +20", on=None, ask="performed_on: letzte Woche", **WED)
say("heute früh vor der Arbeit Liegestütze 3x25", "push_up 3x25", **WED)
# Body
say("Gewicht 74,3", bw=74.3, body=74.0)
say("73,8 kg heute früh auf der Waage", bw=73.8, body=74.0)
say("wiege 74, geschlafen 7 Stunden", bw=74, sleep=7, body=74.0)
say("7,5 Stunden Schlaf", "", "report", sleep=7.5, on_or=(None,))
say("Gewicht 743", "", "bodyweight", ask="bodyweight_kg: 743", body=74.0)
say("schlecht geschlafen, 5h, Klimmzüge 4x4", "pull_up 4x4", sleep=5)
# Pain
say("keine Schmerzen", pain="- - 0")
say("Ellbogen 3", pain="elbow - 3")
say("linker Ellenbogen innen 2/10 beim Ziehen", pain="elbow_inner L 2 during")
say("Ellbogen außen rechts 4, auch in Ruhe", pain="elbow_outer R 4 rest")
say("beide Ellbogen 2", pain="elbow L 2; elbow R 2")
say(
    "Schulter links 3/10 danach, Handgelenk 1",
    pain="shoulder L 3 after; wrist - 1",
    pain_or=("shoulder L 3 after; wrist - 1 after",),
)
say("heute morgen Ellbogen 1", pain="elbow - 1 morning")
say("2 während, 0 danach", pain="- - 2 during; - - 0 after")
say("Klimmzüge 5x3 +20, Ellbogen rechts 2/10", "pull_up 5x3 +20", pain="elbow R 2")
say("unterer Rücken 4 nach den Kniebeugen", pain="lower_back - 4 after")
say("Knie tut weh", pain="knee - -")
say("Ellbogen 2-3", pain="elbow - 3")
say("Dips 3x8, schmerzfrei", "dip 3x8", pain="- - 0")
# Signs
say("im rechten Bizeps hat es geknallt", pain="biceps R -", flags="pop")
say("Ellbogen links ist dick geschwollen", pain="elbow L -", flags="swelling")
say("riesiger Bluterguss am rechten Oberarm, einfach so", pain="biceps R -", flags="bruising", pain_or=("other R -",))
say("kleiner Finger links taub", pain="hand L -", flags="numbness")
say("Kribbeln in der rechten Hand beim Hängen", pain="hand R - during", flags="numbness")
say("Schulter weckt mich jede Nacht", pain="shoulder - - rest", flags="night_pain", pain_or=("shoulder - -",))
say("Stechen in der Brust beim letzten Satz", pain="chest - - during", flags="chest_pain", maybe="report")
say("hab kaum Luft gekriegt nach den Dips", flags="breathless", maybe="report")
say("mir wurde schwarz vor Augen", flags="dizziness")
say("rechtes Knie blockiert, geht nicht mehr gerade", pain="knee R -", flags="locking")
say("39 Fieber seit gestern", "", "ill", flags="fever", dates="2027-03-09..", **WED)
say("plötzlich keine Kraft mehr in der linken Hand", pain="hand L -", flags="sudden_weakness")
say("Ellbogen 2/10, nicht geschwollen, kein blauer Fleck", pain="elbow - 2")
say("kein Schwindel diesmal, Handstand 3x30s", "handstand_hold 3x30s")
say("Angst, dass was reißt. Klimmzüge 3x3 +30", "pull_up 3x3 +30")
say(
    "vor zwei Jahren hats in der Schulter geknackt, jetzt Dips 3x8 ohne Probleme",
    "dip 3x8",
    maybe="pain",
    pain_or=("shoulder - 0", "- - 0"),
)
say("meine Tochter hat Fieber, heute kein Training", "", "missed", dates="2027-03-10", **WED)
say("knallharte Einheit, Klimmzüge 6x4", "pull_up 6x4")
# Wishes
for text in ("Was steht heute an?", "was mach ich heut", "Plan für heute bitte"):
    say(text, "", "plan_today", **DAY)
for text in ("Zeig mir die Woche", "wie schaut die Woche aus?"):
    say(text, "", "plan_week", **{**WED, "dates_or": ("2027-03-08..2027-03-14", "2027-03-10..2027-03-14")})
for text in ("Warum weniger Gewicht?", "wieso nur 2 Sätze heute?"):
    say(text, "", "why", **DAY)
for text in ("Wie steh ich da?", "zeig mir meinen Fortschritt", "werd ich stärker?"):
    say(text, "", "progress")
say("kann ich morgen statt heute trainieren?", "", "move", dates="2027-03-10..2027-03-11", **WED)
say("Freitag auf Samstag verschieben bitte", "", "move", dates="2027-03-12..2027-03-13", **WED)
say("gestern nicht trainiert, zu viel Arbeit", "", "missed", dates="2027-03-09", **WED)
say("heute fällt aus", "", "missed", dates="2027-03-10", **WED)
say("bin von Freitag bis Sonntag weg", "", "away", dates="2027-03-12..2027-03-14", **WED)
say("Urlaub 1. bis 10. April, nur Ringe dabei", "", "away equipment", dates="2027-04-01..2027-04-10", **WED)
say("erkältet seit Montag", "", "ill", dates="2027-03-08..", **WED)
say("bin krank", "", "ill", dates="2027-03-10..", dates_or=("",), **WED)
say("meine Klimmzugstange ist kaputt", "", "equipment")
say("Sag dem Coach danke für letzte Woche", "", "for_coach")
say("kann der Trainer mich anrufen?", "", "for_coach")
say("Plan pausieren bis 1. Mai bitte", "", "pause", dates="2027-03-10..2027-05-01", **WED)
for text in ("bin wieder da", "kann weitergehen", "wieder gesund, los gehts"):
    say(text, "", "resume", **WED)
for text in ("Stopp, keine Nachrichten mehr", "bitte nicht mehr schreiben", "STOPP"):
    say(text, "", "stop")
for text in ("Hilfe", "was kann ich dir schreiben?", "wie funktioniert das hier?"):
    say(text, "", "help")
for text in ("danke dir!", "guten Morgen", "haha ok", "bis morgen"):
    say(text, "", "smalltalk", does_or=("unknown",))
say(
    "Klimmzüge 4x4 +20, was kommt morgen?",
    "pull_up 4x4 +20",
    "plan_today",
    does_or=("report plan_week",),
    **{**WED, "dates_or": ("2027-03-11",)},
)
say(
    "erledigt, Gewicht 74,1, Ellbogen 1, warum eigentlich so leicht?",
    "pull_up 5x3 +22.5",
    "why",
    bw=74.1,
    pain="elbow - 1",
    today=MAIN,
    body=74.0,
)
# Mends
say("waren 22,5 statt 20", on=None, fix=("load_kg", 20, 22.5))
say("der letzte Satz Dips waren 5, nicht 6", on=None, fix=("reps", 6, 5, "dip", None, "last"))
say(
    "Korrektur: Untergriff, nicht Obergriff",
    on=None,
    fix=("movement", "pull_up", "chin_up"),
    also=(
        {
            "correction": {
                "field": "movement",
                "was": "pull_up",
                "now": "chin_up",
                "movement": "pull_up",
                "side": None,
                "which": "all",
            }
        },
    ),
)
say("dritter Satz war 4 statt 5", on=None, fix=("reps", 5, 4, None, None, 3))
say("vertippt, RPE 9 nicht 8 beim letzten Satz", on=None, fix=("rpe", 8, 9, None, None, "last"))
say("letzte Nachricht bitte löschen", "", "undo")
say("vergiss das, falscher Chat", "", "undo")
