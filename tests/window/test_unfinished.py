"""Words half typed are never lost: they are laid out again when their book is opened."""

from __future__ import annotations

import datetime
from collections.abc import Callable, Iterator
from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QApplication, QLineEdit
from pytestqt.qtbot import QtBot

from pedigreeview import read
from pedigreeview.book.book_file import BookFile
from pedigreeview.book.recording.printed_sheets import PrintedSheet, keep_sheets
from pedigreeview.book.records import Trait
from pedigreeview.places import demo
from pedigreeview.window.main_window import MainWindow
from pedigreeview.window.preferences import Preferences
from pedigreeview.window.records_page import SCORES, RecordsPage
from pedigreeview.window.save_copy import SaveCopy
from pedigreeview.window.season_page import SHEETS, SeasonPage

Settle = Callable[[], None]
LEFT = Qt.MouseButton.LeftButton


@pytest.fixture
def book(tmp_path: Path) -> Path:
    path = tmp_path / "peas.pedbook"
    BookFile.create(path, read(demo("two_peas_both_ways")).book).close()
    return path


@pytest.fixture
def other(tmp_path: Path) -> Path:
    path = tmp_path / "tomatoes.pedbook"
    BookFile.create(path, read(demo("a_leaf_for_hollin_plate")).book).close()
    return path


@pytest.fixture
def kept(window: MainWindow, settle: Settle, book: Path) -> MainWindow:
    window.open_path(book)
    settle()
    return window


@pytest.fixture
def again(
    qtbot: QtBot, kept: MainWindow, preferences: Preferences, book: Path
) -> Iterator[Callable[[], MainWindow]]:
    """Close the window and start the program anew on the same book."""
    made: list[MainWindow] = []

    def start() -> MainWindow:
        kept.close()
        assert not kept.isVisible()
        window = MainWindow(Preferences(preferences._settings))
        qtbot.addWidget(window)
        made.append(window)
        window.show()
        qtbot.waitExposed(window)
        window.open_path(book)
        qtbot.waitUntil(lambda: not window.errands.awaits(), timeout=15000)
        QApplication.processEvents()
        return window

    yield start
    for window in made:
        if window.dialog is not None:
            window.dialog.reject()
        window.close()


def type_note(qtbot: QtBot, window: MainWindow, text: str) -> None:
    qtbot.keyClick(window, Qt.Key.Key_F12)
    form = window.bench.form
    assert form is not None
    qtbot.keyClicks(form._fields["text"].focusProxy(), text)


def test_a_half_typed_form_is_there_again_after_the_window_was_closed(
    qtbot: QtBot, kept: MainWindow, again: Callable[[], MainWindow]
) -> None:
    kept.show_plant("TP")
    type_note(qtbot, kept, "Pale pods, and")
    window = again()
    form = window.bench.form
    assert form is not None
    assert form.opened_as == "note"
    assert form._fields["text"].text() == "Pale pods, and"
    assert form._fields["plant"].text() == "TP"
    # The day of writing, and not the day on which it is laid out again.
    assert form._fields["date"].text() == datetime.date.today().isoformat()
    assert not form.again.isHidden()
    assert "Note" in window.unfinished_strip.text.text()
    assert form.touched(), "closed once more it would be lost"
    form.record()
    qtbot.waitUntil(lambda: not window.errands.awaits(), timeout=15000)
    assert window.bench.form is None
    assert window.desk.book is not None
    assert "Pale pods, and" in {note.text for note in window.desk.book.notes}
    window.unfinished.keep()
    assert window.preferences.unfinished(window.opened.path) == {}  # type: ignore[union-attr]


def test_two_forms_come_back_in_their_order(
    qtbot: QtBot, kept: MainWindow, again: Callable[[], MainWindow]
) -> None:
    kept.writing.open("variety")
    assert kept.bench.form is not None
    kept.bench.form._fields["name"].set_text("Half a name")
    type_note(qtbot, kept, "Half a note")
    window = again()
    assert [form.opened_as for form in window.bench.forms()] == ["variety", "note"]
    qtbot.keyClick(window.bench.form, Qt.Key.Key_Escape)
    assert window.bench.form is not None
    assert window.bench.form._fields["name"].text() == "Half a name"


def test_another_book_does_not_get_it_and_the_own_one_does(
    qtbot: QtBot, kept: MainWindow, settle: Settle, book: Path, other: Path
) -> None:
    type_note(qtbot, kept, "of peas")
    kept.open_path(other)
    settle()
    assert kept.bench.form is None
    assert kept.unfinished_strip.isHidden()
    kept.open_path(book)
    settle()
    assert kept.bench.form is not None
    assert kept.bench.form._fields["text"].text() == "of peas"
    kept.close_book()
    assert kept.bench.form is None
    kept.open_path(book)
    settle()
    assert kept.bench.form is not None


def test_a_form_that_was_left_or_only_proposed_does_not_come_back(
    qtbot: QtBot, kept: MainWindow, again: Callable[[], MainWindow]
) -> None:
    type_note(qtbot, kept, "not this")
    qtbot.keyClick(kept.bench.form, Qt.Key.Key_Escape)
    kept.writing.open("pollination", plant="TP")
    window = again()
    assert window.bench.form is None
    assert window.unfinished_strip.isHidden()


def test_what_is_typed_is_put_down_while_the_book_lies_open(
    qtbot: QtBot, kept: MainWindow, book: Path
) -> None:
    type_note(qtbot, kept, "before the power went")
    kept.unfinished._timer.timeout.emit()
    stored = kept.preferences.unfinished(book)
    assert stored["forms"][0][1]["text"] == "before the power went"  # type: ignore[index]


def open_card(window: MainWindow, settle: Settle, code: str) -> None:
    window.show_plant(code)
    window.pedigree.open_card(code)
    settle()


def type_place(qtbot: QtBot, window: MainWindow, text: str) -> None:
    facts = window.pedigree.card.facts
    assert facts is not None
    facts.open("place")
    field = facts.values["place"].field
    assert field is not None
    qtbot.keyClicks(field.focusProxy(), text)


def type_on_card(qtbot: QtBot, window: MainWindow, text: str) -> None:
    notes = window.pedigree.card.notes
    assert notes is not None
    notes.write()
    assert notes.writer is not None
    qtbot.keyClicks(notes.writer.text.focusProxy(), text)


def test_a_value_and_a_note_wait_on_the_card_of_their_plant(
    qtbot: QtBot, kept: MainWindow, settle: Settle
) -> None:
    card = kept.pedigree.card
    open_card(kept, settle, "21-01-3")
    type_place(qtbot, kept, "Bed 9")
    open_card(kept, settle, "TP")
    assert "waits on the card of 21-01-3" in kept.said.text()
    type_on_card(qtbot, kept, "half a note")
    kept.pedigree.canvas.setFocus()
    held = kept.focusWidget()
    open_card(kept, settle, "21-01-3")
    assert card.facts is not None
    assert card.facts.values["place"].typed == "Bed 9"
    # It waits; the keys stay where the person is.
    assert kept.focusWidget() is held
    open_card(kept, settle, "TP")
    assert card.notes is not None
    assert card.notes.writer is not None
    assert card.notes.writer.text.text() == "half a note"


def test_what_is_typed_on_cards_comes_back_with_the_book(
    qtbot: QtBot, kept: MainWindow, settle: Settle, again: Callable[[], MainWindow]
) -> None:
    card = kept.pedigree.card
    open_card(kept, settle, "TP")
    type_on_card(qtbot, kept, "half a note")
    open_card(kept, settle, "21-01-3")
    type_place(qtbot, kept, "Bed 9")
    assert card.facts is not None
    card.facts.open("status")
    card.facts.open("note", "pale")
    window = again()
    card = window.pedigree.card
    assert {"TP", "21-01-3"} == {card.code, *card.waiting.held}
    strip = window.unfinished_strip
    assert "the card of TP" in strip.text.text()
    shown = next(one for one in strip.buttons if "21-01-3" in one.text())  # type: ignore[attr-defined]
    qtbot.mouseClick(shown, LEFT)
    qtbot.waitUntil(lambda: not window.errands.awaits(), timeout=15000)
    QApplication.processEvents()
    assert card.code == "21-01-3"
    assert card.facts is not None
    held = card.facts.values["place"]
    assert held.typed == "Bed 9"
    assert card.facts.values["note"].typed == "pale"
    assert card.facts.values["status"].field is None, "nothing was typed there"
    assert held.field is not None
    qtbot.keyClick(held.field.focusProxy(), Qt.Key.Key_Return)
    qtbot.waitUntil(lambda: not window.errands.awaits(), timeout=15000)
    assert window.desk.book is not None
    assert window.desk.book.plants["21-01-3"].place == "Bed 9"


def test_what_was_changed_elsewhere_meanwhile_is_not_written_over(
    qtbot: QtBot, kept: MainWindow, settle: Settle, again: Callable[[], MainWindow], book: Path
) -> None:
    open_card(kept, settle, "21-01-3")
    assert kept.pedigree.card.facts is not None
    kept.pedigree.card.facts.open("note", "mine")
    kept.unfinished.keep()
    kept.desk.record(
        "note", lambda edit: edit.update(edit.book.plants["21-01-3"], note="of another")
    )
    settle()
    window = again()
    facts = window.pedigree.card.facts
    assert facts is not None
    held = facts.values["note"]
    assert held.typed == "mine"
    assert held.field is not None
    qtbot.keyClick(held.field.focusProxy(), Qt.Key.Key_Return)
    qtbot.waitUntil(lambda: not window.errands.awaits(), timeout=15000)
    assert window.desk.book is not None
    assert window.desk.book.plants["21-01-3"].note == "of another"
    assert "changed" in held.field.said()


def test_typed_words_of_one_book_do_not_come_on_the_card_of_the_next(
    kept: MainWindow, settle: Settle, tmp_path: Path
) -> None:
    twin = tmp_path / "twin.pedbook"
    BookFile.create(twin, read(demo("two_peas_both_ways")).book).close()
    open_card(kept, settle, "21-01-3")
    assert kept.pedigree.card.facts is not None
    kept.pedigree.card.facts.open("place", "Bed 9")
    kept.open_path(twin)
    settle()
    open_card(kept, settle, "21-01-3")
    assert kept.pedigree.card.facts is not None
    assert kept.pedigree.card.facts.typing() == ()


def records_of(window: MainWindow) -> RecordsPage:
    page = window.book_pages["records"].page()  # type: ignore[attr-defined]
    assert isinstance(page, RecordsPage)
    return page


def test_a_score_that_was_not_taken_waits_through_another_day_and_a_new_start(
    qtbot: QtBot, kept: MainWindow, settle: Settle, again: Callable[[], MainWindow]
) -> None:
    kept.desk.record(
        "trait", lambda edit: edit.add(Trait(trait="vigour", type="score", low=1, high=9))
    )
    settle()
    kept._show_part("records", SCORES)
    sheet = records_of(kept).scores
    settle()
    trait = sheet.model.grid.traits.index("vigour")  # type: ignore[union-attr]
    plant = sheet.plants()[0]
    sheet.date.set_text("2026-05-03")
    sheet._show()
    sheet.view.setCurrentIndex(sheet.model.index(0, trait))
    qtbot.keyClicks(sheet.view, "7")
    editor = kept.focusWidget()
    assert isinstance(editor, QLineEdit)
    qtbot.keyClicks(editor, "7")
    # The cell is open still; closing the window takes it, and it does not fit.
    kept.close()
    assert kept.isVisible()
    assert "not taken" in kept.said.text()
    sheet.date.set_text("2026-05-04")
    sheet._show()
    assert not sheet.model.waiting
    sheet.date.set_text("2026-05-03")
    sheet._show()
    assert sheet.model.waiting[0, trait][0] == "77"
    window = again()
    assert "the score sheet of 2026-05-03" in window.unfinished_strip.text.text()
    sheet = records_of(window).scores
    grid = sheet.model.grid
    assert grid is not None
    assert grid.date == "2026-05-03"
    cell = (grid.plants.index(plant), grid.traits.index("vigour"))
    assert sheet.model.waiting[cell][0] == "77"


def test_a_garden_sheet_typed_halfway_is_there_again(
    qtbot: QtBot, kept: MainWindow, settle: Settle, again: Callable[[], MainWindow]
) -> None:
    sheet = PrintedSheet("7F3K-Q", "scores", ("TP", "BA"), ("height",), "2026-05-01")
    trait = Trait(trait="height", type="measure", unit="cm")

    def work(edit) -> None:  # type: ignore[no-untyped-def]
        if "height" not in edit.book.traits:
            edit.add(trait)
        keep_sheets(edit, (sheet,))

    kept.desk.record("sheet", work)
    settle()
    kept._show_part("season", SHEETS)
    settle()
    page = kept.book_pages["season"].page()  # type: ignore[attr-defined]
    assert isinstance(page, SeasonPage)
    typing = page.sheets
    typing.view.setCurrentIndex(typing.model.index(1, 0))
    qtbot.keyClicks(typing.view, "1")
    editor = kept.focusWidget()
    assert isinstance(editor, QLineEdit)
    qtbot.keyClicks(editor, "20")
    window = again()
    number = typing.model.sheet.number  # type: ignore[union-attr]
    assert f"garden sheet {number}" in window.unfinished_strip.text.text()
    qtbot.mouseClick(window.unfinished_strip.buttons[0], LEFT)
    page = window.book_pages["season"].page()  # type: ignore[attr-defined]
    assert isinstance(page, SeasonPage)
    assert page.part() == SHEETS
    assert page.sheets.model.cells == {(1, 0): "120"}


def test_what_was_chosen_for_a_table_is_proposed_again_after_cancel(
    qtbot: QtBot, kept: MainWindow, settle: Settle, tmp_path: Path
) -> None:
    from pedigreeview.window.importing.entrance import bring_in
    from pedigreeview.window.importing.wizard import ImportWizard

    table = tmp_path / "rows.csv"
    table.write_text("code,mother,father,colour\nQ1,TP,BA,green\nQ2,TP,BA,white\n", "utf-8")

    def begun() -> ImportWizard:
        bring_in(kept, table)
        settle()
        wizard = kept.dialog
        assert isinstance(wizard, ImportWizard)
        while wizard.current() is not wizard.columns:
            qtbot.mouseClick(wizard.next_button, LEFT)
            settle()
        return wizard

    wizard = begun()
    box = wizard.columns.meanings[3]
    assert box.currentData() != "note"
    box.setFocus()
    while box.currentData() != "note":
        before = box.currentIndex()
        qtbot.keyClick(box, Qt.Key.Key_Up)
        assert box.currentIndex() != before
    qtbot.mouseClick(wizard.cancel_button, LEFT)
    settle()
    again = begun()
    assert again.columns.meanings[3].currentData() == "note"
    again.reject()


def test_what_is_typed_goes_along_when_a_table_becomes_a_book(
    qtbot: QtBot, window: MainWindow, settle: Settle, tmp_path: Path
) -> None:
    table = tmp_path / "peas.csv"
    table.write_text(
        "plant,kind,fixation,seed_parent,pollen_parent\nTP,variety,1,,\nBA,variety,1,,\n"
        "F1,,,TP,BA\n",
        "utf-8",
    )
    window.open_path(table)
    settle()
    open_card(window, settle, "F1")
    type_place(qtbot, window, "Bed 9")
    qtbot.mouseClick(window.keep.button, LEFT)
    settle()
    assert window.opened is not None
    assert window.opened.file is not None
    open_card(window, settle, "F1")
    facts = window.pedigree.card.facts
    assert facts is not None
    assert facts.values["place"].typed == "Bed 9"
    assert window.preferences.unfinished(table) == {}


def test_scores_of_one_book_are_not_put_down_for_the_next(
    qtbot: QtBot, kept: MainWindow, settle: Settle, book: Path, other: Path
) -> None:
    kept._show_part("records", SCORES)
    settle()
    sheet = records_of(kept).scores
    grid = sheet.model.grid
    assert grid is not None
    assert kept.opened is not None
    score = [grid.plants[0], grid.traits[0], "2026-05-03", grid.of, "?", "no"]
    assert sheet.take_up(kept.opened.net, [score])
    kept.open_path(other)
    settle()
    kept.unfinished.keep()
    assert kept.preferences.unfinished(other) == {}
    assert "pages" in kept.preferences.unfinished(book)


def test_a_book_opened_to_read_keeps_what_was_half_typed(
    qtbot: QtBot, kept: MainWindow, settle: Settle, book: Path
) -> None:
    type_note(qtbot, kept, "Pale pods, and")
    kept.close_book()
    settle()
    kept.door.open_to_read(book)
    settle()
    assert not kept.desk.can_write
    assert kept.bench.form is None
    kept.unfinished.keep()
    kept.close_book()
    settle()
    kept.open_path(book)
    settle()
    assert kept.bench.form is not None
    assert kept.bench.form._fields["text"].text() == "Pale pods, and"


def test_another_window_that_leaves_the_form_does_not_leave_it_for_this_one(
    qtbot: QtBot, kept: MainWindow, preferences: Preferences, book: Path
) -> None:
    type_note(qtbot, kept, "Pale pods, and")
    kept.unfinished.keep()
    preferences.set_unfinished(book, {})
    kept.unfinished.keep()
    assert "forms" in preferences.unfinished(book)


def test_two_programs_keep_what_is_half_typed_in_each(
    preferences: Preferences, tmp_path: Path
) -> None:
    settings = tmp_path / "settings.ini"
    mine, theirs = tmp_path / "mine.pedbook", tmp_path / "theirs.pedbook"
    preferences.set_unfinished(theirs, {"forms": [["note", {"text": "half"}]]})
    written = settings.read_bytes()
    preferences.set_unfinished(theirs, {})
    # As another program writes it.
    settings.write_bytes(written)
    preferences.set_unfinished(mine, {"forms": []})
    assert preferences.unfinished(theirs) == {"forms": [["note", {"text": "half"}]]}


def test_what_is_typed_of_a_plant_that_is_not_there_waits_on(
    kept: MainWindow, settle: Settle, book: Path
) -> None:
    cards = {"23-99": {"note": ["half", "2026-05-03"]}, "TP": {"note": ["pale", "2026-05-03"]}}
    kept.close_book()
    settle()
    kept.preferences.set_unfinished(book, {"pages": {"pedigree": {"cards": cards}}})
    kept.open_path(book)
    settle()
    kept.unfinished.keep()
    held = kept.preferences.unfinished(book)
    assert held == {"pages": {"pedigree": {"cards": cards}}}


@pytest.mark.parametrize(
    "pages",
    [
        {"pedigree": {"cards": {"TP": 5, "BA": {"values": 5, "note": 5}}}},
        {"season": {"sheets": {"cells": {"7F3K-Q": 5}}}},
        {"records": {"scores": 5}, "checks": {"reasons": 5}, "nothing": 5},
    ],
)
def test_settings_that_are_spoilt_do_not_keep_a_book_shut(
    kept: MainWindow, settle: Settle, book: Path, pages: dict[str, object]
) -> None:
    sheet = PrintedSheet("7F3K-Q", "scores", ("TP", "BA"), ("height",), "2026-05-01")
    kept.desk.record("sheet", lambda edit: keep_sheets(edit, (sheet,)))
    settle()
    kept.close_book()
    settle()
    kept.preferences.set_unfinished(book, {"forms": [5, ["note"]], "pages": pages})
    kept.open_path(book)
    settle()
    assert kept.opened is not None
    assert kept.unfinished_strip.isHidden()


def test_what_is_typed_goes_along_into_a_copy_in_which_one_works_on(
    qtbot: QtBot, kept: MainWindow, settle: Settle, tmp_path: Path
) -> None:
    type_note(qtbot, kept, "Pale pods, and")
    kept.door.save_copy(go_on=True)
    dialog = kept.dialog
    assert isinstance(dialog, SaveCopy)
    dialog.file.setText(str(tmp_path / "copy.pedbook"))
    qtbot.mouseClick(dialog.save_button, LEFT)
    settle()
    assert kept.opened is not None
    assert kept.opened.path.name == "copy.pedbook"
    form = kept.bench.form
    assert form is not None
    assert form._fields["text"].text() == "Pale pods, and"


def test_it_is_the_same_book_however_the_way_to_it_is_written(
    qtbot: QtBot, kept: MainWindow, settle: Settle, book: Path
) -> None:
    type_note(qtbot, kept, "half")
    kept.close_book()
    settle()
    (book.parent / "shed").mkdir()
    kept.open_path(book.parent / "shed" / ".." / book.name)
    settle()
    form = kept.bench.form
    assert form is not None
    assert form._fields["text"].text() == "half"
