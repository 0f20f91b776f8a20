# Was von einem Athleten gespeichert ist, zum Ansehen und zum Löschen.
data-overview =
    Das ist über dich gespeichert: { $sessions ->
        [one] eine Einheit
       *[other] { $sessions } Einheiten
    } mit { $sets ->
        [one] einem Satz
       *[other] { $sets } Sätzen
    }, Antworten zum Schmerz: { $pain }, Körpergewichte: { $weights }, Nachrichten von dir: { $messages }. { $coach } sieht dein Training, deinen Schmerz und was du für den Coach schreibst.
    Es folgen drei Dateien: eine Seite zum Lesen, alles als JSON und die Tabellen als CSV. Mit „lösche alle meine Daten“ wird alles gelöscht.
data-page-name = meine-seite.txt
data-file = { $name }
data-heading = Was über { $name } gespeichert ist, { $day }
data-who = Bekannt als { $handle }, in { $zone }, Sprache { $language }; Coach ist { $coach }.
data-plan = Geplant: { $work }
data-done = Gemacht: { $work }
data-pain = Schmerz: { $place } { $score }/10
data-sign = Warnzeichen: { $sign }
data-order = Dein Coach hat entschieden: { $what }
data-rows = Jede gespeicherte Zeile, Tabelle für Tabelle, unter den Namen, unter denen sie gespeichert ist:
erase-sure =
    Das löscht alles, was über dich gespeichert ist: Einheiten, Pläne, Schmerz, Nachrichten. Es lässt sich nicht rückgängig machen, und { $coach } erfährt, dass du gegangen bist.
    Kopien der Datenbank, aufbewahrt für den Fall ihres Verlusts, enthalten es noch bis zu { $days } Tage, dann werden auch sie gelöscht. Was in diesem Chat steht, kannst du selbst löschen.
    Wenn du das willst, drück den Knopf oder schreib innerhalb eines Tages noch einmal „lösche alle meine Daten“.
button-erase = Alles löschen
button-keep = Behalten
erase-kept = Es wurde nichts gelöscht.
erase-running = Das Löschen hat begonnen und lässt sich nicht mehr aufhalten.
erase-farewell = Alle deine Daten werden gelöscht, { $name }, in wenigen Minuten, und aus den aufbewahrten Kopien innerhalb von { $days } Tagen. Das war die letzte Nachricht. Trainier gut.
erase-for-coach = { $name } ist gegangen und hat alle Daten löschen lassen. In wenigen Minuten sind sie weg, auch aus deinen Übersichten.
