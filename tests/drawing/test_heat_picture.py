"""The heat map: tones in even steps, values to read, the tree, and files of three kinds."""

from __future__ import annotations

from pathlib import Path

import numpy as np
import pytest
from PySide6.QtCore import Qt
from PySide6.QtGui import QImage, QPainter

from pedigreeview.book.faults import Fault
from pedigreeview.drawing.heat_file import heat_sheet, save_heat
from pedigreeview.drawing.heat_picture import (
    HeatFrame,
    HeatPicture,
    HeatShowing,
    paint_heat,
)
from pedigreeview.drawing.theme import contrast, theme
from pedigreeview.planning.clustering import cluster, relationship_table

VALUES = np.array([[0.5, 0.25, 0.0], [0.25, 0.5, 0.125], [0.0, 0.125, 1.0]])
CODES = ("A", "B", "C 2")


def picture(look: str = "light", **more: object) -> HeatPicture:
    return HeatPicture(CODES, VALUES, theme(look), **more)  # type: ignore[arg-type]


def painted(held: HeatPicture, frame: HeatFrame, **showing: object) -> QImage:
    image = QImage(round(frame.width), round(frame.height), QImage.Format.Format_RGB32)
    image.fill(0xFFFFFF)
    painter = QPainter(image)
    paint_heat(painter, held, frame, HeatShowing(**showing))  # type: ignore[arg-type]
    painter.end()
    return image


def frame_of(held: HeatPicture, cell: float) -> HeatFrame:
    return HeatFrame(cell, 0.0, 0.0, *held.whole(cell))


@pytest.mark.parametrize("look", ["light", "dark", "grey"])
def test_a_larger_value_has_a_deeper_tone_in_every_theme(look: str) -> None:
    held = picture(look)
    paper = theme(look)["paper"]
    depths = [contrast(paper, tone) for tone in held.colours]
    assert depths == sorted(depths)
    assert depths[0] == 1.0
    assert len(set(held.colours)) == len(held.colours)
    assert min(contrast(theme(look)["ink"], tone) for tone in held.colours) >= 4.5


@pytest.mark.parametrize(
    ("most", "top"), [(0.1, 0.125), (0.25, 0.25), (0.3, 0.5), (1.0, 1.0), (1.4, 2.0)]
)
def test_the_scale_ends_at_a_plain_fraction(most: float, top: float) -> None:
    values = np.full((2, 2), most)
    assert HeatPicture(("A", "B"), values, theme("light")).top == top


def test_a_square_is_found_where_it_is_painted() -> None:
    held = picture()
    frame = frame_of(held, 40.0)
    for row in range(3):
        for column in range(3):
            middle = held.rect(frame, row, column).center()
            assert held.at(frame, middle.x(), middle.y()) == (row, column)
    assert held.at(frame, 1.0, 1.0) is None
    assert held.at(frame, held.left + 3 * 40 + 1, held.above + 5) is None
    assert held.row_at(frame, held.left - 10, held.above + 45) == 1
    assert held.row_at(frame, held.left + 85, held.above - 10) == 2
    assert held.row_at(frame, 2.0, 2.0) == -1


def test_scrolling_moves_the_squares_under_the_pointer() -> None:
    held = picture()
    frame = HeatFrame(40.0, 40.0, 80.0, held.left + 60, held.above + 30)
    assert held.at(frame, held.left + 5, held.above + 5) == (2, 1)
    rows, columns = held.shown(frame)
    assert (rows.start, columns.start) == (2, 1)


def test_squares_have_the_tone_of_their_value() -> None:
    held = picture()
    frame = frame_of(held, 12.0)
    image = painted(held, frame)
    for row, column in ((0, 0), (0, 2), (2, 2), (1, 2)):
        middle = held.rect(frame, row, column).center().toPoint()
        tone = held.colours[int(held.steps[row, column])]
        assert image.pixelColor(middle).name() == tone


def test_values_are_printed_where_there_is_room() -> None:
    held = picture()
    small, large = painted(held, frame_of(held, 12.0)), painted(held, frame_of(held, 60.0))

    def tones(image: QImage, cell: float) -> int:
        rect = held.rect(frame_of(held, cell), 1, 2).toAlignedRect().adjusted(2, 2, -2, -2)
        part = image.copy(rect)
        return len({part.pixel(x, y) for x in range(part.width()) for y in range(part.height())})

    assert tones(small, 12.0) == 1
    assert tones(large, 60.0) > 1
    assert held.word(1, 2) == "0.125"


def test_what_is_brought_out_is_seen() -> None:
    held = picture()
    frame = frame_of(held, 30.0)
    plain = painted(held, frame)
    for more in ({"cursor": (1, 1)}, {"chosen": (0, 2)}, {"hover": (2, 0)}, {"marked": 1}):
        assert painted(held, frame, **more) != plain
    assert painted(held, frame, lit=frozenset({0})) != plain


def test_the_tree_and_the_bars_take_their_room() -> None:
    tree = cluster(relationship_table(VALUES))
    plain, full = picture(), picture(tree=tree, groups=((0, 1),))
    assert plain.tree_room == 0
    assert full.left > plain.left
    frame = frame_of(full, 20.0)
    image = painted(full, frame)
    bar = image.pixelColor(round(full.left - 5), round(full.above + 20))
    assert bar.name() == theme("light")["ink_soft"]
    assert len(tree.merges) == 2


def test_a_table_of_thousands_is_one_small_image() -> None:
    count = 1200
    held = HeatPicture(tuple(map(str, range(count))), np.eye(count), theme("light"), text=1.0)
    small = held.small_image(0.25)
    assert (small.width(), small.height()) == (300, 300)
    assert held.small_image(0.25) is small
    frame = HeatFrame(0.25, 0.0, 0.0, *held.whole(0.25))
    assert not painted(held, frame).isNull()


def test_halves_of_a_large_image_give_the_same_tones_as_the_image_itself() -> None:
    count = 1200
    at = np.arange(count)
    values = np.minimum(at[:, None], at[None, :]) / count
    held = HeatPicture(tuple(map(str, range(count))), values, theme("light"), text=1.0)
    assert [half.width() for half in held.halved] == [600, 300]
    small = held.small_image(0.4)  # made out of the half, 600 wide
    direct = held.image.scaled(
        480,
        480,
        Qt.AspectRatioMode.IgnoreAspectRatio,
        Qt.TransformationMode.SmoothTransformation,
    )
    for place in range(20, 480, 50):
        one, other = small.pixelColor(place, 240), direct.pixelColor(place, 240)
        assert abs(one.red() - other.red()) <= 4
        assert abs(one.blue() - other.blue()) <= 4
    assert HeatPicture(("A",), np.eye(1), theme("light"), text=1.0).halved == ()


@pytest.mark.parametrize("kind", ["svg", "pdf", "png"])
@pytest.mark.parametrize("look", ["light", "grey"])
def test_it_is_saved(tmp_path: Path, kind: str, look: str) -> None:
    sheet = heat_sheet(
        picture(look), title="Peas", scale="Coancestry θ", notes=["Base: none."], date="2024-05-01"
    )
    path = save_heat(sheet, tmp_path / f"heat.{kind}")
    data = path.read_bytes()
    start = {"svg": b"<?xml", "pdf": b"%PDF", "png": b"\x89PNG"}[kind]
    assert data.startswith(start)
    if kind == "svg":
        text = data.decode()
        assert "Peas" in text
        assert "Drawn on 2024-05-01." in text
        assert "0.125" in text


def test_another_ending_is_refused(tmp_path: Path) -> None:
    sheet = heat_sheet(picture(), title="Peas", scale="θ")
    with pytest.raises(Fault, match=r"\.gif"):
        save_heat(sheet, tmp_path / "heat.gif")
    with pytest.raises(Fault, match="too many"):
        save_heat(sheet, tmp_path / "heat.png", dpi=100_000)
    assert list(tmp_path.iterdir()) == []


def test_nothing_at_all_is_painted_without_plants() -> None:
    held = HeatPicture((), np.zeros((0, 0)), theme("light"))
    frame = HeatFrame(10.0, 0.0, 0.0, 100.0, 80.0)
    assert painted(held, frame).pixelColor(50, 40).name() == "#ffffff"
