"""The language of the window: texts of the code in a `.ts` file of `resources/translations`.

Qt's own way: `tr` asks the translators that are installed.  Ours reads the `.ts` file itself, so
that no compiled file can differ from it, and finds a text whatever class asks for it: one sentence
has one translation.  A text that has none stays English.
"""

from __future__ import annotations

from pathlib import Path
from xml.etree import ElementTree

from PySide6.QtCore import QCoreApplication, QLibraryInfo, QLocale, QObject, Qt, QTranslator
from PySide6.QtWidgets import QApplication

from pedigreeview.book.recording.typed_dates import ENGLISH, DateWords
from pedigreeview.places import resource

__all__ = [
    "ENGINE",
    "WINDOW",
    "Language",
    "date_words",
    "languages",
    "read_texts",
    "speak",
    "spoken",
]

ENGLISH_CODE = "en"
_TRANSLATIONS = QLibraryInfo.LibraryPath.TranslationsPath
WINDOW, ENGINE = "Window", "Engine"
"""Contexts of a `.ts` file: texts of the window, and templates of sentences made below it."""


def languages() -> list[str]:
    """The languages there are, by their codes, English first."""
    folder = resource("translations")
    return [ENGLISH_CODE, *sorted(path.stem for path in folder.glob("*.ts"))]


def read_texts(path: Path, context: str = WINDOW) -> dict[str, str]:
    """The finished translations of one context of a `.ts` file: source text to translation."""
    found: dict[str, str] = {}
    for held in ElementTree.parse(path).getroot().iter("context"):
        if held.findtext("name") != context:
            continue
        for message in held.iter("message"):
            source, told = message.findtext("source"), message.find("translation")
            if source and told is not None and told.text and told.get("type") != "unfinished":
                found[source] = told.text
    return found


class Language(QTranslator):
    """Translations of one language."""

    def __init__(self, code: str, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self.code = code
        self._texts = read_texts(resource("translations") / f"{code}.ts")

    def isEmpty(self) -> bool:
        return not self._texts

    def translate(
        self,
        context: str,
        sourceText: str,
        disambiguation: str | None = None,
        n: int = -1,
    ) -> str:
        """The text in this language; None where it has none, which leaves the source."""
        # An empty text would be a translation: Qt's own 'F%1' of keys would vanish.
        return self._texts.get(sourceText)  # type: ignore[return-value]


_spoken: list[QTranslator] = []


def speak(app: QApplication, code: str) -> str:
    """Let the window speak a language from now on; gives the one that is spoken.

    Parameters
    ----------
    code : of `languages`, or 'system' for the system's where there is one, else English
    """
    if code == "system":
        code = QLocale.system().name().partition("_")[0]
    while _spoken:
        app.removeTranslator(_spoken.pop())
    if code not in languages()[1:]:
        code = ENGLISH_CODE
    else:
        language, of_qt = Language(code), QTranslator()
        # The words of Qt's own dialogs and of the menus of its fields; the last one is asked first.
        if of_qt.load(f"qtbase_{code}", QLibraryInfo.path(_TRANSLATIONS)):
            app.installTranslator(of_qt)
        app.installTranslator(language)
        _spoken.extend((language, of_qt))
    QLocale.setDefault(QLocale(code))
    if QLocale(code).textDirection() == Qt.LayoutDirection.RightToLeft:
        app.setLayoutDirection(Qt.LayoutDirection.RightToLeft)
    return code


def spoken() -> str:
    """The code of the language that the window speaks."""
    return next((one.code for one in _spoken if isinstance(one, Language)), ENGLISH_CODE)


def date_words() -> DateWords:
    """The words for days and months in the language that is spoken."""
    if not _spoken:
        return ENGLISH
    locale = QLocale(spoken())
    low = QLocale.FormatType.LongFormat

    def tr(text: str) -> str:
        return QCoreApplication.translate("DateWords", text).casefold()

    return DateWords(
        months=tuple(locale.standaloneMonthName(at, low).casefold() for at in range(1, 13)),
        weekdays=tuple(locale.standaloneDayName(at, low).casefold() for at in range(1, 8)),
        days=(
            (tr("today"), 0),
            (tr("yesterday"), -1),
            (tr("tomorrow"), 1),
            (tr("day before yesterday"), -2),
            (tr("day after tomorrow"), 2),
        ),
        last=(tr("last"),),
        following=(tr("next"),),
        ago=(tr("days ago"), tr("day ago")),
    )
