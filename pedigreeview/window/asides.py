"""The dialogs beside the pages: the base, saving, the numbers of a group, help.

Each is imported when it is first opened: the window is to be there quickly.
"""

from __future__ import annotations

from datetime import datetime
from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject

if TYPE_CHECKING:
    from pedigreeview.window.main_window import MainWindow

__all__ = ["Asides"]


class Asides(QObject):
    """Opens each of them for the book that lies open."""

    def __init__(self, window: MainWindow) -> None:
        super().__init__(window)
        self._window = window

    def show_base(self) -> None:
        """Show what every number rests on."""
        from pedigreeview.window.base_panel import BasePanel

        if self._window.opened is None:
            return
        opened, window = self._window.opened, self._window
        can_write = window.desk.can_write
        panel = BasePanel(opened.net, bool(opened.silent) or can_write, window)
        panel.change_wanted.connect(
            window.menus.book_acts.settings if can_write else window.door.ask_founders_again
        )
        panel.plant_wanted.connect(self._window.show_plant)
        self._window.show_dialog(panel)

    def save_picture(self) -> None:
        """Save the picture to a file."""
        from pedigreeview.window.save_picture import SavePicture

        if self._window.opened is None:
            return
        path = self._window.opened.path
        dialog = SavePicture(
            self._window.opened.net,
            self._window.pedigree.look(),
            self._window.errands,
            path.parent,
            self._window.opened.title,
            self._window.pedigree.orientation,
            self._window,
            lit_paths=self._window.pedigree.canvas.lit_paths(),
        )
        dialog.saved.connect(self._was_saved)
        self._window.show_dialog(dialog)

    def show_group(self) -> None:
        """Show what a group of plants holds."""
        from pedigreeview.window.group_panel import GroupPanel

        if self._window.opened is not None:
            net, pins = self._window.opened.net, self._window.pedigree.pins
            picked = self._window.exploring.picked
            panel = GroupPanel(net, pins, self._window.errands, self._window, picked=picked)
            self._window.show_dialog(panel)

    def save_tables(self) -> None:
        """Save the book as a table or a folder of tables."""
        from pedigreeview.window.save_tables import SaveTables

        if self._window.opened is None:
            return
        dialog = SaveTables(
            self._window.opened.net.book,
            self._window.errands,
            self._window.opened.path,
            self._window,
        )
        dialog.saved.connect(self._was_saved)
        self._window.show_dialog(dialog)

    def _was_saved(self, path: Path) -> None:
        at = datetime.now().strftime("%H:%M")
        self._window.said.setText(self.tr("Saved {} at {}").format(path.name, at))

    def help_signs(self) -> None:
        """Help: signs of the picture and keys."""
        from pedigreeview.window import help_pages

        self._window.show_dialog(help_pages.signs_and_keys(self._window))

    def help_words(self) -> None:
        """Help: words of the trade."""
        from pedigreeview.window import help_pages

        self._window.show_dialog(
            help_pages.HelpSheet(self.tr("Words"), [("", help_pages.words())], self._window)
        )

    def help_cautions(self) -> None:
        """Help: cautions."""
        from pedigreeview.window import help_pages

        parts = [("", help_pages.cautions())]
        self._window.show_dialog(help_pages.HelpSheet(self.tr("Cautions"), parts, self._window))
