"""Which founder has which colour or pattern: as steady as can be over the pictures of a book.

Every founder has a number of its own to begin with: those with the most descendants the first ones,
the others the same numbers over again.  A picture of a few founders gives each a number; who has
the better claim keeps its own, the others take what is free.  Knows no Qt.
"""

from __future__ import annotations

from typing import TYPE_CHECKING
from weakref import WeakKeyDictionary

if TYPE_CHECKING:
    from collections.abc import Iterable, Mapping

    from pedigreeview.network import PedigreeNetwork

__all__ = [
    "OTHERS",
    "PALETTE_SIZE",
    "Table",
    "numbers_as_before",
    "palette_numbers",
    "ranked_founders",
    "show_table",
    "shown_numbers",
    "shown_table",
]

PALETTE_SIZE = 12
OTHERS = -1
"""Number of the founders that share one colour, when there are more than the palette holds."""

Table = tuple[tuple[str, int], ...]
"""Founders with their numbers, in the order of the numbers, the others last."""

_RANKED: WeakKeyDictionary[PedigreeNetwork, tuple[str, ...]] = WeakKeyDictionary()
_SHOWN: WeakKeyDictionary[PedigreeNetwork, Table] = WeakKeyDictionary()


def palette_numbers(
    net: PedigreeNetwork,
    shares: Mapping[str, float],
    *,
    focus: str = "",
    own: Mapping[str, float] | None = None,
    held: Iterable[tuple[str, int]] = (),
    like: Iterable[tuple[str, int]] = (),
) -> Table:
    """Number in the palette for each founder with a share in the picture.

    Where there are more founders than numbers, the focus itself comes first, then the founders with
    the largest shares in it, then those with the largest in the picture.  A founder that gets a
    number gets its own, unless one with more descendants in the book has the same.

    Parameters
    ----------
    shares : by founder, its shares in the picture summed
    focus : the plant in the middle
    own : founder shares of the focus
    held : numbers that are given away already, as on the picture that this one belongs to
    like : numbers in another picture: they say nothing of who gets one, but who does keeps its own
    """
    ranked = ranked_founders(net)
    rank = {code: at for at, code in enumerate(ranked)}
    last = len(rank)
    own = own or {}

    def claim(code: str) -> tuple[bool, float, float, int, str]:
        return (
            code != focus,
            -round(own.get(code, 0.0), 9),
            -round(shares[code], 9),
            rank.get(code, last),
            code,
        )

    given = {code: number for code, number in held if number != OTHERS}
    numbers = {code: given[code] for code in shares if code in given}
    taken = set(given.values())
    chosen = sorted((code for code in shares if code not in numbers), key=claim)
    chosen = chosen[: PALETTE_SIZE - len(taken)]
    elsewhere = {code: number for code, number in like if number != OTHERS}
    for code in chosen:
        number = elsewhere.get(code, OTHERS)
        if number != OTHERS and number not in taken:
            numbers[code] = number
            taken.add(number)
    homeless = []
    chosen = [code for code in chosen if code not in numbers]
    for code in sorted(chosen, key=lambda code: (rank.get(code, last), code)):
        home = rank.get(code, last) % PALETTE_SIZE
        if home in taken:
            homeless.append(code)
        else:
            numbers[code] = home
            taken.add(home)
    free = [number for number in range(PALETTE_SIZE) if number not in taken]
    numbers.update(zip(homeless, free, strict=False))
    numbers.update({code: OTHERS for code in shares if code not in numbers})
    order = sorted(numbers, key=lambda code: (numbers[code] == OTHERS, numbers[code], code))
    return tuple((code, numbers[code]) for code in order)


def numbers_as_before(net: PedigreeNetwork, table: Table, like: Table) -> Table:
    """The same founders in colour, those that had one in the picture before with that one.

    Parameters
    ----------
    table : of the picture
    like : of the picture before; what is on the screen keeps its colour where it can
    """
    chosen = {code: 1.0 for code, number in table if number != OTHERS}
    numbered = palette_numbers(net, chosen, like=like)
    return (*numbered, *(one for one in table if one[1] == OTHERS))


def show_table(net: PedigreeNetwork, table: Table) -> None:
    """Remember the numbers of the picture on show, for what stands beside it."""
    _SHOWN[net] = table


def shown_table(net: PedigreeNetwork) -> Table:
    """The numbers of the picture on show; none before there is one."""
    return _SHOWN.get(net, ())


def shown_numbers(net: PedigreeNetwork, shares: Mapping[str, float]) -> Table:
    """The numbers of founders as on the picture on show; those that it has not, as they can be."""
    return palette_numbers(net, shares, held=_SHOWN.get(net, ()))


def ranked_founders(net: PedigreeNetwork) -> tuple[str, ...]:
    """Founders, those with the most descendants first; in a small book in its own order."""
    held = _RANKED.get(net)
    if held is None:
        held = tuple(net.founders)
        if len(held) > PALETTE_SIZE:
            from pedigreeview.network.links import links_of

            links = links_of(net)
            order = (-links.descendants_of_founders()).argsort(kind="stable")
            held = tuple(net.codes[row] for row in links.founders[order].tolist())
        _RANKED[net] = held
    return held
