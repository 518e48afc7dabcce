"""Accidental selfs: Bayes by hand and the seedlings of the demos."""

from __future__ import annotations

from fractions import Fraction
from pathlib import Path

import pytest

import pedigreeview
from pedigreeview.network.pedigree import PedigreeNetwork
from pedigreeview.planning.hybrid_or_self import (
    gene_clue,
    hybrids_of_cross,
    judge_hybrid,
    measure_clue,
    prior_of_selfing,
    telling_direction,
)
from pedigreeview.planning.observations import SeenGene

LEAF = SeenGene("C", "leaf", "C", "c", ("potato", "regular", "regular"))


@pytest.fixture(scope="module")
def peas(root: Path) -> PedigreeNetwork:
    return pedigreeview.read(root / "demo_pedigrees" / "two_peas_both_ways")


def test_the_seedlings_of_the_pea_demo(peas: PedigreeNetwork) -> None:
    """Demo A: 21-01 has 6 true and 1 self, 21-02 has 5 true and 1 self by the pod alone."""
    one = {v.plant: v.verdict for v in hybrids_of_cross(peas, "21-01")}
    other = {v.plant: v.verdict for v in hybrids_of_cross(peas, "21-02")}
    assert [p for p, v in one.items() if v == "self"] == ["21-01-4"]
    assert [p for p, v in other.items() if v == "self"] == ["21-02-5"]
    assert sum(v == "true hybrid" for v in one.values()) == 6
    assert sum(v == "true hybrid" for v in other.values()) == 5


def test_only_the_recessive_seed_parent_tells(root: Path, peas: PedigreeNetwork) -> None:
    """Demo B: with MB as the seed parent the seedlings prove themselves, with HP they do not."""
    net = pedigreeview.read(root / "demo_pedigrees" / "a_leaf_for_hollin_plate")
    assert {v.verdict for v in hybrids_of_cross(net, "17-01")} == {"not shown"}
    verdicts = [v.verdict for v in hybrids_of_cross(net, "17-02")]
    assert verdicts.count("true hybrid") == 17
    assert verdicts.count("self") == 1
    assert {seed for seed, _, _ in telling_direction(net, "HP", "MB")} == {"MB"}
    assert telling_direction(peas, "TP", "BA") == [
        ("TP", "height", "dwarf"),
        ("TP", "flower", "white"),
        ("BA", "pod", "yellow"),
    ]


def test_odds_by_hand() -> None:
    """Recessive seed parent, pure dominant pollen parent, 1 in 100 misread."""
    selfed = judge_hybrid("x", 0.1, [gene_clue(LEAF, "potato", 0, 2)])
    assert selfed.chance == pytest.approx(0.1 * 0.99 / (0.1 * 0.99 + 0.9 * 0.01))
    assert selfed.verdict == "self"
    true = judge_hybrid("x", 0.1, [gene_clue(LEAF, "regular", 0, 2)])
    assert true.chance == pytest.approx(0.1 * 0.01 / (0.1 * 0.01 + 0.9 * 0.99))
    assert true.verdict == "true hybrid"
    # A carrier as the seed parent: a selfed seedling is recessive with 1/4, a hybrid with 1/2.
    half = gene_clue(LEAF, "potato", 1, 0, misread=0.0)
    assert half.factor == pytest.approx(0.5)
    four = gene_clue(LEAF, "potato", 2, 0, ploidy=4, double_reduction=Fraction(1, 7), misread=0.0)
    assert four.factor == pytest.approx(float(Fraction(9, 196) / Fraction(3, 14)))


def test_words_of_verdicts() -> None:
    odd = judge_hybrid("x", 0.1, [gene_clue(LEAF, "potato", 2, 2)])
    assert odd.verdict == "doubtful"
    assert "comes from neither" in odd.sentence()
    blank = judge_hybrid("x", 0.1, [])
    assert blank.verdict == "not shown"
    assert "not shown" in blank.sentence()
    between = judge_hybrid("x", 0.6, [gene_clue(LEAF, "potato", 1, 0, misread=0.0)] * 2)
    assert between.verdict == "doubtful"
    with pytest.raises(ValueError, match="between"):
        judge_hybrid("x", 1.0, [])


def test_measures_count_at_most_tenfold() -> None:
    seed, pollen = [240.0, 250.0, 230.0], [14.0, 15.0, 13.0]
    like_seed = measure_clue("weight", 241.0, seed, pollen)
    like_none = measure_clue("weight", 60.0, seed, pollen)
    assert like_seed is not None
    assert like_none is not None
    assert like_seed.factor == pytest.approx(10)
    assert like_none.factor == pytest.approx(0.1)
    assert measure_clue("weight", 60.0, seed[:2], pollen) is None
    assert measure_clue("weight", 60.0, [5.0] * 3, [5.0] * 3) is None


def test_prior_by_the_buds(peas: PedigreeNetwork) -> None:
    """21-01: five buds closed, four unsure, three closed."""
    assert prior_of_selfing(peas, "21-01") == pytest.approx((8 * 0.05 + 4 * 0.15) / 12)
    assert prior_of_selfing(peas, "23-07 ⊗") == 0.1
