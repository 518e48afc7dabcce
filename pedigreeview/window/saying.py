"""Sentences of the layers below the window, told in the language that is spoken.

The book, the network and the planning know no Qt and speak English.  Their sentences are templates
with places that are filled in, and the `.ts` file has a translation of each.  `say` finds the
template that a finished sentence was made from, and fills its translation in anew; what it does not
know it leaves as it is.
"""

from __future__ import annotations

import re
from functools import lru_cache

from pedigreeview.places import resource
from pedigreeview.window.translating import ENGINE, read_texts, spoken

__all__ = ["forget", "say"]

_WORD = re.compile(r"[^\W\d_]{2,}")
_SENTENCE = re.compile(r"(?<=[.!?])\s+(?=[^\s])")
_NUMBERS = re.compile(r"[\d.,%/ ]*\Z")
_PLACE = "{}"
_DEEPEST = 4
"""A phrase that is filled in may itself have phrases filled in."""


class _Templates:
    """The templates of one language, found by a word that they hold."""

    def __init__(self, told: dict[str, str], words: dict[str, str]) -> None:
        self.whole = {source: text for source, text in told.items() if _PLACE not in source}
        self.words = words
        self.by_word: dict[str, list[tuple[int, re.Pattern[str], str, bool]]] = {}
        for source, text in told.items():
            if _PLACE not in source:
                continue
            held = _WORD.findall(source)
            if not held:
                continue
            parts = [re.escape(part) for part in source.split(_PLACE)]
            pattern = re.compile("(.*?)".join(parts) + r"\Z")
            weight = len(source.replace(_PLACE, ""))
            self.by_word.setdefault(max(held, key=len), []).append(
                (-weight, pattern, text, len(held) == 1)
            )

    def match(self, text: str, depth: int) -> str | None:
        """The translation of a text that is whole, or made from one template."""
        found = self.whole.get(text)
        if found is not None:
            return found
        if text in self.words and text.islower():
            return self.words[text]
        tried: list[tuple[int, re.Pattern[str], str, bool]] = []
        for word in dict.fromkeys(_WORD.findall(text)):
            tried += self.by_word.get(word, ())
        for _, pattern, told, is_short in sorted(tried, key=lambda item: item[0]):
            filled = pattern.match(text)
            # A code such as '19-4-2 row' is no count of rows.
            if filled is not None and not (
                is_short and not _NUMBERS.match("".join(filled.groups()))
            ):
                values = [self.phrase(part, depth + 1) for part in filled.groups()]
                return _fill(told, values)
        return None

    def phrase(self, text: str, depth: int) -> str:
        """A phrase that is filled in: translated where it is known, else as it is."""
        if text == "s":
            # The ending of an English plural.
            return ""
        bare = text.strip()
        if not bare or depth > _DEEPEST or not _WORD.search(bare):
            return text
        found = self.match(bare, depth)
        return text if found is None else text.replace(bare, found, 1)

    def say(self, text: str) -> str:
        """A text of one sentence or several, or of lines."""
        found = self.match(text, 0)
        if found is not None:
            return found
        if "\n" in text:
            return "\n".join(self.say(line) if line.strip() else line for line in text.split("\n"))
        sentences = _SENTENCE.split(text)
        if len(sentences) == 1:
            return text
        told = [self.match(one, 0) for one in sentences]
        if not any(told):
            return text
        return " ".join(new or old for new, old in zip(told, sentences, strict=True))


def _fill(told: str, values: list[str]) -> str:
    parts = told.split(_PLACE)
    if len(parts) != len(values) + 1:
        return told
    return "".join(part + value for part, value in zip(parts, [*values, ""], strict=True))


@lru_cache(maxsize=2)
def _templates(code: str) -> _Templates | None:
    path = resource("translations") / f"{code}.ts"
    if not path.exists():
        return None
    return _Templates(read_texts(path, ENGINE), read_texts(path))


@lru_cache(maxsize=20_000)
def _said(code: str, text: str) -> str:
    held = _templates(code)
    return text if held is None else held.say(text)


def say(text: str) -> str:
    """The text in the language that is spoken; in English it is the text itself."""
    code = spoken()
    if code == "en" or not text:
        return text
    return _said(code, text)


def forget() -> None:
    """Forget what was said, as after a change of the texts."""
    _said.cache_clear()
    _templates.cache_clear()
