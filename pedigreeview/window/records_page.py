"""The Records page: every table of the book, to read, search, sort, type into and paste into."""

from __future__ import annotations

from collections.abc import Iterator
from typing import TYPE_CHECKING, Any

from PySide6.QtCore import (
    QItemSelectionModel,
    QModelIndex,
    QPersistentModelIndex,
    QSize,
    Qt,
    Signal,
)
from PySide6.QtGui import QGuiApplication, QKeyEvent, QKeySequence, QResizeEvent
from PySide6.QtWidgets import (
    QAbstractItemView,
    QComboBox,
    QHBoxLayout,
    QListWidget,
    QListWidgetItem,
    QStackedWidget,
    QStyledItemDelegate,
    QStyleOptionViewItem,
    QTableView,
    QVBoxLayout,
    QWidget,
)

from pedigreeview.book.edits import Edit
from pedigreeview.book.faults import Fault
from pedigreeview.book.recording.typed_dates import Order
from pedigreeview.book.records import Record
from pedigreeview.window.bed_plan import BedPlan
from pedigreeview.window.book_page import BookPage, Shown, Waiting
from pedigreeview.window.desk import Desk
from pedigreeview.window.labels import (
    Flow,
    SearchField,
    action_button,
    column,
    heading,
    sentence,
)
from pedigreeview.window.page_side import PageSide, beside
from pedigreeview.window.preferences import Preferences
from pedigreeview.window.record_cells import shown_value
from pedigreeview.window.record_words import about_words, choice_words, table_words
from pedigreeview.window.records_model import RecordsModel
from pedigreeview.window.score_sheet import ScoreSheet
from pedigreeview.window.slices import Slices
from pedigreeview.window.style import step
from pedigreeview.window.words import count, number

if TYPE_CHECKING:
    from pedigreeview.book.edits import Change
    from pedigreeview.window.opening import Opened

__all__ = ["BEDS", "SCORES", "RecordsPage"]

SCORES, BEDS = "view:scores", "view:beds"
"""The two views of the records that are no tables."""

_Index = QModelIndex | QPersistentModelIndex
_FIRST_ROWS = 60
"""Rows that say how wide the columns are."""
_WIDEST = 260


def _parting() -> QListWidgetItem:
    """A gap in the list that cannot be chosen."""
    item = QListWidgetItem("")
    item.setFlags(Qt.ItemFlag.NoItemFlags)
    item.setData(Qt.ItemDataRole.UserRole, "")
    item.setSizeHint(QSize(1, step()))
    return item


class _Cell(QStyledItemDelegate):
    """Offers the words of a column that has some; everything else is typed."""

    def createEditor(self, parent: QWidget, option: QStyleOptionViewItem, index: _Index) -> QWidget:
        model = index.model()
        assert isinstance(model, RecordsModel)
        held = model.columns[index.column()]
        if not held.choices:
            return super().createEditor(parent, option, index)
        box = QComboBox(parent)
        words = choice_words()
        box.addItem("")
        for choice in held.choices:
            box.addItem(words.get(choice, choice))
        return box

    def setEditorData(self, editor: QWidget, index: _Index) -> None:
        if isinstance(editor, QComboBox):
            editor.setCurrentText(str(index.data() or ""))
            return
        super().setEditorData(editor, index)

    def setModelData(self, editor: QWidget, model: object, index: _Index) -> None:
        assert isinstance(model, RecordsModel)
        if isinstance(editor, QComboBox):
            model.setData(index, editor.currentText())
            return
        text = editor.property("text")
        model.setData(index, str(text or ""))


class _Table(QTableView):
    """A table that one can copy from, paste into and empty by keys."""

    pasted = Signal(str)
    emptied = Signal()
    removed = Signal()
    opened = Signal()

    def keyPressEvent(self, event: QKeyEvent) -> None:
        if event.matches(QKeySequence.StandardKey.Copy):
            self.copy()
        elif event.matches(QKeySequence.StandardKey.Paste):
            self.pasted.emit(QGuiApplication.clipboard().text())
        elif event.key() == Qt.Key.Key_Delete:
            whole = bool(event.modifiers() & Qt.KeyboardModifier.ControlModifier)
            (self.removed if whole else self.emptied).emit()
        elif (
            event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter)
            and event.modifiers() & Qt.KeyboardModifier.ControlModifier
        ):
            self.opened.emit()
        else:
            super().keyPressEvent(event)

    def copy(self) -> None:
        """Put the marked cells on the clipboard, as a spreadsheet takes them."""
        places = sorted((one.row(), one.column()) for one in self.selectedIndexes())
        if not places:
            return
        rows = sorted({row for row, _ in places})
        across = sorted({at for _, at in places})
        marked = set(places)
        model = self.model()
        lines = [
            "\t".join(
                str(model.index(row, at).data() or "") if (row, at) in marked else ""
                for at in across
            )
            for row in rows
        ]
        QGuiApplication.clipboard().setText("\n".join(lines))


class RecordsPage(BookPage):
    """The tables at the side, the chosen one beside them."""

    new_wanted = Signal(str)
    """A new record of the table is asked for."""
    remove_wanted = Signal(object)
    """A record is to be deleted that others may hang on."""
    trait_wanted = Signal()
    """A new trait is asked for, to be scored."""

    def __init__(self, desk: Desk, preferences: Preferences) -> None:
        super().__init__()
        self.setObjectName("page")
        self.setAttribute(Qt.WidgetAttribute.WA_StyledBackground)
        self._desk, self._preferences = desk, preferences

        def order() -> Order:
            return "month-day" if preferences.date_order == "month-day" else "day-month"

        self.model = RecordsModel(desk, order, self)
        outer = beside(self, self._side_of())
        outer.addLayout(self._middle(), 1)
        self._fit()

    def _side_of(self) -> QWidget:
        about = self.tr("Everything that is written in the book.")
        self._side = PageSide(self.tr("Records"), about)
        left = self._side.body
        self.tables = QListWidget()
        self.tables.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.tables.setAccessibleName(self.tr("Tables of the book"))
        for table, text in {**self._views(), **table_words()}.items():
            item = QListWidgetItem(text)
            item.setData(Qt.ItemDataRole.UserRole, table)
            self.tables.addItem(item)
        self.tables.currentRowChanged.connect(lambda _: self._turn())
        self.tables.insertItem(2, _parting())
        left.addWidget(self.tables, 1)
        return self._side

    def _views(self) -> dict[str, str]:
        """What else the records are looked at as, beside tables."""
        return {SCORES: self.tr("Score sheet"), BEDS: self.tr("Beds")}

    def _middle(self) -> QVBoxLayout:
        s = step()
        middle = column(s)
        middle.setContentsMargins(2 * s, 3 * s, 2 * s, 2 * s)
        head = QHBoxLayout()
        head.setSpacing(s)
        self.title = heading("", 2)
        head.addWidget(self.title)
        self.shown = sentence("", "soft")
        self.shown.setWordWrap(False)
        head.addWidget(self.shown, 1)
        middle.addLayout(head)
        tools = Flow(s)
        self.search = SearchField(
            self.tr("Show rows that hold …"), self.tr("Show rows that hold a text")
        )
        self.search.textChanged.connect(self._search)
        self.search.left.connect(self._leave_search)
        self.search.setMinimumWidth(32 * s)
        tools.addWidget(self.search)
        self.new_button = action_button(
            self.tr("New …"), lambda: self.new_wanted.emit(self.model.table)
        )
        self.remove_button = action_button(self.tr("Delete …"), self.remove)
        self.remove_button.setToolTip(self.tr("Delete the marked rows (Ctrl+Delete)"))
        self.show_button = action_button(self.tr("Show in the picture"), self.show_plant)
        self.show_button.setToolTip(self.tr("Ctrl+Enter"))
        for button in (self.new_button, self.remove_button, self.show_button):
            tools.addWidget(button)
        middle.addLayout(tools)
        self.stack = QStackedWidget()
        middle.addWidget(self.stack, 1)
        sheet = QWidget()
        held = column(s)
        sheet.setLayout(held)
        self._untold = True
        """No book was shown yet: a list that gets the focus marks its first line by itself."""
        self._scores: ScoreSheet | None = None
        self._filling: Slices | None = None
        """What fills the score sheet, in the turn after the one that made it."""
        self._beds: BedPlan | None = None
        self._picked: tuple[str, ...] = ()
        self._at = ""
        self.stack.addWidget(sheet)
        self.view: _Table = _Table()
        self.view.setModel(self.model)
        self.view.setItemDelegate(_Cell(self.view))
        self.view.setAccessibleName(self.tr("Records of the table"))
        self.view.setSelectionMode(QAbstractItemView.SelectionMode.ExtendedSelection)
        self.view.setEditTriggers(
            QAbstractItemView.EditTrigger.DoubleClicked
            | QAbstractItemView.EditTrigger.EditKeyPressed
            | QAbstractItemView.EditTrigger.AnyKeyPressed
        )
        self.view.setAlternatingRowColors(False)
        self.view.setTabKeyNavigation(True)
        self.view.verticalHeader().hide()
        self.view.verticalHeader().setDefaultSectionSize(self._row_height())
        self.view.horizontalHeader().setHighlightSections(False)
        # Widths go by the rows in sight: to measure all of a large table would take a second.
        self.view.horizontalHeader().setResizeContentsPrecision(0)
        self.view.horizontalHeader().setDefaultAlignment(
            Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter
        )
        self.view.setHorizontalScrollMode(QAbstractItemView.ScrollMode.ScrollPerPixel)
        self.view.setSortingEnabled(True)
        self.view.horizontalHeader().setSortIndicator(-1, Qt.SortOrder.AscendingOrder)
        self.view.pasted.connect(self.paste)
        self.view.emptied.connect(self.empty)
        self.view.removed.connect(self.remove)
        self.view.opened.connect(self.show_plant)
        self.view.selectionModel().selectionChanged.connect(lambda *_: self._tell_rows())
        held.addWidget(self.view, 1)
        self.hint = sentence("", "soft")
        held.addWidget(self.hint)
        return middle

    @property
    def scores(self) -> ScoreSheet:
        """The score sheet, made when it is first wanted, with what it shows."""
        made = self._score_sheet()
        if self._filling is not None:
            self._filling.finish()
        return made

    def _score_sheet(self) -> ScoreSheet:
        """The same, which may still be empty."""
        if self._scores is None:
            made = self._scores = ScoreSheet(self._desk, self._preferences)
            made.trait_wanted.connect(self.trait_wanted)
            made.take_picked(self._picked)
            self.stack.addWidget(made)
            self._filling = Slices(self._fill_scores(made), self)
        return self._scores

    def _fill_scores(self, sheet: ScoreSheet) -> Iterator[None]:
        opened = self._desk.opened
        sheet.show_network(opened.net if opened is not None else None)
        yield

    @property
    def beds(self) -> BedPlan:
        """The plan of the beds, made when it is first wanted."""
        if self._beds is None:
            made = self._beds = BedPlan(self._desk)
            made.plant_wanted.connect(self.plant_wanted)
            made.mark(self._at)
            self.stack.addWidget(made)
        return self._beds

    def _row_height(self) -> int:
        return self.fontMetrics().height() + round(1.6 * step())

    def _fit(self) -> None:
        self._side.setFixedWidth(min(30 * step(), self.width() * 3 // 10))

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self._fit()

    # The book -----------------------------------------------------------------------------------

    def show_opened(self, opened: Opened | None) -> None:
        """Another book, or none."""
        self.search.clear()
        if self._scores is not None:
            self._scores.forget()
        if self._untold:
            self._untold = False
            self.tables.setCurrentRow(-1)
            self.go_to("plants")  # shows it
            return
        self._show()
        self._widths()

    def book_changed(self, opened: Opened, change: Change) -> None:
        """The book after an edit: cursor, search and order stay."""
        at = self.view.currentIndex()
        row, place = at.row(), at.column()
        bar = self.view.verticalScrollBar().value()
        self._show()
        if row >= 0:
            self._put(min(row, self.model.rowCount() - 1), place)
        self.view.verticalScrollBar().setValue(bar)

    def redraw(self) -> None:
        """The theme or the size of the text has changed."""
        self.view.verticalHeader().setDefaultSectionSize(self._row_height())
        self._fit()
        self._widths()

    def go_to(self, part: str) -> None:
        """Turn to 'table' or 'table:key'."""
        table, _, key = (part, "", "") if part in (SCORES, BEDS) else part.partition(":")
        places = [
            str(self.tables.item(row).data(Qt.ItemDataRole.UserRole))
            for row in range(self.tables.count())
        ]
        if not table or table not in places:
            return
        self.tables.setCurrentRow(places.index(table))
        if table == SCORES:
            self.scores.view.setFocus()
        elif table == BEDS:
            self.beds.ground.setFocus()
        else:
            if key:
                self._put(self.model.row_of(key), 0)
            self.view.setFocus()

    def _put(self, row: int, place: int) -> None:
        if row < 0:
            return
        index = self.model.index(row, max(0, place))
        self.view.selectionModel().setCurrentIndex(
            index, QItemSelectionModel.SelectionFlag.ClearAndSelect
        )
        self.view.scrollTo(index)

    def table(self) -> str:
        """The table on show."""
        item = self.tables.currentItem()
        return str(item.data(Qt.ItemDataRole.UserRole)) if item is not None else "plants"

    def table_shown(self) -> Shown | None:
        """The rows that are shown, in their order; None for the score sheet and the beds."""
        table = self.table()
        if table not in table_words() or self._desk.book is None:
            return None
        model = self.model
        headings = [
            str(model.headerData(at, Qt.Orientation.Horizontal)) for at in range(len(model.columns))
        ]
        rows = [
            [shown_value(held, getattr(model.record(row), held.name)) for held in model.columns]
            for row in range(model.rowCount())
        ]
        return table_words()[table], headings, rows

    def unfinished(self) -> dict[str, Any]:
        """Scores that were typed and not taken."""
        held = self._scores.unfinished() if self._scores is not None else {}
        return {"scores": held} if held else {}

    def take_up(self, held: dict[str, Any]) -> list[Waiting]:
        """Put in again what was typed on the score sheet."""
        if not held.get("scores"):
            return []
        net = self._desk.opened.net if self._desk.opened is not None else None
        days = self.scores.take_up(net, held.get("scores"))
        return [(self.tr("the score sheet of {}").format(day), SCORES) for day in days]

    def take_picked(self, codes: tuple[str, ...]) -> None:
        """Plants picked on another page can be scored together."""
        self._picked = codes
        if self._scores is not None:
            self._scores.take_picked(codes)

    def mark(self, code: str) -> None:
        """The plant that the window is at."""
        self._at = code
        if self._beds is not None:
            self._beds.mark(code)

    def _turn(self) -> None:
        if self._untold:
            return
        self.search.blockSignals(True)
        self.search.clear()
        self.search.blockSignals(False)
        self.view.horizontalHeader().setSortIndicator(-1, Qt.SortOrder.AscendingOrder)
        self._show()
        if self.table() in table_words():
            self._widths()

    def _show(self) -> None:
        book, table, words = self._desk.book, self.table(), table_words()
        is_table = table in words
        for widget in (
            self.search,
            self.shown,
            self.new_button,
            self.remove_button,
            self.show_button,
        ):
            widget.setVisible(is_table)
        self.title.setText({**words, **self._views()}.get(table, ""))
        net = self._desk.opened.net if self._desk.opened is not None else None
        if is_table:
            self.stack.setCurrentIndex(0)
            self.model.show_table(book, table)
            self._tell_rows()
        elif table == SCORES:
            new = self._scores is None
            self.stack.setCurrentWidget(self._score_sheet())
            if not new:
                self.scores.show_network(net)
        else:
            self.stack.setCurrentWidget(self.beds)
            self.beds.show_network(net)
        if book is None:
            return
        for row in range(self.tables.count()):
            item = self.tables.item(row)
            name = str(item.data(Qt.ItemDataRole.UserRole))
            if name in words:
                held = len(getattr(book, name))
                item.setText(f"{words[name]}  {held:,}" if held else words[name])

    def _search(self, typed: str) -> None:
        self.model.search(typed)
        self._tell_rows()

    def _leave_search(self) -> None:
        self.view.setFocus()

    def _tell_rows(self) -> None:
        rows, held = self.model.rowCount(), self.model.held
        if rows == held:
            text = count(held, self.tr("row"), self.tr("rows"))
        else:
            text = self.tr("{} of {} rows").format(number(rows), number(held))
        self.shown.setText(text)
        self.hint.setText(self._hint(rows, held))
        self.remove_button.setEnabled(bool(self.marked()))
        self.show_button.setEnabled(bool(self._plant()))

    def _hint(self, rows: int, held: int) -> str:
        if rows:
            return self.tr(
                "Type into a cell to change it; Tab goes on. Rows from a spreadsheet can be pasted "
                "over the cells from the marked one on."
            )
        if held:
            return self.tr("No row holds this text. Escape shows all rows again.")
        return self.tr("Nothing is written in this table yet. New … writes down the first row.")

    def _widths(self) -> None:
        """Columns as wide as what the first rows hold, the long ones cut."""
        # The default of 1,000 rows stops the window for seconds.
        self.view.horizontalHeader().setResizeContentsPrecision(_FIRST_ROWS)
        self.view.resizeColumnsToContents()
        for place in range(self.model.columnCount()):
            wide = min(self.view.columnWidth(place) + step(), _WIDEST)
            self.view.setColumnWidth(place, wide)

    # What is done with rows ---------------------------------------------------------------------

    def marked(self) -> list[Record]:
        """The records of which a cell is marked."""
        rows = sorted({index.row() for index in self.view.selectedIndexes()})
        return [self.model.record(row) for row in rows]

    def _plant(self) -> str:
        """The plant that the row of the cursor is about, or that its cell names."""
        book, index = self._desk.book, self.view.currentIndex()
        if book is None or not index.isValid():
            return ""
        record = self.model.record(index.row())
        held = self.model.columns[index.column()]
        value = str(getattr(record, held.name))
        if held.names == "plants" and value in book.plants:
            return value
        for name in ("plant", "seed_parent", "borne_on", "focus"):
            code = str(getattr(record, name, ""))
            if code in book.plants:
                return code
        cross = str(getattr(record, "cross", ""))
        return book.crosses[cross].seed_parent if cross in book.crosses else ""

    def show_plant(self) -> None:
        """Turn to the picture with the plant that the row is about."""
        code = self._plant()
        if code:
            self.plant_wanted.emit(code)

    def paste(self, text: str) -> None:
        """Type the cells of the clipboard in from the cursor on, as one edit."""
        at = self.view.currentIndex()
        if not at.isValid() or not text:
            return
        lines = text.replace("\r\n", "\n").rstrip("\n").split("\n")
        grid = [line.split("\t") for line in lines]
        down, across = len(grid), max(len(line) for line in grid)
        room_down = self.model.rowCount() - at.row()
        room_across = self.model.columnCount() - at.column()
        if down > room_down or across > room_across:
            # Half of it would be worse than nothing: nobody would see what is missing.
            what = self.tr(
                "Nothing was pasted: {} by {} cells lie ready, and {} by {} fit from the marked "
                "cell on."
            ).format(down, across, room_down, room_across)
            todo = self.tr(
                "Mark a cell further up or left. A table of new plants or crosses comes in through "
                "File, Bring in a table …"
            )
            self._desk.refused.emit(Fault(what, todo=todo))
            return
        self.model.write(
            [
                (at.row() + row, at.column() + place, cell)
                for row, line in enumerate(grid)
                for place, cell in enumerate(line)
            ]
        )

    def empty(self) -> None:
        """Empty the marked cells, as one edit."""
        self.model.write([(one.row(), one.column(), "") for one in self.view.selectedIndexes()])

    def remove(self) -> None:
        """Delete the marked rows; one that others hang on is asked about first."""
        records = self.marked()
        if not records:
            return
        if len(records) == 1 and records[0].TABLE in ("plants", "crosses"):
            self.remove_wanted.emit(records[0])
            return

        def work(edit: Edit) -> None:
            for record in records:
                edit.remove(record)

        one = len(records) == 1
        said = about_words(records[0]) if one else self.tr("{} rows").format(len(records))
        self._desk.record(self.tr("deleting {}").format(said), work)
