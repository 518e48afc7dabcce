"""Lets go of what a book was before an edit, in small parts.

After an edit nothing asks the former network any more.  To free the lists of 100,000 plants takes
some 45 ms where the last reference is given up at once; here each of them goes in an event of its
own, so that none of these holds the window up.
"""

from __future__ import annotations

import sys
from collections import deque
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, QTimer

if TYPE_CHECKING:
    from pedigreeview.window.opening import Opened

__all__ = ["LettingGo"]

_AGAIN = 1000
"""Milliseconds between looks for whether somebody still holds what is to go."""
_OURS = 2
"""References of a part that nobody else holds: the list here, and the asking for their number."""


class LettingGo(QObject):
    """Holds what is to go, until nobody else does; then frees it part by part."""

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._whole: deque[list[object]] = deque()
        """Former networks and finders, each in a list of its own, whoever may still ask them."""
        self._parts: list[object] = []
        self._timer = QTimer(self)
        self._timer.setSingleShot(True)
        self._timer.timeout.connect(self._turn)

    @property
    def waiting(self) -> int:
        """Parts and former books that are still held."""
        return len(self._whole) + len(self._parts)

    def take(self, former: Opened | None, now: Opened | None = None) -> None:
        """Hold a book that is shown no longer, and let go of it when nobody else holds it.

        now : the book that is shown instead, which may go on with parts of the former one
        """
        if former is None:
            return
        if now is None or former.net is not now.net:
            self._whole.append([former.net])
        if now is None or former.finder is not now.finder:
            self._whole.append([former.finder])
        self._timer.start(0)

    def _turn(self) -> None:
        if self._parts:
            self._parts.pop()
        elif self._whole:
            held = self._whole[0]
            if sys.getrefcount(held[0]) > _OURS:
                # One that is held for long must not keep the others.
                self._whole.rotate(-1)
                self._timer.start(_AGAIN)
                return
            self._whole.popleft()
            # The parts outlive what held them: each then goes by itself.
            self._parts = list(vars(held[0]).values())
            held.clear()
        if self.waiting:
            self._timer.start(0)
