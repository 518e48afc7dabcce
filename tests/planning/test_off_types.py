"""Off-types against the table of plant-variety tests and plain binomial sums."""

from __future__ import annotations

from math import comb

import pytest

from pedigreeview.planning.off_types import (
    judge_off_types,
    off_type_table,
    off_types_allowed,
    plants_to_trust,
    upper_bound,
)


def test_the_table_of_tolerated_off_types() -> None:
    """Understanding plant breeder's rights: uniform (read): 0 in 1–5, 1 in 6–35, 2 in 36–82, 3 in
    83–137, where 1% is allowed at 95% acceptance."""
    found = [(row.allowed, row.low, row.high) for row in off_type_table(138)]
    assert found == [(0, 1, 5), (1, 6, 35), (2, 36, 82), (3, 83, 137), (4, 138, 138)]
    assert off_types_allowed(0) == 0


def test_none_in_twenty_still_leaves_fourteen_per_cent() -> None:
    """Trade terms, numbers of plants (95% bound)."""
    assert round(100 * upper_bound(0, 20)) == 14
    assert upper_bound(0, 20) == pytest.approx(1 - 0.05 ** (1 / 20))
    assert upper_bound(3, 3) == 1


@pytest.mark.parametrize(("seen", "plants"), [(1, 20), (2, 12), (5, 40)])
def test_the_bound_leaves_five_per_cent(seen: int, plants: int) -> None:
    share = upper_bound(seen, plants)
    below = sum(comb(plants, k) * share**k * (1 - share) ** (plants - k) for k in range(seen + 1))
    assert below == pytest.approx(0.05)


def test_plants_to_look_at() -> None:
    assert plants_to_trust(0.05) == 59
    assert upper_bound(0, 59) < 0.05 < upper_bound(0, 58)


def test_words() -> None:
    clean, bad = judge_off_types(0, 20), judge_off_types(3, 20)
    assert clean.uniform
    assert not bad.uniform
    assert "No off-type in 20 plants: up to 14%" in clean.sentences()[0]
    assert "look at 59 plants" in clean.sentences()[-1]
    assert any("more than the 1 allowed" in line for line in bad.sentences())
    assert judge_off_types(0, 0).sentences() == ["No plant of it has been looked at."]
    assert len(judge_off_types(0, 100).sentences()) == 1
    for wrong in (
        lambda: upper_bound(3, 2),
        lambda: plants_to_trust(0),
        lambda: off_types_allowed(-1),
    ):
        with pytest.raises(ValueError, match=r"among|between"):
            wrong()
