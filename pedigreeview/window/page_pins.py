"""The pins of the Pedigree page, the slip that compares two of them, and who has the side."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QObject

from pedigreeview.window.page_state import on_paths

if TYPE_CHECKING:
    from collections.abc import Sequence

    from pedigreeview.window.pedigree_page import PedigreePage
    from pedigreeview.window.why_panel import Path

__all__ = ["PagePins"]


class PagePins(QObject):
    """Pins plants, and keeps the slip in step."""

    def __init__(self, page: PedigreePage) -> None:
        super().__init__(page)
        self._page, slip = page, page.slip
        slip.unpin_wanted.connect(self.pin)
        slip.lit.connect(page.cards.light)
        slip.pair_chosen.connect(lambda a, b: page.asking().pair(a, b))
        slip.coancestry_why_wanted.connect(lambda a, b: page.asking().coancestry_why(a, b))
        slip.progeny_why_wanted.connect(lambda a, b: page.asking().progeny_why(a, b))
        slip.answered.connect(self._bring_in_pair)

    def pin(self, code: str) -> None:
        """Pin a plant, or take its pin out."""
        page, shown = self._page, self._page.shown
        if shown is None or code not in shown.net.book.plants:
            return
        if code in shown.pins:
            self.set_pins([held for held in shown.pins if held != code])
        else:
            page.index_button.setChecked(False)
            self.set_pins([*shown.pins, code])

    def set_pins(self, codes: Sequence[str]) -> None:
        """Pin these plants and no others."""
        page, shown = self._page, self._page.shown
        if shown is None:
            return
        shown.pins = tuple(code for code in dict.fromkeys(codes) if code in shown.net.book.plants)
        if len(shown.pins) < 2:
            shown.also = frozenset()
        page.canvas.set_pins(shown.pins)
        if shown.focus is not None:
            page.draw()
        if len(shown.pins) < 2:
            shown.asking.drop_pair()
        page.card.wish = ""
        self.show()
        if page.card.isVisible():
            page.show_card(page.card.code)
        page.pins_changed.emit(shown.pins)

    def show(self) -> None:
        """Put the pins on the slip."""
        shown = self._page.shown
        assert shown is not None
        self._page.slip.show_pins(shown.net, list(shown.pins))
        self.share_sides()

    def share_sides(self) -> None:
        """Index and slip take turns, so that the picture keeps its room."""
        page = self._page
        drawer = page.index_button.isChecked()
        page.drawer.setVisible(drawer)
        page.slip.setVisible(bool(page.pins) and not drawer)

    def toggle_index(self) -> None:
        """Pull the index out, or push it back in."""
        self.share_sides()
        if self._page.index_button.isChecked():
            self._page.drawer.filter.setFocus()

    def leave_index(self) -> None:
        """Push the index in and go back to the picture."""
        self._page.index_button.setChecked(False)
        self._page.canvas.setFocus()

    def _bring_in_pair(self, paths: list[Path]) -> None:
        shown = self._page.shown
        assert shown is not None
        shown.also = on_paths(shown.net, paths)
        self._page.bring_in()
