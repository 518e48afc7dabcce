"""What two parents have between them of all that is wanted, and what both lack."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from pedigreeview.planning.merit import Standing

__all__ = ["WishOfPair", "complement_words", "together", "wishes_of_pair"]

FloatArray = NDArray[np.float64]

_HAS = 0.6
"""Level from which a plant is said to bring a wish."""


@dataclass(frozen=True, slots=True)
class WishOfPair:
    """One wish in a pair.

    words : of the wish
    seed, pollen : value of each parent, None where nothing is known
    middle : mid-parent, None unless both are known
    low, high : range of all single scores of both, None where there is none
    seed_count, pollen_count : observations behind each
    """

    words: str
    seed: float | None
    pollen: float | None
    middle: float | None
    low: float | None
    high: float | None
    seed_count: int
    pollen_count: int

    @property
    def sentence(self) -> str:
        """'high sweet: 8 (3 observations) and 5 (1), mid-parent 6.5'."""

        def side(value: float | None, count: int) -> str:
            if value is None:
                return "not scored"
            return f"{value:.3g} ({count} observation{'' if count == 1 else 's'})"

        text = f"{self.words}: {side(self.seed, self.seed_count)}"
        text += f" and {side(self.pollen, self.pollen_count)}"
        return text if self.middle is None else f"{text}, mid-parent {self.middle:.3g}"


def together(standing: Standing, seed: NDArray[np.int64], pollen: NDArray[np.int64]) -> FloatArray:
    """How much of what is wanted the better parent of each pair has: (pairs,), 0 to 1.

    The mean over the wishes, by their weights, of the higher level of the two; a level that is not
    known counts as 0, so that nothing is promised on no observation.
    """
    if not standing.wanted:
        return np.full(len(seed), 0.5)
    level = np.nan_to_num(standing.level)
    found = np.zeros(len(seed))
    for at, weight in enumerate(standing.weights.tolist()):
        found += weight * np.maximum(level[seed, at], level[pollen, at])
    return found


def wishes_of_pair(standing: Standing, seed: int, pollen: int) -> tuple[WishOfPair, ...]:
    """Every wish in one pair, with the observations behind it."""
    found = []
    for at, wish in enumerate(standing.wanted):
        one, other = (_known(standing.value[place, at]) for place in (seed, pollen))
        ends = [standing.low[[seed, pollen], at], standing.high[[seed, pollen], at]]
        low = None if np.isnan(ends[0]).all() else float(np.nanmin(ends[0]))
        high = None if np.isnan(ends[1]).all() else float(np.nanmax(ends[1]))
        middle = None if one is None or other is None else (one + other) / 2
        counts = standing.count[seed, at], standing.count[pollen, at]
        found.append(WishOfPair(wish.words, one, other, middle, low, high, *map(int, counts)))
    return tuple(found)


def complement_words(standing: Standing, seed: int, pollen: int) -> str:
    """'A brings high sweet; B brings low day; neither brings leaf potato.'; '' with no wish."""
    sides: dict[str, list[str]] = {}
    names = standing.codes[seed], standing.codes[pollen]
    for at, wish in enumerate(standing.wanted):
        has = [bool(standing.level[place, at] >= _HAS) for place in (seed, pollen)]
        if all(has):
            key = "both bring"
        elif any(has):
            key = f"{names[0] if has[0] else names[1]} brings"
        elif np.isnan(standing.level[[seed, pollen], at]).any():
            key = "not scored in both is"
        else:
            key = "neither brings"
        sides.setdefault(key, []).append(wish.words)
    text = "; ".join(f"{key} {', '.join(wishes)}" for key, wishes in sides.items())
    return (
        f"{text[0].upper() if text[:2] in ('bo', 'ne', 'no') else text[0]}{text[1:]}."
        if text
        else ""
    )


def _known(value: float) -> float | None:
    return None if np.isnan(value) else float(value)
