"""Orders, generations, loops, reciprocal pairs, cytoplasm: the shape of a book."""

from __future__ import annotations

from dataclasses import replace
from fractions import Fraction

import networkx as nx
import numpy as np
import pytest

from pedigreeview.book import book as book_module
from pedigreeview.book.book import Book, BookSettings
from pedigreeview.book.crops import crop_named
from pedigreeview.book.records import Cross, ParentFinding, Plant, PollenCandidate
from pedigreeview.network import PedigreeNetwork, UnknownPlantFault, WithheldFault


def _book(*rows: tuple[str, str, str], **settings: object) -> Book:
    """Rows of plant, seed parent, pollen parent; parents without a row are founder varieties."""
    book = Book(settings=BookSettings(**settings))  # type: ignore[arg-type]
    own = {row[0] for row in rows}
    for code, seed, pollen in rows:
        for parent in (seed, pollen):
            if parent and parent not in own and parent not in book.plants:
                book.add(Plant(parent))
        if not (seed or pollen):
            book.add(Plant(code))
            continue
        cross = f"{seed or '?'}×{pollen or '?'}"
        if cross not in book.crosses:
            intended = "selfing" if seed == pollen else "cross" if pollen else "open"
            book.add(Cross(cross, seed, pollen, intended=intended))
        book.add(Plant(code, cross=cross))
    return book


def _net(*rows: tuple[str, str, str], **settings: object) -> PedigreeNetwork:
    return PedigreeNetwork.from_records(_book(*rows, **settings))


def test_generation_names_follow_one_first_cross() -> None:
    net = _net(
        ("F1", "A", "B"),
        ("F2", "F1", "F1"),
        ("F3", "F2", "F2"),
        ("sib", "F2", "F2b"),
        ("F2b", "F1", "F1"),
        ("BC1", "F1", "A"),
        ("BC1F2", "BC1", "BC1"),
        ("BC2", "A", "BC1"),
        ("other", "BC1", "B"),
        ("three", "F1", "C"),
        ("on", "three", "three"),
        ("S1", "A", "A"),
        ("S2", "S1", "S1"),
        ("meet", "F1", "three"),
    )
    names = {code: net.generation_name(code) for code in net.codes}
    assert names["F1"] == "F1"
    assert names["F2"] == "F2"
    assert names["F3"] == "F3"
    assert names["sib"] == "F3"
    assert names["BC1"] == "BC1F1"
    assert names["BC1F2"] == "BC1F2"
    assert names["BC2"] == "BC2F1"
    assert names["S1"] == "S1"
    assert names["S2"] == "S2"
    for code in ("other", "three", "on", "meet", "A"):
        assert names[code] is None


def test_generations_count_from_the_founders_and_add_unrecorded_selfings() -> None:
    book = _book(("F1", "A", "B"), ("late", "F1", "C"))
    book.add(Plant("F6", cross="A×B", selfings=5))
    book.add(Plant("piece", raised="cutting_of", source="F1"))
    book.add(Plant("dh", raised="doubled_haploid_of", source="F1"))
    book.add(Plant("grown", raised="seed_of", source="A"))
    book.add(Plant("mated", raised="sibbed_in", source="A"))
    net = PedigreeNetwork.from_records(book)
    found = {code: net.generation(code) for code in net.codes}
    assert found["A"] == 0
    assert found["F1"] == 1
    assert found["late"] == 2
    assert found["F6"] == 6
    assert found["piece"] == 1
    assert found["dh"] == 2
    assert found["grown"] == 0
    assert found["mated"] == 1
    assert net.generation_name("F6") == "F6"
    assert net.generation_name("dh") is None


def test_first_crosses_between_plants_grown_from_two_varieties_are_f1() -> None:
    book = _book()
    for code in ("V", "W"):
        book.add(Plant(code))
        book.add(Plant(f"{code}1", raised="seed_of", source=code))
    book.add(Cross("x", "V1", "W1"))
    book.add(Plant("h", cross="x"))
    assert PedigreeNetwork.from_records(book).generation_name("h") == "F1"


def test_a_loop_is_named_with_its_whole_cycle_and_only_what_depends_on_it_is_withheld() -> None:
    net = _net(
        ("a", "c", "P"),
        ("b", "a", "a"),
        ("c", "b", "Q"),
        ("below", "c", "P"),
        ("free", "P", "Q"),
    )
    assert net.loops() == [("a", "b", "c")]
    problem = net.problems()[0]
    assert problem.kind == "own_ancestor"
    assert problem.severity == "error"
    assert problem.plants == ("a", "b", "c")
    assert set(net.withheld) == {"a", "b", "c", "below"}
    assert net.inbreeding("free") == 0
    for ask in (
        lambda: net.inbreeding("below"),
        lambda: net.coancestry("free", "a"),
        lambda: net.founder_shares("b"),
    ):
        with pytest.raises(WithheldFault) as caught:
            ask()
        assert caught.value.kind == "own_ancestor"
    row = dict(zip(net.codes, net.coancestry_with("free"), strict=True))
    assert np.isnan(row["a"])
    assert row["P"] == 0.5
    assert "a" in net.ancestors("a")
    assert net.generation("c") is None
    assert net.cytoplasm("a") is None


def test_a_plant_that_is_its_own_parent_is_a_loop_of_one() -> None:
    net = _net(("a", "a", "P"))
    assert net.loops() == [("a",)]


def test_a_selfing_is_no_loop_and_has_two_edges_from_its_one_parent() -> None:
    net = _net(("F1", "A", "B"), ("F2", "F1", "F1"))
    assert net.loops() == []
    assert net.selfings() == ["F1×F1"]
    edges = net.graph.get_edge_data(("plant", "F1"), ("cross", "F1×F1"))
    assert sorted(edge["role"] for edge in edges.values()) == ["pollen", "seed"]
    assert isinstance(net.graph, nx.MultiDiGraph)
    assert net.crosses_of("F1") == (["F1×F1"], ["F1×F1"])


def test_ancestors_are_those_of_the_graph() -> None:
    net = _net(("F1", "A", "B"), ("F2", "F1", "F1"), ("bc", "F2", "A"), ("far", "C", "D"))
    for code in net.codes:
        up = {node[1] for node in nx.ancestors(net.graph, ("plant", code)) if node[0] == "plant"}
        down = nx.descendants(net.graph, ("plant", code))
        assert net.ancestors(code) == up
        assert net.descendants(code) == {node[1] for node in down if node[0] == "plant"}


def test_reciprocal_pairs_by_plant_count_repeats_on_their_side() -> None:
    book = _book(("x", "A", "B"), ("y", "B", "A"), ("z", "A", "C"))
    book.add(Cross("again", "A", "B"))
    book.add(Cross("self", "A", "A"))
    net = PedigreeNetwork.from_records(book)
    (pair,) = net.reciprocal_pairs()
    assert (pair.level, pair.parents) == ("plant", ("A", "B"))
    assert pair.crosses == (("A×B", "again"), ("B×A",))
    assert net.reciprocal_of("again") == ("B×A",)
    assert net.reciprocal_of("A×C") == ()


def test_reciprocal_pairs_by_variety_and_clones() -> None:
    book = _book()
    for variety in ("V", "W"):
        book.add(Plant(variety, kind="variety"))
        for n in (1, 2):
            book.add(Plant(f"{variety}{n}", raised="seed_of", source=variety))
    book.add(Plant("W1c", raised="cutting_of", source="W1"))
    book.add(Cross("one", "V1", "W1"))
    book.add(Cross("two", "W2", "V2"))
    assert PedigreeNetwork.from_records(book).reciprocal_pairs()[0].level == "variety"
    book.add(Cross("three", "W1c", "V1"))
    pairs = PedigreeNetwork.from_records(book).reciprocal_pairs()
    assert [(pair.level, pair.crosses) for pair in pairs] == [("plant", (("one",), ("three",)))]


def test_uncertain_open_and_undirected_crosses_make_no_pair() -> None:
    book = _book(("x", "A", "B"))
    book.add(Cross("odds", "B", ""))
    book.add(PollenCandidate("odds", "A", 0.8))
    book.add(Cross("open", "B", "", intended="open"))
    book.add(Cross("either", "B", "A", direction_known=False))
    net = PedigreeNetwork.from_records(book)
    assert net.reciprocal_pairs() == []


def test_cytoplasm_follows_the_seed_parents_and_is_unknown_where_they_end() -> None:
    book = _book(("x", "A", "B"), ("y", "B", "A"), ("x2", "x", "y"), ("lost", "", "A"))
    book.add(Cross("either", "x", "y", direction_known=False))
    book.add(Plant("who", cross="either"))
    net = PedigreeNetwork.from_records(book)
    assert net.cytoplasm("x2") == "A"
    assert net.same_cytoplasm("x", "y") is False
    assert net.same_cytoplasm("x", "x2") is True
    assert net.cytoplasm("lost") is None
    assert net.same_cytoplasm("x", "lost") is None
    assert net.cytoplasm("who") is None


def test_reciprocal_crosses_have_equal_coancestry_with_everything_older() -> None:
    net = _net(("x", "A", "B"), ("y", "B", "A"), ("z", "A", "C"))
    for other in ("A", "B", "C", "z"):
        assert net.coancestry("x", other) == net.coancestry("y", other)


def test_named_pure_lines_give_f_of_one_half_in_the_f2_and_plants_do_not_share_it() -> None:
    rows = (("F1", "A", "B"), ("F2", "F1", "F1"), ("BC1", "F1", "A"))
    lines = _net(*rows)
    assert [lines.inbreeding_exact(c) for c in ("F1", "F2", "BC1")] == [
        0,
        Fraction(1, 2),
        Fraction(1, 2),
    ]
    plants = _net(*rows, founders_as="plant")
    assert plants.inbreeding_exact("BC1") == Fraction(1, 4)


def test_two_seeds_of_a_lost_label_share_one_unseen_father() -> None:
    """numbers.md: sibs 1/4 with one father, 1/8 with a father each."""
    for drawn, expected in (("one", Fraction(1, 4)), ("each", Fraction(1, 8))):
        book = _book(founders_as="plant")
        for code in ("s", "p", "q"):
            book.add(Plant(code))
        book.add(Cross("x", "s", "", drawn))
        for code in ("a", "b"):
            book.add(Plant(code, cross="x"))
        book.add(PollenCandidate("x", "p", 0.5))
        book.add(PollenCandidate("x", "q", 0.5))
        net = PedigreeNetwork.from_records(book)
        between = net.coancestry_exact("a", "b")
        # A father for each seed: 1/8 through s, and 1/4·(1/4·1/2)·2 through p and q.
        assert between == (expected if drawn == "one" else expected + Fraction(1, 16))


def test_a_finding_overrides_the_odds_of_the_cross_for_that_plant_alone() -> None:
    book = _book(("a", "A", "B"), ("b", "A", "B"))
    book.add(ParentFinding("a", "B", date="2020"))
    book.add(ParentFinding("a", "self", date="2021"))
    net = PedigreeNetwork.from_records(book)
    assert net.founder_shares("a") == {"A": 1.0}
    assert net.founder_shares("b") == {"A": 0.5, "B": 0.5}
    assert net.parents("a").selfed
    assert net.inbreeding("a") == 1


def test_open_pollinated_seed_is_read_by_the_outcrossing_rate_where_it_is_known() -> None:
    net = _net(("a", "A", ""), outcrossing=0.25, founders_as="plant")
    assert net.founder_shares("a") == {"A": pytest.approx(0.875)}
    assert net.inbreeding("a") == pytest.approx(0.375)
    assert net.base()["open_pollinated"] == [{"crop": "", "outcrossing": 0.25}]
    without = _net(("a", "A", ""), founders_as="plant")
    assert without.founder_shares("a") == {"A": 0.5}
    assert without.unknown_share("a") == 0.5


def test_parents_of_different_ploidy_are_named_and_their_progeny_withheld() -> None:
    book = _book(("x", "A", "B"), ("y", "x", "x"))
    book.plants["A"].ploidy = 4
    net = PedigreeNetwork.from_records(book)
    (problem,) = [p for p in net.problems() if p.kind == "ploidy_differs"]
    assert problem.plants == ("x", "A", "B")
    assert net.withheld == {"x": "ploidy_differs", "y": "ploidy_differs"}
    assert net.progeny_inbreeding("A", "B") is None


def test_a_cross_without_progeny_between_ploidies_is_named_too() -> None:
    book = _book()
    book.add(Plant("A", ploidy=4))
    book.add(Plant("B"))
    book.add(Cross("x", "A", "B"))
    kinds = [p.kind for p in PedigreeNetwork.from_records(book).problems()]
    assert kinds.count("ploidy_differs") == 1


def test_a_line_whose_fixation_is_below_its_descent_is_an_error_and_withheld() -> None:
    book = _book(("F1", "A", "B"), ("F2", "F1", "F1"))
    book.add(Cross("on", "F2", "F2"))
    book.add(Plant("line", kind="variety", cross="on", fixation=0.5))
    book.add(Plant("good", kind="variety", cross="on"))
    net = PedigreeNetwork.from_records(book)
    assert net.withheld == {"line": "fixation_too_low"}
    assert [p.severity for p in net.problems() if p.kind == "fixation_too_low"] == ["error"]
    assert net.inbreeding("good") == 1


def test_an_unknown_code_says_what_comes_near() -> None:
    net = _net(("K17", "A", "B"))
    with pytest.raises(UnknownPlantFault, match="K17"):
        net.inbreeding("K71")


def test_mates_sibs_and_progeny() -> None:
    net = _net(("x", "A", "B"), ("x2", "A", "B"), ("y", "C", "A"), ("s", "A", "A"))
    assert net.mates("A") == ("B", "C")
    assert net.sibs("x") == ("x2",)
    assert net.progeny("A") == ("x", "x2", "y", "s")
    assert net.parent_codes("y") == ("C", "A")


def test_a_pool_of_fixation_0_has_no_relationship_with_itself() -> None:
    net = _net(("x", "A", "B"), variety_fixation=0.0)
    assert net.self_coancestry("A") == 0
    assert net.relationship("A", "A") is None
    assert net.progeny_inbreeding("A", "A") == 0.5


def test_sibs_of_a_pool_share_its_one_unrecorded_plant() -> None:
    """A landrace as seed parent of one hand cross: one plant of it bore all the seed."""
    book = _book(variety_fixation=0.0)
    for code in ("A", "B"):
        book.add(Plant(code))
    book.add(Cross("x", "A", "B"))
    book.add(Cross("again", "A", "B"))
    for code, cross in (("a", "x"), ("b", "x"), ("c", "again")):
        book.add(Plant(code, cross=cross))
    net = PedigreeNetwork.from_records(book)
    assert net.coancestry_exact("a", "b") == Fraction(1, 4)
    assert net.coancestry_exact("a", "c") == 0
    assert [a.plant for a in net.common_ancestors("a", "b")] == ["A", "B"]
    (path,) = net.common_ancestors("a", "b")[0].paths
    assert path.through == ("a", "A", "b")
    assert path.links == 2


def test_an_empty_book_answers_with_nothing() -> None:
    net = PedigreeNetwork.from_records(Book())
    assert net.codes == ()
    assert net.problems() == []
    assert net.reciprocal_pairs() == []
    assert net.base()["founders"] == []


def test_double_reduction_is_the_book_s_or_the_crop_s_and_the_base_says_so(
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    rows = (("x", "A", "B"),)
    stated = _net(*rows, ploidy=4, founders_as="plant", double_reduction=0.125)
    assert stated.inbreeding_exact("x") == Fraction(1, 24)
    assert stated.base()["double_reduction"] == 0.125
    assert "Double reduction 0.125 at 4x." in stated.base_sentence()
    six = _net(*rows, ploidy=6, founders_as="plant", double_reduction=0.125)
    assert six.inbreeding("x") == 0
    assert "0 taken at 6x and above" in six.base_sentence()
    potato = crop_named("potato")
    assert potato is not None
    by_crop = _book(*rows, crop="potato", founders_as="plant")
    monkeypatch.setattr(
        book_module, "crop_named", lambda _: replace(potato, double_reduction=0.125)
    )
    assert PedigreeNetwork.from_records(by_crop).inbreeding_exact("x") == Fraction(1, 24)


def test_a_pollen_parent_that_nobody_knows_is_one_for_all_seed_of_a_lost_label() -> None:
    """numbers.md: `one` makes a hidden pollen parent also where it is wholly unknown: sibs 1/4."""
    for drawn, expected in (
        ("", Fraction(1, 4)),
        ("one", Fraction(1, 4)),
        ("each", Fraction(1, 8)),
    ):
        book = _book(founders_as="plant")
        book.add(Plant("s"))
        book.add(Cross("x", "s", "", drawn))
        for code in ("a", "b"):
            book.add(Plant(code, cross="x"))
        net = PedigreeNetwork.from_records(book)
        assert net.coancestry_exact("a", "b") == expected
        names = [ancestor.plant for ancestor in net.common_ancestors("a", "b")]
        assert names == (["s"] if drawn == "each" else ["(pollen parent of x)", "s"])
        assert net.unknown_share("a") == 0.5


def test_open_pollinated_seed_with_candidates_has_a_father_for_each_seed() -> None:
    book = _book(founders_as="plant")
    for code in ("s", "p", "q"):
        book.add(Plant(code))
    book.add(Cross("x", "s", intended="open"))
    for code in ("p", "q"):
        book.add(PollenCandidate("x", code, 0.5))
    for code in ("a", "b"):
        book.add(Plant(code, cross="x"))
    assert PedigreeNetwork.from_records(book).coancestry_exact("a", "b") == Fraction(3, 16)


def test_one_candidate_with_odds_1_is_certain() -> None:
    book = _book(("y", "B", "A"))
    book.add(Cross("x", "A", ""))
    book.add(PollenCandidate("x", "B", 1.0))
    book.add(Cross("s", "A", "", intended="selfing"))
    book.add(PollenCandidate("s", "B", 0.5))
    book.add(PollenCandidate("s", "self", 0.5))
    net = PedigreeNetwork.from_records(book)
    assert [pair.crosses for pair in net.reciprocal_pairs()] == [(("B×A",), ("x",))]
    assert net.selfings() == []


def test_a_selfing_that_names_no_plant_has_unknown_parents() -> None:
    book = Book()
    book.add(Cross("x", intended="selfing"))
    book.add(Plant("a", cross="x"))
    net = PedigreeNetwork.from_records(book)
    assert net.unknown_share("a") == 1
    assert net.inbreeding("a") == 0


def test_a_huge_number_of_selfings_is_answered_at_once() -> None:
    book = _book(("f", "A", "B"))
    book.plants["f"].selfings = 10**9
    net = PedigreeNetwork.from_records(book)
    assert net.inbreeding("f") == 1
    assert net.inbreeding_exact("f") is None


def test_odd_ploidy_and_differing_candidates_of_crosses_without_progeny_are_named() -> None:
    book = _book()
    for code, ploidy in (("three", 3), ("four", 4), ("two", 2)):
        book.add(Plant(code, ploidy=ploidy))
    book.add(Cross("odd", "three", "three"))
    book.add(Cross("differ", "four", ""))
    book.add(PollenCandidate("differ", "two", 0.5))
    found = {(p.kind, p.plants) for p in PedigreeNetwork.from_records(book).problems()}
    assert ("ploidy_odd", ("three",)) in found
    assert ("ploidy_differs", ("four", "two")) in found


def test_ploidy_is_the_plant_s_own_else_the_crop_s_else_the_book_s() -> None:
    """formats.md: blank: the crop's, else the book's."""
    book = _book(crop="potato", ploidy=2)
    book.add(Plant("own", ploidy=2))
    book.add(Plant("crop"))
    book.add(Plant("cell", crop="potato"))
    net = PedigreeNetwork.from_records(book)
    assert [net.ploidy(code) for code in ("own", "crop", "cell")] == [2, 4, 4]
    assert net.base()["ploidy"] == 4
    without = PedigreeNetwork.from_records(Book(plants={"a": Plant("a")}))
    assert without.base()["ploidy"] == 2


def test_a_part_of_the_graph_is_made_by_itself_and_says_the_same() -> None:
    book = _book(("x", "A", "B"), ("x2", "x", "x"), ("far", "C", "D"))
    book.add(Plant("piece", raised="cutting_of", source="x"))
    book.add(Cross("maybe", "A", ""))
    book.add(PollenCandidate("maybe", "self", 0.25))
    net = PedigreeNetwork.from_records(book)
    part = net.graph_of(["A", "x", "x2", "piece"])
    assert ("plant", "far") not in part
    assert set(part.edges(data="role")) <= set(net.graph.edges(data="role"))
    assert {(a[1], b[1], role) for a, b, role in part.edges(data="role")} == {
        ("A", "A×B", "seed"),
        ("A×B", "x", "progeny"),
        ("x", "x×x", "seed"),
        ("x", "x×x", "pollen"),
        ("x×x", "x2", "progeny"),
        ("x", "piece", "cutting_of"),
        ("A", "maybe", "seed"),
        ("A", "maybe", "pollen"),
    }
    assert net.graph.number_of_nodes() == len(book.plants) + len(book.crosses)
