# mypy: disable-error-code="no-untyped-def"
"""numba kernels over the links of a whole book; each has its plain road in `links`."""

from __future__ import annotations

import numba
import numpy as np

__all__ = ["descendants_of_founders"]


@numba.njit(cache=True, nogil=True, boundscheck=False)
def descendants_of_founders(starts, older, founders):
    """How many rows descend from each founder, 64 founders at a time as bits."""
    count = len(starts) - 1
    total = np.zeros(len(founders), np.int64)
    below = np.zeros(count, np.uint64)
    own = np.zeros(count, np.uint64)
    for first in range(0, len(founders), 64):
        last = min(first + 64, len(founders))
        own[:] = 0
        for at in range(first, last):
            own[founders[at]] = np.uint64(1) << np.uint64(at - first)
        seen = np.zeros(64, np.int64)
        for row in range(count):
            held = np.uint64(0)
            for at in range(starts[row], starts[row + 1]):
                held |= below[older[at]] | own[older[at]]
            below[row] = held
            if held:
                for bit in range(64):
                    seen[bit] += np.int64((held >> np.uint64(bit)) & np.uint64(1))
        total[first:last] = seen[: last - first]
    return total
