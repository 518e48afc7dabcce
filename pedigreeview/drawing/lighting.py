"""Which blocks and lines lie on given lines of descent, or on the way that is looked along.

Knows no Qt.
"""

from __future__ import annotations

import itertools
from collections import defaultdict
from collections.abc import Iterable, Sequence
from dataclasses import dataclass

from pedigreeview.drawing.placing import Placed

__all__ = ["NO_LIT", "Lit", "light", "lit_way", "way_up"]

LinkKey = tuple[str, str, str, str]


@dataclass(frozen=True, slots=True)
class Lit:
    """Keys of blocks, and links as (above, below, role, knot)."""

    blocks: frozenset[str]
    links: frozenset[LinkKey]


NO_LIT = Lit(frozenset(), frozenset())
"""Nothing is brought out."""


def light(placed: Placed, paths: Iterable[Sequence[str]]) -> Lit:
    """The lit part of a picture.

    paths : codes of plants, each a parent or progeny of the one before it
    """
    up, from_knot = _links(placed)
    blocks: set[str] = set()
    links: set[LinkKey] = set()
    for path in paths:
        keys = [placed.view.block_of(code) for code in path]
        blocks.update(key for key in keys if key)
        for one, other in itertools.pairwise(keys):
            for parent, child in ((one, other), (other, one)):
                for down in from_knot.get(child, ()):
                    ways = [way for way in up[down[3]] if way[0] == parent]
                    if ways:
                        links.update((down, *ways))
                        blocks.add(down[0])
    return Lit(frozenset(blocks), frozenset(links))


def lit_way(placed: Placed) -> Lit:
    """What a picture brings out by its way of looking; nothing for the ways that light no line.

    Of a connection all lines between the plants on it; of a cytoplasm those that it goes down by,
    from the seed parent or the only parent.  Worked out once for each picture.
    """
    held: Lit | None = placed.held.get("lit")
    if held is None:
        held = placed.held["lit"] = _lit_way(placed)
    return held


def _lit_way(placed: Placed) -> Lit:
    view = placed.view
    if view.way is None or view.way.mode not in ("connection", "cytoplasm"):
        return NO_LIT
    own = {
        item.block.key
        for item in placed.blocks
        if item.block.codes and not view.aside.issuperset(item.block.codes)
    }
    roles = ("seed", "source") if view.way.mode == "cytoplasm" else ("seed", "pollen", "source")
    blocks, links = set(own), set[LinkKey]()
    up, from_knot = _links(placed)
    for key in own:
        for down in from_knot.get(key, ()):
            ways = [way for way in up[down[3]] if way[0] in own and way[2] in roles]
            if ways:
                links.update((down, *ways))
                blocks.add(down[0])
    return Lit(frozenset(blocks), frozenset(links))


def way_up(placed: Placed) -> set[str]:
    """Keys of the blocks by which the way that is looked along goes up from its plants.

    From the focus, of a connection from the other plant too, up to where it comes from; none where
    no way is lit.
    """
    lit, view = lit_way(placed), placed.view
    above: dict[str, list[str]] = defaultdict(list)
    for link in lit.links:
        above[link[1]].append(link[0])
    ends = (view.focus or "", view.way.other if view.way is not None else "")
    ahead = [view.block_of(code) for code in ends if code] if lit.links else []
    found: set[str] = set()
    while ahead:
        key = ahead.pop()
        if key and key not in found:
            found.add(key)
            ahead += above[key]
    return found


def _links(placed: Placed) -> tuple[dict[str, list[LinkKey]], dict[str, list[LinkKey]]]:
    """Links to a knot by the knot; links from a knot by the block below it."""
    up: dict[str, list[LinkKey]] = defaultdict(list)
    from_knot: dict[str, list[LinkKey]] = defaultdict(list)
    for line in placed.lines:
        for link, _ in line.routes:
            key = (link.above, link.below, link.role, link.knot)
            if link.role == "progeny":
                from_knot[link.below].append(key)
            else:
                up[link.knot].append(key)
    return up, from_knot
