"""The blank sheets for the garden as tables on paper."""

from __future__ import annotations

from pedigreeview.book.book import Book
from pedigreeview.reports.garden_sheets import GardenSheet, scale_of
from pedigreeview.reports.paper_lists import Part
from pedigreeview.reports.paper_tables import Cell, TableColumn, table_parts
from pedigreeview.reports.report_words import tr

__all__ = ["garden_parts", "how_typed_in"]


def how_typed_in() -> str:
    """How what is written on a sheet comes into the book."""
    return tr("Typed in by the number of the sheet and of the row; nothing else need be copied.")


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
        notes=[*notes, how_typed_in()],
    )


_Made = tuple[str, str, list[TableColumn], list[list[Cell]], int, float, list[str]]


def _pollinations(book: Book, sheet: GardenSheet) -> _Made:
    columns = [
        TableColumn(tr("♀ seed parent"), 24, grow=1.2),
        TableColumn(tr("× ♂ pollen parent"), 24, grow=1.2),
        TableColumn(tr("cross"), 15),
        TableColumn(tr("date"), 15, grow=0.4),
        TableColumn(tr("flowers"), 10, grow=0.2),
        TableColumn(tr("bud"), 13, tr("closed unsure open"), grow=0.2),
        TableColumn(tr("cover"), 13, grow=0.5),
        TableColumn(tr("tag"), 14, grow=0.6),
        TableColumn(tr("by"), 8, grow=0.2),
        TableColumn(tr("note"), 16, grow=2.0),
    ]
    rows = [[Cell() for _ in columns] for _ in sheet.rows]
    notes = [
        # In running text the sign is written out, since few types have it.
        tr(
            "Seed parent first: the plant that will bear the fruit. A selfing: 'self' as pollen "
            "parent."
        )
    ]
    below = tr("One row for each pollination. The tag on the flower says the same as the row.")
    return tr("Pollinations"), below, columns, rows, 0, 9.0, notes


def _scores(book: Book, sheet: GardenSheet) -> _Made:
    columns = [TableColumn(tr("plant"), 24, grow=0.3)]
    for name in sheet.columns:
        trait = book.traits[name]
        columns.append(TableColumn(name, 13, scale_of(trait), grow=0.5))
    columns.append(TableColumn(tr("note"), 22, grow=1.6))
    rows = []
    for at, code in enumerate(sheet.rows):
        name, came, status = sheet.known[at] if sheet.known else ("", "", "")
        small = ", ".join(part for part in (name, came, tr(status)) if part)
        blank = [Cell() for _ in sheet.columns]
        rows.append([Cell(code, _in_words(small), strong=True), *blank, Cell()])
    below = tr("Date: ____________   by: ________   of the plant itself / of the seed that it bore")
    return tr("Scores"), below, columns, rows, 1, 8.0, []


def _rows(book: Book, sheet: GardenSheet) -> _Made:
    columns = [
        TableColumn(tr("family"), 24, grow=0.6),
        TableColumn(tr("sown"), 20, grow=0.1),
        TableColumn(tr("seeds"), 11, grow=0.0),
        TableColumn(tr("up"), 11, grow=0.2),
        TableColumn(tr("kept"), 11, grow=0.2),
        TableColumn(tr("off-types"), 14, grow=0.2),
        TableColumn(tr("place"), 20, grow=0.8),
        TableColumn(tr("note"), 24, grow=2.0),
    ]
    rows = []
    for at, code in enumerate(sheet.rows):
        held = sheet.known[at] if sheet.known else ("",) * 6
        source, came, generation, sown, seeds, place = held
        came = "" if came == source else came
        small = ", ".join(part for part in (came, tr(generation)) if part)
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
    below = tr("Families sown, in the order of the book. Counted from the stake.")
    return tr("Rows"), below, columns, rows, 1, 9.0, []


def _fruits(book: Book, sheet: GardenSheet) -> _Made:
    columns = [
        TableColumn(tr("cross"), 24, grow=0.6),
        TableColumn(tr("pollinated"), 20, grow=0.1),
        TableColumn(tr("tag"), 14, grow=0.3),
        TableColumn(tr("flowers"), 13, grow=0.1),
        TableColumn(tr("set"), 12, tr("fruits"), grow=0.2),
        TableColumn(tr("dropped"), 14, tr("lost since"), grow=0.2),
        TableColumn(tr("note"), 24, grow=2.0),
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
    below = tr("Fruits set of the flowers that were worked, and how many of these were lost since.")
    return tr("Fruits set"), below, columns, rows, 1, 9.0, []


def _in_words(text: str) -> str:
    """Small type is not drawn sign by sign, so the rarer signs are written out."""
    return text.replace("⊗", tr("selfed")).replace("○", tr("open-pollinated"))
