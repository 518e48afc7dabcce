"""What is done with the book as a whole, and with a record from any page: the menu's part of it.

Copies, backups, settings, what was done, corrections, deleting; and the card and the Checks page
get what they need to write.
"""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QObject

from pedigreeview.window.book_page import LazyPage

if TYPE_CHECKING:
    from pedigreeview.book.records import Record
    from pedigreeview.window.main_window import MainWindow

__all__ = ["BookActs"]


class BookActs(QObject):
    """Opens each dialog for the book that lies open."""

    def __init__(self, window: MainWindow) -> None:
        super().__init__(window)
        self._window = window
        card, checks = window.pedigree.card, window.checks
        card.write_with(window.desk, window.errands, window.preferences)
        card.photo_wanted.connect(self.show_photo)
        checks.write_with(window.desk)
        checks.record_wanted.connect(self.show_record)

    def settings(self) -> None:
        """The settings of the book."""
        from pedigreeview.window.book_settings import BookSettingsDialog

        window = self._window
        if window.desk.book is not None:
            dialog = BookSettingsDialog(window.desk, window.preferences, window)
            window.show_dialog(dialog)

    def what_was_done(self) -> None:
        """The list of what was done, to undo from."""
        from pedigreeview.window.edits_list import EditsList

        window = self._window
        if window.desk.file is not None:
            window.show_dialog(EditsList(window.desk, window))

    def correct_parents(self, cross: str = "") -> None:
        """Give the picked plants, or all of a cross, another parent or another cross."""
        from pedigreeview.window.correcting_dialog import CorrectingDialog

        window = self._window
        book = window.desk.book
        if book is None:
            return
        picked = [] if cross else list(window.pedigree.canvas.picked_codes())
        if not picked and not cross and window.pedigree.selected:
            picked = [window.pedigree.selected]
        dialog = CorrectingDialog(window.desk, window.errands, picked, cross, window)
        window.show_dialog(dialog)

    def delete(self, record: Record) -> None:
        """Ask what is to become of a record that others may hang on."""
        from pedigreeview.window.deleting_dialog import ask_delete

        ask_delete(self._window, record)

    def delete_plant(self) -> None:
        """Ask what is to become of the plant that the window is at."""
        window = self._window
        book = window.desk.book
        plant = book.plants.get(window.pedigree.selected) if book is not None else None
        if plant is not None:
            self.delete(plant)

    def show_photo(self, name: str) -> None:
        """Show a photo large."""
        from pedigreeview.window.photo_dialog import PhotoDialog

        window = self._window
        dialog = PhotoDialog(window.desk, window.errands, window.preferences, name, window)
        window.show_dialog(dialog)

    def show_record(self, table: str, key: str) -> None:
        """Turn to the row of a record."""
        window = self._window
        page = window.book_pages["records"]
        window.show_page("records")
        if isinstance(page, LazyPage):
            page.page()
        page.go_to(f"{table}:{key}")
