"""A shop that tests first: its pages offer the job card before the proof test, and the tag after it."""

from __future__ import annotations

import re

import pytest

from api.scan.held import digest
from api.settings import Settings
from tagger.store import Store
from tests.bench.served import HOSE, Bench


@pytest.fixture
def settings(settings: Settings) -> Settings:
    return settings.model_copy(update={"proof_first": True})


@pytest.fixture
def number(bench: Bench, store: Store) -> str:
    bench.submit("/bench/build", {**HOSE, "hose.standard": "EN 853 2SN"})
    return store.find().assemblies[0].number


def _print(bench: Bench, number: str, template: str) -> int:
    fields = {"number": number, "template": template, "as": "pdf"}
    return bench.submit("/bench/print", fields).status_code


def _chosen(page: str) -> list[str]:
    return re.findall(r'<option value="(\w+)" selected', page)


def test_the_job_card_is_offered_and_printed_first_then_the_tag(
    bench: Bench, store: Store, number: str
) -> None:
    run = store.assembly(number).run
    page = bench.get(f"/bench/run/{run}").text
    assert "Not yet proof-tested: 1" in page and "traveller_a5" in _chosen(page)
    assert _print(bench, number, "hang_tag") == 422
    assert _print(bench, number, "traveller_a5") == 200
    test = {"pressure_bar": "6000 psi", "hold_s": "60", "medium": "water", "result": "passed"}
    assert bench.submit(f"/bench/tag/{number}/proof", test).status_code == 200
    page = bench.get(f"/bench/run/{run}").text
    assert "Not yet proof-tested" not in page and "hang_tag" in _chosen(page)
    assert "Print (PDF)" in page and "Reprint" not in page, "the job card was no tag"
    assert _print(bench, number, "hang_tag") == 200


def test_a_tag_that_is_not_tested_is_not_had_as_a_file_either(
    bench: Bench, store: Store, number: str
) -> None:
    page = bench.get(f"/bench/run/{store.assembly(number).run}").text
    assert 'value="png" disabled' not in page, "the job card can be had"
    fields = {"number": number, "template": "hang_tag", "as": "png"}
    refused = bench.submit("/bench/print", fields)
    assert refused.status_code == 422 and "before the proof test has passed" in refused.text


def test_what_is_not_tested_is_not_recorded_as_installed_and_the_phone_shows_it_as_held(
    bench: Bench, store: Store, number: str
) -> None:
    refused = bench.submit(f"/bench/tag/{number}/event", {"kind": "fitted", "note": "boom"})
    assert refused.status_code == 422 and "lets no hose assembly out before the proof test" in refused.text
    assert not store.assembly(number).fitted
    assert "Held by the shop: do not install" in bench.get(f"/T/{number}").text
    assert digest(number) in bench.get("/scan/held.json").json()["held"]
    test = {"pressure_bar": "6000 psi", "hold_s": "60", "medium": "water", "result": "passed"}
    bench.submit(f"/bench/tag/{number}/proof", test)
    assert "Held by the shop" not in bench.get(f"/T/{number}").text
    assert bench.submit(f"/bench/tag/{number}/event", {"kind": "fitted"}).status_code == 200
    assert store.assembly(number).fitted
