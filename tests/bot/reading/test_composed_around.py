"""Reports with other things around them: hardly one is written down wrong, and few are asked about."""

from __future__ import annotations

import json
from datetime import datetime
from zoneinfo import ZoneInfo

import pytest

from bot.reading import read
from bot.reading.reading import Context
from tests.corpus.composed_around import Around
from tests.corpus.score import judge

EACH = 24  # messages of a kind, drawn by a seed that stays; half of them against a plan
MOST_WRONG, MOST_ASKED = 0.03, 0.03  # shares
CLOCK = ZoneInfo("Europe/Zurich")
SENT = datetime(2027, 5, 20, 19, tzinfo=CLOCK)


@pytest.mark.parametrize("language", ["en", "de", "es"])
def test_what_stands_around_a_report(language):
    wrong, asked, drawn = [], [], 0
    for number, kind in enumerate(Around(language, 0).kinds):
        around = Around(language, 300 + number)
        for turn in range(EACH):
            whole = around.whole(kind, planned=turn % 2 == 1)
            today = tuple(row for one in whole.plan for row in one.rows()) if whole.plan else None
            found = read(whole.text, Context(SENT, CLOCK, "kg", language, 75.0, today))
            verdict = judge(whole.line, json.loads(json.dumps(found.to_json())))
            drawn += 1
            if found.ask:
                asked.append(whole.text)
            elif not verdict.exact:
                wrong.append((whole.text, verdict.wrong, verdict.faults))
    assert len(wrong) <= MOST_WRONG * drawn, wrong
    assert len(asked) <= MOST_ASKED * drawn, asked


def test_a_message_holds_what_its_phrases_say():
    whole = Around("en", 5).whole("weight", planned=False, most=1)
    assert whole.line["gold"]["bodyweight_kg"] is not None
    assert "bodyweight" in whole.line["gold"]["intents"]
    assert [kind.split(":")[0] for kind in whole.kinds] == ["weight"]
