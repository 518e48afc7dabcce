"""The row on top of the way into a book: the steps by their names, the one on show in bold."""

from __future__ import annotations

from collections.abc import Sequence
from html import escape

from PySide6.QtCore import QCoreApplication

from pedigreeview.window.importing.source import Draft
from pedigreeview.window.importing.steps import Step

__all__ = ["trail"]


def trail(steps: Sequence[Step], current: Step | None, draft: Draft) -> str:
    """The names of the steps that are taken for a draft, and of the report behind them, as HTML.

    steps : in their order, the last two being the one for spellings and the one that brings in
    current : the step on show; None for the report
    """
    same, bring_in = steps[-2:]
    names = []
    for one in steps:
        # Whether spellings look alike is known only when the columns are.
        open_yet = one is same and draft.plan is not None and draft.imported is None
        if one is current:
            names.append(f"<b>{escape(one.name())}</b>")
        elif one is bring_in or one.wanted(draft) or open_yet:
            names.append(escape(one.name()))
    report = escape(QCoreApplication.translate("ImportWizard", "Report"))
    names.append(f"<b>{report}</b>" if current is None else report)
    return " &nbsp;›&nbsp; ".join(names)
