"""What a `datapackage.json` lists: tables to read, and files and texts that only go along.

Only plain file names inside the folder are followed.  A resource that is no table is never opened;
it is kept, and copied when the book is written elsewhere.
"""

from __future__ import annotations

import json
import re
from dataclasses import dataclass, field
from pathlib import Path
from typing import Any

from pedigreeview.book.book import Book, BookSettings
from pedigreeview.book.faults import Fault, Place
from pedigreeview.book.records import TABLES
from pedigreeview.exchange.text_files import decode, read_bytes

__all__ = [
    "DESCRIPTOR",
    "Listing",
    "Passenger",
    "left_behind",
    "listing",
    "package_name",
    "passengers",
    "read_descriptor",
    "without_our_names",
]

DESCRIPTOR = "datapackage.json"
_PLAIN_NAME = re.compile(r"[^/\\:\x00-\x1f\ud800-\udfff]+\Z")
_NO_PATH = re.compile("[\x00-\x1f\ud800-\udfff]")
_LONGEST_NAME = 255
"""Bytes of the longest name that the usual file systems take; of a longer one none can be asked."""
_TABULAR = (".csv", ".tsv", ".tab", ".txt")


def read_descriptor(folder: Path) -> dict[str, Any]:
    """The descriptor of a folder.

    Raises
    ------
    Fault : there is none that can be read
    """
    path = folder / DESCRIPTOR
    if folder.is_dir() and not path.exists():
        raise Fault(
            f"The folder has no {DESCRIPTOR}, so it is no Data Package.",
            Place(file=str(folder)),
            "Choose the folder of a book, or a plant table inside it.",
        )
    text, _ = decode(read_bytes(path), str(path))
    try:
        found = json.loads(text)
        # What is nested too deeply to be written back is not taken in either.
        json.dumps(found, indent=2)
    except ValueError as error:
        row = error.lineno if isinstance(error, json.JSONDecodeError) else None
        raise Fault(
            "The file is no JSON.", Place(file=str(path), row=row), "Mend it or fetch it anew."
        ) from None
    except RecursionError:
        raise Fault(
            "The file is nested too deeply.", Place(file=str(path)), "Fetch it anew."
        ) from None
    if not isinstance(found, dict) or not isinstance(found.get("resources"), list):
        raise Fault(
            "The file has no list 'resources', so it describes no Data Package.",
            Place(file=str(path)),
            "Mend it or fetch it anew.",
        )
    return found


def package_name(settings: BookSettings) -> str:
    """The name of a package made by this program."""
    return re.sub(r"[^a-z0-9]+", "-", settings.name.casefold()).strip("-") or "crossing-book"


def without_our_names(descriptor: dict[str, Any], settings: BookSettings) -> dict[str, Any]:
    """A descriptor without a name and title that only repeat the book's, which may change."""
    ours = {"name": package_name(settings), "title": settings.name}
    return {key: held for key, held in descriptor.items() if ours.get(key) != held}


# What is listed ----------------------------------------------------------------------------------


@dataclass(slots=True)
class Listing:
    """Path of every table to read by its name, and what is to be said of the list."""

    tables: dict[str, Path] = field(default_factory=dict)
    faults: list[Fault] = field(default_factory=list)
    remarks: list[str] = field(default_factory=list)


def _is_ours(name: Any) -> bool:
    return isinstance(name, str) and (name in TABLES or name == "book")


def _paths(entry: dict[str, Any]) -> list[str]:
    """The paths of a resource; none where it names no file."""
    held = entry.get("path")
    listed: list[Any] = held if isinstance(held, list) else [held]
    paths = [path for path in listed if isinstance(path, str) and path]
    return paths if len(paths) == len(listed) else []


def _table_name(path: str) -> str:
    """A table that is not ours goes by its file's name, which is what is written back."""
    return path[:-4] if path.endswith(".csv") and "." not in path[:-4] else path


def _is_plain(path: str) -> bool:
    return (
        bool(_PLAIN_NAME.match(path))
        and path not in (".", "..")
        and len(path.encode()) <= _LONGEST_NAME
    )


def _lies_in(path: Path, root: Path) -> bool:
    try:
        return path.resolve().parent == root
    except (OSError, RuntimeError):
        # A link that leads round in a circle.
        return False


def listing(folder: Path, descriptor: dict[str, Any]) -> Listing:
    """Sort what a descriptor lists into tables, faults and what only goes along."""
    found = Listing()
    for index, resource in enumerate(descriptor["resources"], start=1):
        _list(found, folder, index, resource if isinstance(resource, dict) else {})
    return found


def _list(found: Listing, folder: Path, index: int, entry: dict[str, Any]) -> None:
    def fault(what: str, todo: str) -> None:
        found.faults.append(Fault(what, Place(str(folder / DESCRIPTOR)), todo))

    name, paths = entry.get("name"), _paths(entry)
    ours = _is_ours(name)
    if not ours and not paths and "data" in entry:
        found.remarks.append(f"The data of resource {index} are kept as they are.")
        return
    if not paths or (ours and len(paths) > 1):
        fault(f"Resource {index} names no file.", "Give it a 'path' such as plants.csv.")
        return
    path = paths[0]
    bad = next((one for one in paths if _NO_PATH.search(one) or (ours and not _is_plain(one))), "")
    if bad:
        fault(
            f"The path {bad!r} is no plain file name, and nothing outside the folder is read.",
            "Put the file into the folder and write its name alone.",
        )
        return
    held = folder / path
    if ours and not _lies_in(held, folder.resolve()):
        fault(
            f"The file {path!r} is a link that leads out of the folder.",
            "Put the file itself into the folder.",
        )
        return
    if not ours:
        name = _table_name(path)
        if _is_ours(name) and _is_plain(path):
            fault(f"The file {path!r} is listed under another name.", f"Name it {name!r}.")
            return
        if remark := _goes_along(folder, paths):
            found.remarks.append(remark)
            return
    if name in found.tables:
        fault(f"The table {name!r} is listed twice.", "Delete one.")
        return
    found.tables[str(name)] = held


def _goes_along(folder: Path, paths: list[str]) -> str:
    """What is said of a resource that is no table to be read; '' of one that is."""
    shown = ", ".join(repr(path) for path in paths)
    for path in paths:
        if (
            not _is_plain(path)
            or path == DESCRIPTOR
            or not _lies_in(folder / path, folder.resolve())
        ):
            return f"The resource {shown} is no plain file of the folder and was not read."
        if not (folder / path).is_file():
            return f"The resource {shown} is listed, but the file is not there."
    if len(paths) == 1 and Path(paths[0]).suffix.lower() in _TABULAR:
        return ""
    return f"The resource {shown} is no table and is kept as it is."


# What goes along ---------------------------------------------------------------------------------


@dataclass(slots=True)
class Passenger:
    """A resource that is no table of the book, and its files; none where it needs none."""

    entry: dict[str, Any]
    files: list[Path]


def _source(book: Book) -> Path | None:
    return book.path if book.path is not None and book.path.is_dir() else None


def _further(book: Book) -> list[dict[str, Any]]:
    """Entries of the descriptor that are no table of the book."""
    entries = [item for item in book.descriptor.get("resources", []) if isinstance(item, dict)]
    return [
        entry
        for entry in entries
        if not _is_ours(entry.get("name"))
        and not any(_table_name(path) in book.unknown_tables for path in _paths(entry)[:1])
        and (_paths(entry) or "data" in entry)
    ]


def _passenger(book: Book, entry: dict[str, Any]) -> Passenger | None:
    """What of a resource goes along to another folder; None where it cannot."""
    paths, folder = _paths(entry), _source(book)
    if not paths or all("://" in path for path in paths):
        return Passenger(entry, [])
    if folder is None:
        return None
    if all(_is_photo(book, path) for path in paths):
        return Passenger(entry, [])
    files = [folder / path for path in paths]
    if all(
        _is_plain(path) and path != DESCRIPTOR and _lies_in(file, folder.resolve())
        for path, file in zip(paths, files, strict=True)
    ) and all(file.is_file() for file in files):
        return Passenger(entry, files)
    return None


def _is_photo(book: Book, path: str) -> bool:
    place, _, name = path.rpartition("/")
    return place == "photos" and name in book.photos


def passengers(book: Book, folder: Path) -> list[Passenger]:
    """The resources that go along when a book is written to a folder.

    In the folder that the book was read from all stay as they are.
    """
    source = _source(book)
    if source is not None and source.resolve() == folder.resolve():
        return [Passenger(entry, []) for entry in _further(book)]
    found = (_passenger(book, entry) for entry in _further(book))
    return [held for held in found if held is not None]


def left_behind(book: Book) -> list[str]:
    """What cannot go along to another folder, one sentence each."""
    said = [
        f"The resource {', '.join(map(repr, _paths(entry)))}, which is no file inside the folder."
        for entry in _further(book)
        if _passenger(book, entry) is None
    ]
    said += [
        f"The file of the photo {name!r}, which is no plain file name."
        for name in book.photos
        if not _is_plain(name)
    ]
    return said
