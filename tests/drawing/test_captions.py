"""Captions: what stays of the person's words, and how they are broken into lines."""

from __future__ import annotations

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from PySide6.QtCore import Qt
from PySide6.QtGui import QFontMetricsF, QImage, QPainter

from pedigreeview.book.faults import Fault
from pedigreeview.drawing.captions import (
    MOST_SIGNS,
    caption_height,
    caption_of,
    paint_caption,
    wrapped,
)
from pedigreeview.drawing.tags import font
from pedigreeview.drawing.theme import theme

pytestmark = pytest.mark.usefixtures("qapp")

HEBREW = "זרעים של הצלבה בשני הכיוונים"


@pytest.mark.parametrize(
    ("text", "held"),
    [
        ("", ()),
        (" \n\t\n", ()),
        ("one", ("one",)),
        ("\n one   two \r\nthree\n\n", ("one two", "three")),
        ("one\n\ntwo", ("one", "", "two")),
        ("a\u2028b\x0bc\x85d", ("a", "b", "c", "d")),
        ("nul\x00 bell\x07\ud800", ("nul bell",)),
        ("<b>&amp;</b>", ("<b>&amp;</b>",)),
    ],
)
def test_words_are_kept_by_paragraph(text: str, held: tuple[str, ...]) -> None:
    assert caption_of(text) == held


def test_a_whole_book_is_no_caption() -> None:
    assert caption_of("x" * MOST_SIGNS)
    with pytest.raises(Fault, match=f"has {MOST_SIGNS + 1} characters; {MOST_SIGNS} are the most"):
        caption_of("x" * (MOST_SIGNS + 1))


@pytest.mark.parametrize(
    "text",
    [
        "Both ways across in June and the reciprocal cross gave the same plants as it should",
        "Donaudampfschifffahrtsgesellschaft" * 9,
        "short then " + "x" * 300 + " short",
        HEBREW * 4,
        "豌豆雙向雜交第一代" * 12,
        "👩‍🌾🌱" * 60,
    ],
)
@pytest.mark.parametrize("width", [60.0, 240.0])
def test_no_line_leaves_the_width_and_nothing_is_lost(text: str, width: float) -> None:
    face = font(theme("light"), 13)
    lines = wrapped(face, text, width)
    assert len(lines) > 1
    assert "".join("".join(lines).split()) == "".join(text.split())
    metrics = QFontMetricsF(face)
    # Hinted widths of the screen may differ by a little from those of the type's design.
    assert max(metrics.horizontalAdvance(line) for line in lines) <= width * 1.04 + 2


def test_words_stay_whole_where_they_can() -> None:
    text = "seed of the first cross and of its reciprocal"
    lines = wrapped(font(theme("light"), 13), text, 120.0)
    assert " ".join(lines) == text


@given(st.text(max_size=120), st.floats(1.0, 400.0))
@settings(max_examples=60, deadline=None)
def test_any_text_can_be_wrapped(text: str, width: float) -> None:
    for paragraph in caption_of(text):
        lines = wrapped(font(theme("light"), 13), paragraph, width)
        assert "".join("".join(lines).split()) == "".join(paragraph.split())


def test_it_takes_the_height_that_it_says() -> None:
    held, caption = theme("light"), caption_of("one two three four five six\n\nseven")
    assert caption_height(held, (), 100.0) == 0.0
    image = QImage(200, 300, QImage.Format.Format_RGB32)
    image.fill(Qt.GlobalColor.white)
    painter = QPainter(image)
    try:
        took = paint_caption(painter, held, caption, 10.0, 20.0, 100.0)
        assert paint_caption(painter, held, (), 0.0, 0.0, 100.0) == 0.0
    finally:
        painter.end()
    assert took == caption_height(held, caption, 100.0) > 3 * 18
    rows, columns = _ink(image)
    assert rows[0] >= 20
    assert rows[-1] <= 20 + took
    assert columns[0] >= 9


def _ink(image: QImage) -> tuple[list[int], list[int]]:
    spots = [
        (x, y)
        for y in range(image.height())
        for x in range(image.width())
        if image.pixelColor(x, y).lightness() < 128
    ]
    return sorted({y for _, y in spots}), sorted({x for x, _ in spots})


def test_what_is_written_from_the_right_begins_there() -> None:
    found = {}
    for text in ("seed", "זרע", "זרע TP", "TP זרע"):
        image = QImage(300, 40, QImage.Format.Format_RGB32)
        image.fill(Qt.GlobalColor.white)
        painter = QPainter(image)
        try:
            paint_caption(painter, theme("light"), (text,), 20.0, 5.0, 260.0)
        finally:
            painter.end()
        found[text] = _ink(image)[1]
    assert found["seed"][0] <= 24
    assert found["TP זרע"][0] <= 24
    for text in ("זרע", "זרע TP"):
        assert 270 <= found[text][-1] <= 281
        assert found[text][0] > 150
