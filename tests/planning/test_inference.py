"""Chances of genotypes against brute force over every way a small pedigree can be."""

from __future__ import annotations

from itertools import combinations

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from pedigreeview.book.book import Book, BookSettings
from pedigreeview.book.faults import Cancelled, Fault
from pedigreeview.book.records import Cross, Genotype, Locus, Plant, Score, Trait
from pedigreeview.network import PedigreeNetwork
from pedigreeview.planning import sampler
from pedigreeview.planning.elimination import Impossible, tree_of
from pedigreeview.planning.genotype_model import GenotypeModel
from pedigreeview.planning.inference import genotype_chances, which_carry
from pedigreeview.planning.inheritance import multisets
from pedigreeview.planning.tables import Table
from tests.network.random_books import books
from tests.planning.genotype_oracle import GenotypeOracle
from tests.planning.random_rows import random_arrays

FREQUENCIES = {"A": 0.7, "b": 0.3}


def _texts(ploidy: int, alleles: str = "Ab") -> list[str]:
    return ["".join(alleles[a] for a in held) for held in multisets(len(alleles), ploidy)]


def _random_records(rng, arrays, texts):
    """Rows with sets of genotypes that their records allow: a phenotype, or a genotype."""
    dominant = {text for text in texts if "A" in text}
    recessive = set(texts) - dominant
    seen: dict[int, list[set[str]]] = {}
    for row in range(len(arrays)):
        if rng.random() < 0.5:
            kind = rng.random()
            if kind < 0.4:
                allowed = dominant
            elif kind < 0.8:
                allowed = recessive
            else:
                allowed = {texts[rng.integers(0, len(texts))]}
            seen.setdefault(row, []).append(allowed)
    return seen


def _by_elimination(arrays, frequencies, seen, texts):
    model = GenotypeModel(arrays, np.array(list(frequencies.values())), list(range(len(arrays))))
    tables = list(model.tables)
    for row, records in seen.items():
        for allowed in records:
            values = np.array([float(text in allowed) for text in texts])
            tables.append(Table((model.unknown_of[row],), values))
    tree = tree_of([table.names for table in tables], model.lengths)
    try:
        tree.run(tables)
    except Impossible:
        with pytest.raises(Impossible):
            tree.run(tables, back=False, possible=True)
        return None
    tree.run(tables, back=False, possible=True)
    tree.run(tables)
    return [tree.chances(model.unknown_of[row]) for row in range(len(arrays))]


def _compare(arrays, rng, ploidy):
    texts = _texts(ploidy)
    seen = _random_records(rng, arrays, texts)
    wanted = GenotypeOracle(arrays, FREQUENCIES).chances(seen)
    found = _by_elimination(arrays, FREQUENCIES, seen, texts)
    assert (wanted is None) == (found is None)
    if wanted is None or found is None:
        return False
    for row, chances in enumerate(found):
        listed = [wanted[row].get(text, 0.0) for text in texts]
        np.testing.assert_allclose(chances, listed, atol=1e-10)
    return True


def test_500_random_small_pedigrees_agree_with_brute_force() -> None:
    rng = np.random.default_rng(20)
    agreed = sum(_compare(random_arrays(rng), rng, 2) for _ in range(500))
    # Some are impossible in both; most are not.
    assert agreed > 250


def test_tetraploid_pedigrees_agree_with_brute_force() -> None:
    rng = np.random.default_rng(4)
    agreed = sum(_compare(random_arrays(rng, ploidy=4, most=5), rng, 4) for _ in range(40))
    assert agreed > 15


# Through a book ---------------------------------------------------------------------------------


def _with_locus(book: Book, records: list[tuple[str, str]]) -> Book:
    book.add(Trait("leaf", "category", values="regular;potato"))
    book.add(Locus("C", "A;b", "complete", "regular leaf;potato leaf"))
    for plant, value in records:
        if "/" in value:
            book.add(Genotype(plant, "C", value))
        else:
            book.add(Score(plant, "leaf", "2024-05-01", "plant", value))
    return book


@settings(max_examples=60)
@given(books(most=4), st.data())
def test_books_of_every_origin_agree_with_brute_force(book: Book, data: st.DataObject) -> None:
    records = [
        (code, data.draw(st.sampled_from(("regular", "potato"))))
        for code in book.plants
        if data.draw(st.booleans())
    ]
    net = PedigreeNetwork.from_records(_with_locus(book, records))
    arrays = net.arrays
    seen: dict[int, list[set[str]]] = {}
    for code, value in records:
        if code not in net.withheld:
            texts = _texts(net.ploidy(code))
            allowed = {t for t in texts if ("A" in t) == (value == "regular")}
            seen.setdefault(net._row(code), []).append(allowed)
    wanted = GenotypeOracle(arrays, FREQUENCIES).chances(seen)
    found = genotype_chances(net, "C", frequencies={"A": 0.7})
    assert found.exact
    if wanted is None:
        assert found.impossible
        return
    assert set(found.chances) == set(net.codes) - set(net.withheld)
    for code, chances in found.chances.items():
        listed = [wanted[net._row(code)].get(text, 0.0) for text in _texts(net.ploidy(code))]
        np.testing.assert_allclose(chances, listed, atol=1e-9)


def _family(seed: str = "plant", pollen: str = "plant", children: int = 0) -> Book:
    book = Book(settings=BookSettings(ploidy=2))
    book.add(Plant("A", kind=seed))
    book.add(Plant("B", kind=pollen))
    book.add(Cross("AB", "A", "B"))
    for number in range(1, children + 1):
        book.add(Plant(f"X{number}", kind="plant", cross="AB"))
    return book


def test_a_carrier_that_showed_nothing_among_twelve_seedlings() -> None:
    """Bayes by hand: a BC1 plant carries with 1/2, and hides it with (3/4)^12."""
    book = Book(settings=BookSettings(ploidy=2))
    for code in ("HP", "MB"):
        book.add(Plant(code, kind="variety"))
    book.add(Cross("F1", "HP", "MB"))
    book.add(Plant("F1-1", kind="plant", cross="F1"))
    book.add(Cross("BC", "HP", "F1-1"))
    book.add(Plant("BC-1", kind="plant", cross="BC"))
    book.add(Cross("S", "BC-1", "BC-1", intended="selfing"))
    seedlings = [f"S-{number}" for number in range(12)]
    for code in seedlings:
        book.add(Plant(code, kind="plant", cross="S"))
    records = [("HP", "regular"), ("MB", "potato"), *((code, "regular") for code in seedlings)]
    records.append(("HP", "A/A"))
    found = genotype_chances(PedigreeNetwork.from_records(_with_locus(book, records)), "C")
    hidden = 0.5 * 0.75**12
    assert found.carrying("BC-1", "b") == pytest.approx(hidden / (0.5 + hidden))
    assert found.verdict("BC-1", "b") == "unlikely"
    assert found.verdict("F1-1", "b") == "surely"
    assert found.of("F1-1") == {"A/b": 1.0}
    carriers = which_carry(PedigreeNetwork.from_records(book), "C", "b", answer=found)
    assert ("MB", 1.0) in carriers.surely
    assert {code for code, _ in carriers.unlikely} == {"BC-1", *seedlings}
    assert [code for code, _ in carriers.cannot] == ["HP"]


def test_a_misread_phenotype_is_outvoted() -> None:
    """A recessive pair's 'dominant' progeny: impossible when nothing is misread."""
    book = _with_locus(_family(children=1), [("A", "potato"), ("B", "potato"), ("X1", "regular")])
    net = PedigreeNetwork.from_records(book)
    assert set(genotype_chances(net, "C").impossible) == {"A", "B", "X1"}
    found = genotype_chances(net, "C", misread=0.1)
    # By hand, founders AA 1/4, Ab 1/2, bb 1/4 each, readings right with 0.9.
    parents = {"AA": (0.25, 0.1, 0.0), "Ab": (0.5, 0.1, 0.5), "bb": (0.25, 0.9, 1.0)}
    total = recessive = 0.0
    for prior_a, read_a, gives_a in parents.values():
        for prior_b, read_b, gives_b in parents.values():
            rec = gives_a * gives_b
            for chance, reading in ((rec, 0.1), (1 - rec, 0.9)):
                total += prior_a * read_a * prior_b * read_b * chance * reading
            recessive += prior_a * read_a * prior_b * read_b * rec * 0.1
    assert found.fixed("X1", "b") == pytest.approx(recessive / total)


@pytest.mark.parametrize(("outcrossing", "wanted"), [(0.0, 1.0), (1.0, 0.5), (None, 0.5)])
def test_a_score_of_seed_speaks_one_generation_ahead(outcrossing, wanted) -> None:
    """A wrinkled seed on a dominant plant: by its own pollen, or half likelier by any pollen."""
    book = _with_locus(_family(), [("A", "A/?")])
    book.settings.outcrossing = outcrossing
    book.add(Score("A", "leaf", "2024-09-01", "seed", "potato"))
    found = genotype_chances(PedigreeNetwork.from_records(book), "C")
    # Whatever the pollen, a recessive seed needs the allele from the plant: A is A/b for sure.
    assert found.of("A") == {"A/b": pytest.approx(1.0)}
    other = _with_locus(_family(), [])
    other.settings.outcrossing = outcrossing
    other.add(Score("A", "leaf", "2024-09-01", "seed", "potato"))
    free = genotype_chances(PedigreeNetwork.from_records(other), "C")
    # Founder of plant kind: 1/4, 1/2, 1/4.  Selfed: Ab gives 1/4, bb 1; crossed: 1/4 and 1/2.
    if outcrossing == 0.0:
        assert free.fixed("A", "b") == pytest.approx(0.25 / (0.25 + 0.5 * 0.25))
    else:
        assert free.fixed("A", "b") == pytest.approx(0.25 * 0.5 / (0.25 * 0.5 + 0.5 * 0.25))
    assert wanted >= 0.5


def test_three_alleles_show_the_first_that_is_there() -> None:
    book = _family(children=1)
    book.add(Trait("coat", "category", values="black;brown;white"))
    book.add(Locus("K", "K;k1;k2", "complete", "black;brown;white"))
    for plant, value in (("A", "white"), ("X1", "brown")):
        book.add(Score(plant, "coat", "", "plant", value))
    found = genotype_chances(PedigreeNetwork.from_records(book), "K")
    assert found.of("X1") == {"k1/k2": pytest.approx(1.0)}
    assert found.carrying("B", "k1") == pytest.approx(1.0)
    assert found.showing("X1") == pytest.approx([0, 1, 0])


def test_without_dominance_each_dose_shows() -> None:
    book = _family(children=1)
    book.add(Trait("colour", "category", values="red;pink;white"))
    book.add(Locus("R", "R;r", "incomplete", "red flower;pink flower;white flower"))
    book.add(Score("X1", "colour", "", "plant", "pink"))
    found = genotype_chances(PedigreeNetwork.from_records(book), "R")
    assert found.of("X1") == {"R/r": pytest.approx(1.0)}


def test_a_locus_or_genotype_that_cannot_be_read_is_a_fault() -> None:
    net = PedigreeNetwork.from_records(_with_locus(_family(), [("A", "A/z")]))
    with pytest.raises(Fault, match="z"):
        genotype_chances(net, "C")
    with pytest.raises(Fault, match="no locus"):
        genotype_chances(net, "Q")
    with pytest.raises(ValueError, match="add up to 1"):
        genotype_chances(net, "C", genotypes=False, frequencies={"A": 1.2})
    with pytest.raises(ValueError, match="misread"):
        genotype_chances(net, "C", misread=1.0)


def test_cancel_leaves_at_once() -> None:
    def tick(done: int, of: int) -> None:
        raise Cancelled

    net = PedigreeNetwork.from_records(_with_locus(_family(), []))
    with pytest.raises(Cancelled):
        genotype_chances(net, "C", tick=tick)


# Where exact is too wide --------------------------------------------------------------------------


def _tangled(rng: np.random.Generator, generations: int = 3, width: int = 4) -> Book:
    book = Book(settings=BookSettings(ploidy=2, founders_as="plant"))
    last = [f"A{number}" for number in range(width)]
    for code in last:
        book.add(Plant(code, kind="plant"))
    records = []
    for step in range(generations):
        new = []
        for number in range(width):
            seed, pollen = rng.choice(last, 2, replace=False).tolist()
            cross = f"X{step}-{number}"
            book.add(Cross(cross, seed, pollen))
            for sib in range(2):
                code = f"{cross}-{sib}"
                book.add(Plant(code, kind="plant", cross=cross))
                new.append(code)
        last = rng.choice(new, width, replace=False).tolist()
        records += [(code, "regular") for code in new[:2]]
    return _with_locus(book, [*records, (last[-1], "potato")])


def test_the_sampler_agrees_with_exact_within_its_error() -> None:
    net = PedigreeNetwork.from_records(_tangled(np.random.default_rng(1)))
    exact = genotype_chances(net, "C")
    assert exact.exact
    sampled = genotype_chances(net, "C", largest=81, samples=600, seed=3)
    assert not sampled.exact
    assert sampled.samples > 100
    assert 0 < sampled.error < 0.05
    for code, chances in exact.chances.items():
        # Five standard errors of the worst chance: the seed is fixed, so this never flickers.
        np.testing.assert_allclose(sampled.chances[code], chances, atol=5 * sampled.error)
    assert "surely" not in {sampled.verdict(code, "b") for code in sampled.chances}


def test_plants_that_were_not_seen_do_not_force_the_sampler() -> None:
    """All crosses of six seen plants: together too wide, one by one each a mere family."""
    book = Book(settings=BookSettings(ploidy=2, founders_as="plant"))
    founders = [f"A{number}" for number in range(6)]
    for code in founders:
        book.add(Plant(code, kind="plant"))
    for seed, pollen in combinations(founders, 2):
        book.add(Cross(f"{seed}{pollen}", seed, pollen))
        book.add(Plant(f"{seed}{pollen}-1", kind="plant", cross=f"{seed}{pollen}"))
    _with_locus(book, [(code, "regular") for code in founders[:4]] + [("A4", "potato")])
    net = PedigreeNetwork.from_records(book)
    narrow, whole = genotype_chances(net, "C", largest=100), genotype_chances(net, "C")
    assert narrow.exact
    for code, chances in whole.chances.items():
        np.testing.assert_allclose(narrow.chances[code], chances, atol=1e-12)
    # Both of one third recessive alleles: 1/9.
    assert narrow.fixed("A0A1-1", "b") == pytest.approx(1 / 9)


def test_blocks_are_redrawn_where_weights_do_not_reach(monkeypatch) -> None:
    net = PedigreeNetwork.from_records(_tangled(np.random.default_rng(6)))
    exact = genotype_chances(net, "C")
    monkeypatch.setattr(sampler, "_FEW", 10**6)
    found = genotype_chances(net, "C", largest=81, samples=400, seed=1)
    assert not found.exact
    assert 0 < found.error < 0.1
    for code, chances in exact.chances.items():
        np.testing.assert_allclose(found.chances[code], chances, atol=4 * found.error)


def test_a_sampler_that_finds_no_way_says_so() -> None:
    """Recessive parents all round with one dominant child: impossible, but too wide to prove."""
    book = _tangled(np.random.default_rng(1))
    book.scores = [Score(f"A{number}", "leaf", "", "plant", "potato") for number in range(4)]
    book.scores.append(Score("X2-0-0", "leaf", "", "plant", "regular"))
    net = PedigreeNetwork.from_records(book)
    with pytest.raises(Fault, match="too tangled"):
        genotype_chances(net, "C", largest=30, samples=20)
