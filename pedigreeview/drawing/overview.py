"""The overview of a whole book, the map: bands of plants by generation, as arrays.

Made from the network in one go and pure: the same book always gives the same map.  Across, places
are in widths of a plant of the fullest band; down, one unit is one band.  Knows no Qt.
"""

from __future__ import annotations

from dataclasses import dataclass, field, replace
from itertools import repeat
from typing import TYPE_CHECKING, Self

import numpy as np
from numpy.typing import NDArray

from pedigreeview.drawing.overview_founders import founders_named, map_founders
from pedigreeview.drawing.overview_order import arrange, bands_of
from pedigreeview.network.links import POLLEN, SEED, SOURCE, Links, links_of

if TYPE_CHECKING:
    from collections.abc import Iterable, Sequence

    from pedigreeview.network import PedigreeNetwork

__all__ = ["Overview", "overview_of"]

FloatArray = NDArray[np.float64]
IntArray = NDArray[np.int64]


@dataclass(frozen=True, eq=False)
class Overview:
    """A book of n plants as b bands.

    Attributes
    ----------
    codes : the network's codes; rows of all arrays stand in their order
    generations : (b,) generation of each band, oldest first; −1 (last) for plants in loops
    counts : (b,) plants in each band
    pitch : (b,) width of a plant
    width : every plant lies between 0 and this
    band, left : (n,) where each plant stands
    order : (n,) rows band by band, from left to right
    starts : (b + 1,) where each band begins in `order`
    edges : (n,) left edges in that order
    family : (n,) family of each plant; family_band, family_middle, family_size : (f,)
    above, below, pollen : (m,) parent's row, family, and whether it gave the pollen alone: one
        line for each parent of each family whose band lies below it
    founder : (n,) number in the palette of the founder that a plant has most of, −1 others, −2
        unknown
    shares : (n, 13) shares of the twelve founders of the palette and of all others
    named : codes of the founders with a number of their own, by number
    """

    codes: tuple[str, ...]
    generations: IntArray
    counts: IntArray
    pitch: FloatArray
    width: float
    band: IntArray
    left: FloatArray
    order: IntArray
    starts: IntArray
    edges: FloatArray
    family: IntArray
    family_band: IntArray
    family_middle: FloatArray
    family_size: IntArray
    above: IntArray
    below: IntArray
    pollen: NDArray[np.bool_]
    founder: NDArray[np.int8]
    shares: NDArray[np.float32]
    named: tuple[str, ...]
    links: Links = field(repr=False)

    def __len__(self) -> int:
        return len(self.codes)

    def _row_of(self) -> dict[str, int]:
        rows: dict[str, int] | None = self.__dict__.get("_rows")
        if rows is None:
            rows = self.__dict__["_rows"] = {held: at for at, held in enumerate(self.codes)}
        return rows

    def summed(self) -> NDArray[np.float64]:
        """(founders, n + 1): shares of the plants before each place, summed in the order drawn."""
        held: NDArray[np.float64] | None = self.__dict__.get("_summed")
        if held is None:
            shares = self.shares[self.order].T
            held = np.zeros((shares.shape[0], shares.shape[1] + 1))
            np.cumsum(shares, axis=1, out=held[:, 1:], dtype=float)
            self.__dict__["_summed"] = held
        return held

    def made_ready(self) -> Self:
        """The map with all that its first painting would wait for; for a thread."""
        self._row_of()
        self.summed()
        return self

    def row(self, code: str) -> int:
        """Row of a plant, or −1."""
        found: int = self._row_of().get(code, -1)
        return found

    def at(self, x: float, band: int) -> int:
        """Row of the plant that lies at a place across in a band, or −1."""
        if not 0 <= band < len(self.counts):
            return -1
        first, last = int(self.starts[band]), int(self.starts[band + 1])
        place = first + int(np.searchsorted(self.edges[first:last], x, "right")) - 1
        if place < first or x >= self.edges[place] + self.pitch[band]:
            return -1
        return int(self.order[place])

    def neighbour(self, row: int, step: int) -> int:
        """The next plant in the band, −1 beyond its end."""
        place = int(np.searchsorted(self.edges_of(int(self.band[row])), self.left[row]))
        first, last = self.starts[self.band[row]], self.starts[self.band[row] + 1]
        wanted = first + place + step
        return int(self.order[wanted]) if first <= wanted < last else -1

    def edges_of(self, band: int) -> FloatArray:
        """Left edges of the plants of a band."""
        return self.edges[self.starts[band] : self.starts[band + 1]]

    def step(self, row: int, word: str) -> int:
        """Row of the plant one step away, −1 where there is none.

        row : where the step begins; −1: nowhere, and the step goes to the first plant
        word : left, right, seed, pollen or progeny
        """
        if row < 0:
            return int(self.order[0]) if len(self) else -1
        if word in ("left", "right"):
            return self.neighbour(row, 1 if word == "right" else -1)
        links = self.links
        if word == "progeny":
            found = links.child[links.parent == row]
        else:
            wanted = (SEED, SOURCE) if word == "seed" else (POLLEN,)
            found = links.parent[(links.child == row) & np.isin(links.role, wanted)]
        return int(found[0]) if len(found) else -1

    def founders(self) -> tuple[str, ...]:
        """Codes of all founders: those with a colour of their own, then the others."""
        rows = self.links.founders.tolist()
        others = (self.codes[row] for row in rows)
        return tuple(dict.fromkeys((*self.named, *others)))

    def recoloured(
        self, net: PedigreeNetwork, *, focus: str = "", like: Iterable[tuple[str, int]] = ()
    ) -> Overview:
        """The same map with the colours for another marked plant; itself where they stay."""
        named = founders_named(net, self.links, focus=focus, like=like)
        if named == self.named:
            return self
        found = map_founders(self.links, self.codes, named)
        made = replace(self, founder=found.founder, shares=found.shares, named=found.named)
        made.__dict__["_rows"] = self._row_of()
        return made

    def fullest(self) -> int:
        """The band with the most plants."""
        return int(np.argmax(self.counts))

    def rows_of(self, codes: Sequence[str] | set[str] | frozenset[str]) -> NDArray[np.bool_]:
        """(n,) whether each plant is among the codes; codes that are not in the book are none."""
        found = np.zeros(len(self), bool)
        held = self._row_of()
        rows = np.fromiter(map(held.get, codes, repeat(-1)), np.int64, len(codes))
        found[rows[rows >= 0]] = True
        return found


def overview_of(
    net: PedigreeNetwork, *, focus: str = "", like: Iterable[tuple[str, int]] = ()
) -> Overview:
    """The map of a whole book.

    focus, like : which founders have a colour, see `overview_founders.founders_named`
    """
    links = links_of(net)
    bands = bands_of(links)
    placed = arrange(links, bands)
    counts = np.bincount(bands.band, minlength=len(bands.generations))
    starts = np.concatenate(([0], np.cumsum(counts)))
    families = len(bands.family_band)
    size = np.bincount(bands.family, minlength=families)
    middle = placed.left + placed.pitch[bands.band] / 2
    family_middle = np.bincount(bands.family, middle, minlength=families) / np.maximum(size, 1)
    above, below, pollen = _lines(links, bands.family, bands.band, bands.family_band)
    coloured = map_founders(links, net.codes, founders_named(net, links, focus=focus, like=like))
    return Overview(
        codes=net.codes,
        generations=bands.generations,
        counts=counts,
        pitch=placed.pitch,
        width=placed.width,
        band=bands.band,
        left=placed.left,
        order=placed.order,
        starts=starts,
        edges=placed.left[placed.order],
        family=bands.family,
        family_band=bands.family_band,
        family_middle=family_middle,
        family_size=size,
        above=above,
        below=below,
        pollen=pollen,
        founder=coloured.founder,
        shares=coloured.shares,
        named=coloured.named,
        links=links,
    )


def _lines(
    links: Links, family: IntArray, band: IntArray, family_band: IntArray
) -> tuple[IntArray, IntArray, NDArray[np.bool_]]:
    """One line for each seed or pollen parent of a family; a selfing has one."""
    families = max(len(family_band), 1)
    sexual = links.role != SOURCE
    parent, below = links.parent[sexual], family[links.child[sexual]]
    pair, which = np.unique(parent * families + below, return_inverse=True)
    pollen = np.ones(len(pair), bool)
    np.logical_and.at(pollen, which, links.role[sexual] > 0)
    above, under = np.divmod(pair, families)
    down = band[above] < family_band[under]
    return above[down], under[down], pollen[down]
