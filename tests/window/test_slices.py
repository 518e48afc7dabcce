"""What is made in slices comes in its order, one to a turn, and whole to whoever asks for it."""

from __future__ import annotations

from collections.abc import Iterator

import pytest
from PySide6.QtCore import QObject
from pytestqt.qtbot import QtBot

from pedigreeview.window.slices import Slices


def _steps(told: list[int], many: int) -> Iterator[None]:
    for at in range(many):
        told.append(at)
        yield


def test_each_slice_comes_in_a_turn_of_its_own(qtbot: QtBot) -> None:
    told: list[int] = []
    parent = QObject()
    slices = Slices(_steps(told, 3), parent)
    assert told == []
    assert slices.making
    with qtbot.waitSignal(slices.done):
        pass
    assert not slices.making
    assert told == [0, 1, 2]


def test_whoever_asks_gets_the_rest_at_once() -> None:
    told: list[int] = []
    parent = QObject()
    slices = Slices(_steps(told, 4), parent)
    slices.finish()
    assert told == [0, 1, 2, 3]
    assert not slices.making


def test_a_slice_may_ask_for_what_it_makes() -> None:
    told: list[str] = []
    parent = QObject()

    def steps() -> Iterator[None]:
        slices.finish()
        told.append("one")
        yield
        told.append("two")

    slices = Slices(steps(), parent)
    slices.finish()
    assert told == ["one", "two"]


def test_what_is_stopped_makes_no_more(qtbot: QtBot) -> None:
    told: list[int] = []
    parent = QObject()

    def steps() -> Iterator[None]:
        told.append(0)
        yield
        slices.stop()
        told.append(1)
        yield
        told.append(2)

    slices = Slices(steps(), parent)
    with qtbot.assertNotEmitted(slices.done, wait=30):
        slices.finish()
    assert told == [0, 1]
    assert not slices.making


def test_a_fault_ends_them() -> None:
    def steps() -> Iterator[None]:
        raise ValueError("no")
        yield

    parent = QObject()
    slices = Slices(steps(), parent)
    with pytest.raises(ValueError, match="no"):
        slices.finish()
    assert not slices.making
