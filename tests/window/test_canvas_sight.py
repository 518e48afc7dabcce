"""What is in sight where not all of a picture has room, and what a change of size gives back."""

from __future__ import annotations

import pytest
from PySide6.QtCore import QPoint, QPointF, QRectF, Qt
from PySide6.QtWidgets import QWidget
from pytestqt.qtbot import QtBot

from pedigreeview import read
from pedigreeview.drawing.placing import place
from pedigreeview.drawing.view import Look, choose
from pedigreeview.drawing.ways import Way
from pedigreeview.network import PedigreeNetwork
from pedigreeview.places import demo
from pedigreeview.window.canvas import PedigreeCanvas
from pedigreeview.window.canvas_edges import beyond, sign_rects
from tests.benchmarks.garden import garden

FOCUS = "V003"
YOUNG = "06-0054-1"
LATE = "13-0366-2"
RIGHT = "02-0023-1"
"""Stands with its parents and progeny at the right of its picture."""


@pytest.fixture(scope="module")
def net() -> PedigreeNetwork:
    return PedigreeNetwork.from_records(garden(400))


@pytest.fixture(scope="module")
def deep() -> PedigreeNetwork:
    return PedigreeNetwork.from_records(garden(1500))


@pytest.fixture(scope="module")
def tomato() -> PedigreeNetwork:
    return read(demo("a_leaf_for_hollin_plate"))


def opened(
    qtbot: QtBot, net: PedigreeNetwork, look: Look, size: tuple[int, int], text: float = 1.0
) -> PedigreeCanvas:
    canvas = PedigreeCanvas()
    canvas.reduced_motion = True
    qtbot.addWidget(canvas)
    canvas.resize(*size)
    canvas.set_text_scale(text)
    canvas.show()
    qtbot.waitExposed(canvas)
    canvas.show_placed(place(choose(net, look)), animate=False)
    return canvas


def cut_and_bare(canvas: PedigreeCanvas) -> list[tuple[float, float]]:
    """Across and down, pixels cut off at one edge and bare at the other, of tags level with it."""
    clear = canvas.clear_area()
    ends: list[tuple[list[float], list[float]]] = [([], []), ([], [])]
    assert canvas.placed is not None
    for item in canvas.placed.blocks:
        start, end = canvas.to_view(item.x, item.y), canvas.to_view(item.right, item.bottom)
        middle = (start + end) / 2
        if clear.top() < middle.y() < clear.bottom():
            ends[0][0].append(start.x() - clear.left())
            ends[0][1].append(clear.right() - end.x())
        if clear.left() < middle.x() < clear.right():
            ends[1][0].append(start.y() - clear.top())
            ends[1][1].append(clear.bottom() - end.y())
    return [(min(*map(min, way)), max(*map(min, way))) for way in ends]


@pytest.mark.parametrize("size", [(1150, 640), (800, 520), (560, 600)])
@pytest.mark.parametrize(
    "look",
    [
        Look(focus=FOCUS, up=3, down=3),
        Look(focus=YOUNG, up=4, down=2),
        Look(focus=FOCUS, way=Way("descent")),
        Look(focus=LATE, way=Way("connection", other="06-0170-1")),
        Look(focus=LATE, way=Way("connection", other="03-0104-1")),
    ],
)
def test_at_first_sight_nothing_is_cut_off_while_the_other_side_is_bare(
    qtbot: QtBot,
    net: PedigreeNetwork,
    deep: PedigreeNetwork,
    look: Look,
    size: tuple[int, int],
) -> None:
    canvas = opened(qtbot, deep if look.focus == LATE else net, look, size)
    assert beyond(canvas), "the picture is larger than its window"
    assert canvas.clear_area().contains(QRectF(canvas.rect_of(look.focus or "")))
    for cut, bare in cut_and_bare(canvas):
        assert cut >= -0.5 or bare <= 25


@pytest.mark.parametrize("other", ["06-0170-1", "08-0235-3", "09-0262-6", "11-0322-2"])
def test_both_plants_of_a_connection_are_in_sight_where_they_can_be_read(
    qtbot: QtBot, deep: PedigreeNetwork, other: str
) -> None:
    look = Look(focus=LATE, way=Way("connection", other=other))
    canvas = opened(qtbot, deep, look, (1150, 640))
    assert not canvas.shows_all()
    for code in (LATE, other):
        assert canvas.clear_area().contains(QRectF(canvas.rect_of(code))), code
    assert canvas.zoom() >= canvas.least_scale() * 8 / 9 - 1e-6


def sight(canvas: PedigreeCanvas) -> tuple[float, float, float]:
    corner = canvas.to_picture(QPointF(0, 0))
    return canvas.zoom(), corner.x(), corner.y()


@pytest.mark.parametrize("look", [Look(focus=FOCUS, up=1, down=1), Look(focus=FOCUS, up=3, down=3)])
@pytest.mark.parametrize("by_hand", [False, True])
def test_another_size_of_type_and_back_gives_back_what_was_shown(
    qtbot: QtBot, net: PedigreeNetwork, look: Look, by_hand: bool
) -> None:
    canvas = opened(qtbot, net, look, (1150, 640))
    if by_hand:
        canvas.zoom_by(1.3)
        canvas.show_code(FOCUS)
    before = sight(canvas)
    # The tools about the picture take another room before its own type changes.
    canvas.resize(1030, 533)
    canvas.set_text_scale(2.0)
    assert sight(canvas) != before
    canvas.resize(1150, 640)
    canvas.set_text_scale(1.0)
    assert sight(canvas) == before
    canvas.set_text_scale(2.0)
    canvas.resize(1030, 533)
    canvas.set_text_scale(1.0)
    canvas.resize(1150, 640)
    assert sight(canvas) == before


def test_a_move_by_hand_in_between_is_kept(qtbot: QtBot, net: PedigreeNetwork) -> None:
    canvas = opened(qtbot, net, Look(focus=FOCUS, up=3, down=3), (1150, 640))
    before = sight(canvas)
    canvas.set_text_scale(2.0)
    canvas.zoom_by(1.5)
    canvas.set_text_scale(1.0)
    assert canvas.zoom() == pytest.approx(1.2 * 1.5 / 2, rel=0.4)
    assert canvas.zoom() > before[0]


@pytest.mark.parametrize("text", [1.0, 2.0])
def test_a_picture_nobody_moved_is_looked_at_afresh_in_a_window_of_another_size(
    qtbot: QtBot, net: PedigreeNetwork, text: float
) -> None:
    look = Look(focus=YOUNG, up=3, down=2)
    canvas = opened(qtbot, net, look, (1150, 640))
    canvas.resize(760, 500)
    canvas.set_text_scale(text)
    assert sight(canvas) == sight(opened(qtbot, net, look, (760, 500), text))


def test_what_was_moved_by_hand_is_not_looked_at_afresh(qtbot: QtBot, net: PedigreeNetwork) -> None:
    canvas = opened(qtbot, net, Look(focus=YOUNG, up=3, down=2), (900, 600))
    view, spot = canvas.viewport(), QPoint(500, 300)
    qtbot.mousePress(view, Qt.MouseButton.MiddleButton, pos=spot)
    qtbot.mouseMove(view, spot + QPoint(30, 20))
    qtbot.mouseRelease(view, Qt.MouseButton.MiddleButton, pos=spot + QPoint(30, 20))
    scale, place_ = canvas.zoom(), canvas.where(YOUNG)
    canvas.resize(1000, 700)
    assert canvas.zoom() == scale
    assert canvas.where(YOUNG) == place_


def test_room_made_for_a_card_is_no_other_window(qtbot: QtBot, net: PedigreeNetwork) -> None:
    stage = QWidget()
    qtbot.addWidget(stage)
    stage.resize(1150, 640)
    canvas = PedigreeCanvas(stage)
    canvas.reduced_motion = True
    canvas.resize(850, 640)
    stage.show()
    qtbot.waitExposed(stage)
    canvas.show_placed(place(choose(net, Look(focus=YOUNG, up=3, down=2))), animate=False)
    before = sight(canvas)
    canvas.resize(1150, 640)
    assert sight(canvas) == before
    stage.resize(1200, 640)
    canvas.resize(1200, 640)
    assert sight(canvas) != before


@pytest.mark.parametrize("high", [300, 350, 440])
def test_in_large_type_the_focus_keeps_clear_of_the_signs_and_its_name_of_them(
    qtbot: QtBot, tomato: PedigreeNetwork, high: int
) -> None:
    met = 0
    for focus in ("17-02-5", "18-01-07", "HP"):
        canvas = opened(qtbot, tomato, Look(focus=focus), (1020, 533), 2.0)
        # A card that is folded takes a strip below the picture.
        canvas.hold_still()
        canvas.resize(1020, high)
        own = QRectF(canvas.rect_of(focus))
        clear = canvas.clear_area()
        edge = 24 * 2 + 4
        more = beyond(canvas)
        top = clear.top() + (edge if "above" in more else 0)
        assert own.top() >= top
        assert own.bottom() <= clear.bottom() - (edge if "below" in more else 0)
        assert canvas.placed is not None
        for rect, _ in sign_rects(canvas).values():
            assert not rect.intersects(own)
            if rect.left() >= clear.left():
                continue
            met += 1
            for band in canvas.placed.bands:
                start, end = canvas.to_view(0, band.start).y(), canvas.to_view(0, band.end).y()
                assert rect.bottom() <= start or rect.top() >= end
    assert met


def test_a_sign_stands_beside_the_names_where_they_leave_no_room(
    qtbot: QtBot, tomato: PedigreeNetwork
) -> None:
    canvas = opened(qtbot, tomato, Look(focus="18-01-07"), (1020, 533), 2.0)
    canvas.zoom_by(4.0)
    canvas.show_code("18-01-07")
    assert canvas.placed is not None
    placed, clear = canvas.placed, canvas.clear_area()
    item = placed.block_of("18-01-07")
    assert item is not None
    band = next(band for band in placed.bands if band.start <= item.y <= band.end)
    # One strip fills the window from edge to edge.
    high = int((band.end - band.start) * canvas.zoom()) - 20
    canvas.resize(1020, high)
    canvas._origin = QPointF(item.x + item.width / 2 - 620 / canvas.zoom(), band.start + 2)
    rect = sign_rects(canvas)["left"][0]
    assert rect.left() >= clear.left()


@pytest.mark.parametrize("free", [50.0, 200.0])
def test_a_pin_moves_the_picture_only_where_ground_is_bare_and_tags_are_cut_off(
    qtbot: QtBot, net: PedigreeNetwork, free: float
) -> None:
    places = []
    for pinned in (False, True):
        canvas = opened(qtbot, net, Look(focus=RIGHT, up=2, down=2), (1150, 640))
        assert canvas.placed is not None
        old = canvas.placed
        look = Look(focus=RIGHT, up=2, down=2, pins=(RIGHT,) if pinned else ())
        right = max(item.right for item in old.blocks)
        corner = right + (free - canvas.viewport().width()) / canvas.zoom()
        canvas._origin = QPointF(corner, canvas._origin.y())
        canvas._settle_pan()
        canvas.show_placed(place(choose(net, look), old), animate=False)
        places.append(canvas.where(RIGHT).x())
        cut, bare = cut_and_bare(canvas)[0]
        assert cut < 0
    assert (places[0] == places[1]) == (free < 60)
    assert free < 60 or bare <= 25


def test_a_picture_that_comes_later_is_looked_at_at_the_scale_asked_for(
    qtbot: QtBot, net: PedigreeNetwork
) -> None:
    canvas = PedigreeCanvas()
    canvas.reduced_motion = True
    qtbot.addWidget(canvas)
    canvas.resize(900, 600)
    canvas.show()
    qtbot.waitExposed(canvas)
    placed = place(choose(net, Look(focus=YOUNG, up=3, down=2)))
    canvas.look_at(0.5)
    canvas.show_placed(placed, animate=False)
    assert canvas.zoom() == 0.5
    assert canvas.clear_area().contains(QRectF(canvas.rect_of(YOUNG)))
    canvas.show_placed(None)
    canvas.show_placed(placed, animate=False)
    assert canvas.zoom() == opened(qtbot, net, Look(focus=YOUNG, up=3, down=2), (900, 600)).zoom()
