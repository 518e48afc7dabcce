"""Why a number is what it is: what adds up to it, through whom, by which rule, on which base.

A panel shows an `Explanation` of the network, or a `Reason` where a number is no sum over
ancestors.  Pointing at an ancestor or a path, by mouse or by keys, lights it up in the picture; a
click keeps it lit.
"""

from __future__ import annotations

from fractions import Fraction
from html import escape
from typing import TYPE_CHECKING

from PySide6.QtCore import QEvent, QSize, Qt, Signal
from PySide6.QtGui import QEnterEvent, QFocusEvent
from PySide6.QtWidgets import QFrame, QLabel, QPushButton, QSizePolicy, QVBoxLayout, QWidget

from pedigreeview.window.answers import Reason, percent
from pedigreeview.window.labels import clear, column, sentence
from pedigreeview.window.saying import say
from pedigreeview.window.style import step
from pedigreeview.window.words import count, named

if TYPE_CHECKING:
    from pedigreeview.book.book import Book
    from pedigreeview.network import CommonAncestor, Explanation

__all__ = ["LitLine", "Path", "WhyPanel"]

_PATHS = 6
"""Paths listed of each ancestor; the others are counted."""
_ANCESTORS = 20
_COUNTED = 1_000_000_000
"""A larger number of paths says no more than that."""

Path = tuple[str, ...]


class LitLine(QPushButton):
    """A line to point at: it lights paths while the mouse or the keys are on it.

    Unlike the text of a button its own runs on to further lines, so that long paths can be read.
    """

    pointed = Signal(object)

    def __init__(self, html: str, name: str, paths: list[Path], indent: int = 0) -> None:
        super().__init__()
        self.paths = paths
        self._name = name
        self.setProperty("role", "lit")
        self.setCheckable(True)
        self.setAccessibleName(name)
        self.setSizePolicy(QSizePolicy.Policy.Ignored, QSizePolicy.Policy.Minimum)
        s = step()
        inner = column()
        inner.setContentsMargins(s + indent, max(1, s // 4), s // 2, max(1, s // 4))
        self._label = QLabel(html)
        self._label.setTextFormat(Qt.TextFormat.RichText)
        self._label.setWordWrap(True)
        self._label.setAttribute(Qt.WidgetAttribute.WA_TransparentForMouseEvents)
        inner.addWidget(self._label)
        self.setLayout(inner)

    def full_text(self) -> str:
        """What it says, as plain text."""
        return self._name

    def sizeHint(self) -> QSize:
        layout = self.layout()
        return layout.sizeHint() if layout is not None else super().sizeHint()

    def minimumSizeHint(self) -> QSize:
        layout = self.layout()
        return layout.minimumSize() if layout is not None else super().minimumSizeHint()

    def enterEvent(self, event: QEnterEvent) -> None:
        super().enterEvent(event)
        self.pointed.emit(self.paths)

    def leaveEvent(self, event: QEvent) -> None:
        super().leaveEvent(event)
        self.pointed.emit([])

    def focusInEvent(self, event: QFocusEvent) -> None:
        super().focusInEvent(event)
        self.pointed.emit(self.paths)

    def focusOutEvent(self, event: QFocusEvent) -> None:
        super().focusOutEvent(event)
        self.pointed.emit([])


class WhyPanel(QFrame):
    """What unfolds under a number when 'Why?' is asked."""

    lit = Signal(object)
    """Paths to light up in the picture; an empty list: none that this panel asks for."""

    def __init__(self, name: str, after: QWidget) -> None:
        super().__init__()
        self._after = after
        """The keys come from here to the lines."""
        self._lines: list[LitLine] = []
        self.setProperty("role", "why")
        self.setAccessibleName(name)
        self._book: Book | None = None
        self._kept: list[Path] = []
        self.paths: list[Path] = []
        """All paths that are listed or stand behind a line."""
        self.filled = False
        s = step()
        self._body = column(max(2, s // 2))
        self._body.setContentsMargins(s, s // 2, s // 2, s)
        self.setLayout(self._body)

    def lines(self) -> list[LitLine]:
        """The lines that can be pointed at, from top to bottom."""
        return list(self._lines)

    def show_waiting(self) -> None:
        """Say that the answer is on its way."""
        clear(self._body)
        self._body.addWidget(sentence(self.tr("Following the lines …"), "soft"))

    def show_reason(self, reason: Reason) -> None:
        """Lay out what a number rests on that is no sum over ancestors."""
        clear(self._body)
        self.filled = True
        for line in reason.lines:
            self._body.addWidget(sentence(line))
        self._add_rule(reason.formula, reason.source, reason.base)

    def show_explanation(self, book: Book, told: Explanation, ends: Path = ()) -> None:
        """Lay out an explanation; `ends` go before and after each path, to close it in a plant."""
        clear(self._body)
        self.filled = True
        self._book = book
        self.paths = []
        self._lines = []
        if len(told.terms) > 1:
            parts = (f"{term.name} {_brief(term.exact, term.value)}" for term in told.terms)
            self._body.addWidget(sentence(f"{' + '.join(parts)} = {told.text}"))
        for term in told.terms:
            if not term.ancestors:
                if len(told.terms) == 1:
                    self._body.addWidget(sentence(self._nothing_more(told)))
                continue
            text = f"{term.name[:1].upper()}{term.name[1:]}: {_brief(term.exact, term.value)}"
            self._body.addWidget(sentence(text, "caption"))
            for ancestor in term.ancestors[:_ANCESTORS]:
                self._add_ancestor(ancestor, told, ends)
            more = len(term.ancestors) - _ANCESTORS
            if more > 0:
                one = self.tr("more ancestor brings the rest.")
                many = self.tr("more ancestors bring the rest.")
                self._body.addWidget(sentence(count(more, one, many), "soft"))
        if self.paths:
            hint = self.tr("Point at a line to see it in the picture; a click keeps it lit.")
            self._body.addWidget(sentence(hint, "soft"))
        self._add_rule(told.formula, told.source, told.base)

    def put_out(self) -> None:
        """Keep nothing lit any more."""
        self._keep([], None)

    def _nothing_more(self, told: Explanation) -> str:
        (term,) = told.terms
        if told.what == "coancestry":
            return self.tr("No common ancestor is recorded.")
        return f"{term.name[:1].upper()}{term.name[1:]}: {_brief(term.exact, term.value)}"

    def _add_ancestor(self, one: CommonAncestor, told: Explanation, ends: Path) -> None:
        s = step()
        who = named(self._book, one.plant) if self._book is not None else one.plant
        brought = _brief(one.contribution_exact, one.contribution)
        whole = self.tr("the coancestry") if told.what == "coancestry" else self.tr("this F")
        part = self._part(one.contribution / told.value).format(whole)
        rest = self.tr("brings {}, {}").format(brought, part)
        paths = [(*ends, *path.through, *ends) for path in one.paths]
        self.paths += paths
        self._add_line(f"<b>{escape(who)}</b> {escape(rest)}", f"{who} {rest}", paths, 0)
        for path, shown in zip(one.paths[:_PATHS], paths, strict=False):
            weight = self.tr("weight {}").format(_brief(path.weight_exact, path.weight))
            steps = [
                f"<b>{escape(code)}</b>" if code == one.plant else escape(code) for code in shown
            ]
            html = f"{' – '.join(steps)}, {escape(weight)}"
            self._add_line(html, f"{' – '.join(shown)}, {weight}", [shown], 2 * s)
        left_out = max(0, len(one.paths) - _PATHS) + one.paths_left_out
        if left_out:
            note = sentence(self._left_out(left_out), "soft")
            note.setContentsMargins(3 * s, 0, 0, 0)
            self._body.addWidget(note)

    def _part(self, share: float) -> str:
        for value, words in (
            (1.0, self.tr("all of {}")),
            (0.5, self.tr("half of {}")),
            (0.25, self.tr("a quarter of {}")),
        ):
            if abs(share - value) < 1e-9:
                return words
        return percent(share) + self.tr(" of {}")

    def _left_out(self, number: int) -> str:
        if number > _COUNTED:
            return self.tr("More than {:,} paths are counted but not listed.").format(_COUNTED)
        one = self.tr("more path is counted but not listed.")
        return count(number, one, self.tr("more paths are counted but not listed."))

    def _add_line(self, html: str, name: str, paths: list[Path], indent: int) -> None:
        line = LitLine(html, name, paths, indent)
        line.pointed.connect(lambda shown: self.lit.emit(shown or self._kept))
        line.clicked.connect(lambda checked: self._keep(paths if checked else [], line))
        self._body.addWidget(line)
        QWidget.setTabOrder(self._lines[-1] if self._lines else self._after, line)
        self._lines.append(line)

    def _keep(self, paths: list[Path], line: LitLine | None) -> None:
        self._kept = paths
        for other in self._lines:
            if other is not line:
                other.setChecked(False)
        self.lit.emit(paths)

    def _add_rule(self, formula: str, source: str, base: str) -> None:
        told = say(base)
        base = told.partition(": ")[2] if base.startswith("Base: ") else told
        for title, text in (
            (self.tr("Formula"), formula),
            (self.tr("Source"), source[:1].upper() + source[1:]),
            (self.tr("Base"), base[:1].upper() + base[1:]),
        ):
            if text:
                _titled(self._body, title, text)


def _titled(layout: QVBoxLayout, title: str, text: str) -> None:
    holder = QWidget()
    part = column()
    holder.setLayout(part)
    part.addWidget(sentence(title, "caption"))
    part.addWidget(sentence(text))
    layout.addWidget(holder)


def _brief(exact: Fraction | None, value: float) -> str:
    """The fraction alone where it is short, else the decimal."""
    from pedigreeview.network.text import decimal_text, fraction_text

    return fraction_text(exact, value).partition(" = ")[0] if exact else decimal_text(value)
