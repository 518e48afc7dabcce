"""Files in and out: the book's own file, the plant table, the Data Package folder, graph formats.

Knows no Qt.  `read_book` opens whatever holds a book.
"""

from __future__ import annotations

from pathlib import Path

from pedigreeview.book.book import Book
from pedigreeview.book.faults import Fault, Place
from pedigreeview.exchange import data_package, plant_table

__all__ = ["TABLE_SUFFIXES", "read_book"]

TABLE_SUFFIXES = (".csv", ".tsv", ".txt")
"""Endings of files that are read as a plant table."""


def read_book(
    path: str | Path,
    *,
    text: str | None = None,
    founders_as: str | None = None,
    fixation: float | None = None,
) -> Book:
    """Read a book from its own file, a plant table or a Data Package folder.

    Parameters
    ----------
    path : a folder, its `datapackage.json`, or a .pedbook, .csv, .tsv or .txt file, a plant
        table as .xlsx or .ods, or a .json, .graphml or .gexf file of `formats`
    text : the plant table itself, when it is not to be read from `path`, which then only names it
    founders_as : 'variety' or 'plant': what a founder without a kind is, over the book's setting
    fixation : fixation of a variety that states none, over the book's setting

    Raises
    ------
    FileFaults : with everything that is wrong with the file or folder
    Fault : it cannot be read at all
    """
    path = Path(path)
    where = Place(file=str(path))
    if text is not None:
        return plant_table.parse(text, str(path), founders_as=founders_as, fixation=fixation)
    if path.is_dir() or path.name == data_package.DESCRIPTOR:
        return data_package.read(path, founders_as=founders_as, fixation=fixation)
    if not path.exists():
        raise Fault("There is no such file or folder.", where, "Check the name and the folder.")
    suffix = path.suffix.lower()
    if suffix == ".pedbook":
        from pedigreeview.exchange import pedbook

        return pedbook.read(path, founders_as=founders_as, fixation=fixation)
    if path.name.lower().endswith((".mcpd.csv", ".mcpd.tsv")):
        from pedigreeview.exchange.formats import read_path_as

        return read_path_as(path, founders_as=founders_as, fixation=fixation)
    if suffix in TABLE_SUFFIXES:
        return plant_table.read(path, founders_as=founders_as, fixation=fixation)
    if suffix == ".xls":
        raise Fault(
            "This is an old spreadsheet file, which is not read.",
            where,
            "Save it as .xlsx or .ods in the spreadsheet program and open that file.",
        )
    if suffix in (".xlsx", ".ods", ".json", ".graphml", ".gexf"):
        from pedigreeview.exchange.formats import read_path_as

        return read_path_as(path, founders_as=founders_as, fixation=fixation)
    raise Fault(
        f"A file that ends in {suffix!r} is not read." if suffix else "The file has no ending.",
        where,
        "Open a book (.pedbook), a plant table (.csv, .tsv, .txt, .xlsx, .ods) or the folder of a "
        "book.",
    )
