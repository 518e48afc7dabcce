"""The Relatedness page: sets of plants, the map by mouse and keys, the pair, lists, files."""

from __future__ import annotations

import datetime
from collections.abc import Callable, Iterator
from pathlib import Path

import numpy as np
import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QApplication, QDialog
from pytestqt.qtbot import QtBot

from pedigreeview.exchange import read_book
from pedigreeview.network import PedigreeNetwork
from pedigreeview.places import demo
from pedigreeview.window.errands import Errands
from pedigreeview.window.main_window import MainWindow
from pedigreeview.window.opening import Opened, build, read
from pedigreeview.window.relatedness_page import RelatednessPage
from pedigreeview.window.relatedness_save import SaveRelatedness
from pedigreeview.window.relatedness_sets import (
    crosses_with_progeny,
    first_set,
    flowering_on,
    plants_of_set,
    typed_codes,
)
from pedigreeview.window.style import dress
from tests.window.conftest import PEAS, TOMATOES

Settle = Callable[[], None]
KEPT = {"21-01-3", "21-02-2", "23-07", "23-19", "23-61", "23-88"}


@pytest.fixture(scope="module")
def opened() -> Opened:
    return build(read(PEAS), None)


@pytest.fixture(scope="module")
def net(opened: Opened) -> PedigreeNetwork:
    return opened.net


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
def dialogs() -> list[QDialog]:
    """What the page asked to be shown."""
    return []


@pytest.fixture
def page(
    qtbot: QtBot, errands: Errands, opened: Opened, wait: Settle, dialogs: list[QDialog]
) -> RelatednessPage:
    """The page by itself, without a window around it."""
    app = QApplication.instance()
    assert isinstance(app, QApplication)
    # Another test may have left the program in large type.
    dress(app, "light", 100)
    made = RelatednessPage(errands, None, dialogs.append)
    for _ in made.rest():
        pass
    qtbot.addWidget(made)
    made.resize(1150, 650)
    made.show_opened(opened)
    made.mark("21-01-3")
    made.show()
    qtbot.waitExposed(made)
    wait()
    return made


# Sets -------------------------------------------------------------------------------------------


def test_sets_hold_what_they_are_called(net: PedigreeNetwork) -> None:
    plants = net.book.plants
    kept = plants_of_set(net, "kept")
    assert {plants[code].status for code in kept} == {"kept"}
    assert set(kept) >= KEPT
    assert plants_of_set(net, "founders") == ["TP", "BA"]
    living = set(plants_of_set(net, "living"))
    assert living == {c for c, p in plants.items() if p.status in ("kept", "growing")}
    assert plants_of_set(net, "picked", picked=("BA", "no such", "TP")) == ["BA", "TP"]
    progeny = plants_of_set(net, "cross", cross="21-01")
    assert progeny
    assert {plants[code].cross for code in progeny} == {"21-01"}
    assert plants_of_set(net, "cross", cross="none") == []
    assert len(plants_of_set(net, "all")) == len(plants)


def test_codes_are_typed_with_commas_and_stars(net: PedigreeNetwork) -> None:
    known, others = typed_codes(net, "BA, TP; 19-4*, nothing")
    assert known[:2] == ["BA", "TP"]
    assert others == ["nothing"]
    assert set(known[2:]) == {code for code in net.book.plants if code.startswith("19-4")}


def test_plants_in_flower_are_those_noted_on_that_day(net: PedigreeNetwork) -> None:
    bloom = next(row for row in net.book.blooms if len(row.first_flower) == 10 and row.last_flower)
    first = datetime.date.fromisoformat(bloom.first_flower)
    assert bloom.plant in flowering_on(net, first)
    before = first - datetime.timedelta(days=1)
    noted_then = {
        row.plant
        for row in net.book.blooms
        if row.first_flower <= before.isoformat() <= (row.last_flower or "9999")
        and row.first_flower[:4] == bloom.first_flower[:4]
    }
    if bloom.plant not in noted_then:
        assert bloom.plant not in flowering_on(net, before)


def test_the_first_set_is_one_that_can_be_compared(net: PedigreeNetwork) -> None:
    assert first_set(net, ()) == "kept"
    assert first_set(net, ("BA", "TP")) == "picked"
    assert first_set(net, ("BA",)) == "kept"
    assert first_set(net, (), most=3) == "founders"
    assert "21-01" in crosses_with_progeny(net)


# The map ----------------------------------------------------------------------------------------


def test_the_kept_plants_are_shown_in_the_order_of_the_tree(page: RelatednessPage) -> None:
    made = page.made
    assert made is not None
    assert set(made.held.codes) >= KEPT
    assert made.held.dendrogram is not None
    at = {code: row for row, code in enumerate(made.held.codes)}
    # 19-4 comes from 23-19 by selfing: its line stands together.
    assert abs(at["19-4"] - at["19-4-2"]) <= 2
    assert "pure lines" in page.facts.text()


def test_the_pointer_reads_the_exact_value(
    page: RelatednessPage, qtbot: QtBot, wait: Settle
) -> None:
    qtbot.mouseMove(page.map.viewport(), page.map.where("23-19", "19-4"))
    wait()
    # The coancestry of a plant with its selfed progeny: that with itself, 3/4 for an F2 of F 1/2.
    qtbot.waitUntil(lambda: "3/4 = 0.75" in page.reading.text())
    words = page.reading.text()
    assert words.startswith("23-19 with 19-4: coancestry")


def test_a_click_explains_the_pair(page: RelatednessPage, qtbot: QtBot, wait: Settle) -> None:
    place = page.map.where("23-19", "23-61")
    qtbot.mouseClick(page.map.viewport(), Qt.MouseButton.LeftButton, pos=place)
    wait()
    told = page.lists.explained
    assert told.pair == ("23-19", "23-61")
    assert page.lists.has_pair()
    assert told.figures["coancestry"].panel.filled
    lines = told.figures["coancestry"].panel.lines()
    assert any("TP" in line.full_text() for line in lines)
    qtbot.mouseClick(page.lists.close_button, Qt.MouseButton.LeftButton)
    assert not page.lists.has_pair()


def test_keys_walk_and_explain(page: RelatednessPage, qtbot: QtBot, wait: Settle) -> None:
    page.map.setFocus()
    qtbot.keyClick(page.map, Qt.Key.Key_Down)
    assert page.map.cursor_square() == (0, 0)
    qtbot.keyClick(page.map, Qt.Key.Key_Down)
    qtbot.keyClick(page.map, Qt.Key.Key_Right)
    qtbot.keyClick(page.map, Qt.Key.Key_Right)
    assert page.map.cursor_square() == (1, 2)
    made = page.made
    assert made is not None
    codes = made.held.codes
    assert page.reading.text().startswith(f"{codes[1]} with {codes[2]}")
    qtbot.keyClick(page.map, Qt.Key.Key_End)
    assert page.map.cursor_square() == (1, len(codes) - 1)
    qtbot.keyClick(page.map, Qt.Key.Key_Home, Qt.KeyboardModifier.ControlModifier)
    assert page.map.cursor_square() == (0, 0)
    qtbot.keyClick(page.map, Qt.Key.Key_Right)
    qtbot.keyClick(page.map, Qt.Key.Key_Return)
    wait()
    assert page.lists.explained.pair == (codes[0], codes[1])


def test_keys_zoom(page: RelatednessPage, qtbot: QtBot) -> None:
    page.map.setFocus()
    held = page.map.cell
    qtbot.keyClick(page.map, Qt.Key.Key_Plus)
    assert page.map.cell > held
    assert page.map.verticalScrollBar().maximum() > 0
    qtbot.keyClick(page.map, Qt.Key.Key_0)
    assert page.map.cell == held
    assert page.map.verticalScrollBar().maximum() == 0


def test_another_measure_and_order(page: RelatednessPage, qtbot: QtBot, wait: Settle) -> None:
    page.measure.setFocus()
    qtbot.keyClick(page.measure, Qt.Key.Key_Down)
    wait()
    made = page.made
    assert made is not None
    assert made.held.measure == "relationship"
    assert np.allclose(np.diag(made.held.values), 1.0)
    qtbot.keyClick(page.order, Qt.Key.Key_Down)
    wait()
    made = page.made
    assert made is not None
    net = page._net
    assert net is not None
    generations = [net.generation(code) for code in made.held.codes]
    assert generations == sorted(generations)  # type: ignore[type-var]
    assert made.held.dendrogram is None


def test_near_duplicates_are_named(page: RelatednessPage) -> None:
    made = page.made
    assert made is not None
    group = next(one for one in made.held.duplicates if "19-4-2" in one.plants)
    assert "19-4" in group.plants
    from pedigreeview.window.labels import LinkLabel

    said = [label.text() for label in page.lists.findChildren(LinkLabel)]
    assert any("19-4-2" in text and group.why in text for text in said)


def test_kin_of_the_focus_are_listed_and_explained(page: RelatednessPage, wait: Settle) -> None:
    page.mark("19-4")
    wait()
    from pedigreeview.window.labels import LinkLabel

    # One link alone in its label is a relative; the groups of near-duplicates hold several.
    labels = [one for one in page.lists.findChildren(LinkLabel) if one.text().count("<a") == 1]
    assert len(labels) == 16
    relative = labels[0]
    relative.followed.emit("19-4-1")
    wait()
    assert page.lists.explained.pair == ("19-4", "19-4-1")


def test_picked_plants_become_the_set(page: RelatednessPage, wait: Settle) -> None:
    page.take_picked(("TP", "BA", "23-19"))
    wait()
    assert page.plants.name == "picked"
    made = page.made
    assert made is not None
    assert set(made.held.codes) == {"TP", "BA", "23-19"}


def test_too_few_plants_say_what_to_do(page: RelatednessPage, qtbot: QtBot, wait: Settle) -> None:
    page.plants.which.setCurrentIndex(page.plants.which.findData("typed"))
    wait()
    assert page.stack.currentWidget() is page.empty
    assert "two plants or more" in page.empty_words.text()
    assert not page.save_button.isEnabled()
    qtbot.keyClicks(page.plants.typed.editor, "TP, BA, none")
    qtbot.keyClick(page.plants.typed.editor, Qt.Key.Key_Return)
    wait()
    assert page.stack.currentWidget() is not page.empty
    assert page.plants.typed.said() == "Not in this book: none."


def test_withheld_plants_are_named_and_left_out(page: RelatednessPage, wait: Settle) -> None:
    page.show_opened(build(read(TOMATOES), None))
    wait()
    assert "20-01-4-11" in page.facts.text()
    made = page.made
    assert made is not None
    assert "20-01-4-11" not in made.held.codes


def test_cancel_keeps_what_was_shown(page: RelatednessPage, wait: Settle) -> None:
    made = page.made
    page.plants.which.setCurrentIndex(page.plants.which.findData("all"))
    page.work.cancelled.emit()
    wait()
    assert page.made is made


def test_a_plant_in_the_margin_leads_to_the_picture(page: RelatednessPage, qtbot: QtBot) -> None:
    place = page.map.where("23-07", "23-07")
    assert page.map.picture is not None
    place.setX(round(page.map.picture.left) - 12)
    with qtbot.waitSignal(page.plant_wanted) as heard:
        qtbot.mouseDClick(page.map.viewport(), Qt.MouseButton.LeftButton, pos=place)
    assert heard.args == ["23-07"]


def test_a_screen_reader_hears_the_row(page: RelatednessPage) -> None:
    page.map.go_to(1, 2)
    keys = page.map.spoken.listed()
    made = page.made
    assert made is not None
    assert len(keys) == len(made.held.codes)
    assert page.map.spoken.current() == "1:2"
    a, b = made.held.codes[1], made.held.codes[2]
    assert page.map.spoken.words("1:2").startswith(f"{a} with {b}: coancestry")


@pytest.mark.parametrize("kind", ["csv", "npz", "svg", "grey"])
def test_it_is_saved(
    page: RelatednessPage,
    dialogs: list[QDialog],
    qtbot: QtBot,
    wait: Settle,
    tmp_path: Path,
    kind: str,
) -> None:
    qtbot.mouseClick(page.save_button, Qt.MouseButton.LeftButton)
    (dialog,) = dialogs
    assert isinstance(dialog, SaveRelatedness)
    dialog.file.setText(str(tmp_path / "kin.csv"))
    dialog.kind.setCurrentIndex(dialog.kind.findData(kind))
    path = Path(dialog.file.text())
    made = page.made
    assert made is not None
    codes = list(made.held.codes)
    with qtbot.waitSignal(dialog.saved):
        qtbot.mouseClick(dialog.save_button, Qt.MouseButton.LeftButton)
    if kind == "csv":
        lines = path.read_text(encoding="utf-8").splitlines()
        assert lines[0].split(",") == ["coancestry", *codes]
        assert float(lines[1].split(",")[1]) == made.held.values[0, 0]
    elif kind == "npz":
        with np.load(path) as held:
            assert held["codes"].tolist() == codes
            assert np.array_equal(held["matrix"], made.held.values)
    else:
        assert path.stat().st_size > 5000
    wait()


def test_the_window_holds_the_page_with_large_type_and_dark(peas: MainWindow, qtbot: QtBot) -> None:
    peas.show_page("relatedness")
    held = peas.book_pages["relatedness"].page()  # type: ignore[attr-defined]
    qtbot.waitUntil(lambda: held.made is not None, timeout=15000)
    peas.pedigree.picked.emit(("TP", "BA", "23-19"))
    qtbot.waitUntil(lambda: held.plants.name == "picked" and len(held.made.held.codes) == 3)
    peas.set_text_size(200)
    peas.set_look("dark")
    qtbot.waitUntil(lambda: not peas.dressing.busy, timeout=15000)
    assert held.made.picture.text == 2.0
    assert held.made.picture.theme.name == "dark"
    assert held.map.minimumHeight() > 150
    qtbot.waitUntil(lambda: not peas.errands.awaits(), timeout=15000)


def test_thousands_are_made_in_one_go() -> None:
    from pedigreeview.window.relatedness_table import make_table

    net = PedigreeNetwork.from_records(read_book(demo("tansy_and_the_moths")))
    ticks: list[tuple[int, int]] = []
    made = make_table(
        net,
        list(net.codes),
        "coancestry",
        "clustering",
        "light",
        1.0,
        lambda done, steps: ticks.append((done, steps)),
    )
    assert made.picture.image.width() == len(made.held.codes)
    assert ticks == [(0, 3), (1, 3), (2, 3)]
