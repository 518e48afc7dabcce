"""Faults of the book's file, one class for each thing that a caller does differently.

Each has `ways`: what can be done now, as words that the window turns into buttons.
"""

from __future__ import annotations

from pathlib import Path
from typing import ClassVar

from pedigreeview.book.faults import Fault, Place

__all__ = [
    "BookBusy",
    "BookDamaged",
    "BookExists",
    "BookGone",
    "BookNotWritable",
    "BookTooNew",
    "CannotUndo",
    "DiskFull",
    "FileFault",
    "NotABook",
    "StrangeBook",
    "UnfitBook",
]


class FileFault(Fault):
    """A fault of a book's file.

    Attributes
    ----------
    path : the file
    ways : any of 'again', 'elsewhere', 'read_only', 'save_copy', 'restore', 'rescue', 'update'
    """

    ways: ClassVar[tuple[str, ...]] = ()

    def __init__(self, path: Path | str, what: str, todo: str) -> None:
        self.path = Path(path)
        super().__init__(what, Place(file=str(path)), todo)


class NotABook(FileFault):
    """The file is none of ours."""

    ways = ("elsewhere",)

    def __init__(self, path: Path | str, what: str = "This file is no crossing book.") -> None:
        super().__init__(path, what, "Choose a file that ends in .pedbook.")


class BookTooNew(FileFault):
    """A newer version of the program made the file, and it cannot be written in."""

    ways = ("read_only", "save_copy", "update")

    def __init__(self, path: Path | str, version: int, known: int) -> None:
        self.version, self.known = version, known
        super().__init__(
            path,
            f"A newer version of this program keeps this book (form {version}; this version "
            f"knows {known}).",
            "Read it here, and get the newer version to write in it.",
        )


class BookNotWritable(FileFault):
    """The file or its folder cannot be written to."""

    ways = ("read_only", "save_copy")

    def __init__(self, path: Path | str, what: str = "This book can only be read.") -> None:
        super().__init__(
            path, what, "Save a copy elsewhere and write in that, or free the file and its folder."
        )


class BookBusy(FileFault):
    """Another window or program is writing, and did not end in time.

    holder : who, as far as the system tells; '' where it does not
    """

    ways = ("again", "read_only")

    def __init__(self, path: Path | str, holder: str = "") -> None:
        self.holder = holder
        super().__init__(
            path,
            f"The book is being written in by {holder or 'another window or program'}.",
            "Try again in a moment, or close the other one.",
        )


class DiskFull(FileFault):
    """There is no room for the edit; the book is as it was before."""

    ways = ("again", "save_copy")

    def __init__(self, path: Path | str) -> None:
        super().__init__(
            path,
            "The disk is full; nothing was changed.",
            "Make room on it and do it again, or save a copy on another disk.",
        )


class BookGone(FileFault):
    """The file, its folder or its drive is no longer there."""

    ways = ("again", "save_copy", "elsewhere")

    def __init__(self, path: Path | str, what: str = "The book is no longer there.") -> None:
        super().__init__(
            path, what, "Put the drive or folder back, or save a copy elsewhere and go on in that."
        )


class BookExists(FileFault):
    """Something stands already where a new book is to be made."""

    ways = ("elsewhere",)

    def __init__(self, path: Path | str) -> None:
        super().__init__(path, "There is a file or folder of this name.", "Choose another name.")


class BookDamaged(FileFault):
    """The file is a book, but parts of it cannot be read."""

    ways = ("restore", "rescue")

    def __init__(self, path: Path | str, detail: str = "") -> None:
        self.detail = detail
        super().__init__(
            path,
            f"The book is damaged{f' ({detail})' if detail else ''}.",
            "Go back to a backup, or rescue what can be read into a new book.",
        )


class StrangeBook(FileFault):
    """The file holds what this program never makes, such as code that would run."""

    ways = ("rescue", "elsewhere")

    def __init__(self, path: Path | str, holds: str) -> None:
        self.holds = holds
        super().__init__(
            path,
            f"The file holds {holds}, which this program does not make; it was not opened.",
            "If you trust its records, rescue them into a new book.",
        )


class UnfitBook(FileFault):
    """Records that cannot be kept: they break a rule that every book keeps."""

    ways = ()

    def __init__(self, path: Path | str, what: str) -> None:
        super().__init__(path, what, "Correct the records and do it again.")


class CannotUndo(FileFault):
    """The last step cannot be taken back or made again.

    why : 'changed' (its rows are other now), 'meanwhile' (another edit came between), 'unreadable'
    """

    ways = ()

    def __init__(self, path: Path | str, why: str, words: str) -> None:
        self.why, self.words = why, words
        said = {
            "changed": (
                f"'{words}' cannot be taken back or made again: its records are no longer as it "
                "left them.",
                "Change them by hand.",
            ),
            "meanwhile": (
                f"Another window has written in the book; its last step is now '{words}'.",
                "Look at what is new, then undo again if you still want to.",
            ),
            "unreadable": ("This step cannot be read.", "Change the records by hand."),
        }
        super().__init__(path, *said[why])
