"""The few facts of a plant that a small card or a line of a tree shows.  Knows no widgets."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

from PySide6.QtCore import QCoreApplication

from pedigreeview.book.faults import Fault
from pedigreeview.window.words import cross_line, kind_word

if TYPE_CHECKING:
    from pedigreeview.network import PedigreeNetwork

__all__ = ["PlantFacts", "parents_line", "plant_facts", "spoken_more"]


def _tr(text: str) -> str:
    return QCoreApplication.translate("PlantFacts", text)


@dataclass(frozen=True, slots=True)
class PlantFacts:
    """Code, name, generation and lines of a label and a value each."""

    code: str
    name: str
    generation: str
    lines: tuple[tuple[str, str], ...]


def parents_line(net: PedigreeNetwork, code: str) -> str:
    """'TP × BA', '21-01 ⊗', '21-01 ○', 'cutting of K-3', or 'founder'; seed parent first."""
    held, book = net.parents(code), net.book
    if held.source:
        return {
            "seed_of": _tr("seed of {}"),
            "sibbed_in": _tr("sibs mated in {}"),
            "cutting_of": _tr("cutting of {}"),
            "doubled_haploid_of": _tr("doubled haploid of {}"),
            "doubled_of": _tr("{} doubled"),
        }.get(held.raised, "{}").format(held.source)
    if held.raised == "founder" or (not net.parent_codes(code) and not held.cross):
        return _tr("founder")
    seed = held.seed_parent or "?"
    givers = [giver for giver, _ in held.pollen]
    if held.seed_parent and givers and all(giver == held.seed_parent for giver in givers):
        return f"{seed} ⊗"
    if len(givers) > 1:
        return f"{seed} × ({_tr(' or ').join(giver or '?' for giver in givers)})"
    if givers and givers[0]:
        return f"{seed} × {givers[0]}"
    record = book.crosses.get(held.cross)
    return cross_line(book, record, False) if record is not None else f"{seed} × ?"


def plant_facts(net: PedigreeNetwork, code: str) -> PlantFacts:
    """What the small card of a plant shows; F is worked out, so not in the window's thread."""
    from pedigreeview.network.text import fraction_text

    book = net.book
    plant = book.plants[code]
    generation = net.generation_name(code) or ""
    number = net.generation(code)
    if not generation and number:
        generation = _tr("generation {}").format(number)
    held = net.parents(code)
    line = parents_line(net, code)
    if held.cross and held.cross in book.crosses and not held.cross.startswith(line):
        line = f"{line}  ({held.cross})"
    if held.raised == "founder":
        line = _tr("none: founder, {}").format(kind_word(book, plant))
    lines = [(_tr("Parents"), line)]
    try:
        coefficient = fraction_text(net.inbreeding_exact(code), net.inbreeding(code))
    except Fault:
        coefficient = _tr("withheld")
    lines.append(("F", coefficient))
    if plant.status:
        lines.append((_tr("Status"), plant.status))
    if plant.sown:
        lines.append((_tr("Sown"), plant.sown))
    return PlantFacts(code, plant.name if plant.name != code else "", generation, tuple(lines))


def spoken_more(net: PedigreeNetwork, code: str) -> str:
    """What a screen reader adds to the words of a tag: when it was sown, and where it stands."""
    plant = net.book.plants.get(code)
    if plant is None:
        return ""
    said = []
    if plant.sown:
        said.append(_tr("sown {}").format(plant.sown))
    if plant.place:
        said.append(_tr("place {}").format(plant.place))
    return ", ".join(said)
