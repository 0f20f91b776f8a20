# Alte Notizen.
import-columns =
    Das ist eine Tabelle mit den Spalten { $names }. Sag, was worin steht, je einmal: --column date={ $first } --column movement=NAME.
    Es gibt: date, movement, sets, reps, load, hold, side, rpe, bodyweight, notes; oder text statt movement.
import-counts = Verstanden: { $days } Tage mit { $sets } Sätzen. Tage, an denen nichts zu notieren ist: { $silent }. Ausgelassen: { $left } Zeilen oder Teile davon.
import-day = { $day } (Zeile { $line })
import-more-days = … und { $count } weitere Tage mit { $sets } Sätzen.
import-order-DMY = Bei Daten wurde der Tag zuerst gelesen: Zeile { $line } als { $day }, nicht { $other }. Steht der Monat vorn: --month-first.
import-order-MDY = Bei Daten wurde der Monat zuerst gelesen: Zeile { $line } als { $day }, nicht { $other }. Steht der Tag vorn, lass --month-first weg.
import-left-no-date = Zeile { $line }, ausgelassen, ohne Datum: { $text }
import-left-no-day = Zeile { $line }, ausgelassen mit allem darunter, diesen Tag gibt es nicht: { $text }
import-left-other-order = Zeile { $line }, ausgelassen mit allem darunter, ein Tag nur als { $other } gelesen: { $text }
import-left-two-days = Zeile { $line }, ausgelassen mit allem darunter, als { $read } nicht in der Reihenfolge, als { $other } schon: { $text }
import-left-future = Zeile { $line }, ausgelassen, { $day } kommt erst noch: { $text }
import-left-cell = Zeile { $line }, ganz ausgelassen, in „{ $column }“ nicht verstanden: { $text }
import-left-doubt = Zeile { $line }, ausgelassen. { $question }
import-left-unread = Zeile { $line }, ausgelassen, nicht verstanden: { $text }
import-left-nothing = Zeile { $line }, ausgelassen, nichts vom Training darin gefunden: { $text }
import-more = … und { $count } weitere.
import-how = Noch ist nichts geschrieben. Mit --yes wird es aufgeschrieben; was schon da ist, wird nicht doppelt geschrieben.
import-written = Geschrieben: { $written } Tage. Schon da: { $there }.
