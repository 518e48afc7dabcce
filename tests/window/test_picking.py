"""Picking many plants by real clicks, drags and keys, in the picture and on the map."""

from __future__ import annotations

from collections.abc import Callable

import numpy as np
import pytest
from PySide6.QtCore import QPoint, Qt
from PySide6.QtGui import QAccessible
from pytestqt.qtbot import QtBot

from pedigreeview.book.book import Book
from pedigreeview.book.records import Cross, Plant
from pedigreeview.drawing.overview import overview_of
from pedigreeview.drawing.placing import place
from pedigreeview.drawing.view import Look, choose
from pedigreeview.network import PedigreeNetwork
from pedigreeview.window.canvas import PedigreeCanvas
from pedigreeview.window.groups import groups
from pedigreeview.window.main_window import MainWindow
from pedigreeview.window.overview import BookMap
from tests.window.conftest import TOMATOES

LEFT, SHIFT = Qt.MouseButton.LeftButton, Qt.KeyboardModifier.ShiftModifier
CONTROL = Qt.KeyboardModifier.ControlModifier


@pytest.fixture(scope="module")
def net() -> PedigreeNetwork:
    book = Book()
    for code in ("A", "B"):
        book.add(Plant(plant=code, kind="variety"))
    book.add(Cross(cross="x", seed_parent="A", pollen_parent="B", intended="cross"))
    for number in range(6):
        book.add(Plant(plant=f"P{number}", cross="x", status="kept" if number < 2 else ""))
    book.add(Cross(cross="s", seed_parent="P0", pollen_parent="P0", intended="selfing"))
    book.add(Plant(plant="F2-1", cross="s"))
    return PedigreeNetwork.from_records(book)


@pytest.fixture
def canvas(qtbot: QtBot, net: PedigreeNetwork) -> PedigreeCanvas:
    made = PedigreeCanvas()
    made.resize(1000, 700)
    qtbot.addWidget(made)
    made.show()
    qtbot.waitExposed(made)
    made.show_placed(place(choose(net, Look(focus="P0"))), animate=False)
    return made


@pytest.fixture
def book_map(qtbot: QtBot, net: PedigreeNetwork) -> BookMap:
    made = BookMap()
    made.resize(900, 600)
    qtbot.addWidget(made)
    made.show()
    qtbot.waitExposed(made)
    made.show_overview(overview_of(net))
    return made


@pytest.fixture(params=["canvas", "book_map"])
def view(request: pytest.FixtureRequest) -> PedigreeCanvas | BookMap:
    return request.getfixturevalue(request.param)


def test_shift_and_a_click_picks_and_puts_back(view, qtbot: QtBot) -> None:
    with qtbot.waitSignal(view.picked) as heard:
        qtbot.mouseClick(view.viewport(), LEFT, SHIFT, view.where("A"))
    assert heard.args == [("A",)]
    qtbot.mouseClick(view.viewport(), LEFT, SHIFT, view.where("P1"))
    assert view.picked_codes() == ("A", "P1")
    qtbot.mouseClick(view.viewport(), LEFT, SHIFT, view.where("A"))
    assert view.picked_codes() == ("P1",)


def test_a_band_picks_what_it_touches_and_adds(view, qtbot: QtBot) -> None:
    view.set_picked(["F2-1"])
    inside = view.rect_of("A").united(view.rect_of("B")).adjusted(2, 2, -2, -2)
    port = view.viewport()
    qtbot.mousePress(port, LEFT, SHIFT, inside.topLeft())
    qtbot.mouseMove(port, inside.center())
    qtbot.mouseMove(port, inside.bottomRight())
    assert view.picking.band.contains(inside.center())
    assert view.moving()
    qtbot.mouseRelease(port, LEFT, SHIFT, inside.bottomRight())
    assert set(view.picked_codes()) == {"F2-1", "A", "B"}
    assert view.picking.band.isNull()


def test_escape_gives_up_a_band_then_puts_all_back(view, qtbot: QtBot) -> None:
    view.set_picked(["A"])
    port = view.viewport()
    qtbot.mousePress(port, LEFT, SHIFT, QPoint(150, 5))
    qtbot.mouseMove(port, QPoint(500, 400))
    qtbot.keyClick(view, Qt.Key.Key_Escape)
    qtbot.mouseRelease(port, LEFT, SHIFT, QPoint(500, 400))
    assert view.picked_codes() == ("A",)
    with qtbot.waitSignal(view.picked) as heard:
        qtbot.keyClick(view, Qt.Key.Key_Escape)
    assert heard.args == [()]


def test_control_a_picks_all_that_is_shown(view, net: PedigreeNetwork, qtbot: QtBot) -> None:
    qtbot.keyClick(view, Qt.Key.Key_A, CONTROL)
    assert set(view.picked_codes()) == set(net.codes)


def test_space_picks_the_plant_that_the_keys_are_at(view, qtbot: QtBot) -> None:
    view.set_selected("P0")
    qtbot.keyClick(view, Qt.Key.Key_Space)
    assert view.picked_codes() == ("P0",)
    qtbot.keyClick(view, Qt.Key.Key_Space)
    assert view.picked_codes() == ()


def test_a_pick_can_be_seen_without_colour_and_is_told_a_screen_reader(view) -> None:
    before = view.grab().toImage()
    view.set_picked(["P1"])
    after = view.grab().toImage()
    spot = view.rect_of("P1")
    ratio = after.devicePixelRatio()
    area = [
        (x, y)
        for x in range(spot.left() - 8, spot.left() + 8)
        for y in range(spot.bottom() - 8, spot.bottom() + 8)
    ]
    grey = [
        abs(
            before.pixelColor(int(x * ratio), int(y * ratio)).lightness()
            - after.pixelColor(int(x * ratio), int(y * ratio)).lightness()
        )
        for x, y in area
    ]
    assert max(grey) > 80, "the mark differs in lightness, not in hue alone"
    told = QAccessible.queryAccessibleInterface(view)
    held = {
        told.child(at).text(QAccessible.Text.Name).split(",")[0]
        for at in range(told.childCount())
        if told.child(at).state().selected
    }
    assert "P1" in held
    assert "A" not in held


def test_a_click_on_a_pack_picks_all_of_it(canvas: PedigreeCanvas, qtbot: QtBot) -> None:
    with qtbot.assertNotEmitted(canvas.unfold_wanted):
        qtbot.mouseClick(canvas.viewport(), LEFT, SHIFT, canvas.where("P4"))
    assert canvas.picked_codes() == ("P2", "P3", "P4", "P5")


def test_a_picked_tag_is_looked_at_but_keeps_the_focus(
    canvas: PedigreeCanvas, qtbot: QtBot
) -> None:
    with qtbot.waitSignal(canvas.selected), qtbot.assertNotEmitted(canvas.focus_wanted):
        qtbot.mouseClick(canvas.viewport(), LEFT, SHIFT, canvas.where("B"))
    assert canvas.selected_code() == "B"


def test_the_map_leaves_out_what_a_filter_leaves_out(book_map: BookMap, qtbot: QtBot) -> None:
    book_map.set_faded(["A"])
    book_map.set_hidden(["B"])
    qtbot.keyClick(book_map, Qt.Key.Key_A, CONTROL)
    assert not {"A", "B"} & set(book_map.picked_codes())
    assert len(book_map.picked_codes()) == 7


def test_rows_touched_are_those_whose_rectangles_are(book_map: BookMap) -> None:
    from PySide6.QtCore import QRect

    from pedigreeview.drawing.overview_picks import codes_inside

    rng = np.random.default_rng(4)
    overview = book_map.overview
    assert overview is not None
    for _ in range(40):
        x, y, wide, high = rng.integers(0, 500, 4).tolist()
        band = QRect(x + book_map.margin(), y, wide + 1, high + 1)
        found = set(codes_inside(overview, book_map.frame(), band))
        sure = {
            c for c in overview.codes if band.intersects(book_map.rect_of(c).adjusted(2, 2, -2, -2))
        }
        may = {
            c for c in overview.codes if band.intersects(book_map.rect_of(c).adjusted(-2, -2, 2, 2))
        }
        assert sure <= found <= may


def test_the_picked_plants_are_a_group_that_stands_first(net: PedigreeNetwork) -> None:
    name, codes = groups(net, (), ("P1", "gone", "A"))[0]
    assert (name, codes) == ("The picked plants", ("P1", "A"))
    assert groups(net, ())[0][0] == "Plants kept"


def test_picks_are_the_same_in_picture_and_map_and_other_pages_hear(
    peas: MainWindow, settle: Callable[[], None], qtbot: QtBot
) -> None:
    canvas = peas.pedigree.canvas
    code = canvas.visible_codes()[0]
    with qtbot.waitSignal(peas.pedigree.picked) as heard:
        qtbot.mouseClick(canvas.viewport(), LEFT, SHIFT, canvas.where(code))
    assert heard.args == [(code,)]
    assert peas.exploring.picked == (code,)
    peas.show_page("map")
    settle()
    shown = peas.map.map
    assert shown.picked_codes() == (code,)
    bar = peas.exploring.bars[1]
    assert bar.isVisible()
    assert bar.label.text() == "1 plant picked"
    with qtbot.waitSignal(peas.map.picked) as heard:
        qtbot.keyClick(shown, Qt.Key.Key_A, CONTROL)
    assert len(heard.args[0]) == len(peas.opened.net.codes)
    assert canvas.picked_codes() == heard.args[0]
    qtbot.mouseClick(bar.clear, LEFT)
    assert canvas.picked_codes() == shown.picked_codes() == ()
    assert not bar.isVisible()


def test_the_bar_opens_the_numbers_of_the_picked(
    peas: MainWindow, settle: Callable[[], None], qtbot: QtBot
) -> None:
    peas.exploring.pick(("TP", "BA"))
    qtbot.mouseClick(peas.exploring.bars[0].group, LEFT)
    settle()
    assert peas.dialog is not None
    assert peas.dialog.choose.currentText() == "The picked plants (2)"  # type: ignore[attr-defined]


def test_another_book_has_no_picks_of_the_one_before(
    peas: MainWindow, settle: Callable[[], None]
) -> None:
    peas.exploring.pick(("TP", "BA"))
    assert peas.exploring.picked == ("TP", "BA")
    peas.open_path(TOMATOES)
    settle()
    assert peas.exploring.picked == peas.pedigree.canvas.picked_codes() == ()
