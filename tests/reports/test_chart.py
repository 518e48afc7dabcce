"""The picture as a file, read back."""

from __future__ import annotations

import re
import struct
import xml.etree.ElementTree as ET

import pytest
from PySide6.QtGui import QImage

from pedigreeview import read
from pedigreeview.book.book import Book
from pedigreeview.book.faults import Fault
from pedigreeview.book.records import Plant
from pedigreeview.drawing.legend import legend_height
from pedigreeview.drawing.theme import theme
from pedigreeview.drawing.view import Look
from pedigreeview.network import PedigreeNetwork
from pedigreeview.places import demo
from pedigreeview.reports.chart import Finish, file_stem, picture_of, preview_of, save_picture
from pedigreeview.reports.pages import OVERLAP, Pages, cuts, lay_out
from pedigreeview.reports.sheets import Sheet, matter, notes_height
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
    assert any(words.startswith("Grains: ") for words in found)


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
    assert len(pages(path)) >= 3


def test_several_sheets_hold_everything_and_none_is_empty(qapp):
    net = read(demo("a_leaf_for_hollin_plate"))
    placed = picture_of(net, Look())
    held = matter(placed, theme("light"), title="Leaves")
    made = lay_out(held, paper="A4", landscape=True, tiled=True)
    assert made.pages[0].name == ""
    assert made.pages[0].part is None
    names = [page.name for page in made.pages[1:]]
    assert len(set(names)) == len(names)
    assert names[0][0] in "ABC"
    parts = [page.part for page in made.pages[1:]]
    for item in placed.blocks:
        assert any(
            x <= item.x and item.right <= x + wide and y <= item.y and item.bottom <= y + high
            for x, y, wide, high in parts
        ), f"{item.block.key} is whole on no sheet"
    assert (
        made.words() == f"{made.count} sheets of A4, smallest text {made.smallest_points:.1f} pt."
    )
    assert made.smallest_points > 5


def test_one_sheet_says_when_its_text_is_too_small(qapp):
    net = read(demo("a_leaf_for_hollin_plate"))
    placed = picture_of(net, Look())
    held = matter(placed, theme("light"), title="Leaves")
    small = lay_out(held, paper="A5")
    large = lay_out(held, paper="A1")
    assert (small.count, large.count) == (1, 1)
    assert small.code_points < 6 <= large.code_points
    assert "hard to read" in small.words()
    assert "hard to read" not in large.words()
    # The paper that is named is the smallest on which it can be read.
    assert f"take {small.larger_paper()} paper, or several sheets." in small.words()
    assert lay_out(held, paper=small.larger_paper()).readable
    names = ["A5", "A4", "A3", "A2", "A1", "A0"]
    smaller = names[: names.index(small.larger_paper())]
    assert not any(lay_out(held, paper=name).readable for name in smaller)
    assert "hard to read" not in lay_out(held, paper="A5", tiled=True).words()


@pytest.mark.parametrize("book", ["a_leaf_for_hollin_plate", "tansy_and_the_moths"])
@pytest.mark.parametrize("colours", ["light", "grey"])
@pytest.mark.parametrize("landscape", [True, False, None])
def test_legend_and_notes_take_a_fifth_of_the_sheet_at_most(qapp, book, colours, landscape):
    net = read(demo(book))
    held = matter(picture_of(net, Look()), theme(colours), title="Leaves")
    made = lay_out(held, paper="A4", landscape=landscape)
    across = made.width / made.legend
    high = (legend_height(held.entries, across) + notes_height(held, across)) * made.legend
    assert high <= made.height / 5
    if landscape is None:
        both = [lay_out(held, paper="A4", landscape=way) for way in (True, False)]
        assert made.scale == max(way.scale for way in both)


def test_sheets_begin_where_nothing_is_cut():
    # A sheet of 400 with an overlap of about 38: the tag from 330 to 430 moves to the next sheet.
    assert cuts(0, 300, 400, []) == [0]
    assert cuts(0, 1000, 400, [])[1] == pytest.approx(400 - OVERLAP)
    first, second = cuts(0, 700, 400, [(330, 430)])[:2]
    assert (first, second) == (0, pytest.approx(330, abs=6))
    assert second <= 330


def test_pins_and_lit_paths_are_on_paper(net, tmp_path):
    paths = [("TP", "21-01-0")]
    plain = save_picture(net, tmp_path / "a.svg", look=Look(focus="21-01-0"), date="d")
    rich = save_picture(
        net,
        tmp_path / "b.svg",
        look=Look(focus="21-01-0", pins=("TP", "21-01-0")),
        lit_paths=paths,
        date="d",
    )
    assert {"A", "B"} <= set(texts(rich)) - set(texts(plain))
    assert theme("light")["lit"] in rich.read_text("utf-8").lower()
    assert "A, B, C ...: pinned to compare" in texts(rich)


MARKUP = '</text><script>x</script> & "quoted" font-family="none" %s'
HOSTILE = f"{MARKUP}\nזרעים של הצלבה\n{'long' * 400}"


def test_a_caption_stands_below_the_title_and_is_read_as_text(net, tmp_path):
    path = save_picture(net, tmp_path / "a.svg", caption=HOSTILE, date="d")
    root = ET.parse(path).getroot()
    assert not [node for node in root.iter() if node.tag.rpartition("}")[2] == "script"]
    said = texts(path)
    assert MARKUP in said
    assert said.index("The whole book, 8 plants") < said.index(MARKUP) < said.index("TP")
    # Qt writes each word from the right as a text of its own.
    assert {"זרעים", "של", "הצלבה"} <= set(said)
    long = [words for words in said if re.fullmatch("(long|lon|lo|l|ong|ng|g)+", words)]
    assert len(long) > 1
    assert "".join(long) == "long" * 400
    plain = ET.parse(save_picture(net, tmp_path / "b.svg", date="d")).getroot()

    def high(svg: ET.Element) -> float:
        return float(svg.get("viewBox", "").split()[3])

    assert high(root) - high(plain) == pytest.approx((2 + len(long)) * 18 + 4, abs=1)


def test_what_the_person_wrote_is_not_translated(net, tmp_path):
    from pedigreeview.drawing.telling import tell_with

    tell_with(lambda text: "told")
    try:
        path = save_picture(net, tmp_path / "a.svg", caption="Two peas")
    finally:
        tell_with(None)
    assert "Two peas" in texts(path)


def test_preview_shows_the_caption_and_the_margin(net):
    look = Look(focus="TP")
    placed = picture_of(net, look)

    def shown(**finish: object) -> QImage:
        finish = {"landscape": True, **finish}
        return preview_of(net, placed, look, Finish(**finish), kind="pdf")[0]

    def inked_row(image: QImage) -> int:
        middle = range(24, image.width() - 24)
        return next(
            y
            for y in range(24, image.height())
            if any(image.pixelColor(x, y).lightness() < 128 for x in middle)
        )

    plain, wide, told = shown(), shown(margin=40.0), shown(caption="Of my own")
    assert plain.size() == wide.size() == told.size()
    assert len({plain.cacheKey(), wide.cacheKey(), told.cacheKey()}) == 3
    assert plain != told
    # 30 mm of 210 mm, each sheet being as high as the image but for the gaps.
    assert inked_row(wide) - inked_row(plain) == pytest.approx((plain.height() - 36) / 7, abs=4)
    _, words = preview_of(net, placed, look, Finish(margin=0.0), kind="svg")
    _, usual = preview_of(net, placed, look, Finish(), kind="svg")
    assert int(usual.split()[0]) - int(words.split()[0]) == 60


def test_paper_is_white(net, tmp_path):
    path = save_picture(net, tmp_path / "a.png", dpi=96)
    image = QImage(str(path))
    assert image.pixelColor(2, 2).name() == "#ffffff"
    assert image.pixelColor(image.width() - 3, image.height() - 3).name() == "#ffffff"


def test_preview_shows_sheets_with_their_edges_and_says_how_many(net):
    look = Look(focus="TP")
    placed = picture_of(net, look)
    image, words = preview_of(net, placed, look, Finish(landscape=True), kind="pdf")
    assert words.startswith("1 sheet of A4, smallest text ")
    assert image.pixelColor(1, 1).alpha() == 0
    assert image.pixelColor(24, 24).name() == "#ffffff"
    assert image.width() / image.height() == pytest.approx(297 / 210, abs=0.02)
    upright, _ = preview_of(net, placed, look, Finish(landscape=False), kind="pdf")
    assert upright.height() > upright.width()
    _, words = preview_of(net, placed, look, Finish(paper="A5", tiled=True), kind="pdf")
    assert words.split()[1] == "sheets"


def test_file_is_named_after_the_book(net):
    assert file_stem(net) == "two-peas-pedigree"
    assert file_stem(PedigreeNetwork.from_records(Book())) == "pedigree"


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

    def fail(self: Sheet | Pages, *given: object) -> None:
        raise RuntimeError("the disk is full")

    monkeypatch.setattr(Sheet, "paint", fail)
    monkeypatch.setattr(Pages, "paint", fail)
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
        ("a.svg", {"margin": 50.5}, "A margin of 50.5 mm is not possible here"),
        ("a.pdf", {"margin": 3}, "from 5 to 50 mm"),
        ("a.png", {"caption": "x" * 2001}, "2000 are the most"),
        ("a.pdf", {"paper": "A5", "margin": 50}, "no room for the picture on A5"),
        ("none/a.svg", {}, "cannot be written"),
        ("a.svg", {"look": Look(focus="ZZ")}, "'ZZ' is not a plant"),
    ],
)
def test_what_cannot_be_done_is_a_fault(net, tmp_path, name, more, says):
    with pytest.raises(Fault, match=says):
        save_picture(net, tmp_path / name, **more)
    assert not list(tmp_path.iterdir())


@pytest.mark.parametrize("colours", ["light", "grey"])
def test_whole_book_and_sideways_and_grey(net, tmp_path, colours):
    path = save_picture(net, tmp_path / "a.svg", theme=colours, orientation="right")
    assert {"TP", "BA", "21-02-2"} <= set(texts(path))


def test_missing_library_is_named(monkeypatch):
    from pedigreeview.drawing.application import ensure_gui

    monkeypatch.setitem(__import__("sys").modules, "PySide6.QtGui", None)
    with pytest.raises(Fault, match="a library of the desktop is missing"):
        ensure_gui()
