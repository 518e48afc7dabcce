"""Who came from whom, as paper says it: seed parent first, with the trade's sign between.

Knows no Qt.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal

from pedigreeview.book.book import Book
from pedigreeview.book.crops import crop_named
from pedigreeview.book.records import SELF, Cross, Plant, PollenCandidate
from pedigreeview.reports.report_words import isolated, tr

__all__ = ["Mating", "cautions_about_seed", "crop_of", "mating_of", "named", "origin_of"]

Sign = Literal["cross", "selfing", "open"]

_EATEN = ("poison", "toxin", "taste", "eating", "pungent")
"""What a caution says when it matters to whoever finds the packet in a kitchen."""


@dataclass(frozen=True, slots=True)
class Mating:
    """Seed parent, sign and pollen parent of one cross."""

    seed: str
    """Code, '?' where it is not known."""
    sign: Sign
    pollen: str = ""
    """Code, 'MB or SO' for candidates, '?' where it is not known; blank for ⊗ and ○."""
    seed_name: str = ""
    pollen_name: str = ""
    direction_known: bool = True

    @property
    def text(self) -> str:
        """'TP × BA', 'TP ⊗' or 'TP ○', as the book writes it."""
        return _signed(self.sign, self.seed, self.pollen)

    @property
    def shown(self) -> str:
        """The same for the eye: the seed parent stays first whatever the script of the codes."""
        return _signed(self.sign, isolated(self.seed), isolated(self.pollen))

    @property
    def words(self) -> str:
        """The mating in words, with its direction."""
        seed = named(self.seed, self.seed_name)
        pollen = named(self.pollen, self.pollen_name)
        if self.sign == "selfing":
            return tr("{} selfed").format(seed)
        if self.sign == "open":
            return tr("{}, open-pollinated").format(seed)
        if not self.direction_known:
            return tr("{} and {}; which bore the seed is not known").format(seed, pollen)
        return tr("seed parent {}, pollen parent {}").format(seed, pollen)


def _signed(sign: Sign, seed: str, pollen: str) -> str:
    if sign == "cross":
        return f"{seed} × {pollen}"
    return f"{seed} ⊗" if sign == "selfing" else f"{seed} ○"


def named(code: str, name: str) -> str:
    """'Tarnwick Pale (TP)', or what is known of it."""
    if code == "?":
        return tr("not known")
    code, name = isolated(code), isolated(name)
    return f"{name} ({code})" if name and name != code else code


def mating_of(book: Book, cross: Cross, candidates: dict[str, list[PollenCandidate]]) -> Mating:
    """The mating of a cross.

    candidates : those of the book by cross (`Book.candidates`)
    """
    seed = cross.seed_parent
    name = _name(book, seed)
    if seed and cross.pollen_parent == seed:
        return Mating(seed, "selfing", seed_name=name)
    if cross.pollen_parent:
        pollen, pollen_name = cross.pollen_parent, _name(book, cross.pollen_parent)
        known = cross.direction_known
        return Mating(seed or "?", "cross", pollen, name, pollen_name, known)
    held = candidates.get(cross.cross, [])
    if held:
        most = sorted(held, key=lambda one: -one.odds)
        codes = [tr("itself") if one.candidate == SELF else one.candidate for one in most]
        return Mating(seed or "?", "cross", tr(" or ").join(codes), name)
    if cross.intended == "selfing":
        return Mating(seed or "?", "selfing", seed_name=name)
    if cross.intended == "open":
        return Mating(seed or "?", "open", seed_name=name)
    return Mating(seed or "?", "cross", "?", name)


def origin_of(book: Book, plant: Plant) -> str:
    """Where a plant without a cross comes from, in a few words; '' where nothing is known."""
    raised = book.raised(plant)
    if raised == "founder":
        source = isolated(plant.obtained_from)
        return tr("obtained: {}").format(source) if source else ""
    source = named(plant.source or "?", _name(book, plant.source))
    said = {
        "seed_of": tr("from seed of {}"),
        "sibbed_in": tr("from sib mating in {}"),
        "cutting_of": tr("cutting of {}"),
        "doubled_haploid_of": tr("doubled haploid of {}"),
        "doubled_of": tr("doubled form of {}"),
    }
    return said.get(raised, "").format(source)


def crop_of(book: Book, code: str) -> str:
    """Name of the crop of a plant, else that of the book."""
    plant = book.plants.get(code)
    return book.crop(plant) if plant is not None else book.settings.crop


def cautions_about_seed(crop: str) -> tuple[str, ...]:
    """What the crop's facts say of poison and of tasting; such a packet must say it too."""
    facts = crop_named(crop)
    held = facts.facts.get("cautions", ()) if facts is not None else ()
    texts = [str(one["text"]) for one in held]
    return tuple(text for text in texts if any(word in text.casefold() for word in _EATEN))


def _name(book: Book, code: str) -> str:
    plant = book.plants.get(code)
    return plant.name if plant is not None else ""
