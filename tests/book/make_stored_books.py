"""Makes the stored books of `tests/book/data`, one of each version of the file.

Run `python tests/book/make_stored_books.py VERSION`.  A file of a version that was given to people
is never made anew: it shows what such a book is.
"""

from __future__ import annotations

import sqlite3
import sys
from pathlib import Path

ROOT = Path(__file__).resolve().parent.parent.parent
sys.path.insert(0, str(ROOT))

from pedigreeview.book.book_file import BookFile  # noqa: E402
from pedigreeview.book.records import Photo, Plant  # noqa: E402
from pedigreeview.book.schema import APPLICATION_ID  # noqa: E402
from pedigreeview.book.version_1 import TABLES_1  # noqa: E402
from tests.book.garden import garden  # noqa: E402

DATA = Path(__file__).resolve().parent / "data"

ROWS_1 = {
    "book": [(1, "Peas", "pea", 2, "", 1.0, 0.0, None, None, "", '{"bed": "3"}')],
    "about": [(1, 7, "3b1f0d2e4c5a69788796a5b4c3d2e1f0", '{"title": "Peas"}')],
    "plants": [
        (1, "V", "", "variety", "", None, None, 0, 0.9, "", None, "", "", "", "", "",
         '{"colour": "red"}'),
        (2, "W", "", "variety", "", None, None, 0, None, "", None, "", "", "", "", "", None),
        (4, "A", "first", "", "", "X", None, 2, None, "", None, "2021-05", "kept", "", "", "",
         None),
    ],
    "crosses": [(1, "X", "V", "W", "", "cross", "2020", "", "probable", "made", "", None)],
    "pollinations": [(1, "P1", "X", "2020-06-01", 3, "", "bag", "T1", "Ann", 2, 1, "", None)],
    "sowings": [(1, "B1", None, "2021-04", 5, 4, 3, "bed 3", "", None)],
    "traits": [(1, "t", "score", "", 1.0, 9.0, "high", "", "", None)],
    "scores": [
        (1, "A", "t", "2021", "3", "Ann", "", None),
        (3, "A", "t", "2021", "3", "", "", None),
    ],
    "notes": [(1, "plant A", "2021", "×⊗○", None)],
    "photos": [(1, "a.jpg", "A", "", "", None), (2, "b.jpg", "A", "", "", None)],
    "photo_files": [("a.jpg", b"\xff\xd8a"), ("b.jpg", b"\xff\xd8a")],
    "unknown_tables": [(1, "rain", "mm\n3\n")],
}  # fmt: skip


def make_1(path: Path) -> None:
    """A book of the first version: rows that are gone, photos, further columns."""
    connection = sqlite3.connect(path, isolation_level=None)
    connection.executescript(TABLES_1)
    for table, rows in ROWS_1.items():
        for row in rows:
            connection.execute(f"INSERT INTO {table} VALUES ({', '.join('?' * len(row))})", row)
    connection.execute("UPDATE sqlite_sequence SET seq = 9 WHERE name = 'plants'")
    connection.execute(f"PRAGMA application_id = {APPLICATION_ID}")
    connection.execute("PRAGMA user_version = 1")
    connection.close()


def make_2(path: Path) -> None:
    """A book of the second version: with a photo, a step to undo and one to make again."""
    with BookFile.create(path, garden()) as file:
        with file.edit("Photo") as edit:
            edit.add_photo(Photo("n.jpg", "A"), b"\xff\xd8n")
        with file.edit("Plant C") as edit:
            edit.add(Plant("C", cross="X"))
        file.undo()


if __name__ == "__main__":
    chosen = sys.argv[1]
    target = DATA / f"version_{chosen}.pedbook"
    target.unlink(missing_ok=True)
    {"1": make_1, "2": make_2}[chosen](target)
