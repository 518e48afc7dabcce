"""The marks that tell founders apart where no colour does: properties over random codes."""

from __future__ import annotations

from hypothesis import given, settings
from hypothesis import strategies as st
from PySide6.QtCore import QRectF
from PySide6.QtGui import QColor, QImage, QPainter

from pedigreeview.book.book import Book
from pedigreeview.book.records import Plant
from pedigreeview.drawing.founder_marks import MOST, founder_marks
from pedigreeview.drawing.legend import legend_entries
from pedigreeview.drawing.patterns import FOUNDER_PATTERNS, share
from pedigreeview.drawing.placing import place
from pedigreeview.drawing.theme import theme
from pedigreeview.drawing.view import Look, choose
from pedigreeview.network import PedigreeNetwork

LETTERS = "AbBcV019- é"
CODES = st.lists(
    st.text(LETTERS, min_size=1, max_size=6).filter(str.strip), max_size=12, unique=True
)


@settings(max_examples=120, deadline=None)
@given(CODES)
def test_marks_are_short_and_tell_all_founders_apart(codes: list[str]) -> None:
    marks = founder_marks(tuple(codes))
    assert list(marks) == codes
    assert len({mark.casefold() for mark in marks.values()}) == len(codes)
    assert all(1 <= len(mark) <= MOST for mark in marks.values())


@settings(max_examples=120, deadline=None)
@given(CODES)
def test_marks_are_beginnings_or_endings_else_numbers(codes: list[str]) -> None:
    marks = founder_marks(tuple(codes))
    begun = all(code.startswith(marks[code]) for code in codes)
    ended = all(code.endswith(marks[code]) for code in codes)
    counted = list(marks.values()) == [str(at + 1) for at in range(len(codes))]
    assert begun or ended or counted


@settings(max_examples=120, deadline=None)
@given(CODES)
def test_no_shorter_beginning_or_ending_would_do(codes: list[str]) -> None:
    marks = founder_marks(tuple(codes))
    if list(marks.values()) == [str(at + 1) for at in range(len(codes))]:
        return
    for length in range(1, max(map(len, marks.values()), default=1)):
        for cut in (slice(None, length), slice(-length, None)):
            parts = [code[cut].casefold() for code in codes]
            plain = all(part.isalnum() for part in parts)
            assert not plain or len(set(parts)) < len(parts)


def test_varieties_with_numbers_are_told_by_their_endings() -> None:
    assert founder_marks(("V001", "V013", "V020")) == {"V001": "1", "V013": "3", "V020": "0"}
    assert founder_marks(("V001", "V011")) == {"V001": "01", "V011": "11"}
    assert founder_marks(("TP", "BA")) == {"TP": "T", "BA": "B"}
    assert founder_marks(("Aster xx9a", "Azur xx9a")) == {"Aster xx9a": "As", "Azur xx9a": "Az"}


def test_the_key_names_the_mark_that_the_bars_carry() -> None:
    book = Book()
    for code in ("V001", "V012"):
        book.add(Plant(code, kind="variety"))
    view = choose(PedigreeNetwork.from_records(book), Look())
    founders = [e for e in legend_entries(place(view)) if e.founder is not None]
    assert [entry.initial for entry in founders] == ["1", "2"]


def test_a_long_mark_is_written_up_the_bar_and_stays_inside() -> None:
    def ink(mark: str) -> QImage:
        image = QImage(60, 60, QImage.Format.Format_RGB32)
        image.fill(0xFFFFFF)
        painter = QPainter(image)
        share(painter, QRectF(20, 10, 11, 40), 4, theme("grey"), initial=mark)
        painter.end()
        return image

    plain, marked = ink(""), ink("013")
    differing = [
        (x, y) for x in range(60) for y in range(60) if plain.pixel(x, y) != marked.pixel(x, y)
    ]
    assert differing
    assert min(x for x, _ in differing) >= 20
    assert max(x for x, _ in differing) <= 31
    assert max(y for _, y in differing) - min(y for _, y in differing) > 12


def _grey(number: int, mark: str = "", high: float = 40.0, wide: float = 13.0) -> QImage:
    image = QImage(60, 60, QImage.Format.Format_RGB32)
    image.fill(QColor(theme("grey")["paper"]))
    painter = QPainter(image)
    share(painter, QRectF(20, 10, wide, high), number, theme("grey"), initial=mark)
    painter.end()
    return image


def _within(image: QImage, high: int = 40) -> list[int]:
    """Pixels of the part, but for its edge."""
    return [image.pixel(x, y) for x in range(21, 32) for y in range(12, 10 + high - 2)]


def test_six_founders_have_patterns_and_the_others_their_mark_alone(qapp: object) -> None:
    paper = QColor(theme("grey")["paper"]).rgb()
    patterns = [_within(_grey(number)) for number in range(FOUNDER_PATTERNS)]
    assert all(set(one) != {paper} for one in patterns)
    assert all(one != other for at, one in enumerate(patterns) for other in patterns[:at])
    for number in range(FOUNDER_PATTERNS, 12):
        image = _grey(number, "M")
        upper = {image.pixel(x, y) for x in range(21, 32) for y in range(12, 20)}
        assert upper == {paper}
        assert set(_within(image)) != {paper}, "the mark is written"


def test_a_thin_part_has_no_pattern(qapp: object) -> None:
    paper = QColor(theme("grey")["paper"]).rgb()
    for number in range(12):
        assert set(_within(_grey(number, high=7.0), 7)) == {paper}


def test_a_mark_that_fits_in_smaller_type_stays_upright(qapp: object) -> None:
    """Upright letters are as high as their type; written along, two of them are higher."""
    paper = QColor(theme("grey")["paper"]).rgb()
    for mark in ("M", "01", "81"):
        image = _grey(7, mark)
        rows = [y for y in range(13, 47) if any(image.pixel(x, y) != paper for x in range(22, 31))]
        assert 4 <= rows[-1] - rows[0] <= 9
