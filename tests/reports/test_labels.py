"""Labels on paper: all text inside its label, read back from the PDF, in black on white."""

from __future__ import annotations

import shutil
import subprocess

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from PySide6.QtCore import QRectF
from PySide6.QtGui import QFontMetricsF, QImage, QPainter

from pedigreeview.book.book import Book
from pedigreeview.book.faults import Cancelled, Fault
from pedigreeview.drawing.theme import theme
from pedigreeview.exchange import read_book
from pedigreeview.places import demo
from pedigreeview.reports.label_content import KINDS, Fact, LabelText, labels_for
from pedigreeview.reports.label_layout import lay_out_label
from pedigreeview.reports.label_sheets import label_sheets, sheet_named, usual_sheet
from pedigreeview.reports.labels import lay_out_labels, paint_label_page, save_labels
from pedigreeview.reports.matings import Mating
from pedigreeview.reports.paper_type import UNITS_PER_INCH, paper_font
from pedigreeview.reports.qr import LEAST_MODULE, QUIET, qr_squares
from tests.reports.garden import garden
from tests.reports.qr_reader import read_qr

pytestmark = pytest.mark.usefixtures("qapp")

DEMOS = ("two_peas_both_ways", "a_leaf_for_hollin_plate", "tansy_and_the_moths")
needs_poppler = pytest.mark.skipif(
    shutil.which("pdftotext") is None, reason="pdftotext (poppler) is not installed"
)


@pytest.fixture(scope="module")
def demo_books() -> list[Book]:
    return [read_book(demo(name)) for name in DEMOS]


def read_pdf(path, *how: str) -> str:
    done = subprocess.run(
        ["pdftotext", *how, str(path), "-"], capture_output=True, text=True, check=True
    )
    return done.stdout


def painted(pages, at: int = 0, dpi: int = 100) -> QImage:
    wide, high = pages.sheet.page
    image = QImage(
        round(wide / 25.4 * dpi),
        round(high / 25.4 * dpi),
        QImage.Format.Format_ARGB32_Premultiplied,
    )
    image.fill(0xFFFFFFFF)
    painter = QPainter(image)
    painter.scale(dpi / UNITS_PER_INCH, dpi / UNITS_PER_INCH)
    paint_label_page(painter, pages, at)
    painter.end()
    return image


def rgb(image: QImage) -> np.ndarray:
    """Red, green and blue of every pixel."""
    whole = np.frombuffer(image.constBits(), np.uint8)
    return whole.reshape(image.height(), -1, 4)[:, : image.width(), :3].copy()


def inside(layout) -> None:
    """Every mark lies in the room; letters are measured again, by their ink."""
    for mark in layout.marks:
        assert mark.x >= -0.01
        assert mark.y >= -0.01
        assert mark.x + mark.width <= layout.width + 0.1, mark
        assert mark.y + mark.height <= layout.height + 0.1, mark
        if mark.what == "text":
            font = paper_font(theme("grey"), mark.size, strong=mark.strong)
            ink = QFontMetricsF(font).tightBoundingRect(mark.text)
            # A rim of 12 units is free around the room; rare letters reach into it, never beyond.
            assert mark.x + ink.right() <= layout.width + 6
            assert mark.y + mark.baseline + ink.top() >= -11
            assert mark.y + mark.baseline + ink.bottom() <= layout.height + 11
    if layout.qr is not None:
        left, top, side = layout.qr
        module = side / len(layout.squares)
        assert module >= LEAST_MODULE * 10 - 1e-6
        quiet = QRectF(left, top, side, side).adjusted(*(-module * QUIET + 0.01,) * 2, 0, 0)
        for mark in layout.marks:
            assert not quiet.intersects(QRectF(mark.x, mark.y, mark.width, mark.height)), mark
        assert left + side <= layout.width
        assert top >= -0.01
        assert top + side <= layout.height + 0.01


def apart(layout) -> None:
    """No two pieces of text overlap."""
    texts = [mark for mark in layout.marks if mark.what == "text"]
    for at, one in enumerate(texts):
        # The letters themselves; a line's leading may reach into the next.
        a = QRectF(one.x, one.y + one.baseline - 0.7 * one.size, one.width, 0.72 * one.size)
        for other in texts[at + 1 :]:
            b = QRectF(
                other.x, other.y + other.baseline - 0.7 * other.size, other.width, 0.72 * other.size
            )
            assert not a.intersects(b), (one.text, other.text)


@pytest.mark.parametrize("qr", [False, True])
@pytest.mark.parametrize("sheet", [sheet.name for sheet in label_sheets()])
def test_everything_of_the_demos_fits_on_its_label(demo_books, sheet, qr):
    stock = sheet_named(sheet)
    for book in demo_books:
        for kind in KINDS:
            codes = list(book.packets)[:12] if kind == "packets" else ()
            texts = labels_for(book, kind, codes)[::9][:4]
            pages = lay_out_labels(texts, stock, qr=qr)
            for text in texts:
                layout = pages.layout(text)
                inside(layout)
                apart(layout)
                assert layout.smallest_points >= 4.2


@pytest.mark.parametrize("kind", KINDS)
@pytest.mark.parametrize("paper", ["A4", "Letter"])
def test_on_its_usual_sheet_nothing_is_left_out(demo_books, kind, paper):
    for book in demo_books:
        codes = list(book.packets) if kind == "packets" else ()
        pages = lay_out_labels(labels_for(book, kind, codes), usual_sheet(kind, paper))
        assert pages.crowded() == []


WORDS = st.text(
    st.characters(codec="utf-8", categories=("Lu", "Ll", "Nd", "Pd", "Zs"), max_codepoint=0x24F),
    min_size=1,
    max_size=60,
).filter(lambda text: text.strip() == text and text.split())


@st.composite
def labels(draw) -> LabelText:
    sign = draw(st.sampled_from(["cross", "selfing", "open"]))
    mating = Mating(
        draw(WORDS),
        sign,
        draw(WORDS) if sign == "cross" else "",
        draw(st.just("") | WORDS),
        draw(st.just("") | WORDS),
        draw(st.booleans()),
    )
    fact = st.builds(Fact, st.just("") | WORDS, st.just("") | WORDS, spare=st.booleans())
    return LabelText(
        "packets",
        draw(WORDS),
        draw(st.just("") | WORDS),
        draw(st.just("") | WORDS),
        draw(st.none() | st.just(mating)),
        draw(st.just("") | WORDS),
        tuple(draw(st.lists(fact, max_size=6))),
        tuple(draw(st.lists(WORDS, max_size=2))),
        "K1",
    )


@settings(max_examples=40)
@given(labels(), st.sampled_from(label_sheets()), st.booleans())
def test_no_text_is_ever_cut_off(text, sheet, qr):
    pages = lay_out_labels([text], sheet, qr=qr)
    width, height = pages.room
    layout = lay_out_label(text, width, height, theme("grey"), qr=qr)
    inside(layout)
    apart(layout)
    shown = "".join(mark.text for mark in layout.marks if mark.what == "text")
    if "…" not in shown and not layout.left_out:
        for part in text.code.split():
            assert part in shown.replace(" ", "") or len(part) > 10


def test_a_long_code_is_broken_not_cut():
    code = "2021-Tarnwick-Pale-x-Brockle-Amber-3-17-4-2-and-so-on-and-on"
    width, height = lay_out_labels([LabelText("pots", code)], sheet_named("roll-loop")).room
    layout = lay_out_label(LabelText("pots", code), width, height, theme("grey"))
    assert "".join(mark.text for mark in layout.marks) == code
    assert len(layout.marks) > 1
    assert not layout.left_out


def test_what_has_no_room_is_told():
    facts = tuple(Fact("fact", f"number {at} of a great many words") for at in range(12))
    pages = lay_out_labels(
        [LabelText("packets", "K1", facts=facts, cautions=("Mind.",))], sheet_named("roll 30x12")
    )
    (text,) = pages.crowded()
    layout = pages.layout(text)
    inside(layout)
    assert layout.left_out
    shown = [mark.text for mark in layout.marks]
    assert "K1" in shown
    assert "Mind." in shown


def test_the_code_is_the_largest_and_seed_parent_stands_first():
    (text,) = labels_for(garden(), "packets", ["K1"])
    pages = lay_out_labels([text], usual_sheet("packets"))
    marks = pages.layout(text).marks
    size = {mark.text: mark.size for mark in marks if mark.what == "text"}
    assert size["K1"] >= 2 * max(value for key, value in size.items() if key != "K1" and key)
    order = [mark.text or mark.what for mark in marks]
    assert order.index("female") < order.index("TP") < order.index("cross")
    assert order.index("cross") < order.index("male") < order.index("BA")
    (self,) = labels_for(garden(), "packets", ["K2"])
    marks = pages.layout(self).marks
    assert [mark.what for mark in marks if mark.what not in ("text", "rule")] == ["selfing"]


def test_parents_in_two_lines_keep_their_signs_and_order():
    (text,) = labels_for(garden(), "flowers", ["P1"])
    marks = lay_out_labels([text], sheet_named("a4-5x13")).layout(text).marks
    (times,) = [mark for mark in marks if mark.what not in ("text", "rule", "female", "male")]
    at = {mark.text or mark.what: mark for mark in marks}
    assert times.what == "cross"
    assert at["female"].x < at["TP"].x < at["Tarnwick Pale"].x
    assert times.x < at["male"].x < at["BA"].x < at["Brockle Amber"].x
    assert at["TP"].y + at["TP"].height <= times.y + 1
    assert at["BA"].y <= times.y <= at["BA"].y + at["BA"].height


def test_a_part_used_sheet_begins_where_it_is_free():
    texts = labels_for(garden(), "packets", ["K1", "K2", "K3"])
    sheet = sheet_named("a4-2x7")
    pages = lay_out_labels(texts, sheet, start=13)
    assert pages.count == 2
    assert [(place, text.code) for place, text in pages.on_page(0)] == [(12, "K1"), (13, "K2")]
    assert [(place, text.code) for place, text in pages.on_page(1)] == [(0, "K3")]
    assert pages.next_free == 2
    assert "3 labels on 2 sheets" in pages.words()
    assert "number 2" in pages.words()
    # Nothing is painted above row 7 of the first sheet.
    top = round((15.15 + 6 * 38.1 - 1) / 25.4 * 60)
    pixels = rgb(painted(pages, 0, 60))
    assert (pixels[:top] == 255).all()
    assert not (pixels[top:] == 255).all()
    full = lay_out_labels(texts * 5, sheet, start=14)
    assert (full.count, full.next_free) == (2, 1)


def test_copies_come_one_set_after_the_other():
    texts = labels_for(garden(), "packets", ["K1", "K2"])
    pages = lay_out_labels(texts, sheet_named("a4-2x7"), copies=3)
    assert [text.code for _, text in pages.on_page(0)] == ["K1", "K2"] * 3


@pytest.mark.parametrize(
    ("how", "says"),
    [
        ({"start": 15}, "no label 15"),
        ({"start": 0}, "no label 0"),
        ({"copies": 0}, "0 copies"),
        ({"copies": 501}, "501 copies"),
    ],
)
def test_what_cannot_be_printed(how, says):
    texts = labels_for(garden(), "packets")
    with pytest.raises(Fault, match=says):
        lay_out_labels(texts, sheet_named("a4-2x7"), **how)
    with pytest.raises(Fault, match="no labels"):
        lay_out_labels([], sheet_named("a4-2x7"))


@needs_poppler
@pytest.mark.parametrize("kind", KINDS)
def test_words_are_read_back_from_the_pdf(tmp_path, kind):
    texts = labels_for(garden(), kind)
    pages = save_labels(tmp_path / "a.pdf", texts, usual_sheet(kind))
    words = read_pdf(tmp_path / "a.pdf")
    for text in texts:
        assert text.code in words
        assert text.name in words
        if text.mating is not None:
            assert text.mating.seed in words
            assert text.mating.pollen in words
        for caution in text.cautions:
            assert caution in words
        for fact in text.facts:
            assert fact.value in words
    assert words.count("\f") == pages.count


@needs_poppler
def test_each_label_stands_in_its_own_place_in_the_pdf(tmp_path):
    texts = labels_for(garden(), "packets", ["K1", "K3"])
    sheet = sheet_named("a4-2x7")
    save_labels(tmp_path / "a.pdf", texts, sheet, start=4)
    for place, text in ((3, "K1"), (4, "K3")):
        left, top, width, height = (value / 25.4 * 72 for value in sheet.place(place))
        area = ["-x", left, "-y", top, "-W", width, "-H", height]
        found = read_pdf(
            tmp_path / "a.pdf", "-r", "72", *(f"{a:.0f}" if a != str(a) else a for a in area)
        )
        assert found.split()[0] == text
        assert "For sowing, not for eating." in found
        assert ("K3" if text == "K1" else "K1") not in found


@needs_poppler
def test_a_loop_tag_says_the_same_on_both_sides_of_its_fold(tmp_path):
    texts = labels_for(garden(), "flowers", ["P1"])
    save_labels(tmp_path / "a.pdf", texts, sheet_named("a4-loops"))
    words = read_pdf(tmp_path / "a.pdf")
    assert words.count("21-01/a") == 2
    assert words.count("2021-06-11") == 2


def test_a_roll_has_a_page_for_each_label(tmp_path):
    import re

    texts = labels_for(garden(), "pots")
    pages = save_labels(tmp_path / "a.pdf", texts, sheet_named("roll-25x60"))
    boxes = re.findall(rb"/MediaBox \[0 0 ([\d.]+) ([\d.]+)", (tmp_path / "a.pdf").read_bytes())
    assert len(boxes) == pages.count == len(texts)
    for wide, high in boxes:
        assert float(wide) == pytest.approx(25 / 25.4 * 72, abs=1)
        assert float(high) == pytest.approx(60 / 25.4 * 72, abs=1)
    wide = save_labels(tmp_path / "b.pdf", texts, sheet_named("roll-60x25"))
    boxes = re.findall(rb"/MediaBox \[0 0 ([\d.]+) ([\d.]+)", (tmp_path / "b.pdf").read_bytes())
    assert float(boxes[0][0]) > float(boxes[0][1])
    assert wide.words().startswith(f"{len(texts)} labels (roll,")


@pytest.mark.parametrize("kind", KINDS)
def test_grey_loses_nothing(kind):
    pages = lay_out_labels(labels_for(garden(), kind), usual_sheet(kind), qr=True)
    pixels = rgb(painted(pages))
    assert (pixels == pixels[:, :, :1]).all()
    assert pixels.min() < 30


def test_nothing_is_painted_outside_the_labels_but_cut_marks():
    texts = labels_for(garden(), "packets", ["K1", "K2", "K3"])
    sheet = sheet_named("a4-2x7")
    image = painted(lay_out_labels(texts, sheet, marks=False, qr=True), dpi=100)
    mm = 100 / 25.4
    dark = rgb(image).min(axis=2) < 200
    assert dark.sum() > 500
    for at in range(3):
        for left, top, wide, high in sheet.panels(at):
            ends = [round(end * mm) for end in (top - 0.3, top + high + 0.3)]
            sides = [round(end * mm) for end in (left - 0.3, left + wide + 0.3)]
            assert dark[ends[0] : ends[1], sides[0] : sides[1]].any()
            dark[ends[0] : ends[1], sides[0] : sides[1]] = False
    assert not dark.any()
    assert painted(lay_out_labels(texts, sheet)) != painted(
        lay_out_labels(texts, sheet, marks=False)
    )


@pytest.mark.parametrize("text", ["K21-1", "21-01/06-11", "20210611", "Grünes Tal 7"])
def test_a_qr_code_says_the_code_by_a_second_reading(text):
    assert read_qr(qr_squares(text)) == text
    broken = [list(row) for row in qr_squares(text)]
    broken[0][0] = False
    with pytest.raises(AssertionError):
        read_qr(broken)


def test_a_qr_code_is_read_from_the_painted_page():
    text = LabelText("packets", "K21-1", scan="K21-1")
    pages = lay_out_labels([text], sheet_named("a4-2x7"), qr=True)
    layout = pages.layout(text)
    assert layout.qr is not None
    dpi = 300
    image = painted(pages, dpi=dpi)
    left, top, side = layout.qr
    x0, y0, _, _ = (value * 10 for value in pages.sheet.panels(0)[0])
    count = len(layout.squares)
    scale = dpi / UNITS_PER_INCH
    read = [
        [
            image.pixel(
                int((x0 + left + (x + 0.5) * side / count) * scale),
                int((y0 + top + (y + 0.5) * side / count) * scale),
            )
            & 255
            < 128
            for x in range(count)
        ]
        for y in range(count)
    ]
    assert read_qr(read) == "K21-1"


def test_a_qr_code_that_would_be_too_fine_is_left_out_and_told():
    text = LabelText("pots", "A", scan="x" * 120)
    pages = lay_out_labels([text], sheet_named("a4-loops"), qr=True)
    assert pages.layout(text).qr is None
    assert pages.layout(text).left_out == ("the QR code",)


def test_a_failed_or_cancelled_file_leaves_the_older_one(tmp_path):
    path = tmp_path / "a.pdf"
    path.write_text("older")
    texts = labels_for(garden(), "packets")

    def tick(done: int, whole: int, what: str) -> None:
        assert (done, whole, what) == (0, 1, "Labels")
        raise Cancelled

    with pytest.raises(Cancelled):
        save_labels(path, texts, usual_sheet("packets"), tick=tick)
    assert path.read_text() == "older"
    assert [item.name for item in tmp_path.iterdir()] == ["a.pdf"]
    with pytest.raises(Fault, match=r"\.pdf"):
        save_labels(tmp_path / "a.png", texts, usual_sheet("packets"))
    with pytest.raises(Fault):
        save_labels(tmp_path / "none" / "a.pdf", texts, usual_sheet("packets"))
