"""The Checks page: what in the records cannot be right, each with a way to mend it."""

from __future__ import annotations

import datetime
from collections.abc import Sequence
from functools import partial
from html import escape
from itertools import islice
from typing import TYPE_CHECKING, Any
from urllib.parse import quote, unquote

from PySide6.QtCore import QRectF, QSize, Qt, QTimer, Signal
from PySide6.QtGui import QColor, QKeyEvent, QPainter, QPaintEvent, QResizeEvent
from PySide6.QtWidgets import (
    QComboBox,
    QHBoxLayout,
    QLabel,
    QLineEdit,
    QPushButton,
    QSizePolicy,
    QVBoxLayout,
    QWidget,
)

from pedigreeview.book.book import Book
from pedigreeview.book.checks import KINDS
from pedigreeview.book.faults import Fault
from pedigreeview.book.mends import Mend, accept, mends, take_back
from pedigreeview.book.problems import Problem
from pedigreeview.book.records import AcceptedCheck
from pedigreeview.window.book_page import BookPage, Waiting
from pedigreeview.window.labels import (
    Flow,
    LinkLabel,
    action_button,
    clear,
    column,
    heading,
    rule,
    scrolled,
    sentence,
)
from pedigreeview.window.rail import tag_path
from pedigreeview.window.saying import say
from pedigreeview.window.style import current, step
from pedigreeview.window.words import count, links

if TYPE_CHECKING:
    from pedigreeview.book.edits import Change
    from pedigreeview.network import PedigreeNetwork
    from pedigreeview.window.desk import Desk
    from pedigreeview.window.opening import Opened

__all__ = ["ChecksPage", "kind_name"]

_SHOWN = 200
_LOOKED = 10_000
"""Plants among which a date is looked for."""
_MENDS = 4
"""Mends of one problem that are offered."""
_NEVER_RIGHT = ("own_ancestor",)
"""Kinds that no reason makes right: the numbers cannot be worked out before they are mended."""
_RECORD = "record:"


def kind_name(kind: str) -> str:
    """The kind of a problem as a person reads it: 'bad date order'."""
    return say(kind.replace("_", " "))


def _reason_of(one: Problem) -> str:
    """What a reason is of, as long as the problem is the same."""
    return f"{one.kind}: {one.message}"


class _Mark(QWidget):
    """A small tag in the colour of the severity, with its initial for those who see no colour."""

    def __init__(self, severity: str) -> None:
        super().__init__()
        self._severity = severity
        self.setAccessibleName(say(severity))
        self.setSizePolicy(QSizePolicy.Policy.Fixed, QSizePolicy.Policy.Fixed)

    def sizeHint(self) -> QSize:
        height = self.fontMetrics().height()
        return QSize(2 * height, height + 4)

    def paintEvent(self, event: QPaintEvent) -> None:
        colours = current()
        sign, colour = {
            "error": ("!", colours.error),
            "warning": ("?", colours.warn),
        }.get(self._severity, ("i", colours.soft))
        painter = QPainter(self)
        try:
            painter.setRenderHint(QPainter.RenderHint.Antialiasing)
            painter.setPen(Qt.PenStyle.NoPen)
            painter.setBrush(QColor(colour))
            box = QRectF(self.rect()).adjusted(0, 1, 0, -1)
            painter.drawPath(tag_path(box, 0.35 * box.height()))
            painter.setPen(colours.on_accent)
            painter.drawText(box, int(Qt.AlignmentFlag.AlignCenter), sign)
        finally:
            painter.end()


class _Reason(QLineEdit):
    """Where one says why something is right: Enter keeps it, Esc leaves it."""

    kept = Signal(str)
    left = Signal()

    def __init__(self, hint: str) -> None:
        super().__init__()
        self.setPlaceholderText(hint)
        self.setAccessibleName(hint)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        if event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter):
            self.kept.emit(self.text())
        elif event.key() == Qt.Key.Key_Escape:
            self.left.emit()
        else:
            super().keyPressEvent(event)


class ChecksPage(BookPage):
    """All problems of the book, the grave ones first."""

    record_wanted = Signal(str, str)
    """A table and a key: the row of that record is asked for."""

    def __init__(self) -> None:
        super().__init__()
        self.setObjectName("page")
        self.setAttribute(Qt.WidgetAttribute.WA_StyledBackground)
        self._desk: Desk | None = None
        self._net: PedigreeNetwork | None = None
        self._problems: tuple[Problem, ...] = ()
        self._remarks: Sequence[str] = ()
        self._open_accepted = False
        self._reasons: dict[str, str] = {}
        """Reasons that are being typed, by what they are of."""
        s = step()
        inner = QWidget()
        self._all = column(s)
        inner.setLayout(self._all)
        head = QHBoxLayout()
        head.setSpacing(s)
        # At the place of every page's title, however tall the choice beside it is.
        head.addWidget(heading(self.tr("Checks"), 2), 1, Qt.AlignmentFlag.AlignTop)
        self.kinds = QComboBox()
        self.kinds.setAccessibleName(self.tr("Kind of problem to show"))
        self.kinds.setSizeAdjustPolicy(QComboBox.SizeAdjustPolicy.AdjustToContents)
        self.kinds.currentIndexChanged.connect(lambda _: self._lay())
        head.addWidget(self.kinds)
        self._all.addLayout(head)
        self._body = column(s)
        self._all.addLayout(self._body)
        self.area = scrolled(inner)
        outer = column()
        self.setLayout(outer)
        outer.addWidget(self.area)

    def write_with(self, desk: Desk) -> None:
        """Mends are made through the desk; without one nothing is offered."""
        self._desk = desk
        self._lay()

    def unfinished(self) -> dict[str, Any]:
        """Reasons that are half typed."""
        held = {key: text for key, text in self._reasons.items() if text.strip()}
        return {"reasons": held} if held else {}

    def take_up(self, held: dict[str, Any]) -> list[Waiting]:
        """Put in again the reasons that were being typed."""
        reasons = held.get("reasons")
        if not isinstance(reasons, dict):
            return []
        known = {_reason_of(one) for one in self._problems}
        self._reasons = {str(key): str(text) for key, text in reasons.items() if key in known}
        self._lay()
        return [(self.tr("a reason on the Checks page"), "")] if self._reasons else []

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self._fit()

    def redraw(self) -> None:
        """The theme or the size of the text has changed."""
        self._fit()
        self._lay()

    def _fit(self) -> None:
        """The title where the titles of all pages stand; lines no longer than can be read."""
        s = step()
        self._all.setContentsMargins(2 * s, 3 * s, max(2 * s, self.width() - 130 * s), 2 * s)

    def show_opened(self, opened: Opened | None) -> None:
        """The problems of another book, or of none."""
        self._open_accepted = False
        self._reasons.clear()
        if opened is not None:
            self.show_problems(opened.net, opened.problems, opened.net.book.remarks)

    def book_changed(self, opened: Opened, change: Change) -> None:
        """The book after an edit: the list stays where it was."""
        bar = self.area.verticalScrollBar()
        at, kind, focus = bar.value(), self.kinds.currentData(), self.area.isAncestorOf(
            self.focusWidget() or self
        )  # fmt: skip
        self.show_problems(opened.net, opened.problems, opened.net.book.remarks, kind or "")

        def put_back() -> None:
            bar.setValue(at)
            if focus and self.isVisible():
                self.area.setFocus()

        # The list is as long as it will be with the next events.
        QTimer.singleShot(0, self, put_back)

    def show_problems(
        self,
        net: PedigreeNetwork,
        problems: Sequence[Problem],
        remarks: Sequence[str],
        kind: str = "",
    ) -> None:
        """List problems by severity, and what the reader of the file had to say.

        kind : the only kind to show; '' for all
        """
        self._net, self._problems, self._remarks = net, tuple(problems), remarks
        self.kinds.blockSignals(True)
        self.kinds.clear()
        self.kinds.addItem(self.tr("All kinds: {}").format(len(self._problems)), "")
        for one in dict.fromkeys(problem.kind for problem in self._problems):
            number = sum(problem.kind == one for problem in self._problems)
            self.kinds.addItem(f"{kind_name(one)}: {number}", one)
            self.kinds.setItemData(
                self.kinds.count() - 1, say(KINDS.get(one, "")), Qt.ItemDataRole.ToolTipRole
            )
        self.kinds.setCurrentIndex(max(0, self.kinds.findData(kind)))
        self.kinds.setVisible(self.kinds.count() > 2)
        self.kinds.blockSignals(False)
        self._lay()

    # Laying it out ------------------------------------------------------------------------------

    def _lay(self) -> None:
        clear(self._body)
        if self._net is None:
            return
        kind = str(self.kinds.currentData() or "")
        problems = [one for one in self._problems if kind in ("", one.kind)]
        if kind:
            self._body.addWidget(sentence(KINDS.get(kind, ""), "soft"))
        if not self._problems:
            self._body.addWidget(sentence(self._all_well(self._net.book)))
        for severity, title in (
            ("error", self.tr("Cannot be")),
            ("warning", self.tr("Unlikely, or changes numbers")),
            ("note", self.tr("Worth knowing")),
        ):
            some = [one for one in problems if one.severity == severity]
            if some:
                self._body.addSpacing(step())
                self._body.addWidget(heading(f"{title}: {len(some)}", 3))
                for one in some[:_SHOWN]:
                    self._body.addWidget(rule())
                    self._body.addLayout(self._row(self._net, one))
                if len(some) > _SHOWN:
                    more = count(len(some) - _SHOWN, self.tr("more"), self.tr("more"))
                    self._body.addWidget(sentence(more, "soft"))
        self._add_accepted(self._net.book)
        if self._remarks:
            self._body.addSpacing(step())
            self._body.addWidget(heading(self.tr("Noticed while opening"), 3))
            for remark in self._remarks:
                self._body.addWidget(sentence(remark))
        self._body.addStretch(1)

    def _all_well(self, book: Book) -> str:
        """What was looked at, no more than there is to look at."""
        looked = [self.tr("no plant is its own ancestor"), self.tr("no two codes look alike")]
        dated = any(plant.sown for plant in islice(book.plants.values(), _LOOKED)) or any(
            row.date for row in book.pollinations.values()
        )
        if dated:
            looked.append(self.tr("no date comes before what must have been first"))
        if book.pollinations or book.harvests or book.sowings:
            looked.append(self.tr("the counts of flowers, fruits and seeds agree"))
        text = self.tr("Nothing in the records looks wrong: {}.").format(", ".join(looked))
        if not dated:
            text += " " + self.tr("No dates are recorded, so none could be checked.")
        return text

    def _row(self, net: PedigreeNetwork, one: Problem) -> QHBoxLayout:
        s = step()
        row = QHBoxLayout()
        row.setSpacing(2 * s)
        row.addWidget(_Mark(one.severity), 0, Qt.AlignmentFlag.AlignTop)
        text = column(max(2, s // 4))
        text.addWidget(sentence(one.message))
        text.addWidget(sentence(self.tr("Mend: {}").format(one.mend), "soft"))
        known = [code for code in one.plants if code in net.book.plants]
        if known:
            places = LinkLabel(self.tr("Show in the picture: {}").format(links(known, 12)))
            places.followed.connect(self.plant_wanted)
            text.addWidget(places)
        rows = self._record_links(net.book, one, known)
        if rows:
            places = LinkLabel(self.tr("Show in the records: {}").format(rows))
            places.linkActivated.connect(self._follow)
            text.addWidget(places)
        if self._desk is not None:
            self._add_mends(text, net.book, one)
        row.addLayout(text, 1)
        return row

    def _record_links(self, book: Book, one: Problem, plants: Sequence[str]) -> str:
        places = [*one.about, *(("plants", code) for code in plants)]
        held = [(table, key) for table, key in places if key in getattr(book, table, {})]
        shown = list(dict.fromkeys(held))[:12]
        return ", ".join(
            f'<a href="{_RECORD}{table}:{quote(key, safe="")}">{escape(key)}</a>'
            for table, key in shown
        )

    def _follow(self, address: str) -> None:
        if address.startswith(_RECORD):
            table, _, key = address[len(_RECORD) :].partition(":")
            self.record_wanted.emit(table, unquote(key))

    # Mends --------------------------------------------------------------------------------------

    def _add_mends(self, text: QVBoxLayout, book: Book, one: Problem) -> None:
        s = step()
        flow = Flow(s)
        said = sentence("", "fault")
        said.hide()
        for mend in mends(book, one, today=datetime.date.today())[:_MENDS]:
            button = action_button(
                say(mend.words).replace("&", "&&"), partial(self._mend, mend, said)
            )
            button.setObjectName("mend")
            button.setToolTip(say(mend.words))
            flow.addWidget(button)
        right = action_button(self.tr("This is right …"), lambda: ask())
        right.setObjectName("right")
        if one.kind not in _NEVER_RIGHT:
            flow.addWidget(right)
        if flow.count():
            holder = QWidget()
            holder.setLayout(flow)
            text.addSpacing(s // 2)
            text.addWidget(holder)
        text.addWidget(said)

        def ask(typed: str | None = None) -> None:
            right.setEnabled(False)
            self._ask_reason(text, one, right, said, typed)

        if _reason_of(one) in self._reasons and one.kind not in _NEVER_RIGHT:
            ask(self._reasons[_reason_of(one)])

    def _mend(self, mend: Mend, said: QLabel) -> None:
        assert self._desk is not None
        words = mend.words.rstrip(".")
        words = words[:1].lower() + words[1:]
        self._desk.record(words, mend.make, None, lambda fault: self._say(said, fault))

    def _ask_reason(
        self,
        text: QVBoxLayout,
        one: Problem,
        button: QPushButton,
        said: QLabel,
        typed: str | None = None,
    ) -> None:
        """Ask why it is right, below its row; Enter keeps it, with or without a reason.

        typed : what stood there before the list was laid anew; None where it is asked now
        """
        field = _Reason(self.tr("why it is right; Enter keeps it, Esc leaves it"))
        text.addSpacing(step() // 2)
        text.addWidget(field)
        key = _reason_of(one)

        def note(reason: str) -> None:
            self._reasons[key] = reason

        field.setText(typed or "")
        field.textChanged.connect(note)
        if typed is None:
            field.setFocus()

        def leave() -> None:
            self._reasons.pop(key, None)
            field.deleteLater()
            button.setEnabled(True)
            button.setFocus()

        def keep(why: str) -> None:
            assert self._desk is not None
            today = datetime.date.today().isoformat()
            words = self.tr("calling right: {}").format(kind_name(one.kind))
            field.setEnabled(False)

            def refused(fault: Fault) -> None:
                field.setEnabled(True)
                self._say(said, fault)

            def done(_: object) -> None:
                self._reasons.pop(key, None)

            self._desk.record(words, lambda edit: accept(edit, one, why, date=today), done, refused)

        field.left.connect(leave)
        field.kept.connect(keep)

    def _say(self, said: QLabel, fault: Fault) -> None:
        try:
            said.setText(f"{fault.what} {fault.todo}".strip())
            said.show()
        except RuntimeError:
            # The list was laid anew meanwhile: the row that asked is gone.
            if self._desk is not None:
                self._desk.refused.emit(fault)

    # What was called right ----------------------------------------------------------------------

    def _add_accepted(self, book: Book) -> None:
        if not book.accepted_checks:
            return
        self._body.addSpacing(step())
        number = len(book.accepted_checks)
        text = self.tr("Called right: {}")
        self.accepted_button = action_button(text.format(number), self._turn_accepted)
        self.accepted_button.setCheckable(True)
        self.accepted_button.setChecked(self._open_accepted)
        self.accepted_button.setSizePolicy(QSizePolicy.Policy.Fixed, QSizePolicy.Policy.Fixed)
        self._body.addWidget(self.accepted_button)
        self.accepted = QWidget()
        held = column(step())
        self.accepted.setLayout(held)
        for check in book.accepted_checks:
            held.addWidget(rule())
            held.addLayout(self._accepted_row(book, check))
        self._body.addWidget(self.accepted)
        self.accepted.setVisible(self._open_accepted)

    def _turn_accepted(self) -> None:
        self._open_accepted = self.accepted_button.isChecked()
        self.accepted.setVisible(self._open_accepted)

    def _accepted_row(self, book: Book, check: AcceptedCheck) -> QHBoxLayout:
        s = step()
        row = QHBoxLayout()
        row.setSpacing(2 * s)
        text = column(max(2, s // 4))
        text.addWidget(sentence(KINDS.get(check.kind, kind_name(check.kind))))
        keys = [key.strip() for key in check.keys.split(";") if key.strip()]
        shown = [links([key]) if key in book.plants else escape(key) for key in keys[:12]]
        more = self.tr(" and {} more").format(len(keys) - 12) if len(keys) > 12 else ""
        places = LinkLabel(self.tr("About: {}").format(", ".join(shown)) + escape(more))
        places.followed.connect(self.plant_wanted)
        text.addWidget(places)
        said = ", ".join(part for part in (check.why, check.date) if part)
        text.addWidget(sentence(said or self.tr("no reason written"), "soft"))
        row.addLayout(text, 1)
        if self._desk is not None:
            back = action_button(self.tr("Take back"), lambda: self._take_back(check))
            back.setObjectName("back")
            row.addWidget(back, 0, Qt.AlignmentFlag.AlignTop)
        return row

    def _take_back(self, check: AcceptedCheck) -> None:
        assert self._desk is not None
        words = self.tr("calling right no longer: {}").format(kind_name(check.kind))
        self._desk.record(words, lambda edit: take_back(edit, check))
