"""Ways of looking on the Pedigree page by menus and keys, each with its way back."""

from __future__ import annotations

from collections.abc import Callable

import pytest
from PySide6.QtCore import QPoint, Qt
from PySide6.QtWidgets import QMenu
from pytestqt.qtbot import QtBot

from pedigreeview.drawing.ghost import GHOST_TAG
from pedigreeview.drawing.ways import NEAR, Way
from pedigreeview.window.main_window import MainWindow

Settle = Callable[[], None]
LEFT = Qt.MouseButton.LeftButton
CTRL_SHIFT = Qt.KeyboardModifier.ControlModifier | Qt.KeyboardModifier.ShiftModifier


def choose(menu: QMenu, text: str) -> None:
    """Choose an entry of a menu that lies open, by its text."""
    inner = [one for held in menu.findChildren(QMenu) for one in held.actions()]
    action = next(one for one in [*menu.actions(), *inner] if one.text() == text)
    action.trigger()
    menu.close()


def tag_menu(window: MainWindow, code: str) -> QMenu:
    window.pedigree.canvas.menu_wanted.emit(code, QPoint(200, 200))
    menu = window.pedigree.stage.findChild(QMenu, options=Qt.FindChildOption.FindDirectChildrenOnly)
    assert menu is not None
    return menu


def shown(window: MainWindow) -> frozenset[str]:
    view = window.pedigree.view
    assert view is not None
    return view.shown() - view.aside


def test_two_pins_are_connected_by_keys_and_back_undoes_it(
    qtbot: QtBot, peas: MainWindow, settle: Settle
) -> None:
    page = peas.pedigree
    peas.show_plant("23-07")
    before = shown(peas)
    qtbot.keyClick(page.canvas, Qt.Key.Key_P)
    page.pin("23-61")
    settle()
    qtbot.keyClick(page.canvas, Qt.Key.Key_H, CTRL_SHIFT)
    assert page.way == Way("connection", other="23-61")
    assert shown(peas) == {"TP", "BA", "21-01-3", "21-02-2", "23-07", "23-61"}
    assert page.notes.isVisible()
    assert "How 23-07 and 23-61 are connected" in page.notes.text.text()
    assert ">TP</a>" in page.notes.text.text()
    qtbot.keyClick(peas, Qt.Key.Key_Left, Qt.KeyboardModifier.AltModifier)
    assert page.way == NEAR
    assert shown(peas) >= before
    assert not page.notes.isVisible()
    qtbot.mouseClick(peas.forward_button, LEFT)
    assert page.way.mode == "connection"
    qtbot.mouseClick(page.notes.near, LEFT)
    assert page.way == NEAR


def test_the_slip_connects_its_pair(qtbot: QtBot, peas: MainWindow, settle: Settle) -> None:
    page = peas.pedigree
    page.pin("23-07")
    page.pin("TP")
    settle()
    buttons = [b for b in page.slip.findChildren(type(peas.keep.button)) if b.isVisible()]
    button = next(b for b in buttons if b.text() == "How they connect")
    qtbot.mouseClick(button, LEFT)
    assert page.way == Way("connection", other="TP")
    assert "23-07</a> descends from" in page.notes.text.text()


def test_what_came_of_a_plant_from_its_menu(qtbot: QtBot, peas: MainWindow) -> None:
    page = peas.pedigree
    choose(tag_menu(peas, "TP"), "What came of it")
    assert page.way == Way("descent")
    assert page.focus == "TP"
    net = page.net
    assert net is not None
    left = net.descendants("TP") - shown(peas)
    assert f"{len(left):,} others are left out" in page.notes.text.text()
    assert all(not net.progeny(code) for code in left)
    qtbot.mouseClick(page.notes.all, LEFT)
    assert page.way == Way("descent", everything=True)
    assert "all its descendants" in page.notes.text.text()
    assert page.notes.all.text() == "Only those that matter"
    qtbot.mouseClick(page.notes.all, LEFT)
    assert page.way == Way("descent")
    qtbot.keyClick(page.canvas, Qt.Key.Key_G, CTRL_SHIFT)
    assert page.way == NEAR


def test_lineage_by_cytoplasm_by_keys(qtbot: QtBot, peas: MainWindow) -> None:
    page = peas.pedigree
    peas.show_plant("23-61")
    qtbot.keyClick(page.canvas, Qt.Key.Key_Y, CTRL_SHIFT)
    assert page.way == Way("cytoplasm")
    net = page.net
    assert net is not None
    assert {net.cytoplasm(code) for code in shown(peas)} == {"BA"}
    assert "by seed parents back to" in page.notes.text.text()


def test_the_unrelated_are_said_to_be_so(qtbot: QtBot, peas: MainWindow) -> None:
    page = peas.pedigree
    peas.show_plant("TP")
    choose(tag_menu(peas, "BA"), "How it is connected with TP")
    assert shown(peas) == {"TP", "BA"}
    assert "they share no ancestor in this book" in page.notes.text.text()


def test_a_way_asks_for_a_second_plant(qtbot: QtBot, peas: MainWindow) -> None:
    peas.show_plant("TP")
    qtbot.keyClick(peas.pedigree.canvas, Qt.Key.Key_H, CTRL_SHIFT)
    assert peas.pedigree.way == NEAR
    assert "Pin two plants" in peas.said.text()


def test_the_button_and_the_window_menu_offer_the_ways(qtbot: QtBot, peas: MainWindow) -> None:
    page = peas.pedigree
    menu = page.tools.ways_menu
    menu.aboutToShow.emit()
    texts = [action.text().replace("&", "") for action in menu.actions() if action.text()]
    assert texts == [
        "The neighbourhood",
        "How are these two connected",
        "What came of this",
        "Lineage by cytoplasm",
        "Compare two side by side",
    ]
    peas.show_page("checks")
    page.commands["way_descent"].trigger()
    assert peas.page() == "pedigree"
    assert page.way == Way("descent")


def test_another_plant_in_focus_ends_a_connection(qtbot: QtBot, peas: MainWindow) -> None:
    page = peas.pedigree
    page.ways.show_connection("23-07", "23-61")
    page.focus_on("TP")
    assert page.way == NEAR
    assert page.focus == "TP"


@pytest.mark.parametrize("way", ["descent", "cytoplasm"])
def test_depth_and_folds_work_on_every_way(qtbot: QtBot, peas: MainWindow, way: str) -> None:
    page = peas.pedigree
    peas.show_plant("23-07")
    page.go("23-07", "23-07", Way(way), say=True)  # type: ignore[arg-type]
    view = page.view
    assert view is not None
    tab = next((b for b in view.blocks if b.more_down and b.code), None)
    if tab is not None:
        page.unfold(f"down:{tab.code}")
        assert page.view is not None
        assert len(page.view.shown()) > len(view.shown())


# A cross that is only tried out -------------------------------------------------------------------


def test_a_trial_cross_hangs_between_its_plants_with_its_numbers(
    qtbot: QtBot, peas: MainWindow, settle: Settle
) -> None:
    page = peas.pedigree
    peas.show_plant("23-07")
    page.try_cross("23-07", "23-61")
    settle()
    canvas = page.canvas
    assert canvas.placed is not None
    tag = canvas.placed.block(GHOST_TAG)
    assert tag is not None
    assert tag.block.title == "23-07 × 23-61"
    # Two F2 plants of the same two pure lines: coancestry 1/2, so F of their progeny is 1/2.
    assert tag.block.subtitle == "F 0.5, coancestry 0.5"
    assert "23-07 × 23-61</b> is only tried out" in page.notes.text.text()
    assert page.look().ghost is not None
    qtbot.mouseClick(page.notes.put_away, LEFT)
    assert canvas.placed.block(GHOST_TAG) is None
    assert page.look().ghost is None


def test_a_trial_cross_far_from_the_picture_comes_into_focus(
    qtbot: QtBot, peas: MainWindow, settle: Settle
) -> None:
    page = peas.pedigree
    peas.show_plant("BA")
    page.go("", "BA", say=True)
    settle()
    page.try_cross("TP", "TP")
    settle()
    assert page.focus == "TP"
    assert page.canvas.placed is not None
    ghost = page.canvas.placed.block(GHOST_TAG)
    assert ghost is not None
    assert ghost.block.title == "TP ⊗"
    page.try_cross("TP", "no plant")
    assert page.look().ghost is not None
    assert page.look().ghost.pollen == "TP"  # type: ignore[union-attr]
