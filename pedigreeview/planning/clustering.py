"""Plants in the order of their relatedness, and the tree that the order comes from.

The distance of two plants is 1 − R with R = θ_ij / √(θ_ii θ_jj) (Wright's coefficient of
relationship, written for coancestry): 0 for clones and plants of one pure line, 1 for unrelated
plants.  Groups are joined by average linkage (UPGMA).
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

__all__ = ["Dendrogram", "Merge", "cluster", "relationship_table"]

FloatArray = NDArray[np.float64]

BEST_ORDER_UP_TO = 300
"""Plants up to which neighbours are laid as near each other as the tree allows (slower)."""


@dataclass(frozen=True, slots=True)
class Merge:
    """Two groups joined, as a bracket to draw.

    left, right : places of the two groups along the leaves (a leaf stands at its own number)
    left_height, right_height : distance at which each of them was made, 0 for a plant
    height : distance at which they join, 0 to 1
    plants : how many plants the joined group has
    """

    left: float
    right: float
    left_height: float
    right_height: float
    height: float
    plants: int


@dataclass(frozen=True, slots=True)
class Dendrogram:
    """The tree over some plants.

    order : (n,) numbers of the plants, in the order of the leaves
    merges : n − 1 brackets, the nearest first
    """

    order: tuple[int, ...]
    merges: tuple[Merge, ...]


def relationship_table(coancestry: FloatArray) -> FloatArray:
    """R = θ_ij / √(θ_ii θ_jj) of every pair: (n, n), each 0 to 1, 1 on the diagonal.

    0 with a plant whose coancestry with itself is 0 (a pool of unrelated plants).
    """
    own = np.diag(coancestry)
    scale = np.sqrt(np.outer(own, own))
    found = np.divide(coancestry, scale, out=np.zeros_like(coancestry), where=scale > 0)
    np.clip(found, 0.0, 1.0, out=found)
    np.fill_diagonal(found, 1.0)
    return found


def cluster(relationship: FloatArray) -> Dendrogram:
    """The tree of plants by their relationship.

    Parameters
    ----------
    relationship : (n, n), symmetric, 1 on the diagonal (`relationship_table`)

    Notes
    -----
    Up to 300 plants the leaves are turned so that neighbours are as near as the tree allows
    (Bar-Joseph et al. 2001, from memory); n² in time and memory beyond.
    """
    from scipy.cluster.hierarchy import leaves_list, linkage
    from scipy.spatial.distance import squareform

    count = len(relationship)
    if count < 2:
        return Dendrogram(tuple(range(count)), ())
    distance = 1.0 - (relationship + relationship.T) / 2
    np.fill_diagonal(distance, 0.0)
    joined = linkage(
        squareform(np.clip(distance, 0.0, 1.0), checks=False),
        "average",
        optimal_ordering=count <= BEST_ORDER_UP_TO,
    )
    order = leaves_list(joined)
    place = np.zeros(2 * count - 1)
    place[order] = np.arange(count)
    height = np.zeros(2 * count - 1)
    merges = []
    for step, (one, other, apart, plants) in enumerate(joined.tolist()):
        left, right = sorted((int(one), int(other)), key=lambda node: float(place[node]))
        new = count + step
        place[new], height[new] = (place[left] + place[right]) / 2, apart
        merges.append(
            Merge(
                float(place[left]),
                float(place[right]),
                float(height[left]),
                float(height[right]),
                apart,
                int(plants),
            )
        )
    return Dendrogram(tuple(order.tolist()), tuple(merges))
