"""Searches memory for reference cycles when that holds nobody up, and in the window's thread alone.

Left to itself Python searches whenever many objects were made, in whichever thread made them: the
window then stands still in the middle of a click, and a dialog that is only held by a cycle may be
ended by a thread that must not touch it.
"""

from __future__ import annotations

import gc
import time
from collections.abc import Callable

from PySide6.QtCore import QObject, Qt, QTimer
from PySide6.QtGui import QGuiApplication

from pedigreeview.book.memory import look_through, set_aside

__all__ = ["Tidying"]

_EVERY = 2000
"""Milliseconds between looks for whether there is much to search."""
_MUCH = 5000
"""Objects made since the last search, from which on a search is worth while."""
_TOO_MUCH = 50_000
"""Objects that only work under way has made; they are searched when it is done."""
_ROUNDS = 15
"""Searches of new objects after which the older ones are searched as well."""
_LONG = 0.02
"""Seconds of a search after which what is left is set aside."""
_ASIDE = 5000
"""Milliseconds that another program is in front before all is searched."""
_SELDOM = 300.0
"""Seconds between two searches of everything."""


class Tidying(QObject):
    """Takes the collector of cycles into its own hands while it lives.

    busy : whether work is under way off the window's thread
    """

    def __init__(self, app: QGuiApplication, busy: Callable[[], bool]) -> None:
        super().__init__(app)
        self._app, self._busy = app, busy
        self._rounds = 0
        self._looked = time.monotonic()
        self._was_on = gc.isenabled()
        gc.disable()
        self._timer = QTimer(self)
        self._timer.setInterval(_EVERY)
        self._timer.timeout.connect(self.tidy)
        self._timer.start()
        self._aside = QTimer(self)
        self._aside.setSingleShot(True)
        self._aside.setInterval(_ASIDE)
        self._aside.timeout.connect(self._look_through)
        app.applicationStateChanged.connect(self._state_changed)

    def end(self) -> None:
        """Leave the collector as it was found."""
        self._timer.stop()
        self._aside.stop()
        if self._was_on:
            gc.enable()

    def tidy(self) -> None:
        """Search what is new, if it is much; now and then what is older."""
        made = gc.get_count()[0]
        if made < _MUCH or (made > _TOO_MUCH and self._busy()):
            return
        if self._rounds < _ROUNDS:
            gc.collect(1)
            self._rounds += 1
            return
        self._rounds = 0
        begun = time.monotonic()
        gc.collect()
        if time.monotonic() - begun > _LONG:
            set_aside()

    def _state_changed(self, state: Qt.ApplicationState) -> None:
        if state == Qt.ApplicationState.ApplicationActive:
            self._aside.stop()
        else:
            self._aside.start()

    def _look_through(self) -> None:
        """Nobody looks at the window: a search of everything disturbs nobody."""
        if time.monotonic() - self._looked < _SELDOM or self._busy():
            return
        self._looked = time.monotonic()
        look_through()
