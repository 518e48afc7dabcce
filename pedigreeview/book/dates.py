"""Dates as they are written in a garden: ISO 8601 that may stop at the year or the month.

A date that stops early is a span of days.  Comparisons are of spans: one date is *surely* before
another only when its last possible day lies before the other's first, so that a date written
roughly never raises a false alarm.
"""

from __future__ import annotations

import datetime
import re
from calendar import monthrange

__all__ = ["PATTERN", "earliest", "is_date", "latest", "parse", "proposal", "surely_before"]

PATTERN = r"[0-9]{4}(-[0-9]{2}(-[0-9]{2})?)?"
"""The written form, as a regular expression without anchors."""

_FORM = re.compile(r"([0-9]{4})(?:-([0-9]{2})(?:-([0-9]{2}))?)?\Z")
_YEAR_FIRST = re.compile(r"([0-9]{4})[-./ ]?([0-9]{1,2})(?:[-./ ]?([0-9]{1,2}))?-*\Z")
_YEAR_LAST = re.compile(r"([0-9]{1,2})[-./ ]+([0-9]{1,2})[-./ ]+([0-9]{4})\Z")


def parse(text: str) -> tuple[datetime.date, datetime.date]:
    """First and last day that a written date can mean.

    Raises
    ------
    ValueError : the text is blank, not of the form 2021, 2021-05 or 2021-05-17, or no such day
    """
    found = _FORM.match(text)
    if found is None:
        raise ValueError(f"{text!r} is no date of the form 2021, 2021-05 or 2021-05-17")
    year = int(found[1])
    if found[2] is None:
        return datetime.date(year, 1, 1), datetime.date(year, 12, 31)
    month = int(found[2])
    if found[3] is None:
        first = datetime.date(year, month, 1)
        return first, first.replace(day=monthrange(year, month)[1])
    day = datetime.date(year, month, int(found[3]))
    return day, day


def is_date(text: str) -> bool:
    """Whether the text is a date; blank is not one."""
    try:
        parse(text)
    except ValueError:
        return False
    return True


def earliest(text: str) -> datetime.date:
    """The first day that the date can mean; ValueError where it is no date."""
    return parse(text)[0]


def latest(text: str) -> datetime.date:
    """The last day that the date can mean; ValueError where it is no date."""
    return parse(text)[1]


def surely_before(one: str, other: str) -> bool:
    """Whether the first date lies before the second whatever day each means; False for a blank."""
    if not one or not other or not is_date(one) or not is_date(other):
        return False
    return latest(one) < earliest(other)


def proposal(text: str) -> str:
    """How a date that is written another way is to be written, or '' where that is not clear.

    Where day and month can be told apart by size only one reading is given, else both, parted by
    ' or '.
    """
    text = text.strip()
    if is_date(text.rstrip("-")):
        return text.rstrip("-")
    found = _YEAR_FIRST.match(text)
    if found is not None:
        parts = [found[1], found[2].zfill(2)] + ([found[3].zfill(2)] if found[3] else [])
        written = "-".join(parts)
        return written if is_date(written) else ""
    found = _YEAR_LAST.match(text)
    if found is None:
        return ""
    one, two, year = found[1].zfill(2), found[2].zfill(2), found[3]
    readings = dict.fromkeys(f"{year}-{month}-{day}" for day, month in ((one, two), (two, one)))
    return " or ".join(reading for reading in readings if is_date(reading))
