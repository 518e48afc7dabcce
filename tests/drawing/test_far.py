"""The far picture: pixels set without Qt, at the places where Qt would paint them."""

from __future__ import annotations

import pytest
from PySide6.QtCore import QRectF
from PySide6.QtGui import QColor, QImage, QPainter

from pedigreeview import read
from pedigreeview.drawing.far import Cull, block_boxes
from pedigreeview.drawing.lighting import light
from pedigreeview.drawing.painter import Scene, paint
from pedigreeview.drawing.placing import Placed, place
from pedigreeview.drawing.theme import theme
from pedigreeview.drawing.view import Look, choose
from pedigreeview.places import demo

pytestmark = pytest.mark.usefixtures("gui")


@pytest.fixture(scope="module")
def placed() -> Placed:
    return place(choose(read(demo("tansy_and_the_moths")), Look()))


def far_image(placed: Placed, scale: float, **more) -> QImage:
    left, top, width, height = placed.bounds
    image = QImage(round(width * scale), round(height * scale), QImage.Format.Format_RGB32)
    image.fill(QColor(theme("light")["ground"]))
    painter = QPainter(image)
    try:
        painter.scale(scale, scale)
        painter.translate(-left, -top)
        clip = QRectF(left, top, width, height)
        paint(painter, placed, theme("light"), detail=scale, clip=clip, **more)
    finally:
        painter.end()
    return image


def at(image: QImage, placed: Placed, scale: float, x: float, y: float) -> str:
    left, top, _, _ = placed.bounds
    return image.pixelColor(int((x - left) * scale), int((y - top) * scale)).name()


@pytest.mark.parametrize("scale", [0.12, 0.15])
def test_tags_and_lines_lie_where_they_belong(placed, scale):
    image = far_image(placed, scale)
    for code in ("SL", "16-01-2", "19-02-23"):
        tag = placed.block_of(code)
        assert at(image, placed, scale, tag.x + tag.width * 0.7, tag.middle[1]) == "#fffdf7"
    (line,) = (line for line in placed.lines if line.key == "seed plant:NT")
    points = line.routes[0][1]
    (x0, y0), (_, y1) = points[0], points[1]
    assert at(image, placed, scale, x0, (y0 + y1) / 2) == theme("light")["line"]


def test_line_from_very_far_is_one_pixel(placed):
    scale = 0.12
    image = far_image(placed, scale)
    (line,) = (line for line in placed.lines if line.key == "seed plant:NT")
    (x, y0), (_, y1) = line.routes[0][1][:2]
    y = (y0 + y1) / 2
    seen = [at(image, placed, scale, x + shift / scale, y) for shift in (-1, 0, 1)]
    assert seen.count(theme("light")["line"]) == 1


def test_lit_paths_dim_the_rest_from_afar(placed):
    lit = light(placed, [("SL", "16-01-2")])
    plain, dimmed = far_image(placed, 0.12), far_image(placed, 0.12, lit=lit)
    other, own = placed.block_of("WC"), placed.block_of("SL")
    for tag, same in ((other, False), (own, True)):
        spot = (tag.x + tag.width * 0.7, tag.middle[1])
        assert (at(plain, placed, 0.12, *spot) == at(dimmed, placed, 0.12, *spot)) == same


def test_tints_show_from_afar(placed):
    image = far_image(placed, 0.12, scene=Scene(tints={"WC": "#ff8800"}))
    tag = placed.block_of("WC")
    assert at(image, placed, 0.12, tag.x + tag.width * 0.7, tag.middle[1]) == "#ff8800"


def test_only_what_lies_near_the_clip_is_looked_at(placed):
    tag = placed.block_of("NT")
    near = Cull.near(block_boxes(placed), QRectF(tag.x, tag.y, tag.width, tag.height), 0.0)
    assert [placed.blocks[number].block.code for number in near] == ["NT"]
