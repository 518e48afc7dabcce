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


def _show_notation(page: PedigreePage, code: str) -> None:
    from pedigreeview.window.main_window import MainWindow

    window = page.window()
    if isinstance(window, MainWindow):
        window.asides.show_notation(code)


def show_tag_menu(page: PedigreePage, code: str, place: QPoint) -> None:
    """Open the menu at a place of the screen; a blank code stands for the ground."""
    net = page.net
    if net is None:
        return
    menu = QMenu(page.stage)
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
            (_tr("Unfold more of its relatives"), lambda: page.fold(code, unfold=True)),
            (_tr("Fold its relatives"), lambda: page.fold(code, unfold=False)),
            (_tr("Copy its code"), lambda: QGuiApplication.clipboard().setText(code)),
            (_tr("Copy its parentage as text …"), lambda: _show_notation(page, code)),
        ]
    focused = bool(page.focus)
    entries += [
        (_tr("Fit the picture"), page.fit),
        (
            _tr("Show the whole book") if focused else _tr("Show the marked plant in focus"),
            lambda: page.show_whole(focused),
        ),
    ]
    if code:
        for title, more in (
            (_tr("Write down"), page.writing_entries(code)),
            (_tr("Look at"), _ways(page, code)),
        ):
            if more:
                _fill(menu.addMenu(title), more)
        menu.addSeparator()
    _fill(menu, entries)
    menu.popup(place)


def _fill(menu: QMenu, entries: list[tuple[str, Callable[[], object]]]) -> None:
    for text, act in entries:
        menu.addAction(text).triggered.connect(lambda _=False, act=act: act())
