"""Kills a process that edits a book, at random moments, and looks whether anything was lost.

Run `python tests/book/kill_run.py --kills 1000`.  The process adds, changes, undoes and removes,
and tells each edit over a pipe when it has ended.  After each kill the file must be sound, and hold
every edit that was told; the one that was under way may be there or not, but never in part.
"""

from __future__ import annotations

import argparse
import os
import random
import signal
import subprocess
import sys
import tempfile
import time
from pathlib import Path

ROOT = Path(__file__).resolve().parent.parent.parent
sys.path.insert(0, str(ROOT))

from pedigreeview.book.book import Book  # noqa: E402
from pedigreeview.book.book_file import BookFile  # noqa: E402
from pedigreeview.book.records import Plant, Score, Trait  # noqa: E402
from tests.book.garden import integrity  # noqa: E402


def edit_on(path: Path) -> None:
    """Edit without end; what is told is `settings.name`, a number that grows with each edit."""
    with BookFile.open(path, backups=False) as file:
        while True:
            number = int(file.book.settings.name or 0) + 1
            with file.edit(f"{number}") as edit:
                edit.set_settings(name=str(number))
                if number % 5 == 4:
                    for score in edit.book.scores[:3]:
                        edit.remove(score)
                else:
                    code = f"P{number}"
                    edit.add(Plant(code, note="long " * 50))
                    for value in range(3):
                        edit.add(Score(code, "t", value=str(value)))
            print(number, flush=True)
            if number % 7 == 0:
                file.undo()
                # Undone: the number is one lower again.
                print(number - 1, flush=True)
                file.redo()
                print(number, flush=True)


def check(path: Path, told: int) -> int:
    """The number in the book after a kill.

    Raises
    ------
    AssertionError : an edit that was told is lost, or one is there in part
    """
    said = integrity(path)
    assert said == "ok", said
    with BookFile.open(path, backups=False) as file:
        found = int(file.book.settings.name or 0)
        # The next one may have been on disk already, but not told; undo goes back by one.
        assert found in (told - 1, told, told + 1), (found, told)
        if found == told - 1:
            assert told % 7 == 0, "an edit that was told is lost"
        present = {int(code[1:]) for code in file.book.plants}
        assert present == {n for n in range(1, found + 1) if n % 5 != 4}
        scores = 0
        for number in range(1, found + 1):
            scores = max(scores - 3, 0) if number % 5 == 4 else scores + 3
        assert len(file.book.scores) == scores
    assert os.listdir(path.parent) == [path.name]
    return found


def run(kills: int, seed: int, most: float = 0.1) -> tuple[int, int]:
    """Kill so many times.

    Parameters
    ----------
    most : seconds that the process edits at most before it is killed

    Returns
    -------
    edits that were told, and kills that left an edit half done for the next opening to take back
    """
    chance = random.Random(seed)
    edits = halves = 0
    with tempfile.TemporaryDirectory() as room:
        path = Path(room) / "k.pedbook"
        book = Book()
        book.add(Trait("t", "measure"))
        BookFile.create(path, book).close()
        found = 0
        for kill in range(kills):
            process = subprocess.Popen(
                [sys.executable, __file__, "--edit", str(path)], stdout=subprocess.PIPE, text=True
            )
            assert process.stdout is not None
            # It has begun, so that the time until the kill is spent editing.
            lines = [process.stdout.readline()]
            time.sleep(chance.uniform(0, most))
            os.kill(process.pid, signal.SIGKILL)
            lines += process.stdout.readlines()
            process.stdout.close()
            process.wait()
            told = [int(line) for line in lines if line.endswith("\n")]
            assert told, "the process did not begin"
            edits += len(told)
            halves += path.with_name(f"{path.name}-journal").exists()
            found = check(path, told[-1])
            if found > 400:
                path.unlink()
                BookFile.create(path, book).close()
                found = 0
            if sys.stderr.isatty():
                print(f"\r{kill + 1} of {kills}", end="", file=sys.stderr)
    return edits, halves


if __name__ == "__main__":
    words = argparse.ArgumentParser(description=__doc__)
    words.add_argument("--kills", type=int, default=1000)
    words.add_argument("--seed", type=int, default=1)
    words.add_argument("--edit", type=Path, help=argparse.SUPPRESS)
    chosen = words.parse_args()
    if chosen.edit:
        edit_on(chosen.edit)
    done, left = run(chosen.kills, chosen.seed)
    print(f"{chosen.kills} kills, {done} edits told, {left} left half done: nothing was lost.")
