"""Coefficients against published figures; their sources stand in tests/published/checks.json."""

from __future__ import annotations

from fractions import Fraction

import pytest

from pedigreeview.book.book import Book, BookSettings
from pedigreeview.book.records import Cross, Plant
from pedigreeview.network import PedigreeNetwork
from tests.published.cases import CHECKS, of_kind, pedigree_book, tolerance


def _network(entry: dict) -> PedigreeNetwork:
    given = entry["input"]
    return PedigreeNetwork.from_records(pedigree_book(given["rows"], given.get("founder_F")))


@pytest.mark.parametrize("key", of_kind("pedigree"))
def test_pedigrees_have_their_published_coefficients(key: str) -> None:
    entry = CHECKS[key]
    net, near, expected = _network(entry), tolerance(entry), entry["expected"]
    compared = 0
    for code, value in {**expected.get("F", {}), **expected.get("F_exact_here", {})}.items():
        assert net.inbreeding(code) == pytest.approx(float(Fraction(value)), abs=near)
        compared += 1
    for code, value in expected.get("F_at_most", {}).items():
        assert net.inbreeding(code) <= float(value)
        compared += 1
    for a, b, value in expected.get("kinship", []):
        assert net.coancestry(a, b) == pytest.approx(float(Fraction(value)), abs=near)
        compared += 1
    for a, b, value in expected.get("relationship", []):
        # The printed figure is Wright's numerator relationship for plants that are not inbred.
        assert net.numerator_relationship(a, b) == pytest.approx(float(Fraction(value)), abs=near)
        compared += 1
    if "A" in expected:
        for a, line in zip(expected["order"], expected["A"], strict=True):
            for b, value in zip(expected["order"], line, strict=True):
                found = net.numerator_relationship(a, b)
                assert found == pytest.approx(float(Fraction(value)), abs=near)
                compared += 1
    for code, shares in expected.get("contribution", {}).items():
        row = net.arrays.contributions([net._row(code)])[:, 0]
        for ancestor, value in shares.items():
            assert row[net._row(ancestor)] == pytest.approx(float(Fraction(value)), abs=near)
            compared += 1
    for code, chains in expected.get("chains", {}).items():
        found = {a.plant: a for a in net.common_ancestors(*net.parent_codes(code))}
        for ancestor, (paths, value) in chains.items():
            assert len(found[ancestor].paths) == paths
            assert found[ancestor].contribution_exact == Fraction(value)
            compared += 1
    assert compared


def test_path_matrix_and_segregation_variances_of_the_six_calves() -> None:
    """K03: Mrode 2014, pp. 25-27 (figures read): T and D of A = T D Tᵀ; ours are halves of D."""
    entry = CHECKS["K03"]
    net, near = _network(entry), tolerance(entry)
    rows = [net._row(code) for code in entry["expected"]["order"]]
    shares = net.arrays.contributions(rows)
    for column, line in enumerate(entry["expected"]["T"]):
        for older, value in zip(rows, line, strict=True):
            assert shares[older, column] == pytest.approx(float(value), abs=near)
    for row, value in zip(rows, entry["expected"]["D"], strict=True):
        assert 2 * net.arrays.innovation()[row] == pytest.approx(float(value), abs=near)


def _selfed(fixation: float, times: int, ploidy: int = 2) -> PedigreeNetwork:
    rows: list[list[str | None]] = [["s0", None, None]]
    rows += [[f"s{n}", f"s{n - 1}", f"s{n - 1}"] for n in range(1, times + 1)]
    return PedigreeNetwork.from_records(pedigree_book(rows, {"s0": str(fixation)}, ploidy))


def test_repeated_selfing() -> None:
    """K11: Acquaah, Principles of Plant Genetics and Breeding, 3.9.3 (fourth figure read)."""
    net = _selfed(0, 6)
    for n, value in enumerate(CHECKS["K11"]["expected"]["F"], 1):
        assert net.inbreeding_exact(f"s{n}") == Fraction(value)


def test_repeated_backcross_to_a_pure_line() -> None:
    """K12: Acquaah, as K11: backcrossing reaches the same F (figure of step four read)."""
    rows: list[list[str | None]] = [["b0", "R", "D"]]
    rows += [[f"b{n}", f"b{n - 1}", "R"] for n in range(1, 7)]
    net = PedigreeNetwork.from_records(pedigree_book(rows, {"R": "1", "D": "1"}))
    for n, value in enumerate(CHECKS["K12"]["expected"]["F"], 1):
        assert net.inbreeding_exact(f"b{n}") == Fraction(value)


def test_continued_half_sib_mating() -> None:
    """K14: f(t) = [1 + f(t−2) + 6 f(t−1)]/8 (encyclopaedia, after Crow and Kimura; formula read).

    One pollen parent a generation mated to its half sibs, which are half sibs of each other.
    """
    expected = [Fraction(value) for value in CHECKS["K14"]["expected"]["F"]]
    net = PedigreeNetwork.from_records(pedigree_book(_half_sib_rows(len(expected) + 1)))
    for step, value in enumerate(expected, 1):
        assert net.inbreeding_exact(f"x{step + 1}") == value


def _half_sib_rows(steps: int) -> list[list[str | None]]:
    """Each generation: one pollen parent, and seed parents of the line before with it as father.

    A plant of step t has as seed parent a plant of step t − 1 that no other uses, so that plants
    of one step are half sibs by their pollen parent and related by their seed parents only as half
    sibs of the step before.
    """
    rows: list[list[str | None]] = []

    def raise_plant(code: str, step: int) -> None:
        if step > 0:
            raise_plant(f"{code}m", step - 1)
            rows.append([code, f"{code}m", f"male{step - 1}"])

    for step in range(1, steps + 1):
        raise_plant(f"male{step}", step)
        raise_plant(f"x{step}", step)
    return rows


def test_full_sibs_of_pure_lines_and_tetraploids() -> None:
    """T01: tetraploid figures (selfing recursion and half sibs read; Kerr et al. 2012 abstract)."""
    expected = CHECKS["T01"]["expected"]
    rows = [["o", "A", "B"], ["p", "A", "B"], ["h", "A", "C"]]
    net = PedigreeNetwork.from_records(pedigree_book(rows, ploidy=4))
    assert net.coancestry_exact("A", "A") == Fraction(expected["self kinship of unrelated founder"])
    assert net.coancestry_exact("A", "o") == Fraction(expected["parent-offspring"])
    assert net.coancestry_exact("o", "p") == Fraction(expected["full sibs"])
    assert net.coancestry_exact("o", "h") == Fraction(expected["half sibs"])
    assert net.inbreeding_exact("o") == Fraction(expected["F of unrelated cross"])
    selfed = _selfed(0, 3, ploidy=4)
    for n in (1, 2, 3):
        assert selfed.inbreeding_exact(f"s{n}") == Fraction(expected[f"F after selfing {n}"])


def test_double_reduction_of_one_in_seven() -> None:
    """T02: outcross F = α/3, first selfing (1 + 2α)/6 (formula from memory)."""
    expected = CHECKS["T02"]["expected"]
    book = pedigree_book([["o", "A", "B"], ["s", "A", "A"]], ploidy=4)
    book.settings.double_reduction = 1 / 7
    net = PedigreeNetwork.from_records(book)
    assert net.inbreeding("o") == pytest.approx(float(Fraction(expected["F of unrelated cross"])))
    assert net.inbreeding("s") == pytest.approx(float(Fraction(expected["F after selfing 1"])))
    assert net.coancestry("A", "o") == pytest.approx(float(Fraction(expected["parent-offspring"])))


def test_one_founder_group_with_self_relationship() -> None:
    """MF1: Garcia-Baccino et al. 2017 and Legarra et al. 2015 (abstracts read): a pool of founders.

    A variety of fixation f is a founder group of self-relationship 2f.
    """
    book = Book(settings=BookSettings(ploidy=2))
    book.add(Plant("M", kind="variety", fixation=0.2))
    for code in "ab":
        book.add(Plant(code, raised="seed_of", source="M"))
    for code, seed, pollen in (("c", "a", "b"), ("d", "a", "b"), ("e", "c", "d")):
        name = f"{seed} × {pollen}"
        if name not in book.crosses:
            book.add(Cross(name, seed, pollen))
        book.add(Plant(code, raised="cross", cross=name))
    net = PedigreeNetwork.from_records(book)
    for a, b, value in CHECKS["MF1"]["expected"]["relationship"]:
        assert net.numerator_relationship(a, b) == pytest.approx(float(value))


@pytest.mark.parametrize("case", CHECKS["Y01"]["expected"]["cases"])
def test_synthetic_varieties_of_three_way_hybrids(case: dict) -> None:
    """Y01: Ibarra-Sanchez et al. 2019 (abstract read): 3(1 + F)/(16t), two plants of one hybrid.

    The mean coancestry of t unrelated hybrids is that of two plants of one of them, over t.
    """
    book = pedigree_book([], None)
    for line in "ABC":
        book.add(Plant(line, kind="plant", fixation=float(Fraction(case["F"]))))
    book.add(Cross("single", "A", "B"))
    book.add(Plant("AB", kind="family", raised="cross", cross="single"))
    book.add(Cross("three-way", "AB", "C", drawn="each"))
    book.add(Plant("ABC", kind="family", raised="cross", cross="three-way"))
    net = PedigreeNetwork.from_records(book)
    two_of_one = net.coancestry_exact("ABC", "ABC")
    assert two_of_one is not None
    assert two_of_one / case["t"] == Fraction(case["value"])
    of_lines = net.coancestry_exact("A", "A")
    assert of_lines is not None
    # The 3t lines themselves as parents: coancestry only of each line with itself.
    assert of_lines / (3 * case["t"]) == Fraction(case["lines_value"])


@pytest.mark.parametrize(
    ("key", "name"),
    [(key, pair["name"]) for key in of_kind("identity") for pair in CHECKS[key]["input"]["pairs"]],
)
def test_kinship_of_the_usual_relatives(key: str, name: str) -> None:
    """I01, I03: Lynch & Walsh 1998, Table 7.1 and ch. 7 example 2; Lange 2003, Table 5.1."""
    pair = next(p for p in CHECKS[key]["input"]["pairs"] if p["name"] == name)
    net = PedigreeNetwork.from_records(pedigree_book(pair["rows"]))
    expected = Fraction(CHECKS[key]["expected"][name]["kinship"])
    assert net.coancestry_exact(*pair["pair"]) == expected
    parts = [a.contribution_exact for a in net.common_ancestors(*pair["pair"])]
    assert sum((part for part in parts if part is not None), Fraction(0)) == expected
