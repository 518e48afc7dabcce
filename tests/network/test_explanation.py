"""Every coefficient explained: terms and parts add up exactly, for every origin."""

from __future__ import annotations

from fractions import Fraction

import pytest
from hypothesis import HealthCheck, given, settings

from pedigreeview.book.book import Book, BookSettings
from pedigreeview.book.faults import Cancelled
from pedigreeview.book.records import Cross, Plant
from pedigreeview.network import Explanation, PedigreeNetwork, common_ancestors
from tests.network.random_books import books
from tests.network.tabular_oracle import TabularOracle
from tests.published.cases import pedigree_book


def _adds_up(explained: Explanation, truth: Fraction) -> None:
    assert explained.value == pytest.approx(float(truth), abs=1e-12)
    assert sum(term.value for term in explained.terms) == pytest.approx(float(truth), abs=1e-12)
    if explained.exact is not None:
        parts = [term.exact for term in explained.terms]
        if None not in parts:
            assert sum((part for part in parts if part is not None), Fraction(0)) == truth
    for term in explained.terms:
        if term.ancestors:
            total = sum(ancestor.contribution for ancestor in term.ancestors)
            assert total == pytest.approx(term.value, abs=1e-12)
    assert explained.words
    assert explained.formula
    assert explained.source
    assert explained.base.startswith("Base:")


@settings(max_examples=120)
@given(books(most=14))
def test_terms_of_f_add_up_for_every_origin(book: Book) -> None:
    net, oracle = PedigreeNetwork.from_records(book), TabularOracle(book)
    for code in net.codes:
        if code not in net.withheld:
            _adds_up(net.explain(code), oracle.f[code])


@settings(max_examples=60)
@given(books(most=12, ploidies=(4, 6)))
def test_terms_of_f_add_up_with_polysomic_inheritance(book: Book) -> None:
    net, oracle = PedigreeNetwork.from_records(book), TabularOracle(book)
    for code in net.codes:
        if code not in net.withheld:
            _adds_up(net.explain(code), oracle.f[code])


@settings(max_examples=60)
@given(books(most=10))
def test_coancestry_is_explained_by_one_term(book: Book) -> None:
    net, oracle = PedigreeNetwork.from_records(book), TabularOracle(book)
    codes = [code for code in net.codes if code not in net.withheld][-3:]
    for a in codes:
        for b in codes:
            _adds_up(net.explain(a, b), oracle.theta[a, b])


def test_f_of_a_cross_of_tetraploid_sibs_names_what_lies_within_the_gametes() -> None:
    rows = [["a", "P", "Q"], ["b", "P", "Q"], ["x", "a", "b"], ["s", "a", "a"], ["s2", "s", "s"]]
    net = PedigreeNetwork.from_records(pedigree_book(rows, ploidy=4))
    explained = net.explain("x")
    assert explained.exact == Fraction(1, 12)
    assert [term.name for term in explained.terms] == ["between the gametes"]
    second = net.explain("s2")
    assert second.exact == Fraction(11, 36)
    assert {term.name: term.exact for term in second.terms} == {
        "between the gametes of the one parent": Fraction(1, 4),
        "within each gamete": Fraction(1, 18),
    }
    assert "c = 1/3" in second.formula


def test_unrecorded_selfings_and_a_line_taken_as_fixed_are_named() -> None:
    book = Book()
    for code in ("A", "B"):
        book.add(Plant(code))
    book.add(Cross("x", "A", "B"))
    book.add(Plant("late", cross="x", selfings=4))
    book.add(Plant("line", kind="variety", cross="x"))
    net = PedigreeNetwork.from_records(book)
    (term,) = net.explain("late").terms
    assert (term.name, term.exact) == ("4 unrecorded selfings", Fraction(15, 16))
    assert net.explain("line").terms[0].name == "taken as fixed: a line"
    assert net.explain("A").terms[0].name == "assumed of the founder"


def test_paths_that_are_not_listed_are_counted_and_their_part_is_kept() -> None:
    """Ten rounds of sib mating: the pairs of lines double and redouble, the split stays exact."""
    rows: list[list[str | None]] = [["a0", "P", "Q"], ["b0", "P", "Q"]]
    for n in range(1, 11):
        rows += [[f"{side}{n}", f"a{n - 1}", f"b{n - 1}"] for side in "ab"]
    net = PedigreeNetwork.from_records(pedigree_book(rows))
    explained = net.explain("a10", "b10", most_paths=5)
    assert explained.paths_left_out > 1000
    (term,) = explained.terms
    parts = [ancestor.contribution_exact for ancestor in term.ancestors]
    assert sum((part for part in parts if part is not None), Fraction(0)) == explained.exact
    assert all(len(ancestor.paths) <= 5 for ancestor in term.ancestors)


def test_explanations_are_plain_data_too() -> None:
    net = PedigreeNetwork.from_records(pedigree_book([["x", "A", "B"], ["y", "A", "B"]]))
    told = net.explain("x", "y").as_json()
    assert told["value_exact"] == "1/4"
    assert told["words"].startswith("The same as full sibs")
    (path,) = told["terms"][0]["common_ancestors"][0]["paths"]
    assert path == {"through": ["x", "A", "y"], "links": 2, "weight": 0.25, "weight_exact": "1/4"}


def test_the_founders_of_a_crop_without_ploidy_are_diploid() -> None:
    net = PedigreeNetwork.from_records(Book(settings=BookSettings(), plants={"A": Plant("A")}))
    assert net.ploidy("A") == 2


@settings(max_examples=40, suppress_health_check=[HealthCheck.function_scoped_fixture])
@given(book=books(most=14))
def test_the_split_in_doubles_is_that_in_fractions(
    monkeypatch: pytest.MonkeyPatch, book: Book
) -> None:
    net = PedigreeNetwork.from_records(book)
    codes = [code for code in net.codes if code not in net.withheld][-3:]
    for a in codes:
        for b in codes:
            in_fractions = {c.plant: c for c in net.common_ancestors(a, b)}
            with monkeypatch.context() as patch:
                patch.setattr(common_ancestors, "_MOST_IN_FRACTIONS", 0)
                in_doubles = {c.plant: c for c in net.common_ancestors(a, b)}
            assert set(in_doubles) == set(in_fractions)
            for plant, ancestor in in_doubles.items():
                other = in_fractions[plant]
                assert ancestor.contribution == pytest.approx(other.contribution, abs=1e-12)
                assert ancestor.paths == other.paths
                assert ancestor.paths_left_out == other.paths_left_out
                if ancestor.contribution_exact is not None:
                    assert ancestor.contribution_exact == other.contribution_exact


def test_a_deep_book_is_split_and_can_be_cancelled() -> None:
    """Sixty generations of six plants: more paths than could ever be walked."""
    rows: list[list[str | None]] = []
    for n in range(1, 61):
        for k in range(6):
            parents = (f"g{n - 1}-{k}", f"g{n - 1}-{(k + n) % 6}")
            rows.append([f"g{n}-{k}", *parents])
    net = PedigreeNetwork.from_records(pedigree_book(rows))
    found = net.common_ancestors("g60-0", "g60-1", most_paths=3)
    total = sum(ancestor.contribution for ancestor in found)
    assert total == pytest.approx(net.coancestry("g60-0", "g60-1"), abs=1e-12)

    def stop() -> None:
        raise Cancelled

    with pytest.raises(Cancelled):
        net.common_ancestors("g60-0", "g60-1", watch=stop)
