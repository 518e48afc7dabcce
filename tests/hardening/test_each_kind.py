"""Every kind of hostile input by its name, through every reader that it can reach.

What stands here is one plain example of each; the short and the long run mutate many more.  Books
of long rows and wide families are in `test_extremes`, what goes out in `test_output_escaping`.
"""

from __future__ import annotations

import json
from collections.abc import Callable
from functools import cache
from pathlib import Path
from typing import Any

import pytest

from pedigreeview.book.book import Book
from pedigreeview.book.edits import Edit
from pedigreeview.book.faults import Fault
from pedigreeview.book.look_alikes import near_duplicate_code
from pedigreeview.book.records import Cross, Plant
from pedigreeview.exchange import plant_table
from pedigreeview.exchange.formats import FORMATS, read_bytes_as, read_path_as, to_bytes, write_as
from pedigreeview.exchange.import_plan import guess_plan
from pedigreeview.exchange.importing import carry_out
from pedigreeview.exchange.merging import compare, merge, proposed_names
from pedigreeview.exchange.same_plants import look_alikes
from pedigreeview.exchange.spreadsheet_writing import workbook_bytes
from pedigreeview.exchange.spreadsheets import read_table
from pedigreeview.network import PedigreeNetwork
from pedigreeview.window.merging_dialog import photo_of
from tests.exchange.test_spreadsheets import ods, xlsx
from tests.hardening import mutators
from tests.hardening.readers import Input
from tests.hardening.test_extremes import chain
from tests.hardening.trial import try_one

Rows = list[list[str]]
HEAD = ["plant", "seed_parent", "pollen_parent", "note"]


def _csv(rows: Rows) -> str:
    return "\n".join(",".join(cells) for cells in rows) + "\n"


def _imported(data: bytes, name: str) -> Book:
    sheets = read_table(data, name)
    return carry_out(sheets, guess_plan(sheets)).book


TABLES: dict[str, Callable[[Rows], Book]] = {
    "plant table": lambda rows: plant_table.parse(_csv(rows), "t.csv"),
    "standard input": lambda rows: read_bytes_as(_csv(rows).encode(), FORMATS["table"], "-"),
    "UTF-16": lambda rows: read_bytes_as(_csv(rows).encode("utf-16"), FORMATS["table"], "-"),
    "spreadsheet": lambda rows: read_bytes_as(
        workbook_bytes([("s", rows[0], rows[1:])]), FORMATS["xlsx"], "t.xlsx"
    ),
    "import of text": lambda rows: _imported(_csv(rows).encode(), "t.csv"),
    "import of a spreadsheet": lambda rows: _imported(
        workbook_bytes([("s", rows[0], rows[1:])]), "t.xlsx"
    ),
}
"""Every way in which rows of cells become a book."""

tables = pytest.mark.parametrize("way", TABLES)


def _fault(read: Callable[[], Any]) -> str:
    with pytest.raises(Fault) as caught:
        read()
    assert caught.value.todo
    return "\n".join(caught.value.lines())


# Zip bombs, entities, nesting --------------------------------------------------------------------


@cache
def _bomb(member: str) -> bytes:
    members = [(member, b" " * 210_000_000)]
    if member.startswith("xl/"):
        members.insert(0, ("xl/workbook.xml", b""))
    return mutators.zipped(members)


@pytest.mark.parametrize("name", ["t.xlsx", "t.ods", "t.mcpd.xlsx"])
@pytest.mark.parametrize("reader", ["XLSX", "table import"])
def test_zip_bombs(name: str, reader: str, tmp_path: Path) -> None:
    data = _bomb("content.xml" if name.endswith(".ods") else "xl/worksheets/sheet1.xml")
    assert len(data) < 1_000_000
    assert try_one(reader, 0, tmp_path, Input({name: data})) == "fault"


_LAUGHS = (
    '<!DOCTYPE x [<!ENTITY a "ha">'
    + "".join(
        f'<!ENTITY {b} "{f"&{a};" * 10}">' for a, b in zip("abcdefgh", "bcdefghi", strict=True)
    )
    + "]>"
)
_OUTSIDE = '<!DOCTYPE x [<!ENTITY i SYSTEM "file:///etc/passwd">]>'


@pytest.mark.parametrize("head", [_LAUGHS, _OUTSIDE])
def test_entities_of_xml(head: str) -> None:
    graph = '<graphml xmlns="http://graphml.graphdrawing.org/xmlns"><graph>&i;</graph></graphml>'
    cells = '<row r="1"><c r="A1" t="inlineStr"><is><t>&i;</t></is></c></row>'
    files = {
        "graphml": (head + graph).encode(),
        "gexf": f"{head}<gexf>&i;</gexf>".encode(),
        "ods": ods(f"{head}<a>&i;</a>"),
        "xlsx": xlsx(cells, **{"xl/sharedStrings.xml": f"{head}<sst><si><t>&i;</t></si></sst>"}),
    }
    for name, data in files.items():
        said = _fault(lambda name=name, data=data: read_bytes_as(data, FORMATS[name], "t"))  # type: ignore[misc]
        assert "document type or entities" in said
        assert "root:" not in said
    assert "document type or entities" in _fault(lambda: _imported(files["xlsx"], "t.xlsx"))


DEEP = 60_000


@pytest.mark.parametrize("name", ["brapi", "node-link"])
def test_deep_nesting_of_json(name: str) -> None:
    for text in (
        "[" * DEEP + "]" * DEEP,
        '{"data": ' * DEEP + "1" + "}" * DEEP,
        '{"nodes": [' + "[" * DEEP + "]" * DEEP + '], "links": []}',
    ):
        assert "nested too deep" in _fault(
            lambda text=text: read_bytes_as(text.encode(), FORMATS[name], "t.json")  # type: ignore[misc]
        )


def test_deep_nesting_of_a_folder(tmp_path: Path) -> None:
    (tmp_path / "plants.csv").write_text("plant\nA\n")
    (tmp_path / "datapackage.json").write_text(
        '{"resources": [{"name": "plants", "path": "plants.csv"}], "x": '
        + "[" * DEEP + "]" * DEEP + "}"
    )  # fmt: skip
    assert _fault(lambda: read_path_as(tmp_path))


def test_deep_nesting_of_xml(tmp_path: Path) -> None:
    deep = "<a>" * DEEP + "</a>" * DEEP
    row = f'<row r="1"><c r="A1" t="inlineStr"><is><t>x</t></is>{deep}</c></row>'
    files = {
        "XLSX": ("t.xlsx", xlsx(row)),
        "ODS": ("t.ods", ods(deep)),
        "GraphML": ("t.graphml", f"<graphml>{deep}</graphml>".encode()),
        "GEXF": ("t.gexf", f"<gexf>{deep}</gexf>".encode()),
    }
    for reader, (name, data) in files.items():
        assert try_one(reader, 0, tmp_path, Input({name: data})) == "fault"


# Wide rows, bytes that are none ------------------------------------------------------------------


@pytest.mark.parametrize(
    ("reader", "name"),
    [("plant table", "t.csv"), ("passport", "t.mcpd.csv"), ("table import", "t.csv")],
)
@pytest.mark.parametrize("coding", ["utf-8", "utf-16"])
def test_rows_of_a_million_columns(reader: str, name: str, coding: str, tmp_path: Path) -> None:
    text = "plant,seed_parent,pollen_parent,ACCENUMB,GENUS,SPECIES" + ",x" * 1_000_000 + "\nA\n"
    assert try_one(reader, 0, tmp_path, Input({name: text.encode(coding)})) == "fault"


def test_a_million_columns_of_other_files(tmp_path: Path) -> None:
    heading = "plant" + ",x" * 1_000_000
    listed = {"resources": [{"name": "plants", "path": "plants.csv"}]}
    folder = {
        "": b"",
        "datapackage.json": json.dumps(listed).encode(),
        "plants.csv": f"{heading}\nA\n".encode(),
    }
    assert try_one("folder", 0, tmp_path, Input(folder)) == "fault"
    content = (
        '<office:document-content xmlns:office="urn:oasis:names:tc:opendocument:xmlns:office:1.0" '
        'xmlns:table="urn:oasis:names:tc:opendocument:xmlns:table:1.0" '
        'xmlns:text="urn:oasis:names:tc:opendocument:xmlns:text:1.0"><table:table><table:table-row>'
        '<table:table-cell table:number-columns-repeated="1000000"><text:p>x</text:p>'
        "</table:table-cell></table:table-row></table:table></office:document-content>"
    )
    assert try_one("ODS", 0, tmp_path, Input({"t.ods": ods(content)})) == "fault"
    cell = '<row r="1"><c r="A1"><v>1</v></c><c r="BDWGN1"><v>1</v></c></row>'
    assert try_one("XLSX", 0, tmp_path, Input({"t.xlsx": xlsx(cell)})) == "fault"


@tables
def test_nul_bytes(way: str) -> None:
    rows = [HEAD, ["A", "", "", "x"], ["B", "A", "A\0", "y"]]
    if "spreadsheet" in way:
        # The writer of spreadsheets lets none out; those of others can write one as _x0000_.
        assert not any("\0" in code for code in TABLES[way](rows).plants)
        return
    said = _fault(lambda: TABLES[way](rows))
    assert "NUL byte" in said
    assert "row 3" in said


def test_nul_bytes_of_a_spreadsheet() -> None:
    texts = (("A1", "plant"), ("B1", "seed_parent"), ("C1", "pollen_parent"), ("A2", "A_x0000_B"))
    cells = [f'<c r="{at}" t="inlineStr"><is><t>{text}</t></is></c>' for at, text in texts]
    data = xlsx(f'<row r="1">{"".join(cells[:3])}</row><row r="2">{cells[3]}</row>')
    for read in (lambda: read_bytes_as(data, FORMATS["xlsx"], "t"), lambda: _imported(data, "t")):
        said = _fault(read)
        assert "U+0000" in said
        assert "row 2" in said


@pytest.mark.parametrize("text", ["A\\u0000", "\\ud800", "A\\ufffe"])
def test_characters_of_json_that_are_none(text: str) -> None:
    said = f'{{"germplasmDbId": "{text}", "germplasmName": "x"}}'
    assert "1 fault" in _fault(lambda: read_bytes_as(said.encode(), FORMATS["brapi"], "t.json"))


# Codes that deceive the eye ----------------------------------------------------------------------

PAIRS = [
    ("AB", "A\u202eB"), ("AB", "\u2066AB\u2069"), ("AB", "A\u200fB"), ("A-1", "\u0410-1"),
    ("A-1", "A\u00ad-1"), ("A-1", "A\u200b-1"), ("A 1", "A\u00a01"), ("V", "\u2164"),
    ("X", "\u03a7"), ("A1", "A\uff11"),
]  # fmt: skip
"""Right-to-left signs, signs that are not seen, letters of other scripts."""


@tables
@pytest.mark.parametrize(("plain", "other"), PAIRS)
def test_codes_that_read_as_another(way: str, plain: str, other: str) -> None:
    """Two plants stay two; that their codes read as one is said."""
    assert plain != other
    book = TABLES[way]([HEAD, [plain, "", "", "a"], [other, "", "", "b"], ["K", plain, other, ""]])
    assert list(book.plants) == [plain, other, "K"]
    cross = book.crosses[book.plants["K"].cross]
    assert (cross.seed_parent, cross.pollen_parent) == (plain, other)
    (problem,) = near_duplicate_code(book)
    assert {plain, other} <= set(problem.plants)
    sheets = read_table(_csv([HEAD, [plain, "", "", ""], [other, "", "", ""]]).encode(), "t.csv")
    (group,) = look_alikes(sheets, guess_plan(sheets))
    assert set(group.codes) == {plain, other}


# Loops and rows that stand twice -----------------------------------------------------------------


def _loop(count: int) -> Rows:
    rows = [[f"P{at}", f"P{(at + 1) % count}", "H", ""] for at in range(count)]
    return [HEAD, *rows, ["H", "", "", ""], ["S", "P0", "S", ""]]


@tables
def test_loops(way: str) -> None:
    book = TABLES[way](_loop(40))
    net = PedigreeNetwork.from_records(book)
    assert sorted(len(problem.plants) for problem in net.loop_problems()) == [1, 40]
    assert {"S", "P0", "P39"} <= set(net.withheld)
    assert "H" not in net.withheld


@pytest.mark.parametrize("name", [n for n, held in FORMATS.items() if held.reads and held.writes])
def test_a_loop_goes_through_every_format(name: str, tmp_path: Path) -> None:
    book = plant_table.parse(_csv(_loop(12)), "t.csv")
    net = PedigreeNetwork.from_records(book)
    path = tmp_path / f"t{(FORMATS[name].endings or ('',))[0]}"
    write_as(net, path, FORMATS[name])
    back = PedigreeNetwork.from_records(read_path_as(path, FORMATS[name]))
    if name != "passport":
        assert len(back.loop_problems()) == len(net.loop_problems()) == 2


def test_two_books_that_make_a_loop_together() -> None:
    mine, theirs = Book(), Book()
    for book, child, parent in ((mine, "B", "A"), (theirs, "A", "B")):
        for record in (
            Plant(parent),
            Cross(f"{parent} x", parent),
            Plant(child, cross=f"{parent} x"),
        ):
            book.add(record)
    made, _ = merge(mine, theirs)
    net = PedigreeNetwork.from_records(made)
    (problem,) = net.loop_problems()
    assert set(problem.plants) == {"A", "B"}
    assert {"A", "B"} <= set(net.withheld)


@tables
def test_rows_of_one_plant_that_differ(way: str) -> None:
    rows = [HEAD, ["A", "", "", ""], ["B", "A", "A", "one"], ["B", "A", "A", "two"]]
    said = _fault(lambda: TABLES[way](rows))
    assert "row 4" in said
    assert "stands in row 3 already" in said
    assert "'B'" in said


@tables
def test_rows_that_are_the_same_are_never_two_plants(way: str) -> None:
    rows = [HEAD, ["A", "", "", ""], ["B", "A", "A", "one"], ["B", "A", "A", "one"]]
    if "import" in way:
        assert list(TABLES[way](rows).plants) == ["A", "B"]
    else:
        assert "the same as row 3" in _fault(lambda: TABLES[way](rows))


def test_records_of_other_files_that_stand_twice(tmp_path: Path) -> None:
    book = plant_table.parse("plant,seed_parent,pollen_parent\nA,,\nB,A,A\n", "t.csv")
    net = PedigreeNetwork.from_records(book)
    for name in ("brapi", "node-link"):
        document = json.loads(to_bytes(net, FORMATS[name]))
        held = document["germplasm"]["result"]["data"] if name == "brapi" else document["nodes"]
        again = dict(held[0])
        again["germplasmName" if name == "brapi" else "label"] = "another"
        held.append(again)
        said = _fault(
            lambda name=name, document=document: read_bytes_as(  # type: ignore[misc]
                json.dumps(document).encode(), FORMATS[name], "t.json"
            )
        )
        assert "twice" in said
    folder = tmp_path / "book"
    write_as(net, folder, FORMATS["folder"])
    with (folder / "plants.csv").open("a", encoding="utf-8") as stream:
        stream.write("B,other\n")
    assert "stands in row 3 already" in _fault(lambda: read_path_as(folder))
    crosses = "cross,seed parent,pollen parent,seeds\n1,A,B,3\n1,B,A,4\n"
    assert "other parents in row 2" in _fault(lambda: _imported(crosses.encode(), "t.csv"))


# Long and many -----------------------------------------------------------------------------------


def test_five_thousand_generations_are_imported_and_merged() -> None:
    text = chain(5_000)
    brought = _imported(text.encode(), "deep.csv")
    mine = plant_table.parse(text, "deep.csv")
    assert list(brought.plants) == list(mine.plants)
    # Plants beyond G2 are others, since one of their ancestors is.
    turned = text.replace("G2,G1,G1\n", "G2,G1,H\n")
    theirs = plant_table.parse(turned, "other.csv")
    names = proposed_names(mine, theirs)
    assert ("plants", "G2") in names
    assert ("plants", "G1") not in names
    assert sum(table == "plants" for table, _ in names) == 4_999
    edit = Edit(mine, "trial")
    compare(mine, theirs, names=names).apply(edit)
    assert len(edit.book.plants) == len(mine.plants) + 4_999
    assert PedigreeNetwork.from_records(edit.book).generation("G5000 (2)") is not None


def test_a_hundred_thousand_sibs() -> None:
    count = 100_000
    rows = ["A,,", "B,,", *(f"S{at},A,B" for at in range(count)), f"L,S0,S{count - 1}"]
    book = plant_table.parse("\n".join(["plant,seed_parent,pollen_parent", *rows]), "wide.csv")
    assert len(book.plants) == count + 3
    net = PedigreeNetwork.from_records(book)
    # Founders of a table are varieties unless it says otherwise: F of sibs' progeny is a half.
    assert net.inbreeding("L") == pytest.approx(0.5)
    assert net.coancestry("S0", "S99999") == pytest.approx(0.5)


def test_many_crosses_of_one_pair_and_codes_alike_take_no_longer_each() -> None:
    """Each of these took a time that grew with the square of the rows."""
    count = 8_000
    crosses = "\n".join(
        ["cross,seed parent,pollen parent,seeds,flowers"]
        + [f",A,B,{at % 9},3" for at in range(count)]
        + [f"X,A,B,{at % 9},3" for at in range(count)]
    )
    book = _imported(crosses.encode(), "t.csv")
    assert len(book.crosses) == count + 1
    assert f"A × B ({count})" in book.crosses
    assert f"X/{count}" in book.pollinations
    assert f"X/h{count}" in book.harvests
    pairs = "\n".join(
        ["plant,seed_parent,pollen_parent", *(f"P-{at},,\nP {at},," for at in range(count))]
    )
    sheets = read_table(pairs.encode(), "t.csv")
    assert len(look_alikes(sheets, guess_plan(sheets))) == count


def test_many_names_that_are_missing_are_named_at_once(tmp_path: Path) -> None:
    """Looking for a near code for each of them took hours in a large book."""
    count = 3_000
    rows = [f"P{at},cutting_of,P{at}x" for at in range(count)]
    (tmp_path / "plants.csv").write_text("\n".join(["plant,raised,source", *rows]))
    listed = {"resources": [{"name": "plants", "path": "plants.csv"}]}
    (tmp_path / "datapackage.json").write_text(json.dumps(listed))
    with pytest.raises(Fault) as caught:
        read_path_as(tmp_path)
    lines = [line for line in caught.value.lines()[1:] if "is no plant" in line]
    assert len(lines) == count
    assert sum("Did you mean" in line for line in lines) == 20


# Paths -------------------------------------------------------------------------------------------


@pytest.mark.parametrize(
    "name", ["../secret.jpg", "/etc/hostname", "a/../../secret.jpg", "..", ".", "photos/x.jpg", ""]
)
def test_photos_of_another_book_are_taken_from_its_folder_alone(name: str, tmp_path: Path) -> None:
    from contextlib import ExitStack

    folder = tmp_path / "book"
    (folder / "photos" / "photos").mkdir(parents=True)
    (folder / "photos" / "a.jpg").write_bytes(b"mine")
    (folder / "photos" / "photos" / "x.jpg").write_bytes(b"deeper")
    (folder / "secret.jpg").write_bytes(b"secret")
    with ExitStack() as held:
        photo = photo_of(folder, {}, held)
        assert photo("a.jpg") == b"mine"
        assert photo(name) is None
