"""Breeding values against a printed example and against dense mixed-model equations."""

from __future__ import annotations

import numpy as np
import pytest
from hypothesis import assume, given, settings
from hypothesis import strategies as st

from pedigreeview.book.book import Book
from pedigreeview.book.faults import Fault
from pedigreeview.book.records import Cross, Plant
from pedigreeview.network import PedigreeNetwork
from pedigreeview.planning.blup import predict
from pedigreeview.planning.measured import Observation
from tests.network.random_books import books
from tests.network.tabular_oracle import TabularOracle
from tests.published.cases import pedigree_book


def test_five_calves_of_a_text_book() -> None:
    """Mrode 2014, example 3.1: pre-weaning gain, α = 2, sexes as fixed effects (from memory)."""
    rows = [
        ["1", None, None],
        ["2", None, None],
        ["3", None, None],
        ["4", None, "1"],
        ["5", "2", "3"],
        ["6", "2", "1"],
        ["7", "5", "4"],
        ["8", "6", "3"],
    ]
    net = PedigreeNetwork.from_records(pedigree_book(rows))
    gains = {"4": 4.5, "5": 2.9, "6": 3.9, "7": 3.5, "8": 5.0}
    sexes = ["male", "female", "female", "male", "male"]
    found = predict(net, [Observation(k, v) for k, v in gains.items()], fixed=sexes, ratio=2.0)
    assert dict(found.effects) == pytest.approx({"male": 4.358, "female": 3.404}, abs=0.0006)
    printed = [0.098, -0.019, -0.041, -0.009, -0.186, 0.177, -0.249, 0.183]
    values = [found.of(str(number)).value for number in range(1, 9)]
    assert values == pytest.approx(printed, abs=0.0006)
    assert [item.value for item in found.values] == sorted(values, reverse=True)
    assert any("Only 5 plants" in sentence for sentence in found.warnings)


def _dense(theta, places, y, x, ratio):
    """b, a and prediction error variances / σ²e by V = Z A Z' + α I: no equation of Henderson's."""
    z = np.zeros((len(y), len(theta)))
    z[np.arange(len(y)), places] = 1
    relationship = theta / ratio
    v = np.linalg.inv(z @ relationship @ z.T + np.eye(len(y)))
    b_variance = np.linalg.inv(x.T @ v @ x)
    b = b_variance @ x.T @ v @ y
    a = relationship @ z.T @ v @ (y - x @ b)
    p = v - v @ x @ b_variance @ x.T @ v
    error = np.diag(relationship - relationship @ z.T @ p @ z @ relationship)
    return b, a, error, float(y @ p @ y)


@settings(max_examples=60)
@given(books(most=10), st.data())
def test_values_equal_dense_equations_also_where_the_matrix_is_singular(
    book: Book, data: st.DataObject
) -> None:
    net = PedigreeNetwork.from_records(book)
    assume(not net.withheld)
    codes = list(net.codes)
    drawn = data.draw(st.lists(st.sampled_from(codes), min_size=4, max_size=9))
    numbers = st.integers(-20, 20).map(float)
    found = [
        Observation(code, data.draw(numbers), data.draw(st.sampled_from(("2021", "2022"))))
        for code in drawn
    ]
    ratio = data.draw(st.sampled_from((0.25, 1.0, 4.0)))
    oracle = TabularOracle(book)
    theta = np.array([[float(oracle.theta[a, b]) for b in codes] for a in codes])
    # P θ: 2θ among diploids; doubled forms stand in the oracle with their own ploidy.
    scale = np.sqrt([net.ploidy(code) for code in codes])
    years = sorted({item.year for item in found}, key=[item.year for item in found].index)
    x = np.array([[float(item.year == year) for year in years] for item in found])
    y = np.array([item.value for item in found])
    places = [codes.index(item.plant) for item in found]
    b, a, error, squares = _dense(theta * np.outer(scale, scale), places, y, x, ratio)
    solved = predict(net, found, plants=codes, fixed="year", ratio=ratio)
    assert dict(solved.effects) == pytest.approx(dict(zip(years, b, strict=True)), abs=1e-6)
    assert solved.residual == pytest.approx(squares / (len(y) - len(years)), abs=1e-6)
    for place, code in enumerate(codes):
        value = solved.of(code)
        assert value.value == pytest.approx(a[place], abs=1e-6)
        half = 1.959964 * np.sqrt(max(0.0, error[place] * solved.residual))
        assert value.high - value.value == pytest.approx(half, abs=1e-4)


def _simulated(heritability: float, families: int = 60, sibs: int = 8):
    rng = np.random.default_rng(11)
    book = Book()
    book.settings.founders_as = "plant"
    values: dict[str, float] = {}
    for number in range(families):
        for side in "sp":
            book.add(Plant(f"{side}{number}", kind="plant"))
            values[f"{side}{number}"] = rng.normal()
        book.add(Cross(f"x{number}", f"s{number}", f"p{number}"))
        middle = (values[f"s{number}"] + values[f"p{number}"]) / 2
        for sib in range(sibs):
            code = f"x{number}-{sib}"
            book.add(Plant(code, kind="plant", cross=f"x{number}"))
            values[code] = middle + rng.normal() * np.sqrt(0.5)
    noise = np.sqrt((1 - heritability) / heritability)
    found = [Observation(c, 50 + v + noise * rng.normal(), "2024") for c, v in values.items()]
    return PedigreeNetwork.from_records(book), found, values


def test_reml_finds_the_heritability_that_was_simulated() -> None:
    net, found, truth = _simulated(0.4)
    solved = predict(net, found)
    assert solved.estimated
    assert solved.interval is not None
    low, high = solved.interval
    assert low < 0.4 < high
    assert solved.heritability == pytest.approx(0.4, abs=0.12)
    assert solved.warnings == ()
    inside = [item.low <= truth[item.plant] <= item.high for item in solved.values]
    assert 0.92 < np.mean(inside) < 0.98


def test_reml_lies_at_the_least_dense_deviance() -> None:
    """The profile by V and its determinants, dense, along a grid."""
    net, found, _ = _simulated(0.5, families=12, sibs=4)
    codes = list(net.codes)
    theta = 2 * np.array([[net.coancestry(a, b) for b in codes] for a in codes])
    at = [codes.index(item.plant) for item in found]
    y, x = np.array([item.value for item in found]), np.ones((len(found), 1))

    def deviance(share):
        v = theta[np.ix_(at, at)] * share / (1 - share) + np.eye(len(y))
        inverse = np.linalg.inv(v)
        middle = x.T @ inverse @ x
        p = inverse - inverse @ x @ np.linalg.inv(middle) @ x.T @ inverse
        logs = np.linalg.slogdet(v)[1] + np.linalg.slogdet(middle)[1]
        return logs + (len(y) - 1) * np.log(y @ p @ y)

    grid = np.linspace(0.02, 0.98, 193)
    best = grid[int(np.argmin([deviance(share) for share in grid]))]
    solved = predict(net, found)
    assert solved.heritability == pytest.approx(best, abs=0.006)
    low, high = solved.interval
    lowest = deviance(solved.heritability)
    for end in (low, high):
        if 0.011 < end < 0.989:
            assert deviance(end) - lowest == pytest.approx(3.84, abs=0.05)


def test_too_little_is_a_fault() -> None:
    net, found, _ = _simulated(0.5, families=1, sibs=1)
    with pytest.raises(Fault, match="too few"):
        predict(net, found[:1])
    with pytest.raises(ValueError, match="above 0"):
        predict(net, found, ratio=0.0)
    with pytest.raises(ValueError, match="each value"):
        predict(net, found, fixed=["one"])
