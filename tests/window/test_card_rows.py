"""Where the text of a card may be cut off.  Common practice, no source."""

from __future__ import annotations

from hypothesis import given
from hypothesis import strategies as st
from PySide6.QtWidgets import QLabel, QScrollArea, QVBoxLayout, QWidget
from pytestqt.qtbot import QtBot

from pedigreeview.window.card_foot import CardFoot
from pedigreeview.window.card_rows import last_cut, rows_and_wholes, rows_of
from pedigreeview.window.labels import heading, rule, sentence
from pedigreeview.window.style import step

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


def _text(*parts: QWidget) -> QWidget:
    """Parts one above the other, 10 pixels apart."""
    inner = QWidget()
    layout = QVBoxLayout(inner)
    layout.setContentsMargins(0, 0, 0, 0)
    layout.setSpacing(10)
    for part in parts:
        layout.addWidget(part)
    return inner


def test_a_rule_a_heading_and_a_short_text_are_kept_with_what_follows(qtbot: QtBot) -> None:
    first, line, head = QLabel("first"), rule(), sentence("Parents", "caption")
    two, four = QLabel("one\ntwo"), QLabel("one\ntwo\nthree\nfour")
    inner = _text(first, line, head, two, four)
    qtbot.addWidget(inner)
    inner.show()
    rows, wholes = rows_and_wholes(inner)
    assert rows == rows_of(inner)
    three = four.y() + round(3 * four.height() / 4)
    row = two.y() + round(two.height() / 2)
    assert sorted(wholes) == sorted(
        [
            (line.y(), head.y() + head.height()),
            (head.y(), row),
            (two.y(), two.y() + two.height()),
            (four.y(), three),
        ]
    )
    # Wherever the card would end between the rule and the end of the short text, it ends above.
    for most in range(line.y() + 1, two.y() + two.height()):
        assert last_cut([*rows, *wholes], most) == line.y()
    assert last_cut([*rows, *wholes], three) == three


def test_the_foot_leaves_no_heading_alone_but_gives_up_little_for_it(qtbot: QtBot) -> None:
    tall, head = QWidget(), heading("Parents", 3)
    tall.setFixedHeight(300)
    last = QWidget()
    last.setFixedHeight(300)
    area = QScrollArea()
    qtbot.addWidget(area)
    area.setWidgetResizable(True)
    area.setWidget(_text(tall, head, last))
    area.resize(200, 200)
    foot = CardFoot(area)
    area.show()
    foot.measure()
    # The heading would be the last row: it goes too.
    ends = head.y() + head.height() + 5 + foot.least()
    assert foot.room_for(ends) == head.y() + foot.least()
    # So much would be given up that the text is rather parted.
    tall.hide()
    last.hide()
    many = QLabel("\n".join("abcdefgh"))
    many.setFixedHeight(20 * step())
    inner = area.widget()
    assert inner is not None
    layout = inner.layout()
    assert layout is not None
    layout.addWidget(many)
    layout.activate()
    foot.measure()
    assert foot.room_for(inner.height() + foot.least() - 1) > many.y()
