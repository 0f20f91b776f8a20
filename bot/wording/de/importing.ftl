# Alte Notizen.
import-who = Mit dem Kürzel „{ $handle }“ gibt es nicht genau einen Athleten. Lade zuerst eine Liste: slowrung roster load DATEI
import-counts = Verstanden: { $days } Tage mit { $sets } Sätzen. Ohne Training: { $silent } Tage. Ohne Datum: { $strays } Zeilen.
import-stray = Zeile { $line }, ohne Datum: { $text }
import-doubt = Zeile { $line }, { $day }, ausgelassen: { $doubts }
import-more = … und { $count } weitere.
import-how = Noch ist nichts geschrieben. Mit --yes wird es aufgeschrieben; was schon da ist, wird nicht doppelt geschrieben.
import-written = Geschrieben: { $written } Tage. Schon da: { $there }.
