"""What is wanted, decided and answered. Each function works within the transaction it is given."""

from bot.conversation.moments import at_new_hours, begin, begin_coach, go_on, handle_due, have_at_hand
from bot.conversation.router import handle, tell_dropped, tell_set_aside, tell_too_fast, tell_unreachable

__all__ = [
    "at_new_hours",
    "begin",
    "begin_coach",
    "go_on",
    "handle",
    "handle_due",
    "have_at_hand",
    "tell_dropped",
    "tell_set_aside",
    "tell_too_fast",
    "tell_unreachable",
]
