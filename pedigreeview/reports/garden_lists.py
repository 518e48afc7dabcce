"""The blank sheets for the garden as tables on paper."""

from __future__ import annotations

from pedigreeview.book.book import Book
from pedigreeview.reports.garden_sheets import GardenSheet, scale_of
from pedigreeview.reports.paper_lists import Part
from pedigreeview.reports.paper_tables import Cell, TableColumn, table_parts

__all__ = ["garden_parts"]

_HOW = "Typed in by the number of the sheet and of the row; nothing else need be copied."


def garden_parts(
    book: Book, sheet: GardenSheet, *, paper: str = "A4", landscape: bool = False
) -> list[Part]:
    """A garden sheet as parts of a document."""
    make = {
        "pollinations": _pollinations,
        "scores": _scores,
        "rows": _rows,
        "fruits": _fruits,
    }[sheet.kind]
    title, below, columns, rows, keys, height, notes = make(book, sheet)
    return table_parts(
        title,
        below,
        columns,
        rows,
        keys=keys,
        paper=paper,
        landscape=landscape,
        row_height=height,
        sheet=sheet.number,
        notes=[*notes, _HOW],
    )


_Made = tuple[str, str, list[TableColumn], list[list[Cell]], int, float, list[str]]


def _pollinations(book: Book, sheet: GardenSheet) -> _Made:
    columns = [
        TableColumn("♀ seed parent", 24, grow=1.2),
        TableColumn("× ♂ pollen parent", 24, grow=1.2),
        TableColumn("cross", 15),
        TableColumn("date", 15, grow=0.4),
        TableColumn("flowers", 10, grow=0.2),
        TableColumn("bud", 13, "closed unsure open", grow=0.2),
        TableColumn("cover", 13, grow=0.5),
        TableColumn("tag", 14, grow=0.6),
        TableColumn("by", 8, grow=0.2),
        TableColumn("note", 16, grow=2.0),
    ]
    rows = [[Cell() for _ in columns] for _ in sheet.rows]
    notes = [
        "Seed parent first: the plant that will bear the fruit. A selfing: ⊗ as pollen parent."
    ]
    # In running text the sign is written out, since few types have it.
    notes = [notes[0].replace("⊗", "'self'")]
    below = "One row for each pollination. The tag on the flower says the same as the row."
    return "Pollinations", below, columns, rows, 0, 9.0, notes


def _scores(book: Book, sheet: GardenSheet) -> _Made:
    columns = [TableColumn("plant", 24, grow=0.3)]
    for name in sheet.columns:
        trait = book.traits[name]
        columns.append(TableColumn(name, 13, scale_of(trait), grow=0.5))
    columns.append(TableColumn("note", 22, grow=1.6))
    rows = []
    for at, code in enumerate(sheet.rows):
        name, came, status = sheet.known[at] if sheet.known else ("", "", "")
        small = ", ".join(part for part in (name, came, status) if part)
        blank = [Cell() for _ in sheet.columns]
        rows.append([Cell(code, _in_words(small), strong=True), *blank, Cell()])
    below = "Date: ____________   by: ________   of the plant itself / of the seed that it bore"
    return "Scores", below, columns, rows, 1, 8.0, []


def _rows(book: Book, sheet: GardenSheet) -> _Made:
    columns = [
        TableColumn("family", 24, grow=0.6),
        TableColumn("sown", 20, grow=0.1),
        TableColumn("seeds", 11, grow=0.0),
        TableColumn("up", 11, grow=0.2),
        TableColumn("kept", 11, grow=0.2),
        TableColumn("off-types", 14, grow=0.2),
        TableColumn("place", 20, grow=0.8),
        TableColumn("note", 24, grow=2.0),
    ]
    rows = []
    for at, code in enumerate(sheet.rows):
        held = sheet.known[at] if sheet.known else ("",) * 6
        source, came, generation, sown, seeds, place = held
        came = "" if came == source else came
        small = ", ".join(part for part in (came, generation) if part)
        rows.append(
            [
                Cell(source or code, _in_words(small), strong=True),
                Cell(sown, code),
                Cell(seeds),
                Cell(),
                Cell(),
                Cell(),
                Cell(small=place),
                Cell(),
            ]
        )
    below = "Families sown, in the order of the book. Counted from the stake."
    return "Rows", below, columns, rows, 1, 9.0, []


def _fruits(book: Book, sheet: GardenSheet) -> _Made:
    columns = [
        TableColumn("cross", 24, grow=0.6),
        TableColumn("pollinated", 20, grow=0.1),
        TableColumn("tag", 14, grow=0.3),
        TableColumn("flowers", 13, grow=0.1),
        TableColumn("set", 12, "fruits", grow=0.2),
        TableColumn("dropped", 14, "lost since", grow=0.2),
        TableColumn("note", 24, grow=2.0),
    ]
    rows = []
    for at, code in enumerate(sheet.rows):
        held = sheet.known[at] if sheet.known else ("",) * 6
        cross, came, date, flowers, tag, place = held
        small = ", ".join(part for part in ("" if came == cross else came, place) if part)
        rows.append(
            [
                Cell(cross or code, _in_words(small), strong=True),
                Cell(date, code),
                Cell(tag),
                Cell(flowers),
                *(Cell() for _ in range(3)),
            ]
        )
    below = "Fruits set of the flowers that were worked, and how many of these were lost since."
    return "Fruits set", below, columns, rows, 1, 9.0, []


def _in_words(text: str) -> str:
    """Small type is not drawn sign by sign, so the rarer signs are written out."""
    return text.replace("⊗", "selfed").replace("○", "open-pollinated")
