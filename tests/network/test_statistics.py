"""Statistics asked for by code, on published cases and on a demo."""

from __future__ import annotations

from fractions import Fraction

import pytest

from pedigreeview.book.book import Book, BookSettings
from pedigreeview.book.faults import Fault
from pedigreeview.book.records import Cross, Plant
from pedigreeview.exchange import read_book
from pedigreeview.network import PedigreeNetwork
from pedigreeview.places import demo
from tests.published.cases import CHECKS, pedigree_book


def test_how_much_inbreeding_each_founder_brought() -> None:
    """PI1: Roan Gauntlet, Lynch & Walsh 1998, ch. 7 example 1 (addends read)."""
    entry = CHECKS["PI1"]
    net = PedigreeNetwork.from_records(pedigree_book(entry["input"]["rows"]))
    found = net.partial_inbreeding(entry["input"]["target"])
    expected = {k: float(v) for k, v in entry["expected"]["partial"].items()}
    assert dict(found.founders) == pytest.approx(expected)
    assert found.unknown == 0


def test_a_bottleneck_by_codes() -> None:
    """F02: Boichard et al. 1997 (definitions from memory)."""
    entry = CHECKS["F02"]
    net = PedigreeNetwork.from_records(pedigree_book(entry["input"]["rows"]))
    group = entry["input"]["group"]
    held = net.diversity(group)
    assert held.founder_equivalents == pytest.approx(4)
    assert held.status_number == pytest.approx(float(Fraction("8/5")))
    assert {net.label(row): share for row, share in held.founder_shares} == pytest.approx(
        dict.fromkeys("ABCD", 0.25)
    )
    found = net.effective_ancestors(group)
    assert found.low == found.high == pytest.approx(2)
    assert net.genome_equivalents(group) > 0


def test_depth_by_codes() -> None:
    """G01: six calves, Mrode 2014; definitions from memory."""
    entry = CHECKS["G01"]
    net = PedigreeNetwork.from_records(pedigree_book(entry["input"]["rows"]))
    for code, value in entry["expected"]["generation_equivalents"].items():
        assert net.generation_equivalents(code) == pytest.approx(float(Fraction(value)))
    assert net.completeness("6", 3) == pytest.approx(float(Fraction("22/45")))


def test_most_f2_plants_lie_around_one_half() -> None:
    net = PedigreeNetwork.from_records(read_book(demo("two_peas_both_ways")))
    ranges = {one.founder: one for one in net.share_ranges("23-07")}
    assert set(ranges) == {"TP", "BA"}
    for one in ranges.values():
        assert one.expected == 0.5
        assert 0.25 < one.low < 0.45 < 0.55 < one.high < 0.75
    assert net.share_ranges("23-07") == net.share_ranges("23-07")


def test_without_a_crop_no_range_is_given() -> None:
    book = Book(settings=BookSettings())
    book.add(Plant("A"))
    book.add(Plant("B"))
    book.add(Cross("x", "A", "B"))
    book.add(Plant("f", cross="x"))
    net = PedigreeNetwork.from_records(book)
    with pytest.raises(Fault, match="crop is not stated"):
        net.share_ranges("f")
