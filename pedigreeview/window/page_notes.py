"""The line above the picture: how it is looked at, the tint, the filter, and the way back."""

from __future__ import annotations

from collections.abc import Sequence
from html import escape

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QFrame, QHBoxLayout, QSizePolicy, QToolButton

from pedigreeview.window.labels import LinkLabel, plain_button
from pedigreeview.window.style import step

__all__ = ["Notes"]


class Notes(QFrame):
    """Sentences with links to plants, and at most a few buttons; away when there is nothing."""

    plant_wanted = Signal(str)

    def __init__(self) -> None:
        super().__init__()
        self.setAccessibleName(self.tr("How the picture is looked at"))
        row = QHBoxLayout(self)
        row.setContentsMargins(0, 0, 0, 0)
        row.setSpacing(step())
        self.text = LinkLabel("")
        self.text.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Preferred)
        self.text.followed.connect(self.plant_wanted)
        row.addWidget(self.text, 1)
        self.all = self._button(self.tr("Show all"), self.tr("Show all its descendants"))
        self.near = self._button(
            self.tr("Show the neighbourhood"), self.tr("Back to the generations up and down")
        )
        self.put_away = self._button(
            self.tr("Put the trial cross away"), self.tr("Take the dashed tag out of the picture")
        )
        self.bring = self._button(
            self.tr("Show them"), self.tr("Bring back the plants that are folded away")
        )
        self.clear = self._button(
            self.tr("Clear tint and filter"), self.tr("Plain paper, and every plant")
        )
        self.hide()

    def _button(self, text: str, name: str) -> QToolButton:
        button = plain_button(text, name)
        layout = self.layout()
        assert layout is not None
        layout.addWidget(button)
        button.hide()
        return button

    def show_notes(self, sentences: Sequence[str], buttons: Sequence[QToolButton]) -> None:
        """Show sentences, already with links in them, and the buttons that go with them."""
        self.text.setText(" ".join(sentences))
        for button in (self.all, self.near, self.put_away, self.bring, self.clear):
            button.setVisible(button in buttons)
        self.setVisible(bool(sentences))

    @staticmethod
    def strong(text: str) -> str:
        """A text that stands out, for the start of a sentence."""
        return f"<b>{escape(text)}</b>"
