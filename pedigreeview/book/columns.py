"""A large plant table kept as columns, from which its records are made on demand."""

from __future__ import annotations

from dataclasses import dataclass, field
from typing import Any

import numpy as np
from numpy.typing import NDArray

from pedigreeview.book.book import Book
from pedigreeview.book.on_demand import OnDemand
from pedigreeview.book.records import Cross, Plant

__all__ = ["KIND_NUMBERS", "PlantColumns", "columns_of", "fill"]

KIND_NUMBERS = {"variety": 0, "plant": 1, "family": 2}

IntArray = NDArray[np.int64]


@dataclass(slots=True, eq=False)
class PlantColumns:
    """The plants and crosses of one table; −1 in the arrays where there is none.

    Every cross is of one certain pollen parent or open-pollinated, with nothing said of how it was
    drawn; a plant has a cross or a source or neither.

    Attributes
    ----------
    plants : place of each plant by its code, in the book's order
    cells : by field of `Plant`, the values of the plants that have a row; those after them in the
        order are founders that say nothing
    extra : columns kept as notes of the plant
    source : (n,) place of the plant or pool that it came from otherwise than by a cross
    cross : (n,) place of its cross
    crosses : place of each cross by its code, in the book's order
    cross_seed, cross_pollen : (m,) places of the parents of each cross
    """

    plants: dict[str, int]
    cells: dict[str, list[Any]]
    extra: dict[str, list[str]]
    source: IntArray
    cross: IntArray
    crosses: dict[str, int]
    cross_seed: IntArray
    cross_pollen: IntArray
    codes: list[str] = field(init=False)
    cross_codes: list[str] = field(init=False)
    rows: int = field(init=False)

    def __post_init__(self) -> None:
        self.codes = list(self.plants)
        self.cross_codes = list(self.crosses)
        self.rows = len(self.cells["kind"])

    def __len__(self) -> int:
        return len(self.codes)

    def plant(self, place: int) -> Plant:
        """The record of a plant."""
        plant = Plant(self.codes[place])
        if place >= self.rows:
            return plant
        for name, values in self.cells.items():
            setattr(plant, name, values[place])
        for name, texts in self.extra.items():
            if texts[place]:
                plant.extra[name] = texts[place]
        if self.cross[place] >= 0:
            plant.cross = self.cross_codes[self.cross[place]]
        elif self.source[place] >= 0:
            plant.source = self.codes[self.source[place]]
        return plant

    def record(self, place: int) -> Cross:
        """The record of a cross."""
        seed, pollen = int(self.cross_seed[place]), int(self.cross_pollen[place])
        intended = "cross"
        if seed >= 0 and pollen < 0:
            intended = "open"
        elif seed == pollen:
            intended = "selfing"
        return Cross(
            self.cross_codes[place],
            self.codes[seed] if seed >= 0 else "",
            self.codes[pollen] if pollen >= 0 else "",
            "",
            intended,
        )

    def cell(self, name: str, kind: Any, usual: Any) -> NDArray[Any]:
        """One field of every plant as an array, `usual` where a plant says nothing of it."""
        found = np.full(len(self), usual, kind)
        values = self.cells.get(name)
        if values is not None:
            given = (usual if value is None else value for value in values)
            found[: self.rows] = np.fromiter(given, kind, self.rows)
        return found

    def kinds(self, founders_as: str) -> NDArray[np.int8]:
        """The number of every plant's kind (`KIND_NUMBERS`), blanks read as the book reads them."""
        number = {**KIND_NUMBERS, "": -1}
        found = np.full(len(self), -1, np.int8)
        found[: self.rows] = np.fromiter(
            map(number.__getitem__, self.cells["kind"]), np.int8, self.rows
        )
        founder = (self.cross < 0) & (self.source < 0)
        found[(found < 0) & founder] = KIND_NUMBERS[founders_as or "variety"]
        found[found < 0] = KIND_NUMBERS["plant"]
        return found


def fill(book: Book, columns: PlantColumns) -> None:
    """Give a book without plants the plants and crosses of the columns."""
    book.plants = OnDemand(columns.plants, columns.plant)
    book.crosses = OnDemand(columns.crosses, columns.record)
    book.columns = columns


def columns_of(book: Book) -> PlantColumns | None:
    """The columns of a book whose plants and crosses are still what they say; else None."""
    columns = book.columns
    if columns is None or book.pollen_candidates or book.parent_findings:
        return None
    for held in (book.plants, book.crosses):
        if not isinstance(held, OnDemand) or not held.as_made():
            return None
    return columns
