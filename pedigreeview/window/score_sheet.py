"""The score sheet: plants by traits for one day, typed as in a spreadsheet, or pasted from one.

A cell is in the book as soon as it is left.  What does not fit its trait stays in the cell as it
was typed, marked, until it is mended; nothing else waits for it.
"""

from __future__ import annotations

import datetime
from collections.abc import Mapping
from typing import TYPE_CHECKING, Any

from PySide6.QtCore import (
    QAbstractTableModel,
    QModelIndex,
    QObject,
    QPersistentModelIndex,
    Qt,
    Signal,
)
from PySide6.QtGui import QGuiApplication
from PySide6.QtWidgets import (
    QComboBox,
    QHeaderView,
    QMenu,
    QToolButton,
    QWidget,
)

from pedigreeview.book.book import Book
from pedigreeview.book.edits import Edit
from pedigreeview.book.faults import Fault
from pedigreeview.book.recording.scores import (
    GridFaults,
    ScoreGrid,
    pasted,
    record_scores,
    score_grid,
)
from pedigreeview.book.recording.sheets import in_order
from pedigreeview.book.recording.typed_dates import Order
from pedigreeview.book.records import Trait
from pedigreeview.window.desk import Desk
from pedigreeview.window.forms.fields import ChoiceField, DateField, TextField
from pedigreeview.window.labels import (
    Flow,
    action_button,
    column,
    say_in,
    scrolled,
    sentence,
)
from pedigreeview.window.preferences import Preferences
from pedigreeview.window.style import current, step
from pedigreeview.window.typing_grid import TypingGrid
from pedigreeview.window.words import count, named
from pedigreeview.window.words import number as written

if TYPE_CHECKING:
    from pedigreeview.network import PedigreeNetwork

__all__ = ["ScoreSheet"]

_Index = QModelIndex | QPersistentModelIndex
_Cell = tuple[int, int]
_Score = tuple[str, str, str, str]
"""Plant, trait, day, and whether the plant is scored or its seed."""
_MOST = 2000


class _Model(QAbstractTableModel):
    """The grid with what is typed and not yet taken."""

    typed = Signal(object)
    """Cells that were typed, as {(row, column): text}."""

    def __init__(self, parent: QObject) -> None:
        super().__init__(parent)
        self.grid: ScoreGrid | None = None
        self.traits: dict[str, Trait] = {}
        self.waiting: dict[_Cell, tuple[str, str]] = {}
        """By cell, what was typed and why it was not taken ('' while it is being written)."""

    def show_grid(self, grid: ScoreGrid | None, traits: Mapping[str, Trait]) -> None:
        """Another grid; what was not taken is dropped with the old one."""
        self.beginResetModel()
        self.grid, self.traits = grid, dict(traits)
        self.waiting.clear()
        self.endResetModel()

    def renew(self, grid: ScoreGrid) -> None:
        """The same plants and traits with what the book holds now; what waits stays."""
        self.grid = grid
        if grid.plants and grid.traits:
            last = self.index(len(grid.plants) - 1, len(grid.traits) - 1)
            self.dataChanged.emit(self.index(0, 0), last)

    def rowCount(self, parent: _Index = QModelIndex()) -> int:  # noqa: B008
        return 0 if parent.isValid() or self.grid is None else len(self.grid.plants)

    def columnCount(self, parent: _Index = QModelIndex()) -> int:  # noqa: B008
        return 0 if parent.isValid() or self.grid is None else len(self.grid.traits)

    def headerData(
        self, section: int, orientation: Qt.Orientation, role: int = Qt.ItemDataRole.DisplayRole
    ) -> Any:
        if self.grid is None or role not in (
            Qt.ItemDataRole.DisplayRole,
            Qt.ItemDataRole.ToolTipRole,
        ):
            return None
        if orientation == Qt.Orientation.Vertical:
            return self.grid.plants[section]
        name = self.grid.traits[section]
        return self._trait_tip(name) if role == Qt.ItemDataRole.ToolTipRole else self._title(name)

    def _title(self, name: str) -> str:
        unit = self.traits[name].unit if name in self.traits else ""
        return f"{name}\n{unit}" if unit and unit != name else name

    def _trait_tip(self, name: str) -> str:
        trait = self.traits.get(name)
        if trait is None:
            return name
        if trait.type == "yes_no":
            return self.tr("{}: yes or no").format(name)
        if trait.type == "category":
            return self.tr("{}: one of {}").format(name, trait.values)
        if trait.low is not None and trait.high is not None:
            return self.tr("{}: {} to {}").format(name, f"{trait.low:g}", f"{trait.high:g}")
        return name

    def data(self, index: _Index, role: int = Qt.ItemDataRole.DisplayRole) -> Any:
        if not index.isValid() or self.grid is None:
            return None
        cell = (index.row(), index.column())
        typed, why = self.waiting.get(cell, ("", ""))
        if role in (Qt.ItemDataRole.DisplayRole, Qt.ItemDataRole.EditRole):
            return typed if cell in self.waiting else self.grid.values.get(cell, "")
        if role in (Qt.ItemDataRole.ToolTipRole, Qt.ItemDataRole.AccessibleDescriptionRole):
            return why or None
        if role == Qt.ItemDataRole.ForegroundRole and why:
            return current().error
        if role == Qt.ItemDataRole.FontRole and why:
            font = QGuiApplication.font()
            font.setUnderline(True)
            return font
        return None

    def flags(self, index: _Index) -> Qt.ItemFlag:
        held = Qt.ItemFlag.ItemIsEnabled | Qt.ItemFlag.ItemIsSelectable
        return held | Qt.ItemFlag.ItemIsEditable if index.isValid() else held

    def setData(self, index: _Index, value: Any, role: int = Qt.ItemDataRole.EditRole) -> bool:
        if role != Qt.ItemDataRole.EditRole or not index.isValid():
            return False
        text = str(value).strip()
        if text != str(self.data(index) or ""):
            self.typed.emit({(index.row(), index.column()): text})
        return True


class ScoreSheet(QWidget):
    """Which plants, which traits, which day; and the grid."""

    trait_wanted = Signal()
    """A new trait is asked for."""

    def __init__(self, desk: Desk, preferences: Preferences) -> None:
        super().__init__()
        self._desk = desk
        self._net: PedigreeNetwork | None = None
        self._picked: tuple[str, ...] = ()
        self._off: set[str] = set()
        """Traits that are not shown."""
        self._aside: dict[_Score, tuple[str, str]] = {}
        """Typed scores that were not taken, of plants, traits or days that are not on show."""
        order: Order = "month-day" if preferences.date_order == "month-day" else "day-month"
        s = step()
        # With large type the sheet goes on further down.
        inner, body = QWidget(), column(s)
        inner.setLayout(body)
        outer = column()
        outer.addWidget(scrolled(inner))
        self.setLayout(outer)
        row = Flow(s)
        self.which = QComboBox()
        self.which.setAccessibleName(self.tr("Plants to score"))
        self.which.setSizeAdjustPolicy(QComboBox.SizeAdjustPolicy.AdjustToContents)
        self.which.setMaximumWidth(38 * s)
        self.which.currentIndexChanged.connect(self._show)
        self.date = DateField("date", datetime.date.today, order)
        self.date.set_label(self.tr("Day of scoring"))
        self.date.setMinimumWidth(24 * s)
        self.date.set_text(self.tr("today"))
        self.date.editor.editingFinished.connect(self._show)
        self.of = ChoiceField(
            "of", (("plant", self.tr("of the plant")), ("seed", self.tr("of its seed")))
        )
        self.of.set_label(self.tr("Whether the plant is scored or the seed that it bore"))
        self.of.changed.connect(self._show)
        self.by = TextField("by", self.tr("scored by"))
        self.by.set_label(self.tr("Who scored"))
        self.by.setMaximumWidth(18 * s)
        self.traits_button = QToolButton()
        self.traits_button.setText(self.tr("Traits ▾"))
        self.traits_button.setAccessibleName(self.tr("Traits shown"))
        self.traits_button.setPopupMode(QToolButton.ToolButtonPopupMode.InstantPopup)
        self._menu = QMenu(self.traits_button)
        self.traits_button.setMenu(self._menu)
        self._menu.aboutToShow.connect(self._fill_menu)
        self.new_trait = action_button(self.tr("New trait …"), self.trait_wanted.emit)
        for widget in (
            self.which,
            self.date,
            self.of,
            self.by,
            self.traits_button,
            self.new_trait,
        ):
            row.addWidget(widget)
        body.addLayout(row)
        self.model = _Model(self)
        self.view = TypingGrid(self.model, self.tr("Scores of plants by traits"))
        header = self.view.horizontalHeader()
        header.setMinimumSectionSize(12 * s)
        header.setResizeContentsPrecision(0)
        header.setSectionResizeMode(QHeaderView.ResizeMode.ResizeToContents)
        self.view.verticalHeader().setDefaultSectionSize(
            self.fontMetrics().height() + round(1.4 * s)
        )
        self.view.pasted.connect(self.paste)
        self.view.emptied.connect(self._empty)
        self.model.typed.connect(self.write)
        body.addWidget(self.view, 1)
        self.said = sentence("", "soft")
        body.addWidget(self.said)

    # The book -----------------------------------------------------------------------------------

    def show_network(self, net: PedigreeNetwork | None, *, same: bool = False) -> None:
        """Another book, or the same one after an edit."""
        self._net = net
        if net is None:
            self.model.show_grid(None, {})
            return
        self._fill_plants(net)
        self._show()

    def take_picked(self, codes: tuple[str, ...]) -> None:
        """Plants picked on another page can be scored together."""
        self._picked = codes
        if self._net is not None:
            self._fill_plants(self._net)
            if codes:
                self.which.setCurrentIndex(self.which.findData("picked"))

    def _fill_plants(self, net: PedigreeNetwork) -> None:
        held = self.which.currentData()
        book = net.book
        self.which.blockSignals(True)
        self.which.clear()
        if self._picked:
            self.which.addItem(
                count(len(self._picked), self.tr("picked plant"), self.tr("picked plants")),
                "picked",
            )
        self.which.addItem(self.tr("all that grow or are kept"), "living")
        self.which.addItem(self.tr("all kept"), "kept")
        crosses = [code for code in book.crosses if net.progeny_of_cross(code)]
        for code in reversed(crosses):
            number = len(net.progeny_of_cross(code))
            self.which.addItem(self.tr("from {} ({})").format(code, number), f"cross:{code}")
        at = self.which.findData(held)
        self.which.setCurrentIndex(max(0, at))
        self.which.blockSignals(False)

    def plants(self) -> list[str]:
        """The plants of the rows."""
        net, word = self._net, str(self.which.currentData() or "")
        if net is None:
            return []
        plants = net.book.plants
        if word == "picked":
            return [code for code in self._picked if code in plants]
        if word.startswith("cross:"):
            progeny = net.progeny_of_cross(word.removeprefix("cross:"))
            return in_order(net.book, progeny, "code")
        wanted = ("kept", "finished") if word == "kept" else ("", "growing", "kept", "finished")
        grown = [
            code
            for code, plant in plants.items()
            if plant.status in wanted and (word == "kept" or plant.status or plant.sown)
        ]
        return grown[-_MOST:]

    def _grid(self, book: Book) -> ScoreGrid:
        traits = [name for name in book.traits if name not in self._off]
        return score_grid(book, self.plants(), traits, date=self.date.value, of=self.of.value)

    def _show(self) -> None:
        net = self._net
        if net is None:
            return
        try:
            grid = self._grid(net.book)
        except Fault as fault:
            self._say(fault.sentence(), wrong=True)
            return
        held = self.model.grid
        same = held is not None and (held.plants, held.traits, held.date, held.of) == (
            grid.plants,
            grid.traits,
            grid.date,
            grid.of,
        )
        if same:
            self.model.waiting = {
                cell: entry
                for cell, entry in self.model.waiting.items()
                if entry[1] and grid.values.get(cell, "") != entry[0]
            }
            self.model.renew(grid)
        else:
            self._set_aside()
            self.model.show_grid(grid, net.book.traits)
            self._put_back(grid)
        self._tell(grid)

    def _tell(self, grid: ScoreGrid) -> None:
        if not grid.traits:
            self._say(self.tr("No trait is recorded yet. Begin with a new trait."))
        elif not grid.plants:
            self._say(self.tr("No plant of this choice is recorded."))
        elif not self.model.waiting:
            missing = len(grid.plants) * len(grid.traits) - len(grid.values)
            self._say(
                self.tr(
                    "{} scores of this day, {} cells empty. Enter goes down, Tab across."
                ).format(written(len(grid.values)), written(missing))
            )

    # What was not taken -------------------------------------------------------------------------

    def _set_aside(self) -> None:
        """Another grid comes: what was typed and not taken waits for this one."""
        grid = self.model.grid
        if grid is None:
            return
        for (row, at), entry in self.model.waiting.items():
            if entry[1]:
                self._aside[grid.plants[row], grid.traits[at], grid.date, grid.of] = entry

    def _put_back(self, grid: ScoreGrid) -> None:
        """What waits for a cell of this grid stands in it again."""
        rows = {code: row for row, code in enumerate(grid.plants)}
        across = {name: at for at, name in enumerate(grid.traits)}
        for key in list(self._aside):
            plant, trait, date, of = key
            if plant in rows and trait in across and (date, of) == (grid.date, grid.of):
                self.model.waiting[rows[plant], across[trait]] = self._aside.pop(key)
        if self.model.waiting:
            self.model.renew(grid)
            number = len(self.model.waiting)
            self._say(
                self.tr("{} typed scores were not taken; they are underlined.").format(number)
                if number > 1
                else self.tr("One typed score was not taken; it is underlined."),
                wrong=True,
            )

    def forget(self) -> None:
        """Another book: what was typed is not for its plants."""
        self._aside.clear()
        self.model.show_grid(None, {})

    def unfinished(self) -> list[list[str]]:
        """Plant, trait, day, of what, text and fault of each typed score that was not taken."""
        held = dict(self._aside)
        grid = self.model.grid
        if grid is not None:
            for (row, at), entry in self.model.waiting.items():
                if entry[1]:
                    held[grid.plants[row], grid.traits[at], grid.date, grid.of] = entry
        return [[*key, *entry] for key, entry in held.items()]

    def take_up(self, net: PedigreeNetwork | None, held: object) -> list[str]:
        """Put in again what was typed and not taken when the book was closed.

        Returns
        -------
        the days of these scores; the first is on show
        """
        if net is None or not isinstance(held, list):
            return []
        plants: dict[str, None] = {}
        days: dict[str, str] = {}
        for row in held:
            match row:
                case [str(plant), str(trait), str(date), str(of), str(text), str(why)]:
                    self._aside[plant, trait, date, of] = (text, why)
                    days.setdefault(date, of)
                    plants[plant] = None
        if days:
            first = next(iter(days))
            self.date.set_text(first)
            self.of.set_text(days[first])
            self.show_network(net)
            if not set(plants) <= set(self.plants()):
                self.take_picked(tuple(code for code in plants if code in net.book.plants))
        return list(days)

    def _say(self, text: str, *, wrong: bool = False) -> None:
        say_in(self.said, text, "fault" if wrong else "soft")

    def _fill_menu(self) -> None:
        self._menu.clear()
        if self._net is None:
            return
        for name in self._net.book.traits:
            action = self._menu.addAction(name)
            action.setCheckable(True)
            action.setChecked(name not in self._off)
            action.toggled.connect(lambda on, name=name: self._turn(name, on))

    def _turn(self, name: str, on: bool) -> None:
        (self._off.discard if on else self._off.add)(name)
        self._show()

    # Writing ------------------------------------------------------------------------------------

    def paste(self, text: str) -> None:
        """Type a block of a spreadsheet in from the marked cell on."""
        grid, at = self.model.grid, self.view.currentIndex()
        if grid is None or not at.isValid():
            return
        try:
            cells = pasted(grid, text, at.row(), at.column())
        except Fault as fault:
            self._say(fault.sentence(), wrong=True)
            return
        self.write(cells)

    def _empty(self) -> None:
        held = self.view.selectedIndexes()
        self.write({(one.row(), one.column()): "" for one in held})

    def write(self, cells: Mapping[_Cell, str]) -> None:
        """Take typed cells into the book; those that do not fit stay as typed, and are marked."""
        grid = self.model.grid
        if grid is None or not cells:
            return
        for cell, text in cells.items():
            self.model.waiting[cell] = (text, "")
        by = self.by.value

        def edit(edit: Edit) -> None:
            record_scores(edit, grid, cells, by=by)

        def refused(fault: Fault) -> None:
            bad = fault.faults if isinstance(fault, GridFaults) else dict.fromkeys(cells, fault)
            for cell, one in bad.items():
                self.model.waiting[cell] = (cells[cell], f"{one.what} {one.todo}".strip())
            self.model.renew(grid)
            first = next(iter(bad.values()))
            place = named(self._net.book, first.where.plant) if self._net is not None else ""
            self._say(f"{place}: {first.what} {first.todo}".strip(": "), wrong=True)
            good = {cell: text for cell, text in cells.items() if cell not in bad}
            self.write(good)

        if len(cells) == 1:
            ((row, across),) = cells
            words = self.tr("score of {}: {}").format(grid.plants[row], grid.traits[across])
        else:
            words = self.tr("{} scores").format(len(cells))
        self._desk.record(words, edit, None, refused)
