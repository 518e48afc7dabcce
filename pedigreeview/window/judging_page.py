"""The Judging page: what the progeny show, in five parts, each made when it is first looked at."""

from __future__ import annotations

from collections.abc import Iterator
from typing import TYPE_CHECKING

from PySide6.QtCore import Qt
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import QListWidget, QListWidgetItem, QStackedWidget

from pedigreeview.window.book_page import BookPage
from pedigreeview.window.desk import Desk
from pedigreeview.window.errands import Errands
from pedigreeview.window.judging.genes_panel import GenesPanel
from pedigreeview.window.judging.hybrid_panel import HybridPanel
from pedigreeview.window.judging.line_panel import LinePanel
from pedigreeview.window.judging.panel import JudgingPanel, Write
from pedigreeview.window.judging.segregation_panel import SegregationPanel
from pedigreeview.window.judging.selection_panel import SelectionPanel
from pedigreeview.window.list_heights import fit_heights
from pedigreeview.window.page_side import PageSide, beside
from pedigreeview.window.style import step

if TYPE_CHECKING:
    from pedigreeview.book.edits import Change
    from pedigreeview.network import PedigreeNetwork
    from pedigreeview.window.opening import Opened

__all__ = ["PARTS", "JudgingPage"]

_PANELS: dict[str, type[JudgingPanel]] = {
    "segregation": SegregationPanel,
    "hybrids": HybridPanel,
    "genes": GenesPanel,
    "lines": LinePanel,
    "selection": SelectionPanel,
}
PARTS = tuple(_PANELS)


class JudgingPage(BookPage):
    """A list of questions at the side, the chosen one beside it.

    Parameters
    ----------
    write : opens a form by its name; without it the page only shows
    """

    def __init__(self, errands: Errands, desk: Desk, write: Write | None = None) -> None:
        super().__init__()
        self.setObjectName("page")
        self.setAttribute(Qt.WidgetAttribute.WA_StyledBackground)
        self._errands, self._desk, self._write = errands, desk, write
        self._net: PedigreeNetwork | None = None
        self._picked: tuple[str, ...] = ()
        self._marked = ""
        self._panels: dict[str, JudgingPanel] = {}
        self._side = PageSide(self.tr("Judging"), self.tr("What the progeny show."))
        self.list = QListWidget()
        self.list.setAccessibleName(self.tr("What to judge"))
        self.list.setWordWrap(True)
        self.list.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.list.setResizeMode(QListWidget.ResizeMode.Adjust)
        for name, text, about in (
            ("segregation", self.tr("Segregation"), self.tr("do the counts fit a ratio?")),
            ("hybrids", self.tr("Selfs or hybrids"), self.tr("which are accidental selfings?")),
            ("genes", self.tr("Genes"), self.tr("who carries what?")),
            ("lines", self.tr("Stable line?"), self.tr("does it breed true?")),
            ("selection", self.tr("Selection"), self.tr("which to keep for a measure?")),
        ):
            item = QListWidgetItem(f"{text}\n{about}")
            item.setData(Qt.ItemDataRole.UserRole, name)
            self.list.addItem(item)
        self.list.currentRowChanged.connect(lambda row: self._turn(PARTS[row]))
        self._side.body.addWidget(self.list, 1)
        outer = beside(self, self._side)
        self.parts = QStackedWidget()
        outer.addWidget(self.parts, 1)
        self.setFocusProxy(self.list)
        self._fit()
        # Without its part, which comes in the next slice, or with the book.
        self.list.blockSignals(True)
        self.list.setCurrentRow(0)
        self.list.blockSignals(False)

    def rest(self) -> Iterator[None]:
        self._turn(self.part())
        yield

    def panel(self, name: str) -> JudgingPanel:
        """A part of the page, made now if need be."""
        held = self._panels.get(name)
        if held is None:
            held = self._panels[name] = self._make(name)
            held.plant_wanted.connect(self.plant_wanted)
            held.picked.connect(self.picked)
            self.parts.addWidget(held)
            held.take_picked(self._picked)
            held.mark(self._marked)
            held.show_net(self._net)
        return held

    def _make(self, name: str) -> JudgingPanel:
        return _PANELS[name](self._errands, self._desk, self._write)

    def part(self) -> str:
        """The part on show."""
        return PARTS[max(0, self.list.currentRow())]

    def _turn(self, name: str) -> None:
        self.parts.setCurrentWidget(self.panel(name))

    # The book -----------------------------------------------------------------------------------

    def show_opened(self, opened: Opened | None) -> None:
        """Another book, or none."""
        fresh = self._net is None
        self._net = opened.net if opened is not None else None
        self._picked, self._marked = (), ""
        for panel in self._panels.values():
            if fresh:
                panel.take_picked(())
                panel.mark("")
                panel.show_net(self._net)
                continue
            # What was chosen in the book before means nothing in this one.
            panel.forget()
            self.parts.removeWidget(panel)
            panel.hide()
            panel.deleteLater()
        if not fresh:
            self._panels = {}
        self._turn(self.part())

    def book_changed(self, opened: Opened, change: Change) -> None:
        """The book after an edit: what is chosen stays chosen."""
        self._net = opened.net
        for panel in self._panels.values():
            panel.show_net(opened.net)

    def mark(self, code: str) -> None:
        self._marked = code
        for panel in self._panels.values():
            panel.mark(code)

    def take_picked(self, codes: tuple[str, ...]) -> None:
        self._picked = codes
        for panel in self._panels.values():
            panel.take_picked(codes)

    def redraw(self) -> None:
        self._fit()
        for panel in self._panels.values():
            panel.redraw()

    def go_to(self, part: str) -> None:
        """A part by its name, and what of it: 'lines:19-4-2', 'segregation:22-01', 'genes'."""
        name, _, what = part.partition(":")
        if name in PARTS:
            self.list.setCurrentRow(PARTS.index(name))
            if what:
                self.panel(name).go_to(what)

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self._fit()

    def _fit(self) -> None:
        wide = min(32 * step(), self.width() * 3 // 10)
        self._side.setFixedWidth(wide)
        self.list.resize(wide - 3 * step(), self.list.height())
        fit_heights(self.list)
