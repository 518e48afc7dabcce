"""The Map page: the whole book as bands of generations, with its tints and filters.

The map is made when the page is first looked at, in a thread; so is every tint.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

from PySide6.QtCore import Signal
from PySide6.QtGui import QShowEvent
from PySide6.QtWidgets import QFrame, QWidget

from pedigreeview.book.faults import Fault
from pedigreeview.book.filtering import PlantFilter, left_out, seasons
from pedigreeview.drawing.theme import theme
from pedigreeview.drawing.tinting import Tint, Wanted
from pedigreeview.window.errands import Errands
from pedigreeview.window.filter_bar import FilterBar
from pedigreeview.window.labels import column, sentence
from pedigreeview.window.overview import BookMap
from pedigreeview.window.style import current_name, step
from pedigreeview.window.tint_bar import TintBar

if TYPE_CHECKING:
    from pedigreeview.drawing.overview import Overview
    from pedigreeview.network import PedigreeNetwork

__all__ = ["MapPage"]


@dataclass(frozen=True, slots=True)
class _Made:
    """What is made in a thread when the page is first looked at."""

    overview: Overview
    names: dict[str, str]
    years: list[int]


class MapPage(QWidget):
    """The map with the controls above it."""

    plant_wanted = Signal(str)
    """A plant is asked for in focus."""
    tints_changed = Signal(object)
    """Colour by code for `PedigreeCanvas.set_tints`, or None for plain paper."""

    def __init__(self, errands: Errands) -> None:
        super().__init__()
        self.setObjectName("page")
        self._errands = errands
        self._net: PedigreeNetwork | None = None
        self._made = False
        self._focus = ""
        s = step()
        outer = column()
        self.setLayout(outer)
        tools = QFrame()
        tools.setObjectName("tools")
        above = column(max(2, s // 3))
        above.setContentsMargins(s, s // 2, s, s // 2)
        tools.setLayout(above)
        self.tints, self.filters = TintBar(), FilterBar()
        self.said = sentence("", "soft")
        self.said.hide()
        for widget in (self.tints, self.filters, self.said):
            above.addWidget(widget)
        self.map = BookMap()
        outer.addWidget(tools)
        outer.addWidget(self.map, 1)
        self.map.plant_wanted.connect(self.plant_wanted)
        self.map.selected.connect(self.tints.set_focus)
        self.tints.wanted.connect(self._tint)
        self.filters.changed.connect(self._filter)

    # The book -----------------------------------------------------------------------------------

    def show_network(self, net: PedigreeNetwork | None) -> None:
        """Show another book; the map itself is made when it is looked at."""
        for kind in ("map", "tint", "filter"):
            self._errands.drop(kind)
        self._net, self._made, self._focus = net, False, ""
        self.map.show_overview(None)
        self.tints.set_network(None)
        self.filters.set_network(None)
        self.tints_changed.emit(None)
        if self.isVisible():
            self._make()

    def mark(self, code: str) -> None:
        """Mark the plant that the window is at."""
        self._focus = code
        self.tints.set_focus(code)
        self.map.set_selected(code)
        if code:
            self.map.show_code(code)

    def redraw(self, text_scale: float = 1.0) -> None:
        """Draw again, as after a change of theme or of the size of the text."""
        self.map.set_text_scale(text_scale)
        self.map.set_theme(theme(current_name()))
        wanted = self.tints.current()
        if wanted is not None:
            self._tint(wanted)

    def showEvent(self, event: QShowEvent) -> None:
        super().showEvent(event)
        self._make()

    def _make(self) -> None:
        net = self._net
        if net is None or self._made:
            return
        self._made = True
        self._say(self.tr("Laying out the map …"))

        def work() -> _Made:
            from pedigreeview.drawing.overview import overview_of

            plants = net.book.plants
            names = {code: plants[code].name for code in net.codes}
            named = {code: name for code, name in names.items() if name}
            return _Made(overview_of(net), named, seasons(net.book))

        self._errands.ask("map", work, self._show, lambda fault: self._say(fault.sentence()))

    def _show(self, made: _Made) -> None:
        self._say("")
        self.map.show_overview(made.overview, made.names)
        founders = made.overview.founders()
        self.tints.set_network(self._net, founders)
        self.filters.set_network(self._net, founders, made.years)
        if self._focus:
            self.mark(self._focus)

    def _say(self, words: str) -> None:
        self.said.setText(words)
        self.said.setVisible(bool(words))

    # Tints and filters --------------------------------------------------------------------------

    def _tint(self, wanted: Wanted | None) -> None:
        net, shades = self._net, theme(current_name())
        self._errands.drop("tint")
        if net is None or wanted is None:
            self._show_tint(None)
            return

        def work() -> Tint:
            from pedigreeview.drawing.tinting import tint

            return tint(net, wanted, shades)

        def failed(fault: Fault) -> None:
            self._show_tint(None)
            self.tints.say(fault.sentence())

        self._errands.ask("tint", work, self._show_tint, failed)

    def _show_tint(self, tint: Tint | None) -> None:
        if tint is not None:
            self.tints.show_tint(tint)
        else:
            self.tints.key.show_key(None)
        if self.map.overview is not None:
            self.map.set_tint(tint)
        self.tints_changed.emit(None if tint is None else tint.by_code())

    def _filter(self, wanted: PlantFilter, how: str) -> None:
        net = self._net
        self._errands.drop("filter")
        if net is None:
            return
        if wanted.empty():
            self._leave(frozenset(), how)
            return

        def work() -> frozenset[str]:
            from pedigreeview.drawing.tinting import shares_of

            shares = shares_of(net, wanted.founder) if wanted.founder else None
            return frozenset(left_out(net.book, wanted, shares=shares))

        self._errands.ask("filter", work, lambda out: self._leave(out, how))

    def _leave(self, out: frozenset[str], how: str) -> None:
        assert self._net is not None
        count = len(self._net.codes)
        self.filters.show_count(count - len(out), count)
        self.map.set_faded(out if how == "fade" else ())
        self.map.set_hidden(out if how == "hide" else ())
