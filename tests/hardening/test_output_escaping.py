"""What goes out of a hostile book: pages, pictures, graphs and tables that run nothing.

Everything is read again by a parser that is not ours: the XML parser and the HTML parser of the
standard library, the reader of graphs of NetworkX, the reader of DOT of Graphviz.
"""

from __future__ import annotations

import csv
import io
import zipfile
from html.parser import HTMLParser
from pathlib import Path
from xml.etree import ElementTree

import pytest

from pedigreeview.book.book import Book
from pedigreeview.book.records import Cross, Plant, Trait
from pedigreeview.cli import main
from pedigreeview.exchange import data_package
from pedigreeview.exchange.formats import FORMATS, read_path_as, write_as
from pedigreeview.network import PedigreeNetwork

CODES = (
    "<script>alert(1)</script>",
    '"><img src=x onerror=alert(1)>',
    "]]><!-- & -->",
    "=cmd|'/C calc'!A0",
    "+1+1",
    "@SUM(A1)",
    "-2+3",
    "'=1",
    "＝1+1",
    "A\u202eB\u2066",
    'a" b=\\"c',
    "&amp&lt",
    "%s{0}$(x)`x`",
)
NAME = "Name </text><script>x</script> \" ' & <b> =1+1"
RUNS = ("=", "+", "-", "@", "\t", "\r", "＝", "＋", "－", "＠")
"""Beginnings of a cell that some program runs as a formula."""


def hostile() -> Book:
    """A line of plants with a hostile code, name, note and further column each."""
    book = Book()
    book.settings.name = NAME
    before = ""
    for at, code in enumerate(CODES):
        cross = ""
        if before:
            cross = f"{code} c{at}"
            book.add(Cross(cross, before, before if at % 2 else CODES[0], note=NAME))
        book.add(
            Plant(
                code,
                cross=cross,
                name=f"{NAME}\n{code}",
                note=f"{code}\n=1+1",
                place="=1+1",
                extra={"=HYPERLINK(1)": code, "<b>": NAME},
            )
        )
        before = code
    book.add(Trait("<i>=1", "score", low=1, high=9, note="=1"))
    return book


@pytest.fixture
def folder(tmp_path: Path) -> Path:
    path = tmp_path / "book"
    data_package.write(hostile(), path)
    return path


@pytest.fixture
def net() -> PedigreeNetwork:
    return PedigreeNetwork.from_records(hostile())


def run(*words: str) -> None:
    """The command, which must get done; the book has problems of its own, so 1 is fine."""
    assert main(list(words)) in (0, 1)


_TAGS = """
    a b bdi body br caption code col colgroup dd div dl dt em figcaption figure footer h1 h2
    h3 h4 head header hr html i li main meta nav ol p section small span strong style sub
    sup svg table tbody td th thead title tr ul article img g path rect text defs polygon
    line circle polyline ellipse desc clippath pattern use image tspan lineargradient stop
    font font-face
    """
_MAY_STAND = set(_TAGS.split())


class _Page(HTMLParser):
    def __init__(self) -> None:
        super().__init__()
        self.wrong: list[str] = []
        self.said: list[str] = []
        self.inside: list[str] = []

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        if tag not in _MAY_STAND:
            self.wrong.append(f"<{tag}>")
        for name, held in attrs:
            text = (held or "").strip().lower()
            if name.startswith("on") or text.startswith("javascript:"):
                self.wrong.append(f"{name}={held}")
            outside = name in ("src", "href", "xlink:href", "data", "action")
            if outside and not text.startswith(("#", "data:image/", "pedigreeview:")):
                self.wrong.append(f"{name}={held}")
        if tag == "img" and not (dict(attrs).get("src") or "").startswith("data:image/"):
            self.wrong.append("<img> from outside")

    def handle_data(self, data: str) -> None:
        self.said.append(data)


@pytest.mark.parametrize("line", [False, True])
def test_a_report_as_a_page(line: bool, folder: Path, tmp_path: Path) -> None:
    out = tmp_path / "report.html"
    code = CODES[5]
    run("report", str(folder), code, *(["--line"] if line else []), "--out", str(out))
    page = _Page()
    page.feed(out.read_text("utf-8"))
    page.close()
    assert page.wrong == []
    said = "".join(page.said)
    assert code in said
    assert "<script>x</script>" in said


def _texts(root: ElementTree.Element) -> str:
    return "".join(root.itertext())


@pytest.mark.parametrize("focus", ["", CODES[0]])
def test_a_picture(focus: str, folder: Path, tmp_path: Path) -> None:
    out = tmp_path / "picture.svg"
    run("diagram", str(folder), *(["--focus", focus] if focus else []), "--out", str(out))
    root = ElementTree.fromstring(out.read_bytes())
    for element in root.iter():
        tag = element.tag.rpartition("}")[2].lower()
        assert tag in _MAY_STAND, tag
        for name, held in element.attrib.items():
            plain = name.rpartition("}")[2].lower()
            assert not plain.startswith("on"), name
            assert not held.strip().lower().startswith(("javascript:", "http://", "https://"))
            assert plain != "href" or held.startswith(("#", "data:image/"))
    assert "<script" not in out.read_text("utf-8").lower()


def test_graph_files(net: PedigreeNetwork, tmp_path: Path) -> None:
    import networkx

    for name, reader in (("graphml", networkx.read_graphml), ("gexf", networkx.read_gexf)):
        path = tmp_path / f"out.{name}"
        write_as(net, path, FORMATS[name])
        root = ElementTree.fromstring(path.read_bytes())
        assert not [one for one in root.iter() if one.tag.rpartition("}")[2] in ("script", "img")]
        codes = {held.get("code") for _, held in reader(path).nodes(data=True)}
        assert set(CODES) <= codes
        assert set(read_path_as(path, FORMATS[name]).plants) == set(CODES)


def test_a_file_for_graphviz(net: PedigreeNetwork, tmp_path: Path) -> None:
    pygraphviz = pytest.importorskip("pygraphviz")
    path = tmp_path / "out.dot"
    write_as(net, path, FORMATS["dot"])
    graph = pygraphviz.AGraph(string=path.read_text("utf-8"))
    kinds = [node.attr["type"] for node in graph.nodes()]
    assert kinds.count("plant") == len(CODES)
    assert kinds.count("cross") == len(net.book.crosses)
    assert len(kinds) == len(CODES) + len(net.book.crosses)


@pytest.mark.parametrize("name", ["table", "passport"])
def test_tables_as_text_run_nothing(name: str, net: PedigreeNetwork, tmp_path: Path) -> None:
    path = tmp_path / f"out{FORMATS[name].endings[0]}"
    write_as(net, path, FORMATS[name])
    rows = list(csv.reader(io.StringIO(path.read_text("utf-8"), newline="")))
    assert len(rows) >= 2
    for row in rows:
        for cell in row:
            number = cell.lstrip("+-").replace(".", "", 1).isdigit()
            assert number or not cell.startswith(RUNS), cell
    back = read_path_as(path, FORMATS[name])
    assert set(back.plants) <= set(CODES)
    assert name == "passport" or back.plants == net.book.plants


def test_a_spreadsheet_holds_texts_alone(net: PedigreeNetwork, tmp_path: Path) -> None:
    path = tmp_path / "out.xlsx"
    write_as(net, path, FORMATS["xlsx"])
    with zipfile.ZipFile(path) as held:
        for member in held.namelist():
            root = ElementTree.fromstring(held.read(member))
            tags = {element.tag.rpartition("}")[2] for element in root.iter()}
            assert not tags & {"f", "hyperlink", "externalLink", "ddeLink"}, member
    assert set(read_path_as(path, FORMATS["xlsx"]).plants) == set(CODES)


def test_a_matrix_runs_nothing(folder: Path, tmp_path: Path) -> None:
    out = tmp_path / "matrix.csv"
    run("matrix", str(folder), "--out", str(out))
    rows = list(csv.reader(io.StringIO(out.read_text("utf-8"), newline="")))
    texts = [cell for row in rows for cell in row if not cell.replace(".", "", 1).isdigit()]
    assert len(texts) >= len(CODES)
    assert not [cell for cell in texts if cell.startswith(RUNS)]


def test_no_cell_of_the_folder_runs_and_all_comes_back(folder: Path) -> None:
    rows = list(csv.DictReader(io.StringIO((folder / "plants.csv").read_text("utf-8"))))
    assert len(rows) == len(CODES)
    assert not [row["plant"] for row in rows if row["plant"].startswith(RUNS)]
    assert data_package.read(folder).plants == hostile().plants
