"""Walking by keys on the Pedigree page: one step from the marked plant, and its folds."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QObject

from pedigreeview.window.walking import fold_keys, no_step_words, step_from

if TYPE_CHECKING:
    from pedigreeview.window.pedigree_page import PedigreePage

__all__ = ["PageWalk"]


class PageWalk(QObject):
    """Takes the steps."""

    def __init__(self, page: PedigreePage) -> None:
        super().__init__(page)
        self._page = page

    def walk(self, way: str) -> None:
        """One step by keys from the marked plant."""
        page, shown = self._page, self._page.shown
        if shown is None or not shown.selected:
            return
        code = shown.selected
        if way == "focus":
            page.focus_on(code)
        elif way == "pin":
            page.pin(code)
        elif way in ("unfold", "fold"):
            self.fold(code, unfold=way == "unfold")
        elif way in ("left", "right"):
            self._arrive(page.canvas.neighbour(code, 1 if way == "right" else -1), way)
        elif way == "mate":
            asked = shown.mate_of if shown.mate == code else code
            found = step_from(shown.net, asked, "mate", shown.mate if asked != code else "")
            shown.mate_of, shown.mate = asked, found
            self._arrive(found, way)
        else:
            self._arrive(step_from(shown.net, code, way), way)

    def _arrive(self, code: str, way: str) -> None:
        page = self._page
        if code:
            page.said.emit("")
            page.select(code)
            page.canvas.setFocus()
            return
        page.said.emit(no_step_words(page.selected, way))

    def fold(self, code: str, *, unfold: bool) -> None:
        """Unfold the relatives of a plant that are folded away, or fold them again."""
        view, shown = self._page.view, self._page.shown
        if view is None or shown is None:
            return
        block = next((b for b in view.blocks if b.key == view.block_of(code)), None)
        if block is None:
            return
        keys = fold_keys(block, code, shown.unfolded, unfold=unfold)
        if keys:
            shown.unfolded = shown.unfolded ^ frozenset(keys)
            self._page.draw()
