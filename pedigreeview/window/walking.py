"""Where a step leads from one plant: parents, progeny, mates, the reciprocal partner.

Plain questions to the network; knows no widgets.
"""

from __future__ import annotations

from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from pedigreeview.drawing.blocks import Block
    from pedigreeview.network import PedigreeNetwork

__all__ = ["first_focus", "fold_keys", "no_step_words", "step_from"]


def _tr(text: str) -> str:
    # The command line asks for a focus too, where there may be no Qt to load.
    from PySide6.QtCore import QCoreApplication

    return QCoreApplication.translate("Walking", text)


def first_focus(net: PedigreeNetwork) -> str:
    """A plant worth looking at first: of known parents, with most progeny; '' in an empty book."""
    best, best_rank = "", (False, False, -1)
    withheld = net.withheld
    for code in net.codes:
        rank = (bool(net.parent_codes(code)), code not in withheld, len(net.progeny(code)))
        if rank > best_rank:
            best, best_rank = code, rank
    return best


def step_from(net: PedigreeNetwork, code: str, way: str, after: str = "") -> str:
    """The plant that a step leads to, or '' where there is none.

    way : 'seed', 'pollen', 'progeny', 'mate' or 'reciprocal'
    after : for 'mate' the mate stood at before, so that the next one comes
    """
    held = net.parents(code)
    if way == "seed":
        return held.seed_parent or held.source
    if way == "pollen":
        likely = sorted((pair for pair in held.pollen if pair[0]), key=lambda pair: -pair[1])
        return likely[0][0] if likely else ""
    if way == "progeny":
        return next(iter(net.progeny(code)), "")
    if way == "mate":
        mates = [mate for mate in net.mates(code) if mate != code]
        if not mates:
            return ""
        return mates[(mates.index(after) + 1) % len(mates)] if after in mates else mates[0]
    if way == "reciprocal":
        return _reciprocal_partner(net, code)
    return ""


def _reciprocal_partner(net: PedigreeNetwork, code: str) -> str:
    """A plant from the other direction of its own cross; of a parent, the other parent."""
    held = net.parents(code)
    for cross in net.reciprocal_of(held.cross) if held.cross else ():
        for other in net.progeny_of_cross(cross):
            return other
    for pair in net.reciprocal_pairs():
        if code in pair.parents:
            a, b = pair.parents
            return b if code == a else a
    return ""


def no_step_words(code: str, way: str) -> str:
    """Why a step leads nowhere."""
    return {
        "seed": _tr("No seed parent is recorded for {}."),
        "pollen": _tr("No pollen parent is recorded for {}."),
        "progeny": _tr("No progeny is recorded for {}."),
        "mate": _tr("{} was crossed with no other plant."),
        "reciprocal": _tr("No reciprocal cross is recorded for {}."),
        "left": _tr("{} is the first in its row."),
        "right": _tr("{} is the last in its row."),
    }[way].format(code)


def fold_keys(block: Block, code: str, unfolded: frozenset[str], *, unfold: bool) -> list[str]:
    """The folds that a plant's block holds and that are to be opened, or closed again."""
    if not unfold:
        return [key for key in (block.fold, f"up:{code}", f"down:{code}") if key in unfolded]
    keys = [block.key] if block.sort in ("pack", "chain") else []
    keys += [f"up:{code}"] if block.more_up else []
    keys += [f"down:{code}"] if block.more_down else []
    return [key for key in keys if key not in unfolded]
