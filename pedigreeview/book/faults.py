"""Faults of the world or of the data, each one sentence for a person.

A `Fault` is raised for what the person can mend: a file that is missing, a cell that cannot be
read.  Anything else that is raised is a bug of the program and is reported as one.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from pathlib import Path

__all__ = ["Cancelled", "Fault", "FileFaults", "Place"]


@dataclass(frozen=True, slots=True)
class Place:
    """Where a fault lies: any of file, row (1-based line of the file), column and plant."""

    file: str = ""
    row: int | None = None
    column: str = ""
    plant: str = ""

    def __str__(self) -> str:
        parts = []
        if self.file:
            parts.append(Path(self.file).name)
        if self.row is not None:
            parts.append(f"row {self.row}")
        if self.column:
            parts.append(f"column {self.column}")
        if self.plant:
            parts.append(f"plant {self.plant}")
        return ", ".join(parts)


class Fault(Exception):
    """Something the person can mend.

    Parameters
    ----------
    what : one sentence that says what is wrong
    where : the place, or None
    todo : one sentence that says what to do about it
    """

    def __init__(self, what: str, where: Place | None = None, todo: str = "") -> None:
        self.what = what
        self.where = where or Place()
        self.todo = todo
        super().__init__(self.sentence())

    def sentence(self) -> str:
        """The fault as one line: place, what is wrong, what to do."""
        place = str(self.where)
        line = f"{place}: {self.what}" if place else self.what
        return f"{line} {self.todo}" if self.todo else line

    def lines(self) -> list[str]:
        """The fault as lines to print, one a fault."""
        return [self.sentence()]


class FileFaults(Fault):
    """Everything that is wrong with one file, found in one reading; nothing of it was taken in."""

    def __init__(self, file: str, faults: Sequence[Fault]) -> None:
        self.faults = list(faults)
        count = len(self.faults)
        super().__init__(
            f"{count} {'fault' if count == 1 else 'faults'}; nothing was taken in.",
            Place(file=file),
            "Mend what is listed and open the file again.",
        )

    def lines(self) -> list[str]:
        """The summary sentence, then every fault on a line of its own."""
        return [self.sentence(), *(fault.sentence() for fault in self.faults)]


class Cancelled(Exception):
    """The person pressed Cancel; no error, nothing is shown."""
