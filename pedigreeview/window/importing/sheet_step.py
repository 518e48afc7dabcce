"""First step: which sheet, which row holds the headings, and what a row is about."""

from __future__ import annotations

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QButtonGroup, QComboBox, QFormLayout, QHBoxLayout, QRadioButton

from pedigreeview.exchange.import_plan import Form
from pedigreeview.exchange.spreadsheets import cell_text
from pedigreeview.window.importing.source import Draft
from pedigreeview.window.importing.steps import Step
from pedigreeview.window.labels import column, sentence
from pedigreeview.window.style import step
from pedigreeview.window.words import number

__all__ = ["SheetStep"]

_ROWS_OFFERED = 60


class SheetStep(Step):
    """Asks for sheet, heading row and form; each change is a new guess at the columns."""

    layout_wanted = Signal(str, object, str)
    """Sheet, index of the heading row or None, and form: 'plants', 'crosses', '' to guess it."""

    def _make(self) -> None:
        s = step()
        layout = column(s)
        self.setLayout(layout)
        layout.addWidget(
            sentence(
                self.tr(
                    "Say where the headings stand. A double click on a row below, or Enter, takes "
                    "it for the headings; rows above it are not read."
                ),
                "soft",
            )
        )
        form = QFormLayout()
        layout.addLayout(form)
        form.setSpacing(s)
        self.sheet = QComboBox()
        self.sheet.setAccessibleName(self.tr("Sheet"))
        self.sheet.activated.connect(lambda _: self._sheet_chosen())
        form.addRow(self.tr("&Sheet"), self.sheet)
        self.heading = QComboBox()
        self.heading.setAccessibleName(self.tr("Row of the headings"))
        self.heading.setMinimumContentsLength(24)
        policy = QComboBox.SizeAdjustPolicy.AdjustToMinimumContentsLengthWithIcon
        self.heading.setSizeAdjustPolicy(policy)
        self.heading.activated.connect(lambda _: self._ask(""))
        form.addRow(self.tr("&Headings"), self.heading)
        row = QHBoxLayout()
        form.addRow(self.tr("Each row is"), row)
        row.setSpacing(2 * s)
        self._group = QButtonGroup(self)
        self.forms: dict[str, QRadioButton] = {}
        for word, text in (
            ("plants", self.tr("one &plant")),
            ("crosses", self.tr("one &cross, with its flowers, pods and seeds")),
        ):
            button = QRadioButton(text)
            button.clicked.connect(lambda _=False, word=word: self._ask(word))
            self._group.addButton(button)
            self.forms[word] = button
            row.addWidget(button)
        row.addStretch(1)
        self._form = form
        self.why = sentence("", "soft")
        layout.addWidget(self.why)
        layout.addStretch(1)

    def name(self) -> str:
        return self.tr("Sheet and headings")

    def wanted(self, draft: Draft) -> bool:
        return draft.plan is not None

    def first_field(self) -> QComboBox:
        return self.sheet if self.sheet.count() > 1 else self.heading

    def show_draft(self, draft: Draft) -> None:
        super().show_draft(draft)
        plan, sheets, table = draft.plan, draft.source.sheets, draft.table
        if plan is None or sheets is None or table is None:
            return
        self.sheet.clear()
        for held in sheets.tables:
            text = self.tr("{} ({} rows)").format(held.name, number(len(held.rows)))
            self.sheet.addItem(text, held.name)
        self.sheet.setCurrentIndex(max(0, self.sheet.findData(table.name)))
        self._form.setRowVisible(self.sheet, len(sheets.tables) > 1)
        self.heading.clear()
        for at, (line, cells) in enumerate(table.rows[:_ROWS_OFFERED]):
            shown = " · ".join(text for cell in cells if (text := cell_text(cell).strip()))
            self.heading.addItem(self.tr("row {}: {}").format(line, shown[:90]), at)
        self.heading.addItem(self.tr("no row: the columns have no headings"), None)
        at = self.heading.count() - 1 if plan.heading is None else plan.heading
        self.heading.setCurrentIndex(min(at, self.heading.count() - 1))
        self.forms[plan.form].setChecked(True)
        self.why.setText(" ".join(plan.why))

    def take_row(self, row: int) -> None:
        """Take a row of the sheet for the headings."""
        if row < self.heading.count() - 1:
            self.heading.setCurrentIndex(row)
            self._ask("")

    def _sheet_chosen(self) -> None:
        self.layout_wanted.emit(self.sheet.currentData(), "guess", "")

    def _ask(self, form: str) -> None:
        self.layout_wanted.emit(self.sheet.currentData(), self.heading.currentData(), form)


def form_of(word: str) -> Form | None:
    """The form that a word names; None to guess it."""
    return "plants" if word == "plants" else "crosses" if word == "crosses" else None
