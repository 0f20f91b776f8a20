# Where someone stands.
progress-nothing = There are no reports yet. After the first sessions I can show your line.
progress-rung = { $ladder }: { $rung } since { $since }, dose { $dose }.
progress-rung-alone = { $ladder }: { $rung } since { $since }.
progress-no-next = No further rung can be trained with the equipment there is.
progress-top = That is the top of this ladder.
progress-may-test = { $rung }: may be tried on the next test day.
progress-gate = Toward { $rung }: { $name } { $have } of { $want }.
progress-gate-met = Toward { $rung }: { $name } { $have } of { $want }, reached.
progress-strength = { $movement }: maximum about +{ $added } ({ $percent } % of bodyweight).
progress-gain-more = That is about { $change } more than four weeks ago.
progress-gain-less = That is about { $change } less than four weeks ago.
progress-gain-none = Against four weeks ago that is no change worth the word (less than { $least }).
progress-adherence = Sessions in the last four weeks: { $done } of { $planned }.
forecast-beyond = { $name }: not within 12 weeks at this pace.
forecast-too-early = { $name }: too few sessions yet to tell a pace.
forecast-from = { $name }: not before { $earliest }, perhaps not within 12 weeks.
forecast-between = { $name }: between { $earliest } and { $latest } at this pace.

# The words of a dose: “2x1 half pause top”, “3 holds”.
dose-half = half
dose-pause = pause
dose-top = top
dose-middle = middle
dose-bottom = bottom
dose-holds = holds
