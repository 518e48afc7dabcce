"""Large pictures are laid out off the window's thread; here every picture counts as large."""

from __future__ import annotations

import threading
from collections.abc import Callable

import pytest
from PySide6.QtCore import Qt
from pytestqt.qtbot import QtBot

from pedigreeview.drawing import placing
from pedigreeview.drawing.placing import Placed
from pedigreeview.window import page_compare, page_picture
from pedigreeview.window.main_window import MainWindow
from tests.window.conftest import TOMATOES

Settle = Callable[[], None]


@pytest.fixture
def large(monkeypatch: pytest.MonkeyPatch, peas: MainWindow) -> MainWindow:
    monkeypatch.setattr(page_picture, "AT_ONCE", 0)
    monkeypatch.setattr(page_compare, "AT_ONCE", 0)
    return peas


def test_it_is_laid_out_by_another_thread_and_its_card_comes_with_it(
    large: MainWindow, settle: Settle, monkeypatch: pytest.MonkeyPatch
) -> None:
    page, placed_by, real = large.pedigree, [], placing.place

    def place(*given: object, **also: object) -> Placed:
        placed_by.append(threading.current_thread())
        return real(*given, **also)  # type: ignore[arg-type]

    monkeypatch.setattr(placing, "place", place)
    before, card = page.placed, page.card.code
    page.focus_on("TP")
    assert (page.placed, page.card.code) == (before, card)
    settle()
    assert page.placed is not before
    assert page.placed.view.focus == page.card.code == "TP"
    assert placed_by
    assert threading.current_thread() not in placed_by


def test_the_focus_asked_for_last_is_the_one_that_comes(large: MainWindow, settle: Settle) -> None:
    page = large.pedigree
    for code in ("TP", "BA", "23-07", "21-01-3"):
        page.focus_on(code)
    settle()
    assert page.placed.view.focus == page.canvas.selected_code() == page.card.code == "21-01-3"


def test_a_fold_asked_for_on_the_way_is_open_when_the_picture_comes(
    large: MainWindow, settle: Settle
) -> None:
    page = large.pedigree
    page.focus_on("TP")
    page.unfold("down:TP")
    settle()
    assert page.placed.view.focus == "TP"
    assert page.shown is not None
    assert page.shown.unfolded == {"down:TP"}
    assert not page.behind


def test_another_book_is_not_overtaken_by_a_picture_of_the_former(
    large: MainWindow, settle: Settle
) -> None:
    page = large.pedigree
    page.focus_on("TP")
    large.open_path(TOMATOES)
    settle()
    assert large.opened is not None
    assert page.net is large.opened.net
    assert page.placed.view.focus == page.focus == page.card.code
    assert "TP" not in page.placed.view.shown()


def test_two_large_pictures_stand_side_by_side(
    qtbot: QtBot, large: MainWindow, settle: Settle
) -> None:
    page = large.pedigree
    page.focus_on("23-07")
    page.compare.show_beside("23-61")
    settle()
    assert page.placed.view.focus == "23-07"
    second = page.compare.canvas.placed
    assert second is not None
    assert second.view.focus == "23-61"
    assert not page.card.isVisible()
    page.compare.canvas.setFocus()
    qtbot.keyClick(page.compare.canvas, Qt.Key.Key_Up)
    qtbot.keyClick(page.compare.canvas, Qt.Key.Key_Return)
    page.compare.close()
    settle()
    assert page.compare.canvas.placed is None
    assert page.card.isVisible()
