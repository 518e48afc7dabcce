"""Traits of four kinds, and what may stand as a value of each."""

from __future__ import annotations

import re
from typing import TYPE_CHECKING

from pedigreeview.book.book import Book
from pedigreeview.book.faults import Fault, Place
from pedigreeview.book.look_alikes import sight
from pedigreeview.book.recording.fields import choice, number
from pedigreeview.book.recording.lookup import split_codes, trait_called
from pedigreeview.book.records import Trait

if TYPE_CHECKING:
    from pedigreeview.book.edits import Edit

__all__ = ["TYPES", "change_trait", "fitting_value", "misfits", "record_trait"]

TYPES = ("score", "measure", "category", "yes_no")
_YES = ("yes", "y", "true", "1", "x", "+", "✓")
_NO = ("no", "n", "false", "0", "-", "−")
_NUMBER = re.compile(r"[+−-]?[0-9]+(?:[.,][0-9]+)?\Z|[+−-]?[.,][0-9]+\Z")


def record_trait(
    edit: Edit,
    name: str,
    type_: str,
    *,
    unit: str = "",
    low: float | None = None,
    high: float | None = None,
    better: str = "",
    values: str = "",
    note: str = "",
) -> Trait:
    """Record something that is scored.

    Parameters
    ----------
    type_ : 'score' on a scale from low to high, 'measure' in a unit, 'category', 'yes_no'
    better : 'high', 'low' or 'none'
    values : of a category, parted by ';'

    Raises
    ------
    Fault : no name or one that is taken, a scale without both ends, a category of fewer than two
        values
    """
    title = " ".join(name.split())
    if not title:
        raise Fault("The trait has no name.", Place(column="trait"), "Write its name.")
    like = [other for other in edit.book.traits if sight(other) == sight(title)]
    if like:
        raise Fault(
            f"There is a trait '{like[0]}' already.",
            Place(column="trait"),
            "Score that one, or choose another name.",
        )
    trait = _trait(title, type_, unit, low, high, better, values, note)
    edit.add(trait)
    return trait


def _trait(
    name: str,
    type_: str,
    unit: str,
    low: float | None,
    high: float | None,
    better: str,
    values: str,
    note: str,
) -> Trait:
    kind = choice(type_, TYPES, "type")
    if not kind:
        raise Fault(
            f"The trait '{name}' has no kind.", Place(column="type"),
            "Choose a score, a measure, a category or yes/no.",
        )  # fmt: skip
    listed = list(dict.fromkeys(" ".join(value.split()) for value in split_codes(values)))
    least, most = number(low, "low"), number(high, "high")
    if kind == "score" and (least is None or most is None):
        raise Fault(
            f"The scale of '{name}' has no lowest or no highest score.",
            Place(column="low" if least is None else "high"),
            "Write both ends, such as 1 and 9.",
        )
    if least is not None and most is not None and least >= most:
        raise Fault(
            f"The scale of '{name}' ends at {most:g}, not above {least:g}.",
            Place(column="high"),
            "Write the lower end as 'low' and say under 'better' which end is good.",
        )
    if kind == "category" and len({value.casefold() for value in listed}) < 2:
        raise Fault(
            f"The category '{name}' has fewer than two values.",
            Place(column="values"),
            "Write them parted by ';', such as tall;dwarf.",
        )
    numbers = kind in ("score", "measure")
    return Trait(
        name,
        kind,
        " ".join(unit.split()) if numbers else "",
        least if numbers else None,
        most if numbers else None,
        choice(better, ("high", "low", "none"), "better"),
        ";".join(listed) if kind == "category" else "",
        note.strip(),
    )


def fitting_value(trait: Trait, text: str) -> str:
    """The text that is kept for a typed value; blank for a blank.

    A decimal comma and the unit behind a number are read; a category is found whatever its case, or
    by its beginning where only one value begins so; yes/no takes y, n, 1, 0, x and the like.

    Raises
    ------
    Fault : the value does not fit the trait
    """
    typed = " ".join(text.split())
    if not typed:
        return ""
    if trait.type in ("score", "measure"):
        return _numeric(trait, typed)
    if trait.type == "yes_no":
        if typed.casefold() in _YES:
            return "yes"
        if typed.casefold() in _NO:
            return "no"
        raise Fault(
            f"{typed!r} is neither yes nor no for '{trait.trait}'.",
            Place(column=trait.trait),
            "Write yes or no.",
        )
    values = split_codes(trait.values)
    if not values:
        return typed
    exact = [value for value in values if value.casefold() == typed.casefold()]
    found = exact or [value for value in values if value.casefold().startswith(typed.casefold())]
    if len(found) != 1:
        raise Fault(
            f"{typed!r} is not a value of '{trait.trait}'.",
            Place(column=trait.trait),
            f"Choose from: {', '.join(values)}.",
        )
    return found[0]


def _numeric(trait: Trait, typed: str) -> str:
    plain = typed
    if trait.unit and plain.casefold().endswith(trait.unit.casefold()):
        plain = plain[: -len(trait.unit)].strip()
    if not _NUMBER.match(plain):
        raise Fault(
            f"{typed!r} is no number for '{trait.trait}'.",
            Place(column=trait.trait),
            f"Write a number{f' in {trait.unit}' if trait.unit else ''}.",
        )
    plain = plain.replace(",", ".").replace("−", "-").removeprefix("+")
    value = float(plain)
    low, high = trait.low, trait.high
    if (low is not None and value < low) or (high is not None and value > high):
        bounds = f" from {low:g}" if low is not None else ""
        bounds += f" to {high:g}" if high is not None else ""
        raise Fault(
            f"{typed} lies outside the scale of '{trait.trait}'.",
            Place(column=trait.trait),
            f"Write a number{bounds}.",
        )
    return plain


def misfits(book: Book, trait: Trait) -> list[str]:
    """Values recorded under the trait's name that do not fit it as it is given here."""
    found = []
    for score in book.scores:
        if score.trait == trait.trait:
            try:
                fitting_value(trait, score.value)
            except Fault:
                found.append(score.value)
    return found


def change_trait(edit: Edit, name: str, **values: object) -> Trait:
    """Change the kind, unit, scale, values or note of a trait that is there.

    Raises
    ------
    Fault : no such trait, or scores recorded of it that would no longer fit
    """
    held = trait_called(edit.book, name)
    wanted = {
        item: values.get(item, getattr(held, item))
        for item in ("type", "unit", "low", "high", "better", "values", "note")
    }
    new = _trait(
        held.trait, str(wanted["type"]), str(wanted["unit"]),
        wanted["low"], wanted["high"],  # type: ignore[arg-type]
        str(wanted["better"]), str(wanted["values"]), str(wanted["note"]),
    )  # fmt: skip
    before = set(misfits(edit.book, held))
    bad = [value for value in misfits(edit.book, new) if value not in before]
    if bad:
        shown = ", ".join(dict.fromkeys(bad[:5]))
        raise Fault(
            f"{len(bad)} {'score' if len(bad) == 1 else 'scores'} of '{held.trait}' would no "
            f"longer fit, such as {shown}.",
            Place(column="type"),
            "Correct these scores first, or keep the scale wide enough for them.",
        )
    updated = edit.update(
        held, **{item: getattr(new, item) for item in wanted if item in values or item != "note"}
    )
    assert isinstance(updated, Trait)
    return updated
