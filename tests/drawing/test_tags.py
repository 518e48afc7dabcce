"""A tag in a few pixels: tint and swatch, founders' edge, value, focus ring."""

from __future__ import annotations

import pytest
from PySide6.QtCore import QRectF
from PySide6.QtGui import QColor, QImage, QPainter

from pedigreeview.drawing.blocks import Block
from pedigreeview.drawing.tags import Dress, draw_swatch, draw_tag
from pedigreeview.drawing.theme import THEMES, sizes, theme

pytestmark = pytest.mark.usefixtures("gui")

TAG = QRectF(40, 40, 144, 60)


def block(title: str = "P-12", **more) -> Block:
    values = {"subtitle": "F2", "inbreeding": 0.5, "shares": (("a", 0.5), ("b", 0.5))}
    return Block("k", "tag", 0, (title,), title, **(values | more))


def painted(held: Block, dress: Dress, name: str = "light", detail: float = 1.0) -> QImage:
    image = QImage(240, 150, QImage.Format.Format_RGB32)
    image.fill(QColor(theme(name)["band"]))
    painter = QPainter(image)
    try:
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        draw_tag(painter, held, TAG, theme(name), {"a": 0, "b": 1}, detail=detail, dress=dress)
    finally:
        painter.end()
    return image


def swatch(dress: Dress, name: str) -> QImage:
    image = QImage(40, 30, QImage.Format.Format_RGB32)
    image.fill(QColor(theme(name)["ground"]))
    painter = QPainter(image)
    try:
        draw_swatch(painter, QRectF(2, 2, 36, 26), theme(name), dress)
    finally:
        painter.end()
    return image


@pytest.mark.parametrize("name", THEMES)
def test_a_tag_and_its_swatch_are_of_the_same_paper(name):
    """No hatching on the one that the other lacks: one tone beside the words."""
    dress = Dress(tint=theme(name).statuses["kept"])
    tag = painted(block(subtitle=""), dress, name)
    free = {tag.pixelColor(x, y).name() for x in range(120, 150, 3) for y in range(66, 84, 3)}
    small = swatch(dress, name)
    seen = {small.pixelColor(x, y).name() for x in range(8, 30, 2) for y in range(8, 24, 2)}
    assert free == seen == {theme(name).statuses["kept"]}


def test_a_culled_tag_has_the_tint_that_the_key_shows():
    shade = theme("light").statuses["culled"]
    image = painted(block(subtitle="", status="culled"), Dress(tint=shade))
    assert image.pixelColor(130, 74).name() == shade
    assert image != painted(block(subtitle=""), Dress(tint=shade))


def test_in_grey_both_carry_the_pattern_of_the_class():
    for number in (0, 3, 7):
        dress = Dress(mark=number, word="kept")
        small = swatch(dress, "grey")
        patch = [[small.pixel(14 + x, 10 + y) for x in range(12)] for y in range(10)]
        assert len({tone for row in patch for tone in row}) > 1
        assert painted(block(), dress, "grey") != painted(block(), Dress(word="kept"), "grey")


def test_a_mixed_pack_shows_all_its_tints_with_their_parts():
    kept, culled = (theme("light").statuses[word] for word in ("kept", "culled"))
    image = painted(block(subtitle=""), Dress(mixed=((kept, 0.25), (culled, 0.75))))
    row = [image.pixelColor(int(TAG.left() + x), 88).name() for x in (30, 60, 100, 130)]
    assert row == [kept, culled, culled, culled]


def test_paper_parts_the_founders_from_a_tint():
    shade = theme("light").statuses["kept"]
    x, y = TAG.left() + sizes().stripe + 1, 70
    image = painted(block(), Dress(tint=shade))
    paper, tinted = QColor(theme("light")["paper"]), QColor(shade)
    here = image.pixelColor(int(x), y)
    assert abs(here.lightness() - paper.lightness()) < abs(here.lightness() - tinted.lightness())
    assert image.pixelColor(int(x) + 3, y) == tinted


@pytest.mark.parametrize("detail", [0.5, 1.0])
def test_the_value_stands_at_one_place_whatever_the_code(detail):
    def words_at(title: str, subtitle: str) -> int:
        plain, told = (
            painted(block(title, subtitle=subtitle), Dress(word=word), detail=detail)
            for word in ("", "kept")
        )
        rows = range(78, 90)
        return min(x for x in range(240) for y in rows if plain.pixel(x, y) != told.pixel(x, y))

    places = {
        words_at(title, name) for title, name in (("A", ""), ("18-01-07-3c20", ""), ("B", "BC1F2"))
    }
    assert max(places) - min(places) <= 1


@pytest.mark.parametrize("name", THEMES)
def test_the_focus_is_never_faded(name):
    ring = Dress(focus=True)
    culled, kept = (painted(block(status=word), ring, name) for word in ("culled", "growing"))
    assert culled == kept
    # Elsewhere a culled plant is.
    assert painted(block(status="culled"), Dress(), name) != painted(block(), Dress(), name)


@pytest.mark.parametrize("detail", [0.3, 1.0, 2.0])
def test_the_ring_of_the_focus_is_three_pixels_thick_at_every_scale(detail):
    accent = QColor(theme("light")["accent"])
    image = painted(block(), Dress(focus=True), detail=detail)
    middle = int(TAG.center().y())
    row = [x for x in range(int(TAG.left())) if image.pixelColor(x, middle) == accent]
    assert len(row) + 1 >= 3 / min(detail, 1.0)
    # Its corners are heavier than its sides.
    corner = [
        x for x in range(int(TAG.left())) if image.pixelColor(x, int(TAG.top()) + 2) == accent
    ]
    assert len(corner) > len(row)
