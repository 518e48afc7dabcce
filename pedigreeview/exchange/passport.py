"""Passport data of founders: the Multi-Crop Passport Descriptors, version 2.1, as a table.

A table of FAO and Bioversity International (2015) with which collections tell where their
accessions came from.  Several values are parted by ';' without a blank, an unknown value is blank,
dates are YYYYMMDD with '-' or '0' for parts that are not known (general rules read in a list that
takes them over word for word); the names of the descriptors and the codes of the biological status
are from memory.

A founder takes its code from ACCENUMB and its name from ACCENAME; every descriptor without a field
of its own is kept under its name, so that it is written back.
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import fields
from pathlib import Path

from pedigreeview.book.book import Book, BookSettings
from pedigreeview.book.dates import is_date
from pedigreeview.book.faults import Fault, Place
from pedigreeview.book.records import Plant
from pedigreeview.exchange import slash_notation
from pedigreeview.exchange.checked_records import Gathering
from pedigreeview.exchange.harmless_cells import restored
from pedigreeview.exchange.left_out import tables_left_out
from pedigreeview.exchange.spreadsheet_writing import table_text, workbook_bytes
from pedigreeview.exchange.spreadsheets import Sheets, cell_text, open_table, read_table
from pedigreeview.exchange.ticking import Tick, no_tick
from pedigreeview.exchange.writing import replace_file

__all__ = ["DESCRIPTORS", "STATUS", "is_passport", "lost", "parse", "read", "rows", "write"]

DESCRIPTORS = (
    "PUID", "INSTCODE", "ACCENUMB", "COLLNUMB", "COLLCODE", "COLLNAME", "COLLINSTADDRESS",
    "COLLMISSID", "GENUS", "SPECIES", "SPAUTHOR", "SUBTAXA", "SUBTAUTHOR", "CROPNAME", "ACCENAME",
    "ACQDATE", "ORIGCTY", "COLLSITE", "DECLATITUDE", "LATITUDE", "DECLONGITUDE", "LONGITUDE",
    "COORDUNCERT", "COORDDATUM", "GEOREFMETH", "ELEVATION", "COLLDATE", "BREDCODE", "BREDNAME",
    "SAMPSTAT", "ANCEST", "COLLSRC", "DONORCODE", "DONORNAME", "DONORNUMB", "OTHERNUMB", "DUPLSITE",
    "DUPLINSTNAME", "STORAGE", "MLSSTAT", "REMARKS",
)  # fmt: skip
"""The columns of the table, in the order of the standard."""

STATUS: dict[str, str] = {
    "100": "wild", "110": "natural", "120": "semi-natural, wild", "130": "semi-natural, sown",
    "200": "weedy", "300": "traditional variety or landrace", "400": "breeding material",
    "410": "breeder's line", "411": "synthetic population", "412": "hybrid",
    "413": "founder stock or base population", "414": "inbred line",
    "415": "segregating population", "416": "clonal selection", "420": "genetic stock",
    "421": "mutant", "422": "cytogenetic stock", "423": "other genetic stock",
    "500": "improved cultivar",
    "600": "genetically modified", "999": "other",
}  # fmt: skip
"""The codes of the biological status, SAMPSTAT."""

_VARIETIES = ("300", "411", "413", "414", "500")
_FAMILIES = ("412", "415")
_OWN = ("ACCENUMB", "ACCENAME", "CROPNAME", "DONORNAME", "REMARKS")
_DATE = re.compile(r"([0-9]{4})([0-9-]{2})([0-9-]{2})\Z")


def is_passport(headings: list[str]) -> bool:
    """Whether a heading row is one of passport data."""
    folded = {heading.strip().upper() for heading in headings}
    return "ACCENUMB" in folded and len(folded & set(DESCRIPTORS)) >= 3


def passport_date(text: str) -> str:
    """'201903--' and '20190300' as 2019-03; '' where it is no date of the standard."""
    found = _DATE.match(text.strip())
    if found is None:
        return text.strip() if is_date(text.strip()) else ""
    year, month, day = found[1], found[2], found[3]
    parts = [year]
    if month not in ("--", "00"):
        parts.append(month)
        if day not in ("--", "00"):
            parts.append(day)
    date = "-".join(parts)
    return date if is_date(date) else ""


def read(path: str | Path) -> Book:
    """Read founders from a table of passport data (CSV, TSV, XLSX, ODS).

    Raises
    ------
    FileFaults : with everything that is wrong
    Fault : it is no such table
    """
    path = Path(path)
    book = parse(open_table(path))
    book.path = path
    return book


def parse(sheets: Sheets | bytes, name: str = "passport data", *, tick: Tick = no_tick) -> Book:
    """Read founders from a table that was opened already, or from bytes (see `read`)."""
    if isinstance(sheets, bytes):
        sheets = read_table(sheets, name, tick)
    for table in sheets.tables:
        for heading in range(min(len(table.rows), 10)):
            if is_passport(table.headings(heading)):
                break
        else:
            continue
        break
    else:
        raise Fault(
            "The table has no headings of passport data, such as ACCENUMB.",
            Place(file=sheets.name),
            "Import it as any other table.",
        )
    headings = [text.upper() for text in table.headings(heading)]
    gathering = Gathering(sheets.name, tick=tick)
    gathering.book.remarks += sheets.remarks
    for line, cells in table.below(heading):
        said = {
            name: restored(cell_text(cell).strip())
            for name, cell in zip(headings, cells, strict=False)
            if name and cell_text(cell).strip()
        }
        _founder(gathering, line, said)
    return gathering.finish()


def _kind(status: str) -> str:
    """What a founder of a biological status is; '' where none is said."""
    if status in _VARIETIES or status[:1] in ("1", "2"):
        return "variety"
    if status in _FAMILIES:
        return "family"
    return "plant" if status else ""


def _founder(gathering: Gathering, line: int, said: dict[str, str]) -> None:
    code = said.get("ACCENUMB") or said.get("ACCENAME", "")
    if not code:
        gathering.faults.append(
            Fault(
                "The row has no ACCENUMB and no ACCENAME.",
                Place(gathering.file, line, "ACCENUMB"),
                "Give the accession its number or its name.",
            )
        )
        return
    proposed = code.replace(":", "-").replace(";", "-")
    if proposed != code:
        gathering.book.remarks.append(f"The number {code!r} was read as {proposed!r}.")
    gathering.add(
        "plants",
        {
            "plant": proposed,
            "name": said.get("ACCENAME", "") if said.get("ACCENUMB") else "",
            "crop": said.get("CROPNAME", ""),
            "obtained_from": said.get("DONORNAME", ""),
            "note": said.get("REMARKS", ""),
            "kind": _kind(said.get("SAMPSTAT", "")),
        },
        {name: text for name, text in said.items() if name not in _OWN},
    )
    if "ANCEST" in said:
        try:
            slash_notation.parse(said["ANCEST"])
        except Fault:
            return
        gathering.book.remarks.append(
            f"The ancestry of {proposed!r}, {said['ANCEST']!r}, was kept as a note; import the "
            "table as any other to make plants of it."
        )


def lost(book: Book) -> list[str]:
    """What passport data cannot carry: all but the founders, one sentence each."""
    founders = [plant for plant in book.plants.values() if book.raised(plant) == "founder"]
    said = []
    others = len(book.plants) - len(founders)
    if others:
        plants = "1 plant that is no founder" if others == 1 else f"{others} plants with parents"
        said.append(f"{plants}: only founders have passport data.")
    if book.crosses:
        crosses = "cross" if len(book.crosses) == 1 else "crosses"
        said.append(f"{len(book.crosses)} {crosses} with all that is recorded of them.")
    said += [
        f"What is said of founders under {name!r}."
        for name in ("fixation", "ploidy", "sown", "status", "place", "protected")
        if any(getattr(plant, name) not in (None, "") for plant in founders)
    ]
    further = sorted(
        {name for plant in founders for name in plant.extra if name.upper() not in DESCRIPTORS}
    )
    if further:
        said.append(f"The further columns {', '.join(further)}.")
    coded = sum(_kind(_status(plant)) != book.kind(plant) for plant in founders)
    if coded:
        one = coded == 1
        said.append(
            f"What {coded} {'founder is' if one else 'founders are'}: written as the code of "
            f"{'its' if one else 'their'} biological status."
        )
    return [*said, *_settings_lost(book), *_tables_lost(book)]


def _settings_lost(book: Book) -> list[str]:
    usual = BookSettings()
    gone = [
        item.name.replace("_", " ")
        for item in fields(BookSettings)
        if item.name not in ("crop", "extra")
        and getattr(book.settings, item.name) != getattr(usual, item.name)
    ]
    gone += [repr(name) for name in book.settings.extra]
    said = [f"The book's settings {', '.join(gone)}."] if gone else []
    if book.settings.crop:
        said.append("The book's settings (crop) are written into the cells of each founder.")
    return said


def _tables_lost(book: Book) -> list[str]:
    # The crosses are named with all that belongs to them.
    return tables_left_out(book, ("plants", "crosses", "pollen_candidates"))


def _status(plant: Plant) -> str:
    """The code of the biological status that is kept with a founder; '' without one."""
    return next((text for name, text in plant.extra.items() if name.upper() == "SAMPSTAT"), "")


def rows(book: Book) -> Iterator[list[str]]:
    """The rows of the table: one for each founder, in the order of the book."""
    for plant in book.plants.values():
        if book.raised(plant) == "founder":
            said = _descriptors(book, plant)
            yield [said.get(name, "") for name in DESCRIPTORS]


def _descriptors(book: Book, plant: Plant) -> dict[str, str]:
    said = {name.upper(): text for name, text in plant.extra.items()}
    said.update(
        ACCENUMB=plant.plant,
        ACCENAME=plant.name,
        CROPNAME=book.crop(plant),
        DONORNAME=plant.obtained_from,
        REMARKS=plant.note,
    )
    kind = book.kind(plant)
    usual = {"variety": "500", "family": "415", "plant": "416"}[kind]
    if _kind(said.get("SAMPSTAT", "")) != kind:
        said["SAMPSTAT"] = usual
    return said


def write(book: Book, path: str | Path) -> None:
    """Write the founders of a book as passport data; the ending says CSV, TSV or XLSX.

    Raises
    ------
    Fault : the system does not let us write
    """
    path = Path(path)
    suffix = path.suffix.lower()
    if suffix == ".xlsx":
        data = workbook_bytes([("MCPD", DESCRIPTORS, rows(book))], str(path))
    else:
        separator = "\t" if suffix == ".tsv" else ","
        data = table_text(DESCRIPTORS, rows(book), separator).encode("utf-8", "replace")
    with replace_file(path) as beside:
        beside.write_bytes(data)
