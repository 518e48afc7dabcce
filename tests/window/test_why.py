"""'Why?' beside the numbers: what unfolds, what lights up in the picture, what is withheld.

F of full sibs' progeny 1/4, of a selfing ½(1 + F), and the tetraploid 1/12: numbers.md and the demo
scenarios; expected shares of ½ a generation: the same.
"""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

import pytest
from PySide6.QtCore import QPoint, Qt
from PySide6.QtWidgets import QApplication, QLabel
from pytestqt.qtbot import QtBot

from pedigreeview.places import demo
from pedigreeview.window.figure import Figure, WithheldNotice
from pedigreeview.window.main_window import MainWindow
from pedigreeview.window.opening import Stated

Settle = Callable[[], None]
LEFT = Qt.MouseButton.LeftButton

SIBS = """plant,seed_parent,pollen_parent,kind,selfings
P,,,plant,
Q,,,plant,
a,P,Q,plant,
b,P,Q,plant,
x,a,b,plant,
late,a,b,plant,2
half,a,,plant,
"""


def texts(figure: Figure) -> list[str]:
    """What stands in an unfolded panel, from top to bottom."""
    panel = figure.panel
    assert panel.isVisible()
    shown = [label.text() for label in panel.findChildren(QLabel) if label.isVisible()]
    return shown + [line.full_text() for line in panel.lines()]


def open_table(window: MainWindow, settle: Settle, path: Path, text: str) -> None:
    path.write_text(text, encoding="utf-8")
    window.open_path(path, Stated(founders_as="plant"))
    settle()


def ask_why(qtbot: QtBot, window: MainWindow, settle: Settle, code: str) -> Figure:
    """Open a plant's card and click the 'Why?' beside its F."""
    window.show_plant(code)
    settle()
    figure = window.pedigree.card.figures["inbreeding"]
    assert not figure.panel.isVisible()
    qtbot.mouseClick(figure.button, LEFT)
    settle()
    return figure


def lit_blocks(window: MainWindow) -> set[str]:
    canvas = window.pedigree.canvas
    placed = canvas.placed
    assert placed is not None
    return {
        code for code in placed.view.shown() if placed.view.block_of(code) in canvas._lit.blocks
    }


@pytest.fixture
def sibs(window: MainWindow, settle: Settle, tmp_path: Path) -> MainWindow:
    open_table(window, settle, tmp_path / "sibs.csv", SIBS)
    return window


def test_f_is_split_over_ancestors_that_add_up(
    qtbot: QtBot, sibs: MainWindow, settle: Settle
) -> None:
    figure = ask_why(qtbot, sibs, settle, "x")
    said = texts(figure)
    assert "Between the gametes: 1/4" in said
    for founder in "PQ":
        assert f"{founder} brings 1/8, half of this F" in said
        assert f"x – a – {founder} – b – x, weight 1/4" in said
    assert any("θ(seed parent, pollen parent)" in line for line in said)
    assert any("Wright 1922" in line for line in said)
    assert any(line.startswith("Founders unrelated; 2 plants") for line in said)


def test_terms_stand_as_a_sum(qtbot: QtBot, sibs: MainWindow, settle: Settle) -> None:
    figure = ask_why(qtbot, sibs, settle, "late")
    total = "between the gametes 1/4 + 2 unrecorded selfings 9/16 = 13/16 = 0.8125"
    assert total in texts(figure)


def test_pointing_at_a_path_lights_it_and_a_click_keeps_it(
    qtbot: QtBot, sibs: MainWindow, settle: Settle
) -> None:
    figure = ask_why(qtbot, sibs, settle, "x")
    path = next(line for line in figure.panel.lines() if "a – P – b" in line.full_text())
    qtbot.mouseMove(path, QPoint(12, path.height() // 2))
    qtbot.waitUntil(lambda: lit_blocks(sibs) == {"x", "a", "P", "b"})
    lines = {(above, below) for above, below, _, _ in sibs.pedigree.canvas._lit.links}
    assert len(lines) >= 4
    qtbot.mouseMove(sibs.find_field, QPoint(5, 5))
    qtbot.waitUntil(lambda: lit_blocks(sibs) == set())
    qtbot.mouseClick(path, LEFT)
    sibs.find_field.setFocus()
    assert lit_blocks(sibs) == {"x", "a", "P", "b"}
    qtbot.mouseClick(figure.button, LEFT)
    assert lit_blocks(sibs) == set()


def test_an_ancestor_lights_by_keys_alone(qtbot: QtBot, sibs: MainWindow, settle: Settle) -> None:
    sibs.show_plant("x")
    settle()
    figure = sibs.pedigree.card.figures["inbreeding"]
    figure.button.setFocus()
    qtbot.keyClick(figure.button, Qt.Key.Key_Space)
    settle()
    qtbot.keyClick(figure.button, Qt.Key.Key_Tab)
    line = QApplication.focusWidget()
    assert line is figure.panel.lines()[0]
    assert line.accessibleName().startswith("P brings 1/8")
    assert lit_blocks(sibs) == {"x", "a", "P", "b"}
    qtbot.keyClick(line, Qt.Key.Key_Escape)
    assert not sibs.pedigree.card.isVisible()
    assert lit_blocks(sibs) == set()


def test_what_was_unfolded_stays_so_when_the_plant_is_pinned(
    qtbot: QtBot, sibs: MainWindow, settle: Settle
) -> None:
    ask_why(qtbot, sibs, settle, "x")
    sibs.pedigree.pin("x")
    settle()
    assert "Between the gametes: 1/4" in texts(sibs.pedigree.card.figures["inbreeding"])
    sibs.show_plant("late")
    settle()
    assert not sibs.pedigree.card.figures["inbreeding"].panel.isVisible()


def test_plants_on_the_paths_are_brought_into_the_picture(
    qtbot: QtBot, sibs: MainWindow, settle: Settle
) -> None:
    sibs.pedigree.up.setValue(1)
    sibs.show_plant("x")
    settle()
    assert sibs.pedigree.canvas.placed is not None
    assert "P" not in sibs.pedigree.canvas.placed.view.shown()
    ask_why(qtbot, sibs, settle, "x")
    assert {"P", "Q"} <= sibs.pedigree.canvas.placed.view.shown()


def test_founder_shares_say_what_they_are(qtbot: QtBot, sibs: MainWindow, settle: Settle) -> None:
    sibs.show_plant("half")
    settle()
    figure = sibs.pedigree.card.figures["founder shares"]
    qtbot.mouseClick(figure.button, LEFT)
    said = texts(figure)
    assert any("pass on ½ of their own shares" in line for line in said)
    assert any(line.endswith("parents that nobody recorded: 50%.") for line in said)
    assert any(line.startswith("Founders unrelated") for line in said)


def test_what_is_not_listed_is_counted(
    qtbot: QtBot, window: MainWindow, settle: Settle, tmp_path: Path
) -> None:
    """Eight rounds of sib mating: the pairs of lines double and redouble."""
    rows = ["plant,seed_parent,pollen_parent", "a0,P,Q", "b0,P,Q"]
    for n in range(1, 9):
        rows += [f"{side}{n},a{n - 1},b{n - 1}" for side in "ab"]
    open_table(window, settle, tmp_path / "deep.csv", "\n".join(rows) + "\n")
    figure = ask_why(qtbot, window, settle, "a8")
    left_out = [line for line in texts(figure) if line.endswith("are counted but not listed.")]
    assert left_out
    assert left_out[-1].split()[0].replace(",", "").isdigit()


def test_a_withheld_number_names_the_loop_with_links(
    qtbot: QtBot, window: MainWindow, settle: Settle
) -> None:
    window.open_path(demo("a_leaf_for_hollin_plate"))
    settle()
    window.show_plant("23-01-1")
    settle()
    notices = window.pedigree.card.findChildren(WithheldNotice)
    (notice,) = [one for one in notices if one.isVisible()]
    said = " ".join(label.text() for label in notice.findChildren(QLabel))
    assert "20-01-4 → 20-01-4-11 → 20-01-4" in said
    assert "cannot be given until a plant no longer stands among its own ancestors" in said
    notice.words.linkActivated.emit("page:checks")
    assert window.page() == "checks"
    window.show_page("pedigree")
    assert notice.places is not None
    notice.places.setFocus()
    qtbot.keyClick(notice.places, Qt.Key.Key_Tab)
    qtbot.keyClick(notice.places, Qt.Key.Key_Return)
    assert window.pedigree.focus in ("20-01-4", "20-01-4-11")


def test_a_pair_of_tetraploid_sibs(qtbot: QtBot, window: MainWindow, settle: Settle) -> None:
    window.open_path(demo("tansy_and_the_moths"))
    settle()
    for code in ("16-01-2", "16-01-5"):
        window.pedigree.pin(code)
    settle()
    slip = window.pedigree.slip
    (words,) = [x for x in slip.findChildren(QLabel, "relatedness") if x.isVisible()]
    assert words.text() == "The same as full sibs, or parent and child, of unrelated plants."
    progeny = slip.figures["progeny"]
    (number,) = progeny.findChildren(QLabel, "progeny")
    assert number.text() == "F = 1/12 = 0.0833"
    qtbot.mouseClick(progeny.button, LEFT)
    settle()
    said = texts(progeny)
    assert "Grisedale Moth (GM) brings 1/24, half of this F" in said
    assert any("c = 1/3" in line for line in said)
    relationship = slip.figures["relationship"]
    qtbot.mouseClick(relationship.button, LEFT)
    said = texts(relationship)
    assert "θ of 16-01-2 with itself: 1/4 = 0.25" in said
    assert "R = 0.125 / √(0.25 × 0.25) = 0.5" in said
