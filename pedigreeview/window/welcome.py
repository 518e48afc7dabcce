"""The first page: what this is, and four ways in: a file, a folder, a recent book, a demo."""

from __future__ import annotations

import json
from collections.abc import Iterable
from dataclasses import dataclass
from pathlib import Path

from PySide6.QtCore import QCoreApplication, QRectF, QSize, Qt, Signal
from PySide6.QtGui import QPainter, QPaintEvent, QPen, QResizeEvent
from PySide6.QtWidgets import (
    QAbstractButton,
    QGridLayout,
    QHBoxLayout,
    QLabel,
    QPushButton,
    QSizePolicy,
    QWidget,
)

from pedigreeview.places import demos
from pedigreeview.window.labels import (
    Flow,
    action_button,
    clear,
    column,
    heading,
    plain_button,
    scrolled,
    sentence,
    set_measure,
)
from pedigreeview.window.rail import paint_mark, tag_path
from pedigreeview.window.style import current, current_name, step

__all__ = ["DemoCard", "DemoEntry", "Welcome", "demo_entries"]


_FIRST = ("two_peas_both_ways", "newcomers_table.csv")


@dataclass(frozen=True, slots=True)
class DemoEntry:
    """One demo book: where it lies, its title and a sentence about it."""

    path: Path
    title: str
    text: str


def demo_entries() -> list[DemoEntry]:
    """The demos that came with the program: folders by their `datapackage.json`, tables by name.

    The smallest way in comes first, the others by name.
    """

    def place(path: Path) -> tuple[int, str]:
        return _FIRST.index(path.name) if path.name in _FIRST else len(_FIRST), path.name

    found = []
    for path in sorted(demos().iterdir(), key=place):
        described = path / "datapackage.json"
        if described.is_file():
            entry = json.loads(described.read_text(encoding="utf-8"))
            title = str(entry.get("title") or path.name)
            text = str(entry.get("description") or "") or _sentence(str(entry.get("name", "")))
            found.append(DemoEntry(path, title, text))
        elif path.suffix.lower() == ".csv":
            title = _tr("A newcomer's table")
            found.append(DemoEntry(path, title, _sentence("newcomers-table")))
    return found


def _tr(text: str) -> str:
    return QCoreApplication.translate("Welcome", text)


def _sentence(name: str) -> str:
    """A sentence about a demo that carries none of its own."""
    return {
        "two-peas-both-ways": _tr(
            "Garden pea: one cross made in both directions, its F2, and selections to the F5."
        ),
        "a-leaf-for-hollin-plate": _tr(
            "Tomato: a leaf brought over by backcrossing, with doubtful pollen and one planted "
            "error for the checks to find."
        ),
        "tansy-and-the-moths": _tr(
            "Daylily with four sets of chromosomes: clones, few seeds, and a pod made by bees."
        ),
        "newcomers-table": _tr(
            "A plain table as a spreadsheet has it: one row a plant, and no word yet about how the "
            "founders are kept true."
        ),
    }.get(name, "")


class DemoCard(QAbstractButton):
    """A demo as a seed tag to click."""

    def __init__(self, entry: DemoEntry) -> None:
        super().__init__()
        self.entry = entry
        text = entry.text
        self.setAccessibleName(self.tr("Open the demo '{}'").format(entry.title))
        self.setAccessibleDescription(text)
        self.setCursor(Qt.CursorShape.PointingHandCursor)
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Preferred)
        s = step()
        layout = column(max(2, s // 2))
        layout.setContentsMargins(5 * s, 2 * s, 2 * s, 2 * s)
        self.setLayout(layout)
        for label in (heading(entry.title, 3), sentence(text, "soft")):
            label.setTextInteractionFlags(Qt.TextInteractionFlag.NoTextInteraction)
            label.setAttribute(Qt.WidgetAttribute.WA_TransparentForMouseEvents)
            layout.addWidget(label)
        layout.addStretch(1)

    def sizeHint(self) -> QSize:
        layout = self.layout()
        assert layout is not None
        return layout.sizeHint()

    def paintEvent(self, event: QPaintEvent) -> None:
        colours, s = current(), step()
        painter = QPainter(self)
        try:
            painter.setRenderHint(QPainter.RenderHint.Antialiasing)
            box = QRectF(self.rect()).adjusted(1.5, 1.5, -1.5, -1.5)
            over = self.underMouse() or self.isDown()
            painter.setBrush(
                colours.hover
                if over
                else colours.window
                if current_name() == "light"
                else colours.paper
            )
            lit = self.hasFocus() or over
            painter.setPen(QPen(colours.accent if lit else colours.rule, 2 if lit else 1))
            painter.drawPath(tag_path(box, 2 * s, 0.7 * s))
            painter.setPen(QPen(colours.accent, max(2.0, s / 3)))
            painter.drawLine(
                int(box.left() + 3.2 * s),
                int(box.top() + 2.2 * s),
                int(box.left() + 3.2 * s),
                int(box.bottom() - 2.2 * s),
            )
        finally:
            painter.end()


class _BigMark(QWidget):
    def __init__(self) -> None:
        super().__init__()
        self.setSizePolicy(QSizePolicy.Policy.Fixed, QSizePolicy.Policy.Fixed)

    def sizeHint(self) -> QSize:
        return QSize(14 * step(), 10 * step())

    def paintEvent(self, event: QPaintEvent) -> None:
        painter = QPainter(self)
        try:
            painter.setRenderHint(QPainter.RenderHint.Antialiasing)
            paint_mark(painter, QRectF(self.rect()), current())
        finally:
            painter.end()


class Welcome(QWidget):
    """The empty state of the window."""

    new_book = Signal()
    open_file = Signal()
    open_folder = Signal()
    open_path = Signal(object)
    forget = Signal(object)

    def __init__(self) -> None:
        super().__init__()
        self.setObjectName("welcome")
        self.setAttribute(Qt.WidgetAttribute.WA_StyledBackground)
        s = step()
        inner = QWidget()
        body = column(3 * s)
        inner.setLayout(body)
        self._body = body
        body.addLayout(self._head())
        body.addLayout(self._ways_in())
        self._recent_head = heading(self.tr("Recent"), 2)
        self._recent = column(max(2, s // 3))
        recent = column(s)
        recent.addWidget(self._recent_head)
        recent.addLayout(self._recent)
        body.addLayout(recent)
        demos_part = column(s)
        body.addLayout(demos_part)
        demos_part.addWidget(heading(self.tr("Look round in a demo"), 2))
        grid = QGridLayout()
        grid.setSpacing(2 * s)
        self.demo_cards: list[DemoCard] = []
        for at, entry in enumerate(demo_entries()):
            card = DemoCard(entry)
            card.clicked.connect(lambda _=False, path=entry.path: self.open_path.emit(path))
            self.demo_cards.append(card)
            grid.addWidget(card, at // 2, at % 2)
        grid.setColumnStretch(0, 1)
        grid.setColumnStretch(1, 1)
        demos_part.addLayout(grid)
        body.addStretch(1)
        outer = column()
        self.setLayout(outer)
        outer.addWidget(scrolled(inner))

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        set_measure(self._body, self.width(), 5 * step())

    def _head(self) -> QHBoxLayout:
        s = step()
        row = QHBoxLayout()
        row.setSpacing(3 * s)
        row.addWidget(_BigMark(), 0, Qt.AlignmentFlag.AlignTop)
        text = column(s)
        text.addWidget(heading(self.tr("Crossing Book"), 1))
        text.addWidget(
            sentence(
                self.tr(
                    "For people who cross plants by hand: see which plant came from what, click "
                    "from parents to progeny, and compare the two directions of a cross. It works "
                    "out how related any two plants are and says what each number rests on."
                )
            )
        )
        row.addLayout(text, 1)
        return row

    def _ways_in(self) -> Flow:
        s = step()
        flow = Flow(2 * s)
        self.new_button = action_button(
            self.tr("Start a new book …"), self.new_book.emit, main=True
        )
        self.new_button.setToolTip(self.tr("An empty book to write crosses and plants in"))
        self.file_button = action_button(self.tr("Open a book or table …"), self.open_file.emit)
        self.file_button.setToolTip(self.tr("A .pedbook, or CSV, TSV or text from a spreadsheet"))
        self.folder_button = action_button(self.tr("Open a folder …"), self.open_folder.emit)
        self.folder_button.setToolTip(self.tr("A Data Package folder with datapackage.json"))
        hint = QLabel(self.tr("or drop a file anywhere on this window"))
        hint.setProperty("role", "soft")
        hint.setMinimumHeight(self.file_button.sizeHint().height())
        for widget in (self.new_button, self.file_button, self.folder_button, hint):
            flow.addWidget(widget)
        return flow

    def show_recent(self, paths: Iterable[Path]) -> None:
        """List the books opened before; a missing one says so and can be taken out."""
        clear(self._recent)
        s = step()
        shown = list(paths)[:6]
        self._recent_head.setVisible(bool(shown))
        for path in shown:
            row = QHBoxLayout()
            row.setSpacing(s)
            there = path.exists()
            button = QPushButton(path.name)
            button.setProperty("role", "line")
            button.setEnabled(there)
            button.setToolTip(str(path))
            button.clicked.connect(lambda _=False, path=path: self.open_path.emit(path))
            row.addWidget(button)
            where = sentence(
                str(path.parent) if there else self.tr("no longer there: {}").format(path.parent),
                "soft",
            )
            where.setSizePolicy(QSizePolicy.Policy.Ignored, QSizePolicy.Policy.Preferred)
            row.addWidget(where, 1)
            row.addWidget(
                plain_button(
                    "✕",
                    self.tr("Take {} out of this list").format(path.name),
                    lambda path=path: self.forget.emit(path),  # type: ignore[misc]
                )
            )
            self._recent.addLayout(row)
