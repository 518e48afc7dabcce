"""Saving a heat map: its caption and margins are asked for where it becomes a picture."""

from __future__ import annotations

from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QWidget
from pytestqt.qtbot import QtBot

from pedigreeview.window.errands import Errands
from pedigreeview.window.relatedness_save import SaveRelatedness

LEFT = Qt.MouseButton.LeftButton
Written = list[tuple[object, ...]]


@pytest.fixture
def written() -> Written:
    return []


@pytest.fixture
def ground(qtbot: QtBot) -> QWidget:
    """What the dialogs lie on, which outlives them: they delete themselves when they close."""
    made = QWidget()
    qtbot.addWidget(made)
    return made


@pytest.fixture
def dialog(ground: QWidget, written: Written, tmp_path: Path) -> SaveRelatedness:
    def write(*given: object) -> None:
        written.append(given)

    made = SaveRelatedness(
        write, "Kin.", Errands(ground), tmp_path / "kin", ground, with_words=True
    )
    made.show()
    return made


def choose(dialog: SaveRelatedness, kind: str) -> None:
    dialog.kind.setCurrentIndex(dialog.kind.findData(kind))


def test_a_table_has_neither(dialog: SaveRelatedness) -> None:
    for kind in ("csv", "xlsx", "npz"):
        choose(dialog, kind)
        assert not dialog.caption.isVisible()
        assert not dialog.margin.isVisible()


def test_a_picture_has_both_and_they_stay(
    dialog: SaveRelatedness, written: Written, qtbot: QtBot, tmp_path: Path
) -> None:
    choose(dialog, "svg")
    assert dialog.caption.isVisible()
    assert (dialog.margin.value(), dialog.margin.minimum()) == (8, 0)
    choose(dialog, "grey")
    assert (dialog.margin.value(), dialog.margin.minimum()) == (10, 5)
    dialog.caption.setFocus()
    qtbot.keyClicks(dialog.caption, "Of my own")
    dialog.margin.setValue(21)
    choose(dialog, "csv")
    choose(dialog, "grey")
    with qtbot.waitSignal(dialog.saved, timeout=5000):
        qtbot.mouseClick(dialog.save_button, LEFT)
    assert written == [(tmp_path / "kin.pdf", True, "Of my own", 21.0)]


def test_without_words_it_asks_for_none(
    ground: QWidget, qtbot: QtBot, written: Written, tmp_path: Path
) -> None:
    def write(path: Path, grey: bool) -> None:
        written.append((path, grey))

    made = SaveRelatedness(write, "Kin.", Errands(ground), tmp_path / "k", ground)
    made.show()
    choose(made, "svg")
    assert not made.caption.isVisible()
    with qtbot.waitSignal(made.saved, timeout=5000):
        qtbot.mouseClick(made.save_button, LEFT)
    assert written == [(tmp_path / "k.svg", False)]
