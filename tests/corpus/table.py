"""Figures over many verdicts, and the table that shows them."""

from __future__ import annotations

from collections.abc import Sequence

from tests.corpus.score import Verdict

Counts = tuple[int, int, int]


def rates(counts: Counts) -> str:
    """Precision, recall and F1 in percent, from right, extra and missing."""
    right, extra, missing = counts

    def percent(part: float, whole: float) -> str:
        return f"{100 * part / whole:5.1f} %" if whole else "    – %"

    return (
        f"precision {percent(right, right + extra)}  recall {percent(right, right + missing)}"
        f"  F1 {percent(2 * right, 2 * right + extra + missing)}   right {right}, extra {extra}, missing {missing}"
    )


def total(counts: Sequence[Counts]) -> Counts:
    return sum(c[0] for c in counts), sum(c[1] for c in counts), sum(c[2] for c in counts)


def of_words(verdicts: Sequence[Verdict], name: str) -> Counts:
    """Counts over a field that is a list of words."""
    pairs = [(set(v.read[name]), set(v.gold[name])) for v in verdicts if name in v.gold]
    return total([(len(a & b), len(a - b), len(b - a)) for a, b in pairs])


def table(verdicts: Sequence[Verdict], ids: int = 30) -> str:
    """The figures as lines of text; `ids`: how many message ids a line names at most."""
    count = len(verdicts)
    asked_right = [v for v in verdicts if v.must_ask and v.asked and not v.misread]
    must = [v for v in verdicts if v.must_ask]

    def row(name: str, found: list[Verdict], of: int = count) -> str:
        named = " ".join(v.id for v in found[:ids]) + (f" … {len(found) - ids} more" if len(found) > ids else "")
        return f"{name:24s} {len(found):5d} of {of:5d}  {100 * len(found) / max(of, 1):5.1f} %   {named}".rstrip()

    exact = sum(v.exact for v in verdicts)
    intents = sum("intents" not in v.wrong for v in verdicts)
    lines = [
        f"{'exactly right':24s} {exact:5d} of {count:5d}  {100 * exact / max(count, 1):5.1f} %",
        f"{'sets':24s} {rates(total([v.sets for v in verdicts]))}",
        f"{'pain entries':24s} {rates(total([v.pain for v in verdicts]))}",
        f"{'red flags':24s} {rates(of_words(verdicts, 'red_flags'))}",
        f"{'intents':24s} {rates(of_words(verdicts, 'intents'))}",
        f"{'intents exactly right':24s} {intents:5d} of {count:5d}  {100 * intents / max(count, 1):5.1f} %",
        row("SILENT MISREADS", [v for v in verdicts if v.silent_misread]),
        row("silent losses", [v for v in verdicts if v.silent_loss]),
        row("NEEDLESS QUESTIONS", [v for v in verdicts if v.needless_ask]),
        row("MISSED QUESTIONS", [v for v in verdicts if v.missed_ask], len(must)),
        f"{'asked, nothing wrong':24s} {len(asked_right):5d} of {len(must):5d}",
        row("breaking the contract", [v for v in verdicts if v.faults]),
    ]
    return "\n".join(lines)


def by_tag(verdicts: Sequence[Verdict]) -> str:
    """Exact and silently misread messages by tag."""
    lines = []
    for tag in sorted({t for v in verdicts for t in v.tags}):
        some = [v for v in verdicts if tag in v.tags]
        exact, misread = sum(v.exact for v in some), sum(v.silent_misread for v in some)
        lines.append(f"  {tag:12s} {exact:5d} of {len(some):5d}  {100 * exact / len(some):5.1f} %   misread {misread}")
    return "\n".join(lines)
