"""What was chosen for a table stays chosen, also where the wizard was left before its end."""

from __future__ import annotations

from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from pedigreeview.window.importing.source import Draft
    from pedigreeview.window.preferences import Preferences

__all__ = ["keep_choices"]


def keep_choices(preferences: Preferences, draft: Draft) -> None:
    """Remember the meanings of the columns, to be proposed for the next table of that layout."""
    from pedigreeview.exchange.import_layouts import remember

    plan, sheets = draft.plan, draft.source.sheets
    if plan is not None and sheets is not None:
        preferences.set_layouts(remember(preferences.layouts(), sheets, plan))
