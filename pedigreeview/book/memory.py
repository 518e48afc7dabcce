"""Memory while many records are made at once."""

from __future__ import annotations

import gc
from collections.abc import Iterator
from contextlib import contextmanager

__all__ = ["uncollected"]


@contextmanager
def uncollected() -> Iterator[None]:
    """Keep the collector of reference cycles off while millions of objects without any are made.

    It would look through all of them again and again; that costs more than reading them does.
    """
    was_on = gc.isenabled()
    gc.disable()
    try:
        yield
    finally:
        if was_on:
            gc.enable()
