"""The ways in: from the menu, by dropping a file, from a table that cannot be opened as it is."""

from __future__ import annotations

from collections.abc import Callable
from functools import partial
from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import QCoreApplication, Qt
from PySide6.QtWidgets import QDialog, QFileDialog, QWidget

from pedigreeview.book.faults import Fault
from pedigreeview.window.labels import Flow, action_button, column, heading, sentence
from pedigreeview.window.style import step

if TYPE_CHECKING:
    from pedigreeview.window.main_window import MainWindow

__all__ = ["DropQuestion", "ask_table", "bring_in", "dropped", "explain_instead"]


def _tr(text: str) -> str:
    return QCoreApplication.translate("Importing", text)


def ask_table(window: MainWindow) -> None:
    """Ask for a file and bring it in."""
    dialog = QFileDialog(window, _tr("Bring in a table"), window.door.folder())
    dialog.setFileMode(QFileDialog.FileMode.ExistingFile)
    tables = "*.csv *.tsv *.txt *.xlsx *.ods"
    others = "*.json *.graphml *.gexf"
    dialog.setNameFilters(
        [
            _tr("Tables and other files with plants ({})").format(f"{tables} {others}"),
            _tr("Tables ({})").format(tables),
            _tr("All files (*)"),
        ]
    )
    dialog.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
    dialog.fileSelected.connect(lambda text: bring_in(window, Path(text)))
    window.show_dialog(dialog)


def bring_in(window: MainWindow, path: Path, note: str = "") -> None:
    """Bring a file into the open book, or into a new one; another book is merged."""
    if path.suffix.lower() == ".pedbook" and window.opened is not None:
        from pedigreeview.window.merging_dialog import merge_with

        merge_with(window, path)
        return
    from pedigreeview.window.importing.wizard import ImportWizard

    wizard = ImportWizard(
        path,
        window.errands,
        window.desk,
        window.preferences,
        Path(window.door.folder()),
        window,
        note,
    )
    wizard.made.connect(window.open_path)
    window.show_dialog(wizard)


def explain_instead(window: MainWindow, path: Path, otherwise: Callable[[], None]) -> None:
    """Where a file that was not opened is a table of another layout, ask what its columns mean.

    otherwise : what is done with any other file
    """
    from pedigreeview.window.importing.source import wants_explaining

    def answer(wants: bool) -> None:
        if not wants:
            otherwise()
            return
        text = _tr("{} is no plant table as it stands. Say what its columns mean to bring it in.")
        bring_in(window, path, text.format(path.name))

    def failed(_: Fault) -> None:
        otherwise()

    window.errands.ask("open:layout", lambda: wants_explaining(path), answer, failed)


def dropped(window: MainWindow, path: Path) -> None:
    """A file was dropped on the window: open it, or, over an open book, ask what is meant.

    A table or folder that is only read takes nothing in, so there is nothing to ask.
    """
    if window.opened is None or not window.desk.can_write:
        window.open_path(path)
        return
    question = DropQuestion(path, window.opened.title, window)
    question.open_button.clicked.connect(partial(_after, question, window.open_path, path))
    question.bring_button.clicked.connect(
        partial(_after, question, partial(bring_in, window), path)
    )
    window.show_dialog(question)


def _after(question: QDialog, act: Callable[[Path], None], path: Path, *_: object) -> None:
    question.accept()
    act(path)


class DropQuestion(QDialog):
    """Open the file, or bring it into the book that lies open."""

    def __init__(self, path: Path, title: str, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        self.setWindowTitle(path.name)
        s = step()
        layout = column(2 * s, 3 * s)
        self.setLayout(layout)
        text = self.tr("What shall be done with {}?").format(path.name)
        layout.addWidget(heading(text, 2))
        layout.addWidget(
            sentence(
                self.tr(
                    "The book {} lies open. The file can take its place in the window, or its "
                    "plants and crosses can come into that book; you see first what would come in."
                ).format(title)
            )
        )
        layout.addStretch(1)
        flow = Flow(s)
        self.bring_button = action_button(self.tr("&Bring it into the book …"), lambda: None)
        self.open_button = action_button(self.tr("&Open it"), lambda: None, main=True)
        self.open_button.setDefault(True)
        self.cancel_button = action_button(self.tr("Cancel"), self.reject)
        for button in (self.open_button, self.bring_button, self.cancel_button):
            flow.addWidget(button)
        layout.addLayout(flow)
        self.resize(72 * s, 26 * s)
        self.open_button.setFocus()
