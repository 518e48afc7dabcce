"""The map's colours go to the founders that matter most for what is looked at."""

from __future__ import annotations

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from pedigreeview.book.book import Book
from pedigreeview.book.records import Cross, Plant
from pedigreeview.drawing.founders import OTHERS, PALETTE_SIZE, palette_numbers
from pedigreeview.drawing.overview import overview_of
from pedigreeview.drawing.overview_founders import founders_named, total_shares
from pedigreeview.drawing.view import Look, choose
from pedigreeview.network import PedigreeNetwork
from pedigreeview.network.links import links_of
from tests.drawing.random_books import add_cross, books


def uneven() -> PedigreeNetwork:
    """Seventeen founders; the later one stands in the book, the more progeny it has.

    V00 gives pollen to all; so by descendants it is the first, V16 the second.
    """
    book = Book()
    for number in range(17):
        book.add(Plant(plant=f"V{number:02}"))
    for number in range(1, 17):
        add_cross(book, f"x{number}", f"V{number:02}", "V00")
        for plant in range(number):
            book.add(Plant(plant=f"P{number}-{plant}", cross=f"x{number}"))
    return PedigreeNetwork.from_records(book)


@given(books(most=20))
def test_totals_are_the_shares_of_all_plants_summed(book: Book) -> None:
    net = PedigreeNetwork.from_records(book)
    expected = dict.fromkeys(net.founders, 0.0)
    for code in net.codes:
        for founder, share in net.founder_shares(code).items():
            expected[founder] += share
    links = links_of(net)
    found = total_shares(links).tolist()
    codes = [net.codes[row] for row in links.founders.tolist()]
    assert dict(zip(codes, found, strict=True)) == pytest.approx(expected, abs=1e-9)


def test_the_palette_goes_to_the_largest_shares_in_the_book() -> None:
    net = uneven()
    overview = overview_of(net)
    assert set(overview.named) == {"V00", *(f"V{number:02}" for number in range(6, 17))}
    # The others share the last column, and it is neither theirs nor unknown.
    row = overview.row("V03")
    assert overview.shares[row].tolist() == [0.0] * PALETTE_SIZE + [1.0]
    assert overview.founder[row] == OTHERS
    assert overview.founders()[:PALETTE_SIZE] == overview.named
    assert sorted(overview.founders()) == sorted(net.founders)


def test_not_to_the_first_in_the_book_nor_to_the_most_descendants_alone() -> None:
    """A founder with many thin lines below it stands back for one with fewer, fuller ones."""
    book = Book()
    for number in range(14):
        book.add(Plant(plant=f"V{number:02}"))
    add_cross(book, "thin", "V00", "V01")
    book.add(Plant(plant="T0", cross="thin"))
    for step in range(1, 8):
        add_cross(book, f"t{step}", f"T{step - 1}", f"V{step % 2 + 2:02}")
        book.add(Plant(plant=f"T{step}", cross=f"t{step}"))
    for number in range(2, 14):
        add_cross(book, f"s{number}", f"V{number:02}", f"V{number:02}")
        for sib in range(3):
            book.add(Plant(plant=f"S{number}-{sib}", cross=f"s{number}"))
    net = PedigreeNetwork.from_records(book)
    assert net.descendant_counts(["V00", "V13"]) == {"V00": 8, "V13": 3}
    assert set(overview_of(net).named) == {f"V{number:02}" for number in range(2, 14)}


def test_a_marked_plant_has_its_own_founders_in_colour_first() -> None:
    net = uneven()
    plain = overview_of(net)
    assert "V02" not in plain.named
    for code in ("P2-1", "V02"):
        marked = plain.recoloured(net, focus=code)
        assert set(net.founder_shares(code)) <= set(marked.named)
        assert len(marked.named) == PALETTE_SIZE
        # Who stays keeps its number, unless a founder with more descendants comes to have it.
        stay = set(plain.named) & set(marked.named)
        assert len(stay) == PALETTE_SIZE - 1
        whole = overview_of(net, focus=code)
        assert whole.named == marked.named
        assert np.array_equal(whole.shares, marked.shares)
        assert np.array_equal(whole.founder, marked.founder)
        assert marked.row("P9-0") == plain.row("P9-0")
        assert marked.left is plain.left
    assert plain.recoloured(net) is plain


def test_a_plant_in_a_loop_or_of_another_book_is_no_focus() -> None:
    book = Book()
    for number in range(13):
        book.add(Plant(plant=f"V{number:02}"))
    book.add(Plant(plant="B", cross="y"))
    book.add(Plant(plant="C", cross="x"))
    book.add(Cross(cross="x", seed_parent="B", pollen_parent="V12", intended="cross"))
    book.add(Cross(cross="y", seed_parent="C", pollen_parent="V12", intended="cross"))
    net = PedigreeNetwork.from_records(book)
    usual = overview_of(net).named
    assert overview_of(net, focus="B").named == usual
    assert overview_of(net, focus="nobody").named == usual


@given(st.data())
def test_a_founder_has_the_colour_of_the_picture_beside(data: st.DataObject) -> None:
    """As far as it has one on both: also one that found its own number taken there."""
    net = uneven()
    focus = data.draw(st.sampled_from(net.codes))
    table = choose(net, Look(focus, up=3, down=3)).founders
    named = overview_of(net, focus=focus, like=table).named
    numbers = {code: number for number, code in enumerate(named)}
    for code, number in table:
        if number != OTHERS and code in numbers:
            assert numbers[code] == number
    shuffled = data.draw(st.permutations(range(PALETTE_SIZE)))
    like = tuple(zip(named, shuffled, strict=True))
    again = founders_named(net, links_of(net), focus=focus, like=like)
    assert {code: number for number, code in enumerate(again)} == dict(like)


def test_a_number_that_is_held_is_not_taken_by_likeness() -> None:
    net = uneven()
    shares = {"V16": 1.0, "V15": 1.0}
    table = dict(palette_numbers(net, shares, held=(("V16", 4),), like=(("V15", 4), ("V16", 7))))
    assert table["V16"] == 4
    assert table["V15"] != 4


@given(books(most=20))
def test_every_founder_of_a_small_book_has_a_colour(book: Book) -> None:
    net = PedigreeNetwork.from_records(book)
    overview = overview_of(net)
    assert overview.named == net.founders
    assert overview.recoloured(net, focus=net.codes[-1]) is overview
