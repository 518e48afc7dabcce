"""A way of looking is opened at a size that shows it from where it comes from to the focus."""

from __future__ import annotations

import pytest
from pytestqt.qtbot import QtBot

from pedigreeview import read
from pedigreeview.drawing.placing import place
from pedigreeview.drawing.view import Look, choose
from pedigreeview.drawing.ways import Way
from pedigreeview.network import PedigreeNetwork
from pedigreeview.places import demo
from pedigreeview.window.canvas import PedigreeCanvas


@pytest.fixture(scope="module")
def tomato() -> PedigreeNetwork:
    return read(demo("a_leaf_for_hollin_plate"))


@pytest.mark.parametrize(
    ("focus", "way", "ends"),
    [
        ("18-01-07-3", Way("cytoplasm"), ("HP", "18-01-07-3")),
        ("18-01-07", Way("connection", other="17-01-1"), ("HP", "18-01-07", "17-01-1")),
    ],
)
@pytest.mark.parametrize("height", [420, 520])
def test_the_way_shows_from_its_origin_to_the_focus(
    qtbot: QtBot,
    tomato: PedigreeNetwork,
    focus: str,
    way: Way,
    ends: tuple[str, ...],
    height: int,
) -> None:
    canvas = PedigreeCanvas()
    qtbot.addWidget(canvas)
    canvas.resize(1000, height)
    canvas.show()
    qtbot.waitExposed(canvas)
    canvas.show_placed(place(choose(tomato, Look(focus=focus, way=way))), animate=False)
    canvas.first_look()
    for code in ends:
        assert canvas.viewport().rect().contains(canvas.rect_of(code)), code
    assert canvas.zoom() >= canvas.least_scale()
