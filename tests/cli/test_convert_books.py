"""`convert` to a book's own file and back."""

from __future__ import annotations

from pathlib import Path

import pytest

from pedigreeview.cli import main
from pedigreeview.exchange import read_book
from pedigreeview.places import demos
from tests.book.garden import content


def test_a_demo_goes_to_a_book_and_back(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    demo = next(path for path in sorted(demos().iterdir()) if (path / "datapackage.json").exists())
    made, back = tmp_path / "b.pedbook", tmp_path / "back"
    assert main(["convert", str(demo), str(made)]) in (0, 1)
    assert f"Wrote {made} (book)" in capsys.readouterr().out
    assert main(["convert", str(made), str(back)]) in (0, 1)
    assert content(read_book(back)) == content(read_book(demo)) == content(read_book(made))
    for file in demo.glob("*.csv"):
        assert (back / file.name).read_bytes() == file.read_bytes()
    assert main(["convert", str(demo), str(made)]) == 2
    assert "--replace" in capsys.readouterr().err
    assert main(["convert", str(demo), str(made), "--replace"]) in (0, 1)
    assert main(["summary", str(made)]) in (0, 1)
