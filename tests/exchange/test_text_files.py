import pytest

from pedigreeview.book.faults import Fault
from pedigreeview.exchange.text_files import decode, sheet, to_text

KNOWN = ("plant", "seed_parent", "pollen_parent")


def test_encodings():
    assert decode("é".encode(), "x")[0] == "é"
    assert decode(b"\xef\xbb\xbf" + "é".encode(), "x") == ("é", [])
    text, remarks = decode("Réséda".encode("cp1252"), "x")
    assert text == "Réséda"
    assert "Windows-1252" in remarks[0]


@pytest.mark.parametrize(
    ("data", "says", "row"),
    [
        (b"PK\x03\x04rest", "a spreadsheet", None),
        (b"%PDF-1.7", "a PDF", None),
        (b"SQLite format 3\x00", "a database", None),
        (b"\xff\xfep\x00", "UTF-16", None),
        (b"plant\nA\x00\n", "NUL byte", 2),
        (b"\xef\xbb\xbfplant\n\xe9\n", "says that it is UTF-8", 2),
        (b"plant\n\n\x81\xe9\n", "neither UTF-8 nor Windows-1252", 3),
    ],
)
def test_what_is_no_text(data, says, row):
    with pytest.raises(Fault, match=says) as caught:
        decode(data, "x.csv")
    assert caught.value.where.row == row
    assert caught.value.todo


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
