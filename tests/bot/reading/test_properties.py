"""Any text at all returns a whole reading, the same each time, that quotes its message word for word."""

from hypothesis import given, settings
from hypothesis import strategies as st

from bot.reading import complete, read
from bot.reading.reading import INTENTS, Ask
from planner.movements import catalogue
from tests.bot.reading.messages import context, planned

PIECES = st.sampled_from(
    (
        "pull-ups dips 5x3 +20 @8 rpe 8 left 3 right 2 20kg 5,5,4 last all done but not per side e/s 2 RIR 10s "
        "failed the 3rd one arm pulley archers tuck planche then and , . : ( ) / - slept 7h elbow 2/10 bw 71 yesterday "
        "½ ٥ 😀 con Klimmzüge"
    ).split()
)
TEXTS = st.one_of(st.text(max_size=300), st.lists(PIECES, max_size=25).map(" ".join))
PLAN = planned("pull_up", 3, 3, 3, load_kg=20.0, rpe=8.0) + planned("dip", 6, 6, part="accessory")
FIELDS = {
    *(
        "intents",
        "performed_on",
        "sets",
        "pain",
        "red_flags",
        "bodyweight_kg",
        "session_rpe",
        "duration_min",
        "sleep_h",
    ),
    *("dates", "correction", "ask", "unread"),
}


@settings(max_examples=150, deadline=None)
@given(TEXTS, st.sampled_from(["en", "de", "es", None, "fr"]), st.sampled_from([None, PLAN]))
def test_any_text_returns_a_whole_reading(text, language, today):
    here = context(language=language, today=today)
    reading = read(text, here)
    assert read(text, here) == reading
    assert set(reading.to_json()) == FIELDS
    assert reading.intents
    assert set(reading.intents) <= set(INTENTS)
    assert all(ask.span in text for ask in reading.ask)
    assert all(piece in text for piece in reading.unread)
    for one in reading.sets:
        assert one.movement is None or one.movement in catalogue()
        assert one.reps is None or one.reps >= 0
        assert one.hold_s is None or one.hold_s > 0
        assert one.load_kg is None or one.load_kg >= 0
        assert one.rpe is None or 0 <= one.rpe <= 10


@settings(max_examples=60, deadline=None)
@given(TEXTS, st.sampled_from("reps load_kg movement rom side rpe performed_on score bodyweight_kg sets".split()))
def test_any_answer_is_taken_or_left(answer, about):
    text = "pull ups 20"
    earlier = read(text, context())
    complete(text, earlier, Ask(about, "20"), answer, context())
