"""The photos of a plant on its card: small pictures, and ways to add one."""

from __future__ import annotations

import datetime
from functools import partial
from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import QMimeData, QSize, Qt, Signal
from PySide6.QtGui import QGuiApplication, QIcon, QImage, QPixmap
from PySide6.QtWidgets import QFileDialog, QToolButton, QWidget

from pedigreeview.book.book import Book
from pedigreeview.book.faults import Fault
from pedigreeview.book.records import Photo
from pedigreeview.window.card_edit import adding_button, reading_only
from pedigreeview.window.labels import Flow, column, plain_button, sentence
from pedigreeview.window.photo_files import (
    ENDINGS,
    NewPhoto,
    add_photos,
    image_of,
    photo_bytes,
    prepared,
    prepared_file,
)
from pedigreeview.window.style import step
from pedigreeview.window.words import count

if TYPE_CHECKING:
    from pedigreeview.window.desk import Desk
    from pedigreeview.window.errands import Errands
    from pedigreeview.window.opening import Opened

__all__ = ["CardPhotos", "holds_photos"]

_SHOWN = 24


def _paths(mime: QMimeData) -> list[Path]:
    paths = [Path(url.toLocalFile()) for url in mime.urls() if url.isLocalFile()]
    return [path for path in paths if path.suffix.lower() in ENDINGS]


def holds_photos(mime: QMimeData) -> bool:
    """Whether something dropped or pasted is a picture, or files of pictures."""
    return bool(_paths(mime)) or mime.hasImage()


class CardPhotos(QWidget):
    """Small pictures of one plant; a click enlarges one."""

    turned = Signal()
    wanted = Signal(str)
    """The file name of a photo that is to be shown large."""

    def __init__(self, desk: Desk, errands: Errands, code: str) -> None:
        super().__init__()
        self._desk, self._errands, self._code = desk, errands, code
        self.thumbs: dict[str, QToolButton] = {}
        s = step()
        self._side = 9 * s
        layout = column(max(2, s // 2))
        self.setLayout(layout)
        self._caption = sentence(self.tr("Photos"), "caption")
        layout.addWidget(self._caption)
        self._flow = Flow(max(2, s // 2))
        self._held = QWidget()
        self._held.setLayout(self._flow)
        layout.addWidget(self._held)
        self.message = sentence("", "fault")
        self.message.hide()
        layout.addWidget(self.message)
        name = self.tr("Add photos of {} from files; one can also be dropped here or pasted")
        self.add_button = adding_button(self.tr("+ photo …"), name.format(code), self.ask_files)
        layout.addWidget(self.add_button, 0, Qt.AlignmentFlag.AlignLeft)
        self.add_button.setVisible(not reading_only(desk))

    def show_book(self, book: Book) -> None:
        """Lay out a place for each photo; the pictures follow."""
        photos = [photo for photo in book.photos.values() if photo.plant == self._code]
        photos.sort(key=lambda photo: (photo.date, photo.photo))
        self._caption.setVisible(bool(photos))
        self._held.setVisible(bool(photos))
        for photo in photos[:_SHOWN]:
            self._flow.addWidget(self._thumb(photo))
        if len(photos) > _SHOWN:
            more = self.tr("and {} more").format(len(photos) - _SHOWN)
            self._flow.addWidget(sentence(more, "soft"))
        if photos:
            self._fetch([photo.photo for photo in photos[:_SHOWN]])

    def _thumb(self, photo: Photo) -> QToolButton:
        said = ", ".join(part for part in (photo.caption, photo.date) if part)
        name = self.tr("Photo of {}: {}").format(self._code, said or photo.photo)
        button = plain_button("", name, lambda: self.wanted.emit(photo.photo))
        button.setToolTip(said or photo.photo)
        button.setIconSize(QSize(self._side, self._side))
        button.setFixedSize(self._side + step(), self._side + step())
        button.setStyleSheet("padding: 0")
        button.setCursor(Qt.CursorShape.PointingHandCursor)
        self.thumbs[photo.photo] = button
        return button

    def _fetch(self, names: list[str]) -> None:
        opened = self._desk.opened
        if opened is None:
            return
        side = round(self._side * self.devicePixelRatioF())

        def work() -> dict[str, QImage | None]:
            return {name: _small(opened, name, side) for name in names}

        self._errands.ask("preview:photos", work, self._fetched)

    def _fetched(self, found: dict[str, QImage | None]) -> None:
        for name, image in found.items():
            button = self.thumbs.get(name)
            try:
                if button is None:
                    continue
                if image is None:
                    button.setText(self.tr("not there"))
                else:
                    button.setIcon(QIcon(QPixmap.fromImage(image)))
            except RuntimeError:
                return

    # Adding -------------------------------------------------------------------------------------

    def ask_files(self) -> None:
        """Ask for files of photos."""
        dialog = QFileDialog(self.window(), self.tr("Photos of {}").format(self._code))
        dialog.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        dialog.setFileMode(QFileDialog.FileMode.ExistingFiles)
        endings = " ".join(f"*{ending}" for ending in ENDINGS)
        dialog.setNameFilters([self.tr("Pictures ({})").format(endings), self.tr("All files (*)")])
        dialog.filesSelected.connect(lambda texts: self.add_files([Path(text) for text in texts]))
        dialog.open()

    def paste(self) -> bool:
        """Add what lies on the clipboard; whether there was a picture."""
        mime = QGuiApplication.clipboard().mimeData()
        return mime is not None and self.take(mime)

    def take(self, mime: QMimeData) -> bool:
        """Add what was dropped or pasted; whether there was a picture."""
        paths = _paths(mime)
        if paths:
            self.add_files(paths)
            return True
        if mime.hasImage():
            image = QImage(mime.imageData())
            today = datetime.date.today().isoformat()
            self._prepare(lambda: [prepared(image, self.tr("pasted"), today)])
            return True
        return False

    def add_files(self, paths: list[Path]) -> None:
        """Scale and keep photos, as one edit."""
        self._prepare(lambda: [prepared_file(path) for path in paths])

    def _prepare(self, work: object) -> None:
        self.message.hide()
        self._errands.ask("save:photo", work, self._keep, self._failed)  # type: ignore[arg-type]

    def _keep(self, photos: list[NewPhoto]) -> None:
        code = self._code
        words = count(len(photos), self.tr("photo of {}"), self.tr("photos of {}")).format(code)
        self._desk.record(words, partial(_add, code, photos), None, self._failed)

    def _failed(self, fault: Fault) -> None:
        try:
            self.message.setText(fault.sentence())
            self.message.show()
            self.turned.emit()
        except RuntimeError:
            self._desk.refused.emit(fault)


def _add(code: str, photos: list[NewPhoto], edit: object) -> object:
    return add_photos(edit, code, photos)  # type: ignore[arg-type]


def _small(opened: Opened, name: str, side: int) -> QImage | None:
    """The picture cut to a square, or None where it cannot be read."""
    try:
        image = image_of(photo_bytes(opened, name), 4 * side, name)
    except Fault:
        return None
    grow = Qt.AspectRatioMode.KeepAspectRatioByExpanding
    image = image.scaled(QSize(side, side), grow, Qt.TransformationMode.SmoothTransformation)
    left, top = (image.width() - side) // 2, (image.height() - side) // 2
    return image.copy(left, top, side, side)
