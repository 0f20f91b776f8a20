"""Generated messages other than plain reports: questions owed, plans, days, corrections, pain alone."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from datetime import date, timedelta
from random import Random
from typing import Any

from tests.corpus.notation import one_set, prescribed, sets


@dataclass(frozen=True)
class Phrases:
    """Frames of one language."""

    movements: dict[str, str]  # in the plural, as reported
    family: tuple[str, ...]  # bare names that need a plan
    done: tuple[str, ...]
    but_last: tuple[str, ...]  # {r}
    but_load: tuple[str, ...]  # {now} {was}
    only: tuple[str, ...]  # {k}
    was_not: tuple[str, ...]  # {now} {was}
    last_was: tuple[str, ...]  # {now} {was}
    move: tuple[str, ...]  # {a} {b}
    missed: tuple[str, ...]
    weekdays: tuple[str, ...]


PHRASES = {
    "en": Phrases(
        movements={"pull_up": "pull-ups", "chin_up": "chin-ups", "dip": "dips", "ring_dip": "ring dips"},
        family=("levers", "archers", "front lever", "planche"),
        done=("done", "all done ✅", "did everything as planned", "as planned", "all as written", "finished it all"),
        but_last=(
            "as planned but only {r} on the last set",
            "same but {r} reps on the last",
            "done, last set only {r}",
        ),
        but_load=("done but with {now} instead of {was}", "as planned, used {now} instead of {was}"),
        only=("only did {k} of the sets", "got {k} sets in, then had to go"),
        was_not=(
            "that was {now}, not {was}",
            "correction: it was {now} kg not {was} kg",
            "sorry, {now} instead of {was}",
        ),
        last_was=("the last set was {now} reps, not {was}", "correction: last set {now} reps not {was}"),
        move=(
            "can we move {a} to {b}?",
            "please shift {a}'s session to {b}",
            "I'd rather train {b} than {a}, move it pls",
        ),
        missed=("missed yesterday", "didn't train yesterday", "couldn't train yesterday, sorry"),
        weekdays=tuple("Monday Tuesday Wednesday Thursday Friday Saturday Sunday".split()),
    ),
    "de": Phrases(
        movements={"pull_up": "Klimmzüge", "chin_up": "Chin-ups", "dip": "Dips", "ring_dip": "Ringdips"},
        family=("Archer", "Front Lever", "Planche"),
        done=("erledigt", "alles gemacht ✅", "alles wie geplant", "wie geplant", "fertig, alles nach Plan"),
        but_last=("wie geplant, nur beim letzten Satz {r}", "erledigt, letzter Satz nur {r} Wdh"),
        but_load=("erledigt, aber mit {now} statt {was}", "wie geplant, aber {now} statt {was} kg"),
        only=("nur {k} Sätze geschafft", "nach {k} Sätzen aufgehört"),
        was_not=("das waren {now}, nicht {was}", "Korrektur: {now} kg statt {was} kg", "waren {now} statt {was}"),
        last_was=(
            "der letzte Satz waren {now} Wdh, nicht {was}",
            "Korrektur: letzter Satz {now} Wiederholungen statt {was}",
        ),
        move=("kann ich {a} auf {b} verschieben?", "bitte {a} auf {b} schieben"),
        missed=("gestern nicht trainiert", "gestern ausgelassen", "hab gestern nicht geschafft zu trainieren"),
        weekdays=tuple("Montag Dienstag Mittwoch Donnerstag Freitag Samstag Sonntag".split()),
    ),
    "es": Phrases(
        movements={"pull_up": "dominadas", "chin_up": "supinas", "dip": "fondos", "ring_dip": "fondos en anillas"},
        family=("arqueras", "front lever", "plancha"),
        done=("hecho", "todo hecho ✅", "todo según lo planeado", "como estaba planeado", "listo, todo según el plan"),
        but_last=("igual pero en la última solo {r}", "todo hecho, la última serie solo {r}"),
        but_load=("hecho pero con {now} en vez de {was}", "todo según el plan, con {now} en vez de {was}"),
        only=("solo hice {k} series", "paré después de {k} series"),
        was_not=(
            "eran {now}, no {was}",
            "corrección: {now} kg en vez de {was} kg",
            "me equivoqué, eran {now} y no {was}",
        ),
        last_was=(
            "la última serie fueron {now} reps, no {was}",
            "corrección: última serie {now} repeticiones, no {was}",
        ),
        move=("¿puedo pasar lo del {a} al {b}?", "mueve el {a} al {b} porfa"),
        missed=("ayer no entrené", "ayer me salté el entreno", "ayer no pude entrenar"),
        weekdays=tuple("lunes martes miércoles jueves viernes sábado domingo".split()),
    ),
}
PLANNED = "m/weighted_pull_up pull_up {n}x{r} +{load} @8"
Made = tuple[str, dict[str, Any], str | None]  # text, what is in the gold, the plan of the day in notation


def ask_number(random: Random, words: Phrases, day: date) -> Made:
    """A movement and a number that may be repetitions or kilograms."""
    movement, name = random.choice(list(words.movements.items()))
    number = random.randint(11, 30)
    empty = one_set(movement, load_kg=None)
    return f"{name} {number}", asked([empty], "reps", str(number), day), None


def ask_effort_or_load(random: Random, words: Phrases, day: date) -> Made:
    movement, name = random.choice(list(words.movements.items()))
    n, r, x = random.randint(2, 6), random.randint(2, 9), random.randint(6, 10)
    made = [one_set(movement, reps=r, load_kg=None)] * n
    return f"{name} {n}x{r} @{x}", asked(made, "load_kg", f"@{x}", day), None


def ask_load(random: Random, words: Phrases, day: date) -> Made:
    """A load over the plausible."""
    movement, name = random.choice(list(words.movements.items()))
    n, r, load = random.randint(2, 6), random.randint(2, 9), random.randint(181, 900)
    made = [one_set(movement, reps=r, load_kg=None)] * n
    return f"{name} {n}x{r} +{load}", asked(made, "load_kg", f"+{load}", day), None


def ask_family(random: Random, words: Phrases, day: date) -> Made:
    name, n, s = random.choice(words.family), random.randint(2, 5), random.randint(4, 15)
    lower = name.lower()
    if lower.startswith("ar"):
        return f"{name} {n}x3", asked([one_set(None, reps=3)] * n, "movement", name, day), None
    return f"{name} {n}x{s}s", asked([one_set(None, hold_s=s)] * n, "movement", name, day), None


def plan_done(random: Random, words: Phrases, day: date) -> Made:
    plan, n, r, load = a_plan(random)
    return random.choice(words.done), report(sets(f"pull_up {n}x{r} +{load}"), day), plan


def plan_but_last(random: Random, words: Phrases, day: date) -> Made:
    plan, n, r, load = a_plan(random)
    text = random.choice(words.but_last).format(r=r - 1)
    return text, report(sets(f"pull_up {n - 1}x{r} +{load}; pull_up {r - 1} +{load}"), day), plan


def plan_but_load(random: Random, words: Phrases, day: date) -> Made:
    plan, n, r, load = a_plan(random)
    text = random.choice(words.but_load).format(now=f"{load + 2.5:g}", was=f"{load:g}")
    return text, report(sets(f"pull_up {n}x{r} +{load + 2.5}"), day), plan


def plan_partly(random: Random, words: Phrases, day: date) -> Made:
    plan, n, r, load = a_plan(random)
    k = random.randint(2, n - 1)
    return random.choice(words.only).format(k=k), report(sets(f"pull_up {k}x{r} +{load}"), day), plan


def plan_as_list(random: Random, words: Phrases, day: date) -> Made:
    plan, n, r, load = a_plan(random)
    done = sorted((random.randint(r - 1, r) for _ in range(n)), reverse=True)
    text = random.choice((", ", ",", "/", " ")).join(map(str, done))
    return text, report([one_set("pull_up", reps=k, load_kg=load) for k in done], day), plan


def mend_load(random: Random, words: Phrases, day: date) -> Made:
    was = random.randint(5, 14) * 2.5
    now = was + random.choice((-2.5, 2.5, 5))
    # Halves and figures above 12 can be no repetitions.
    was, now = (v if v > 12 else v + 12.5 for v in (was, now))
    text = random.choice(words.was_not).format(now=f"{now:g}", was=f"{was:g}")
    return text, mended("load_kg", was, now, "all"), None


def mend_last(random: Random, words: Phrases, day: date) -> Made:
    was = random.randint(3, 9)
    now = was + random.choice((-1, 1))
    return random.choice(words.last_was).format(now=now, was=was), mended("reps", was, now, "last"), None


def move(random: Random, words: Phrases, day: date) -> Made:
    ahead = random.randint(1, 5)
    first, second = day + timedelta(days=ahead), day + timedelta(days=ahead + 1)
    names = words.weekdays[first.weekday()], words.weekdays[second.weekday()]
    text = random.choice(words.move).format(a=names[0], b=names[1])
    return text, {"intents": ["move"], "dates": span(first, second)}, None


def missed(random: Random, words: Phrases, day: date) -> Made:
    gone = day - timedelta(days=1)
    return random.choice(words.missed), {"intents": ["missed"], "dates": span(gone, gone)}, None


KINDS: tuple[Callable[[Random, Phrases, date], Made], ...] = (
    ask_number,
    ask_effort_or_load,
    ask_load,
    ask_family,
    plan_done,
    plan_but_last,
    plan_but_load,
    plan_partly,
    plan_as_list,
    mend_load,
    mend_last,
    move,
    missed,
)


def a_plan(random: Random) -> tuple[str, int, int, float]:
    """A day's plan in notation: sets (more than repetitions, so that no order is in doubt), repetitions, load."""
    r = random.randint(2, 4)
    n, load = random.randint(r + 1, 6), random.randint(5, 14) * 2.5
    return PLANNED.format(n=n, r=r, load=load), n, r, load


def plan_of(notation: str | None) -> list[dict[str, Any]] | None:
    return None if notation is None else prescribed(notation)


def report(made: list[dict[str, Any]], day: date) -> dict[str, Any]:
    return {"intents": ["report"], "performed_on": day.isoformat(), "sets": made}


def asked(made: list[dict[str, Any]], about: str, words: str, day: date) -> dict[str, Any]:
    return report(made, day) | {"ask": [{"about": about, "span": words}]}


def mended(field: str, was: float, now: float, which: str) -> dict[str, Any]:
    fix = {"field": field, "was": was, "now": now, "movement": None, "side": None, "which": which}
    return {"intents": ["correction"], "correction": fix}


def span(start: date, end: date) -> dict[str, str]:
    return {"from": start.isoformat(), "to": end.isoformat()}
