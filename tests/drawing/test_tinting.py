"""Tints: right values, readable colours, keys that say what is shown."""

from __future__ import annotations

from itertools import pairwise

import numpy as np
import pytest
from hypothesis import given

from pedigreeview.book.book import Book
from pedigreeview.book.faults import Fault
from pedigreeview.book.records import Plant, Score, Trait
from pedigreeview.drawing.telling import tell_with
from pedigreeview.drawing.theme import contrast, theme
from pedigreeview.drawing.tinting import KeyEntry, Tint, TintKey, Wanted, ramp, shares_of, tint
from pedigreeview.network import PedigreeNetwork
from tests.drawing.random_books import add_cross, books

LIGHT = theme("light")


@pytest.fixture(scope="module")
def net() -> PedigreeNetwork:
    book = Book()
    for code in ("A", "B"):
        book.add(Plant(plant=code, kind="variety", status="growing"))
    add_cross(book, "x", "A", "B")
    book.add(Plant(plant="F1", cross="x", status="kept"))
    add_cross(book, "s", "F1", "F1")
    for number in range(3):
        book.add(Plant(plant=f"P{number}", cross="s", status="culled" if number else ""))
    add_cross(book, "r", "B", "A")
    book.add(Plant(plant="R", cross="r"))
    book.add(Trait(trait="height", type="measure", unit="cm"))
    book.add(Trait(trait="vigour", type="score", low=1, high=9))
    book.add(Trait(trait="leaf", type="category", values="regular;potato"))
    book.add(Trait(trait="never", type="measure"))
    for plant, trait, date, value in (
        ("P0", "height", "2021", "80"),
        ("P0", "height", "2022", "120"),
        ("P1", "height", "2022", "60,5"),
        ("P2", "height", "2022", "tall"),
        ("P0", "vigour", "2021", "5"),
        ("P0", "leaf", "2021", "potato"),
        ("P1", "leaf", "2021", "regular"),
        ("P2", "leaf", "2021", "frilled"),
    ):
        book.add(Score(plant=plant, trait=trait, date=date, of="plant", value=value))
    return PedigreeNetwork.from_records(book)


def _words(held: Tint) -> dict[str, str]:
    return {code: held.word(row) for row, code in enumerate(held.codes)}


def test_coancestry_with_the_focus(net: PedigreeNetwork) -> None:
    held = tint(net, Wanted("coancestry", "F1"), LIGHT)
    # Fixed founders: θ of a parent line with the F1 is one half, of the F1 with itself one half.
    assert _words(held)["A"] == "0.5"
    assert _words(held)["P0"] == "0.5"
    assert held.key.title == "Coancestry with F1"
    assert held.key.ticks == ((0.0, "0"), (0.5, "0.25"), (1.0, "0.5"))
    assert held.by_code()["A"] == held.key.ramp[-1]


def test_share_of_a_founder(net: PedigreeNetwork) -> None:
    held = tint(net, Wanted("founder", "A"), LIGHT)
    assert {c: w for c, w in _words(held).items() if c in ("A", "B", "P0")} == {
        "A": "100%",
        "B": "0%",
        "P0": "50%",
    }
    assert held.by_code()["B"] == held.key.ramp[0] == LIGHT["paper"]


def test_shares_for_a_filter(net: PedigreeNetwork) -> None:
    shares = shares_of(net, "A")
    assert (shares["A"], shares["B"], shares["P1"]) == (1.0, 0.0, 0.5)


def test_inbreeding_and_generation(net: PedigreeNetwork) -> None:
    held = tint(net, Wanted("inbreeding"), LIGHT)
    assert (_words(held)["F1"], _words(held)["P0"], _words(held)["A"]) == ("0", "0.5", "1")
    held = tint(net, Wanted("generation"), LIGHT)
    assert (_words(held)["A"], _words(held)["F1"], _words(held)["P0"]) == ("0", "1", "2")
    assert held.classes is None


def test_cytoplasm_tells_the_two_directions_apart(net: PedigreeNetwork) -> None:
    held = tint(net, Wanted("cytoplasm"), LIGHT)
    words = _words(held)
    assert (words["F1"], words["P2"], words["R"]) == ("A", "A", "B")
    assert [(item.words, item.plants) for item in held.key.entries] == [("A", 5), ("B", 2)]
    colours = held.by_code()
    assert colours["F1"] != colours["R"]


def test_status_in_the_order_of_a_season(net: PedigreeNetwork) -> None:
    held = tint(net, Wanted("status"), LIGHT)
    assert [item.words for item in held.key.entries] == ["kept", "growing", "culled"]
    assert "P0" not in held.by_code()
    assert _words(held)["P0"] == ""
    assert held.key.missing == 2
    assert held.key.words() == "Status: kept (1), growing (2), culled (2), no value (2)."


def test_a_measure_takes_the_latest_value_and_the_range_found(net: PedigreeNetwork) -> None:
    held = tint(net, Wanted("trait", "height"), LIGHT)
    assert _words(held)["P0"] == "120"
    assert set(held.by_code()) == {"P0", "P1"}
    assert held.key.title == "height (cm)"
    assert (held.key.ticks[0], held.key.ticks[-1]) == ((0.0, "60.5"), (1.0, "120"))
    assert held.by_code()["P0"] == held.key.ramp[-1]


def test_a_score_is_shown_on_its_whole_scale(net: PedigreeNetwork) -> None:
    held = tint(net, Wanted("trait", "vigour"), LIGHT)
    assert held.key.ticks == ((0.0, "1"), (0.5, "5"), (1.0, "9"))
    assert held.by_code() == {"P0": held.key.ramp[len(held.key.ramp) // 2]}


def test_a_category_keeps_the_order_of_its_values(net: PedigreeNetwork) -> None:
    held = tint(net, Wanted("trait", "leaf"), LIGHT)
    assert [item.words for item in held.key.entries] == ["regular", "potato", "frilled"]
    assert held.classes is not None
    assert held.by_code(["P0", "A"]) == {"P0": held.key.entries[1].colour}
    assert held.words_by_code(["P0", "A"]) == {"P0": "potato"}


def test_a_trait_without_values_says_so(net: PedigreeNetwork) -> None:
    held = tint(net, Wanted("trait", "never"), LIGHT)
    assert held.by_code() == {}
    assert held.key.words() == "never: no plant has a value. 7 without a value stay plain."
    assert np.isnan(held.rgb).all()


def test_what_is_not_in_the_book_is_a_fault(net: PedigreeNetwork) -> None:
    for wanted in (Wanted("trait", "x"), Wanted("founder", "x"), Wanted("coancestry", "x")):
        with pytest.raises(Fault):
            tint(net, wanted, LIGHT)


def test_many_classes_share_a_last_colour() -> None:
    book = Book()
    for number in range(15):
        book.add(Plant(plant=f"V{number:02}"))
    held = tint(PedigreeNetwork.from_records(book), Wanted("cytoplasm"), LIGHT)
    assert [item.words for item in held.key.entries][-1] == "4 others"
    assert held.key.entries[-1].plants == 4
    assert held.word(14) == "V14"


@pytest.mark.parametrize("name", ["light", "dark", "grey"])
def test_ink_can_be_read_on_every_step_of_the_ramp(name: str) -> None:
    held = theme(name)
    colours = ramp(held)
    # WCAG 2, level AA for running text: 4.5 to 1.
    assert min(contrast(held["ink"], shade) for shade in colours) >= 4.5 - 0.05
    # Steps are told apart by lightness alone, always the same way.
    against = [contrast(held["ink"], shade) for shade in colours]
    assert all(a >= b for a, b in pairwise(against))
    assert against[0] / against[-1] > 1.7


@pytest.mark.parametrize("name", ["light", "dark"])
def test_ink_can_be_read_on_every_class(net: PedigreeNetwork, name: str) -> None:
    book = Book()
    for number in range(15):
        book.add(Plant(plant=f"V{number:02}"))
    held = tint(PedigreeNetwork.from_records(book), Wanted("cytoplasm"), theme(name))
    for shade in held.colours:
        assert contrast(theme(name)["ink"], shade) >= 4.5 - 0.05


@given(books())
def test_values_are_those_of_the_network(book: Book) -> None:
    held = PedigreeNetwork.from_records(book)
    focus = held.codes[-1]
    found = tint(held, Wanted("coancestry", focus), LIGHT)
    for row, code in enumerate(held.codes):
        # Printed to three places.
        assert float(found.word(row)) == pytest.approx(held.coancestry(code, focus), abs=6e-4)
    lines = tint(held, Wanted("cytoplasm"), LIGHT)
    for row, code in enumerate(held.codes):
        assert lines.word(row) == (held.cytoplasm(code) or "")


def test_the_key_is_said_in_whole_sentences_and_class_by_class() -> None:
    """So another language can tell each: the classes singly, a scale as one sentence."""
    scale = TintKey("Carries c of C", ramp=("#ffffff",), ticks=((0.0, "0%"), (1.0, "100%")))
    assert scale.words() == "Carries c of C: from 0%, palest, to 100%, deepest."
    assert TintKey("Generation", note="More.").words() == "Generation: no plant has a value. More."
    entries = (KeyEntry("#ffffff", "kept", 3), KeyEntry("#000000", "lost", 1_200))
    classes = TintKey("Status", entries, missing=4)
    assert classes.words() == "Status: kept (3), lost (1,200), no value (4)."
    german = {"kept": "behalten", "lost": "verloren", "no value": "kein Wert"}
    tell_with(german.__getitem__)
    try:
        told = TintKey("kept", entries, missing=4).words()
    finally:
        tell_with(None)
    assert told == "behalten: behalten (3), verloren (1,200), kein Wert (4)."
