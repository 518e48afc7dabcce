"""Both directions judged from the records of the demos and of small books made here."""

from __future__ import annotations

from pathlib import Path

import pytest

import pedigreeview
from pedigreeview.book.book import Book, BookSettings
from pedigreeview.book.records import Cross, Harvest, Plant, Pollination, Score, Trait
from pedigreeview.network.pedigree import PedigreeNetwork
from pedigreeview.planning.differences import MeansTest, means_test
from pedigreeview.planning.reciprocal_report import reciprocal_report, what_it_means


@pytest.fixture(scope="module")
def peas(root: Path) -> PedigreeNetwork:
    return pedigreeview.read(root / "demo_pedigrees" / "two_peas_both_ways")


def test_the_pea_demo_both_ways(peas: PedigreeNetwork) -> None:
    """Demo A: 7 of 12 and 4 of 10 took (p 0.67); 24 and 13 seeds; one self on each side."""
    found = reciprocal_report(peas, peas.reciprocal_pairs()[0])
    assert found.names == ("TP", "BA")
    assert found.fruit_set is not None
    assert round(found.fruit_set.p, 2) == 0.67
    assert found.seeds.totals == ((24, 7), (13, 4))
    assert found.seeds.test is None
    assert found.left_out == ("21-01-4", "21-02-5")
    assert [len(side) for side in found.plants] == [6, 5]
    by_name = {trait.trait: trait for trait in found.traits}
    assert by_name["height"].later is not None
    assert by_name["pods"].generations == ("F1", "F2")
    later = by_name["pods"].later
    assert isinstance(later, MeansTest)
    assert later.numbers == (48, 48)
    said = " ".join(found.sentences())
    assert "24 seeds in 7 fruits (3.43 a fruit) on TP" in said
    assert "no test is possible" in said
    assert "Too few to tell" in said
    assert "In the F2, pods" in said
    assert found.same_cytoplasm is False


def test_same_cytoplasm_is_said(root: Path) -> None:
    net = pedigreeview.read(root / "demo_pedigrees" / "a_leaf_for_hollin_plate")
    reports = [reciprocal_report(net, pair) for pair in net.reciprocal_pairs()]
    same = [report for report in reports if report.same_cytoplasm]
    assert same
    assert all("cannot be what differs" in " ".join(report.sentences()) for report in same)


def _book() -> Book:
    book = Book(settings=BookSettings(crop="tomato"))
    book.add(Plant("A", kind="variety", fixation=1.0))
    book.add(Plant("B", kind="variety", fixation=1.0))
    book.add(Trait("weight", "measure", unit="g"))
    for code, ends, base in (("AB", ("A", "B"), 50), ("BA", ("B", "A"), 80)):
        book.add(Cross(code, *ends))
        book.add(Pollination(f"P{code}", code, flowers=40, set=30 if code == "AB" else 8))
        for at, seeds in enumerate((20, 22, 25, 21) if code == "AB" else (40, 44, 39, 41)):
            book.add(Harvest(f"H{code}{at}", code, fruits=1, seeds=seeds))
        book.add(Cross(f"{code} self", f"{code}1", f"{code}1"))
        for at in range(9):
            book.add(Plant(f"{code}{at}", cross=code))
            book.add(Score(f"{code}{at}", "weight", value=str(base + at % 3)))
            book.add(Plant(f"{code}s{at}", cross=f"{code} self"))
            book.add(Score(f"{code}s{at}", "weight", value=str(60 + at)))
    return book


def test_a_plain_difference_that_fades_in_the_f2() -> None:
    net = PedigreeNetwork.from_records(_book())
    found = reciprocal_report(net, net.reciprocal_pairs()[0])
    assert found.fruit_set is not None
    assert found.fruit_set.verdict == "differs"
    assert found.seeds.test is not None
    # Of 70 ways to share out eight fruits two are as far apart as the seen one.
    assert found.seeds.test.p == pytest.approx(2 / 70)
    (weight,) = found.traits
    assert weight.first is not None
    assert weight.first.verdict == "differs"
    assert weight.later is not None
    assert weight.later.p == pytest.approx(1)
    assert "mother plant" in weight.sentences()[-1]


def test_fruits_counted_together_beside_single_ones_make_no_test() -> None:
    book = _book()
    book.add(Harvest("HX", "AB", fruits=3, seeds=60))
    net = PedigreeNetwork.from_records(book)
    found = reciprocal_report(net, net.reciprocal_pairs()[0])
    assert found.seeds.test is None
    assert found.seeds.totals[0] == (148, 7)


def test_what_differences_mean() -> None:
    far = means_test([1, 2, 3, 2], [8, 9, 9, 8])
    back = means_test([8, 9, 9, 8], [1, 2, 3, 2])
    none = means_test([1, 2, 3, 2], [2, 3, 1, 2])
    assert "self plants of both directions" in what_it_means(far, None)[0]
    assert "stays" in what_it_means(far, far)[0]
    assert "mixed-up labels" in what_it_means(far, back)[0]
    assert "mother plant" in what_it_means(far, none)[0]
    assert "Only the selfed progeny differ" in what_it_means(none, far)[0]
    assert what_it_means(none, none) == []
    assert what_it_means(None, far) == []
