# Why the plan is as it is: one sentence a reason of the planner, in numbers.

reason-load_up = { $movement }: up from { $before_kg } to { $load_kg }; your reports put the maximum at { $e1rm_kg } with bodyweight.
reason-load_down = { $movement }: down from { $before_kg } to { $load_kg }; your reports put the maximum at { $e1rm_kg } with bodyweight, for { $reps } reps at RPE { $rpe }.
reason-load_same = { $movement }: { $load_kg } stays; your reports put the maximum at { $e1rm_kg } with bodyweight, and the next plate is not earned yet.
reason-load_first = { $movement }: { $load_kg } to begin with, from a maximum of { $e1rm_kg } with bodyweight, for { $reps } reps at RPE { $rpe }.
reason-load_block = { $movement }: { $load_kg } for { $reps } reps at RPE { $rpe }, as this week of the block asks; { $before_when }: { $before_reps } reps with { $before_kg }. Maximum { $e1rm_kg } with bodyweight.
reason-load_test = { $movement }: { $load_kg } for { $reps } at RPE { $rpe }, to measure where you stand.
reason-load_capped = { $movement }: { $load_kg }, though you may be good for more: never more than { $percent } % of the whole load above your best set of the last four weeks.
reason-load_fewer_reps = { $movement }: { $reps } instead of { $wanted_reps } reps, for bodyweight alone is heavy enough.
reason-load_absence = { $movement }: { $load_kg }, { $percent } % of the whole load off after your time away.
reason-load_pain_cut = { $movement }: { $load_kg }, { $percent } % of the whole load off because of the pain; it will feel light.
reason-load_deload = { $movement }: { $load_kg }, light on purpose: a deload stays below week 1 and the last two weeks.
reason-load_cut_effort = { $movement }: { $load_kg } after { $before_kg }, because { $before_when } was two points or more over the asked effort.
reason-load_hold_effort = { $movement }: { $load_kg }, held because { $before_when } was a point over the asked effort.
compared-with = the last session of this kind (on { $day })
compared-with-last = last time
reason-load_hold_short = { $movement }: { $load_kg }, held because { $before_when } had fewer reps than planned and no word on how hard they were.
reason-load_hold_pain = { $movement }: { $load_kg }, held as long as it hurts.
reason-load_after_gap = { $movement }: { $load_kg }, not above what you last did, for there is nothing to compare from the last four weeks.
reason-load_unknown = { $movement }: no sets of yours to go by yet, so as many as RPE { $rpe } allows; the next plan is made from that.
reason-load_pulldown = Below bodyweight for now, so by the stack: { $movement } with { $load_kg }.
reason-load_assisted = Below bodyweight for now, so with { $assist_kg } of help: { $movement }.
reason-bodyweight_only = { $movement }: nothing to hang weight on, so { $reps } reps at bodyweight, RPE up to { $rpe }.
reason-bodyweight_changed = You weigh { $now_kg } after { $was_kg } last time: with the same { $before_kg } on the belt you would lift { $change ->
    [less] less
   *[more] more
} in all.
reason-nothing_to_pull_on = No pulling: there is nothing here to do { $movement } on.
reason-movement_left_out = { $movement } instead of { $before }, which your coach has left out.
reason-movement_substituted = { $movement } instead of { $before }, which your equipment does not allow.
reason-movement_swapped = { $movement } instead of { $before }, by your coach's order.
reason-grip_of_block = { $movement } instead of { $before } for this block, to spare the same tissue.
reason-grip_for_pain = { $movement } instead of { $before }: that grip did not hurt.

reason-load_locked = Your coach has locked the load at { $load_kg } { $until }.
reason-sets_ordered = Your coach set these: { $sets }×{ $reps } { $movement }, { $load_kg }.
reason-step_ordered = Your coach asked for a step on the plan: { $sets }×{ $reps } { $movement } { $load_kg } instead of { $was_sets }×{ $was_reps } { $planned_kg }.
reason-step_held = Your coach’s step on the { $movement } waits: the rules have no room for more that day.
reason-rung_set_by_coach = Your coach put you on { $rung }.
reason-rung_approved = { $rung }, approved by your coach.
reason-rung_after_absence = One rung down to { $rung } after { $days } days away.
reason-rung_test = Test of { $rung }: { $reps ->
    [0] the longest clean hold
    [one] one clean rep a side
   *[other] { $reps } clean reps
} on record. What a test shows is not yet what is trained.
reason-no_test_pain = No test of { $rung } while something hurts.
reason-no_test_exposures = No test of { $rung } this time: it would be too many one-arm reps for one week.

reason-dose_volume = { $rung }: { $sets }×{ $reps } at RPE up to { $rpe }.
reason-dose_of_rung = { $rung }: dose { $dose }, { $sets ->
    [one] one set
   *[other] { $sets } sets
} a side today.
reason-dose_grows = { $rung }: from { $before } to { $dose }, because the block before stayed within its effort.
reason-dose_shrinks = { $rung }: from { $before } back to { $dose }, because it was too hard in { $sessions } sessions running.
reason-third_set = { $rung }: a third set, because the same work has become easier by a point.
reason-exposures_capped = { $rung }: { $reps } instead of { $wanted_reps } reps a side, because one-arm reps grow by at most 30 % or 4 a week.
reason-joints_shared = { $rung }: fewer sets today, because your ladders share the same elbows and shoulders ({ $sets } sets a day).
reason-hold_unknown = { $rung }: no hold of yours to go by yet, so as long as it is clean.
reason-hold_test = { $rung }: one hold as long as it is clean, to measure your best.
reason-hold_of_best = { $rung }: holds of { $seconds } s, about 60 % of your best of { $best_s } s.
reason-skill_out_pain = { $rung }: left out because of the pain.
reason-step_back_pain = { $rung } instead of { $before } until two weeks are quiet.
reason-skill_left_out = { $rung }: left out, as your coach said.
reason-skill_not_possible = { $rung }: left out, your equipment does not allow it today.
reason-proof_shown = Shown on { $on_day }: { $shown }.
reason-clips_missing = No clip that you have seen yet: { $sides }.
reason-reps_missed = Missed reps in { $sessions } sessions in a row on { $rung }.

reason-pain_no_score = Pain, { $place }: loads hold until there is a number.
reason-pain_hold = Pain, { $place } { $score }/10: loads hold, nothing new.
reason-pain_fine = Pain, { $place } { $score }/10: on as planned.
reason-pain_next_morning = Pain, { $place } { $score }/10, still there the next morning: skill sets out for a week, main lift lighter.
reason-pain_rising = Pain, { $place } { $score }/10, rising for two weeks: skill sets out for a week, main lift lighter.
reason-pain_three_sessions = Pain, { $place } { $score }/10, three sessions in a row: one rung back until two quiet weeks.
reason-pain_over = Pain, { $place } { $score }/10: nothing that loads it until your coach says so.
reason-pain_at_rest = Pain at rest, { $place } { $score }/10: nothing that loads it until your coach says so.

reason-deload_effort = An early deload: two sessions in a row at least { $over_rpe } points over the asked effort.
reason-deload_strength_down = An early deload: strength is down { $percent } % on trend.
reason-deload_pain = An early deload because of the pain, { $place } { $score }/10.
reason-deload_ordered = A deload now, as your coach ordered on { $day }.
reason-comeback = First week after { $days } days away: { $percent } % off the whole load, RPE up to { $rpe }. That is caution; the real loss is smaller.
reason-session_moved = Moved here from { $from_day }.
reason-session_slid = Moved here from { $from_day }: missed, and 48 hours fit.
reason-session_gone = The session of { $from_day } is on { $to_day }.
reason-session_dropped = The session of { $day } is left out; nothing is doubled.
reason-session_done_early = The session of { $day } was done on { $done_on } already.
reason-away_away = Away from { $since } { $until }.
reason-away_ill = Ill from { $since } { $until }; after fever, two days without it first.
reason-away_pause = Paused from { $since } { $until }.
reason-paused = Paused from { $since } { $until }.
reason-not_screened = The health questions are not cleared yet; your coach starts the plan.
reason-warning_sign = Training is stopped since { $since } because of { $sign }. Your coach starts it again once it has been looked at.

# What the coach hears.
alert-stopped_by_sign = stopped since { $since } by { $sign }. Only you can start the plan again.
alert-screening_open = the health questions are not cleared; no training until you approve.
alert-pain_stop = pain, { $place } { $score }/10 since { $since }: what loads it is stopped until you say “restart”.
alert-pain_step_down = pain, { $place } { $score }/10 since { $since }: skill sets out for a week, main lift 10 % lighter.
alert-pain_step_back = pain, { $place } { $score }/10 in three sessions in a row: one rung back until two quiet weeks.
alert-proposal_waiting = a step waits for your decision: { $rung }.
alert-silent = no word for { $sessions } sessions.
alert-strength_down = strength down { $percent } % on trend, early deload.

shown-reps = { $reps ->
    [one] one rep
   *[other] { $reps } reps
}
shown-sides = left { $left }, right { $right } reps
shown-seconds = a hold of { $seconds } s

gate-relative_added = added maximum in bodyweights
gate-shown_either = reps a side with the free hand on the shoulder or little counterweight
gate-held = { $dose } held within its effort
gate-hold_of = { $movement }, seconds
gate-reps_of = { $movement } in one set
gate-sets_of = { $movement } in each set
