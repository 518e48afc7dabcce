"""Scores typed into a grid of plants by traits, as in a spreadsheet; a block can be pasted."""

from __future__ import annotations

import csv
import io
from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from typing import TYPE_CHECKING

from pedigreeview.book.book import Book
from pedigreeview.book.faults import Fault, Place
from pedigreeview.book.recording.fields import choice, iso_date
from pedigreeview.book.recording.guard import guarded
from pedigreeview.book.recording.lookup import plant_called, trait_called
from pedigreeview.book.recording.traits import fitting_value
from pedigreeview.book.records import Score

if TYPE_CHECKING:
    from pedigreeview.book.edits import Edit

__all__ = ["GridFaults", "ScoreGrid", "pasted", "record_score", "record_scores", "score_grid"]

Cell = tuple[int, int]
"""Row (place among the plants) and column (place among the traits), both from 0."""


@dataclass(frozen=True, slots=True)
class ScoreGrid:
    """A grid of plants by traits for one day.

    values : what is recorded of that day, by cell
    """

    plants: tuple[str, ...]
    traits: tuple[str, ...]
    date: str
    of: str
    values: Mapping[Cell, str]


class GridFaults(Fault):
    """Every cell of a grid that cannot be taken; nothing of it was recorded.

    Attributes
    ----------
    faults : by cell
    """

    def __init__(self, faults: Mapping[Cell, Fault]) -> None:
        self.faults = dict(faults)
        count = len(self.faults)
        first = next(iter(self.faults.values()))
        super().__init__(
            f"{count} {'cell' if count == 1 else 'cells'} cannot be taken; the first: {first.what}",
            first.where,
            first.todo,
        )

    def lines(self) -> list[str]:
        """Every fault on a line of its own."""
        return [fault.sentence() for fault in self.faults.values()]


def score_grid(
    book: Book, plants: Sequence[str], traits: Sequence[str], *, date: str = "", of: str = "plant"
) -> ScoreGrid:
    """The grid of some plants and traits, with what is recorded of that day.

    Raises
    ------
    Fault : a plant or trait that is not in the book, or twice in the grid
    """
    rows = tuple(plant_called(book, code).plant for code in plants)
    columns = tuple(trait_called(book, name).trait for name in traits)
    for names, what in ((rows, "plant"), (columns, "trait")):
        twice = [name for name in names if names.count(name) > 1] if len(names) < 2_000 else []
        if twice:
            raise Fault(
                f"The {what} {twice[0]} stands twice in the grid.",
                Place(column=what),
                "Name each once.",
            )
    row_of = {code: place for place, code in enumerate(rows)}
    column_of = {name: place for place, name in enumerate(columns)}
    on, whose = iso_date(date), choice(of, ("plant", "seed"), "of") or "plant"
    values = {
        (row_of[score.plant], column_of[score.trait]): score.value
        for score in book.scores
        if score.plant in row_of
        and score.trait in column_of
        and score.date == on
        and (score.of or "plant") == whose
    }
    return ScoreGrid(rows, columns, on, whose, values)


def pasted(grid: ScoreGrid, text: str, row: int, column: int) -> dict[Cell, str]:
    """The cells that a block from a spreadsheet fills, its upper left corner at a cell.

    Cells are parted by tabs, rows by line breaks; quoted cells are read as spreadsheets write them.

    Raises
    ------
    Fault : the block reaches beyond the grid
    """
    block = list(csv.reader(io.StringIO(text.rstrip("\r\n"), newline=""), delimiter="\t"))
    wide = max((len(cells) for cells in block), default=0)
    for size, there, at, what in (
        (len(block), len(grid.plants), row, "row"),
        (wide, len(grid.traits), column, "column"),
    ):
        if at + size > there:
            raise Fault(
                f"The block has {size} {what}{'' if size == 1 else 's'}, and from here the grid "
                f"has {max(there - at, 0)}.",
                Place(row=row + 1),
                "Start further up or left, or copy a smaller block.",
            )
    return {
        (row + down, column + right): cell.strip()
        for down, cells in enumerate(block)
        for right, cell in enumerate(cells)
    }


def record_scores(
    edit: Edit, grid: ScoreGrid, cells: Mapping[Cell, str], *, by: str = "", note: str = ""
) -> tuple[Score, ...]:
    """Take typed cells in; a blank takes the score of that day away.  Gives the scores as kept.

    Raises
    ------
    GridFaults : values that do not fit their traits, with row (from 1) and trait of each
    Fault : a score dated before its plant was sown
    """
    faults: dict[Cell, Fault] = {}
    fitting: dict[Cell, str] = {}
    for cell, text in sorted(cells.items()):
        code, name = grid.plants[cell[0]], grid.traits[cell[1]]
        try:
            fitting[cell] = fitting_value(edit.book.traits[name], text)
        except Fault as fault:
            place = Place(row=cell[0] + 1, column=name, plant=code)
            faults[cell] = Fault(fault.what, place, fault.todo)
    if faults:
        raise GridFaults(faults)
    wanted = {(grid.plants[row], grid.traits[column]) for row, column in fitting}
    held = {
        (score.plant, score.trait): score
        for score in edit.book.scores
        if (score.plant, score.trait) in wanted
        and score.date == grid.date
        and (score.of or "plant") == grid.of
    }
    kept: list[Score] = []
    with guarded(edit, plants={plant for plant, _ in wanted}):
        for (row, column), value in fitting.items():
            key = (grid.plants[row], grid.traits[column])
            score = held.get(key)
            if score is None and value:
                score = Score(*key, grid.date, grid.of, value, by.strip(), note.strip())
                edit.add(score)
                kept.append(score)
            elif score is not None and not value:
                edit.remove(score)
            elif score is not None:
                changed: dict[str, str] = {"value": value}
                if by.strip() and value != score.value:
                    changed["by"] = by.strip()
                updated = edit.update(score, **changed)
                assert isinstance(updated, Score)
                kept.append(updated)
    return tuple(kept)


def record_score(
    edit: Edit,
    plant: str,
    trait: str,
    value: str,
    *,
    date: str = "",
    of: str = "plant",
    by: str = "",
    note: str = "",
) -> Score | None:
    """Record one score; a blank value takes that of the day away and gives None."""
    grid = score_grid(edit.book, [plant], [trait], date=date, of=of)
    found = record_scores(edit, grid, {(0, 0): value}, by=by, note=note)
    return found[0] if found else None
