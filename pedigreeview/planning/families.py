"""Families ranked by their means, each drawn towards the mean of all as its data are thin."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from typing import TYPE_CHECKING

import numpy as np

from pedigreeview.book.faults import Fault

if TYPE_CHECKING:
    from pedigreeview.network.pedigree import PedigreeNetwork
    from pedigreeview.planning.measured import Observation

__all__ = ["FamilyRank", "FamilyRanking", "families_of", "rank_families"]

_NORMAL_95 = 1.959963984540054
_FEW_FAMILIES, _FEW_PLANTS = 5, 3


@dataclass(frozen=True, slots=True)
class FamilyRank:
    """One family.

    mean : mean of its plants as measured
    shrunk : what to expect of more plants of it
    low, high : 95% interval of that
    plants : how many were measured
    """

    family: str
    mean: float
    shrunk: float
    low: float
    high: float
    plants: int


@dataclass(frozen=True, slots=True)
class FamilyRanking:
    """Families, the highest expected mean first.

    between, within : variance between families (0 where none is shown) and among their plants
    warnings : sentences, where data are thin
    """

    families: tuple[FamilyRank, ...]
    between: float
    within: float
    warnings: tuple[str, ...]


def families_of(net: PedigreeNetwork, found: Sequence[Observation]) -> dict[str, list[float]]:
    """Mean value of each measured plant, by the cross that it was raised from."""
    values: dict[str, list[float]] = {}
    for item in found:
        values.setdefault(item.plant, []).append(item.value)
    families: dict[str, list[float]] = {}
    for plant, held in values.items():
        cross = net.parents(plant).cross
        if cross:
            families.setdefault(cross, []).append(float(np.mean(held)))
    return families


def rank_families(families: Mapping[str, Sequence[float]]) -> FamilyRanking:
    """Rank families by what to expect of more plants of each.

    Parameters
    ----------
    families : name → values of its plants

    Raises
    ------
    Fault : fewer than two families, or none with two plants

    Notes
    -----
    One-way random effects: variances by the expected mean squares (analysis of variance), then the
    mean of all + k (mean of the family − mean of all), k = n/(n + σ²w/σ²b).  The mean of all counts
    each family by 1/(σ²b + σ²w/n).  The intervals take the variances as known.
    """
    groups = {name: np.asarray(values, float) for name, values in families.items() if len(values)}
    counts = np.array([len(values) for values in groups.values()])
    if len(groups) < 2 or counts.max() < 2:
        raise Fault(
            "There are too few measured plants to rank families.",
            None,
            "Score two or more plants in two or more families.",
        )
    means = np.array([values.mean() for values in groups.values()])
    total, number = int(counts.sum()), len(groups)
    squares = sum(float(((v - v.mean()) ** 2).sum()) for v in groups.values())
    within = squares / (total - number)
    grand = float(counts @ means / total)
    mean_square = float(counts @ (means - grand) ** 2) / (number - 1)
    typical = (total - float((counts**2).sum()) / total) / (number - 1)
    between = max(0.0, (mean_square - within) / typical)
    if between > 0 or within > 0:
        weight = 1.0 / (between + within / counts)
        grand = float(weight @ means / weight.sum())
    ranks = []
    for (name, values), mean in zip(groups.items(), means.tolist(), strict=True):
        noise = between + within / len(values)
        share = between / noise if noise > 0 else 1.0
        shrunk = grand + share * (mean - grand)
        spread = _NORMAL_95 * (between * (1 - share)) ** 0.5
        ranks.append(FamilyRank(name, mean, shrunk, shrunk - spread, shrunk + spread, len(values)))
    ranks.sort(key=lambda rank: (-rank.shrunk, rank.family))
    return FamilyRanking(tuple(ranks), between, within, _warnings(counts.tolist(), between))


def _warnings(counts: list[int], between: float) -> tuple[str, ...]:
    said = []
    if between == 0:
        said.append(
            "The families differ no more than their plants do by chance: no order is shown."
        )
    if len(counts) < _FEW_FAMILIES:
        said.append(f"Only {len(counts)} families: how far they differ is hardly known.")
    thin = sum(count < _FEW_PLANTS for count in counts)
    if thin:
        what = "family has" if thin == 1 else "families have"
        said.append(f"{thin} {what} fewer than {_FEW_PLANTS} measured plants.")
    return tuple(said)
