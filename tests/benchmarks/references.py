"""What the benchmarks are measured against, written as plainly as it is usually done."""

from __future__ import annotations

from typing import Any

import numba
import numpy as np

__all__ = ["add_parents", "meuwissen_luo", "recursion"]


@numba.njit(cache=True)
def meuwissen_luo(seed: Any, pollen: Any) -> Any:
    """F of every diploid plant, one walk over the ancestors for each (Meuwissen & Luo 1992).

    Founders are plants that are not inbred; the ancestors wait in a heap, youngest first.
    """
    n = len(seed)
    inbreeding = np.zeros(n + 1)
    inbreeding[n] = -1.0  # Of an unknown parent (index −1), so that D comes out right.
    within = np.zeros(n)
    share = np.zeros(n)
    heap = np.empty(n + 1, np.int64)
    for plant in range(n):
        s, p = seed[plant], pollen[plant]
        within[plant] = 0.5 - 0.25 * (inbreeding[s] + inbreeding[p])
        if s < 0 or p < 0:
            continue
        share[plant] = 1.0
        heap[0] = plant
        size = 1
        total = 0.0
        while size > 0:
            row = heap[0]
            size -= 1
            last = heap[size]
            at = 0
            while True:
                child = 2 * at + 1
                if child >= size:
                    break
                if child + 1 < size and heap[child + 1] > heap[child]:
                    child += 1
                if heap[child] <= last:
                    break
                heap[at] = heap[child]
                at = child
            heap[at] = last
            part = share[row]
            share[row] = 0.0
            total += part * part * within[row]
            for parent in (seed[row], pollen[row]):
                if parent < 0:
                    continue
                if share[parent] == 0.0:
                    at = size
                    size += 1
                    while at > 0 and heap[(at - 1) // 2] < parent:
                        heap[at] = heap[(at - 1) // 2]
                        at = (at - 1) // 2
                    heap[at] = parent
                share[parent] += 0.5 * part
        inbreeding[plant] = total - 1.0
    return inbreeding[:n]


@numba.njit(cache=True)
def add_parents(seed: Any, pollen: Any, values: Any) -> None:
    """One pass that only adds the parents' values to each plant's own."""
    for plant in range(len(seed)):
        total = values[plant]
        if seed[plant] >= 0:
            total += values[seed[plant]]
        if pollen[plant] >= 0:
            total += values[pollen[plant]]
        values[plant] = total


def recursion(seed: list[int], pollen: list[int], asked: list[int]) -> Any:
    """Coancestry of the asked plants with each other, pair by pair, with memory.

    θ(a, b) = ½ θ(s, b) + ½ θ(p, b) with s, p the parents of the younger, a; θ(a, a) = ½ (1 + F).
    """
    known: dict[int, float] = {}
    count = len(seed)

    def theta(a: int, b: int) -> float:
        if a < b:
            a, b = b, a
        key = a * count + b
        held = known.get(key)
        if held is not None:
            return held
        s, p = seed[a], pollen[a]
        if a == b:
            value = 0.5 if s < 0 or p < 0 else 0.5 * (1.0 + theta(s, p))
        else:
            value = 0.0
            if s >= 0:
                value += 0.5 * theta(s, b)
            if p >= 0:
                value += 0.5 * theta(p, b)
        known[key] = value
        return value

    found = np.empty((len(asked), len(asked)))
    for row, a in enumerate(asked):
        for column, b in enumerate(asked[: row + 1]):
            found[row, column] = found[column, row] = theta(a, b)
    return found
