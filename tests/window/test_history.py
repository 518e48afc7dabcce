"""Back and forward as in a browser."""

from __future__ import annotations

from pedigreeview.window.history import History, Visit


def test_a_new_place_cuts_off_what_lay_ahead() -> None:
    history = History()
    a, b, c = (Visit("pedigree", code, code) for code in "ABC")
    for visit in (a, b, b):
        history.go(visit)
    assert history.back() == a
    history.go(c)
    assert not history.can_go_forward()
    assert history.forward() is None
    assert history.back() == a
    assert history.back() is None
    assert history.forward() == c


def test_the_trail_is_what_was_stood_at() -> None:
    history = History()
    for focus, selected in (("A", "A"), ("A", "B"), ("B", "B"), ("C", "C")):
        history.go(Visit("pedigree", focus, selected))
    assert history.trail(5) == ["A", "B", "C"]
    assert history.trail(2) == ["B", "C"]
    history.go(Visit("pedigree", "A", "A"))
    assert history.trail(5) == ["B", "C", "A"]


def test_only_so_many_are_kept() -> None:
    history = History(longest=3)
    for code in "ABCDE":
        history.go(Visit("pedigree", code))
    assert history.back() == Visit("pedigree", "D")
    assert history.back() == Visit("pedigree", "C")
    assert history.back() is None
