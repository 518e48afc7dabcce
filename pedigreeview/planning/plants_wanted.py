"""How many plants a ratio asks for before a count says anything about it."""

from __future__ import annotations

from pedigreeview.planning.ratios import Ratio
from pedigreeview.planning.segregation import plants_for_power

__all__ = ["plants_to_judge", "rival_of"]


def rival_of(ratio: Ratio) -> tuple[float, ...]:
    """The plainest other ratio: all classes alike, or 3:1:1... where the ratio says that.

    It is the one that `segregation.ratio_test` measures its power against.
    """
    shares = ratio.shares
    k = len(shares)
    if max(shares) - min(shares) > 1e-9:
        return (1 / k,) * k
    return (3 / (k + 2), *((1 / (k + 2),) * (k - 1)))


def plants_to_judge(ratio: Ratio, *, power: float = 0.8) -> int | None:
    """Plants from which a ratio is rejected with that power if its plainest rival holds.

    None beyond 10,000.  The level is 5%; see `segregation.plants_for_power` for the method.
    """
    return plants_for_power(ratio, rival_of(ratio), power=power)
