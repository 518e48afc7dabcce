"""The menu of a tag, or of the ground of the picture."""

from __future__ import annotations

from collections.abc import Callable
from functools import partial
from typing import TYPE_CHECKING

from PySide6.QtCore import QCoreApplication, QPoint, Qt
from PySide6.QtGui import QGuiApplication
from PySide6.QtWidgets import QMenu

from pedigreeview.window.words import named

if TYPE_CHECKING:
    from pedigreeview.window.pedigree_page import PedigreePage

__all__ = ["show_tag_menu"]


def _tr(text: str) -> str:
    return QCoreApplication.translate("TagMenu", text)


def _ways(page: PedigreePage, code: str) -> list[tuple[str, Callable[[], object]]]:
    """Ways of looking that begin at a plant; those with a second one take the focus or a pin."""
    entries: list[tuple[str, Callable[[], object]]] = [
        (_tr("What came of it"), lambda: page.ways.show_descent(code)),
        (_tr("Lineage by its cytoplasm"), lambda: page.ways.show_cytoplasm(code)),
    ]
    others = dict.fromkeys([page.focus, *page.pins])
    for other in [held for held in others if held and held != code][:3]:
        text = _tr("How it is connected with {}").format(other)
        entries.append((text, partial(page.ways.show_connection, other, code)))
    if page.focus and code != page.focus:
        entries.append(
            (
                _tr("Compare with {}, side by side").format(page.focus),
                lambda: page.compare.show_beside(code),
            )
        )
    return entries


def show_tag_menu(page: PedigreePage, code: str, place: QPoint) -> None:
    """Open the menu at a place of the screen; a blank code stands for the ground."""
    net = page.net
    if net is None:
        return
    menu = QMenu(page)
    menu.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
    entries: list[tuple[str, Callable[[], object]]] = []
    if code:
        pinned = code in page.pins
        entries = [
            (_tr("Focus on {}").format(named(net.book, code)), lambda: page.focus_on(code)),
            (_tr("Open its card"), lambda: page.open_card(code)),
            (
                _tr("Take the pin out") if pinned else _tr("Pin to compare"),
                lambda: page.pin(code),
            ),
            *_ways(page, code),
            (_tr("Unfold more of its relatives"), lambda: page.fold(code, unfold=True)),
            (_tr("Fold its relatives"), lambda: page.fold(code, unfold=False)),
            (_tr("Copy its code"), lambda: QGuiApplication.clipboard().setText(code)),
        ]
    focused = bool(page.focus)
    entries += [
        (_tr("Fit the picture"), page.fit),
        (
            _tr("Show the whole book") if focused else _tr("Show the marked plant in focus"),
            lambda: page.show_whole(focused),
        ),
    ]
    for text, act in entries:
        menu.addAction(text).triggered.connect(lambda _=False, act=act: act())
    menu.popup(place)
