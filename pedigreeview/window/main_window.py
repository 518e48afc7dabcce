"""The window: rail of pages, head, foot with the base, and what happens between them."""

from __future__ import annotations

from functools import partial
from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import QChildEvent, QEvent, QSize, Qt, QTimer
from PySide6.QtGui import QCloseEvent, QDragEnterEvent, QDropEvent, QGuiApplication, QResizeEvent
from PySide6.QtWidgets import (
    QApplication,
    QDialog,
    QFrame,
    QHBoxLayout,
    QMainWindow,
    QSizePolicy,
    QWidget,
)

from pedigreeview.book.faults import Fault
from pedigreeview.book.memory import set_aside
from pedigreeview.drawing.telling import tell_with
from pedigreeview.window.asides import Asides
from pedigreeview.window.bench import Bench
from pedigreeview.window.book_page import BookPage
from pedigreeview.window.checks_page import ChecksPage
from pedigreeview.window.desk import Desk
from pedigreeview.window.door import Door
from pedigreeview.window.dressing import Dressing
from pedigreeview.window.elided_label import ElidedLabel
from pedigreeview.window.errands import Errands
from pedigreeview.window.exploring import Exploring
from pedigreeview.window.find_field import FindField
from pedigreeview.window.forms.form import Form
from pedigreeview.window.history import History, Visit
from pedigreeview.window.keeping import KeepStrip
from pedigreeview.window.labels import ElidedButton, Said, column, plain_button
from pedigreeview.window.map_page import MapPage
from pedigreeview.window.menus import Menus
from pedigreeview.window.opening import Opened, Stated
from pedigreeview.window.page_area import PageArea, PageStack
from pedigreeview.window.pages import load_pages, make_page, page_words
from pedigreeview.window.pedigree_page import PedigreePage
from pedigreeview.window.preferences import Preferences
from pedigreeview.window.rail import Rail
from pedigreeview.window.reciprocals_page import ReciprocalsPage
from pedigreeview.window.saying import say
from pedigreeview.window.strips import CautionStrip, WorkStrip, cautions_of
from pedigreeview.window.style import current_name, step
from pedigreeview.window.translating import speak
from pedigreeview.window.unfinished import Unfinished, UnfinishedStrip, leave_cell
from pedigreeview.window.welcome import Welcome
from pedigreeview.window.words import count
from pedigreeview.window.writing import Writing

if TYPE_CHECKING:
    from pedigreeview.book.edits import Change

__all__ = ["MainWindow"]


_AFTER_OPENING = 800
"""Milliseconds after which the modules of the other pages are loaded, when all is on the screen."""


class MainWindow(QMainWindow):
    """The Crossing Book."""

    def __init__(self, preferences: Preferences | None = None) -> None:
        super().__init__()
        self.preferences = preferences or Preferences()
        app = QApplication.instance()
        assert isinstance(app, QApplication)
        tell_with(say if speak(app, self.preferences.language) != "en" else None)
        self.dressing = Dressing(self)
        self.errands = Errands(self)
        self.desk = Desk(self.errands)
        self.history = History()
        self.door = Door(self)
        self.asides = Asides(self)
        self.writing = Writing(self)
        self.unfinished = Unfinished(self)
        self.picked: tuple[str, ...] = ()
        """Plants that were picked together on any page."""
        self.dialog: QDialog | None = None
        """The dialog that lies open, if any."""
        self.setWindowTitle(self.tr("Crossing Book"))
        self.setAcceptDrops(True)
        self._build()
        self.map.redraw(self.preferences.text_size / 100)
        self.menus = Menus(self)
        self._connect()
        self.exploring = Exploring(self)
        self._loading = QTimer(self)
        self._loading.setSingleShot(True)
        self._loading.setInterval(_AFTER_OPENING)
        self._loading.timeout.connect(
            lambda: self.errands.ask("open:pages", load_pages, lambda _: set_aside())
        )
        self._show_empty()
        self._scale_sides()
        if not self.restoreGeometry(self.preferences.geometry):
            room = QGuiApplication.primaryScreen().availableGeometry().size()
            self.resize(QSize(1360, 860).boundedTo(room))

    @property
    def opened(self) -> Opened | None:
        """The book that lies open."""
        return self.desk.opened

    # Putting it together ------------------------------------------------------------------------

    def _build(self) -> None:
        middle = QWidget()
        row = QHBoxLayout(middle)
        row.setSpacing(0)
        row.setContentsMargins(0, 0, 0, 0)
        self.rail = Rail()
        for words in page_words():
            self.rail.add(words.name, words.text, words.tip)
        row.addWidget(self.rail)
        right = column()
        right.addWidget(self._head())
        self.work = WorkStrip()
        self.caution = CautionStrip()
        right.addWidget(self.work)
        right.addWidget(self.caution)
        self.keep = KeepStrip()
        right.addWidget(self.keep)
        self.unfinished_strip = UnfinishedStrip()
        right.addWidget(self.unfinished_strip)
        self.pages = PageStack()
        self.welcome = Welcome()
        self.pedigree = PedigreePage(self.errands, self.preferences, self.desk)
        self.map = MapPage(self.errands, self.pedigree.shades)
        self.reciprocals = ReciprocalsPage(
            self.errands, lambda name, **what: self.writing.open(name, **what)
        )
        self.checks = ChecksPage()
        for waiting in (self.pedigree, self.map, self.reciprocals):
            waiting.waits = False  # these know by themselves what to leave until they are shown
        made: dict[str, BookPage] = {
            "pedigree": self.pedigree,
            "map": self.map,
            "reciprocals": self.reciprocals,
            "checks": self.checks,
        }
        self.book_pages: dict[str, BookPage] = {
            words.name: made.get(words.name) or make_page(words.name, self)
            for words in page_words()
        }
        self._pages: dict[str, QWidget] = {"": self.welcome, **self.book_pages}
        for page in self._pages.values():
            self.pages.addWidget(page)
        across = QHBoxLayout()
        across.setSpacing(0)
        self.area = PageArea(self.pages)
        across.addWidget(self.area, 1)
        self.bench = Bench()
        across.addWidget(self.bench)
        right.addLayout(across, 1)
        right.addWidget(self._foot())
        row.addLayout(right, 1)
        self.setCentralWidget(middle)

    def _head(self) -> QWidget:
        s = step()
        head = QFrame()
        head.setObjectName("header")
        row = QHBoxLayout(head)
        row.setContentsMargins(2 * s, s, 2 * s, s)
        row.setSpacing(s)
        self.back_button = plain_button("←", self.tr("Back (Alt+Left)"), self.back)
        self.forward_button = plain_button("→", self.tr("Forward (Alt+Right)"), self.forward)
        row.addWidget(self.back_button)
        row.addWidget(self.forward_button)
        row.addSpacing(s)
        names = column()
        self.book_name = ElidedLabel("heading2")
        self.book_facts = ElidedLabel("soft")
        names.addWidget(self.book_name)
        names.addWidget(self.book_facts)
        row.addLayout(names, 3)
        self.find_field = FindField(self)
        self.find_field.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)
        row.addWidget(self.find_field, 2)
        self.look_button = plain_button("◐", self.tr("Light or dark"), self._turn_look)
        row.addWidget(self.look_button)
        return head

    def _foot(self) -> QWidget:
        s = step()
        foot = QFrame()
        foot.setObjectName("foot")
        row = QHBoxLayout(foot)
        row.setContentsMargins(s, 2, 2 * s, 2)
        self.base_line = ElidedButton()
        self.base_line.setProperty("role", "line")
        self.base_line.setCursor(Qt.CursorShape.PointingHandCursor)
        self.base_line.clicked.connect(self.asides.show_base)
        row.addWidget(self.base_line, 3)
        self.said = Said()
        self.said.setProperty("role", "soft")
        row.addWidget(self.said)
        self.foot = foot
        return foot

    def _connect(self) -> None:
        self.rail.chosen.connect(self.show_page)
        self.welcome.open_file.connect(self.door.ask_file)
        self.welcome.new_book.connect(self.door.new_book)
        self.welcome.open_folder.connect(self.door.ask_folder)
        self.welcome.open_path.connect(self.open_path)
        self.door.opened.connect(self._take)
        self.welcome.forget.connect(self._forget)
        self.work.cancelled.connect(self.door.cancel)
        self.caution.wanted.connect(self.asides.help_cautions)
        self.caution.dismissed.connect(self.preferences.dismiss_caution)
        self.pedigree.visited.connect(self._visited)
        self.pedigree.said.connect(self.said.setText)
        self.pedigree.checks_wanted.connect(lambda: self.show_page("checks"))
        for page in self.book_pages.values():
            page.plant_wanted.connect(self.show_plant)
            page.picked.connect(partial(self._picked, page))
        self.pedigree.visited.connect(lambda _, code: self._mark(code))
        self.pedigree.canvas.cross_wanted.connect(self.writing.offer_cross)
        self.pedigree.writing_entries = self.writing.tag_entries
        self.pedigree.invitation.wanted.connect(self.writing.begin)
        self.bench.left.connect(self._leave_find)
        self.desk.changed.connect(self._book_changed)
        self.desk.undo_changed.connect(self._tell_undo)
        self.desk.said.connect(self.said.setText)
        self.desk.refused.connect(self.show_fault)
        self.desk.keep_wanted.connect(self.door.keep_as_book)
        self.keep.wanted.connect(lambda: self.door.keep_as_book())
        self.unfinished_strip.wanted.connect(self._show_part)
        self.find_field.plant_wanted.connect(self.show_plant)
        self.find_field.left.connect(self._leave_find)
        self.errands.faulted.connect(self.show_fault)
        hints = QGuiApplication.styleHints()
        hints.colorSchemeChanged.connect(self._system_changed)

    # The look -----------------------------------------------------------------------------------

    def _system_changed(self) -> None:
        if self.preferences.look == "system":
            self._redress()

    def _redress(self) -> None:
        self.dressing.change(self._scale_sides)

    def every_page(self) -> list[QWidget]:
        """The first page and those of the book, also such as are not made yet."""
        return list(self._pages.values())

    def redraw_page(self, page: QWidget) -> None:
        """Let a page draw what it draws itself in another look or size of text."""
        if page is self.map:
            self.map.redraw(self.preferences.text_size / 100)
        elif isinstance(page, BookPage):
            page.redraw()

    def childEvent(self, event: QChildEvent) -> None:
        super().childEvent(event)
        if event.polished():
            self.dressing.dress_child(event.child())

    def _scale_sides(self) -> None:
        self.pedigree.fit_sides()
        self.reciprocals.fit_sides()
        self.bench.fit(self.width())

    def set_look(self, look: str) -> None:
        """'system', 'light' or 'dark'."""
        self.preferences.look = look
        self.menus.actions[f"look_{look}"].setChecked(True)
        self._redress()

    def set_language(self, code: str) -> None:
        """Remember the language; texts that stand already change at the next start."""
        self.preferences.language = code
        self.said.setText(self.tr("The language changes when the program is started again."))

    def _turn_look(self) -> None:
        self.set_look("light" if current_name() == "dark" else "dark")

    def set_text_size(self, percent: int) -> None:
        """Size of the text in percent."""
        self.preferences.text_size = percent
        self._redress()

    # Opening ------------------------------------------------------------------------------------

    def _take(self, opened: Opened) -> None:
        self.work.end()
        keeping = self.door.keeping
        carried = self.unfinished.collect() if keeping else {}
        self.unfinished.leave()
        if keeping and self.opened is not None:
            # A table became a book: what is half typed goes along.
            self.preferences.set_unfinished(self.opened.path, {})
            self.preferences.set_unfinished(opened.path, carried)
        else:
            self.bench.clear()
        self.desk.lay(opened)
        self.preferences.note_recent(opened.path)
        self.history.clear()
        self._tell_book(opened)
        self.foot.show()
        self.menus.set_has_book(True)
        for words in page_words():
            self.rail.tag(words.name).setEnabled(True)
        for name, page in self.book_pages.items():
            if name != "pedigree":
                page.hear(opened, now=False)
        crop, texts = cautions_of(opened.net.book)
        if crop and self.preferences.caution_dismissed(crop):
            texts = []
        self.caution.show_cautions(crop, texts)
        self.keep.show_for(opened)
        self._turn_to("pedigree")
        self.pedigree.hear(opened, now=True)
        self.pedigree.canvas.setFocus()
        self.unfinished.lay_out(forms=not keeping)
        self._loading.start()

    def _tell_book(self, opened: Opened) -> None:
        """What head, foot and rail say of the book."""
        net = opened.net
        self.find_field.set_finder(opened.finder)
        self.book_name.setText(opened.title)
        self.setWindowTitle(self.tr("{} – Crossing Book").format(opened.title))
        facts = [
            count(len(net.codes), self.tr("plant"), self.tr("plants")),
            count(len(net.book.crosses), self.tr("cross"), self.tr("crosses")),
        ]
        if net.book.settings.crop:
            facts.insert(0, net.book.settings.crop)
        if opened.file is not None and opened.file.read_only:
            facts.append(self.tr("read-only"))
        self.book_facts.setText(" · ".join(facts))
        self.base_line.set_full_text(net.base_sentence())
        grave = sum(one.severity in ("error", "warning") for one in opened.problems)
        self.rail.tag("checks").set_count(str(grave) if grave else "")

    def _book_changed(self, opened: Opened, change: Change) -> None:
        self._tell_book(opened)
        shown = self.pages.currentWidget()
        for page in self.book_pages.values():
            page.hear(opened, change, now=page is shown)
        self.bench.tell(Form.book_changed)

    def _tell_undo(self) -> None:
        self.menus.set_undo(self.desk.undo_words, self.desk.redo_words)

    def _mark(self, code: str) -> None:
        for page in self.book_pages.values():
            if page is not self.pedigree:
                page.hear_mark(code)
        self.bench.tell(lambda form: form.look_at(code))

    def _picked(self, by: BookPage, codes: tuple[str, ...]) -> None:
        """Plants were picked on one page: the others work with them."""
        self.picked = codes
        for page in self.book_pages.values():
            if page is not by:
                page.hear_picked(codes)

    def open_path(self, path: Path, stated: Stated | None = None) -> None:
        """Open a file or folder; the book that lies open stays until the new one is ready."""
        self.door.open_path(path, stated)

    def close_book(self) -> None:
        """Put the book away and show the first page."""
        self.door.cancel()
        self.unfinished.leave()
        self.bench.clear()
        self.desk.lay(None)
        for page in self.book_pages.values():
            page.hear(None, now=True)
        self._show_empty()

    def _show_empty(self) -> None:
        self.history.clear()
        self.book_name.setText("")
        self.book_facts.setText("")
        self.setWindowTitle(self.tr("Crossing Book"))
        self.find_field.set_finder(None)
        self.foot.hide()
        self.caution.hide()
        self.keep.hide()
        self.menus.set_has_book(False)
        for page in page_words():
            self.rail.tag(page.name).setEnabled(False)
            self.rail.tag(page.name).set_count("")
        self.welcome.show_recent(self.preferences.recent())
        self._turn_to("")
        self.welcome.file_button.setFocus()
        self._tell_history()

    def _forget(self, path: Path) -> None:
        self.preferences.forget_recent(path)
        self.welcome.show_recent(self.preferences.recent())

    def dragEnterEvent(self, event: QDragEnterEvent) -> None:
        if any(url.isLocalFile() for url in event.mimeData().urls()):
            event.acceptProposedAction()

    def dropEvent(self, event: QDropEvent) -> None:
        paths = [Path(url.toLocalFile()) for url in event.mimeData().urls() if url.isLocalFile()]
        if paths:
            event.acceptProposedAction()
            QTimer.singleShot(0, self, lambda: self.asides.dropped(paths[0]))

    # Pages and places ---------------------------------------------------------------------------

    def page(self) -> str:
        """The page on show; '' for the first page."""
        shown = self.pages.currentWidget()
        return next(name for name, page in self._pages.items() if page is shown)

    def _turn_to(self, page: str) -> None:
        if page in self.book_pages:
            self.book_pages[page].catch_up()
        self.pages.setCurrentWidget(self._pages[page])
        self.rail.show_page(page)

    def show_page(self, page: str) -> None:
        """Turn to a page."""
        if self.opened is None:
            return
        self._turn_to(page)
        self._note_visit()

    def _show_part(self, page: str, part: str) -> None:
        self.show_page(page)
        self.book_pages[page].go_to(part)

    def show_plant(self, code: str) -> None:
        """Turn to the picture with a plant in focus."""
        if self.opened is None:
            return
        self._turn_to("pedigree")
        self.pedigree.focus_on(code)
        self.pedigree.canvas.setFocus()

    def _visited(self) -> None:
        self._note_visit()

    def _note_visit(self) -> None:
        page = self.page()
        place = self.pedigree
        self.history.go(Visit(page, place.focus, place.selected, place.way))
        self._tell_history()

    def _tell_history(self) -> None:
        has = self.opened is not None
        self.back_button.setEnabled(has and self.history.can_go_back())
        self.forward_button.setEnabled(has and self.history.can_go_forward())
        self.pedigree.show_trail(self.history.trail(5))

    def back(self) -> None:
        """One place back."""
        self._visit(self.history.back())

    def forward(self) -> None:
        """One place forward."""
        self._visit(self.history.forward())

    def _visit(self, visit: Visit | None) -> None:
        if visit is None or self.opened is None:
            return
        self._turn_to(visit.page)
        self.pedigree.go(visit.focus, visit.selected, visit.way)
        self._tell_history()
        if visit.page == "pedigree":
            self.pedigree.canvas.setFocus()

    def go_find(self) -> None:
        """Put the cursor into the find field."""
        self.find_field.setFocus()
        self.find_field.selectAll()

    def _leave_find(self) -> None:
        if self.page() == "pedigree":
            self.pedigree.canvas.setFocus()

    # The base, saving, help ---------------------------------------------------------------------

    # Dialogs ------------------------------------------------------------------------------------

    def show_fault(self, fault: Fault) -> None:
        """Say what did not work."""
        self.show_dialog(self.door.fault_dialog(fault))

    def show_dialog(self, dialog: QDialog) -> None:
        """Open a dialog, no larger than the screen."""
        self.dialog = dialog

        def gone() -> None:
            if self.dialog is dialog:
                self.dialog = None

        dialog.finished.connect(gone)
        room = self.screen().availableGeometry().size() * 0.95
        dialog.resize(dialog.size().boundedTo(room))
        dialog.open()

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self.bench.fit(self.width())

    # Leaving ------------------------------------------------------------------------------------

    def closeEvent(self, event: QCloseEvent) -> None:
        leave_cell(self)
        if not self.desk.finish():
            event.ignore()
            self.said.setText(
                self.tr(
                    "Something you wrote was not taken, so the window stays open. Close it again "
                    "to leave that for the next time."
                )
            )
            return
        self.unfinished.leave()
        self.preferences.geometry = self.saveGeometry()
        self.work.end()
        self._loading.stop()
        self.desk.lay(None)
        self.errands.close()
        super().closeEvent(event)

    def changeEvent(self, event: QEvent) -> None:
        super().changeEvent(event)
        if event.type() == QEvent.Type.ActivationChange and hasattr(self, "find_field"):
            self.find_field.found.hide()
