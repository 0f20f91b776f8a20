# The roster a line each, rungs across it, and what a rule may be.
roster-heading = { $count ->
    [one] One athlete:
   *[other] { $count } athletes:
}
roster-line = · { $handle }: { $rungs }; last { $last }, next { $next }
roster-none = none
rungs-heading = Weeks on a rung across your roster; those still there count for as long as they are:
rungs-line = · { $rung }: half have moved on by { $median }, the middle half between { $early } and { $late } ({ $left } moved on, { $still } did not yet)
rungs-open = · { $rung }: too few have moved on to say ({ $left } moved on, { $still } did not yet, the longest { $weeks } weeks)
rungs-unknown = not known yet
rungs-none = Nobody has been on a rung for a while yet.
rule-wants-switch = { $rule } must be true or false.
rule-wants-choice = { $rule } must be one of { $choices }.
rule-wants-number = { $rule } must be a number.
rule-wants-range = { $rule } must be from { $low } to { $high } { $unit }.
rule-wants-whole = { $rule } must be a whole number from { $low } to { $high } { $unit }.
