"""From table to folder and back nothing is lost that the plant table knows."""

from __future__ import annotations

import time
from pathlib import Path

from pedigreeview.exchange import data_package, plant_table

TABLE = (
    "plant,seed_parent,pollen_parent,pollen_odds,drawn,kind,raised,selfings,fixation,cross,"
    "ploidy,crop,name,status,sown,note,place,obtained_from,protected,colour\n"
    'V,,,,,variety,,,0.9,,2,pea,"Long, one",kept,2021,"two\nlines",bed 3,Ann,2040,red\n'
    "W,,,,,plant,founder,,,,,,,,,,,,,\n"
    "A,V,W,,,,cross,2,,21-01,,,,growing,2021-05,,,,,\n"
    "B,V,,W:0.8; self:0.1,one,,,,,21-02,,,,culled,2021-05-17,,,,,\n"
    "C,,W,,,,,,,,,,,lost,,,,,,\n"
    "D,V,,,each,family,,,,,,,,finished,,,,,,\n"
    "L,A,A,,,variety,,3,0.95,,,,,,,,,,,blue\n"
    "E,V,,,,,seed_of,,,,,,,,,,,,,\n"
    "F,D,,,,,sibbed_in,,,,,,,,,,,,,\n"
    "G,W,,,,,cutting_of,,,,,,,,,,,,,\n"
    "H,W,,,,,doubled_haploid_of,,,,,,,,,,,,,\n"
    "I,W,,,,plant,doubled_of,,,,4,,,,,,,,,\n"
)


def test_every_column(tmp_path: Path) -> None:
    book = plant_table.parse(TABLE, "t.csv")
    data_package.write(book, tmp_path / "book")
    read = data_package.read(tmp_path / "book")
    assert data_package.lost(book) == []
    assert plant_table.lost(read) == []
    plant_table.write(read, tmp_path / "t.csv")
    back = plant_table.read(tmp_path / "t.csv")
    assert (back.plants, back.crosses) == (book.plants, book.crosses)
    assert back.pollen_candidates == book.pollen_candidates
    assert (read.plants, read.crosses) == (book.plants, book.crosses)


def test_a_column_that_the_folder_knows_otherwise(tmp_path: Path) -> None:
    text = "plant,seed_parent,pollen_parent,source,source_note\nA,,,market,x\nB,,,,\n"
    book = plant_table.parse(text, "t.csv")
    data_package.write(book, tmp_path / "book")
    (said,) = data_package.lost(book)
    assert "'source'" in said
    assert "'source_note_2'" in said
    read = data_package.read(tmp_path / "book")
    assert read.plants["A"].source == ""
    assert read.plants["A"].extra == {"source_note": "x", "source_note_2": "market"}


def test_ten_thousand_rows_take_less_than_a_second(tmp_path: Path) -> None:
    # The measure of the project; a reading that is slow by its kind takes many times as long.
    rows = [f"P{i},P{i // 2},P{i // 3},{i % 3},one,é" for i in range(6, 10_000)]
    text = "plant,seed_parent,pollen_parent,selfings,drawn,name\n" + "\n".join(rows)
    begun = time.perf_counter()
    book = plant_table.parse(text, "t.csv")
    assert time.perf_counter() - begun < 1
    assert len(book.plants) == 9_998
