# Dónde está cada quien.
progress-nothing = Todavía no hay reportes. Después de las primeras sesiones podré mostrarte cómo vas.
progress-rung = { $ladder }: { $rung } desde el { $since }, dosis { $dose }.
progress-rung-alone = { $ladder }: { $rung } desde el { $since }.
progress-no-next = Con el material que hay no se puede entrenar ningún escalón más.
progress-top = Es lo más alto de esta escalera.
progress-may-test = { $rung }: se puede probar en el próximo día de test.
progress-gate = Hacia { $rung }: { $name }, { $have } de { $want }.
progress-gate-met = Hacia { $rung }: { $name }, { $have } de { $want }, conseguido.
progress-strength = { $movement }: máximo de unos +{ $added } ({ $percent } % del peso corporal).
progress-gain-more = Son unos { $change } más que hace cuatro semanas.
progress-gain-less = Son unos { $change } menos que hace cuatro semanas.
progress-gain-none = Frente a hace cuatro semanas no es un cambio digno de mención (menos de { $least }).
progress-adherence = Sesiones en las últimas cuatro semanas: { $done } de { $planned }.
forecast-beyond = { $name }: a este ritmo, no antes de 12 semanas.
forecast-too-early = { $name }: aún hay muy pocas sesiones para hablar de un ritmo.
forecast-from = { $name }: no antes del { $earliest }, quizá no en 12 semanas.
forecast-between = { $name }: a este ritmo, entre el { $earliest } y el { $latest }.

# Las palabras de una dosis: «2x1 mitad pausa arriba», «3 aguantes».
dose-half = mitad
dose-pause = pausa
dose-top = arriba
dose-middle = medio
dose-bottom = abajo
dose-holds = aguantes
