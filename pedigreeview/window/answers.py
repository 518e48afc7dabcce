"""What the network answers about one plant or one pair, gathered in one go off the window's thread.

Nothing is computed here: numbers, explanations and sentences about them come from the network.
Knows no widgets.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass
from fractions import Fraction
from typing import TYPE_CHECKING

from PySide6.QtCore import QCoreApplication

from pedigreeview.book.faults import Fault
from pedigreeview.book.problems import Problem
from pedigreeview.window.words import named

if TYPE_CHECKING:
    from pedigreeview.network import Explanation, PedigreeNetwork

__all__ = [
    "PairAnswer",
    "PairNumber",
    "PlantAnswer",
    "Reason",
    "Withheld",
    "ask_coancestry_why",
    "ask_inbreeding_why",
    "ask_pair",
    "ask_plant",
    "ask_progeny_why",
    "percent",
]

Watch = Callable[[], None]

_LONGEST = 4096


def _tr(text: str) -> str:
    return QCoreApplication.translate("Answers", text)


@dataclass(frozen=True, slots=True)
class Reason:
    """What a number rests on that is no sum over ancestors."""

    lines: tuple[str, ...] = ()
    formula: str = ""
    source: str = ""
    base: str = ""


@dataclass(frozen=True, slots=True)
class Withheld:
    """Why numbers are not given: a sentence, the records behind it, their plants and the mend."""

    words: str
    cause: str = ""
    plants: tuple[str, ...] = ()
    mend: str = ""


@dataclass(frozen=True, slots=True)
class PlantAnswer:
    """The numbers of one plant; `withheld` where they are not given."""

    code: str
    text: str = ""
    """F as a person reads it."""
    words: str = ""
    shares: tuple[tuple[str, float, str], ...] = ()
    """Founder, share, and the share as text, largest first."""
    unknown_share: float = 0.0
    share_reason: Reason = Reason()
    withheld: Withheld | None = None


@dataclass(frozen=True, slots=True)
class PairNumber:
    """One number of a pair: its text, a plain sentence, and what it rests on if that is known."""

    text: str
    words: str = ""
    reason: Reason | None = None


@dataclass(frozen=True, slots=True)
class PairAnswer:
    """The numbers of a pair; `withheld` where they are not given."""

    a: str
    b: str
    cytoplasm: str
    words: str = ""
    coancestry: PairNumber | None = None
    relationship: PairNumber | None = None
    progeny: PairNumber | None = None
    withheld: Withheld | None = None


def percent(value: float) -> str:
    """'12.5%', '50%'."""
    return f"{100 * value:.4g}%"


def _withheld(net: PedigreeNetwork, fault: Fault, problems: Sequence[Problem]) -> Withheld:
    """What stands behind a number that is not given: the nearest problem among the ancestors.

    problems : those of the book that are known; a loop is found without them
    """
    from pedigreeview.network import WithheldFault

    code = fault.where.plant
    if isinstance(fault, WithheldFault) and code:
        if fault.kind == "own_ancestor":
            problems = net.loop_problems()
        behind = {code, *net.ancestors(code)}
        for problem in problems:
            plants = problem.plants
            if problem.kind == fault.kind and plants[0] in net.withheld and plants[0] in behind:
                words = _until(code, fault.kind)
                return Withheld(words, problem.message, plants, problem.mend)
    return Withheld(f"{fault.what} {fault.todo}".strip())


def _until(code: str, kind: str) -> str:
    """A sentence for one who asked for a number of a plant."""
    what = {
        "own_ancestor": _tr("a plant no longer stands among its own ancestors"),
        "ploidy_differs": _tr("the numbers of chromosome sets of its line agree"),
        "ploidy_odd": _tr("the numbers of chromosome sets of its line agree"),
        "fixation_too_low": _tr("the fixation stated in its line is put right"),
    }.get(kind, _tr("its records are put right"))
    return _tr("The numbers of {} cannot be given until {}").format(code, what)


# One plant -----------------------------------------------------------------------------------


def ask_plant(net: PedigreeNetwork, code: str, problems: Sequence[Problem] = ()) -> PlantAnswer:
    """F and founder shares of a plant, with words."""
    from pedigreeview.network.text import fraction_text

    try:
        value = net.inbreeding(code)
        shares = net.founder_shares(code)
        unknown = net.unknown_share(code)
    except Fault as fault:
        return PlantAnswer(code, withheld=_withheld(net, fault, problems))
    return PlantAnswer(
        code,
        fraction_text(net.inbreeding_exact(code), value),
        net.inbreeding_words(code),
        tuple(
            (founder, share, fraction_text(_short(share), share))
            for founder, share in shares.items()
        ),
        unknown,
        _share_reason(net, unknown),
    )


def ask_inbreeding_why(net: PedigreeNetwork, code: str, watch: Watch | None = None) -> Explanation:
    """Why F of a plant is what it is."""
    return net.explain(code, watch=watch)


def _short(share: float) -> Fraction | None:
    """The share as a fraction of a power of two, where it is one."""
    exact = Fraction(share)
    return exact if exact.denominator <= _LONGEST else None


def _share_reason(net: PedigreeNetwork, unknown: float) -> Reason:
    lines = [
        _tr(
            "The part of its alleles that is expected from each founder: a seed parent and a "
            "pollen parent pass on ½ of their own shares each, generation by generation; chance "
            "moves the real part of one plant around it."
        )
    ]
    if unknown > 0:
        lines.append(
            _tr("Unknown is the part that came through parents that nobody recorded: {}.").format(
                percent(unknown)
            )
        )
    return Reason(tuple(lines), base=net.base_sentence())


# A pair --------------------------------------------------------------------------------------


def ask_pair(net: PedigreeNetwork, a: str, b: str, problems: Sequence[Problem] = ()) -> PairAnswer:
    """Coancestry, relationship, F of their progeny and cytoplasm of a pair."""
    from pedigreeview.network.text import fraction_text

    cytoplasm = _cytoplasm_words(net, a, b)
    try:
        text = fraction_text(net.coancestry_exact(a, b), net.coancestry(a, b))
        return PairAnswer(
            a,
            b,
            cytoplasm,
            net.relationship_words(a, b),
            PairNumber(
                text,
                _tr(
                    "The chance that one allele drawn from each is a copy of one and the same "
                    "founder allele."
                ),
            ),
            _relationship(net, a, b, text),
            _progeny(net, a, b),
        )
    except Fault as fault:
        return PairAnswer(a, b, cytoplasm, withheld=_withheld(net, fault, problems))


def ask_coancestry_why(
    net: PedigreeNetwork, a: str, b: str, watch: Watch | None = None
) -> Explanation:
    """Why the coancestry of a pair is what it is; a question of its own, for it can take long."""
    return net.explain(a, b, watch=watch)


def ask_progeny_why(
    net: PedigreeNetwork, a: str, b: str, watch: Watch | None = None
) -> Explanation | None:
    """Why F of the progeny of a pair would be what it is."""
    return net.explain_progeny(a, b, watch=watch)


def _relationship(net: PedigreeNetwork, a: str, b: str, coancestry: str) -> PairNumber:
    from pedigreeview.network.text import decimal_text, fraction_text

    value = net.relationship(a, b)
    theta, own = net.coancestry(a, b), {code: net.self_coancestry(code) for code in (a, b)}
    lines = [_tr("θ of {} and {}: {}").format(a, b, coancestry)]
    for code, itself in own.items():
        text = fraction_text(net.coancestry_exact(code, code), itself)
        lines.append(_tr("θ of {} with itself: {}").format(code, text))
    if value is not None:
        shown = [decimal_text(one) for one in (theta, own[a], own[b], value)]
        lines.append(_tr("R = {} / √({} × {}) = {}").format(*shown))
    reason = Reason(
        tuple(lines),
        _tr("R = θ(a, b) / √(θ(a, a) · θ(b, b))"),
        _tr("Wright 1922 (from memory)"),
        net.base_sentence(),
    )
    if value is None:
        words = _tr("Cannot be stated: one of the two is a pool whose plants are taken as unlike.")
        return PairNumber("–", words, reason)
    words = _tr("Their coancestry set against how alike each is to itself; 1 is the same.")
    return PairNumber(decimal_text(value), words, reason)


def _progeny(net: PedigreeNetwork, a: str, b: str) -> PairNumber:
    from pedigreeview.network.text import fraction_text
    from pedigreeview.network.words import inbreeding_sentence

    value = net.progeny_inbreeding(a, b)
    if value is None:
        words = _tr("Not given: the two differ in ploidy, or their ploidy is odd.")
        sets = (_tr("{} is {}x.").format(code, net.ploidy(code)) for code in dict.fromkeys((a, b)))
        lines = (*sets, _tr("No rule of inheritance holds for the progeny of such a cross."))
        return PairNumber("–", words, Reason(lines, base=net.base_sentence()))
    text = fraction_text(net.progeny_inbreeding_exact(a, b), value)
    return PairNumber(f"F = {text}", inbreeding_sentence(value))


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
