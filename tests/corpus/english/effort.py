"""Effort of a set and of a session, pounds, percentages, numbers that have no field."""

from tests.corpus.lines import Theme
from tests.corpus.notation import sets

THEME = Theme("effort", "en")
say = THEME.say

say("pull-ups 5x3 +20 @8", "pull_up 5x3 +20 last@8")
say("pull ups 4x4 +15 all @7", "pull_up 4x4 +15 @7")
say("chins 3x5 +10, every set rpe 8", "chin_up 3x5 +10 @8")
say("dips 5x5 +25 rpe 8.5", "dip 5x5 +25 last@8.5")
say("pull-ups 5x3 @ 22.5kg @ 8-9", "pull_up 5x3 +22.5 last@8.5")
say("pull-ups: 3@20 @7, 3@22.5 @8, 3@25 @9", "pull_up 3 +20 @7; pull_up 3 +22.5 @8; pull_up 3 +25 @9")
say("pullups 3x3 +25: RPE 7, 8, 9", "pull_up 3 +25 @7; pull_up 3 +25 @8; pull_up 3 +25 @9")
say("chin ups +15: 5 (rpe 7), 5 (rpe 8), 4 (rpe 9.5)", "chin_up 5 +15 @7; chin_up 5 +15 @8; chin_up 4 +15 @9.5")
say("dips 4x6 +20 2 RIR", "dip 4x6 +20 last@8")
say("dips 4x6 +20, 2 rir on all of them", "dip 4x6 +20 @8")
say("pull-ups 4x5 +10 with about 3 reps in reserve on the last set", "pull_up 4x5 +10 last@7")
say("pull ups 3x5 +20. could've done one more", "pull_up 3x5 +20 last@9")
say("pull-ups 3x5 +20, two more in the tank at the end", "pull_up 3x5 +20 last@8")
say("max set of chins, 16, nothing left", "chin_up 16 @10")
say("ring dips 3x8 last set to failure", "ring_dip 3x8 last@10")
say("push ups 3 sets to failure: 35, 28, 22", "push_up 35,28,22 @10")
say("Chin-ups 3x6 +10 almost to failure", "chin_up 3x6 +10", why="almost to failure is no number")
say("pull-ups 4x5 +12.5, easy", "pull_up 4x5 +12.5")
say("hard day. dips 4x5 +30", "dip 4x5 +30")
say("pull ups 4x5 +10 between rpe 6 and 8 depending on the set", "pull_up 4x5 +10", ask="rpe: between rpe 6 and 8")
say("chin ups 5x4 +10 rpe 7-8.5 over the sets", "chin_up 5x4 +10", ask="rpe: rpe 7-8.5")
say("top single on pull-ups 50kg @9.5", "pull_up 1 +50 @9.5")
say("pull-ups 5x3 +20 rpe 8, then dips 3x8 +10", "pull_up 5x3 +20 last@8; dip 3x8 +10")
say("Pull-ups 5x3 +20 @8, dips 3x8 +10 @7", "pull_up 5x3 +20 last@8; dip 3x8 +10 last@7")
say("Pull-ups 4x4 +20, dips 3x8, rows 3x10 40kg. RPE 7", "pull_up 4x4 +20; dip 3x8; row 3x10 +40", srpe=7)
say("rpe 8 today overall: chin-ups 5x5, push ups 3x20", "chin_up 5x5; push_up 3x20", srpe=8)
say("session RPE 6. pull ups 5x3 +17.5", "pull_up 5x3 +17.5", srpe=6)
say("pull-ups 5x3 +20, session 8/10, 50 min", "pull_up 5x3 +20", srpe=8, mins=50)
say("Whole workout was a 9: dips 5x5 +35", "dip 5x5 +35", srpe=9)
say("RPE 7\npull-ups 4x4 +20", "pull_up 4x4 +20", srpe=7, why="said before the work it is the session's")
say("oap 2x1 each side, rpe 8", "one_arm_pull_up LR 2x1 last@8")
say("pull-ups 5x3 +20 first set 6 last set 8 rpe", "pull_up 3 +20 @6; pull_up 3x3 +20; pull_up 3 +20 @8")
say("pull-ups 5x3 +20, first @7 last @9", "pull_up 3 +20 @7; pull_up 3x3 +20; pull_up 3 +20 @9")
say("bw chin-ups 3x8 @9", "chin_up 3x8 last@9", why="bw counts as a load beside @")
say("tuck front lever 4x10s, 8 on the effort scale", "tuck_front_lever 4x10s last@8")
say("dips 3x5 +40, last rep of the last set was a 10", "dip 3x5 +40 last@10")
say("pull up 3x3 +30. That was RPE nine.", "pull_up 3x3 +30 last@9")
say("+27.5 for 3 @ 8, then 2 more sets of 3 at same weight, pull ups", "pull_up 3 +27.5 @8; pull_up 2x3 +27.5")
say(
    "dips 4x5 +20 rir 1-2",
    "dip 4x5 +20 last@8.5",
    also=({"sets": sets("dip 4x5 +20"), "ask": [{"about": "rpe", "span": "rir 1-2"}]},),
    why="a range closing one movement is its last set's middle; asking whether it spans the sets is as good",
)
say("AMRAP set of dips with 20: got 9", "dip 9 +20")
# Pounds
say("weighted pullups 5x3 w/ 45", "pull_up 5x3 +45lb", unit="lb")
say("chins 3x5 +25# rpe 8", "chin_up 3x5 +25lb last@8", unit="lb")
say("pull ups 4x4 +35 pounds", "pull_up 4x4 +35lb")
say("dips: 45 lb x 5, 45 lb x 5, 50 lb x 3", "dip 5,5 +45lb; dip 3 +50lb")
say("pull-ups +10kg 3x5 then +25lbs 3x3", "pull_up 3x5 +10; pull_up 3x3 +25lb", unit="lb")
say("pull ups 3x3 +44lb which is 20 kilos I think", "pull_up 3x3 +44lb", sets_or=("pull_up 3x3 +20",))
say("bw 165.5, chin ups 4x6 no weight", "chin_up 4x6", bw=75.06953635, unit="lb", body=75.5)
say(
    "Pulldowns 120 x 10, 130 x 8",
    "lat_pulldown 10 +120lb; lat_pulldown 8 +130lb",
    unit="lb",
    why="the larger figure is the stack",
)
say("weighed 172 this morning", bw=172 * 0.45359237, unit="lb", body=78.4)
say("deload: pull-ups 2x3 +10lb", "pull_up 2x3 +10lb", unit="lb")
say("counterweight 20 lb, one arm 2 L 2 R", "one_arm_counterweight LR 2 -9.0718474", unit="lb")
# Shares of the body
say(
    "pull-ups 4x2 with 50% bodyweight added",
    "pull_up 4x2 +40",
    body=80.0,
    ask_or="load_kg: 50% bodyweight",
    also=({"sets": sets("pull_up 4x2 +?"), "ask": [{"about": "load_kg", "span": "50% bodyweight"}]},),
)
say("dips 3x5 at 80%", "dip 3x5 +?", ask="load_kg: 80%", why="of what, nobody says")
# Without a field
say("pull-ups 4x4 +20, 3 min rests", "pull_up 4x4 +20", maybe_unread=("3 min rests",))
say("chins 4x5 +15 tempo 31X1", "chin_up 4x5 +15", maybe_unread=("tempo 31X1",))
say("dips 5x5 +20. HR peaked at 158", "dip 5x5 +20", maybe_unread=("HR peaked at 158",))
say("pull-ups 3x5 +20, rest 180s, music at 140 bpm", "pull_up 3x5 +20", maybe_unread=("rest 180s", "140 bpm"))
say(
    "Ring rows 3x10 with 90 seconds between, feet on a 40 cm box",
    "ring_row 3x10",
    maybe_unread=("90 seconds between", "40 cm box"),
)
say("pull ups 4x4 +17.5 (3-1-3-0)", "pull_up 4x4 +17.5", maybe_unread=("3-1-3-0",))
say(
    "5k run before, 27:30. then pull ups 3x5 +10",
    "pull_up 3x5 +10",
    unread=("5k run before, 27:30",),
    ask_or="movement: 5k run",
)
say("deadlift 5x5 120kg and pull-ups 5x5", "pull_up 5x5", unread=("deadlift 5x5 120kg",), ask_or="movement: deadlift")
say("KB swings 5x20 @24, chin ups 5x5", "chin_up 5x5", unread=("KB swings 5x20 @24",), ask_or="movement: KB swings")
say(
    "bench 3x5 80kg, dips 3x8, rowing machine 2000m 8:10",
    "dip 3x8",
    unread=("bench 3x5 80kg", "rowing machine 2000m 8:10"),
    ask_or="movement: bench",
)
say("cycled 40 min to the park and back. muscle ups 4x3", "muscle_up 4x3", maybe_unread=("cycled 40 min",))
say("burpees 3x15 then hollow holds 3x30s", "hollow_hold 3x30s", unread=("burpees 3x15",), ask_or="movement: burpees")
# Durations
say("pull-ups 5x3 +20. Took 45 min", "pull_up 5x3 +20", mins=45)
say("chin-ups 4x5. An hour and a half all in.", "chin_up 4x5", mins=90)
say("18:10-19:05 dips 4x8 +10", "dip 4x8 +10", why="clock times are no duration")
say("dips 3x8, 35 minutes start to finish, rpe 6 for the session", "dip 3x8", mins=35, srpe=6)
say("1h15 session. Pull-ups 6x2 +30", "pull_up 6x2 +30", mins=75)
say("gym closes at 21:00 so quick one: ring dips 3x8", "ring_dip 3x8")
say("half an hour: push ups 4x20", "push_up 4x20", mins=30)
