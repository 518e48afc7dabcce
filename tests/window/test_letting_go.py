"""A former network is freed part by part, and only when nobody asks it any more."""

from __future__ import annotations

import gc
import weakref
from collections.abc import Iterator
from typing import Any

import pytest
from PySide6.QtTest import QSignalSpy
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from pedigreeview.window.letting_go import LettingGo


class _Part:
    """A list that is freed when nobody holds it, such as those of a network."""


class _Net:
    def __init__(self) -> None:
        self.first, self.second, self.third = _Part(), _Part(), _Part()


class _Book:
    def __init__(self, net: _Net, finder: _Net) -> None:
        self.net, self.finder = net, finder


@pytest.fixture(autouse=True)
def uncollected() -> Iterator[None]:
    """What is freed here is freed by the last reference, not by a search for cycles."""
    gc.disable()
    yield
    gc.enable()


def _alive(parts: list[weakref.ref[Any]]) -> int:
    return sum(part() is not None for part in parts)


def _turn(going: LettingGo) -> None:
    spy = QSignalSpy(going._timer.timeout)
    while not spy.count():
        QApplication.processEvents()


def test_each_event_frees_one_part(qtbot: QtBot) -> None:
    net = _Net()
    parts = [weakref.ref(part) for part in vars(net).values()]
    whole = weakref.ref(net)
    shared = _Net()
    going = LettingGo()
    going.take(_Book(net, shared), _Book(_Net(), shared))  # type: ignore[arg-type]
    del net
    left = []
    while going.waiting:
        _turn(going)
        left.append(_alive(parts))
    assert whole() is None
    assert left == [3, 2, 1, 0]
    assert vars(shared)


def test_what_is_still_asked_stays_whole_and_keeps_no_other(qtbot: QtBot) -> None:
    asked, idle = _Net(), _Net()
    shared = _Net()
    of_idle = [weakref.ref(part) for part in vars(idle).values()]
    going = LettingGo()
    going.take(_Book(asked, shared), _Book(idle, shared))  # type: ignore[arg-type]
    going.take(_Book(idle, shared), _Book(_Net(), shared))  # type: ignore[arg-type]
    del idle
    qtbot.waitUntil(lambda: not _alive(of_idle), timeout=6000)
    assert going.waiting == 1
    assert asked.first is not None
    del asked
    qtbot.waitUntil(lambda: not going.waiting, timeout=6000)
