# Para coaches.
coach-joined = Hola, { $name }: este bot ya es tuyo. «lista» muestra a tus atletas, «invitación NOMBRE» crea un código y «ayuda», el resto.
coach-help =
    Con palabras y el nombre de un atleta:
    · «mira» – la ficha · «lista» · «escalones» – cuánto dura cada uno · «resumen» – la semana · «mira semana» · «mira por qué»
    · «mira 4x3 con 17,5 el jueves» · «mira bloquea 17,5 hasta el 1 de marzo» · «mira mantén escalón 3 semanas» · «mira desbloquea», «mira desbloquea escalón»
    · «mira +1,25», «mira +1,25 cada lunes», «mira una serie más», «mira 4x3 con 10 cada lunes» – o con varios nombres: mira y jon …
    · «todos descansan esta semana», «sin arqueras para nadie menos mira», «todos -10% el domingo» · tras una orden: «no, mejor 12,5», «lo mismo para jon», «y el viernes también»
    · «mira descarga», «mira descarga desde el lunes» · «mira deshacer» – deshace tu última orden
    · «mira escalón archer_shoulder» · «mira sin muscle-ups», «mira incluye muscle-ups» · «mira regla block.loading_weeks 5», «regla …» para todos
    · «aprueba mira», «rechaza mira» · «visto mira» para clips, «mira reinicia» tras una parada · «mira pausa», «mira sigue»
    · «mira mueve jueves a viernes» · «quién no ha respondido» · «quién tiene test» · «diles a todos: …»
    · «dile mira: …» · «mira nota: …» · «invitación mira» · «llama arqueras a la altura del codo ALR»
    · «qué pasa si mira entrena tres días», «qué pasa si mira mantiene escalón 5 semanas» – preguntar no cambia nada
coach-edit-not-read = No leo mensajes editados: vale lo que escribiste primero. Escribe la orden de nuevo.
coach-unknown = Eso no lo entendí. «ayuda» muestra lo que conozco.
order-too-many = { $sets }×{ $reps } para { $name }: eso no puede ser, así que no he puesto nada.
order-beyond = { $name } tiene un máximo de unos { $most }: { $load } queda muy por encima, así que no he puesto nada.
order-one-arm = { $name } está en { $rung }, y nunca se ha contado una repetición limpia de { $movement }{ $gate }. Todavía no hay nada fijado.
button-all-the-same = Fijarlo de todos modos
button-set-it = Fijarlo
load-alone = { $name }, { $day }: ¿{ $sets }×{ $reps } con { $load }?
order-replaced = Sustituye tu orden del { $day }: { $what }.
order-aside = Ese día va por delante de tu orden del { $day }: { $what }.
order-stands = Ojo: al lado sigue en pie tu orden del { $day }: { $what }.
step-how = { $name }, { $day }: no hay nada previsto a lo que sumar un paso así. «NOMBRE 4x3 con 17,5 el jueves» lo dice entero.
step-every = «cada» pide un día de la semana: «NOMBRE +1,25 cada lunes». No se ha fijado nada.
sets-every = Lo mismo el { $days }.
sets-every-block = Lo mismo el { $days }: hasta donde llegan las semanas de carga del bloque. «hasta el 1 de marzo» pone otro final.
sets-step = { $name }: { $step } sobre lo previsto, el { $days }.
sets-step-block = { $name }: { $step } sobre lo previsto, el { $days }: hasta donde llegan las semanas de carga del bloque. «hasta el 1 de marzo» dice otro final, «NOMBRE desbloquea» lo termina.
sets-step-now = Tal como está: { $work }.
sets-step-held = Las reglas no dejan eso el { $days }, tal como está.
sets-step-none = El { $days } no hay tirón previsto, tal como está.
sets-step-caps = Las reglas valen cada día: como mucho un { $percent } % sobre la mejor serie comparable de cuatro semanas; nada más en una descarga, con dolor, tras una ausencia o tras series demasiado duras.
step-main-only = Un paso de cada semana va solo con el ejercicio principal de { $name }: el trabajo de un escalón crece con sus propias reglas. No se ha fijado nada.
step-no-session = { $name }: entonces no hay ninguna sesión prevista. No se ha fijado nada.
step-sets = { $count ->
    [one] una serie
   *[other] { $count } series
}
step-reps = { $count ->
    [one] una rep.
   *[other] { $count } reps.
}
order-before-step = Esos días va antes tu orden del { $day }: { $what }.
order-hard = Ojo: { $reps } repeticiones son más que las { $possible } de las que hablan los reportes de { $name } con esa carga.
coach-not-done = No he cambiado nada: «{ $words }» no es parte de ninguna orden que conozca. Solo la orden, por favor; las palabras para { $name } van con «dile { $handle }: …».
coach-only = Para mí eso era solo una pregunta; de «{ $words }» no entendí nada y nada ha cambiado.
order-for-all = No he cambiado nada: «{ $words }» no es parte de ninguna orden para todos que conozca. «todos descansan esta semana», «sin arqueras para nadie hasta el viernes», «todos menos mira -10% el domingo»; las palabras para todos van con «di a todos: …».
order-by-name = Eso va solo por nombre: una carga, un escalón, los vídeos y el fin de una parada se deciden por lo que ha mostrado cada atleta. No se ha hecho nada. «todos -10%» aligera, a cada cual desde su plan.
order-all-sure = «{ $order }» para { $count }: eso pide más a todos a la vez, o les devuelve lo que se les había quitado. Aún no se ha hecho nada.
button-for-all = Hacerlo para los { $count }
order-instead = En lugar de: { $what }.
order-of-day = lo que dijiste el { $day }
together-done = Hecho para { $count } de { $of }:
together-nobody = No se ha hecho para nadie:
together-not = No se ha hecho:
moved = { $name }: la sesión del { $since } pasa al { $until }.
moved-no-room = { $name }: la sesión de { $since } no cabe en { $until }: una sesión al día, 48 horas entre días de tirón. No se ha movido nada.
moved-done = { $name } ya hizo la sesión del { $since }; no se ha movido nada.
moved-too = Con eso, la sesión de { $since } pasa a { $until }.
moved-gone = Con eso, la sesión de { $since } se queda fuera.
moved-how = No entendí qué sesión de { $name } va a dónde. «NOMBRE mueve jueves a viernes»
told-moved = { $coach } ha pasado tu sesión del { $since } al { $until }.
tell-all-what = ¿Qué les digo a todos? «diles a todos: palabras»
told-all = { $count ->
    [0] Nadie tiene un chat abierto con este bot.
    [one] { $names } lo tiene.
   *[other] { $count } lo tienen: { $names }.
}
unheard = Aún sin noticias de la sesión de hoy: { $names }
unheard-nobody = No falta noticia de nadie sobre la sesión de hoy.
who-tests = Tests en las próximas dos semanas: { $told }.
who-tests-one = { $name } { $day }
who-tests-nobody = Nadie tiene test en las próximas dos semanas.
who-deloads = En su semana de descarga: { $names }.
coach-whom = ¿A quién te refieres?
coach-meant = ¿Te refieres a { $name }?
coach-whom-typed = ¿A quién te refieres? Escribe el nombre.
coach-not-wanted = No se ha hecho nada.
coach-who = ¿A quién te refieres? { $names }
button-approve = Aprobar
button-hold = Mantener
button-train-on = Levantar el paso atrás
button-settle = No hace falta responder
button-ask = Preguntar cómo va
button-for = { $label }: { $name }
not-screened = { $name } aún no tiene el visto bueno de las preguntas de salud. No hay entreno hasta que lo apruebes.
started = { $name } puede empezar; el primer bloque está aprobado.
started-already = { $name } ya empezó.
trained-on = { $name }: el paso atrás por { $place } queda levantado.
restarted = { $name } puede volver a entrenar.
told-restart = { $coach } te dio el visto bueno: volvemos a entrenar.
proposal-promotion = { $name }: toca pasar a { $rung }. { $reasons }
proposal-step_back = { $name }: ¿un paso atrás, a { $rung }? { $reasons }
decided-approve = { $name }: { $rung }, aprobado.
decided-decline = { $name }: { $rung }, todavía no.
settled = { $name }: { $count ->
    [one] un mensaje no necesita respuesta.
   *[other] { $count } mensajes no necesitan respuesta.
}
asked = Se ha preguntado a { $name } cómo va.
asked-already = A { $name } ya se le preguntó hoy, o no tiene un chat abierto con este bot.
asked-by-coach = { $coach } pregunta cómo va: últimamente no hay noticias tuyas. Basta una línea: qué hiciste o qué te lo impide.
decided-nothing = { $name }: ya no hay nada que decidir.
told-promotion = { $coach } aprobó tu siguiente escalón: { $rung }. Llega con tu próximo bloque.
told-step_back = { $coach } te baja un escalón por ahora: { $rung }.
alert = { $name }: { $what }
of-athlete = { $name }: { $what }
passed-to-coach = { $name } escribe: «{ $text }» – responde con «dile { $handle }: …»
clip-for-coach = { $name } manda un clip: «{ $text }»
clip-for-coach-silent = { $name } manda un clip.
clip-kept-as = Cuenta como: { $shown }
clip-side = { $movement }, { $side }
button-seen = Visto
clips-seen = { $name }: { $count ->
    [0] ningún clip por ver.
    [one] un clip marcado como visto.
   *[other] { $count } clips marcados como vistos.
}
set-aside-for-coach = Un mensaje de { $name } no se pudo procesar. Está guardado y apartado.
unreachable = Ya no se puede contactar con { $name }: el chat no acepta mensajes.
joined-for-coach = { $name } ya está dentro.
ask-expired = { $name } no aclaró qué significaba «{ $span }» en: «{ $text }». Lo demás cuenta.
told = Se lo dije a { $name }.
told-nobody = { $name } no tiene un chat abierto con este bot, así que no llegó. «invitación NOMBRE» crea un código.
tell-what = ¿Qué le digo a { $name }? «dile NOMBRE: palabras»
note-kept = Nota sobre { $name }. No se le muestra, pero va en la copia de sus datos si la pide.
invited = Para { $name }, un solo uso, válido 30 días: /start { $code }
sets-how = No entendí las series de { $name }. «NOMBRE 4x3 con 17,5 el jueves»
sets-set = { $name }, { $day }: { $work }
sets-past = { $name }: el { $day } ya pasó; eso no cambia nada.
sets-not-sent = { $name }, { $day }: tal como está, estas series no se enviarán. { $why } Quedan guardadas por si cambia antes.
sets-instead = Sustituyen a la sesión del { $day }, que se suprime: 48 horas entre días de tracción.
sets-near = Ten en cuenta: { $days } queda a menos de 48 horas y sigue como estaba.
load-rounded = { $given } son { $load } con los discos de { $name }.
load-between = Ojo: los discos de { $name } no dan { $given }; lo más cercano por debajo es { $load }.
lock-how = No entendí la carga de { $name }. «NOMBRE bloquea 17,5 hasta el 1 de marzo»
locked = { $name }: carga bloqueada en { $load } { $until }.
held = { $name }: mismo escalón { $until }.
held-ladder = { $name }: { $ladder }, mismo escalón { $until }.
rung-set = { $name }: ahora en { $rung }.
rung-gate-unmet = (se pide { $want } del peso corporal, por ahora { $have })
rung-unknown = No existe el escalón «{ $rung }». Existen: { $rungs }
movement-unknown = No conozco el ejercicio «{ $movement }».
excluded = { $name }: sin { $movement } { $until }.
deload-ordered = { $name }: la descarga empieza el { $day }.
deload-none = { $name }: desde el { $day } no se puede planear una descarga tal como están las cosas; no cambia nada.
deload-stands = { $name }: ya es la semana de descarga; no cambia nada.
taken-back = { $name }, deshecho: { $what }.
taken-back-other = { $name }: se deshizo lo que dijiste el { $day }.
taken-back-again = Vuelve a valer lo que había sustituido: { $what }.
taken-back-for-all = Retirado para todos: { $what }.
nickname-again = «{ $nickname }» es otra vez { $movement }
nickname-gone = «{ $nickname }» ya no es un apodo
rule-again = { $rule } es otra vez { $value }
taken-back-nothing = No hay ninguna orden tuya que deshacer.
told-taken-back = { $coach } deshizo lo que se decidió el { $day }. «hoy» muestra lo que vale.
unlocked = { $name }, levantado: { $what }.
unlocked-nothing = { $name }: nada de eso está bloqueado, retenido ni excluido; no se ha cambiado nada.
paused = { $name }: en pausa { $until }.
pause-replaced = Ocupa el lugar de tu pausa { $until }.
rested = { $name }: sin entreno el { $day }.
until-day = hasta el { $day }
until-lifted = hasta nuevo aviso
effect = Lo siguiente, { $day }: { $work }
effect-none = No hay entreno a la vista.
resumed = { $name }: el entreno sigue.
nickname-set = Desde ahora «{ $nickname }» es { $movement }.
nickname-too-long = Un apodo puede tener como máximo { $most } caracteres. Este no vale.
nickname-unclear = ¿Qué ejercicio será ese? «llama EJERCICIO APODO»
rule-how = «regla NOMBRE VALOR», por ejemplo «regla block.loading_weeks 5»
rule-unknown = No existe la regla «{ $rule }».
rule-set = { $name }: { $rule } ahora es { $value }.
rule-set-all = { $rule } ahora es { $value } para todos.
roster-loaded = { $count ->
    [one] Un atleta cargado, { $added } nuevo.
   *[other] { $count } atletas cargados, nuevos: { $added }.
}
roster-erased = No se incorporan, porque hicieron borrar todos sus datos: { $names }. Quítalos del archivo; o, si pidieron volver, cárgalo con { $how }
roster-absent = No están en el archivo y quedan como estaban: { $names }
roster-own = Lo han ajustado los propios atletas y se queda así hasta que el archivo diga otra cosa: { $settings }
roster-own-plan-at = { $handle } (plan a las { $at })
roster-own-unit = { $handle } (cargas en { $unit })
roster-code = Código para { $name }, un solo uso, válido 30 días: /start { $code }

summary-heading = Semana hasta el { $day }: { $count ->
    [one] un atleta
   *[other] { $count } atletas
}
summary-needing = Te necesitan ({ $count }):
summary-nobody = Esta semana nadie te necesita.
summary-away = Ausentes ({ $count }):
summary-away-away = fuera { $until }
summary-away-ill = de baja por enfermedad { $until }
summary-away-pause = en pausa { $until }
summary-fine = Van bien ({ $count }) – sesiones hechas de las previstas en cuatro semanas, peldaño y dosis, máximo:
summary-line = · { $name }: { $what }
summary-unanswered = { $count ->
    [one] escribió el { $day }: { $words }
   *[other] { $count } mensajes esperan tu respuesta desde el { $day }; los últimos: { $words }
}
summary-clips = { $count ->
    [one] un vídeo del { $day } espera a que lo veas.
   *[other] { $count } vídeos esperan a que los veas, el más antiguo del { $day }.
}
summary-stopped = Pidió no recibir más mensajes.
summary-open-set = falta el resultado de una serie abierta: { $span }.
fine-sessions = { $done }/{ $planned }
fine-rung = { $rung }, { $dose }
fine-strength = +{ $added }
fine-pain = dolor, { $place } { $score }/10 el { $day }
fine-deload = descarga y test

card-heading = { $name }, { $day }
card-block = Bloque { $block }, semana { $week } de { $weeks }
card-bodyweight = Peso corporal { $weight }
card-pain = Dolor: { $place } { $score }/10 el { $day }
card-session = { $day }: { $work }
card-order = Tu orden del { $day }: { $what }
order-start = puede empezar
order-approve = { $rung }, aprobado
order-decline = { $rung }, todavía no
order-set_rung = escalón { $rung }
order-hold_rung = mismo escalón { $until }
order-hold_rung-of = { $ladder }: mismo escalón { $until }
order-set_sets = { $sets }×{ $reps } { $load } el { $for_date }
order-set_sets-of = { $sets }×{ $reps } { $movement } { $load } el { $for_date }
order-step_sets = { $step } sobre lo previsto, el { $for_date }
load-as-planned = con la carga prevista
order-lock_load = carga bloqueada en { $load } { $until }
order-unlock = sin bloqueos
order-unlock-hold_rung = escalón liberado
order-unlock-lock_load = carga liberada
order-unlock-step_sets = pasos de cada semana terminados
order-unlock-exclude = de nuevo con { $movement }
order-exclude = sin { $movement } { $until }
order-deload = descarga desde el { $for_date }
order-restart = puede volver a entrenar
order-train_on = paso atrás por { $value } levantado
order-set_rule = { $rule } { $value }
order-swap = { $movement } se hace como { $value } { $until }
card-doubt = Pregunta abierta: qué significa «{ $span }» en «{ $text }»
card-note = Nota: { $text }
