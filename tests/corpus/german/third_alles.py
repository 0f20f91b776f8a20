"""A third look, written blind: a dozen German-speaking voices, from Hamburg to Bern."""

from typing import Any

from tests.corpus import notation
from tests.corpus.lines import Theme, asks

THEME = Theme("third", "de")


def say(text: str, sets: str = "", does: str = "", **more: Any) -> None:
    """A message sent on a Thursday evening unless it says otherwise."""
    THEME.say(text, sets, does, **({"at": "2027-06-10 19:12", "tz": "Europe/Vienna"} | more))


def asked(words: str, sets: str = "", **more: Any) -> dict[str, Any]:
    """An alternative that asks back and leaves the sets as open as that."""
    return {"ask": asks(words), "sets": notation.sets(sets)} | more


HEAVY = "w scapular_pull_up 2x8; m/weighted_pull_up pull_up 5x3 +25 @8"
VOLUME = "m/weighted_pull_up pull_up 4x6 +12.5 @7; a dip 3x10 +5; a face_pull 2x15 +15"
CHINS = "m/weighted_pull_up chin_up 4x4 +20 @8"
SHOULDER = "s/archer_shoulder archer_ring_shoulder 2x2 LR @7; m/weighted_pull_up chin_up 4x4 +20 @8"
BICEPS = "s/hand_on_biceps one_arm_hand_on_biceps 2x3 LR lower @7"
LEVER = "s/advanced_tuck_front_lever advanced_tuck_front_lever 4x8s @7; a hollow_hold 3x30s"
PLANCHE = "s/tuck_planche tuck_planche 5x10s @7; a push_up 3x15"
CLUSTER = "pull_up 2 +35; pull_up 1 +35 link; pull_up 1 +35 link;"

# Jonas spart Buchstaben
say("KZ 5x3 +22,5", "pull_up 5x3 +22.5", also=(asked("movement: KZ", "_ 5x3 +22.5"),))
say("Chins +15: 5 5 4 4", "chin_up 5,5,4,4 +15", at="2027-03-02 18:20", tz="Europe/Berlin")
say("Dips +30x3x4 Sätze", "dip 4x3 +30", lang=None)
say("KH-Rudern 3x10/Seite 26kg", "row 3x10 LR +26")
say("MU 5x1, dann 2 vergeigt", "muscle_up 5x1; muscle_up 0,0 fail")
say("Klimmz. 3x3@27,5 2x2@30 RPE 9", "pull_up 3x3 +27.5; pull_up 2x2 +30 last@9", at="2027-04-08 06:40")
say("Dips 6@20@7 6@22,5@8 4@25@9", "dip 6 +20 @7; dip 6 +22.5 @8; dip 4 +25 @9")
say("FL adv tuck 4x7s, straddle 3x3s", "advanced_tuck_front_lever 4x7s; straddle_front_lever 3x3s")
say("HSPU 4/4/3 an der Wand", "handstand_push_up 4,4,3")
say("Klimmzug Max-Test: 40 ✓ 45 ✓ 47,5 ✗", "pull_up 1 +40; pull_up 1 +45; pull_up 0 +47.5 fail")
say("ohne Gewicht 12/10/9 Klimmzüge, 8:30 Uhr, nüchtern", "pull_up 12,10,9")
# Resi aus Wien
say("heit Klimmzüg 4 moi 5 mit 10 Kilo, da letzte Satz woa hoat", "pull_up 4x5 +10", lang="de-AT")
say("hab 3 Sätze Dips gmacht, 10, 9 und 7, mehr is heut net gangen", "dip 10,9,7", sets_or=("dip 10,9,7 last@10",))
say(
    "bin um dreiviertel sieben im Park gwesn, 5 Dreier Klimmzüge mit der 20er Scheibn",
    "pull_up 5x3 +20",
    lang="de-AT",
)
say("Ringrudern 3x12, danach 4 Krügerl mit der Partie", "ring_row 3x12")
say(
    "einarmig mit der Hand am Bizeps: zerst links 2, rechts 2, dann links 1 und rechts 2",
    "one_arm_hand_on_biceps L 2; one_arm_hand_on_biceps R 2; one_arm_hand_on_biceps L 1; one_arm_hand_on_biceps R 2",
)
say("Liegestütz 25, 22, 18. Da Bua (4 Jahr) hat mitgezählt, bis 100", "push_up 25,22,18", lang="de-AT")
say("Klimmzüge hab i 3x6 gmacht, na wart, 3x5 warns. mit 7,5", "pull_up 3x5 +7.5")
# Beat aus Bern
say(
    "Hüt am Morge 4x4 Chlimmzüg +17.5, letschte Satz RPE 8",
    "pull_up 4x4 +17.5 last@8",
    lang="de-CH",
    tz="Europe/Zurich",
)
say(
    "Liegestütze 3x20, danach Handstand an der Wand 40s, 35s, 35s. Mit dem Velo 12 km heim",
    "push_up 3x20; handstand_hold 40s,35s,35s",
    tz="Europe/Zurich",
    maybe_unread=("Mit dem Velo 12 km heim",),
)
say("Dips am Barren 5x5 mit 16 Kilo, immer schön unten 1 Sek. gestoppt", "dip 5x5 +16 bottom", lang="de-CH")
say(
    "einarmig hange, je zweimal: linggs 22 Sek, rächts 25 Sek",
    "one_arm_hang 22s,22s L; one_arm_hang 25s,25s R",
    lang="de-CH",
    tz="Europe/Zurich",
)
say("5x2 Klimmzüge mit 32.5, die letzten zwei Sätze gross gelitten", "pull_up 5x2 +32.5", tz="Europe/Zurich")
say("Bin 45 geworden und habe 45 Liegestütze am Stück gemacht 🎂", "push_up 45", tz="Europe/Zurich")
say("Aushängen 3 x 1 min.", "dead_hang 3x60s", lang="de-CH")
# Mehmet tippt schnell
say("klimmzuge 5x5 +10kg . dipps 3x8 +15 kg . fertich", "pull_up 5x5 +10; dip 3x8 +15", tz="Europe/Berlin")
say("klimzüge 4satze 6wdh ohne gewicht bro", "pull_up 4x6")
say("untergrif 8 8 7 , letste satz war nix mehr übrig", "chin_up 8,8,7 last@10", lang=None)
say("lat zug 4x12 mit 55, bizeps curl 3x12 mit 14 er hantel", "lat_pulldown 4x12 +55; biceps_curl 3x12 +14")
say("mein bruder hat 25 klimmzuge geschaft ich nur 14 🙈", "pull_up 14")
say("wolte 5x5 machen hab aber nur 3x5 dips mit 20 geschaft", "dip 3x5 +20")
say(
    "heute beinetag kniebeuge 5x5 100kg , bulgarische 3x8 pro bein 20kg , kreuzheben 1x5 140kg",
    "squat 5x5 +100; split_squat 3x8 LR +20",
    unread=("kreuzheben 1x5 140kg",),
    ask_or="movement: kreuzheben",
)
say("klimmzuge 20 dann 15 dann 12 dann 10", "pull_up 20,15,12,10")
say(
    "ring dips 3x5 +5 , klimzug am ring 3x6 , alle sätze rpe7",
    "ring_dip 3x5 +5 @7; ring_pull_up 3x6 @7",
    sets_or=("ring_dip 3x5 +5; ring_pull_up 3x6 @7",),
)
# Frauke diktiert
say(
    "also ich habe heute Klimmzüge gemacht und zwar fünf Sätze mit jeweils drei Wiederholungen "
    "und dabei zweiundzwanzigeinhalb Kilo am Gürtel gehabt",
    "pull_up 5x3 +22.5",
    tz="Europe/Berlin",
)
say(
    "Moin zuerst zweimal acht Schulterblattklimmzüge danach vier Sätze Klimmzüge zu je vier mit siebzehneinhalb Kilo "
    "und zum Schluss zwei Minuten hängen in einem Stück",
    "scapular_pull_up 2x8; pull_up 4x4 +17.5; dead_hang 120s",
)
say(
    "Dips erster Satz zehn zweiter Satz neun dritter Satz acht ohne Zusatzgewicht das hat eine Stunde gedauert",
    "dip 10,9,8",
    mins=60,
)
say(
    "im Neutralgriff vier mal fünf mit zwölf Komma fünf Kilo beim letzten Satz hätte ich noch zwei geschafft",
    "neutral_grip_pull_up 4x5 +12.5 last@8",
)
say(
    "Ich war heute bei meiner Tochter im zweiten Stock und habe da am Türreck sechs Klimmzüge "
    "und dann noch mal fünf gemacht",
    "pull_up 6,5",
)
say(
    "einarmiges Hängen links achtzehn Sekunden rechts zwanzig Sekunden und das Ganze zweimal",
    "one_arm_hang L 18s,18s; one_arm_hang R 20s,20s",
)
say(
    "Kniebeugen ohne Gewicht drei mal zwanzig danach Pistols je Seite vier und noch mal je Seite vier",
    "squat 3x20; pistol_squat 2x4 LR",
)
say(
    "gestern Abend vier Sätze Liegestütze die ersten drei mit zwanzig und der letzte mit siebzehn Stück",
    "push_up 20,20,20,17",
    on="2027-06-09",
)
# Uli, Ingenieur
say(
    "Klimmzüge (Obergriff)\n1) 5 x +15\n2) 5 x +17,5\n3) 4 x +20 (RPE 8,5)",
    "pull_up 5 +15; pull_up 5 +17.5; pull_up 4 +20 @8.5",
    at="2027-08-24 21:05",
)
say(
    "Dips\nSatz 1: 6 Wdh. / 20 kg / RPE 7\nSatz 2: 6 Wdh. / 20 kg / RPE 7,5\nSatz 3: 5 Wdh. / 20 kg / RPE 9",
    "dip 6 +20 @7; dip 6 +20 @7.5; dip 5 +20 @9",
)
say(
    "Einarmig mit Gegengewicht 12,5 kg: 2x3 je Arm; mit 10 kg: 1x2 je Arm; mit 7,5 kg: links 1, rechts Fehlversuch",
    "one_arm_counterweight 2x3 LR -12.5; one_arm_counterweight 2 LR -10; "
    "one_arm_counterweight 1 L -7.5; one_arm_counterweight 0 R -7.5 fail",
)
say(
    "Cluster 4 x (2+1+1) Klimmzüge mit 35 kg, 15 s zwischen den Teilen, 3 min zwischen den Clustern",
    CLUSTER * 4,
    maybe_unread=("15 s zwischen den Teilen", "3 min zwischen den Clustern"),
)
say("Pyramide Dips ohne Zusatz: 2-4-6-8-6-4-2 = 34", "dip 2,4,6,8,6,4,2")
say("Klimmzug-Leiter 1-2-3-4, drei Durchgänge", "pull_up 1,2,3,4,1,2,3,4,1,2,3,4")
say(
    "Negativ-Klimmzüge 3 x 3 mit +40 kg, jeweils 5 s ablassen. Puls max. 162",
    "pull_up 3x3 +40 ecc",
    maybe_unread=("5 s ablassen", "Puls max. 162"),
)
say("Klimmzüge 4x3 +10 mit Stopp oben, in der Mitte und unten", "pull_up 4x3 +10 top middle bottom")
say(
    "Klimmzüge mit dem Band, das 20 kg abnimmt: 3x6. Danach mit dem dünnen Band 2x4",
    "band_pull_up 3x6 -20; band_pull_up 2x4",
)
say(
    "Klimmzüge, nur obere Hälfte, 3x5 +30 kg; nur untere Hälfte 2x5 +20 kg",
    "pull_up 3x5 +30 upper; pull_up 2x5 +20 lower",
)
say("Insgesamt 60 Dips in 6 Sätzen, Verteilung nicht notiert", "dip 6x?", ask="reps: 60 Dips in 6 Sätzen")
say(
    "Klimmzüge 3x5 +12,5, Tempo 3-1-1, 2,5 min Pause",
    "pull_up 3x5 +12.5",
    maybe_unread=("Tempo 3-1-1", "2,5 min Pause"),
)
# Kim mischt
say("weighted pullups top set 2 @ 40 RPE 9, dann backoff 4x3 @ 32,5", "pull_up 2 +40 @9; pull_up 4x3 +32.5")
say("Dips bw: 3x8, letzter Satz dann AMRAP: 11!", "dip 8,8,8,11", sets_or=("dip 8,8,11",))
say(
    "ring muscle ups 3x2, one arm hang 2x20s e/s, L-sit 3x20s, feeling pumped 🔥",
    "ring_muscle_up 3x2; one_arm_hang 2x20s LR; l_sit 3x20s",
)
say("Superset 3 Runden: 6 Chins + 10 Pushups", "chin_up 6; push_up 10; chin_up 6; push_up 10; chin_up 6; push_up 10")
say(
    "Drop Set Pullups: 5 mit +20, direkt 4 mit +10, direkt 6 ohne",
    "pull_up 5 +20; pull_up 4 +10 link; pull_up 6 link",
)
say("Rest-Pause Chins +10: 6+2+2", "chin_up 6 +10; chin_up 2 +10 link; chin_up 2 +10 link")
say(
    "EMOM 8 min, jede Minute 2 Muscle Ups",
    "muscle_up 8x2",
    also=(asked("sets: EMOM 8 min", "muscle_up 2"), asked("sets: EMOM 8 min")),
    maybe_unread=("EMOM 8 min",),
)
say(
    "OAC negatives 2x1 je Arm, schön slow, danach 1x Foam Roller Folter",
    "one_arm_chin_up 2x1 LR ecc",
    maybe_unread=("1x Foam Roller Folter",),
)
say("pullups 3x8 bw @8 💪", "pull_up 3x8 last@8")
say("weighted dips 3x5 +45", "dip 3x5 +45lb", unit="lb")
say("chins 5x3 +25# geliehene Scheiben aus den USA", "chin_up 5x3 +25lb")
# Basti
say("Servus, heid 3x5 Dips mid 25 kg, passt scho", "dip 3x5 +25", tz="Europe/Berlin")
say("Klimmzüg bis zum Versagen: 16", "pull_up 16 @10")
say(
    "De Archer-Klimmzüge links 4 rechts 5, dann no amoi links 4 rechts 4",
    "archer_pull_up 4 L; archer_pull_up 5 R; archer_pull_up 4 L; archer_pull_up 4 R",
)
say("2 Maß Bier, Klimmzüge 3x4 +15. Reihenfolge verrat i ned", "pull_up 3x4 +15", maybe_unread=("2 Maß",))
say("Beinheben hängend 12, 10, 8 und nachad Hollow Hold 3x25s", "hanging_leg_raise 12,10,8; hollow_hold 3x25s")
# Steffi schickt nach
say(
    "Mo: Dips 3x8 +5. Mi: Klimmzüge 4x5 +7,5. Heute nur Face Pulls 3x15 mit 12,5",
    "dip 3x8 +5 on=2027-06-07; pull_up 4x5 +7.5 on=2027-06-09; face_pull 3x15 +12.5 on=2027-06-10",
)
say(
    "am Dienstag hatte ich 3x6 Chin-ups, hab's vergessen zu schicken, 3 Kinder, 2 davon mit Läusen",
    "chin_up 3x6",
    on="2027-06-08",
)
say(
    "Samstag 4x4 +10 Klimmzüge und gestern 4x4 mit 12,5",
    "pull_up 4x4 +10 on=2027-06-05; pull_up 4x4 +12.5 on=2027-06-09",
)
say("vorgestern um 22 Uhr noch schnell 3x10 Liegestütze", "push_up 3x10", on="2027-06-08")
say("so, Kinder endlich im Bett. heute Dips 4x6 +10", "dip 4x6 +10", at="2027-06-11 00:40")
say("gestern 3x5 klimmzüge, jetzt erst daheim", "pull_up 3x5", at="2027-06-11 02:15", on="2027-06-10")
# Wünsche, Geschichte, andere
say("nächste Woche will ich die 30 packen. heute Klimmzüge 3x3 mit 25", "pull_up 3x3 +25")
say("hätte gern 5x5 gemacht, wurden dann 5, 4 und 4 Dips", "dip 5,4,4")
say(
    "morgen mach ich 5x3 Klimmzüge mit 20",
    does="smalltalk",
    does_or=("unknown",),
    maybe_unread=("5x3 Klimmzüge mit 20",),
)
say("vor zwei Jahren noch Dips 3x10 mit 40, heute 3x6 mit 10. Das Alter (52)!", "dip 3x6 +10")
say("mein Trainingspartner zieht +50, ich heute 4x3 +20 Klimmzüge", "pull_up 4x3 +20")
say("keine Klimmzüge heute, nur Außenrotation 2x15 je Seite mit 3 kg", "external_rotation 2x15 LR +3")
say("Klimmzüge 3x5, erst mit 10, dann 15, dann 20", "pull_up 5 +10; pull_up 5 +15; pull_up 5 +20")
say("Klimmzüge +20 4,4 und beim dritten Satz das vierte nicht mehr hochgekommen", "pull_up 4,4 +20; pull_up 3 +20 fail")
# Plan
say("✅", "scapular_pull_up 2x8; pull_up 5x3 +25", today=HEAVY)
say(
    "alles wie geplant, nur die letzten beiden Sätze Klimmzüge waren 2er",
    "scapular_pull_up 2x8; pull_up 3,3,3,2,2 +25",
    today=HEAVY,
)
say("Aufwärmen ausgelassen, Rest passt", "pull_up 5x3 +25", today=HEAVY)
say(
    "Hab bei den Klimmzügen 27,5 genommen, sonst wie auf dem Zettel",
    "scapular_pull_up 2x8; pull_up 5x3 +27.5",
    today=HEAVY,
)
say("Klimmzüge 6 6 5 5, Rest nach Plan", "pull_up 6,6,5,5 +12.5; dip 3x10 +5; face_pull 2x15 +15", today=VOLUME)
say("alles gemacht bis auf die Face Pulls, 50 min", "pull_up 4x6 +12.5; dip 3x10 +5", mins=50, today=VOLUME)
say("5x3 mit 25, Ende", "pull_up 5x3 +25", today=HEAVY)
say(
    "Dips ohne Gewicht, weil Gürtel vergessen, sonst alles so gemacht",
    "pull_up 4x6 +12.5; dip 3x10; face_pull 2x15 +15",
    today=VOLUME,
    maybe="equipment",
)
say(
    "links 3 und 3 wie geplant, rechts nur 2 und 1",
    "one_arm_hand_on_biceps 3,3 L lower; one_arm_hand_on_biceps 2,1 R lower",
    today=BICEPS,
)
say(
    "Archer 2x2 je Seite, die Chin-ups 4x4 mit 22,5 statt 20",
    "archer_ring_shoulder 2x2 LR; chin_up 4x4 +22.5",
    today=SHOULDER,
)
say("geschafft, aber die Hollows nur 25 sek", "advanced_tuck_front_lever 4x8s; hollow_hold 3x25s", today=LEVER)
say("6x4 Klimmzüge mit 12,5 abgehakt", "pull_up 4x6 +12.5", today=VOLUME)
say("jeder Satz eine Wdh mehr als auf dem Plan", "chin_up 4x5 +20", today=CHINS)
say("nach 2 Sätzen abgebrochen, Hagel, 3 cm groß", "chin_up 2x4 +20", today=CHINS)
say("Plan erledigt, alle Sätze RPE 8", "chin_up 4x4 +20 @8", today=CHINS)
say(
    "Alles nach Plan. Halt nein, den letzten Satz Klimmzüge hab ich weggelassen",
    "scapular_pull_up 2x8; pull_up 4x3 +25",
    today=HEAVY,
)
say("hab alles gemacht, nur mit 2,5 weniger", "chin_up 4x4 +17.5", today=CHINS)
say(
    "gemacht wie geplant, 4x4 mit 30",
    "chin_up 4x4 +30",
    today=CHINS,
    also=(asked("load_kg: 30", "chin_up 4x4 +?"),),
)
say("Planche 5x8s, Liegestütz wie geplant", "tuck_planche 5x8s; push_up 3x15", today=PLANCHE)
say("die 4er warn heut zach, 4 4 3 3", "chin_up 4,4,3,3 +20", today=CHINS)
say(
    "nix vom Plan heute, dafür Ringrudern 3x10",
    "ring_row 3x10",
    today=HEAVY,
    maybe="missed",
    dates_or=("2027-06-10",),
)
# Nachfragen
say("Klimmzüge 12", "pull_up ? +?", ask="reps: 12")
say("Chins 7,5", "chin_up ? +?", ask="load_kg: 7,5")
say("Planche 4x8 Sekunden", "_ 4x8s", ask="movement: Planche")
say("Archer 3x3 pro Seite", "_ 3x3 LR", ask="movement: Archer")
say("3x5 mit 20", "_ 3x5 +20", ask="movement: 3x5 mit 20")
say("Klimmzüge 3x6-8 mit 10", "pull_up 3x? +10", ask="reps: 6-8")
say("Dips 4x8 @9", "dip 4x8 +?", ask="load_kg: @9", sets_or=("dip 4x8", "dip 4x8 last@9", "dip 4x8 +? last@9"))
say("Klimmzüge 5x3 mit 220 kg", "pull_up 5x3 +?", ask="load_kg: 220 kg")
say(
    "einarmige Klimmzüge: 2 mit dem einen und 1 mit dem anderen Arm",
    "one_arm_pull_up 2; one_arm_pull_up 1",
    ask="side: mit dem einen und 1 mit dem anderen Arm",
)
say("letzte Woche irgendwann 3x8 Dips gemacht", "dip 3x8", on=None, ask="performed_on: letzte Woche irgendwann")
say("halbe Dips 3x8", "dip 3x8 rom?", ask="rom: halbe")
say("Chins 4x5 +15, Anstrengung durchgehend zwischen 7 und 9", "chin_up 4x5 +15", ask="rpe: zwischen 7 und 9")
say(
    "wie letztes Mal, nur ein Satz mehr",
    does="report",
    ask="sets: wie letztes Mal",
    does_or=("unknown",),
    on_or=(None,),
)
say("Gewicht heute 7,2", does="bodyweight", ask="bodyweight_kg: 7,2")
# Schmerz
say("rechter Ellbogen außen 2-3 von 10", pain="elbow_outer R 3", at="2027-11-18 20:31")
say("Bizepssehne links zwickt, 2/10", pain="biceps L 2")
say(
    "Handgelenk links 4/10 beim Handstand, rechts 0",
    pain="wrist L 4 during; wrist R 0",
    pain_or=("wrist L 4 during; wrist R 0 during",),
)
say("beide Schultern 1/10 heut früh", pain="shoulder L 1 morning; shoulder R 1 morning")
say("tuat nix weh", pain="- - 0", lang="de-AT")
say("4", pain="- - 4")
say("2 beim Training, heute früh 1", pain="- - 2 during; - - 1 morning")
say(
    "Unterer Rücken 2/10 in Ruhe, Hüfte nix",
    pain="lower_back - 2 rest; hip - 0",
    pain_or=("lower_back - 2 rest; hip - 0 rest",),
)
say("Knie li. 3, Knie re. 1", pain="knee L 3; knee R 1")
say("linkes Sprunggelenk umgeknickt, 5/10, 3 Stufen übersehen", pain="ankle L 5")
say(
    "der Physio (60 Euro die halbe Stunde!) sagt Golferellbogen rechts, ich sag 3/10",
    pain="elbow_inner R 3",
    pain_or=("elbow R 3",),
)
# Zeichen
say(
    "Beim zweiten Satz Dips hat's in der rechten Brust geknallt",
    pain="chest R - during",
    pain_or=("chest R -",),
    flags="pop",
    maybe="report",
)
say(
    "linker Ringfinger steht schief weg seit dem Sturz", pain="hand L -", flags="deformity", pain_or=("hand L - after",)
)
say("die ganze rechte Hand kribbelt seit 2 Stunden", pain="hand R -", flags="numbness")
say("heut nacht dreimal wach worden vor Schulterweh rechts", pain="shoulder R - rest", flags="night_pain")
say("beim Handstand is mir schwarz vor Augen wordn", flags="dizziness", maybe="report")
say("Knie links lässt sich nicht mehr strecken, ist blockiert", pain="knee L -", flags="locking")
say("seit gestern 39 Fieber und Schüttelfrost", does="ill", flags="fever", dates="2027-06-09..")
say(
    "Stechen in der Brust beim Treppensteigen in den 3. Stock und krieg kaum Luft",
    pain="chest - -",
    pain_or=("chest - - during",),
    flags="chest_pain breathless",
)
say("Bluterguss am rechten Oberarm, handtellergroß", pain="other R -", flags="bruising", pain_or=("biceps R -",))
say(
    "rechte Hand plötzlich ohne Kraft, 1 Flasche fallen lassen",
    pain="hand R -",
    flags="sudden_weakness",
)
say("Ellbogen 2/10 links, nichts dick, nichts blau, nichts taub", pain="elbow L 2")
say("Liegestütze 3x15. Bei den Benzinpreisen (2,30!) bleibt einem ja die Luft weg", "push_up 3x15")
say("das ist doch Schwindel mit dem Gürtel für 89 Euro 😂", does="smalltalk")
say("2019 ist mir mal die Bizepssehne gerissen, hat laut geknallt. heute Chins 3x5", "chin_up 3x5")
say(
    "mein Papa hat Brustschmerzen, bin mit ihm im Krankenhaus, mein Training heute fällt aus",
    does="missed",
    dates="2027-06-10",
)
say("hab Schiss, dass mir beim Maxversuch was reißt, heute lieber Klimmzüge 3x3 +20", "pull_up 3x3 +20")
say("beim Landeanflug hat's im Ohr geploppt, danach Klimmzüge 4x4 ohne Gewicht", "pull_up 4x4")
# Körper, Schlaf, Dauer
say("78,3 heute früh auf der Waage", bw=78.3, body=78.5)
say("5 h geschlafen, Baby zahnt", does="report", sleep=5)
say("Schlaf 7:45, Gewicht unverändert 71", bw=71, sleep=7.75)
say("Einheit war ne 6/10, 40 Minuten", srpe=6, mins=40)
say("Dips 3x8, Klimmzüge 3x5. anderthalb Stunden, Anstrengung gesamt 8", "dip 3x8; pull_up 3x5", srpe=8, mins=90)
say("von 18:10 bis 19:05 trainiert: Dips 4x8", "dip 4x8")
say("weight 171 heute morgen", bw=171 * notation.KG_PER_LB, unit="lb", body=77)
# Tage
say("kann ich die Einheit von morgen auf Sonntag legen?", does="move", dates="2027-06-11..2027-06-13")
say("Dienstag und Mittwoch ausgefallen, Elternabend und Zahnarzt", does="missed", dates="2027-06-08..2027-06-09")
say("heute wird das nichts mehr, Zug steht seit 3 Stunden in Fulda", does="missed", dates="2027-06-10")
say(
    "bin 14. bis 20.6. in Portugal, 4 Leute, 1 Wohnmobil, keine Stange",
    does="away equipment",
    dates="2027-06-14..2027-06-20",
)
say(
    "ab Samstag eine Woche weg",
    does="away",
    dates="2027-06-12..2027-06-18",
    dates_or=("2027-06-12..2027-06-19", "2027-06-12.."),
)
say(
    "bin auf Montage, am 25. wieder da",
    does="away",
    dates="2027-06-10..2027-06-24",
    dates_or=("2027-06-11..2027-06-24",),
)
say("krank, mindestens bis Sonntag", does="ill", dates="2027-06-10..2027-06-13", dates_or=("2027-06-10..",))
say("Magen-Darm seit Dienstag", does="ill", dates="2027-06-08..")
say("Pause bis 1. Juli bitte, Umzug in den 4. Stock", does="pause", dates="2027-06-10..2027-07-01")
say("wieder fit, kann losgehen", does="resume")
say("schaff ich heute nicht, mach ich Samstag", does="move", dates="2027-06-10..2027-06-12", does_or=("move missed",))
say(
    "heute nicht geschafft, ich machs morgen",
    does="move missed",
    does_or=("move", "missed"),
    at="2027-06-11 01:30",
    dates="2027-06-10..",
    dates_or=("", "2027-06-10"),
    ask="dates: morgen",
)
# Berichtigen
say("Korrektur zu gestern: die Dips waren mit 12,5, nicht 15", fix=("load_kg", 15, 12.5, "dip"), on="2027-06-09")
say("hab mich vertippt, 5 statt 6 beim zweiten Satz Klimmzüge", fix=("reps", 6, 5, "pull_up", None, 2))
say("der letzte Satz war RPE 9, nicht 8", fix=("rpe", 8, 9, None, None, "last"))
say(
    "Korrektur: Klimmzüge heute waren 4x4 mit 17,5 statt 15",
    "pull_up 4x4 +17.5",
    fix=("load_kg", 15, 17.5, "pull_up"),
    on="2027-06-10",
    maybe="report",
)
say("vergiss die letzte Nachricht, war für meine Frau", does="undo")
# Fragen und Rest
say("was liegt heut an?", does="plan_today", dates_or=("2027-06-10",))
say("schick mir bitte die Wochenübersicht", does="plan_week")
say("Weshalb nur 2 Sätze Archer diese Woche?", does="why")
say("wie nah bin ich am Einarmigen?", does="progress")
say("was verstehst du eigentlich alles?", does="help")
say("kann mich der Trainer mal anrufen, nach 18 Uhr?", does="for_coach")
say("hab die nächsten Tage nur eine Weste mit 10 kg, keine Scheiben", does="equipment")
say("bitte abmelden, keine Nachrichten mehr", does="stop")
say("Guten Morgen! 31 Grad hier ☀️", does="smalltalk", at="2027-07-05 07:10")
say("🐙🐙🐙", does="unknown", does_or=("smalltalk",))
# Gemischt
say(
    "Klimmzüge 5x3 +25, letzter Satz RPE 8. Ellbogen links innen 1/10. Was steht morgen an?",
    "pull_up 5x3 +25 last@8",
    does="plan_week",
    does_or=("plan_today",),
    pain="elbow_inner L 1",
    dates_or=("2027-06-11",),
)
say(
    "Plan erledigt in 55 min, Gewicht 74,2. Samstag bitte auf Sonntag schieben, Taufe",
    "chin_up 4x4 +20",
    does="move",
    mins=55,
    bw=74.2,
    dates="2027-06-12..2027-06-13",
    today=CHINS,
)
say(
    "zurück aus dem Urlaub, 2 Wochen, 3 kg mehr auf den Rippen. gleich Klimmzüge 4x5 ohne alles, keine Schmerzen",
    "pull_up 4x5",
    does="resume",
    does_or=("",),
    pain="- - 0",
    pain_or=("- - 0 during",),
)
say(
    "Dips 3x8 +10. danach Schulter rechts 4/10 und sie ist geschwollen. sag das bitte dem Coach",
    "dip 3x8 +10",
    does="for_coach",
    pain="shoulder R 4 after",
    flags="swelling",
    pain_or=("shoulder R 4",),
)
say(
    "6,5h geschlafen, Klimmzüge 4x4 +15 und 10 km Radl zum See. Warum diese Woche weniger Gewicht?",
    "pull_up 4x4 +15",
    does="why",
    sleep=6.5,
    unread=("10 km Radl",),
    also=({"unread": []},),
)
