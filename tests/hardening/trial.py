"""One input, read under guard: a book or a fault, in time, in memory, whole.

What a book must stand: the rules of the book hold, the network and its checks can be made, and now
and then it is written in every format.
"""

from __future__ import annotations

import io
import signal
import sys
import traceback
import zipfile
import zlib
from contextlib import suppress
from dataclasses import dataclass
from pathlib import Path
from random import Random
from types import FrameType
from typing import Any

from pedigreeview.book.book import Book
from pedigreeview.book.faults import Fault, Place
from pedigreeview.exchange import rules
from pedigreeview.exchange.archive_guard import MOST_UNPACKED
from pedigreeview.exchange.formats import FORMATS, lost, read_path_as, write_as
from pedigreeview.network import PedigreeNetwork
from tests.hardening.readers import READERS, Input, NotWhole, empty, lay_out

__all__ = ["Finding", "OutOfTime", "allowed_memory", "make", "try_one"]

SECONDS = 10
"""Seconds that one input may take."""

_SPARE = 100_000_000
_TIMES = 20
_MOST_PLANTS = 3_000
"""Plants up to which a book that was read is looked at in full."""


class OutOfTime(BaseException):
    """Raised by the alarm; no `Exception`, so that nothing takes it for damage of a file."""


@dataclass(frozen=True, slots=True)
class Finding:
    """What went wrong: the reader, the number of the input, its kind, and the words for it."""

    reader: str
    number: int
    kind: str
    words: str


def make(reader: str, number: int, room: Path) -> Input:
    """The input of a number; the same each time."""
    return READERS[reader].make(_source(reader, number), room)


def _source(reader: str, number: int) -> Random:
    return Random(f"{reader} {number}")


def unpacked_size(given: Input) -> int:
    """Bytes of an input when it is unpacked, as far as the cap lets it be unpacked."""
    total = 0
    for data in given.files.values():
        total += len(data)
        if not zipfile.is_zipfile(io.BytesIO(data)):
            continue
        try:
            with zipfile.ZipFile(io.BytesIO(data)) as held:
                total += sum(info.file_size for info in held.infolist())
        except (zipfile.BadZipFile, ValueError, OSError, NotImplementedError, zlib.error):
            continue
    return min(total, MOST_UNPACKED)


def allowed_memory(given: Input) -> int:
    """Bytes by which the memory may grow while the input is read."""
    return _SPARE + _TIMES * unpacked_size(given)


def _status(name: str) -> int:
    """A figure of /proc in bytes; 0 where the system has none."""
    try:
        with open("/proc/self/status", encoding="ascii", errors="replace") as stream:
            for line in stream:
                if line.startswith(name):
                    return int(line.split()[1]) * 1024
    except OSError:
        pass
    return 0


def _forget_peak() -> None:
    with suppress(OSError), open("/proc/self/clear_refs", "w", encoding="ascii") as stream:
        stream.write("5")


def _ring(_number: int, _frame: FrameType | None) -> None:
    raise OutOfTime


def try_one(reader: str, number: int, room: Path, given: Input | None = None) -> str | Finding:
    """Read one input; 'book', 'fault', 'other', or what went wrong.

    Parameters
    ----------
    room : an empty folder; it is empty again afterwards
    given : the input, where it is not made from the number
    """
    rng = Random(number)
    try:
        if given is None:
            given = make(reader, number, room)
        path = lay_out(given, room)
    except (OSError, ValueError):
        # A name that the file system does not take.
        empty(room)
        return "other"
    before = _status("VmRSS")
    _forget_peak()
    old = signal.signal(signal.SIGALRM, _ring)
    signal.alarm(SECONDS)
    try:
        found = READERS[reader].read(path, rng)
        grown = _status("VmHWM") - before
        if isinstance(found, Book):
            _stands(found, rng, room, of_ours="book" in reader or reader == "rescue")
        result: str | Finding = "book" if isinstance(found, Book) else "other"
    except Fault as fault:
        grown = _status("VmHWM") - before
        result = "fault"
        if not fault.what.strip() or not all(line.strip() for line in fault.lines()):
            result = Finding(reader, number, "a fault without words", repr(fault))
    except OutOfTime:
        grown, result = 0, Finding(reader, number, "out of time", _where())
    except NotWhole as error:
        grown, result = 0, Finding(reader, number, "not whole", f"{error} {_where()}")
    except (KeyboardInterrupt, SystemExit):
        raise
    except BaseException as error:
        words = f"{type(error).__name__}: {str(error)[:200]} {_where()}"
        grown, result = 0, Finding(reader, number, "crash", words)
    finally:
        signal.alarm(0)
        signal.signal(signal.SIGALRM, old)
        empty(room)
    if grown > _SPARE and isinstance(result, str) and grown > allowed_memory(given):
        size = unpacked_size(given)
        return Finding(reader, number, "memory", f"{grown:,} bytes for {size:,} bytes unpacked")
    return result


def _where() -> str:
    frames = traceback.extract_tb(sys.exc_info()[2])[-4:]
    return " < ".join(f"{Path(f.filename).name}:{f.lineno} {f.name}" for f in reversed(frames))


def _stands(book: Book, rng: Random, room: Path, *, of_ours: bool) -> None:
    """The book holds by its rules, and everything that follows from it can be worked out."""
    if len(book.plants) > _MOST_PLANTS:
        return
    if not of_ours:
        broken = rules.faults(book, lambda record, column: Place(column=column))
        if broken:
            raise NotWhole(f"the book breaks a rule: {broken[0].what}")
    net = PedigreeNetwork.from_records(book)
    for problem in net.problems():
        assert problem.message
    sound = [code for code in net.codes if code not in net.withheld]
    for code in sound[:40]:
        held: Any = net.inbreeding(code)
        assert -1e-9 <= held <= 1 + 1e-9, f"F of {code!r} is {held}"
    if rng.random() < 0.04:
        _writes(net, room, of_ours=of_ours)


def _writes(net: PedigreeNetwork, room: Path, *, of_ours: bool) -> None:
    """Every format writes it or says why not; what it wrote is read again."""
    for name, held in FORMATS.items():
        if not held.writes:
            continue
        lost(net.book, held)
        target = room / f"out{(held.endings or ('',))[0]}"
        try:
            write_as(net, target, held)
        except Fault:
            continue
        if not held.reads or of_ours:
            # A book's own file may hold, unmended, what the rules of other files refuse.
            continue
        try:
            back = read_path_as(target, held)
        except Fault as fault:
            lines = fault.lines()
            raise NotWhole(f"{name} is not read again: {lines[-1][:300]}") from None
        whole = name not in ("passport",)
        if whole and set(back.plants) != set(net.book.plants):
            raise NotWhole(f"{name} gives other plants")
