"""Who is it, and who answers them."""

from __future__ import annotations

from datetime import datetime

from sqlmodel import Session

from bot.conversation import athlete, coach, moments
from bot.conversation.desk import Desk, Mail
from bot.wording import wording_for
from storage import chats, invites, outbox
from storage.inbox import Incoming
from storage.persons import Person

START = "/start"


def handle(tx: Session, incoming: Incoming, person: Person | None, now: datetime) -> None:
    """Answer one message, press, clip, edit or change of membership, within the transaction `tx`."""
    mail = Mail(tx, now, f"incoming:{incoming.id}")
    if incoming.kind == "member":
        _membership(mail, incoming, person)
        return
    if person is not None and (incoming.channel, incoming.address) not in chats.addresses_of(tx, person):
        _set_blocked(mail, incoming, person, False)  # whoever writes takes messages again
    if incoming.kind == "edit":
        _edited(mail, incoming, person)
        return
    code = _code(incoming)
    if code is not None:
        _join(mail, incoming, code, person)
    elif person is None:
        _stranger(tx, incoming, now, "stranger")
    elif person.role == "coach":
        coach.handle(mail, person, incoming)
    else:
        desk = Desk.of(mail, person.id, incoming.id, said_at=incoming.sent_at)
        athlete.handle(desk, incoming)
        desk.leave()


def tell_set_aside(tx: Session, incoming: Incoming, person: Person | None, now: datetime) -> None:
    """A message could not be handled: its sender is told that it is kept, the coach that it is to be looked at."""
    if person is None:
        return
    mail = Mail(tx, now, f"aside:{incoming.id}")
    say = wording_for(person.language)
    if person.role == "coach":
        mail.post(person, say.say("set-aside"))
    else:
        desk = Desk.of(mail, person.id)
        desk.tell(f"{say.say('set-aside')} {desk.heard}")
        desk.tell_coach(desk.say_coach.say("set-aside-for-coach", name=person.name))


def tell_unreachable(tx: Session, message: outbox.Outgoing, now: datetime) -> None:
    """A chat takes no messages any more: its athlete's coach is told once a day at most.

    Where it is the coach's, and they have no other, the athlete whose words they should have heard is told.
    """
    who = chats.person_at(tx, message.channel, message.address)
    if who is None:
        return
    if who.role == "coach":
        if message.athlete_id is not None and message.cause.startswith("incoming:"):
            athletes_desk = Desk.of(Mail(tx, now, f"unreached:{message.id}"), message.athlete_id)
            if not athletes_desk.coach_is_reached:
                athletes_desk.tell(athletes_desk.heard)
        return
    desk = Desk.of(Mail(tx, now, f"unreachable:{who.id}:{now.date()}"), who.id)
    desk.tell_coach(desk.say_coach.say("unreachable", name=who.name), importance=outbox.REPLY)


DROPPED = "dropped:"


def tell_dropped(tx: Session, channel: str, address: str, now: datetime) -> None:
    """What was owed to a chat grew too old while it could not be sent: whoever is there is told, once."""
    who = chats.person_at(tx, channel, address)
    if who is None or outbox.owed_to(tx, channel, address, DROPPED):
        return
    cause = f"{DROPPED}{channel}:{address}:{now.isoformat()}"
    text = wording_for(who.language).say("older-dropped")
    outbox.post(
        tx, outbox.Outgoing(channel=channel, address=address, to=who.handle, text=text, cause=cause, due_at=now)
    )


def tell_too_fast(tx: Session, incoming: Incoming, person: Person, now: datetime) -> None:
    """Somebody writes faster than answers help: they are told once in a while that all of it is read."""
    while_it_lasts = int(incoming.sent_at.timestamp() // 600)
    mail = Mail(tx, now, f"fast:{incoming.sender}:{while_it_lasts}")
    mail.post(person, wording_for(person.language).say("one-at-a-time"))


def _code(incoming: Incoming) -> str | None:
    """The code of "/start CODE"; "" for a bare "/start"."""
    if incoming.kind != "text":
        return None
    word, _, rest = incoming.text.strip().partition(" ")
    return rest.strip() if word.split("@")[0].casefold() == START else None


def _join(mail: Mail, incoming: Incoming, code: str, person: Person | None) -> None:
    joined = invites.redeem(mail.tx, code, incoming.channel, incoming.address, mail.now) if code else None
    if joined is None:
        if person is None:
            _stranger(mail.tx, incoming, mail.now, "code-unknown" if code else "stranger")
            return
        key = "coach-help" if person.role == "coach" else "help"
        mail.post(person, wording_for(person.language).say(key))
        return
    say = wording_for(joined.language)
    if joined.role == "coach":
        mail.post(joined, say.say("coach-joined", name=joined.name))
        outbox.hand_over(mail.tx, joined, mail.now)
        moments.begin_coach(mail.tx, joined.id, mail.now)
        return
    desk = Desk.of(mail, joined.id, incoming.id)
    desk.tell(desk.say.say("joined", name=joined.name, coach=desk.coach.name))
    desk.tell_coach(desk.say_coach.say("joined-for-coach", name=joined.name))
    if not desk.record.sent:
        moments.begin(mail.tx, joined.id, mail.now)


def _stranger(tx: Session, incoming: Incoming, now: datetime, key: str) -> None:
    """All that a stranger learns: that a code is needed. Once an hour, but for codes that don't work."""
    cause = f"incoming:{incoming.id}"
    if key == "stranger":
        cause = f"stranger:{incoming.channel}:{incoming.address}:{int(incoming.sent_at.timestamp() // 3600)}"
    text = wording_for("en").say(key)
    outbox.post(
        tx,
        outbox.Outgoing(channel=incoming.channel, address=incoming.address, to="", text=text, cause=cause, due_at=now),
    )


def _edited(mail: Mail, incoming: Incoming, person: Person | None) -> None:
    """Edits are not read, which is said once a message: the words stand as they were first, and stay to be mended."""
    if person is None:
        return
    key = "coach-edit-not-read" if person.role == "coach" else "edit-not-read"
    cause = f"edit:{incoming.channel}:{incoming.address}:{incoming.data.get('message')}"
    mail.post(person, wording_for(person.language).say(key), cause=cause)


def _membership(mail: Mail, incoming: Incoming, person: Person | None) -> None:
    if person is not None:
        _set_blocked(mail, incoming, person, bool(incoming.data.get("blocked")))


def _set_blocked(mail: Mail, incoming: Incoming, person: Person, blocked: bool) -> None:
    chats.set_blocked(mail.tx, incoming.channel, incoming.address, blocked)
    if person.role == "coach":
        outbox.hand_over(mail.tx, person, mail.now)
