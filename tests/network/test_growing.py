"""Arrays that grow: adding rows gives the numbers of computing everything anew."""

from __future__ import annotations

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from pedigreeview.book.book import Book
from pedigreeview.network import PedigreeArrays, PedigreeNetwork
from pedigreeview.network.origins import Origin, Row
from tests.network.random_books import books


@settings(max_examples=80)
@given(books(ploidies=(2, 2, 4)), st.floats(0, 1), st.booleans())
def test_rows_added_have_the_coefficients_of_the_whole(
    book: Book, part: float, computed: bool
) -> None:
    whole = PedigreeNetwork.from_records(book).arrays
    rows = [whole.row(index) for index in range(len(whole))]
    first = int(part * len(rows))
    start = PedigreeArrays.from_rows(rows[:first], whole.double_reduction)
    if computed:
        start.inbreeding()
    grown = start.extended(rows[first:])
    assert len(start) == first
    assert (grown.known_coefficients is not None) == (computed or first == len(rows) == 0)
    for name in ("inbreeding", "self_coancestry", "innovation"):
        np.testing.assert_allclose(
            getattr(grown, name)(), getattr(whole, name)(), atol=1e-12, err_msg=name
        )
    everything = np.arange(len(rows))
    np.testing.assert_allclose(
        grown.coancestry_columns(everything), whole.coancestry_columns(everything), atol=1e-12
    )


def test_a_row_before_its_parent_is_refused() -> None:
    start = PedigreeArrays.from_parents([-1], [-1])
    with pytest.raises(ValueError, match="row 1 comes before its parent 1"):
        start.extended([Row(Origin.SELF, 1)])
