"""The dress of the window: fields and sliders in the colours of both looks, their focus seen."""

from __future__ import annotations

import pytest
from PySide6.QtCore import QPoint, Qt
from PySide6.QtGui import QColor, QImage
from PySide6.QtWidgets import (
    QApplication,
    QDoubleSpinBox,
    QLabel,
    QLineEdit,
    QSlider,
    QSpinBox,
    QVBoxLayout,
    QWidget,
)
from pytestqt.qtbot import QtBot

from pedigreeview.window.style import colours_of, dress


@pytest.fixture(params=["light", "dark"])
def look(request: pytest.FixtureRequest, qtbot: QtBot) -> str:
    app = QApplication.instance()
    assert isinstance(app, QApplication)
    dress(app, str(request.param), 100)
    return str(request.param)


def _laid(qtbot: QtBot, *held: QWidget) -> QWidget:
    sheet = QWidget()
    layout = QVBoxLayout(sheet)
    for widget in held:
        layout.addWidget(widget)
    qtbot.addWidget(sheet)
    sheet.show()
    qtbot.waitExposed(sheet)
    sheet.activateWindow()
    return sheet


def _holds(image: QImage, colour: QColor) -> bool:
    """Whether a pixel has just this colour."""
    wanted = colour.rgb()
    return any(
        image.pixel(x, y) == wanted for x in range(image.width()) for y in range(image.height())
    )


def test_a_field_with_decimals_looks_as_one_with_whole_numbers(look: str, qtbot: QtBot) -> None:
    whole, decimals = QSpinBox(), QDoubleSpinBox()
    whole.setSpecialValueText("0.00")
    sheet = _laid(qtbot, whole, decimals)
    assert sheet.isVisible()
    assert decimals.height() == whole.height()
    one, other = whole.grab().toImage(), decimals.grab().toImage()
    corner = QPoint(one.width() // 2, 1)
    assert other.pixelColor(corner) == one.pixelColor(corner) == colours_of(look).sheet
    focus = colours_of(look).focus
    assert not _holds(other, focus)
    decimals.setFocus()
    qtbot.waitUntil(decimals.hasFocus)
    assert _holds(decimals.grab().toImage(), focus)


def test_a_slider_shows_where_it_is_set_and_that_the_keys_are_on_it(
    look: str, qtbot: QtBot
) -> None:
    slider, other = QSlider(Qt.Orientation.Horizontal), QLineEdit()
    slider.setValue(60)
    sheet = _laid(qtbot, other, slider)
    sheet.resize(300, 120)
    other.setFocus()
    qtbot.waitUntil(other.hasFocus)
    colours, middle = colours_of(look), slider.height() // 2
    image = slider.grab().toImage()
    assert image.pixelColor(slider.width() // 4, middle).name() == colours.accent.name()
    assert image.pixelColor(slider.width() * 9 // 10, middle).name() == colours.rule.name()
    assert not _holds(image, colours.focus)
    slider.setFocus()
    qtbot.waitUntil(slider.hasFocus)
    assert _holds(slider.grab().toImage(), colours.focus)


def test_another_look_reaches_what_stands_already(qtbot: QtBot) -> None:
    app = QApplication.instance()
    assert isinstance(app, QApplication)
    dress(app, "light", 100)
    label, field = QLabel("Pea"), QLineEdit()
    sheet = _laid(qtbot, label, field)
    tall = label.sizeHint().height()
    for name, percent in (("dark", 100), ("dark", 200), ("light", 100)):
        dress(app, name, percent)
        ink = colours_of(name).ink
        assert label.palette().color(label.foregroundRole()) == ink
        assert _holds(field.grab().toImage(), colours_of(name).sheet)
        assert (label.sizeHint().height() > 1.5 * tall) == (percent == 200)
    assert sheet.isVisible()
