"""What holds of every picture, as numbers, for random books of all origins."""

from __future__ import annotations

import itertools
from collections import defaultdict

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from pedigreeview import read
from pedigreeview.book.book import Book
from pedigreeview.book.faults import Cancelled
from pedigreeview.book.records import Cross, Plant
from pedigreeview.drawing.placing import Placed, place, place_in_worker
from pedigreeview.drawing.view import Look, choose
from pedigreeview.network import PedigreeNetwork
from pedigreeview.places import demo
from tests.drawing.random_books import add_cross, books

QUICK = settings(max_examples=40, deadline=None)


def net_of(book: Book) -> PedigreeNetwork:
    return PedigreeNetwork.from_records(book)


def assert_sound(placed: Placed) -> None:
    """No two blocks touch, parents stand above progeny, no line lies on another net's line."""
    for one, other in itertools.combinations(placed.blocks, 2):
        apart = (
            one.right <= other.x
            or other.right <= one.x
            or one.bottom <= other.y
            or other.bottom <= one.y
        )
        assert apart, f"{one.block.key} lies on {other.block.key}"
    down = placed.orientation == "down"
    for line in placed.lines:
        for link, points in line.routes:
            above, below = placed.block(link.above), placed.block(link.below)
            assert above is not None
            assert below is not None
            if not link.back:
                if down:
                    assert above.y < below.y
                else:
                    assert above.x < below.x
            for (x0, y0), (x1, y1) in itertools.pairwise(points):
                assert x0 == x1 or y0 == y1, "lines run along the grid"
            assert_clear_of_tags(placed, link, points)
    assert_tracks_apart(placed)


def assert_clear_of_tags(placed: Placed, link, points) -> None:
    for item in placed.blocks:
        if item.block.key in (link.above, link.below):
            continue
        for (x0, y0), (x1, y1) in itertools.pairwise(points):
            inside = (
                max(min(x0, x1), item.x) < min(max(x0, x1), item.right)
                and item.y < y0 < item.bottom
                if y0 == y1
                else max(min(y0, y1), item.y) < min(max(y0, y1), item.bottom)
                and item.x < x0 < item.right
            )
            assert not inside, f"{link.above} to {link.below} runs through {item.block.key}"


def assert_tracks_apart(placed: Placed) -> None:
    """Lines of different nets never lie on each other: they would lie about parentage."""
    for held in (*runs(placed, level=True).values(), *runs(placed, level=False).values()):
        for (a0, a1, one), (b0, b1, other) in itertools.combinations(held, 2):
            if one != other:
                assert a1 < b0 or b1 < a0, f"lines of {one} and {other} run into each other"


def runs(placed: Placed, *, level: bool) -> dict[float, list[tuple[float, float, str]]]:
    """Straight stretches by their place across, each with its net."""
    found = defaultdict(list)
    for line in placed.lines:
        for _, points in line.routes:
            for (x0, y0), (x1, y1) in itertools.pairwise(points):
                if level and y0 == y1:
                    found[y0].append((min(x0, x1), max(x0, x1), line.key))
                elif not level and x0 == x1:
                    found[x0].append((min(y0, y1), max(y0, y1), line.key))
    return found


def read_as_one(placed: Placed) -> list[tuple[str, str]]:
    """Uprights of two nets in one gap that stand on one line, or closer than 8 units."""
    cuts = sorted({item.y + item.height / 2 for item in placed.blocks} | {-1e6, 1e6})
    by_gap = defaultdict(list)
    for x, held in runs(placed, level=False).items():
        for top, bottom, net in held:
            for gap, (low, high) in enumerate(itertools.pairwise(cuts)):
                if top < high and bottom > low:
                    by_gap[gap].append((x, net))
    return [
        (one, other)
        for held in by_gap.values()
        for (x, one), (other_x, other) in itertools.combinations(sorted(set(held)), 2)
        if one != other and other_x - x < 8
    ]


@pytest.mark.parametrize(
    "name",
    [
        "two_peas_both_ways",
        "a_leaf_for_hollin_plate",
        "tansy_and_the_moths",
        "newcomers_table.csv",
    ],
)
def test_no_two_lines_of_the_demos_can_be_read_as_one(name):
    net = read(demo(name))
    looks = [Look(), *(Look(focus=code) for code in net.codes[:: max(1, len(net.codes) // 40)])]
    bad = {}
    for look in looks:
        placed = place(choose(net, look))
        found = read_as_one(placed)
        if found:
            bad[look.focus] = found
    assert bad == {}


@QUICK
@given(books(), st.data())
def test_every_picture_is_sound(book, data):
    net = net_of(book)
    focus = data.draw(st.sampled_from([None, *net.codes]))
    way = data.draw(st.sampled_from(["down", "right"]))
    view = choose(net, Look(focus=focus))
    placed = place(view, orientation=way)
    assert {item.block.key for item in placed.blocks} == {block.key for block in view.blocks}
    assert_sound(placed)
    assert place(view, orientation=way) == placed, "the same question has the same answer"


@settings(max_examples=100, deadline=None, derandomize=True, database=None)
@given(books(), st.data())
def test_no_two_lines_of_random_books_can_be_read_as_one(book, data):
    net = net_of(book)
    focus = data.draw(st.sampled_from([None, *net.codes]))
    assert read_as_one(place(choose(net, Look(focus=focus)))) == []


@QUICK
@given(books(), st.data())
def test_a_new_focus_keeps_its_own_place(book, data):
    net = net_of(book)
    first, second = (data.draw(st.sampled_from(net.codes)) for _ in range(2))
    before = place(choose(net, Look(focus=first)))
    after = place(choose(net, Look(focus=second)), before)
    assert_sound(after)
    old, new = before.block_of(second), after.block_of(second)
    if old is not None:
        assert new is not None
        assert new.middle == pytest.approx(old.middle, abs=0.5)


@QUICK
@given(books())
def test_pictures_too_large_for_dot_are_sound_too(book):
    assert_sound(place(choose(net_of(book), Look()), dot_most=0))


def pair_book() -> Book:
    book = Book()
    for code in ("A", "B"):
        book.add(Plant(plant=code, kind="variety"))
    add_cross(book, "1", "A", "B")
    add_cross(book, "2", "B", "A")
    for cross, count in (("1", 3), ("2", 5)):
        for number in range(count):
            book.add(Plant(plant=f"{cross}-{number}", cross=cross))
    return book


def test_reciprocal_pair_is_one_block_with_its_knots_side_by_side():
    placed = place(choose(net_of(pair_book()), Look(focus="A")))
    (frame,) = (item for item in placed.blocks if item.block.sort == "pair")
    left, right = sorted(frame.knots, key=lambda spot: spot.x)
    assert {left.key, right.key} == {"cross:1", "cross:2"}
    assert left.y == right.y
    assert left.x + left.width < right.x
    assert frame.x < left.x
    assert right.x + right.width < frame.right


def test_selfing_is_two_parallel_lines():
    book = Book()
    book.add(Plant(plant="A"))
    add_cross(book, "s", "A", "A")
    book.add(Plant(plant="B", cross="s"))
    placed = place(choose(net_of(book), Look(focus="A")))
    routes = {line.role: line.routes[0][1] for line in placed.lines if line.role != "progeny"}
    (x_seed, _), (x_pollen, _) = routes["seed"][0], routes["pollen"][0]
    assert len(routes["seed"]) == len(routes["pollen"]) == 2
    assert x_pollen - x_seed == 12


def test_seed_parent_stands_left_where_the_row_allows():
    book = Book()
    for code in ("A", "Z"):
        book.add(Plant(plant=code))
    add_cross(book, "x", "Z", "A")
    book.add(Plant(plant="P", cross="x"))
    placed = place(choose(net_of(book), Look(focus="P")))
    assert placed.block_of("Z").right < placed.block_of("A").x


def test_recurrent_parent_is_drawn_once():
    book = Book()
    for code in ("A", "B"):
        book.add(Plant(plant=code))
    parent = "B"
    for number in range(4):
        add_cross(book, f"x{number}", "A", parent)
        parent = f"P{number}"
        book.add(Plant(plant=parent, cross=f"x{number}"))
    placed = place(choose(net_of(book), Look(focus="P1")))
    assert sum("A" in item.block.codes for item in placed.blocks) == 1
    assert_sound(placed)


def test_loop_of_descent_is_drawn_with_its_link_back():
    book = Book()
    book.add(Plant(plant="A"))
    add_cross(book, "x", "A", "C")
    book.add(Plant(plant="B", cross="x"))
    add_cross(book, "y", "B", "B")
    book.add(Plant(plant="C", cross="y"))
    placed = place(choose(net_of(book), Look(focus="B")))
    back = [line for line in placed.lines if line.back]
    assert [line.routes[0][0].above for line in back] == ["plant:C"]
    assert placed.block_of("A").y < placed.block_of("B").y < placed.block_of("C").y
    assert_sound(placed)


def test_plant_that_is_its_own_parent_is_drawn():
    book = Book()
    add_cross(book, "x", "A", "A")
    book.add(Plant(plant="A", cross="x"))
    for look in (Look(), Look(focus="A")):
        placed = place(choose(net_of(book), look))
        assert [line.back for line in placed.lines if line.role != "progeny"] == [True, True]
        assert_sound(placed)


def test_rows_are_generations():
    net = net_of(pair_book())
    placed = place(choose(net, Look(focus="A")))
    assert [(band.generation, band.label) for band in placed.bands] == [(0, "Founders"), (1, "F1")]
    for item in placed.blocks:
        if item.block.codes:
            band = placed.bands[item.block.row]
            assert band.start < item.y
            assert item.bottom < band.end


def test_empty_book_has_an_empty_picture():
    placed = place(choose(net_of(Book()), Look()))
    assert placed.blocks == ()
    assert placed.bounds == (0.0, 0.0, 0.0, 0.0)


def test_worker_gives_the_same_places():
    view = choose(net_of(pair_book()), Look())
    assert place_in_worker(view) == place(view)


def test_cancel_ends_the_worker():
    view = choose(net_of(pair_book()), Look())

    def cancel(done: int, total: int, words: str) -> None:
        raise Cancelled

    with pytest.raises(Cancelled):
        place_in_worker(view, tick=cancel)


def test_crosses_without_seed_hang_below_their_parents():
    book = pair_book()
    book.add(Cross(cross="3", seed_parent="1-0", pollen_parent="2-0", state="planned"))
    placed = place(choose(net_of(book), Look(focus="1-0")))
    knot = placed.block("cross:3")
    assert knot is not None
    assert knot.y > placed.block_of("1-0").bottom
