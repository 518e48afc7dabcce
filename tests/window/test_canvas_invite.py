"""What an empty book and a book of one plant invite to: buttons by mouse and by key."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

import pytest
from PySide6.QtCore import QPoint, Qt
from PySide6.QtWidgets import QAbstractButton
from pytestqt.qtbot import QtBot

from pedigreeview.book.book import Book
from pedigreeview.book.book_file import BookFile
from pedigreeview.book.records import Plant
from pedigreeview.window.canvas_invite import Invitation
from pedigreeview.window.main_window import MainWindow

Settle = Callable[[], None]


@pytest.fixture
def empty(window: MainWindow, settle: Settle, tmp_path: Path) -> MainWindow:
    path = tmp_path / "new.pedbook"
    BookFile.create(path, Book()).close()
    window.open_path(path)
    settle()
    return window


@pytest.fixture
def one(empty: MainWindow, settle: Settle) -> MainWindow:
    plant = Plant(plant="V1", kind="variety", name="Only Pea", fixation=1.0)
    empty.desk.record("V1", lambda edit: edit.add(plant))
    settle()
    return empty


def _buttons(page: Invitation) -> dict[str, QAbstractButton]:
    return {
        name: getattr(page, name)
        for name in ("seed", "pollen", "cross", "table", "partner", "selfed")
        if getattr(page, name).isVisible()
    }


@pytest.mark.parametrize(
    ("name", "what"),
    [("seed", "variety"), ("pollen", "variety"), ("cross", "cross"), ("table", "table")],
)
def test_each_tag_of_an_empty_book_is_a_button(
    qtbot: QtBot, empty: MainWindow, name: str, what: str
) -> None:
    page = empty.pedigree.invitation
    page.wanted.disconnect()
    button = _buttons(page)[name]
    assert button.accessibleName() or button.text()
    with qtbot.waitSignal(page.wanted) as heard:
        qtbot.mouseClick(button, Qt.MouseButton.LeftButton)
    assert heard.args == [what]
    button.setFocus()
    with qtbot.waitSignal(page.wanted) as heard:
        qtbot.keyClick(button, Qt.Key.Key_Space)
    assert heard.args == [what]


def test_enter_presses_a_tag_and_the_form_opens(qtbot: QtBot, empty: MainWindow) -> None:
    button = empty.pedigree.invitation.seed
    button.setFocus()
    qtbot.keyClick(button, Qt.Key.Key_Return)
    assert empty.bench.form is not None
    assert empty.bench.form.NAME == "variety"


def test_the_tags_lie_apart_and_within_the_picture(empty: MainWindow, settle: Settle) -> None:
    page, ground = empty.pedigree.invitation, empty.pedigree.canvas.viewport()
    for percent, width, height in ((100, 1280, 800), (200, 1280, 800), (100, 900, 600)):
        empty.set_text_size(percent)
        empty.resize(width, height)
        settle()
        held = [button.geometry() for button in _buttons(page).values()]
        assert len(held) == 4
        for at, rect in enumerate(held):
            assert ground.rect().contains(rect), (percent, width)
            assert not any(rect.intersects(other) for other in held[:at])
    empty.set_text_size(100)


def test_tools_that_do_nothing_are_disabled(empty: MainWindow, settle: Settle) -> None:
    tools = empty.pedigree.tools
    assert not any(item.isEnabled() for item in tools.items)
    plant = Plant(plant="V1", kind="variety", fixation=1.0)
    empty.desk.record("V1", lambda edit: edit.add(plant))
    settle()
    assert all(item.isEnabled() for item in tools.items)


def test_one_plant_is_offered_a_partner_and_a_selfing(qtbot: QtBot, one: MainWindow) -> None:
    page, canvas = one.pedigree.invitation, one.pedigree.canvas
    assert set(_buttons(page)) == {"partner", "selfed"}
    plant, card = canvas.rect_of("V1"), one.pedigree._card_place()
    for button in _buttons(page).values():
        assert not button.geometry().intersects(plant)
        assert not button.geometry().intersects(card)
    qtbot.mouseClick(page.selfed, Qt.MouseButton.LeftButton)
    form = one.bench.form
    assert form is not None
    assert (form.NAME, form.way.value, form.seed.value) == ("cross", "selfing", "V1")


def test_they_go_with_the_plant(qtbot: QtBot, one: MainWindow) -> None:
    page, canvas = one.pedigree.invitation, one.pedigree.canvas
    plant, partner = canvas.rect_of("V1"), page.partner.geometry()
    canvas.zoom_by(0.7, QPoint(10, 10))
    canvas.grab()
    moved = canvas.rect_of("V1")
    assert moved.center().x() < plant.center().x() - 50
    now = page.partner.geometry()
    assert now.width() < partner.width()
    assert abs(now.center().y() - moved.center().y()) <= 3
    assert not now.intersects(moved)
    assert abs(now.center().x() - moved.center().x()) < 2 * plant.width()


def test_with_a_second_plant_they_are_gone(one: MainWindow, settle: Settle) -> None:
    plant = Plant(plant="V2", kind="variety", fixation=1.0)
    one.desk.record("V2", lambda edit: edit.add(plant))
    settle()
    assert not _buttons(one.pedigree.invitation)
    assert one.pedigree.invitation.code is None
