"""The history of a line: every generation with what was done, and the figures of the records."""

from __future__ import annotations

import pytest

import pedigreeview
from pedigreeview.book.book import Book
from pedigreeview.book.faults import Cancelled, Fault
from pedigreeview.book.records import Cross, Plant
from pedigreeview.network import PedigreeNetwork
from pedigreeview.places import demo
from pedigreeview.planning.reciprocal_report import reciprocal_report
from pedigreeview.planning.stability import line_report
from pedigreeview.reports.line_history import line_history, pictured
from pedigreeview.reports.line_steps import line_steps
from pedigreeview.reports.report_model import Facts, Picture, Report, Section, Table, Text


@pytest.fixture(scope="module")
def peas() -> PedigreeNetwork:
    return pedigreeview.read(demo("two_peas_both_ways"))


@pytest.fixture(scope="module")
def history(peas: PedigreeNetwork) -> Report:
    return line_history(peas, "19-4-2")


def part(report: Report, name: str) -> Section:
    return next(section for section in report.sections if section.part == name)


def only_table(section: Section) -> Table:
    (found,) = (item for item in section.items if isinstance(item, Table))
    return found


def said(section: Section) -> str:
    return " ".join(item.words for item in section.items if isinstance(item, Text))


def test_the_parts_of_a_whole_history(history: Report) -> None:
    assert history.parts == (
        *("what", "parentage", "founders", "picture", "generations", "selection"),
        *("reciprocals", "segregation", "fixing", "stability", "traits", "doubt"),
        *("cautions", "base"),
    )
    assert history.title == "The history of 19-4-2"
    (facts,) = (item for item in part(history, "what").items if isinstance(item, Facts))
    assert dict(facts.rows)["Method"] == "1 cross, 3 selfings"


def test_every_generation_by_the_records(peas: PedigreeNetwork, history: Report) -> None:
    made = only_table(part(history, "generations"))
    assert made.headings == (
        *("Generation", "Plant", "From", "Year", "Flowers", "Fruits", "Seeds"),
        *("Plants", "Kept", "Culled"),
    )
    book = peas.book
    flowers = sum(p.flowers or 0 for p in book.pollinations.values() if p.cross == "21-01")
    assert made.rows[0] == (
        *("F1", "21-01-3", "TP × BA", "2021", str(flowers), "7", "24", "7", "1", "1"),
    )
    f2 = [p for p in book.plants.values() if p.cross == "21-01-3 ⊗"]
    culled = sum(p.status == "culled" for p in f2)
    assert made.rows[1][1] == "23-19"
    assert made.rows[1][-3:] == (str(len(f2)), "2", str(culled))
    text = said(part(history, "generations"))
    assert "TP (Tarnwick Pale) bore the seed (seed parent)" in text
    assert "Pollinated 2021-06-11 to 2021-06-21: 12 flowers, cover: tape, bag" in text
    assert "Kept beside it: 23-07." in text
    # Why: the note on a sib that was let go, and the finding on another.
    assert "23-33 (culled): 2023-07-28: Most pods of the five, but no sweetness: let go." in text
    assert "21-01-4 (culled): Dwarf and white: a self of Tarnwick Pale." in text


def test_f_by_generation_is_the_networks(peas: PedigreeNetwork, history: Report) -> None:
    rows = only_table(part(history, "fixing")).rows
    assert [row[0] for row in rows] == ["F1", "F2", "F3", "F4"]
    for _, code, text, left in rows:
        assert text.split(" ")[0] == str(peas.inbreeding_exact(code))
        assert left == f"{100 * (1 - peas.inbreeding(code)):.4g}%"


def test_the_picture_holds_that_line_and_nothing_else(
    peas: PedigreeNetwork, history: Report
) -> None:
    (picture,) = part(history, "picture").items
    assert isinstance(picture, Picture)
    assert set(picture.plants) == peas.ancestors("19-4-2") | {"19-4-2"}


def test_selection_sets_the_chosen_beside_its_cross(history: Report) -> None:
    rows = only_table(part(history, "selection")).rows
    at = next(n for n, row in enumerate(rows) if row[0] == "23-19")
    assert rows[at] == ("23-19", "48", "height", "dwarf", "36 tall, 12 dwarf")
    assert rows[at + 3][2:] == ("sweet", "7", "mean 6.167 of 48 plants, 4 to 9")


def test_results_are_those_of_planning(peas: PedigreeNetwork, history: Report) -> None:
    text = said(part(history, "reciprocals"))
    pair = next(p for p in peas.reciprocal_pairs() if "21-01" in p.crosses[0])
    sentences = reciprocal_report(peas, pair).sentences()
    assert all(one in text for one in sentences)
    # Each is said once, unless the report itself says it of several traits.
    assert len(text) == len(" ".join(sentences)) + text.count("  ")
    assert all(
        one in said(part(history, "stability")) for one in line_report(peas, "19-4-2").sentences()
    )
    assert "Height: 36 tall, 12 dwarf." in said(part(history, "segregation"))


def test_the_description_has_the_founders_beside(history: Report) -> None:
    made = only_table(part(history, "traits"))
    assert made.headings == ("Trait", "Scored as", "19-4-2", "TP", "BA")
    rows = {row[0]: row[1:] for row in made.rows}
    assert rows["height"] == ("one of: tall, dwarf", "dwarf (21 of 21)", "dwarf", "tall")
    assert rows["sweet"][0] == "score 1 to 9, the highest is best, young peas eaten raw"


def test_rights_health_and_base_are_said(peas: PedigreeNetwork, history: Report) -> None:
    cautions = said(part(history, "cautions"))
    assert "Plant-variety rights" in cautions
    assert "Plant health" in cautions
    assert cautions.startswith("The rules of the place come first, then licensed")
    base = part(history, "base")
    assert base.items[0] == Text(peas.base_sentence())
    assert [row[0] for row in only_table(base).rows] == ["TP (Tarnwick Pale)", "BA (Brockle Amber)"]


def test_a_protected_founder_is_named() -> None:
    book = Book()
    for record in (
        Plant("A", name="Ay", protected="yes, to 2030"),
        Plant("B"),
        Plant("K", cross="X"),
        Cross("X", "A", "B"),
    ):
        book.add(record)
    report = line_history(PedigreeNetwork.from_records(book), "K")
    assert report.parts == (
        *("what", "parentage", "founders", "picture", "generations", "fixing", "cautions", "base"),
    )
    assert "On record as protected: A (Ay): yes, to 2030." in said(part(report, "cautions"))
    assert "not say whether these are protected: B." in said(part(report, "founders"))


def test_a_founder_has_no_history(peas: PedigreeNetwork) -> None:
    with pytest.raises(Fault, match="TP is a founder"):
        line_history(peas, "TP")


def test_a_line_below_a_loop_is_told_and_its_numbers_are_withheld() -> None:
    tomatoes = pedigreeview.read(demo("a_leaf_for_hollin_plate"))
    report = line_history(tomatoes, "23-01-2 row")
    assert {row[-1] for row in only_table(part(report, "fixing")).rows} == {"withheld"}
    assert "is its own ancestor" in said(part(report, "doubt"))


def test_a_clone_is_a_step_of_its_own() -> None:
    lilies = pedigreeview.read(demo("tansy_and_the_moths"))
    steps = line_steps(lilies, "16-01-2a")
    assert [step.plants for step in steps] == [("16-01-2",), ("16-01-2a",)]
    report = line_history(lilies, "16-01-2a")
    assert "A cutting, division or shoot of 16-01-2" in said(part(report, "generations"))
    assert "stability" not in report.parts


def test_a_long_line_keeps_the_nearest_in_its_picture() -> None:
    book = Book()
    book.add(Plant("p0"))
    for n in range(1, 400):
        book.add(Cross(f"c{n}", f"p{n - 1}", f"p{n - 1}", intended="selfing"))
        book.add(Plant(f"p{n}", cross=f"c{n}"))
    net = PedigreeNetwork.from_records(book)
    way = [f"p{n}" for n in range(400)]
    assert pictured(net, "p399", way) == tuple(way[-120:])
    report = line_history(net, "p399")
    (picture,) = part(report, "picture").items
    assert isinstance(picture, Picture)
    assert picture.words.endswith("280 plants further back are left out.")
    assert "99 earlier steps are in the book" in said(part(report, "generations"))


def test_it_can_be_stopped(peas: PedigreeNetwork) -> None:
    def tick(*_: object) -> None:
        raise Cancelled

    with pytest.raises(Cancelled):
        line_history(peas, "19-4-2", tick=tick)


def test_only_some_parts(history: Report) -> None:
    assert history.only(["base", "what"]).parts == ("what", "base")
