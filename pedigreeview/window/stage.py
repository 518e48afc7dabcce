"""The stage of the Pedigree page: the picture, and above it the card and the key to the signs."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from PySide6.QtCore import QEvent, QObject, QPoint, QPointF, QRectF, Signal
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import QVBoxLayout, QWidget

from pedigreeview.drawing.free_ground import Ground
from pedigreeview.drawing.placing import Placed
from pedigreeview.drawing.tinting import TintKey
from pedigreeview.window.canvas import PedigreeCanvas
from pedigreeview.window.card import Card
from pedigreeview.window.card_placing import ground
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
    it does for the key; where that is too narrow, it makes room for the folded card below itself.
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
        self._dock = 0
        """Pixels at the right that the picture has made room for the card with."""
        self._shelf = 0
        """The same below, for the folded card."""
        self._seen = LookedAt()

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self.resized.emit()

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        """A card that is put away gives its side of the picture back."""
        if event.type() == QEvent.Type.Hide and watched is self.card and self.card.isHidden():
            self._part()
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

    def _over(self) -> int:
        """Pixels at the right that the open key lies over, where it has no room beside."""
        key = self.key
        lies = key.isVisible() and not key.folded and not key.side()
        return key.width() if lies else 0

    @property
    def docked(self) -> bool:
        """Whether the picture has made room for the card at its side."""
        return self._dock > 0

    @property
    def shelved(self) -> bool:
        """Whether the picture has made room for the folded card below itself."""
        return self._shelf > 0

    def _may_dock(self) -> int:
        """The width at the side that the picture can spare for the card; 0 for none.

        What is looked at goes before the card, which folds to its head.
        """
        s = step()
        wide, narrow = self.card.open_width() + 2 * s, 32 * s
        room = self.width() - self._side() - self._over()
        for width in dict.fromkeys((self._dock or wide, wide, narrow)):
            enough = room - width >= _LEAST_PICTURE * s
            if enough and self._canvas.may_narrow(width - self._dock):
                return width
        return 0

    def _part(self, dock: int = 0, shelf: int = 0) -> None:
        """Give the picture what the key, and a card beside or below it, leave of the stage."""
        self._dock, self._shelf = dock, shelf
        layout = self.layout()
        assert layout is not None
        was, wide = layout.contentsMargins(), self._side() + dock
        if (was.right(), was.bottom()) == (wide, shelf):
            return
        if (dock or shelf) and not self._canvas.shows_all():
            self._canvas.hold_still()
        layout.setContentsMargins(0, 0, wide, shelf)
        layout.activate()
        if was.bottom() != shelf and self.key.isVisible() and not self.key.folded:
            self.key.lie(self._ground(), self._beside())
        less = wide > was.right() or shelf > was.bottom()
        rect = self._canvas.rect_of(self.card.code)
        if less and not self._canvas.viewport().rect().contains(rect):
            self._canvas.show_code(self.card.code)

    # What lies where ----------------------------------------------------------------------------

    def _beside(self) -> QRectF:
        """The stage without the shelf."""
        return QRectF(self.rect()).adjusted(0, 0, 0, -self._shelf)

    def _around(self) -> QRectF:
        """The stage without the open key."""
        return QRectF(self.rect()).adjusted(0, 0, -self._side() - self._over(), 0)

    def _ground(self, around: QRectF | None = None) -> Ground:
        shift = QPointF(self._canvas.viewport().mapTo(self, QPoint(0, 0)))
        seen = self._seen
        code, placed = self.card.code, self._canvas.placed
        with self._canvas.at_rest():
            return ground(
                self._canvas,
                placed,
                code,
                seen.plants,
                seen.paths,
                shift,
                self._around() if around is None else around,
            )

    def _ground_of_card(self) -> Ground:
        lies = self.key.isVisible() and self.key.folded
        return self._ground().without([QRectF(self.key.geometry())] if lies else [])

    def lay_card(self, seen: LookedAt) -> None:
        """Lay the card, if it is open, clear of what is looked at."""
        self._seen = seen
        if not self.card.isVisible():
            self._part()
            return
        self._lay_card()
        self.card.hold_width()
        key = self.key
        on_card = key.isVisible() and key.geometry().intersects(self.card.geometry())
        if on_card and key.folded:
            self.lay_key()

    def _lay_card(self) -> None:
        card, pair, canvas = self.card, self._seen.pair, self._canvas
        # Within one picture it does not grow wide and narrow from plant to plant.
        card.open_width((id(canvas.placed), round(canvas.zoom(), 6), self.size().toTuple()))
        strip = card.wants_strip(fold=pair)
        dock = 0 if strip or card.moved else self._may_dock()
        lying = self._ground_of_card()
        shelved = self._shelf and not dock and not card.moved and card.wish != "open"
        if ((dock and self._dock) or shelved) and not card.has_home(lying, strip=strip):
            # It stays in the room made for it until its place on the picture is free again.
            if dock:
                self._dock_card(dock)
            else:
                self._shelve_card()
            return
        well = card.lie(lying, fold=pair)
        if well and (strip or not card.folded) and self._dock + self._shelf:
            # Without the room that was made for it more of the picture is in sight.
            self._part()
            well = card.lie(self._ground_of_card(), fold=pair)
        if dock and not (well and not card.folded):
            self._dock_card(dock)
        elif card.folded and not well:
            self._shelve_card()
        else:
            self._part()

    def _dock_card(self, width: int) -> None:
        self._part(dock=width)
        around = self._around()
        around.setLeft(around.right() - width)
        self.card.lie_in(around)

    def _shelve_card(self) -> None:
        """Fold it to a strip below the picture, so that it hides nothing."""
        high = self.card.strip_size(short=True).height() + step()
        self._part(shelf=high)
        place = QRectF(self.rect())
        place.setTop(place.bottom() - high)
        self.card.lie_in(place.adjusted(0, -step() / 2, 0, step() / 2))

    def lay_key(self) -> None:
        """Lay the key again, as on a stage of another size."""
        if self.key.isVisible():
            self._part(self._dock, self._shelf)
            card = QRectF(self.card.geometry()) if self.card.isVisible() else QRectF()
            self.key.lie(self._ground(QRectF(self._canvas.geometry())), self._beside(), card)

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
            self._part(self._dock, self._shelf)
            self.card.let_go()
            self.lay_card(self._seen)

    def leave_room(self, seen: LookedAt, width: int | None = None) -> None:
        """Tell the canvas how much of it the card takes, unless the card was laid by hand."""
        card = self.card
        if width is None:
            width = card.wanted_width() if card.isVisible() else 0
        aside = card.moved or card.wish == "folded" or (seen.pair and card.wish != "open")
        aside = aside or self.docked or self.shelved
        self._canvas.set_covered(0 if aside or not width else width + 2 * step())
