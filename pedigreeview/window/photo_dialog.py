"""One photo large, with its day and its words; on to the next, and out of the book."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QSize, Qt
from PySide6.QtGui import QImage, QKeyEvent, QPainter, QPaintEvent, QPixmap
from PySide6.QtWidgets import QDialog, QHBoxLayout, QLabel, QSizePolicy, QWidget

from pedigreeview.book.edits import Edit
from pedigreeview.book.faults import Fault
from pedigreeview.book.recording.typed_dates import Order
from pedigreeview.book.records import Photo
from pedigreeview.window.card_edit import reading_only
from pedigreeview.window.forms.fields import DateField, TextField
from pedigreeview.window.labels import action_button, column, heading, sentence
from pedigreeview.window.photo_files import LONG_SIDE, image_of, photo_bytes
from pedigreeview.window.style import step
from pedigreeview.window.words import named

if TYPE_CHECKING:
    from pedigreeview.window.desk import Desk
    from pedigreeview.window.errands import Errands
    from pedigreeview.window.preferences import Preferences

__all__ = ["PhotoDialog"]


class _Picture(QWidget):
    """The photo, as large as there is room."""

    def __init__(self) -> None:
        super().__init__()
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Expanding)
        self.pixmap = QPixmap()
        self.text = ""

    def minimumSizeHint(self) -> QSize:
        return QSize(20 * step(), 16 * step())

    def paintEvent(self, event: QPaintEvent) -> None:
        painter = QPainter(self)
        try:
            if self.pixmap.isNull():
                painter.drawText(self.rect(), int(Qt.AlignmentFlag.AlignCenter), self.text)
                return
            ratio = self.devicePixelRatioF()
            shown = self.pixmap.scaled(
                self.size() * ratio,
                Qt.AspectRatioMode.KeepAspectRatio,
                Qt.TransformationMode.SmoothTransformation,
            )
            shown.setDevicePixelRatio(ratio)
            size = shown.deviceIndependentSize().toSize()
            painter.drawPixmap(
                (self.width() - size.width()) // 2, (self.height() - size.height()) // 2, shown
            )
        finally:
            painter.end()


class PhotoDialog(QDialog):
    """Shows the photos of one plant, one at a time."""

    def __init__(
        self,
        desk: Desk,
        errands: Errands,
        preferences: Preferences,
        name: str,
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(parent)
        self.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        self._desk, self._errands = desk, errands
        self.photo: Photo | None = None
        s = step()
        layout = column(s, 2 * s)
        self.setLayout(layout)
        self.title = heading("", 2)
        layout.addWidget(self.title)
        self.picture = _Picture()
        layout.addWidget(self.picture, 1)
        form = QHBoxLayout()
        form.setSpacing(s)
        month_first = preferences.date_order == "month-day"
        order: Order = "month-day" if month_first else "day-month"
        self.caption = TextField("caption", self.tr("what it shows"))
        self.caption.set_label(self.tr("What the photo shows"))
        self.date = DateField("date", order=order)
        self.date.set_label(self.tr("Day of the photo"))
        for text, field, share in (
            (self.tr("It &shows"), self.caption, 3),
            (self.tr("&Day"), self.date, 1),
        ):
            part = column(max(1, s // 4))
            label = QLabel(text)
            label.setBuddy(field)
            part.addWidget(label)
            part.addWidget(field)
            part.addStretch(1)
            form.addLayout(part, share)
        layout.addLayout(form)
        self.message = sentence("", "fault")
        self.message.hide()
        layout.addWidget(self.message)
        row = QHBoxLayout()
        row.setSpacing(s)
        self.before_button = action_button(self.tr("&Back"), lambda: self.turn(-1))
        self.after_button = action_button(self.tr("&Next"), lambda: self.turn(1))
        self.remove_button = action_button(self.tr("&Remove from the book"), self.remove)
        self.keep_button = action_button(self.tr("&Keep the words"), self.keep)
        self.close_button = action_button(self.tr("Close"), self.accept, main=True)
        for button in (self.before_button, self.after_button, self.remove_button):
            button.setAutoDefault(False)
            row.addWidget(button)
        row.addStretch(1)
        for button in (self.keep_button, self.close_button):
            button.setAutoDefault(False)
            row.addWidget(button)
        layout.addLayout(row)
        write = not reading_only(desk)
        for widget in (self.remove_button, self.keep_button):
            widget.setVisible(write)
        self.caption.setEnabled(write)
        self.date.setEnabled(write)
        self.resize(100 * s, 84 * s)
        desk.changed.connect(self._changed)
        self.finished.connect(lambda _: errands.drop("preview:photo"))
        self.show_photo(name)
        self.caption.setFocus()

    def _beside(self) -> list[str]:
        """The photos of the same plant, in the order of the card."""
        book = self._desk.book
        if book is None or self.photo is None:
            return []
        photos = [one for one in book.photos.values() if one.plant == self.photo.plant]
        return [one.photo for one in sorted(photos, key=lambda one: (one.date, one.photo))]

    def show_photo(self, name: str) -> None:
        """Show a photo; its picture follows."""
        opened = self._desk.opened
        photo = opened.net.book.photos.get(name) if opened is not None else None
        if opened is None or photo is None:
            self.accept()
            return
        self.photo = photo
        title = named(opened.net.book, photo.plant)
        beside = self._beside()
        if len(beside) > 1:
            at = self.tr("photo {} of {}").format(beside.index(name) + 1, len(beside))
            title = f"{title}, {at}"
        self.title.setText(title)
        self.setWindowTitle(title)
        self.picture.setAccessibleName(title)
        self.caption.set_text(photo.caption)
        self.date.set_text(photo.date)
        self.before_button.setEnabled(len(beside) > 1)
        self.after_button.setEnabled(len(beside) > 1)
        self.message.hide()
        self.picture.text = self.tr("Fetching the photo …")
        self.picture.pixmap = QPixmap()
        self.picture.update()
        self._errands.ask(
            "preview:photo",
            lambda: image_of(photo_bytes(opened, name), LONG_SIDE, name),
            self._fetched,
            self._not_there,
        )

    def _fetched(self, image: QImage) -> None:
        self.picture.pixmap = QPixmap.fromImage(image)
        self.picture.update()

    def _not_there(self, fault: Fault) -> None:
        self.picture.text = fault.sentence()
        self.picture.update()

    def _changed(self) -> None:
        """The book was changed: by what was kept here, or elsewhere."""
        book, photo = self._desk.book, self.photo
        if book is None or photo is None:
            return
        held = book.photos.get(photo.photo)
        if held is None:
            left = [one for one in book.photos.values() if one.plant == photo.plant]
            if left:
                self.show_photo(left[0].photo)
            else:
                self.accept()
        elif held != photo:
            self.photo = held
            self.caption.set_text(held.caption)
            self.date.set_text(held.date)

    def turn(self, by: int) -> None:
        """Show the next photo, or the one before."""
        beside = self._beside()
        if self.photo is not None and self.photo.photo in beside:
            at = (beside.index(self.photo.photo) + by) % len(beside)
            self.show_photo(beside[at])

    def keep(self) -> None:
        """Record what it shows, and its day."""
        photo = self.photo
        if photo is None:
            return
        try:
            caption, date = self.caption.value, self.date.value
        except Fault as fault:
            self._refused(fault)
            return
        if (caption, date) == (photo.caption, photo.date):
            return
        words = self.tr("words of a photo of {}").format(photo.plant)
        self._desk.record(
            words,
            lambda edit: edit.update(photo, caption=caption, date=date),
            None,
            self._refused,
        )

    def remove(self) -> None:
        """Take the photo out of the book; undo brings it back."""
        photo = self.photo
        if photo is None:
            return

        def work(edit: Edit) -> None:
            edit.remove(edit.book.photos[photo.photo])

        words = self.tr("removing a photo of {}").format(photo.plant)
        self._desk.record(words, work, None, self._refused)

    def _refused(self, fault: Fault) -> None:
        self.message.setText(f"{fault.what} {fault.todo}".strip())
        self.message.show()

    def keyPressEvent(self, event: QKeyEvent) -> None:
        if event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter):
            self.keep()
        elif event.key() == Qt.Key.Key_PageDown:
            self.turn(1)
        elif event.key() == Qt.Key.Key_PageUp:
            self.turn(-1)
        else:
            super().keyPressEvent(event)
