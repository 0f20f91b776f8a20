"""Days that dateparser works out, on short spans that the lexicon has cut out, in one language.

dateparser finds dates where there are none ("5.5", "at 20") and needs seconds without a language; so it never sees a
whole message, and is imported only once a span for it turns up.
"""

from __future__ import annotations

from datetime import date, datetime, time
from functools import lru_cache

LONGEST = 40  # letters; nothing that names one day needs more


@lru_cache(maxsize=4096)
def parsed(span: str, language: str, today: date) -> date | None:
    """The day that "3 march 2026" names, seen from `today`; None where it names none."""
    if len(span) > LONGEST:
        return None
    import dateparser  # 0.3 s and 15 MB, for messages that need it only

    found = dateparser.parse(
        span,
        languages=[language] if language == "en" else [language, "en"],
        settings={
            "RELATIVE_BASE": datetime.combine(today, time(12)),
            "DATE_ORDER": "DMY",
            "RETURN_AS_TIMEZONE_AWARE": False,
            "REQUIRE_PARTS": ["day", "month", "year"],
        },
    )
    return found.date() if found is not None else None
