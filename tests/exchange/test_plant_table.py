"""The plant table: what it means, and everything that can be wrong with one."""

import pytest

from pedigreeview.book.faults import Fault, FileFaults
from pedigreeview.exchange import plant_table

HEAD = "plant,seed_parent,pollen_parent"


def parse(text, **settings):
    return plant_table.parse(text, "table.csv", **settings)


def faults_of(text, **settings):
    with pytest.raises(FileFaults) as caught:
        parse(text, **settings)
    assert all(fault.what.endswith(".") for fault in caught.value.faults)
    assert all(fault.todo.endswith((".", "?")) for fault in caught.value.faults)
    return caught.value.faults


def fault_of(text, **settings):
    (fault,) = faults_of(text, **settings)
    return fault


# What a table means -------------------------------------------------------------------------------


def test_a_small_table():
    book = parse(f"{HEAD}\nF1,TP,BA\nF2,F1,F1\n")
    assert list(book.plants) == ["F1", "F2", "TP", "BA"]
    assert list(book.crosses) == ["TP × BA", "F1 ⊗"]
    assert book.crosses["F1 ⊗"].intended == "selfing"
    assert book.plants["F2"].cross == "F1 ⊗"
    assert book.plants["TP"].kind == ""
    assert book.kind(book.plants["TP"]) == "variety"
    assert book.kind(book.plants["F1"]) == "plant"
    assert "2 parents have no row" in book.remarks[0]


@pytest.mark.parametrize(
    ("cells", "name", "intended"),
    [
        ("TP,BA", "TP × BA", "cross"),
        ("TP,TP", "TP ⊗", "selfing"),
        ("TP,", "TP ○", "open"),
        (",BA", "? × BA", "cross"),
    ],
)
def test_names_of_crosses(cells, name, intended):
    (cross,) = parse(f"{HEAD}\nC,{cells}\n").crosses.values()
    assert (cross.cross, cross.intended, cross.drawn) == (name, intended, "")


def test_rows_with_the_same_parents_share_a_cross_and_reciprocals_do_not():
    book = parse(f"{HEAD}\nC,A,B\nD,A,B\nE,B,A\n")
    assert [book.plants[code].cross for code in "CDE"] == ["A × B", "A × B", "B × A"]


def test_a_repeated_cross_keeps_its_code_and_names_stay_unique():
    book = parse(f"{HEAD},cross,drawn\nC,A,B,A × B,\nD,A,B,,\nE,A,B,21-01,\nF,A,B,,each\n")
    assert [book.plants[code].cross for code in "CDEF"] == [
        "A × B", "A × B (2)", "21-01", "A × B (2)",
    ]  # fmt: skip
    assert book.crosses["A × B (2)"].drawn == "each"


def test_the_order_of_rows_and_columns_changes_nothing():
    rows = ["C,A,B,,one", "D,B,A,,each", "E,C,D,,", "F,A,,A2:0.5; self:0.25,"]
    heading = f"{HEAD},pollen_odds,drawn\n"
    one = parse(heading + "\n".join(rows))
    other = parse(heading + "\n".join(reversed(rows)))
    assert one.plants == other.plants
    assert one.crosses == other.crosses
    turned = parse("drawn,pollen_parent,plant,seed_parent\none,B,C,A\neach,A,D,B\n,D,E,C\n")
    assert {code: turned.plants[code].cross for code in "CDE"} == {
        code: one.plants[code].cross for code in "CDE"
    }


def test_odds():
    book = parse(f"{HEAD},pollen_odds\nC,TP,,BA:0.8; self:0.2\nD,TP,,self:.2;BA : 0.8;\n")
    (cross,) = book.crosses.values()
    assert (cross.seed_parent, cross.pollen_parent, cross.intended) == ("TP", "", "cross")
    assert [(item.candidate, item.odds) for item in book.pollen_candidates] == [
        ("BA", 0.8),
        ("self", 0.2),
    ]
    assert "BA" in book.plants
    assert "self" not in book.plants


@pytest.mark.parametrize(
    "raised", ["seed_of", "sibbed_in", "cutting_of", "doubled_haploid_of", "doubled_of"]
)
def test_plants_from_one_source(raised):
    kind = "variety" if raised in ("seed_of", "sibbed_in") else "plant"
    book = parse(f"{HEAD},raised,kind\nA,,,,{kind}\nB,A,,{raised},\n")
    assert (book.plants["B"].source, book.plants["B"].cross) == ("A", "")
    assert not book.crosses


def test_every_column():
    book = parse(
        f"{HEAD},kind,raised,selfings,fixation,cross,ploidy,crop,name,status,sown,note\n"
        'L, A ,B,variety,cross,4,0.99,21-01,4,pea,"Long, one",kept,2021-05,"two\nlines"\n'
    )
    line = book.plants["L"]
    assert (line.kind, line.raised, line.selfings, line.fixation) == ("variety", "cross", 4, 0.99)
    assert (line.cross, line.ploidy, line.crop, line.name) == ("21-01", 4, "pea", "Long, one")
    assert (line.status, line.sown, line.note) == ("kept", "2021-05", "two\nlines")
    assert book.crosses["21-01"].seed_parent == "A"


def test_a_semicolon_file_has_a_decimal_comma():
    head = HEAD.replace(",", ";")
    book = parse(f'{head};fixation;pollen_odds\nA;;;0,5;\nB;;;0.25;\nC;A;;;"B:0,8; self:0,2"\n')
    assert (book.plants["A"].fixation, book.plants["B"].fixation) == (0.5, 0.25)
    assert [item.odds for item in book.pollen_candidates] == [0.8, 0.2]


def test_unknown_columns_are_kept_and_said():
    book = parse(f"{HEAD},colour,fixaton,place\nA,,,red,0.5,bed 3\nB,,,,,\n")
    assert book.plants["A"].extra == {"colour": "red", "fixaton": "0.5"}
    assert book.plants["A"].place == "bed 3"
    assert book.plants["B"].extra == {}
    assert "'colour'" in book.remarks[0]
    assert "'fixaton' (did you mean 'fixation'?)" in book.remarks[0]
    assert "'place'" in book.remarks[0]


def test_headings_and_words_whatever_the_case():
    book = parse("Plant,Seed parent,Pollen-Parent,KIND\nA,,,Variety\n")
    assert book.plants["A"].kind == "variety"
    assert "'Seed parent' was read as 'seed_parent'" in " ".join(book.remarks)


def test_a_loop_is_no_fault():
    book = parse(f"{HEAD}\nA,B,C\nB,A,C\nD,D,D\n")
    assert book.crosses["A × C"].seed_parent == "A"


def test_codes_that_differ_by_case_are_two_plants_here():
    assert list(parse(f"{HEAD}\nA,,\na,,\n").plants) == ["A", "a"]


def test_headings_only_is_an_empty_book():
    book = parse(HEAD)
    assert not book.plants
    assert book.remarks == ["The table has a heading row and no plants."]


def test_settings_of_the_command_line_hold_while_reading():
    text = f"{HEAD},raised\nB,A,,cutting_of\n"
    assert "kind 'plant'" in fault_of(text).todo
    assert parse(text, founders_as="plant").settings.founders_as == "plant"
    assert parse(HEAD, fixation=0.5).settings.variety_fixation == 0.5


def test_files(tmp_path):
    path = tmp_path / "mine.csv"
    path.write_bytes(f"\ufeff{HEAD},name\r\nA,,,Réséda\r\n".encode())
    book = plant_table.read(path)
    assert (book.plants["A"].name, book.path, book.remarks) == ("Réséda", path, [])
    path.write_bytes(f"{HEAD},name\r\nA,,,Réséda\r\n".encode("cp1252"))
    book = plant_table.read(path)
    assert book.plants["A"].name == "Réséda"
    assert "Windows-1252" in book.remarks[0]


def test_ten_thousand_rows():
    rows = [f"P{i},P{i // 2},P{i // 3},{i % 3}" for i in range(6, 10_000)]
    book = parse(f"{HEAD},selfings\n" + "\n".join(rows))
    assert len(book.plants) == 10_000 - 6 + 4
    assert book.plants["P9999"].cross == "P4999 × P3333"
    assert book.plants["P9998"].selfings == 9998 % 3


# What can be wrong -------------------------------------------------------------------------------


@pytest.mark.parametrize(
    ("column", "cell", "what", "todo"),
    [
        ("fixation", "1.2", "over 1", "from 0 to 1"),
        ("fixation", "-0.1", "negative", "from 0 to 1"),
        ("fixation", "50%", "no number", "Write 0.5."),
        ("fixation", "1/2", "no number", "Write 0.5."),
        ("fixation", "1/" + "9" * 5000, "no number", "0.5"),
        ("fixation", "9" * 5000, "too large", "smaller"),
        ("fixation", "0,5", "no number", "Write 0.5, with a decimal point"),
        ("fixation", "nan", "no number", "0.5"),
        ("fixation", "1e999", "too large", "smaller"),
        ("ploidy", "0", "below 1", "from 1 to 64"),
        ("ploidy", "65", "over 64", "from 1 to 64"),
        ("ploidy", "2.5", "no whole number", "whole number"),
        ("kind", "varity", "not one of its words", "Did you mean 'variety'?"),
        ("kind", "zzz", "not one of its words", "Use one of: variety, plant, family."),
        ("raised", "cuting_of", "not one of its words", "Did you mean 'cutting_of'?"),
        ("status", "keept", "not one of its words", "Did you mean 'kept'?"),
        ("sown", "17.05.2021", "no date", "Write 2021-05-17."),
        ("sown", "2021-02-30", "no date", "2021-05"),
    ],
)
def test_bad_cells(column, cell, what, todo):
    fault = fault_of(f'{HEAD},{column}\nX,,,\nA,,,"{cell}"\n')
    assert what in fault.what
    assert todo in fault.todo
    where = fault.where
    assert (where.file, where.row, where.column, where.plant) == ("table.csv", 3, column, "A")


@pytest.mark.parametrize(
    ("cell", "what"),
    [
        ("1.5", "no whole number"),
        ("-1", "negative"),
        ("two", "no whole number"),
        ("9" * 20, "large"),
        ("1001", "over 1000"),
    ],
)
def test_bad_selfings(cell, what):
    fault = fault_of(f"{HEAD},selfings\nA,B,C,{cell}\n")
    assert what in fault.what
    assert fault.where.column == "selfings"


@pytest.mark.parametrize(
    ("odds", "what", "todo"),
    [
        ("B:1.1", "over 1", "from 0 to 1"),
        ("B:-0.1", "negative", "from 0 to 1"),
        ("B:0.8; self:0.3", "add up to 1.1", "Lower them"),
        ("B", "are not a code", "TP:0.8; self:0.2"),
        ("B:x", "no number", "0.5"),
        (":0.5", "are not a code", "TP:0.8"),
        ("B:0.1; B:0.2", "stands twice", "Add its odds up"),
        ("Self:0.5", "is the word", "Did you mean 'self'?"),
    ],
)
def test_bad_odds(odds, what, todo):
    fault = fault_of(f"{HEAD},pollen_odds\nA,S,,{odds}\n")
    assert what in fault.what
    assert todo in fault.todo
    assert fault.where.column == "pollen_odds"
    assert fault.where.row == 2


def test_odds_that_only_seem_to_pass_one():
    parse(f"{HEAD},pollen_odds\nA,S,,a:0.7; b:0.2; c:0.1\nB,S,,a:0.1;b:0.7;c:0.2\n")


def test_odds_and_a_pollen_parent():
    assert "pollen parent and odds" in fault_of(f"{HEAD},pollen_odds\nA,S,B,B:0.5\n").what


def test_self_without_a_seed_parent():
    assert "no seed parent" in fault_of(f"{HEAD},pollen_odds\nA,,,self:0.5\n").what


@pytest.mark.parametrize(
    ("code", "todo"),
    [("a:b", "'a-b'"), ("a; b", "'a-b'"), ("self", "'self-1'"), ("Self", "'Self-1'"), (":", "'1'")],
)
def test_codes_that_cannot_be(code, todo):
    fault = fault_of(f"{HEAD}\n{code},,\n")
    assert todo in fault.todo
    assert fault.where.column == "plant"


@pytest.mark.parametrize("row", ["A,x:y,B", "A,B,self"])
def test_parents_that_cannot_be_codes(row):
    fault = fault_of(f"{HEAD}\n{row}\n")
    assert fault.where.column in ("seed_parent", "pollen_parent")
    assert (fault.where.row, fault.where.plant) == (2, "A")


def test_a_cross_code_that_cannot_be():
    assert fault_of(f"{HEAD},cross\nC,A,B,x;y\n").where.column == "cross"


def test_empty_and_repeated_codes():
    found = faults_of(f"{HEAD},note\n,A,B,x\nC,,,\nC,,,other\nC,,,\n")
    assert [(fault.where.row, fault.what) for fault in found] == [
        (2, "The row has no plant code."),
        (4, "The code 'C' stands in row 3 already."),
        (5, "The row is the same as row 3."),
    ]


@pytest.mark.parametrize(
    ("raised", "row", "what"),
    [
        ("cross", "A,,", "founder"),
        ("seed_of", "A,,", "names no source"),
        ("cutting_of", "A,,", "names no source"),
        ("founder", "A,B,C", "A founder has no parents."),
        ("seed_of", "A,B,C", "has no pollen parent"),
        ("cutting_of", "A,P,C", "has no pollen parent"),
    ],
)
def test_how_a_plant_arose(raised, row, what):
    assert what in fault_of(f"{HEAD},raised,kind\n{row},{raised},\nP,,,,plant\n").what


@pytest.mark.parametrize("raised", ["cutting_of", "doubled_haploid_of", "doubled_of"])
def test_a_cutting_of_a_pool(raised):
    for source, kind in (("V", "variety"), ("M", "family")):
        fault = fault_of(
            f"{HEAD},raised,kind\nV,,,,variety\nM,V,W,,family\nA,{source},,{raised},\n"
        )
        assert f"a {kind}: a pool" in fault.what
        assert f"Give '{source}' the kind 'plant'" in fault.todo
        assert (fault.where.row, fault.where.column) == (4, "seed_parent")


@pytest.mark.parametrize("raised", ["seed_of", "sibbed_in"])
def test_seed_of_a_single_plant(raised):
    fault = fault_of(f"{HEAD},raised,kind\nP,,,,plant\nA,P,,{raised},\n")
    assert "which is a plant, not a pool" in fault.what


@pytest.mark.parametrize(
    ("kind", "right"), [("variety", True), ("plant", False), ("family", False), ("", False)]
)
def test_fixation_of_what_has_parents(kind, right):
    text = f"{HEAD},kind,fixation\nA,B,C,{kind},0.9\n"
    if right:
        assert parse(text).plants["A"].fixation == 0.9
    else:
        assert fault_of(text).where.column == "fixation"


def test_selfings_without_a_cross():
    assert "came from no cross" in fault_of(f"{HEAD},selfings\nA,,,2\n").what


def test_one_cross_code_with_two_pairs_of_parents():
    fault = fault_of(f"{HEAD},cross\nC,A,B,X\nD,A,E,X\n")
    assert fault.what == "The cross 'X' has other parents in row 2."
    assert (fault.where.row, fault.where.column, fault.where.plant) == (3, "cross", "D")
    assert fault_of(f"{HEAD},cross,drawn\nC,A,B,X,one\nD,A,B,X,each\n").where.column == "drawn"
    book = parse(f"{HEAD},cross,drawn\nC,A,B,X,\nD,A,B,X,each\n")
    assert book.crosses["X"].drawn == "each"


@pytest.mark.parametrize("column", ["cross", "drawn"])
def test_a_cross_without_parents(column):
    assert fault_of(f"{HEAD},{column}\nA,,,one\n").where.column == column


def test_missing_columns_and_what_was_meant():
    found = faults_of("plant,seed_prent,colour\nA,B,C\n")
    assert [fault.where.column for fault in found] == ["seed_parent", "pollen_parent"]
    assert "Did you mean it by 'seed_prent'? Name it 'seed_parent'." in found[0].todo
    assert found[1].todo == "Add a column with the heading 'pollen_parent'."


def test_columns_twice_or_without_heading():
    assert "stands twice" in fault_of(f"{HEAD},note,note\nA,,,,\n").what
    assert "no heading" in fault_of(f"{HEAD},\nA,,,x\n").what
    parse(f"{HEAD},,\nA,,,,\n")


def test_everything_wrong_is_told_at_once_and_in_order():
    found = faults_of(
        f"{HEAD},kind,fixation,sown\nA,,,varity,2,yesterday\n,,,,,x\nB:1,,,,,\n"
        'C,"two\nlines",,,,\nD,,,,x,\n'
    )
    assert [fault.where.row for fault in found] == [2, 2, 2, 3, 3, 4, 5, 7]


def test_faults_that_follow_from_another_are_not_told():
    # The kind is unreadable, so nothing is said of what it would allow.
    assert fault_of(f"{HEAD},kind,fixation\nA,B,C,varity,0.9\n").where.column == "kind"
    found = faults_of(f"{HEAD},kind,raised\nA,,,plnt,\nB,A,,cutting_of,\n".replace("of,", "of"))
    assert {fault.where.plant for fault in found} == {"A", "B"}


def test_no_table_at_all():
    for text in ("", "\n\n", " , \n"):
        with pytest.raises(Fault, match="The file is empty"):
            parse(text)
    with pytest.raises(Fault, match="NUL byte"):
        parse(f"{HEAD}\nA\0,,\n")
    with pytest.raises(FileFaults):
        parse("hello world\n")
