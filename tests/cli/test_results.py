"""What each command answers: keys, values, base.

The figures follow by hand from the rules of the trade: F1 of two pure lines 0, F2 1/2, BC1 1/2
(common practice, no source); the keys are documented in README.md.
"""

from __future__ import annotations

import re
import xml.etree.ElementTree as ET
from collections.abc import Callable
from pathlib import Path
from typing import Any

import pytest

from pedigreeview.places import demo

PLANT_KEYS = {
    "plant",
    "inbreeding",
    "inbreeding_exact",
    "kind",
    "self_coancestry",
    "generation",
    "generation_name",
    "cytoplasm",
    "founder_shares",
    "unknown_share",
}
RELATE_KEYS = {
    "a",
    "b",
    "coancestry",
    "coancestry_exact",
    "numerator_relationship",
    "relationship",
    "progeny_inbreeding",
    "same_cytoplasm",
    "common_ancestors",
}
Call = Callable[..., Any]


def plants(ended: Any) -> dict[str, dict[str, Any]]:
    return {row["plant"]: row for row in ended.document["plants"]}


# summary ----------------------------------------------------------------------------------------


def test_summary_as_json(call: Call, table: Call) -> None:
    ended = call("summary", table(), "--json")
    assert ended.status == 0
    assert ended.document == {
        "plants": 6,
        "crosses": 4,
        "founders": 2,
        "generations": 3,
        "selfings": ["F1 ⊗"],
        "reciprocal_pairs": [
            {"level": "plant", "parents": ["TP", "BA"], "crosses": [["TP × BA"], ["BA × TP"]]}
        ],
    }


def test_summary_for_a_person_shows_counts_pairs_and_base(call: Call, table: Call) -> None:
    ended = call("summary", table())
    lines = ended.out.splitlines()
    assert lines[0] == "peas"
    assert "  plants       6" in lines
    assert "  generations  3" in lines
    assert "TP ⇄ BA" in ended.out
    assert lines[-1].startswith("Base: founders unrelated; 2 varieties taken as pure lines")


def test_summary_of_an_empty_table(call: Call, table: Call) -> None:
    ended = call("summary", table("plant,seed_parent,pollen_parent\n"), "--json")
    assert ended.status == 0
    assert ended.document["plants"] == ended.document["generations"] == 0


# coefficients -----------------------------------------------------------------------------------


def test_coefficients_as_json(call: Call, table: Call) -> None:
    ended = call("coefficients", table(), "--json")
    assert ended.status == 0
    assert set(ended.document) == {"base", "plants"}
    rows = plants(ended)
    assert all(set(row) == PLANT_KEYS for row in rows.values())
    assert rows["F2"] == {
        "plant": "F2",
        "inbreeding": 0.5,
        "inbreeding_exact": "1/2",
        "kind": "plant",
        "self_coancestry": 0.75,
        "generation": 2,
        "generation_name": "F2",
        "cytoplasm": "TP",
        "founder_shares": {"TP": 0.5, "BA": 0.5},
        "unknown_share": 0.0,
    }
    assert rows["F1"]["inbreeding_exact"] == "0"
    assert rows["TP"]["inbreeding_exact"] == "1"
    assert rows["TP"]["kind"] == "variety"
    assert rows["R1"]["cytoplasm"] == "BA"
    assert rows["BC"]["generation_name"] == "BC1F1"
    assert rows["BC"]["founder_shares"] == {"TP": 0.75, "BA": 0.25}


def test_base_names_the_settings_and_every_founder(call: Call, table: Call) -> None:
    base = call("coefficients", table(), "--json").document["base"]
    assert base["founders_as"] == "variety"
    assert base["variety_fixation"] == 1
    assert base["plant_fixation"] == 0
    assert base["founders"] == [
        {"plant": code, "kind": "variety", "fixation": 1.0, "stated": False, "ploidy": 2}
        for code in ("TP", "BA")
    ]


def test_an_unknown_parent_leaves_an_unknown_share(call: Call, table: Call) -> None:
    path = table("plant,seed_parent,pollen_parent,crop\nTP,,,\nS1,,TP,\nOP,TP,,\n")
    rows = plants(call("coefficients", path, "--json"))
    assert rows["S1"]["unknown_share"] == 0.5
    assert rows["S1"]["cytoplasm"] is None
    assert rows["OP"]["cytoplasm"] == "TP"


def test_decimal_odds_have_no_exact_fraction(call: Call, table: Call) -> None:
    text = "plant,seed_parent,pollen_parent,pollen_odds\nA,,,\nB,,,\nC,A,,B:0.7; self:0.3\n"
    row = plants(call("coefficients", table(text), "--json"))["C"]
    assert row["inbreeding_exact"] is None
    assert row["inbreeding"] == pytest.approx(0.3, abs=1e-12)


def test_plants_chosen_come_in_the_order_named_and_once(call: Call, table: Call) -> None:
    path = table()
    again = call("coefficients", path, "--plant", "BC", "--plant", "TP", "--plant", "BC", "--json")
    listed = call("coefficients", path, "--plant", "BC", "TP", "--json")
    before = call("coefficients", "--plant", "BC", "TP", path, "--json")
    for ended in (again, listed, before):
        assert [row["plant"] for row in ended.document["plants"]] == ["BC", "TP"]


def test_coefficients_for_a_person_line_up(call: Call, table: Call) -> None:
    lines = call("coefficients", table()).out.splitlines()
    heading = next(line for line in lines if line.startswith("plant"))
    of_f2 = next(line for line in lines if line.startswith("F2"))
    assert of_f2.index("1/2 = 0.5") == heading.index("inbreeding F")
    assert of_f2.index("TP 0.5, BA 0.5") == heading.index("founder shares")


# relate -----------------------------------------------------------------------------------------


def test_relate_as_json(call: Call, table: Call) -> None:
    ended = call("relate", table(), "F2", "BC", "--json")
    assert ended.status == 0
    found = ended.document
    assert set(found) == RELATE_KEYS
    assert found["coancestry"] == 0.5
    assert found["coancestry_exact"] == "1/2"
    assert found["numerator_relationship"] == 1.0
    assert found["relationship"] == pytest.approx(0.5 / 0.75, abs=1e-12)
    assert found["progeny_inbreeding"] == 0.5
    assert found["same_cytoplasm"] is True
    assert ended.err.startswith("Base: founders unrelated")


def test_contributions_add_up_and_paths_carry_their_weights(call: Call, table: Call) -> None:
    found = call("relate", table(), "F2", "BC", "--json").document
    assert sum(a["contribution"] for a in found["common_ancestors"]) == found["coancestry"]
    by_plant = {a["plant"]: a for a in found["common_ancestors"]}
    # F2 is all F1; BC is half F1, half TP, and TP is half of F1: 1/2 × θ(F1, F1) + 1/4 × θ(TP, TP).
    assert by_plant["F1"]["contribution_exact"] == "1/4"
    assert by_plant["F1"]["paths"] == [
        {"through": ["F2", "F1", "BC"], "links": 2, "weight_exact": "1/2"}
    ]
    assert by_plant["TP"]["contribution_exact"] == "1/4"
    assert by_plant["TP"]["paths"][0]["through"] == ["F2", "F1", "TP", "BC"]


def test_unrelated_plants_have_no_common_ancestors(call: Call, table: Call) -> None:
    ended = call("relate", table(), "TP", "BA", "--json")
    assert ended.document["coancestry"] == 0
    assert ended.document["common_ancestors"] == []
    assert "No common ancestors" in call("relate", table(), "TP", "BA").out


def test_a_plant_with_itself(call: Call, table: Call) -> None:
    found = call("relate", table(), "F1", "F1", "--json").document
    assert found["coancestry_exact"] == "1/2"
    assert found["progeny_inbreeding"] == 0.5
    assert "F if selfed" in call("relate", table(), "F1", "F1").out


def test_what_cannot_be_is_null(call: Call, table: Call) -> None:
    ended = call("relate", table(), "TP", "TP", "--fixation", "0", "--json")
    assert ended.document["coancestry"] == 0
    assert ended.document["relationship"] is None


def test_reciprocals_differ_in_cytoplasm_alone(call: Call, table: Call) -> None:
    one = call("relate", table(), "F1", "TP", "--json").document
    other = call("relate", table(), "R1", "TP", "--json").document
    assert one["coancestry"] == other["coancestry"]
    assert (one["same_cytoplasm"], other["same_cytoplasm"]) == (True, False)


def test_relate_for_a_person(call: Call, table: Call) -> None:
    out = call("relate", table(), "F2", "BC").out
    assert "1/2 = 0.5" in out
    assert "F2 – F1 – BC" in out
    assert out.splitlines()[-1].startswith("Base: ")


# founders ---------------------------------------------------------------------------------------


@pytest.mark.parametrize(
    ("options", "inbreeding"),
    [
        ((), 0.5),
        (("--founders-as", "variety"), 0.5),
        (("--founders-as", "plant"), 0.25),
        (("--fixation", "0.25"), 0.125),
        (("--founders-as", "plant", "--fixation", "0.25"), 0.25),
    ],
)
def test_founders_that_say_nothing(
    call: Call, table: Call, options: tuple[str, ...], inbreeding: float
) -> None:
    # F of the backcross is θ(TP, F1) = 1/2 θ of TP: of two members of a pool f, of a plant 1/2.
    rows = plants(call("coefficients", table(), *options, "--json"))
    assert rows["BC"]["inbreeding"] == inbreeding


def test_a_cell_wins_over_the_options(call: Call, table: Call) -> None:
    text = BC_TABLE.format(kind="variety", fixation="1")
    options = ("--founders-as", "plant", "--fixation", "0.25")
    assert plants(call("coefficients", table(text), *options, "--json"))["BC"]["inbreeding"] == 0.5


BC_TABLE = """\
plant,seed_parent,pollen_parent,kind,fixation
TP,,,{kind},{fixation}
BA,,,,
F1,TP,BA,,
BC,TP,F1,,
"""


def test_the_options_win_over_the_book(call: Call, table: Call, tmp_path: Path) -> None:
    folder = tmp_path / "book"
    assert call("convert", table(), folder).status == 0
    settings = folder / "book.csv"
    held = settings.read_text(encoding="utf-8") if settings.exists() else "key,value\n"
    kept = [line for line in held.splitlines() if not line.startswith("founders_as")]
    settings.write_text("\n".join([*kept, "founders_as,plant"]) + "\n", encoding="utf-8")
    _list_table(folder, "book")
    of_book = plants(call("coefficients", folder, "--json"))
    of_words = plants(call("coefficients", folder, "--founders-as", "variety", "--json"))
    assert of_book["BC"]["inbreeding"] == 0.25
    assert of_words["BC"]["inbreeding"] == 0.5


def _list_table(folder: Path, name: str) -> None:
    import json

    path = folder / "datapackage.json"
    package = json.loads(path.read_text(encoding="utf-8"))
    if name not in [held["name"] for held in package["resources"]]:
        package["resources"].append({"name": name, "path": f"{name}.csv"})
        path.write_text(json.dumps(package), encoding="utf-8")


# check, and what is withheld --------------------------------------------------------------------


def test_check_as_json_names_the_cycle(call: Call, loop: Path) -> None:
    ended = call("check", loop, "--json")
    assert ended.status == 1
    assert ended.err == ""
    assert set(ended.document) == {"problems"}
    first = ended.document["problems"][0]
    assert set(first) == {"kind", "severity", "plants", "message", "mend"}
    assert (first["kind"], first["severity"]) == ("own_ancestor", "error")
    assert sorted(first["plants"]) == ["X", "Y"]


def test_check_of_a_book_in_order(call: Call, table: Call) -> None:
    assert call("check", table(), "--json").document == {"problems": []}
    ended = call("check", table())
    assert (ended.status, ended.out) == (0, "Nothing looks wrong.\n")


def test_a_note_leaves_the_status_at_0(call: Call, table: Call) -> None:
    ended = call("check", table("plant,seed_parent,pollen_parent\nTP,,\nBA,,\nF1,TP,BA\nN,,\n"))
    assert "note  unlinked_plant" in ended.out
    assert ended.status == 0


def test_what_depends_on_a_loop_is_withheld(call: Call, loop: Path) -> None:
    ended = call("coefficients", loop, "--json")
    assert ended.status == 1
    assert "own_ancestor" in ended.err
    rows = plants(ended)
    for code in ("X", "Y", "Z"):
        assert set(rows[code]) == {*PLANT_KEYS, "withheld"}
        assert rows[code]["withheld"] == "own_ancestor"
        numbers = ("inbreeding", "inbreeding_exact", "self_coancestry", "founder_shares")
        assert all(rows[code][key] is None for key in (*numbers, "unknown_share"))
    assert rows["F1"]["inbreeding"] == 0
    assert "withheld" not in rows["F1"]


def test_relate_withholds_too_and_does_its_best(call: Call, loop: Path) -> None:
    ended = call("relate", loop, "Z", "TP", "--json")
    assert ended.status == 1
    assert set(ended.document) == {*RELATE_KEYS, "withheld"}
    assert ended.document["coancestry"] is None
    assert ended.document["withheld"] == "own_ancestor"
    assert "Withheld because of own_ancestor" in call("relate", loop, "Z", "TP").out
    assert call("relate", loop, "F1", "TP", "--json").document["coancestry"] == 0.5


# diagram and convert ----------------------------------------------------------------------------


@pytest.mark.parametrize(
    ("ending", "head"),
    [
        (".svg", b"<?xml"),
        (".pdf", b"%PDF-"),
        (".png", b"\x89PNG"),
        (".dot", b"digraph"),
        (".graphml", b"<?xml"),
        (".gexf", b"<?xml"),
        (".json", b"{"),
    ],
)
def test_the_ending_says_what_is_drawn(
    call: Call, table: Call, tmp_path: Path, ending: str, head: bytes
) -> None:
    out = tmp_path / f"peas{ending.upper()}"
    ended = call("diagram", table(), "--out", out)
    assert ended.status == 0
    assert out.read_bytes().lstrip().startswith(head)
    assert f"Wrote {out}: the whole book." in ended.out
    assert {path.name for path in tmp_path.iterdir()} == {"peas.csv", out.name}


def _words_in(picture: Path) -> set[str]:
    tree = ET.parse(picture)
    return {"".join(item.itertext()).strip() for item in tree.iter() if item.tag.endswith("text")}


def test_a_focus_leaves_the_rest_away(call: Call, table: Call, tmp_path: Path) -> None:
    out = tmp_path / "f.svg"
    words = ("--focus", "TP", "--up", "0", "--down", "1")
    path = table("plant,seed_parent,pollen_parent\nK1,TP,BA\nK2,K1,K1\nK3,K2,K2\n")
    ended = call("diagram", path, "--out", out, *words)
    assert ended.status == 0
    assert "around TP" in ended.out
    shown = _words_in(out)
    assert {"TP", "K1"} <= shown
    assert "K3" not in shown


def test_codes_too_small_to_read_are_said_with_a_way_out(call: Call, tmp_path: Path) -> None:
    book = demo("a_leaf_for_hollin_plate")
    out = tmp_path / "f.pdf"
    ended = call("diagram", book, "--out", out, "--paper", "A5", "--grey")
    assert out.exists()
    said = [line for line in ended.err.splitlines() if "hard to read" in line]
    assert len(said) == 1
    assert "--paper A" in said[0]
    assert "--tiled" in said[0]
    larger = said[0].partition("--paper ")[2].split()[0]
    for words in (("--paper", larger), ("--paper", "A5", "--tiled")):
        assert "hard to read" not in call("diagram", book, "--out", out, *words).err


def test_a_failed_picture_leaves_the_old_one(call: Call, table: Call, tmp_path: Path) -> None:
    out = tmp_path / "f.svg"
    out.write_text("old", encoding="utf-8")
    ended = call("diagram", table(), "--out", out, "--focus", "tp")
    assert ended.status == 2
    assert "Did you mean TP?" in ended.err
    assert out.read_text(encoding="utf-8") == "old"


def test_a_network_file_holds_the_whole_book_and_says_so(
    call: Call, table: Call, tmp_path: Path
) -> None:
    ended = call("diagram", table(), "--out", tmp_path / "n.dot", "--focus", "TP")
    assert ended.status == 0
    assert "holds the whole book" in ended.err


def test_a_caption_and_margins(call: Call, table: Call, tmp_path: Path) -> None:
    out = tmp_path / "f.svg"
    words = ("--caption", "Both <ways>", "--caption", "In June & July")
    assert call("diagram", table(), "--out", out, *words, "--margin", "0").status == 0
    assert {"Both <ways>", "In June & July"} <= _words_in(out)
    narrow = float(str(ET.parse(out).getroot().get("viewBox")).split()[2])
    assert call("diagram", table(), "--out", out, "--margin", "25.4").status == 0
    wide = float(str(ET.parse(out).getroot().get("viewBox")).split()[2])
    assert wide - narrow == 2 * 96
    assert "Both <ways>" not in _words_in(out)


@pytest.mark.parametrize(
    ("words", "says"),
    [
        (("--margin", "4"), "A margin of 4 mm is not possible here. Choose one from 5 to 50 mm."),
        (("--caption", "x" * 2001), "The caption has 2001 characters; 2000 are the most."),
        (("--caption", "x", *["--caption", "y"] * 200), "The caption leaves no room"),
    ],
)
def test_what_no_paper_has_room_for(
    call: Call, table: Call, tmp_path: Path, words: tuple[str, ...], says: str
) -> None:
    out = tmp_path / "f.pdf"
    ended = call("diagram", table(), "--out", out, *words)
    assert ended.status == 2
    assert ended.err.startswith(says)
    assert len(ended.err.splitlines()) == 1
    assert not out.exists()


def test_paper_its_way_several_sheets_and_grey(call: Call, table: Call, tmp_path: Path) -> None:
    out = tmp_path / "f.pdf"

    def sizes(*words: str) -> list[tuple[float, float]]:
        ended = call("diagram", table(), "--out", out, *words)
        assert (ended.status, ended.err) == (0, "")
        boxes = re.findall(rb"/MediaBox \[0 0 ([\d.]+) ([\d.]+)", out.read_bytes())
        return [(float(wide), float(high)) for wide, high in boxes]

    # Points of 1/72 inch: A5 is 148 by 210 mm, Letter 8.5 by 11 inches.
    assert sizes("--paper", "A5", "--landscape") == [pytest.approx((595, 420), abs=1.5)]
    assert sizes("--paper", "Letter", "--no-landscape") == [pytest.approx((612, 792), abs=1.5)]
    assert len(sizes("--paper", "A5", "--tiled")) == 2
    svg = tmp_path / "f.svg"
    ended = call("diagram", table(), "--out", svg, "--grey", "--paper", "A3")
    assert "--paper, --landscape and --tiled are for a .pdf file; they are unused." in ended.err
    fills = set(re.findall(r'fill="#(..)(..)(..)"', svg.read_text("utf-8")))
    assert len(fills) > 2
    assert all(max(parts) == min(parts) for parts in fills)


def test_a_network_has_no_margin(call: Call, table: Call, tmp_path: Path) -> None:
    ended = call("diagram", table(), "--out", tmp_path / "n.gexf", "--margin", "9")
    assert ended.status == 0
    assert "A .gexf file is no picture; what was chosen for a picture is unused." in ended.err


def test_table_to_folder_and_back(call: Call, table: Call, tmp_path: Path) -> None:
    folder, back = tmp_path / "book", tmp_path / "back.csv"
    there = call("convert", table(), folder)
    assert there.status == 0
    assert (folder / "datapackage.json").is_file()
    assert call("convert", folder / "datapackage.json", back).status == 0
    words = ("coefficients", "--json")
    first = call(words[0], table(), words[1]).document["plants"]
    second = call(words[0], back, words[1]).document["plants"]
    assert {row["plant"]: row for row in first} == {row["plant"]: row for row in second}


def test_what_a_table_cannot_carry_is_listed_first(call: Call, root: Path, tmp_path: Path) -> None:
    demo = root / "demo_pedigrees" / "two_peas_both_ways"
    ended = call("convert", demo, tmp_path / "peas.csv")
    assert ended.status == 0
    assert any("pollination" in line for line in ended.err.splitlines())
    assert ended.out.startswith(f"Wrote {tmp_path / 'peas.csv'} (plant table): ")
    taken = call("convert", demo, tmp_path)
    assert taken.status == 2


def test_convert_writes_over_nothing_unless_told(call: Call, table: Call, tmp_path: Path) -> None:
    other = table("mine", "other.csv")
    refused = call("convert", table(), other)
    assert refused.status == 2
    assert "exists already" in refused.err
    assert other.read_text(encoding="utf-8") == "mine"
    assert call("convert", table(), other, "--replace").status == 0
    assert "F1" in other.read_text(encoding="utf-8")
    itself = call("convert", table(), table(), "--replace")
    assert itself.status == 2
    assert "file to be read" in itself.err
