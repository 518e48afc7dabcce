"""What every dialog with pages shares: form beside pages, and the ways to a file and a printer."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import QCoreApplication, QStandardPaths, Qt
from PySide6.QtGui import QPageLayout
from PySide6.QtWidgets import QFileDialog, QSplitter, QWidget

from pedigreeview.window.labels import scrolled
from pedigreeview.window.style import step

if TYPE_CHECKING:
    from PySide6.QtPrintSupport import QPrinter

__all__ = ["ask_for_file", "ask_for_printer", "can_print", "no_printing", "side_by_side"]


def _tr(text: str) -> str:
    return QCoreApplication.translate("PaperOut", text)


def side_by_side(form: QWidget, beside: QWidget, least: int, shares: tuple[int, int]) -> QSplitter:
    """A form that scrolls, and what it makes beside it.

    least : least width of the form, in steps of the grid
    shares : widths of both to begin with, in steps
    """
    s = step()
    across = QSplitter(Qt.Orientation.Horizontal)
    across.setChildrenCollapsible(False)
    across.setHandleWidth(2 * s)
    across.setStyleSheet("QSplitter::handle { background: transparent; }")
    area = scrolled(form)
    area.setMinimumWidth(least * s)
    across.addWidget(area)
    across.addWidget(beside)
    across.setStretchFactor(0, 0)
    across.setStretchFactor(1, 1)
    across.setSizes([share * s for share in shares])
    return across


def ask_for_file(
    parent: QWidget,
    words: str,
    folder: Path,
    title: str,
    ending: str,
    take: Callable[[Path], None],
) -> None:
    """Ask for the name of a file to write, with one made of the title proposed.

    Parameters
    ----------
    words : title of the dialog
    folder : where it is proposed to go; the person's documents where that is no folder
    ending : 'pdf' or 'html'
    take : called with the file that was chosen
    """
    if not folder.is_dir():
        documents = QStandardPaths.StandardLocation.DocumentsLocation
        folder = Path(QStandardPaths.writableLocation(documents))
    signs = title.replace(": ", " - ")
    name = "".join(sign if sign.isalnum() or sign in " -_" else "-" for sign in signs).strip()
    name = f"{name}.{ending}"
    dialog = QFileDialog(parent, words, str(folder / name), f"{ending.upper()} (*.{ending})")
    dialog.setAcceptMode(QFileDialog.AcceptMode.AcceptSave)
    dialog.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
    dialog.setDefaultSuffix(ending)
    dialog.selectFile(name)
    dialog.fileSelected.connect(lambda path: take(Path(path)))
    dialog.open()


def can_print() -> bool:
    """Whether the part of Qt that prints is there."""
    try:
        from PySide6 import QtPrintSupport  # noqa: F401
    except ImportError:
        return False
    return True


def no_printing() -> str:
    """What to do where it is not there."""
    return _tr("This program came without printing; save a PDF and print that.")


def ask_for_printer(
    parent: QWidget, layout: QPageLayout, title: str, take: Callable[[QPrinter], None]
) -> None:
    """Open the system's dialog for the printer; `take` is called with the one that was chosen."""
    from PySide6.QtPrintSupport import QPrintDialog, QPrinter

    printer = QPrinter(QPrinter.PrinterMode.HighResolution)
    printer.setPageLayout(layout)
    printer.setFullPage(True)
    printer.setDocName(title)
    printer.setCreator("pedigreeview")
    dialog = QPrintDialog(printer, parent)
    dialog.setWindowTitle(_tr("Print"))
    dialog.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
    dialog.accepted.connect(lambda: take(printer))
    # Its own open() asks for a slot by name; shown so, it blocks nothing.
    dialog.setWindowModality(Qt.WindowModality.WindowModal)
    dialog.show()
