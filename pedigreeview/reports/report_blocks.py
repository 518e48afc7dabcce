"""Blocks of a report: text wrapped to the width, facts, rows of tables, the pedigree, photos.

Lengths are in tenths of a millimetre.  Nothing is shortened: a word that is wider than its room is
broken, and a row that is higher than a page goes on in a second row.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass, replace

from PySide6.QtCore import QRectF
from PySide6.QtGui import QImage, QPainter

from pedigreeview.drawing.theme import Theme
from pedigreeview.drawing.theme import theme as theme_named
from pedigreeview.reports.paper_type import width_of
from pedigreeview.reports.report_model import Facts, Item, PhotoOf, Report, Table, Text
from pedigreeview.reports.report_picture import LinePicture
from pedigreeview.reports.report_words import tr

__all__ = ["Block", "Piece", "Setter", "lines_of", "text_pieces"]

_TITLE, _HEADING, _BODY, _CELL, _SMALL = 62, 42, 33, 29, 27
_LEAD = 1.34
_PAD = 13.0
_FACT = 430.0
_UNIT = 254.0 / 96
"""Tenths of a millimetre in a unit of the picture."""
_PHOTO_HEIGHT = 640.0
_GUTTER = 40.0
_SHORT = 6
"""Rows up to which a table is not parted between pages."""


@dataclass(frozen=True, slots=True)
class Piece:
    """Something at a place of a block: 'text', 'rule', 'shade' or 'picture'."""

    kind: str
    x: float
    y: float
    width: float = 0.0
    height: float = 0.0
    text: str = ""
    size: int = 0
    strong: bool = False
    soft: bool = False
    number: int = 0


@dataclass(frozen=True, slots=True)
class Block:
    """Something that is never parted between pages.

    with_next : never the last of its page
    again : what stands above it once more if it begins a page: the headings of its table
    space : nothing but room, left out at the head of a page
    """

    pieces: tuple[Piece, ...]
    height: float
    with_next: bool = False
    again: Block | None = None
    space: bool = False


def lines_of(theme: Theme, text: str, size: int, room: float, *, strong: bool = False) -> list[str]:
    """Lines of at most the room, broken at blanks, and within words that are wider."""
    lines: list[str] = []
    for word in text.split():
        trial = f"{lines[-1]} {word}" if lines else word
        if lines and width_of(theme, size, trial, strong=strong) <= room:
            lines[-1] = trial
            continue
        while width_of(theme, size, word, strong=strong) > room and len(word) > 1:
            kept = _fits(theme, size, word, room, strong=strong)
            lines.append(word[:kept])
            word = word[kept:]
        lines.append(word)
    return lines


def _fits(theme: Theme, size: int, word: str, room: float, *, strong: bool) -> int:
    """Letters of a word that fit, one at least."""
    low, high = 1, len(word)
    while low < high:
        middle = (low + high + 1) // 2
        if width_of(theme, size, word[:middle], strong=strong) <= room:
            low = middle
        else:
            high = middle - 1
    return low


def text_pieces(
    theme: Theme,
    text: str,
    size: int,
    room: float,
    *,
    x: float = 0.0,
    y: float = 0.0,
    strong: bool = False,
    soft: bool = False,
    right: bool = False,
) -> list[Piece]:
    """The lines of a text one below the other; `right`: each ends at the right of the room."""
    found = []
    for at, line in enumerate(lines_of(theme, text, size, room, strong=strong)):
        wide = width_of(theme, size, line, strong=strong)
        left = x + room - wide if right else x
        top = y + at * _LEAD * size
        found.append(Piece("text", left, top, wide, 0, line, size, strong, soft))
    return found


def _space(height: float) -> Block:
    return Block((), height, space=True)


class Setter:
    """Sets the items of a report in a column of some width.

    width, height : room of a page within its margins
    """

    def __init__(self, width: float, height: float) -> None:
        self._theme = theme_named("grey")
        self._width, self._height = width, height

    # Text ---------------------------------------------------------------------------------------

    def title(self, report: Report) -> list[Block]:
        """Title, the line below it, who hands it out, and the person's own words."""
        cover = report.cover
        found = self._lines(report.title, _TITLE, strong=True)
        found += self._lines(report.below, _BODY, soft=True)
        person = ", ".join(part for part in (*cover.person, cover.date) if part)
        found += self._lines(person, _BODY)
        pieces = (Piece("rule", 0, 16, self._width),)
        found.append(Block(pieces, 36))
        for words in cover.caption:
            found += [*self._paragraph(words, _BODY), _space(14)]
        return found

    def heading(self, text: str, *, first: bool) -> list[Block]:
        """The heading of a part."""
        pieces = text_pieces(self._theme, text, _HEADING, self._width, strong=True)
        made = Block(tuple(pieces), _LEAD * _HEADING * len(pieces) + 10, with_next=True)
        return [_space(14.0 if first else 40.0), made]

    def item(self, item: Item) -> list[Block]:
        """Text, facts or a table."""
        if isinstance(item, Text):
            if item.strong:
                pieces = text_pieces(self._theme, item.words, _BODY, self._width, y=14, strong=True)
                tall = 14 + _LEAD * _BODY * len(pieces) + 4
                return [Block(tuple(pieces), tall, with_next=True)]
            size = _SMALL if item.soft else _BODY
            return [*self._paragraph(item.words, size, soft=item.soft), _space(14)]
        if isinstance(item, Facts):
            rows = [self._fact(name, value) for name, value in item.rows]
            # The first two stand together, and so do the last two.
            return [
                *(
                    replace(row, with_next=at < len(rows) - 1 and at in (0, len(rows) - 2))
                    for at, row in enumerate(rows)
                ),
                _space(16),
            ]
        if isinstance(item, Table):
            return [*self._table(item), _space(24)]
        raise TypeError(f"{type(item).__name__} is set by itself")

    def _lines(
        self, text: str, size: int, *, strong: bool = False, soft: bool = False
    ) -> list[Block]:
        pieces = text_pieces(self._theme, text, size, self._width, strong=strong, soft=soft)
        return [
            Block((Piece("text", p.x, 0, p.width, 0, p.text, size, strong, soft),), _LEAD * size)
            for p in pieces
        ]

    def _paragraph(self, text: str, size: int, *, soft: bool = False) -> list[Block]:
        """A paragraph that is parted between pages with two lines or more on either."""
        lines = self._lines(text, size, soft=soft)
        last = len(lines) - 1
        return [
            Block(line.pieces, line.height, with_next=at < last and at in (0, last - 1))
            for at, line in enumerate(lines)
        ]

    def _fact(self, name: str, value: str) -> Block:
        left = text_pieces(self._theme, name, _BODY, _FACT - 24, soft=True)
        right = text_pieces(self._theme, value, _BODY, self._width - _FACT, x=_FACT)
        lines = max(len(left), len(right), 1)
        return Block((*left, *right), _LEAD * _BODY * lines + 5)

    # Tables -------------------------------------------------------------------------------------

    def _table(self, table: Table) -> list[Block]:
        widths = self._widths(table)
        head = self._row(table, table.headings, widths, strong=True)[0]
        rule = Piece("rule", 0, head.height, sum(widths))
        shade = Piece("shade", 0, 0, sum(widths), head.height)
        heading = Block((shade, *head.pieces, rule), head.height, with_next=True)
        found = [heading]
        for cells in table.rows:
            for row in self._row(table, cells, widths, room=self._height - head.height):
                under = Piece("rule", 0, row.height, sum(widths), soft=True)
                found.append(Block((*row.pieces, under), row.height, again=heading))
        # A short table stays whole; of a longer one two rows at least stand on either page.
        last = len(found) - 1
        return [
            replace(block, with_next=at < last and (last <= _SHORT or at <= 1 or at == last - 1))
            for at, block in enumerate(found)
        ]

    def _widths(self, table: Table) -> list[float]:
        """Widths of columns: as wide as what is in them, narrowed where that is too much."""
        columns = []
        for at, heading in enumerate(table.headings):
            cells = [(heading, True), *((row[at], False) for row in table.rows)]
            whole = max(width_of(self._theme, _CELL, text, strong=b) for text, b in cells)
            word = max(
                (
                    width_of(self._theme, _CELL, part, strong=b)
                    for text, b in cells
                    for part in text.split()
                ),
                default=0.0,
            )
            columns.append((word + 2 * _PAD + 1, whole + 2 * _PAD + 1))
        wanted = [whole for _, whole in columns]
        if sum(wanted) <= self._width:
            return wanted
        most = self._width / len(columns)
        least = [min(word, max(most, 0.3 * self._width)) for word, _ in columns]
        if sum(least) >= self._width:
            return [width * self._width / sum(least) for width in least]
        # What is left over goes to the columns by how much more they want.
        more = [max(0.0, whole - low) for (_, whole), low in zip(columns, least, strict=True)]
        spare = self._width - sum(least)
        return [low + spare * add / sum(more) for low, add in zip(least, more, strict=True)]

    def _row(
        self,
        table: Table,
        cells: Sequence[str],
        widths: Sequence[float],
        *,
        strong: bool = False,
        room: float = float("inf"),
    ) -> list[Block]:
        """A row; several where one would be higher than a page."""
        lines = [
            lines_of(self._theme, text, _CELL, width - 2 * _PAD, strong=strong)
            for text, width in zip(cells, widths, strict=True)
        ]
        most = max(1, int((room - 2 * _PAD) // (_LEAD * _CELL))) if room < float("inf") else 10**9
        found = []
        for start in range(0, max(1, *(len(held) for held in lines)), most):
            pieces: list[Piece] = []
            x = 0.0
            tall = 0
            for at, (held, width) in enumerate(zip(lines, widths, strict=True)):
                part = held[start : start + most]
                tall = max(tall, len(part))
                for number, line in enumerate(part):
                    wide = width_of(self._theme, _CELL, line, strong=strong)
                    left = x + width - _PAD - wide if at in table.numbers else x + _PAD
                    top = _PAD * 0.7 + number * _LEAD * _CELL
                    pieces.append(Piece("text", left, top, wide, 0, line, _CELL, strong))
                x += width
            found.append(Block(tuple(pieces), _LEAD * _CELL * max(tall, 1) + 1.4 * _PAD))
        return found

    # Pictures -----------------------------------------------------------------------------------

    def picture(
        self, made: LinePicture, words: str, pictures: dict[int, Callable[[QPainter], None]]
    ) -> list[Block]:
        """The pedigree on one page with its legend, and what it shows below it."""
        under = self._paragraph(words, _SMALL, soft=True)
        room = self._height - 46 - _LEAD * _HEADING - sum(block.height for block in under) - 60
        fitted = made.fitted(self._width / _UNIT, room / _UNIT)
        number = len(pictures)

        def paint(painter: QPainter) -> None:
            painter.scale(_UNIT, _UNIT)
            fitted.paint(painter)

        pictures[number] = paint
        tall = fitted.height * _UNIT
        piece = Piece("picture", 0, 0, self._width, tall, number=number)
        return [Block((piece,), tall + 20, with_next=True), *under, _space(20)]

    def photos(
        self,
        held: Sequence[tuple[PhotoOf, QImage | None]],
        pictures: dict[int, Callable[[QPainter], None]],
    ) -> list[Block]:
        """Photos two side by side with their captions; one that is not there is said to be so."""
        found = []
        half = (self._width - _GUTTER) / 2
        for start in range(0, len(held), 2):
            pieces: list[Piece] = []
            tall = 0.0
            for at, (photo, image) in enumerate(held[start : start + 2]):
                x, high = at * (half + _GUTTER), 0.0
                caption = photo.caption
                if image is None:
                    missing = tr("The photo {} is not with the book or cannot be shown.")
                    caption = f"{caption}. {missing.format(photo.name)}"
                else:
                    scale = min(half / image.width(), _PHOTO_HEIGHT / image.height())
                    wide, high = image.width() * scale, image.height() * scale
                    number = len(pictures)
                    pictures[number] = _photo_painter(image, wide, high)
                    pieces.append(Piece("picture", x, 0, wide, high, number=number))
                    high += 12
                said = text_pieces(self._theme, caption, _SMALL, half, x=x, y=high, soft=True)
                pieces += said
                tall = max(tall, high + _LEAD * _SMALL * len(said))
            found.append(Block(tuple(pieces), tall + 24))
        return found


def _photo_painter(image: QImage, width: float, height: float) -> Callable[[QPainter], None]:
    def paint(painter: QPainter) -> None:
        painter.drawImage(QRectF(0, 0, width, height), image)

    return paint
