"""Loops over many rows or records that may be stopped in the middle."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from typing import TypeVar

from pedigreeview.book.ticks import Tick, no_tick

__all__ = ["EACH", "Tick", "no_tick", "ticked"]

EACH = 256
"""Rows or records between two ticks: a small part of a second of any of the work done here."""

_Thing = TypeVar("_Thing")


def ticked(things: Iterable[_Thing], tick: Tick, each: int = EACH) -> Iterator[_Thing]:
    """The things one after the other; `tick` is called before the first and now and then after it.

    Parameters
    ----------
    things : rows, records, columns
    tick : may raise `Cancelled`, which ends the loop
    each : how many between two ticks
    """
    left = 0
    for thing in things:
        if not left:
            tick()
            left = each
        left -= 1
        yield thing
