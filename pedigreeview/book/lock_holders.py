"""Who holds a file locked, as far as the system tells (Linux does, in /proc/locks)."""

from __future__ import annotations

import os
from contextlib import suppress
from pathlib import Path

__all__ = ["holder_of"]

_LOCKS = Path("/proc/locks")


def holder_of(path: Path, locks: Path = _LOCKS) -> str:
    """The program that has locked a file for writing, such as 'python (process 4711)'; '' unknown.

    locks : the system's list; a line is 'number: POSIX ADVISORY WRITE pid major:minor:inode a b'
    """
    with suppress(OSError, ValueError, IndexError):
        inode = str(path.stat().st_ino)
        for line in locks.read_text().splitlines():
            words = line.split()
            if words[1] == "->":
                # Those only wait.
                continue
            if words[3] == "WRITE" and words[5].rpartition(":")[2] == inode:
                return _named(int(words[4]))
    return ""


def _named(process: int) -> str:
    name = ""
    with suppress(OSError):
        name = Path(f"/proc/{process}/comm").read_text().strip()
    if process == os.getpid():
        return "another window of this program"
    return f"{name or 'a program'} (process {process})"
