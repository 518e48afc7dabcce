"""Two pins, and the numbers that the slip shows.

F1 of pure lines 0, backcross ½: numbers.md and trade-terms.md, common textbook values.
"""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QLabel
from pytestqt.qtbot import QtBot

from pedigreeview.window.main_window import MainWindow

Settle = Callable[[], None]


def number(window: MainWindow, name: str) -> str:
    labels = [x for x in window.pedigree.slip.findChildren(QLabel, name) if x.isVisible()]
    assert len(labels) == 1
    return labels[0].text()


def test_pin_a_pair_by_keys_and_read_the_numbers(
    qtbot: QtBot, peas: MainWindow, settle: Settle
) -> None:
    canvas = peas.pedigree.canvas
    peas.show_plant("21-01-3")
    qtbot.keyClick(canvas, Qt.Key.Key_P)
    assert peas.pedigree.slip.isVisible()
    qtbot.keyClick(canvas, Qt.Key.Key_Up)
    qtbot.keyClick(canvas, Qt.Key.Key_P)
    settle()
    assert peas.pedigree.pins == ("21-01-3", "TP")
    assert (
        number(peas, "relatedness") == "The same as two cuttings of one plant that is not inbred."
    )
    assert number(peas, "coancestry") == "1/2 = 0.5"
    assert number(peas, "relationship") == "0.7071"
    assert number(peas, "progeny") == "F = 1/2 = 0.5"
    assert number(peas, "cytoplasm").startswith("Same cytoplasm")
    lines = [x.full_text() for x in peas.pedigree.slip.figures["coancestry"].panel.lines()]
    assert lines == [
        "Tarnwick Pale (TP) brings 1/2, all of the coancestry",
        "21-01-3 – TP, weight 1/2",
    ]


def test_unrelated_founders(peas: MainWindow, settle: Settle) -> None:
    peas.pedigree.pin("TP")
    peas.pedigree.pin("BA")
    settle()
    assert number(peas, "relatedness") == "Not related by anything in this book."
    assert number(peas, "coancestry") == "0"
    assert number(peas, "progeny") == "F = 0"
    assert not peas.pedigree.slip.figures["coancestry"].panel.lines()
    assert number(peas, "cytoplasm").startswith("Different cytoplasm")


def test_pointing_at_an_ancestor_lights_its_paths(
    qtbot: QtBot, peas: MainWindow, settle: Settle
) -> None:
    peas.pedigree.pin("TP")
    peas.pedigree.pin("21-01-3")
    settle()
    line = peas.pedigree.slip.figures["coancestry"].panel.lines()[0]
    with qtbot.waitSignal(peas.pedigree.slip.lit) as caught:
        line.setFocus()
    assert caught.args == [[("TP", "21-01-3")]]


def test_with_three_pins_one_chooses_the_pair(peas: MainWindow, settle: Settle) -> None:
    for code in ("TP", "BA", "21-01-3"):
        peas.pedigree.pin(code)
    settle()
    slip = peas.pedigree.slip
    assert slip.first.isVisible()
    assert slip.pair == ("BA", "21-01-3")
    assert [slip.first.itemText(at) for at in range(3)] == ["A  TP", "B  BA", "C  21-01-3"]
    assert [code for code, row in slip.rows.items() if row.property("role") == "pin in force"] == [
        "BA",
        "21-01-3",
    ]
    slip.first.setCurrentIndex(slip.first.findData("TP"))
    slip.first.activated.emit(slip.first.currentIndex())
    settle()
    assert slip.pair == ("TP", "21-01-3")
    peas.pedigree.pin("TP")
    peas.pedigree.pin("BA")
    peas.pedigree.pin("21-01-3")
    assert not slip.isVisible()
