"""Ein sechster Blick, blind geschrieben: Zahlen, die nicht sind, wonach sie aussehen, Verneinung und lange Reden."""

from typing import Any

from tests.corpus import notation
from tests.corpus.lines import Theme, asks

THEME = Theme("sixth-alles", "de")


def say(text: str, sets: str = "", does: str = "", **more: Any) -> None:
    """A message sent on a Thursday evening unless it says otherwise."""
    THEME.say(text, sets, does, **({"at": "2027-04-22 19:10", "tz": "Europe/Vienna"} | more))


def asked(words: str, sets: str = "", **more: Any) -> dict[str, Any]:
    """An alternative that asks back and leaves the sets as open as that."""
    return {"ask": asks(words), "sets": notation.sets(sets)} | more


KRAFT = "w scapular_pull_up 2x8; m/weighted_pull_up pull_up 5x3 +22.5 @8; a face_pull 3x15 +15"
SECHSER = "m/weighted_pull_up pull_up 4x6 +12.5 @7; a dip 3x8 +15 @8"
CHIN = "m chin_up 4x4 +17.5 @8"
FUENF = "m chin_up 5x4 +15 @8"
ZUG = "s/counterweight one_arm_counterweight 2x2 LR -7.5 @7; m chin_up 4x4 +17.5 @8"
LEVER = "s/advanced_tuck_front_lever advanced_tuck_front_lever 5x8s @8; a hanging_leg_raise 3x10"
BIZEPS = "s/hand_on_biceps one_arm_hand_on_biceps 2x2 LR lower @7"

# Was gemacht wurde.
say("Klimmzüge mit 22,5 kg 5x3, haben sich angefühlt wie 15", "pull_up 5x3 +22.5")
say("Untergriff drei Fünfer mit zehn Kilo", "chin_up 3x5 +10")
say(
    "Klimmzüge: ein Satz mit 8, einer mit 7 und zum Schluss noch 5, alles ohne Gewicht",
    "pull_up 8,7,5",
)
say(
    "Erst 2x5 mit 10, dann 3x3 mit 20 und ganz am Schluss eine Einzelne mit 30. Klimmzüge natürlich",
    "pull_up 2x5 +10; pull_up 3x3 +20; pull_up 1 +30",
)
say(
    "einarmiger Klimmzug: links sauber einer, rechts auf halbem Weg hängen geblieben",
    "one_arm_pull_up 1 L; one_arm_pull_up 0 R fail",
)
say(
    "Am Seilzug einarmig, Gegengewicht 6,25: li 3/2/2, re 2/2/1",
    "one_arm_counterweight 3,2,2 L -6.25; one_arm_counterweight 2,2,1 R -6.25",
)
say(
    "Archer Pull-ups links/rechts: 5/4, 4/4, 4/3",
    "archer_pull_up 5/4 LR; archer_pull_up 4/4 LR; archer_pull_up 4/3 LR",
)
say("Aushängen 1:30, dann 1:10", "dead_hang 90s,70s")
say(
    "L-Sitz am Barren 3 mal 12 sek, danach Front Lever mit einem Bein gestreckt 2x6s pro Bein",
    "l_sit 3x12s; one_leg_front_lever 2x6s LR",
)
say("Dips mit der 16er Kugel dran 4x6", "dip 4x6 +16")
say("Bulgarische 3x8 pro Bein, Kurzhanteln à 12 kg", "split_squat 3x8 LR +12")
say("Band-Klimmzüge mit dem grünen 3x8, danach mit dem roten 2x5", "band_pull_up 3x8; band_pull_up 2x5")
say("Klimmzüge mit Bandhilfe, ca. 20 Kilo Entlastung, 4x5", "band_pull_up 4x5 -20")
say(
    "3x3 Klimmis mit +25 und jedes Mal zwei Sekunden oben gehalten",
    "pull_up 3x3 +25 top",
    maybe_unread=("zwei Sekunden",),
)
say(
    "Negative an einem Arm, Handfläche zu mir, 2x1 je Arm, 8 Sekunden runter",
    "one_arm_chin_up 2x1 LR ecc",
    maybe_unread=("8 Sekunden runter",),
)
say(
    "Handstandliegestütze 3, 3 und beim dritten Satz die dritte nicht mehr hochgedrückt",
    "handstand_push_up 3,3; handstand_push_up 2 fail",
)
say("Fünf Einzelversuche Muscle-up, drei oben, zwei nicht", "muscle_up 3x1; muscle_up 2x0 fail")
say(
    "Cluster Klimmzüge mit 32,5: 1+1+1+1 mit 15 Sek. Luftholen, das Ganze zweimal",
    "pull_up 1 +32.5; pull_up 1,1,1 +32.5 link; pull_up 1 +32.5; pull_up 1,1,1 +32.5 link",
    maybe_unread=("15 Sek. Luftholen",),
)
say(
    "Dropsatz Dips: 6 mit 20, gleich weiter 5 mit 10, dann ohne alles bis zum Versagen, waren noch 7",
    "dip 6 +20; dip 5 +10 link; dip 7 @10 link",
)
say("Leiter von 1 bis 5, Klimmzüge, zweimal durch", "pull_up 1,2,3,4,5; pull_up 1,2,3,4,5")
say(
    "jede Minute 3 Dips, zwölf Minuten lang",
    "dip 12x3",
    also=(asked("sets: zwölf Minuten lang", "dip 3"), asked("sets: zwölf Minuten lang")),
    maybe_unread=("zwölf Minuten lang",),
)
say(
    "Rest-Pause Untergriff bw: 9, nach 15 s noch 3, nach 15 s noch 2",
    "chin_up 9; chin_up 3,2 link",
    maybe_unread=("15 s",),
)
say("Chin-ups 4x5 +10, erster Satz RPE 6, letzter RPE 9", "chin_up 5 +10 @6; chin_up 2x5 +10; chin_up 5 +10 @9")
say("Klimmzüge 3x4 +20, RPE 7 / 7,5 / 9", "pull_up 4 +20 @7; pull_up 4 +20 @7.5; pull_up 4 +20 @9")
say("Klimmzüge 5x2 +30, RIR 2 bei allen", "pull_up 5x2 +30 @8")
say("Dips 4x4 +20, der letzte war fast bis zum Versagen", "dip 4x4 +20")
say("Klimmzüge 3x AMRAP ohne Gewicht: 12, 9, 8", "pull_up 12,9,8")
say("Anstrengung heute 7 von 10. Klimmzüge 4x3 +25 und Dips 3x6 +20", "pull_up 4x3 +25; dip 3x6 +20", srpe=7)
say("hab heut nach der Hackn 4x5 Chins gmacht, mit dem 7,5er Scheiberl", "chin_up 4x5 +7.5", lang="de-AT")
say("klimzuge 3x6 +12,5kg . dan noch lieghestüzen 2x25", "pull_up 3x6 +12.5; push_up 2x25")

# Zahlen von gestern, vom Plan, von anderen.
say("Letzte Woche noch 5x3 mit 20, heute schon 5x3 mit 22,5, Klimmzüge", "pull_up 5x3 +22.5")
say("Mein Bruder macht 4x8 Dips mit 30 Kilo, ich bin froh über 3x8 ohne", "dip 3x8")
say("Ziel wären irgendwann +50, heute waren's bei den Klimmzügen 3x2 mit 35", "pull_up 3x2 +35")
say("Beim nächsten Mal will ich 25 probieren. Heute 4x4 mit 22,5, Klimmzüge", "pull_up 4x4 +22.5")
say("Eigentlich standen 5 Sätze an, gemacht hab ich 4, je drei Klimmzüge mit 20", "pull_up 4x3 +20")
say("Klimmzüge 3x5 mit 12,5, Quatsch, mit 17,5", "pull_up 3x5 +17.5")
say("Ich dachte, ich hätte 20 dran, es waren aber zwei 7,5er Scheiben, also 15. Dips 4x5", "dip 4x5 +15")
say("Dips 3x10, Griffe 3 cm zu breit, 2 Hunde haben zugeschaut, 1 hat gebellt", "dip 3x10")
say("Werde morgen 42 und hab heute zum Üben 42 Liegestütz gemacht, in einem Rutsch", "push_up 42")
say("Meine Kollegin wiegt 58 und zieht 8 am Stück, bei mir waren's heute 9 Klimmzüge", "pull_up 9")
say("Von den Klimmzügen hab ich heute keinen einzigen gemacht, nur Dips 3x8", "dip 3x8", maybe="missed")
say(
    "ein Satz Klimmzüge mit 20, vier sind gegangen, beim fünften hing ich mit der Stirn an der Stange",
    "pull_up 4 +20 fail",
)
say(
    "morgen versuch ich 3x3 mit 30, wünsch mir Glück",
    does="smalltalk",
    does_or=("unknown",),
    maybe_unread=("3x3 mit 30",),
)
say("der Coach hat 4x6 geschrieben, ich hab 5x6 gemacht, Klimmzüge mit 10, war im Flow", "pull_up 5x6 +10")

# Rückfragen.
say("Klimmzüge 3x8 oder 4x8, weiß nimmer, mit 5 Kilo", "pull_up ? +5", does="report", ask="sets: 3x8 oder 4x8")
say(
    "Chin-ups 5x5 @8",
    "chin_up 5x5 +?",
    ask="load_kg: @8",
    sets_or=("chin_up 5x5", "chin_up 5x5 last@8", "chin_up 5x5 +? last@8"),
)
say(
    "hab die Zweier mit 30 gemacht",
    does="report",
    ask="movement: hab die Zweier mit 30 gemacht",
    sets_or=("_ 2 +30",),
)
say("Hebel heute 4x7 Sekunden", "_ 4x7s", ask="movement: Hebel")
say("Klimmzüge 4x4 mit 15 oder 17,5, die Scheiben waren unbeschriftet", "pull_up 4x4 +?", ask="load_kg: 15 oder 17,5")
say("neulich noch Muscle-ups 4x2, ganz vergessen zu melden", "muscle_up 4x2", on=None, ask="performed_on: neulich")
say("Gewicht heute 7,68", does="bodyweight", ask="bodyweight_kg: 7,68")
say(
    "einarmig mit der Hand am Bizeps: eine Seite 3, die andere 2",
    "one_arm_hand_on_biceps 3,2",
    ask="side: eine Seite 3, die andere 2",
)

# Nach Plan.
say("so, durch. die Face Pulls hab ich mir geschenkt", "scapular_pull_up 2x8; pull_up 5x3 +22.5", today=KRAFT)
say("alles bis auf die Dips, da war die Station belegt", "pull_up 4x6 +12.5", today=SECHSER)
say(
    "Plan abgearbeitet, nur hab ich statt 22,5 bloß 20 drangehängt",
    "scapular_pull_up 2x8; pull_up 5x3 +20; face_pull 3x15 +15",
    today=KRAFT,
)
say("6 6 5 5 und die Dips nach Plan", "pull_up 6,6,5,5 +12.5; dip 3x8 +15", today=SECHSER)
say(
    "rechts alles wie am Zettel, links im zweiten Satz die zweite nicht geschafft. Chins auch erledigt",
    "one_arm_counterweight 2 LR -7.5; one_arm_counterweight 1 L -7.5 fail; one_arm_counterweight 2 R -7.5; "
    "chin_up 4x4 +17.5",
    today=ZUG,
)
say(
    "alles gemacht, hat 50 Minuten gedauert statt der üblichen 70",
    "scapular_pull_up 2x8; pull_up 5x3 +22.5; face_pull 3x15 +15",
    mins=50,
    today=KRAFT,
)
say("wie geplant, alles @7,5", "chin_up 4x4 +17.5 @7.5", today=CHIN)
say("gemacht, für die letzten zwei Sätze musste ich auf 15 runter", "chin_up 2x4 +17.5; chin_up 2x4 +15", today=CHIN)
say(
    "Halten 8 8 7 6 5, Beinheben wie vorgegeben",
    "advanced_tuck_front_lever 8s,8s,7s,6s,5s; hanging_leg_raise 3x10",
    today=LEVER,
)
say("heute nicht nach Plan: statt der Klimmzüge Latzug 3x8 mit 60", "lat_pulldown 3x8 +60", today=KRAFT, maybe="missed")
say(
    "wie geplant, 4x5 mit 17,5",
    "chin_up 4x5 +17.5",
    today=CHIN,
    also=(asked("reps: 4x5"), asked("reps: 4x5", "chin_up 4x? +17.5"), asked("sets: 4x5")),
)
say(
    "links 2 und 2, rechts 2 und mit Ach und Krach eine",
    "one_arm_hand_on_biceps 2 LR lower; one_arm_hand_on_biceps 2/1 LR lower",
    today=BIZEPS,
)

# Mehrere Tage.
say(
    "Montag 5x3 Klimmzüge +20, gestern Dips 4x6 +15, heute Ruhetag",
    "pull_up 5x3 +20 on=2027-04-19; dip 4x6 +15 on=2027-04-21",
)
say(
    "Am Sonntag Klimmzüge 4x4 +20, am Dienstag Dips 3x8 +10 und gestern war ich nur spazieren",
    "pull_up 4x4 +20 on=2027-04-18; dip 3x8 +10 on=2027-04-20",
)
say("bin seit einer halben Stunde daheim, Chins 3x6 +10", "chin_up 3x6 +10", at="2027-04-23 00:45", on="2027-04-22")

# Schmerz und Zeichen.
say(
    "Ellbogen innen links: beim Training 3, danach 1, heute früh 0",
    pain="elbow_inner L 3 during; elbow_inner L 1 after; elbow_inner L 0 morning",
)
say("Schulter rechts letzte Woche noch 5, inzwischen 1", pain="shoulder R 1")
say("tut eigentlich nirgends mehr was weh", pain="- - 0")
say("Knie zwickt a bisserl beim Pistol, links, vielleicht 2", pain="knee L 2 during")
say("zwischen den Schulterblättern 2, sonst beschwerdefrei", pain="upper_back - 2")
say("Golferellbogen meldet sich wieder, rechts, 3-4 nach dem Training", pain="elbow_inner R 4 after")
say(
    "beim dritten Klimmzug hat's in der linken Schulter laut geschnalzt, hab sofort aufgehört",
    pain="shoulder L - during",
    pain_or=("shoulder L -",),
    flags="pop",
    maybe="report",
)
say("kein Knacks, nix dick, nur ein Ziehen im Bizeps rechts, 2", pain="biceps R 2")
say(
    "hab heut Nacht kein Auge zugetan vor lauter Ellbogenschmerzen links",
    pain="elbow L - rest",
    pain_or=("elbow L -",),
    flags="night_pain",
)
say(
    "mein Vater hatte Samstag Herzstechen, deshalb war ich im Spital und nicht beim Training",
    does="missed",
    dates="2027-04-17",
)
say("hab geschnauft wie eine Dampflok, aber die Dips 5x5 +20 stehen", "dip 5x5 +20")
say(
    "Knie rechts lässt sich in der Früh nicht ganz durchstrecken, wie verhakt",
    pain="knee R - morning",
    flags="locking",
)
say("nach dem letzten Satz ist mir kurz schwarz vor Augen geworden", flags="dizziness", maybe="report")
say("vor zwei Jahren war die Schulter ausgekugelt, heute damit 3x8 Dips", "dip 3x8")

# Körper, Schlaf, Dauer.
say("Waage sagt 82,4, gestern noch 83,1", bw=82.4, body=83)
say(
    "von halb sechs bis dreiviertel sieben, also 75 Minuten: Chins 5x5 ohne Gewicht",
    "chin_up 5x5",
    mins=75,
)
say("mit Aufwärmen und Quatschen anderthalb Stunden, die Einheit war 6 von 10", srpe=6, mins=90)

# Tage.
say("Kann ich die Samstagseinheit auf morgen vorziehen?", does="move", dates="2027-04-24..2027-04-23")
say(
    "Halbmarathon gestern, 21 km in 1:52. Heute keine Kraft in den Beinen, Training fällt aus",
    does="missed",
    dates="2027-04-22",
    unread=("21 km in 1:52",),
)
say(
    "38,9 seit gestern Abend, lieg nur rum mit Fieber",
    does="ill",
    flags="fever",
    dates="2027-04-21..",
)
say("Bachelorarbeit, setz mich bitte bis 10. Mai auf Pause", does="pause", dates="2027-04-22..2027-05-10")
say("Von Freitag bis Sonntag auf Hüttentour", does="away", dates="2027-04-23..2027-04-25")
say("nimm mich bitte aus dem Verteiler, ich will keine Nachrichten mehr", does="stop")

# Berichtigen, fragen, reden.
say("beim zweiten Satz Dips waren's 7, nicht 8", fix=("reps", 8, 7, "dip", None, 2))
say("Kommando zurück: gestern waren 17,5 dran, nicht 20", fix=("load_kg", 20, 17.5), on="2027-04-21")
say("links waren es nur 2, nicht 3, hab mich vertippt", fix=("reps", 3, 2, None, "left"))
say("streich die Meldung von vorhin, war Blödsinn", does="undo")
say("Könnte der Coach bitte mal auf mein Video von gestern schauen?", does="for_coach")
say("Warum krieg ich schon wieder einen Deload?", does="why")
say("hat sich bei den Dips seit Jänner was getan?", does="progress")
say("Wieviel soll ich heut dranhängen?", does="plan_today", dates_or=("2027-04-22",))
say("Hab heut drei Stück Torte gegessen, zählt das als Zusatzgewicht? 😄", does="smalltalk")
say("in der neuen Halle gibt's Scheiben nur in 5er-Schritten", does="equipment")

# Lange Reden.
say(
    "Also, der Reihe nach. Aufgewärmt mit 2x10 Schulterblattklimmzügen, dann Topsatz Klimmzüge 3 mit 32,5 bei RPE 9. "
    "Danach wollte ich 4x3 mit 27,5, nach dem dritten Satz hat's aber gereicht. Zum Schluss Dips 12, 10 und 8 ohne "
    "Gewicht.",
    "scapular_pull_up 2x10; pull_up 3 +32.5 @9; pull_up 3x3 +27.5; dip 12,10,8",
)
say(
    "Gestern war ich im Studio von meinem Schwager. Der hängt sich 40 Kilo an und macht fünf, ich hab mit 25 "
    "angefangen "
    "und drei geschafft. Dann noch zwei Sätze zu vier mit 20. Alles Klimmzüge im Obergriff.",
    "pull_up 3 +25; pull_up 2x4 +20",
    on="2027-04-21",
)
say(
    "Geschlafen wie ein Stein, 8 Stunden. Auf der Waage 79,2. Dann Chins 4x4 mit 17,5, der letzte Satz war eine 9. "
    "Das Knie tut gar nicht mehr weh.",
    "chin_up 4x4 +17.5 last@9",
    sleep=8,
    bw=79.2,
    body=79,
    pain="knee - 0",
)
say(
    "Heute Test. Klimmzug mit 45 ging, 50 ging auch, 52,5 nicht. Letztes Jahr um die Zeit waren's 40. Bin happy.",
    "pull_up 1 +45; pull_up 1 +50; pull_up 0 +52.5 fail",
)
say(
    "Heute einarmig am Flaschenzug. Mit 10 kg Gegengewicht links 3 und rechts 3, mit 7,5 links 2, rechts 1. "
    "Die 5 hab ich gar nicht erst versucht.",
    "one_arm_counterweight 3 LR -10; one_arm_counterweight 2/1 LR -7.5",
)
say(
    "Die Schulter rechts macht mir Sorgen. Bei den Dips war's eine 4. Geschwollen ist nichts und Kraft hab ich auch. "
    "Frag bitte den Coach, ob ich am Samstag drücken darf.",
    does="for_coach",
    pain="shoulder R 4 during",
)
say(
    "Montag bis Mittwoch ausgefallen wegen Messe. Heute dafür in der Halle: Klimmzüge 5x3 mit 20, letzter @8. "
    "Ringdips 3x8. Insgesamt knapp eine Stunde.",
    "pull_up 5x3 +20 last@8; ring_dip 3x8",
    does="missed",
    dates="2027-04-19..2027-04-21",
    mins=60,
)
say(
    "Klimmzüge heute zum ersten Mal mit der neuen Weste, 8 Kilo, die alte hatte 5. Vier Sätze, jeweils sechs. "
    "Im letzten hätte ich noch zwei im Tank gehabt.",
    "pull_up 4x6 +8 last@8",
    maybe="equipment",
)
say(
    "ja hallo also heute hab ich zuerst mal ausgehängt eine Minute und dann fünfzig Sekunden und danach die Klimmzüge "
    "vier Sätze zu drei mit siebzehneinhalb Kilo und am Ende noch Handstand an der Wand vierzig Sekunden",
    "dead_hang 60s,50s; pull_up 4x3 +17.5; handstand_hold 40s",
)
say(
    "Zwei Sachen. Erstens stimmt der Eintrag von gestern nicht, die Dips waren mit 15 und nicht mit 25. "
    "Zweitens heute Klimmzüge 4x4 mit 20.",
    "pull_up 4x4 +20",
    does="report",
    fix=("load_kg", 25, 15, "dip"),
    on="2027-04-22",
    on_or=("2027-04-21",),
)
say(
    "Der Donnerstag nächste Woche geht nicht, da ist Betriebsausflug. Können wir den auf Freitag legen, so ab 17 Uhr? "
    "Heute übrigens 4x8 Dips ohne was.",
    "dip 4x8",
    does="move",
    dates="2027-04-29..2027-04-30",
    maybe="missed",
)
say(
    "Meine Tochter (9) hat heute ihren ersten Klimmzug geschafft!! Ich war so abgelenkt, dass ich nur 3 von meinen "
    "5 Sätzen gemacht hab. Morgen gibt's Kuchen.",
    "chin_up 3x4 +15",
    today=FUENF,
)
say(
    "Hatte heute Angst, dass der Ellbogen wieder dick wird wie im Februar. Ist er nicht geworden. "
    "Klimmzüge 5x3 mit 20, jeder Satz RPE 7. Nächstes Mal trau ich mich an 22,5.",
    "pull_up 5x3 +20 @7",
    pain_or=("elbow - 0",),
    maybe="pain",
)
say(
    "Zug fällt aus, Training fällt aus, Laune fällt auch aus. Ich mach's morgen, gleich nach der Arbeit. "
    "Gewicht heute früh war 75,0, falls es wen interessiert.",
    does="move",
    does_or=("move missed bodyweight",),
    dates="2027-04-22..2027-04-23",
    bw=75,
    body=75.4,
)
say(
    "Seit heute Mittag kribbelt's mir im kleinen Finger rechts. Bei den Klimmzügen vorhin, 4x3 mit 25, war noch alles "
    "normal. Weh tut nichts.",
    "pull_up 4x3 +25",
    pain="hand R 0",
    pain_or=("hand R -; - - 0", "hand R -"),
    flags="numbness",
)
say(
    "Sali zäme, hüt isch mer nöd so gloffe. 3x4 Chlimmzüg mit 10 Kilo, meh isch nöd gange. D Schultere tuet nöd weh.",
    "pull_up 3x4 +10",
    sets_or=("pull_up 3x4 +10 last@10",),
    pain="shoulder - 0",
    tz="Europe/Zurich",
    lang="de-CH",
)
say(
    "Heut warn Beine dran. Kniebeugen 1x8 mit 60 zum Warmwerden, dann 3x5 mit 90, Bulgarians 2x10 pro Bein ohne "
    "Gewicht. "
    "Kreuzheben wollte ich auch, hab ich aber gelassen. 1h10 alles in allem.",
    "squat 8 +60; squat 3x5 +90; split_squat 2x10 LR",
    mins=70,
)
say(
    "Wollte nur sagen, dass mir die Einheit heute echt getaugt hat. RPE insgesamt vielleicht 6. Wie lang, keine "
    "Ahnung, "
    "die Uhr war leer. Klimmzüge 4x5 +10, Beinheben im Hang 3x12.",
    "pull_up 4x5 +10; hanging_leg_raise 3x12",
    srpe=6,
)
say(
    "Ich hab letzte Woche geschrieben, dass ich vom 1. bis 9. Mai nicht da bin. Jetzt wird's doch erst der 3. bis "
    "9. Mai. Stange gibt's dort, Scheiben keine.",
    does="away equipment",
    dates="2027-05-03..2027-05-09",
    maybe="correction",
)
say(
    "Servus! War kurz heute, weil der Kleine krank ist. Klimmzüge 3x5 mit 15 hab ich geschafft, die Dips hab ich sein "
    "lassen. Ellbogen links 1/10.",
    "pull_up 3x5 +15",
    pain="elbow L 1",
)
