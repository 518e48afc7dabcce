"""Any table: text files and spreadsheets, also as other programs write them, and hostile ones."""

from __future__ import annotations

import datetime
import io
import zipfile
from pathlib import Path

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from pedigreeview.book.faults import Fault, FileFaults
from pedigreeview.exchange import archive_guard
from pedigreeview.exchange.harmless_cells import neutral, restored
from pedigreeview.exchange.spreadsheet_writing import (
    table_text,
    workbook_bytes,
    write_table,
)
from pedigreeview.exchange.spreadsheets import cell_text, open_table, read_table

# An OpenDocument file as LibreOffice writes it, by hand: styles left out, repeated cells and rows,
# a date, a percentage, a formula with its saved value, a blank and a long empty tail.
_ODS = """<?xml version="1.0" encoding="UTF-8"?>
<office:document-content xmlns:office="urn:oasis:names:tc:opendocument:xmlns:office:1.0"
 xmlns:table="urn:oasis:names:tc:opendocument:xmlns:table:1.0"
 xmlns:text="urn:oasis:names:tc:opendocument:xmlns:text:1.0" office:version="1.3">
<office:body><office:spreadsheet>
<table:table table:name="Kreuzungen">
<table:table-column table:number-columns-repeated="4"/>
<table:table-row>
<table:table-cell office:value-type="string"><text:p>Plant</text:p></table:table-cell>
<table:table-cell office:value-type="string"><text:p>Mother</text:p></table:table-cell>
<table:table-cell office:value-type="string"><text:p>Father</text:p></table:table-cell>
<table:table-cell office:value-type="string"><text:p>Sown</text:p></table:table-cell>
</table:table-row>
<table:table-row table:number-rows-repeated="2">
<table:table-cell table:number-columns-repeated="4"/>
</table:table-row>
<table:table-row>
<table:table-cell office:value-type="string"><text:p>F1-1</text:p></table:table-cell>
<table:table-cell table:number-columns-repeated="2" office:value-type="string"><text:p>TP</text:p>
</table:table-cell>
<table:table-cell office:value-type="date" office:date-value="2021-05-17"><text:p>17.05.21</text:p>
</table:table-cell>
</table:table-row>
<table:table-row>
<table:table-cell office:value-type="float" office:value="24"><text:p>24</text:p>
</table:table-cell><table:table-cell/>
<table:table-cell table:formula="of:=1+1" office:value-type="float" office:value="2">
<text:p>2</text:p>
</table:table-cell>
</table:table-row>
<table:table-row table:number-rows-repeated="1048570">
<table:table-cell table:number-columns-repeated="16384"/></table:table-row>
</table:table>
<table:table table:name="leer"><table:table-row>
<table:table-cell/></table:table-row></table:table>
</office:spreadsheet></office:body></office:document-content>"""


def zipped(members: dict[str, str | bytes]) -> bytes:
    buffer = io.BytesIO()
    with zipfile.ZipFile(buffer, "w", zipfile.ZIP_DEFLATED) as archive:
        for name, text in members.items():
            kind = zipfile.ZIP_STORED if name == "mimetype" else zipfile.ZIP_DEFLATED
            archive.writestr(name, text, kind)
    return buffer.getvalue()


def ods(content: str = _ODS) -> bytes:
    manifest = (
        '<?xml version="1.0"?><manifest:manifest '
        'xmlns:manifest="urn:oasis:names:tc:opendocument:xmlns:manifest:1.0"/>'
    )
    return zipped(
        {
            "mimetype": "application/vnd.oasis.opendocument.spreadsheet",
            "content.xml": content,
            "META-INF/manifest.xml": manifest,
        }
    )


_MAIN = "http://schemas.openxmlformats.org/spreadsheetml/2006/main"
_REL = "http://schemas.openxmlformats.org/officeDocument/2006/relationships"
_PACKAGE = "http://schemas.openxmlformats.org/package/2006/relationships"


def xlsx(sheet: str, workbook: str = "", **more: str) -> bytes:
    """A workbook by hand, with shared strings as other programs write them."""
    members: dict[str, str | bytes] = {
        "[Content_Types].xml": '<?xml version="1.0"?><Types xmlns="http://schemas.openxmlformats.'
        'org/package/2006/content-types"/>',
        "_rels/.rels": f'<?xml version="1.0"?><Relationships xmlns="{_PACKAGE}"><Relationship '
        f'Id="r1" Type="{_REL}/officeDocument" Target="xl/workbook.xml"/></Relationships>',
        "xl/workbook.xml": workbook
        or f'<?xml version="1.0"?><workbook xmlns="{_MAIN}" xmlns:r="{_REL}"><sheets>'
        '<sheet name="Crosses" sheetId="1" r:id="rId1"/></sheets></workbook>',
        "xl/_rels/workbook.xml.rels": f'<?xml version="1.0"?><Relationships xmlns="{_PACKAGE}">'
        f'<Relationship Id="rId1" Type="{_REL}/worksheet" Target="worksheets/sheet1.xml"/>'
        f'<Relationship Id="rId2" Type="{_REL}/sharedStrings" Target="sharedStrings.xml"/>'
        "</Relationships>",
        "xl/sharedStrings.xml": f'<?xml version="1.0"?><sst xmlns="{_MAIN}"><si><t>Plant</t></si>'
        "<si><r><t>Mo</t></r><r><t>ther</t></r></si>"
        '<si><t xml:space="preserve"> TP </t></si></sst>',
        "xl/worksheets/sheet1.xml": f'<?xml version="1.0"?><worksheet xmlns="{_MAIN}"><sheetData>'
        f"{sheet}</sheetData></worksheet>",
    }
    members.update(more)
    return zipped(members)


def test_an_opendocument_file_is_read() -> None:
    sheets = read_table(ods(), "k.ods")
    (first, second) = sheets.tables
    assert (first.name, second.name) == ("Kreuzungen", "leer")
    assert first.rows == [
        (1, ["Plant", "Mother", "Father", "Sown"]),
        (4, ["F1-1", "TP", "TP", datetime.date(2021, 5, 17)]),
        (5, [24, "", 2]),
    ]
    assert first.heading == 0
    assert sheets.named("").name == "Kreuzungen"
    with pytest.raises(Fault, match="no sheet 'x'"):
        sheets.named("x")


def test_shared_strings_and_gaps_of_a_workbook_are_read() -> None:
    data = xlsx(
        '<row r="3"><c r="B3" t="s"><v>0</v></c><c r="D3" t="s"><v>1</v></c></row>'
        '<row r="5"><c r="B5" t="s"><v>2</v></c><c r="D5"><v>12.50</v></c></row>'
        '<row r="6"><c r="B6" t="b"><v>1</v></c><c r="D6"><f>A1</f><v>0.1</v></c></row>'
        '<row r="1048576"><c r="XFD1048576" s="1"/></row>'
    )
    (table,) = read_table(data, "k.xlsx").tables
    assert table.rows == [
        (3, ["", "Plant", "", "Mother"]),
        (5, ["", " TP ", "", 12.5]),
        (6, ["", True, "", 0.1]),
    ]


def test_what_was_written_is_read(tmp_path: Path) -> None:
    rows = [["=1+1", 1, datetime.date(2024, 2, 29)], ["-3x", 0.1, True], ["0012", None, ""]]
    path = tmp_path / "t.xlsx"
    write_table(path, ["a", "b", "c"], rows, title="Any [table]: of/ours")
    (table,) = open_table(path).tables
    assert table.name == "Any  table   of ours"
    assert [cells for _, cells in table.rows] == [
        ["a", "b", "c"],
        ["=1+1", 1, datetime.date(2024, 2, 29)],
        ["-3x", 0.1, True],
        ["0012", "", ""],
    ]
    assert path.read_bytes() == workbook_bytes([("Any [table]: of/ours", ["a", "b", "c"], rows)])


@pytest.mark.parametrize(
    ("text", "safe"),
    [
        ("=HYPERLINK()", "'=HYPERLINK()"), ("+A1", "'+A1"), ("-A", "'-A"), ("@SUM", "'@SUM"),
        ("\tx", "'\tx"), ("\rx", "'\rx"), ("-0.5", "-0.5"), ("+3", "+3"), ("1e5", "1e5"),
        ("-1+1", "'-1+1"), ("A=1", "A=1"), ("", ""), ("'=1", "''=1"), ("'a", "'a"),
    ],
)  # fmt: skip
def test_formulas_are_made_harmless(text: str, safe: str) -> None:
    assert neutral(text) == safe
    assert restored(safe) == text
    written = table_text(["h", "i"], [[text, "x"]])
    assert read_table(written.encode(), "t.csv").tables[0].rows[1][1] == [safe, "x"]


@pytest.mark.parametrize(
    ("text", "name", "rows"),
    [
        ("a,b\n1,2\n", "t.csv", [["a", "b"], ["1", "2"]]),
        ("a;b\n1,5;2\n", "t.csv", [["a", "b"], ["1,5", "2"]]),
        ("a\tb\n1\t2\n", "t.txt", [["a", "b"], ["1", "2"]]),
        ("sep=;\na;b\n", "t.csv", [["a", "b"]]),
        ("plant\nA\n", "t.csv", [["plant"], ["A"]]),
        ('a,b\n"x\ny",2\n\n3,4\n', "t.csv", [["a", "b"], ["x\ny", "2"], ["3", "4"]]),
    ],
)
def test_text_files(text: str, name: str, rows: list[list[str]]) -> None:
    (table,) = read_table(text.encode(), name).tables
    assert [cells for _, cells in table.rows] == rows


def test_the_heading_row_is_found_below_a_title() -> None:
    text = "My crosses of 2024,,\n,,\nPlant,Mother,Father\nA,B,C\n"
    (table,) = read_table(text.encode(), "t.csv").tables
    assert table.headings(table.heading) == ["Plant", "Mother", "Father"]
    assert table.below(table.heading) == [(4, ["A", "B", "C"])]


@pytest.mark.parametrize(
    ("data", "what"),
    [
        (b"a,b\n1,\x00\n", "NUL byte"),
        (("a," * 20_000).encode() + b"\n", "20001 cells"),
        (b"PK\x03\x04 not a zip", "no spreadsheet file"),
        (zipped({"a.txt": "x"}), "holds no spreadsheet"),
        (ods(_ODS.replace("<office:doc", "<!DOCTYPE x [<!ENTITY a 'b'>]>\n<office:doc", 1)),
         "declares a document type"),
        (ods(_ODS.encode("utf-16").decode("latin-1")), "is not UTF-8|damaged"),
        (ods("<a>" * 300), "nested too deep"),
        (ods("<a><b>"), "damaged"),
        (ods(_ODS.replace('columns-repeated="2"', 'columns-repeated="99999999"')), "reaches over"),
        (ods(_ODS.replace('rows-repeated="2"', 'rows-repeated="900000000"')), "reaches over"),
        (xlsx('<row r="1"><c r="A1"><v>1</v></c></row>'
              '<row r="1048576"><c r="XFD1048576"><v>1</v></c></row>'), "reaches over"),
        (xlsx("<row r='1'><c t='>' r = 'XFD1048576' ><v>1</v></c></row>"), "reaches over"),
        (xlsx('<row r="1"><c r="&#88;FD1048576"><v>1</v></c></row>'), "hides where"),
        (xlsx('<row r="1"><c r="ZZZ1"><v>1</v></c></row>'), "reaches over"),
        (xlsx("", **{"xl/worksheets/sheet1.xml": "<!DOCTYPE a><worksheet/>"}), "document type"),
        (xlsx("", workbook="<workbook"), "cannot be read|no sheet|damaged"),
    ],
)  # fmt: skip
def test_hostile_files_are_refused(data: bytes, what: str) -> None:
    with pytest.raises(Fault, match=what):
        read_table(data, "t")


def test_a_bomb_is_refused_before_it_is_unpacked(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(archive_guard, "MOST_UNPACKED", 1_000_000)
    bomb = xlsx("<row/>", **{"xl/media.xml": " " * 3_000_000})
    assert len(bomb) < 10_000
    with pytest.raises(Fault, match="larger than 1 MB"):
        archive_guard.check_archive(bomb, "b.xlsx")


def test_an_open_quote_is_named() -> None:
    with pytest.raises(FileFaults) as caught:
        read_table(b'a,b\n1,"x\n', "t.csv")
    assert caught.value.faults[0].where.row == 2


SEEDS = [ods(), xlsx('<row r="1"><c r="A1" t="s"><v>0</v></c><c r="B1"><v>2</v></c></row>')]


@settings(max_examples=150)
@given(st.sampled_from(SEEDS), st.lists(st.tuples(st.integers(0, 5000), st.integers(0, 255))))
def test_damaged_spreadsheets_are_read_or_refused(
    seed: bytes, changes: list[tuple[int, int]]
) -> None:
    data = bytearray(seed)
    for at, byte in changes:
        data[at % len(data)] = byte
    try:
        sheets = read_table(bytes(data), "t.xlsx")
    except Fault:
        return
    assert all(isinstance(cell_text(c), str) for t in sheets.tables for _, r in t.rows for c in r)
