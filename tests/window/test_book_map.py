"""The map of the whole book by real events, at places that it names itself."""

from __future__ import annotations

import pytest
from PySide6.QtCore import QEvent, QPoint, QPointF, Qt
from PySide6.QtGui import QHelpEvent, QWheelEvent
from PySide6.QtWidgets import QApplication, QToolTip
from pytestqt.qtbot import QtBot

from pedigreeview.book.book import Book
from pedigreeview.book.records import Cross, Plant
from pedigreeview.drawing.overview import overview_of
from pedigreeview.drawing.theme import theme
from pedigreeview.drawing.tinting import Wanted, tint
from pedigreeview.network import PedigreeNetwork
from pedigreeview.window.overview import BookMap

LEFT = Qt.MouseButton.LeftButton
NONE = Qt.KeyboardModifier.NoModifier
CONTROL = Qt.KeyboardModifier.ControlModifier
SHIFT = Qt.KeyboardModifier.ShiftModifier


@pytest.fixture(scope="module")
def net() -> PedigreeNetwork:
    book = Book()
    for code in ("A", "B", "C"):
        book.add(Plant(plant=code, kind="variety", name="Tarnwick" if code == "A" else ""))
    for cross, seed, pollen in (("x", "A", "B"), ("s", "P1", "P1"), ("b", "P2", "C")):
        book.add(Cross(cross=cross, seed_parent=seed, pollen_parent=pollen))
        for number in range(8 if cross == "x" else 5):
            name = {"x": "P", "s": "S", "b": "R"}[cross]
            book.add(Plant(plant=f"{name}{number}", cross=cross))
    return PedigreeNetwork.from_records(book)


@pytest.fixture
def book_map(qtbot: QtBot, net: PedigreeNetwork) -> BookMap:
    made = BookMap()
    made.set_theme("light")
    made.resize(1000, 640)
    qtbot.addWidget(made)
    made.show()
    qtbot.waitExposed(made)
    made.show_overview(overview_of(net), {"A": "Tarnwick"})
    return made


def _wheel(book_map: BookMap, place: QPoint, turn: int, held: Qt.KeyboardModifier = NONE) -> None:
    event = QWheelEvent(
        QPointF(place),
        QPointF(book_map.viewport().mapToGlobal(place)),
        QPoint(),
        QPoint(0, turn),
        Qt.MouseButton.NoButton,
        held,
        Qt.ScrollPhase.NoScrollPhase,
        False,
    )
    QApplication.sendEvent(book_map.viewport(), event)


def test_where_and_at_answer_each_other(book_map: BookMap, net: PedigreeNetwork) -> None:
    for code in net.codes:
        assert book_map.at(book_map.where(code)) == code
        assert book_map.rect_of(code).contains(book_map.where(code))
    assert book_map.where("nobody") == QPoint(-1, -1)
    assert book_map.at(QPoint(2, 2)) == ""


@pytest.mark.parametrize(("across", "down"), [(3.0, 1.0), (20.0, 2.0), (1.0, 0.5)])
def test_they_do_at_any_zoom(
    book_map: BookMap, net: PedigreeNetwork, across: float, down: float
) -> None:
    book_map.zoom_by(across, book_map.where("P1"), down=False)
    book_map.zoom_by(down, book_map.where("P1"), across=False)
    shown = [code for code in net.codes if book_map.where(code).x() >= 0]
    assert "P1" in shown
    for code in shown:
        assert book_map.at(book_map.where(code)) == code


def test_a_click_marks_and_lights_relatives(book_map: BookMap, qtbot: QtBot) -> None:
    with qtbot.waitSignal(book_map.selected) as heard:
        qtbot.mouseClick(book_map.viewport(), LEFT, pos=book_map.where("P1"))
    assert heard.args == ["P1"]
    assert book_map.selected_code() == "P1"
    said = book_map.summary()
    assert said == (
        "21 plants in 3 bands; the fullest is Generation 2 with 10. "
        "P1, Generation 1 is marked: 2 ancestors, 5 descendants."
    )
    assert book_map.accessibleDescription() == said
    assert book_map.accessibleName() == "Map of the whole book"
    with qtbot.waitSignal(book_map.selected) as heard:
        qtbot.mouseClick(book_map.viewport(), LEFT, pos=QPoint(3, 3))
    assert heard.args == [""]


def test_a_double_click_asks_for_the_plant(book_map: BookMap, qtbot: QtBot) -> None:
    with qtbot.waitSignal(book_map.plant_wanted) as heard:
        qtbot.mouseDClick(book_map.viewport(), LEFT, pos=book_map.where("R0"))
    assert heard.args == ["R0"]


def test_the_wheel_zooms_about_the_pointer(book_map: BookMap) -> None:
    place = book_map.where("P2")
    before = book_map.frame()
    _wheel(book_map, place, 240)
    after = book_map.frame()
    assert after.across > before.across
    assert after.down > before.down
    assert book_map.at(place) == "P2"


@pytest.mark.parametrize(("held", "across", "down"), [(CONTROL, True, False), (SHIFT, False, True)])
def test_the_wheel_with_a_key_zooms_one_way(
    book_map: BookMap, held: Qt.KeyboardModifier, across: bool, down: bool
) -> None:
    before = book_map.frame()
    _wheel(book_map, book_map.where("P2"), 240, held)
    after = book_map.frame()
    assert (after.across > before.across, after.down > before.down) == (across, down)
    assert book_map.at(book_map.where("P2")) == "P2"


def test_a_drag_pans_and_marks_nothing(book_map: BookMap, qtbot: QtBot) -> None:
    _wheel(book_map, book_map.where("P2"), 480)
    start = book_map.where("P2")
    view = book_map.viewport()
    with qtbot.assertNotEmitted(book_map.selected):
        qtbot.mousePress(view, LEFT, pos=start)
        for step in (10, 25, 40):
            qtbot.mouseMove(view, start + QPoint(step, step // 2))
            event = _move(view, start + QPoint(step, step // 2))
            QApplication.sendEvent(view, event)
        qtbot.mouseRelease(view, LEFT, pos=start + QPoint(40, 20))
    assert abs(book_map.where("P2").x() - start.x() - 40) <= 1
    assert abs(book_map.where("P2").y() - start.y() - 20) <= 1


def _move(view: object, place: QPoint) -> QEvent:
    from PySide6.QtGui import QMouseEvent

    spot = QPointF(place)
    return QMouseEvent(
        QEvent.Type.MouseMove, spot, view.mapToGlobal(spot), Qt.MouseButton.NoButton, LEFT, NONE
    )


def test_keys_walk(book_map: BookMap, qtbot: QtBot) -> None:
    book_map.setFocus()
    book_map.set_selected("R1")
    walk = (
        (Qt.Key.Key_Up, NONE, "P2"),
        (Qt.Key.Key_Up, SHIFT, "B"),
        (Qt.Key.Key_Down, NONE, "P0"),
    )
    for key, held, code in walk:
        with qtbot.waitSignal(book_map.selected) as heard:
            qtbot.keyClick(book_map, key, held)
        assert heard.args == [code]
    book_map.set_selected("S2")
    beside = book_map.at(book_map.where("S2"))
    qtbot.keyClick(book_map, Qt.Key.Key_Right)
    qtbot.keyClick(book_map, Qt.Key.Key_Left)
    assert book_map.selected_code() == beside == "S2"
    with qtbot.waitSignal(book_map.plant_wanted) as heard:
        qtbot.keyClick(book_map, Qt.Key.Key_Return)
    assert heard.args == ["S2"]
    qtbot.keyClick(book_map, Qt.Key.Key_Home)
    first = book_map.where(book_map.selected_code())
    qtbot.keyClick(book_map, Qt.Key.Key_End)
    last = book_map.where(book_map.selected_code())
    assert first.x() < last.x()
    assert first.y() == last.y()
    qtbot.keyClick(book_map, Qt.Key.Key_Escape)
    assert book_map.selected_code() == ""


def test_a_step_where_there_is_none_stays(book_map: BookMap, qtbot: QtBot) -> None:
    book_map.set_selected("A")
    with qtbot.assertNotEmitted(book_map.selected):
        qtbot.keyClick(book_map, Qt.Key.Key_Up)
    assert book_map.selected_code() == "A"


def test_keys_zoom_and_fit(book_map: BookMap, qtbot: QtBot) -> None:
    whole = book_map.frame()
    qtbot.keyClick(book_map, Qt.Key.Key_Plus)
    qtbot.keyClick(book_map, Qt.Key.Key_Plus)
    assert book_map.frame().across > whole.across
    qtbot.keyClick(book_map, Qt.Key.Key_Minus)
    qtbot.keyClick(book_map, Qt.Key.Key_0, CONTROL)
    assert book_map.frame() == whole
    qtbot.keyClick(book_map, Qt.Key.Key_PageDown)
    assert book_map.frame().y > whole.y
    qtbot.mouseDClick(book_map.viewport(), LEFT, pos=QPoint(3, 3))
    assert book_map.frame() == whole


def test_a_walk_brings_the_plant_into_the_window(book_map: BookMap, qtbot: QtBot) -> None:
    book_map.set_selected("S0")
    book_map.resize(500, 200)
    book_map.zoom_by(30, book_map.where("S0"))
    assert book_map.where("P1") == QPoint(-1, -1)
    qtbot.keyClick(book_map, Qt.Key.Key_Up)
    assert book_map.at(book_map.where("P1")) == "P1"


def test_a_tip_names_the_plant(
    book_map: BookMap, net: PedigreeNetwork, monkeypatch: pytest.MonkeyPatch
) -> None:
    shown: list[str] = []
    monkeypatch.setattr(QToolTip, "showText", lambda place, text, *_: shown.append(text))
    for code, expected in (("A", "A Tarnwick, Founders"), ("P0", "P0, Generation 1")):
        place = book_map.where(code)
        event = QHelpEvent(QEvent.Type.ToolTip, place, book_map.viewport().mapToGlobal(place))
        QApplication.sendEvent(book_map.viewport(), event)
        assert shown[-1] == expected
    book_map.set_tint(tint(net, Wanted("inbreeding"), theme("light")))
    QApplication.sendEvent(book_map.viewport(), event)
    assert shown[-1] == "P0, Generation 1, Inbreeding F: 0"


def test_the_small_map_comes_with_zooming_in_and_leads(book_map: BookMap, qtbot: QtBot) -> None:
    assert book_map._corner_rect().isNull()
    book_map.zoom_by(20)
    rect = book_map._corner_rect().toRect()
    assert book_map.viewport().rect().contains(rect)
    with qtbot.assertNotEmitted(book_map.selected):
        qtbot.mouseClick(book_map.viewport(), LEFT, pos=rect.topLeft() + QPoint(2, 2))
    upper = book_map.frame()
    qtbot.mouseClick(book_map.viewport(), LEFT, pos=rect.bottomRight() - QPoint(2, 2))
    lower = book_map.frame()
    assert upper.x < lower.x
    assert upper.y < lower.y


def test_the_menu_is_asked_for_with_its_plant(book_map: BookMap, qtbot: QtBot) -> None:
    from PySide6.QtGui import QContextMenuEvent

    place = book_map.where("B")
    asked = QContextMenuEvent(
        QContextMenuEvent.Reason.Mouse, place, book_map.viewport().mapToGlobal(place)
    )
    with qtbot.waitSignal(book_map.menu_wanted) as heard:
        QApplication.sendEvent(book_map.viewport(), asked)
    assert heard.args[0] == "B"


def _colour(book_map: BookMap, code: str) -> str:
    return book_map.viewport().grab().toImage().pixelColor(book_map.where(code)).name()


def test_filters_and_tints_change_what_is_painted(book_map: BookMap, net: PedigreeNetwork) -> None:
    light = theme("light")
    before = _colour(book_map, "S1")
    book_map.set_hidden({"S1", "nobody"})
    assert _colour(book_map, "S1") == light["band"]
    book_map.set_hidden()
    assert _colour(book_map, "S1") == before
    book_map.set_faded({"S1"})
    assert _colour(book_map, "S1") not in (before, light["band"])
    book_map.set_faded()
    held = tint(net, Wanted("generation"), light)
    book_map.set_tint(held)
    tinted = book_map.viewport().grab().toImage()
    book_map.set_tint(None)
    assert tinted != book_map.viewport().grab().toImage()
    assert _colour(book_map, "S1") == before


def test_light_and_dark(book_map: BookMap) -> None:
    for name in ("dark", "light"):
        book_map.set_theme(name)
        corner = book_map.viewport().grab().toImage().pixelColor(990, 4).name()
        assert corner in (theme(name)["ground"], theme(name)["band"])


def test_an_empty_book_says_so(qtbot: QtBot) -> None:
    made = BookMap()
    qtbot.addWidget(made)
    made.resize(400, 300)
    assert made.summary() == "No plants yet."
    made.show_overview(overview_of(PedigreeNetwork.from_records(Book())))
    made.show()
    qtbot.waitExposed(made)
    assert made.grab().width() == 400
    assert made.summary() == "No plants yet."
    for key in (Qt.Key.Key_Down, Qt.Key.Key_Home, Qt.Key.Key_Plus, Qt.Key.Key_Escape):
        qtbot.keyClick(made, key)
    assert made.at(QPoint(200, 150)) == ""


def test_larger_text_makes_larger_names_and_tags(book_map: BookMap, net: PedigreeNetwork) -> None:
    margin, before = book_map.frame().margin, book_map.viewport().grab().toImage()
    book_map.set_text_scale(2.0)
    assert book_map.text_scale() == 2.0
    assert book_map.frame().margin >= 1.7 * margin
    assert book_map.viewport().grab().toImage() != before
    for code in net.codes:
        assert book_map.at(book_map.where(code)) == code
