# Por qué el plan es así: una frase por cada razón, con números.

reason-load_up = { $movement }: sube de { $before_kg } a { $load_kg }; por tus reportes el máximo está en { $e1rm_kg } con el peso corporal.
reason-load_down = { $movement }: baja de { $before_kg } a { $load_kg }; por tus reportes el máximo está en { $e1rm_kg } con el peso corporal, para { $reps } repeticiones a RPE { $rpe }.
reason-load_same = { $movement }: sigue en { $load_kg }; por tus reportes el máximo está en { $e1rm_kg } con el peso corporal, y el siguiente disco aún no está ganado.
reason-load_first = { $movement }: { $load_kg } para empezar, desde un máximo de { $e1rm_kg } con el peso corporal, para { $reps } repeticiones a RPE { $rpe }.
reason-load_block = { $movement }: { $load_kg } para { $reps } repeticiones a RPE { $rpe }, como pide esta semana del bloque; { $before_when }: { $before_reps } repeticiones con { $before_kg }. Máximo { $e1rm_kg } con el peso corporal.
reason-load_test = { $movement }: { $load_kg } para { $reps } a RPE { $rpe }, para medir dónde estás.
reason-load_capped = { $movement }: { $load_kg }, aunque quizá puedas con más: nunca más de un { $percent } % de la carga total por encima de tu mejor serie de las últimas cuatro semanas.
reason-load_fewer_reps = { $movement }: { $reps } repeticiones en vez de { $wanted_reps }, porque con el peso corporal ya basta.
reason-load_absence = { $movement }: { $load_kg }, un { $percent } % menos de carga total después de tu ausencia.
reason-load_pain_cut = { $movement }: { $load_kg }, un { $percent } % menos de carga total por el dolor; se sentirá ligero.
reason-load_deload = { $movement }: { $load_kg }, ligero a propósito: una descarga queda por debajo de la semana 1 y de las dos últimas.
reason-load_cut_effort = { $movement }: { $load_kg } después de { $before_kg }, porque { $before_when } fue dos puntos o más por encima del esfuerzo pedido.
reason-load_hold_effort = { $movement }: { $load_kg }, se mantiene porque { $before_when } fue un punto por encima del esfuerzo pedido.
compared-with = la última sesión de este tipo (la del { $day })
compared-with-last = la última vez
reason-load_hold_short = { $movement }: { $load_kg }, se mantiene porque { $before_when } hubo menos repeticiones de las previstas y nada sobre cuánto costaron.
reason-load_hold_pain = { $movement }: { $load_kg }, se mantiene mientras duela.
reason-load_after_gap = { $movement }: { $load_kg }, no más que lo último que hiciste, porque de las últimas cuatro semanas no hay con qué comparar.
reason-load_unknown = { $movement }: aún no hay series tuyas, así que las que salgan a RPE { $rpe }; con eso hago el próximo plan.
reason-load_pulldown = Por ahora por debajo del peso corporal, así que en máquina: { $movement } con { $load_kg }.
reason-load_assisted = Por ahora por debajo del peso corporal, así que con { $assist_kg } de ayuda: { $movement }.
reason-bodyweight_only = { $movement }: no hay de dónde colgar peso, así que { $reps } repeticiones con peso corporal, RPE hasta { $rpe }.
reason-bodyweight_changed = Pesas { $now_kg } y la última vez { $was_kg }: con la misma carga en el cinturón ({ $before_kg }) levantarías { $change ->
    [less] menos
   *[more] más
} en total.
reason-nothing_to_pull_on = Sin tirón: aquí no hay dónde hacer { $movement }.
reason-movement_left_out = { $movement } en lugar de { $before }, que tu coach ha quitado.
reason-movement_substituted = { $movement } en vez de { $before }, porque tu material no lo permite.
reason-movement_swapped = { $movement } en vez de { $before }, por orden de tu coach.
reason-grip_of_block = { $movement } en vez de { $before } en este bloque, para no cargar el mismo tejido.
reason-grip_for_pain = { $movement } en vez de { $before }: ese agarre no dolió.

reason-load_locked = Tu coach bloqueó la carga en { $load_kg } { $until }.
reason-sets_ordered = Tu coach fijó estas series: { $sets }×{ $reps } { $movement }, { $load_kg }.
reason-step_ordered = Tu coach pidió un paso sobre el plan: { $sets }×{ $reps } { $movement } { $load_kg } en lugar de { $was_sets }×{ $was_reps } { $planned_kg }.
reason-step_held = El paso de tu coach en { $movement } espera: las reglas no dejan más ese día.
reason-rung_set_by_coach = Tu coach te puso en este escalón: { $rung }.
reason-rung_approved = { $rung }, aprobado por tu coach.
reason-rung_after_absence = Un escalón abajo, a { $rung }, después de { $days } días fuera.
reason-rung_test = Test de { $rung }: { $reps ->
    [0] el aguante limpio más largo
    [one] una repetición limpia por lado
   *[other] { $reps } repeticiones limpias
} para dejar constancia. Lo que muestra un test todavía no es lo que se entrena.
reason-no_test_pain = Sin test de { $rung } mientras algo duela.
reason-no_test_exposures = Esta vez sin test de { $rung }: serían demasiadas repeticiones a un brazo para una semana.

reason-dose_volume = { $rung }: { $sets }×{ $reps } a RPE de hasta { $rpe }.
reason-dose_of_rung = { $rung }: dosis { $dose }, hoy { $sets ->
    [one] una serie
   *[other] { $sets } series
} por lado.
reason-dose_grows = { $rung }: de { $before } a { $dose }, porque el bloque anterior se quedó dentro de su esfuerzo.
reason-dose_shrinks = { $rung }: de { $before } de vuelta a { $dose }, porque fue demasiado duro en { $sessions } sesiones seguidas.
reason-third_set = { $rung }: una tercera serie, porque el mismo trabajo ya cuesta un punto menos.
reason-exposures_capped = { $rung }: { $reps } repeticiones por lado en vez de { $wanted_reps }, porque las repeticiones a un brazo crecen como mucho un 30 % o 4 por semana.
reason-joints_shared = { $rung }: hoy menos series, porque tus escaleras cargan los mismos codos y hombros ({ $sets } series al día).
reason-hold_unknown = { $rung }: aún no hay un aguante tuyo, así que mientras salga limpio.
reason-hold_test = { $rung }: un aguante mientras salga limpio, para medir tu mejor marca.
reason-hold_of_best = { $rung }: aguantes de { $seconds } s, cerca del 60 % de tu mejor marca, { $best_s } s.
reason-skill_out_pain = { $rung }: queda fuera por el dolor.
reason-step_back_pain = { $rung } en vez de { $before } hasta tener dos semanas tranquilas.
reason-skill_left_out = { $rung }: queda fuera, como dijo tu coach.
reason-skill_not_possible = { $rung }: queda fuera, hoy tu material no lo permite.
reason-proof_shown = Mostrado el { $on_day }: { $shown }.
reason-clips_missing = Falta un clip visto por ti: { $sides }.
reason-reps_missed = Repeticiones fallidas en { $sessions } sesiones seguidas en { $rung }.

reason-pain_no_score = Dolor, { $place }: las cargas se mantienen hasta tener un número.
reason-pain_hold = Dolor, { $place } { $score }/10: las cargas se mantienen, nada nuevo.
reason-pain_fine = Dolor, { $place } { $score }/10: seguimos con el plan.
reason-pain_next_morning = Dolor, { $place } { $score }/10, seguía a la mañana siguiente: una semana sin series de skill, principal más ligero.
reason-pain_rising = Dolor, { $place } { $score }/10, subiendo desde hace dos semanas: una semana sin series de skill, principal más ligero.
reason-pain_three_sessions = Dolor, { $place } { $score }/10, tres sesiones seguidas: un escalón atrás hasta tener dos semanas tranquilas.
reason-pain_over = Dolor, { $place } { $score }/10: nada que cargue esa zona hasta que tu coach lo diga.
reason-pain_at_rest = Dolor en reposo, { $place } { $score }/10: nada que cargue esa zona hasta que tu coach lo diga.

reason-deload_effort = Descarga anticipada: dos sesiones seguidas al menos { $over_rpe } puntos por encima del esfuerzo pedido.
reason-deload_strength_down = Descarga anticipada: la fuerza baja un { $percent } % en la tendencia.
reason-deload_pain = Descarga anticipada por el dolor, { $place } { $score }/10.
reason-deload_ordered = Descarga desde ahora, como pidió tu coach el { $day }.
reason-comeback = Primera semana después de { $days } días fuera: un { $percent } % menos de carga total, RPE hasta { $rpe }. Es precaución; lo que perdiste de verdad es menos.
reason-session_moved = Sesión movida aquí desde el { $from_day }.
reason-session_slid = Sesión movida aquí desde el { $from_day }: no se hizo, y caben 48 horas.
reason-session_gone = La sesión del { $from_day } pasa al { $to_day }.
reason-session_dropped = La sesión del { $day } queda fuera; no se dobla nada.
reason-session_done_early = La sesión del { $day } ya la hiciste el { $done_on }.
reason-away_away = Fuera desde el { $since } { $until }.
reason-away_ill = Con enfermedad desde el { $since } { $until }; si hubo fiebre, antes dos días sin ella.
reason-away_pause = En pausa desde el { $since } { $until }.
reason-paused = En pausa desde el { $since } { $until }.
reason-not_screened = Las preguntas de salud aún no tienen el visto bueno; tu coach inicia el plan.
reason-warning_sign = El entreno está parado desde el { $since }. Motivo: { $sign }. Tu coach lo reactiva cuando lo haya visto un médico.

# Lo que oye el coach.
alert-stopped_by_sign = parado desde el { $since }; motivo: { $sign }. Solo tú puedes reactivar el plan.
alert-screening_open = faltan las preguntas de salud; sin entreno hasta que lo apruebes.
alert-pain_stop = dolor, { $place } { $score }/10 desde el { $since }: lo que carga esa zona está parado hasta que digas «reinicia».
alert-pain_step_down = dolor, { $place } { $score }/10 desde el { $since }: una semana sin series de skill, principal un 10 % más ligero.
alert-pain_step_back = dolor, { $place } { $score }/10 en tres sesiones seguidas: un escalón atrás hasta tener dos semanas tranquilas.
alert-proposal_waiting = un paso espera tu decisión: { $rung }.
alert-silent = sin noticias desde hace { $sessions ->
    [one] una sesión
   *[other] { $sessions } sesiones
}.
alert-strength_down = la fuerza baja un { $percent } % en la tendencia, descarga anticipada.

shown-reps = { $reps ->
    [one] una repetición
   *[other] { $reps } repeticiones
}
shown-sides = izquierda { $left }, derecha { $right } repeticiones
shown-seconds = un aguante de { $seconds } s

gate-relative_added = lastre máximo en pesos corporales
gate-shown_either = repeticiones por lado con la mano libre en el hombro o poco contrapeso
gate-held = { $dose } dentro de su esfuerzo
gate-hold_of = { $movement }, segundos
gate-reps_of = { $movement } en una serie
gate-sets_of = { $movement } en cada serie
