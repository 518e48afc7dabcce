"""Photos of a book for a report: read, turned upright, made small, without what a camera adds.

A photo is decoded and written anew, so that the place where it was taken and other data of the
camera do not leave the house with a report.  Names never reach outside the book's own folder.
"""

from __future__ import annotations

from pathlib import Path
from typing import TYPE_CHECKING

from pedigreeview.book.book import Book
from pedigreeview.book.faults import Fault

if TYPE_CHECKING:
    from PySide6.QtGui import QImage

__all__ = ["jpeg_of", "photo_bytes", "photo_image"]

_LARGEST = 60_000_000
"""Bytes of a file beyond which it is taken for no photo."""
_MOST_MB = 256
"""Megabytes of memory that one decoded photo may take."""
_SIDE = 1400
_KINDS = (b"jpeg", b"jpg", b"png", b"webp", b"gif", b"bmp")


def photo_bytes(book: Book, name: str) -> bytes | None:
    """The bytes of a photo as the book's folder or file holds them; None if it holds none."""
    if name not in book.photos or Path(name).name != name or "\\" in name or book.path is None:
        return None
    path = f"photos/{name}"
    try:
        if book.path.is_file():
            if path not in book.files:
                return None
            from pedigreeview.book.book_file import BookFile

            with BookFile.open(book.path, read_only=True, backups=False) as file:
                return file.file(path)
        found = book.path / "photos" / name
        inside = found.resolve().is_relative_to((book.path / "photos").resolve())
        if not inside or not found.is_file() or found.stat().st_size > _LARGEST:
            return None
        return found.read_bytes()
    except (OSError, Fault):
        return None


def photo_image(book: Book, name: str) -> QImage | None:
    """A photo, upright and no larger than a page needs; None where it cannot be shown."""
    from PySide6.QtCore import QBuffer, QByteArray, QIODevice, QSize, Qt
    from PySide6.QtGui import QImageReader

    held = photo_bytes(book, name)
    if not held:
        return None
    bytes_held = QByteArray(held)
    buffer = QBuffer(bytes_held)
    buffer.open(QIODevice.OpenModeFlag.ReadOnly)
    reader = QImageReader(buffer)
    if bytes(reader.format().data()) not in _KINDS:
        return None
    reader.setAutoTransform(True)
    size: QSize = reader.size()
    if not size.isValid() or size.width() * size.height() * 4 > _MOST_MB * 2**20:
        return None
    if max(size.width(), size.height()) > _SIDE:
        reader.setScaledSize(size.scaled(_SIDE, _SIDE, Qt.AspectRatioMode.KeepAspectRatio))
    image = reader.read()
    return None if image.isNull() else image


def jpeg_of(image: QImage) -> bytes:
    """A photo as JPEG, on white where it was clear, and nothing but its pixels."""
    from PySide6.QtCore import QBuffer, QByteArray, QIODevice, Qt
    from PySide6.QtGui import QImage as Image
    from PySide6.QtGui import QPainter

    flat = Image(image.size(), Image.Format.Format_RGB32)
    flat.fill(Qt.GlobalColor.white)
    painter = QPainter(flat)
    painter.drawImage(0, 0, image)
    painter.end()
    held = QByteArray()
    buffer = QBuffer(held)
    buffer.open(QIODevice.OpenModeFlag.WriteOnly)
    flat.save(buffer, "JPEG", 85)  # type: ignore[call-overload]
    return bytes(held.data())
