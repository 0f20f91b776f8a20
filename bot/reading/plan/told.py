"""What the clauses of a message keep, leave out, change and add to the plan."""

from __future__ import annotations

from dataclasses import dataclass, replace

from bot.reading.facts import Fact
from bot.reading.fold.block import fold_block
from bot.reading.fold.rows import Row
from bot.reading.fold.sets import Work
from bot.reading.little import little
from bot.reading.message import Message
from bot.reading.plan.change import change
from bot.reading.plan.choosing import counted_rows, main_rows, pick, the_rows
from bot.reading.plan.clauses import Clause
from bot.reading.plan.ground import GLOBAL, PARTS, plan_names
from bot.reading.reading import Ask
from planner.movements import movement

# Movements whose added load goes over to another of the same pattern.
LOADED = frozenset("pull_up chin_up neutral_grip_pull_up ring_pull_up dip ring_dip".split())
MOST_EXTRA = 5  # more sets beyond the plan are asked
VALUES = frozenset("rows bare loads load at count effort effort_range efforts instead delta fail assist".split())


@dataclass(frozen=True)
class _Said:
    """A clause, looked at once."""

    clause: Clause
    values: list[Fact]
    scoped: list[Fact]

    @property
    def names(self) -> set[str]:
        return self.clause.names

    @property
    def named(self) -> bool:
        return bool(self.clause.targets)

    @property
    def sided(self) -> bool:
        return any(f.kind == "side" and f.value in ("left", "right") for f in self.clause.facts)


class Told:
    """The plan's sets, and what the clauses so far have said of them."""

    def __init__(self, message: Message, rows: list[Row], clauses: list[Clause], work: Work) -> None:
        self.message = message
        self.rows = rows
        self.clauses = clauses
        self.work = work
        self.asks: list[Ask] = []
        self.keep: dict[int, bool] = {}
        self.anew: dict[int, list[Row]] = {}  # rows restated, by the first row they stand for
        self.everything = False
        self.rest = False
        self.extra: list[Row] = []
        self.added: dict[int, list[Row]] = {}  # more sets after a planned one
        self.added_in: tuple[int, int] | None = None  # the row and the sentence of the one added last
        self.sticky: list[int] = []
        self.sticky_at = -1  # the sentence that named it
        self.several = len({row.movement for row in rows if row.part != "warm_up"}) > 1
        self.stop_after: int | None = None
        self.exclusive = False  # "only the pull-ups, as planned": "as planned" is said of them alone
        self.named_some = False  # some clause before named what was done
        self.pointed: tuple[int, list[int], list[int]] | None = None  # sentence, sets meant, those of them pointed at
        self.leaving = False  # "without the archers, the dips": the next one named is left out too

    @property
    def nothing(self) -> bool:
        """Whether no set was told of."""
        return not (self.everything or self.rest or any(self.keep.values()) or self.anew or self.extra)

    def take(self, clause: Clause) -> None:
        """One more clause."""
        said = _Said(
            clause,
            [fact for fact in clause.facts if fact.kind in VALUES],
            [fact for fact in clause.facts if fact.kind == "scope" and fact.value not in ("over", "rest")],
        )
        if "no_rest" in said.names:
            self.exclusive, self.rest, self.everything = True, False, False
            if not said.named and not said.values and not said.scoped:
                return
        if said.named and not said.values and not said.scoped and put_off(self.message, clause):
            for at in clause.targets:
                self.keep[at] = False  # "did the main work. Accessories tomorrow"
            return
        if self._of_added(said) or self._sets_more_or_fewer(said) or self._left_out(said) or self._first_only(said):
            return
        self.leaving = said.named and self.leaving and not said.values
        self._kept_whole(said)
        if self._other_thing(said) or self._other_work(said):
            return
        if not said.values:
            if said.names & {"less", "more"} and all(fact.kind in ("plan", "move") for fact in clause.facts):
                # "same but heavier": by how much is not said
                self.asks.append(Ask("load_kg", self.message.span(clause.facts[0].start, clause.facts[-1].end)))
                return
            self._only_named(said)
            return
        efforts_only = all(fact.kind in ("effort", "effort_range", "at") for fact in said.values)
        if efforts_only and not said.scoped and not said.named and self.pointed and self.pointed[0] == clause.sentence:
            for fact in said.values:
                for at in self.pointed[2] if fact.kind == "effort" and not fact.note.get("session") else ():
                    self.rows[at].rpe = fact.value  # "last set only 2, rpe 9"
            return
        in_mind = bool(self.sticky) and self.sticky_at == clause.sentence
        if efforts_only and not said.scoped and not said.named and self.several and not in_mind:
            for fact in said.values:
                if fact.kind == "effort":
                    self.work.session_rpe = fact.value
            return
        targets = clause.targets or self.sticky
        if said.named:
            self.sticky, self.sticky_at = clause.targets, clause.sentence
        if not targets and said.sided:
            targets = [i for i, row in enumerate(self.rows) if row.side is not None]
        targets = targets or self._those_after(said) or self._meant(said, efforts_only)
        if said.scoped and said.scoped[-1].value != "all":
            self.pointed = (clause.sentence, targets, pick(self.rows, targets, said.scoped[-1].value))
        self._kept_before(said, targets)
        for at in targets:
            self.keep.setdefault(at, True)
        self._change(clause, targets)

    def _of_added(self, said: _Said) -> bool:
        """ "One more set of dips, 6 reps": the reps are those of that set; whether that is what is said."""
        if self.added_in is None or self.added_in[1] != said.clause.sentence:
            return False
        if not said.values or said.scoped or said.named or said.names - {"the"}:
            return False
        self._change_added(said.clause)
        return True

    def _change_added(self, clause: Clause) -> None:
        assert self.added_in is not None
        at = self.added_in[0]
        beside = [replace(self.added[at][0])]
        changed = change(self.message, beside, [0], clause, self.asks)
        if changed is None or len(changed) != 1:
            self.asks.append(Ask("sets", self.message.span(clause.facts[0].start, clause.facts[-1].end)))
            return
        self.added[at] = [replace(changed[0], movement=self.rows[at].movement, part=self.rows[at].part)]

    def _sets_more_or_fewer(self, said: _Said) -> bool:
        """ "One set of dips less", "ein Satz Chin-ups mehr": so many of the last; whether that is what is said."""
        names, rows = said.names, self.rows
        told = next((f for f in said.values if f.kind == "count" and not f.note.get("of_plan")), None)
        if told is not None and told.note.get("more"):
            return self._more_sets(said, told)
        count = None if told is None else told.value
        if count is None or said.scoped or len(said.values) > 1 or not names & {"less", "more", "except"}:
            return False
        if "less" not in names and "more" not in names and not said.named:
            return False
        targets = said.clause.targets or main_rows(rows)
        if "except" in names and "less" not in names:
            self.everything = True  # "all but one set of dips"
        if names & {"less", "except"}:
            step = 2 if rows[targets[-1]].side is not None else 1
            for at in targets[-count * step :]:
                self.keep[at] = False
        elif count == 1:
            self.added[targets[-1]] = [replace(rows[targets[-1]])]
        else:
            return False
        for at in targets:
            self.keep.setdefault(at, True)
        return True

    def _more_sets(self, said: _Said, told: Fact) -> bool:
        """ "Done and 2 extra sets": so many more of the same; with other reps or loads they are asked."""
        targets = said.clause.targets or main_rows(self.rows)
        step = 2 if self.rows[targets[-1]].side is not None else 1
        self.added[targets[-1]] = [replace(self.rows[at]) for _ in range(told.value) for at in targets[-step:]]
        self.everything = self.everything or not (said.named or any(self.keep.values()))
        for at in targets:
            self.keep.setdefault(at, True)
        if len(said.values) > 1 or told.value > MOST_EXTRA:
            self.asks.append(Ask("sets", self.message.span(said.clause.facts[0].start, said.clause.facts[-1].end)))
        return True

    def _first_only(self, said: _Said) -> bool:
        """ "The first two as planned", "only the first three sets": those, and not all."""
        if said.values or not said.scoped or not said.names & {"only", "planned", "done", "same"}:
            return False
        scope = said.scoped[-1].value
        if scope == "all" or (scope == "last" and not said.names & {"only"}):
            return False
        targets = pick(self.rows, said.clause.targets or main_rows(self.rows), scope)
        if not targets:
            self.asks.append(Ask("sets", self.message.span(said.scoped[-1].start, said.scoped[-1].end)))
            return True
        for at in targets:
            self.keep.setdefault(at, True)
        self.exclusive = self.exclusive or not self.everything
        self._warmed_up(targets)
        return True

    def _warmed_up(self, targets: list[int]) -> None:
        """Who did some of the main sets had warmed up."""
        for at, row in enumerate(self.rows):
            if at < min(targets) and row.part == "warm_up":
                self.keep.setdefault(at, True)

    def _left_out(self, said: _Said) -> bool:
        """Sets skipped: "all but the archers", "skipped the last two"; whether that is all that the clause says."""
        names, values, scoped, named, rows = said.names, said.values, said.scoped, said.named, self.rows
        goes_on = self.leaving and named and not values and not names & GLOBAL
        if not (names & {"skipped", "except"} or goes_on):
            return False
        if any("except" in plan_names(fact) for fact in said.clause.facts):
            self.everything = True
        whole = names & (GLOBAL - {"rest"}) or "all_lifts" in names or any(f.value == "all" for f in scoped)
        scoped = [f for f in scoped if f.value != "all"]
        if whole and ("except" not in names or "all_lifts" in names):
            self.everything = True
        targets = said.clause.targets
        if said.sided and not targets:
            targets = [at for at, row in enumerate(rows) if row.side is not None]
        if scoped and any(f.kind in ("bare", "rows", "load", "instead", "delta") for f in values):
            targets = []
        elif scoped:
            targets = pick(rows, targets or main_rows(rows), scoped[-1].value)
            if not named and not self.several:
                self.everything = True  # "skipped the last two": the others were done
        if said.sided and targets:
            side = next(f.value for f in said.clause.facts if f.kind == "side" and f.value in ("left", "right"))
            targets = [at for at in targets if rows[at].side == side]
        fewer = next((f.value for f in values if f.kind == "count" and not f.note.get("of_plan")), None)
        if fewer and targets and "skipped" in names and not scoped:
            # "dropped one set of dips": the last
            targets = targets[-fewer * (2 if rows[targets[-1]].side is not None else 1) :]
        unknown = "except" in names or ("skipped" in names and any("rest" in one.names for one in self.clauses))
        if unknown and not targets and not values and said.clause.facts[-1].kind == "word":
            # something is left out that no book knows: "didn't do the thingies, the rest done"
            facts = said.clause.facts
            self.asks.append(Ask("sets", self.message.span(facts[0].start, facts[-1].end)))
            return True
        if not targets or (names & {"planned"} and not names & {"except", "skipped"}):
            return False
        for at in targets:
            self.keep[at] = False
        self.leaving = True
        return not ("rest" in names and not named)

    def _kept_whole(self, said: _Said) -> None:
        """ "Done", "the rest as planned", "dips fine"."""
        names, named = said.names, said.named
        if self.exclusive and not named and "rest" not in names:
            return
        if ("rest" in names and names & {"planned", "done", "fine", "same"}) or (
            "rest" in names and not named and not names & {"only"} and not late_rest(self.message, said.clause)
        ):
            self.rest = True
        elif names & (GLOBAL - {"rest"}) or "extra_set" in names:
            if named:
                for at in said.clause.targets:
                    self.keep.setdefault(at, True)
            elif not said.sided or not self.sticky:
                surely = names & {"done", "planned", "same", "extra_set"}
                if names & {"done"} and the_rows(self.rows, said.values):
                    surely = set()  # "did the 3s with 25": those alone
                fine = "fine" in names and (said.values or len(self.clauses) > 1) and not any(self.keep.values())
                self.everything = self.everything or bool(surely or fine)

    def _other_thing(self, said: _Said) -> bool:
        """ "Done but with a band instead of weight": what stands for what, no book knows; asked."""
        clause = said.clause
        if "instead" not in said.names or "not_this" in said.names or said.values or said.named or clause.outside:
            return False
        words = [fact for fact in clause.facts if fact.kind == "word" and not fact.note.get("noise")]
        if not words or clause.facts[-1].kind != "word" or any(fact.kind == "claim" for fact in clause.facts):
            return False
        self.asks.append(Ask("sets", self.message.span(clause.facts[0].start, clause.facts[-1].end)))
        return True

    def _other_work(self, said: _Said) -> bool:
        """Work that the plan has not: another movement, one more set; whether that is all that the clause says."""
        clause, names, rows = said.clause, said.names, self.rows
        if ("swap" in names or ("instead" in names and said.named)) and clause.outside and not said.values:
            self._swap(clause.outside[0].value.movement, clause.targets or main_rows(rows))
            self.sticky, self.sticky_at = clause.targets, clause.sentence
            return True
        if "swap" in names and clause.outside and said.named:
            for at in clause.targets:
                self.keep[at] = False  # "swapped dips for push-ups 3x12"
        if "extra_set" in names:
            targets = clause.targets or main_rows(rows)
            self.added[targets[-1]] = [replace(rows[targets[-1]])]
            self.added_in = (targets[-1], clause.sentence)
            self.everything = self.everything or bool(names & {"done", "planned", "same", "fine"})
            if any(fact.kind != "bare" for fact in said.values):
                self._change_added(clause)
            return True
        if clause.outside and any(f.kind in ("rows", "bare") for f in clause.facts):
            move = clause.outside[0]
            folded = fold_block(self.message, move.value.movement, clause.facts, move)
            self.asks += folded.asks
            for row in folded.rows:
                row.movement = move.value.movement
            self.extra += folded.rows
            return True
        if clause.outside and not said.values and self._stands_for(clause):
            fact = clause.outside[0]
            self.asks.append(Ask("movement", self.message.span(fact.start, fact.end)))
            return True
        return False

    def _stands_for(self, clause: Clause) -> bool:
        """ "As planned but did chin-ups": whether a movement that the plan has not may stand for one that it has."""
        spoken = any(one.sentence == clause.sentence and one.names & GLOBAL for one in self.clauses)
        new = clause.outside[0].value.movement
        patterns = {movement(row.movement).pattern for row in self.rows if row.movement and row.part != "warm_up"}
        return spoken and not new.startswith("?") and movement(new).pattern in patterns

    def _swap(self, new: str, where: list[int]) -> None:
        """Another movement in place of the planned one; its load goes over to one of the same pattern only."""
        for at in where:
            row = self.rows[at]
            if movement(new).pattern != movement(row.movement or new).pattern or not LOADED & {new, row.movement}:
                row.load_kg = 0.0
            row.movement = new
            self.keep[at] = True

    def _only_named(self, said: _Said) -> None:
        """A movement of the plan with no value beside it: it was done, or what follows is about it."""
        clause = said.clause
        if not said.named:
            return
        self.sticky, self.sticky_at = clause.targets, clause.sentence
        if "stopped" in said.names:
            for at in range(max(clause.targets) + 1):
                self.keep.setdefault(at, True)
            self.exclusive = not self.everything
            return
        if said.names & {"only"}:
            if self.everything:
                self.asks.append(Ask("sets", self.message.span(clause.facts[0].start, clause.facts[-1].end)))
            self.exclusive = not self.everything
            for at in clause.targets:
                self.keep.setdefault(at, True)
        elif not self.everything and not said.names - {*PARTS, "the"} and len(self.clauses) > 1:
            for at in clause.targets:
                self.keep.setdefault(at, True)

    def _meant(self, said: _Said, efforts_only: bool) -> list[int]:
        """The sets that a clause means which names none."""
        rows, values = self.rows, said.values
        whole = any(fact.value == "all" for fact in said.scoped) or "all_lifts" in said.names or "every" in said.names
        deltas = [f for f in values if f.kind in ("delta", "instead")]
        one_set = any(fact.value != "all" for fact in said.scoped)
        if deltas and not one_set and (whole or self.everything or deltas[0].kind == "instead"):
            return [i for i, row in enumerate(rows) if row.part != "warm_up" or not self.several]
        touched = [i for i, row in enumerate(rows) if row.touched]
        if touched and any(f.kind == "scope" and f.value == "rest" for f in said.clause.facts):
            first = rows[touched[0]].movement
            return [i for i, row in enumerate(rows) if row.movement == first and not row.touched]
        if not said.named and any(f.kind == "load" and f.note.get("none") for f in values) and self.everything:
            return [i for i, row in enumerate(rows) if row.load_kg]  # "as planned, but bodyweight only"
        if "all_lifts" in said.names and values[0].kind in ("bare", "load") and not one_set:
            return [i for i, row in enumerate(rows) if row.part != "warm_up"]
        if whole and efforts_only:
            return [i for i, row in enumerate(rows) if row.part != "warm_up"]
        counted = next((f for f in values if f.kind == "count" and f.note.get("of_plan")), None)
        own = counted_rows(rows, counted.note["of_plan"]) if counted else []
        return the_rows(rows, values) or own or main_rows(rows)

    def _those_after(self, said: _Said) -> list[int]:
        """ "The first three with 22.5, then 20": the sets after those pointed at in the same sentence."""
        if self.pointed is None or said.scoped or said.names - {"only", "the"} or len(said.values) != 1:
            return []
        sentence, targets, those = self.pointed
        if sentence != said.clause.sentence or said.values[0].kind not in ("bare", "load") or not those:
            return []
        return [at for at in targets if at > max(those)]

    def _kept_before(self, said: _Said, targets: list[int]) -> None:
        """What a value implies of the other sets: "stopped after 3" keeps the warm-up, "one less" keeps all."""
        values, names = said.values, said.names
        if any(f.kind == "count" for f in values) and not said.scoped and not said.named:
            if "stopped" in names or any(f.note.get("only") for f in values) or "only" in names:
                self.stop_after = max(targets)
            for at in targets:
                self.keep.setdefault(at, True)
            self._over(said, targets)
            if not self.everything and not self.rest:
                self._warmed_up(targets)
        elif any(f.kind in ("delta", "instead", "fail") for f in values) and not said.named and not self.sticky:
            self.everything = self.everything or not any(self.keep.values())

    def _over(self, said: _Said, targets: list[int]) -> None:
        """ "6 sets instead of 5": one more like the last; many more are asked."""
        fact = next(f for f in said.values if f.kind == "count")
        step = 2 if self.rows[targets[-1]].side is not None else 1
        if fact.value * step == len(targets) + step:
            self.added[targets[-1]] = [replace(self.rows[targets[-1]])]
        elif fact.value * step > len(targets):
            self.asks.append(Ask("sets", self.message.span(fact.start, fact.end)))

    def _change(self, clause: Clause, targets: list[int]) -> None:
        rows = self.rows
        changed = change(self.message, rows, targets, clause, self.asks)
        if changed is None:
            return
        if len(changed) == len(targets) and all(
            new.movement in (None, rows[at].movement) for new, at in zip(changed, targets, strict=True)
        ):
            for new, at in zip(changed, targets, strict=True):
                rows[at] = replace(new, movement=rows[at].movement, part=rows[at].part)
            return
        told_before = bool(self.anew.get(targets[0])) and not clause.targets
        listed = any(f.kind == "rows" for f in clause.facts)
        if told_before and listed and all(f.kind not in ("scope", "side", "count") for f in clause.facts):
            self.anew[targets[0]] += changed  # "2 sets of 3 and 3 sets of 2"
            return
        self.anew[targets[0]] = changed
        for at in targets[1:]:
            self.anew[at] = []

    def chosen(self) -> list[Row]:
        """The sets done, in the plan's order, then those outside it."""
        include_rest = self.everything or self.rest
        out: list[Row] = []
        for at, row in enumerate(self.rows):
            stopped = self.stop_after is not None and at > self.stop_after and not self.rest
            if stopped and at not in self.anew and self.keep.get(at) is None:
                continue
            if not self.keep.get(at, include_rest):
                continue
            out += self.anew.get(at, [row])
            out += self.added.get(at, [])
        return out + self.extra


def late_rest(message: Message, clause: Clause) -> bool:
    """ "rest tomorrow", "no time for the rest": the rest was not done."""
    words = {token.word for fact in clause.facts for token in message.tokens[fact.start : fact.end]}
    return not words.isdisjoint(little("not_now"))


def put_off(message: Message, clause: Clause) -> bool:
    """ "Accessories tomorrow", "dips later": what the clause names is yet to be done."""
    words = {token.word for token in message.tokens[clause.facts[0].start : clause.facts[-1].end + 1]}
    return not words.isdisjoint(little("put_off")) and not clause.names & {"done", "planned", "rest"}
