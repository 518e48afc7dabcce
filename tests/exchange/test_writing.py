import os
from pathlib import Path

import pytest

from pedigreeview.book.faults import Fault, Place
from pedigreeview.exchange.writing import replace_file


def test_the_file_is_moved_in_place(tmp_path):
    path = tmp_path / "a.svg"
    with replace_file(path) as beside:
        assert beside.parent == tmp_path
        assert beside.suffix == ".svg"
        assert not path.exists()
        beside.write_text("new")
    assert path.read_text() == "new"
    assert os.listdir(tmp_path) == ["a.svg"]


def test_a_failure_harms_nothing(tmp_path):
    path = tmp_path / "a.svg"
    path.write_text("old")
    with pytest.raises(RuntimeError), replace_file(path) as beside:  # noqa: PT012
        beside.write_text("half")
        raise RuntimeError
    assert path.read_text() == "old"
    assert os.listdir(tmp_path) == ["a.svg"]


def test_the_mode_of_the_old_file_stays(tmp_path):
    path = tmp_path / "a"
    path.write_text("old")
    path.chmod(0o640)
    with replace_file(path) as beside:
        beside.write_text("new")
    assert path.stat().st_mode & 0o777 == 0o640


def test_what_cannot_be_written_is_a_fault(tmp_path):
    with (
        pytest.raises(Fault, match="cannot be written: No such file"),
        replace_file(tmp_path / "none" / "a.svg"),
    ):
        pass
    with (
        pytest.raises(Fault, match="cannot be written: File name too long"),
        replace_file(tmp_path / f"{'a' * 300}.svg"),
    ):
        pass
    with pytest.raises(Fault, match="a folder of this name"), replace_file(tmp_path):
        pass


def test_a_writer_s_fault_names_the_file_that_was_wanted(tmp_path: Path) -> None:
    target = tmp_path / "picture.png"
    with pytest.raises(Fault) as caught, replace_file(target) as written:
        raise Fault("The picture is too large.", Place(file=str(written)), "Choose fewer dpi.")
    assert caught.value.where.file == str(target)
    assert not list(tmp_path.iterdir())
