"""Pain: scores become facts and an answer by the rules; warning signs stop training at once."""

from __future__ import annotations

from dataclasses import replace
from datetime import date, timedelta
from typing import cast

from bot.conversation.desk import Buttons, Desk
from bot.conversation.reasons import named, place
from bot.reading.reading import PainRead, Reading
from bot.wording import Wording
from planner.facts import Moment, PainAnswer, Side, WarningSign
from planner.plan import SitePain
from planner.rules import rules_of
from storage import facts, outbox, questions
from storage.questions import Question

QUESTION = "pain"
NOT_NAMED = "other"  # the planner's place for a pain without one
ANSWERABLE = timedelta(hours=36)
MORE = "more"
SAID_ONCE = {"hold", "step_down", "step_back"}  # a stop is said each time it is met
EMERGENCY = {"chest_pain", "breathless", "dizziness"}
OFTEN = (("elbow", "left"), ("elbow", "right"), ("shoulder", "left"), ("shoulder", "right"))  # offered as buttons
SCORES = ("0", "1", "2", "3", "4", "5")
OVER = ("6", "7", "8", "9", "10")
STOPS = {
    "pop", "bruising", "swelling", "deformity", "numbness", "sudden_weakness", "night_pain", "chest_pain",
    "breathless", "dizziness", "locking",
}  # fmt: skip


def store(desk: Desk, reading: Reading, asked: Question | None) -> list[PainAnswer]:
    """Scores and signs as facts. A bare number answers `asked`, for its place and moment."""
    placed = asked is not None and "score" in asked.data and any(one.site for one in reading.pain)
    if reading.pain and asked is not None and (asked.answered_at is not None or placed):
        _take_back(desk, asked)
    kept = []
    for entry in reading.pain:
        bound = _bound(entry, asked)
        on = reading.performed_on or desk.today
        if asked is not None and entry.site is None and "on" in asked.data:
            on = date.fromisoformat(asked.data["on"])
        kept.append(PainAnswer(on, bound.site, bound.side, bound.score, bound.when))
        desk.add(kept[-1])
    if reading.pain and asked is not None:
        assert asked.id is not None
        questions.close(desk.tx, asked.id, desk.now)
    signs = [sign for sign in reading.red_flags if sign in STOPS]
    stopping = [one.on for one in kept if _stops(desk, one)] + [desk.today for _ in signs]
    if stopping:
        _end_restarts(desk, min(stopping))
    for sign in signs:
        desk.add(WarningSign(desk.today, sign))
    return kept


def at_last_place(desk: Desk, reading: Reading, asked: Question | None) -> Reading:
    """ "Still hurts": where is known from what went before, and how much is asked by the place's name."""
    bare = [one for one in reading.pain if one.site is None and one.score is None]
    if not bare or len(reading.pain) > 1:
        return reading
    last = {} if asked is not None else _last_place(desk)
    entry = replace(bare[0], site=last.get("site"), side=cast(Side | None, last.get("side")))
    return replace(reading, pain=(entry,), ask=tuple(one for one in reading.ask if one.about != "score"))


def _take_back(desk: Desk, asked: Question) -> None:
    """What was said to a question, said anew: the thumb had slipped, or the place is named now."""
    on, when = date.fromisoformat(asked.data.get("on", desk.today.isoformat())), asked.data.get("when")
    for fact in reversed(desk.record.pain):
        if fact.on == on and fact.when == when and fact.fact is not None:
            facts.withdraw(desk.tx, "pain", fact.fact, desk.now)
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
            facts.withdraw(desk.tx, "order", order.fact, desk.now)
    desk.forget()


def open_question(desk: Desk) -> Question | None:
    """The question for pain that an answer now is meant for."""
    asked = questions.open_question(desk.tx, desk.person, QUESTION)
    return asked if asked is not None and desk.now - asked.asked_at <= ANSWERABLE else None


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
    return say.say(key, signs=names)


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
    lines = []
    for answer in told:
        here = (answer.site or NOT_NAMED, answer.side)
        site = levels.get(here)
        where = place(answer.site, answer.side, say) if answer.site else say.say("pain-somewhere")
        key = f"pain-{site.level}" if site is not None else "pain-noted"
        if site is not None and site.level in SAID_ONCE and stood.get(here) == site.level:
            key = "pain-as-before"
        lines.append(say.say(key, place=where, score=say.number(answer.score or 0.0)))
    return "\n".join(dict.fromkeys(lines))


def ask_score(desk: Desk, kept: list[PainAnswer]) -> tuple[str, Buttons] | None:
    """The question for the number of a pain that was named without one; None where all have theirs."""
    bare = next((one for one in kept if one.score is None), None)
    if bare is None:
        return None
    data = {"site": bare.site, "side": bare.side, "when": bare.when, "on": bare.on.isoformat()}
    questions.expire(desk.tx, desk.person, QUESTION, desk.now)
    known = {name: one for name, one in data.items() if one}
    asked = questions.ask(desk.tx, desk.person, QUESTION, desk.now, data=known)
    where = place(bare.site, bare.side, desk.say) if bare.site else desk.say.say("pain-somewhere")
    return desk.say.say("ask-pain-score", place=where), _buttons(asked, desk.say)


def ask_place(desk: Desk, kept: list[PainAnswer]) -> tuple[str, Buttons] | None:
    """The question for the place of a score that will hold something back; None where none lacks it."""
    bare = next((one for one in kept if one.site is None and (one.score or 0.0) >= _hold_from(desk)), None)
    if bare is None:
        return None
    data = {"score": bare.score, "when": bare.when, "on": bare.on.isoformat()}
    questions.expire(desk.tx, desk.person, QUESTION, desk.now)
    asked = questions.ask(desk.tx, desk.person, QUESTION, desk.now, data={k: v for k, v in data.items() if v})
    names = [place(site, side, desk.say) for site, side in OFTEN]
    return desk.say.say("ask-pain-place"), [(name, f"q:{asked}:{name}") for name in names]


def _hold_from(desk: Desk) -> float:
    return rules_of(desk.record.athlete).number("pain.hold_from")


def ask_after(desk: Desk, on: date) -> tuple[str, Buttons]:
    """The question for pain after the session just reported; it rides on the read-back."""
    questions.expire(desk.tx, desk.person, QUESTION, desk.now)
    data = {"when": "after", "on": on.isoformat(), **_last_place(desk)}
    asked = questions.ask(desk.tx, desk.person, QUESTION, desk.now, data=data)
    return desk.say.say("ask-pain-after"), _buttons(asked, desk.say)


def is_asked_after(desk: Desk, on: date) -> bool:
    """Whether the pain of that day's session was told of, or is asked for already."""
    asked = open_question(desk)
    waits = asked is not None and asked.data.get("when") == "after" and asked.data.get("on") == on.isoformat()
    return waits or any(fact.on == on and fact.when in (None, "during", "after") for fact in desk.record.pain)


def ask_more(desk: Desk, asked: Question) -> None:
    """ "More" was pressed: how much more decides what is to be done."""
    desk.tell(desk.say.say("ask-pain-more"), buttons=[(score, f"q:{asked.id}:{score}") for score in OVER])


def _buttons(asked: int, say: Wording) -> Buttons:
    """Each names its question: pressed when another was asked since, it still answers its own."""
    return [
        *((score, f"q:{asked}:{score}") for score in SCORES),
        (say.say("button-more-pain"), f"q:{asked}:{MORE}"),
    ]


def ask_morning(desk: Desk) -> None:
    """Next morning's question, by the name of the place where one hurts."""
    last = _last_place(desk)
    questions.expire(desk.tx, desk.person, QUESTION, desk.now)
    data = {"when": "morning", "on": desk.today.isoformat(), **last}
    asked = questions.ask(desk.tx, desk.person, QUESTION, desk.now, data=data)
    say = desk.say
    text = say.say("ask-pain-morning")
    if last:
        text = say.say("ask-pain-morning-at", place=place(last["site"], last.get("side"), say))
    desk.tell(text, buttons=_buttons(asked, say), stale_after=desk.now + timedelta(hours=16))


def _last_place(desk: Desk) -> dict[str, str]:
    """The place of the newest score above 0 in the last two weeks."""
    since = desk.today - timedelta(days=14)
    for fact in reversed(desk.record.pain):
        if fact.on >= since and fact.site is not None and (fact.score or 0) > 0:
            return {"site": fact.site, **({"side": fact.side} if fact.side else {})}
    return {}


def answered_today(desk: Desk, when: Moment) -> bool:
    return any(fact.on == desk.today and fact.when in (when, None) for fact in desk.record.pain)
