"""Typing a printed garden sheet in, in its own order: by its number, then down the columns.

Nothing is written until the whole sheet is recorded, in one edit.  What cannot be taken is marked
in its cell and stays as it was typed.
"""

from __future__ import annotations

import csv
import datetime
import io
from collections.abc import Callable
from typing import Any

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import (
    QComboBox,
    QHBoxLayout,
    QHeaderView,
    QLineEdit,
    QStackedWidget,
    QWidget,
)

from pedigreeview.book.edits import Edit
from pedigreeview.book.faults import Fault
from pedigreeview.book.recording.printed_sheets import (
    PrintedSheet,
    printed_sheets,
    sheet_number,
    sheet_numbered,
)
from pedigreeview.book.recording.scores import GridFaults
from pedigreeview.book.recording.typed_dates import Order
from pedigreeview.book.recording.typing_in import type_sheet_in
from pedigreeview.window.desk import Desk
from pedigreeview.window.forms.fields import DateField, TextField
from pedigreeview.window.labels import Flow, action_button, column, say_in, sentence
from pedigreeview.window.preferences import Preferences
from pedigreeview.window.season_undo import UndoLine
from pedigreeview.window.style import current, step
from pedigreeview.window.typing_grid import TypingGrid
from pedigreeview.window.typing_model import SheetModel
from pedigreeview.window.words import count

__all__ = ["TypingIn"]

_Cell = tuple[int, int]


class _SheetGrid(TypingGrid):
    """The grid of scores, in which Ctrl+Enter records the whole sheet."""

    recorded = Signal()

    def keyPressEvent(self, event: QKeyEvent) -> None:
        control = event.modifiers() & Qt.KeyboardModifier.ControlModifier
        if control and event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter):
            self.recorded.emit()
            return
        super().keyPressEvent(event)


class TypingIn(QWidget):
    """The number, the day, who; and the grid."""

    papers_wanted = Signal(str)
    """A blank sheet is to be printed, by its word."""

    def __init__(self, desk: Desk, preferences: Preferences) -> None:
        super().__init__()
        self._desk, self._preferences = desk, preferences
        self._order: Order = "month-day" if preferences.date_order == "month-day" else "day-month"
        self._typed: dict[str, dict[_Cell, str]] = {}
        """What was typed and not yet recorded, by the number of its sheet."""
        s = step()
        body = column(s)
        self.setLayout(body)
        body.addLayout(self._head())
        self.undo = UndoLine(desk)
        body.addWidget(self.undo)
        self.model = SheetModel(self)
        self.stack = QStackedWidget()
        self.stack.addWidget(self._empty())
        self.stack.addWidget(self._grid())
        body.addWidget(self.stack, 1)
        foot = QHBoxLayout()
        foot.setSpacing(s)
        self.said = sentence("", "soft")
        foot.addWidget(self.said, 1)
        self.record_button = action_button(self.tr("Record the sheet"), self.record, main=True)
        self.record_button.setToolTip(self.tr("Ctrl+Enter"))
        foot.addWidget(self.record_button, 0, Qt.AlignmentFlag.AlignTop)
        body.addLayout(foot)

    def _head(self) -> Flow:
        s = step()
        row = Flow(s)
        self.number = QLineEdit()
        self.number.setPlaceholderText(self.tr("number of the sheet"))
        self.number.setAccessibleName(self.tr("Number of the sheet, in the box at its top"))
        self.number.setFixedWidth(19 * s)
        self.number.returnPressed.connect(self._by_number)
        self.which = QComboBox()
        self.which.setAccessibleName(self.tr("Sheets that were printed, the last one first"))
        self.which.setSizeAdjustPolicy(
            QComboBox.SizeAdjustPolicy.AdjustToMinimumContentsLengthWithIcon
        )
        self.which.setMinimumContentsLength(30)
        self.which.currentIndexChanged.connect(lambda _: self._turn())
        self.date = DateField("date", datetime.date.today, self._order)
        self.date.set_label(self.tr("Day on which the sheet was filled in"))
        self.date.setFixedWidth(26 * s)
        self.date.set_text(self.tr("today"))
        self.by = TextField("by", self.tr("filled in by"))
        self.by.set_label(self.tr("Who filled it in"))
        self.by.setFixedWidth(16 * s)
        self.by.set_text(self._preferences.last_used("typing in").get("by", ""))
        for widget in (self.number, self.which, self.date, self.by):
            row.addWidget(widget)
        return row

    def _grid(self) -> QWidget:
        s = step()
        name = self.tr("The sheet, row by row as it was printed")
        self.view = _SheetGrid(self.model, name)
        self.view.recorded.connect(self.record)
        header = self.view.horizontalHeader()
        header.setMinimumSectionSize(10 * s)
        header.setSectionResizeMode(QHeaderView.ResizeMode.ResizeToContents)
        header.setStretchLastSection(True)
        header.setDefaultAlignment(Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter)
        self.view.verticalHeader().setDefaultAlignment(
            Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter
        )
        self.view.pasted.connect(self.paste)
        self.view.emptied.connect(self._clear_marked)
        self.view.selectionModel().currentChanged.connect(lambda *_: self._tell())
        self.model.dataChanged.connect(lambda *_: self._tell())
        self.view.setMinimumHeight(22 * s)
        self._heights()
        return self.view

    def _empty(self) -> QWidget:
        s = step()
        part = QWidget()
        held = column(s)
        part.setLayout(held)
        self.why_empty = sentence("", "soft")
        held.addWidget(self.why_empty)
        row = Flow(s)
        for text, paper in (
            (self.tr("Print pollinations …"), "pollinations"),
            (self.tr("Print the crossing list …"), "crossing"),
            (self.tr("Print a score sheet …"), "scores"),
        ):
            act: Callable[[], None] = lambda paper=paper: self.papers_wanted.emit(paper)  # type: ignore[misc]  # noqa: E731
            button = action_button(text, act)
            row.addWidget(button)
            if paper == "pollinations":
                self.print_first = button
        held.addLayout(row)
        held.addStretch(1)
        return part

    # The book -----------------------------------------------------------------------------------

    def show_book(self, *, same: bool = False) -> None:
        """Another book, or the same one after an edit."""
        book = self._desk.book
        if not same:
            self._typed.clear()
            self.undo.hide()
        held = self.model.sheet.number if self.model.sheet is not None and same else ""
        sheets = printed_sheets(book) if book is not None else ()
        self.which.blockSignals(True)
        self.which.clear()
        for sheet in sheets:
            self.which.addItem(self._sheet_words(sheet), sheet.number)
        at = self.which.findData(held)
        self.which.setCurrentIndex(max(0, at))
        self.which.blockSignals(False)
        if held and at >= 0 and book is not None:
            self.model.renew(book)
            self._tell()
        else:
            self._turn()
        for widget in (self.number, self.which, self.date, self.by, self.record_button):
            widget.setVisible(bool(sheets))

    def redraw(self) -> None:
        """The theme or the size of the text has changed."""
        self._heights()

    def _heights(self) -> None:
        colours = current()
        self.view.setStyleSheet(
            f"QTableCornerButton::section {{ background: {colours.window.name()}; border: none;"
            f" border-bottom: 1px solid {colours.rule.name()}; }}"
        )
        self.view.verticalHeader().setDefaultSectionSize(
            self.fontMetrics().height() + round(1.4 * step())
        )

    def _sheet_words(self, sheet: PrintedSheet) -> str:
        kind = {
            "pollinations": self.tr("pollinations"),
            "crossing": self.tr("crossing list"),
            "scores": self.tr("scores"),
            "rows": self.tr("rows sown"),
            "fruits": self.tr("fruits set"),
        }[sheet.kind]
        rows = count(len(sheet.rows), self.tr("row"), self.tr("rows"))
        text = self.tr("{}: {}, {}, printed {}").format(
            sheet.number, kind, rows, sheet.printed or "?"
        )
        return self.tr("{}, typed in {}").format(text, sheet.typed) if sheet.typed else text

    def _turn(self) -> None:
        book, number = self._desk.book, str(self.which.currentData() or "")
        sheet = None
        if book is not None and number:
            sheet = sheet_numbered(book, number)
        if book is not None:
            typed = self._typed.setdefault(number, {}) if sheet is not None else None
            self.model.show_sheet(book, sheet, typed)
        self.stack.setCurrentIndex(0 if sheet is None else 1)
        self.number.setText(number)
        if sheet is not None:
            self.view.setCurrentIndex(self.model.index(0, self._first_blank()))
        self._tell()

    def _first_blank(self) -> int:
        """The first column of the first row that is not printed."""
        for at in range(self.model.columnCount()):
            if not self.model.fixed(0, at):
                return at
        return 0

    def _by_number(self) -> None:
        """Enter in the number: the sheet of that number, its first cell under the keys."""
        book = self._desk.book
        if book is None:
            return
        from pedigreeview.reports.garden_sheets import is_sheet_number

        typed = self.number.text()
        try:
            sheet = sheet_numbered(book, typed)
        except Fault as fault:
            text = f"{fault.what} {fault.todo}"
            if not is_sheet_number(sheet_number(typed)):
                text = self.tr(
                    "{} is no number of a sheet: its last sign checks the others. Read it again."
                ).format(typed.strip() or self.tr("A blank"))
            self._say(text, wrong=True)
            return
        self.which.setCurrentIndex(self.which.findData(sheet.number))
        self._turn()
        self.view.setFocus()

    def focus_first(self) -> None:
        """Put the keys on the number, or on what brings a sheet."""
        if self.which.count():
            self.number.setFocus()
            self.number.selectAll()
        else:
            self.print_first.setFocus()

    # What is half typed -------------------------------------------------------------------------

    def unfinished(self) -> dict[str, Any]:
        """What was typed and not recorded, by the number of its sheet; {} for nothing."""
        sheets = {
            number: [[row, at, text] for (row, at), text in sorted(cells.items())]
            for number, cells in self._typed.items()
            if cells
        }
        if not sheets:
            return {}
        return {"cells": sheets, "date": self.date.lasting(), "by": self.by.value}

    def take_up(self, held: object) -> list[str]:
        """Put in again what was typed when the book was closed.

        Returns
        -------
        the numbers of the sheets of which something was typed; the first of them is on show
        """
        if not isinstance(held, dict) or not isinstance(held.get("cells"), dict):
            return []
        found = []
        for number, cells in held["cells"].items():
            if self.which.findData(number) < 0:
                continue
            typed = self._typed.setdefault(number, {})
            for cell in cells if isinstance(cells, list) else ():
                match cell:
                    case [int(row), int(at), str(text)]:
                        typed[row, at] = text
            if typed:
                found.append(number)
        if found:
            self.date.set_text(str(held.get("date", "")))
            self.by.set_text(str(held.get("by", "")))
            self.which.setCurrentIndex(self.which.findData(found[0]))
            self._turn()
        return found

    # What is said -------------------------------------------------------------------------------

    def _say(self, text: str, *, wrong: bool = False) -> None:
        say_in(self.said, text, "fault" if wrong else "soft")

    def _tell(self) -> None:
        sheet = self.model.sheet
        self.record_button.setEnabled(sheet is not None and bool(self.model.cells))
        if sheet is None:
            text = self.tr(
                "No garden sheet was printed from this book yet. Print one, fill it in in the "
                "garden, and type it in here by its number, in its own order."
            )
            if not self._desk.can_write:
                text = self.tr(
                    "This book is only read, so it keeps no garden sheets. Keep it as a book, "
                    "print a sheet, and type it in here by its number."
                )
            self.why_empty.setText(text)
            self._say("")
            return
        at = self.view.currentIndex()
        why = self.model.faults.get((at.row(), at.column()), "")
        if why:
            self._say(why, wrong=True)
        elif self.model.faults:
            number = count(len(self.model.faults), self.tr("cell"), self.tr("cells"))
            self._say(
                self.tr("{} cannot be taken; they are underlined.").format(number), wrong=True
            )
        else:
            rows = len({row for row, _ in self.model.cells})
            self._say(
                self.tr(
                    "{} of {} rows filled in. Enter goes down, Tab across, Ctrl+Enter records all."
                ).format(rows, len(sheet.rows))
            )

    # Writing ------------------------------------------------------------------------------------

    def paste(self, text: str) -> None:
        """Type a block of a spreadsheet in from the marked cell on; what reaches beyond is left."""
        at = self.view.currentIndex()
        if self.model.sheet is None or not at.isValid():
            return
        block = list(csv.reader(io.StringIO(text.rstrip("\r\n"), newline=""), delimiter="\t"))
        rows, across = self.model.rowCount(), self.model.columnCount()
        cells = {
            (at.row() + down, at.column() + right): cell
            for down, line in enumerate(block)
            for right, cell in enumerate(line)
        }
        if any(row >= rows or place >= across for row, place in cells):
            self._say(
                self.tr("The block reaches beyond the sheet. Start further up or left."), wrong=True
            )
            return
        self.model.put(cells)

    def _clear_marked(self) -> None:
        held = self.view.selectedIndexes()
        self.model.put({(one.row(), one.column()): "" for one in held})

    def record(self) -> None:
        """Record the whole sheet in one edit; what cannot be taken stays as it was typed."""
        sheet = self.model.sheet
        if sheet is None or not self.model.cells:
            return
        self.view.setFocus()
        try:
            date = self.date.value
        except Fault as fault:
            self._say(fault.what, wrong=True)
            self.date.setFocus()
            return
        cells, by, order = dict(self.model.cells), self.by.value, self._order
        today = datetime.date.today()
        words = self.tr("garden sheet {} typed in").format(sheet.number)

        def work(edit: Edit) -> int:
            return type_sheet_in(edit, sheet, cells, today=today, date=date, by=by, order=order)

        def done(rows: int) -> None:
            self._preferences.set_last_used("typing in", {"by": by})
            self._typed[sheet.number] = {}
            book = self._desk.book
            if book is not None and self.model.sheet is not None:
                self.model.show_sheet(book, self.model.sheet, self._typed[sheet.number])
                self.view.setCurrentIndex(self.model.index(0, self._first_blank()))
            said = count(rows, self.tr("row"), self.tr("rows"))
            self.undo.show_done(
                self.tr("Sheet {} is recorded: {}.").format(sheet.number, said), words
            )
            self._tell()

        self.record_button.setEnabled(False)
        self._desk.record(words, work, done, self._refused)

    def _refused(self, fault: Fault) -> None:
        self.record_button.setEnabled(True)
        if not isinstance(fault, GridFaults):
            self._say(f"{fault.what} {fault.todo}".strip(), wrong=True)
            return
        self.model.show_faults(
            {cell: f"{one.what} {one.todo}".strip() for cell, one in fault.faults.items()}
        )
        first = min(fault.faults)
        self.view.setCurrentIndex(self.model.index(*first))
        self.view.setFocus()
        number = len(fault.faults)
        why = self.model.faults[first]
        if number > 1:
            why = self.tr("{} cells cannot be taken; nothing is recorded. {}").format(number, why)
        else:
            why = self.tr("Nothing is recorded. {}").format(why)
        self._say(why, wrong=True)
