"""One-step plans and schemes side by side."""

from __future__ import annotations

from fractions import Fraction
from math import comb

import pytest

from pedigreeview.planning.growing_plan import (
    chance_curve,
    compare_schemes,
    how_many,
    wanted_in_bed,
)
from pedigreeview.planning.schemes import back_crossing, doubled_haploids, selfing
from pedigreeview.planning.targets import Target, WantedTrait, from_copies

DWARF_YELLOW = Target.of(
    WantedTrait("dwarf", ("Le",), "recessive"), WantedTrait("yellow pod", ("Gp",), "recessive")
)


@pytest.mark.parametrize(
    ("chance", "at_95", "at_99"),
    [
        (Fraction(1, 4), 11, 17),
        (Fraction(1, 16), 47, 72),
        (Fraction(1, 64), 191, 293),
        (Fraction(1, 2), 5, 7),
        (Fraction(1, 8), 23, 35),
        (Fraction(1, 36), 107, 164),
        (Fraction(1, 6), 17, 26),
    ],
)
def test_the_table_of_plants_needed(chance: Fraction, at_95: int, at_99: int) -> None:
    """Trade terms, numbers of plants (worked out there)."""
    assert how_many(chance).plants == at_95
    assert how_many(chance, assurance=0.99).plants == at_99


def test_three_plants_wanted() -> None:
    """Trade terms: three at 95%: 1/4 23, 1/16 99, 1/64 401."""
    assert [how_many(Fraction(1, k), wanted=3).plants for k in (4, 16, 64)] == [23, 99, 401]


def test_germination_and_losses_count_together() -> None:
    plan = how_many(Fraction(1, 4), wanted=2, germination=0.8, kept_alive=0.75)
    each = 0.25 * 0.8 * 0.75
    missed = [
        sum(comb(n, k) * each**k * (1 - each) ** (n - k) for k in (0, 1))
        for n in (plan.seeds - 1, plan.seeds)
    ]
    assert missed[0] > 0.05 >= missed[1]
    assert plan.plants == 18
    assert "80% come up and 75%" in plan.sentence()
    assert "seeds" not in how_many(Fraction(1, 4)).sentence()
    with pytest.raises(ValueError, match="share"):
        how_many(Fraction(1, 4), kept_alive=0)


def test_the_curve_climbs_from_nothing_to_the_plan() -> None:
    curve = chance_curve(Fraction(1, 16), 47)
    assert curve[0] == (0, 0.0)
    assert curve[-1][0] == 47
    assert curve[-1][1] >= 0.95 > curve[-2][1]
    assert [p for _, p in curve] == sorted(p for _, p in curve)
    assert len(chance_curve(Fraction(1, 256), 5000, points=50)) <= 51
    with pytest.raises(ValueError, match="curve"):
        chance_curve(0.5, 0)


def test_what_a_bed_holds() -> None:
    assert wanted_in_bed(Fraction(1, 4), 23) == 3
    assert wanted_in_bed(Fraction(1, 4), 22) == 2
    assert wanted_in_bed(Fraction(1, 64), 40) == 0


def test_schemes_side_by_side() -> None:
    found = compare_schemes(
        DWARF_YELLOW,
        from_copies([2, 0]),
        from_copies([0, 2]),
        [selfing(2), selfing(3), back_crossing(1), doubled_haploids()],
        bed=20,
    )
    assert [plan.scheme.name for plan in found] == ["doubled haploids", "F3", "F2", "BC1F1"]
    by_name = {plan.scheme.name: plan for plan in found}
    assert by_name["F2"].plan is not None
    assert by_name["F2"].plan.seeds == 47
    assert by_name["F2"].in_all == 51
    assert not by_name["F2"].fits
    assert by_name["doubled haploids"].fits
    assert by_name["BC1F1"].plan is None
    assert found[-1].scheme.name == "BC1F1"
    assert "more than the bed" in by_name["F2"].sentence()
    assert by_name["BC1F1"].sentence().startswith("No plant")
    # In the F3 (3/8)² are both: 20 plants, over two generations after the F1.
    assert by_name["F3"].goal == pytest.approx(9 / 64)
    assert by_name["F3"].plan is not None
    assert by_name["F3"].in_all == 4 + 2 * by_name["F3"].plan.seeds
