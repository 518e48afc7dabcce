"""The strips above a page: work under way with Cancel, and cautions for the crop to put away."""

from __future__ import annotations

from PySide6.QtCore import Qt, QTimer, Signal
from PySide6.QtWidgets import QFrame, QHBoxLayout, QProgressBar, QWidget

from pedigreeview.book.book import Book
from pedigreeview.book.crops import crop_named
from pedigreeview.window.labels import ElidedButton, action_button, plain_button, sentence
from pedigreeview.window.style import step

__all__ = ["CautionStrip", "WorkStrip", "cautions_of"]

PATIENCE = 500
"""Milliseconds before work under way is shown at all."""


def cautions_of(book: Book) -> tuple[str, list[str]]:
    """The crop of the book and what to mind with it."""
    names = [book.settings.crop, *(plant.crop for plant in book.plants.values() if plant.crop)]
    for name in dict.fromkeys(name for name in names if name):
        crop = crop_named(name)
        found = crop.facts.get("cautions") if crop is not None else None
        if crop is not None and found:
            entries = found if isinstance(found, list) else [found]
            texts = [
                str(one.get("text", one.get("value", ""))) if isinstance(one, dict) else str(one)
                for one in entries
            ]
            return crop.name, [text for text in texts if text]
    return "", []


class WorkStrip(QFrame):
    """Says what is under way, once it has taken half a second, and lets one cancel it."""

    cancelled = Signal()

    def __init__(self) -> None:
        super().__init__()
        self.setObjectName("strip")
        s = step()
        row = QHBoxLayout(self)
        row.setContentsMargins(2 * s, s, 2 * s, s)
        row.setSpacing(2 * s)
        self.text = sentence("")
        row.addWidget(self.text, 1)
        bar = QProgressBar()
        bar.setRange(0, 0)
        bar.setTextVisible(False)
        bar.setAccessibleName(self.tr("Work under way"))
        row.addWidget(bar, 1)
        self.cancel = action_button(self.tr("Cancel"), self.cancelled.emit)
        row.addWidget(self.cancel)
        self._delay = QTimer(self)
        self._delay.setSingleShot(True)
        self._delay.setInterval(PATIENCE)
        self._delay.timeout.connect(self.show)
        self.hide()

    def begin(self, text: str) -> None:
        """Work begins."""
        self.text.setText(text)
        self._delay.start()

    def end(self) -> None:
        """Work is done, or given up."""
        self._delay.stop()
        self.hide()


class CautionStrip(QFrame):
    """One line of cautions for the crop of the book; a click shows all of them."""

    dismissed = Signal(str)
    wanted = Signal()

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setObjectName("strip")
        self.crop = ""
        s = step()
        row = QHBoxLayout(self)
        row.setContentsMargins(s, 0, s, 0)
        self.text = ElidedButton()
        self.text.setProperty("role", "line")
        self.text.setCursor(Qt.CursorShape.PointingHandCursor)
        self.text.clicked.connect(self.wanted)
        row.addWidget(self.text, 1)
        self.put_away = plain_button("✕", self.tr("Put these cautions away"), self._dismiss)
        row.addWidget(self.put_away)
        self.hide()

    def show_cautions(self, crop: str, texts: list[str]) -> None:
        """Show the cautions; none hides the strip."""
        self.crop = crop
        self.setVisible(bool(texts))
        if texts:
            self.text.set_full_text(self.tr("Mind, with {}: {}").format(crop, " ".join(texts)))

    def _dismiss(self) -> None:
        self.hide()
        self.dismissed.emit(self.crop)
