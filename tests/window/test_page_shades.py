"""Tint and filter on the Pedigree page, shared with the Map page."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import Qt
from pytestqt.qtbot import QtBot

from pedigreeview.book.filtering import PlantFilter
from pedigreeview.drawing.tinting import Wanted
from pedigreeview.window.main_window import MainWindow

Settle = Callable[[], None]
LEFT = Qt.MouseButton.LeftButton


def key_words(window: MainWindow) -> str:
    return window.pedigree.key.legend.accessibleName()


def test_the_control_unfolds_tints_and_says_so_when_folded(
    qtbot: QtBot, peas: MainWindow, settle: Settle
) -> None:
    page = peas.pedigree
    assert not page.bars.isVisible()
    before = page.canvas.height()
    qtbot.mouseClick(page.tools.shades, LEFT)
    settle()
    assert page.bars.isVisible()
    # At 1280 by 800 the picture keeps most of its room.
    assert page.canvas.height() > 0.75 * before
    assert page.bars.tints.kind.hasFocus()
    with qtbot.waitSignal(page.shades.tinted):
        qtbot.keyClicks(page.bars.tints.kind, "Inbreeding")
    canvas = page.canvas
    assert canvas._tint_words["21-01-3"] == "0"
    assert canvas._tint_words["23-07"] == "0.5"
    assert page.bars.tints.key.isVisible()
    assert not page.notes.isVisible()
    qtbot.mouseClick(page.key_button, LEFT)
    assert "Tint: Inbreeding F, pale to deep" in key_words(peas)
    qtbot.mouseClick(page.tools.shades, LEFT)
    assert not page.bars.isVisible()
    assert "Tint: Inbreeding F." in page.notes.text.text()
    assert page.look().tint == Wanted("inbreeding")
    qtbot.mouseClick(page.notes.clear, LEFT)
    assert not page.notes.isVisible()
    assert canvas._tints is None
    assert "Tint" not in key_words(peas)


def test_coancestry_follows_the_focus(qtbot: QtBot, peas: MainWindow, settle: Settle) -> None:
    page = peas.pedigree
    peas.show_plant("TP")
    page.shades.want_tint(Wanted("coancestry", "TP"))
    settle()
    assert page.canvas._tint_words["TP"] == "1"
    peas.show_plant("BA")
    settle()
    assert page.shades.wanted == Wanted("coancestry", "BA")
    # Two unrelated pure lines.
    assert (page.canvas._tint_words["TP"], page.canvas._tint_words["BA"]) == ("0", "1")


def test_a_filter_fades_hides_and_brings_back(
    qtbot: QtBot, peas: MainWindow, settle: Settle
) -> None:
    page = peas.pedigree
    peas.show_plant("21-01-3")
    everything = page.canvas.placed.view.shown()  # type: ignore[union-attr]
    page.shades.ask_offer()
    settle()
    page.tools.shades.setChecked(True)
    bars = page.bars.filters
    bars._statuses["kept"].trigger()
    settle()
    assert "TP" in page.canvas._faded
    assert "21-01-3" not in page.canvas._faded
    assert page.canvas.placed.view.shown() == everything  # type: ignore[union-attr]
    bars.how.setFocus()
    qtbot.keyClick(bars.how, Qt.Key.Key_Down)
    settle()
    view = page.canvas.placed.view  # type: ignore[union-attr]
    assert page.shades.how == "hide"
    assert page.focus in view.shown()
    assert view.shown() < everything
    assert f"{len(view.away)} plants that do not fit are folded away" in page.notes.text.text()
    assert page.canvas._faded == frozenset()
    qtbot.mouseClick(page.notes.bring, LEFT)
    settle()
    assert page.canvas.placed.view.shown() == everything  # type: ignore[union-attr]
    assert bars.wanted().empty()


def test_the_focus_is_never_hidden(qtbot: QtBot, peas: MainWindow, settle: Settle) -> None:
    page = peas.pedigree
    peas.show_plant("TP")
    page.shades.want_filter(PlantFilter(statuses=frozenset({"lost"})), "hide")
    settle()
    view = page.canvas.placed.view  # type: ignore[union-attr]
    assert "TP" in view.shown()
    assert "TP" not in view.aside


def test_the_map_has_the_same_tint_and_filter(
    qtbot: QtBot, peas: MainWindow, settle: Settle
) -> None:
    page, other = peas.pedigree, peas.map
    page.shades.want_tint(Wanted("status"))
    page.shades.want_filter(PlantFilter(text="21-"), "fade")
    settle()
    peas.show_page("map")
    settle()
    assert other.tints.kind.currentData() == "status"
    assert other.tints.key.key() is not None
    assert other.filters.text.text() == "21-"
    assert other.filters.said.isVisible()
    other.filters.text.setFocus()
    qtbot.keyClick(other.filters.text, Qt.Key.Key_A, Qt.KeyboardModifier.ControlModifier)
    qtbot.keyClicks(other.filters.text, "23-07")
    qtbot.waitUntil(lambda: page.shades.filter.text == "23-07")
    settle()
    with qtbot.waitSignal(page.shades.tinted):
        other.tints.kind.setFocus()
        qtbot.keyClicks(other.tints.kind, "Gen")
    peas.show_page("pedigree")
    page.tools.shades.setChecked(True)
    settle()
    assert page.bars.tints.kind.currentData() == "generation"
    assert page.bars.filters.text.text() == "23-07"
    assert page.canvas._tint_words["TP"] == "0"
    assert "TP" in page.canvas._faded


def test_another_book_is_plain_again(qtbot: QtBot, peas: MainWindow, settle: Settle) -> None:
    page = peas.pedigree
    page.shades.want_tint(Wanted("generation"))
    page.shades.want_filter(PlantFilter(text="21-"), "fade")
    settle()
    peas.open_path(peas.opened.path.parent / "tansy_and_the_moths")  # type: ignore[union-attr]
    settle()
    assert page.shades.wanted is None
    assert page.shades.filter.empty()
    assert page.canvas._tints is None
    assert not page.notes.isVisible()
