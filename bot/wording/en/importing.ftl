# Old notes.
import-who = There is no one athlete with the handle “{ $handle }”. Load a roster first: slowrung roster load FILE
import-counts = Understood: { $days } days with { $sets } sets. Without training: { $silent } days. Without a date: { $strays } lines.
import-stray = Line { $line }, no date: { $text }
import-doubt = Line { $line }, { $day }, left out: { $doubts }
import-more = … and { $count } more.
import-how = Nothing is written yet. Run it again with --yes to write this down; what is there already is not written twice.
import-written = Written: { $written } days. There already: { $there }.
