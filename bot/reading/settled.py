"""Wishes that exclude each other: the stronger one stays.

"What do I do on Thursday" asks for the plan and moves nothing; who is ill misses no training besides.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence

from bot.reading.days import Day, named_days
from bot.reading.lexicon import Hit
from bot.reading.little import little
from bot.reading.message import Message
from bot.reading.red_flags import Cues
from bot.reading.tokens import Token

NEAR_SITE = 4  # tokens from a place of the body to the words that say how it is
Found = dict[str, list[Hit]]  # the wordings of each wish


def settled(message: Message, found: Found) -> Found:
    """The wishes that stay; the caller's own."""
    for rule in RULES if found else ():  # most messages wish for nothing
        rule(message, found)
    return found


def _leave_out(found: Found, name: str, out: Callable[[Hit], bool]) -> None:
    if name in found:
        found[name] = [hit for hit in found[name] if not out(hit)]
        if not found[name]:
            del found[name]


def _leave_out_over(found: Found, name: str, stronger: str) -> None:
    """Leave out the wordings that share words with those of a stronger wish."""
    _leave_out(found, name, lambda hit: any(over(hit, one) for one in found.get(stronger, ())))


def _undo(_message: Message, found: Found) -> None:
    """ "Take that back, I didn't train": nothing is left to miss."""
    if "undo" in found and "stop" in found:
        del found["undo"]
    if "undo" in found:
        found.pop("missed", None)


def _questions_of_plan(message: Message, found: Found) -> None:
    """ "What do I do on Thursday": the words of a move or of help inside a question about the plan are its own."""
    asked = [*found.get("plan_today", ()), *found.get("plan_week", ())]
    for other in ("move", "help"):
        _leave_out(
            found,
            other,
            lambda hit: any(plan.start <= hit.start and _words_end(message, hit) <= plan.end for plan in asked),
        )


def _stop_and_pause(_message: Message, found: Found) -> None:
    if "stop" in found:
        found.pop("pause", None)
    if found.keys() & {"stop", "pause"}:
        found.pop("missed", None)
    _leave_out_over(found, "plan_today", "plan_week")


def _absent_all_week(message: Message, found: Found) -> None:
    """ "Flu, out for the rest of the week"."""
    if found.keys() & {"ill", "away"} and not _asks(message):
        found.pop("plan_week", None)


def _why(message: Message, found: Found) -> None:
    """ "Why is Thursday lighter": one question."""
    _leave_out(found, "why", lambda hit: _gives_reason(message, hit))
    for other in ("plan_today", "plan_week", "progress", "move"):
        _leave_out(found, other, lambda hit: any(_same_question(message, hit, why) for why in found.get("why", ())))


def _plan_or_progress(_message: Message, found: Found) -> None:
    _leave_out_over(found, "progress", "plan_week")
    _leave_out_over(found, "progress", "plan_today")


def _move(message: Message, found: Found) -> None:
    """ "Can I do Thursday's on Friday": the days are moved, and no plan is asked for."""
    for other in ("plan_today", "plan_week"):
        _leave_out(
            found,
            other,
            lambda hit: any(
                one_sentence(message.tokens, *sorted((hit.start, move.start))) for move in found.get("move", ())
            ),
        )


def _help(message: Message, found: Found) -> None:
    _leave_out(
        found,
        "plan_today",
        lambda hit: any(over(hit, one) or _same_question(message, hit, one) for one in found.get("help", ())),
    )
    _leave_out_over(found, "plan_today", "progress")


def _told_to_the_coach(message: Message, found: Found) -> None:
    """What the coach is to be told is not asked of the bot."""

    def told(hit: Hit) -> bool:
        return any(
            one.start <= hit.start
            and one_sentence(message.tokens, one.start, hit.start)
            and not _asks_besides(message.tokens, hit)
            for one in found.get("for_coach", ())
        )

    for other in ("why", "plan_today", "plan_week", "progress", "help", "move"):
        _leave_out(found, other, told)
    if "help" in found:
        found.pop("undo", None)


def _illness(message: Message, found: Found) -> None:
    """ "Tonsillitis, no training until the 21st": a pause that the illness brings with it; and nobody else's."""
    if "ill" in found:
        _leave_out(found, "pause", lambda hit: no_training(message, hit))
    if not found.keys() & {"ill", "pause"}:
        return
    cues, whole = Cues(message), (0, len(message.tokens))
    _leave_out(found, "ill", lambda hit: cues.of_others(hit.start, whole))
    # "Kumpel hat sich die Schulter ausgekugelt, 3 Wochen Pause"; "wife in hospital, pause everything" asks
    _leave_out(
        found,
        "pause",
        lambda hit: message.tokens[hit.start].value is not None and cues.of_others(hit.start, whole),
    )


def _of_the_same_words(message: Message, found: Found) -> None:
    """ "Could Friday's session go on Sunday" goes on with nothing; "plan bis 30. Mai auf Eis legen" asks for none."""
    for stronger, weaker in (("move", "resume"), ("missed", "plan_today"), ("resume", "plan_today")):
        _leave_out_over(found, weaker, stronger)
    if "pause" in found and not _asks(message):
        found.pop("plan_today", None)


def _resume(message: Message, found: Found) -> None:
    """ "Fingers feel fine now": a place of the body is well, nobody comes back."""
    if "resume" not in found:
        return
    sites = [hit.end for hit in message.hits("body", "site")]
    _leave_out(
        found,
        "resume",
        lambda hit: any(
            0 <= hit.start - end < NEAR_SITE and _one_clause(message.tokens, end, hit.start) for end in sites
        ),
    )


def _away(message: Message, found: Found) -> None:
    """ "Sick since Sunday, back on the 24th": the last day of the illness, or of the pause."""
    if "away" in found and found.keys() & {"ill", "pause"}:
        ends = [day for day in named_days(message).days if day.link == "back" and to_come(message, day)]
        _leave_out(found, "away", lambda hit: any(_reaches(hit, day) for day in ends) or _laid_up(message, hit))
    _leave_out_over(found, "away", "resume")


RULES: tuple[Callable[[Message, Found], None], ...] = (
    _undo,
    _questions_of_plan,
    _stop_and_pause,
    _absent_all_week,
    _why,
    _plan_or_progress,
    _move,
    _help,
    _told_to_the_coach,
    _illness,
    _of_the_same_words,
    _resume,
    _away,
)


def _asks(message: Message) -> bool:
    return any(token.text == "?" for token in message.tokens)


def over(one: Hit, other: Hit) -> bool:
    return one.start < other.end and other.start < one.end


def no_training(message: Message, hit: Hit) -> bool:
    """Whether a hit only says that there is no training: "no training until the 21st"."""
    return any(token.text in little("no_training_led") for token in message.tokens[hit.start : hit.start + 2])


def to_come(message: Message, day: Day) -> bool:
    return day.ahead is not None and day.ahead[0] > message.today


def one_sentence(tokens: Sequence[Token], start: int, end: int) -> bool:
    return not any(token.text in ".!?;\n" for token in tokens[start:end])


def _words_end(message: Message, hit: Hit) -> int:
    """Where the words of a hit end, a question mark behind them left out."""
    return hit.end - (message.tokens[hit.end - 1].text == "?")


def _reaches(hit: Hit, day: Day) -> bool:
    """Whether words for coming back have the day in them, or stand right before it."""
    return hit.start < day.end and day.start - 1 <= hit.end


def _laid_up(message: Message, hit: Hit) -> bool:
    """ "Covid, off until Friday", "flu, I'm out all week": out for the illness, and not elsewhere."""
    words = [token.text for token in message.tokens[hit.start : hit.end]]
    return not little("out_ill").isdisjoint(words[:3]) and little("elsewhere_out").isdisjoint(words)


def _gives_reason(message: Message, hit: Hit) -> bool:
    """ "no fui porque …": "porque" within a sentence that asks nothing is a reason, not a question."""
    if message.tokens[hit.start].text not in little("because"):
        return False
    low, high = next(((a, b) for a, b in message.sentences if a <= hit.start < b), (0, len(message.tokens)))
    return hit.start > low and not (high < len(message.tokens) and message.tokens[high].text == "?")


def _asks_besides(tokens: Sequence[Token], hit: Hit) -> bool:
    """ "Tell the coach the video is coming, and what's on this week?": a question joined behind a comma."""
    joined = hit.start > 1 and tokens[hit.start - 1].text in little("and") and tokens[hit.start - 2].text == ","
    return joined and any(token.text == "?" for token in tokens[hit.end :])


def _one_clause(tokens: Sequence[Token], start: int, end: int) -> bool:
    return not any(token.text in ".,!?;:\n" for token in tokens[start:end])


def _same_question(message: Message, hit: Hit, why: Hit) -> bool:
    return (
        why.start <= hit.start
        and one_sentence(message.tokens, why.start, hit.start)
        and not any(token.text in little("and") for token in message.tokens[why.end : hit.start])
    )
