"""Writing files so that a failure harms nothing: written beside, then moved in place."""

from __future__ import annotations

import os
import secrets
from collections.abc import Iterator
from contextlib import contextmanager, suppress
from dataclasses import replace
from pathlib import Path

from pedigreeview.book.faults import Fault, Place

__all__ = ["beside", "replace_file", "write_fault"]


def write_fault(path: Path, error: OSError) -> Fault:
    """The fault for a file that the system does not let us write."""
    reason = error.strerror or str(error)
    return Fault(
        f"The file cannot be written: {reason}.",
        Place(file=str(path)),
        "Choose another place, or free the file or the disk, and try again.",
    )


def beside(path: Path) -> Path:
    """A name that is free in the folder of `path`, hidden, with the same suffix."""
    return path.with_name(f".{path.stem}-{secrets.token_hex(4)}{path.suffix}")


@contextmanager
def replace_file(path: str | Path) -> Iterator[Path]:
    """Hand out a path beside `path` to write to; move it in place when the block ends well.

    The suffix stays, so that writers which choose the format by it work.  When the block raises,
    what stood at `path` is untouched and nothing is left beside it.

    Raises
    ------
    Fault : the system refuses (no such folder, no permission, disk full)
    """
    target = Path(path)
    try:
        folder = target.is_dir()
    except OSError as error:
        # As of a name that is too long.
        raise write_fault(target, error) from error
    if folder:
        raise Fault(
            "There is a folder of this name.", Place(file=str(target)), "Choose another name."
        )
    written = beside(target)
    try:
        # Made here rather than by the writer, so that the person's umask holds and a folder that
        # is missing shows before the work begins.
        with open(written, "xb"):
            pass
        if target.exists():
            os.chmod(written, target.stat().st_mode & 0o777)
        yield written
        with open(written, "rb+") as stream:
            os.fsync(stream.fileno())
        os.replace(written, target)
    except OSError as error:
        raise write_fault(target, error) from error
    except Fault as fault:
        # A writer names the file it was given; the person knows only the one that was wanted.
        if Path(fault.where.file) != written:
            raise
        raise Fault(fault.what, replace(fault.where, file=str(target)), fault.todo) from fault
    finally:
        with suppress(OSError):
            written.unlink(missing_ok=True)
