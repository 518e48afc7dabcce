"""What the program remembers of a person between two days, each thing once, with its default.

Nothing that a number depends on is kept here but one: how the founders of a *table* are kept true.
A table has no place for it, so the answer is remembered for the file.
"""

from __future__ import annotations

import json
import os
from dataclasses import dataclass
from pathlib import Path

from PySide6.QtCore import QByteArray, QLocale, QSettings

__all__ = ["ANSWERS", "FoundersAnswer", "Preferences"]

RECENT_KEPT = 12
BOOKS_KEPT = 60
"""Books of which the program remembers what a page was left at."""


def _one_name(path: Path) -> str:
    """The one name of a book, however the way to it was written: '../peas' or by a link."""
    return os.path.realpath(path)


@dataclass(frozen=True, slots=True)
class FoundersAnswer:
    """How founders that say nothing are kept true, and what that means for the numbers."""

    word: str
    founders_as: str
    variety_fixation: float


ANSWERS = {
    answer.word: answer
    for answer in (
        FoundersAnswer("seed_true", "variety", 1.0),
        FoundersAnswer("open_pollinated", "variety", 0.0),
        FoundersAnswer("clone", "plant", 1.0),
    )
}


class Preferences:
    """Typed access to stored settings; a value that cannot be read falls back to its default."""

    def __init__(self, settings: QSettings | None = None) -> None:
        self._settings = settings or QSettings("pedigreeview", "Crossing Book")

    # Files --------------------------------------------------------------------------------------

    def recent(self) -> list[Path]:
        """Files and folders opened before, the latest first; some may be gone by now."""
        return [Path(text) for text in self._texts("files/recent")]

    def note_recent(self, path: Path) -> None:
        """Put a file at the head of the list."""
        texts = [str(path), *(text for text in self._texts("files/recent") if text != str(path))]
        self._settings.setValue("files/recent", json.dumps(texts[:RECENT_KEPT]))

    def forget_recent(self, path: Path) -> None:
        """Take a file out of the list."""
        texts = [text for text in self._texts("files/recent") if text != str(path)]
        self._settings.setValue("files/recent", json.dumps(texts))

    def founders_answer(self, path: Path) -> FoundersAnswer | None:
        """How the founders of this table are kept true, if it was asked before."""
        return ANSWERS.get(self._table("files/founders").get(str(path), ""))

    def set_founders_answer(self, path: Path, answer: FoundersAnswer) -> None:
        """Remember the answer for this file."""
        held = self._table("files/founders")
        held[str(path)] = answer.word
        self._settings.setValue("files/founders", json.dumps(held))

    # The look -----------------------------------------------------------------------------------

    @property
    def look(self) -> str:
        """'system', 'light' or 'dark'."""
        value = str(self._settings.value("look/theme", "system"))
        return value if value in ("system", "light", "dark") else "system"

    @look.setter
    def look(self, value: str) -> None:
        self._settings.setValue("look/theme", value)

    @property
    def text_size(self) -> int:
        """Size of the text in percent of the system's, 75 to 300."""
        return self._whole("look/text_size", 100, 75, 300)

    @text_size.setter
    def text_size(self, value: int) -> None:
        self._settings.setValue("look/text_size", value)

    @property
    def generations_up(self) -> int:
        """Generations shown above the focus."""
        return self._whole("picture/up", 2, 0, 30)

    @generations_up.setter
    def generations_up(self, value: int) -> None:
        self._settings.setValue("picture/up", value)

    @property
    def generations_down(self) -> int:
        """Generations shown below the focus."""
        return self._whole("picture/down", 2, 0, 30)

    @generations_down.setter
    def generations_down(self, value: int) -> None:
        self._settings.setValue("picture/down", value)

    @property
    def geometry(self) -> QByteArray:
        """Place and size of the window as Qt keeps them; empty at first."""
        value = self._settings.value("look/geometry")
        return value if isinstance(value, QByteArray) else QByteArray()

    @geometry.setter
    def geometry(self, value: QByteArray) -> None:
        self._settings.setValue("look/geometry", value)

    @property
    def language(self) -> str:
        """'system', or the code of a language of the window."""
        return str(self._settings.value("look/language", "system"))

    @language.setter
    def language(self, value: str) -> None:
        self._settings.setValue("look/language", value)

    # Writing ------------------------------------------------------------------------------------

    def last_used(self, form: str) -> dict[str, str]:
        """What was typed last into the fields of a form that are proposed again."""
        return self._table(f"forms/{form}")

    def set_last_used(self, form: str, values: dict[str, str]) -> None:
        """Remember what was typed."""
        self._settings.setValue(f"forms/{form}", json.dumps({**self.last_used(form), **values}))

    def unfinished(self, path: Path) -> dict[str, object]:
        """What was half typed when this book was closed, by where it was typed; {} for nothing."""
        held = self._json("writing/unfinished")
        entry = held.get(_one_name(path)) if isinstance(held, dict) else None
        return entry if isinstance(entry, dict) else {}

    def set_unfinished(self, path: Path, typed: dict[str, object]) -> None:
        """Remember what is half typed in this book; {} forgets it.  On disk when it returns."""
        # Another window of the program may have put down what is half typed in its own book.
        self._settings.sync()
        held = self._json("writing/unfinished")
        found = held if isinstance(held, dict) else {}
        found.pop(_one_name(path), None)
        if typed:
            found[_one_name(path)] = typed
        self._settings.setValue("writing/unfinished", json.dumps(found))
        self._settings.sync()

    @property
    def date_order(self) -> str:
        """'day-month' or 'month-day': how '12/5' is read; the system's order at first."""
        value = str(self._settings.value("writing/date_order", ""))
        if value in ("day-month", "month-day"):
            return value
        short = QLocale.system().dateFormat(QLocale.FormatType.ShortFormat)
        month, day = short.find("M"), short.find("d")
        return "month-day" if 0 <= month < day else "day-month"

    @date_order.setter
    def date_order(self, value: str) -> None:
        self._settings.setValue("writing/date_order", value)

    # Parents ------------------------------------------------------------------------------------

    def parents(self, path: Path) -> dict[str, object]:
        """What the Parents page was left at in a book; empty at first."""
        held = self._json("parents/books")
        found = held.get(_one_name(path)) if isinstance(held, dict) else None
        return found if isinstance(found, dict) else {}

    def set_parents(self, path: Path, state: dict[str, object]) -> None:
        """Remember what the Parents page is at; of the books used last, that is."""
        held = self._json("parents/books")
        others = {
            name: kept
            for name, kept in (held.items() if isinstance(held, dict) else ())
            if name != _one_name(path)
        }
        kept = [*others.items(), (_one_name(path), state)][-BOOKS_KEPT:]
        self._settings.setValue("parents/books", json.dumps(dict(kept)))

    # Tables brought in --------------------------------------------------------------------------

    def layouts(self) -> dict[str, object]:
        """Layouts of tables that were brought in before (`exchange.import_layouts`)."""
        held = self._json("tables/layouts")
        return held if isinstance(held, dict) else {}

    def set_layouts(self, layouts: dict[str, object]) -> None:
        """Remember layouts of tables."""
        self._settings.setValue("tables/layouts", json.dumps(layouts))

    # Cautions -----------------------------------------------------------------------------------

    def caution_dismissed(self, crop: str) -> bool:
        """Whether the line of cautions for a crop was put away."""
        return crop in self._texts("cautions/dismissed")

    def dismiss_caution(self, crop: str) -> None:
        """Put the line of cautions for a crop away for good."""
        texts = sorted({*self._texts("cautions/dismissed"), crop})
        self._settings.setValue("cautions/dismissed", json.dumps(texts))

    # --------------------------------------------------------------------------------------------

    def _whole(self, key: str, default: int, low: int, high: int) -> int:
        try:
            value = int(str(self._settings.value(key, default)))
        except ValueError:
            return default
        return value if low <= value <= high else default

    def _texts(self, key: str) -> list[str]:
        held = self._json(key)
        return [text for text in held if isinstance(text, str)] if isinstance(held, list) else []

    def _table(self, key: str) -> dict[str, str]:
        held = self._json(key)
        return {str(k): str(v) for k, v in held.items()} if isinstance(held, dict) else {}

    def _json(self, key: str) -> object:
        try:
            return json.loads(str(self._settings.value(key, "")))
        except (ValueError, RecursionError):
            return None
