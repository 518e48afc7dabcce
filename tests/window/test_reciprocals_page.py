"""The Reciprocals page: the picture, the numbers beside each other, the tests and the actions."""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

import pytest
from PySide6.QtCore import QPoint, Qt
from PySide6.QtGui import QAccessible
from PySide6.QtWidgets import QLabel, QPushButton
from pytestqt.qtbot import QtBot

from pedigreeview.places import demo
from pedigreeview.window.labels import LinkLabel
from pedigreeview.window.main_window import MainWindow
from pedigreeview.window.reciprocals_page import ReciprocalsPage

Settle = Callable[[], None]
LEFT = Qt.MouseButton.LeftButton


def texts(widget: object) -> list[str]:
    return [x.text() for x in widget.findChildren(QLabel) if x.isVisible()]  # type: ignore[attr-defined]


@pytest.fixture
def asked() -> list[tuple[str, dict[str, Any]]]:
    return []


@pytest.fixture
def page(
    peas: MainWindow, settle: Settle, asked: list[tuple[str, dict[str, Any]]]
) -> ReciprocalsPage:
    """The page of the pea demo, with forms that only say that they were asked for."""
    peas.reciprocals._write = lambda name, **what: asked.append((name, what))
    peas.show_page("reciprocals")
    settle()
    return peas.reciprocals


def button(page: ReciprocalsPage, text: str) -> QPushButton:
    return next(b for b in page.findChildren(QPushButton) if b.text() == text)


def test_a_click_on_a_tag_puts_that_plant_in_focus(
    qtbot: QtBot, peas: MainWindow, page: ReciprocalsPage
) -> None:
    picture = page.picture
    assert picture is not None
    qtbot.mouseClick(picture.viewport(), LEFT, pos=picture.where("21-02-2"))
    assert peas.page() == "pedigree"
    assert peas.pedigree.focus == "21-02-2"


def test_keys_walk_the_picture(qtbot: QtBot, peas: MainWindow, page: ReciprocalsPage) -> None:
    """From the seed parent on the left to the other parent, down to its progeny, Enter goes."""
    picture = page.picture
    assert picture is not None
    picture.setFocus()
    qtbot.keyClick(picture, Qt.Key.Key_Down)
    assert picture.spoken.current() == "parent:TP"
    qtbot.keyClick(picture, Qt.Key.Key_Right)
    assert picture.spoken.current() == "parent:BA"
    qtbot.keyClick(picture, Qt.Key.Key_Down)
    assert picture.spoken.current().startswith("plant:21-02-")
    code = picture.spoken.current().partition(":")[2]
    qtbot.keyClick(picture, Qt.Key.Key_Return)
    assert peas.pedigree.focus == code


def test_a_screen_reader_finds_both_directions(page: ReciprocalsPage) -> None:
    picture = page.picture
    assert picture is not None
    found = QAccessible.queryAccessibleInterface(picture)
    assert found is not None
    names = [found.child(at).text(QAccessible.Text.Name) for at in range(found.childCount())]
    assert any(name.startswith("reciprocal pair: 21-01, TP × BA") for name in names)
    assert any("21-01-4" in name and "found a self of TP" in name for name in names)


def test_bars_are_as_long_as_their_numbers(page: ReciprocalsPage) -> None:
    """12 and 10 flowers: the bars stand as 1 to 10/12; takes are shares of 1."""
    from pedigreeview.window.judging.bars import PlainBar

    assert page.counts is not None
    bars = {bar.accessibleName(): bar.share for bar in page.counts.findChildren(PlainBar)}
    assert bars["Flowers worked: 12"] == 1.0
    assert bars["Flowers worked: 10"] == pytest.approx(10 / 12)
    assert bars["Take: 7 of 12"] == pytest.approx(7 / 12)
    assert bars["Seedlings up: 7 of 8 sown"] == pytest.approx(7 / 8)


def test_kept_selfs_and_cytoplasm_stand_in_the_table(page: ReciprocalsPage) -> None:
    assert page.counts is not None
    shown = " ".join(texts(page.counts))
    assert "1 of 7 raised" in shown
    assert "Found to be selfs" in shown
    links = [x.text() for x in page.counts.findChildren(LinkLabel)]
    assert any("Tarnwick Pale (TP)" in text for text in links)
    assert any(text.count("plant:21-01-4") == 1 and "21-01-1" not in text for text in links)


def test_why_opens_formula_source_and_assumption(qtbot: QtBot, page: ReciprocalsPage) -> None:
    assert page.tests is not None
    why = page.tests.whys[0]
    page._area.ensureWidgetVisible(why)
    qtbot.mouseClick(why, LEFT)
    shown = texts(page.tests)
    assert any("Fisher's exact test" in text for text in shown)
    assert any("Newcombe 1998" in text for text in shown)
    assert any("flowers of one plant on one day are not" in text for text in shown)


def test_f1_and_f2_are_compared_in_each_trait(page: ReciprocalsPage) -> None:
    """F2 of the peas: 36 tall and 12 dwarf against 35 and 13 (demo-scenarios, A)."""
    assert page.tests is not None
    shown = texts(page.tests)
    assert "36 tall, 12 dwarf" in shown
    assert "35 tall, 13 dwarf" in shown
    assert "nothing to compare" in shown
    assert any("comes with the seed parent and stays" in text for text in shown)


def test_the_pair_is_pollinated_again_and_the_missing_direction_planned(
    qtbot: QtBot, page: ReciprocalsPage, settle: Settle, asked: list[tuple[str, dict[str, Any]]]
) -> None:
    qtbot.mouseClick(button(page, "Pollinate BA × TP again"), LEFT)
    assert asked == [("pollination", {"cross": "21-02"})]
    row = next(
        at
        for at in range(page.list.count())
        if page.list.item(at).text().startswith("21-01-3 × TP")
    )
    page.list.setFocus()
    for _ in range(row):
        qtbot.keyClick(page.list, Qt.Key.Key_Down)
    settle()
    assert any("Made one way only" in text for text in texts(page))
    qtbot.mouseClick(button(page, "Plan TP × 21-01-3"), LEFT)
    assert asked[1] == ("cross", {"plants": ("TP", "21-01-3")})
    assert page.pair_count() == 1


def test_typing_finds_a_pair_and_says_when_there_is_none(
    qtbot: QtBot, page: ReciprocalsPage, settle: Settle
) -> None:
    qtbot.keyClicks(page.search, "61-2-5")
    settle()
    assert page.list.count() == 1
    assert page.list.item(0).text().startswith("19-4-2 row × 61-2-5 row")
    qtbot.keyClicks(page.search, "xx")
    settle()
    assert page.list.count() == 0
    assert "No such pair" in texts(page)
    qtbot.keyClick(page.search, Qt.Key.Key_Escape)
    settle()
    assert page.list.count() == 3


def test_a_pack_opens_with_a_click(qtbot: QtBot, window: MainWindow, settle: Settle) -> None:
    window.open_path(demo("a_leaf_for_hollin_plate"))
    settle()
    window.show_page("reciprocals")
    settle()
    page = window.reciprocals
    page.go_to("18-01")
    settle()
    picture = page.picture
    assert picture is not None
    assert picture.made is not None
    (pack,) = picture.made.more
    before = picture.height()
    qtbot.mouseClick(picture.viewport(), LEFT, pos=picture.rect_of(pack).center())
    assert not picture.made.more
    assert picture.height() > before
    assert picture.where("18-01-24") != QPoint(-1, -1)


@pytest.mark.parametrize("percent", [100, 200])
def test_the_picture_stays_within_the_page(
    peas: MainWindow, settle: Settle, page: ReciprocalsPage, percent: int
) -> None:
    peas.set_text_size(percent)
    settle()
    picture = page.picture
    assert picture is not None
    for key in ("parent:TP", "parent:BA", "pair"):
        assert picture.viewport().rect().contains(picture.rect_of(key))
    assert picture.width() <= page._area.viewport().width()
