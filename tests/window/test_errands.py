"""Work off the window's thread: the newest answer wins, faults come back, Cancel is heard."""

from __future__ import annotations

import threading
from collections.abc import Iterator

import pytest
from pytestqt.qtbot import QtBot

from pedigreeview.book.faults import Fault
from pedigreeview.window.errands import Errands, OwnFault


@pytest.fixture
def errands(qtbot: QtBot) -> Iterator[Errands]:
    made = Errands()
    yield made
    assert made.close()


def test_an_answer_comes_to_the_window_s_thread(qtbot: QtBot, errands: Errands) -> None:
    came: list[tuple[str, int]] = []
    here = threading.get_ident()
    with qtbot.waitSignal(errands.idle):
        errands.ask(
            "card",
            lambda: threading.get_ident(),
            lambda there: came.append(("other" if there != here else "same", there)),
        )
    assert [word for word, _ in came] == ["other"]


def test_a_late_answer_to_an_old_question_is_dropped(qtbot: QtBot, errands: Errands) -> None:
    came: list[str] = []
    hold = threading.Event()

    def slow() -> str:
        hold.wait(5)
        return "old"

    errands.ask("card", slow, came.append)
    errands.ask("card", lambda: "new", came.append)
    with qtbot.waitSignal(errands.idle):
        hold.set()
    qtbot.waitUntil(lambda: came == ["new"])


def test_faults_and_mistakes_of_the_program_come_back_as_sentences(
    qtbot: QtBot, errands: Errands
) -> None:
    came: list[Fault] = []

    def fault() -> None:
        raise Fault("The file is gone.")

    def mistake() -> None:
        raise KeyError("x")

    for function in (fault, mistake):
        with qtbot.waitSignal(errands.idle):
            errands.ask("open", function, lambda answer: None, came.append)
    assert came[0].sentence() == "The file is gone."
    assert isinstance(came[1], OwnFault)
    assert "Traceback" not in came[1].sentence()
    assert "KeyError" in came[1].details


def test_work_that_ticks_hears_that_it_was_cancelled(qtbot: QtBot, errands: Errands) -> None:
    begun, ended = threading.Event(), threading.Event()

    def work() -> None:
        begun.set()
        try:
            while True:
                errands.tick()
        finally:
            ended.set()

    errands.ask("whole", work, lambda answer: None)
    assert begun.wait(5)
    errands.drop("whole")
    assert ended.wait(5)
