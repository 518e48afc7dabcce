"""Takes of two directions; Fisher's exact test is SciPy's, checked here by enumeration."""

from __future__ import annotations

from math import comb

import pytest

from pedigreeview.planning.takes import compare_takes


def _by_enumeration(fruits: tuple[int, int], flowers: tuple[int, int]) -> float:
    took, n = sum(fruits), sum(flowers)
    chances = {
        k: comb(flowers[0], k) * comb(flowers[1], took - k) / comb(n, took)
        for k in range(max(0, took - flowers[1]), min(took, flowers[0]) + 1)
    }
    seen = chances[fruits[0]]
    return sum(chance for chance in chances.values() if chance <= seen * (1 + 1e-9))


@pytest.mark.parametrize(
    ("fruits", "flowers"), [((7, 4), (12, 10)), ((3, 1), (9, 8)), ((30, 5), (40, 44))]
)
def test_p_is_the_sum_over_tables_no_likelier_than_the_seen_one(
    fruits: tuple[int, int], flowers: tuple[int, int]
) -> None:
    found = compare_takes(fruits, flowers)
    assert found is not None
    assert found.p == pytest.approx(_by_enumeration(fruits, flowers))


def test_a_handful_of_flowers_is_too_few_to_tell() -> None:
    found = compare_takes((7, 4), (12, 10))
    assert found is not None
    assert round(found.p, 2) == 0.67
    assert found.verdict == "too few to tell"


def test_a_plain_difference_and_a_plain_likeness() -> None:
    differs, alike = compare_takes((30, 5), (40, 44)), compare_takes((25, 26), (50, 50))
    assert differs is not None
    assert differs.verdict == "differs"
    assert alike is not None
    assert alike.verdict == "no difference shown"


def test_nothing_worked_and_impossible_counts() -> None:
    assert compare_takes((0, 3), (0, 9)) is None
    with pytest.raises(ValueError, match="more fruits"):
        compare_takes((10, 0), (9, 9))
