"""The exact interval of a take, against the tails of the binomial in fractions."""

from __future__ import annotations

from fractions import Fraction
from math import comb

import pytest

from pedigreeview.planning.take_intervals import take_interval


def tail(flowers: int, rate: Fraction, counts: range) -> Fraction:
    return sum(
        (comb(flowers, k) * rate**k * (1 - rate) ** (flowers - k) for k in counts), Fraction(0)
    )


@pytest.mark.parametrize(
    ("fruits", "flowers"), [(0, 1), (1, 1), (7, 12), (4, 10), (20, 60), (0, 9), (9, 9)]
)
def test_each_end_leaves_two_and_a_half_percent(fruits: int, flowers: int):
    found = take_interval(fruits, flowers)
    assert found.low <= fruits / flowers <= found.high
    if fruits:
        beyond = tail(flowers, Fraction(found.low), range(fruits, flowers + 1))
        assert float(beyond) == pytest.approx(0.025, abs=1e-9)
    else:
        assert found.low == 0.0
    if fruits < flowers:
        beyond = tail(flowers, Fraction(found.high), range(fruits + 1))
        assert float(beyond) == pytest.approx(0.025, abs=1e-9)
    else:
        assert found.high == 1.0


def test_few_flowers_tell_too_little():
    assert take_interval(7, 12).too_few
    assert not take_interval(20, 60).too_few
    assert take_interval(0, 0).too_few


def test_counts_that_cannot_be_are_refused():
    with pytest.raises(ValueError, match="fruits lie from 0"):
        take_interval(3, 2)
