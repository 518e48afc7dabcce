"""The Pedigree page: the picture, the plant's card in it, the index drawer and the pair slip."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from html import escape
from typing import TYPE_CHECKING, Any, Literal

from PySide6.QtCore import QPoint, QRect, QRectF, QSize, Qt, QTimer, Signal
from PySide6.QtGui import QGuiApplication, QResizeEvent
from PySide6.QtWidgets import (
    QFrame,
    QHBoxLayout,
    QLabel,
    QMenu,
    QSizePolicy,
    QSpinBox,
    QVBoxLayout,
    QWidget,
)

from pedigreeview.book.faults import Fault
from pedigreeview.drawing.theme import theme
from pedigreeview.drawing.view import Look, choose
from pedigreeview.window.answers import PairAnswer, ask_pair, ask_paths, ask_plant
from pedigreeview.window.canvas import PedigreeCanvas
from pedigreeview.window.card import Card
from pedigreeview.window.errands import Errands
from pedigreeview.window.index_drawer import IndexDrawer
from pedigreeview.window.labels import Flow, LinkLabel, column, plain_button, sentence
from pedigreeview.window.pair_slip import PairSlip
from pedigreeview.window.preferences import Preferences
from pedigreeview.window.style import current_name, step
from pedigreeview.window.walking import first_focus, step_from
from pedigreeview.window.words import link, named

if TYPE_CHECKING:
    from pedigreeview.network import PedigreeNetwork
    from pedigreeview.window.find import PlantFinder

__all__ = ["PedigreePage"]

_ON_PATHS = 60
_GLIDE = 240
"""Milliseconds after which a changed picture has come to rest."""


@dataclass(slots=True)
class _Shown:
    """What the picture shows at the moment."""

    net: PedigreeNetwork
    focus: str | None = None
    selected: str = ""
    unfolded: frozenset[str] = frozenset()
    pins: tuple[str, ...] = ()
    also: frozenset[str] = frozenset()
    """Plants on the paths between the pair, shown whatever the depth."""
    mate_of: str = ""
    mate: str = ""


class _Stage(QWidget):
    """Holds the canvas, with the card above it."""

    resized = Signal()

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self.resized.emit()


class PedigreePage(QWidget):
    """The picture and everything that lies on and beside it."""

    visited = Signal(str, str)
    """Focus ('' for the whole book) and the plant whose card lies open."""
    said = Signal(str)
    """A short sentence for the foot of the window."""
    pins_changed = Signal(object)
    came_to_rest = Signal()
    """The picture has stopped moving and the card lies beside its plant."""

    def __init__(self, errands: Errands, preferences: Preferences) -> None:
        super().__init__()
        self.setObjectName("page")
        self._errands = errands
        self._preferences = preferences
        self._shown: _Shown | None = None
        self._placed: Any = None
        self._view: Any = None
        self._clicked_code = ""
        self._orientation: Literal["down", "right"] = "down"
        outer = column()
        self.setLayout(outer)
        self.canvas = PedigreeCanvas()
        self.canvas.setAccessibleName(self.tr("Picture of the pedigree"))
        self.drawer = IndexDrawer()
        self.slip = PairSlip()
        outer.addWidget(self._tools())
        row = QHBoxLayout()
        row.setSpacing(0)
        self._stage = _Stage()
        stage = QVBoxLayout(self._stage)
        stage.setContentsMargins(0, 0, 0, 0)
        stage.addWidget(self.canvas)
        row.addWidget(self.drawer)
        row.addWidget(self._stage, 1)
        row.addWidget(self.slip)
        outer.addLayout(row, 1)
        self.card = Card(self._stage)
        self._stage.resized.connect(self._resized)
        self._settle = QTimer(self)
        self._settle.setSingleShot(True)
        self._settle.setInterval(_GLIDE)
        self._settle.timeout.connect(self._come_to_rest)
        self._connect()
        self.fit_sides()

    def sizeHint(self) -> QSize:
        return QSize(80 * step(), 60 * step())

    def _connect(self) -> None:
        self.canvas.focus_wanted.connect(self.focus_on)
        self.canvas.selected.connect(self._clicked)
        self.canvas.menu_wanted.connect(self._menu)
        self.canvas.pin_wanted.connect(self.pin)
        self.canvas.unfold_wanted.connect(self.unfold)
        self.canvas.fold_wanted.connect(self.unfold)
        self.canvas.walk_wanted.connect(self.walk)
        self.card.plant_wanted.connect(self.focus_on)
        self.card.pin_wanted.connect(self.pin)
        self.card.closed.connect(self.canvas.setFocus)
        self.drawer.plant_wanted.connect(self.focus_on)
        self.slip.plant_wanted.connect(self.focus_on)
        self.slip.unpin_wanted.connect(self.pin)
        self.slip.lit.connect(self._light)
        self.slip.pair_chosen.connect(self._ask_pair)
        self.slip.answered.connect(self._bring_in)

    def _tools(self) -> QWidget:
        s = step()
        tools = QFrame()
        tools.setObjectName("tools")
        outer = column(max(2, s // 3))
        outer.setContentsMargins(s, s // 2, s, s // 2)
        tools.setLayout(outer)
        flow = Flow(s)
        self.index_button = plain_button(self.tr("Index"), self.tr("Pull out the index"))
        self.index_button.setCheckable(True)
        self.index_button.toggled.connect(self.drawer.setVisible)
        self.up = self._spin(self.tr("Generations up"), self._preferences.generations_up)
        self.down = self._spin(self.tr("Generations down"), self._preferences.generations_down)
        self.up.valueChanged.connect(self._depth_changed)
        self.down.valueChanged.connect(self._depth_changed)
        self.nearer = plain_button("+", self.tr("Nearer"), lambda: self.canvas.zoom_by(1.25))
        self.further = plain_button("−", self.tr("Further"), lambda: self.canvas.zoom_by(0.8))
        self.fit_button = plain_button(self.tr("Fit"), self.tr("Fit the picture"), self.fit)
        self.whole_button = plain_button(
            self.tr("Whole book"), self.tr("Show the whole book, or the focus again")
        )
        self.whole_button.setCheckable(True)
        self.whole_button.clicked.connect(self._whole_clicked)
        self.turn_button = plain_button(
            self.tr("Sideways"), self.tr("Generations from left to right, or top to bottom again")
        )
        self.turn_button.setCheckable(True)
        self.turn_button.clicked.connect(self._turn_clicked)
        flow.addWidget(self.index_button)
        for text, spin in ((self.tr("Up"), self.up), (self.tr("Down"), self.down)):
            flow.addWidget(_pair(text, spin))
        for widget in (
            self.further,
            self.fit_button,
            self.nearer,
            self.whole_button,
            self.turn_button,
        ):
            flow.addWidget(widget)
        self.trail = LinkLabel("", "soft")
        self.trail.setAccessibleName(self.tr("Plants visited"))
        self.trail.setWordWrap(False)
        self.trail.setSizePolicy(QSizePolicy.Policy.Preferred, QSizePolicy.Policy.Fixed)
        self.trail.followed.connect(self.focus_on)
        self.trail.setMinimumHeight(self.index_button.sizeHint().height())
        flow.addWidget(self.trail)
        outer.addLayout(flow)
        self.hidden_note = sentence("", "warn")
        self.hidden_note.hide()
        outer.addWidget(self.hidden_note)
        return tools

    def _spin(self, name: str, value: int) -> QSpinBox:
        spin = QSpinBox()
        spin.setRange(0, 30)
        spin.setValue(value)
        spin.setAccessibleName(name)
        spin.setToolTip(name)
        spin.setKeyboardTracking(False)
        return spin

    def fit_sides(self) -> None:
        """Give drawer and slip the width that the size of the text asks for, within the page."""
        s, width = step(), self.width()
        self.drawer.setFixedWidth(min(30 * s, width * 3 // 10))
        self.slip.setFixedWidth(min(44 * s, width * 4 // 10))

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self.fit_sides()

    # The book -----------------------------------------------------------------------------------

    @property
    def net(self) -> PedigreeNetwork | None:
        """The network on show."""
        return self._shown.net if self._shown is not None else None

    @property
    def focus(self) -> str:
        """The plant in focus; '' for the whole book."""
        return (self._shown.focus or "") if self._shown is not None else ""

    @property
    def selected(self) -> str:
        """The plant that is marked, whose card lies open."""
        return self._shown.selected if self._shown is not None else ""

    @property
    def pins(self) -> tuple[str, ...]:
        """The pinned plants, in the order of pinning."""
        return self._shown.pins if self._shown is not None else ()

    def show_network(self, net: PedigreeNetwork, finder: PlantFinder, focus: str = "") -> None:
        """Show another book."""
        for kind in ("plant", "pair", "paths", "whole"):
            self._errands.drop(kind)
        self._shown = _Shown(net)
        self._placed = self._view = None
        self.card.moved = False
        self.card.hide()
        self.drawer.set_finder(finder)
        self.slip.pair = None
        self.slip.show_pins(net, [])
        self.canvas.set_pins(())
        code = focus if focus in net.book.plants else first_focus(net)
        if code:
            self.focus_on(code)

    @property
    def orientation(self) -> Literal["down", "right"]:
        """Where the generations run to."""
        return self._orientation

    def look(self) -> Look:
        """What the picture shows, for drawing it elsewhere."""
        shown = self._shown
        assert shown is not None
        return Look(
            focus=shown.focus,
            up=self.up.value(),
            down=self.down.value(),
            unfolded=shown.unfolded,
            pins=shown.pins,
            also=shown.also,
        )

    def focus_on(self, code: str) -> None:
        """Put a plant in focus and open its card."""
        self._clicked_code = ""
        self._go(code, code)

    def go(self, focus: str, selected: str) -> None:
        """Go back to a place visited before; says nothing of it."""
        self._go(focus or None, selected, say=False)

    def _go(self, focus: str | None, selected: str, *, say: bool = True) -> None:
        shown = self._shown
        if shown is None or (focus is not None and focus not in shown.net.book.plants):
            return
        same = shown.focus == focus and self._placed is not None
        shown.focus, shown.selected = focus, selected
        if not same:
            shown.unfolded = frozenset()
            self.slip.put_out()
            self._draw()
        self._mark(say=say)

    def _clicked(self, code: str) -> None:
        """A click marks the plant, and most clicks then ask for the focus: one visit, not two."""
        self._clicked_code = code
        QTimer.singleShot(0, self, self._settle_click)

    def _settle_click(self) -> None:
        code, self._clicked_code = self._clicked_code, ""
        if code and code != self.selected:
            self.select(code)

    def select(self, code: str) -> None:
        """Mark a plant and open its card; one outside the picture comes into focus."""
        shown = self._shown
        if shown is None or code not in shown.net.book.plants:
            return
        if self._view is not None and code not in self._view.shown():
            self.focus_on(code)
            return
        shown.selected = code
        self._mark()

    def _mark(self, *, say: bool = True) -> None:
        shown = self._shown
        assert shown is not None
        code = shown.selected
        self.whole_button.setChecked(shown.focus is None)
        if code:
            self.canvas.set_selected(code)
            if shown.focus != code:
                self.canvas.show_code(code)
            self.drawer.mark(code)
            self.show_card(code)
        if say:
            self.visited.emit(shown.focus or "", code)

    def redraw(self) -> None:
        """Draw again, as after a change of theme."""
        self.canvas.set_theme(theme(current_name()))
        if self._shown is not None and self.selected and self.card.isVisible():
            self.show_card(self.selected)
            self.slip.show_pins(self._shown.net, list(self.pins))

    def _draw(self) -> None:
        from pedigreeview.drawing.placing import place

        shown = self._shown
        assert shown is not None
        self.canvas.set_theme(theme(current_name()))
        if shown.focus is None:
            self._draw_whole()
            return
        self._errands.drop("whole")
        view = choose(shown.net, self.look())
        self._take(view, place(view, self._placed, orientation=self._orientation))

    def _take(self, view: Any, placed: Any, *, fit: bool = False) -> None:
        first = self._placed is None or fit
        self._view, self._placed = view, placed
        # The card of the first focus comes a moment later: the picture leaves room for it.
        self._leave_room(self.card.wanted_size().width() if first and not fit else None)
        self.canvas.show_placed(placed, animate=not first)
        if fit:
            self.canvas.fit()
        self.canvas.set_pins(self.pins)
        words = view.hidden_words()
        self.hidden_note.setText(words)
        self.hidden_note.setVisible(bool(words))
        if self.selected:
            self.canvas.set_selected(self.selected)
        self._lay_card()
        # The picture glides to its new place; the card follows when it has come to rest.
        self._settle.start()

    def _draw_whole(self) -> None:
        shown = self._shown
        assert shown is not None
        net, look, orientation = shown.net, self.look(), self._orientation
        self.said.emit(self.tr("Laying out the whole book …"))

        def work() -> Any:
            from pedigreeview.drawing.placing import place_in_worker

            view = choose(net, look)
            return view, place_in_worker(view, orientation=orientation, tick=self._errands.tick)

        def done(answer: Any) -> None:
            self.said.emit("")
            self._take(*answer, fit=True)

        def failed(fault: Fault) -> None:
            self.said.emit(fault.sentence())
            if self.selected:
                self.focus_on(self.selected)

        self._errands.ask("whole", work, done, failed)

    # Depth, folds and pins ----------------------------------------------------------------------

    def _depth_changed(self) -> None:
        self._preferences.generations_up = self.up.value()
        self._preferences.generations_down = self.down.value()
        if self._shown is not None and self._shown.focus is not None:
            self._draw()

    def _whole_clicked(self, whole: bool) -> None:
        self.show_whole(whole)

    def _turn_clicked(self, sideways: bool) -> None:
        self.turn(sideways)

    def turn(self, sideways: bool) -> None:
        """Let the generations run from left to right, or from top to bottom."""
        self._orientation = "right" if sideways else "down"
        self.turn_button.setChecked(sideways)
        self._placed = None
        if self._shown is not None:
            self._draw()

    def show_whole(self, whole: bool) -> None:
        """Show the whole book, or the marked plant in focus."""
        shown = self._shown
        if shown is None:
            return
        code = shown.selected or first_focus(shown.net)
        self._go(None if whole else code, code)

    def unfold(self, key: str) -> None:
        """Open a fold, or close it again if it is open; also 'up:CODE' and 'down:CODE'."""
        shown = self._shown
        if shown is None:
            return
        shown.unfolded = shown.unfolded ^ {key}
        if shown.focus is not None:
            self._draw()

    def pin(self, code: str) -> None:
        """Pin a plant, or take its pin out."""
        shown = self._shown
        if shown is None or code not in shown.net.book.plants:
            return
        if code in shown.pins:
            shown.pins = tuple(held for held in shown.pins if held != code)
        else:
            shown.pins = (*shown.pins, code)
        if len(shown.pins) < 2:
            shown.also = frozenset()
        self.canvas.set_pins(shown.pins)
        if shown.focus is not None:
            self._draw()
        if len(shown.pins) < 2:
            self._errands.drop("pair")
            self._errands.drop("paths")
        self.slip.show_pins(shown.net, list(shown.pins))
        if self.card.isVisible():
            self.show_card(self.card.code)
        self.pins_changed.emit(shown.pins)

    def _ask_pair(self, a: str, b: str) -> None:
        shown = self._shown
        assert shown is not None
        net = shown.net
        self._errands.drop("paths")

        def come(answer: PairAnswer) -> None:
            self.slip.show_answer(answer)
            if not answer.withheld:
                self._errands.ask("paths", lambda: ask_paths(net, a, b), self.slip.show_paths)

        self._errands.ask("pair", lambda: ask_pair(net, a, b), come)

    def _bring_in(self, paths: list[tuple[str, ...]]) -> None:
        """Show the plants on the paths of the pair, as many as can be read."""
        shown = self._shown
        assert shown is not None
        on_paths = dict.fromkeys(code for path in paths for code in path)
        known = [code for code in on_paths if code in shown.net.book.plants]
        shown.also = frozenset(known[:_ON_PATHS])
        if shown.focus is not None and not shown.also <= self._view.shown():
            self._draw()

    def _light(self, paths: list[tuple[str, ...]]) -> None:
        self.canvas.light(paths)

    def fit(self) -> None:
        """Fit the picture into the window."""
        self._leave_room()
        self.canvas.fit()
        self._settle.start()

    # The card -----------------------------------------------------------------------------------

    def show_card(self, code: str) -> None:
        """Open the card of a plant; its numbers follow."""
        shown = self._shown
        assert shown is not None
        net = shown.net
        self.card.show_plant(net, code, pinned=code in shown.pins)
        self.card.show()
        self.card.raise_()
        self._lay_card()
        self._errands.ask(
            "plant",
            lambda: ask_plant(net, code),
            lambda answer: self.card.show_numbers(net, answer),
        )

    def _come_to_rest(self) -> None:
        self._lay_card()
        self.came_to_rest.emit()

    def _resized(self) -> None:
        self._lay_card()
        self._settle.start()

    def _lay_card(self) -> None:
        if not self.card.isVisible():
            return
        tag = self.canvas.rect_of(self.card.code)
        if not tag.isValid():
            tag = QRect(self.canvas.viewport().rect().center(), QSize(1, 1))
        shift = self.canvas.viewport().mapTo(self._stage, QPoint(0, 0))
        others = [
            rect.translated(shift)
            for rect in self.canvas.rects_shown()
            if not rect.toRect().intersects(tag)
        ]
        self.card.lie_beside(QRectF(tag.translated(shift)), others)

    def _leave_room(self, width: int | None = None) -> None:
        """Tell the canvas how much of it the card takes, unless the card was laid by hand."""
        if width is None:
            width = self.card.width() if self.card.isVisible() else 0
        self.canvas.set_covered(0 if self.card.moved or not width else width + 4 * step())

    def show_trail(self, codes: list[str]) -> None:
        """The plants visited last, as links."""
        shown = [link(code) for code in codes[:-1]] + [f"<b>{escape(c)}</b>" for c in codes[-1:]]
        self.trail.setText(" › ".join(shown) if len(shown) > 1 else "")

    # Walking ------------------------------------------------------------------------------------

    def walk(self, way: str) -> None:
        """One step by keys from the marked plant."""
        shown = self._shown
        if shown is None or not shown.selected:
            return
        code = shown.selected
        if way == "focus":
            self.focus_on(code)
        elif way == "pin":
            self.pin(code)
        elif way in ("unfold", "fold"):
            self._fold(code, way == "unfold")
        elif way in ("left", "right"):
            self._arrive(self.canvas.neighbour(code, 1 if way == "right" else -1), way)
        elif way == "mate":
            asked = shown.mate_of if shown.mate == code else code
            found = step_from(shown.net, asked, "mate", shown.mate if asked != code else "")
            shown.mate_of, shown.mate = asked, found
            self._arrive(found, way)
        else:
            self._arrive(step_from(shown.net, code, way), way)

    def _arrive(self, code: str, way: str) -> None:
        if code:
            self.said.emit("")
            self.select(code)
            self.canvas.setFocus()
            return
        shown = self._shown
        assert shown is not None
        words = {
            "seed": self.tr("No seed parent is recorded for {}."),
            "pollen": self.tr("No pollen parent is recorded for {}."),
            "progeny": self.tr("No progeny is recorded for {}."),
            "mate": self.tr("{} was crossed with no other plant."),
            "reciprocal": self.tr("No reciprocal cross is recorded for {}."),
            "left": self.tr("{} is the first in its row."),
            "right": self.tr("{} is the last in its row."),
        }
        self.said.emit(words[way].format(shown.selected))

    def _fold(self, code: str, unfold: bool) -> None:
        view = self._view
        block = next((b for b in view.blocks if b.key == view.block_of(code)), None)
        shown = self._shown
        assert shown is not None
        if block is None:
            return
        if unfold:
            keys = [block.key] if block.sort in ("pack", "chain") else []
            keys += [f"up:{code}"] if block.more_up else []
            keys += [f"down:{code}"] if block.more_down else []
            keys = [key for key in keys if key not in shown.unfolded]
        else:
            keys = [k for k in (block.fold, f"up:{code}", f"down:{code}") if k in shown.unfolded]
        if keys:
            shown.unfolded = shown.unfolded ^ frozenset(keys)
            self._draw()

    # The menu of a tag --------------------------------------------------------------------------

    def _menu(self, code: str, place: QPoint) -> None:
        shown = self._shown
        if shown is None:
            return
        menu = QMenu(self)
        menu.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        entries: list[tuple[str, Callable[[], object]]] = []
        if code:
            pinned = code in shown.pins
            entries = [
                (
                    self.tr("Focus on {}").format(named(shown.net.book, code)),
                    lambda: self.focus_on(code),
                ),
                (self.tr("Open its card"), lambda: self.select(code)),
                (
                    self.tr("Take the pin out") if pinned else self.tr("Pin to compare"),
                    lambda: self.pin(code),
                ),
                (self.tr("Unfold more of its relatives"), lambda: self._fold(code, True)),
                (self.tr("Fold its relatives"), lambda: self._fold(code, False)),
                (self.tr("Copy its code"), lambda: QGuiApplication.clipboard().setText(code)),
            ]
        entries += [
            (self.tr("Fit the picture"), self.fit),
            (
                self.tr("Show the whole book")
                if shown.focus is not None
                else self.tr("Show the marked plant in focus"),
                lambda: self.show_whole(shown.focus is not None),
            ),
        ]
        for text, act in entries:
            menu.addAction(text).triggered.connect(lambda _=False, act=act: act())
        menu.popup(place)


def _pair(text: str, widget: QWidget) -> QWidget:
    holder = QWidget()
    layout = QHBoxLayout(holder)
    layout.setContentsMargins(0, 0, 0, 0)
    layout.setSpacing(max(2, step() // 2))
    label = QLabel(text)
    label.setBuddy(widget)
    layout.addWidget(label)
    layout.addWidget(widget)
    return holder
