"""Help in three sheets: signs and keys of the picture, words of the trade, cautions."""

from __future__ import annotations

from html import escape

from PySide6.QtCore import QCoreApplication, QSize, Qt
from PySide6.QtWidgets import QDialog, QHBoxLayout, QLabel, QWidget

from pedigreeview.window.labels import action_button, column, heading, scrolled
from pedigreeview.window.style import current, step

__all__ = ["HelpSheet", "cautions", "keys", "mouse", "signs_and_keys", "words"]

Rows = list[tuple[str, str]]


def _tr(text: str) -> str:
    return QCoreApplication.translate("Help", text)


def keys() -> Rows:
    """The keys of the window."""
    return [
        (_tr("Up"), _tr("to the seed parent")),
        (_tr("Shift+Up"), _tr("to the pollen parent")),
        (_tr("Down"), _tr("to the first of the progeny")),
        (_tr("Left, Right"), _tr("to the neighbour in the row")),
        ("M", _tr("to the next mate")),
        ("R", _tr("to the reciprocal partner")),
        (_tr("Enter"), _tr("put this plant in focus")),
        ("+, −", _tr("unfold, fold")),
        ("P", _tr("pin, or take the pin out; pins are lettered A, B, C")),
        (_tr("Alt+Left, Alt+Right"), _tr("back, forward")),
        ("Ctrl+F", _tr("find by code, name or cross")),
        (_tr("Ctrl+1, 2, 3 …"), _tr("the pages from the top of the rail down")),
        ("F3 … F12", _tr("write down: variety, cross, pollination, fruits, harvest, sowing …")),
        (_tr("Ctrl+Space"), _tr("the quick line: one line for one thing done")),
        (_tr("Ctrl+Z, Ctrl+Shift+Z"), _tr("undo, redo")),
        (_tr("Space, Ctrl+A, Esc"), _tr("pick this plant, pick all shown, pick none")),
        (_tr("Ctrl+Shift+H, D, Y, G"), _tr("how connected, what came of it, cytoplasm, all near")),
        (_tr("Ctrl+D, Ctrl+Shift+L"), _tr("bookmark this place, all bookmarks")),
        (_tr("Ctrl+P"), _tr("print the picture")),
        (_tr("Ctrl+I"), _tr("pull out or push in the index")),
        (_tr("Ctrl++, Ctrl+−, Ctrl+0"), _tr("nearer, further, fit")),
        ("F1", _tr("this page")),
    ]


def mouse() -> Rows:
    """What can be clicked."""
    return [
        (_tr("Click a tag"), _tr("put that plant in focus and open its card")),
        (_tr("Shift+click, Shift+drag"), _tr("pick plants; the other pages work with them")),
        (
            _tr("Drag a tag on another"),
            _tr("carry pollen: cross the two, in one direction or both"),
        ),
        (_tr("Ctrl+click"), _tr("pin it, or take the pin out")),
        (_tr("Click a pack or a tab"), _tr("unfold what is folded away; the number says how many")),
        (_tr("Drag the ground, wheel"), _tr("move the picture, nearer and further")),
        (_tr("Head of the card"), _tr("drag it to move the card, click it to open or fold it")),
        (
            _tr("Why?"),
            _tr(
                "beside a number: what adds up to it, through which ancestors and paths, by which "
                "rule and on which base. Point at a path to see it in the picture; a click keeps "
                "it lit."
            ),
        ),
        (
            _tr("On the map"),
            _tr(
                "click marks a plant and lights its relatives, double click opens it; the wheel "
                "zooms, with Ctrl across only, with Shift down only; Esc clears the mark."
            ),
        ),
        (_tr("Key"), _tr("lays the signs that occur in the picture over a corner of it")),
    ]


def words() -> Rows:
    """Words of the trade as the program uses them."""
    return [
        (_tr("Seed parent ♀"), _tr("Bears the fruit and the seed. Written first, on the left.")),
        (_tr("Pollen parent ♂"), _tr("Gives pollen only.")),
        (_tr("Cross"), _tr("One seed parent with one pollen parent: an intention with a code.")),
        (_tr("Pollination"), _tr("One working of a cross on one day. A cross may have many.")),
        (_tr("Take"), _tr("A pollinated flower becomes a fruit. Take rate: fruits by flowers.")),
        (
            _tr("Reciprocal cross"),
            _tr(
                "The same two parents with roles exchanged: same coancestry, other cytoplasm, "
                "other seed coat and early vigour."
            ),
        ),
        (_tr("Selfing"), _tr("Pollen of the same plant, or of its clone.")),
        (_tr("Backcross"), _tr("A hybrid crossed with one of its own parents, the recurrent one.")),
        (_tr("Cytoplasm"), _tr("What comes through the seed parent alone.")),
        (_tr("Variety"), _tr("Named and kept alike: a pool of like plants from elsewhere.")),
        (_tr("Family"), _tr("Progeny of one cross or one plant, kept together.")),
        (_tr("Founder"), _tr("A plant or variety with nothing recorded before it.")),
        (
            _tr("Fixation"),
            _tr("How far a founder breeds true: 1 a pure line, 0 not fixed at all."),
        ),
        (
            _tr("Inbreeding F"),
            _tr(
                "The chance that the two alleles of a plant at one gene came down from the same "
                "allele of a founder. 0 for a plant of unrelated parents, 1 for a pure line."
            ),
        ),
        (
            _tr("Coancestry θ"),
            _tr(
                "The same chance for one allele drawn from each of two plants. It is the F that "
                "their progeny would have."
            ),
        ),
        (
            _tr("Relationship"),
            _tr("Coancestry set against how alike each of the two is to itself."),
        ),
        (_tr("Founder share"), _tr("The part of a plant's heredity that a founder gave.")),
        (
            _tr("Generation names"),
            _tr(
                "F1 is the seed of a first cross, F2 comes from selfing it, BC1F1 from crossing it "
                "back. S1 counts selfings of a plant with no cross behind it."
            ),
        ),
        (_tr("Cull, lost"), _tr("Decided against; died or missing. A state, never a deletion.")),
    ]


def cautions() -> Rows:
    """What to mind; local rules come first, then licensed advice."""
    return [
        (
            _tr("Rules first"),
            _tr("The rules of your place come before anything here, then licensed advice."),
        ),
        (
            _tr("Protected parents"),
            _tr(
                "A variety may be protected. Breeding with it and private use are often free, but "
                "patents and the licence on the packet may say otherwise."
            ),
        ),
        (
            _tr("Seed across borders"),
            _tr("Seed sent to another country needs papers, in a letter too."),
        ),
        (
            _tr("Tasting"),
            _tr(
                "Never taste a cross with a wild nightshade, nor a bitter squash: poisons can rise "
                "above those of both parents. Potato crosses have passed the limit for eating."
            ),
        ),
        (_tr("Sweet pea"), _tr("The seed is poisonous. Mark its packets.")),
        (_tr("Hot peppers"), _tr("Gloves and goggles when you open pungent fruit.")),
        (
            _tr("Pollen under glass"),
            _tr("Working with pollen in closed houses can bring on allergy. Air, and a mask."),
        ),
        (_tr("Blades"), _tr("A blade cuts and carries virus: clean it between plants.")),
        (
            _tr("Chromosome doubling"),
            _tr("The usual agent is a deadly poison; this program gives no recipe."),
        ),
        (
            _tr("The numbers"),
            _tr(
                "They are no better than the records and the base they rest on. A wrong parent "
                "makes wrong numbers, and nothing here is advice on what to eat or sell."
            ),
        ),
    ]


class _RowsLabel(QLabel):
    """Terms with their sentences, laid out once for each width.

    A label left to itself lays its text out some twenty times before it is seen.
    """

    def __init__(self, html: str) -> None:
        super().__init__(html)
        self._heights: dict[tuple[str, int], int] = {}
        self.setTextFormat(Qt.TextFormat.RichText)
        self.setWordWrap(True)
        self.setTextInteractionFlags(Qt.TextInteractionFlag.TextSelectableByMouse)

    def heightForWidth(self, width: int) -> int:
        key = self.font().key(), width
        if key not in self._heights:
            self._heights[key] = super().heightForWidth(width)
        return self._heights[key]

    def sizeHint(self) -> QSize:
        width = max(self.width(), 24 * step())
        return QSize(width, self.heightForWidth(width))

    def minimumSizeHint(self) -> QSize:
        return QSize(24 * step(), 4 * step())


class HelpSheet(QDialog):
    """One sheet of help: a heading and rows of a term with its sentence."""

    def __init__(
        self,
        title: str,
        parts: list[tuple[str, Rows]],
        parent: QWidget | None = None,
        drawn: QWidget | None = None,
        size: tuple[int, int] = (72, 74),
    ) -> None:
        """A sheet.

        Parameters
        ----------
        drawn : stands above the rows
        size : width and height to begin with, in steps of the grid
        """
        super().__init__(parent)
        self.setWindowTitle(title)
        self.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        s = step()
        self.resize(size[0] * s, size[1] * s)
        layout = column(s, 3 * s)
        self.setLayout(layout)
        layout.addWidget(heading(title, 2))
        inner = QWidget()
        area = scrolled(inner)
        area.setAccessibleName(title)
        layout.addWidget(area, 1)
        body = column(2 * s)
        inner.setLayout(body)
        if drawn is not None:
            body.addWidget(drawn)
        self.text = _RowsLabel(self._html(parts))
        self.text.setAccessibleName(title)
        body.addWidget(self.text)
        body.addStretch(1)
        row = QHBoxLayout()
        row.addStretch(1)
        done = action_button(self.tr("Close"), self.accept, main=True)
        done.setDefault(True)
        row.addWidget(done)
        layout.addLayout(row)

    def _html(self, parts: list[tuple[str, Rows]]) -> str:
        s, colours = step(), current()
        html = []
        for title, rows in parts:
            if title:
                html.append(f'<h3 style="color:{colours.soft.name()}">{escape(title)}</h3>')
            html.append(f'<table width="100%" cellspacing="0" cellpadding="{max(3, s // 2)}">')
            for term, text in rows:
                html.append(
                    f'<tr><td width="30%" valign="top"><b>{escape(term)}</b></td>'
                    f'<td valign="top">{escape(text)}</td></tr>'
                )
            html.append("</table>")
        return "".join(html)


def signs_and_keys(parent: QWidget) -> HelpSheet:
    """The drawn signs of the picture, and below them what mouse and keys do."""
    from pedigreeview.window.legend_panel import Legend, all_signs

    parts = [(_tr("Mouse"), mouse()), (_tr("Keys"), keys())]
    return HelpSheet(_tr("Signs and keys"), parts, parent, Legend(all_signs()), (104, 84))
