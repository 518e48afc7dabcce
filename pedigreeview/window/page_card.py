"""The card on the Pedigree page: which plant's lies open, its numbers, and where it lies."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, QTimer

from pedigreeview.window.page_state import on_paths
from pedigreeview.window.stage import LookedAt

if TYPE_CHECKING:
    from pedigreeview.network import Explanation
    from pedigreeview.window.answers import PlantAnswer
    from pedigreeview.window.pedigree_page import PedigreePage
    from pedigreeview.window.why_panel import Path

__all__ = ["PageCard"]

_GLIDE = 240
"""Milliseconds after which a changed picture has come to rest."""


class PageCard(QObject):
    """Keeps the card with its plant."""

    def __init__(self, page: PedigreePage) -> None:
        super().__init__(page)
        self._page, self.card = page, page.card
        self._lit: list[Path] = []
        self._due = ""
        """The plant whose card opens with the next event, or with its picture."""
        self._early: PlantAnswer | None = None
        """Its numbers, where they came before the card."""
        self._settle = QTimer(self)
        self._settle.setSingleShot(True)
        self._settle.setInterval(_GLIDE)
        self._settle.timeout.connect(self._come_to_rest)
        self._next = QTimer(self)
        self._next.setSingleShot(True)
        self._next.setInterval(0)
        self._next.timeout.connect(self._turn)
        card = self.card
        card.laid_wanted.connect(self.lay)
        card.laid_wanted.connect(lambda: self.leave_room())
        card.grew.connect(self.lay)
        card.closed.connect(page.canvas.setFocus)
        card.closed.connect(self.forget_why)
        card.why_wanted.connect(self._ask_why)
        card.lit.connect(lambda paths: self.light(paths or page.slip.kept))

    def show(self, code: str) -> None:
        """Open the card of a plant; its numbers follow."""
        shown = self._page.shown
        assert shown is not None
        self._open(code)
        shown.asking.plant(code, self._show_numbers)

    def show_later(self, code: str) -> None:
        """The same with the next event, where the picture was drawn in this one.

        While the picture is still being laid out, the card comes with it.  The numbers are asked
        for at once.
        """
        shown = self._page.shown
        assert shown is not None
        self._due, self._early = code, None
        shown.asking.plant(code, self._show_numbers)
        self._next.start()

    def _turn(self) -> None:
        """Open the card that is due, or lay the open one."""
        page, code = self._page, self._due
        if code and page.errands.awaits("picture"):
            return
        self._due = ""
        shown = page.shown
        if not code or shown is None or code not in shown.net.book.plants:
            self.lay()
        elif not page.compare.open:  # opened meanwhile: two pictures leave it no room
            self._open(code)
            if self._early is not None and self._early.code == code:
                self._show_numbers(self._early)

    def _open(self, code: str) -> None:
        shown = self._page.shown
        assert shown is not None
        self._due = ""
        if code != self.card.code:
            self.forget_why()
        self.card.show_plant(shown.net, code, pinned=code in shown.pins)
        self.card.show()
        self.card.raise_()
        self.lay()

    def _show_numbers(self, answer: PlantAnswer) -> None:
        shown = self._page.shown
        if answer.code == self._due:
            self._early = answer  # it is put in when the card opens
        elif shown is not None:
            self.card.show_numbers(shown.net, answer)
            shown.asking.chances(answer.code, self.card.show_chances)
            QTimer.singleShot(0, self, self.lay)  # its new parts are measured by then

    def _ask_why(self, code: str) -> None:
        shown = self._page.shown
        assert shown is not None

        def come(told: Explanation) -> None:
            self.card.show_why(shown.net, told)
            self.lay()
            shown.also_of_card = on_paths(shown.net, self.card.paths())
            self._page.bring_in()

        shown.asking.why(code, come)

    def forget_why(self) -> None:
        """Await no reason for a number, and let go of the plants that one brought in."""
        self._page.errands.drop("why")
        if self._page.shown is not None:
            self._page.shown.also_of_card = frozenset()

    def light(self, paths: list[Path]) -> None:
        """Bring out lines of descent; none: those of the comparison, if there is one."""
        self._lit = paths or self._page.compare.paths
        self._page.canvas.light(self._lit)

    # Where it lies ------------------------------------------------------------------------------

    def looked_at(self) -> LookedAt:
        """What the card must not lie on."""
        shown = self._page.shown
        if shown is None:
            return LookedAt()
        code = self.card.code
        parents = shown.net.parent_codes(code) if code in shown.net.book.plants else ()
        plants = (*shown.pins, *parents, shown.focus or "")
        return LookedAt(plants, tuple(self._lit), len(shown.pins) > 1)

    def lay(self) -> None:
        """Lay the card clear of what is looked at."""
        self._page.stage.lay_card(self.looked_at())

    def leave_room(self, width: int | None = None) -> None:
        """Let the picture keep clear of the card, or of one of a width."""
        self._page.stage.leave_room(self.looked_at(), width)

    def follow(self, *, now: bool = True) -> None:
        """Lay the card with the next event, and again when the picture has glided to its place.

        now : False where the card of another plant is laid right after
        """
        if now:
            self._next.start()
        self._settle.start()

    def _come_to_rest(self) -> None:
        self.lay()
        self._page.came_to_rest.emit()
