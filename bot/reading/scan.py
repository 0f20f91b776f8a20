"""Walk the items of a message once and give all its facts in order."""

from __future__ import annotations

from dataclasses import replace

from bot.reading.facts import Entry, Fact, Scanner

LEAST_DUMBBELL = 9  # below it "the 3s" are sets of three


def scan(scanner: Scanner) -> list[Fact]:
    """Facts in the order of the text. Linear: every form looks at a handful of items."""
    facts: list[Fact] = []
    i = 0
    while i < len(scanner.items):
        made, after = _one(scanner, i, facts)
        facts.extend(made)
        i = max(after, i + 1)
    return facts


def _noise(s: Scanner, i: int) -> int | None:
    """The place after numbers that mean nothing here: rest times, tempo, heart rate, clock times, heights."""
    item = s.at(i)
    if item.has("noise", "tempo"):
        j = i + 1
        while (
            (s.at(j).kind in ("num", "word") and s.at(j).text not in ("on",))
            or s.at(j).text in ("-", "/", ":")
            or (s.at(j).has("times", "x") and s.at(j + 1).kind == "num")
        ):
            if j > i + 9:
                break
            j += 1
        return j
    if item.has("noise", "heart"):
        for j in range(i + 1, i + 5):
            if s.at(j).kind == "num":
                j += 1
                while (
                    s.at(j).kind in ("word", "known", "sym")
                    and s.at(j + 1).kind == "num"
                    and (s.at(j).has("noise", "heart", "peak") or s.at(j).text in ("/", "-"))
                ):
                    j += 2
                return j
    if item.has("noise", "rest"):
        j = i + 1
        while s.at(j).text in (":", "of", "was", "time", "times", "about", "="):
            j += 1
        if s.at(j).kind in ("num", "clock") and (
            s.at(j).kind == "clock" or s.unit_at(j + 1) in ("sec", "min") or s.at(j + 1).text == "'"
        ):
            return j + 2 if s.at(j).kind == "num" else j + 1
    if item.text == "(" and s.at(i + 1).kind == "num" and s.at(i + 2).text == "-" and s.at(i + 4).text == "-":
        j = i + 1
        while s.at(j).kind == "num" or s.at(j).text == "-":
            j += 1
        if s.at(j).text == ")":
            return j + 1
    if item.kind == "sym" and item.text in ("€", "$", "£", ":") and s.at(i + 1).kind == "num" and item.text != ":":
        return i + 2
    if item.kind == "num":
        j = i + 1
        if (
            len(item.text) == 2
            and item.text.isdigit()
            and s.at(j).has("times", "x")
            and not s.at(j).space
            and len(s.at(j + 1).text) == 1
            and s.at(j + 1).text.isdigit()
            and not s.at(j + 1).space
            and s.has_tempo
        ):
            return j + 2  # "31x1"
        if s.at(j).text == "-" and s.at(j + 1).kind == "num":
            j += 2
        unit = s.unit_at(j)
        if unit == "other":
            return j + 1
        if unit in ("sec", "min") or s.at(j).text == "'":
            after = s.at(j + 1)
            if after.has("noise", "rest", "down") or (after.text in ("of", "in") and s.at(j + 2).has("noise", "rest")):
                return j + 2
            if i and s.at(i - 1).has("noise", "rest"):
                return j + 1
        if s.at(i - 1).text == "-" and unit == "other":
            return j + 1
    if item.kind == "clock":
        return None
    return None


def _one(s: Scanner, i: int, before: list[Fact]) -> tuple[list[Fact], int]:
    item = s.at(i)
    if item.kind == "claim":
        return [Fact("claim", item.start, item.end, item.claim)], i + 1
    if item.kind == "move":
        return [Fact("move", item.start, item.end, item.mention)], i + 1
    if item.kind == "nl":
        return [Fact("sep", item.start, item.end, 3, {"nl": True})], i + 1
    if item.kind == "sym" and not item.labels:
        if not item.text.isascii():
            return [Fact("sep", item.start, item.end, 1, {"mark": "emoji"})], i + 1
        if item.text == "|":
            return [Fact("sep", item.start, item.end, 2, {"mark": "|"})], i + 1
        if item.text in (".", "!", "?", ";"):
            return [Fact("sep", item.start, item.end, 3, {"mark": item.text})], i + 1
        if item.text in (",", ":", "(", ")", "/"):
            noise = _noise(s, i)
            if noise is not None:
                return [Fact("word", item.start, s.at(noise - 1).end)], noise
            return [Fact("sep", item.start, item.end, 1, {"mark": item.text})], i + 1
    noise = _noise(s, i)
    if noise is not None:
        end = s.at(min(noise, len(s.items)) - 1).end
        return [Fact("word", item.start, end, None, {"noise": True})], noise
    if item.has("load", "plus") and s.at(i + 1).space and s.at(i + 1).kind == "num":
        chain = s.chain(i + 1)
        if chain is not None and chain[0][0].note.get("plain"):
            return [Fact("sep", item.start, item.end, 1, {"mark": "and"})], i + 1
    tried = _plan(s, i) or _effort(s, i) or _sets(s, i) or s.load(i) or _assist(s, i) or _words(s, i, before)
    if tried is not None:
        return tried
    if item.kind in ("num", "clock") and not item.spelled:
        return [Fact("left", item.start, item.end, item.value, {"text": item.text})], i + 1
    return [Fact("word", item.start, item.end, item.text)], i + 1


def _effort(s: Scanner, i: int) -> tuple[list[Fact], int] | None:
    found = s.effort(i) or s.effort_after(i)
    if found is not None and found[0] and found[0][-1].kind == "effort" and s.at(found[1]).has("effort", "session"):
        found[0][-1].note["session"] = True  # "8/10 effort overall"
        return found[0], found[1] + 1
    return found


def _sets(s: Scanner, i: int) -> tuple[list[Fact], int] | None:
    item = s.at(i)
    if item.has("ofsets"):
        return [Fact("rows", item.start, item.end, [Entry(int(item.name("ofsets") or 1))], {"each_of": True})], i + 1
    if item.has("sets", "vague"):
        return [Fact("vague", item.start, item.end)], i + 1
    if item.has("load", "thing"):
        return [Fact("thing", item.start, item.end)], i + 1
    if item.has("sets", "sets") and s.at(i).value is None:
        # so many a set, or the number of a set
        j = i + 1
        plural = item.text.endswith("s")
        if plural and s.at(j).value is not None and s.at(j).kind == "num" and s.at(j + 1).text in (":", ",", "."):
            plural = True
        if s.at(j).has("times", "of") and s.at(j + 1).value is not None:
            value = s.at(j + 1).value or 0
            return [Fact("rows", item.start, s.at(j + 1).end, [Entry(int(value))], {"each_of": True})], j + 2
        if plural and s.at(j).kind == "num" and s.at(j + 1).has("sep", "and") and s.at(j + 2).kind == "num":
            which = (int(s.at(j).value or 0), int(s.at(j + 2).value or 0))
            return [Fact("scope", item.start, s.at(j + 2).end, ("these", which))], j + 3
        if (
            plural
            and s.at(j).kind == "num"
            and (s.at(j + 1).text == "-" or s.at(j + 1).has("sep", "to"))
            and s.at(j + 2).kind == "num"
            and 0 < (s.at(j).value or 0) < (s.at(j + 2).value or 0) <= 20
        ):
            first, last = int(s.at(j).value or 0), int(s.at(j + 2).value or 0)
            return [Fact("scope", item.start, s.at(j + 2).end, ("these", tuple(range(first, last + 1))))], j + 3
        if plural:
            return None
        if s.at(j).value is not None and s.at(j + 1).text in (":", ",", ")", "-", "."):
            value = s.at(j).value or 0
            if value == int(value) and 1 <= value <= 20:
                go_on = j + 2 if s.at(j + 1).text in (":", ")", "-") else j + 1
                return [Fact("scope", item.start, s.at(j).end, int(value), {"numbered": True})], go_on
        if (
            s.at(j).kind == "num"
            and not before_is_number(s, i)
            and not s.at(j + 1).has("times", "x")
            and s.whole(s.at(j).value or 0.5)
        ):
            return [Fact("scope", item.start, s.at(j).end, int(s.at(j).value or 0), {"numbered": True})], j + 1
    if item.has("topcount"):
        top = int(item.name("topcount") or 1)
        return [
            Fact("scope", item.start, item.end, "top"),
            Fact("rows", item.start, item.end, [Entry(top)], {"top": True}),
        ], i + 1
    if item.text in ("a", "one", "an") and s.unit_at(i + 1) == "min" and not s.at(i + 2).has("noise", "rest"):
        item = replace(item, kind="num", value=1.0)
    if item.value is not None and s.at(i + 1).has("link", "cluster") and item.value <= 20:
        mark = s.at(i + 1)
        return [
            Fact("count", item.start, mark.end, int(item.value)),
            Fact("link", mark.start, mark.end, "cluster"),
        ], i + 2
    if item.has("count") and not item.has("times"):
        reps = int(item.name("count") or 1)
        return [Fact("rows", item.start, item.end, [Entry(reps)], {"each_of": True, "word": True})], i + 1
    if item.text in ("a", "an") and s.at(i + 1).has("count"):
        return [Fact("rows", item.start, s.at(i + 1).end, [Entry(int(s.at(i + 1).name("count") or 1))], {})], i + 2
    if item.has("plan", "the") and s.at(i + 1).has("count"):
        reps = int(s.at(i + 1).name("count") or 1)
        return [Fact("rows", item.start, s.at(i + 1).end, [Entry(reps)], {"the": True})], i + 2
    if (
        item.has("load", "at")
        and s.at(i + 1).has("plan", "the")
        and s.at(i + 2).kind == "num"
        and s.at(i + 3).has("these")
        and (s.at(i + 2).value or 0) >= LEAST_DUMBBELL
    ):
        # "with the 22s": a pair of dumbbells by its figure
        return [Fact("load", item.start, s.at(i + 3).end, s.kg(s.at(i + 2).value or 0), {"how": "at"})], i + 4
    if (
        item.has("plan", "the")
        and s.at(i + 1).kind == "num"
        and s.at(i + 2).has("load", "at")
        and not s.at(i + 1).comma
    ):
        return [Fact("count", item.start, s.at(i + 1).end, int(s.at(i + 1).value or 0), {"only": True})], i + 2
    if item.has("plan", "the") and s.at(i + 1).kind == "num" and s.at(i + 2).text in ("s", "er"):
        return [Fact("rows", item.start, s.at(i + 2).end, [Entry(int(s.at(i + 1).value or 0))], {"the": True})], i + 3
    if item.kind == "clock" and item.value is not None:
        return [Fact("left", item.start, item.end, item.value, {"clock": True})], i + 1
    if item.value is None and not item.has("load", "plus"):
        return None
    if item.value is not None and s.at(i + 1).has("count") and item.value <= 20:
        reps = int(s.at(i + 1).name("count") or 1)
        return [Fact("rows", item.start, s.at(i + 1).end, [Entry(reps) for _ in range(int(item.value))])], i + 2
    chain = s.chain(i)
    if chain is not None:
        return chain
    if item.value is not None and s.at(i + 1).has("sets", "rounds"):
        return [Fact("rounds", item.start, s.at(i + 1).end, int(item.value))], i + 2
    if item.kind == "num":
        listed = s.listed(i)
        if listed is not None:
            return listed
    if item.kind == "num" and item.value is not None:
        after = s.at(i + 1)
        unit = s.unit_at(i + 1)
        if unit in ("kg", "lb", "percent") or after.has("load", "word", "plate"):
            return None
        if unit in ("sec", "min"):
            seconds = item.value * (60 if unit == "min" else 1)
            end = i + 2
            if unit == "min" and s.at(end).has("sep", "and") and s.at(end + 1).kind == "num":
                extra = s.at(end + 1).value or 0
                if extra < 60:
                    seconds, end = seconds + extra, end + 2
                    if s.unit_at(end) == "sec":
                        end += 1
            elif (
                unit == "min"
                and s.at(end).kind == "num"
                and (s.at(end).value or 0) < 60
                and (s.unit_at(end + 1) == "sec" or not s.at(end).space)
            ):
                seconds += s.at(end).value or 0
                end += 2 if s.unit_at(end + 1) == "sec" else 1
            if (
                s.at(end).has("pause")
                and s.at(end).text.startswith("hold")
                and s.at(end + 1).name("pause") in (None, "pause")
            ):
                end += 1
            if (
                s.at(end).has("pause", "pause")
                or s.at(end).text == "at"
                or s.at(end).has("pause", "top", "bottom", "middle")
                or (unit == "min" and s.at(end).has("noise", "since"))
            ):
                return [Fact("word", item.start, s.at(i + 1).end, None, {"noise": True})], i + 2
            return [
                Fact("rows", item.start, s.at(end - 1).end, [Entry(hold_s=seconds)], {"one": True, "unit": unit})
            ], end
        if after.has("sets", "sets"):
            if s.at(i + 2).has("plan", "less", "more"):
                return None
            within = s.at(i - 1).has("times", "within")
            return [Fact("count", item.start, after.end, int(item.value), {"within": within})], i + 2
        if after.has("reps"):
            if s.whole(item.value):
                return [
                    Fact("rows", item.start, after.end, [Entry(int(item.value))], {"one": True, "reps": True})
                ], i + 2
            return [Fact("ask", item.start, after.end, "reps")], i + 2
        if after.text == "/" and s.at(i + 2).value == 10:
            return [Fact("left", item.start, s.at(i + 2).end, item.value, {"of_ten": True})], i + 3
        if (
            (after.text in ("-", "to") or after.has("sep", "or"))
            and s.at(i + 2).kind == "num"
            and (s.at(i + 2).value or 0) > item.value
        ):
            end = i + 3
            if s.at(end).has("reps"):
                end += 1
            if s.unit_at(end) in ("kg", "lb"):
                return [Fact("ask", item.start, s.at(end).end, "load_kg")], end + 1
            return [
                Fact("rows", item.start, s.at(end - 1).end, [Entry(None, ask="reps")], {"one": True, "bare": True})
            ], end
        return [
            Fact(
                "bare",
                item.start,
                item.end,
                item.value,
                {
                    "spelled": item.spelled,
                    "comma": item.comma,
                    "kg": s.kg(item.value),
                    "the": s.at(i - 1).has("plan", "the"),
                },
            )
        ], i + 1
    if item.value is not None and item.has("sets") is False and s.at(i + 1).has("sets", "sets"):
        return [Fact("count", item.start, s.at(i + 1).end, int(item.value))], i + 2
    return None


def before_is_number(s: Scanner, i: int) -> bool:
    return s.at(i - 1).value is not None


def _assist(s: Scanner, i: int) -> tuple[list[Fact], int] | None:
    item = s.at(i)
    if item.has("assist", "off"):
        j = i + 1
        while s.at(j).text in ("about", "around", "of", "~", "a", "maybe", "roughly"):
            j += 1
        if s.at(j).kind == "num" and s.at(j).value is not None:
            unit = s.unit_at(j + 1)
            end = j + 2 if unit in ("kg", "lb") else j + 1
            return [Fact("assist", item.start, s.at(end - 1).end, s.kg(s.at(j).value or 0, unit))], end
        return [Fact("assist", item.start, item.end, None, {"suffix": True})], i + 1
    if (
        item.has("assist", "minus")
        and s.at(i + 1).kind == "num"
        and not s.at(i + 1).space
        and s.at(i - 1).kind != "num"
    ):
        unit = s.unit_at(i + 2)
        if unit in ("kg", "lb"):
            value = s.at(i + 1).value or 0
            return [Fact("assist", item.start, s.at(i + 2).end, s.kg(value, unit))], i + 3
        if unit == "other":
            return [Fact("word", item.start, s.at(i + 2).end, None, {"noise": True})], i + 3
    return None


def _plan(s: Scanner, i: int) -> tuple[list[Fact], int] | None:
    """Words about the day's plan, and values told against it: "50 instead of 45", "2.5 less", "one more rep"."""
    item = s.at(i)
    if item.value is not None:
        j = i + 1
        unit = None
        if s.unit_at(j) in ("kg", "lb", "sec"):
            unit, j = s.unit_at(j), j + 1
        elif s.at(j).has("reps"):
            unit, j = "reps", j + 1
        elif s.at(j).has("sets"):
            unit, j = "sets", j + 1
        mark = s.at(j)
        k = j
        if mark.text == "," and s.at(j + 1).has("plan", "instead"):
            k, mark = j + 1, s.at(j + 1)
        elif mark.value is None and mark.kind in ("word", "known", "claim") and not mark.has("plan"):
            # "22.5 on the bar instead of 20"
            for ahead in range(j + 1, j + 4):
                between = s.at(ahead)
                if between.has("plan", "instead") and between.end - between.start > 1:
                    k, mark = ahead, between
                    break
                if between.value is not None or between.kind not in ("word", "known", "claim"):
                    break
        if mark.has("plan", "instead") and s.at(k + 1).value is not None:
            end = k + 2
            if s.unit_at(end) in ("kg", "lb", "sec"):
                unit, end = unit or s.unit_at(end), end + 1
            elif s.at(end).has("reps"):
                unit, end = unit or "reps", end + 1
            return [Fact("instead", item.start, s.at(end - 1).end, (item.value, s.at(k + 1).value, unit))], end
        if mark.has("plan", "more_reps", "less_reps") and unit in (None, "reps") and item.value <= 10:
            sign = 1 if mark.has("plan", "more_reps") else -1
            return [Fact("delta", item.start, mark.end, (item.value, "reps", sign))], j + 1
        if mark.has("plan", "less", "more") and not mark.has("effort", "rir") and s.at(j + 1).kind != "num":
            sign = -1 if mark.has("plan", "less") else 1
            if unit is None and (s.at(j + 1).has("reps") or s.at(j + 1).has("sets")):
                unit, j = ("reps" if s.at(j + 1).has("reps") else "sets"), j + 1
            if unit == "sets":
                return None
            if unit is None and s.unit_at(j + 1) in ("kg", "lb"):
                unit, j = s.unit_at(j + 1), j + 1
            if unit is None and item.spelled and item.value == 1:
                unit = "reps"
            before = s.at(i - 1)
            tied = (
                before.has("load", "at")
                or s.at(j + 1).has("plan", "all_lifts")
                or s.at(j + 1).text in ("on", "than", "for")
            )
            if unit is None and not tied and item.value == int(item.value) and mark.text == "more":
                return None
            kind = {"sec": "hold", "reps": "reps"}.get(unit or "", "load")
            amount = s.kg(item.value, unit) if kind == "load" else item.value
            return [Fact("delta", item.start, s.at(j).end, (amount, kind, sign))], j + 1
        of = s.at(i + 1).has("times", "of")
        if of and s.at(i + 2).has("plan", "the") and s.at(i + 3).value is not None:
            return [
                Fact("count", item.start, s.at(i + 3).end, int(item.value), {"of_plan": int(s.at(i + 3).value or 0)})
            ], i + 4 + s.at(i + 4).has("sets")
        if (
            s.at(i + 1).has("times", "of")
            and (s.at(i - 1).has("plan", "only") or s.at(i + 3).has("sets"))
            and s.at(i + 2).kind == "num"
            and (s.at(i + 2).value or 0) >= item.value
            and not s.at(i + 3).has("move")
        ):
            whole = int(s.at(i + 2).value or 0)
            return [Fact("count", item.start, s.at(i + 2).end, int(item.value), {"of_plan": whole})], i + 3 + s.at(
                i + 3
            ).has("sets")
        if s.at(i + 1).text == "of" and s.at(i + 2).text in ("those", "them", "these"):
            return [Fact("count", item.start, s.at(i + 2).end, int(item.value), {"those": True})], i + 3
    if item.has("plan", "instead") and s.at(i + 1).value is not None and not item.has("fail"):
        chain = s.chain(i + 1)
        if chain is not None:
            return [Fact("word", item.start, s.at(chain[1] - 1).end, None, {"noise": True})], chain[1]
    if item.has("plan", "extra_set"):
        return [Fact("plan", item.start, item.end, "extra_set")], i + 1
    if item.has("plan", "stopped"):
        j = i + 1
        nth = s.at(j).name("scope")
        if nth is not None and nth.isdigit():
            return [Fact("count", item.start, s.at(j).end, int(nth), {"only": True})], j + 1
        if s.at(j).has("sets") and s.at(j + 1).value is not None:
            return [Fact("count", item.start, s.at(j + 1).end, int(s.at(j + 1).value or 0), {"only": True})], j + 2
        if s.at(j).value is not None and s.at(j + 1).has("sets"):
            return [Fact("count", item.start, s.at(j + 1).end, int(s.at(j).value or 0), {"only": True})], j + 2
    return None


def _paired(before: list[Fact]) -> bool:
    """Whether "2 left 2 right" has just been told: what follows, "x3", counts the pairs."""
    kinds = [fact for fact in before[-5:] if not (fact.kind == "sep" and fact.value == 1)][-4:]
    return [fact.kind for fact in kinds] in (["bare", "side"] * 2, ["side", "bare"] * 2) and {
        fact.value for fact in kinds if fact.kind == "side"
    } == {"left", "right"}


def _words(s: Scanner, i: int, before: list[Fact]) -> tuple[list[Fact], int] | None:
    item = s.at(i)
    if item.has("side"):
        name = item.name("side")
        if name == "per" and s.at(i + 1).has("reps"):
            return [Fact("word", item.start, s.at(i + 1).end)], i + 2
        if name == "unclear" and s.at(i + 1).text == "(" and s.at(i + 2).has("side", "left", "right"):
            return [Fact("side", item.start, s.at(i + 2).end, s.at(i + 2).name("side"))], i + 4
        if name in ("left", "right") and item.text in ("l", "r", "right", "left") and s.at(i + 1).text in ("then",):
            pass
        if (
            name in ("left", "right")
            and item.text == "right"
            and s.at(i + 1).kind == "word"
            and s.at(i + 1).text in ("there", "now", "away", "after")
        ):
            return [Fact("word", item.start, item.end)], i + 1
        if (
            name == "left"
            and item.text == "left"
            and (s.at(i - 1).has("noise") or s.at(i + 1).text in ("the", "out", "early", "for", "at"))
        ):
            return [Fact("word", item.start, item.end)], i + 1
        plain = name == "per"
        return [Fact("side", item.start, item.end, "each" if plain else name, {"plain": plain})], i + 1
    if item.text == "/" and s.at(i + 1).has("side"):
        return [Fact("side", item.start, s.at(i + 1).end, "each")], i + 2
    if item.has("link"):
        return [Fact("link", item.start, item.end, item.name("link"))], i + 1
    if item.has("times", "once", "twice", "thrice"):
        times = {"once": 1, "twice": 2, "thrice": 3}[item.name("times") or "once"]
        return [Fact("repeat", item.start, item.end, times)], i + 1
    if item.has("times", "x") and s.at(i + 1).kind == "num" and _paired(before):
        return [Fact("rounds", item.start, s.at(i + 1).end, int(s.at(i + 1).value or 1), {"pair": True})], i + 2
    if item.has("load", "weighted"):
        return [Fact("weighted", item.start, item.end)], i + 1
    if item.has("flag"):
        name = item.name("flag")
        near = s.at(i + 1).kind == "move" or s.at(i - 1).kind == "move" or s.at(i + 1).has("reps")
        if name == "half" and not near:
            return [Fact("word", item.start, item.end)], i + 1
        name = "half" if name == "partial" else name
        return [Fact("flag", item.start, item.end, name)], i + 1
    if item.has("fail"):
        name = item.name("fail")
        j = i + 1
        while s.at(j).text in ("the", "my", "on", "it", "a", "one"):
            j += 1
        if s.at(j).has("reps") and s.at(j + 1).kind == "num":
            number = int(s.at(j + 1).value or 0)
            return [Fact("fail", item.start, s.at(j + 1).end, number, {"rep": True})], j + 2
        ordinal = s.at(j).name("scope") if s.at(j).has("scope") else None
        if (
            name == "no"
            and s.at(i + 1).value is not None
            and before
            and before[-1].kind in ("effort", "rows", "bare", "load")
        ):
            return [Fact("mend", item.start, item.end, "mend")], i + 1
        if name in ("no", "yes"):
            return [Fact("fail", item.start, item.end, None, {"weak": True, "name": name})], i + 1
        if ordinal is not None and (ordinal.isdigit() or ordinal in ("last", "first")):
            which = int(ordinal) if ordinal.isdigit() else ordinal
            end = j + 1 + s.at(j + 1).has("reps")
            return [Fact("fail", item.start, s.at(end - 1).end, which, {"rep": s.at(j + 1).has("reps")})], end
        return [Fact("fail", item.start, item.end, None)], i + 1
    if item.has("scope"):
        name = item.name("scope") or ""
        j = i + 1
        if name == "last" and s.at(j).has("reps"):
            return [Fact("last_rep", item.start, s.at(j).end)], j + 1
        value: object = int(name) if name.isdigit() else name
        if (
            name in ("first", "last")
            and s.at(j).value is not None
            and (s.at(j).value in (1, 2, 3, 4, 5, 6) and s.at(j).spelled)
            and not s.at(j + 1).has("unit", "half")
        ):
            value = (name, int(s.at(j).value or 1))
            j += 1
            if s.at(j).has("sets"):
                j += 1
        return [
            Fact(
                "scope",
                item.start,
                s.at(j - 1).end,
                value,
                {"text": item.text, "names": [n for t, n in item.labels if t == "plan"]},
            )
        ], j
    if item.has("pause"):
        return [Fact("flag", item.start, item.end, "pause_" + (item.name("pause") or ""))], i + 1
    if item.has("sep", "then"):
        return [Fact("sep", item.start, item.end, 2)], i + 1
    if item.has("sep", "but"):
        return [Fact("sep", item.start, item.end, 1, {"mark": "but"})], i + 1
    if item.has("sep", "and"):
        return [Fact("sep", item.start, item.end, 1, {"mark": "and"})], i + 1
    if item.has("unreal", "mend", "swap"):
        return [Fact("mend", item.start, item.end, item.name("unreal"))], i + 1
    if item.has("scheme"):
        names = [name for table, name in item.labels if table == "plan"]
        return [Fact("scheme", item.start, item.end, item.name("scheme"), {"names": names})], i + 1
    if item.has("plan"):
        names = [name for table, name in item.labels if table == "plan"]
        return [Fact("plan", item.start, item.end, names[0], {"names": names})], i + 1
    if item.has("unreal", "own"):
        return [Fact("scheme", item.start, item.end, "got")], i + 1
    if item.has("unreal"):
        return [Fact("word", item.start, item.end, item.text)], i + 1
    return None
