"""What can still be read of a damaged book, put into a new one.

The damaged file is never touched: all is done on a copy.  Rows are read from both ends of each
table and singly in between, so that a bad page costs only the rows on it.  What does not fit is
left out or cleared, and each loss is said in a sentence.
"""

from __future__ import annotations

import shutil
import sqlite3
import tempfile
from collections import Counter
from collections.abc import Iterator
from contextlib import closing, suppress
from dataclasses import dataclass, field, fields
from pathlib import Path
from typing import Any

from pedigreeview.book.book import Book, BookSettings
from pedigreeview.book.book_file import BookFile
from pedigreeview.book.cell_checks import check_cell
from pedigreeview.book.connections import MAGIC, as_faults, close, connect
from pedigreeview.book.edit_faults import BadCell
from pedigreeview.book.faults import Fault
from pedigreeview.book.file_faults import BookDamaged, FileFault, NotABook
from pedigreeview.book.making_files import read_content
from pedigreeview.book.number_ranges import SETTING_RANGES, fits_range
from pedigreeview.book.reading_rows import Tick, no_tick, read_extra
from pedigreeview.book.records import SELF, TABLES, Cross, Plant, Record
from pedigreeview.book.references import ONE, names, references
from pedigreeview.book.row_images import SETTINGS, key_of, table_columns
from pedigreeview.book.schema import quoted

__all__ = ["Rescued", "rescue"]

_SINGLY = 200_000
"""Rows of a gap that are asked for one by one."""
_PAGE = 4096
"""Bytes of a page of our files."""
_PADDED = 100
"""A file cut short is filled up to at most so many times its size."""
_STAND_INS: dict[str, Any] = {"plants": Plant, "crosses": Cross}
"""Records that are put in, bare, where others name one that was lost."""


@dataclass(slots=True)
class Rescued:
    """What came over.

    Attributes
    ----------
    path : the new book
    came : number of records of each table
    lost : what did not come over, or not as it was, one sentence each; empty: all came over
    """

    path: Path
    came: dict[str, int] = field(default_factory=dict)
    lost: list[str] = field(default_factory=list)

    def lines(self) -> list[str]:
        """All of it as lines to print."""
        said = [
            f"{count} {ONE[table] if count == 1 else table.replace('_', ' ')}"
            for table, count in self.came.items()
        ]
        return [f"Came over: {', '.join(said) or 'nothing'}.", *self.lost]


def rescue(path: str | Path, into: str | Path, *, tick: Tick | None = None) -> Rescued:
    """Read what can be read of a book, also one that is refused, into a new book.

    Parameters
    ----------
    path : the damaged file; it stays as it is
    into : the new file
    tick : called now and then; may raise `Cancelled`, which leaves no new file

    Raises
    ------
    NotABook : it is no database at all, or one of another kind
    BookDamaged : nothing of it can be read
    BookExists, DiskFull, BookNotWritable, BookGone : the new book cannot be written
    """
    path, into = Path(path), Path(into)
    if path.is_dir():
        raise NotABook(path, "This is a folder.")
    tick = tick or no_tick
    found = Rescued(into)
    with tempfile.TemporaryDirectory() as room:
        connection = _open_copy(path, Path(room), found)
        try:
            book = _read(connection, path, found, tick)
            files = _files(connection, path, found, tick)
        finally:
            close(connection)
    _mend(book, found)
    _drop_lone_files(book, files, found)
    found.came = {name: len(book.table(name)) for name in TABLES if book.table(name)}
    BookFile.create(into, book, files=files, tick=tick).close()
    return found


# Reading -----------------------------------------------------------------------------------------


def _open_copy(path: Path, room: Path, found: Rescued) -> sqlite3.Connection:
    """A copy of the file that can be asked for its tables."""
    copy = room / "copy.pedbook"
    try:
        shutil.copyfile(path, copy)
        journal = path.with_name(f"{path.name}-journal")
        if journal.is_file():
            shutil.copyfile(journal, room / f"{copy.name}-journal")
    except OSError as error:
        raise NotABook(path, f"The file cannot be read: {error.strerror or error}.") from error
    if _asks(copy):
        return connect(copy, write=True)
    # Without the journal, and with the head of the file as it should be.
    with suppress(OSError):
        (room / f"{copy.name}-journal").unlink()
    shutil.copyfile(path, copy)
    if _mend_head(copy, path):
        found.lost.append("The head of the file was damaged and was made anew.")
    if not _asks(copy):
        raise BookDamaged(path, "nothing of it can be read")
    return connect(copy, write=True)


def _mend_head(copy: Path, path: Path) -> bool:
    """Give a copy the head that each of our files has, or the length that its head tells.

    Source: https://www.sqlite.org/fileformat.html, 'The Database Header' (from memory).

    Returns
    -------
    whether the head was made anew
    """
    size = copy.stat().st_size
    with open(copy, "r+b") as stream:
        head = stream.read(100)
        if b"CREATE TABLE" not in head + stream.read(8_000_000):
            raise NotABook(path)
        if head[:16] == MAGIC and set(head[18:20]) <= {1, 2}:
            told = int.from_bytes(head[28:32], "big") * _PAGE
            if size < told <= _PADDED * size:
                stream.truncate(told)
            return False
        made = bytearray(100)
        made[:16] = MAGIC
        made[16:24] = _PAGE.to_bytes(2, "big") + bytes((1, 1, 0, 64, 32, 32))
        made[28:32] = (size // _PAGE).to_bytes(4, "big")
        made[44:48] = (4).to_bytes(4, "big")
        made[56:60] = (1).to_bytes(4, "big")
        stream.seek(0)
        stream.write(made)
        return True


def _asks(copy: Path) -> bool:
    try:
        with closing(connect(copy, write=True)) as connection, as_faults(copy):
            return bool(_tables(connection))
    except (FileFault, sqlite3.Error):
        # A head that is damaged may also be answered with an error of no kind.
        return False


def _tables(connection: sqlite3.Connection) -> set[str]:
    """Our tables that lie in the file; nothing that is computed when it is read."""
    listed = connection.execute(
        "SELECT name, sql FROM sqlite_master WHERE type = 'table' AND rootpage > 0"
    )
    found = set()
    for name, sql in listed:
        plain = isinstance(sql, str) and sql[:12].upper() == "CREATE TABLE"
        if plain and name in (
            *TABLES,
            SETTINGS,
            "about",
            "unknown_tables",
            "files",
            "contents",
            "photo_files",
        ):
            found.add(name)
    return found & {name for name in found if not _computed(connection, name)}


def _computed(connection: sqlite3.Connection, table: str) -> bool:
    rows = connection.execute(f"PRAGMA table_xinfo({quoted(table)})")
    return any(row[6] for row in rows)


def _read(connection: sqlite3.Connection, path: Path, found: Rescued, tick: Tick) -> Book:
    book = Book()
    # Text that is none is read with a sign in its place, not refused.
    connection.text_factory = lambda data: data.decode("utf-8", "replace")
    here = _tables(connection)
    if "plants" not in here:
        raise BookDamaged(path, "its plants cannot be read")
    for table in TABLES:
        if table not in here:
            continue
        lost = _Losses(table)
        for values in _rows(connection, table, lost, tick):
            record = _record(table, values, lost)
            if record is None:
                continue
            try:
                book.add(record)
            except ValueError:
                lost.rows += 1
        found.lost += lost.sentences()
    wrong: list[str] = []
    whole = _settings(connection, book, here, wrong)
    found.lost += [
        f"The setting {name.replace('_', ' ')} did not fit; it is the usual one now."
        for name in wrong
    ]
    if not whole:
        found.lost.append("The settings of the book were lost; it has the usual ones now.")
    if "unknown_tables" in here:
        with suppress(sqlite3.Error):
            for name, text in connection.execute('SELECT "name", "text" FROM "unknown_tables"'):
                if isinstance(name, str) and isinstance(text, str):
                    book.unknown_tables[name] = text
    return book


@dataclass(slots=True)
class _Losses:
    table: str
    rows: int = 0
    cells: Counter[str] = field(default_factory=Counter)
    unread: int = 0

    def sentences(self) -> list[str]:
        words = self.table.replace("_", " ")
        said = []
        if self.unread:
            said.append(f"Of the table of {words}, up to {self.unread} rows could not be read.")
        if self.rows:
            said.append(f"Of the {words}, {self.rows} did not fit and were left out.")
        said += [
            f"Of the {words}, {count} had a {column.replace('_', ' ')} that does not fit; it was "
            "cleared."
            for column, count in self.cells.items()
        ]
        return said


def _rows(
    connection: sqlite3.Connection, table: str, lost: _Losses, tick: Tick
) -> Iterator[dict[str, Any]]:
    """The rows of a table in order, as far as they can be read."""
    here = [row[1] for row in connection.execute(f"PRAGMA table_info({quoted(table)})")]
    chosen = [column.name for column in table_columns(table) if column.name in here]
    chosen += ["extra"] if "extra" in here else []
    # NOT INDEXED, for an index may lead to what the table no longer has.
    asked = f"SELECT rowid, {', '.join(map(quoted, chosen))} FROM {quoted(table)} NOT INDEXED"
    forward: dict[int, Any] = {}
    try:
        for row in connection.execute(f"{asked} ORDER BY rowid"):
            forward[row[0]] = row[1:]
            if len(forward) % 1_000 == 0:
                tick()
        whole = True
    except (sqlite3.Error, UnicodeError):
        whole = False
    if not whole:
        backward: dict[int, Any] = {}
        with suppress(sqlite3.Error, UnicodeError):
            for row in connection.execute(f"{asked} ORDER BY rowid DESC"):
                if row[0] in forward:
                    break
                backward[row[0]] = row[1:]
        first = max(forward, default=0) + 1
        end = min(backward, default=0) or _last_id(connection, table) + 1
        for row_id in range(first, min(end, first + _SINGLY)):
            tick()
            with suppress(sqlite3.Error, UnicodeError):
                for row in connection.execute(f"{asked} WHERE rowid = ?", (row_id,)):
                    forward[row_id] = row[1:]
        lost.unread = max(end - first - sum(first <= one < end for one in forward), 0)
        forward.update(sorted(backward.items()))
    for values in forward.values():
        yield dict(zip(chosen, values, strict=True))


def _last_id(connection: sqlite3.Connection, table: str) -> int:
    with suppress(sqlite3.Error):
        row = connection.execute(
            "SELECT seq FROM sqlite_sequence WHERE name = ?", (table,)
        ).fetchone()
        if row is not None and isinstance(row[0], int):
            return int(row[0])
    return 0


def _record(table: str, values: dict[str, Any], lost: _Losses) -> Record | None:
    """A record of what was read; None where what it needs is not there."""
    made: Any = TABLES[table]
    given: dict[str, Any] = {}
    bad = []
    for column in table_columns(table):
        value = values.get(column.name, column.default)
        if value is None and column.default is not None:
            value = column.default
        if column.kind == "flag" and value in (0, 1):
            value = bool(value)
        if column.kind == "number" and type(value) is int:
            value = float(value)
        given[column.name] = value
    record: Record = made(**given)
    for column in table_columns(table):
        try:
            check_cell(record, column, given[column.name])
        except (BadCell, TypeError):
            # A finding without odds would be a certain one.
            if column.required or (table, column.name) == ("parent_findings", "odds"):
                lost.rows += 1
                return None
            bad.append(column.name)
            setattr(record, column.name, column.default)
    lost.cells.update(bad)
    with suppress(ValueError, RecursionError):
        record.extra = read_extra(values.get("extra"))  # type: ignore[attr-defined]
    return record


def _settings(connection: sqlite3.Connection, book: Book, here: set[str], wrong: list[str]) -> bool:
    """Take the settings over; `wrong` gets the names of those that cannot be."""
    if SETTINGS not in here:
        return False
    try:
        cursor = connection.execute(f"SELECT * FROM {quoted(SETTINGS)}")
        row = cursor.fetchone()
        if row is None:
            return False
        values = dict(zip((item[0] for item in cursor.description), row, strict=True))
        for item in fields(BookSettings):
            value = values.get(item.name)
            wanted = str(item.type)
            fits = (
                isinstance(value, str)
                if wanted == "str"
                else (value is None and "None" in wanted)
                or (type(value) in (int, float) and ("int" in wanted or "float" in wanted))
            )
            if fits and not fits_range(value, SETTING_RANGES.get(item.name, (None, None))):
                wrong.append(item.name)
            elif item.name != "extra" and fits:
                setattr(book.settings, item.name, value)
        book.settings.extra = read_extra(values.get("extra"))
    except (sqlite3.Error, ValueError, UnicodeError):
        return False
    return True


def _files(
    connection: sqlite3.Connection, path: Path, found: Rescued, tick: Tick
) -> dict[str, bytes]:
    """The bytes of the files that can be read."""
    here = _tables(connection)
    if "photo_files" in here:
        return _photos_of_1(connection, found)
    if not {"files", "contents"} <= here:
        return {}
    listed: list[str] = []
    with suppress(sqlite3.Error, UnicodeError):
        for (name,) in connection.execute('SELECT "path" FROM "files" NOT INDEXED'):
            if isinstance(name, str):
                listed.append(name)
    files: dict[str, bytes] = {}
    for name in listed:
        tick()
        try:
            files[name] = read_content(connection, path, name)
        except (sqlite3.Error, UnicodeError, Fault):
            found.lost.append(f"The file {name!r} could not be read.")
    return files


def _photos_of_1(connection: sqlite3.Connection, found: Rescued) -> dict[str, bytes]:
    """The photos of the first version of the file."""
    files: dict[str, bytes] = {}
    try:
        for name, data in connection.execute('SELECT "photo", "data" FROM "photo_files"'):
            if isinstance(name, str) and isinstance(data, bytes):
                files[f"photos/{name}"] = data
    except (sqlite3.Error, UnicodeError):
        found.lost.append("Some of the photos could not be read.")
    return files


# Mending -----------------------------------------------------------------------------------------


def _mend(book: Book, found: Rescued) -> None:
    """Let every name lead to a record: bare stand-ins for plants and crosses, else cleared."""
    stand_ins: Counter[str] = Counter()
    for table in TABLES:
        for reference in references(table):
            if reference.said or not reference.holds:
                continue
            for record in book.table(table):
                for code in names(reference, record):
                    if any(code in getattr(book, other) for other in reference.tables):
                        continue
                    other = reference.tables[0]
                    made = _STAND_INS.get(other)
                    if made is not None and _is_code(made(code)):
                        book.add(made(code, note="Lost from a damaged book."))
                        stand_ins[other] += 1
                    else:
                        _clear(book, record, reference.column, found)
    for table, count in stand_ins.items():
        found.lost.append(
            f"{count} {ONE[table] if count == 1 else table} named by others could not be read; "
            "only the code was kept."
        )
    for plant in book.plants.values():
        came = plant.cross if plant.raised == "cross" else plant.source
        if plant.raised not in ("", "founder") and not came:
            found.lost.append(
                f"That {plant.plant!r} was raised as {plant.raised.replace('_', ' ')!r} was "
                "cleared, for what it came from was lost."
            )
            plant.raised = ""
    seen: set[tuple[str, str]] = set()
    kept = []
    for candidate in book.pollen_candidates:
        cross = book.crosses.get(candidate.cross)
        if candidate.candidate == SELF and cross is not None and not cross.seed_parent:
            found.lost.append(
                f"The odds of a selfing of {candidate.cross!r} were left out, for its seed parent "
                "was lost."
            )
            continue
        if (candidate.cross, candidate.candidate) not in seen:
            seen.add((candidate.cross, candidate.candidate))
            kept.append(candidate)
    book.pollen_candidates = kept


def _is_code(record: Record) -> bool:
    try:
        check_cell(record, table_columns(record.TABLE)[0], key_of(record))
    except BadCell:
        return False
    return True


def _clear(book: Book, record: Record, column: str, found: Rescued) -> None:
    required = next(c.required for c in table_columns(record.TABLE) if c.name == column)
    one, said = ONE[record.TABLE], column.replace("_", " ")
    if not required:
        setattr(record, column, "")
        found.lost.append(f"A {one} named a {said} that was lost; the cell was cleared.")
        return
    held = getattr(book, record.TABLE)
    if isinstance(held, dict):
        held.pop(key_of(record), None)
    else:
        held[:] = [other for other in held if other is not record]
    found.lost.append(f"A {one} was left out, for its {said} was lost.")


def _drop_lone_files(book: Book, files: dict[str, bytes], found: Rescued) -> None:
    for name in book.photos:
        if f"photos/{name}" not in files:
            found.lost.append(f"The picture of the photo {name!r} did not come over.")
    for path in list(files):
        if path.startswith("photos/") and path.removeprefix("photos/") not in book.photos:
            del files[path]
            found.lost.append(f"The picture {path!r} was left out, for its record was lost.")
