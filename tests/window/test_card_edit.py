"""The card written on: values changed where they stand, notes, photos."""

from __future__ import annotations

import datetime
from collections.abc import Callable
from pathlib import Path

import pytest
from PySide6.QtCore import QMimeData, QPoint, QPointF, Qt, QUrl
from PySide6.QtGui import QColor, QDragEnterEvent, QDropEvent, QGuiApplication, QImage
from PySide6.QtWidgets import QComboBox, QLabel, QLineEdit
from pytestqt.qtbot import QtBot

from pedigreeview import read
from pedigreeview.book.book_file import BookFile
from pedigreeview.book.records import Note
from pedigreeview.places import demo
from pedigreeview.window.card import Card
from pedigreeview.window.card_edit import Value
from pedigreeview.window.main_window import MainWindow
from pedigreeview.window.photo_dialog import PhotoDialog
from pedigreeview.window.photo_files import LONG_SIDE, image_of, prepared_file

Settle = Callable[[], None]
LEFT = Qt.MouseButton.LeftButton
CODE = "21-01-3"


@pytest.fixture
def kept(window: MainWindow, settle: Settle, tmp_path: Path) -> MainWindow:
    path = tmp_path / "peas.pedbook"
    BookFile.create(path, read(demo("two_peas_both_ways")).book).close()
    window.open_path(path)
    settle()
    window.show_plant(CODE)
    window.pedigree.open_card(CODE)
    settle()
    return window


def card_of(window: MainWindow) -> Card:
    return window.pedigree.card


def value(window: MainWindow, name: str) -> Value:
    facts = card_of(window).facts
    assert facts is not None
    held = facts.values[name]
    card_of(window)._area.ensureWidgetVisible(held)
    return held


def retype(qtbot: QtBot, held: Value, text: str) -> None:
    assert held.field is not None
    editor = held.field.focusProxy()
    assert isinstance(editor, QLineEdit)
    editor.selectAll()
    qtbot.keyClicks(editor, text)
    qtbot.keyClick(editor, Qt.Key.Key_Return)


def plant(window: MainWindow, code: str = CODE):  # type: ignore[no-untyped-def]
    book = window.desk.book
    assert book is not None
    return book.plants[code]


def texts(window: MainWindow) -> str:
    return "\n".join(label.text() for label in card_of(window).findChildren(QLabel))


def test_a_click_types_enter_keeps_and_undo_takes_it_back(
    qtbot: QtBot, kept: MainWindow, settle: Settle
) -> None:
    held = value(kept, "sown")
    qtbot.mouseClick(held.shown, LEFT)
    retype(qtbot, held, "3 May 2022")
    settle()
    assert plant(kept).sown == "2022-05-03"
    assert kept.desk.undo_words == f"sown of {CODE}"
    # The card was laid anew; the keys are at the value still.
    assert value(kept, "sown").shown.text() == "2022-05-03"
    assert value(kept, "sown").shown.hasFocus()
    kept.desk.undo()
    settle()
    assert value(kept, "sown").shown.text() == "2022-03-29"


def test_a_date_that_is_none_is_said_beside_the_field_and_esc_leaves(
    qtbot: QtBot, kept: MainWindow, settle: Settle
) -> None:
    held = value(kept, "sown")
    held.shown.setFocus()
    qtbot.keyClick(held.shown, Qt.Key.Key_F2)
    retype(qtbot, held, "31.2.")
    assert held.field is not None
    assert "31" in held.field.said()
    editor = held.field.focusProxy()
    assert isinstance(editor, QLineEdit)
    qtbot.keyClick(editor, Qt.Key.Key_Escape)
    settle()
    assert held.field is None
    assert held.shown.hasFocus()
    assert plant(kept).sown == "2022-03-29"
    assert card_of(kept).isVisible()
    assert kept.desk.undo_words == ""


def test_f2_on_the_card_names_the_plant(qtbot: QtBot, kept: MainWindow, settle: Settle) -> None:
    card_of(kept).pin_button.setFocus()
    qtbot.keyClick(card_of(kept).pin_button, Qt.Key.Key_F2)
    retype(qtbot, value(kept, "name"), "Long May")
    settle()
    assert plant(kept).name == "Long May"
    assert value(kept, "name").shown.text() == "Long May"


def test_a_place_is_a_move_that_stays_written(
    qtbot: QtBot, kept: MainWindow, settle: Settle
) -> None:
    was = plant(kept).place
    assert was
    qtbot.mouseClick(value(kept, "place").shown, LEFT)
    retype(qtbot, value(kept, "place"), "bed 9")
    settle()
    assert plant(kept).place == "bed 9"
    today = datetime.date.today().isoformat()
    note = Note(f"plant {CODE}", today, f"Moved from {was} to bed 9.")
    assert kept.desk.book is not None
    assert note in kept.desk.book.notes
    assert note.text in texts(kept)


def test_a_blank_is_added_by_its_button(qtbot: QtBot, kept: MainWindow, settle: Settle) -> None:
    facts = card_of(kept).facts
    assert facts is not None
    assert not value(kept, "protected").isVisible()
    qtbot.mouseClick(facts.adders["protected"], LEFT)
    retype(qtbot, value(kept, "protected"), "plant breeder's right until 2030")
    settle()
    assert plant(kept).protected == "plant breeder's right until 2030"
    assert value(kept, "protected").isVisible()


def test_another_code_is_warned_of_and_goes_everywhere(
    qtbot: QtBot, kept: MainWindow, settle: Settle
) -> None:
    qtbot.mouseClick(value(kept, "plant").shown, LEFT)
    assert "Every place in the book" in value(kept, "plant")._below.text()
    retype(qtbot, value(kept, "plant"), "TP")
    settle()
    field = value(kept, "plant").field
    assert field is not None
    assert field.said()
    retype(qtbot, value(kept, "plant"), "21-01-99")
    settle()
    book = kept.desk.book
    assert book is not None
    assert CODE not in book.plants
    assert all(CODE not in (c.seed_parent, c.pollen_parent) for c in book.crosses.values())
    assert any(cross.seed_parent == "21-01-99" for cross in book.crosses.values())
    assert kept.pedigree.focus == "21-01-99"
    assert card_of(kept).code == "21-01-99"


def test_what_is_typed_outlives_an_edit_elsewhere_and_writes_nothing_over(
    qtbot: QtBot, kept: MainWindow, settle: Settle, tmp_path: Path
) -> None:
    qtbot.mouseClick(value(kept, "sown").shown, LEFT)
    field = value(kept, "sown").field
    assert field is not None
    field.set_text("2022-05-04")
    with BookFile.open(tmp_path / "peas.pedbook", backups=False) as other, other.edit("x") as edit:
        edit.update(edit.book.plants[CODE], sown="2022-04-01")
    kept.desk.look()
    settle()
    assert plant(kept).sown == "2022-04-01"
    held = value(kept, "sown")
    assert held.typed == "2022-05-04"
    assert held.field is not None
    editor = held.field.focusProxy()
    assert isinstance(editor, QLineEdit)
    qtbot.keyClick(editor, Qt.Key.Key_Return)
    settle()
    assert plant(kept).sown == "2022-04-01"
    assert held.field is not None
    assert held.field.said()


def test_a_table_is_kept_as_a_book_by_the_first_value_typed(
    qtbot: QtBot,
    window: MainWindow,
    settle: Settle,
    tmp_path: Path,
) -> None:
    path = tmp_path / "two.csv"
    path.write_text("plant,seed_parent,pollen_parent,kind\nA,,,plant\nB,,,plant\nC,A,B,\n")
    window.open_path(path)
    settle()
    window.show_plant("C")
    window.pedigree.open_card("C")
    settle()
    qtbot.mouseClick(value(window, "name").shown, LEFT)
    assert "two.pedbook" in value(window, "name")._below.text()
    retype(qtbot, value(window, "name"), "Third")
    settle()
    assert window.opened is not None
    assert window.opened.path == tmp_path / "two.pedbook"
    assert plant(window, "C").name == "Third"


def test_a_book_that_is_only_read_says_so(qtbot: QtBot, kept: MainWindow, settle: Settle) -> None:
    assert kept.opened is not None
    kept.door.open_to_read(kept.opened.path)
    settle()
    kept.pedigree.open_card(CODE)
    settle()
    held = value(kept, "sown")
    qtbot.mouseClick(held.shown, LEFT)
    assert held.field is None
    assert held._below.text()
    assert card_of(kept).photos is not None
    assert not card_of(kept).photos.add_button.isVisible()  # type: ignore[union-attr]


def test_a_note_of_the_day_by_keys(qtbot: QtBot, kept: MainWindow, settle: Settle) -> None:
    notes = card_of(kept).notes
    assert notes is not None
    qtbot.mouseClick(notes.add_button, LEFT)
    assert notes.writer is not None
    qtbot.keyClicks(notes.writer.text.editor, "Purple wings.")
    qtbot.keyClick(notes.writer.text.editor, Qt.Key.Key_Tab)
    notes.writer.date.editor.selectAll()
    qtbot.keyClicks(notes.writer.date.editor, "2.7.2022")
    qtbot.keyClick(notes.writer.date.editor, Qt.Key.Key_Return)
    settle()
    assert kept.desk.book is not None
    assert Note(f"plant {CODE}", "2022-07-02", "Purple wings.") in kept.desk.book.notes
    assert "2022-07-02  Purple wings." in texts(kept)
    assert card_of(kept).notes.writer is None  # type: ignore[union-attr]


def test_an_empty_note_is_refused_beside_its_field(
    qtbot: QtBot, kept: MainWindow, settle: Settle
) -> None:
    notes = card_of(kept).notes
    assert notes is not None
    notes.write()
    assert notes.writer is not None
    qtbot.keyClick(notes.writer.text.editor, Qt.Key.Key_Return)
    settle()
    assert "says nothing" in notes.writer.text.said()
    qtbot.keyClick(notes.writer.text.editor, Qt.Key.Key_Escape)
    assert notes.writer is None
    assert card_of(kept).isVisible()


# Photos ------------------------------------------------------------------------------------------


def picture(path: Path, width: int, height: int, ending: str = "jpg") -> Path:
    image = QImage(width, height, QImage.Format.Format_RGB32)
    image.fill(QColor("#488844"))
    file = path / f"leaf.{ending}"
    assert image.save(str(file))
    return file


def turned(path: Path) -> Path:
    """A JPEG of 40 by 20 pixels with the EXIF mark 6: held upright, to be turned by a quarter.

    The mark is written by hand after the EXIF standard (from memory): big-endian TIFF with the one
    entry 0x0112, 'Orientation', of type SHORT.
    """
    data = picture(path, 40, 20).read_bytes()
    entry = bytes.fromhex("0112 0003 00000001 0006 0000".replace(" ", ""))
    tiff = b"MM\x00\x2a\x00\x00\x00\x08\x00\x01" + entry + b"\x00\x00\x00\x00"
    exif = b"Exif\x00\x00" + tiff
    segment = b"\xff\xe1" + (len(exif) + 2).to_bytes(2, "big") + exif
    file = path / "turned.jpg"
    file.write_bytes(data[:2] + segment + data[2:])
    return file


def test_a_photo_is_scaled_turned_and_keeps_what_is_transparent(tmp_path: Path) -> None:
    large = prepared_file(picture(tmp_path, 3200, 400))
    image = image_of(large.data, 9999)
    assert (image.width(), image.height()) == (LONG_SIDE, 200)
    assert large.data.startswith(b"\xff\xd8")
    upright = image_of(prepared_file(turned(tmp_path)).data, 9999)
    assert (upright.width(), upright.height()) == (20, 40)
    clear = QImage(8, 8, QImage.Format.Format_ARGB32)
    clear.fill(QColor(0, 0, 0, 0))
    assert clear.save(str(tmp_path / "clear.png"))
    kept = prepared_file(tmp_path / "clear.png")
    assert kept.name == "clear.png"
    assert kept.data.startswith(b"\x89PNG")


def drop(card: Card, mime: QMimeData) -> None:
    spot = QPoint(20, 60)
    where = (mime, LEFT, Qt.KeyboardModifier.NoModifier)
    enter = QDragEnterEvent(spot, Qt.DropAction.CopyAction, *where)
    card.dragEnterEvent(enter)
    assert enter.isAccepted()
    card.dropEvent(QDropEvent(QPointF(spot), Qt.DropAction.CopyAction, *where))


def test_photos_are_dropped_pasted_enlarged_told_of_and_removed(
    qtbot: QtBot, kept: MainWindow, settle: Settle, tmp_path: Path
) -> None:
    mime = QMimeData()
    mime.setUrls([QUrl.fromLocalFile(str(picture(tmp_path, 60, 40)))])
    drop(card_of(kept), mime)
    settle()
    settle()
    book = kept.desk.book
    assert book is not None
    (name,) = book.photos
    assert kept.desk.file is not None
    assert image_of(kept.desk.file.file(f"photos/{name}"), 999).width() == 60
    pasted = QImage(30, 30, QImage.Format.Format_RGB32)
    pasted.fill(QColor("#884488"))
    QGuiApplication.clipboard().setImage(pasted)
    card_of(kept).pin_button.setFocus()
    qtbot.keyClick(card_of(kept).pin_button, Qt.Key.Key_V, Qt.KeyboardModifier.ControlModifier)
    settle()
    settle()
    assert kept.desk.book is not None
    assert len(kept.desk.book.photos) == 2
    photos = card_of(kept).photos
    assert photos is not None
    assert all(not thumb.icon().isNull() for thumb in photos.thumbs.values())
    card_of(kept)._area.ensureWidgetVisible(photos.thumbs[name])
    qtbot.mouseClick(photos.thumbs[name], LEFT)
    settle()
    dialog = kept.dialog
    assert isinstance(dialog, PhotoDialog)
    assert dialog.picture.pixmap.width() == 60
    dialog.caption.editor.selectAll()
    qtbot.keyClicks(dialog.caption.editor, "First leaf")
    qtbot.keyClick(dialog.caption.editor, Qt.Key.Key_Return)
    settle()
    assert kept.desk.book.photos[name].caption == "First leaf"
    qtbot.mouseClick(dialog.remove_button, LEFT)
    settle()
    assert name not in kept.desk.book.photos
    assert dialog.isVisible()
    qtbot.mouseClick(dialog.remove_button, LEFT)
    settle()
    assert not kept.desk.book.photos
    assert kept.dialog is None
    kept.desk.undo()
    kept.desk.undo()
    settle()
    assert image_of(kept.desk.file.file(f"photos/{name}"), 999).width() == 60


def test_what_is_no_picture_is_refused_on_the_card(
    kept: MainWindow, settle: Settle, tmp_path: Path
) -> None:
    file = tmp_path / "notes.png"
    file.write_text("no picture")
    photos = card_of(kept).photos
    assert photos is not None
    photos.add_files([file])
    settle()
    assert "cannot be read as a picture" in photos.message.text()
    assert kept.desk.undo_words == ""


def test_a_cull_takes_its_reason_by_keys_and_tells_it_among_the_notes(
    qtbot: QtBot, kept: MainWindow, settle: Settle
) -> None:
    held = value(kept, "status")
    held.shown.setFocus()
    qtbot.keyClick(held.shown, Qt.Key.Key_F2)
    assert held.field is not None
    choice, why = held.field.editors()
    assert isinstance(choice, QComboBox)
    assert isinstance(why, QLineEdit)
    while choice.currentData() != "culled":
        qtbot.keyClick(choice, Qt.Key.Key_Down)
    qtbot.keyClick(choice, Qt.Key.Key_Tab)
    qtbot.keyClicks(why, "pods too short")
    qtbot.keyClick(why, Qt.Key.Key_Return)
    settle()
    assert plant(kept).status == "culled"
    assert kept.desk.book is not None
    (note,) = [one for one in kept.desk.book.notes if "pods too short" in one.text]
    assert note.date == datetime.date.today().isoformat()
    assert "pods too short" in texts(kept)
    kept.desk.undo()
    settle()
    assert "pods too short" not in texts(kept)


def test_a_reason_given_later_is_kept_beside_the_status_that_stays(
    qtbot: QtBot, kept: MainWindow, settle: Settle
) -> None:
    before = plant(kept).status
    held = value(kept, "status")
    held.open()
    assert held.field is not None
    why = held.field.editors()[1]
    qtbot.keyClicks(why, "best of the row")
    qtbot.keyClick(why, Qt.Key.Key_Return)
    settle()
    assert plant(kept).status == before
    assert "best of the row" in texts(kept)


def test_a_status_left_as_it_is_writes_nothing(
    qtbot: QtBot, kept: MainWindow, settle: Settle
) -> None:
    held = value(kept, "status")
    held.open()
    assert held.field is not None
    qtbot.keyClick(held.field.editors()[0], Qt.Key.Key_Return)
    settle()
    assert held.field is None
    assert kept.desk.undo_words == ""
