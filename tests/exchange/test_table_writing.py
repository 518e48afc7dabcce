"""Book to plant table and back, and what the table cannot carry."""

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from pedigreeview.book.book import Book
from pedigreeview.book.records import (
    Cross,
    Evidence,
    ParentFinding,
    Plant,
    PollenCandidate,
    Pollination,
    Score,
    Trait,
)
from pedigreeview.exchange import plant_table, read_book
from pedigreeview.network import PedigreeNetwork
from pedigreeview.places import demo

TEXT = st.text(st.characters(exclude_categories=["Cs", "Cc"]) | st.sampled_from("\n"), max_size=12)
TEXT = TEXT.map(str.strip)
CODE = st.text(
    st.characters(exclude_categories=["Cs", "Cc", "Zl", "Zp"], exclude_characters=":;"),
    min_size=1,
    max_size=5,
)
CODE = CODE.map(str.strip).filter(lambda code: code and code.casefold() != "self")
ODDS = st.floats(0, 0.3)


@st.composite
def books(draw):
    """Books that a plant table can carry in full."""
    codes = draw(st.lists(CODE, min_size=1, max_size=7, unique=True))
    book = Book()
    for index, code in enumerate(codes):
        plant = Plant(
            code,
            name=draw(TEXT),
            ploidy=draw(st.none() | st.integers(1, 8)),
            crop=draw(TEXT),
            sown=draw(st.sampled_from(["", "2021", "2021-05", "2021-05-17"])),
            status=draw(st.sampled_from(["", "kept", "culled"])),
            note=draw(TEXT),
        )
        plant.extra = draw(st.dictionaries(st.sampled_from(["colour", "a,b", 'q"']), TEXT))
        plant.extra = {name: text for name, text in plant.extra.items() if text}
        older = codes[:index]
        way = draw(st.sampled_from(["founder", "cross", "odds", "open", "source"])) if older else ""
        if way in ("cross", "odds", "open"):
            name = f"X{index}"
            seed = draw(st.sampled_from(older))
            cross = Cross(name, seed, drawn=draw(st.sampled_from(["", "one", "each"])))
            cross.intended = "open" if way == "open" else "cross"
            if way == "cross":
                cross.pollen_parent = draw(st.sampled_from(older))
                if cross.pollen_parent == seed:
                    cross.intended = "selfing"
            elif way == "odds":
                for candidate in draw(
                    st.lists(st.sampled_from([*older, "self"]), min_size=1, max_size=3, unique=True)
                ):
                    book.add(PollenCandidate(name, candidate, draw(ODDS)))
            book.add(cross)
            plant.cross = name
            plant.selfings = draw(st.integers(0, 3))
            plant.kind = draw(st.sampled_from(["", "plant", "family", "variety"]))
        elif way == "source":
            plant.source = draw(st.sampled_from(older))
            pool = book.is_pool(book.plants[plant.source])
            plant.raised = "seed_of" if pool else "cutting_of"
        else:
            plant.kind = draw(st.sampled_from(["", "plant", "variety"]))
            plant.fixation = draw(st.none() | st.floats(0, 1))
        book.add(plant)
    return book


@settings(max_examples=60, deadline=None, suppress_health_check=list(HealthCheck))
@given(book=books(), suffix=st.sampled_from([".csv", ".tsv"]))
def test_book_to_table_to_book(book, suffix, tmp_path_factory):
    path = tmp_path_factory.mktemp("table") / f"t{suffix}"
    plant_table.write(book, path)
    back = plant_table.read(path)
    assert back.plants == book.plants
    assert back.crosses == book.crosses
    assert back.pollen_candidates == book.pollen_candidates
    assert plant_table.lost(book) == []
    first = path.read_bytes()
    plant_table.write(back, path)
    assert path.read_bytes() == first


def written(book, tmp_path):
    path = tmp_path / "t.csv"
    plant_table.write(book, path)
    return path.read_text(encoding="utf-8"), plant_table.read(path)


def uncertain(**cross):
    book = Book()
    for record in (
        Plant("MB", kind="variety"),
        Plant("HP", kind="variety"),
        Cross("21-09", "MB", **cross),
        Plant("A", cross="21-09"),
        Plant("B", cross="21-09"),
    ):
        book.add(record)
    return book


def test_a_finding_becomes_the_plants_own_parents(tmp_path):
    book = uncertain(intended="open")
    book.add(ParentFinding("A", "self", date="2021", grade="certain"))
    book.add(ParentFinding("B", "HP", 0.5, date="2022"))
    book.add(ParentFinding("B", "", 0.5, date="2022"))
    book.add(ParentFinding("B", "self", date="2021"))
    _, back = written(book, tmp_path)
    assert back.crosses[back.plants["A"].cross].pollen_parent == "MB"
    cross = back.crosses[back.plants["B"].cross]
    assert (cross.seed_parent, cross.pollen_parent, cross.drawn) == ("MB", "", "each")
    assert [(item.candidate, item.odds) for item in back.pollen_candidates] == [("HP", 0.5)]
    said = plant_table.lost(book)
    assert "The codes of 1 cross whose plants all have a finding of their own." in said
    assert any(line.startswith("2 plants with an own finding") for line in said)
    assert "1 older row of findings." in said


def test_a_finding_that_confirms_the_cross_keeps_its_code(tmp_path):
    book = uncertain(intended="cross", pollen_parent="HP")
    book.add(ParentFinding("A", "HP", grade="certain"))
    book.add(ParentFinding("B", "self", grade="certain"))
    _, back = written(book, tmp_path)
    assert back.plants["A"].cross == "21-09"
    assert back.plants["B"].cross == "MB ⊗"
    said = plant_table.lost(book)
    assert "1 finding that confirms the cross." in said
    assert any(line.startswith("1 plant with an own finding") for line in said)


def test_unknown_is_not_open_pollinated(tmp_path):
    book = uncertain(intended="cross")
    text, back = written(book, tmp_path)
    assert "self:0" in text
    assert back.crosses["21-09"].intended == "cross"
    assert [(item.candidate, item.odds) for item in back.pollen_candidates] == [("self", 0)]
    assert back.crosses["21-09"].drawn == "one"
    assert any("unknown, not open-pollinated" in line for line in plant_table.lost(book))


def test_a_selfing_that_names_its_parent_once(tmp_path):
    _, back = written(uncertain(intended="selfing"), tmp_path)
    assert back.crosses["21-09"].pollen_parent == "MB"


def test_a_cross_without_any_known_parent(tmp_path):
    book = Book()
    book.add(Cross("X", made_on="2021"))
    book.add(Plant("A", cross="X", raised="cross", selfings=2))
    _, back = written(book, tmp_path)
    assert (back.plants["A"].kind, back.raised(back.plants["A"])) == ("plant", "founder")
    assert any("without any known parent" in line for line in plant_table.lost(book))


def test_settings_go_into_the_cells(tmp_path):
    book = uncertain(intended="open")
    book.add(Plant("S"))
    book.settings.crop = "tomato"
    book.settings.ploidy = 4
    book.settings.founders_as = "plant"
    book.settings.variety_fixation = 0.75
    book.settings.name = "Mine"
    _, back = written(book, tmp_path)
    assert back.settings.founders_as == ""
    for code, plant in book.plants.items():
        assert back.crop(back.plants[code]) == book.crop(plant)
        assert back.kind(back.plants[code]) == book.kind(plant)
        if not plant.cross:
            assert back.founder_fixation(back.plants[code]) == book.founder_fixation(plant)
            assert back.founder_ploidy(back.plants[code]) == book.founder_ploidy(plant)
    said = " ".join(plant_table.lost(book))
    assert "settings name are not written" in said
    assert "are written into the cells of each plant" in said


def test_what_is_lost_is_counted():
    book = uncertain(
        intended="open", seed_doubt="certain", pollen_doubt="unknown", state="made", note="n",
        made_on="2021", direction_known=False,
    )  # fmt: skip
    for record in (
        Cross("22-01", "MB", "HP"),
        Pollination("1", "21-09"),
        Pollination("2", "21-09"),
        Evidence("21-09", "seed", "for"),
        Trait("t", "score"),
        Score("A", "t"),
    ):
        book.add(record)
    book.plants["A"].extra = {"seed parent": "x"}
    book.unknown_tables["weather"] = "day\n"
    assert plant_table.lost(book) == [
        "1 cross without plants: 22-01.",
        "2 grades of doubt.",
        "1 state of a cross.",
        "1 note of a cross.",
        "1 date on which a cross was made.",
        "1 cross whose direction is unknown.",
        "The further column 'seed parent' of 1 plant, which has the name of a column of the plant "
        "table.",
        "The table 'evidence' with its 1 row.",
        "The table 'pollinations' with its 2 rows.",
        "The table 'traits' with its 1 row.",
        "The table 'scores' with its 1 row.",
        "The table 'weather', which this version does not know.",
    ]


@pytest.mark.parametrize(
    "name", ["two_peas_both_ways", "a_leaf_for_hollin_plate", "tansy_and_the_moths"]
)
def test_a_demo_as_a_table_gives_the_same_numbers(name, tmp_path):
    book = read_book(demo(name))
    _, back = written(book, tmp_path)
    one, other = PedigreeNetwork.from_records(book), PedigreeNetwork.from_records(back)
    assert set(one.withheld) == set(other.withheld)
    for code in book.plants:
        if code not in one.withheld:
            assert other.inbreeding(code) == pytest.approx(one.inbreeding(code), abs=1e-12)
            assert other.founder_shares(code) == pytest.approx(one.founder_shares(code), abs=1e-12)
            assert other.generation(code) == one.generation(code)


def test_formulas_in_cells_are_made_harmless_and_come_back(tmp_path):
    book = Book()
    book.add(Plant("=A", name="@SUM(A1)", note="'=x"))
    book.add(Plant("-1", name="-1", extra={"+b": "+x"}))
    text, back = written(book, tmp_path)
    assert text == "plant,seed_parent,pollen_parent,name,note,'+b\n" + (
        "'=A,,,'@SUM(A1),''=x,\n-1,,,-1,,'+x\n"
    )
    assert back.plants == book.plants
