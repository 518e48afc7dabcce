"""The Parents page: wishes, candidates, limits, weights, the ranking, planning, several at once."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from pedigreeview.book.book_file import BookFile
from pedigreeview.exchange import read_book
from pedigreeview.planning.pairs import Weights
from pedigreeview.window.desk import Desk
from pedigreeview.window.errands import Errands
from pedigreeview.window.main_window import MainWindow
from pedigreeview.window.opening import Opened, build, read
from pedigreeview.window.parents_limits import LimitsPanel
from pedigreeview.window.parents_page import ParentsPage
from pedigreeview.window.style import dress
from tests.window.conftest import PEAS, TOMATOES

Settle = Callable[[], None]


def the_page(window: MainWindow, settle: Settle) -> ParentsPage:
    window.show_page("parents")
    QApplication.processEvents()
    settle()
    held = window.book_pages["parents"].page()  # type: ignore[attr-defined]
    assert isinstance(held, ParentsPage)
    return held


@pytest.fixture(scope="module")
def opened() -> Opened:
    return build(read(PEAS), None)


@pytest.fixture
def errands(qtbot: QtBot) -> Iterator[Errands]:
    made = Errands()
    yield made
    assert made.close()


@pytest.fixture
def wait(qtbot: QtBot, errands: Errands) -> Settle:
    """Wait until every answer that the page asked for has come."""

    def until() -> None:
        qtbot.waitUntil(lambda: not errands.awaits(), timeout=15000)
        QApplication.processEvents()

    return until


@pytest.fixture
def page(qtbot: QtBot, errands: Errands, opened: Opened, wait: Settle) -> ParentsPage:
    """The page by itself, without a window around it."""
    app = QApplication.instance()
    assert isinstance(app, QApplication)
    # Another test may have left the program in large type.
    dress(app, "light", 100)
    desk = Desk(errands)
    desk.opened = opened
    made = ParentsPage(errands, desk)
    qtbot.addWidget(made)
    made.resize(1150, 650)
    made.show_opened(opened)
    made.show()
    qtbot.waitExposed(made)
    wait()
    return made


@pytest.fixture
def own_book(window: MainWindow, settle: Settle, tmp_path: Path) -> MainWindow:
    """The peas kept as a book that can be written in."""
    path = tmp_path / "peas.pedbook"
    BookFile.create(path, read_book(PEAS)).close()
    window.open_path(path)
    settle()
    assert window.desk.can_write
    return window


def again(page: ParentsPage, settle: Settle) -> None:
    """Ask at once instead of after the pause that typing gets."""
    page.ask()
    settle()


def pairs(page: ParentsPage) -> list[tuple[str, str]]:
    return [(row.seed, row.pollen) for row in page.table.held.rows]


# The question -----------------------------------------------------------------------------------


def test_the_kept_plants_are_ranked_without_a_wish(page: ParentsPage) -> None:
    assert page.wishes.none.isVisible()
    found = page.found.text()
    assert found.startswith("13 candidates make 78 pairs; 78 keep to the limits")
    scores = [row.score for row in page.table.held.rows]
    assert scores == sorted(scores, reverse=True)
    assert page.detail.row is page.table.held.rows[0]


def test_a_wish_is_added_by_keys_and_weighed(page: ParentsPage, qtbot: QtBot, wait: Settle) -> None:
    qtbot.keyClicks(page.wishes.of, "sweet")
    assert page.wishes.want.currentData() == "high"
    page.wishes.add_button.setFocus()
    qtbot.keyClick(page.wishes.add_button, Qt.Key.Key_Space)
    again(page, wait)
    (wish,) = page.wishes.wishes()
    assert (wish.kind, wish.of, wish.want, wish.weight) == ("measured", "sweet", "high", 1.0)
    assert "high sweet" in [title for title, _ in page.table.held.titles()]
    slider = page.wishes.rows[0]
    slider.setFocus()
    qtbot.keyClick(slider, Qt.Key.Key_Right)
    assert page.wishes.wishes()[0].weight == 1.25
    assert slider.number.text() == "1.25"
    assert "sweet: high" in slider.accessibleName()
    best = page.table.held.rows[0]
    assert any("high sweet" in reason for reason in best.reasons)


def test_of_one_trait_one_value_is_wanted(page: ParentsPage) -> None:
    page.wishes.wish("trait:height", "tall")
    page.wishes.wish("trait:height", "dwarf")
    assert [(w.of, w.want) for w in page.wishes.wishes()] == [("height", "dwarf")]
    page.wishes.wish("gene:Gp", "gp")
    assert page.wishes.of_genes() == [("height", "dwarf"), ("pod", "yellow")]
    page.wishes.remove(0)
    assert [w.of for w in page.wishes.wishes()] == ["Gp"]


def test_limits_leave_pairs_out_and_say_so(page: ParentsPage, qtbot: QtBot, wait: Settle) -> None:
    qtbot.keyClicks(page.limits.inbreeding.editor, "1/2")
    assert page.limits.inbreeding.said() == "= 0.5"
    again(page, wait)
    assert all(row.inbreeding is not None and row.inbreeding <= 0.5 for row in page.table.held.rows)
    assert "F above 0.5" in page.found.text()
    page.limits.inbreeding.editor.clear()
    qtbot.keyClicks(page.limits.inbreeding.editor, "0")
    again(page, wait)
    assert not page.table.isVisible()
    assert "No pair keeps to the limits" in page.empty.text()
    page.limits.inbreeding.editor.clear()
    qtbot.keyClicks(page.limits.inbreeding.editor, "two")
    again(page, wait)
    assert "no share from 0 to 1" in page.empty.text()


def test_protected_varieties_can_be_left_out(page: ParentsPage) -> None:
    from dataclasses import replace

    net = page._net
    assert net is not None
    from pedigreeview.window.parents_asking import rank

    asked = page.question()
    book = net.book
    guarded = replace(book.plants["23-19"], protected="licence")
    changed = net.with_book(replace(book, plants={**book.plants, "23-19": guarded}))
    free = rank(changed, replace(asked, unprotected=True), lambda *_: None)
    assert all("23-19" not in (row.seed, row.pollen) for row in free.rows)
    assert any("protected" in note for note in free.notes)


def test_parts_can_have_candidates_of_their_own(page: ParentsPage, wait: Settle) -> None:
    page.candidates.apart.setChecked(True)
    page.candidates.seeds.choose("founders")
    page.candidates.pollens.choose("kept")
    again(page, wait)
    found = pairs(page)
    assert found
    assert {seed for seed, _ in found} <= {"TP", "BA"}
    assert not {pollen for _, pollen in found} & {"TP", "BA"}


def test_weights_move_the_score(page: ParentsPage, qtbot: QtBot, wait: Settle) -> None:
    first = page.table.held.rows[0].score
    for name, slider in page.weights.sliders.items():
        slider.set_weight(1.0 if name == "unrelated" else 0.0)
    again(page, wait)
    best = page.table.held.rows[0]
    assert best.inbreeding is not None
    assert best.score == pytest.approx(1 - best.inbreeding)
    assert best.score != first
    page.weights.sliders["unrelated"].set_weight(0.0)
    assert page.weights.said.isVisible()
    qtbot.mouseClick(page.weights.usual_button, Qt.MouseButton.LeftButton)
    assert not page.weights.said.isVisible()
    assert page.weights.sliders["complement"].weight == 3.0


def test_too_few_candidates_say_what_to_do(page: ParentsPage, wait: Settle) -> None:
    page.candidates.seeds.choose("picked")
    again(page, wait)
    assert "Pick plants" in page.empty.text()
    page.take_picked(("TP", "BA", "23-19"))
    wait()
    again(page, wait)
    assert len(pairs(page)) == 3


def test_withheld_candidates_are_counted(page: ParentsPage, wait: Settle) -> None:
    page.show_opened(build(read(TOMATOES), None))
    wait()
    assert "3 plants are left out" in page.found.text()


# A pair -----------------------------------------------------------------------------------------


def test_a_pair_is_weighed_in_the_direction_that_is_typed(
    page: ParentsPage, qtbot: QtBot, wait: Settle
) -> None:
    qtbot.keyClicks(page.seed.editor, "BA")
    qtbot.keyClicks(page.pollen.editor, "TP")
    qtbot.mouseClick(page.weigh_button, Qt.MouseButton.LeftButton)
    wait()
    row = page.detail.row
    assert row is not None
    assert (row.seed, row.pollen) == ("BA", "TP")
    # 21-02 is BA × TP: 4 of 10 buds took (scenario of the demo).
    assert any("4 of 10 flowers took" in reason for reason in row.reasons)
    assert dict(row.founder_shares) == {"BA": 0.5, "TP": 0.5}
    qtbot.mouseClick(page.detail.turn_button, Qt.MouseButton.LeftButton)
    wait()
    assert page.detail.row is not None
    assert page.detail.row.seed == "TP"
    page.seed.set_text("none")
    qtbot.mouseClick(page.weigh_button, Qt.MouseButton.LeftButton)
    assert "plant of this book" in page.seed.said()


def test_why_is_explained(page: ParentsPage, qtbot: QtBot, wait: Settle) -> None:
    qtbot.mouseClick(page.detail._why, Qt.MouseButton.LeftButton)
    wait()
    told = page.detail.explained
    row = page.detail.row
    assert row is not None
    assert told.pair == (row.seed, row.pollen)
    qtbot.mouseClick(told.figures["progeny"].button, Qt.MouseButton.LeftButton)
    wait()
    assert told.figures["progeny"].panel.filled


def test_rows_are_chosen_by_keys_and_kept(page: ParentsPage, qtbot: QtBot, wait: Settle) -> None:
    page.table.setFocus()
    qtbot.keyClick(page.table, Qt.Key.Key_Down)
    chosen = page.table.held.rows[1]
    assert page.detail.row is chosen
    page.wishes.wish("trait:sweet", "high")
    again(page, wait)
    assert page.detail.row is not None
    assert {page.detail.row.seed, page.detail.row.pollen} == {chosen.seed, chosen.pollen}


# How many to grow --------------------------------------------------------------------------------


def test_from_the_pair_to_the_plan(page: ParentsPage, qtbot: QtBot, wait: Settle) -> None:
    for of, want in (("trait:height", "dwarf"), ("trait:pod", "yellow")):
        page.wishes.wish(of, want)
    page.weigh("TP", "BA")
    wait()
    qtbot.mouseClick(page.detail.grow_button, Qt.MouseButton.LeftButton)
    page.growing.ask()
    wait()
    assert page.tabs["growing"].isChecked()
    answer = page.growing.answer
    assert answer is not None
    assert page.growing.told.text().startswith("Wanted in one plant: dwarf height")
    assert [name for name, _ in page.growing.figure.curves] == [
        plan.scheme.name for plan in answer.plans[:5]
    ]
    target = page.growing.target
    target.bed.setFocus()
    target.bed.selectAll()
    qtbot.keyClicks(target.bed, "30")
    page.growing.ask()
    wait()
    narrower = page.growing.answer
    assert narrower is not None
    assert narrower is not answer
    assert any(not plan.fits for plan in narrower.plans)


def test_genes_are_counted_without_a_book_of_genes(
    page: ParentsPage, qtbot: QtBot, wait: Settle
) -> None:
    page.turn_to("growing")
    wait()
    assert "type two parents" in page.growing.told.text()
    target = page.growing.target
    qtbot.keyClick(target.by_numbers, Qt.Key.Key_Space)
    assert target.numbers.isVisible()
    page.growing.ask()
    wait()
    assert page.growing.answer is not None
    assert page.growing.told.text().startswith("Wanted in one plant: recessive gene 1")
    target.linkage.setCurrentIndex(target.linkage.findData("1/10"))
    page.growing.ask()
    wait()
    assert page.growing.answer is not None
    assert "linked pair" in page.growing.told.text()


def test_an_unknown_parent_is_named(page: ParentsPage, wait: Settle) -> None:
    page.turn_to("growing")
    page.growing.show_parents("TP", "nobody")
    page.growing.ask()
    wait()
    assert page.growing.told.text() == "Not in this book: nobody."
    assert page.growing.answer is None


# Planning ---------------------------------------------------------------------------------------


def test_from_a_wish_to_both_directions_planned(
    own_book: MainWindow, qtbot: QtBot, settle: Settle
) -> None:
    page = the_page(own_book, settle)
    before = set(own_book.desk.book.crosses)  # type: ignore[union-attr]
    qtbot.keyClicks(page.wishes.of, "sweet")
    qtbot.mouseClick(page.wishes.add_button, Qt.MouseButton.LeftButton)
    page.limits.new.click()
    again(page, settle)
    page.table.setFocus()
    qtbot.keyClick(page.table, Qt.Key.Key_Down)
    row = page.detail.row
    assert row is not None
    assert not row.made
    qtbot.mouseClick(page.detail.both_button, Qt.MouseButton.LeftButton)
    settle()
    book = own_book.desk.book
    assert book is not None
    new = [book.crosses[code] for code in book.crosses if code not in before]
    assert {(c.seed_parent, c.pollen_parent) for c in new} == {
        (row.seed, row.pollen),
        (row.pollen, row.seed),
    }
    assert {c.state for c in new} == {"planned"}
    assert all(c.cross in page.detail.said.text() for c in new)
    assert [wish.of for wish in page.wishes.wishes()] == ["sweet"]
    assert page.detail.row is not None
    assert {page.detail.row.seed, page.detail.row.pollen} == {row.seed, row.pollen}
    qtbot.mouseClick(page.detail.plan_button, Qt.MouseButton.LeftButton)
    settle()
    assert "already" in page.detail.said.text()
    own_book.desk.undo()
    settle()
    assert own_book.desk.book is not None
    assert set(own_book.desk.book.crosses) == before
    qtbot.mouseClick(page.detail.try_button, Qt.MouseButton.LeftButton)
    settle()
    assert own_book.page() == "pedigree"
    assert own_book.pedigree.shown is not None
    ghost = own_book.pedigree.shown.ghost
    assert ghost is not None
    assert {ghost.seed, ghost.pollen} == {row.seed, row.pollen}


def test_several_are_chosen_and_planned_as_one_edit(
    own_book: MainWindow, qtbot: QtBot, settle: Settle
) -> None:
    page = the_page(own_book, settle)
    own_book.set_text_size(200)
    settle()
    assert page.table.verticalHeader().defaultSectionSize() > 30
    qtbot.mouseClick(page.tabs["several"], Qt.MouseButton.LeftButton)
    panel = page.several
    panel.many.setValue(3)
    panel.uses.setValue(1)
    qtbot.mouseClick(panel.choose_button, Qt.MouseButton.LeftButton)
    settle()
    assert len(panel.chosen) == 3
    used = [code for row in panel.chosen for code in (row.seed, row.pollen)]
    assert len(set(used)) == 6
    crosses = len(own_book.desk.book.crosses)  # type: ignore[union-attr]
    wanted = {(row.seed, row.pollen) for row in panel.chosen}
    qtbot.mouseClick(panel.plan_button, Qt.MouseButton.LeftButton)
    settle()
    book = own_book.desk.book
    assert book is not None
    held = {(c.seed_parent, c.pollen_parent) for c in book.crosses.values()}
    assert wanted <= held
    own_book.desk.undo()
    settle()
    assert len(own_book.desk.book.crosses) == crosses  # type: ignore[union-attr]


def test_too_much_merit_is_said(page: ParentsPage, qtbot: QtBot, wait: Settle) -> None:
    page.turn_to("several")
    page.several.least.setValue(100)
    qtbot.mouseClick(page.several.choose_button, Qt.MouseButton.LeftButton)
    wait()
    assert page.several.chosen == []
    assert page.several.plan_button.isHidden()


def test_wishes_limits_and_weights_are_kept_with_the_book(
    own_book: MainWindow, settle: Settle, tmp_path: Path
) -> None:
    page = the_page(own_book, settle)
    path = own_book.opened.path  # type: ignore[union-attr]
    trait = page.wishes.of.currentData()
    value = page.wishes.want.currentData()
    page.wishes.wish(trait, value, 2.5)
    page.limits.inbreeding.set_text("1/8")
    page.limits.new.setChecked(True)
    page.limits.fertile.setChecked(False)
    page.weights.sliders["unrelated"].set_weight(3.25)
    settle()
    own_book.close_book()
    # Another book begins with the usual ones.
    own_book.open_path(TOMATOES)
    settle()
    page = the_page(own_book, settle)
    assert page.wishes.state() == []
    assert page.limits.state() == LimitsPanel().state()
    assert page.weights.weights() == Weights()
    own_book.close_book()
    own_book.open_path(path)
    settle()
    page = the_page(own_book, settle)
    assert page.wishes.state() == [[trait, value, 2.5]]
    assert page.limits.inbreeding.share == 0.125
    assert page.limits.new.isChecked()
    assert not page.limits.fertile.isChecked()
    assert page.weights.sliders["unrelated"].weight == 3.25
    assert page.weights.sliders["unrelated"].number.text() == "3.25"
    settle()
    asked = page.question()
    assert asked.limits.inbreeding == 0.125
    assert asked.limits.never_made
    assert [wish.weight for wish in asked.wanted] == [2.5]


def test_what_was_kept_and_makes_no_sense_is_left_out(page: ParentsPage) -> None:
    page.wishes.restore([["trait:no such", "high", 1.0], ["gene:A"], 7, ["x", "y", "z"]])
    assert page.wishes.state() == []
    page.limits.restore({"inbreeding": 3, "new": "yes", "fertile": None})
    assert page.limits.state() == LimitsPanel().state()
    page.weights.restore({"merit": "much", "unrelated": -4, "shown": 99})
    assert page.weights.weights() == Weights()
    page.weights.restore(None)
    assert page.weights.weights() == Weights()


def test_the_parts_that_nobody_opened_are_not_made(page: ParentsPage, qtbot: QtBot) -> None:
    assert page.stack.count() == 1
    qtbot.mouseClick(page.tabs["several"], Qt.MouseButton.LeftButton)
    assert page.several.choose_button.isEnabled()
    assert page.several.isVisible()
    qtbot.mouseClick(page.tabs["growing"], Qt.MouseButton.LeftButton)
    assert page.growing.isVisible()
    qtbot.mouseClick(page.tabs["pairs"], Qt.MouseButton.LeftButton)
    assert page.table.isVisible()
    assert page.stack.count() == 3
