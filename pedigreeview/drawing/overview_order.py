"""Order and places within the bands of the overview: barycentre sweeps over whole families.

NumPy alone, one pass over arrays for each band; the same book always gives the same order.  A
family is the plants of one cross in one band; its plants stand side by side.  Knows no Qt.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from pedigreeview.network.links import Links

__all__ = ["Bands", "Order", "arrange", "bands_of", "envelope"]

FloatArray = NDArray[np.float64]
IntArray = NDArray[np.int64]

SWEEPS = 4
FAMILY_GAP = 0.6
"""Room between two families, in widths of a plant."""
WIDEST = 8.0
"""A plant in a band of few is at most so many times as wide as one in the fullest band."""
MANY_BANDS = 600
"""Bands beyond which the first order stands: they hold a few plants each."""


@dataclass(frozen=True, slots=True, eq=False)
class Bands:
    """Which plants and families stand in which band.

    generations : (b,) generation of each band, oldest first; −1, the last, for plants in loops
    band : (n,) band of each plant
    family : (n,) number of each plant's family, 0 to f − 1, numbered band by band
    family_band : (f,) band of each family
    """

    generations: IntArray
    band: IntArray
    family: IntArray
    family_band: IntArray


@dataclass(frozen=True, slots=True, eq=False)
class Order:
    """Where everything stands.

    order : (n,) plants band by band, from left to right
    left : (n,) left edge of each plant
    pitch : (b,) width of a plant in each band
    width : of the whole picture; every plant lies between 0 and this
    """

    order: IntArray
    left: FloatArray
    pitch: FloatArray
    width: float


def bands_of(links: Links) -> Bands:
    """One band for each generation that occurs."""
    generation = links.generation
    looped = generation < 0
    last = int(generation.max(initial=0)) + 1
    generations, band = np.unique(np.where(looped, last, generation), return_inverse=True)
    if looped.any():
        generations = np.where(generations == last, -1, generations)
    key = band.astype(np.int64) * (int(links.family.max(initial=0)) + 1) + links.family
    _, first, family = np.unique(key, return_index=True, return_inverse=True)
    return Bands(
        generations.astype(np.int64),
        band.astype(np.int64),
        family.astype(np.int64),
        band[first].astype(np.int64),
    )


def envelope(wanted: FloatArray, size: FloatArray, width: float) -> FloatArray:
    """Places near those wanted, in the given order, that never overlap and stay within a width.

    The mean of the two tightest feasible answers, one that only moves things to the right and one
    that only moves them to the left; both keep the order, so their mean does.

    wanted : (k,) left edges
    size : (k,) room that each takes, to the left edge of the next
    """
    run = np.concatenate(([0.0], np.cumsum(size)[:-1]))
    room = max(0.0, width - float(size.sum()))
    free = np.clip(wanted - run, 0.0, room)
    right = np.maximum.accumulate(free)
    left = np.minimum.accumulate(free[::-1])[::-1]
    return (right + left) / 2 + run


def arrange(links: Links, bands: Bands) -> Order:
    """Order every band and give every plant its place."""
    return _Arranging(links, bands).done()


class _Arranging:
    def __init__(self, links: Links, bands: Bands) -> None:
        self.bands = bands
        count, families = len(links), len(bands.family_band)
        self.count = count
        size = np.bincount(bands.family, minlength=families)
        self.size = size
        self.family_start = np.searchsorted(bands.family_band, np.arange(len(bands.generations)))
        self.family_end = np.append(self.family_start[1:], families)[: len(self.family_start)]
        need = np.bincount(bands.family_band, size + FAMILY_GAP) - FAMILY_GAP
        self.width = float(need.max(initial=1.0))
        wide = np.clip(np.sqrt(self.width / np.maximum(need, 1.0)), 1.0, WIDEST)
        self.pitch = np.minimum(wide, self.width / np.maximum(need, 1e-9))
        self._edges(links)
        self.rank = np.arange(count, dtype=float)
        """Sorts the plants within their families."""
        self.middle = np.empty(families)
        self.sequence = np.arange(families)
        """Families in the order of their bands, each band from left to right."""
        self.inside = np.empty(count, np.int64)
        """Place of each plant within its family."""

    def _edges(self, links: Links) -> None:
        """Each parent and each family that came from it once, by band of either."""
        bands = self.bands
        families = len(bands.family_band)
        pair = np.unique(links.parent * families + bands.family[links.child])
        parent, family = np.divmod(pair, families)
        above = bands.band[parent] < bands.family_band[family]
        parent, family = parent[above], family[above]
        steps = range(len(bands.generations) + 1)
        by_family = np.argsort(family, kind="stable")
        self.down = (parent[by_family], family[by_family])
        self.down_cut = np.searchsorted(bands.family_band[family[by_family]], steps)
        by_parent = np.argsort(bands.family[parent], kind="stable")
        self.up = (parent[by_parent], family[by_parent])
        self.up_cut = np.searchsorted(bands.band[parent[by_parent]], steps)

    def done(self) -> Order:
        bands = self.bands
        self._first()
        sweeps = SWEEPS if len(bands.generations) <= MANY_BANDS else 0
        for sweep in range(sweeps):
            for band in range(1, len(bands.generations)):
                self._sort(band, self._from_parents(band))
            if sweep < sweeps - 1:
                for band in range(len(bands.generations) - 2, -1, -1):
                    self._from_progeny(band)
        return self._placed()

    # Order --------------------------------------------------------------------------------------

    def _first(self) -> None:
        """The first order: families by code, founders by the first family that came from them."""
        bands = self.bands
        first_use = np.full(self.count, len(bands.family_band))
        np.minimum.at(first_use, self.down[0], self.down[1])
        founders = slice(self.family_start[0], self.family_end[0]) if len(self.size) else slice(0)
        self._settle_members()
        # Plants with progeny will stand in the middle of their family, the others about them.
        second = self.inside >= self.size[bands.family] // 2
        self.rank[second] += 3.0 * self.count
        for band, (start, end) in enumerate(zip(self.family_start, self.family_end, strict=True)):
            wish = np.arange(end - start, dtype=float)
            if band == 0:
                own = np.full(len(bands.family_band), len(bands.family_band))
                np.minimum.at(own, bands.family, first_use)
                wish = own[founders].astype(float)
            self._sort(band, wish)

    def _sort(self, band: int, wish: FloatArray) -> None:
        """Order the families of a band by what they wish; families without a wish stay."""
        start, end = self.family_start[band], self.family_end[band]
        turned = np.argsort(wish, kind="stable")
        self.sequence[start:end] = start + turned
        size = self.size[start:end][turned] + FAMILY_GAP
        total = float(size.sum())
        places = np.empty(end - start)
        places[turned] = (np.cumsum(size) - size / 2) / total if total else 0.0
        self.middle[start:end] = places

    def _settle_members(self) -> None:
        """Number the plants of each family by their rank."""
        family = self.bands.family
        order = np.lexsort((self.rank, family))
        start = np.concatenate(([0], np.cumsum(self.size)[:-1]))
        self.inside[order] = np.arange(self.count) - start[family[order]]

    def _plant_places(self, plants: IntArray) -> FloatArray:
        """Places of plants, each band from 0 to 1."""
        family = self.bands.family[plants]
        band = self.bands.band[plants]
        whole = np.maximum(self.width / self.pitch[band], 1.0)
        shift = self.inside[plants] + 0.5 - self.size[family] / 2
        found: FloatArray = self.middle[family] + shift / whole
        return found

    def _from_parents(self, band: int) -> FloatArray:
        start, end = self.family_start[band], self.family_end[band]
        cut = slice(self.down_cut[band], self.down_cut[band + 1])
        parent, family = self.down[0][cut], self.down[1][cut] - start
        many = np.bincount(family, minlength=end - start)
        total = np.bincount(family, self._plant_places(parent), minlength=end - start)
        return np.where(many > 0, total / np.maximum(many, 1), self.middle[start:end])

    def _from_progeny(self, band: int) -> None:
        """Order a band by its progeny, and the plants of each family likewise."""
        start, end = self.family_start[band], self.family_end[band]
        cut = slice(self.up_cut[band], self.up_cut[band + 1])
        parent, child = self.up[0][cut], self.up[1][cut]
        if not len(parent):
            return
        family = self.bands.family[parent] - start
        place = self.middle[child]
        many = np.bincount(family, minlength=end - start)
        total = np.bincount(family, place, minlength=end - start)
        self._sort(band, np.where(many > 0, total / np.maximum(many, 1), self.middle[start:end]))
        plants, own = np.unique(parent, return_inverse=True)
        mean = np.bincount(own, place) / np.bincount(own)
        self.rank[plants] = self.count * (1.0 + mean)
        members = np.unique(self.bands.family[plants])
        at = np.isin(self.bands.family, members)
        held = np.flatnonzero(at)
        order = held[np.lexsort((self.rank[held], self.bands.family[held]))]
        size = self.size[members]
        begin = np.concatenate(([0], np.cumsum(size)[:-1]))
        self.inside[order] = np.arange(len(order)) - np.repeat(begin, size)

    # Places -------------------------------------------------------------------------------------

    def _placed(self) -> Order:
        bands, width = self.bands, self.width
        left = np.zeros(len(bands.family_band))
        room = np.empty(len(bands.family_band))
        for band, (start, end) in enumerate(zip(self.family_start, self.family_end, strict=True)):
            row = self.sequence[start:end]
            room[row] = (self.size[row] + FAMILY_GAP) * self.pitch[band]
            total = float(room[row].sum()) - FAMILY_GAP * self.pitch[band]
            even = np.cumsum(room[row]) - room[row]
            left[row] = even + (width - total) / 2
        self._pull(left, room, down=True)
        self._pull(left, room, down=False)
        self._pull(left, room, down=True)
        place = left[bands.family] + self.inside * self.pitch[bands.band]
        order = np.lexsort((place, bands.band))
        return Order(order, place, self.pitch, width)

    def _pull(self, left: FloatArray, room: FloatArray, *, down: bool) -> None:
        """Draw the families of every band towards their parents, or towards their progeny."""
        bands = self.bands
        last = len(bands.generations) - 1
        for band in range(1, last + 1) if down else range(last - 1, -1, -1):
            start, end = self.family_start[band], self.family_end[band]
            pitch = self.pitch[band]
            span = self.size[start:end] * pitch
            cut = (self.down_cut if down else self.up_cut)[band : band + 2]
            parent, child = (side[slice(*cut)] for side in (self.down if down else self.up))
            if not len(parent):
                continue
            plant = (
                left[bands.family[parent]]
                + (self.inside[parent] + 0.5) * self.pitch[bands.band[parent]]
            )
            below = left[child] + self.size[child] * self.pitch[bands.family_band[child]] / 2
            if down:
                key, wish = child - start, plant
            else:
                key = bands.family[parent] - start
                wish = below - (self.inside[parent] + 0.5) * pitch + span[key] / 2
            many = np.bincount(key, minlength=end - start)
            total = np.bincount(key, wish, minlength=end - start)
            middle = left[start:end] + span / 2
            wanted = np.where(many > 0, total / np.maximum(many, 1), middle) - span / 2
            row = self.sequence[start:end]
            size = room[row].copy()
            size[-1] -= FAMILY_GAP * pitch
            left[row] = envelope(wanted[row - start], size, self.width)
