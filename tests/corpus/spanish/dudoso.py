"""Series como en un formulario, totales al lado, lo que pudo ser, noches por el reloj, días de más o de menos."""

from tests.corpus.lines import Theme

THEME = Theme("dudoso", "es")
say = THEME.say

say("dominadas serie 1 5 serie 2 5 serie 3 4", "pull_up 5,5,4")
say("dominadas peso 20 reps 5 5 4", "pull_up 5,5,4 +20")
say("dominadas 5x5 saqué 22 en total", "pull_up 5x5", ask="sets: 22 en total")
say("dominadas 5x5, fallé 2 de 5", "pull_up 5x5", ask="sets: fallé 2")
say("podría haber hecho 5x5 dominadas pero hice 4x5", "pull_up 4x5")
say("mi fisio dice 3x15 flexiones, hice 2x15", "push_up 2x15")
say("dominadas 5x3 con 20, todo rpe 8 menos la última 9", "pull_up 4x3 +20 @8; pull_up 3 +20 @9")
say("dominadas 5x3 con 20, última serie 9 justito", "pull_up 5x3 +20 last@9")
say("dominadas 4x4, fallé la cuarta de la última", "pull_up 4,4,4; pull_up 3 fail")
say("dominadas 5x3 con un disco de 20 y uno de 5", "pull_up 5x3 +?", ask="load_kg: con un disco de 20 y uno de 5")
say("dormí de 11 a 6", sleep=7, does="report")
say("después de 8 km corriendo 3x10 flexiones", "push_up 3x10", maybe_unread=("8 km corriendo",))
say("no era dominadas, eran supinas", fix=("movement", "pull_up", "chin_up"), does="correction")
say("faltan 2 semanas para las vacaciones. dominadas 5x3", "pull_up 5x3")
say(
    "muevo el sábado un día después",
    does="move",
    dates="2027-03-06..2027-03-07",
    at="2027-03-04 18:00",
    tz="Europe/Madrid",
)
