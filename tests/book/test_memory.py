"""What was set aside is passed over by the collector of cycles, and searched once more later."""

from __future__ import annotations

import gc
import weakref
from collections.abc import Iterator

import pytest

from pedigreeview.book.memory import set_aside


class Ring:
    """Holds itself, so that only the collector can end it."""

    def __init__(self) -> None:
        self.itself = self


@pytest.fixture
def thawed() -> Iterator[None]:
    gc.unfreeze()
    yield
    gc.unfreeze()


def test_what_was_set_aside_is_not_searched_until_the_next_time(thawed: None) -> None:
    ring = Ring()
    ended = weakref.ref(ring)
    set_aside()
    assert gc.get_freeze_count() > 0
    del ring
    gc.collect()
    assert ended() is not None
    set_aside()
    assert ended() is None
    assert gc.get_freeze_count() > 0


def test_what_comes_later_is_collected_as_ever(thawed: None) -> None:
    set_aside()
    ring = Ring()
    ended = weakref.ref(ring)
    del ring
    gc.collect()
    assert ended() is None
