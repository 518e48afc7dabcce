"""Chances per plant by scheme, against ratios everyone knows, listing, and published values."""

from __future__ import annotations

from fractions import Fraction

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from pedigreeview.planning.schemes import (
    Scheme,
    back_crossing,
    chance_per_plant,
    crossing_to_tester,
    doubled_haploids,
    population,
    selfing,
    sib_mating,
)
from pedigreeview.planning.targets import (
    Target,
    WantedTrait,
    from_copies,
    from_haplotypes,
    recombination_from_cM,
)
from tests.published.cases import CHECKS


def _wish(recessive: int = 0, dominant: int = 0, **more: object) -> Target:
    traits = [WantedTrait(f"r{i}", (f"R{i}",), "recessive") for i in range(recessive)]
    traits += [WantedTrait(f"d{i}", (f"D{i}",), "dominant") for i in range(dominant)]
    return Target.of(*traits, **more)  # type: ignore[arg-type]


def _f1(target: Target, scheme: Scheme):  # type: ignore[no-untyped-def]
    """One parent has all wanted alleles of the first locus on, the other all of the rest."""
    n = len(target.loci)
    counts = [2 * (at % 2) for at in range(n)]
    return chance_per_plant(target, scheme, counts, [2 - c for c in counts])


def test_two_and_three_factor_f2() -> None:
    """M01 and M02 (course pages, read): genotypes 1:2:1:2:4:2:1:2:1, looks 9:3:3:1, 27:...:1."""
    target = _wish(dominant=2)
    plants = population(target, selfing(2), from_copies([2, 2]), from_copies([0, 0]))
    # Copies 2, 1, 0 at each locus.
    folded = [[0, 0, 0] for _ in range(3)]
    copies = (0, 1, 1, 2)
    for a in range(4):
        for b in range(4):
            folded[2 - copies[a]][2 - copies[b]] += 16 * plants[a, b]
    flat = [x for row in folded for x in row]
    assert flat == CHECKS["M01"]["expected"]["genotype_ratio"]
    for n, key in ((2, "M01"), (3, "M02")):
        target = _wish(dominant=n)
        plants = population(target, selfing(2), from_copies([2] * n), from_copies([0] * n))
        looks: dict[tuple[bool, ...], Fraction] = {}
        for place in np.ndindex(*plants.shape):
            key_of = tuple(i > 0 for i in place)
            looks[key_of] = looks.get(key_of, Fraction(0)) + plants[place]
        found = sorted((4**n * share for share in looks.values()), reverse=True)
        assert found == CHECKS[key]["expected"]["phenotype_ratio"]


def test_one_wanted_homozygote_among_six_segregating_pairs() -> None:
    """M08 (University of Nebraska, read): 1/4096; six loci as independent groups stay exact."""
    each = _f1(_wish(recessive=6), selfing(2))
    assert each.chance == Fraction(1, 4096)
    assert each.already_fixed == 1


@pytest.mark.parametrize(
    ("scheme", "chance", "fixed"),
    [
        (selfing(2), Fraction(9, 16), Fraction(1, 16)),
        (selfing(3), Fraction(25, 64), Fraction(9, 64)),
        (doubled_haploids(), Fraction(1, 4), Fraction(1, 4)),
        (crossing_to_tester(), Fraction(1, 4), Fraction(0)),
        (sib_mating(1), Fraction(9, 16), Fraction(1, 16)),
    ],
)
def test_two_dominants(scheme: Scheme, chance: Fraction, fixed: Fraction) -> None:
    found = _f1(_wish(dominant=2), scheme)
    assert (found.chance, found.fixed) == (chance, fixed)


def test_backcrosses_halve_a_donor_allele_each_time() -> None:
    target = _wish(dominant=1)
    for times in (1, 2, 3):
        found = chance_per_plant(target, back_crossing(times), from_copies([0]), from_copies([2]))
        assert found.chance == Fraction(1, 2**times)
        assert found.fixed == 0
        pure = chance_per_plant(
            target, back_crossing(times, selfings=1), from_copies([0]), from_copies([2])
        )
        assert pure.fixed == Fraction(1, 2 ** (times + 2))
    back = back_crossing(1, to="pollen")
    assert chance_per_plant(target, back, from_copies([0]), from_copies([2])).fixed == Fraction(
        1, 2
    )


@settings(max_examples=20)
@given(st.integers(2, 7), st.integers(1, 3))
def test_selfing_on_fixes_by_the_book(generation: int, n: int) -> None:
    """S03 (University of Nebraska, read): [(2^t − 1)/2^t]^n fixed; half of each for the wanted."""
    found = _f1(_wish(dominant=n), selfing(generation))
    left = Fraction(1, 2 ** (generation - 1))
    assert found.fixed == ((1 - left) / 2) ** n
    assert found.chance == ((1 - left) / 2 + left) ** n


@given(st.fractions(0, Fraction(1, 2), max_denominator=50))
def test_linked_recessives_in_coupling_and_repulsion(r: Fraction) -> None:
    """Both recessives: (1 − r)²/4 in coupling, r²/4 in repulsion (standard two-point genetics)."""
    target = _wish(recessive=2, linked=[r])
    coupled = chance_per_plant(target, selfing(2), from_copies([2, 2]), from_copies([0, 0]))
    apart = chance_per_plant(target, selfing(2), from_copies([2, 0]), from_copies([0, 2]))
    assert coupled.chance == ((1 - r) / 2) ** 2
    assert apart.chance == (r / 2) ** 2
    twin = chance_per_plant(
        target, doubled_haploids(), from_haplotypes([1, 0], [1, 0]), from_copies([0, 2])
    )
    assert twin.chance == r / 2


def test_recombinant_lines_by_selfing_reach_haldanes_share() -> None:
    """R = 2r/(1 + 2r) of lines are recombinant in the end, R = 4r/(1 + 6r) after sib mating
    (Haldane and Waddington 1931, from memory)."""
    r = 0.1
    target = _wish(recessive=2, linked=[r])
    sides = from_copies([2, 0]), from_copies([0, 2])
    lines = chance_per_plant(target, selfing(40), *sides)
    assert float(lines.fixed) == pytest.approx(r / (1 + 2 * r), abs=1e-9)
    sibs = chance_per_plant(target, sib_mating(60), *sides)
    assert float(sibs.fixed) == pytest.approx(2 * r / (1 + 6 * r), abs=1e-5)


def test_additive_traits_count_alleles_over_linkage_groups() -> None:
    wish = Target.of(WantedTrait("pods", ("A", "B", "C"), "additive", 5))
    found = chance_per_plant(wish, selfing(2), from_copies([2, 2, 0]), from_copies([0, 0, 2]))
    # Six alleles, each wanted with 1/2: 5 or 6 of 6.
    assert found.chance == Fraction(7, 64)
    assert found.fixed == Fraction(1, 64)


def test_many_loci_in_groups_and_eight_together() -> None:
    assert _f1(_wish(recessive=20), selfing(2)).chance == Fraction(1, 4**20)
    tight = _wish(recessive=8, linked=[0.0] * 7)
    found = chance_per_plant(tight, selfing(2), [2] * 8, [0] * 8)
    assert found.chance == pytest.approx(0.25)
    with pytest.raises(ValueError, match="at most 8 loci"):
        chance_per_plant(_wish(recessive=9, linked=[0.1] * 8), selfing(2), [2] * 9, [0] * 9)


def test_unknown_phase_is_the_mean_of_both() -> None:
    r = Fraction(1, 5)
    target = _wish(recessive=2, linked=[r])
    other = from_copies([0, 0])
    sides = [from_haplotypes([1, 1], [0, 0]), from_haplotypes([1, 0], [0, 1])]
    known = [chance_per_plant(target, selfing(2), side, other).chance for side in sides]
    both = chance_per_plant(target, selfing(2), from_copies([1, 1]), other).chance
    assert both == (known[0] + known[1]) / 2


def test_sentences_and_refusals() -> None:
    said = _f1(_wish(recessive=1, dominant=1), selfing(2)).sentence()
    assert "chance of 3 in 16" in said
    assert "33.3% breed true" in said
    none = chance_per_plant(_wish(recessive=1), selfing(2), from_copies([0]), from_copies([0]))
    assert none.sentence().startswith("No plant by F2")
    assert none.already_fixed is None
    assert selfing(4).seasons == 4
    for bad in (lambda: selfing(1), lambda: back_crossing(0), lambda: sib_mating(0)):
        with pytest.raises(ValueError, match=r"selfing|backcrosses|sibs"):
            bad()
    with pytest.raises(ValueError, match="sib mating starts"):
        Scheme("mixed", ("self", "sib"))


def test_targets_refuse_what_cannot_be() -> None:
    with pytest.raises(ValueError, match="exactly one wanted trait"):
        Target(
            ("A",),
            (),
            (WantedTrait("a", ("A",), "recessive"), WantedTrait("b", ("A",), "dominant")),
        )
    with pytest.raises(ValueError, match="0 to 1/2"):
        _wish(recessive=2, linked=[Fraction(3, 5)])
    with pytest.raises(ValueError, match="between neighbouring"):
        _wish(recessive=2, linked=[])
    with pytest.raises(ValueError, match="additive"):
        Target.of(WantedTrait("a", ("A",), "additive", 3))
    with pytest.raises(ValueError, match="0, 1 or 2"):
        from_copies([3])
    assert recombination_from_cM(0) == 0
    assert recombination_from_cM(1) == pytest.approx(0.0099, abs=1e-4)
    assert recombination_from_cM(1e6) == pytest.approx(0.5)
    assert "2 or more" in Target.of(WantedTrait("a", ("A",), "additive")).sentence()
