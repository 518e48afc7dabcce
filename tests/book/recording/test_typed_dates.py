"""Dates as people type them."""

from __future__ import annotations

import datetime

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from pedigreeview.book.dates import is_date
from pedigreeview.book.faults import Fault
from pedigreeview.book.recording.typed_dates import day_of, shown, typed_date

TODAY = datetime.date(2026, 5, 13)  # a Wednesday


@pytest.mark.parametrize(
    ("text", "iso"),
    [
        ("", ""),
        ("  ", ""),
        ("2024", "2024"),
        ("2024-05", "2024-05"),
        ("2024-05-03", "2024-05-03"),
        ("2024-5-3", "2024-05-03"),
        ("20240503", "2024-05-03"),
        ("today", "2026-05-13"),
        ("Yesterday", "2026-05-12"),
        ("-2", "2026-05-11"),
        ("+3", "2026-05-16"),
        ("10 days ago", "2026-05-03"),
        ("3.5.", "2026-05-03"),
        ("3.5", "2026-05-03"),
        ("3. 5. 24", "2024-05-03"),
        ("3.5.2024", "2024-05-03"),
        ("14.5.", "2025-05-14"),
        ("12/5", "2026-05-12"),
        ("5/13", "2026-05-13"),
        ("3 May", "2026-05-03"),
        ("3rd May 2024", "2024-05-03"),
        ("May 3, 2024", "2024-05-03"),
        ("3 may 24", "2024-05-03"),
        ("May 2024", "2024-05"),
        ("5/2024", "2024-05"),
        ("june", "2025-06"),
        ("Sept", "2025-09"),
        ("29 Feb", "2024-02-29"),
        ("Wednesday", "2026-05-13"),
        ("tue", "2026-05-12"),
        ("last wed", "2026-05-06"),
        ("next wed", "2026-05-20"),
        ("1.1.99", "1999-01-01"),
    ],
)
def test_what_is_understood(text, iso):
    assert typed_date(text, TODAY) == iso


@pytest.mark.parametrize(
    ("text", "iso"),
    [
        ("12/5", "2025-12-05"),
        ("5/12", "2026-05-12"),
        ("13/5", "2026-05-13"),
        ("3.5.", "2026-05-03"),
    ],
)
def test_month_before_day(text, iso):
    assert typed_date(text, TODAY, order="month-day") == iso


@pytest.mark.parametrize(
    ("text", "iso"),
    [
        ("3.5.", "2027-05-03"),
        ("Tuesday", "2026-05-19"),
        ("13 May", "2026-05-13"),
        ("mar", "2027-03"),
    ],
)
def test_what_is_planned_lies_ahead(text, iso):
    assert typed_date(text, TODAY, when="future") == iso


@pytest.mark.parametrize(
    ("text", "says"),
    [
        ("31.2.", "read as 31 February 2026"),
        ("30 Feb 2024", "read as 30 February 2024"),
        ("1.13.", "day 1 of month 13"),
        ("40/40", "there are 12 months"),
        ("soon", "not understood"),
        ("13/2024", "month 13 of 2024"),
        ("-9999", None),
    ],
)
def test_what_is_not_understood_says_what_was(text, says):
    if says is None:
        assert is_date(typed_date(text, TODAY))
        return
    with pytest.raises(Fault) as caught:
        typed_date(text, TODAY)
    assert says in caught.value.what
    assert caught.value.todo


def test_shown_in_words():
    assert shown("2026-05-03") == "Sunday 3 May 2026"
    assert shown("2026-05") == "May 2026"
    assert shown("2026") == "2026"


def test_the_day_by_which_things_are_numbered():
    assert day_of("2024-05", TODAY) == datetime.date(2024, 5, 1)
    assert day_of("", TODAY) == TODAY


@settings(max_examples=80)
@given(st.dates(datetime.date(1960, 1, 1), datetime.date(2030, 12, 31)))
def test_every_written_form_of_a_day_gives_it_back(day):
    month = day.strftime("%B")
    forms = (
        day.isoformat(),
        f"{day.day}.{day.month}.{day.year}",
        f"{day.day}/{day.month}/{day.year}",
        f"{day.day} {month} {day.year}",
        f"{month[:3]} {day.day}, {day.year}",
    )
    assert {typed_date(form, TODAY) for form in forms} == {day.isoformat()}
    words = shown(day.isoformat()).split(" ", 1)[1]
    assert typed_date(words, TODAY) == day.isoformat()


@settings(max_examples=80)
@given(st.text(alphabet="0123456789./- maytoday,+'", max_size=10))
def test_nothing_but_a_date_or_a_fault_comes_out(text):
    try:
        found = typed_date(text, TODAY)
    except Fault:
        return
    assert found == "" or is_date(found)


@settings(max_examples=60)
@given(st.integers(1, 12), st.integers(1, 28))
def test_without_a_year_the_day_is_the_last_or_the_next(month, day):
    past = datetime.date.fromisoformat(typed_date(f"{day}.{month}.", TODAY))
    ahead = datetime.date.fromisoformat(typed_date(f"{day}.{month}.", TODAY, when="future"))
    assert TODAY - datetime.timedelta(days=366) < past <= TODAY <= ahead
    assert (past.month, past.day) == (ahead.month, ahead.day) == (month, day)


@pytest.mark.parametrize("text", ["may00", "0 May", "0.5.", "32 May"])
def test_a_day_that_no_month_has_is_refused(text):
    with pytest.raises(Fault) as raised:
        typed_date(text, datetime.date(2026, 6, 1))
    assert text.strip() in raised.value.what
