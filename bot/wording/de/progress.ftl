# Wo jemand steht.
progress-nothing = Es gibt noch keine Meldungen. Nach den ersten Einheiten kann ich dir zeigen, wo du stehst.
progress-rung = { $ladder }: { $rung } seit { $since }, Dosis { $dose }.
progress-rung-alone = { $ladder }: { $rung } seit { $since }.
progress-no-next = Mit der Ausrüstung, die da ist, lässt sich keine weitere Stufe trainieren.
progress-top = Das ist das obere Ende dieser Leiter.
progress-may-test = { $rung }: darf am nächsten Testtag probiert werden.
progress-gate = Bis { $rung } – { $name }: { $have } von { $want }.
progress-gate-met = Bis { $rung } – { $name }: { $have } von { $want }, erreicht.
progress-strength = { $movement }: Maximum etwa +{ $added } ({ $percent } % des Körpergewichts).
progress-gain-more = Das sind etwa { $change } mehr als vor vier Wochen.
progress-gain-less = Das sind etwa { $change } weniger als vor vier Wochen.
progress-gain-none = Gegenüber vor vier Wochen ist das keine nennenswerte Änderung (unter { $least }).
progress-adherence = Einheiten in den letzten vier Wochen: { $done } von { $planned }.
forecast-beyond = { $name }: bei diesem Tempo nicht innerhalb von 12 Wochen.
forecast-too-early = { $name }: noch zu wenige Einheiten, um ein Tempo zu nennen.
forecast-from = { $name }: nicht vor { $earliest }, vielleicht nicht innerhalb von 12 Wochen.
forecast-between = { $name }: bei diesem Tempo zwischen { $earliest } und { $latest }.

# Die Worte einer Dosis: „2x1 halb Pause oben“, „3 mal Halten“.
dose-half = halb
dose-pause = Pause
dose-top = oben
dose-middle = Mitte
dose-bottom = unten
dose-holds = mal Halten
