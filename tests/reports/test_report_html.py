"""A report as HTML: well-formed, escaped whatever the codes are, with everything inside."""

from __future__ import annotations

import base64
import re
from html.parser import HTMLParser
from pathlib import Path
from xml.etree import ElementTree

import pytest
from PySide6.QtGui import QColor, QImage

import pedigreeview
from pedigreeview.book.book import Book, BookSettings
from pedigreeview.book.faults import Fault
from pedigreeview.book.records import Cross, Evidence, Note, Photo, Plant, Score, Trait
from pedigreeview.drawing.application import ensure_gui
from pedigreeview.network import PedigreeNetwork
from pedigreeview.places import demo
from pedigreeview.reports.line_history import line_history
from pedigreeview.reports.plant_report import plant_report
from pedigreeview.reports.report_html import report_html, save_report_html
from pedigreeview.reports.report_model import Cover, Report
from pedigreeview.reports.report_photos import jpeg_of

HOSTILE = "<script>alert(1)</script>\"'&]]>--><img src=x onerror=y>\u202eabc"
XHTML = "{http://www.w3.org/1999/xhtml}"
SVG = "{http://www.w3.org/2000/svg}"


def parsed(text: str) -> ElementTree.Element:
    return ElementTree.fromstring(text)


def words_in(root: ElementTree.Element) -> str:
    body = root.find(f"{XHTML}body")
    assert body is not None
    return " ".join(" ".join(body.itertext()).split())


@pytest.fixture(scope="module")
def peas() -> PedigreeNetwork:
    return pedigreeview.read(demo("two_peas_both_ways"))


@pytest.fixture(scope="module")
def history(peas: PedigreeNetwork) -> Report:
    cover = Cover(("R. W.",), "2026-09-01", ("My own words.", "Two paragraphs."))
    return line_history(peas, "19-4-2").with_cover(cover)


def test_everything_is_in_the_page_in_reading_order(peas: PedigreeNetwork, history: Report) -> None:
    root = parsed(report_html(peas, history))
    found = words_in(root)
    at = 0
    for section in history.sections:
        at = found.index(section.heading, at)
    for piece in history.words():
        assert " ".join(piece.split()) in found
    assert "R. W., 2026-09-01" in found
    assert len(root.findall(f".//{SVG}svg")) == 1
    codes = {"".join(text.itertext()) for text in root.iter(f"{SVG}text")}
    assert {"TP", "BA", "23-19", "19-4-2"} <= codes


def test_the_page_is_the_same_twice(peas: PedigreeNetwork, history: Report) -> None:
    assert report_html(peas, history) == report_html(peas, history)


def test_nothing_is_fetched_or_run(peas: PedigreeNetwork, history: Report) -> None:
    root = parsed(report_html(peas, history))
    for element in root.iter():
        for name, value in element.attrib.items():
            assert not name.lower().startswith("on")
            if name.endswith(("src", "href")):
                assert value.startswith(("data:", "#"))
    assert "default-src 'none'" in str(root.find(f"{XHTML}head/{XHTML}meta[2]").attrib)


def hostile_book() -> PedigreeNetwork:
    book = Book(settings=BookSettings(name=HOSTILE, crop="tomato"))
    a, b, k = f"A{HOSTILE}", f"B{HOSTILE}", f"K{HOSTILE}"
    x = f"X{HOSTILE}"
    for record in (
        Plant(a, name=HOSTILE, obtained_from=HOSTILE, note=HOSTILE, protected=HOSTILE),
        Plant(b, name="\u05d0\u05d1\u05d2"),
        Plant(k, name=HOSTILE, cross=x, note="tab\x07bell", place=HOSTILE, status="kept"),
        Plant(f"L{HOSTILE}", cross=x, status="culled", note=HOSTILE),
        Cross(x, a, b, seed_doubt="certain", note=HOSTILE),
        Trait(f"T{HOSTILE}", "category", values=f"{HOSTILE};other"),
        Score(k, f"T{HOSTILE}", "2024", "plant", HOSTILE, HOSTILE, HOSTILE),
        Score(f"L{HOSTILE}", f"T{HOSTILE}", "2024", "plant", "other"),
        Evidence(x, "pollen", "for", "2024", HOSTILE),
        Note(f"plant {k}", "2024", HOSTILE),
        Photo(f"{HOSTILE}.jpg", k, "2024", HOSTILE),
    ):
        book.add(record)
    return PedigreeNetwork.from_records(book)


class _Tags(HTMLParser):
    def __init__(self) -> None:
        super().__init__()
        self.tags: set[str] = set()

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        self.tags.add(tag)
        assert not any(name.startswith("on") for name, _ in attrs)


@pytest.mark.parametrize("make", [plant_report, line_history])
def test_hostile_codes_are_text_and_nothing_else(make) -> None:  # type: ignore[no-untyped-def]
    net = hostile_book()
    report = make(net, f"K{HOSTILE}").with_cover(Cover((HOSTILE,), HOSTILE, (HOSTILE,)))
    text = report_html(net, report)
    root = parsed(text)
    plain = HOSTILE.replace("\u202e", "")
    assert words_in(root).count(plain) > 10
    reader = _Tags()
    reader.feed(text)
    assert not {"script", "img", "iframe", "object"} & reader.tags
    assert "\u202e" not in re.sub(r"(?s)<svg.*?</svg>", "", text)
    assert "\x07" not in text


def test_photos_are_inside(tmp_path: Path) -> None:
    ensure_gui()
    (tmp_path / "photos").mkdir()
    image = QImage(40, 30, QImage.Format.Format_RGB32)
    image.fill(QColor("#336699"))
    (tmp_path / "photos" / "a.png").write_bytes(jpeg_of(image))
    book = Book(path=tmp_path)
    book.add(Plant("A"))
    book.add(Photo("a.png", "A", "2024", 'in "bud"'))
    book.add(Photo("b.png", "A", "2025", "in flower"))
    net = PedigreeNetwork.from_records(book)
    root = parsed(report_html(net, plant_report(net, "A")))
    (held,) = root.iter(f"{XHTML}img")
    assert held.get("alt") == 'A, in "bud", 2024'
    kind, data = str(held.get("src")).split(",")
    assert kind == "data:image/jpeg;base64"
    assert QImage.fromData(base64.b64decode(data)).width() == 40
    assert "The photo b.png is not with the book" in words_in(root)


def test_saving(peas: PedigreeNetwork, history: Report, tmp_path: Path) -> None:
    path = save_report_html(tmp_path / "a.html", peas, history.only(["what", "base"]))
    root = parsed(path.read_text(encoding="utf-8"))
    assert peas.base_sentence() in words_in(root)
    assert not list(root.iter(f"{SVG}svg"))
    with pytest.raises(Fault, match="written as HTML"):
        save_report_html(tmp_path / "a.pdf", peas, history)
