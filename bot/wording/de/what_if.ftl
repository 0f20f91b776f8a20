# Was wenn: zwei Wege nebeneinander.
what-if-heading = { $name }, { $weeks } Wochen, jetzt → dann (Modell: kein Ausfall, kein Schmerz, jeder Schritt bestätigt):
what-if-main = · Hauptübung am Ende: { $both }
what-if-rung = · Stufe am Ende: { $both }
what-if-sessions = · Einheiten: { $both }
what-if-exposures = · Einarmige Wiederholungen je Seite: { $both }
what-if-dates = · { $both }
what-if-days = Deload ab { $deload }, Test { $test }
what-if-both = { $now } → { $then }
what-if-none = –
what-if-how = „was wenn mira drei tage trainiert“, „was wenn mira die stufe 5 wochen hält“, „was wenn mira sperre 17,5“, „was wenn mira pause 2 wochen“, „was wenn mira regel block.loading_weeks 5“
