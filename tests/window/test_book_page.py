"""A page that is not on show remembers what happens, and makes up for it when it is turned to."""

from __future__ import annotations

from collections.abc import Iterator
from typing import Any

from PySide6.QtCore import Qt, QTimer
from pytestqt.qtbot import QtBot

from pedigreeview.window.book_page import BookPage, LazyPage


class Listening(BookPage):
    """Writes down what it is told."""

    def __init__(self) -> None:
        super().__init__()
        self.told: list[tuple[str, Any]] = []

    def show_opened(self, opened: Any) -> None:
        self.told.append(("opened", opened))

    def book_changed(self, opened: Any, change: Any) -> None:
        self.told.append(("changed", (opened, change)))

    def mark(self, code: str) -> None:
        self.told.append(("mark", code))

    def take_picked(self, codes: tuple[str, ...]) -> None:
        self.told.append(("picked", codes))


def heard(page: BookPage, *args: Any, now: bool) -> None:
    page.hear(*args, now=now)


def test_a_page_on_show_is_told_at_once(qtbot: QtBot) -> None:
    page = Listening()
    qtbot.addWidget(page)
    heard(page, "one", now=True)
    heard(page, "two", "edit", now=True)
    page.hear_mark("A")
    assert page.told == [("opened", "one"), ("changed", ("two", "edit")), ("mark", "A")]


def test_edits_in_between_are_told_once_when_it_is_turned_to(qtbot: QtBot) -> None:
    page = Listening()
    qtbot.addWidget(page)
    heard(page, "one", now=True)
    page.told.clear()
    heard(page, "two", "first edit", now=False)
    page.hear_mark("A")
    page.hear_mark("B")
    page.hear_picked(("A", "B"))
    heard(page, "three", "second edit", now=False)
    assert page.told == []
    page.catch_up()
    assert page.told == [
        ("changed", ("three", "second edit")),
        ("picked", ("A", "B")),
        ("mark", "B"),
    ]
    page.catch_up()
    assert len(page.told) == 3


def test_another_book_counts_for_more_than_an_edit_of_it(qtbot: QtBot) -> None:
    page = Listening()
    qtbot.addWidget(page)
    heard(page, "old", "edit", now=False)
    page.hear_mark("of the old book")
    heard(page, "new", now=False)
    heard(page, "new, edited", "edit", now=False)
    page.catch_up()
    assert page.told == [("opened", "new, edited")]


def test_closing_the_book_leaves_nothing_to_make_up_for(qtbot: QtBot) -> None:
    page = Listening()
    qtbot.addWidget(page)
    heard(page, "one", now=False)
    heard(page, None, now=True)
    page.catch_up()
    assert page.told == [("opened", None)]


def test_a_lazy_page_is_made_at_the_first_look_with_the_last_of_everything(qtbot: QtBot) -> None:
    made: list[Listening] = []

    def make() -> BookPage:
        made.append(Listening())
        return made[-1]

    page = LazyPage(make)
    qtbot.addWidget(page)
    heard(page, "one", now=False)
    heard(page, "two", "edit", now=False)
    page.hear_picked(("A",))
    page.hear_mark("A")
    assert made == []
    page.page()
    assert made[0].told == [("opened", "two"), ("picked", ("A",)), ("mark", "A")]
    heard(page, "three", "edit", now=False)
    assert len(made[0].told) == 3
    page.page()
    assert made[0].told[-1] == ("changed", ("three", "edit"))


def _timer(page: BookPage) -> QTimer:
    """A timer that ends after those that were set before it."""
    timer = QTimer(page)
    timer.setSingleShot(True)
    timer.start(5)
    return timer


class Sliced(Listening):
    """A page of three slices."""

    def __init__(self) -> None:
        super().__init__()
        self.parts: list[int] = []

    def rest(self) -> Iterator[None]:
        for part in range(3):
            self.parts.append(part)
            yield


def test_a_page_shown_is_made_in_slices_and_told_when_it_is_whole(qtbot: QtBot) -> None:
    made: list[Sliced] = []

    def make() -> BookPage:
        made.append(Sliced())
        return made[-1]

    page = LazyPage(make)
    qtbot.addWidget(page)
    heard(page, "one", now=False)
    page.show()
    assert made[0].parts == []  # its frame is there, and nothing else yet
    assert made[0].isVisible()
    assert page.made is None
    assert page.making
    heard(page, "two", "edit", now=True)
    page.hear_mark("A")
    qtbot.waitUntil(lambda: page.made is not None)
    assert made[0].parts == [0, 1, 2]
    assert made[0].told == [("opened", "two"), ("picked", ()), ("mark", "A")]
    assert not page.making
    assert len(made) == 1


def test_who_asks_for_a_page_half_made_gets_it_whole(qtbot: QtBot) -> None:
    page = LazyPage(Sliced)
    qtbot.addWidget(page)
    page.show()
    held = page.page()
    assert isinstance(held, Sliced)
    assert held.parts == [0, 1, 2]
    assert len(held.told) == 3
    # The slices that were still to come do not come a second time.
    with qtbot.waitSignal(_timer(page).timeout):
        pass
    assert held.parts == [0, 1, 2]
    assert len(held.told) == 3


def test_the_keys_go_to_the_page_when_it_is_whole(qtbot: QtBot) -> None:
    page = LazyPage(Sliced)
    page.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
    qtbot.addWidget(page)
    page.show()
    page.setFocus()
    held = page.page()
    held.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
    assert page.focusProxy() is held


def test_the_window_tells_only_the_page_on_show_of_an_edit(
    window: Any, settle: Any, tmp_path: Any
) -> None:
    from pedigreeview.book.book import Book
    from pedigreeview.book.book_file import BookFile
    from pedigreeview.book.records import Plant

    book = Book()
    for code in ("A", "B"):
        book.add(Plant(code, kind="variety"))
    path = tmp_path / "two.pedbook"
    BookFile.create(path, book).close()
    window.open_path(path)
    settle()
    window.show_page("checks")
    window.show_page("pedigree")
    checks = window.checks
    told: list[object] = []
    held = checks.book_changed
    checks.book_changed = lambda opened, change: (told.append(opened), held(opened, change))

    def rename(edit: Any) -> None:
        edit.update(edit.book.plants["A"], name="Alpha")

    window.desk.record("Name A", rename)
    settle()
    assert told == []
    window.show_page("checks")
    assert told == [window.opened]
    window.desk.undo()
    settle()
    assert told == [told[0], window.opened]
    # The picture was not drawn meanwhile, and is when it is turned to.
    assert window.pedigree.behind
    window.show_page("pedigree")
    assert not window.pedigree.behind
    assert window.pedigree.view is not None
    subtitles = {block.code: block.subtitle for block in window.pedigree.view.blocks}
    assert subtitles["A"] != "Alpha"
