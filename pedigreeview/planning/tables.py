"""Tables of numbers with named axes: the stuff that exact inference is made of.

An axis stands for one unknown (the genotype of a plant), its entries for the values that it may
have.  Tables are multiplied along the axes that they share and summed over those done with.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from math import prod

import numpy as np
from numpy.typing import NDArray

__all__ = ["Table", "size"]

FloatArray = NDArray[np.float64]


@dataclass(frozen=True, slots=True, eq=False)
class Table:
    """Numbers over the values of some unknowns.

    names : one for each axis of `values`, all different
    values : as many axes as names
    """

    names: tuple[int, ...]
    values: FloatArray

    def over(self, names: Sequence[int]) -> FloatArray:
        """The values laid along `names`, which hold all own ones; length 1 along the others."""
        at = {name: place for place, name in enumerate(self.names)}
        laid = self.values.transpose([at[name] for name in names if name in at])
        shape, lengths = [], iter(laid.shape)
        for name in names:
            shape.append(next(lengths) if name in at else 1)
        return laid.reshape(shape)

    def sum_to(self, names: Iterable[int]) -> Table:
        """Summed over every axis that is not among `names`."""
        kept = set(names)
        gone = tuple(place for place, name in enumerate(self.names) if name not in kept)
        if not gone:
            return self
        left = tuple(name for name in self.names if name in kept)
        return Table(left, self.values.sum(axis=gone))

    def at(self, name: int, value: int) -> Table:
        """The part in which one unknown has one value; its axis is gone."""
        if name not in self.names:
            return self
        place = self.names.index(name)
        left = self.names[:place] + self.names[place + 1 :]
        return Table(left, np.take(self.values, value, axis=place))


def size(lengths: Iterable[int]) -> int:
    """How many numbers a table with such axes holds."""
    return prod(lengths)
