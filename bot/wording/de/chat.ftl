# Das Terminal.
chat-hello =
    Sag, was du gemacht hast („Klimmzüge 5x3 +20, letzter @8“), dann frag „Warum?“ – oder „Was steht heute an?“, „Diese Woche?“, „Wie weit bin ich?“.
    Schreib „coach“, um der Coach zu sein („roster“, „mira 4x3 mit 17,5 am Donnerstag“), „as mira“, um wieder Athlet zu sein: { $names }.
    Knöpfe: „/1“, „/2“ … oder ihre Worte. „quit“ beendet. Kein ärztlicher Rat: Bei einem Warnzeichen hör auf und geh zum Arzt.
chat-demo = (Erfundene Leute; ihre Daten liegen in { $file })
chat-as = — du bist { $name } —
chat-nobody = Hier gibt es { $name } nicht. Es gibt: { $names }
chat-no-button = Die letzte Nachricht hat keinen Knopf { $number }.
chat-elsewhere = (eine Nachricht für { $name })
chat-first-question = Was steht heute an?
