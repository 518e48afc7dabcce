"""Print what is shown: printer or PDF file, paper, one sheet or several, with the sheets beside."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from pathlib import Path
from typing import TYPE_CHECKING, Literal

from PySide6.QtCore import QStandardPaths, Signal
from PySide6.QtPrintSupport import QPrinter, QPrinterInfo
from PySide6.QtWidgets import QLineEdit, QSpinBox, QWidget

from pedigreeview.drawing.view import Look
from pedigreeview.reports.chart import file_stem, pages_of
from pedigreeview.window.errands import Errands
from pedigreeview.window.labels import action_button, set_apart
from pedigreeview.window.picture_dialog import PictureDialog
from pedigreeview.window.picture_fields import ask_file, choice
from pedigreeview.window.words import count

if TYPE_CHECKING:
    from pedigreeview.network import PedigreeNetwork

__all__ = ["PrintView", "printer_names"]


def printer_names() -> list[str]:
    """The printers that the system knows, the usual one first."""
    usual = QPrinterInfo.defaultPrinterName()
    names = list(QPrinterInfo.availablePrinterNames())
    return sorted(names, key=lambda name: name != usual)


class PrintView(PictureDialog):
    """The dialog; `printed` says how many sheets went out and where to."""

    printed = Signal(int, str)
    preview_errand = "preview:print"
    writing_errand = "save:print"

    def __init__(
        self,
        net: PedigreeNetwork,
        look: Look,
        errands: Errands,
        title: str,
        orientation: Literal["down", "right"] = "down",
        parent: QWidget | None = None,
        *,
        lit_paths: Iterable[Sequence[str]] = (),
    ) -> None:
        super().__init__(net, look, errands, title, orientation, parent, lit_paths)
        self.printer = choice(
            self.tr("Printer"), [*printer_names(), self.tr("A PDF file, to print elsewhere")]
        )
        folder = QStandardPaths.writableLocation(QStandardPaths.StandardLocation.DocumentsLocation)
        self.file = QLineEdit(str(Path(folder) / f"{file_stem(net)}.pdf"))
        self.file.setAccessibleName(self.tr("File to write"))
        self.browse = action_button(self.tr("Browse …"), self._browse)
        self.copies = QSpinBox()
        set_apart(self.copies)
        self.copies.setRange(1, 99)
        self.copies.setAccessibleName(self.tr("Copies"))
        self.printer.currentIndexChanged.connect(self._changed)
        self._lay(self.tr("Print the picture"), self.tr("Print"), self.print_out)

    def _rows(self) -> Sequence[tuple[str, QWidget]]:
        return (
            (self.tr("Printer"), self.printer),
            (self.tr("File"), self.file),
            ("", self.browse),
            (self.tr("What"), self.what),
            *self._words_and_paper(),
            (self.tr("Copies"), self.copies),
            ("", self.grey),
        )

    def to_file(self) -> bool:
        """Whether a PDF file is written in place of printing."""
        return self.printer.currentIndex() == self.printer.count() - 1

    def _changed(self) -> None:
        form, file = self._fields, self.to_file()
        form.setRowVisible(self.file, file)
        form.setRowVisible(self.browse, file)
        form.setRowVisible(self.copies, not file)
        self.save_button.setText(self.tr("Write the PDF") if file else self.tr("Print"))
        self.message.setText("")
        super()._changed()

    def _browse(self) -> None:
        ask_file(self, self.tr("Print to the file"), self.file, "pdf", self.file.setText)

    # Printing -----------------------------------------------------------------------------------

    def _device(self) -> tuple[QPrinter, str, Path | None]:
        """What is painted on, how it is called, and the file if it is one."""
        device = QPrinter(QPrinter.PrinterMode.HighResolution)
        path = Path(self.file.text().strip()).expanduser() if self.to_file() else None
        if path is not None:
            device.setOutputFormat(QPrinter.OutputFormat.PdfFormat)
            where = path.name
        else:
            where = self.printer.currentText()
            device.setPrinterName(where)
            device.setCopyCount(self.copies.value())
            if self.grey.isChecked():
                device.setColorMode(QPrinter.ColorMode.GrayScale)
        device.setDocName(self.title.text() or self.tr("Pedigree"))
        device.setCreator("pedigreeview")
        return device, where, path

    def print_out(self) -> None:
        """Print, off the window's thread; the dialog closes when it is done."""
        if self.to_file() and not self.file.text().strip():
            self.message.setText(self.tr("Say which file is to be written."))
            return
        device, where, path = self._device()
        net, look, finish = self._net, self.look(), self.finish()
        placing, tick = self._placing(), self._errands.tick

        def work() -> int:
            from pedigreeview.exchange.writing import replace_file
            from pedigreeview.reports.printing import print_pages

            pages = pages_of(net, placing(), look, finish)
            if path is None:
                return print_pages(pages, device, tick)
            with replace_file(path) as beside:
                device.setOutputFileName(str(beside))
                return print_pages(pages, device, tick)

        self.save_button.setEnabled(False)
        self.message.setText(self.tr("Printing …"))
        self._errands.ask(
            self.writing_errand, work, lambda sheets: self._went_out(sheets, where), self._failed
        )

    def _went_out(self, sheets: int, where: str) -> None:
        self.printed.emit(sheets, where)
        self.accept()

    def words_when_done(self, sheets: int, where: str) -> str:
        """'2 sheets sent to Office', for the foot of the window."""
        return self.tr("{} sent to {}").format(
            count(sheets, self.tr("sheet"), self.tr("sheets")), where
        )
