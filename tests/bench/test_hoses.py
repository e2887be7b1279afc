"""The shop's own hoses on the bench: kept, changed, withdrawn, and what the build page makes of their part number."""

from __future__ import annotations

import re

from tagger.store import Store
from tests.bench.served import HOSE, Bench, Served

FORM = {"part": "TW 2W 12", "manufacturer": "an invented one", "standard": "2sn", "dash": "-12", "max_working_bar": "2000 psi",
        "bend_radius_mm": "10 in", "outside_diameter_mm": "31.7", "max_temperature_c": "100", "fluids": "water_glycol",
        "source": "data sheet 7"}  # fmt: skip


def _rated(bench: Bench, part: str) -> str:
    sent = {**HOSE, "hose.standard": "EN 853 2SN", "hose.dash": "12", "hose.part": part}
    said: str = bench.submit("/bench/build/preview", sent).json()["html"]
    return re.sub(r"\s+", " ", re.sub(r"<[^>]*>", " ", said))


def test_an_own_hose_is_entered_rates_what_is_built_and_is_withdrawn(bench: Bench, store: Store) -> None:
    assert "138 bar" not in _rated(bench, "TW 2W 12")
    assert bench.submit("/bench/hoses/keep", FORM).status_code == 200
    [hose] = store.own_hoses()
    assert (hose.standard, hose.dash, hose.bend_radius_mm, hose.fluids) == (
        "EN 853 2SN",
        12,
        254,
        ("water_glycol",),
    )
    assert "138 bar" in _rated(bench, "tw-2w-12") and "138 bar" not in _rated(bench, "another")
    page = bench.get("/bench/hoses", params={"part": "tw2w12", "dash": "12"}).text
    assert 'value="254.0"' in page and "data sheet 7" in page
    gone = {"part": "TW 2W 12", "dash": "12"}
    assert bench.submit("/bench/hoses/drop", gone).status_code == 422
    assert bench.submit("/bench/hoses/drop", {**gone, "reason": "not stocked"}).status_code == 200
    assert store.own_hoses() == [] and "138 bar" not in _rated(bench, "TW 2W 12")


def test_a_list_of_hoses_is_imported_whole_or_not_at_all_and_exported(bench: Bench, store: Store) -> None:
    rows = "part,standard,dash,max_working_bar,fluids,max_temperature_c,source\n" \
           "TW 2W 12,2sn,-12,2000 psi,mineral_oil; water_glycol,100,data sheet 7\n"  # fmt: skip
    wrong = rows + "TW 2W 16,2sn,99,100,,,data sheet 7\n"
    sent = {"file": ("hoses.csv", wrong.encode())}
    refused = bench.submit("/bench/hoses/import", files=sent)
    assert refused.status_code == 422 and "row 3" in refused.text and store.own_hoses() == []
    bench.submit("/bench/hoses/import", files={"file": ("hoses.csv", rows.encode())})
    [hose] = store.own_hoses()
    exported = bench.get("/bench/hoses/list.csv").content
    bench.submit("/bench/hoses/import", files={"file": ("hoses.csv", exported)})
    assert store.own_hoses() == [hose] and hose.fluids == ("mineral_oil", "water_glycol")


def test_a_wrong_value_is_told_at_its_field_and_kept_typed(bench: Bench, store: Store) -> None:
    for change, field in (
        ({"source": ""}, "source"),
        ({"dash": "99"}, "dash"),
        ({"max_temperature_c": ""}, "max_temperature_c"),
        ({"fluids": "soup"}, "fluids"),
        ({"edition": "of last year"}, "edition"),
    ):
        answer = bench.submit("/bench/hoses/keep", {**FORM, **change})
        assert answer.status_code == 422 and f'id="wrong-{field}' in answer.text, field
        assert 'value="TW 2W 12"' in answer.text
    assert store.own_hoses() == []


def test_a_rating_above_every_published_one_says_so_on_the_page_and_while_building(
    bench: Bench, store: Store
) -> None:
    bench.submit("/bench/hoses/keep", {**FORM, "max_working_bar": "400 bar"})
    assert "above every published value" in bench.get("/bench/hoses").text
    assert "400 bar" in _rated(bench, "TW 2W 12")
    assert "data sheet 7" in _rated(bench, "TW 2W 12")


def test_only_a_manager_changes_the_list(served: Served, store: Store) -> None:
    with Bench(served.url, store, "builder") as builder:
        assert builder.get("/bench/hoses").status_code == 200
        for act in ("keep", "drop"):
            assert builder.submit(f"/bench/hoses/{act}", FORM).status_code == 403, act


def test_a_part_number_that_is_scanned_or_typed_fills_in_the_hose(bench: Bench, store: Store) -> None:
    bench.submit("/bench/hoses/keep", FORM)
    found = bench.get("/bench/scan", params={"text": "tw 2w-12"}).json()
    assert (found["kind"], found["fields"]) == (
        "hose",
        {"hose.standard": "EN 853 2SN", "hose.dash": "12", "hose.edition": "", "hose.part": "TW 2W 12"},
    )
    assert "EN 853 2SN -12" in found["say"]
    bench.submit("/bench/hoses/keep", {**FORM, "dash": "8"})
    found = bench.get("/bench/scan", params={"text": "TW 2W 12"}).json()
    assert (found["kind"], found["fields"]) == ("hose", {}), "two sizes: neither is chosen"
    store.withdraw("blisters", hose_lot="TW 2W 12")
    assert "WITHDRAWN" in bench.get("/bench/scan", params={"text": "TW 2W 12"}).json()["say"]
