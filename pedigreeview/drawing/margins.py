"""The blank margin round a picture: how wide it may be, and how wide it is unless chosen.

On paper a margin is what no ink reaches: most printers leave 3 to 5 mm blank whatever they are told
(common practice, no source), so that a sheet never has less than 5.  A picture on a screen may go
to its edge.
"""

from __future__ import annotations

import math

from pedigreeview.book.faults import Fault

__all__ = [
    "LEAST_ON_PAPER_MM",
    "MOST_MM",
    "ON_PAPER_MM",
    "ROUND_A_PICTURE_MM",
    "UNITS_PER_MM",
    "paper_margin",
    "picture_margin",
]

UNITS_PER_MM = 96 / 25.4
"""Picture units, 96 to the inch, in a millimetre."""
LEAST_ON_PAPER_MM = 5.0
MOST_MM = 50.0
ON_PAPER_MM = 10.0
"""Margin of a sheet unless another is chosen."""
ROUND_A_PICTURE_MM = 8.0
"""Blank space round an SVG or PNG unless another is chosen."""


def paper_margin(margin: float | None) -> float:
    """The margin of a sheet of paper, in mm; None: the usual one.

    Raises
    ------
    Fault : it is too narrow or too wide
    """
    return _within(ON_PAPER_MM if margin is None else margin, LEAST_ON_PAPER_MM)


def picture_margin(margin: float | None) -> float:
    """The blank space round a picture, in mm; None: the usual one.

    Raises
    ------
    Fault : it is too wide, or no length
    """
    return _within(ROUND_A_PICTURE_MM if margin is None else margin, 0.0)


def _within(margin: float, least: float) -> float:
    if not math.isfinite(margin) or not least <= margin <= MOST_MM:
        raise Fault(
            f"A margin of {margin:g} mm is not possible here.",
            None,
            f"Choose one from {least:g} to {MOST_MM:g} mm.",
        )
    return margin
