from datetime import date

import pytest

from bot.importing.entries import Entry, Stray, entries_from_notes
from bot.importing.table import BadColumns, entries_from_table


def days(text: str, language: str = "en", order: str = "DMY") -> list[tuple[date, str]]:
    return [(e.on, e.text) for e in entries_from_notes(text, language, order) if isinstance(e, Entry)]


@pytest.mark.parametrize(
    ("heading", "language", "order", "day"),
    [
        ("2024-03-01", "en", "DMY", date(2024, 3, 1)),
        ("## 1.3.2024", "de", "DMY", date(2024, 3, 1)),
        ("03/01/2024", "en", "MDY", date(2024, 3, 1)),
        ("Fri 1 March 2024:", "en", "DMY", date(2024, 3, 1)),
        ("March 1st, 2024", "en", "DMY", date(2024, 3, 1)),
        ("Freitag, 1. März 2024", "de", "DMY", date(2024, 3, 1)),
        ("1 de marzo de 2024", "es", "DMY", date(2024, 3, 1)),
        ("1/3/24", "en", "DMY", date(2024, 3, 1)),
    ],
)
def test_a_line_that_begins_with_a_date_begins_an_entry(heading, language, order, day):
    assert days(f"{heading}\npull-ups 5x3 +20\n", language, order) == [(day, "pull-ups 5x3 +20")]


def test_a_date_without_a_year_takes_the_last_one_and_turns_it_over_at_new_year():
    text = "30 December 2023: dips 3x8\n3 January: pull-ups 5x3\n"
    assert [day for day, _ in days(text)] == [date(2023, 12, 30), date(2024, 1, 3)]


def test_sets_at_the_beginning_of_a_line_are_no_date():
    text = "2024-03-01\n5/5/4 pull-ups\n3/3 archers\n5x3 +20\n"
    assert days(text) == [(date(2024, 3, 1), "5/5/4 pull-ups\n3/3 archers\n5x3 +20")]


def test_lines_before_the_first_date_and_days_that_cannot_be_are_shown_not_swallowed():
    strays = [e for e in entries_from_notes("my log\n31.2.2024\n", "de") if isinstance(e, Stray)]
    assert [s.line for s in strays] == [1, 2]


def test_a_table_becomes_the_sentences_an_athlete_would_send():
    text = "Day;Exercise;Sets;Reps;Weight\n2024-03-01;pull-ups;5;3;20\n2024-03-01;dips;3;8;0\nsoon;x;1;1;1\n"
    columns = {"date": "Day", "movement": "Exercise", "sets": "Sets", "reps": "Reps", "load": "Weight"}
    found = list(entries_from_table(text, columns, "kg", "en"))
    assert found == [Stray(4, "soon"), Entry(2, date(2024, 3, 1), "pull-ups 5x3 +20kg\ndips 3x8")]


def test_a_mapping_that_names_what_is_not_there_says_so():
    with pytest.raises(BadColumns, match="no column 'Datum'"):
        list(entries_from_table("Day,Text\n", {"date": "Datum", "text": "Text"}, "kg", "en"))
