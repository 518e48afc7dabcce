"""The index drawer: its two leaves are set like the rest of the window."""

from __future__ import annotations

from collections.abc import Callable

import pytest
from PySide6.QtCore import QPoint, QRect
from PySide6.QtGui import QColor, QImage
from PySide6.QtWidgets import QApplication

from pedigreeview.window.main_window import MainWindow
from pedigreeview.window.style import current


def colours_below(image: QImage, box: QRect) -> set[str]:
    """The colours of the lowest rows of a tab."""
    return {
        QColor(image.pixel(QPoint(x, y))).name()
        for y in range(box.bottom() - 2, box.bottom() + 1)
        for x in range(box.left() + 4, box.right() - 20)
    }


@pytest.mark.parametrize("look", ["light", "dark"])
def test_the_open_leaf_is_underlined_in_the_accent_of_the_house(
    peas: MainWindow, settle: Callable[[], None], look: str
) -> None:
    peas.set_look(look)
    settle()
    drawer = peas.pedigree.drawer
    peas.pedigree.index_button.click()
    for at in (0, 1):
        drawer.tabs.setCurrentIndex(at)
        QApplication.processEvents()
        image = drawer.tabs.grab().toImage()
        accent = current().accent.name()
        assert accent in colours_below(image, drawer.tabs.tabRect(at))
        assert accent not in colours_below(image, drawer.tabs.tabRect(1 - at))
        # No frame of the system's style round the tabs: the ground is that of the drawer.
        corner = QColor(image.pixel(drawer.tabs.tabRect(1 - at).topLeft()))
        assert corner.name() == current().window.name()


def test_both_leaves_are_readable_with_large_text(peas: MainWindow) -> None:
    peas.set_text_size(200)
    peas.resize(1280, 800)
    drawer = peas.pedigree.drawer
    peas.pedigree.index_button.click()
    QApplication.processEvents()
    metrics = drawer.tabs.fontMetrics()
    for at in (0, 1):
        wanted = metrics.horizontalAdvance(drawer.tabs.tabText(at))
        assert drawer.tabs.tabRect(at).width() >= wanted
    assert drawer.tabs.tabRect(1).right() <= drawer.tabs.width()
