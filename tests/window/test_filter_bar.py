"""The control of the filters by keys and clicks."""

from __future__ import annotations

import pytest
from PySide6.QtCore import QLocale, Qt
from pytestqt.qtbot import QtBot

from pedigreeview.book.book import Book
from pedigreeview.book.filtering import PlantFilter
from pedigreeview.book.records import Cross, Plant, Score, Trait
from pedigreeview.network import PedigreeNetwork
from pedigreeview.window.filter_bar import FilterBar


def small_book() -> Book:
    """Two varieties, their cross, a measure and a category."""
    book = Book()
    for code in ("TP", "BA"):
        book.add(Plant(plant=code, kind="variety", sown="2019"))
    book.add(Cross(cross="x1", seed_parent="TP", pollen_parent="BA", intended="cross"))
    book.add(Plant(plant="P1", cross="x1", sown="2021", status="kept"))
    book.add(Plant(plant="P2", cross="x1", sown="2022", status="culled"))
    book.add(Trait(trait="height", type="measure", unit="cm"))
    book.add(Trait(trait="leaf", type="category"))
    for plant, value in (("P1", "80"), ("P2", "120,5")):
        book.add(Score(plant=plant, trait="height", of="plant", value=value))
    return book


@pytest.fixture
def bar(qtbot: QtBot) -> FilterBar:
    made = FilterBar()
    qtbot.addWidget(made)
    made.resize(1000, 160)
    made.set_network(PedigreeNetwork.from_records(small_book()))
    made.show()
    qtbot.waitExposed(made)
    return made


def test_typing_asks_after_a_moment(bar: FilterBar, qtbot: QtBot) -> None:
    with qtbot.waitSignal(bar.changed) as heard:
        qtbot.keyClicks(bar.text, "tarn")
    assert heard.args == [PlantFilter(text="tarn"), "fade"]
    with qtbot.waitSignal(bar.changed) as heard:
        qtbot.keyClick(bar.text, Qt.Key.Key_Return)
    assert heard.args[0] == PlantFilter(text="tarn")


def test_seasons_of_the_book_are_offered(bar: FilterBar, qtbot: QtBot) -> None:
    offered = [bar.season_from.itemText(at) for at in range(bar.season_from.count())]
    assert offered == ["sown from", "2019", "2021", "2022"]
    bar.season_from.setFocus()
    with qtbot.waitSignal(bar.changed):
        qtbot.keyClicks(bar.season_from, "2021")
    assert bar.wanted().first_season == 2021


def test_statuses_add_up_on_the_button(bar: FilterBar, qtbot: QtBot) -> None:
    assert bar.status.text() == "any status"
    for status in ("kept", "culled"):
        with qtbot.waitSignal(bar.changed) as heard:
            bar._statuses[status].trigger()
    assert heard.args[0].statuses == {"kept", "culled"}
    assert bar.status.text() == "kept on purpose, culled"


def test_further_conditions_open(bar: FilterBar, qtbot: QtBot) -> None:
    assert not bar.family.isVisible()
    qtbot.mouseClick(bar.more, Qt.MouseButton.LeftButton)
    assert bar.family.isVisible()
    with qtbot.waitSignal(bar.changed) as heard:
        qtbot.keyClicks(bar.family, "x1")
        qtbot.keyClick(bar.family, Qt.Key.Key_Return)
    assert heard.args[0].family == "x1"


def test_a_measure_begins_with_its_whole_range(bar: FilterBar, qtbot: QtBot) -> None:
    bar.more.click()
    assert not bar.low.isVisible()
    bar.trait.setFocus()
    with qtbot.waitSignal(bar.changed) as heard:
        qtbot.keyClicks(bar.trait, "height")
    assert heard.args[0] == PlantFilter(trait="height", low=80.0, high=120.5)
    assert bar.low.isVisible()
    with qtbot.waitSignal(bar.changed) as heard:
        bar.low.stepUp()
    assert heard.args[0].low == 81.0
    with qtbot.waitSignal(bar.changed) as heard:
        qtbot.keyClick(bar.trait, Qt.Key.Key_Down)
    assert heard.args[0] == PlantFilter(trait="leaf")
    assert not bar.low.isVisible()


def test_a_founder_comes_with_its_least_share(bar: FilterBar, qtbot: QtBot) -> None:
    bar.more.click()
    assert not bar.share.isVisible()
    bar.founder.setFocus()
    with qtbot.waitSignal(bar.changed) as heard:
        qtbot.keyClicks(bar.founder, "BA")
    assert heard.args[0] == PlantFilter(founder="BA", share=0.25)
    assert bar.share.isVisible()


def test_hiding_instead_of_fading(bar: FilterBar, qtbot: QtBot) -> None:
    bar.how.setFocus()
    with qtbot.waitSignal(bar.changed) as heard:
        qtbot.keyClicks(bar.how, "hide")
    assert heard.args[1] == "hide"


def test_clear_asks_for_nothing(bar: FilterBar, qtbot: QtBot) -> None:
    bar.text.setText("P1")
    bar._statuses["kept"].trigger()
    bar.show_count(1, 4)
    assert bar.said.text() == "1 of 4 plants fit."
    assert bar.said.isVisible()
    with qtbot.waitSignal(bar.changed) as heard:
        qtbot.mouseClick(bar.reset, Qt.MouseButton.LeftButton)
    assert heard.args[0].empty()
    assert not bar.said.isVisible()
    assert bar.status.text() == "any status"


def test_no_book_offers_nothing(bar: FilterBar) -> None:
    bar.set_network(None)
    assert not bar.season_from.isEnabled()
    assert not bar.trait.isEnabled()
    assert bar.wanted().empty()


def test_how_many_fit_stands_at_the_end_of_the_row_as_the_language_writes_it(
    bar: FilterBar, qtbot: QtBot
) -> None:
    bar.resize(1400, 200)
    bar.show()
    qtbot.waitExposed(bar)
    qtbot.keyClicks(bar.text, "P")
    before = QLocale()
    try:
        QLocale.setDefault(QLocale("de"))
        bar.show_count(1200, 5000)
    finally:
        QLocale.setDefault(before)
    assert bar.said.text() == "1.200 of 5.000 plants fit."
    qtbot.waitUntil(lambda: bar.said.geometry().left() > bar.reset.geometry().right())
    assert abs(bar.said.geometry().center().y() - bar.reset.geometry().center().y()) <= 2
