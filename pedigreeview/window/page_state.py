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

__all__ = ["ON_PATHS", "Shown", "on_paths"]

ON_PATHS = 60
"""Most plants on paths that are brought into the picture."""


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

    def wanted(self) -> frozenset[str]:
        """All plants that paths bring into the picture."""
        return self.also | self.also_of_card | self.also_of_compared


def on_paths(net: PedigreeNetwork, paths: list[Path]) -> frozenset[str]:
    """The plants on the paths, as many as can be read."""
    codes = dict.fromkeys(code for path in paths for code in path)
    return frozenset([code for code in codes if code in net.book.plants][:ON_PATHS])
