"""Progeny tests against the trade's figures and Bayes by hand."""

from __future__ import annotations

from fractions import Fraction

import pytest

from pedigreeview.planning.progeny_test import (
    TEST_CROSSED,
    carrier_chance,
    families_needed,
    progeny_test,
    seedlings_for,
)


def test_eleven_seedlings_leave_eight_per_cent() -> None:
    """Trade terms, numbers of plants: 2/3·(3/4)^n / (2/3·(3/4)^n + 1/3); n = 11 leaves 8%."""
    found = progeny_test()
    assert found.plants == 11
    assert found.unseen == pytest.approx(0.75**11)
    assert round(found.still_carrier, 2) == 0.08
    assert carrier_chance(11) == Fraction(2, 3) * Fraction(3, 4) ** 11 / (
        Fraction(2, 3) * Fraction(3, 4) ** 11 + Fraction(1, 3)
    )
    assert "11 seedlings" in found.sentence()


def test_twelve_seedlings_of_the_tomato_demo_miss_three_in_a_hundred() -> None:
    """Demo B: 24 plants with 12 seedlings each, a carrier is missed with 3.2%."""
    assert round(100 * 0.75**12, 1) == 3.2
    assert progeny_test(assurance=1 - 0.032).plants == 12


def test_a_test_cross_is_quicker() -> None:
    assert progeny_test(shows=TEST_CROSSED).plants == 5


def test_families_until_one_breeds_true() -> None:
    """(2/3)^8 = 0.039 < 0.05 < (2/3)^7."""
    found = families_needed()
    assert found.families == 8
    assert found.seedlings == 88
    assert "88 in all" in found.sentence()
    assert families_needed(Fraction(1)).families == 1


def test_seedlings_for_a_wanted_trust() -> None:
    for still in (0.2, 0.08, 0.01):
        n = seedlings_for(still)
        assert carrier_chance(n) <= still < carrier_chance(n - 1)
    assert seedlings_for(0.7) == 0
    with pytest.raises(ValueError, match="for certain"):
        seedlings_for(0.1, prior=Fraction(1))
    with pytest.raises(ValueError, match="seedlings"):
        carrier_chance(-1)
