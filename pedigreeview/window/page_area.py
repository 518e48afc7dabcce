"""Where the pages of the window lie: one is on show, and scrolls where there is no room for it.

A stack asks for as much room as the largest of its pages; a window could then never be made smaller
again once such a page was looked at, and with large type it would not fit the screen.  So only the
page on show is asked, and what is less than it needs is made up for by scroll bars.
"""

from __future__ import annotations

from PySide6.QtCore import QSize
from PySide6.QtWidgets import QFrame, QScrollArea, QStackedWidget

from pedigreeview.window.style import step

__all__ = ["PageArea", "PageStack"]


class PageStack(QStackedWidget):
    """The pages; how much room they need is what the one on show needs."""

    def __init__(self) -> None:
        super().__init__()
        self.currentChanged.connect(lambda _: self.updateGeometry())

    def minimumSizeHint(self) -> QSize:
        page = self.currentWidget()
        return page.minimumSizeHint() if page is not None else QSize(0, 0)

    def sizeHint(self) -> QSize:
        page = self.currentWidget()
        return page.sizeHint() if page is not None else QSize(0, 0)

    def heightForWidth(self, width: int) -> int:
        """The least height in which the page on show is whole at a width."""
        page = self.currentWidget()
        layout = page.layout() if page is not None else None
        least = self.minimumSizeHint().height()
        if layout is None or not layout.hasHeightForWidth():
            return least
        return max(least, layout.totalMinimumHeightForWidth(width))


class PageArea(QScrollArea):
    """The frame that a page scrolls in."""

    def __init__(self, pages: PageStack) -> None:
        super().__init__()
        self.setObjectName("pages")
        self.setWidgetResizable(True)
        self.setFrameShape(QFrame.Shape.NoFrame)
        self.setWidget(pages)

    def minimumSizeHint(self) -> QSize:
        return QSize(20 * step(), 14 * step())

    def sizeHint(self) -> QSize:
        return self.minimumSizeHint()
