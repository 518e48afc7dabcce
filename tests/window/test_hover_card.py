"""The small card under the pointer: it comes after a rest, goes with anything, takes no focus."""

from __future__ import annotations

from collections.abc import Callable

import pytest
from PySide6.QtCore import QEvent, QPoint, Qt
from PySide6.QtGui import QAccessible
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from pedigreeview.window.hover_card import HoverCards
from pedigreeview.window.main_window import MainWindow
from pedigreeview.window.plant_facts import parents_line, plant_facts, spoken_more

LEFT = Qt.MouseButton.LeftButton


@pytest.fixture
def cards(peas: MainWindow, settle: Callable[[], None], qtbot: QtBot) -> HoverCards:
    found = peas.exploring.cards[0]
    found._rest.setInterval(1)
    qtbot.waitUntil(lambda: not peas.pedigree.canvas.moving())
    return found


def rest_on(peas: MainWindow, qtbot: QtBot, code: str) -> None:
    view = peas.pedigree.canvas.viewport()
    qtbot.mouseMove(view, QPoint(2, 2))
    qtbot.mouseMove(view, peas.pedigree.canvas.where(code))


def other_tag(peas: MainWindow) -> str:
    open_one = peas.pedigree.card.code
    canvas = peas.pedigree.canvas
    return next(
        code
        for code in canvas.visible_codes()
        if code != open_one and canvas.childAt(canvas.where(code)) in (None, canvas.viewport())
    )


def test_it_comes_after_a_rest_and_goes_when_the_pointer_leaves(
    peas: MainWindow, cards: HoverCards, qtbot: QtBot
) -> None:
    code = other_tag(peas)
    had_focus = QApplication.focusWidget()
    rest_on(peas, qtbot, code)
    assert cards.code == "", "not at once"
    qtbot.waitUntil(lambda: cards.code == code)
    assert cards.card is not None
    words = cards.card.words()
    assert code in words
    assert "Parents" in words
    assert "F" in words.split("\n")
    assert QApplication.focusWidget() is had_focus
    assert peas.rect().contains(cards.card.geometry())
    assert not cards.card.geometry().contains(
        peas.pedigree.canvas.viewport().mapTo(peas, peas.pedigree.canvas.where(code))
    )
    QApplication.sendEvent(peas.pedigree.canvas.viewport(), QEvent(QEvent.Type.Leave))
    assert cards.code == ""


@pytest.mark.parametrize("what", ["key", "press"])
def test_a_key_or_a_click_takes_it_away(
    peas: MainWindow, cards: HoverCards, qtbot: QtBot, what: str
) -> None:
    code = other_tag(peas)
    rest_on(peas, qtbot, code)
    qtbot.waitUntil(lambda: cards.code == code)
    # A move of the pointer that is still on its way shall not bring it again at once.
    cards._rest.setInterval(60_000)
    canvas = peas.pedigree.canvas
    if what == "key":
        qtbot.keyClick(canvas, Qt.Key.Key_F5)
    else:
        qtbot.mousePress(canvas.viewport(), LEFT, pos=canvas.where(code))
    assert cards.code == ""
    qtbot.mouseRelease(canvas.viewport(), LEFT, pos=canvas.where(code))


def test_none_comes_over_the_plant_whose_card_lies_open(
    peas: MainWindow, cards: HoverCards, settle: Callable[[], None], qtbot: QtBot
) -> None:
    rest_on(peas, qtbot, peas.pedigree.card.code)
    assert not cards._rest.isActive()


def test_none_comes_for_a_screen_reader_but_the_tag_says_more(
    peas: MainWindow, cards: HoverCards, qtbot: QtBot, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(QAccessible, "isActive", lambda: True)
    code = other_tag(peas)
    rest_on(peas, qtbot, code)
    assert not cards._rest.isActive()
    picture = QAccessible.queryAccessibleInterface(peas.pedigree.canvas)
    said = {
        picture.child(at).text(QAccessible.Text.Name).split(",")[0]: picture.child(at).text(
            QAccessible.Text.Description
        )
        for at in range(picture.childCount())
    }
    assert said["21-01-3"] == spoken_more(peas.opened.net, "21-01-3") != ""


def test_it_comes_over_the_map_too(
    peas: MainWindow, settle: Callable[[], None], qtbot: QtBot
) -> None:
    cards = peas.exploring.cards[1]
    cards._rest.setInterval(1)
    peas.show_page("map")
    settle()
    shown = peas.map.map
    qtbot.mouseMove(shown.viewport(), QPoint(2, 2))
    qtbot.mouseMove(shown.viewport(), shown.where("TP"))
    qtbot.waitUntil(lambda: cards.code == "TP")
    assert cards.card is not None
    assert "Tarnwick Pale" in cards.card.words()


def test_facts_say_parents_by_signs_seed_parent_first(peas: MainWindow) -> None:
    net = peas.opened.net
    facts = plant_facts(net, "21-01-3")
    assert (facts.code, facts.generation) == ("21-01-3", "F1")
    assert dict(facts.lines)["Parents"] == "TP × BA  (21-01)"
    assert dict(facts.lines)["F"] == "0"
    assert parents_line(net, "TP") == "founder"
    assert parents_line(net, "23-07") == "21-01-3 ⊗"
