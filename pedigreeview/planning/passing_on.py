"""What a plant passes on: exact transitions of the distribution of multi-locus genotypes.

A distribution is an array of shape (4,) * n (see `targets`).  It is moved locus by locus: beside
the array runs a small axis that says which strand of the parent each gamete follows, and between
neighbouring loci a gamete changes strand with the recombination fraction.  That makes n loci cost
n passes over 4^n numbers instead of all pairs of gametes of all plants.  The same pass backwards
gives, for every genotype of the parent, the chance that its progeny have some property.

Arrays of Fractions stay exact; arrays of doubles are quick.  Crossovers without interference.
"""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

import numpy as np
from numpy.typing import NDArray

from pedigreeview.planning.targets import Share

__all__ = [
    "crossed",
    "crossed_back",
    "doubled",
    "doubled_back",
    "gametes",
    "gametes_back",
    "pair_of",
    "selfed",
    "selfed_back",
    "sib_mated",
    "sib_of",
]

Table = NDArray[Any]

_SELF = np.array(
    [
        [2 * (i >> (1 - a) & 1) + (i >> (1 - b) & 1) for i in range(4)]
        for a in (0, 1)
        for b in (0, 1)
    ]
)
"""[phase, parent's alleles] -> alleles of the selfed seed."""
_GAMETE = np.array([[i >> (1 - a) & 1 for i in range(4)] for a in (0, 1)])


def _sib_map() -> NDArray[np.int64]:
    table = np.zeros((16, 16), np.int64)
    for phase in range(16):
        a, b, c, d = (phase >> 3 & 1, phase >> 2 & 1, phase >> 1 & 1, phase & 1)
        for pair in range(16):
            one, two = pair >> 2, pair & 3
            first = 2 * (one >> (1 - a) & 1) + (two >> (1 - b) & 1)
            second = 2 * (one >> (1 - c) & 1) + (two >> (1 - d) & 1)
            table[phase, pair] = 4 * first + second
    return table


_SIB = _sib_map()


def _switch(state: Table, r: Share, strands: int) -> Table:
    """Let each of the followed gametes change strand with probability r (axis 0: strands)."""
    shaped = state.reshape((2,) * strands + state.shape[1:])
    for axis in range(strands):
        shaped = (1 - r) * shaped + r * np.flip(shaped, axis)
    return shaped.reshape(state.shape)


def _pass(state: Table, recombination: Sequence[Share], step: NDArray[np.int64]) -> Table:
    phases, size = step.shape
    strands = phases.bit_length() - 1
    out = int(step.max()) + 1
    moved = np.stack([state] * phases) * _one(state, phases)
    for at in range(state.ndim):
        if at:
            moved = _switch(moved, recombination[at - 1], strands)
        parts = []
        for phase in range(phases):
            table = np.moveaxis(moved[phase], at, 0)
            sums = np.zeros((out, *table.shape[1:]), dtype=state.dtype)
            for i in range(size):
                sums[step[phase, i]] = sums[step[phase, i]] + table[i]
            parts.append(np.moveaxis(sums, 0, at))
        moved = np.stack(parts)
    return np.asarray(moved.sum(axis=0))


def _pass_back(value: Table, recombination: Sequence[Share], step: NDArray[np.int64]) -> Table:
    phases = len(step)
    strands = phases.bit_length() - 1
    moved = np.stack([value] * phases) * _one(value, phases)
    for at in reversed(range(value.ndim)):
        moved = np.stack([np.take(moved[p], step[p], axis=at) for p in range(phases)])
        if at:
            moved = _switch(moved, recombination[at - 1], strands)
    return np.asarray(moved.sum(axis=0))


def _one(like: Table, phases: int) -> Any:
    from fractions import Fraction

    return Fraction(1, phases) if like.dtype == object else 1.0 / phases


def selfed(plants: Table, recombination: Sequence[Share]) -> Table:
    """(4,) * n: the selfed seed of plants of that distribution, each selfed on its own."""
    return _pass(plants, recombination, _SELF)


def selfed_back(value: Table, recombination: Sequence[Share]) -> Table:
    """(4,) * n: for each genotype the mean of `value` over its selfed seed."""
    return _pass_back(value, recombination, _SELF)


def gametes(plants: Table, recombination: Sequence[Share]) -> Table:
    """(2,) * n: gametes of plants of that distribution."""
    return _pass(plants, recombination, _GAMETE)


def gametes_back(value: Table, recombination: Sequence[Share]) -> Table:
    """(4,) * n: for each genotype the mean of `value`, (2,) * n, over its gametes."""
    return _pass_back(value, recombination, _GAMETE)


def crossed(seed_side: Table, pollen_side: Table) -> Table:
    """(4,) * n: plants from two independent gametes, each (2,) * n."""
    n = seed_side.ndim
    both = np.multiply.outer(seed_side, pollen_side)
    order = [axis for at in range(n) for axis in (at, n + at)]
    return both.transpose(order).reshape((4,) * n)


def crossed_back(value: Table, pollen_side: Table, recombination: Sequence[Share]) -> Table:
    """(4,) * n: for each genotype of the seed parent the mean of `value` over its seed from pollen
    of that distribution, (2,) * n."""
    n = value.ndim
    apart = value.reshape((2,) * (2 * n))
    order = [*range(0, 2 * n, 2), *range(1, 2 * n, 2)]
    flat = apart.transpose(order).reshape(2**n, 2**n)
    mean = np.asarray(flat @ pollen_side.reshape(-1)).reshape((2,) * n)
    return gametes_back(mean, recombination)


def doubled(plants: Table, recombination: Sequence[Share]) -> Table:
    """(4,) * n: doubled haploids from plants of that distribution."""
    single = gametes(plants, recombination)
    found = np.zeros_like(plants)
    found[np.ix_(*([[0, 3]] * plants.ndim))] = single
    return found


def doubled_back(value: Table, recombination: Sequence[Share]) -> Table:
    """(4,) * n: for each genotype the mean of `value` over its doubled haploids."""
    pure = value[np.ix_(*([[0, 3]] * value.ndim))]
    return gametes_back(pure, recombination)


def pair_of(plants: Table) -> Table:
    """(16,) * n: two independent plants of one distribution, alleles of the first four-fold."""
    n = plants.ndim
    both = np.multiply.outer(plants, plants)
    order = [axis for at in range(n) for axis in (at, n + at)]
    return both.transpose(order).reshape((16,) * n)


def sib_mated(pairs: Table, recombination: Sequence[Share]) -> Table:
    """(16,) * n: two full sibs from each pair of that distribution."""
    return _pass(pairs, recombination, _SIB)


def sib_of(pairs: Table) -> Table:
    """(4,) * n: one plant of each pair."""
    n = pairs.ndim
    apart = pairs.reshape((4,) * (2 * n))
    return np.asarray(apart.sum(axis=tuple(range(1, 2 * n, 2))))
