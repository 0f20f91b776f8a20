"""What is wanted, decided and answered. Each function works within the transaction it is given."""

from bot.conversation.moments import begin, begin_coach, handle_due
from bot.conversation.router import handle, tell_set_aside, tell_unreachable

__all__ = ["begin", "begin_coach", "handle", "handle_due", "tell_set_aside", "tell_unreachable"]
