"""A founder keeps its colour from picture to picture as far as can be."""

from __future__ import annotations

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from pedigreeview.book.book import Book
from pedigreeview.book.records import Plant
from pedigreeview.drawing.blocks import View
from pedigreeview.drawing.founders import (
    OTHERS,
    PALETTE_SIZE,
    palette_numbers,
    ranked_founders,
    show_table,
    shown_numbers,
)
from pedigreeview.drawing.view import Look, choose
from pedigreeview.network import PedigreeNetwork
from tests.benchmarks.garden import garden
from tests.drawing.random_books import add_cross, books


def test_numbers_do_not_depend_on_the_picture():
    book = Book()
    for code in ("A", "B", "C"):
        book.add(Plant(plant=code))
    add_cross(book, "x", "A", "B")
    book.add(Plant(plant="P", cross="x"))
    net = PedigreeNetwork.from_records(book)
    everything = dict(palette_numbers(net, {"A": 1, "B": 1, "C": 1}))
    assert palette_numbers(net, {"B": 1.0}) == (("B", everything["B"]),)


def _many(count: int = PALETTE_SIZE + 8) -> PedigreeNetwork:
    """A chain of crosses: the first founders have the most descendants."""
    book = Book()
    codes = [f"V{number:02}" for number in range(count)]
    for code in codes:
        book.add(Plant(plant=code))
    below = codes[0]
    for number, code in enumerate(codes[1:]):
        add_cross(book, f"x{number}", below, code)
        below = f"P{number}"
        book.add(Plant(plant=below, cross=f"x{number}"))
    return PedigreeNetwork.from_records(book)


@pytest.fixture(scope="module")
def many() -> PedigreeNetwork:
    return _many()


def test_founders_beyond_the_palette_are_others(many):
    numbers = dict(palette_numbers(many, dict.fromkeys(many.founders, 1.0)))
    assert sorted(set(numbers.values())) == [OTHERS, *range(PALETTE_SIZE)]
    assert sum(number == OTHERS for number in numbers.values()) == 8


def test_a_focus_that_is_a_founder_has_a_colour_of_its_own(many):
    """Though its picture shows the whole book and it has hardly a descendant."""
    focus = many.founders[-1]
    shares = {code: 30.0 - at for at, code in enumerate(many.founders)}
    assert dict(palette_numbers(many, shares))[focus] == OTHERS
    assert dict(palette_numbers(many, shares, focus=focus))[focus] != OTHERS


@settings(max_examples=40, deadline=None)
@given(st.data())
def test_numbers_are_given_by_claim_and_kept_where_they_can_be(many, data):
    founders = many.founders
    shares = data.draw(
        st.dictionaries(st.sampled_from(founders), st.floats(0.01, 9.0), min_size=1, max_size=20)
    )
    own = data.draw(st.dictionaries(st.sampled_from(sorted(shares)), st.floats(0.01, 1.0)))
    focus = data.draw(st.sampled_from(["", *sorted(shares)]))
    table = palette_numbers(many, shares, focus=focus, own=own)
    numbers = dict(table)
    assert set(numbers) == set(shares)
    given_out = [number for number in numbers.values() if number != OTHERS]
    assert len(given_out) == len(set(given_out)) == min(len(shares), PALETTE_SIZE)
    # The focus, and the founders with the largest shares in it, go without before nobody else.
    if focus:
        assert numbers[focus] != OTHERS
    without = [code for code in numbers if numbers[code] == OTHERS]
    for code in without:
        for other in numbers:
            if numbers[other] != OTHERS and other != focus:
                assert (round(own.get(other, 0), 9), round(shares[other], 9)) >= (
                    round(own.get(code, 0), 9),
                    round(shares[code], 9),
                )
    # One with a number has its own, unless one with more descendants has that.
    ranked = ranked_founders(many)
    by_number = {number: code for code, number in numbers.items()}
    for code, number in numbers.items():
        home = ranked.index(code) % PALETTE_SIZE
        if number not in (OTHERS, home):
            assert ranked.index(by_number[home]) < ranked.index(code)


@given(books())
def test_pictures_of_a_small_book_agree_on_every_founder(book):
    net = PedigreeNetwork.from_records(book)
    whole = dict(choose(net, Look()).founders)
    if len(net.founders) <= PALETTE_SIZE:
        for code in net.codes[-3:]:
            table = dict(choose(net, Look(focus=code)).founders)
            assert table.items() <= whole.items()


def test_every_focus_shows_the_founders_that_it_is_made_of(many):
    """Also the picture itself asks for the focus and its largest shares first."""
    for code in many.codes:
        numbers = dict(choose(many, Look(focus=code, up=30, down=30)).founders)
        shares = many.founder_shares(code)
        largest = sorted(shares, key=lambda one: -shares[one])[:6]
        assert all(numbers[one] != OTHERS for one in largest)
        if code in many.founders:
            assert numbers[code] != OTHERS


def test_what_stands_beside_the_picture_has_its_colours(many):
    focus = many.founders[-1]
    table = choose(many, Look(focus=focus, up=30, down=30)).founders
    show_table(many, table)
    numbers = dict(table)
    beside = dict(shown_numbers(many, dict.fromkeys(many.founders, 1.0)))
    assert {code: beside[code] for code in numbers if numbers[code] != OTHERS} == {
        code: number for code, number in numbers.items() if number != OTHERS
    }
    assert dict(shown_numbers(many, {focus: 1.0})) == {focus: numbers[focus]}


def _coloured(view: View) -> dict[str, int]:
    return {code: number for code, number in view.founders if number != OTHERS}


def test_founders_on_the_screen_keep_their_colours_in_the_next_picture() -> None:
    net = PedigreeNetwork.from_records(garden(800))
    changed = 0
    for focus in net.founders:
        before = choose(net, Look(focus=focus, down=1))
        plain = choose(net, Look(focus=focus, down=4))
        after = choose(net, Look(focus=focus, down=4, like=before.founders))
        was, fresh, now = _coloured(before), _coloured(plain), _coloured(after)
        # Who has a colour is the picture's own affair; which one, that of the picture before.
        assert now.keys() == fresh.keys()
        assert all(now[code] == number for code, number in was.items() if code in now)
        assert len(set(now.values())) == len(now)
        assert {code for code, _ in after.founders} == {code for code, _ in plain.founders}
        changed += any(fresh[code] != number for code, number in was.items() if code in fresh)
    assert changed
