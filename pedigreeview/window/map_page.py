"""The Map page: the whole book as bands of generations, with its tints and filters.

The map is made when the page is first looked at, in a thread; so is every tint.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

from PySide6.QtGui import QShowEvent
from PySide6.QtWidgets import QFrame

from pedigreeview.book.filtering import seasons
from pedigreeview.drawing.founders import PALETTE_SIZE, shown_table
from pedigreeview.drawing.theme import theme
from pedigreeview.drawing.tinting import Tint
from pedigreeview.window.book_page import BookPage
from pedigreeview.window.errands import Errands
from pedigreeview.window.labels import column, sentence
from pedigreeview.window.overview import BookMap
from pedigreeview.window.overview_key import FounderKey
from pedigreeview.window.shade_bars import ShadeBars
from pedigreeview.window.shades import Shades
from pedigreeview.window.style import current_name, step

if TYPE_CHECKING:
    from pedigreeview.book.edits import Change
    from pedigreeview.drawing.overview import Overview
    from pedigreeview.network import PedigreeNetwork
    from pedigreeview.window.opening import Opened

__all__ = ["MapPage"]


@dataclass(frozen=True, slots=True)
class _Made:
    """What is made in a thread when the page is first looked at."""

    overview: Overview
    names: dict[str, str]
    years: list[int]


class MapPage(BookPage):
    """The map with the controls above it."""

    def __init__(self, errands: Errands, shades: Shades | None = None) -> None:
        super().__init__()
        self.setObjectName("page")
        self._errands = errands
        self._net: PedigreeNetwork | None = None
        self._made = False
        self._focus = ""
        self._names: dict[str, str] = {}
        self._text_scale = 1.0
        s = step()
        outer = column()
        self.setLayout(outer)
        tools = QFrame()
        tools.setObjectName("tools")
        above = column(s)
        above.setContentsMargins(s, s, s, s)
        tools.setLayout(above)
        self._own = shades is None
        """Whether no other page shares the tint and the filter."""
        self.shades = shades or Shades(errands, self)
        self._bars = bars = ShadeBars(self.shades, marked=True)
        self.tints, self.filters = bars.tints, bars.filters
        self.said = sentence("", "soft")
        self.said.hide()
        for widget in (bars, self.said):
            above.addWidget(widget)
        self.map = BookMap()
        self.key = FounderKey()
        below = QFrame()
        below.setObjectName("tools")
        foot = column()
        foot.setContentsMargins(12, s // 2, s, s // 2)
        below.setLayout(foot)
        foot.addWidget(self.key)
        self._below = below
        below.hide()
        outer.addWidget(tools)
        outer.addWidget(self.map, 1)
        outer.addWidget(below)
        self.map.plant_wanted.connect(self.plant_wanted)
        self.map.selected.connect(self.shades.set_focus)
        self.map.selected.connect(lambda _: self._ask_colours())
        self.shades.tinted.connect(lambda tint, _: self._tinted(tint))
        self.shades.filtered.connect(self._filtered)

    # The book -----------------------------------------------------------------------------------

    def show_opened(self, opened: Opened | None) -> None:
        """Another book, or none."""
        self.show_network(opened.net if opened is not None else None)

    def book_changed(self, opened: Opened, change: Change) -> None:
        """The book after an edit: the plant that is marked stays so."""
        focus = self._focus
        self.show_network(opened.net, edited=True)
        if focus in opened.net.book.plants:
            self.mark(focus)

    def show_network(self, net: PedigreeNetwork | None, *, edited: bool = False) -> None:
        """Show another book; the map itself is made when it is looked at."""
        self._errands.drop("map")
        self._errands.drop("map colours")
        self._net, self._made, self._focus = net, False, ""
        self.map.show_overview(None)
        self.key.show_founders(None, {})
        self._show_key(shown=False)
        self.shades.set_network(net, edited=edited)
        self._bars.setEnabled(net is not None and bool(net.book.plants))
        if self.isVisible():
            self._make()

    def mark(self, code: str) -> None:
        """Mark the plant that the window is at."""
        self._focus = code
        if self.isVisible() or self._own:
            self.shades.set_focus(code)
        self.map.set_selected(code)
        if code:
            self.map.show_code(code)
        if self.isVisible():
            self._ask_colours()

    def redraw(self, text_scale: float | None = None) -> None:
        """Draw again, as after a change of theme or of the size of the text."""
        text_scale = self._text_scale if text_scale is None else text_scale
        self._text_scale = text_scale
        self.map.set_text_scale(text_scale)
        self.map.set_theme(theme(current_name()))
        self.key.update()
        self.shades.redraw()

    def showEvent(self, event: QShowEvent) -> None:
        super().showEvent(event)
        if not event.spontaneous():
            # Else the keys would land on the first control above it.
            self.map.setFocus()
        self._make()
        self._ask_colours()

    def _make(self) -> None:
        net = self._net
        if net is None or self._made:
            return
        self._made = True
        self._say(self.tr("Laying out the map …"))

        focus, like = self._focus if self._focus in net else "", shown_table(net)

        def work() -> _Made:
            from pedigreeview.drawing.overview import overview_of

            plants = net.book.plants
            names = {code: plants[code].name for code in net.codes}
            named = {code: name for code, name in names.items() if name}
            overview = overview_of(net, focus=focus, like=like).made_ready()
            return _Made(overview, named, seasons(net.book))

        self._errands.ask("map", work, self._show, lambda fault: self._say(fault.sentence()))

    def _show(self, made: _Made) -> None:
        self._say("")
        self._names = made.names
        self.map.show_overview(made.overview, made.names)
        marked = self._focus if made.overview.row(self._focus) >= 0 else ""
        self.key.show_founders(made.overview, made.names, marked)
        self.shades.set_offer(made.overview.founders(), made.years)
        self._tinted(self.shades.tint)
        self._filtered(self.shades.out, self.shades.how)
        if self._focus:
            self.mark(self._focus)

    def _ask_colours(self) -> None:
        """Give the colours to the founders that matter most for the plant that is marked."""
        net, overview = self._net, self.map.overview
        if net is None or overview is None or len(overview.links.founders) <= PALETTE_SIZE:
            return
        marked, like = self.map.selected_code(), shown_table(net)

        def work() -> Overview:
            return overview.recoloured(net, focus=marked, like=like).made_ready()

        def take(found: Overview) -> None:
            self.map.recolour(found)
            self.key.show_founders(found, self._names, marked)

        self._errands.ask("map colours", work, take)

    def _say(self, words: str) -> None:
        self.said.setText(words)
        self.said.setVisible(bool(words))

    # Tints and filters --------------------------------------------------------------------------

    def _tinted(self, tint: Tint | None) -> None:
        self._show_key(shown=tint is None and bool(self.key.words()))
        if self.map.overview is not None:
            self.map.set_tint(tint)

    def _show_key(self, *, shown: bool) -> None:
        self.key.setVisible(shown)
        self._below.setVisible(shown)

    def _filtered(self, out: frozenset[str], how: str) -> None:
        self.map.set_faded(out if how == "fade" else ())
        self.map.set_hidden(out if how == "hide" else ())
