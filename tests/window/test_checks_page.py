"""The Checks page written with: mends, 'this is right', the filter, the ways to the records."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QLabel, QLineEdit, QPushButton
from pytestqt.qtbot import QtBot

from pedigreeview.book.book import Book, BookSettings
from pedigreeview.book.book_file import BookFile
from pedigreeview.book.records import Cross, Plant, Pollination
from pedigreeview.window.book_page import LazyPage
from pedigreeview.window.main_window import MainWindow
from pedigreeview.window.records_page import RecordsPage

Settle = Callable[[], None]
LEFT = Qt.MouseButton.LeftButton


@pytest.fixture
def wrong(window: MainWindow, settle: Settle, tmp_path: Path) -> MainWindow:
    """Thirty pollinations with more fruits than flowers, and a planned cross of a culled plant."""
    book = Book(settings=BookSettings(crop="pea"))
    for code, status in (("A", "growing"), ("B", "culled")):
        book.plants[code] = Plant(code, kind="plant", status=status)
    book.crosses["24-01"] = Cross("24-01", "A", "B", intended="cross", state="planned")
    book.crosses["23-01"] = Cross("23-01", "A", "B", intended="cross", state="made")
    for number in range(30):
        key = f"P{number:02d}"
        book.pollinations[key] = Pollination(key, "23-01", "2023-06-01", flowers=4, set=7)
    path = tmp_path / "wrong.pedbook"
    BookFile.create(path, book).close()
    window.open_path(path)
    settle()
    window.show_page("checks")
    settle()
    return window


def buttons(window: MainWindow, name: str) -> list[QPushButton]:
    found = window.checks.findChildren(QPushButton, name)
    return [button for button in found if button.isVisibleTo(window.checks)]


def texts(window: MainWindow) -> str:
    return "\n".join(label.text() for label in window.checks.findChildren(QLabel))


def test_a_mend_is_made_by_its_button_and_the_list_stays_where_it_was(
    qtbot: QtBot, wrong: MainWindow, settle: Settle
) -> None:
    bar = wrong.checks.area.verticalScrollBar()
    wanted = next(b for b in buttons(wrong, "mend") if "flowers of P15" in b.text())
    wrong.checks.area.ensureWidgetVisible(wanted)
    at = bar.value()
    assert at > 0
    count = len(wrong.opened.problems)  # type: ignore[union-attr]
    qtbot.mouseClick(wanted, LEFT)
    settle()
    qtbot.waitUntil(lambda: bar.value() == at)
    assert wrong.desk.book is not None
    assert wrong.desk.book.pollinations["P15"].flowers == 7
    assert len(wrong.opened.problems) == count - 1  # type: ignore[union-attr]
    assert wrong.rail.tag("checks")._count == str(count - 1)
    assert wrong.desk.undo_words == "set the flowers of P15 to 7"


def test_what_is_right_is_remembered_with_its_reason_and_taken_back(
    qtbot: QtBot, wrong: MainWindow, settle: Settle
) -> None:
    page = wrong.checks
    page.kinds.setCurrentIndex(page.kinds.findData("culled_before_use"))
    settle()
    (right,) = buttons(wrong, "right")
    qtbot.mouseClick(right, LEFT)
    field = page.findChildren(QLineEdit)[-1]
    qtbot.keyClicks(field, "Pollen is in the freezer")
    qtbot.keyClick(field, Qt.Key.Key_Return)
    settle()
    assert wrong.desk.book is not None
    (check,) = wrong.desk.book.accepted_checks
    assert (check.kind, check.why) == ("culled_before_use", "Pollen is in the freezer")
    assert page.kinds.findData("culled_before_use") == -1
    assert wrong.rail.tag("checks")._count == "30"
    assert not page.accepted.isVisible()
    qtbot.mouseClick(page.accepted_button, LEFT)
    assert page.accepted.isVisible()
    assert "Pollen is in the freezer" in texts(wrong)
    (back,) = buttons(wrong, "back")
    qtbot.mouseClick(back, LEFT)
    settle()
    assert wrong.desk.book is not None
    assert not wrong.desk.book.accepted_checks
    assert wrong.rail.tag("checks")._count == "31"


def test_esc_leaves_the_reason_and_nothing_is_called_right(
    qtbot: QtBot, wrong: MainWindow, settle: Settle
) -> None:
    right = buttons(wrong, "right")[0]
    qtbot.mouseClick(right, LEFT)
    field = wrong.checks.findChildren(QLineEdit)[-1]
    qtbot.keyClick(field, Qt.Key.Key_Escape)
    settle()
    assert right.hasFocus()
    assert wrong.desk.book is not None
    assert not wrong.desk.book.accepted_checks


def test_the_filter_shows_one_kind(wrong: MainWindow, settle: Settle) -> None:
    page = wrong.checks
    assert page.kinds.isVisible()
    page.kinds.setCurrentIndex(page.kinds.findData("culled_before_use"))
    settle()
    labels = page.findChildren(QLabel)
    shown = "\n".join(label.text() for label in labels if label.isVisibleTo(page))
    assert "is planned with B" in shown
    assert "fruits set of" not in shown


def test_a_record_that_is_wrong_is_a_step_away(
    qtbot: QtBot, wrong: MainWindow, settle: Settle
) -> None:
    wrong.checks.record_wanted.emit("pollinations", "P15")
    settle()
    assert wrong.page() == "records"
    page = wrong.book_pages["records"]
    held = page.page() if isinstance(page, LazyPage) else page
    assert isinstance(held, RecordsPage)
    assert held.table() == "pollinations"
    assert held.view.currentIndex().row() == held.model.row_of("P15")
    links = [
        label.text() for label in wrong.checks.findChildren(QLabel) if "record:" in label.text()
    ]
    assert any("record:pollinations:P15" in text for text in links)


def test_a_loop_can_never_be_called_right(
    window: MainWindow, settle: Settle, tmp_path: Path
) -> None:
    path = tmp_path / "loop.csv"
    path.write_text("plant,seed_parent,pollen_parent\nA,B,\nB,A,\n")
    window.open_path(path)
    settle()
    window.show_page("checks")
    kinds = window.checks.kinds
    kinds.setCurrentIndex(kinds.findData("own_ancestor"))
    settle()
    assert "own ancestor" in texts(window)
    assert not buttons(window, "right")


def test_a_reason_half_typed_outlives_an_edit_elsewhere_and_the_book(
    qtbot: QtBot, wrong: MainWindow, settle: Settle
) -> None:
    right = buttons(wrong, "right")[0]
    qtbot.mouseClick(right, LEFT)
    (field,) = wrong.checks.findChildren(QLineEdit)
    qtbot.keyClicks(field, "counted twi")
    wrong.desk.record("note", lambda edit: edit.update(edit.book.plants["A"], note="x"))
    settle()

    def typed() -> list[str]:
        fields = wrong.checks.findChildren(QLineEdit)
        return [one.text() for one in fields if one.isVisibleTo(wrong.checks)]

    assert typed() == ["counted twi"]
    path = wrong.opened.path  # type: ignore[union-attr]
    wrong.close_book()
    wrong.open_path(path)
    settle()
    wrong.show_page("checks")
    assert typed() == ["counted twi"]
    field = next(
        one for one in wrong.checks.findChildren(QLineEdit) if one.isVisibleTo(wrong.checks)
    )
    qtbot.keyClicks(field, "ce")
    qtbot.keyClick(field, Qt.Key.Key_Return)
    settle()
    assert wrong.desk.book is not None
    assert [check.why for check in wrong.desk.book.accepted_checks] == ["counted twice"]
    assert typed() == []
