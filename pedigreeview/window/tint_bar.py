"""The control that chooses what plants are tinted by, and the key of the colours beside it."""

from __future__ import annotations

from collections.abc import Sequence
from typing import TYPE_CHECKING

from PySide6.QtCore import QRectF, QSignalBlocker, QSize, Qt, Signal
from PySide6.QtGui import QColor, QPainter, QPaintEvent, QPen
from PySide6.QtWidgets import QComboBox, QFrame, QSizePolicy, QWidget

from pedigreeview.drawing.gene_tint import gene_choices
from pedigreeview.drawing.overview_raster import pattern
from pedigreeview.drawing.signs import colour
from pedigreeview.drawing.tinting import Tint, TintKey, Wanted
from pedigreeview.window.labels import Flow, column, sentence
from pedigreeview.window.style import current, step

if TYPE_CHECKING:
    from pedigreeview.network import PedigreeNetwork

__all__ = ["KeyView", "TintBar"]

_MOST_LISTED = 400
"""Founders that are listed at most; a longer list is no help."""


class KeyView(QWidget):
    """The key of a tint: a ramp with numbers, or a patch with its words for each class."""

    def __init__(self) -> None:
        super().__init__()
        self._key: TintKey | None = None
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)
        self.hide()

    def show_key(self, key: TintKey | None) -> None:
        """Show a key; None shows nothing."""
        self._key = key
        words = key.words() if key is not None else ""
        self.setAccessibleName(self.tr("Key of the tint"))
        self.setAccessibleDescription(words)
        self.setToolTip(words)
        self.setVisible(key is not None and bool(key.ramp or key.entries))
        self.updateGeometry()
        self.update()

    def key(self) -> TintKey | None:
        """The key on show."""
        return self._key

    def _cells(self) -> list[tuple[str, str]]:
        """Colour and words of every patch."""
        if self._key is None:
            return []
        return [(item.colour, f"{item.words} {item.plants:,}") for item in self._key.entries]

    def _places(self, width: int) -> tuple[list[QRectF], int]:
        """Where the patches with their words lie at a width, and the height that they take."""
        metrics, line = self.fontMetrics(), self._line()
        x = y = 0.0
        found = []
        for _, words in self._cells():
            wide = metrics.horizontalAdvance(words) + line + step()
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
        side = self._line() / 2
        places = self._places(self.width())[0]
        for number, ((shade, words), rect) in enumerate(zip(self._cells(), places, strict=True)):
            patch = QRectF(rect.left(), rect.center().y() - side / 2, side * 1.3, side)
            painter.fillRect(patch, colour(shade))
            self._pattern(painter, number, patch, shade)
            painter.setPen(QPen(current().soft, 1))
            painter.drawRect(patch)
            painter.setPen(current().ink)
            painter.drawText(
                rect.adjusted(side * 1.3 + 5, 0, 0, 0), Qt.AlignmentFlag.AlignVCenter, words
            )

    def _pattern(self, painter: QPainter, number: int, patch: QRectF, shade: str) -> None:
        """The marks by which the map tells a class without its colour."""
        marks = pattern(number, int(patch.height()), int(patch.width()))
        dark = QColor(shade).darker(200)
        for y, x in zip(*(side.tolist() for side in marks.nonzero()), strict=True):
            painter.fillRect(QRectF(patch.left() + x, patch.top() + y, 1, 1), dark)


class TintBar(QFrame):
    """Chooses the tint; says what is wanted and shows the key of what came of it."""

    wanted = Signal(object)
    """A `Wanted`, or None for plain paper."""

    def __init__(self) -> None:
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
        self.key = KeyView()
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
