"""What a picture shows and what it folds."""

from __future__ import annotations

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from pedigreeview.book.book import Book
from pedigreeview.book.faults import Fault
from pedigreeview.book.records import ParentFinding, Plant, PollenCandidate
from pedigreeview.drawing.blocks import FOUNDERS, IN_LOOPS, PINNED_APART, Row
from pedigreeview.drawing.folds import SINGLES
from pedigreeview.drawing.view import CAP, Look, choose
from pedigreeview.network import PedigreeNetwork
from tests.drawing.random_books import add_cross, books


def view_of(book: Book, **look):
    return choose(PedigreeNetwork.from_records(book), Look(**look))


def tags(view):
    return {block.code for block in view.blocks if block.sort == "tag"}


def family(count: int, **own) -> Book:
    book = Book()
    for code in ("A", "B"):
        book.add(Plant(plant=code))
    add_cross(book, "x", "A", "B")
    for number in range(count):
        book.add(Plant(plant=f"P{number}", cross="x", **own))
    return book


def test_three_sibs_stand_singly_and_four_are_a_pack():
    assert tags(view_of(family(3), focus="A")) == {"A", "B", "P0", "P1", "P2"}
    view = view_of(family(4), focus="A")
    (pack,) = (block for block in view.blocks if block.sort == "pack")
    assert pack.codes == ("P0", "P1", "P2", "P3")
    assert pack.title == "4 sibs"
    assert tags(view) == {"A", "B"}


def test_kept_pinned_and_focused_sibs_stand_out_of_the_pack():
    book = family(9)
    book.plants["P1"].status = "kept"
    view = view_of(book, focus="P2", pins=("P3",))
    assert {"P1", "P2", "P3"} <= tags(view)
    (pack,) = (block for block in view.blocks if block.sort == "pack")
    assert len(pack.codes) == 6


def test_pack_unfolds_and_says_how_to_fold_again():
    view = view_of(family(5), focus="A", unfolded=frozenset({"pack:cross:x"}))
    assert tags(view) == {"A", "B", "P0", "P1", "P2", "P3", "P4"}
    assert {block.fold for block in view.blocks if block.code.startswith("P")} == {"pack:cross:x"}


def chain(length: int) -> Book:
    book = Book()
    book.add(Plant(plant="S0"))
    for number in range(length):
        add_cross(book, f"S{number} ⊗", f"S{number}", f"S{number}")
        book.add(Plant(plant=f"S{number + 1}", cross=f"S{number} ⊗"))
    return book


def test_chain_of_selfings_is_one_tag():
    view = view_of(chain(5))
    (folded,) = (block for block in view.blocks if block.sort == "chain")
    assert folded.codes == ("S1", "S2", "S3", "S4", "S5")
    assert folded.selfings == 5
    assert folded.title == "S5"
    assert sum(block.sort == "knot" for block in view.blocks) == 1
    opened = view_of(chain(5), unfolded=frozenset({folded.key}))
    assert tags(opened) == {f"S{number}" for number in range(6)}


def test_chain_counts_as_one_generation_above_the_focus():
    book = chain(6)
    add_cross(book, "y", "S6", "S6")
    for number in range(2):
        book.add(Plant(plant=f"T{number}", cross="y"))
    assert "S0" in view_of(book, focus="T0", up=2).shown()


def test_both_parents_of_all_progeny_are_shown():
    book = family(2)
    book.add(Plant(plant="M"))
    add_cross(book, "y", "M", "P0")
    book.add(Plant(plant="C", cross="y"))
    assert {"M", "P0", "C"} <= view_of(book, focus="A").shown()


def test_depth_is_kept_and_more_is_said():
    book = family(1)
    for number, parent in enumerate(("P0", "Q0", "Q1")):
        book.add(Plant(plant=f"M{number}"))
        add_cross(book, f"y{number}", parent, f"M{number}")
        book.add(Plant(plant=f"Q{number}", cross=f"y{number}"))
    view = view_of(book, focus="Q1", up=1, down=1)
    assert view.shown() == {"Q0", "M1", "Q1", "M2", "Q2"}
    by_code = {block.code: block for block in view.blocks}
    assert by_code["Q0"].more_up == 2
    assert by_code["Q2"].more_down == 0
    more = view_of(book, focus="Q1", up=1, down=1, unfolded=frozenset({"up:Q0"}))
    assert {"P0", "M0"} <= more.shown()


def test_finding_of_one_plant_has_a_knot_of_its_own():
    book = family(3)
    book.parent_findings.append(ParentFinding("P1", pollen_parent="self"))
    view = view_of(book, focus="A")
    signs = sorted(knot.sign for block in view.blocks for knot in block.knots)
    assert signs == ["cross", "selfing"]


def test_candidates_keep_their_odds_and_the_rest_is_unknown():
    book = family(1)
    add_cross(book, "u", "A", "")
    book.crosses["u"].intended = "cross"
    book.pollen_candidates += [PollenCandidate("u", "B", 0.5), PollenCandidate("u", "self", 0.2)]
    book.add(Plant(plant="U", cross="u"))
    view = view_of(book, focus="U")
    (knot,) = (k for block in view.blocks for k in block.knots if k.cross == "u")
    assert dict(knot.pollen) == pytest.approx({"B": 0.5, "A": 0.2, "": 0.3})
    lines = [link for link in view.links if link.role == "pollen" and link.knot == knot.key]
    assert [link.sure for link in lines] == [False, False]


def test_words_for_a_screen_reader():
    book = family(1)
    add_cross(book, "s", "P0", "P0")
    book.add(Plant(plant="P-12", cross="s", status="kept"))
    view = view_of(book, focus="P-12")
    (tag,) = (block for block in view.blocks if block.code == "P-12")
    assert tag.words == "P-12, F2, from P0 selfed, kept, F one half"


def wide_book() -> Book:
    """More kept progeny than any picture may hold."""
    book = family(0)
    for number in range(400):
        book.add(Plant(plant=f"P{number}", cross="x", status="kept"))
    return book


def test_cap_holds_and_says_what_is_hidden():
    view = view_of(wide_book(), focus="A")
    assert len(view.blocks) <= CAP
    assert len(view.hidden) + len(view.shown()) == 402
    assert view.hidden_words() == (
        f"{len(view.hidden)} more plants are left out; the nearest is {view.hidden[0]}."
    )
    assert "A" in view.shown()


def test_large_families_are_packed_although_their_plants_have_progeny():
    book = family(30)
    for number in range(30):
        add_cross(book, f"s{number}", f"P{number}", f"P{number}")
        for sib in range(12):
            book.add(Plant(plant=f"Q{number}-{sib}", cross=f"s{number}"))
    view = view_of(book, focus="A")
    (pack,) = (block for block in view.blocks if block.sort == "pack")
    assert len(pack.codes) == 30
    assert pack.more_down == 360
    assert len(view.hidden) == 360


def test_a_family_too_large_to_try_at_once_is_packed_as_well():
    book = family(1500)
    for number in range(1500):
        add_cross(book, f"s{number}", f"P{number}", f"P{number}")
        book.add(Plant(plant=f"Q{number}", cross=f"s{number}"))
    view = view_of(book, focus="A")
    (pack,) = (block for block in view.blocks if block.sort == "pack")
    assert len(pack.codes) == pack.more_down == len(view.hidden) == 1500


@given(books(), st.data())
@settings(max_examples=60, deadline=None)
def test_keeping_a_crowd_apart_while_trying_changes_nothing_that_fits(book, data):
    for cross in list(book.crosses):
        for number in range(data.draw(st.sampled_from((0, 3, 9)))):
            book.add(Plant(plant=f"{cross} more {number}", cross=cross))
    net = PedigreeNetwork.from_records(book)
    if not net.codes:
        return
    look = Look(
        focus=data.draw(st.sampled_from(net.codes)), up=3, down=3, cap=data.draw(st.integers(9, 60))
    )
    plain = choose(net, look)
    with pytest.MonkeyPatch.context() as patch:
        patch.setattr("pedigreeview.drawing.near.CROWD", SINGLES + 1)
        tried = choose(net, look)
    assert len(tried.blocks) <= look.cap or len(tried.blocks) <= len(plain.blocks)
    assert {*tried.shown(), *tried.hidden} == {*plain.shown(), *plain.hidden}
    if not plain.hidden:
        assert tried == plain


def test_focus_that_is_no_plant_is_a_fault():
    with pytest.raises(Fault, match="'nobody' is not a plant of this book"):
        view_of(family(1), focus="nobody")


@settings(max_examples=60, deadline=None)
@given(books(), st.data())
def test_any_look_shows_its_focus_and_tells_the_truth(book, data):
    net = PedigreeNetwork.from_records(book)
    focus = data.draw(st.sampled_from(net.codes))
    look = Look(focus, data.draw(st.integers(0, 3)), data.draw(st.integers(0, 3)), cap=20)
    view = choose(net, look)
    assert len(view.blocks) <= 20 or len(view.shown()) <= 20
    assert focus in tags(view)
    keys = {block.key for block in view.blocks}
    assert len(keys) == len(view.blocks)
    knots = {knot.key: knot for block in view.blocks for knot in block.knots}
    for link in view.links:
        assert {link.above, link.below} <= keys
        if link.role == "progeny":
            below = next(block for block in view.blocks if block.key == link.below)
            knot = knots[link.knot]
            parents = set(net.parent_codes(below.codes[0]))
            assert {knot.seed, *(code for code, _ in knot.pollen)} - {""} == parents


def finding_book() -> Book:
    book = Book()
    for code in ("A", "B"):
        book.add(Plant(plant=code, kind="variety"))
    book.add(Plant(plant="L", kind="plant"))
    add_cross(book, "1", "A", "B")
    for number in range(3):
        book.add(Plant(plant=f"1-{number}", cross="1"))
    add_cross(book, "2", "1-1", "L")
    book.add(Plant(plant="2-0", cross="2"))
    book.parent_findings.append(ParentFinding(plant="1-0", pollen_parent="self"))
    book.parent_findings.append(ParentFinding(plant="1-2", pollen_parent="B"))
    return book


def test_finding_against_the_cross_has_a_knot_that_says_so():
    view = choose(PedigreeNetwork.from_records(finding_book()), Look())
    knots = {knot.key: knot for block in view.blocks for knot in block.knots}
    labels = {key: knot.label for key, knot in knots.items() if knot.cross == "1"}
    assert labels == {"cross:1": "1", "cross:1|A:1": "1, found selfed"}
    found = knots["cross:1|A:1"]
    assert found.found
    assert found.words == "A selfed: so found, whatever cross 1 was meant to be"
    born = {link.below: link.knot for link in view.links if link.role == "progeny"}
    assert born["plant:1-2"] == "cross:1"


def test_founder_in_a_later_band_says_that_it_is_one():
    view = choose(PedigreeNetwork.from_records(finding_book()), Look())
    lines = {block.code: (block.row, block.subtitle) for block in view.blocks if block.code}
    assert lines["L"] == (1, "founder")
    assert lines["A"] == (0, "founder")
    assert view.rows[0].label == "Founders"


def test_sister_families_that_are_each_one_pack_are_one_pack_in_the_whole_book():
    book = Book()
    book.add(Plant(plant="A"))
    add_cross(book, "1", "A", "A")
    for number in range(5):
        book.add(Plant(plant=f"1-{number}", cross="1"))
        add_cross(book, f"s{number}", f"1-{number}", f"1-{number}")
        for child in range(6):
            book.add(Plant(plant=f"s{number}-{child}", cross=f"s{number}"))
    net = PedigreeNetwork.from_records(book)
    view = choose(net, Look())
    (pack,) = (block for block in view.blocks if block.sort == "pack")
    assert (pack.title, pack.subtitle) == ("5 plants", "selfed, 6 sibs each")
    assert len(pack.codes) == 35
    assert view.shown() == set(net.codes)
    opened = choose(net, Look(unfolded=frozenset({pack.key})))
    titles = [block.title for block in opened.blocks if block.sort == "pack"]
    assert titles == ["6 sibs"] * 5


def looped_book() -> Book:
    """A and B made x-0; y-0 and z-0 are each other's parents; z-1 has no further relative."""
    book = Book()
    for code in ("A", "B"):
        book.add(Plant(plant=code, kind="variety"))
    add_cross(book, "x", "A", "B")
    book.add(Plant(plant="x-0", cross="x"))
    add_cross(book, "y", "x-0", "z-0")
    book.add(Plant(plant="y-0", cross="y"))
    add_cross(book, "z", "y-0", "A")
    for number in range(2):
        book.add(Plant(plant=f"z-{number}", cross="z"))
    return book


def rows_are_true(net: PedigreeNetwork, view) -> None:
    for block in view.blocks:
        if not block.codes:
            continue
        row = view.rows[block.row]
        known = [code for code in block.codes if net.parent_codes(code)]
        if row.label == FOUNDERS:
            assert not known, (block.key, row)
        if known:
            said = {-1 if (one := net.generation(code)) is None else one for code in block.codes}
            assert row.generation in said, (block.key, row)


@settings(max_examples=60, deadline=None)
@given(books(), st.data())
def test_a_row_says_the_generation_that_the_network_does(book, data):
    net = PedigreeNetwork.from_records(book)
    pins = tuple(data.draw(st.lists(st.sampled_from(net.codes), max_size=3, unique=True)))
    focus = data.draw(st.sampled_from([None, *net.codes]))
    depths = data.draw(st.integers(0, 2)), data.draw(st.integers(0, 2))
    rows_are_true(net, choose(net, Look(focus, *depths, pins=pins)))


@pytest.mark.parametrize("focus", [None, "A", "x-0", "y-0", "z-0"])
def test_plants_in_a_loop_stand_in_no_generation(focus):
    net = PedigreeNetwork.from_records(looped_book())
    view = choose(net, Look(focus, 1, 1))
    rows_are_true(net, view)
    said = {view.rows[block.row].label for block in view.blocks if {"y-0", "z-0"} & {*block.codes}}
    assert said == {IN_LOOPS}


def test_a_pinned_plant_without_relatives_stands_in_its_own_generation():
    book = looped_book()
    add_cross(book, "f2", "x-0", "x-0")
    book.add(Plant(plant="f2-0", cross="f2"))
    net = PedigreeNetwork.from_records(book)
    view = choose(net, Look("A", 0, 0, pins=("f2-0", "z-1")))
    rows = {block.code: view.rows[block.row] for block in view.blocks if block.code}
    assert rows == {"A": Row(0, FOUNDERS), "f2-0": Row(2, "F2"), "z-1": Row(-1, PINNED_APART)}
