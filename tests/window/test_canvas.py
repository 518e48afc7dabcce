"""The canvas by real events, at places that it names itself."""

from __future__ import annotations

import pytest
from PySide6.QtCore import QPoint, QPointF, Qt
from PySide6.QtGui import QAccessible, QWheelEvent
from PySide6.QtWidgets import QApplication

from pedigreeview.book.book import Book
from pedigreeview.book.records import Cross, Plant
from pedigreeview.drawing.placing import place
from pedigreeview.drawing.tags import pin_letter
from pedigreeview.drawing.view import Look, choose
from pedigreeview.network import PedigreeNetwork
from pedigreeview.window.canvas import PedigreeCanvas

LEFT = Qt.MouseButton.LeftButton
MIDDLE = Qt.MouseButton.MiddleButton


@pytest.fixture(scope="module")
def net() -> PedigreeNetwork:
    book = Book()
    for code in ("A", "B"):
        book.add(Plant(plant=code, kind="variety"))
    book.add(Cross(cross="x", seed_parent="A", pollen_parent="B", intended="cross"))
    for number in range(6):
        book.add(Plant(plant=f"P{number}", cross="x", status="kept" if number < 2 else ""))
    book.add(Cross(cross="s", seed_parent="P0", pollen_parent="P0", intended="selfing"))
    book.add(Plant(plant="F2-1", cross="s"))
    return PedigreeNetwork.from_records(book)


@pytest.fixture
def canvas(qtbot, net):
    canvas = PedigreeCanvas()
    canvas.resize(1000, 700)
    qtbot.addWidget(canvas)
    canvas.show()
    qtbot.waitExposed(canvas)
    canvas.show_placed(place(choose(net, Look(focus="P0"))), animate=False)
    return canvas


def test_where_and_at_answer_each_other(canvas):
    for code in ("A", "B", "P0", "P1", "F2-1"):
        assert canvas.at(canvas.where(code)) == code
    assert canvas.where("nobody") == QPoint(-1, -1)
    assert canvas.at(QPoint(1, 1)) == ""
    assert canvas.visible_codes() == sorted(
        ["A", "B", "P0", "P1", "F2-1"],
        key=lambda code: (canvas.where(code).y(), canvas.where(code).x()),
    )


def test_click_on_a_tag_selects_and_focuses(canvas, qtbot):
    said = []
    canvas.selected.connect(lambda code: said.append(("selected", code)))
    canvas.focus_wanted.connect(lambda code: said.append(("focus", code)))
    qtbot.mouseClick(canvas.viewport(), LEFT, pos=canvas.where("A"))
    assert said == [("selected", "A"), ("focus", "A")]
    assert canvas.selected_code() == "A"


def test_click_on_a_pack_unfolds_it(canvas, qtbot):
    with qtbot.waitSignal(canvas.unfold_wanted) as heard:
        qtbot.mouseClick(canvas.viewport(), LEFT, pos=canvas.where("P4"))
    assert heard.args == ["pack:cross:x"]


def test_click_with_control_pins(canvas, qtbot):
    with qtbot.waitSignal(canvas.pin_wanted) as heard, qtbot.assertNotEmitted(canvas.focus_wanted):
        qtbot.mouseClick(
            canvas.viewport(), LEFT, Qt.KeyboardModifier.ControlModifier, canvas.where("B")
        )
    assert heard.args == ["B"]


def test_click_on_a_tab_asks_for_the_rest(canvas, net, qtbot):
    canvas.show_placed(place(choose(net, Look(focus="F2-1", up=1))), animate=False)
    with qtbot.waitSignal(canvas.unfold_wanted) as heard:
        qtbot.mouseClick(canvas.viewport(), LEFT, pos=canvas.where("up:P0"))
    assert heard.args == ["up:P0"]


def test_drag_pans_and_is_no_click(canvas, qtbot):
    start, view = canvas.where("A"), canvas.viewport()
    with qtbot.assertNotEmitted(canvas.focus_wanted):
        # On a tag the left button carries pollen; the middle one moves the picture from anywhere.
        qtbot.mousePress(view, MIDDLE, pos=start)
        qtbot.mouseMove(view, start + QPoint(60, 40))
        qtbot.mouseRelease(view, MIDDLE, pos=start + QPoint(60, 40))
    assert canvas.where("A") - start == QPoint(60, 40)


def turn_wheel(canvas, spot: QPoint, turn: int) -> None:
    at = QPointF(spot)
    event = QWheelEvent(
        at,
        QPointF(canvas.viewport().mapToGlobal(spot)),
        QPoint(),
        QPoint(0, turn),
        Qt.MouseButton.NoButton,
        Qt.KeyboardModifier.NoModifier,
        Qt.ScrollPhase.NoScrollPhase,
        False,
    )
    QApplication.sendEvent(canvas.viewport(), event)


def test_wheel_zooms_about_the_pointer(canvas):
    spot, before = canvas.where("P1"), canvas.zoom()
    turn_wheel(canvas, spot, 120)
    assert canvas.zoom() > before * 1.1
    assert (canvas.where("P1") - spot).manhattanLength() <= 2
    for _ in range(80):
        turn_wheel(canvas, spot, -120)
    assert canvas.zoom() == pytest.approx(0.04)


def test_fit_shows_everything(canvas):
    canvas.zoom_by(3.5)
    assert len(canvas.visible_codes()) < 5
    canvas.fit()
    assert len(canvas.visible_codes()) == 5


@pytest.mark.parametrize(
    ("key", "modifier", "word"),
    [
        (Qt.Key.Key_Up, "No", "seed"),
        (Qt.Key.Key_Up, "Shift", "pollen"),
        (Qt.Key.Key_Down, "No", "progeny"),
        (Qt.Key.Key_Left, "No", "left"),
        (Qt.Key.Key_Right, "No", "right"),
        (Qt.Key.Key_M, "No", "mate"),
        (Qt.Key.Key_R, "No", "reciprocal"),
        (Qt.Key.Key_Return, "No", "focus"),
        (Qt.Key.Key_Plus, "Shift", "unfold"),
        (Qt.Key.Key_Minus, "No", "fold"),
        (Qt.Key.Key_P, "No", "pin"),
    ],
)
def test_keys_are_words_of_a_walk(canvas, qtbot, key, modifier, word):
    with qtbot.waitSignal(canvas.walk_wanted) as heard:
        qtbot.keyClick(canvas, key, getattr(Qt.KeyboardModifier, f"{modifier}Modifier"))
    assert heard.args == [word]


def test_neighbours_in_the_row(canvas):
    row = sorted(("P0", "P1"), key=lambda code: canvas.where(code).x())
    assert canvas.neighbour(row[0], 1) == row[1]
    assert canvas.neighbour(row[0], -1) == ""


def test_new_focus_stays_where_it_was_clicked(canvas, net, qtbot):
    before = canvas.where("P1")
    shown = canvas.placed
    canvas.show_placed(place(choose(net, Look(focus="P1")), shown), animate=True)
    qtbot.waitUntil(lambda: canvas._part == 1.0)
    assert (canvas.where("P1") - before).manhattanLength() <= 2


def test_reduced_motion_comes_at_once(canvas, net):
    canvas.reduced_motion = True
    canvas.show_placed(place(choose(net, Look(focus="P1")), canvas.placed), animate=True)
    assert canvas._part == 1.0


def test_hover_names_the_plant(canvas, qtbot):
    with qtbot.waitSignal(canvas.hovered) as heard:
        qtbot.mouseMove(canvas.viewport(), canvas.where("B"))
    assert heard.args == ["B"]


def test_screen_reader_finds_every_tag_with_its_words(canvas):
    picture = QAccessible.queryAccessibleInterface(canvas)
    assert picture.role() == QAccessible.Role.List
    names = [picture.child(at).text(QAccessible.Text.Name) for at in range(picture.childCount())]
    assert "F2-1, F2, from P0 selfed, F one half" in names
    assert "A, founder variety, F 1" in names
    assert any(name.startswith("4 more sibs") for name in names)
    canvas.set_selected("P1")
    assert picture.focusChild().text(QAccessible.Text.Name).startswith("P1, ")


def test_painting_follows_theme_and_light(canvas):
    light = canvas.grab().toImage()
    canvas.set_theme("dark")
    canvas.light([("A", "P0")])
    canvas.set_pins(("A", "B"))
    dark = canvas.grab().toImage()
    assert light.pixelColor(3, 690).lightness() > 200
    assert dark.pixelColor(3, 690).lightness() < 60


def test_pins_have_letters():
    assert [pin_letter(at) for at in (0, 1, 2, 25, 26)] == ["A", "B", "C", "Z", "AA"]


def test_larger_text_makes_the_picture_larger(canvas):
    before = canvas.rect_of("P0").height()
    canvas.zoom_by(1.0)
    canvas.set_text_scale(2.0)
    assert canvas.rect_of("P0").height() == pytest.approx(2 * before, abs=2)
    assert canvas.text_scale() == 2.0


def test_walking_leaves_the_picture_where_it_is_while_the_tag_can_be_seen(canvas):
    before = canvas.where("A")
    for code in ("P0", "P1", "F2-1", "B"):
        canvas.show_code(code)
    assert canvas.where("A") == before
    canvas.zoom_by(3.0)
    canvas.show_code("F2-1")
    rect = canvas.rect_of("F2-1")
    assert canvas.viewport().rect().contains(rect)


def test_new_focus_far_out_is_fitted(canvas, net):
    canvas.zoom_by(0.2)
    canvas.show_placed(place(choose(net, Look(focus="P1")), canvas.placed), animate=False)
    assert canvas.zoom() >= 0.6


def test_parents_and_first_progeny_of_a_new_focus_can_be_seen(canvas, net):
    canvas.zoom_by(1.6)
    for code in ("F2-1", "P0", "A", "P1"):
        canvas.show_placed(place(choose(net, Look(focus=code)), canvas.placed), animate=False)
        for near in (code, *net.parent_codes(code), *net.progeny(code)[:1]):
            rect = canvas.rect_of(near)
            assert canvas.viewport().rect().contains(rect), f"{near} of {code}"


def test_pointer_marks_go_when_the_picture_moves(canvas, net, qtbot):
    # A move to where the pointer was left by another test would be no move.
    with qtbot.waitSignal(canvas.hovered):
        qtbot.mouseMove(canvas.viewport(), canvas.where("P0"))
    qtbot.keyClick(canvas, Qt.Key.Key_Down)
    assert canvas._hover == ""
    with qtbot.waitSignal(canvas.hovered):
        qtbot.mouseMove(canvas.viewport(), canvas.where("A"))
    canvas.show_placed(place(choose(net, Look(focus="P1")), canvas.placed), animate=False)
    assert canvas._hover == ""
