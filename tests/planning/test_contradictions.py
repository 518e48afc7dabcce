"""Records that cannot be true together: minimal groups, and parentages that mend them."""

from __future__ import annotations

import pytest

from pedigreeview.book.book import Book, BookSettings
from pedigreeview.book.records import Cross, Genotype, Locus, Plant, Score, Trait
from pedigreeview.network import PedigreeNetwork
from pedigreeview.planning.contradictions import contradictions
from pedigreeview.planning.inference import Question, allele_frequencies, genotype_chances
from pedigreeview.planning.loci import locus_model


def _book(records: dict[str, str], *, selfing: bool = False, kind: str = "variety") -> Book:
    book = Book(settings=BookSettings(ploidy=2))
    book.add(Trait("height", "category", values="tall;dwarf"))
    book.add(Locus("Le", "Le;le", "complete", "tall;dwarf"))
    book.add(Plant("A", kind=kind))
    book.add(Plant("B", kind=kind))
    if selfing:
        book.add(Cross("AB", "A", "A", intended="selfing"))
    else:
        book.add(Cross("AB", "A", "B"))
    for number in range(1, 4):
        book.add(Plant(f"X{number}", kind="plant", cross="AB"))
    for plant, value in records.items():
        if "/" in value:
            book.add(Genotype(plant, "Le", value))
        else:
            book.add(Score(plant, "height", "2024-06-01", "plant", value))
    return book


def _found(book: Book):
    return contradictions(PedigreeNetwork.from_records(book), "Le")


def test_nothing_where_all_can_be_true() -> None:
    assert _found(_book({"A": "dwarf", "B": "tall", "X1": "tall"})) == []


def test_a_dwarf_out_of_dwarf_by_tall_lines_is_perhaps_a_selfing() -> None:
    book = _book({"A": "dwarf", "B": "Le/Le", "X1": "tall", "X2": "dwarf", "X3": "tall"})
    (found,) = _found(book)
    assert found.plants == ("B", "X2")
    first = found.proposals[0]
    assert (first.plant, first.instead, first.mends_all) == ("X2", "a selfing of A", True)
    assert first.sentence == "X2 cannot come from A × B: perhaps a selfing of A."
    assert found.sentence.startswith(first.sentence)
    assert "B: genotype Le/Le" in found.sentence
    # B, selfed, would be tall: that was tried and is not offered.
    assert "a selfing of B" not in {p.instead for p in found.proposals}


def test_a_tall_plant_out_of_a_dwarf_selfed_is_foreign_pollen() -> None:
    book = _book({"A": "dwarf", "X1": "dwarf", "X2": "tall"}, selfing=True, kind="plant")
    (found,) = _found(book)
    assert found.plants == ("A", "X2")
    assert found.proposals[0].sentence == (
        "X2 cannot come from a selfing of A: perhaps A with foreign pollen."
    )


def test_no_record_of_a_group_can_be_left_out() -> None:
    book = _book({"A": "dwarf", "B": "dwarf", "X1": "tall", "X2": "dwarf", "X3": "tall"})
    net = PedigreeNetwork.from_records(book)
    found = contradictions(net, "Le")
    # Each of the two tall plants contradicts its parents by itself.
    assert sorted(group.plants for group in found) == [("A", "B", "X1"), ("A", "B", "X3")]
    model = locus_model(book, "Le")
    for group in found:
        question = Question(net, model, allele_frequencies(model), group.records)
        assert not question.possible()
        assert all(question.possible({at}) for at in range(len(group.records)))


def test_two_records_of_one_plant_contradict_each_other() -> None:
    (found,) = _found(_twice())
    assert [record.words for record in found.records] == ["genotype le/le", "height tall"]
    assert found.proposals == ()
    assert found.sentence.endswith("One of the records is wrong.")


def _twice() -> Book:
    book = _book({"A": "tall"})
    book.add(Genotype("A", "Le", "le/le"))
    return book


def test_with_misread_phenotypes_only_genotypes_contradict() -> None:
    book = _book({"A": "dwarf", "B": "dwarf", "X1": "tall"})
    net = PedigreeNetwork.from_records(book)
    assert contradictions(net, "Le", misread=0.01) == []
    for plant, genotype in (("A", "le/le"), ("B", "le/le"), ("X2", "Le/le")):
        book.add(Genotype(plant, "Le", genotype))
    (found,) = contradictions(PedigreeNetwork.from_records(book), "Le", misread=0.01)
    assert found.plants == ("A", "B", "X2")


def test_a_record_left_out_makes_the_chances_possible_again() -> None:
    book = _book({"A": "dwarf", "B": "dwarf", "X1": "tall"})
    net = PedigreeNetwork.from_records(book)
    (found,) = contradictions(net, "Le")
    assert set(genotype_chances(net, "Le").impossible) >= {"A", "B", "X1"}
    wrong = next(record for record in found.records if record.plant == "X1")
    chances = genotype_chances(net, "Le", without=[wrong])
    assert chances.impossible == ()
    assert chances.of("X1") == {"le/le": 1.0}


@pytest.mark.parametrize("largest", [1, 2_000_000])
def test_a_pedigree_too_wide_is_searched_family_by_family(largest: int) -> None:
    book = _book({"A": "dwarf", "B": "dwarf", "X1": "tall"})
    found = contradictions(PedigreeNetwork.from_records(book), "Le", largest=max(27, largest))
    assert [group.plants for group in found] == [("A", "B", "X1")]
