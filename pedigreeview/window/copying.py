"""Copy picture and Copy table: what is on show, on the clipboard."""

from __future__ import annotations

import tempfile
from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import QCoreApplication, QMimeData
from PySide6.QtGui import QGuiApplication, QImage

from pedigreeview.book.faults import Fault
from pedigreeview.window.book_page import BookPage, Shown
from pedigreeview.window.words import count

if TYPE_CHECKING:
    from pedigreeview.window.main_window import MainWindow

__all__ = ["copy_picture", "copy_table", "table_on_show"]

_FINE, _COARSE = 192, 96
"""Dots an inch: fine for paper, coarse where that would be too large."""


def _tr(text: str) -> str:
    return QCoreApplication.translate("Copying", text)


def copy_picture(window: MainWindow) -> None:
    """Put the picture, as it is shown now, on the clipboard as an image and as SVG."""
    opened = window.opened
    if opened is None:
        return
    net, look, title = opened.net, window.pedigree.look(), opened.title
    orientation, tick = window.pedigree.orientation, window.errands.tick
    lit = window.pedigree.canvas.lit_paths()

    def work() -> tuple[bytes, bytes]:
        from pedigreeview.reports.chart import save_picture

        def drawn(path: Path, dpi: int = _COARSE) -> bytes:
            save_picture(
                net,
                path,
                look=look,
                title=title,
                dpi=dpi,
                orientation=orientation,
                lit_paths=lit,
                tick=tick,
            )
            return path.read_bytes()

        with tempfile.TemporaryDirectory() as folder:
            vector = drawn(Path(folder) / "picture.svg")
            image = Path(folder) / "picture.png"
            try:
                return vector, drawn(image, _FINE)
            except Fault:
                return vector, drawn(image)

    def done(answer: tuple[bytes, bytes]) -> None:
        vector, png = answer
        data = QMimeData()
        image = QImage.fromData(png)
        data.setImageData(image)
        data.setData("image/png", png)
        data.setData("image/svg+xml", vector)
        QGuiApplication.clipboard().setMimeData(data)
        window.said.setText(_tr("The picture is on the clipboard."))

    window.said.setText(_tr("Drawing the picture …"))
    window.errands.ask("save:copy", work, done)


def table_on_show(window: MainWindow) -> Shown | None:
    """The table of the page on show, or None where it shows none."""
    page = window.pages.currentWidget()
    return page.table_shown() if isinstance(page, BookPage) else None


def copy_table(window: MainWindow) -> None:
    """Put the table of the page on show on the clipboard, as a spreadsheet takes it."""
    shown = table_on_show(window)
    if shown is None:
        window.said.setText(_tr("This page shows no table to copy."))
        return
    from pedigreeview.exchange.spreadsheet_writing import table_text

    title, headings, rows = shown
    QGuiApplication.clipboard().setText(table_text(headings, rows, "\t"))
    said = _tr("{}, {}: the table is on the clipboard.")
    window.said.setText(said.format(title, count(len(rows), _tr("row"), _tr("rows"))))
