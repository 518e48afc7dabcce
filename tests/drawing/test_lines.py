"""Lines on the screen and in files: grains as pixels, shapes in files, words beside a clip."""

from __future__ import annotations

import numpy as np
import pytest
from numpy.typing import NDArray
from PySide6.QtCore import QBuffer, QRectF
from PySide6.QtGui import QImage, QPainter
from PySide6.QtSvg import QSvgGenerator

from pedigreeview import read
from pedigreeview.drawing.blocks import Link, View
from pedigreeview.drawing.lines import _dots, _spots_path, draw_stroke
from pedigreeview.drawing.painter import paint
from pedigreeview.drawing.placing import Line, OpenEnd, Placed, place
from pedigreeview.drawing.strokes import strokes, strokes_of
from pedigreeview.drawing.theme import theme
from pedigreeview.drawing.view import Look, choose
from pedigreeview.places import demo

pytestmark = pytest.mark.usefixtures("gui")

LIGHT = theme("light")


def way(role: str, *points: tuple[float, float], back: bool = False) -> Line:
    return Line("x", role, 1.0, True, back, ((Link("a", "b", role, "k"), points),))


def levels(image: QImage) -> NDArray[np.int64]:
    held = np.frombuffer(image.constBits(), np.uint8).reshape(image.height(), image.width(), 4)
    return held[:, :, :3].astype(np.int64)


def picture(work, scale: float = 1.0) -> NDArray[np.int64]:
    image = QImage(500, 300, QImage.Format.Format_RGB32)
    image.fill(0xFFFFFFFF)
    painter = QPainter(image)
    try:
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.scale(scale, scale)
        work(painter)
    finally:
        painter.end()
    return levels(image)


@pytest.mark.parametrize("scale", [0.5, 1.0, 1.7])
def test_grains_a_handful_at_a_time_look_as_one_path_does(scale):
    stroke = strokes_of(way("pollen", (20.0, 20.0), (20.0, 140.0), (260.0, 140.0), (260.0, 30.0)))
    assert len(stroke.spots) > 60
    few = picture(lambda painter: draw_stroke(painter, stroke, LIGHT, detail=scale), scale)
    one = picture(lambda on: _dots(on, _spots_path(stroke, None), LIGHT["line"]), scale)
    assert (few < 200).any()
    # Where two grains share a pixel it is darkened twice instead of once.
    assert np.abs(few - one).max() <= 48
    assert (np.abs(few - one).max(axis=2) > 8).sum() < 12


def test_only_grains_near_the_clip_are_drawn_and_none_of_them_is_missing():
    stroke = strokes_of(way("pollen", (10.0, 50.0), (490.0, 50.0)))
    clip = QRectF(200, 0, 60, 100)
    whole = picture(lambda painter: draw_stroke(painter, stroke, LIGHT, detail=1.0))
    part = picture(lambda painter: draw_stroke(painter, stroke, LIGHT, detail=1.0, clip=clip))
    assert (part[:, 200:260] == whole[:, 200:260]).all()
    assert (part[:, :100] == 255).all()
    assert (part[:, 400:] == 255).all()


def test_in_a_file_all_is_shapes_and_a_line_of_grains_is_one():
    placed = place(choose(read(demo("two_peas_both_ways")), Look()))
    buffer = QBuffer()
    file = QSvgGenerator()
    file.setOutputDevice(buffer)
    file.setViewBox(QRectF(*placed.bounds))
    painter = QPainter(file)
    try:
        paint(painter, placed, LIGHT)
    finally:
        painter.end()
    text = bytes(buffer.data().data()).decode()
    assert "<image" not in text
    dotted = sum(stroke.line.role == "pollen" for stroke in strokes(placed).strokes)
    held = [stroke.held for stroke in strokes(placed).strokes if stroke.line.role == "pollen"]
    assert dotted
    assert all("path" in one and "handfuls" not in one for one in held)


def _strip_is_part_of_the_whole(placed: Placed, strip: QRectF) -> None:
    whole = picture(lambda painter: paint(painter, placed, LIGHT))
    part = picture(lambda painter: paint(painter, placed, LIGHT, clip=strip))
    columns = slice(int(strip.left()), int(strip.right()))
    rows = slice(int(strip.top()), int(strip.bottom()))
    assert (whole[rows, columns] < 200).any()
    assert (part[rows, columns] == whole[rows, columns]).all()


def test_the_words_of_a_line_that_runs_back_are_whole_where_a_strip_cuts_them():
    line = way("seed", (100.0, 30.0), (100.0, 270.0), back=True)
    placed = Placed(View(None, (), (), (), ()), "down", (), (line,), (), (), (0, 0, 500, 300))
    # Beyond what lies near the line itself.
    _strip_is_part_of_the_whole(placed, QRectF(150, 0, 20, 300))


def test_the_ring_of_an_unknown_parent_is_whole_where_a_strip_cuts_it():
    end = OpenEnd("k", "pollen", 1.0, 100.0, 200.0, 60.0)
    placed = Placed(View(None, (), (), (), ()), "down", (), (), (end,), (), (0, 0, 500, 300))
    _strip_is_part_of_the_whole(placed, QRectF(0, 130, 500, 12))
