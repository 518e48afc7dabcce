"""Which founder has which colour or pattern: the same in every picture of a book.  No Qt."""

from __future__ import annotations

from typing import TYPE_CHECKING
from weakref import WeakKeyDictionary

if TYPE_CHECKING:
    from collections.abc import Mapping

    from pedigreeview.network import PedigreeNetwork

__all__ = ["OTHERS", "PALETTE_SIZE", "palette_numbers", "ranked_founders"]

PALETTE_SIZE = 12
OTHERS = -1
"""Number of the founders that share one colour, when there are more than the palette holds."""

_RANKED: WeakKeyDictionary[PedigreeNetwork, tuple[str, ...]] = WeakKeyDictionary()


def palette_numbers(
    net: PedigreeNetwork, shares: Mapping[str, float]
) -> tuple[tuple[str, int], ...]:
    """Number in the palette for each founder with a share in the picture.

    The founders with the most descendants in the book keep their numbers in every picture; where a
    picture shows none of them, others take the free numbers, largest share first.
    """
    ranked = ranked_founders(net)
    fixed = {code: number for number, code in enumerate(ranked[:PALETTE_SIZE])}
    numbers = {code: fixed[code] for code in shares if code in fixed}
    free = [number for number in range(PALETTE_SIZE) if number not in numbers.values()]
    rank = {code: at for at, code in enumerate(ranked)}
    rest = sorted(
        (code for code in shares if code not in numbers),
        key=lambda code: (-shares[code], rank.get(code, len(rank))),
    )
    for code in rest:
        numbers[code] = free.pop(0) if free else OTHERS
    order = sorted(numbers, key=lambda code: (numbers[code] == OTHERS, numbers[code], code))
    return tuple((code, numbers[code]) for code in order)


def ranked_founders(net: PedigreeNetwork) -> tuple[str, ...]:
    """Founders, those with the most descendants first; in a small book in its own order."""
    held = _RANKED.get(net)
    if held is None:
        place = {code: at for at, code in enumerate(net.founders)}
        if len(place) <= PALETTE_SIZE:
            held = tuple(net.founders)
        else:
            count = net.descendant_counts(net.founders)
            held = tuple(sorted(net.founders, key=lambda code: (-count[code], place[code])))
        _RANKED[net] = held
    return held
