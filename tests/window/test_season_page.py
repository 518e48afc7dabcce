"""The Season page by real clicks and keys: what is due, the board, the takes."""

from __future__ import annotations

import datetime
from collections.abc import Callable
from pathlib import Path

import pytest
from PySide6.QtCore import QPoint, QPointF, Qt
from PySide6.QtGui import QDragEnterEvent, QDropEvent
from PySide6.QtWidgets import QApplication, QPushButton
from pytestqt.qtbot import QtBot

from pedigreeview.book.book import Book
from pedigreeview.window.book_page import LazyPage
from pedigreeview.window.main_window import MainWindow
from pedigreeview.window.season_page import SeasonPage
from tests.window.conftest import PEAS
from tests.window.season_book import ago, season_book

Settle = Callable[[], None]


def page_of(window: MainWindow) -> SeasonPage:
    lazy = window.book_pages["season"]
    assert isinstance(lazy, LazyPage)
    page = lazy.page()
    assert isinstance(page, SeasonPage)
    return page


@pytest.fixture
def season(window: MainWindow, settle: Settle, tmp_path: Path) -> SeasonPage:
    window.open_path(season_book(tmp_path))
    settle()
    window.show_page("season")
    settle()
    return page_of(window)


def book_of(window: MainWindow) -> Book:
    book = window.desk.book
    assert book is not None
    return book


def button(page: SeasonPage, text: str, words: str) -> QPushButton:
    """The button with a text in the item that says some words."""
    for item in page.due.items:
        if words in item.one.words:
            for at in range(item.buttons.count()):
                found = item.buttons.itemAt(at)
                widget = found.widget() if found is not None else None
                if isinstance(widget, QPushButton) and widget.text() == text:
                    return widget
    raise AssertionError(f"no {text!r} for {words!r}")


def click(qtbot: QtBot, widget: QPushButton) -> None:
    qtbot.mouseClick(widget, Qt.MouseButton.LeftButton)


# Due --------------------------------------------------------------------------------------------


def test_the_part_on_show_is_marked_in_the_list(season: SeasonPage):
    assert [item.text().split("  ")[0] for item in season.parts.selectedItems()] == ["Due"]


def test_work_stands_in_groups_with_what_it_rests_on(season: SeasonPage):
    on = datetime.date.today()
    states = [item.one.state(on) for item in season.due.items]
    assert states == sorted(states, key=["late", "now", "soon", "any time"].index)
    assert {"late", "any time"} <= set(states)
    late = next(item for item in season.due.items if item.one.work == "cover_off")
    assert late.one.key == "P1"
    assert "common practice" in " ".join(
        label.text() for label in late.findChildren(type(season.title))
    )


def test_a_cover_is_taken_off_by_one_click_and_put_back_by_undo(
    qtbot: QtBot, window: MainWindow, season: SeasonPage, settle: Settle
):
    click(qtbot, button(season, "Done", "Take the bag off A-1"))
    settle()
    assert book_of(window).pollinations["P1"].extra == {"cover_off": ago(0)}
    assert not any(item.one.work == "cover_off" for item in season.due.items[:1])
    assert season.due.undo.isVisible()
    click(qtbot, season.due.undo.undo)
    settle()
    assert book_of(window).pollinations["P1"].extra == {}
    assert not season.due.undo.isVisible()
    button(season, "Done", "Take the bag off A-1")


def test_a_harvest_opens_its_form_with_the_cross_filled_in(
    qtbot: QtBot, window: MainWindow, season: SeasonPage
):
    click(qtbot, button(season, "Harvest …", "Harvest 3 fruits of A-1"))
    form = window.bench.form
    assert form is not None
    assert form.NAME == "harvest"
    assert form.cross.text() == "A-1"


def test_the_filter_and_the_day_choose_what_is_shown(
    qtbot: QtBot, season: SeasonPage, settle: Settle
):
    kind = season.due.kind
    kind.setFocus()
    at = kind.findData("pollinate")
    assert kind.itemText(at) == "Pollinate (2)"
    qtbot.keyClicks(kind, "Poll")
    assert {item.one.work for item in season.due.items} == {"pollinate"}
    kind.setCurrentIndex(0)
    season.due.day.editor.selectAll()
    qtbot.keyClicks(season.due.day.editor, ago(-500))
    settle()
    assert not any(item.one.work == "harvest" for item in season.due.items)


def test_up_and_down_go_from_one_thing_to_the_next(
    qtbot: QtBot, window: MainWindow, season: SeasonPage, settle: Settle
):
    window.activateWindow()
    season.go_to("due")
    settle()
    first = QApplication.focusWidget()
    assert first is not None
    assert season.due.items[0].isAncestorOf(first)
    qtbot.keyClick(first, Qt.Key.Key_Down)
    second = QApplication.focusWidget()
    assert second is not None
    assert season.due.items[1].isAncestorOf(second)
    qtbot.keyClick(second, Qt.Key.Key_Up)
    assert QApplication.focusWidget() is first


def test_every_button_says_what_it_is_for(season: SeasonPage):
    names = [button.accessibleName() for button in season.due._buttons()]
    assert all(item.one.words in name for item, name in zip(season.due.items, names, strict=True))


def test_a_caution_for_the_crop_defers_to_local_rules(season: SeasonPage):
    assert season.caution_area.isVisible()
    assert season.caution_title.text() == "Mind, with sweet pea"
    assert "poisonous" in season.cautions.text()


def test_an_empty_list_says_what_to_do(window: MainWindow, settle: Settle, season: SeasonPage):
    season.due.kind.setCurrentIndex(season.due.kind.findData("count_seedlings"))
    assert season.due.items == []
    texts = [button.text() for button in season.due._inner.findChildren(QPushButton)]
    assert "All work" in texts


# The board --------------------------------------------------------------------------------------


def stages(page: SeasonPage) -> dict[str, list[str]]:
    return {
        stage: [card.cross for card in made.model.cards]
        for stage, made in page.board.columns.items()
        if made.model.cards
    }


def test_crosses_stand_in_the_stage_that_their_records_show(season: SeasonPage, settle: Settle):
    season.go_to("board")
    season.board.year.setCurrentIndex(0)
    settle()
    assert stages(season) == {
        "planned": ["A-3", "A-4"],
        "pollinated": ["A-2"],
        "set": ["A-1"],
        "raised": ["A-6"],
        "ended": ["A-5"],
    }


def test_keys_go_over_the_board_and_move_a_planned_cross(
    qtbot: QtBot, window: MainWindow, season: SeasonPage, settle: Settle
):
    window.activateWindow()
    season.go_to("board")
    season.board.year.setCurrentIndex(0)
    settle()
    season.board.focus_first()
    planned = season.board.columns["planned"]
    qtbot.keyClick(planned.list, Qt.Key.Key_Down)
    assert season.board._at == "A-4"
    qtbot.keyClick(planned.list, Qt.Key.Key_Right, Qt.KeyboardModifier.ControlModifier)
    settle()
    cross = book_of(window).crosses["A-4"]
    assert (cross.state, cross.made_on) == ("made", ago(0))
    assert stages(season)["pollinated"] == ["A-2", "A-4"]
    assert season.board.undo.next.text() == "Pollination …"
    pollinated = season.board.columns["pollinated"]
    qtbot.keyClick(pollinated.list, Qt.Key.Key_Left, Qt.KeyboardModifier.ControlModifier)
    settle()
    cross = book_of(window).crosses["A-4"]
    assert (cross.state, cross.made_on) == ("planned", "")
    qtbot.keyClick(planned.list, Qt.Key.Key_Delete)
    settle()
    assert book_of(window).crosses["A-4"].state == "skipped"
    click(qtbot, season.board.undo.undo)
    settle()
    assert book_of(window).crosses["A-4"].state == "planned"


def test_a_cross_with_work_recorded_cannot_be_skipped(
    qtbot: QtBot, window: MainWindow, season: SeasonPage, settle: Settle
):
    season.go_to("board")
    settle()
    season.board._move("A-2", "pollinated", "ended")
    settle()
    assert book_of(window).crosses["A-2"].state == "made"
    assert "so it was made" in season.board.undo.text.text()
    season.board._move("A-1", "set", "harvested")
    assert "once its harvest is written down" in season.board.undo.text.text()


def test_a_tag_dragged_to_the_end_is_skipped(
    window: MainWindow, season: SeasonPage, settle: Settle
):
    season.go_to("board")
    settle()
    planned, ended = season.board.columns["planned"], season.board.columns["ended"]
    data = planned.model.mimeData([planned.model.index(0, 0)])
    spot, action = QPoint(20, 20), Qt.DropAction.MoveAction
    held, none = Qt.MouseButton.LeftButton, Qt.KeyboardModifier.NoModifier
    enter = QDragEnterEvent(spot, action, data, held, none)
    ended.list.dragEnterEvent(enter)
    assert enter.isAccepted()
    ended.list.dropEvent(QDropEvent(QPointF(spot), action, data, held, none))
    settle()
    assert book_of(window).crosses["A-3"].state == "skipped"


def test_the_buttons_of_a_tag_open_the_form_of_its_stage(
    qtbot: QtBot, window: MainWindow, season: SeasonPage, settle: Settle
):
    season.go_to("board:A-2")
    settle()
    flow = season.board._buttons
    buttons = {}
    for at in range(flow.count()):
        found = flow.itemAt(at)
        widget = found.widget() if found is not None else None
        if isinstance(widget, QPushButton):
            buttons[widget.text()] = widget
    click(qtbot, buttons["Fruits …"])
    form = window.bench.form
    assert form is not None
    assert form.NAME == "fruits"
    click(qtbot, buttons["Show the record"])
    assert window.page() == "records"


def test_enter_shows_the_seed_parent_in_the_picture(
    qtbot: QtBot, window: MainWindow, season: SeasonPage, settle: Settle
):
    window.activateWindow()
    season.go_to("board:A-4")
    settle()
    qtbot.keyClick(season.board.columns["planned"].list, Qt.Key.Key_Return)
    settle()
    assert window.page() == "pedigree"
    assert window.pedigree.focus == "WC"


def test_each_tag_is_read_out_with_its_counts(season: SeasonPage, settle: Settle):
    season.go_to("board")
    season.board.year.setCurrentIndex(0)
    settle()
    model = season.board.columns["set"].model
    said = model.data(model.index(0, 0), Qt.ItemDataRole.AccessibleTextRole)
    assert said == "A-1, TP × BA, 3 set of 5 flowers"


# Takes ------------------------------------------------------------------------------------------


def test_takes_show_numbers_and_say_when_they_are_too_few(season: SeasonPage, settle: Settle):
    season.go_to("takes")
    settle()
    table = season.takes.table
    rows = [
        [item.text() if (item := table.item(row, at)) else "" for at in range(table.columnCount())]
        for row in range(table.rowCount())
    ]
    # Exact interval of 3 of 5: 14.66 to 94.73% (Clopper and Pearson; from memory of the table).
    assert rows[0][:4] == ["TP", "3 of 5", "60%", "15 to 95%, too few to tell"]
    assert rows[1][:3] == ["BA", "not counted", ""]
    assert "1 pollination lacks" in season.takes.note.text()
    season.takes.grouping.setCurrentIndex(season.takes.grouping.findData("by"))
    settle()
    assert [table.item(row, 0).text() for row in range(table.rowCount())] == ["RW", "AN"]


def test_a_book_that_is_only_read_shows_the_season_and_offers_to_keep_it(
    qtbot: QtBot, window: MainWindow, settle: Settle
):
    window.open_path(PEAS)
    settle()
    window.show_page("season")
    settle()
    page = page_of(window)
    assert page.due.items
    page.go_to("sheets")
    assert page.sheets.stack.currentIndex() == 0
    assert "only read" in page.sheets.why_empty.text()


def test_parts_are_made_beforehand_bit_by_bit_and_told_when_shown(
    window: MainWindow, season: SeasonPage, settle: Settle, qtbot: QtBot
) -> None:
    qtbot.waitUntil(lambda: list(season._made) == ["due", "board", "takes", "sheets"])
    assert len(season.board._columns) == len(season.board.columns)
    first = list(season.due.items)
    window.desk.record("a remark", lambda edit: edit.update(edit.book.plants["A"], notes="tall"))
    settle()
    # What is due has not changed, so its lines were left alone.
    assert season.due.items == first
    assert "takes" in season._stale
    season.go_to("takes")
    assert "takes" not in season._stale
