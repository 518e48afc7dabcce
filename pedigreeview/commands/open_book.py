"""`open`: the window; without a screen the summary and a picture of the book instead."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path
from typing import TYPE_CHECKING

from pedigreeview.book.faults import Fault, Place
from pedigreeview.commands.answer import Answer
from pedigreeview.commands.desktop import library_missing_for, why_no_window
from pedigreeview.commands.diagram import QT_FOR_PICTURES, draw
from pedigreeview.commands.streams import say
from pedigreeview.commands.summary import file_title, summary
from pedigreeview.places import demos
from pedigreeview.window.walking import first_focus

if TYPE_CHECKING:
    from pedigreeview.network import PedigreeNetwork

__all__ = ["open_book"]

_WHOLE = 300
"""Plants up to which the whole book is drawn; of a larger one a focus, as in the window."""


def open_book(
    path: str | None,
    read: Callable[[str], PedigreeNetwork],
    *,
    founders_as: str | None = None,
    fixation: float | None = None,
) -> Answer | int:
    """Show the window until it is closed, or answer without one.

    Parameters
    ----------
    path : the file or folder to open, or None for the welcome page
    read : reads it, with the founder settings of the command line
    founders_as, fixation : these settings, for the window

    Returns
    -------
    the window's exit status, or what is printed where there can be no window
    """
    if path is not None and not Path(path).exists():
        raise Fault(
            "There is no such file or folder.",
            Place(file=path),
            "Check the name, or start without one and choose it in the window.",
        )
    reason = why_no_window()
    if reason is None:
        from pedigreeview.window.app import run

        book = None if path is None else Path(path)
        return run(book, founders_as=founders_as or "", fixation=fixation)
    if path is None:
        say(f"The window cannot be shown: {reason}.")
        return Answer(_what_to_name())
    say(f"The window cannot be shown: {reason}; here are the summary and a picture of the book.")
    return _without_window(read(path))


def _what_to_name() -> list[str]:
    shipped = sorted(item for item in demos().iterdir() if not item.name.startswith("."))
    return [
        "Name a file or folder to get its summary and a picture, for example a demo:",
        "",
        *(f'  pedigreeview "{item}"' for item in shipped),
        "",
        "See pedigreeview --help for all commands.",
    ]


def _without_window(net: PedigreeNetwork) -> Answer:
    answer = summary(net)
    try:
        said = _picture(net, Path(f"{file_title(net)}-pedigree.svg"))
    except Fault as fault:
        said = ["No picture was written."]
        say(fault.sentence())
    return Answer([*answer.text, "", *said], None, answer.problems, answer.base)


def _picture(net: PedigreeNetwork, picture: Path) -> list[str]:
    missing = library_missing_for(*QT_FOR_PICTURES)
    if missing:
        said = _plain_picture(net, picture)
        return [*said, f"It is drawn plainly, by Graphviz alone, because {missing}."]
    if len(net.codes) <= _WHOLE:
        draw(net, picture, None, None, None)
        return [f"Picture of the whole book: {picture}"]
    focus = first_focus(net)
    draw(net, picture, focus, None, None)
    return [f"Picture around {focus}: {picture}"]


def _plain_picture(net: PedigreeNetwork, picture: Path) -> list[str]:
    from pygraphviz import AGraph

    from pedigreeview.exchange import graph_files
    from pedigreeview.exchange.writing import replace_file

    network = picture.with_suffix(".dot")
    graph_files.write_dot(net, network)
    with replace_file(picture) as beside:
        AGraph(str(network)).draw(str(beside), format="svg", prog="dot")
    return [f"Network: {network}", f"Picture: {picture}"]
