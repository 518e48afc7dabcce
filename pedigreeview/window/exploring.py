"""What the ways of looking at a book have in common: cards under the pointer, picks, the tree.

`Exploring` joins the picture, the map and the index drawer: a plant that is picked in one is picked
in the others and told to every page, the tree shows the relatives of the focus, and the small card
of a plant comes over the picture and over the map.
"""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QObject
from PySide6.QtWidgets import QDialog

from pedigreeview.drawing.wording import plant_words
from pedigreeview.window.book_page import BookPage
from pedigreeview.window.hover_card import HoverCards
from pedigreeview.window.picked_bar import PickedBar
from pedigreeview.window.plant_facts import PlantFacts, plant_facts, spoken_more
from pedigreeview.window.saying import say_list

if TYPE_CHECKING:
    from pathlib import Path

    from pedigreeview.network import PedigreeNetwork
    from pedigreeview.window.main_window import MainWindow

__all__ = ["Exploring"]


class Exploring(QObject):
    """Made once by the window, after its pages."""

    def __init__(self, window: MainWindow) -> None:
        super().__init__(window)
        self._window = window
        self._picked: tuple[str, ...] = ()
        self._net: PedigreeNetwork | None = None
        self._path: Path | None = None
        page, book_map = window.pedigree, window.map.map
        self.cards = (
            HoverCards(page.canvas, window.errands, self._facts, self._card_wanted),
            HoverCards(book_map, window.errands, self._facts),
        )
        page.canvas.description_of = self._more
        book_map.description_of = self._more
        book_map.words_for = self._words
        self.bars = (PickedBar(page.canvas), PickedBar(book_map))
        for bar in self.bars:
            bar.cleared.connect(lambda: self.pick(()))
            bar.group_wanted.connect(self.show_group)
        page.canvas.picked.connect(lambda codes: self._pick_on(page, codes))
        book_map.picked.connect(lambda codes: self._pick_on(window.map, codes))
        for other in window.book_pages.values():
            if other not in (page, window.map):
                other.picked.connect(self._show_picked)
        page.visited.connect(lambda focus, code: self._visited(focus or code, code))
        page.drawer.tree.marked.connect(self._mark_shown)
        window.desk.changed.connect(lambda *_: self._edited())

    @property
    def net(self) -> PedigreeNetwork | None:
        """The network of the book that lies open."""
        opened = self._window.opened
        return opened.net if opened is not None else None

    # Cards --------------------------------------------------------------------------------------

    def _facts(self, code: str) -> PlantFacts:
        net = self.net
        if net is None or code not in net.book.plants:
            return PlantFacts(code, "", "", ())
        return plant_facts(net, code)

    def _card_wanted(self, code: str) -> bool:
        """Whether the card of a plant does not lie open anyway."""
        card = self._window.pedigree.card
        return not (card.isVisible() and card.code == code)

    def _more(self, code: str) -> str:
        net = self.net
        return spoken_more(net, code) if net is not None else ""

    def _words(self, code: str) -> str:
        net = self.net
        known = net is not None and code in net.book.plants
        return say_list(plant_words(net, code)) if known and net is not None else ""

    # The tree -----------------------------------------------------------------------------------

    def _visited(self, focus: str, code: str) -> None:
        self._fresh()
        drawer = self._window.pedigree.drawer
        drawer.show_relatives(self.net, focus)
        drawer.tree.mark(code)

    def _mark_shown(self, code: str) -> None:
        """Mark a plant that the tree came to, where the picture shows it."""
        page = self._window.pedigree
        placed = page.canvas.placed
        if placed is not None and placed.view.block_of(code) and code != page.selected:
            page.select(code)

    def _fresh(self) -> None:
        """Another book has no picks of the one before; after an edit those that are left."""
        opened = self._window.opened
        net = opened.net if opened is not None else None
        if net is self._net:
            return
        same = opened is not None and opened.path == self._path
        self._net, self._path = net, opened.path if opened is not None else None
        known = net.book.plants if net is not None and same else ()
        self._show_picked(tuple(code for code in self._picked if code in known))

    def _edited(self) -> None:
        page = self._window.pedigree
        self._visited(page.focus or page.selected, page.selected)

    # Picks --------------------------------------------------------------------------------------

    @property
    def picked(self) -> tuple[str, ...]:
        """The plants that are picked."""
        return self._picked

    def pick(self, codes: tuple[str, ...]) -> None:
        """Pick plants from outside the pages, and tell every page."""
        self._pick_on(self._window.pedigree, codes)

    def _pick_on(self, page: BookPage, codes: tuple[str, ...]) -> None:
        self._show_picked(codes)
        page.picked.emit(codes)

    def _show_picked(self, codes: tuple[str, ...]) -> None:
        self._picked = tuple(codes)
        self._window.pedigree.canvas.set_picked(codes)
        self._window.map.map.set_picked(codes)
        for bar in self.bars:
            bar.show_count(len(self._picked))

    def show_group(self) -> None:
        """The numbers of the picked plants as a group."""
        from pedigreeview.window.group_panel import GroupPanel

        net, window = self.net, self._window
        if net is not None:
            panel: QDialog = GroupPanel(
                net, window.pedigree.pins, window.errands, window, picked=self._picked
            )
            window.show_dialog(panel)

    def print_view(self) -> None:
        """The dialog that prints what is shown."""
        from pedigreeview.window.print_view import PrintView

        window, net = self._window, self.net
        if net is None or window.opened is None:
            return
        page = window.pedigree
        dialog = PrintView(
            net,
            page.look(),
            window.errands,
            window.opened.title,
            page.orientation,
            window,
            lit_paths=page.canvas.lit_paths(),
        )
        dialog.printed.connect(
            lambda sheets, where: window.said.setText(dialog.words_when_done(sheets, where))
        )
        window.show_dialog(dialog)
