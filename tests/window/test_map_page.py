"""The Map page: made when it is looked at, tinted and filtered off the window's thread."""

from __future__ import annotations

from collections.abc import Iterator

import pytest
from PySide6.QtCore import Qt
from pytestqt.qtbot import QtBot

from pedigreeview.drawing.theme import theme
from pedigreeview.drawing.tinting import Wanted
from pedigreeview.network import PedigreeNetwork
from pedigreeview.window.errands import Errands
from pedigreeview.window.map_page import MapPage
from pedigreeview.window.style import current_name
from tests.window.test_filter_bar import small_book


@pytest.fixture
def errands(qtbot: QtBot) -> Iterator[Errands]:
    made = Errands()
    yield made
    assert made.close()


@pytest.fixture
def page(qtbot: QtBot, errands: Errands) -> MapPage:
    made = MapPage(errands)
    qtbot.addWidget(made)
    made.resize(1000, 700)
    made.show_network(PedigreeNetwork.from_records(small_book()))
    return made


def _shown(page: MapPage, qtbot: QtBot) -> MapPage:
    page.show()
    qtbot.waitExposed(page)
    qtbot.waitUntil(lambda: page.map.overview is not None)
    return page


def test_the_map_is_made_when_it_is_looked_at(
    page: MapPage, qtbot: QtBot, errands: Errands
) -> None:
    assert page.map.overview is None
    assert not errands.awaits()
    _shown(page, qtbot)
    assert page.map.at(page.map.where("P1")) == "P1"
    assert not page.said.isVisible()


def test_the_keys_go_to_the_map_and_its_foot_says_what_is_seen(page: MapPage, qtbot: QtBot) -> None:
    page.show()
    qtbot.waitUntil(page.map.hasFocus)
    qtbot.waitUntil(lambda: page.map.overview is not None)
    page.map.grab()
    assert page.tints.kind.currentText() == "Founders"
    assert "founders' shares" in page.map.foot_words()
    assert "ancestor" not in page.map.foot_words()
    page.mark("P1")
    page.map.grab()
    assert "ancestor of P1" in page.map.foot_words()
    assert "dashed ones to its descendants" in page.map.foot_words()
    with qtbot.waitSignal(page.shades.tinted):
        page.shades.want_tint(Wanted("status"))
    assert "Patterns" in page.map.foot_words()


def test_founders_stand_below_with_their_colours_while_these_are_shown(
    page: MapPage, qtbot: QtBot
) -> None:
    _shown(page, qtbot)
    qtbot.waitUntil(page.key.isVisible)
    named = page.map.overview.named
    assert [words.split()[0] for words in page.key.words()] == list(named)
    drawn = page.key.grab().toImage()
    seen = {drawn.pixelColor(x, y).name() for x in range(0, drawn.width(), 2) for y in range(0, 20)}
    assert {theme(current_name()).founder(at) for at in range(len(named))} <= seen
    with qtbot.waitSignal(page.shades.tinted):
        page.shades.want_tint(Wanted("status"))
    assert not page.key.isVisible()
    with qtbot.waitSignal(page.shades.tinted):
        page.shades.want_tint(None)
    assert page.key.isVisible()


def test_a_double_click_leads_to_the_picture(page: MapPage, qtbot: QtBot) -> None:
    _shown(page, qtbot)
    with qtbot.waitSignal(page.plant_wanted) as heard:
        qtbot.mouseDClick(page.map.viewport(), Qt.MouseButton.LeftButton, pos=page.map.where("P2"))
    assert heard.args == ["P2"]


def test_the_plant_of_the_window_is_marked(page: MapPage, qtbot: QtBot) -> None:
    page.mark("P1")
    _shown(page, qtbot)
    assert page.map.selected_code() == "P1"
    page.mark("BA")
    assert page.map.selected_code() == "BA"


def test_a_tint_colours_map_and_picture(page: MapPage, qtbot: QtBot) -> None:
    _shown(page, qtbot)
    page.tints.kind.setFocus()
    with qtbot.waitSignal(page.shades.tinted) as heard:
        qtbot.keyClicks(page.tints.kind, "Status")
    assert set(heard.args[0].by_code()) == {"P1", "P2"}
    assert page.tints.key.isVisible()
    assert page.map.words_of(page.map.overview.row("P1")).endswith("Status: kept")
    with qtbot.waitSignal(page.shades.tinted) as heard:
        page.show_network(None)
    assert heard.args == [None, ""]


def test_coancestry_follows_the_mark(page: MapPage, qtbot: QtBot) -> None:
    _shown(page, qtbot)
    page.mark("P1")
    with qtbot.waitSignal(page.shades.tinted):
        page.shades.want_tint(Wanted("coancestry", "P1"))
    assert page.tints.kind.currentData() == "coancestry"
    with qtbot.waitSignal(page.shades.tinted):
        qtbot.mouseClick(page.map.viewport(), Qt.MouseButton.LeftButton, pos=page.map.where("TP"))
    assert page.tints.key.key().title == "Coancestry with TP"


def test_a_filter_says_how_many_fit(page: MapPage, qtbot: QtBot) -> None:
    _shown(page, qtbot)
    qtbot.keyClicks(page.filters.text, "P1")
    qtbot.waitUntil(lambda: page.filters.said.text() == "1 of 4 plants fit.")
    page.filters.more.click()
    page.filters.clear()
    page.filters.founder.setFocus()
    qtbot.keyClicks(page.filters.founder, "TP")
    qtbot.waitUntil(lambda: page.filters.said.text() == "3 of 4 plants fit.")


def test_dark_and_large(page: MapPage, qtbot: QtBot) -> None:
    _shown(page, qtbot)
    page.shades.want_tint(Wanted("generation"))
    with qtbot.waitSignal(page.shades.tinted):
        page.redraw(2.0)
    assert page.map.text_scale() == 2.0
