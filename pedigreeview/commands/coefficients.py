"""`coefficients`: inbreeding, generation, cytoplasm line and founder shares, plant by plant."""

from __future__ import annotations

from collections.abc import Sequence
from fractions import Fraction
from pathlib import Path
from typing import TYPE_CHECKING, Any

from pedigreeview.commands.answer import Answer, counted
from pedigreeview.commands.columns import set_in_columns
from pedigreeview.commands.plants_named import plants_named

if TYPE_CHECKING:
    from pedigreeview.network import PedigreeNetwork

__all__ = ["coefficients", "exact_text", "write_coefficients"]

_NUMBERS = ("inbreeding", "inbreeding_exact", "self_coancestry", "founder_shares", "unknown_share")

_SHARES_SHOWN = 6


def exact_text(value: Fraction | None) -> str | None:
    """A fraction as `*_exact` gives it: '9/128', '1', or None."""
    return None if value is None else str(value)


def _row(net: PedigreeNetwork, code: str) -> dict[str, Any]:
    row: dict[str, Any] = {
        "plant": code,
        "inbreeding": None,
        "inbreeding_exact": None,
        "kind": net.book.kind(net.book.plants[code]),
        "self_coancestry": None,
        "generation": net.generation(code),
        "generation_name": net.generation_name(code),
        "cytoplasm": net.cytoplasm(code),
        "founder_shares": None,
        "unknown_share": None,
    }
    kind = net.withheld.get(code)
    if kind is not None:
        row["withheld"] = kind
        return row
    row["inbreeding"] = net.inbreeding(code)
    row["inbreeding_exact"] = exact_text(net.inbreeding_exact(code))
    row["self_coancestry"] = net.self_coancestry(code)
    row["founder_shares"] = net.founder_shares(code)
    row["unknown_share"] = net.unknown_share(code)
    return row


def _cells(net: PedigreeNetwork, row: dict[str, Any]) -> list[str]:
    from pedigreeview.network.text import decimal_text, fraction_text

    generation = "" if row["generation"] is None else str(row["generation"])
    beginning = [row["plant"], row["kind"], generation, row["generation_name"] or ""]
    if "withheld" in row:
        return [*beginning, "withheld", "", row["cytoplasm"] or "", f"because of {row['withheld']}"]
    held = list(row["founder_shares"].items())
    shares = [f"{code} {decimal_text(share)}" for code, share in held[:_SHARES_SHOWN]]
    if len(held) > _SHARES_SHOWN:
        shares.append(f"{len(held) - _SHARES_SHOWN} more founders")
    if row["unknown_share"] > 1e-12:
        shares.append(f"unknown {decimal_text(row['unknown_share'])}")
    return [
        *beginning,
        fraction_text(net.inbreeding_exact(row["plant"]), row["inbreeding"]),
        decimal_text(row["self_coancestry"]),
        row["cytoplasm"] or "unknown",
        ", ".join(shares),
    ]


def coefficients(net: PedigreeNetwork, wanted: Sequence[str] = ()) -> Answer:
    """Coefficients of the plants wanted, or of all, parents before progeny."""
    codes = plants_named(net, wanted) if wanted else list(net.codes)
    rows = [_row(net, code) for code in codes]
    heading = (
        "plant",
        "kind",
        "generation",
        "name",
        "inbreeding F",
        "with itself",
        "cytoplasm",
        "founder shares",
    )
    table = set_in_columns([_cells(net, row) for row in rows], heading, right=(2,))
    if any(row["kind"] != "plant" for row in rows):
        pools = "Of a variety or a family, F is that of one member and 'with itself' that of two."
        table += ["", pools]
    document = {"base": net.base(), "plants": rows}
    return Answer(table, document, net.problems(), net.base_sentence())


def write_coefficients(
    net: PedigreeNetwork, out: str, wanted: Sequence[str] = (), *, replace: bool = False
) -> Answer:
    """Write the coefficients as a table; founder shares have a column for each founder."""
    from pedigreeview.commands.convert import refuse_taken
    from pedigreeview.exchange.spreadsheet_writing import write_table

    rows = [_row(net, code) for code in (plants_named(net, wanted) if wanted else net.codes)]
    founders = dict.fromkeys(code for row in rows for code in row["founder_shares"] or ())
    plain = (
        [name for name in rows[0] if name not in ("founder_shares", "withheld")]
        if rows
        else ["plant"]
    )
    lines = [
        [
            *(row[name] for name in plain),
            row.get("withheld"),
            *((row["founder_shares"] or {}).get(code) for code in founders),
        ]
        for row in rows
    ]
    headings = [*plain, "withheld", *(f"share of {code}" for code in founders)]
    refuse_taken(None, Path(out), replace=replace)
    write_table(out, headings, lines, title="coefficients")
    said = [f"Wrote {out}: {counted(len(rows), 'plant')}."]
    return Answer(said, None, net.problems(), net.base_sentence())
