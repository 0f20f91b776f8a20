"""The planner's facts as rows, and rows as the planner's facts."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import MISSING, dataclass, fields
from datetime import date
from functools import cached_property, lru_cache
from typing import Any

import sqlalchemy as sa

from planner import facts as f
from planner.plan import Decision, Reason
from storage import fact_tables as t
from storage.database import table_of

Fact = (
    f.Session
    | f.PainAnswer
    | f.WarningSign
    | f.Bodyweight
    | f.Absence
    | f.Resume
    | f.Move
    | f.Equipment
    | f.Clip
    | f.Order
    | f.SentPlan
)
Convert = Callable[[Any], Any]


@dataclass(frozen=True)
class Form:
    """How one kind of fact is stored. `field`: where a Record has its facts, `day`: the column by which it has them
    ordered."""

    kind: str
    field: str
    fact: type[Any]
    table: sa.Table
    day: str
    to_column: Mapping[str, Convert]
    from_column: Mapping[str, Convert]

    @cached_property
    def names(self) -> tuple[str, ...]:
        """The fact's fields that are columns of the same name. The sets of a session are rows of their own."""
        elsewhere = {"fact", "sets"} if self.fact is f.Session else {"fact"}
        return tuple(field.name for field in fields(self.fact) if field.name not in elsewhere)

    def values(self, fact: Any) -> dict[str, Any]:
        """Column values of a fact."""
        return {name: self.to_column.get(name, _same)(getattr(fact, name)) for name in self.names}

    def order(self, fact: Any) -> tuple[date, int]:
        """By which facts of the kind stand in a Record: of day, then of arrival."""
        return getattr(fact, self.day), fact.fact

    def as_read(self, values: Mapping[str, Any], fact_id: int, sets: tuple[f.WorkSet, ...] = ()) -> Any:
        """The fact that a query will make of column values that were written; a session with its sets."""
        own = {name: self.from_column.get(name, _same)(values[name]) for name in self.names}
        if self.fact is f.Session:
            own["sets"] = tuple(work_set(tuple(set_values(one).values())) for one in sets)
        return self.fact(**own, fact=fact_id)


def _same(value: Any) -> Any:
    return value


def set_names() -> tuple[str, ...]:
    """The columns of a performed set, in the order of a WorkSet's fields."""
    return tuple(field.name for field in fields(f.WorkSet))


def set_values(work: f.WorkSet) -> dict[str, Any]:
    return {name: getattr(work, name) for name in set_names()} | {"pauses": ",".join(work.pauses)}


_PAUSES_AT = set_names().index("pauses")
_TRUTHS_AT = [at for at, field in enumerate(fields(f.WorkSet)) if field.type == "bool"]


def _pauses_from(text: str) -> tuple[Any, ...]:
    return tuple(text.split(",")) if text else ()


_PLANNED_DEFAULTS = {field.name: field.default for field in fields(f.PlannedSet) if field.default is not MISSING}


def planned_to_json(planned: tuple[f.PlannedSet, ...]) -> list[dict[str, Any]]:
    """Planned sets, each with the fields that differ from the default."""
    return [
        {
            field.name: list(value) if isinstance(value, tuple) else value
            for field in fields(f.PlannedSet)
            if (value := getattr(one, field.name)) != _PLANNED_DEFAULTS.get(field.name, MISSING)
        }
        for one in planned
    ]


def planned_from_json(data: list[dict[str, Any]]) -> tuple[f.PlannedSet, ...]:
    return tuple(
        _planned(tuple({**one, "pauses": tuple(one["pauses"])}.items() if "pauses" in one else one.items()))
        for one in data
    )


# The same few sets come again in one record after another: one object of each kind takes less memory, and less time.
ALIKE = 20_000


@lru_cache(maxsize=ALIKE)
def _planned(values: tuple[tuple[str, Any], ...]) -> f.PlannedSet:
    return f.PlannedSet(**dict(values))


@lru_cache(maxsize=ALIKE)
def work_set(values: tuple[Any, ...]) -> f.WorkSet:
    """A performed set of its columns' values as the driver gives them, in the order of `set_names`."""
    own = list(values)
    own[_PAUSES_AT] = _pauses_from(own[_PAUSES_AT])
    for at in _TRUTHS_AT:
        own[at] = bool(own[at])
    return f.WorkSet(*own)


def decisions_to_json(decisions: tuple[Decision, ...]) -> list[dict[str, Any]]:
    return [
        {
            "on": decision.on.isoformat(),
            "kind": decision.kind,
            "about": decision.about,
            "reasons": [
                {"code": reason.code, "values": {name: _value_to_json(v) for name, v in reason.values.items()}}
                for reason in decision.reasons
            ],
        }
        for decision in decisions
    ]


def decisions_from_json(data: list[dict[str, Any]]) -> tuple[Decision, ...]:
    return tuple(
        Decision(
            on=date.fromisoformat(one["on"]),
            kind=one["kind"],
            about=one["about"],
            reasons=tuple(
                Reason(reason["code"], {name: _value_from_json(v) for name, v in reason["values"].items()})
                for reason in one["reasons"]
            ),
        )
        for one in data
    )


def _value_to_json(value: Any) -> Any:
    # A day must come back as a day, and a word that looks like one as a word.
    return {"day": value.isoformat()} if isinstance(value, date) else value


def _value_from_json(value: Any) -> Any:
    return date.fromisoformat(value["day"]) if isinstance(value, dict) else value


def _form(
    kind: str,
    field: str,
    fact: type[Any],
    model: type[t.Said],
    day: str = "on",
    to_column: Mapping[str, Convert] | None = None,
    from_column: Mapping[str, Convert] | None = None,
) -> Form:
    return Form(kind, field, fact, table_of(model), day, to_column or {}, from_column or {})


FORMS = (
    _form("session", "sessions", f.Session, t.Report),
    _form("pain", "pain", f.PainAnswer, t.PainFact),
    _form("sign", "signs", f.WarningSign, t.SignFact),
    _form("bodyweight", "bodyweights", f.Bodyweight, t.BodyweightFact),
    _form("absence", "absences", f.Absence, t.AbsenceFact, "since"),
    _form("resume", "resumes", f.Resume, t.ResumeFact),
    _form("move", "moves", f.Move, t.MoveFact, "said_on"),
    _form("equipment", "equipment", f.Equipment, t.EquipmentFact, "since", {"has": sorted}, {"has": frozenset}),
    _form("clip", "clips", f.Clip, t.ClipFact),
    _form("order", "orders", f.Order, t.OrderFact),
    _form(
        "sent_plan",
        "sent",
        f.SentPlan,
        t.PlanSent,
        to_column={"sets": planned_to_json, "holds": list},
        from_column={"sets": planned_from_json, "holds": tuple},
    ),
)
BY_KIND = {form.kind: form for form in FORMS}
BY_FACT = {form.fact: form for form in FORMS}
