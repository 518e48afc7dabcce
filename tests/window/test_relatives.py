"""The tree of relatives: what it lists, how it opens, and that it shares the mark with the rest."""

from __future__ import annotations

from collections.abc import Callable

import pytest
from PySide6.QtCore import QModelIndex, Qt
from PySide6.QtTest import QAbstractItemModelTester
from pytestqt.qtbot import QtBot

from pedigreeview.book.book import Book
from pedigreeview.book.records import Cross, Plant
from pedigreeview.network import PedigreeNetwork
from pedigreeview.window.main_window import MainWindow
from pedigreeview.window.relatives_tree import RelativesTree
from pedigreeview.window.relatives_view import RelativesView

SPOKEN = Qt.ItemDataRole.AccessibleTextRole


def network(progeny: int = 3) -> PedigreeNetwork:
    book = Book()
    for code in ("A", "B"):
        book.add(Plant(plant=code, kind="variety"))
    book.add(Cross(cross="x", seed_parent="A", pollen_parent="B", intended="cross"))
    book.add(Plant(plant="P", cross="x", status="kept"))
    book.add(Cross(cross="s", seed_parent="P", pollen_parent="P", intended="selfing"))
    for number in range(progeny):
        book.add(Plant(plant=f"S{number}", cross="s"))
    book.add(Cross(cross="b", seed_parent="S0", pollen_parent="A", intended="cross"))
    book.add(Plant(plant="back", cross="b"))
    return PedigreeNetwork.from_records(book)


def opened(tree: RelativesTree, index: QModelIndex) -> list[str]:
    if tree.canFetchMore(index):
        tree.fetchMore(index)
    return [str(tree.index(row, 0, index).data()) for row in range(tree.rowCount(index))]


def test_parents_up_and_progeny_down_made_when_they_are_opened(qtbot: QtBot) -> None:
    tree = RelativesTree()
    QAbstractItemModelTester(tree, QAbstractItemModelTester.FailureReportingMode.Fatal)
    tree.show_focus(network(), "P")
    up, down = tree.heads()
    assert [tree.index(row, 0).data() for row in range(3)] == [
        "P  F1  · kept",
        "Parents: A × B",
        "Progeny: 3",
    ]
    assert tree.rowCount(up) == tree.rowCount(down) == 0
    assert opened(tree, up) == ["♀ A", "♂ B"]
    assert opened(tree, down) == ["S0  F2", "S1  F2", "S2  F2"]
    first = tree.index(0, 0, down)
    assert tree.hasChildren(first)
    assert not tree.hasChildren(tree.index(1, 0, down))
    assert opened(tree, first) == ["back  BC1F1"]
    assert not tree.hasChildren(tree.index(0, 0, up))


def test_a_plant_stands_wherever_it_is_reached(qtbot: QtBot) -> None:
    tree = RelativesTree()
    tree.show_focus(network(), "back")
    up = tree.heads()[0]
    assert opened(tree, up) == ["♀ S0  F2", "♂ A"]
    seed = tree.index(0, 0, up)
    assert opened(tree, seed) == ["⊗ P  F1  · kept"]
    assert opened(tree, tree.index(0, 0, seed)) == ["♀ A", "♂ B"]


def test_lines_are_spoken_in_words(qtbot: QtBot) -> None:
    tree = RelativesTree()
    tree.show_focus(network(), "P")
    up, down = tree.heads()
    opened(tree, up), opened(tree, down)
    assert tree.index(0, 0, down).data(SPOKEN) == "S0, F2, from P selfed, F one half"
    assert tree.index(1, 0, up).data(SPOKEN) == "pollen parent: B, founder variety, F 1"
    assert up.data(SPOKEN) == "Parents of P"
    assert down.data(SPOKEN) == "Progeny of P: 3 plants"


def test_a_loop_ends_the_tree(qtbot: QtBot) -> None:
    book = Book()
    for cross, seed in (("x", "B"), ("y", "A")):
        book.add(Cross(cross=cross, seed_parent=seed, pollen_parent="", intended="open"))
    book.add(Plant(plant="A", cross="x"))
    book.add(Plant(plant="B", cross="y"))
    tree = RelativesTree()
    tree.show_focus(PedigreeNetwork.from_records(book), "A")
    up = tree.heads()[0]
    assert opened(tree, up) == ["♀ B"]
    parent = tree.index(0, 0, up)
    assert opened(tree, parent) == ["♀ A (again: a loop)"]
    assert not tree.hasChildren(tree.index(0, 0, parent))


def test_many_progeny_are_listed_part_by_part(qtbot: QtBot) -> None:
    view = RelativesView()
    qtbot.addWidget(view)
    QAbstractItemModelTester(view.model_of, QAbstractItemModelTester.FailureReportingMode.Fatal)
    view.resize(300, 400)
    view.show()
    view.show_focus(network(450), "P")
    tree, down = view.model_of, view.model_of.heads()[1]
    for listed, rest in ((200, "… and 250 more"), (400, "… and 50 more")):
        assert tree.rowCount(down) == listed + 1
        last = tree.index(listed, 0, down)
        assert last.data() == rest
        view.setCurrentIndex(last)
        qtbot.keyClick(view, Qt.Key.Key_Return)
    assert tree.rowCount(down) == 450
    assert view.code(view.currentIndex()) == "S400"


def test_keys_open_walk_and_ask_for_the_focus(qtbot: QtBot) -> None:
    view = RelativesView()
    qtbot.addWidget(view)
    view.resize(300, 400)
    view.show()
    view.show_focus(network(), "P")
    heard: list[str] = []
    view.marked.connect(heard.append)
    view.setCurrentIndex(view.model_of.index(0, 0))
    for key in (Qt.Key.Key_Down, Qt.Key.Key_Down, Qt.Key.Key_Down):
        qtbot.keyClick(view, key)
    assert heard == ["P", "A", "B"]
    qtbot.keyClick(view, Qt.Key.Key_Left)
    qtbot.keyClick(view, Qt.Key.Key_Left)
    assert not view.isExpanded(view.model_of.heads()[0])
    view.setCurrentIndex(view.model_of.listed("A"))
    with qtbot.waitSignal(view.plant_wanted) as asked:
        qtbot.keyClick(view, Qt.Key.Key_Return)
    assert asked.args == ["A"]
    with qtbot.waitSignal(view.left):
        qtbot.keyClick(view, Qt.Key.Key_Escape)


def test_tree_and_picture_share_the_mark(
    peas: MainWindow, settle: Callable[[], None], qtbot: QtBot
) -> None:
    page = peas.pedigree
    page.focus_on("21-01-3")
    settle()
    page.index_button.click()
    drawer = page.drawer
    drawer.tabs.setCurrentIndex(1)
    tree = drawer.tree
    assert tree.isVisible()
    assert tree.model_of.focus == "21-01-3"
    tree.setFocus()
    tree.setCurrentIndex(tree.model_of.listed("BA"))
    settle()
    assert page.selected == "BA"
    assert page.focus == "21-01-3"
    assert page.canvas.selected_code() == "BA"
    page.canvas.setFocus()
    page.select("TP")
    settle()
    assert tree.code(tree.currentIndex()) == "TP"
    tree.setFocus()
    qtbot.keyClick(tree, Qt.Key.Key_Return)
    settle()
    assert page.focus == "TP" == tree.model_of.focus


def test_the_drawer_is_reached_and_left_by_keys(
    peas: MainWindow, settle: Callable[[], None], qtbot: QtBot
) -> None:
    page = peas.pedigree
    page.index_button.click()
    drawer = page.drawer
    assert drawer.filter.hasFocus()
    qtbot.keyClicks(drawer.filter, "sweet 8")
    assert drawer.model.found == len(peas.opened.finder.found("sweet 8")) > 0
    qtbot.keyClick(drawer.filter, Qt.Key.Key_Down)
    assert drawer.list.hasFocus()
    qtbot.keyClick(drawer.list, Qt.Key.Key_Up)
    assert drawer.filter.hasFocus()
    drawer.tabs.setFocus()
    qtbot.keyClick(drawer.tabs, Qt.Key.Key_Right)
    qtbot.keyClick(drawer.tabs, Qt.Key.Key_Down)
    assert drawer.tree.hasFocus()
    with qtbot.waitSignal(drawer.left):
        qtbot.keyClick(drawer.tree, Qt.Key.Key_Escape)
    assert not drawer.isVisible()
    assert page.canvas.hasFocus()


@pytest.mark.parametrize("code", ["TP", "21-01-3", "23-07"])
def test_every_name_of_the_picture_is_in_spoken_words(
    peas: MainWindow, settle: Callable[[], None], code: str
) -> None:
    """No sign or bare fraction: a reader would say 'F slash' or nothing at all."""
    peas.pedigree.focus_on(code)
    settle()
    canvas = peas.pedigree.canvas
    said = [canvas.words_of(key) for key in canvas.tag_codes()]
    assert said
    assert all(said)
    assert not any(sign in words for words in said for sign in "⊗○⇄♀♂½¼¾/")
    tags = [canvas.words_of(key) for key in canvas.visible_codes()]
    assert all(words.split(", ")[-1].startswith("F ") for words in tags)
