"""The questions for pain: how much, where, after a session, next morning; each with its buttons."""

from __future__ import annotations

import re
from datetime import date, timedelta
from typing import Any, cast

from bot.conversation.desk import Buttons, Desk
from bot.conversation.reasons import place
from bot.conversation.words import phrases
from bot.reading.reading import PainRead, Reading
from bot.wording import Wording
from planner.facts import Moment, PainAnswer, Session, Side
from planner.pain import UNNAMED
from planner.rules import rules_of
from storage import facts, questions
from storage.questions import Question

QUESTION = "pain"
ANSWERABLE = timedelta(hours=36)
MORE = "more"
ALSO = "also"  # in a question for several places: those after the first
MOST_PLACES = 3
MOST = 10
SCORE = re.compile(r"(?<![\d/])(\d{1,2}(?:[.,]5)?)(?:\s*/\s*10)?(?!\d)")
OF_TEN = re.compile(r"/\s*10\b|\d+(?:[.,]\d+)?")
WORD = re.compile(r"[^\W\d_]+")
AFTER: Moment = "after"
MORNING: Moment = "morning"
NIGHT_ENDS_AT = 4  # before this hour it is still the evening of the session
SAID_WITH_IT = timedelta(minutes=30)  # a score without a time is of the session that is told so soon after it
OFTEN = (("elbow", "left"), ("elbow", "right"), ("shoulder", "left"), ("shoulder", "right"))  # offered as buttons
SCORES = ("0", "1", "2", "3", "4", "5")
OVER = ("6", "7", "8", "9", "10")


def open_question(desk: Desk) -> Question | None:
    """The question for pain that the words said are meant for."""
    asked = next(iter(questions.stood_open(desk.tx, desk.person, desk.said_at, QUESTION)), None)
    return asked if asked is not None and desk.said_at - asked.asked_at <= ANSWERABLE else None


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
    return desk.say.say("ask-pain-score", place=where), buttons_of(asked, desk.say)


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


def ask_of_session(desk: Desk, reading: Reading, sessions: list[Session]) -> tuple[str, Buttons] | None:
    """The question for pain that rides on the read-back of a report; None where nothing is to be asked.

    After today's session, where nothing was said of pain; yesterday's was asked for this morning. Where a report has
    waited so long that this morning's question has gone by unasked, it is put now.
    """
    on = sessions[-1].on
    late = on >= desk.said_on or (
        desk.said_at.astimezone(desk.zone).hour < NIGHT_ENDS_AT and (desk.said_on - on).days <= 1
    )
    if not sessions[-1].sets or not late or reading.pain or reading.red_flags:
        return None
    morning = on + timedelta(days=1)
    if desk.now < desk.moment(morning, desk.athlete.plan_at):
        return None if is_asked_after(desk, on) else ask_after(desk, on.isoformat())
    asked = questions.open_question(desk.tx, desk.person, QUESTION)
    waits = asked is not None and asked.data.get("when") == MORNING and asked.data.get("on") == morning.isoformat()
    return None if morning != desk.today or waits or answered_today(desk, MORNING) else ask_morning(desk)


def ask_after(desk: Desk, on: str) -> tuple[str, Buttons]:
    """The question for pain after the session of a day."""
    return desk.say.say("ask-pain-after"), _asked(desk, {"when": AFTER, "on": on, **last_place(desk)})


def is_asked_after(desk: Desk, on: date) -> bool:
    """Whether the pain of that day's session was told of, or is asked for already."""
    asked = open_question(desk)
    waits = asked is not None and asked.data.get("when") == AFTER and asked.data.get("on") == on.isoformat()
    return waits or any(fact.on == on and _is_of_session(desk, fact) for fact in desk.record.pain)


def _is_of_session(desk: Desk, told: PainAnswer) -> bool:
    """Whether a score is of the day's session; one without a time, said in the morning before it, is not."""
    if told.when is not None or told.fact is None:
        return told.when in ("during", AFTER)
    said_at = facts.said_at(desk.tx, "pain", told.fact)
    reports = [one.fact for one in desk.record.sessions if one.on == told.on and one.sets and not one.is_test]
    first = min((at for one in reports if one and (at := facts.said_at(desk.tx, "session", one))), default=desk.said_at)
    return said_at is not None and said_at >= first - SAID_WITH_IT


def ask_more(desk: Desk, asked: Question) -> None:
    """ "More" was pressed: how much more decides what is to be done."""
    desk.tell(desk.say.say("ask-pain-more"), buttons=[(score, f"q:{asked.id}:{score}") for score in OVER])


def buttons_of(asked: int, say: Wording) -> Buttons:
    """Each names its question: pressed when another was asked since, it still answers its own."""
    return [
        *((score, f"q:{asked}:{score}") for score in SCORES),
        (say.say("button-more-pain"), f"q:{asked}:{MORE}"),
    ]


def ask_morning(desk: Desk) -> tuple[str, Buttons]:
    """Next morning's question, by the name of the place where one hurts; of several, by all their names."""
    places, say = sore_places(desk), desk.say
    data = {"when": MORNING, "on": desk.today.isoformat(), **(places[0] if places else {})}
    if len(places) > 1:
        first, *others = (_in_words(one, say) for one in places)
        example = " ".join(SCORES[len(places) - 1 - at] for at in range(len(places)))
        text = say.say("ask-pain-morning-each", place=first, others=say.listed(others), example=example)
        return text, _asked(desk, {**data, ALSO: places[1:]})
    if places:
        return say.say("ask-pain-morning-at", place=_in_words(places[0], say)), _asked(desk, data)
    return say.say("ask-pain-morning"), _asked(desk, data)


def ask_next(desk: Desk, asked: Question | None, kept: list[PainAnswer]) -> tuple[str, Buttons] | None:
    """After one of several places that were asked for: the question for the next of them; None where all are told."""
    if asked is None or not kept or not asked.data.get(ALSO):
        return None
    told = {(one.site, one.side) for one in kept}
    left = [one for one in places_of(asked) if (one["site"], one.get("side")) not in told]
    if not left:
        return None
    data = {name: asked.data[name] for name in ("when", "on")}
    buttons = _asked(desk, {**data, **left[0], **({ALSO: left[1:]} if left[1:] else {})})
    return desk.say.say("ask-pain-next", place=_in_words(left[0], desk.say)), buttons


def all_at_once(asked: Question, text: str) -> Reading | None:
    """ "4 2", "both 1", in answer to the question for several places: a score of each, in the order of their names."""
    places = places_of(asked) if asked.data.get(ALSO) else []
    numbers = [float(one.replace(",", ".")) for one in SCORE.findall(text)]
    words = set(WORD.findall(OF_TEN.sub(" ", text.casefold())))
    known = phrases("each")
    if len(numbers) == 1 and words & set(known["all"]):
        numbers *= len(places)
    if (
        not places
        or len(numbers) != len(places)
        or max(numbers) > MOST
        or not words <= {*known["all"], *known["small"]}
    ):
        return None
    entries = tuple(
        PainRead(one["site"], cast(Side | None, one.get("side")), score, MORNING)
        for one, score in zip(places, numbers, strict=True)
    )
    return Reading(("pain",), performed_on=date.fromisoformat(asked.data["on"]), pain=entries)


def places_of(asked: Question) -> list[dict[str, str]]:
    """The places that a question is for, the one asked for first in front."""
    first = {name: asked.data[name] for name in ("site", "side") if asked.data.get(name)}
    return [*([first] if first else []), *asked.data.get(ALSO, [])]


def _in_words(one: dict[str, str], say: Wording) -> str:
    return place(one["site"], one.get("side"), say)


def place_in_words(asked: Question, say: Wording) -> str:
    site, side = asked.data.get("site"), asked.data.get("side")
    return place(site, side, say) if site else say.say("pain-somewhere")


def _asked(desk: Desk, data: dict[str, Any]) -> Buttons:
    """The question noted, in place of the one before, with the scores as buttons."""
    questions.expire(desk.tx, desk.person, QUESTION, desk.now)
    return buttons_of(questions.ask(desk.tx, desk.person, QUESTION, desk.now, data=data), desk.say)


def last_place(desk: Desk) -> dict[str, str]:
    """The place of the newest score above 0 in the last two weeks; of several of one day, the sorest."""
    return next(iter(_told_last(desk)), {})


def sore_places(desk: Desk) -> list[dict[str, str]]:
    """The places to be asked for, those told last in front: they, and those for which the rules still hold back."""
    held = [one for one in desk.review.pain if one.level != "fine" and one.score > 0 and one.site != UNNAMED]
    found = [*_told_last(desk), *(_place(one.site, one.side) for one in held)]
    kept = [one for at, one in enumerate(found) if one not in found[:at]]
    sided = {one["site"] for one in kept if "side" in one}
    return [one for one in kept if "side" in one or one["site"] not in sided][:MOST_PLACES]


def _told_last(desk: Desk) -> list[dict[str, str]]:
    """The places of the newest day with a score above 0 in the last two weeks, the sorest first."""
    since = desk.said_on - timedelta(days=14)
    sore = [fact for fact in desk.record.pain if fact.on >= since and fact.site is not None and (fact.score or 0) > 0]
    late = [fact for fact in sore if fact.on == sore[-1].on]
    late = sorted(late, key=lambda fact: (-(fact.score or 0.0), -(fact.fact or 0)))
    return [_place(one.site, one.side) for one in late if one.site is not None]


def _place(site: str, side: Side | None) -> dict[str, str]:
    return {"site": site, **({"side": side} if side else {})}


def answered_today(desk: Desk, when: Moment) -> bool:
    return any(fact.on == desk.today and fact.when in (when, None) for fact in desk.record.pain)
