"""F of progeny that were never raised: the number of a plant raised from that very cross."""

from __future__ import annotations

from fractions import Fraction

import pytest
from hypothesis import given, settings

from pedigreeview.book.book import Book
from pedigreeview.book.faults import Cancelled
from pedigreeview.network import PedigreeNetwork
from tests.network.random_books import books
from tests.published.cases import pedigree_book


@settings(max_examples=80)
@given(books(most=10, ploidies=(2, 4)))
def test_terms_add_up_and_the_fraction_is_the_number(book: Book) -> None:
    net = PedigreeNetwork.from_records(book)
    codes = [code for code in net.codes if code not in net.withheld][-3:]
    for a in codes:
        for b in codes:
            value, explained = net.progeny_inbreeding(a, b), net.explain_progeny(a, b)
            if value is None:
                assert explained is None
                continue
            assert explained is not None
            assert explained.value == value
            assert sum(term.value for term in explained.terms) == pytest.approx(value, abs=1e-12)
            exact = net.progeny_inbreeding_exact(a, b)
            assert explained.exact == exact
            if exact is not None:
                assert float(exact) == pytest.approx(value, abs=1e-12)


@pytest.mark.parametrize("ploidy", [2, 4, 6])
def test_progeny_are_explained_as_if_they_stood_in_the_book(ploidy: int) -> None:
    rows: list[list[str | None]] = [
        ["a", "P", "Q"],
        ["b", "P", "Q"],
        ["s", "a", "a"],
        ["x", "s", "b"],
        ["z", "s", "s"],
    ]
    net = PedigreeNetwork.from_records(pedigree_book(rows, ploidy=ploidy))
    for code, parents in (("x", ("s", "b")), ("z", ("s", "s"))):
        raised, planned = net.explain(code), net.explain_progeny(*parents)
        assert planned is not None
        assert planned.exact == raised.exact
        assert planned.terms == raised.terms
        assert (planned.formula, planned.source) == (raised.formula, raised.source)
        assert planned.words == net.inbreeding_words(code)


def test_sibs_of_unrelated_tetraploids() -> None:
    """1/12 crossed and 1/6 selfed: the check values of the demo scenario of the tetraploids."""
    net = PedigreeNetwork.from_records(pedigree_book([["a", "P", "Q"], ["b", "P", "Q"]], ploidy=4))
    assert net.progeny_inbreeding_exact("a", "b") == Fraction(1, 12)
    assert net.progeny_inbreeding_exact("a", "a") == Fraction(1, 6)


@pytest.mark.parametrize("ploidy", [2, 4, 6])
def test_full_sibs_are_called_so_at_every_ploidy(ploidy: int) -> None:
    """Coancestry of full sibs is 1/(2P): 1/4 with two sets, 1/8 with four (numbers.md)."""
    rows: list[list[str | None]] = [["a", "P", "Q"], ["b", "P", "Q"], ["c", "P", "R"]]
    net = PedigreeNetwork.from_records(pedigree_book(rows, ploidy=ploidy))
    assert net.coancestry_exact("a", "b") == Fraction(1, 2 * ploidy)
    assert net.relationship_words("a", "b").startswith("The same as full sibs")
    assert net.explain("a", "c").words == "The same as half sibs of unrelated plants."


def test_explaining_can_be_cancelled() -> None:
    net = PedigreeNetwork.from_records(pedigree_book([["x", "A", "B"], ["y", "A", "B"]]))

    def stop() -> None:
        raise Cancelled

    with pytest.raises(Cancelled):
        net.explain("x", "y", watch=stop)
    with pytest.raises(Cancelled):
        net.explain_progeny("x", "y", watch=stop)
