"""What a person wants in one plant: traits with a direction or a value, or alleles of a locus."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING, Literal

from pedigreeview.book.faults import Fault

if TYPE_CHECKING:
    from pedigreeview.book.book import Book

__all__ = ["Wanted", "wanted_allele", "wanted_trait"]

Kind = Literal["measured", "category", "allele"]


@dataclass(frozen=True, slots=True)
class Wanted:
    """One wish.

    kind : a measured trait, a value of a category or yes/no trait, or an allele of a locus
    of : the trait or the locus
    want : 'high' or 'low', the value, or the allele
    weight : how much it counts beside the others, 0 or more
    """

    kind: Kind
    of: str
    want: str
    weight: float = 1.0

    @property
    def words(self) -> str:
        """'high sweet', 'leaf potato', 'allele c of C'."""
        if self.kind == "allele":
            return f"allele {self.want} of {self.of}"
        return f"{self.want} {self.of}" if self.kind == "measured" else f"{self.of} {self.want}"


def wanted_trait(book: Book, trait: str, want: str = "", weight: float = 1.0) -> Wanted:
    """A wish for a trait.

    Parameters
    ----------
    want : 'high' or 'low' (default: what the trait says is better), or a value of the category

    Raises
    ------
    Fault : no such trait, or nothing said of what is wanted
    """
    _weighed(weight)
    record = book.traits.get(trait)
    if record is None:
        known = ", ".join(book.traits) or "none"
        raise Fault(f"There is no trait {trait!r} in this book.", None, f"It has: {known}.")
    if record.type in ("score", "measure"):
        chosen = want or record.better
        if chosen not in ("high", "low"):
            raise Fault(f"Say whether {trait} shall be high or low.", None, "Choose one of them.")
        return Wanted("measured", trait, chosen, weight)
    values = ["yes", "no"] if record.type == "yes_no" else record.values.split(";")
    named = {value.strip().casefold(): value.strip() for value in values}
    if want.casefold() not in named:
        raise Fault(
            f"Say which value of {trait} is wanted.", None, f"It has: {', '.join(named.values())}."
        )
    return Wanted("category", trait, named[want.casefold()], weight)


def wanted_allele(book: Book, locus: str, allele: str, weight: float = 1.0) -> Wanted:
    """A wish for an allele of a locus.

    Raises
    ------
    Fault : no such locus or allele
    """
    from pedigreeview.planning.loci import locus_model

    _weighed(weight)
    locus_model(book, locus).allele(allele)
    return Wanted("allele", locus, allele, weight)


def _weighed(weight: float) -> None:
    if weight < 0:
        raise ValueError("a weight is 0 or more")
