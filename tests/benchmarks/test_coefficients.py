"""All F, one plant against all, and a set against itself, beside their references."""

from __future__ import annotations

import gc
import tracemalloc
from typing import Any

import numpy as np
import pytest

from pedigreeview.network import PedigreeArrays
from pedigreeview.network.origins import Origin, Row
from tests.benchmarks import pedigrees, references
from tests.benchmarks.pedigrees import scaled

_PER_PLANT = "Meuwissen & Luo 1992 per plant, numba"


@pytest.mark.parametrize(
    ("name", "made", "full", "reach"),
    [
        ("10 generations, 20 sibs a cross, 1/5 selfings", pedigrees.wide, 1_000_000, "5"),
        ("20 generations, one plant a cross, 1/5 selfings", pedigrees.deep, 100_000, "8"),
    ],
    ids=["wide", "deep"],
)
def test_all_inbreeding(bench: Any, name: str, made: Any, full: int, reach: str) -> None:
    count = scaled(full)
    seeds, pollens = made(count)
    references.meuwissen_luo(seeds[:100], pollens[:100])
    found, expected = bench(
        f"all F of {count:,} plants, {name}",
        lambda arrays: arrays.inbreeding(),
        setup=lambda: PedigreeArrays.from_parents(seeds, pollens),
        reference=_PER_PLANT,
        run_reference=lambda: references.meuwissen_luo(seeds, pollens),
        reference_rounds=1,
        reach=f"at least {reach} times as fast",
    )
    np.testing.assert_allclose(found, expected, atol=1e-12)


def test_one_against_all(bench: Any) -> None:
    count = scaled(1_000_000)
    seeds, pollens = pedigrees.wide(count)
    arrays = PedigreeArrays.from_parents(seeds, pollens)
    arrays.inbreeding()
    values = np.ones(count)
    references.add_parents(seeds[:100], pollens[:100], values[:100])

    found, _ = bench(
        f"one plant against all {count:,}",
        lambda: arrays.coancestry_with(count - 1),
        rounds=20,
        reference="one compiled pass that adds the parents' values",
        run_reference=lambda: references.add_parents(seeds, pollens, np.ones(count)),
        reference_rounds=20,
        reach="at most 5 times as long",
    )
    # θ with the parents' mean is the coancestry of a plant with any that is not its descendant.
    older = np.arange(count - count // 11)
    mean = 0.5 * (arrays.coancestry_with(int(seeds[-1])) + arrays.coancestry_with(int(pollens[-1])))
    np.testing.assert_allclose(found[older], mean[older], atol=1e-12)


def test_candidates_with_each_other(bench: Any) -> None:
    count, size = scaled(100_000), scaled(2_000, least=50)
    seeds, pollens = pedigrees.wide(count)
    asked = np.sort(np.random.default_rng(5).choice(np.arange(count // 2, count), size, False))

    def fresh() -> PedigreeArrays:
        return PedigreeArrays.from_parents(seeds, pollens)

    arrays = fresh()
    gc.collect()
    tracemalloc.start()
    result = arrays.coancestry_between(asked, asked)
    _, peak = tracemalloc.get_traced_memory()
    tracemalloc.stop()
    above = (peak - result.nbytes) / 2**20
    found, expected = bench(
        f"coancestry of {size:,} candidates with each other inside {count:,} plants",
        lambda arrays: arrays.coancestry_between(asked, asked),
        setup=fresh,
        reference="pairwise recursion with memory",
        run_reference=lambda: references.recursion(
            seeds.tolist(), pollens.tolist(), asked.tolist()
        ),
        reference_rounds=1,
        reach="at least 20 times as fast, under 400 MB above the result",
        memory=f"{above:.0f} MB above the result",
    )
    np.testing.assert_allclose(found, expected, atol=1e-12)


def test_adding_a_cross(bench: Any) -> None:
    count = scaled(100_000)
    seeds, pollens = pedigrees.wide(count)
    arrays = PedigreeArrays.from_parents(seeds, pollens)
    arrays.inbreeding()
    mother, father = count - 1, count - 40
    cross = [Row(Origin.CROSS, mother, ((father, 1.0),)) for _ in range(20)]

    def anew() -> Any:
        more = PedigreeArrays.from_parents(
            np.append(seeds, [mother] * 20), np.append(pollens, [father] * 20)
        )
        return more.inbreeding()

    found, expected = bench(
        f"adding one cross with 20 progeny to {count:,} plants",
        lambda: arrays.extended(cross).inbreeding(),
        rounds=10,
        reference="all F computed anew",
        run_reference=anew,
        reach="at most 5 ms",
    )
    np.testing.assert_allclose(found, expected, atol=1e-12)
