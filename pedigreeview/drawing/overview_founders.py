"""Which founders the map has colours for, and the shares of every plant in those.

The colours go to the founders that matter most for what is looked at: those with the largest shares
in the marked plant, then those with the largest shares in the whole book.  All others share one
neutral tone.  Knows no Qt.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from typing import TYPE_CHECKING

import numpy as np
from numpy.typing import NDArray

from pedigreeview.drawing.founders import OTHERS, PALETTE_SIZE, palette_numbers

if TYPE_CHECKING:
    from pedigreeview.network import PedigreeNetwork
    from pedigreeview.network.links import Links

__all__ = ["MapFounders", "founders_named", "map_founders", "total_shares"]


@dataclass(frozen=True, slots=True, eq=False)
class MapFounders:
    """The founders of a map of n plants.

    founder : (n,) number in the palette of the founder that a plant has most of, −1 others, −2
        unknown
    shares : (n, 13) shares of the twelve founders of the palette and of all others
    named : codes of the founders with a number of their own, by number
    """

    founder: NDArray[np.int8]
    shares: NDArray[np.float32]
    named: tuple[str, ...]


def total_shares(links: Links) -> NDArray[np.float64]:
    """Share of each founder in all plants of a book, summed; in the order of `links.founders`.

    One sweep from the youngest plants up: a plant hands what it carries on to those it comes from.
    """
    weights, count = links.weights, links.sorted
    total = np.ones(count)
    row = np.repeat(np.arange(count), np.diff(weights.starts))
    level = weights.levels[row]
    order = np.argsort(level, kind="stable")
    cuts = np.searchsorted(level[order], np.arange(1, int(level.max(initial=0)) + 2))
    for first, last in zip(cuts[-2::-1], cuts[:0:-1], strict=True):
        part = order[first:last]
        np.add.at(total, weights.older[part], weights.weight[part] * total[row[part]])
    return total[links.founders]


def founders_named(
    net: PedigreeNetwork, links: Links, *, focus: str = "", like: Iterable[tuple[str, int]] = ()
) -> tuple[str, ...]:
    """Founders with a colour of their own, by their numbers in the palette.

    Parameters
    ----------
    focus : the plant that is marked, or ''
    like : numbers in the picture that the map is looked at beside
    """
    codes = [net.codes[row] for row in links.founders.tolist()]
    shares = dict(zip(codes, total_shares(links).tolist(), strict=True))
    own: dict[str, float] = {}
    row = net.codes.index(focus) if focus in net else links.sorted
    if row < links.sorted:
        carried = links.weights.shares(np.array([row]))[links.founders, 0]
        own = {code: share for code, share in zip(codes, carried.tolist(), strict=True) if share}
    table = palette_numbers(net, shares, focus=focus, own=own, like=like)
    return tuple(code for code, number in table if number != OTHERS)


def map_founders(links: Links, codes: tuple[str, ...], named: tuple[str, ...]) -> MapFounders:
    """The shares of every plant in the founders that have a colour, and in all others.

    codes : of all plants, in the order of the links' rows
    """
    wanted = {code: number for number, code in enumerate(named)}
    known = np.zeros((len(links), PALETTE_SIZE + 1))
    for row in links.founders.tolist():
        known[row, wanted.get(codes[row], PALETTE_SIZE)] = 1.0
    known[: links.sorted] = links.weights.gather(known[: links.sorted].copy())
    top = np.argmax(known, axis=1)
    founder = np.where(top == PALETTE_SIZE, OTHERS, top)
    founder[known.sum(axis=1) < 0.5] = -2
    return MapFounders(founder.astype(np.int8), known.astype(np.float32), named)
