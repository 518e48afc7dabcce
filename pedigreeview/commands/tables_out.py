"""`matrix`: coefficients of every pair as a file; `notation`: the parentage of plants as text."""

from __future__ import annotations

import sys
from collections.abc import Sequence
from pathlib import Path
from typing import TYPE_CHECKING, Any

from pedigreeview.commands.answer import Answer, counted
from pedigreeview.commands.convert import STREAM, refuse_taken
from pedigreeview.commands.plants_named import plants_named
from pedigreeview.commands.streams import say

if TYPE_CHECKING:
    from pedigreeview.network import PedigreeNetwork

__all__ = ["MATRIX_KINDS", "NOTATION_STYLES", "matrix", "notation"]

MATRIX_KINDS = ("coancestry", "numerator", "relationship")
NOTATION_STYLES = ("slash", "cross", "alphabetical")


def matrix(
    net: PedigreeNetwork,
    out: str,
    wanted: Sequence[str] = (),
    *,
    kind: str = "coancestry",
    replace: bool = False,
) -> Answer:
    """Write the coefficients of every pair of the plants wanted, or of all."""
    from pedigreeview.exchange.matrices import matrix_bytes, write_matrix

    codes = plants_named(net, wanted) if wanted else list(net.codes)
    if out == STREAM:
        data = matrix_bytes(net, codes, ".csv", kind)
        sys.stdout.flush()
        sys.stdout.buffer.write(data)
        sys.stdout.buffer.flush()
        say(net.base_sentence())
        return Answer([], None, net.problems())
    refuse_taken(None, Path(out), replace=replace)
    write_matrix(net, out, codes, kind)
    said = f"Wrote {out} ({kind}): {counted(len(codes), 'plant')}."
    return Answer([said], None, net.problems(), net.base_sentence())


def notation(
    net: PedigreeNetwork,
    wanted: Sequence[str],
    *,
    style: str = "slash",
    names: bool = False,
    most: int = 64,
) -> Answer:
    """The parentage of plants, a line each; what it leaves out is said on standard error."""
    from pedigreeview.exchange.plant_notation import notation_of

    codes = plants_named(net, wanted)
    rows: list[dict[str, Any]] = []
    for code in codes:
        found = notation_of(net.book, code, style, names=names, most=most)  # type: ignore[arg-type]
        rows.append({"plant": code, "notation": found.text, "said": list(found.said)})
    lines = [
        row["notation"] if len(rows) == 1 else f"{row['plant']}: {row['notation']}" for row in rows
    ]
    document = {"style": style, "plants": rows}
    for sentence in dict.fromkeys(sentence for row in rows for sentence in row["said"]):
        say(sentence)
    return Answer(lines, document, net.problems())
