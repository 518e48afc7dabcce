"""Two fingers: pinches from a touchpad and a touch screen, and panning, about the pointer."""

from __future__ import annotations

import pytest
from PySide6.QtCore import QPoint, QPointF, Qt
from PySide6.QtGui import QInputDevice, QNativeGestureEvent, QPointingDevice, QWheelEvent
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from pedigreeview.drawing.overview import overview_of
from pedigreeview.drawing.placing import place
from pedigreeview.drawing.view import Look, choose
from pedigreeview.network import PedigreeNetwork
from pedigreeview.window.canvas import PedigreeCanvas
from pedigreeview.window.overview import BookMap
from tests.window.test_relatives import network


@pytest.fixture(scope="module")
def net() -> PedigreeNetwork:
    return network(12)


@pytest.fixture(params=["picture", "map"])
def view(request: pytest.FixtureRequest, qtbot: QtBot, net: PedigreeNetwork):
    made = PedigreeCanvas() if request.param == "picture" else BookMap()
    made.resize(900, 600)
    qtbot.addWidget(made)
    made.show()
    qtbot.waitExposed(made)
    if isinstance(made, PedigreeCanvas):
        made.show_placed(place(choose(net, Look(focus="P"))), animate=False)
    else:
        made.show_overview(overview_of(net))
    return made


def size(view: PedigreeCanvas | BookMap, code: str) -> int:
    return view.rect_of(code).width()


def test_a_pinch_on_a_touchpad_zooms_about_the_pointer(view) -> None:
    spot, before = view.where("A"), size(view, "A")
    at = QPointF(spot)
    event = QNativeGestureEvent(
        Qt.NativeGestureType.ZoomNativeGesture,
        QPointingDevice.primaryPointingDevice(),
        2,
        at,
        at,
        QPointF(view.viewport().mapToGlobal(spot)),
        0.5,
        QPointF(),
        1,
    )
    QApplication.sendEvent(view.viewport(), event)
    assert size(view, "A") == pytest.approx(1.5 * before, abs=2)
    assert abs(view.where("A").x() - spot.x()) <= 3
    assert view.at(spot) == "A"


def test_two_fingers_on_a_touch_screen_zoom(view, qtbot: QtBot) -> None:
    screen = QTest.createTouchDevice(QInputDevice.DeviceType.TouchScreen)
    port, before = view.viewport(), size(view, "A")
    middle = view.where("A")
    seen: list[int] = []
    for apart in range(20, 160, 10):
        fingers = QTest.touchEvent(port, screen)
        way = QPoint(apart, 0)
        if not seen:
            fingers.press(0, middle - way, port).press(1, middle + way, port)
        else:
            fingers.move(0, middle - way, port).move(1, middle + way, port)
        fingers.commit()
        seen.append(size(view, "A"))
    QTest.touchEvent(port, screen).release(0, middle - way, port).release(
        1, middle + way, port
    ).commit()
    assert seen[-1] > 1.3 * before
    assert seen == sorted(seen)


def test_two_fingers_on_a_touchpad_pan(view) -> None:
    before = view.where("A")
    if isinstance(view, BookMap):
        view.zoom_by(1.2)
        before = view.where("A")
    spot = before
    event = QWheelEvent(
        QPointF(spot),
        QPointF(view.viewport().mapToGlobal(spot)),
        QPoint(14, 9),
        QPoint(0, 0),
        Qt.MouseButton.NoButton,
        Qt.KeyboardModifier.NoModifier,
        Qt.ScrollPhase.ScrollUpdate,
        False,
    )
    QApplication.sendEvent(view.viewport(), event)
    moved = view.where("A") - before
    assert (moved.x() > 0) == (moved.y() > 0)
    assert abs(abs(moved.x()) - 14) <= 1
    assert abs(abs(moved.y()) - 9) <= 1


def test_other_gestures_are_left_alone(view) -> None:
    before, at = size(view, "A"), QPointF(view.where("A"))
    event = QNativeGestureEvent(
        Qt.NativeGestureType.RotateNativeGesture,
        QPointingDevice.primaryPointingDevice(),
        2,
        at,
        at,
        at,
        0.5,
        QPointF(),
        1,
    )
    QApplication.sendEvent(view.viewport(), event)
    assert size(view, "A") == before
