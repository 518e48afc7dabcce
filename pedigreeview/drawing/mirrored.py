"""A reciprocal pair as a picture: the two directions as mirrored columns, progeny under each.

The parents stand above, one at each side; between them both knots lie in one frame with ⇄.  The
seed line of each direction falls straight down on the outer side, the pollen line comes across.
Below each knot are the plants raised from it.  Plants found to be accidental selfings hang on no
line of the cross, as they are no progeny of both parents.  Pure functions; knows no Qt.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, field, replace
from typing import TYPE_CHECKING

from pedigreeview.drawing.blocks import Block, Knot, Link, Role, Row, View
from pedigreeview.drawing.founders import shown_numbers
from pedigreeview.drawing.placing import KnotSpot, Line, Placed, PlacedBlock
from pedigreeview.drawing.theme import Sizes, sizes
from pedigreeview.drawing.wording import cross_words, plant_words, share_list

if TYPE_CHECKING:
    from pedigreeview.network import PedigreeNetwork

__all__ = ["MOST_ROWS", "Mirrored", "Side", "mirrored", "sides_of"]

MOST_ROWS = 4
"""Rows of progeny that are drawn singly; the rest is one pack until it is opened."""

_GAP = 24.0
_MIDDLE = 36.0
"""Half of the room between the two columns."""
_PORT = 12.0
_TRACK = 15.0
_EDGE = 18.0
_ROW_GAP = 24.0
_TRUNK, _BUS = 24.0, 15.0
"""From the tags of a side to their trunk, and from a row up to its line: clear of tabs."""


@dataclass(frozen=True, slots=True)
class Side:
    """One direction of a pair.

    crosses : its crosses; none where it was never made
    seeds, pollens : seed and pollen parent of each cross
    """

    crosses: tuple[str, ...]
    seeds: tuple[str, ...]
    pollens: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class Mirrored:
    """The picture with places, and what the painter cannot know of it.

    placed : the picture
    selfs : keys of tags of plants that were found to be selfings
    more : keys of the packs, with the direction (0 or 1) that each opens
    """

    placed: Placed
    selfs: frozenset[str]
    more: dict[str, int] = field(default_factory=dict)


def sides_of(
    net: PedigreeNetwork, parents: tuple[str, str], crosses: tuple[tuple[str, ...], ...]
) -> tuple[Side, Side]:
    """The two directions with the parents of each cross, which may be plants of two varieties.

    crosses : codes with the first parent as the seed parent, then codes with the second
    """
    made = []
    for at, codes in enumerate(crosses):
        records = [net.book.crosses[code] for code in codes]
        seeds = tuple(record.seed_parent for record in records)
        pollens = tuple(_pollen(net, record.cross) for record in records)
        if not codes:
            seeds, pollens = (parents[at],), (parents[1 - at],)
        made.append(Side(tuple(codes), seeds, pollens))
    return made[0], made[1]


def _pollen(net: PedigreeNetwork, cross: str) -> str:
    from pedigreeview.network.parentage import certain_pollen

    record = net.book.crosses[cross]
    return certain_pollen(record, net.book.candidates().get(cross, [])) or record.pollen_parent


def mirrored(
    net: PedigreeNetwork,
    parents: tuple[str, str],
    crosses: tuple[tuple[str, ...], tuple[str, ...]],
    *,
    columns: int = 3,
    opened: frozenset[int] = frozenset(),
) -> Mirrored:
    """The picture of a pair.

    Parameters
    ----------
    parents : the first is the seed parent of the first direction
    crosses : of each direction; one of the two may be empty, it is drawn as not made yet
    columns : tags side by side below one knot
    opened : directions (0, 1) of which all progeny are drawn
    """
    return _Builder(net, sides_of(net, parents, crosses), max(1, columns), opened).build()


@dataclass(slots=True)
class _Column:
    """What hangs on one knot."""

    knot: Knot
    side: int
    tags: list[Block]
    columns: int
    left: float = 0.0
    middle: float = 0.0
    width: float = 0.0


class _Builder:
    def __init__(
        self,
        net: PedigreeNetwork,
        sides: tuple[Side, Side],
        columns: int,
        opened: frozenset[int],
    ) -> None:
        self.net, self.sides, self.opened = net, sides, opened
        self.measures: Sizes = sizes()
        self.more: dict[str, int] = {}
        self.selfs: set[str] = set()
        self.columns = [
            self._column(at, number, max(1, columns // max(1, len(side.seeds))))
            for at, side in enumerate(sides)
            for number in range(len(side.seeds))
        ]
        self.tops = (self._tops(0), self._tops(1))

    # What is shown ------------------------------------------------------------------------------

    def _tops(self, side: int) -> list[Block]:
        """The parents that stand on one side: the seed parents of its direction."""
        own, other = self.sides[side], self.sides[1 - side]
        codes = dict.fromkeys([*own.seeds, *other.pollens])
        shown = [code for code in codes if code in self.net.book.plants]
        taken = {block.code for block in getattr(self, "tops", ((),))[0]} if side else set()
        return [self._tag(code, f"parent:{code}", 0) for code in shown if code not in taken]

    def _column(self, side: int, number: int, columns: int) -> _Column:
        held = self.sides[side]
        seed, pollen = held.seeds[number], held.pollens[number]
        if not held.crosses:
            knot = Knot(
                f"missing:{side}",
                "",
                "cross",
                "not made",
                seed,
                ((pollen, 1.0),),
                "planned",
                f"{seed} × {pollen}, not made yet",
            )
            return _Column(knot, side, [], columns)
        code = held.crosses[number]
        sure = ((pollen, 1.0),)
        record = self.net.book.crosses[code]
        words = f"{code}, {cross_words(code, 'cross', seed, sure)}"
        knot = Knot(f"cross:{code}", code, "cross", code, seed, sure, record.state, words)
        most = max(4, MOST_ROWS * columns)
        return _Column(knot, side, self._progeny(code, seed, side, most), columns)

    def _progeny(self, cross: str, seed: str, side: int, most: int) -> list[Block]:
        """Tags of what was raised, selfs last; beyond so many the rest as one pack."""
        net = self.net
        codes = list(net.progeny_of_cross(cross))
        selfs = [code for code in codes if net.parents(code).selfed]
        own = [code for code in codes if code not in set(selfs)]
        shown = own
        if len(own) > most + 1 and side not in self.opened:
            # Plants that were kept or used tell more than the first of the row.
            rank = {code: (not self._matters(code), at) for at, code in enumerate(own)}
            first = set(sorted(own, key=rank.__getitem__)[:most])
            shown = [code for code in own if code in first]
        tags = [self._tag(code, f"plant:{code}", 2) for code in shown]
        rest = [code for code in own if code not in set(shown)]
        if rest:
            key = f"more:{cross}"
            self.more[key] = side
            tags.append(
                replace(
                    self._tag(rest[0], key, 2),
                    sort="pack",
                    codes=tuple(rest),
                    title=f"{len(rest)} more",
                    subtitle=f"{rest[0]} to {rest[-1]}",
                    pool=False,
                    status="",
                    more_down=0,
                    words=f"{len(rest)} more plants of {cross}, folded; opens with a click",
                )
            )
        for code in selfs:
            tag = self._tag(code, f"self:{code}", 2)
            self.selfs.add(tag.key)
            said = f"found a self of {seed}"
            tags.append(replace(tag, subtitle=said, words=f"{tag.words}; {said}"))
        return tags

    def _matters(self, code: str) -> bool:
        return self.net.book.plants[code].status == "kept" or bool(self.net.progeny(code))

    def _tag(self, code: str, key: str, row: int) -> Block:
        net, book = self.net, self.net.book
        plant = book.plants[code]
        withheld = net.withheld.get(code, "")
        shares, unknown = ((), 0.0) if withheld else share_list(net, code)
        return Block(
            key=key,
            sort="tag",
            row=row,
            codes=(code,),
            title=code,
            subtitle=plant.name if plant.name != code else "",
            kind=book.kind(plant),
            pool=book.is_pool(plant),
            status=plant.status,
            generation_name=net.generation_name(code) or "",
            inbreeding=None if withheld else float(net.inbreeding(code)),
            withheld=withheld,
            shares=shares,
            unknown_share=unknown,
            more_down=0 if row == 0 else len(net.progeny(code)),
            words=plant_words(net, code),
        )

    # Where it lies ------------------------------------------------------------------------------

    def build(self) -> Mirrored:
        every = [*self.tops[0], *self.tops[1], *(tag for c in self.columns for tag in c.tags)]
        self.wide = self.measures.tag_width(every)
        self._spread()
        tracks = self._links()
        top = _EDGE
        tags_below = top + self.measures.tag_height
        bent = [at for at, (_, start, end) in enumerate(tracks) if start != end]
        level = {at: tags_below + _TRACK * (order + 1) for order, at in enumerate(bent)}
        knots_y = tags_below + _TRACK * (len(bent) + 1) + 24.0
        frame = self._frame(knots_y)
        placed: list[PlacedBlock] = [*self._parents(top), frame]
        lines = [
            self._parent_line(link, (start, end), tags_below, level.get(at, knots_y), knots_y)
            for at, (link, start, end) in enumerate(tracks)
        ]
        bottom = frame.bottom
        for column in self.columns:
            tags, line = self._below(column, frame.bottom, knots_y)
            placed += tags
            lines += [line] if line is not None else []
            bottom = max([bottom, *(tag.bottom for tag in tags)])
        left = min(item.x for item in placed) - _EDGE - 8
        right = max(item.right for item in placed) + _EDGE + 8
        reach = max(-left, right)
        bounds = (-reach, 0.0, 2 * reach, bottom + _EDGE + 8)
        return Mirrored(
            Placed(self._view(placed), "down", tuple(placed), tuple(lines), (), (), bounds),
            frozenset(self.selfs),
            self.more,
        )

    def _spread(self) -> None:
        """Columns from the middle outwards, the two sides alike so that they mirror."""
        for side in (0, 1):
            x = _MIDDLE
            for column in (c for c in self.columns if c.side == side):
                across = min(column.columns, max(1, len(column.tags)))
                span = across * self.wide + (across - 1) * _GAP
                column.columns = across
                column.width = max(span, self.measures.knot_span(column.knot), self.wide)
                low = x if side else -x - column.width
                column.left, column.middle = low, low + column.width / 2
                x += column.width + 2 * _GAP
        least = min(abs(c.middle) for c in self.columns)
        most = max(min(abs(c.middle) for c in self.columns if c.side == side) for side in (0, 1))
        for column in self.columns if most > least else ():
            # The side with fewer plants moves out until both knots lie alike from the middle.
            own = min(abs(c.middle) for c in self.columns if c.side == column.side)
            if own < most:
                away = (most - own) * (1 if column.side else -1)
                column.left += away
        for column in self.columns:
            column.middle = column.left + column.width / 2

    def _top_places(self, side: int) -> dict[str, float]:
        """Middle of each parent of one side: above its own knot, side by side if several."""
        tops = self.tops[side]
        own = [c.middle for c in self.columns if c.side == side]
        centre = sum(own) / len(own)
        pitch = self.wide + _GAP
        first = centre - pitch * (len(tops) - 1) / 2
        return {block.code: first + pitch * at for at, block in enumerate(tops)}

    def _parents(self, top: float) -> list[PlacedBlock]:
        found = []
        for side in (0, 1):
            places = self._top_places(side)
            for block in self.tops[side]:
                x = places[block.code] - self.wide / 2
                found.append(PlacedBlock(block, x, top, self.wide, self.measures.tag_height))
        return found

    def _links(self) -> list[tuple[Link, float, float]]:
        """Every parent's link with the x where it leaves the tag and meets the knot."""
        places = self._top_places(0) | self._top_places(1)
        used: dict[tuple[str, bool], int] = {}
        found: list[tuple[Link, float, float]] = []

        def add(column: _Column, code: str, role: Role) -> None:
            if code not in places:
                return
            outward = 1 if column.side else -1
            seed = role == "seed"
            end = column.middle + (outward if seed else -outward) * _PORT
            # A parent's pollen leaves it on the inner side, beyond the line that comes in there.
            way = outward if seed else (1 if places[code] < 0 else -1)
            again = used.get((code, seed), 0)
            used[code, seed] = again + 1
            start = places[code] + way * (_PORT if seed else 2 * _PORT) + way * _PORT * again
            if seed and abs(start - end) < 1.0:
                start = end
            found.append((Link(f"parent:{code}", "pair", role, column.knot.key), start, end))

        for column in self.columns:
            add(column, column.knot.pollen[0][0], "pollen")
        for column in self.columns:
            add(column, column.knot.seed, "seed")
        return found

    def _parent_line(
        self,
        link: Link,
        ends: tuple[float, float],
        top: float,
        track: float,
        knots_y: float,
    ) -> Line:
        start, end = ends
        points: tuple[tuple[float, float], ...]
        if start == end:
            points = ((start, top), (end, knots_y))
        else:
            points = ((start, top), (start, track), (end, track), (end, knots_y))
        key = f"{link.above}>{link.knot}:{link.role}"
        return Line(key, link.role, 1.0, True, False, ((link, points),))

    def _frame(self, y: float) -> PlacedBlock:
        pad, high = self.measures.frame_pad, self.measures.knot_height
        spots = []
        for column in self.columns:
            wide = self.measures.knot_span(column.knot)
            spots.append(KnotSpot(column.knot.key, column.middle - wide / 2, y, wide, high))
        ahead = [c.knot for c in self.columns if c.side == 0]
        back = [c.knot for c in self.columns if c.side == 1]
        words = " and ".join(knot.words for knot in (*ahead, *back))
        block = Block(
            "pair",
            "pair",
            1,
            knots=(*ahead, *back),
            turn=len(ahead),
            words=f"reciprocal pair: {words}",
        )
        left = min(spot.x for spot in spots) - 2 * pad
        right = max(spot.x + spot.width for spot in spots) + 2 * pad
        reach = max(-left, right)
        return PlacedBlock(block, -reach, y - pad, 2 * reach, high + 2 * pad, tuple(spots))

    def _below(
        self, column: _Column, top: float, knots_y: float
    ) -> tuple[list[PlacedBlock], Line | None]:
        """The tags below a knot in rows, and their line: a trunk at the outer side, a bus a row."""
        pitch, high = self.wide + _GAP, self.measures.tag_height
        first = top + 36.0
        step = high + _ROW_GAP + 12.0
        trunk = column.left + column.width + _TRUNK if column.side else column.left - _TRUNK
        placed, routes = [], []
        start = (column.middle, knots_y + self.measures.knot_height)
        own = [tag for tag in column.tags if tag.key not in self.selfs]
        selfs = [tag for tag in column.tags if tag.key in self.selfs]
        rows = [own[at : at + column.columns] for at in range(0, len(own), column.columns)]
        rows += [selfs[at : at + column.columns] for at in range(0, len(selfs), column.columns)]
        for row, tags in enumerate(rows):
            span = len(tags) * self.wide + (len(tags) - 1) * _GAP
            lead = column.middle - span / 2
            y = first + step * row
            bus = y - _BUS
            for at, tag in enumerate(tags):
                x = lead + pitch * at
                placed.append(PlacedBlock(tag, x, y, self.wide, high))
                if tag.key in self.selfs:
                    continue
                middle = x + self.wide / 2
                link = Link("pair", tag.key, "progeny", column.knot.key)
                if row == 0:
                    points = _bent(start, bus, (middle, y))
                else:
                    points = (
                        start,
                        (start[0], first - _BUS),
                        (trunk, first - _BUS),
                        (trunk, bus),
                        (middle, bus),
                        (middle, y),
                    )
                routes.append((link, points))
        if not routes:
            return placed, None
        key = f"{column.knot.key}:progeny"
        return placed, Line(key, "progeny", 1.0, True, False, tuple(routes))

    def _view(self, placed: Sequence[PlacedBlock]) -> View:
        shares: dict[str, float] = {}
        for item in placed:
            for founder, share in item.block.shares:
                shares[founder] = shares.get(founder, 0.0) + share
        return View(
            None,
            (),
            tuple(item.block for item in placed),
            (),
            (Row(0, ""), Row(1, ""), Row(2, "")),
            shown_numbers(self.net, shares),
            base=self.net.base_sentence(),
        )


def _bent(
    start: tuple[float, float], bus: float, end: tuple[float, float]
) -> tuple[tuple[float, float], ...]:
    """From a knot to a tag in the row right below it."""
    if abs(start[0] - end[0]) < 0.5:
        return (start, (start[0], end[1]))
    return (start, (start[0], bus), (end[0], bus), end)
