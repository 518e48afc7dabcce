"""Matrices of coefficients as files: CSV or XLSX with codes on both sides, .npz for NumPy.

Cells are doubles in full; what is withheld is blank in a table and NaN in an array.
"""

from __future__ import annotations

import io
from collections.abc import Sequence
from pathlib import Path
from typing import TYPE_CHECKING, Any

import numpy as np
from numpy.typing import NDArray

from pedigreeview.book.faults import Fault, Place
from pedigreeview.exchange.spreadsheet_writing import table_text, workbook_bytes
from pedigreeview.exchange.writing import replace_file

if TYPE_CHECKING:
    from pedigreeview.network import PedigreeNetwork

__all__ = ["KINDS", "MOST_PLANTS", "matrix", "matrix_bytes", "write_matrix"]

KINDS: dict[str, str] = {
    "coancestry": "chance that a gene of the one and a gene of the other are alike by descent",
    "numerator": "numerator relationship, twice the coancestry; ploidy 2 alone",
    "relationship": "coancestry over the root of the product of both with themselves",
}
"""The matrices that can be written, with their meaning."""

MOST_PLANTS = 5_000
"""Plants of one matrix: 200 MB of doubles."""


def matrix(
    net: PedigreeNetwork, codes: Sequence[str], kind: str = "coancestry"
) -> NDArray[np.float64]:
    """Coefficients of every pair.

    Parameters
    ----------
    net : the network
    codes : m plants, in the order of rows and columns
    kind : one of `KINDS`

    Returns
    -------
    (m, m) float64, symmetric; NaN where the coefficient is withheld or cannot be

    Raises
    ------
    Fault : more than `MOST_PLANTS` plants, or the numerator relationship of other than ploidy 2
    ValueError : the kind is none of ours
    """
    if kind not in KINDS:
        raise ValueError(f"kind is one of {', '.join(KINDS)}, not {kind!r}")
    count = len(codes)
    if count > MOST_PLANTS:
        raise Fault(
            f"A matrix of {count} plants would be too large; {MOST_PLANTS} are the most.",
            None,
            "Name the plants that are wanted.",
        )
    known = {code: at for at, code in enumerate(net.codes)}
    places = np.array([known[code] for code in codes], np.int64)
    found = np.full((count, count), np.nan)
    withheld = net.withheld
    for at, code in enumerate(codes):
        if code not in withheld:
            found[at] = net.coancestry_with(code)[places]
    bad = [at for at, code in enumerate(codes) if code in withheld]
    found[:, bad] = np.nan
    if kind == "numerator":
        odd = next((c for c in codes if c not in withheld and net.ploidy(c) != 2), None)
        if odd is not None:
            raise Fault(
                f"{odd!r} has another ploidy than 2, where there is no numerator relationship.",
                Place(plant=odd),
                "Write the relationship or the coancestry.",
            )
        found *= 2
    elif kind == "relationship":
        # The diagonal is a plant with itself; a pool of fixation 0 has none.
        own = np.diagonal(found).copy()
        with np.errstate(divide="ignore", invalid="ignore"):
            found = found / np.sqrt(np.outer(own, own))
        found[~np.isfinite(found)] = np.nan
    return found


def matrix_bytes(
    net: PedigreeNetwork, codes: Sequence[str], suffix: str, kind: str = "coancestry"
) -> bytes:
    """The file of a matrix; `suffix` is '.csv', '.tsv', '.xlsx' or '.npz'.

    An .npz file holds `matrix`, `codes`, `kind` and `base` (the sentence on what founders were
    assumed to be); it is read by `numpy.load` without pickles.

    Raises
    ------
    Fault : the ending is none of these; see `matrix`
    """
    if suffix not in (".csv", ".tsv", ".xlsx", ".npz"):
        raise Fault(
            f"A matrix cannot be written to a file that ends in {suffix or 'nothing'}.",
            None,
            "Use .csv, .tsv, .xlsx or .npz.",
        )
    held = matrix(net, codes, kind)
    if suffix == ".npz":
        buffer = io.BytesIO()
        np.savez_compressed(
            buffer,
            matrix=held,
            codes=np.array(list(codes), dtype=np.str_),
            kind=np.array(kind),
            base=np.array(net.base_sentence()),
        )
        return buffer.getvalue()
    rows: list[list[Any]] = [
        [code, *values] for code, values in zip(codes, held.tolist(), strict=True)
    ]
    headings = [kind, *codes]
    if suffix == ".xlsx":
        base = [[net.base_sentence()]]
        return workbook_bytes([(kind, headings, rows), ("base", ["base"], base)])
    separator = "\t" if suffix == ".tsv" else ","
    return table_text(headings, rows, separator).encode("utf-8", "replace")


def write_matrix(
    net: PedigreeNetwork, path: str | Path, codes: Sequence[str], kind: str = "coancestry"
) -> None:
    """Write a matrix; the ending of the file says how (see `matrix_bytes`)."""
    data = matrix_bytes(net, codes, Path(path).suffix.lower(), kind)
    with replace_file(path) as beside:
        beside.write_bytes(data)
