"""The Map page: made when it is looked at, tinted and filtered off the window's thread."""

from __future__ import annotations

from collections.abc import Iterator

import pytest
from PySide6.QtCore import Qt
from pytestqt.qtbot import QtBot

from pedigreeview.book.book import Book
from pedigreeview.book.records import Cross, Plant
from pedigreeview.drawing.founders import show_table
from pedigreeview.drawing.theme import theme
from pedigreeview.drawing.tinting import TintKey, Wanted
from pedigreeview.network import PedigreeNetwork
from pedigreeview.window.errands import Errands
from pedigreeview.window.map_page import MapPage
from pedigreeview.window.overview_words import tint_words
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


def _many_founders() -> PedigreeNetwork:
    """Fourteen founders; V00 and V01 have one plant between them, the others three each."""
    book = Book()
    for number in range(14):
        book.add(Plant(plant=f"V{number:02}"))
    book.add(Cross(cross="x", seed_parent="V00", pollen_parent="V01", intended="cross"))
    book.add(Plant(plant="X", cross="x"))
    for number in range(2, 14):
        code = f"V{number:02}"
        book.add(Cross(f"s{number}", seed_parent=code, pollen_parent=code, intended="selfing"))
        for sib in range(3):
            book.add(Plant(plant=f"S{number}-{sib}", cross=f"s{number}"))
    return PedigreeNetwork.from_records(book)


def test_the_colours_go_to_the_founders_of_the_marked_plant(
    page: MapPage, qtbot: QtBot, errands: Errands
) -> None:
    page.show_network(_many_founders())
    _shown(page, qtbot)
    qtbot.waitUntil(lambda: not errands.awaits())
    assert page.key.heading() == "Largest shares in the book:"
    assert page.key.words()[-1] == "2 others"
    assert {"V00", "V01"}.isdisjoint(page.key.words())
    assert page.key.accessibleDescription().startswith("Largest shares in the book: V")
    qtbot.mouseClick(page.map.viewport(), Qt.MouseButton.LeftButton, pos=page.map.where("X"))
    qtbot.waitUntil(lambda: not errands.awaits())
    assert page.key.heading() == "Largest shares in X, then in the book:"
    assert {"V00", "V01"} <= set(page.key.words())
    assert {"V00", "V01"} <= set(page.map.overview.named)
    assert page.map.selected_code() == "X"
    qtbot.keyClick(page.map, Qt.Key.Key_Escape)
    qtbot.waitUntil(lambda: not errands.awaits())
    assert page.key.heading() == "Largest shares in the book:"
    assert {"V00", "V01"}.isdisjoint(page.map.overview.named)


def test_a_founder_has_on_the_map_the_colour_of_the_picture(
    page: MapPage, qtbot: QtBot, errands: Errands
) -> None:
    net = _many_founders()
    page.show_network(net)
    page.mark("X")
    show_table(net, (("V01", 9), ("V00", 3)))
    _shown(page, qtbot)
    qtbot.waitUntil(lambda: not errands.awaits())
    assert page.map.overview.named[9] == "V01"
    assert page.map.overview.named[3] == "V00"


def test_a_small_book_wants_no_words_about_its_colours(page: MapPage, qtbot: QtBot) -> None:
    _shown(page, qtbot)
    assert page.key.heading() == ""


def test_a_chance_to_carry_is_said_in_whole_phrases() -> None:
    key = TintKey("Carries c of C", gene=("C", "c"))
    assert tint_words(key, "100%") == "surely carries c of C"
    assert tint_words(key, "0%") == "surely does not carry c of C"
    assert tint_words(key, "66.7%") == "carries c of C with a chance of 66.7%"
    assert tint_words(key, "") == "no chance to carry c of C can be given"
    assert tint_words(TintKey("Status"), "kept") == "Status: kept"
    assert tint_words(TintKey("Status"), "") == "Status: no value"
