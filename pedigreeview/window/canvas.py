"""The pedigree picture on the screen: pan, zoom, point, walk by keys.

The canvas shows a placed picture and says what the person wants (signals); what to show next is
decided elsewhere.  It paints itself, with no item a plant, and asks no coefficient.

Mouse: drag pans, the wheel zooms about the pointer, two fingers on a touchpad pan, a click on a tag
focuses it, a click on a pack, a chain or a tab unfolds; picking many: see `picking`.  Keys: see
`canvas_keys`.

It keeps the seed parent at the left in every language: see `picture_area`.
"""

from __future__ import annotations

from collections.abc import Callable, Collection, Iterable, Mapping, Sequence
from functools import partial

from PySide6.QtCore import (
    Property,
    QEasingCurve,
    QEvent,
    QPoint,
    QPointF,
    QRectF,
    Qt,
    QTimer,
    QVariantAnimation,
    Signal,
)
from PySide6.QtGui import (
    QAccessible,
    QAccessibleEvent,
    QFocusEvent,
    QHelpEvent,
    QKeyEvent,
    QMouseEvent,
    QPainter,
    QPaintEvent,
    QPalette,
    QResizeEvent,
    QWheelEvent,
)
from PySide6.QtWidgets import QApplication, QToolTip, QWidget

from pedigreeview.drawing.band_names import paint_names
from pedigreeview.drawing.kept_picture import KeptPicture, Sight, ready
from pedigreeview.drawing.lighting import Lit, light
from pedigreeview.drawing.painter import Scene, paint
from pedigreeview.drawing.picked import draw_band
from pedigreeview.drawing.placing import Placed, PlacedBlock
from pedigreeview.drawing.signs import colour
from pedigreeview.drawing.theme import Theme, theme
from pedigreeview.window.canvas_access import Spoken
from pedigreeview.window.canvas_edges import goal, paint_fades, paint_signs, sign_at
from pedigreeview.window.canvas_fit import CanvasFit
from pedigreeview.window.canvas_keys import walk_word
from pedigreeview.window.canvas_picks import codes_at, codes_inside, codes_shown, paint_picked
from pedigreeview.window.canvas_places import old_corners
from pedigreeview.window.carrying import Carrying, paint_carrying, plant_at
from pedigreeview.window.gestures import pan_of, pinch_of
from pedigreeview.window.picking import Pickable, Picking
from pedigreeview.window.saying import say
from pedigreeview.window.style import current_name

__all__ = ["PedigreeCanvas"]

_MOVE_MS = 200
_SIGN = "edge:"
"""Before the name of an edge: the pointer is on the sign there."""


class PedigreeCanvas(CanvasFit):
    """The picture of a pedigree."""

    focus_wanted = Signal(str)
    pin_wanted = Signal(str)
    unfold_wanted = Signal(str)
    """A key for `Look.unfolded`."""
    fold_wanted = Signal(str)
    """A key to take out of `Look.unfolded`."""
    walk_wanted = Signal(str)
    """seed, pollen, progeny, left, right, mate, reciprocal, focus, unfold, fold or pin."""
    cross_wanted = Signal(str, str, QPoint)
    """Pollen was carried: seed parent, pollen parent, place on the screen."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setObjectName("pedigreeCanvas")
        self.setAccessibleName(self.tr("Pedigree picture"))
        walk = self.tr("Arrow keys walk: up to the seed parent, down to progeny.")
        self.setAccessibleDescription(walk)
        self._theme: Theme = theme("light")
        self._selected = ""
        self._hover = ""
        self._pins: tuple[str, ...] = ()
        self._pair: tuple[str, ...] = ()
        self._tints: Mapping[str, str] | None = None
        self._faded: frozenset[str] = frozenset()
        self._tint_words: dict[str, str] = {}
        self._paths: list[tuple[str, ...]] = []
        self._lit = Lit(frozenset(), frozenset())
        self._press: QPoint | None = None
        self._carrying: Carrying | None = None
        self._dragging = False
        self._reduced = False
        self._came: dict[str, tuple[float, float]] = {}
        self._kept = KeptPicture()
        self._move = QVariantAnimation(self)
        self._move.setStartValue(0.0)
        self._move.setEndValue(1.0)
        self._move.setDuration(_MOVE_MS)
        self._move.setEasingCurve(QEasingCurve.Type.InOutCubic)
        self._move.valueChanged.connect(self._moving)
        self.plant_tips = True
        """Whether a tip says what a tag is; False where a card does."""
        self.description_of: Callable[[str], str] = lambda code: ""
        """What a screen reader may add to the words of a tag."""
        self.picking = Picking(
            self,
            Pickable(
                at=partial(codes_at, self),
                inside=partial(codes_inside, self),
                all_shown=partial(codes_shown, self),
                current=self.selected_code,
            ),
        )
        self.spoken = Spoken(
            self.tag_codes,
            self.words_of,
            lambda key: self.description_of(key),
            self.rect_of,
            self.part_at,
            self.selected_code,
            self.picking.holds,
        )
        self.picking.changed.connect(self._picked)
        self.picking.clicked.connect(self._picked_at)

    # What is shown -----------------------------------------------------------------------------

    def show_placed(self, placed: Placed | None, animate: bool = True) -> None:
        """Show a picture; blocks that were on the screen move from their old places."""
        before = self._placed
        self._stop_moving()
        self._be_still()
        self._placed = placed
        self._lit = light(placed, self._paths) if placed is not None else self._lit
        self._part = 1.0
        if placed is None:
            self.viewport().update()
            return
        turned = before is not None and before.orientation != placed.orientation
        if before is None or not before.blocks or turned:
            self.first_look()
            if self._asked:
                self.look_at(self._asked)
        else:
            whole = self.shows_all()
            self._partly = False
            scale, target, fitted = self._wanted_view(placed, before)
            # What was fitted as a whole and still is goes on to be, as when there is less room.
            self._fitted = fitted or (whole and self._shows_all(scale, target))
            self._pan = (QPointF(self._origin), target)
            self._zooming = (self._scale, scale)
            if animate and not self._reduced and self.isVisible():
                self._came = old_corners(before, placed)
                self._part = 0.0
                self._move.start()
            else:
                self._origin, self._scale = target, scale
            if scale != self._zooming[0]:
                self.zoomed.emit(scale)
        self._announce()
        self.viewport().update()

    def set_theme(self, wanted: Theme | str) -> None:
        """Change the colours."""
        self._theme = theme(wanted) if isinstance(wanted, str) else wanted
        palette = self.palette()
        palette.setColor(QPalette.ColorRole.Base, colour(self._theme["ground"]))
        self.setPalette(palette)
        self.viewport().update()

    def set_selected(self, code: str) -> None:
        """Ring the plant without saying so by signal; '' rings none."""
        if code != self._selected:
            self._selected = code
            self._announce()
            self.viewport().update()

    def selected_code(self) -> str:
        """The ringed plant, else the focus, else ''."""
        if self._selected or self._placed is None:
            return self._selected
        return self._placed.view.focus or ""

    def set_pins(self, codes: Sequence[str], pair: Sequence[str] = ()) -> None:
        """Mark the pinned plants with A, B, C and so on, and ring the two that are compared."""
        self._pins, self._pair = tuple(codes), tuple(pair)
        self.viewport().update()

    def set_tints(self, tints: Mapping[str, str] | None) -> None:
        """Tint tags: colour by code, or None for plain paper."""
        self._tints = tints
        self.viewport().update()

    def set_picked(self, codes: Iterable[str]) -> None:
        """Mark plants as picked without saying so by signal."""
        self.picking.set(codes)

    def moving(self) -> bool:
        """Whether the picture is on its way to other places, or is being dragged."""
        return self._part < 1.0 or self._dragging or self.picking.drawing

    def _picked(self, codes: tuple[str, ...]) -> None:
        self._be_still()
        self.picked.emit(codes)

    def _picked_at(self, spot: QPoint) -> None:
        """A tag that is picked by a click is also the one looked at; the focus stays."""
        code = self.at(spot)
        if code:
            self.set_selected(code)
            self.selected.emit(code)

    def set_faded(self, codes: Iterable[str] = ()) -> None:
        """Put plants back, such as those that do not fit a filter."""
        self._faded = frozenset(codes)
        self.viewport().update()

    def set_tint_words(self, words: Mapping[str, str] | None) -> None:
        """The values behind the tints, by code, as they are written on the tags."""
        self._tint_words = dict(words or {})
        self.viewport().update()

    def light(self, paths: Iterable[Sequence[str]]) -> None:
        """Bring out lines of descent and dim everything else; no path shows all alike."""
        self._paths = [tuple(path) for path in paths]
        if self._placed is not None:
            self._lit = light(self._placed, self._paths)
        self.viewport().update()

    def _brought_out(self) -> Collection[str]:
        return self._lit.blocks

    def lit_paths(self) -> list[tuple[str, ...]]:
        """The lines of descent that are brought out."""
        return list(self._paths)

    def _set_reduced(self, reduced: bool) -> None:
        self._reduced = reduced

    def _is_reduced(self) -> bool:
        return self._reduced

    reduced_motion = Property(bool, _is_reduced, _set_reduced)
    """Whether changes come at once, without movement."""

    # Painting ----------------------------------------------------------------------------------

    def _moving(self, part: float) -> None:
        self._part = float(part)
        start, end = self._pan
        self._origin = start + (end - start) * self._part
        self._scale = self._zooming[0] + (self._zooming[1] - self._zooming[0]) * self._part
        self.viewport().update()

    def _stop_moving(self) -> None:
        """What moves is at its place at once."""
        if self._part < 1.0:
            self._move.stop()
            self._part = 1.0
            self._origin, self._scale = self._pan[1], self._zooming[1]

    def _shift(self, item: PlacedBlock) -> tuple[float, float]:
        old = self._came.get(item.block.key)
        if old is None:
            return 0.0, 0.0
        left = 1.0 - self._part
        return (old[0] - item.x) * left, (old[1] - item.y) * left

    def _to_picture_units(self, painter: QPainter) -> None:
        painter.scale(self._scale, self._scale)
        painter.translate(-self._origin)

    def paintEvent(self, event: QPaintEvent) -> None:
        painter = QPainter(self.viewport())
        try:
            # A painter goes by the application's direction, not by that of its widget.
            painter.setLayoutDirection(Qt.LayoutDirection.LeftToRight)
            area = self.viewport().rect()
            # Before the first picture nobody has said the theme.
            look = self._theme if self._placed is not None else theme(current_name())
            if self._placed is None:
                painter.fillRect(area, colour(look["ground"]))
            else:
                corner = self.to_picture(QPointF(0, 0))
                clip = QRectF(
                    corner.x(), corner.y(), area.width() / self._scale, area.height() / self._scale
                )
                self._paint_picture(painter, self._placed, clip)
                paint_picked(painter, self, self.picking.held, self._theme, self._shift)
                painter.save()
                self._to_picture_units(painter)
                paint_names(
                    painter,
                    self._placed,
                    self._theme,
                    detail=self._scale,
                    clip=clip,
                    text=self._text,
                    solid=True,
                )
                painter.restore()
                paint_fades(painter, self, self._theme)
                paint_signs(painter, self, self._theme, self._hover.removeprefix(_SIGN))
                draw_band(painter, self.picking.band, self._theme)
                paint_carrying(painter, self, self._carrying, self._theme)
            self._ring(painter, look, area)
        finally:
            painter.end()

    def _paint_picture(self, painter: QPainter, placed: Placed, clip: QRectF) -> None:
        """The picture alone: afresh while its tags go to other places, else as far as need be."""
        moving = self._part < 1.0 and bool(self._came)
        scene = Scene(
            selected=self._selected,
            hover=self._hover,
            pins=self._pins,
            pair=self._pair,
            text=self._text,
            tints=self._tints,
            tint_words=self._tint_words,
            faded=self._faded,
            moved=self._shift if moving else None,
            lines=max(0.0, self._part * 2 - 1) if moving else 1.0,
        )
        if not moving:
            size = self.viewport().width(), self.viewport().height()
            origin = clip.left(), clip.top()
            look, scale = self._theme, self._scale
            sight = Sight(placed, look, scale, origin, size, self._lit, scene)
            self._kept.show(painter, sight, exact=not self.moving())
            return
        if scene.lines <= 0.0 and "cull" not in placed.held:
            # The lines come halfway: until then there is time between the frames.
            QTimer.singleShot(0, self, partial(ready, placed))
        painter.save()
        painter.fillRect(self.viewport().rect(), colour(self._theme["ground"]))
        self._to_picture_units(painter)
        look, scale = self._theme, self._scale
        paint(
            painter, placed, look, detail=scale, lit=self._lit, scene=scene, clip=clip, names=False
        )
        painter.restore()

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self.sized(event.oldSize())

    # Mouse -------------------------------------------------------------------------------------

    def mousePressEvent(self, event: QMouseEvent) -> None:
        if event.button() in (Qt.MouseButton.LeftButton, Qt.MouseButton.MiddleButton):
            self._press = event.position().toPoint()
            # The middle button moves the picture wherever it is pressed.
            self._dragging = event.button() == Qt.MouseButton.MiddleButton
        event.accept()

    def mouseMoveEvent(self, event: QMouseEvent) -> None:
        spot = event.position().toPoint()
        held = Qt.MouseButton.LeftButton | Qt.MouseButton.MiddleButton
        if self._press is not None and event.buttons() & held:
            far = (spot - self._press).manhattanLength()
            if not self._dragging and far < QApplication.startDragDistance():
                return
            if self._carry(spot):
                return
            self._dragging = True
            self._fitted = False
            self._touched()
            self._stop_moving()
            self._be_still()
            self._origin -= QPointF(spot - self._press) / self._scale
            self._press = spot
            self.viewport().setCursor(Qt.CursorShape.ClosedHandCursor)
            self.viewport().update()
            return
        way = sign_at(self, event.position())
        self._point_at(f"{_SIGN}{way}" if way else self.part_at(spot))

    def _carry(self, spot: QPoint) -> bool:
        """Pollen is carried where the drag began on the tag of one plant; else False."""
        assert self._press is not None
        if self._carrying is None:
            if self._dragging:
                return False
            code = plant_at(self, self._press)
            if not code:
                return False
            self._carrying = Carrying(code, spot)
            self._be_still()
            self.viewport().setCursor(Qt.CursorShape.CrossCursor)
        over = plant_at(self, spot)
        self._carrying.at = spot
        self._carrying.over = over if over != self._carrying.code else ""
        self._dragging = True
        self.viewport().update()
        return True

    def mouseReleaseEvent(self, event: QMouseEvent) -> None:
        if self._press is None:
            return
        spot, dragged = event.position().toPoint(), self._dragging
        self._press, self._dragging = None, False
        self.viewport().unsetCursor()
        carried, self._carrying = self._carrying, None
        if carried is not None:
            self.viewport().update()
            if carried.over:
                self.cross_wanted.emit(carried.over, carried.code, event.globalPosition().toPoint())
            return
        if dragged:
            return
        way = sign_at(self, event.position())
        if way:
            self._go_on(goal(self, way))
        else:
            self._clicked(self.part_at(spot), event.modifiers())

    def _go_on(self, by: QPointF) -> None:
        """Move the picture on, as far as there is any of it."""
        self._stop_moving()
        self._be_still()
        size = self.viewport().size() / self._scale
        wide, high = float(size.width()), float(size.height())
        target = self._within_picture(self._origin + by, wide, high, self._scale)
        self._came, self._fitted = {}, False
        self._touched()
        self._pan, self._zooming = (QPointF(self._origin), target), (self._scale, self._scale)
        if self._reduced:
            self._origin = target
        else:
            self._part = 0.0
            self._move.start()
        self.viewport().update()

    def mouseDoubleClickEvent(self, event: QMouseEvent) -> None:
        spot = event.position()
        if not self.part_at(spot.toPoint()) and sign_at(self, spot) is None:
            self.fit()
        event.accept()

    def _clicked(self, part: str, modifiers: Qt.KeyboardModifier) -> None:
        if not part:
            return
        if part.startswith(("pack:", "chain:", "up:", "down:")) and self._is_fold(part):
            self.unfold_wanted.emit(part)
            return
        if self._placed is None or not self._placed.view.block_of(part):
            return
        self.set_selected(part)
        self.selected.emit(part)
        if modifiers & Qt.KeyboardModifier.ControlModifier:
            self.pin_wanted.emit(part)
        else:
            self.focus_wanted.emit(part)

    def _is_fold(self, part: str) -> bool:
        return self._placed is not None and not self._placed.view.block_of(part)

    def _point_at(self, part: str) -> None:
        if part == self._hover:
            return
        self._hover = part
        self.viewport().setCursor(
            Qt.CursorShape.PointingHandCursor if part else Qt.CursorShape.ArrowCursor
        )
        shown = self._placed is not None and self._placed.view.block_of(part)
        self.hovered.emit(part if shown else "")
        self.viewport().update()

    def _be_still(self) -> None:
        """Take down what belongs to the place of the pointer: the picture moves below it."""
        if QToolTip.isVisible():
            QToolTip.hideText()
        self._point_at("")

    def leaveEvent(self, event: QEvent) -> None:
        self._point_at("")
        super().leaveEvent(event)

    def wheelEvent(self, event: QWheelEvent) -> None:
        by = pan_of(event)
        if by is not None and not event.modifiers() & Qt.KeyboardModifier.ControlModifier:
            self._be_still()
            self._origin -= by / self._scale
            self._fitted = False
            self._touched()
            self.viewport().update()
        else:
            turn = event.angleDelta().y() or event.angleDelta().x()
            self._be_still()
            self.zoom_by(1.0016**turn, event.position())
        event.accept()

    def viewportEvent(self, event: QEvent) -> bool:
        if isinstance(event, QHelpEvent) and event.type() == QEvent.Type.ToolTip:
            self._tool_tip(event)
            return True
        pinch = pinch_of(event, self)
        if pinch is not None:
            self._be_still()
            self.zoom_by(*pinch)
            event.accept()
            return True
        return super().viewportEvent(event)

    def _tool_tip(self, event: QHelpEvent) -> None:
        found = self.block_at(event.pos())
        words = say(found.block.words) if found is not None else ""
        if found is not None and found.block.code and not self.plant_tips:
            words = ""
        part = self.part_at(event.pos())
        if sign_at(self, QPointF(event.pos())):
            words = self.tr("So many tags more lie out of sight this way. A click goes there.")
        elif found is None and part.startswith("up:"):
            words = self.tr("Show the parents")
        elif found is None and part.startswith("down:"):
            words = self.tr("Show the progeny that is left out")
        QToolTip.showText(event.globalPos(), words, self.viewport())

    # Keys --------------------------------------------------------------------------------------

    def keyPressEvent(self, event: QKeyEvent) -> None:
        self._be_still()
        key, control = event.key(), event.modifiers() & Qt.KeyboardModifier.ControlModifier
        if key == Qt.Key.Key_Escape and self._carrying is not None:
            self._carrying = self._press = None
            self.viewport().unsetCursor()
            self.viewport().update()
            return
        if control and key in (Qt.Key.Key_Plus, Qt.Key.Key_Equal):
            self.zoom_by(1.25)
        elif control and key == Qt.Key.Key_Minus:
            self.zoom_by(0.8)
        elif control and key == Qt.Key.Key_0:
            self.fit()
        else:
            word = walk_word(event)
            if not word:
                super().keyPressEvent(event)
                return
            self.walk_wanted.emit(word)
        event.accept()

    def focusInEvent(self, event: QFocusEvent) -> None:
        super().focusInEvent(event)
        self._announce()
        self.viewport().update()

    def focusOutEvent(self, event: QFocusEvent) -> None:
        super().focusOutEvent(event)
        self.viewport().update()

    def _announce(self) -> None:
        """Tell a screen reader which tag the keys are at."""
        if QAccessible.isActive() and self.hasFocus():
            codes = self.tag_codes()
            code = self.selected_code()
            event = QAccessibleEvent(self, QAccessible.Event.Focus)
            if code in codes:
                event.setChild(codes.index(code))
            QAccessible.updateAccessibility(event)
