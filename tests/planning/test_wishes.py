"""A wish read from the book's genes, and the genes behind traits."""

from __future__ import annotations

from fractions import Fraction
from pathlib import Path

import pytest

import pedigreeview
from pedigreeview.book.book import Book, BookSettings
from pedigreeview.book.faults import Fault
from pedigreeview.book.records import Genotype, Locus, Plant, Score, Trait
from pedigreeview.network.pedigree import PedigreeNetwork
from pedigreeview.planning.observations import copies_of, gene_of_trait, numbers_of, words_of
from pedigreeview.planning.schemes import chance_per_plant, selfing
from pedigreeview.planning.wishes import wish_of_book


def _book() -> Book:
    book = Book(settings=BookSettings())
    for locus, words, chromosome, position in (
        ("H", "tall;dwarf", "1", 10.0),
        ("P", "green pod;yellow pod", "1", 30.0),
        ("F", "red;pink;white", "2", None),
    ):
        partial = "incomplete" if words.count(";") == 2 else "complete"
        book.add(Locus(locus, f"{locus};{locus.lower()}", partial, words, chromosome, position))
    book.add(Trait("height", "category", values="tall;dwarf"))
    book.add(Trait("pod", "category", values="green;yellow"))
    book.add(Trait("flower", "category", values="red;pink;white"))
    book.add(Trait("yield", "measure"))
    book.add(Plant("A", kind="variety", fixation=1.0))
    book.add(Plant("B", kind="variety", fixation=1.0))
    book.add(Plant("C", kind="plant"))
    for plant, values in (("A", ("dwarf", "Green", "red")), ("B", ("tall", "yellow", "white"))):
        for trait, value in zip(("height", "pod", "flower"), values, strict=True):
            book.add(Score(plant, trait, "2020", value=value))
    book.add(Genotype("C", "H", "H/h"))
    book.add(Genotype("C", "P", "P/p"))
    book.add(Genotype("C", "F", "F/?"))
    book.add(Score("A", "yield", value="3,5"))
    book.add(Score("A", "yield", value="no idea"))
    return book


def test_genes_of_traits() -> None:
    book = _book()
    height, flower = gene_of_trait(book, "height"), gene_of_trait(book, "flower")
    assert height is not None
    assert height.shows == ("dwarf", "tall", "tall")
    assert flower is not None
    assert flower.shows == ("white", "pink", "red")
    assert [flower.look(k, 4) for k in range(5)] == ["white", "pink", "pink", "pink", "red"]
    assert gene_of_trait(book, "yield") is None
    assert words_of(book, "pod", ["A", "B"]) == {"A": "green", "B": "yellow"}
    assert numbers_of(book, "yield", ["A"]) == {"A": [3.5]}


def test_copies_from_genotypes_and_from_the_look_of_pure_lines() -> None:
    book = _book()
    assert copies_of(book, "A", "H", "h") == 2
    assert copies_of(book, "A", "P", "p") == 0
    assert copies_of(book, "C", "H", "H") == 1
    assert copies_of(book, "C", "F", "F") is None


def test_a_linked_wish() -> None:
    net = PedigreeNetwork.from_records(_book())
    wish = wish_of_book(net, "A", "B", [("pod", "yellow"), ("height", "dwarf"), ("flower", "red")])
    assert wish.target.loci == ("H", "P", "F")
    r = wish.target.recombination
    assert r[0] == pytest.approx(0.1648, abs=1e-4)
    assert r[1] == Fraction(1, 2)
    found = chance_per_plant(wish.target, selfing(2), wish.seed, wish.pollen)
    # Dwarf from one parent, yellow from the other: r²/4; red 1/4.
    assert float(found.chance) == pytest.approx(r[0] ** 2 / 16)
    assert wish.notes == ()
    unsure = wish_of_book(net, "C", "B", [("pod", "yellow"), ("height", "dwarf")])
    assert "equally likely" in unsure.notes[0]


def test_unknown_distances_are_said() -> None:
    book = _book()
    book.loci["P"].position_cM = None
    net = PedigreeNetwork.from_records(book)
    wish = wish_of_book(net, "A", "B", [("height", "dwarf"), ("pod", "yellow")])
    assert wish.target.recombination == (Fraction(1, 2),)
    assert "taken as unlinked" in wish.notes[0]


def test_wishes_that_cannot_be_followed(root: Path) -> None:
    net = PedigreeNetwork.from_records(_book())
    for wanted, words in (
        (("yield", "high"), "No gene"),
        (("flower", "pink"), "breed true"),
        (("height", "huge"), "breed true"),
    ):
        with pytest.raises(Fault, match=words):
            wish_of_book(net, "A", "B", [wanted])
    with pytest.raises(Fault, match="not known"):
        wish_of_book(net, "A", "C", [("flower", "red")])
    lilies = pedigreeview.read(root / "demo_pedigrees" / "tansy_and_the_moths")
    with pytest.raises(Fault, match="4x"):
        wish_of_book(lilies, "SL", "GM", [("eye", "eye")])
