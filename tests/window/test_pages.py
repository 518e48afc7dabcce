"""The Reciprocals and Checks pages, the card's numbers and what stands withheld."""

from __future__ import annotations

import re
from collections.abc import Callable
from pathlib import Path

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QLabel
from pytestqt.qtbot import QtBot

from pedigreeview.places import demo
from pedigreeview.window.labels import LinkLabel
from pedigreeview.window.main_window import MainWindow
from pedigreeview.window.opening import Stated

Settle = Callable[[], None]


def plain(html: str) -> str:
    return re.sub("<[^>]*>", "", html.replace("<br>", "\n"))


def texts(widget: object) -> list[str]:
    return [x.text() for x in widget.findChildren(QLabel) if x.isVisible()]  # type: ignore[attr-defined]


def test_both_directions_of_the_pea_cross(peas: MainWindow, settle: Settle) -> None:
    """12 buds, 7 pods, 24 seeds against 10, 4, 13: demo-scenarios, A."""
    peas.show_page("reciprocals")
    settle()
    shown = texts(peas.reciprocals)
    assert "7 of 12" in shown
    assert "4 of 10" in shown
    assert "3.4" in shown
    assert "3.3" in shown
    assert "6 tall, 1 dwarf" in shown
    assert "24" in shown
    assert "13" in shown
    assert "7 of 8 sown" in shown


def test_the_takes_are_compared_effect_first(peas: MainWindow, settle: Settle) -> None:
    """p of the 2x2 table 7, 5 and 4, 6 by the hypergeometric sum over all tables: 0.6699.

    R's fisher.test is defined by the same sum.
    """
    from math import comb

    ways = {k: comb(12, k) * comb(10, 11 - k) for k in range(1, 12)}
    p = sum(n for n in ways.values() if n <= ways[7]) / comb(22, 11)
    peas.show_page("reciprocals")
    settle()
    (label,) = [x for x in peas.reciprocals.findChildren(QLabel, "takes") if x.isVisible()]
    effect, verdict = label.text().split(": ")[1:]
    assert effect == "7 of 12 flowers where TP bears the seed, 4 of 10 where BA does"
    assert verdict == f"too few to tell (p = {p:.2g}, exact test)."
    assert any("are not independent of each other" in text for text in texts(peas.reciprocals))


def test_what_a_table_cannot_say_of_a_cross_is_one_sentence(
    window: MainWindow, settle: Settle, tmp_path: Path
) -> None:
    table = tmp_path / "both.csv"
    table.write_text("plant,seed_parent,pollen_parent\nAB,A,B\nBA,B,A\n", encoding="utf-8")
    window.open_path(table, Stated("variety"))
    settle()
    window.show_page("reciprocals")
    settle()
    shown = texts(window.reciprocals)
    assert "–" not in shown
    assert (
        "Not written down in this book: flowers worked, fruits set, take, fruits harvested, "
        "seeds, seeds a fruit, seedlings up."
    ) in shown


def test_nothing_wrong_says_what_was_looked_at(
    window: MainWindow, settle: Settle, tmp_path: Path
) -> None:
    table = tmp_path / "plain.csv"
    table.write_text("plant,seed_parent,pollen_parent\nF1,A,B\n", encoding="utf-8")
    window.open_path(table, Stated("variety"))
    settle()
    window.show_page("checks")
    shown = " ".join(texts(window.checks))
    assert "No dates are recorded" in shown
    assert "counts" not in shown


def test_the_card_lists_who_may_have_given_the_pollen(window: MainWindow, settle: Settle) -> None:
    window.open_path(demo("a_leaf_for_hollin_plate"))
    settle()
    window.show_plant("21-09-6")
    window.pedigree.open_card("21-09-6")
    settle()
    labels = window.pedigree.card.findChildren(LinkLabel)
    shown = {x.accessibleName(): plain(x.text()) for x in labels if x.isVisible()}
    assert shown["Parents"] == "♀ MB; ♂ one of HP, SO, 17-02-5c20, unknown"
    givers = shown["May have given the pollen, with odds"].split("\n")
    assert givers[0] == "HP 0.5 – Stood next to it; regular leaf."
    assert givers[-1] == "a plant nobody knows 0.1"
    assert "Seed parent probable (worked by hand, tag read)." in texts(window.pedigree.card)


def test_a_link_of_the_pair_leads_to_the_picture(
    qtbot: QtBot, peas: MainWindow, settle: Settle
) -> None:
    peas.show_page("reciprocals")
    settle()
    label = next(x for x in peas.reciprocals.findChildren(LinkLabel) if "BA" in x.text())
    label.setFocus()
    qtbot.keyClick(label, Qt.Key.Key_Tab)
    qtbot.keyClick(label, Qt.Key.Key_Return)
    assert peas.page() == "pedigree"
    assert peas.pedigree.focus in ("TP", "BA")


def test_the_planted_error_is_listed_and_its_numbers_withheld(
    window: MainWindow, settle: Settle
) -> None:
    window.open_path(demo("a_leaf_for_hollin_plate"))
    settle()
    window.show_page("checks")
    shown = texts(window.checks)
    assert any("its own ancestor" in text for text in shown)
    assert any(text.startswith("Mend: ") for text in shown)
    window.show_plant("20-01-4")
    settle()
    assert any("withheld" in text for text in texts(window.pedigree.card))


def test_the_card_shows_numbers_and_shares(peas: MainWindow, settle: Settle) -> None:
    peas.show_plant("23-07")
    settle()
    shown = texts(peas.pedigree.card)
    assert "F = 1/2 = 0.5" in shown
    assert "Grown from 22-02: 21-01-3 selfed." in shown or any("selfed" in t for t in shown)
    peas.show_plant("21-01-3")
    settle()
    shown = texts(peas.pedigree.card)
    assert (
        "Grown from 21-01: Tarnwick Pale (TP) as seed parent, Brockle Amber (BA) gave the pollen."
        in shown
    )
