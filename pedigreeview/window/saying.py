"""Sentences of the layers below the window, told in the language that is spoken.

The book, the network and the planning know no Qt and speak English.  Their sentences are templates
with places that are filled in, and the `.ts` file has a translation of each.  `say` finds the
template that a finished sentence was made from, and fills its translation in anew; what it does not
know it leaves as it is.
"""

from __future__ import annotations

import re
from dataclasses import dataclass
from functools import cached_property, lru_cache

from pedigreeview.places import resource
from pedigreeview.window.translating import ENGINE, read_texts, spoken

__all__ = ["forget", "say", "say_list"]

_WORD = re.compile(r"[^\W\d_]{2,}")
_TOKEN = re.compile(r"[^\W\d_]+")
_SENTENCE = re.compile(r"(?<=[.!?])\s+(?=[^\s])")
_NUMBERS = re.compile(r"[-+]?[\d.,%/ ]*\Z")
_QUANTITY = re.compile(r"[-+]?\d[\d.,]*%?( \D*)?\Z")
_PARTED = re.compile(r"[:;,] ")
_PROSE = re.compile(r"(^| )[a-z]+ | [a-z]")
_BETWEEN_NUMBERS = re.compile(r"(?<=\d) (and|or|to) (?=[-+]?\d)")
_IN_BRACKETS = re.compile(r"\(([^()]+)\)")
_BESIDE_A_PLACE = re.compile(r"\w*\{\}\w*")
_FIELD = re.compile(r"\{[^{}]*\}")
_PLACE = "{}"
_DEEPEST = 6
_LONGEST = 600
"""Letters of a text that is taken apart; what is longer is a page of text, known as a whole."""
_KEPT = 20_000
"""A phrase that is filled in may itself have phrases filled in."""


@dataclass(frozen=True)
class _Template:
    """One template with its translation.

    literals : what stands between its places, which every text made from it holds
    ways : patterns of such a text; several where two places stand side by side
    short : it has one word: a count such as '{} rows', which only numbers make, or a sentence such
        as '{} is {}.', which is made of codes and of phrases that are known
    stops : it ends as a sentence does
    piece : -1 where it ends in a blank and is the beginning of a sentence, 1 where it begins with
        one and is the end, else 0
    """

    weight: int
    literals: tuple[str, ...]
    ways: tuple[str, ...]
    told: str
    short: bool
    stops: bool
    piece: int
    words: int

    @property
    def swallows(self) -> bool:
        """Whether its last place reaches to the end of whatever text begins with it."""
        return self.ways[0].endswith("(.*?)\\Z") and not self.ways[0].startswith("(")

    @cached_property
    def patterns(self) -> tuple[re.Pattern[str], ...]:
        """The ways as patterns, made when the first text is held against them."""
        return tuple(re.compile(way) for way in self.ways)


def _template(source: str, told: str) -> _Template:
    parts = [re.escape(part) for part in source.split(_PLACE)]
    ways = ["(.*?)".join(parts)]
    if "(.*?)\\ (.*?)" in ways[0]:
        ways.append(ways[0].replace("(.*?)\\ (.*?)", "(.*)\\ (.*?)", 1))
    words = len(_WORD.findall(source))
    piece = -1 if source.endswith(" ") else 1 if source.startswith((" ", ", ")) else 0
    ends = r"\Z" if piece >= 0 else ""
    starts = "(.*?)" if piece > 0 else ""
    return _Template(
        len(source.replace(_PLACE, "")),
        tuple(part for part in source.split(_PLACE) if part),
        tuple(f"{starts}{way}{ends}" for way in ways),
        told,
        words <= 1,
        source.endswith((".", ":", "?", ")")),
        piece,
        words,
    )


class _Templates:
    """The templates of one language, found by a word that they hold."""

    def __init__(self, told: dict[str, str], words: dict[str, str]) -> None:
        # A template that is asked for before it is filled in is found as it is.
        self.whole = told
        self.words = words
        self.by_word: dict[str, list[_Template]] = {}
        for source, text in told.items():
            if source[:1] == " " and source.strip()[:1].isupper():
                # A sentence that follows another one.
                source, text = source.strip(), text.strip()
            piece = source[:1] in (" ", ",") or source[-1:] == " "
            if _PLACE in source or piece:
                self._add(source, text)
        for text in words.values():
            # What the window said in this language may have been filled in with English.
            own = _FIELD.sub(_PLACE, text).strip()
            if _PLACE in own:
                self._add(own, own)
        self._phrases: dict[str, str] = {}

    def _add(self, source: str, told: str) -> None:
        # What stands right beside a place may be the stem of a longer word.
        tokens = _TOKEN.findall(_BESIDE_A_PLACE.sub(" ", source)) or _TOKEN.findall(source)
        if tokens:
            made = _template(source, told)
            self.by_word.setdefault(max(tokens, key=len), []).append(made)

    def _held_by(self, text: str) -> list[_Template]:
        """The templates of which the text holds a word, those that say most of it first."""
        found: list[_Template] = []
        for word in dict.fromkeys(_TOKEN.findall(text)):
            for one in self.by_word.get(word, ()):
                # A piece may have been put at the head of a sentence.
                if all(part in text for part in one.literals[one.piece < 0 :]):
                    found.append(one)
        return sorted(found, key=lambda one: -one.weight)

    def match(self, text: str, depth: int) -> str | None:
        """The translation of a text that is whole, or made from one template."""
        found = self.whole.get(text)
        if found is not None:
            return found
        if text in self.words and text.islower():
            return self.words[text]
        for template in self._held_by(text):
            if template.piece:
                continue
            best: tuple[int, str] | None = None
            for pattern in template.patterns:
                filled = pattern.match(text)
                if filled is None:
                    continue
                held = filled.groups()
                values = [self.phrase(part, depth + 1) for part in held]
                if template.words <= 2 and template.swallows and _PARTED.search(held[-1]):
                    # The rest of a list is no part of its first phrase.
                    continue
                if template.short and not _fits(template, held, values):
                    continue
                if depth and template.words == 2 and _half(held[-1:], values[-1:]):
                    continue
                known = sum(new != old for new, old in zip(values, held, strict=True))
                if best is None or known > best[0]:
                    best = known, _fill(template.told, values)
            if best is not None:
                return best[1]
        return None

    def phrase(self, text: str, depth: int) -> str:
        """A phrase that is filled in: translated where it is known, else as it is."""
        if text == "s":
            # The ending of an English plural.
            return ""
        bare = text.strip()
        if not bare or depth > _DEEPEST or len(bare) > _LONGEST or not _TOKEN.search(bare):
            return text
        held = self._phrases.get(bare)
        if held is None:
            if len(self._phrases) > _KEPT:
                self._phrases.clear()
            held = self._phrases[bare] = self._phrased(bare, depth)
        return text.replace(bare, held, 1)

    def _phrased(self, bare: str, depth: int) -> str:
        found = self.match(bare, depth)
        if found is None and bare[0].isupper():
            # The same at the head of a sentence.
            told = self.whole.get(bare[0].lower() + bare[1:])
            found = told and told[0].upper() + told[1:]
        elif found is None and bare.islower():
            # Or the other way round: a noun that is written down at the head of a list.
            head = bare.capitalize()
            found = self.whole.get(head) or self.words.get(head)
        if found is None:
            found = self._pieces(bare, depth)
        return self._listed(bare, depth) if found is None else found

    def _pieces(self, text: str, depth: int) -> str | None:
        """A text of which one piece is a template and the rest is known too, or is a name."""
        if depth > _DEEPEST or len(text) > _LONGEST:
            return None
        if text.endswith("."):
            found = self.match(text[:-1], depth + 1) or self._pieces(text[:-1], depth + 1)
            return f"{found}." if found is not None else None
        lower = text[:1].lower() + text[1:]
        for template in self._held_by(text):
            if not template.piece:
                continue
            if template.words < 2 and (not depth or _PARTED.search(text)):
                continue
            for pattern in template.patterns:
                filled = pattern.match(text) or pattern.match(lower)
                if filled is None:
                    continue
                values = list(filled.groups())
                rest = values.pop(0) if template.piece > 0 else text[filled.end() :]
                other = self.phrase(rest, depth + 1)
                if not rest or (other == rest and template.words < 2 and _named(template, rest)):
                    continue
                told = [self.phrase(part, depth + 1) for part in values]
                if template.words < 2 and _half(tuple(values), told):
                    continue
                own = _fill(template.told, told)
                if template.piece > 0:
                    return f"{other}{own}"
                return f"{own[:1].upper() if text[0].isupper() else own[:1]}{own[1:]}{other}"
        # A code, and what is said of it.
        code, _, rest = text.partition(" ")
        if " " in rest and any(sign.isdigit() or sign.isupper() for sign in code):
            known = self.whole.get(rest)
            return f"{code} {known}" if known else None
        # What is said, and the code that it is said of.
        rest, _, code = text.rpartition(" ")
        if " " in rest and any(sign.isdigit() or sign.isupper() for sign in code):
            known = self.whole.get(rest)
            return f"{known} {code}" if known else None
        return None

    def _listed(self, text: str, depth: int) -> str:
        """A list of phrases, each translated that is known; words in brackets as well."""

        def inside(found: re.Match[str]) -> str:
            return f"({self.phrase(found[1], depth + 1)})"

        parts = text.split(", ")
        each = [self.match(part, depth + 1) for part in parts]
        if len(parts) > 1 and all(each):
            return ", ".join(str(part) for part in each)
        told = _IN_BRACKETS.sub(inside, text)
        told = _BETWEEN_NUMBERS.sub(lambda m: f" {self.words.get(m[1], m[1])} ", told)
        for mark in ("; ", ", "):
            if told == text and mark in text:
                return mark.join(self.phrase(part, depth + 1) for part in text.split(mark))
        return told

    def say(self, text: str) -> str:
        """A text of one sentence or several, or of lines."""
        sentences = _SENTENCE.split(text)
        each = [self.match(one, 0) for one in sentences] if len(sentences) > 1 else []
        if each and all(each) and text not in self.whole:
            return " ".join(str(one) for one in each)
        found = self.match(text, 0)
        if found is not None:
            return found
        if "\n" in text:
            return "\n".join(self.say(line) if line.strip() else line for line in text.split("\n"))
        told = [self.match(one, 0) or self._pieces(one, 0) for one in sentences]
        if not any(told):
            return text
        return " ".join(new or old for new, old in zip(told, sentences, strict=True))


def _named(template: _Template, rest: str) -> bool:
    """Whether what stands beside a piece of one word may be a name that only looks like it."""
    return bool(_TOKEN.search(rest)) and (template.piece > 0 or bool(_PROSE.search(rest)))


def _half(held: tuple[str, ...], values: list[str]) -> bool:
    """Whether words stay as they were, so that the whole phrase is better left as it is."""
    return any(old == new and _PROSE.search(old) for old, new in zip(held, values, strict=True))


def _fits(template: _Template, held: tuple[str, ...], values: list[str]) -> bool:
    """Whether a text is made from a template of one word, and is no name that holds the word."""
    joined = "".join(held)
    if _NUMBERS.match(joined):
        return True
    if not template.ways[0].startswith("(") and _QUANTITY.match(joined):
        return True
    opens = not template.ways[0].startswith("(") and len(held) == 1
    if template.words and not opens and any(_PARTED.search(old) for old in held):
        # A part of a list is not the whole of it.
        return False
    spelt = [(old, new) for old, new in zip(held, values, strict=True) if _TOKEN.search(old)]
    if spelt and all(new != old for old, new in spelt):
        return True
    # A code such as '19-4-2 row' is no count of rows.
    return template.stops and all(
        new != old or not _PROSE.search(old) for new, old in zip(values, held, strict=True)
    )


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


def say_list(text: str) -> str:
    """The same of phrases that are parted by commas, each told by itself."""
    held = None if spoken() == "en" else _templates(spoken())
    return text if held is None else ", ".join(held.phrase(one, 1) for one in text.split(", "))


def forget() -> None:
    """Forget what was said, as after a change of the texts."""
    _said.cache_clear()
    _templates.cache_clear()
