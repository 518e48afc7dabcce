"""Brings the `.ts` files up to what the code says: new texts come in unfinished, old ones go.

    .venv/bin/python tests/translations/make_translations.py          # update every language
    .venv/bin/python tests/translations/make_translations.py --missing de   # as JSON, to translate
    .venv/bin/python tests/translations/make_translations.py --fill de FILE.json

The texts are read from the syntax tree: `self.tr("...")`, `window.tr("...")`, `_tr("...")` and
`QCoreApplication.translate("Context", "...")` in `pedigreeview/window`.
"""

from __future__ import annotations

import argparse
import ast
import json
import sys
from collections.abc import Iterator
from pathlib import Path
from xml.sax.saxutils import escape

ROOT = Path(__file__).resolve().parents[2]
CODE = ROOT / "pedigreeview" / "window"
FILES = ROOT / "resources" / "translations"

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


def write(code: str, told: dict[str, str]) -> None:
    """Write a `.ts` file; a text without a translation is marked unfinished."""
    lines = [
        '<?xml version="1.0" encoding="utf-8"?>',
        "<!DOCTYPE TS>",
        f'<TS version="2.1" language="{code}" sourcelanguage="en">',
        "<context>",
        "    <name>Window</name>",
    ]
    for text, places in sorted(texts().items()):
        lines.append("    <message>")
        lines += [f'        <location filename="../../{place}"/>' for place in places]
        lines.append(f"        <source>{escape(text)}</source>")
        held = told.get(text, "")
        mark = "" if held else ' type="unfinished"'
        lines.append(f"        <translation{mark}>{escape(held)}</translation>")
        lines.append("    </message>")
    lines += ["</context>", "</TS>", ""]
    (FILES / f"{code}.ts").write_text("\n".join(lines), encoding="utf-8")


def main() -> None:
    from pedigreeview.window.translating import read_texts

    parser = argparse.ArgumentParser(description=__doc__.splitlines()[0])
    parser.add_argument("--missing", metavar="LANGUAGE")
    parser.add_argument("--fill", nargs=2, metavar=("LANGUAGE", "FILE"))
    asked = parser.parse_args()
    if asked.missing:
        path = FILES / f"{asked.missing}.ts"
        held = read_texts(path) if path.exists() else {}
        left = {text: "" for text in sorted(texts()) if text not in held}
        print(json.dumps(left, ensure_ascii=False, indent=1))
        return
    if asked.fill:
        code, file = asked.fill
        path = FILES / f"{code}.ts"
        held = read_texts(path) if path.exists() else {}
        write(code, {**held, **json.loads(Path(file).read_text(encoding="utf-8"))})
        return
    for path in sorted(FILES.glob("*.ts")):
        write(path.stem, read_texts(path))


if __name__ == "__main__":
    main()
