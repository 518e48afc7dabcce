"""The tag that a card is: a head with its buttons, room for text below, and where it lies.

It lies at the right side of the stage where that hides nothing, folded to a strip with its title if
need be; else where it hides least, or where the person has laid it.  It can be folded and closed.
Its text ends between two lines.  What stands on it: `card`.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import Literal

from PySide6.QtCore import QPoint, QPointF, QRectF, QSize, QSizeF, Qt, Signal
from PySide6.QtGui import QColor, QFontMetrics, QKeyEvent, QPainter, QPaintEvent, QPen
from PySide6.QtWidgets import QApplication, QHBoxLayout, QLabel, QVBoxLayout, QWidget

from pedigreeview.drawing.free_ground import Ground
from pedigreeview.drawing.free_spots import Spot, home_spot, settled_spot, spot_at, spot_for
from pedigreeview.window.card_foot import CardFoot
from pedigreeview.window.card_head import CardHead
from pedigreeview.window.card_rows import Row
from pedigreeview.window.labels import column, plain_button, rule, scrolled
from pedigreeview.window.rail import tag_path
from pedigreeview.window.style import current, step

__all__ = ["CardTag"]

_PASSES = 3
"""So often it is measured anew: rows may shift by a little with the height."""
_LEAST = 22
"""Steps of height that the open card has at least: its head and some lines."""


@dataclass(frozen=True, slots=True)
class _Ended:
    """How the card was made to end between two lines."""

    place: QRectF
    """What it was given room for."""
    tall: int
    """How tall all of it is."""
    height: int
    """The height that it took."""
    rows: Sequence[Row]


class CardTag(QWidget):
    """An empty card."""

    pin_wanted = Signal(str)
    lit = Signal(object)
    """Paths to light up in the picture; an empty list: none that the card asks for."""
    closed = Signal()
    laid_wanted = Signal()
    """It was opened or folded, or holds more than before: it wants another spot."""

    def __init__(self, parent: QWidget) -> None:
        super().__init__(parent)
        self._stage = parent
        self.setObjectName("card")
        self.code = ""
        self.moved = False
        """Whether the person has laid it somewhere; it then stays there."""
        self.wish: Literal["", "open", "folded"] = ""
        """What the person wants of it; '': open where there is room, else folded."""
        self.folded = False
        self.short = False
        """Whether the strip is folded further, to the code and two buttons."""
        self._laid_for = ""
        self._narrowed: tuple[object, int] = (None, 0)
        """A view of a picture, and the width that the card took for it where that is less."""
        self._ended: _Ended | None = None
        s = step()
        outer = QVBoxLayout(self)
        outer.setContentsMargins(3 * s, s // 2, s // 2, s)
        outer.setSpacing(0)
        self._outer = outer
        self._head = CardHead(self)
        head = QHBoxLayout(self._head)
        head.setContentsMargins(0, s // 2, s, s // 2)
        head.setSpacing(max(2, s // 3))
        self._title = column(0)
        head.addLayout(self._title, 1)
        self.pin_button = plain_button("", "", lambda: self.pin_wanted.emit(self.code))
        self.pin_button.setCheckable(True)
        self.fold_button = plain_button("", "", self.turn)
        self.close_button = plain_button("✕", self.tr("Close the card"), self.shut)
        for button in (self.pin_button, self.fold_button, self.close_button):
            head.addWidget(button, 0, Qt.AlignmentFlag.AlignVCenter)
        outer.addWidget(self._head)
        self._line = rule()
        outer.addWidget(self._line)
        inner = QWidget()
        self._body = column(s)
        self._body.setContentsMargins(0, s, 2 * s, s)
        inner.setLayout(self._body)
        self._area = scrolled(inner)
        outer.addWidget(self._area, 1)
        self._foot = CardFoot(self._area)
        self._brief: QLabel | None = None
        """What stands below the title while the card is folded."""

    # Where it lies ------------------------------------------------------------------------------

    def wanted_width(self) -> int:
        """Its width where there is room."""
        return 40 * step()

    def open_width(self, view: object = None) -> int:
        """Its width on a view of a picture: where it had to be narrower there, it stays so.

        view : what stays equal while the same picture is seen at the same scale; None: as before
        """
        if view is not None and view != self._narrowed[0]:
            self._narrowed = (view, self.wanted_width())
        narrow = self._narrowed[1]
        return min(narrow, self.wanted_width()) if narrow else self.wanted_width()

    def hold_width(self) -> None:
        """Stay as wide as it is for as long as the same view of a picture is seen."""
        if not self.folded and not self.moved:
            self._narrowed = (self._narrowed[0], self.width())

    def strip_size(self, *, short: bool = False) -> QSize:
        """Its size when only its title is left; short: the code and two buttons alone."""
        s = step()
        buttons = [self.fold_button, self.close_button]
        if not short:
            buttons.append(self.pin_button)
        width = (5 if short else 7) * s + len(buttons) * max(2, s // 3)
        high, widest = 0, 0
        # What was taken off the head is its child for a moment more.
        for item in map(self._title.itemAt, range(self._title.count())):
            label = item.widget() if item is not None else None
            if isinstance(label, QLabel) and label.text() and not (short and label is self._brief):
                label.ensurePolished()
                metrics = QFontMetrics(label.font())
                widest = max(widest, metrics.horizontalAdvance(label.text()))
                high += metrics.height()
        for button in buttons:
            width += button.sizeHint().width()
        button_high = self.close_button.sizeHint().height()
        if short:
            high = max(button_high, high) + round(1.8 * s)
        else:
            high = max(button_high + 3 * s, high + round(2.4 * s))
        # The strips of most plants are of one width, so that they keep their place.
        return QSize(-(-(width + widest) // (5 * s)) * 5 * s, high)

    def say_brief(self, *parts: str) -> None:
        """What stands below the title while the card is folded, as much as the title has room."""
        if self._brief is None:
            return
        self._brief.ensurePolished()
        metrics = QFontMetrics(self._brief.font())
        room = 14 * metrics.averageCharWidth()
        text = ""
        for part in filter(None, parts):
            longer = f"{text} · {part}" if text else part
            if not text or metrics.horizontalAdvance(longer) <= room:
                text = longer
        self._brief.setText(text)
        self._brief.setVisible(self.folded and not self.short and bool(text))

    def _open_sizes(self) -> list[QSizeF]:
        """The sizes in which it can lie open, the best first: as tall as its text, then less."""
        s, room = step(), self._stage.size()
        gap = 2 * s
        tallest, sizes = room.height() - gap, []
        for width in (self.wanted_width(), 35 * s, 30 * s):
            width = min(width, self.open_width(), room.width() - gap)
            whole = min(self._tall(width), tallest)
            for part in (1.0, 0.75, 0.5, 0.35, 0.0):
                height = max(whole * part, min(whole, _LEAST * s))
                sizes.append(QSizeF(max(10, width), max(10.0, round(height))))
        return list({(size.width(), size.height()): size for size in sizes}.values())

    def _tall(self, width: int) -> int:
        """Height that shows all of it at a width."""
        s = step()
        inner = width - 3 * s - s // 2 - round(1.4 * s)
        height = self._body.heightForWidth(inner)
        return self._head.sizeHint().height() + max(height, 12 * s) + 3 * s

    def move_to(self, place: QPoint) -> None:
        """Lay it somewhere by hand, within the page."""
        self.moved = True
        self.move(self._within(place))

    def let_go(self) -> None:
        """Let it be laid anew, even with the mouse or the keys on it."""
        self._laid_for = ""

    def turn(self) -> None:
        """Fold it to its title, or open it again."""
        self.wish = "open" if self.folded else "folded"
        self._laid_for = ""
        self.laid_wanted.emit()

    def wants_strip(self, *, fold: bool) -> bool:
        """Whether it shall be folded, even where there is room for all of it.

        fold : as what is looked at asks for
        """
        return self.wish == "folded" or (fold and self.wish != "open")

    def has_home(self, lying: Ground, *, strip: bool) -> bool:
        """Whether it can lie, open or as a strip, at the right side and hide nothing."""
        sizes = [QSizeF(self.strip_size())] if strip else self._open_sizes()
        return home_spot(lying, sizes, float(step())) is not None

    def lie(self, lying: Ground, *, fold: bool = False) -> bool:
        """Lie at the right side, if need be folded, else where it hides least, unless laid by hand.

        fold : fold to the title strip unless the person wants it open
        Returns whether nothing is hidden that had better be seen.
        """
        strip = self.wants_strip(fold=fold)
        if self.moved:
            self._set_folded(strip)
            self.resize(self._moved_size())
            self.move(self._within(self.pos(), lying.around))
            self._lie_at(QRectF(self.geometry()))
            return True
        gap = float(step())
        was = QRectF(self.geometry()) if self._laid_for else None
        if not self.folded and self._laid_for == self.code and self._in_use():
            here = QRectF(self.geometry())
            if not here.intersects(lying.tag) and lying.around.contains(here):
                self._grow(lying, here)
                return True
        spot, folded, short = self._spot(lying, gap, was, strip=strip)
        self._laid_for = self.code
        self._set_folded(folded, short=short)
        self._lie_at(spot.rect)
        return spot.good

    def _spot(
        self, lying: Ground, gap: float, was: QRectF | None, *, strip: bool
    ) -> tuple[Spot, bool, bool]:
        """Where it lies best, whether folded there, and whether to the code and two buttons.

        It would rather be folded at its own place than wander over the picture.
        """
        sizes = self._open_sizes()
        strips = [(short, [QSizeF(self.strip_size(short=short))]) for short in (False, True)]
        if not strip:
            settled = settled_spot(lying, sizes, gap, was)
            if settled is not None:
                return settled, False, False
        if strip or self.wish != "open":
            for short, size in strips:
                settled = settled_spot(lying, size, gap, was)
                if settled is not None:
                    return settled, True, short
        if not strip:
            spot = spot_for(lying, sizes, gap, was)
            if spot.good or self.wish == "open":
                return spot, False, False
        for short, size in strips:
            spot = spot_for(lying, size, gap, was)
            if spot.good:
                return spot, True, short
        return spot, True, True

    def lie_in(self, place: QRectF) -> None:
        """Lie in a place that the picture has made for it, at its right end; folded if it must."""
        gap, sizes = float(step()), self._open_sizes()
        tall = place.height() >= sizes[-1].height() + 2 * gap
        if self.wish == "folded" or not tall:
            self._set_folded(True, short=place.height() < self.strip_size().height())
            # Of one width for all plants, so that its title keeps its place.
            wide = min(30.0 * step(), place.width() - 2 * gap)
            sizes = [QSizeF(self.strip_size(short=self.short)).expandedTo(QSizeF(wide, 0.0))]
        else:
            self._set_folded(False)
        self._laid_for = self.code
        spot = spot_for(Ground(place, QRectF(place.topLeft(), QSizeF(0, 0))), sizes, gap)
        self._lie_at(spot.rect)

    def _lie_at(self, place: QRectF) -> None:
        """Lie in a place; open, no taller than the lines that it shows whole."""
        if self.folded:
            self.setGeometry(place.toRect())
            return
        rect, tall = place.toRect(), self._tall(round(place.width()))
        ended = self._ended
        if ended is not None and (ended.place, ended.tall) == (place, tall):
            rect.setHeight(ended.height)
            self.setGeometry(rect)
            # New parts are shown with the next events, and only then have their places.
            if self._foot.measure() == ended.rows:
                return
            rect = place.toRect()
        self._foot.waits = True
        self.setGeometry(rect)
        for _ in range(_PASSES):
            self._outer.activate()
            self._body.activate()
            self._foot.measure()
            room = self._area.viewport().height()
            less = room - self._foot.room_for(room)
            if not less:
                break
            rect.setHeight(rect.height() - less)
            self.setGeometry(rect)
        self._ended = _Ended(place, tall, rect.height(), self._foot.measure())
        self._foot.waits = False

    def _grow(self, lying: Ground, here: QRectF) -> None:
        """Show more of the text below, if nothing that is in sight now is hidden by it."""
        room = lying.around.bottom() - here.top() - step()
        taller = QRectF(here)
        taller.setHeight(min(float(self._tall(self.width())), room))
        if taller.height() > here.height():
            now, then = spot_at(lying, here), spot_at(lying, taller)
            if (then.hidden, then.forbidden) == (now.hidden, now.forbidden):
                here = taller
        self._lie_at(here)

    def _moved_size(self) -> QSize:
        if self.folded:
            return self.strip_size()
        size = self._open_sizes()[0]
        room = self._stage.height() - self.y() - step()
        return QSize(round(size.width()), max(30 * step(), min(round(size.height()), room)))

    def _in_use(self) -> bool:
        """Whether the mouse or the keys are on it, so that it had better not move."""
        focus = QApplication.focusWidget()
        return self.underMouse() or (focus is not None and self.isAncestorOf(focus))

    def _set_folded(self, folded: bool, *, short: bool = False) -> None:
        self.folded, self.short = folded, folded and short
        s = step()
        above, below = (0, s // 2) if self.short else (s // 2, s)
        self._outer.setContentsMargins(3 * s, above, s // 2, below)
        self._line.setVisible(not folded)
        if self._brief is not None:
            brief = folded and not self.short and bool(self._brief.text())
            self._brief.setVisible(brief)
        self.pin_button.setVisible(not self.short)
        self._area.setVisible(not folded)
        self.fold_button.setText("▾" if folded else "▴")
        name = self.tr("Open the card") if folded else self.tr("Fold the card to its title")
        self.fold_button.setAccessibleName(name)
        self.fold_button.setToolTip(name)

    def _within(self, place: QPoint, around: QRectF | None = None) -> QPoint:
        room = self._stage.rect() if around is None else around.toRect()
        x = max(room.left(), min(place.x(), room.left() + room.width() - self.width()))
        y = max(room.top(), min(place.y(), room.top() + room.height() - self.height()))
        return QPoint(x, y)

    def shut(self) -> None:
        """Put the card away."""
        self._laid_for = ""
        self.hide()
        self.lit.emit([])
        self.closed.emit()

    def keyPressEvent(self, event: QKeyEvent) -> None:
        if event.key() == Qt.Key.Key_Escape:
            self.shut()
            return
        super().keyPressEvent(event)

    def paintEvent(self, event: QPaintEvent) -> None:
        colours, s = current(), step()
        painter = QPainter(self)
        try:
            painter.setRenderHint(QPainter.RenderHint.Antialiasing)
            box = QRectF(self.rect()).adjusted(1, 1, -4, -4)
            shade = QColor(0, 0, 0, 26)
            painter.setPen(Qt.PenStyle.NoPen)
            painter.setBrush(shade)
            painter.drawPath(tag_path(box.translated(3, 3), 2.2 * s))
            painter.setBrush(colours.paper)
            painter.setPen(QPen(colours.rule, 1.2))
            painter.drawPath(tag_path(box, 2.2 * s))
            painter.setPen(QPen(colours.soft, 1.2))
            painter.setBrush(colours.window)
            middle = self._head.geometry().center().y() + s / 4
            painter.drawEllipse(QPointF(1.6 * s, middle), 0.55 * s, 0.55 * s)
        finally:
            painter.end()
