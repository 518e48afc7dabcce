"""What long work calls now and then, so that it can be stopped."""

from __future__ import annotations

from collections.abc import Callable

__all__ = ["Tick", "no_tick"]

Tick = Callable[[], None]
"""Called now and then in long work; may raise `Cancelled`."""


def no_tick() -> None:
    """For work that nobody waits for."""
