"""Statistics of plants and of groups of plants, asked for by code.

The numbers are made by `diversity`, `depth`, `partial_inbreeding` and `spread`; here codes become
rows and rows become codes again.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable
from dataclasses import dataclass
from typing import TYPE_CHECKING

from pedigreeview.book.faults import Fault

if TYPE_CHECKING:
    from pedigreeview.book.book import Book
    from pedigreeview.network.arrays import PedigreeArrays
    from pedigreeview.network.diversity import Diversity, EffectiveAncestors

__all__ = ["BroughtInbreeding", "ShareRange", "Statistics"]

Tick = Callable[[int, int], None]


@dataclass(frozen=True, slots=True)
class BroughtInbreeding:
    """How much of a plant's F each founder brought.

    founders : (code, part), largest first
    taken_as_fixed : (code, part) of lines whose surplus over descent is an assumption
    unknown : part that arises in unknown parents
    The parts add up to F.
    """

    founders: tuple[tuple[str, float], ...]
    taken_as_fixed: tuple[tuple[str, float], ...]
    unknown: float


@dataclass(frozen=True, slots=True)
class ShareRange:
    """A founder's share in plants raised the same way: what to expect and how far they spread.

    founder : its code, '' for all unknown parents together
    expected : the expected share
    low, high : 5 and 95 of 100 plants lie below: most plants lie between
    sd : standard deviation
    """

    founder: str
    expected: float
    low: float
    high: float
    sd: float


class Statistics:
    """Part of `PedigreeNetwork`."""

    if TYPE_CHECKING:
        book: Book

        @property
        def arrays(self) -> PedigreeArrays: ...
        def _row(self, code: str) -> int: ...
        def _label(self, row: int) -> str: ...

    def diversity(self, codes: Iterable[str]) -> Diversity:
        """What a group of plants holds: mean coancestry, status number, founder equivalents.

        Rows of the founders in the answer are named by `label`.
        """
        from pedigreeview.network.diversity import diversity

        return diversity(self.arrays, [self._row(code) for code in codes])

    def effective_ancestors(
        self, codes: Iterable[str], *, tick: Tick | None = None
    ) -> EffectiveAncestors:
        """Effective number of ancestors of a group (Boichard et al. 1997, from memory)."""
        from pedigreeview.network.diversity import effective_ancestors

        return effective_ancestors(self.arrays, [self._row(code) for code in codes], tick=tick)

    def genome_equivalents(
        self, codes: Iterable[str], *, seed: int = 0, tick: Tick | None = None
    ) -> float:
        """Founder genome equivalents of a group by retention of founder alleles in a gene drop.

        The other usual definition, by mean kinship, is `diversity(codes).status_number`.
        """
        from pedigreeview.network.diversity import genome_equivalents_by_retention

        rows = [self._row(code) for code in codes]
        return genome_equivalents_by_retention(self.arrays, rows, seed=seed, tick=tick)

    def label(self, row: int) -> str:
        """What a person sees for a row: its code, or the words for an unseen father."""
        return self._label(row)

    def generation_equivalents(self, code: str) -> float:
        """Complete generations known of a plant (Maignel et al. 1996, from memory)."""
        from pedigreeview.network.depth import generation_equivalents

        return float(generation_equivalents(self.arrays)[self._row(code)])

    def completeness(self, code: str, generations: int = 5) -> float:
        """Completeness index of a plant's ancestry, 1 if complete (MacCluer et al. 1983)."""
        from pedigreeview.network.depth import completeness_index

        return completeness_index(self.arrays, self._row(code), generations)

    def partial_inbreeding(self, code: str) -> BroughtInbreeding:
        """How much of F each founder brought."""
        from pedigreeview.network.partial_inbreeding import partial_inbreeding

        found = partial_inbreeding(self.arrays, self._row(code))

        def named(parts: tuple[tuple[int, float], ...]) -> tuple[tuple[str, float], ...]:
            return tuple((self._label(row), part) for row, part in parts)

        return BroughtInbreeding(named(found.founders), named(found.taken_as_fixed), found.unknown)

    def share_ranges(
        self, code: str, *, replicates: int = 4000, seed: int = 0, tick: Tick | None = None
    ) -> tuple[ShareRange, ...]:
        """Between what founder shares most plants raised like this one lie.

        A gene drop along chromosomes, seeded; map lengths from the crop's facts.

        Raises
        ------
        Fault : no map of the crop is known, or no rule for such gametes
        """
        from pedigreeview.network.spread import map_lengths, share_spread

        row = self._row(code)
        crop = self.book.crop_facts(self.book.plants[code])
        lengths = map_lengths(crop) if crop is not None else None
        if lengths is None:
            name = self.book.crop(self.book.plants[code])
            what = f"No chromosome map of {name} is known" if name else "The crop is not stated"
            raise Fault(
                f"{what}, so the spread around the expected shares cannot be given.",
                None,
                "State the crop of the book.",
            )
        found = share_spread(self.arrays, row, lengths, replicates=replicates, seed=seed, tick=tick)
        return tuple(
            ShareRange(
                self._label(one.founder) if one.founder >= 0 else "",
                one.expected,
                one.low,
                one.high,
                one.sd,
            )
            for one in found.founders
        )
