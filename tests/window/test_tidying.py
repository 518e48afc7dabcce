"""Cycles are searched for in the window's thread, when much was made or nobody looks."""

from __future__ import annotations

import gc
import weakref
from collections.abc import Iterator

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from pedigreeview.window import tidying as module
from pedigreeview.window.tidying import Tidying


class Ring:
    """Holds itself, so that only the collector can end it."""

    def __init__(self) -> None:
        self.itself = self


@pytest.fixture
def busy() -> list[bool]:
    return [False]


@pytest.fixture
def tidying(qtbot: QtBot, busy: list[bool]) -> Iterator[Tidying]:
    gc.unfreeze()
    app = QApplication.instance()
    assert isinstance(app, QApplication)
    made = Tidying(app, lambda: busy[0])
    gc.collect()
    yield made
    made.end()
    made.deleteLater()
    gc.unfreeze()


def _much() -> list[list[int]]:
    return [[number] for number in range(20_000)]


def test_python_does_not_search_by_itself_meanwhile(tidying: Tidying) -> None:
    assert not gc.isenabled()
    ring = weakref.ref(Ring())
    held = _much()
    assert ring() is not None
    tidying.tidy()
    assert ring() is None
    assert held
    tidying.end()
    assert gc.isenabled()


def test_little_is_not_worth_a_search(tidying: Tidying) -> None:
    ring = weakref.ref(Ring())
    tidying.tidy()
    assert ring() is not None


def test_what_work_under_way_has_made_waits_for_its_end(
    tidying: Tidying, busy: list[bool], monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(module, "_TOO_MUCH", 10_000)
    ring, held = weakref.ref(Ring()), _much()
    busy[0] = True
    tidying.tidy()
    assert ring() is not None
    busy[0] = False
    tidying.tidy()
    assert ring() is None
    assert held


def test_older_things_are_searched_now_and_then(
    tidying: Tidying, monkeypatch: pytest.MonkeyPatch
) -> None:
    ring = Ring()
    ended = weakref.ref(ring)
    for _ in range(3):
        gc.collect(1)
    del ring
    monkeypatch.setattr(module, "_ROUNDS", 2)
    ends, held = [], []
    for _ in range(3):
        held.append(_much())
        tidying.tidy()
        ends.append(ended() is None)
    assert ends == [False, False, True]


def test_everything_is_searched_while_another_program_is_in_front(
    qtbot: QtBot, tidying: Tidying, monkeypatch: pytest.MonkeyPatch
) -> None:
    ring = Ring()
    ended = weakref.ref(ring)
    gc.freeze()
    del ring
    monkeypatch.setattr(module, "_SELDOM", 0.0)
    tidying._aside.setInterval(0)
    app = QApplication.instance()
    assert isinstance(app, QApplication)
    app.applicationStateChanged.emit(Qt.ApplicationState.ApplicationInactive)
    qtbot.waitUntil(lambda: ended() is None, timeout=5000)
    app.applicationStateChanged.emit(Qt.ApplicationState.ApplicationActive)
    assert not tidying._aside.isActive()
