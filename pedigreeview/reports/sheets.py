"""A picture made ready for paper: title, picture, legend, what the numbers stand on, the date."""

from __future__ import annotations

import datetime
from dataclasses import dataclass

from PySide6.QtCore import QPointF, QRectF
from PySide6.QtGui import QFontMetricsF, QPainter

from pedigreeview.drawing.legend import Entry, legend_entries, legend_height, paint_legend
from pedigreeview.drawing.painter import paint
from pedigreeview.drawing.placing import Placed
from pedigreeview.drawing.signs import colour, pen
from pedigreeview.drawing.tags import elided, font
from pedigreeview.drawing.theme import Theme

__all__ = ["Sheet", "compose"]

_MARGIN = 30.0
_LEAST_WIDTH = 660.0


@dataclass(frozen=True, slots=True)
class Sheet:
    """Everything on one drawing area, in picture units."""

    placed: Placed
    theme: Theme
    title: str
    below: str
    notes: tuple[str, ...]
    entries: tuple[Entry, ...]
    width: float
    height: float
    _notes_height: float

    def paint(self, painter: QPainter) -> None:
        """Paint the whole sheet from its upper left corner."""
        theme = self.theme
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.setRenderHint(QPainter.RenderHint.TextAntialiasing)
        painter.fillRect(QRectF(0, 0, self.width, self.height), colour(theme["ground"]))
        inner = self.width - 2 * _MARGIN
        painter.setPen(colour(theme["ink"]))
        size = theme.type["title"]
        painter.setFont(font(theme, size, strong=True))
        painter.drawText(
            QPointF(_MARGIN, _MARGIN + size), elided(theme, size, self.title, inner, strong=True)
        )
        painter.setPen(colour(theme["ink_soft"]))
        painter.setFont(font(theme, 13))
        painter.drawText(
            QPointF(_MARGIN, _MARGIN + size + 22), elided(theme, 13, self.below, inner)
        )
        left, top, width, height = self.placed.bounds
        start = _MARGIN + size + 42
        painter.save()
        painter.translate((self.width - width) / 2 - left, start - top)
        clip = QRectF(left - (self.width - width) / 2, top, self.width, height)
        paint(painter, self.placed, theme, detail=1.0, clip=clip)
        painter.restore()
        y = start + height + 24
        self._rule(painter, y)
        paint_legend(painter, self.entries, theme, _MARGIN, y + 14, inner)
        y += 14 + legend_height(self.entries, inner) + 8
        self._rule(painter, y)
        painter.setPen(colour(theme["ink_soft"]))
        painter.setFont(font(theme, 12))
        for note in self.notes:
            box = QRectF(_MARGIN, y + 8, inner, 1000)
            held = _wrapped(theme, note, inner)
            for at, line in enumerate(held):
                painter.drawText(QPointF(box.left(), box.top() + 14 + 16 * at), line)
            y += 16 * len(held) + 4

    def _rule(self, painter: QPainter, y: float) -> None:
        painter.setPen(pen(self.theme["paper_edge"], 0.8))
        painter.drawLine(QPointF(_MARGIN, y), QPointF(self.width - _MARGIN, y))


def _wrapped(theme: Theme, text: str, width: float) -> list[str]:
    """Lines of at most the width, broken at blanks; done here so that text stays text in SVG."""
    metrics = QFontMetricsF(font(theme, 12))
    lines: list[str] = []
    for word in text.split():
        trial = f"{lines[-1]} {word}" if lines else word
        if lines and metrics.horizontalAdvance(trial) <= width:
            lines[-1] = trial
        else:
            lines.append(word)
    return lines


def compose(placed: Placed, theme: Theme, *, title: str, below: str = "", date: str = "") -> Sheet:
    """Lay out the sheet for a picture."""
    entries = legend_entries(placed)
    width = max(placed.bounds[2] + 2 * _MARGIN, _LEAST_WIDTH)
    inner = width - 2 * _MARGIN
    notes = [note for note in (placed.view.base, placed.view.hidden_words()) if note]
    notes.append(f"Drawn on {date or datetime.date.today().isoformat()}.")
    notes_height = sum(16.0 * len(_wrapped(theme, note, inner)) + 4 for note in notes)
    height = (
        _MARGIN
        + theme.type["title"]
        + 42
        + placed.bounds[3]
        + 24
        + 14
        + legend_height(entries, inner)
        + 8
        + 8
        + notes_height
        + _MARGIN
    )
    return Sheet(placed, theme, title, below, tuple(notes), entries, width, height, notes_height)
