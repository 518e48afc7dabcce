"""A plant's card: its seed tag unfolded, lying beside the plant in the picture.

It can be moved, folded and closed (`card_tag`), and read from top to bottom: what the plant is,
where it comes from, what the numbers say, whom it was crossed with, what was seen of it.  What a
person wrote is changed where it stands (`card_edit`); notes and photos stand at its end.
"""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QEvent, Qt, QTimer, Signal
from PySide6.QtGui import QColor, QDragEnterEvent, QDropEvent, QKeyEvent, QKeySequence
from PySide6.QtWidgets import QApplication, QVBoxLayout, QWidget

from pedigreeview.drawing.founders import shown_numbers
from pedigreeview.window.answers import PlantAnswer, percent
from pedigreeview.window.card_edit import CardFacts, Typing
from pedigreeview.window.card_notes import CardNotes
from pedigreeview.window.card_photos import CardPhotos, holds_photos
from pedigreeview.window.card_tag import CardTag
from pedigreeview.window.card_waiting import CardWaiting
from pedigreeview.window.chances import Chances
from pedigreeview.window.figure import Figure, WithheldNotice
from pedigreeview.window.labels import LinkLabel, clear, column, heading, rule, sentence
from pedigreeview.window.parents_lines import doubt_lines, parents_html, pollen_html
from pedigreeview.window.share_bars import ShareBars
from pedigreeview.window.style import founder_colour, step
from pedigreeview.window.why_panel import Path
from pedigreeview.window.words import (
    count,
    cross_line,
    kind_word,
    link,
    links,
    named,
    origin,
    status_word,
)

if TYPE_CHECKING:
    from pedigreeview.network import Explanation, PedigreeNetwork
    from pedigreeview.window.desk import Desk
    from pedigreeview.window.errands import Errands
    from pedigreeview.window.preferences import Preferences

__all__ = ["Card"]

_CROSSES = 8
_FOUNDERS = 12


class Card(CardTag):
    """The card of one plant at a time."""

    plant_wanted = Signal(str)
    checks_wanted = Signal()
    why_wanted = Signal(str)
    """The plant whose F is to be explained."""
    grew = Signal()
    """More has come to stand on it; it wants to be laid anew."""
    photo_wanted = Signal(str)
    """The file name of a photo that is to be shown large."""

    def __init__(self, parent: QWidget) -> None:
        super().__init__(parent)
        self._numbers: QVBoxLayout | None = None
        self._above: QWidget = self.close_button
        """What the keys reach before the numbers."""
        self.figures: dict[str, Figure] = {}
        """The numbers that stand on it, by 'inbreeding' and 'founder shares'."""
        self._bars: tuple[ShareBars, PlantAnswer] | None = None
        """The founder shares that stand on it, once they have come."""
        self._unfolded: frozenset[str] = frozenset()
        self._status = ""
        self._desk: Desk | None = None
        self._errands: Errands | None = None
        self._preferences: Preferences | None = None
        self.facts: CardFacts | None = None
        self.notes: CardNotes | None = None
        self.photos: CardPhotos | None = None
        self.waiting = CardWaiting()
        """What is half typed on the cards of other plants."""
        self.setAcceptDrops(True)
        self.hide()

    def write_with(self, desk: Desk, errands: Errands, preferences: Preferences) -> None:
        """What stands on it is changed through the desk; without one it is only read."""
        self._desk, self._errands, self._preferences = desk, errands, preferences

    # What stands on it --------------------------------------------------------------------------

    def show_plant(self, net: PedigreeNetwork, code: str, *, pinned: bool) -> None:
        """Lay out what the records say; the numbers follow by `show_numbers`."""
        # Shown again, as after a pin, it keeps unfolded what was.
        if code != self.code:
            self._unfolded = frozenset()
        elif self.figures:
            self._unfolded = frozenset(
                key for key, figure in self.figures.items() if figure.button.isChecked()
            )
        typing, note, keys, bar = self._at_hand(code)
        at = self.window().focusWidget()
        # Keys that are elsewhere, as in a form on the bench, stay there.
        focus = at is not None and self.isAncestorOf(at)
        if code != self.code:
            self._set_aside()
            held = self.waiting.take(code)
            typing, note = (held.values, held.note) if held is not None else ((), None)
        self.figures, self._bars = {}, None
        self.lit.emit([])
        self.code = code
        self.facts = self.notes = self.photos = None
        book, plant, s = net.book, net.book.plants[code], step()
        clear(self._title)
        clear(self._body)
        code_label = heading(code, 2)
        code_label.setAttribute(Qt.WidgetAttribute.WA_TransparentForMouseEvents)
        self._title.addWidget(code_label)
        self._brief = sentence("", "soft")
        self._brief.setWordWrap(False)
        self._brief.setAttribute(Qt.WidgetAttribute.WA_TransparentForMouseEvents)
        self._title.addWidget(self._brief)
        self._status = status_word(plant.status) if plant.status else ""
        self.say_brief(self._status)
        self._say_pin(code, pinned)
        if self._desk is not None and self._preferences is not None:
            self.facts = CardFacts(self._desk, self._preferences, plant)
            self._body.addWidget(self.facts.name_value())
        elif plant.name and plant.name != code:
            self._body.addWidget(heading(plant.name, 3))
        sort = [kind_word(book, plant)]
        name, generation = net.generation_name(code), net.generation(code)
        if name:
            sort.insert(0, name)
        if generation is not None and generation > 0:
            sort.append(self.tr("generation {}").format(generation))
        if plant.status:
            sort.append(status_word(plant.status))
        self._body.addWidget(sentence(" · ".join(sort), "soft"))
        self.setAccessibleName(self.tr("Card of {}").format(named(book, code)))

        self._body.addWidget(sentence(origin(net, code)))
        parents = parents_html(net, code)
        if parents:
            source = bool(net.parents(code).source)
            self._add_links(self.tr("Comes from") if source else self.tr("Parents"), parents)
        givers = pollen_html(net, code)
        if givers:
            self._add_links(self.tr("May have given the pollen, with odds"), "<br>".join(givers))
        for doubt in doubt_lines(net, code):
            self._body.addWidget(sentence(doubt, "soft"))
        progeny = net.progeny(code)
        if progeny:
            title = self.tr("Progeny, {}").format(len(progeny))
            self._above = self._add_links(title, links(progeny, 12))
        else:
            self._above = self._add_links(self.tr("Progeny"), self.tr("none recorded"))
        self._body.addWidget(rule())
        self._numbers = column(s)
        self._numbers.addWidget(sentence(self.tr("Working out the numbers …"), "soft"))
        self._body.addLayout(self._numbers)
        self._body.addWidget(rule())
        cytoplasm = net.cytoplasm(code)
        self._add_links(
            self.tr("Cytoplasm, by the seed-parent line"),
            link(cytoplasm, named(book, cytoplasm))
            if cytoplasm is not None
            else self.tr("not known: the line ends in an unknown plant"),
        )
        self._add_crosses(net, code)
        self._add_facts(net, code)
        self._add_notes(net, code)
        self._add_photos(net, code)
        self._body.addStretch(1)
        self._area.verticalScrollBar().setValue(bar)
        self._put_back(typing, note, keys, focus=focus)

    def forget(self) -> None:
        """Another book: what was typed on its cards is not for the plants of this one."""
        self.code, self.facts, self.notes = "", None, None
        self.waiting.clear()

    def _set_aside(self) -> None:
        """The card of another plant comes: what was typed waits for this one to come back."""
        if self.waiting.put(self.code, self.facts, self.notes) and self._desk is not None:
            text = self.tr("What you were typing waits on the card of {}.")
            self._desk.said.emit(text.format(self.code))

    def _at_hand(self, code: str) -> tuple[tuple[Typing, ...], tuple[str, str] | None, str, int]:
        """What is being typed, where the keys are and how far it is scrolled, if it stays at its
        plant: all of it is put back when the card is laid anew after an edit."""
        if code != self.code or self.facts is None or self.notes is None:
            return (), None, "", 0
        bar = self._area.verticalScrollBar().value()
        return self.facts.typing(), self.notes.typing(), self.facts.focused(), bar

    def _put_back(
        self,
        typing: tuple[Typing, ...],
        note: tuple[str, str] | None,
        keys: str,
        *,
        focus: bool,
    ) -> None:
        if self.notes is not None and note is not None:
            self.notes.write(note, focus=focus)
        if self.facts is None:
            return
        if keys:
            self.facts.put_focus(keys)
        for one in typing:
            self.facts.open(*one, focus=focus)

    def _say_pin(self, code: str, pinned: bool) -> None:
        self.pin_button.setChecked(pinned)
        self.pin_button.setText(self.tr("Unpin") if pinned else self.tr("Pin"))
        name = self.tr("Take the pin of {} out") if pinned else self.tr("Pin {} to compare")
        self.pin_button.setAccessibleName(name.format(code))
        self.pin_button.setToolTip(name.format(code))

    def show_numbers(self, net: PedigreeNetwork, answer: PlantAnswer) -> None:
        """Put in F and founder shares when they have come."""
        if answer.code != self.code or self._numbers is None:
            return
        clear(self._numbers)
        self._bars = None
        if answer.withheld is not None:
            notice = WithheldNotice(net, answer.withheld)
            notice.followed.connect(self.plant_wanted)
            notice.checks_wanted.connect(self.checks_wanted)
            self._numbers.addWidget(notice)
            if notice.places is not None:
                self.setTabOrder(self._above, notice.places)
            return
        inbreeding = Figure(self.tr("Inbreeding"), "inbreeding", f"F = {answer.text}", answer.words)
        self.say_brief(f"F = {answer.text}", self._status)
        inbreeding.why_wanted.connect(lambda: self.why_wanted.emit(self.code))
        # Asked now, not with the numbers: the picture may have come since.
        bars = ShareBars(self._shares(net, answer))
        self._bars = bars, answer
        shares = Figure(self.tr("Founder shares"), "founder shares", body=bars)
        shares.panel.show_reason(answer.share_reason)
        before: QWidget = self._above
        for figure in (inbreeding, shares):
            figure.lit.connect(self.lit)
            self._numbers.addWidget(figure)
            self.figures[figure.key] = figure
            self.setTabOrder(before, figure.button)
            before = figure.button
            if figure.key in self._unfolded:
                figure.unfold()

    def show_chances(self, told: Chances) -> None:
        """Put in what plants raised like this one are like when the answer has come."""
        if told.code != self.code or self._numbers is None or "founder shares" not in self.figures:
            return
        shown = (
            ("spread", told.spread),
            ("brought", (told.brought,)),
            ("depth", (told.depth,)),
            ("fixing", (told.fixing,)),
        )
        if told.genes:
            self._numbers.addWidget(sentence(self.tr("Genes, from all that was seen"), "caption"))
            label = sentence("\n".join(told.genes))
            label.setObjectName("genes")
            self._numbers.addWidget(label)
        for name, lines in shown:
            for line in filter(None, lines):
                label = sentence(line, "soft")
                label.setObjectName(name)
                self._numbers.addWidget(label)
        # New parts are measured with the next events.
        QTimer.singleShot(0, self, self.grew.emit)

    def show_why(self, net: PedigreeNetwork, told: Explanation) -> None:
        """Put in why F is what it is when the answer has come."""
        figure = self.figures.get("inbreeding")
        if figure is not None and told.plants == (self.code,):
            figure.panel.show_explanation(net.book, told, ends=(self.code,))
            # Laid out at once, so that a line does not move away under the mouse.
            for _ in range(2):
                QApplication.sendPostedEvents(None, QEvent.Type.LayoutRequest.value)

    def paths(self) -> list[Path]:
        """The paths behind the numbers that are unfolded."""
        return [path for figure in self.figures.values() for path in figure.panel.paths]

    def recolour(self, net: PedigreeNetwork) -> None:
        """Show founder shares in the colours that the picture gives its founders now."""
        if self._bars is not None:
            bars, answer = self._bars
            bars.recolour([colour for *_, colour in self._shares(net, answer)])

    def _shares(
        self, net: PedigreeNetwork, answer: PlantAnswer
    ) -> list[tuple[str, float, str, QColor]]:
        """Name, share, its text and its colour for each bar."""
        numbers = dict(shown_numbers(net, {code: share for code, share, _ in answer.shares}))
        shown = [
            (named(net.book, founder), share, text, founder_colour(numbers.get(founder, -1)))
            for founder, share, text in answer.shares[:_FOUNDERS]
        ]
        rest = answer.shares[_FOUNDERS:]
        if rest:
            share = sum(one[1] for one in rest)
            name = self.tr("{} more founders").format(len(rest))
            shown.append((name, share, percent(share), founder_colour(-1)))
        if answer.unknown_share > 1e-9:
            share = answer.unknown_share
            shown.append((self.tr("unknown"), share, percent(share), founder_colour(None)))
        return shown

    def _caption(self, layout: QVBoxLayout, text: str) -> None:
        layout.addWidget(sentence(text, "caption"))

    def _add_links(self, title: str, html: str) -> LinkLabel:
        part = column(max(1, step() // 4))
        self._caption(part, title)
        label = LinkLabel(html)
        label.setAccessibleName(title)
        label.followed.connect(self.plant_wanted)
        part.addWidget(label)
        self._body.addLayout(part)
        return label

    def _add_crosses(self, net: PedigreeNetwork, code: str) -> None:
        as_seed, as_pollen = net.crosses_of(code)
        both = set(as_seed) & set(as_pollen)
        candidates = {row.cross for row in net.book.pollen_candidates}
        for title, crosses in (
            (self.tr("Selfings"), [one for one in as_seed if one in both]),
            (self.tr("Crosses as seed parent"), [one for one in as_seed if one not in both]),
            (self.tr("Crosses as pollen parent"), [one for one in as_pollen if one not in both]),
        ):
            if not crosses:
                continue
            lines = []
            for cross_code in crosses[:_CROSSES]:
                cross = net.book.crosses[cross_code]
                progeny = net.progeny_of_cross(cross_code)
                signs = cross_line(net.book, cross, cross_code in candidates)
                text = signs if cross_code.startswith(signs) else f"{cross_code}: {signs}"
                after = count(len(progeny), self.tr("plant"), self.tr("plants"))
                lines.append(f"{link(progeny[0], text) if progeny else text}, {after}")
            if len(crosses) > _CROSSES:
                lines.append(self.tr("and {} more").format(len(crosses) - _CROSSES))
            self._add_links(title, "<br>".join(lines))

    def _add_facts(self, net: PedigreeNetwork, code: str) -> None:
        if self.facts is not None:
            self.facts.turned.connect(self._turned)
            self.facts.renamed.connect(self.plant_wanted)
            self._body.addWidget(self.facts)
            return
        plant = net.book.plants[code]
        facts = [
            (self.tr("Sown"), plant.sown),
            (self.tr("Place"), plant.place),
            (self.tr("Protected"), plant.protected),
            (self.tr("Remark"), plant.note),
            *plant.extra.items(),
        ]
        for title, text in facts:
            if text:
                part = column(max(1, step() // 4))
                self._caption(part, title)
                part.addWidget(sentence(text))
                self._body.addLayout(part)

    def _turned(self) -> None:
        """A value became a field, or text again."""
        # New parts are measured with the next events.
        QTimer.singleShot(0, self, self._grown)

    def _grown(self) -> None:
        self.grew.emit()
        at = self.window().focusWidget()
        if at is not None and self._area.isAncestorOf(at):
            self._area.ensureWidgetVisible(at, 0, 4 * step())

    def _add_notes(self, net: PedigreeNetwork, code: str) -> None:
        self.notes = CardNotes(self._desk, self._preferences, code)
        self.notes.turned.connect(self._turned)
        self.notes.show_book(net.book)
        self._body.addWidget(self.notes)

    def _add_photos(self, net: PedigreeNetwork, code: str) -> None:
        if self._desk is None or self._errands is None:
            return
        self.photos = CardPhotos(self._desk, self._errands, code)
        self.photos.turned.connect(self._turned)
        self.photos.wanted.connect(self.photo_wanted)
        self.photos.show_book(net.book)
        self._body.addWidget(self.photos)

    # Keys, and photos that are dropped ----------------------------------------------------------

    def keyPressEvent(self, event: QKeyEvent) -> None:
        if event.key() == Qt.Key.Key_F2 and self.facts is not None:
            self.facts.open("name")
            return
        pasted = event.matches(QKeySequence.StandardKey.Paste)
        if pasted and self.photos is not None and self.photos.paste():
            return
        super().keyPressEvent(event)

    def dragEnterEvent(self, event: QDragEnterEvent) -> None:
        if self.photos is not None and holds_photos(event.mimeData()):
            event.acceptProposedAction()

    def dropEvent(self, event: QDropEvent) -> None:
        if self.photos is not None and self.photos.take(event.mimeData()):
            event.acceptProposedAction()
