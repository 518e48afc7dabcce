"""How far a take is known: the exact interval of fruits among flowers, and when that is too little.

Flowers of one plant on one day are not independent, so the interval is narrower than the truth.
"""

from __future__ import annotations

from dataclasses import dataclass
from functools import lru_cache

__all__ = ["TOO_WIDE", "TakeInterval", "take_interval"]

TOO_WIDE = 0.4
"""From an interval as wide as this on, so few flowers tell too little."""


@dataclass(frozen=True, slots=True)
class TakeInterval:
    """The takes that may lie behind a count.

    low, high : 95% interval, each 0 to 1
    """

    low: float
    high: float

    @property
    def too_few(self) -> bool:
        """Whether the flowers tell too little of the take."""
        return self.high - self.low >= TOO_WIDE


@lru_cache(maxsize=4096)
def take_interval(fruits: int, flowers: int) -> TakeInterval:
    """The exact 95% interval of the take, fruits set for each flower worked.

    The takes at which neither so few nor so many fruits are rarer than 2.5% (Clopper and Pearson,
    1934, from memory): quantiles of beta distributions.  Without a flower every take may be.

    Raises
    ------
    ValueError : fewer than no fruits, or more fruits than flowers
    """
    if not 0 <= fruits <= flowers:
        raise ValueError("fruits lie from 0 to the number of flowers")
    if not flowers:
        return TakeInterval(0.0, 1.0)
    from scipy.stats import beta

    low = 0.0 if fruits == 0 else float(beta.ppf(0.025, fruits, flowers - fruits + 1))
    high = 1.0 if fruits == flowers else float(beta.ppf(0.975, fruits + 1, flowers - fruits))
    return TakeInterval(low, high)
