"""A few chosen pixels, and that Qt holds on to nothing of ours."""

from __future__ import annotations

import itertools
import sys

import pytest
from PySide6.QtCore import QObject, QRectF
from PySide6.QtGui import QColor, QImage, QPainter

from pedigreeview.book.book import Book
from pedigreeview.book.records import Plant
from pedigreeview.drawing.lighting import light
from pedigreeview.drawing.painter import Scene, paint
from pedigreeview.drawing.placing import Placed, place
from pedigreeview.drawing.theme import THEMES, sizes, theme
from pedigreeview.drawing.view import Look, choose
from pedigreeview.network import PedigreeNetwork
from tests.drawing.random_books import add_cross

pytestmark = pytest.mark.usefixtures("gui")


def book() -> Book:
    book = Book()
    for code in ("A", "B"):
        book.add(Plant(plant=code, kind="variety"))
    add_cross(book, "x", "A", "B")
    book.add(Plant(plant="P", cross="x"))
    book.add(Plant(plant="K", cross="x", status="culled"))
    add_cross(book, "s", "P", "P")
    book.add(Plant(plant="F", cross="s", status="kept"))
    return book


@pytest.fixture(scope="module")
def placed() -> Placed:
    return place(choose(PedigreeNetwork.from_records(book()), Look(focus="P")))


def painted(placed: Placed, name: str = "light", scale: float = 1.0, **more) -> QImage:
    left, top, width, height = placed.bounds
    image = QImage(int(width * scale), int(height * scale), QImage.Format.Format_RGB32)
    image.fill(QColor(theme(name)["ground"]))
    painter = QPainter(image)
    try:
        painter.scale(scale, scale)
        painter.translate(-left, -top)
        paint(painter, placed, theme(name), detail=scale, **more)
    finally:
        painter.end()
    return image


def colour_at(image: QImage, placed: Placed, x: float, y: float) -> str:
    return image.pixelColor(int(x - placed.bounds[0]), int(y - placed.bounds[1])).name()


def test_stripe_shows_founder_shares_in_their_order(placed):
    image, colours = painted(placed), theme("light")
    tag = placed.block_of("P")
    numbers = dict(placed.view.founders)
    x = tag.x + sizes().stripe / 2
    assert colour_at(image, placed, x, tag.y + 10) == colours.founder(numbers["A"])
    assert colour_at(image, placed, x, tag.bottom - 10) == colours.founder(numbers["B"])


def bar_colours(image: QImage, placed: Placed, code: str) -> list[str]:
    tag = placed.block_of(code)
    y = tag.bottom - 5 - sizes().bar / 2
    left, right = tag.x + sizes().stripe + 8, tag.right - 9
    return [colour_at(image, placed, left + part * (right - left), y) for part in (0.25, 0.75)]


def test_fixation_bar_is_filled_by_f(placed):
    image, colours = painted(placed), theme("light")
    full, empty = colours["bar_full"], colours["bar_empty"]
    assert bar_colours(image, placed, "A") == [full, full]
    assert bar_colours(image, placed, "P") == [empty, empty]
    assert bar_colours(image, placed, "F") == [full, empty]


def test_clipped_corner_shows_the_ground(placed):
    image = painted(placed)
    tag = placed.block_of("F")
    assert colour_at(image, placed, tag.right - 2, tag.y + 2) == theme("light")["band"]


def test_kept_notch_is_cut_out(placed):
    image = painted(placed)
    kept, other = placed.block_of("F"), placed.block_of("P")
    for tag, same in ((kept, False), (other, True)):
        seen = colour_at(image, placed, tag.right - 4, tag.y + tag.height * 0.62)
        assert (seen == theme("light")["paper"]) == same


def test_seed_line_is_unbroken_and_pollen_line_is_not(placed):
    image = painted(placed)
    ink = QColor(theme("light")["line"])
    for role, unbroken in (("seed", True), ("pollen", False)):
        (points,) = (
            points
            for line in placed.lines
            if line.role == role
            for link, points in line.routes
            if link.knot == "cross:s"
        )
        (x, y0), (_, y1) = points[0], points[-1]
        tones = [
            QColor(colour_at(image, placed, x, y)).lightness() - ink.lightness() < 60
            for y in range(int(y0) + 6, int(y1) - 4)
        ]
        assert all(tones) == unbroken
        assert any(tones)


def test_focus_ring_has_the_one_accent(placed):
    accent = theme("light")["accent"]
    tag = placed.block_of("P")
    at = (tag.x - 5, tag.y + tag.height / 2)
    assert colour_at(painted(placed), placed, *at) == accent
    assert colour_at(painted(placed, focus=""), placed, *at) != accent


def test_lit_path_dims_the_rest(placed):
    lit = light(placed, [("A", "P")])
    assert "plant:P" in lit.blocks
    assert "plant:K" not in lit.blocks
    assert {link[2] for link in lit.links} == {"seed", "progeny"}
    plain, dimmed = painted(placed), painted(placed, lit=lit)
    tag = placed.block_of("B")
    spot = (tag.x + sizes().stripe / 2, tag.y + 20)
    assert colour_at(plain, placed, *spot) != colour_at(dimmed, placed, *spot)


@pytest.mark.parametrize("name", THEMES)
@pytest.mark.parametrize("scale", [0.1, 0.4, 1.0, 2.0])
def test_every_theme_and_scale_paints_something(placed, name, scale):
    scene = Scene(selected="A", hover="B", pins=("A", "F"), tints={"P": "#ffccaa"})
    image = painted(placed, name, scale, scene=scene)
    places = itertools.product(range(0, image.width(), 3), range(0, image.height(), 3))
    assert len({image.pixel(x, y) for x, y in places}) > 3


def test_clip_paints_what_lies_near_it_the_same(placed):
    tag = placed.block_of("P")
    clip = QRectF(tag.x, tag.y, tag.width, tag.height)
    whole, part = painted(placed), painted(placed, clip=clip, bands=False)
    x, y = tag.x + sizes().stripe / 2, tag.y + 10
    assert colour_at(whole, placed, x, y) == colour_at(part, placed, x, y)


def test_void_calls_do_not_use_up_none():
    """PySide6 6.12.0 on Python 3.11 loses a reference to None with every call (own measurement)."""
    held = QObject()
    before = sys.getrefcount(None)
    for _ in range(20_000):
        held.setObjectName("tag")
    assert sys.getrefcount(None) > before - 1_000


def test_a_moving_picture_carries_its_tags_as_images_and_lets_them_go(placed):
    left, top, width, height = placed.bounds

    def frame(scene: Scene) -> QImage:
        image = QImage(round(width), round(height), QImage.Format.Format_RGB32)
        image.fill(0xFFFFFF)
        painter = QPainter(image)
        try:
            painter.translate(-left, -top)
            paint(painter, placed, theme("light"), scene=scene)
        finally:
            painter.end()
        return image

    still = frame(Scene())
    first = frame(Scene(moved=lambda item: (0.0, 0.0)))
    tags = [item for item in placed.blocks if item.block.sort in ("tag", "pack", "chain")]
    assert len(placed.held["moving"]) == len(tags)
    again = frame(Scene(moved=lambda item: (0.0, 0.0)))
    assert first == again
    # The same to the eye: what differs is the smoothing of edges.
    differ = sum(
        abs(still.pixelColor(x, y).lightness() - first.pixelColor(x, y).lightness()) > 60
        for x in range(0, still.width(), 3)
        for y in range(0, still.height(), 3)
    )
    assert differ < 0.01 * still.width() * still.height() / 9
    frame(Scene())
    assert "moving" not in placed.held
