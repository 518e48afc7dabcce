"""The words of the commands that bring tables in and take them out."""

from __future__ import annotations

import argparse
import re
from collections.abc import Callable
from typing import TYPE_CHECKING, Any

from pedigreeview.commands.answer import Answer
from pedigreeview.commands.convert import FORMAT_NAMES, STREAM
from pedigreeview.commands.tables_out import MATRIX_KINDS, NOTATION_STYLES

if TYPE_CHECKING:
    from pedigreeview.network import PedigreeNetwork

__all__ = ["COMMANDS", "EXAMPLES", "add_words", "do"]

COMMANDS = {
    "import": "any table (CSV, XLSX, ODS) into a new book, or into one that has records",
    "merge": "two books into one, clashing codes renamed by a rule",
    "matrix": "coefficients of every pair of plants (.csv .tsv .xlsx .npz)",
    "notation": "the parentage of plants as text, for a label or a letter",
}
"""These commands with what they do."""

EXAMPLES = {
    "convert": """\
examples:
  pedigreeview convert plants.csv my_book           a table to a folder
  pedigreeview convert my_book plants.xlsx          a spreadsheet
  pedigreeview convert my_book book.brapi.json      Breeding API 2.1
  pedigreeview convert my_book - --to graphml       to standard output
  cat plants.csv | pedigreeview convert - my_book   from standard input

The endings say what is read and written: .pedbook, .csv .tsv .txt .xlsx (a
plant table), .ods (read only), .brapi.json, .mcpd.csv (passport data of
founders), .graphml, .gexf, .json (node-link), .dot (written only), none for a
folder.  --from and --to say it for other names and for - .  What a format
cannot carry is listed first, on standard error.""",
    "import": """\
examples:
  pedigreeview import crosses.xlsx --preview        what is guessed, and the problems
  pedigreeview import crosses.xlsx my.pedbook
  pedigreeview import crosses.csv new_book --column "Mum=seed_parent" --dates month-day
  pedigreeview import list.ods my_book --column "Height=trait:height" --unknown "OP=open"
  pedigreeview import friend.csv both.pedbook --into my.pedbook --take mine

A parent in one cell ('A x B', 'A/B//C') has a known direction only with
--seed-parent-first.  All of the table comes in or nothing.  Without TO a
.pedbook of --into is changed itself, as one step that can be undone.""",
    "merge": """\
examples:
  pedigreeview merge mine.pedbook friends_book both.pedbook --preview
  pedigreeview merge mine.pedbook friends_book both.pedbook --before "Ann-"
  pedigreeview merge a.csv b.csv both.csv --take theirs""",
    "matrix": """\
examples:
  pedigreeview matrix my_book --out coancestry.csv
  pedigreeview matrix my_book --out m.npz --plant TP BA 21-01-3
  pedigreeview matrix my_book --out - --kind relationship""",
    "notation": """\
examples:
  pedigreeview notation my_book 23-07
  pedigreeview notation my_book 23-07 23-08 --style cross --names""",
}
"""Examples shown below the help of each."""

_BOOK = "a book, folder, plant table or other file that `convert` reads"


def _names(text: str) -> int:
    if not re.fullmatch(r"[1-9][0-9]{0,3}", text):
        raise argparse.ArgumentTypeError(f"{text!r} is no number of names from 1 to 9999")
    return int(text)


def _row(text: str) -> int:
    if not re.fullmatch(r"[0-9]{1,7}", text):
        raise argparse.ArgumentTypeError(f"{text!r} is no row")
    return int(text)


def add_words(name: str, command: argparse.ArgumentParser) -> bool:
    """Add the words of one of these commands, or of `convert`; False for any other."""
    if name == "convert":
        command.add_argument("file", metavar="FROM", help=f"{_BOOK}; - is standard input")
        command.add_argument(
            "target", metavar="TO", help="the file or folder to write; - is standard output"
        )
        command.add_argument(
            "--from", dest="source_format", choices=FORMAT_NAMES, metavar="FORMAT",
            help=f"format of FROM: {', '.join(FORMAT_NAMES[:-1])} (by its ending)",
        )  # fmt: skip
    elif name == "import":
        _import_words(command)
    elif name == "merge":
        _merge_words(command)
    elif name == "matrix":
        command.add_argument("file", metavar="FILE", help=_BOOK)
        command.add_argument(
            "--out", required=True, metavar="TABLE", help="the file to write; - is standard output"
        )
        command.add_argument(
            "--plant", action="extend", nargs="+", metavar="CODE",
            help="only this plant; may be given again (all plants)",
        )  # fmt: skip
        command.add_argument(
            "--kind", choices=MATRIX_KINDS, default="coancestry", help="which one (coancestry)"
        )
    elif name == "notation":
        command.add_argument("file", metavar="FILE", help=_BOOK)
        command.add_argument("plants", nargs="+", metavar="CODE", help="code of a plant")
        command.add_argument(
            "--style", choices=NOTATION_STYLES, default="slash",
            help="slashes of cereal breeders, or × with the seed parent first or alphabetical "
            "(slash)",
        )  # fmt: skip
        command.add_argument(
            "--names", action="store_true", help="names of plants instead of codes"
        )
        command.add_argument(
            "--most", type=_names, default=64, metavar="N", help="names in one text at most (64)"
        )
        command.add_argument(
            "--json", action="store_true", help="one JSON document instead of text"
        )
    else:
        return False
    if name in ("convert", "import", "merge"):
        command.add_argument(
            "--to", choices=FORMAT_NAMES, metavar="FORMAT",
            help="format of TO, the same words (by its ending)",
        )  # fmt: skip
    if name != "notation":
        command.add_argument(
            "--replace", action="store_true", help="write over a file that exists already"
        )
    return True


def _import_words(command: argparse.ArgumentParser) -> None:
    command.add_argument(
        "file", metavar="TABLE", help="a table (.csv .tsv .txt .xlsx .ods); - is standard input"
    )
    command.add_argument(
        "target", metavar="TO", nargs="?", help="the file or folder to write; - is standard output"
    )
    command.add_argument("--into", metavar="BOOK", help="the book whose records it joins (none)")
    command.add_argument("--sheet", metavar="NAME", help="sheet of a spreadsheet (the first)")
    command.add_argument(
        "--heading-row", type=_row, metavar="N", help="row with the headings, 0 for none (guessed)"
    )
    command.add_argument(
        "--form", choices=("plants", "crosses"), help="a row for each plant or cross (guessed)"
    )
    command.add_argument(
        "--column", action="append", metavar="HEADING=MEANING",
        help="what a column means, such as plant, seed_parent, parents, trait:NAME, kept, "
        "left_out; may be given again (guessed)",
    )  # fmt: skip
    command.add_argument(
        "--dates", choices=("day-month", "month-day"), help="how 3/5/2024 is read (guessed)"
    )
    command.add_argument(
        "--unknown", action="append", metavar="TEXT=MEANING",
        help="what a text under a parent means: unknown, open or code; may be given again",
    )  # fmt: skip
    command.add_argument(
        "--same", action="append", metavar="SPELLED=CODE",
        help="a spelling and the code to take for it; may be given again",
    )  # fmt: skip
    command.add_argument(
        "--seed-parent-first", action="store_true",
        help="the table puts the seed parent first where both parents stand in one cell",
    )  # fmt: skip
    _take_words(command)


def _merge_words(command: argparse.ArgumentParser) -> None:
    command.add_argument("file", metavar="MINE", help=_BOOK)
    command.add_argument("other", metavar="THEIRS", help="the book that joins it")
    command.add_argument("target", metavar="TO", nargs="?", help="the file or folder to write")
    command.add_argument(
        "--before", default="", metavar="TEXT", help="put before their clashing codes"
    )
    command.add_argument(
        "--behind", metavar="TEXT", help="put behind their clashing codes (' (2)')"
    )
    _take_words(command)


def _take_words(command: argparse.ArgumentParser) -> None:
    command.add_argument(
        "--take", choices=("mine", "theirs"),
        help="what is kept where the two differ (mine, and theirs where mine is blank)",
    )  # fmt: skip
    command.add_argument(
        "--preview", action="store_true", help="show what would come in and write nothing"
    )


def do(chosen: argparse.Namespace, network: Callable[[str], PedigreeNetwork]) -> Answer | None:
    """Carry out one of these commands, or `convert`; None for any other."""
    if chosen.command == "convert":
        from pedigreeview.commands.convert import convert, read_source, target_format
        from pedigreeview.commands.streams import say

        target_format(chosen.target, chosen.to)
        if chosen.file == STREAM or chosen.source_format:
            net = read_source(
                chosen.file,
                chosen.source_format,
                founders_as=chosen.founders_as,
                fixation=chosen.fixation,
            )
            for remark in net.book.remarks:
                say(remark)
        else:
            net = network(chosen.file)
        return convert(net, chosen.file, chosen.target, to=chosen.to, replace=chosen.replace)
    if chosen.command == "import":
        from pedigreeview.commands.tables_in import import_table

        base = None if chosen.into is None else network(chosen.into).book
        return import_table(chosen, base)
    if chosen.command == "merge":
        from pedigreeview.commands.tables_in import merge_books

        return merge_books(network(chosen.file).book, network(chosen.other).book, chosen)
    if chosen.command == "matrix":
        from pedigreeview.commands.tables_out import matrix

        return matrix(
            network(chosen.file),
            chosen.out,
            chosen.plant or (),
            kind=chosen.kind,
            replace=chosen.replace,
        )
    if chosen.command == "notation":
        from pedigreeview.commands.tables_out import notation

        held: Any = chosen
        return notation(
            network(held.file), held.plants, style=held.style, names=held.names, most=held.most
        )
    return None
