"""The second language is complete, and says what the texts of the code say now."""

from __future__ import annotations

import re
from pathlib import Path

import pytest
from PySide6.QtCore import QCoreApplication
from PySide6.QtWidgets import QApplication, QLabel
from pytestqt.qtbot import QtBot

from pedigreeview.places import resource
from pedigreeview.window.main_window import MainWindow
from pedigreeview.window.preferences import Preferences
from pedigreeview.window.saying import _Templates, say, say_list
from pedigreeview.window.translating import ENGINE, date_words, languages, read_texts, speak
from tests.translations.make_translations import engine_texts, texts

LANGUAGES = languages()[1:]


def test_there_is_a_second_language() -> None:
    assert LANGUAGES


@pytest.mark.parametrize("code", LANGUAGES)
def test_every_text_of_the_window_is_translated(code: str) -> None:
    held = read_texts(resource("translations") / f"{code}.ts")
    wanted = texts()
    assert [text for text in wanted if text not in held] == []
    assert [text for text in held if text not in wanted] == []


@pytest.mark.parametrize("code", LANGUAGES)
def test_what_is_filled_in_is_kept_in_every_text(code: str) -> None:
    """As many places to fill in, the same marks of rich text, and keys that lead to something."""
    wrong = []
    for source, told in read_texts(resource("translations") / f"{code}.ts").items():
        for mark in (r"\{[^}]*\}", r"</?[a-z]+[^>]*>", r"%[0-9]"):
            if sorted(re.findall(mark, source)) != sorted(re.findall(mark, told)):
                wrong.append((source, told))
        if source.endswith(" …") != told.endswith(" …"):
            wrong.append((source, told))
        if (
            source[:1].isspace() != told[:1].isspace()
            or source[-1:].isspace() != told[-1:].isspace()
        ):
            wrong.append((source, told))
    assert wrong == []


@pytest.mark.parametrize("code", LANGUAGES)
def test_the_window_speaks_it(code: str, qtbot: QtBot, preferences: Preferences) -> None:
    held = read_texts(resource("translations") / f"{code}.ts")
    preferences.language = code
    app = QApplication.instance()
    assert isinstance(app, QApplication)
    try:
        window = MainWindow(preferences)
        qtbot.addWidget(window)
        window.show()
        qtbot.waitExposed(window)
        shown = {label.text() for label in window.welcome.findChildren(QLabel)}
        assert held["Look round in a demo"] in shown
        assert window.rail.tag("pedigree").text() == held["Pedigree"]
        menus = [action.text() for action in window.menuBar().actions()]
        assert held["&File"] in menus
        assert len({text.partition("&")[2][:1].casefold() for text in menus}) == len(menus)
        months = date_words().months
        assert len(set(months)) == 12
        assert QCoreApplication.translate("Anything", "&File") == held["&File"]
        window.close()
    finally:
        speak(app, "en")
    assert QCoreApplication.translate("Anything", "&File") == "&File"


def test_an_unknown_language_is_english(qtbot: QtBot, tmp_path: Path) -> None:
    app = QApplication.instance()
    assert isinstance(app, QApplication)
    assert speak(app, "xx") == "en"


@pytest.mark.parametrize("code", LANGUAGES)
def test_every_sentence_below_the_window_is_translated(code: str) -> None:
    held = read_texts(resource("translations") / f"{code}.ts", ENGINE)
    wanted = engine_texts()
    assert [text for text in wanted if text not in held] == []
    assert [text for text in held if text not in wanted] == []
    assert [text for text, told in held.items() if text.count("{}") != told.count("{}")] == []


def test_a_finished_sentence_is_told_in_the_language_spoken(qtbot: QtBot) -> None:
    english = "There is no plant 'K17' in this book."
    app = QApplication.instance()
    assert isinstance(app, QApplication)
    try:
        speak(app, "de")
        assert say("TP") == "TP"
        told = say(english)
        assert told != english
        assert "'K17'" in told
    finally:
        speak(app, "en")
    assert say(english) == english


def test_what_no_template_knows_stays_as_it_is() -> None:
    held = _Templates({"The {} has {} seeds left.": "{}: {} Samen übrig."}, {"packet": "Tüte"})
    assert held.say("The packet has 7 seeds left.") == "Tüte: 7 Samen übrig."
    assert held.say("The packet K1 has 7 seeds left. Sow fewer.") == (
        "packet K1: 7 Samen übrig. Sow fewer."
    )
    assert held.say("Nothing of this is known.") == "Nothing of this is known."
    assert held.say("The packet has none.\nThe packet has 1 seeds left.") == (
        "The packet has none.\nTüte: 1 Samen übrig."
    )


@pytest.mark.parametrize(
    ("english", "german"),
    [
        # Pieces of a sentence that are put together in the layers below.
        (
            "In the F1, sweet: mean 6.833 (n 6) and 5.8 (n 5); difference +1.03, likely between "
            "-0.208 and +2.27.",
            "F1, sweet: Mittel 6.833 (n 6) und 5.8 (n 5); Unterschied +1.03, wahrscheinlich "
            "zwischen -0.208 und +2.27.",
        ),
        # Two sentences, of which the first could swallow the second; lists of phrases.
        (
            "Base: founders unrelated; 2 varieties taken as pure lines (fixation 1), 1 plant taken "
            "as not inbred (fixation 0). Open-pollinated seed by outcrossing rate: pea 0.01.",
            "Basis: Gründer nicht verwandt; 2 Sorten angenommen als reine Linien (Fixierung 1), "
            "1 Pflanze angenommen als nicht ingezüchtet (Fixierung 0). Frei abgeblühter Samen nach "
            "Fremdbefruchtungsrate: pea 0.01.",
        ),
        # Two places side by side: a crop of two words, and a verdict of three.
        (
            "Sweet pea pods ripen 35 to 50 days after pollination.",
            "Duftwicke: Hülsen reifen 35 bis 50 Tage nach: Bestäubung.",
        ),
        ("The count does not fit 3:1.", "Die Zählung passt nicht zu: 3:1."),
        ("21-01-3 is not stable yet.", "21-01-3 ist noch nicht stabil."),
        ("5 more sibs", "5 weitere Geschwister"),
        ("Too few to tell (exact p 0.67).", "Zu wenige, um es zu sagen (exakt, p 0.67)."),
    ],
)
def test_sentences_made_of_pieces(qtbot: QtBot, english: str, german: str) -> None:
    app = QApplication.instance()
    assert isinstance(app, QApplication)
    try:
        speak(app, "de")
        assert say(english) == german
    finally:
        speak(app, "en")


def test_names_that_look_like_sentences_stay(qtbot: QtBot) -> None:
    app = QApplication.instance()
    assert isinstance(app, QApplication)
    try:
        speak(app, "de")
        for name in ("Tansy and the moths", "Rose (open)", "19-4-2 row", "Salt of Kent", "F2"):
            assert say(name) == name
        assert say_list("23-01, F2, from 21-01-3 selfed, culled, F one half") == (
            "23-01, F2, aus 21-01-3, geselbstet, verworfen, F die Hälfte"
        )
    finally:
        speak(app, "en")
    assert say_list("from TP selfed, kept") == "from TP selfed, kept"


def test_words_of_qt_itself_are_spoken_too(qtbot: QtBot) -> None:
    app = QApplication.instance()
    assert isinstance(app, QApplication)
    try:
        speak(app, "de")
        assert QCoreApplication.translate("QPlatformTheme", "Cancel") == "Abbrechen"
    finally:
        speak(app, "en")
    assert QCoreApplication.translate("QPlatformTheme", "Cancel") == "Cancel"
