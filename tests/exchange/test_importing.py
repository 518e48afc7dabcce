"""Foreign tables: what is guessed, asked, previewed, read, refused, and laid beside a book."""

from __future__ import annotations

import datetime
import json

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from pedigreeview.book.book import Book
from pedigreeview.book.edits import Edit
from pedigreeview.book.faults import Fault, FileFaults
from pedigreeview.book.records import Cross, Plant
from pedigreeview.exchange import plant_table
from pedigreeview.exchange.import_layouts import recall, remember
from pedigreeview.exchange.import_plan import ImportPlan, guess_plan
from pedigreeview.exchange.importing import Imported, carry_out, preview
from pedigreeview.exchange.same_plants import look_alikes
from pedigreeview.exchange.spreadsheet_writing import workbook_bytes
from pedigreeview.exchange.spreadsheets import Sheets, read_table
from tests.network.random_books import books

TODAY = datetime.date(2026, 6, 1)

ONE_CELL = """\
My crosses,,,,
No,Cross,Sown,Height,Colour
24-1,Moss x Ash,3/5/2024,12,red
24-2,Ash x Moss,13/5/2024,14,blue
24-3,(Moss x Ash) x Fern,,9,
24-4,?,,,
24-5,Moss selfed,,,
24-6,Moss OP,,,
24-7,Fern ♂ x Ash ♀,,,
"""


def opened(text: str) -> Sheets:
    return read_table(text.encode(), "t.csv")


def imported(text: str, plan: ImportPlan | None = None, into: Book | None = None) -> Imported:
    sheets = opened(text)
    return carry_out(sheets, plan or guess_plan(sheets), into, today=TODAY)


def meanings(plan: ImportPlan) -> list[str]:
    return [column.meaning for column in plan.columns]


def test_a_table_with_both_parents_in_one_cell() -> None:
    plan = guess_plan(opened(ONE_CELL))
    assert plan.heading == 1
    assert meanings(plan) == ["plant", "parents", "sown", "trait", "kept"]
    assert plan.marks == {"?": "unknown"}
    assert plan.date_order == "day-month"
    assert "'13/5/2024' put the day first" in " ".join(plan.why)
    found = imported(ONE_CELL, plan)
    book = found.book
    # 'Moss x Ash' and 'Ash x Moss' tell no direction, so they are one cross of unknown direction.
    assert book.plants["24-1"].cross == book.plants["24-2"].cross == "Ash × Moss"
    assert not book.crosses["Ash × Moss"].direction_known
    assert book.plants["24-1"].sown == "2024-05-03"
    assert book.plants["24-1"].extra == {"Colour": "red"}
    assert book.plants["24-4"].cross == ""
    assert book.crosses[book.plants["24-5"].cross].intended == "selfing"
    assert book.crosses[book.plants["24-6"].cross].intended == "open"
    signed = book.crosses[book.plants["24-7"].cross]
    assert (signed.seed_parent, signed.pollen_parent, signed.direction_known) == (
        "Ash", "Fern", True,
    )  # fmt: skip
    # The plant inside the brackets has no row; it is added under its own notation.
    inner = book.crosses[book.plants["24-3"].cross]
    assert {inner.seed_parent, inner.pollen_parent} == {"Moss/Ash", "Fern"}
    assert book.plants["Moss/Ash"].cross == "Ash × Moss"
    assert [(s.plant, s.value) for s in book.scores] == [
        ("24-1", "12"), ("24-2", "14"), ("24-3", "9"),
    ]  # fmt: skip
    assert book.traits["Height"].type == "measure"
    said = "\n".join(found.report.lines())
    assert "does not say that the seed parent stands first" in said
    assert "1 plant that the notation names without a row was added, such as 'Moss/Ash'." in said
    assert "'?' under a parent was read as not known." in said


def test_the_direction_is_known_where_the_person_says_so() -> None:
    plan = guess_plan(opened(ONE_CELL))
    from dataclasses import replace

    book = imported(ONE_CELL, replace(plan, seed_parent_first=True)).book
    assert book.plants["24-1"].cross == "Moss × Ash"
    assert book.plants["24-2"].cross == "Ash × Moss"
    assert all(cross.direction_known for cross in book.crosses.values())
    said = guess_plan(opened("Code,Seed parent x pollen parent\nA,B x C\n"))
    assert said.seed_parent_first is True


def test_slash_notation_makes_the_plants_between() -> None:
    from dataclasses import replace

    text = "Line,Pedigree\nScout,Nebred//Hope/Turkey Red/3/Cheyenne/Ponca\nK,Lincoln*2/Richland\n"
    plan = replace(guess_plan(opened(text)), seed_parent_first=True)
    assert meanings(plan) == ["plant", "parents"]
    book = imported(text, plan).book
    last = book.crosses[book.plants["Scout"].cross]
    assert (last.seed_parent, last.pollen_parent) == ("Nebred//Hope/Turkey Red", "Cheyenne/Ponca")
    back = book.crosses[book.plants["K"].cross]
    assert (back.seed_parent, back.pollen_parent) == ("Lincoln", "Lincoln/Richland")


def test_two_columns_of_parents_with_marks_asked_once() -> None:
    text = (
        "Seedling;Mother;Father;Ploidy;Status;Planted\n"
        "K1;A;B;4x;growing;2021\nK2;A;?;tetraploid;dead;5. Mai 2021\nK3;A;OP;;;\nK4;0;B;;;\n"
        "K5;A;;;;\nK1;A;B;4x;growing;2021\n"
    )
    plan = guess_plan(opened(text))
    assert meanings(plan)[:3] == ["plant", "seed_parent", "pollen_parent"]
    assert plan.marks == {"?": "unknown", "OP": "open", "0": "unknown", "": "unknown"}
    with pytest.raises(FileFaults) as caught:
        imported(text, plan)
    (fault,) = caught.value.faults
    assert (fault.where.row, fault.where.column) == (3, "Planted")
    found = imported(text.replace("5. Mai 2021", "5 May 2021"), plan)
    book = found.book
    assert book.plants["K2"].sown == "2021-05-05"
    assert book.plants["K1"].ploidy == book.plants["K2"].ploidy == 4
    assert book.crosses[book.plants["K2"].cross].intended == ""
    assert book.crosses[book.plants["K3"].cross].intended == "open"
    assert book.crosses[book.plants["K4"].cross].seed_parent == ""
    assert book.pollen_candidates == []
    assert book.plants["K2"].extra == {"Status (note)": "dead"}
    assert "Rows that stand twice, word for word, were taken once." in found.report.left_out


def test_the_program_s_own_table_needs_no_answers() -> None:
    text = "plant,seed_parent,pollen_parent\nA,,\nB,A,\nC,A,B\n"
    assert imported(text).book.crosses == plant_table.parse(text, "t.csv").crosses


def test_faults_stand_under_the_person_s_headings_and_nothing_comes_in() -> None:
    text = "Code,Mother,Father,Fixation\nA,B,C,2\nA,B,D,\n,B,C,\n"
    shown = preview(opened(text), guess_plan(opened(text)), today=TODAY)
    assert shown.headings == ("Code", "Mother", "Father", "Fixation")
    assert shown.rows[0] == (2, ("A", "B", "C", "2"))
    assert shown.marked == {(2, "Fixation"), (3, "Code"), (4, "Code")}
    assert len(preview(opened(text), guess_plan(opened(text)), most_faults=1).faults) == 1
    with pytest.raises(FileFaults):
        imported(text)


def test_what_a_plan_lacks_is_said() -> None:
    sheets = opened("x,y\nA A,1\nA A,2\n")
    plan = guess_plan(sheets).meaning(0, "kept").meaning(1, "left_out")
    assert preview(sheets, plan).missing == ("No column holds the codes of the plants.",)
    with pytest.raises(Fault, match="No column holds the codes"):
        carry_out(sheets, plan)


def test_one_row_for_each_cross() -> None:
    text = (
        "Cross no,Seed parent,Pollen parent,Date,Flowers,Set,Seeds,Done by,Weather\n"
        "24-1,A,B,5/13/2024,6,3,14,Ann,wet\n24-1,A,B,5/14/2024,2,0,,,\n24-2,A,OP,,,,,,\n"
        "24-3,24-1,C,,,,,,\n,B,B,,,,,,\n"
    )
    plan = guess_plan(opened(text))
    assert plan.form == "crosses"
    assert plan.date_order == "month-day"
    plan = plan.meaning(7, "by")
    found = imported(text, plan)
    book = found.book
    first = book.crosses["24-1"]
    assert (first.seed_parent, first.pollen_parent, first.made_on) == ("A", "B", "2024-05-13")
    assert first.extra == {"Weather": "wet"}
    assert [(p.flowers, p.set, p.date, p.by) for p in book.pollinations.values()] == [
        (6, 3, "2024-05-13", "Ann"), (2, 0, "2024-05-14", ""),
    ]  # fmt: skip
    assert [h.seeds for h in book.harvests.values()] == [14]
    assert book.crosses["24-2"].intended == "open"
    # A parent with the code of a cross is one plant of it that nobody recorded.
    assert book.plants["24-1"].cross == "24-1"
    assert book.crosses["B ⊗"].intended == "selfing"
    clash = text + "24-2,C,B,,,,,,\n"
    with pytest.raises(FileFaults) as caught:
        imported(clash, guess_plan(opened(clash)))
    assert caught.value.faults[0].where.column == "Cross no"


def test_dates_and_numbers_of_a_spreadsheet_keep_their_types() -> None:
    rows = [[2101, "A", "B", datetime.date(2021, 5, 17), 1.5], ["2102", "A", 2101, "", 2]]
    data = workbook_bytes([("S", ["Code", "Mother", "Father", "Sown", "Height"], rows)])
    sheets = read_table(data, "t.xlsx")
    book = carry_out(sheets, guess_plan(sheets), today=TODAY).book
    assert book.plants["2101"].sown == "2021-05-17"
    assert book.crosses[book.plants["2102"].cross].pollen_parent == "2101"
    assert [score.value for score in book.scores] == ["1.5", "2"]


def test_spellings_are_offered_and_merged_only_when_said() -> None:
    from dataclasses import replace

    text = "Code,Mother,Father\nK1,Old Rose,B-1\nK2,old rose,B1\nK3,OldRose.,b1\nK0,KO,B\n"
    sheets, plan = opened(text), guess_plan(opened(text))
    groups = look_alikes(sheets, plan)
    assert [set(group.codes) for group in groups] == [
        {"Old Rose", "old rose"}, {"B1", "b1"}, {"Old Rose", "old rose", "OldRose."},
        {"B-1", "B1", "b1"}, {"K0", "KO"},
    ]  # fmt: skip
    assert {"Old Rose", "old rose", "OldRose."} <= set(imported(text).book.plants)
    same = dict.fromkeys(("old rose", "OldRose."), "Old Rose")
    merged = imported(text, replace(plan, same=same))
    assert "old rose" not in merged.book.plants
    assert "'old rose' was taken as 'Old Rose', as you said." in merged.report.guessed
    known = look_alikes(sheets, plan, Book(plants={"OLD ROSE": Plant("OLD ROSE")}))
    assert known[0].proposed == "OLD ROSE"


def test_a_layout_is_remembered_as_plain_data() -> None:
    from dataclasses import replace

    sheets = opened(ONE_CELL)
    plan = replace(guess_plan(sheets), seed_parent_first=True, marks={"?": "open"})
    plan = plan.meaning(4, "trait", "colour of the flower").meaning(3, "left_out")
    memory = json.loads(json.dumps(remember({}, sheets, plan)))
    other = opened(ONE_CELL.replace("24-1", "25-1"))
    again = recall(memory, other, guess_plan(other))
    assert meanings(again) == ["plant", "parents", "sown", "left_out", "trait"]
    assert again.columns[4].trait == "colour of the flower"
    assert again.seed_parent_first is True
    assert again.marks == {"?": "open"}
    changed = opened(ONE_CELL.replace("Colour", "Scent"))
    assert meanings(recall(memory, changed, guess_plan(changed)))[4] == "kept"
    broken = {key: {"form": "plants", "columns": [1]} for key in memory}
    assert recall(broken, other, guess_plan(other)) == guess_plan(other)


def test_into_a_book_that_has_records() -> None:
    mine = Book()
    for record in (
        Plant("A", name="Ash"), Plant("B"), Plant("C"),
        Cross("21-01", "A", "B", "", "cross"), Plant("K1", cross="21-01", status="kept"),
        Plant("K2"),
    ):  # fmt: skip
        mine.add(record)
    text = (
        "plant,seed_parent,pollen_parent,name,status\n"
        "A,,,Ash tree,\nK1,A,B,,growing\nK2,A,C,second,\nK3,A,B,,\nC,,,,\n"
    )
    found = imported(text, None, mine)
    differences = {(d.key, d.field): (d.mine, d.theirs, d.usual) for d in found.differences}
    assert differences == {
        ("A", "name"): ("Ash", "Ash tree", "mine"),
        ("K1", "status"): ("kept", "growing", "mine"),
        ("K2", "parents"): ("", "A × C", "theirs"),
        ("K2", "name"): ("", "second", "theirs"),
    }
    edit = Edit(mine, "Import")
    found.apply(edit)
    book = edit.book
    assert (book.plants["A"].name, book.plants["K1"].status) == ("Ash", "kept")
    assert book.plants["K1"].cross == "21-01"
    assert book.crosses[book.plants["K2"].cross].pollen_parent == "C"
    assert book.plants["K3"].cross == "A × B"
    assert "beside 21-01, which has the same parents" in " ".join(found.report.guessed)
    theirs = Edit(mine, "Import")
    found.apply(theirs, "theirs")
    assert theirs.book.plants["A"].name == "Ash tree"
    one = Edit(mine, "Import")
    found.apply(one, {found.differences[0]: "theirs"})
    assert one.book.plants["A"].name == "Ash tree"
    assert one.book.plants["K1"].status == "kept"
    assert mine.plants["A"].name == "Ash"
    assert mine.plants["K2"].cross == ""


CELLS = st.text(st.sampled_from(list("AB1/×x*() ?;:⊗\"'\n=.-5")), max_size=9)


@settings(max_examples=80)
@given(st.lists(st.lists(CELLS, min_size=3, max_size=4), min_size=1, max_size=6))
def test_any_cells_are_read_or_refused(rows: list[list[str]]) -> None:
    data = workbook_bytes([("S", ["Code", "Parents", "Sown", "Height"], rows)])
    sheets = read_table(data, "t.xlsx")
    plan = guess_plan(sheets, heading=0)
    look_alikes(sheets, plan)
    try:
        found = carry_out(sheets, plan, today=TODAY)
    except (Fault, FileFaults):
        assert preview(sheets, plan, today=TODAY).faults or preview(sheets, plan).missing
        return
    assert not preview(sheets, plan, today=TODAY).faults
    edit = Edit(Book(), "Import")
    found.apply(edit)
    assert edit.book.plants == found.book.plants


@settings(max_examples=25)
@given(books(most=10))
def test_a_written_table_imports_as_it_was(book: Book) -> None:
    headings, lines = plant_table.table_lines(book)
    data = workbook_bytes([("S", headings, lines)])
    sheets = read_table(data, "t.xlsx")
    found = carry_out(sheets, guess_plan(sheets, form="plants", heading=0), today=TODAY).book
    from pedigreeview.exchange.text_files import to_text

    read = plant_table.parse(to_text(headings, lines), "t.csv")
    assert found.plants == read.plants
    assert set(found.crosses) == set(read.crosses)
