"""Two books into one: recognised, compared, clashing codes renamed, nothing lost."""

from __future__ import annotations

from pathlib import Path

import pytest
from hypothesis import given, settings

from pedigreeview.book.book import Book
from pedigreeview.book.edits import Edit
from pedigreeview.book.faults import Fault, FileFaults
from pedigreeview.book.records import (
    TABLES,
    Cross,
    Harvest,
    Note,
    Packet,
    ParentFinding,
    Photo,
    Plant,
    PollenCandidate,
    Pollination,
    Record,
    Score,
    Trait,
)
from pedigreeview.exchange import data_package
from pedigreeview.exchange.merging import RenameRule, compare, merge, proposed_names
from pedigreeview.places import demo
from tests.network.random_books import books


def book_of(*records: Record) -> Book:
    book = Book()
    for record in records:
        book.add(record)
    return book


def mine() -> Book:
    return book_of(
        Plant("A", name="Ash"), Plant("B"), Plant("C"),
        Cross("1", "A", "B"), Plant("K", cross="1"),
        Pollination("p1", "1", "2024-05-01"), Trait("height", "measure"),
        Score("K", "height", value="3"), Note("plant K", "2024", "good"),
    )  # fmt: skip


def test_clashing_codes_are_renamed_everywhere() -> None:
    theirs = book_of(
        Plant("A"), Plant("C"), Plant("D"),
        Cross("1", "C", "A"), Plant("K", cross="1"), Plant("L", raised="cutting_of", source="K"),
        Pollination("p1", "1", "2024-05-01"), PollenCandidate("9", "K", 0.5), Cross("9", "L"),
        Harvest("h", "1", packet="pk"), Packet("pk", "h", borne_on="K"),
        Note("plant K", "2024", "theirs"), Trait("height", "measure"),
        Score("K", "height", value="9"), ParentFinding("K", "A"),
    )  # fmt: skip
    rule = RenameRule("Ann-", "")
    names = proposed_names(mine(), theirs, rule)
    assert names == {
        ("plants", "K"): "Ann-K", ("crosses", "1"): "Ann-1", ("pollinations", "p1"): "Ann-p1",
    }  # fmt: skip
    book, comparison = merge(mine(), theirs, rule)
    assert comparison.differences == []
    assert book.plants["K"].cross == "1"
    assert book.plants["Ann-K"].cross == "Ann-1"
    assert book.plants["L"].source == "Ann-K"
    assert book.pollen_candidates[0].candidate == "Ann-K"
    assert book.harvests["h"].packet == "pk"
    assert book.packets["pk"].borne_on == "Ann-K"
    assert [note.about for note in book.notes] == ["plant K", "plant Ann-K"]
    assert [(s.plant, s.value) for s in book.scores] == [("K", "3"), ("Ann-K", "9")]
    assert book.parent_findings[0].plant == "Ann-K"
    assert set(theirs.plants) == {"A", "C", "D", "K", "L"}
    with pytest.raises(Fault, match="':' or ';'"):
        proposed_names(mine(), theirs, RenameRule("x:", ""))


def test_a_name_that_is_taken_is_not_given() -> None:
    assert RenameRule().name("K", {"K", "K (2)"}) == "K (2)-2"


def test_the_same_plant_is_recognised_and_its_cross_does_not_come_twice() -> None:
    theirs = book_of(
        Plant("A", name="Ash tree"), Plant("B", note="new"), Cross("X", "A", "B"),
        Plant("K", cross="X"), Plant("C", raised="cutting_of", source="B"), Plant("N"),
        Cross("Y", "A", "N", direction_known=False),
    )  # fmt: skip
    theirs.plants["B"].kind = "plant"
    comparison = compare(mine(), theirs)
    found = {(d.key, d.field): (d.mine, d.theirs, d.usual) for d in comparison.differences}
    assert found == {
        ("A", "name"): ("Ash", "Ash tree", "mine"),
        ("B", "note"): ("", "new", "theirs"),
        ("B", "kind"): ("", "plant", "theirs"),
        ("C", "parents"): ("", "cutting of B", "theirs"),
    }
    edit = Edit(mine(), "Merge")
    comparison.apply(edit)
    assert "X" not in edit.book.crosses
    assert not edit.book.crosses["Y"].direction_known
    assert edit.book.plants["C"].source == "B"
    assert edit.book.plants["A"].name == "Ash"


def test_a_direction_that_one_of_them_knows_is_filled_in() -> None:
    unsure = book_of(Plant("A"), Plant("B"), Cross("1", "B", "A", direction_known=False))
    book, comparison = merge(unsure, mine(), choose="theirs")
    assert comparison.names == {}
    assert (book.crosses["1"].seed_parent, book.crosses["1"].direction_known) == ("A", True)
    other, again = merge(mine(), unsure)
    assert again.differences == []
    assert other.crosses["1"].seed_parent == "A"


def test_what_breaks_a_rule_is_refused() -> None:
    one = book_of(
        Plant("A"), Cross("1", "A", intended="open"), Plant("K", cross="1"),
        ParentFinding("K", "A", 0.7, date="2024"),
    )  # fmt: skip
    two = book_of(
        Plant("A"), Cross("1", "A", intended="open"), Plant("K", cross="1"),
        ParentFinding("K", "self", 0.8, date="2024"),
    )  # fmt: skip
    with pytest.raises(FileFaults, match="1 fault"):
        merge(one, two)


def test_photos_go_along() -> None:
    theirs = book_of(Plant("A"), Photo("a.jpg", "A"))
    edit = Edit(mine(), "Merge")
    compare(mine(), theirs).apply(edit, photo=lambda name: b"picture")
    assert list(edit.contents.values()) == [b"picture"]
    assert "photos/a.jpg" in edit.book.files


@pytest.mark.parametrize("name", ["two_peas_both_ways", "a_leaf_for_hollin_plate"])
def test_a_book_merged_with_itself_and_with_nothing_is_itself(name: str) -> None:
    book = data_package.read(Path(demo(name)))
    same, comparison = merge(book, book)
    assert comparison.new == []
    assert comparison.differences == []
    whole, _ = merge(Book(settings=book.settings), book)
    for table in TABLES:
        assert getattr(same, table) == getattr(book, table)
        assert getattr(whole, table) == getattr(book, table)


@settings(max_examples=30)
@given(books(most=10), books(most=10))
def test_any_two_books_make_one(one: Book, two: Book) -> None:
    two.settings = one.settings
    try:
        book, comparison = merge(one, two, RenameRule("", "'"))
    except FileFaults:
        return
    assert set(one.plants) <= set(book.plants)
    again = {comparison.names.get(("plants", code), code) for code in two.plants}
    assert again <= set(book.plants)
    for code, plant in one.plants.items():
        if plant.cross:
            assert book.plants[code].cross == plant.cross
