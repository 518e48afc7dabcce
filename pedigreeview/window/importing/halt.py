"""Stop while something is being brought in: in time, or told that it comes too late."""

from __future__ import annotations

import threading

from pedigreeview.book.faults import Fault

__all__ = ["Halt"]


class Halt:
    """One piece of work that the person may stop until it is past the point of writing.

    The window's thread calls `stop`; the thread at work calls `tick` now and then, and `pass_on`
    once, as the last thing before what it did counts.
    """

    def __init__(self) -> None:
        self._lock = threading.Lock()
        self._stopped = False
        self._past = False

    @property
    def stopped(self) -> bool:
        """Whether Stop came in time."""
        return self._stopped

    def stop(self) -> bool:
        """Ask the work to end; False where it comes too late."""
        with self._lock:
            self._stopped = self._stopped or not self._past
            return self._stopped

    def tick(self, *_progress: object) -> None:
        """Go no further once the person pressed Stop; what was changed is then taken back.

        Raises
        ------
        Fault : the work was stopped.  An edit that is refused must answer, so it is no `Cancelled`
        """
        if self._stopped:
            raise Fault("Stopped; nothing has come in.")

    def pass_on(self) -> None:
        """Look a last time; from here on Stop comes too late.

        Raises
        ------
        Fault : the work was stopped
        """
        with self._lock:
            self.tick()
            self._past = True
