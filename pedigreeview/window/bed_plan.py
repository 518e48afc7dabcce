"""The beds: rows and the plants that stand in them, and a plant moved to another place.

Drag a plant to a place, or mark it and press M to type where it goes.
"""

from __future__ import annotations

import datetime
from dataclasses import dataclass
from typing import TYPE_CHECKING

from PySide6.QtCore import QEvent, QPoint, QPointF, QRectF, QSize, Qt, Signal
from PySide6.QtGui import (
    QFont,
    QFontMetrics,
    QHelpEvent,
    QKeyEvent,
    QMouseEvent,
    QPainter,
    QPaintEvent,
    QPen,
    QResizeEvent,
)
from PySide6.QtWidgets import QHBoxLayout, QInputDialog, QSizePolicy, QToolTip, QWidget

from pedigreeview.book.edits import Edit
from pedigreeview.book.recording.moving import BedMap, bed_map, move_plants
from pedigreeview.book.recording.place_names import GardenPlace
from pedigreeview.window.desk import Desk
from pedigreeview.window.labels import action_button, column, scrolled, sentence
from pedigreeview.window.rail import tag_path
from pedigreeview.window.style import current, step
from pedigreeview.window.words import count, named, status_word

if TYPE_CHECKING:
    from pedigreeview.network import PedigreeNetwork

__all__ = ["BedPlan"]

_SPARE = 2
"""Free places shown behind the last plant of a row."""
_MOST_SPARE = 60
"""Places of one row that are drawn; beyond them a gap is left out."""


@dataclass(slots=True)
class _Spot:
    """One place in the drawing: where, what stands there."""

    box: QRectF
    place: str
    codes: tuple[str, ...]


class _Ground(QWidget):
    """The drawing."""

    moved = Signal(str, str)
    """A plant was dragged to a place."""
    wanted = Signal(str)
    """A plant was double clicked."""
    marked = Signal(str)
    ask_place = Signal(str)

    def __init__(self) -> None:
        super().__init__()
        self.setAccessibleName(self.tr("Beds and rows"))
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setMouseTracking(True)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Minimum)
        self._map = BedMap((), ())
        self._names: dict[str, str] = {}
        self._faded: frozenset[str] = frozenset()
        self._spots: list[_Spot] = []
        self._titles: list[tuple[QRectF, str, bool]] = []
        self.code = ""
        self._from: QPoint | None = None
        self._drag: QPoint | None = None

    def show_map(self, beds: BedMap, names: dict[str, str], faded: frozenset[str]) -> None:
        """Draw these beds."""
        self._map, self._names, self._faded = beds, names, faded
        self._lay()
        self.update()

    def where(self, code: str) -> QPoint:
        """The middle of a plant's place; (-1, -1) if it has none."""
        for spot in self._spots:
            if code in spot.codes:
                return spot.box.center().toPoint()
        return QPoint(-1, -1)

    def spot_of(self, place: str) -> QPoint:
        """The middle of a place; (-1, -1) if it is not drawn."""
        for spot in self._spots:
            if spot.place == place:
                return spot.box.center().toPoint()
        return QPoint(-1, -1)

    def _lay(self) -> None:
        s = step()
        metrics = QFontMetrics(self.font())
        longest = max((metrics.horizontalAdvance(code) for code in self._codes()), default=0)
        wide = max(8 * s, min(16 * s, longest + 4 * s))
        high = metrics.height() * 1.0 + 2 * s
        gap = s / 2
        y = 0.0
        self._spots, self._titles = [], []
        for bed in self._map.beds:
            self._titles.append((QRectF(0, y, self.width(), 3 * s), bed.bed, True))
            y += 3.5 * s
            left = 12.0 * s if any(row.row for row in bed.rows) else 0.0
            room = max(1, int((self.width() - left - s) // (wide + gap)))
            for row in bed.rows:
                self._titles.append((QRectF(0, y, left - s, high), row.row, False))
                held = dict(row.standing)
                last = max(held, default=0)
                upto = min(last + _SPARE, max(_MOST_SPARE, len(held) + _SPARE))
                places: list[tuple[str, tuple[str, ...]]] = []
                if row.row or held:
                    for at in sorted({*range(1, upto + 1), *held}):
                        text = GardenPlace(bed.bed, row.row, at).text()
                        places.append((text, held.get(at, ())))
                whole = GardenPlace(bed.bed, row.row).text()
                places += [(whole, (code,)) for code in row.elsewhere]
                if not places:
                    places = [(whole, ())]
                for number, (place, codes) in enumerate(places):
                    box = QRectF(
                        left + (number % room) * (wide + gap),
                        y + (number // room) * (high + gap),
                        wide,
                        high,
                    )
                    self._spots.append(_Spot(box, place, codes))
                y += ((len(places) - 1) // room + 1) * (high + gap) + gap
            y += s
        self.setMinimumHeight(round(y))

    def _codes(self) -> list[str]:
        return [
            code
            for bed in self._map.beds
            for row in bed.rows
            for code in (*(c for _, held in row.standing for c in held), *row.elsewhere)
        ]

    def sizeHint(self) -> QSize:
        return QSize(60 * step(), self.minimumHeight())

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self._lay()

    def changeEvent(self, event: QEvent) -> None:
        super().changeEvent(event)
        if event.type() in (QEvent.Type.FontChange, QEvent.Type.StyleChange):
            self._lay()

    def paintEvent(self, event: QPaintEvent) -> None:
        painter = QPainter(self)
        try:
            painter.setRenderHint(QPainter.RenderHint.Antialiasing)
            self._paint(painter, QRectF(event.rect()))
        finally:
            painter.end()

    def _paint(self, painter: QPainter, clip: QRectF) -> None:
        c, s = current(), step()
        plain = QFont(self.font())
        strong = QFont(plain)
        strong.setBold(True)
        left = int(Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter)
        for box, text, is_bed in self._titles:
            painter.setFont(strong if is_bed else plain)
            painter.setPen(c.ink if is_bed else c.soft)
            shown = painter.fontMetrics().elidedText(
                text, Qt.TextElideMode.ElideRight, round(box.width())
            )
            painter.drawText(box, left, shown)
        target = self._at(self._drag) if self._drag is not None else None
        for spot in self._spots:
            if not spot.box.intersects(clip):
                continue
            if not spot.codes:
                painter.setPen(
                    QPen(c.accent if spot is target else c.rule, 1, Qt.PenStyle.DashLine)
                )
                painter.setBrush(Qt.BrushStyle.NoBrush)
                painter.drawRoundedRect(spot.box.adjusted(1, 1, -1, -1), s / 3, s / 3)
                painter.setPen(c.soft)
                painter.setFont(plain)
                number = spot.place.rpartition(" / ")[2]
                painter.drawText(spot.box, int(Qt.AlignmentFlag.AlignCenter), number)
                continue
            self._tag(painter, spot.box, spot.codes, c)
        if self._drag is not None and self.code:
            box = QRectF(0, 0, self._spots[0].box.width(), self._spots[0].box.height())
            box.moveCenter(QPointF(self._drag))
            painter.setOpacity(0.8)
            self._tag(painter, box, (self.code,), c)

    def _tag(self, painter: QPainter, box: QRectF, codes: tuple[str, ...], c: object) -> None:
        colours, s = current(), step()
        mine = self.code in codes
        painter.setOpacity(0.5 if set(codes) <= self._faded else 1.0)
        edge = colours.error if len(codes) > 1 else colours.accent if mine else colours.rule
        painter.setPen(QPen(edge, 2 if mine or len(codes) > 1 else 1))
        painter.setBrush(colours.paper)
        inner = box.adjusted(1, 1, -1, -1)
        painter.drawPath(tag_path(inner, 0.8 * s))
        font = QFont(self.font())
        font.setBold(mine)
        painter.setFont(font)
        painter.setPen(colours.ink)
        text = " + ".join(codes)
        shown = painter.fontMetrics().elidedText(
            text, Qt.TextElideMode.ElideMiddle, round(box.width() - 2 * s)
        )
        painter.drawText(inner, int(Qt.AlignmentFlag.AlignCenter), shown)
        painter.setOpacity(1.0)

    # Mouse and keys -----------------------------------------------------------------------------

    def _at(self, place: QPoint | None) -> _Spot | None:
        if place is None:
            return None
        return next((spot for spot in self._spots if spot.box.contains(QPointF(place))), None)

    def mark(self, code: str) -> None:
        """Mark a plant."""
        if code != self.code:
            self.code = code
            self.update()

    def mousePressEvent(self, event: QMouseEvent) -> None:
        spot = self._at(event.position().toPoint())
        if spot is not None and spot.codes and event.button() == Qt.MouseButton.LeftButton:
            self.mark(spot.codes[0])
            self.marked.emit(self.code)
            self._from = event.position().toPoint()

    def mouseMoveEvent(self, event: QMouseEvent) -> None:
        here = event.position().toPoint()
        if self._from is not None and (here - self._from).manhattanLength() > step():
            self._drag = here
            self.update()

    def mouseReleaseEvent(self, event: QMouseEvent) -> None:
        target = self._at(self._drag)
        dragged = self._drag is not None
        self._from = self._drag = None
        self.update()
        if dragged and target is not None and self.code not in target.codes:
            self.moved.emit(self.code, target.place)

    def mouseDoubleClickEvent(self, event: QMouseEvent) -> None:
        spot = self._at(event.position().toPoint())
        self._from = None
        if spot is not None and spot.codes:
            self.wanted.emit(spot.codes[0])

    def keyPressEvent(self, event: QKeyEvent) -> None:
        filled = [spot for spot in self._spots if spot.codes]
        at = next((n for n, spot in enumerate(filled) if self.code in spot.codes), -1)
        ways = {
            Qt.Key.Key_Right: 1,
            Qt.Key.Key_Down: 1,
            Qt.Key.Key_Left: -1,
            Qt.Key.Key_Up: -1,
        }
        key = Qt.Key(event.key())
        if key in ways and filled:
            at = max(0, min(at + ways[key], len(filled) - 1))
            self.mark(filled[at].codes[0])
            self.marked.emit(self.code)
        elif key == Qt.Key.Key_M and self.code:
            self.ask_place.emit(self.code)
        elif key in (Qt.Key.Key_Return, Qt.Key.Key_Enter) and self.code:
            self.wanted.emit(self.code)
        elif key == Qt.Key.Key_Escape and self._drag is not None:
            self._from = self._drag = None
            self.update()
        else:
            super().keyPressEvent(event)

    def event(self, event: QEvent) -> bool:
        if event.type() == QEvent.Type.ToolTip and isinstance(event, QHelpEvent):
            spot = self._at(event.pos())
            if spot is not None and spot.codes:
                lines = [self._names.get(code, code) for code in spot.codes]
                QToolTip.showText(event.globalPos(), "\n".join([*lines, spot.place]), self)
            else:
                QToolTip.hideText()
            return True
        return super().event(event)


class BedPlan(QWidget):
    """The beds with a line for what is marked and what has no place yet."""

    plant_wanted = Signal(str)
    marked = Signal(str)

    def __init__(self, desk: Desk) -> None:
        super().__init__()
        self._desk = desk
        s = step()
        body = column(s)
        self.setLayout(body)
        row = QHBoxLayout()
        row.setSpacing(s)
        self.said = sentence("", "soft")
        row.addWidget(self.said, 1)
        self.move_button = action_button(self.tr("Move …"), lambda: self.ask(self.ground.code))
        self.move_button.setToolTip(self.tr("Type where the marked plant goes (M)"))
        row.addWidget(self.move_button)
        body.addLayout(row)
        self.ground = _Ground()
        body.addWidget(scrolled(self.ground), 1)
        self.ground.moved.connect(self.move_to)
        self.ground.wanted.connect(self.plant_wanted)
        self.ground.marked.connect(self._marked)
        self.ground.ask_place.connect(self.ask)

    def show_network(self, net: PedigreeNetwork | None) -> None:
        """The beds of another book, or of the same one after an edit."""
        if net is None:
            self.ground.show_map(BedMap((), ()), {}, frozenset())
            return
        book = net.book
        beds = bed_map(book)
        names = {}
        for code, plant in book.plants.items():
            if plant.place:
                words = [named(book, code), status_word(plant.status)]
                names[code] = ", ".join(word for word in words if word)
        self.ground.show_map(beds, names, frozenset())
        self._tell(beds)

    def _tell(self, beds: BedMap) -> None:
        if not beds.beds:
            self.said.setText(
                self.tr(
                    "No plant has a place yet. Write places as 'Bed 2 / row 3 / 7': bed, row, and "
                    "the position counted from the stake."
                )
            )
            self.move_button.setEnabled(bool(self.ground.code))
            return
        text = count(len(beds.beds), self.tr("bed"), self.tr("beds"))
        without = len(beds.without_place)
        if without:
            text += "; " + self.tr("{} without a place").format(
                count(without, self.tr("plant"), self.tr("plants"))
            )
        for place, codes in beds.twice_used[:3]:
            text += "; " + self.tr("{} are both in {}").format(", ".join(codes), place)
        self.said.setText(text)
        self.move_button.setEnabled(bool(self.ground.code))

    def mark(self, code: str) -> None:
        """The plant that the window is at."""
        self.ground.mark(code)
        self.move_button.setEnabled(bool(code))

    def _marked(self, code: str) -> None:
        self.move_button.setEnabled(True)
        self.marked.emit(code)

    def ask(self, code: str) -> None:
        """Ask where a plant goes."""
        book = self._desk.book
        if book is None or code not in book.plants:
            return
        dialog = QInputDialog(self)
        dialog.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        dialog.setWindowTitle(self.tr("Move {}").format(code))
        dialog.setLabelText(self.tr("Bed / row / position, such as 'Bed 2 / row 3 / 7'"))
        dialog.setTextValue(book.plants[code].place)
        dialog.textValueSelected.connect(lambda text: self.move_to(code, text))
        dialog.open()

    def move_to(self, code: str, place: str) -> None:
        """Move a plant, and note where it stood."""
        today = datetime.date.today().isoformat()

        def edit(edit: Edit) -> None:
            move_plants(edit, {code: place}, date=today)

        self._desk.record(self.tr("moving {} to {}").format(code, place or "?"), edit)
