"""Third step: what the table does not say: direction, order of the dates, marks under a parent."""

from __future__ import annotations

from dataclasses import replace

from PySide6.QtCore import Qt
from PySide6.QtWidgets import (
    QButtonGroup,
    QComboBox,
    QFrame,
    QGridLayout,
    QLabel,
    QRadioButton,
    QVBoxLayout,
    QWidget,
)

from pedigreeview.exchange.import_plan import DateOrder
from pedigreeview.window.importing.source import Draft, cells_counted, date_example
from pedigreeview.window.importing.steps import Step
from pedigreeview.window.importing.words import mark_words
from pedigreeview.window.labels import clear, column, heading, scrolled, sentence
from pedigreeview.window.style import step
from pedigreeview.window.words import count

__all__ = ["QuestionsStep"]


class QuestionsStep(Step):
    """Asks each once; the preview shows what the answers do."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._draft: Draft | None = None

    def _make(self) -> None:
        s = step()
        outer = column()
        self.setLayout(outer)
        inner = QWidget()
        outer.addWidget(scrolled(inner))
        layout = column(2 * s)
        layout.setContentsMargins(0, 0, s, 0)
        inner.setLayout(layout)
        self.direction, part = self._part(
            self.tr("Does the source put the seed parent first?"),
            self.tr(
                "Both parents stand in one cell. Without knowing which comes first, the direction "
                "of these crosses stays open, and no cytoplasm is followed through them."
            ),
        )
        self.first = QRadioButton(self.tr("&Yes, the seed parent stands first in every cell"))
        self.unknown = QRadioButton(self.tr("&No, or not always: keep the direction open"))
        for button in (self.first, self.unknown):
            part.addWidget(button)
            button.clicked.connect(lambda _=False: self._direction_said())
        group = QButtonGroup(self)
        group.addButton(self.first)
        group.addButton(self.unknown)
        layout.addWidget(self.direction)
        self.dates, part = self._part(self.tr("In which order do the dates stand?"), "")
        self.date_why = sentence("", "soft")
        part.addWidget(self.date_why)
        self.day_first = QRadioButton(self.tr("&day, month, year"))
        self.month_first = QRadioButton(self.tr("&month, day, year"))
        order = QButtonGroup(self)
        for button in (self.day_first, self.month_first):
            part.addWidget(button)
            order.addButton(button)
            button.clicked.connect(lambda _=False: self._order_said())
        layout.addWidget(self.dates)
        self.marks_part, part = self._part(
            self.tr("What do these mean under a parent?"),
            self.tr("They are probably no codes. Each is asked once for the whole table."),
        )
        self._marks = QGridLayout()
        self._marks.setHorizontalSpacing(2 * s)
        self._marks.setVerticalSpacing(max(2, s // 2))
        self._marks.setColumnStretch(3, 1)
        part.addLayout(self._marks)
        self.marks: dict[str, QComboBox] = {}
        layout.addWidget(self.marks_part)
        layout.addStretch(1)

    def _part(self, title: str, text: str) -> tuple[QFrame, QVBoxLayout]:
        frame = QFrame()
        layout = column(max(2, step() // 2))
        frame.setLayout(layout)
        layout.addWidget(heading(title, 3))
        if text:
            layout.addWidget(sentence(text, "soft"))
        return frame, layout

    def name(self) -> str:
        return self.tr("Questions")

    def wanted(self, draft: Draft) -> bool:
        plan, table = draft.plan, draft.table
        if plan is None or table is None:
            return False
        return bool(plan.of("parents") or plan.marks or date_example(table, plan)[0])

    def first_field(self) -> QWidget:
        if not self.direction.isHidden():
            return self.first if self.first.isChecked() else self.unknown
        if not self.dates.isHidden():
            return self.day_first if self.day_first.isChecked() else self.month_first
        return next(iter(self.marks.values()), self)

    def show_draft(self, draft: Draft) -> None:
        super().show_draft(draft)
        self._draft = draft
        plan, table = draft.plan, draft.table
        if plan is None or table is None:
            return
        self.direction.setVisible(plan.of("parents") is not None)
        (self.first if plan.seed_parent_first else self.unknown).setChecked(True)
        example, proved = date_example(table, plan)
        self.dates.setVisible(bool(example))
        if proved is None:
            text = self.tr("{} can be read both ways, and no other date of the table tells.")
        else:
            text = self.tr("Dates such as {}: some date of the table can only be read one way.")
        self.date_why.setText(text.format(example))
        (self.day_first if plan.date_order == "day-month" else self.month_first).setChecked(True)
        clear(self._marks)
        self.marks = {}
        self.marks_part.setVisible(bool(plan.marks))
        counts = cells_counted(table, plan)
        for row, (text, meaning) in enumerate(plan.marks.items()):
            shown = text or self.tr("(blank)")
            label = QLabel(shown)
            label.setTextFormat(Qt.TextFormat.PlainText)
            times = count(counts[text], self.tr("cell"), self.tr("cells"))
            box = QComboBox()
            for word, said in mark_words().items():
                if text or word != "code":
                    box.addItem(said, word)
            box.setCurrentIndex(max(0, box.findData(meaning)))
            box.setAccessibleName(self.tr("Meaning of {}, in {}").format(shown, times))
            box.activated.connect(lambda _, text=text: self._mark_said(text))
            self._marks.addWidget(label, row, 0)
            self._marks.addWidget(sentence(times, "soft"), row, 1)
            self._marks.addWidget(box, row, 2)
            self.marks[text] = box

    def _direction_said(self) -> None:
        draft = self._draft
        assert draft is not None
        assert draft.plan is not None
        draft.plan = replace(draft.plan, seed_parent_first=self.first.isChecked())
        self.changed.emit()

    def _order_said(self) -> None:
        draft = self._draft
        assert draft is not None
        assert draft.plan is not None
        order: DateOrder = "day-month" if self.day_first.isChecked() else "month-day"
        draft.plan = replace(draft.plan, date_order=order)
        self.changed.emit()

    def _mark_said(self, text: str) -> None:
        draft = self._draft
        assert draft is not None
        assert draft.plan is not None
        marks = {**draft.plan.marks, text: self.marks[text].currentData()}
        draft.plan = replace(draft.plan, marks=marks)
        self.changed.emit()
