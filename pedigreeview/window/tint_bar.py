"""The control that chooses what plants are tinted by, and the key of the colours beside it."""

from __future__ import annotations

from collections.abc import Sequence
from typing import TYPE_CHECKING, NamedTuple

from PySide6.QtCore import QRectF, QSignalBlocker, QSize, Qt, Signal
from PySide6.QtGui import QColor, QPainter, QPaintEvent, QPen
from PySide6.QtWidgets import QComboBox, QFrame, QSizePolicy, QWidget

from pedigreeview.drawing.gene_tint import gene_choices
from pedigreeview.drawing.overview_raster import pattern
from pedigreeview.drawing.signs import colour
from pedigreeview.drawing.tags import Dress, draw_swatch, tag_path
from pedigreeview.drawing.theme import theme
from pedigreeview.drawing.tinting import Tint, TintKey, Wanted
from pedigreeview.window.labels import Flow, column, sentence
from pedigreeview.window.saying import say
from pedigreeview.window.style import current, current_name, step
from pedigreeview.window.words import number

if TYPE_CHECKING:
    from pedigreeview.network import PedigreeNetwork

__all__ = ["KeyView", "TintBar"]

_MOST_LISTED = 400
"""Founders that are listed at most; a longer list is no help."""


class _Cell(NamedTuple):
    """A patch of the key with what stands beside it."""

    dress: Dress
    words: str
    plants: str


class KeyView(QWidget):
    """The key of a tint: a ramp with numbers, or a patch with its words for each class.

    marked : whether the classes carry marks besides their colours, as on the map
    """

    def __init__(self, *, marked: bool = False) -> None:
        super().__init__()
        self._key: TintKey | None = None
        self._mixed, self._marked = False, marked
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)
        self.hide()

    def show_key(self, key: TintKey | None) -> None:
        """Show a key; None shows nothing."""
        self._key = key
        words = say(key.words()) if key is not None else ""
        self.setAccessibleName(self.tr("Key of the tint"))
        self.setAccessibleDescription(words)
        self.setToolTip(words)
        self.setVisible(key is not None and bool(key.ramp or key.entries))
        self.updateGeometry()
        self.update()

    def key(self) -> TintKey | None:
        """The key on show."""
        return self._key

    def show_mixed(self, mixed: bool) -> None:
        """Say whether the picture has packs of plants that differ."""
        if mixed != self._mixed:
            self._mixed = mixed
            self.updateGeometry()
            self.update()

    def _cells(self) -> list[_Cell]:
        """Every patch, as the tags of its class look, with its words and its count."""
        key, patterned = self._key, theme(current_name()).patterned
        if key is None or not key.entries:
            return []
        found = [
            _Cell(Dress(tint="" if patterned else item.colour, mark=at), say(item.words), count)
            for at, item in enumerate(key.entries)
            for count in (f"{number(item.plants)}",)
        ]
        if self._mixed:
            ends = (key.entries[0].colour, 0.5), (key.entries[-1].colour, 0.5)
            found.append(_Cell(Dress(mixed=ends), self.tr("mixed pack"), ""))
        if key.missing:
            found.append(_Cell(Dress(), self.tr("no value"), number(key.missing)))
        return found

    def _places(self, width: int) -> tuple[list[QRectF], int]:
        """Where the patches with their words lie at a width, and the height that they take."""
        metrics, line = self.fontMetrics(), self._line()
        x = y = 0.0
        found = []
        for cell in self._cells():
            wide = metrics.horizontalAdvance(cell.words) + line + 2 * step()
            if cell.plants:
                wide += metrics.horizontalAdvance(cell.plants) + step()
            if x and x + wide > width:
                x, y = 0.0, y + line
            found.append(QRectF(x, y, wide, line))
            x += wide
        return found, round(y + line)

    def _line(self) -> int:
        return round(self.fontMetrics().height() * 1.9)

    def sizeHint(self) -> QSize:
        if self._key is not None and self._key.ramp:
            return QSize(34 * step(), round(self.fontMetrics().height() * 1.9))
        if self._key is None:
            return QSize(0, 0)
        wide = sum(rect.width() for rect in self._places(10**6)[0])
        return QSize(round(min(wide, 90 * step())), self.heightForWidth(90 * step()))

    def minimumSizeHint(self) -> QSize:
        return QSize(12 * step(), self.sizeHint().height())

    def hasHeightForWidth(self) -> bool:
        return True

    def heightForWidth(self, width: int) -> int:
        if self._key is not None and self._key.ramp:
            return round(self.fontMetrics().height() * 1.9)
        return self._places(width)[1]

    def paintEvent(self, event: QPaintEvent) -> None:
        if self._key is None:
            return
        painter = QPainter(self)
        try:
            painter.setRenderHint(QPainter.RenderHint.TextAntialiasing)
            if self._key.ramp:
                # The scale is not turned round, so neither are the numbers below it.
                painter.setLayoutDirection(Qt.LayoutDirection.LeftToRight)
                self._ramp(painter, self._key)
            else:
                self._patches(painter)
        finally:
            painter.end()

    def _ramp(self, painter: QPainter, key: TintKey) -> None:
        metrics = self.fontMetrics()
        first = metrics.horizontalAdvance(key.ticks[0][1]) / 2 if key.ticks else 0
        last = metrics.horizontalAdvance(key.ticks[-1][1]) / 2 if key.ticks else 0
        high = metrics.height() * 0.7
        bar = QRectF(first + 1, 1, self.width() - first - last - 2, high)
        each = bar.width() / len(key.ramp)
        for at, shade in enumerate(key.ramp):
            painter.fillRect(
                QRectF(bar.left() + at * each, bar.top(), each + 1, high).intersected(bar),
                colour(shade),
            )
        painter.setPen(QPen(current().soft, 1))
        painter.drawRect(bar)
        painter.setPen(current().ink)
        for place, text in key.ticks:
            x = bar.left() + place * bar.width()
            wide = metrics.horizontalAdvance(text)
            painter.drawText(
                QRectF(x - wide / 2, bar.bottom() + 1, wide + 1, metrics.height()),
                Qt.AlignmentFlag.AlignLeft,
                text,
            )

    def _patches(self, painter: QPainter) -> None:
        high, colours = self._line() * 0.6, current()
        metrics = self.fontMetrics()
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        for cell, rect in zip(self._cells(), self._places(self.width())[0], strict=True):
            patch = QRectF(rect.left() + 1, rect.center().y() - high / 2, high * 1.4, high)
            draw_swatch(painter, patch, theme(current_name()), cell.dress)
            if self._marked:
                self._pattern(painter, cell.dress, patch)
            words = rect.adjusted(high * 1.4 + step() * 0.75, 0, 0, 0)
            painter.setPen(colours.ink)
            painter.drawText(words, Qt.AlignmentFlag.AlignVCenter, cell.words)
            words.setLeft(words.left() + metrics.horizontalAdvance(cell.words) + step())
            painter.setPen(colours.soft)
            painter.drawText(words, Qt.AlignmentFlag.AlignVCenter, cell.plants)

    def _pattern(self, painter: QPainter, dress: Dress, patch: QRectF) -> None:
        """The marks by which the map tells a class without its colour, made as there."""
        if dress.mark < 0 or not dress.tint:
            return
        marks = pattern(dress.mark, int(patch.height()) - 1, int(patch.width()) - 1)
        dark = QColor(dress.tint).darker(200)
        outline = tag_path(patch, min(6.0, patch.height() * 0.3))
        for y, x in zip(*(side.tolist() for side in marks.nonzero()), strict=True):
            spot = QRectF(patch.left() + x + 0.5, patch.top() + y + 0.5, 1, 1)
            if outline.contains(spot):
                painter.fillRect(spot, dark)


class TintBar(QFrame):
    """Chooses the tint; says what is wanted and shows the key of what came of it."""

    wanted = Signal(object)
    """A `Wanted`, or None for plain paper."""

    def __init__(self, *, marked: bool = False) -> None:
        super().__init__()
        self.setObjectName("tints")
        s = step()
        self._focus = ""
        outer = column(max(2, s // 3))
        self.setLayout(outer)
        flow = Flow(s)
        self.kind = QComboBox()
        self.kind.setAccessibleName(self.tr("Tint plants by"))
        self.kind.setToolTip(self.tr("What the colours of the plants say"))
        for word, text in (
            ("", self.tr("Founders")),
            ("coancestry", self.tr("Coancestry with the focus")),
            ("founder", self.tr("Share of a founder")),
            ("cytoplasm", self.tr("Cytoplasm")),
            ("generation", self.tr("Generation")),
            ("inbreeding", self.tr("Inbreeding F")),
            ("status", self.tr("Status")),
            ("trait", self.tr("A trait")),
            ("gene", self.tr("A gene")),
        ):
            self.kind.addItem(text, word)
        self.founder = QComboBox()
        self.founder.setAccessibleName(self.tr("Founder"))
        self.trait = QComboBox()
        self.trait.setAccessibleName(self.tr("Trait"))
        self.gene = QComboBox()
        self.gene.setAccessibleName(self.tr("Gene and allele that may be carried"))
        self.key = KeyView(marked=marked)
        self.note = sentence("", "soft")
        for widget in (self.kind, self.founder, self.trait, self.gene, self.key):
            flow.addWidget(widget)
        outer.addLayout(flow)
        outer.addWidget(self.note)
        self.founder.hide()
        self.trait.hide()
        self.gene.hide()
        self.note.hide()
        for box in (self.kind, self.founder, self.trait, self.gene):
            box.setSizeAdjustPolicy(QComboBox.SizeAdjustPolicy.AdjustToContents)
            box.activated.connect(self._chosen)

    def set_network(
        self, net: PedigreeNetwork | None, founders: Sequence[str] | None = None
    ) -> None:
        """Offer the founders and traits of a book; the tint is taken away.

        founders : those to offer; by default all, which takes a moment in a large book
        """
        blocked = [QSignalBlocker(box) for box in (self.founder, self.trait, self.gene)]
        with blocked[0], blocked[1], blocked[2]:
            self.founder.clear()
            self.trait.clear()
            self.gene.clear()
            if net is not None:
                plants = net.book.plants
                for code in (net.founders if founders is None else founders)[:_MOST_LISTED]:
                    name = plants[code].name
                    self.founder.addItem(f"{code}  {name}" if name else code, code)
                for trait in net.book.traits:
                    self.trait.addItem(trait, trait)
                for choice in gene_choices(net):
                    self.gene.addItem(self.tr("carries {}").format(choice), choice)
        self._focus = ""
        self.choose(None)

    def set_focus(self, code: str, *, ask: bool = True) -> None:
        """Tell which plant the coancestry is with; asks anew while that is the tint."""
        changed, self._focus = code != self._focus, code
        if ask and changed and code and self.kind.currentData() == "coancestry":
            self.wanted.emit(self.current())

    def current(self) -> Wanted | None:
        """What is chosen."""
        kind = self.kind.currentData()
        of = {
            "coancestry": self._focus,
            "founder": self.founder.currentData() or "",
            "trait": self.trait.currentData() or "",
            "gene": self.gene.currentData() or "",
        }
        if not kind or (kind in of and not of[kind]):
            return None
        return Wanted(kind, of.get(kind, ""))

    def choose(self, wanted: Wanted | None) -> None:
        """Set what is chosen, without saying so by signal."""
        kind = wanted.kind if wanted is not None else ""
        for box, value in (
            (self.kind, kind),
            (self.founder, wanted.of if wanted is not None and kind == "founder" else None),
            (self.trait, wanted.of if wanted is not None and kind == "trait" else None),
            (self.gene, wanted.of if wanted is not None and kind == "gene" else None),
        ):
            if value is not None and box.findData(value) >= 0:
                box.setCurrentIndex(box.findData(value))
        self._fit_boxes()
        if wanted is None:
            with QSignalBlocker(self.kind):
                self.kind.setCurrentIndex(0)
            self._fit_boxes()
            self.show_tint(None)

    def show_tint(self, tint: Tint | None) -> None:
        """Show the key of a tint that has been made."""
        self.key.show_key(tint.key if tint is not None else None)
        self.say(tint.key.note if tint is not None else "")

    def say(self, words: str) -> None:
        """A sentence under the control, such as why there is no tint."""
        self.note.setText(words)
        self.note.setVisible(bool(words))

    def _fit_boxes(self) -> None:
        self.founder.setVisible(self.kind.currentData() == "founder")
        self.trait.setVisible(self.kind.currentData() == "trait")
        self.gene.setVisible(self.kind.currentData() == "gene" and self.gene.count() > 0)

    def _chosen(self) -> None:
        self._fit_boxes()
        wanted = self.current()
        if wanted is None:
            self.show_tint(None)
            if self.kind.currentData() == "coancestry":
                self.say(self.tr("Choose a plant to put in focus first."))
            elif self.kind.currentData() == "trait":
                self.say(self.tr("The book has no traits."))
            elif self.kind.currentData() == "gene":
                self.say(self.tr("The book has no genes. Write one down: Write, Gene …"))
        self.wanted.emit(wanted)
