"""The bench: nothing typed is lost to another form, a late answer, or a closing window."""

from __future__ import annotations

import threading
from collections.abc import Callable
from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from pedigreeview import read
from pedigreeview.book.book_file import BookFile
from pedigreeview.book.edits import Edit
from pedigreeview.book.faults import Fault
from pedigreeview.book.records import Plant
from pedigreeview.places import demo
from pedigreeview.window.app import telling
from pedigreeview.window.forms.form import Form
from pedigreeview.window.main_window import MainWindow

Settle = Callable[[], None]


@pytest.fixture
def book(tmp_path: Path) -> Path:
    path = tmp_path / "peas.pedbook"
    BookFile.create(path, read(demo("two_peas_both_ways")).book).close()
    return path


@pytest.fixture
def kept(window: MainWindow, settle: Settle, book: Path) -> MainWindow:
    window.open_path(book)
    settle()
    return window


def on_bench(window: MainWindow) -> Form:
    assert window.bench.form is not None
    return window.bench.form


def typed(window: MainWindow, field: str, text: str) -> Form:
    form = on_bench(window)
    form._fields[field].set_text(text)
    return form


def test_what_was_typed_comes_back_after_another_form(
    qtbot: QtBot, kept: MainWindow, settle: Settle
) -> None:
    kept.writing.open("variety")
    first = typed(kept, "name", "Half a name")
    qtbot.keyClick(kept, Qt.Key.Key_F12)
    assert on_bench(kept) is not first
    qtbot.keyClick(on_bench(kept), Qt.Key.Key_Escape)
    assert on_bench(kept) is first
    assert first._fields["name"].text() == "Half a name"
    qtbot.keyClick(first, Qt.Key.Key_Return)
    settle()
    assert kept.bench.form is None
    assert kept.desk.book is not None
    assert "Half a name" in {plant.name for plant in kept.desk.book.plants.values()}


def test_a_form_with_proposals_alone_does_not_come_back(kept: MainWindow) -> None:
    kept.writing.open("pollination", plant="TP")
    kept.pedigree.focus_on("BA")
    kept.writing.open("variety")
    kept.bench.close_form()
    assert kept.bench.form is None
    assert kept.bench.isHidden()


def test_an_answer_for_a_form_that_was_put_away_leaves_the_next_one_alone(
    kept: MainWindow, settle: Settle
) -> None:
    held = threading.Event()
    kept.desk.record("wait", lambda edit: held.wait(10))
    kept.writing.open("variety")
    form = typed(kept, "name", "Slow Pea")
    form.record()
    kept.bench.clear()
    kept.writing.open("note")
    note = on_bench(kept)
    held.set()
    settle()
    assert on_bench(kept) is note
    assert "Slow Pea" in kept.said.text()


def test_a_refusal_for_a_form_that_was_put_away_is_still_told(
    kept: MainWindow, settle: Settle
) -> None:
    held = threading.Event()
    kept.desk.record("wait", lambda edit: held.wait(10))
    kept.writing.open("variety")
    form = typed(kept, "name", "Another")
    form._fields["plant"].set_text("TP")
    form.record()
    kept.bench.clear()
    held.set()
    settle()
    assert kept.dialog is not None
    assert kept.desk.book is not None
    assert kept.desk.book.plants["TP"].name != "Another"


def test_the_keys_go_back_where_they_were(kept: MainWindow, settle: Settle) -> None:
    kept.show_page("records")
    settle()
    kept.find_field.setFocus()
    kept.writing.open("variety")
    assert kept.bench.isAncestorOf(QApplication.focusWidget())
    kept.bench.close_form()
    assert QApplication.focusWidget() is kept.find_field


def test_closing_at_once_keeps_everything_that_was_recorded(kept: MainWindow, book: Path) -> None:
    def name(number: int) -> Callable[[Edit], object]:
        return lambda edit: edit.update(edit.book.plants["TP"], name=f"Name {number}")

    for number in range(12):
        kept.desk.record(f"name {number}", name(number))
    kept.close()
    assert not kept.isVisible()
    with BookFile.open(book) as file:
        assert file.book.plants["TP"].name == "Name 11"
        assert file.undo_words == "name 11"


def test_the_window_stays_when_the_last_edit_is_refused(kept: MainWindow) -> None:
    def refuse(edit: Edit) -> None:
        raise Fault("The disk is full.", todo="Make room.")

    kept.desk.record("something", refuse)
    kept.close()
    assert kept.isVisible()
    assert kept.dialog is not None
    kept.dialog.reject()
    kept.close()
    assert not kept.isVisible()


def test_an_edit_goes_on_from_the_one_before_it_not_from_what_is_on_show(
    kept: MainWindow, settle: Settle
) -> None:
    done = threading.Event()

    def note(edit: Edit) -> None:
        edit.update(edit.book.plants["TP"], note="Other")

    kept.desk.record("NEW", lambda edit: edit.add(Plant(plant="NEW", kind="variety")))
    kept.desk.record("note", note)
    kept.desk._errands.ask("write:after", done.set, lambda _: None)
    # The window hears of neither before both are made.
    assert done.wait(10)
    settle()
    assert kept.opened is not None
    assert "NEW" in kept.opened.net
    assert kept.opened.net.book.plants["TP"].note == "Other"


def test_an_edit_of_the_book_before_does_not_come_into_the_next(
    kept: MainWindow, settle: Settle, tmp_path: Path
) -> None:
    other = tmp_path / "other.pedbook"
    BookFile.create(other, read(demo("a_leaf_for_hollin_plate")).book).close()
    held = threading.Event()
    heard: list[object] = []

    def slow(edit: Edit) -> None:
        assert held.wait(10)
        edit.update(edit.book.plants["TP"], name="Late")

    kept.desk.record("late", slow, heard.append)
    kept.open_path(other)
    opened = kept.opened
    while kept.opened is opened:
        QApplication.processEvents()
    held.set()
    settle()
    assert kept.opened is not None
    assert "TP" not in kept.opened.net
    assert kept.opened.path == other
    assert heard == []
    with BookFile.open(tmp_path / "peas.pedbook") as file:
        assert file.book.plants["TP"].name == "Late"


def test_a_mistake_of_the_program_in_a_click_is_told(kept: MainWindow) -> None:
    error = KeyError("nowhere")
    tell = telling(kept)
    tell(KeyError, error, None)
    first = kept.dialog
    assert first is not None
    tell(KeyError, error, None)
    assert kept.dialog is first


def test_what_is_likeliest_is_proposed_and_tab_takes_what_was_picked(
    qtbot: QtBot, kept: MainWindow, settle: Settle
) -> None:
    import datetime

    from pedigreeview.book.recording.crosses import record_cross
    from pedigreeview.book.recording.pollinations import record_pollination

    day = datetime.date(2026, 5, 3)

    def work(edit: Edit) -> tuple[str, str]:
        cross = record_cross(edit, "TP", "23-07", today=day)[0]
        made = record_pollination(edit, cross.cross, today=day, date="2026-05-03", flowers=5)
        return cross.cross, made.pollination

    given: list[tuple[str, str]] = []
    kept.desk.record("work", work, given.append)
    settle()
    cross, pollination = given[0]
    kept.writing.open("fruits", plant="TP")
    assert on_bench(kept)._fields["pollination"].text() == pollination
    kept.writing.open("harvest", plant="TP")
    field = on_bench(kept)._fields["cross"]
    assert field.text() == cross
    editor = field.focusProxy()
    assert editor is not None
    editor.setFocus()
    field.set_text("")
    qtbot.keyClick(editor, Qt.Key.Key_Down)
    qtbot.keyClick(editor, Qt.Key.Key_Tab)
    assert field.text() == "", "nothing was picked"
    editor.setFocus()
    qtbot.keyClicks(editor, cross)
    assert field.text() == cross
    field.set_text("")
    qtbot.keyClick(editor, Qt.Key.Key_Down)
    qtbot.keyClick(editor, Qt.Key.Key_Down)
    qtbot.keyClick(editor, Qt.Key.Key_Tab)
    assert field.text() not in ("", cross)


def test_a_variety_just_written_down_comes_into_focus(
    qtbot: QtBot, kept: MainWindow, settle: Settle
) -> None:
    kept.writing.open("variety")
    typed(kept, "name", "Lonely Pea").record()
    settle()
    assert kept.pedigree.focus == "LP"
    kept.show_page("records")
    settle()
    kept.writing.open("variety")
    typed(kept, "name", "Other Pea").record()
    settle()
    assert kept.page() == "records"
    assert kept.pedigree.focus == "LP"


def test_long_lines_of_a_form_break_within_a_narrow_bench(kept: MainWindow) -> None:
    kept.set_text_size(200)
    kept.resize(1280, 800)
    for name in ("pollination", "cross", "name_line", "raise"):
        kept.writing.open(name)
        QApplication.processEvents()
        form = on_bench(kept)
        assert form.minimumSizeHint().width() <= kept.bench.width() - 2, name
        assert kept.bench._area.horizontalScrollBar().maximum() == 0, name
        kept.bench.clear()
