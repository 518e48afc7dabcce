"""Everything that is wrong with a file, one sentence each, to read and to copy."""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from functools import partial

from PySide6.QtCore import QCoreApplication, Qt
from PySide6.QtGui import QGuiApplication, QKeySequence, QShortcut
from PySide6.QtWidgets import (
    QAbstractItemView,
    QDialog,
    QHBoxLayout,
    QListWidget,
    QListWidgetItem,
    QPushButton,
    QWidget,
)

from pedigreeview.book.faults import Fault, FileFaults
from pedigreeview.window.errands import OwnFault
from pedigreeview.window.labels import Flow, action_button, column, heading, sentence
from pedigreeview.window.saying import say
from pedigreeview.window.style import step

__all__ = ["FaultsDialog", "way_words"]


def way_words() -> dict[str, str]:
    """The ways on from a fault of a file, as their buttons say them and in their order."""

    def tr(text: str) -> str:
        return QCoreApplication.translate("FaultsDialog", text)

    return {
        "again": tr("Try again"),
        "restore": tr("Go back to a backup …"),
        "rescue": tr("Rescue what can be read …"),
        "save_copy": tr("Save a copy …"),
        "read_only": tr("Open it to read only"),
        "elsewhere": tr("Open another file …"),
        "update": tr("How to get the newer version"),
    }


class FaultsDialog(QDialog):
    """Shows one fault or the list of a file's faults; never more than sentences and ways on."""

    def __init__(
        self,
        title: str,
        fault: Fault,
        parent: QWidget | None = None,
        ways: Mapping[str, Callable[[], object]] | None = None,
    ) -> None:
        """Show a fault.

        Parameters
        ----------
        ways : what each of the ways that the fault names does here; others get no button
        """
        super().__init__(parent)
        self.setWindowTitle(title)
        self.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        s = step()
        layout = column(s, 3 * s)
        self.setLayout(layout)
        layout.addWidget(heading(title, 2))
        self.lines = self._lines(fault)
        if isinstance(fault, FileFaults):
            layout.addWidget(sentence(fault.sentence(), "soft"))
        elif isinstance(fault, OwnFault):
            layout.addWidget(sentence(fault.sentence()))
        self.list = QListWidget()
        self.list.setAccessibleName(self.tr("What is wrong"))
        self.list.setWordWrap(True)
        self.list.setSelectionMode(QAbstractItemView.SelectionMode.ExtendedSelection)
        self.list.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.list.setSpacing(max(1, s // 4))
        for line in self._shown(fault):
            QListWidgetItem(say(line), self.list)
        layout.addWidget(self.list, 1)
        self.ways: dict[str, QPushButton] = {}
        offered = Flow(s)
        for word, text in way_words().items():
            act = (ways or {}).get(word)
            if act is not None and word in getattr(fault, "ways", ()):
                self.ways[word] = action_button(text, partial(self._go, act))
                offered.addWidget(self.ways[word])
        if self.ways:
            layout.addLayout(offered)
        row = QHBoxLayout()
        row.addWidget(action_button(self.tr("Copy all"), self.copy))
        row.addStretch(1)
        self.close_button = action_button(self.tr("Close"), self.accept, main=True)
        self.close_button.setDefault(True)
        row.addWidget(self.close_button)
        layout.addLayout(row)
        QShortcut(QKeySequence(QKeySequence.StandardKey.Copy), self, self.copy)
        rows = min(10, max(2, len(self.lines)))
        width = 70 * s
        tall = offered.heightForWidth(width - 6 * s) + s if self.ways else 0
        self.resize(width, (20 + 5 * rows) * s + tall)
        if self.ways:
            next(iter(self.ways.values())).setFocus()

    def _go(self, act: Callable[[], object]) -> None:
        self.accept()
        act()

    def _lines(self, fault: Fault) -> Sequence[str]:
        if isinstance(fault, OwnFault):
            return [fault.sentence(), fault.details]
        return fault.lines()

    def _shown(self, fault: Fault) -> Sequence[str]:
        if isinstance(fault, FileFaults):
            return [one.sentence() for one in fault.faults]
        if isinstance(fault, OwnFault):
            return [fault.details.strip().splitlines()[-1]]
        return fault.lines()

    def copy(self) -> None:
        """Put the chosen sentences, or all of them, on the clipboard."""
        chosen = [item.text() for item in self.list.selectedItems()]
        QGuiApplication.clipboard().setText("\n".join(chosen or self.lines))
