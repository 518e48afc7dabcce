"""`import`: any table into a new book or into one that has records; `merge`: two books into one."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from pathlib import Path
from typing import TYPE_CHECKING, Any

from pedigreeview.book.faults import Fault, Place
from pedigreeview.book.ticks import Tick, no_tick
from pedigreeview.commands.answer import Answer, counted
from pedigreeview.commands.columns import set_in_columns
from pedigreeview.commands.convert import STREAM, stream_bytes, target_format, write_target
from pedigreeview.commands.streams import say

if TYPE_CHECKING:
    from pedigreeview.book.book import Book
    from pedigreeview.exchange.import_plan import ImportPlan
    from pedigreeview.exchange.importing import Imported
    from pedigreeview.exchange.merging import Comparison
    from pedigreeview.exchange.spreadsheets import Sheets

__all__ = ["import_table", "merge_books"]

_SHOWN = 12


def _pairs(words: Sequence[str], option: str) -> list[tuple[str, str]]:
    found = []
    for word in words:
        before, sign, after = word.rpartition("=")
        if not sign:
            raise Fault(
                f"{option} {word!r} has no '='.", None, f"Write it as {option} HEADING=MEANING."
            )
        found.append((before.strip(), after.strip()))
    return found


def _opened(source: str, tick: Tick) -> Sheets:
    from pedigreeview.exchange.spreadsheets import open_table, read_table

    if source == STREAM:
        return read_table(stream_bytes(), "standard input", tick)
    return open_table(source, tick)


def _plan(sheets: Sheets, chosen: Any, tick: Tick) -> ImportPlan:
    from pedigreeview.exchange.import_plan import guess_plan, meanings, unknown_marks

    table = sheets.named(chosen.sheet or "")
    heading: Any = "guess"
    if chosen.heading_row is not None:
        lines = [line for line, _ in table.rows]
        if chosen.heading_row not in (0, *lines):
            raise Fault(
                f"Row {chosen.heading_row} of the table is blank or not there.",
                Place(file=sheets.name),
                "Name the row with the headings, or 0 where there is none.",
            )
        heading = None if chosen.heading_row == 0 else lines.index(chosen.heading_row)
    plan = guess_plan(sheets, chosen.sheet or "", heading=heading, form=chosen.form, tick=tick)
    known = meanings(plan.form)
    for name, meaning in _pairs(chosen.column or (), "--column"):
        word, _, trait = meaning.partition(":")
        column = next(
            (c for c in plan.columns if c.heading == name or str(c.index + 1) == name), None
        )
        if column is None:
            raise Fault(
                f"The table has no column {name!r}.",
                Place(file=sheets.name),
                f"It has: {', '.join(c.heading or str(c.index + 1) for c in plan.columns)}.",
            )
        if word not in known:
            raise Fault(f"A column cannot mean {word!r}.", None, f"Use one of: {', '.join(known)}.")
        plan = plan.meaning(column.index, word, trait)
    if chosen.column:
        plan = replace(plan, marks=unknown_marks(table, replace(plan, marks={}), tick))
    if chosen.dates:
        plan = replace(plan, date_order=chosen.dates)
    if chosen.seed_parent_first:
        plan = replace(plan, seed_parent_first=True)
    marks: dict[str, Any] = dict(plan.marks)
    for mark, meaning in _pairs(chosen.unknown or (), "--unknown"):
        if meaning not in ("unknown", "open", "code"):
            raise Fault(f"A mark cannot mean {meaning!r}.", None, "Use unknown, open or code.")
        marks[mark] = meaning
    same = dict(_pairs(chosen.same or (), "--same"))
    return replace(plan, marks=marks, same=same)


def _plan_lines(sheets: Sheets, plan: ImportPlan) -> list[str]:
    from pedigreeview.exchange.import_plan import FORMS, meanings

    heading = plan.heading
    table = sheets.named(plan.sheet)
    row = "none" if heading is None else f"row {table.rows[heading][0]}"
    said = [f"Sheet {plan.sheet}, headings: {row}, {FORMS[plan.form]}."]
    known = meanings(plan.form)
    rows = [
        [column.heading or str(column.index + 1), known[column.meaning], column.why]
        for column in plan.columns
    ]
    return [*said, "", *set_in_columns(rows, ("column", "meaning", "because"))]


def import_table(chosen: Any, base: Book | None, tick: Tick = no_tick) -> Answer:
    """Read a table by a plan and write what comes of it.

    Parameters
    ----------
    chosen : the words of the command
    base : the book of `--into`, or None
    tick : called now and then; where it raises, nothing is written
    """
    from pedigreeview.exchange.importing import carry_out, preview
    from pedigreeview.exchange.same_plants import look_alikes

    sheets = _opened(chosen.file, tick)
    plan = _plan(sheets, chosen, tick)
    alike = [
        group
        for group in look_alikes(sheets, plan, base, tick)
        if not set(group.codes) & set(plan.same)
    ]
    for group in alike[:_SHOWN]:
        say(
            f"May be one plant: {', '.join(map(repr, group.codes))}. {group.why} "
            f"To take one for the other say --same {group.codes[1]}={group.proposed}"
        )
    if chosen.preview:
        shown = preview(sheets, plan, rows=_SHOWN, tick=tick)
        lines = [*_plan_lines(sheets, plan), ""]
        lines += set_in_columns(
            [[str(line), *cells] for line, cells in shown.rows], ("row", *shown.headings)
        )
        for sentence in shown.missing:
            say(sentence)
        for fault in shown.faults:
            say(fault.sentence())
        return Answer(lines)
    if chosen.target is None and not (base is not None and _own_file(chosen.into)):
        raise Fault("TO must be given.", None, "See pedigreeview import --help.")
    imported = carry_out(sheets, plan, base, tick=tick)
    for line in imported.report.lines():
        say(line)
    _say_differences(imported.comparison, chosen.take)
    words = f"Import {Path(chosen.file).name}" if chosen.file != STREAM else "Import a table"
    return _written(imported, chosen, base, words, tick)


def _own_file(path: str | None) -> bool:
    from pedigreeview.exchange import pedbook

    return path is not None and pedbook.is_pedbook(path)


def _say_differences(comparison: Comparison | None, take: str | None) -> None:
    if comparison is None:
        return
    for difference in comparison.differences[:_SHOWN]:
        side = take or difference.usual
        say(
            f"{difference.key}, {difference.field.replace('_', ' ')}: yours "
            f"{difference.mine or 'blank'!s}, theirs {difference.theirs}; "
            f"{'yours stays' if side == 'mine' else 'theirs is taken'}."
        )
    more = len(comparison.differences) - _SHOWN
    if more > 0:
        say(f"{more} more differences.")
    for sentence in comparison.settings:
        say(sentence)


def _written(imported: Imported, chosen: Any, base: Book | None, words: str, tick: Tick) -> Answer:
    from pedigreeview.network import PedigreeNetwork

    if base is None:
        net = PedigreeNetwork.from_records(imported.book)
        return write_target(
            net, chosen.target, target_format(chosen.target, chosen.to), _source(chosen),
            replace=chosen.replace,
        )  # fmt: skip
    if chosen.target is None:
        from pedigreeview.book.book_file import BookFile

        with BookFile.open(chosen.into, tick=tick) as file:
            with file.edit(words) as edit:
                imported.apply(edit, chosen.take, tick=tick)
            net = PedigreeNetwork.from_records(file.book)
        plants = counted(len(net.book.plants), "plant")
        return Answer([f"Wrote {chosen.into}: {plants}."], None, net.problems())
    from pedigreeview.book.edits import Edit

    edit = Edit(base, words)
    imported.apply(edit, chosen.take, tick=tick)
    net = PedigreeNetwork.from_records(edit.book)
    held = target_format(chosen.target, chosen.to)
    return write_target(net, chosen.target, held, Path(chosen.into), replace=chosen.replace)


def _source(chosen: Any) -> Path | None:
    return None if chosen.file == STREAM else Path(chosen.file)


def merge_books(mine: Book, theirs: Book, chosen: Any, tick: Tick = no_tick) -> Answer:
    """Write two books as one; clashing codes of the second are changed by a rule, shown first.

    tick : called now and then; where it raises, nothing is written
    """
    from pedigreeview.exchange.merging import RenameRule, compare, proposed_names
    from pedigreeview.network import PedigreeNetwork

    rule = RenameRule(chosen.before, chosen.behind if chosen.behind is not None else " (2)")
    if chosen.behind is None and chosen.before:
        rule = RenameRule(chosen.before, "")
    names = proposed_names(mine, theirs, rule, tick)
    for (table, old), new in names.items():
        say(f"Clashes in {table.replace('_', ' ')}: their {old!r} becomes {new!r}.")
    comparison = compare(mine, theirs, names=names, tick=tick)
    _say_differences(comparison, chosen.take)
    new = counted(len(comparison.new), "new record")
    differ = counted(len(comparison.differences), "difference")
    said = f"{new}, {comparison.same} in both books, {differ}"
    if chosen.preview:
        return Answer([f"{said}."])
    if chosen.target is None:
        raise Fault("TO must be given.", None, "See pedigreeview merge --help.")
    from pedigreeview.book.edits import Edit

    edit = Edit(mine, "Merge two books")
    comparison.apply(edit, chosen.take, photo=_photos(theirs), tick=tick)
    say(f"{said}.")
    net = PedigreeNetwork.from_records(edit.book)
    held = target_format(chosen.target, chosen.to)
    return write_target(net, chosen.target, held, Path(chosen.file), replace=chosen.replace)


def _photos(book: Book) -> Any:
    """The bytes of a photo of a book that was read from a folder."""

    def photo(name: str) -> bytes | None:
        if book.path is None or not book.path.is_dir() or Path(name).name != name:
            return None
        path = book.path / "photos" / name
        return path.read_bytes() if path.is_file() and not path.is_symlink() else None

    return photo
