"""The choice of crosses against every choice, one by one."""

from __future__ import annotations

from itertools import combinations

import numpy as np
import pytest

from pedigreeview.book.book import Book, BookSettings
from pedigreeview.book.faults import Cancelled, Fault
from pedigreeview.book.records import Cross, Plant
from pedigreeview.network import PedigreeNetwork
from pedigreeview.planning import choosing
from pedigreeview.planning.choosing import CandidateCross, choose_crosses, choose_from_table


def _theta(rng: np.random.Generator, plants: int) -> np.ndarray:
    """Coancestries of random plants that share founders: shares times founders, plus themselves."""
    shares = rng.dirichlet(np.ones(4) * 0.6, plants)
    found = shares @ shares.T / 2
    found[np.diag_indices(plants)] += 0.1
    return found


def _brute(theta, parents, merits, k, merit, most_uses):
    best = np.inf
    for chosen in combinations(range(len(parents)), k):
        if merit is not None and np.mean(merits[list(chosen)]) < merit - 1e-12:
            continue
        plants = [p for at in chosen for p in set(parents[at].tolist())]
        if most_uses is not None and max(plants.count(p) for p in set(plants)) > most_uses:
            continue
        total = sum(
            theta[a, b] / 4
            for one in chosen
            for other in chosen
            for a in parents[one]
            for b in parents[other]
        )
        best = min(best, total / k**2)
    return best


@pytest.mark.parametrize("exact_up_to", [60, 0])
@pytest.mark.parametrize(("k", "merit", "most_uses"), [(2, None, None), (3, 0.5, 1), (4, 0.6, 2)])
def test_no_other_choice_is_better(exact_up_to, k, merit, most_uses) -> None:
    rng = np.random.default_rng(k)
    # By planes an answer takes many steps: two of them show as much.
    for _ in range(6 if exact_up_to else 2):
        theta = _theta(rng, 7)
        parents = np.array([rng.choice(7, 2, replace=False) for _ in range(11)])
        merits = rng.random(11)
        wanted = _brute(theta, parents, merits, k, merit, most_uses)
        if not np.isfinite(wanted):
            with pytest.raises(Fault):
                choose_from_table(theta, parents, merits, k, merit=merit, most_uses=most_uses)
            continue
        found = choose_from_table(
            theta,
            parents,
            merits,
            k,
            merit=merit,
            most_uses=most_uses,
            seconds=30,
            exact_up_to=exact_up_to,
        )
        assert found.bound <= wanted + 1e-7
        assert len(found.crosses) == k
        if exact_up_to:
            assert found.proved
            assert found.coancestry == pytest.approx(wanted, abs=1e-7)
        else:
            assert found.coancestry >= wanted - 1e-9
            assert found.coancestry - found.bound == pytest.approx(found.gap)
            if found.proved:
                assert found.coancestry == pytest.approx(wanted, rel=2e-6)
        if merit is not None:
            assert found.merit >= merit - 1e-9


def test_mean_coancestry_by_hand() -> None:
    """Two unrelated pairs: θ 1/2 with itself; one cross 1/4, both 1/8."""
    book = Book(settings=BookSettings(ploidy=2, founders_as="plant"))
    for code in "ABCD":
        book.add(Plant(code, kind="plant"))
    net = PedigreeNetwork.from_records(book)
    candidates = [CandidateCross("A", "B"), CandidateCross("B", "A"), CandidateCross("C", "D")]
    assert choose_crosses(net, candidates, 1).coancestry == pytest.approx(1 / 4)
    both = choose_crosses(net, candidates, 2)
    assert both.coancestry == pytest.approx(1 / 8)
    assert 2 in both.crosses
    assert both.sentence == "No other 2 of these crosses have a lower mean coancestry than 0.1250."
    all_three = choose_crosses(net, candidates, 3)
    assert all_three.coancestry == pytest.approx((4 + 1) / 9 / 4)


def test_more_merit_costs_coancestry() -> None:
    book = Book(settings=BookSettings(ploidy=2, founders_as="plant"))
    for code in "ABCD":
        book.add(Plant(code, kind="plant"))
    book.add(Cross("AB", "A", "B"))
    for code in ("E", "F"):
        book.add(Plant(code, kind="plant", cross="AB"))
    net = PedigreeNetwork.from_records(book)
    candidates = [CandidateCross("E", "F", 9.0), CandidateCross("C", "D", 1.0)]
    assert choose_crosses(net, candidates, 1).crosses == (1,)
    assert choose_crosses(net, candidates, 1, merit=5).crosses == (0,)
    with pytest.raises(Fault, match="keep to the conditions"):
        choose_crosses(net, candidates, 2, merit=6)
    with pytest.raises(Fault, match="cannot be chosen"):
        choose_crosses(net, candidates, 3)


def test_many_candidates_get_a_bound_and_a_gap(monkeypatch) -> None:
    # So many steps that the clock does not decide.
    monkeypatch.setattr(choosing, "_MOST_PLANES", 10)
    monkeypatch.setattr(choosing, "_MOST_NODES", 30)
    rng = np.random.default_rng(5)
    theta = _theta(rng, 40)
    parents = np.array([rng.choice(40, 2, replace=False) for _ in range(300)])
    found = choose_from_table(theta, parents, rng.random(300), 8, most_uses=2, seconds=60)
    assert 0 < found.bound <= found.coancestry
    assert found.gap < 0.15 * found.coancestry
    assert found.proved or "no choice can go below" in found.sentence


def test_cancelled() -> None:
    def tick(done: int, of: int) -> None:
        raise Cancelled

    rng = np.random.default_rng(5)
    with pytest.raises(Cancelled):
        choose_from_table(_theta(rng, 4), np.array([[0, 1], [2, 3]]), np.ones(2), 1, tick=tick)
