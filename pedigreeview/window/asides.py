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

    def report_on_plant(self) -> None:
        """Write the report on the plant that is looked at."""
        self._report(line=False)

    def report_on_line(self) -> None:
        """Write the history of the line that ends in the plant that is looked at."""
        self._report(line=True)

    def _report(self, *, line: bool) -> None:
        from pedigreeview.window.report_dialog import ReportDialog, plant_at_hand

        window = self._window
        code = plant_at_hand(window)
        if window.opened is None or not code:
            return
        dialog = ReportDialog(
            window.opened.net,
            code,
            window.errands,
            window.preferences,
            window.opened.path.parent,
            window,
            line=line,
        )
        dialog.saved.connect(self._was_saved)
        dialog.printed.connect(window.said.setText)
        window.show_dialog(dialog)

    def show_group(self) -> None:
        """Show what a group of plants holds."""
        from pedigreeview.window.group_panel import GroupPanel

        if self._window.opened is not None:
            net, pins = self._window.opened.net, self._window.pedigree.pins
            picked = self._window.exploring.picked
            panel = GroupPanel(net, pins, self._window.errands, self._window, picked=picked)
            self._window.show_dialog(panel)

    def save_as(self) -> None:
        """Save the book, its coefficients or the table on show in any format."""
        from pedigreeview.window.copying import table_on_show
        from pedigreeview.window.export_dialog import ExportDialog

        window = self._window
        if window.opened is None:
            return
        dialog = ExportDialog(
            window.opened.net,
            window.errands,
            window.opened.path,
            window,
            shown=table_on_show(window),
            picked=window.picked,
        )
        dialog.saved.connect(self._was_saved)
        window.show_dialog(dialog)

    def bring_in(self) -> None:
        """Bring a table into the open book, or into a new one."""
        from pedigreeview.window.importing.entrance import ask_table

        ask_table(self._window)

    def merge(self) -> None:
        """Bring another book into the one that lies open."""
        from pedigreeview.window.merging_dialog import ask_book

        ask_book(self._window)

    def dropped(self, path: Path) -> None:
        """A file was dropped on the window."""
        from pedigreeview.window.importing.entrance import dropped

        dropped(self._window, path)

    def copy_picture(self) -> None:
        """Put the picture on the clipboard."""
        from pedigreeview.window.copying import copy_picture

        copy_picture(self._window)

    def copy_table(self) -> None:
        """Put the table of the page on the clipboard."""
        from pedigreeview.window.copying import copy_table

        copy_table(self._window)

    def show_notation(self, code: str = "") -> None:
        """Show the parentage of a plant, or of the one that is marked, as a line of text."""
        from pedigreeview.window.notation_dialog import NotationDialog

        window = self._window
        code = code or window.pedigree.selected or window.pedigree.focus
        if window.opened is None or code not in window.opened.net.book.plants:
            window.said.setText(self.tr("Mark a plant first."))
            return
        window.show_dialog(NotationDialog(window.opened.net, code, window))

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
