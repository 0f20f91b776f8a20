"""One-arm eccentrics before a free rep: refused, whoever asks, with the numbers, and the coach is told."""

from __future__ import annotations

from bot.conversation.desk import Desk
from bot.conversation.words import begins, phrases
from bot.reading.reading import Reading
from planner.rules import rules_of

FREE = {"one_arm_pull_up", "one_arm_chin_up"}


def asks_for_eccentrics(reading: Reading, text: str) -> bool:
    """A wish, not a report: the words are there and no set was done."""
    words = text.casefold()
    named = phrases("eccentrics")
    return not reading.sets and all(any(begins(words, stem) for stem in named[kind]) for kind in named)


def refuse(desk: Desk, text: str) -> str:
    """The answer: no, with the one-arm capacity against the bodyweight; once a rep stands, that the coach decides."""
    if any(
        work.movement in FREE and (work.reps or 0) >= 1 and not work.eccentric and not work.failed
        for session in desk.record.sessions
        for work in session.sets
    ):
        desk.tell_coach(desk.say_coach.say("eccentrics-wish-for-coach", name=desk.person.name, text=text))
        return desk.say.say("eccentrics-coach-decides")
    review = desk.review
    main = next((one for one in review.strength if one.movement == review.main_lift and one.side is None), None)
    say = desk.say
    desk.tell_coach(desk.say_coach.say("eccentrics-for-coach", name=desk.person.name, text=text))
    if main is None:
        return say.say("eccentrics-no", heard=desk.heard)
    deficit = rules_of(desk.record.athlete).number("skill.bilateral_deficit")
    one_arm = main.e1rm_kg / (2 * (1 - deficit))
    values = {"one_arm": say.about(one_arm), "bodyweight": say.about(review.bodyweight_kg)}
    return say.say("eccentrics-no-numbers", heard=desk.heard, **values)
