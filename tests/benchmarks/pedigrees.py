"""Invented pedigrees of any size, as arrays and as plant tables, for the benchmarks."""

from __future__ import annotations

import os
from pathlib import Path

import numpy as np
from numpy.typing import NDArray

__all__ = ["SCALE", "deep", "scaled", "table", "wide"]

SCALE = float(os.environ.get("PEDIGREEVIEW_BENCHMARK_SCALE", "0.01"))
"""Share of the full size; 1 is the size that DEVELOPERS.md speaks of."""

_KINDS = ("variety", "plant")


def scaled(full: int, least: int = 200) -> int:
    """A full size, brought down to the scale of this run."""
    return max(least, round(full * SCALE))


def wide(
    plants: int, generations: int = 10, sibs: int = 20, selfings: float = 0.2, seed: int = 1
) -> tuple[NDArray[np.int64], NDArray[np.int64]]:
    """Rows of seed and pollen parents: families of sibs, every generation bred from the last."""
    rng = np.random.default_rng(seed)
    size = plants // (generations + 1)
    first = plants - generations * size
    seeds, pollens = [np.full(first, -1)], [np.full(first, -1)]
    low, high = 0, first
    for _ in range(generations):
        crosses = -(-size // sibs)
        mothers = rng.integers(low, high, crosses)
        fathers = np.where(
            rng.random(crosses) < selfings, mothers, rng.integers(low, high, crosses)
        )
        seeds.append(np.repeat(mothers, sibs)[:size])
        pollens.append(np.repeat(fathers, sibs)[:size])
        low, high = high, high + size
    return np.concatenate(seeds), np.concatenate(pollens)


def deep(
    plants: int, generations: int = 20, selfings: float = 0.2, seed: int = 1
) -> tuple[NDArray[np.int64], NDArray[np.int64]]:
    """One plant a cross: any plant of the generation before as seed parent, a tenth as pollen."""
    rng = np.random.default_rng(seed)
    size = plants // (generations + 1)
    first = plants - generations * size
    seeds, pollens = [np.full(first, -1)], [np.full(first, -1)]
    low, high = 0, first
    for _ in range(generations):
        mothers = rng.integers(low, high, size)
        chosen = rng.choice(np.arange(low, high), max(1, (high - low) // 10), replace=False)
        fathers = np.where(rng.random(size) < selfings, mothers, rng.choice(chosen, size))
        seeds.append(mothers)
        pollens.append(fathers)
        low, high = high, high + size
    return np.concatenate(seeds), np.concatenate(pollens)


def table(path: Path, seeds: NDArray[np.int64], pollens: NDArray[np.int64]) -> list[str]:
    """Write parents as a plant table (plant, seed_parent, pollen_parent, kind); the codes."""
    codes = [f"{10 + row % 15}-{row // 15:05d}" for row in range(len(seeds))]
    names = [*codes, ""]
    kinds = [_KINDS[0] if one < 0 else _KINDS[1] for one in seeds.tolist()]
    rows = zip(codes, seeds.tolist(), pollens.tolist(), kinds, strict=True)
    with path.open("w", encoding="utf-8", newline="") as file:
        file.write("plant,seed_parent,pollen_parent,kind\n")
        file.writelines(f"{c},{names[s]},{names[p]},{kind}\n" for c, s, p, kind in rows)
    return codes
