"""The report on a plant, or the history of a line: chosen, seen page by page, saved or printed.

The report is made once and its pages are laid out anew after every change, off the window's thread.
"""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path
from typing import TYPE_CHECKING, Any, cast

from PySide6.QtCore import Qt, QTimer, Signal
from PySide6.QtWidgets import QDialog, QHBoxLayout, QWidget

from pedigreeview.book.faults import Fault
from pedigreeview.reports.report_model import Picture, Report
from pedigreeview.window.errands import Errands
from pedigreeview.window.labels import action_button, column, heading, sentence
from pedigreeview.window.papers.pages_preview import PagesPreview
from pedigreeview.window.papers.paper_out import (
    ask_for_file,
    ask_for_printer,
    can_print,
    no_printing,
    side_by_side,
)
from pedigreeview.window.preferences import Preferences
from pedigreeview.window.report_form import ReportForm
from pedigreeview.window.style import step

if TYPE_CHECKING:
    from PySide6.QtPrintSupport import QPrinter

    from pedigreeview.network import PedigreeNetwork
    from pedigreeview.reports.report_pages import ReportPages
    from pedigreeview.reports.report_picture import LinePicture
    from pedigreeview.window.main_window import MainWindow

__all__ = ["ReportDialog", "plant_at_hand"]

_MAKE, _LAY_OUT, _WRITE = "preview:report", "preview:report pages", "save:report"


def plant_at_hand(window: MainWindow) -> str:
    """The plant that a report is asked of: the marked one, else the focus, else the first."""
    if window.opened is None:
        return ""
    from pedigreeview.window.walking import first_focus

    page = window.pedigree
    return page.selected or page.focus or first_focus(window.opened.net) or ""


class ReportDialog(QDialog):
    """The dialog; `saved` with the path, `printed` with a sentence for the foot of the window."""

    saved = Signal(object)
    printed = Signal(str)

    def __init__(
        self,
        net: PedigreeNetwork,
        code: str,
        errands: Errands,
        preferences: Preferences,
        folder: Path,
        parent: QWidget | None = None,
        *,
        line: bool = False,
    ) -> None:
        super().__init__(parent)
        self.setWindowTitle(self.tr("Report"))
        self.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        self._net, self._code, self._errands, self._folder = net, code, errands, folder
        self.report: Report | None = None
        """The whole report with all its parts; None while it is made."""
        self.pages: ReportPages | None = None
        """What is shown, ready to print; None while it is laid out."""
        self._placed: dict[tuple[bool, str], LinePicture] = {}
        self._delay = QTimer(self)
        self._delay.setSingleShot(True)
        self._delay.setInterval(200)
        self._delay.timeout.connect(self._lay_out)
        founder = net.parents(code).raised == "founder"
        self.form = ReportForm(code, preferences, line=line, founder=founder)
        self.form.changed.connect(self._changed)
        self.form.kind_changed.connect(self._make)
        s = step()
        outer = column(2 * s, 3 * s)
        self.setLayout(outer)
        outer.addWidget(heading(self.tr("Report on {}").format(code), 2))
        beside = QWidget()
        held = column(s)
        beside.setLayout(held)
        outer.addWidget(side_by_side(self.form, beside, 36, (44, 90)), 1)
        # Laid into its place, it takes the style sheet once.
        self.preview = PagesPreview(errands)
        held.addWidget(self.preview, 1)
        self.facts = sentence("", "soft")
        held.addWidget(self.facts)
        self.message = sentence("", "soft")
        self.message.hide()
        outer.addWidget(self.message)
        outer.addLayout(self._buttons())
        self.resize(140 * s, 90 * s)
        self.finished.connect(lambda _: self._leave())
        self._make()

    def _buttons(self) -> QHBoxLayout:
        row = QHBoxLayout()
        row.setSpacing(step())
        row.addWidget(action_button(self.tr("Cancel"), self.reject))
        row.addStretch(1)
        self.html_button = action_button(self.tr("Save as HTML …"), lambda: self.ask_file("html"))
        self.print_button = action_button(self.tr("Print …"), self.ask_printer)
        self.pdf_button = action_button(
            self.tr("Save as PDF …"), lambda: self.ask_file("pdf"), main=True
        )
        self.pdf_button.setDefault(True)
        for button in (self.html_button, self.print_button, self.pdf_button):
            row.addWidget(button)
        return row

    # Making and laying out ----------------------------------------------------------------------

    def _make(self) -> None:
        """Gather the report anew: another kind was chosen."""
        net, code, line, tick = self._net, self._code, self.form.is_line(), self._errands.tick
        self.report = self.pages = None
        self._delay.stop()
        self._ready()
        self.facts.setText(self.tr("Gathering what the book knows …"))

        def work() -> Report:
            from pedigreeview.reports.line_history import line_history
            from pedigreeview.reports.plant_report import plant_report

            return (
                line_history(net, code, tick=tick) if line else plant_report(net, code, tick=tick)
            )

        self._errands.ask(_MAKE, work, self._made, self._failed_to_show)

    def _made(self, report: Report) -> None:
        self.report = report
        self.form.show_parts(report.parts)
        self._lay_out()

    def _changed(self) -> None:
        self.pages = None
        self._ready()
        if self.report is not None:
            self._delay.start()

    def wanted(self) -> Report | None:
        """The report with the chosen parts and what the person adds."""
        if self.report is None:
            return None
        return self.report.only(self.form.parts()).with_cover(self.form.cover())

    def _picture(self, report: Report) -> Callable[[], LinePicture | None]:
        """The pedigree of the report, placed once for each theme."""
        net, theme, held = self._net, self.form.theme(), self._placed
        key = (self.form.is_line(), theme)

        def placed() -> LinePicture | None:
            from pedigreeview.reports.report_picture import line_picture

            for section in report.sections:
                for item in section.items:
                    if isinstance(item, Picture):
                        if key not in held:
                            held[key] = line_picture(net, item, theme)
                        return held[key]
            return None

        return placed

    def _lay_out(self) -> None:
        report = self.wanted()
        if report is None:
            return
        net, theme, tick = self._net, self.form.theme(), self._errands.tick
        paper, placed = str(self.form.paper.currentData()), self._picture(report)

        def work() -> ReportPages:
            from pedigreeview.reports.report_pages import lay_out_report

            return lay_out_report(net, report, paper=paper, theme=theme, placed=placed(), tick=tick)

        self._errands.ask(_LAY_OUT, work, self._laid_out, self._failed_to_show)

    def _laid_out(self, pages: ReportPages) -> None:
        self.pages = pages
        # The preview wants pages that count, paint and describe themselves; these do.
        self.preview.show_paper(cast(Any, pages))
        self.facts.setText(pages.words())
        self._ready()

    def _failed_to_show(self, fault: Fault) -> None:
        self.pages = None
        self.preview.show_words(f"{fault.what}\n{fault.todo}".strip())
        self.facts.setText("")
        self._ready()

    def _ready(self) -> None:
        for button in (self.html_button, self.print_button, self.pdf_button):
            button.setEnabled(self.pages is not None)

    # Out ----------------------------------------------------------------------------------------

    def ask_file(self, ending: str) -> None:
        """Ask for the name of a file, then write it."""
        if self.pages is None:
            return
        title = self.pages.report.title
        ask_for_file(self, self.tr("Save the report"), self._folder, title, ending, self.save_to)

    def save_to(self, path: Path) -> None:
        """Write the report, PDF or HTML by the ending, off the window's thread."""
        pages, net, theme = self.pages, self._net, self.form.theme()
        if pages is None:
            return
        placed, tick = self._picture(pages.report), self._errands.tick

        def work() -> Path:
            if path.suffix.lower() == ".pdf":
                from pedigreeview.reports.report_pdf import save_report_pdf

                return save_report_pdf(path, pages, tick=tick)
            from pedigreeview.reports.report_html import save_report_html

            return save_report_html(
                path, net, pages.report, theme=theme, placed=placed(), tick=tick
            )

        self._begin(self.tr("Writing …"))
        self._errands.ask(_WRITE, work, self._saved, self._failed)

    def _saved(self, path: Path) -> None:
        self.form.remember()
        self.saved.emit(path)
        self.accept()

    def ask_printer(self) -> None:
        """Open the system's dialog for the printer, then print."""
        if self.pages is None:
            return
        if not can_print():
            self._say(no_printing())
            return
        ask_for_printer(self, self.pages.layout, self.pages.report.title, self.print_to)

    def print_to(self, printer: QPrinter) -> None:
        """Send the pages to a printer, each at its true size."""
        pages, tick = self.pages, self._errands.tick
        if pages is None:
            return
        where = printer.printerName() or Path(printer.outputFileName()).name
        said = self.tr("Sent to {}: {}").format(where, pages.words())

        def work() -> int:
            from pedigreeview.reports.report_pdf import print_report

            return print_report(pages, printer, tick)

        self._begin(self.tr("Printing …"))
        self._errands.ask(_WRITE, work, lambda _: self._printed(said), self._failed)

    def _printed(self, said: str) -> None:
        self.form.remember()
        self.printed.emit(said)
        self.accept()

    def _begin(self, text: str) -> None:
        for button in (self.html_button, self.print_button, self.pdf_button):
            button.setEnabled(False)
        self._say(text)

    def _say(self, text: str) -> None:
        self.message.setText(text)
        self.message.setVisible(bool(text))

    def _failed(self, fault: Fault) -> None:
        self._ready()
        self._say(fault.sentence())

    def _leave(self) -> None:
        self._delay.stop()
        self.preview.leave()
        for kind in (_MAKE, _LAY_OUT, _WRITE):
            self._errands.drop(kind)
