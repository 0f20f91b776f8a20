# Die Liste mit einer Zeile je Athlet, die Stufen quer durch, und was eine Regel sein darf.
roster-heading = { $count ->
    [one] Ein Athlet:
   *[other] { $count } Athleten:
}
roster-line = · { $handle }: { $rungs }; zuletzt { $last }, als Nächstes { $next }
roster-none = nichts
rungs-heading = Wochen auf einer Stufe, über alle deine Athleten; wer noch dort ist, zählt mit seiner Zeit bis jetzt:
rungs-line = · { $rung }: die Hälfte ist nach { $median } weiter, die mittlere Hälfte nach { $early } bis { $late } ({ $left } weiter, { $still } noch nicht)
rungs-open = · { $rung }: zu wenige sind weiter, um etwas zu sagen ({ $left } weiter, { $still } noch nicht, am längsten { $weeks } Wo.)
rungs-unknown = noch unbekannt
rungs-none = Noch war niemand lange genug auf einer Stufe.
rule-wants-switch = { $rule } muss true oder false sein.
rule-wants-choice = { $rule } muss eines davon sein: { $choices }.
rule-wants-number = { $rule } muss eine Zahl sein.
rule-wants-range = { $rule } muss zwischen { $low } und { $high } liegen (Einheit: { $unit }).
rule-wants-whole = { $rule } muss eine ganze Zahl zwischen { $low } und { $high } sein (Einheit: { $unit }).
