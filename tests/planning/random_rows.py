"""Small random pedigrees of every origin, as rows, from a seeded generator."""

from __future__ import annotations

import numpy as np

from pedigreeview.network.arrays import FixationTooLow, PedigreeArrays
from pedigreeview.network.origins import UNKNOWN, Origin, Row

_AFTER = (Origin.CROSS,) * 6 + (
    Origin.SELF,
    Origin.SELF,
    Origin.MEMBER,
    Origin.SIB,
    Origin.CLONE,
    Origin.HAPLOID,
    Origin.FATHER,
)


def random_arrays(rng: np.random.Generator, *, ploidy: int = 2, most: int = 7) -> PedigreeArrays:
    """Two or three founders, then rows from those before them."""
    while True:
        alpha = float(rng.choice([0.0, 0.125])) if ploidy == 4 else 0.0
        arrays = PedigreeArrays.from_rows(_rows(rng, ploidy, most), alpha)
        try:
            arrays.inbreeding()
        except FixationTooLow:
            continue
        return arrays


def _rows(rng: np.random.Generator, ploidy: int, most: int) -> list[Row]:
    rows = [
        Row(
            Origin.FOUNDER,
            fixation=float(rng.choice([0.0, 0.25, 1.0])),
            pool=bool(rng.integers(0, 2)),
            ploidy=ploidy,
        )
        for _ in range(rng.integers(1, 4))
    ]
    while len(rows) < most:
        rows.append(_row(rng, rows, ploidy))
    return rows


def _row(rng: np.random.Generator, rows: list[Row], ploidy: int) -> Row:
    origin = _AFTER[rng.integers(0, len(_AFTER))]
    seed = int(rng.integers(0, len(rows)))
    pools = [at for at, row in enumerate(rows) if row.pool]
    pool = bool(rng.random() < 0.25)
    selfings = int(rng.choice([0, 0, 0, 1, 2]))
    if origin in (Origin.MEMBER, Origin.SIB):
        if not pools:
            origin = Origin.SELF
        else:
            seed = int(rng.choice(pools))
    if origin in (Origin.MEMBER, Origin.SELF, Origin.SIB):
        found = Row(origin, seed, selfings=selfings, pool=pool, ploidy=ploidy)
    elif origin in (Origin.CLONE, Origin.HAPLOID):
        found = Row(origin, seed, ploidy=ploidy)
    else:
        odds = [(1.0,), (0.5, 0.3), (0.8, 0.2), (0.6,), ()][rng.integers(0, 5)]
        count = min(len(odds), len(rows))
        chosen = rng.choice(len(rows), count, replace=False).tolist()
        pollen = tuple(zip(map(int, chosen), odds, strict=False))
        if origin is Origin.FATHER:
            return Row(origin, pollen=pollen, ploidy=ploidy)
        seed = UNKNOWN if rng.random() < 0.1 else seed
        found = Row(origin, seed, pollen, selfings, pool, ploidy=ploidy)
    if rng.random() < 0.12:
        found.pool, found.fixation = True, float(rng.choice([1.0, 1.0, 0.9]))
    return found
