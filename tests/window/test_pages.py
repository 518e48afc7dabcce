"""The Reciprocals and Checks pages, the card's numbers and what stands withheld."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QLabel
from pytestqt.qtbot import QtBot

from pedigreeview.places import demo
from pedigreeview.window.labels import LinkLabel
from pedigreeview.window.main_window import MainWindow

Settle = Callable[[], None]


def texts(widget: object) -> list[str]:
    return [x.text() for x in widget.findChildren(QLabel) if x.isVisible()]  # type: ignore[attr-defined]


def test_both_directions_of_the_pea_cross(peas: MainWindow) -> None:
    """12 buds, 7 pods, 24 seeds against 10, 4, 13: demo-scenarios, A."""
    peas.show_page("reciprocals")
    shown = texts(peas.reciprocals)
    assert "58%  (7 of 12)" in shown
    assert "40%  (4 of 10)" in shown
    assert "24" in shown
    assert "13" in shown
    assert "7 of 8 sown" in shown
    assert any("no verdict" in text for text in shown)


def test_a_link_of_the_pair_leads_to_the_picture(qtbot: QtBot, peas: MainWindow) -> None:
    peas.show_page("reciprocals")
    label = next(x for x in peas.reciprocals.findChildren(LinkLabel) if "BA" in x.text())
    label.setFocus()
    qtbot.keyClick(label, Qt.Key.Key_Tab)
    qtbot.keyClick(label, Qt.Key.Key_Return)
    assert peas.page() == "pedigree"
    assert peas.pedigree.focus in ("TP", "BA")


def test_the_planted_error_is_listed_and_its_numbers_withheld(
    window: MainWindow, settle: Settle
) -> None:
    window.open_path(demo("a_leaf_for_hollin_plate"))
    settle()
    window.show_page("checks")
    shown = texts(window.checks)
    assert any("its own ancestor" in text for text in shown)
    assert any(text.startswith("Mend: ") for text in shown)
    window.show_plant("20-01-4")
    settle()
    assert any("withheld" in text for text in texts(window.pedigree.card))


def test_the_card_shows_numbers_and_shares(peas: MainWindow, settle: Settle) -> None:
    peas.show_plant("23-07")
    settle()
    shown = texts(peas.pedigree.card)
    assert "F = 1/2 = 0.5" in shown
    assert "Grown from 22-02: 21-01-3 selfed." in shown or any("selfed" in t for t in shown)
    peas.show_plant("21-01-3")
    settle()
    shown = texts(peas.pedigree.card)
    assert (
        "Grown from 21-01: Tarnwick Pale (TP) as seed parent, Brockle Amber (BA) gave the pollen."
        in shown
    )
