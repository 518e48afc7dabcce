"""Codes that a person would read as one."""

from __future__ import annotations

import pytest

from pedigreeview.book.book import Book
from pedigreeview.book.checks import check_records
from pedigreeview.book.look_alikes import near_duplicate_code
from pedigreeview.book.problems import Problem
from pedigreeview.book.records import Plant


def near(*codes: str) -> list[Problem]:
    book = Book()
    for code in codes:
        # With a name, so that nothing is a bare parent.
        book.add(Plant(code, name="n"))
    return list(near_duplicate_code(book))


@pytest.mark.parametrize(
    ("code", "sign"),
    [
        ("K1\u200b7", "U+200B"),
        ("K1\u200d7", "U+200D"),
        ("\ufeffK17", "U+FEFF"),
        ("K17\ufe0f", "U+FE0F"),
        ("K\u00ad17", "U+00AD"),
        ("\u041a17", "U+041A"),
        ("\u043a17", "U+043A"),
        ("\u039a17", "U+039A"),
    ],
)
def test_signs_that_are_not_seen_and_letters_of_another_script(code: str, sign: str) -> None:
    (problem,) = near("K17", code)
    assert problem.plants == ("K17", code)
    assert sign in problem.message


@pytest.mark.parametrize("latin", "ABCEHIJKMOPSTXY")
def test_every_capital_that_cyrillic_shares(latin: str) -> None:
    cyrillic = dict(zip("ABCEHIJKMOPSTXY", "АВСЕНІЈКМОРЅТХУ", strict=True))[latin]
    assert cyrillic != latin
    assert near(f"{latin}-1", f"{cyrillic}-1")


def test_quotes_and_case() -> None:
    assert near("O'Neil", "O\u2019Neil")
    (problem,) = near("TP", "tp ")
    assert problem.message == "The codes 'TP' and 'tp ' differ only by case, blanks or dashes."
    # Cyrillic codes that differ by case, though their small letters look like no Latin one.
    assert near("В1", "в1")


def test_codes_that_only_share_letters() -> None:
    assert not near("K17", "K18", "Ж17", "Д17", "é17", "e17")
    assert not near("А1", "Б1", "В1")


def test_one_problem_for_all_that_look_the_same() -> None:
    book = Book()
    for code in ("A1", "a1", "\u0410" + "1"):
        book.add(Plant(code))
    kinds = [problem.kind for problem in check_records(book)]
    assert kinds.count("near_duplicate_code") == 2
