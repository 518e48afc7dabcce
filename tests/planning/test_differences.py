"""Two directions compared: SciPy as the reference, listing of small groups, trade figures."""

from __future__ import annotations

from itertools import combinations
from math import comb

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from scipy.stats import fisher_exact, ttest_ind

from pedigreeview.planning.differences import (
    detectable_mean_difference,
    means_test,
    permutation_p,
    plants_a_side,
    shares_test,
)
from pedigreeview.planning.fruit_set import (
    detectable_take_difference,
    flowers_a_side,
    fruit_set_test,
    take_power,
)


def test_flowers_and_plants_a_side_of_the_trade() -> None:
    """Trade terms: 60% from 30% takes 48 flowers a side by the exact test; one sd, 17 plants."""
    assert flowers_a_side((0.6, 0.3)) == 48
    assert plants_a_side(1.0) == 17
    assert detectable_mean_difference((17, 17)) <= 1 < detectable_mean_difference((16, 16))


def test_power_by_listing_all_pairs_of_counts() -> None:
    m, n, takes = 6, 5, (0.9, 0.2)
    due = 0.0
    for a in range(m + 1):
        for b in range(n + 1):
            if fisher_exact([[a, m - a], [b, n - b]]).pvalue <= 0.05:
                due += (
                    comb(m, a) * takes[0] ** a * (1 - takes[0]) ** (m - a)
                    * comb(n, b) * takes[1] ** b * (1 - takes[1]) ** (n - b)
                )  # fmt: skip
    assert take_power(takes, (m, n)) == pytest.approx(due)


def test_fruit_set_of_the_demos() -> None:
    """Demo A p 0.67, demo C p 0.58."""
    pea, lily = fruit_set_test((7, 4), (12, 10)), fruit_set_test((3, 1), (9, 8))
    assert pea is not None
    assert lily is not None
    assert (round(pea.p, 2), round(lily.p, 2)) == (0.67, 0.58)
    assert pea.low < pea.difference < pea.high
    said = " ".join(pea.sentences(("TP", "BA")))
    assert said.index("difference") < said.index("exact p")
    assert "12 and 10 flowers can only show a difference larger than 61 points" in said
    assert "not independent" in said
    assert fruit_set_test((0, 0), (0, 5)) is None


def test_newcombes_interval_covers_as_it_should() -> None:
    """Newcombe 1998: 56/70 less 48/80 lies in 0.0524 to 0.3339 (method 10; from memory)."""
    found = fruit_set_test((56, 48), (70, 80))
    assert found is not None
    assert (found.low, found.high) == pytest.approx((0.0524, 0.3339), abs=1e-4)
    assert found.verdict == "differs"


def test_the_detectable_difference_is_the_smallest() -> None:
    gap = detectable_take_difference((12, 12), 0.5)
    assert gap is not None
    assert take_power((0.5 - gap / 2, 0.5 + gap / 2), (12, 12)) >= 0.8
    less = gap - 0.01
    assert take_power((0.5 - less / 2, 0.5 + less / 2), (12, 12)) < 0.8
    assert detectable_take_difference((2, 2), 0.5) is None
    many = detectable_take_difference((400, 400), 0.5)
    assert many is not None
    assert 0.08 < many < 0.12


@settings(max_examples=25)
@given(
    st.lists(st.integers(0, 9), min_size=2, max_size=5),
    st.lists(st.integers(0, 9), min_size=2, max_size=5),
)
def test_exact_permutation_by_listing(first: list[int], second: list[int]) -> None:
    values = first + second
    seen = abs(sum(first) / len(first) - sum(second) / len(second))
    hits = whole = 0
    for chosen in combinations(range(len(values)), len(first)):
        one = [values[i] for i in chosen]
        other = [values[i] for i in range(len(values)) if i not in chosen]
        hits += abs(sum(one) / len(one) - sum(other) / len(other)) >= seen - 1e-9
        whole += 1
    assert permutation_p(first, second) == pytest.approx(hits / whole)


def test_welch_is_scipys() -> None:
    rng = np.random.default_rng(4)
    a, b = rng.normal(5, 1, 20), rng.normal(6, 3, 12)
    found = means_test(a.tolist(), b.tolist(), what="pods", unit="pods")
    reference = ttest_ind(a, b, equal_var=False)
    interval = reference.confidence_interval(0.95)
    assert found.method == "unequal-variance t"
    assert found.p == pytest.approx(reference.pvalue)
    assert (found.low, found.high) == pytest.approx((interval.low, interval.high))


def test_drawn_permutations_are_near_welch_for_large_groups() -> None:
    rng = np.random.default_rng(8)
    a, b = rng.normal(0, 1, 30), rng.normal(0.5, 1, 30)
    assert permutation_p(a, b) == pytest.approx(ttest_ind(a, b).pvalue, abs=0.01)
    assert permutation_p(a, b) == permutation_p(a, b)


def test_small_groups_are_honest() -> None:
    found = means_test([3, 4, 5], [4, 6, 5], what="pods")
    assert found.method == "permutation"
    assert found.verdict == "too few to tell"
    assert any("can only show a difference larger" in line for line in found.sentences())
    lone = means_test([3], [4, 5])
    assert (lone.p, lone.verdict) == (None, "too few to tell")
    assert "two values or more" in lone.sentences()[-1]
    plain = means_test([3, 4, 5, 4], [8, 9, 9, 8], what="pods")
    assert plain.verdict == "differs"
    said = " ".join(plain.sentences("in the F1, "))
    assert said.startswith("In the F1, pods: mean 4 (n 4) and 8.5 (n 4)")
    assert said.index("difference") < said.index("p 0.029")
    with pytest.raises(ValueError, match="value"):
        means_test([], [1])


def test_power_of_the_t_test_by_simulation() -> None:
    n = 9
    effect = detectable_mean_difference((n, n))
    rng = np.random.default_rng(6)
    a, b = rng.normal(effect, 1, (4000, n)), rng.normal(0, 1, (4000, n))
    drawn = (ttest_ind(a, b, axis=1).pvalue < 0.05).mean()
    assert drawn == pytest.approx(0.8, abs=0.025)


@settings(max_examples=25)
@given(*[st.integers(0, 8)] * 4)
def test_two_categories_are_fishers(a: int, b: int, c: int, d: int) -> None:
    found = shares_test("pod", ["green", "yellow"], [(a, b), (c, d)])
    if found.p is None:
        assert 0 in (a + b, c + d, a + c, b + d)
    else:
        assert found.p == pytest.approx(fisher_exact([[a, c], [b, d]]).pvalue)


def test_three_categories_by_listing_and_by_drawing() -> None:
    counts = [(5, 1), (2, 4), (1, 3)]
    found = shares_test("colour", ["red", "orange", "dark"], counts)
    totals = [6, 6, 4]
    ways = {
        (i, j, 8 - i - j): comb(6, i) * comb(6, j) * comb(4, 8 - i - j)
        for i in range(7)
        for j in range(7)
        if 0 <= 8 - i - j <= 4
    }
    seen = ways[5, 2, 1]
    due = sum(w for w in ways.values() if w <= seen) / comb(sum(totals), 8)
    assert found.p == pytest.approx(due)
    many = shares_test("colour", list("abcdef"), [(9, 8), (7, 9), (8, 8), (9, 9), (7, 7), (9, 9)])
    assert many.method == "drawn"
    assert many.p is not None
    assert many.p > 0.5
    alike = shares_test("colour", ["red"], [(5, 6)])
    assert "nothing to compare" in alike.sentences()[-1]
