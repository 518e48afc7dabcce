"""Sentences of the trade about plants and crosses, made from records; no numbers are made here.

Every function gives plain text.  `link` and `rich` turn codes into links for labels.
"""

from __future__ import annotations

from collections.abc import Iterable
from html import escape
from typing import TYPE_CHECKING
from urllib.parse import quote, unquote

from PySide6.QtCore import QCoreApplication, QLocale

from pedigreeview.book.book import Book
from pedigreeview.book.records import Cross, Plant

if TYPE_CHECKING:
    from pedigreeview.network import PedigreeNetwork

__all__ = [
    "CHECKS",
    "code_of_link",
    "count",
    "cross_line",
    "doubt_words",
    "kind_word",
    "link",
    "links",
    "named",
    "number",
    "origin",
    "page_link",
    "page_of_link",
    "status_word",
]

CHECKS = "checks"
"""The page that lists what cannot be right."""

_LINK = "plant:"
_PAGE = "page:"


def _tr(text: str) -> str:
    return QCoreApplication.translate("Words", text)


def link(code: str, shown: str = "") -> str:
    """A code as a link of a rich text label."""
    return f'<a href="{_LINK}{quote(code, safe="")}">{escape(shown or code)}</a>'


def links(codes: Iterable[str], most: int = 24) -> str:
    """Codes as links, parted by commas; the rest as a count."""
    held = list(codes)
    text = ", ".join(link(code) for code in held[:most])
    if len(held) > most:
        text += escape(_tr(" and {} more").format(len(held) - most))
    return text


def code_of_link(address: str) -> str:
    """The code behind a link made by `link`, or ''."""
    return unquote(address[len(_LINK) :]) if address.startswith(_LINK) else ""


def page_link(page: str, shown: str) -> str:
    """A page of the window as a link of a rich text label."""
    return f'<a href="{_PAGE}{page}">{escape(shown)}</a>'


def page_of_link(address: str) -> str:
    """The page behind a link made by `page_link`, or ''."""
    return address[len(_PAGE) :] if address.startswith(_PAGE) else ""


def number(value: int) -> str:
    """A whole number as the language writes it: 12,345 or 12.345."""
    whole = int(value)
    # Qt knows no longer numbers than those of 64 bits.
    return QLocale().toString(whole) if abs(whole) < 2**63 else f"{whole:,}"


def count(number: int, one: str, many: str) -> str:
    """'1 plant', '12,345 plants'."""
    return f"{QLocale().toString(number)} {one if number == 1 else many}"


def named(book: Book, code: str) -> str:
    """'Tarnwick Pale (TP)', or the code alone."""
    plant = book.plants.get(code)
    if plant is not None and plant.name and plant.name != code:
        return f"{plant.name} ({code})"
    return code


def kind_word(book: Book, plant: Plant) -> str:
    """What one code stands for, in a word or two."""
    return {
        "variety": _tr("variety"),
        "plant": _tr("one plant"),
        "family": _tr("family, kept together"),
    }[book.kind(plant)]


def status_word(status: str) -> str:
    """The status as a reader says it."""
    return {
        "growing": _tr("growing"),
        "kept": _tr("kept on purpose"),
        "culled": _tr("culled"),
        "lost": _tr("lost"),
        "finished": _tr("finished"),
    }.get(status, status)


def doubt_words(grade: str) -> str:
    """A grade of doubt with what it means; '' where none is recorded."""
    return {
        "certain": _tr("certain: covered, tagged, and shown by a marker"),
        "probable": _tr("probable: worked by hand, tag read"),
        "possible": _tr("possible: one of named candidates"),
        "unknown": _tr("unknown: nobody saw"),
    }.get(grade, grade)


def origin(net: PedigreeNetwork, code: str) -> str:
    """Where a plant comes from, in one or two sentences."""
    book = net.book
    plant = book.plants[code]
    held = net.parents(code)
    raised = held.raised
    source = named(book, held.source) if held.source else ""
    if raised == "founder":
        got = plant.obtained_from
        start = _tr("Founder: nothing is recorded before it.")
        return f"{start} " + _tr("Came from {}.").format(got) if got else start
    if raised != "cross":
        return {
            "seed_of": _tr("Grown from seed of {}."),
            "sibbed_in": _tr("Grown from seed of {}, whose plants mated with each other."),
            "cutting_of": _tr("A cutting of {}: the same plant in another pot."),
            "doubled_haploid_of": _tr("A doubled haploid of {}: fixed in one step."),
            "doubled_of": _tr("{} with its chromosomes doubled."),
        }[raised].format(source)
    seed = named(book, held.seed_parent) if held.seed_parent else ""
    giver = held.pollen_parent
    record = book.crosses.get(held.cross)
    if giver and giver == held.seed_parent:
        text = _tr("Grown from {}: {} selfed.").format(held.cross, seed)
    elif giver and record is not None and not record.direction_known:
        text = _tr("Grown from {}: {} and {}; which of the two bore the seed is not known.").format(
            held.cross, seed, named(book, giver)
        )
    elif giver and seed:
        text = _tr("Grown from {}: {} as seed parent, {} gave the pollen.").format(
            held.cross, seed, named(book, giver)
        )
    elif giver:
        text = _tr("Grown from {}: seed parent not known, {} gave the pollen.").format(
            held.cross, named(book, giver)
        )
    elif held.by_rate or (record is not None and record.intended == "open" and not held.pollen):
        text = _tr("Grown from {}: open-pollinated seed of {}; nobody chose the pollen.").format(
            held.cross, seed or _tr("an unknown plant")
        )
    elif any(candidate for candidate, _ in held.pollen):
        text = _tr("Grown from {}: {} as seed parent; who gave the pollen is not sure.").format(
            held.cross, seed or _tr("an unknown plant")
        )
    else:
        text = _tr("Grown from {}: {} as seed parent; the pollen parent is not known.").format(
            held.cross, seed or _tr("an unknown plant")
        )
    if held.finding:
        text += " " + _tr("This plant's own finding overrides what its cross says.")
    if held.selfings == 1:
        text += " " + _tr("Selfed once more, with no plant recorded in between.")
    elif held.selfings > 1:
        text += " " + _tr("Selfed {} times more, with no plants recorded in between.").format(
            held.selfings
        )
    return text


def cross_line(book: Book, cross: Cross, has_candidates: bool) -> str:
    """'TP × BA', 'TP ⊗', 'TP ○' or 'TP × ?': the cross in the trade's signs, seed parent first."""
    seed = cross.seed_parent or "?"
    if cross.pollen_parent and cross.pollen_parent == cross.seed_parent:
        return f"{seed} ⊗"
    if cross.pollen_parent:
        return f"{seed} × {cross.pollen_parent}"
    if has_candidates:
        return f"{seed} × ?"
    return f"{seed} ○"
