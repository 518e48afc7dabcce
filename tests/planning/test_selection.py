"""Realised heritability, parent regression and the ranking of families, by hand and simulated."""

from __future__ import annotations

import numpy as np
import pytest

from pedigreeview.book.book import Book
from pedigreeview.book.faults import Fault
from pedigreeview.book.records import Cross, Plant, Score, Trait
from pedigreeview.network import PedigreeNetwork
from pedigreeview.planning.families import families_of, rank_families
from pedigreeview.planning.heritability import parent_regression, realised_heritability
from pedigreeview.planning.measured import Observation, measured_traits, number, observations


def _selfed_rows() -> Book:
    """An F2 of five plants, of which two were selfed, and a check variety in both years."""
    book = Book()
    for code in ("V", "W"):
        book.add(Plant(code, kind="variety"))
    book.add(Cross("VW", "V", "W"))
    book.add(Plant("F1", kind="plant", cross="VW"))
    book.add(Cross("F2", "F1", "F1", intended="selfing"))
    for place in range(1, 6):
        book.add(Plant(f"f{place}", kind="plant", cross="F2"))
    for parent in ("f4", "f5"):
        book.add(Cross(f"{parent}s", parent, parent, intended="selfing"))
        for place in range(1, 3):
            book.add(Plant(f"{parent}-{place}", kind="plant", cross=f"{parent}s"))
    return book


VALUES = [
    *[(f"f{place}", 10.0 * place, "2022") for place in range(1, 6)],
    ("f4-1", 38.0, "2023"),
    ("f4-2", 42.0, "2023"),
    ("f5-1", 44.0, "2023"),
    ("f5-2", 48.0, "2023"),
]


def test_realised_heritability_by_hand() -> None:
    net = PedigreeNetwork.from_records(_selfed_rows())
    found = realised_heritability(net, [Observation(*value) for value in VALUES])
    assert found is not None
    # F2 mean 30, chosen 45, progeny 43: R = 13, S = 15.
    assert (found.response, found.differential) == (13.0, 15.0)
    assert found.heritability == pytest.approx(13 / 15)
    assert (found.chosen, found.candidates, found.progeny) == (2, 5, 4)
    # Variance among progeny 8 in each row: √(8/4 + 8/5)/15.
    assert found.error == pytest.approx(np.sqrt(8 / 4 + 8 / 5) / 15)
    assert not found.by_check
    assert any("different years" in said for said in found.warnings)
    assert any("Only 2 chosen" in said for said in found.warnings)


def test_a_variety_grown_in_both_years_takes_the_years_apart() -> None:
    net = PedigreeNetwork.from_records(_selfed_rows())
    check = [Observation("V", 20.0, "2022"), Observation("V", 23.0, "2023")]
    found = realised_heritability(net, [Observation(*value) for value in VALUES] + check)
    assert found is not None
    assert found.response == 10.0
    assert found.by_check
    assert not any("different years" in said for said in found.warnings)


def test_no_selection_no_figure() -> None:
    net = PedigreeNetwork.from_records(_selfed_rows())
    assert realised_heritability(net, [Observation(*value) for value in VALUES[:5]]) is None
    assert parent_regression(net, [Observation(*value) for value in VALUES]) is None


def _crosses(parents: list[tuple[float, float]], slope: float) -> tuple[Book, list[Observation]]:
    book, found = Book(), []
    for place, (seed, pollen) in enumerate(parents):
        for code, value in ((f"s{place}", seed), (f"p{place}", pollen)):
            book.add(Plant(code, kind="plant"))
            found.append(Observation(code, value))
        book.add(Cross(f"x{place}", f"s{place}", f"p{place}"))
        for sib in (-1.0, 1.0):
            code = f"x{place}{sib}"
            book.add(Plant(code, kind="plant", cross=f"x{place}"))
            found.append(Observation(code, 5 + slope * (seed + pollen) / 2 + sib))
    return book, found


def test_regression_on_mid_parent_is_that_of_scipy() -> None:
    from scipy.stats import linregress

    parents = [(1.0, 2.0), (4.0, 3.0), (7.0, 2.0), (9.0, 8.0)]
    book, found = _crosses(parents, 0.5)
    net = PedigreeNetwork.from_records(book)
    exact = parent_regression(net, found)
    assert exact is not None
    assert (exact.heritability, exact.parents) == (pytest.approx(0.5), "mid-parent")
    assert (exact.families, exact.progeny) == (4, 8)
    bent = [Observation(o.plant, o.value + (1 if o.plant.startswith("x1") else 0)) for o in found]
    got = parent_regression(net, bent)
    assert got is not None
    middle = [sum(pair) / 2 for pair in parents]
    wanted = linregress(middle, [5 + 0.5 * m + (i == 1) for i, m in enumerate(middle)])
    assert got.heritability == pytest.approx(wanted.slope)
    assert got.error == pytest.approx(wanted.stderr)
    assert "Only 4 families" in got.warnings[0]


def test_on_one_measured_parent_the_slope_is_doubled() -> None:
    book, found = _crosses([(1.0, 0.0), (4.0, 0.0), (7.0, 0.0)], 0.5)
    found = [item for item in found if not item.plant.startswith("p")]
    got = parent_regression(PedigreeNetwork.from_records(book), found)
    assert got is not None
    assert (got.parents, got.heritability) == ("one parent", pytest.approx(0.5))


def test_families_are_drawn_towards_the_mean_by_hand() -> None:
    found = rank_families({"A": [8.0, 12.0], "B": [18.0, 22.0], "C": [28.0, 32.0]})
    # Within: 24/3 = 8; mean square between 200·2/2 = 200; σ²b = (200 − 8)/2 = 96.
    assert (found.within, found.between) == (8.0, 96.0)
    share = 96 / (96 + 8 / 2)
    assert [rank.family for rank in found.families] == ["C", "B", "A"]
    assert found.families[0].shrunk == pytest.approx(20 + share * 10)
    half = 1.959964 * np.sqrt(96 * (1 - share))
    assert found.families[0].high - found.families[0].shrunk == pytest.approx(half, rel=1e-5)
    assert any("Only 3 families" in said for said in found.warnings)


def test_families_that_do_not_differ_get_no_order() -> None:
    found = rank_families({"A": [8.0, 12.0], "B": [12.0, 8.0], "C": [9.0, 11.0]})
    assert found.between == 0
    assert {rank.shrunk for rank in found.families} == {10.0}
    assert "no order" in found.warnings[0]
    with pytest.raises(Fault, match="too few"):
        rank_families({"A": [1.0]})


def test_a_family_of_one_plant_is_drawn_further() -> None:
    found = rank_families({"A": [10.0, 11, 9, 10], "B": [20.0, 21, 19, 20], "C": [30.0]})
    by_name = {rank.family: rank for rank in found.families}
    pulled = {name: abs(rank.shrunk - rank.mean) for name, rank in by_name.items()}
    assert pulled["C"] > pulled["A"]
    assert by_name["C"].high - by_name["C"].low > by_name["A"].high - by_name["A"].low


def test_observations_are_read_from_scores() -> None:
    book = _selfed_rows()
    book.add(Trait("weight", "measure", "g"))
    book.add(Trait("leaf", "category", values="a;b"))
    rows = [
        ("f1", "12,5", "plant"),
        ("f1", "13.5", ""),
        ("f2", "lost", "plant"),
        ("f3", "9", "seed"),
    ]
    for plant, value, of in rows:
        book.add(Score(plant, "weight", "2022-08", of, value))
    found = observations(book, "weight")
    assert found == [Observation("f1", 12.5, "2022"), Observation("f1", 13.5, "2022")]
    assert measured_traits(book) == ["weight"]
    assert families_of(PedigreeNetwork.from_records(book), found) == {"F2": [13.0]}
    assert number("nan") is None
    with pytest.raises(Fault, match="not measured"):
        observations(book, "leaf")
    with pytest.raises(Fault, match="no trait"):
        observations(book, "height")
