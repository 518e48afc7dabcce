"""The picture on paper says what it says on the screen: way of looking, tint, key, filter."""

from __future__ import annotations

from pathlib import Path

import pytest
from PySide6.QtCore import QRectF
from PySide6.QtGui import QImage, QPainter

from pedigreeview import read
from pedigreeview.drawing.application import ensure_gui
from pedigreeview.drawing.blocks import Block
from pedigreeview.drawing.ghost import Ghost
from pedigreeview.drawing.legend import legend_entries, tint_entries
from pedigreeview.drawing.placing import place
from pedigreeview.drawing.tags import Dress, draw_tag
from pedigreeview.drawing.theme import theme
from pedigreeview.drawing.tinting import Wanted, tint
from pedigreeview.drawing.view import Look, choose
from pedigreeview.drawing.ways import Way
from pedigreeview.network import PedigreeNetwork
from pedigreeview.places import demo
from pedigreeview.reports.chart import save_picture


@pytest.fixture(scope="module")
def peas() -> PedigreeNetwork:
    return read(demo("two_peas_both_ways"))


def svg(net: PedigreeNetwork, folder: Path, look: Look, colours: str = "light") -> str:
    path = save_picture(net, folder / "picture.svg", look=look, theme=colours, date="2026-01-01")
    return path.read_text(encoding="utf-8")


def test_a_scale_stands_on_the_tags_and_in_the_key(peas: PedigreeNetwork, tmp_path: Path) -> None:
    text = svg(peas, tmp_path, Look(focus="21-01-3", tint=Wanted("inbreeding")))
    assert ">0.5<" in text
    assert "Tint: Inbreeding F, pale to deep" in text
    assert "Inbreeding F: from 0, palest, to 1, deepest." in text
    assert "Tint:" not in svg(peas, tmp_path, Look(focus="21-01-3"))


def test_classes_are_told_in_words_in_grey_too(peas: PedigreeNetwork, tmp_path: Path) -> None:
    text = svg(peas, tmp_path, Look(focus="21-01-3", tint=Wanted("status")), "grey")
    assert "Tint: Status" in text
    assert ">kept<" in text
    assert "kept (" in text


def test_way_ghost_and_filter_are_said(peas: PedigreeNetwork, tmp_path: Path) -> None:
    look = Look(focus="23-07", way=Way("connection", other="23-61"))
    text = svg(peas, tmp_path, look)
    assert "How 23-07 and 23-61 are connected: their lines meet at TP, BA." in text
    assert "generations up" not in text
    away = frozenset(code for code in peas.codes if peas.book.plants[code].status != "kept")
    text = svg(
        peas, tmp_path, Look(focus="21-01-3", away=away, ghost=Ghost("TP", "BA", 0.0, "F 0"))
    )
    assert "plants folded away by the filter." in text
    assert ">TP × BA<" in text
    assert "a cross only tried out" in text
    text = svg(peas, tmp_path, Look(focus="21-01-3", faded=frozenset({"21-02-2"})))
    assert "Faint: beside what is looked at" in text


def painted(dress: Dress, colours: str) -> QImage:
    ensure_gui()
    image = QImage(200, 90, QImage.Format.Format_RGB32)
    image.fill(0xFFFFFF)
    block = Block("plant:a", "tag", 0, ("a",), "a", "Aster", inbreeding=0.5, shares=(("a", 1.0),))
    painter = QPainter(image)
    try:
        draw_tag(painter, block, QRectF(20, 15, 150, 60), theme(colours), {"a": 0}, dress=dress)
    finally:
        painter.end()
    return image


def test_in_grey_a_class_has_a_pattern_and_elsewhere_its_colour() -> None:
    grey = [painted(Dress(word="one", mark=number), "grey") for number in range(3)]
    assert grey[0] != grey[1] != grey[2] != grey[0]
    light = [painted(Dress(word="one", mark=number), "light") for number in range(2)]
    assert light[0] == light[1]


def test_what_is_put_back_is_fainter_than_the_rest() -> None:
    def darkest(image: QImage) -> int:
        return min(
            image.pixelColor(x, y).lightness() for x in range(45, 150) for y in range(25, 45)
        )

    assert darkest(painted(Dress(back=True), "light")) > darkest(painted(Dress(), "light")) + 60
    assert painted(Dress(word="0.5"), "light") != painted(Dress(), "light")


def test_the_key_of_a_tint_comes_first(peas: PedigreeNetwork) -> None:
    made = tint(peas, Wanted("cytoplasm"), theme("light"))
    placed = place(choose(peas, Look(focus="21-01-3")))
    entries = legend_entries(placed, key=made.key)
    assert [entry.said for entry in entries[:3]] == [
        "Tint: Cytoplasm, by seed-parent line",
        "BA (124)",
        "TP (113)",
    ]
    assert tint_entries(None) == ()
    scale = tint_entries(tint(peas, Wanted("generation"), theme("light")).key)
    assert scale[0].ends == ("0", "5")
    assert made.marks_by_code(["TP", "BA", "no plant"]) == {"TP": 1, "BA": 0}


def test_the_key_names_mixed_packs_and_plants_without_a_value(peas: PedigreeNetwork) -> None:
    made = tint(peas, Wanted("status"), theme("light"))
    one, other = (
        next(c for c, word in made.words_by_code(peas.codes).items() if word == wanted)
        for wanted in ("kept", "culled")
    )
    assert made.also([(one,), (one, other)]) == ["mixed"]
    assert made.also([(one,), ("no plant",)]) == ["no value"]
    assert made.also([(one,), (other,)]) == []
    marks = [entry.mark for entry in tint_entries(made.key, ["mixed", "no value"])]
    assert marks[-2:] == ["mixed", "no value"]
    assert "mixed" not in [entry.mark for entry in tint_entries(made.key)]
