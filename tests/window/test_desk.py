"""The desk: two windows on one book, files that go away, edits that are refused and made again."""

from __future__ import annotations

import os
from collections.abc import Callable, Iterator
from pathlib import Path

import pytest
from PySide6.QtCore import QSettings
from pytestqt.qtbot import QtBot

from pedigreeview import read
from pedigreeview.book.book_file import BookFile
from pedigreeview.book.edits import Edit
from pedigreeview.book.faults import Fault
from pedigreeview.book.file_faults import BookBusy
from pedigreeview.exchange import data_package
from pedigreeview.places import demo
from pedigreeview.window.errands import Errands
from pedigreeview.window.faults_dialog import FaultsDialog
from pedigreeview.window.main_window import MainWindow
from pedigreeview.window.preferences import Preferences
from pedigreeview.window.save_copy import SaveCopy

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


@pytest.fixture
def second(qtbot: QtBot, tmp_path: Path, book: Path) -> Iterator[MainWindow]:
    settings = QSettings(str(tmp_path / "other.ini"), QSettings.Format.IniFormat)
    made = MainWindow(Preferences(settings))
    qtbot.addWidget(made)
    made.show()
    made.open_path(book)
    qtbot.waitUntil(lambda: not made.errands.awaits(), timeout=15000)
    yield made
    if made.dialog is not None:
        made.dialog.reject()
    made.close()


def wait(qtbot: QtBot, *errands: Errands) -> None:
    qtbot.waitUntil(lambda: not any(one.awaits() for one in errands), timeout=15000)


def named(name: str) -> Callable[[Edit], object]:
    return lambda edit: edit.update(edit.book.plants["TP"], name=name)


def name_of(window: MainWindow) -> str:
    assert window.desk.book is not None
    return window.desk.book.plants["TP"].name


def test_a_second_window_sees_what_the_first_writes_and_can_undo_it(
    qtbot: QtBot, kept: MainWindow, second: MainWindow
) -> None:
    was = name_of(kept)
    for one in (kept, second):
        one.desk._watch.stop()  # on a slow machine it would look before the test does
    kept.desk.record("name One", named("One"))
    wait(qtbot, kept.errands)
    assert name_of(second) == was
    second.desk.look()
    wait(qtbot, second.errands)
    assert name_of(second) == "One"
    assert "Another window" in second.said.text()
    assert second.desk.undo_words == "name One"
    second.desk.undo()
    wait(qtbot, second.errands)
    kept.desk.look()
    wait(qtbot, kept.errands)
    assert name_of(kept) == was
    assert kept.desk.redo_words == "name One"


def test_edits_of_two_windows_both_stay(qtbot: QtBot, kept: MainWindow, second: MainWindow) -> None:
    kept.desk.record("name", named("One"))
    wait(qtbot, kept.errands)

    def note(edit: Edit) -> None:
        edit.update(edit.book.plants["BA"], note="mine")

    second.desk.record("note", note)
    wait(qtbot, second.errands)
    assert second.desk.book is not None
    assert second.desk.book.plants["TP"].name == "One"
    assert second.desk.book.plants["BA"].note == "mine"


def test_a_file_that_goes_away_is_said_once_with_a_way_to_a_copy(
    qtbot: QtBot, kept: MainWindow, settle: Settle, book: Path
) -> None:
    away = book.with_name("away.pedbook")
    os.rename(book, away)
    kept.desk.look()
    settle()
    dialog = kept.dialog
    assert isinstance(dialog, FaultsDialog)
    assert set(dialog.ways) == {"again", "save_copy", "elsewhere"}
    dialog.reject()
    kept.desk.look()
    settle()
    assert kept.dialog is None
    os.rename(away, book)
    kept.desk.look()
    settle()
    assert "there again" in kept.said.text()


def test_the_copy_of_a_book_that_is_gone_holds_everything(
    qtbot: QtBot, kept: MainWindow, settle: Settle, book: Path, tmp_path: Path
) -> None:
    kept.desk.record("name One", named("One"))
    settle()
    os.rename(book, tmp_path / "away.pedbook")
    kept.desk.record("name Two", named("Two"))
    settle()
    dialog = kept.dialog
    assert isinstance(dialog, FaultsDialog)
    assert name_of(kept) == "One"
    dialog.ways["save_copy"].click()
    copy = kept.dialog
    assert isinstance(copy, SaveCopy)
    assert copy.go_on.isChecked()
    copy.file.setText(str(tmp_path / "kept.pedbook"))
    copy.save_button.click()
    settle()
    assert kept.opened is not None
    assert kept.opened.path == tmp_path / "kept.pedbook"
    assert name_of(kept) == "One"


def test_a_refused_edit_is_tried_again_by_its_button(
    qtbot: QtBot, kept: MainWindow, settle: Settle, book: Path
) -> None:
    tries: list[int] = []

    def work(edit: Edit) -> None:
        tries.append(1)
        if len(tries) == 1:
            raise BookBusy(book)
        edit.update(edit.book.plants["TP"], name="Two")

    beside: list[Fault] = []
    kept.desk.record("name Two", work, None, beside.append)
    settle()
    assert len(beside) == 1
    dialog = kept.dialog
    assert isinstance(dialog, FaultsDialog)
    dialog.ways["again"].click()
    settle()
    assert name_of(kept) == "Two"
    kept.desk.try_again()
    settle()
    assert len(tries) == 2


def test_undo_to_a_step_stops_where_it_cannot_go_on(
    qtbot: QtBot, kept: MainWindow, settle: Settle, monkeypatch: pytest.MonkeyPatch
) -> None:
    for name in ("One", "Two", "Three"):
        kept.desk.record(f"name {name}", named(name))
    settle()
    file = kept.desk.file
    assert file is not None
    first, undone = file.steps()[-1], file.undo
    done: list[int] = []

    def undo() -> object:
        done.append(1)
        if len(done) == 3:
            raise BookBusy(file.path)
        return undone()

    monkeypatch.setattr(file, "undo", undo)
    kept.desk.undo_to(first.step)
    settle()
    # What was taken back is shown, and what could not be is said.
    assert name_of(kept) == "One"
    assert isinstance(kept.dialog, FaultsDialog)


def test_a_folder_is_kept_as_a_book_with_its_photos(
    window: MainWindow, settle: Settle, tmp_path: Path
) -> None:
    from pedigreeview.book.records import Photo

    held = read(demo("two_peas_both_ways")).book
    held.photos["a.jpg"] = Photo("a.jpg", "TP")
    folder = tmp_path / "peas"
    data_package.write(held, folder)
    (folder / "photos").mkdir(exist_ok=True)
    (folder / "photos" / "a.jpg").write_bytes(b"picture")
    window.open_path(folder)
    settle()
    window.door.keep_as_book()
    settle()
    assert window.desk.file is not None
    assert window.desk.file.file("photos/a.jpg") == b"picture"


def test_a_mistake_after_the_edit_says_that_the_edit_is_kept(
    kept: MainWindow, settle: Settle, book: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    from pedigreeview.window import desk as desk_module

    def broken(*_: object) -> object:
        raise KeyError("nowhere")

    with monkeypatch.context() as patched:
        patched.setattr(desk_module, "after_edit", broken)
        kept.writing.open("variety")
        form = kept.bench.form
        assert form is not None
        form._fields["name"].set_text("Kept Pea")
        form.record()
        settle()
    assert kept.bench.form is None, "the form would record it a second time"
    dialog = kept.dialog
    assert isinstance(dialog, FaultsDialog)
    assert "kept" in dialog.lines[0]
    assert "not touched" not in dialog.lines[0]
    dialog.reject()
    with BookFile.open(book) as file:
        assert "Kept Pea" in {plant.name for plant in file.book.plants.values()}
    kept.desk.record("note", lambda edit: edit.update(edit.book.plants["TP"], note="Next"))
    settle()
    assert kept.desk.book is not None
    assert "Kept Pea" in {plant.name for plant in kept.desk.book.plants.values()}


def test_a_mistake_while_an_edit_is_shown_says_that_the_edit_is_kept(
    kept: MainWindow, settle: Settle
) -> None:
    from pedigreeview.window.app import telling

    told: list[str] = []
    tell = telling(kept)

    def broken(*_: object) -> None:
        tell(KeyError, KeyError("nowhere"), None)
        assert isinstance(kept.dialog, FaultsDialog)
        told.append(kept.dialog.lines[0])
        kept.dialog.reject()

    kept.desk.changed.connect(broken)
    kept.desk.record("note", lambda edit: edit.update(edit.book.plants["TP"], note="Next"))
    settle()
    kept.desk.changed.disconnect(broken)
    broken()
    assert "written in the book and kept" in told[0]
    assert "not touched" in told[1]
