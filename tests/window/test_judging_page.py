"""The Judging page: ratios, selfs, genes, lines and selection, by real clicks and keys."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from pathlib import Path
from typing import TypeVar

import pytest
from PySide6.QtCore import QPoint, Qt
from PySide6.QtWidgets import QAbstractButton, QLabel, QWidget
from pytestqt.qtbot import QtBot

from pedigreeview.book.book_file import BookFile
from pedigreeview.exchange import read_book
from pedigreeview.places import demo
from pedigreeview.window.book_page import LazyPage
from pedigreeview.window.judging.genes_panel import GenesPanel
from pedigreeview.window.judging.hybrid_panel import HybridPanel
from pedigreeview.window.judging.line_panel import LinePanel
from pedigreeview.window.judging.panel import JudgingPanel
from pedigreeview.window.judging.segregation_panel import SegregationPanel
from pedigreeview.window.judging.selection_panel import SelectionPanel
from pedigreeview.window.judging.table import ResultTable
from pedigreeview.window.judging_page import PARTS, JudgingPage
from pedigreeview.window.main_window import MainWindow

Settle = Callable[[], None]
Panel = TypeVar("Panel", bound=JudgingPanel)
LEFT = Qt.MouseButton.LeftButton
SELFS = ("21-01-4", "21-02-5")


def texts(widget: QWidget) -> list[str]:
    return [x.text() for x in widget.findChildren(QLabel) if x.isVisible()]


def said(widget: QWidget) -> str:
    return " ".join(texts(widget))


def page_of(window: MainWindow) -> JudgingPage:
    lazy = window.book_pages["judging"]
    assert isinstance(lazy, LazyPage)
    page = lazy.page()
    assert isinstance(page, JudgingPage)
    return page


def turn(window: MainWindow, settle: Settle, part: str, kind: type[Panel]) -> Panel:
    """The part, asked for as another page would."""
    window.show_page("judging")
    settle()
    page = page_of(window)
    page.go_to(part)
    settle()
    panel = page.panel(part.partition(":")[0])
    assert isinstance(panel, kind)
    return panel


def click(qtbot: QtBot, panel: JudgingPanel, button: QAbstractButton) -> None:
    panel.area.ensureWidgetVisible(button)
    # A box is hit on its square: the middle of its width lies beside its text.
    qtbot.mouseClick(button, LEFT, pos=QPoint(button.height() // 2, button.height() // 2))


def click_row(qtbot: QtBot, table: ResultTable, key: str) -> None:
    row = table.keys().index(key)
    index = table.model().index(row, 0)
    table.scrollTo(index)
    qtbot.mouseClick(table.viewport(), LEFT, pos=table.visualRect(index).center())


@pytest.fixture
def tomatoes(window: MainWindow, settle: Settle) -> MainWindow:
    window.open_path(demo("a_leaf_for_hollin_plate"))
    settle()
    return window


@pytest.fixture
def unfound(window: MainWindow, settle: Settle, tmp_path: Path) -> MainWindow:
    """The peas as a book to write in, before anybody found the two accidental selfs."""
    book = read_book(demo("two_peas_both_ways"))
    kept = [row for row in book.parent_findings if row.plant not in SELFS]
    book = replace(book, parent_findings=kept)
    path = tmp_path / "peas.pedbook"
    BookFile.create(path, book).close()
    window.open_path(path)
    settle()
    return window


# The page -----------------------------------------------------------------------------------


def test_the_page_stands_on_the_rail_and_keys_lead_through_its_parts(
    qtbot: QtBot, peas: MainWindow, settle: Settle
) -> None:
    qtbot.mouseClick(peas.rail.tag("judging"), LEFT)
    settle()
    page = page_of(peas)
    page.list.setFocus()
    seen = [page.part()]
    for _ in PARTS[1:]:
        qtbot.keyClick(page.list, Qt.Key.Key_Down)
        settle()
        seen.append(page.part())
        assert page.parts.currentWidget() is page.panel(page.part())
        assert page.panel(page.part()).area.widget().height() > 0
    assert tuple(seen) == PARTS


def test_an_empty_book_says_how_each_part_is_filled(
    window: MainWindow, settle: Settle, tmp_path: Path
) -> None:
    from pedigreeview.window.opening import Stated

    table = tmp_path / "plain.csv"
    table.write_text("plant,seed_parent,pollen_parent\nA,,\n", encoding="utf-8")
    window.open_path(table, Stated("variety"))
    settle()
    window.show_page("judging")
    settle()
    page = page_of(window)
    for part, title in (
        ("segregation", "No family can be counted yet"),
        ("hybrids", "No cross to look at yet"),
        ("genes", "No gene is written down yet"),
        ("lines", "No row of plants yet"),
        ("selection", "Nothing is measured yet"),
    ):
        page.go_to(part)
        settle()
        panel = page.panel(part)
        assert title in texts(panel)
        buttons = [b for b in panel.findChildren(QAbstractButton) if b.isVisible()]
        assert buttons, part


# Segregation --------------------------------------------------------------------------------


def test_the_f2_of_the_peas_fits_three_to_one(peas: MainWindow, settle: Settle) -> None:
    """36 tall and 12 dwarf of 48: expected 36 and 12, chi-square 0, p 1 (by hand)."""
    panel = turn(peas, settle, "segregation:21-01-3", SegregationPanel)
    assert "height: 36 tall, 12 dwarf" in texts(panel)
    assert "It fits 3:1" in texts(panel)
    assert [panel.classes.text("tall", at) for at in (1, 2, 3)] == ["36", "36", "75%"]
    assert panel.tried.text("9:7", 1) == "rejected"
    assert "are too few to tell 3:1 from 13:3" in said(panel)


def test_two_traits_together_give_nine_to_three(
    qtbot: QtBot, peas: MainWindow, settle: Settle
) -> None:
    panel = turn(peas, settle, "segregation:21-01-3", SegregationPanel)
    click(qtbot, panel, panel.boxes["pod"])
    settle()
    assert "Against 9:3:3:1" in texts(panel)
    # 9/16, 3/16, 3/16 and 1/16 of 48.
    names = panel.classes.keys()
    classes = [panel.classes.text(name, 2) for name in names]
    assert classes == ["27", "9", "9", "3"]
    assert "exact test" in said(panel)


def test_a_typed_ratio_is_tested_and_one_of_other_parts_refused(
    qtbot: QtBot, peas: MainWindow, settle: Settle
) -> None:
    """1:1 on 36 and 12: chi-square (12² + 12²)/24 = 12, p 0.00053 (table of chi-square)."""
    panel = turn(peas, settle, "segregation:21-01-3", SegregationPanel)
    line = panel.ratio.lineEdit()
    assert line is not None
    line.setFocus()
    qtbot.keyClicks(line, "1:1")
    qtbot.keyClick(line, Qt.Key.Key_Return)
    settle()
    assert "It does not fit 1:1" in texts(panel)
    assert "p = 0.00053" in said(panel)
    line.selectAll()
    qtbot.keyClicks(line, "9:3:4")
    qtbot.keyClick(line, Qt.Key.Key_Return)
    settle()
    assert "has 3 parts, but 2 classes were seen" in said(panel)


def test_families_of_one_generation_are_tested_together(
    qtbot: QtBot, tomatoes: MainWindow, settle: Settle
) -> None:
    panel = turn(tomatoes, settle, "segregation:BC1F2", SegregationPanel)
    assert panel.plants.currentText().startswith("All BC1F2 together")
    assert len(panel.families.keys()) == 24
    assert "Holm's correction keeps one of them from being called by luck" in said(panel)
    click_row(qtbot, panel.families, "0")
    qtbot.keyClick(panel.families, Qt.Key.Key_Return)
    assert tomatoes.page() == "pedigree"
    assert tomatoes.pedigree.focus.startswith("18-01-")


def test_picked_plants_are_counted(peas: MainWindow, settle: Settle) -> None:
    panel = turn(peas, settle, "segregation", SegregationPanel)
    peas.map.picked.emit(("23-01", "23-02", "23-03", "23-04"))
    settle()
    assert panel.plants.currentText() == "The picked plants: 4 plants"


def test_why_says_formula_and_power(qtbot: QtBot, peas: MainWindow, settle: Settle) -> None:
    panel = turn(peas, settle, "segregation:21-01-3", SegregationPanel)
    why = next(
        b
        for b in panel.findChildren(QAbstractButton)
        if b.isVisible() and b.accessibleName() == "Why this number: Against 3:1"
    )
    qtbot.mouseClick(why, LEFT)
    assert "without Yates's correction" in said(panel)
    assert "Chance that so many plants would show it" in said(panel)


# Selfs or hybrids ---------------------------------------------------------------------------


def test_the_dwarf_white_seedling_is_a_self_and_is_written_down_at_one_click(
    qtbot: QtBot, unfound: MainWindow, settle: Settle
) -> None:
    """Odds of 21-01-4: prior times 99 for dwarf times 99 for white, with 1% misread."""
    panel = turn(unfound, settle, "hybrids:21-01", HybridPanel)
    prior = panel._found.prior
    odds = prior / (1 - prior) * 99 * 99
    assert panel.table.text("21-01-4", 1) == f"{100 * odds / (1 + odds):.3g}%"
    assert panel.table.text("21-01-4", 2) == "self"
    assert "1 self, 6 true hybrids" in texts(panel)
    assert panel.table.current_key() == "21-01-4"
    assert panel.write_one.text() == "Write down: 21-01-4 is a selfing of TP"
    click(qtbot, panel, panel.write_one)
    settle()
    assert unfound.desk.book is not None
    (finding,) = [row for row in unfound.desk.book.parent_findings if row.plant in SELFS]
    assert (finding.plant, finding.pollen_parent, finding.grade) == ("21-01-4", "self", "probable")
    assert panel.table.text("21-01-4", 4) == "self"
    assert not panel.write_one.isEnabled()
    unfound.desk.undo()
    settle()
    assert not [row for row in unfound.desk.book.parent_findings if row.plant in SELFS]


def test_another_prior_changes_the_odds(qtbot: QtBot, unfound: MainWindow, settle: Settle) -> None:
    panel = turn(unfound, settle, "hybrids:21-02", HybridPanel)
    before = panel.table.text("21-02-5", 1)
    panel.prior.setFocus()
    panel.prior.selectAll()
    qtbot.keyClicks(panel.prior, "50")
    qtbot.keyClick(panel.prior, Qt.Key.Key_Return)
    settle()
    # At even odds a yellow pod, 99 times as likely in a self, gives 99/100.
    assert panel.table.text("21-02-5", 1) == "99%"
    assert before != "99%"


# Genes --------------------------------------------------------------------------------------


def test_carriers_are_told_surely_open_and_not(
    qtbot: QtBot, peas: MainWindow, settle: Settle
) -> None:
    panel = turn(peas, settle, "genes:Le", GenesPanel)
    assert panel.allele.currentText() == "le"
    assert panel.table.text("TP", 4) == "le/le 100%"
    assert panel.table.text("21-01-1", 3) == "surely"
    assert panel.table.text("BA", 2) == "0%"
    assert "Exact." in said(panel)
    every = len(panel.table.keys())
    qtbot.mouseClick(panel.filters["open"], LEFT)
    kept = panel.table.keys()
    assert 0 < len(kept) < every
    assert {panel.table.text(key, 3) for key in kept} == {"open"}


def test_a_contradiction_is_named_and_mended_by_a_finding(
    qtbot: QtBot, unfound: MainWindow, settle: Settle
) -> None:
    """A dwarf plant of dwarf × pure tall cannot be: 'perhaps a selfing of TP'."""
    panel = turn(unfound, settle, "genes:Le", GenesPanel)
    assert panel.cards is not None
    assert "No chances can be given" in texts(panel)
    shown = said(panel.cards)
    assert "21-01-4 cannot come from TP × BA: perhaps a selfing of TP." in shown
    assert "21-01-4: height dwarf (2022-05-28)" in shown
    (button,) = panel.cards.buttons
    assert button.text() == "Write down: 21-01-4 is a selfing of TP"
    click(qtbot, panel, button)
    settle()
    assert unfound.desk.book is not None
    found = [row.plant for row in unfound.desk.book.parent_findings]
    assert "21-01-4" in found
    assert "21-02-5" not in found
    assert panel.cards is not None
    assert "None: every score and genotype of this gene can be true." in texts(panel.cards)


# Lines --------------------------------------------------------------------------------------


def test_lines_are_judged_and_the_chosen_one_is_explained(
    qtbot: QtBot, peas: MainWindow, settle: Settle
) -> None:
    """F5 by selfing an F1 of pure lines: F = 15/16; none in 20 leaves up to 14% (trade terms 7)."""
    panel = turn(peas, settle, "lines:19-4-2", LinePanel)
    assert panel.table.current_key() == "19-4-2"
    assert "F = 0.9375" in texts(panel)
    assert "Up to 14% may still be off-types (95% bound)." in said(panel)
    assert "look at 59 plants and see none" in said(panel)
    click_row(qtbot, panel.table, "23-61")
    settle()
    assert panel.table.text("23-61", 1) == "not stable"
    assert "It still segregates for flower" in said(panel)
    click_row(qtbot, panel.table, "61-2-5")
    settle()
    assert "that is foreign pollen or a volunteer, not segregation" in said(panel)


# Selection ----------------------------------------------------------------------------------


def test_families_and_plants_are_ranked_and_picked(
    qtbot: QtBot, peas: MainWindow, settle: Settle
) -> None:
    panel = turn(peas, settle, "selection:sweet", SelectionPanel)
    assert "From all kin" in texts(panel)
    assert "A share lies from 0 to 1, so this one says nothing." not in texts(panel)
    assert panel.family_rows.accessibleName().startswith("Families by what to expect")
    best = panel.table.keys()[0]
    heard: list[tuple[str, ...]] = []
    page_of(peas).picked.connect(heard.append)
    panel.area.ensureWidgetVisible(panel.table)
    click_row(qtbot, panel.table, best)
    click(qtbot, panel, panel.pick)
    assert heard == [(best,)]


def test_a_share_outside_nought_to_one_is_called_nothing(peas: MainWindow, settle: Settle) -> None:
    """'pods' stood in very different years: the response tells 4.98, which no share can be."""
    panel = turn(peas, settle, "selection:pods", SelectionPanel)
    assert "A share lies from 0 to 1, so this one says nothing." in texts(panel)


def test_too_few_values_say_so(window: MainWindow, settle: Settle, tmp_path: Path) -> None:
    book = read_book(demo("two_peas_both_ways"))
    one = next(score for score in book.scores if score.trait == "sweet")
    BookFile.create(tmp_path / "thin.pedbook", replace(book, scores=[one])).close()
    window.open_path(tmp_path / "thin.pedbook")
    settle()
    panel = turn(window, settle, "selection", SelectionPanel)
    assert panel.trait.count() == 1
    assert "There are too few values for breeding values." in said(panel)


# For everyone -------------------------------------------------------------------------------


@pytest.mark.parametrize("percent", [100, 200])
def test_no_part_is_wider_than_its_page(peas: MainWindow, settle: Settle, percent: int) -> None:
    peas.set_text_size(percent)
    for part in PARTS:
        panel = turn(peas, settle, part, JudgingPanel)
        assert panel.area.widget().width() <= panel.area.viewport().width(), part
    peas.set_look("dark")
    settle()
    assert page_of(peas).part() == PARTS[-1]
