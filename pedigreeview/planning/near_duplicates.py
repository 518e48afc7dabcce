"""Plants that are nearly the same: clones, plants of one pure line, plants without a difference."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import TYPE_CHECKING

import numpy as np
from numpy.typing import NDArray

if TYPE_CHECKING:
    from pedigreeview.network.pedigree import PedigreeNetwork

__all__ = ["NearDuplicates", "near_duplicates"]

NEARLY_ALIKE = 0.95
"""Relationship from which two plants count as nearly the same."""
_ALIKE = 1 - 1e-9


@dataclass(frozen=True, slots=True)
class NearDuplicates:
    """A group in which each plant is nearly the same as another one of it.

    plants : codes
    least : smallest relationship within the group
    why : 'cuttings of one plant', 'alike at every locus by descent' or 'nearly alike by descent'
    sentence : the group in words
    """

    plants: tuple[str, ...]
    least: float
    why: str
    sentence: str


def near_duplicates(
    net: PedigreeNetwork,
    codes: Sequence[str],
    relationship: NDArray[np.float64],
    *,
    alike: float = NEARLY_ALIKE,
) -> list[NearDuplicates]:
    """Groups of near-duplicates among some plants, the largest first.

    Parameters
    ----------
    codes : n plants
    relationship : (n, n) R of every pair, in their order
    alike : relationship from which two plants are nearly the same
    """
    from scipy.sparse import csr_matrix
    from scipy.sparse.csgraph import connected_components

    near = csr_matrix(relationship >= alike)
    _, label = connected_components(near, directed=False)
    found = []
    order = np.argsort(label, kind="stable")
    for group in np.split(order, np.flatnonzero(np.diff(label[order])) + 1):
        if len(group) < 2:
            continue
        plants = tuple(codes[at] for at in group.tolist())
        least = float(relationship[np.ix_(group, group)].min())
        why = _why(net, plants, least)
        listed = ", ".join(plants[:6]) + (f" and {len(plants) - 6} more" if len(plants) > 6 else "")
        found.append(NearDuplicates(plants, least, why, f"{listed}: {why}."))
    return sorted(found, key=lambda item: (-len(item.plants), item.plants))


def _why(net: PedigreeNetwork, plants: Sequence[str], least: float) -> str:
    if len({_genotype(net, code) for code in plants}) == 1:
        return "cuttings of one plant"
    return "alike at every locus by descent" if least >= _ALIKE else "nearly alike by descent"


def _genotype(net: PedigreeNetwork, code: str) -> str:
    origin = net.parents(code)
    while origin.raised == "cutting_of":
        code = origin.source
        origin = net.parents(code)
    return code
