"""README, help and CI say the same as the program."""

from __future__ import annotations

import re
import subprocess
from pathlib import Path

import pytest

from pedigreeview.book.checks import KINDS
from pedigreeview.book.records import RAISED, TABLES
from pedigreeview.cli import COMMANDS, command_parsers
from pedigreeview.exchange.table_writing import OFFICIAL


@pytest.fixture
def readme(root: Path) -> str:
    return (root / "README.md").read_text(encoding="utf-8")


def fences(text: str) -> list[tuple[str, str]]:
    """Language and body of every fenced block."""
    return re.findall(r"^```(\w*)\n(.*?)^```$", text, re.MULTILINE | re.DOTALL)


def section(text: str, title: str) -> str:
    found = re.search(rf"^## {re.escape(title)}\n(.*?)(?=^## |\Z)", text, re.M | re.S)
    assert found, title
    return found[1]


def test_the_job_stands_on_top_in_one_paragraph(readme: str) -> None:
    head, job = readme.split("\n\n")[:2]
    assert head == "# pedigreeview"
    assert "\n" not in job
    assert job.startswith("pedigreeview is a crossing book for people who cross plants by hand")


def test_the_first_two_blocks_run_and_test(readme: str) -> None:
    first, second, *rest = fences(readme)
    assert first[0] == second[0] == "sh"
    assert "sh" not in [language for language, _ in rest]
    assert first[1].rstrip().endswith("pedigreeview demo_pedigrees/two_peas_both_ways")
    assert second[1].rstrip().endswith("-m pytest -n auto --dist worksteal")
    for _, command in (first, second):
        assert command.startswith("python3 -m venv .venv && ")
        assert command.count("\n") == 1


def test_ci_runs_what_the_readme_says(root: Path, readme: str) -> None:
    done = subprocess.run(
        ["bash", str(root / ".ci" / "run"), "--show"],
        capture_output=True,
        text=True,
        check=True,
        stdin=subprocess.DEVNULL,
    )
    assert done.stdout == "".join(command for _, command in fences(readme)[:2])
    script = (root / ".ci" / "run").read_text(encoding="utf-8")
    assert "pip install" not in script


@pytest.mark.parametrize("name", ["README.md", "DEVELOPERS.md"])
def test_what_is_linked_is_there(root: Path, name: str) -> None:
    text = (root / name).read_text(encoding="utf-8")
    links = [link for link in re.findall(r"\]\(([^)]+)\)", text) if "://" not in link]
    assert [link for link in links if not (root / link).exists()] == []


def test_every_command_and_option_is_in_the_readme(readme: str) -> None:
    part = section(readme, "The command line")
    for name, parser in command_parsers().items():
        assert re.search(rf"^pedigreeview \[?{name}\b", part, re.M), name
        for action in parser._actions:
            for option in action.option_strings:
                assert option == "-h" or f"`{option}" in part or f"{option} " in part, option
    assert "`--version`" in part


def test_the_readme_names_no_option_that_is_not_there(readme: str) -> None:
    known = {"--version"}
    for parser in command_parsers().values():
        known |= {option for action in parser._actions for option in action.option_strings}
    named = set(re.findall(r"(?<![\w-])--[a-z][a-z-]*", section(readme, "The command line")))
    assert named <= known


def test_help_explains_every_word() -> None:
    for name, parser in command_parsers().items():
        assert parser.description
        assert COMMANDS[name].casefold() in parser.description.casefold()
        assert [action.dest for action in parser._actions if not action.help] == []


def test_every_kind_of_problem_is_documented_in_its_own_words(readme: str) -> None:
    part = section(readme, "What is checked")
    rows = dict(re.findall(r"^\| `(\w+)` \| (.*) \|$", part, re.M))
    assert rows == KINDS


def test_every_column_and_word_of_the_plant_table_is_documented(readme: str) -> None:
    part = section(readme, "The plant table")
    missing = [name for name in (*OFFICIAL, *RAISED) if f"`{name}`" not in part]
    assert missing == []


def test_every_table_of_the_folder_is_documented(readme: str) -> None:
    part = section(readme, "The Data Package folder")
    assert [name for name in ("book", *TABLES) if f"`{name}`" not in part] == []


def test_the_example_table_of_the_readme_can_be_read(readme: str, tmp_path: Path) -> None:
    import pedigreeview

    body = next(body for _, body in fences(section(readme, "The plant table")))
    (tmp_path / "plants.csv").write_text(body, encoding="utf-8")
    net = pedigreeview.read(tmp_path / "plants.csv")
    assert net.inbreeding("23-07") == 0.5
    assert len(net.reciprocal_pairs()) == 1
    assert net.generation_name("23-07") == "F2"


def test_the_developers_are_told_of_every_layer(root: Path) -> None:
    text = (root / "DEVELOPERS.md").read_text(encoding="utf-8")
    part = section(text, "Layers")
    folders = {path.name for path in (root / "pedigreeview").iterdir() if path.is_dir()}
    for name in folders - {"__pycache__", "resources", "demo_pedigrees"}:
        assert re.search(rf"^{name}\b|, {name}\b", part, re.M), name


def test_the_modules_that_developers_are_sent_to_are_there(root: Path) -> None:
    text = (root / "DEVELOPERS.md").read_text(encoding="utf-8")
    named = set(re.findall(r"`((?:[a-z_]+/)*[a-z_]+\.py)`", text)) - {
        "book/undo.py",
        "tests/book/test_undo.py",
    }
    there = [n for n in named if (root / n).exists() or (root / "pedigreeview" / n).exists()]
    assert sorted(named - set(there)) == []
