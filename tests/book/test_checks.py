"""Each check fires, and its near miss does not."""

import pytest

from pedigreeview.book.book import Book
from pedigreeview.book.checks import KINDS, acceptance_keys, check_records, without_accepted
from pedigreeview.book.records import (
    AcceptedCheck,
    Bloom,
    Cross,
    Harvest,
    Packet,
    Plant,
    PollenCandidate,
    PollenLot,
    Pollination,
    Score,
    Sowing,
    Trait,
)


def book_of(*records, crop="", **settings):
    book = Book()
    book.settings.crop = crop
    for name, held in settings.items():
        setattr(book.settings, name, held)
    for record in records:
        book.add(record)
    return book


def pair(**cross):
    """Two single plants, their cross and one plant of it."""
    return [
        Plant("A", kind="plant", sown="2020-03"),
        Plant("B", kind="plant", sown="2020-03"),
        Cross("X", "A", "B", intended="cross", **cross),
        Plant("C", cross="X", sown="2021-03"),
    ]


def kinds(book):
    return [problem.kind for problem in check_records(book)]


def test_a_sound_book_has_no_problems():
    assert kinds(book_of(*pair(made_on="2020-07-01"))) == []


def test_every_kind_raised_is_documented_and_every_sentence_ends():
    assert all(sentence.endswith(".") for sentence in KINDS.values())
    assert {"own_ancestor", "ploidy_differs", "ploidy_odd", "fixation_too_low"} <= set(KINDS)


@pytest.mark.parametrize(
    ("records", "says"),
    [
        ([Pollination("1", "X", date="2021-07-01")], "C was sown on 2021-03, before its cross X"),
        ([Pollination("1", "X", date="2019-07-01")], "before its parent A was sown"),
        (
            [Pollination("1", "X", date="2020-07-01", emasculated_on="2020-07-02")],
            "before its flowers were emasculated",
        ),
        (
            [
                PollenLot("L", "B", collected="2020-07-03"),
                Pollination("1", "X", date="2020-07-01", pollen_lot="L"),
            ],
            "before its pollen lot L was collected",
        ),
        (
            [Pollination("1", "X", date="2020-07-01"), Harvest("H", "X", date="2020-06")],
            "The harvest H of the cross X was on 2020-06",
        ),
        (
            [
                Harvest("H", "X", date="2020-09-01"),
                Packet("K", harvest="H"),
                Sowing("S", packet="K", date="2020-08"),
            ],
            "before its seed was harvested",
        ),
        (
            [Pollination("1", "X", date="2020-07-01"), Sowing("S", sown_from="X", date="2020-06")],
            "before its cross X was made",
        ),
        ([Bloom("A", "2020-07-01", "2020-06-01")], "The last flower of A"),
        ([Trait("t", "score"), Score("C", "t", date="2020")], "C has a score of 2020"),
    ],
)
def test_bad_date_order(records, says):
    found = [p for p in check_records(book_of(*pair(), *records)) if p.kind == "bad_date_order"]
    assert found
    assert all(problem.severity == "error" for problem in found)
    assert any(says in problem.message for problem in found)


@pytest.mark.parametrize(
    "records",
    [
        [Pollination("1", "X", date="2021")],
        [Pollination("1", "X", date="2020")],
        [Pollination("1", "X"), Pollination("2", "X", date="2021-07")],
        [Pollination("1", "X", date="2020-07-01", emasculated_on="2020-07-01")],
        [Pollination("1", "X", date="2020-07-01"), Harvest("H", "X", date="2020")],
        [Pollination("1", "X", date="2020-07-01"), Harvest("H", "X")],
        [Bloom("A", "2020-07-01", "")],
        [Trait("t", "score"), Score("C", "t", date="2021")],
    ],
)
def test_rough_or_missing_dates_raise_no_alarm(records):
    assert kinds(book_of(*pair(), *records)) == []


def test_progeny_sown_before_a_parent():
    records = pair()
    records[3].sown = "2019"
    found = check_records(book_of(*records))
    assert [(p.kind, p.plants) for p in found] == [
        ("bad_date_order", ("C", "A")),
        ("bad_date_order", ("C", "B")),
    ]
    records[0].kind = records[1].kind = "variety"
    assert kinds(book_of(*records)) == []


def test_near_duplicate_codes():
    assert kinds(book_of(Plant("TP"), Plant("tp "))) == ["near_duplicate_code"]
    assert kinds(book_of(Plant("21-01"), Plant("21–01"))) == ["near_duplicate_code"]
    assert kinds(book_of(Plant("TP"), Plant("TQ"))) == []


def test_letters_and_digits_count_only_for_a_bare_parent():
    assert kinds(book_of(Plant("A1", name="one"), Plant("AI"))) == ["near_duplicate_code"]
    assert kinds(book_of(Plant("A1", name="one"), Plant("AI", name="eye"))) == []


def test_unknown_written_as_code():
    found = check_records(book_of(Plant("?")))
    assert [(p.kind, p.plants) for p in found] == [("unknown_written_as_code", ("?",))]
    assert kinds(book_of(Plant("OP", name="Old Purple"))) == []


def test_crop_differs():
    records = pair()
    records[0].crop, records[1].crop = "tomato", "pea"
    assert kinds(book_of(*records)) == ["crop_differs"]
    records[1].crop = "Tomatoes"
    assert kinds(book_of(*records)) == []
    records[1].crop = ""
    assert kinds(book_of(*records)) == []


def test_crop_differs_for_a_candidate():
    book = book_of(
        Plant("A", crop="tomato"), Plant("B", crop="pea"), Cross("X", "A"),
        PollenCandidate("X", "B", 0.5), PollenCandidate("X", "self", 0.5),
    )  # fmt: skip
    assert kinds(book) == ["crop_differs"]


def test_used_after_life():
    records = pair(made_on="2021-07-01")
    records[3].sown = "2022-03"
    found = check_records(book_of(*records, crop="tomato"))
    assert [(p.kind, p.plants) for p in found] == [
        ("used_after_life", ("A",)),
        ("used_after_life", ("B",)),
    ]
    assert kinds(book_of(*records, crop="daylily")) == []
    assert kinds(book_of(*records, crop="medlar")) == []
    assert kinds(book_of(*records)) == []


@pytest.mark.parametrize("sown", ["2020-09-20", "2020", "", "2021-03"])
def test_a_plant_that_may_still_live_raises_no_alarm(sown):
    records = pair(made_on="2021-07-01")
    records[0].sown = records[1].sown = sown
    records[3].sown = "2022-03"
    assert kinds(book_of(*records, crop="pea")) == []


def test_pools_and_stored_pollen_outlive_their_season():
    records = pair()
    records[3].sown = "2022-03"
    records[0].kind = "variety"
    more = [PollenLot("L", "B"), Pollination("1", "X", date="2021-07-01", pollen_lot="L")]
    assert kinds(book_of(*records, *more, crop="tomato")) == []


def test_culled_before_use():
    records = pair(state="planned")
    records[1].status = "culled"
    assert kinds(book_of(*records)) == ["culled_before_use"]
    assert kinds(book_of(*records, PollenLot("L", "B"))) == []
    records[2].state = "made"
    assert kinds(book_of(*records)) == []


def test_more_fruits_than_flowers():
    def found(*more):
        return [(p.kind, p.severity) for p in check_records(book_of(*pair(), *more))]

    kind = "more_fruits_than_flowers"
    assert found(Pollination("1", "X", flowers=3, set=4)) == [(kind, "error")]
    assert found(Pollination("1", "X", flowers=3, set=3)) == []
    assert found(Pollination("1", "X", set=4)) == []
    harvested = Harvest("H", "X", fruits=4)
    assert found(Pollination("1", "X", flowers=3), harvested) == [(kind, "warning")]
    assert found(Pollination("1", "X", flowers=3), Pollination("2", "X"), harvested) == []
    assert found(Pollination("1", "X", flowers=4), harvested) == []


def test_seeds_and_seedlings():
    def found(record):
        return kinds(book_of(*pair(), record))

    assert found(Sowing("S", sown_from="X", seeds=4, up=5)) == ["more_up_than_sown"]
    assert found(Sowing("S", sown_from="X", up=4, kept=5)) == ["more_up_than_sown"]
    assert found(Sowing("S", sown_from="X", seeds=4, up=4, kept=4)) == []
    assert found(Packet("K", seeds=3, left=4)) == ["more_left_than_seeds"]
    assert found(Packet("K", seeds=3, left=3)) == []


def test_pollen_of_other_plant():
    more = [Plant("D", kind="plant", raised="cutting_of", source="B"), Plant("E", source="C")]
    more[1].raised = "cutting_of"

    def found(lot):
        lots = [PollenLot("L", lot), Pollination("1", "X", pollen_lot="L")]
        return kinds(book_of(*pair(), *more, *lots))

    assert found("E") == ["pollen_of_other_plant"]
    assert found("B") == []
    assert found("D") == []
    assert found("E; B") == []


def test_unknown_pollen_of_selfer_is_said_once_for_all():
    records = [
        Plant("A"), Plant("B"), Cross("X", "A", intended="open"), Cross("Y", "B", intended="open"),
        Plant("C", cross="X"), Plant("D", cross="Y"),
    ]  # fmt: skip
    found = check_records(book_of(*records))
    assert [(p.kind, p.plants) for p in found] == [("unknown_pollen_of_selfer", ("C", "D"))]
    assert "X, Y" in found[0].message
    assert kinds(book_of(*records, crop="pea")) == []
    assert kinds(book_of(*records, crop="dahlia")) == []
    assert kinds(book_of(*records, outcrossing=0.1)) == []
    assert kinds(book_of(*records[:4])) == []


def test_unlinked_plants_are_a_note_only_where_there_are_crosses():
    found = check_records(book_of(*pair(), Plant("Z")))
    assert [(p.kind, p.severity, p.plants) for p in found] == [("unlinked_plant", "note", ("Z",))]
    assert kinds(book_of(Plant("Z"), Plant("Y"))) == []


def test_accepted_checks_are_left_out():
    records = pair(made_on="2019-07")
    book = book_of(*records)
    first, second = check_records(book)
    book.add(AcceptedCheck(first.kind, acceptance_keys(first)))
    assert check_records(book) == [second]
    assert without_accepted(book, [first, second]) == [second]
