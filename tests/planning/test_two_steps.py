"""Plans that keep plants on the way: by simulation, by plain sums, by trying every plan."""

from __future__ import annotations

from fractions import Fraction
from math import comb

import numpy as np
import pytest

from pedigreeview.planning.cheapest_road import cheapest_roads, usual_roads
from pedigreeview.planning.targets import Target, WantedTrait, from_copies
from pedigreeview.planning.two_steps import Demand, Road, Stage, best_two_steps, demands

RECESSIVES = Target.of(
    WantedTrait("dwarf", ("Le",), "recessive"), WantedTrait("yellow", ("Gp",), "recessive")
)
MIXED = Target.of(
    WantedTrait("dwarf", ("Le",), "recessive"), WantedTrait("purple", ("A",), "dominant")
)


def _road(target: Target, **more: bool) -> Road:
    return Road(target, from_copies([2, 0]), from_copies([0, 2]), **more)


def test_one_stage_is_the_plain_binomial() -> None:
    assert _road(RECESSIVES).misses([Stage("self", 47)]) == pytest.approx((15 / 16) ** 47)


def test_two_stages_by_the_plain_sum_over_kept_plants() -> None:
    """F2 plants that show dwarf: 1/4; of those yellow 1/4, carriers 1/2, none 1/4."""
    row, keep, second = 22, 5, 3
    miss_of_kept = 0.25 * 0 + 0.5 * 0.75**second + 0.25 * 1
    due = sum(
        comb(row, k) * 0.25**k * 0.75 ** (row - k) * miss_of_kept ** min(k, keep)
        for k in range(row + 1)
    )
    stages = [Stage("self", row, Demand(("dwarf",)), keep), Stage("self", second)]
    assert _road(RECESSIVES).misses(stages) == pytest.approx(due, abs=1e-12)


def _simulated(plan: list[tuple[int, int]], runs: int, seed: int) -> float:
    """Share of runs without a wanted plant: [(row, keep), ...], kept plants show dwarf and purple
    (or, in the last stage, are dwarf and pure purple)."""
    rng = np.random.default_rng(seed)
    missed = 0
    for _ in range(runs):
        kept = [(1, 1)]
        for at, (row, keep) in enumerate(plan):
            last = at == len(plan) - 1
            after = []
            for plant in kept:
                # Copies of each wanted allele among the selfed seed.
                seed_lot = np.stack(
                    [rng.binomial(2, 0.5, row) if c == 1 else np.full(row, c) for c in plant]
                )
                dwarf, purple = seed_lot
                meets = (dwarf == 2) & (purple == 2 if last else purple >= 1)
                after += [tuple(seed_lot[:, i]) for i in np.flatnonzero(meets)[:keep]]
            kept = after
            if not kept:
                break
        missed += not kept
    return missed / runs


@pytest.mark.parametrize("plan", [[(16, 2), (6, 1)], [(16, 3), (4, 1), (3, 1)]])
def test_staged_misses_by_simulation(plan: list[tuple[int, int]]) -> None:
    both = Demand(("dwarf", "purple"))
    stages = [Stage("self", row, both, keep) for row, keep in plan]
    found = _road(MIXED).misses(stages)
    runs = 3000
    drawn = _simulated(plan, runs, 7)
    assert abs(found - drawn) < 4 * (found * (1 - found) / runs) ** 0.5 + 1e-9


def test_two_steps_for_a_home_sized_f2() -> None:
    """Dwarf yellow out of Tarnwick Pale × Brockle Amber (demo A): 47 F2 plants in one step."""
    found = best_two_steps(_road(RECESSIVES), bed=96)
    assert found.one_step == 47
    assert found.best is not None
    assert found.best.chance >= 0.95
    assert found.best.in_all < 47
    stages = [
        Stage("self", found.best.first_row, found.best.demand, found.best.keep),
        Stage("self", found.best.second_row),
    ]
    assert 1 - _road(RECESSIVES).misses(stages) == pytest.approx(found.best.chance)
    assert any("save" in line for line in found.sentences())
    assert not found.hidden


def test_no_cheaper_two_step_plan_was_overlooked() -> None:
    """Every plan of the searched shape in a small bed, by the recursion itself."""
    road = _road(RECESSIVES)
    best = best_two_steps(road, bed=30, assurance=0.8, most_kept=3).best
    assert best is not None
    cheapest = min(
        first + keep * row
        for demand in demands(RECESSIVES)
        for keep in (1, 2, 3)
        for row in range(1, 20)
        for first in range(4, 30)
        if keep * row <= 30
        and first + keep * row <= best.in_all
        and 1 - road.misses([Stage("self", first, demand, keep), Stage("self", row)]) >= 0.8
    )
    assert best.in_all == cheapest


def test_markers_never_ask_for_more_and_a_small_bed_for_nothing() -> None:
    road = _road(MIXED)
    plain, marked = best_two_steps(road, bed=80), best_two_steps(road, bed=80, markers=True)
    assert plain.best is not None
    assert marked.best is not None
    assert marked.best.in_all <= plain.best.in_all
    assert plain.hidden
    small = best_two_steps(road, bed=5)
    assert small.best is None
    assert any("No plan in two steps" in line for line in small.sentences())
    with pytest.raises(ValueError, match="bed"):
        best_two_steps(road, bed=0)
    with pytest.raises(ValueError, match="stage"):
        road.misses([])


def test_search_can_be_cancelled() -> None:
    class Stopped(Exception):
        pass

    def tick(done: int, whole: int) -> None:
        if done:
            raise Stopped

    with pytest.raises(Stopped):
        best_two_steps(_road(MIXED), bed=50, tick=tick)


def test_cheapest_roads_reach_their_promise_with_no_plant_to_spare() -> None:
    road = _road(MIXED)
    found = cheapest_roads(road, bed=150, generations=3, backcrosses=1, doubling=True)
    assert [plan.in_all for plan in found.roads] == sorted(plan.in_all for plan in found.roads)
    by_name = {plan.name: plan for plan in found.roads}
    assert by_name["F2"].plants == 47  # 1/16 is dwarf and pure purple
    assert by_name["doubled haploids"].plants == 11
    for plan in found.roads:
        assert 1 - road.misses(plan.stages) == pytest.approx(plan.chance)
        assert plan.chance >= 0.95
    # The donor's dominant is never fixed without selfing.
    assert "BC1F1" in found.out_of_reach
    assert found.sentences()[-1].startswith("Searched: ")
    with pytest.raises(ValueError, match="6 loci"):
        cheapest_roads(road, bed=10, generations=7)


def test_three_recessives_are_fixed_one_after_the_other() -> None:
    """In one F2 of 120 three recessives (1/64) are not promised; kept by one trait they are."""
    traits = [WantedTrait(name, (name,), "recessive") for name in "abc"]
    road = Road(Target.of(*traits), from_copies([2, 2, 0]), from_copies([0, 0, 2]))
    found = cheapest_roads(road, bed=120, generations=2)
    assert found.out_of_reach == ("F2",)
    (plan,) = found.roads
    assert plan.asked == (Demand(("a",)),)
    by_two_steps = best_two_steps(road, bed=120).best
    assert by_two_steps is not None
    assert by_two_steps.in_all <= plan.in_all
    marked = cheapest_roads(road, bed=120, generations=2, markers=True).roads[0]
    assert marked.in_all <= plan.in_all


def test_names_of_usual_roads() -> None:
    roads = usual_roads(3, backcrosses=1, doubling=True)
    assert roads["F4"] == ("self",) * 3
    assert roads["BC1F3"] == ("back", "self", "self")
    assert roads["doubled haploids of BC1F1"] == ("back", "double")


def test_backcross_stage_by_hand() -> None:
    """A donor's dominant through one backcross, carriers kept, then selfed: 1/2 and 1/4."""
    target = Target.of(WantedTrait("resists", ("R",), "dominant"))
    road = Road(target, from_copies([0]), from_copies([2]))
    stages = [Stage("back", 6, Demand(("resists",)), 1), Stage("self", 8)]
    due = 0.5**6 + (1 - 0.5**6) * 0.75**8
    assert road.misses(stages) == pytest.approx(due)
    assert float(Fraction(1, 4)) == road.chance_of("self")[1]
