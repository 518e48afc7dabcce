"""Margins and captions on paper: what is blank, what still fits, what is refused."""

from __future__ import annotations

import xml.etree.ElementTree as ET
from pathlib import Path

import pytest
from PySide6.QtCore import QByteArray, Qt
from PySide6.QtGui import QImage, QPainter
from PySide6.QtSvg import QSvgRenderer

from pedigreeview import read
from pedigreeview.book.faults import Fault
from pedigreeview.drawing.theme import theme
from pedigreeview.drawing.view import Look
from pedigreeview.network import PedigreeNetwork
from pedigreeview.places import demo
from pedigreeview.reports.chart import picture_of, save_picture
from pedigreeview.reports.pages import Pages, lay_out
from pedigreeview.reports.sheets import Matter, compose, head_height, matter
from tests.reports.pdf_marks import inked

pytestmark = pytest.mark.usefixtures("qapp")

CAPTION = "Made by hand in June.\nSeed of both directions to be had in autumn."
LOOK = Look(focus="21-01-3")


@pytest.fixture(scope="module")
def peas() -> PedigreeNetwork:
    return read(demo("two_peas_both_ways"))


@pytest.fixture(scope="module")
def bare(peas: PedigreeNetwork) -> Matter:
    return matter(picture_of(peas, LOOK), theme("light"), title="Peas", date="2026-05-01")


@pytest.fixture(scope="module")
def told(peas: PedigreeNetwork) -> Matter:
    placed = picture_of(peas, LOOK)
    return matter(placed, theme("light"), title="Peas", date="2026-05-01", caption=CAPTION)


@pytest.mark.parametrize("margin", [5, 12.5, 30])
@pytest.mark.parametrize("tiled", [False, True])
def test_the_margin_of_a_pdf_is_blank(
    peas: PedigreeNetwork, tmp_path: Path, margin: float, tiled: bool
) -> None:
    path = save_picture(
        peas, tmp_path / "a.pdf", look=LOOK, margin=margin, caption=CAPTION, tiled=tiled
    )
    pages = inked(path)
    assert (len(pages) > 1) is tiled
    for page in pages:
        assert min(page.blank_mm()) >= margin - 0.1
    # The ground of the sheet fills the room to the margin; Qt rounds a page to whole points.
    assert pages[0].blank_mm() == pytest.approx((margin,) * 4, abs=0.4)


def test_parts_to_be_joined_keep_their_marks_within_the_margin(
    peas: PedigreeNetwork, tmp_path: Path
) -> None:
    path = save_picture(peas, tmp_path / "a.pdf", paper="A5", landscape=False, tiled=True, margin=5)
    pages = inked(path)
    assert len(pages) > 3
    for page in pages[1:]:
        assert page.blank_mm() == pytest.approx((5,) * 4, abs=0.4)
        # The circles of the marks: 7 units across, 4 in the corners of the overlap.
        circles = [b for b in page.boxes if 4.8 < b[2] - b[0] < 5.8 and 4.8 < b[3] - b[1] < 5.8]
        assert len(circles) >= 4
        # The name of the sheet stands below the picture, still above the margin.
        assert min(y for _, y in page.letters) >= 5 * 72 / 25.4


def test_wider_margins_make_the_picture_smaller_and_the_parts_more(
    peas: PedigreeNetwork, bare: Matter
) -> None:
    narrow, wide = (lay_out(bare, paper="A5", landscape=True, margin=m) for m in (5, 20))
    assert narrow.scale > wide.scale
    assert narrow.width - wide.width == pytest.approx(30 * 96 / 25.4)
    whole = matter(picture_of(peas, Look()), theme("light"), title="Peas")
    few, many = (lay_out(whole, paper="A4", tiled=True, margin=m) for m in (5, 45))
    assert many.count > few.count


def test_the_usual_margin_is_as_it_was(bare: Matter) -> None:
    made = lay_out(bare, paper="A4", landscape=True)
    assert (made.margin, made.width) == (10, pytest.approx(277 * 96 / 25.4))
    assert compose(bare).margin == 30


def test_margins_that_leave_no_room_are_refused(bare: Matter, told: Matter) -> None:
    for held in (bare, told):
        with pytest.raises(Fault) as heard:
            lay_out(held, paper="A5", landscape=False, margin=50)
        assert heard.value.sentence() == (
            "Margins of 50 mm leave no room for the picture on A5. "
            "Choose narrower margins or larger paper."
        )
        with pytest.raises(Fault, match="Margins of 50 mm"):
            lay_out(held, paper="A5", tiled=True, margin=50)
        assert lay_out(held, paper="A3", margin=50).scale > 0.3


def test_the_way_of_the_paper_that_has_room_is_taken(bare: Matter) -> None:
    with pytest.raises(Fault, match="Margins of 36 mm"):
        lay_out(bare, paper="A5", landscape=True, margin=36)
    assert lay_out(bare, paper="A5", margin=36).landscape is False


def test_a_caption_that_leaves_no_room_is_refused(peas: PedigreeNetwork) -> None:
    placed = picture_of(peas, LOOK)
    held = matter(placed, theme("light"), title="Peas", caption="\n".join(["word"] * 40))
    with pytest.raises(Fault) as heard:
        lay_out(held, paper="A5", margin=12)
    assert heard.value.sentence() == (
        "The caption leaves no room for the picture on A5. Shorten it, or choose larger paper."
    )
    assert lay_out(held, paper="A2").count == 1


def _painted(pages: Pages, at: int = 0) -> QImage:
    image = QImage(round(pages.width), round(pages.height), QImage.Format.Format_RGB32)
    painter = QPainter(image)
    try:
        pages.paint(painter, at)
    finally:
        painter.end()
    return image


def test_the_caption_pushes_the_picture_down_by_its_height(bare: Matter, told: Matter) -> None:
    plain, said = (lay_out(held, paper="A2", landscape=True) for held in (bare, told))
    assert (plain.scale, said.scale) == (1.0, 1.0)
    before, after = head_height(bare, plain.width), head_height(told, said.width)
    assert after - before == 2 * 18 + 4
    first, second = _painted(plain), _painted(said)
    high = 300
    assert first.copy(0, round(before), first.width(), high) == second.copy(
        0, round(after), second.width(), high
    )
    assert first.copy(0, 0, first.width(), 44) == second.copy(0, 0, second.width(), 44)


def _blank_around(image: QImage) -> tuple[int, int, int, int]:
    ground = image.pixel(0, 0)
    wide, high = image.width(), image.height()
    rows = [y for y in range(high) if any(image.pixel(x, y) != ground for x in range(wide))]
    columns = [x for x in range(wide) if any(image.pixel(x, y) != ground for y in rows)]
    return columns[0], rows[0], wide - 1 - columns[-1], high - 1 - rows[-1]


SVG = "{http://www.w3.org/2000/svg}"


def _without_text(path: Path) -> QSvgRenderer:
    """The drawing alone: a text is as wide as the type that its reader has."""
    root = ET.parse(path).getroot()
    for group in root.iter(f"{SVG}g"):
        for text in group.findall(f"{SVG}text"):
            group.remove(text)
    return QSvgRenderer(QByteArray(ET.tostring(root)))


def test_the_space_round_an_svg_is_blank(peas: PedigreeNetwork, tmp_path: Path) -> None:
    sizes = []
    for margin in (0, 20):
        edge = round(margin * 96 / 25.4)
        path = save_picture(peas, tmp_path / "a.svg", look=LOOK, margin=margin, caption=CAPTION)
        drawn = _without_text(path)
        image = QImage(drawn.viewBoxF().size().toSize(), QImage.Format.Format_RGB32)
        image.fill(Qt.GlobalColor.red)
        painter = QPainter(image)
        try:
            drawn.render(painter)
        finally:
            painter.end()
        sizes.append(image.size())
        left, above, right, below = _blank_around(image)
        # The strips of the generations run from margin to margin.
        assert (left, right) == pytest.approx((edge, edge), abs=1)
        assert min(above, below) >= edge - 1
        said = {str(item.text): item for item in ET.parse(path).getroot().iter(f"{SVG}text")}
        for line in CAPTION.splitlines():
            assert float(said[line].get("x", "")) == edge
    assert sizes[1].width() - sizes[0].width() == 2 * 76
    assert sizes[1].height() - sizes[0].height() == 2 * 76


def test_the_space_round_a_png_is_blank(peas: PedigreeNetwork, tmp_path: Path) -> None:
    look = Look(focus="TP", up=0, down=1)
    path = save_picture(peas, tmp_path / "a.png", look=look, margin=12, dpi=48, caption=CAPTION)
    edge = round(12 * 96 / 25.4) / 2
    assert min(_blank_around(QImage(str(path)))) >= edge - 1
    assert _blank_around(QImage(str(path)))[0] == pytest.approx(edge, abs=1.5)
