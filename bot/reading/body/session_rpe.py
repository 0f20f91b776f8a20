"""The effort of the whole session: "session rpe 8", "an 8 overall"."""

from __future__ import annotations

from collections.abc import Iterable, Sequence

from bot.reading.body.cues import BodyCues, diary_heads, number_after
from bot.reading.little import little
from bot.reading.message import Claim
from bot.reading.tokens import Token


def _effort(body: BodyCues, at: int) -> tuple[float, int] | None:
    """An effort at a token: "7", "7.5", "8/10", "7-8", "8 von 10"."""
    tokens = body.tokens
    value = tokens[at].value
    if value is None or tokens[at].kind == "clock":
        return None
    if tokens[at].spelled and value == 1:
        return None  # "un disco de 20 y uno de 10", "ein Training"
    scale = body.starts("pain", "scale").get(at)
    end = scale or at + 1
    if (
        scale is None
        and end + 1 < len(tokens)
        and tokens[end].text in little("range")
        and tokens[end + 1].value is not None
    ):
        high = tokens[end + 1].value or 0.0
        if value < high <= value + 2:
            value, end = (value + high) / 2, end + 2
            end = body.starts("pain", "scale").get(end - 1, end)
    if not 0 <= value <= 10:
        return None
    numbered = at > 0 and tokens[at - 1].text in little("numbered")
    if numbered and scale is None and end < len(tokens) and tokens[end].text == ":":
        return None  # "session 5: chins 4x4"
    if end < len(tokens) and scale is None:
        after = tokens[end]
        units = (
            *body.starts("unit", "hour"),
            *body.starts("unit", "minute"),
            *body.starts("unit", "rep_like"),
            *body.starts("unit", "kg"),
        )
        if (
            (end in units and end not in body.starts("session_rpe", "kind"))
            or after.text in ("x", "/", "%", "+")
            or (after.kind == "word" and not after.space)
        ):
            return None
        if (
            after.text in (",",)
            and not after.space
            and end + 1 < len(tokens)
            and tokens[end + 1].value is not None
            and not tokens[end + 1].space
        ):
            return None
    return value, end


def _places(body: BodyCues) -> list[tuple[str, str]]:
    return [key for key in body.at if key[0] == "site"]


def _seconds(tokens: Sequence[Token], at: int) -> bool:
    """Whether a cue's first letter hangs on a number: "4x15s rpe 7" are seconds."""
    return at > 0 and tokens[at].kind == "word" and not tokens[at].space and tokens[at - 1].kind == "num"


def _of_effort(tokens: Sequence[Token], at: int, stop: int) -> bool:
    """ "Sesión de 7" rates the session, "sesión de 7 a 8" and "de 7 de la noche" tell when it was."""
    after = tokens[stop].text if stop < len(tokens) else ""
    return tokens[at - 1].text in little("from") and after not in little("range", "half_of_day")


def _sets_of(body: BodyCues) -> bool:
    """Whether sets are told by their reps alone: "sets of 5", "5er Sätze"."""
    grammar = body.message.beginning("grammar")
    if any(hit.table == "ofsets" for found in grammar for hit in found):
        return True
    texts = [token.text for token in body.tokens]
    uncounted = (at for at, found in enumerate(grammar) if any(hit.table == "sets" for hit in found))
    return any(
        at + 2 < len(texts)
        and texts[at + 1] in little("of")
        and body.tokens[at + 2].value is not None
        and (not at or body.tokens[at - 1].value is None)
        for at in uncounted
    )


def find_session_rpe(body: BodyCues, taken: set[int]) -> Iterable[Claim]:
    if "session_rpe" not in body.tables:
        return
    tokens = body.tokens
    if body.at.keys() & {("pain", "hurt"), ("pain", "word"), *_places(body)}:
        taken = taken | body.covered("when", "during")  # "elbow hurts. In training 3, after 1"
    scales = body.starts("pain", "scale")
    diary = diary_heads(body.message)
    # "session rpe 8", "sRPE 7", "Sesión 8/10", "overall 7"
    for low, high in body.message.sentences:
        for name in ("whole", "cue"):
            for start, end in sorted(body.starts("session_rpe", name).items()):
                if not low <= start < high or start in taken or start in diary or _seconds(tokens, start):
                    continue
                led = start
                while led > max(low, start - 3) and tokens[led - 1].text in little("the", "article"):
                    led -= 1
                if led > low and tokens[led - 1].text in little("after_set"):
                    continue  # "elbow 3 after training, was a 2 on Monday"
                at = number_after(body, end, high, ("session_rpe", "between"), ("session_rpe", "effort"))
                found = _effort(body, at) if at is not None else None
                if at is None or found is None:
                    continue
                value, stop = found
                by_clock = tokens[at - 1].text in little("until_clock") and at not in body.starts("pain", "scale")
                if name == "cue" and by_clock and not _of_effort(tokens, at, stop):
                    continue  # "session at 7"
                if at not in scales and tokens[end - 1].text in little("in_total") and _sets_of(body):
                    continue  # "sets of 5 pull-ups, 7 in total", "series de 3, en total 5"
                if tokens[at].spelled and value == 1 and stop < high and tokens[stop].kind == "word":
                    continue  # "did a session one day last week"
                said = (
                    name == "whole"
                    or at in body.starts("pain", "scale")
                    or any(a in body.covered("session_rpe", "effort", "between") for a in range(end, at))
                    or at == end
                    or tokens[end].text in ":=("
                )
                if said:
                    yield Claim(start, stop, "session_rpe", value)
                    return
        # "rpe 7 overall", "an 8 overall", "7/10 session", "rpe 6 day"
        kinds = body.starts("session_rpe", "kind")
        for start, end in sorted({**kinds, **body.starts("session_rpe", "cue")}.items()):
            if not low <= start < high:
                continue
            for at in range(start - 1, max(low, start - 7) - 1, -1):
                found = _effort(body, at)
                if found is None or any(scale < at < end for scale, end in scales.items()):
                    continue
                value, stop = found
                between = range(stop, start)
                fill = body.covered("session_rpe", "between")
                if start in kinds and start != stop and start not in body.starts("session_rpe", "cue"):
                    break
                if stop <= start and all(a in fill or tokens[a].text in little("for_the") for a in between):
                    before = range(max(low, at - 2), at)
                    effort = any(a in body.covered("session_rpe", "effort") for a in before)
                    if (
                        effort
                        or (tokens[start].text in little("overall") and at and tokens[at - 1].text in little("likely"))
                        or at in body.starts("pain", "scale")
                    ):
                        first = min([a for a in before if a in body.covered("session_rpe", "effort")], default=at)
                        yield Claim(first, end, "session_rpe", value)
                        return
                break
