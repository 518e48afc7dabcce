"""Two people's books put together: clashing codes, differences, then one edit and a report."""

from __future__ import annotations

from collections.abc import Callable
from contextlib import ExitStack
from dataclasses import dataclass
from pathlib import Path
from typing import TYPE_CHECKING, Any

from PySide6.QtCore import QCoreApplication, Qt, QTimer
from PySide6.QtWidgets import (
    QAbstractItemView,
    QFileDialog,
    QFormLayout,
    QHeaderView,
    QLineEdit,
    QSplitter,
    QTableWidget,
    QTableWidgetItem,
    QWidget,
)

from pedigreeview.book.faults import Fault
from pedigreeview.exchange.merging import Comparison, RenameRule, compare, proposed_names
from pedigreeview.exchange.ticking import Tick, no_tick
from pedigreeview.window.importing.bringing_dialog import BringingDialog
from pedigreeview.window.importing.differences import DifferencesTable
from pedigreeview.window.importing.halt import Halt
from pedigreeview.window.importing.report_view import ReportView
from pedigreeview.window.importing.words import chosen_words
from pedigreeview.window.labels import action_button, column, heading, sentence
from pedigreeview.window.record_words import table_words
from pedigreeview.window.style import step
from pedigreeview.window.words import count

if TYPE_CHECKING:
    from pedigreeview.book.book import Book
    from pedigreeview.book.edits import Edit
    from pedigreeview.window.desk import Desk
    from pedigreeview.window.errands import Errands
    from pedigreeview.window.main_window import MainWindow

__all__ = ["MergingDialog", "ask_book", "merge_with", "photo_of"]

_WORK = "open:merge"
_MOST_SHOWN = 2_000
_AFTER = 200
"""Milliseconds of quiet in the rule before it is tried."""


def ask_book(window: MainWindow) -> None:
    """Ask for the other book and merge it."""
    if window.opened is None:
        return
    text = QCoreApplication.translate("Merging", "Bring in another book")
    dialog = QFileDialog(window, text, window.door.folder())
    dialog.setFileMode(QFileDialog.FileMode.ExistingFile)
    books = "*.pedbook datapackage.json *.csv *.tsv *.json *.graphml *.gexf *.xlsx *.ods"
    dialog.setNameFilters(
        [
            QCoreApplication.translate("Merging", "Books ({})").format(books),
            QCoreApplication.translate("Merging", "All files (*)"),
        ]
    )
    dialog.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
    dialog.fileSelected.connect(lambda path: merge_with(window, Path(path)))
    window.show_dialog(dialog)


def merge_with(window: MainWindow, path: Path) -> None:
    """Lay another book beside the one that lies open."""
    if path.name == "datapackage.json":
        path = path.parent
    window.show_dialog(MergingDialog(path, window.errands, window.desk, window))


def photo_of(
    path: Path,
    names: dict[tuple[str, str], str],
    held: ExitStack,
    tick: Tick = no_tick,
) -> Callable[[str], Any]:
    """What gives the bytes of a photo of the other book by the name that it has in mine.

    held : keeps the other book's file open as long as photos are asked for
    tick : called while that file is opened, and before each photo
    """
    before = {new: old for (table, old), new in names.items() if table == "photos"}
    if path.suffix.lower() == ".pedbook":
        from pedigreeview.book.book_file import BookFile

        other = BookFile.open(path, read_only=True, backups=False, tick=tick)
        file = held.enter_context(other)

        def stored(name: str) -> bytes | None:
            tick()
            try:
                return file.file(f"photos/{before.get(name, name)}")
            except Fault:
                return None

        return stored

    def lying(name: str) -> bytes | None:
        tick()
        own = before.get(name, name)
        place = path / "photos" / own
        if Path(own).name != own or not place.is_file():
            return None
        return place.read_bytes()

    return lying


@dataclass(frozen=True, slots=True)
class _Found:
    book: Book
    comparison: Comparison
    lines: tuple[str, ...]


class MergingDialog(BringingDialog):
    """Shows what would come in; writes it as one edit."""

    def __init__(
        self, path: Path, errands: Errands, desk: Desk, parent: QWidget | None = None
    ) -> None:
        super().__init__(errands, parent)
        self._path, self._desk = path, desk
        self._theirs: Book | None = None
        self.found: Comparison | None = None
        title = desk.opened.title if desk.opened is not None else ""
        self.setWindowTitle(self.tr("Bring in another book"))
        s = step()
        layout = column(s, 2 * s)
        self.setLayout(layout)
        text = self.tr("Bring {} into {}").format(path.name, title)
        layout.addWidget(heading(text, 2))
        self.report = ReportView(errands, path.parent)
        for page in (self._waiting, self._sides(), self.report):
            self.stack.addWidget(page)
        layout.addWidget(self.stack, 1)
        layout.addWidget(self.message)
        self.main_button = action_button(self.tr("Bring it &in"), self.go_on, main=True)
        layout.addLayout(self._foot(self.main_button))
        self._delay = QTimer(self)
        self._delay.setSingleShot(True)
        self._delay.setInterval(_AFTER)
        self._delay.timeout.connect(self._compare)
        self.finished.connect(self._leave)
        self.resize(140 * s, 96 * s)
        self._compare()

    def _sides(self) -> QWidget:
        s = step()
        page = QWidget()
        layout = column(2 * s)
        page.setLayout(layout)
        self.summary = sentence("")
        layout.addWidget(self.summary)
        self.clash = QWidget()
        clash = column(s)
        self.clash.setLayout(clash)
        clash.addWidget(heading(self.tr("One code, two different things"), 3))
        self.clash_said = sentence("", "soft")
        clash.addWidget(self.clash_said)
        form = QFormLayout()
        form.setSpacing(s)
        self.before = QLineEdit()
        self.before.setPlaceholderText(self.tr("such as Ann-"))
        self.behind = QLineEdit(RenameRule().behind)
        for field, text in (
            (self.before, self.tr("Put &before their code")),
            (self.behind, self.tr("Put be&hind their code")),
        ):
            field.textEdited.connect(lambda _: self._delay.start())
            field.setMaximumWidth(40 * s)
            form.addRow(text, field)
        clash.addLayout(form)
        self.names = QTableWidget(0, 3)
        self.names.setAccessibleName(self.tr("Codes of the other book that are changed"))
        self.names.setHorizontalHeaderLabels(
            [self.tr("Table"), self.tr("Their code"), self.tr("Becomes")]
        )
        self.names.setEditTriggers(QAbstractItemView.EditTrigger.NoEditTriggers)
        self.names.setTabKeyNavigation(False)
        self.names.verticalHeader().hide()
        header = self.names.horizontalHeader()
        header.setSectionResizeMode(QHeaderView.ResizeMode.Stretch)
        header.setDefaultAlignment(Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter)
        self.names.setMinimumHeight(10 * s)
        clash.addWidget(self.names, 1)
        self.differences = DifferencesTable()
        split = QSplitter(Qt.Orientation.Vertical)
        split.setChildrenCollapsible(False)
        split.setHandleWidth(max(3, s // 3))
        split.addWidget(self.clash)
        split.addWidget(self.differences)
        layout.addWidget(split, 1)
        self.left = sentence("", "soft")
        layout.addWidget(self.left)
        return page

    # Comparing ----------------------------------------------------------------------------------

    def _compare(self) -> None:
        mine, path, theirs = self._desk.book, self._path, self._theirs
        rule = RenameRule(self.before.text(), self.behind.text())
        tick = self._errands.tick
        if mine is None:
            return

        def work() -> _Found:
            from pedigreeview.exchange.formats import read_path_as

            other = theirs if theirs is not None else read_path_as(path, tick=tick)
            names = proposed_names(mine, other, rule, tick)
            found = compare(mine, other, names=names, tick=tick)
            new: dict[str, int] = {}
            for record in found.new:
                new[record.TABLE] = new.get(record.TABLE, 0) + 1
            words = table_words()
            lines = tuple(f"{words.get(table, table)}: {n:,}" for table, n in new.items())
            return _Found(other, found, lines)

        def done(answer: _Found) -> None:
            self._set_busy("")
            self._theirs, self.found = answer.book, answer.comparison
            self._show(answer)

        def failed(fault: Fault) -> None:
            self._set_busy("")
            self.found = None
            self.main_button.setEnabled(False)
            self._say_lines(fault)

        self._set_busy(self.tr("Laying the books side by side …"), lock=False)
        self._errands.ask(_WORK, work, done, failed)

    def _show(self, answer: _Found) -> None:
        found = answer.comparison
        first = self.stack.currentWidget() is self._waiting
        same = count(found.same, self.tr("record"), self.tr("records"))
        new = " · ".join(answer.lines) or self.tr("nothing")
        self.summary.setText(
            self.tr("New: {}. Both books have {}.").format(new, same)
            if found.same
            else self.tr("New: {}. The books have nothing in common.").format(new)
        )
        self.clash.setVisible(bool(found.names))
        codes = count(len(found.names), self.tr("code"), self.tr("codes"))
        self.clash_said.setText(
            self.tr(
                "{} of the other book stand for something else in yours. Theirs are changed by "
                "this rule, everywhere; yours stay."
            ).format(codes)
        )
        words = table_words()
        self.names.setRowCount(min(len(found.names), _MOST_SHOWN))
        for row, ((table, old), name) in enumerate(list(found.names.items())[:_MOST_SHOWN]):
            for at, text in enumerate((words.get(table, table), old, name)):
                self.names.setItem(row, at, QTableWidgetItem(text))
        self.differences.show_differences(found.differences)
        self.left.setText("\n".join(found.settings))
        self.left.setVisible(bool(found.settings))
        if not found.names and not found.differences:
            text = self.tr("No code clashes and no cell differs.")
            self.summary.setText(f"{self.summary.text()}\n{text}")
        nothing = not found.new and not found.differences
        self.main_button.setEnabled(not nothing)
        if nothing:
            self._say(self.tr("The other book holds nothing that yours does not."))
        self.stack.setCurrentIndex(1)
        if first:
            held = self.behind if found.names else self.differences.view
            (held if found.names or found.differences else self.main_button).setFocus()

    # Writing ------------------------------------------------------------------------------------

    def go_on(self) -> None:
        """Bring it in; from the report, close."""
        if self.stack.currentWidget() is self.report:
            self.accept()
            return
        found = self.found
        if found is None or self._delay.isActive():
            return
        sides, path = self.differences.sides(), self._path
        halt = self._halt = Halt()

        def work(edit: Edit) -> None:
            with ExitStack() as held:
                photo = photo_of(path, found.names, held, halt.tick)
                found.apply(edit, sides, photo=photo, tick=halt.tick)
                halt.pass_on()

        def refused(fault: Fault) -> None:
            if not halt.stopped:
                self._set_busy("")
                self._say("\n".join(fault.lines()[:6]))

        def then(_: object) -> None:
            if not self._gone:
                self._done(found)

        self._set_busy(self.tr("Bringing it in …"))
        self._desk.record(self.tr("bringing in {}").format(path.name), work, then, refused)

    def _done(self, found: Comparison) -> None:
        self._set_busy("")
        words = table_words()
        new: dict[str, int] = {}
        for record in found.new:
            new[record.TABLE] = new.get(record.TABLE, 0) + 1
        lines = [self.tr("Came in:")]
        lines += [f"  {words.get(table, table)}: {n:,}" for table, n in new.items()]
        if found.names:
            lines.append(self.tr("Codes of the other book that were changed:"))
            lines += [
                self.tr("  {}: {} became {}").format(words.get(table, table), old, name)
                for (table, old), name in found.names.items()
            ]
        if found.differences:
            lines.append(self.tr("Cells that differed:"))
            said = chosen_words(found.differences, self.differences.sides())
            lines += [f"  {line}" for line in said]
        if found.settings:
            lines += [self.tr("Left out:"), *(f"  {line}" for line in found.settings)]
        self.report.show_report(self.tr("{} came in").format(self._path.name), lines)
        self.stack.setCurrentWidget(self.report)
        self.cancel_button.hide()
        self.main_button.setText(self.tr("Close"))
        self.main_button.setFocus()

    def _set_busy(self, words: str, *, lock: bool = True) -> None:
        super()._set_busy(words)
        self.stack.setEnabled(not (self.busy and lock))
        self.main_button.setEnabled(not self.busy)

    def reject(self) -> None:
        """Stop what is under way; else leave, with nothing changed."""
        if self.busy and self.found is not None:
            if not self._halt.stop():
                self._say(
                    self.tr(
                        "It is being written in the book and cannot be stopped any more; "
                        "afterwards undo takes it back."
                    )
                )
                return
            self._errands.drop(_WORK)
            self._set_busy("")
            self._say(self.tr("Stopped; nothing has come in."))
            return
        super().reject()

    def _leave(self) -> None:
        self._gone = True
        self._halt.stop()
        self._errands.drop(_WORK)
        self._errands.drop("save:report")
