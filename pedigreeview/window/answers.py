"""What the network answers about one plant or one pair, gathered in one go off the window's thread.

Nothing is computed here: every number comes from the network and is put into words.  Knows no
widgets.
"""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction
from typing import TYPE_CHECKING

from PySide6.QtCore import QCoreApplication

from pedigreeview.book.faults import Fault
from pedigreeview.window.words import named

if TYPE_CHECKING:
    from pedigreeview.network import PedigreeNetwork

__all__ = [
    "AncestorLine",
    "Figure",
    "PairAnswer",
    "PathsAnswer",
    "PlantAnswer",
    "ask_pair",
    "ask_paths",
    "ask_plant",
]


def _tr(text: str) -> str:
    return QCoreApplication.translate("Answers", text)


@dataclass(frozen=True, slots=True)
class Figure:
    """One number: its name, its text, a plain sentence, and why it is so."""

    name: str
    text: str
    words: str
    why: str


@dataclass(frozen=True, slots=True)
class PlantAnswer:
    """The numbers of one plant; `withheld` is a sentence where they are not given."""

    code: str
    inbreeding: Figure | None
    shares: tuple[tuple[str, float, str], ...]
    """Founder, share, and the share as text, largest first."""
    unknown_share: float
    palette: tuple[tuple[str, int], ...]
    withheld: str = ""


@dataclass(frozen=True, slots=True)
class AncestorLine:
    """One common ancestor of a pair with what it brings."""

    plant: str
    text: str
    percent: float
    paths: tuple[tuple[str, ...], ...]
    left_out: int


@dataclass(frozen=True, slots=True)
class PairAnswer:
    """The numbers of a pair; `withheld` is a sentence where they are not given."""

    a: str
    b: str
    figures: tuple[Figure, ...]
    cytoplasm: str
    withheld: str = ""


@dataclass(frozen=True, slots=True)
class PathsAnswer:
    """The common ancestors of a pair; a question of its own, for it can take long."""

    a: str
    b: str
    ancestors: tuple[AncestorLine, ...]


def percent(value: float) -> str:
    """'12.5%', '50%'."""
    return f"{100 * value:.4g}%"


def _said(fault: Fault) -> str:
    """What and what to do; the place is where it is shown."""
    return f"{fault.what} {fault.todo}".strip()


def _inbreeding_words(value: float) -> str:
    if value <= 0:
        return _tr("By this base its two alleles at a gene never copy one founder allele.")
    if value >= 1:
        return _tr(
            "It breeds true: at every gene its two alleles are copies of one founder allele."
        )
    return _tr(
        "At {} of its genes, on average, the two alleles are copies of one founder allele."
    ).format(percent(value))


def _theta_words(a: str, b: str, theta: float) -> str:
    if not theta:
        return _tr("By this base {} and {} share no founder allele by descent.").format(a, b)
    return _tr(
        "Draw one allele of {} and one of {}: in {} of draws they copy one founder allele."
    ).format(a, b, percent(theta))


def ask_plant(net: PedigreeNetwork, code: str) -> PlantAnswer:
    """F and founder shares of a plant, with words."""
    from pedigreeview.drawing.founders import palette_numbers
    from pedigreeview.network.text import fraction_text

    try:
        value = net.inbreeding(code)
        shares = net.founder_shares(code)
        unknown = net.unknown_share(code)
    except Fault as fault:
        return PlantAnswer(code, None, (), 0.0, (), _said(fault))
    text = fraction_text(net.inbreeding_exact(code), value)
    pool = net.book.is_pool(net.book.plants[code])
    why = _tr(
        "F is the chance that the two alleles of {} at one gene came down from one allele of a "
        "founder. For a plant from a cross it is the coancestry of its parents, for a selfing of "
        "s it is ½(1 + F of s); other origins and ploidies have their own rule. {} Source: "
        "Wright 1922; Malécot 1948."
    ).format(_tr("a plant of this pool") if pool else code, net.base_sentence())
    figure = Figure(_tr("Inbreeding"), f"F = {text}", _inbreeding_words(value), why)
    lines = tuple(
        (founder, share, fraction_text(_short(share), share)) for founder, share in shares.items()
    )
    return PlantAnswer(code, figure, lines, unknown, palette_numbers(net, shares))


def _short(share: float) -> Fraction | None:
    """The share as a fraction of a power of two, where it is one."""
    exact = Fraction(share)
    return exact if exact.denominator <= 4096 else None


def ask_pair(net: PedigreeNetwork, a: str, b: str) -> PairAnswer:
    """Coancestry, relationship, F of their progeny and cytoplasm of a pair."""
    from pedigreeview.network.text import decimal_text, fraction_text

    cytoplasm = _cytoplasm_words(net, a, b)
    try:
        theta = net.coancestry(a, b)
        relationship = net.relationship(a, b)
        progeny = net.progeny_inbreeding(a, b)
    except Fault as fault:
        return PairAnswer(a, b, (), cytoplasm, _said(fault))
    base = net.base_sentence()
    exact = net.coancestry_exact(a, b)
    text = fraction_text(exact, theta)
    figures = [
        Figure(
            _tr("Coancestry"),
            text,
            _theta_words(a, b, theta),
            _tr(
                "The chance that one allele drawn from each came down from the same allele of a "
                "founder. θ = sum over the common ancestors of (weight of the paths through it) × "
                "θ of the ancestor with itself. {} Source: Malécot 1948; Wright 1922."
            ).format(base),
        )
    ]
    if relationship is None:
        figures.append(
            Figure(
                _tr("Relationship"),
                "–",
                _tr("Cannot be stated: one of the two is a pool whose plants are taken as unlike."),
                _tr("It divides by θ of each with itself, and that is 0 here. {}").format(base),
            )
        )
    else:
        figures.append(
            Figure(
                _tr("Relationship"),
                decimal_text(relationship),
                _tr("Coancestry set against how alike each is to itself; 1 is the same."),
                _tr("R = θ_ab / √(θ_aa · θ_bb). {} Source: Wright 1922.").format(base),
            )
        )
    figures.append(_progeny_figure(progeny, exact, base))
    return PairAnswer(a, b, tuple(figures), cytoplasm)


def ask_paths(net: PedigreeNetwork, a: str, b: str) -> PathsAnswer:
    """The common ancestors of a pair with what each brings."""
    from pedigreeview.network.text import fraction_text

    theta, found = net.coancestry(a, b), net.common_ancestors(a, b)
    ancestors = tuple(
        AncestorLine(
            one.plant,
            fraction_text(one.contribution_exact, one.contribution),
            one.contribution / theta if theta else 0.0,
            tuple(path.through for path in one.paths),
            one.paths_left_out,
        )
        for one in found
    )
    return PathsAnswer(a, b, ancestors)


def _progeny_figure(progeny: float | None, theta: Fraction | None, base: str) -> Figure:
    from pedigreeview.network.text import fraction_text

    name = _tr("F of their progeny")
    if progeny is None:
        return Figure(
            name,
            "–",
            _tr("Not given: the two differ in ploidy, or the ploidy is odd."),
            _tr("There is no rule for the progeny of such a cross. {}").format(base),
        )
    exact = theta if theta is not None and float(theta) == progeny else _short(progeny)
    return Figure(
        name,
        f"F = {fraction_text(exact, progeny)}",
        _tr("If crossed, in either direction: {}").format(_inbreeding_words(progeny)),
        _tr(
            "With two sets of chromosomes F of the progeny of two plants is their coancestry; with "
            "more sets a part comes from alleles that met in one pollen grain or egg. Seed parent "
            "and pollen parent may change places. {} Source: Malécot 1948."
        ).format(base),
    )


def _cytoplasm_words(net: PedigreeNetwork, a: str, b: str) -> str:
    same = net.same_cytoplasm(a, b)
    of_a, of_b = net.cytoplasm(a), net.cytoplasm(b)
    if same is None:
        return _tr("Cytoplasm: not known, a seed-parent line ends in an unknown plant.")
    if same and of_a is not None:
        return _tr("Same cytoplasm: both seed-parent lines go back to {}.").format(
            named(net.book, of_a)
        )
    return _tr("Different cytoplasm: {} has that of {}, {} that of {}.").format(
        a, named(net.book, of_a or ""), b, named(net.book, of_b or "")
    )
