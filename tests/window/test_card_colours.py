"""The card's founder shares have the colours of the picture, and walking ends in sight."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

import pytest

from pedigreeview.book.book_file import BookFile
from pedigreeview.drawing.founders import show_table, shown_table
from pedigreeview.window.main_window import MainWindow
from pedigreeview.window.opening import Stated
from pedigreeview.window.share_bars import ShareBars
from pedigreeview.window.style import founder_colour
from tests.benchmarks.garden import garden

Settle = Callable[[], None]


@pytest.fixture
def large(window: MainWindow, settle: Settle, tmp_path: Path) -> MainWindow:
    BookFile.create(tmp_path / "book.pedbook", garden(800)).close()
    window.open_path(tmp_path / "book.pedbook", Stated("variety", 1.0))
    settle()
    return window


def test_bars_follow_the_colours_of_the_picture(large: MainWindow, settle: Settle) -> None:
    page, net = large.pedigree, large.opened.net  # type: ignore[union-attr]
    focus = net.founders[3]
    page.focus_on(focus)
    settle()
    (bars,) = page.card.findChildren(ShareBars)
    number = dict(shown_table(net))[focus]
    assert bars.colours() == [founder_colour(number)]
    other = (number + 1) % 12
    show_table(net, ((focus, other),))
    page.card.recolour(net)
    assert bars.colours() == [founder_colour(other)]
    for depth in (1, 4, 2):
        page.down.setValue(depth)
        settle()
        assert bars.colours() == [founder_colour(dict(page.placed.view.founders)[focus])]


def test_a_walk_back_to_the_focus_brings_it_into_sight(large: MainWindow, settle: Settle) -> None:
    page = large.pedigree
    canvas, focus = page.canvas, page.focus
    for _ in range(6):
        canvas.zoom_by(1.25)
    view = canvas.viewport()
    far = [code for code in canvas.placed.view.shown() if code != focus]  # type: ignore[union-attr]
    far.sort(key=lambda code: -abs(canvas.rect_of(code).center().x() - canvas.rect_of(focus).x()))
    page.select(far[0])
    settle()
    assert not view.rect().contains(canvas.rect_of(focus))
    page.select(focus)
    settle()
    assert page.selected == focus
    assert view.rect().contains(canvas.rect_of(focus))
