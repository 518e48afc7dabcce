"""The two bars of tint and filter, in step with the same bars of the other pages."""

from __future__ import annotations

from PySide6.QtWidgets import QFrame

from pedigreeview.book.filtering import PlantFilter
from pedigreeview.drawing.tinting import Tint, Wanted
from pedigreeview.window.filter_bar import FilterBar
from pedigreeview.window.labels import column
from pedigreeview.window.shades import Offer, Shades
from pedigreeview.window.style import step
from pedigreeview.window.tint_bar import TintBar

__all__ = ["ShadeBars"]


class ShadeBars(QFrame):
    """Tint above, filter below.

    marked : whether what is tinted carries the marks of its class, as the map does
    """

    def __init__(self, shades: Shades, *, marked: bool = False) -> None:
        super().__init__()
        self._shades = shades
        layout = column(step())
        self.setLayout(layout)
        self.tints, self.filters = TintBar(marked=marked), FilterBar()
        layout.addWidget(self.tints)
        layout.addWidget(self.filters)
        self.tints.wanted.connect(shades.want_tint)
        self.filters.changed.connect(shades.want_filter)
        shades.offered.connect(self._offer)
        shades.tint_asked.connect(self._follow_tint)
        shades.tinted.connect(self._tinted)
        shades.filter_asked.connect(self._follow_filter)
        shades.filtered.connect(self._filtered)

    def _offer(self, offer: Offer | None) -> None:
        shades = self._shades
        if offer is None:
            self.tints.set_network(None)
            self.filters.set_network(None)
            return
        self.tints.set_network(offer.net, offer.founders)
        self.filters.set_network(offer.net, offer.founders, offer.years)
        self._follow_tint(shades.wanted)
        self._tinted(shades.tint, "")
        self._follow_filter(shades.filter, shades.how)
        self._filtered(shades.out, shades.how)

    def _follow_tint(self, wanted: Wanted | None) -> None:
        self.tints.set_focus(self._shades.focus, ask=False)
        if wanted != self.tints.current():
            self.tints.choose(wanted)

    def _tinted(self, tint: Tint | None, why: str) -> None:
        if tint is not None:
            self.tints.show_tint(tint)
            return
        self.tints.key.show_key(None)
        if why or self._shades.wanted is not None:
            self.tints.say(why)

    def _follow_filter(self, wanted: PlantFilter, how: str) -> None:
        self.filters.choose(wanted, how)

    def _filtered(self, out: frozenset[str], how: str) -> None:
        net = self._shades.net
        if net is not None:
            self.filters.show_count(len(net.codes) - len(out), len(net.codes))
