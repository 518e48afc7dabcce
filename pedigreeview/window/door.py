"""The door: how a book comes in: opened, its founders asked about, started anew, kept."""

from __future__ import annotations

from collections.abc import Callable
from functools import partial
from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, Qt, Signal
from PySide6.QtWidgets import QDialog, QFileDialog

from pedigreeview.book.faults import Fault
from pedigreeview.book.file_faults import FileFault
from pedigreeview.window.faults_dialog import FaultsDialog
from pedigreeview.window.founders_question import FoundersQuestion
from pedigreeview.window.keeping import place_for_book
from pedigreeview.window.opening import Opened, ReadBook, Stated, build, read
from pedigreeview.window.preferences import FoundersAnswer

if TYPE_CHECKING:
    from pedigreeview.window.main_window import MainWindow
    from pedigreeview.window.save_copy import SaveCopy

__all__ = ["Door"]


class Door(QObject):
    """Brings books to the window; the book that lies open stays until the new one is ready."""

    opened = Signal(object)
    """An `Opened`, ready to be shown."""

    def __init__(self, window: MainWindow) -> None:
        super().__init__(window)
        self._window = window
        self._then: Callable[[], None] | None = None
        """What is to be done once the table is kept as a book."""
        window.desk.troubled.connect(self._troubled)

    @property
    def keeping(self) -> bool:
        """Whether the book that comes is the one on show, kept so that it can be written in."""
        return self._then is not None

    def _came(self, opened: Opened) -> None:
        self._window.work.end()
        self.opened.emit(opened)
        file = opened.file
        if file is not None and file.backup_fault is not None:
            text = self.tr("No backup was made: {}").format(file.backup_fault.what)
            self._window.said.setText(text)
        then, self._then = self._then, None
        if then is not None and opened.file is not None:
            then()

    def open_path(self, path: Path, stated: Stated | None = None) -> None:
        """Open a file or folder; the book that lies open stays until the new one is ready."""
        path = Path(path).absolute()
        if path.name == "datapackage.json":
            path = path.parent
        self._window.work.begin(self.tr("Opening {} …").format(path.name))
        self._window.errands.ask(
            "open",
            lambda: read(path, stated),
            self._was_read,
            lambda fault: self._not_opened(path, fault),
        )

    def _was_read(self, held: ReadBook) -> None:
        answer = self._window.preferences.founders_answer(held.path) if held.silent else None
        if held.silent and answer is None:
            self._window.work.end()
            self._ask_founders(held, "seed_true")
            return
        self._go_on(held, answer)

    def _ask_founders(self, held: ReadBook, chosen: str, focus: str = "") -> None:
        question = FoundersQuestion(
            held.path.name, list(held.silent), held.worked, chosen, self._window
        )

        def answered(answer: FoundersAnswer) -> None:
            self._window.preferences.set_founders_answer(held.path, answer)
            self._go_on(held, answer, focus)

        question.answered.connect(answered)
        self._window.show_dialog(question)

    def _go_on(self, held: ReadBook, answer: FoundersAnswer | None, focus: str = "") -> None:
        self._window.work.begin(self.tr("Working out {} …").format(held.path.name))
        self._window.errands.ask(
            "open",
            lambda: build(held, answer, focus),
            self._came,
            lambda fault: self._not_opened(held.path, fault),
        )

    def _not_opened(self, path: Path, fault: Fault) -> None:
        self._window.work.end()
        self._then = None
        title = self.tr("{} was not opened").format(path.name)
        ways = self._ways(path) if isinstance(fault, FileFault) else {}

        def tell() -> None:
            self._window.show_dialog(FaultsDialog(title, fault, self._window, ways))

        from pedigreeview.window.importing.entrance import explain_instead

        explain_instead(self._window, path, tell)

    # Faults of the file -------------------------------------------------------------------------

    def fault_dialog(self, fault: Fault) -> FaultsDialog:
        """What did not work in the book that lies open, with the ways on that its file leaves."""
        opened, desk, window = self._window.opened, self._window.desk, self._window
        ways: dict[str, Callable[[], object]] = {}
        if isinstance(fault, FileFault) and opened is not None:
            ways = self._ways(opened.path)
            ways["again"] = desk.try_again
            ways["save_copy"] = lambda: self.save_copy(go_on=True)
            if opened.file is not None and opened.file.read_only:
                del ways["read_only"]
            if opened.file is None:
                for word in ("restore", "rescue", "read_only"):
                    ways.pop(word, None)
        return FaultsDialog(self.tr("That did not work"), fault, window, ways)

    def _troubled(self, fault: Fault) -> None:
        """The file went away, or was damaged, while it lay open; said once."""
        opened, window = self._window.opened, self._window
        self._window.said.setText(fault.what)
        if opened is None or window.dialog is not None:
            return
        ways = self._ways(opened.path)
        ways["again"] = window.desk.look
        ways["save_copy"] = lambda: self.save_copy(go_on=True)
        title = self.tr("{} cannot be reached").format(opened.path.name)
        window.show_dialog(FaultsDialog(title, fault, window, ways))

    def _ways(self, path: Path) -> dict[str, Callable[[], object]]:
        """What can be done about a file that cannot be opened."""
        return {
            "again": partial(self.open_path, path),
            "elsewhere": self.ask_file,
            "read_only": partial(self.open_to_read, path),
            "save_copy": partial(self.copy_file, path),
            "restore": partial(self.show_backups, path),
            "rescue": partial(self.rescue, path),
            "update": self.how_to_update,
        }

    def open_to_read(self, path: Path) -> None:
        """Open a book without ever writing in it."""
        self._window.work.begin(self.tr("Opening {} …").format(path.name))

        def work() -> ReadBook:
            from pedigreeview.book.book_file import BookFile

            file = BookFile.open(path, read_only=True)
            return ReadBook(path, file.book, (), {}, file)

        self._window.errands.ask(
            "open", work, self._was_read, lambda fault: self._not_opened(path, fault)
        )

    def save_copy(self, *, go_on: bool = False) -> None:
        """Save a copy of the book that lies open; `go_on`: and work on in the copy."""
        from pedigreeview.window.save_copy import SaveCopy

        opened = self._window.opened
        if opened is None:
            return
        dialog = SaveCopy(self._window.desk, opened.path, self._window, go_on=go_on)
        dialog.saved.connect(partial(self._copied, dialog, own=True))
        self._window.show_dialog(dialog)

    def _copied(self, dialog: SaveCopy, path: Path, *, own: bool = False) -> None:
        if dialog.go_on.isChecked():
            if own:
                # What is half typed in the book that lies open goes along.
                typed = self._window.unfinished.collect()
                self._window.preferences.set_unfinished(path.absolute(), typed)
            self.open_path(path)
        else:
            self._window.said.setText(self.tr("Saved a copy as {}").format(path.name))

    def copy_file(self, path: Path) -> None:
        """Copy the file of a book that is not open, as it is."""
        from pedigreeview.window.save_copy import copy_of_file

        dialog = copy_of_file(self._window.errands, path, self._window)
        dialog.saved.connect(partial(self._copied, dialog))
        self._window.show_dialog(dialog)

    def show_backups(self, path: Path | None = None) -> None:
        """The backups of the book that lies open, or of one that cannot be opened."""
        from pedigreeview.window.backups_dialog import BackupsDialog

        opened, window = self._window.opened, self._window
        own = opened is not None and opened.file is not None and path in (None, opened.path)
        wanted = path or (opened.path if opened is not None else None)
        if wanted is None or (path is None and not own):
            return
        dialog = BackupsDialog(wanted, window.errands, window.desk if own else None, window)
        dialog.restored.connect(self._restored)
        window.show_dialog(dialog)

    def _restored(self, path: Path, own: bool) -> None:
        if own:
            self._window.said.setText(self.tr("The backup is in its place."))
        else:
            self.open_path(path)

    def rescue(self, path: Path) -> None:
        """Rescue what can be read of a damaged book into a new one."""
        from pedigreeview.window.rescue_dialog import RescueDialog

        dialog = RescueDialog(path, self._window.errands, self._window)
        dialog.open_wanted.connect(self.open_path)
        self._window.show_dialog(dialog)

    def how_to_update(self) -> None:
        """Say how the newer version is got."""
        from pedigreeview import __version__
        from pedigreeview.window.help_pages import HelpSheet

        rows = [
            (self.tr("Here"), self.tr("Version {} of the program.").format(__version__)),
            (
                self.tr("To do"),
                self.tr(
                    "Get the newer version as you got this one: bring the folder that it was "
                    "installed from up to date, and run its install command again."
                ),
            ),
            (self.tr("Until then"), self.tr("The book can be read here, and copied.")),
        ]
        sheet = HelpSheet(self.tr("The newer version"), [("", rows)], self._window)
        self._window.show_dialog(sheet)

    def cancel(self) -> None:
        """Give up the opening under way; nothing changes."""
        self._window.errands.drop("open")
        self._window.work.end()

    def new_book(self) -> None:
        """Start an empty book."""
        self._window.show_dialog(self._new_book_dialog())

    def _new_book_dialog(self) -> QDialog:
        from pedigreeview.window.new_book import NewBook

        dialog = NewBook(self._window.errands, Path(self.folder()), self._window)
        dialog.made.connect(self.open_path)
        return dialog

    def keep_as_book(self, then: Callable[[], None] | None = None) -> None:
        """Keep the open table or folder as a book that can be written in, and open that."""
        opened = self._window.opened
        if opened is None or opened.file is not None:
            return
        path = place_for_book(opened.path)
        self._then = then if then is not None else lambda: None
        self._window.work.begin(self.tr("Keeping {} as a book …").format(opened.path.name))

        def failed(fault: Fault) -> None:
            self._then = None
            self._window.work.end()
            self._window.show_fault(fault)

        def kept(at: Path) -> None:
            self._window.said.setText(self.tr("Kept as {}").format(at))
            self.open_path(at)

        self._window.desk.keep_as_book(path, kept, failed)

    def ask_file(self) -> None:
        """Ask for a table."""
        dialog = QFileDialog(self._window, self.tr("Open a book or a table"), self.folder())
        dialog.setFileMode(QFileDialog.FileMode.ExistingFile)
        dialog.setNameFilters(
            [
                self.tr("Tables and books ({})").format(
                    "*.pedbook *.csv *.tsv *.txt *.xlsx *.ods *.json *.graphml *.gexf"
                ),
                self.tr("All files (*)"),
            ]
        )
        self._open_with(dialog)

    def ask_folder(self) -> None:
        """Ask for a folder."""
        dialog = QFileDialog(self._window, self.tr("Open a folder"), self.folder())
        dialog.setFileMode(QFileDialog.FileMode.Directory)
        dialog.setOption(QFileDialog.Option.ShowDirsOnly)
        self._open_with(dialog)

    def _open_with(self, dialog: QFileDialog) -> None:
        dialog.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        dialog.fileSelected.connect(lambda text: self.open_path(Path(text)))
        self._window.show_dialog(dialog)

    def folder(self) -> str:
        recent = self._window.preferences.recent()
        return str(recent[0].parent) if recent else str(Path.home())

    def ask_founders_again(self) -> None:
        """Ask anew how the founders of this table are kept true."""
        opened = self._window.opened
        if opened is None or not opened.silent:
            return
        answer = self._window.preferences.founders_answer(opened.path)
        chosen, focus = (
            answer.word if answer is not None else "seed_true",
            self._window.pedigree.focus,
        )
        self._window.errands.ask(
            "open",
            lambda: read(opened.path),
            lambda held: self._ask_founders(held, chosen, focus),
            lambda fault: self._not_opened(opened.path, fault),
        )
