"""Every fact of a crop names its source; values lie in their ranges."""

import json

import pytest

from pedigreeview.book.crops import crop_named, crops
from pedigreeview.places import resource


def facts_of(entry):
    return {name: held for name, held in entry.items() if isinstance(held, dict) and name != "map"}


@pytest.mark.parametrize("crop", crops(), ids=lambda crop: crop.name)
def test_every_fact_has_a_source_and_lies_in_its_range(crop):
    facts = facts_of(crop.facts)
    assert {"ploidy", "chromosomes", "outcrossing", "life"} <= set(facts)
    for name, fact in facts.items():
        assert fact["source"], name
        if "low" in fact and "high" in fact:
            assert fact["low"] <= fact["high"], name
            assert fact["low"] <= fact.get("value", fact["low"]) <= fact["high"], name
    for caution in crop.facts["cautions"]:
        assert caution["text"].endswith(".")
        assert caution["source"]
    assert crop.facts["life"]["value"] in ("annual", "biennial", "perennial")


def test_maps_agree_with_the_chromosome_number():
    for crop in crops():
        if "map" in crop.facts:
            assert 2 * crop.facts["map"]["n"] * (crop.ploidy // 2) == crop.chromosomes


def test_names_are_unique_and_found_by_by_names():
    names = [name.casefold() for crop in crops() for name in (crop.name, *crop.also)]
    assert len(names) == len(set(names))
    assert crop_named("Pisum sativum").name == "pea"
    assert json.loads(resource("crops.json").read_text(encoding="utf-8"))["cautions"]
