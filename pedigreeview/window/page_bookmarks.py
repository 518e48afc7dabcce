"""Bookmarks: named places in the picture and the last pins, kept in the book itself.

The pins as they were last are the bookmark named `LAST_PINS`; it is in no list, and no bookmark of
one's own can have that name.
"""

from __future__ import annotations

from typing import TYPE_CHECKING, Any

from PySide6.QtCore import QObject, QTimer
from PySide6.QtWidgets import QMenu

from pedigreeview.book.pins import LAST_PINS
from pedigreeview.book.records import Bookmark
from pedigreeview.window.words import named

if TYPE_CHECKING:
    from pedigreeview.book.edits import Edit
    from pedigreeview.window.bookmark_dialog import BookmarkDialog
    from pedigreeview.window.desk import Desk
    from pedigreeview.window.pedigree_page import PedigreePage

__all__ = ["LAST_PINS", "PageBookmarks", "pinned_codes"]

_WAIT = 1500
"""Milliseconds after the last change of the pins until they are kept."""


def pinned_codes(bookmark: Bookmark) -> list[str]:
    """The pinned plants of a bookmark."""
    return [code.strip() for code in bookmark.pinned.split(";") if code.strip()]


class PageBookmarks(QObject):
    """Keeps bookmarks through the desk, and goes to them."""

    def __init__(self, page: PedigreePage, desk: Desk | None) -> None:
        super().__init__(page)
        self._page, self._desk = page, desk
        self.dialog: BookmarkDialog | None = None
        """The list of bookmarks, while it lies open."""
        self._timer = QTimer(self)
        self._timer.setSingleShot(True)
        self._timer.setInterval(_WAIT)
        self._timer.timeout.connect(self.keep_pins)
        page.pins_changed.connect(lambda _: self._timer.start())

    # Reading ------------------------------------------------------------------------------------

    def held(self) -> dict[str, Bookmark]:
        """The bookmarks of the book by name, without that of the last pins."""
        shown = self._page.shown
        found = shown.net.book.bookmarks if shown is not None else {}
        return {name: mark for name, mark in found.items() if name != LAST_PINS}

    def words(self, mark: Bookmark) -> str:
        """Where a bookmark leads."""
        shown = self._page.shown
        assert shown is not None
        place = named(shown.net.book, mark.focus) if mark.focus else self.tr("the whole book")
        count = len(pinned_codes(mark))
        if not count:
            return place
        if count == 1:
            return self.tr("{}, 1 pin").format(place)
        return self.tr("{}, {} pins").format(place, count)

    def go_to(self, name: str) -> None:
        """Go to a bookmark: its focus and its pins."""
        mark, shown = self.held().get(name), self._page.shown
        if mark is None or shown is None:
            return
        self._page.pinning.set_pins(pinned_codes(mark))
        if mark.focus in shown.net.book.plants:
            self._page.focus_on(mark.focus)
        elif not mark.focus:
            self._page.show_whole(True)
        self._page.said.emit(self.tr("Bookmark: {}").format(name))
        self._page.canvas.setFocus()

    def restore_pins(self) -> None:
        """Pin what was pinned when the book was last looked at."""
        shown = self._page.shown
        mark = shown.net.book.bookmarks.get(LAST_PINS) if shown is not None else None
        if mark is not None and (codes := pinned_codes(mark)):
            self._page.pinning.set_pins(codes)
        self._timer.stop()

    def fill(self, menu: QMenu) -> None:
        """What the button of bookmarks offers."""
        menu.clear()
        menu.addAction(self.tr("Bookmark this place …")).triggered.connect(lambda: self.ask_name())
        held = self.held()
        menu.addAction(self.tr("All bookmarks …")).triggered.connect(lambda: self.show_all())
        if held:
            menu.addSeparator()
        for name in held:
            text = name.replace("&", "&&")
            menu.addAction(text).triggered.connect(lambda _=False, name=name: self.go_to(name))

    # Writing ------------------------------------------------------------------------------------

    def keep_pins(self) -> None:
        """Keep the pins as they are now, in a book that can be written in.

        Pins are no work done in the book: undo passes them over.
        """
        shown, desk = self._page.shown, self._desk
        self._timer.stop()
        if shown is None or desk is None or not desk.can_write:
            return
        if desk.book is not shown.net.book:
            return
        pinned = ";".join(shown.pins)
        mark = shown.net.book.bookmarks.get(LAST_PINS)
        if pinned == (mark.pinned if mark is not None else ""):
            return

        def write(edit: Edit) -> None:
            if mark is None:
                edit.add(Bookmark(name=LAST_PINS, pinned=pinned))
            elif pinned:
                edit.update(mark, pinned=pinned)
            else:
                edit.remove(mark)

        desk.record(self.tr("Pins"), write, refused=lambda _: None, quiet=True)

    def keep(self, name: str, then: Any = None, refused: Any = None) -> None:
        """Bookmark the place that is shown under a name; one of that name is replaced."""
        shown, desk = self._page.shown, self._desk
        if shown is None or desk is None:
            return
        focus, pinned = shown.focus or "", ";".join(shown.pins)

        def write(edit: Edit) -> None:
            mark = edit.book.bookmarks.get(name)
            if mark is None:
                edit.add(Bookmark(name=name, focus=focus, pinned=pinned))
            else:
                edit.update(mark, focus=focus, pinned=pinned)

        desk.record(self.tr("Bookmark {}").format(name), write, then, refused)

    def rename(self, name: str, new: str, then: Any = None, refused: Any = None) -> None:
        """Give a bookmark another name."""
        mark = self.held().get(name)
        if mark is not None and self._desk is not None:
            words = self.tr("Bookmark {} renamed").format(name)
            self._desk.record(words, lambda edit: edit.update(mark, name=new), then, refused)

    def remove(self, name: str, then: Any = None, refused: Any = None) -> None:
        """Take a bookmark out of the book."""
        mark = self.held().get(name)
        if mark is not None and self._desk is not None:
            words = self.tr("Bookmark {} removed").format(name)
            self._desk.record(words, lambda edit: edit.remove(mark), then, refused)

    # The dialog ---------------------------------------------------------------------------------

    def ask_name(self) -> None:
        """Ask for the name of the place that is shown, and keep it."""
        self._open(naming=True)

    def show_all(self) -> None:
        """List the bookmarks: go to one, rename it, remove it."""
        self._open(naming=False)

    def _open(self, *, naming: bool) -> None:
        if self._page.shown is None:
            return
        from pedigreeview.window.bookmark_dialog import BookmarkDialog

        if self.dialog is not None:
            self.dialog.reject()
        self.dialog = dialog = BookmarkDialog(self, self._page.window())
        dialog.finished.connect(lambda _: self._gone(dialog))
        dialog.begin(self.suggestion() if naming else "")
        dialog.open()

    def _gone(self, dialog: BookmarkDialog) -> None:
        if self.dialog is dialog:
            self.dialog = None
        dialog.deleteLater()

    def suggestion(self) -> str:
        """A name for the place that is shown."""
        shown = self._page.shown
        if shown is None or shown.focus is None:
            return self.tr("The whole book")
        return named(shown.net.book, shown.focus)

    def tell_changed(self) -> None:
        """The book was edited: the list is another one."""
        if self.dialog is not None:
            self.dialog.show_list()
