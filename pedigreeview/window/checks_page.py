"""The Checks page: what in the records cannot be right, each with a way to mend it."""

from __future__ import annotations

from collections.abc import Sequence
from itertools import islice
from typing import TYPE_CHECKING

from PySide6.QtCore import QRectF, QSize, Qt, Signal
from PySide6.QtGui import QColor, QPainter, QPaintEvent, QResizeEvent
from PySide6.QtWidgets import QHBoxLayout, QSizePolicy, QWidget

from pedigreeview.book.book import Book
from pedigreeview.book.problems import Problem
from pedigreeview.window.labels import (
    LinkLabel,
    clear,
    column,
    heading,
    rule,
    scrolled,
    sentence,
    set_measure,
)
from pedigreeview.window.rail import tag_path
from pedigreeview.window.style import current, step
from pedigreeview.window.words import count, links

if TYPE_CHECKING:
    from pedigreeview.network import PedigreeNetwork

__all__ = ["ChecksPage"]

_SHOWN = 200
_LOOKED = 10_000
"""Plants among which a date is looked for."""


class _Mark(QWidget):
    """A small tag in the colour of the severity, with its initial for those who see no colour."""

    def __init__(self, severity: str) -> None:
        super().__init__()
        self._severity = severity
        self.setAccessibleName(severity)
        self.setSizePolicy(QSizePolicy.Policy.Fixed, QSizePolicy.Policy.Fixed)

    def sizeHint(self) -> QSize:
        height = self.fontMetrics().height()
        return QSize(2 * height, height + 4)

    def paintEvent(self, event: QPaintEvent) -> None:
        colours = current()
        sign, colour = {
            "error": ("!", colours.error),
            "warning": ("?", colours.warn),
        }.get(self._severity, ("i", colours.soft))
        painter = QPainter(self)
        try:
            painter.setRenderHint(QPainter.RenderHint.Antialiasing)
            painter.setPen(Qt.PenStyle.NoPen)
            painter.setBrush(QColor(colour))
            box = QRectF(self.rect()).adjusted(0, 1, 0, -1)
            painter.drawPath(tag_path(box, 0.35 * box.height()))
            painter.setPen(colours.on_accent)
            painter.drawText(box, int(Qt.AlignmentFlag.AlignCenter), sign)
        finally:
            painter.end()


class ChecksPage(QWidget):
    """All problems of the book, the grave ones first."""

    plant_wanted = Signal(str)

    def __init__(self) -> None:
        super().__init__()
        self.setObjectName("page")
        self.setAttribute(Qt.WidgetAttribute.WA_StyledBackground)
        s = step()
        inner = QWidget()
        self._body = column(s)
        inner.setLayout(self._body)
        outer = column()
        self.setLayout(outer)
        outer.addWidget(scrolled(inner))

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        set_measure(self._body, self.width(), 4 * step())

    def show_problems(
        self, net: PedigreeNetwork, problems: Sequence[Problem], remarks: Sequence[str]
    ) -> None:
        """List problems by severity, and what the reader of the file had to say."""
        clear(self._body)
        self._body.addWidget(heading(self.tr("Checks"), 2))
        if not problems:
            self._body.addWidget(sentence(self._all_well(net.book)))
        for severity, title in (
            ("error", self.tr("Cannot be")),
            ("warning", self.tr("Unlikely, or changes numbers")),
            ("note", self.tr("Worth knowing")),
        ):
            some = [one for one in problems if one.severity == severity]
            if some:
                self._body.addSpacing(step())
                self._body.addWidget(heading(f"{title}: {len(some)}", 3))
                for one in some[:_SHOWN]:
                    self._body.addWidget(rule())
                    self._body.addLayout(self._row(net, one))
                if len(some) > _SHOWN:
                    more = count(len(some) - _SHOWN, self.tr("more"), self.tr("more"))
                    self._body.addWidget(sentence(more, "soft"))
        if remarks:
            self._body.addSpacing(step())
            self._body.addWidget(heading(self.tr("Noticed while opening"), 3))
            for remark in remarks:
                self._body.addWidget(sentence(remark))
        self._body.addStretch(1)

    def _all_well(self, book: Book) -> str:
        """What was looked at, no more than there is to look at."""
        looked = [self.tr("no plant is its own ancestor"), self.tr("no two codes look alike")]
        dated = any(plant.sown for plant in islice(book.plants.values(), _LOOKED)) or any(
            row.date for row in book.pollinations.values()
        )
        if dated:
            looked.append(self.tr("no date comes before what must have been first"))
        if book.pollinations or book.harvests or book.sowings:
            looked.append(self.tr("the counts of flowers, fruits and seeds agree"))
        text = self.tr("Nothing in the records looks wrong: {}.").format(", ".join(looked))
        if not dated:
            text += " " + self.tr("No dates are recorded, so none could be checked.")
        return text

    def _row(self, net: PedigreeNetwork, one: Problem) -> QHBoxLayout:
        s = step()
        row = QHBoxLayout()
        row.setSpacing(2 * s)
        row.addWidget(_Mark(one.severity), 0, Qt.AlignmentFlag.AlignTop)
        text = column(max(2, s // 4))
        text.addWidget(sentence(one.message))
        text.addWidget(sentence(self.tr("Mend: {}").format(one.mend), "soft"))
        known = [code for code in one.plants if code in net.book.plants]
        if known:
            places = LinkLabel(self.tr("Show in the picture: {}").format(links(known, 12)))
            places.followed.connect(self.plant_wanted)
            text.addWidget(places)
        row.addLayout(text, 1)
        return row
