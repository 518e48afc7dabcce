"""What an empty book shows in place of a picture, and a book of one plant beside it: what is next.

The dashed tags of a cross still to be made are buttons that open the forms; a table can be brought
in by a button below them.  A single plant gets a dashed partner and a dashed selfing.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass

from PySide6.QtCore import QEvent, QObject, QPointF, QRect, QRectF, QSize, Qt, Signal
from PySide6.QtGui import QKeyEvent, QPainter, QPainterPath, QPaintEvent
from PySide6.QtWidgets import QAbstractButton, QPushButton, QWidget

from pedigreeview.drawing.blocks import Sign
from pedigreeview.drawing.lines import grains, rounded
from pedigreeview.drawing.signs import colour, female, male, pen, sign
from pedigreeview.drawing.tags import elided, font, tag_path
from pedigreeview.drawing.theme import Theme, sizes, theme
from pedigreeview.window.canvas import PedigreeCanvas
from pedigreeview.window.style import current_name

__all__ = ["Invitation", "TagButton"]

_WIDE, _HIGH, _APART = 156.0, 60.0, 108.0
_TALL = 240.0
"""Height of the drawing, from the upper edge of the parents to the lower one of the progeny."""
_LEAST = 0.5
_KNOT = 12.0

Spot = tuple[float, float]


class TagButton(QAbstractButton):
    """A dashed tag that can be pressed, by mouse or by key."""

    def __init__(self, parent: QWidget, text: str, below: str, name: str) -> None:
        super().__init__(parent)
        self.setText(text)
        self.below = below
        self.setAccessibleName(name)
        self.setToolTip(name)
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setCursor(Qt.CursorShape.PointingHandCursor)
        self.setAttribute(Qt.WidgetAttribute.WA_Hover)
        self.hide()

    def sizeHint(self) -> QSize:
        return QSize(round(_WIDE), round(_HIGH))

    def keyPressEvent(self, event: QKeyEvent) -> None:
        if event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter):
            self.click()
            return
        super().keyPressEvent(event)

    def paintEvent(self, event: QPaintEvent) -> None:
        look = theme(current_name())
        scale = self.height() / (_HIGH + 6)
        lit = self.underMouse() or self.hasFocus()
        painter = QPainter(self)
        try:
            painter.setLayoutDirection(Qt.LayoutDirection.LeftToRight)
            painter.setRenderHint(QPainter.RenderHint.Antialiasing)
            painter.scale(scale, scale)
            rect = QRectF(3, 3, self.width() / scale - 6, _HIGH)
            solid = Qt.PenStyle.SolidLine if self.hasFocus() else Qt.PenStyle.DashLine
            edge = look["accent"] if lit else look["ink_soft"]
            painter.setPen(pen(edge, 2.2 if self.hasFocus() else 1.4, solid))
            painter.setBrush(colour(look["band"] if self.isDown() else look["paper"]))
            painter.drawPath(tag_path(rect, sizes().corner))
            painter.setPen(pen(edge, 1.0))
            painter.setBrush(colour(look["ground"]))
            painter.drawEllipse(QPointF(rect.right() - 15, rect.top() + 15), 4.0, 4.0)
            room = rect.adjusted(12, 9, -26, -9)
            left = Qt.AlignmentFlag.AlignLeft
            painter.setFont(font(look, 15, strong=True))
            painter.setPen(colour(look["accent"]))
            said = elided(look, 15, self.text(), room.width(), strong=True)
            painter.drawText(room, left | Qt.AlignmentFlag.AlignTop, said)
            painter.setFont(font(look, 12))
            painter.setPen(colour(look["ink_soft"]))
            lower = room.adjusted(0, 0, 18, 0)
            said = elided(look, 12, self.below, lower.width())
            painter.drawText(lower, left | Qt.AlignmentFlag.AlignBottom, said)
        finally:
            painter.end()


@dataclass(frozen=True, slots=True)
class _Lines:
    """What is drawn between the tags, in pixels of the viewport."""

    full: tuple[tuple[Spot, ...], ...] = ()
    dotted: tuple[tuple[Spot, ...], ...] = ()
    knots: tuple[tuple[Sign, float, float], ...] = ()
    female: Spot | None = None
    male: Spot | None = None


class Invitation(QWidget):
    """Lies over the picture and lets the mouse through, but for its buttons."""

    wanted = Signal(str)
    """What is to be begun: variety, cross, table or selfing."""

    def __init__(self, canvas: PedigreeCanvas) -> None:
        super().__init__(canvas.viewport())
        self._canvas = canvas
        self.avoid: Callable[[], QRect] = QRect
        """What lies over the picture, in its viewport's pixels."""
        self.code: str | None = None
        """The only plant of the book; '' for an empty book; None while nothing is offered."""
        self.setAttribute(Qt.WidgetAttribute.WA_TransparentForMouseEvents)
        ground = canvas.viewport()
        add, plant = self.tr("+ a plant"), self.tr("Write down a variety from elsewhere ({})")
        self.seed = TagButton(ground, add, self.tr("seed parent"), plant.format("F3"))
        self.pollen = TagButton(ground, add, self.tr("pollen parent"), plant.format("F3"))
        self.cross = TagButton(
            ground,
            self.tr("+ a cross"),
            self.tr("their progeny"),
            self.tr("Write down a cross of two plants ({})").format("F4"),
        )
        self.table = QPushButton(self.tr("Bring in a table …"), ground)
        self.table.setToolTip(self.tr("Read plants from a table that you have"))
        self.partner = TagButton(
            ground,
            self.tr("+ a partner"),
            self.tr("cross it …"),
            self.tr("Write down a cross of this plant with another"),
        )
        self.selfed = TagButton(
            ground,
            self.tr("+ its seed"),
            self.tr("self it …"),
            self.tr("Write down a selfing of this plant"),
        )
        for button, what in (
            (self.seed, "variety"),
            (self.pollen, "variety"),
            (self.cross, "cross"),
            (self.table, "table"),
            (self.partner, "cross"),
            (self.selfed, "selfing"),
        ):
            button.hide()
            button.clicked.connect(lambda _=False, what=what: self.wanted.emit(what))
        self._lines = _Lines()
        self._words = QRectF()
        self._scale = 1.0
        self._at: object = None
        self.hide()
        ground.installEventFilter(self)

    def offer(self, code: str | None) -> None:
        """Offer what to begin with: '' in an empty book, a code beside the only plant, or None."""
        self.code, self._at = code, None
        for button in (self.seed, self.pollen, self.cross, self.table):
            button.setVisible(code == "")
        for button in (self.partner, self.selfed):
            button.setVisible(bool(code))
        self.setVisible(code is not None)
        self.lay()

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        """The tags go with the plant when the picture is moved."""
        if event.type() in (QEvent.Type.Resize, QEvent.Type.Paint) and self.code is not None:
            self.lay()
        return super().eventFilter(watched, event)

    def lay(self) -> None:
        """Lay the tags out anew, if anything has moved."""
        if self.code is None:
            return
        area = self._canvas.viewport().rect()
        plant = self._canvas.rect_of(self.code) if self.code else QRect()
        at = (area, plant, self.avoid() if self.code else None, self._canvas.text_scale())
        if at == self._at:
            return
        self._at = at
        self.setGeometry(area)
        if self.code:
            for button in (self.partner, self.selfed):
                button.setVisible(not plant.isEmpty())
            self._lines = _Lines()
            if not plant.isEmpty():
                self._beside(QRectF(plant))
        else:
            self._blank(QRectF(area))
        self.update()

    def _blank(self, area: QRectF) -> None:
        """A cross of two blank tags, in the middle of the ground."""
        text = self._canvas.text_scale()
        high = 44.0 * text
        button = self.table.sizeHint()
        fixed = high + button.height() + 24.0
        fits = min(text, (area.height() - 24 - fixed) / _TALL, (area.width() - 24) / 430.0)
        self._scale = scale = max(_LEAST, fits)
        side = (_WIDE + _APART) / 2
        middle = area.center().x()
        top = area.center().y() - (_TALL * scale + fixed) / 2 + high

        def spot(x: float, y: float) -> Spot:
            return middle + x * scale, top + y * scale

        knot, bar, last = 132.0, 96.0, _TALL - _HIGH
        for tag, x, y in ((self.seed, -side, 0.0), (self.pollen, side, 0.0), (self.cross, 0, last)):
            self._put(tag, *spot(x, y))
        gap = knot - _KNOT
        self._lines = _Lines(
            full=(
                (spot(-side, _HIGH), spot(-side, bar), spot(-6, bar), spot(-6, gap)),
                (spot(0, knot + _KNOT), spot(0, last)),
            ),
            dotted=((spot(side, _HIGH), spot(side, bar), spot(6, bar), spot(6, gap)),),
            knots=(("cross", *spot(0, knot)),),
            female=spot(-18, knot - 22),
            male=spot(18, knot - 22),
        )
        self._words = QRectF(area.left() + 24, top - high, area.width() - 48, high)
        _, below = spot(0, _TALL)
        wide = button.width() + 32
        self.table.setGeometry(
            QRectF(middle - wide / 2, below + 24, wide, button.height()).toRect()
        )

    def _beside(self, plant: QRectF) -> None:
        """A partner at the plant's side, where the card is not, and its selfed seed below."""
        self._words = QRectF()
        self._scale = scale = max(_LEAST, min(1.0 * self._canvas.text_scale(), plant.height() / 52))
        wide, high = _WIDE * scale, _HIGH * scale
        apart = plant.width() / 2 + 56 * scale + wide / 2
        area, card = QRectF(self.rect()), QRectF(self.avoid())
        right = QRectF(plant.center().x() + apart - wide / 2, plant.top(), wide, high)
        free = right.right() < area.right() and not right.intersects(card)
        way = 1.0 if free else -1.0
        x, y = plant.center().x(), plant.center().y() - high / 2
        partner = x + way * apart
        self._put(self.partner, partner, y)
        knot = plant.bottom() + 56 * scale
        cross = x + way * apart / 2
        bar = plant.bottom() + 22 * scale
        begin = x + way * plant.width() / 4
        below = knot + 44 * scale
        # Flush with the plant, for the card may lie close at its other side.
        self._put(self.selfed, x + way * max(0.0, wide - plant.width()) / 2, below)
        near, far = cross - way * 6 * scale, cross + way * 6 * scale
        top = knot - _KNOT * scale
        self._lines = _Lines(
            full=(
                ((begin, plant.bottom() + 4), (begin, bar), (near, bar), (near, top)),
                ((x, plant.bottom() + 4), (x, top)),
                ((x, knot + _KNOT * scale), (x, below)),
            ),
            dotted=(((partner, y + high), (partner, bar), (far, bar), (far, top)),),
            knots=(("cross", cross, knot), ("selfing", x, knot)),
        )

    def _put(self, tag: TagButton, middle: float, top: float) -> None:
        wide, high = (_WIDE + 6) * self._scale, (_HIGH + 6) * self._scale
        rect = QRectF(middle - wide / 2, top - 3 * self._scale, wide, high)
        tag.setGeometry(rect.toRect())

    def paintEvent(self, event: QPaintEvent) -> None:
        look, scale = theme(current_name()), self._scale
        painter = QPainter(self)
        try:
            painter.setLayoutDirection(Qt.LayoutDirection.LeftToRight)
            painter.setRenderHint(QPainter.RenderHint.Antialiasing)
            if not self._words.isNull():
                painter.setFont(font(look, 15.0 * self._canvas.text_scale()))
                painter.setPen(colour(look["ink_soft"]))
                middle = Qt.AlignmentFlag.AlignHCenter | Qt.AlignmentFlag.AlignTop
                words = self.tr("No plant is recorded in this book yet. Begin here:")
                painter.drawText(self._words, middle | Qt.TextFlag.TextWordWrap, words)
            _paint(painter, look, self._lines, scale)
        finally:
            painter.end()


def _paint(painter: QPainter, look: Theme, lines: _Lines, scale: float) -> None:
    ink, soft = look["line_soft"], look["ink_soft"]
    painter.setBrush(Qt.BrushStyle.NoBrush)
    painter.setPen(pen(ink, sizes().line * scale))
    for way in lines.full:
        painter.drawPath(rounded(list(way)))
    dots = QPainterPath()
    for way in lines.dotted:
        for x, y in grains(list(way), sizes().grid * scale):
            dots.addEllipse(QPointF(x, y), sizes().grain / 2 * scale, sizes().grain / 2 * scale)
    painter.fillPath(dots, colour(ink))
    if lines.female is not None:
        female(painter, *lines.female, 13 * scale, soft)
    if lines.male is not None:
        male(painter, *lines.male, 13 * scale, soft)
    for kind, x, y in lines.knots:
        half = _KNOT * scale
        painter.setPen(pen(look["knot_edge"], 1.3))
        painter.setBrush(colour(look["knot"]))
        painter.drawRoundedRect(QRectF(x - half, y - half, 2 * half, 2 * half), 6, 6)
        sign(painter, kind, x, y, 6.6 * scale, look["ink"])
