"""The list of bookmarks: keep the place that is shown, go to one, rename it, remove it."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import Qt
from PySide6.QtWidgets import (
    QDialog,
    QHBoxLayout,
    QLineEdit,
    QListWidget,
    QListWidgetItem,
    QWidget,
)

from pedigreeview.book.faults import Fault
from pedigreeview.window.labels import action_button, column, heading, sentence
from pedigreeview.window.style import step

if TYPE_CHECKING:
    from pedigreeview.window.page_bookmarks import PageBookmarks

__all__ = ["BookmarkDialog"]


class BookmarkDialog(QDialog):
    """One field for the name, and the list below it."""

    def __init__(self, marks: PageBookmarks, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._marks = marks
        self.setWindowTitle(self.tr("Bookmarks"))
        s = step()
        outer = column(2 * s, 3 * s)
        self.setLayout(outer)
        outer.addWidget(heading(self.tr("Bookmarks"), 2))
        outer.addWidget(
            sentence(
                self.tr("A bookmark keeps the plant in focus and the pins, in the book itself."),
                "soft",
            )
        )
        row = QHBoxLayout()
        row.setSpacing(s)
        self.name = QLineEdit()
        self.name.setAccessibleName(self.tr("Name of the bookmark"))
        self.name.setPlaceholderText(self.tr("Name"))
        self.name.textChanged.connect(self._fit)
        self.name.returnPressed.connect(self._keep)
        row.addWidget(self.name, 1)
        self.keep_button = action_button(self.tr("Keep this place"), self._keep, main=True)
        self.keep_button.setAutoDefault(False)
        row.addWidget(self.keep_button)
        outer.addLayout(row)
        self.list = QListWidget()
        self.list.setAccessibleName(self.tr("Bookmarks of the book"))
        self.list.itemActivated.connect(lambda _: self._go())
        self.list.currentItemChanged.connect(lambda *_: self._chosen())
        outer.addWidget(self.list, 1)
        self.message = sentence("", "fault")
        self.message.hide()
        outer.addWidget(self.message)
        buttons = QHBoxLayout()
        buttons.setSpacing(s)
        self.go_button = action_button(self.tr("Go there"), self._go)
        self.rename_button = action_button(self.tr("Rename"), self._rename)
        self.remove_button = action_button(self.tr("Remove"), self._remove)
        self.close_button = action_button(self.tr("Close"), self.reject)
        for button in (self.go_button, self.rename_button, self.remove_button):
            button.setAutoDefault(False)
            buttons.addWidget(button)
        buttons.addStretch(1)
        self.close_button.setAutoDefault(False)
        buttons.addWidget(self.close_button)
        outer.addLayout(buttons)
        self.resize(64 * s, 56 * s)

    def begin(self, suggestion: str) -> None:
        """Show the list; with a suggestion the name is asked for first."""
        self.show_list()
        self.name.setText(suggestion)
        self._fit()
        if suggestion or not self.list.count():
            self.name.selectAll()
            self.name.setFocus()
        else:
            self.list.setCurrentRow(0)
            self.list.setFocus()

    def show_list(self) -> None:
        """Show the bookmarks as they are now; the one that was chosen stays so."""
        chosen = self.chosen()
        self.list.clear()
        for name, mark in self._marks.held().items():
            text = self.tr("{} – {}").format(name, self._marks.words(mark))
            item = QListWidgetItem(text)
            item.setData(Qt.ItemDataRole.UserRole, name)
            self.list.addItem(item)
            if name == chosen:
                self.list.setCurrentItem(item)
        self._fit()

    def chosen(self) -> str:
        """The name of the bookmark that is chosen in the list; '' for none."""
        item = self.list.currentItem()
        return str(item.data(Qt.ItemDataRole.UserRole)) if item is not None else ""

    def _chosen(self) -> None:
        if self.chosen():
            self.name.setText(self.chosen())
        self._fit()

    def _fit(self) -> None:
        name, chosen = self.name.text().strip(), self.chosen()
        self.keep_button.setEnabled(bool(name))
        self.go_button.setEnabled(bool(chosen))
        self.remove_button.setEnabled(bool(chosen))
        self.rename_button.setEnabled(bool(chosen and name) and name != chosen)

    def _say(self, words: str) -> None:
        self.message.setText(words)
        self.message.setVisible(bool(words))

    def _refused(self, fault: Fault) -> None:
        self._say(fault.sentence())

    def _allowed(self, name: str) -> bool:
        from pedigreeview.window.page_bookmarks import LAST_PINS

        if name == LAST_PINS:
            self._say(self.tr("That name is kept for the last pins. Choose another one."))
        return bool(name) and name != LAST_PINS

    def _keep(self) -> None:
        name = self.name.text().strip()
        if self._allowed(name):
            self._say("")
            self._marks.keep(name, lambda _: self.accept(), self._refused)

    def _go(self) -> None:
        name = self.chosen()
        if name:
            self.accept()
            self._marks.go_to(name)

    def _rename(self) -> None:
        name, chosen = self.name.text().strip(), self.chosen()
        if chosen and name != chosen and self._allowed(name):
            self._say("")
            self._marks.rename(chosen, name, refused=self._refused)

    def _remove(self) -> None:
        self._say("")
        self._marks.remove(self.chosen(), refused=self._refused)
