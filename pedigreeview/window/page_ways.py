"""Ways of looking on the Pedigree page: connection, what came of a plant, cytoplasm, trial crosses.

Each is asked for from a menu, a tag's menu, the pair slip or by keys; the line above the picture
says which it is and leads back, and so does Back.
"""

from __future__ import annotations

from html import escape
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject

from pedigreeview.book.faults import Fault
from pedigreeview.book.filtering import words as filter_words
from pedigreeview.drawing.ghost import GHOST_TAG, Ghost
from pedigreeview.drawing.ways import NEAR, Way
from pedigreeview.window.saying import say, say_list
from pedigreeview.window.words import link, number

if TYPE_CHECKING:
    from PySide6.QtWidgets import QToolButton

    from pedigreeview.network import PedigreeNetwork
    from pedigreeview.window.pedigree_page import PedigreePage

__all__ = ["PageWays"]


class PageWays(QObject):
    """Changes the way of looking and says in words what it is."""

    def __init__(self, page: PedigreePage) -> None:
        super().__init__(page)
        self._page, notes = page, page.notes
        notes.plant_wanted.connect(page.focus_on)
        notes.near.clicked.connect(self.show_near)
        notes.all.clicked.connect(self.show_all)
        notes.put_away.clicked.connect(self.put_ghost_away)
        notes.bring.clicked.connect(page.shades.clear_filter)
        notes.clear.clicked.connect(self._plain)

    # Ways ---------------------------------------------------------------------------------------

    def show_connection(self, a: str = "", b: str = "") -> None:
        """Show how two plants are connected; without any the pair, or the focus with the mark."""
        shown = self._page.shown
        if shown is None:
            return
        if not (a and b):
            a, b = self._pair()
        if not (a and b):
            self._page.said.emit(
                self.tr("Pin two plants, or mark one beside the focus, to see how they connect.")
            )
            return
        self._go(a, Way("connection", other=b))

    def _pair(self) -> tuple[str, str]:
        """The pair on the slip, the last two pins, or the focus with the marked plant."""
        shown, slip = self._page.shown, self._page.slip
        assert shown is not None
        if slip.pair is not None:
            return slip.pair
        if len(shown.pins) > 1:
            return shown.pins[-2], shown.pins[-1]
        focus, other = shown.focus or "", shown.selected
        if other == focus:
            other = next((pin for pin in shown.pins if pin != focus), "")
        return focus, other

    def show_descent(self, code: str = "") -> None:
        """Show what came of a plant; without one of the marked plant."""
        self._go(code or self._page.selected, Way("descent"))

    def show_cytoplasm(self, code: str = "") -> None:
        """Show the lineage of a plant by its cytoplasm; without one of the marked plant."""
        self._go(code or self._page.selected, Way("cytoplasm"))

    def show_all(self) -> None:
        """Of what came of a plant also the descendants that led nowhere."""
        shown = self._page.shown
        if shown is not None and shown.focus is not None:
            self._go(shown.focus, Way("descent", everything=not shown.way.everything))

    def show_near(self) -> None:
        """Back to the generations up and down of the focus."""
        shown = self._page.shown
        if shown is not None and shown.way != NEAR:
            self._go(shown.focus or shown.selected, NEAR)

    def _go(self, code: str, way: Way) -> None:
        shown = self._page.shown
        if shown is not None and code:
            self._page.go(code, code, way, say=True)
            self._page.canvas.setFocus()

    # A cross that is only tried out -------------------------------------------------------------

    def try_cross(self, seed: str, pollen: str) -> None:
        """Show a planned cross that is not in the book, between its two plants."""
        page, shown = self._page, self._page.shown
        if shown is None or not {seed, pollen} <= shown.net.book.plants.keys():
            return
        shown.ghost = Ghost(seed, pollen)
        near = page.view is not None and {seed, pollen} & page.view.shown()
        if shown.focus is None or shown.way != NEAR or not near:
            page.go(seed, seed, NEAR, say=True)
        else:
            page.draw()
        page.canvas.show_code(GHOST_TAG)
        net = shown.net
        page.errands.ask("ghost", lambda: _numbered(net, seed, pollen), self._number_ghost)

    def _number_ghost(self, numbers: tuple[str, str, float | None, float | None]) -> None:
        shown = self._page.shown
        seed, pollen, f, theta = numbers
        if shown is None or shown.ghost != Ghost(seed, pollen):
            return
        said = []
        if f is not None:
            said.append(self.tr("F {}").format(short(f)))
        if theta is not None:
            said.append(self.tr("coancestry {}").format(short(theta)))
        shown.ghost = Ghost(seed, pollen, f, ", ".join(said) or self.tr("withheld"))
        self._page.draw()

    def put_ghost_away(self) -> None:
        """Take the trial cross out of the picture."""
        shown = self._page.shown
        if shown is not None and shown.ghost is not None:
            self._page.errands.drop("ghost")
            shown.ghost = None
            self._page.draw()

    # In words -----------------------------------------------------------------------------------

    def tell(self) -> None:
        """Say above the picture how it is looked at."""
        page, notes, shown = self._page, self._page.notes, self._page.shown
        said: list[str] = []
        buttons: list[QToolButton] = []
        if shown is None or page.view is None:
            notes.show_notes((), ())
            return
        for spin in (page.up, page.down):
            # Only the neighbourhood goes by generations.
            spin.setEnabled(shown.focus is not None and shown.way == NEAR)
        if page.view.way is not None and page.view.way != NEAR:
            said.append(self._way_words(page.view.way))
            if page.view.way.mode == "descent" and (page.view.left_out or shown.way.everything):
                notes.all.setText(
                    self.tr("Only those that matter")
                    if shown.way.everything
                    else self.tr("Show all")
                )
                buttons.append(notes.all)
            buttons.append(notes.near)
        if shown.ghost is not None:
            said.append(
                self.tr("{} is only tried out: it is not in the book.").format(
                    notes.strong(shown.ghost.title)
                )
            )
            buttons.append(notes.put_away)
        said += self._shade_words(buttons)
        notes.show_notes(said, buttons)

    def _way_words(self, way: Way) -> str:
        page, strong = self._page, self._page.notes.strong
        view, focus = page.view, page.focus
        assert view is not None
        if way.mode == "connection":
            ends = [code for code in (focus, way.other) if code in view.meeting]
            met = [link(code) for code in view.meeting if code not in (focus, way.other)]
            start = strong(self.tr("How {} and {} are connected").format(focus, way.other))
            if not view.meeting:
                return self.tr("{}: they share no ancestor in this book.").format(start)
            if ends:
                lower = way.other if ends[0] == focus else focus
                if met:
                    return self.tr("{}: {} descends from {}, and their lines meet at {}.").format(
                        start, link(lower), link(ends[0]), ", ".join(met[:6])
                    )
                return self.tr("{}: {} descends from {}.").format(start, link(lower), link(ends[0]))
            return self.tr("{}: their lines meet at {}.").format(start, ", ".join(met[:6]))
        if way.mode == "cytoplasm":
            start = strong(self.tr("Lineage of {} by cytoplasm").format(focus))
            text = self.tr("{}: by seed parents back to {}, and all that has it from there.")
            return text.format(start, link(view.meeting[0]))
        start = strong(self.tr("What came of {}").format(focus))
        if way.everything:
            return self.tr("{}: all its descendants.").format(start)
        if len(view.shown()) == 1:
            return self.tr("{}: nothing was kept, finished or used as a parent.").format(start)
        if not view.left_out:
            return self.tr("{}: all of it was kept, finished or used as a parent.").format(start)
        if len(view.left_out) == 1:
            return self.tr(
                "{}: what was kept, finished or used as a parent; 1 other is left out."
            ).format(start)
        return self.tr(
            "{}: what was kept, finished or used as a parent; {} others are left out."
        ).format(start, number(len(view.left_out)))

    def _shade_words(self, buttons: list[QToolButton]) -> list[str]:
        """Tint and filter in words, while their bars are folded; what the filter folded away."""
        page, shades = self._page, self._page.shades
        view, said = page.view, []
        assert view is not None
        folded = not page.tools.shades.isChecked()
        if folded and shades.tint is not None:
            said.append(self.tr("Tint: {}.").format(escape(say(shades.tint.key.title))))
        if folded and not shades.filter.empty():
            total = len(page.shown.net.codes) if page.shown is not None else 0
            said.append(
                self.tr("Filter: {}; {} of {} plants fit.").format(
                    escape(say_list(filter_words(shades.filter))),
                    number(total - len(shades.out)),
                    number(total),
                )
            )
        if view.away:
            said.append(
                self.tr("1 plant that does not fit is folded away.")
                if len(view.away) == 1
                else self.tr("{} plants that do not fit are folded away.").format(
                    number(len(view.away))
                )
            )
            buttons.append(page.notes.bring)
        elif said:
            buttons.append(page.notes.clear)
        return said

    def _plain(self) -> None:
        self._page.shades.want_tint(None)
        self._page.shades.clear_filter()


def _numbered(
    net: PedigreeNetwork, seed: str, pollen: str
) -> tuple[str, str, float | None, float | None]:
    """The pair, F of its progeny and its coancestry; None where one is withheld."""
    f = theta = None
    try:
        theta = net.coancestry(seed, pollen)
        f = net.progeny_inbreeding(seed, pollen)
    except Fault:
        pass
    return seed, pollen, f, theta


def short(value: float) -> str:
    """A coefficient as it fits on a tag."""
    return f"{value:.3f}".rstrip("0").rstrip(".") or "0"
