"""The book's own file as one more format: read like any other, and to a folder and back, lossless.

What a folder holds beside its tables (photos, and other files that its descriptor lists) goes into
the file, and out of it again.
"""

from __future__ import annotations

import shutil
import tempfile
from collections.abc import Iterator
from contextlib import closing, contextmanager
from dataclasses import replace as replaced
from pathlib import Path, PurePosixPath

from pedigreeview.book.book import Book
from pedigreeview.book.book_file import SUFFIX, BookFile
from pedigreeview.book.connections import as_faults, connect
from pedigreeview.book.reading_rows import Tick
from pedigreeview.book.schema import VERSION
from pedigreeview.book.strangers import version_of
from pedigreeview.exchange import data_package
from pedigreeview.exchange.package_resources import left_behind, passengers

__all__ = ["SUFFIX", "is_pedbook", "lost", "read", "unpacked", "write", "write_folder"]


def is_pedbook(path: str | Path) -> bool:
    """Whether a path has the ending of a book's own file."""
    return Path(path).suffix.lower() == SUFFIX


def read(
    path: str | Path,
    *,
    founders_as: str | None = None,
    fixation: float | None = None,
    tick: Tick | None = None,
) -> Book:
    """Read a book's file without changing anything on the disk.

    Parameters
    ----------
    founders_as, fixation : settings in force for this reading, over the book's own
    tick : called now and then; may raise `Cancelled`

    Raises
    ------
    FileFault : it cannot be read
    """
    with BookFile.open(path, read_only=True, backups=False, tick=tick) as file:
        book = file.book
    settings = book.settings
    if founders_as:
        settings = replaced(settings, founders_as=founders_as)
    if fixation is not None:
        settings = replaced(settings, variety_fixation=fixation)
    return replaced(book, settings=settings)


def lost(book: Book) -> list[str]:
    """What of a book does not go into its own file, one sentence each."""
    return left_behind(book) if book.path is not None and book.path.is_dir() else []


def write(
    book: Book, path: str | Path, *, replace: bool = False, tick: Tick | None = None
) -> BookFile:
    """Make a book's file, with the photos and files that lie in the folder it was read from.

    Returns
    -------
    the file, open

    Raises
    ------
    FileFault : it cannot be written
    """
    path = Path(path)
    files = {file.name: file for held in passengers(book, path) for file in held.files}
    if not _is_older(book):
        return BookFile.create(path, book, files=files, replace=replace, tick=tick)
    # What a file of an older version holds lies there in another form than it is copied from.
    with unpacked(book) as ready:
        room = ready.path or path
        files |= {name: room / name for name in book.files if (room / name).is_file()}
        return BookFile.create(
            path, replaced(book, path=None), files=files, replace=replace, tick=tick
        )


def _is_older(book: Book) -> bool:
    """Whether the book was read from a file of an older version that holds files."""
    if not book.files or book.path is None or not book.path.is_file():
        return False
    with closing(connect(book.path, write=False)) as connection, as_faults(book.path):
        return version_of(connection, book.path) < VERSION


@contextmanager
def unpacked(book: Book) -> Iterator[Book]:
    """The book with the files that its own file holds laid out in a folder, while the block runs.

    A book that holds none is given as it is.
    """
    if not book.files or book.path is None or not book.path.is_file():
        yield book
        return
    room = Path(tempfile.mkdtemp())
    try:
        with BookFile.open(book.path, read_only=True, backups=False) as file:
            for path in book.files:
                parts = PurePosixPath(path).parts
                plain = all(Path(part).name == part for part in parts) and "\\" not in path
                if not plain or parts[:-1] not in ((), ("photos",)):
                    continue
                (room / Path(*parts)).parent.mkdir(exist_ok=True)
                (room / Path(*parts)).write_bytes(file.file(path))
        yield replaced(book, path=room)
    finally:
        shutil.rmtree(room, ignore_errors=True)


def write_folder(book: Book, folder: str | Path) -> None:
    """Write any book as a Data Package folder, with the photos and files that its own file holds.

    Raises
    ------
    Fault : it cannot be written
    """
    with unpacked(book) as ready:
        data_package.write(ready, folder)
