"""Each format of the list, whatever it is: there and back, and what it cannot carry said before.

Everything here goes over `FORMATS` itself, so that a format that is added and does not come back,
or loses something without a word, fails.
"""

from __future__ import annotations

import re
from collections.abc import Callable
from dataclasses import asdict, fields
from html import escape
from pathlib import Path

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from pedigreeview.book.book import Book, BookSettings
from pedigreeview.book.records import TABLES
from pedigreeview.book.references import ONE
from pedigreeview.cli import main
from pedigreeview.exchange import formats, plant_table
from pedigreeview.exchange.formats import FORMATS, lost, read_path_as, write_as
from pedigreeview.network import PedigreeNetwork
from tests.book.garden import garden
from tests.exchange.test_data_package import books as full_books
from tests.exchange.test_spreadsheets import ods
from tests.exchange.test_table_writing import books as odd_books
from tests.network.random_books import books as pedigrees

BOTH_WAYS = [name for name, held in FORMATS.items() if held.reads and held.writes]
WRITTEN = [name for name, held in FORMATS.items() if held.writes]

any_books = st.one_of(pedigrees(most=8), odd_books(), full_books())
"""Pedigrees of every origin; odd codes and texts; something in every table."""

SAID = {
    "plants": r"plant|founder|settings",
    "crosses": r"cross|plants with parents",
    "pollen_candidates": r"candidate|odds|cross|plants with parents",
    "parent_findings": r"finding",
    "settings": r"settings",
}
"""What a sentence says where a table does not come back as it was; else the table's own name."""


def path_of(folder: Path, name: str) -> Path:
    return folder / f"book{(FORMATS[name].endings or ('',))[0]}"


def written(book: Book, folder: Path, name: str) -> Path:
    path = path_of(folder, name)
    write_as(PedigreeNetwork.from_records(book), path, FORMATS[name])
    return path


def normal(book: Book, table: str) -> list[str]:
    """The records of a table, whatever their order and that of their further columns."""
    return sorted(
        repr([(key, sorted(held.items()) if key == "extra" else held) for key, held in one.items()])
        for one in map(asdict, book.table(table))
    )


def changed(one: Book, other: Book) -> list[str]:
    """The tables of one book that the other does not hold just so, and 'settings'."""
    found = [table for table in TABLES if normal(one, table) != normal(other, table)]
    said = [getattr(one.settings, item.name) for item in fields(BookSettings)]
    if said != [getattr(other.settings, item.name) for item in fields(BookSettings)]:
        found.append("settings")
    return found


def is_said(table: str, sentences: list[str]) -> bool:
    own = f"'{table}'|{table.replace('_', ' ')}|{ONE.get(table, table)}"
    words = re.compile(f"{SAID.get(table, own)}|{own}")
    return any(words.search(sentence) for sentence in sentences)


@pytest.mark.parametrize("name", BOTH_WAYS)
def test_what_does_not_come_back_is_listed(
    name: str, tmp_path_factory: pytest.TempPathFactory
) -> None:
    @settings(max_examples=12, suppress_health_check=list(HealthCheck))
    @given(any_books)
    def run(book: Book) -> None:
        sentences = lost(book, FORMATS[name])
        back = read_path_as(written(book, tmp_path_factory.mktemp("out"), name), FORMATS[name])
        for table in changed(book, back):
            assert is_said(table, sentences), (table, sentences)
        for table in book.unknown_tables.keys() - back.unknown_tables.keys():
            assert any(table in sentence for sentence in sentences), (table, sentences)

    run()


@pytest.mark.parametrize("name", BOTH_WAYS)
def test_what_comes_back_goes_the_same_way_again(
    name: str, tmp_path_factory: pytest.TempPathFactory
) -> None:
    """What a format carries it carries whole: the second time nothing more is lost."""

    @settings(max_examples=6, suppress_health_check=list(HealthCheck))
    @given(any_books)
    def run(book: Book) -> None:
        first = read_path_as(written(book, tmp_path_factory.mktemp("one"), name), FORMATS[name])
        again = read_path_as(written(first, tmp_path_factory.mktemp("two"), name), FORMATS[name])
        assert changed(first, again) == []

    run()


@pytest.mark.parametrize("name", BOTH_WAYS)
def test_a_format_that_loses_something_is_found(name: str, tmp_path: Path) -> None:
    """The check itself can fail: a book that lost a plant on the way is seen."""
    book = plant_table.parse("plant,seed_parent,pollen_parent\nA,,\nB,,\n", "t.csv")
    back = read_path_as(written(book, tmp_path, name), FORMATS[name])
    assert set(back.plants) == {"A", "B"}
    before = len(changed(book, back))
    del back.plants["B"]
    assert "plants" in changed(book, back)
    assert len(changed(book, back)) >= max(before, 1)
    assert not is_said("plants", [])


# Formats of one way ------------------------------------------------------------------------------


def _opendocument(book: Book) -> bytes:
    """A plant table as an OpenDocument sheet, by hand."""
    headings, lines = plant_table.table_lines(book)
    rows = "".join(
        "<table:table-row>"
        + "".join(
            '<table:table-cell office:value-type="string">'
            f"<text:p>{escape(cell)}</text:p></table:table-cell>"
            for cell in cells
        )
        + "</table:table-row>"
        for cells in (headings, *lines)
    )
    names = "urn:oasis:names:tc:opendocument:xmlns"
    return ods(
        f'<office:document-content xmlns:office="{names}:office:1.0" '
        f'xmlns:table="{names}:table:1.0" xmlns:text="{names}:text:1.0">'
        f'<office:body><office:spreadsheet><table:table table:name="plants">{rows}</table:table>'
        "</office:spreadsheet></office:body></office:document-content>"
    )


MADE: dict[str, Callable[[Book], bytes]] = {"ods": _opendocument}
"""How a file is made of a format that is only read."""


@pytest.mark.parametrize("name", [n for n, held in FORMATS.items() if not held.writes])
@settings(max_examples=8)
@given(book=pedigrees(most=8))
def test_a_format_that_is_only_read_gives_what_the_plant_table_gives(name: str, book: Book) -> None:
    data = MADE[name](book)
    found = formats.read_bytes_as(data, FORMATS[name], "t")
    net = PedigreeNetwork.from_records(book)
    table = formats.read_bytes_as(
        formats.to_bytes(net, FORMATS["table"]), FORMATS["table"], "t.csv"
    )
    assert changed(found, table) == []


@pytest.mark.parametrize("name", [n for n, held in FORMATS.items() if not held.reads])
def test_a_format_that_is_only_written_says_so(name: str, tmp_path: Path) -> None:
    assert any("not read again" in sentence for sentence in lost(Book(), FORMATS[name]))
    text = written(garden(), tmp_path, name).read_text("utf-8")
    for code in garden().plants:
        assert f'"{code}"' in text or f"={code}" in text


# Said before it is written -----------------------------------------------------------------------


def test_every_format_has_a_list_of_its_own(monkeypatch: pytest.MonkeyPatch) -> None:
    for held in FORMATS.values():
        assert isinstance(lost(Book(), held), list)
    monkeypatch.setitem(FORMATS, "new", formats.Format("new", "another", (".new",)))
    with pytest.raises(KeyError):
        lost(Book(), FORMATS["new"])


@pytest.mark.parametrize("name", WRITTEN)
def test_the_command_says_it_before_it_writes(
    name: str,
    tmp_path: Path,
    monkeypatch: pytest.MonkeyPatch,
    capsys: pytest.CaptureFixture[str],
) -> None:
    source = written(garden(), tmp_path, "folder")
    target = tmp_path / "out" / path_of(tmp_path, name).name
    target.parent.mkdir()
    sentences = lost(read_path_as(source), FORMATS[name])
    said_at: list[str] = []
    real = formats.write_as

    def write(net: PedigreeNetwork, path: Path, held: formats.Format, **more: bool) -> None:
        said_at.append(held.name)
        raise RuntimeError("written")

    monkeypatch.setattr(formats, "write_as", write)
    words = ["convert", str(source), str(target), "--to", name]
    assert main(words) == 2
    assert said_at == [name]
    said = [line for line in capsys.readouterr().err.splitlines() if line.startswith("Not carried")]
    assert said == [f"Not carried: {sentence}" for sentence in sentences]
    assert not target.exists()
    monkeypatch.setattr(formats, "write_as", real)
    assert main(words) in (0, 1)
    assert target.exists()
