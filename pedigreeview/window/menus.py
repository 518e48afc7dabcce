"""The menus of the window with their keys."""

from __future__ import annotations

from collections.abc import Callable
from functools import partial
from typing import TYPE_CHECKING

from PySide6.QtGui import QAction, QActionGroup, QKeySequence
from PySide6.QtWidgets import QMenu

from pedigreeview.window.welcome import demo_entries

if TYPE_CHECKING:
    from pedigreeview.window.main_window import MainWindow

__all__ = ["Menus"]

_SIZES = (75, 100, 125, 150, 200)


class Menus:
    """Builds the menus and keeps the actions that come and go with a book."""

    def __init__(self, window: MainWindow) -> None:
        self._window = window
        self._with_book: list[QAction] = []
        self.actions: dict[str, QAction] = {}
        self._file()
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
        self._add(menu, "open_file", w.tr("&Open a table …"), w.ask_file, key.Open)
        self._add(menu, "open_folder", w.tr("Open a &folder …"), w.ask_folder, "Ctrl+Shift+O")
        self.recent = menu.addMenu(w.tr("&Recent"))
        self.recent.aboutToShow.connect(self._fill_recent)
        demos = menu.addMenu(w.tr("Open a &demo"))
        for entry in demo_entries():
            demos.addAction(entry.title).triggered.connect(
                lambda _=False, path=entry.path: w.open_path(path)
            )
        menu.addSeparator()
        self._add(
            menu, "save_picture", w.tr("Save the &picture …"), w.save_picture, "Ctrl+E", book=True
        )
        self._add(
            menu, "save_tables", w.tr("Save as &tables …"), w.save_tables, "Ctrl+Shift+S", book=True
        )
        menu.addSeparator()
        self._add(menu, "close_book", w.tr("&Close the book"), w.close_book, key.Close, book=True)
        self._add(menu, "quit", w.tr("&Quit"), w.close, "Ctrl+Q")

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
        self._add(menu, "group", w.tr("&Diversity of a group …"), w.show_group, book=True)
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
        for at, (page, text) in enumerate(
            (
                ("pedigree", w.tr("&Pedigree")),
                ("map", w.tr("&Map")),
                ("reciprocals", w.tr("&Reciprocals")),
                ("checks", w.tr("&Checks")),
            )
        ):
            self._add(menu, page, text, partial(w.show_page, page), f"Ctrl+{at + 1}", book=True)
        menu.addSeparator()
        self._add(
            menu, "find", w.tr("F&ind …"), w.go_find, QKeySequence.StandardKey.Find, book=True
        )

    def _help(self) -> None:
        w = self._window
        menu = self._menu(w.tr("&Help"))
        key = QKeySequence.StandardKey.HelpContents
        self._add(menu, "help_signs", w.tr("&Signs and keys"), w.help_signs, key)
        self._add(menu, "help_words", w.tr("&Words"), w.help_words)
        self._add(menu, "help_cautions", w.tr("&Cautions"), w.help_cautions)
