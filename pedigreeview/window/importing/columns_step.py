"""Second step: what each column means, guessed with a reason and changed by the person."""

from __future__ import annotations

from dataclasses import replace

from PySide6.QtCore import Qt, QTimer
from PySide6.QtGui import QStandardItem, QStandardItemModel
from PySide6.QtWidgets import QComboBox, QGridLayout, QLabel, QLineEdit, QSizePolicy, QWidget

from pedigreeview.exchange.import_plan import ColumnPlan, ImportPlan, unknown_marks
from pedigreeview.exchange.spreadsheets import Table, cell_text
from pedigreeview.window.importing.sheet_model import letters
from pedigreeview.window.importing.source import Draft
from pedigreeview.window.importing.steps import Step
from pedigreeview.window.importing.words import meaning_words
from pedigreeview.window.labels import clear, column, say_in, scrolled, sentence
from pedigreeview.window.style import step

__all__ = ["ColumnsStep"]

_MOST = 150
_EXAMPLES = 3
_AT_ONCE, _A_TURN = 8, 4
"""Columns that have their line at once, and those that get theirs at each later turn."""
_BETWEEN = 1
"""Milliseconds between two turns, in which the window answers."""


class ColumnsStep(Step):
    """A line for each column: its heading, what it means, its first cells, and the reason."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.meanings: list[QComboBox] = []
        self.traits: list[QLineEdit] = []
        self._whys: list[QLabel] = []
        self._words = QStandardItemModel(self)
        """What a column can mean, for all lines."""
        self._further = QTimer(self)
        self._further.setSingleShot(True)
        self._further.setInterval(_BETWEEN)
        self._further.timeout.connect(lambda: self._lines(_A_TURN))
        self._wide = 0
        """Width of the names of the columns, the same in every group of lines."""
        self._draft: Draft | None = None
        self._shown: tuple[object, ...] = ()

    def _make(self) -> None:
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
        self.area = scrolled(inner)
        layout.addWidget(self.area, 1)
        # In groups, for one grid of all lines would be laid out anew with each further line.
        self._groups = column(max(2, s // 2))
        self._groups.setContentsMargins(0, 0, s, 0)
        held = column()
        held.addLayout(self._groups)
        held.addStretch(1)
        inner.setLayout(held)

    def name(self) -> str:
        return self.tr("Columns")

    def wanted(self, draft: Draft) -> bool:
        return draft.plan is not None

    def first_field(self) -> QWidget:
        return self.meanings[0] if self.meanings else self

    def show_draft(self, draft: Draft) -> None:
        super().show_draft(draft)
        self._draft = draft
        plan, table = draft.plan, draft.table
        if plan is None or table is None:
            return
        shown = (id(table), plan.heading, plan.form, len(plan.columns))
        if shown != self._shown:
            self._shown = shown
            self._build(plan)
        else:
            self._tell(plan)

    def _build(self, plan: ImportPlan) -> None:
        clear(self._groups)
        self.meanings, self.traits, self._whys = [], [], []
        names = [_name(held) for held in plan.columns[:_MOST]]
        self._wide = max(self.fontMetrics().horizontalAdvance(name) for name in names or [""]) + 4
        grid = self._group()
        for at, text in enumerate(
            (self.tr("Column"), self.tr("Means"), self.tr("First cells, and why it was guessed"))
        ):
            head = sentence(text, "caption")
            grid.addWidget(head, 0, at)
            if not at:
                head.ensurePolished()
                self._wide = max(self._wide, head.minimumSizeHint().width())
                grid.setColumnMinimumWidth(0, self._wide)
        self._words.clear()
        for meaning, text in meaning_words(plan.form).items():
            item = QStandardItem(text)
            item.setData(meaning, Qt.ItemDataRole.UserRole)
            self._words.appendRow(item)
        self._lines(_AT_ONCE, grid)

    def _group(self) -> QGridLayout:
        """A grid for the next lines, its columns below those of the others."""
        group = QWidget()
        self._groups.addWidget(group)
        grid = QGridLayout(group)
        grid.setHorizontalSpacing(2 * step())
        grid.setVerticalSpacing(max(2, step() // 2))
        grid.setContentsMargins(0, 0, 0, 0)
        grid.setColumnStretch(2, 1)
        grid.setColumnMinimumWidth(0, self._wide)
        return grid

    def _lines(self, most: int, grid: QGridLayout | None = None) -> None:
        """Make the next lines, at most so many; those that still lack follow by themselves."""
        draft = self._draft
        if draft is None or draft.plan is None or draft.table is None:
            return
        plan, table = draft.plan, draft.table
        first, wanted = len(self.meanings), min(len(plan.columns), _MOST)
        grid = grid if grid is not None else self._group()
        for at in range(first, min(first + most, wanted)):
            self._line(plan, table, at, grid)
            self._tell_line(plan, at)
        if len(self.meanings) < wanted:
            self._further.start()
        elif len(plan.columns) > _MOST:
            text = self.tr("{} further columns are read as guessed.")
            more = sentence(text.format(len(plan.columns) - _MOST), "soft")
            self._groups.addWidget(more)

    def _line(self, plan: ImportPlan, table: Table, at: int, grid: QGridLayout) -> None:
        held, row, inner = plan.columns[at], grid.rowCount(), grid.parentWidget()
        name = QLabel(_name(held))
        name.setTextFormat(Qt.TextFormat.PlainText)
        box = QComboBox(inner)
        box.setModel(self._words)
        box.setMaxVisibleItems(25)
        policy = QComboBox.SizeAdjustPolicy.AdjustToMinimumContentsLengthWithIcon
        box.setSizeAdjustPolicy(policy)
        box.setMinimumContentsLength(20)
        box.setAccessibleName(self.tr("Meaning of column {}").format(name.text()))
        box.activated.connect(lambda _: self._chosen(at))
        name.setBuddy(box)
        trait = QLineEdit(inner)
        trait.hide()
        trait.setPlaceholderText(self.tr("name of the trait"))
        trait.setAccessibleName(self.tr("Name of the trait of column {}").format(name.text()))
        trait.editingFinished.connect(lambda: self._trait_named(at))
        cells = sentence(_examples(table, plan, held), "soft")
        why = sentence("", "soft")
        for label in (cells, why):
            label.setSizePolicy(QSizePolicy.Policy.Ignored, QSizePolicy.Policy.Preferred)
        grid.addWidget(name, row, 0, Qt.AlignmentFlag.AlignVCenter)
        for place, parts in ((1, (box, trait)), (2, (cells, why))):
            held_parts = column(max(1, step() // 4))
            grid.addLayout(held_parts, row, place)
            for part in parts:
                held_parts.addWidget(part)
        self.meanings.append(box)
        self.traits.append(trait)
        self._whys.append(why)

    def _tell(self, plan: ImportPlan) -> None:
        for at in range(len(self.meanings)):
            self._tell_line(plan, at)

    def _tell_line(self, plan: ImportPlan, at: int) -> None:
        held, box = plan.columns[at], self.meanings[at]
        box.setCurrentIndex(max(0, box.findData(held.meaning)))
        self.traits[at].setText(held.trait)
        self.traits[at].setVisible(held.meaning == "trait")
        unsure = held.confidence < 0.7 and held.meaning not in ("left_out", "kept")
        say_in(self._whys[at], held.why, "warn" if unsure else "soft")

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


def _name(held: ColumnPlan) -> str:
    """What a column is called: by its heading, or by its letter."""
    return held.heading[:40] or letters(held.index)


def _examples(table: Table, plan: ImportPlan, held: ColumnPlan) -> str:
    found: list[str] = []
    for _, cells in table.below(plan.heading)[:200]:
        text = cell_text(cells[held.index]).strip() if held.index < len(cells) else ""
        if text and text[:24] not in found:
            found.append(text[:24])
        if len(found) == _EXAMPLES:
            break
    return " · ".join(found)
