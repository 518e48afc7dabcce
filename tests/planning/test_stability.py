"""Is this line stable: the rows of the pea demo and rows made here."""

from __future__ import annotations

from pathlib import Path

import pytest
from scipy.stats import f

import pedigreeview
from pedigreeview.book.book import Book, BookSettings
from pedigreeview.book.faults import Fault
from pedigreeview.book.records import Cross, Plant, Score, Trait
from pedigreeview.network.pedigree import PedigreeNetwork
from pedigreeview.planning.stability import line_report, members_of, spread_ratio


@pytest.fixture(scope="module")
def peas(root: Path) -> PedigreeNetwork:
    return pedigreeview.read(root / "demo_pedigrees" / "two_peas_both_ways")


def test_the_two_rows_of_the_pea_demo(peas: PedigreeNetwork) -> None:
    """Demo A: 19-4-2 no off-type in 20; 61-2-5 one tall plant, impossible from dwarf parents;
    F of the F5 15/16."""
    clean, odd = line_report(peas, "19-4-2"), line_report(peas, "61-2-5")
    assert clean.inbreeding == odd.inbreeding == 15 / 16
    assert clean.generation == "F5"
    assert (clean.off_types.seen, clean.off_types.plants) == (0, 20)
    assert clean.verdict == "none seen, too few to tell"
    assert clean.sentences()[0] == "19-4-2: no own off-type seen, too few to tell."
    assert {plant.plant for plant in odd.odd} == {"61-2-5-14"}
    assert all(plant.foreign for plant in odd.odd)
    assert (odd.off_types.seen, odd.off_types.plants, odd.off_types.strays) == (0, 19, 1)
    assert odd.verdict == "none seen, too few to tell"
    # 1 - 0.05^(1/20) = 13.9% and 1 - 0.05^(1/19) = 14.6%: only the first lies within 14%.
    assert line_report(peas, "19-4-2", wanted=0.14).verdict == "looks stable"
    assert line_report(peas, "61-2-5", wanted=0.14).verdict == "none seen, too few to tell"
    said = " ".join(odd.sentences())
    assert "No off-type in 19 plants (1 outcross or stray): up to 15%" in said
    assert "foreign pollen or a volunteer, not segregation" in said
    assert "up to 14%" in " ".join(clean.sentences())


def test_the_family_and_the_plant_behind_it_have_the_same_row(peas: PedigreeNetwork) -> None:
    assert members_of(peas, "19-4-2 row") == members_of(peas, "19-4-2")
    assert line_report(peas, "19-4-2 row").verdict == "none seen, too few to tell"


def test_a_row_that_segregates_is_not_stable(peas: PedigreeNetwork) -> None:
    found = line_report(peas, "23-61")
    assert found.verdict == "not stable"
    assert found.segregating == (("flower", (("purple", 9), ("white", 3))),)
    assert found.off_types.seen == 0
    assert "still segregates for flower: 9 purple : 3 white" in " ".join(found.sentences())
    assert found.more_selfings == 5


def test_spread_against_plants_that_are_all_alike(peas: PedigreeNetwork) -> None:
    """The F1 of two pure lines is as even as they are: 11 plants of two crosses, 9 degrees."""
    spread = {s.trait: s for s in line_report(peas, "19-4-2").spreads}["pods"]
    assert spread.against is not None
    assert spread.low is not None
    assert spread.high is not None
    assert spread.low < spread.sd / spread.against < spread.high


def test_interval_of_a_ratio_of_spreads() -> None:
    low, high = spread_ratio(2.0, 19, 1.0, 9)
    # At either end the seen ratio is at a 2.5% point of the F distribution.
    assert f.sf(4 / low**2, 19, 9) == pytest.approx(0.025)
    assert f.cdf(4 / high**2, 19, 9) == pytest.approx(0.025)
    with pytest.raises(ValueError, match="ratio"):
        spread_ratio(1, 0, 1, 5)


def _row(values: list[int], founders: list[int]) -> PedigreeNetwork:
    book = Book(settings=BookSettings())
    book.add(Trait("pods", "measure"))
    book.add(Plant("V", kind="variety", fixation=1.0))
    for at, value in enumerate(founders):
        book.add(Plant(f"v{at}", kind="plant", raised="seed_of", source="V"))
        book.add(Score(f"v{at}", "pods", value=str(value)))
    book.add(Plant("W", kind="variety", fixation=1.0))
    book.add(Cross("X", "V", "W"))
    book.add(Plant("x", cross="X", selfings=6))
    book.add(Cross("x self", "x", "x"))
    for at, value in enumerate(values):
        book.add(Plant(f"y{at}", cross="x self"))
        book.add(Score(f"y{at}", "pods", value=str(value)))
    return PedigreeNetwork.from_records(book)


def test_a_row_more_uneven_than_a_pure_line_is_not_stable() -> None:
    even = [30, 31, 29, 30, 31, 29, 30, 30, 31, 29, 30, 31]
    wild = [20, 40, 25, 35, 30, 22, 38, 30, 45, 15, 33, 28]
    found = line_report(_row(wild, even), "x")
    assert found.spreads[0].verdict == "still varies"
    assert found.verdict == "not stable"
    calm = line_report(_row(even, even), "x")
    assert calm.spreads[0].verdict == "as even as its parents"
    # Nothing with words was scored, so no plant was looked at for off-types.
    assert calm.verdict == "too few to tell"
    few = line_report(_row(even[:3], even[:2]), "x")
    assert few.spreads[0].verdict == "too few to tell"
    alike = line_report(_row([30, 30], even), "x").spreads[0]
    assert alike.verdict == "too few to tell"
    assert "all 2 plants alike as measured" in alike.sentence()
    assert line_report(_row([30] * 12, even), "x").spreads[0].verdict == "as even as its parents"
    bare = line_report(_row(even, even[:1]), "x")
    assert "no plants that are all alike" in bare.spreads[0].sentence()


def test_unknown_lines_are_a_fault(peas: PedigreeNetwork) -> None:
    with pytest.raises(Fault, match="no plant"):
        line_report(peas, "nowhere")
