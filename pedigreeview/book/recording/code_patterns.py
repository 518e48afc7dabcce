"""The pattern by which codes are proposed, in words that a person can set.

A pattern is text with named parts in braces: '{yy}-{cross:2}' gives 24-01, 24-02 and so on.  A part
is a year, the code of what the new record comes from, or the running number, whose least width
stands after a colon.  Each kind of code has a pattern of its own; the setting `code_pattern` of the
book holds those that differ from `DEFAULTS`, as 'cross={yy}-{cross:2}; plant={cross}-{plant:3}'.
"""

from __future__ import annotations

import datetime
import re
from collections.abc import Mapping
from dataclasses import dataclass
from itertools import pairwise

from pedigreeview.book.book import BookSettings
from pedigreeview.book.faults import Fault, Place

__all__ = [
    "CODE_KINDS",
    "DEFAULTS",
    "CodePattern",
    "Context",
    "code_patterns",
    "preview",
    "read_pattern",
    "read_patterns",
    "setting_text",
]

Context = Mapping[str, str]
"""What the parts of a pattern stand for: 'yy', 'yyyy', 'cross', 'parent', 'seed', 'pollen'."""

_RUNNING = {
    "cross": "cross",
    "selfing": "cross",
    "open": "cross",
    "plant": "plant",
    "selection": "plant",
    "row": "number",
    "clone": "number",
    "doubled_haploid": "number",
    "doubled": "number",
    "pollination": "number",
    "harvest": "number",
    "packet": "number",
    "sowing": "number",
    "pollen_lot": "number",
}
_TEXTS = {
    "cross": ("yy", "yyyy", "seed", "pollen"),
    "selfing": ("yy", "yyyy", "parent"),
    "open": ("yy", "yyyy", "parent"),
    "plant": ("yy", "yyyy", "cross", "seed", "pollen"),
    "selection": ("yy", "yyyy", "cross", "parent"),
    "row": ("yy", "yyyy", "from"),
    "clone": ("yy", "yyyy", "parent"),
    "doubled_haploid": ("yy", "yyyy", "parent"),
    "doubled": ("yy", "yyyy", "parent"),
    "pollination": ("yy", "yyyy", "cross"),
    "harvest": ("yy", "yyyy", "cross"),
    "packet": ("yy", "yyyy", "cross"),
    "sowing": ("yy", "yyyy"),
    "pollen_lot": ("yy", "yyyy", "parent"),
}
_NEEDS_NUMBER = tuple(kind for kind in _RUNNING if kind not in ("cross", "selfing", "open"))

CODE_KINDS = tuple(_RUNNING)
"""The kinds of code that have a pattern."""

DEFAULTS = {
    "cross": "{yy}-{cross:2}",
    "selfing": "{parent} ⊗",
    "open": "{parent} ○",
    "plant": "{cross}-{plant:2}",
    "selection": "{parent}-{plant}",
    "row": "{from} row {number}",
    "clone": "{parent} c{number}",
    "doubled_haploid": "{parent} DH{number}",
    "doubled": "{parent} d{number}",
    "pollination": "P{yy}-{number}",
    "harvest": "H{yy}-{number}",
    "packet": "K{yy}-{number}",
    "sowing": "B{yy}-{number}",
    "pollen_lot": "L{yy}-{number}",
}
"""The pattern of each kind where the book sets no other."""

_WORDS = {
    "yy": "the year in two digits",
    "yyyy": "the year",
    "cross": "the code of the cross",
    "parent": "the code of the plant that it comes from",
    "seed": "the code of the seed parent",
    "pollen": "the code of the pollen parent",
    "from": "the code of the cross, or of the plant that was selfed",
}
_PART = re.compile(r"\{([^{}]*)\}")
_MOST_WIDE = 6


@dataclass(frozen=True, slots=True)
class CodePattern:
    """One pattern, read.

    kind : one of `CODE_KINDS`
    text : as written
    parts : literal texts and parts in turn; a part is (name, width), a literal ('', text)
    """

    kind: str
    text: str
    parts: tuple[tuple[str, int | str], ...]

    @property
    def running(self) -> str:
        """Name of the part that is the running number."""
        return _RUNNING[self.kind]

    @property
    def numbered(self) -> bool:
        """Whether the pattern has a running number."""
        return any(name == self.running for name, _ in self.parts)

    def around(self, context: Context) -> tuple[str, str, int]:
        """The text before the running number, the text after it, and its least width.

        Without a running number all stands before it, and a blank parts them.
        """
        before, after, width = "", "", 1
        passed = False
        for name, held in self.parts:
            if name == self.running:
                passed, width = True, int(held)
                continue
            text = str(held) if not name else context.get(name, "")
            before, after = (before, after + text) if passed else (before + text, after)
        if not passed:
            before = before.strip() + " "
        return before, after, width

    def code(self, context: Context, number: int) -> str:
        """The code with that running number; without one in the pattern, number 1 adds nothing."""
        before, after, width = self.around(context)
        if not self.numbered and number == 1:
            return before.strip()
        return f"{before}{number:0{width}d}{after}".strip()

    def words(self) -> str:
        """The pattern as a person reads it: 'the year in two digits, "-", a running number'."""
        said = []
        for name, held in self.parts:
            if not name:
                said.append(f"'{held}'")
            elif name == self.running:
                digits = "" if held == 1 else f" of at least {held} digits"
                said.append(f"a running number{digits}")
            else:
                said.append(_WORDS[name])
        if not self.numbered:
            said.append("a number from the second on")
        return ", ".join(said)


def _fault(kind: str, text: str, what: str, todo: str) -> Fault:
    return Fault(what, Place(column="code pattern"), todo)


def read_pattern(kind: str, text: str) -> CodePattern:
    """Read one pattern.

    Raises
    ------
    Fault : an unknown part, a sign that no code may have, a brace without its partner, no running
        number where every plant needs one, or a number that runs into the code before it
    """
    text = text.strip()
    if not text:
        raise _fault(kind, text, "The pattern is blank.", f"Write one such as '{DEFAULTS[kind]}'.")
    parts: list[tuple[str, int | str]] = []
    end = 0
    for found in _PART.finditer(text):
        parts += [("", text[end : found.start()])] if found.start() > end else []
        parts.append(_read_part(kind, text, found[1].strip()))
        end = found.end()
    parts += [("", text[end:])] if end < len(text) else []
    _look_at(kind, text, parts)
    return CodePattern(kind, text, tuple(parts))


def _read_part(kind: str, text: str, part: str) -> tuple[str, int | str]:
    name, _, width = (piece.strip() for piece in part.partition(":"))
    running, known = _RUNNING[kind], _TEXTS[kind]
    if name != running and name not in known:
        offered = ", ".join(f"{{{one}}}" for one in dict.fromkeys((*known, running)))
        raise _fault(
            kind, text, f"The pattern '{text}' has a part {{{name}}} that is not known.",
            f"Choose from: {offered}.",
        )  # fmt: skip
    if not width:
        return name, 1
    if name != running:
        raise _fault(
            kind, text, f"The part {{{name}}} is no number, so it has no width.",
            f"Write {{{name}}}.",
        )  # fmt: skip
    if not width.isascii() or not width.isdigit() or not 1 <= int(width) <= _MOST_WIDE:
        raise _fault(
            kind, text, f"The width '{width}' of {{{name}}} is no whole number from 1 to "
            f"{_MOST_WIDE}.", f"Write it as {{{name}:2}}.",
        )  # fmt: skip
    return name, int(width)


def _look_at(kind: str, text: str, parts: list[tuple[str, int | str]]) -> None:
    literal = "".join(str(held) for name, held in parts if not name)
    if "{" in literal or "}" in literal:
        raise _fault(
            kind, text, f"The pattern '{text}' has a brace without its partner.",
            "Write each part as {name}.",
        )  # fmt: skip
    if re.search("[:;=\x00-\x1f]", literal):
        raise _fault(
            kind, text, f"The pattern '{text}' has a ':', ';' or '=' in it, which part lists.",
            "Use a dash, a dot, a slash or a blank.",
        )  # fmt: skip
    names = [name for name, _ in parts if name]
    if len(names) != len(set(names)):
        raise _fault(kind, text, f"The pattern '{text}' has a part twice.", "Name each part once.")
    if _RUNNING[kind] not in names and (kind in _NEEDS_NUMBER or not names):
        raise _fault(
            kind, text, f"The pattern '{text}' has no running number, so all codes would be one.",
            f"Add {{{_RUNNING[kind]}}}.",
        )  # fmt: skip
    for (one, _), (two, width) in pairwise(parts):
        if two == _RUNNING[kind] and one not in ("", "yy", "yyyy") and width == 1:
            raise _fault(
                kind, text, f"In the pattern '{text}' the number runs into the code before it.",
                f"Part them by a dash: '{{{one}}}-{{{two}}}'.",
            )  # fmt: skip


def read_patterns(text: str) -> dict[str, CodePattern]:
    """The pattern of every kind, from the setting `code_pattern`.

    A text without a label is the pattern of crosses.

    Raises
    ------
    Fault : a label that is no kind of code, or a pattern that cannot be read
    """
    found = dict(DEFAULTS)
    for piece in filter(None, (piece.strip() for piece in text.split(";"))):
        label, equals, pattern = piece.partition("=")
        kind = label.strip().replace(" ", "_") if equals else "cross"
        if kind not in DEFAULTS:
            raise _fault(
                "cross", text, f"'{label.strip()}' is no kind of code.",
                f"Choose from: {', '.join(CODE_KINDS).replace('_', ' ')}.",
            )  # fmt: skip
        found[kind] = pattern if equals else piece
    return {kind: read_pattern(kind, held) for kind, held in found.items()}


def code_patterns(settings: BookSettings) -> dict[str, CodePattern]:
    """The patterns of a book; one that cannot be read gives way to the usual ones."""
    try:
        return read_patterns(settings.code_pattern)
    except Fault:
        return read_patterns("")


def setting_text(patterns: Mapping[str, str]) -> str:
    """The setting `code_pattern` for some patterns by kind; usual ones are left out.

    Raises
    ------
    Fault : a pattern that cannot be read
    """
    read = {kind: read_pattern(kind, text) for kind, text in patterns.items()}
    return "; ".join(
        f"{kind}={read[kind].text}"
        for kind in CODE_KINDS
        if kind in read and read[kind].text != DEFAULTS[kind]
    )


def preview(patterns: Mapping[str, CodePattern], on: datetime.date) -> dict[str, str]:
    """An example of each kind of code, as the first of its kind on that day would get it."""
    year = {"yy": f"{on.year % 100:02d}", "yyyy": f"{on.year:04d}"}
    cross = patterns["cross"].code({**year, "seed": "A", "pollen": "B"}, 1)
    plant = patterns["plant"].code({**year, "cross": cross, "seed": "A", "pollen": "B"}, 7)
    context = {**year, "cross": cross, "parent": plant, "from": cross, "seed": "A", "pollen": "B"}
    shown = {kind: pattern.code(context, 1) for kind, pattern in patterns.items()}
    shown.update(plant=plant, selection=patterns["selection"].code(context, 3))
    return shown
