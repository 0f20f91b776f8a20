# Lo que hay guardado de un atleta, para verlo y para borrarlo.
data-overview =
    Esto es lo que hay guardado sobre ti: { $sessions ->
        [one] una sesión
       *[other] { $sessions } sesiones
    } con { $sets ->
        [one] una serie
       *[other] { $sets } series
    }, respuestas sobre dolor: { $pain }, pesos corporales: { $weights }, mensajes tuyos: { $messages }. { $coach } ve tus entrenos, tu dolor y lo que escribes para tu coach.
    Siguen tres archivos: una página para leer, todo en JSON y las tablas en CSV. Con «borra todos mis datos» se borra.
data-page-name = mi-pagina.txt
data-file = { $name }
data-heading = Lo que hay guardado sobre { $name }, { $day }
data-who = Alias { $handle }, en { $zone }, idioma { $language }; coach: { $coach }.
data-plan = Planeado: { $work }
data-done = Hecho: { $work }
data-pain = Dolor: { $place } { $score }/10
data-sign = Señal de alarma: { $sign }
data-order = Tu coach decidió: { $what }
data-rows = Cada fila guardada, tabla por tabla, con los nombres con que se guarda:
erase-sure =
    Esto borra todo lo que hay guardado sobre ti: sesiones, planes, dolor, mensajes. No se puede deshacer, y { $coach } sabrá que te fuiste.
    Las copias de la base de datos, guardadas por si se pierde, lo conservan hasta { $days } días más; después también se borran. Lo que está en este chat lo puedes borrar tú.
    Para seguir, pulsa el botón o escribe otra vez «borra todos mis datos» antes de un día.
button-erase = Borrar todo
button-keep = Conservar
erase-kept = No se borró nada.
erase-running = El borrado ya empezó y no se puede parar.
erase-farewell = Todos tus datos se están borrando, { $name }; en unos minutos ya no estarán, y en las copias guardadas, antes de { $days } días. Este fue el último mensaje. Que entrenes bien.
erase-for-coach = { $name } se fue y pidió que se borren todos sus datos. En unos minutos ya no estarán, tampoco en tus resúmenes.
