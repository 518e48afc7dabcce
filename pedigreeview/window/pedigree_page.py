"""The Pedigree page: the picture, and what the parts on and beside it have to do with each other.

The parts are objects of their own: `PageCard` the plant's card, `PagePins` pins and slip,
`PageWalk` steps by keys, `PageWays` the ways of looking, `PageShades` tint and filter,
`PageCompare` the second picture, `PageBookmarks` the bookmarks, `PageCommands` menus and keys,
`PagePicture` draws.  All of them read and change one `Shown`.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from html import escape
from typing import TYPE_CHECKING, Any, Literal

from PySide6.QtCore import QPoint, QRect, QSize, Qt, QTimer, Signal
from PySide6.QtGui import QHideEvent, QResizeEvent, QShowEvent
from PySide6.QtWidgets import QFrame, QHBoxLayout, QSplitter, QWidget

from pedigreeview.book.problems import Problem
from pedigreeview.drawing.theme import theme
from pedigreeview.drawing.view import Look
from pedigreeview.drawing.ways import NEAR, Way
from pedigreeview.window.asking import Asking
from pedigreeview.window.book_page import BookPage, Waiting
from pedigreeview.window.canvas import PedigreeCanvas
from pedigreeview.window.canvas_invite import Invitation
from pedigreeview.window.errands import Errands
from pedigreeview.window.index_drawer import IndexDrawer
from pedigreeview.window.labels import column, sentence
from pedigreeview.window.page_bookmarks import PageBookmarks
from pedigreeview.window.page_card import PageCard
from pedigreeview.window.page_commands import PageCommands
from pedigreeview.window.page_compare import PageCompare
from pedigreeview.window.page_notes import Notes
from pedigreeview.window.page_picture import PagePicture
from pedigreeview.window.page_pins import PagePins
from pedigreeview.window.page_shades import PageShades
from pedigreeview.window.page_state import Shown
from pedigreeview.window.page_walk import PageWalk
from pedigreeview.window.page_ways import PageWays
from pedigreeview.window.pair_slip import PairSlip
from pedigreeview.window.preferences import Preferences
from pedigreeview.window.shade_bars import ShadeBars
from pedigreeview.window.shades import Shades
from pedigreeview.window.stage import Stage
from pedigreeview.window.style import current_name, step
from pedigreeview.window.tag_menu import show_tag_menu
from pedigreeview.window.tool_row import Tools
from pedigreeview.window.walking import first_focus
from pedigreeview.window.words import link

if TYPE_CHECKING:
    from pedigreeview.book.edits import Change
    from pedigreeview.drawing.blocks import View
    from pedigreeview.network import PedigreeNetwork
    from pedigreeview.window.desk import Desk
    from pedigreeview.window.find import PlantFinder
    from pedigreeview.window.opening import Opened

__all__ = ["PedigreePage"]


class PedigreePage(BookPage):
    """The picture and everything on and beside it."""

    visited = Signal(str, str)
    """Focus ('' for the whole book) and the plant whose card lies open."""
    said = Signal(str)
    """A short sentence for the foot of the window."""
    pins_changed = Signal(object)
    checks_wanted = Signal()
    came_to_rest = Signal()
    """The picture has stopped moving and the card lies beside its plant."""

    def __init__(
        self, errands: Errands, preferences: Preferences, desk: Desk | None = None
    ) -> None:
        super().__init__()
        self.writing_entries: Callable[[str], list[tuple[str, Callable[[], object]]]] = (
            lambda code: []
        )
        """What the menu of a tag offers to write down of its plant; the window says it."""
        self.setObjectName("page")
        self.errands = errands
        self._preferences = preferences
        self.shown: Shown | None = None
        self.view: View | None = None
        self.placed: Any = None
        self._clicked_code = ""
        self._on_show = True
        self.behind = False
        """The picture on the canvas is that of the book before an edit."""
        self._orientation: Literal["down", "right"] = "down"
        self.shades = Shades(errands, self)
        outer = column()
        self.setLayout(outer)
        self.canvas = PedigreeCanvas()
        self.canvas.setAccessibleName(self.tr("Picture of the pedigree"))
        self.drawer = IndexDrawer()
        self.slip = PairSlip()
        outer.addWidget(self._tools())
        row = QHBoxLayout()
        row.setSpacing(0)
        self.stage = Stage(self.canvas)
        self.key, self.card = self.stage.key, self.stage.card
        self.invitation = Invitation(self.canvas)
        self.invitation.avoid = self._card_place
        self.compare = PageCompare(self)
        self.split = QSplitter(Qt.Orientation.Horizontal)
        self.split.setChildrenCollapsible(False)
        self.split.addWidget(self.stage)
        self.split.addWidget(self.compare.frame)
        row.addWidget(self.drawer)
        row.addWidget(self.split, 1)
        row.addWidget(self.slip)
        outer.addLayout(row, 1)
        self.cards = PageCard(self)
        self.pinning = PagePins(self)
        self.picture = PagePicture(self)
        self.walking = PageWalk(self)
        self.ways = PageWays(self)
        self.bookmarks = PageBookmarks(self, desk)
        self.shading = PageShades(self)
        self._commands = PageCommands(self)
        self.commands = self._commands.actions
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
        self.card.checks_wanted.connect(self.checks_wanted)
        self.slip.checks_wanted.connect(self.checks_wanted)
        self.slip.plant_wanted.connect(self.focus_on)
        self.slip.connection_wanted.connect(self.ways.show_connection)
        self.slip.beside_wanted.connect(self._show_pair_beside)
        self.key.closed.connect(lambda: self.key_button.setChecked(False))
        self.drawer.plant_wanted.connect(self.focus_on)
        self.drawer.left.connect(self.pinning.leave_index)
        self.stage.resized.connect(self._resized)

    def _tools(self) -> QWidget:
        s = step()
        frame = QFrame()
        frame.setObjectName("tools")
        outer = column(s)
        outer.setContentsMargins(s, s, s, s)
        frame.setLayout(outer)
        self.tools = tools = Tools(self._preferences)
        self.index_button, self.whole_button = tools.index, tools.whole
        self.turn_button, self.key_button = tools.sideways, tools.key
        self.nearer, self.further = tools.nearer, tools.further
        self.up, self.down = tools.up, tools.down
        tools.index.toggled.connect(lambda _: self.pinning.toggle_index())
        for spin in (tools.up, tools.down):
            spin.valueChanged.connect(self._depth_changed)
        for button, factor in ((tools.nearer, 1.25), (tools.further, 0.8)):
            button.clicked.connect(lambda _=False, factor=factor: self.canvas.zoom_by(factor))
        tools.fit.clicked.connect(self.fit)
        self.canvas.all_next.connect(tools.say_fit)
        tools.whole.clicked.connect(self.show_whole)
        tools.sideways.clicked.connect(self.turn)
        tools.key.toggled.connect(lambda _: self.shading.show_key())
        tools.trail.followed.connect(self.focus_on)
        tools.ways_menu.aboutToShow.connect(lambda: self._commands.fill_ways())
        tools.marks_menu.aboutToShow.connect(lambda: self.bookmarks.fill(tools.marks_menu))
        outer.addWidget(tools)
        self.bars = ShadeBars(self.shades)
        self.bars.hide()
        outer.addWidget(self.bars)
        self.notes = Notes()
        outer.addWidget(self.notes)
        self.hidden_note = sentence("", "soft")
        self.hidden_note.hide()
        outer.addWidget(self.hidden_note)
        return frame

    def _show_pair_beside(self, a: str, b: str) -> None:
        self.focus_on(a)
        self.compare.show_beside(b)

    def fit_sides(self) -> None:
        """Give drawer and slip the width that the size of the text asks for, within the page."""
        s, width = step(), self.width()
        self.drawer.setFixedWidth(min(30 * s, width * 3 // 10))
        self.slip.setFixedWidth(min(44 * s, width * 4 // 10))

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self.fit_sides()

    def showEvent(self, event: QShowEvent) -> None:
        super().showEvent(event)
        self.shades.set_focus(self.focus or self.selected)

    def hideEvent(self, event: QHideEvent) -> None:
        super().hideEvent(event)
        self.bookmarks.keep_pins()

    # The book -----------------------------------------------------------------------------------

    @property
    def net(self) -> PedigreeNetwork | None:
        """The network on show."""
        return self.shown.net if self.shown is not None else None

    @property
    def focus(self) -> str:
        """The plant in focus; '' for the whole book."""
        return (self.shown.focus or "") if self.shown is not None else ""

    @property
    def selected(self) -> str:
        """The plant that is marked, whose card lies open."""
        return self.shown.selected if self.shown is not None else ""

    @property
    def way(self) -> Way:
        """How the picture is looked at."""
        return self.shown.way if self.shown is not None else NEAR

    @property
    def pins(self) -> tuple[str, ...]:
        """The pinned plants, in the order of pinning."""
        return self.shown.pins if self.shown is not None else ()

    @property
    def orientation(self) -> Literal["down", "right"]:
        """Where the generations run to."""
        return self._orientation

    def show_opened(self, opened: Opened | None) -> None:
        """Another book, or none."""
        if opened is not None:
            self.show_network(opened.net, opened.finder, opened.focus, opened.problems)
            self.bookmarks.restore_pins()

    def book_changed(self, opened: Opened, change: Change) -> None:
        """The book after an edit: what was on show stays where it was."""
        shown = self.shown
        if shown is None:
            self.show_opened(opened)
            return
        shown.asking.drop()
        self.picture.drop()
        net, plants = opened.net, opened.net.book.plants
        shown.net = net
        shown.asking = Asking(self.errands, self.slip, net, opened.problems)
        self.shades.set_network(net, edited=True)
        self.drawer.set_finder(opened.finder)
        shown.pins = tuple(code for code in shown.pins if code in plants)
        if shown.ghost is not None and not {shown.ghost.seed, shown.ghost.pollen} <= plants.keys():
            shown.ghost = None
        # In a book that was empty from the first, nobody stood anywhere: its first plant is shown.
        anew = shown.stood is None and not shown.selected
        held = shown.stood or shown
        # To look for the first plant of a large book takes a quarter of a second.
        stays = {held.focus or held.selected, held.selected} <= plants.keys()
        shown.follow_plants("" if stays else first_focus(net))
        self.slip.pair = None
        self.pinning.show()
        self.canvas.set_pins(shown.pins)
        self.bookmarks.tell_changed()
        self.compare.follow()
        self._invite()
        if not plants:
            self.canvas.show_placed(None)
            self.card.hide()
            return
        if shown.focus is None and anew:
            shown.focus = shown.selected
        if self._on_show:
            self._draw_anew()
        else:
            self.behind = True

    def hear(self, opened: Opened | None, change: Change | None = None, *, now: bool) -> None:
        """As of every page; off show the book is taken over, but drawn when it is looked at."""
        self._on_show = now
        super().hear(opened, change, now=True)

    def catch_up(self) -> None:
        """Draw what an edit changed while another page was on show."""
        super().catch_up()
        self._on_show = True
        if self.behind and self.shown is not None:
            self._draw_anew()

    def _draw_anew(self) -> None:
        self.picture.draw(lay_card=False)  # showing its plant lays it
        self._mark(say=False, card_later=True)

    def show_network(
        self,
        net: PedigreeNetwork,
        finder: PlantFinder,
        focus: str = "",
        problems: Sequence[Problem] = (),
    ) -> None:
        """Show another book, with the problems found in it."""
        if self.shown is not None:
            self.shown.asking.drop()
            self.compare.forget()
        self.picture.drop()
        self.errands.drop("ghost")
        self.shown = Shown(net, Asking(self.errands, self.slip, net, problems))
        self.placed = self.view = None
        self.shades.set_network(net)
        self.card.moved, self.card.wish = False, ""
        self.card.forget()
        self.card.hide()
        self.key_button.setChecked(False)
        self.tools.shades.setChecked(False)
        self.drawer.set_finder(finder)
        self.slip.pair = None
        self.pinning.show()
        self.canvas.set_pins(())
        code = focus if focus in net.book.plants else first_focus(net)
        self.canvas.show_placed(None)
        self.ways.tell()
        self._invite()
        self.focus_on(code)

    def _invite(self) -> None:
        """Offer what to begin with while there is no plant, or only one."""
        book = self.net.book if self.net is not None else None
        plants = tuple(book.plants)[:2] if book is not None else ()
        self.tools.offer(bool(plants))
        alone = book is not None and len(plants) < 2 and not book.crosses
        self.invitation.offer("".join(plants) if alone else None)

    def _card_place(self) -> QRect:
        """Where the card lies over the picture, in pixels of its viewport."""
        card, ground = self.card, self.canvas.viewport()
        if not card.isVisible():
            return QRect()
        return QRect(ground.mapFromGlobal(card.mapToGlobal(QPoint(0, 0))), card.size())

    def unfinished(self) -> dict[str, Any]:
        """What is half typed on the cards."""
        card = self.card
        cards = card.waiting.as_texts(card.code, card.facts, card.notes)
        return {"cards": cards} if cards else {}

    def take_up(self, held: dict[str, Any]) -> list[Waiting]:
        """Let it wait on the cards of its plants, and open the first of them."""
        if self.net is None:
            return []
        codes = self.card.waiting.take_up(self.net.book, held.get("cards"))
        if codes:
            self.focus_on(codes[0])
        return [(self.tr("the card of {}").format(code), code) for code in codes]

    def go_to(self, part: str) -> None:
        """Turn to a plant, with its card open."""
        self.focus_on(part)
        self.open_card(part)

    # Where one stands ---------------------------------------------------------------------------

    def look(self) -> Look:
        """What the picture shows, for drawing it elsewhere."""
        shown = self.shown
        assert shown is not None
        return Look(
            focus=shown.focus,
            up=self.up.value(),
            down=self.down.value(),
            unfolded=shown.unfolded,
            pins=shown.pins,
            also=shown.wanted(),
            way=shown.way,
            away=self.shades.away(),
            faded=self.shades.faded(),
            tint=self.shades.wanted,
            ghost=shown.ghost,
            like=self.view.founders if self.view is not None else (),
        )

    def focus_on(self, code: str) -> None:
        """Put a plant in focus and open its card; a connection then gives way to it."""
        self._clicked_code = ""
        if self.shown is None or code not in self.shown.net.book.plants:
            return
        way = self.way
        if way.mode == "connection" and code != self.focus:
            way = NEAR
        self.go(code, code, way, say=True)

    def go(self, focus: str, selected: str, way: Way = NEAR, *, say: bool = False) -> None:
        """Go to a place; one visited before is not said again.  A blank focus: the whole book."""
        shown = self.shown
        if shown is None or (focus and focus not in shown.net.book.plants):
            return
        if way.other and way.other not in shown.net.book.plants:
            way = NEAR
        same = shown.focus == (focus or None) and shown.way == way
        same = same and self.placed is not None and not self.behind
        shown.focus, shown.selected, shown.stood = focus or None, selected, None
        shown.way = way if focus else NEAR
        self.shades.set_focus(focus or selected)
        if not same:
            shown.unfolded = frozenset()
            self.compare.follow()
            self.picture.draw(lay_card=not selected)  # showing its plant lays it
        self._mark(say=say, card_later=not same)

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
        shown = self.shown
        if shown is None or code not in shown.net.book.plants:
            return
        if self.view is not None and code not in self.view.shown():
            self.focus_on(code)
            return
        shown.selected, shown.stood = code, None
        self._mark()

    def _mark(self, *, say: bool = True, card_later: bool = False) -> None:
        """Mark the plant and open its card.

        card_later : with the next event, where the picture has just been drawn
        """
        shown = self.shown
        assert shown is not None
        code = shown.selected
        self.whole_button.setChecked(shown.focus is None)
        if code:
            self.canvas.set_selected(code)
            if shown.focus != code or not card_later:
                # A focus that was drawn just now lies where the picture puts it.
                self.canvas.show_code(code)
            self.drawer.mark(code)
            if card_later and not self.compare.open:
                self.cards.show_later(code)
            else:
                self.show_card(code)
        if say:
            self.visited.emit(shown.focus or "", code)

    # Drawing ------------------------------------------------------------------------------------

    def wardrobe(self) -> list[QWidget]:
        """The tools and the sides cover the page; together they would take too long."""
        return self.findChildren(QWidget, options=Qt.FindChildOption.FindDirectChildrenOnly)

    def redraw(self) -> None:
        """Draw again, as after a change of theme or of the size of the text."""
        scale = self._preferences.text_size / 100
        for canvas in (self.canvas, self.compare.canvas):
            canvas.set_text_scale(scale)
            canvas.set_theme(theme(current_name()))
        self.shades.redraw()
        if self.shown is not None and self.selected and self.card.isVisible():
            self.show_card(self.selected)
            self.pinning.show()
        self.tools.arrange()

    def draw(self) -> None:
        """Draw what is to be shown; what was on the screen stays where it was, if it can."""
        self.picture.draw()

    def bring_in(self) -> None:
        """Draw again if a plant that is to be lit is not in the picture."""
        shown = self.shown
        if shown is None or shown.focus is None or self.view is None:
            return
        if not shown.wanted() <= self.view.shown():
            self.draw()

    # Depth, folds, pins, card, key: each is done by its part ------------------------------------

    def _depth_changed(self) -> None:
        self._preferences.generations_up = self.up.value()
        self._preferences.generations_down = self.down.value()
        if self.shown is not None and self.shown.focus is not None:
            self.draw()

    def turn(self, sideways: bool) -> None:
        """Let the generations run from left to right, or from top to bottom."""
        self._orientation = "right" if sideways else "down"
        self.turn_button.setChecked(sideways)
        self.placed = None
        self.compare.turned()
        if self.shown is not None:
            self.draw()

    def show_whole(self, whole: bool) -> None:
        """Show the whole book, or the marked plant in focus."""
        shown = self.shown
        if shown is None:
            return
        code = shown.selected or first_focus(shown.net)
        self.go("" if whole else code, code, say=True)

    def unfold(self, key: str) -> None:
        """Open a fold, or close it again if it is open; also 'up:CODE' and 'down:CODE'."""
        shown = self.shown
        if shown is None:
            return
        shown.unfolded = shown.unfolded ^ {key}
        if shown.focus is not None:
            self.draw()

    def fold(self, code: str, *, unfold: bool) -> None:
        """Unfold the relatives of a plant that are folded away, or fold them again."""
        self.walking.fold(code, unfold=unfold)

    def walk(self, way: str) -> None:
        """One step by keys from the marked plant."""
        self.walking.walk(way)

    def pin(self, code: str) -> None:
        """Pin a plant, or take its pin out."""
        self.pinning.pin(code)

    def try_cross(self, seed: str, pollen: str) -> None:
        """Show a planned cross that is not in the book as a dashed tag between its two plants."""
        self.ways.try_cross(seed, pollen)

    def asking(self) -> Asking:
        """The questions about the book on show."""
        assert self.shown is not None
        return self.shown.asking

    def fit(self) -> None:
        """Fit the picture into the window."""
        self.cards.leave_room()
        self.canvas.fit()
        if self.compare.open:
            self.compare.canvas.fit()
        self.cards.follow()

    def show_card(self, code: str) -> None:
        """Open the card of a plant; two pictures side by side leave no room for it.

        A card that was on its way when its plant was deleted does not come.
        """
        if self.net is None or code not in self.net.book.plants:
            self.card.hide()
        elif not self.compare.open:
            self.cards.show(code)

    def open_card(self, code: str) -> None:
        """Open the card of a plant in full, even if it then lies on other tags."""
        self.card.wish = "open"
        self.select(code)
        self.cards.show(code)

    def _resized(self) -> None:
        self.stage.lay_key()
        self.cards.follow()

    def show_trail(self, codes: list[str]) -> None:
        """The plants visited last, as links."""
        shown = [link(code) for code in codes[:-1]] + [f"<b>{escape(c)}</b>" for c in codes[-1:]]
        text = f"{escape(self.tr('Visited:'))} {' · '.join(shown)}" if len(shown) > 1 else ""
        self.tools.set_trail(text)
