"""What of a picture is put back with plants that do not fit: their blocks, knots and lines.

A line is as strong as the weaker of its ends; a knot goes back when none of its parents or none of
its progeny fits.  Knows no Qt.
"""

from __future__ import annotations

from collections import defaultdict
from dataclasses import dataclass

from pedigreeview.drawing.placing import Placed
from pedigreeview.drawing.strokes import LinkKey

__all__ = ["Faded", "faded"]


@dataclass(frozen=True, slots=True)
class Faded:
    """Keys of blocks and of knots, and links as (above, below, role, knot)."""

    blocks: frozenset[str] = frozenset()
    knots: frozenset[str] = frozenset()
    links: frozenset[LinkKey] = frozenset()


_NOTHING = Faded()


def faded(placed: Placed, codes: frozenset[str], focus: str = "") -> Faded:
    """What is put back with plants; worked out once for each picture and set of plants.

    A tag goes back when all of its plants do; that of the focus never does.

    focus : key of the block that holds the focus
    """
    if not codes:
        return _NOTHING
    held: tuple[frozenset[str], str, Faded] | None = placed.held.get("faded")
    if held is None or held[0] != codes or held[1] != focus:
        held = placed.held["faded"] = codes, focus, _faded(placed, codes, focus)
    return held[2]


def _faded(placed: Placed, codes: frozenset[str], focus: str) -> Faded:
    blocks = frozenset(
        item.block.key
        for item in placed.blocks
        if item.block.codes and item.block.key != focus and codes.issuperset(item.block.codes)
    )
    parents: dict[str, list[str]] = defaultdict(list)
    progeny: dict[str, list[str]] = defaultdict(list)
    links = [link for line in placed.lines for link, _ in line.routes]
    for link in links:
        if link.role == "progeny":
            progeny[link.knot].append(link.below)
        else:
            parents[link.knot].append(link.above)
    knots = frozenset(
        knot
        for knot in {*parents, *progeny}
        for ends in (parents[knot], progeny[knot])
        if ends and blocks.issuperset(ends)
    )
    return Faded(
        blocks,
        knots,
        frozenset(
            (link.above, link.below, link.role, link.knot)
            for link in links
            if link.knot in knots or {link.above, link.below} & blocks
        ),
    )
