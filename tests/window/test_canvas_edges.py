"""A picture larger than its window: codes stay readable, and the edges say what lies beyond."""

from __future__ import annotations

import pytest
from PySide6.QtCore import QPoint, QPointF, QRectF, Qt
from pytestqt.qtbot import QtBot

from pedigreeview.drawing.placing import place
from pedigreeview.drawing.tags import FAR_CODE
from pedigreeview.drawing.view import Look, choose
from pedigreeview.network import PedigreeNetwork
from pedigreeview.window.canvas import PedigreeCanvas
from pedigreeview.window.canvas_edges import beyond, sign_rects
from tests.benchmarks.garden import garden

LEFT = Qt.MouseButton.LeftButton
FOCUS = "V003"


@pytest.fixture(scope="module")
def net() -> PedigreeNetwork:
    return PedigreeNetwork.from_records(garden(400))


@pytest.fixture
def canvas(qtbot: QtBot, net: PedigreeNetwork) -> PedigreeCanvas:
    canvas = PedigreeCanvas()
    canvas.reduced_motion = True
    canvas.resize(900, 600)
    qtbot.addWidget(canvas)
    canvas.show()
    qtbot.waitExposed(canvas)
    canvas.show_placed(place(choose(net, Look(focus=FOCUS, up=3, down=3))), animate=False)
    return canvas


def tags(canvas: PedigreeCanvas) -> list[str]:
    assert canvas.placed is not None
    return [item.block.key for item in canvas.placed.blocks if item.block.codes]


def in_sight(canvas: PedigreeCanvas) -> set[str]:
    """Keys of the tags of which three quarters or more can be seen, each way, beside the names."""
    area = canvas.clear_area()
    assert canvas.placed is not None
    found = set()
    for item in canvas.placed.blocks:
        corner, end = canvas.to_view(item.x, item.y), canvas.to_view(item.right, item.bottom)
        wide, high = (end.x() - corner.x()) / 4, (end.y() - corner.y()) / 4
        inner = QRectF(corner, end).adjusted(wide, high, -wide, -high)
        if item.block.codes and area.contains(inner):
            found.add(item.block.key)
    return found


def test_fit_keeps_codes_readable_about_the_focus_and_the_whole_is_one_step_on(
    canvas: PedigreeCanvas,
) -> None:
    assert len(tags(canvas)) > 60
    canvas.fit()
    assert canvas.zoom() * FAR_CODE >= 9.0 - 1e-6
    assert canvas.viewport().rect().contains(canvas.rect_of(FOCUS))
    assert 5 < len(in_sight(canvas)) < len(tags(canvas))
    canvas.fit()
    assert len(in_sight(canvas)) == len(tags(canvas))
    assert canvas.zoom() * FAR_CODE < 9.0
    canvas.fit()
    assert canvas.zoom() * FAR_CODE >= 9.0 - 1e-6


def test_a_fitted_picture_is_fitted_again_in_a_window_of_another_size(
    canvas: PedigreeCanvas,
) -> None:
    canvas.fit()
    canvas.resize(700, 500)
    assert canvas.zoom() * FAR_CODE >= 9.0 - 1e-6
    assert canvas.viewport().rect().contains(canvas.rect_of(FOCUS))
    canvas.fit()
    canvas.resize(1000, 640)
    assert len(in_sight(canvas)) == len(tags(canvas)), "the whole was asked for"
    canvas.zoom_by(2.0)
    now = canvas.zoom()
    canvas.resize(900, 600)
    assert canvas.zoom() == now


@pytest.mark.parametrize("zoom", [0.2, 0.41, 0.8, 2.0])
def test_every_tag_is_in_sight_or_counted_at_one_edge(canvas: PedigreeCanvas, zoom: float) -> None:
    canvas.fit()
    canvas.zoom_by(zoom / canvas.zoom())
    assert len(in_sight(canvas)) + sum(beyond(canvas).values()) == len(tags(canvas))


def test_a_click_on_the_sign_of_an_edge_goes_that_way_until_there_is_no_more(
    canvas: PedigreeCanvas, qtbot: QtBot
) -> None:
    canvas.fit()
    seen = in_sight(canvas)
    for way in ("left", "right"):
        for _ in range(30):
            signs = sign_rects(canvas)
            if way not in signs:
                break
            before = beyond(canvas)[way]
            spot = signs[way][0].center().toPoint()
            with qtbot.assertNotEmitted(canvas.focus_wanted):
                qtbot.mouseClick(canvas.viewport(), LEFT, pos=spot)
            assert beyond(canvas).get(way, 0) < before
            seen |= in_sight(canvas)
        assert way not in beyond(canvas)
    area, level = canvas.clear_area(), set()
    for item in canvas.placed.blocks:
        top, end = canvas.to_view(item.x, item.y).y(), canvas.to_view(item.x, item.bottom).y()
        quarter = (end - top) / 4
        if item.block.codes and area.top() <= top + quarter and end - quarter <= area.bottom():
            level.add(item.block.key)
    assert level <= seen


def test_signs_lie_in_the_viewport_and_say_their_number(canvas: PedigreeCanvas) -> None:
    canvas.fit()
    area = QRectF(canvas.viewport().rect())
    counts = beyond(canvas)
    assert set(counts) & {"left", "right"}
    for way, (rect, words) in sign_rects(canvas).items():
        assert area.contains(rect)
        assert words == f"{counts[way]} more"
        under = [key for key in tags(canvas) if rect.intersects(QRectF(canvas.rect_of(key)))]
        assert under == []
    image = canvas.grab().toImage()
    rect = next(iter(sign_rects(canvas).values()))[0].toRect()
    shades = {
        image.pixel(x, y)
        for x in range(rect.left(), rect.right())
        for y in range(rect.top(), rect.bottom())
    }
    assert len(shades) > 5


@pytest.mark.parametrize("zoom", [0.42, 0.55, 0.69, 1.0, 2.0])
def test_the_number_on_a_tab_can_be_read_and_clicked_at_every_zoom(
    canvas: PedigreeCanvas, qtbot: QtBot, zoom: float
) -> None:
    assert canvas.placed is not None
    item = next(i for i in canvas.placed.blocks if i.block.sort == "tag" and i.block.more_down)
    key = f"down:{item.block.code}"
    canvas.fit()
    canvas.zoom_by(zoom / canvas.zoom())
    canvas.show_code(item.block.code)
    rect = canvas.rect_of(key)
    assert rect.height() >= 12
    assert rect.width() >= 6 * len(str(item.block.more_down)) + 6
    other = sign_rects(canvas).values()
    assert not any(sign.contains(QPointF(rect.center())) for sign, _ in other)
    with qtbot.waitSignal(canvas.unfold_wanted) as heard:
        qtbot.mouseClick(canvas.viewport(), LEFT, pos=rect.center() + QPoint(0, 1))
    assert heard.args == [key]


def test_what_lies_below_the_names_of_generations_is_not_clicked(
    canvas: PedigreeCanvas,
) -> None:
    canvas.zoom_by(1.5)
    left = canvas.clear_area().left()
    assert left > 80
    assert any(item.x < canvas.to_picture(QPointF(left, 0)).x() for item in canvas.placed.blocks)
    spot = QPoint(round(left) - 30, 0)
    for y in range(0, canvas.viewport().height(), 6):
        spot.setY(y)
        assert canvas.part_at(spot) == ""
        assert canvas.at(spot) == ""


def test_the_fit_says_what_the_next_one_does(canvas: PedigreeCanvas) -> None:
    said: list[bool] = []
    canvas.all_next.connect(said.append)
    canvas.fit()
    assert said == [True]
    canvas.fit()
    assert said == [True, False]
    canvas.fit()
    canvas.zoom_by(1.3)
    assert said == [True, False, True, False]


def test_with_less_room_all_tags_stay_in_sight_if_they_can(
    qtbot: QtBot, net: PedigreeNetwork
) -> None:
    canvas = PedigreeCanvas()
    canvas.reduced_motion = True
    canvas.resize(1600, 900)
    qtbot.addWidget(canvas)
    canvas.show()
    qtbot.waitExposed(canvas)
    canvas.show_placed(place(choose(net, Look(focus=FOCUS, up=1, down=1))), animate=False)
    canvas.fit()
    canvas.zoom_by(0.7)
    canvas.hold_still()
    assert len(in_sight(canvas)) == len(tags(canvas))
    content = canvas._content().width() * canvas.zoom() + canvas.clear_area().left()
    for width in range(1500, int(content) + 20, -60):
        scale = canvas.zoom()
        canvas.resize(width, 900)
        assert len(in_sight(canvas)) == len(tags(canvas))
        assert canvas.zoom() == scale


@pytest.mark.parametrize("code", ["02-0018-1", "04-0034-1", "06-0054-1"])
@pytest.mark.parametrize("size", [(900, 600), (640, 480)])
def test_at_first_sight_and_with_less_room_both_parents_are_there(
    qtbot: QtBot, net: PedigreeNetwork, code: str, size: tuple[int, int]
) -> None:
    canvas = PedigreeCanvas()
    canvas.reduced_motion = True
    canvas.resize(*size)
    qtbot.addWidget(canvas)
    canvas.show()
    qtbot.waitExposed(canvas)
    canvas.show_placed(place(choose(net, Look(focus=code, up=2, down=2))), animate=False)
    wanted = canvas._with_parents()
    assert wanted is not None
    clear = canvas.clear_area()
    if wanted.width() * canvas.least_scale() > clear.width() - 120:
        pytest.skip("parents too far apart to be read in so small a window")
    for width in (size[0], size[0] - 100):
        canvas.resize(width, size[1])
        clear = canvas.clear_area()
        for plant in (code, *net.parent_codes(code)):
            assert clear.contains(QRectF(canvas.rect_of(plant))), plant


def test_without_a_picture_there_is_bare_ground(qtbot: QtBot) -> None:
    canvas = PedigreeCanvas()
    canvas.resize(420, 200)
    qtbot.addWidget(canvas)
    image = canvas.grab().toImage()
    assert {image.pixel(x, y) for x in range(0, 420, 3) for y in range(200)} == {image.pixel(5, 5)}


def test_signs_of_two_edges_never_lie_on_one_another(canvas: PedigreeCanvas) -> None:
    canvas.set_text_scale(2.0)
    canvas.fit()
    met = 0
    for wide, high in ((726, 300), (500, 300), (726, 220)):
        canvas.resize(wide, high)
        for code in tags(canvas)[::4]:
            canvas.show_code(code)
            signs = [rect for rect, _ in sign_rects(canvas).values()]
            met += len(signs) == 4
            for at, one in enumerate(signs):
                assert not any(one.intersects(other) for other in signs[at + 1 :])
    assert met
