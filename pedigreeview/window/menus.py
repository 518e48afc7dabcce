"""The menus of the window with their keys."""

from __future__ import annotations

from collections.abc import Callable
from functools import partial
from typing import TYPE_CHECKING

from PySide6.QtCore import QLocale
from PySide6.QtGui import QAction, QActionGroup, QKeySequence
from PySide6.QtWidgets import QMenu

from pedigreeview.window.book_acts import BookActs
from pedigreeview.window.pages import page_words
from pedigreeview.window.saying import say
from pedigreeview.window.translating import languages
from pedigreeview.window.welcome import demo_entries

if TYPE_CHECKING:
    from pedigreeview.window.main_window import MainWindow

__all__ = ["Menus"]

_SIZES = (75, 100, 125, 150, 200)


def _print_papers(window: MainWindow) -> None:
    from pedigreeview.window.papers.opening import open_papers

    open_papers(window)


class Menus:
    """Builds the menus and keeps the actions that come and go with a book."""

    def __init__(self, window: MainWindow) -> None:
        self._window = window
        self._with_book: list[QAction] = []
        self.actions: dict[str, QAction] = {}
        self.book_acts = BookActs(window)
        self._file()
        self._edit()
        self._write()
        self._view()
        self._go()
        self._help()
        self.set_has_book(False)

    def set_has_book(self, has: bool) -> None:
        """Enable what needs a book."""
        for action in self._with_book:
            action.setEnabled(has)

    def _add(
        self,
        menu: QMenu,
        name: str,
        text: str,
        act: Callable[[], object],
        key: str | QKeySequence.StandardKey = "",
        *,
        book: bool = False,
    ) -> QAction:
        action = menu.addAction(text)
        action.setObjectName(name)
        if key:
            action.setShortcut(QKeySequence(key))
        action.triggered.connect(lambda: act())
        self.actions[name] = action
        if book:
            self._with_book.append(action)
        return action

    def _menu(self, text: str) -> QMenu:
        return self._window.menuBar().addMenu(text)

    def _file(self) -> None:
        w = self._window
        menu = self._menu(w.tr("&File"))
        key = QKeySequence.StandardKey
        self._add(menu, "new_book", w.tr("&New book …"), w.door.new_book, key.New)
        self._add(menu, "open_file", w.tr("&Open a book or table …"), w.door.ask_file, key.Open)
        self._add(menu, "open_folder", w.tr("Open a &folder …"), w.door.ask_folder, "Ctrl+Shift+O")
        self.recent = menu.addMenu(w.tr("&Recent"))
        self.recent.aboutToShow.connect(self._fill_recent)
        demos = menu.addMenu(w.tr("Open a &demo"))
        for entry in demo_entries():
            demos.addAction(entry.title).triggered.connect(
                lambda _=False, path=entry.path: w.open_path(path)
            )
        menu.addSeparator()
        self._add(
            menu,
            "save_picture",
            w.tr("Save the pict&ure …"),
            w.asides.save_picture,
            "Ctrl+E",
            book=True,
        )
        self._add(
            menu,
            "print_picture",
            w.tr("&Print the picture …"),
            lambda: w.exploring.print_view(),
            key.Print,
            book=True,
        )
        self._add(
            menu,
            "print_papers",
            w.tr("Print tags and &lists …"),
            lambda: _print_papers(w),
            "Ctrl+Shift+P",
            book=True,
        )
        self._add(
            menu,
            "report_plant",
            w.tr("Report on thi&s plant …"),
            w.asides.report_on_plant,
            book=True,
        )
        self._add(
            menu,
            "report_line",
            w.tr("&History of this line …"),
            w.asides.report_on_line,
            book=True,
        )
        self._add(
            menu,
            "save_as",
            w.tr("Save in another for&m …"),
            w.asides.save_as,
            "Ctrl+Shift+S",
            book=True,
        )
        menu.addSeparator()
        self._add(menu, "bring_in", w.tr("Bring &in a table …"), w.asides.bring_in, "Ctrl+Shift+I")
        text = w.tr("Bring in another boo&k …")
        self._add(menu, "merge", text, w.asides.merge, book=True)
        menu.addSeparator()
        acts = self.book_acts
        self._add(menu, "save_copy", w.tr("Save a &copy …"), w.door.save_copy, book=True)
        self._add(menu, "backups", w.tr("&Backups …"), w.door.show_backups, book=True)
        self._add(menu, "settings", w.tr("Book s&ettings …"), acts.settings, "Ctrl+,", book=True)
        menu.addSeparator()
        self._add(menu, "close_book", w.tr("&Close the book"), w.close_book, key.Close, book=True)
        self._add(menu, "quit", w.tr("&Quit"), w.close, "Ctrl+Q")

    def _edit(self) -> None:
        w = self._window
        menu = self._menu(w.tr("&Edit"))
        key = QKeySequence.StandardKey
        self._add(menu, "undo", w.tr("&Undo"), w.desk.undo, key.Undo)
        self._add(menu, "redo", w.tr("&Redo"), w.desk.redo, "Ctrl+Shift+Z")
        acts = self.book_acts
        self._add(
            menu, "done", w.tr("&What was done …"), acts.what_was_done, "Ctrl+Alt+Z", book=True
        )
        menu.addSeparator()
        self._add(menu, "correct", w.tr("&Correct parents …"), acts.correct_parents, book=True)
        self._add(menu, "delete", w.tr("&Delete this plant …"), acts.delete_plant, book=True)
        menu.addSeparator()
        self._add(
            menu,
            "copy_picture",
            w.tr("Copy the &picture"),
            w.asides.copy_picture,
            "Ctrl+Shift+C",
            book=True,
        )
        text = w.tr("Copy the &table")
        self._add(menu, "copy_table", text, w.asides.copy_table, "Ctrl+Shift+T", book=True)
        text = w.tr("Parentage as te&xt …")
        self._add(menu, "notation", text, w.asides.show_notation, book=True)
        self.set_undo("", "")

    def _write(self) -> None:
        w = self._window
        menu = self._menu(w.tr("&Write"))
        for at, group in enumerate(w.writing.entries()):
            if at:
                menu.addSeparator()
            for entry in group:
                act = partial(w.writing.open, entry.name)
                self._add(menu, f"write_{entry.name}", entry.text, act, entry.key, book=True)

    def set_undo(self, undo: str, redo: str) -> None:
        """What the menu offers to take back and to make again; '' for nothing."""
        w = self._window
        for name, words, text, alone in (
            ("undo", undo, w.tr("&Undo: {}"), w.tr("&Undo")),
            ("redo", redo, w.tr("&Redo: {}"), w.tr("&Redo")),
        ):
            action = self.actions[name]
            action.setEnabled(bool(words))
            action.setText(text.format(say(words).replace("&", "&&")) if words else alone)

    def _fill_recent(self) -> None:
        self.recent.clear()
        w = self._window
        paths = w.preferences.recent()
        for path in paths:
            action = self.recent.addAction(path.name)
            action.setToolTip(str(path))
            action.setEnabled(path.exists())
            action.triggered.connect(lambda _=False, path=path: w.open_path(path))
        if not paths:
            self.recent.addAction(w.tr("Nothing yet")).setEnabled(False)

    def _view(self) -> None:
        w = self._window
        menu = self._menu(w.tr("&View"))
        page = w.pedigree
        self._add(menu, "index", w.tr("&Index"), page.index_button.toggle, "Ctrl+I", book=True)
        self._add(menu, "fit", w.tr("&Fit the picture"), page.fit, "Ctrl+0", book=True)
        self._add(
            menu,
            "nearer",
            w.tr("&Nearer"),
            page.nearer.click,
            QKeySequence.StandardKey.ZoomIn,
            book=True,
        )
        self._add(
            menu,
            "further",
            w.tr("F&urther"),
            page.further.click,
            QKeySequence.StandardKey.ZoomOut,
            book=True,
        )
        self._add(
            menu, "whole", w.tr("&Whole book"), page.whole_button.click, "Ctrl+Shift+W", book=True
        )
        self._add(menu, "turn", w.tr("&Sideways"), page.turn_button.click, "Ctrl+T", book=True)
        menu.addSeparator()
        menu.addActions(list(page.commands.values()))
        self._with_book += page.commands.values()
        menu.addSeparator()
        self._add(menu, "group", w.tr("&Diversity of a group …"), w.asides.show_group, book=True)
        menu.addSeparator()
        looks = menu.addMenu(w.tr("&Light or dark"))
        group = QActionGroup(w)
        for word, text in (
            ("system", w.tr("as the system")),
            ("light", w.tr("light")),
            ("dark", w.tr("dark")),
        ):
            action = self._add(looks, f"look_{word}", text, partial(w.set_look, word))
            action.setCheckable(True)
            action.setChecked(w.preferences.look == word)
            group.addAction(action)
        tongues = menu.addMenu(w.tr("Lan&guage"))
        tongue_group = QActionGroup(w)
        for code in ("system", *languages()):
            text = w.tr("as the system") if code == "system" else QLocale(code).nativeLanguageName()
            act = partial(w.set_language, code)
            action = self._add(tongues, f"language_{code}", text, act)
            action.setCheckable(True)
            action.setChecked(w.preferences.language == code)
            tongue_group.addAction(action)
        sizes = menu.addMenu(w.tr("Size of the &text"))
        size_group = QActionGroup(w)
        for size in _SIZES:
            action = self._add(sizes, f"text_{size}", f"{size}%", partial(w.set_text_size, size))
            action.setCheckable(True)
            action.setChecked(w.preferences.text_size == size)
            size_group.addAction(action)

    def _go(self) -> None:
        w = self._window
        menu = self._menu(w.tr("&Go"))
        self._add(menu, "back", w.tr("&Back"), w.back, "Alt+Left", book=True)
        self._add(menu, "forward", w.tr("&Forward"), w.forward, "Alt+Right", book=True)
        menu.addSeparator()
        for at, page in enumerate(page_words(), 1):
            self._add(
                menu, page.name, page.text, partial(w.show_page, page.name), f"Ctrl+{at}", book=True
            )
        menu.addSeparator()
        self._add(
            menu, "find", w.tr("F&ind …"), w.go_find, QKeySequence.StandardKey.Find, book=True
        )

    def _help(self) -> None:
        w = self._window
        menu = self._menu(w.tr("&Help"))
        key = QKeySequence.StandardKey.HelpContents
        self._add(menu, "help_signs", w.tr("&Signs and keys"), w.asides.help_signs, key)
        self._add(menu, "help_words", w.tr("&Words"), w.asides.help_words)
        self._add(menu, "help_cautions", w.tr("&Cautions"), w.asides.help_cautions)
