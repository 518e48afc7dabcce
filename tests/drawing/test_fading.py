"""What goes back with plants that do not fit: lines with the weaker end, knots, never the focus."""

from __future__ import annotations

from hypothesis import given, settings
from hypothesis import strategies as st

from pedigreeview.book.book import Book
from pedigreeview.book.records import Plant
from pedigreeview.drawing.fading import faded
from pedigreeview.drawing.placing import Placed, place
from pedigreeview.drawing.strokes import strokes
from pedigreeview.drawing.view import Look, choose
from pedigreeview.network import PedigreeNetwork
from tests.drawing.random_books import add_cross, books


def picture(book: Book, focus: str | None = None) -> Placed:
    return place(choose(PedigreeNetwork.from_records(book), Look(focus=focus)))


def family() -> Placed:
    book = Book()
    for code in ("A", "B"):
        book.add(Plant(plant=code))
    add_cross(book, "x", "A", "B")
    for code in ("P", "Q"):
        book.add(Plant(plant=code, cross="x"))
    add_cross(book, "s", "P", "P")
    book.add(Plant(plant="S", cross="s"))
    return picture(book)


def test_a_line_is_as_strong_as_the_weaker_of_its_ends():
    found = faded(family(), frozenset({"B", "Q"}))
    assert found.knots == frozenset()
    assert {(above, below, role) for above, below, role, _ in found.links} == {
        ("plant:B", "cross:x", "pollen"),
        ("cross:x", "plant:Q", "progeny"),
    }


def test_a_knot_goes_back_without_a_fitting_parent_or_without_fitting_progeny():
    placed = family()
    assert faded(placed, frozenset({"A", "B"})).knots == {"cross:x"}
    assert faded(placed, frozenset({"S"})).knots == {"cross:s"}
    assert faded(placed, frozenset({"A", "S"})).knots == {"cross:s"}
    # With its knot the line down to a plant that fits goes back too.
    assert ("cross:x", "plant:P", "progeny", "cross:x") in faded(
        placed, frozenset({"A", "B"})
    ).links


def test_the_focus_never_goes_back():
    placed = family()
    found = faded(placed, frozenset({"P", "Q", "S"}), "plant:P")
    assert found.blocks == {"plant:Q", "plant:S"}
    assert not any(below == "plant:P" for _, below, _, _ in found.links)


def test_nothing_is_put_back_without_plants():
    assert not faded(family(), frozenset()).links
    assert not any(stroke.faint for stroke in strokes(family()).strokes)


@settings(max_examples=25, deadline=None)
@given(books(), st.data())
def test_every_route_is_drawn_once_faint_or_plain(book: Book, data: st.DataObject):
    placed = picture(book)
    codes = frozenset(data.draw(st.sets(st.sampled_from(sorted(book.plants)))))
    found = faded(placed, codes)
    made = strokes(placed, found.links).strokes
    drawn = [(link, stroke.faint) for stroke in made for link, _ in stroke.line.routes]
    every = [link for line in placed.lines for link, _ in line.routes]
    assert len(drawn) == len(every)
    for link, faint in drawn:
        ends = {link.above, link.below}
        assert faint == (bool(ends & found.blocks) or link.knot in found.knots)
