"""Two focuses side by side: a second picture beside the first, and what the two share lit."""

from __future__ import annotations

from html import escape
from typing import TYPE_CHECKING, Any

from PySide6.QtCore import QEvent, QObject, QTimer
from PySide6.QtWidgets import QFrame, QHBoxLayout, QSizePolicy

from pedigreeview.drawing.theme import theme
from pedigreeview.drawing.view import Look, choose
from pedigreeview.drawing.ways import NEAR
from pedigreeview.window.canvas import PedigreeCanvas
from pedigreeview.window.labels import LinkLabel, column, plain_button
from pedigreeview.window.page_picture import AT_ONCE
from pedigreeview.window.page_state import on_paths
from pedigreeview.window.style import current_name, step
from pedigreeview.window.tag_menu import show_tag_menu
from pedigreeview.window.walking import fold_keys, no_step_words, step_from
from pedigreeview.window.words import link, named

if TYPE_CHECKING:
    from pedigreeview.network import PedigreeNetwork
    from pedigreeview.window.pedigree_page import PedigreePage
    from pedigreeview.window.why_panel import Path

__all__ = ["PageCompare", "shared_lines"]


def shared_lines(net: PedigreeNetwork, a: str, b: str) -> tuple[tuple[str, ...], list[Path]]:
    """Where the lines of two plants meet, and every step of descent from there to either.

    The steps nearest to the two come first.
    """
    from pedigreeview.drawing.ways import connection

    found = connection(net, a, b)
    held = set(found.plants) if found.meeting else set()
    steps: list[Path] = [
        (parent, code)
        for code in found.plants
        for parent in net.parent_codes(code)
        if code in held and parent in held
    ]
    return found.meeting, steps


class PageCompare(QObject):
    """The second picture: it has a focus, a zoom and folds of its own."""

    def __init__(self, page: PedigreePage) -> None:
        super().__init__(page)
        self._page = page
        self.code = ""
        """The plant in focus in the second picture; '' while there is none."""
        self.paths: list[Path] = []
        """What is lit in the first picture; in the second there are its own."""
        self._own_paths: list[Path] = []
        self._unfolded: frozenset[str] = frozenset()
        self._also: frozenset[str] = frozenset()
        self._placed: Any = None
        self._card_lay_open = False
        """Before the second picture took its room."""
        self.frame = QFrame()
        self.frame.setObjectName("beside")
        outer = column()
        self.frame.setLayout(outer)
        head = QFrame()
        head.setObjectName("tools")
        row = QHBoxLayout(head)
        s = step()
        row.setContentsMargins(s, s // 2, s, s // 2)
        row.setSpacing(s)
        self.words = LinkLabel("")
        self.words.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Preferred)
        self.words.followed.connect(page.focus_on)
        row.addWidget(self.words, 1)
        self.swap_button = plain_button("⇄", self.tr("Change sides"), self.swap)
        self.close_button = plain_button("✕", self.tr("Close the second picture"), self.close)
        row.addWidget(self.swap_button)
        row.addWidget(self.close_button)
        outer.addWidget(head)
        self._head = head
        self.first_head, self.first_words = self._over_the_first()
        head.installEventFilter(self)
        self.canvas = PedigreeCanvas()
        self.canvas.setAccessibleName(self.tr("Second picture, beside the first"))
        outer.addWidget(self.canvas, 1)
        self.frame.hide()
        self.canvas.focus_wanted.connect(self.focus_on)
        self.canvas.menu_wanted.connect(lambda code, at: show_tag_menu(page, code, at))
        self.canvas.pin_wanted.connect(page.pin)
        self.canvas.unfold_wanted.connect(self._unfold)
        self.canvas.fold_wanted.connect(self._unfold)
        self.canvas.walk_wanted.connect(self._walk)

    def _over_the_first(self) -> tuple[QFrame, LinkLabel]:
        """The heading over the first picture, as high as the one over the second."""
        head, s = QFrame(), step()
        head.setObjectName("tools")
        row = QHBoxLayout(head)
        row.setContentsMargins(s, s // 2, s, s // 2)
        words = LinkLabel("")
        words.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Preferred)
        words.followed.connect(self._page.focus_on)
        row.addWidget(words, 1)
        head.hide()
        self._page.stage.set_heading(head)
        return head, words

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        """Both headings are of one height, so that the pictures begin at one line."""
        if event.type() == QEvent.Type.Resize and watched is self._head:
            self.first_head.setFixedHeight(self._head.height())
        return super().eventFilter(watched, event)

    @property
    def open(self) -> bool:
        """Whether two pictures stand side by side."""
        return bool(self.code)

    def show_beside(self, code: str = "") -> None:
        """Open a picture of a plant beside the first; without one of a pin or the mark."""
        shown = self._page.shown
        if shown is None:
            return
        code = code or self._other()
        page, focus = self._page, shown.focus or shown.selected
        if not code or not focus or code == focus:
            page.said.emit(self.tr("Mark or pin a plant other than the focus to compare the two."))
            return
        if not self.open:
            self._card_lay_open = page.card.isVisible()
            page.card.hide()
            page.key_button.setChecked(False)
        if shown.focus is None or shown.way != NEAR:
            page.go(focus, focus, NEAR, say=True)
            page.card.hide()
        self.frame.show()
        self.first_head.show()
        page.split.setSizes([1000, 1000])
        self.focus_on(code)
        # The two canvases have their new width with the next events.
        QTimer.singleShot(0, self, self._look_anew)

    def _look_anew(self) -> None:
        if self.open:
            self._page.cards.leave_room()
            both = self._page.canvas, self.canvas
            for canvas in both:
                canvas.first_look()
            # Two pictures are compared at one scale.
            scale = min(canvas.zoom() for canvas in both)
            for canvas in both:
                canvas.look_at(scale)

    def _other(self) -> str:
        shown = self._page.shown
        assert shown is not None
        others = (shown.selected, *reversed(shown.pins))
        return next((code for code in others if code and code != shown.focus), "")

    def focus_on(self, code: str) -> None:
        """Put a plant in focus in the second picture."""
        shown = self._page.shown
        if shown is None or code not in shown.net.book.plants:
            return
        if code != self.code:
            self.code, self._unfolded = code, frozenset()
        self.canvas.set_selected(code)
        self._share()
        self._page.draw()

    def close(self) -> None:
        """Back to one picture, with the card if it lay open before."""
        if not self.open:
            return
        page = self._page
        self.forget()
        page.draw()
        if self._card_lay_open and page.selected:
            page.cards.show_later(page.selected)
        page.canvas.setFocus()

    def forget(self) -> None:
        """Put the second picture away without drawing anew, as with another book."""
        self.code, self.paths, self._placed = "", [], None
        self._own_paths = []
        self._page.errands.drop("beside")
        self.frame.hide()
        self.first_head.hide()
        self.canvas.show_placed(None)
        if self._page.shown is not None:
            self._page.shown.also_of_compared = frozenset()
        self._page.cards.light(self._page.slip.kept)

    def swap(self) -> None:
        """What stands left goes right, and the other way round."""
        shown = self._page.shown
        if shown is None or shown.focus is None:
            return
        left, self.code, self._unfolded = self.code, shown.focus, frozenset()
        self.canvas.set_selected(self.code)
        self._page.focus_on(left)

    # What they share ----------------------------------------------------------------------------

    def follow(self) -> None:
        """The first picture has another focus: what the two share is another thing."""
        shown = self._page.shown
        if not self.open or shown is None:
            return
        if shown.focus is None or self.code not in shown.net.book.plants:
            self.forget()
        else:
            self._share()

    def _share(self) -> None:
        shown = self._page.shown
        if shown is None or shown.focus is None:
            return
        net, a, b = shown.net, shown.focus, self.code
        met, steps = ((), []) if a == b else shared_lines(net, a, b)
        of_a, of_b = net.ancestors(a) | {a}, net.ancestors(b) | {b}
        self.paths = [step for step in steps if step[-1] in of_a]
        self._own_paths = [step for step in steps if step[-1] in of_b]
        shown.also_of_compared = on_paths(net, self.paths)
        self._also = on_paths(net, self._own_paths)
        first = f"<b>{escape(named(net.book, a))}</b>"
        self.first_words.setText(self.tr("{}, in focus at the left").format(first))
        beside = f"<b>{escape(named(net.book, b))}</b>"
        if a == b:
            text = self.tr("{}: the same plant on both sides.").format(beside)
        elif not met:
            text = self.tr("{}: shares no ancestor in this book with {}.").format(beside, link(a))
        else:
            text = self.tr("{}: its lines meet those of {} at {}; they are lit.").format(
                beside, link(a), ", ".join(link(code) for code in met[:6])
            )
        self.words.setText(text)
        self._page.cards.light(self._page.slip.kept)

    def draw(self, look: Look) -> None:
        """Draw the second picture as the first is drawn, with its own focus and folds."""
        from pedigreeview.drawing.kept_picture import ready
        from pedigreeview.drawing.placing import place

        shown = self._page.shown
        self._page.errands.drop("beside")
        if not self.open or shown is None or self.code not in shown.net.book.plants:
            return
        own = Look(
            focus=self.code,
            up=look.up,
            down=look.down,
            unfolded=self._unfolded,
            pins=look.pins,
            also=self._also,
            away=look.away,
            like=self._page.view.founders if self._page.view is not None else (),
        )
        view = choose(shown.net, own)
        before, orientation = self._placed, self._page.orientation
        if len(view.blocks) <= AT_ONCE:
            self._take(place(view, before, orientation=orientation), look.pins)
            return
        self._page.errands.ask(
            "beside",
            lambda: ready(place(view, before, orientation=orientation)),
            lambda placed: self._take(placed, look.pins),
        )

    def _take(self, placed: Any, pins: tuple[str, ...]) -> None:
        self.canvas.set_theme(theme(current_name()))
        first = self._placed is None
        self._placed = placed
        self.canvas.show_placed(placed, animate=not first)
        self.canvas.set_pins(pins)
        self.canvas.light(self._own_paths)
        if first:
            self.canvas.show_code(self.code)
        self._page.shading.dress(self.canvas, placed.view)

    def turned(self) -> None:
        """The generations run another way: nothing stays where it was."""
        self._placed = None

    def _unfold(self, key: str) -> None:
        self._unfolded = self._unfolded ^ {key}
        if self._page.shown is not None:
            self.draw(self._page.look())

    # Walking ------------------------------------------------------------------------------------

    def _walk(self, way: str) -> None:
        """One step by keys in the second picture."""
        page, shown, code = self._page, self._page.shown, self.canvas.selected_code()
        if shown is None or not code:
            return
        if way == "focus":
            self.focus_on(code)
        elif way == "pin":
            page.pin(code)
        elif way in ("unfold", "fold"):
            self._fold(code, unfold=way == "unfold")
        elif way in ("left", "right"):
            self._arrive(self.canvas.neighbour(code, 1 if way == "right" else -1), code, way)
        else:
            self._arrive(step_from(shown.net, code, way), code, way)

    def _arrive(self, code: str, before: str, way: str) -> None:
        if not code:
            self._page.said.emit(no_step_words(before, way))
            return
        self._page.said.emit("")
        if self._placed is None or not self._placed.view.block_of(code):
            self.focus_on(code)
            return
        self.canvas.set_selected(code)
        self.canvas.show_code(code)

    def _fold(self, code: str, *, unfold: bool) -> None:
        if self._placed is None:
            return
        view = self._placed.view
        block = next((b for b in view.blocks if b.key == view.block_of(code)), None)
        if block is not None:
            keys = fold_keys(block, code, self._unfolded, unfold=unfold)
            self._unfolded = self._unfolded ^ frozenset(keys)
            if self._page.shown is not None:
                self.draw(self._page.look())
