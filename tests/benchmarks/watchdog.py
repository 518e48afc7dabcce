"""A watchdog over event handlers: how long each event of a journey through the window took.

    python -m tests.benchmarks.watchdog --plants 5000

It drives the real window over a synthetic book with clicks, keys, the wheel, hover and typing, and
prints, as JSON, every handler that took longer than the limit.  The application is a subclass that
times `notify`, for an event filter sees an event only before it is handled.  A handler that runs
inside another one is counted by itself and taken off the outer one.  What counts is the time that
the window's thread was at work (`time.thread_time`): on a busy machine the clock on the wall also
counts what other programs did meanwhile.  Both are printed.
"""

from __future__ import annotations

import argparse
import json
import os
import sys
import tempfile
import time
from collections.abc import Callable
from dataclasses import asdict, dataclass
from functools import partial
from pathlib import Path
from typing import Any

os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")

from PySide6.QtCore import QEvent, QObject, QPoint, QPointF, QSettings, Qt
from PySide6.QtGui import QWheelEvent
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QWidget

__all__ = ["Slow", "WatchedApplication", "drive"]

LIMIT_MS = 50.0
_TABLE = "name,mother,father\nR1,,\nR2,,\nR3,R1,R2\nR4,R1,R2\nR5,R3,R4\n"
_PATIENCE = 120.0


@dataclass(frozen=True, slots=True)
class Slow:
    """One handler that took too long."""

    step: str
    event: str
    receiver: str
    worked: float
    """Milliseconds that the thread was at work."""
    passed: float
    """Milliseconds on the wall."""


class WatchedApplication(QApplication):
    """Times every event that is handled."""

    def __init__(self, arguments: list[str]) -> None:
        super().__init__(arguments)
        self.step = ""
        self.watching = False
        self.handled = 0
        self.slow: list[Slow] = []
        self.longest = Slow("", "", "", 0.0, 0.0)
        self._inside: list[tuple[float, float]] = []

    def notify(self, receiver: QObject, event: QEvent) -> bool:
        if not self.watching:
            return bool(super().notify(receiver, event))
        # The event may end its receiver, so its name is asked before.
        kind, name = event.type(), receiver.objectName()
        self._inside.append((0.0, 0.0))
        begun, at = time.thread_time(), time.perf_counter()
        try:
            return bool(super().notify(receiver, event))
        finally:
            worked, passed = time.thread_time() - begun, time.perf_counter() - at
            inner, meanwhile = self._inside.pop()
            if self._inside:
                held = self._inside[-1]
                self._inside[-1] = (held[0] + worked, held[1] + passed)
            self.handled += 1
            whose = f"{type(receiver).__name__} {name}".strip()
            self._note(whose, kind, (worked - inner) * 1000, (passed - meanwhile) * 1000)

    def act(self, step: str, act: Callable[[], object]) -> None:
        """Do one step of the journey, timed as a handler: what it sets off is taken off it."""
        self.step = step
        self._inside.append((0.0, 0.0))
        begun, at = time.thread_time(), time.perf_counter()
        act()
        worked, passed = time.thread_time() - begun, time.perf_counter() - at
        inner, meanwhile = self._inside.pop()
        self.handled += 1
        self._note("", None, (worked - inner) * 1000, (passed - meanwhile) * 1000)

    def _note(self, receiver: str, kind: QEvent.Type | None, worked: float, passed: float) -> None:
        if worked <= min(self.longest.worked, LIMIT_MS):
            return
        event = "Act" if kind is None else getattr(kind, "name", str(kind))
        held = Slow(self.step, event, receiver, round(worked, 1), round(passed, 1))
        self.longest = max(self.longest, held, key=lambda one: one.worked)
        if worked > LIMIT_MS:
            self.slow.append(held)


def _wheel(widget: QWidget, spot: QPoint, turn: int, held: Any = None) -> None:
    none = Qt.KeyboardModifier.NoModifier
    QApplication.sendEvent(
        widget,
        QWheelEvent(
            QPointF(spot),
            QPointF(widget.mapToGlobal(spot)),
            QPoint(),
            QPoint(0, turn),
            Qt.MouseButton.NoButton,
            held or none,
            Qt.ScrollPhase.NoScrollPhase,
            False,
        ),
    )


def _settle(window: Any, rest: int = 25) -> None:
    """Until every answer has come and what moves has come to rest."""
    until = time.monotonic() + _PATIENCE
    QTest.qWait(rest)
    pages = [page for page in window.book_pages.values() if hasattr(page, "making")]
    while time.monotonic() < until and (
        window.errands.awaits() or any(page.making for page in pages)
    ):
        QTest.qWait(10)
    QTest.qWait(rest)


def drive(app: WatchedApplication, path: Path, *, brief: bool = False) -> Any:
    """The journey; the window, so that the caller can close it.

    brief : only what a large book makes slow: opening, turning to every page, edits and undo
    """
    from pedigreeview.window.main_window import MainWindow
    from pedigreeview.window.opening import Stated
    from pedigreeview.window.preferences import Preferences
    from pedigreeview.window.tidying import Tidying
    from tests.benchmarks import journeys, journeys_at_work

    table = path.with_name("plants.csv")
    table.write_text(_TABLE, encoding="utf-8")
    settings = QSettings(str(path.with_suffix(".ini")), QSettings.Format.IniFormat)
    window = MainWindow(Preferences(settings))
    window.resize(1280, 800)
    window.show()
    QTest.qWaitForWindowExposed(window)
    tidying = Tidying(app, window.errands.awaits)
    app.watching = True
    try:
        app.act("open the book", lambda: window.open_path(path, Stated("variety", 1.0)))
        # The modules of the other pages are loaded when all is on the screen.
        _settle(window, 1000)
        whole = (
            _in_the_picture,
            _in_the_index,
            _on_the_map,
            journeys.shaded,
            journeys.looked_at_in_other_ways,
            journeys.turned,
            journeys_at_work.at_work_on_pages,
            journeys.edited,
            journeys_at_work.forms_laid,
            journeys_at_work.with_dialogs,
            journeys_at_work.dressed,
            partial(journeys_at_work.brought_in, table=table),
        )
        for steps in (journeys.turned, journeys.edited) if brief else whole:
            for name, act in steps(window):
                app.act(name, act)
                _settle(window)
    finally:
        app.watching = False
        tidying.end()
    return window


def _in_the_picture(window: Any) -> list[tuple[str, Callable[[], object]]]:
    page = window.pedigree
    canvas, left = page.canvas, Qt.MouseButton.LeftButton
    shift, control = Qt.KeyboardModifier.ShiftModifier, Qt.KeyboardModifier.ControlModifier
    none = Qt.KeyboardModifier.NoModifier

    def tag(at: int) -> QPoint:
        codes = canvas.visible_codes()
        return canvas.where(codes[at % len(codes)])

    def band() -> None:
        view, size = canvas.viewport(), canvas.viewport().size()
        QTest.mousePress(view, left, shift, QPoint(5, 5))
        QTest.mouseMove(view, QPoint(size.width() // 2, size.height() // 2))
        QTest.mouseMove(view, QPoint(size.width() - 5, size.height() - 5))
        QTest.mouseRelease(view, left, shift, QPoint(size.width() - 5, size.height() - 5))

    def drag() -> None:
        view, spot = canvas.viewport(), QPoint(30, canvas.viewport().height() - 20)
        QTest.mousePress(view, left, none, spot)
        for at in range(10):
            QTest.mouseMove(view, spot + QPoint(12 * at, -6 * at))
        QTest.mouseRelease(view, left, none, spot + QPoint(120, -60))

    keys = [
        (name, lambda key=key, held=held: QTest.keyClick(canvas, key, held))
        for name, key, held in (
            ("seed parent", Qt.Key.Key_Up, none),
            ("pollen parent", Qt.Key.Key_Up, shift),
            ("progeny", Qt.Key.Key_Down, none),
            ("right", Qt.Key.Key_Right, none),
            ("focus", Qt.Key.Key_Return, none),
            ("mate", Qt.Key.Key_M, none),
            ("unfold", Qt.Key.Key_Plus, none),
            ("fold", Qt.Key.Key_Minus, none),
            ("pin", Qt.Key.Key_P, none),
            ("pick with Space", Qt.Key.Key_Space, none),
            ("pick all", Qt.Key.Key_A, control),
            ("pick none", Qt.Key.Key_Escape, none),
        )
    ]
    return [
        ("hover", lambda: (QTest.mouseMove(canvas.viewport(), tag(1)), QTest.qWait(700))),
        ("click a tag", lambda: QTest.mouseClick(canvas.viewport(), left, none, tag(0))),
        ("click another", lambda: QTest.mouseClick(canvas.viewport(), left, none, tag(2))),
        ("pick a tag", lambda: QTest.mouseClick(canvas.viewport(), left, shift, tag(1))),
        ("pick by a band", band),
        ("pan", drag),
        *[
            (f"wheel {turn}", lambda turn=turn: _wheel(canvas.viewport(), tag(0), turn))
            for turn in (120, 120, -120, -120)
        ],
        *keys,
        ("undo the pin", lambda: QTest.keyClick(canvas, Qt.Key.Key_P)),
        ("more generations", lambda: page.down.stepUp()),
        ("fewer generations", lambda: page.down.stepDown()),
        ("back", window.back),
        ("forward", window.forward),
    ]


def _in_the_index(window: Any) -> list[tuple[str, Callable[[], object]]]:
    page, find = window.pedigree, window.find_field
    tree = page.drawer.tree

    def typed(field: Any, text: str) -> list[tuple[str, Callable[[], object]]]:
        return [
            (f"type '{text[: at + 1]}'", lambda letter=letter: QTest.keyClicks(field, letter))
            for at, letter in enumerate(text)
        ]

    return [
        ("open find", find.setFocus),
        *typed(find, "p12"),
        ("take the first", lambda: QTest.keyClick(find, Qt.Key.Key_Return)),
        ("open the index", page.index_button.click),
        *typed(page.drawer.filter, "1 k"),
        ("empty the filter", page.drawer.filter.clear),
        ("to the list", lambda: QTest.keyClick(page.drawer.filter, Qt.Key.Key_Down)),
        ("to the end", lambda: QTest.keyClick(page.drawer.list, Qt.Key.Key_End)),
        ("to the tree", lambda: page.drawer.tabs.setCurrentIndex(1)),
        *[
            (f"tree {name}", lambda key=key: QTest.keyClick(tree, key))
            for name, key in (
                ("down", Qt.Key.Key_Down),
                ("down 2", Qt.Key.Key_Down),
                ("open", Qt.Key.Key_Right),
                ("open 2", Qt.Key.Key_Right),
                ("open all", Qt.Key.Key_Asterisk),
                ("focus", Qt.Key.Key_Return),
            )
        ],
        ("close the index", page.index_button.click),
    ]


def _on_the_map(window: Any) -> list[tuple[str, Callable[[], object]]]:
    shown, left = window.map.map, Qt.MouseButton.LeftButton
    none, shift = Qt.KeyboardModifier.NoModifier, Qt.KeyboardModifier.ShiftModifier
    control = Qt.KeyboardModifier.ControlModifier
    middle = QPoint(600, 300)

    def band() -> None:
        view = shown.viewport()
        QTest.mousePress(view, left, shift, QPoint(200, 60))
        QTest.mouseMove(view, middle)
        QTest.mouseRelease(view, left, shift, middle)

    def plant() -> QPoint:
        overview = shown.overview
        return shown.where(overview.codes[len(overview) // 2])

    return [
        ("to the map", lambda: window.show_page("map")),
        ("click on the map", lambda: QTest.mouseClick(shown.viewport(), left, none, plant())),
        ("hover on the map", lambda: (QTest.mouseMove(shown.viewport(), middle), QTest.qWait(700))),
        ("pick on the map", band),
        *[(f"map wheel {at}", lambda: _wheel(shown.viewport(), middle, 240)) for at in range(6)],
        *[
            (f"map key {name}", lambda key=key, held=held: QTest.keyClick(shown, key, held))
            for name, key, held in (
                ("right", Qt.Key.Key_Right, none),
                ("up", Qt.Key.Key_Up, none),
                ("down", Qt.Key.Key_Down, none),
                ("fit", Qt.Key.Key_0, control),
                ("pick all", Qt.Key.Key_A, control),
                ("pick none", Qt.Key.Key_Escape, none),
            )
        ],
        ("back to the picture", lambda: window.show_page("pedigree")),
    ]


def main() -> None:
    """Drive the journey and print what was slow."""
    from pedigreeview.book.book_file import BookFile
    from tests.benchmarks.garden import garden

    parser = argparse.ArgumentParser()
    parser.add_argument("--plants", type=int, default=5000)
    parser.add_argument("--brief", action="store_true", help="open, turn to every page, edit")
    asked = parser.parse_args()
    plants = asked.plants
    app = WatchedApplication(sys.argv[:1])
    with tempfile.TemporaryDirectory() as folder:
        path = Path(folder) / "book.pedbook"
        BookFile.create(path, garden(plants, scores=True)).close()
        window = drive(app, path, brief=asked.brief)
        window.close()
    report = {
        "plants": plants,
        "handled": app.handled,
        "longest": asdict(app.longest),
        "slow": [asdict(one) for one in sorted(app.slow, key=lambda one: one.worked, reverse=True)],
    }
    print(json.dumps(report, indent=1))


if __name__ == "__main__":
    main()
