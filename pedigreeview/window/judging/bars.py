"""Small pictures of numbers: a bar, an effect with its interval, seen beside expected.

Each has its numbers in words as its accessible name, and none needs colour: seen is filled and
expected an outline, an interval a line with a dot.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from math import isfinite

from PySide6.QtCore import QPointF, QRectF, QSize, Qt
from PySide6.QtGui import QFontMetricsF, QPainter, QPaintEvent, QPen
from PySide6.QtWidgets import QSizePolicy, QWidget

from pedigreeview.window.style import current, mixed, step

__all__ = ["EffectBar", "IntervalRow", "IntervalRows", "PlainBar", "RatioBars"]


class PlainBar(QWidget):
    """One bar, from the middle of a pair of columns outwards or to the right.

    Parameters
    ----------
    share : length, 0 to 1
    words : the number in words
    outwards_left : whether it grows to the left
    of_whole : whether its full length is drawn as an outline, as for a share
    """

    def __init__(
        self, share: float, words: str, *, outwards_left: bool = False, of_whole: bool = False
    ) -> None:
        super().__init__()
        self.share = min(max(share, 0.0), 1.0)
        self._left, self._whole = outwards_left, of_whole
        self.setAccessibleName(words)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)

    def sizeHint(self) -> QSize:
        return QSize(8 * step(), round(1.1 * step()))

    def paintEvent(self, event: QPaintEvent) -> None:
        colours = current()
        painter = QPainter(self)
        try:
            whole = QRectF(0.5, 0.5, self.width() - 1, self.height() - 1)
            if self._whole:
                painter.setPen(QPen(colours.rule, 1))
                painter.drawRect(whole)
            wide = whole.width() * self.share
            x = whole.right() - wide if self._left else whole.left()
            painter.fillRect(QRectF(x, whole.top(), wide, whole.height()), colours.soft)
        finally:
            painter.end()


class EffectBar(QWidget):
    """A difference with its interval about zero.

    Parameters
    ----------
    value, low, high : the difference and its interval; without an interval only the dot
    reach : what the half width of the bar stands for
    words : the difference in words
    """

    def __init__(
        self, value: float, low: float | None, high: float | None, reach: float, words: str
    ) -> None:
        super().__init__()
        self._value, self._low, self._high = value, low, high
        self._reach = reach if reach > 0 and isfinite(reach) else 1.0
        self.setAccessibleName(words)
        self.setToolTip(words)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)

    def sizeHint(self) -> QSize:
        return QSize(22 * step(), 2 * step())

    def _x(self, value: float) -> float:
        half = self.width() / 2
        part = min(max(value / self._reach, -1.0), 1.0)
        return half + part * (half - step())

    def paintEvent(self, event: QPaintEvent) -> None:
        colours, s = current(), step()
        painter = QPainter(self)
        try:
            painter.setRenderHint(QPainter.RenderHint.Antialiasing)
            y, middle = self.height() / 2, self.width() / 2
            painter.setPen(QPen(colours.rule, 1))
            painter.drawLine(QPointF(0, y), QPointF(self.width(), y))
            painter.setPen(QPen(colours.soft, 1))
            painter.drawLine(QPointF(middle, 0), QPointF(middle, self.height()))
            clear = self._low is not None and self._high is not None
            across = clear and (self._low or 0.0) <= 0 <= (self._high or 0.0)
            ink = colours.soft if across or not clear else colours.accent
            if self._low is not None and self._high is not None:
                painter.setPen(QPen(ink, max(2.0, s / 4)))
                painter.drawLine(QPointF(self._x(self._low), y), QPointF(self._x(self._high), y))
            painter.setPen(Qt.PenStyle.NoPen)
            painter.setBrush(ink)
            painter.drawEllipse(QPointF(self._x(self._value), y), 0.5 * s, 0.5 * s)
        finally:
            painter.end()


class RatioBars(QWidget):
    """Counts of classes, filled, beside what a ratio expects, an outline.

    Parameters
    ----------
    classes, seen : one of each
    expected : of each class, or empty where no ratio is tested
    """

    def __init__(
        self, classes: Sequence[str], seen: Sequence[int], expected: Sequence[float] = ()
    ) -> None:
        super().__init__()
        self._classes, self._seen = list(classes), list(seen)
        self._expected = list(expected)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)
        words = [f"{name} {count}" for name, count in zip(classes, seen, strict=True)]
        if expected:
            words = [
                self.tr("{}, expected {}").format(word, f"{due:.4g}")
                for word, due in zip(words, expected, strict=True)
            ]
        self.setAccessibleName("; ".join(words))

    def _line(self) -> float:
        return 1.0 * self.fontMetrics().height()

    def _names(self) -> int:
        """Lines below the bars: a class of several traits has a word on each."""
        return max([1, *(len(name.split()) for name in self._classes)])

    def sizeHint(self) -> QSize:
        return QSize(40 * step(), round(14 * step() + (2 + self._names()) * self._line()))

    def paintEvent(self, event: QPaintEvent) -> None:
        colours, s = current(), step()
        painter = QPainter(self)
        try:
            painter.setRenderHint(QPainter.RenderHint.Antialiasing)
            line = self._line()
            top, floor = 1.6 * line, self.height() - (0.7 + self._names()) * line
            most = max([1.0, *map(float, self._seen), *self._expected])
            room = self.width() / max(1, len(self._classes))
            bar = min(4.5 * s, room * 0.3)
            metrics = QFontMetricsF(self.font())
            for at, name in enumerate(self._classes):
                middle = room * (at + 0.5)
                pairs = [(float(self._seen[at]), True)]
                if self._expected:
                    pairs.append((self._expected[at], False))
                left = middle - bar * len(pairs) / 2
                for count, seen in pairs:
                    high = (floor - top) * float(count) / most
                    box = QRectF(left + 2, floor - high, bar - 4, high)
                    if seen:
                        painter.fillRect(box, colours.accent)
                    else:
                        painter.setPen(QPen(colours.ink, 1.4, Qt.PenStyle.DashLine))
                        painter.setBrush(mixed(colours.sheet, colours.ink, 0.05))
                        painter.drawRect(box)
                    painter.setPen(colours.ink if seen else colours.soft)
                    text = f"{count:.3g}" if count < 1000 else f"{count:.0f}"
                    wide = metrics.horizontalAdvance(text)
                    painter.drawText(
                        QPointF(box.center().x() - wide / 2, box.top() - 0.3 * s), text
                    )
                    left += bar
                painter.setPen(colours.ink)
                words = [name] if self._names() == 1 else name.split()
                for below, word in enumerate(words):
                    shown = metrics.elidedText(word, Qt.TextElideMode.ElideRight, room - s)
                    wide = metrics.horizontalAdvance(shown)
                    place = QPointF(middle - wide / 2, floor + (1.1 + below) * line)
                    painter.drawText(place, shown)
            painter.setPen(QPen(colours.rule, 1))
            painter.drawLine(QPointF(0, floor), QPointF(self.width(), floor))
            self._key(painter, line)
        finally:
            painter.end()

    def _key(self, painter: QPainter, line: float) -> None:
        """What filled and outlined bars are, in the upper right corner."""
        if not self._expected:
            return
        colours, s = current(), step()
        metrics = QFontMetricsF(self.font())
        x = float(self.width())
        for text, seen in ((self.tr("expected"), False), (self.tr("seen"), True)):
            x -= metrics.horizontalAdvance(text)
            painter.setPen(colours.soft)
            painter.drawText(QPointF(x, 0.8 * line), text)
            box = QRectF(x - 1.6 * s, 0.8 * line - s, s, s)
            if seen:
                painter.fillRect(box, colours.accent)
            else:
                painter.setPen(QPen(colours.ink, 1.2, Qt.PenStyle.DashLine))
                painter.setBrush(Qt.BrushStyle.NoBrush)
                painter.drawRect(box)
            x -= 3 * s


@dataclass(frozen=True, slots=True)
class IntervalRow:
    """One line: a name, a value with its interval, and the value as measured."""

    name: str
    value: float
    low: float
    high: float
    raw: float | None
    text: str


class IntervalRows(QWidget):
    """Values with intervals below each other on one scale; the value as measured is an open ring.

    Parameters
    ----------
    rows : from the top
    words : what is shown, for a screen reader
    """

    def __init__(self, rows: Sequence[IntervalRow], words: str) -> None:
        super().__init__()
        self._rows = list(rows)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)
        said = "; ".join(f"{row.name} {row.text}" for row in rows)
        self.setAccessibleName(f"{words}: {said}")

    def _line(self) -> float:
        return self.fontMetrics().height() + 0.8 * step()

    def sizeHint(self) -> QSize:
        return QSize(50 * step(), round(self._line() * (len(self._rows) + 1)))

    def paintEvent(self, event: QPaintEvent) -> None:
        if not self._rows:
            return
        colours, s = current(), step()
        metrics = QFontMetricsF(self.font())
        painter = QPainter(self)
        try:
            painter.setRenderHint(QPainter.RenderHint.Antialiasing)
            ends = [value for row in self._rows for value in (row.low, row.high)]
            ends += [row.raw for row in self._rows if row.raw is not None]
            low, high = min(ends), max(ends)
            if high <= low:
                low, high = low - 1, high + 1
            names = max(metrics.horizontalAdvance(row.name) for row in self._rows)
            names = min(names, self.width() * 0.3)
            texts = max(metrics.horizontalAdvance(row.text) for row in self._rows)
            left, right = names + 2 * s, self.width() - texts - 2 * s
            if right - left < 6 * s:
                right = self.width() - s

            def across(value: float) -> float:
                return left + (value - low) / (high - low) * (right - left)

            for at, row in enumerate(self._rows):
                y = self._line() * (at + 0.5)
                base = y + metrics.ascent() / 2 - metrics.descent() / 2
                painter.setPen(QPen(colours.rule, 1))
                painter.drawLine(QPointF(left, y), QPointF(right, y))
                painter.setPen(colours.ink)
                shown = metrics.elidedText(row.name, Qt.TextElideMode.ElideRight, names)
                painter.drawText(QPointF(0, base), shown)
                painter.setPen(colours.soft)
                if right < self.width() - texts:
                    wide = metrics.horizontalAdvance(row.text)
                    painter.drawText(QPointF(self.width() - wide, base), row.text)
                painter.setPen(QPen(colours.accent, max(2.0, s / 4)))
                painter.drawLine(QPointF(across(row.low), y), QPointF(across(row.high), y))
                painter.setPen(Qt.PenStyle.NoPen)
                painter.setBrush(colours.accent)
                painter.drawEllipse(QPointF(across(row.value), y), 0.45 * s, 0.45 * s)
                if row.raw is not None:
                    painter.setPen(QPen(colours.ink, 1.4))
                    painter.setBrush(colours.sheet)
                    painter.drawEllipse(QPointF(across(row.raw), y), 0.4 * s, 0.4 * s)
            self._scale(painter, low, high, left, right)
        finally:
            painter.end()

    def _scale(self, painter: QPainter, low: float, high: float, left: float, right: float) -> None:
        metrics = QFontMetricsF(self.font())
        painter.setPen(current().soft)
        y = self.height() - metrics.descent() - 1
        for value, x in ((low, left), ((low + high) / 2, (left + right) / 2), (high, right)):
            text = f"{value:.3g}"
            painter.drawText(QPointF(x - metrics.horizontalAdvance(text) / 2, y), text)
