"""Bringing in messy tables of peas by clicks and keys: all of it one edit, or nothing."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtGui import QGuiApplication
from PySide6.QtWidgets import QApplication, QComboBox
from pytestqt.qtbot import QtBot

from pedigreeview.book.book import Book
from pedigreeview.book.book_file import BookFile
from pedigreeview.book.records import Cross, Plant
from pedigreeview.exchange.spreadsheet_writing import workbook_bytes
from pedigreeview.window.importing.entrance import DropQuestion, bring_in
from pedigreeview.window.importing.wizard import ImportWizard
from pedigreeview.window.main_window import MainWindow
from tests.window.test_main_window import drop

Settle = Callable[[], None]
LEFT = Qt.MouseButton.LeftButton

PEAS = """\
Erbsen im Garten 2024;;;;;
;;;;;
Nr;Kreuzung;Gesät;Höhe;Farbe;Mutter der Mutter
24-1;Tarn x Brock;3/5/2024;12,5;grün;
;;;;;
24-2;Brock x Tarn;4/5/2024;14,0;gelb;
24-3;(Tarn x Brock) x Fern;;9,25;;
24-4;?;;;;
24-5;Tarn selfed;;;;
24-6;tarn OP;;;;
"""
"""A title row, blank rows, decimal commas, both parents in one cell, two spellings of Tarn."""


@pytest.fixture
def book(window: MainWindow, settle: Settle, tmp_path: Path) -> MainWindow:
    held = Book()
    for record in (
        Plant("Tarn", kind="variety"),
        Plant("Brock", kind="variety"),
        Cross("1", "Tarn", "Brock"),
        Plant("24-1", kind="plant", cross="1", note="mine"),
        Plant("24-2", kind="plant"),
    ):
        held.add(record)
    path = tmp_path / "peas.pedbook"
    BookFile.create(path, held).close()
    window.open_path(path)
    settle()
    return window


def file(tmp_path: Path, text: str, name: str = "erbsen.csv") -> Path:
    path = tmp_path / name
    path.write_text(text, encoding="utf-8")
    return path


def opened(window: MainWindow, settle: Settle, path: Path) -> ImportWizard:
    bring_in(window, path)
    settle()
    found = window.dialog
    assert isinstance(found, ImportWizard)
    return found


def forth(qtbot: QtBot, wizard: ImportWizard, settle: Settle) -> None:
    qtbot.mouseClick(wizard.next_button, LEFT)
    settle()


def put(qtbot: QtBot, box: QComboBox, data: object) -> None:
    """Choose an entry of a combo by keys."""
    wanted = box.findData(data)
    assert wanted >= 0
    box.setFocus()
    while box.currentIndex() != wanted:
        before = box.currentIndex()
        qtbot.keyClick(box, Qt.Key.Key_Down if before < wanted else Qt.Key.Key_Up)
        assert box.currentIndex() != before


def rows_read(qtbot: QtBot, wizard: ImportWizard, text: str) -> None:
    qtbot.waitUntil(lambda: text in wizard.preview.said.text(), timeout=8000)


def to_the_end(qtbot: QtBot, wizard: ImportWizard, settle: Settle) -> None:
    for _ in range(6):
        if wizard.current() is wizard.bring_in:
            return
        forth(qtbot, wizard, settle)
    assert wizard.current() is wizard.bring_in


def test_a_messy_table_comes_into_the_open_book_as_one_edit(
    qtbot: QtBot, book: MainWindow, settle: Settle, tmp_path: Path
) -> None:
    wizard = opened(book, settle, file(tmp_path, PEAS))
    assert wizard.current() is wizard.sheet
    assert wizard.sheet.heading.currentText().startswith("row 3: Nr")
    assert wizard.sheet.forms["plants"].isChecked()
    forth(qtbot, wizard, settle)
    assert wizard.current() is wizard.columns
    means = [box.currentData() for box in wizard.columns.meanings]
    assert means[:4] == ["plant", "parents", "sown", "trait"]
    rows_read(qtbot, wizard, "Every row can be read.")
    forth(qtbot, wizard, settle)
    assert wizard.current() is wizard.questions
    assert wizard.questions.unknown.isChecked()
    assert "3/5/2024" in wizard.questions.date_why.text()
    assert wizard.questions.marks["?"].currentData() == "unknown"
    qtbot.mouseClick(wizard.questions.first, LEFT)
    assert wizard.draft.plan is not None
    assert wizard.draft.plan.seed_parent_first is True
    forth(qtbot, wizard, settle)
    assert wizard.current() is wizard.same
    (choice,) = wizard.same.choices
    assert choice.currentText() == "different plants"
    put(qtbot, choice, "Tarn")
    assert wizard.draft.plan.same == {"tarn": "Tarn"}
    forth(qtbot, wizard, settle)
    assert wizard.current() is wizard.bring_in
    assert "plants, new" in wizard.bring_in.summary.toPlainText()
    forth(qtbot, wizard, settle)
    assert wizard.report.title.text() == "erbsen.csv came in"
    assert "'tarn' was taken as 'Tarn', as you said." in wizard.report.text.toPlainText()
    held = book.desk.book
    assert held is not None
    assert {"24-3", "24-4", "24-5", "24-6", "Fern"} <= set(held.plants)
    assert "tarn" not in held.plants
    assert held.plants["24-1"].sown == "2024-05-03"
    heights = {score.plant: score.value for score in held.scores if score.trait == "Höhe"}
    assert heights == {"24-1": "12.5", "24-2": "14.0", "24-3": "9.25"}
    sixth = held.crosses[held.plants["24-6"].cross]
    assert (sixth.seed_parent, sixth.intended) == ("Tarn", "open")
    second = held.crosses[held.plants["24-2"].cross]
    assert (second.seed_parent, second.pollen_parent) == ("Brock", "Tarn")
    assert second.direction_known
    qtbot.mouseClick(wizard.next_button, LEFT)
    book.desk.undo()
    settle()
    assert book.desk.book is not None
    assert set(book.desk.book.plants) == {"Tarn", "Brock", "24-1", "24-2"}
    assert not book.desk.book.scores


def test_the_direction_stays_open_unless_it_is_said(
    qtbot: QtBot, book: MainWindow, settle: Settle, tmp_path: Path
) -> None:
    wizard = opened(book, settle, file(tmp_path, "Nr,Cross\nX1,Fern x Moss\n"))
    to_the_end(qtbot, wizard, settle)
    forth(qtbot, wizard, settle)
    held = book.desk.book
    assert held is not None
    assert not held.crosses[held.plants["X1"].cross].direction_known


def test_problems_are_marked_and_listed_and_nothing_comes_in(
    qtbot: QtBot, book: MainWindow, settle: Settle, tmp_path: Path
) -> None:
    path = file(tmp_path, "code,sown,mother,father\nA1,2024-05-01,Fern,Moss\nA2,soon,A1,Moss\n")
    wizard = opened(book, settle, path)
    forth(qtbot, wizard, settle)
    rows_read(qtbot, wizard, "One problem")
    assert wizard.preview.problems.item(0).text().startswith("row 3, column sown")
    index = wizard.preview.model.index(1, 1)
    assert index.data(Qt.ItemDataRole.BackgroundRole) is not None
    assert wizard.preview.model.index(0, 1).data(Qt.ItemDataRole.BackgroundRole) is None
    assert wizard.preview.view.currentIndex() == index
    before = book.desk.book
    for _ in range(3):
        forth(qtbot, wizard, settle)
    assert wizard.current() is wizard.columns
    assert "Nothing has come in" in wizard.message.text()
    assert book.desk.book is before
    path.write_text("code,sown,mother,father\nA1,2024-05-01,Fern,Moss\nA2,2024-05-02,A1,Moss\n")
    qtbot.mouseClick(wizard.preview.again_button, LEFT)
    settle()
    rows_read(qtbot, wizard, "Every row can be read.")
    assert wizard.preview.problems.isHidden()
    to_the_end(qtbot, wizard, settle)
    forth(qtbot, wizard, settle)
    assert book.desk.book is not None
    assert book.desk.book.plants["A2"].sown == "2024-05-02"


def test_differences_stand_side_by_side_and_each_is_chosen(
    qtbot: QtBot, book: MainWindow, settle: Settle, tmp_path: Path
) -> None:
    text = "code,mother,father,note,place\n24-1,Tarn,Brock,theirs,bed 3\n"
    wizard = opened(book, settle, file(tmp_path, text))
    to_the_end(qtbot, wizard, settle)
    table = wizard.bring_in.differences
    fields = [one.field for one in table.model.differences]
    assert sorted(fields) == ["note", "place"]
    sides = {one.field: side for one, side in table.sides().items()}
    assert sides == {"note": "mine", "place": "theirs"}
    row = fields.index("note")
    assert table.model.index(row, 2).data() == "✓ mine"
    table.view.setFocus()
    table.view.setCurrentIndex(table.model.index(row, 0))
    qtbot.keyClick(table.view, Qt.Key.Key_Right)
    assert table.model.index(row, 3).data() == "✓ theirs"
    qtbot.mouseClick(table.mine_button, LEFT)
    assert set(table.sides().values()) == {"mine"}
    at = table.view.visualRect(table.model.index(fields.index("place"), 3)).center()
    qtbot.mouseClick(table.view.viewport(), LEFT, pos=at)
    forth(qtbot, wizard, settle)
    held = book.desk.book
    assert held is not None
    assert (held.plants["24-1"].note, held.plants["24-1"].place) == ("mine", "bed 3")
    said = wizard.report.text.toPlainText()
    assert "1 cell that the book had blank: filled in." in said
    assert "1 cell that differed: left as the book had it." in said
    qtbot.mouseClick(wizard.report.copy_button, LEFT)
    assert "filled in" in QGuiApplication.clipboard().text()
    wizard.report.save(tmp_path / "report.txt")
    settle()
    assert (tmp_path / "report.txt").read_text(encoding="utf-8").startswith("erbsen.csv came in")


def test_without_a_book_a_new_one_is_made(
    qtbot: QtBot, window: MainWindow, settle: Settle, tmp_path: Path
) -> None:
    wizard = opened(window, settle, file(tmp_path, PEAS))
    to_the_end(qtbot, wizard, settle)
    place = wizard.bring_in.place
    assert place.isVisible()
    assert place.name.text() == "erbsen"
    place.file.selectAll()
    qtbot.keyClicks(place.file, str(tmp_path / "new.pedbook"))
    forth(qtbot, wizard, settle)
    assert wizard.stack.currentWidget() is wizard.report
    assert window.opened is not None
    assert window.opened.path == tmp_path / "new.pedbook"
    assert "24-3" in window.opened.net.book.plants
    assert window.opened.net.book.settings.founders_as == "variety"


def test_a_table_of_another_layout_is_explained_in_place_of_being_refused(
    window: MainWindow, settle: Settle, tmp_path: Path
) -> None:
    window.open_path(file(tmp_path, PEAS))
    settle()
    wizard = window.dialog
    assert isinstance(wizard, ImportWizard)
    assert "is no plant table as it stands" in wizard.note.text()


def test_a_file_dropped_on_an_open_book_is_asked_about(
    qtbot: QtBot, book: MainWindow, settle: Settle, tmp_path: Path
) -> None:
    drop(book, file(tmp_path, PEAS))
    settle()
    question = book.dialog
    assert isinstance(question, DropQuestion)
    qtbot.mouseClick(question.bring_button, LEFT)
    settle()
    assert isinstance(book.dialog, ImportWizard)


def test_the_layout_is_remembered(
    qtbot: QtBot, book: MainWindow, settle: Settle, tmp_path: Path
) -> None:
    wizard = opened(book, settle, file(tmp_path, "Nr,Cross,Pot\nX1,Fern x Moss,7\n"))
    forth(qtbot, wizard, settle)
    put(qtbot, wizard.columns.meanings[2], "left_out")
    to_the_end(qtbot, wizard, settle)
    forth(qtbot, wizard, settle)
    qtbot.mouseClick(wizard.next_button, LEFT)
    again = opened(book, settle, file(tmp_path, "Nr,Cross,Pot\nX2,Moss x Fern,8\n", "b.csv"))
    forth(qtbot, again, settle)
    assert again.columns.meanings[2].currentData() == "left_out"
    assert "read such a table this way before" in again.columns._whys[2].text()


def test_sheets_and_the_heading_row_are_chosen(
    qtbot: QtBot, book: MainWindow, settle: Settle, tmp_path: Path
) -> None:
    path = tmp_path / "two.xlsx"
    path.write_bytes(
        workbook_bytes(
            [
                ("readme", ["Nothing"], [["here"]]),
                ("crosses", ["My crosses", None or "", ""], [
                    ["Female", "Male", "Pods"], ["Fern", "Moss", 3],
                ]),
            ]
        )
    )  # fmt: skip
    wizard = opened(book, settle, path)
    assert wizard.sheet.sheet.isVisible()
    put(qtbot, wizard.sheet.sheet, "crosses")
    settle()
    assert wizard.draft.plan is not None
    assert wizard.draft.plan.sheet == "crosses"
    wizard.preview.view.setCurrentIndex(wizard.preview.model.index(1, 0))
    qtbot.keyClick(wizard.preview.view, Qt.Key.Key_Return)
    settle()
    assert wizard.draft.plan.heading == 1
    qtbot.mouseClick(wizard.sheet.forms["crosses"], LEFT)
    settle()
    forth(qtbot, wizard, settle)
    means = [box.currentData() for box in wizard.columns.meanings]
    assert means == ["seed_parent", "pollen_parent", "fruits"]


def test_stop_and_escape_change_nothing(
    qtbot: QtBot, book: MainWindow, settle: Settle, tmp_path: Path
) -> None:
    wizard = opened(book, settle, file(tmp_path, PEAS))
    to_the_end(qtbot, wizard, settle)
    before = book.desk.book
    qtbot.mouseClick(wizard.next_button, LEFT)
    assert wizard.busy
    assert wizard.cancel_button.text() == "Stop"
    qtbot.keyClick(wizard, Qt.Key.Key_Escape)
    assert "Stopped" in wizard.message.text()
    settle()
    if wizard.stack.currentWidget() is wizard.report:
        # Stop came when it was written already: the report says so, and undo takes it back.
        book.desk.undo()
        settle()
    assert before is not None
    assert book.desk.book is not None
    assert book.desk.book.plants == before.plants
    qtbot.keyClick(wizard, Qt.Key.Key_Escape)
    QApplication.processEvents()
    assert book.dialog is None


def test_a_whole_book_in_json_needs_no_columns(
    qtbot: QtBot, book: MainWindow, settle: Settle, tmp_path: Path
) -> None:
    text = '{"data": [{"germplasmDbId": "g1", "germplasmName": "Q1", "defaultDisplayName": "Q1"}]}'
    wizard = opened(book, settle, file(tmp_path, text, "peas.brapi.json"))
    assert wizard.current() is wizard.bring_in, wizard.message.text()
    forth(qtbot, wizard, settle)
    assert book.desk.book is not None
    assert set(book.desk.book.plants) & {"g1", "Q1"}


def test_a_large_table_is_brought_in_after_a_backup(
    qtbot: QtBot,
    book: MainWindow,
    settle: Settle,
    tmp_path: Path,
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    monkeypatch.setattr("pedigreeview.exchange.importing.LARGE", 1)
    wizard = opened(book, settle, file(tmp_path, "Nr,Cross\nX1,Fern x Moss\nX2,Moss x Fern\n"))
    to_the_end(qtbot, wizard, settle)
    assert wizard.bring_in.large.isVisible()
    desk_file = book.desk.file
    assert desk_file is not None
    before = len(desk_file.backups())
    forth(qtbot, wizard, settle)
    assert wizard.stack.currentWidget() is wizard.report
    assert len(desk_file.backups()) == before + 1
    assert book.desk.book is not None
    assert "X2" in book.desk.book.plants


WIDE = 40


@pytest.fixture
def wide(tmp_path: Path) -> Path:
    """A table with many columns, each a trait."""
    traits = [f"trait {at}" for at in range(WIDE - 1)]
    rows = [["plant", *traits], *([f"W{row}", *["5"] * (WIDE - 1)] for row in range(3))]
    text = "\n".join(",".join(row) for row in rows)
    return file(tmp_path, f"{text}\n", "wide.csv")


def test_many_columns_get_their_lines_one_after_the_other(
    window: MainWindow, qtbot: QtBot, settle: Settle, wide: Path
) -> None:
    wizard = opened(window, settle, wide)
    step = wizard.columns
    assert not step.meanings  # made when the step is turned to
    qtbot.mouseClick(wizard.next_button, LEFT)
    assert wizard.current() is step
    assert 0 < len(step.meanings) < WIDE
    assert step.meanings[0].hasFocus()
    qtbot.waitUntil(lambda: len(step.meanings) == WIDE, timeout=8000)
    assert [box.currentData() for box in step.meanings] == ["plant", *["trait"] * (WIDE - 1)]
    assert [line.text() for line in step.traits[1:]] == [f"trait {at}" for at in range(WIDE - 1)]
    settle()
    lefts = {box.mapTo(step, box.rect().topLeft()).x() for box in step.meanings}
    assert len(lefts) == 1
    tops = [box.mapTo(step, box.rect().topLeft()).y() for box in step.meanings]
    assert tops == sorted(set(tops))


def test_a_meaning_chosen_in_a_late_line_is_the_plan(
    window: MainWindow, qtbot: QtBot, settle: Settle, wide: Path
) -> None:
    wizard = opened(window, settle, wide)
    forth(qtbot, wizard, settle)
    step = wizard.columns
    qtbot.waitUntil(lambda: len(step.meanings) == WIDE, timeout=8000)
    put(qtbot, step.meanings[-1], "left_out")
    assert wizard.draft.plan is not None
    assert wizard.draft.plan.columns[-1].meaning == "left_out"
    assert step.meanings[-2].currentData() == "trait"


def test_columns_out_of_sight_get_their_width_too(
    window: MainWindow, qtbot: QtBot, settle: Settle, wide: Path
) -> None:
    wizard = opened(window, settle, wide)
    view = wizard.preview.view
    usual = view.horizontalHeader().defaultSectionSize()
    last = wizard.preview.model.columnCount() - 1
    qtbot.waitUntil(lambda: view.columnWidth(last) != usual, timeout=8000)
    assert view.columnWidth(last) == view.columnWidth(last - 1)


def test_what_lies_below_lies_still_when_the_file_is_read(
    window: MainWindow, settle: Settle, wide: Path
) -> None:
    bring_in(window, wide)
    wizard = window.dialog
    assert isinstance(wizard, ImportWizard)
    assert wizard.current() is None
    above, below = wizard.split.sizes()
    settle()
    assert wizard.current() is wizard.sheet
    assert wizard.split.sizes()[0] == pytest.approx(above, abs=40)
    assert wizard.split.sizes()[1] == pytest.approx(below, abs=40)
