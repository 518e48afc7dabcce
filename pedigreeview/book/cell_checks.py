"""Whether a value fits its column: looked at before it is kept, in whatever way it was entered."""

from __future__ import annotations

import math
import re
from typing import Any

from pedigreeview.book.dates import is_date, proposal
from pedigreeview.book.edit_faults import BadCell
from pedigreeview.book.number_ranges import RANGES, fits_range
from pedigreeview.book.records import SELF, Column, Record

__all__ = ["check_cell"]

_CODES = {"plants": "plant", "crosses": "cross"}
_CONTROL = re.compile("[\x00-\x1f\x7f\x80-\x9f\u2028\u2029\ud800-\udfff\ufffe\uffff]")
_UNFIT = re.compile("[\x00-\x08\x0b\x0c\x0e-\x1f\ud800-\udfff\ufffe\uffff]")
_LARGEST = 2**63 - 1
"""The largest whole number that the store holds."""


def check_cell(record: Record, column: Column, value: Any) -> None:
    """Look at one value of a record.

    Raises
    ------
    BadCell : it is not one that the person can have meant
    TypeError : it is of another type than the column, which is a bug of the caller
    """
    said = column.name.replace("_", " ")
    if column.kind in ("whole", "number", "flag"):
        _check_number(record, column, value, said)
        return
    if not isinstance(value, str):
        raise TypeError(f"{record.TABLE}.{column.name} is text, not {value!r}")
    if column.required and not value.strip():
        raise BadCell(record, column.name, f"The {said} is blank.", "Fill it in.")
    if column.kind == "date" and value and not is_date(value):
        meant = proposal(value)
        raise BadCell(
            record,
            column.name,
            f"The {said} {value!r} is no date.",
            f"Write it as {meant}." if meant else "Write it as 2021, 2021-05 or 2021-05-17.",
        )
    if column.choices and value and value not in column.choices:
        raise BadCell(
            record,
            column.name,
            f"The {said} {value!r} is none of the words for it.",
            f"Choose one of: {', '.join(column.choices)}.",
        )
    if _CODES.get(record.TABLE) == column.name or (column.name,) == record.KEY:
        _check_code(record, column, value, strict=record.TABLE in _CODES)
    elif found := _UNFIT.search(value):
        raise BadCell(
            record,
            column.name,
            f"The {said} has the character U+{ord(found[0]):04X} in it, which no picture can show.",
            "Delete that character.",
        )


def _check_code(record: Record, column: Column, value: str, *, strict: bool) -> None:
    if value != value.strip():
        raise BadCell(
            record,
            column.name,
            f"The code {value!r} begins or ends with a blank.",
            f"Write it as {value.strip()!r}.",
        )
    if found := _CONTROL.search(value):
        raise BadCell(
            record,
            column.name,
            f"The code {value!r} has the character U+{ord(found[0]):04X} in it.",
            "Delete that character.",
        )
    if not strict:
        return
    if value.casefold() == SELF:
        raise BadCell(
            record,
            column.name,
            f"The code {value!r} is the word for the seed parent itself.",
            f"Choose another code, such as '{value}-1'.",
        )
    if ":" in value or ";" in value:
        raise BadCell(
            record,
            column.name,
            f"The code {value!r} has ':' or ';' in it, which part candidates and lists.",
            f"Write it as {re.sub('[:;]+', '-', value)!r}.",
        )


def _check_number(record: Record, column: Column, value: Any, said: str) -> None:
    if value is None:
        if column.required or column.default is not None:
            raise BadCell(record, column.name, f"The {said} is blank.", "Fill it in.")
        return
    if column.kind == "flag":
        if not isinstance(value, bool):
            raise TypeError(f"{record.TABLE}.{column.name} is a flag, not {value!r}")
        return
    wanted = int if column.kind == "whole" else (int, float)
    if isinstance(value, bool) or not isinstance(value, wanted):
        raise TypeError(f"{record.TABLE}.{column.name} is a {column.kind}, not {value!r}")
    if (isinstance(value, float) and not math.isfinite(value)) or abs(value) > _LARGEST:
        raise BadCell(
            record, column.name, f"The {said} {value!r} is too large.", "Write a smaller number."
        )
    if record.TABLE == "pollen_candidates" and not 0 <= value <= 1:
        raise BadCell(
            record, column.name, f"The {said} {value!r} are not from 0 to 1.", "Correct them."
        )
    between = RANGES.get((record.TABLE, column.name), (None, None))
    if not fits_range(value, between):
        low, high = between
        right = f"{low} or more" if high is None else f"a number from {low} to {high}"
        raise BadCell(record, column.name, f"The {said} {value!r} cannot be.", f"Write {right}.")
    if column.name in ("flowers", "set", "dropped", "fruits", "seeds", "left", "up", "kept") and (
        value < 0
    ):
        raise BadCell(record, column.name, f"The {said} {value!r} is below 0.", "Write 0 or more.")
