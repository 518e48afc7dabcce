"""The Season page: what is due, the crosses on their way, how they take, and the garden sheets."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from typing import TYPE_CHECKING, Any

from PySide6.QtCore import Qt, QTimer
from PySide6.QtGui import QKeySequence, QResizeEvent, QShortcut, QShowEvent
from PySide6.QtWidgets import (
    QListWidget,
    QListWidgetItem,
    QStackedWidget,
    QWidget,
)

from pedigreeview.reports.paper_choices import Chosen
from pedigreeview.window.book_page import BookPage, Shown, Waiting
from pedigreeview.window.desk import Desk
from pedigreeview.window.errands import Errands
from pedigreeview.window.labels import action_button, column, heading, scrolled, sentence
from pedigreeview.window.page_side import PageSide, beside
from pedigreeview.window.preferences import Preferences
from pedigreeview.window.saying import say
from pedigreeview.window.season_board import CrossBoard
from pedigreeview.window.season_due import DueList
from pedigreeview.window.season_takes import Takes
from pedigreeview.window.strips import cautions_of
from pedigreeview.window.style import step
from pedigreeview.window.typing_in import TypingIn

if TYPE_CHECKING:
    from pedigreeview.book.edits import Change
    from pedigreeview.window.opening import Opened

__all__ = ["BOARD", "DUE", "SHEETS", "TAKES", "SeasonPage"]

DUE, BOARD, TAKES, SHEETS = "due", "board", "takes", "sheets"
"""The parts of the page, as `go_to` takes them; 'board:24-03' puts the keys on a cross."""


_Part = DueList | CrossBoard | Takes | TypingIn

_BETWEEN = 1
"""Milliseconds between two slices of what is made beforehand."""
_DRESSED = 12
"""Widgets that are dressed in a slice."""


def _wardrobe_of(part: _Part) -> list[QWidget]:
    return part.wardrobe() if isinstance(part, DueList | CrossBoard) else [part]


class SeasonPage(BookPage):
    """Parts at the side, the chosen one beside them.

    Parameters
    ----------
    write : opens a form by its name, such as write("pollination", cross="24-03")
    papers : opens the printing dialog: a paper, and what was chosen by its words
    turn : turns to another page and a part of it, as turn("records", "crosses:24-03")
    """

    def __init__(
        self,
        desk: Desk,
        errands: Errands,
        preferences: Preferences,
        write: Callable[..., None],
        papers: Callable[[str, dict[str, Chosen]], object],
        turn: Callable[[str, str], object],
    ) -> None:
        super().__init__()
        self.setObjectName("page")
        self.setAttribute(Qt.WidgetAttribute.WA_StyledBackground)
        self._desk, self._papers, self._turn_to = desk, papers, turn
        self._picked: tuple[str, ...] = ()
        self._number = 0
        self._errands, self._preferences, self._write = errands, preferences, write
        self._makers: dict[str, Callable[[], _Part]] = {
            DUE: self._make_due,
            BOARD: self._make_board,
            TAKES: self._make_takes,
            SHEETS: self._make_sheets,
        }
        self._made: dict[str, _Part] = {}
        """The parts made so far; making all four at once would take too long."""
        self._stale: dict[str, bool] = {}
        """Made parts that were not told of the book yet; whether it is the same after an edit."""
        self._slices = self._beforehand()
        self._idle = QTimer(self, singleShot=True, interval=_BETWEEN)
        self._idle.timeout.connect(self._go_on)
        outer = beside(self, self._side_of())
        self._area = scrolled(self._middle())
        outer.addWidget(self._area, 1)
        self._fit()

    def rest(self) -> Iterator[None]:
        """What is due: the part that the page begins with."""
        self._make(DUE)
        yield

    def _side_of(self) -> QWidget:
        s = step()
        about = self.tr("What is to be done, and what has become of it.")
        self._side = PageSide(self.tr("Season"), about)
        left = self._side.body
        self.parts = QListWidget()
        self.parts.setAccessibleName(self.tr("Parts of the season"))
        self.parts.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        for word, text in self._titles().items():
            item = QListWidgetItem(text)
            item.setData(Qt.ItemDataRole.UserRole, word)
            item.setToolTip(text)
            self.parts.addItem(item)
        self.parts.currentRowChanged.connect(lambda _: self._turn())
        left.addWidget(self.parts)
        self.print_button = action_button(self.tr("Print …"), lambda: self.print_papers(""))
        self.print_button.setToolTip(self.tr("Print tags and lists (Ctrl+Shift+P)"))
        self.print_button.setAccessibleName(self.tr("Print tags and lists"))
        left.addWidget(self.print_button)
        left.addStretch(1)
        cautions = QWidget()
        held = column(s // 2)
        cautions.setLayout(held)
        self.caution_title = heading("", 3)
        held.addWidget(self.caution_title)
        self.cautions = sentence("")
        held.addWidget(self.cautions)
        held.addWidget(
            sentence(self.tr("The rules of your place come first, then licensed advice."), "soft")
        )
        held.addStretch(1)
        self.caution_area = scrolled(cautions)
        left.addWidget(self.caution_area, 2)
        return self._side

    def _titles(self) -> dict[str, str]:
        return {
            DUE: self.tr("Due"),
            BOARD: self.tr("Crosses on their way"),
            TAKES: self.tr("Takes"),
            SHEETS: self.tr("Garden sheets"),
        }

    def _hints(self) -> dict[str, str]:
        return {
            DUE: self.tr(
                "From the records and from how long the crop takes. Your own records count first, "
                "where there are enough."
            ),
            BOARD: self.tr(
                "Arrow keys go from tag to tag. A planned cross is dragged to Pollinated once it "
                "is made (Ctrl+Right), or to the end to skip it (Delete)."
            ),
            TAKES: self.tr("How many of the flowers worked set fruit."),
            SHEETS: self.tr("What was written down on paper, typed in by the number of its sheet."),
        }

    def _middle(self) -> QWidget:
        s = step()
        middle = QWidget()
        held = column(s)
        held.setContentsMargins(2 * s, 3 * s, 2 * s, 2 * s)
        middle.setLayout(held)
        self.title = heading("", 2)
        held.addWidget(self.title)
        self.hint = sentence("", "soft")
        held.addWidget(self.hint)
        self.stack = QStackedWidget()
        held.addWidget(self.stack, 1)
        return middle

    # The parts, each made when it is first looked at, or before when nothing else is to do ------

    def _part(self, word: str) -> _Part:
        """A part, made if need be, and told of the book."""
        part = self._make(word)
        if word in self._stale:
            part.show_book(same=self._stale.pop(word))
        return part

    def _make(self, word: str) -> _Part:
        part = self._made.get(word)
        if part is None:
            part = self._made[word] = self._makers[word]()
            if isinstance(part, DueList):
                part.hear_sheet(self.sheet)
            if self.sheet:
                for one in _wardrobe_of(part):
                    one.setStyleSheet(self.sheet)
            self.stack.addWidget(part)
            self._stale[word] = False
        return part

    def _beforehand(self) -> Iterator[None]:
        """Make the parts that are not on show, a slice at each step."""
        for word in self._makers:
            if word in self._made:
                continue
            part = self._make(word)
            yield
            while isinstance(part, CrossBoard) and part.add_column():
                yield
            # The look is put on here too, else the first sight of the part would wait for it.
            at = 0
            # Asked for again in each slice: Qt may end some of them between two.
            while inner := list(reversed(part.findChildren(QWidget)))[at : at + _DRESSED]:
                for piece in inner:
                    piece.ensurePolished()
                at += _DRESSED
                del inner, piece
                yield
            part.ensurePolished()
            yield

    def _go_on(self) -> None:
        for _ in self._slices:
            self._idle.start()
            return

    def showEvent(self, event: QShowEvent) -> None:
        super().showEvent(event)
        self._idle.start()

    def hear_sheet(self, sheet: str) -> None:
        """The sheet that parts made from now on wear."""
        super().hear_sheet(sheet)
        due = self._made.get(DUE)
        if isinstance(due, DueList):
            due.hear_sheet(sheet)

    def wardrobe(self) -> list[QWidget]:
        """The side, the bar, the heads, and each part; the lines of what is due by themselves."""
        found = [self._side, self._area.verticalScrollBar(), self.title, self.hint]
        return [*found, *(one for part in self._made.values() for one in _wardrobe_of(part))]

    def _make_due(self) -> DueList:
        due = DueList(self._desk, self._errands, self._preferences, self._write)
        due.plant_wanted.connect(self.plant_wanted)
        due.papers_wanted.connect(self._print_due)
        due.score_wanted.connect(self._score)
        due.counted.connect(self._count)
        return due

    def _make_board(self) -> CrossBoard:
        board = CrossBoard(self._desk, self._errands, self._write)
        board.plant_wanted.connect(self.plant_wanted)
        board.papers_wanted.connect(self._print_cross)
        board.cross_wanted.connect(lambda code: self._turn_to("records", f"crosses:{code}"))
        return board

    def _make_takes(self) -> Takes:
        takes = Takes(self._desk, self._errands)
        takes.cross_wanted.connect(lambda code: self.go_to(f"{BOARD}:{code}"))
        return takes

    def _make_sheets(self) -> TypingIn:
        sheets = TypingIn(self._desk, self._preferences)
        sheets.papers_wanted.connect(self.print_papers)
        for key in ("Ctrl+Return", "Ctrl+Enter"):
            shortcut = QShortcut(QKeySequence(key), sheets)
            shortcut.setContext(Qt.ShortcutContext.WidgetWithChildrenShortcut)
            shortcut.activated.connect(sheets.record)
        return sheets

    @property
    def due(self) -> DueList:
        """What is due."""
        part = self._part(DUE)
        assert isinstance(part, DueList)
        return part

    @property
    def board(self) -> CrossBoard:
        """The crosses on their way."""
        part = self._part(BOARD)
        assert isinstance(part, CrossBoard)
        return part

    @property
    def takes(self) -> Takes:
        """How the crosses take."""
        part = self._part(TAKES)
        assert isinstance(part, Takes)
        return part

    @property
    def sheets(self) -> TypingIn:
        """The garden sheets."""
        part = self._part(SHEETS)
        assert isinstance(part, TypingIn)
        return part

    # The book -----------------------------------------------------------------------------------

    def show_opened(self, opened: Opened | None) -> None:
        """Another book, or none."""
        self._picked = ()
        if not self.parts.selectedItems():
            # A list that gets the focus before has its first line, but not chosen.
            self.parts.setCurrentRow(max(0, self.parts.currentRow()))
        self._show(same=False)

    def book_changed(self, opened: Opened, change: Change) -> None:
        """The book after an edit: filters and places stay."""
        self._show(same=True)

    def _show(self, *, same: bool) -> None:
        shown = self.part()
        for word, part in self._made.items():
            # What is due is counted at the side, whatever part is on show.
            if word in (shown, DUE):
                self._stale.pop(word, None)
                part.show_book(same=same)
            else:
                self._stale[word] = same and self._stale.get(word, True)
        book = self._desk.book
        crop, texts = cautions_of(book) if book is not None else ("", [])
        self.caution_area.setVisible(bool(texts))
        self.caution_title.setText(self.tr("Mind, with {}").format(crop))
        self.cautions.setText("\n".join(texts))
        self.print_button.setEnabled(book is not None)

    def _count(self, number: int) -> None:
        self._number = number
        item = self.parts.item(0)
        title = self._titles()[DUE]
        item.setText(f"{title}  {number:,}" if number else title)

    def redraw(self) -> None:
        """The theme or the size of the text has changed."""
        for part in self._made.values():
            if not isinstance(part, DueList):
                part.redraw()
        self._fit()

    def take_picked(self, codes: tuple[str, ...]) -> None:
        """Plants picked on another page can be printed for."""
        self._picked = codes

    def table_shown(self) -> Shown | None:
        """What is due, as rows; on the other parts the table that lies open."""
        if self.part() != DUE:
            return super().table_shown()
        headings = [
            self.tr("What is to be done"),
            self.tr("from"),
            self.tr("to"),
            self.tr("Plants"),
            self.tr("Why then"),
        ]
        rows = [
            [
                say(one.words),
                one.first.isoformat() if one.first is not None else "",
                one.last.isoformat() if one.last is not None else "",
                "; ".join(one.plants),
                say(one.basis.words) if one.basis is not None else "",
            ]
            for one in self.due.wanted()
        ]
        return self._titles()[DUE], headings, rows

    def unfinished(self) -> dict[str, Any]:
        """Garden sheets that are half typed in."""
        sheets = self._made.get(SHEETS)
        held = sheets.unfinished() if isinstance(sheets, TypingIn) else {}
        return {"sheets": held} if held else {}

    def take_up(self, held: dict[str, Any]) -> list[Waiting]:
        """Put in again what was typed of garden sheets."""
        numbers = self.sheets.take_up(held.get("sheets"))
        return [(self.tr("garden sheet {}").format(number), SHEETS) for number in numbers]

    def part(self) -> str:
        """The part on show."""
        item = self.parts.currentItem()
        return str(item.data(Qt.ItemDataRole.UserRole)) if item is not None else DUE

    def go_to(self, part: str) -> None:
        """Turn to a part, such as 'takes', or to a cross on the board, 'board:24-03'."""
        word, _, key = part.partition(":")
        if word not in self._makers:
            return
        self.parts.setCurrentRow(list(self._makers).index(word))
        if word == BOARD and key:
            self.board.go_to(key)
        elif word == BOARD:
            self.board.focus_first()
        elif word == DUE:
            self.due.focus_first()
        elif word == SHEETS:
            self.sheets.focus_first()
        else:
            self.takes.table.setFocus()

    def _turn(self) -> None:
        word = self.part()
        self.title.setText(self._titles()[word])
        self.hint.setText(self._hints()[word])
        self.stack.setCurrentWidget(self._part(word))

    def _fit(self) -> None:
        self._side.setFixedWidth(max(17 * step(), min(30 * step(), self.width() * 3 // 10)))
        self._area.setMinimumWidth(28 * step())
        line = self.fontMetrics().height() + step()
        self.parts.setFixedHeight(len(self._makers) * line + 2 * step())

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self._fit()

    # Other pages and papers ---------------------------------------------------------------------

    def _score(self, plants: tuple[str, ...]) -> None:
        """The plants that lack a score, in the score sheet."""
        self.picked.emit(plants)
        self._turn_to("records", "view:scores")

    def _print_due(self, paper: str, chosen: Chosen) -> None:
        self._papers(paper, {self.tr("what is due here"): chosen})

    def _print_cross(self, paper: str, chosen: Chosen) -> None:
        self._papers(paper, {self.tr("the cross {}").format(chosen.crosses[0]): chosen})

    def print_papers(self, paper: str) -> None:
        """Open the printing dialog with what is shown on this page."""
        offers: dict[str, Chosen] = {}
        if self._picked:
            offers[self.tr("the picked plants")] = Chosen(plants=self._picked)
        if self.part() == DUE and self._desk.book is not None:
            offers[self.tr("what is due here")] = self.due.chosen()
        self._papers(paper, offers)
