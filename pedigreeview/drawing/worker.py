"""Placing a whole book in a process of its own, which Cancel can end at once.

Run as a module it reads a pickled request on standard input and writes pickled answers on standard
output; both ends are this program.
"""

from __future__ import annotations

import os
import pickle
import queue
import struct
import subprocess
import sys
import threading
from collections.abc import Callable
from pathlib import Path
from typing import IO, TYPE_CHECKING, Any

from pedigreeview.book.faults import Fault
from pedigreeview.drawing.blocks import View

if TYPE_CHECKING:
    from pedigreeview.drawing.placing import Orientation, Placed

__all__ = ["Tick", "place_apart"]

Tick = Callable[[int, int, str], None]
"""Called with done, total and what is being done; may raise `Cancelled`."""

_PULSE = 0.1
_HEAD = struct.Struct("<Q")


def place_apart(
    view: View, *, orientation: Orientation = "down", tick: Tick | None = None
) -> Placed:
    """Places for a view, computed in another process.

    Raises
    ------
    Cancelled : the tick raised it; the process is ended
    Fault : the process ended without an answer
    """
    root = str(Path(__file__).resolve().parents[2])
    paths = [root, *filter(None, [os.environ.get("PYTHONPATH", "")])]
    child = subprocess.Popen(
        [sys.executable, "-m", "pedigreeview.drawing.worker"],
        stdin=subprocess.PIPE,
        stdout=subprocess.PIPE,
        stderr=subprocess.DEVNULL,
        env={**os.environ, "PYTHONPATH": os.pathsep.join(paths)},
    )
    assert child.stdin is not None
    assert child.stdout is not None
    answers: queue.SimpleQueue[Any] = queue.SimpleQueue()
    reader = threading.Thread(target=_read_answers, args=(child.stdout, answers), daemon=True)
    reader.start()
    blocks = len(view.blocks)
    try:
        try:
            _send(child.stdin, (view, orientation))
            child.stdin.close()
        except OSError:
            pass
        while True:
            if tick is not None:
                tick(0, blocks, "Laying out the picture")
            try:
                answer = answers.get(timeout=_PULSE)
            except queue.Empty:
                continue
            if answer is None:
                raise Fault(
                    "The picture could not be laid out: its process ended.",
                    None,
                    "Choose a focus, or fewer generations.",
                )
            if tick is not None:
                tick(blocks, blocks, "Laying out the picture")
            placed: Placed = answer
            return placed
    finally:
        if child.poll() is None:
            child.kill()
        child.wait()
        reader.join()
        child.stdout.close()
        if not child.stdin.closed:
            child.stdin.close()


def _send(stream: IO[bytes], value: object) -> None:
    packed = pickle.dumps(value, pickle.HIGHEST_PROTOCOL)
    stream.write(_HEAD.pack(len(packed)))
    stream.write(packed)
    stream.flush()


def _receive(stream: IO[bytes]) -> Any:
    head = stream.read(_HEAD.size)
    if len(head) < _HEAD.size:
        return None
    (size,) = _HEAD.unpack(head)
    packed = stream.read(size)
    return pickle.loads(packed) if len(packed) == size else None


def _read_answers(stream: IO[bytes], answers: queue.SimpleQueue[Any]) -> None:
    answers.put(_receive(stream))


def _serve() -> None:
    from pedigreeview.drawing.placing import place

    view, orientation = _receive(sys.stdin.buffer)
    _send(sys.stdout.buffer, place(view, orientation=orientation, dot_most=3000))


if __name__ == "__main__":
    _serve()
