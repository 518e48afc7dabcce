"""Dates as people type them, read into the ISO form that the records keep.

'3.5.', '3 May', 'May 2024', 'today', 'yesterday', '-2' (two days ago), '12/5' by the person's own
order of day and month, '2024-05', 'Tuesday'.  A date without a year means the last such day for
what was done, the next for what is planned.  What cannot be a date is refused with what was
understood.
"""

from __future__ import annotations

import datetime
import re
from calendar import monthrange
from dataclasses import dataclass
from typing import Literal

from pedigreeview.book.dates import earliest, is_date
from pedigreeview.book.faults import Fault, Place

__all__ = ["ENGLISH", "DateWords", "Order", "When", "day_of", "shown", "typed_date"]

Order = Literal["day-month", "month-day"]
When = Literal["past", "future"]


@dataclass(frozen=True, slots=True)
class DateWords:
    """The words of one language; months and weekdays may be cut to their first three letters."""

    months: tuple[str, ...]
    weekdays: tuple[str, ...]
    days: tuple[tuple[str, int], ...]
    """Words for one day, with how many days it lies from today."""
    last: tuple[str, ...]
    following: tuple[str, ...]
    ago: tuple[str, ...]


ENGLISH = DateWords(
    months=(
        "january", "february", "march", "april", "may", "june",
        "july", "august", "september", "october", "november", "december",
    ),
    weekdays=("monday", "tuesday", "wednesday", "thursday", "friday", "saturday", "sunday"),
    days=(
        ("today", 0), ("now", 0), ("yesterday", -1), ("tomorrow", 1),
        ("day before yesterday", -2), ("day after tomorrow", 2),
    ),
    last=("last",),
    following=("next", "coming"),
    ago=("days ago", "day ago"),
)  # fmt: skip

_LOOSE_YEAR_FIRST = re.compile(r"([0-9]{4})[-./ ]([0-9]{1,2})(?:[-./ ]([0-9]{1,2}))?\Z")
_RUN_TOGETHER = re.compile(r"([0-9]{4})([0-9]{2})([0-9]{2})\Z")
_FROM_TODAY = re.compile(r"([+-])\s?([0-9]{1,4})\Z")
_TWO = re.compile(r"([0-9]{1,2})\s?([-./ ])\s?([0-9]{1,2})\s?\.?\Z")
_THREE = re.compile(r"([0-9]{1,2})\s?([-./ ])\s?([0-9]{1,2})\s?[-./ ]\s?([0-9]{2}|[0-9]{4})\Z")
_MONTH_YEAR = re.compile(r"([0-9]{1,2})[-./ ]([0-9]{4})\Z")
_NAMED = re.compile(
    r"(?:(?P<before>[0-9]{1,2})(?:st|nd|rd|th)?\.?\s*)?(?P<month>[^\W\d_]{3,})\.?,?"
    r"(?:\s*(?P<after>[0-9]{1,2})(?:st|nd|rd|th)?(?![0-9])\.?)?,?"
    r"(?:\s*(?P<year>[0-9]{4}|'?[0-9]{2}))?\Z"
)


def typed_date(
    text: str,
    today: datetime.date,
    *,
    order: Order = "day-month",
    when: When = "past",
    words: DateWords = ENGLISH,
    column: str = "date",
) -> str:
    """The ISO form of a typed date, which may stop at the month or the year; '' for a blank.

    Parameters
    ----------
    text : as typed
    today : the day from which 'yesterday' and a missing year are counted
    order : how '12/5' is read; dots ('12.5.') always put the day first
    when : whether a date without a year is the last such day ('past', today included) or the next
    words : the language of months and weekdays
    column : the name of the field, for the fault

    Raises
    ------
    Fault : it is no date, with what was understood
    """
    plain = " ".join(text.split()).casefold()
    if not plain:
        return ""
    reader = _Reader(text.strip(), plain, today, order, when, words, column)
    for way in (reader.iso, reader.from_today, reader.weekday, reader.named, reader.numbers):
        found = way()
        if found:
            return found
    raise reader.fault(
        f"{text.strip()!r} was not understood as a date.",
        "Write it as 3.5., 3 May, 2024-05-03, today, yesterday, -2 or Tuesday.",
    )


@dataclass(slots=True)
class _Reader:
    text: str
    plain: str
    today: datetime.date
    order: Order
    when: When
    words: DateWords
    column: str

    def fault(self, what: str, todo: str) -> Fault:
        return Fault(what, Place(column=self.column), todo)

    def iso(self) -> str:
        if is_date(self.plain):
            return self.plain
        found = _LOOSE_YEAR_FIRST.match(self.plain) or _RUN_TOGETHER.match(self.plain)
        if found is None:
            return ""
        if found[3] is None:
            return self._month(int(found[2]), int(found[1]))
        return self._day(int(found[3]), int(found[2]), int(found[1]))

    def from_today(self) -> str:
        for word, days in self.words.days:
            if self.plain == word:
                return self._shift(days)
        found = _FROM_TODAY.match(self.plain)
        if found is not None:
            return self._shift(int(found[1] + found[2]))
        for ending in self.words.ago:
            head = self.plain.removesuffix(ending).strip()
            if head != self.plain and head.isascii() and head.isdigit() and len(head) < 5:
                return self._shift(-int(head))
        return ""

    def _shift(self, days: int) -> str:
        try:
            return (self.today + datetime.timedelta(days=days)).isoformat()
        except OverflowError:
            raise self.fault(
                f"{self.text!r} was read as {days:+d} days, which no calendar reaches.",
                "Write a smaller number of days.",
            ) from None

    def weekday(self) -> str:
        plain, direction = self.plain, ""
        for word in (*self.words.last, *self.words.following):
            if plain.startswith(word + " "):
                plain = plain.removeprefix(word).strip()
                direction = "last" if word in self.words.last else "next"
        number = _named(plain.rstrip("."), self.words.weekdays)
        if number is None:
            return ""
        back = (self.today.weekday() - number) % 7
        if direction == "last":
            return self._shift(-(back or 7))
        if direction == "next" or self.when == "future":
            ahead = (7 - back) % 7
            return self._shift(ahead or (7 if direction == "next" else 0))
        return self._shift(-back)

    def named(self) -> str:
        found = _NAMED.match(self.plain)
        if found is None:
            return ""
        month = _named(found["month"], self.words.months)
        if month is None:
            return ""
        day_text = found["before"] or found["after"]
        if found["before"] and found["after"]:
            if found["year"]:
                return ""
            # '3 May 24': what follows the month is the year.
            year: int | None = self._year(found["after"])
            day_text = found["before"]
        else:
            year = self._year(found["year"].lstrip("'")) if found["year"] else None
        if not day_text:
            return self._month(month + 1, year)
        return self._day(int(day_text), month + 1, year)

    def numbers(self) -> str:
        found = _MONTH_YEAR.match(self.plain)
        if found is not None:
            return self._month(int(found[1]), int(found[2]))
        found = _THREE.match(self.plain) or _TWO.match(self.plain)
        if found is None:
            return ""
        one, sign, two = int(found[1]), found[2], int(found[3])
        year = self._year(found[4]) if found.re is _THREE else None
        day_first = sign == "." or self.order == "day-month"
        day, month = (one, two) if day_first else (two, one)
        if month > 12 >= day and sign != ".":
            # Only the other order can be meant.
            day, month = month, day
        return self._day(day, month, year)

    def _year(self, text: str) -> int:
        year = int(text)
        if len(text) == 4:
            return year
        year += self.today.year // 100 * 100
        return year - 100 if year > self.today.year + 20 else year

    def _day(self, day: int, month: int, year: int | None) -> str:
        if not 1 <= month <= 12:
            raise self.fault(
                f"{self.text!r} was read as day {day} of month {month}, and there are 12 months.",
                f"The order of day and month is set to {self.order.replace('-', ', then ')}.",
            )
        if year is not None:
            return self._made(day, month, year)
        for other in self._years():
            if 1 <= day <= monthrange(other, month)[1] and self._fits(
                datetime.date(other, month, day)
            ):
                return datetime.date(other, month, day).isoformat()
        return self._made(day, month, self.today.year)

    def _made(self, day: int, month: int, year: int) -> str:
        name = self.words.months[month - 1].capitalize()
        try:
            return datetime.date(year, month, day).isoformat()
        except ValueError:
            raise self.fault(
                f"{self.text!r} was read as {day} {name} {year:04d}, which is no day.",
                "Correct the day, the month or the year.",
            ) from None

    def _years(self) -> list[int]:
        # Eight years on, 29 February has come round even over a century without one.
        step = 1 if self.when == "future" else -1
        return [
            year
            for ahead in range(9)
            if datetime.MINYEAR <= (year := self.today.year + step * ahead) <= datetime.MAXYEAR
        ]

    def _fits(self, day: datetime.date) -> bool:
        return day >= self.today if self.when == "future" else day <= self.today

    def _month(self, month: int, year: int | None) -> str:
        if not 1 <= month <= 12:
            raise self.fault(
                f"{self.text!r} was read as month {month} of {year}, and there are 12 months.",
                "Correct the month.",
            )
        if year is None:
            year = self.today.year
            if self.when == "past" and month > self.today.month:
                year -= 1
            elif self.when == "future" and month < self.today.month:
                year += 1
        if not is_date(f"{year:04d}-{month:02d}"):
            raise self.fault(f"{self.text!r} has no year that can be.", "Correct the year.")
        return f"{year:04d}-{month:02d}"


def _named(text: str, names: tuple[str, ...]) -> int | None:
    """The place of the one name that begins with the text, at least three letters long."""
    if len(text) < 3:
        return None
    near = [place for place, name in enumerate(names) if name.startswith(text)]
    # 'sept', 'tues' and the like are beginnings; nothing longer than the name is one.
    return near[0] if len(near) == 1 else None


def shown(date: str, words: DateWords = ENGLISH) -> str:
    """A date as words that leave no doubt: 'Sunday 3 May 2026', 'May 2026', '2026'."""
    if not is_date(date):
        return date
    first = earliest(date)
    parts = [f"{first.year:04d}"]
    if len(date) > 4:
        parts.insert(0, words.months[first.month - 1].capitalize())
    if len(date) > 7:
        parts[:0] = [words.weekdays[first.weekday()].capitalize(), str(first.day)]
    return " ".join(parts)


def day_of(date: str, today: datetime.date) -> datetime.date:
    """The day by which something is numbered: the first that the date can mean, else today."""
    return earliest(date) if is_date(date) else today
