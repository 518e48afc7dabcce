"""Arrays made from row numbers of parents: meaning of each argument, and what is refused."""

from __future__ import annotations

import numpy as np
import pytest

from pedigreeview.network import PedigreeArrays


def test_pure_lines_f1_f2_and_backcross() -> None:
    arrays = PedigreeArrays.from_parents(
        [-1, -1, 0, 2, 2], [-1, -1, 1, 2, 0], pool=[True, True, False, False, False]
    )
    np.testing.assert_array_equal(arrays.inbreeding(), [1, 1, 0, 0.5, 0.5])
    np.testing.assert_array_equal(arrays.founders, [0, 1])
    np.testing.assert_array_equal(arrays.founder_shares([3, 4]), [[0.5, 0.5], [0.75, 0.25]])
    assert arrays.coancestry_with(2)[0] == 0.5


def test_every_word_for_raised_and_its_number() -> None:
    words = [
        "founder",
        "seed_of",
        "sibbed_in",
        "cutting_of",
        "doubled_haploid_of",
        "doubled_of",
        "cross",
    ]
    seeds = [-1, 0, 0, 1, 1, 1, 1]
    pollens = [-1, -1, -1, -1, -1, -1, 3]
    options = {"pool": [True] + 6 * [False], "fixation": [0.5] + 6 * [np.nan]}
    by_word = PedigreeArrays.from_parents(seeds, pollens, raised=words, **options)
    by_number = PedigreeArrays.from_parents(seeds, pollens, raised=[0, 2, 3, 4, 5, 6, 1], **options)
    np.testing.assert_array_equal(by_word.inbreeding(), by_number.inbreeding())
    # A clone crossed to its source is a selfing in all but name: F = θ(s, s) = ½(1 + ½).
    expected = [0.5, 0.5, 0.5, 0.5, 1, 1 / 3 + 2 / 3 * 0.5, 0.75]
    np.testing.assert_allclose(by_word.inbreeding(), expected)
    assert by_word.ploidy.tolist() == [2, 2, 2, 2, 2, 4, 2]


def test_candidates_selfings_and_lines() -> None:
    arrays = PedigreeArrays.from_parents(
        [-1, -1, 0, 2, 2],
        [-1, -1, -1, 2, 2],
        candidates=[(2, 1, 0.5), (2, 0, 0.25)],
        selfings=[0, 0, 0, 1, 0],
        pool=[False, False, False, False, True],
        fixation=[np.nan, np.nan, np.nan, np.nan, 1.0],
    )
    assert arrays.inbreeding()[2] == 0.25 * 0.5
    assert arrays.inbreeding()[3] == 0.5 * (1 + 0.5 * (1 + 0.125))
    assert arrays.inbreeding()[4] == arrays.self_coancestry()[4] == 1
    np.testing.assert_array_equal(arrays.founder_shares([2]), [[0.625, 0.25]])


def test_double_reduction_and_ploidy_by_founder() -> None:
    arrays = PedigreeArrays.from_parents([-1, -1, 0], [-1, -1, 1], ploidy=4, double_reduction=1 / 7)
    assert arrays.inbreeding()[2] == pytest.approx(1 / 21)


@pytest.mark.parametrize(
    ("arguments", "said"),
    [
        ({"seed_parent": [0], "pollen_parent": [-1]}, "row 0: its seed parent is not before it"),
        ({"seed_parent": [-1, -1], "pollen_parent": [-1]}, "differ in length"),
        ({"seed_parent": [-1], "pollen_parent": [-1], "ploidy": 3}, "not an even number"),
        ({"seed_parent": [-1], "pollen_parent": [-1], "fixation": [2]}, "outside 0 to 1"),
        ({"seed_parent": [-1], "pollen_parent": [-1], "raised": ["budded"]}, "does not know"),
        ({"seed_parent": [-1], "pollen_parent": [-1], "raised": ["seed_of"]}, "names no source"),
        (
            {"seed_parent": [-1, 0], "pollen_parent": [-1, -1], "candidates": [(1, 0, 1.5)]},
            "odds lie between",
        ),
        (
            {"seed_parent": [-1, -1, 0], "pollen_parent": [-1, -1, 1], "ploidy": [2, 4, 2]},
            "row 2: its parents differ in ploidy",
        ),
        ({"seed_parent": [-1], "pollen_parent": [-1], "selfings": [-1]}, "selfings is negative"),
    ],
)
def test_what_cannot_be_is_refused_with_its_place(arguments: dict, said: str) -> None:
    with pytest.raises(ValueError, match=said):
        PedigreeArrays.from_parents(**arguments)
