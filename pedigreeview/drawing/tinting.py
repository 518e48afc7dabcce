"""Tints: a value for every plant and a colour for every value, with a key that says which.

Colours are made from the theme's tokens so that the ink of a tag can be read on each of them; steps
of a scale differ in lightness, which every eye sees.  Nothing needs the colour alone: every tag can
print its value (`Tint.word`).  Knows no Qt.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Callable, Iterable, Sequence
from dataclasses import dataclass
from functools import cached_property
from typing import TYPE_CHECKING, Literal

import numpy as np
from numpy.typing import NDArray

from pedigreeview.book.faults import Fault, Place
from pedigreeview.book.filtering import latest_values
from pedigreeview.drawing.telling import tell
from pedigreeview.drawing.theme import Theme, contrast, mixed

if TYPE_CHECKING:
    from pedigreeview.book.book import Book
    from pedigreeview.network import PedigreeNetwork

__all__ = [
    "KINDS",
    "KeyEntry",
    "Tint",
    "TintKey",
    "Wanted",
    "ramp",
    "shares_of",
    "tint",
    "trait_values",
]

Kind = Literal[
    "coancestry", "founder", "cytoplasm", "generation", "inbreeding", "status", "trait", "gene"
]
KINDS: tuple[Kind, ...] = (
    "coancestry",
    "founder",
    "cytoplasm",
    "generation",
    "inbreeding",
    "status",
    "trait",
    "gene",
)
FloatArray = NDArray[np.float64]

_READABLE = 4.5
"""Least contrast of the ink of a tag on its tint (WCAG 2, level AA)."""
_STEPS = 33
_MOST = 11
"""Classes with a colour of their own; the others share one."""
_STATUSES = ("kept", "growing", "finished", "culled", "lost")


@dataclass(frozen=True, slots=True)
class Wanted:
    """What plants are to be tinted by.

    of : the focus for 'coancestry', a founder's code for 'founder', a trait's name for 'trait'
    """

    kind: Kind
    of: str = ""


@dataclass(frozen=True, slots=True)
class KeyEntry:
    """One class: its colour, what it is, how many plants."""

    colour: str
    words: str
    plants: int


@dataclass(frozen=True, slots=True)
class TintKey:
    """What the colours mean.

    title : 'Coancestry with P-12'
    entries : the classes, for values that are words
    ramp : colours from the lowest to the highest value, for values that are numbers
    ticks : (place from 0 to 1, number as text) along the ramp
    note : what else is to be said, as how many plants have no value
    missing : plants without a value, where values are words
    gene : locus and allele, where the values are chances to carry it
    """

    title: str
    entries: tuple[KeyEntry, ...] = ()
    ramp: tuple[str, ...] = ()
    ticks: tuple[tuple[float, str], ...] = ()
    note: str = ""
    missing: int = 0
    gene: tuple[str, str] = ("", "")

    def words(self) -> str:
        """The key as a sentence."""
        if self.entries:
            # Told one by one: no sentence is known that lists the classes of just this book.
            listed = [f"{tell(item.words)} ({item.plants:,})" for item in self.entries]
            if self.missing:
                listed.append(f"{tell('no value')} ({self.missing:,})")
            said = f"{tell(self.title)}: {', '.join(listed)}."
        elif self.ticks:
            low, high = self.ticks[0][1], self.ticks[-1][1]
            said = f"{self.title}: from {low}, palest, to {high}, deepest."
        else:
            said = f"{self.title}: no plant has a value."
        return f"{said} {self.note}" if self.note else said


@dataclass(frozen=True, eq=False)
class Tint:
    """The tint of a whole book.

    Attributes
    ----------
    key : what the colours mean
    codes : plants, in the network's order
    step : (n,) number of each plant's colour in `colours`, −1 without a value
    colours : the colours that occur
    value : gives the short text of a row's value, as a tag prints it
    """

    key: TintKey
    codes: tuple[str, ...]
    step: NDArray[np.int64]
    colours: tuple[str, ...]
    value: Callable[[int], str]

    @property
    def classes(self) -> NDArray[np.int64] | None:
        """(n,) class of each plant, −1 for none; None where values are numbers."""
        return self.step if self.key.entries else None

    @property
    def rgb(self) -> FloatArray:
        """(n, 3) colours from 0 to 255, NaN without a value."""
        table = np.array(
            [[int(held[at : at + 2], 16) for at in (1, 3, 5)] for held in self.colours]
            + [[np.nan] * 3],
            float,
        )
        found: FloatArray = table[self.step]
        return found

    def word(self, row: int) -> str:
        """The value of one plant in a word or a number; '' without one."""
        return self.value(row) if self.step[row] >= 0 else ""

    @cached_property
    def _row(self) -> dict[str, int]:
        return {code: row for row, code in enumerate(self.codes)}

    def _rows(self, codes: Iterable[str]) -> list[tuple[str, int]]:
        """Those of the plants that have a value, with their rows."""
        rows = self._row
        held = ((code, rows.get(code, -1)) for code in codes)
        return [(code, row) for code, row in held if row >= 0 and self.step[row] >= 0]

    def by_code(self, codes: Iterable[str] | None = None) -> dict[str, str]:
        """Colour by code, for `PedigreeCanvas.set_tints`; of all plants or of those asked for."""
        if codes is None:
            held = zip(self.codes, self.step.tolist(), strict=True)
            return {code: self.colours[step] for code, step in held if step >= 0}
        return {code: self.colours[self.step[row]] for code, row in self._rows(codes)}

    def marks_by_code(self, codes: Iterable[str]) -> dict[str, int]:
        """Number of the pattern by code, where values are words; for the grey theme."""
        if self.classes is None:
            return {}
        return {code: int(self.step[row]) for code, row in self._rows(codes)}

    def also(self, tags: Iterable[tuple[str, ...]]) -> list[str]:
        """What a picture shows besides the key: 'mixed' packs, and plants with 'no value'.

        tags : the plants of each tag
        """
        rows, found = self._row, set()
        for codes in tags:
            steps = {int(self.step[rows[code]]) if code in rows else -1 for code in codes}
            if len(steps) > 1:
                found.add("mixed")
            elif steps == {-1}:
                found.add("no value")
        return sorted(found)

    def words_by_code(self, codes: Iterable[str]) -> dict[str, str]:
        """Printed value by code of the plants asked for; none without a value."""
        return {code: self.word(row) for code, row in self._rows(codes)}


def ramp(theme: Theme, steps: int = _STEPS) -> tuple[str, ...]:
    """Colours from the paper to the deepest tone on which the ink can still be read."""
    deepest = _readable(theme, theme["select"])
    return tuple(mixed(theme["paper"], deepest, at / max(1, steps - 1)) for at in range(steps))


def tint(net: PedigreeNetwork, wanted: Wanted, theme: Theme) -> Tint:
    """The tint of every plant of a book.

    Raises
    ------
    Fault : what is asked for is not in the book, or the focus's coefficients are withheld
    """
    if wanted.kind == "gene":
        from pedigreeview.drawing.gene_tint import gene_tint

        return gene_tint(net, wanted.of, theme)
    if wanted.kind == "coancestry":
        theta = net.coancestry_with(wanted.of)
        return _scaled(net, theme, f"Coancestry with {wanted.of}", theta, 0.0, None, _decimal)
    if wanted.kind == "founder":
        from pedigreeview.network.plant_values import founder_share_of_all

        shares = founder_share_of_all(net, wanted.of)
        return _scaled(net, theme, f"Share of {wanted.of}", shares, 0.0, 1.0, _percent)
    if wanted.kind == "inbreeding":
        from pedigreeview.network.plant_values import inbreeding_of_all

        return _scaled(net, theme, "Inbreeding F", inbreeding_of_all(net), 0.0, 1.0, _decimal)
    if wanted.kind == "generation":
        from pedigreeview.network.links import links_of

        count = links_of(net).generation.astype(float)
        count[count < 0] = np.nan
        return _scaled(net, theme, "Generation", count, 0.0, None, _whole)
    if wanted.kind == "cytoplasm":
        return _cytoplasm(net, theme)
    if wanted.kind == "status":
        plants = net.book.plants
        found = [plants[code].status for code in net.codes]
        return _classed(net, theme, "Status", found, _STATUSES, statuses=True)
    return _trait(net, wanted.of, theme)


def shares_of(net: PedigreeNetwork, founder: str) -> dict[str, float]:
    """Share of one founder by code, as `book.filtering` wants it.

    Raises
    ------
    Fault : no such plant
    """
    from pedigreeview.network.plant_values import shares_by_code

    return shares_by_code(net, founder)


def trait_values(book: Book, name: str) -> dict[str, str]:
    """The latest value of a trait of each plant that has one; of the plant itself, not its seed.

    Raises
    ------
    Fault : the book has no such trait
    """
    if name not in book.traits:
        raise Fault(
            f"'{name}' is not a trait of this book.", Place(), "Choose one of the book's traits."
        )
    return latest_values(book, name)


def _trait(net: PedigreeNetwork, name: str, theme: Theme) -> Tint:
    values = trait_values(net.book, name)
    trait = net.book.traits[name]
    title = f"{name} ({trait.unit})" if trait.unit else name
    if trait.type in ("category", "yes_no"):
        order = ("yes", "no") if trait.type == "yes_no" else _parted(trait.values)
        found = [values.get(code, "") for code in net.codes]
        return _classed(net, theme, title, found, order)
    numbers = np.array([_number(values.get(code, "")) for code in net.codes], float)
    low, high = trait.low, trait.high
    valued = numbers[~np.isnan(numbers)]
    if len(valued):
        low = float(valued.min()) if low is None else min(low, float(valued.min()))
        high = float(valued.max()) if high is None else max(high, float(valued.max()))
    return _scaled(net, theme, title, numbers, low or 0.0, high, _plain)


def _cytoplasm(net: PedigreeNetwork, theme: Theme) -> Tint:
    from pedigreeview.network.links import links_of

    line = links_of(net).cytoplasm
    found = [net.codes[row] if row >= 0 else "" for row in line.tolist()]
    return _classed(net, theme, "Cytoplasm, by seed-parent line", found, ())


def _scaled(
    net: PedigreeNetwork,
    theme: Theme,
    title: str,
    values: FloatArray,
    low: float,
    high: float | None,
    text: Callable[[float], str],
) -> Tint:
    """Colours along the ramp; `high` None: up to the largest value."""
    valued = ~np.isnan(values)
    if not valued.any():
        step = np.full(len(values), -1)
        return Tint(TintKey(title, note=_without(step)), net.codes, step, (), lambda row: "")
    top = float(values[valued].max()) if high is None else high
    if top <= low:
        top = low + 1.0
    colours = ramp(theme)
    part = np.clip((np.where(valued, values, low) - low) / (top - low), 0.0, 1.0)
    step = np.where(valued, np.rint(part * (len(colours) - 1)), -1).astype(np.int64)
    places = (0.0, 0.5, 1.0) if top - low > 1 or text is not _whole else (0.0, 1.0)
    ticks = tuple((place, text(low + place * (top - low))) for place in places)
    key = TintKey(title, ramp=colours, ticks=ticks, note=_without(step))
    return Tint(key, net.codes, step, colours, lambda row: text(float(values[row])))


def _classed(
    net: PedigreeNetwork,
    theme: Theme,
    title: str,
    found: list[str],
    order: Sequence[str],
    *,
    statuses: bool = False,
) -> Tint:
    """One muted colour for each class, in the order given, then the fullest first."""
    count = Counter(value for value in found if value)
    listed = [value for value in order if value in count]
    rest = sorted((v for v in count if v not in set(listed)), key=lambda v: (-count[v], v))
    classes = [*listed, *rest]
    own, others = classes[:_MOST], classes[_MOST:]
    papers = theme.class_papers(len(own))
    if statuses:
        papers = tuple(theme.statuses.get(value, theme.classes[-1]) for value in own)
    colours = [_readable(theme, paper) for paper in papers]
    entries = [
        KeyEntry(held, value, count[value]) for held, value in zip(colours, own, strict=True)
    ]
    number = {value: at for at, value in enumerate(own)}
    if others:
        colours.append(_readable(theme, theme.classes[-1]))
        total = sum(count[value] for value in others)
        entries.append(KeyEntry(colours[-1], f"{len(others)} others", total))
        number.update(dict.fromkeys(others, len(own)))
    number[""] = -1
    step = np.fromiter(map(number.__getitem__, found), np.int64, len(found))
    key = TintKey(title, entries=tuple(entries), missing=int((step < 0).sum()))
    return Tint(key, net.codes, step, tuple(colours), found.__getitem__)


def _without(step: NDArray[np.int64]) -> str:
    missing = int((step < 0).sum())
    if not missing:
        return ""
    return f"{missing:,} without a value stay{'s' if missing == 1 else ''} plain."


def _readable(theme: Theme, wanted: str) -> str:
    """The colour, mixed with paper until the ink of the tags can be read on it."""
    low, high = 0.0, 1.0
    if contrast(theme["ink"], wanted) >= _READABLE:
        return wanted
    for _ in range(12):
        middle = (low + high) / 2
        fits = contrast(theme["ink"], mixed(theme["paper"], wanted, middle)) >= _READABLE
        low, high = (middle, high) if fits else (low, middle)
    return mixed(theme["paper"], wanted, low)


def _parted(values: str) -> tuple[str, ...]:
    return tuple(part.strip() for part in values.split(";") if part.strip())


def _number(text: str) -> float:
    try:
        return float(text.replace(",", "."))
    except ValueError:
        return float("nan")


def _decimal(value: float) -> str:
    return f"{value:.3f}".rstrip("0").rstrip(".") or "0"


def _percent(value: float) -> str:
    return f"{value * 100:.3g}%"


def _whole(value: float) -> str:
    return str(round(value))


def _plain(value: float) -> str:
    return f"{value:g}"
