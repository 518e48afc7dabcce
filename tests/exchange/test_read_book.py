import pytest

from pedigreeview.book.faults import Fault
from pedigreeview.exchange import data_package, read_book

TABLE = "plant,seed_parent,pollen_parent\nF1,TP,BA\n"


@pytest.mark.parametrize("name", ["t.csv", "t.TSV", "t.txt"])
def test_tables_by_their_ending(tmp_path, name):
    path = tmp_path / name
    path.write_text(TABLE.replace(",", "\t") if "T" in name else TABLE)
    assert list(read_book(path).plants) == ["F1", "TP", "BA"]
    assert list(read_book(str(path)).plants) == ["F1", "TP", "BA"]


def test_text_that_is_in_hand():
    assert list(read_book("pasted.csv", text=TABLE).crosses) == ["TP × BA"]


def test_folder_and_descriptor(tmp_path):
    data_package.write(read_book("t", text=TABLE), tmp_path / "book")
    one = read_book(tmp_path / "book")
    other = read_book(tmp_path / "book" / "datapackage.json", founders_as="plant", fixation=0.5)
    assert one.plants == other.plants
    assert (other.settings.founders_as, other.settings.variety_fixation) == ("plant", 0.5)
    assert one.path == other.path == tmp_path / "book"


def test_both_ways_give_the_same_book(tmp_path):
    table = read_book("t", text=TABLE + "F2,F1,F1\nX,TP,\nY,,BA\n")
    data_package.write(table, tmp_path / "book")
    folder = read_book(tmp_path / "book")
    assert folder.plants == table.plants
    assert folder.crosses == table.crosses


@pytest.mark.parametrize(
    ("name", "says"),
    [
        ("none.csv", "no such file"),
        ("none", "no such file"),
        ("empty", "no datapackage.json"),
        ("empty/datapackage.json", "no datapackage.json"),
        ("t.xlsx", "spreadsheet file"),
        ("t.ods", "spreadsheet file"),
        ("t.xls", "old spreadsheet file"),
        ("t.json", "no JSON"),
        ("t.graphml", "cannot be read"),
        ("t.docx", r"ends in '\.docx'"),
        ("t", "no ending"),
    ],
)
def test_what_is_no_book(tmp_path, name, says):
    (tmp_path / "empty").mkdir()
    for other in ("t.xlsx", "t.ods", "t.xls", "t.json", "t.graphml", "t.docx", "t"):
        (tmp_path / other).write_text("x")
    with pytest.raises(Fault, match=says) as caught:
        read_book(tmp_path / name)
    assert caught.value.todo
