"""The picture of a reciprocal pair: tags, lines and knots as on the Pedigree page, mirrored.

It is as high as it needs to be; the page around it scrolls.  A click or Enter on a tag asks for the
plant, on a pack it opens it.
"""

from __future__ import annotations

from PySide6.QtCore import QPoint, QPointF, QRect, QRectF, QSize, Qt, Signal
from PySide6.QtGui import (
    QFontMetrics,
    QKeyEvent,
    QMouseEvent,
    QPainter,
    QPaintEvent,
    QResizeEvent,
    QWheelEvent,
)
from PySide6.QtWidgets import QAbstractScrollArea, QApplication, QSizePolicy, QToolTip

from pedigreeview.drawing.mirrored import Mirrored, mirrored
from pedigreeview.drawing.painter import Scene, paint
from pedigreeview.drawing.placing import PlacedBlock
from pedigreeview.drawing.signs import colour, pen, sign
from pedigreeview.drawing.theme import theme
from pedigreeview.network import PedigreeNetwork
from pedigreeview.window.canvas_access import Spoken, install
from pedigreeview.window.saying import say
from pedigreeview.window.style import current_name

__all__ = ["PairPicture"]

_USUAL_LINE = 17.0
"""Height of a line of text at which one picture unit is one pixel."""
_TIGHT = 0.85
"""So much smaller than usual the tags may be for one column more."""
_LEAST = 0.3


class PairPicture(QAbstractScrollArea):
    """The two directions of one pair."""

    plant_wanted = Signal(str)

    def __init__(self) -> None:
        super().__init__()
        install()
        self.setFrameShape(QAbstractScrollArea.Shape.NoFrame)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setVerticalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setAccessibleName(self.tr("The two directions of the pair"))
        self.viewport().setMouseTracking(True)
        self._net: PedigreeNetwork | None = None
        self._parents: tuple[str, str] = ("", "")
        self._crosses: tuple[tuple[str, ...], tuple[str, ...]] = ((), ())
        self._opened: frozenset[int] = frozenset()
        self._made: Mirrored | None = None
        self._scale = 1.0
        self._at = ""
        self._hover = ""
        self.spoken = Spoken(
            self._keys,
            self._words,
            lambda key: "",
            self.rect_of,
            self.key_at,
            lambda: self._at,
            lambda key: key == self._at,
        )

    @property
    def made(self) -> Mirrored | None:
        """What is shown."""
        return self._made

    def show_pair(
        self,
        net: PedigreeNetwork,
        parents: tuple[str, str],
        crosses: tuple[tuple[str, ...], tuple[str, ...]],
    ) -> None:
        """Show another pair, folded; the same one after an edit keeps what is open."""
        same = parents == self._parents
        self._net, self._parents, self._crosses = net, parents, crosses
        if not same:
            self._opened, self._at = frozenset(), ""
        self._lay_out()

    def redraw(self) -> None:
        """The theme or the size of the text has changed."""
        self._lay_out()

    # Laying out ---------------------------------------------------------------------------------

    def _text_scale(self) -> float:
        return QFontMetrics(QApplication.font()).height() / _USUAL_LINE

    def _lay_out(self) -> None:
        """As many tags side by side as fit at the size of the text, then scaled to the width."""
        if self._net is None or self.viewport().width() < 50:
            return
        wide = self.viewport().width()
        wanted = min(max(self._text_scale(), 0.8), 2.0)
        for columns in (5, 4, 3, 2, 1):
            made = mirrored(
                self._net, self._parents, self._crosses, columns=columns, opened=self._opened
            )
            if made.placed.bounds[2] * wanted * _TIGHT <= wide or columns == 1:
                break
        self._made = made
        self._scale = max(_LEAST, min(wanted, wide / made.placed.bounds[2]))
        self.setFixedHeight(round(made.placed.bounds[3] * self._scale))
        if made.placed.block(self._at) is None:
            self._at = ""
        self.viewport().update()

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        if event.size().width() != event.oldSize().width():
            self._lay_out()

    def sizeHint(self) -> QSize:
        return QSize(600, self.height())

    def minimumSizeHint(self) -> QSize:
        return QSize(200, 0)

    # Places -------------------------------------------------------------------------------------

    def _origin(self) -> QPointF:
        assert self._made is not None
        left, top, wide, _ = self._made.placed.bounds
        aside = (self.viewport().width() - wide * self._scale) / 2
        return QPointF(aside - left * self._scale, -top * self._scale)

    def rect_of(self, key: str) -> QRect:
        """Where a block lies in the viewport."""
        item = self._made.placed.block(key) if self._made is not None else None
        if item is None:
            return QRect()
        spot, scale = self._origin(), self._scale
        return QRectF(
            spot.x() + item.x * scale,
            spot.y() + item.y * scale,
            item.width * scale,
            item.height * scale,
        ).toRect()

    def where(self, code: str) -> QPoint:
        """Middle of the tag of a plant in the viewport; of a folded one its pack."""
        for key in (f"plant:{code}", f"self:{code}", f"parent:{code}"):
            if not self.rect_of(key).isNull():
                return self.rect_of(key).center()
        held = self._made.placed.block_of(code) if self._made is not None else None
        return self.rect_of(held.block.key).center() if held is not None else QPoint(-1, -1)

    def key_at(self, spot: QPoint) -> str:
        """The tag or pack at a place, or ''."""
        item = self._item_at(QPointF(spot))
        return item.block.key if item is not None else ""

    def _item_at(self, spot: QPointF) -> PlacedBlock | None:
        if self._made is None:
            return None
        origin = self._origin()
        x, y = (spot.x() - origin.x()) / self._scale, (spot.y() - origin.y()) / self._scale
        return next((one for one in self._made.placed.blocks if one.holds(x, y)), None)

    def _keys(self) -> list[str]:
        return [one.block.key for one in self._made.placed.blocks] if self._made else []

    def _words(self, key: str) -> str:
        item = self._made.placed.block(key) if self._made is not None else None
        return say(item.block.words) if item is not None else ""

    # Painting -----------------------------------------------------------------------------------

    def paintEvent(self, event: QPaintEvent) -> None:
        if self._made is None:
            return
        held, scale = theme(current_name()), self._scale
        painter = QPainter(self.viewport())
        try:
            painter.setRenderHint(QPainter.RenderHint.Antialiasing)
            painter.setPen(Qt.PenStyle.NoPen)
            painter.setBrush(colour(held["band"]))
            painter.drawRoundedRect(QRectF(self.viewport().rect()), 8, 8)
            painter.translate(self._origin())
            painter.scale(scale, scale)
            scene = Scene(selected=self._at if self.hasFocus() else "", hover=self._hover)
            paint(painter, self._made.placed, held, detail=scale, scene=scene, bands=False)
            for key in self._made.selfs:
                self._mark_self(painter, key)
        finally:
            painter.end()

    def _mark_self(self, painter: QPainter, key: str) -> None:
        """⊗ on the corner of the tag of a plant that was found to be a selfing."""
        assert self._made is not None
        item = self._made.placed.block(key)
        if item is None:
            return
        held = theme(current_name())
        spot = QPointF(item.x, item.y)
        painter.setPen(pen(held["knot_edge"], 1.2))
        painter.setBrush(colour(held["knot"]))
        painter.drawEllipse(spot, 11, 11)
        sign(painter, "selfing", spot.x(), spot.y(), 6.6, held["warning"])

    # Mouse and keys -----------------------------------------------------------------------------

    def wheelEvent(self, event: QWheelEvent) -> None:
        # The page scrolls, not the picture.
        event.ignore()

    def mouseMoveEvent(self, event: QMouseEvent) -> None:
        item = self._item_at(event.position())
        key = item.block.key if item is not None and item.block.sort != "pair" else ""
        if key != self._hover:
            self._hover = key
            self.viewport().setCursor(
                Qt.CursorShape.PointingHandCursor if key else Qt.CursorShape.ArrowCursor
            )
            QToolTip.showText(event.globalPosition().toPoint(), self._words(key), self)
            self.viewport().update()

    def mousePressEvent(self, event: QMouseEvent) -> None:
        item = self._item_at(event.position())
        if event.button() == Qt.MouseButton.LeftButton and item is not None:
            self._at = item.block.key
            self._open(item)

    def _open(self, item: PlacedBlock) -> None:
        """Enter or a click: to the plant, or open a pack."""
        assert self._made is not None
        key = item.block.key
        if key in self._made.more:
            self._opened = self._opened | {self._made.more[key]}
            self._lay_out()
        elif item.block.code:
            self.plant_wanted.emit(item.block.code)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        keys = [one.block.key for one in self._made.placed.blocks] if self._made else []
        keys = [key for key in keys if key != "pair"]
        if not keys or self._made is None:
            super().keyPressEvent(event)
            return
        way = {
            Qt.Key.Key_Left: (-1, 0),
            Qt.Key.Key_Right: (1, 0),
            Qt.Key.Key_Up: (0, -1),
            Qt.Key.Key_Down: (0, 1),
        }.get(Qt.Key(event.key()))
        if way is not None:
            self._at = self._next(way) if self._at else keys[0]
            self.viewport().update()
        elif event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter) and self._at:
            item = self._made.placed.block(self._at)
            if item is not None:
                self._open(item)
        else:
            super().keyPressEvent(event)

    def _next(self, way: tuple[int, int]) -> str:
        """The nearest tag that way; the same one where there is none."""
        assert self._made is not None
        here = self._made.placed.block(self._at)
        if here is None:
            return self._at
        x0, y0 = here.middle
        best, least = self._at, float("inf")
        for one in self._made.placed.blocks:
            x, y = one.middle
            along = (x - x0) * way[0] + (y - y0) * way[1]
            across = abs(x - x0) * abs(way[1]) + abs(y - y0) * abs(way[0])
            if one.block.sort != "pair" and along > 1 and along + 3 * across < least:
                best, least = one.block.key, along + 3 * across
        return best
