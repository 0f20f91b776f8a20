# Old notes.
import-columns =
    This is a table with the columns { $names }. Say which holds what, once for each: --column date={ $first } --column movement=NAME.
    There are: date, movement, sets, reps, load, hold, side, rpe, bodyweight, notes; or text instead of movement.
import-counts = Understood: { $days } days with { $sets } sets. Days with nothing to note: { $silent }. Left out: { $left } lines or parts of lines.
import-day = { $day } (line { $line })
import-more-days = … and { $count } more days with { $sets } sets.
import-order-DMY = Dates were read day first: line { $line } as { $day }, not { $other }. If the month comes first: --month-first.
import-order-MDY = Dates were read month first: line { $line } as { $day }, not { $other }. If the day comes first, leave --month-first out.
import-left-no-date = Line { $line }, left out, no date for it: { $text }
import-left-no-day = Line { $line }, left out with what stands below it, there is no such day: { $text }
import-left-other-order = Line { $line }, left out with what stands below it, a day only if read as { $other }: { $text }
import-left-two-days = Line { $line }, left out with what stands below it, out of order as { $read } and in order as { $other }: { $text }
import-left-future = Line { $line }, left out, { $day } is still to come: { $text }
import-left-cell = Line { $line }, the whole row left out, not understood in “{ $column }”: { $text }
import-left-doubt = Line { $line }, left out. { $question }
import-left-unread = Line { $line }, left out, not understood: { $text }
import-left-nothing = Line { $line }, left out, nothing of training found in it: { $text }
import-more = … and { $count } more.
import-how = Nothing is written yet. Run it again with --yes to write this down; what is there already is not written twice.
import-written = Written: { $written } days. There already: { $there }.
