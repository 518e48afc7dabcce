"""What a folder holds beside the tables stays with the book, wherever it is written."""

from __future__ import annotations

import json
import os
from pathlib import Path
from typing import Any

import pytest

from pedigreeview.book.book import Book
from pedigreeview.book.faults import Fault
from pedigreeview.book.records import Photo, Plant
from pedigreeview.exchange import data_package

PICTURE = b"\x89PNG\r\n\x1a\nrest"


@pytest.fixture
def folder(tmp_path: Path) -> Path:
    book = Book()
    book.settings.name = "Two Peas"
    book.add(Plant("TP", extra={"height": "3"}))
    path = tmp_path / "book"
    data_package.write(book, path)
    return path


def described(folder: Path) -> dict[str, Any]:
    held: dict[str, Any] = json.loads((folder / "datapackage.json").read_text(encoding="utf-8"))
    return held


def change(folder: Path, **changes: Any) -> None:
    text = json.dumps(described(folder) | changes)
    (folder / "datapackage.json").write_text(text, encoding="utf-8")


def listed(folder: Path, **entry: Any) -> None:
    change(folder, resources=[*described(folder)["resources"], entry])


def of_file(folder: Path, path: str) -> dict[str, Any]:
    return next(item for item in described(folder)["resources"] if item.get("path") == path)


def test_what_was_said_of_the_package_goes_along(folder: Path, tmp_path: Path) -> None:
    said = {
        "licenses": [{"name": "CC0-1.0"}],
        "contributors": [{"title": "Ann"}],
        "created": "2021-05-17T00:00:00Z",
        "description": "Peas \ud800 and more",
        "name": "my-own-name",
        "title": "My own title",
    }
    change(folder, **said)
    data_package.write(data_package.read(folder), tmp_path / "copy")
    held = described(tmp_path / "copy")
    assert {key: held[key] for key in said} == said
    # The target's own words are not the book's.
    other = tmp_path / "other"
    data_package.write(Book(), other)
    change(other, licenses=[{"name": "other"}], homepage="https://example.org")
    data_package.write(data_package.read(folder), other)
    assert described(other)["licenses"] == said["licenses"]
    assert "homepage" not in described(other)


def test_a_title_that_is_the_book_s_name_follows_it(folder: Path, tmp_path: Path) -> None:
    book = data_package.read(folder)
    book.settings.name = "Three Peas"
    data_package.write(book, tmp_path / "copy")
    held = described(tmp_path / "copy")
    assert (held["name"], held["title"]) == ("three-peas", "Three Peas")


def test_what_was_said_of_a_table_and_its_columns_goes_along(folder: Path, tmp_path: Path) -> None:
    resources = described(folder)["resources"]
    plants = next(item for item in resources if item["name"] == "plants")
    plants.update(description="All plants", sources=[{"title": "garden book"}], hash="stale")
    fields = {item["name"]: item for item in plants["schema"]["fields"]}
    fields["fixation"]["description"] = "1 is a pure line"
    fields["height"].update(type="number", unit="m")
    plants["schema"]["note"] = "mine"
    rain = {
        "name": "rain", "path": "rain.csv", "title": "Rain",
        "schema": {"fields": [{"name": "mm", "type": "number"}]},
    }  # fmt: skip
    change(folder, resources=[*resources, rain])
    (folder / "rain.csv").write_text("mm\n3\n", encoding="utf-8")
    data_package.write(data_package.read(folder), tmp_path / "copy")
    copied = of_file(tmp_path / "copy", "plants.csv")
    assert (copied["description"], copied["sources"]) == (plants["description"], plants["sources"])
    assert "hash" not in copied
    again = {item["name"]: item for item in copied["schema"]["fields"]}
    assert again["fixation"] == fields["fixation"]
    assert again["height"] == {"name": "height", "type": "number", "unit": "m"}
    assert copied["schema"]["note"] == "mine"
    assert of_file(tmp_path / "copy", "rain.csv") == rain


def test_a_picture_and_other_files_go_along(folder: Path, tmp_path: Path) -> None:
    (folder / "plan.png").write_bytes(PICTURE)
    (folder / "old.csv").write_bytes(b"\x00\x01")
    listed(folder, name="plan", path="plan.png", title="Plan of the beds")
    listed(folder, name="old", path="old.csv")
    listed(folder, name="inline", data=[1, 2])
    listed(folder, name="far", path="https://example.org/far.csv")
    book = data_package.read(folder)
    assert any("'plan.png' is no table" in remark for remark in book.remarks)
    assert data_package.lost(book) == []
    data_package.write(book, tmp_path / "copy")
    assert (tmp_path / "copy" / "plan.png").read_bytes() == PICTURE
    assert (tmp_path / "copy" / "old.csv").read_bytes() == b"\x00\x01"
    copy = described(tmp_path / "copy")
    assert copy["profile"] == "data-package"
    assert copy["resources"] == described(folder)["resources"]
    # Written into its own folder and over the copy, all stays.
    data_package.write(book, folder)
    data_package.write(book, tmp_path / "copy")
    assert described(folder) == copy == described(tmp_path / "copy")


def test_what_lies_outside_is_said_to_be_lost(folder: Path, tmp_path: Path) -> None:
    (tmp_path / "secret.png").write_bytes(b"secret")
    (folder / "link.png").symlink_to(tmp_path / "secret.png")
    (folder / "sub").mkdir()
    (folder / "sub" / "a.png").write_bytes(PICTURE)
    for path in ("../secret.png", "link.png", "sub/a.png", "gone.png", "datapackage.json"):
        listed(folder, name="x", path=path)
    book = data_package.read(folder)
    assert len(data_package.lost(book)) == 5
    assert "'../secret.png'" in data_package.lost(book)[0]
    data_package.write(book, tmp_path / "copy")
    assert sorted(os.listdir(tmp_path / "copy")) == ["book.csv", "datapackage.json", "plants.csv"]
    assert len(described(tmp_path / "copy")["resources"]) == 2
    before = described(folder)
    data_package.write(book, folder)
    assert described(folder)["resources"] == before["resources"]


def test_a_listed_photo_goes_along(folder: Path, tmp_path: Path) -> None:
    (folder / "photos").mkdir()
    (folder / "photos" / "a.jpg").write_bytes(PICTURE)
    listed(folder, name="a", path="photos/a.jpg")
    book = data_package.read(folder)
    book.add(Photo("a.jpg", "TP"))
    data_package.write(book, tmp_path / "copy")
    assert (tmp_path / "copy" / "photos" / "a.jpg").read_bytes() == PICTURE
    assert of_file(tmp_path / "copy", "photos/a.jpg")
    assert data_package.lost(book) == []


def test_a_failed_writing_leaves_no_folder(
    folder: Path, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    (folder / "photos").mkdir()
    (folder / "photos" / "a.jpg").write_bytes(PICTURE)
    book = data_package.read(folder)
    book.add(Photo("a.jpg"))

    def full(*_: Any) -> None:
        raise OSError(28, "No space left on device")

    for name in ("os.fsync", "os.replace", "shutil.copyfile"):
        with monkeypatch.context() as patch:
            patch.setattr(name, full)
            with pytest.raises(Fault, match="No space left"):
                data_package.write(book, tmp_path / "new")
        assert sorted(os.listdir(tmp_path)) == ["book"]
    book.plants["TP"].name = "\ud800"
    with pytest.raises(Fault, match="cannot be written as UTF-8"):
        data_package.write(book, tmp_path / "new")
    assert sorted(os.listdir(tmp_path)) == ["book"]


def test_a_failure_half_way_takes_a_new_folder_back(
    folder: Path, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    book = data_package.read(folder)
    moved = os.replace
    calls: list[Any] = []

    def second(*places: Any) -> None:
        calls.append(places)
        if len(calls) == 2:
            raise OSError(5, "Input/output error")
        moved(*places)

    monkeypatch.setattr(os, "replace", second)
    with pytest.raises(Fault, match="Input/output"):
        data_package.write(book, tmp_path / "new")
    assert sorted(os.listdir(tmp_path)) == ["book"]
