"""The key to the signs: beside the picture, of this picture alone, folded, or all there are."""

from __future__ import annotations

import itertools
from collections.abc import Callable

import pytest
from PySide6.QtCore import QRectF, Qt
from PySide6.QtGui import QColor, QImage, QPainter
from PySide6.QtWidgets import QPushButton
from pytestqt.qtbot import QtBot

from pedigreeview.drawing.legend import Entry, group_of
from pedigreeview.drawing.legend_list import legend_list, list_height, paint_list
from pedigreeview.drawing.legend_picks import PICKED, RESERVE
from pedigreeview.drawing.theme import Theme, theme
from pedigreeview.window.legend_panel import all_signs
from pedigreeview.window.main_window import MainWindow

Settle = Callable[[], None]
LEFT = Qt.MouseButton.LeftButton


@pytest.fixture
def shown(qtbot: QtBot, peas: MainWindow, settle: Settle) -> MainWindow:
    peas.pedigree.canvas.reduced_motion = True
    peas.show_plant("21-01-3")
    settle()
    qtbot.mouseClick(peas.pedigree.key_button, LEFT)
    return peas


def test_it_stands_beside_the_picture_and_takes_a_quarter_at_most(shown: MainWindow) -> None:
    page = shown.pedigree
    assert page.canvas.geometry().right() < page.key.geometry().left()
    assert page.key.geometry().right() <= page.stage.width()
    assert page.key.width() <= page.stage.width() / 4
    assert not page.key.geometry().intersects(page.card.geometry())
    assert page.canvas.viewport().rect().contains(page.canvas.rect_of("21-01-3"))


def test_put_away_it_gives_the_room_back(qtbot: QtBot, shown: MainWindow) -> None:
    page = shown.pedigree
    qtbot.keyClick(page.key.close_button, Qt.Key.Key_Escape)
    assert page.canvas.width() == page.stage.width()


def test_folded_it_is_its_title_and_gives_the_room_back(qtbot: QtBot, shown: MainWindow) -> None:
    page = shown.pedigree
    qtbot.mouseClick(page.key.fold_button, LEFT)
    assert page.key.isVisible()
    assert page.key.height() < 60
    assert page.canvas.width() == page.stage.width()
    assert page.stage.rect().contains(page.key.geometry())
    qtbot.mouseClick(page.key.fold_button, LEFT)
    assert page.canvas.geometry().right() < page.key.geometry().left()


def test_signs_of_this_picture_first_and_all_signs_behind_a_button(
    qtbot: QtBot, shown: MainWindow
) -> None:
    key = shown.pedigree.key
    assert "Selfing" in key.legend.accessibleName()
    assert "Open-pollinated" not in key.legend.accessibleName()
    qtbot.mouseClick(key.all_button, LEFT)
    assert "Open-pollinated" in key.legend.accessibleName()
    qtbot.mouseClick(key.all_button, LEFT)
    assert "Open-pollinated" not in key.legend.accessibleName()


@pytest.mark.parametrize("width", [150.0, 236.0, 400.0])
def test_rows_follow_each_other_and_every_word_is_shown(width: float) -> None:
    entries = (Entry("founder", "TP Tall Purple", 0, "T"), *all_signs())
    rows = legend_list(entries, width)
    assert [row.entry for row in rows if row.entry is not None] == list(entries)
    for row in rows:
        if row.entry is not None:
            assert " ".join(row.lines).split() == row.entry.words.split()
    for one, other in itertools.pairwise(rows):
        assert other.top >= one.top + one.height
    heads = [row.lines[0] for row in rows if row.entry is None]
    assert heads == ["Founders", "Tags", "Lines", "Crosses"]
    spoken = legend_list(entries, width, {"Lines": "Linien"})
    assert "Linien" in [row.lines[0] for row in spoken if row.entry is None]
    assert [group_of(entry) for entry in entries] == sorted(
        (group_of(entry) for entry in entries), key=heads.index
    )


def _painted(entry: Entry, look: Theme, high: int = 60) -> QImage:
    image = QImage(60, high, QImage.Format.Format_RGB32)
    image.fill(look["paper"])
    painter = QPainter(image)
    rows = [row for row in legend_list((entry,), 236.0) if row.entry is not None]
    paint_list(painter, rows, look, 0.0, -rows[0].top)
    painter.end()
    return image


def _spots(image: QImage, shade: str) -> list[tuple[int, int]]:
    wanted = QColor(shade).rgb()
    return [
        (x, y)
        for x in range(image.width())
        for y in range(image.height())
        if image.pixel(x, y) == wanted
    ]


@pytest.mark.parametrize("name", ["light", "dark"])
def test_what_a_line_means_is_ringed_on_its_tag(name: str) -> None:
    look = theme(name)
    entries = {entry.mark: entry for entry in all_signs()}
    ringed = {mark: _spots(_painted(entries[mark], look), look["accent"]) for mark in PICKED}
    assert all(ringed.values())
    middle = {
        mark: (
            sum(x for x, _ in spots) / len(spots),
            sum(y for _, y in spots) / len(spots),
        )
        for mark, spots in ringed.items()
    }
    assert middle["stripe"][0] < middle["tag"][0] < middle["kept"][0]
    assert middle["tag"][1] < middle["bar"][1]
    # Pale paper lies on the ground of the picture, not on that of the panel.
    assert _painted(entries["tag"], look).pixel(1, 16) != QColor(look["paper"]).rgb()


def test_samples_that_reach_beyond_their_tag_have_the_room() -> None:
    entries = all_signs()
    height = {
        row.entry.mark: row.height for row in legend_list(entries, 400.0) if row.entry is not None
    }
    for mark, more in RESERVE.items():
        assert height[mark] >= height["tag"] + more - 3.0
    tabs = next(entry for entry in entries if entry.mark == "tabs")
    spots = _spots(_painted(tabs, theme("light")), theme("light")["accent"])
    assert max(y for _, y in spots) < height["tabs"]


def test_all_signs_is_a_button_that_the_keys_reach(qtbot: QtBot, shown: MainWindow) -> None:
    button = shown.pedigree.key.all_button
    assert isinstance(button, QPushButton)
    button.setFocus()
    qtbot.keyClick(button, Qt.Key.Key_Space)
    assert "Open-pollinated" in shown.pedigree.key.legend.accessibleName()


@pytest.mark.parametrize("name", ["light", "dark", "grey"])
def test_every_sign_is_painted_within_its_row(name: str) -> None:
    look, entries = theme(name), all_signs()
    high = round(list_height(entries, 236.0))
    image = QImage(240, high, QImage.Format.Format_RGB32)
    image.fill(look["ground"])
    painter = QPainter(image)
    paint_list(painter, legend_list(entries, 236.0), look, 0.0, 0.0)
    painter.end()
    ground = image.pixel(238, 0)
    for row in legend_list(entries, 236.0):
        area = QRectF(0, row.top, 50, row.height).toRect()
        ink = {
            image.pixel(x, y)
            for x in range(area.left(), area.right())
            for y in range(area.top(), min(area.bottom(), high))
        }
        assert ink - {ground}, row.lines
