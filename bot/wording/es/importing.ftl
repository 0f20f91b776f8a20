# Notas antiguas.
import-columns =
    Es una tabla con las columnas { $names }. Di qué contiene cada una: --column date={ $first } --column movement=NOMBRE.
    Hay: date, movement, sets, reps, load, hold, side, rpe, bodyweight, notes; o text en lugar de movement.
import-counts = Entendido: { $days } días con { $sets } series. Días sin nada que anotar: { $silent }. Quedan fuera: { $left } líneas o partes de ellas.
import-day = { $day } (línea { $line })
import-more-days = … y { $count } días más con { $sets } series.
import-order-DMY = En las fechas se leyó primero el día: la línea { $line } como { $day }, no { $other }. Si va primero el mes: --month-first.
import-order-MDY = En las fechas se leyó primero el mes: la línea { $line } como { $day }, no { $other }. Si va primero el día, quita --month-first.
import-left-no-date = Línea { $line }, queda fuera, sin fecha: { $text }
import-left-no-day = Línea { $line }, queda fuera con lo que sigue, ese día no existe: { $text }
import-left-other-order = Línea { $line }, queda fuera con lo que sigue, solo es un día leído como { $other }: { $text }
import-left-two-days = Línea { $line }, queda fuera con lo que sigue, como { $read } rompe el orden y como { $other } no: { $text }
import-left-future = Línea { $line }, queda fuera, el { $day } aún no ha llegado: { $text }
import-left-cell = Línea { $line }, la fila entera queda fuera, no se entiende en «{ $column }»: { $text }
import-left-doubt = Línea { $line }, queda fuera. { $question }
import-left-unread = Línea { $line }, queda fuera, no se entiende: { $text }
import-left-nothing = Línea { $line }, queda fuera, no hay nada de entreno: { $text }
import-more = … y { $count } más.
import-how = Todavía no se escribió nada. Ejecútalo otra vez con --yes para guardarlo; lo que ya está no se escribe dos veces.
import-written = Escritos: { $written } días. Ya estaban: { $there }.
