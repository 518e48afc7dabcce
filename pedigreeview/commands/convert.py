"""`convert`: a plant table to a Data Package folder, or the other way."""

from __future__ import annotations

import os
from pathlib import Path
from typing import TYPE_CHECKING

from pedigreeview.book.faults import Fault, Place
from pedigreeview.commands.answer import Answer, counted
from pedigreeview.commands.streams import say

if TYPE_CHECKING:
    from pedigreeview.network import PedigreeNetwork

__all__ = ["convert", "target_folder"]

_TABLES = (".csv", ".tsv", ".txt")


def target_folder(target: str) -> Path | None:
    """The Data Package folder that the words mean, or None where they mean a plant table.

    Raises
    ------
    Fault : they mean neither
    """
    path = Path(target)
    if path.name == "datapackage.json":
        return path.parent
    if path.is_dir() or target.endswith((os.sep, "/")) or not path.suffix:
        return path
    if path.suffix.lower() in _TABLES:
        return None
    raise Fault(
        f"A file that ends in {path.suffix} cannot be written.",
        Place(file=target),
        "Name a .csv or .tsv file for a plant table, or a folder for a Data Package.",
    )


def _refuse_taken(source: Path, target: Path, *, replace: bool) -> None:
    place = Place(file=str(target))
    if target.exists() and source.exists() and target.samefile(source):
        raise Fault("This is the file to be read.", place, "Name another one to write.")
    inside = source.is_dir() and source.resolve() in target.resolve().parents
    if inside or (target.is_dir() and target.resolve() in source.resolve().parents):
        raise Fault(
            "The book to be read and what is to be written lie one inside the other.",
            place,
            "Name a place outside to write.",
        )
    taken = any(target.iterdir()) if target.is_dir() else target.exists()
    if taken and not replace:
        raise Fault("This exists already.", place, "Name another, or add --replace.")


def convert(net: PedigreeNetwork, source: str, target: str, *, replace: bool = False) -> Answer:
    """Write the book to `target`; what its format cannot carry is said before."""
    from pedigreeview.exchange import data_package, plant_table

    folder = target_folder(target)
    read_from = Path(source)
    if read_from.name == "datapackage.json":
        read_from = read_from.parent
    path = Path(target) if folder is None else folder
    _refuse_taken(read_from, path, replace=replace)
    lost = plant_table.lost(net.book) if folder is None else data_package.lost(net.book)
    for sentence in lost:
        say(f"Not carried: {sentence}")
    if folder is None:
        plant_table.write(net.book, path)
    else:
        data_package.write(net.book, path)
    what = "plant table" if folder is None else "Data Package folder"
    plants = counted(len(net.book.plants), "plant")
    crosses = counted(len(net.book.crosses), "cross", "crosses")
    return Answer([f"Wrote {path} ({what}): {plants}, {crosses}."], None, net.problems())
