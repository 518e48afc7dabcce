"""A plant's card: its seed tag unfolded, lying beside the plant in the picture.

It can be moved by its head, closed, and read from top to bottom: what the plant is, where it comes
from, what the numbers say, whom it was crossed with, what was seen of it.
"""

from __future__ import annotations

from collections.abc import Sequence
from typing import TYPE_CHECKING

from PySide6.QtCore import QPoint, QPointF, QRectF, QSize, Qt, Signal
from PySide6.QtGui import QColor, QKeyEvent, QMouseEvent, QPainter, QPaintEvent, QPen
from PySide6.QtWidgets import QHBoxLayout, QSizePolicy, QVBoxLayout, QWidget

from pedigreeview.window.answers import PlantAnswer, percent
from pedigreeview.window.labels import (
    LinkLabel,
    action_button,
    clear,
    column,
    heading,
    plain_button,
    rule,
    scrolled,
    sentence,
    why_button,
)
from pedigreeview.window.rail import tag_path
from pedigreeview.window.style import current, founder_colour, step
from pedigreeview.window.words import (
    count,
    cross_line,
    doubt_words,
    kind_word,
    link,
    links,
    named,
    origin,
    status_word,
)

if TYPE_CHECKING:
    from pedigreeview.network import PedigreeNetwork

__all__ = ["Card", "ShareBars"]

_SCORES = 8
_FOUNDERS = 12


class ShareBars(QWidget):
    """Founder shares as bars, in the colours of the stripe on the tag."""

    def __init__(self, shown: list[tuple[str, float, str, QColor]]) -> None:
        super().__init__()
        self._shown = shown
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)
        words = "; ".join(f"{name} {text}" for name, _, text, _ in shown)
        self.setAccessibleName(self.tr("Founder shares: {}").format(words))

    def _line(self) -> int:
        return self.fontMetrics().height() + 2 * step()

    def sizeHint(self) -> QSize:
        return QSize(20 * step(), self._line() * len(self._shown))

    def paintEvent(self, event: QPaintEvent) -> None:
        colours, s = current(), step()
        painter = QPainter(self)
        try:
            painter.setRenderHint(QPainter.RenderHint.Antialiasing)
            text_height = self.fontMetrics().height()
            for at, (name, share, text, colour) in enumerate(self._shown):
                top = at * self._line()
                box = QRectF(0, top, self.width(), text_height)
                painter.setPen(colours.ink)
                width = self.fontMetrics().horizontalAdvance(text)
                shown = self.fontMetrics().elidedText(
                    name, Qt.TextElideMode.ElideRight, max(0, self.width() - width - 2 * s)
                )
                painter.drawText(box, int(Qt.AlignmentFlag.AlignLeft), shown)
                painter.setPen(colours.soft)
                painter.drawText(box, int(Qt.AlignmentFlag.AlignRight), text)
                bar = QRectF(0.5, top + text_height + s // 4, self.width() - 1, 0.75 * s)
                painter.setPen(QPen(colours.rule, 1))
                painter.setBrush(Qt.BrushStyle.NoBrush)
                painter.drawRect(bar)
                painter.setPen(Qt.PenStyle.NoPen)
                painter.setBrush(colour)
                painter.drawRect(QRectF(bar.left(), bar.top(), bar.width() * share, bar.height()))
        finally:
            painter.end()


class _Head(QWidget):
    """The upper part of the tag: code and name; the whole card is dragged by it."""

    def __init__(self, card: Card) -> None:
        super().__init__()
        self._card = card
        self._from: QPoint | None = None
        self.setCursor(Qt.CursorShape.OpenHandCursor)
        self.setToolTip(self.tr("Drag to move the card"))

    def mousePressEvent(self, event: QMouseEvent) -> None:
        if event.button() == Qt.MouseButton.LeftButton:
            self._from = event.globalPosition().toPoint() - self._card.pos()
            self.setCursor(Qt.CursorShape.ClosedHandCursor)

    def mouseMoveEvent(self, event: QMouseEvent) -> None:
        if self._from is not None:
            self._card.move_to(event.globalPosition().toPoint() - self._from)

    def mouseReleaseEvent(self, event: QMouseEvent) -> None:
        self._from = None
        self.setCursor(Qt.CursorShape.OpenHandCursor)


class Card(QWidget):
    """The card of one plant at a time."""

    plant_wanted = Signal(str)
    pin_wanted = Signal(str)
    focus_wanted = Signal(str)
    closed = Signal()

    def __init__(self, parent: QWidget) -> None:
        super().__init__(parent)
        self._stage = parent
        self.setObjectName("card")
        self.code = ""
        self.moved = False
        """Whether the person has laid it somewhere; it then stays there."""
        s = step()
        outer = QVBoxLayout(self)
        outer.setSpacing(0)
        outer.setContentsMargins(3 * s, s, s // 2, s)
        self._head = _Head(self)
        head = QHBoxLayout(self._head)
        head.setContentsMargins(0, s, s, s // 2)
        self._title = column()
        head.addLayout(self._title, 1)
        self.close_button = plain_button("✕", self.tr("Close the card"), self.shut)
        head.addWidget(self.close_button, 0, Qt.AlignmentFlag.AlignTop)
        outer.addWidget(self._head)
        outer.addWidget(rule())
        inner = QWidget()
        self._body = column(s)
        self._body.setContentsMargins(0, s, 2 * s, s)
        inner.setLayout(self._body)
        self._area = scrolled(inner)
        outer.addWidget(self._area, 1)
        self._numbers: QVBoxLayout | None = None
        self.hide()

    # What stands on it --------------------------------------------------------------------------

    def show_plant(self, net: PedigreeNetwork, code: str, *, pinned: bool) -> None:
        """Lay out what the records say; the numbers follow by `show_numbers`."""
        self.code = code
        book, plant, s = net.book, net.book.plants[code], step()
        clear(self._title)
        clear(self._body)
        self._title.addWidget(heading(code, 2))
        if plant.name and plant.name != code:
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
        self._add_doubt(net, code)
        parents = net.parent_codes(code)
        if parents:
            self._add_links(self.tr("Parents"), links(parents))
        progeny = net.progeny(code)
        if progeny:
            title = self.tr("Progeny, {}").format(len(progeny))
            self._add_links(title, links(progeny, 12))
        else:
            self._add_links(self.tr("Progeny"), self.tr("none recorded"))
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
        self._add_scores(net, code)
        row = QHBoxLayout()
        row.setSpacing(s)
        self.pin_button = action_button(
            self.tr("Take the pin out") if pinned else self.tr("Pin to compare"),
            lambda: self.pin_wanted.emit(self.code),
        )
        row.addWidget(self.pin_button)
        row.addStretch(1)
        self._body.addSpacing(s)
        self._body.addLayout(row)
        self._body.addStretch(1)
        self._area.verticalScrollBar().setValue(0)

    def show_numbers(self, net: PedigreeNetwork, answer: PlantAnswer) -> None:
        """Put in F and founder shares when they have come."""
        if answer.code != self.code or self._numbers is None:
            return
        clear(self._numbers)
        if answer.inbreeding is None:
            self._numbers.addWidget(sentence(answer.withheld, "warn"))
            return
        figure = sentence(answer.inbreeding.text, "number")
        figure.setObjectName("inbreeding")
        self._numbers.addWidget(figure)
        self._numbers.addWidget(sentence(answer.inbreeding.words))
        self._add_why(self._numbers, answer.inbreeding.why)
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
            shown.append(
                (
                    self.tr("unknown"),
                    answer.unknown_share,
                    percent(answer.unknown_share),
                    founder_colour(None),
                )
            )
        self._caption(self._numbers, self.tr("Founder shares"))
        self._numbers.addWidget(ShareBars(shown))

    def _add_why(self, layout: QVBoxLayout, why: str) -> None:
        text = sentence(why, "soft")
        text.hide()
        button = why_button(self.tr("Why this number"))
        button.toggled.connect(text.setVisible)
        layout.addWidget(button, 0, Qt.AlignmentFlag.AlignLeft)
        layout.addWidget(text)

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

    def _add_doubt(self, net: PedigreeNetwork, code: str) -> None:
        held = net.parents(code)
        cross = net.book.crosses.get(held.cross)
        if cross is None:
            return
        for side, grade in (
            (self.tr("Seed parent"), cross.seed_doubt),
            (self.tr("Pollen parent"), cross.pollen_doubt),
        ):
            if grade and grade != "certain":
                self._body.addWidget(sentence(f"{side}: {doubt_words(grade)}.", "warn"))
        for row in net.book.findings().get(code, ()) if held.finding else ():
            if row.text:
                self._body.addWidget(sentence(row.text, "soft"))

    def _add_crosses(self, net: PedigreeNetwork, code: str) -> None:
        as_seed, as_pollen = net.crosses_of(code)
        candidates = {row.cross for row in net.book.pollen_candidates}
        for title, crosses in (
            (self.tr("Crosses as seed parent"), as_seed),
            (self.tr("Crosses as pollen parent"), as_pollen),
        ):
            if not crosses:
                continue
            lines = []
            for cross_code in crosses[:_SCORES]:
                cross = net.book.crosses[cross_code]
                progeny = net.progeny_of_cross(cross_code)
                signs = cross_line(net.book, cross, cross_code in candidates)
                text = signs if cross_code.startswith(signs) else f"{cross_code}: {signs}"
                after = count(len(progeny), self.tr("plant"), self.tr("plants"))
                lines.append(f"{link(progeny[0], text) if progeny else text}, {after}")
            if len(crosses) > _SCORES:
                lines.append(self.tr("and {} more").format(len(crosses) - _SCORES))
            self._add_links(title, "<br>".join(lines))

    def _add_facts(self, net: PedigreeNetwork, code: str) -> None:
        plant = net.book.plants[code]
        facts = [
            (self.tr("Sown"), plant.sown),
            (self.tr("Place"), plant.place),
            (self.tr("Protected"), plant.protected),
            (self.tr("Note"), plant.note),
            *plant.extra.items(),
        ]
        for title, text in facts:
            if text:
                part = column(max(1, step() // 4))
                self._caption(part, title)
                part.addWidget(sentence(text))
                self._body.addLayout(part)

    def _add_scores(self, net: PedigreeNetwork, code: str) -> None:
        rows = [row for row in net.book.scores if row.plant == code and row.value]
        if not rows:
            return
        rows.sort(key=lambda row: row.date, reverse=True)
        lines = []
        for row in rows[:_SCORES]:
            trait = net.book.traits.get(row.trait)
            unit = f" {trait.unit}" if trait is not None and trait.unit else ""
            of = self.tr(" (of its seed)") if row.of == "seed" else ""
            lines.append(f"{row.trait}: {row.value}{unit}{of}   {row.date}".rstrip())
        part = column(max(1, step() // 4))
        self._caption(part, self.tr("Latest scores"))
        part.addWidget(sentence("\n".join(lines)))
        self._body.addLayout(part)

    # Where it lies ------------------------------------------------------------------------------

    def wanted_size(self) -> QSize:
        """Its size where there is room."""
        s = step()
        return QSize(40 * s, 64 * s)

    def move_to(self, place: QPoint) -> None:
        """Lay it somewhere by hand, within the page."""
        self.moved = True
        self.move(self._within(place))

    def lie_beside(self, tag: QRectF, others: Sequence[QRectF] = ()) -> None:
        """Lie beside the plant's tag where it hides least of the others, unless laid by hand."""
        around, gap = QRectF(self._stage.rect()), 2.0 * step()
        wanted = self.wanted_size()
        beside = max(around.width() - tag.right(), tag.left()) - 2 * gap
        width = min(wanted.width(), around.width() - gap, max(beside, 26.0 * step()))
        height = min(wanted.height(), around.height() - 2 * gap)
        self.resize(max(10, round(width)), max(10, round(height)))
        if self.moved:
            self.move(self._within(self.pos()))
            return
        size = QRectF(self.rect()).size()
        lefts = (tag.right() + gap, tag.left() - gap - width, around.right() - width - gap, gap)
        tops = (tag.top() - gap, gap, around.bottom() - height - gap, tag.bottom() + gap - height)
        places = [
            QRectF(QPointF(self._within(QPoint(round(left), round(top)))), size)
            for left in lefts
            for top in tops
        ]

        def hides(place: QRectF) -> float:
            far = abs(place.center().x() - tag.center().x()) / max(1.0, around.width())
            covered = sum(place.intersects(other) for other in others)
            return 50.0 * place.intersects(tag) + covered + 2.0 * far

        self.move(min(places, key=hides).topLeft().toPoint())

    def _within(self, place: QPoint) -> QPoint:
        around = self._stage.rect()
        x = max(0, min(place.x(), around.width() - self.width()))
        y = max(0, min(place.y(), around.height() - self.height()))
        return QPoint(x, y)

    def shut(self) -> None:
        """Put the card away."""
        self.hide()
        self.closed.emit()

    def keyPressEvent(self, event: QKeyEvent) -> None:
        if event.key() == Qt.Key.Key_Escape:
            self.shut()
            return
        super().keyPressEvent(event)

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
            painter.drawEllipse(QPointF(1.6 * s, 3.4 * s), 0.55 * s, 0.55 * s)
        finally:
            painter.end()
