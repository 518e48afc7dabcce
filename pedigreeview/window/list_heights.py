"""Heights of wrapped lines in a list at the side: what the style sheet adds counts too."""

from __future__ import annotations

from PySide6.QtCore import QRect, QSize, Qt
from PySide6.QtWidgets import QListWidget

from pedigreeview.window.style import step

__all__ = ["fit_heights"]


def fit_heights(shown: QListWidget) -> None:
    """Give every line the height that its text needs beside the scroll bar.

    A list view asks for the height of wrapped text without the padding of the style sheet, and
    before its scroll bar stands there, so that large text would be cut off.
    """
    s, metrics = step(), shown.fontMetrics()
    wide = max(4 * s, shown.width() - 6 * s)
    for row in range(shown.count()):
        item = shown.item(row)
        lines = metrics.boundingRect(
            QRect(0, 0, wide, 10_000), int(Qt.TextFlag.TextWordWrap), item.text()
        )
        item.setSizeHint(QSize(0, lines.height() + 2 * s))
