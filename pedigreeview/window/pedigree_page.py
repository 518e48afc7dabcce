"""The Pedigree page: the picture, the plant's card in it, the index drawer and the pair slip."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from html import escape
from typing import TYPE_CHECKING, Any, Literal

from PySide6.QtCore import QSize, QTimer, Signal
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import QFrame, QHBoxLayout, QWidget

from pedigreeview.book.faults import Fault
from pedigreeview.book.problems import Problem
from pedigreeview.drawing.theme import theme
from pedigreeview.drawing.view import Look, choose
from pedigreeview.window.answers import PlantAnswer
from pedigreeview.window.asking import Asking
from pedigreeview.window.canvas import PedigreeCanvas
from pedigreeview.window.errands import Errands
from pedigreeview.window.index_drawer import IndexDrawer
from pedigreeview.window.labels import column, sentence
from pedigreeview.window.pair_slip import PairSlip
from pedigreeview.window.preferences import Preferences
from pedigreeview.window.stage import LookedAt, Stage
from pedigreeview.window.style import current_name, step
from pedigreeview.window.tag_menu import show_tag_menu
from pedigreeview.window.tool_row import Tools
from pedigreeview.window.walking import first_focus, fold_keys, no_step_words, step_from
from pedigreeview.window.why_panel import Path
from pedigreeview.window.words import link

if TYPE_CHECKING:
    from pedigreeview.network import Explanation, PedigreeNetwork
    from pedigreeview.window.find import PlantFinder

__all__ = ["PedigreePage"]

_ON_PATHS = 60
_GLIDE = 240
"""Milliseconds after which a changed picture has come to rest."""


@dataclass(slots=True)
class _Shown:
    """What the picture shows at the moment."""

    net: PedigreeNetwork
    asking: Asking
    focus: str | None = None
    selected: str = ""
    unfolded: frozenset[str] = frozenset()
    pins: tuple[str, ...] = ()
    also: frozenset[str] = frozenset()
    """Plants on the paths between the pair, shown whatever the depth."""
    also_of_card: frozenset[str] = frozenset()
    """Plants on the paths that explain the number on the card."""
    mate_of: str = ""
    mate: str = ""


class PedigreePage(QWidget):
    """The picture and everything on and beside it."""

    visited = Signal(str, str)
    """Focus ('' for the whole book) and the plant whose card lies open."""
    said = Signal(str)
    """A short sentence for the foot of the window."""
    pins_changed = Signal(object)
    checks_wanted = Signal()
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
        self._lit: list[Path] = []
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
        self._stage = Stage(self.canvas)
        row.addWidget(self.drawer)
        row.addWidget(self._stage, 1)
        row.addWidget(self.slip)
        outer.addLayout(row, 1)
        self.key, self.card = self._stage.key, self._stage.card
        self._stage.resized.connect(self._resized)
        self._settle = QTimer(self)
        self._settle.setSingleShot(True)
        self._settle.setInterval(_GLIDE)
        self._settle.timeout.connect(self._come_to_rest)
        self._connect()
        self.fit_sides()
        self.canvas.set_text_scale(preferences.text_size / 100)

    def sizeHint(self) -> QSize:
        return QSize(80 * step(), 60 * step())

    def _connect(self) -> None:
        self.canvas.focus_wanted.connect(self.focus_on)
        self.canvas.selected.connect(self._clicked)
        self.canvas.menu_wanted.connect(lambda code, at: show_tag_menu(self, code, at))
        self.canvas.pin_wanted.connect(self.pin)
        self.canvas.unfold_wanted.connect(self.unfold)
        self.canvas.fold_wanted.connect(self.unfold)
        self.canvas.walk_wanted.connect(self.walk)
        self.card.plant_wanted.connect(self.focus_on)
        self.card.pin_wanted.connect(self.pin)
        self.card.laid_wanted.connect(self._lay_card)
        self.card.laid_wanted.connect(lambda: self._leave_room())
        self.card.checks_wanted.connect(self.checks_wanted)
        self.slip.checks_wanted.connect(self.checks_wanted)
        self.key.closed.connect(lambda: self.key_button.setChecked(False))
        self.card.grew.connect(self._lay_card)
        self.card.closed.connect(self.canvas.setFocus)
        self.card.closed.connect(self._forget_why)
        self.card.why_wanted.connect(self._ask_why)
        self.card.lit.connect(lambda paths: self._light(paths or self.slip.kept))
        self.drawer.plant_wanted.connect(self.focus_on)
        self.drawer.left.connect(self._leave_index)
        self.slip.plant_wanted.connect(self.focus_on)
        self.slip.unpin_wanted.connect(self.pin)
        self.slip.lit.connect(self._light)
        self.slip.pair_chosen.connect(lambda a, b: self._asking().pair(a, b))
        self.slip.coancestry_why_wanted.connect(lambda a, b: self._asking().coancestry_why(a, b))
        self.slip.progeny_why_wanted.connect(lambda a, b: self._asking().progeny_why(a, b))
        self.slip.answered.connect(self._bring_in_pair)

    def _tools(self) -> QWidget:
        s = step()
        frame = QFrame()
        frame.setObjectName("tools")
        outer = column(max(2, s // 3))
        outer.setContentsMargins(s, s // 2, s, s // 2)
        frame.setLayout(outer)
        self.tools = tools = Tools(self._preferences)
        self.index_button, self.whole_button = tools.index, tools.whole
        self.turn_button, self.key_button = tools.sideways, tools.key
        self.nearer, self.further = tools.nearer, tools.further
        self.up, self.down = tools.up, tools.down
        tools.index.toggled.connect(self._index_toggled)
        for spin in (tools.up, tools.down):
            spin.valueChanged.connect(self._depth_changed)
        for button, factor in ((tools.nearer, 1.25), (tools.further, 0.8)):
            button.clicked.connect(lambda _=False, factor=factor: self.canvas.zoom_by(factor))
        tools.fit.clicked.connect(self.fit)
        tools.whole.clicked.connect(self.show_whole)
        tools.sideways.clicked.connect(self.turn)
        tools.key.toggled.connect(self._key_toggled)
        tools.trail.followed.connect(self.focus_on)
        outer.addWidget(tools)
        self.hidden_note = sentence("", "soft")
        self.hidden_note.hide()
        outer.addWidget(self.hidden_note)
        return frame

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

    def show_network(
        self,
        net: PedigreeNetwork,
        finder: PlantFinder,
        focus: str = "",
        problems: Sequence[Problem] = (),
    ) -> None:
        """Show another book, with the problems found in it."""
        if self._shown is not None:
            self._shown.asking.drop()
        self._errands.drop("whole")
        self._shown = _Shown(net, Asking(self._errands, self.slip, net, problems))
        self._placed = self._view = None
        self.card.moved, self.card.wish = False, ""
        self.card.hide()
        self.key_button.setChecked(False)
        self.drawer.set_finder(finder)
        self.slip.pair = None
        self._show_pins()
        self.canvas.set_pins(())
        code = focus if focus in net.book.plants else first_focus(net)
        self.canvas.show_placed(None)
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
            also=shown.also | shown.also_of_card,
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
        """Draw again, as after a change of theme or of the size of the text."""
        self.canvas.set_text_scale(self._preferences.text_size / 100)
        self.canvas.set_theme(theme(current_name()))
        if self._shown is not None and self.selected and self.card.isVisible():
            self.show_card(self.selected)
            self._show_pins()
        self.tools.arrange()

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
        self._leave_room(self.card.wanted_width() if first and not fit else None)
        self.canvas.show_placed(placed, animate=not first)
        if first and view.focus:
            self.canvas.show_code(view.focus)
        if fit:
            self.canvas.fit()
        self.canvas.set_pins(self.pins)
        words = view.hidden_words()
        self.hidden_note.setText(words)
        self.hidden_note.setVisible(bool(words))
        if self.selected:
            self.canvas.set_selected(self.selected)
        self._key_toggled()
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

    def _asking(self) -> Asking:
        assert self._shown is not None
        return self._shown.asking

    # Depth, folds and pins ----------------------------------------------------------------------

    def _depth_changed(self) -> None:
        self._preferences.generations_up = self.up.value()
        self._preferences.generations_down = self.down.value()
        if self._shown is not None and self._shown.focus is not None:
            self._draw()

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
            shown.asking.drop_pair()
        self.card.wish = ""
        if code in shown.pins:
            self.index_button.setChecked(False)
        self._show_pins()
        if self.card.isVisible():
            self.show_card(self.card.code)
        self.pins_changed.emit(shown.pins)

    def _show_pins(self) -> None:
        shown = self._shown
        assert shown is not None
        self.slip.show_pins(shown.net, list(shown.pins))
        self._share_sides()

    def _share_sides(self) -> None:
        """Index and slip take turns, so that the picture keeps its room."""
        drawer = self.index_button.isChecked()
        self.drawer.setVisible(drawer)
        self.slip.setVisible(bool(self.pins) and not drawer)

    def _index_toggled(self) -> None:
        self._share_sides()
        if self.index_button.isChecked():
            self.drawer.filter.setFocus()

    def _leave_index(self) -> None:
        self.index_button.setChecked(False)
        self.canvas.setFocus()

    def _ask_why(self, code: str) -> None:
        shown = self._shown
        assert shown is not None

        def come(told: Explanation) -> None:
            self.card.show_why(shown.net, told)
            self._lay_card()
            shown.also_of_card = self._on_paths(self.card.paths())
            self._bring_in()

        shown.asking.why(code, come)

    def _forget_why(self) -> None:
        self._errands.drop("why")
        if self._shown is not None:
            self._shown.also_of_card = frozenset()

    def _on_paths(self, paths: list[Path]) -> frozenset[str]:
        """The plants on the paths, as many as can be read."""
        shown = self._shown
        assert shown is not None
        codes = dict.fromkeys(code for path in paths for code in path)
        known = [code for code in codes if code in shown.net.book.plants]
        return frozenset(known[:_ON_PATHS])

    def _bring_in_pair(self, paths: list[Path]) -> None:
        assert self._shown is not None
        self._shown.also = self._on_paths(paths)
        self._bring_in()

    def _bring_in(self) -> None:
        """Draw again if a plant that is to be lit is not in the picture."""
        shown = self._shown
        assert shown is not None
        wanted = shown.also | shown.also_of_card
        if shown.focus is not None and not wanted <= self._view.shown():
            self._draw()

    def _light(self, paths: list[Path]) -> None:
        self._lit = paths
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
        if code != self.card.code:
            self._forget_why()
        self.card.show_plant(shown.net, code, pinned=code in shown.pins)
        self.card.show()
        self.card.raise_()
        self._lay_card()
        shown.asking.plant(code, self._show_numbers)

    def open_card(self, code: str) -> None:
        """Open the card of a plant in full, even if it then lies on other tags."""
        self.card.wish = "open"
        self.select(code)
        self._lay_card()

    def _show_numbers(self, answer: PlantAnswer) -> None:
        shown = self._shown
        if shown is not None:
            self.card.show_numbers(shown.net, answer)
            shown.asking.chances(answer.code, self.card.show_chances)
            QTimer.singleShot(0, self, self._lay_card)  # its new parts are measured by then

    def _come_to_rest(self) -> None:
        self._lay_card()
        self.came_to_rest.emit()

    def _resized(self) -> None:
        self._lay_card()
        self._stage.lay_key()
        self._settle.start()

    def _looked_at(self) -> LookedAt:
        shown = self._shown
        if shown is None:
            return LookedAt()
        code = self.card.code
        parents = shown.net.parent_codes(code) if code in shown.net.book.plants else ()
        plants = (*shown.pins, *parents, shown.focus or "")
        return LookedAt(plants, tuple(self._lit), len(shown.pins) > 1)

    def _lay_card(self) -> None:
        self._stage.lay_card(self._looked_at())

    def _leave_room(self, width: int | None = None) -> None:
        self._stage.leave_room(self._looked_at(), width)

    def _key_toggled(self) -> None:
        self._stage.show_key(self._placed if self.key_button.isChecked() else None)

    def show_trail(self, codes: list[str]) -> None:
        """The plants visited last, as links."""
        shown = [link(code) for code in codes[:-1]] + [f"<b>{escape(c)}</b>" for c in codes[-1:]]
        text = f"{escape(self.tr('Visited:'))} {' · '.join(shown)}" if len(shown) > 1 else ""
        self.tools.set_trail(text)

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
            self.fold(code, unfold=way == "unfold")
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
        assert self._shown is not None
        self.said.emit(no_step_words(self._shown.selected, way))

    def fold(self, code: str, *, unfold: bool) -> None:
        """Unfold the relatives of a plant that are folded away, or fold them again."""
        view = self._view
        block = next((b for b in view.blocks if b.key == view.block_of(code)), None)
        shown = self._shown
        assert shown is not None
        if block is None:
            return
        keys = fold_keys(block, code, shown.unfolded, unfold=unfold)
        if keys:
            shown.unfolded = shown.unfolded ^ frozenset(keys)
            self._draw()
