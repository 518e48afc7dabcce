"""The parents of a large book that is kept as columns: order and arrays without a record in hand.

Says the same as `parentage`, `order` and `rows` say of the records of such a book.
"""

from __future__ import annotations

from functools import cached_property
from typing import Any

import numpy as np
from numpy.typing import NDArray

from pedigreeview.book.book import Book
from pedigreeview.book.columns import KIND_NUMBERS, PlantColumns
from pedigreeview.book.memory import uncollected
from pedigreeview.book.on_demand import OnDemand
from pedigreeview.book.records import Plant
from pedigreeview.network.generations import SAME_GENERATION, generation_counts
from pedigreeview.network.grouped import Grouped
from pedigreeview.network.order import places_parents_first
from pedigreeview.network.origins import UNKNOWN, Origin
from pedigreeview.network.parentage import Parents, cross_parents
from pedigreeview.network.rows import BY_SOURCE, CompiledRows, RowOfPlant

__all__ = ["ParentColumns"]

IntArray = NDArray[np.int64]

_FOUNDER = Parents("founder")


class ParentColumns:
    """Who the parents of every plant are, by place in the book.

    Attributes
    ----------
    parents : the `Parents` of every plant by its code, each made when it is asked for
    ordered, tied : as `order.parents_first` gives them
    """

    def __init__(self, book: Book, columns: PlantColumns) -> None:
        self._book = book
        self._columns = columns
        self._kinds = columns.kinds(book.settings.founders_as)
        self._pool = self._kinds != KIND_NUMBERS["plant"]
        self._founder = (columns.cross < 0) & (columns.source < 0)
        crossed = columns.cross >= 0
        self._seed = np.full(len(columns), UNKNOWN)
        self._seed[crossed] = columns.cross_seed[columns.cross[crossed]]
        self._pollen = np.full(len(columns), UNKNOWN)
        self._pollen[crossed] = columns.cross_pollen[columns.cross[crossed]]
        self.parents: OnDemand[Parents] = OnDemand(columns.plants, self._parents)
        self._first = np.where(columns.source >= 0, columns.source, self._seed)
        self._second = np.where(self._pollen == self._first, UNKNOWN, self._pollen)
        with uncollected():
            self._order, self._tied = places_parents_first(self._first, self._second)
            self.ordered = self._codes(self._order.tolist())
            self.tied = self._codes(self._tied.tolist())

    def _codes(self, places: list[int]) -> list[str]:
        return list(map(self._columns.codes.__getitem__, places))

    def _parents(self, place: int) -> Parents:
        columns = self._columns
        selfings = columns.cells["selfings"][place] if self._has("selfings", place) else 0
        if columns.source[place] >= 0:
            source = columns.codes[columns.source[place]]
            return Parents(columns.cells["raised"][place], source=source, selfings=selfings)
        number = columns.cross[place]
        if number < 0:
            return _FOUNDER
        code = columns.cross_codes[number]
        seed, pollen = int(self._seed[place]), int(self._pollen[place])
        seed_code = columns.codes[seed] if seed >= 0 else ""
        if pollen >= 0:
            each = seed == pollen and bool(self._pool[seed])
            return Parents(
                "cross", code, seed_code, ((columns.codes[pollen], 1.0),), each, "", selfings
            )
        options, each, by_rate = cross_parents(self._book, columns.record(int(number)), [])
        return Parents("cross", code, seed_code, options, each, "", selfings, False, by_rate)

    def _has(self, name: str, place: int) -> bool:
        return place < self._columns.rows and name in self._columns.cells

    # Relatives ----------------------------------------------------------------------------------

    @cached_property
    def _progeny(self) -> Grouped:
        places = np.arange(len(self._columns))
        # Side by side, so that the progeny of a plant come in the book's order.
        groups = np.column_stack((self._first, self._second)).ravel()
        return Grouped(groups, np.repeat(places, 2), len(places))

    def progeny(self, code: str) -> tuple[str, ...]:
        """Direct progeny of a plant, in the book's order."""
        return tuple(self._codes(self._progeny[self._columns.plants[code]]))

    def parent_rows(self) -> tuple[IntArray, IntArray]:
        """The parents of every plant in compressed rows, both by their places in `codes`."""
        placed = np.concatenate((self._order, self._tied))
        place = np.empty(len(placed) + 1, np.int64)
        place[placed], place[-1] = np.arange(len(placed)), UNKNOWN
        both = place[np.column_stack((self._first[placed], self._second[placed]))]
        starts = np.zeros(len(placed) + 1, np.int64)
        np.cumsum((both >= 0).sum(axis=1), out=starts[1:])
        return starts, both[both >= 0]

    @cached_property
    def _of_cross(self) -> Grouped:
        places = np.concatenate((self._order, self._tied))
        return Grouped(self._columns.cross[places], places, len(self._columns.crosses))

    def progeny_of_cross(self, cross: str) -> tuple[str, ...]:
        """Plants raised from a cross, parents before progeny."""
        return tuple(self._codes(self._of_cross[self._columns.crosses[cross]]))

    @cached_property
    def founders(self) -> tuple[str, ...]:
        """Plants that come from no other, in the book's order."""
        return tuple(self._codes(np.flatnonzero(self._founder).tolist()))

    @cached_property
    def with_base(self) -> dict[str, Parents]:
        """The parents of founders and of plants from open-pollinated seed: what a base rests on."""
        opened = (self._columns.cross >= 0) & (self._pollen < 0)
        places = np.flatnonzero(opened | self._founder)
        return {code: self.parents[code] for code in self._codes(places.tolist())}

    @cached_property
    def _generations(self) -> IntArray:
        columns = self._columns
        step = columns.cell("selfings", np.int64, 0) + 1
        step[self._founder] = 0
        for place in np.flatnonzero(columns.source >= 0).tolist():
            if columns.cells["raised"][place] in SAME_GENERATION:
                step[place] = 0
        return generation_counts(self._order, self._first, self._second, step)

    def generation(self, code: str) -> int | None:
        """Generation of a plant, None for one tied up in a loop."""
        found = int(self._generations[self._columns.plants[code]])
        return found if found >= 0 else None

    # Arrays -------------------------------------------------------------------------------------

    def compiled(self) -> tuple[CompiledRows, dict[str, Any]] | None:
        """The rows of the book and the fields of its `PedigreeArrays`.

        None where the columns do not suffice: a loop, plants of different or odd ploidy, doubled
        forms, outcrossing rates that differ from plant to plant.
        """
        columns = self._columns
        ploidy = self._ploidy()
        if self.tied or ploidy is None:
            return None
        rate = self._outcrossing()
        if rate is _MIXED:
            return None
        with uncollected():
            return self._rows(ploidy, rate, columns)

    def _ploidy(self) -> int | None:
        """The one ploidy of all plants, or None."""
        columns, cells = self._columns, self._columns.cells
        if "doubled_of" in cells["raised"]:
            return None
        distinct: set[tuple[int | None, str]] = set()
        if "ploidy" in cells or "crop" in cells:
            sets, crops = cells.get("ploidy"), cells.get("crop")
            for place in np.flatnonzero(self._founder[: columns.rows]).tolist():
                distinct.add((sets[place] if sets else None, crops[place] if crops else ""))
        if not distinct or len(columns) > columns.rows:
            distinct.add((None, ""))
        ploidies = {self._book.founder_ploidy(_founder(*held)) for held in distinct}
        ploidies |= set(cells.get("ploidy", ())) - {None}
        one = ploidies.pop() if len(ploidies) == 1 else 1
        return one if one % 2 == 0 else None

    def _outcrossing(self) -> Any:
        """The outcrossing rate of all open-pollinated seed, None, or _MIXED."""
        columns = self._columns
        mothers = columns.cross_seed[columns.cross_pollen < 0]
        crops = columns.cells.get("crop")
        if not len(mothers):
            return None
        if crops is None:
            return self._book.outcrossing(_founder(None, ""))
        named = {crops[place] if place < columns.rows else "" for place in mothers.tolist()}
        rates = {self._book.outcrossing(_founder(None, crop)) for crop in named}
        return rates.pop() if len(rates) == 1 else _MIXED

    def _rows(
        self, ploidy: int, rate: float | None, columns: PlantColumns
    ) -> tuple[CompiledRows, dict[str, Any]]:
        order, count = self._order, len(columns)
        fixation = self._fixations()
        origin = np.full(count, Origin.FOUNDER, np.int8)
        origin[columns.cross >= 0] = Origin.CROSS
        sourced = np.flatnonzero(columns.source >= 0)
        words = columns.cells["raised"]
        origin[sourced] = [BY_SOURCE[words[place]] for place in sourced.tolist()]
        selfed = (self._seed == self._pollen) & (self._seed >= 0)
        opened = (columns.cross >= 0) & (self._pollen < 0)
        origin[selfed | (opened & (rate == 0))] = Origin.SELF

        members = _Members(self, fixation, selfed | opened)
        row_of = np.empty(count, np.int64)
        row_of[order] = np.arange(count) + np.cumsum(members.made)
        size = count + int(members.made.sum())
        older = np.where(columns.source >= 0, columns.source, self._seed)
        seed = np.full(size, UNKNOWN)
        seed[row_of] = np.where(older >= 0, row_of[older], UNKNOWN)
        pollen = np.full(size, UNKNOWN)
        certain = (origin == Origin.CROSS) & (self._pollen >= 0)
        pollen[row_of[certain]] = row_of[self._pollen[certain]]
        odds = np.ones(size)
        if rate is not None and 0 < rate < 1:
            pollen[row_of[opened]] = row_of[self._seed[opened]]
            odds[row_of[opened]] = 1.0 - rate
        label, hidden = list(self.ordered), [""] * size
        if size > count:
            of_member, of_pool = members.place(row_of, seed, pollen)
            label = [""] * size
            for row, code in zip(row_of[order].tolist(), self.ordered, strict=True):
                label[row] = code
            for row, pool in zip(of_member.tolist(), of_pool.tolist(), strict=True):
                label[row], hidden[row] = columns.codes[pool], "member"
        spread = _Spread(size, row_of)
        has_option = pollen >= 0
        starts = np.zeros(size + 1, np.int64)
        np.cumsum(has_option, out=starts[1:])
        origins = spread(origin, Origin.MEMBER)
        selfings = np.where(origin == Origin.FOUNDER, 0, columns.cell("selfings", np.int64, 0))
        fields = {
            "origin": origins,
            "seed": seed,
            "option_starts": starts,
            "options": pollen[has_option],
            "odds": odds[has_option],
            "selfings": spread(selfings, 0),
            "pool": spread(self._pool, False),
            "fixation": spread(fixation, np.nan),
            "ploidy": np.full(size, ploidy, np.int64),
        }
        of_plant = RowOfPlant(columns.plants, row_of, row_of[order], self.ordered)
        return CompiledRows([], of_plant, label, hidden), fields

    def _fixations(self) -> NDArray[np.float64]:
        """Fixation of founders and of lines taken as fixed, NaN for the rest."""
        columns, settings = self._columns, self._book.settings
        stated = columns.cell("fixation", float, np.nan)
        variety = self._kinds == KIND_NUMBERS["variety"]
        usual = np.where(variety, settings.variety_fixation, settings.plant_fixation)
        usual[~self._founder] = np.nan
        line = ~self._founder & variety
        for place in np.flatnonzero(line & (columns.source >= 0)).tolist():
            # A clone of a line is as fixed as that line unless it says otherwise.
            line[place] = columns.cells["raised"][place] not in ("cutting_of", "doubled_of")
        usual[line] = 1.0
        return np.where(np.isnan(stated), usual, stated)


_MIXED = object()


def _founder(ploidy: int | None, crop: str) -> Plant:
    return Plant("", ploidy=ploidy, crop=crop)


class _Spread:
    """Puts what is known of the plants at their rows, and what is usual at the others."""

    def __init__(self, size: int, row_of: IntArray) -> None:
        self._size = size
        self._row_of = row_of

    def __call__(self, values: NDArray[Any], usual: Any) -> NDArray[Any]:
        found = np.full(self._size, usual, values.dtype)
        found[self._row_of] = values
        return found


class _Members:
    """The unrecorded members of pools that served as parents, one for each cross and side.

    made : by place in the order, how many stand before that plant, for its cross
    """

    def __init__(
        self, parents: ParentColumns, fixation: NDArray[np.float64], exempt: NDArray[np.bool_]
    ) -> None:
        columns = parents._columns
        # All members of a fully fixed pool are alike: the pool's own row says the same.
        apart = parents._pool & (fixation != 1.0)
        self._sides = [
            (of_plant >= 0) & ~exempt & apart[of_plant]
            for of_plant in (parents._seed, parents._pollen)
        ]
        self._columns = columns
        needing = self._sides[0].astype(np.int64) + self._sides[1]
        order = parents._order
        asked = np.flatnonzero(needing[order])
        _, first = np.unique(columns.cross[order[asked]], return_index=True)
        self._first = order[asked[first]]
        self.made = np.zeros(len(order), np.int64)
        self.made[asked[first]] = needing[self._first]

    def place(
        self, row_of: IntArray, seed: IntArray, pollen: IntArray
    ) -> tuple[IntArray, IntArray]:
        """Put the members between the plants and their pools; rows of the members, their pools."""
        columns = self._columns
        ahead = row_of[self._first]
        rows, pools = [], []
        before = ahead - self._sides[0][self._first] - self._sides[1][self._first]
        for side, of_cross, parent in (
            (self._sides[0], columns.cross_seed, seed),
            (self._sides[1], columns.cross_pollen, pollen),
        ):
            here = side[self._first]
            crosses = columns.cross[self._first[here]]
            member = np.full(len(columns.crosses), UNKNOWN)
            member[crosses] = before[here]
            before = before + here
            rows.append(member[crosses])
            pools.append(of_cross[crosses])
            plants = np.flatnonzero(side)
            parent[row_of[plants]] = member[columns.cross[plants]]
        members, of_pool = np.concatenate(rows), np.concatenate(pools)
        seed[members] = row_of[of_pool]
        return members, of_pool
