"""A ladder as an SVG picture: the lowest rung at the bottom, ways up as arrows, alternatives dashed. SVG 1.1."""

from __future__ import annotations

from xml.sax.saxutils import escape

from bot.wording import Wording, wording_for
from planner.ladders import GateRule, Ladder, Rung

WIDE, HIGH, GAP_X, GAP_Y, MARGIN, LINE = 300, 58, 40, 46, 24, 16
INK, PAPER = "#222", "#fff"


def draw(ladder: Ladder, say: Wording | None = None) -> str:
    """The picture as SVG text; names in the language of `say`, English without."""
    say = say or wording_for("en")
    levels = _levels(ladder)
    rows: dict[int, list[Rung]] = {}
    for rung in ladder.rungs:
        rows.setdefault(levels[rung.id], []).append(rung)
    widest = max(len(row) for row in rows.values())
    width = 2 * MARGIN + widest * (WIDE + GAP_X) - GAP_X
    heights = {level: max(_height(rung) for rung in row) for level, row in rows.items()}
    height = 2 * MARGIN + sum(heights.values()) + (len(rows) - 1) * GAP_Y
    corners, top = dict[str, tuple[float, float]](), float(height - MARGIN)
    for level in sorted(rows):
        top -= heights[level]
        left = (width - len(rows[level]) * (WIDE + GAP_X) + GAP_X) / 2
        for place, rung in enumerate(rows[level]):
            corners[rung.id] = (left + place * (WIDE + GAP_X), top + heights[level] - _height(rung))
        top -= GAP_Y
    ways = [_way(ladder, corners, rung, above) for rung in ladder.rungs for above in rung.next]
    boxes = [_box(rung, *corners[rung.id], say) for rung in ladder.rungs]
    return "\n".join(
        [
            f'<svg xmlns="http://www.w3.org/2000/svg" width="{width}" height="{height}" viewBox="0 0 {width} {height}"'
            ' font-family="sans-serif" font-size="12">',
            f"<title>{escape(ladder.id)}</title>",
            '<defs><marker id="tip" viewBox="0 0 8 8" refX="8" refY="4" markerWidth="8" markerHeight="8" orient="auto">'
            f'<path d="M0 0 8 4 0 8z" fill="{INK}"/></marker></defs>',
            f'<rect width="{width}" height="{height}" fill="{PAPER}"/>',
            *ways,
            *boxes,
            "</svg>\n",
        ]
    )


def _levels(ladder: Ladder) -> dict[str, int]:
    """How many steps up at most. A ladder's rungs stand in order, so one pass is enough."""
    levels = {rung.id: 0 for rung in ladder.rungs}
    for rung in ladder.rungs:
        for above in rung.next:
            levels[above] = max(levels[above], levels[rung.id] + 1)
    return levels


def _height(rung: Rung) -> int:
    return HIGH + LINE * len(rung.gates)


def _way(ladder: Ladder, corners: dict[str, tuple[float, float]], below: Rung, above: str) -> str:
    x, y = corners[below.id]
    to_x, to_y = corners[above]
    to_y += _height(ladder.by_id[above])
    x, to_x = x + WIDE / 2, to_x + WIDE / 2
    middle = (y + to_y) / 2
    path = f"M{x:g} {y:g}C{x:g} {middle:g} {to_x:g} {middle:g} {to_x:g} {to_y:g}"
    return f'<path d="{path}" fill="none" stroke="{INK}" marker-end="url(#tip)"/>'


def _box(rung: Rung, x: float, y: float, say: Wording) -> str:
    key = f"rung-{rung.id}"
    name = say.say(key) if say.has(key) else rung.id.replace("_", " ")
    lines = [name, f"{say.movement(rung.movement)} · {rung.work}", *map(_gate, rung.gates)]
    dashed = ' stroke-dasharray="6 4"' if rung.alternative else ""
    texts = "".join(
        f'<text x="{x + 12:g}" y="{y + 22 + at * LINE:g}"{_weight(at)}>{escape(line)}</text>'
        for at, line in enumerate(lines)
    )
    box = f'<rect x="{x:g}" y="{y:g}" width="{WIDE}" height="{_height(rung)}" fill="{PAPER}" stroke="{INK}"{dashed}/>'
    return f"<g>{box}{texts}</g>"


def _weight(at: int) -> str:
    return ' font-weight="bold"' if at == 0 else ""


def _gate(gate: GateRule) -> str:
    """A gate as the file has it: how much, and of what kind."""
    want = gate.want if isinstance(gate.want, str) else format(gate.want, "g")
    return f"≥ {want} ({gate.kind})"
