"""The command line: words to commands, and what comes back to streams and exit status.

Exit status 0: done; 1: done, and the file has problems that the output names; 2: not done, bad
words or bad input.  Results go to standard output, messages to standard error.
"""

from __future__ import annotations

import argparse
import difflib
import math
import os
import re
import sys
import traceback
from collections.abc import Sequence
from pathlib import Path
from typing import TYPE_CHECKING, Any, NoReturn

from pedigreeview import __version__, read
from pedigreeview.book.dates import is_date
from pedigreeview.book.faults import Cancelled, Fault
from pedigreeview.commands import exchange_words
from pedigreeview.commands.answer import NOT_DONE, Answer
from pedigreeview.commands.labels import LABEL_KINDS, LISTS, PAPERS
from pedigreeview.commands.report import COLOURS, PARTS
from pedigreeview.commands.streams import prepare, say, silence, write_document, write_lines
from pedigreeview.drawing.margins import MOST_MM
from pedigreeview.drawing.picture_files import PAPERS as DIAGRAM_PAPERS

if TYPE_CHECKING:
    from pedigreeview.network import PedigreeNetwork

__all__ = ["COMMANDS", "command_parsers", "main", "parser"]

COMMANDS = {
    "open": "open a book in the window (the default)",
    "summary": "what a book holds, its selfings and reciprocal pairs",
    "coefficients": "inbreeding, generation, cytoplasm line and founder shares of plants",
    "relate": "how two plants are related, and through whom",
    "diagram": "write the picture (.svg .pdf .png) or the network (.dot .graphml .gexf .json)",
    "check": "what in the records cannot be right, and how to mend it",
    "convert": "between a book, a folder of tables, a plant table and other formats",
    **exchange_words.COMMANDS,
    "labels": "tags for flowers, fruits, pots, row stakes and seed packets, as PDF",
    "sheets": "crossing list, crossing plan, map of beds, blank garden sheets, as PDF",
    "report": "a plant's page, or the history of a line, as PDF or as one HTML file",
}
"""Every command with what it does."""

_EXAMPLES = {
    "": """\
examples:
  pedigreeview                                  the window, with its welcome page
  pedigreeview plants.csv                       the window, with this book
  pedigreeview summary plants.csv
  pedigreeview relate plants.csv TP 21-01-3
  pedigreeview diagram plants.csv --out plants.svg

exit status: 0 done; 1 done, and the file has problems that are named; 2 not done.""",
    "open": """\
examples:
  pedigreeview open plants.csv
  pedigreeview plants.csv
  pedigreeview open demo_pedigrees/two_peas_both_ways

Without a screen the summary is printed and a picture, NAME-pedigree.svg, is
written to the current folder.""",
    "summary": """\
examples:
  pedigreeview summary plants.csv
  pedigreeview summary plants.csv --json""",
    "coefficients": """\
examples:
  pedigreeview coefficients plants.csv
  pedigreeview coefficients plants.csv --plant TP --plant 21-01-3
  pedigreeview coefficients plants.csv --founders-as plant --json
  pedigreeview coefficients plants.csv --out coefficients.xlsx""",
    "relate": """\
examples:
  pedigreeview relate plants.csv TP 21-01-3
  pedigreeview relate plants.csv 21-01-3 21-01-3 --json     a plant with itself""",
    "diagram": """\
examples:
  pedigreeview diagram plants.csv --out plants.pdf
  pedigreeview diagram plants.csv --out tp.svg --focus TP --up 0 --down 3
  pedigreeview diagram plants.csv --out plants.pdf --paper A3 --tiled --grey
  pedigreeview diagram plants.csv --out plants.pdf --margin 20
      --caption "Both ways across, 2021." --caption "Seed of 21-01 to be had in autumn."
  pedigreeview diagram plants.csv --out plants.graphml""",
    "check": """\
examples:
  pedigreeview check plants.csv
  pedigreeview check plants.csv --json""",
    **exchange_words.EXAMPLES,
    "labels": """\
examples:
  pedigreeview labels my_book --for packets -o packets.pdf
  pedigreeview labels my_book --for flowers --code 21-01 -o tags.pdf --start 14
  pedigreeview labels my_book --for pots --sheet "A4 3x8 70x36" --qr -o pots.pdf
  pedigreeview labels my_book --for stakes --sheet roll-stake -o stakes.pdf

Without --code: every pollination and planned cross, fruit that may have set,
plant that still grows, sowing, packet with seed left.""",
    "sheets": """\
examples:
  pedigreeview sheets my_book --list crossing --date 2026-06-12 -o today.pdf
  pedigreeview sheets my_book --list plan --date 2026 -o plan.pdf
  pedigreeview sheets my_book --list garden --paper Letter -o blank.pdf

garden is all three blank sheets: pollinations, scores and rows.  Each has a
number, by which what was written on it is typed in, in its own order.""",
    "report": """\
examples:
  pedigreeview report my_book 21-01-3 --out plant.pdf
  pedigreeview report my_book 19-4-2 --line --out history.html
  pedigreeview report my_book 19-4-2 --line -o history.pdf --by "A. Grower" --by "12 Hill Lane"
      --date 2026-09-01 --caption "Sweet, dwarf, yellow pods." --without reciprocals

--line tells the way from the founders to the plant.  A part stands only where
the book has something to say of it.""",
}

_FILE = "a plant table (.csv, .tsv, .txt) or a Data Package folder"


class WordsFault(Fault):
    """Words on the command line that mean nothing."""


class _Parser(argparse.ArgumentParser):
    """Raises what argparse would print, as one sentence."""

    def error(self, message: str) -> NoReturn:
        lacking = re.fullmatch(r"the following arguments are required: (.*)", message)
        surplus = re.fullmatch(r"unrecognized arguments: (.*)", message)
        wrong = re.fullmatch(r"argument ([^:]*): (.*)", message)
        if lacking:
            what = f"{lacking[1]} must be given"
        elif surplus:
            what = f"This was not understood: {surplus[1]}"
        elif wrong:
            what = f"{wrong[1]}: {wrong[2]}"
        else:
            what = message[:1].upper() + message[1:]
        todo = f"See {self.prog} --help."
        if lacking or "expected one argument" in message:
            todo += " A code that starts with - goes after --, or as in --plant=-CODE."
        raise WordsFault(f"{what.rstrip('.')}.", None, todo)


def _whole(text: str) -> int:
    if not re.fullmatch(r"\d{1,6}", text, re.ASCII):
        raise argparse.ArgumentTypeError(f"{text!r} is no whole number of generations")
    return int(text)


def _positive(text: str) -> int:
    if not re.fullmatch(r"[1-9]\d{0,4}", text, re.ASCII):
        raise argparse.ArgumentTypeError(f"{text!r} is no number from 1 on")
    return int(text)


def _day(text: str) -> str:
    if not is_date(text):
        raise argparse.ArgumentTypeError(f"{text!r} is no date such as 2026-06-12")
    return text


def _margin(text: str) -> float:
    if not re.fullmatch(r"\d{1,2}(\.\d{1,3})?", text, re.ASCII) or float(text) > MOST_MM:
        raise argparse.ArgumentTypeError(f"{text!r} is no margin from 0 to {MOST_MM:g} mm")
    return float(text)


def _fixation(text: str) -> float:
    try:
        value = float(text)
    except ValueError:
        value = math.nan
    if not 0 <= value <= 1:
        raise argparse.ArgumentTypeError(f"{text!r} is no number from 0 to 1, such as 0.5")
    return value


def parser() -> argparse.ArgumentParser:
    """The parser of all commands."""
    top = _Parser(
        prog="pedigreeview",
        description="The crossing book of people who cross plants by hand: what came from what.",
        epilog=_EXAMPLES[""],
        formatter_class=argparse.RawDescriptionHelpFormatter,
        allow_abbrev=False,
    )
    top.add_argument("--version", action="version", version=f"pedigreeview {__version__}")
    commands = top.add_subparsers(dest="command", metavar="COMMAND", required=True)
    for name, says in COMMANDS.items():
        command = commands.add_parser(
            name,
            help=says,
            description=f"{says[:1].upper()}{says[1:]}.",
            epilog=_EXAMPLES[name],
            formatter_class=argparse.RawDescriptionHelpFormatter,
            allow_abbrev=False,
        )
        _add_words(name, command)
        founders = command.add_argument_group("founders that say nothing")
        founders.add_argument(
            "--founders-as",
            choices=("variety", "plant"),
            metavar="variety|plant",
            help="what a founder without a kind is (the book's setting, else variety)",
        )
        founders.add_argument(
            "--fixation",
            type=_fixation,
            metavar="X",
            help="what a founder variety without a fixation has, 0 to 1 "
            "(the book's setting, else 1, a pure line)",
        )
    return top


def _add_words(name: str, command: argparse.ArgumentParser) -> None:
    if exchange_words.add_words(name, command):
        return
    # A --plant before FILE takes FILE for one more code; `_arranged` gives it back.
    file_count = "?" if name in ("open", "coefficients") else None
    command.add_argument("file", metavar="FILE", nargs=file_count, help=_FILE)
    if name == "relate":
        command.add_argument("a", metavar="A", help="code of a plant")
        command.add_argument("b", metavar="B", help="code of another, or of the same")
    if name == "coefficients":
        command.add_argument(
            "--plant",
            action="extend",
            nargs="+",
            metavar="CODE",
            help="only this plant; may be given again (all plants)",
        )
        command.add_argument(
            "--out", metavar="TABLE", help="a table to write instead (.csv .tsv .xlsx)"
        )
        command.add_argument(
            "--replace", action="store_true", help="write over a file that exists already"
        )
    if name == "diagram":
        command.add_argument("--out", required=True, metavar="PICTURE", help="the file to write")
        command.add_argument("--focus", metavar="CODE", help="the plant in the middle (whole book)")
        command.add_argument(
            "--up", type=_whole, metavar="N", help="generations above the focus (2)"
        )
        command.add_argument(
            "--down", type=_whole, metavar="N", help="generations below the focus (2)"
        )
        command.add_argument(
            "--margin", type=_margin, metavar="MM", help="blank on all four sides, 0 to 50 mm; "
            "on paper from 5 (.pdf 10, .svg and .png 8)",
        )  # fmt: skip
        command.add_argument(
            "--caption", action="append", default=[], metavar="TEXT",
            help="a line of your own below the title; may be given again",
        )  # fmt: skip
        command.add_argument(
            "--paper", choices=DIAGRAM_PAPERS, metavar="PAPER",
            help=f"paper of a .pdf (A4): {', '.join(DIAGRAM_PAPERS)}",
        )  # fmt: skip
        command.add_argument(
            "--landscape", action=argparse.BooleanOptionalAction, default=None,
            help="paper of a .pdf lengthwise (as the picture fits better)",
        )  # fmt: skip
        command.add_argument(
            "--tiled", action="store_true",
            help="a .pdf at full size over several sheets, with marks to join them",
        )  # fmt: skip
        command.add_argument(
            "--grey", action="store_true", help="without colour, founders told apart by pattern"
        )
    if name in ("labels", "sheets"):
        _add_paper_words(name, command)
    if name == "report":
        _add_report_words(command)
    if name in ("summary", "coefficients", "relate", "check"):
        command.add_argument(
            "--json", action="store_true", help="one JSON document instead of text"
        )


def _add_paper_words(name: str, command: argparse.ArgumentParser) -> None:
    if name == "labels":
        command.add_argument(
            "--for", dest="kind", required=True, choices=LABEL_KINDS, help="what is labelled"
        )
    else:
        command.add_argument(
            "--list", dest="kind", required=True, choices=LISTS, help="what is printed"
        )
    command.add_argument(
        "-o", "--out", required=True, metavar="PDF", help="the file to write, ending in .pdf"
    )
    command.add_argument(
        "--code",
        action="extend",
        nargs="+",
        metavar="CODE",
        help="only this cross, pollination, plant, sowing, packet or bed; may be given again",
    )
    command.add_argument("--paper", choices=PAPERS, default="A4", help="A4 or Letter (A4)")
    if name == "labels":
        command.add_argument(
            "--sheet", metavar="SHEET", help="label sheet: a name, or measures 'A4 3x8 70x36'"
        )
        command.add_argument(
            "--start", type=_positive, default=1, metavar="N", help="first unused label (1)"
        )
        command.add_argument(
            "--copies", type=_positive, default=1, metavar="N", help="how often all are printed (1)"
        )
        command.add_argument(
            "--each", type=_positive, default=1, metavar="N", help="labels for each of them (1)"
        )
        command.add_argument(
            "--every",
            action=argparse.BooleanOptionalAction,
            default=None,
            help="one for every flower or fruit, not one a pollination (fruits: yes)",
        )
        command.add_argument("--qr", action="store_true", help="with a QR code of the code")
        command.add_argument("--no-marks", action="store_true", help="without marks where to cut")
        return
    command.add_argument(
        "--date", type=_day, metavar="DATE", help="day of a crossing list (today), year of a plan"
    )
    command.add_argument(
        "--landscape",
        action=argparse.BooleanOptionalAction,
        default=None,
        help="the long side across (all but scores)",
    )
    command.add_argument(
        "--rows", type=_positive, metavar="N", help="empty rows of the pollination sheet (24)"
    )


def _add_report_words(command: argparse.ArgumentParser) -> None:
    command.add_argument("code", metavar="CODE", help="code of the plant")
    command.add_argument(
        "-o", "--out", required=True, metavar="FILE", help="the file to write: .pdf or .html"
    )
    command.add_argument(
        "--line", action="store_true", help="the history of the line, from its founders to CODE"
    )
    command.add_argument(
        "--without", action="extend", nargs="+", choices=PARTS, default=[], metavar="PART",
        help=f"leave this part out; may be given again: {', '.join(PARTS)}",
    )  # fmt: skip
    command.add_argument("--paper", choices=PAPERS, default="A4", help="A4 or Letter (A4)")
    command.add_argument(
        "--pedigree", choices=COLOURS, help="the pedigree in grey or in colour (grey on paper)"
    )
    command.add_argument(
        "--by", action="append", default=[], metavar="TEXT",
        help="who hands it out: a name, an address; may be given again",
    )  # fmt: skip
    command.add_argument("--date", type=_day, metavar="DATE", help="day to print on it (none)")
    command.add_argument(
        "--caption", action="append", default=[], metavar="TEXT",
        help="a paragraph of your own below the title; may be given again",
    )  # fmt: skip


def _finish(chosen: argparse.Namespace) -> dict[str, Any]:
    """What was chosen for a picture, as words of `save_picture`."""
    found = {
        "margin": chosen.margin,
        "caption": "\n".join(chosen.caption) or None,
        "paper": chosen.paper,
        "landscape": chosen.landscape,
        "tiled": chosen.tiled or None,
        "theme": "grey" if chosen.grey else None,
    }
    return {name: value for name, value in found.items() if value is not None}


def command_parsers() -> dict[str, argparse.ArgumentParser]:
    """The parser of each command by its name."""
    found: dict[str, argparse.ArgumentParser] = {}
    for action in parser()._actions:
        if isinstance(action, argparse._SubParsersAction):
            found.update(action.choices)
    return found


def _with_command(words: Sequence[str]) -> list[str]:
    """The words with `open` put in where no command is named."""
    if not words:
        return ["open"]
    first = words[0]
    if first in COMMANDS or first in ("-h", "--help", "--version"):
        return list(words)
    if not first.startswith("-") and not Path(first).exists():
        near = difflib.get_close_matches(first, list(COMMANDS), 1)
        if near:
            raise WordsFault(
                f"There is no command {first!r} and no file of this name.",
                None,
                f"Did you mean {near[0]}?",
            )
    return ["open", *words]


def _arranged(words: Sequence[str]) -> argparse.Namespace:
    chosen = parser().parse_args(_with_command(words))
    if chosen.command == "coefficients" and chosen.file is None:
        plants = chosen.plant or []
        if len(plants) < 2 or not Path(plants[-1]).exists():
            raise WordsFault("FILE must be given.", None, "See pedigreeview coefficients --help.")
        chosen.file = plants.pop()
    return chosen


def _do(chosen: argparse.Namespace) -> Answer | int:
    """Carry out one command; modules are loaded here so that --help is quick."""

    def network(path: str) -> PedigreeNetwork:
        net = read(path, founders_as=chosen.founders_as, fixation=chosen.fixation)
        for remark in net.book.remarks:
            say(remark)
        return net

    if chosen.command == "open":
        from pedigreeview.commands.open_book import open_book

        return open_book(
            chosen.file, network, founders_as=chosen.founders_as, fixation=chosen.fixation
        )
    if chosen.command == "summary":
        from pedigreeview.commands.summary import summary

        return summary(network(chosen.file))
    if chosen.command == "coefficients":
        from pedigreeview.commands.coefficients import coefficients

        if chosen.out is not None:
            from pedigreeview.commands.coefficients import write_coefficients

            return write_coefficients(
                network(chosen.file), chosen.out, chosen.plant or (), replace=chosen.replace
            )
        return coefficients(network(chosen.file), chosen.plant or ())
    if chosen.command == "relate":
        from pedigreeview.commands.relate import relate

        return relate(network(chosen.file), chosen.a, chosen.b)
    if chosen.command == "diagram":
        from pedigreeview.commands.diagram import diagram, format_of

        format_of(chosen.out)
        return diagram(
            network(chosen.file),
            chosen.out,
            focus=chosen.focus,
            up=chosen.up,
            down=chosen.down,
            finish=_finish(chosen),
        )
    if chosen.command == "check":
        from pedigreeview.commands.check import check

        return check(network(chosen.file))
    if chosen.command == "labels":
        from pedigreeview.commands.labels import labels

        return labels(
            network(chosen.file),
            chosen.out,
            chosen.kind,
            chosen.code or (),
            sheet=chosen.sheet,
            paper=chosen.paper,
            start=chosen.start,
            copies=chosen.copies,
            each=chosen.each,
            every=chosen.every,
            qr=chosen.qr,
            marks=not chosen.no_marks,
        )
    if chosen.command == "sheets":
        from pedigreeview.commands.labels import sheets

        return sheets(
            network(chosen.file),
            chosen.out,
            chosen.kind,
            chosen.code or (),
            date=chosen.date,
            paper=chosen.paper,
            landscape=chosen.landscape,
            rows=chosen.rows,
        )
    if chosen.command == "report":
        from pedigreeview.commands.report import report

        return report(
            network(chosen.file),
            chosen.out,
            chosen.code,
            line=chosen.line,
            without=chosen.without,
            paper=chosen.paper,
            colours=chosen.pedigree,
            by=chosen.by,
            date=chosen.date,
            caption=chosen.caption,
        )
    answer = exchange_words.do(chosen, network)
    assert answer is not None, chosen.command
    return answer


def _print(answer: Answer, *, as_json: bool) -> None:
    for message in answer.messages():
        say(message)
    if as_json and answer.document is not None:
        if answer.base and "base" not in answer.document:
            say(answer.base)
        write_document(answer.document)
    else:
        write_lines([*answer.text, *(["", answer.base] if answer.base else [])])


def main(arguments: Sequence[str] | None = None) -> int:
    """Run one command; gives the exit status."""
    prepare()
    words = sys.argv[1:] if arguments is None else arguments
    try:
        chosen = _arranged(words)
        answer = _do(chosen)
        if isinstance(answer, int):
            return answer
        _print(answer, as_json=getattr(chosen, "json", False))
        return answer.status
    except Fault as fault:
        for line in fault.lines():
            say(line)
    except (Cancelled, KeyboardInterrupt):
        say("Stopped.")
    except OSError as error:
        said = error.strerror or str(error)
        where = f"{error.filename}: " if error.filename else ""
        say(f"{where}The system refused: {said}.")
        if sys.stdout is not None:
            silence(sys.stdout)
    except Exception as error:
        if os.environ.get("PEDIGREEVIEW_DEBUG"):
            traceback.print_exc()
        say(
            f"This is a fault of the program, not yours: {type(error).__name__}: {error}. "
            "Please report it; PEDIGREEVIEW_DEBUG=1 in the environment shows where it happened."
        )
    return NOT_DONE
