"""A figure of curves over a count: the chance against the plants grown, with axes and names.

Curves are told apart by the way their lines are broken and by their names at the end, not by colour
alone.  Arrow keys and the mouse read the curves off at a number of plants.
"""

from __future__ import annotations

from bisect import bisect_right
from collections.abc import Sequence

from PySide6.QtCore import QEvent, QPointF, QRectF, QSize, Qt, Signal
from PySide6.QtGui import (
    QColor,
    QFocusEvent,
    QKeyEvent,
    QMouseEvent,
    QPainter,
    QPaintEvent,
    QPen,
    QPolygonF,
)
from PySide6.QtWidgets import QSizePolicy, QWidget

from pedigreeview.window.style import current, founder_colour, step
from pedigreeview.window.words import number as written

__all__ = ["Curve", "CurveFigure"]

Points = Sequence[tuple[int, float]]
Curve = tuple[str, Points]

_STYLES = (
    (Qt.PenStyle.SolidLine, 2.2),
    (Qt.PenStyle.DashLine, 2.0),
    (Qt.PenStyle.DotLine, 2.2),
    (Qt.PenStyle.DashDotLine, 2.0),
    (Qt.PenStyle.DashDotDotLine, 2.0),
)
_PALETTE = (3, 4, 6, 5, 8)
"""Of the founders' palette, those that are dark enough on paper and light enough on dark."""


class CurveFigure(QWidget):
    """Curves of a chance, 0 to 1, over a number of plants or seeds."""

    read = Signal(int)
    """The number of plants at which the curves are read off."""

    def __init__(self, across: str, upright: str) -> None:
        super().__init__()
        self._across, self._upright = across, upright
        self.curves: list[Curve] = []
        self.assurance = 0.95
        self.at: int | None = None
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setMouseTracking(True)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)
        self.setAccessibleName(self.tr("Figure: {} against {}").format(upright, across))

    def show_curves(self, curves: Sequence[Curve], assurance: float) -> None:
        """Show other curves with a line at the assurance."""
        self.curves = [curve for curve in curves[: len(_STYLES)] if curve[1]]
        self.assurance, self.at = assurance, None
        said = "; ".join(
            self.tr("{}: {:.0%} at {}").format(name, points[-1][1], points[-1][0])
            for name, points in self.curves
        )
        self.setAccessibleDescription(said)
        self.update()

    @property
    def most(self) -> int:
        """The largest count."""
        return max((points[-1][0] for _, points in self.curves), default=1)

    def value(self, points: Points, count: int) -> float:
        """The chance at a count, between its neighbours in proportion."""
        place = bisect_right([n for n, _ in points], count) - 1
        if place >= len(points) - 1:
            return points[-1][1]
        (low, one), (high, two) = points[max(0, place)], points[place + 1]
        return one + (two - one) * (count - low) / (high - low)

    def words(self) -> str:
        """What is read off, in words; '' where nothing is."""
        if self.at is None or not self.curves:
            return ""
        said = ", ".join(
            self.tr("{} {:.1%}").format(name, self.value(points, self.at))
            for name, points in self.curves
        )
        return self.tr("At {:,}: {}.").format(self.at, said)

    # Room ---------------------------------------------------------------------------------------

    def sizeHint(self) -> QSize:
        return QSize(60 * step(), 32 * step())

    def _plot(self) -> QRectF:
        metrics, s = self.fontMetrics(), step()
        left = metrics.horizontalAdvance("100%") + 2 * s
        names = max((metrics.horizontalAdvance(name) for name, _ in self.curves), default=0)
        right = min(self.width() // 3, names + 2 * s)
        top = metrics.height() + 1.5 * s
        foot = 2 * metrics.height() + 1.5 * s
        return QRectF(left, top, self.width() - left - right, self.height() - top - foot)

    def _x(self, plot: QRectF, count: float) -> float:
        return plot.left() + count / self.most * plot.width()

    def _y(self, plot: QRectF, chance: float) -> float:
        return plot.bottom() - chance * plot.height()

    # Painting -----------------------------------------------------------------------------------

    def paintEvent(self, event: QPaintEvent) -> None:
        colours, metrics = current(), self.fontMetrics()
        painter = QPainter(self)
        try:
            painter.setRenderHint(QPainter.RenderHint.Antialiasing)
            # The axes are not turned round, so neither are the numbers beside them.
            painter.setLayoutDirection(Qt.LayoutDirection.LeftToRight)
            plot = self._plot()
            self._axes(painter, plot)
            line = self._y(plot, self.assurance)
            painter.setPen(QPen(colours.accent, 1, Qt.PenStyle.DashLine))
            painter.drawLine(QPointF(plot.left(), line), QPointF(plot.right(), line))
            ends = self._ends(plot)
            for number, (name, points) in enumerate(self.curves):
                style, width = _STYLES[number]
                colour = self._colour(number)
                painter.setPen(QPen(colour, width, style))
                painter.drawPolyline(
                    QPolygonF([QPointF(self._x(plot, n), self._y(plot, p)) for n, p in points])
                )
                end = QPointF(plot.right(), self._y(plot, points[-1][1]))
                middle = ends[number]
                painter.setPen(QPen(colour, 1))
                painter.drawLine(end, QPointF(plot.right() + step(), middle))
                painter.setPen(colours.ink)
                box = QRectF(
                    plot.right() + 1.4 * step(),
                    middle - metrics.height() / 2,
                    9999,
                    metrics.height(),
                )
                painter.drawText(box, int(Qt.AlignmentFlag.AlignLeft), name)
            if self.at is not None:
                self._reading(painter, plot)
            if self.hasFocus():
                painter.setPen(colours.focus)
                painter.setBrush(Qt.BrushStyle.NoBrush)
                painter.drawRect(self.rect().adjusted(0, 0, -1, -1))
        finally:
            painter.end()

    def _colour(self, number: int) -> QColor:
        return founder_colour(_PALETTE[number])

    def _ends(self, plot: QRectF) -> list[float]:
        """Where the names stand: beside the ends of their curves, none on another."""
        from pedigreeview.drawing.spread import spread

        line = float(self.fontMetrics().height())
        wanted = [self._y(plot, points[-1][1]) for _, points in self.curves]
        order = sorted(range(len(wanted)), key=wanted.__getitem__)
        placed = spread([wanted[at] for at in order], [1.0] * len(order), [line] * (len(order) - 1))
        over = max(0.0, placed[-1] - plot.bottom()) if placed else 0.0
        under = max(0.0, plot.top() - placed[0]) if placed else 0.0
        found = [0.0] * len(wanted)
        for at, place in zip(order, placed, strict=True):
            found[at] = place - over + under
        return found

    def _axes(self, painter: QPainter, plot: QRectF) -> None:
        colours, metrics, s = current(), self.fontMetrics(), step()
        line = metrics.height()
        for part in range(5):
            chance = part / 4
            y = self._y(plot, chance)
            painter.setPen(QPen(colours.rule, 1))
            painter.drawLine(QPointF(plot.left(), y), QPointF(plot.right(), y))
            painter.setPen(colours.soft)
            box = QRectF(0, y - line / 2, plot.left() - s // 2, line)
            painter.drawText(box, int(Qt.AlignmentFlag.AlignRight), f"{chance:.0%}")
        painter.setPen(colours.ink)
        head = self.tr("{}; the broken line marks {:.3g}%").format(
            self._upright, 100 * self.assurance
        )
        shown = metrics.elidedText(head, Qt.TextElideMode.ElideRight, self.width())
        painter.drawText(QRectF(0, 0, self.width(), line), 0, shown)
        for count in _ticks(self.most):
            x = self._x(plot, count)
            painter.setPen(QPen(colours.rule, 1))
            painter.drawLine(QPointF(x, plot.bottom()), QPointF(x, plot.bottom() + s // 2))
            painter.setPen(colours.soft)
            box = QRectF(x - 60, plot.bottom() + s // 2, 120, line)
            painter.drawText(box, int(Qt.AlignmentFlag.AlignHCenter), written(count))
        painter.setPen(colours.ink)
        foot = QRectF(plot.left(), plot.bottom() + line + s // 2, plot.width(), line)
        painter.drawText(foot, int(Qt.AlignmentFlag.AlignHCenter), self._across)

    def _reading(self, painter: QPainter, plot: QRectF) -> None:
        assert self.at is not None
        x = self._x(plot, self.at)
        painter.setPen(QPen(current().soft, 1))
        painter.drawLine(QPointF(x, plot.top()), QPointF(x, plot.bottom()))
        painter.setPen(Qt.PenStyle.NoPen)
        for number, (_, points) in enumerate(self.curves):
            painter.setBrush(self._colour(number))
            painter.drawEllipse(QPointF(x, self._y(plot, self.value(points, self.at))), 3.5, 3.5)

    # Reading off --------------------------------------------------------------------------------

    def _put(self, count: int | None) -> None:
        held = None if count is None else max(0, min(self.most, count))
        if held != self.at:
            self.at = held
            self.update()
            self.read.emit(-1 if held is None else held)

    def mouseMoveEvent(self, event: QMouseEvent) -> None:
        plot = self._plot()
        inside = plot.left() <= event.position().x() <= plot.right() and self.curves
        part = (event.position().x() - plot.left()) / max(1.0, plot.width())
        self._put(round(part * self.most) if inside else None)

    def leaveEvent(self, event: QEvent) -> None:
        super().leaveEvent(event)
        if not self.hasFocus():
            self._put(None)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        wide = max(1, self.most // 20)
        moves = {
            Qt.Key.Key_Left: -1,
            Qt.Key.Key_Right: 1,
            Qt.Key.Key_PageUp: -wide,
            Qt.Key.Key_PageDown: wide,
        }
        if event.key() in moves and self.curves and not event.modifiers():
            start = self.at if self.at is not None else 0
            self._put(start + moves[Qt.Key(event.key())])
        elif event.key() == Qt.Key.Key_End and self.curves:
            self._put(self.most)
        elif event.key() == Qt.Key.Key_Home and self.curves:
            self._put(0)
        else:
            super().keyPressEvent(event)

    def focusInEvent(self, event: QFocusEvent) -> None:
        super().focusInEvent(event)
        self.update()

    def focusOutEvent(self, event: QFocusEvent) -> None:
        super().focusOutEvent(event)
        self.update()


def _ticks(most: int) -> list[int]:
    """Round numbers from 0 to the largest, about five."""
    raw = max(1.0, most / 5)
    size = 10 ** (len(str(int(raw))) - 1)
    gap = next(size * part for part in (1, 2, 5, 10) if size * part >= raw)
    return list(range(0, most + 1, int(gap)))
