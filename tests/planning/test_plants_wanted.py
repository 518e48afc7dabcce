"""Plants that a ratio asks for: the power behind 'too few to tell'."""

from __future__ import annotations

from math import comb

from pedigreeview.planning.plants_wanted import plants_to_judge, rival_of
from pedigreeview.planning.ratios import Ratio


def power(n: int, share: float, real: float) -> float:
    """Chance that the exact test or chi-square at 5% rejects, by its own sum over all counts."""
    from math import erfc, sqrt

    pmf = [comb(n, k) * share**k * (1 - share) ** (n - k) for k in range(n + 1)]
    found = 0.0
    for k in range(n + 1):
        if n * min(share, 1 - share) >= 5:
            statistic = (k - n * share) ** 2 / (n * share * (1 - share))
            p = erfc(sqrt(statistic / 2))
        else:
            p = sum(x for x in pmf if x <= pmf[k] * (1 + 1e-7))
        if p < 0.05:
            found += comb(n, k) * real**k * (1 - real) ** (n - k)
    return found


def test_the_rival_of_a_ratio_is_the_plainest_other() -> None:
    assert rival_of(Ratio((3, 1))) == (0.5, 0.5)
    assert rival_of(Ratio((1, 1))) == (0.75, 0.25)
    assert rival_of(Ratio((9, 3, 3, 1))) == (0.25,) * 4


def test_so_many_plants_tell_three_to_one_from_one_to_one() -> None:
    found = plants_to_judge(Ratio((3, 1)))
    assert found is not None
    assert power(found, 0.75, 0.5) >= 0.8
    assert any(power(n, 0.75, 0.5) < 0.8 for n in range(found - 3, found))
