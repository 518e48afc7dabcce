"""The Reciprocals page: the two directions of every pair, as a picture, in numbers and in tests."""

from __future__ import annotations

from collections.abc import Callable
from typing import TYPE_CHECKING

from PySide6.QtCore import Qt, QTimer
from PySide6.QtGui import QResizeEvent, QShowEvent
from PySide6.QtWidgets import QListWidget, QListWidgetItem, QWidget

from pedigreeview.book.reciprocal_counts import RecordsByCross
from pedigreeview.window.book_page import BookPage
from pedigreeview.window.errands import Errands
from pedigreeview.window.labels import (
    Flow,
    SearchField,
    action_button,
    clear,
    column,
    heading,
    rule,
    scrolled,
    sentence,
    set_measure,
)
from pedigreeview.window.list_heights import fit_heights
from pedigreeview.window.page_side import PageSide, beside
from pedigreeview.window.style import step
from pedigreeview.window.takes import (
    PairFacts,
    PairLine,
    ask_pair_facts,
    ask_pair_lines,
    ask_pair_report,
)
from pedigreeview.window.words import count, named

if TYPE_CHECKING:
    from pedigreeview.book.edits import Change
    from pedigreeview.network import PedigreeNetwork
    from pedigreeview.planning.reciprocal_report import ReciprocalReport
    from pedigreeview.window.opening import Opened
    from pedigreeview.window.reciprocals_counts import PairCounts
    from pedigreeview.window.reciprocals_picture import PairPicture
    from pedigreeview.window.reciprocals_tests import PairTests

__all__ = ["ReciprocalsPage"]

Write = Callable[..., None]

_MOST = 300
"""Lines of the list; more are found by typing."""


class ReciprocalsPage(BookPage):
    """A list of pairs at the side, the chosen pair's two directions beside it.

    Parameters
    ----------
    write : opens a form by its name, such as `write("pollination", cross="24-03")`; without it
        the page only shows
    """

    def __init__(self, errands: Errands, write: Write | None = None) -> None:
        super().__init__()
        self.setObjectName("page")
        self.setAttribute(Qt.WidgetAttribute.WA_StyledBackground)
        self._errands, self._write = errands, write
        self._net: PedigreeNetwork | None = None
        self._records: RecordsByCross | None = None
        self._lines: list[PairLine] = []
        self._listed: list[PairLine] = []
        self._wanted = ""
        self._stale = True
        self.picture: PairPicture | None = None
        self.counts: PairCounts | None = None
        self.tests: PairTests | None = None
        s = step()
        about = self.tr("The same two parents with the roles exchanged.")
        self._side = PageSide(self.tr("Reciprocals"), about)
        left = self._side.body
        self.list = QListWidget()
        self.search = SearchField(self.tr("Parent or cross"), self.tr("Find a pair"))
        self.search.textChanged.connect(lambda _: self._list())
        left.addWidget(self.search)
        self.list.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.list.setResizeMode(QListWidget.ResizeMode.Adjust)
        self.list.setAccessibleName(self.tr("Reciprocal pairs"))
        self.list.setWordWrap(True)
        self.list.currentRowChanged.connect(self._show_row)
        left.addWidget(self.list, 1)
        self._more = sentence("", "soft")
        self._more.hide()
        left.addWidget(self._more)
        outer = beside(self, self._side)
        inner = QWidget()
        self._body = column(2 * s)
        inner.setLayout(self._body)
        self._area = scrolled(inner)
        outer.addWidget(self._area, 1)
        self.setFocusProxy(self.list)
        QWidget.setTabOrder(self.list, self.search)
        self.fit_sides()

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self.fit_sides()

    def showEvent(self, event: QShowEvent) -> None:
        super().showEvent(event)
        self._load()

    def fit_sides(self) -> None:
        """Give the list the width that the size of the text asks for, as far as there is room."""
        s = step()
        side = min(32 * s, self.width() * 3 // 10)
        self._side.setFixedWidth(side)
        # Made before the size of the text is known, unlike the pages that are made when asked for.
        self._side.set_margins()
        self.list.resize(side - 3 * step(), self.list.height())
        fit_heights(self.list)
        set_measure(self._body, self.width() - side, 3 * step())

    # The book -----------------------------------------------------------------------------------

    def show_opened(self, opened: Opened | None) -> None:
        """Another book, or none."""
        self._wanted = ""
        self.search.clear()
        if opened is not None:
            self.show_network(opened.net)

    def book_changed(self, opened: Opened, change: Change) -> None:
        """The book after an edit: the pair on show stays on show."""
        shown = self.shown()
        self._wanted = _name(shown) if shown is not None else ""
        self.show_network(opened.net)

    def redraw(self) -> None:
        """The theme or the size of the text has changed."""
        self.fit_sides()
        if self.picture is not None:
            self.picture.redraw()

    def go_to(self, part: str) -> None:
        """Show the pair of a cross, or of two parents written 'A ⇄ B'."""
        self._wanted = part
        if not self._stale and self._lines:
            self.search.clear()
            self._list()

    def show_network(self, net: PedigreeNetwork) -> None:
        """Another book; its pairs are looked for when the page is looked at."""
        self._net, self._records, self._stale = net, None, True
        if self.isVisible():
            self._load()

    def _load(self) -> None:
        net = self._net
        if net is None or not self._stale:
            return
        self._stale = False
        tick = self._errands.tick

        def work() -> tuple[list[PairLine], RecordsByCross]:
            return ask_pair_lines(net, tick), RecordsByCross(net.book)

        self._errands.ask("pairs", work, self._take_lines)

    def _take_lines(self, found: tuple[list[PairLine], RecordsByCross]) -> None:
        self._lines, self._records = found
        self._list()

    def pair_count(self) -> int:
        """How many pairs were crossed both ways."""
        return sum(line.level != "one way" for line in self._lines)

    def shown(self) -> PairLine | None:
        """The pair on show."""
        row = self.list.currentRow()
        return self._listed[row] if 0 <= row < len(self._listed) else None

    # The list -----------------------------------------------------------------------------------

    def _list(self) -> None:
        """List the pairs that fit what is typed, by plant, by variety, then those made one way."""
        net = self._net
        if net is None:
            return
        wanted = self._wanted or (_name(shown) if (shown := self.shown()) is not None else "")
        typed = self.search.text().strip().casefold()
        fit = [line for line in self._lines if not typed or typed in self._sought(line)]
        self._listed = fit[:_MOST]
        self.list.blockSignals(True)
        self.list.clear()
        levels = {
            "plant": self.tr("by plant"),
            "variety": self.tr("by variety"),
            "one way": self.tr("made this way only"),
        }
        at = 0
        for row, line in enumerate(self._listed):
            a, b = line.parents
            signed = f"{a} × {b}" if line.level == "one way" else f"{a} ⇄ {b}"
            item = QListWidgetItem(f"{signed}\n{levels[line.level]}")
            item.setToolTip(f"{named(net.book, a)}, {named(net.book, b)}")
            self.list.addItem(item)
            if wanted and wanted in (_name(line), *line.crosses[0], *line.crosses[1]):
                at = row
        fit_heights(self.list)
        self.list.blockSignals(False)
        left_out = len(fit) - len(self._listed)
        self._more.setVisible(left_out > 0)
        one, many = self.tr("more; type to find it."), self.tr("more; type to find them.")
        self._more.setText(count(left_out, one, many))
        self._wanted = ""
        if self._listed:
            self.list.setCurrentRow(at)
        elif typed and self._lines:
            self._say(self.tr("No such pair"), self.tr("No parent or cross is called so."))
        else:
            self._say(
                self.tr("No reciprocal pair yet"),
                self.tr(
                    "A pair appears here by itself when two parents have been crossed both ways: "
                    "once with one of them as the seed parent, once with the other."
                ),
            )
            if self._write is not None:
                write = self._write
                row_ = Flow(step())
                row_.addWidget(
                    action_button(self.tr("Write down a cross"), lambda: write("cross"), main=True)
                )
                self._body.insertLayout(2, row_)

    def _sought(self, line: PairLine) -> str:
        assert self._net is not None
        names = (named(self._net.book, code) for code in line.parents)
        return " ".join((*names, *line.crosses[0], *line.crosses[1])).casefold()

    def _say(self, title: str, text: str) -> None:
        self._errands.drop("pair")
        self._errands.drop("pair_tests")
        clear(self._body)
        self.picture = self.counts = self.tests = None
        self._body.addWidget(heading(title, 2))
        self._body.addWidget(sentence(text))
        self._body.addStretch(1)

    # One pair -----------------------------------------------------------------------------------

    def _show_row(self, row: int) -> None:
        net, records = self._net, self._records
        if net is None or records is None or not 0 <= row < len(self._listed):
            return
        line = self._listed[row]
        self._errands.ask(
            "pair", lambda: ask_pair_facts(net, records, line), lambda facts: self._lay(net, facts)
        )

    def _lay(self, net: PedigreeNetwork, facts: PairFacts) -> None:
        """Lay out one pair; after an edit of the same pair the page stays scrolled where it is."""
        from pedigreeview.window.reciprocals_counts import PairCounts
        from pedigreeview.window.reciprocals_picture import PairPicture

        bar = self._area.verticalScrollBar()
        kept = bar.value() if self._body.property("pair") == _name(facts.line) else 0
        self._body.setProperty("pair", _name(facts.line))
        clear(self._body)
        a, b = facts.line.parents
        head = column(step() // 2)
        sign = "×" if facts.line.level == "one way" else "⇄"
        head.addWidget(heading(f"{named(net.book, a)} {sign} {named(net.book, b)}", 2))
        head.addWidget(sentence(self._how(facts), "soft"))
        self._body.addLayout(head)
        buttons = self._actions(facts)
        if buttons is not None:
            self._body.addLayout(buttons)
        self.picture = PairPicture()
        self.picture.plant_wanted.connect(self.plant_wanted)
        self._body.addWidget(self.picture)
        self.picture.show_pair(net, facts.line.parents, facts.line.crosses)
        counts = PairCounts(net, facts)
        counts.plant_wanted.connect(self.plant_wanted)
        self._body.addWidget(counts)
        self.counts = counts
        self._body.addWidget(rule())
        if counts.missing:
            text = self.tr("Not written down in this book: {}.").format(", ".join(counts.missing))
            self._body.addWidget(sentence(text, "soft"))
        self._body.addWidget(
            sentence(
                self.tr(
                    "Both directions have the same coancestry; they differ in cytoplasm, seed coat "
                    "and early vigour."
                ),
                "soft",
            )
        )
        self.tests = None
        self._tests = column()
        self._body.addLayout(self._tests)
        self._body.addStretch(1)
        self._errands.drop("pair_tests")
        if all(facts.line.crosses):
            self._tests.addWidget(sentence(self.tr("Comparing the two directions …"), "soft"))
            line = facts.line
            self._errands.ask(
                "pair_tests",
                lambda: ask_pair_report(net, line),
                lambda told: self._test(told, kept),
            )
        QTimer.singleShot(0, self, lambda: bar.setValue(kept))

    def _test(self, report: ReciprocalReport, kept: int) -> None:
        """Lay out the tests below the counts."""
        from pedigreeview.window.reciprocals_tests import PairTests

        clear(self._tests)
        self.tests = PairTests(report)
        self._tests.addWidget(self.tests)
        bar = self._area.verticalScrollBar()
        if kept:
            QTimer.singleShot(0, self, lambda: bar.setValue(max(kept, bar.value())))

    def _how(self, facts: PairFacts) -> str:
        if facts.line.level == "plant":
            return self.tr("A pair by plant: the same two plants, crossed both ways.")
        if facts.line.level == "variety":
            return self.tr(
                "A pair by variety: plants grown from these two varieties, crossed both ways."
            )
        a, b = facts.line.parents
        return self.tr(
            "Made one way only: {} bore the seed. With {} as the seed parent as well the two "
            "directions could be compared."
        ).format(a, b)

    def _actions(self, facts: PairFacts) -> Flow | None:
        """To go on with either direction, or to plan the one that is missing."""
        write = self._write
        if write is None:
            return None
        row = Flow(step())
        for (seed, pollen), crosses in zip(
            (facts.line.parents, facts.line.parents[::-1]), facts.line.crosses, strict=True
        ):
            known = self._net is not None and all(
                code in self._net.book.plants for code in (seed, pollen)
            )
            if crosses:
                last = crosses[-1]
                text = self.tr("Pollinate {} again").format(f"{seed} × {pollen}")
                button = action_button(text, _call(write, "pollination", cross=last))
                row.addWidget(button)
            elif known:
                text = self.tr("Plan {}").format(f"{seed} × {pollen}")
                plan = _call(write, "cross", plants=(seed, pollen))
                row.addWidget(action_button(text, plan, main=True))
        return row


def _call(write: Write, name: str, **what: object) -> Callable[[], None]:
    return lambda: write(name, **what)


def _name(line: PairLine) -> str:
    a, b = line.parents
    return f"{a} × {b}" if line.level == "one way" else f"{a} ⇄ {b}"
