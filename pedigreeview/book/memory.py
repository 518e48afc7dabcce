"""Memory while many records are made at once, and when reference cycles are searched for."""

from __future__ import annotations

import gc
import threading
from collections.abc import Iterator
from contextlib import contextmanager

__all__ = ["look_through", "set_aside", "uncollected"]

_lock = threading.Lock()
_inside = 0
_was_on = False


@contextmanager
def uncollected(*, lasting: bool = False) -> Iterator[None]:
    """Keep the collector of reference cycles off while millions of objects without any are made.

    It would look through all of them again and again; that costs more than reading them does, and
    holds every other thread up.  Threads may be inside at the same time: it comes back with the
    last of them.

    lasting : what was made is kept for long, such as the network of a book, and is set aside
    """
    global _inside, _was_on
    with _lock:
        if not _inside:
            _was_on = gc.isenabled()
            gc.disable()
        _inside += 1
    try:
        yield
    finally:
        if lasting:
            set_aside()
        with _lock:
            _inside -= 1
            if not _inside and _was_on:
                gc.enable()


def set_aside() -> None:
    """Let the collector pass over what is held now, as after a large book was opened.

    A search of all records of 100,000 plants for cycles takes a fifth of a second, whenever it
    comes.  What nobody refers to any more is freed all the same; a cycle that is set aside waits
    for `look_through`.
    """
    gc.freeze()


def look_through() -> None:
    """Search what was set aside for cycles once more, and set the rest aside again.

    At 100,000 plants that takes a fifth of a second.  To be called in the window's thread, since
    the search may end widgets, and when nobody looks at the window.
    """
    gc.unfreeze()
    gc.collect()
    gc.freeze()
