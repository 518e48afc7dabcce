"""Why a coefficient is what it is: its terms, the ancestors behind each, formula, source and base.

The coancestry of two plants is one term, split over the plants where their lines first meet.  The
inbreeding of a plant is shown as named terms by its origin (between the gametes, within each gamete
above 2x, unrecorded selfings, doubling), each split in the same way.  The terms add up to the
coefficient, and the parts of a split to their term, exactly.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from fractions import Fraction
from typing import TYPE_CHECKING, Any

from pedigreeview.network.arrays import PedigreeArrays
from pedigreeview.network.exact import ExactCoefficients, as_fraction, short
from pedigreeview.network.origins import UNKNOWN, Origin, Row, gamete_share
from pedigreeview.network.text import fraction_text
from pedigreeview.network.words import inbreeding_sentence

if TYPE_CHECKING:
    from pedigreeview.network.pedigree import CommonAncestor, PedigreeNetwork

__all__ = [
    "Explanation",
    "Term",
    "explain_coancestry",
    "explain_inbreeding",
    "explain_progeny",
]

_COANCESTRY = (
    "θ(a, b) = Σ over common ancestors k of (weight of paths a…k…b first meeting in k) × θ(k, k)",
    "Wright 1922 for the paths, Malécot 1948 for θ (both from memory)",
)
_MALECOT = "Malécot 1948; Wright 1922 (both from memory)"
_POLYSOMIC = (
    "Kerr et al. 2012 for polysomic inheritance (abstract read); Malécot 1948 (from memory)"
)


@dataclass(frozen=True, slots=True)
class Term:
    """One addend of a coefficient.

    name : what it stands for, in words
    value, exact : its amount; exact None where no fraction is given
    ancestors : the plants at which it arises; their contributions add up to it.  Empty for a term
        that arises at no plant (an assumption, unrecorded selfings, a doubling)
    """

    name: str
    value: float
    exact: Fraction | None
    ancestors: tuple[CommonAncestor, ...] = ()


@dataclass(frozen=True, slots=True)
class Explanation:
    """A coefficient with everything that stands behind it.

    what : 'coancestry', 'inbreeding' or 'inbreeding of progeny'
    plants : the codes that were asked about, two or one
    words : one plain sentence for a person who knows no genetics
    terms : add up to the coefficient
    formula, source : the rule and where it comes from
    base : what was assumed of the founders
    paths_left_out : paths that are counted but not listed, over all terms
    """

    what: str
    plants: tuple[str, ...]
    value: float
    exact: Fraction | None
    words: str
    terms: tuple[Term, ...]
    formula: str
    source: str
    base: str

    @property
    def paths_left_out(self) -> int:
        """How many paths are counted in the contributions but not listed."""
        return sum(ancestor.paths_left_out for term in self.terms for ancestor in term.ancestors)

    @property
    def text(self) -> str:
        """The coefficient as a person reads it: '9/128 = 0.0703'."""
        return fraction_text(self.exact, self.value)

    def as_json(self) -> dict[str, Any]:
        """Everything as plain data."""
        return {
            "what": self.what,
            "plants": list(self.plants),
            "value": self.value,
            "value_exact": None if self.exact is None else str(self.exact),
            "words": self.words,
            "terms": [
                {
                    "name": term.name,
                    "value": term.value,
                    "value_exact": None if term.exact is None else str(term.exact),
                    "common_ancestors": [ancestor.as_json() for ancestor in term.ancestors],
                }
                for term in self.terms
            ],
            "formula": self.formula,
            "source": self.source,
            "base": self.base,
            "paths_left_out": self.paths_left_out,
        }


def explain_coancestry(
    net: PedigreeNetwork,
    a: str,
    b: str,
    most_paths: int,
    watch: Callable[[], None] | None = None,
) -> Explanation:
    """Why θ of two plants is what it is."""
    value, exact = net.coancestry(a, b), net.coancestry_exact(a, b)
    ancestors = tuple(net.common_ancestors(a, b, most_paths=most_paths, watch=watch))
    formula, source = _COANCESTRY
    return Explanation(
        "coancestry",
        (a, b),
        value,
        exact,
        net.relationship_words(a, b),
        (Term("where the two lines meet", value, exact, ancestors),),
        formula,
        source,
        net.base_sentence(),
    )


def explain_inbreeding(
    net: PedigreeNetwork,
    code: str,
    row: int,
    exact: ExactCoefficients,
    split: Any,
) -> Explanation:
    """Why F of a plant is what it is.

    `split(row_a, row_b, share)` gives the common ancestors of two rows with their contributions
    times `share`.
    """
    value, fraction = net.inbreeding(code), net.inbreeding_exact(code)
    terms, formula, source = _Inbreeding(
        net.arrays, exact, split, net.arrays.row(row), row, exact.decimal_odds(row)
    ).explained()
    return Explanation(
        "inbreeding",
        (code,),
        value,
        fraction,
        inbreeding_sentence(value),
        tuple(terms),
        formula,
        source,
        net.base_sentence(),
    )


def explain_progeny(
    net: PedigreeNetwork,
    plants: tuple[str, str],
    rows: tuple[int, int],
    exact: ExactCoefficients,
    split: Any,
) -> Explanation | None:
    """Why F of the progeny of two plants would be what it is; None where no rule gives it.

    `split` as for `explain_inbreeding`.
    """
    value = net.progeny_inbreeding(*plants)
    if value is None:
        return None
    seed, pollen = rows
    ploidy = int(net.arrays.ploidy[seed])
    progeny = Row(Origin.CROSS, seed, ((pollen, 1.0),), ploidy=ploidy)
    if seed == pollen:
        progeny = Row(Origin.SELF, seed, ploidy=ploidy)
    decimal = exact.decimal_odds(seed) or exact.decimal_odds(pollen)
    terms, formula, source = _Inbreeding(
        net.arrays, exact, split, progeny, seed, decimal
    ).explained()
    return Explanation(
        "inbreeding of progeny",
        plants,
        value,
        net.progeny_inbreeding_exact(*plants),
        inbreeding_sentence(value),
        tuple(terms),
        formula,
        source,
        net.base_sentence(),
    )


class _Inbreeding:
    """The terms of F of one row, by its origin; `like` is a row whose rules of inheritance hold."""

    def __init__(
        self,
        arrays: PedigreeArrays,
        exact: ExactCoefficients,
        split: Any,
        row: Row,
        like: int,
        decimal: bool,
    ) -> None:
        self.arrays = arrays
        self.exact = exact
        self.split = split
        self.index = like
        self.row = row
        self.rules = arrays.rules(like)
        self.decimal = decimal

    def explained(self) -> tuple[list[Term], str, str]:
        row = self.row
        if row.origin is Origin.FOUNDER:
            return (
                [self._assumed("assumed of the founder", row.fixation or 0.0)],
                ("F = the fixation assumed of the founder"),
                "the book's settings, or the founder's own record",
            )
        if row.fixation is not None:
            return (
                [self._assumed("taken as fixed: a line", row.fixation)],
                ("F = the fixation stated for the line, else 1"),
                "the line's own record",
            )
        terms, formula, source = self._by_origin()
        return [term for term in terms if term.value != 0] or terms[:1], formula, source

    def _by_origin(self) -> tuple[list[Term], str, str]:
        row, own = self.row, self._of(self.row.seed) if self.row.seed != UNKNOWN else (0.0, None)
        polysomic = row.ploidy > 2
        source = _POLYSOMIC if polysomic else _MALECOT
        if row.origin in (Origin.MEMBER, Origin.CLONE):
            what = "pool" if row.origin is Origin.MEMBER else "source"
            term = Term(f"as its {what}", *own)
            return [term], f"F = F of the {what} that it came from", source
        if row.origin is Origin.DOUBLED:
            e = Fraction(1, row.ploidy - 1)
            terms = [self._scaled("as its source", own, 1 - e), self._plain("doubling", e)]
            return terms, f"F = e + (1 − e) F(source), e = {e}", source
        if row.origin is Origin.HAPLOID:
            e = Fraction(1, row.ploidy - 1)
            gamete = self._gametic(own)
            terms = [
                self._plain("doubled gamete", e),
                self._scaled("within the gamete", gamete, 1 - e),
            ]
            return terms, f"F = e + (1 − e) γ(F of the parent), e = {e}", source
        terms = self._gametes()
        if row.selfings:
            terms.append(self._selfings(terms))
        formula = "F of a cross = θ(seed parent, pollen parent); of a selfing = θ(parent, itself)"
        if polysomic:
            c = gamete_share(row.ploidy)
            formula = (
                "F = c · ½[γ(F of seed parent) + γ(F of pollen parent)] + (1 − c) · "
                f"θ(seed parent, pollen parent), c = {c}"
            )
        if row.selfings:
            formula += "; each unrecorded selfing applies the rule of a selfing once more"
        return terms, formula, source

    # Between and within the gametes -------------------------------------------------------------

    def _gametes(self) -> list[Term]:
        row = self.row
        c = gamete_share(row.ploidy)
        if row.origin is Origin.SELF:
            terms = [self._selfed("between the gametes of the one parent", Fraction(1))]
            within = [("within each gamete", self._of(row.seed), Fraction(1))]
        elif row.origin is Origin.SIB:
            between = self.split(row.seed, row.seed, 1 - c)
            terms = [self._summed("between the gametes of two members of the pool", between)]
            within = [("within each gamete", self._of(row.seed), Fraction(1))]
        else:
            terms, within = self._of_cross(c)
        if c:
            terms += [
                self._scaled(name, self._gametic(value), c * share) for name, value, share in within
            ]
        return terms

    def _of_cross(
        self, c: Fraction
    ) -> tuple[list[Term], list[tuple[str, tuple[float, Fraction | None], Fraction]]]:
        row = self.row
        half = Fraction(1, 2)
        nothing: tuple[float, Fraction | None] = (0.0, Fraction(0))
        terms: list[Term] = []
        of_seed = self._of(row.seed) if row.seed != UNKNOWN else nothing
        within = [("within the gamete of the seed parent", of_seed, half)]
        left = Fraction(1)
        for parent, odds in row.pollen:
            share = as_fraction(odds)
            left -= share
            if parent == row.seed:
                terms.append(self._selfed("between the gametes, if it was selfed", share))
            elif row.seed != UNKNOWN:
                between = self.split(row.seed, parent, (1 - c) * share)
                name = "between the gametes"
                if share != 1:
                    name += f", with odds {odds:g}"
                terms.append(self._summed(name, between))
            within.append(
                ("within the gamete of the pollen parent", self._of(parent), half * share)
            )
        if left > 0:
            within.append(("within the gamete of an unknown parent", nothing, half * left))
        if not terms:
            terms.append(self._plain("between the gametes: a parent is unknown", Fraction(0)))
        return terms, within

    def _selfed(self, name: str, share: Fraction) -> Term:
        """θ of the seed parent (of one member of a pool) with itself, arising at it."""
        c = gamete_share(self.row.ploidy)
        ancestor = self.split(self.row.seed, self.row.seed, (1 - c) * share, itself=True)
        return self._summed(name, ancestor)

    def _selfings(self, terms: list[Term]) -> Term:
        before = sum(term.value for term in terms)
        value = self.rules.selfed(before, self.row.selfings) - before
        parts = [term.exact for term in terms]
        exact = None
        if not self.decimal and None not in parts:
            start = sum((part for part in parts if part is not None), Fraction(0))
            exact = short(self.exact.rules(self.index).selfed(start, self.row.selfings) - start)
        count = self.row.selfings
        name = "1 unrecorded selfing" if count == 1 else f"{count} unrecorded selfings"
        return Term(name, float(value), exact)

    # Small change -------------------------------------------------------------------------------

    def _of(self, index: int) -> tuple[float, Fraction | None]:
        exact = None if self.decimal else self.exact.inbreeding(index)
        return float(self.arrays.inbreeding()[index]), exact

    def _gametic(self, value: tuple[float, Fraction | None]) -> tuple[float, Fraction | None]:
        inbreeding, exact = value
        shown = None if exact is None else self.exact.rules(self.index).gametic(exact)
        return float(self.rules.gametic(inbreeding)), shown

    def _assumed(self, name: str, fixation: float) -> Term:
        return Term(name, fixation, short(as_fraction(fixation)))

    def _plain(self, name: str, exact: Fraction) -> Term:
        return Term(name, float(exact), None if self.decimal else exact)

    def _scaled(self, name: str, value: tuple[float, Fraction | None], share: Fraction) -> Term:
        inbreeding, exact = value
        shown = None if exact is None or self.decimal else short(exact * share)
        return Term(name, inbreeding * float(share), shown)

    def _summed(self, name: str, ancestors: list[CommonAncestor]) -> Term:
        parts = [ancestor.contribution_exact for ancestor in ancestors]
        exact: Fraction | None = None
        if not self.decimal and None not in parts:
            exact = short(sum((part for part in parts if part is not None), Fraction(0)))
        return Term(name, sum(a.contribution for a in ancestors), exact, tuple(ancestors))
