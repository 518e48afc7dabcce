"""Photos on their way into the book and out of it: read, turned upright, scaled, as bytes.

Holds no widget, so it can run in any thread.
"""

from __future__ import annotations

import datetime
from dataclasses import dataclass
from pathlib import Path, PurePosixPath
from typing import TYPE_CHECKING, cast

from PySide6.QtCore import QBuffer, QByteArray, QCoreApplication, QIODevice, QSize, Qt
from PySide6.QtGui import QImage, QImageReader

from pedigreeview.book.edits import Edit
from pedigreeview.book.faults import Fault, Place
from pedigreeview.book.recording.notes import photo_name
from pedigreeview.book.records import Photo

if TYPE_CHECKING:
    from pedigreeview.window.opening import Opened

__all__ = [
    "ENDINGS",
    "LONG_SIDE",
    "NewPhoto",
    "add_photos",
    "image_of",
    "photo_bytes",
    "prepared",
    "prepared_file",
]

LONG_SIDE = 1600
"""Pixels of the longer side of a photo that is kept; larger ones are scaled to it."""
ENDINGS = (".jpg", ".jpeg", ".png", ".webp", ".bmp", ".gif", ".tif", ".tiff")
"""Endings of files that are taken for photos when they are dropped."""
_QUALITY = 86


def _tr(text: str) -> str:
    return QCoreApplication.translate("Photos", text)


@dataclass(frozen=True, slots=True)
class NewPhoto:
    """A photo ready to be kept: the name that it came with, its bytes, and its day."""

    name: str
    data: bytes
    date: str


def _no_picture(name: str) -> Fault:
    return Fault(
        _tr("{} cannot be read as a picture.").format(name or _tr("The photo")),
        Place(file=name) if name else None,
        _tr("Choose a JPEG or PNG file."),
    )


def image_of(data: bytes, longest: int, name: str = "") -> QImage:
    """The picture, upright, scaled down so that no side is longer.

    Raises
    ------
    Fault : the bytes are no picture that can be read
    """
    buffer = QBuffer()
    buffer.setData(QByteArray(data))
    buffer.open(QIODevice.OpenModeFlag.ReadOnly)
    reader = QImageReader(buffer)
    reader.setDecideFormatFromContent(True)
    # A camera writes how it was held beside the picture; what is kept is turned already.
    reader.setAutoTransform(True)
    size = reader.size()
    if size.isValid() and max(size.width(), size.height()) > longest:
        reader.setScaledSize(size.scaled(longest, longest, Qt.AspectRatioMode.KeepAspectRatio))
    image = reader.read()
    if image.isNull():
        raise _no_picture(name)
    return _at_most(image, longest)


def _at_most(image: QImage, longest: int) -> QImage:
    if max(image.width(), image.height()) <= longest:
        return image
    return image.scaled(
        QSize(longest, longest),
        Qt.AspectRatioMode.KeepAspectRatio,
        Qt.TransformationMode.SmoothTransformation,
    )


def prepared(image: QImage, name: str, date: str) -> NewPhoto:
    """A picture as it is kept: JPEG, or PNG where some of it is transparent.

    Raises
    ------
    Fault : it is empty
    """
    if image.isNull():
        raise _no_picture(name)
    image = _at_most(image, LONG_SIDE)
    clear = image.hasAlphaChannel() and not _is_solid(image)
    ending = "png" if clear else "jpg"
    if not clear:
        image = image.convertToFormat(QImage.Format.Format_RGB32)
    array = QByteArray()
    buffer = QBuffer(array)
    buffer.open(QIODevice.OpenModeFlag.WriteOnly)
    if not image.save(buffer, "PNG" if clear else "JPG", -1 if clear else _QUALITY):  # type: ignore[call-overload]
        raise _no_picture(name)
    stem = PurePosixPath(name.replace("\\", "/")).stem or _tr("photo")
    return NewPhoto(f"{stem}.{ending}", bytes(array.data()), date)


def _is_solid(image: QImage) -> bool:
    """Whether nothing of it is transparent, as in what a screen gives."""
    alpha = image.convertToFormat(QImage.Format.Format_Alpha8)
    width = alpha.width()
    rows = (cast(memoryview, alpha.constScanLine(row)) for row in range(alpha.height()))
    return all(bytes(row)[:width].count(255) == width for row in rows)


def prepared_file(path: Path) -> NewPhoto:
    """A photo of a file, with the day on which the file was last written.

    Raises
    ------
    Fault : the file cannot be read, or is no picture
    """
    try:
        data = path.read_bytes()
        day = datetime.date.fromtimestamp(path.stat().st_mtime).isoformat()
    except OSError as error:
        raise Fault(
            _tr("The file cannot be read: {}.").format(error.strerror or error),
            Place(file=str(path)),
            _tr("Choose another."),
        ) from error
    return prepared(image_of(data, LONG_SIDE, path.name), path.name, day)


def add_photos(edit: Edit, plant: str, photos: list[NewPhoto]) -> list[Photo]:
    """Keep photos of a plant in the book, each under a name that no other has."""
    kept = []
    for new in photos:
        record = Photo(photo_name(edit.book, plant, new.name), plant, new.date)
        edit.add_photo(record, new.data)
        kept.append(record)
    return kept


def photo_bytes(opened: Opened, name: str) -> bytes:
    """The bytes of a photo, from the book's file or from the folder that it was read from.

    Raises
    ------
    Fault : there is no such file
    """
    if opened.file is not None:
        return opened.file.file(f"photos/{name}")
    plain = Path(name).name == name and PurePosixPath(name).name == name
    path = opened.path / "photos" / name
    try:
        if plain and path.is_file() and not path.is_symlink():
            return path.read_bytes()
    except OSError:
        pass
    raise Fault(
        _tr("The file of this photo is not there."),
        Place(file=name),
        _tr("Put it into the folder's 'photos'."),
    )
