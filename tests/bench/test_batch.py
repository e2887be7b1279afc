"""A run is measured and proof-tested in one act, and has one certificate."""

from __future__ import annotations

import csv
import re

import pypdfium2
import pytest

from tagger.code import number as tag_number
from tagger.store import CrimpValue, Kind, Store
from tests.bench.served import HOSE, Bench

TEST = {"pressure_bar": "6000 psi", "hold_s": "45", "medium": "water", "tester": "Bela", "result": "passed",
        "gauge": "G-7", "gauge_valid_until": "2099-06-30", "method": "work sheet 3"}  # fmt: skip


@pytest.fixture
def numbers(bench: Bench, store: Store) -> list[str]:
    bench.submit("/bench/build", {**HOSE, "hose.standard": "EN 853 2SN", "hose.lot": "H-77", "count": "3"})
    return [one.number for one in store.find().assemblies]


def _run(store: Store, number: str) -> int:
    return store.assembly(number).run


def _paper(bench: Bench, address: str) -> tuple[str, int]:
    answer = bench.get(address)
    assert answer.status_code == 200, answer.text
    pages = pypdfium2.PdfDocument(answer.content)
    return " ".join(" ".join(page.get_textpage().get_text_range().split()) for page in pages), len(pages)


def test_a_whole_run_is_tested_and_certified_in_one_act(
    bench: Bench, store: Store, numbers: list[str]
) -> None:
    address = f"/bench/run/{_run(store, numbers[0])}"
    page = bench.get(f"{address}/prove").text
    assert page.count(" checked>") == 3 and "Required proof pressure: 414 bar (6000 psi)" in page
    assert bench.submit(f"{address}/prove", {**TEST, "numbers": numbers}).status_code == 200
    page = bench.get(f"{address}/prove").text
    assert page.count(" checked>") == 0 and page.count("Proof test passed") == 3
    said, pages = _paper(bench, f"/bench/tag/{numbers[0]}/batch.pdf")
    batch = store.proof_batch(numbers[0])
    assert batch is not None
    expected = [batch.reference, "Proof test passed: 3 of 3", *map(tag_number.format, numbers), "EN 853 2SN",
                "H-77", "414 bar (6000 psi)", "45 s (required: 30 to 60 s)", "Gauge G-7", "2099-06-30",
                "Method work sheet 3", "Bela", "own statement of Ridge Hose",
                "not an inspection certificate of an independent body"]  # fmt: skip
    assert [words for words in expected if words not in said] == []
    each, pages = _paper(bench, f"/bench/tag/{numbers[0]}/batch.pdf?each=1")
    assert pages == 3 and all(f"Tag {tag_number.format(n)}: passed" in each for n in numbers)


def test_ticked_members_alone_are_tested_and_one_that_leaked_is_not_certified_as_passed(
    bench: Bench, store: Store, numbers: list[str]
) -> None:
    address = f"/bench/run/{_run(store, numbers[0])}/prove"
    bench.submit(address, {**TEST, "numbers": numbers[:2]})
    assert set(store.last(numbers, Kind.PROOF_TESTED)) == set(numbers[:2])
    bench.submit(address, {**TEST, "numbers": numbers[1:2], "result": "failed"})
    said, _ = _paper(bench, f"/bench/tag/{numbers[0]}/batch.pdf")
    assert "Proof test passed: 1 of 2" in said and "Not every hose assembly passed" in said
    assert "Proof test certificate" not in said and "tested again on" in said


def test_a_withdrawn_member_is_named_as_withdrawn(bench: Bench, store: Store, numbers: list[str]) -> None:
    bench.submit(f"/bench/run/{_run(store, numbers[0])}/prove", {**TEST, "numbers": numbers})
    store.withdraw("cover blisters", tag=numbers[0])
    said, _ = _paper(bench, f"/bench/tag/{numbers[1]}/batch.pdf")
    assert "Proof test passed: 2 of 3" in said and "WITHDRAWN - do not use" in said


def test_a_member_crimped_after_the_test_counts_no_more_and_is_ticked_to_be_tested_again(
    bench: Bench, store: Store, numbers: list[str]
) -> None:
    address = f"/bench/run/{_run(store, numbers[0])}/prove"
    store.keep_crimp(CrimpValue("EN 853 2SN", 12, "two-wire", 33.4, 0.1, 0.2, "invented for a test"))
    bench.submit(address, {**TEST, "numbers": numbers})
    bench.submit(f"/bench/tag/{numbers[1]}/crimp", {"crimp_a": "33.4", "shell_a": "two-wire"})
    page = bench.get(address).text
    [ticked] = re.findall(r'value="(\w+)" aria-label="[^"]*" checked', page)
    assert ticked == numbers[1] and "Tested before it was crimped: test again" in page
    said, _ = _paper(bench, f"/bench/tag/{numbers[0]}/batch.pdf")
    assert "Proof test passed: 2 of 3" in said and "the test does not count" in said
    alone, _ = _paper(bench, f"/bench/tag/{numbers[1]}/certificate.pdf")
    assert "TESTED BEFORE IT WAS CRIMPED" in alone and "Proof test certificate" not in alone
    assert "a crimp was recorded on" in bench.get(f"/bench/tag/{numbers[1]}").text
    found = bench.get("/bench/find").text
    assert (found.count("Tested before it was crimped"), found.count("Proof test passed")) == (1, 2)
    rows = csv.DictReader(bench.get("/bench/find.csv").text.removeprefix("\ufeff").splitlines())
    states = {tag_number.compact(row["number"]): row["proof_test"] for row in rows}
    assert states == dict.fromkeys(numbers, "passed") | {numbers[1]: "outdated"}


def test_a_slip_is_refused_and_what_was_typed_stays(bench: Bench, store: Store, numbers: list[str]) -> None:
    address = f"/bench/run/{_run(store, numbers[0])}/prove"
    refused = bench.submit(address, {**TEST, "pressure_bar": "6000", "numbers": numbers[:1]})
    assert refused.status_code == 422 and refused.text.count("above the minimum burst pressure") >= 1
    assert 'value="6000"' in refused.text and refused.text.count(" checked>") == 1
    refused = bench.submit(address, TEST)
    assert refused.status_code == 422 and "No hose assembly is selected" in refused.text
    other = bench.submit(address, {**TEST, "numbers": ["00000000001"]})
    assert other.status_code == 422 and "not of this run" in other.text
    assert store.last(numbers, Kind.PROOF_TESTED) == {}


def test_the_crimps_of_a_run_are_entered_in_one_act(bench: Bench, store: Store, numbers: list[str]) -> None:
    address = f"/bench/run/{_run(store, numbers[0])}"
    store.keep_crimp(CrimpValue("EN 853 2SN", 12, "two-wire", 33.4, 0.1, 0.2, "invented for a test"))
    shells = {"shell_a": "two-wire", "shell_b": "two-wire"}
    one, two, _ = numbers
    wrong = {f"crimp_a {one}": "33.4", f"crimp_b {two}": "thick"}
    refused = bench.submit(f"{address}/crimps", shells | wrong)
    assert refused.status_code == 422 and 'value="thick" aria-invalid="true"' in refused.text
    assert store.last(numbers, Kind.CRIMPED) == {}
    bench.submit(f"{address}/crimps", shells | {f"crimp_a {one}": "33.4", f"crimp_b {two}": "33.9"})
    assert set(store.last(numbers, Kind.CRIMPED)) == {one, two}
    assert set(store.blocked(numbers)) == {two}
    bench.submit(f"{address}/prove", {**TEST, "numbers": numbers})
    said, _ = _paper(bench, f"/bench/tag/{one}/batch.pdf")
    assert "33.4 mm (33.3 to 33.6)" in said and "33.9 mm (33.3 to 33.6): OUT OF TOLERANCE" in said


def test_the_ticked_members_of_a_run_are_flushed_and_their_records_and_certificates_say_so(
    bench: Bench, store: Store
) -> None:
    bench.submit("/bench/build", {**HOSE, "count": "2", "cleanliness": "18/16/13"})
    one, two = (item.number for item in store.every())
    run = store.assembly(one).run
    page = bench.get(f"/bench/run/{run}/flush", params={"number": two}).text
    assert f'value="{two}" aria-label="{tag_number.format(two)}" checked' in page and "18/16/13" in page
    form = {"numbers": [two], "method": "filtered oil", "flushed_by": "Ines"}
    refused = bench.submit(f"/bench/run/{run}/flush", {**form, "method": ""})
    assert refused.status_code == 422 and 'id="wrong-method"' in refused.text and store.flushed([two]) == {}
    bench.submit(f"/bench/run/{run}/flush", form)
    assert set(store.flushed([one, two])) == {two}
    assert "filtered oil; Ines" in bench.get(f"/bench/tag/{two}").text
