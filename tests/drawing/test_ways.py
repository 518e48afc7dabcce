"""Ways of looking: connections, what came of a plant, cytoplasm; filters that fold away; ghosts."""

from __future__ import annotations

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from pedigreeview.book.book import Book
from pedigreeview.book.faults import Fault
from pedigreeview.book.records import Cross, Plant
from pedigreeview.drawing.ghost import GHOST_KNOT, GHOST_TAG, Ghost
from pedigreeview.drawing.placing import place
from pedigreeview.drawing.view import Look, choose
from pedigreeview.drawing.ways import Way, connection
from pedigreeview.network import PedigreeNetwork
from tests.drawing.random_books import add_cross, books


def network(book: Book) -> PedigreeNetwork:
    return PedigreeNetwork.from_records(book)


def pedigree(*rows: tuple[str, str, str]) -> PedigreeNetwork:
    """Plants in order as (code, seed parent, pollen parent); blanks for a founder."""
    book = Book()
    for code, seed, pollen in rows:
        if not seed:
            book.add(Plant(plant=code))
            continue
        cross = f"x{code}"
        add_cross(book, cross, seed, pollen)
        book.add(Plant(plant=code, cross=cross))
    return network(book)


FIRST_COUSINS = (
    ("G1", "", ""),
    ("G2", "", ""),
    ("S1", "G1", "G2"),
    ("S2", "G1", "G2"),
    ("M1", "", ""),
    ("M2", "", ""),
    ("C1", "S1", "M1"),
    ("C2", "S2", "M2"),
    ("apart", "M1", "M2"),
)


def paths_down(net: PedigreeNetwork, top: str, end: str) -> list[tuple[str, ...]]:
    """Every path of descent, by trying all of them."""
    if top == end:
        return [(top,)]
    return [(top, *rest) for child in net.progeny(top) for rest in paths_down(net, child, end)]


def test_first_cousins_meet_at_both_grandparents_and_nothing_else_is_drawn():
    net = pedigree(*FIRST_COUSINS)
    found = connection(net, "C1", "C2")
    assert found.meeting == ("G1", "G2")
    assert set(found.plants) == {"G1", "G2", "S1", "S2", "C1", "C2"}
    view = choose(net, Look(focus="C1", way=Way("connection", other="C2")))
    assert view.shown() - view.aside == set(found.plants)
    assert view.aside == {"M1", "M2"}
    assert view.way_words() == "How C1 and C2 are connected: their lines meet at G1, G2."


def test_a_bottleneck_hides_what_lies_above_it():
    # Two sibs of one selfed plant: its parents are common ancestors, yet all lines pass the plant.
    net = pedigree(
        ("A", "", ""), ("B", "", ""), ("F1", "A", "B"), ("s", "F1", "F1"), ("t", "F1", "F1")
    )
    found = connection(net, "s", "t")
    assert found.meeting == ("F1",)
    assert set(found.plants) == {"F1", "s", "t"}


def test_parent_and_child_and_the_unrelated_are_said():
    net = pedigree(*FIRST_COUSINS)
    below = choose(net, Look(focus="C1", way=Way("connection", other="G1")))
    assert below.way_words() == "How C1 and G1 are connected: C1 descends from G1."
    assert below.shown() - below.aside == {"G1", "S1", "C1"}
    apart = choose(net, Look(focus="C1", way=Way("connection", other="G2")))
    assert apart.meeting == ("G2",)
    none = choose(net, Look(focus="S1", way=Way("connection", other="M1")))
    assert none.meeting == ()
    assert none.shown() == {"S1", "M1"}
    assert none.way_words() == "S1 and M1 share no ancestor in this book."
    with pytest.raises(Fault, match="'Z' is not a plant"):
        choose(net, Look(focus="S1", way=Way("connection", other="Z")))


@settings(max_examples=30, deadline=None)
@given(books(most=7), st.data())
def test_a_connection_is_all_pairs_of_paths_that_share_their_top_alone(book, data):
    net = network(book)
    a = data.draw(st.sampled_from(net.codes))
    b = data.draw(st.sampled_from([code for code in net.codes if code != a] or [a]))
    if a == b:
        return
    meeting = [
        top
        for top in net.codes
        if any(
            set(left) & set(right) == {top}
            for left in paths_down(net, top, a)
            for right in paths_down(net, top, b)
        )
    ]
    found = connection(net, a, b)
    assert list(found.meeting) == meeting
    on_paths = {
        code
        for top in meeting
        for end in (a, b)
        for path in paths_down(net, top, end)
        for code in path
    }
    assert set(found.plants) == on_paths | {a, b}
    # As many of the first plants as one likes hold whole paths, the shortest first.
    for code in set(found.plants) - {a, b}:
        nearer = {other for other in found.plants if found.far[other] <= found.far[code]}
        assert set(net.progeny(code)) & nearer
        assert code in meeting or set(net.parent_codes(code)) & nearer


def test_a_connection_through_a_loop_ends():
    book = Book()
    for code, cross in (("a", "xa"), ("b", "xb"), ("c", "xc"), ("d", "xc")):
        book.add(Plant(plant=code, cross=cross))
    for code, seed, pollen in (("xa", "b", "b"), ("xb", "a", "a"), ("xc", "a", "b")):
        add_cross(book, code, seed, pollen)
    net = network(book)
    assert set(connection(net, "c", "d").plants) >= {"c", "d"}
    choose(net, Look(focus="c", way=Way("connection", other="d")))


def grown() -> PedigreeNetwork:
    book = Book()
    for code in ("A", "B"):
        book.add(Plant(plant=code))
    add_cross(book, "x", "A", "B")
    for number in range(9):
        book.add(Plant(plant=f"p{number}", cross="x", status="culled" if number else "growing"))
    book.plants["p1"].status = "kept"
    book.plants["p2"].status = "finished"
    add_cross(book, "y", "p3", "B")
    book.add(Plant(plant="q", cross="y", status="culled"))
    add_cross(book, "planned", "p4", "A")
    return network(book)


def test_what_came_of_a_plant_is_what_was_kept_finished_or_used():
    net = grown()
    view = choose(net, Look(focus="A", way=Way("descent")))
    assert view.shown() - view.aside == {"A", "p1", "p2", "p3", "p4"}
    assert set(view.left_out) == {"p0", "p5", "p6", "p7", "p8", "q"}
    assert view.way_words() == "What came of A: 6 descendants that led nowhere left out."
    everything = choose(net, Look(focus="A", way=Way("descent", everything=True)))
    assert everything.left_out == ()
    assert everything.shown() >= {f"p{number}" for number in range(9)} | {"q"}


@settings(max_examples=25, deadline=None)
@given(books(), st.data())
def test_each_of_what_came_has_its_path_to_the_focus(book, data):
    net = network(book)
    focus = data.draw(st.sampled_from(net.codes))
    view = choose(net, Look(focus=focus, way=Way("descent"), cap=10**6))
    own = view.shown() - view.aside
    assert own <= net.descendants(focus) | {focus}
    assert own | set(view.left_out) == net.descendants(focus) | {focus}
    for code in own - {focus}:
        assert set(net.parent_codes(code)) & own
    for code in view.left_out:
        assert not net.progeny(code)
        assert net.book.plants[code].status not in ("kept", "finished")


@settings(max_examples=25, deadline=None)
@given(books(), st.data())
def test_the_lineage_by_cytoplasm_is_all_that_has_it(book, data):
    net = network(book)
    focus = data.draw(st.sampled_from(net.codes))
    view = choose(net, Look(focus=focus, way=Way("cytoplasm"), cap=10**6))
    own = view.shown() - view.aside
    founder = net.cytoplasm(focus)
    if founder is not None:
        assert own == {code for code in net.codes if net.cytoplasm(code) == founder}
        assert view.meeting == (founder,)
    else:
        (oldest,) = view.meeting
        assert {focus, oldest} <= own <= net.descendants(oldest) | {oldest}
    assert not own & view.aside


def test_an_unknown_direction_ends_a_seed_line():
    book = Book()
    for code in ("A", "B"):
        book.add(Plant(plant=code))
    book.add(
        Cross(
            cross="x", seed_parent="A", pollen_parent="B", intended="cross", direction_known=False
        )
    )
    book.add(Plant(plant="F1", cross="x"))
    view = choose(network(book), Look(focus="F1", way=Way("cytoplasm")))
    assert view.meeting == ("F1",)


# Filters that fold away ---------------------------------------------------------------------------


@settings(max_examples=30, deadline=None)
@given(books(), st.data())
def test_what_is_folded_away_is_counted_and_never_the_focus(book, data):
    net = network(book)
    focus = data.draw(st.sampled_from(net.codes))
    away = frozenset(data.draw(st.sets(st.sampled_from(net.codes))))
    pins = (data.draw(st.sampled_from(net.codes)),)
    view = choose(net, Look(focus=focus, pins=pins, away=away, cap=10**6))
    assert {focus, *pins} <= view.shown()
    assert not {focus, *pins} & (view.away | view.aside)
    assert view.away <= away
    assert view.aside == view.shown() & away - {focus, *pins}
    place(view)
    # What does not fit and is yet shown is a link or a mate: it has a relative in the picture.
    for code in view.aside:
        kin = {*net.parent_codes(code), *net.progeny(code)}
        mates = {m for child in net.progeny(code) for m in net.parent_codes(child)}
        # A cross shows although nothing came of it, and both its sides with it.
        for cross in book.crosses.values():
            if code in (cross.seed_parent, cross.pollen_parent):
                mates |= {cross.seed_parent, cross.pollen_parent}
        mates |= {row.candidate for row in book.pollen_candidates}
        mates |= {book.crosses[row.cross].seed_parent for row in book.pollen_candidates}
        assert (kin | mates - {code}) & view.shown()


def test_a_filter_folds_leaves_and_keeps_the_links():
    net = pedigree(*FIRST_COUSINS)
    away = frozenset({"G1", "G2", "S1", "S2", "M1", "M2", "apart"})
    view = choose(net, Look(focus="C1", up=3, down=1, away=away, also=frozenset({"C2"})))
    assert "C2" in view.shown()
    assert "apart" not in view.shown()
    whole = choose(net, Look(away=frozenset({"apart"})))
    assert whole.away == {"apart"}
    assert whole.away_words() == "1 plant folded away by the filter."
    assert whole.shown() == set(net.codes) - {"apart"}


# A cross that is only tried out -------------------------------------------------------------------


@pytest.mark.parametrize(("seed", "pollen"), [("C1", "C2"), ("C1", "C1"), ("G1", "C2")])
def test_a_ghost_hangs_below_its_two_parents(seed, pollen):
    net = pedigree(*FIRST_COUSINS)
    ghost = Ghost(seed, pollen, 0.0625, "F 0.0625")
    view = choose(net, Look(focus="G1", down=3, ghost=ghost))
    tag = next(block for block in view.blocks if block.key == GHOST_TAG)
    assert tag.ghost
    assert tag.code == ""
    assert tag.title == (f"{seed} ⊗" if seed == pollen else f"{seed} × {pollen}")
    rows = {block.key: block.row for block in view.blocks}
    roles = {(link.role, link.above) for link in view.links if link.below == GHOST_KNOT}
    assert roles == {("seed", f"plant:{seed}"), ("pollen", f"plant:{pollen}")}
    assert tag.row > max(rows[f"plant:{seed}"], rows[f"plant:{pollen}"])
    own = [net.generation(code) or 0 for code in (seed, pollen)]
    assert view.rows[tag.row].generation == max(own) + 1
    # Half of each parent's shares: by hand for C1 × C2, a quarter of each grandparent.
    if (seed, pollen) == ("C1", "C2"):
        assert dict(tag.shares) == {"G1": 0.25, "G2": 0.25, "M1": 0.25, "M2": 0.25}
    placed = place(view)
    assert placed.block(GHOST_TAG) is not None
    assert GHOST_TAG not in {block.key for block in choose(net, Look(focus="G1", down=3)).blocks}


def test_a_ghost_between_two_generations_has_a_row_of_its_own():
    net = pedigree(*FIRST_COUSINS)
    view = choose(net, Look(focus="G1", up=0, down=0, pins=("C1",), ghost=Ghost("M1", "M2")))
    tag = next(block for block in view.blocks if block.key == GHOST_TAG)
    assert [row.generation for row in view.rows] == sorted({row.generation for row in view.rows})
    assert view.rows[tag.row].generation == 1
    rows = {block.code: view.rows[block.row].generation for block in view.blocks if block.code}
    assert rows["C1"] == net.generation("C1")
    place(view)


def test_a_ghost_brings_its_parents_along():
    net = pedigree(*FIRST_COUSINS)
    view = choose(net, Look(focus="G1", up=0, down=0, ghost=Ghost("M1", "M2")))
    assert {"M1", "M2"} <= view.shown()
    assert any(block.key == GHOST_TAG for block in view.blocks)
