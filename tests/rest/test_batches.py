"""Several assemblies in one act by the JSON API, and the certificate that lists what an order asks of it."""

from __future__ import annotations

import io

import httpx
import pypdfium2

from api.rest.shared import EXAMPLE_SPEC
from tagger.store import Store

TEST = {
    "pressure_bar": 345, "hold_s": 60, "medium": "water", "passed": True, "tester": "Bela",
    "rating_bar": 172, "rating_source": "hose manufacturer's data sheet 9",
    "gauge": "G-7", "gauge_valid_until": "2030-06-30", "method": "work sheet 3",
}  # fmt: skip
CRIMP = {"hose_standard": "SAE 100R2", "hose_dash": 12, "shell": "F-12", "diameter_mm": 31.0,
         "minus_mm": 0.2, "plus_mm": 0.2, "source": "an invented chart"}  # fmt: skip


def _text(pdf: bytes) -> str:
    pages = pypdfium2.PdfDocument(io.BytesIO(pdf))
    return " ".join(" ".join(page.get_textpage().get_text_range().split()) for page in pages)


def test_a_batch_is_crimped_flushed_and_tested_and_its_certificate_lists_it_all(
    api: httpx.Client, store: Store
) -> None:
    spec = {**EXAMPLE_SPEC, "end_a": {**EXAMPLE_SPEC["end_a"], "lot": "F-77"}, "fluid": "mineral_oil"}  # type: ignore[dict-item]
    made = {"spec": spec, "count": 2, "customer": "Quarry North", "machine": "Loader 4"}
    refused = api.post("/assemblies", json={**made, "cleanliness": "clean"})
    assert [p["field"] for p in refused.json()["problems"]] == ["cleanliness"]
    numbers = api.post("/assemblies", json={**made, "cleanliness": "18/16/13"}).json()["numbers"]
    api.put("/crimp-diameters", json=CRIMP).raise_for_status()
    crimps = [{"number": n, "end": e, "measured_mm": 31.1, "shell": "F-12"} for n in numbers for e in "ab"]
    api.post("/crimps", json={"crimps": crimps}).raise_for_status()
    flushed = {"numbers": numbers, "method": "2 min with filtered oil", "flushed_by": "Ines"}
    assert api.post("/flushings", json={**flushed, "method": ""}).status_code == 422
    assert {event["kind"] for event in api.post("/flushings", json=flushed).json()} == {"flushed"}
    batch = api.post("/proof-tests", json={"numbers": numbers, "test": TEST}).json()
    paper = api.get(f"/assemblies/{numbers[0]}/batch-certificate.pdf").content
    own = api.get(f"/assemblies/{numbers[0]}/certificate.pdf").content
    for said in (_text(paper), _text(own)):
        for told in (
            *(numbers if said == _text(paper) else numbers[:1]),
            *([batch["reference"]] if said == _text(paper) else []),
            "SAE 100R2", "H-2291", "F-77", "mineral oil", "172 bar", "31.1 mm", "G-7", "2030", "work sheet 3", "60 s",
            "water", "Bela", "Quarry North", "18/16/13", "2 min with filtered oil", "Ines",
        ):  # fmt: skip
            assert told in said, told
        assert "own statement" in said and "It is not an inspection certificate" in said
        assert "inspection certificate" not in said.replace("It is not an inspection certificate", "")


def test_a_pressure_that_holds_the_batch_is_recorded_only_when_it_is_confirmed(
    api: httpx.Client, store: Store
) -> None:
    numbers = api.post("/assemblies", json={"spec": EXAMPLE_SPEC, "count": 2}).json()["numbers"]
    high = {**TEST, "pressure_bar": 500}
    refused = api.post("/proof-tests", json={"numbers": numbers, "test": high})
    assert (refused.status_code, refused.json()["problems"][0]["field"]) == (422, "pressure_bar")
    assert not store.proved_of([number.replace("-", "") for number in numbers])
    held = api.post("/proof-tests", json={"numbers": numbers, "test": {**high, "confirmed": True}})
    assert [member["result"] for member in held.json()["members"]] == ["held", "held"]
    good = {"json": {"numbers": numbers, "test": TEST}}
    assert {(m["result"], m["stands"]) for m in api.post("/proof-tests", **good).json()["members"]} == {
        ("passed", "held")
    }
    again = api.post(f"/assemblies/{numbers[0]}/proof-tests", json=TEST).json()
    assert (again["data"]["result"], again["stands"]) == ("passed", "held"), (
        "a good test releases nothing that was held"
    )
