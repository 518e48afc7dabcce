"""The words of paper: one function through which all of them go, and the words of records.

Sentences are whole and take their parts by `format`, so that a translation can move them about.
Paper speaks the language of the window (`drawing.telling`); made by a command it speaks English.
"""

from __future__ import annotations

import unicodedata
from collections.abc import Iterable

from pedigreeview.book.book import Book
from pedigreeview.book.records import Cross, Plant
from pedigreeview.drawing.telling import tell
from pedigreeview.network.parentage import Parents

__all__ = [
    "counted",
    "cross_signs",
    "crossed_words",
    "doubt_words",
    "isolated",
    "kept_true_words",
    "kind_words",
    "listed",
    "named",
    "part_words",
    "raised_words",
    "span",
    "status_words",
    "tr",
]


def tr(text: str) -> str:
    """A text of a paper, or a finished sentence of the layers below, in the language spoken."""
    return tell(text)


def isolated(text: str) -> str:
    """What the book holds, kept apart from the direction of the words around it.

    Only what is written from right to left is wrapped, in the marks for it (Unicode's FSI and PDI),
    so that a cross of two such codes still reads seed parent first.
    """
    if any(unicodedata.bidirectional(sign) in ("R", "AL", "AN") for sign in text):
        return f"\u2068{text}\u2069"
    return text


def part_words() -> dict[str, str]:
    """Every part that a report can have, by its word, with its heading."""
    return {
        "what": tr("What it is"),
        "parentage": tr("Parentage"),
        "founders": tr("The founders"),
        "picture": tr("Pedigree"),
        "generations": tr("Generation by generation"),
        "selection": tr("Selection"),
        "reciprocals": tr("Both directions of the cross"),
        "segregation": tr("What segregated on the way"),
        "numbers": tr("Inbreeding, relatives and founder shares"),
        "fixing": tr("How far it is fixed"),
        "stability": tr("Is it stable?"),
        "traits": tr("Description"),
        "crosses": tr("Crosses made with it"),
        "progeny": tr("Progeny"),
        "scores": tr("Scores"),
        "doubt": tr("How sure the parents are"),
        "notes": tr("Notes"),
        "photos": tr("Photos"),
        "cautions": tr("Cautions"),
        "base": tr("What the numbers rest on"),
    }


def counted(number: int, one: str, many: str) -> str:
    """'1 plant', '1,200 plants'; both forms hold the place of the number as {}."""
    return (one if number == 1 else many).format(f"{number:,}")


def listed(codes: Iterable[str], most: int = 8) -> str:
    """'a, b, c and 4 more'."""
    held = [isolated(code) for code in codes]
    if len(held) <= most + 1:
        return ", ".join(held)
    return tr("{} and {} more").format(", ".join(held[:most]), len(held) - most)


def span(dates: Iterable[str]) -> str:
    """'2021-06-11', or '2021-06-11 to 2021-06-21'; '' without a date."""
    known = sorted({date for date in dates if date})
    if not known:
        return ""
    if len(known) == 1:
        return known[0]
    return tr("{} to {}").format(known[0], known[-1])


def named(book: Book, code: str) -> str:
    """A plant by its code, with its name where it has one."""
    plant = book.plants.get(code)
    name = plant.name if plant is not None else ""
    if not name or name == code:
        return isolated(code)
    return tr("{} ({})").format(isolated(code), isolated(name))


def kind_words(book: Book, plant: Plant) -> str:
    """Variety, single plant or family, in words."""
    return {
        "variety": tr("a variety: a pool of like plants"),
        "plant": tr("a single plant"),
        "family": tr("a family: progeny kept together"),
    }[book.kind(plant)]


def status_words(status: str) -> str:
    """The status as a sentence says it."""
    return {
        "growing": tr("growing"),
        "kept": tr("kept on purpose"),
        "culled": tr("culled"),
        "lost": tr("lost"),
        "finished": tr("finished"),
    }.get(status, status)


def kept_true_words(book: Book, held: Parents, plant: Plant) -> str:
    """How the plant is kept true, as far as its kind says so; '' where it says nothing."""
    kind = book.kind(plant)
    if held.raised == "cutting_of":
        return tr("As a clone: by cuttings, tubers or division; every piece is the same plant.")
    if held.raised != "founder":
        fixed = kind == "variety" and (plant.fixation is None or plant.fixation == 1)
        return tr("By its own seed, as a line that breeds true.") if fixed else ""
    fixation = book.founder_fixation(plant)
    if kind == "plant":
        return tr("As one plant and its cuttings, tubers or divisions, not by seed.")
    if fixation == 1:
        return tr("By its own seed, as a line that breeds true.")
    if fixation == 0:
        return tr("By seed of plants that cross among themselves.")
    return tr("By seed; its plants are alike in part (fixation {}).").format(f"{fixation:g}")


def raised_words(held: Parents, source: str) -> str:
    """How a plant arose that came from one other plant or pool."""
    return {
        "seed_of": tr("Grown from seed of {}."),
        "sibbed_in": tr("Grown from seed of {}, whose plants mated with each other."),
        "cutting_of": tr("A cutting, division or shoot of {}: the same plant in another place."),
        "doubled_haploid_of": tr("A doubled haploid of {}: fixed in one step."),
        "doubled_of": tr("{} with its chromosomes doubled."),
    }[held.raised].format(source)


def doubt_words(grade: str) -> str:
    """What a grade of doubt means."""
    return {
        "certain": tr("Certain: covered, tagged, and shown by a marker."),
        "probable": tr("Probable: worked by hand, tag read."),
        "possible": tr("Possible: one of named candidates."),
        "unknown": tr("Unknown: nobody saw."),
    }.get(grade, grade)


def cross_signs(book: Book, held: Parents) -> str:
    """'TP × BA', '21-01-3 ⊗', 'GM ○' or 'cutting of K-3': where a plant comes from, in signs."""
    if held.source:
        return {
            "seed_of": tr("seed of {}"),
            "sibbed_in": tr("sibs mated in {}"),
            "cutting_of": tr("cutting of {}"),
            "doubled_haploid_of": tr("doubled haploid of {}"),
            "doubled_of": tr("{} doubled"),
        }[held.raised].format(isolated(held.source))
    if held.raised == "founder":
        return tr("founder")
    seed = isolated(held.seed_parent or "?")
    if held.selfed:
        return f"{seed} ⊗"
    if held.pollen_parent:
        return f"{seed} × {isolated(held.pollen_parent)}"
    cross = book.crosses.get(held.cross)
    if held.by_rate or (cross is not None and cross.intended == "open" and not held.pollen):
        return f"{seed} ○"
    givers = [isolated(code) for code, _ in held.pollen if code]
    if len(givers) > 1:
        return f"{seed} × ({tr(' or ').join(givers)})"
    return f"{seed} × {givers[0]}?" if givers else f"{seed} × ?"


def crossed_words(book: Book, held: Parents) -> str:
    """The parents of a plant in one sentence, the seed parent's side said in words."""
    if held.source:
        return raised_words(held, named(book, held.source))
    cross: Cross | None = book.crosses.get(held.cross)
    seed = named(book, held.seed_parent) if held.seed_parent else ""
    giver = held.pollen_parent
    if held.selfed:
        return tr("{} was selfed: it bore the seed and gave the pollen.").format(seed)
    if giver and cross is not None and not cross.direction_known:
        return tr("{} and {} were crossed; which of the two bore the seed is not known.").format(
            seed or tr("an unknown plant"), named(book, giver)
        )
    if giver and seed:
        return tr("{} bore the seed (seed parent), {} gave the pollen (pollen parent).").format(
            seed, named(book, giver)
        )
    if giver:
        return tr("{} gave the pollen; the seed parent is not known.").format(named(book, giver))
    seed = seed or tr("An unknown plant")
    if held.by_rate or (cross is not None and cross.intended == "open" and not held.pollen):
        return tr("{} bore the seed and was open-pollinated: nobody chose the pollen.").format(seed)
    if held.pollen:
        odds = ", ".join(
            tr("{} with odds {}").format(named(book, code), f"{share:g}")
            for code, share in held.pollen
        )
        return tr("{} bore the seed; who gave the pollen is not sure: {}.").format(seed, odds)
    return tr("{} bore the seed; the pollen parent is not known.").format(seed)
