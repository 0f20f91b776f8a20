# For coaches.
coach-joined = Hello { $name }, this bot is yours now. “roster” shows your athletes, “invite NAME” makes a code for one, “help” the rest.
coach-help =
    In words, with an athlete's name:
    · “mira” – the card · “roster” · “rungs” – how long each takes · “summary” – the week · “mira week” · “mira why”
    · “mira 4x3 at 17.5 on thursday” · “mira lock 17.5 until 1 march” · “mira hold rung 3 weeks” · “mira unlock”, “mira unlock rung”
    · “mira +1.25”, “mira a set more”, “mira +1.25 every monday”, “mira 4x3 at 10 every monday” – or with several names: mira and jon …
    · “everyone rest this week”, “no archers for anyone but mira this week”, “everyone -10% on sunday” · after an order: “no make it 12.5”, “same for jon”, “and friday too”
    · “mira deload”, “mira deload from monday” · “mira undo” – takes back your last order
    · “mira rung archer_shoulder” · “mira exclude muscle-ups”, “mira include muscle-ups” · “mira rule block.loading_weeks 5”, “rule …” for all
    · “approve mira”, “decline mira” · “seen mira” for clips, “mira restart” after a stop · “mira pause”, “mira resume”
    · “mira move thursday to friday” · “who hasn't reported” · “who tests” · “tell everyone: …”
    · “tell mira: …” · “mira note: …” · “invite mira” · “call archers with low ring ALR”
    · “what if mira trains three days”, “what if mira holds rung 5 weeks” – nothing is changed by asking
coach-edit-not-read = I don't read edits: what you wrote first stands. Write the order anew.
coach-unknown = I did not understand that. “help” shows what I know.
order-too-many = { $sets }×{ $reps } for { $name }: that cannot be meant, so nothing was set.
order-beyond = { $name } has a maximum of about { $most }: { $load } is far beyond it, so nothing was set.
order-one-arm = { $name } stands at { $rung }, and no clean rep of { $movement } was ever told{ $gate }. Nothing is set yet.
button-all-the-same = Set it all the same
button-set-it = Set it
load-alone = { $name }, { $day }: { $sets }×{ $reps } at { $load }?
order-replaced = It takes the place of your order of { $day }: { $what }.
order-aside = For that day it goes before your order of { $day }: { $what }.
order-stands = Mind that your order of { $day } still stands beside it: { $what }.
step-how = { $name }, { $day }: there are no sets that a step like that fits on. “NAME 4x3 at 17.5 on thursday” says them whole.
step-every = “every” wants a weekday: “NAME +1.25 every monday”. Nothing was set.
sets-every = The same on { $days }.
sets-every-block = The same on { $days }: as far as the loading weeks of the block go. “until 1 march” says another end.
sets-step = { $name }: { $step } on what is planned, on { $days }.
sets-step-block = { $name }: { $step } on what is planned, on { $days }: as far as the loading weeks of the block go. “until 1 march” says another end, “NAME unlock” ends it.
sets-step-now = As things stand: { $work }.
sets-step-held = The rules have no room for it on { $days } as things stand.
sets-step-none = No pulling is planned on { $days } as things stand.
sets-step-caps = The rules hold on each day: at most { $percent } % over the best comparable set of four weeks; nothing more in a deload, with pain, after an absence or after sets that were too hard.
step-main-only = A step for every week goes with { $name }’s main lift only: the work of a rung grows by its own rules. Nothing was set.
step-no-session = { $name }: no session is planned then. Nothing was set.
step-sets = { $count ->
    [one] one set
   *[other] { $count } sets
}
step-reps = { $count ->
    [one] one rep
   *[other] { $count } reps
}
order-before-step = On those days your order of { $day } goes before it: { $what }.
order-hard = Mind that { $reps } reps are more than the { $possible } that { $name }’s own reports speak of at that load.
coach-not-done = Nothing is done: “{ $words }” is no part of an order I know. The order alone, please; words for { $name } go with “tell { $handle }: …”.
coach-only = That was only a question to me; of “{ $words }” I understood nothing, and nothing was changed.
order-for-all = Nothing is done: “{ $words }” is no part of an order for everyone that I know. “everyone rest this week”, “no archers for anyone until friday”, “everyone but mira -10% on sunday”; words for all go with “tell everyone: …”.
order-by-name = That goes to athletes by name only: a load, a rung, clips and a stop are decided by what one athlete has shown. Nothing was done. “everyone -10%” lightens, each from their own plan.
order-all-sure = “{ $order }” for { $count }: that asks more of all of them at once, or gives back what was kept from them. Nothing is done yet.
button-for-all = Do it for all { $count }
order-instead = Instead of: { $what }.
order-of-day = what you said on { $day }
together-done = Done for { $count } of { $of }:
together-nobody = Done for nobody:
together-not = Not done:
moved = { $name }: the session of { $since } is on { $until }.
moved-no-room = { $name }: the session of { $since } does not fit on { $until } – one session a day, 48 hours between pulling days. Nothing was moved.
moved-done = { $name } has done the session of { $since } already; nothing was moved.
moved-too = With that, the session of { $since } goes to { $until }.
moved-gone = With that, the session of { $since } is left out.
moved-how = I did not get which session of { $name } goes where. “NAME move thursday to friday”
told-moved = { $coach } moved your session of { $since } to { $until }.
tell-all-what = What shall I tell everyone? “tell everyone: words”
told-all = { $count ->
    [0] Nobody has an open chat with this bot.
    [one] Told { $names }.
   *[other] Told { $count }: { $names }.
}
unheard = No word of today’s session yet: { $names }
unheard-nobody = Nobody’s word of today’s session is missing.
who-tests = Tests in the next two weeks: { $told }.
who-tests-one = { $name } { $day }
who-tests-nobody = Nobody has a test in the next two weeks.
who-deloads = In their deload week: { $names }.
coach-whom = Whom do you mean?
coach-meant = Did you mean { $name }?
coach-whom-typed = Whom do you mean? Write the name.
coach-not-wanted = Nothing is done.
coach-who = Whom do you mean? { $names }
button-approve = Approve
button-hold = Hold
button-train-on = Lift the step back
button-settle = No answer needed
button-ask = Ask how it goes
button-for = { $label }: { $name }
not-screened = { $name } has not been cleared by the health questions. No training before you approve.
started = { $name } may begin; the first block is approved.
started-already = { $name } has begun already.
trained-on = { $name }: the step back for the { $place } is lifted.
restarted = { $name } may train again.
told-restart = { $coach } has cleared you: training goes on.
proposal-promotion = { $name }: ready for { $rung }. { $reasons }
proposal-step_back = { $name }: a step back to { $rung }? { $reasons }
decided-approve = { $name }: { $rung } approved.
decided-decline = { $name }: { $rung } held back.
settled = { $name }: { $count ->
    [one] one message needs no answer.
   *[other] { $count } messages need no answer.
}
asked = Asked { $name } how it goes.
asked-already = { $name } was asked today already, or has no open chat with this bot.
asked-by-coach = { $coach } asks how it goes: there was no word from you of late. One line is enough – what you did, or what keeps you from it.
decided-nothing = { $name }: there is nothing to decide any more.
told-promotion = { $coach } has approved your next rung: { $rung }. It comes with your next block.
told-step_back = { $coach } takes you a step back, to { $rung }, for now.
alert = { $name }: { $what }
of-athlete = { $name }: { $what }
passed-to-coach = { $name } writes: “{ $text }” – answer with “tell { $handle }: …”
clip-for-coach = { $name } sends a clip: “{ $text }”
clip-for-coach-silent = { $name } sends a clip.
clip-kept-as = Counts as: { $shown }
clip-side = { $movement }, { $side }
button-seen = Seen
clips-seen = { $name }: { $count ->
    [0] no clip waits to be seen.
    [one] one clip marked as seen.
   *[other] { $count } clips marked as seen.
}
set-aside-for-coach = A message of { $name } could not be handled. It is kept and set aside.
unreachable = { $name } cannot be reached any more: the chat takes no messages.
joined-for-coach = { $name } has joined.
ask-expired = { $name } did not answer what was meant by “{ $span }” in: “{ $text }”. The rest of it counts.
told = Told { $name }.
told-nobody = { $name } has no open chat with this bot, so that went nowhere. “invite NAME” makes a code.
tell-what = What shall I tell { $name }? “tell NAME: words”
note-kept = Noted about { $name }. It is not shown to them, but goes with the copy of their data, should they ask for that.
invited = For { $name }, once, within 30 days: /start { $code }
sets-how = I did not get the sets for { $name }. “NAME 4x3 at 17.5 on thursday”
sets-set = { $name }, { $day }: { $work }
sets-past = { $name }: { $day } is over; nothing was changed by that.
sets-not-sent = { $name }, { $day }: as things stand, these sets will not be sent. { $why } They are kept in case that changes before.
sets-instead = They stand in for the session of { $day }, which is left out: 48 hours between pulling days.
sets-near = Mind that { $days } is nearer than 48 hours and stays as planned.
load-rounded = { $given } is { $load } on { $name }’s plates.
load-between = Mind that { $name }’s plates do not make { $given }: the next below is { $load }.
lock-how = I did not get the load for { $name }. “NAME lock 17.5 until 1 march”
locked = { $name }: load locked at { $load } { $until }.
held = { $name }: rung held { $until }.
held-ladder = { $name }: { $ladder } held { $until }.
rung-set = { $name}: now on { $rung }.
rung-gate-unmet = (gate { $want } of bodyweight, shown so far { $have })
rung-unknown = There is no rung “{ $rung }”. There are: { $rungs }
movement-unknown = I do not know the movement “{ $movement }”.
excluded = { $name }: without { $movement } { $until }.
deload-ordered = { $name }: the deload begins on { $day }.
deload-none = { $name }: no deload can be planned from { $day } as things stand; nothing was changed.
deload-stands = { $name }: that is the deload week already; nothing was changed.
taken-back = { $name }, taken back: { $what }.
taken-back-other = { $name }: what you said on { $day } is taken back.
taken-back-again = What it had put aside stands again: { $what }.
taken-back-for-all = Taken back for everyone: { $what }.
nickname-again = “{ $nickname }” is { $movement } again
nickname-gone = “{ $nickname }” is no nickname any more
rule-again = { $rule } is { $value } again
taken-back-nothing = There is no order of yours to take back.
told-taken-back = { $coach } took back what was decided on { $day }. “today” shows what stands.
unlocked = { $name }, lifted: { $what }.
unlocked-nothing = { $name }: nothing of that kind is locked, held or left out; nothing was changed.
paused = { $name }: paused { $until }.
pause-replaced = It takes the place of your pause { $until }.
rested = { $name }: no training on { $day }.
until-day = until { $day }
until-lifted = until further notice
effect = Next, { $day }: { $work }
effect-none = No training in sight.
resumed = { $name }: training goes on.
nickname-set = “{ $nickname }” is { $movement } from now on.
nickname-too-long = A nickname can have { $most } characters at most. This one is not set.
nickname-unclear = Which movement shall that be? “call MOVEMENT NICKNAME”
rule-how = “rule NAME VALUE”, such as “rule block.loading_weeks 5”
rule-unknown = There is no rule “{ $rule }”.
rule-set = { $name }: { $rule } is { $value } now.
rule-set-all = { $rule } is { $value } for everyone now.
roster-loaded = { $count ->
    [one] One athlete is loaded, { $added } new.
   *[other] { $count } athletes are loaded, { $added } of them new.
}
roster-erased = Not taken up, as they had all their data deleted: { $names }. Take them out of the file; or, if they asked to come back, load it with { $how }
roster-absent = Not in the file, left as they are: { $names }
roster-own = Set by athletes themselves, and kept until the file says something else: { $settings }
roster-own-plan-at = { $handle } (plan at { $at })
roster-own-unit = { $handle } (loads in { $unit })
roster-code = Code for { $name }, once, within 30 days: /start { $code }

summary-heading = Week to { $day }: { $count ->
    [one] one athlete
   *[other] { $count } athletes
}
summary-needing = Need you ({ $count }):
summary-nobody = Nobody needs you this week.
summary-away = Away ({ $count }):
summary-away-away = away { $until }
summary-away-ill = ill { $until }
summary-away-pause = paused { $until }
summary-fine = Fine ({ $count }) – sessions done of planned in four weeks, rung and dose, maximum:
summary-line = · { $name }: { $what }
summary-unanswered = { $count ->
    [one] wrote on { $day }: { $words }
   *[other] { $count } messages wait for your answer since { $day }, last: { $words }
}
summary-clips = { $count ->
    [one] a clip of { $day } waits to be seen.
   *[other] { $count } clips wait to be seen, the oldest of { $day }.
}
summary-stopped = asked for no more messages.
summary-open-set = the result of an open set is missing: { $span }.
fine-sessions = { $done }/{ $planned }
fine-rung = { $rung }, { $dose }
fine-strength = +{ $added }
fine-pain = pain, { $place } { $score }/10 on { $day }
fine-deload = deload and test

card-heading = { $name }, { $day }
card-block = Block { $block }, week { $week } of { $weeks }
card-bodyweight = Bodyweight { $weight }
card-pain = Pain: { $place } { $score }/10 on { $day }
card-session = { $day }: { $work }
card-order = Your order of { $day }: { $what }
order-start = may begin
order-approve = { $rung } approved
order-decline = { $rung } held back
order-set_rung = rung { $rung }
order-hold_rung = rung held { $until }
order-hold_rung-of = { $ladder } held { $until }
order-set_sets = { $sets }×{ $reps } { $load } on { $for_date }
order-set_sets-of = { $sets }×{ $reps } { $movement } { $load } on { $for_date }
order-step_sets = { $step } on what is planned, on { $for_date }
load-as-planned = at the planned load
order-lock_load = load locked at { $load } { $until }
order-unlock = locks and holds lifted
order-unlock-hold_rung = holds of the rung lifted
order-unlock-lock_load = locks of the load lifted
order-unlock-step_sets = steps of every week ended
order-unlock-exclude = { $movement } again
order-exclude = without { $movement } { $until }
order-deload = deload from { $for_date }
order-restart = may train again
order-train_on = step back for the { $value } lifted
order-set_rule = { $rule } { $value }
order-swap = { $movement } done as { $value } { $until }
card-doubt = Open question: what “{ $span }” means in “{ $text }”
card-note = Note: { $text }
