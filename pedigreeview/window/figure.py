"""One number of the window: its name, the number, a plain sentence, and 'Why?' beside it."""

from __future__ import annotations

from html import escape
from typing import TYPE_CHECKING

from PySide6.QtCore import Qt, QTimer, Signal
from PySide6.QtWidgets import QHBoxLayout, QScrollArea, QWidget

from pedigreeview.window.answers import Withheld
from pedigreeview.window.labels import LinkLabel, column, sentence, why_button
from pedigreeview.window.saying import say
from pedigreeview.window.style import step
from pedigreeview.window.why_panel import WhyPanel
from pedigreeview.window.words import CHECKS, links, page_link

if TYPE_CHECKING:
    from pedigreeview.network import PedigreeNetwork

__all__ = ["Figure", "WithheldNotice"]


class Figure(QWidget):
    """A number that opens its explanation.

    Parameters
    ----------
    name : what the number is
    key : object name of its label, by which it is found
    text : the number as a person reads it; '' where `body` shows it
    words : one plain sentence
    body : shown in place of, or below, the number
    """

    why_wanted = Signal()
    """'Why?' was asked, and nothing stands in the panel yet."""
    lit = Signal(object)

    def __init__(
        self, name: str, key: str, text: str = "", words: str = "", body: QWidget | None = None
    ) -> None:
        super().__init__()
        self.key = key
        self._quiet = False
        s = step()
        part = column(max(1, s // 4))
        self.setLayout(part)
        row = QHBoxLayout()
        row.setSpacing(s)
        self.button = why_button(self.tr("Why this number: {}").format(name))
        caption = sentence(name, "caption")
        if text:
            part.addWidget(caption)
            number = sentence(text, "number")
            number.setObjectName(key)
            number.setAccessibleName(f"{name}: {text}")
            row.addWidget(number, 1)
        else:
            row.addWidget(caption, 1)
        row.addWidget(self.button, 0, Qt.AlignmentFlag.AlignVCenter)
        part.addLayout(row)
        if words:
            part.addWidget(sentence(words))
        if body is not None:
            part.addWidget(body)
        self.panel = WhyPanel(self.tr("Why: {}").format(name), self.button)
        self.panel.lit.connect(self.lit)
        self.panel.hide()
        part.addSpacing(max(1, s // 4))
        part.addWidget(self.panel)
        self.button.toggled.connect(self._toggled)

    def unfold(self) -> None:
        """Open the panel without being asked, so without scrolling to it."""
        self._quiet = True
        self.button.setChecked(True)
        self._quiet = False

    def _toggled(self, unfolded: bool) -> None:
        if unfolded and not self.panel.filled:
            self.panel.show_waiting()
            self.why_wanted.emit()
        self.panel.setVisible(unfolded)
        if unfolded and not self._quiet:
            QTimer.singleShot(0, self, self._reveal)
        else:
            self.panel.put_out()

    def _reveal(self) -> None:
        """Scroll by as little as shows the head of the panel."""
        above: QWidget | None = self.parentWidget()
        while above is not None and not isinstance(above, QScrollArea):
            above = above.parentWidget()
        inner = above.widget() if above is not None else None
        if above is None or inner is None:
            return
        top = self.panel.mapTo(inner, self.panel.rect().topLeft()).y()
        shown = min(self.panel.height(), above.viewport().height() // 2)
        above.ensureVisible(0, top + shown, 0, step())


class WithheldNotice(QWidget):
    """In place of numbers that are not given: why, the plants behind it as links, the mend."""

    followed = Signal(str)
    checks_wanted = Signal()

    def __init__(self, net: PedigreeNetwork, withheld: Withheld) -> None:
        super().__init__()
        part = column(max(2, step() // 2))
        self.setLayout(part)
        see = self.tr("see {}").format(page_link(CHECKS, self.tr("Checks")))
        self.words = LinkLabel(f"{escape(say(withheld.words).rstrip('.'))}; {see}.", "warn")
        self.words.page_wanted.connect(lambda page: self.checks_wanted.emit())
        part.addWidget(self.words)
        if withheld.cause:
            part.addWidget(sentence(withheld.cause))
        self.places: LinkLabel | None = None
        known = [code for code in withheld.plants if code in net.book.plants]
        if known:
            self.places = LinkLabel(self.tr("Go there: {}").format(links(known, 12)))
            self.places.setAccessibleName(self.tr("Plants behind this"))
            self.places.followed.connect(self.followed)
            part.addWidget(self.places)
        if withheld.mend:
            part.addWidget(sentence(self.tr("Mend: {}").format(withheld.mend), "soft"))
