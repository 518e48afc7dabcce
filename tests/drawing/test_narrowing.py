"""A row that would run far beyond a window folds its small families; nothing hangs in the air."""

from __future__ import annotations

from collections import Counter
from functools import partial

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from pedigreeview.book.book import Book
from pedigreeview.book.records import Plant
from pedigreeview.drawing import folding
from pedigreeview.drawing.narrowing import MOST, narrow
from pedigreeview.drawing.view import Look, View, choose
from pedigreeview.network import PedigreeNetwork
from tests.drawing.random_books import add_cross, books


def many_families(count: int, statuses: tuple[str, ...]) -> PedigreeNetwork:
    """A with that many mates, each with one plant of each status."""
    book = Book()
    book.add(Plant(plant="A"))
    for mate in range(count):
        book.add(Plant(plant=f"M{mate:02}"))
        add_cross(book, f"x{mate:02}", "A", f"M{mate:02}")
        for number, status in enumerate(statuses):
            book.add(Plant(plant=f"P{mate:02}-{number}", cross=f"x{mate:02}", status=status))
    return PedigreeNetwork.from_records(book)


def progeny_row(view: View) -> list[tuple[str, ...]]:
    """The plants of each block of the row of progeny."""
    return [b.codes for b in view.blocks if b.codes and b.codes[0].startswith("P")]


def packs(view: View) -> dict[str, tuple[str, ...]]:
    return {block.key: block.codes for block in view.blocks if block.sort == "pack"}


def test_a_row_that_fits_keeps_every_plant_apart() -> None:
    view = choose(many_families(MOST // 2, ("", "culled")), Look("A"))
    assert len(progeny_row(view)) == MOST
    assert not packs(view)


def test_a_wide_row_folds_only_as_many_families_as_it_must() -> None:
    view = choose(many_families(MOST // 2 + 2, ("", "growing")), Look("A"))
    assert len(progeny_row(view)) == MOST
    assert len(packs(view)) == 4
    assert {block.title for block in view.blocks if block.sort == "pack"} == {"2 sibs"}
    assert not view.hidden


def test_culled_and_lost_plants_fold_first() -> None:
    view = choose(many_families(8, ("", "culled", "lost")), Look("A"))
    assert len(progeny_row(view)) == MOST
    assert packs(view)
    for codes in packs(view).values():
        assert [code[-1] for code in codes] == ["1", "2"]
    assert {block.title for block in view.blocks if block.sort == "pack"} == {"2 more sibs"}


def test_kept_and_pinned_plants_stay_apart() -> None:
    view = choose(many_families(15, ("kept", "culled", "", "")), Look("A", pins=("P03-1",)))
    row = progeny_row(view)
    assert {(f"P{mate:02}-0",) for mate in range(15)} | {("P03-1",)} <= set(row)
    assert len(packs(view)) == 15


def test_a_pack_opens_by_its_key_and_nothing_else_folds_because_of_it() -> None:
    net = many_families(14, ("", "growing"))
    folded = choose(net, Look("A"))
    held = packs(folded)
    key, codes = next(iter(held.items()))
    opened = choose(net, Look("A", unfolded=frozenset({key})))
    assert packs(opened) == {other: held[other] for other in held if other != key}
    tags = {block.code: block.fold for block in opened.blocks if block.sort == "tag"}
    assert {code: tags[code] for code in codes} == dict.fromkeys(codes, key)


@settings(
    max_examples=40, deadline=None, suppress_health_check=[HealthCheck.function_scoped_fixture]
)
@given(books(most=20), st.integers(1, 5), st.data())
def test_every_plant_stays_in_one_block(
    monkeypatch: pytest.MonkeyPatch, book: Book, most: int, data: st.DataObject
) -> None:
    net = PedigreeNetwork.from_records(book)
    look = Look(data.draw(st.sampled_from(net.codes)), pins=(net.codes[-1],))
    usual = choose(net, look)
    with monkeypatch.context() as patch:
        patch.setattr(folding, "narrow", partial(narrow, most=most))
        tight = choose(net, look)
    assert tight.shown() == usual.shown()
    assert len(tight.blocks) <= len(usual.blocks)
    held = Counter(code for block in tight.blocks for code in block.codes)
    assert set(held.values()) == {1}
    keys = [block.key for block in tight.blocks]
    assert len(keys) == len(set(keys))
    folded = {code for codes in packs(tight).values() for code in codes}
    fast = {look.focus, *look.pins} | {c for c in net.codes if net.book.plants[c].status == "kept"}
    assert not folded & fast


def hangs_together(view: View) -> bool:
    """Whether lines lead from the first block to every other one."""
    beside: dict[str, set[str]] = {block.key: set() for block in view.blocks}
    for link in view.links:
        beside[link.above].add(link.below)
        beside[link.below].add(link.above)
    reached, ahead = set(), [view.blocks[0].key]
    while ahead:
        key = ahead.pop()
        if key not in reached:
            reached.add(key)
            ahead += beside[key]
    return len(reached) == len(view.blocks)


def test_kept_plants_far_below_never_hang_in_the_air() -> None:
    """In a crowded picture their parents fold away; then they go with them, and that is said."""
    book = Book()
    for code in ("A", "B"):
        book.add(Plant(plant=code))
    add_cross(book, "x", "A", "B")
    for number in range(30):
        book.add(Plant(plant=f"P{number}", cross="x"))
        add_cross(book, f"s{number}", f"P{number}", f"P{number}")
        for sib in range(4):
            book.add(Plant(plant=f"Q{number}-{sib}", cross=f"s{number}"))
        add_cross(book, f"t{number}", f"Q{number}-0", f"Q{number}-0")
        book.add(Plant(plant=f"R{number}", cross=f"t{number}", status="kept"))
    view = choose(PedigreeNetwork.from_records(book), Look("A", down=3))
    assert hangs_together(view)
    assert "30 sibs" in {block.title for block in view.blocks}
    assert {f"R{number}" for number in range(30)} <= set(view.hidden)
    # A kept plant whose parent shows keeps its line to the focus.
    book.plants["Q3-2"].status = "kept"
    view = choose(PedigreeNetwork.from_records(book), Look("A", down=3))
    assert hangs_together(view)
    assert "Q3-2" in view.shown()


def test_the_farthest_generation_is_left_out_first() -> None:
    """Twelve plants with a family each and that with another: 90 blocks; without the last, 41."""
    book = Book()
    for code in ("A", "B"):
        book.add(Plant(plant=code))
    add_cross(book, "x", "A", "B")
    for number in range(12):
        book.add(Plant(plant=f"P{number}", cross="x"))
        add_cross(book, f"s{number}", f"P{number}", f"P{number}")
        for sib in range(6):
            book.add(Plant(plant=f"Q{number}-{sib}", cross=f"s{number}"))
        add_cross(book, f"t{number}", f"Q{number}-0", f"Q{number}-0")
        for sib in range(2):
            book.add(Plant(plant=f"R{number}-{sib}", cross=f"t{number}"))
    view = choose(PedigreeNetwork.from_records(book), Look("A", down=3))
    titles = {block.title for block in view.blocks}
    assert {f"P{number}" for number in range(12)} | {"6 sibs"} <= titles
    assert {code[0] for code in view.hidden} == {"R"}
    assert len(view.hidden) == 24
    assert hangs_together(view)
    nearer = choose(PedigreeNetwork.from_records(book), Look("A", down=2))
    assert {block.key for block in nearer.blocks} == {block.key for block in view.blocks}
