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
set-unloaded = ohne Gewicht
set-unaided = ohne Hilfe
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

# Wenig Zeit.
cut-short = { $day }: Das Aufwärmen bleibt, und was zählt, ist { $work }. Als Erstes fällt weg: { $first }. Sag mir, was du gemacht hast; der Plan geht von da weiter.
cut-short-main = { $day }: Das Aufwärmen bleibt; sonst gibt es nur { $work }. Mach, was die Zeit hergibt, und sag es mir; der Plan geht von da weiter.
cut-short-all = { $day } hat nur Assistenz. Mach, was die Zeit hergibt, und sag es mir; der Plan geht von da weiter.
must-accessory = { $movement }: Assistenz am { $day }, fällt also als Erstes weg, wenn es sein muss. Sag mir, was du gemacht hast.
must-work = { $movement }: darum geht es am { $day }. Wenn etwas weh tut, sag mir wo und wie sehr.
must-warm_up = { $movement }: das Aufwärmen am { $day }, besser nicht weglassen.
must-first = Als Erstes fällt weg: { $first }.
must-none = { $movement }: steht nicht im Plan von { $day }.

# Words of the plan.
rpe-means = RPE sagt, wie hart ein Satz war: Bei 10 ging nichts mehr, bei 9 noch eine Wiederholung, bei 8 zwei, bei 7 drei. „RPE bis 7“ heißt: mit drei in Reserve aufhören.
