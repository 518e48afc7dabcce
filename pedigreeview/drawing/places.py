"""The place of each plant in the book's order, worked out once for a network.  Knows no Qt."""

from __future__ import annotations

from typing import TYPE_CHECKING
from weakref import WeakKeyDictionary

if TYPE_CHECKING:
    from pedigreeview.network import PedigreeNetwork

__all__ = ["founder_places", "places_of"]

_HELD: WeakKeyDictionary[PedigreeNetwork, dict[str, int]] = WeakKeyDictionary()


def places_of(net: PedigreeNetwork) -> dict[str, int]:
    """Place of each plant, from 0, by code."""
    found = _HELD.get(net)
    if found is None:
        found = _HELD[net] = {code: place for place, code in enumerate(net.codes)}
    return found


_FOUNDERS: WeakKeyDictionary[PedigreeNetwork, dict[str, int]] = WeakKeyDictionary()


def founder_places(net: PedigreeNetwork) -> dict[str, int]:
    """Place of each founder among the founders, from 0, by code."""
    found = _FOUNDERS.get(net)
    if found is None:
        found = _FOUNDERS[net] = {code: place for place, code in enumerate(net.founders)}
    return found
