"""What a group of plants holds: coancestry, founders, ancestors, a number and a sentence each."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QComboBox, QDialog, QHBoxLayout, QLabel, QWidget

from pedigreeview.book.faults import Fault
from pedigreeview.window.errands import Errands
from pedigreeview.window.groups import GroupNumber, ask_group, groups
from pedigreeview.window.labels import action_button, clear, column, heading, scrolled, sentence
from pedigreeview.window.style import step

if TYPE_CHECKING:
    from pedigreeview.network import PedigreeNetwork

__all__ = ["GroupPanel"]


class GroupPanel(QDialog):
    """Lets the person choose a group and shows its numbers."""

    def __init__(
        self,
        net: PedigreeNetwork,
        pins: tuple[str, ...],
        errands: Errands,
        parent: QWidget | None = None,
        *,
        picked: tuple[str, ...] = (),
    ) -> None:
        super().__init__(parent)
        self.setWindowTitle(self.tr("Diversity of a group"))
        self.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        self._net, self._errands = net, errands
        self._groups = groups(net, pins, picked)
        s = step()
        layout = column(s, 3 * s)
        self.setLayout(layout)
        layout.addWidget(heading(self.tr("Diversity of a group"), 2))
        row = QHBoxLayout()
        label = QLabel(self.tr("Group"))
        self.choose = QComboBox()
        self.choose.setAccessibleName(self.tr("Group"))
        label.setBuddy(self.choose)
        for name, codes in self._groups:
            self.choose.addItem(f"{name} ({len(codes)})")
        row.addWidget(label)
        row.addWidget(self.choose, 1)
        layout.addLayout(row)
        inner = QWidget()
        self.numbers = column(s)
        self.numbers.setContentsMargins(0, s, s, s)
        inner.setLayout(self.numbers)
        layout.addWidget(scrolled(inner), 1)
        layout.addWidget(sentence(net.base_sentence(), "soft"))
        foot = QHBoxLayout()
        foot.addStretch(1)
        done = action_button(self.tr("Close"), self.accept, main=True)
        done.setDefault(True)
        foot.addWidget(done)
        layout.addLayout(foot)
        self.resize(76 * s, 84 * s)
        self.choose.currentIndexChanged.connect(self._ask)
        self.finished.connect(lambda _: errands.drop("group"))
        if self._groups:
            self._ask(0)
        else:
            self.numbers.addWidget(sentence(self.tr("No plant of this book can be looked at.")))

    def _ask(self, at: int) -> None:
        net, codes, tick = self._net, self._groups[at][1], self._errands.tick
        clear(self.numbers)
        self.numbers.addWidget(sentence(self.tr("Working out the numbers …"), "soft"))
        self._errands.ask("group", lambda: ask_group(net, codes, tick), self._show, self._failed)

    def _failed(self, fault: Fault) -> None:
        clear(self.numbers)
        self.numbers.addWidget(sentence(fault.sentence(), "warn"))

    def _show(self, found: list[GroupNumber]) -> None:
        clear(self.numbers)
        for one in found:
            part = column(max(1, step() // 4))
            part.addWidget(sentence(one.name, "caption"))
            number = sentence(one.text, "number")
            number.setObjectName(one.name)
            number.setAccessibleName(f"{one.name}: {one.text}")
            part.addWidget(number)
            part.addWidget(sentence(one.words, "soft"))
            self.numbers.addLayout(part)
        self.numbers.addStretch(1)
