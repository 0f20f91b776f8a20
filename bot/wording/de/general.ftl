# Kurze Antworten, Hilfe, Fremde, Störungen.
coach-knows = Dein Coach weiß Bescheid.
coach-not-reached = Deinen Coach konnte ich nicht erreichen. Wenn es nicht warten kann, sag selbst Bescheid.
passed-on = Habe ich an deinen Coach weitergegeben.
from-coach = { $name }: { $text }
clip-passed-on = Das Video liegt bei deinem Coach.
smalltalk = 👍
unknown = Darin habe ich nichts zum Aufschreiben gefunden. Sag mir, was du gemacht hast („Klimmzüge 5x3 +20, letzter @8“), oder frag „Was steht heute an?“. Mit „Hilfe“ siehst du mehr.
number-alone = „{ $number }“ wovon? Ich habe gerade nichts gefragt. Sag mir, wozu das gehört: „Klimmzüge 5x3 +20“, „Ellbogen links 2/10“.
empty = In der Nachricht standen keine Worte. Sag mir, was du gemacht hast, oder frag „Was steht heute an?“.
too-long = Das war lang: Ich habe die ersten { $limit } Zeichen gelesen. Schick den Rest als eigene Nachricht.
edit-not-read = Änderungen an Nachrichten lese ich nicht: Es gilt, was zuerst dastand. Berichtige es in einer neuen Nachricht, etwa „das waren 22,5, nicht 20“.
press-unknown = Dieser Knopf gilt nicht mehr. Schreib es mir in Worten.
one-at-a-time = Du schreibst schneller, als ich antworten kann. Ich lese und notiere jede Nachricht, eine nach der anderen; manche einfache Antwort lasse ich weg. Frag „Diese Woche?“, um zu sehen, wo du stehst.
older-dropped = Ich konnte dich eine Weile nicht erreichen. Nachrichten, die inzwischen zu alt waren, sind weggefallen; was jetzt kommt, ist aktuell. Frag „Was steht heute an?“ nach dem Plan für heute.
set-aside = Tut mir leid, mit deiner letzten Nachricht ist etwas schiefgegangen. Sie ist aufgehoben.
help =
    Schreib mir in deinen eigenen Worten:
    · was du gemacht hast – „Klimmzüge 5x3 +20, letzter @8“, „wie geplant“, „gleich, aber 2 im letzten“
    · Schmerz – „Ellbogen links 3/10 heute früh“
    · Körpergewicht, Schlaf, Dauer – „Gewicht 71,2, 7h geschlafen, 65 min“
    · Tage – „verschieb Donnerstag auf Samstag“, „gestern ausgefallen“, „9. bis 16. April weg“, „krank“
    Frag mich: „Was steht heute an?“, „Diese Woche?“, „Warum weniger Gewicht?“, „Wie weit bin ich?“
    Korrigieren: „das waren 22,5, nicht 20“, „lösch das“. Mit „Sag dem Coach …“ gebe ich deine Worte weiter.
    Hier gibt es keinen ärztlichen Rat: Bei einem Warnzeichen hör auf und geh zum Arzt.
stranger = Dieser Bot arbeitet nur auf Einladung. Lass dir von deinem Coach einen Code geben und schick ihn als /start CODE.
code-unknown = Dieser Code gilt nicht. Lass dir von deinem Coach einen neuen geben und schick ihn als /start CODE.
joined = Hallo { $name }, du bist jetzt bei { $coach }. Was du hier schreibst (Training, Schmerz, Körpergewicht), wird gespeichert, und nur dein Coach sieht es. Du kannst jederzeit alles davon anfordern oder löschen lassen.

quoted = „{ $text }“
# Muster der Daten nach CLDR: „Mo 4. Jan“, „Montag, 4. Januar“.
day-pattern = ccc d. LLL
long-day-pattern = EEEE, d. MMMM
swap-passed-on = Welche Übungen im Plan stehen, entscheidet { $coach }; bis du davon hörst, gilt er so. Machst du heute etwas anderes, sag mir, was du gemacht hast.
unit-set-lb = Ab jetzt zeige ich dir Gewichte in Pfund und lese bloße Zahlen als Pfund.
unit-set-kg = Ab jetzt zeige ich dir Gewichte in Kilogramm und lese bloße Zahlen als Kilogramm.
plan-at-set = Ab jetzt kommt der Plan des Tages um { $at }.
plan-at-odd = Den Plan des Tages kann ich zwischen { $earliest } und { $latest } schicken. Um welche Zeit? „Schick den Plan um 8“
