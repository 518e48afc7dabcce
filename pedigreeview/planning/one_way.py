"""Crosses that were made one way only: the other direction is still open."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from typing import TYPE_CHECKING

from pedigreeview.network.parentage import certain_pollen

if TYPE_CHECKING:
    from pedigreeview.network.pedigree import PedigreeNetwork

__all__ = ["OneWay", "crosses_one_way"]

_EVERY = 1000


@dataclass(frozen=True, slots=True)
class OneWay:
    """Two parents and their crosses; `seed` bore the seed in each of them."""

    seed: str
    pollen: str
    crosses: tuple[str, ...]


def crosses_one_way(net: PedigreeNetwork, tick: Callable[[], None] | None = None) -> list[OneWay]:
    """Pairs of parents crossed in one direction alone, in the order of the book.

    Only crosses of two different, certain parents and a known direction: open pollination and
    selfing have no other direction.  Crosses that belong to a reciprocal pair, by plant or by
    variety, are left out.

    Parameters
    ----------
    tick : called now and then; may raise `Cancelled`
    """
    pairs = net.reciprocal_pairs()
    paired = {code for pair in pairs for side in pair.crosses for code in side}
    both = {frozenset(pair.parents) for pair in pairs if pair.level == "plant"}
    candidates = net.book.candidates()
    alone: dict[tuple[str, str], list[str]] = {}
    for at, (code, cross) in enumerate(net.book.crosses.items()):
        if tick is not None and at % _EVERY == 0:
            tick()
        if code in paired or not cross.direction_known or not cross.seed_parent:
            continue
        pollen = certain_pollen(cross, candidates.get(code, []))
        if pollen and pollen != cross.seed_parent:
            alone.setdefault((cross.seed_parent, pollen), []).append(code)
    return [
        OneWay(seed, pollen, tuple(codes))
        for (seed, pollen), codes in alone.items()
        if frozenset((seed, pollen)) not in both
    ]
