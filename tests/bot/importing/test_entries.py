from datetime import date
from pathlib import Path

import pytest

from bot.importing.entries import Entry, Stray, entries_from_notes
from bot.importing.table import BadColumns, columns_of, entries_from_table


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


def test_what_stands_under_a_day_that_cannot_be_is_not_of_the_day_before():
    text = "2026-11-12\ndips 3x8\n2026-11-31\npull-ups 9x9\n2026-12-01\ndips 3x9\n"
    assert days(text) == [(date(2026, 11, 12), "dips 3x8"), (date(2026, 12, 1), "dips 3x9")]


@pytest.mark.parametrize(
    ("text", "why"),
    [
        ("2026-11-05\na 1\n11/9\nb 2\n2026-11-12\nc 3\n", "two-days"),
        ("2026-11-12\na 1\n11/9\nb 2\n2026-11-05\nc 3\n", "two-days"),  # the newest first
        ("2026-11-05\na 1\n11/9\nb 2\n", "two-days"),
        ("2026-11-05\na 1\n11/15\nb 2\n2026-11-19\nc 3\n", "other-order"),
        ("2026-11-05\na 1\n11/15/2026\nb 2\n2026-11-19\nc 3\n", "other-order"),
    ],
)
def test_a_day_that_is_in_order_only_with_day_and_month_changed_is_left_out(text, why):
    strays = [e for e in entries_from_notes(text, "en") if isinstance(e, Stray)]
    assert [(s.line, s.why) for s in strays] == [(3, why), (4, "no-date")]


def test_day_and_month_in_order_are_read_as_they_stand():
    text = "2026-08-30\na 1\n11/9\nb 2\n2026-11-12\nc 3\n3/12: d 4\n"
    assert [day for day, _ in days(text)] == [
        date(2026, 8, 30),
        date(2026, 9, 11),
        date(2026, 11, 12),
        date(2026, 12, 3),
    ]


def test_a_day_and_a_month_with_two_points_need_no_year():
    assert days("1.11.2026\nDips 3x8\n5.11. Klimmzüge 4x4\n", "de")[1] == (date(2026, 11, 5), "Klimmzüge 4x4")


def test_three_sets_are_no_day_of_long_ago():
    assert len(days("2026-11-05\n12/10/10 pull-ups\n")) == 1


def test_each_line_of_an_entry_knows_where_it_stands():
    (entry,) = entries_from_notes("2026-11-05\n\ndips 3x8\n\npull-ups 4x4\n\n", "en")
    assert entry.numbered() == [(3, "dips 3x8"), (4, ""), (5, "pull-ups 4x4")]


@pytest.mark.parametrize("columns", ["Day,Exercise,Reps", "Day;Exercise;Reps"])
def test_a_table_is_known_by_its_head(columns):
    row = "2026-11-05,Dip,5".replace(",", columns[3])
    assert columns_of(Path("log.txt"), f"{columns}\n{row}\n") == ["Day", "Exercise", "Reps"]
    assert columns_of(Path("log.CSV"), row) == row.split(columns[3])
    assert not columns_of(Path("log.txt"), "my log, of dips, and more\n2026-11-05\ndips 5, 5, 4\n")


@pytest.mark.parametrize(
    ("kind", "cell"),
    [("sets", "x"), ("reps", "abc"), ("load", "-15"), ("load", "heavy"), ("rpe", "12"), ("rpe", "hard"), ("hold", "l")],
)
def test_a_cell_that_is_not_what_its_column_holds_leaves_the_row_out(kind, cell):
    cells = {"date": "2026-11-05", "movement": "Dip", "sets": "3", "reps": "5", kind: cell}
    table = ",".join(cells) + "\n" + ",".join(cells.values()) + "\n"
    (stray,) = entries_from_table(table, {name: name for name in cells}, "kg", "en")
    assert (stray.line, stray.why, stray.text) == (2, "cell", cell)
