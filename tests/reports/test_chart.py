"""The picture as a file, read back."""

from __future__ import annotations

import re
import struct
import xml.etree.ElementTree as ET

import pytest
from PySide6.QtGui import QPainter

from pedigreeview.book.book import Book
from pedigreeview.book.faults import Fault
from pedigreeview.book.records import Plant
from pedigreeview.drawing.view import Look
from pedigreeview.network import PedigreeNetwork
from pedigreeview.reports.chart import save_picture, tiles
from pedigreeview.reports.sheets import Sheet
from tests.drawing.random_books import add_cross

pytestmark = pytest.mark.usefixtures("qapp")


@pytest.fixture(scope="module")
def net() -> PedigreeNetwork:
    book = Book()
    book.settings.name = "Two peas"
    for code, name in (("TP", "Tarnwick Pale"), ("BA", "Brockle Amber")):
        book.add(Plant(plant=code, name=name, kind="variety"))
    add_cross(book, "21-01", "TP", "BA")
    add_cross(book, "21-02", "BA", "TP")
    for number in range(3):
        book.add(Plant(plant=f"21-01-{number}", cross="21-01"))
        book.add(Plant(plant=f"21-02-{number}", cross="21-02"))
    return PedigreeNetwork.from_records(book)


def texts(path) -> list[str]:
    root = ET.parse(path).getroot()
    return [
        "".join(node.itertext()).strip() for node in root.iter("{http://www.w3.org/2000/svg}text")
    ]


def test_text_stays_text_in_svg(net, tmp_path):
    path = save_picture(net, tmp_path / "a.svg", look=Look(focus="TP"), date="2026-05-01")
    found = texts(path)
    assert {"TP", "BA", "21-01", "21-02", "21-01-0", "Tarnwick Pale", "Two peas"} <= set(found)
    assert "Drawn on 2026-05-01." in found
    whole = " ".join(found)
    assert net.base_sentence() in whole
    assert "Grains: from the pollen parent" in found


def pages(path) -> list[tuple[float, float]]:
    boxes = re.findall(rb"/MediaBox \[0 0 ([\d.]+) ([\d.]+)", path.read_bytes())
    return [(float(w), float(h)) for w, h in boxes]


def test_pdf_fits_one_sheet_of_the_paper(net, tmp_path):
    path = save_picture(net, tmp_path / "a.pdf", paper="A4", landscape=True)
    ((width, height),) = pages(path)
    assert (width, height) == pytest.approx((842, 595), abs=1.5)
    assert b"/FontFile" in path.read_bytes() or b"/Font" in path.read_bytes()


def test_tiled_pdf_has_a_sheet_for_each_part(net, tmp_path):
    path = save_picture(net, tmp_path / "a.pdf", paper="A5", landscape=False, tiled=True)
    assert len(pages(path)) >= 4


def test_tiles_cover_everything_and_overlap():
    grid = tiles(1000, 500, (400, 300), 30)
    assert [x for x, _ in grid[0]] == [0, 370, 740]
    assert [row[0][1] for row in grid] == [0, 270]
    assert tiles(300, 200, (400, 300), 30) == [[(0, 0)]]


def test_png_has_the_dpi(net, tmp_path):
    small = save_picture(net, tmp_path / "a.png", dpi=96).read_bytes()
    large = save_picture(net, tmp_path / "b.png", dpi=192).read_bytes()

    def measure(data: bytes) -> tuple[int, int]:
        at = data.index(b"pHYs") + 4
        return struct.unpack(">I", data[16:20])[0], struct.unpack(">I", data[at : at + 4])[0]

    assert measure(large)[0] == pytest.approx(2 * measure(small)[0], abs=2)
    assert measure(small)[1] == pytest.approx(96 / 0.0254, abs=1)
    assert measure(large)[1] == pytest.approx(192 / 0.0254, abs=1)


@pytest.mark.parametrize("suffix", ["svg", "pdf", "png"])
def test_failed_export_leaves_the_old_file(net, tmp_path, monkeypatch, suffix):
    path = tmp_path / f"a.{suffix}"
    path.write_bytes(b"old")

    def fail(self: Sheet, painter: QPainter) -> None:
        raise RuntimeError("the disk is full")

    monkeypatch.setattr(Sheet, "paint", fail)
    with pytest.raises(RuntimeError, match="the disk is full"):
        save_picture(net, path)
    assert path.read_bytes() == b"old"
    assert [item.name for item in tmp_path.iterdir()] == [path.name]


@pytest.mark.parametrize(
    ("name", "more", "says"),
    [
        ("a.gif", {}, "cannot be written as '.gif'"),
        ("a.pdf", {"paper": "A9"}, "no paper 'A9'"),
        ("a.png", {"dpi": 100000}, "too many for a PNG"),
        ("none/a.svg", {}, "cannot be written"),
        ("a.svg", {"look": Look(focus="ZZ")}, "'ZZ' is not a plant"),
    ],
)
def test_what_cannot_be_done_is_a_fault(net, tmp_path, name, more, says):
    with pytest.raises(Fault, match=says):
        save_picture(net, tmp_path / name, **more)
    assert not list(tmp_path.iterdir())


@pytest.mark.parametrize("theme", ["light", "grey"])
def test_whole_book_and_sideways_and_grey(net, tmp_path, theme):
    path = save_picture(net, tmp_path / "a.svg", theme=theme, orientation="right")
    assert {"TP", "BA", "21-02-2"} <= set(texts(path))


def test_missing_library_is_named(monkeypatch):
    from pedigreeview.drawing.application import ensure_gui

    monkeypatch.setitem(__import__("sys").modules, "PySide6.QtGui", None)
    with pytest.raises(Fault, match="a library of the desktop is missing"):
        ensure_gui()
