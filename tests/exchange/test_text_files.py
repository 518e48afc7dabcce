from pathlib import Path

import pytest

from pedigreeview.book.faults import Fault, FileFaults
from pedigreeview.exchange import plant_table, text_files
from pedigreeview.exchange.import_plan import guess_plan
from pedigreeview.exchange.importing import carry_out
from pedigreeview.exchange.spreadsheets import open_table, read_table
from pedigreeview.exchange.text_files import decode, read_bytes, sheet, to_text

KNOWN = ("plant", "seed_parent", "pollen_parent")


def test_encodings():
    assert decode("é".encode(), "x")[0] == "é"
    assert decode(b"\xef\xbb\xbf" + "é".encode(), "x") == ("é", [])
    text, remarks = decode("Réséda".encode("cp1252"), "x")
    assert text == "Réséda"
    assert "Windows-1252" in remarks[0]
    assert decode(b"\xff\xfe" + "é\r".encode("utf-16-le"), "x") == ("é\r", [])
    assert decode(b"\xfe\xff" + "é\U0001f33c".encode("utf-16-be"), "x") == ("é\U0001f33c", [])
    assert decode(b"\xff\xfe", "x") == ("", [])


@pytest.mark.parametrize(
    ("data", "says", "row"),
    [
        (b"PK\x03\x04rest", "a spreadsheet", None),
        (b"%PDF-1.7", "a PDF", None),
        (b"SQLite format 3\x00", "a database", None),
        ("plant,note\nA,é\n".encode("utf-16-le"), "without the mark at its beginning", None),
        ("plant,note\nA,é\n".encode("utf-16-be"), "without the mark at its beginning", None),
        ("plant\n".encode("utf-32"), "UTF-32", None),
        (b"\0\0\xfe\xff" + "plant\n".encode("utf-32-be"), "UTF-32", None),
        (b"plant\nA\x00\n", "NUL byte", 2),
        (b"plant\rA\r\x00", "NUL byte", 3),
        (b"plant\r\nA\r\n\rB\n\x00", "NUL byte", 5),
        (b"\0" * 40, "NUL byte", 1),
        ("\ufeffplant\r\nA\0\r\n".encode("utf-16-le"), "NUL byte", 2),
        ("\ufeffplant\rA\r\0".encode("utf-16-be"), "NUL byte", 3),
        (b"\xff\xfe" + "plant\r\nA".encode("utf-16-le") + b"B", "UTF-16 but has bytes", 2),
        (b"\xfe\xff" + b"\0p\0\n\xd8\x00\0A", "UTF-16 but has bytes", 2),
        (b"\xff\xfe\n\0\n\0\0\xdc", "UTF-16 but has bytes", 3),
        (b"\xef\xbb\xbfplant\r\r\xe9\r", "says that it is UTF-8", 3),
        (b"\xef\xbb\xbfplant\n\xe9\n", "says that it is UTF-8", 2),
        (b"plant\n\n\x81\xe9\n", "neither UTF-8 nor Windows-1252", 3),
    ],
)
def test_what_is_no_text(data, says, row):
    with pytest.raises(Fault, match=says) as caught:
        decode(data, "x.csv")
    assert caught.value.where.row == row
    assert caught.value.todo


GARDEN = [
    ["plant", "seed_parent", "pollen_parent", "note"],
    ["Größe", "", "", "×⊗ \U0001f33c"],
    ["Reseda 2", "", "", ""],
    ["24-1", "Größe", "Reseda 2", "one, two"],
]


def as_text(separator: str, ends: tuple[str, ...]) -> str:
    """The garden as spreadsheet programs write it, with these ends of lines in turn."""
    lines = []
    for at, row in enumerate(GARDEN):
        cells = [f'"{cell}"' if separator in cell else cell for cell in row]
        lines.append(separator.join(cells) + ends[at % len(ends)])
    return "".join(lines)


@pytest.mark.parametrize("coding", ["utf-8", "utf-8-sig", "utf-16-le", "utf-16-be"])
@pytest.mark.parametrize("ends", [("\r\n",), ("\n",), ("\r",), ("\r\n", "\r", "\n")])
@pytest.mark.parametrize(("separator", "name"), [("\t", "g.txt"), (";", "g.csv"), (",", "g.csv")])
def test_a_table_is_the_same_in_every_coding(coding, ends, separator, name, tmp_path):
    mark = "\ufeff" if coding.startswith("utf-16") else ""
    path = tmp_path / name
    path.write_bytes((mark + as_text(separator, ends)).encode(coding))
    book = plant_table.read(path)
    assert list(book.plants) == ["Größe", "Reseda 2", "24-1"]
    assert book.plants["Größe"].note == "×⊗ \U0001f33c"
    assert book.plants["24-1"].note == "one, two"
    assert [(c.seed_parent, c.pollen_parent) for c in book.crosses.values()] == [
        ("Größe", "Reseda 2")
    ]
    assert not any("Windows-1252" in remark for remark in book.remarks)
    # The import reads the same file; rows keep their numbers.
    sheets = open_table(path)
    assert [row for row, _ in sheets.tables[0].rows] == [1, 2, 3, 4]
    assert [cells for _, cells in sheets.tables[0].rows] == GARDEN
    brought = carry_out(sheets, guess_plan(sheets)).book
    assert list(brought.plants) == list(book.plants)


@pytest.mark.parametrize("ends", ["\r\n", "\n", "\r"])
@pytest.mark.parametrize("coding", ["utf-8-sig", "utf-16-le"])
def test_faults_name_the_line_whatever_ends_it(ends, coding, tmp_path):
    lines = ["plant,seed_parent,pollen_parent,fixation", "A,,,", "B,,,7", "C,A,,"]
    path = tmp_path / "t.csv"
    mark = "\ufeff" if coding == "utf-16-le" else ""
    path.write_bytes((mark + ends.join(lines)).encode(coding))
    with pytest.raises(FileFaults) as caught:
        plant_table.read(path)
    assert [fault.where.row for fault in caught.value.faults] == [3]


@pytest.mark.parametrize("coding", ["utf-8", "utf-16"])
@pytest.mark.parametrize("ends", ["\r\n", "\n", "\r"])
def test_a_first_line_that_names_the_separator(coding, ends):
    text = ends.join(["sep=;", "plant;seed_parent;note", "A;;x,y,z", "B;A;"])
    data = text.encode(coding)
    found = sheet(decode(data, "x")[0], "x", KNOWN)
    assert (found.separator, found.heading_line) == (";", 2)
    assert found.rows == [(3, ["A", "", "x,y,z"]), (4, ["B", "A", ""])]
    table = read_table(data, "x.csv").tables[0]
    assert [row for row, _ in table.rows] == [2, 3, 4]
    assert table.rows[1][1] == ["A", "", "x,y,z"]


def test_more_bytes_than_the_cap(tmp_path, monkeypatch):
    monkeypatch.setattr(text_files, "MOST_UNPACKED", 1_000)
    text = "plant,seed_parent,pollen_parent\n" + "".join(f"P{at},,\n" for at in range(100, 250))
    held = {"t.csv": text.encode()}
    held["u.csv"] = text[:600].encode("utf-16")
    for name, data in held.items():
        assert len(data) > 1_000
        path = tmp_path / name
        path.write_bytes(data)
        for read in (plant_table.read, open_table, read_bytes):
            with pytest.raises(Fault, match="larger than"):
                read(path)
        with pytest.raises(Fault, match="larger than"):
            decode(data, name)
    assert len(plant_table.parse(text[:600], "t").plants) > 50


def test_a_device_without_an_end_is_refused(monkeypatch):
    endless = Path("/dev/zero")
    if not endless.exists():
        pytest.skip("the system has no such device")
    monkeypatch.setattr(text_files, "MOST_UNPACKED", 100_000)
    with pytest.raises(Fault, match="larger than"):
        read_bytes(endless)


@pytest.mark.parametrize("separator", [",", ";", "\t"])
def test_the_separator_is_found_from_the_heading_alone(separator):
    text = f"plant{separator}seed_parent{separator}note\nA{separator}{separator}"
    text += '"x,y;z\tw,,,,;;;;"\n'
    found = sheet(text, "x", KNOWN)
    assert found.separator == separator
    assert found.rows == [(2, ["A", "", "x,y;z\tw,,,,;;;;"])]


def test_a_separator_in_a_quoted_heading_does_not_mislead():
    found = sheet('plant;"a,b,c,d";seed_parent\nA;x;B\n', "x", KNOWN)
    assert found.separator == ";"
    assert found.headings == ["plant", "a,b,c,d", "seed_parent"]


def test_a_line_that_names_the_separator():
    found = sheet("sep=;\r\nplant;seed_parent\r\nA;B\r\n", "x", KNOWN)
    assert (found.separator, found.heading_line, found.rows) == (";", 2, [(3, ["A", "B"])])


@pytest.mark.parametrize("ending", ["\n", "\r\n", "\r"])
def test_lines_are_those_of_the_file(ending):
    text = ending.join(["", "plant,note", 'A,"one', 'two"', "", ",", "B,x"])
    found = sheet(text, "x", KNOWN)
    assert [line for line, _ in found.rows] == [3, 7]
    assert found.heading_line == 2
    assert found.rows[0][1][1] == f"one{ending}two"


def test_long_and_short_rows():
    found = sheet("plant,seed_parent\nA\nB,C,\nD,E,F\n", "x", KNOWN)
    assert found.rows == [(2, ["A", ""]), (3, ["B", "C"]), (4, ["D", "E"])]
    assert [(fault.where.row, fault.what) for fault in found.faults] == [
        (4, "The row has 3 cells, the heading row only 2.")
    ]


def test_quotes_that_are_wrong():
    open_quote = sheet('plant,note\nA,"x\nB,y\n', "x", KNOWN)
    assert [fault.where.row for fault in open_quote.faults] == [2]
    assert "never closed" in open_quote.faults[0].what
    goes_on = sheet('plant,note\nA,x\nB,"y" z\n', "x", KNOWN)
    assert [fault.where.row for fault in goes_on.faults] == [3]
    assert "after its closing quote" in goes_on.faults[0].what


def test_a_long_note_is_read():
    assert len(sheet(f"plant,note\nA,{'x' * 200_000}\n", "x", KNOWN).rows[0][1][1]) == 200_000


@pytest.mark.parametrize("cell", ["a,b", 'say "x"', "a\nb", "a\r\nb", "a\rb", " a ", "", "=1", "'"])
def test_cells_come_back(cell):
    assert sheet(to_text(["plant", "n"], [["A", cell]]), "x", KNOWN).rows == [(2, ["A", cell])]
