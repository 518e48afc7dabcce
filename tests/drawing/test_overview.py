"""The map as a pure function of the book: what holds for every one of its places."""

from __future__ import annotations

from itertools import pairwise

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from pedigreeview.book.book import Book
from pedigreeview.book.records import Cross, Plant
from pedigreeview.drawing.founders import palette_numbers
from pedigreeview.drawing.overview import Overview, overview_of
from pedigreeview.drawing.overview_order import MANY_BANDS, envelope
from pedigreeview.network import PedigreeNetwork
from tests.drawing.random_books import add_cross, books


def _map(book: Book) -> tuple[PedigreeNetwork, Overview]:
    net = PedigreeNetwork.from_records(book)
    return net, overview_of(net)


@given(books(most=20))
def test_every_plant_has_one_place_in_the_band_of_its_generation(book: Book) -> None:
    net, overview = _map(book)
    assert sorted(overview.order.tolist()) == list(range(len(net.codes)))
    assert int(overview.counts.sum()) == len(net.codes)
    for row, code in enumerate(net.codes):
        assert overview.generations[overview.band[row]] == net.generation(code)
    assert overview.generations.tolist() == sorted(overview.generations.tolist())


@given(books(most=20))
def test_plants_of_a_band_never_overlap_and_stay_inside(book: Book) -> None:
    _, overview = _map(book)
    for band, pitch in enumerate(overview.pitch.tolist()):
        edges = overview.edges_of(band)
        assert edges[0] >= -1e-9
        assert edges[-1] + pitch <= overview.width + 1e-9
        assert (np.diff(edges) >= pitch - 1e-9).all()


@given(books(most=20))
def test_seed_and_pollen_parents_stand_above(book: Book) -> None:
    net, overview = _map(book)
    for row, code in enumerate(net.codes):
        origin = net.parents(code)
        for parent in (origin.seed_parent, *(held for held, _ in origin.pollen)):
            if parent:
                assert overview.band[overview.row(parent)] < overview.band[row]


@given(books(most=20))
def test_plants_of_one_cross_stand_side_by_side(book: Book) -> None:
    net, overview = _map(book)
    place = np.empty(len(net.codes), int)
    place[overview.order] = np.arange(len(net.codes))
    families: dict[tuple[str, int], list[int]] = {}
    for row, code in enumerate(net.codes):
        cross = net.parents(code).cross
        if cross:
            families.setdefault((cross, int(overview.band[row])), []).append(int(place[row]))
    for places in families.values():
        assert max(places) - min(places) == len(places) - 1


@given(books(most=16))
def test_every_parent_of_every_family_has_one_line(book: Book) -> None:
    net, overview = _map(book)
    drawn = {
        (net.codes[above], int(below), bool(pollen))
        for above, below, pollen in zip(
            overview.above, overview.below, overview.pollen, strict=True
        )
    }
    assert len(drawn) == len(overview.above)
    expected: dict[tuple[str, int], bool] = {}
    for row, code in enumerate(net.codes):
        origin = net.parents(code)
        family = int(overview.family[row])
        for parent, _ in origin.pollen:
            expected.setdefault((parent, family), True)
        if origin.seed_parent:
            expected[origin.seed_parent, family] = False
    assert drawn == {(*key, pollen) for key, pollen in expected.items()}


@given(books(most=16))
def test_the_same_book_gives_the_same_map(book: Book) -> None:
    one, other = (overview_of(PedigreeNetwork.from_records(book)) for _ in range(2))
    assert one.codes == other.codes
    for name in ("order", "left", "pitch", "above", "below", "founder", "shares"):
        assert np.array_equal(getattr(one, name), getattr(other, name))


@given(books(most=16))
def test_what_lies_at_a_place_is_the_plant_drawn_there(book: Book) -> None:
    net, overview = _map(book)
    for row in range(len(net.codes)):
        band = int(overview.band[row])
        middle = float(overview.left[row] + overview.pitch[band] / 2)
        assert overview.at(middle, band) == row
    assert overview.at(-0.5, 0) == -1
    assert overview.at(overview.width + 1, 0) == -1
    assert overview.at(0.5, -1) == -1
    assert overview.at(0.5, len(overview.counts)) == -1


@given(books(most=16))
def test_shares_are_those_of_the_network(book: Book) -> None:
    net, overview = _map(book)
    number = {code: at for at, code in enumerate(overview.named)}
    for row, code in enumerate(net.codes):
        shares = net.founder_shares(code)
        expected = np.zeros(13)
        for founder, share in shares.items():
            expected[number.get(founder, 12)] += share
        # Kept in single precision.
        assert overview.shares[row] == pytest.approx(expected, abs=1e-6)
        top = int(overview.founder[row])
        if shares and sum(shares.values()) > 0.5 + 1e-9:
            assert expected[top] == pytest.approx(max(expected))


def test_founders_have_the_colours_of_the_other_pictures() -> None:
    book = Book()
    codes = [f"V{number:02}" for number in range(17)]
    for code in codes:
        book.add(Plant(plant=code))
    for number, code in enumerate(reversed(codes)):
        add_cross(book, f"x{number}", code, codes[0])
        for plant in range(number % 5 + 1):
            book.add(Plant(plant=f"P{number}-{plant}", cross=f"x{number}"))
    net, overview = _map(book)
    expected = {c: n for c, n in palette_numbers(net, dict.fromkeys(codes, 1.0)) if n >= 0}
    assert {code: number for number, code in enumerate(overview.named)} == expected
    assert overview.founders()[:12] == overview.named
    assert sorted(overview.founders()) == codes


def test_steps_from_plant_to_plant() -> None:
    book = Book()
    for code in ("A", "B"):
        book.add(Plant(plant=code))
    add_cross(book, "x", "A", "B")
    for number in range(3):
        book.add(Plant(plant=f"P{number}", cross="x"))
    net, overview = _map(book)
    row = overview.row("P1")
    assert net.codes[overview.neighbour(row, 1)] == "P2"
    assert net.codes[overview.neighbour(row, -1)] == "P0"
    assert overview.neighbour(overview.row("P2"), 1) == -1
    for word, code in (("left", "P0"), ("right", "P2"), ("seed", "A"), ("pollen", "B")):
        assert net.codes[overview.step(row, word)] == code
    assert net.codes[overview.step(overview.row("B"), "progeny")] == "P0"
    assert overview.step(row, "progeny") == -1
    assert overview.step(overview.row("A"), "seed") == -1
    assert overview.step(-1, "left") == int(overview.order[0])
    assert overview.fullest() == 1
    assert overview.row("nobody") == -1
    assert overview.rows_of({"P0", "nobody"}).tolist() == [c == "P0" for c in net.codes]


def test_an_empty_book_and_a_single_plant() -> None:
    _, nothing = _map(Book())
    assert len(nothing) == 0
    assert nothing.counts.tolist() == []
    book = Book()
    book.add(Plant(plant="A"))
    _, one = _map(book)
    assert one.at(one.width / 2, 0) == 0
    assert one.width > 0


def test_loops_stand_in_a_last_band_of_their_own() -> None:
    book = Book()
    for code, cross in (("A", ""), ("B", "y"), ("C", "x")):
        book.add(Plant(plant=code, cross=cross))
    book.add(Cross(cross="x", seed_parent="B", pollen_parent="A", intended="cross"))
    book.add(Cross(cross="y", seed_parent="C", pollen_parent="A", intended="cross"))
    _, overview = _map(book)
    assert overview.generations.tolist() == [0, -1]
    assert overview.counts.tolist() == [1, 2]
    assert overview.founder[overview.row("B")] == -2


def test_a_long_chain_of_selfings_is_laid_out_at_once() -> None:
    book = Book()
    book.add(Plant(plant="0"))
    for number in range(1, MANY_BANDS + 10):
        add_cross(book, f"s{number}", str(number - 1), str(number - 1))
        book.add(Plant(plant=str(number), cross=f"s{number}"))
    _, overview = _map(book)
    assert len(overview.counts) == MANY_BANDS + 10
    assert len(overview.above) == MANY_BANDS + 9


@given(
    st.lists(st.tuples(st.floats(-50, 150), st.floats(0.1, 5)), min_size=1, max_size=30),
    st.floats(0, 100),
)
def test_places_keep_their_order_and_never_overlap(
    items: list[tuple[float, float]], spare: float
) -> None:
    wanted, size = (np.array(side) for side in zip(*items, strict=True))
    width = float(size.sum()) + spare
    placed = envelope(wanted, size, width)
    assert placed[0] >= -1e-9
    assert placed[-1] + size[-1] <= width + 1e-6
    for (left, room), after in pairwise(zip(placed, size, strict=True)):
        assert after[0] >= left + room - 1e-9


def test_places_that_fit_are_given_as_wanted() -> None:
    wanted = np.array([1.0, 4.0, 9.0])
    assert envelope(wanted, np.ones(3), 20.0).tolist() == [1.0, 4.0, 9.0]
