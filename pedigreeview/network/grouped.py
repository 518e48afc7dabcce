"""Many plants sorted into groups once, such as the progeny of every plant."""

from __future__ import annotations

import numpy as np

from pedigreeview.network.sweeps import IntArray

__all__ = ["Grouped"]


class Grouped:
    """The members of every group.

    Parameters
    ----------
    groups : group of each member, from 0; −1 for a member of none
    members : the members, in the order in which a group gives them
    count : how many groups there are
    """

    def __init__(self, groups: IntArray, members: IntArray, count: int) -> None:
        grouped = groups >= 0
        groups = groups[grouped]
        self._members = members[grouped][np.argsort(groups, kind="stable")]
        self._starts = np.zeros(count + 1, np.int64)
        np.cumsum(np.bincount(groups, minlength=count), out=self._starts[1:])

    def __getitem__(self, group: int) -> list[int]:
        found: list[int] = self._members[self._starts[group] : self._starts[group + 1]].tolist()
        return found
