"""A plant table read column by column: the road for large tables without a flaw.

It gives the very book that the row-by-row road of `plant_table` gives, kept as columns.  Where
anything wants a closer look (a flaw, odds, a word on how a cross was drawn) it gives up, and the
table is read row by row, which names what is wrong.
"""

from __future__ import annotations

from itertools import repeat
from typing import Any, NamedTuple

from pedigreeview.book.book import Book
from pedigreeview.book.memory import uncollected
from pedigreeview.book.records import Plant, columns
from pedigreeview.exchange import rules
from pedigreeview.exchange.cells import code_flaw, value
from pedigreeview.exchange.table_headings import KNOWN, founders_remark, read_headings
from pedigreeview.exchange.table_writing import cross_name
from pedigreeview.exchange.text_files import Columns, columns_below
from pedigreeview.exchange.ticking import Tick, no_tick

__all__ = ["fill_from_columns"]

_NOT_CELLS = ("plant", "cross", "source")
_NO_ROW = -2
_FOUNDER, _CROSS, _FROM_POOL, _FROM_PLANT = 1, 2, 3, 4
_RAISED = (
    {"": 0, "founder": _FOUNDER, "cross": _CROSS}
    | dict.fromkeys(rules.FROM_POOL, _FROM_POOL)
    | dict.fromkeys(rules.FROM_PLANT, _FROM_PLANT)
)


class _GiveUp(Exception):
    """The table is to be read row by row."""


def fill_from_columns(book: Book, text: str, name: str, tick: Tick = no_tick) -> bool:
    """Fill an empty book with a plant table; False, and the book as it was, where it gives up.

    Parameters
    ----------
    book : its settings are in force
    text : the table, without byte order mark
    name : stands for the file
    tick : called now and then; may raise `Cancelled`
    """
    try:
        with uncollected():
            remarks = _read(book, text, name, tick)
    except _GiveUp:
        return False
    book.remarks += remarks
    return True


def _read(book: Book, text: str, name: str, tick: Tick) -> list[str]:
    cut = columns_below(text, name, KNOWN, tick)
    if cut is None:
        raise _GiveUp
    found, texts = cut
    headings = read_headings(found, name)
    if headings.faults or not headings.complete or not texts[0]:
        raise _GiveUp
    texts = _without_blank_rows(texts, headings.official["plant"])
    official = {column: texts[index] for column, index in headings.official.items()}
    extra = {column: texts[index] for column, index in headings.extra.items()}
    # The texts of the parents are let go as soon as their places are known.
    del texts, cut
    return headings.remarks + _fill(book, official, extra, tick, comma=found.decimal_comma)


def _without_blank_rows(texts: Columns, plant: int) -> Columns:
    """Leave out rows of blank cells, such as spreadsheets write below the last row."""
    if "" not in texts[plant]:
        return texts
    kept = [place for place, cells in enumerate(zip(*texts, strict=True)) if any(cells)]
    texts = [[column[place] for place in kept] for column in texts]
    if not kept or "" in texts[plant]:
        raise _GiveUp
    return texts


def _fill(
    book: Book,
    official: dict[str, list[str]],
    extra: dict[str, list[str]],
    tick: Tick,
    *,
    comma: bool,
) -> list[str]:
    """Give the book the columns; what the person should know of it."""
    import numpy as np

    from pedigreeview.book.columns import PlantColumns, fill

    codes = official["plant"]
    plants = dict(zip(codes, range(len(codes)), strict=True))
    if len(plants) < len(codes) or _flawed(codes):
        raise _GiveUp
    if any(any(official.get(column, ())) for column in ("pollen_odds", "drawn")):
        raise _GiveUp
    tick()
    cells = _cells(official, comma)
    tick()
    seed, pollen, added = _parents(
        plants, official.pop("seed_parent"), official.pop("pollen_parent")
    )
    rows, count = len(codes), len(plants)
    raised = _numbered(cells["raised"], _RAISED)
    sourced = raised >= _FROM_POOL
    coded = official["cross"] if any(official.get("cross", ())) else []
    _refuse(sourced & ((pollen >= 0) | (seed < 0)))
    crossed = ~sourced & ((seed >= 0) | (pollen >= 0))
    _refuse((crossed & (raised == _FOUNDER)) | (~crossed & (raised == _CROSS)))

    source = np.full(count, -1, np.int64)
    source[:rows][sourced] = seed[sourced]
    tick()
    crosses = _crosses(list(plants), seed, pollen, crossed, coded)
    cross = np.full(count, -1, np.int64)
    cross[:rows] = crosses.of_row
    made = PlantColumns(
        plants, cells, extra, source, cross, crosses.codes, crosses.seed, crosses.pollen
    )
    _check(made, raised, book.settings.founders_as)
    tick()
    fill(book, made)
    return [founders_remark(added)] if added else []


def _numbered(words: list[str], numbers: dict[str, int]) -> Any:
    import numpy as np

    return np.fromiter(map(numbers.__getitem__, words), np.int8, len(words))


def _refuse(wrong: Any) -> None:
    if wrong.any():
        raise _GiveUp


def _flawed(codes: list[str]) -> bool:
    """Whether any of the codes may have a flaw; looks at all of them at once."""
    together = " ".join(codes)
    if ":" in together or ";" in together or "self" in together.casefold():
        return any(map(code_flaw, codes))
    # What is printable has no control character; what is not may have none either.
    return not together.isprintable() and any(map(code_flaw, codes))


def _cells(official: dict[str, list[str]], comma: bool) -> dict[str, list[Any]]:
    """The values of the columns of `Plant`, every distinct text read once."""
    rows = len(official["plant"])
    found: dict[str, list[Any]] = {"kind": [""] * rows, "raised": [""] * rows}
    for column in columns(Plant):
        texts = official.get(column.name)
        if texts is None or column.name in _NOT_CELLS:
            continue
        if column.kind == "text" and not column.choices:
            found[column.name] = texts
            continue
        values = {"": column.default}
        for text in set(texts) - {""}:
            values[text], flaw = value("plants", column, text, comma=comma, lenient=True)
            if flaw is not None:
                raise _GiveUp
        found[column.name] = list(map(values.__getitem__, texts))
    return found


def _parents(plants: dict[str, int], seeds: list[str], pollens: list[str]) -> tuple[Any, Any, Any]:
    """Places of the seed and pollen parents, −1 for none; parents without a row are added."""
    import numpy as np

    found = [
        np.fromiter(map(plants.get, texts, repeat(_NO_ROW)), np.int64, len(texts))
        for texts in (seeds, pollens)
    ]
    added: list[str] = []
    for row in np.flatnonzero((found[0] == _NO_ROW) | (found[1] == _NO_ROW)).tolist():
        for places, texts in zip(found, (seeds, pollens), strict=True):
            code = texts[row]
            if not code:
                places[row] = -1
            elif places[row] == _NO_ROW:
                if code not in plants:
                    added.append(code)
                places[row] = plants.setdefault(code, len(plants))
    if _flawed(added):
        raise _GiveUp
    return found[0], found[1], added


class _Crosses(NamedTuple):
    """The crosses of a table in the order of their first rows; `of_row` −1 where there is none."""

    codes: dict[str, int]
    seed: Any
    pollen: Any
    of_row: Any


def _crosses(codes: list[str], seed: Any, pollen: Any, crossed: Any, coded: list[str]) -> _Crosses:
    """One cross for the rows with a code, and one for the rows with the same parents and none."""
    import numpy as np

    rows = np.flatnonzero(crossed)
    mating = (seed[rows] + 1) * (len(codes) + 1) + pollen[rows] + 1
    key = mating
    given: list[str] = []
    if coded:
        number: dict[str, int] = {"": 0}
        of_code = np.fromiter(
            (number.setdefault(code, len(number)) for code in coded), np.int64, len(coded)
        )
        given = list(number)
        if _flawed(given[1:]):
            raise _GiveUp
        _refuse((of_code > 0) & ~crossed)
        key = np.where(of_code[rows] > 0, -of_code[rows], mating)
    # Sibs usually stand together, so runs are folded before they are sorted.
    begins = np.concatenate(([True], key[1:] != key[:-1]))[: len(key)]
    runs = np.flatnonzero(begins)
    _, pick, inverse = np.unique(key[runs], return_index=True, return_inverse=True)
    order = np.argsort(runs[pick], kind="stable")
    first = runs[pick][order]
    place = np.empty(len(order), np.int64)
    place[order] = np.arange(len(order))
    of_crossed = place[inverse][np.cumsum(begins) - 1]
    _refuse(mating[first][of_crossed] != mating)
    of_row = np.full(len(seed), -1, np.int64)
    of_row[rows] = of_crossed
    cross_seed, cross_pollen = seed[rows[first]], pollen[rows[first]]
    names = [given[-one] if one < 0 else "" for one in key[first].tolist()]
    named = _named(codes, cross_seed.tolist(), cross_pollen.tolist(), names)
    return _Crosses(
        dict(zip(named, range(len(named)), strict=True)), cross_seed, cross_pollen, of_row
    )


def _named(codes: list[str], seeds: list[int], pollens: list[int], given: list[str]) -> list[str]:
    """The code of every cross: its own, else the program's name, unlike any other."""
    parents = [*codes, ""]
    matings = [
        (parents[seed], parents[pollen]) for seed, pollen in zip(seeds, pollens, strict=True)
    ]
    named = [
        code or cross_name(*mating, (), taken=())
        for code, mating in zip(given, matings, strict=True)
    ]
    if len(set(named)) < len(named):
        taken = set(given) - {""}
        named = list(given)
        # Sorted, so that the order of the rows does not decide which cross gets which name.
        for mating, place in sorted(
            (mating, place) for place, mating in enumerate(matings) if not given[place]
        ):
            named[place] = cross_name(*mating, (), taken=taken)
            taken.add(named[place])
    return named


def _check(made: Any, raised: Any, founders_as: str) -> None:
    """Give up where the rules of a book may be broken (`rules.faults`)."""
    import numpy as np

    from pedigreeview.book.columns import KIND_NUMBERS

    kinds = made.kinds(founders_as)
    of_source = kinds[made.source[: made.rows]] != KIND_NUMBERS["plant"]
    _refuse(((raised == _FROM_POOL) & ~of_source) | ((raised == _FROM_PLANT) & of_source))
    if "fixation" in made.cells:
        stated = ~np.isnan(made.cell("fixation", float, np.nan))
        founder = (made.cross < 0) & (made.source < 0)
        _refuse(stated & ~founder & (kinds != KIND_NUMBERS["variety"]))
    if "selfings" in made.cells:
        _refuse((made.cell("selfings", np.int64, 0) > 0) & (made.cross < 0))
