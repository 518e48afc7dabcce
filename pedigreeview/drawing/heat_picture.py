"""The heat map of a set of plants: a square of colours, codes beside it, the tree of the order.

One painter serves screen, SVG, PDF and PNG.  Colours run from paper to a deep tone in even steps of
lightness, so that grey tells them too; where a square has room for it, its value is printed in it.
Row i and column j of the table are plants i and j; the tree stands on the left, its root outermost.
"""

from __future__ import annotations

from dataclasses import dataclass, field
from functools import cached_property
from typing import TYPE_CHECKING

import numpy as np
from numpy.typing import NDArray
from PySide6.QtCore import QLineF, QPointF, QRectF, Qt
from PySide6.QtGui import QImage, QPainter, QPen

from pedigreeview.drawing.signs import colour, pen
from pedigreeview.drawing.tags import elided, font
from pedigreeview.drawing.theme import Theme, text_width
from pedigreeview.drawing.tinting import ramp

if TYPE_CHECKING:
    from pedigreeview.planning.clustering import Dendrogram

__all__ = [
    "NOTHING",
    "HeatFrame",
    "HeatPicture",
    "HeatShowing",
    "paint_heat",
    "paint_scale",
    "scale_height",
]

FloatArray = NDArray[np.float64]

_WIDEST_CODE = 150.0
_TREE = 120.0
_GAP = 6.0
_GRID_FROM = 9.0
"""Pixels of a square from which thin lines part it from its neighbours."""
_SINGLE_UP_TO = 60
"""Plants up to which every square is a shape of its own in a file, not a pixel of an image."""
_SMALLEST = 256
"""Pixels down to which the image is held in halves of its size."""
_TOPS = (0.125, 0.25, 0.5, 1.0, 2.0)


@dataclass(frozen=True, slots=True)
class HeatShowing:
    """What is brought out: the square under the mouse, that of the keys, the focus, a chosen pair.

    hover, cursor, chosen : (row, column), or None
    marked : row of the focus, or −1
    lit : rows that an explanation points at
    """

    hover: tuple[int, int] | None = None
    cursor: tuple[int, int] | None = None
    chosen: tuple[int, int] | None = None
    marked: int = -1
    lit: frozenset[int] = frozenset()


NOTHING = HeatShowing()


@dataclass(frozen=True, slots=True)
class HeatFrame:
    """Which part is shown where, in pixels.

    cell : side of a square
    x, y : how far the squares are scrolled
    width, height : of the whole area
    """

    cell: float
    x: float
    y: float
    width: float
    height: float


@dataclass(eq=False)
class HeatPicture:
    """A table with its colours, ready to be painted at any size.

    Parameters
    ----------
    codes : n plants, in the order of the table
    values : (n, n), each 0 or more
    theme : its paper and its tones
    tree : over the plants in this order, or None
    groups : rows of near-duplicates, one tuple for each group
    text : how much larger than usual the type is
    """

    codes: tuple[str, ...]
    values: FloatArray
    theme: Theme
    tree: Dendrogram | None = None
    groups: tuple[tuple[int, ...], ...] = ()
    text: float = 1.0
    _small: tuple[float, QImage] | None = field(default=None, init=False, repr=False)

    @property
    def count(self) -> int:
        """Plants."""
        return len(self.codes)

    @cached_property
    def top(self) -> float:
        """Value of the deepest tone: the next of 1/8, 1/4, 1/2, 1 above the largest."""
        most = float(self.values.max()) if self.values.size else 1.0
        return next((top for top in _TOPS if most <= top + 1e-9), most)

    @cached_property
    def colours(self) -> tuple[str, ...]:
        """Tones from 0 to `top`."""
        return ramp(self.theme)

    @cached_property
    def steps(self) -> NDArray[np.int64]:
        """(n, n) number of the tone of each square."""
        last = len(self.colours) - 1
        part = np.clip(self.values / self.top, 0.0, 1.0)
        return np.asarray(np.rint(part * last), np.int64)

    @cached_property
    def image(self) -> QImage:
        """n × n pixels, one a square."""
        table = np.array([int("ff" + held[1:], 16) for held in self.colours], np.uint32)
        pixels = np.ascontiguousarray(table[self.steps])
        count = self.count
        made = QImage(pixels.data, count, count, 4 * count, QImage.Format.Format_RGB32)
        # The numbers behind it go with this call; the copy stays.
        return made.copy()

    @cached_property
    def halved(self) -> tuple[QImage, ...]:
        """The image at a half, a quarter ... of its size, down to about `_SMALLEST` pixels.

        Made off the window's thread: from the next larger of them any size is made in no time,
        from the image of some thousand plants in a tenth of a second.
        """
        made = [self.image]
        while made[-1].width() > 2 * _SMALLEST:
            made.append(_smaller(made[-1], made[-1].width() // 2))
        return tuple(made[1:])

    def small_image(self, cell: float) -> QImage:
        """The image at less than one pixel a square, evenly made smaller; the last one is held."""
        side = max(1, round(self.count * cell))
        if self._small is None or self._small[0] != side:
            larger = [held for held in (self.image, *self.halved) if held.width() >= side]
            self._small = (side, _smaller(larger[-1], side))
        return self._small[1]

    # Room ---------------------------------------------------------------------------------------

    @property
    def type(self) -> float:
        """Size of the codes."""
        return self.theme.type["small"] * self.text

    @cached_property
    def names(self) -> float:
        """Room for the codes beside the squares and above them."""
        # On a large table the longest codes by letters stand for all.
        longest = sorted(self.codes, key=len)[-40:]
        wide = max((text_width(code, self.type, strong=True) for code in longest), default=0.0)
        return min(_WIDEST_CODE * self.text, max(30.0, wide)) + 2 * _GAP

    @property
    def tree_room(self) -> float:
        """Width of the tree, 0 without one."""
        return _TREE * min(self.text, 1.4) if self.tree is not None and self.tree.merges else 0.0

    @property
    def left(self) -> float:
        """Where the squares begin from the left."""
        return self.tree_room + self.names + (_GAP if self.groups else 0.0)

    @property
    def above(self) -> float:
        """Where they begin from the top."""
        return self.names

    def whole(self, cell: float) -> tuple[float, float]:
        """Width and height of everything at that size of a square."""
        return self.left + cell * self.count + 2, self.above + cell * self.count + 2

    def largest_cell(self) -> float:
        """Side of a square in which every value can be read."""
        return text_width("0.0000", self.type) + 10

    # What is where ------------------------------------------------------------------------------

    def at(self, frame: HeatFrame, x: float, y: float) -> tuple[int, int] | None:
        """Row and column of a square at a place; None beside the table."""
        column = (x - self.left + frame.x) / frame.cell
        row = (y - self.above + frame.y) / frame.cell
        if x < self.left or y < self.above or not (0 <= column < self.count > row >= 0):
            return None
        return int(row), int(column)

    def row_at(self, frame: HeatFrame, x: float, y: float) -> int:
        """Row of the code at a place, beside the squares or above them; −1 for none."""
        if x < self.left and y >= self.above and x >= self.tree_room:
            at = (y - self.above + frame.y) / frame.cell
        elif y < self.above and x >= self.left:
            at = (x - self.left + frame.x) / frame.cell
        else:
            return -1
        return int(at) if 0 <= at < self.count else -1

    def rect(self, frame: HeatFrame, row: int, column: int) -> QRectF:
        """Where a square lies."""
        return QRectF(
            self.left - frame.x + column * frame.cell,
            self.above - frame.y + row * frame.cell,
            frame.cell,
            frame.cell,
        )

    def shown(self, frame: HeatFrame) -> tuple[range, range]:
        """Rows and columns of which something can be seen."""
        rows = _seen(frame.y, frame.height - self.above, frame.cell, self.count)
        return rows, _seen(frame.x, frame.width - self.left, frame.cell, self.count)

    def word(self, row: int, column: int) -> str:
        """The value of a square as it is printed there."""
        return _decimal(float(self.values[row, column]), 4)


def _smaller(image: QImage, side: int) -> QImage:
    return image.scaled(
        side,
        side,
        Qt.AspectRatioMode.IgnoreAspectRatio,
        Qt.TransformationMode.SmoothTransformation,
    )


def _seen(start: float, room: float, cell: float, count: int) -> range:
    return range(max(0, int(start / cell)), max(0, min(count, int((start + room) / cell) + 1)))


def _decimal(value: float, places: int) -> str:
    return f"{value:.{places}f}".rstrip("0").rstrip(".") or "0"


# Painting ---------------------------------------------------------------------------------------


def paint_heat(
    painter: QPainter,
    picture: HeatPicture,
    frame: HeatFrame,
    showing: HeatShowing = NOTHING,
    *,
    shapes: bool = False,
) -> None:
    """Paint the part of the heat map that a frame holds.

    shapes : small tables as shapes rather than as an image, for files that are scaled
    """
    theme = picture.theme
    painter.setRenderHint(QPainter.RenderHint.Antialiasing, False)
    if not picture.count:
        return
    body = QRectF(
        picture.left,
        picture.above,
        max(0.0, min(frame.width - picture.left, picture.count * frame.cell - frame.x)),
        max(0.0, min(frame.height - picture.above, picture.count * frame.cell - frame.y)),
    )
    painter.save()
    painter.setClipRect(body)
    _squares(painter, picture, frame, shapes=shapes and picture.count <= _SINGLE_UP_TO)
    _values(painter, picture, frame)
    painter.setBrush(Qt.BrushStyle.NoBrush)
    for place, token, width in (
        (showing.hover, "hover", 1.0),
        (showing.chosen, "accent", 2.0),
        (showing.cursor, "select", 2.0),
    ):
        if place is not None:
            _cross_hair(painter, picture, frame, place, theme[token], width)
    painter.restore()
    painter.setPen(QPen(colour(theme["paper_edge"]), 1))
    painter.setBrush(Qt.BrushStyle.NoBrush)
    painter.drawRect(body)
    painter.setRenderHint(QPainter.RenderHint.Antialiasing, True)
    _codes(painter, picture, frame, showing)
    if picture.groups:
        _group_bars(painter, picture, frame)
    if picture.tree_room:
        _tree(painter, picture, frame)


def _squares(painter: QPainter, picture: HeatPicture, frame: HeatFrame, *, shapes: bool) -> None:
    rows, columns = picture.shown(frame)
    if not rows or not columns:
        return
    cell, theme = frame.cell, picture.theme
    if shapes:
        tones = [colour(held) for held in picture.colours]
        for row in rows:
            for column in columns:
                tone = tones[int(picture.steps[row, column])]
                painter.fillRect(picture.rect(frame, row, column), tone)
    elif cell < 1:
        held = picture.small_image(cell)
        painter.drawImage(QPointF(picture.left - frame.x, picture.above - frame.y), held)
    else:
        source = QRectF(columns.start, rows.start, len(columns), len(rows))
        target = QRectF(
            picture.left - frame.x + columns.start * cell,
            picture.above - frame.y + rows.start * cell,
            len(columns) * cell,
            len(rows) * cell,
        )
        painter.drawImage(target, picture.image, source)
    if cell >= _GRID_FROM:
        painter.setPen(QPen(colour(theme["ground"]), 1))
        low_x, high_x = picture.left, picture.left - frame.x + columns.stop * cell
        low_y, high_y = picture.above, picture.above - frame.y + rows.stop * cell
        painter.drawLines(
            [
                QLineF(low_x, y, high_x, y)
                for row in rows
                if (y := picture.above - frame.y + row * cell) > low_y
            ]
            + [
                QLineF(x, low_y, x, high_y)
                for column in columns
                if (x := picture.left - frame.x + column * cell) > low_x
            ]
        )


def _values(painter: QPainter, picture: HeatPicture, frame: HeatFrame) -> None:
    """Numbers in the squares: as many decimals as there is room for, or none at all."""
    size = picture.type
    room = frame.cell - 6
    places = next((p for p in (4, 3, 2) if text_width("0." + "0" * p, size) <= room), 0)
    if not places or frame.cell < size + 4:
        return
    painter.setFont(font(picture.theme, size))
    painter.setPen(colour(picture.theme["ink"]))
    rows, columns = picture.shown(frame)
    middle = Qt.AlignmentFlag.AlignCenter
    for row in rows:
        for column in columns:
            text = _decimal(float(picture.values[row, column]), places)
            painter.drawText(picture.rect(frame, row, column), middle, text)


def _cross_hair(
    painter: QPainter,
    picture: HeatPicture,
    frame: HeatFrame,
    place: tuple[int, int],
    token: str,
    width: float,
) -> None:
    rect = picture.rect(frame, *place)
    painter.setPen(QPen(colour(token, 0.45), 1))
    left, right = picture.left, picture.left - frame.x + picture.count * frame.cell
    top, foot = picture.above, picture.above - frame.y + picture.count * frame.cell
    painter.drawLines(
        [
            QLineF(left, rect.center().y(), rect.left(), rect.center().y()),
            QLineF(rect.right(), rect.center().y(), right, rect.center().y()),
            QLineF(rect.center().x(), top, rect.center().x(), rect.top()),
            QLineF(rect.center().x(), rect.bottom(), rect.center().x(), foot),
        ]
    )
    # A square of a pixel or two is lost without room around its outline.
    grow = max(0.0, (7.0 - frame.cell) / 2)
    painter.setPen(QPen(colour(token), width))
    painter.drawRect(rect.adjusted(-grow, -grow, grow - width / 2, grow - width / 2))


def _codes(painter: QPainter, picture: HeatPicture, frame: HeatFrame, showing: HeatShowing) -> None:
    theme, cell, size = picture.theme, frame.cell, picture.type
    line = size + 4
    every = max(1, int(np.ceil(line / cell)))
    rows, columns = picture.shown(frame)
    own_rows, own_columns = _brought_out(showing)
    room = picture.names - 2 * _GAP
    right = picture.tree_room + picture.names - _GAP

    def label(at: int, middle: float, *, across: bool, strong: bool) -> None:
        held = font(theme, size, strong=strong)
        token = theme["ink"] if strong or every == 1 else theme["ink_soft"]
        text = elided(theme, size, picture.codes[at], room, strong=strong)
        painter.save()
        if across:
            painter.translate(middle, picture.above - _GAP)
            painter.rotate(-90)
            rect = QRectF(0, -line / 2, room, line)
            flag = Qt.AlignmentFlag.AlignLeft
        else:
            rect = QRectF(right - room, middle - line / 2, room, line)
            flag = Qt.AlignmentFlag.AlignRight
        if strong:
            painter.fillRect(rect.adjusted(-2, 0, 2, 0), colour(theme["paper"]))
        painter.setFont(held)
        if at == showing.marked:
            token = theme["accent"]
        elif at in showing.lit:
            token = theme["lit"]
        painter.setPen(colour(token))
        painter.drawText(rect, flag | Qt.AlignmentFlag.AlignVCenter, text)
        painter.restore()

    # Those brought out come last, over the others.
    painter.save()
    painter.setClipRect(QRectF(0, picture.above, picture.left, frame.height - picture.above))
    start = picture.above - frame.y + cell / 2
    for at in _labelled(rows, every, own_rows):
        label(at, start + at * cell, across=False, strong=at in own_rows)
    painter.restore()
    painter.save()
    painter.setClipRect(QRectF(picture.left, 0, frame.width - picture.left, picture.above))
    start = picture.left - frame.x + cell / 2
    for at in _labelled(columns, every, own_columns):
        label(at, start + at * cell, across=True, strong=at in own_columns)
    painter.restore()


def _labelled(seen: range, every: int, own: list[int]) -> list[int]:
    """Rows whose codes are written: each n-th, but for those that one brought out would cover."""
    clear = [at for at in seen if at % every == 0 and all(abs(at - o) >= every for o in own)]
    return [*clear, *(at for at in own if at in seen)]


def _brought_out(showing: HeatShowing) -> tuple[list[int], list[int]]:
    """Rows and columns whose codes are shown strong, the most telling last."""
    places = [place for place in (showing.chosen, showing.cursor, showing.hover) if place]
    marked = [*sorted(showing.lit), *([showing.marked] if showing.marked >= 0 else [])]
    return [*marked, *(row for row, _ in places)], [*marked, *(column for _, column in places)]


def _group_bars(painter: QPainter, picture: HeatPicture, frame: HeatFrame) -> None:
    """A bar beside the rows of plants that are nearly the same."""
    painter.save()
    painter.setClipRect(QRectF(0, picture.above, picture.left, frame.height - picture.above))
    tone = colour(picture.theme["ink_soft"])
    gap = 1.5 if frame.cell >= 6 else 0.0
    for group in picture.groups:
        for start, stop in _runs(group):
            painter.fillRect(
                QRectF(
                    picture.left - 6,
                    picture.above - frame.y + start * frame.cell + gap,
                    3,
                    max(1.0, (stop - start) * frame.cell - 2 * gap),
                ),
                tone,
            )
    painter.restore()


def _runs(rows: tuple[int, ...]) -> list[tuple[int, int]]:
    """Runs of neighbouring numbers, as (first, one past the last)."""
    found: list[tuple[int, int]] = []
    for row in sorted(rows):
        if found and found[-1][1] == row:
            found[-1] = (found[-1][0], row + 1)
        else:
            found.append((row, row + 1))
    return found


def _tree(painter: QPainter, picture: HeatPicture, frame: HeatFrame) -> None:
    tree, theme = picture.tree, picture.theme
    assert tree is not None
    deepest = max((merge.height for merge in tree.merges), default=0.0) or 1.0
    right = picture.tree_room - 2
    wide = right - _GAP

    def x(height: float) -> float:
        return right - height / deepest * wide

    def y(place: float) -> float:
        return picture.above - frame.y + (place + 0.5) * frame.cell

    painter.save()
    painter.setClipRect(QRectF(0, picture.above, picture.tree_room, frame.height - picture.above))
    painter.setPen(pen(theme["line_soft"], 1))
    lines = []
    low, high = picture.above, frame.height
    for merge in tree.merges:
        one, other, joint = y(merge.left), y(merge.right), x(merge.height)
        if other < low or one > high:
            continue
        lines += [
            QLineF(x(merge.left_height), one, joint, one),
            QLineF(x(merge.right_height), other, joint, other),
            QLineF(joint, max(one, low - 1), joint, min(other, high + 1)),
        ]
    painter.drawLines(lines)
    painter.restore()
    _tree_scale(painter, picture, deepest, right, wide)


def _tree_scale(
    painter: QPainter, picture: HeatPicture, deepest: float, right: float, wide: float
) -> None:
    """How far apart groups are where they join, above the tree."""
    theme, size = picture.theme, picture.theme.type["tiny"] * picture.text
    foot = picture.above - 4
    painter.setPen(pen(theme["line_soft"], 1))
    painter.drawLine(QLineF(right - wide, foot, right, foot))
    for at in (right - wide, right):
        painter.drawLine(QLineF(at, foot - 3, at, foot))
    painter.setFont(font(theme, size))
    painter.setPen(colour(theme["ink_soft"]))
    line = size + 4
    rect = QRectF(right - wide, foot - line - 3, wide, line)
    down = Qt.AlignmentFlag.AlignBottom
    painter.drawText(rect, Qt.AlignmentFlag.AlignLeft | down, _decimal(deepest, 2))
    painter.drawText(rect, Qt.AlignmentFlag.AlignRight | down, "0")
    painter.drawText(rect, Qt.AlignmentFlag.AlignHCenter | down, "1 − R")


def _scale_line(picture: HeatPicture) -> float:
    """Height of a line of the scale; all of it takes two lines and the bar."""
    return picture.type * 1.35 + 2


def scale_height(picture: HeatPicture) -> float:
    """Height that `paint_scale` needs."""
    return 2 * _scale_line(picture) + max(6.0, picture.type * 0.9) + 6


def paint_scale(painter: QPainter, picture: HeatPicture, rect: QRectF, title: str) -> None:
    """The tones with their values, under a title; as tall as three lines of small type."""
    theme, size = picture.theme, picture.type
    line = _scale_line(picture)
    painter.setRenderHint(QPainter.RenderHint.Antialiasing, False)
    painter.setFont(font(theme, size))
    painter.setPen(colour(theme["ink_soft"]))
    head = QRectF(rect.left(), rect.top(), rect.width(), line)
    painter.drawText(head, Qt.AlignmentFlag.AlignLeft, title)
    bar = QRectF(rect.left(), rect.top() + line + 2, rect.width(), max(6.0, size * 0.9))
    step = bar.width() / len(picture.colours)
    for at, held in enumerate(picture.colours):
        left = bar.left() + at * step
        painter.fillRect(QRectF(left, bar.top(), step + 0.6, bar.height()), colour(held))
    painter.setBrush(Qt.BrushStyle.NoBrush)
    painter.setPen(QPen(colour(theme["paper_edge"]), 1))
    painter.drawRect(bar)
    painter.setPen(colour(theme["ink"]))
    below = QRectF(bar.left(), bar.bottom() + 2, bar.width(), line)
    for part, flag in (
        (0.0, Qt.AlignmentFlag.AlignLeft),
        (0.5, Qt.AlignmentFlag.AlignHCenter),
        (1.0, Qt.AlignmentFlag.AlignRight),
    ):
        painter.drawText(below, flag, _decimal(part * picture.top, 4))
