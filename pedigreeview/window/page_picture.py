"""Drawing on the Pedigree page: a small picture at once, a large one by a thread of its own.

The whole book is laid out by a process that can be ended.
"""

from __future__ import annotations

from typing import TYPE_CHECKING, Any

from PySide6.QtCore import QCoreApplication, QEvent, QObject

from pedigreeview.book.faults import Fault
from pedigreeview.drawing.founders import show_table
from pedigreeview.drawing.theme import theme
from pedigreeview.drawing.view import choose
from pedigreeview.drawing.ways import NEAR
from pedigreeview.window.style import current_name

if TYPE_CHECKING:
    from pedigreeview.drawing.blocks import View
    from pedigreeview.window.pedigree_page import PedigreePage

__all__ = ["AT_ONCE", "PagePicture"]

AT_ONCE = 60
"""Blocks of a picture that are laid out within one event; more could take over 50 ms."""


class PagePicture(QObject):
    """Asks for the view and its places, and puts them on the canvas."""

    def __init__(self, page: PedigreePage) -> None:
        super().__init__(page)
        self._page = page

    def drop(self) -> None:
        """Await no picture any longer, as with another book."""
        for kind in ("whole", "picture", "beside"):
            self._page.errands.drop(kind)

    def draw(self, *, lay_card: bool = True) -> None:
        """Draw what is to be shown; what was on the screen stays where it was, if it can.

        lay_card : False where the card of another plant is laid right after
        """
        from pedigreeview.drawing.kept_picture import ready
        from pedigreeview.drawing.placing import place

        page = self._page
        shown = page.shown
        assert shown is not None
        page.behind = False
        page.canvas.set_theme(theme(current_name()))
        if shown.focus is None:
            self._draw_whole()
            return
        self.drop()
        look = page.look()
        view = choose(shown.net, look)
        before, orientation = page.placed, page.orientation
        if len(view.blocks) <= AT_ONCE:
            self._take(view, place(view, before, orientation=orientation), lay_card=lay_card)
            page.compare.draw(look)
            return

        def done(placed: Any) -> None:
            self._take(view, placed)
            page.compare.draw(look)

        def work() -> Any:
            return ready(place(view, before, orientation=orientation))

        page.errands.ask("picture", work, done)

    def _take(self, view: View, placed: Any, *, fit: bool = False, lay_card: bool = True) -> None:
        page = self._page
        first = page.placed is None or fit
        # Another way of looking is another picture: it is looked at as a whole first.
        before = page.view.way if page.view is not None else None
        anew = (before or NEAR) != (view.way or NEAR) and not fit
        page.view, page.placed = view, placed
        if page.shown is not None:
            show_table(page.shown.net, view.founders)
            page.card.recolour(page.shown.net)
        # The card of the first focus comes a moment later: the picture leaves room for it.
        page.cards.leave_room(page.card.wanted_width() if first and not fit else None)
        page.canvas.show_placed(placed, animate=not (first or anew))
        words = view.hidden_words()
        page.hidden_note.setText(words)
        page.hidden_note.setVisible(bool(words))
        page.ways.tell()
        if anew:
            # The lines above the picture take their room before it is looked at as a whole.
            for _ in range(2):
                QCoreApplication.sendPostedEvents(None, QEvent.Type.LayoutRequest.value)
            page.canvas.first_look()
        if (first or anew) and view.focus:
            page.canvas.show_code(view.focus)
        if fit:
            page.canvas.fit()
        page.canvas.set_pins(page.pins)
        page.shading.dress(page.canvas, view)
        if page.selected:
            page.canvas.set_selected(page.selected)
        page.shading.show_key()
        page.cards.follow(now=lay_card)

    def _draw_whole(self) -> None:
        page = self._page
        shown = page.shown
        assert shown is not None
        self.drop()
        net, look, orientation = shown.net, page.look(), page.orientation
        page.said.emit(self.tr("Laying out the whole book …"))

        def work() -> Any:
            from pedigreeview.drawing.placing import place_in_worker

            view = choose(net, look)
            return view, place_in_worker(view, orientation=orientation, tick=page.errands.tick)

        def done(answer: Any) -> None:
            page.said.emit("")
            self._take(*answer, fit=True)

        def failed(fault: Fault) -> None:
            page.said.emit(fault.sentence())
            if page.selected:
                page.focus_on(page.selected)

        page.errands.ask("whole", work, done, failed)
