"""What stands in a picture of a pedigree, before it has a place: blocks and the links between them.

A block is a plant's tag, a pack of sibs, a folded chain of selfings, a knot, or several knots in
one reciprocal frame.  A row is one generation; rows grow downwards and a parent's row is always
above its progeny's, except for a link marked `back` (a pedigree loop).  Knows no Qt.
"""

from __future__ import annotations

from dataclasses import dataclass, field
from typing import TYPE_CHECKING, Literal

if TYPE_CHECKING:
    from pedigreeview.drawing.ways import Way

__all__ = [
    "FOUNDERS",
    "IN_LOOPS",
    "PINNED_APART",
    "Block",
    "Knot",
    "Link",
    "Role",
    "Row",
    "Sign",
    "Sort",
    "View",
]

FOUNDERS = "Founders"
IN_LOOPS = "No generation, loop in the records"
PINNED_APART = "Pinned, outside this view"
"""Names of rows that are no generation's own; what stands after a comma is the second line."""

Sort = Literal["tag", "pack", "chain", "knot", "pair"]
Sign = Literal["cross", "selfing", "open", "clone", "seed", "sibbed", "doubled"]
Role = Literal["seed", "pollen", "source", "progeny"]


@dataclass(frozen=True, slots=True)
class Knot:
    """One mating, or one other way in which plants arose, as a sign between parent and progeny."""

    key: str
    cross: str
    """Code of the cross; blank for a clone, a doubled form and seed of a pool."""
    sign: Sign
    label: str
    """The code as it is written beside the sign; blank where the program made the name."""
    seed: str
    """Code of the seed parent, or of the source; blank: unknown."""
    pollen: tuple[tuple[str, float], ...]
    """Pollen parents with their odds; a blank code is an unknown one.  Selfing: the seed parent."""
    state: str = ""
    words: str = ""
    found: bool = False
    """The plants' own finding says otherwise than the cross was meant."""


@dataclass(frozen=True, slots=True)
class Block:
    """One thing that has a place in the picture."""

    key: str
    sort: Sort
    row: int
    """Index in `View.rows`; a knot's is that of the lowest of its parents, below which it hangs."""
    codes: tuple[str, ...] = ()
    """Plants that it stands for: one for a tag, all of a pack, a chain from first to last."""
    title: str = ""
    subtitle: str = ""
    kind: str = "plant"
    pool: bool = False
    status: str = ""
    generation_name: str = ""
    inbreeding: float | None = None
    withheld: str = ""
    shares: tuple[tuple[str, float], ...] = ()
    unknown_share: float = 0.0
    selfings: int = 0
    """Selfings folded into a chain; for a tag, unrecorded selfings since its cross."""
    more_up: int = 0
    """Parents that the book has and the picture leaves out."""
    more_down: int = 0
    """Progeny that the book has and the picture leaves out."""
    knots: tuple[Knot, ...] = ()
    turn: int = 0
    """In a reciprocal frame the number of knots before the sign ⇄."""
    fold: str = ""
    """The key to take out of `Look.unfolded` so that the block folds again."""
    words: str = ""
    ghost: bool = False
    """A plant of a cross that is only tried out; it is not in the book."""

    @property
    def code(self) -> str:
        """The plant whose tag it is: of a chain the last; blank for packs and knots."""
        return self.codes[-1] if self.codes and self.sort in ("tag", "chain") else ""


@dataclass(frozen=True, slots=True)
class Link:
    """A line between two blocks: from a parent to a knot, or from a knot to its progeny."""

    above: str
    below: str
    role: Role
    knot: str
    """Key of the knot at one end."""
    odds: float = 1.0
    sure: bool = True
    """False for one of several candidates."""
    grade: str = ""
    back: bool = False
    """The parent stands below its own progeny: part of a pedigree loop."""
    selfings: int = 0


@dataclass(frozen=True, slots=True)
class Row:
    """One line of tags; rows of one generation and name lie in one band.

    generation : -1 where none is known
    label : the generation's name, '' where it has none
    """

    generation: int
    label: str


@dataclass(frozen=True, slots=True)
class View:
    """Which plants and crosses are in the picture, folded; no places yet."""

    focus: str | None
    pins: tuple[str, ...]
    blocks: tuple[Block, ...]
    links: tuple[Link, ...]
    rows: tuple[Row, ...]
    founders: tuple[tuple[str, int], ...] = ()
    """Founders whose share shows on a tag, with their number in the palette; -1: 'others'."""
    hidden: tuple[str, ...] = ()
    """Plants left out because the picture would hold more blocks than its cap, nearest first."""
    base: str = ""
    names: tuple[tuple[str, str], ...] = ()
    """Code and name of those founders that have one."""
    way: Way | None = None
    """The way of looking, if it is not the plain neighbourhood."""
    aside: frozenset[str] = frozenset()
    """Plants drawn faint: beside the way, or not fitting the filter and yet a link to what does."""
    away: frozenset[str] = frozenset()
    """Plants that the filter folded away."""
    left_out: tuple[str, ...] = ()
    """Descendants that a picture of what came of a plant leaves out because they led nowhere."""
    meeting: tuple[str, ...] = ()
    """Of a connection where the two lines meet, one of the two included if the other descends
    from it; of a cytoplasm its oldest plant."""
    _held: dict[str, str] = field(default_factory=dict, compare=False, repr=False)

    def block_of(self, code: str) -> str:
        """Key of the block that shows the plant, or ''."""
        if not self._held:
            for block in self.blocks:
                for held in block.codes:
                    self._held[held] = block.key
        return self._held.get(code, "")

    def shown(self) -> frozenset[str]:
        """Codes of all plants in the picture, folded ones too."""
        self.block_of("")
        return frozenset(self._held)

    def hidden_words(self) -> str:
        """The sentence that says what was left out; blank when nothing was."""
        count = len(self.hidden)
        if not count:
            return ""
        plants = "1 more plant is" if count == 1 else f"{count} more plants are"
        return f"{plants} left out; the nearest is {self.hidden[0]}."

    def way_words(self) -> str:
        """The way of looking as a sentence for paper; blank for the plain neighbourhood."""
        focus, way = self.focus or "", self.way
        if way is None or way.mode == "near":
            return ""
        met = ", ".join(code for code in self.meeting if code not in (focus, way.other))
        if way.mode == "connection":
            start = f"How {focus} and {way.other} are connected"
            ends = [code for code in (focus, way.other) if code in self.meeting]
            if ends:
                lower = way.other if ends[0] == focus else focus
                also = f"; their lines also meet at {met}" if met else ""
                return f"{start}: {lower} descends from {ends[0]}{also}."
            if met:
                return f"{start}: their lines meet at {met}."
            return f"{focus} and {way.other} share no ancestor in this book."
        if way.mode == "cytoplasm":
            oldest = self.meeting[0]
            return f"All that has the cytoplasm of {focus}, back to {oldest} by seed parents."
        if not self.left_out:
            return f"What came of {focus}: all its descendants."
        count = len(self.left_out)
        plants = "1 descendant" if count == 1 else f"{count} descendants"
        return f"What came of {focus}: {plants} that led nowhere left out."

    def away_words(self) -> str:
        """The sentence that says how many plants the filter folded away; blank for none."""
        count = len(self.away)
        if not count:
            return ""
        return f"{count} plant{'' if count == 1 else 's'} folded away by the filter."
