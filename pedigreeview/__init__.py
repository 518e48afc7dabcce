"""The crossing book of people who cross plants by hand.

    import pedigreeview
    net = pedigreeview.read("my_plants.csv")
    net.coancestry("TP", "21-01-3")

`read` gives a `pedigreeview.network.PedigreeNetwork`; nothing slow is imported before it is called.
"""

from __future__ import annotations

from os import PathLike
from pathlib import Path
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from pedigreeview.network import PedigreeNetwork

__all__ = ["__version__", "read"]

__version__ = "0.1.0"


def read(
    path: str | PathLike[str],
    *,
    founders_as: str | None = None,
    fixation: float | None = None,
) -> PedigreeNetwork:
    """Read a book, a plant table or a Data Package folder into a network.

    Parameters
    ----------
    path : a .pedbook; a plant table as .csv, .tsv, .txt, .xlsx or .ods; a Data Package folder or
        its datapackage.json; a .graphml, .gexf or .json file; passport data (.mcpd.csv, .mcpd.tsv)
    founders_as : 'variety' or 'plant': what a founder is that does not say; None: the book's
        setting, else a variety
    fixation : 0 to 1, the fixation of a founder variety that does not say; None: the book's
        setting, else 1, a pure line

    What a record says itself wins over both.

    Raises
    ------
    Fault : the file is missing or cannot be read
    FileFaults : all that is wrong with its contents, together; nothing was taken in
    ValueError : `founders_as` or `fixation` is none of the values above

    Example
    -------
    >>> import pedigreeview
    >>> from pedigreeview.places import demo
    >>> net = pedigreeview.read(demo("two_peas_both_ways"))
    >>> net.inbreeding_exact("TP")
    Fraction(1, 1)
    """
    if founders_as not in (None, "variety", "plant"):
        raise ValueError(f"founders_as is 'variety' or 'plant', not {founders_as!r}")
    if fixation is not None and not 0 <= fixation <= 1:
        raise ValueError(f"fixation lies between 0 and 1, {fixation!r} does not")

    from pedigreeview.exchange import read_book
    from pedigreeview.network import PedigreeNetwork

    book = read_book(Path(path), founders_as=founders_as, fixation=fixation)
    return PedigreeNetwork.from_records(book)
