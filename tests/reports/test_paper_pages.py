"""Pages in a PDF file: its name, what becomes of it at the end, and nothing by half."""

from __future__ import annotations

from pathlib import Path

import pytest
from PySide6.QtCore import QMarginsF
from PySide6.QtGui import QPageLayout, QPageSize, QPainter

from pedigreeview.book.faults import Cancelled, Fault
from pedigreeview.reports.paper_pages import pdf_path, save_pages

pytestmark = pytest.mark.usefixtures("qapp")


def layout() -> QPageLayout:
    size = QPageSize(QPageSize.PageSizeId.A5)
    return QPageLayout(size, QPageLayout.Orientation.Portrait, QMarginsF())


def test_only_a_pdf_is_written() -> None:
    with pytest.raises(Fault, match="Plans are written as PDF") as caught:
        pdf_path("plan.svg", "Plans are written as PDF.")
    assert caught.value.where.file == "plan.svg"
    assert pdf_path("plan.PDF", "") == Path("plan.PDF")


def test_every_page_is_painted_once_and_the_file_finished_before_it_is_moved(
    tmp_path: Path,
) -> None:
    path, painted, seen = tmp_path / "plan.pdf", [], []

    def paint(painter: QPainter, at: int) -> None:
        painted.append((at, painter.transform().m11()))

    def finish(beside: Path) -> None:
        seen.append((path.exists(), beside.read_bytes()[:5]))

    save_pages(path, "Plan", layout(), 3, paint, refused="Not written.", finish=finish)
    # 1,200 dots an inch, a unit being a tenth of a millimetre: 254 units an inch.
    assert painted == [(at, pytest.approx(1200 / 254)) for at in range(3)]
    assert seen == [(False, b"%PDF-")]
    assert path.exists()


def test_what_is_cancelled_leaves_nothing(tmp_path: Path) -> None:
    def tick(at: int, count: int, doing: str) -> None:
        assert (count, doing) == (2, "Sheets")
        if at == 1:
            raise Cancelled

    with pytest.raises(Cancelled):
        save_pages(
            tmp_path / "plan.pdf", "Plan", layout(), 2, lambda painter, at: None,
            refused="Not written.", doing="Sheets", tick=tick,
        )  # fmt: skip
    assert list(tmp_path.iterdir()) == []
