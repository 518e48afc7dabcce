"""Two books laid side by side: what is new, what is the same, what differs, and what clashes.

The same plant is recognised by its code.  Where two people gave one code to different plants, the
code of the other book is changed by a rule that the person sees first; nothing is ever written over
without being asked.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import dataclass, field, replace
from typing import TYPE_CHECKING, Any, Literal

from pedigreeview.book.book import Book
from pedigreeview.book.faults import FileFaults, Place
from pedigreeview.book.records import TABLES, Cross, Harvest, Photo, Plant, PollenCandidate, Record
from pedigreeview.book.references import references, split_codes
from pedigreeview.exchange import rules
from pedigreeview.exchange.cells import columns_of, to_cell
from pedigreeview.exchange.clashing_codes import RenameRule, proposed_names, with_names
from pedigreeview.exchange.same_origin import Origins, same_parents
from pedigreeview.exchange.ticking import Tick, no_tick, ticked

if TYPE_CHECKING:
    from pedigreeview.book.edits import Edit

__all__ = ["Comparison", "Difference", "RenameRule", "compare", "merge", "proposed_names"]

Side = Literal["mine", "theirs"]

_LISTS = tuple(name for name, record in TABLES.items() if len(record.KEY) != 1)
_ORIGIN = ("raised", "cross", "source", "selfings")
_PARENTS = ("seed_parent", "pollen_parent", "intended", "drawn", "direction_known")
_TOGETHER = {"plants": _ORIGIN, "crosses": _PARENTS}
"""Columns that say together where something came from; they are taken together or not at all."""

_ADDED = (
    "plants", "crosses", "pollen_lots", "pollinations", "harvests", "packets", "sowings",
    "traits", "loci", "bookmarks", "notes", "accepted_checks",
)  # fmt: skip
_LAST = 3
"""How many of these come after all other tables."""


@dataclass(frozen=True, slots=True)
class Difference:
    """One column of one record that the two books say differently.

    `field` is a column, or 'parents' for where a plant came from; `theirs_filled_in` says that mine
    is blank, so that taking theirs loses nothing.
    """

    table: str
    key: str
    field: str
    mine: str
    theirs: str

    @property
    def usual(self) -> Side:
        """What is taken unless the person says otherwise: mine, unless mine is blank."""
        return "mine" if self.mine else "theirs"


@dataclass(slots=True)
class Comparison:
    """What would come in.

    names : (table, their key) and the key that it gets, where that is another
    new : records to be added, each table in the order of the other book
    differences : what the person is asked, mine and theirs side by side
    same : records that both books have
    """

    mine: Book
    theirs: Book
    names: dict[tuple[str, str], str] = field(default_factory=dict)
    new: list[Record] = field(default_factory=list)
    differences: list[Difference] = field(default_factory=list)
    same: int = 0
    settings: list[str] = field(default_factory=list)
    """Settings of the other book that differ and are left alone, one sentence each."""
    _updates: dict[tuple[str, str], dict[str, Any]] = field(default_factory=dict)

    def apply(
        self,
        edit: Edit,
        choose: Mapping[Difference, Side] | Side | None = None,
        *,
        photo: Callable[[str], bytes | None] | None = None,
        tick: Tick = no_tick,
    ) -> None:
        """Put what comes in into an edit of my book.

        Parameters
        ----------
        edit : over the snapshot that was compared, or a later one
        choose : 'mine' or 'theirs' for all differences, or for each; None: their `usual`
        photo : the bytes of a photo of the other book, by its file name
        tick : called now and then; where it raises, the edit is not to be kept

        Raises
        ------
        Fault : the book was changed meanwhile so that something no longer fits
        FileFaults : what came in would break a rule of the book; the edit is not to be kept
        """
        wanted = self._wanted(choose, tick)
        dropped = self._followers(wanted, tick)
        later: list[Record] = []
        for record in ticked(_in_order(self.new), tick):
            if isinstance(record, Cross | PollenCandidate) and record.cross in dropped:
                continue
            if isinstance(record, Plant):
                # Parents may come later in the book; what a plant came from is said afterwards.
                edit.add(replace(record, cross="", source="", raised="", selfings=0))
                later.append(record)
            elif isinstance(record, Harvest) and record.packet:
                # A harvest names the packet that it went into, and the packet its harvest.
                edit.add(replace(record, packet=""))
                later.append(record)
            elif isinstance(record, Photo) and photo is not None and (data := photo(record.photo)):
                edit.add_photo(record, data)
            else:
                edit.add(record)
        for record in ticked(later, tick):
            held = getattr(edit.book, record.TABLE)[getattr(record, record.KEY[0])]
            names = _ORIGIN if isinstance(record, Plant) else ("packet",)
            edit.update(held, **{name: getattr(record, name) for name in names})
        for (table, code), values in ticked(wanted.items(), tick):
            edit.update(getattr(edit.book, table)[code], **values)
        self._check(edit.book, tick)

    def _wanted(
        self, choose: Mapping[Difference, Side] | Side | None, tick: Tick
    ) -> dict[tuple[str, str], dict[str, Any]]:
        wanted: dict[tuple[str, str], dict[str, Any]] = {}
        for difference in ticked(self.differences, tick):
            side = choose if isinstance(choose, str) else (choose or {}).get(difference)
            if (side or difference.usual) != "theirs":
                continue
            key = difference.table, difference.key
            together = difference.field == "parents"
            names = _TOGETHER[difference.table] if together else (difference.field,)
            for name in names:
                wanted.setdefault(key, {})[name] = self._updates[key][name]
        return wanted

    def _followers(self, wanted: dict[tuple[str, str], dict[str, Any]], tick: Tick) -> set[str]:
        """Their crosses that nothing needs: all of their plants are mine, with the same parents."""
        new = {record.cross for record in self.new if isinstance(record, Cross)}
        used = {str(values["cross"]) for values in wanted.values() if values.get("cross")}
        for record in ticked(self.new, tick):
            if isinstance(record, PollenCandidate):
                continue
            for reference in references(record.TABLE):
                if "crosses" not in reference.tables:
                    continue
                text = getattr(record, reference.column)
                if reference.said:
                    used.add(text.removeprefix("cross "))
                else:
                    used.update(split_codes(text) if reference.many else (text,))
        tick()
        own = {self.names.get(("crosses", code), code): code for code in self.theirs.crosses}
        tick()
        with_plants = {plant.cross for plant in self.theirs.plants.values()}
        return {code for code in new - used if own.get(code, code) in with_plants}

    def _check(self, book: Book, tick: Tick) -> None:
        def where(record: Record, column: str) -> Place:
            return Place(column=column, plant=getattr(record, "plant", ""))

        faults = rules.faults(book, where, names=False, tick=tick)
        if not faults:
            return
        before = {fault.what for fault in rules.faults(self.mine, where, names=False, tick=tick)}
        faults = [fault for fault in faults if fault.what not in before]
        if faults:
            raise FileFaults(str(self.theirs.path or ""), faults)


def _in_order(records: list[Record]) -> list[Record]:
    """Each record after those that it names; plants first, and words about others last."""
    order = {name: at for at, name in enumerate(_ADDED)}
    return sorted(records, key=lambda record: order.get(record.TABLE, len(_ADDED) - _LAST - 0.5))


def compare(
    mine: Book,
    theirs: Book,
    *,
    names: Mapping[tuple[str, str], str] | None = None,
    tick: Tick = no_tick,
) -> Comparison:
    """Lay another book beside mine.

    Parameters
    ----------
    mine, theirs : neither is changed
    names : keys of the other book that get another name, as `proposed_names` gives them; a key that
        is not among them means the same record in both books
    tick : called now and then; may raise `Cancelled`
    """
    names = dict(names or {})
    found = Comparison(mine, theirs, names)
    renamed_book = Book(settings=theirs.settings)
    for table in TABLES:
        for record in ticked(theirs.table(table), tick):
            other = with_names(record, names)
            held = getattr(renamed_book, table)
            if isinstance(held, dict):
                held[getattr(other, other.KEY[0])] = other
            else:
                held.append(other)
    own_origins, their_origins = Origins(mine), Origins(renamed_book)
    for table, kind in TABLES.items():
        if table in _LISTS:
            _compare_list(found, table, renamed_book, tick)
            continue
        own = getattr(mine, table)
        for key, other in ticked(getattr(renamed_book, table).items(), tick):
            if key not in own:
                found.new.append(other)
            elif kind is Plant:
                found.same += 1
                _compare_plant(found, own[key], other, own_origins, their_origins)
            elif isinstance(other, Cross):
                found.same += 1
                _compare_cross(found, own[key], other, own_origins, their_origins)
            else:
                found.same += 1
                _compare_record(found, own[key], other)
    _settings(found)
    return found


def _compare_list(found: Comparison, table: str, theirs: Book, tick: Tick) -> None:
    own = found.mine.table(table)
    keyed = TABLES[table].KEY
    held = {_whole(record) for record in ticked(own, tick)}
    keys = {tuple(getattr(record, name) for name in keyed) for record in own} if keyed else set()
    crosses = set(found.mine.crosses)
    for record in ticked(theirs.table(table), tick):
        if _whole(record) in held:
            found.same += 1
        elif keyed and (
            tuple(getattr(record, name) for name in keyed) in keys
            or getattr(record, "cross", "") in crosses
        ):
            # Odds of a cross that is mine already belong to its parents, which are told as one.
            found.same += 1
        else:
            found.new.append(record)


def _whole(record: Record) -> tuple[Any, ...]:
    return tuple(getattr(record, column.name) for column in columns_of(record.TABLE))


def _compare_plant(
    found: Comparison, own: Plant, other: Plant, mine: Origins, theirs: Origins
) -> None:
    values = found._updates.setdefault(("plants", own.plant), {})
    mine_text, their_text = mine.plant(own), theirs.plant(other)
    if their_text and mine_text != their_text:
        values.update((name, getattr(other, name)) for name in _ORIGIN)
        found.differences.append(Difference("plants", own.plant, "parents", mine_text, their_text))
    _compare_record(found, own, other, but=(*_ORIGIN, "plant"))


def _compare_cross(
    found: Comparison, own: Cross, other: Cross, mine: Origins, theirs: Origins
) -> None:
    values = found._updates.setdefault(("crosses", own.cross), {})
    mine_text, their_text = mine.cross(own), theirs.cross(other)
    says_less = own.direction_known and not other.direction_known
    if mine_text != their_text and not (says_less and same_parents(mine, own, theirs, other)):
        values.update((name, getattr(other, name)) for name in _PARENTS)
        blank = mine_text == "? × ?"
        found.differences.append(
            Difference("crosses", own.cross, "parents", "" if blank else mine_text, their_text)
        )
    _compare_record(found, own, other, but=_PARENTS)


def _compare_record(
    found: Comparison, own: Record, other: Record, *, but: tuple[str, ...] = ()
) -> None:
    key = getattr(own, own.KEY[0])
    values = found._updates.setdefault((own.TABLE, key), {})
    for column in columns_of(own.TABLE):
        if column.name in but or column.name == own.KEY[0]:
            continue
        mine, theirs = getattr(own, column.name), getattr(other, column.name)
        if mine == theirs or theirs in ("", None) or theirs == column.default:
            continue
        values[column.name] = theirs
        text = "" if mine in ("", None) else to_cell(mine) or "0"
        if mine == column.default and not isinstance(mine, bool):
            text = ""
        found.differences.append(
            Difference(own.TABLE, key, column.name, text, to_cell(theirs) or "0")
        )
    extra = getattr(other, "extra", {})
    held: dict[str, str] = getattr(own, "extra", {})
    added = {name: text for name, text in extra.items() if text and name not in held}
    changed = {n: t for n, t in extra.items() if t and n in held and held[n] != t}
    if added or changed:
        values["extra"] = {**held, **extra}
        mine = "; ".join(f"{name}: {held[name]}" for name in changed)
        theirs = "; ".join(f"{name}: {text}" for name, text in {**added, **changed}.items())
        found.differences.append(Difference(own.TABLE, key, "extra", mine, theirs))


def _settings(found: Comparison) -> None:
    from dataclasses import fields

    for item in fields(found.mine.settings):
        if item.name in ("name", "extra", "code_pattern"):
            continue
        mine = getattr(found.mine.settings, item.name)
        theirs = getattr(found.theirs.settings, item.name)
        if theirs not in (item.default, "", None) and theirs != mine:
            found.settings.append(
                f"The setting {item.name.replace('_', ' ')} of the other book, {theirs}, is left "
                f"alone; yours is {mine if mine not in ('', None) else 'not set'}."
            )


def merge(
    mine: Book,
    theirs: Book,
    rule: RenameRule | None = None,
    choose: Mapping[Difference, Side] | Side | None = None,
    *,
    tick: Tick = no_tick,
) -> tuple[Book, Comparison]:
    """A new book that holds both; neither of the two is changed.

    Parameters
    ----------
    mine, theirs : the books
    rule : how clashing codes of the other book are changed (`proposed_names` shows them first)
    choose : which side to take where they differ (see `Comparison.apply`)
    tick : called now and then; may raise `Cancelled`

    Raises
    ------
    Fault : something of the other book cannot stand in mine
    """
    from pedigreeview.book.edits import Edit

    names = proposed_names(mine, theirs, rule, tick)
    comparison = compare(mine, theirs, names=names, tick=tick)
    edit = Edit(mine, "Merge two books")
    comparison.apply(edit, choose, tick=tick)
    return edit.book, comparison
