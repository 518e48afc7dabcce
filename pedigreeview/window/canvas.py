"""The pedigree picture on the screen: pan, zoom, point, walk by keys.

The canvas shows a placed picture and says what the person wants (signals); what to show next is
decided elsewhere.  It paints itself, with no item a plant, and asks no coefficient.

Mouse: drag pans, the wheel zooms about the pointer, two fingers on a touchpad pan, a click on a tag
focuses it, a click on a pack, a chain or a tab unfolds.  Keys: see `canvas_keys`.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence

from PySide6.QtCore import (
    Property,
    QEasingCurve,
    QEvent,
    QPoint,
    QPointF,
    QRectF,
    QSize,
    Qt,
    QVariantAnimation,
    Signal,
)
from PySide6.QtGui import (
    QAccessible,
    QAccessibleEvent,
    QContextMenuEvent,
    QFocusEvent,
    QHelpEvent,
    QInputDevice,
    QKeyEvent,
    QMouseEvent,
    QNativeGestureEvent,
    QPainter,
    QPaintEvent,
    QPalette,
    QResizeEvent,
    QWheelEvent,
)
from PySide6.QtWidgets import QApplication, QFrame, QToolTip, QWidget

from pedigreeview.drawing.lighting import Lit, light
from pedigreeview.drawing.painter import Scene, paint
from pedigreeview.drawing.placing import Placed, PlacedBlock
from pedigreeview.drawing.signs import colour, pen
from pedigreeview.drawing.theme import Theme, theme
from pedigreeview.window.canvas_access import install
from pedigreeview.window.canvas_keys import walk_word
from pedigreeview.window.canvas_places import CanvasPlaces

__all__ = ["PedigreeCanvas"]

_MOVE_MS = 200


class PedigreeCanvas(CanvasPlaces):
    """The picture of a pedigree."""

    focus_wanted = Signal(str)
    selected = Signal(str)
    menu_wanted = Signal(str, QPoint)
    """Plant (or '' for the ground) and the place on the screen."""
    pin_wanted = Signal(str)
    unfold_wanted = Signal(str)
    """A key for `Look.unfolded`."""
    fold_wanted = Signal(str)
    """A key to take out of `Look.unfolded`."""
    hovered = Signal(str)
    walk_wanted = Signal(str)
    """seed, pollen, progeny, left, right, mate, reciprocal, focus, unfold, fold or pin."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        install()
        self.setObjectName("pedigreeCanvas")
        self.setAccessibleName("Pedigree picture")
        self.setAccessibleDescription("Arrow keys walk: up to the seed parent, down to progeny.")
        self.setFrameShape(QFrame.Shape.NoFrame)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setVerticalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.viewport().setMouseTracking(True)
        self.viewport().setAttribute(Qt.WidgetAttribute.WA_OpaquePaintEvent)
        self.grabGesture(Qt.GestureType.PinchGesture)
        self._theme: Theme = theme("light")
        self._selected = ""
        self._hover = ""
        self._pins: tuple[str, ...] = ()
        self._pair: tuple[str, ...] = ()
        self._tints: Mapping[str, str] | None = None
        self._paths: list[tuple[str, ...]] = []
        self._lit = Lit(frozenset(), frozenset())
        self._press: QPoint | None = None
        self._dragging = False
        self._reduced = False
        self._came: dict[str, tuple[float, float]] = {}
        self._part = 1.0
        self._move = QVariantAnimation(self)
        self._move.setStartValue(0.0)
        self._move.setEndValue(1.0)
        self._move.setDuration(_MOVE_MS)
        self._move.setEasingCurve(QEasingCurve.Type.InOutCubic)
        self._move.valueChanged.connect(self._moving)

    # What is shown -----------------------------------------------------------------------------

    @property
    def placed(self) -> Placed | None:
        """The picture on show."""
        return self._placed

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
        else:
            scale, target, self._fitted = self._wanted_view(placed)
            self._pan = (QPointF(self._origin), target)
            self._zooming = (self._scale, scale)
            if animate and not self._reduced and self.isVisible():
                self._came = _old_places(before, placed)
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

    def light(self, paths: Iterable[Sequence[str]]) -> None:
        """Bring out lines of descent and dim everything else; no path shows all alike."""
        self._paths = [tuple(path) for path in paths]
        if self._placed is not None:
            self._lit = light(self._placed, self._paths)
        self.viewport().update()

    def lit_paths(self) -> list[tuple[str, ...]]:
        """The lines of descent that are brought out."""
        return list(self._paths)

    def _set_reduced(self, reduced: bool) -> None:
        self._reduced = reduced

    def _is_reduced(self) -> bool:
        return self._reduced

    reduced_motion = Property(bool, _is_reduced, _set_reduced)
    """Whether changes come at once, without movement."""

    def sizeHint(self) -> QSize:
        return QSize(900, 640)

    def minimumSizeHint(self) -> QSize:
        return QSize(240, 200)

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

    def paintEvent(self, event: QPaintEvent) -> None:
        painter = QPainter(self.viewport())
        try:
            area = self.viewport().rect()
            painter.fillRect(area, colour(self._theme["ground"]))
            if self._placed is not None:
                painter.save()
                painter.scale(self._scale, self._scale)
                painter.translate(-self._origin)
                corner = self.to_picture(QPointF(0, 0))
                clip = QRectF(
                    corner.x(), corner.y(), area.width() / self._scale, area.height() / self._scale
                )
                moving = self._part < 1.0
                scene = Scene(
                    selected=self._selected,
                    hover=self._hover,
                    pins=self._pins,
                    pair=self._pair,
                    text=self._text,
                    tints=self._tints,
                    moved=self._shift if moving else None,
                    lines=max(0.0, self._part * 2 - 1) if moving else 1.0,
                )
                paint(
                    painter,
                    self._placed,
                    self._theme,
                    detail=self._scale,
                    lit=self._lit,
                    scene=scene,
                    clip=clip,
                )
                painter.restore()
            else:
                self._invite(painter)
            if self.hasFocus():
                painter.setPen(pen(self._theme["select"], 2.0))
                painter.setBrush(Qt.BrushStyle.NoBrush)
                painter.drawRect(area.adjusted(1, 1, -1, -1))
        finally:
            painter.end()

    def _invite(self, painter: QPainter) -> None:
        """What an empty book says in place of a picture."""
        words = self.tr(
            "No plant is recorded in this book yet.\n\nGive each plant a row: its code, its seed "
            "parent and its pollen parent.\nLeave both parents blank for what came from elsewhere, "
            "and open the file again."
        )
        held = painter.font()
        held.setPointSizeF(held.pointSizeF() * 1.25)
        painter.setFont(held)
        painter.setPen(colour(self._theme["ink_soft"]))
        room = self.viewport().rect().adjusted(40, 40, -40, -40)
        painter.drawText(room, Qt.AlignmentFlag.AlignCenter | Qt.TextFlag.TextWordWrap, words)

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        if self._fitted:
            self.fit()

    # Mouse -------------------------------------------------------------------------------------

    def mousePressEvent(self, event: QMouseEvent) -> None:
        if event.button() == Qt.MouseButton.LeftButton:
            self._press = event.position().toPoint()
            self._dragging = False
        event.accept()

    def mouseMoveEvent(self, event: QMouseEvent) -> None:
        spot = event.position().toPoint()
        if self._press is not None and event.buttons() & Qt.MouseButton.LeftButton:
            far = (spot - self._press).manhattanLength()
            if not self._dragging and far < QApplication.startDragDistance():
                return
            self._dragging = True
            self._fitted = False
            self._stop_moving()
            self._be_still()
            self._origin -= QPointF(spot - self._press) / self._scale
            self._press = spot
            self.viewport().setCursor(Qt.CursorShape.ClosedHandCursor)
            self.viewport().update()
            return
        self._point_at(self.part_at(spot))

    def mouseReleaseEvent(self, event: QMouseEvent) -> None:
        if event.button() != Qt.MouseButton.LeftButton or self._press is None:
            return
        spot, dragged = event.position().toPoint(), self._dragging
        self._press, self._dragging = None, False
        self.viewport().unsetCursor()
        if not dragged:
            self._clicked(self.part_at(spot), event.modifiers())

    def mouseDoubleClickEvent(self, event: QMouseEvent) -> None:
        if not self.part_at(event.position().toPoint()):
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
        elif not modifiers & Qt.KeyboardModifier.ShiftModifier:
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

    def contextMenuEvent(self, event: QContextMenuEvent) -> None:
        if event.reason() == QContextMenuEvent.Reason.Keyboard:
            code = self.selected_code()
            place = self.viewport().mapToGlobal(self.where(code))
        else:
            code, place = self.at(event.pos()), event.globalPos()
        self.menu_wanted.emit(code, place)
        event.accept()

    def wheelEvent(self, event: QWheelEvent) -> None:
        pad = event.device().type() == QInputDevice.DeviceType.TouchPad or not (
            event.pixelDelta().isNull()
        )
        if pad and not event.modifiers() & Qt.KeyboardModifier.ControlModifier:
            delta = (
                event.pixelDelta() if not event.pixelDelta().isNull() else event.angleDelta() / 4
            )
            self._be_still()
            self._origin -= QPointF(delta) / self._scale
            self._fitted = False
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
        if isinstance(event, QNativeGestureEvent):
            if event.gestureType() == Qt.NativeGestureType.ZoomNativeGesture:
                self.zoom_by(1.0 + event.value(), event.position())
                return True
        elif event.type() == QEvent.Type.Gesture:
            pinch = event.gesture(Qt.GestureType.PinchGesture)  # type: ignore[attr-defined]
            if pinch is not None:
                self.zoom_by(
                    pinch.scaleFactor(), self.viewport().mapFromGlobal(pinch.centerPoint())
                )
                return True
        return super().viewportEvent(event)

    def _tool_tip(self, event: QHelpEvent) -> None:
        found = self._block_at(event.pos())
        words = found.block.words if found is not None else ""
        part = self.part_at(event.pos())
        if found is None and part.startswith("up:"):
            words = "Show the parents"
        elif found is None and part.startswith("down:"):
            words = "Show the progeny that is left out"
        QToolTip.showText(event.globalPos(), words, self.viewport())

    # Keys --------------------------------------------------------------------------------------

    def keyPressEvent(self, event: QKeyEvent) -> None:
        self._be_still()
        key, control = event.key(), event.modifiers() & Qt.KeyboardModifier.ControlModifier
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


def _old_places(before: Placed, placed: Placed) -> dict[str, tuple[float, float]]:
    """Where each block of the new picture comes from: its old corner, or that of what held it."""
    old = {item.block.key: (item.x, item.y) for item in before.blocks}
    found: dict[str, tuple[float, float]] = {}
    for item in placed.blocks:
        if item.block.key in old:
            found[item.block.key] = old[item.block.key]
            continue
        for code in item.block.codes:
            key = before.view.block_of(code)
            if key in old:
                found[item.block.key] = old[key]
                break
    return found
