"""What the picture of a pedigree and the map of a whole book share as views that are painted.

Both are scroll areas without bars that paint themselves, are moved by drags, wheel and fingers,
mark one plant, hold picked ones and ask for a menu.  The seed parent stays at the left in every
language: left and right are part of what they say, so their direction stays from left to right
where the rest of the window is mirrored.
"""

from __future__ import annotations

from PySide6.QtCore import QPoint, QRect, QSize, Qt, Signal
from PySide6.QtGui import QContextMenuEvent, QPainter
from PySide6.QtWidgets import QAbstractScrollArea, QFrame, QWidget

from pedigreeview.drawing.signs import pen
from pedigreeview.drawing.theme import Theme
from pedigreeview.window.canvas_access import install
from pedigreeview.window.gestures import listen_to_pinches
from pedigreeview.window.picking import Picking

__all__ = ["PictureArea"]


class PictureArea(QAbstractScrollArea):
    """A painted view of plants; a subclass says where they lie."""

    selected = Signal(str)
    """A plant was marked here; '' when the mark was taken away."""
    hovered = Signal(str)
    """The plant under the pointer, or ''."""
    menu_wanted = Signal(str, QPoint)
    """Plant (or '' for the ground) and the place on the screen."""
    picked = Signal(object)
    """The plants that the person has picked here, as a tuple."""

    picking: Picking

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        install()
        self.setFrameShape(QFrame.Shape.NoFrame)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setVerticalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.viewport().setMouseTracking(True)
        self.viewport().setAttribute(Qt.WidgetAttribute.WA_OpaquePaintEvent)
        self.setLayoutDirection(Qt.LayoutDirection.LeftToRight)
        listen_to_pinches(self)

    def selected_code(self) -> str:
        """The plant that is marked, or ''."""
        raise NotImplementedError

    def at(self, point: QPoint) -> str:
        """Code of the plant at a viewport place, or ''."""
        raise NotImplementedError

    def where(self, code: str) -> QPoint:
        """A place of the plant in the viewport; (-1, -1) when not shown."""
        raise NotImplementedError

    def picked_codes(self) -> tuple[str, ...]:
        """The picked plants, in the order of picking."""
        return self.picking.codes

    def sizeHint(self) -> QSize:
        return QSize(900, 640)

    def minimumSizeHint(self) -> QSize:
        return QSize(240, 200)

    def _ring(self, painter: QPainter, theme: Theme, area: QRect) -> None:
        """Show that the keys are here."""
        if self.hasFocus():
            painter.setPen(pen(theme["select"], 2.0))
            painter.setBrush(Qt.BrushStyle.NoBrush)
            painter.drawRect(area.adjusted(1, 1, -1, -1))

    def contextMenuEvent(self, event: QContextMenuEvent) -> None:
        if event.reason() == QContextMenuEvent.Reason.Keyboard:
            code = self.selected_code()
            place = self.viewport().mapToGlobal(self.where(code))
        else:
            code, place = self.at(event.pos()), event.globalPos()
        self.menu_wanted.emit(code, place)
        event.accept()
