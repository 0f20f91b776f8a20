"""A small roster and other things to store, all made up."""

from datetime import UTC, date, datetime, time, timedelta

from planner import facts as f
from storage.inbox import IncomingUpdate
from storage.outbox import Outgoing
from storage.roster import Roster, RosterAthlete, RosterCoach, RosterTest

NOW = datetime(2027, 1, 4, 6, 30, tzinfo=UTC)
TODAY = date(2027, 1, 4)
HOUR = timedelta(hours=1)

EVERY_FACT = (
    f.Session(
        TODAY,
        (
            f.WorkSet("pull_up", 5, load_kg=15.0, rpe=8.0),
            f.WorkSet("archer_ring_elbow", 2, side="left", rom="lower_half", pauses=("top", "middle"), linked=True),
            f.WorkSet("front_lever", None, hold_s=12.5, failed=True, assist_kg=2.5, eccentric=True),
        ),
        session_rpe=7.5,
        duration_min=55.0,
        sleep_h=6.5,
    ),
    f.PainAnswer(TODAY, "elbow_inner", "left", 2.0, "morning"),
    f.WarningSign(TODAY, "numbness"),
    f.Bodyweight(TODAY, 61.4),
    f.Absence("ill", TODAY, TODAY, None, fever=True),
    f.Resume(TODAY),
    f.Move(TODAY, TODAY, TODAY + timedelta(days=1)),
    f.Equipment(TODAY, frozenset({"bar", "rings"}), until=TODAY + timedelta(days=9)),
    f.Clip(TODAY, "archer_ring_elbow", "right", seen_by_coach=False),
    f.Order("set_rule", TODAY, rule="gate", value=0.45, until=TODAY),
    f.SentPlan(
        TODAY,
        block=1,
        week=2,
        kind="training",
        sets=(
            f.PlannedSet("pull_up", "warm_up", 3),
            f.PlannedSet("archer_ring_elbow", "skill", 2, side="left", rpe=7.0, pauses=("top",), rung="archer"),
            f.PlannedSet("pull_up", "main", None, load_kg=12.5, rpe=8.0),
        ),
        holds=("pain",),
    ),
)


def small_roster(*handles: str) -> Roster:
    test = RosterTest(date(2027, 1, 2), "pull_up", reps=5, load_kg=15.0, rpe=9.0)
    entries = tuple(
        RosterAthlete(
            handle=handle,
            name=handle.capitalize(),
            timezone="Europe/Zurich",
            bodyweight_kg=62.0,
            plan_at=time(7, 30),
            schedule=f.Weekly(frozenset({0, 3})),
            rung="weighted_pull_up",
            screened=True,
            tests=(test,),
        )
        for handle in handles
    )
    return Roster(RosterCoach("Inês", "Europe/Lisbon", summary_day=6, summary_at=time(18)), entries)


def update(key: int | str, address: str = "mira", text: str = "pull-ups 5x3 +20") -> IncomingUpdate:
    return IncomingUpdate("terminal", str(key), address, "text", text, NOW)


def message(cause: str, address: str = "mira", **more: object) -> Outgoing:
    given = {"channel": "terminal", "to": address, "text": "Today: rest.", "due_at": NOW, "part": 0}
    return Outgoing(cause=cause, address=address, **{**given, **more})
