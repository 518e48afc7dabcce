"""What the canvas keeps of its picture is never stale, and a drag paints little of it afresh."""

from __future__ import annotations

from collections.abc import Callable

import numpy as np
import pytest
from numpy.typing import NDArray
from PySide6.QtCore import QEvent, QPoint, Qt
from PySide6.QtGui import QImage
from pytestqt.qtbot import QtBot

from pedigreeview import read
from pedigreeview.drawing.placing import place
from pedigreeview.drawing.view import Look, choose
from pedigreeview.places import demo
from pedigreeview.window.canvas import PedigreeCanvas

NET = read(demo("two_peas_both_ways"))
FOCUS = NET.codes[len(NET.codes) // 2]
PLACED = place(choose(NET, Look(focus=FOCUS, up=3, down=3)))


@pytest.fixture
def canvas(qtbot: QtBot) -> PedigreeCanvas:
    made = PedigreeCanvas()
    qtbot.addWidget(made)
    made.resize(900, 600)
    made.show()
    qtbot.waitExposed(made)
    made.show_placed(PLACED, animate=False)
    made.look_at(1.0)
    made.viewport().repaint()
    return made


def seen(canvas: PedigreeCanvas) -> QImage:
    return canvas.viewport().grab().toImage()


def apart(one: QImage, other: QImage) -> int:
    """The largest difference of two pixels."""
    return int(np.abs(_levels(one) - _levels(other)).max())


def _levels(image: QImage) -> NDArray[np.int64]:
    plain = image.convertToFormat(QImage.Format.Format_RGB32)
    held = np.frombuffer(plain.constBits(), np.uint8)
    return held.reshape(plain.height(), plain.width(), 4)[:, :, :3].astype(np.int64)


def as_afresh(canvas: PedigreeCanvas) -> bool:
    """Whether the screen shows what it would if nothing had been kept."""
    now = seen(canvas)
    canvas._kept.drop()
    return apart(now, seen(canvas)) <= 24


def others(canvas: PedigreeCanvas) -> list[str]:
    return [code for code in canvas.visible_codes() if code != FOCUS]


_ACTS: dict[str, Callable[[PedigreeCanvas], object]] = {
    "selected": lambda canvas: canvas.set_selected(others(canvas)[0]),
    "pins": lambda canvas: canvas.set_pins(others(canvas)[:2], others(canvas)[:1]),
    "tints": lambda canvas: canvas.set_tints(dict.fromkeys(others(canvas), "#c08040")),
    "words": lambda canvas: canvas.set_tint_words(dict.fromkeys(others(canvas), "7 g")),
    "faded": lambda canvas: canvas.set_faded(others(canvas)[:2]),
    "lit": lambda canvas: canvas.light([[FOCUS, NET.parent_codes(FOCUS)[0]]]),
    "look": lambda canvas: canvas.set_theme("dark"),
    "type": lambda canvas: canvas.set_text_scale(1.5),
    "zoom": lambda canvas: canvas.zoom_by(1.2),
    "picked": lambda canvas: canvas.set_picked(others(canvas)[:2]),
    "folded": lambda canvas: canvas.show_placed(
        place(choose(NET, Look(focus=FOCUS, up=1, down=1)), PLACED), animate=False
    ),
}


@pytest.mark.parametrize("act", list(_ACTS))
def test_what_changes_shows_at_once(canvas: PedigreeCanvas, act: str) -> None:
    before = seen(canvas)
    _ACTS[act](canvas)
    after = seen(canvas)
    assert apart(before, after) > 30
    assert as_afresh(canvas)


def drag(qtbot: QtBot, canvas: PedigreeCanvas, start: QPoint, by: QPoint) -> list[int]:
    """Drag in steps; how many pixels were painted at each."""
    view, painted = canvas.viewport(), []
    qtbot.mousePress(view, Qt.MouseButton.MiddleButton, pos=start)
    for at in range(1, 6):
        qtbot.mouseMove(view, start + by * at)
        view.repaint()
        painted.append(canvas._kept.painted)
    qtbot.mouseRelease(view, Qt.MouseButton.MiddleButton, pos=start + by * 5)
    return painted


def test_a_drag_paints_the_strips_that_come_into_sight(
    qtbot: QtBot, canvas: PedigreeCanvas
) -> None:
    canvas.set_picked(others(canvas)[:1])
    before = seen(canvas)
    whole = canvas.viewport().width() * canvas.viewport().height()
    painted = drag(qtbot, canvas, QPoint(450, 300), QPoint(-16, 10))
    assert 0 < max(painted) < 0.2 * whole
    assert apart(before, seen(canvas)) > 30
    assert as_afresh(canvas)


def test_the_tag_under_the_pointer_is_outlined_and_no_longer_when_it_leaves(
    qtbot: QtBot, canvas: PedigreeCanvas
) -> None:
    plain, spot = seen(canvas), canvas.where(others(canvas)[0])
    qtbot.mouseMove(canvas.viewport(), spot)
    canvas.viewport().repaint()
    assert 0 < canvas._kept.painted < 0.2 * plain.width() * plain.height()
    assert apart(plain, seen(canvas)) > 20
    assert as_afresh(canvas)
    canvas.leaveEvent(QEvent(QEvent.Type.Leave))
    assert apart(plain, seen(canvas)) <= 24


def test_a_move_to_other_places_ends_as_painted_afresh(
    qtbot: QtBot, canvas: PedigreeCanvas
) -> None:
    canvas.show_placed(place(choose(NET, Look(focus=FOCUS, up=1, down=1)), PLACED))
    qtbot.waitUntil(lambda: not canvas.moving(), timeout=5000)
    assert as_afresh(canvas)


def test_a_picture_taken_away_leaves_the_ground(canvas: PedigreeCanvas) -> None:
    canvas.show_placed(None)
    image = seen(canvas)
    inner = {
        image.pixel(x, y)
        for x in range(20, image.width() - 20, 9)
        for y in range(20, image.height() - 20, 9)
    }
    assert len(inner) == 1
    canvas.show_placed(PLACED, animate=False)
    assert as_afresh(canvas)
