"""Numbers of everyday talk ("the bar is 2.40 high", "turned 34") are taken out of the facts before sets are made.

A lone number counts as training only where something of training stands in the same clause, or where the clause has
hardly a word that the grammar does not know.
"""

from __future__ import annotations

from collections.abc import Sequence

from bot.reading.bounds import ends_sentence
from bot.reading.facts import Fact
from bot.reading.little import little
from bot.reading.message import Message
from bot.reading.plan.ground import PARTS, plan_names
from bot.reading.plan.value import LEAST_LOAD, MORE_REPS, MOST_LOAD
from bot.reading.unreal import NUMBERS

STRANGE_WORDS = 2  # so many words unknown to the grammar make a clause talk
EVIDENCE = frozenset(
    {
        "move",
        "load",
        "loads",
        "at",
        "scope",
        "side",
        "effort",
        "efforts",
        "link",
        "flag",
        "instead",
        "delta",
        "fail",
        "assist",
        "count",
        "rounds",
        "percent",
    }
)


BRIEF = 4  # facts of a message that tells of its sets in a few words
BOTH_BARE = ["bare", "bare"]
PLAN_WORDS = frozenset({"only", "planned", "same", "holds", "all_lifts"})


def lone(fact: Fact) -> bool:
    """A number that could be anything."""
    if fact.kind in ("bare", "left"):
        return True
    return (fact.kind == "rows" and bool(fact.note.get("one")) and not fact.note.get("reps")) or (
        fact.kind == "load" and fact.note.get("how") == "at" and not fact.note.get("unit")
    )


def _could_be_anything(message: Message, fact: Fact) -> bool:
    """Whether a number is a lone one; seconds are none on a day of holds."""
    timed = fact.kind == "rows" and fact.note.get("unit") != "min" and any(one.hold_s for one in fact.value)
    return lone(fact) and not (timed and any(one.hold_s is not None for one in message.context.today or ()))


def drop_prose(message: Message, facts: list[Fact]) -> list[Fact]:
    """The facts without the numbers of talk and of questions."""
    out: list[Fact] = []
    clause: list[Fact] = []
    trained = _trained_sentences(facts)
    facts = drop_misses(message, _after_places(message, facts))
    first = min(trained, default=0)
    talk = _talk(message, facts, trained) if trained else frozenset()
    sentence = 0
    excepted = goes_on = False
    # Beside a plan "sets 1-3 at 22.5, 4 and 5 at 20" goes on too, and "first set 22.5, rest 20".
    silent = {"bare", "load", "sep"} | ({"at", "plan", "scope", "rows"} if message.context.today else set())
    told = {"bare", "rows", "load"} | ({"at", "count"} if message.context.today else set())
    leaning = _leaning_sentences(facts) if message.context.today else frozenset()
    brief = bool(message.context.today) and (_of_all_sets(facts) or _load_of_day(message, facts))
    for at, fact in enumerate([*facts, Fact("sep", 0, 0, 3)]):
        if fact.kind == "sep":
            if (
                fact.note.get("mark") == "and"
                and [f.kind for f in (*clause[-1:], *facts[at + 1 : at + 2])] == BOTH_BARE
            ):
                clause.append(fact)  # "right only 2 and 1"
                continue
            if sentence in talk:
                clause = [one for one in clause if not _could_be_anything(message, one)]
            most = STRANGE_WORDS if sentence in trained else 1 if sentence > first else 0
            mended = any(one.kind == "mend" for one in clause)
            odd = strange(message, clause) if sentence in leaning else 0
            changed = any("turned_to" in one.note.get("names", ()) for one in clause)
            weighed = sentence in leaning and _used(message, clause)
            of_plan = excepted or brief or weighed or (sentence in leaning and not mended and odd <= changed)
            of_plan = of_plan or (sentence in leaning and _went_with(message, clause))
            bare = goes_on and all(one.kind in silent or _article(one) for one in clause)  # "first two 5, then 4 and 4"
            kept = clause if of_plan or bare else _clause(message, clause, most)
            out += kept
            goes_on = (fact.value < 3 and any(one.kind in told for one in kept)) or (goes_on and not clause)
            # so does what a colon leads to: "the last set as AMRAP: 9"
            goes_on = goes_on or (fact.note.get("mark") == ":" and any(one.kind == "scope" for one in kept))
            excepted = bool(message.context.today) and fact.value < 3 and _excepts(clause)
            sentence += fact.value == 3
            if fact.end:
                out.append(fact)
            clause = []
        else:
            clause.append(fact)
    return drop_questions(message, out)


def _used(message: Message, clause: Sequence[Fact]) -> bool:
    """ "Felt great so I used 32.5 the whole way": a load near the planned one, behind a word for taking it."""
    planned = [one.load_kg for one in message.context.today or () if one.load_kg]
    for fact in clause:
        near = fact.kind == "load" and any(LEAST_LOAD <= (fact.value or 0.0) / load <= MOST_LOAD for load in planned)
        if near and any(
            message.tokens[at].text in little("used") for at in range(max(0, fact.start - 1), fact.start + 1)
        ):
            return True
    return False


def _article(fact: Fact) -> bool:
    """The "la" of "series 1 a 3 con 22,5, la 4 con 20"."""
    return fact.kind == "word" and (fact.value in little("the") or fact.value in little("article"))


def _of_all_sets(facts: Sequence[Fact]) -> bool:
    """ "Today with 25, all of them": one number and which sets it is of, and hardly a word beside."""
    said = [fact for fact in facts if fact.kind not in ("sep", "claim")]
    kinds = sorted(fact.kind for fact in said if fact.kind != "word")
    return kinds in (["load", "scope"], ["bare", "scope"]) and len(said) <= BRIEF


def _load_of_day(message: Message, facts: Sequence[Fact]) -> bool:
    """ "Today with 22.5": nothing but a load near the one that the plan has."""
    said = [fact for fact in facts if fact.kind not in ("sep", "claim", "word")]
    said = [fact for fact in said if fact.value != "fine" and fact.value != "got"]
    few = len(said) == 1 and sum(fact.kind == "word" for fact in facts) < BRIEF
    first = next((one for one in facts if one.kind not in ("claim", "sep") and not one.note.get("noise")), None)
    if not few or first is not said[0] or first.kind != "load" or not first.value:
        return False  # "see you at 18"
    return any(
        LEAST_LOAD <= said[0].value / one.load_kg <= MOST_LOAD for one in message.context.today or () if one.load_kg
    )


def _excepts(clause: Sequence[Fact]) -> bool:
    """ "all as planned but the last": what follows, "that was 2", tells of the set excepted."""
    names = {name for fact in clause if fact.kind == "plan" for name in fact.note.get("names", ())}
    return "except" in names and any(fact.kind == "scope" for fact in clause)


def _after_places(message: Message, facts: list[Fact]) -> list[Fact]:
    """Without the numbers of rooms, tracks and shoes."""
    if not any(fact.kind == "bare" for fact in facts):
        return facts
    places = {*message.book("prose", False).named("before"), *message.book("prose").named("before")}
    return [
        fact
        for fact in facts
        if not (fact.kind == "bare" and fact.start and message.tokens[fact.start - 1].text in places)
    ]


def drop_misses(message: Message, facts: list[Fact]) -> list[Fact]:
    """Without "missed the bus": a miss counts where work stands before it in the sentence, or beside it."""
    out: list[Fact] = []
    work = tried = False
    for at, fact in enumerate(facts):
        if ends_sentence(fact):
            said = _sentence(facts, at + 1) if tried else []
            # "tried 40. Nope. Got stuck halfway": a verdict is of what was tried right before
            tried = bool(said) and not any(one.kind in NUMBERS for one in said)
            tried = tried and (len(said) == 1 or "fail" in (said[0].kind, said[-1].kind))
            work = (fact.note.get("nl") is not None and work) or tried
        tried = tried or (fact.kind == "scheme" and fact.value == "attempt")
        if (
            fact.kind in ("rows", "bare", "load", "at", "side", "loads", "count", "last_rep")
            or (fact.kind == "scope" and fact.value != "all")
            or (fact.kind == "scheme" and fact.value == "attempt")
        ):
            work = True
        some = fact.value is not None and message.tokens[fact.end - 1].text in little("one_set")
        if (
            fact.kind == "fail"
            and not some
            and message.context.today
            and not work
            and _only_named(facts[at + 1 : at + 4])
        ):
            fact = Fact("plan", fact.start, fact.end, "skipped", {"names": ["skipped"]})  # "bailed on the curls"
        sign = fact.kind == "fail" and message.tokens[fact.start].kind == "sym"  # "dips ✗": a list ticked off
        if fact.kind == "fail" and not fact.note.get("weak") and fact.value is None and not work and not sign:
            # "pull-ups done, dips nicht geschafft"
            beside = bool(message.context.today) and not_managed(message, fact) and _lift_before(facts, at)
            for after in facts[at + 1 :]:
                if after.kind == "sep":
                    break
                beside = beside or after.kind in ("rows", "bare", "load", "at", "loads", "side", "scope", "left")
            if not beside:
                continue
        out.append(fact)
    return out


def _sentence(facts: Sequence[Fact], start: int) -> Sequence[Fact]:
    """The facts from a place to the end of their sentence."""
    end = start
    while end < len(facts) and not ends_sentence(facts[end]):
        end += 1
    return facts[start:end]


def _only_named(after: Sequence[Fact]) -> bool:
    """Whether a movement, and no more, is what was missed."""
    told = [fact for fact in after if fact.value != "the" and fact.kind != "word"]
    named = bool(told) and (told[0].kind == "move" or bool(plan_names(told[0]) & set(PARTS)))
    return named and (len(told) < 2 or told[1].kind == "sep")


def not_managed(message: Message, fact: Fact) -> bool:
    """Whether words for a miss may as well say that what was planned was left out; not "fast nicht geschafft"."""
    if fact.start and message.tokens[fact.start - 1].text in little("nearly"):
        return False
    return any(
        (hit.table, hit.name) == ("plan", "skipped") and hit.end == fact.end
        for at in range(fact.start, fact.end)
        for hit in message.beginning("grammar")[at]
    )


def _lift_before(facts: Sequence[Fact], at: int) -> bool:
    """Whether a lift, or a part of the plan, stands right before a miss in its clause."""
    while at and facts[at - 1].kind in ("word", "plan"):
        at -= 1
        if any(name.startswith("part_") for name in facts[at].note.get("names", ())):
            return True
    return at > 0 and facts[at - 1].kind == "move"


def strange(message: Message, facts: Sequence[Fact]) -> int:
    if not any(fact.kind == "word" for fact in facts):
        return 0
    glue = message.book("prose").words
    because = message.book("prose").named("because")
    count = 0
    for fact in facts:
        known = (
            message.context.today and fact.kind == "word" and str(fact.value) in little("in_error")
        )  # "all done but used 12 by mistake"
        if fact.kind == "word" and not fact.note.get("noise") and not known:
            for token in message.tokens[fact.start : fact.end]:
                if token.text in because:
                    return count
                if token.kind == "word" and len(token.text) > 1 and token.text not in glue:
                    count += 1
    return count


def _trained_sentences(facts: Sequence[Fact]) -> set[int]:
    """The sentences that name a movement or its sets."""
    found: set[int] = set()
    sentence = 0
    for fact in facts:
        if ends_sentence(fact):
            sentence += 1
        elif fact.kind == "move" or (fact.kind == "rows" and not lone(fact)):
            found.add(sentence)
    return found


def _leaning_sentences(facts: Sequence[Fact]) -> frozenset[int]:
    """The sentences that speak of the day's plan ("22.5 today, otherwise as planned")."""
    found: set[int] = set()
    sentence = 0
    for fact in facts:
        sentence += ends_sentence(fact)
        if fact.kind == "plan" and set(fact.note.get("names", ())) & {"done", "planned", "same", "took", "turned_to"}:
            found.add(sentence)
    return frozenset(found)


def _talk(message: Message, facts: Sequence[Fact], trained: set[int]) -> frozenset[int]:
    """Sentences without training in which most words are no words of the trade: their numbers are talk."""
    found: set[int] = set()
    sentence: list[Fact] = []
    number = 0
    for fact in [*facts, Fact("sep", 0, 0, 3)]:
        if not ends_sentence(fact):
            sentence.append(fact)
            continue
        told = any(one.kind in EVIDENCE and not lone(one) for one in sentence) or _got(message, sentence)
        told = told or (bool(trained) and _one_by_one(message, sentence))
        if number not in trained and not told and strange(message, sentence) >= STRANGE_WORDS:
            found.add(number)
        sentence, number = [], number + 1
    return frozenset(found)


def _got(message: Message, sentence: Sequence[Fact]) -> bool:
    """ "And I did 9 like a loser": a number right behind a word for done, of nothing that it counts."""
    for at, fact in enumerate(sentence[1:], 1):
        before, after = sentence[at - 1], sentence[at + 1 : at + 2]
        if fact.kind == "bare" and before.kind == "scheme" and before.value == "got" and not strange(message, after):
            return True
    return False


def _one_by_one(message: Message, sentence: Sequence[Fact]) -> bool:
    """ "Today it's 9, then 8, then 8": numbers in turn, of the day."""
    opens = [message.tokens[at].text for fact in sentence[:2] for at in range(fact.start, fact.end)]
    if not little("today").intersection(opens):
        return False
    spoken = [fact.kind if fact.kind != "sep" else fact.value for fact in sentence if fact.kind in ("bare", "sep")]
    told = [kind for kind in spoken if kind in ("bare", 2)]
    return any(told[at : at + 3] == ["bare", 2, "bare"] for at in range(len(told)))


def _clause(message: Message, facts: list[Fact], most: int) -> list[Fact]:
    if not facts:
        return facts
    if not any(fact.kind == "move" for fact in facts) and strange(message, facts):
        facts = [fact for fact in facts if not (fact.kind == "rows" and fact.note.get("values", [])[1:] == [10])]
    if not any(_could_be_anything(message, fact) for fact in facts):
        return facts
    spoken = sum(fact.kind == "word" and not fact.note.get("noise") for fact in facts)
    if most == 1 and spoken < 2:
        return facts
    evidence = any(
        (fact.kind in EVIDENCE and not lone(fact)) or (fact.kind == "rows" and not lone(fact)) for fact in facts
    ) or any(
        fact.kind == "scheme" or (fact.kind == "plan" and set(fact.note.get("names", ())) & PLAN_WORDS)
        for fact in facts
    )
    if (
        evidence
        or _so_much(message, facts)
        or _for_the_rest(message, facts)
        or (most == STRANGE_WORDS and strange(message, facts) < most)
    ):
        return facts
    return [fact for fact in facts if not _could_be_anything(message, fact)]


def _for_the_rest(message: Message, facts: Sequence[Fact]) -> bool:
    """ "Dann 20 für den Rest": of the sets of the day's plan."""
    if not message.context.today:
        return False
    return any(
        one.kind == "bare" and of.start == one.end and message.tokens[of.start].text in little("load_for") and rest
        for one, of, rest in zip(facts, facts[1:], (plan_names(fact) & {"rest"} for fact in facts[2:]), strict=False)
    )


def _went_with(message: Message, facts: Sequence[Fact]) -> bool:
    """ "Went 22.5, same reps", "bin auf 22,5 gegangen": a figure that can only be a load of the day's plan."""
    numbers = [fact for fact in facts if lone(fact)]
    if len(numbers) != 1 or numbers[0].kind not in ("load", "bare") or numbers[0].note.get("spelled"):
        return False
    went, glue = little("went_with"), message.book("prose").words
    words = [
        token.text
        for fact in facts
        if fact is not numbers[0]
        for token in message.tokens[fact.start : fact.end]
        if token.kind == "word"
    ]
    if not went.intersection(words) or any(word not in went and word not in glue for word in words):
        return False
    kg = numbers[0].note.get("kg", numbers[0].value)
    today = message.context.today or ()
    near = any(one.load_kg and LEAST_LOAD * one.load_kg <= kg <= MOST_LOAD * one.load_kg for one in today)
    return near and kg > max((one.reps or one.hold_s or 0 for one in today), default=0) + MORE_REPS


def _so_much(message: Message, facts: Sequence[Fact]) -> bool:
    """Whether a clause changes a load of the plan by so much: "Gewicht um 5 reduziert", "peso aumentado en 2,5"."""
    led = any(
        fact.kind == "bare" and fact.start and message.tokens[fact.start - 1].text in little("by_so_much")
        for fact in facts
    )
    if not led or not message.context.today:
        return False
    words = {token.text for token in message.tokens[facts[0].start : facts[-1].end]}
    return bool(words & (little("step_up", "step_down")))


def drop_questions(message: Message, facts: list[Fact]) -> list[Fact]:
    """A question reports nothing: not its last clause, nor the whole sentence when it begins as a question does."""
    asking = message.book("prose")
    marked = any(fact.kind == "sep" and fact.note.get("mark") == "?" for fact in facts)
    if not marked and not any(asking.at(message.tokens, at) for at in _openings(message)):
        return facts
    out: list[Fact] = []
    sentence: list[Fact] = []
    begins = 0
    for fact in [*facts, Fact("sep", len(message.tokens), len(message.tokens), 3, {"end": True})]:
        if ends_sentence(fact):
            whole = _asks_why(message, begins, sentence, at_end="end" in fact.note)
            if (fact.note.get("mark") == "?" or whole) and sentence:
                first = sentence[0].start
                opens = whole or any(hit.name in ("question", "reason") for hit in asking.at(message.tokens, first))
                last = max((i for i, one in enumerate(sentence) if one.kind == "sep"), default=-1)
                for i, one in enumerate(sentence):
                    if (opens or i > last) and one.kind in NUMBERS | {"plan", "scope", "delta", "fail"}:
                        continue
                    out.append(one)
            else:
                out += sentence
            out += [] if "end" in fact.note else [fact]
            sentence, begins = [], fact.end
        else:
            sentence.append(fact)
    return out


def _openings(message: Message) -> list[int]:
    """Where the sentences begin, an "and" left out."""
    joins = little("and", "so_then")
    return [low + (message.tokens[low].text in joins) for low, high in message.sentences if low + 1 < high]


ASKED = frozenset({"progress", "plan_today", "plan_week"})


def _asks_why(message: Message, begins: int, sentence: Sequence[Fact], at_end: bool) -> bool:
    """Whether a sentence asks for a reason or a figure, though no mark says so: "how come dips went from 45 to 40"."""
    if not at_end:
        return False
    opening = next((at for at in _openings(message) if at >= begins), None)
    found = message.book("prose").at(message.tokens, opening) if opening is not None else []
    reason = next((hit for hit in found if hit.name == "reason"), None)
    if reason is None:
        # "what's the heaviest I've done for 3 on pull-ups"
        asks = any(hit.name == "question" for hit in found) and not any(fact.kind == "sep" for fact in sentence)
        wanted = message.hits("intents", "want") if asks else ()
        return any(hit.start == opening and hit.name in ASKED for hit in wanted)
    after = message.tokens[reason.end] if reason.end < len(message.tokens) else None
    if reason.end - reason.start > 1 or (after and (after.text in little("asks_with") or after.value is not None)):
        return True  # "why did my archers get cut to singles", "why 3 sets and not 4"
    return not any(fact.kind in ("move", "sep") for fact in sentence)  # "why only 3 sets"
