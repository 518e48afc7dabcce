"""Short sentences for what a block shows: for screen readers, tool tips and labels.  No Qt."""

from __future__ import annotations

from fractions import Fraction
from typing import TYPE_CHECKING

from pedigreeview.drawing.blocks import Sign
from pedigreeview.drawing.places import founder_places

if TYPE_CHECKING:
    from pedigreeview.network import PedigreeNetwork

__all__ = ["cross_words", "odds_text", "plant_words", "share_list", "spoken", "written_code"]

_SPOKEN = {
    Fraction(0): "0",
    Fraction(1, 8): "one eighth",
    Fraction(1, 4): "one quarter",
    Fraction(1, 2): "one half",
    Fraction(3, 4): "three quarters",
    Fraction(7, 8): "seven eighths",
    Fraction(1): "1",
}
_CLONE_WORDS = {
    "cutting_of": "a cutting of",
    "seed_of": "from seed of",
    "sibbed_in": "from sib mating in",
    "doubled_haploid_of": "a doubled haploid of",
    "doubled_of": "a doubled form of",
}


def spoken(value: float) -> str:
    """A coefficient in words a screen reader says well."""
    near = Fraction(value).limit_denominator(8)
    if abs(float(near) - value) < 1e-9 and near in _SPOKEN:
        return _SPOKEN[near]
    return f"{value:.3g}"


def odds_text(odds: float) -> str:
    """Odds as they stand beside a pollen line."""
    return f"{odds:.2g}"


def written_code(cross: str, seed: str, pollen: tuple[tuple[str, float], ...]) -> str:
    """The cross's code, or blank where the program made it from the parents' codes."""
    made = {f"{seed} ⊗", f"{seed} ○", f"? × {pollen[0][0]}"}
    made |= {f"{seed or '?'} × {code or '?'}" for code, _ in pollen}
    plain = cross.rsplit(" (", 1)[0]
    return "" if cross in made or plain in made or " × " in cross else cross


def cross_words(cross: str, sign: Sign, seed: str, pollen: tuple[tuple[str, float], ...]) -> str:
    """The mating in words, seed parent first."""
    if sign == "selfing":
        return f"{seed} selfed"
    if sign == "open":
        return f"{seed}, open-pollinated"
    mother = seed or "unknown seed parent"
    if len(pollen) == 1 and pollen[0][1] >= 1:
        return f"{mother} × {pollen[0][0] or 'unknown pollen parent'}"
    sides = ", ".join(f"{code or 'unknown'} {odds_text(odds)}" for code, odds in pollen)
    return f"{mother} × one of {sides}"


def plant_words(net: PedigreeNetwork, code: str) -> str:
    """What the tag shows: code, name, generation name, origin, status and inbreeding."""
    plant = net.book.plants[code]
    origin = net.parents(code)
    said = [code]
    if plant.name:
        said.append(plant.name)
    name = net.generation_name(code)
    if name:
        said.append(name)
    pollen = tuple(origin.pollen) or (("", 1.0),)
    if origin.source:
        said.append(f"{_CLONE_WORDS.get(origin.raised, 'from')} {origin.source}")
    elif net.parent_codes(code):
        seed = origin.seed_parent
        if seed and all(parent == seed for parent, _ in pollen):
            said.append(f"from {seed} selfed")
        else:
            record = net.book.crosses.get(origin.cross)
            opened = not any(p for p, _ in pollen) and (record is None or record.intended == "open")
            said.append("from " + cross_words("", "open" if opened else "cross", seed, pollen))
    else:
        said.append(f"founder {net.book.kind(plant)}")
    if origin.selfings > 0:
        said.append(f"{origin.selfings} unrecorded selfings")
    if plant.status:
        said.append(plant.status)
    if code in net.withheld:
        said.append("F withheld")
    else:
        said.append(f"F {spoken(float(net.inbreeding(code)))}")
    return ", ".join(said)


def share_list(net: PedigreeNetwork, code: str) -> tuple[tuple[tuple[str, float], ...], float]:
    """Founder shares in the order of the book's founders, and the share from unknown parents."""
    held = net.founder_shares(code)
    place = founder_places(net)
    known = sorted((code for code in held if code in place and held[code]), key=place.__getitem__)
    shares = tuple((founder, float(held[founder])) for founder in known)
    return shares, max(0.0, 1.0 - sum(share for _, share in shares))
