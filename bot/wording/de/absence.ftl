# Tage ohne Training.
absence-until = bis { $day }
absence-open = bis zu deiner Meldung
absence-missed = { $day } ausgefallen: notiert. Verdoppelt wird nichts.
absence-away = Weg ab { $since } { $until }: notiert. Die erste Woche danach wird leichter, aus Vorsicht.
absence-ill = Gute Besserung. Kein Training ab { $since } { $until }.
absence-ill-fever = Gute Besserung. Nichts ab { $since } { $until }, und danach erst nach 48 Stunden ohne Fieber. Bei hohem oder anhaltendem Fieber geh zum Arzt.
absence-pause = Pause ab { $since } { $until }. Schreib „Ich bin wieder da“, wann immer es so weit ist.
move-done = Verschoben von { $since } auf { $until }.
move-no-room = Ich habe es auf { $day } verschoben, aber dort passt es nicht: Zwischen zwei Zugtagen liegen 48 Stunden. Die Einheit fällt aus; verdoppelt wird nichts.
move-nothing = Am { $day } steht keine Einheit, die ich verschieben könnte.
move-unclear = Welcher Tag soll wohin? Zum Beispiel „verschieb Donnerstag auf Samstag“.
resume = Schön, dass du wieder da bist.
stopped = Du bekommst keine Nachrichten mehr. Schreib „Ich bin wieder da“, wenn du wieder welche willst. Dein Coach weiß Bescheid.
stopped-for-coach = { $name } möchte keine Nachrichten mehr.
equipment-noted = Notiert: Du hast { $equipment } { $until }. Der Plan kommt damit aus.
equipment-passed-on = Notiert; dein Coach weiß Bescheid.
equipment-for-coach = { $name } zur Ausrüstung: „{ $text }“
