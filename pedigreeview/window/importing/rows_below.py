"""The rows of the file below the steps, read anew in the background whenever the plan changes."""

from __future__ import annotations

from collections.abc import Callable
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, QTimer

from pedigreeview.window.importing.preview_panel import PreviewPanel
from pedigreeview.window.importing.source import Draft
from pedigreeview.window.importing.words import meaning_words

if TYPE_CHECKING:
    from pedigreeview.exchange.importing import Preview
    from pedigreeview.window.errands import Errands

__all__ = ["RowsBelow"]

_KIND = "open:preview"
_AFTER = 120
"""Milliseconds of quiet before the rows are read anew."""


class RowsBelow(QObject):
    """Shows the rows in a panel and marks what in them cannot be read.

    Parameters
    ----------
    draft : what is settled so far; asked anew each time
    """

    def __init__(self, panel: PreviewPanel, errands: Errands, draft: Callable[[], Draft]) -> None:
        super().__init__(panel)
        self._panel, self._errands, self._draft = panel, errands, draft
        self._delay = QTimer(self)
        self._delay.setSingleShot(True)
        self._delay.setInterval(_AFTER)
        self._delay.timeout.connect(self._ask)

    def show(self, *, below: bool) -> None:
        """Show the rows of the table; below : only those below its headings, and read them."""
        draft, panel = self._draft(), self._panel
        if draft.plan is None or draft.table is None:
            return
        words = meaning_words(draft.plan.form)
        said = [words.get(one.meaning, "") for one in draft.plan.columns] if below else []
        panel.model.show_table(draft.table, draft.plan.heading, below=below, meanings=said)
        panel.fit_columns()
        panel.show_faults(())
        self._errands.drop(_KIND)
        if below:
            panel.said.setText(self.tr("Reading the rows …"))
            self._delay.start()
        else:
            self._delay.stop()
            panel.said.setText("")

    def stop(self) -> bool:
        """Read no more; gives whether the rows have still to be read."""
        unread = self._delay.isActive() or self._errands.awaits(_KIND)
        self._delay.stop()
        self._errands.drop(_KIND)
        return unread

    def _ask(self) -> None:
        source, plan = self._draft().source, self._draft().plan
        if source.sheets is None or plan is None:
            return
        sheets, asked, tick = source.sheets, plan, self._errands.tick

        def work() -> Preview:
            from pedigreeview.exchange.importing import preview

            return preview(sheets, asked, 0, tick=tick)

        def done(found: Preview) -> None:
            if self._draft().plan is asked:
                self._tell(found)

        self._errands.ask(_KIND, work, done, lambda _: self._panel.said.setText(""))

    def _tell(self, found: Preview) -> None:
        self._panel.show_faults(found.faults, found.more_faults)
        problems = len(found.faults) + found.more_faults
        if found.missing:
            text = found.missing[0]
        elif problems:
            text = self.tr("{} problems; the first are marked and listed.").format(problems)
            if problems == 1:
                text = self.tr("One problem; it is marked and listed.")
        else:
            text = self.tr("Every row can be read.")
        self._panel.said.setText(text)
