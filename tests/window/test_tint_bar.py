"""The control of the tints by keys and clicks, and the key that it shows."""

from __future__ import annotations

import pytest
from PySide6.QtCore import Qt
from pytestqt.qtbot import QtBot

from pedigreeview.drawing.theme import theme
from pedigreeview.drawing.tinting import Wanted, tint
from pedigreeview.network import PedigreeNetwork
from pedigreeview.window.tint_bar import TintBar
from tests.window.test_filter_bar import small_book


@pytest.fixture(scope="module")
def net() -> PedigreeNetwork:
    return PedigreeNetwork.from_records(small_book())


@pytest.fixture
def bar(qtbot: QtBot, net: PedigreeNetwork) -> TintBar:
    made = TintBar()
    qtbot.addWidget(made)
    made.resize(900, 120)
    made.set_network(net)
    made.show()
    qtbot.waitExposed(made)
    return made


def _choose(bar: TintBar, qtbot: QtBot, letters: str) -> object:
    """Choose by typing, as a person does in a list."""
    bar.kind.setFocus()
    with qtbot.waitSignal(bar.wanted) as heard:
        qtbot.keyClicks(bar.kind, letters)
    return heard.args[0]


def test_a_choice_is_said(bar: TintBar, qtbot: QtBot) -> None:
    assert bar.current() is None
    assert _choose(bar, qtbot, "Gen") == Wanted("generation")
    assert bar.founder.isHidden()


def test_a_founder_is_chosen_beside_it(bar: TintBar, qtbot: QtBot) -> None:
    assert _choose(bar, qtbot, "Share") == Wanted("founder", "TP")
    assert bar.founder.isVisible()
    bar.founder.setFocus()
    with qtbot.waitSignal(bar.wanted) as heard:
        qtbot.keyClick(bar.founder, Qt.Key.Key_Down)
    assert heard.args == [Wanted("founder", "BA")]


def test_a_trait_is_chosen_beside_it(bar: TintBar, qtbot: QtBot) -> None:
    assert _choose(bar, qtbot, "A trait") == Wanted("trait", "height")
    assert bar.trait.isVisible()


def test_coancestry_wants_a_focus_and_follows_it(bar: TintBar, qtbot: QtBot) -> None:
    assert _choose(bar, qtbot, "Coan") is None
    assert bar.note.text() == "Choose a plant to put in focus first."
    with qtbot.waitSignal(bar.wanted) as heard:
        bar.set_focus("P1")
    assert heard.args == [Wanted("coancestry", "P1")]
    with qtbot.assertNotEmitted(bar.wanted):
        bar.set_focus("P1")


def test_the_key_is_shown_and_told(bar: TintBar, net: PedigreeNetwork) -> None:
    assert bar.key.isHidden()
    held = tint(net, Wanted("status"), theme("light"))
    bar.choose(Wanted("status"))
    bar.show_tint(held)
    assert bar.current() == Wanted("status")
    assert bar.key.key() is held.key
    assert bar.key.accessibleDescription() == held.key.words()
    assert "kept (1)" in bar.key.accessibleDescription()
    assert bar.note.text() == held.key.note
    picture = bar.key.grab().toImage()
    found = {
        picture.pixelColor(x, y).name()
        for x in range(picture.width())
        for y in range(picture.height())
    }
    assert {item.colour for item in held.key.entries} <= found


def test_a_scale_is_shown_as_a_ramp(bar: TintBar, net: PedigreeNetwork) -> None:
    held = tint(net, Wanted("inbreeding"), theme("light"))
    bar.show_tint(held)
    picture = bar.key.grab().toImage()
    across = [picture.pixelColor(x, 6).name() for x in range(picture.width())]
    assert len(set(across) & set(held.key.ramp)) > len(held.key.ramp) // 2
    bar.choose(None)
    assert bar.key.isHidden()
    assert bar.note.isHidden()


def test_another_book_takes_the_tint_away(bar: TintBar, net: PedigreeNetwork) -> None:
    bar.choose(Wanted("founder", "BA"))
    bar.set_network(net)
    assert bar.current() is None
    assert bar.founder.isHidden()
    bar.set_network(None)
    assert bar.founder.count() == 0
