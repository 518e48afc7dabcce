"""A plant's card: its seed tag unfolded, lying beside the plant in the picture.

It can be moved by its head, folded to a strip with its title, closed, and read from top to
bottom: what the plant is, where it comes from, what the numbers say, whom it was crossed with, what
was seen of it.  What a person wrote is changed where it stands (`card_edit`); notes and photos
stand at its end.
"""

from __future__ import annotations

from typing import TYPE_CHECKING, Literal

from PySide6.QtCore import QEvent, QPoint, QPointF, QRectF, QSize, QSizeF, Qt, QTimer, Signal
from PySide6.QtGui import (
    QColor,
    QDragEnterEvent,
    QDropEvent,
    QFontMetrics,
    QKeyEvent,
    QKeySequence,
    QPainter,
    QPaintEvent,
    QPen,
)
from PySide6.QtWidgets import QApplication, QHBoxLayout, QLabel, QVBoxLayout, QWidget

from pedigreeview.window.answers import PlantAnswer, percent
from pedigreeview.window.card_edit import CardFacts, Typing
from pedigreeview.window.card_head import CardHead
from pedigreeview.window.card_notes import CardNotes
from pedigreeview.window.card_photos import CardPhotos, holds_photos
from pedigreeview.window.card_placing import Ground, spot_at, spot_for
from pedigreeview.window.chances import Chances
from pedigreeview.window.figure import Figure, WithheldNotice
from pedigreeview.window.labels import (
    LinkLabel,
    clear,
    column,
    heading,
    plain_button,
    rule,
    scrolled,
    sentence,
)
from pedigreeview.window.parents_lines import doubt_lines, parents_html, pollen_html
from pedigreeview.window.rail import tag_path
from pedigreeview.window.share_bars import ShareBars
from pedigreeview.window.style import current, founder_colour, step
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


class Card(QWidget):
    """The card of one plant at a time."""

    plant_wanted = Signal(str)
    pin_wanted = Signal(str)
    checks_wanted = Signal()
    why_wanted = Signal(str)
    """The plant whose F is to be explained."""
    lit = Signal(object)
    """Paths to light up in the picture; an empty list: none that the card asks for."""
    grew = Signal()
    """More has come to stand on it; it wants to be laid anew."""
    closed = Signal()
    laid_wanted = Signal()
    """It was opened or folded, or holds more than before: it wants another spot."""
    photo_wanted = Signal(str)
    """The file name of a photo that is to be shown large."""

    def __init__(self, parent: QWidget) -> None:
        super().__init__(parent)
        self._stage = parent
        self.setObjectName("card")
        self.code = ""
        self.moved = False
        """Whether the person has laid it somewhere; it then stays there."""
        self.wish: Literal["", "open", "folded"] = ""
        """What the person wants of it; '': open where there is room, else folded."""
        self.folded = False
        self._laid_for = ""
        s = step()
        outer = QVBoxLayout(self)
        outer.setSpacing(0)
        self._outer = outer
        self._head = CardHead(self)
        head = QHBoxLayout(self._head)
        head.setContentsMargins(0, s // 2, s, s // 2)
        head.setSpacing(max(2, s // 3))
        self._title = column()
        head.addLayout(self._title, 1)
        self.pin_button = plain_button("", "", lambda: self.pin_wanted.emit(self.code))
        self.pin_button.setCheckable(True)
        self.fold_button = plain_button("", "", self.turn)
        self.close_button = plain_button("✕", self.tr("Close the card"), self.shut)
        for button in (self.pin_button, self.fold_button, self.close_button):
            head.addWidget(button, 0, Qt.AlignmentFlag.AlignVCenter)
        outer.addWidget(self._head)
        self._line = rule()
        outer.addWidget(self._line)
        inner = QWidget()
        self._body = column(s)
        self._body.setContentsMargins(0, s, 2 * s, s)
        inner.setLayout(self._body)
        self._area = scrolled(inner)
        outer.addWidget(self._area, 1)
        self._numbers: QVBoxLayout | None = None
        self._above: QWidget = self.close_button
        """What the keys reach before the numbers."""
        self.figures: dict[str, Figure] = {}
        """The numbers that stand on it, by 'inbreeding' and 'founder shares'."""
        self._unfolded: frozenset[str] = frozenset()
        self._desk: Desk | None = None
        self._errands: Errands | None = None
        self._preferences: Preferences | None = None
        self.facts: CardFacts | None = None
        self.notes: CardNotes | None = None
        self.photos: CardPhotos | None = None
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
        self.figures = {}
        self.lit.emit([])
        self.code = code
        self.facts = self.notes = self.photos = None
        book, plant, s = net.book, net.book.plants[code], step()
        self._outer.setContentsMargins(3 * s, s // 2, s // 2, s)
        clear(self._title)
        clear(self._body)
        code_label = heading(code, 2)
        code_label.setAttribute(Qt.WidgetAttribute.WA_TransparentForMouseEvents)
        self._title.addWidget(code_label)
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
        self._put_back(typing, note, keys)

    def _at_hand(self, code: str) -> tuple[Typing | None, tuple[str, str] | None, str, int]:
        """What is being typed, where the keys are and how far it is scrolled, if it stays at its
        plant: all of it is put back when the card is laid anew after an edit."""
        if code != self.code or self.facts is None or self.notes is None:
            return None, None, "", 0
        bar = self._area.verticalScrollBar().value()
        return self.facts.typing(), self.notes.typing(), self.facts.focused(), bar

    def _put_back(self, typing: Typing | None, note: tuple[str, str] | None, keys: str) -> None:
        if self.notes is not None and note is not None:
            self.notes.write(note)
        if self.facts is None:
            return
        if keys:
            self.facts.put_focus(keys)
        if typing is not None:
            self.facts.open(*typing)

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
        if answer.withheld is not None:
            notice = WithheldNotice(net, answer.withheld)
            notice.followed.connect(self.plant_wanted)
            notice.checks_wanted.connect(self.checks_wanted)
            self._numbers.addWidget(notice)
            if notice.places is not None:
                self.setTabOrder(self._above, notice.places)
            return
        inbreeding = Figure(self.tr("Inbreeding"), "inbreeding", f"F = {answer.text}", answer.words)
        inbreeding.why_wanted.connect(lambda: self.why_wanted.emit(self.code))
        shares = Figure(self.tr("Founder shares"), "founder shares", body=self._bars(net, answer))
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

    def _bars(self, net: PedigreeNetwork, answer: PlantAnswer) -> ShareBars:
        numbers = dict(answer.palette)
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
        return ShareBars(shown)

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
        QTimer.singleShot(0, self, self.grew.emit)

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

    # Where it lies ------------------------------------------------------------------------------

    def wanted_width(self) -> int:
        """Its width where there is room."""
        return 40 * step()

    def strip_size(self) -> QSize:
        """Its size when only its title is left."""
        s = step()
        width = 6 * s + 3 * max(2, s // 3)
        for label in self._head.findChildren(QLabel):
            if not label.isHidden():
                label.ensurePolished()
                width += QFontMetrics(label.font()).horizontalAdvance(label.text()) + s
        for button in (self.pin_button, self.fold_button, self.close_button):
            width += button.sizeHint().width()
        return QSize(width, self.close_button.sizeHint().height() + 3 * s)

    def _open_sizes(self) -> list[QSizeF]:
        """The sizes in which it can lie open, the best first: as tall as its text, then less."""
        s, room = step(), self._stage.size()
        gap = 2 * s
        tallest, sizes = room.height() - gap, []
        for width in (self.wanted_width(), 30 * s):
            width = min(width, room.width() - gap)
            whole = min(self._tall(width), tallest)
            for part in (1.0, 0.75, 0.5, 0.35):
                height = max(whole * part, min(whole, 25 * s))
                sizes.append(QSizeF(max(10, width), max(10.0, round(height))))
        return list({(size.width(), size.height()): size for size in sizes}.values())

    def _tall(self, width: int) -> int:
        """Height that shows all of it at a width."""
        s = step()
        inner = width - 3 * s - s // 2 - round(1.4 * s)
        height = self._body.heightForWidth(inner)
        return self._head.sizeHint().height() + max(height, 12 * s) + 3 * s

    def move_to(self, place: QPoint) -> None:
        """Lay it somewhere by hand, within the page."""
        self.moved = True
        self.move(self._within(place))

    def let_go(self) -> None:
        """Let it be laid anew, even with the mouse or the keys on it."""
        self._laid_for = ""

    def turn(self) -> None:
        """Fold it to its title, or open it again."""
        self.wish = "open" if self.folded else "folded"
        self._laid_for = ""
        self.laid_wanted.emit()

    def lie(self, lying: Ground, *, fold: bool = False) -> None:
        """Lie beside the plant's tag where it hides least, unless laid by hand.

        fold : fold to the title strip unless the person wants it open
        """
        if self.moved:
            self._set_folded(self.wish == "folded" or (fold and self.wish != "open"))
            self.resize(self._moved_size())
            self.move(self._within(self.pos()))
            return
        gap = float(step())
        was = QPointF(self.pos()) if self._laid_for else None
        if not self.folded and self._laid_for == self.code and self._in_use():
            here = QRectF(self.geometry())
            if not here.intersects(lying.tag) and lying.around.contains(here):
                self._grow(lying, here)
                return
        strip = self.wish == "folded" or (fold and self.wish != "open")
        if not strip:
            spot = spot_for(lying, self._open_sizes(), gap, was)
            strip = not spot.good and self.wish != "open"
        if strip:
            spot = spot_for(lying, [QSizeF(self.strip_size())], gap, was)
        self._laid_for = self.code
        self._set_folded(strip)
        self.setGeometry(spot.rect.toRect())

    def _grow(self, lying: Ground, here: QRectF) -> None:
        """Show more of the text below, if nothing that is in sight now is hidden by it."""
        room = lying.around.bottom() - here.top() - step()
        taller = QRectF(here)
        taller.setHeight(min(float(self._tall(self.width())), room))
        if taller.height() > here.height():
            now, then = spot_at(lying, here), spot_at(lying, taller)
            if (then.hidden, then.forbidden) == (now.hidden, now.forbidden):
                self.setGeometry(taller.toRect())

    def _moved_size(self) -> QSize:
        if self.folded:
            return self.strip_size()
        size = self._open_sizes()[0]
        room = self._stage.height() - self.y() - step()
        return QSize(round(size.width()), max(30 * step(), min(round(size.height()), room)))

    def _in_use(self) -> bool:
        """Whether the mouse or the keys are on it, so that it had better not move."""
        focus = QApplication.focusWidget()
        return self.underMouse() or (focus is not None and self.isAncestorOf(focus))

    def _set_folded(self, folded: bool) -> None:
        self.folded = folded
        self._line.setVisible(not folded)
        self._area.setVisible(not folded)
        self.fold_button.setText("▾" if folded else "▴")
        name = self.tr("Open the card") if folded else self.tr("Fold the card to its title")
        self.fold_button.setAccessibleName(name)
        self.fold_button.setToolTip(name)

    def _within(self, place: QPoint) -> QPoint:
        around = self._stage.rect()
        x = max(0, min(place.x(), around.width() - self.width()))
        y = max(0, min(place.y(), around.height() - self.height()))
        return QPoint(x, y)

    def shut(self) -> None:
        """Put the card away."""
        self._laid_for = ""
        self.hide()
        self.lit.emit([])
        self.closed.emit()

    def keyPressEvent(self, event: QKeyEvent) -> None:
        if event.key() == Qt.Key.Key_Escape:
            self.shut()
            return
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

    def paintEvent(self, event: QPaintEvent) -> None:
        colours, s = current(), step()
        painter = QPainter(self)
        try:
            painter.setRenderHint(QPainter.RenderHint.Antialiasing)
            box = QRectF(self.rect()).adjusted(1, 1, -4, -4)
            shade = QColor(0, 0, 0, 26)
            painter.setPen(Qt.PenStyle.NoPen)
            painter.setBrush(shade)
            painter.drawPath(tag_path(box.translated(3, 3), 2.2 * s))
            painter.setBrush(colours.paper)
            painter.setPen(QPen(colours.rule, 1.2))
            painter.drawPath(tag_path(box, 2.2 * s))
            painter.setPen(QPen(colours.soft, 1.2))
            painter.setBrush(colours.window)
            middle = self._head.geometry().center().y() + s / 4
            painter.drawEllipse(QPointF(1.6 * s, middle), 0.55 * s, 0.55 * s)
        finally:
            painter.end()
