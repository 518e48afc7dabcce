"""Opening the printing dialog from anywhere in the window, with what is chosen there."""

from __future__ import annotations

from collections.abc import Mapping
from typing import TYPE_CHECKING

from PySide6.QtCore import QCoreApplication

from pedigreeview.reports.paper_choices import Chosen
from pedigreeview.window.papers.papers_dialog import PapersDialog

if TYPE_CHECKING:
    from pedigreeview.window.main_window import MainWindow

__all__ = ["open_papers"]


def _tr(text: str) -> str:
    return QCoreApplication.translate("Papers", text)


def open_papers(
    window: MainWindow,
    paper: str = "",
    offers: Mapping[str, Chosen] | None = None,
    codes: tuple[str, ...] = (),
) -> PapersDialog | None:
    """Open the dialog for the book that lies open.

    Parameters
    ----------
    paper : a word of `paper_choices.PAPERS`; '' for the tags of flowers
    offers : what was chosen, by the words for it; the picked plants and the plant in view are
        offered besides
    codes : codes to print, in place of everything that is due
    """
    if window.opened is None:
        return None
    held = dict(offers or {})
    picked = tuple(window.exploring.picked)
    if picked:
        held.setdefault(_tr("the picked plants"), Chosen(plants=picked))
    at = window.pedigree.selected or window.pedigree.focus
    also = {_tr("the plant in view, {}").format(at): Chosen(plants=(at,))} if at else {}
    dialog = PapersDialog(
        window.desk, window.errands, window.preferences, held, paper, codes, window, also=also
    )
    dialog.printed.connect(window.said.setText)
    window.show_dialog(dialog)
    return dialog
