"""Genes of the demo books, told from what was seen; figures of the scenarios."""

from __future__ import annotations

import pytest
import scenario_tomato

from pedigreeview.network import PedigreeNetwork
from pedigreeview.planning.contradictions import contradictions
from pedigreeview.planning.inference import genotype_chances, which_carry

BC1 = [f"18-01-{number:02d}" for number in range(1, 25)]


@pytest.fixture
def mended(tomato) -> PedigreeNetwork:
    scenario_tomato.mend(tomato.book)
    return PedigreeNetwork.from_records(tomato.book)


def test_thirteen_bc1_plants_carry_the_leaf_and_eleven_do_not(mended) -> None:
    carriers = which_carry(mended, "C", "c")
    surely = {code for code, _ in carriers.surely} & set(BC1)
    cannot = {code for code, _ in carriers.cannot} & set(BC1)
    assert (len(surely), len(cannot)) == (13, 11)
    assert carriers.impossible == ()


def test_from_the_leaves_alone_a_carrier_is_missed_with_three_in_a_hundred(mended) -> None:
    found = genotype_chances(mended, "C", genotypes=False)
    verdicts = [found.verdict(code, "c") for code in BC1]
    assert (verdicts.count("surely"), verdicts.count("unlikely")) == (13, 11)
    # HP and MB are seen, not proved: HP is fixed, as potato leaves lack in its own row.
    missed = 0.75**12
    for code, verdict in zip(BC1, verdicts, strict=True):
        if verdict == "unlikely":
            assert found.carrying(code, "c") == pytest.approx(missed / (1 + missed), rel=1e-6)


def test_the_stray_bee_brought_the_regular_leaf(mended) -> None:
    found = genotype_chances(mended, "C")
    assert found.of("21-09-6") == {"C/c": pytest.approx(1.0)}


def test_as_shipped_the_plants_of_the_loop_have_no_chances(tomato) -> None:
    net = PedigreeNetwork.from_records(tomato.book)
    found = genotype_chances(net, "C")
    assert set(found.chances) == set(net.codes) - set(net.withheld)


@pytest.mark.parametrize("locus", ["Le", "A", "Gp"])
def test_the_peas_contradict_nothing_once_the_tall_one_has_its_finding(pea, locus) -> None:
    assert contradictions(PedigreeNetwork.from_records(pea.book), locus) == []


def test_without_its_finding_the_tall_pea_cannot_come_from_its_row(pea) -> None:
    pea.book.parent_findings = [row for row in pea.book.parent_findings if row.plant != "61-2-5-14"]
    (found,) = contradictions(PedigreeNetwork.from_records(pea.book), "Le")
    assert "61-2-5-14" in found.plants
    assert found.proposals[0].sentence == (
        "61-2-5-14 cannot come from a selfing of 61-2-5: perhaps 61-2-5 with foreign pollen."
    )
    assert found.proposals[0].mends_all


def test_daylily_doses_of_the_eye(daylily) -> None:
    found = genotype_chances(PedigreeNetwork.from_records(daylily.book), "E")
    assert found.of("16-01-2") == {"E/E/e/e": pytest.approx(1.0)}
    assert found.impossible == ()
