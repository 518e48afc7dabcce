"""Plants needed against published tables and the plain sum of the binomial distribution."""

from __future__ import annotations

from fractions import Fraction
from math import comb

import pytest
from hypothesis import given
from hypothesis import strategies as st

from pedigreeview.planning.plants_needed import chance_of_at_least, plants_needed
from tests.published.cases import CHECKS


@pytest.mark.parametrize(
    "line", [line for key in ("P01", "P02", "P03") for line in CHECKS[key]["expected"]["table"]]
)
def test_numbers_of_plants_of_the_tables(line: dict) -> None:
    """P01: Helms, course ds02 (it prints 10 and 16, rounded down); P02 Sedcole's problem, worked
    out; P03: common practice table of breeding texts."""
    found = plants_needed(
        float(Fraction(line["q"])), wanted=line.get("r", 1), assurance=float(line["P"])
    )
    assert found == line["n"]


@given(st.integers(1, 6), st.integers(0, 40), st.fractions(0, 1, max_denominator=20))
def test_the_tail_is_the_plain_sum(wanted: int, plants: int, chance: Fraction) -> None:
    exact = sum(
        comb(plants, k) * chance**k * (1 - chance) ** (plants - k)
        for k in range(wanted, plants + 1)
    )
    assert chance_of_at_least(wanted, plants, float(chance)) == pytest.approx(float(exact))


@given(st.integers(1, 9), st.floats(0.001, 0.999), st.floats(0.5, 0.999))
def test_one_plant_fewer_would_not_do(wanted: int, chance: float, assurance: float) -> None:
    n = plants_needed(chance, wanted=wanted, assurance=assurance)
    assert chance_of_at_least(wanted, n, chance) >= assurance
    assert chance_of_at_least(wanted, n - 1, chance) < assurance


def test_seeds_that_do_not_germinate_are_sown_on_top() -> None:
    assert plants_needed(0.25, germination=0.5) == plants_needed(0.125)


@pytest.mark.parametrize("bad", [{"chance": 0}, {"chance": 1.5}, {"chance": 0.5, "wanted": 0}])
def test_impossible_wishes_are_refused(bad: dict) -> None:
    with pytest.raises(ValueError, match=r"chance|assurance"):
        plants_needed(**bad)
