# What an athlete has stored, to see and to end.
data-overview =
    This is stored about you: { $sessions ->
        [one] one session
       *[other] { $sessions } sessions
    } with { $sets } sets, { $pain } answers about pain, { $weights } bodyweights, { $messages } messages you wrote. { $coach } sees your training, pain and what you write for the coach.
    Three files follow: a page to read, everything as JSON, and the tables as CSV. “delete all my data” erases it.
data-page-name = my-page.txt
data-file = { $name }
data-heading = What is stored about { $name }, { $day }
data-who = Known as { $handle }, in { $zone }, language { $language }; the coach is { $coach }.
data-plan = Planned: { $work }
data-done = Done: { $work }
data-pain = Pain: { $place } { $score }/10
data-sign = Warning sign: { $sign }
data-order = Your coach decided: { $what }
data-rows = Every row that is stored, table by table, under the names it is stored by:
erase-sure =
    This deletes everything stored about you: sessions, plans, pain, messages. It cannot be undone, and { $coach } is told that you left.
    Copies of the database, kept against its loss, still hold it for up to { $days } days, then they are deleted too. What stands in this chat is yours to delete.
    To go on, press the button or write “delete all my data” once more within a day.
button-erase = Delete everything
button-keep = Keep it
erase-kept = Nothing is deleted.
erase-running = The deletion has begun and cannot be stopped any more.
erase-farewell = All your data is being deleted, { $name }, within minutes, and from the copies kept against loss within { $days } days. This was the last message. Train well.
erase-for-coach = { $name } has left and asked for all data to be deleted. It is gone within minutes, from your summaries too.
