"""A plant's parents on its card: the seed parent, who gave the pollen, and how sure that is."""

from __future__ import annotations

from html import escape
from typing import TYPE_CHECKING

from PySide6.QtCore import QCoreApplication

from pedigreeview.book.records import SELF
from pedigreeview.window.words import doubt_words, link

if TYPE_CHECKING:
    from pedigreeview.network import PedigreeNetwork

__all__ = ["doubt_lines", "parents_html", "pollen_html"]


def _tr(text: str) -> str:
    return QCoreApplication.translate("Card", text)


def parents_html(net: PedigreeNetwork, code: str) -> str:
    """'♀ MB; ♂ one of HP, SO, 17-02-5c20', with links; '' for a founder."""
    held = net.parents(code)
    if held.source:
        return link(held.source)
    if not held.cross:
        return ""
    seed = link(held.seed_parent) if held.seed_parent else escape(_tr("not known"))
    known = [giver for giver, _ in held.pollen if giver]
    if held.by_rate:
        giver = escape(_tr("mostly its own flowers; else not known"))
    elif not known:
        giver = escape(_tr("not known"))
    elif held.pollen_parent:
        record = net.book.crosses.get(held.cross)
        if record is not None and not record.direction_known:
            return f"{seed}, {link(known[0])} " + escape(_tr("(which bore the seed is not known)"))
        if known[0] == held.seed_parent:
            return f"♀ {escape(_tr('and'))} ♂ {seed}"
        giver = link(known[0])
    else:
        rest = [] if sum(odds for _, odds in held.pollen) > 1 - 1e-9 else [escape(_tr("unknown"))]
        rest += [escape(_tr("unknown")) for giver, _ in held.pollen if not giver and not rest]
        named = [link(giver) for giver in dict.fromkeys(known)]
        giver = escape(_tr("one of")) + " " + ", ".join([*named, *rest])
    return f"♀ {seed}; ♂ {giver}"


def pollen_html(net: PedigreeNetwork, code: str) -> list[str]:
    """A line for each plant that may have given the pollen: 'HP 0.5 – stood next to it'."""
    held = net.parents(code)
    if held.pollen_parent or held.by_rate or not any(giver for giver, _ in held.pollen):
        return []
    said = {}
    if held.finding:
        for row in net.book.findings().get(code, ()):
            giver = held.seed_parent if row.pollen_parent == SELF else row.pollen_parent
            said[giver] = row.text
    lines, left = [], 1.0
    for giver, odds in held.pollen:
        left -= odds
        if not giver:
            name = escape(_tr("a plant nobody knows"))
        elif giver == held.seed_parent:
            name = f"{link(giver)} {escape(_tr('(its own flowers)'))}"
        else:
            name = link(giver)
        text = said.get(giver, "")
        lines.append(f"{name} {odds:.4g}" + (f" – {escape(text)}" if text else ""))
    if left > 1e-9:
        lines.append(f"{escape(_tr('a plant nobody knows'))} {left:.4g}")
    return lines


def doubt_lines(net: PedigreeNetwork, code: str) -> list[str]:
    """What is less than certain of its parents, a line each."""
    held = net.parents(code)
    cross = net.book.crosses.get(held.cross)
    if cross is None:
        return []
    lines = []
    grades = [(_tr("Seed parent"), cross.seed_doubt)]
    if not held.finding:
        grades.append((_tr("Pollen parent"), cross.pollen_doubt))
    for side, grade in grades:
        if grade and grade != "certain":
            word, _, what = doubt_words(grade).partition(": ")
            lines.append(f"{side} {word} ({what})." if what else f"{side} {word}.")
    rows = net.book.findings().get(code, ()) if held.finding else ()
    if len(rows) == 1:
        row = rows[0]
        word, _, what = doubt_words(row.grade).partition(": ") if row.grade else ("", "", "")
        if word and word != "certain":
            lines.append(_tr("Pollen parent {} ({}).").format(word, what))
        if row.text and not pollen_html(net, code):
            lines.append(_tr("What shows it: {}").format(row.text))
    return lines
