"""What every number rests on: the founders, and what was stated or assumed of each."""

from __future__ import annotations

from typing import TYPE_CHECKING, Any

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import (
    QAbstractItemView,
    QDialog,
    QHBoxLayout,
    QHeaderView,
    QTableWidget,
    QTableWidgetItem,
    QWidget,
)

from pedigreeview.window.labels import action_button, column, heading, sentence
from pedigreeview.window.style import step

if TYPE_CHECKING:
    from pedigreeview.network import PedigreeNetwork

__all__ = ["BasePanel"]

_ROWS = 2000


class BasePanel(QDialog):
    """Lists the founders; asks for another answer where a table says nothing of them."""

    change_wanted = Signal()
    plant_wanted = Signal(str)

    def __init__(
        self, net: PedigreeNetwork, can_change: bool, parent: QWidget | None = None
    ) -> None:
        super().__init__(parent)
        self.setWindowTitle(self.tr("Base of the numbers"))
        self.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        s = step()
        layout = column(s, 3 * s)
        self.setLayout(layout)
        base = net.base()
        founders: list[dict[str, Any]] = base["founders"]
        layout.addWidget(heading(self.tr("Base of the numbers"), 2))
        layout.addWidget(sentence(str(base["sentence"])))
        layout.addWidget(
            sentence(
                self.tr(
                    "Fixation 1 means that a founder breeds true, 0 that its two alleles at a "
                    "gene are taken as unrelated. Founders count as unrelated to each other. F "
                    "and coancestry tell how much more alike plants are than this base."
                ),
                "soft",
            )
        )
        for entry in base.get("open_pollinated", ()):
            rate = entry["outcrossing"]
            if rate is None:
                text = self.tr(
                    "Open-pollinated seed{}: the pollen parent counts as unknown."
                ).format(self.tr(" of {}").format(entry["crop"]) if entry["crop"] else "")
            else:
                text = self.tr(
                    "Open-pollinated seed{}: {:.3g} of it counts as crossed with an unknown plant."
                ).format(self.tr(" of {}").format(entry["crop"]) if entry["crop"] else "", rate)
            layout.addWidget(sentence(text, "soft"))
        self.table = self._table(net, founders)
        layout.addWidget(self.table, 100)
        if len(founders) > _ROWS:
            layout.addWidget(
                sentence(self.tr("and {:,} more founders").format(len(founders) - _ROWS), "soft")
            )
        row = QHBoxLayout()
        self.change = action_button(self.tr("How are they kept true? …"), self._change)
        self.change.setVisible(can_change)
        row.addWidget(self.change)
        row.addStretch(1)
        done = action_button(self.tr("Close"), self.accept, main=True)
        done.setDefault(True)
        row.addWidget(done)
        # As tall as its founders ask for, up to a limit: no empty ground below them.  On a small
        # screen it gives way, and scrolls.
        head, edge = self.table.horizontalHeader().sizeHint().height(), 2 + s // 2
        rows = self.table.verticalHeader().length()
        tall = min(head + rows + edge, 44 * s)
        self.table.setMaximumHeight(tall)
        self.table.setMinimumHeight(min(tall, 10 * s))
        layout.addStretch(1)
        layout.addLayout(row)
        width = 78 * s
        spare = tall - self.table.minimumHeight()
        self.resize(width, layout.totalMinimumHeightForWidth(width) + spare)
        done.setFocus()

    def _table(self, net: PedigreeNetwork, founders: list[dict[str, Any]]) -> QTableWidget:
        heads = [
            self.tr("Founder"),
            self.tr("Name"),
            self.tr("Counts as"),
            self.tr("Fixation"),
            self.tr("Ploidy"),
            self.tr("Known from"),
        ]
        shown = founders[:_ROWS]
        table = QTableWidget(len(shown), len(heads))
        table.setAccessibleName(self.tr("Founders and what was assumed of them"))
        table.setHorizontalHeaderLabels(heads)
        table.verticalHeader().hide()
        table.setShowGrid(False)
        table.setEditTriggers(QAbstractItemView.EditTrigger.NoEditTriggers)
        table.setSelectionBehavior(QAbstractItemView.SelectionBehavior.SelectRows)
        for row, founder in enumerate(shown):
            plant = net.book.plants.get(founder["plant"])
            cells = [
                founder["plant"],
                plant.name if plant is not None else "",
                founder["kind"],
                f"{founder['fixation']:.4g}",
                f"{founder.get('ploidy', 2)}x",
                self.tr("the record") if founder["stated"] else self.tr("assumed"),
            ]
            for at, text in enumerate(cells):
                item = QTableWidgetItem(text)
                if at in (3, 4):
                    item.setTextAlignment(Qt.AlignmentFlag.AlignCenter)
                table.setItem(row, at, item)
        table.horizontalHeader().setSectionResizeMode(QHeaderView.ResizeMode.ResizeToContents)
        table.horizontalHeader().setSectionResizeMode(1, QHeaderView.ResizeMode.Stretch)
        table.horizontalHeader().setDefaultAlignment(Qt.AlignmentFlag.AlignLeft)
        table.verticalHeader().setSectionResizeMode(QHeaderView.ResizeMode.ResizeToContents)
        table.itemActivated.connect(
            lambda item: self.plant_wanted.emit(str(founders[item.row()]["plant"]))
        )
        return table

    def _change(self) -> None:
        self.accept()
        self.change_wanted.emit()
