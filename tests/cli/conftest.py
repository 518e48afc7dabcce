"""The command line as a process, and in this process where only the result matters."""

from __future__ import annotations

import json
import os
import subprocess
import sys
from collections.abc import Callable
from dataclasses import dataclass
from pathlib import Path
from typing import Any

import pytest

from pedigreeview.cli import main

BOTH_WAYS = """\
plant,seed_parent,pollen_parent
F2,F1,F1
F1,TP,BA
TP,,
BA,,
R1,BA,TP
BC,TP,F1
"""
"""Two founders that say nothing, crossed both ways, a selfing and a backcross; progeny first."""

LOOP = """\
plant,seed_parent,pollen_parent
TP,,
BA,,
F1,TP,BA
X,Y,TP
Y,X,BA
Z,Y,F1
"""


@dataclass
class Ended:
    """How a run of the command ended."""

    status: int
    out: str
    err: str

    @property
    def document(self) -> Any:
        return json.loads(self.out)


def environment(**changes: str) -> dict[str, str]:
    """That of the tests without a screen; PYTHONPATH finds the project from any folder."""
    held = {name: value for name, value in os.environ.items() if name != "QT_QPA_PLATFORM"}
    held["PYTHONPATH"] = str(Path(__file__).resolve().parent.parent.parent)
    return {**held, **changes}


@pytest.fixture
def process(tmp_path: Path) -> Callable[..., Ended]:
    """Run the command as a process in an empty folder."""

    def run(*words: str | Path, encoding: str = "utf-8", **changes: str) -> Ended:
        done = subprocess.run(
            [sys.executable, "-m", "pedigreeview", *map(str, words)],
            cwd=tmp_path,
            env=environment(**changes),
            stdin=subprocess.DEVNULL,
            capture_output=True,
            timeout=120,
        )
        return Ended(done.returncode, done.stdout.decode(encoding), done.stderr.decode(encoding))

    return run


@pytest.fixture
def call(
    capsys: pytest.CaptureFixture[str], monkeypatch: pytest.MonkeyPatch
) -> Callable[..., Ended]:
    """Run the command in this process."""

    def run(*words: str | Path) -> Ended:
        capsys.readouterr()
        try:
            status = main([str(word) for word in words])
        except SystemExit as left:
            status = int(left.code or 0)
        said = capsys.readouterr()
        return Ended(status, said.out, said.err)

    return run


@pytest.fixture
def table(tmp_path: Path) -> Callable[..., Path]:
    """Write a plant table."""

    def write(text: str = BOTH_WAYS, name: str = "peas.csv", encoding: str = "utf-8") -> Path:
        path = tmp_path / name
        path.write_bytes(text.encode(encoding))
        return path

    return write


@pytest.fixture
def loop(table: Callable[..., Path]) -> Path:
    """A table with a pedigree loop."""
    return table(LOOP, "loop.csv")
