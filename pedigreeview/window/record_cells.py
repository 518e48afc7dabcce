"""From what is typed in a cell to the value of a record, and back."""

from __future__ import annotations

import datetime
from typing import Any

from PySide6.QtCore import QCoreApplication

from pedigreeview.book.faults import Fault, Place
from pedigreeview.book.recording.typed_dates import Order, typed_date
from pedigreeview.book.records import Column
from pedigreeview.window.record_words import choice_words, column_words

__all__ = ["cell_text", "cell_value", "shown_value"]


def _tr(text: str) -> str:
    return QCoreApplication.translate("RecordCells", text)


def cell_text(column: Column, value: Any) -> str:
    """A value as the table shows it; '' for what is not known, and for no selfings."""
    if value is None or value == "" or (column.kind == "whole" and value == column.default):
        return ""
    if column.kind == "flag":
        return _tr("yes") if value else _tr("no")
    if column.choices:
        return choice_words().get(str(value), str(value))
    if column.kind == "number":
        return f"{value:g}"
    return str(value)


def shown_value(column: Column, value: Any) -> Any:
    """A value as it goes into a spreadsheet: a number stays one, all else as the table shows it."""
    text = cell_text(column, value)
    return value if text and column.kind in ("whole", "number") else text


def _fault(column: Column, text: str, todo: str) -> Fault:
    said = column_words().get(column.name, column.name)
    return Fault(
        _tr("'{}' does not fit the column '{}'.").format(text, said),
        Place(column=column.name),
        todo,
    )


def cell_value(column: Column, text: str, today: datetime.date, order: Order = "day-month") -> Any:
    """The value that was meant by what was typed.

    Raises
    ------
    Fault : it is no value of that column, with what may be typed
    """
    text = text.strip()
    if not text:
        if column.kind in ("whole", "number", "flag"):
            return column.default
        return ""
    if column.kind == "date":
        return typed_date(text, today, order=order, column=column.name)
    if column.kind == "whole":
        try:
            return int(text)
        except ValueError:
            raise _fault(column, text, _tr("Type a whole number.")) from None
    if column.kind == "number":
        try:
            found = float(text.replace(",", "."))
        except ValueError:
            found = float("nan")
        if found != found or abs(found) == float("inf"):
            raise _fault(column, text, _tr("Type a number such as 12 or 0.5."))
        return found
    low = text.casefold()
    if column.kind == "flag":
        if low in (_tr("yes").casefold(), "yes", "y", "1", "true", "x"):
            return True
        if low in (_tr("no").casefold(), "no", "n", "0", "false"):
            return False
        raise _fault(column, text, _tr("Type yes or no."))
    if column.choices:
        words = choice_words()
        for choice in column.choices:
            if low in (choice, words.get(choice, choice).casefold()):
                return choice
        offered = ", ".join(words.get(choice, choice) for choice in column.choices)
        raise _fault(column, text, _tr("Type one of: {}.").format(offered))
    return text
