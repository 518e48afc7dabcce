"""Brings the `.ts` files up to what the code says: new texts come in unfinished, old ones go.

    .venv/bin/python tests/translations/make_translations.py          # update every language
    .venv/bin/python tests/translations/make_translations.py --missing de   # as JSON, to translate
    .venv/bin/python tests/translations/make_translations.py --fill de FILE.json

The texts are read from the syntax tree: `self.tr("...")`, `window.tr("...")`, `_tr("...")` and
`QCoreApplication.translate("Context", "...")` in `pedigreeview/window`; and, in a context of their
own, the sentences of the layers below, with `{}` for what an f-string fills in, the words of papers
(`tr("...")` in `pedigreeview/reports`) and what `resources/crops.json` says in words.
"""

from __future__ import annotations

import argparse
import ast
import json
import re
import sys
from collections.abc import Iterator
from pathlib import Path
from xml.sax.saxutils import escape

ROOT = Path(__file__).resolve().parents[2]
PACKAGE = ROOT / "pedigreeview"
CODE = PACKAGE / "window"
LAYERS = ("book", "network", "planning", "exchange", "drawing", "reports")
_PLAIN = (
    "chances.py", "errands.py", "forms/doubt.py", "forms/record_field.py", "importing/halt.py",
    "importing/source.py",
)  # fmt: skip
"""Modules of the window whose sentences are made as below it, and told by the labels."""
FILES = ROOT / "resources" / "translations"
CROPS = ROOT / "resources" / "crops.json"

_SEVERAL_WORDS = re.compile(
    r"[A-Za-z]{2,} +[A-Za-z]{2,}|[A-Za-z]{2,} \{\}|\{\} [a-z]{2,}|^,? [a-z]{2,}|[A-Za-z]{2,} $"
    r"|\{\} \{\}[a-z]{3,}|[A-Za-z]{3,}[,:;] \{\}|[a-z]{3,}: [a-z]{3,}"
)
_FILLED_IN = re.compile(r"(?=.*\{\})(?=.*(?<![\w}])[A-Za-z]).*[.):]\Z")
_SAID_ALONE = {
    "Founders", "Open-pollinated", "Selfing", "drawn", "every", "exact", "families", "mixed",
    "permutation", "progeny", "stated", "taken", "unequal-variance t", "varieties",
}  # fmt: skip
"""Texts of one word that sentences are filled with; what no template holds is else taken for the
name of a column or of a kind."""
_OF_THE_STORE = re.compile(r"\(\?|\^|<|(PRAGMA|SELECT|CREATE|INSERT|UPDATE|DELETE|DROP|BEGIN)\b")
_SHOW_NOTHING = {
    "ValueError", "TypeError", "KeyError", "AssertionError", "RuntimeError", "compile", "execute",
    "executemany", "get", "pop", "getattr", "open", "encode", "decode", "replace", "split",
    "startswith", "endswith", "strip", "join", "search", "match", "fullmatch", "sub", "findall",
}  # fmt: skip
_NO_SENTENCES = {
    "rescue.py", "schema.py", "version_1.py", "migrations.py", "connections.py", "writing_rows.py",
    "reading_rows.py", "undo.py", "backups.py", "strangers.py",
    "graph_files.py",
}  # fmt: skip
_READ_NOT_SAID = {"import_headings.py": "_WORDS", "one_row_per_cross.py": "_STATES"}
"""Words that a foreign table may hold, by the name under which a module keeps them."""

sys.path.insert(0, str(ROOT))


def texts_of(path: Path) -> Iterator[tuple[str, int]]:
    """Every text that one module gives to be translated, with its line."""
    tree = ast.parse(path.read_text(encoding="utf-8"))
    for node in ast.walk(tree):
        if not isinstance(node, ast.Call):
            continue
        called = node.func
        name = called.attr if isinstance(called, ast.Attribute) else getattr(called, "id", "")
        at = 1 if name == "translate" else 0
        if name not in ("tr", "_tr", "translate") or len(node.args) <= at:
            continue
        text = node.args[at]
        if isinstance(text, ast.Constant) and isinstance(text.value, str) and text.value:
            yield text.value, text.lineno


def texts() -> dict[str, list[str]]:
    """All texts of the window, each with the places where it stands, in the order of the code."""
    found: dict[str, list[str]] = {}
    for path in sorted(CODE.rglob("*.py")):
        place = path.relative_to(ROOT).as_posix()
        for text, _ in texts_of(path):
            places = found.setdefault(text, [])
            if place not in places:
                places.append(place)
    return found


def _template(node: ast.AST) -> str | None:
    """A text with {} for what is filled in; None for what is no text."""
    if isinstance(node, ast.Constant) and isinstance(node.value, str):
        return node.value
    if isinstance(node, ast.JoinedStr):
        return "".join(
            str(part.value) if isinstance(part, ast.Constant) else "{}" for part in node.values
        )
    return None


def _sentence_like(text: str) -> bool:
    # A text of lines with braces in it is a style sheet, one with =" a part of a page.
    style = ("\n" in text and "{" in text.replace("{}", "")) or '="' in text
    made = bool(_SEVERAL_WORDS.search(text) or _FILLED_IN.match(text))
    return made and not style and not _OF_THE_STORE.match(text)


def _not_for_people(tree: ast.Module, read: str = "") -> set[int]:
    """Docstrings, parts of f-strings, and what is handed to functions that show nothing.

    read : name of a table of words that are read and never said
    """
    found: set[int] = set()
    for node in ast.walk(tree):
        body = getattr(node, "body", None)
        for item in body if isinstance(body, list) else ():
            if isinstance(item, ast.Expr) and isinstance(item.value, ast.Constant):
                found.add(id(item.value))
        if isinstance(node, ast.AnnAssign | ast.Assign) and node.value is not None:
            target = node.target if isinstance(node, ast.AnnAssign) else node.targets[0]
            if read and getattr(target, "id", "") == read:
                found |= {id(part) for part in ast.walk(node.value)}
        if isinstance(node, ast.JoinedStr):
            found |= {id(part) for part in node.values if isinstance(part, ast.Constant)}
            specs = [part.format_spec for part in node.values if hasattr(part, "format_spec")]
            found |= {id(part) for spec in specs if spec for part in ast.walk(spec)}
        if isinstance(node, ast.Call):
            called = node.func
            name = called.attr if isinstance(called, ast.Attribute) else getattr(called, "id", "")
            if isinstance(called, ast.Attribute) and name == "tr":
                # A text of the window, which has a context of its own.
                found |= {id(item) for item in node.args}
            if name in _SHOW_NOTHING:
                # What is got where nothing is found may well be shown.
                args = node.args[:1] if name in ("get", "pop") else node.args
                found |= {id(part) for item in args for part in ast.walk(item)}
    return found


def engine_texts() -> dict[str, list[str]]:
    """Templates of sentences of the layers below the window, with the places where they stand."""
    found: dict[str, list[str]] = {}
    for paths in [
        *(sorted((PACKAGE / layer).rglob("*.py")) for layer in LAYERS),
        [CODE / name for name in _PLAIN],
    ]:
        for path in paths:
            if path.name in _NO_SENTENCES:
                continue
            tree = ast.parse(path.read_text(encoding="utf-8"))
            left_out = _not_for_people(tree, _READ_NOT_SAID.get(path.name, ""))
            place = path.relative_to(ROOT).as_posix()
            asked = {
                id(node.args[0])
                for node in ast.walk(tree)
                if isinstance(node, ast.Call)
                and getattr(node.func, "id", "") in ("tr", "tell")
                and node.args
            }
            for node in ast.walk(tree):
                text = None if id(node) in left_out else _template(node)
                if text and (id(node) in asked or text in _SAID_ALONE or _sentence_like(text)):
                    places = found.setdefault(text, [])
                    if place not in places:
                        places.append(place)
    from pedigreeview.book.checks import KINDS

    others = [(text, CROPS.relative_to(ROOT).as_posix()) for text in crop_texts()]
    others += [(kind.replace("_", " "), "pedigreeview/book/checks.py") for kind in KINDS]
    for text, place in others:
        places = found.setdefault(text, [])
        if place not in places:
            places.append(place)
    return found


def crop_texts() -> Iterator[str]:
    """What the facts of the crops say in words; works that are cited keep their own titles."""
    held = json.loads(CROPS.read_text(encoding="utf-8"))

    def walk(what: object, key: str) -> Iterator[str]:
        if isinstance(what, dict):
            for name, value in what.items():
                yield from walk(value, name)
        elif isinstance(what, list):
            for value in what:
                yield from walk(value, key)
        elif isinstance(what, str) and (
            key in ("name", "note", "text") or (key == "source" and not re.search("[0-9]", what))
        ):
            yield what

    yield from walk(held["cautions"], "")
    yield from walk(held["crops"], "")


def write(code: str, told: dict[str, str], engine: dict[str, str]) -> None:
    """Write a `.ts` file; a text without a translation is marked unfinished."""
    lines = [
        '<?xml version="1.0" encoding="utf-8"?>',
        "<!DOCTYPE TS>",
        f'<TS version="2.1" language="{code}" sourcelanguage="en">',
    ]
    for context, wanted, held in (("Window", texts(), told), ("Engine", engine_texts(), engine)):
        lines += ["<context>", f"    <name>{context}</name>"]
        for text, places in sorted(wanted.items()):
            lines.append("    <message>")
            lines += [f'        <location filename="../../{place}"/>' for place in places]
            lines.append(f"        <source>{escape(text)}</source>")
            new = held.get(text, "")
            mark = "" if new else ' type="unfinished"'
            lines.append(f"        <translation{mark}>{escape(new)}</translation>")
            lines.append("    </message>")
        lines.append("</context>")
    lines += ["</TS>", ""]
    (FILES / f"{code}.ts").write_text("\n".join(lines), encoding="utf-8")


def main() -> None:
    from pedigreeview.window.translating import ENGINE, read_texts

    parser = argparse.ArgumentParser(description=__doc__.splitlines()[0])
    parser.add_argument("--missing", metavar="LANGUAGE")
    parser.add_argument("--fill", nargs=2, metavar=("LANGUAGE", "FILE"))
    parser.add_argument("--engine", action="store_true", help="the sentences below the window")
    asked = parser.parse_args()

    def held(code: str) -> tuple[dict[str, str], dict[str, str]]:
        path = FILES / f"{code}.ts"
        return (read_texts(path), read_texts(path, ENGINE)) if path.exists() else ({}, {})

    if asked.missing:
        have = held(asked.missing)[asked.engine]
        wanted = engine_texts() if asked.engine else texts()
        left = {text: "" for text in sorted(wanted) if text not in have}
        print(json.dumps(left, ensure_ascii=False, indent=1))
        return
    if asked.fill:
        code, file = asked.fill
        have = held(code)
        have[asked.engine].update(json.loads(Path(file).read_text(encoding="utf-8")))
        write(code, *have)
        return
    for path in sorted(FILES.glob("*.ts")):
        write(path.stem, *held(path.stem))


if __name__ == "__main__":
    main()
