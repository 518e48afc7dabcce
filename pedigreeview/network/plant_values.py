"""One number for every plant of a book at once, in the order of `codes`."""

from __future__ import annotations

from typing import TYPE_CHECKING

import numpy as np

from pedigreeview.network.links import links_of
from pedigreeview.network.sweeps import FloatArray

if TYPE_CHECKING:
    from pedigreeview.network.pedigree import PedigreeNetwork

__all__ = ["founder_share_of_all", "inbreeding_of_all", "shares_by_code"]


def inbreeding_of_all(net: PedigreeNetwork) -> FloatArray:
    """F of every plant: (n,) float64, NaN where it is withheld; of a pool that of a member."""
    rows = net._row_of_codes
    found = np.full(len(rows), np.nan)
    found[rows >= 0] = net.arrays.inbreeding()[rows[rows >= 0]]
    return found


def founder_share_of_all(net: PedigreeNetwork, founder: str) -> FloatArray:
    """Expected share of one founder in every plant: (n,) float64, NaN in loops.

    Raises
    ------
    UnknownPlantFault : no such plant
    """
    net.parents(founder)
    links = links_of(net)
    row = net.codes.index(founder)
    shares: FloatArray = links.founder_shares(np.array([row]))[:, 0]
    shares[links.sorted :] = np.nan
    return shares


def shares_by_code(net: PedigreeNetwork, founder: str) -> dict[str, float]:
    """Expected share of one founder by code, for `book.filtering`; none for plants in loops."""
    shares = founder_share_of_all(net, founder)
    held = zip(net.codes, shares.tolist(), strict=True)
    return {code: share for code, share in held if share == share}
