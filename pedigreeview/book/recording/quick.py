"""Quick entry: one typed line, such as 'TP x BA 12 flowers bag today', read as what is to be done.

The line begins with a verb, or with two plants and a cross sign between them; the rest is codes,
counts with a word behind them, and a date.  `read_line` only reads: it says in words what it
understood and gives the function that records it.
"""

from __future__ import annotations

import datetime
import re
from collections.abc import Callable
from dataclasses import dataclass, field
from typing import TYPE_CHECKING, Any

from pedigreeview.book.book import Book
from pedigreeview.book.faults import Fault, Place
from pedigreeview.book.recording.blooms import record_bloom
from pedigreeview.book.recording.codes import did_you_mean
from pedigreeview.book.recording.crosses import record_cross, record_open, record_selfing
from pedigreeview.book.recording.harvests import record_harvest
from pedigreeview.book.recording.notes import record_note
from pedigreeview.book.recording.plants import clone, raise_plants, set_status
from pedigreeview.book.recording.pollinations import BUDS, COVERS, record_fruits, record_pollination
from pedigreeview.book.recording.scores import record_score
from pedigreeview.book.recording.sowings import record_sowing
from pedigreeview.book.recording.typed_dates import Order, shown, typed_date

if TYPE_CHECKING:
    from pedigreeview.book.edits import Edit

__all__ = ["EXAMPLES", "QuickEntry", "read_line"]

EXAMPLES = (
    "TP x BA both",
    "TP x BA 12 flowers bag tag 17 today",
    "self 23-07",
    "pollinate 24-03 8 flowers closed yesterday",
    "harvest 24-03 7 fruits 24 seeds",
    "sow 24-03 20 seeds 3.4.",
    "raise 24-03 24",
    "keep 23-07 23-19",
    "cull 23-08",
    "cut 23-07 3",
    "score 23-07 sweet 8",
    "flower 23-07 2.6.",
    "note 23-07 split pods after rain",
)
"""One of each kind, to be shown to who asks what can be typed."""

_SIGNS = ("x", "X", "×", "*")
_COUNTED = {
    "flower": "flowers",
    "flowers": "flowers",
    "bud": "flowers",
    "buds": "flowers",
    "fruit": "fruits",
    "fruits": "fruits",
    "pod": "fruits",
    "pods": "fruits",
    "berries": "fruits",
    "set": "fruits",
    "seed": "seeds",
    "seeds": "seeds",
    "plants": "plants",
    "plant": "plants",
    "lost": "lost",
    "dropped": "lost",
}
_FILLERS = ("bud", "of", "from", "the", "on", "and", "as", "with")
_VERBS = {
    "self": "self",
    "open": "open",
    "cross": "cross",
    "plan": "cross",
    "pollinate": "pollinate",
    "pollinated": "pollinate",
    "fruits": "fruits",
    "harvest": "harvest",
    "harvested": "harvest",
    "sow": "sow",
    "sown": "sow",
    "sowed": "sow",
    "raise": "raise",
    "raised": "raise",
    "keep": "kept",
    "kept": "kept",
    "cull": "culled",
    "culled": "culled",
    "lost": "lost",
    "cut": "cutting",
    "cutting": "cutting",
    "divide": "division",
    "score": "score",
    "flower": "flower",
    "flowers": "flower",
    "note": "note",
}


@dataclass(frozen=True, slots=True)
class QuickEntry:
    """What a line was read as.

    words : as the menu says it after 'Undo'
    said : one sentence for the person, before it is recorded
    record : makes the edit
    """

    words: str
    said: str
    record: Callable[[Edit], Any]


@dataclass(slots=True)
class _Parts:
    """The words of a line behind its verb, sorted."""

    codes: list[str] = field(default_factory=list)
    counts: dict[str, int] = field(default_factory=dict)
    number: int | None = None
    date: str = ""
    cover: str = ""
    bud: str = ""
    tag: str = ""
    by: str = ""
    both: bool = False
    made: bool = False


def read_line(
    text: str, book: Book, today: datetime.date, *, order: Order = "day-month"
) -> QuickEntry:
    """Read one line.

    Parameters
    ----------
    text : as typed; see `EXAMPLES`
    order : how '12/5' is read

    Raises
    ------
    Fault : it was not understood, with what was, or names what the book does not have
    """
    words = text.split()
    if not words:
        raise _not_understood("Nothing is typed yet.")
    if len(words) >= 3 and words[1] in _SIGNS:
        return _cross(words, book, today, order)
    verb = _VERBS.get(words[0].casefold())
    if verb is None:
        raise _not_understood(f"The line begins with {words[0]!r}.")
    rest = words[1:]
    if verb == "cross" and len(rest) >= 3 and rest[1] in _SIGNS:
        return _cross(rest, book, today, order)
    if verb == "note":
        return _note(rest, book, today)
    if verb == "score":
        return _score(rest, book, today, order)
    reader = _READERS.get(verb)
    if reader is None:
        raise _not_understood("A cross wants two plants with a sign between them.")
    parts = _sorted_out(rest, today, order)
    if not parts.codes:
        raise _not_understood(f"It is not said what to {words[0].casefold()}.")
    return reader(parts, book, today, verb)


def _not_understood(what: str) -> Fault:
    return Fault(what, Place(column="line"), f"Type it like '{EXAMPLES[1]}' or '{EXAMPLES[4]}'.")


def _sorted_out(words: list[str], today: datetime.date, order: Order) -> _Parts:
    """Sort words into codes, counts, a date and the rest."""
    parts = _Parts()
    at = 0
    while at < len(words):
        word, low = words[at], words[at].casefold().strip(",")
        following = words[at + 1] if at + 1 < len(words) else ""
        behind = words[at + 2] if at + 2 < len(words) else ""
        # In '3 lost 1' the word stands before its own number.
        counted = following.casefold() in _COUNTED and not (
            _COUNTED[following.casefold()] == "lost" and behind.isdigit()
        )
        if re.fullmatch(r"[0-9]{1,6}", low) and counted:
            parts.counts[_COUNTED[following.casefold()]] = int(low)
            at += 2
            continue
        if low in ("tag", "by") and following:
            setattr(parts, low, following)
            at += 2
            continue
        if low in _COUNTED and re.fullmatch(r"[0-9]{1,6}", following):
            parts.counts[_COUNTED[low]] = int(following)
            at += 2
            continue
        if low in _FILLERS and parts.codes:
            pass
        elif low in COVERS:
            parts.cover = low
        elif low == "petals" and following.casefold() == "off":
            parts.cover = "petals off"
            at += 1
        elif low in BUDS:
            parts.bud = low
        elif low in ("both", "⇄"):
            parts.both = True
        elif low in ("made", "planned"):
            parts.made = low == "made"
        else:
            taken = _date(words, at, today, order)
            if taken and parts.codes:
                parts.date, at = taken[0], at + taken[1]
                continue
            if parts.codes and re.fullmatch(r"[0-9]{1,6}", low):
                parts.number = int(low)
            else:
                parts.codes.append(word.strip(",;"))
        at += 1
    return parts


def _date(words: list[str], at: int, today: datetime.date, order: Order) -> tuple[str, int] | None:
    """A date at this place: in ISO form, and how many words it took."""
    for many in (3, 2, 1):
        text = " ".join(words[at : at + many])
        if len(words) < at + many or re.fullmatch(r"[0-9]+", text):
            continue
        if re.fullmatch(r"[0-9]{2}-[0-9]{2}.*", text):
            # A code such as 23-07 reads like a date; codes are meant far more often.
            continue
        try:
            return typed_date(text, today, order=order), many
        except Fault:
            continue
    return None


def _plants(book: Book, codes: list[str]) -> list[str]:
    for code in codes:
        if code not in book.plants:
            raise Fault(
                f"There is no plant {code!r} in this book.",
                Place(column="line", plant=code),
                did_you_mean(code, book.plants) or "Look it up, or record it first.",
            )
    return codes


def _known_cross(book: Book, code: str) -> str:
    """A cross by its code, or the latest one that the plant bears."""
    if code in book.crosses:
        return code
    borne = [cross.cross for cross in book.crosses.values() if cross.seed_parent == code]
    if code in book.plants and borne:
        return borne[-1]
    raise Fault(
        f"There is no cross {code!r} in this book.",
        Place(column="line"),
        did_you_mean(code, book.crosses) or "Record the cross first: 'TP x BA'.",
    )


def _day(date: str) -> str:
    return f", {shown(date)}" if date else ""


def _many(count: int | None, one: str, more: str) -> str:
    return "" if count is None else f"{count} {one if count == 1 else more}"


def _cross(words: list[str], book: Book, today: datetime.date, order: Order) -> QuickEntry:
    seed, pollen = words[0], words[2].strip(",")
    parts = _sorted_out(["", *words[3:]], today, order)
    _plants(book, [seed, pollen])
    left = [code for code in parts.codes if code]
    if left:
        raise _not_understood(f"{left[0]!r} was not understood.")
    flowers = parts.counts.get("flowers", parts.number)
    worked = flowers is not None or bool(parts.cover or parts.tag or parts.bud)
    made = worked or parts.made or bool(parts.date)
    date = parts.date or (today.isoformat() if worked else "")

    def record(edit: Edit) -> Any:
        crosses = record_cross(
            edit,
            seed,
            pollen,
            today=today,
            both_ways=parts.both,
            state="made" if made else "planned",
            made_on=date if made else "",
        )
        if not worked:
            return crosses
        return tuple(
            record_pollination(
                edit,
                cross.cross,
                today=today,
                date=date,
                flowers=flowers,
                cover=parts.cover,
                tag=parts.tag if place == 0 else "",
                by=parts.by,
                bud=parts.bud,
            )
            for place, cross in enumerate(crosses)
        )

    pair = f"{seed} {'⇄' if parts.both else '×'} {pollen}"
    said = f"Cross {pair}{', both directions' if parts.both else ''}"
    if worked:
        facts = [_many(flowers, "flower", "flowers"), parts.cover]
        facts += [f"bud {parts.bud}" if parts.bud else "", f"tag {parts.tag}" if parts.tag else ""]
        held = ", ".join(fact for fact in facts if fact)
        said += f", pollinated{': ' + held if held else ''}{_day(date)}"
    else:
        said += f", {'made' if made else 'planned'}{_day(date)}"
    return QuickEntry(f"cross {pair}", said + ".", record)


def _self(parts: _Parts, book: Book, today: datetime.date, verb: str) -> QuickEntry:
    codes = _plants(book, parts.codes)
    make = record_selfing if verb == "self" else record_open

    def record(edit: Edit) -> Any:
        return tuple(make(edit, code, today=today, made_on=parts.date) for code in codes)

    what = "selfing of" if verb == "self" else "open-pollinated seed of"
    held = ", ".join(codes)
    return QuickEntry(f"{what} {held}", f"{what.capitalize()} {held}{_day(parts.date)}.", record)


def _pollinate(parts: _Parts, book: Book, today: datetime.date, _: str) -> QuickEntry:
    cross = _known_cross(book, parts.codes[0])
    flowers = parts.counts.get("flowers", parts.number)
    date = parts.date or today.isoformat()

    def record(edit: Edit) -> Any:
        return record_pollination(
            edit,
            cross,
            today=today,
            date=date,
            flowers=flowers,
            cover=parts.cover,
            tag=parts.tag,
            by=parts.by,
            bud=parts.bud,
        )

    facts = [_many(flowers, "flower", "flowers"), parts.cover]
    facts += [f"bud {parts.bud}" if parts.bud else "", f"tag {parts.tag}" if parts.tag else ""]
    held = ", ".join(fact for fact in facts if fact)
    said = f"Pollination of {cross}{': ' + held if held else ''}{_day(date)}."
    return QuickEntry(f"pollination of {cross}", said, record)


def _fruits(parts: _Parts, book: Book, today: datetime.date, _: str) -> QuickEntry:
    code = parts.codes[0]
    if code not in book.pollinations:
        cross = _known_cross(book, code)
        rows = [row.pollination for row in book.pollinations.values() if row.cross == cross]
        if not rows:
            raise Fault(
                f"No pollination of {cross} is recorded.",
                Place(column="line"),
                f"Record it first: 'pollinate {cross} 8 flowers'.",
            )
        code = rows[-1]
    fruits, lost = parts.counts.get("fruits", parts.number), parts.counts.get("lost")
    if fruits is None:
        raise _not_understood("It is not said how many fruits set.")

    def record(edit: Edit) -> Any:
        return record_fruits(edit, code, fruits=fruits, dropped=lost)

    gone = f", {lost} of them lost" if lost else ""
    said = f"Pollination {code}: {_many(fruits, 'fruit', 'fruits')} set{gone}."
    return QuickEntry(f"fruits of pollination {code}", said, record)


def _harvest(parts: _Parts, book: Book, today: datetime.date, _: str) -> QuickEntry:
    cross = _known_cross(book, parts.codes[0])
    fruits, seeds = parts.counts.get("fruits"), parts.counts.get("seeds", parts.number)
    date = parts.date or today.isoformat()

    def record(edit: Edit) -> Any:
        return record_harvest(edit, cross, today=today, date=date, fruits=fruits, seeds=seeds)

    facts = [_many(fruits, "fruit", "fruits"), _many(seeds, "seed", "seeds")]
    held = ", ".join(fact for fact in facts if fact)
    said = f"Harvest of {cross}{': ' + held if held else ''}, into a new packet{_day(date)}."
    return QuickEntry(f"harvest of {cross}", said, record)


def _sow(parts: _Parts, book: Book, today: datetime.date, _: str) -> QuickEntry:
    code = parts.codes[0]
    packet, source = _seed_of(book, code)
    seeds, date = parts.counts.get("seeds", parts.number), parts.date or today.isoformat()

    def record(edit: Edit) -> Any:
        return record_sowing(
            edit, today=today, packet=packet, sown_from=source, date=date, seeds=seeds
        )

    of = f"packet {packet}" if packet else source
    held = _many(seeds, "seed", "seeds")
    return QuickEntry(
        f"sowing of {packet or source}", f"Sowing of {held + ' of ' if held else ''}{of}"
        f"{_day(date)}.", record,
    )  # fmt: skip


def _seed_of(book: Book, code: str) -> tuple[str, str]:
    """The packet that is meant by its code or by that of a cross; else what is sown without one."""
    if code in book.packets:
        return code, ""
    if code in book.crosses:
        harvests = {row.harvest for row in book.harvests.values() if row.cross == code}
        held = [
            row.packet
            for row in book.packets.values()
            if row.harvest in harvests and (row.left is None or row.left > 0)
        ]
        return (held[-1], "") if held else ("", code)
    if code in book.plants:
        return "", code
    known = [*book.packets, *book.crosses, *book.plants]
    raise Fault(
        f"There is no packet, cross or plant {code!r} in this book.",
        Place(column="line"),
        did_you_mean(code, known) or "Record it first.",
    )


def _raise(parts: _Parts, book: Book, today: datetime.date, _: str) -> QuickEntry:
    of = parts.codes[0]
    plant = book.plants.get(of)
    if plant is None or not book.is_pool(plant):
        # Seed of one plant is that of a cross which it bore, such as its selfing.
        of = _known_cross(book, of)
    count = parts.counts.get("plants", parts.number)
    if not count:
        raise _not_understood("It is not said how many plants.")

    def record(edit: Edit) -> Any:
        return raise_plants(edit, of, count, today=today, sown=parts.date)

    held = _many(count, "plant", "plants")
    return QuickEntry(f"{held} of {of}", f"{held} raised from {of}{_day(parts.date)}.", record)


def _status(parts: _Parts, book: Book, today: datetime.date, verb: str) -> QuickEntry:
    codes = _plants(book, parts.codes)
    date = parts.date or today.isoformat()

    def record(edit: Edit) -> Any:
        return set_status(edit, codes, verb, date=date)

    held = ", ".join(codes)
    return QuickEntry(f"{held}: {verb}", f"{held}: {verb}{_day(date)}.", record)


def _clone(parts: _Parts, book: Book, today: datetime.date, verb: str) -> QuickEntry:
    (source,) = _plants(book, parts.codes[:1])
    count, date = parts.number or 1, parts.date or today.isoformat()

    def record(edit: Edit) -> Any:
        return clone(edit, source, count, today=today, way=verb, date=date)

    held = _many(count, verb, f"{verb}s")
    return QuickEntry(f"{held} of {source}", f"{held} of {source}{_day(date)}.", record)


def _flower(parts: _Parts, book: Book, today: datetime.date, _: str) -> QuickEntry:
    codes = _plants(book, parts.codes)
    date = parts.date or today.isoformat()

    def record(edit: Edit) -> Any:
        return tuple(record_bloom(edit, code, first=date) for code in codes)

    held = ", ".join(codes)
    return QuickEntry(f"first flower of {held}", f"First flower of {held}{_day(date)}.", record)


def _note(words: list[str], book: Book, today: datetime.date) -> QuickEntry:
    if len(words) < 2:
        raise _not_understood("It is not said what to note of which plant.")
    (code,), text = _plants(book, words[:1]), " ".join(words[1:])

    def record(edit: Edit) -> Any:
        return record_note(edit, "plants", code, text, date=today.isoformat())

    return QuickEntry(f"note on {code}", f"Note on {code}: {text}", record)


def _score(words: list[str], book: Book, today: datetime.date, order: Order) -> QuickEntry:
    if len(words) < 3:
        raise _not_understood("A score wants a plant, a trait and a value.")
    (code,) = _plants(book, words[:1])
    rest = words[1:]
    names = {name.casefold(): name for name in book.traits}
    for many in range(len(rest) - 1, 0, -1):
        name = names.get(" ".join(rest[:many]).casefold())
        if name is not None:
            break
    else:
        raise Fault(
            f"There is no trait {rest[0]!r} in this book.",
            Place(column="line", plant=code),
            did_you_mean(rest[0], book.traits) or "Record the trait first.",
        )
    value, date = rest[many:], today.isoformat()
    if len(value) > 1:
        taken = _date(value, 1, today, order)
        if taken and taken[1] == len(value) - 1:
            value, date = value[:1], taken[0]
    typed = " ".join(value)

    def record(edit: Edit) -> Any:
        return record_score(edit, code, name, typed, date=date)

    return QuickEntry(f"score of {code}: {name}", f"{code}: {name} {typed}{_day(date)}.", record)


_READERS: dict[str, Callable[[_Parts, Book, datetime.date, str], QuickEntry]] = {
    "self": _self,
    "open": _self,
    "pollinate": _pollinate,
    "fruits": _fruits,
    "harvest": _harvest,
    "sow": _sow,
    "raise": _raise,
    "kept": _status,
    "culled": _status,
    "lost": _status,
    "cutting": _clone,
    "division": _clone,
    "flower": _flower,
}
