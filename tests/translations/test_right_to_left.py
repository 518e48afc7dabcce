"""Books with names that are written from right to left, and the window turned that way.

The names are invented.  Whatever their script, the seed parent stands first: on tags, on paper, in
the picture and in sentences.
"""

from __future__ import annotations

import itertools
import re
import unicodedata
from collections.abc import Iterator
from html import unescape
from pathlib import Path
from xml.etree import ElementTree

import pytest
from PySide6.QtCore import QPoint, QRect, Qt
from PySide6.QtGui import QImage, QTextLayout
from PySide6.QtWidgets import (
    QAbstractButton,
    QApplication,
    QComboBox,
    QLabel,
    QLineEdit,
    QWidget,
)
from pytestqt.qtbot import QtBot

from pedigreeview.book.book import Book
from pedigreeview.book.book_file import BookFile
from pedigreeview.book.records import Cross, Harvest, Packet, Plant, Pollination, Trait
from pedigreeview.drawing.theme import theme
from pedigreeview.drawing.view import Look
from pedigreeview.network import PedigreeNetwork
from pedigreeview.reports.chart import save_picture
from pedigreeview.reports.label_content import labels_for
from pedigreeview.reports.label_layout import lay_out_label
from pedigreeview.reports.paper_type import paper_font
from pedigreeview.reports.papers import Wish, make_paper
from pedigreeview.reports.plant_report import plant_report
from pedigreeview.reports.report_html import report_html
from pedigreeview.reports.report_pages import lay_out_report
from pedigreeview.reports.report_words import isolated, named
from pedigreeview.window.heat_map import HeatMap
from pedigreeview.window.main_window import MainWindow
from pedigreeview.window.preferences import Preferences
from pedigreeview.window.relatedness_page import _Scale

SEED, POLLEN = "גל", "נר"
"""Codes of two varieties."""
SEED_NAME, POLLEN_NAME = "דגנלית הרוח", "زمردون الوادي"
TEXTS = (QLabel, QAbstractButton, QComboBox, QLineEdit)


def book() -> Book:
    made = Book()
    made.settings.name = "שורה אחת"
    made.settings.crop = "pea"
    made.add(Plant(SEED, name=SEED_NAME, kind="variety", place="bed 1"))
    made.add(Plant(POLLEN, name=POLLEN_NAME, kind="variety", place="bed 1"))
    made.add(Cross("24-01", SEED, POLLEN, made_on="2024-06-11", state="made"))
    made.add(Cross("24-02", POLLEN, SEED, made_on="2024-06-12", state="made"))
    made.add(Cross("26-01", SEED, POLLEN, state="planned"))
    for at in range(1, 5):
        made.add(Plant(f"24-01-{at}", cross="24-01", sown="2025-03-29", status="growing"))
    made.add(Plant("24-02-1", name="شجون", cross="24-02", sown="2025-03-29", status="kept"))
    made.add(Pollination("P1", "24-01", "2024-06-11", 5, cover="tape", by="RW", set=3))
    made.add(Harvest("H1", "24-01", "2024-08-02", 2, 24, "K1"))
    made.add(Packet("K1", "H1", "F1", SEED, True, 24, 16))
    made.add(Trait("height", "category", values="tall;dwarf"))
    return made


@pytest.fixture
def net() -> PedigreeNetwork:
    return PedigreeNetwork(book())


def shown_order(text: str, *words: str) -> list[str]:
    """Words of a text in the order in which they stand on the line, from the left."""
    layout = QTextLayout(text, paper_font(theme("grey"), 30))
    layout.beginLayout()
    line = layout.createLine()
    layout.endLayout()
    places = []
    for word in words:
        start = text.index(word)
        ends = [line.cursorToX(start), line.cursorToX(start + len(word))]
        places.append((min(float(x[0]) if isinstance(x, tuple) else x for x in ends), word))
    return [word for _, word in sorted(places)]


# Sentences ----------------------------------------------------------------------------------------


def test_only_what_is_written_from_right_to_left_is_kept_apart() -> None:
    assert isolated("TP") == "TP"
    assert isolated(SEED) == f"\u2068{SEED}\u2069"
    assert isolated("") == ""


def test_a_cross_reads_seed_parent_first(one_application: QApplication) -> None:
    # As it stands in the book a line of two such codes would turn round as a whole.
    assert shown_order(f"{SEED} × {POLLEN}", SEED, POLLEN) == [POLLEN, SEED]
    (tag,) = labels_for(book(), "stakes", ["24-01"])
    assert tag.mating is not None
    assert shown_order(tag.mating.shown, SEED, POLLEN) == [SEED, POLLEN]
    assert tag.mating.text == f"{SEED} × {POLLEN}"


def test_every_sentence_of_a_report_keeps_its_direction(net: PedigreeNetwork) -> None:
    """Names are wrapped wherever another word follows, and the sentence begins at the left."""
    assert named(net.book, SEED) == f"\u2068{SEED}\u2069 (\u2068{SEED_NAME}\u2069)"
    told = " ".join(plant_report(net, "24-01-1").words())
    bore = re.search("[^.]*bore the seed[^.]*", told)
    assert bore is not None
    assert shown_order(bore[0], SEED_NAME, POLLEN_NAME) == [SEED_NAME, POLLEN_NAME]
    opened = 0
    for sign in told:
        opened += {"\u2068": 1, "\u2069": -1}.get(sign, 0)
        assert opened in (0, 1)
    assert opened == 0


# Tags and papers ----------------------------------------------------------------------------------


@pytest.mark.parametrize(("width", "height"), [(341.0, 172.0), (660.0, 320.0), (1116.0, 180.0)])
def test_a_tag_has_its_parents_in_order(width: float, height: float) -> None:
    (text,) = labels_for(book(), "stakes", ["24-01"])
    layout = lay_out_label(text, width, height, theme("grey"))
    at = {mark.text: (mark.y, mark.x) for mark in layout.marks if mark.text}
    assert at[SEED] < at[POLLEN]
    signs = {mark.what: (mark.y, mark.x) for mark in layout.marks}
    assert signs["female"][1] < at[SEED][1]
    assert signs["male"][1] < at[POLLEN][1]
    for mark in layout.marks:
        assert mark.x >= -0.5
        assert mark.x + mark.width <= width + 0.5
        assert mark.y >= -0.5
        assert mark.y + mark.height <= height + 0.5
    assert layout.left_out == ()


@pytest.mark.parametrize("kind", ["packets", "crossing", "plan", "beds", "scores", "fruit sheet"])
def test_papers_are_painted_and_written(kind: str, tmp_path: Path) -> None:
    codes = {"packets": ("K1",), "fruit sheet": ("P1",)}.get(kind, ())
    paper = make_paper(book(), Wish(kind, codes=codes))
    image = paper.image(0, 700)
    blank = QImage(image.size(), image.format())
    blank.fill(Qt.GlobalColor.white)
    assert image != blank
    path = paper.save(tmp_path / "a.pdf")
    assert path.read_bytes().startswith(b"%PDF")


def test_a_paper_is_the_same_however_the_window_is_turned(one_application: QApplication) -> None:
    def drawn() -> list[QImage]:
        report = PedigreeNetwork(book())
        pages = lay_out_report(report, plant_report(report, "24-01-1"))
        lists = make_paper(book(), Wish("crossing"))
        tags = make_paper(book(), Wish("flowers"))
        return [pages.image(0, 600), lists.image(0, 600), tags.image(0, 600)]

    before = drawn()
    one_application.setLayoutDirection(Qt.LayoutDirection.RightToLeft)
    try:
        assert drawn() == before
    finally:
        one_application.setLayoutDirection(Qt.LayoutDirection.LeftToRight)


def test_html_tells_each_text_its_direction(net: PedigreeNetwork) -> None:
    page = report_html(net, plant_report(net, "24-01-1"))
    tree = ElementTree.fromstring(page.partition("\n")[2])
    assert tree.get("dir") == "ltr"
    space = "{http://www.w3.org/1999/xhtml}"
    cells = [*tree.iter(f"{space}td"), *tree.iter(f"{space}dd")]
    held = [cell for cell in cells if SEED_NAME in "".join(cell.itertext())]
    assert held
    assert all([child.tag for child in cell] == [f"{space}bdi"] for cell in held)
    # In a sentence each name keeps its direction to itself, so that the two stay in their order.
    (bore,) = (p for p in tree.iter(f"{space}p") if "bore the seed" in "".join(p.itertext()))
    apart = ["".join(child.itertext()) for child in bore.iter(f"{space}bdi")]
    assert [name for name in apart if len(name) > 2] == [SEED_NAME, POLLEN_NAME]
    # Marks that would turn the rest of the page are not among its text.
    assert not re.search("[\u202a-\u202e\u2066-\u2069\u200e\u200f]", page)


def test_a_report_stays_on_its_page(net: PedigreeNetwork) -> None:
    pages = lay_out_report(net, plant_report(net, "24-01-1"))
    for page in pages.pages:
        for _, block in page:
            for piece in block.pieces:
                assert piece.x >= 0
                assert piece.x + piece.width <= pages.width - 360 + 1


def test_svg_holds_the_names_and_the_seed_parent_on_its_side(
    net: PedigreeNetwork, tmp_path: Path
) -> None:
    path = save_picture(net, tmp_path / "a.svg", look=Look(focus="24-01-1"))
    held = path.read_text(encoding="utf-8")
    ElementTree.fromstring(held)
    told = "".join(unescape(text) for text in re.findall(r"<text[^>]*>([^<]*)", held))
    assert SEED in told
    assert POLLEN in told
    assert "\ufffd" not in told
    assert any(unicodedata.bidirectional(sign) == "AL" for sign in told)


# The window ---------------------------------------------------------------------------------------


@pytest.fixture
def mirrored(
    qtbot: QtBot, tmp_path: Path, preferences: Preferences, one_application: QApplication
) -> Iterator[MainWindow]:
    path = tmp_path / "שורה.pedbook"
    BookFile.create(path, book()).close()
    one_application.setLayoutDirection(Qt.LayoutDirection.RightToLeft)
    try:
        window = MainWindow(preferences)
        qtbot.addWidget(window)
        window.resize(1280, 800)
        window.show()
        qtbot.waitExposed(window)
        window.open_path(path)
        qtbot.waitUntil(lambda: not window.errands.awaits(), timeout=15000)
        yield window
        window.close()
    finally:
        one_application.setLayoutDirection(Qt.LayoutDirection.LeftToRight)


def place(window: QWidget, widget: QWidget) -> QRect:
    return QRect(widget.mapTo(window, QPoint(0, 0)), widget.size())


def test_every_page_is_mirrored_and_nothing_lies_on_anything(
    mirrored: MainWindow, qtbot: QtBot
) -> None:
    wrong = []
    for name in mirrored.book_pages:
        mirrored.show_page(name)
        qtbot.waitUntil(lambda: not mirrored.errands.awaits(), timeout=15000)
        QApplication.processEvents()
        page = mirrored.book_pages[name]
        assert page.layoutDirection() == Qt.LayoutDirection.RightToLeft
        # The rail is at the right of every page.
        assert place(mirrored, mirrored.rail).left() >= place(mirrored, page).right() - 1
        shown = [one for one in page.findChildren(QWidget) if one.isVisible()]
        texts = [one for one in shown if isinstance(one, TEXTS)]
        by_parent = itertools.groupby(
            sorted(texts, key=lambda one: id(one.parent())), key=lambda one: one.parent()
        )
        for _, group in by_parent:
            for one, other in itertools.combinations(list(group), 2):
                if one.geometry().intersects(other.geometry()):
                    wrong.append((name, one.objectName(), other.objectName(), "overlap"))
        for one in texts:
            if isinstance(one, QAbstractButton) and one.width() < one.minimumSizeHint().width():
                wrong.append((name, type(one).__name__, one.text(), "cut off"))
    assert wrong == []


def test_maps_and_scales_are_not_turned_round(
    mirrored: MainWindow, qtbot: QtBot, one_application: QApplication
) -> None:
    """Squares, numbers and codes stand where they do in a window from left to right."""
    mirrored.show_page("relatedness")
    qtbot.waitUntil(lambda: not mirrored.errands.awaits(), timeout=15000)
    QApplication.processEvents()
    page = mirrored.book_pages["relatedness"]
    shown = [page.findChild(HeatMap), page.findChild(_Scale)]
    qtbot.waitUntil(lambda: all(one.picture is not None and one.width() > 80 for one in shown))
    QApplication.processEvents()

    def seen() -> list[QImage]:
        # Out of the whole window, whose direction is that of the painter.
        return [mirrored.grab(place(mirrored, widget)).toImage() for widget in shown]

    before = seen()
    one_application.setLayoutDirection(Qt.LayoutDirection.LeftToRight)
    QApplication.processEvents()
    assert seen() == before


def test_the_picture_keeps_the_side_of_the_seed_parent(mirrored: MainWindow, qtbot: QtBot) -> None:
    page = mirrored.pedigree
    page.focus_on("24-01-1")
    canvas = page.canvas
    qtbot.waitUntil(lambda: not mirrored.errands.awaits() and not canvas.moving())
    assert 0 <= canvas.where(SEED).x() < canvas.where(POLLEN).x()
