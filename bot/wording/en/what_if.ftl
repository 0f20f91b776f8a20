# What if: two ways side by side.
what-if-heading = { $name }, { $weeks } weeks, now → then (modelled: no missed day, no pain, every step approved):
what-if-main = · Main lift at the end: { $both }
what-if-rung = · Rung at the end: { $both }
what-if-sessions = · Sessions: { $both }
what-if-exposures = · One-arm reps a side: { $both }
what-if-dates = · { $both }
what-if-days = deload from { $deload }, test { $test }
what-if-both = { $now } → { $then }
what-if-none = none
what-if-how = “what if mira trains three days”, “what if mira holds rung 5 weeks”, “what if mira lock 17.5”, “what if mira pause 2 weeks”, “what if mira rule block.loading_weeks 5”
