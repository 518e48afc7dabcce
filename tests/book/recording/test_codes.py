"""Codes: proposed by the pattern, never taken twice, refused where they may not stand."""

from __future__ import annotations

import datetime

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from pedigreeview.book.book import Book, BookSettings
from pedigreeview.book.edits import Edit
from pedigreeview.book.faults import Fault
from pedigreeview.book.look_alikes import near_duplicate_code, sight
from pedigreeview.book.recording.code_patterns import (
    CODE_KINDS,
    code_patterns,
    preview,
    read_pattern,
    read_patterns,
    setting_text,
)
from pedigreeview.book.recording.codes import (
    UsedCodes,
    code_fault,
    next_key,
    propose_cross,
    propose_plants,
)
from pedigreeview.book.recording.deleting import delete
from pedigreeview.book.records import Cross, Packet, Plant

DAY = datetime.date(2024, 5, 1)


def book_of(*records, pattern=""):
    book = Book(settings=BookSettings(code_pattern=pattern))
    for record in records:
        book.add(record)
    return book


def test_the_usual_codes_follow_each_other():
    book = book_of(Plant("A"), Plant("B"), Cross("24-07", "A", "B"))
    assert propose_cross(book, DAY, "A", "B") == "24-08"
    assert propose_cross(book, datetime.date(2025, 1, 1), "A", "B") == "25-01"
    assert propose_plants(book, "24-07", 3, DAY) == ["24-07-01", "24-07-02", "24-07-03"]


def test_a_selfing_gives_selections_by_dashes():
    book = book_of(Plant("19-4"), Plant("19-4-2"), Cross("19-4 ⊗", "19-4", "19-4", "", "selfing"))
    assert propose_plants(book, "19-4 ⊗", 2, DAY) == ["19-4-3", "19-4-4"]
    assert propose_cross(book, DAY, "19-4-2", "19-4-2", intended="selfing") == "19-4-2 ⊗"
    assert propose_cross(book, DAY, "19-4", "19-4", intended="selfing") == "19-4 ⊗ 2"
    assert propose_cross(book, DAY, "19-4", intended="open") == "19-4 ○"


def test_plants_and_crosses_share_one_stock_of_codes():
    book = book_of(Plant("24-01"), Plant("24 – 02"))
    assert propose_cross(book, DAY) == "24-03"


def test_culled_plants_keep_their_codes():
    book = book_of(Plant("A"), Cross("X", "A", "A"), Plant("A-9", status="culled"))
    assert propose_plants(book, "X", 1, DAY) == ["A-10"]


def test_the_code_of_a_deleted_plant_is_not_proposed_again():
    book = book_of(Plant("A"), Cross("X", "A", "A"), Plant("A-1", cross="X"))
    edit = Edit(book, "delete")
    delete(edit, edit.book.plants["A-1"])
    assert "A-1" not in edit.book.plants
    assert propose_plants(edit.book, "X", 1, DAY) == ["A-2"]
    with pytest.raises(Fault, match="taken"):
        code_fault(UsedCodes(edit.book), "a-1")


@pytest.mark.parametrize(
    ("code", "says"),
    [
        ("", "blank"),
        ("Self", "seed parent itself"),
        ("a:b", "Write it as 'a-b'"),
        ("a;b", "part lists"),
        ("a\u0007", "cannot be seen"),
        (" a", "blank before"),
        ("tp", "looks like 'TP'"),
        ("T P", "looks like 'TP'"),
        ("TP", "is taken"),
    ],
)
def test_codes_that_may_not_stand(code, says):
    with pytest.raises(Fault) as caught:
        code_fault(UsedCodes(book_of(Plant("TP"))), code)
    assert says in caught.value.sentence()


def test_a_code_may_keep_its_own_sight_when_it_is_renamed():
    used = UsedCodes(book_of(Plant("TP")))
    assert code_fault(used, "tp", own="TP") is None
    with pytest.raises(Fault):
        code_fault(used, "tp")


def test_a_pattern_of_ones_own():
    book = book_of(Plant("A"), Plant("B"), pattern="cross=X{cross:3}; plant={cross}/{plant}")
    assert propose_cross(book, DAY, "A", "B") == "X001"
    book.add(Cross("X001", "A", "B"))
    assert propose_cross(book, DAY, "A", "B") == "X002"
    assert propose_plants(book, "X001", 2, DAY) == ["X001/1", "X001/2"]


def test_a_pattern_without_a_number_gets_one_from_the_second_on():
    book = book_of(Plant("A"), Plant("B"), pattern="{seed} x {pollen}")
    assert propose_cross(book, DAY, "A", "B") == "A x B"
    book.add(Cross("A x B", "A", "B"))
    assert propose_cross(book, DAY, "A", "B") == "A x B 2"
    book.add(Cross("A x B 2", "A", "B"))
    assert propose_cross(book, DAY, "A", "B") == "A x B 3"


@pytest.mark.parametrize(
    ("kind", "text", "says"),
    [
        ("cross", "", "blank"),
        ("cross", "{yy}-{number}", "Choose from: {yy}, {yyyy}, {seed}, {pollen}, {cross}"),
        ("cross", "{yy:2}-{cross}", "no number"),
        ("cross", "{yy}-{cross:x}", "width"),
        ("cross", "{yy}-{cross:9}", "width"),
        ("cross", "{yy}-{cross", "brace"),
        ("cross", "a:{cross}", "part lists"),
        ("cross", "plain", "no running number"),
        ("cross", "{cross}{cross}", "twice"),
        ("plant", "{cross}-x", "no running number"),
        ("plant", "{cross}{plant}", "runs into"),
    ],
)
def test_patterns_that_cannot_be(kind, text, says):
    with pytest.raises(Fault) as caught:
        read_pattern(kind, text)
    assert says in caught.value.sentence()


def test_the_setting_is_read_back_and_a_broken_one_gives_way():
    text = setting_text({"cross": "{yyyy}.{cross}", "plant": "{cross}-{plant:2}"})
    assert text == "cross={yyyy}.{cross}"
    assert read_patterns(text)["cross"].text == "{yyyy}.{cross}"
    assert read_patterns("{yy}/{cross}")["cross"].text == "{yy}/{cross}"
    assert code_patterns(BookSettings(code_pattern="{what}"))["cross"].text == "{yy}-{cross:2}"
    with pytest.raises(Fault, match="no kind of code"):
        read_patterns("flower={yy}-{cross}")


def test_words_and_preview():
    patterns = read_patterns("")
    assert patterns["cross"].words() == (
        "the year in two digits, '-', a running number of at least 2 digits"
    )
    shown = preview(patterns, DAY)
    assert set(shown) == set(CODE_KINDS)
    assert (shown["cross"], shown["plant"], shown["selection"]) == (
        "24-01",
        "24-01-07",
        "24-01-07-3",
    )


def test_other_records_are_numbered_within_the_year():
    book = book_of(Packet("K24-9"), Packet("K23-40"))
    assert next_key(book, "packet", DAY) == "K24-10"
    assert next_key(book, "harvest", DAY) == "H24-1"


CODES = st.text(alphabet="Aa1 2-–X:;", min_size=1, max_size=6)


@settings(max_examples=60)
@given(st.lists(CODES, max_size=8), st.integers(1, 5), st.sampled_from(["", "{cross}", "X{cross}"]))
def test_proposed_codes_never_collide(held, count, pattern):
    book = book_of(*(Plant(code) for code in dict.fromkeys(held)), pattern=pattern)
    used = UsedCodes(book)
    proposed = [propose_cross(book, DAY, used=used) for _ in range(count)]
    taken = {sight(code) for code in held}
    assert len({sight(code) for code in proposed}) == count
    assert not taken & {sight(code) for code in proposed}
    for code in proposed:
        assert not set(code) & set(":;")
        book.add(Cross(code))
    new = set(proposed)
    for problem in near_duplicate_code(book):
        assert not new & set(problem.plants)
