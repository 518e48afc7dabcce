"""The window: rail of pages, head, foot with the base, and what happens between them."""

from __future__ import annotations

from datetime import datetime
from pathlib import Path

from PySide6.QtCore import QEvent, QSize, Qt, QTimer
from PySide6.QtGui import QCloseEvent, QDragEnterEvent, QDropEvent, QGuiApplication
from PySide6.QtWidgets import (
    QApplication,
    QDialog,
    QFileDialog,
    QFrame,
    QHBoxLayout,
    QLabel,
    QMainWindow,
    QSizePolicy,
    QStackedWidget,
    QWidget,
)

from pedigreeview.book.faults import Fault
from pedigreeview.window import help_pages
from pedigreeview.window.base_panel import BasePanel
from pedigreeview.window.checks_page import ChecksPage
from pedigreeview.window.errands import Errands
from pedigreeview.window.faults_dialog import FaultsDialog
from pedigreeview.window.find_field import FindField
from pedigreeview.window.founders_question import FoundersQuestion
from pedigreeview.window.group_panel import GroupPanel
from pedigreeview.window.history import History, Visit
from pedigreeview.window.labels import ElidedButton, column, heading, plain_button, sentence
from pedigreeview.window.map_page import MapPage
from pedigreeview.window.menus import Menus
from pedigreeview.window.opening import Opened, ReadBook, Stated, build, read
from pedigreeview.window.pedigree_page import PedigreePage
from pedigreeview.window.preferences import FoundersAnswer, Preferences
from pedigreeview.window.rail import Rail
from pedigreeview.window.reciprocals_page import ReciprocalsPage
from pedigreeview.window.save_picture import SavePicture
from pedigreeview.window.save_tables import SaveTables
from pedigreeview.window.strips import CautionStrip, WorkStrip, cautions_of
from pedigreeview.window.style import current_name, dress, step, system_name
from pedigreeview.window.welcome import Welcome
from pedigreeview.window.words import count

__all__ = ["MainWindow"]


class MainWindow(QMainWindow):
    """The Crossing Book."""

    def __init__(self, preferences: Preferences | None = None) -> None:
        super().__init__()
        self.preferences = preferences or Preferences()
        self._dress()
        self.opened: Opened | None = None
        self.errands = Errands(self)
        self.history = History()
        self.dialog: QDialog | None = None
        """The dialog that lies open, if any."""
        self.setWindowTitle(self.tr("Crossing Book"))
        self.setAcceptDrops(True)
        self._build()
        self.menus = Menus(self)
        self._connect()
        self._show_empty()
        self._scale_sides()
        if not self.restoreGeometry(self.preferences.geometry):
            room = QGuiApplication.primaryScreen().availableGeometry().size()
            self.resize(QSize(1360, 860).boundedTo(room))

    # Putting it together ------------------------------------------------------------------------

    def _build(self) -> None:
        middle = QWidget()
        row = QHBoxLayout(middle)
        row.setSpacing(0)
        row.setContentsMargins(0, 0, 0, 0)
        self.rail = Rail()
        self.rail.add("pedigree", self.tr("Pedigree"), self.tr("The picture to click through"))
        self.rail.add("map", self.tr("Map"), self.tr("The whole book at once"))
        self.rail.add(
            "reciprocals", self.tr("Reciprocals"), self.tr("Both directions of a cross compared")
        )
        self.rail.add("checks", self.tr("Checks"), self.tr("What in the records cannot be right"))
        row.addWidget(self.rail)
        right = column()
        right.addWidget(self._head())
        self.work = WorkStrip()
        self.caution = CautionStrip()
        right.addWidget(self.work)
        right.addWidget(self.caution)
        self.pages = QStackedWidget()
        self.welcome = Welcome()
        self.pedigree = PedigreePage(self.errands, self.preferences)
        self.map = MapPage(self.errands)
        self.reciprocals = ReciprocalsPage(self.errands)
        self.checks = ChecksPage()
        self._pages: dict[str, QWidget] = {
            "": self.welcome,
            "pedigree": self.pedigree,
            "map": self.map,
            "reciprocals": self.reciprocals,
            "checks": self.checks,
        }
        for page in self._pages.values():
            self.pages.addWidget(page)
        right.addWidget(self.pages, 1)
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
        self.book_name = heading("", 2)
        self.book_name.setWordWrap(False)
        self.book_name.setSizePolicy(QSizePolicy.Policy.Ignored, QSizePolicy.Policy.Fixed)
        self.book_facts = sentence("", "soft")
        self.book_facts.setWordWrap(False)
        self.book_facts.setSizePolicy(QSizePolicy.Policy.Ignored, QSizePolicy.Policy.Fixed)
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
        self.base_line.clicked.connect(self.show_base)
        row.addWidget(self.base_line, 3)
        self.said = QLabel()
        self.said.setProperty("role", "soft")
        row.addWidget(self.said)
        self.foot = foot
        return foot

    def _connect(self) -> None:
        self.rail.chosen.connect(self.show_page)
        self.welcome.open_file.connect(self.ask_file)
        self.welcome.open_folder.connect(self.ask_folder)
        self.welcome.open_path.connect(self.open_path)
        self.welcome.forget.connect(self._forget)
        self.work.cancelled.connect(self.cancel)
        self.caution.wanted.connect(self.help_cautions)
        self.caution.dismissed.connect(self.preferences.dismiss_caution)
        self.pedigree.visited.connect(self._visited)
        self.pedigree.said.connect(self.said.setText)
        self.pedigree.checks_wanted.connect(lambda: self.show_page("checks"))
        self.map.plant_wanted.connect(self.show_plant)
        self.map.tints_changed.connect(self.pedigree.canvas.set_tints)
        self.pedigree.visited.connect(lambda _, code: self.map.mark(code))
        self.reciprocals.plant_wanted.connect(self.show_plant)
        self.checks.plant_wanted.connect(self.show_plant)
        self.find_field.plant_wanted.connect(self.show_plant)
        self.find_field.left.connect(self._leave_find)
        self.errands.faulted.connect(self._show_fault)
        hints = QGuiApplication.styleHints()
        hints.colorSchemeChanged.connect(self._system_changed)

    # The look -----------------------------------------------------------------------------------

    def _dress(self) -> None:
        app = QApplication.instance()
        assert isinstance(app, QApplication)
        look = self.preferences.look
        name = system_name() if look == "system" else look
        dress(app, name, self.preferences.text_size)

    def _system_changed(self) -> None:
        if self.preferences.look == "system":
            self._redress()

    def _redress(self) -> None:
        self._dress()
        self._scale_sides()
        self.pedigree.redraw()
        self.map.redraw(self.preferences.text_size / 100)
        self.update()

    def _scale_sides(self) -> None:
        self.pedigree.fit_sides()
        self.reciprocals.fit_sides()

    def set_look(self, look: str) -> None:
        """'system', 'light' or 'dark'."""
        self.preferences.look = look
        self.menus.actions[f"look_{look}"].setChecked(True)
        self._redress()

    def _turn_look(self) -> None:
        self.set_look("light" if current_name() == "dark" else "dark")

    def set_text_size(self, percent: int) -> None:
        """Size of the text in percent."""
        self.preferences.text_size = percent
        self._redress()

    # Opening ------------------------------------------------------------------------------------

    def open_path(self, path: Path, stated: Stated | None = None) -> None:
        """Open a file or folder; the book that lies open stays until the new one is ready."""
        path = Path(path).absolute()
        if path.name == "datapackage.json":
            path = path.parent
        self.work.begin(self.tr("Opening {} …").format(path.name))
        self.errands.ask(
            "open",
            lambda: read(path, stated),
            self._was_read,
            lambda fault: self._not_opened(path, fault),
        )

    def _was_read(self, held: ReadBook) -> None:
        answer = self.preferences.founders_answer(held.path) if held.silent else None
        if held.silent and answer is None:
            self.work.end()
            self._ask_founders(held, "seed_true")
            return
        self._go_on(held, answer)

    def _ask_founders(self, held: ReadBook, chosen: str, focus: str = "") -> None:
        question = FoundersQuestion(held.path.name, list(held.silent), held.worked, chosen, self)

        def answered(answer: FoundersAnswer) -> None:
            self.preferences.set_founders_answer(held.path, answer)
            self._go_on(held, answer, focus)

        question.answered.connect(answered)
        self._show_dialog(question)

    def _go_on(self, held: ReadBook, answer: FoundersAnswer | None, focus: str = "") -> None:
        self.work.begin(self.tr("Working out {} …").format(held.path.name))
        self.errands.ask(
            "open",
            lambda: build(held, answer, focus),
            self._take,
            lambda fault: self._not_opened(held.path, fault),
        )

    def _not_opened(self, path: Path, fault: Fault) -> None:
        self.work.end()
        title = self.tr("{} was not opened").format(path.name)
        self._show_dialog(FaultsDialog(title, fault, self))

    def cancel(self) -> None:
        """Give up the opening under way; nothing changes."""
        self.errands.drop("open")
        self.work.end()

    def _take(self, opened: Opened) -> None:
        self.work.end()
        self.opened = opened
        self.preferences.note_recent(opened.path)
        net = opened.net
        self.history.clear()
        self.find_field.set_finder(opened.finder)
        self.book_name.setText(opened.title)
        self.setWindowTitle(self.tr("{} – Crossing Book").format(opened.title))
        facts = [
            count(len(net.codes), self.tr("plant"), self.tr("plants")),
            count(len(net.book.crosses), self.tr("cross"), self.tr("crosses")),
        ]
        if net.book.settings.crop:
            facts.insert(0, net.book.settings.crop)
        self.book_facts.setText(" · ".join(facts))
        self.base_line.set_full_text(net.base_sentence())
        self.foot.show()
        self.menus.set_has_book(True)
        for page in ("pedigree", "map", "reciprocals", "checks"):
            self.rail.tag(page).setEnabled(True)
        self.map.show_network(net)
        self.reciprocals.show_network(net)
        self.checks.show_problems(net, opened.problems, net.book.remarks)
        grave = sum(one.severity in ("error", "warning") for one in opened.problems)
        self.rail.tag("checks").set_count(str(grave) if grave else "")
        crop, texts = cautions_of(net.book)
        if crop and self.preferences.caution_dismissed(crop):
            texts = []
        self.caution.show_cautions(crop, texts)
        self._turn_to("pedigree")
        self.pedigree.show_network(net, opened.finder, opened.focus, opened.problems)
        self.pedigree.canvas.setFocus()

    def close_book(self) -> None:
        """Put the book away and show the first page."""
        self.cancel()
        self.opened = None
        self.map.show_network(None)
        self._show_empty()

    def _show_empty(self) -> None:
        self.history.clear()
        self.book_name.setText("")
        self.book_facts.setText("")
        self.setWindowTitle(self.tr("Crossing Book"))
        self.find_field.set_finder(None)
        self.foot.hide()
        self.caution.hide()
        self.menus.set_has_book(False)
        for page in ("pedigree", "map", "reciprocals", "checks"):
            self.rail.tag(page).setEnabled(False)
            self.rail.tag(page).set_count("")
        self.welcome.show_recent(self.preferences.recent())
        self._turn_to("")
        self.welcome.file_button.setFocus()
        self._tell_history()

    def _forget(self, path: Path) -> None:
        self.preferences.forget_recent(path)
        self.welcome.show_recent(self.preferences.recent())

    def ask_file(self) -> None:
        """Ask for a table."""
        dialog = QFileDialog(self, self.tr("Open a table"), self._folder())
        dialog.setFileMode(QFileDialog.FileMode.ExistingFile)
        dialog.setNameFilters(
            [
                self.tr("Tables and books (*.csv *.tsv *.txt datapackage.json)"),
                self.tr("All files (*)"),
            ]
        )
        self._open_with(dialog)

    def ask_folder(self) -> None:
        """Ask for a folder."""
        dialog = QFileDialog(self, self.tr("Open a folder"), self._folder())
        dialog.setFileMode(QFileDialog.FileMode.Directory)
        dialog.setOption(QFileDialog.Option.ShowDirsOnly)
        self._open_with(dialog)

    def _open_with(self, dialog: QFileDialog) -> None:
        dialog.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        dialog.fileSelected.connect(lambda text: self.open_path(Path(text)))
        self._show_dialog(dialog)

    def _folder(self) -> str:
        recent = self.preferences.recent()
        return str(recent[0].parent) if recent else str(Path.home())

    def dragEnterEvent(self, event: QDragEnterEvent) -> None:
        if any(url.isLocalFile() for url in event.mimeData().urls()):
            event.acceptProposedAction()

    def dropEvent(self, event: QDropEvent) -> None:
        paths = [Path(url.toLocalFile()) for url in event.mimeData().urls() if url.isLocalFile()]
        if paths:
            event.acceptProposedAction()
            QTimer.singleShot(0, self, lambda: self.open_path(paths[0]))

    # Pages and places ---------------------------------------------------------------------------

    def page(self) -> str:
        """The page on show; '' for the first page."""
        shown = self.pages.currentWidget()
        return next(name for name, page in self._pages.items() if page is shown)

    def _turn_to(self, page: str) -> None:
        self.pages.setCurrentWidget(self._pages[page])
        self.rail.show_page(page)

    def show_page(self, page: str) -> None:
        """Turn to a page."""
        if self.opened is None:
            return
        self._turn_to(page)
        self._note_visit()

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
        self.history.go(Visit(page, self.pedigree.focus, self.pedigree.selected))
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
        self.pedigree.go(visit.focus, visit.selected)
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

    def show_base(self) -> None:
        """Show what every number rests on."""
        if self.opened is None:
            return
        panel = BasePanel(self.opened.net, bool(self.opened.silent), self)
        panel.change_wanted.connect(self.ask_founders_again)
        panel.plant_wanted.connect(self.show_plant)
        self._show_dialog(panel)

    def ask_founders_again(self) -> None:
        """Ask anew how the founders of this table are kept true."""
        opened = self.opened
        if opened is None or not opened.silent:
            return
        answer = self.preferences.founders_answer(opened.path)
        chosen, focus = answer.word if answer is not None else "seed_true", self.pedigree.focus
        self.errands.ask(
            "open",
            lambda: read(opened.path),
            lambda held: self._ask_founders(held, chosen, focus),
            lambda fault: self._not_opened(opened.path, fault),
        )

    def save_picture(self) -> None:
        """Save the picture to a file."""
        if self.opened is None:
            return
        path = self.opened.path
        dialog = SavePicture(
            self.opened.net,
            self.pedigree.look(),
            self.errands,
            path.parent,
            self.opened.title,
            self.pedigree.orientation,
            self,
            lit_paths=self.pedigree.canvas.lit_paths(),
        )
        dialog.saved.connect(self._was_saved)
        self._show_dialog(dialog)

    def show_group(self) -> None:
        """Show what a group of plants holds."""
        if self.opened is not None:
            net, pins = self.opened.net, self.pedigree.pins
            self._show_dialog(GroupPanel(net, pins, self.errands, self))

    def save_tables(self) -> None:
        """Save the book as a table or a folder of tables."""
        if self.opened is None:
            return
        dialog = SaveTables(self.opened.net.book, self.errands, self.opened.path, self)
        dialog.saved.connect(self._was_saved)
        self._show_dialog(dialog)

    def _was_saved(self, path: Path) -> None:
        at = datetime.now().strftime("%H:%M")
        self.said.setText(self.tr("Saved {} at {}").format(path.name, at))

    def _show_fault(self, fault: Fault) -> None:
        self._show_dialog(FaultsDialog(self.tr("That did not work"), fault, self))

    def _show_dialog(self, dialog: QDialog) -> None:
        self.dialog = dialog

        def gone() -> None:
            if self.dialog is dialog:
                self.dialog = None

        dialog.finished.connect(gone)
        room = self.screen().availableGeometry().size() * 0.95
        dialog.resize(dialog.size().boundedTo(room))
        dialog.open()

    def help_signs(self) -> None:
        """Help: signs of the picture and keys."""
        self._show_dialog(help_pages.signs_and_keys(self))

    def help_words(self) -> None:
        """Help: words of the trade."""
        self._show_dialog(help_pages.HelpSheet(self.tr("Words"), [("", help_pages.words())], self))

    def help_cautions(self) -> None:
        """Help: cautions."""
        parts = [("", help_pages.cautions())]
        self._show_dialog(help_pages.HelpSheet(self.tr("Cautions"), parts, self))

    # Leaving ------------------------------------------------------------------------------------

    def closeEvent(self, event: QCloseEvent) -> None:
        self.preferences.geometry = self.saveGeometry()
        self.work.end()
        self.errands.close()
        super().closeEvent(event)

    def changeEvent(self, event: QEvent) -> None:
        super().changeEvent(event)
        if event.type() == QEvent.Type.ActivationChange and hasattr(self, "find_field"):
            self.find_field.found.hide()
