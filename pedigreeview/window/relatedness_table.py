"""The table of the Relatedness page: made in a thread with its picture, and written to a file.

Knows no widgets.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass
from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import QCoreApplication

from pedigreeview.book.faults import Fault
from pedigreeview.drawing.heat_picture import HeatPicture
from pedigreeview.drawing.theme import theme

if TYPE_CHECKING:
    from pedigreeview.network import PedigreeNetwork
    from pedigreeview.planning.relatedness import Measure, Order, Relatedness

__all__ = ["MOST", "MadeTable", "made_ready", "make_table", "picture_of", "write_table"]

MOST = 5000
"""Plants of one heat map; their table is 200 MB of numbers."""


def _tr(text: str) -> str:
    return QCoreApplication.translate("RelatednessTable", text)


@dataclass(frozen=True, slots=True)
class MadeTable:
    """A table with its picture."""

    held: Relatedness
    picture: HeatPicture


def picture_of(held: Relatedness, look: str, text: float) -> HeatPicture:
    """The picture of a table in a theme, its type so many times as large as usual."""
    at = {code: row for row, code in enumerate(held.codes)}
    groups = tuple(tuple(at[code] for code in group.plants) for group in held.duplicates)
    return HeatPicture(held.codes, held.values, theme(look), held.dendrogram, groups, text)


def make_table(
    net: PedigreeNetwork,
    codes: Sequence[str],
    measure: Measure,
    order: Order,
    look: str,
    text: float,
    tick: Callable[[int, int], None],
) -> MadeTable:
    """The table of some plants, with its picture ready to be painted.

    Raises
    ------
    Fault : more plants than one map shows
    """
    from pedigreeview.book.recording.sheets import in_order
    from pedigreeview.planning.relatedness import relatedness

    if len(codes) > MOST:
        raise Fault(
            _tr("{:,} plants are more than a heat map shows; {:,} are the most.").format(
                len(codes), MOST
            ),
            None,
            _tr("Choose a smaller set of plants."),
        )
    asked = in_order(net.book, codes, "code") if order == "given" else codes
    held = relatedness(net, asked, measure=measure, order=order, tick=tick)
    picture = picture_of(held, look, text)
    return MadeTable(held, made_ready(picture))


def made_ready(picture: HeatPicture) -> HeatPicture:
    """The picture with all that its first painting would wait for."""
    if picture.codes:
        _ = picture.image, picture.halved, picture.names
    return picture


def write_table(
    net: PedigreeNetwork,
    held: Relatedness,
    title: str,
    scale: str,
    path: Path,
    grey: bool,
    caption: str = "",
    margin: float | None = None,
) -> None:
    """Write a table as CSV, XLSX or NPZ, or its picture as SVG, PDF or PNG, by the ending.

    caption, margin : of the picture; see `heat_sheet`
    """
    if path.suffix.lower() in (".svg", ".pdf", ".png"):
        from pedigreeview.drawing.heat_file import heat_sheet, save_heat

        picture = picture_of(held, "grey" if grey else "light", 1.0)
        notes = [held.base]
        if held.dendrogram is not None:
            notes.append(
                _tr(
                    "Ordered by likeness: average linkage on 1 − R, with "
                    "R = θ(a, b) / √(θ(a, a) · θ(b, b))."
                )
            )
        if held.duplicates:
            said = " ".join(group.sentence for group in held.duplicates[:8])
            notes.append(_tr("Nearly the same, marked by a bar: {}").format(said))
        if held.left_out:
            notes.append(_tr("Withheld and left out: {}.").format(", ".join(held.left_out[:12])))
        sheet = heat_sheet(
            picture, title=title, scale=scale, notes=notes, caption=caption, margin=margin
        )
        save_heat(sheet, path)
        return
    from pedigreeview.exchange.matrices import write_matrix

    write_matrix(net, path, held.codes, held.measure)
