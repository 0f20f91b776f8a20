"""What a move between databases says in the terminal."""

from __future__ import annotations

from collections.abc import Sequence

from storage.moving import Compared

# Enough to see that two sums are equal; the comparison was over all of them.
SUM_SHOWN = 16


def as_table(compared: Sequence[Compared]) -> str:
    """A line a table, with rows and sums of both sides, and one that sums up."""
    width = max(len(one.table) for one in compared)
    lines = [f"{'table':{width}}  {'rows from':>10}  {'rows to':>10}  {'sum from':{SUM_SHOWN}}  {'sum to':{SUM_SHOWN}}"]
    for one in compared:
        lines.append(
            f"{one.table:{width}}  {one.rows_from:>10}  {one.rows_to:>10}  {one.sum_from[:SUM_SHOWN]}"
            f"  {one.sum_to[:SUM_SHOWN]}  {'same' if one.same else 'DIFFERENT'}"
        )
    wrong = sum(not one.same for one in compared)
    rows = sum(one.rows_from for one in compared)
    lines.append(
        f"{rows} rows in {len(compared)} tables, " + (f"{wrong} tables different" if wrong else "all the same")
    )
    return "\n".join(lines)
