"""The legend as one narrow column, by kind of mark: for a place beside the picture."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass

from PySide6.QtCore import QPointF, QRectF
from PySide6.QtGui import QFontMetricsF, QPainter

from pedigreeview.drawing.legend import Entry, draw_count, draw_sample, group_of
from pedigreeview.drawing.legend_picks import RESERVE, ground_below, pick_out
from pedigreeview.drawing.signs import colour
from pedigreeview.drawing.tags import font
from pedigreeview.drawing.theme import Theme, theme

__all__ = ["Row", "legend_list", "list_height", "paint_list"]

_SAMPLE, _AIR = 46.0, 10.0
_SCALE = 0.78
"""Of a sample, against its size in the wide legend."""
_ROW, _LINE, _HEAD, _BEFORE = 29.0, 15.0, 20.0, 8.0
_TAG_MORE = 3.0
"""Further height of a line with a tag, for the ground round it."""


@dataclass(frozen=True, slots=True)
class Row:
    """One line of the column: a heading, or a mark with its words."""

    top: float
    height: float
    lines: tuple[str, ...]
    entry: Entry | None = None


def legend_list(
    entries: Sequence[Entry], width: float, heads: Mapping[str, str] | None = None
) -> tuple[Row, ...]:
    """The rows of the column at a width, from above.

    heads : headings in another language, by those of `group_of`
    """
    heads = heads or {}
    rows: list[Row] = []
    metrics = QFontMetricsF(font(theme("light"), theme("light").type["legend"]))
    group, y = "", 0.0
    for entry in entries:
        here = group_of(entry)
        if here != group:
            y += _BEFORE if rows else 0.0
            rows.append(Row(y, _HEAD, (heads.get(here, here),)))
            y, group = y + _HEAD, here
        lines = _wrapped(entry.words, metrics, width - _SAMPLE - _AIR)
        more = RESERVE.get(entry.mark, _TAG_MORE if here == "Tags" else 0.0)
        high = max(_ROW + more, len(lines) * _LINE + 4)
        rows.append(Row(y, high, lines, entry))
        y += high
    return tuple(rows)


def list_height(entries: Sequence[Entry], width: float) -> float:
    """Height that the column takes at a width."""
    rows = legend_list(entries, width)
    return rows[-1].top + rows[-1].height if rows else 0.0


def paint_list(painter: QPainter, rows: Sequence[Row], look: Theme, x: float, y: float) -> None:
    """Paint the rows with their upper left corner at a place."""
    size = look.type["legend"]
    for row in rows:
        top = y + row.top
        if row.entry is None:
            painter.setFont(font(look, size * 0.9, strong=True))
            painter.setPen(colour(look["ink_soft"]))
            painter.drawText(QPointF(x, top + size), row.lines[0])
            continue
        _sample(painter, row, look, x, top)
        painter.setFont(font(look, size))
        painter.setPen(colour(look["ink"]))
        middle = top + row.height / 2 + size * 0.36
        for at, line in enumerate(row.lines):
            shift = (at - (len(row.lines) - 1) / 2) * _LINE
            painter.drawText(QPointF(x + _SAMPLE + _AIR, middle + shift), line)
        if row.entry.count and len(row.lines) == 1:
            draw_count(painter, row.entry, look, x + _SAMPLE + _AIR, middle)


def _sample(painter: QPainter, row: Row, look: Theme, x: float, top: float) -> None:
    """The mark of a row; a tag lies on the ground of the picture, with what is meant ringed."""
    assert row.entry is not None
    mark = row.entry.mark
    tagged = group_of(row.entry) == "Tags"
    if tagged:
        ground_below(painter, QRectF(x, top + 1, _SAMPLE + 5, row.height - 2), look)
    # A tab hangs below its tag.
    up = RESERVE["tabs"] / 2 if mark == "tabs" else 0.0
    painter.save()
    painter.translate(x, top + (row.height - 34.0 * _SCALE) / 2 - up)
    painter.scale(_SCALE, _SCALE)
    draw_sample(painter, row.entry, look, QRectF(0, 0, _SAMPLE / _SCALE, 34.0))
    if tagged:
        pick_out(painter, mark, look, 4.0, 1.0, 0.54)
    painter.restore()


def _wrapped(words: str, metrics: QFontMetricsF, room: float) -> tuple[str, ...]:
    lines: list[str] = []
    for word in words.split():
        longer = f"{lines[-1]} {word}" if lines else word
        if lines and metrics.horizontalAdvance(longer) <= room:
            lines[-1] = longer
        else:
            lines.append(word)
    return tuple(lines) or ("",)
