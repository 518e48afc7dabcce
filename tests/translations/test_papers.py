"""Paper in the second language: every word of the code on it is translated, whatever is printed."""

from __future__ import annotations

import re
from collections.abc import Iterator
from html import unescape
from pathlib import Path

import pytest
from PySide6.QtWidgets import QApplication

import pedigreeview
from pedigreeview.drawing.telling import tell_with
from pedigreeview.drawing.view import Look
from pedigreeview.network import PedigreeNetwork
from pedigreeview.places import demo
from pedigreeview.reports.chart import save_picture
from pedigreeview.reports.label_content import KINDS, labels_for
from pedigreeview.reports.label_sheets import usual_sheet
from pedigreeview.reports.labels import lay_out_labels
from pedigreeview.reports.line_history import line_history
from pedigreeview.reports.paper_choices import PAPERS
from pedigreeview.reports.plant_report import plant_report
from pedigreeview.reports.report_html import report_html
from pedigreeview.window.saying import say
from pedigreeview.window.translating import languages, speak
from tests.reports.garden import garden
from tests.translations.papers_in import english_in, paper_texts, papers_of

LANGUAGES = languages()[1:]
DEMOS = {
    "two_peas_both_ways": "23-07",
    "a_leaf_for_hollin_plate": "23-01-2",
    "tansy_and_the_moths": "16-01-2",
}


@pytest.fixture(params=LANGUAGES)
def tongue(request: pytest.FixtureRequest, one_application: QApplication) -> Iterator[str]:
    code = str(request.param)
    speak(one_application, code)
    tell_with(say)
    yield code
    speak(one_application, "en")
    tell_with(None)


@pytest.fixture(scope="module", params=DEMOS)
def net(request: pytest.FixtureRequest) -> PedigreeNetwork:
    return pedigreeview.read(demo(str(request.param)))


def test_no_paper_of_the_season_holds_an_english_word(tongue: str, net: PedigreeNetwork) -> None:
    wrong = {
        kind: found
        for kind, paper in papers_of(net.book)
        if (found := english_in(net, tongue, paper_texts(paper)))
    }
    assert wrong == {}


def test_every_paper_is_among_those_that_are_looked_at(tongue: str) -> None:
    net = PedigreeNetwork(garden())
    made = dict(papers_of(net.book))
    assert set(made) == set(PAPERS)
    wrong = {
        kind: found
        for kind, paper in made.items()
        if (found := english_in(net, tongue, paper_texts(paper)))
    }
    assert wrong == {}


def test_an_english_word_is_found(tongue: str) -> None:
    net = PedigreeNetwork(garden())
    assert english_in(net, tongue, ["Borne on Tarnwick Pale (TP), pods seldom"]) == {
        "borne": "Borne on Tarnwick Pale (TP), pods seldom",
        "on": "Borne on Tarnwick Pale (TP), pods seldom",
    }


def test_no_report_holds_an_english_word(tongue: str, net: PedigreeNetwork) -> None:
    code = next(code for code in DEMOS.values() if code in net.book.plants)
    told = [*plant_report(net, code).words(), *line_history(net, code).words()]
    assert english_in(net, tongue, told) == {}
    page = report_html(net, plant_report(net, code).only(["what"]))
    assert f' lang="{tongue}" ' in page


def test_no_picture_holds_an_english_word(
    tongue: str, net: PedigreeNetwork, tmp_path: Path
) -> None:
    code = next(code for code in DEMOS.values() if code in net.book.plants)
    path = save_picture(net, tmp_path / "a.svg", look=Look(focus=code))
    held = path.read_text(encoding="utf-8")
    told = [unescape(text) for text in re.findall(r"<(?:text|desc)[^>]*>([^<]*)", held)]
    assert english_in(net, tongue, told) == {}


def test_plural_forms_and_words_of_crops(tongue: str) -> None:
    if tongue != "de":
        pytest.skip("written out for German")
    book = garden()
    facts = [fact.text for fact in labels_for(book, "fruits", ["P1"], every=False)[0].facts]
    assert facts == [
        "bestäubt 2021-06-11",
        "reif ab etwa 2021-07-16",
        "2 Hülsen",
        "gepflückt ____",
    ]
    assert labels_for(book, "fruits", ["P1"])[0].badge == "Hülse 1 von 2"
    (packet,) = labels_for(book, "packets", ["K1"])
    assert packet.badge == "F1-Samen"
    assert packet.origin == "Samen von Tarnwick Pale (TP), Pollen von Brockle Amber (BA)"
    assert [fact.text for fact in packet.facts][2] == "16 von 24 Samen übrig"
    lily = pedigreeview.read(demo("tansy_and_the_moths")).book
    tags = labels_for(lily, "fruits")
    assert any("Samenkapsel" in " ".join(tag.lines()) for tag in tags)


@pytest.mark.parametrize("kind", KINDS)
def test_labels_have_room_for_it_as_for_english(kind: str, one_application: QApplication) -> None:
    """On the stock that a kind is printed on: nothing left out that English has room for, and no
    type smaller by more than a point."""
    left, small = {}, {}
    try:
        tell_with(say)
        for code in ("en", *LANGUAGES):
            speak(one_application, code)
            texts = labels_for(garden(), kind)
            pages = lay_out_labels(texts, usual_sheet(kind))
            left[code] = {text.code for text in pages.crowded()}
            small[code] = min(pages.layout(text).smallest_points for text in texts)
    finally:
        speak(one_application, "en")
        tell_with(None)
    assert all(found <= left["en"] for found in left.values())
    assert all(points >= small["en"] - 1 for points in small.values())
