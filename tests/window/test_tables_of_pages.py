"""Every page with a table gives it to be copied and saved."""

from __future__ import annotations

from collections.abc import Callable

import pytest
from PySide6.QtWidgets import QApplication

from pedigreeview.window.main_window import MainWindow

Settle = Callable[[], None]


@pytest.mark.parametrize(
    ("page", "part", "heading"),
    [
        ("records", "plants", "Plant"),
        ("season", "due", "What is to be done"),
        ("season", "takes", ""),
        ("judging", "genes:Le", "Plant"),
        ("parents", "pairs", "Cross"),
        ("relatedness", "", "plant"),
    ],
)
def test_the_table_of_a_page(
    peas: MainWindow, settle: Settle, page: str, part: str, heading: str
) -> None:
    peas.show_page(page)
    QApplication.processEvents()
    settle()
    if part:
        peas.book_pages[page].go_to(part)
        settle()
        QApplication.processEvents()
    shown = peas.book_pages[page].table_shown()
    assert shown is not None
    title, headings, rows = shown
    assert title
    assert rows
    assert {len(row) for row in rows} == {len(headings)}
    assert not heading or headings[0] == heading


def test_a_page_without_a_table_gives_none(peas: MainWindow, settle: Settle) -> None:
    assert peas.book_pages["map"].table_shown() is None
