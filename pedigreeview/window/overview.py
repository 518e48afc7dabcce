"""The map of the whole book on the screen: bands of generations, zoomed each way by itself.

Mouse: drag pans, the wheel zooms about the pointer (with Ctrl across alone, with Shift down alone),
two fingers on a touchpad pan, a click marks a plant and brings out its relatives, a double click
asks for it in focus; a double click on the ground fits the map; picking many: see `picking`.  Keys
walk as in the picture.  What it shares with the picture: `picture_area`.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable

from PySide6.QtCore import QEvent, QPoint, QPointF, QRect, QRectF, Qt, Signal
from PySide6.QtGui import (
    QAccessible,
    QAccessibleEvent,
    QHelpEvent,
    QImage,
    QKeyEvent,
    QMouseEvent,
    QPainter,
    QPaintEvent,
    QResizeEvent,
    QWheelEvent,
)
from PySide6.QtWidgets import QApplication, QToolTip, QWidget

from pedigreeview.drawing.overview import Overview
from pedigreeview.drawing.overview_painter import OverviewPainter
from pedigreeview.drawing.overview_picks import PickedRows, codes_kept
from pedigreeview.drawing.overview_raster import Showing
from pedigreeview.drawing.picked import draw_band
from pedigreeview.drawing.signs import colour
from pedigreeview.drawing.theme import Theme, theme
from pedigreeview.drawing.tinting import Tint
from pedigreeview.window.canvas_keys import walk_word
from pedigreeview.window.gestures import pan_of, pinch_of
from pedigreeview.window.map_access import spoken_of_map
from pedigreeview.window.overview_corner import corner_rect, draw_corner, place_in_corner
from pedigreeview.window.overview_frame import MapFrame
from pedigreeview.window.overview_words import band_words, foot_words, paint_foot, tint_words
from pedigreeview.window.picking import Pickable, Picking
from pedigreeview.window.style import current_name
from pedigreeview.window.words import number

__all__ = ["BookMap"]


class BookMap(MapFrame):
    """The overview of a whole book."""

    plant_wanted = Signal(str)
    """A plant is asked for in focus."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setObjectName("bookMap")
        self.setAccessibleName(self.tr("Map of the whole book"))
        self._theme: Theme = theme(current_name())
        self._painter: OverviewPainter | None = None
        self._showing = Showing()
        self._names: dict[str, str] = {}
        self._tint: Tint | None = None
        self._press: QPoint | None = None
        self._dragging = self._in_corner = False
        self._small: QImage | None = None
        self.plant_tips = True
        """Whether a tip says what a plant is; False where a card does."""
        self._picked_rows = PickedRows(None, ())
        self.picking = Picking(
            self,
            Pickable(
                at=lambda spot: [code] if (code := self.at(spot)) else [],
                inside=self._codes_inside,
                all_shown=self._codes_inside,
                current=self.selected_code,
            ),
        )
        self.picking.changed.connect(self._picked)
        self.words_for: Callable[[str], str] = lambda code: ""
        """What a screen reader says of a plant; '' for the words of the tip."""
        self.description_of: Callable[[str], str] = lambda code: ""
        """What it may add."""
        self.spoken = spoken_of_map(self)
        self._describe()

    # What is shown ------------------------------------------------------------------------------

    def show_overview(self, overview: Overview | None, names: dict[str, str] | None = None) -> None:
        """Show the map of another book; `names` of plants by code, for the tips."""
        self._overview = overview
        self._names = names or {}
        self._showing, self._tint, self._small = Showing(), None, None
        self._painter = OverviewPainter(overview, self._theme) if overview is not None else None
        self._find_picked()
        self.fit()
        self._describe()
        self._changed()

    def recolour(self, overview: Overview) -> None:
        """Show the same map with colours for other founders."""
        if self._overview is None or overview is self._overview:
            return
        self._overview, self._small = overview, None
        self._painter = OverviewPainter(overview, self._theme)
        self._find_picked()
        self._changed()

    def set_theme(self, wanted: Theme | str) -> None:
        """Change the colours."""
        self._theme = theme(wanted) if isinstance(wanted, str) else wanted
        self._small = None
        if self._overview is not None:
            self._painter = OverviewPainter(self._overview, self._theme)
        self._changed()

    def set_selected(self, code: str) -> None:
        """Mark a plant and bring out its relatives, without saying so by signal; '' marks none."""
        overview = self._overview
        row = overview.row(code) if overview is not None and code else -1
        if overview is None or row == self._showing.selected:
            return
        if row < 0:
            self._show(selected=-1, ancestors=None, descendants=None)
        else:
            links = overview.links
            above, below = links.ancestors(row), links.descendants(row)
            self._show(selected=row, ancestors=above, descendants=below)
        self._describe()

    def selected_code(self) -> str:
        """The marked plant, or ''."""
        row = self._showing.selected
        return self._overview.codes[row] if self._overview is not None and row >= 0 else ""

    def set_tint(self, tint: Tint | None) -> None:
        """Colour plants by a value instead of by founders; None: by founders again."""
        self._tint = tint
        self._show(tint=None if tint is None else tint.rgb)

    def set_picked(self, codes: Iterable[str]) -> None:
        """Mark plants as picked without saying so by signal."""
        before = self.picking.codes
        self.picking.set(codes)
        if self.picking.codes is not before:
            self._find_picked()

    def moving(self) -> bool:
        """Whether the map is being dragged."""
        return self._dragging or self._in_corner or self.picking.drawing

    def _picked(self, codes: tuple[str, ...]) -> None:
        self._point_at(-1)
        self._find_picked()
        self.picked.emit(codes)

    def _find_picked(self) -> None:
        self._picked_rows = PickedRows(self._overview, self.picking.codes)

    def spoken_words(self, code: str) -> str:
        """What a screen reader says of a plant; '' for the words of the tip."""
        return self.words_for(code)

    def spoken_more(self, code: str) -> str:
        """What a screen reader may add."""
        return self.description_of(code)

    def _codes_inside(self, band: QRect | None = None) -> list[str]:
        """Plants in a band, or all, but those that a filter leaves out."""
        if self._overview is None:
            return []
        return codes_kept(self._overview, self.frame(), self._showing, band)

    def set_faded(self, codes: Iterable[str] = ()) -> None:
        """Put plants back, such as those that do not fit a filter."""
        self._leave(codes, "faded")

    def set_hidden(self, codes: Iterable[str] = ()) -> None:
        """Leave plants out."""
        self._leave(codes, "hidden")

    def _leave(self, codes: Iterable[str], how: str) -> None:
        held = frozenset(codes)
        rows = self._overview.rows_of(held) if self._overview is not None and held else None
        self._show(**{how: rows})

    def _show(self, **changed: object) -> None:
        """Show something else; running sums of what stays are kept."""
        names = ("selected", "ancestors", "descendants", "hover", "faded", "hidden", "tint")
        held = {name: getattr(self._showing, name) for name in names}
        sums = {name: sum_ for name, sum_ in self._showing.sums.items() if name not in changed}
        held.update(changed)
        tint = self._tint
        self._showing = Showing(
            **held,
            classes=tint.classes if tint is not None else None,
            words=tint.word if tint is not None else None,
            sums=sums,
        )
        self._changed()

    def summary(self) -> str:
        """The map in words: plants, generations, the fullest one, and what is marked."""
        overview = self._overview
        if overview is None or not len(overview):
            return self.tr("No plants yet.")
        said = [
            self.tr("{} plants in {} bands; the fullest is {} with {}.").format(
                number(len(overview)),
                len(overview.counts),
                band_words(int(overview.generations[overview.fullest()])),
                number(int(overview.counts.max())),
            )
        ]
        shown = self._showing
        if shown.selected >= 0 and shown.ancestors is not None and shown.descendants is not None:
            said.append(
                self.tr("{} is marked: {} ancestors, {} descendants.").format(
                    self.words_of(shown.selected),
                    number(int(shown.ancestors.sum())),
                    number(int(shown.descendants.sum())),
                )
            )
        return " ".join(said)

    def words_of(self, row: int) -> str:
        """Code, name, generation and the value of the tint of one plant."""
        overview = self._overview
        assert overview is not None
        code = overview.codes[row]
        name = self._names.get(code, "")
        said = [f"{code} {name}".strip(), band_words(int(overview.generations[overview.band[row]]))]
        if self._tint is not None:
            said.append(tint_words(self._tint.key, self._tint.word(row)))
        return ", ".join(said)

    def _describe(self) -> None:
        self.setAccessibleDescription(self.summary())
        if QAccessible.isActive() and self.hasFocus():
            event = QAccessibleEvent(self, QAccessible.Event.DescriptionChanged)
            QAccessible.updateAccessibility(event)
            if self.selected_code():
                # The marked plant is the first of the children.
                event = QAccessibleEvent(self, QAccessible.Event.Focus)
                event.setChild(0)
                QAccessible.updateAccessibility(event)

    # Painting -----------------------------------------------------------------------------------

    def paintEvent(self, event: QPaintEvent) -> None:
        painter = QPainter(self.viewport())
        try:
            # A painter goes by the application's direction, not by that of its widget.
            painter.setLayoutDirection(Qt.LayoutDirection.LeftToRight)
            area = self.viewport().rect()
            if self._painter is None or self._overview is None or not len(self._overview):
                painter.fillRect(area, colour(self._theme["ground"]))
                painter.setPen(colour(self._theme["ink_soft"]))
                painter.drawText(
                    area,
                    Qt.AlignmentFlag.AlignCenter,
                    self.tr(
                        "No plants yet.\n\nF3 writes down a variety from elsewhere, "
                        "F4 a cross of two."
                    ),
                )
            else:
                self._painter.paint(
                    painter, self.frame(), self._showing, self.viewport().devicePixelRatioF()
                )
                self._picked_rows.paint(painter, self.frame(), self._theme)
                self._foot(painter)
                self._corner(painter)
                draw_band(painter, self.picking.band, self._theme)
            self._ring(painter, self._theme, area)
        finally:
            painter.end()

    def foot_words(self) -> str:
        """What the colours, bars and lines mean, as the map was drawn last."""
        if self._painter is None:
            return ""
        key = self._tint.key if self._tint is not None else None
        return foot_words(self._painter.drawn, key, self.selected_code())

    def _foot(self, painter: QPainter) -> None:
        """What is drawn, in words below it."""
        area = QRectF(self.viewport().rect())
        corner = self._corner_rect()
        if not corner.isNull():
            area.setRight(corner.left() - 8)
        paint_foot(painter, area, self.foot_words(), self._theme, self._text)

    def _corner_rect(self) -> QRectF:
        """Where the small map lies; null while it would not help."""
        return QRectF() if self.all_shown() else corner_rect(self.viewport().rect())

    def _corner(self, painter: QPainter) -> None:
        rect = self._corner_rect()
        if rect.isNull() or self._painter is None or self._overview is None:
            return
        if self._small is None:
            ratio = self.viewport().devicePixelRatioF()
            self._small = self._painter.locator(int(rect.width()), int(rect.height()), ratio)
        draw_corner(painter, rect, self._small, self._overview, self.frame(), self._theme)

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        if self._fitted:
            self.fit()

    # Mouse --------------------------------------------------------------------------------------

    def mousePressEvent(self, event: QMouseEvent) -> None:
        if event.button() == Qt.MouseButton.LeftButton:
            self._press = event.position().toPoint()
            self._dragging = False
            self._in_corner = self._corner_rect().contains(event.position())
            if self._in_corner:
                self._go_by_corner(event.position())
        event.accept()

    def mouseMoveEvent(self, event: QMouseEvent) -> None:
        spot = event.position().toPoint()
        if self._press is not None and event.buttons() & Qt.MouseButton.LeftButton:
            if self._in_corner:
                self._go_by_corner(event.position())
                return
            far = (spot - self._press).manhattanLength()
            if not self._dragging and far < QApplication.startDragDistance():
                return
            self._dragging = True
            if self._overview is not None:
                self.pan_by(QPointF(spot - self._press))
            self._press = spot
            self.viewport().setCursor(Qt.CursorShape.ClosedHandCursor)
            return
        self._point_at(self.row_at(spot))

    def mouseReleaseEvent(self, event: QMouseEvent) -> None:
        if event.button() != Qt.MouseButton.LeftButton or self._press is None:
            return
        taken = self._dragging or self._in_corner
        self._press, self._dragging, self._in_corner = None, False, False
        self.viewport().unsetCursor()
        if not taken:
            self._mark(self.at(event.position().toPoint()))

    def mouseDoubleClickEvent(self, event: QMouseEvent) -> None:
        code = self.at(event.position().toPoint())
        if code:
            self.plant_wanted.emit(code)
        elif not self._corner_rect().contains(event.position()):
            self.fit()
        event.accept()

    def _go_by_corner(self, point: QPointF) -> None:
        rect, overview = self._corner_rect(), self._overview
        if overview is None or rect.isNull():
            return
        shown = self.frame()
        x, y = place_in_corner(point, rect, overview)
        self._fitted = False
        wide, high = (shown.width - shown.margin) / shown.across, shown.height / shown.down
        self._go_to(x - wide / 2, y - high / 2)

    def _mark(self, code: str) -> None:
        if code != self.selected_code():
            self.set_selected(code)
            self.selected.emit(code)

    def _point_at(self, row: int) -> None:
        if row == self._showing.hover:
            return
        self._show(hover=row)
        shape = Qt.CursorShape.PointingHandCursor if row >= 0 else Qt.CursorShape.ArrowCursor
        self.viewport().setCursor(shape)
        overview = self._overview
        self.hovered.emit(overview.codes[row] if overview is not None and row >= 0 else "")

    def leaveEvent(self, event: QEvent) -> None:
        self._point_at(-1)
        super().leaveEvent(event)

    def wheelEvent(self, event: QWheelEvent) -> None:
        if self._overview is None:
            return
        held = event.modifiers()
        control = bool(held & Qt.KeyboardModifier.ControlModifier)
        shift = bool(held & Qt.KeyboardModifier.ShiftModifier)
        by = pan_of(event)
        if by is not None and not (control or shift):
            self.pan_by(by)
        else:
            # Some systems turn the wheel's way while a modifier is held.
            turn = event.angleDelta().y() or event.angleDelta().x()
            one = control != shift
            self.zoom_by(
                1.0018**turn,
                event.position(),
                across=control or not one,
                down=shift or not one,
            )
        event.accept()

    def viewportEvent(self, event: QEvent) -> bool:
        if isinstance(event, QHelpEvent) and event.type() == QEvent.Type.ToolTip:
            row = self.row_at(event.pos())
            words = self.words_of(row) if row >= 0 and self.plant_tips else ""
            QToolTip.showText(event.globalPos(), words, self.viewport())
            return True
        pinch = pinch_of(event, self)
        if pinch is not None:
            self._point_at(-1)
            self.zoom_by(*pinch)
            event.accept()
            return True
        return super().viewportEvent(event)

    # Keys ---------------------------------------------------------------------------------------

    def keyPressEvent(self, event: QKeyEvent) -> None:
        key = event.key()
        control = bool(event.modifiers() & Qt.KeyboardModifier.ControlModifier)
        pages = {Qt.Key.Key_PageUp: 1, Qt.Key.Key_PageDown: -1}
        if key in (Qt.Key.Key_Plus, Qt.Key.Key_Equal):
            self.zoom_by(1.25, self._about())
        elif key == Qt.Key.Key_Minus:
            self.zoom_by(0.8, self._about())
        elif control and key == Qt.Key.Key_0:
            self.fit()
        elif key == Qt.Key.Key_Escape and self._showing.selected >= 0:
            self._mark("")
        elif key in pages and self._overview is not None:
            self.pan_by(QPointF(0, pages[Qt.Key(key)] * self.viewport().height() * 0.8))
        elif key in (Qt.Key.Key_Home, Qt.Key.Key_End):
            self._to_end(key == Qt.Key.Key_End)
        else:
            self._walk_or_pass(event)
            return
        event.accept()

    def _walk_or_pass(self, event: QKeyEvent) -> None:
        word = walk_word(event)
        if word == "focus" and self.selected_code():
            self.plant_wanted.emit(self.selected_code())
        elif word in ("seed", "pollen", "progeny", "left", "right"):
            overview = self._overview
            row = overview.step(self._showing.selected, word) if overview is not None else -1
            if overview is not None and row >= 0:
                self._mark(overview.codes[row])
                self.show_code(overview.codes[row])
        else:
            super().keyPressEvent(event)
            return
        event.accept()

    def _about(self) -> QPoint | None:
        place = self.where(self.selected_code())
        return place if place.x() >= 0 else None

    def _to_end(self, last: bool) -> None:
        """The first or the last plant of the band that the mark is in."""
        overview, row = self._overview, self._showing.selected
        if overview is None or not len(overview):
            return
        band = int(overview.band[row]) if row >= 0 else 0
        place = overview.starts[band + 1] - 1 if last else overview.starts[band]
        code = overview.codes[int(overview.order[place])]
        self._mark(code)
        self.show_code(code)
