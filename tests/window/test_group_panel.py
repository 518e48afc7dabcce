"""The diversity of a group, chosen in the window."""

from __future__ import annotations

from collections.abc import Callable

import pytest
from PySide6.QtWidgets import QLabel
from pytestqt.qtbot import QtBot

from pedigreeview.window.group_panel import GroupPanel
from pedigreeview.window.main_window import MainWindow


def test_numbers_of_the_founders_and_of_all_plants(
    qtbot: QtBot, peas: MainWindow, settle: Callable[[], None]
) -> None:
    peas.menus.actions["group"].trigger()
    panel = peas.dialog
    assert isinstance(panel, GroupPanel)
    names = [panel.choose.itemText(at) for at in range(panel.choose.count())]
    panel.choose.setCurrentIndex(next(at for at, n in enumerate(names) if n == "Founders (2)"))
    settle()

    def number(name: str) -> str:
        label = panel.findChild(QLabel, name)
        assert label is not None
        return label.text()

    # Two unrelated pure lines: mean coancestry (1 + 1 + 0 + 0)/4.
    assert number("Mean coancestry") == "0.5"
    assert number("Status number") == "1"
    assert number("Founder equivalents") == number("Effective ancestors") == "2"
    panel.choose.setCurrentIndex(panel.choose.count() - 1)
    settle()
    assert 0 < float(number("Founder equivalents")) <= 2.1
    assert float(number("Generations known")) > 1


@pytest.mark.parametrize("pins", [(), ("TP",)])
def test_only_groups_that_hold_a_plant_are_offered(
    peas: MainWindow, settle: Callable[[], None], pins: tuple[str, ...]
) -> None:
    for code in pins:
        peas.pedigree.pin(code)
    peas.asides.show_group()
    settle()
    panel = peas.dialog
    assert isinstance(panel, GroupPanel)
    names = [panel.choose.itemText(at) for at in range(panel.choose.count())]
    assert ("Pinned plants (1)" in names) == bool(pins)
