"""The stage of the Pedigree page: the picture, and above it the card and the key to the signs."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace

from PySide6.QtCore import QEvent, QObject, QPoint, QPointF, QRectF, QSizeF, Signal
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import QVBoxLayout, QWidget

from pedigreeview.drawing.placing import Placed
from pedigreeview.drawing.tinting import TintKey
from pedigreeview.window.canvas import PedigreeCanvas
from pedigreeview.window.card import Card
from pedigreeview.window.card_placing import Ground, ground, spot_at
from pedigreeview.window.legend_panel import KeyPanel
from pedigreeview.window.style import step

__all__ = ["LookedAt", "Stage"]

_LEAST_PICTURE = 70
"""Steps of width that a picture keeps beside a card; less would show too little of it."""


@dataclass(frozen=True, slots=True)
class LookedAt:
    """What must stay in sight: plants, and lines of descent; a pair folds the card."""

    plants: tuple[str, ...] = ()
    paths: tuple[Sequence[str], ...] = ()
    pair: bool = False


class Stage(QWidget):
    """Lays card and key where they hide nothing of what is looked at.

    Where the card finds no spot on the picture, the picture makes room for it at its right side, as
    it does for the key.
    """

    resized = Signal()

    def __init__(self, canvas: PedigreeCanvas) -> None:
        super().__init__()
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.setSpacing(0)
        layout.addWidget(canvas)
        self._canvas = canvas
        self.key = KeyPanel(self)
        self.key.turned.connect(self.resized)
        self.card = Card(self)
        self.card.installEventFilter(self)
        self._docked = False
        self._seen = LookedAt()

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self.resized.emit()

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        """A card that is put away gives its side of the picture back."""
        if event.type() == QEvent.Type.Hide and watched is self.card and self.card.isHidden():
            self._part(docked=False)
        return super().eventFilter(watched, event)

    def set_heading(self, heading: QWidget) -> None:
        """Put a heading above the picture."""
        layout = self.layout()
        assert isinstance(layout, QVBoxLayout)
        layout.insertWidget(0, heading)

    # The side of the picture --------------------------------------------------------------------

    def _side(self) -> int:
        """Pixels at the right that the key takes from the picture."""
        return self.key.side() if self.key.isVisible() else 0

    def _dock_width(self) -> int:
        return 30 * step() + 2 * step()

    def _may_dock(self) -> bool:
        if self.width() - self._side() - self._dock_width() < _LEAST_PICTURE * step():
            return False
        # What is looked at goes before the card, which folds to its head.
        return self._canvas.may_narrow(0 if self._docked else self._dock_width())

    def _part(self, docked: bool) -> None:
        """Give the picture what the key, and a card at its side, leave of the stage."""
        self._docked = docked
        wide = self._side() + (self._dock_width() if docked else 0)
        layout = self.layout()
        assert layout is not None
        was = layout.contentsMargins().right()
        if was != wide:
            if docked and not self._canvas.shows_all():
                self._canvas.hold_still()
            layout.setContentsMargins(0, 0, wide, 0)
            layout.activate()
        rect = self._canvas.rect_of(self.card.code)
        if wide > was and not self._canvas.viewport().rect().contains(rect):
            self._canvas.show_code(self.card.code)

    # What lies where ----------------------------------------------------------------------------

    def _around(self) -> QRectF:
        return QRectF(self.rect()).adjusted(0, 0, -self._side(), 0)

    def _ground(self, *others: QWidget) -> Ground:
        shift = QPointF(self._canvas.viewport().mapTo(self, QPoint(0, 0)))
        seen = self._seen
        code, placed = self.card.code, self._canvas.placed
        with self._canvas.at_rest():
            lying = ground(
                self._canvas, placed, code, seen.plants, seen.paths, shift, self._around()
            )
        taken = (QRectF(other.geometry()) for other in others if other.isVisible())
        return replace(lying, forbidden=(*lying.forbidden, *taken))

    def lay_card(self, seen: LookedAt) -> None:
        """Lay the card, if it is open, clear of what is looked at."""
        self._seen = seen
        card = self.card
        if not card.isVisible():
            self._part(docked=False)
            return
        apart = card.moved or card.wish == "folded" or (seen.pair and card.wish != "open")
        lying = self._ground(self.key)
        card.lie(lying, fold=seen.pair)
        well = not card.folded and spot_at(lying, QRectF(card.geometry())).good
        if apart or well or not self._may_dock():
            self._part(docked=False)
            return
        self._part(docked=True)
        around = self._around()
        around.setLeft(around.right() - self._dock_width())
        card.let_go()
        card.lie(Ground(around, QRectF(around.topLeft(), QSizeF(0, 0))))

    def lay_key(self) -> None:
        """Lay the key again, as on a stage of another size."""
        if self.key.isVisible():
            self._part(self._docked)
            self.key.lie(self._ground(self.card), QRectF(self.rect()))

    def show_key(
        self, placed: Placed | None, tint: TintKey | None = None, shown: Sequence[str] = ()
    ) -> None:
        """Show the key to a picture, its tint and further marks on it, or put it away."""
        was = self.key.isVisible()
        if placed is None:
            self.key.hide()
        else:
            self.key.show_key(placed, tint, shown)
            self.lay_key()
        if was != self.key.isVisible():
            self._part(self._docked)
            self.card.let_go()
            self.lay_card(self._seen)

    def leave_room(self, seen: LookedAt, width: int | None = None) -> None:
        """Tell the canvas how much of it the card takes, unless the card was laid by hand."""
        card = self.card
        if width is None:
            width = card.wanted_width() if card.isVisible() else 0
        aside = card.moved or card.wish == "folded" or (seen.pair and card.wish != "open")
        aside = aside or self._docked
        self._canvas.set_covered(0 if aside or not width else width + 2 * step())
