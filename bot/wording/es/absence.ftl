# Días sin entrenar.
absence-until = hasta el { $day }
absence-open = hasta que me avises
absence-missed = { $day }, sin entreno: anotado. No se dobla nada.
absence-away = Fuera desde el { $since } { $until }: anotado. La primera semana de vuelta será más ligera, por precaución.
absence-ill = Que te mejores. Sin entreno desde el { $since } { $until }.
absence-ill-fever = Que te mejores. Nada desde el { $since } { $until }, y después no antes de 48 horas sin fiebre. Con fiebre alta o que no baja, ve al médico.
absence-pause = En pausa desde el { $since } { $until }. Escribe «ya volví» cuando quieras.
move-done = Movido del { $since } al { $until }.
move-no-room = Lo moví al { $day }, pero ahí no cabe: entre dos días de tirón van 48 horas. Se queda fuera en vez de doblarse.
move-nothing = El { $day } no hay ninguna sesión que mover.
move-unclear = ¿Qué día va a cuál? Por ejemplo, «pasa el jueves al sábado».
resume = Qué bueno tenerte de vuelta.
stopped = No te llegarán más mensajes. Escribe «ya volví» cuando los quieras otra vez. Tu coach lo sabe.
stopped-for-coach = { $name } pidió no recibir más mensajes.
equipment-noted = Anotado: tienes { $equipment } { $until }. El plan se arregla con eso.
equipment-passed-on = Anotado; tu coach lo sabe.
equipment-for-coach = { $name }, sobre su material: «{ $text }»
