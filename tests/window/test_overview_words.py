"""What the foot of the map says of its colours, bars and lines."""

from __future__ import annotations

import numpy as np
from PySide6.QtCore import QLocale
from pytestqt.qtbot import QtBot

from pedigreeview.drawing.overview_painter import Drawn
from pedigreeview.drawing.tinting import KeyEntry, TintKey
from pedigreeview.window.overview_words import foot_words
from pedigreeview.window.words import number


def test_only_what_is_drawn_is_explained(qtbot: QtBot) -> None:
    plain = foot_words(Drawn(10, 10))
    assert "founders' shares" in plain
    for word in ("Dotted", "dashed", "bar", "lines"):
        assert word not in plain
    assert "Dotted lines come from pollen parents." in foot_words(Drawn(10, 10, grains=True))
    all_lines = foot_words(Drawn(kin=4, kin_there=4), marked="P1")
    assert "dashed ones to its descendants" in all_lines
    assert "two generations" not in all_lines
    near = foot_words(Drawn(kin=4, kin_there=900, near=True), marked="P1")
    assert "two generations up (full) and down (dashed) only: 4 of 900" in near
    alone = foot_words(Drawn(), marked="P1")
    assert "ancestor of P1" in alone
    assert "dashed" not in alone


def test_colours_are_those_of_the_tint(qtbot: QtBot) -> None:
    classes = TintKey("Status", entries=(KeyEntry("#112233", "kept", 1),))
    assert "Patterns tell classes apart" in foot_words(Drawn(), classes)
    scale = TintKey("F", ramp=("#112233",))
    assert foot_words(Drawn(), scale) == "Dots stand for no value."


def test_numbers_are_written_as_the_language_writes_them(qtbot: QtBot) -> None:
    before = QLocale()
    try:
        for code, wanted in (("en", "1,000 of about 5,000"), ("de", "1.000 of about 5.000")):
            QLocale.setDefault(QLocale(code))
            assert wanted in foot_words(Drawn(1000, 5000))
    finally:
        QLocale.setDefault(before)


def test_any_whole_number_can_be_written(qtbot: QtBot) -> None:
    before = QLocale()
    try:
        QLocale.setDefault(QLocale("de"))
        assert number(np.int64(12345)) == "12.345"
        assert number(-5) == "-5"
        assert number(10**21).startswith("1")
    finally:
        QLocale.setDefault(before)
