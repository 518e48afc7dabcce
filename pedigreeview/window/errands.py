"""Work off the window's thread: a question goes out with a number, the answer comes back queued.

Each kind of question has at most one answer awaited: a newer question of the same kind, or Cancel,
makes the older answer late, and late answers are dropped.  Questions of one lane run one after the
other; a long one (the paths of a pair, a picture to save) keeps to a lane of its own, so that cards
never wait for it.  Edits ('write:1', 'write:2' ...) each have a kind of their own and one lane:
none is ever dropped, and one thread alone writes.
"""

from __future__ import annotations

import itertools
import threading
import traceback
from collections.abc import Callable
from dataclasses import dataclass
from typing import Any

from PySide6.QtCore import QObject, Qt, QThreadPool, Signal, Slot

from pedigreeview.book.faults import Cancelled, Fault

__all__ = ["Errands", "OwnFault"]


class OwnFault(Fault):
    """A fault of the program itself; `details` is for the person to copy and send.

    kept : whether an edit was on disk when it happened, so that only what came after it is missing
    """

    def __init__(self, error: BaseException, *, kept: bool = False) -> None:
        self.details = "".join(traceback.format_exception(error))
        self.kept = kept
        if kept:
            super().__init__(
                "What you recorded is written in the book and kept; the program made a mistake of "
                "its own while showing it.",
                None,
                "Copy the details and report them; open the book again to see it as it is.",
            )
            return
        super().__init__(
            "The program made a mistake of its own; your files were not touched.",
            None,
            "Copy the details and report them; you can go on working.",
        )


_LANES = {
    "open": "open",
    "paths": "paths",
    "progeny_why": "paths",
    "why": "paths",
    "chances": "paths",
    "group": "paths",
    "picture": "picture",
    "beside": "picture",
    "map": "draw",
    "whole": "draw",
    "preview": "draw",
    "save": "draw",
    "write": "write",
}
_WRITE = "write"
_PATIENCE = 2000
"""Milliseconds that closing waits for work that cannot be cancelled."""
_PATIENCE_WRITING = 60_000
"""The same for what is being written."""


def _writes(kind: str) -> bool:
    return kind.partition(":")[0] == _WRITE


@dataclass(slots=True)
class _Awaited:
    kind: str
    on_answer: Callable[[Any], None]
    on_fault: Callable[[Fault], None] | None


class Errands(QObject):
    """Runs plain functions in a thread of its own and brings their answers to the window."""

    _came_back = Signal(int, object, object)
    idle = Signal()
    """Nothing is awaited any more."""
    faulted = Signal(object)
    """A fault that the asker left to the window."""

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._numbers = itertools.count(1)
        self._awaited: dict[int, _Awaited] = {}
        self._here = threading.local()
        self._pools: dict[str, QThreadPool] = {}
        self._came_back.connect(self._deliver, Qt.ConnectionType.QueuedConnection)

    def ask(
        self,
        kind: str,
        function: Callable[[], Any],
        on_answer: Callable[[Any], None],
        on_fault: Callable[[Fault], None] | None = None,
    ) -> int:
        """Send out a question; a former one of the same kind is no longer awaited."""
        self.drop(kind)
        number = next(self._numbers)
        self._awaited[number] = _Awaited(kind, on_answer, on_fault)

        def run() -> None:
            if number not in self._awaited:
                return
            self._here.number = number
            answer, fault = None, None
            try:
                answer = function()
            except Cancelled:
                return
            except Fault as error:
                fault = error
            except Exception as error:
                fault = OwnFault(error)
            self._came_back.emit(number, answer, fault)

        self._lane(kind).start(run)
        return number

    def _lane(self, kind: str) -> QThreadPool:
        lane = _LANES.get(kind.partition(":")[0], "ask")
        if lane not in self._pools:
            pool = QThreadPool(self)
            pool.setMaxThreadCount(1)
            self._pools[lane] = pool
        return self._pools[lane]

    def tick(self, *_progress: object) -> None:
        """For the function under way to call now and then.

        Raises
        ------
        Cancelled : its answer is no longer awaited
        """
        if getattr(self._here, "number", 0) not in self._awaited:
            raise Cancelled

    def drop(self, kind: str) -> None:
        """Await the answer of this kind no longer."""
        for number in [key for key, held in self._awaited.items() if held.kind == kind]:
            del self._awaited[number]

    def awaits(self, kind: str = "") -> bool:
        """Whether an answer (of this kind, with or without a name behind ':') is still to come."""
        kinds = [held.kind for held in list(self._awaited.values())]
        return any(not kind or kind in (held, held.partition(":")[0]) for held in kinds)

    def close(self) -> bool:
        """Drop every question and wait for the threads; False if one is still at work after that.

        What was given to be written is written first: a person who records and closes at once
        means both.
        """
        for number in [key for key, held in self._awaited.items() if not _writes(held.kind)]:
            del self._awaited[number]
        ended = []
        for lane, pool in self._pools.items():
            if lane != _WRITE:
                pool.clear()
            ended.append(pool.waitForDone(_PATIENCE_WRITING if lane == _WRITE else _PATIENCE))
        self._awaited.clear()
        return all(ended)

    @Slot(int, object, object)
    def _deliver(self, number: int, answer: Any, fault: Fault | None) -> None:
        held = self._awaited.pop(number, None)
        if held is not None:
            if fault is None:
                held.on_answer(answer)
            elif held.on_fault is not None:
                held.on_fault(fault)
            else:
                self.faulted.emit(fault)
        if not self._awaited:
            self.idle.emit()
