# Notas antiguas.
import-who = No hay exactamente un atleta con el alias «{ $handle }». Carga antes una lista: slowrung roster load ARCHIVO
import-counts = Entendido: { $days } días con { $sets } series. Sin entreno: { $silent } días. Sin fecha: { $strays } líneas.
import-stray = Línea { $line }, sin fecha: { $text }
import-doubt = Línea { $line }, { $day }, queda fuera: { $doubts }
import-more = … y { $count } más.
import-how = Todavía no se escribió nada. Ejecútalo otra vez con --yes para guardarlo; lo que ya está no se escribe dos veces.
import-written = Escritos: { $written } días. Ya estaban: { $there }.
