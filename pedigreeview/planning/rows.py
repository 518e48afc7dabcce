"""Rows of plants in the arrays, for what is computed there many at a time."""

from __future__ import annotations

from collections.abc import Iterable
from typing import TYPE_CHECKING

import numpy as np
from numpy.typing import NDArray

if TYPE_CHECKING:
    from pedigreeview.network.pedigree import PedigreeNetwork

__all__ = ["coancestry_table", "given_rows", "row_of", "rows_of"]


def row_of(net: PedigreeNetwork, code: str) -> int:
    """Row of a plant.

    Raises
    ------
    UnknownPlantFault : no such plant
    WithheldFault : it depends on records that cannot be right
    """
    return net._row(code)


def rows_of(net: PedigreeNetwork, codes: Iterable[str]) -> NDArray[np.int64]:
    """Rows of some plants, in their order; raises as `row_of`."""
    return np.array([net._row(code) for code in codes], np.int64)


def given_rows(net: PedigreeNetwork) -> list[str]:
    """Codes of all plants whose coefficients are not withheld, parents first."""
    withheld = net.withheld
    return [code for code in net.codes if code not in withheld]


def coancestry_table(net: PedigreeNetwork, codes: Iterable[str]) -> NDArray[np.float64]:
    """θ of every pair of some plants: (n, n); on the diagonal that of the plant with itself.

    Of a pool the diagonal is that of two of its members.
    """
    rows = rows_of(net, codes)
    return net.arrays.coancestry_between(rows, rows)
