"""Print tags and lists: what, for which records, on which stock, with the pages beside.

The pages are laid out anew after every change, off the window's thread.  What does not fit is said
before anything is printed.
"""

from __future__ import annotations

from collections.abc import Mapping
from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import Qt, QTimer, Signal
from PySide6.QtWidgets import QDialog, QHBoxLayout, QWidget

from pedigreeview.book.faults import Fault
from pedigreeview.book.recording.printed_sheets import PrintedSheet, keep_sheets
from pedigreeview.reports.paper_choices import Chosen
from pedigreeview.reports.papers import Paper, make_paper
from pedigreeview.window.desk import Desk
from pedigreeview.window.errands import Errands
from pedigreeview.window.labels import action_button, column, heading, sentence
from pedigreeview.window.papers.pages_preview import PagesPreview
from pedigreeview.window.papers.paper_form import PaperForm
from pedigreeview.window.papers.paper_out import (
    ask_for_file,
    ask_for_printer,
    can_print,
    no_printing,
    side_by_side,
)
from pedigreeview.window.papers.words import paper_words
from pedigreeview.window.preferences import Preferences
from pedigreeview.window.style import step

if TYPE_CHECKING:
    from PySide6.QtPrintSupport import QPrinter

__all__ = ["PapersDialog"]

_LAY_OUT, _WRITE = "preview:papers", "save:papers"


class PapersDialog(QDialog):
    """The dialog; `printed` with a sentence for the foot of the window."""

    printed = Signal(str)

    def __init__(
        self,
        desk: Desk,
        errands: Errands,
        preferences: Preferences,
        offers: Mapping[str, Chosen] | None = None,
        paper: str = "",
        codes: tuple[str, ...] = (),
        parent: QWidget | None = None,
        *,
        also: Mapping[str, Chosen] | None = None,
    ) -> None:
        super().__init__(parent)
        self.setWindowTitle(self.tr("Print tags and lists"))
        self.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        self._desk, self._errands, self._preferences = desk, errands, preferences
        book = desk.book
        assert book is not None
        self._book = book
        self.paper: Paper | None = None
        """What is shown, ready to print; None while it is laid out or where it cannot be."""
        self._delay = QTimer(self)
        self._delay.setSingleShot(True)
        self._delay.setInterval(120)
        self._delay.timeout.connect(self._lay_out)
        self.form = PaperForm(book, preferences, offers or {}, paper, codes, also)
        self.form.changed.connect(self._changed)
        s = step()
        outer = column(2 * s, 3 * s)
        self.setLayout(outer)
        outer.addWidget(heading(self.tr("Print tags and lists"), 2))
        beside = QWidget()
        outer.addWidget(side_by_side(self.form, beside, 32, (40, 90)), 1)
        # Both are filled in their place: put there whole, Qt would dress them twice over.
        self.form.fill()
        self._fill_beside(beside)
        self.message = sentence("", "soft")
        self.message.hide()
        outer.addWidget(self.message)
        outer.addLayout(self._buttons())
        self.resize(140 * s, 90 * s)
        self.finished.connect(lambda _: self._leave())
        self._changed()

    def _fill_beside(self, beside: QWidget) -> None:
        held = column(step())
        beside.setLayout(held)
        self.preview = PagesPreview(self._errands, beside)
        held.addWidget(self.preview, 1)
        self.facts = sentence("")
        held.addWidget(self.facts)
        self.warnings = sentence("", "warn")
        self.warnings.setAccessibleName(self.tr("What does not fit"))
        held.addWidget(self.warnings)

    def _buttons(self) -> QHBoxLayout:
        row = QHBoxLayout()
        row.setSpacing(step())
        row.addWidget(action_button(self.tr("Cancel"), self.reject))
        row.addStretch(1)
        self.save_button = action_button(self.tr("Save as PDF …"), self.ask_file)
        row.addWidget(self.save_button)
        self.print_button = action_button(self.tr("Print …"), self.ask_printer, main=True)
        row.addWidget(self.print_button)
        if not can_print():
            self.print_button.hide()
            self._say(no_printing())
        return row

    # The pages ----------------------------------------------------------------------------------

    def _changed(self) -> None:
        self.paper = None
        self._ready()
        self._delay.start()

    def _lay_out(self) -> None:
        book, wish, titles = self._book, self.form.wish(), paper_words()
        self._errands.ask(
            _LAY_OUT, lambda: make_paper(book, wish, titles), self._laid_out, self._not_laid_out
        )

    def _laid_out(self, paper: Paper) -> None:
        self.paper = paper
        self.preview.show_paper(paper)
        facts = [paper.words()]
        if paper.sheets:
            numbers = ", ".join(dict.fromkeys(sheet.number for sheet in paper.sheets))
            if self._desk.can_write:
                text = self.tr("Its number is {}; by it the sheet is typed in on the Season page.")
            else:
                text = self.tr(
                    "Its number is {}. This book is only read, so it cannot keep the number; keep "
                    "it as a book first to type the sheet in by its number."
                )
            facts.append(text.format(numbers))
        self.facts.setText(" ".join(facts))
        self.warnings.setText("\n".join(paper.warnings))
        self.warnings.setVisible(bool(paper.warnings))
        self._ready()

    def _not_laid_out(self, fault: Fault) -> None:
        self.paper = None
        self.preview.show_words(f"{fault.what}\n{fault.todo}".strip())
        self.facts.setText("")
        self.warnings.setText("")
        self.warnings.hide()
        self._ready()

    def _ready(self) -> None:
        for button in (self.save_button, self.print_button):
            button.setEnabled(self.paper is not None)

    # Out on paper -------------------------------------------------------------------------------

    def ask_file(self) -> None:
        """Ask for the name of a PDF file, then write it."""
        folder = self._desk.opened.path.parent if self._desk.opened is not None else Path()
        ask_for_file(self, self.tr("Save as PDF"), folder, self._title(), "pdf", self.save_to)

    def _title(self) -> str:
        return self.paper.title if self.paper is not None else self.tr("Tags and lists")

    def save_to(self, path: Path) -> None:
        """Write the pages to a PDF file."""
        paper, tick = self.paper, self._errands.tick
        if paper is None:
            return
        self._begin(self.tr("Writing …"))
        said = self.tr("Saved {}").format(path.name)
        self._errands.ask(
            _WRITE,
            lambda: paper.save(path, tick),
            lambda _: self._done(paper, said),
            self._failed,
        )

    def ask_printer(self) -> None:
        """Open the system's dialog for the printer, then print."""
        if self.paper is not None:
            ask_for_printer(self, self.paper.layout, self.paper.title, self.print_to)

    def print_to(self, printer: QPrinter) -> None:
        """Send the pages to a printer, each at its true size."""
        paper, tick = self.paper, self._errands.tick
        if paper is None:
            return
        self._begin(self.tr("Printing …"))
        where = printer.printerName() or Path(printer.outputFileName()).name
        said = self.tr("Sent to {}: {}").format(where, paper.words())
        self._errands.ask(
            _WRITE,
            lambda: paper.print_on(printer, tick),
            lambda _: self._done(paper, said),
            self._failed,
        )

    def _begin(self, text: str) -> None:
        for button in (self.save_button, self.print_button):
            button.setEnabled(False)
        self._say(text)

    def _say(self, text: str) -> None:
        self.message.setText(text)
        self.message.setVisible(bool(text))

    def _failed(self, fault: Fault) -> None:
        self._ready()
        self._say(fault.sentence())

    def _done(self, paper: Paper, said: str) -> None:
        self.form.remember(paper.next_free)
        if paper.sheets and self._desk.can_write:
            self._keep(paper.sheets, said)
            return
        self.printed.emit(said)
        self.accept()

    def _keep(self, sheets: tuple[PrintedSheet, ...], said: str) -> None:
        """Keep the numbers of blank sheets in the book, so that they are found again."""
        numbers = ", ".join(dict.fromkeys(sheet.number for sheet in sheets))

        def done(_: object) -> None:
            self.printed.emit(said)
            self.accept()

        self._desk.record(
            self.tr("garden sheet {}").format(numbers),
            lambda edit: keep_sheets(edit, sheets),
            done,
            self._failed,
        )

    def _leave(self) -> None:
        self._delay.stop()
        self.preview.leave()
        for kind in (_LAY_OUT, _WRITE):
            self._errands.drop(kind)
