"""What a coach asks or says of all their athletes: the roster, the week, rules, words for everyone."""

from __future__ import annotations

from bot.conversation import coach_everyone, passing_on, roster_page, rule_words, summary, unheard, what_if, who_tests
from bot.conversation.coach_words import Command
from bot.conversation.office import Office
from planner import rules
from planner.facts import Order
from storage import outbox
from storage.rules import set_coach_rule, set_nickname

MOST_REHEARSED = 4
LONGEST_NICKNAME = 40  # characters; a word to type, and it stands in an index


def show_roster(office: Office, _command: Command) -> None:
    office.mail.post(office.coach, roster_page.roster(office.desks(), office.say))


def show_rungs(office: Office, _command: Command) -> None:
    office.mail.post(office.coach, roster_page.rungs(office.desks(), office.say))


def show_summary(office: Office, _command: Command) -> None:
    summary.send(office.mail, office.coach, office.desks(), outbox.REPLY)


def suppose(office: Office, said: str, command: Command | None) -> None:
    """Rehearsed for the one named, or for everyone on the rung that is named."""
    if command is None:
        office.answer("what-if-how")
        return
    named = office.desk(command.handle)
    meant = [named] if named is not None else what_if.meant(said, office.desks())[:MOST_REHEARSED]
    if not meant:
        office.answer("coach-who", names=", ".join(row.handle for row in office.rows[:20]))
    for desk in meant:
        desk.tell_coach(what_if.answer(desk, command, said))


def show_unheard(office: Office, _command: Command) -> None:
    office.mail.post(office.coach, unheard.in_words(office.desks(), office.say))


def show_tests(office: Office, _command: Command) -> None:
    office.mail.post(office.coach, who_tests.in_words(office.desks(), office.say))


def tell_all(office: Office, command: Command) -> None:
    """ "tell everyone: the hall is closed on Friday", "tell everyone but lea: …"."""
    names = [(row.handle, row.name) for row in office.rows]
    excepted = coach_everyone.excepted(office.order, names, office.coach.language)
    words = coach_everyone.without_excepted(command.rest, names, office.coach.language) if excepted else command.rest
    if not words:
        office.answer("tell-all-what")
        return
    meant = [desk for desk in office.desks() if desk.athlete.handle not in excepted]
    reached = [desk.person.name for desk in meant if passing_on.to_athlete(desk, words)]
    office.answer("told-all", count=len(reached), names=office.say.listed(reached))


def show_help(office: Office, _command: Command) -> None:
    office.answer("coach-help")


def set_a_nickname(office: Office, command: Command) -> None:
    """ "call archers with low ring ALR": the last word is the nickname, the words before it name a movement."""
    *phrase, nickname = command.rest.split() or [""]
    movement = office.movement(" ".join(phrase))
    if movement is None:
        office.answer("nickname-unclear")
        return
    if len(nickname) > LONGEST_NICKNAME:
        office.answer("nickname-too-long", most=LONGEST_NICKNAME)
        return
    set_nickname(office.mail.tx, office.coach.id, nickname, movement, office.incoming.id)
    office.answer("nickname-set", nickname=nickname, movement=office.say.movement(movement))


def set_a_rule(office: Office, command: Command) -> None:
    """ "rule block.loading_weeks 5", for all or, with a name, for one."""
    words = command.rest.split()
    if len(words) < 2:
        office.answer("rule-how")
        return
    name, value = words[0], words[-1]
    if name not in rules.catalogue():
        office.answer("rule-unknown", rule=name)
        return
    try:
        checked = rules.check(name, _value(value))
    except rules.RuleError:
        office.mail.post(office.coach, rule_words.allowed(rules.catalogue()[name], office.say))
        return
    desk = office.desk(command.handle)
    if desk is None:
        set_coach_rule(office.mail.tx, office.coach.id, name, checked, office.incoming.id)
        office.answer("rule-set-all", rule=name, value=value)
    else:
        desk.add(Order("set_rule", desk.said_on, rule=name, value=checked))
        office.confirm(desk, "rule-set", rule=name, value=value)


def _value(word: str) -> float | str | bool:
    """A rule's value as typed: a switch, a number, or a word."""
    if word.casefold() in ("true", "false"):
        return word.casefold() == "true"
    try:
        return float(word.replace(",", "."))
    except ValueError:
        return word
