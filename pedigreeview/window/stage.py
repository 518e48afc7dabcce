"""The stage of the Pedigree page: the picture, and above it the card and the key to the signs."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace

from PySide6.QtCore import QPoint, QPointF, QRectF, Signal
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import QVBoxLayout, QWidget

from pedigreeview.drawing.placing import Placed
from pedigreeview.drawing.tinting import TintKey
from pedigreeview.window.canvas import PedigreeCanvas
from pedigreeview.window.card import Card
from pedigreeview.window.card_placing import Ground, ground
from pedigreeview.window.legend_panel import KeyPanel
from pedigreeview.window.style import step

__all__ = ["LookedAt", "Stage"]


@dataclass(frozen=True, slots=True)
class LookedAt:
    """What must stay in sight: plants, and lines of descent; a pair folds the card."""

    plants: tuple[str, ...] = ()
    paths: tuple[Sequence[str], ...] = ()
    pair: bool = False


class Stage(QWidget):
    """Lays card and key where they hide nothing of what is looked at."""

    resized = Signal()

    def __init__(self, canvas: PedigreeCanvas) -> None:
        super().__init__()
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.addWidget(canvas)
        self._canvas = canvas
        self.key = KeyPanel(self)
        self.card = Card(self)
        self._seen = LookedAt()

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self.resized.emit()

    def _ground(self, *others: QWidget) -> Ground:
        shift = QPointF(self._canvas.viewport().mapTo(self, QPoint(0, 0)))
        seen, around = self._seen, QRectF(self.rect())
        code, placed = self.card.code, self._canvas.placed
        lying = ground(self._canvas, placed, code, seen.plants, seen.paths, shift, around)
        taken = (QRectF(other.geometry()) for other in others if other.isVisible())
        return replace(lying, forbidden=(*lying.forbidden, *taken))

    def lay_card(self, seen: LookedAt) -> None:
        """Lay the card, if it is open, clear of what is looked at."""
        self._seen = seen
        if self.card.isVisible():
            self.card.lie(self._ground(self.key), fold=seen.pair)

    def lay_key(self) -> None:
        """Lay the key again, as on a stage of another size."""
        if self.key.isVisible():
            self.key.lie(self._ground(self.card))

    def show_key(
        self, placed: Placed | None, tint: TintKey | None = None, shown: Sequence[str] = ()
    ) -> None:
        """Show the key to a picture, its tint and further marks on it, or put it away."""
        if placed is None:
            self.key.hide()
        else:
            self.key.show_key(placed, self._ground(self.card), tint, shown)
            self.card.let_go()
            self.lay_card(self._seen)

    def leave_room(self, seen: LookedAt, width: int | None = None) -> None:
        """Tell the canvas how much of it the card takes, unless the card was laid by hand."""
        card = self.card
        if width is None:
            width = card.wanted_width() if card.isVisible() else 0
        aside = card.moved or card.wish == "folded" or (seen.pair and card.wish != "open")
        self._canvas.set_covered(0 if aside or not width else width + 2 * step())
