"""Score the reader on the corpora in tests/data and time it.

    python -m tests.bench.reading [--show N] [--tags] [--generated COUNT] [FILE …]

Prints a table for each corpus: the examples (english.jsonl …) and our own messages (own_english.jsonl …). Then how fast
all of it is read: by `slowrung read` from start to end, nothing loaded and no word met before; again by a process that
has read it once; and how long one message takes that a process is started for. `--generated` adds messages made by the
generator.
"""

from __future__ import annotations

import argparse
import json
import subprocess
import sys
import time
from collections import Counter
from collections.abc import Callable, Sequence
from pathlib import Path
from typing import Any

from tests.corpus import generate
from tests.corpus.context import context_of, corpus
from tests.corpus.score import Verdict, judge
from tests.corpus.table import by_tag, table

DATA = Path(__file__).parents[1] / "data"
LANGUAGES = ("english", "german", "spanish")
READ = [sys.executable, "-m", "bot.main", "read"]


def readings(lines: Sequence[dict[str, Any]]) -> list[dict[str, Any]]:
    """Every line read in this process, as the contract's objects."""
    from bot.reading import read  # late, so that its import is no part of other figures

    return [json.loads(json.dumps(read(m["text"], context_of(m)).to_json())) for m in (line["in"] for line in lines)]


def show(line: dict[str, Any], verdict: Verdict) -> None:
    """Print a message that was not read right, and what differs."""
    marks = {
        "SILENT MISREAD " + ",".join(verdict.misread): verdict.silent_misread,
        "silent loss " + ",".join(verdict.lost): verdict.silent_loss,
        "needless question": verdict.needless_ask,
        "missed question": verdict.missed_ask,
    }
    print(f"\n{verdict.id} [{' '.join(verdict.tags)}] {'; '.join(m for m, on in marks.items() if on)}")
    print("  " + json.dumps(line["in"]["text"][:300], ensure_ascii=False))
    for fault in verdict.faults[:4]:
        print("  contract:", fault)
    for name in verdict.wrong:
        gold, read = verdict.gold[name], verdict.read[name]
        if name != "sets":
            gold, read = (json.dumps(v, ensure_ascii=False) for v in (gold, read))
            print(f"  {name}: gold {gold}, read {read}")
            continue
        told, found = Counter(map(set_in_words, gold)), Counter(map(set_in_words, read))
        for sign, left in (("-", told - found), ("+", found - told)):
            for words, times in left.items():
                print(f"  sets {sign} {words}" + (f"  ({times} times)" if times > 1 else ""))


def set_in_words(s: dict[str, Any]) -> str:
    """A set in one line, without what is plain in it: `-` before a line is gold's, `+` is the reader's."""
    work = f"x{s['reps']}" if s["hold_s"] is None else f"{s['hold_s']:g}s"
    marks = {
        "+" + figure(s["load_kg"]): s["load_kg"] != 0,
        "-" + figure(s["assist_kg"]): s["assist_kg"] != 0,
        "@" + figure(s["rpe"]): s["rpe"] is not None,
        str(s["rom"]): s["rom"] != "full",
        "lowering": s["eccentric"],
        "pause " + "/".join(sorted(s["pauses"])): s["pauses"],
        "missed": s["failed"],
        "linked": s["linked"],
        f"on {s['on']}": s["on"],
    }
    side = [s["side"]] if s["side"] else []
    return " ".join([str(s["movement"]), *side, work, *(m for m, on in marks.items() if on)])


def figure(value: float | None) -> str:
    return "?" if value is None else f"{value:g}"


def main() -> None:
    parser = argparse.ArgumentParser(description="Score the reader of messages and time it.")
    parser.add_argument("files", nargs="*", type=Path, help="corpus files; the examples and our own when none is named")
    parser.add_argument("--show", type=int, default=0, help="print this many messages a file that were not read right")
    parser.add_argument("--tags", action="store_true", help="figures by tag as well")
    parser.add_argument("--generated", type=int, default=0, help="generated messages a language, beside the files")
    chosen = parser.parse_args()
    files = chosen.files or [DATA / f"{kind}{language}.jsonl" for language in LANGUAGES for kind in ("", "own_")]
    parts = [(path.stem, corpus(path)) for path in files]
    if chosen.generated:
        parts += [(f"generated {code}", generate.messages(chosen.generated, 1, code)) for code in generate.CODES]
    for name, lines in parts:
        read = readings(lines)
        verdicts = [judge(line, r) for line, r in zip(lines, read, strict=True)]
        print(f"\n{name}\n{table(verdicts)}")
        if chosen.tags:
            print(by_tag(verdicts))
        failing = [(line, v) for line, v in zip(lines, verdicts, strict=True) if not v.exact]
        failing.sort(key=lambda both: (not both[1].silent_misread, not both[1].missed_ask, not both[1].needless_ask))
        for line, verdict in failing[: chosen.show]:
            show(line, verdict)
    print("\n" + speed([line for _, lines in parts for line in lines]))


def speed(lines: Sequence[dict[str, Any]]) -> str:
    """How fast messages are read that this process has read before, and that a fresh one has not."""
    warm = _seconds(lambda: readings(lines))
    cold = _seconds(lambda: _read_afresh(lines))
    first = _seconds(lambda: _read_afresh(lines[:1]))
    length = sum(len(line["in"]["text"]) for line in lines) / len(lines)
    return (
        f"{len(lines)} messages of {length:.0f} characters: {len(lines) / cold:.0f} a second by a fresh process, its "
        f"start counted; {len(lines) / warm:.0f} when read again; one message by a fresh process in {first:.2f} s"
    )


def _read_afresh(lines: Sequence[dict[str, Any]]) -> None:
    given = "".join(json.dumps(line["in"]) + "\n" for line in lines)
    subprocess.run(READ, input=given, text=True, check=True, stdout=subprocess.DEVNULL)


def _seconds(work: Callable[[], object]) -> float:
    start = time.perf_counter()
    work()
    return time.perf_counter() - start


if __name__ == "__main__":
    main()
