"""A heat map in a file: its caption and the blank round it."""

from __future__ import annotations

import xml.etree.ElementTree as ET
from pathlib import Path

import numpy as np
import pytest
from PySide6.QtGui import QImage

from pedigreeview.book.faults import Fault
from pedigreeview.drawing.heat_file import HeatSheet, heat_sheet, save_heat
from pedigreeview.drawing.heat_picture import HeatPicture
from pedigreeview.drawing.theme import theme
from tests.reports.pdf_marks import inked

pytestmark = pytest.mark.usefixtures("qapp")

CAPTION = "Kin of <TP> & BA\n" + "long" * 200


def sheet(**more: object) -> HeatSheet:
    values = np.array([[1.0, 0.5, 0.0], [0.5, 1.0, 0.25], [0.0, 0.25, 1.0]])
    picture = HeatPicture(("TP", "21-01", "BA"), values, theme("light"))
    notes = ("Base: none.", "x" * 300)
    return heat_sheet(picture, title="Peas", scale="θ", notes=notes, date="2024-05-01", **more)


def test_the_caption_stands_below_the_title(tmp_path: Path) -> None:
    path = save_heat(sheet(caption=CAPTION), tmp_path / "heat.svg")
    root = ET.parse(path).getroot()
    said = [str(one.text) for one in root.iter("{http://www.w3.org/2000/svg}text")]
    assert said[:2] == ["Peas", "Kin of <TP> & BA"]
    lines = [words for words in said if set(words) == set("long")]
    assert len(lines) > 1
    assert "".join(lines) == "long" * 200
    taller = sheet(caption=CAPTION).height - sheet().height
    assert taller == pytest.approx(18 * (1 + len(lines)) + 4)
    # A word without an end is broken in the notes as well.
    assert "".join(words for words in said if set(words) == {"x"}) == "x" * 300


@pytest.mark.parametrize("margin", [0, 20])
def test_the_blank_round_a_picture(tmp_path: Path, margin: float) -> None:
    path = save_heat(sheet(margin=margin, caption=CAPTION), tmp_path / "heat.png", dpi=96)
    image = QImage(str(path))
    edge = round(margin * 96 / 25.4)
    assert image.width() == sheet(margin=0).width + 2 * edge
    ground = image.pixel(0, image.height() - 1)
    inner = image.copy(edge, edge, image.width() - 2 * edge, image.height() - 2 * edge)
    inked_inside = sum(
        inner.pixel(x, y) != ground for x in range(inner.width()) for y in range(inner.height())
    )
    inked_at_all = sum(
        image.pixel(x, y) != ground for x in range(image.width()) for y in range(image.height())
    )
    assert inked_inside == inked_at_all > 1000


@pytest.mark.parametrize("margin", [None, 5, 40])
def test_the_margin_of_paper(tmp_path: Path, margin: float | None) -> None:
    path = save_heat(sheet(margin=margin, caption=CAPTION), tmp_path / "heat.pdf")
    (page,) = inked(path)
    expected = 10 if margin is None else margin
    assert min(page.blank_mm()) >= expected - 0.1
    assert min(page.blank_mm()) == pytest.approx(expected, abs=2)


def test_what_cannot_be_is_refused(tmp_path: Path) -> None:
    with pytest.raises(Fault, match="from 0 to 50 mm"):
        sheet(margin=51)
    with pytest.raises(Fault, match="2000 are the most"):
        sheet(caption="x" * 2001)
    with pytest.raises(Fault, match="from 5 to 50 mm"):
        save_heat(sheet(margin=2), tmp_path / "heat.pdf")
    assert list(tmp_path.iterdir()) == []
