"""The tint 'gene': the chance of every plant to carry an allele, from all that was seen.

Exact or sampled, as `planning.inference` answers; a sampled chance of 0 or 1 is never printed as
sure.  Plants without a chance (their records contradict each other) stay plain.  Knows no Qt.
"""

from __future__ import annotations

from collections.abc import Callable
from typing import TYPE_CHECKING

import numpy as np
from numpy.typing import NDArray

from pedigreeview.book.faults import Fault, Place
from pedigreeview.drawing.theme import Theme
from pedigreeview.drawing.tinting import Tint, TintKey, ramp

if TYPE_CHECKING:
    from pedigreeview.network import PedigreeNetwork
    from pedigreeview.planning.inference import GenotypeChances

__all__ = ["gene_choices", "gene_tint", "locus_and_allele"]

_SURE = 1e-9


def gene_choices(net: PedigreeNetwork) -> list[str]:
    """'C: c' for every allele of every gene of the book, the recessive of each gene first."""
    from pedigreeview.planning.observations import alleles_of

    return [
        f"{code}: {allele}"
        for code, locus in net.book.loci.items()
        for allele in reversed(alleles_of(locus))
    ]


def locus_and_allele(of: str) -> tuple[str, str]:
    """'C: c' as the locus and its allele.

    Raises
    ------
    Fault : no allele is named
    """
    locus, colon, allele = of.rpartition(":")
    if not colon or not locus.strip() or not allele.strip():
        raise Fault(
            f"'{of}' names no allele of a gene.", Place(), "Write the gene and the allele, 'C: c'."
        )
    return locus.strip(), allele.strip()


def gene_tint(
    net: PedigreeNetwork,
    of: str,
    theme: Theme,
    *,
    answer: GenotypeChances | None = None,
    tick: Callable[[int, int], None] | None = None,
) -> Tint:
    """The chance of every plant to carry an allele as a tint from 0 to 1.

    Parameters
    ----------
    of : 'C: c', the locus and the allele
    answer : chances that are known already; default `genotype_chances`

    Raises
    ------
    Fault : no such locus or allele, or as `planning.inference.genotype_chances`
    """
    from pedigreeview.planning.inference import genotype_chances

    locus, allele = locus_and_allele(of)
    found = answer if answer is not None else genotype_chances(net, locus, tick=tick)
    found.model.allele(allele)
    values = np.full(len(net.codes), np.nan)
    for row, code in enumerate(net.codes):
        if code in found.chances:
            values[row] = found.carrying(code, allele)
    colours = ramp(theme)
    valued = ~np.isnan(values)
    part = np.clip(np.where(valued, values, 0.0), 0.0, 1.0)
    step = np.where(valued, np.rint(part * (len(colours) - 1)), -1).astype(np.int64)
    ticks = ((0.0, "0%"), (0.5, "50%"), (1.0, "100%"))
    key = TintKey(
        f"Carries {allele} of {locus}",
        ramp=colours,
        ticks=ticks,
        note=_note(found, step),
        gene=(locus, allele),
    )
    exact = found.exact
    return Tint(key, net.codes, step, colours, lambda row: _word(float(values[row]), exact))


def _note(found: GenotypeChances, step: NDArray[np.int64]) -> str:
    missing = int((step < 0).sum())
    said = [] if found.exact else [f"Sampled, error up to {found.error:.2g}."]
    if missing:
        noun = "plant stays" if missing == 1 else "plants stay"
        said.append(f"{missing:,} {noun} plain: no chance can be given.")
    return " ".join(said)


def _word(chance: float, exact: bool) -> str:
    """The chance as a tag prints it; 0% and 100% are sure, and said only of an exact answer.

    No words: on a narrow tag 'surely not' would be cut to 'surely'.
    """
    if exact and chance >= 1 - _SURE:
        return "100%"
    if exact and chance <= _SURE:
        return "0%"
    return f"{100 * min(max(chance, 0.001), 0.999):.3g}%"
