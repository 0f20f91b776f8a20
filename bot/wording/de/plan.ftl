# Die Arbeit des Tages.
plan-heading-training = { $day } · Block { $block }, Woche { $week }
plan-heading-deload = { $day } · Block { $block }, Deload-Woche: mit Absicht leicht
plan-heading-test = { $day } · Block { $block }, Testtag
plan-heading-rest = { $day }
plan-rest = { $day }: kein Training.
plan-next = Als Nächstes: { $day } – { $work }
plan-changed = Der Plan für heute hat sich geändert. Dieser gilt:
plan-part-warm_up = Aufwärmen
plan-part-skill = Skill
plan-part-main = Hauptübung
plan-part-accessory = Assistenz
caution-test = Hör bei der ersten unsauberen Wiederholung auf und bei jedem Schmerz über 2.

set-lower_half = { $name }, untere Hälfte
set-upper_half = { $name }, obere Hälfte
set-lowering = { $name }, nur ablassen
set-paused = { $name }, Pause { $where }
set-at-top = oben
set-at-middle = in der Mitte
set-at-bottom = unten
set-each-side = { $sets }×{ $amount } je Seite
set-first-side = , { $side } zuerst
set-seconds = { $seconds } s
set-as-many = so viele wie möglich
set-as-long = so lange es sauber ist
set-missed = { $reps } (nicht geschafft)
set-ceiling = , RPE bis { $rpe }
set-rpe = , RPE { $rpe }
set-last-rpe = , letzter Satz RPE { $rpe }
set-rpes = , RPE { $rpes }

week-heading = Die nächsten sieben Tage:
week-line = { $day } ({ $kind }): { $work }
week-empty = In den nächsten sieben Tagen kein Training.
day-kind-training = Training
day-kind-deload = Deload
day-kind-test = Test
day-kind-rest = frei

why-strength = { $movement }: Nach deinen Meldungen liegt dein Maximum bei etwa { $middle } mit Körpergewicht ({ $bodyweight }); die Lasten rechne ich aus dem vorsichtigen Wert, { $cautious }.
why-nothing = Bisher ist nichts anders entschieden, als es der Block vorsieht.
next-training = Nächstes Training: { $day }.
welcome = Willkommen, { $name }. { $coach } coacht dich in diesem Chat: An jedem Trainingstag schicke ich dir deine Sätze, und du sagst mir in eigenen Worten, was du gemacht hast. Hier gibt es keinen ärztlichen Rat: Bei einem Warnzeichen hör auf und geh zum Arzt.

# Was vom Block noch kommt.
ahead-test = Nach heutigem Stand ist der nächste Test am { $day }: { $what }.
ahead-no-test = Nach heutigem Stand ist kein Test in Sicht.
ahead-test-day = Test: { $day }.
ahead-deload = Nach heutigem Stand beginnt der Deload am { $day }.
ahead-deload-now = Das ist die Deload-Woche, bis { $until }.
ahead-no-deload = Nach heutigem Stand ist kein Deload in Sicht.
ahead-block = Block { $block }, Woche { $week } von { $weeks } (die letzte ist der Deload), bis { $until }.
