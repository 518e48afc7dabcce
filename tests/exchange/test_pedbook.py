"""The book's own file among the formats: to a folder and back nothing is lost."""

from __future__ import annotations

import json
import os
from pathlib import Path

import pytest
from hypothesis import HealthCheck, given, settings

from pedigreeview.book.book import Book
from pedigreeview.book.book_file import BookFile
from pedigreeview.book.file_faults import BookExists, NotABook
from pedigreeview.book.records import Photo, Plant
from pedigreeview.exchange import data_package, pedbook, plant_table, read_book
from tests.book.garden import content
from tests.exchange.test_data_package import books


def bytes_of(folder: Path) -> dict[str, bytes]:
    return {
        str(path.relative_to(folder)): path.read_bytes()
        for path in folder.rglob("*")
        if path.is_file()
    }


@settings(max_examples=6, suppress_health_check=list(HealthCheck))
@given(book=books())
def test_folder_to_file_to_folder(book: Book, tmp_path_factory: pytest.TempPathFactory) -> None:
    room = tmp_path_factory.mktemp("both")
    data_package.write(book, room / "one")
    read = data_package.read(room / "one")
    pedbook.write(read, room / "b.pedbook").close()
    held = pedbook.read(room / "b.pedbook")
    assert content(held) == content(read)
    pedbook.write_folder(held, room / "two")
    assert bytes_of(room / "two") == bytes_of(room / "one")
    assert content(data_package.read(room / "two")) == content(read)


def folder_with_files(folder: Path) -> Path:
    book = Book()
    book.add(Plant("A", extra={"height": "3"}))
    book.add(Photo("a.jpg", "A"))
    data_package.write(book, folder)
    (folder / "photos").mkdir()
    (folder / "photos" / "a.jpg").write_bytes(b"\xff\xd8picture")
    (folder / "plan.png").write_bytes(b"\x89PNG plan")
    (folder / "rain.csv").write_text("mm\n3\n")
    path = folder / "datapackage.json"
    described = json.loads(path.read_text())
    described["resources"] += [
        {"name": "plan", "path": "plan.png"},
        {"name": "rain", "path": "rain.csv", "title": "Rain"},
        {"name": "far", "path": "https://example.org/far.csv"},
    ]
    described["licenses"] = [{"name": "CC0-1.0"}]
    path.write_text(json.dumps(described))
    return folder


def test_photos_and_other_files_go_along(tmp_path: Path) -> None:
    folder = folder_with_files(tmp_path / "one")
    book = read_book(folder)
    assert pedbook.lost(book) == []
    with pedbook.write(book, tmp_path / "b.pedbook") as file:
        assert file.file("plan.png") == b"\x89PNG plan"
        assert file.file("photos/a.jpg") == b"\xff\xd8picture"
        with file.edit("Photo") as edit:
            edit.add_photo(Photo("b.jpg", "A"), b"second")
    held = read_book(tmp_path / "b.pedbook")
    with pedbook.unpacked(held) as ready:
        assert data_package.lost(ready) == []
    pedbook.write_folder(held, tmp_path / "two")
    assert bytes_of(tmp_path / "two").keys() == bytes_of(folder).keys() | {"photos/b.jpg"}
    for name in ("photos/a.jpg", "plan.png", "rain.csv", "plants.csv"):
        assert bytes_of(tmp_path / "two")[name] == bytes_of(folder)[name]
    # The way from the folder back to the folder alone says the same of everything.
    data_package.write(book, tmp_path / "three")
    one, two = (
        json.loads((tmp_path / name / "datapackage.json").read_text()) for name in ("three", "two")
    )
    assert one == two
    # And from file to file.
    with pedbook.write(held, tmp_path / "c.pedbook") as file:
        assert content(file.book) == content(held)
        assert file.file("photos/b.jpg") == b"second"


def test_a_link_or_a_path_is_no_photo(tmp_path: Path) -> None:
    (tmp_path / "secret.jpg").write_bytes(b"secret")
    book = Book(path=tmp_path / "one")
    (tmp_path / "one" / "photos").mkdir(parents=True)
    (tmp_path / "one" / "photos" / "l.jpg").symlink_to(tmp_path / "secret.jpg")
    book.add(Photo("l.jpg"))
    book.add(Photo("../../secret.jpg"))
    with pedbook.write(book, tmp_path / "b.pedbook") as file:
        assert file.book.files == {}
    # A file that says that one of its files lies elsewhere is not believed.
    with BookFile.open(tmp_path / "b.pedbook", backups=False) as file:
        with file.edit("Sly") as edit:
            edit.put_file("../out.txt", b"out")
            edit.put_file("photos/../out.txt", b"out")
            edit.put_file("sub/out.txt", b"out")
            edit.put_file("/out.txt", b"out")
        with pedbook.unpacked(file.book) as ready:
            assert ready.path is not None
            assert bytes_of(ready.path) == {}
    assert sorted(os.listdir(tmp_path)) == ["b.pedbook", "one", "secret.jpg"]


def test_reading_leaves_the_file_as_it_is(tmp_path: Path) -> None:
    book = plant_table.parse("plant,seed_parent,pollen_parent\nV,,\nA,V,V\n", "t.csv")
    path = tmp_path / "B.PEDBOOK"
    pedbook.write(book, path).close()
    before = path.read_bytes()
    held = read_book(path, founders_as="plant", fixation=0.5)
    assert held.settings.founders_as == "plant"
    assert held.settings.variety_fixation == 0.5
    assert held.path == path
    assert read_book(path).settings == book.settings
    assert path.read_bytes() == before
    assert os.listdir(tmp_path) == ["B.PEDBOOK"]
    with pytest.raises(BookExists):
        pedbook.write(book, path)
    pedbook.write(Book(), path, replace=True).close()
    assert read_book(path).plants == {}
    (tmp_path / "x.pedbook").write_text("plant\n")
    with pytest.raises(NotABook):
        read_book(tmp_path / "x.pedbook")
