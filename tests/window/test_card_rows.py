"""Where the text of a card may be cut off.  Common practice, no source."""

from __future__ import annotations

from hypothesis import given
from hypothesis import strategies as st
from PySide6.QtWidgets import QLabel, QVBoxLayout, QWidget
from pytestqt.qtbot import QtBot

from pedigreeview.window.card_rows import last_cut, rows_of

ROWS = st.lists(
    st.tuples(st.integers(0, 300), st.integers(1, 40)).map(lambda row: (row[0], row[0] + row[1])),
    max_size=12,
)


@given(ROWS, st.integers(0, 340))
def test_a_cut_goes_through_no_row_and_none_lower_would_do(
    rows: list[tuple[int, int]], most: int
) -> None:
    def clear(at: int) -> bool:
        return not any(top < at < bottom for top, bottom in rows)

    cut = last_cut(rows, most)
    assert cut <= most
    assert clear(cut)
    assert not any(clear(at) for at in range(cut + 1, most + 1))


class Bars(QWidget):
    """Three rows in one widget."""

    def rows(self) -> int:
        return 3


def test_labels_are_as_many_rows_as_lines_and_other_widgets_one(qtbot: QtBot) -> None:
    inner = QWidget()
    qtbot.addWidget(inner)
    layout = QVBoxLayout(inner)
    layout.setContentsMargins(0, 0, 0, 0)
    layout.setSpacing(10)
    label = QLabel("one\ntwo\nthree")
    bars, box, gone = Bars(), QWidget(), QLabel("not shown")
    bars.setFixedHeight(60)
    box.setFixedHeight(33)
    for part in (label, bars, box, gone):
        layout.addWidget(part)
    gone.hide()
    inner.show()
    rows = sorted(rows_of(inner))
    high = label.height()
    assert len(rows) == 7
    assert rows[0][0] == 0
    assert rows[2][1] == high
    assert rows[3:6] == [(high + 10 + 20 * n, high + 30 + 20 * n) for n in range(3)]
    assert rows[6] == (box.y(), box.y() + 33)
