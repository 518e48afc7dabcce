"""The rail of pages: one seed tag a page, the open page's tag pulled out towards the page."""

from __future__ import annotations

import math

from PySide6.QtCore import QEvent, QPointF, QRectF, QSize, Qt, Signal
from PySide6.QtGui import (
    QColor,
    QEnterEvent,
    QFontMetrics,
    QPainter,
    QPainterPath,
    QPaintEvent,
    QPen,
    QPolygonF,
)
from PySide6.QtWidgets import QAbstractButton, QButtonGroup, QSizePolicy, QVBoxLayout, QWidget

from pedigreeview.window.style import Colours, current, step

__all__ = ["Rail", "RailTag", "tag_path"]


def tag_path(
    box: QRectF, clip: float, hole: float = 0.0, *, hole_left: bool = True
) -> QPainterPath:
    """Outline of a seed tag: one clipped corner and a punched hole."""
    path = QPainterPath()
    path.addPolygon(
        QPolygonF(
            [
                QPointF(box.left() + clip, box.top()),
                QPointF(box.right(), box.top()),
                QPointF(box.right(), box.bottom()),
                QPointF(box.left(), box.bottom()),
                QPointF(box.left(), box.top() + clip),
            ]
        )
    )
    path.closeSubpath()
    if hole > 0:
        at = box.left() + 1.7 * hole
        punched = QPainterPath()
        punched.addEllipse(QPointF(at, box.center().y()), hole, hole)
        path = path.subtracted(punched)
    return path


class RailTag(QAbstractButton):
    """One page's tag."""

    def __init__(self, page: str, text: str, tip: str) -> None:
        super().__init__()
        self.page = page
        self._count = ""
        self.setText(text)
        self.setToolTip(tip)
        self.setAccessibleName(text)
        self.setAccessibleDescription(tip)
        self.setCheckable(True)
        self.setCursor(Qt.CursorShape.PointingHandCursor)
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setSizePolicy(QSizePolicy.Policy.Preferred, QSizePolicy.Policy.Maximum)

    def set_count(self, text: str) -> None:
        """A small figure at the tag's end, such as the number of problems."""
        self._count = text
        self.setAccessibleName(f"{self.text()} {text}".strip())
        self.updateGeometry()
        self.update()

    def sizeHint(self) -> QSize:
        metrics, s = QFontMetrics(self.font()), step()
        width = metrics.horizontalAdvance(f"{self.text()} {self._count}")
        return QSize(width + 6 * s, metrics.height() + 3 * s)

    def minimumSizeHint(self) -> QSize:
        # With large type in a low window the tags move together rather than off the screen.
        return QSize(self.sizeHint().width(), QFontMetrics(self.font()).height() + step() // 2)

    def enterEvent(self, event: QEnterEvent) -> None:
        super().enterEvent(event)
        self.update()

    def leaveEvent(self, event: QEvent) -> None:
        super().leaveEvent(event)
        self.update()

    def paintEvent(self, event: QPaintEvent) -> None:
        colours, s = current(), step()
        painter = QPainter(self)
        try:
            painter.setRenderHint(QPainter.RenderHint.Antialiasing)
            self._paint(painter, colours, s)
        finally:
            painter.end()

    def _paint(self, painter: QPainter, colours: Colours, s: int) -> None:
        box = QRectF(self.rect()).adjusted(1, 1.5, 2 if self.isChecked() else -s, -1.5)
        path = tag_path(box, 1.2 * s, 0.4 * s)
        if self.isChecked():
            fill, edge, ink = colours.sheet, colours.rule, colours.ink
        elif self.underMouse() and self.isEnabled():
            fill, edge, ink = colours.hover, colours.rule, colours.ink
        else:
            fill, edge, ink = QColor(0, 0, 0, 0), QColor(0, 0, 0, 0), colours.rail_ink
        if not self.isEnabled():
            ink = QColor(ink)
            ink.setAlphaF(0.45)
        if fill.alpha():
            painter.setPen(QPen(edge, 1))
            painter.setBrush(fill)
            painter.drawPath(path)
        else:
            painter.setPen(QPen(ink, max(1.0, s / 8)))
            painter.setBrush(Qt.BrushStyle.NoBrush)
            painter.drawEllipse(
                QPointF(box.left() + 1.7 * 0.4 * s, box.center().y()), 0.3 * s, 0.3 * s
            )
        if self.isChecked():
            painter.setPen(QPen(colours.accent, max(2.0, s / 4)))
            painter.drawLine(
                QPointF(box.left() + 2 * s, box.bottom() - 0.6 * s),
                QPointF(box.left() + 4 * s, box.bottom() - 0.6 * s),
            )
        text = box.adjusted(2 * s, 0, -s, 0)
        font = self.font()
        font.setBold(self.isChecked())
        painter.setFont(font)
        painter.setPen(ink)
        left = Qt.AlignmentFlag.AlignVCenter | Qt.AlignmentFlag.AlignLeft
        painter.drawText(text, int(left), self.text())
        if self._count:
            painter.setPen(colours.warn)
            right = Qt.AlignmentFlag.AlignVCenter | Qt.AlignmentFlag.AlignRight
            painter.drawText(text, int(right), self._count)
        if self.hasFocus():
            painter.setPen(QPen(colours.focus, max(2.0, s / 5)))
            painter.setBrush(Qt.BrushStyle.NoBrush)
            painter.drawPath(tag_path(box.adjusted(2, 2, -3, -2), 1.2 * s))


class Rail(QWidget):
    """The tags one above the other, under the program's mark."""

    chosen = Signal(str)

    def __init__(self) -> None:
        super().__init__()
        self.setObjectName("rail")
        self.setAttribute(Qt.WidgetAttribute.WA_StyledBackground)
        self._group = QButtonGroup(self)
        self._group.setExclusive(True)
        self._tags: dict[str, RailTag] = {}
        self.column = QVBoxLayout(self)
        self.column.setSpacing(max(2, step() // 2))
        self.column.setContentsMargins(step(), 2 * step(), 0, 2 * step())
        self._mark = _Mark()
        self.column.addWidget(self._mark)
        self.column.addSpacing(2 * step())
        self.column.addStretch(1)

    def add(self, page: str, text: str, tip: str) -> RailTag:
        """Add a page's tag at the end."""
        tag = RailTag(page, text, tip)
        self._group.addButton(tag)
        self._tags[page] = tag
        self.column.insertWidget(self.column.count() - 1, tag)
        tag.clicked.connect(lambda: self.chosen.emit(page))
        return tag

    def tag(self, page: str) -> RailTag:
        """The tag of a page."""
        return self._tags[page]

    def show_page(self, page: str) -> None:
        """Pull out the tag of the page; '' pulls out none."""
        if page in self._tags:
            self._tags[page].setChecked(True)
            return
        self._group.setExclusive(False)
        for tag in self._tags.values():
            tag.setChecked(False)
        self._group.setExclusive(True)


class _Mark(QWidget):
    """The program's mark: a knot with a seed line coming in on one side, grains on the other."""

    def __init__(self) -> None:
        super().__init__()
        self.setAccessibleName(self.tr("Crossing Book"))
        self.setSizePolicy(QSizePolicy.Policy.Preferred, QSizePolicy.Policy.Maximum)

    def sizeHint(self) -> QSize:
        return QSize(12 * step(), 5 * step())

    def minimumSizeHint(self) -> QSize:
        return QSize(self.sizeHint().width(), 3 * step())

    def paintEvent(self, event: QPaintEvent) -> None:
        painter = QPainter(self)
        try:
            painter.setRenderHint(QPainter.RenderHint.Antialiasing)
            high = min(5 * step(), self.height())
            paint_mark(painter, QRectF(0, 0, 1.5 * high, high), current())
        finally:
            painter.end()


def paint_mark(painter: QPainter, box: QRectF, colours: Colours) -> None:
    """Draw the mark into a box: a tag hanging from a knot."""
    unit = min(box.width() / 7.5, box.height() / 5)
    knot = QPointF(box.left() + 3.75 * unit, box.top() + 2.1 * unit)
    width = 0.22 * unit
    painter.setPen(QPen(colours.accent, width, Qt.PenStyle.SolidLine, Qt.PenCapStyle.RoundCap))
    painter.setBrush(Qt.BrushStyle.NoBrush)
    seed = QPainterPath(QPointF(box.left() + 0.9 * unit, box.top() + 0.5 * unit))
    seed.quadTo(
        QPointF(box.left() + 1.0 * unit, knot.y()), QPointF(knot.x() - 0.75 * unit, knot.y())
    )
    painter.drawPath(seed)
    painter.setPen(Qt.PenStyle.NoPen)
    painter.setBrush(colours.pollen)
    for part in range(6):
        t = part / 5.0
        x = knot.x() + 0.95 * unit + 1.85 * unit * math.sin(math.pi / 2 * t)
        y = knot.y() - 1.6 * unit * (1 - math.cos(math.pi / 2 * t))
        painter.drawEllipse(QPointF(x, y), 0.16 * unit, 0.16 * unit)
    painter.setPen(QPen(colours.accent, width))
    painter.setBrush(colours.sheet)
    painter.drawEllipse(knot, 0.62 * unit, 0.62 * unit)
    arm = 0.28 * unit
    for sign in (1, -1):
        painter.drawLine(
            QPointF(knot.x() - arm, knot.y() - sign * arm),
            QPointF(knot.x() + arm, knot.y() + sign * arm),
        )
    painter.drawLine(
        QPointF(knot.x(), knot.y() + 0.62 * unit), QPointF(knot.x(), knot.y() + 1.2 * unit)
    )
    tag = QRectF(knot.x() - 1.25 * unit, knot.y() + 1.2 * unit, 2.5 * unit, 1.35 * unit)
    painter.setPen(QPen(colours.accent, 0.7 * width))
    painter.drawPath(tag_path(tag, 0.42 * unit))
