"""A report before it has a page: sections with headings, sentences, facts, tables and pictures.

Plain data, the same for paper, for HTML and for the preview in the window.  Knows no Qt.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from dataclasses import dataclass, field, replace

__all__ = [
    "Cover",
    "Facts",
    "Item",
    "PhotoOf",
    "Picture",
    "Report",
    "Section",
    "Table",
    "Text",
]


@dataclass(frozen=True, slots=True)
class Text:
    """One paragraph; `strong` for a small heading within a section, `soft` for a remark."""

    words: str
    strong: bool = False
    soft: bool = False


@dataclass(frozen=True, slots=True)
class Facts:
    """Short facts, each a name with its value."""

    rows: tuple[tuple[str, str], ...]


@dataclass(frozen=True, slots=True)
class Table:
    """A table; every row has as many cells as there are headings.

    numbers : columns whose cells stand at the right
    """

    headings: tuple[str, ...]
    rows: tuple[tuple[str, ...], ...]
    numbers: frozenset[int] = frozenset()

    def __post_init__(self) -> None:
        for row in self.rows:
            if len(row) != len(self.headings):
                raise ValueError(f"a row of {len(row)} cells under {len(self.headings)} headings")


@dataclass(frozen=True, slots=True)
class Picture:
    """A part of the pedigree that is drawn.

    focus : the plant that it is about
    plants : every plant that is in it, and no other
    words : what it shows, also for a person who does not see it
    """

    focus: str
    plants: tuple[str, ...]
    words: str


@dataclass(frozen=True, slots=True)
class PhotoOf:
    """A photo of the book by the name of its file, with what stands below it."""

    name: str
    caption: str


Item = Text | Facts | Table | Picture | PhotoOf


@dataclass(frozen=True, slots=True)
class Section:
    """One part of a report; `part` is the word by which it is chosen or left out."""

    part: str
    heading: str
    items: tuple[Item, ...]


@dataclass(frozen=True, slots=True)
class Cover:
    """What the person adds: who hands it out, the day, and words of their own.

    person : lines such as a name and an address
    date : as it is to be printed
    caption : paragraphs in the person's words, below the title
    """

    person: tuple[str, ...] = ()
    date: str = ""
    caption: tuple[str, ...] = ()


@dataclass(frozen=True, slots=True)
class Report:
    """A whole report.

    kind : 'plant' or 'line'
    code : the plant that it is about
    below : one line under the title: the book and the crop
    """

    kind: str
    code: str
    title: str
    below: str
    sections: tuple[Section, ...]
    cover: Cover = field(default_factory=Cover)

    @property
    def parts(self) -> tuple[str, ...]:
        """The parts that it has, in their order."""
        return tuple(section.part for section in self.sections)

    def only(self, parts: Iterable[str]) -> Report:
        """The same with some of its parts alone; the order stays."""
        kept = set(parts)
        return replace(self, sections=tuple(s for s in self.sections if s.part in kept))

    def with_cover(self, cover: Cover) -> Report:
        """The same with what the person adds."""
        return replace(self, cover=cover)

    def words(self) -> Iterator[str]:
        """Everything that is written in it, piece by piece, in reading order."""
        yield self.title
        yield self.below
        yield from self.cover.person
        yield self.cover.date
        yield from self.cover.caption
        for section in self.sections:
            yield section.heading
            for item in section.items:
                yield from _words(item)


def _words(item: Item) -> Iterator[str]:
    if isinstance(item, Text | Picture):
        yield item.words
    elif isinstance(item, Facts):
        for name, value in item.rows:
            yield name
            yield value
    elif isinstance(item, Table):
        yield from item.headings
        for row in item.rows:
            yield from row
    else:
        yield item.caption
