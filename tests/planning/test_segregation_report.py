"""Segregation from the records: the demos' counts against the ratios of their parents."""

from __future__ import annotations

from pathlib import Path

import pytest

import pedigreeview
from pedigreeview.book.faults import Fault
from pedigreeview.network.pedigree import PedigreeNetwork
from pedigreeview.planning.ratios import Ratio
from pedigreeview.planning.segregation_report import segregation_of


@pytest.fixture(scope="module")
def peas(root: Path) -> PedigreeNetwork:
    return pedigreeview.read(root / "demo_pedigrees" / "two_peas_both_ways")


@pytest.fixture(scope="module")
def lilies(root: Path) -> PedigreeNetwork:
    return pedigreeview.read(root / "demo_pedigrees" / "tansy_and_the_moths")


def test_the_pooled_f2_of_the_peas(peas: PedigreeNetwork) -> None:
    """Demo A: 52 tall green, 19 tall yellow, 20 dwarf green, 5 dwarf yellow; p 0.91."""
    plants = [p for c in ("21-01-3 ⊗", "21-02-2 ⊗") for p in peas.progeny_of_cross(c)]
    found = segregation_of(peas, plants, ["height", "pod"])
    assert dict(zip(found.classes, found.counts, strict=True)) == {
        "tall green": 52,
        "tall yellow": 19,
        "dwarf green": 20,
        "dwarf yellow": 5,
    }
    assert found.expected is not None
    assert found.expected.name == "9:3:3:1"
    assert found.test is not None
    assert round(found.test.p, 2) == 0.91
    assert [family.counts for family in found.families] == [(27, 9, 9, 3), (25, 10, 11, 2)]
    assert "None of the 2 families" in " ".join(found.sentences())


def test_a_row_of_twelve_is_too_few(peas: PedigreeNetwork) -> None:
    """Demo A: row 61 flowers 9 purple : 3 white, row 19 all white."""
    found = segregation_of(peas, peas.progeny_of_cross("23-61 ⊗"), "flower")
    assert (found.classes, found.counts) == (("purple", "white"), (9, 3))
    assert "too few to tell" in " ".join(found.sentences())
    white = segregation_of(peas, peas.progeny_of_cross("23-19 ⊗"), "flower")
    assert white.counts == (12,)
    assert "nothing segregates" in " ".join(white.sentences())


def test_the_stranger_in_a_fixed_row_is_left_out(peas: PedigreeNetwork) -> None:
    found = segregation_of(peas, peas.progeny_of_cross("61-2-5 ⊗"), "height")
    assert found.strangers == ("61-2-5-14",)
    assert found.counts == (19,)
    assert "own finding" in " ".join(found.sentences())


def test_tetraploid_eyes(lilies: PedigreeNetwork) -> None:
    """Demo C: a duplex selfed, 35 with an eye and 1 without."""
    found = segregation_of(lilies, lilies.progeny_of_cross("19-02"), "eye")
    assert found.expected is not None
    assert found.expected.name == "35:1"
    assert found.counts == (35, 1)
    assert found.test is not None
    assert found.test.verdict == "fits"


def test_without_genes_the_named_ratios_are_tried(lilies: PedigreeNetwork) -> None:
    found = segregation_of(lilies, lilies.progeny_of_cross("19-02"), "colour")
    assert found.test is None
    assert found.fit is not None
    assert "do not give one ratio" in " ".join(found.sentences())
    given = segregation_of(lilies, lilies.progeny_of_cross("19-02"), "colour", ratio=Ratio((1, 1)))
    assert given.test is not None


def test_a_plant_that_its_parents_cannot_give_is_named(peas: PedigreeNetwork) -> None:
    plants = peas.progeny_of_cross("23-19 ⊗")

    def pure(plant: str, locus: str, allele: str) -> int:
        return 2 if allele == "A" else 0

    found = segregation_of(peas, plants, "flower", copies=pure)
    assert set(found.impossible) == {
        p for p in plants if not peas.book.is_pool(peas.book.plants[p])
    }
    assert "cannot give" in " ".join(found.sentences())


def test_unscored_plants_are_a_fault(peas: PedigreeNetwork) -> None:
    with pytest.raises(Fault, match="scored"):
        segregation_of(peas, ["TP"], "no such trait")
