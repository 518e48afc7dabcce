"""Stop while a table or a book is brought in: the thread ends, and nothing is half done."""

from __future__ import annotations

import threading
from collections.abc import Callable
from pathlib import Path
from typing import Any

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QDialog
from pytestqt.qtbot import QtBot

from pedigreeview.book.book_file import BookFile
from pedigreeview.book.faults import Cancelled, Fault
from pedigreeview.book.records import Cross, Plant
from pedigreeview.window.errands import Errands
from pedigreeview.window.importing.halt import Halt
from pedigreeview.window.main_window import MainWindow
from pedigreeview.window.merging_dialog import MergingDialog, merge_with
from tests.window.test_import_wizard import PEAS, book, file, forth, opened, to_the_end
from tests.window.test_merging_dialog import book_file

Settle = Callable[[], None]
LEFT = Qt.MouseButton.LeftButton
WAIT = 10

__all__ = ["book"]


class Gate:
    """Holds a thread at a place until the test lets it go on."""

    def __init__(self) -> None:
        self.armed = False
        self.reached, self.go = threading.Event(), threading.Event()
        self.ended: list[str] = []

    def hold(self) -> None:
        if self.armed and not self.reached.is_set():
            self.reached.set()
            assert self.go.wait(WAIT)


@pytest.fixture
def gate(monkeypatch: pytest.MonkeyPatch) -> Gate:
    """A gate in every tick of reading and of writing."""
    made = Gate()

    def through(tick: Callable[..., None]) -> Callable[..., None]:
        def ticked(self: Any, *progress: object) -> None:
            made.hold()
            try:
                tick(self, *progress)
            except (Cancelled, Fault) as error:
                made.ended.append(type(error).__name__)
                raise

        return ticked

    monkeypatch.setattr(Errands, "tick", through(Errands.tick))
    monkeypatch.setattr(Halt, "tick", through(Halt.tick))
    return made


def stopped_at(qtbot: QtBot, gate: Gate, dialog: QDialog) -> None:
    """Press Stop while the thread waits at the gate, then let it go on."""
    qtbot.waitUntil(gate.reached.is_set, timeout=WAIT * 1000)
    qtbot.keyClick(dialog, Qt.Key.Key_Escape)
    gate.go.set()
    qtbot.waitUntil(lambda: bool(gate.ended), timeout=WAIT * 1000)


def test_stop_ends_the_reading_of_the_rows(
    qtbot: QtBot,
    book: MainWindow,
    settle: Settle,
    tmp_path: Path,
    gate: Gate,
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    wizard = opened(book, settle, file(tmp_path, PEAS))
    for _ in range(6):
        if wizard.current() is wizard.same:
            break
        forth(qtbot, wizard, settle)
    compared: list[object] = []
    monkeypatch.setattr(
        "pedigreeview.exchange.importing.compare", lambda *of, **_: compared.append(of)
    )
    gate.armed = True
    qtbot.mouseClick(wizard.next_button, LEFT)
    stopped_at(qtbot, gate, wizard)
    assert gate.ended == ["Cancelled"]
    settle()
    assert not compared
    assert not wizard.busy
    assert wizard.current() is wizard.same
    assert wizard.message.text() == "Stopped; nothing has come in."
    assert wizard.draft.imported is None


def test_next_does_not_wait_for_the_preview(
    qtbot: QtBot,
    book: MainWindow,
    settle: Settle,
    tmp_path: Path,
    gate: Gate,
) -> None:
    wizard = opened(book, settle, file(tmp_path, PEAS))
    gate.armed = True
    forth(qtbot, wizard, settle)
    # The rows are read for the problems that they have.
    qtbot.waitUntil(gate.reached.is_set, timeout=WAIT * 1000)
    qtbot.mouseClick(wizard.next_button, LEFT)
    assert wizard.current() is wizard.questions
    qtbot.mouseClick(wizard.next_button, LEFT)
    gate.go.set()
    qtbot.waitUntil(lambda: bool(gate.ended), timeout=WAIT * 1000)
    assert gate.ended[0] == "Cancelled"
    settle()
    assert wizard.current() is wizard.same


def test_stop_ends_the_writing_and_takes_it_back(
    qtbot: QtBot,
    book: MainWindow,
    settle: Settle,
    tmp_path: Path,
    gate: Gate,
) -> None:
    wizard = opened(book, settle, file(tmp_path, PEAS))
    to_the_end(qtbot, wizard, settle)
    before = book.desk.book
    gate.armed = True
    qtbot.mouseClick(wizard.next_button, LEFT)
    stopped_at(qtbot, gate, wizard)
    settle()
    assert gate.ended == ["Fault"]
    assert book.desk.book is before
    assert wizard.current() is wizard.bring_in
    assert wizard.message.text() == "Stopped; nothing has come in."
    # The same can be brought in afterwards.
    forth(qtbot, wizard, settle)
    assert wizard.stack.currentWidget() is wizard.report
    assert book.desk.book is not None
    assert "24-3" in book.desk.book.plants


def test_stop_that_comes_too_late_is_told(
    qtbot: QtBot,
    book: MainWindow,
    settle: Settle,
    tmp_path: Path,
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    wizard = opened(book, settle, file(tmp_path, PEAS))
    to_the_end(qtbot, wizard, settle)
    gate, passed = Gate(), Halt.pass_on

    def pass_on(self: Halt) -> None:
        passed(self)
        gate.hold()

    gate.armed = True
    monkeypatch.setattr(Halt, "pass_on", pass_on)
    qtbot.mouseClick(wizard.next_button, LEFT)
    qtbot.waitUntil(gate.reached.is_set, timeout=WAIT * 1000)
    qtbot.keyClick(wizard, Qt.Key.Key_Escape)
    assert "cannot be stopped any more" in wizard.message.text()
    assert wizard.busy
    gate.go.set()
    settle()
    assert wizard.stack.currentWidget() is wizard.report
    assert book.desk.book is not None
    assert "24-3" in book.desk.book.plants


@pytest.mark.parametrize("last", [False, True])
def test_a_new_book_that_is_stopped_leaves_no_file(
    last: bool,
    qtbot: QtBot,
    window: MainWindow,
    settle: Settle,
    tmp_path: Path,
    gate: Gate,
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    wizard = opened(window, settle, file(tmp_path, PEAS))
    to_the_end(qtbot, wizard, settle)
    wizard.bring_in.place.file.setText(str(tmp_path / "new.pedbook"))
    before = {path.name for path in tmp_path.iterdir()}
    if last:
        passed = Halt.pass_on

        def pass_on(self: Halt) -> None:
            # The file lies there whole; Stop comes now.
            assert (tmp_path / "new.pedbook").exists()
            gate.armed = True
            gate.hold()
            passed(self)

        monkeypatch.setattr(Halt, "pass_on", pass_on)
    else:
        gate.armed = True
    qtbot.mouseClick(wizard.next_button, LEFT)
    stopped_at(qtbot, gate, wizard)
    pool = window.errands._lane("open:bring-in")
    assert pool.waitForDone(WAIT * 1000)
    settle()
    assert wizard.current() is wizard.bring_in
    assert {path.name for path in tmp_path.iterdir()} == before
    assert window.opened is None


def test_a_new_book_that_is_stopped_late_and_begun_again_comes_once(
    qtbot: QtBot,
    window: MainWindow,
    settle: Settle,
    tmp_path: Path,
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    wizard = opened(window, settle, file(tmp_path, PEAS))
    to_the_end(qtbot, wizard, settle)
    wizard.bring_in.place.file.setText(str(tmp_path / "new.pedbook"))
    gate, close = Gate(), BookFile.close
    gate.armed = True

    def held_back(self: BookFile) -> None:
        close(self)
        gate.hold()

    monkeypatch.setattr(BookFile, "close", held_back)
    qtbot.mouseClick(wizard.next_button, LEFT)
    qtbot.waitUntil(gate.reached.is_set, timeout=WAIT * 1000)
    qtbot.keyClick(wizard, Qt.Key.Key_Escape)
    qtbot.mouseClick(wizard.next_button, LEFT)
    gate.go.set()
    settle()
    assert wizard.message.text() == ""
    assert wizard.stack.currentWidget() is wizard.report


def _merging(window: MainWindow, tmp_path: Path, settle: Settle) -> MergingDialog:
    theirs = book_file(
        tmp_path / "theirs.pedbook",
        Plant("Tarn", note="theirs"),
        Plant("Moss"),
        Cross("1", "Moss", "Tarn"),
        Plant("24-1", cross="1"),
    )
    merge_with(window, theirs)
    settle()
    found = window.dialog
    assert isinstance(found, MergingDialog)
    return found


def test_stop_while_books_are_laid_side_by_side(
    qtbot: QtBot,
    book: MainWindow,
    settle: Settle,
    tmp_path: Path,
    gate: Gate,
) -> None:
    dialog = _merging(book, tmp_path, settle)
    names = dict(dialog.found.names) if dialog.found is not None else {}
    assert names
    gate.armed = True
    qtbot.keyClicks(dialog.before, "x")
    stopped_at(qtbot, gate, dialog)
    settle()
    assert gate.ended == ["Cancelled"]
    assert not dialog.busy
    assert dialog.message.text() == "Stopped; nothing has come in."


def test_stop_while_another_book_is_brought_in(
    qtbot: QtBot,
    book: MainWindow,
    settle: Settle,
    tmp_path: Path,
    gate: Gate,
) -> None:
    dialog = _merging(book, tmp_path, settle)
    before = book.desk.book
    gate.armed = True
    qtbot.mouseClick(dialog.main_button, LEFT)
    stopped_at(qtbot, gate, dialog)
    settle()
    assert gate.ended == ["Fault"]
    assert book.desk.book is before
    assert dialog.message.text() == "Stopped; nothing has come in."
    qtbot.mouseClick(dialog.main_button, LEFT)
    settle()
    assert dialog.stack.currentWidget() is dialog.report
    assert book.desk.book is not None
    assert "Moss" in book.desk.book.plants


def test_a_dialog_that_is_left_ends_its_thread(
    qtbot: QtBot,
    book: MainWindow,
    settle: Settle,
    tmp_path: Path,
    gate: Gate,
) -> None:
    path = book_file(tmp_path / "theirs.pedbook", *(Plant(f"P{at}") for at in range(600)))
    gate.armed = True
    merge_with(book, path)
    dialog = book.dialog
    assert isinstance(dialog, MergingDialog)
    stopped_at(qtbot, gate, dialog)
    assert gate.ended == ["Cancelled"]
    settle()
    assert book.dialog is None


def test_a_halt() -> None:
    early, late = Halt(), Halt()
    assert early.stop()
    assert early.stop()
    for act in (early.tick, early.pass_on):
        with pytest.raises(Fault, match="Stopped"):
            act()
    late.tick()
    late.pass_on()
    assert not late.stop()
    assert not late.stopped
    late.tick()
