"""When cycles are searched for: not while much is made, and not in what was set aside."""

from __future__ import annotations

import gc
import threading
import weakref
from collections.abc import Iterator

import pytest

from pedigreeview.book.memory import look_through, set_aside, uncollected


class Ring:
    """Holds itself, so that only the collector can end it."""

    def __init__(self) -> None:
        self.itself = self


@pytest.fixture(autouse=True)
def thawed() -> Iterator[None]:
    gc.unfreeze()
    yield
    gc.unfreeze()
    gc.enable()


def test_what_was_set_aside_is_searched_only_with_everything() -> None:
    ring = Ring()
    ended = weakref.ref(ring)
    set_aside()
    assert gc.get_freeze_count() > 0
    del ring
    gc.collect()
    assert ended() is not None
    look_through()
    assert ended() is None
    assert gc.get_freeze_count() > 0


def test_what_nobody_refers_to_is_freed_even_if_set_aside() -> None:
    plain = Ring()
    plain.itself = None  # type: ignore[assignment]
    ended = weakref.ref(plain)
    set_aside()
    del plain
    assert ended() is None


def test_what_comes_later_is_collected_as_ever() -> None:
    set_aside()
    ring = Ring()
    ended = weakref.ref(ring)
    del ring
    gc.collect()
    assert ended() is None


def test_what_lasts_is_set_aside_as_it_is_made() -> None:
    with uncollected(lasting=True):
        assert not gc.isenabled()
        made = [[number] for number in range(10_000)]
    assert gc.isenabled()
    assert gc.get_freeze_count() > len(made)


def test_it_comes_back_with_the_last_of_two_threads_and_stays_off_where_it_was_off() -> None:
    inside, out = threading.Event(), threading.Event()

    def other() -> None:
        with uncollected():
            inside.set()
            out.wait(10)

    thread = threading.Thread(target=other)
    with uncollected():
        thread.start()
        assert inside.wait(10)
    assert not gc.isenabled()
    out.set()
    thread.join()
    assert gc.isenabled()
    gc.disable()
    with uncollected(), uncollected():
        pass
    assert not gc.isenabled()


def test_it_comes_back_after_a_fault() -> None:
    with pytest.raises(KeyError), uncollected():
        raise KeyError
    assert gc.isenabled()
