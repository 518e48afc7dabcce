import datetime

import pytest

from pedigreeview.book import dates


@pytest.mark.parametrize(
    ("text", "first", "last"),
    [
        ("2021", (2021, 1, 1), (2021, 12, 31)),
        ("2021-02", (2021, 2, 1), (2021, 2, 28)),
        ("2024-02", (2024, 2, 1), (2024, 2, 29)),
        ("2021-05-17", (2021, 5, 17), (2021, 5, 17)),
    ],
)
def test_a_date_is_a_span(text, first, last):
    assert dates.earliest(text) == datetime.date(*first)
    assert dates.latest(text) == datetime.date(*last)


@pytest.mark.parametrize(
    "text",
    ["", " ", "21", "2021-13", "2021-02-30", "2021-5-1", "17.05.2021", "2021-05-17\n", "٢٠٢١"],
)
def test_what_is_no_date(text):
    assert not dates.is_date(text)
    with pytest.raises(ValueError, match=r"date|month|day"):
        dates.parse(text)


def test_rough_dates_are_never_surely_before_what_they_may_be():
    assert dates.surely_before("2020", "2021-01-01")
    assert not dates.surely_before("2021", "2021-06-01")
    assert not dates.surely_before("2021-06-01", "2021")
    assert not dates.surely_before("2021-06-01", "2021-06-01")
    assert not dates.surely_before("", "2021")
    assert not dates.surely_before("2021", "")


@pytest.mark.parametrize(
    ("text", "proposed"),
    [
        ("17.05.2021", "2021-05-17"),
        ("03/04/2021", "2021-04-03 or 2021-03-04"),
        ("2021/5/7", "2021-05-07"),
        ("20210517", "2021-05-17"),
        ("2019----", "2019"),
        ("soon", ""),
        ("2021-02-30", ""),
    ],
)
def test_proposals(text, proposed):
    assert dates.proposal(text) == proposed
