"""How each plant came about, as a picture draws it, worked out once for a network.  No Qt.

A picture is put together several times until as much as fits is found; what does not depend on the
picture is kept here meanwhile, and for the next picture.
"""

from __future__ import annotations

from collections import defaultdict
from dataclasses import dataclass, field, replace
from typing import TYPE_CHECKING
from weakref import WeakKeyDictionary

from pedigreeview.drawing.blocks import Knot, Sign
from pedigreeview.drawing.wording import cross_words, plant_words, share_list, written_code

if TYPE_CHECKING:
    from pedigreeview.network import PedigreeNetwork
    from pedigreeview.network.parentage import Parents

__all__ = ["Birth", "Births", "Facts", "births_of", "cross_knot", "pollen_of"]

_SIGNS: dict[str, Sign] = {
    "cutting_of": "clone",
    "seed_of": "seed",
    "sibbed_in": "sibbed",
    "doubled_haploid_of": "doubled",
    "doubled_of": "doubled",
}
_SIGN_WORDS = {
    "cutting_of": "cutting",
    "seed_of": "seed of",
    "sibbed_in": "sib-mated",
    "doubled_haploid_of": "doubled haploid",
    "doubled_of": "doubled",
}


@dataclass(frozen=True, slots=True)
class Birth:
    """What a plant came from.

    origin : the network's answer
    parents : its known parents, each once
    selfings : unrecorded selfings since, 0 or more
    """

    origin: Parents
    parents: tuple[str, ...]
    selfings: int


@dataclass(frozen=True, slots=True)
class Facts:
    """What a tag says of its plant; `shares` are those of the founders, see `share_list`."""

    kind: str
    pool: bool
    status: str
    generation_name: str
    inbreeding: float | None
    withheld: str
    shares: tuple[tuple[str, float], ...]
    unknown_share: float
    words: str


@dataclass(slots=True)
class Births:
    """Of one network; everything is worked out when it is first asked for."""

    born: dict[str, Birth] = field(default_factory=dict)
    knots: dict[str, tuple[str, Knot]] = field(default_factory=dict)
    """By plant the key of its mating and the mating's knot, where no finding overrides it."""
    generations: dict[str, int | None] = field(default_factory=dict)
    said: dict[str, Facts] = field(default_factory=dict)

    def birth(self, net: PedigreeNetwork, code: str) -> Birth:
        """How a plant came about."""
        found = self.born.get(code)
        if found is None:
            origin = net.parents(code)
            found = Birth(origin, origin.codes, max(origin.selfings, 0))
            self.born[code] = found
        return found

    def generation(self, net: PedigreeNetwork, code: str) -> int | None:
        """The generation that the network says, None where it knows none."""
        if code not in self.generations:
            self.generations[code] = net.generation(code)
        return self.generations[code]

    def facts(self, net: PedigreeNetwork, code: str) -> Facts:
        """What the tag of a plant says."""
        found = self.said.get(code)
        if found is None:
            book = net.book
            plant = book.plants[code]
            withheld = net.withheld.get(code, "")
            shares, unknown = ((), 0.0) if withheld else share_list(net, code)
            found = self.said[code] = Facts(
                book.kind(plant),
                book.is_pool(plant),
                plant.status,
                net.generation_name(code) or "",
                None if withheld else float(net.inbreeding(code)),
                withheld,
                shares,
                unknown,
                plant_words(net, code),
            )
        return found

    def knot(
        self, net: PedigreeNetwork, code: str, meant: tuple[tuple[str, float], ...] | None
    ) -> tuple[str, Knot]:
        """Key and knot of the mating that a plant comes from.

        meant : pollen of the sibs that have no finding of their own, if the picture holds any
        """
        held = self.knots.get(code)
        if held is not None:
            return held
        origin = self.birth(net, code).origin
        if origin.source:
            knot = Knot(
                f"{origin.raised}:{origin.source}",
                "",
                _SIGNS.get(origin.raised, "clone"),
                _SIGN_WORDS.get(origin.raised, origin.raised),
                origin.source,
                (),
            )
            found = self.knots[code] = (knot.key, knot)
            return found
        pollen = pollen_of(origin)
        key = f"cross:{origin.cross}"
        if origin.finding and pollen != meant:
            key += "|" + ";".join(f"{parent}:{odds:g}" for parent, odds in pollen)
            return key, _found(cross_knot(net, key, origin.cross, origin.seed_parent, pollen))
        found = key, cross_knot(net, key, origin.cross, origin.seed_parent, pollen)
        if not origin.finding:
            self.knots[code] = found
        return found


_HELD: WeakKeyDictionary[PedigreeNetwork, Births] = WeakKeyDictionary()


def births_of(net: PedigreeNetwork) -> Births:
    """What was worked out for a network so far."""
    found = _HELD.get(net)
    if found is None:
        found = _HELD[net] = Births()
    return found


def cross_knot(
    net: PedigreeNetwork, key: str, cross: str, seed: str, pollen: tuple[tuple[str, float], ...]
) -> Knot:
    """The knot of a cross with its sign, label and words."""
    record = net.book.crosses.get(cross)
    pollen = pollen or (("", 1.0),)
    sign: Sign = "cross"
    if seed and all(code == seed for code, _ in pollen):
        sign = "selfing"
    elif all(not code for code, _ in pollen) and (record is None or record.intended == "open"):
        sign = "open"
    state = record.state if record is not None else ""
    label = written_code(cross, seed, pollen)
    words = cross_words(cross, sign, seed, pollen)
    return Knot(key, cross, sign, label, seed, pollen, state, words)


def _found(knot: Knot) -> Knot:
    """The knot of plants that were found to come from other pollen than their cross was meant."""
    code = knot.label or knot.cross
    if knot.sign == "selfing":
        label = f"{code}, found selfed"
    elif len(knot.pollen) == 1:
        one = knot.pollen[0][0]
        label = f"{code}, found by {one}" if one else f"{code}, pollen unknown"
    else:
        label = f"{code}, as found"
    return replace(
        knot,
        label=label,
        found=True,
        words=f"{knot.words}: so found, whatever cross {knot.cross} was meant to be",
    )


def pollen_of(origin: Parents) -> tuple[tuple[str, float], ...]:
    """Candidates with the unknown rest; of an open-pollinated plant nothing but that."""
    if origin.by_rate or not origin.pollen:
        return (("", 1.0),)
    held: dict[str, float] = defaultdict(float)
    for code, odds in origin.pollen:
        held[code] += odds
    rest = 1.0 - sum(held.values())
    if rest > 1e-9:
        held[""] += rest
    return tuple(held.items())
