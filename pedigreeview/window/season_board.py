"""The crosses on their way: a board from planned to raised, moved by keys, by drag, by buttons.

What a cross has come to follows from its records; only what the person decides is moved here: a
planned cross is made or skipped, a made one without any work is planned again.
"""

from __future__ import annotations

import datetime
from collections.abc import Callable
from html import escape
from typing import TYPE_CHECKING

from PySide6.QtCore import QPoint, Qt, Signal
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import (
    QComboBox,
    QFrame,
    QHBoxLayout,
    QMenu,
    QScrollArea,
    QWidget,
)

from pedigreeview.book.board import STAGES, Board, BoardCard, board, seasons_of_crosses
from pedigreeview.book.edits import Edit
from pedigreeview.book.recording.crosses import set_cross_state
from pedigreeview.reports.paper_choices import Chosen
from pedigreeview.window.desk import Desk
from pedigreeview.window.errands import Errands
from pedigreeview.window.labels import Flow, LinkLabel, action_button, clear, column, sentence
from pedigreeview.window.season_columns import BoardColumn, card_counts, card_pair
from pedigreeview.window.season_undo import UndoLine
from pedigreeview.window.season_words import stage_words
from pedigreeview.window.style import step
from pedigreeview.window.words import count, links

if TYPE_CHECKING:
    from pedigreeview.book.book import Book

__all__ = ["CrossBoard"]

_BOARD = "season:board"
_Way = tuple[str, Callable[[], None]]


class CrossBoard(QWidget):
    """The board with its year, and what can be done with the cross under the keys."""

    plant_wanted = Signal(str)
    papers_wanted = Signal(str, object)
    cross_wanted = Signal(str)
    """A cross is asked for among the records."""

    def __init__(self, desk: Desk, errands: Errands, write: Callable[..., None]) -> None:
        super().__init__()
        self._desk, self._errands, self._write = desk, errands, write
        self._at = ""
        """The cross under the keys."""
        self._eager = False
        """The keys are to go to the board, once it has come."""
        s = step()
        body = column(s)
        self.setLayout(body)
        head = QHBoxLayout()
        head.setSpacing(s)
        self.year = QComboBox()
        self.year.setAccessibleName(self.tr("Year of the crosses shown"))
        self.year.setSizeAdjustPolicy(QComboBox.SizeAdjustPolicy.AdjustToContents)
        self.year.currentIndexChanged.connect(self._ask)
        head.addWidget(self.year)
        self.shown = sentence("", "soft")
        head.addWidget(self.shown, 1)
        self.plan = action_button(self.tr("Plan a cross …"), lambda: self._write("cross"))
        head.addWidget(self.plan)
        body.addLayout(head)
        self.undo = UndoLine(desk)
        body.addWidget(self.undo)
        body.addWidget(self._ground(), 1)
        self._foot = self._foot_of()
        body.addWidget(self._foot)

    def _ground(self) -> QScrollArea:
        s = step()
        inner = QWidget()
        row = QHBoxLayout(inner)
        row.setSpacing(s)
        row.setContentsMargins(0, 0, 0, 0)
        self._columns: dict[str, BoardColumn] = {}
        self._row, self._stages = row, iter(stage_words().items())
        self._area = QScrollArea()
        self._area.setWidgetResizable(True)
        self._area.setFrameShape(QFrame.Shape.NoFrame)
        self._area.setVerticalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self._area.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        self._area.setWidget(inner)
        self._area.setMinimumHeight(34 * s)
        return self._area

    @property
    def columns(self) -> dict[str, BoardColumn]:
        """The stages, each with its tags, from planned to ended."""
        while self.add_column():
            pass
        return self._columns

    def add_column(self) -> bool:
        """Make the next stage of the board; False where all are there.

        All are made when one is asked for.  Who has time before makes them one by one.
        """
        for stage, title in self._stages:
            made = self._columns[stage] = BoardColumn(stage, title)
            if self.undo.styleSheet():
                made.setStyleSheet(self.undo.styleSheet())
            made.list.sideways.connect(lambda by, stage=stage: self._sideways(stage, by))
            made.list.moved.connect(lambda by, stage=stage: self._moved(stage, by))
            made.list.dropped.connect(lambda codes, stage=stage: self._dropped(stage, codes))
            made.list.asked.connect(self._menu)
            made.list.came_in.connect(lambda made=made: self._came_in(made))
            made.list.activated.connect(lambda _: self._activate())
            made.list.doubleClicked.connect(lambda _: self._activate())
            made.list.selectionModel().currentChanged.connect(
                lambda *_, made=made: self._came_in(made)
            )
            self._row.addWidget(made)
            return True
        return False

    def _foot_of(self) -> QFrame:
        s = step()
        foot = QFrame()
        foot.setProperty("role", "sheet")
        held = column(s // 2, s)
        foot.setLayout(held)
        self.facts = LinkLabel("")
        self.facts.setAccessibleName(self.tr("The cross that is marked"))
        self.facts.followed.connect(self.plant_wanted)
        held.addWidget(self.facts)
        self._buttons = Flow(s)
        held.addLayout(self._buttons)
        return foot

    def wardrobe(self) -> list[QWidget]:
        """What takes the style sheet of another look, one at a time."""
        head: list[QWidget] = [self.year, self.shown, self.plan, self.undo, self._foot]
        return [*head, self._area.horizontalScrollBar(), *self._columns.values()]

    # The book -----------------------------------------------------------------------------------

    def show_book(self, *, same: bool = False) -> None:
        """Another book, or the same one after an edit."""
        book = self._desk.book
        years = seasons_of_crosses(book) if book is not None else ()
        held = self.year.currentData() if same else (years[0] if len(years) > 1 else "")
        self.year.blockSignals(True)
        self.year.clear()
        self.year.addItem(self.tr("crosses of all years"), "")
        for year in years:
            self.year.addItem(self.tr("planned, and of {}").format(year), year)
        self.year.setCurrentIndex(max(0, self.year.findData(held)))
        self.year.blockSignals(False)
        if not same:
            self._at = ""
            self.undo.hide()
        self._ask()

    def redraw(self) -> None:
        """The theme or the size of the text has changed."""
        self._fit()
        for made in self.columns.values():
            made.list.doItemsLayout()

    def _ask(self) -> None:
        book = self._desk.book
        if book is None:
            self._errands.drop(_BOARD)
            return
        year = str(self.year.currentData() or "")
        self._errands.ask(_BOARD, lambda: board(book, year=year), self._came)

    def _came(self, found: Board) -> None:
        at, focused = self._at, self._focused() or self._eager
        self._eager = False
        for stage, cards in found.stages:
            self.columns[stage].show_cards(cards)
        self.columns["ended"].show_cards(found.ended)
        self._fit()
        total = sum(found.count(stage) for stage in STAGES) + len(found.ended)
        self.shown.setText(count(total, self.tr("cross"), self.tr("crosses")))
        for made in self.columns.values():
            if at and made.put(at):
                if focused:
                    made.list.setFocus()
                self._tell(made.card())
                return
        self._at = ""
        self._tell(None)
        if focused:
            self.focus_first()

    def _fit(self) -> None:
        """Columns share the width; those without a cross are narrow."""
        s = step()
        narrow = 10 * s
        full = [made for made in self.columns.values() if made.model.cards]
        spare = self._area.viewport().width() - narrow * (len(self.columns) - len(full))
        spare -= s * len(self.columns)
        spare += s
        wide = min(34 * s, max(17 * s, spare // max(1, len(full))))
        # What is left over goes to all columns alike, so that the last ends at the edge.
        rest = max(0, spare - wide * len(full))
        for at, made in enumerate(self.columns.values()):
            more = rest * (at + 1) // len(self.columns) - rest * at // len(self.columns)
            made.fit((wide if made.model.cards else narrow) + more)

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self._fit()

    # The cross under the keys -------------------------------------------------------------------

    def _focused(self) -> bool:
        return any(made.list.hasFocus() for made in self.columns.values())

    def focus_first(self) -> None:
        """Put the keys on the board."""
        for made in self.columns.values():
            if self._at and made.put(self._at):
                made.list.setFocus()
                return
        for made in self.columns.values():
            if made.model.cards:
                made.list.setFocus()
                return
        self._eager = self._errands.awaits(_BOARD)
        self.plan.setFocus()

    def go_to(self, cross: str) -> None:
        """Put the keys on a cross, of whatever year."""
        self._at = cross
        if not any(made.put(cross) for made in self.columns.values()):
            self.year.setCurrentIndex(0)
            self._ask()
        self.focus_first()

    def _came_in(self, made: BoardColumn) -> None:
        card = made.card()
        if card is not None and (made.list.hasFocus() or not self._focused()):
            self._at = card.cross
            self._tell(card)
            self._area.ensureWidgetVisible(made, 0, 0)

    def _sideways(self, stage: str, by: int) -> None:
        stages = list(self.columns)
        at = stages.index(stage) + by
        while 0 <= at < len(stages):
            made = self.columns[stages[at]]
            if made.model.cards:
                made.list.setFocus()
                return
            at += by

    def _card(self) -> BoardCard | None:
        for made in self.columns.values():
            for card in made.model.cards:
                if card.cross == self._at:
                    return card
        return None

    def _tell(self, card: BoardCard | None) -> None:
        clear(self._buttons)
        book = self._desk.book
        if card is None or book is None:
            self.facts.setText(
                self.tr(
                    "Each tag is a cross, in the furthest stage that the records show. Choose one "
                    "by mouse or arrow keys to see what can be done with it."
                )
                if book is not None and book.crosses
                else self.tr("No cross is recorded yet. Begin by planning one.")
            )
            return
        parents = [code for code in (card.seed_parent, card.pollen_parent) if code]
        parts = [card.cross] if card_pair(card) == card.cross else [card.cross, card_pair(card)]
        text = ", ".join([*parts, *card_counts(self, card)])
        self.facts.setText(
            self.tr("{}. Plants: {}").format(escape(text), links(dict.fromkeys(parents)))
            if parents
            else escape(text)
        )
        for words, act in self.ways(card):
            self._buttons.addWidget(action_button(words, act))

    def ways(self, card: BoardCard) -> list[_Way]:
        """What can be done with a cross in its stage."""
        book = self._desk.book
        assert book is not None
        code, write = card.cross, self._write
        found: list[_Way] = []
        if card.stage == "planned" and not card.ended:
            found += [
                (self.tr("Pollination …"), lambda: write("pollination", cross=code)),
                (self.tr("Made"), lambda: self.set_state(code, "made")),
                (self.tr("Skip"), lambda: self.set_state(code, "skipped")),
            ]
        if card.ended == "skipped":
            found.append((self.tr("Plan again"), lambda: self.set_state(code, "planned")))
        if card.stage in ("pollinated", "set") and card.ended != "skipped":
            found.append((self.tr("Pollination …"), lambda: write("pollination", cross=code)))
            worked = self._to_count(book, code)
            if worked:
                found.append((self.tr("Fruits …"), lambda: write("fruits", pollination=worked)))
            found.append((self.tr("Harvest …"), lambda: write("harvest", cross=code)))
            if not card.flowers and card.fruits_set is None and card.stage == "pollinated":
                found.append((self.tr("Plan again"), lambda: self.set_state(code, "planned")))
        if card.stage in ("harvested", "packed", "sown"):
            packet = self._packet(book, code)
            if packet:
                found.append((self.tr("Sow …"), lambda: write("sowing", packet=packet)))
        if card.stage in ("harvested", "packed", "sown", "raised"):
            found.append((self.tr("Raise plants …"), lambda: write("raise", cross=code)))
        paper = {"planned": "flowers", "pollinated": "flowers", "set": "fruits"}.get(
            card.stage, "packets" if card.left else "pots"
        )
        chosen = Chosen(crosses=(code,))
        found += [
            (self.tr("Print …"), lambda: self.papers_wanted.emit(paper, chosen)),
            (self.tr("Show the record"), lambda: self.cross_wanted.emit(code)),
        ]
        return found

    def _to_count(self, book: Book, code: str) -> str:
        """The pollination of a cross whose fruits are to be counted; the last one if all are."""
        rows = [row for row in book.pollinations.values() if row.cross == code]
        open_rows = [row for row in rows if row.set is None]
        held = (open_rows or rows)[-1:]
        return held[0].pollination if held else ""

    def _packet(self, book: Book, code: str) -> str:
        harvests = {row.harvest for row in book.harvests.values() if row.cross == code}
        held = [p for p in book.packets.values() if p.harvest in harvests and p.left != 0]
        return held[0].packet if held else ""

    def _activate(self) -> None:
        """Enter: the seed parent in the picture, where it was crossed from."""
        card = self._card()
        if card is not None and (card.seed_parent or card.pollen_parent):
            self.plant_wanted.emit(card.seed_parent or card.pollen_parent)

    def _menu(self, place: QPoint) -> None:
        card = self._card()
        if card is None:
            return
        # Of a part that wears the look; the board itself does not.
        menu = QMenu(self._foot)
        menu.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        for code in dict.fromkeys((card.seed_parent, card.pollen_parent)):
            if code:
                action = menu.addAction(self.tr("Show {} in the picture").format(code))
                action.triggered.connect(lambda _=False, code=code: self.plant_wanted.emit(code))
        menu.addSeparator()
        for text, act in self.ways(card):
            menu.addAction(text).triggered.connect(lambda _=False, act=act: act())
        menu.popup(place)

    # Moving -------------------------------------------------------------------------------------

    def _moved(self, stage: str, by: int) -> None:
        """By key: Ctrl+right makes a planned cross, Ctrl+left plans it again, Delete skips it."""
        card = self.columns[stage].card()
        if card is None:
            return
        if by == 0:
            self._move(card.cross, stage, "ended")
        else:
            stages = list(self.columns)
            at = stages.index(stage) + by
            if stage == "ended" and by < 0:
                self._move(card.cross, stage, "planned")
            elif 0 <= at < len(stages):
                self._move(card.cross, stage, stages[at])

    def _dropped(self, stage: str, codes: list[str]) -> None:
        held = {
            card.cross: name for name, made in self.columns.items() for card in made.model.cards
        }
        for code in codes[:1]:
            self._at = code
            self._move(code, held.get(code, ""), stage)

    def _move(self, code: str, stage: str, to: str) -> None:
        state = {"planned": "planned", "pollinated": "made", "ended": "skipped"}.get(to)
        if state is None:
            words = {
                "set": self.tr("once its fruits are counted"),
                "harvested": self.tr("once its harvest is written down"),
                "packed": self.tr("once its seed is in a packet"),
                "sown": self.tr("once its seed is sown"),
                "raised": self.tr("once plants of it are raised"),
            }[to]
            self.undo.show_fault(self.tr("{} goes there by itself {}.").format(code, words))
            return
        if stage not in ("planned", "pollinated", "ended"):
            self.undo.show_fault(
                self.tr("{} stands where its records show; it cannot be moved back.").format(code)
            )
            return
        self.set_state(code, state)

    def set_state(self, code: str, state: str) -> None:
        """Say that a cross is planned, made or skipped, in one edit that can be undone."""
        words = {
            "planned": self.tr("{} planned again"),
            "made": self.tr("{} made"),
            "skipped": self.tr("{} skipped"),
        }[state].format(code)
        self._at = code

        today = datetime.date.today().isoformat()

        def work(edit: Edit) -> object:
            # Without a day a cross that was made would belong to no year, and leave the board.
            held = edit.book.crosses[code]
            made_on = today if state == "made" and not held.made_on else ""
            (cross,) = set_cross_state(edit, (code,), state, made_on=made_on)
            if state == "planned" and cross.made_on:
                edit.update(cross, made_on="")
            return cross

        def done(_: object) -> None:
            if state == "made":
                self.undo.show_done(
                    self.tr("{} is made. Its flowers are not written down yet.").format(code),
                    words,
                    self.tr("Pollination …"),
                    lambda: self._write("pollination", cross=code),
                )
            else:
                self.undo.show_done(self.tr("Written down: {}.").format(words), words)

        self._desk.record(words, work, done, lambda fault: self.undo.show_fault(fault.sentence()))
