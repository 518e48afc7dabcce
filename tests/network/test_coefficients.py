"""Coefficients against the exact tabular oracle, on random books of every origin."""

from __future__ import annotations

from fractions import Fraction

import numpy as np
import pytest
from hypothesis import given, settings

from pedigreeview.book.book import Book
from pedigreeview.network import PedigreeNetwork
from tests.network.random_books import books
from tests.network.tabular_oracle import TabularOracle

TOLERANCE = 1e-12


def _compare(book: Book) -> None:
    net = PedigreeNetwork.from_records(book)
    assert not net.loops()
    low = {code for code, kind in net.withheld.items() if kind == "fixation_too_low"}
    assert set(net.withheld) == low
    oracle = TabularOracle(book)
    codes = [code for code in net.codes if code not in low]
    for a in codes:
        assert net.inbreeding(a) == pytest.approx(float(oracle.f[a]), abs=TOLERANCE)
        exact = net.inbreeding_exact(a)
        assert exact is None or exact == oracle.f[a]
        with_a = dict(zip(net.codes, net.coancestry_with(a), strict=True))
        for b in codes:
            truth = oracle.theta[a, b]
            assert net.coancestry(a, b) == pytest.approx(float(truth), abs=TOLERANCE)
            if a != b:
                assert with_a[b] == pytest.approx(float(truth), abs=TOLERANCE)
                found = net.coancestry_exact(a, b)
                assert found is None or found == truth
    assert all(np.isnan(net.coancestry_with(codes[0])[net.codes.index(code)]) for code in low)


@settings(max_examples=1400)
@given(books())
def test_diploid_coefficients_equal_the_exact_tabular_method(book: Book) -> None:
    _compare(book)


@settings(max_examples=700)
@given(books(ploidies=(4, 6)))
def test_polysomic_coefficients_equal_the_exact_tabular_method(book: Book) -> None:
    _compare(book)


@settings(max_examples=100)
@given(books(most=12))
def test_common_ancestors_add_up_to_the_coancestry_exactly(book: Book) -> None:
    net = PedigreeNetwork.from_records(book)
    oracle = TabularOracle(book)
    codes = [code for code in net.codes if code not in net.withheld]
    for a in codes[-4:]:
        for b in codes[-4:]:
            found = net.common_ancestors(a, b)
            total = sum(ancestor.contribution for ancestor in found)
            assert total == pytest.approx(float(oracle.theta[a, b]), abs=TOLERANCE)
            parts = [ancestor.contribution_exact for ancestor in found]
            if None not in parts:
                assert sum(parts, Fraction(0)) == oracle.theta[a, b]
            for ancestor in found:
                assert ancestor.paths_left_out >= 0
                for path in ancestor.paths:
                    assert path.through[0] == a
                    assert path.through[-1] == b
                    assert ancestor.plant in path.through


@settings(max_examples=60)
@given(books())
def test_founder_shares_and_the_unknown_share_make_one(book: Book) -> None:
    net = PedigreeNetwork.from_records(book)
    for code in net.codes:
        if code not in net.withheld:
            shares = net.founder_shares(code)
            assert all(0 < share <= 1 + TOLERANCE for share in shares.values())
            assert sum(shares.values()) + net.unknown_share(code) == pytest.approx(1)
            assert set(shares) <= {*net.ancestors(code), code} & set(net.founders)


@settings(max_examples=60)
@given(books())
def test_the_order_of_the_records_changes_no_number(book: Book) -> None:
    other = Book(settings=book.settings)
    for record in reversed(list(book.records())):
        other.add(record)
    net, back = PedigreeNetwork.from_records(book), PedigreeNetwork.from_records(other)
    for code in net.codes:
        assert (code in net.withheld) == (code in back.withheld)
        if code not in net.withheld:
            assert net.inbreeding(code) == pytest.approx(back.inbreeding(code), abs=TOLERANCE)
