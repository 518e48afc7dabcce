"""Mends that make their problem go away, and 'this is right' that is remembered."""

from __future__ import annotations

import datetime

import pytest

from pedigreeview.book.book import Book
from pedigreeview.book.checks import KINDS, check_records
from pedigreeview.book.edits import Edit
from pedigreeview.book.mends import accept, accepted, mends, take_back
from pedigreeview.book.problems import Problem
from pedigreeview.book.records import (
    AcceptedCheck,
    Bloom,
    Cross,
    Harvest,
    Note,
    Packet,
    Plant,
    PollenLot,
    Pollination,
    Score,
    Sowing,
    Trait,
)
from pedigreeview.network import PedigreeNetwork

DAY = datetime.date(2024, 6, 10)


def book_of(*records, crop=""):
    book = Book()
    book.settings.crop = crop
    for record in (
        Plant("A", kind="plant", sown="2024-03"), Plant("B", kind="plant", sown="2024-03"),
        Cross("X", "A", "B", intended="cross"), *records,
    ):  # fmt: skip
        book.add(record)
    return book


def named(book, kind):
    return [p for p in check_records(book) if p.kind == kind]


MENDABLE = {
    "near_duplicate_code": [Plant("C"), Cross("Y", "C", "A"), Plant("c", name="See")],
    "near_duplicate_key": [
        Trait("Height", "measure"), Trait("height", "measure"), Score("A", "height", value="5"),
    ],
    "near_duplicate_name": [Plant("C", "Tall"), Plant("D", "tall "), Cross("Y", "C", "D")],
    "unknown_written_as_code": [Plant("?"), Cross("Y", "A", "?")],
    "bad_date_order": [
        Pollination("1", "X", date="2024-06-01", emasculated_on="2024-06-02"),
    ],
    "not_in_flower": [
        Pollination("1", "X", date="2024-08-01"), Bloom("A", "2024-06-01", "2024-06-20"),
    ],
    "crop_differs": [Plant("C", crop="pea"), Plant("D", crop="bean"), Cross("Y", "C", "D")],
    "culled_before_use": [
        Plant("C", kind="plant", status="culled"), Cross("Y", "C", "A", state="planned"),
    ],
    "used_after_culling": [
        Plant("C", kind="plant", status="culled"), Cross("Y", "C", "A", made_on="2024-07-01"),
        Note("plant C", "2024-06-01", "Status: culled. Mildew."),
    ],
    "same_plant_twice": [
        Plant("C", kind="plant", raised="cutting_of", source="A"), Cross("Y", "A", "C"),
    ],
    "pollen_of_other_plant": [
        Plant("C", kind="plant"), Cross("Y", "C", "A"), PollenLot("L", "C"),
        Pollination("1", "X", pollen_lot="L"),
    ],
    "more_fruits_than_flowers": [Pollination("1", "X", flowers=3, set=4)],
    "more_up_than_sown": [Sowing("S", sown_from="X", seeds=3, up=5, kept=4)],
    "more_left_than_seeds": [Packet("K", seeds=3, left=9)],
    "more_sown_than_held": [Packet("K", seeds=3, left=0), Sowing("S", "K", seeds=5)],
}  # fmt: skip


@pytest.mark.parametrize("kind", MENDABLE)
def test_every_mend_that_is_offered_mends(kind):
    import copy

    book = book_of(*copy.deepcopy(MENDABLE[kind]), crop="")
    (problem,) = named(book, kind)
    assert problem.kind in KINDS
    offered = mends(book, problem, today=DAY)
    assert offered
    for mend in offered:
        assert mend.words.endswith(".")
        edit = Edit(book, mend.words)
        mend.make(edit)
        assert problem not in check_records(edit.book), mend.words
        assert not [p for p in check_records(edit.book) if p.severity == "error"], mend.words
    assert named(book, kind) == [problem]


def test_a_harvest_and_a_sowing_written_a_year_too_early():
    book = book_of(
        Pollination("1", "X", date="2024-06-01"), Harvest("H", "X", date="2023-08-01"),
        Packet("K", "H"), Sowing("S", "K", date="2023-03-01"),
    )  # fmt: skip
    words = [mend.words for p in named(book, "bad_date_order") for mend in mends(book, p)]
    assert words == [
        "Date the harvest H a year on, 2024-08-01.",
        "Date the sowing S a year on, 2024-03-01.",
    ]


def test_an_annual_sown_a_year_later_than_written():
    book = book_of(Plant("C", kind="plant", sown="2022-04-01", crop="pea"),
                   Cross("Y", "C", "", intended="open", made_on="2024-07-01"))  # fmt: skip
    (problem,) = named(book, "used_after_life")
    (mend,) = mends(book, problem)
    edit = Edit(book, "mend")
    mend.make(edit)
    assert edit.book.plants["C"].sown == "2024-04-01"
    assert named(edit.book, "used_after_life") == []


def test_the_network_s_problems_can_be_mended_too():
    book = book_of(Plant("C", kind="plant", raised="cross", cross="X", ploidy=4))
    (problem,) = [
        p for p in PedigreeNetwork.from_records(book).problems() if p.kind == "ploidy_differs"
    ]
    (mend,) = mends(book, problem)
    edit = Edit(book, "mend")
    mend.make(edit)
    found = PedigreeNetwork.from_records(edit.book).problems()
    assert "ploidy_differs" not in [p.kind for p in found]


@pytest.mark.parametrize("kind", ["own_ancestor", "unlinked_plant", "tag_used_twice"])
def test_where_only_the_person_can_know_nothing_is_offered(kind):
    assert mends(book_of(), Problem(kind, "error", ("A", "B"), "x", "y")) == ()


# The new checks and their near misses -----------------------------------------------------------


@pytest.mark.parametrize(
    ("kind", "records"),
    [
        ("not_in_flower", [Pollination("1", "X", date="2024-06"), Bloom("A", "2024-06-20", "")]),
        ("not_in_flower", [Pollination("1", "X", date="2024-05-28"), Bloom("A", "2024-06-01", "")]),
        ("not_in_flower", [Pollination("1", "X", date="2024-06-25"),
                           Bloom("A", "2024-06-01", "2024-06-20")]),
        ("not_in_flower", [Pollination("1", "X", date="2024-08-01"),
                           Bloom("A", "2023-06-01", "2023-06-20")]),
        ("not_in_flower", [Pollination("1", "X", date="2024-08-01"),
                           Bloom("B", "2024-06-01", "2024-06-20")]),
        ("used_after_culling", [Note("plant A", "2024-06-01", "Status: culled.")]),
        ("same_plant_twice", [Cross("Y", "A", "A", intended="selfing")]),
        ("same_plant_twice", [Cross("Y", "A", "A")]),
        ("near_duplicate_key", [Packet("K1"), Packet("K2")]),
        ("near_duplicate_name", [Plant("C", "Tall", "plant"),
                                 Plant("D", "Tall", "plant", "cutting_of", source="C")]),
        ("tag_used_twice", [Pollination("1", "X", date="2024", tag="7"),
                            Pollination("2", "X", date="2024", tag="7")]),
        ("more_sown_than_held", [Packet("K", seeds=5), Sowing("S", "K", seeds=5)]),
    ],
)  # fmt: skip
def test_near_misses_of_the_checks(kind, records):
    assert named(book_of(*records), kind) == []


def test_a_tag_on_two_crosses_of_a_year():
    book = book_of(
        Cross("Y", "B", "A"),
        Pollination("1", "X", date="2024-06", tag="T 7"),
        Pollination("2", "Y", date="2024-07", tag="t7"),
        Pollination("3", "Y", date="2025-07", tag="T7"),
    )
    (problem,) = named(book, "tag_used_twice")
    assert problem.about == (("pollinations", "1"), ("pollinations", "2"))


# Accepting --------------------------------------------------------------------------------------


def test_this_is_right_is_remembered_for_that_problem_alone():
    book = book_of(Pollination("1", "X", flowers=3, set=4), Pollination("2", "X", flowers=1, set=2))
    first, second = named(book, "more_fruits_than_flowers")
    edit = Edit(book, "accept")
    row = accept(edit, first, "Two to a flower.", date="2024-06-10")
    assert (row.keys, row.why) == ("A; B; 1", "Two to a flower.")
    assert accepted(edit.book, first)
    assert not accepted(edit.book, second)
    assert named(edit.book, "more_fruits_than_flowers") == [second]
    accept(edit, first)
    assert len(edit.book.accepted_checks) == 1
    take_back(edit, edit.book.accepted_checks[0])
    assert named(edit.book, "more_fruits_than_flowers") == [first, second]


def test_problems_without_plants_are_accepted_one_by_one():
    book = book_of(Packet("K", seeds=3, left=9), Packet("L", seeds=3, left=9))
    first, second = named(book, "more_left_than_seeds")
    edit = Edit(book, "accept")
    accept(edit, first)
    assert named(edit.book, "more_left_than_seeds") == [second]


def test_keys_of_plants_alone_accept_all_of_the_kind_about_them():
    book = book_of(Pollination("1", "X", flowers=3, set=4))
    book.add(AcceptedCheck("more_fruits_than_flowers", "B; A"))
    assert named(book, "more_fruits_than_flowers") == []
