"""The plant table, written.

What the book's settings say of founders, crop, ploidy and outcrossing is written into the cells, so
that the table alone gives the same numbers; `table_lost` names what it cannot carry.
"""

from __future__ import annotations

from pathlib import Path

from pedigreeview.book.book import Book, BookSettings
from pedigreeview.book.records import Plant
from pedigreeview.exchange.cells import to_cell
from pedigreeview.exchange.harmless_cells import neutral
from pedigreeview.exchange.table_lost import OFFICIAL, PLANT_COLUMNS, clashes, lost
from pedigreeview.exchange.table_parents import DRAWN, TableParents, cross_name
from pedigreeview.exchange.text_files import to_text
from pedigreeview.exchange.writing import replace_file

__all__ = ["DRAWN", "OFFICIAL", "PLANT_COLUMNS", "cross_name", "lost", "table_lines", "write"]


def write(book: Book, path: str | Path) -> None:
    """Write the plants of a book as a plant table: comma (tab for .tsv), UTF-8, LF.

    A cell that would be taken for a formula gets an apostrophe, which the reader takes away again.

    Raises
    ------
    Fault : the system does not let us write
    """
    headings, lines = table_lines(book)
    separator = "\t" if Path(path).suffix.lower() == ".tsv" else ","
    with replace_file(path) as beside:
        text = to_text(
            [neutral(heading) for heading in headings],
            ([neutral(cell) for cell in line] for line in lines),
            separator,
        )
        beside.write_text(text, encoding="utf-8", newline="\n")


def table_lines(book: Book) -> tuple[list[str], list[list[str]]]:
    """The headings of the plant table of a book, and its rows."""
    parents = TableParents(book)
    rows = [_cells(book, plant, parents) for plant in book.plants.values()]
    extras = dict.fromkeys(
        name for plant in book.plants.values() for name in plant.extra if not clashes(name)
    )
    used = [
        column
        for column in (*OFFICIAL, *PLANT_COLUMNS)
        if column in OFFICIAL[:3] or any(row.get(column) for row in rows)
    ]
    lines = [
        [row.get(column, "") for column in used] + [plant.extra.get(name, "") for name in extras]
        for row, plant in zip(rows, book.plants.values(), strict=True)
    ]
    return [*used, *extras], lines


def _cells(book: Book, plant: Plant, parents: TableParents) -> dict[str, str]:
    row = {
        name: to_cell(getattr(plant, name))
        for name in (*OFFICIAL, *PLANT_COLUMNS)
        if hasattr(plant, name) and name != "cross"
    }
    row["selfings"] = to_cell(plant.selfings, 0)
    raised = book.raised(plant)
    if raised == "cross":
        mating = parents.of(plant)
        if mating is None:
            _parentless_cells(book, plant, row)
        else:
            row.update(mating.cells())
    elif raised == "founder":
        _founder_cells(book, plant, row)
    else:
        row["seed_parent"] = plant.source
    if not plant.crop:
        row["crop"] = book.settings.crop
    return row


def _parentless_cells(book: Book, plant: Plant, row: dict[str, str]) -> None:
    """A plant of parents nobody knows: a founder that is as inbred as the plant."""
    kind = plant.kind or "plant"
    row.update(raised="", kind=kind, selfings="")
    ploidy = book.founder_ploidy(plant)
    if book.settings.ploidy is not None:
        row["ploidy"] = to_cell(ploidy)
    if kind == "variety":
        row["fixation"] = to_cell(1.0 if plant.fixation is None else plant.fixation)
    elif ploidy % 2 == 0:
        from pedigreeview.network.origins import Rules

        rules = Rules(ploidy, book.double_reduction())
        inbreeding = float(rules.selfed(rules.cross(0.0, 0.0, 0.0), plant.selfings))
        row["fixation"] = to_cell(inbreeding) if inbreeding else ""


def _founder_cells(book: Book, plant: Plant, row: dict[str, str]) -> None:
    settings, usual = book.settings, BookSettings()
    if settings.founders_as:
        row["kind"] = book.kind(plant)
    if (settings.variety_fixation, settings.plant_fixation) != (
        usual.variety_fixation,
        usual.plant_fixation,
    ):
        row["fixation"] = to_cell(book.founder_fixation(plant))
    if settings.ploidy is not None:
        row["ploidy"] = to_cell(book.founder_ploidy(plant))
