"""Tint and filter, chosen once for every page that shows plants as a picture.

The Pedigree page and the Map page have a control each; both ask here, so both show the same.  What
is asked for is worked out off the window's thread.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, Signal

from pedigreeview.book.faults import Fault
from pedigreeview.book.filtering import PlantFilter, left_out, seasons
from pedigreeview.drawing.theme import theme
from pedigreeview.drawing.tinting import Tint, Wanted
from pedigreeview.window.errands import Errands
from pedigreeview.window.style import current_name

if TYPE_CHECKING:
    from pedigreeview.network import PedigreeNetwork

__all__ = ["Offer", "Shades"]


@dataclass(frozen=True, slots=True)
class Offer:
    """What a control can offer of a book."""

    net: PedigreeNetwork
    founders: tuple[str, ...]
    years: tuple[int, ...]


class Shades(QObject):
    """What plants are tinted by, and which are faded or folded away."""

    offered = Signal(object)
    """An `Offer`, or None without a book."""
    tint_asked = Signal(object)
    """A `Wanted` or None: what is chosen now."""
    tinted = Signal(object, str)
    """The `Tint` that came of it, or None and why."""
    filter_asked = Signal(object, str)
    """A `PlantFilter` and 'fade' or 'hide': what is chosen now."""
    filtered = Signal(object, str)
    """Codes that do not fit, and 'fade' or 'hide'."""

    def __init__(self, errands: Errands, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._errands = errands
        self._net: PedigreeNetwork | None = None
        self.offer: Offer | None = None
        self.focus = ""
        self.wanted: Wanted | None = None
        self.tint: Tint | None = None
        self.filter, self.how = PlantFilter(), "fade"
        self.out: frozenset[str] = frozenset()

    @property
    def net(self) -> PedigreeNetwork | None:
        """The book that is tinted and filtered."""
        return self._net

    def faded(self) -> frozenset[str]:
        """Plants that the filter puts back."""
        return self.out if self.how == "fade" else frozenset()

    def away(self) -> frozenset[str]:
        """Plants that the filter folds away."""
        return self.out if self.how == "hide" else frozenset()

    # The book -----------------------------------------------------------------------------------

    def set_network(self, net: PedigreeNetwork | None, *, edited: bool = False) -> None:
        """Another book, plain and unfiltered; an edited one keeps what was chosen for it."""
        if net is self._net:
            return
        for kind in ("tint", "filter", "offer"):
            self._errands.drop(kind)
        self._net, had = net, self.offer is not None
        self.offer = None
        if not edited or net is None:
            self.focus = ""
            self.offered.emit(None)
            self.want_tint(None)
            self.want_filter(PlantFilter(), self.how)
            return
        if had:
            self.ask_offer()
        self.want_tint(self._still(self.wanted, net))
        self.want_filter(self.filter, self.how)

    @staticmethod
    def _still(wanted: Wanted | None, net: PedigreeNetwork) -> Wanted | None:
        """A tint that an edited book can still be asked for, else none."""
        if wanted is None:
            return None
        if wanted.kind in ("coancestry", "founder") and wanted.of not in net:
            return None
        if wanted.kind == "gene" and wanted.of.partition(":")[0] not in net.book.loci:
            return None
        return None if wanted.kind == "trait" and wanted.of not in net.book.traits else wanted

    def ask_offer(self) -> None:
        """Find out what there is to choose from, unless that is known."""
        net = self._net
        if net is None or self.offer is not None:
            return

        def work() -> Offer:
            from pedigreeview.drawing.founders import ranked_founders

            return Offer(net, tuple(ranked_founders(net)), tuple(seasons(net.book)))

        self._errands.ask("offer", work, self._take_offer, lambda _: None)

    def set_offer(self, founders: Sequence[str], years: Sequence[int]) -> None:
        """Take over what another page has found out."""
        if self._net is not None and self.offer is None:
            self._errands.drop("offer")
            self._take_offer(Offer(self._net, tuple(founders), tuple(years)))

    def _take_offer(self, offer: Offer) -> None:
        self.offer = offer
        self.offered.emit(offer)

    # Tint ---------------------------------------------------------------------------------------

    def set_focus(self, code: str) -> None:
        """The plant that coancestry is with, while that is the tint."""
        if not code or code == self.focus:
            return
        self.focus = code
        if self.wanted is not None and self.wanted.kind == "coancestry":
            self.want_tint(Wanted("coancestry", code))

    def want_tint(self, wanted: Wanted | None) -> None:
        """Tint by this; None for plain paper."""
        self._errands.drop("tint")
        self.wanted = wanted
        self.tint_asked.emit(wanted)
        net, shades = self._net, theme(current_name())
        if net is None or wanted is None:
            self._take_tint(None)
            return

        def work() -> Tint:
            from pedigreeview.drawing.tinting import tint

            made = tint(net, wanted, shades)
            made.by_code(())
            return made

        self._errands.ask("tint", work, self._take_tint, lambda fault: self._take_tint(None, fault))

    def redraw(self) -> None:
        """Tint anew, as after a change of theme."""
        if self.wanted is not None:
            self.want_tint(self.wanted)

    def _take_tint(self, tint: Tint | None, fault: Fault | None = None) -> None:
        self.tint = tint
        self.tinted.emit(tint, fault.sentence() if fault is not None else "")

    # Filter -------------------------------------------------------------------------------------

    def want_filter(self, wanted: PlantFilter, how: str) -> None:
        """Fade or fold away what does not fit."""
        self._errands.drop("filter")
        self.filter, self.how = wanted, how
        self.filter_asked.emit(wanted, how)
        net = self._net
        if net is None or wanted.empty():
            self._leave(frozenset())
            return

        def work() -> frozenset[str]:
            from pedigreeview.drawing.tinting import shares_of

            shares = shares_of(net, wanted.founder) if wanted.founder else None
            return frozenset(left_out(net.book, wanted, shares=shares))

        self._errands.ask("filter", work, self._leave)

    def clear_filter(self) -> None:
        """Let every plant fit again."""
        self.want_filter(PlantFilter(), self.how)

    def _leave(self, out: frozenset[str]) -> None:
        self.out = out
        self.filtered.emit(out, self.how)
