# La terminal.
chat-hello =
    Di qué hiciste («dominadas 5x3 +20, última @8») y luego pregunta «¿por qué?», «¿qué toca hoy?», «¿qué toca esta semana?» o «¿cómo voy?».
    Escribe «coach» para ser el coach («roster», «mira 4x3 con 17,5 el jueves») y «as mira» para volver a ser atleta: { $names }.
    Botones: «/1», «/2» … o sus palabras. «quit» sale. Sin consejo médico: ante una señal de alarma, para y ve al médico.
chat-demo = (Personas inventadas; sus datos están en { $file })
chat-as = — eres { $name } —
chat-nobody = Aquí no hay nadie llamado { $name }. Están: { $names }
chat-no-button = El último mensaje no tiene un botón { $number }.
chat-elsewhere = (un mensaje para { $name })
chat-first-question = ¿qué toca hoy?
