# The day's work.
plan-heading-training = { $day } · block { $block }, week { $week }
plan-heading-deload = { $day } · block { $block }, deload week: light on purpose
plan-heading-test = { $day } · block { $block }, test day
plan-heading-rest = { $day }
plan-rest = { $day }: no training.
plan-next = Next: { $day } – { $work }
plan-changed = Today's plan has changed. This one counts:
plan-part-warm_up = Warm-up
plan-part-skill = Skill
plan-part-main = Main
plan-part-accessory = Accessories
caution-test = Stop at the first rep that is not clean, and at any pain above 2.

set-lower_half = { $name }, lower half
set-upper_half = { $name }, upper half
set-lowering = { $name }, lowering only
set-paused = { $name }, pause { $where }
set-at-top = on top
set-at-middle = in the middle
set-at-bottom = at the bottom
set-each-side = { $sets }×{ $amount } a side
set-first-side = , { $side } first
set-seconds = { $seconds } s
set-unloaded = without weight
set-unaided = without help
set-as-many = as many as the effort allows
set-as-long = as long as it is clean
set-missed = { $reps } (missed)
set-ceiling = , RPE up to { $rpe }
set-rpe = , RPE { $rpe }
set-last-rpe = , last RPE { $rpe }
set-rpes = , RPE { $rpes }

week-heading = The next seven days:
week-line = { $day } ({ $kind }): { $work }
week-empty = No training in the next seven days.
day-kind-training = training
day-kind-deload = deload
day-kind-test = test
day-kind-rest = rest

why-strength = From your reports your { $movement } maximum is about { $middle } with bodyweight ({ $bodyweight }); loads are made from the cautious end, { $cautious }.
why-nothing = Nothing was decided yet that differs from the plan of the block.
next-training = Next training: { $day }.
welcome = Welcome, { $name }. { $coach } coaches you through this chat: each training day I send your sets, you tell me in your own words what you did. No medical advice here: with a warning sign, stop and see a doctor.

# What is to come of the block.
ahead-test = As things stand, the next test is on { $day }: { $what }.
ahead-no-test = As things stand, no test is in sight.
ahead-test-day = Test: { $day }.
ahead-deload = As things stand, the deload begins on { $day }.
ahead-deload-now = This is the deload week, until { $until }.
ahead-no-deload = As things stand, no deload is in sight.
ahead-block = Block { $block }, week { $week } of { $weeks } (the last is the deload), until { $until }.

# Little time.
cut-short = { $day }: keep the warm-up, and what counts is { $work }. The first to leave out: { $first }. Tell me what you did, and the plan goes on from there.
cut-short-main = { $day }: keep the warm-up; { $work } is all there is beside it. Do what the time allows and tell me: the plan goes on from there.
cut-short-all = { $day } has accessory work only. Do what the time allows and tell me: the plan goes on from there.
must-accessory = { $movement }: accessory work on { $day }, so the first to leave out where it has to be. Tell me what you did.
must-work = { $movement }: part of what { $day } is about. If something hurts, tell me where and how much.
must-warm_up = { $movement }: the warm-up of { $day }, better kept.
must-first = The first to leave out: { $first }.
must-none = { $movement }: not in the plan of { $day }.

# Words of the plan.
rpe-means = RPE is how hard a set was: at 10 nothing was left, at 9 one more rep was in you, at 8 two, at 7 three. “RPE up to 7” asks you to stop with three to spare.
