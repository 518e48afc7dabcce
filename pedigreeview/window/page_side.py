"""The side of a page: its title, what it is about, and below them what is chosen from."""

from __future__ import annotations

from PySide6.QtWidgets import QFrame, QHBoxLayout, QWidget

from pedigreeview.window.labels import column, heading, sentence
from pedigreeview.window.style import step

__all__ = ["PageSide", "beside"]


class PageSide(QFrame):
    """The title of a page and a sentence; `body` takes what comes below them."""

    def __init__(self, title: str, about: str) -> None:
        super().__init__()
        self.setObjectName("drawer")
        self.body = column(step())
        self.set_margins()
        self.setLayout(self.body)
        self.body.addWidget(heading(title, 2))
        self.body.addWidget(sentence(about, "soft"))

    def set_margins(self) -> None:
        """Keep as far from the edges as the size of the text asks for."""
        s = step()
        self.body.setContentsMargins(2 * s, 3 * s, s, 2 * s)


def beside(page: QWidget, side: QWidget) -> QHBoxLayout:
    """Lay a side into a page, edge to edge; what is added to the layout comes beside it."""
    layout = QHBoxLayout(page)
    layout.setSpacing(0)
    layout.setContentsMargins(0, 0, 0, 0)
    layout.addWidget(side)
    return layout
