"""Transitions of multi-locus genotypes against listing every gamete of every plant."""

from __future__ import annotations

from fractions import Fraction
from itertools import product

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from pedigreeview.planning import passing_on

Haplotype = tuple[int, ...]
Plant = tuple[Haplotype, Haplotype]


def _gametes(plant: Plant, r: list[Fraction]) -> dict[Haplotype, Fraction]:
    found: dict[Haplotype, Fraction] = {}
    for strands in product((0, 1), repeat=len(plant[0])):
        chance = Fraction(1, 2)
        for at in range(1, len(strands)):
            chance *= r[at - 1] if strands[at] != strands[at - 1] else 1 - r[at - 1]
        gamete = tuple(plant[strand][at] for at, strand in enumerate(strands))
        found[gamete] = found.get(gamete, Fraction(0)) + chance
    return found


def _listed(table: np.ndarray) -> dict[Plant, Fraction]:
    found = {}
    for place in product(range(4), repeat=table.ndim):
        if table[place]:
            plant = tuple(i >> 1 for i in place), tuple(i & 1 for i in place)
            found[plant] = table[place]
    return found


def _table(plants: dict[Plant, Fraction], n: int) -> np.ndarray:
    found = np.full((4,) * n, Fraction(0), object)
    for (one, two), chance in plants.items():
        found[tuple(2 * a + b for a, b in zip(one, two, strict=True))] += chance
    return found


@st.composite
def _some(draw: st.DrawFn) -> tuple[dict[Plant, Fraction], list[Fraction], int]:
    n = draw(st.integers(1, 3))
    allele = st.tuples(*[st.integers(0, 1)] * n)
    plants = draw(st.lists(st.tuples(allele, allele), min_size=1, max_size=3, unique=True))
    weights = [draw(st.integers(1, 5)) for _ in plants]
    whole = sum(weights)
    r = [draw(st.fractions(0, Fraction(1, 2), max_denominator=20)) for _ in range(n - 1)]
    return {p: Fraction(w, whole) for p, w in zip(plants, weights, strict=True)}, r, n


def _selfed(plants: dict[Plant, Fraction], r: list[Fraction]) -> dict[Plant, Fraction]:
    found: dict[Plant, Fraction] = {}
    for plant, share in plants.items():
        own = _gametes(plant, r)
        for (a, p), (b, q) in product(own.items(), repeat=2):
            if p and q:
                found[a, b] = found.get((a, b), Fraction(0)) + share * p * q
    return found


@settings(max_examples=40)
@given(_some())
def test_selfing_crossing_and_doubling_by_listing_all_gametes(some: tuple) -> None:
    plants, r, n = some
    table = _table(plants, n)
    assert _listed(passing_on.selfed(table, r)) == _selfed(plants, r)
    pooled: dict[Haplotype, Fraction] = {}
    for plant, share in plants.items():
        for gamete, chance in _gametes(plant, r).items():
            pooled[gamete] = pooled.get(gamete, Fraction(0)) + share * chance
    pooled = {gamete: chance for gamete, chance in pooled.items() if chance}
    both = passing_on.crossed(passing_on.gametes(table, r), passing_on.gametes(table, r))
    assert _listed(both) == {(a, b): pooled[a] * pooled[b] for a in pooled for b in pooled}
    assert _listed(passing_on.doubled(table, r)) == {(a, a): p for a, p in pooled.items()}


@settings(max_examples=30)
@given(_some(), st.integers(0, 10**6))
def test_the_way_back_gives_the_mean_over_the_progeny(some: tuple, seed: int) -> None:
    plants, r, n = some
    table = _table(plants, n)
    value = np.vectorize(Fraction)(np.random.default_rng(seed).integers(0, 9, (4,) * n))
    other = passing_on.gametes(table, r)
    for ahead, back in (
        (passing_on.selfed(table, r), passing_on.selfed_back(value, r)),
        (passing_on.doubled(table, r), passing_on.doubled_back(value, r)),
        (
            passing_on.crossed(passing_on.gametes(table, r), other),
            passing_on.crossed_back(value, other, r),
        ),
    ):
        assert (ahead * value).sum() == (table * back).sum()


@settings(max_examples=10)
@given(_some())
def test_sibs_of_one_mating_are_drawn_from_the_same_two_plants(some: tuple) -> None:
    plants, r, n = some
    if n > 2:
        return
    table = _table(plants, n)
    pairs = passing_on.pair_of(table)
    assert _listed(passing_on.sib_of(pairs)) == plants
    found = passing_on.sib_mated(pairs, r)
    due: dict[tuple, Fraction] = {}
    for (one, p), (two, q) in product(plants.items(), repeat=2):
        of_one, of_two = _gametes(one, r), _gametes(two, r)
        for (a, w), (b, x), (c, y), (d, z) in product(
            of_one.items(), of_two.items(), of_one.items(), of_two.items()
        ):
            key = tuple(8 * i + 4 * j + 2 * k + m for i, j, k, m in zip(a, b, c, d, strict=True))
            due[key] = due.get(key, Fraction(0)) + p * q * w * x * y * z
    for place in product(range(16), repeat=n):
        assert found[place] == due.get(place, 0)


def test_doubles_and_fractions_agree_on_six_loci() -> None:
    r = [Fraction(1, k) for k in (2, 5, 10, 3, 20)]
    table = _table({((0,) * 6, (1,) * 6): Fraction(1)}, 6)
    exact = passing_on.selfed(table, r)
    quick = passing_on.selfed(table.astype(float), [float(x) for x in r])
    assert quick == pytest.approx(exact.astype(float), abs=1e-15)
    assert exact.sum() == 1
