"""The Parents page: from a wish to the pairs worth crossing, to a plan with numbers.

At the side stand the wishes, the candidates, the limits and the weights; beside them the ranked
pairs with one of them in detail, a choice of several crosses together, and how many to grow.
"""

from __future__ import annotations

import datetime
from collections.abc import Callable, Iterator, Sequence
from typing import TYPE_CHECKING, Any

from PySide6.QtCore import Qt, QTimer
from PySide6.QtGui import QResizeEvent, QShowEvent
from PySide6.QtWidgets import (
    QButtonGroup,
    QFrame,
    QHBoxLayout,
    QLabel,
    QScrollArea,
    QSplitter,
    QStackedWidget,
    QToolButton,
    QWidget,
)

from pedigreeview.book.faults import Fault
from pedigreeview.planning.pairs import Weights
from pedigreeview.window.book_page import BookPage
from pedigreeview.window.desk import Desk
from pedigreeview.window.errands import Errands
from pedigreeview.window.forms.fields import PlantField
from pedigreeview.window.growing_panel import GrowingPanel
from pedigreeview.window.labels import Flow, action_button, column, heading, scrolled, sentence
from pedigreeview.window.parents_asking import Ranked, RankQuestion, rank, weigh_pair
from pedigreeview.window.parents_limits import CandidatesPanel, LimitsPanel
from pedigreeview.window.parents_pair import PairDetail
from pedigreeview.window.parents_ranking import RankingTable
from pedigreeview.window.parents_several import SeveralPanel
from pedigreeview.window.parents_sliders import WeightsPanel
from pedigreeview.window.parents_wishes import WishesPanel
from pedigreeview.window.relatedness_sets import first_set
from pedigreeview.window.strips import WorkStrip
from pedigreeview.window.style import step
from pedigreeview.window.words import count, number

if TYPE_CHECKING:
    from pedigreeview.book.edits import Change, Edit
    from pedigreeview.book.recording.typed_dates import Order
    from pedigreeview.network import PedigreeNetwork
    from pedigreeview.planning.pairs import PairRow
    from pedigreeview.window.opening import Opened
    from pedigreeview.window.preferences import Preferences

__all__ = ["ParentsPage"]

_RANK = "group:parents"
_ONE = "pair:parents-one"
_PAUSE = 250
_TABS = ("pairs", "several", "growing")


def _both_ways(inner: QWidget) -> QScrollArea:
    """Scrolled also across, since with large type numbers side by side may not fit."""
    area = scrolled(inner)
    area.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAsNeeded)
    return area


class ParentsPage(BookPage):
    """The question at the side, its answers beside it."""

    def __init__(
        self,
        errands: Errands,
        desk: Desk,
        preferences: Preferences | None = None,
        try_cross: Callable[[str, str], None] | None = None,
        *,
        sliced: bool = False,
    ) -> None:
        """
        Parameters
        ----------
        try_cross : shows a cross of two plants in the picture that is not in the book
        sliced : make the frame alone; whoever made the page goes through `rest`
        """
        super().__init__()
        self.setObjectName("page")
        self.setAttribute(Qt.WidgetAttribute.WA_StyledBackground)
        self._errands, self._desk, self._try_cross = errands, desk, try_cross
        self._preferences = preferences
        self._opened: Opened | None = None
        self._picked: tuple[str, ...] = ()
        self._stale = False
        self.ranked: Ranked | None = None
        self._asked: RankQuestion | None = None
        self._delay = QTimer(self)
        self._delay.setSingleShot(True)
        self._delay.setInterval(_PAUSE)
        self._delay.timeout.connect(self.ask)
        outer = QHBoxLayout(self)
        outer.setSpacing(0)
        outer.setContentsMargins(0, 0, 0, 0)
        outer.addWidget(self._side_of())
        outer.addWidget(self._middle(), 1)
        self._fit()
        if not sliced:
            for _ in self.rest():
                pass

    # Putting it together ------------------------------------------------------------------------

    def _side_of(self) -> QWidget:
        s = step()
        self._side = side = QFrame()
        side.setObjectName("drawer")
        held = column()
        side.setLayout(held)
        inner = QWidget()
        body = self._side_body = column(s)
        body.setContentsMargins(2 * s, 3 * s, 2 * s, 2 * s)
        inner.setLayout(body)
        self._asked_for = inner
        area = _both_ways(inner)
        self._side_bar = area.verticalScrollBar()
        held.addWidget(area)
        body.addWidget(heading(self.tr("Parents"), 2))
        body.addStretch(1)
        return side

    def rest(self) -> Iterator[None]:
        order: Order = "day-month"
        if self._preferences is not None and self._preferences.date_order == "month-day":
            order = "month-day"
        self.wishes = WishesPanel()
        self.wishes.changed.connect(self._tell_wishes)
        self._lay(self.tr("Wanted in one plant"), self.wishes)
        yield
        self.candidates = CandidatesPanel(order)
        self._lay(self.tr("Candidates"), self.candidates)
        yield
        self.limits = LimitsPanel()
        self._lay(self.tr("Limits"), self.limits)
        yield
        self.weights = WeightsPanel()
        self._lay(self.tr("What counts how much"), self.weights)
        self._fit()
        yield
        self._ranking()
        yield
        self._one_pair()

    def _lay(
        self, title: str, panel: WishesPanel | CandidatesPanel | LimitsPanel | WeightsPanel
    ) -> None:
        """A panel at the foot of the side, above the stretch."""
        body = self._side_body
        at = body.count() - 1
        body.insertWidget(at, heading(title, 3))
        body.insertWidget(at + 1, panel)
        body.insertSpacing(at + 2, step())
        panel.changed.connect(self._delay.start)
        panel.changed.connect(self._keep)

    def _middle(self) -> QWidget:
        s = step()
        middle = QWidget()
        body = column(s)
        body.setContentsMargins(2 * s, 2 * s, 2 * s, s)
        middle.setLayout(body)
        tabs = Flow(s)
        holder = QWidget()
        holder.setLayout(tabs)
        body.addWidget(holder)
        self.tabs: dict[str, QToolButton] = {}
        group = QButtonGroup(self)
        for name, words in zip(
            _TABS,
            (
                self.tr("Pairs worth crossing"),
                self.tr("Several crosses together"),
                self.tr("How many to grow"),
            ),
            strict=True,
        ):
            button = QToolButton()
            button.setText(words)
            button.setCheckable(True)
            button.setAutoExclusive(True)
            button.clicked.connect(lambda _, name=name: self.turn_to(name))
            group.addButton(button)
            tabs.addWidget(button)
            self.tabs[name] = button
        self.work = WorkStrip()
        self.work.cancelled.connect(self.cancel)
        body.addWidget(self.work)
        self.stack = QStackedWidget()
        body.addWidget(self.stack, 1)
        pairs = QWidget()
        self._pairs_body = column(s)
        pairs.setLayout(self._pairs_body)
        self.stack.addWidget(pairs)
        self._several: SeveralPanel | None = None
        self._growing: GrowingPanel | None = None
        self._parts: dict[str, QWidget] = {"pairs": pairs}
        self.tabs["pairs"].setChecked(True)
        return middle

    @property
    def several(self) -> SeveralPanel:
        """The choice of several crosses, made when it is first wanted."""
        if self._several is None:
            panel = self._several = SeveralPanel(self._errands)
            panel.plant_wanted.connect(self.plant_wanted)
            panel.plan_wanted.connect(self.plan_all)
            self._add_part("several", panel)
            panel.show_rows(self._net, self.table.held.rows)
        return self._several

    @property
    def growing(self) -> GrowingPanel:
        """How many to grow, made when it is first wanted, and whole."""
        panel = self._growing_frame()
        panel.finish()
        return panel

    def _growing_frame(self) -> GrowingPanel:
        """The same, whose fields may still be on their way."""
        if self._growing is None:
            panel = self._growing = GrowingPanel(self._errands, self._desk)
            self._add_part("growing", panel)
            self._tell_wishes()
        return self._growing

    def _add_part(self, name: str, panel: QWidget) -> None:
        area = self._parts[name] = _both_ways(panel)
        self.stack.addWidget(area)

    def _ranking(self) -> None:
        body = self._pairs_body
        self.found = sentence("", "soft")
        self.found.setObjectName("found pairs")
        body.addWidget(self.found)
        self.empty = sentence("")
        self.empty.hide()
        body.addWidget(self.empty)
        self.split = QSplitter(Qt.Orientation.Vertical)
        self.split.setChildrenCollapsible(False)
        self.table = RankingTable()
        self.table.pair_shown.connect(self._show_row)
        self.split.addWidget(self.table)
        self.split.setAccessibleName(self.tr("The table above, the pair below"))
        body.addWidget(self.split, 1)

    def _one_pair(self) -> None:
        s = step()
        below = QWidget()
        under = column(s)
        # The top edge of the fields is not to lie under the handle.
        under.setContentsMargins(0, s, 0, 0)
        below.setLayout(under)
        under.addLayout(self._any_pair())
        self.detail = PairDetail(self._errands)
        self.detail.plant_wanted.connect(self.plant_wanted)
        self.detail.plan_wanted.connect(self.plan)
        self.detail.try_wanted.connect(self._try)
        self.detail.grow_wanted.connect(self.grow)
        self.detail.turn_wanted.connect(self.weigh)
        under.addWidget(self.detail)
        under.addStretch(1)
        self.split.addWidget(_both_ways(below))
        self.split.setStretchFactor(0, 2)
        self.split.setStretchFactor(1, 3)
        self.split.setSizes([200, 320])

    def _any_pair(self) -> QHBoxLayout:
        """Two plants typed in, whether they are listed or not."""
        s = step()
        row = QHBoxLayout()
        row.setSpacing(s)
        self.seed = PlantField("seed_parent", self._desk, self.tr("any seed parent"))
        self.pollen = PlantField("pollen_parent", self._desk, self.tr("any pollen parent"))
        self.seed.set_label(self.tr("Seed parent of a pair to weigh"))
        self.pollen.set_label(self.tr("Pollen parent of a pair to weigh"))
        top = Qt.AlignmentFlag.AlignTop
        row.addWidget(self.seed, 1, top)
        row.addWidget(QLabel("×"), 0, top)
        row.addWidget(self.pollen, 1, top)
        self.weigh_button = action_button(
            self.tr("Weigh this pair"), lambda: self.weigh(self.seed.text(), self.pollen.text())
        )
        row.addWidget(self.weigh_button, 0, top)
        return row

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self._fit()

    def _fit(self) -> None:
        """The side takes three tenths, or what its longest word needs, up to a half."""
        needed = self._asked_for.minimumSizeHint().width()
        needed += self._side_bar.sizeHint().width() + 2
        usual = min(36 * step(), self.width() * 3 // 10)
        self._side.setFixedWidth(max(usual, min(needed, self.width() // 2)))
        # Else the middle would stand beside its place until the next events.
        layout = self.layout()
        if layout is not None:
            layout.activate()

    def redraw(self) -> None:
        """The theme or the size of the text has changed."""
        self._fit()
        self.table.fit()
        if self._growing is not None:
            self._growing.target.fit()
        self.update()

    # The book -----------------------------------------------------------------------------------

    @property
    def _net(self) -> PedigreeNetwork | None:
        return self._opened.net if self._opened is not None else None

    def show_opened(self, opened: Opened | None) -> None:
        """Another book, or none."""
        self.cancel()
        self._errands.drop(_ONE)
        self._opened, self.ranked, self._asked, self._picked = opened, None, None, ()
        net = self._net
        name = first_set(net, (), 500) if net is not None else "kept"
        self.candidates.each(lambda choice: choice.show_network(net, name))
        self.wishes.show_book(net.book if net is not None else None)
        self._restore()
        self.table.chosen = False
        self._show_rows(())
        self.detail.show_row(None)
        self._tell_wishes()
        self._later()

    def book_changed(self, opened: Opened, change: Change) -> None:
        """The book after an edit: wishes, limits and the chosen pair stay."""
        self._opened = opened
        self.ranked = None
        self.candidates.each(lambda choice: choice.show_network(opened.net))
        self.wishes.show_book(opened.net.book, keep=True)
        self._tell_wishes()
        self._later()

    def take_picked(self, codes: tuple[str, ...]) -> None:
        """Plants picked on another page become the candidates."""
        self._picked = codes
        if len(codes) >= 2:
            self.candidates.seeds.choose("picked")
        self.candidates.each(lambda choice: choice.take_picked(codes))

    def showEvent(self, event: QShowEvent) -> None:
        super().showEvent(event)
        if self._stale:
            self.ask()

    def _later(self) -> None:
        self._stale = True
        if self.isVisible():
            self.ask()

    def go_to(self, part: str) -> None:
        """Turn to 'pairs', 'several' or 'growing'; 'growing:A:B' asks about two parents."""
        name, _, pair = part.partition(":")
        if name in _TABS:
            self.turn_to(name)
        seed, _, pollen = pair.partition(":")
        if name == "growing" and seed and pollen:
            self.growing.show_parents(seed, pollen)

    def turn_to(self, name: str) -> None:
        """Show one of the three parts."""
        self.tabs[name].setChecked(True)
        if name == "growing":
            panel = self._growing_frame()
            self.stack.setCurrentWidget(self._parts[name])
            panel.ask()
        elif name == "several":
            _ = self.several
        self.stack.setCurrentWidget(self._parts[name])

    # What is kept of the book -------------------------------------------------------------------

    def _keep(self) -> None:
        """Remember wishes, limits and weights for the book, without a word about the candidates."""
        if self._preferences is not None and self._opened is not None:
            self._preferences.set_parents(
                self._opened.path,
                {
                    "wishes": self.wishes.state(),
                    "limits": self.limits.state(),
                    "weights": self.weights.state(),
                },
            )

    def _restore(self) -> None:
        """Take up wishes, limits and weights where they were left; the usual ones at first."""
        held: dict[str, object] = {}
        if self._preferences is not None and self._opened is not None:
            held = self._preferences.parents(self._opened.path)
        self.wishes.restore(held.get("wishes"))
        self.limits.restore(held.get("limits"))
        self.weights.restore(held.get("weights"))

    # The ranking --------------------------------------------------------------------------------

    def question(self) -> RankQuestion:
        """What the side asks for.

        Raises
        ------
        Fault : a field that cannot be read
        """
        apart = self.candidates.apart.isChecked()
        return RankQuestion(
            self.candidates.seeds.question(),
            self.candidates.pollens.question() if apart else None,
            tuple(self.wishes.wishes()),
            self.weights.weights() or Weights(),
            self.limits.limits(),
            self.limits.unprotected.isChecked(),
        )

    def ask(self) -> None:
        """Rank the pairs."""
        self._delay.stop()
        net = self._net
        if net is None or not self.isVisible():
            self._stale = net is not None
            return
        self._stale = False
        try:
            question = self.question()
        except Fault as fault:
            self._failed(fault)
            return
        tick = self._errands.tick
        answers = self.ranked.answers if self.ranked is not None else None
        self._asked = question
        self.work.begin(self.tr("Weighing the pairs …"))
        self._errands.ask(
            _RANK, lambda: rank(net, question, tick, answers), self._show, self._failed
        )

    def cancel(self) -> None:
        """Give the ranking under way up."""
        self._delay.stop()
        self._errands.drop(_RANK)
        self.work.end()

    def _failed(self, fault: Fault) -> None:
        self.work.end()
        self._show_rows(())
        advice = self.candidates.seeds.advice()
        self._say_empty(f"{fault.sentence()} {advice}")

    def _say_empty(self, words: str) -> None:
        self.found.setText("")
        self.empty.setText(words)
        self.empty.setVisible(bool(words))
        self.table.setVisible(not words)

    def _show(self, ranked: Ranked) -> None:
        self.work.end()
        self.ranked = ranked
        self._show_rows(ranked.rows)
        if not ranked.rows:
            told = self.tr("No pair keeps to the limits. Loosen one, or add candidates.")
            self._say_empty(" ".join([told, *ranked.notes]))
            return
        self._say_empty("")
        net = self._net
        assert net is not None
        listed = len(ranked.rows)
        said = [
            self.tr("{} make {}; {} keep to the limits, the best {} are listed.").format(
                count(ranked.candidates, self.tr("candidate"), self.tr("candidates")),
                count(ranked.pairs, self.tr("pair"), self.tr("pairs")),
                number(ranked.kept),
                number(listed),
            ),
            *ranked.notes,
        ]
        self.found.setText(" ".join(said))

    def _show_rows(self, rows: Sequence[PairRow]) -> None:
        shown = self.detail.row if self.table.chosen else None
        keep = (shown.seed, shown.pollen) if shown is not None else None
        kinds = [wish.kind for wish in self._asked.wanted] if self._asked is not None else []
        self.table.show_rows(rows, keep, kinds)
        if self._several is not None:
            self._several.show_rows(self._net, rows)
        if not rows and self.ranked is not None:
            self.detail.show_row(None)

    def _show_row(self, row: PairRow) -> None:
        opened, asked = self._opened, self._asked
        if opened is not None and asked is not None:
            self.detail.show_row(row, opened.net, opened.problems, asked.weights)

    def weigh(self, seed: str, pollen: str) -> None:
        """Weigh a pair in the direction that is given, listed or not."""
        net, asked = self._net, self._asked
        if net is None or asked is None:
            return
        for field, code in ((self.seed, seed), (self.pollen, pollen)):
            if code not in net.book.plants:
                field.say(self.tr("Type the code of a plant of this book."), wrong=True)
                field.setFocus()
                return
        answers = self.ranked.answers if self.ranked is not None else {}
        self._errands.ask(
            _ONE,
            lambda: weigh_pair(net, seed, pollen, asked, answers),
            self._show_row,
            lambda fault: self.detail.say(fault.sentence()),
        )

    # What is done with a pair -------------------------------------------------------------------

    def _tell_wishes(self) -> None:
        if self._growing is not None:
            self._growing.show_book(self._net, self.wishes.of_genes())

    def grow(self, seed: str, pollen: str) -> None:
        """How many to grow of a pair."""
        self.turn_to("growing")
        self.growing.show_parents(seed, pollen)

    def _try(self, seed: str, pollen: str) -> None:
        if self._try_cross is not None:
            self._try_cross(seed, pollen)

    def plan(self, seed: str, pollen: str, both: bool) -> None:
        """Write the cross into the book as planned, in one direction or both."""
        sign = "⇄" if both else "×"
        self._record(
            self.tr("planning {}").format(f"{seed} {sign} {pollen}"),
            [(seed, pollen)],
            both,
            self.detail.say,
        )

    def plan_all(self, pairs: Sequence[tuple[str, str]]) -> None:
        """Write several crosses into the book as planned, as one edit."""
        words = count(len(pairs), self.tr("cross"), self.tr("crosses"))
        self._record(self.tr("planning {}").format(words), pairs, False, self._said_of_all)

    def _said_of_all(self, words: str) -> None:
        self.several.say(words)

    def _record(
        self,
        words: str,
        pairs: Sequence[tuple[str, str]],
        both: bool,
        say: Callable[[str], None],
    ) -> None:
        from pedigreeview.book.recording.crosses import record_cross

        today = datetime.date.today()
        book = self._desk.book
        known = set(book.crosses) if book is not None else set()

        def edit(edit: Edit) -> Any:
            found: list[Any] = []
            for seed, pollen in pairs:
                found += record_cross(edit, seed, pollen, today=today, both_ways=both)
            return found

        def done(crosses: Any) -> None:
            new = [cross.cross for cross in crosses if cross.cross not in known]
            old = [cross.cross for cross in crosses if cross.cross in known]
            said = []
            if new:
                said.append(
                    self.tr("In the book as planned: {}. Undo (Ctrl+Z) takes it back.").format(
                        ", ".join(new)
                    )
                )
            if old:
                said.append(self.tr("In the book already: {}.").format(", ".join(old)))
            say(" ".join(said))

        self._desk.record(words, edit, done)
