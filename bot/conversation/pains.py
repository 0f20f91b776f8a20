"""Pain: scores become facts and an answer by the rules; warning signs stop training at once."""

from __future__ import annotations

from dataclasses import replace
from datetime import date
from typing import cast

from bot.conversation.desk import Desk
from bot.conversation.pain_questions import last_place
from bot.conversation.reasons import named, place
from bot.reading.reading import PainRead, Reading
from planner.facts import Moment, PainAnswer, Side, WarningSign
from planner.pain import UNNAMED
from planner.plan import SitePain
from planner.rules import rules_of
from storage import facts, outbox, questions
from storage.questions import Question

SAID_ONCE = {"hold", "step_down", "step_back"}  # a stop is said each time it is met
EMERGENCY = {"chest_pain", "breathless", "dizziness"}
STOPS = {
    "pop", "bruising", "swelling", "deformity", "numbness", "sudden_weakness", "night_pain", "chest_pain",
    "breathless", "dizziness", "locking",
}  # fmt: skip


def store(desk: Desk, reading: Reading, asked: Question | None) -> list[PainAnswer]:
    """Scores and signs as facts. A bare number answers `asked`, for its place and moment."""
    placed = asked is not None and "score" in asked.data and any(one.site for one in reading.pain)
    if reading.pain and asked is not None and (asked.answered_at is not None or placed):
        _take_back(desk, asked, reading)
    kept = []
    for entry in reading.pain:
        bound = _bound(entry, asked)
        on = reading.performed_on or desk.said_on
        if asked is not None and entry.site is None and "on" in asked.data:
            on = date.fromisoformat(asked.data["on"])
        kept.append(PainAnswer(on, bound.site, bound.side, bound.score, bound.when))
        desk.add(kept[-1])
    if reading.pain and asked is not None:
        assert asked.id is not None
        questions.close(desk.tx, asked.id, desk.now)
    signs = [sign for sign in reading.red_flags if sign in STOPS]
    stopping = [one.on for one in kept if _stops(desk, one)] + [desk.said_on for _ in signs]
    if stopping:
        _end_restarts(desk, min(stopping))
    for sign in signs:
        desk.add(WarningSign(desk.said_on, sign))
    return kept


def at_last_place(desk: Desk, reading: Reading, asked: Question | None) -> Reading:
    """ "Still hurts": where is known from what went before, and how much is asked by the place's name."""
    bare = [one for one in reading.pain if one.site is None and one.score is None]
    if not bare or len(reading.pain) > 1:
        return reading
    last = {} if asked is not None else last_place(desk)
    entry = replace(bare[0], site=last.get("site"), side=cast(Side | None, last.get("side")))
    return replace(reading, pain=(entry,), ask=tuple(one for one in reading.ask if one.about != "score"))


def _take_back(desk: Desk, asked: Question, reading: Reading) -> None:
    """What was said to a question, said anew: the thumb had slipped, or the place is named now."""
    on, when = date.fromisoformat(asked.data.get("on", desk.said_on.isoformat())), asked.data.get("when")
    bound = [_bound(entry, asked) for entry in reading.pain]
    places = {(one.site, one.side) for one in bound} | {(None, None)}
    for fact in reversed(desk.record.pain):
        here = (fact.site, fact.side) in places or "site" not in asked.data
        if fact.on == on and fact.when == when and fact.fact is not None and here:
            facts.withdraw(desk.tx, "pain", fact.fact, desk.now, by=desk.cause)
            desk.forget()
            return


def _stops(desk: Desk, answer: PainAnswer) -> bool:
    """Whether the rules stop what loads the place, as in planner/pain.py."""
    score = answer.score or 0.0
    return score > rules_of(desk.record.athlete).number("pain.stop_over") or (answer.when == "rest" and score > 0)


def _end_restarts(desk: Desk, since: date) -> None:
    """Take back what the coach lifted from that day on, not knowing of this: days alone don't tell which came first."""
    for order in desk.record.orders:
        if order.kind == "restart" and order.on >= since and order.fact is not None:
            facts.withdraw(desk.tx, "order", order.fact, desk.now, by=desk.cause)
    desk.forget()


def _bound(entry: PainRead, asked: Question | None) -> PainRead:
    if asked is None:
        return entry
    when: Moment | None = entry.when or asked.data.get("when")
    if entry.site is not None:
        score = entry.score if entry.score is not None else asked.data.get("score")
        return PainRead(entry.site, entry.side, score, when)
    return PainRead(asked.data.get("site"), asked.data.get("side"), entry.score, when)


def alarm(desk: Desk, reading: Reading) -> str | None:
    """The answer to warning signs, with the coach told at once; None where there are none."""
    signs = [sign for sign in reading.red_flags if sign in STOPS]
    if not signs:
        return None
    say, to_coach = desk.say, desk.say_coach
    names = say.listed([named(f"sign-{sign}", sign, say) for sign in signs])
    key = "alarm-emergency" if EMERGENCY & set(signs) else "alarm"
    coach_names = to_coach.listed([named(f"sign-{sign}", sign, to_coach) for sign in signs])
    desk.tell_coach(
        to_coach.say("alarm-for-coach", name=desk.person.name, signs=coach_names),
        importance=outbox.ALERT,
        buttons=[(to_coach.say("button-restart"), f"r:{desk.id}")],
    )
    return say.say(key, signs=names, heard=desk.heard)


def acknowledge(desk: Desk, kept: list[PainAnswer], before: tuple[SitePain, ...]) -> str | None:
    """What the rules make of the scores just told, a sentence each; short where a place stands as it stood before."""
    say = desk.say
    told = [one for one in kept if one.score is not None]
    if not told:
        return None
    if all(one.score == 0 for one in told):
        return say.say("pain-none")
    levels = {(one.site, one.side): one for one in desk.review.pain}
    stood = {(one.site, one.side): one.level for one in before}
    worst: dict[tuple[str, Side | None], PainAnswer] = {}  # "3 this morning, 1 by lunch": what the rules go by
    for one in told:
        place_told = (one.site or UNNAMED, one.side)
        if place_told not in worst or (one.score or 0.0) > (worst[place_told].score or 0.0):
            worst[place_told] = one
    lines, heard = [], desk.heard
    for here, answer in worst.items():
        site = levels.get(here)
        where = place(answer.site, answer.side, say) if answer.site else say.say("pain-somewhere")
        key = f"pain-{site.level}" if site is not None else "pain-noted"
        if site is not None and site.level in SAID_ONCE and stood.get(here) == site.level:
            key = "pain-as-before"
        lines.append(say.say(key, place=where, score=say.number(answer.score or 0.0), heard=heard))
    return "\n".join(dict.fromkeys(lines))
