"""The Records page by real keys: cells typed, pasted, emptied; the score sheet; the beds."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path
from typing import Any

import pytest
from PySide6.QtCore import QPoint, Qt
from PySide6.QtGui import QGuiApplication
from PySide6.QtWidgets import QApplication, QComboBox, QTableView, QWidget
from pytestqt.qtbot import QtBot

from pedigreeview.book.book_file import BookFile
from pedigreeview.exchange import read_book
from pedigreeview.places import demo
from pedigreeview.window.main_window import MainWindow
from pedigreeview.window.records_page import BEDS, SCORES, RecordsPage

Settle = Callable[[], None]
LEFT = Qt.MouseButton.LeftButton
CTRL = Qt.KeyboardModifier.ControlModifier


@pytest.fixture
def kept(window: MainWindow, settle: Settle, tmp_path: Path) -> MainWindow:
    path = tmp_path / "peas.pedbook"
    BookFile.create(path, read_book(demo("two_peas_both_ways"))).close()
    window.open_path(path)
    settle()
    window.show_page("records")
    settle()
    return window


@pytest.fixture
def page(kept: MainWindow) -> RecordsPage:
    found: Any = kept.book_pages["records"]
    made = found.page()
    assert isinstance(made, RecordsPage)
    return made


def _cell(page: RecordsPage, table: str, key: str, column: str) -> None:
    page.go_to(f"{table}:{key}")
    place = [one.name for one in page.model.columns].index(column)
    page.view.setCurrentIndex(page.model.index(page.model.row_of(key), place))
    page.view.setFocus()


def _enter(qtbot: QtBot, editor: QWidget) -> None:
    """Enter in an editor; Qt takes what is typed with the next events."""
    qtbot.keyClick(editor, Qt.Key.Key_Return)
    QApplication.processEvents()


def _type(qtbot: QtBot, view: QTableView, text: str) -> None:
    """Type into the cell of the cursor, as a person does: the first key opens the editor."""
    qtbot.keyClick(view, text[0])
    editor = QApplication.focusWidget()
    qtbot.keyClicks(editor, text[1:])
    _enter(qtbot, editor)


def test_a_cell_is_typed_into_undone_and_made_again(
    qtbot: QtBot, kept: MainWindow, page: RecordsPage, settle: Settle
) -> None:
    _cell(page, "plants", "23-07", "note")
    _type(qtbot, page.view, "sweet one")
    settle()
    assert kept.desk.book.plants["23-07"].note == "sweet one"
    assert kept.desk.undo_words == "note of plant 23-07"
    qtbot.keyClick(kept, Qt.Key.Key_Z, CTRL)
    settle()
    assert kept.desk.book.plants["23-07"].note == ""
    qtbot.keyClick(kept, Qt.Key.Key_Z, CTRL | Qt.KeyboardModifier.ShiftModifier)
    settle()
    assert kept.desk.book.plants["23-07"].note == "sweet one"
    # The cursor stays where it was, though the book came anew three times.
    assert page.model.record(page.view.currentIndex().row()).plant == "23-07"


def test_dates_are_typed_as_people_type_them(
    qtbot: QtBot, kept: MainWindow, page: RecordsPage, settle: Settle
) -> None:
    kept.preferences.date_order = "day-month"
    _cell(page, "plants", "23-07", "sown")
    _type(qtbot, page.view, "2.4.2023")
    settle()
    assert kept.desk.book.plants["23-07"].sown == "2023-04-02"


def test_a_word_that_does_not_fit_is_refused_and_nothing_changes(
    qtbot: QtBot, kept: MainWindow, page: RecordsPage, settle: Settle
) -> None:
    before, told = kept.desk.book, []
    kept.desk.refused.connect(lambda fault: told.append(fault.what))
    _cell(page, "pollinations", "P21-1", "flowers")
    _type(qtbot, page.view, "many")
    settle()
    assert told == ["'many' does not fit the column 'flowers'."]
    assert kept.dialog is not None
    assert kept.desk.book is before


def test_words_are_chosen_from_a_list(
    qtbot: QtBot, kept: MainWindow, page: RecordsPage, settle: Settle
) -> None:
    _cell(page, "plants", "23-08", "status")
    qtbot.keyClick(page.view, Qt.Key.Key_F2)
    box = QApplication.focusWidget()
    assert isinstance(box, QComboBox)
    assert [box.itemText(at) for at in range(box.count())][:3] == ["", "growing", "kept"]
    box.setCurrentText("lost")
    _enter(qtbot, box)
    settle()
    assert kept.desk.book.plants["23-08"].status == "lost"


def test_a_block_is_pasted_as_one_edit(
    qtbot: QtBot, kept: MainWindow, page: RecordsPage, settle: Settle
) -> None:
    _cell(page, "plants", "23-07", "place")
    row = page.view.currentIndex().row()
    codes = [page.model.record(row + down).plant for down in range(3)]
    QGuiApplication.clipboard().setText("Bed 1\nBed 2\nBed 3\n")
    qtbot.keyClick(page.view, Qt.Key.Key_V, CTRL)
    settle()
    plants = kept.desk.book.plants
    assert [plants[code].place for code in codes] == ["Bed 1", "Bed 2", "Bed 3"]
    kept.desk.undo()
    settle()
    assert "Bed 3" not in [plant.place for plant in kept.desk.book.plants.values()]


def test_a_code_is_renamed_wherever_it_is_named(
    qtbot: QtBot, kept: MainWindow, page: RecordsPage, settle: Settle
) -> None:
    _cell(page, "plants", "TP", "plant")
    _type(qtbot, page.view, "TPALE")
    settle()
    book = kept.desk.book
    assert "TP" not in book.plants
    assert book.crosses["21-01"].seed_parent == "TPALE"
    assert page.model.record(page.view.currentIndex().row()).plant == "TPALE"


def test_rows_are_searched_and_sorted_as_people_count(qtbot: QtBot, page: RecordsPage) -> None:
    page.go_to("plants")
    page.search.setFocus()
    qtbot.keyClicks(page.search, "07-")
    shown = [page.model.record(row).plant for row in range(page.model.rowCount())]
    assert {code for code in shown if code.startswith("07-")} == {f"07-{n}" for n in range(1, 13)}
    page.view.sortByColumn(0, Qt.SortOrder.AscendingOrder)
    codes = [page.model.record(row).plant for row in range(page.model.rowCount())]
    ours = [code for code in codes if code.startswith("07-")]
    assert ours == [f"07-{n}" for n in range(1, 13)]


def test_a_score_is_typed_and_a_wrong_one_stays_marked(
    qtbot: QtBot, kept: MainWindow, page: RecordsPage, settle: Settle
) -> None:
    page.go_to(SCORES)
    sheet = page.scores
    sheet.which.setCurrentIndex(sheet.which.findData("cross:21-01"))
    sheet.date.set_text("2022-07-01")
    sheet.date.editor.editingFinished.emit()
    grid = sheet.model.grid
    assert grid is not None
    assert grid.plants == tuple(f"21-01-{n}" for n in range(1, 8))
    sweet = grid.traits.index("sweet")
    sheet.view.setFocus()
    sheet.view.setCurrentIndex(sheet.model.index(0, sweet))
    for text in ("7", "80", "6"):
        _type(qtbot, sheet.view, text)
        settle()
    scores = {
        score.plant: score.value
        for score in kept.desk.book.scores
        if score.trait == "sweet" and score.date == "2022-07-01"
    }
    assert scores == {"21-01-1": "7", "21-01-3": "6"}
    wrong = sheet.model.index(1, sweet)
    assert wrong.data() == "80"
    assert "80" in str(wrong.data(Qt.ItemDataRole.ToolTipRole))
    assert sheet.view.currentIndex().row() == 3
    # Mended, the mark goes.
    sheet.view.setCurrentIndex(wrong)
    _type(qtbot, sheet.view, "8")
    settle()
    assert wrong.data() == "8"
    assert wrong.data(Qt.ItemDataRole.ToolTipRole) is None


def test_a_block_of_scores_is_pasted(
    qtbot: QtBot, kept: MainWindow, page: RecordsPage, settle: Settle
) -> None:
    page.go_to(SCORES)
    sheet = page.scores
    sheet.which.setCurrentIndex(sheet.which.findData("cross:21-01"))
    sheet.date.set_text("2022-07-02")
    sheet.date.editor.editingFinished.emit()
    grid = sheet.model.grid
    assert grid is not None
    at = grid.traits.index("height")
    assert grid.traits[at + 1] == "flower"
    flowers = kept.desk.book.traits["flower"].values.split(";")
    QGuiApplication.clipboard().setText(
        f"tall\t{flowers[0].strip()}\ndwarf\t{flowers[1].strip()}\n"
    )
    sheet.view.setFocus()
    sheet.view.setCurrentIndex(sheet.model.index(0, at))
    qtbot.keyClick(sheet.view, Qt.Key.Key_V, CTRL)
    settle()
    held = [score for score in kept.desk.book.scores if score.date == "2022-07-02"]
    assert [(score.plant, score.trait) for score in held] == [
        ("21-01-1", "height"),
        ("21-01-1", "flower"),
        ("21-01-2", "height"),
        ("21-01-2", "flower"),
    ]
    assert kept.desk.undo_words == "4 scores"


def test_a_plant_is_dragged_to_another_place(
    qtbot: QtBot, kept: MainWindow, page: RecordsPage, settle: Settle
) -> None:
    edit = {"23-07": "Bed 9 / row 1 / 1", "23-19": "Bed 9 / row 1 / 2"}
    for code, place in edit.items():
        page.beds.move_to(code, place)
        settle()
    page.go_to(BEDS)
    settle()
    ground = page.beds.ground
    start, end = ground.where("23-07"), ground.spot_of("Bed 9 / row 1 / 4")
    assert end != QPoint(-1, -1)
    qtbot.mousePress(ground, LEFT, pos=start)
    qtbot.mouseMove(ground, start + QPoint(25, 0))
    qtbot.mouseMove(ground, end)
    qtbot.mouseRelease(ground, LEFT, pos=end)
    settle()
    book = kept.desk.book
    assert book.plants["23-07"].place == "Bed 9 / row 1 / 4"
    assert any("Moved from Bed 9 / row 1 / 1" in note.text for note in book.notes)
    assert ground.where("23-07") == end


def test_two_plants_cannot_be_moved_to_one_place(
    qtbot: QtBot, kept: MainWindow, page: RecordsPage, settle: Settle
) -> None:
    for code in ("23-07", "23-19"):
        page.beds.move_to(code, "Bed 9 / row 1 / 1")
        settle()
    assert kept.desk.book.plants["23-19"].place != "Bed 9 / row 1 / 1"
    assert kept.dialog is not None


def test_turning_to_a_view_that_is_no_table_measures_no_table(
    page: RecordsPage, monkeypatch: pytest.MonkeyPatch
) -> None:
    page.go_to("plants")
    widths = [page.view.columnWidth(at) for at in range(page.model.columnCount())]
    measured: list[str] = []
    widths_of = page._widths
    monkeypatch.setattr(page, "_widths", lambda: (measured.append(page.table()), widths_of()))
    for part in (SCORES, BEDS, "crosses", "plants"):
        page.go_to(part)
    assert measured == ["crosses", "plants"]
    assert [page.view.columnWidth(at) for at in range(page.model.columnCount())] == widths
