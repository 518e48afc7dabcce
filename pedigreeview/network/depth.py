"""How deep and how complete a pedigree is known behind its plants.

A generation is counted at every step that makes seed: a cross, a selfing (each unrecorded one too),
sib-mating within a pool, a doubled haploid.  A cutting, a chromosome-doubled form and a plant grown
from seed of a pool stand in the generation of what they came from.  An uncertain pollen parent is
known as far as the odds of its candidates go; the rest is unknown.  (Sources as named, definitions
from memory: Maignel et al. 1996, Boichard et al. 1997, MacCluer et al. 1983.)
"""

from __future__ import annotations

from collections.abc import Sequence

import numpy as np
from numpy.typing import NDArray

from pedigreeview.network.arrays import PedigreeArrays
from pedigreeview.network.origins import UNKNOWN, Origin
from pedigreeview.network.subset import ancestors_of
from pedigreeview.network.sweeps import FloatArray

__all__ = ["completeness_index", "generation_equivalents", "known_share_by_generation"]

_BY_SEED = (Origin.CROSS, Origin.SELF, Origin.SIB, Origin.HAPLOID)


def generation_equivalents(arrays: PedigreeArrays) -> FloatArray:
    """Complete generation equivalents of every row, the number of generations known: (n,).

    Notes
    -----
    Σ (½)^n over the known ancestors, each n generations back (Maignel et al. 1996); through the
    weights: g(i) = Σ_k w_ik (1 + g(k)) for a step that makes seed, Σ_k w_ik g(k) for another, and
    1 more for each unrecorded selfing.  A founder has 0.  Cost: one sweep.
    """
    weights = arrays.weights
    row = np.repeat(np.arange(len(arrays)), np.diff(weights.starts))
    known = _known(arrays)
    behind = np.bincount(row, weights.weight * known[weights.older], minlength=len(arrays))
    steps = np.where(_makes_seed(arrays), behind, 0.0) + arrays.selfings
    steps[arrays.origin == Origin.FOUNDER] = 0.0
    return weights.gather(steps.astype(float)[:, None])[:, 0]


def known_share_by_generation(
    arrays: PedigreeArrays, rows: Sequence[int], generations: int
) -> FloatArray:
    """Share of all ancestors of each generation that is known: (len(rows), generations).

    Column 0 holds the parents, column 1 the grandparents, and so on; each in [0, 1].
    """
    found = _shares_known(arrays, rows, generations)
    return np.array([found[row][1:] for row in rows]).reshape(len(rows), generations)


def completeness_index(arrays: PedigreeArrays, row: int, generations: int = 5) -> float:
    """How evenly both sides of a plant are known over some generations, 0 to 1 (all known).

    Parameters
    ----------
    generations : how many generations back are looked at, 1 or more

    Notes
    -----
    4 S P / (S + P), with S and P the mean over the generations of the share of the whole
    generation that is known on the seed and on the pollen side, each ½ at most, so that a complete
    pedigree gives 1 (MacCluer et al. 1983); 0 where a side is not known at all.  In a selfing both
    sides are the one parent.  A clone has the index of what it came from.
    """
    if generations < 1:
        raise ValueError("a completeness index needs one generation or more")
    found = _shares_known(arrays, [row], generations)
    while arrays.selfings[row] == 0 and arrays.origin[row] in (
        Origin.CLONE,
        Origin.DOUBLED,
        Origin.MEMBER,
    ):
        row = int(arrays.seed[row])
    if arrays.origin[row] == Origin.CROSS and arrays.selfings[row] == 0:
        seed = int(arrays.seed[row])
        first, last = arrays.option_starts[row], arrays.option_starts[row + 1]
        parents, odds = arrays.options[first:last].tolist(), arrays.odds[first:last].tolist()
        of_seed = found[seed][:generations] if seed != UNKNOWN else np.zeros(generations)
        of_pollen = sum(
            (
                share * found[parent][:generations]
                for parent, share in zip(parents, odds, strict=True)
            ),
            np.zeros(generations),
        )
    else:
        of_seed = of_pollen = found[row][1:]
    mean_seed, mean_pollen = float(np.mean(of_seed)) / 2, float(np.mean(of_pollen)) / 2
    if mean_seed + mean_pollen == 0:
        return 0.0
    return 4 * mean_seed * mean_pollen / (mean_seed + mean_pollen)


def _makes_seed(arrays: PedigreeArrays) -> NDArray[np.bool_]:
    return np.isin(arrays.origin, _BY_SEED)


def _known(arrays: PedigreeArrays) -> FloatArray:
    """How far a row itself is known: 1, or the odds of its candidates for the one unseen father."""
    known = np.ones(len(arrays))
    for row in np.flatnonzero(arrays.origin == Origin.FATHER).tolist():
        known[row] = arrays.odds[arrays.option_starts[row] : arrays.option_starts[row + 1]].sum()
    return known


def _shares_known(
    arrays: PedigreeArrays, rows: Sequence[int], generations: int
) -> dict[int, FloatArray]:
    """For the asked rows and all behind them: known share of generations 0 (itself) to the last."""
    makes_seed, weights = _makes_seed(arrays), arrays.weights
    found: dict[int, FloatArray] = {}
    for row in ancestors_of(weights, np.asarray(rows, np.int64)).tolist():
        behind = np.zeros(generations + 1)
        for at in range(weights.starts[row], weights.starts[row + 1]):
            behind += weights.weight[at] * found[int(weights.older[at])]
        if arrays.origin[row] == Origin.FOUNDER:
            behind[0] = 1.0
        elif makes_seed[row] or arrays.selfings[row]:
            first = int(arrays.selfings[row]) + int(makes_seed[row])
            moved = np.ones(generations + 1)
            moved[first:] = behind[: max(0, generations + 1 - first)]
            behind = moved
        found[row] = behind
    return found
