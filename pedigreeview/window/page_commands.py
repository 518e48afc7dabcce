"""What can be asked of the Pedigree page by menu and by key, beside the tools above the picture."""

from __future__ import annotations

from collections.abc import Callable
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, Qt
from PySide6.QtGui import QAction, QKeySequence

if TYPE_CHECKING:
    from pedigreeview.window.pedigree_page import PedigreePage

__all__ = ["PageCommands"]


class PageCommands(QObject):
    """The commands by name, each with its key; the keys work while the page has the focus."""

    def __init__(self, page: PedigreePage) -> None:
        super().__init__(page)
        self._page = page
        self.actions = self._make()

    def _make(self) -> dict[str, QAction]:
        page = self._page
        found = {}
        for name, text, key, act in (
            (
                "way_connection",
                self.tr("&How are these two connected"),
                "Ctrl+Shift+H",
                lambda: page.ways.show_connection(),
            ),
            (
                "way_descent",
                self.tr("What &came of this"),
                "Ctrl+Shift+D",
                lambda: page.ways.show_descent(),
            ),
            (
                "way_cytoplasm",
                self.tr("Lineage by c&ytoplasm"),
                "Ctrl+Shift+Y",
                lambda: page.ways.show_cytoplasm(),
            ),
            ("way_near", self.tr("The &neighbourhood"), "Ctrl+Shift+G", page.ways.show_near),
            (
                "beside",
                self.tr("Compare two side &by side"),
                "Ctrl+Shift+B",
                lambda: page.compare.show_beside(),
            ),
            ("shades", self.tr("&Tint and filter"), "Ctrl+Shift+F", page.tools.shades.toggle),
            ("bookmark", self.tr("Book&mark this place …"), "Ctrl+D", page.bookmarks.ask_name),
            ("bookmarks", self.tr("A&ll bookmarks …"), "Ctrl+Shift+L", page.bookmarks.show_all),
        ):
            action = QAction(text, page)
            action.setObjectName(name)
            action.setShortcut(QKeySequence(key))
            action.setShortcutContext(Qt.ShortcutContext.WidgetWithChildrenShortcut)
            action.triggered.connect(lambda _=False, act=act: self._do(act))
            page.addAction(action)
            found[name] = action
        return found

    def _do(self, act: Callable[[], object]) -> None:
        """Do it there, also when it is asked for on another page."""
        page = self._page
        if not page.isVisible() and page.selected:
            page.plant_wanted.emit(page.selected)
        act()

    def fill_ways(self) -> None:
        """What the button of the ways of looking offers."""
        menu = self._page.tools.ways_menu
        menu.clear()
        names = ("way_near", "way_connection", "way_descent", "way_cytoplasm")
        menu.addActions([self.actions[name] for name in names])
        menu.addSeparator()
        menu.addAction(self.actions["beside"])
