# El trabajo del día.
plan-heading-training = Plan del { $day } · bloque { $block }, semana { $week }
plan-heading-deload = Plan del { $day } · bloque { $block }, semana de descarga: ligera a propósito
plan-heading-test = Plan del { $day } · bloque { $block }, día de test
plan-heading-rest = Plan del { $day }
plan-rest = El { $day } no hay entreno.
plan-next = Lo siguiente: { $day } – { $work }
plan-changed = El plan de hoy cambió. Vale este:
plan-part-warm_up = Calentamiento
plan-part-skill = Skill
plan-part-main = Principal
plan-part-accessory = Accesorios
caution-test = Para en la primera repetición que no salga limpia y ante cualquier dolor por encima de 2.

set-lower_half = { $name }, mitad inferior
set-upper_half = { $name }, mitad superior
set-lowering = { $name }, solo la bajada
set-paused = { $name }, pausa { $where }
set-at-top = arriba
set-at-middle = a la mitad
set-at-bottom = abajo
set-each-side = { $sets }×{ $amount } por lado
set-first-side = , primero { $side }
set-seconds = { $seconds } s
set-unloaded = sin peso
set-unaided = sin ayuda
set-as-many = las que puedas
set-as-long = mientras salga limpio
set-missed = { $reps } (fallida)
set-ceiling = , RPE hasta { $rpe }
set-rpe = , RPE { $rpe }
set-last-rpe = , última a RPE { $rpe }
set-rpes = , RPE { $rpes }

week-heading = Los próximos siete días:
week-line = { $day } ({ $kind }): { $work }
week-empty = Sin entreno en los próximos siete días.
day-kind-training = entreno
day-kind-deload = descarga
day-kind-test = test
day-kind-rest = descanso

why-strength = { $movement }: según lo que me cuentas, tu máximo ronda los { $middle } con el peso corporal ({ $bodyweight }); las cargas salen del lado prudente, { $cautious }.
why-nothing = Aún no se ha decidido nada distinto de lo que marca el bloque.
next-training = Próximo entreno: { $day }.
welcome = Te doy la bienvenida, { $name }. { $coach } te entrena por este chat: cada día de entreno te mando tus series y tú me cuentas con tus palabras lo que hiciste. Aquí no hay consejo médico: ante una señal de alarma, para y ve al médico.

# Lo que queda del bloque.
ahead-test = Tal como están las cosas, el próximo test es el { $day }: { $what }.
ahead-no-test = Tal como están las cosas, no hay ningún test a la vista.
ahead-test-day = Test: { $day }.
ahead-deload = Tal como están las cosas, la descarga empieza el { $day }.
ahead-deload-now = Esta es la semana de descarga, hasta el { $until }.
ahead-no-deload = Tal como están las cosas, no hay ninguna descarga a la vista.
ahead-block = Bloque { $block }, semana { $week } de { $weeks } (la última es la descarga), hasta el { $until }.

# Poco tiempo.
cut-short = { $day }: el calentamiento se queda, y lo que cuenta es { $work }. Lo primero que se deja: { $first }. Cuéntame qué hiciste y el plan sigue desde ahí.
cut-short-main = { $day }: el calentamiento se queda; aparte solo hay { $work }. Haz lo que dé tiempo y cuéntamelo: el plan sigue desde ahí.
cut-short-all = El { $day } solo tiene accesorios. Haz lo que dé tiempo y cuéntamelo: el plan sigue desde ahí.
must-accessory = { $movement }: accesorio el { $day }, así que es lo primero que se deja si hace falta. Cuéntame qué hiciste.
must-work = { $movement }: de eso va el { $day }. Si algo duele, dime dónde y cuánto.
must-warm_up = { $movement }: el calentamiento del { $day }, mejor no dejarlo.
must-first = Lo primero que se deja: { $first }.
must-none = { $movement }: no está en el plan del { $day }.

# Words of the plan.
rpe-means = RPE dice lo dura que fue una serie: con 10 no quedaba nada, con 9 una repetición más, con 8 dos, con 7 tres. «RPE hasta 7» pide parar con tres de reserva.
