"""A cross that is only tried out: a dashed knot and tag between two plants, not in the book.

Knows no Qt.
"""

from __future__ import annotations

from collections import defaultdict
from dataclasses import dataclass, replace
from typing import TYPE_CHECKING

from pedigreeview.drawing.blocks import IN_LOOPS, Block, Knot, Link, Row, Sign, View
from pedigreeview.drawing.founders import palette_numbers
from pedigreeview.drawing.wording import cross_words, share_list

if TYPE_CHECKING:
    from pedigreeview.network import PedigreeNetwork

__all__ = ["GHOST_KNOT", "GHOST_TAG", "Ghost", "with_ghost"]

GHOST_KNOT, GHOST_TAG = "ghost:knot", "ghost:tag"


@dataclass(frozen=True, slots=True)
class Ghost:
    """Two plants of the book that might be crossed; equal for a selfing.

    inbreeding : F that their progeny would have, None where it is withheld
    words : its numbers in short, printed below the title
    """

    seed: str
    pollen: str
    inbreeding: float | None = None
    words: str = ""

    @property
    def title(self) -> str:
        """The cross in the trade's signs, seed parent first."""
        return f"{self.seed} ⊗" if self.seed == self.pollen else f"{self.seed} × {self.pollen}"


def with_ghost(view: View, net: PedigreeNetwork, ghost: Ghost) -> View:
    """The view with the ghost below its two parents, both of which it shows."""
    row_of = {block.key: block.row for block in view.blocks}
    seed, pollen = view.block_of(ghost.seed), view.block_of(ghost.pollen)
    above = max(row_of[seed], row_of[pollen])
    own = [net.generation(code) for code in (ghost.seed, ghost.pollen)]
    view, row = _with_row(
        view, above, None if None in own else max(filter(None, own), default=0) + 1
    )
    sign: Sign = "selfing" if ghost.seed == ghost.pollen else "cross"
    sides = ((ghost.pollen, 1.0),)
    said = cross_words("", sign, ghost.seed, sides)
    knot = Knot(GHOST_KNOT, "", sign, "", ghost.seed, sides, "planned", f"{said}, tried out")
    shares: dict[str, float] = defaultdict(float)
    unknown = 0.0
    withheld = ""
    for side in (ghost.seed, ghost.pollen):
        withheld = withheld or net.withheld.get(side, "")
        if not withheld:
            # Half of each parent's, which is what a gamete carries on average.
            held, rest = share_list(net, side)
            unknown += rest / 2
            for founder, share in held:
                shares[founder] += share / 2
    tag = Block(
        key=GHOST_TAG,
        sort="tag",
        row=row,
        title=ghost.title,
        subtitle=ghost.words,
        inbreeding=ghost.inbreeding,
        withheld=withheld,
        shares=() if withheld else tuple(shares.items()),
        unknown_share=0.0 if withheld else unknown,
        words=f"{said}, tried out, not in the book" + (f": {ghost.words}" if ghost.words else ""),
        ghost=True,
    )
    pill = Block(GHOST_KNOT, "knot", above, knots=(knot,), words=knot.words, ghost=True)
    links = [
        Link(seed, GHOST_KNOT, "seed", GHOST_KNOT),
        Link(pollen, GHOST_KNOT, "pollen", GHOST_KNOT),
        Link(GHOST_KNOT, GHOST_TAG, "progeny", GHOST_KNOT),
    ]
    total: dict[str, float] = defaultdict(float)
    for block in (*view.blocks, tag):
        for founder, share in block.shares:
            total[founder] += share
    return replace(
        view,
        blocks=(*view.blocks, tag, pill),
        links=(*view.links, *links),
        founders=palette_numbers(net, total, held=view.founders),
        _held={},
    )


def _with_row(view: View, above: int, generation: int | None) -> tuple[View, int]:
    """The view with a row for a generation below another row, and its number.

    generation : None where it is not known
    """
    wanted = Row(-1, IN_LOOPS) if generation is None else Row(generation, "")
    for at in range(above + 1, len(view.rows)):
        if view.rows[at].generation == wanted.generation:
            return view, at
    at = above + 1
    while generation is not None and at < len(view.rows):
        if not 0 <= view.rows[at].generation < generation:
            break
        at += 1
    blocks = tuple(
        replace(block, row=block.row + 1) if block.row >= at else block for block in view.blocks
    )
    rows = (*view.rows[:at], wanted, *view.rows[at:])
    return replace(view, blocks=blocks, rows=rows, _held={}), at
