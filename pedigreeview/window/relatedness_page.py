"""The Relatedness page: how related the plants of any set are, as a heat map with its tree.

The table is made in a thread, with Cancel.  What lies under the mouse or the keys is said below the
map; a click or Enter explains the pair at the side, where near-duplicates and the kin of the plant
in focus are listed too.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator
from pathlib import Path
from typing import TYPE_CHECKING, Any

from PySide6.QtCore import QRectF, QSize, Qt, Signal
from PySide6.QtGui import QPainter, QPaintEvent, QResizeEvent, QShowEvent
from PySide6.QtWidgets import (
    QDialog,
    QFrame,
    QHBoxLayout,
    QProgressBar,
    QSizePolicy,
    QStackedWidget,
    QWidget,
)

from pedigreeview.book.faults import Fault
from pedigreeview.drawing.heat_picture import HeatPicture, paint_scale, scale_height
from pedigreeview.window.book_page import BookPage, Shown
from pedigreeview.window.errands import Errands
from pedigreeview.window.heat_map import HeatMap
from pedigreeview.window.labels import (
    Flow,
    column,
    heading,
    plain_button,
    scrolled,
    sentence,
)
from pedigreeview.window.relatedness_choice import SetChoice, chooser
from pedigreeview.window.relatedness_lists import RelatednessLists
from pedigreeview.window.relatedness_sets import first_set, plants_of_set
from pedigreeview.window.relatedness_table import (
    MadeTable,
    made_ready,
    make_table,
    picture_of,
    write_table,
)
from pedigreeview.window.strips import WorkStrip
from pedigreeview.window.style import current_name, step
from pedigreeview.window.words import count

if TYPE_CHECKING:
    from pedigreeview.book.edits import Change
    from pedigreeview.network import PedigreeNetwork
    from pedigreeview.planning.relatedness import Measure, Order, Relatedness
    from pedigreeview.window.opening import Opened
    from pedigreeview.window.preferences import Preferences

__all__ = ["RelatednessPage"]

_TABLE = "whole:relatedness"
_KIN = "pair:kin"
_EXACT = "pair:exact"
_LOOK = "whole:relatedness-look"
_LISTED = 8
_AT_ONCE = 600
"""Plants up to which the map is coloured anew at once, else in a thread."""


class _Scale(QWidget):
    """The tones of the map with their values."""

    def __init__(self) -> None:
        super().__init__()
        self.picture: HeatPicture | None = None
        self.title = ""
        self.setSizePolicy(QSizePolicy.Policy.Fixed, QSizePolicy.Policy.Fixed)

    def show_picture(self, picture: HeatPicture | None, title: str) -> None:
        self.picture, self.title = picture, title
        if picture is not None:
            words = self.tr("{}: from 0, palest, to {:g}, deepest").format(title, picture.top)
            self.setAccessibleName(words)
        self.updateGeometry()
        self.update()

    def sizeHint(self) -> QSize:
        tall = scale_height(self.picture) if self.picture is not None else 4.0 * step()
        return QSize(24 * step(), round(tall))

    def paintEvent(self, event: QPaintEvent) -> None:
        painter = QPainter(self)
        try:
            if self.picture is not None:
                # The scale is not turned round, so neither are the numbers below it.
                painter.setLayoutDirection(Qt.LayoutDirection.LeftToRight)
                rect = QRectF(0, 0, self.width() - 1, self.height())
                paint_scale(painter, self.picture, rect, self.title)
        finally:
            painter.end()


class RelatednessPage(BookPage):
    """The choice of plants above, the map in the middle, lists at the side.

    Whoever makes the page goes through `rest`: the map and the lists come in slices.
    """

    _moved = Signal(int, int)
    """Steps done and steps of the table under way; sent from the thread that makes it."""

    def __init__(
        self,
        errands: Errands,
        preferences: Preferences | None = None,
        show: Callable[[QDialog], None] = QDialog.open,
    ) -> None:
        super().__init__()
        self.setObjectName("page")
        self.setAttribute(Qt.WidgetAttribute.WA_StyledBackground)
        self._errands = errands
        self._opened: Opened | None = None
        self._show_dialog = show
        self._picked: tuple[str, ...] = ()
        self._focus = ""
        self._stale = False
        self._whole = False
        self.made: MadeTable | None = None
        self._text = 1.0 if preferences is None else preferences.text_size / 100
        self._preferences = preferences
        outer = column()
        self.setLayout(outer)
        outer.addWidget(self._tools())
        self.work = WorkStrip()
        self.work.cancelled.connect(self.cancel)
        bar = self.work.findChild(QProgressBar)
        assert isinstance(bar, QProgressBar)
        self._bar = bar
        self._moved.connect(self._show_progress)
        outer.addWidget(self.work)
        self._across = QHBoxLayout()
        self._across.setSpacing(0)
        self._across.addWidget(self._middle(), 1)
        outer.addLayout(self._across, 1)

    def rest(self) -> Iterator[None]:
        self._map_of()
        yield
        self.lists = RelatednessLists(self._errands)
        self.lists.plant_wanted.connect(self.plant_wanted)
        self.lists.pair_wanted.connect(self.show_pair)
        self.lists.pair_closed.connect(self.map.setFocus)
        self.lists.lit.connect(self.map.light)
        self._whole = True
        self._fit()
        self._across.addWidget(self.lists)

    def _tools(self) -> QWidget:
        s = step()
        tools = QFrame()
        tools.setObjectName("tools")
        outer = column()
        outer.setContentsMargins(2 * s, s, 2 * s, s)
        tools.setLayout(outer)
        row = Flow(s)
        holder = QWidget()
        holder.setLayout(row)
        outer.addWidget(holder)
        order = "day-month"
        if self._preferences is not None and self._preferences.date_order == "month-day":
            order = "month-day"
        self.plants = SetChoice(self.tr("Plants to show"), order, across=True)  # type: ignore[arg-type]
        self.plants.changed.connect(self.ask)
        self.measure = chooser(
            self.tr("Measure"),
            (
                ("coancestry", self.tr("Coancestry")),
                ("relationship", self.tr("Relationship")),
            ),
        )
        self.order = chooser(
            self.tr("Order of the plants"),
            (
                ("clustering", self.tr("by likeness, with the tree")),
                ("generation", self.tr("by generation")),
                ("given", self.tr("by code")),
            ),
        )
        for box in (self.measure, self.order):
            box.setMinimumContentsLength(19 if box is self.order else 12)
            box.currentIndexChanged.connect(lambda _: self.ask())
        self.plants.which.setMinimumContentsLength(15)
        self.save_button = plain_button(
            self.tr("Save …"), self.tr("Save the table or the picture"), self.save
        )
        for widget in (self.plants, self.measure, self.order):
            row.addWidget(widget)
        for sign, name, zoom in (
            ("−", self.tr("Smaller squares (−)"), lambda: self.map.zoom(0.8)),
            ("+", self.tr("Larger squares (+)"), lambda: self.map.zoom(1.25)),
            (self.tr("All"), self.tr("All squares at once (0)"), lambda: self.map.fit()),
        ):
            row.addWidget(plain_button(sign, name, zoom))
        row.addWidget(self.save_button)
        return tools

    def _middle(self) -> QWidget:
        s = step()
        self.stack = QStackedWidget()
        self.empty = QWidget()
        empty = column(s, 4 * s)
        self.empty.setLayout(empty)
        self.empty_title = heading("", 2)
        self.empty_words = sentence("")
        for label in (self.empty_title, self.empty_words):
            empty.addWidget(label)
        empty.addStretch(1)
        self.stack.addWidget(self.empty)
        return self.stack

    def _map_of(self) -> None:
        """The map with what is read off it; with large type the words go on further down."""
        s = step()
        full = QWidget()
        self._full = scrolled(full)
        self._full.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        self.stack.addWidget(self._full)
        body = column(s)
        body.setContentsMargins(2 * s, s, s, s)
        full.setLayout(body)
        self.map = HeatMap()
        self.map.words = self._square_words
        self.map.pointed.connect(self._point)
        self.map.pair_chosen.connect(self.show_pair)
        self.map.plant_wanted.connect(self.plant_wanted)
        body.addWidget(self.map, 1)
        foot = QHBoxLayout()
        foot.setSpacing(3 * s)
        self.scale = _Scale()
        foot.addWidget(self.scale, 0, Qt.AlignmentFlag.AlignTop)
        told = column(max(1, s // 4))
        self.reading = sentence("")
        self.reading.setObjectName("reading")
        self.facts = sentence("", "soft")
        told.addWidget(self.reading)
        told.addWidget(self.facts)
        told.addStretch(1)
        foot.addLayout(told, 1)
        body.addLayout(foot)

    # The book -----------------------------------------------------------------------------------

    @property
    def _net(self) -> PedigreeNetwork | None:
        return self._opened.net if self._opened is not None else None

    def show_opened(self, opened: Opened | None) -> None:
        """Another book, or none."""
        for kind in (_TABLE, _KIN, _EXACT):
            self._errands.drop(kind)
        self._opened, self.made, self._focus, self._picked = opened, None, "", ()
        self.lists.close_pair()
        self.map.show_picture(None)
        net = self._net
        self.plants.show_network(net, first_set(net, ()) if net is not None else "kept")
        self.lists.show_kin(net, "")
        self._later()

    def book_changed(self, opened: Opened, change: Change) -> None:
        """The book after an edit: the same set anew, with the pair that was explained."""
        self._opened = opened
        self.plants.show_network(opened.net)
        self._later()

    def table_shown(self) -> Shown | None:
        """The coefficients of every pair, in the order of the map."""
        if self.made is None:
            return None
        heading, *rows = self.made.held.rows()
        return self.measure.currentText(), [str(cell) for cell in heading], rows

    def take_picked(self, codes: tuple[str, ...]) -> None:
        """Plants picked on another page become the set to look at."""
        self._picked = codes
        if len(codes) >= 2:
            self.plants.choose("picked")
        self.plants.take_picked(codes)

    def mark(self, code: str) -> None:
        """The plant that the window is at."""
        self._focus = code
        self._mark_row()
        if self.isVisible():
            self._ask_kin()

    def redraw(self) -> None:
        """The theme or the size of the text has changed."""
        if self._preferences is not None:
            self._text = self._preferences.text_size / 100
        self._fit()
        made = self.made
        if made is None:
            return
        look, text = current_name(), self._text
        if len(made.held.codes) <= _AT_ONCE:
            self._redrawn(MadeTable(made.held, picture_of(made.held, look, text)))
            return

        def work() -> MadeTable:
            return MadeTable(made.held, made_ready(picture_of(made.held, look, text)))

        self._errands.ask(_LOOK, work, self._redrawn)

    def _redrawn(self, made: MadeTable) -> None:
        """The same table in another look."""
        if self.made is None or self.made.held is not made.held:
            return
        self.made = made
        self.map.show_picture(made.picture, keep=True)
        self.map.fit()
        self.scale.show_picture(made.picture, self._measure_words())

    def showEvent(self, event: QShowEvent) -> None:
        super().showEvent(event)
        if self._stale:
            self.ask()
            self._ask_kin()

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self._fit()

    def _fit(self) -> None:
        if not self._whole:
            return
        self.map.setMinimumHeight(min(30 * step(), max(12 * step(), self.height() // 2)))
        self.lists.setFixedWidth(min(44 * step(), max(22 * step(), self.width() * 3 // 10)))

    def _later(self) -> None:
        """Make the table now where it is looked at, else when it is."""
        self._stale = True
        if self.isVisible():
            self.ask()
            self._ask_kin()

    # The table ----------------------------------------------------------------------------------

    def ask(self) -> None:
        """Make the table of what is chosen."""
        net = self._net
        if net is None:
            self._stale = False
            return
        if not self.isVisible():
            self._stale = True
            return
        self._stale = False
        try:
            name, by = self.plants.question()
        except Fault as fault:
            self._say_empty(self.tr("No day to look at"), fault.sentence())
            return
        measure: Measure = self.measure.currentData()
        order: Order = self.order.currentData()
        look, text, tick = current_name(), self._text, self._errands.tick
        self._bar.setRange(0, 0)
        self.work.begin(self.tr("Working out how related the plants are …"))

        def progress(done: int, steps: int) -> None:
            tick()
            self._moved.emit(done, steps)

        def work() -> MadeTable:
            codes = plants_of_set(net, name, **by)  # type: ignore[arg-type]
            return make_table(net, codes, measure, order, look, text, progress)

        self._errands.ask(_TABLE, work, self._show, self._failed)

    def cancel(self) -> None:
        """Give the table under way up; what was shown before stays."""
        self._errands.drop(_TABLE)
        self.work.end()
        if self.made is None:
            self._say_empty(
                self.tr("Not worked out"),
                self.tr("Choose a smaller set of plants above, or the same again."),
            )

    def _show_progress(self, done: int, steps: int) -> None:
        self._bar.setRange(0, steps)
        self._bar.setValue(done)

    def _failed(self, fault: Fault) -> None:
        self.work.end()
        self.made = None
        self._say_empty(self.tr("No heat map"), fault.sentence())

    def _say_empty(self, title: str, words: str) -> None:
        self.empty_title.setText(title)
        self.empty_words.setText(words)
        self.stack.setCurrentWidget(self.empty)
        self.save_button.setEnabled(False)

    def _show(self, made: MadeTable) -> None:
        self.work.end()
        held = made.held
        before = self.made.held if self.made is not None else None
        self.made = made
        self.lists.show_duplicates(held.duplicates, len(held.codes))
        if len(held.codes) < 2:
            title = self.tr("Too few plants to compare")
            words = self.plants.advice()
            if held.left_out:
                words = self._left_out_words(held.left_out) + " " + words
            self._say_empty(title, words)
            return
        self.stack.setCurrentWidget(self._full)
        self.save_button.setEnabled(True)
        keep = before is not None and before.codes == held.codes
        self.map.show_picture(made.picture, keep=keep)
        self._mark_row()
        self.scale.show_picture(made.picture, self._measure_words())
        self.facts.setText(self._facts(held))
        self._point(self.map.cursor_square() if keep else None)

    def _measure_words(self) -> str:
        if self.made is not None and self.made.held.measure == "relationship":
            return self.tr("Relationship R")
        return self.tr("Coancestry θ")

    def _facts(self, held: Relatedness) -> str:
        from pedigreeview.network.text import decimal_text

        told = [
            self.tr("{}; mean of all pairs {}.").format(
                count(len(held.codes), self.tr("plant"), self.tr("plants")),
                decimal_text(held.mean),
            )
        ]
        if held.left_out:
            told.append(self._left_out_words(held.left_out))
        told.append(held.base)
        return " ".join(told)

    def _left_out_words(self, codes: tuple[str, ...]) -> str:
        listed = ", ".join(codes[:_LISTED])
        if len(codes) > _LISTED:
            listed += self.tr(" and {} more").format(len(codes) - _LISTED)
        return self.tr(
            "Left out, since what depends on records that cannot be right is withheld: {}."
        ).format(listed)

    def _mark_row(self) -> None:
        codes = self.made.held.codes if self.made is not None else ()
        self.map.mark(codes.index(self._focus) if self._focus in codes else -1)

    # One pair -----------------------------------------------------------------------------------

    def _square_words(self, row: int, column: int, text: str = "") -> str:
        """A pair and its value in words."""
        assert self.made is not None
        held = self.made.held
        a, b = held.codes[row], held.codes[column]
        name = self.tr("relationship") if held.measure == "relationship" else self.tr("coancestry")
        value = text or self.made.picture.word(row, column)
        if row == column:
            return self.tr("{} with itself: {} {}").format(a, name, value)
        return self.tr("{} with {}: {} {}").format(a, b, name, value)

    def _point(self, square: tuple[int, int] | None) -> None:
        self._errands.drop(_EXACT)
        if square is None or self.made is None:
            hint = self.tr("Point at a square to read its value; a click explains the pair.")
            self.reading.setText(hint)
            return
        self.reading.setText(self._square_words(*square))
        net, held = self._net, self.made.held
        if net is None or held.measure != "coancestry":
            return
        a, b = held.codes[square[0]], held.codes[square[1]]

        def work() -> str:
            from pedigreeview.network.text import fraction_text

            return fraction_text(net.coancestry_exact(a, b), net.coancestry(a, b))

        def come(text: str) -> None:
            if self.made is not None and self.made.held is held:
                self.reading.setText(self._square_words(*square, text))

        self._errands.ask(_EXACT, work, come, lambda _: None)

    def show_pair(self, a: str, b: str) -> None:
        """Explain a pair at the side."""
        if self._opened is not None:
            self.lists.show_pair(self._opened.net, a, b, self._opened.problems)

    # Kin of the focus ---------------------------------------------------------------------------

    def _ask_kin(self) -> None:
        net, focus = self._net, self._focus
        if net is None or focus not in net.book.plants:
            self.lists.show_kin(net, "")
            return

        def work() -> tuple[Any, Any]:
            from pedigreeview.planning.relatedness import farthest_relatives, nearest_relatives

            return (
                nearest_relatives(net, focus, count=_LISTED),
                farthest_relatives(net, focus, count=_LISTED),
            )

        self._errands.ask(
            _KIN,
            work,
            lambda found: self.lists.show_kin(net, focus, *found),
            lambda fault: self.lists.show_kin(net, focus, words=fault.sentence()),
        )

    # Saving -------------------------------------------------------------------------------------

    def save(self) -> None:
        """Ask for a place and write the table or the picture."""
        from pedigreeview.window.relatedness_save import SaveRelatedness

        made, opened = self.made, self._opened
        if made is None or opened is None or len(made.held.codes) < 2:
            return
        net, held, title = opened.net, made.held, self._title()
        scale = self._measure_words()

        def write(path: Path, grey: bool, caption: str, margin: float) -> None:
            write_table(net, held, title, scale, path, grey, caption, margin)

        words = self.tr("{} of {}.").format(
            scale, count(len(held.codes), self.tr("plant"), self.tr("plants"))
        )
        stem = opened.path.parent / f"{opened.path.stem}-{held.measure}"
        dialog = SaveRelatedness(write, words, self._errands, stem, self, with_words=True)
        self._show_dialog(dialog)

    def _title(self) -> str:
        assert self._opened is not None
        return f"{self._opened.title}: {self.plants.words()}"
