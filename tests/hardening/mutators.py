"""Plain mutators: a seeded random source changes bytes, texts, tables, JSON, archives, databases.

Each takes the random source first and gives something new; the same source gives the same, so that
an input is known by the name of its reader and one number.
"""

from __future__ import annotations

import io
import json
import sqlite3
import zipfile
import zlib
from pathlib import Path
from random import Random
from typing import Any

from tests.hardening.hostile import CODES, PATHS, TEXTS

__all__ = ["archive", "bytes_of", "database", "document", "rows", "table", "text", "zipped"]

_MOST = 400_000
"""Bytes up to which a mutated input grows, so that many can be tried."""
_TOKENS = (
    b"\0", b"\xff\xfe", b"\xef\xbb\xbf", b"\xff", b"\xc3\x28", b"\xed\xa0\x80", b"PK\x03\x04",
    b"SQLite format 3\0", b"<!DOCTYPE x>", b'<!ENTITY a "b">', b"&a;", b"]]>", b"<", b">", b'"',
    b"\r", b"\n", b"{", b"[", b"}", b"]", b",", b"1e999", b"-1", b"<![CDATA[", b"\x1a", b"\x81",
)  # fmt: skip


def bytes_of(rng: Random, data: bytes) -> bytes:
    """Bytes flipped, cut, doubled, moved, or with a token put in."""
    held = bytearray(data)
    for _ in range(rng.choice((1, 1, 1, 2, 3, 8, 30))):
        at = rng.randrange(len(held) + 1)
        size = rng.choice((1, 1, 2, 4, 16, 200))
        what = rng.randrange(8)
        if what == 0 and held:
            held[at % len(held)] = rng.randrange(256)
        elif what == 1 and held:
            held[at % len(held)] ^= 1 << rng.randrange(8)
        elif what == 2:
            del held[at : at + size]
        elif what == 3:
            held[at:at] = held[at : at + size] * rng.choice((1, 2, 50))
        elif what == 4:
            held[at:at] = rng.choice(_TOKENS)
        elif what == 5:
            held[at:at] = rng.randbytes(size)
        elif what == 6:
            held[at:at] = rng.choice(TEXTS).encode("utf-8", "surrogatepass")
        elif rng.random() < 0.2:
            del held[at:]
    return bytes(held[:_MOST])


def text(rng: Random, said: str) -> str:
    """A text with characters changed, parts moved, or hostile words put in."""
    for _ in range(rng.choice((1, 1, 2, 4, 10))):
        at = rng.randrange(len(said) + 1)
        size = rng.choice((1, 1, 2, 5, 40))
        what = rng.randrange(6)
        if what == 0:
            said = said[:at] + rng.choice(TEXTS) + said[at:]
        elif what == 1:
            said = said[:at] + said[at + size :]
        elif what == 2:
            said = said[:at] + said[at : at + size] * rng.choice((2, 3, 40)) + said[at:]
        elif what == 3:
            said = said[:at] + chr(rng.choice((rng.randrange(1, 256), rng.randrange(1, 0xD7FF))))
            said += said[at:]
        elif what == 4:
            parts = said.split(rng.choice(" /×,;\n\t"))
            rng.shuffle(parts)
            said = rng.choice(" /×,;\n\t").join(parts)
        else:
            said = said[:at] + rng.choice("()[]{}/*×xX♀♂⊗\"'0123456789-.: ") + said[at:]
    return said[:_MOST]


def rows(rng: Random, held: list[list[str]]) -> list[list[str]]:
    """A table with cells swapped, columns dropped or doubled, rows doubled with a difference."""
    held = [list(row) for row in held]
    for _ in range(rng.choice((1, 1, 2, 3, 6))):
        if not held:
            return held
        row = rng.choice(held)
        at = rng.randrange(len(row)) if row else 0
        what = rng.randrange(12)
        if what == 0 and row:
            row[at] = rng.choice(TEXTS)
        elif what == 1 and row:
            row[at] = rng.choice(CODES)
        elif what == 2 and row:
            other = rng.choice(held)
            there = rng.randrange(len(other)) if other else 0
            if other:
                row[at], other[there] = other[there], row[at]
        elif what == 3:
            for cells in held:
                del cells[at : at + 1]
        elif what == 4:
            for cells in held:
                cells += cells[at : at + 1]
        elif what == 5:
            again = list(row)
            if again:
                again[rng.randrange(len(again))] = rng.choice(TEXTS)
            held.insert(rng.randrange(len(held) + 1), again)
        elif what == 6:
            rng.shuffle(held)
        elif what == 7:
            held[1:] = sorted(held[1:], key=lambda _: rng.random())
        elif what == 8:
            # A loop, most often: a code of the table put somewhere as a parent.
            codes = [cells[0] for cells in held[1:] if cells]
            if codes and row:
                row[at] = rng.choice(codes)
        elif what == 9:
            held.remove(row)
        elif what == 10:
            row += [rng.choice(TEXTS)] * rng.choice((1, 2, 300))
        elif row:
            row[at] = text(rng, row[at])
    return held


def table(rng: Random, held: list[list[str]]) -> bytes:
    """A mutated table as bytes in one of the codings and with one of the separators."""
    separator = rng.choice((",", ",", ",", ";", "\t", "|"))
    end = rng.choice(("\n", "\n", "\r\n", "\r"))
    lines = []
    for row in rows(rng, held):
        cells = []
        for cell in row:
            quote = any(sign in cell for sign in (separator, '"', "\n", "\r"))
            if quote and rng.random() > 0.03:
                cell = '"' + cell.replace('"', '""') + '"'
            cells.append(cell)
        lines.append(separator.join(cells))
    said = end.join(lines) + rng.choice(("", end, end * 3))
    if rng.random() < 0.05:
        said = f"sep={separator}\n{said}"
    coding = rng.choice(("utf-8",) * 6 + ("utf-8-sig", "cp1252", "utf-16", "utf-16-be", "latin-1"))
    data = said.encode(coding, "replace")
    return bytes_of(rng, data) if rng.random() < 0.15 else data


def document(rng: Random, held: Any) -> Any:
    """A JSON document with values of other kinds, keys gone, lists doubled, deep nesting."""
    held = json.loads(json.dumps(held))
    for _ in range(rng.choice((1, 1, 2, 4))):
        spots: list[tuple[Any, Any]] = []
        waiting = [held]
        while waiting and len(spots) < 5_000:
            part = waiting.pop()
            items = part.items() if isinstance(part, dict) else enumerate(part)
            for key, value in items:
                spots.append((part, key))
                if isinstance(value, dict | list):
                    waiting.append(value)
        if not spots:
            return held
        part, key = rng.choice(spots)
        what = rng.randrange(8)
        if what == 0:
            part[key] = rng.choice((None, True, 0, -1, 1e308, 10**400, [], {}, [[]], [{}], "", 1.5))
        elif what in (1, 2):
            part[key] = rng.choice(TEXTS)
        elif what == 3:
            del part[key]
        elif what == 4 and isinstance(part, list):
            part += part[key : key + 1] * rng.choice((1, 3))
        elif what == 5:
            other, there = rng.choice(spots)
            if isinstance(other, list) and there >= len(other):
                continue
            if isinstance(other, dict) and there not in other:
                continue
            part[key] = json.loads(json.dumps(other[there]))
        elif what == 6:
            deep: Any = []
            for _ in range(rng.choice((5, 99, 150, 3_000))):
                deep = rng.choice(([deep], {"a": deep}))
            # Deeper than the writer of JSON goes: put in as text, below.
            return {"deep": "@", "rest": held, "nest": _depth(deep)}
        elif isinstance(part[key], str):
            part[key] = text(rng, part[key])
    return held


def _depth(deep: Any) -> int:
    count = 0
    while deep:
        deep = deep[0] if isinstance(deep, list) else deep["a"]
        count += 1
    return count


def document_text(rng: Random, held: Any) -> bytes:
    """A mutated JSON document as bytes."""
    made = document(rng, held)
    nest = made.pop("nest", 0) if isinstance(made, dict) else 0
    said = json.dumps(made, ensure_ascii=rng.random() < 0.3)
    if nest:
        said = said.replace('"@"', "[" * nest + "]" * nest, 1)
    data = said.encode("utf-8", "surrogatepass")
    return bytes_of(rng, data) if rng.random() < 0.2 else data


def zipped(members: list[tuple[str, bytes]], kind: int = zipfile.ZIP_DEFLATED) -> bytes:
    """An archive of members in their order; two of one name are let through."""
    buffer = io.BytesIO()
    with zipfile.ZipFile(buffer, "w", kind) as held:
        for name, data in members:
            entry = zipfile.ZipInfo(name)
            entry.compress_type = zipfile.ZIP_STORED if name == "mimetype" else kind
            held.writestr(entry, data)
    return buffer.getvalue()


def archive(rng: Random, data: bytes) -> bytes:
    """A spreadsheet file with a member changed, dropped, renamed, doubled or added, or damaged."""
    if rng.random() < 0.15:
        return bytes_of(rng, data)
    with zipfile.ZipFile(io.BytesIO(data)) as held:
        members = [(info.filename, held.read(info)) for info in held.infolist()]
    for _ in range(rng.choice((1, 1, 1, 2, 3))):
        if not members:
            break
        # The sheets and the list of them are where most can go wrong.
        weights = [6 if name.endswith((".xml", ".rels")) else 1 for name, _ in members]
        at = rng.choices(range(len(members)), weights)[0]
        name, held_bytes = members[at]
        what = rng.randrange(12)
        if what < 5:
            members[at] = (name, _xml(rng, held_bytes))
        elif what < 8:
            members[at] = (name, bytes_of(rng, held_bytes))
        elif what == 8:
            del members[at]
        elif what == 9:
            members[at] = (rng.choice((*PATHS, "xl/workbook.xml", "content.xml")), held_bytes)
        elif what == 10:
            members.append((rng.choice((*PATHS, "xl/worksheets/sheet9.xml")), held_bytes))
        else:
            bomb = b" " * rng.choice((1_000, 3_000_000))
            members.append((f"xl/{rng.randrange(99)}.xml", bomb))
    try:
        made = zipped(members)
    except (ValueError, UnicodeError, zipfile.LargeZipFile):
        return bytes_of(rng, data)
    return bytes_of(rng, made) if rng.random() < 0.1 else made


_NUMBERS = ("-1", "0", "1", "2", "7", "255", "65535", "999999", "4294967295",
            "18446744073709551616", "1e309", "NaN", "-0.5", "60", "61", "2958466", "1048577",
            "A1", "XFD1048576",
            "AAAA1", "A0", "1A", "a1:b2", "s", "str", "b", "e", "d", "inlineStr", "n",
            "date", "float")  # fmt: skip


def _xml(rng: Random, data: bytes) -> bytes:
    """XML with values of attributes and texts changed, elements dropped, doubled or nested."""
    said = data.decode("utf-8", "replace")
    for _ in range(rng.choice((1, 1, 2, 5, 12))):
        marks = [at for at, sign in enumerate(said[:60_000]) if sign in '<>"=']
        if not marks:
            break
        at = rng.choice(marks)
        after = min((mark for mark in marks if mark > at), default=len(said))
        what = rng.randrange(7)
        if what == 0:
            put = rng.choice(_NUMBERS)
            said = said[: at + 1] + put + said[after:]
        elif what == 1:
            put = rng.choice(TEXTS).replace("\0", "")
            put = put.replace("&", "&amp;").replace("<", "&lt;").replace('"', "&quot;")
            said = said[: at + 1] + put + said[after:]
        elif what == 2:
            said = said[:at] + said[after:]
        elif what == 3:
            said = said[:at] + said[at:after] * rng.choice((2, 3, 200)) + said[after:]
        elif what == 4:
            other = rng.choice(marks)
            end = min((mark for mark in marks if mark > other), default=len(said))
            said = said[: at + 1] + said[other + 1 : end] + said[after:]
        elif what == 5:
            many = rng.choice((3, 250, 5_000))
            said = said[:at] + "<a>" * many + "</a>" * many + said[at:]
        else:
            said = rng.choice(
                (
                    f'<!DOCTYPE a [<!ENTITY b "c">]>{said}',
                    said.replace('encoding="UTF-8"', 'encoding="utf-7"', 1),
                    said[: at + 1] + "&b;" + said[at + 1 :],
                    said[: at + 1] + "&#1114112;" + said[at + 1 :],
                )
            )
    return said[: 4 * _MOST].encode("utf-8", "replace")


def markup(rng: Random, data: bytes) -> bytes:
    """An XML file that is mutated as text or as bytes."""
    return _xml(rng, data) if rng.random() < 0.75 else bytes_of(rng, data)


_VALUES: tuple[Any, ...] = (
    None, 0, -1, 2**63 - 1, -(2**63), 1e308, float("inf"), b"", b"\xff\xfe\0", "\0", *TEXTS,
)  # fmt: skip


def database(rng: Random, data: bytes, room: Path) -> bytes:
    """A book's file with cells of other values or kinds, rows gone or doubled, or damaged bytes."""
    if rng.random() < 0.55:
        held = bytearray(data)
        for _ in range(rng.choice((1, 1, 2, 5))):
            at = rng.randrange(100) if rng.random() < 0.2 else rng.randrange(len(held))
            size = rng.choice((1, 1, 4, 100, 4_096))
            held[at : at + size] = rng.randbytes(len(held[at : at + size]))
        return bytes(held[: rng.randrange(len(held))] if rng.random() < 0.1 else held)
    path = room / "mutated.db"
    path.write_bytes(data)
    connection = sqlite3.connect(path, isolation_level=None)
    try:
        connection.execute("PRAGMA foreign_keys = OFF")
        connection.execute("PRAGMA ignore_check_constraints = ON")
        connection.execute("PRAGMA synchronous = OFF")
        asked = "SELECT name FROM sqlite_master WHERE type = 'table'"
        tables = [name for (name,) in connection.execute(asked)]
        for _ in range(rng.choice((1, 1, 2, 4))):
            name = rng.choice(tables)
            columns = [row[1] for row in connection.execute(f'PRAGMA table_info("{name}")')]
            if not columns:
                continue
            statement, values = _statement(rng, name, columns)
            try:
                connection.execute(statement, values)
            except (sqlite3.Error, OverflowError):
                continue
    finally:
        connection.close()
    made = path.read_bytes()
    path.unlink()
    return made


def _statement(rng: Random, table: str, columns: list[str]) -> tuple[str, tuple[Any, ...]]:
    column = rng.choice(columns)
    what = rng.randrange(7)
    some = (
        f'rowid IN (SELECT rowid FROM "{table}" ORDER BY rowid LIMIT 1 OFFSET {rng.randrange(5)})'
    )
    if what < 4:
        return f'UPDATE "{table}" SET "{column}" = ? WHERE {some}', (rng.choice(_VALUES),)
    if what == 4:
        return f'DELETE FROM "{table}" WHERE {some}', ()
    if what == 5:
        return f"PRAGMA user_version = {rng.choice((-1, 0, 1, 2, 3, 4, 99))}", ()
    return rng.choice(
        (
            f'ALTER TABLE "{table}" DROP COLUMN "{column}"',
            f'DROP TABLE "{table}"',
            f'ALTER TABLE "{table}" RENAME TO "x"',
            'CREATE TABLE "y" ("z" TEXT)',
            f'CREATE TRIGGER t AFTER INSERT ON "{table}" BEGIN SELECT 1; END',
        )
    ), ()


def bomb(size: int) -> bytes:
    """An archive that unpacks to many zero bytes under a name that a spreadsheet has."""
    return zipped([("xl/workbook.xml", b""), ("xl/worksheets/sheet1.xml", b" " * size)])


def lying_archive(data: bytes) -> bytes:
    """An archive whose list tells sizes far smaller than what is in it."""
    size = len(data).to_bytes(4, "little")
    made = zipped([("xl/workbook.xml", b"<a/>"), ("xl/worksheets/sheet1.xml", data)])
    crc = zlib.crc32(data).to_bytes(4, "little")
    packed = made[made.find(crc) + 4 : made.find(crc) + 8]
    return made.replace(crc + packed + size, crc + packed + b"\1\0\0\0")
