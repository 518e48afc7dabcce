"""The whole road on a demo, in one window: from a wish to a selection that is kept.

Wish, pair, both directions planned, how many to grow, F1 and F2 raised, F2 scored, ratio tested,
carriers told, a selection kept and looked at as a line.
"""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path
from typing import Any

import pytest
from PySide6.QtCore import Qt
from PySide6.QtGui import QGuiApplication
from PySide6.QtWidgets import QApplication, QLabel
from pytestqt.qtbot import QtBot

from pedigreeview.book.book_file import BookFile
from pedigreeview.exchange import read_book
from pedigreeview.window.judging.genes_panel import GenesPanel
from pedigreeview.window.judging.segregation_panel import SegregationPanel
from pedigreeview.window.main_window import MainWindow
from pedigreeview.window.parents_page import ParentsPage
from pedigreeview.window.records_page import SCORES, RecordsPage
from tests.window.conftest import PEAS

Settle = Callable[[], None]
LEFT = Qt.MouseButton.LeftButton
CTRL = Qt.KeyboardModifier.ControlModifier


@pytest.fixture
def book_window(window: MainWindow, settle: Settle, tmp_path: Path) -> MainWindow:
    path = tmp_path / "peas.pedbook"
    BookFile.create(path, read_book(PEAS)).close()
    window.open_path(path)
    settle()
    return window


def _turn(window: MainWindow, settle: Settle, name: str) -> Any:
    window.show_page(name)
    QApplication.processEvents()
    settle()
    lazy: Any = window.book_pages[name]
    return lazy.page()


def _quick(qtbot: QtBot, window: MainWindow, settle: Settle, *lines: str) -> None:
    """Lines typed into the quick line, each recorded by Enter."""
    qtbot.keyClick(window, Qt.Key.Key_Space, CTRL)
    for line in lines:
        field = QApplication.focusWidget()
        qtbot.keyClicks(field, line)
        qtbot.keyClick(field, Qt.Key.Key_Return)
        settle()
        form = window.bench.form
        assert form is not None
        assert form._fields["line"].text() == "", form._fields["line"].said()
    qtbot.keyClick(QApplication.focusWidget(), Qt.Key.Key_Escape)


def test_from_a_wish_to_a_selection(qtbot: QtBot, book_window: MainWindow, settle: Settle) -> None:
    window = book_window

    # The wish, and the pair: the two varieties, weighed against each other.
    parents = _turn(window, settle, "parents")
    assert isinstance(parents, ParentsPage)
    parents.wishes.wish("trait:height", "dwarf")
    parents.wishes.wish("trait:pod", "yellow")
    parents.weigh("TP", "BA")
    settle()

    # Both directions are in the book already; they are made anew with codes of their own.
    before = set(window.desk.book.crosses)
    window.writing.open("cross", plants=("TP", "BA"))
    form: Any = window.bench.form
    form.both.editor.setChecked(True)
    form.repeat.editor.setChecked(True)
    qtbot.keyClick(form.code.editor, Qt.Key.Key_Return)
    settle()
    new = [cross for code, cross in window.desk.book.crosses.items() if code not in before]
    assert [(one.seed_parent, one.pollen_parent) for one in new] == [("TP", "BA"), ("BA", "TP")]
    cross = new[0].cross

    # How many to grow: a dwarf with yellow pods needs both recessives, 1/16 of an F2.
    qtbot.mouseClick(parents.detail.grow_button, LEFT)
    parents.growing.ask()
    settle()
    answer = parents.growing.answer
    assert answer is not None
    assert "dwarf height" in parents.growing.told.text()

    # F1 and F2 raised by the quick line; 16 F2 plants scored by a pasted block.
    _quick(
        qtbot,
        window,
        settle,
        f"pollinate {cross} 6 flowers closed 10.6.2024",
        f"harvest {cross} 4 fruits 18 seeds 1.8.2024",
        f"raise {cross} 1 2.4.2025",
    )
    (hybrid,) = [code for code, plant in window.desk.book.plants.items() if plant.cross == cross]
    _quick(qtbot, window, settle, f"self {hybrid} 1.6.2025")
    selfing = next(
        one.cross
        for one in window.desk.book.crosses.values()
        if one.seed_parent == one.pollen_parent == hybrid
    )
    _quick(qtbot, window, settle, f"raise {hybrid} 16 2.4.2026")
    family = window.opened.net.progeny_of_cross(selfing)
    assert len(family) == 16
    assert window.opened.net.generation_name(family[0]) == "F2"

    records = _turn(window, settle, "records")
    assert isinstance(records, RecordsPage)
    records.go_to(SCORES)
    sheet = records.scores
    sheet.which.setCurrentIndex(sheet.which.findData(f"cross:{selfing}"))
    sheet.date.set_text("2026-07-01")
    sheet.date.editor.editingFinished.emit()
    grid = sheet.model.grid
    assert grid is not None
    assert grid.traits[:3] == ("height", "flower", "pod")
    rows = ["tall\tpurple\tgreen"] * 9 + ["tall\tpurple\tyellow"] * 3
    rows += ["dwarf\tpurple\tgreen"] * 3 + ["dwarf\twhite\tyellow"]
    QGuiApplication.clipboard().setText("\n".join(rows))
    sheet.view.setFocus()
    sheet.view.setCurrentIndex(sheet.model.index(0, 0))
    qtbot.keyClick(sheet.view, Qt.Key.Key_V, CTRL)
    settle()
    assert not sheet.model.waiting
    best = grid.plants[-1]

    # The ratio: 12 tall to 4 dwarf is 3:1 to the plant.
    judging = _turn(window, settle, "judging")
    judging.go_to(f"segregation:{selfing}")
    settle()
    counted = judging.panel("segregation")
    assert isinstance(counted, SegregationPanel)
    said = [label.text() for label in counted.findChildren(QLabel) if label.isVisible()]
    assert "height: 12 tall, 4 dwarf" in said
    assert "It fits 3:1" in said

    # Carriers: what shows the recessive has it twice; a tall sib may carry it or not.
    judging.go_to("genes:Le")
    settle()
    genes = judging.panel("genes")
    assert isinstance(genes, GenesPanel)
    assert genes.table.text(best, 4) == "le/le 100%"
    assert genes.table.text(hybrid, 3) == "surely"
    assert genes.table.text(grid.plants[0], 3) not in ("surely", "cannot")

    # The selection is kept, and its card says so with its F.
    _quick(qtbot, window, settle, f"keep {best}")
    assert window.desk.book.plants[best].status == "kept"
    window.show_plant(best)
    settle()
    assert window.opened.net.inbreeding(best) == 0.5
    card = [label.text() for label in window.pedigree.card.findChildren(QLabel)]
    assert "F = 1/2 = 0.5" in card
    assert any("le/le" in text for text in card)
