"""How related the plants of any set are: the table behind the heat map, in a telling order."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Sequence
from dataclasses import dataclass
from typing import TYPE_CHECKING, Literal

import numpy as np
from numpy.typing import NDArray

from pedigreeview.planning.clustering import Dendrogram, cluster, relationship_table
from pedigreeview.planning.near_duplicates import NearDuplicates, near_duplicates
from pedigreeview.planning.rows import coancestry_table, given_rows

if TYPE_CHECKING:
    from pedigreeview.network.pedigree import PedigreeNetwork

__all__ = ["Relatedness", "Relative", "farthest_relatives", "nearest_relatives", "relatedness"]

FloatArray = NDArray[np.float64]
Measure = Literal["coancestry", "relationship"]
Order = Literal["clustering", "generation", "given"]
Tick = Callable[[int, int], None]


@dataclass(frozen=True, slots=True)
class Relatedness:
    """The table of a set of plants.

    codes : n plants in the order of the table
    values : (n, n) coancestry θ or relationship R of every pair; on the diagonal θ(i, i) or 1
    measure, order : as asked
    dendrogram : over the plants in the order of the table; None unless ordered by clustering
    duplicates : groups of near-duplicates
    left_out : plants without coefficients, since they depend on records that cannot be right
    base : the base in one sentence
    """

    codes: tuple[str, ...]
    values: FloatArray
    measure: Measure
    order: Order
    dendrogram: Dendrogram | None
    duplicates: tuple[NearDuplicates, ...]
    left_out: tuple[str, ...]
    base: str

    def rows(self) -> list[list[str | float]]:
        """The table as rows with a heading, to be saved."""
        heading: list[str | float] = ["plant", *self.codes]
        lines = [[code, *line] for code, line in zip(self.codes, self.values.tolist(), strict=True)]
        return [heading, *lines]

    @property
    def mean(self) -> float:
        """Mean over all pairs of different plants; NaN below two plants."""
        count = len(self.codes)
        if count < 2:
            return float("nan")
        return float((self.values.sum() - np.trace(self.values)) / (count * (count - 1)))


@dataclass(frozen=True, slots=True)
class Relative:
    """A plant with its coancestry and relationship to the focus."""

    code: str
    coancestry: float
    relationship: float


def relatedness(
    net: PedigreeNetwork,
    codes: Iterable[str],
    *,
    measure: Measure = "coancestry",
    order: Order = "clustering",
    tick: Tick | None = None,
) -> Relatedness:
    """The relatedness of a set of plants.

    Parameters
    ----------
    codes : any plants; one named twice counts once
    measure : coancestry θ, or relationship R = θ_ij / √(θ_ii θ_jj)
    order : by clustering of 1 − R (`clustering`), by generation and then code, or as given
    tick : called with (step, steps); may raise `Cancelled`

    Raises
    ------
    UnknownPlantFault : a code that is not in the book
    """
    if tick is not None:
        tick(0, 3)
    asked = list(dict.fromkeys(codes))
    withheld = net.withheld
    held = [code for code in asked if code not in withheld]
    if order == "generation":
        held.sort(key=lambda code: (net.generation(code) or 0, code))
    theta = coancestry_table(net, held) if held else np.zeros((0, 0))
    if tick is not None:
        tick(1, 3)
    related = relationship_table(theta)
    tree = None
    if order == "clustering":
        tree = cluster(related)
        places = list(tree.order)
        held = [held[place] for place in places]
        theta, related = theta[np.ix_(places, places)], related[np.ix_(places, places)]
        tree = Dendrogram(tuple(range(len(held))), tree.merges)
    if tick is not None:
        tick(2, 3)
    return Relatedness(
        tuple(held),
        theta if measure == "coancestry" else related,
        measure,
        order,
        tree,
        tuple(near_duplicates(net, held, related)) if held else (),
        tuple(code for code in asked if code in withheld),
        net.base_sentence(),
    )


def nearest_relatives(
    net: PedigreeNetwork, focus: str, *, count: int = 12, among: Iterable[str] | None = None
) -> list[Relative]:
    """The plants most related to the focus, by R, then θ, then code; unrelated ones left out.

    Parameters
    ----------
    among : whom to look at; default every plant of the book
    """
    found = [item for item in _relatives(net, focus, among) if item.coancestry > 0]
    return sorted(found, key=lambda r: (-r.relationship, -r.coancestry, r.code))[:count]


def farthest_relatives(
    net: PedigreeNetwork, focus: str, *, count: int = 12, among: Iterable[str] | None = None
) -> list[Relative]:
    """The plants least related to the focus, unrelated ones first, then by code."""
    found = _relatives(net, focus, among)
    return sorted(found, key=lambda r: (r.relationship, r.coancestry, r.code))[:count]


def _relatives(net: PedigreeNetwork, focus: str, among: Iterable[str] | None) -> list[Relative]:
    own = net.self_coancestry(focus)
    column = dict(zip(net.codes, net.coancestry_with(focus).tolist(), strict=True))
    chosen: Sequence[str] = given_rows(net) if among is None else list(dict.fromkeys(among))
    held = [code for code in chosen if code != focus and code not in net.withheld]
    found = []
    for code in held:
        scale = (own * net.self_coancestry(code)) ** 0.5
        related = min(1.0, column[code] / scale) if scale > 0 else 0.0
        found.append(Relative(code, column[code], related))
    return found
