"""The names of the generations have a gutter of their own."""

from __future__ import annotations

import numpy as np
import pytest
from numpy.typing import NDArray
from PySide6.QtCore import QPointF, QRectF
from PySide6.QtGui import QFontMetricsF, QImage, QPainter

from pedigreeview.book.book import Book
from pedigreeview.book.records import Plant
from pedigreeview.drawing.band_names import gutter, paint_names
from pedigreeview.drawing.painter import paint
from pedigreeview.drawing.placing import Placed, place
from pedigreeview.drawing.theme import sizes, theme
from pedigreeview.drawing.view import Look, choose
from pedigreeview.network import PedigreeNetwork
from tests.drawing.random_books import add_cross

LOOK = theme("light")


def three_generations() -> PedigreeNetwork:
    book = Book()
    for code in ("A", "B"):
        book.add(Plant(plant=code, kind="variety"))
    add_cross(book, "x", "A", "B")
    for number in range(3):
        book.add(Plant(plant=f"x-{number}", cross="x"))
    for number in range(3):
        add_cross(book, f"s{number}", f"x-{number}", f"x-{number}")
        book.add(Plant(plant=f"s{number}-0", cross=f"s{number}"))
    return PedigreeNetwork.from_records(book)


@pytest.fixture(scope="module", params=["down", "right"])
def placed(request: pytest.FixtureRequest) -> Placed:
    view = choose(three_generations(), Look("x-0", pins=("s2-0",)))
    return place(view, orientation=request.param)


def on_screen(placed: Placed, at: float, scale: float, text: float = 1.0) -> QImage:
    """900 by 600 pixels of a picture, from a place along its rows on."""
    left, top, _, _ = placed.bounds
    down = placed.orientation == "down"
    left, top = (left + at, top) if down else (left, top + at)
    image = QImage(900, 600, QImage.Format.Format_RGB32)
    image.fill(LOOK["ground"])
    painter = QPainter(image)
    try:
        painter.scale(scale, scale)
        painter.translate(-left, -top)
        clip = QRectF(left, top, 900 / scale, 600 / scale)
        paint(painter, placed, LOOK, detail=scale, clip=clip, names=False)
        paint_names(painter, placed, LOOK, detail=scale, clip=clip, text=text, solid=True)
    finally:
        painter.end()
    return image


def levels(image: QImage) -> NDArray[np.int64]:
    """(height, width, 3) levels of the colours, 0 to 255."""
    held = np.frombuffer(image.constBits(), np.uint8).reshape(image.height(), image.width(), 4)
    return held[..., :3].astype(np.int64)


@pytest.mark.parametrize("scale", [0.4, 1.0, 1.7])
@pytest.mark.parametrize("text", [1.0, 2.0])
def test_nothing_of_the_picture_is_seen_in_the_gutter(gui, placed, scale, text):
    left, above = gutter(placed, text)
    assert (left > 80) != (above > 25)
    wide, high = (int(left - 18 * text), 600) if left else (900, int(above - 18 * text))
    shown = [levels(on_screen(placed, at, scale, text)) for at in (-300.0, 0.0, 120.0, 260.0)]
    for other in shown[1:]:
        differs = np.abs(other - shown[0])
        # Letters may fall on other parts of pixels; a line or a tag would differ by far more.
        assert differs[:high, :wide].max() < 60
        assert differs.max() > 120


def test_a_file_leaves_room_for_the_names(gui, placed):
    """Left of all tags and lines, or above them, lies as much room as the names have."""
    room, (left, top, _, _) = sizes().band_label, placed.bounds
    xs = [item.x for item in placed.blocks]
    ys = [item.y for item in placed.blocks]
    for line in placed.lines:
        for _, points in line.routes:
            xs += [x for x, _ in points]
            ys += [y for _, y in points]
    near = min(xs) - left if placed.orientation == "down" else min(ys) - top
    assert near >= room


def test_a_name_stands_on_the_line_of_its_first_codes(gui):
    """Ink of the name ends where ink of the code does: on one base line."""
    placed = place(choose(three_generations(), Look("x-0")))
    image = on_screen(placed, 0.0, 1.0)
    left, top, _, _ = placed.bounds

    def lowest(x0: int, x1: int, y0: int, y1: int, ground: str) -> int:
        dark = [
            y
            for y in range(y0, y1)
            if any(image.pixelColor(x, y).lightness() < 150 for x in range(x0, x1))
        ]
        assert dark, ground
        return max(dark)

    for code in ("A", "x-0"):
        item = placed.block_of(code)
        assert item is not None
        x, y = round(item.x - left), round(item.y - top)
        stripe = round(sizes().stripe)
        code_line = lowest(x + stripe + 8, x + stripe + 40, y + 8, y + 26, "code")
        name_line = lowest(8, 90, y + 8, y + 26, "name")
        assert abs(code_line - name_line) <= 1, code


class _Faces(QPainter):
    """A painter that keeps which type each text was written in, and how wide it came out."""

    def __init__(self, image: QImage) -> None:
        super().__init__(image)
        self.written: dict[str, tuple[float, float]] = {}

    def drawText(self, spot: QPointF, words: str) -> None:  # type: ignore[override]
        wide = QFontMetricsF(self.font()).horizontalAdvance(words)
        self.written[words] = (self.font().pointSizeF(), self.font().pixelSize(), wide)


def written(placed: Placed, detail: float, *, solid: bool) -> dict[str, tuple[float, float]]:
    image = QImage(200, 200, QImage.Format.Format_RGB32)
    painter = _Faces(image)
    try:
        paint_names(painter, placed, LOOK, detail=detail, solid=solid)
    finally:
        painter.end()
    return painter.written


@pytest.mark.parametrize("solid", [False, True])
@pytest.mark.parametrize("detail", [0.3, 0.6, 1.0, 1.6])
def test_all_names_of_a_picture_are_of_one_size(gui, placed, detail, solid):
    """Also where one of them, such as 'Founders', has no room at the usual size."""
    first = [words for words in written(placed, detail, solid=solid) if words[:1] != "g"]
    assert "Founders" in first
    sizes_of = {written(placed, detail, solid=solid)[words][:2] for words in first}
    assert len(sizes_of) == 1


def test_every_name_in_a_file_has_room(gui):
    placed = place(choose(three_generations(), Look("x-0", pins=("s2-0",))))
    for detail in (0.2, 0.5, 1.0):
        for words, (_, _, wide) in written(placed, detail, solid=False).items():
            assert wide <= sizes().band_label, words


def test_generations_are_all_written_out_or_all_shortened(gui):
    """Ten plants in a line: 'Generation 10' is the longest; where it has no room, none is long."""
    book = Book()
    book.add(Plant(plant="P0"))
    for number in range(1, 13):
        add_cross(book, f"x{number}", f"P{number - 1}", f"M{number}")
        book.add(Plant(plant=f"M{number}"))
        book.add(Plant(plant=f"P{number}", cross=f"x{number}"))
    placed = place(choose(PedigreeNetwork.from_records(book), Look()))
    seen = set()
    for detail in (0.2, 0.35, 0.5, 0.7, 0.8, 0.9, 1.0):
        names = [words for words in written(placed, detail, solid=False) if words[:3] == "Gen"]
        seen |= {frozenset(words.startswith("Generation") for words in names)}
    assert frozenset((True, False)) not in seen
