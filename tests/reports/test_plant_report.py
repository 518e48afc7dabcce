"""The report on one plant: what stands in it, that it is the network's, and what stays out."""

from __future__ import annotations

from fractions import Fraction

import pytest

import pedigreeview
from pedigreeview.book.book import Book, BookSettings
from pedigreeview.book.faults import Fault
from pedigreeview.book.records import (
    Cross,
    Evidence,
    Note,
    ParentFinding,
    Photo,
    Plant,
    PollenCandidate,
    Score,
    Trait,
)
from pedigreeview.drawing.telling import tell_with
from pedigreeview.network import PedigreeNetwork
from pedigreeview.places import demo
from pedigreeview.reports.plant_report import plant_report
from pedigreeview.reports.report_model import Facts, Report, Section, Table, Text
from pedigreeview.reports.report_parts import table
from pedigreeview.reports.report_words import (
    counted,
    cross_signs,
    crossed_words,
    listed,
    part_words,
    span,
)


@pytest.fixture(scope="module")
def peas() -> PedigreeNetwork:
    return pedigreeview.read(demo("two_peas_both_ways"))


def part(report: Report, name: str) -> Section:
    return next(section for section in report.sections if section.part == name)


def facts(section: Section) -> dict[str, str]:
    return {k: v for item in section.items if isinstance(item, Facts) for k, v in item.rows}


def tables(section: Section) -> list[Table]:
    return [item for item in section.items if isinstance(item, Table)]


def bare(*plants: Plant, crosses: tuple[Cross, ...] = (), **more: object) -> PedigreeNetwork:
    book = Book(settings=BookSettings(name="small"), **more)  # type: ignore[arg-type]
    for record in (*plants, *crosses):
        book.add(record)
    return PedigreeNetwork.from_records(book)


def test_all_about_a_selection(peas: PedigreeNetwork) -> None:
    report = plant_report(peas, "19-4-2")
    assert report.title == "19-4-2"
    assert report.below == "From the book 'Two peas, both ways', crop: pea"
    what = facts(part(report, "what"))
    assert what["Generation"] == "F4; 4 generations after the founders"
    assert what["Sets of chromosomes"] == "2n = 2x = 14"
    assert what["In flower"] == "2025-05-22 to 2025-06-09"
    both = facts(part(report, "parentage"))
    assert both["With the sign ×"] == "TP × BA"
    assert both["The same by names"] == "Tarnwick Pale × Brockle Amber"
    assert both["Slash notation"] == "TP/BA"
    scored = tables(part(report, "scores"))[0]
    assert scored.headings == ("Trait", "Date", "Value", "By")
    assert ("pods", "2025-07-26", "31 pods", "RW") in scored.rows
    progeny = tables(part(report, "progeny"))[0]
    assert progeny.rows[0][:3] == ("19-4-2 ⊗", "19-4-2 ⊗", "21")


def test_numbers_are_those_of_the_network(peas: PedigreeNetwork) -> None:
    section = part(plant_report(peas, "19-4-2"), "numbers")
    # F of an F4 of two pure lines: 1 - (1/2)^3.
    assert peas.inbreeding_exact("19-4-2") == Fraction(7, 8)
    assert facts(section)["Inbreeding F"].startswith("7/8 = 0.875. ")
    shares, relatives = tables(section)
    assert shares.rows == (("TP (Tarnwick Pale)", "50%"), ("BA (Brockle Amber)", "50%"))
    held = {row[0].split()[0]: row[1] for row in relatives.rows}
    for code, text in held.items():
        exact = peas.coancestry_exact("19-4-2", code)
        assert exact is not None
        assert text.split(" ")[0] == str(exact), code
    assert section.items[-1] == Text(peas.base_sentence(), soft=True)


def test_a_founder_and_a_clone_say_how_they_are_kept_true(peas: PedigreeNetwork) -> None:
    founder = plant_report(peas, "TP")
    assert facts(part(founder, "what"))["Kept true"].startswith("By its own seed")
    assert part(founder, "parentage").items == (Text("A founder: nothing is recorded before it."),)
    assert any("eleven days after BA" in text for text in founder.words())
    lilies = pedigreeview.read(demo("tansy_and_the_moths"))
    clone = plant_report(lilies, "16-01-2a")
    assert facts(part(clone, "what"))["Kept true"].startswith("As a clone: by cuttings")
    source = facts(part(plant_report(lilies, "16-01-2"), "what"))
    assert source["Kept true"] == "As a clone: it was divided, or cuttings were struck."
    assert source["Sets of chromosomes"] == "4x"


def test_a_part_stands_only_where_there_is_something_to_say() -> None:
    net = bare(Plant("A"), Plant("B"))
    assert plant_report(net, "A").parts == ("what", "parentage", "numbers", "cautions", "base")
    net.book.photos["a.jpg"] = Photo("a.jpg", "A", "2024", "in bud")
    net.book.notes.append(Note("plant A", "2024-05-01", "Early."))
    net.book.traits["tall"] = Trait("tall", "measure", "cm")
    net.book.scores.append(Score("A", "tall", "2024", "plant", "80"))
    assert plant_report(net, "A").parts == (
        *("what", "parentage", "numbers", "scores", "notes", "photos", "cautions", "base"),
    )
    assert set(plant_report(net, "A").parts) <= set(part_words())


def test_doubt_evidence_and_findings() -> None:
    net = bare(
        Plant("A", kind="plant"),
        Plant("B", kind="plant"),
        Plant("K", cross="X"),
        crosses=(Cross("X", "A", "B", seed_doubt="certain", pollen_doubt="possible"),),
        evidence=[Evidence("X", "pollen", "against", "2024-06-01", "Leaf of A.")],
        parent_findings=[ParentFinding("K", "self", None, "probable", "2024-07", "White.")],
    )
    words = list(plant_report(net, "K").words())
    assert "X, against the pollen parent: Leaf of A. (2024-06-01)" in words
    assert "K: pollen parent its seed parent itself (probable). White. (2024-07)" in words
    assert any(text.startswith("Certain: ") and "Possible: " in text for text in words)
    assert "Its own finding overrides what its cross says." in words


def test_parents_in_words_and_signs() -> None:
    net = bare(
        *(Plant(code, kind="plant") for code in "AB"),
        *(Plant(f"k{n}", cross=f"c{n}") for n in range(6)),
        crosses=(
            Cross("c0", "A", "B"),
            Cross("c1", "A", "B", direction_known=False),
            Cross("c2", "A", "A", intended="selfing"),
            Cross("c3", "A", intended="open"),
            Cross("c4", "A"),
            Cross("c5", "", "B"),
        ),
    )
    said = [crossed_words(net.book, net.parents(f"k{n}")) for n in range(6)]
    assert said[0] == "A bore the seed (seed parent), B gave the pollen (pollen parent)."
    assert said[1].endswith("which of the two bore the seed is not known.")
    assert said[2] == "A was selfed: it bore the seed and gave the pollen."
    assert "open-pollinated" in said[3]
    assert said[4] == "A bore the seed; the pollen parent is not known."
    assert said[5] == "B gave the pollen; the seed parent is not known."
    signs = [cross_signs(net.book, net.parents(f"k{n}")) for n in range(6)]
    assert signs == ["A × B", "A × B", "A ⊗", "A ○", "A × ?", "? × B"]


def test_an_uncertain_pollen_parent_is_said_with_its_odds() -> None:
    net = bare(
        *(Plant(code, kind="plant") for code in "ABC"),
        Plant("K", cross="X"),
        crosses=(Cross("X", "A"),),
        pollen_candidates=[PollenCandidate("X", "B", 0.7), PollenCandidate("X", "C", 0.3)],
    )
    words = " ".join(plant_report(net, "K").words())
    assert "who gave the pollen is not sure: B with odds 0.7, C with odds 0.3." in words
    assert cross_signs(net.book, net.parents("K")) == "A × (B or C)"


def test_a_plant_below_a_loop_has_a_report_without_numbers() -> None:
    tomatoes = pedigreeview.read(demo("a_leaf_for_hollin_plate"))
    report = plant_report(tomatoes, "23-01-2")
    assert "withheld" in facts(part(report, "numbers"))["Inbreeding F"]
    assert "among its own ancestors" in " ".join(report.words())
    assert "Source: Disinfectants against" in " ".join(report.words())


def test_an_unknown_code_is_refused_with_the_nearest(peas: PedigreeNetwork) -> None:
    with pytest.raises(Fault, match="no plant '19-4-22'") as caught:
        plant_report(peas, "19-4-22")
    assert "19-4-2" in caught.value.todo


def test_every_text_goes_through_the_translation(peas: PedigreeNetwork) -> None:
    tell_with(lambda text: f"¦{text}")
    try:
        report = plant_report(peas, "19-4-2")
    finally:
        tell_with(None)
    assert all(section.heading.startswith("¦") for section in report.sections)
    for section in report.sections:
        for item in section.items:
            if isinstance(item, Facts):
                assert all(name.startswith("¦") for name, _ in item.rows)
            if isinstance(item, Table):
                assert all(heading.startswith("¦") for heading in item.headings)


def test_small_words() -> None:
    assert counted(1, "{} plant", "{} plants") == "1 plant"
    assert counted(1200, "{} plant", "{} plants") == "1,200 plants"
    assert listed("abcdefghi", 8) == "a, b, c, d, e, f, g, h, i"
    assert listed("abcdefghij", 8) == "a, b, c, d, e, f, g, h and 2 more"
    assert span(["2021-06-21", "", "2021-06-11"]) == "2021-06-11 to 2021-06-21"
    assert span([]) == ""
    made = table(("a", "b", "c"), [("1", "", "2"), ("3", "", "")], (2,))
    assert made == Table(("a", "c"), (("1", "2"), ("3", "")), frozenset({1}))
    assert table(("a",), []) is None
    with pytest.raises(ValueError, match="a row of 1 cells under 2 headings"):
        Table(("a", "b"), (("1",),))
