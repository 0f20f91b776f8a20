# Respuestas cortas, ayuda, desconocidos, fallos.
coach-knows = Tu coach lo sabe.
coach-not-reached = No pude contactar con tu coach. Si no puede esperar, avísale tú.
passed-on = Ya se lo pasé a tu coach.
from-coach = { $name }: { $text }
clip-passed-on = El clip ya lo tiene tu coach.
smalltalk = 👍
unknown = No encontré nada que anotar ahí. Dime qué hiciste («dominadas 5x3 +20, última @8») o pregunta «¿qué toca hoy?». Con «ayuda» ves más.
number-alone = ¿«{ $number }» de qué? Ahora mismo no te pregunté nada. Dime a qué se refiere: «dominadas 5x3 +20», «codo izquierdo 2/10».
empty = Ese mensaje no tenía palabras. Dime qué hiciste o pregunta «¿qué toca hoy?».
too-long = Era muy largo: leí los primeros { $limit } caracteres. Manda el resto en otro mensaje.
edit-not-read = No leo mensajes editados: vale lo que escribiste primero. Corrígelo en un mensaje nuevo, por ejemplo «eran 22,5, no 20».
press-unknown = Ese botón ya no vale. Escríbemelo con palabras.
one-at-a-time = Escribes más rápido de lo que puedo responder. Leo y anoto cada mensaje, uno tras otro; algunas respuestas sencillas las dejo fuera. Pregunta «¿qué toca esta semana?» para ver cómo estás.
older-dropped = No pude contactarte durante un tiempo. Los mensajes que entretanto quedaron viejos se descartaron; lo que llega ahora está al día. Pregunta «¿qué toca hoy?» para ver el plan de hoy.
set-aside = Lo siento, algo falló con tu último mensaje. Está guardado.
help =
    Cuéntame con tus palabras:
    · lo que hiciste – «dominadas 5x3 +20, última @8», «hecho según el plan», «igual pero 2 en la última»
    · dolor – «codo izquierdo 3/10 esta mañana»
    · peso corporal, sueño, tiempo – «peso 71,2, dormí 7h, 65 min»
    · días – «pasa el jueves al sábado», «ayer no entrené», «fuera del 9 al 16 de abril», «estoy enfermo»
    Pregúntame: «¿qué toca hoy?», «¿qué toca esta semana?», «¿por qué menos peso?», «¿cómo voy?»
    Corrige: «eran 22,5, no 20», «borra eso». Con «dile al coach …» le paso tus palabras.
    Aquí no hay consejo médico: ante una señal de alarma, para y ve al médico.
stranger = Este bot funciona con invitación. Pide un código a tu coach y mándalo así: /start CÓDIGO.
code-unknown = Ese código no vale. Pide uno nuevo a tu coach y mándalo así: /start CÓDIGO.
joined = Hola, { $name }: ya estás con { $coach }. Lo que escribes aquí (entrenos, dolor, peso corporal) se guarda y solo lo ve tu coach. Puedes pedirlo todo o hacer que se borre cuando quieras.

quoted = «{ $text }»
# Patrones de fecha según CLDR: «lun 4 ene», «lunes 4 de enero».
day-pattern = EEE d MMM
long-day-pattern = EEEE d 'de' MMMM
swap-passed-on = Qué ejercicios van en el plan lo decide { $coach }; hasta que te diga algo, queda como está. Si hoy haces otra cosa, cuéntame qué hiciste.
unit-set-lb = Desde ahora muestro tus cargas en libras y leo los números solos como libras.
unit-set-kg = Desde ahora muestro tus cargas en kilos y leo los números solos como kilos.
plan-at-set = Desde ahora el plan del día llega a las { $at }.
plan-at-odd = Puedo mandar el plan del día entre las { $earliest } y las { $latest }. ¿A qué hora? «Manda el plan a las 8»
