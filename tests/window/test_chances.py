"""The card says how far shares spread and how far it is to a fixed line."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtWidgets import QLabel

from pedigreeview.exchange import read_book
from pedigreeview.network import PedigreeNetwork
from pedigreeview.places import demo
from pedigreeview.window.chances import ask_chances
from pedigreeview.window.main_window import MainWindow


def _lines(window: MainWindow, name: str) -> list[str]:
    return [label.text() for label in window.pedigree.card.findChildren(QLabel, name)]


def test_the_card_of_an_f2_plant(peas: MainWindow, settle: Callable[[], None]) -> None:
    peas.show_plant("23-07")
    settle()
    spread = _lines(peas, "spread")
    assert len(spread) == 2
    assert all("most plants raised like this one lie between" in line for line in spread)
    # Half of its gene pairs are alike by descent: as often from the one variety as from the other.
    assert _lines(peas, "brought") == [
        "What each brought of its F: Tarnwick Pale (TP) 0.25, Brockle Amber (BA) 0.25."
    ]
    assert _lines(peas, "depth") == [
        "Complete generations known: 2; completeness 1, where 1 is complete."
    ]
    assert _lines(peas, "fixing") == [
        "50% of its gene pairs can still segregate in its selfed seed; "
        "6 more selfings bring F to 0.99."
    ]


def test_a_pure_variety_has_nothing_to_say(peas: MainWindow, settle: Callable[[], None]) -> None:
    peas.show_plant("TP")
    settle()
    for name in ("spread", "brought", "depth", "fixing"):
        assert _lines(peas, name) == []


def test_withheld_plants_and_first_generations() -> None:
    net = PedigreeNetwork.from_records(read_book(demo("a_leaf_for_hollin_plate")))
    withheld = next(iter(net.withheld))
    assert ask_chances(net, withheld).spread == ()
    # An F1 of two pure lines is the same plant every time: no spread, but everything segregates.
    told = ask_chances(net, "17-01-1")
    assert told.spread == ()
    assert told.fixing.startswith("100% of its gene pairs")


def test_the_card_says_what_genes_a_plant_may_have() -> None:
    net = PedigreeNetwork.from_records(read_book(demo("two_peas_both_ways")))
    told = ask_chances(net, "23-07").genes
    # Dwarf and yellow-podded are recessive, so both are sure; purple or white is as it was scored.
    texts = {line.partition(":")[0]: line.partition(": ")[2] for line in told}
    assert set(texts) == set(net.book.loci)
    alleles = {code: locus.alleles.split(";") for code, locus in net.book.loci.items()}
    height = next(code for code, locus in net.book.loci.items() if "dwarf" in locus.phenotypes)
    low = alleles[height][-1].strip()
    assert texts[height] == f"{low}/{low}"
    carrier = ask_chances(net, "21-01-3").genes
    assert all("%" not in line for line in carrier)
