"""Last step before writing: what would come in, and what differs, with the choice of sides."""

from __future__ import annotations

from pathlib import Path

from PySide6.QtWidgets import QPlainTextEdit, QWidget

from pedigreeview.window.importing.differences import DifferencesTable
from pedigreeview.window.importing.new_place import NewPlace
from pedigreeview.window.importing.source import Draft
from pedigreeview.window.importing.steps import Step
from pedigreeview.window.labels import column, heading, sentence
from pedigreeview.window.style import step

__all__ = ["BringInStep"]


class BringInStep(Step):
    """The summary, the place of a new book, and the differences."""

    def __init__(self, folder: Path, title: str, parent: QWidget | None = None) -> None:
        """A step; `title` is that of the open book, '' where a new one is made."""
        super().__init__(parent)
        self._folder, self._title = folder, title

    def _make(self) -> None:
        s, title = step(), self._title
        layout = column(2 * s)
        self.setLayout(layout)
        self.place = NewPlace(self._folder)
        self.place.setVisible(not title)
        layout.addWidget(self.place)
        text = self.tr("What comes into {}") if title else self.tr("What comes into the new book")
        layout.addWidget(heading(text.format(title), 3))
        self.summary = QPlainTextEdit()
        self.summary.setReadOnly(True)
        self.summary.setTabChangesFocus(True)
        self.summary.setAccessibleName(self.tr("What would come in"))
        self.summary.setMinimumHeight(10 * s)
        layout.addWidget(self.summary, 2)
        self.differences = DifferencesTable()
        layout.addWidget(self.differences, 3)
        self.large = sentence(
            self.tr(
                "The table is large: a backup of the book is made first, so that you can go back "
                "to it."
            )
        )
        layout.addWidget(self.large)

    def name(self) -> str:
        return self.tr("Bring in")

    def first_field(self) -> QWidget:
        return self.place.name if not self.place.isHidden() else self.summary

    def show_draft(self, draft: Draft) -> None:
        super().show_draft(draft)
        found = draft.imported
        if found is None:
            return
        self.summary.setPlainText("\n".join(found.report.lines()) or self.tr("Nothing new."))
        self.differences.show_differences(found.differences)
        self.large.setVisible(found.large and draft.into is not None)
        self.place.propose(draft.source.path.stem)
