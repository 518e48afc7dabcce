"""What is made in slices: between two of them the window answers to keys and mouse.

A page, a panel or a dialog puts its frame up at once and goes through the rest by a `Slices`.
Whoever asks for what is not there yet calls `finish` and gets it whole.
"""

from __future__ import annotations

from collections.abc import Iterator

from PySide6.QtCore import QObject, QTimer, Signal

__all__ = ["Slices"]

_BETWEEN = 1
"""Milliseconds between two slices: not 0, what came of one is to be painted before the next."""


class Slices(QObject):
    """Takes the steps one at a time, each in a turn of its own of the event loop.

    Parameters
    ----------
    steps : makes one slice at each step
    parent : what is made; the slices end with it
    """

    done = Signal()
    """The last slice is there; not told where they were stopped."""

    def __init__(self, steps: Iterator[None], parent: QObject) -> None:
        super().__init__(parent)
        self._steps: Iterator[None] | None = steps
        self._inside = False
        QTimer.singleShot(_BETWEEN, self, self._go_on)

    @property
    def making(self) -> bool:
        """Whether slices are still to come."""
        return self._steps is not None

    def finish(self) -> None:
        """Take all steps that are left; within a step, which may ask for what it makes, none."""
        while self._steps is not None and not self._inside:
            self._step()

    def stop(self) -> None:
        """Make no more: something else is wanted in its place."""
        self._steps = None

    def _go_on(self) -> None:
        self._step()
        if self._steps is not None:
            QTimer.singleShot(_BETWEEN, self, self._go_on)

    def _step(self) -> None:
        steps = self._steps
        if steps is None or self._inside:
            return
        self._inside, whole = True, False
        try:
            next(steps)
        except StopIteration:
            self._steps, whole = None, True
        except BaseException:
            self._steps = None
            raise
        finally:
            self._inside = False
        if whole:
            self.done.emit()
