"""Print what is shown: printer or PDF file, paper, one sheet or several, with the sheets beside.

What the sheets hold is made by `reports`, the same as for a saved picture.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import replace
from pathlib import Path
from typing import TYPE_CHECKING, Literal

from PySide6.QtCore import QStandardPaths, Qt, QTimer, Signal
from PySide6.QtGui import QImage
from PySide6.QtWidgets import (
    QCheckBox,
    QComboBox,
    QDialog,
    QFileDialog,
    QFormLayout,
    QHBoxLayout,
    QLineEdit,
    QSpinBox,
    QWidget,
)

from pedigreeview.book.faults import Fault
from pedigreeview.drawing.view import Look
from pedigreeview.window.errands import Errands
from pedigreeview.window.labels import (
    action_button,
    column,
    heading,
    scrolled,
    sentence,
    set_apart,
)
from pedigreeview.window.sheet_preview import SheetPreview
from pedigreeview.window.style import step
from pedigreeview.window.words import count

if TYPE_CHECKING:
    from PySide6.QtPrintSupport import QPrinter

    from pedigreeview.drawing.placing import Placed
    from pedigreeview.network import PedigreeNetwork

__all__ = ["PrintView", "printer_names"]

_PAPERS = ("A4", "A3", "A2", "A1", "A0", "A5", "Letter", "Legal", "Tabloid")
_PREVIEW, _PRINT = "preview:print", "save:print"


def printer_names() -> list[str]:
    """The printers that the system knows, the usual one first."""
    from PySide6.QtPrintSupport import QPrinterInfo

    usual = QPrinterInfo.defaultPrinterName()
    names = list(QPrinterInfo.availablePrinterNames())
    return sorted(names, key=lambda name: name != usual)


class PrintView(QDialog):
    """The dialog; `printed` says how many sheets went out and where to."""

    printed = Signal(int, str)

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
        super().__init__(parent)
        self.setWindowTitle(self.tr("Print the picture"))
        self.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        self._net, self._look, self._errands = net, look, errands
        self._orientation = orientation
        self._lit_paths = [tuple(path) for path in lit_paths]
        self._placed: tuple[Look, Placed] | None = None
        self._delay = QTimer(self)
        self._delay.setSingleShot(True)
        self._delay.setInterval(150)
        self._delay.timeout.connect(self._draw_preview)
        s = step()
        outer = column(2 * s, 3 * s)
        self.setLayout(outer)
        outer.addWidget(heading(self.tr("Print the picture"), 2))
        row = QHBoxLayout()
        row.setSpacing(3 * s)
        fields = QWidget()
        fields.setLayout(self._form(title))
        row.addWidget(scrolled(fields), 3)
        beside = column(s)
        self.preview = SheetPreview()
        beside.addWidget(self.preview, 1)
        self.sheets_note = sentence("", "soft")
        beside.addWidget(self.sheets_note)
        row.addLayout(beside, 4)
        outer.addLayout(row, 1)
        self.message = sentence("", "soft")
        outer.addWidget(self.message)
        buttons = QHBoxLayout()
        buttons.setSpacing(s)
        buttons.addWidget(action_button(self.tr("Cancel"), self.reject))
        buttons.addStretch(1)
        self.print_button = action_button(self.tr("Print"), self.print_out, main=True)
        self.print_button.setDefault(True)
        buttons.addWidget(self.print_button)
        outer.addLayout(buttons)
        self.resize(116 * s, 76 * s)
        self.finished.connect(lambda _: self._leave())
        self._changed()

    def _form(self, title: str) -> QFormLayout:
        s = step()
        form = self._fields = QFormLayout()
        form.setSpacing(s)
        form.setRowWrapPolicy(QFormLayout.RowWrapPolicy.WrapAllRows)
        form.setFieldGrowthPolicy(QFormLayout.FieldGrowthPolicy.AllNonFixedFieldsGrow)
        form.setContentsMargins(0, 0, s, 0)
        self.printer = self._combo(
            self.tr("Printer"), [*printer_names(), self.tr("A PDF file, to print elsewhere")]
        )
        folder = QStandardPaths.writableLocation(QStandardPaths.StandardLocation.DocumentsLocation)
        from pedigreeview.reports.chart import file_stem

        self.file = QLineEdit(str(Path(folder) / f"{file_stem(self._net)}.pdf"))
        self.file.setAccessibleName(self.tr("File to write"))
        self.browse = action_button(self.tr("Browse …"), self._browse)
        self.what = self._combo(
            self.tr("What to print"), [self.tr("the picture as it is shown"), self.tr("whole book")]
        )
        self.what.setEnabled(self._look.focus is not None)
        self.title = QLineEdit(title)
        self.title.setAccessibleName(self.tr("Title"))
        self.paper = self._combo(self.tr("Paper"), list(_PAPERS))
        self.way = self._combo(
            self.tr("Way of the paper"),
            [self.tr("as it fits better"), self.tr("upright"), self.tr("lengthwise")],
        )
        self.sheets = self._combo(
            self.tr("Sheets"),
            [self.tr("all on one sheet"), self.tr("full size, over several sheets to join")],
        )
        self.copies = QSpinBox()
        set_apart(self.copies)
        self.copies.setRange(1, 99)
        self.copies.setAccessibleName(self.tr("Copies"))
        self.grey = QCheckBox(self.tr("In grey, founders told apart by pattern"))
        for name, field in (
            (self.tr("Printer"), self.printer),
            (self.tr("File"), self.file),
            ("", self.browse),
            (self.tr("What"), self.what),
            (self.tr("Title"), self.title),
            (self.tr("Paper"), self.paper),
            (self.tr("Way of the paper"), self.way),
            (self.tr("Sheets"), self.sheets),
            (self.tr("Copies"), self.copies),
            ("", self.grey),
        ):
            form.addRow(name, field)
        for combo in (self.printer, self.what, self.paper, self.way, self.sheets):
            combo.currentIndexChanged.connect(self._changed)
        self.grey.toggled.connect(self._changed)
        self.title.textEdited.connect(self._delay.start)
        return form

    def _combo(self, name: str, entries: list[str]) -> QComboBox:
        combo = QComboBox()
        combo.addItems(entries)
        combo.setAccessibleName(name)
        combo.setSizeAdjustPolicy(QComboBox.SizeAdjustPolicy.AdjustToMinimumContentsLengthWithIcon)
        combo.setMinimumContentsLength(8)
        return combo

    def _browse(self) -> None:
        dialog = QFileDialog(self, self.tr("Print to the file"), self.file.text(), "PDF (*.pdf)")
        dialog.setAcceptMode(QFileDialog.AcceptMode.AcceptSave)
        dialog.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        dialog.setDefaultSuffix("pdf")
        dialog.selectFile(self.file.text())
        dialog.fileSelected.connect(self.file.setText)
        dialog.open()

    # What was chosen ----------------------------------------------------------------------------

    def to_file(self) -> bool:
        """Whether a PDF file is written in place of printing."""
        return self.printer.currentIndex() == self.printer.count() - 1

    def look(self) -> Look:
        """What the picture is to show."""
        if self.what.currentIndex() == 1:
            return replace(self._look, focus=None, unfolded=frozenset())
        return self._look

    def landscape(self) -> bool | None:
        """Lengthwise, upright, or None for what fits better."""
        return (None, False, True)[self.way.currentIndex()]

    def _changed(self) -> None:
        form, file = self._fields, self.to_file()
        form.setRowVisible(self.file, file)
        form.setRowVisible(self.browse, file)
        form.setRowVisible(self.copies, not file)
        self.print_button.setText(self.tr("Write the PDF") if file else self.tr("Print"))
        self.message.setText("")
        self._delay.start()

    # The sheets ---------------------------------------------------------------------------------

    def _draw_preview(self) -> None:
        net, look, running = self._net, self.look(), self._orientation
        title, grey, paper = self.title.text(), self.grey.isChecked(), self.paper.currentText()
        way, tiled = self.landscape(), self.sheets.currentIndex() == 1
        held, lit, tick = self._placed, self._lit_paths, self._errands.tick

        def work() -> tuple[QImage, str, tuple[Look, Placed]]:
            from pedigreeview.reports.chart import picture_of, preview_of

            if held is not None and held[0] == look:
                placed = held[1]
            else:
                placed = picture_of(net, look, orientation=running, tick=tick)
            image, words = preview_of(
                net,
                placed,
                look,
                kind="pdf",
                title=title,
                paper=paper,
                landscape=way,
                tiled=tiled,
                theme="grey" if grey else "light",
                lit_paths=lit,
            )
            return image, words, (look, placed)

        self._errands.ask(_PREVIEW, work, self._previewed, self._no_preview)

    def _previewed(self, answer: tuple[QImage, str, tuple[Look, Placed]]) -> None:
        image, words, self._placed = answer
        self.preview.show_image(image)
        self.sheets_note.setText(words)
        self.preview.setAccessibleDescription(words)

    def _no_preview(self, fault: Fault) -> None:
        self.preview.show_words(fault.sentence())
        self.sheets_note.setText("")

    # Printing -----------------------------------------------------------------------------------

    def _device(self) -> tuple[QPrinter, str, Path | None]:
        """What is painted on, how it is called, and the file if it is one."""
        from PySide6.QtPrintSupport import QPrinter

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
        net, look, running = self._net, self.look(), self._orientation
        title, grey, paper = self.title.text(), self.grey.isChecked(), self.paper.currentText()
        way, tiled = self.landscape(), self.sheets.currentIndex() == 1
        held, lit, tick = self._placed, self._lit_paths, self._errands.tick

        def work() -> int:
            from pedigreeview.exchange.writing import replace_file
            from pedigreeview.reports.chart import picture_of
            from pedigreeview.reports.printing import pages_of, print_pages

            if held is not None and held[0] == look:
                placed = held[1]
            else:
                placed = picture_of(net, look, orientation=running, tick=tick)
            pages = pages_of(
                net,
                placed,
                look,
                title=title,
                paper=paper,
                landscape=way,
                tiled=tiled,
                theme="grey" if grey else "light",
                lit_paths=lit,
            )
            if path is None:
                return print_pages(pages, device, tick)
            with replace_file(path) as beside:
                device.setOutputFileName(str(beside))
                return print_pages(pages, device, tick)

        self.print_button.setEnabled(False)
        self.message.setText(self.tr("Printing …"))
        self._errands.ask(_PRINT, work, lambda sheets: self._done(sheets, where), self._failed)

    def _done(self, sheets: int, where: str) -> None:
        self.printed.emit(sheets, where)
        self.accept()

    def _failed(self, fault: Fault) -> None:
        self.print_button.setEnabled(True)
        self.message.setText(fault.sentence())

    def words_when_done(self, sheets: int, where: str) -> str:
        """'2 sheets sent to Office', for the foot of the window."""
        return self.tr("{} sent to {}").format(
            count(sheets, self.tr("sheet"), self.tr("sheets")), where
        )

    def _leave(self) -> None:
        self._delay.stop()
        for kind in (_PREVIEW, _PRINT):
            self._errands.drop(kind)
