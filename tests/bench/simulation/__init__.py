"""Virtual athletes with hidden strength, who live through months of a planner that speaks the rehearsal protocol.

`python -m tests.bench.simulation` prints what a coach would want to know of a planner before trusting it: whether the
effort felt is the effort aimed for, what was impossible, who got sore, who was promoted too early or too late, who got
strong. The planner is any command that speaks the protocol; two more are here to compare with: `fixed_plan` (so much a
week, whatever happens) and `oracle` (sees the hidden strength).

All numbers of the athletes are invented for the simulation; they claim nothing of real people.
"""
