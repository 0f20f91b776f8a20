"""Where someone stands: rung, gates, strength and when a gate is likely, in the words of athlete and coach."""

from __future__ import annotations

from collections.abc import Iterator

from bot.conversation.reasons import dose_in_words, ladder_name, named, rung_name
from bot.wording import Wording
from planner import ladders
from planner.gained import Gain
from planner.plan import Forecast, Gate, LadderPosition, Review


def in_words(review: Review, say: Wording, gain: Gain | None = None) -> str:
    """`gain`: what the main lift has gained of late, where that is to be told."""
    lines: list[str] = []
    for position in review.ladders:
        lines += ladder_lines(position, say)
    for one in review.strength:
        if one.movement == review.main_lift and one.side is None:
            lines.append(
                say.say(
                    "progress-strength",
                    movement=say.movement(one.movement),
                    added=say.about(max(0.0, one.added_e1rm_kg)),
                    percent=round(100 * one.relative_added),
                )
            )
    if gain is not None:
        lines.append(_gained(gain, say))
    done, planned = review.adherence
    if planned:
        lines.append(say.say("progress-adherence", done=done, planned=planned))
    return "\n".join(lines) if lines else say.say("progress-nothing")


def _gained(gain: Gain, say: Wording) -> str:
    if not gain.is_change:
        return say.say("progress-gain-none", least=say.load(gain.least_kg))
    return say.say("progress-gain-more" if gain.kg > 0 else "progress-gain-less", change=say.about(abs(gain.kg)))


def ladder_lines(position: LadderPosition, say: Wording) -> Iterator[str]:
    ladder = ladder_name(position.ladder, say)
    where = {"ladder": ladder, "rung": rung_name(position.rung, say), "since": position.since}
    if position.dose:
        yield say.say("progress-rung", **where, dose=dose_in_words(position.dose, say))
    else:
        yield say.say("progress-rung-alone", **where)
    if position.next_rung is None:
        ladder_file = ladders.known().get(position.ladder)
        goes_on = ladder_file is not None and bool(ladder_file.by_id[position.rung].next)
        yield say.say("progress-no-next" if goes_on else "progress-top")
        return
    if position.may_test:
        yield say.say("progress-may-test", rung=rung_name(position.next_rung, say))
    for gate in position.gates:
        yield _gate(gate, position, say)
    for forecast in position.forecasts:
        yield _forecast(forecast, say)


def gate_name(name: str, say: Wording) -> str:
    """The condition of a gate: what is held, shown or held for seconds, by the movement's name."""
    for start, key in (("reps_shown_", "gate-reps_of"), ("sets_shown_", "gate-sets_of"), ("hold_", "gate-hold_of")):
        if name.startswith(start):
            return say.say(key, movement=say.movement(name.removeprefix(start)))
    if name.startswith("held_"):
        return say.say("gate-held", dose=dose_in_words(name.removeprefix("held_"), say))
    return named(f"gate-{name}", name, say)


def _gate(gate: Gate, position: LadderPosition, say: Wording) -> str:
    name = gate_name(gate.name, say)
    have = "–" if gate.have is None else say.number(gate.have)
    key = "progress-gate-met" if gate.met else "progress-gate"
    return say.say(key, rung=rung_name(position.next_rung or "", say), name=name, have=have, want=say.number(gate.want))


def _forecast(forecast: Forecast, say: Wording) -> str:
    name = gate_name(forecast.gate, say)
    if forecast.earliest is None:
        return say.say("forecast-too-early" if forecast.too_early else "forecast-beyond", name=name)
    if forecast.latest is None:
        return say.say("forecast-from", name=name, earliest=forecast.earliest)
    return say.say("forecast-between", name=name, earliest=forecast.earliest, latest=forecast.latest)
