"""Memory while many records are made at once."""

from __future__ import annotations

import gc
from collections.abc import Iterator
from contextlib import contextmanager

__all__ = ["set_aside", "uncollected"]


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


def set_aside() -> None:
    """Let the collector pass over what is held now, as after a large book was opened.

    A search of all records of 100,000 plants for cycles takes a fifth of a second, whenever it
    comes.  What was set aside before, such as an earlier book, is searched once more first.  To be
    called in the window's thread, since the search may end widgets.
    """
    if gc.get_freeze_count():
        gc.unfreeze()
        gc.collect()
    gc.freeze()
