"""What of a sample tag a line of the legend means: a ring of the accent about that part of it."""

from __future__ import annotations

from PySide6.QtCore import QRectF, Qt
from PySide6.QtGui import QPainter

from pedigreeview.drawing.signs import colour, pen
from pedigreeview.drawing.theme import Theme

__all__ = ["PICKED", "RESERVE", "ground_below", "pick_out"]

PICKED: dict[str, tuple[float, float, float, float]] = {
    "tag": (13, 13, 60, 32),
    "stripe": (-5, -5, 21, 70),
    "unknown share": (-5, 19, 21, 46),
    "bar": (11, 43, 94, 19),
    "withheld": (11, 43, 94, 19),
    "pool": (98, -10, 20, 78),
    "kept": (92, 14, 22, 32),
    "chain": (12, 28, 74, 20),
    "tabs": (96, 51, 26, 20),
}
"""Left, upper edge, width and height of the part, on a sample tag of 108 by 60."""
RESERVE = {"tabs": 15.0, "focus": 10.0, "selected": 5.0, "pin": 4.0}
"""Further height of a line whose sample reaches beyond its tag."""


def ground_below(painter: QPainter, rect: QRectF, look: Theme) -> None:
    """The ground of the picture under a sample, so that its pale paper stands out."""
    painter.setPen(Qt.PenStyle.NoPen)
    painter.setBrush(colour(look["ground" if look.name == "dark" else "band"]))
    painter.drawRoundedRect(rect, 4, 4)


def pick_out(painter: QPainter, mark: str, look: Theme, x: float, y: float, scale: float) -> None:
    """A ring about what is meant.

    x, y : where the sample tag's upper left corner lies; scale : of it, 1 for 108 units of width
    """
    part = PICKED.get(mark)
    if part is None:
        return
    left, top, wide, high = (side * scale for side in part)
    rect = QRectF(x + left, y + top, wide, high)
    painter.setBrush(Qt.BrushStyle.NoBrush)
    for ink, thick in ((look["paper"], 3.4), (look["accent"], 1.7)):
        painter.setPen(pen(ink, thick))
        painter.drawRoundedRect(rect, 3, 3)
