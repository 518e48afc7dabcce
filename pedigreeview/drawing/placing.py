"""Places for everything in a view: blocks, lines, bands and labels, as plain numbers.

`place` is a pure function of the view, the earlier picture and the orientation; it gives the same
answer for the same question.  The work is done with generations as rows; for pictures that run left
to right the two coordinates are exchanged at the end.  Knows no Qt.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass, field, replace
from typing import TYPE_CHECKING, Any, Literal

from pedigreeview.drawing.blocks import Block, Link, Role, View
from pedigreeview.drawing.detached import draw_near
from pedigreeview.drawing.layers import Item, KnotPlace, Layers, layers
from pedigreeview.drawing.ordering import (
    DOT_MOST,
    order_by_barycentre,
    order_by_dot,
    order_by_places,
    untangle,
)
from pedigreeview.drawing.parting import part_uprights
from pedigreeview.drawing.ports import open_slots, settle_ports
from pedigreeview.drawing.routing import RoutedNet, route
from pedigreeview.drawing.settling import settle
from pedigreeview.drawing.theme import Sizes, sizes

if TYPE_CHECKING:
    from pedigreeview.drawing.worker import Tick

__all__ = [
    "Band",
    "KnotSpot",
    "Line",
    "OpenEnd",
    "Orientation",
    "Placed",
    "PlacedBlock",
    "place",
    "place_in_worker",
]

Orientation = Literal["down", "right"]

_TRIES = 4
"""So often a picture is settled, each time with wider gaps, until its lines can be told apart."""


@dataclass(frozen=True, slots=True)
class KnotSpot:
    """Where one knot's sign lies: its pill."""

    key: str
    x: float
    y: float
    width: float
    height: float


@dataclass(frozen=True, slots=True)
class PlacedBlock:
    """A block with its rectangle."""

    block: Block
    x: float
    y: float
    width: float
    height: float
    knots: tuple[KnotSpot, ...] = ()

    @property
    def right(self) -> float:
        """Right edge."""
        return self.x + self.width

    @property
    def bottom(self) -> float:
        """Lower edge."""
        return self.y + self.height

    @property
    def middle(self) -> tuple[float, float]:
        """Middle of the rectangle."""
        return self.x + self.width / 2, self.y + self.height / 2

    def holds(self, x: float, y: float) -> bool:
        """Whether the point lies in the rectangle."""
        return self.x <= x <= self.right and self.y <= y <= self.bottom


@dataclass(frozen=True, slots=True)
class Line:
    """All lines of one net: a route for each link, which share their beginnings."""

    key: str
    role: Role
    odds: float
    sure: bool
    back: bool
    routes: tuple[tuple[Link, tuple[tuple[float, float], ...]], ...]


@dataclass(frozen=True, slots=True)
class OpenEnd:
    """An unknown parent of a knot: a short line that ends in a ring."""

    knot: str
    role: Role
    odds: float
    x: float
    y: float
    """Where the line meets the knot; it runs up (or to the left) by `length`."""
    length: float


@dataclass(frozen=True, slots=True)
class Band:
    """The strip of one generation, across the whole picture."""

    generation: int
    label: str
    start: float
    end: float


@dataclass(frozen=True, slots=True)
class Placed:
    """A picture with places, in its own units; x grows to the right and y downwards."""

    view: View
    orientation: Orientation
    blocks: tuple[PlacedBlock, ...]
    lines: tuple[Line, ...]
    open_ends: tuple[OpenEnd, ...]
    bands: tuple[Band, ...]
    bounds: tuple[float, float, float, float]
    """Left, top, width and height of everything drawn."""
    old_places: dict[str, tuple[float, float]] = field(default_factory=dict, repr=False)
    """Middles of all items, through places too: where the next picture starts from."""
    held: dict[str, Any] = field(default_factory=dict, compare=False, repr=False)
    """What the painter worked out from the places; not sent to another process."""

    def block(self, key: str) -> PlacedBlock | None:
        """The block of that key."""
        if "by key" not in self.held:
            self.held["by key"] = {placed.block.key: placed for placed in self.blocks}
        found: PlacedBlock | None = self.held["by key"].get(key)
        return found

    def block_of(self, code: str) -> PlacedBlock | None:
        """The block that shows a plant, folded or not."""
        return self.block(self.view.block_of(code))

    def at(self, x: float, y: float) -> PlacedBlock | None:
        """The block at a point."""
        if "by_place" not in self.held:
            self.held["by_place"] = _by_place(self.blocks)
        near = self.held["by_place"].get((int(x // _CELL), int(y // _CELL)), ())
        return next((placed for placed in near if placed.holds(x, y)), None)


_CELL = 128.0
"""Side of the squares by which a block is found at a point."""


def _by_place(blocks: tuple[PlacedBlock, ...]) -> dict[tuple[int, int], list[PlacedBlock]]:
    """The blocks that lie in each square, in their order."""
    found: dict[tuple[int, int], list[PlacedBlock]] = {}
    for placed in blocks:
        across = range(int(placed.x // _CELL), int(placed.right // _CELL) + 1)
        down = range(int(placed.y // _CELL), int(placed.bottom // _CELL) + 1)
        for column in across:
            for row in down:
                found.setdefault((column, row), []).append(placed)
    return found


def place(
    view: View,
    previous: Placed | None = None,
    *,
    orientation: Orientation = "down",
    dot_most: int = DOT_MOST,
) -> Placed:
    """Places for a view.

    previous : the picture on the screen; what both hold stays near its old place, and the focus
        exactly there
    dot_most : items up to which dot is asked; it cannot be stopped and holds the interpreter
    """
    measures = sizes()
    sideways = orientation == "right"
    built = layers(view, measures, sideways=sideways)
    old: dict[str, tuple[float, float]] = {}
    if previous is not None and previous.orientation == orientation:
        old = _carried_over(previous, built, sideways)
    pull: dict[str, float] = {}
    common = [key for key in old if key in built.items and built.items[key].block is not None]
    if common:
        pull = {key: old[key][0] for key in old if key in built.items}
        order_by_places(built, pull)
    elif len(built.items) <= dot_most:
        order_by_dot(built)
    else:
        order_by_barycentre(built)
    _turn_frames(built)
    if len(built.items) <= 4 * DOT_MOST:
        untangle(built, 3 if common else 8)
    settle_ports(built)
    anchor = _anchor(view, built, common)
    for more in range(_TRIES):
        # Once in thousands of pictures lines find no place between crowded tags: those stand wider.
        wide = 2 * measures.grid * more
        roomy = replace(
            measures, tag_gap=measures.tag_gap + wide, knot_gap=measures.knot_gap + wide
        )
        settle(built, roomy, pull, anchor)
        if view.focus is not None:
            draw_near(built, measures, anchor or view.block_of(view.focus), pull)
        if part_uprights(built, roomy, anchor) or len(built.items) > 4 * DOT_MOST:
            break
    routed, heights = route(built, measures)
    return _assemble(view, built, routed, heights, measures, orientation, anchor, old)


def place_in_worker(
    view: View, *, orientation: Orientation = "down", tick: Tick | None = None
) -> Placed:
    """Places for a whole book, computed in a process of its own that Cancel ends at once.

    tick : called about every 0.1 s with done, total and words; may raise `Cancelled`
    """
    from pedigreeview.drawing.worker import place_apart

    return place_apart(view, orientation=orientation, tick=tick)


def _carried_over(
    previous: Placed, built: Layers, sideways: bool
) -> dict[str, tuple[float, float]]:
    """Old places by key of the new items, in the direction of the rows."""
    old = dict(previous.old_places)
    for item in built.items.values():
        if item.block is not None and item.key not in old:
            for code in item.block.codes:
                before = previous.view.block_of(code)
                if before in previous.old_places:
                    old[item.key] = previous.old_places[before]
                    break
    if sideways:
        old = {key: (y, x) for key, (x, y) in old.items()}
    return old


def _anchor(view: View, built: Layers, common: list[str]) -> str:
    """The block whose place does not change at all: the focus, else the first that both hold."""
    if not common:
        return ""
    focus = view.block_of(view.focus) if view.focus else ""
    return focus if focus in common else common[0]


def _turn_frames(built: Layers) -> None:
    """Exchange the two directions in a frame when their seed parents stand the other way round."""
    for item in built.items.values():
        block = item.block
        if block is None or block.sort != "pair":
            continue
        seeds: dict[str, float] = {}
        for net in built.nets.values():
            if net.role != "seed":
                continue
            for above, below in net.pieces:
                if below == item.key:
                    for port in item.above[net.key]:
                        seeds[port.knot] = built.items[above].x
        ahead = [seeds[k.key] for k in block.knots[: block.turn] if k.key in seeds]
        back = [seeds[k.key] for k in block.knots[block.turn :] if k.key in seeds]
        if ahead and back and sum(ahead) / len(ahead) > sum(back) / len(back):
            for held in item.knots:
                held.middle = -held.middle


def _assemble(
    view: View,
    built: Layers,
    routed: list[RoutedNet],
    heights: list[tuple[float, float]],
    measures: Sizes,
    orientation: Orientation,
    anchor: str,
    old: dict[str, tuple[float, float]],
) -> Placed:
    sideways = orientation == "right"
    shift_y = 0.0
    if anchor:
        top, bottom = heights[built.items[anchor].layer]
        shift_y = old[anchor][1] - (top + bottom) / 2
    shift_y = round(shift_y)

    def turn(x: float, y: float) -> tuple[float, float]:
        return (y + shift_y, x) if sideways else (x, y + shift_y)

    blocks: list[PlacedBlock] = []
    open_ends: list[OpenEnd] = []
    old_places: dict[str, tuple[float, float]] = {}
    for item in built.items.values():
        top, bottom = heights[item.layer]
        middle = (top + bottom) / 2
        old_places[item.key] = turn(item.x, middle)
        if item.block is None:
            continue
        blocks.append(_placed_block(item, middle, measures, sideways, turn))
        for knot, role, odds, at in open_slots(item):
            x, y = turn(at, middle - item.height / 2 + _inset(item, measures))
            open_ends.append(OpenEnd(knot, role, odds, x, y, measures.note_room))
    lines = tuple(
        Line(
            net.net.key,
            net.net.role,
            net.net.odds,
            net.net.sure,
            net.net.back,
            tuple((link, tuple(turn(x, y) for x, y in points)) for link, points in net.routes),
        )
        for net in routed
    )
    bands = _bands(view, heights, measures, shift_y)
    return Placed(
        view,
        orientation,
        tuple(blocks),
        lines,
        tuple(open_ends),
        bands,
        _bounds(blocks, lines, bands, measures, sideways),
        old_places,
    )


def _inset(item: Item, measures: Sizes) -> float:
    pair = item.block is not None and item.block.sort == "pair"
    return measures.frame_pad if pair else 0.0


def _placed_block(
    item: Item,
    middle: float,
    measures: Sizes,
    sideways: bool,
    turn: Callable[[float, float], tuple[float, float]],
) -> PlacedBlock:
    assert item.block is not None
    left, upper = turn(item.x - item.width / 2, middle - item.height / 2)
    width, height = (item.height, item.width) if sideways else (item.width, item.height)
    knots = []
    inset = _inset(item, measures)
    for held in item.knots:
        x, y = turn(item.x + held.middle, middle)
        if sideways:
            w, h = item.height - 2 * inset, held.width
        else:
            w, h = _pill_width(held, measures), measures.knot_height
        knots.append(KnotSpot(held.knot.key, x - w / 2, y - h / 2, w, h))
    return PlacedBlock(item.block, left, upper, width, height, tuple(knots))


def _pill_width(held: KnotPlace, measures: Sizes) -> float:
    wide = held.knot.label or len(held.knot.pollen) > 1
    return held.width if wide else measures.knot_height


def _bands(
    view: View, heights: list[tuple[float, float]], measures: Sizes, shift: float
) -> tuple[Band, ...]:
    found: list[Band] = []
    for at, row in enumerate(view.rows):
        top, bottom = heights[2 * at + 1]
        start = top - measures.band_pad + shift
        end = bottom + measures.band_pad + shift
        if found and (found[-1].generation, found[-1].label) == (row.generation, row.label):
            found[-1] = Band(row.generation, found[-1].label, found[-1].start, end)
        else:
            found.append(Band(row.generation, row.label, start, end))
    return tuple(found)


def _bounds(
    blocks: list[PlacedBlock],
    lines: tuple[Line, ...],
    bands: tuple[Band, ...],
    measures: Sizes,
    sideways: bool,
) -> tuple[float, float, float, float]:
    xs = [x for placed in blocks for x in (placed.x, placed.right)]
    ys = [y for placed in blocks for y in (placed.y, placed.bottom)]
    for line in lines:
        for _, points in line.routes:
            xs += [x for x, _ in points]
            ys += [y for _, y in points]
    along = ys if not sideways else xs
    for band in bands:
        along += [band.start, band.end]
    if not xs or not ys:
        return (0.0, 0.0, 0.0, 0.0)
    pad = 2 * measures.tag_gap / 2
    left, top, right, bottom = min(xs), min(ys), max(xs), max(ys)
    if sideways:
        return (
            left - pad,
            top - measures.band_label,
            right - left + 2 * pad,
            bottom - top + measures.band_label + pad,
        )
    return (
        left - measures.band_label,
        top - pad / 2,
        right - left + measures.band_label + pad,
        bottom - top + pad,
    )
