"""An edit: what it changes, what it refuses, and that it leaves the snapshot before as it was."""

from __future__ import annotations

from copy import deepcopy

import numpy as np
import pytest

from pedigreeview.book.book import Book
from pedigreeview.book.columns import PlantColumns, columns_of, fill
from pedigreeview.book.edit_faults import (
    BadCell,
    ChangedElsewhere,
    KeyTaken,
    NoSuchKey,
    StillNamed,
)
from pedigreeview.book.edits import Edit
from pedigreeview.book.faults import Fault
from pedigreeview.book.records import (
    TABLES,
    AcceptedCheck,
    Bookmark,
    Cross,
    Harvest,
    Note,
    Packet,
    ParentFinding,
    Photo,
    Plant,
    PollenCandidate,
    PollenLot,
    Pollination,
    Score,
    Sowing,
    Trait,
)


def garden() -> Book:
    """Every kind of place that names a plant or a cross."""
    book = Book()
    for record in (
        Plant("V", kind="variety"),
        Plant("K17", kind="variety"),
        Plant("K1", source="K17", raised="cutting_of"),
        Cross("X", "V", "K17"),
        Cross("Y", "K17", "K17", intended="selfing"),
        Cross("Z", "V"),
        Plant("A", cross="X"),
        Plant("B", cross="Y"),
        PollenCandidate("Z", "K17", 0.5),
        PollenCandidate("Z", "self", 0.5),
        ParentFinding("A", "K17"),
        ParentFinding("B", "self"),
        PollenLot("L", "V; K17 ;K1"),
        Pollination("P1", "X", pollen_lot="L"),
        Harvest("H1", "X", packet=""),
        Packet("S1", "H1", borne_on="K17"),
        Sowing("B1", "S1", sown_from="X"),
        Sowing("B2", sown_from="K17"),
        Trait("height", "measure"),
        Score("K17", "height", "2021", value="3"),
        Note("plant K17", text="K17 is tall"),
        Note("pollen lot L", text="dry"),
        Bookmark("here", "K17", "V;K17"),
        AcceptedCheck("used_after_life", "K17; V"),
        Photo("k.jpg", "K17"),
    ):
        book.add(record)
    return book


def content(book: Book) -> dict[str, list[object]]:
    return {name: list(book.table(name)) for name in TABLES} | {"book": [book.settings]}


def test_the_snapshot_before_stays_as_it_was() -> None:
    book = garden()
    before = deepcopy(content(book))
    edit = Edit(book, "Everything")
    edit.add(Plant("N", cross="X"))
    edit.update(book.plants["A"], name="first")
    edit.rename(book.plants["K17"], "K18")
    edit.remove(book.pollen_candidates[1])
    edit.set_settings(name="Peas")
    assert content(book) == before
    assert book.row_ids is None
    assert edit.book.plants["N"].cross == "X"
    # What is not touched is shared, not copied.
    assert edit.book.traits is book.traits
    assert edit.book.plants["V"] is book.plants["V"]


def test_rename_reaches_every_place_and_nothing_else() -> None:
    edit = Edit(garden(), "")
    edit.rename(edit.book.plants["K17"], "K17b")
    new = edit.book
    assert list(new.plants) == ["V", "K17b", "K1", "A", "B"]
    assert new.plants["K1"].source == "K17b"
    assert (new.crosses["X"].pollen_parent, new.crosses["Y"].seed_parent) == ("K17b", "K17b")
    assert new.crosses["Y"].pollen_parent == "K17b"
    assert [item.candidate for item in new.pollen_candidates] == ["K17b", "self"]
    assert [item.pollen_parent for item in new.parent_findings] == ["K17b", "self"]
    assert new.pollen_lots["L"].plant == "V; K17b ;K1"
    assert new.packets["S1"].borne_on == "K17b"
    assert [item.sown_from for item in new.sowings.values()] == ["X", "K17b"]
    assert new.scores[0].plant == "K17b"
    assert new.notes[0].about == "plant K17b"
    assert new.notes[0].text == "K17 is tall"
    assert (new.bookmarks["here"].focus, new.bookmarks["here"].pinned) == ("K17b", "V;K17b")
    assert new.accepted_checks[0].keys == "K17b; V"
    assert new.photos["k.jpg"].plant == "K17b"
    assert edit.change().pedigree


def test_rename_of_a_cross_a_lot_and_a_trait() -> None:
    edit = Edit(garden(), "")
    edit.rename(edit.book.crosses["X"], "24-01")
    edit.rename(edit.book.pollen_lots["L"], "M")
    edit.rename(edit.book.traits["height"], "tall")
    new = edit.book
    assert list(new.crosses) == ["24-01", "Y", "Z"]
    assert new.plants["A"].cross == new.sowings["B1"].sown_from == "24-01"
    assert new.pollinations["P1"].cross == new.harvests["H1"].cross == "24-01"
    assert new.pollinations["P1"].pollen_lot == "M"
    assert new.notes[1].about == "pollen lot M"
    assert new.scores[0].trait == "tall"


def test_sown_from_means_the_cross_where_a_plant_has_the_same_code() -> None:
    book = garden()
    book.add(Plant("X"))
    edit = Edit(book, "")
    edit.rename(book.plants["X"], "W")
    assert edit.book.sowings["B1"].sown_from == "X"
    edit.rename(edit.book.crosses["X"], "XX")
    assert edit.book.sowings["B1"].sown_from == "XX"


def test_keys_that_are_taken_or_missing_are_refused() -> None:
    edit = Edit(garden(), "")
    with pytest.raises(KeyTaken, match="There is a plant 'A' already"):
        edit.add(Plant("A"))
    with pytest.raises(KeyTaken):
        edit.rename(edit.book.plants["A"], "B")
    with pytest.raises(KeyTaken):
        edit.add(PollenCandidate("Z", "K17", 0.1))
    with pytest.raises(NoSuchKey, match="no plant of this book") as found:
        edit.add(Cross("Q", "V", "nobody"))
    assert (found.value.column, found.value.key) == ("pollen_parent", "nobody")
    with pytest.raises(NoSuchKey):
        edit.add(PollenLot("N", "V;nobody"))
    with pytest.raises(NoSuchKey, match="cross or plant"):
        edit.update(edit.book.sowings["B1"], sown_from="nobody")
    assert edit.changes == []


@pytest.mark.parametrize(
    ("record", "column"),
    [
        (Plant(""), "plant"),
        (Plant("self"), "plant"),
        (Plant("a;b"), "plant"),
        (Plant(" a"), "plant"),
        (Plant("a\nb"), "plant"),
        (Plant("N", kind="tree"), "kind"),
        (Plant("N", sown="17.5.2021"), "sown"),
        (Plant("N", note="a\x00b"), "note"),
        (Plant("N", fixation=float("nan")), "fixation"),
        (Plant("N", ploidy=2**70), "ploidy"),
        (PollenCandidate("Z", "V", 1.5), "odds"),
        (Pollination("P2", "X", flowers=-1), "flowers"),
    ],
)
def test_a_value_that_does_not_fit_is_refused(record: object, column: str) -> None:
    edit = Edit(garden(), "")
    with pytest.raises(BadCell) as found:
        edit.add(record)  # type: ignore[arg-type]
    assert found.value.column == column
    assert found.value.todo
    assert edit.changes == []


def test_a_value_of_another_type_is_a_bug() -> None:
    with pytest.raises(TypeError):
        Edit(garden(), "").add(Plant("N", selfings="2"))  # type: ignore[arg-type]
    with pytest.raises(TypeError):
        Edit(garden(), "").add(Plant("N", name=None))  # type: ignore[arg-type]


def test_what_is_named_cannot_be_removed() -> None:
    edit = Edit(garden(), "")
    with pytest.raises(StillNamed) as found:
        edit.remove(edit.book.plants["K17"])
    kinds = [namer.TABLE for namer in found.value.namers]
    # One place each, in the order of the tables; the mark 'this is right' holds nothing.
    assert kinds == [
        "plants", "crosses", "crosses", "pollen_candidates", "parent_findings", "packets",
        "sowings", "scores", "pollen_lots", "notes", "bookmarks", "photos",
    ]  # fmt: skip
    assert "2 crosses" in found.value.what
    assert edit.named_by(edit.book.plants["K17"]) == found.value.namers
    assert edit.changes == []


def test_removal_takes_the_marks_along() -> None:
    book = Book()
    book.add(Plant("A"))
    book.add(Plant("B"))
    book.add(AcceptedCheck("unlinked_plant", "A"))
    book.add(AcceptedCheck("unlinked_plant", "B"))
    edit = Edit(book, "Remove A")
    edit.remove(book.plants["A"])
    assert list(edit.book.plants) == ["B"]
    assert [mark.keys for mark in edit.book.accepted_checks] == ["B"]


def test_many_removals_count_the_names_once() -> None:
    book = Book()
    for number in range(40):
        book.add(Plant(f"P{number}", source=f"P{number - 1}" if number % 2 else ""))
    edit = Edit(book, "")
    for number in range(1, 40, 2):
        with pytest.raises(StillNamed):
            edit.remove(edit.book.plants[f"P{number - 1}"])
        edit.remove(edit.book.plants[f"P{number}"])
        edit.remove(edit.book.plants[f"P{number - 1}"])
    assert edit.book.plants == {}
    edit.add(Plant("P0"))
    edit.add(Note("plant P0"))
    with pytest.raises(StillNamed):
        edit.remove(edit.book.plants["P0"])


def test_a_change_made_elsewhere_is_not_written_over() -> None:
    shown = garden()
    other = Edit(shown, "elsewhere")
    other.update(shown.plants["A"], note="theirs", place="bed 1")
    edit = Edit(other.book, "mine")
    # Another column of the same record does no harm, nor does the same value.
    edit.update(shown.plants["A"], name="mine", place="bed 1")
    assert edit.book.plants["A"].note == "theirs"
    with pytest.raises(ChangedElsewhere) as found:
        edit.update(shown.plants["A"], note="mine", status="kept")
    assert found.value.columns == ("note",)
    with pytest.raises(ChangedElsewhere):
        edit.remove(shown.plants["A"])
    # A form that hands over what it showed changes nothing.
    edit.update(shown.plants["A"], note="")
    assert edit.book.plants["A"].note == "theirs"


def test_a_record_that_is_gone() -> None:
    shown = garden()
    other = Edit(shown, "elsewhere")
    other.remove(shown.scores[0])
    other.remove(shown.sowings["B2"])
    for record in (shown.scores[0], shown.sowings["B2"]):
        with pytest.raises(ChangedElsewhere, match="no longer in the book"):
            Edit(other.book, "").update(record, note="x")


def test_rows_without_a_key_are_told_apart() -> None:
    book = Book()
    book.add(Plant("A"))
    book.add(Trait("t", "score"))
    same = [Score("A", "t", value="1") for _ in range(3)]
    for score in same:
        book.add(score)
    edit = Edit(book, "")
    edit.update(same[1], value="2")
    assert [score.value for score in edit.book.scores] == ["1", "2", "1"]
    # Shown before, and known again after it was changed within the edit.
    edit.update(same[1], note="n")
    assert edit.book.scores[1] == Score("A", "t", value="2", note="n")
    edit.remove(edit.book.scores[0])
    assert [score.value for score in edit.book.scores] == ["2", "1"]
    # A copy from a file that was read anew is found by its values.
    edit.update(Score("A", "t", value="1"), by="Ann")
    assert [score.by for score in edit.book.scores] == ["", "Ann"]
    edit.update(edit.book.scores[0], date="2021")
    assert [score.date for score in edit.book.scores] == ["2021", ""]


def test_changes_are_net_and_carry_whole_rows() -> None:
    book = garden()
    edit = Edit(book, "Try")
    edit.add(Plant("N"))
    edit.remove(edit.book.plants["N"])
    first = edit.update(book.plants["A"], name="x")
    edit.update(first, name="")
    assert edit.changes == []
    assert edit.change().keys == {}
    edit.update(edit.book.plants["A"], name="y")
    (change,) = edit.changes
    assert (change.table, change.row_id) == ("plants", 4)
    assert change.before is not None
    assert change.after is not None
    assert (change.before["name"], change.after["name"]) == ("", "y")
    assert change.after["cross"] == "X"
    assert change.differing() == {"name"}


def test_what_changed_is_told() -> None:
    book = garden()
    edit = Edit(book, "Score")
    edit.update(book.plants["A"], name="x", status="kept", note="n", sown="2021", place="bed")
    edit.update(book.scores[0], value="4")
    edit.add(Note("pollen lot L", text="x"))
    edit.set_settings(name="Peas", code_pattern="{yy}")
    change = edit.change()
    assert change.words == "Score"
    assert not change.pedigree
    assert change.keys == {
        "plants": {"A"},
        "scores": {"K17"},
        "notes": {"L"},
        "book": {"name", "code_pattern"},
    }


@pytest.mark.parametrize(
    "act",
    [
        lambda edit: edit.add(Plant("N")),
        lambda edit: edit.update(edit.book.plants["A"], selfings=1),
        lambda edit: edit.update(edit.book.plants["K17"], fixation=0.5),
        lambda edit: edit.update(edit.book.crosses["X"], drawn="each"),
        lambda edit: edit.update(edit.book.pollen_candidates[0], odds=0.4),
        lambda edit: edit.remove(edit.book.parent_findings[0]),
        lambda edit: edit.set_settings(plant_fixation=0.5),
    ],
)
def test_what_the_network_must_know(act: object) -> None:
    edit = Edit(garden(), "")
    act(edit)  # type: ignore[operator]
    assert edit.change().pedigree


def test_new_rows_stand_last_and_ids_are_never_given_twice() -> None:
    edit = Edit(garden(), "")
    edit.add(Plant("N1"))
    edit.remove(edit.book.plants["N1"])
    edit.add(Plant("N2"))
    (change,) = edit.changes
    assert change.row_id == 7
    assert next(reversed(edit.book.plants)) == "N2"


def test_a_photo_brings_and_takes_its_file() -> None:
    book = garden()
    edit = Edit(book, "Photo")
    edit.add_photo(Photo("n.jpg", "A"), b"picture")
    (stored,) = edit.book.files.values()
    assert stored.path == "photos/n.jpg"
    assert edit.contents == {stored.content: b"picture"}
    edit.rename(edit.book.photos["n.jpg"], "m.jpg")
    assert list(edit.book.files) == ["photos/m.jpg"]
    edit.remove(edit.book.photos["m.jpg"])
    assert edit.book.files == {}
    assert edit.changes == []


def test_an_edit_of_a_large_table_that_is_kept_as_columns() -> None:
    book = Book()
    columns = PlantColumns(
        plants={"A": 0, "B": 1, "C": 2},
        cells={"kind": ["", "", ""], "name": ["one", "", ""]},
        extra={},
        source=np.array([-1, -1, -1]),
        cross=np.array([-1, -1, 0]),
        crosses={"X": 0},
        cross_seed=np.array([0]),
        cross_pollen=np.array([1]),
    )
    fill(book, columns)
    edit = Edit(book, "")
    edit.add(Plant("D", cross="X"))
    edit.update(book.plants["A"], name="two")
    assert [plant.plant for plant in edit.book.plants.values()] == ["A", "B", "C", "D"]
    assert edit.book.plants["A"].name == "two"
    assert edit.book.plants["C"].cross == "X"
    assert columns_of(edit.book) is None
    assert edit.book.crosses is book.crosses
    assert len(book.plants) == 3
    assert book.plants["A"].name == "one"
    assert columns_of(book) is columns


def test_every_fault_has_a_sentence_and_a_way_on() -> None:
    edit = Edit(garden(), "")
    acts = (
        lambda: edit.add(Plant("A")),
        lambda: edit.add(Cross("Q", "nobody")),
        lambda: edit.remove(edit.book.plants["V"]),
        lambda: edit.update(Plant("gone"), name="x"),
    )
    for act in acts:
        with pytest.raises(Fault) as found:
            act()
        assert found.value.what.endswith(".")
        assert found.value.todo.endswith(".")
