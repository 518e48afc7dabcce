"""What the Pedigree page shows at the moment: the one place that its parts read and change."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

from pedigreeview.drawing.ways import NEAR, Way

if TYPE_CHECKING:
    from pedigreeview.drawing.ghost import Ghost
    from pedigreeview.network import PedigreeNetwork
    from pedigreeview.window.asking import Asking
    from pedigreeview.window.why_panel import Path

__all__ = ["ON_PATHS", "Shown", "Stood", "on_paths"]

ON_PATHS = 60
"""Most plants on paths that are brought into the picture."""


@dataclass(frozen=True, slots=True)
class Stood:
    """Where the person stood before an edit took the plant away; they go back with the plant."""

    focus: str | None
    selected: str
    way: Way = NEAR


@dataclass(slots=True)
class Shown:
    """The book and the place in it."""

    net: PedigreeNetwork
    asking: Asking
    focus: str | None = None
    """The plant in focus; None for the whole book."""
    selected: str = ""
    way: Way = NEAR
    unfolded: frozenset[str] = frozenset()
    pins: tuple[str, ...] = ()
    also: frozenset[str] = frozenset()
    """Plants on the paths between the pair, shown whatever the depth."""
    also_of_card: frozenset[str] = frozenset()
    """Plants on the paths that explain the number on the card."""
    also_of_compared: frozenset[str] = frozenset()
    """Plants that lead to what two compared plants share."""
    ghost: Ghost | None = None
    """A cross that is only tried out."""
    mate_of: str = ""
    mate: str = ""
    stood: Stood | None = None

    def follow_plants(self, instead: str) -> None:
        """Stay where the person stands after an edit, or as near as its plants allow.

        A plant that an undo takes away and a redo brings back is stood at again, unless the person
        has gone elsewhere meanwhile (`stood` is then None).

        instead : the plant to look at where the one in focus is gone; '' in an empty book
        """
        plants = self.net.book.plants
        wanted = self.stood or Stood(self.focus, self.selected, self.way)
        self.focus, self.selected, self.way = wanted.focus, wanted.selected, wanted.way
        if self.way.other and self.way.other not in plants:
            self.way = NEAR
        if self.focus is not None and self.focus not in plants:
            self.focus, self.way = instead or None, NEAR
        if self.selected not in plants:
            self.selected = self.focus or instead
        as_it_was = Stood(self.focus, self.selected, self.way) == wanted
        somewhere = bool(wanted.focus or wanted.selected)
        self.stood = wanted if somewhere and not as_it_was else None

    def wanted(self) -> frozenset[str]:
        """All plants that paths bring into the picture."""
        return self.also | self.also_of_card | self.also_of_compared


def on_paths(net: PedigreeNetwork, paths: list[Path]) -> frozenset[str]:
    """The plants on the paths, as many as can be read."""
    codes = dict.fromkeys(code for path in paths for code in path)
    return frozenset([code for code in codes if code in net.book.plants][:ON_PATHS])
