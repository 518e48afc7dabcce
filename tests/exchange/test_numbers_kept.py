"""A book written as a plant table gives the same numbers, save where `lost` says otherwise."""

from __future__ import annotations

from pathlib import Path
from typing import Any

import numpy as np
import pytest
from hypothesis import HealthCheck, assume, given, settings

from pedigreeview.book.book import Book, BookSettings
from pedigreeview.book.records import Cross, ParentFinding, Plant, PollenCandidate
from pedigreeview.exchange import data_package, plant_table, rules
from pedigreeview.network import PedigreeNetwork
from tests.network.random_books import books

QUIET = (HealthCheck.too_slow, HealthCheck.data_too_large, HealthCheck.filter_too_much)


def through(book: Book, folder: Path) -> tuple[Book, list[str]]:
    """The book from folder to table and back, and what is said to be lost."""
    data_package.write(book, folder / "book")
    read = data_package.read(folder / "book")
    plant_table.write(read, folder / "t.csv")
    return plant_table.read(folder / "t.csv"), plant_table.lost(read)


def changed_by(said: list[str], words: str, net: PedigreeNetwork) -> set[str]:
    """The plants that a sentence names, and all that descends from them."""
    named = {code for line in said if words in line for code in _named(line)}
    return named | {other for code in named for other in net.descendants(code)}


def _named(line: str) -> list[str]:
    shown = line[line.index("(") + 1 : line.index(")")]
    return shown.replace(" and ", ", ").split(", ")


@settings(max_examples=80, deadline=None, suppress_health_check=QUIET)
@given(book=books(most=14, ploidies=(2, 4)))
def test_a_random_book(book: Book, tmp_path_factory: Any) -> None:
    assume(not rules.faults(book, lambda record, column: None))  # type: ignore[arg-type,return-value]
    back, said = through(book, tmp_path_factory.mktemp("book"))
    one, other = PedigreeNetwork.from_records(book), PedigreeNetwork.from_records(back)
    assert set(one.codes) == set(other.codes)
    assert one.withheld == other.withheld
    if book.double_reduction():
        assert any("double reduction" in line for line in said)
        return
    founders = changed_by(said, "without any known parent", one)
    apart = changed_by(said, "another member of the pool", one)
    for code in one.codes:
        if code in one.withheld:
            continue
        if code not in founders:
            assert other.founder_shares(code) == pytest.approx(one.founder_shares(code), abs=1e-12)
        if code not in founders | apart or not one.parent_codes(code):
            assert other.inbreeding(code) == pytest.approx(one.inbreeding(code), abs=1e-12), code
    kept = [code for code in one.codes if code not in founders | apart | set(one.withheld)]
    for code in kept:
        np.testing.assert_allclose(
            [other.coancestry(code, b) for b in kept],
            [one.coancestry(code, b) for b in kept],
            atol=1e-12,
        )


def made(*records: Any, **said: Any) -> Book:
    book = Book(settings=BookSettings(**said))
    for record in records:
        book.add(record)
    return book


def same_numbers(one: Book, other: Book) -> None:
    nets = PedigreeNetwork.from_records(one), PedigreeNetwork.from_records(other)
    for code in one.plants:
        assert nets[0].inbreeding(code) == pytest.approx(nets[1].inbreeding(code), abs=1e-15)
        assert nets[0].founder_shares(code) == pytest.approx(nets[1].founder_shares(code))
        for b in one.plants:
            assert nets[0].coancestry(code, b) == pytest.approx(nets[1].coancestry(code, b))


@pytest.mark.parametrize("rate", [0.0, 0.3, 1.0])
def test_the_book_s_outcrossing_rate(tmp_path: Path, rate: float) -> None:
    book = made(
        Plant("V", kind="plant"),
        Cross("X", "V", intended="open"),
        Plant("A", cross="X", selfings=1),
        Plant("B", cross="X"),
        outcrossing=rate,
        crop="tomato",
    )
    back, said = through(book, tmp_path)
    (candidate,) = back.pollen_candidates
    assert (candidate.candidate, candidate.odds) == ("self", 1 - rate)
    assert back.crosses["X"].drawn == "each"
    same_numbers(book, back)
    assert any("outcrossing rate, in 1 cross left to open pollination" in line for line in said)


def test_the_crop_s_own_rate_needs_no_odds(tmp_path: Path) -> None:
    book = made(Plant("V"), Cross("X", "V", intended="open"), Plant("A", cross="X"), crop="tomato")
    back, said = through(book, tmp_path)
    assert not back.pollen_candidates
    assert not any("outcrossing" in line for line in said)
    same_numbers(book, back)


@pytest.mark.parametrize("ploidy", [2, 4])
def test_selfings_of_plants_without_a_known_parent(tmp_path: Path, ploidy: int) -> None:
    book = made(
        Cross("X"),
        Plant("A", cross="X", selfings=2),
        Plant("B", cross="X", kind="variety", fixation=0.75),
        ploidy=ploidy,
    )
    back, said = through(book, tmp_path)
    nets = PedigreeNetwork.from_records(book), PedigreeNetwork.from_records(back)
    for code in "AB":
        assert nets[1].inbreeding(code) == pytest.approx(nets[0].inbreeding(code), abs=1e-15)
        assert nets[1].self_coancestry(code) == pytest.approx(nets[0].self_coancestry(code))
    assert any("(A, B): written as founders of the same inbreeding" in line for line in said)


def test_an_own_finding_of_a_cross_without_a_known_parent(tmp_path: Path) -> None:
    book = made(
        Plant("P", kind="plant"),
        Cross("X"),
        Plant("A", cross="X", selfings=1),
        Plant("B", cross="X"),
        ParentFinding("A", "P"),
        ParentFinding("B", "P", 0.5),
    )
    back, said = through(book, tmp_path)
    same_numbers(book, back)
    assert not any("without any known parent" in line for line in said)


def test_the_same_is_found_in_two_crosses(tmp_path: Path) -> None:
    # Each cross used a plant of V of its own, so they stay two crosses.
    book = made(
        Plant("V", kind="variety", fixation=0.5),
        Plant("W", kind="plant"),
        Cross("X", "V", intended="open", drawn="one"),
        Cross("Y", "V", intended="open", drawn="one"),
        Plant("A", cross="X"),
        Plant("B", cross="X"),
        Plant("C", cross="Y"),
        *(ParentFinding(code, "W") for code in "ABC"),
    )
    back, said = through(book, tmp_path)
    assert back.plants["A"].cross == back.plants["B"].cross != back.plants["C"].cross
    same_numbers(book, back)
    assert not any("another member" in line for line in said)


def test_a_finding_parts_sibs_of_one_member_of_a_pool(tmp_path: Path) -> None:
    book = made(
        Plant("V", kind="variety", fixation=0.5),
        Plant("W", kind="plant"),
        Cross("X", "V", "W"),
        Plant("A", cross="X"),
        Plant("B", cross="X"),
        ParentFinding("A", "self"),
    )
    _, said = through(book, tmp_path)
    assert any("(A): written as progeny of another member" in line for line in said)


def test_uncertain_findings_share_no_father(tmp_path: Path) -> None:
    book = made(
        Plant("P", kind="plant"),
        Plant("Q", kind="plant"),
        Cross("X", "P"),
        PollenCandidate("X", "Q", 0.5),
        *(Plant(code, cross="X") for code in "ABC"),
        ParentFinding("A", "Q", 0.5),
    )
    back, _ = through(book, tmp_path)
    same_numbers(book, back)


def test_odds_of_an_open_pollinated_cross_and_a_selfing_named_once(tmp_path: Path) -> None:
    book = made(
        Plant("P", kind="plant"),
        Plant("Q", kind="plant"),
        Cross("X", "P", intended="open"),
        PollenCandidate("X", "Q", 0.5),
        Cross("Y", "", "P", intended="selfing"),
        *(Plant(code, cross="X") for code in "AB"),
        *(Plant(code, cross="Y") for code in "CD"),
    )
    back, said = through(book, tmp_path)
    same_numbers(book, back)
    assert "The intention of 1 cross with odds, which alone are written." in said


def test_a_crop_s_double_reduction_is_said(tmp_path: Path) -> None:
    book = made(Plant("P", kind="plant"), ploidy=4, double_reduction=0.1)
    _, said = through(book, tmp_path)
    assert "The book's settings double reduction are not written." in said
