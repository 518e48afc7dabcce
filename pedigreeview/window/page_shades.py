"""Tint and filter on the Pedigree page: on its tags, in its key, and the bars that choose them."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QObject

if TYPE_CHECKING:
    from pedigreeview.drawing.blocks import View
    from pedigreeview.window.canvas import PedigreeCanvas
    from pedigreeview.window.pedigree_page import PedigreePage

__all__ = ["PageShades"]


class PageShades(QObject):
    """Puts on the pictures what `Shades` has worked out."""

    def __init__(self, page: PedigreePage) -> None:
        super().__init__(page)
        self._page = page
        page.shades.tinted.connect(lambda _tint, _why: self._shaded())
        page.shades.filtered.connect(self._filtered)
        page.tools.shades.toggled.connect(self._unfold_bars)

    def dress(self, canvas: PedigreeCanvas, view: View) -> None:
        """Tint the tags of a picture, with their values, and put back what does not fit."""
        page = self._page
        tint = page.shades.tint
        codes = view.shown()
        canvas.set_tints(tint.by_code(codes) if tint is not None else None)
        canvas.set_tint_words(tint.words_by_code(codes) if tint is not None else {})
        canvas.set_faded(page.shades.faded() & codes)

    def _shaded(self) -> None:
        page = self._page
        if page.view is None:
            return
        self.dress(page.canvas, page.view)
        if page.compare.open and page.compare.canvas.placed is not None:
            self.dress(page.compare.canvas, page.compare.canvas.placed.view)
        self.show_key()
        page.ways.tell()

    def _filtered(self, out: frozenset[str], how: str) -> None:
        page = self._page
        if page.view is None or page.shown is None:
            return
        if page.view.away or (out and how == "hide"):
            page.draw()
        else:
            self._shaded()

    def _unfold_bars(self, unfold: bool) -> None:
        page = self._page
        if unfold:
            page.shades.ask_offer()
        page.bars.setVisible(unfold)
        page.ways.tell()
        if unfold:
            page.bars.tints.kind.setFocus()
        elif page.shown is not None:
            page.canvas.setFocus()

    def show_key(self) -> None:
        """Show the key of what is in the picture, or put it away."""
        page = self._page
        tint = page.shades.tint
        marks = ["pin"] if page.pins else []
        if page.view is not None and page.shades.faded() & page.view.shown():
            marks.append("aside")
        if page.view is not None and tint is not None:
            marks += tint.also(block.codes for block in page.view.blocks if block.codes)
        page.bars.tints.key.show_mixed("mixed" in marks)
        page.stage.show_key(
            page.placed if page.key_button.isChecked() else None,
            tint.key if tint is not None else None,
            marks,
        )
