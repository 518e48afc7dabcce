"""Tables on paper: numbered rows with room to write, headings that say what goes where.

A row grows with its text, so that nothing is cut off; columns that do not fit on one page go on to
further pages, with the key columns repeated.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from pedigreeview.drawing.theme import theme as theme_named
from pedigreeview.reports.label_lines import Line, Mark, signed_line, text_mark
from pedigreeview.reports.paper_lists import MARGIN, Block, Part, page_size
from pedigreeview.reports.paper_type import shortened, width_of, wrapped
from pedigreeview.reports.report_words import tr

__all__ = ["Cell", "TableColumn", "table_parts"]

_SIZE, _SMALL, _HEADING = 30, 23, 26
_PAD = 12.0
_WIDEST_WORD = 420.0
_HIGH = 160.0
_LEAST = 18


@dataclass(frozen=True, slots=True)
class TableColumn:
    """One column."""

    heading: str
    width: float
    """Least width in millimetres; text may make it wider."""
    under: str = ""
    """Smaller words below the heading: the unit, the scale."""
    grow: float = 1.0
    """Share of what is left of the page's width."""


@dataclass(frozen=True, slots=True)
class Cell:
    """What stands in a cell: a code, and smaller words below it; both blank is room to write."""

    text: str = ""
    small: str = ""
    strong: bool = False
    shade: bool = False
    """Nothing is to be written here."""


def table_parts(
    title: str,
    below: str,
    columns: Sequence[TableColumn],
    rows: Sequence[Sequence[Cell]],
    *,
    keys: int,
    paper: str,
    landscape: bool,
    row_height: float = 8.0,
    sheet: str = "",
    notes: Sequence[str] = (),
    numbered: bool = True,
) -> list[Part]:
    """A table as parts of a document: one, or several where it has more columns than fit.

    keys : how many columns are repeated on each part
    row_height : least height of a row in millimetres
    numbered : put a number before each row, the same on every part
    """
    room = page_size(paper, landscape)[0] - 2 * MARGIN
    columns = list(columns)
    rows = [list(row) for row in rows]
    if numbered:
        columns.insert(0, TableColumn(tr("no."), 8.0, grow=0.0))
        rows = [[Cell(f"{at + 1}"), *row] for at, row in enumerate(rows)]
        keys += 1
    widths = [_width(column, [row[at] for row in rows]) for at, column in enumerate(columns)]
    groups = _groups(widths, keys, room)
    parts = []
    for number, group in enumerate(groups):
        wide = _grown([columns[at] for at in group], [widths[at] for at in group], room)
        heading = _heading([columns[at] for at in group], wide)
        blocks = [_row([row[at] for at in group], wide, row_height * 10) for row in rows]
        named = title
        if len(groups) > 1:
            named = tr("{}, part {} of {}").format(title, number + 1, len(groups))
        parts.append(
            Part(named, below, heading, tuple(blocks), sheet, tuple(notes), of=len(groups))
        )
    return parts


def _width(column: TableColumn, cells: Sequence[Cell]) -> float:
    theme = theme_named("grey")
    words = [(word, _HEADING, True) for word in column.heading.split()]
    words += [(word, _SMALL, False) for word in column.under.split()]
    for cell in cells:
        words += [(word, _SIZE, True) for word in cell.text.split()]
        words += [(word, _SMALL, False) for word in cell.small.split()]
    longest = max(
        (width_of(theme, size, word, strong=strong) for word, size, strong in words), default=0
    )
    return max(10.0 * column.width, min(longest, _WIDEST_WORD) + 2 * _PAD)


def _groups(widths: Sequence[float], keys: int, room: float) -> list[list[int]]:
    """Which columns go on which part."""
    first = list(range(keys))
    start = sum(widths[:keys])
    found: list[list[int]] = []
    held, used = list(first), start
    for at in range(keys, len(widths)):
        if used + widths[at] > room and len(held) > keys:
            found.append(held)
            held, used = list(first), start
        held.append(at)
        used += widths[at]
    return [*found, held]


def _grown(columns: Sequence[TableColumn], widths: Sequence[float], room: float) -> list[float]:
    spare = room - sum(widths)
    if spare < 0:
        # Not even the key columns fit: all become narrower alike and their text wraps.
        return [width * room / sum(widths) for width in widths]
    shares = sum(column.grow for column in columns)
    if not shares:
        return list(widths)
    # An even share at most, so that a table of two columns does not fill a page with nothing.
    return [
        width + min(spare * column.grow / shares, 600.0 * column.grow)
        for column, width in zip(columns, widths, strict=True)
    ]


def _heading(columns: Sequence[TableColumn], widths: Sequence[float]) -> Block:
    theme = theme_named("grey")
    marks: list[Mark] = []
    tall = 0.0
    x = 0.0
    for column, width in zip(columns, widths, strict=True):
        y = _PAD * 0.7
        signed = any(sign in column.heading for sign in "♀♂×")
        if signed and signed_line(theme, column.heading, _HEADING).width <= width - 2 * _PAD:
            line = signed_line(theme, column.heading, _HEADING)
            marks += [mark.moved(x + _PAD, y) for mark in line.marks]
            y += line.height
        else:
            for text in wrapped(theme, _HEADING, column.heading, width - 2 * _PAD, strong=True):
                marks.append(text_mark(theme, text, _HEADING, strong=True).moved(x + _PAD, y))
                y += 1.15 * _HEADING
        for text in wrapped(theme, _SMALL, column.under, width - 2 * _PAD):
            marks.append(text_mark(theme, text, _SMALL, soft=True).moved(x + _PAD, y))
            y += 1.15 * _SMALL
        tall = max(tall, y + _PAD * 0.7)
        x += width
    frame = [Mark("shade", 0, 0, x, tall), Mark("box", 0, 0, x, tall)]
    return Block((*frame, *marks, *_uprights(widths, tall)), tall)


def _row(cells: Sequence[Cell], widths: Sequence[float], least: float) -> Block:
    theme = theme_named("grey")
    placed: list[tuple[float, list[Mark], float]] = []
    shades: list[tuple[float, float]] = []
    tall = least
    x = 0.0
    for cell, width in zip(cells, widths, strict=True):
        marks: list[Mark] = []
        y = 0.0
        for text in _lines(cell.text, width - 2 * _PAD, strong=cell.strong):
            if any(sign in text for sign in "×⊗○♀♂"):
                line = _signed(text, width - 2 * _PAD)
                marks += [mark.moved(x + _PAD, y) for mark in line.marks]
            else:
                marks.append(text_mark(theme, text, _SIZE, strong=cell.strong).moved(x + _PAD, y))
            y += 1.18 * _SIZE
        for text in wrapped(theme, _SMALL, cell.small, width - 2 * _PAD):
            marks.append(text_mark(theme, text, _SMALL, soft=True).moved(x + _PAD, y))
            y += 1.18 * _SMALL
        placed.append((x, marks, y))
        if cell.shade:
            shades.append((x, width))
        tall = max(tall, y + 1.2 * _PAD)
        x += width
    found = [Mark("shade", left, 0, wide, tall) for left, wide in shades]
    found.append(Mark("box", 0, 0, x, tall))
    for _, marks, high in placed:
        # In a high field the text stands on top, so that what is left of it can be written on.
        top = (tall - high) / 2 if tall < _HIGH else _PAD
        found += [mark.moved(0, top) for mark in marks]
    return Block((*found, *_uprights(widths, tall)), tall)


def _lines(text: str, width: float, *, strong: bool) -> list[str]:
    theme = theme_named("grey")
    if width_of(theme, _SIZE, text, strong=True) <= width - 0.6 * _SIZE * sum(
        c in "×⊗○♀♂" for c in text
    ):
        return [text] if text else []
    lines = wrapped(theme, _SIZE, text, width, strong=strong)
    return [shortened(theme, _SIZE, line, width, strong=strong) for line in lines]


def _signed(text: str, room: float) -> Line:
    """A line with drawn signs, which take more room than letters: smaller, then shortened."""
    theme = theme_named("grey")
    size = _SIZE
    line = signed_line(theme, text, size)
    while line.width > room and size > _LEAST:
        size -= 1
        line = signed_line(theme, text, size)
    held = room
    while line.width > room and held > 0:
        held -= 0.1 * room
        line = signed_line(theme, shortened(theme, size, text, held, strong=True), size)
    return line


def _uprights(widths: Sequence[float], tall: float) -> list[Mark]:
    found = []
    x = 0.0
    for width in widths[:-1]:
        x += width
        found.append(Mark("rule", x, 0.0, 0.0, tall, soft=True))
    return found
