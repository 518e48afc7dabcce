"""How many plants to grow so that the wanted ones are among them.

A plant is a wanted one with a chance that the parents fix (1/4 for one recessive pair in an F2), so
the number of wanted ones among n plants is binomial, and the number needed is the smallest n at
which at least r of them come with the wanted assurance.
"""

from __future__ import annotations

from math import ceil, log, log1p

__all__ = ["chance_of_at_least", "plants_needed"]


def chance_of_at_least(wanted: int, plants: int, chance: float) -> float:
    """Probability of `wanted` or more among `plants` plants.

    Parameters
    ----------
    wanted : 0 or more
    plants : 0 or more
    chance : of each plant to be a wanted one, 0 to 1

    Notes
    -----
    Upper tail of the binomial distribution, by SciPy's incomplete beta function.
    """
    from scipy.special import betainc

    if wanted <= 0:
        return 1.0
    if plants < wanted:
        return 0.0
    return float(betainc(wanted, plants - wanted + 1, chance))


def plants_needed(
    chance: float, *, wanted: int = 1, assurance: float = 0.95, germination: float = 1.0
) -> int:
    """Smallest number of plants (or seeds, with `germination`) that holds `wanted` or more.

    Parameters
    ----------
    chance : of each plant to be a wanted one, above 0 and up to 1
    wanted : how many are wanted, 1 or more
    assurance : probability with which they shall be there, above 0 and below 1
    germination : share of seeds that give a plant, above 0 and up to 1

    Raises
    ------
    ValueError : an argument outside its range

    Notes
    -----
    For one wanted plant n = ln(1 − assurance) / ln(1 − chance), rounded up; for more the exact
    negative binomial (the problem of Sedcole 1977, Crop Sci. 17:667, from memory).
    """
    if not 0 < chance <= 1 or not 0 < germination <= 1:
        raise ValueError("a chance lies above 0 and is at most 1")
    if not 0 < assurance < 1 or wanted < 1:
        raise ValueError("an assurance lies between 0 and 1, and at least one plant is wanted")
    each = chance * germination
    if each == 1:
        return wanted
    low, high = wanted - 1, max(wanted, ceil(log(1 - assurance) / log1p(-each)))
    while chance_of_at_least(wanted, high, each) < assurance:
        low, high = high, 2 * high
    while high - low > 1:
        middle = (low + high) // 2
        if chance_of_at_least(wanted, middle, each) < assurance:
            low = middle
        else:
            high = middle
    return high
