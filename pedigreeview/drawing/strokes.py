"""Lines as strokes: every stretch once, corners rounded, the lower line broken where two cross.

A net's routes share their beginnings; drawn one by one the shared stretch would look heavier than
the rest.  Here all routes of a net become one set of straight stretches and bends.  Where lines of
two nets cross, the one of less weight is broken, so that a crossing is never read as a joint.
Knows no Qt.
"""

from __future__ import annotations

import itertools
from bisect import bisect_left, bisect_right
from collections import defaultdict
from collections.abc import Iterable, Sequence
from dataclasses import dataclass, field, replace
from typing import Any

from pedigreeview.drawing.blocks import Link
from pedigreeview.drawing.placing import Line, Placed
from pedigreeview.drawing.theme import sizes

__all__ = [
    "BREAK",
    "CLEAR",
    "GRAIN_BREAK",
    "Bend",
    "End",
    "Stroke",
    "Strokes",
    "bend_spots",
    "straight_stretches",
    "strokes",
    "strokes_of",
]

Point = tuple[float, float]
Bend = tuple[Point, Point, Point]
"""Start, corner and end of a rounded corner."""
LinkKey = tuple[str, str, str, str]
"""Of a link: block above, block below, role, knot."""
Stretch = tuple[float, float, float]
"""Place across, from, to."""

BREAK = 6.0
"""Half of the gap in an unbroken line where another crosses over it."""
GRAIN_BREAK = 6.6
"""The same in a line of grains: three grains are left out."""
CLEAR = 12.0
"""No gap so near to an end or a corner of a line, where it would leave bits without a line."""
_RADIUS = 7.0
_OVER = {"progeny": 0, "source": 0, "pollen": 1, "seed": 2}


@dataclass(slots=True)
class Stroke:
    """All that is drawn of one net."""

    line: Line
    level: list[Stretch] = field(default_factory=list)
    upright: list[Stretch] = field(default_factory=list)
    bends: list[Bend] = field(default_factory=list)
    faint: bool = False
    """Part of what a filter puts back."""
    gone: list[Point] = field(default_factory=list)
    """Crossings about which a line of pollen leaves its grains out."""
    shared: list[Point] = field(default_factory=list)
    """Crossings without a gap at which the grains of another line lie already."""
    bounds: tuple[float, float, float, float] = (0.0, 0.0, 0.0, 0.0)
    """Left, top, right, bottom."""
    held: dict[str, Any] = field(default_factory=dict, repr=False)
    """What the painter made of it."""

    @property
    def spots(self) -> list[Point]:
        """Grains, for a line of pollen; worked out when they are first wanted."""
        if self.line.role != "pollen":
            return []
        found: list[Point] | None = self.held.get("spots")
        if found is None:
            every = list(_spots_along(self, sizes().grid))
            every = _without(every, self.gone, GRAIN_BREAK)
            found = self.held["spots"] = _without(every, self.shared, sizes().grid / 2)
        return found


@dataclass(frozen=True, slots=True)
class End:
    """Where a link meets its knot (or a tag), for the signs that stand there."""

    x: float
    y: float
    line: Line
    link: Link
    right: bool
    """Whether it comes to the right half of its knot."""


@dataclass(frozen=True, slots=True)
class Strokes:
    """The strokes of a picture, lowest first, and the ends of its links."""

    strokes: tuple[Stroke, ...]
    ends: tuple[End, ...]


def strokes(placed: Placed, faint: frozenset[LinkKey] = frozenset()) -> Strokes:
    """The strokes of a picture; computed once for each picture.

    faint : links that are drawn apart from the rest of their net, as strokes that say so
    """
    name = "parted" if faint else "strokes"
    held: tuple[frozenset[LinkKey], Strokes] | None = placed.held.get(name)
    if held is None or held[0] != faint:
        held = placed.held[name] = faint, _build(placed, faint)
    return held[1]


def strokes_of(line: Line) -> Stroke:
    """The stroke of one net by itself, as for a legend."""
    return _gathered(line)


def _build(placed: Placed, faint: frozenset[LinkKey]) -> Strokes:
    order = sorted(placed.lines, key=lambda line: (line.back, _OVER[line.role]))
    made = [stroke for line in order for stroke in _parted(line, faint)]
    cuts_level, cuts_upright = _cuts(made, placed.orientation == "down")
    for at, stroke in enumerate(made):
        if stroke.line.role == "pollen":
            stroke.gone = cuts_level.get(at, []) + cuts_upright.get(at, [])
        else:
            stroke.level = _cut(stroke.level, [(y, x) for x, y in cuts_level.get(at, [])])
            stroke.upright = _cut(stroke.upright, cuts_upright.get(at, []))
    return Strokes(tuple(made), _ends(placed))


def _parted(line: Line, faint: frozenset[LinkKey]) -> list[Stroke]:
    """One stroke of a net, or two where some of its links are faint: these below the others."""
    parts: tuple[list[tuple[Link, tuple[Point, ...]]], ...] = ([], [])
    for link, points in line.routes:
        plain = not faint or (link.above, link.below, link.role, link.knot) not in faint
        parts[plain].append((link, points))
    found = []
    for routes, other, back in ((parts[0], parts[1], True), (parts[1], parts[0], False)):
        if routes:
            stroke = _gathered(replace(line, routes=tuple(routes)) if other else line)
            stroke.faint = back
            found.append(stroke)
    return found


def _gathered(line: Line) -> Stroke:
    """Stretches and bends of all routes, each once."""
    level: dict[float, list[tuple[float, float]]] = defaultdict(list)
    upright: dict[float, list[tuple[float, float]]] = defaultdict(list)
    bends: dict[Bend, None] = {}
    most = 12.0 if line.role == "pollen" else _RADIUS
    for _, points in line.routes:
        start = points[0]
        for before, corner, after in itertools.zip_longest(points, points[1:], points[2:]):
            if corner is None:
                break
            if after is None:
                _add(level, upright, start, corner)
                break
            radius = min(most, _far(before, corner) / 2, _far(corner, after) / 2)
            if line.role == "pollen" and radius < most:
                radius = radius // 6 * 6 or radius
            one, other = _towards(corner, before, radius), _towards(corner, after, radius)
            _add(level, upright, start, one)
            bends[one, corner, other] = None
            start = other
    made = Stroke(line, _merged(level), _merged(upright), list(bends))
    xs = [x for _, points in line.routes for x, _ in points]
    ys = [y for _, points in line.routes for _, y in points]
    made.bounds = (min(xs), min(ys), max(xs), max(ys))
    return made


def _far(one: Point, other: Point) -> float:
    return abs(one[0] - other[0]) + abs(one[1] - other[1])


def _towards(start: Point, end: Point, far: float) -> Point:
    whole = _far(start, end) or 1.0
    part = far / whole
    return (
        round(start[0] + (end[0] - start[0]) * part, 3),
        round(start[1] + (end[1] - start[1]) * part, 3),
    )


def _add(
    level: dict[float, list[tuple[float, float]]],
    upright: dict[float, list[tuple[float, float]]],
    one: Point,
    other: Point,
) -> None:
    if one == other:
        return
    if one[1] == other[1]:
        level[one[1]].append((min(one[0], other[0]), max(one[0], other[0])))
    else:
        upright[one[0]].append((min(one[1], other[1]), max(one[1], other[1])))


def _merged(held: dict[float, list[tuple[float, float]]]) -> list[Stretch]:
    found: list[Stretch] = []
    for across, ways in sorted(held.items()):
        ways.sort()
        start, end = ways[0]
        for low, high in ways[1:]:
            if low <= end:
                end = max(end, high)
            else:
                found.append((across, start, end))
                start, end = low, high
        found.append((across, start, end))
    return found


def _cuts(
    made: Sequence[Stroke], down: bool
) -> tuple[dict[int, list[Point]], dict[int, list[Point]]]:
    """Crossings at which a stroke is the lower one, by its number: of its level parts, uprights."""
    uprights = sorted(
        (x, top, bottom, at)
        for at, stroke in enumerate(made)
        for x, top, bottom in straight_stretches(stroke.line, level=False)
    )
    xs = [x for x, *_ in uprights]
    joints = [_joints(stroke.line) for stroke in made]

    def near(number: int, crossing: Point, level: bool) -> bool:
        """Whether a crossing lies near an end or a corner of a stroke."""
        x, y = crossing
        places = joints[number][0].get(y, []) if level else joints[number][1].get(x, [])
        along = x if level else y
        return any(abs(place - along) < CLEAR for place in places)

    cut_level: dict[int, list[Point]] = defaultdict(list)
    cut_upright: dict[int, list[Point]] = defaultdict(list)
    for at, stroke in enumerate(made):
        own = _OVER[stroke.line.role] + 3 * stroke.line.back
        for y, left, right in straight_stretches(stroke.line, level=True):
            for x, top, bottom, other in uprights[bisect_right(xs, left) : bisect_left(xs, right)]:
                if other == at or not top < y < bottom:
                    continue
                theirs = _OVER[made[other].line.role] + 3 * made[other].line.back
                level_gives = own < theirs or (own == theirs and down)
                lower, upper = (at, other) if level_gives else (other, at)
                pollen = made[lower].line.role == "pollen"
                if pollen and near(lower, (x, y), level_gives):
                    if not near(upper, (x, y), not level_gives):
                        level_gives = not level_gives
                    else:
                        if made[upper].line.role == "pollen":
                            made[lower].shared.append((x, y))
                        continue
                if level_gives:
                    cut_level[at].append((x, y))
                else:
                    cut_upright[other].append((x, y))
    return cut_level, cut_upright


def _joints(line: Line) -> tuple[dict[float, list[float]], dict[float, list[float]]]:
    """Ends and corners of a net, sorted: along each of its levels, along each of its uprights."""
    along: dict[float, set[float]] = defaultdict(set)
    down: dict[float, set[float]] = defaultdict(set)
    for _, points in line.routes:
        for x, y in points:
            along[y].add(x)
            down[x].add(y)
    return (
        {y: sorted(places) for y, places in along.items()},
        {x: sorted(places) for x, places in down.items()},
    )


def straight_stretches(line: Line, *, level: bool) -> list[Stretch]:
    """Straight stretches of all routes up to the corners themselves, each once."""
    found: dict[float, list[tuple[float, float]]] = defaultdict(list)
    for _, points in line.routes:
        for (x0, y0), (x1, y1) in itertools.pairwise(points):
            if level and y0 == y1:
                found[y0].append((min(x0, x1), max(x0, x1)))
            elif not level and x0 == x1:
                found[x0].append((min(y0, y1), max(y0, y1)))
    return _merged(found)


def _cut(ways: list[Stretch], crossings: list[tuple[float, float]]) -> list[Stretch]:
    """Stretches with a gap about each crossing, given as (place across, place along)."""
    if not crossings:
        return ways
    by_place: dict[float, list[float]] = defaultdict(list)
    for across, along in crossings:
        by_place[across].append(along)
    found: list[Stretch] = []
    for across, start, end in ways:
        for along in sorted(by_place.get(across, ())):
            if along + BREAK <= start or along - BREAK >= end:
                continue
            if along - BREAK > start:
                found.append((across, start, along - BREAK))
            start = along + BREAK
        if start < end:
            found.append((across, start, end))
    return found


def _spots_along(stroke: Stroke, step: float) -> Iterable[Point]:
    found: dict[Point, None] = {}
    for across, start, end in stroke.level:
        for along in _steps(start, end, step):
            found[along, round(across, 1)] = None
    for across, start, end in stroke.upright:
        for along in _steps(start, end, step):
            found[round(across, 1), along] = None
    for bend in stroke.bends:
        for spot in bend_spots(bend, step):
            found[spot] = None
    return found


def _steps(start: float, end: float, step: float) -> list[float]:
    count = max(1, round((end - start) / step))
    return [round(start + (end - start) * at / count, 1) for at in range(count + 1)]


def bend_spots(bend: Bend, step: float) -> list[Point]:
    """Grains within a rounded corner."""
    one, corner, other = bend
    radius = _far(one, corner)
    count = max(1, round(radius * 1.62 / step) - 1)
    found = []
    for at in range(1, count + 1):
        t = at / (count + 1)
        a, b, c = (1 - t) ** 2, 2 * t * (1 - t), t * t
        x = a * one[0] + b * corner[0] + c * other[0]
        y = a * one[1] + b * corner[1] + c * other[1]
        found.append((round(x, 1), round(y, 1)))
    return found


def _without(points: list[Point], gone: list[Point], far: float) -> list[Point]:
    """The points that lie farther from all those that are gone."""
    if not gone:
        return points
    cell = 2 * far
    near: dict[tuple[int, int], list[Point]] = defaultdict(list)
    for x, y in gone:
        column, row = int(x // cell), int(y // cell)
        for c in (column - 1, column, column + 1):
            for r in (row - 1, row, row + 1):
                near[c, r].append((x, y))
    kept = []
    for x, y in points:
        held = near.get((int(x // cell), int(y // cell)))
        if held is None or not any(abs(x - gx) < far and abs(y - gy) < far for gx, gy in held):
            kept.append((x, y))
    return kept


def _ends(placed: Placed) -> tuple[End, ...]:
    middles = {spot.key: spot for item in placed.blocks for spot in item.knots}
    down = placed.orientation == "down"
    found = []
    for line in placed.lines:
        for link, points in line.routes:
            x, y = points[-1]
            spot = middles.get(link.knot)
            right = False
            if spot is not None and link.role in ("seed", "pollen"):
                right = x > spot.x + spot.width / 2 if down else y > spot.y + spot.height / 2
            found.append(End(x, y, line, link, right))
    return tuple(found)
