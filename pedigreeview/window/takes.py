"""Whether the two directions of a cross took differently, asked of planning off the thread.

Knows no Qt.
"""

from __future__ import annotations

from typing import TYPE_CHECKING

from pedigreeview.book.reciprocal_counts import DirectionCounts

if TYPE_CHECKING:
    from pedigreeview.planning.takes import TakeDifference

__all__ = ["ask_takes"]


def ask_takes(ahead: DirectionCounts, back: DirectionCounts) -> TakeDifference | None:
    """The exact test of the flowers of both directions; None where they are not written down.

    Also None for more fruits than flowers, which the checks name.
    """
    from pedigreeview.planning.takes import compare_takes

    here, there = ahead.take_of, back.take_of
    if here is None or there is None or here[0] > here[1] or there[0] > there[1]:
        return None
    return compare_takes((here[0], there[0]), (here[1], there[1]))
