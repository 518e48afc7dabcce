"""A dict that makes its values when they are asked for, and that is a dict to all who use it."""

from __future__ import annotations

import copy
import gc
import pickle

import pytest

from pedigreeview.book.memory import uncollected
from pedigreeview.book.on_demand import OnDemand


def _three() -> OnDemand[list[str]]:
    return OnDemand({"a": 0, "b": 1, "c": 2}, lambda place: ["xyz"[place]])


def test_a_dict_on_demand_is_a_dict() -> None:
    held: OnDemand[str] = OnDemand({"a": 0, "b": 1, "c": 2}, lambda place: "xyz"[place])
    assert dict(held) == {"a": "x", "b": "y", "c": "z"}
    assert {**held} == held == held.copy() == copy.deepcopy(held)
    assert held | {"a": "q"} == {"a": "q", "b": "y", "c": "z"}
    assert held.get("b") == "y"
    assert held.get("q") is None
    assert held.pop("b") == "y"
    assert held.pop("b", "none") == "none"
    assert held.setdefault("a", "n") == "x"
    assert held.setdefault("d", "n") == "n"
    assert held.popitem() == ("d", "n")
    assert list(held.items()) == [("a", "x"), ("c", "z")]
    assert repr(held) == "{'a': 'x', 'c': 'z'}"
    held.update(c="w")
    assert list(held.values()) == ["x", "w"]
    assert len(held) == 2
    held.clear()
    assert not held
    with pytest.raises(KeyError):
        held["a"]


def test_values_are_made_once() -> None:
    made: list[int] = []

    def make(place: int) -> list[str]:
        made.append(place)
        return [str(place)]

    held = OnDemand({"a": 0, "b": 1}, make)
    assert len(held) == 2
    assert list(held) == ["a", "b"]
    assert "b" in held
    assert made == []
    assert held["b"] is held["b"]
    assert made == [1]


def test_it_says_whether_its_values_are_as_they_were_made() -> None:
    assert _three().as_made()
    read = _three()
    assert read["a"] == ["x"]
    assert read.as_made()
    read["a"].append("more")
    assert not read.as_made()
    for change in (
        lambda held: held.pop("a"),
        lambda held: held.update(d=["n"]),
        lambda held: held.setdefault("d", ["n"]),
        lambda held: held.__setitem__("a", ["x"]),
        lambda held: held.__delitem__("a"),
        lambda held: held.__ior__({"d": ["n"]}),
        lambda held: held.clear(),
        lambda held: held.popitem(),
    ):
        held = _three()
        change(held)
        assert not held.as_made()


def test_copies_are_plain_dicts() -> None:
    whole = {"a": ["x"], "b": ["y"], "c": ["z"]}
    for copied in (copy.copy(_three()), copy.deepcopy(_three()), {"q": 1} | _three()):
        assert type(copied) is dict
    assert {"q": 1} | _three() == {"q": 1, **whole}
    held = OnDemand({"a": 0}, chr)
    assert pickle.loads(pickle.dumps(held)) == {"a": "\0"}


def test_the_collector_is_put_back_as_it_was() -> None:
    with uncollected():
        assert not gc.isenabled()
        with uncollected():
            pass
        assert not gc.isenabled()
    assert gc.isenabled()
