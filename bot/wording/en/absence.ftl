# Days without training.
absence-until = until { $day }
absence-open = until you tell me
absence-missed = Missed { $day }: noted, and nothing is doubled.
absence-away = Away from { $since } { $until }: noted. The first week back is lighter, as caution.
absence-ill = Get well. No training from { $since } { $until }.
absence-ill-fever = Get well. Nothing from { $since } { $until }, and then not before 48 hours without fever. With a high or lasting fever, see a doctor.
absence-pause = Paused from { $since } { $until }. Write “I'm back” whenever you are.
move-done = Moved from { $since } to { $until }.
move-no-room = I moved it to { $day }, but there it does not fit: 48 hours between pulling days. It is left out rather than doubled.
move-nothing = There is no session on { $day } to move.
move-unclear = Which day should move where? For example “move Thursday to Saturday”.
resume = Good to have you back.
stopped = You get no more messages. Write “I'm back” whenever you want them again. Your coach knows.
stopped-for-coach = { $name } asked for no more messages.
equipment-noted = Noted: you have { $equipment } { $until }. The plan makes do with that.
equipment-passed-on = Noted; your coach knows.
equipment-for-coach = { $name } on equipment: “{ $text }”
