"""What each label says (the crossing trade's papers), written out here by hand."""

from __future__ import annotations

import pytest

from pedigreeview.book.book import Book
from pedigreeview.book.faults import Fault
from pedigreeview.book.records import Cross, Harvest, Packet, Plant, Pollination
from pedigreeview.reports.label_content import KINDS, NOT_FOR_EATING, LabelText, labels_for
from pedigreeview.reports.matings import cautions_about_seed
from tests.reports.garden import garden


@pytest.fixture(scope="module")
def book() -> Book:
    return garden()


def one(book: Book, kind: str, code: str, **how: object) -> LabelText:
    (text,) = labels_for(book, kind, [code], **how)
    return text


def test_flower_tag(book):
    text = one(book, "flowers", "P1")
    assert text.code == "21-01/a"
    assert text.mating.text == "TP × BA"
    assert [fact.text for fact in text.facts if not fact.spare] == [
        "2021-06-11",
        "5 flowers",
        "by RW",
    ]
    # A tag that does not hold the cross is told beside it.
    text = one(book, "flowers", "P2")
    assert text.code == "21-01"
    assert "tag 7" in [fact.text for fact in text.facts]


def test_a_planned_cross_gets_a_tag_to_fill_in(book):
    text = one(book, "flowers", "23-01")
    assert text.mating.text == "WC × TP"
    assert [fact.text for fact in text.facts] == [
        "date ____",
        "____ flowers",
        "tag ____",
        "by ____",
    ]


def test_a_cross_means_all_its_pollinations(book):
    assert [text.scan for text in labels_for(book, "flowers", ["21-01"])] == ["P1", "P2"]


def test_one_tag_for_every_flower(book):
    texts = labels_for(book, "flowers", ["P1"], every=True)
    assert [text.badge for text in texts] == [f"flower {at} of 5" for at in range(1, 6)]
    assert len(labels_for(book, "flowers", ["P3"], every=True)) == 1


def test_fruit_tags_count_what_is_left_on_the_plant(book):
    # 3 set, 1 dropped; a pea is ripe 35 days after pollination at the earliest.
    texts = labels_for(book, "fruits", ["P1"])
    assert [text.badge for text in texts] == ["pod 1 of 2", "pod 2 of 2"]
    said = [fact.text for fact in texts[0].facts]
    assert said == ["pollinated 2021-06-11", "ripe from about 2021-07-16", "picked ____"]
    assert [f.text for f in one(book, "fruits", "P1", every=False).facts][2] == "2 pods"
    # Where nobody counted there is one tag, with room to write.
    assert "____ pods" in [fact.text for fact in one(book, "fruits", "P3").facts]


def test_pot_labels_are_those_of_plants_that_grow(book):
    assert [text.code for text in labels_for(book, "pots", ["21-01"])] == ["21-01-1", "21-01-3"]
    text = one(book, "pots", "21-01-1")
    assert text.mating.text == "TP × BA"
    assert text.facts[0].text == "sown 2022-03-29"


def test_row_stake(book):
    text = one(book, "stakes", "S1")
    assert (text.code, text.badge, text.mating.text) == ("21-01", "F1", "TP × BA")
    assert [fact.text for fact in text.facts][:3] == ["sown 2022-03-29", "6 plants", "packet K1"]
    text = one(book, "stakes", "S2")
    assert (text.code, text.name) == ("TP", "Tarnwick Pale")
    assert [fact.text for fact in text.facts][:2] == ["sown 2023-04-01", "20 seeds"]
    # The cross itself: its plants that grow.
    assert [f.text for f in one(book, "stakes", "21-01").facts] == ["sown 2022-03-29", "2 plants"]


def test_seed_packet_says_all_that_a_packet_must(book):
    text = one(book, "packets", "K1")
    assert (text.code, text.badge) == ("K1", "F1 seed")
    assert text.mating.text == "TP × BA"
    assert text.origin == "Borne on Tarnwick Pale (TP), pollen of Brockle Amber (BA)"
    said = [fact.text for fact in text.facts]
    assert said[:2] == ["covered", "harvested 2021-08-02"]
    # 7 of 8 came up, which is the 0.88 of the packet, so its date is that sowing's.
    assert said[2:5] == ["16 of 24 seeds left", "germination 88%", "on 2022-03-29"]
    assert text.cautions == (NOT_FOR_EATING,)
    assert NOT_FOR_EATING == "For sowing, not for eating."


def test_a_packet_leaves_room_for_what_is_not_known(book):
    text = one(book, "packets", "K2")
    assert text.origin == "Borne on 21-01-1, selfed"
    said = [fact.text for fact in text.facts]
    assert said == [
        "open",
        "harvested 2022-08-09",
        "0 of 71 seeds left",
        "germination ____ %",
        "on ____",
    ]
    text = one(book, "packets", "K3")
    assert text.origin == "Borne on Brockle Amber (BA), open-pollinated"
    said = [fact.text for fact in text.facts]
    assert said[0] == "seed of the cross"
    assert "covered / open" in said
    assert "____ seeds" in said


def test_candidates_stand_in_order_of_their_odds(book):
    assert one(book, "stakes", "22-03").mating.text == "TP × BA or WC"


def test_a_direction_that_nobody_knows_is_not_claimed():
    book = Book()
    for code in "AB":
        book.add(Plant(code))
    book.add(Cross("X", "A", "B", direction_known=False))
    book.add(Harvest("H", "X", packet="K"))
    book.add(Packet("K", "H", borne_on="A"))
    text = one(book, "packets", "K")
    assert not text.mating.direction_known
    assert text.origin == "Borne on A; A and B; which bore the seed is not known"


def test_poisonous_seed_says_so_on_its_packet():
    book = garden()
    book.settings.crop = "sweet pea"
    assert one(book, "packets", "K1").cautions == (NOT_FOR_EATING, "The seed is poisonous.")
    # Virus on blades is a caution for the garden, not for the packet.
    assert cautions_about_seed("rose") == ()
    assert any("nightshade" in text for text in cautions_about_seed("tomato"))
    assert cautions_about_seed("") == ()


def test_what_is_due_without_codes(book):
    assert [text.scan for text in labels_for(book, "flowers")] == ["P1", "P2", "P3", "23-01"]
    assert {text.code for text in labels_for(book, "fruits")} == {"21-01", "21-02"}
    assert [t.code for t in labels_for(book, "pots")] == ["WC", "21-01-1", "21-01-3"]
    assert [text.scan for text in labels_for(book, "stakes")] == ["S1", "S2"]
    # K2 is empty.
    assert [text.code for text in labels_for(book, "packets")] == ["K1", "K3"]


def test_several_for_each_stand_together(book):
    codes = [text.code for text in labels_for(book, "packets", ["K3", "K1"], each=2)]
    assert codes == ["K3", "K3", "K1", "K1"]


@pytest.mark.parametrize("kind", KINDS)
def test_a_code_that_is_not_there(book, kind):
    with pytest.raises(Fault, match=r"There is no .*'K9'") as told:
        labels_for(book, kind, ["K9"])
    assert told.value.todo


def test_faults_name_what_to_do(book):
    with pytest.raises(Fault, match=r"(?s)no labels for 'walls'.*flowers"):
        labels_for(book, "walls")
    with pytest.raises(Fault, match="no packets with seed left"):
        labels_for(Book(), "packets")
    with pytest.raises(Fault, match="at least one"):
        labels_for(book, "packets", each=0)
    with pytest.raises(Fault, match="no plants that still grow"):
        labels_for(book, "pots", ["22-01"])
    with pytest.raises(Fault, match="5,000"):
        labels_for(book, "packets", ["K1"], each=5001)


def test_the_book_is_left_as_it_was(book):
    before = [repr(record) for record in garden().records()]
    own = garden()
    for kind in KINDS:
        labels_for(own, kind)
    assert [repr(record) for record in own.records()] == before


def test_a_pollination_of_a_cross_that_is_missing_still_gets_a_tag():
    book = Book()
    book.add(Pollination("P", "lost", "2021-06-11", 2))
    assert one(book, "flowers", "P").mating.text == "? × ?"
