"""A report as one HTML file: the pedigree inside as SVG, photos inside, nothing fetched.

Everything that comes from the book is escaped.  The page is well-formed XML too, reads in order
without its style sheet, and prints with rows and pictures kept whole.  A policy in its head keeps a
browser from running or loading anything.
"""

from __future__ import annotations

import base64
import re
from collections.abc import Iterable
from html import escape
from pathlib import Path
from typing import TYPE_CHECKING

from pedigreeview.book.faults import Fault, Place
from pedigreeview.exchange.writing import replace_file
from pedigreeview.reports.report_model import Facts, Item, PhotoOf, Picture, Report, Table, Text
from pedigreeview.reports.report_words import tr

if TYPE_CHECKING:
    from pedigreeview.drawing.worker import Tick
    from pedigreeview.network import PedigreeNetwork
    from pedigreeview.reports.report_picture import LinePicture

__all__ = ["report_html", "save_report_html"]

_UNFIT = re.compile("[\x00-\x08\x0b\x0c\x0e-\x1f\x7f\ud800-\udfff\ufffe\uffff]")
_TURNING = re.compile("[\u202a-\u202e\u2066-\u2069\u200e\u200f]")
"""Marks that turn the direction of what follows, also beyond the end of a code."""

_APART = re.compile("\u2068([^\u2066-\u2069]*)\u2069")

_STYLE = """
body { font: 16px/1.5 'Source Sans 3', 'Segoe UI', 'Helvetica Neue', 'Noto Sans', sans-serif;
  color: #1d1c19; background: #fff; max-width: 58rem; margin: 2rem auto; padding: 0 1.2rem; }
h1 { font-size: 2rem; line-height: 1.2; margin: 0 0 .3rem; }
h2 { font-size: 1.3rem; margin: 2.2rem 0 .5rem; border-top: 1px solid #8a877d; padding-top: .8rem; }
h3 { font-size: 1rem; margin: 1.2rem 0 .2rem; }
p { margin: .4rem 0; max-width: 46rem; }
.soft { color: #5b584f; font-size: .9rem; }
dl { display: grid; grid-template-columns: minmax(8rem, 14rem) 1fr; gap: .15rem 1rem; margin: .4rem 0; }
dt { color: #5b584f; } dd { margin: 0; }
dt, dd, td, th, p { overflow-wrap: anywhere; }
.wide { overflow-x: auto; }
table { border-collapse: collapse; margin: .6rem 0; font-size: .92rem; }
th, td { text-align: start; vertical-align: top; padding: .25rem .7rem; border-bottom: 1px solid #bbb8ae; }
th { background: #efede6; } .n { text-align: end; font-variant-numeric: tabular-nums; }
figure { margin: .8rem 0; } figure svg { width: 100%; height: auto; }
figure img { max-width: 100%; max-height: 36rem; } figcaption { color: #5b584f; font-size: .9rem; }
@media print {
  body { font-size: 10pt; margin: 0; max-width: none; padding: 0; }
  h1, h2, h3 { break-after: avoid; } tr, figure, dt, dd { break-inside: avoid; }
  thead { display: table-header-group; } .wide { overflow: visible; }
  p { orphans: 3; widows: 3; }
}
@page { margin: 18mm; }
"""  # noqa: E501 - a style sheet reads better by rule than by width


def _text(words: str) -> str:
    """Words as they may stand in the page: escaped, without what no XML can hold or what turns
    the direction of the rest."""
    return escape(_TURNING.sub("", _UNFIT.sub("\ufffd", words)), quote=True)


def _shown(words: str) -> str:
    """Words of an element: what was kept apart from the direction around it is so here as well."""
    parts = _APART.split(words)
    return "".join(
        f"<bdi>{_text(part)}</bdi>" if at % 2 else _text(part) for at, part in enumerate(parts)
    )


def report_html(
    net: PedigreeNetwork,
    report: Report,
    *,
    theme: str = "light",
    placed: LinePicture | None = None,
    tick: Tick | None = None,
) -> str:
    """The whole page as text.

    theme : of the pedigree: 'light', or 'grey' with founders told apart by pattern
    placed : the pedigree where it was placed before, in this theme
    """
    cover = report.cover
    # The language of the words, and which way it is written, are translated with them.
    tongue = tr('lang="en" dir="ltr"')
    lines = [
        "<!DOCTYPE html>",
        f'<html xmlns="http://www.w3.org/1999/xhtml" {tongue}>',
        "<head>",
        '<meta charset="utf-8"/>',
        '<meta http-equiv="Content-Security-Policy" content="default-src \'none\'; '
        "img-src data:; style-src 'unsafe-inline'\"/>",
        '<meta name="viewport" content="width=device-width, initial-scale=1"/>',
        '<meta name="generator" content="pedigreeview"/>',
        f"<title>{_text(report.title)}</title>",
        f"<style>{_STYLE}</style>",
        "</head>",
        "<body>",
        "<header>",
        f"<h1>{_shown(report.title)}</h1>",
        *_paragraphs([report.below], "soft"),
        *_paragraphs([", ".join(part for part in (*cover.person, cover.date) if part)]),
        *_paragraphs(cover.caption),
        "</header>",
        "<main>",
    ]
    for at, section in enumerate(report.sections):
        if tick is not None:
            tick(at, len(report.sections), "Parts")
        lines.append(f'<section id="{_text(section.part)}">')
        lines.append(f"<h2>{_shown(section.heading)}</h2>")
        for item in section.items:
            lines += _item(net, item, theme, placed)
        lines.append("</section>")
    lines += ["</main>", "</body>", "</html>", ""]
    return "\n".join(lines)


def _paragraphs(words: Iterable[str], kind: str = "") -> list[str]:
    named = f' class="{kind}"' if kind else ""
    return [f"<p{named}>{_shown(one)}</p>" for one in words if one.strip()]


def _item(net: PedigreeNetwork, item: Item, theme: str, placed: LinePicture | None) -> list[str]:
    if isinstance(item, Text):
        if item.strong:
            return [f"<h3>{_shown(item.words)}</h3>"]
        return _paragraphs([item.words], "soft" if item.soft else "")
    if isinstance(item, Facts):
        # What the book holds keeps the direction of its own script to itself.
        rows = [
            f"<dt>{_text(name)}</dt><dd><bdi>{_shown(value)}</bdi></dd>"
            for name, value in item.rows
        ]
        return ["<dl>", *rows, "</dl>"]
    if isinstance(item, Table):
        return _table(item)
    if isinstance(item, Picture):
        from pedigreeview.reports.report_picture import line_picture, picture_svg

        made = placed or line_picture(net, item, theme)
        drawn = picture_svg(made, _UNFIT.sub("\ufffd", item.words))
        return ["<figure>", drawn, f"<figcaption>{_shown(item.words)}</figcaption>", "</figure>"]
    return _photo(net, item)


def _table(table: Table) -> list[str]:
    def row(cells: Iterable[str], start: str, end: str) -> str:
        held = []
        for at, cell in enumerate(cells):
            right = ' class="n"' if at in table.numbers else ""
            # Each cell keeps the direction of its own script to itself.
            held.append(f"<{start}{right}><bdi>{_shown(cell)}</bdi></{end}>")
        return f"<tr>{''.join(held)}</tr>"

    head = row(table.headings, 'th scope="col"', "th")
    body = [row(cells, "td", "td") for cells in table.rows]
    return [
        '<div class="wide"><table border="0" cellpadding="4">',
        f"<thead>{head}</thead>",
        "<tbody>",
        *body,
        "</tbody>",
        "</table></div>",
    ]


def _photo(net: PedigreeNetwork, photo: PhotoOf) -> list[str]:
    from pedigreeview.reports.report_photos import jpeg_of, photo_image

    image = photo_image(net.book, photo.name)
    if image is None:
        missing = tr("The photo {} is not with the book or cannot be shown.").format(photo.name)
        return _paragraphs([f"{photo.caption}. {missing}"], "soft")
    data = base64.b64encode(jpeg_of(image)).decode("ascii")
    return [
        "<figure>",
        f'<img alt="{_text(photo.caption)}" src="data:image/jpeg;base64,{data}"/>',
        f"<figcaption>{_shown(photo.caption)}</figcaption>",
        "</figure>",
    ]


def save_report_html(
    path: str | Path,
    net: PedigreeNetwork,
    report: Report,
    *,
    theme: str = "light",
    placed: LinePicture | None = None,
    tick: Tick | None = None,
) -> Path:
    """Write the page; beside its place first, then moved there.

    Raises
    ------
    Fault : a name that does not end in .html, or a file that cannot be written
    """
    path = Path(path)
    if path.suffix.lower() not in (".html", ".htm"):
        raise Fault(
            "This report is written as HTML.",
            Place(file=str(path)),
            "Choose a name that ends in .html.",
        )
    text = report_html(net, report, theme=theme, placed=placed, tick=tick)
    with replace_file(path) as beside:
        beside.write_text(text, encoding="utf-8", newline="\n")
    return path
