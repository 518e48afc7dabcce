"""Second step: what each column means, guessed with a reason and changed by the person."""

from __future__ import annotations

from dataclasses import replace

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QComboBox, QGridLayout, QLabel, QLineEdit, QSizePolicy, QWidget

from pedigreeview.exchange.import_plan import ColumnPlan, ImportPlan, unknown_marks
from pedigreeview.exchange.spreadsheets import Table, cell_text
from pedigreeview.window.importing.sheet_model import letters
from pedigreeview.window.importing.source import Draft
from pedigreeview.window.importing.steps import Step
from pedigreeview.window.importing.words import meaning_words
from pedigreeview.window.labels import clear, column, scrolled, sentence
from pedigreeview.window.style import step

__all__ = ["ColumnsStep"]

_MOST = 150
_EXAMPLES = 3


class ColumnsStep(Step):
    """A line for each column: its heading, what it means, its first cells, and the reason."""

    def __init__(self) -> None:
        super().__init__()
        s = step()
        layout = column(s)
        self.setLayout(layout)
        self.intro = sentence(
            self.tr(
                "Say what each column means. What was guessed is proposed with its reason; your "
                "answers are remembered for the next table with these headings."
            ),
            "soft",
        )
        layout.addWidget(self.intro)
        inner = QWidget()
        self._grid = QGridLayout()
        self._grid.setHorizontalSpacing(2 * s)
        self._grid.setVerticalSpacing(max(2, s // 2))
        self._grid.setContentsMargins(0, 0, s, 0)
        held = column()
        held.addLayout(self._grid)
        held.addStretch(1)
        inner.setLayout(held)
        self.area = scrolled(inner)
        layout.addWidget(self.area, 1)
        self.meanings: list[QComboBox] = []
        self.traits: list[QLineEdit] = []
        self._whys: list[QLabel] = []
        self._draft: Draft | None = None
        self._shown: tuple[object, ...] = ()

    def name(self) -> str:
        return self.tr("Columns")

    def wanted(self, draft: Draft) -> bool:
        return draft.plan is not None

    def first_field(self) -> QWidget:
        return self.meanings[0] if self.meanings else self

    def show_draft(self, draft: Draft) -> None:
        self._draft = draft
        plan, table = draft.plan, draft.table
        if plan is None or table is None:
            return
        shown = (id(table), plan.heading, plan.form, len(plan.columns))
        if shown != self._shown:
            self._shown = shown
            self._build(plan, table)
        self._tell(plan)

    def _build(self, plan: ImportPlan, table: Table) -> None:
        clear(self._grid)
        self.meanings, self.traits, self._whys = [], [], []
        for at, text in enumerate(
            (self.tr("Column"), self.tr("Means"), self.tr("First cells, and why it was guessed"))
        ):
            self._grid.addWidget(sentence(text, "caption"), 0, at)
        words = meaning_words(plan.form)
        for row, held in enumerate(plan.columns[:_MOST], 1):
            name = QLabel(held.heading[:40] or letters(held.index))
            name.setTextFormat(Qt.TextFormat.PlainText)
            box = QComboBox()
            for meaning, text in words.items():
                box.addItem(text, meaning)
            box.setMaxVisibleItems(25)
            policy = QComboBox.SizeAdjustPolicy.AdjustToMinimumContentsLengthWithIcon
            box.setSizeAdjustPolicy(policy)
            box.setMinimumContentsLength(20)
            box.setAccessibleName(self.tr("Meaning of column {}").format(name.text()))
            box.activated.connect(lambda _, at=row - 1: self._chosen(at))
            name.setBuddy(box)
            trait = QLineEdit()
            trait.setPlaceholderText(self.tr("name of the trait"))
            trait.setAccessibleName(self.tr("Name of the trait of column {}").format(name.text()))
            trait.editingFinished.connect(lambda at=row - 1: self._trait_named(at))
            cells = sentence(_examples(table, plan, held), "soft")
            why = sentence("", "soft")
            for label in (cells, why):
                label.setSizePolicy(QSizePolicy.Policy.Ignored, QSizePolicy.Policy.Preferred)
            self._grid.addWidget(name, row, 0, Qt.AlignmentFlag.AlignVCenter)
            for at, parts in ((1, (box, trait)), (2, (cells, why))):
                held_parts = column(max(1, step() // 4))
                for part in parts:
                    held_parts.addWidget(part)
                self._grid.addLayout(held_parts, row, at)
            self.meanings.append(box)
            self.traits.append(trait)
            self._whys.append(why)
        self._grid.setColumnStretch(2, 1)
        if len(plan.columns) > _MOST:
            text = self.tr("{} further columns are read as guessed.")
            more = sentence(text.format(len(plan.columns) - _MOST), "soft")
            self._grid.addWidget(more, _MOST + 1, 0, 1, 3)

    def _tell(self, plan: ImportPlan) -> None:
        for at, held in enumerate(plan.columns[: len(self.meanings)]):
            box = self.meanings[at]
            box.setCurrentIndex(max(0, box.findData(held.meaning)))
            self.traits[at].setVisible(held.meaning == "trait")
            self.traits[at].setText(held.trait)
            self._whys[at].setText(held.why)
            unsure = held.confidence < 0.7 and held.meaning not in ("left_out", "kept")
            self._whys[at].setProperty("role", "warn" if unsure else "soft")
            self._whys[at].style().unpolish(self._whys[at])
            self._whys[at].style().polish(self._whys[at])

    def _chosen(self, at: int) -> None:
        draft = self._draft
        assert draft is not None
        assert draft.plan is not None
        held = draft.plan.columns[at]
        meaning = str(self.meanings[at].currentData())
        if meaning != held.meaning:
            self._take(draft.plan.meaning(held.index, meaning))

    def _trait_named(self, at: int) -> None:
        draft = self._draft
        assert draft is not None
        assert draft.plan is not None
        held, name = draft.plan.columns[at], self.traits[at].text().strip()
        if held.meaning == "trait" and name and name != held.trait:
            self._take(draft.plan.meaning(held.index, "trait", name))

    def _take(self, plan: ImportPlan) -> None:
        draft = self._draft
        assert draft is not None
        draft.plan = plan
        table = draft.table
        assert table is not None
        # Other columns under a parent have other marks; what was answered stays answered.
        marks = unknown_marks(table, replace(plan, marks={}))
        marks.update((text, held) for text, held in plan.marks.items() if text in marks)
        draft.plan = replace(plan, marks=marks)
        self._tell(draft.plan)
        self.changed.emit()


def _examples(table: Table, plan: ImportPlan, held: ColumnPlan) -> str:
    found: list[str] = []
    for _, cells in table.below(plan.heading)[:200]:
        text = cell_text(cells[held.index]).strip() if held.index < len(cells) else ""
        if text and text[:24] not in found:
            found.append(text[:24])
        if len(found) == _EXAMPLES:
            break
    return " · ".join(found)
