"""A whole season by keyboard alone: from an empty book to plants kept and culled."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QApplication, QCheckBox, QComboBox, QLineEdit
from pytestqt.qtbot import QtBot

from pedigreeview.book.book import Book, BookSettings
from pedigreeview.book.book_file import BookFile
from pedigreeview.window.forms.form import Form
from pedigreeview.window.main_window import MainWindow

Settle = Callable[[], None]


@pytest.fixture
def empty(window: MainWindow, settle: Settle, tmp_path: Path) -> MainWindow:
    path = tmp_path / "mine.pedbook"
    BookFile.create(path, Book(settings=BookSettings(name="Mine", crop="pea"))).close()
    window.open_path(path)
    settle()
    assert window.opened is not None
    return window


class Hands:
    """What a person does at the keyboard."""

    def __init__(self, qtbot: QtBot, window: MainWindow, settle: Settle) -> None:
        self.qtbot, self.window, self.settle = qtbot, window, settle

    def key(self, key: Qt.Key, held: Qt.KeyboardModifier = Qt.KeyboardModifier.NoModifier) -> None:
        self.qtbot.keyClick(QApplication.focusWidget() or self.window, key, held)

    def form(self, letter: Qt.Key) -> Form:
        self.key(letter)
        form = self.window.bench.form
        assert form is not None
        return form

    def to(self, column: str) -> None:
        """Tab from field to field until this one has the cursor."""
        form = self.window.bench.form
        assert form is not None
        for _ in range(40):
            held = QApplication.focusWidget()
            if held is not None and held is form._fields[column].focusProxy():
                return
            self.key(Qt.Key.Key_Tab)
        raise AssertionError(f"Tab never reaches {column}")

    def type(self, column: str, text: str) -> None:
        self.to(column)
        held = QApplication.focusWidget()
        if isinstance(held, QLineEdit):
            held.selectAll()
            self.qtbot.keyClicks(held, text)
        elif isinstance(held, QComboBox):
            for _ in range(held.count()):
                if held.currentData() == text:
                    break
                self.key(Qt.Key.Key_Down)
            assert held.currentData() == text
        elif isinstance(held, QCheckBox):
            self.key(Qt.Key.Key_Space)
        if self.window.bench.form is not None:
            self.key(Qt.Key.Key_Tab)

    def record(self) -> None:
        form = self.window.bench.form
        assert form is not None
        self.key(Qt.Key.Key_Return)
        self.settle()
        assert self.window.bench.form is None, [
            form.message.text(),
            *(field.said() for field in form._fields.values()),
        ]


def test_a_season_from_an_empty_book(qtbot: QtBot, empty: MainWindow, settle: Settle) -> None:
    hands = Hands(qtbot, empty, settle)
    book = lambda: empty.desk.book  # noqa: E731

    for name in ("Mossgate Early", "Hill Amber"):
        hands.form(Qt.Key.Key_F3)
        hands.type("name", name)
        hands.type("obtained_from", "a neighbour")
        hands.record()
    assert list(book().plants) == ["ME", "HA"]

    hands.form(Qt.Key.Key_F4)
    hands.type("seed_parent", "ME")
    hands.type("pollen_parent", "HA")
    hands.type("both", "")
    hands.record()
    first, back = book().crosses.values()
    assert (first.seed_parent, first.pollen_parent) == ("ME", "HA")
    assert (back.seed_parent, back.pollen_parent) == ("HA", "ME")
    assert first.state == "planned"

    for cross, flowers in ((first.cross, "6"), (back.cross, "4")):
        hands.form(Qt.Key.Key_F5)
        hands.type("cross", cross)
        hands.type("date", "20.6.2025")
        hands.type("flowers", flowers)
        hands.type("cover", "bag")
        hands.record()
    rows = list(book().pollinations.values())
    assert [(row.cross, row.flowers, row.cover, row.date) for row in rows] == [
        (first.cross, 6, "bag", "2025-06-20"),
        (back.cross, 4, "bag", "2025-06-20"),
    ]
    assert book().crosses[first.cross].state == "made"

    hands.form(Qt.Key.Key_F6)
    hands.type("pollination", rows[0].pollination)
    hands.type("set", "4")
    hands.type("dropped", "1")
    hands.record()
    assert (book().pollinations[rows[0].pollination].set) == 4

    hands.form(Qt.Key.Key_F7)
    hands.type("cross", first.cross)
    hands.type("date", "5.8.2025")
    hands.type("fruits", "3")
    hands.type("seeds", "15")
    hands.record()
    (packet,) = book().packets.values()
    assert (packet.seeds, packet.left, packet.generation) == (15, 15, "F1")

    hands.form(Qt.Key.Key_F8)
    hands.type("packet", packet.packet)
    hands.type("date", "1.4.2026")
    hands.type("seeds", "10")
    hands.record()
    assert book().packets[packet.packet].left == 5

    hands.form(Qt.Key.Key_F9)
    hands.type("of", first.cross)
    hands.type("count", "8")
    hands.type("sown", "1.4.2026")
    hands.record()
    raised = [code for code, plant in book().plants.items() if plant.cross == first.cross]
    assert len(raised) == 8

    for codes, status in ((raised[:2], "kept"), (raised[2:], "culled")):
        hands.form(Qt.Key.Key_F11)
        hands.to("plants")
        editor = QApplication.focusWidget()
        editor.selectAll()
        qtbot.keyClicks(editor, ", ".join(codes))
        hands.key(Qt.Key.Key_Tab)
        hands.type("status", status)
        hands.record()
    assert [book().plants[code].status for code in raised] == ["kept"] * 2 + ["culled"] * 6

    # Every step can be taken back, one after the other, to the empty book.
    steps = 0
    while empty.desk.undo_words:
        hands.key(Qt.Key.Key_Z, Qt.KeyboardModifier.ControlModifier)
        settle()
        steps += 1
        assert steps < 30
    assert steps == 11
    assert not book().plants
    assert not book().crosses


def test_a_fault_stands_beside_its_field_and_nothing_typed_is_lost(
    qtbot: QtBot, empty: MainWindow, settle: Settle
) -> None:
    hands = Hands(qtbot, empty, settle)
    form = hands.form(Qt.Key.Key_F4)
    hands.type("seed_parent", "NONE")
    hands.type("pollen_parent", "NEITHER")
    hands.key(Qt.Key.Key_Return)
    settle()
    assert empty.bench.form is form
    assert "NONE" in form._fields["seed_parent"].said()
    assert form._fields["pollen_parent"].text() == "NEITHER"
    assert form._fields["seed_parent"].focusProxy() is QApplication.focusWidget()
    hands.key(Qt.Key.Key_Escape)
    assert empty.bench.form is None
    assert not empty.bench.isVisible()


def test_the_quick_line_says_what_it_understood_and_is_ready_for_the_next(
    qtbot: QtBot, empty: MainWindow, settle: Settle
) -> None:
    hands = Hands(qtbot, empty, settle)
    for name in ("Mossgate Early", "Hill Amber"):
        hands.form(Qt.Key.Key_F3)
        hands.type("name", name)
        hands.record()
    hands.key(Qt.Key.Key_Space, Qt.KeyboardModifier.ControlModifier)
    form = empty.bench.form
    assert form is not None
    line = QApplication.focusWidget()
    qtbot.keyClicks(line, "ME x HA both 5 flowers bag 3.6.2025")
    assert form._fields["line"].said() == (
        "Cross ME ⇄ HA, both directions, pollinated: 5 flowers, bag, Tuesday 3 June 2025."
    )
    hands.key(Qt.Key.Key_Return)
    settle()
    assert empty.bench.form is form
    assert line.text() == ""
    assert line.hasFocus()
    assert [row.flowers for row in empty.desk.book.pollinations.values()] == [5, 5]
    qtbot.keyClicks(line, "gibberish")
    hands.key(Qt.Key.Key_Return)
    settle()
    assert "begins with 'gibberish'" in form._fields["line"].said()


def test_a_table_is_kept_as_a_book_when_one_begins_to_write(
    qtbot: QtBot, window: MainWindow, settle: Settle, tmp_path: Path
) -> None:
    path = tmp_path / "mine.csv"
    path.write_text("plant,seed_parent,pollen_parent,kind\nA,,,variety\nB,,,variety\n")
    window.open_path(path)
    settle()
    assert window.keep.isVisible()
    qtbot.keyClick(window, Qt.Key.Key_F4)
    settle()
    assert window.opened is not None
    assert window.opened.path == tmp_path / "mine.pedbook"
    assert not window.keep.isVisible()
    assert window.bench.form is not None
    assert path.read_text().startswith("plant,")
