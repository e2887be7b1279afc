"""A wrong reel is told while it is scanned or typed, and registered by no way without a reason."""

from __future__ import annotations

from typing import Any

import pytest

from tagger.store import Filter, LotReason, Store
from tagger.trade.tables import tables
from tests.bench.served import HOSE, Bench
from tests.bench.test_lists import _upload

R2_12 = {**HOSE, "hose.lot": "H-77001"}
SC_12 = {**HOSE, "hose.standard": "EN 857 2SC", "hose.lot": "H-77001"}


def _preview(bench: Bench, fields: dict[str, Any]) -> dict[str, Any]:
    answer: dict[str, Any] = bench.submit("/bench/build/preview", fields).json()
    return answer


def test_a_withdrawn_lot_says_so_when_it_is_typed_before_anything_else_is(bench: Bench, store: Store) -> None:
    store.withdraw("cover blisters", hose_lot="H-77001")
    store.withdraw("soft seats", fitting_lot="F-8")
    found = _preview(bench, {"hose.lot": "h-77001", "end_b.lot": "F-8"})
    assert {p["field"]: p["why"] for p in found["problems"] if p["field"].endswith("lot")} == {
        "hose.lot": "Hose lot h-77001 is withdrawn (“cover blisters”).",
        "end_b.lot": "Fitting lot F-8 is withdrawn (“soft seats”).",
    }
    assert "cover blisters" in found["html"]


def test_no_reason_is_asked_for_a_withdrawn_lot_that_is_another_hoses(bench: Bench, store: Store) -> None:
    """Beside the field of a withdrawn lot stood "choose the reason: a date code ..."."""
    bench.submit("/bench/build", R2_12)
    assert _preview(bench, SC_12)["ask_lot_reason"]
    store.withdraw("cover blistered", hose_lot="H-77001")
    found = _preview(bench, SC_12)
    assert "is withdrawn" in found["html"] and "is known as" not in found["html"]
    assert not found["ask_lot_reason"]


def test_a_lot_known_as_another_hose_stops_the_page_until_a_reason_is_chosen(
    bench: Bench, store: Store
) -> None:
    bench.submit("/bench/build", R2_12)
    found = _preview(bench, SC_12)
    assert found["ask_lot_reason"]
    assert "H-77001 is known as SAE 100R2 -12" in found["html"]
    assert bench.submit("/bench/build", SC_12).status_code == 422
    assert store.count() == 1
    reason = {"lot_reason": "other_manufacturer"}
    assert "H-77001 is known as" not in _preview(bench, {**SC_12, **reason})["html"]
    assert bench.submit("/bench/build", {**SC_12, **reason}).status_code == 200
    [new, _] = store.find(Filter(lot="h-77001")).assemblies
    assert store.history(new.number)[0].data["lot_reason"] == LotReason.OTHER_MANUFACTURER
    assert "Another manufacturer with the same lot number" in bench.get(f"/bench/tag/{new.number}").text


def test_a_reel_that_is_two_hoses_fills_in_neither(bench: Bench, store: Store) -> None:
    bench.submit("/bench/build", R2_12)
    one = bench.get("/bench/scan", params={"text": "H-77001"}).json()
    assert one["fields"]["hose.standard"] == "SAE 100R2"
    bench.submit("/bench/build", {**SC_12, "lot_reason": "date_code"})
    two = bench.get("/bench/scan", params={"text": "H-77001"}).json()
    assert two["fields"] == {"hose.lot": "H-77001"}
    assert "EN 857 2SC" in two["say"] and "SAE 100R2" in two["say"]


@pytest.mark.parametrize("reason", ["", "earlier_record_wrong"])
def test_a_list_has_a_field_for_the_reason(bench: Bench, store: Store, reason: str) -> None:
    bench.submit("/bench/build", R2_12)
    columns = ",".join((*COLUMNS, "hose.lot", "lot_reason"))
    row = f"EN 857 2SC,12,{END},{END},900,H-77001,{reason}"
    _, form = _upload(bench, f"{columns}\n{row}\n".encode(), "list.csv")
    dry = bench.submit("/bench/lists/dry", form)
    assert (dry.status_code, "H-77001 is known as" in dry.text) == ((200, False) if reason else (422, True))
    assert (">J2<" in dry.text) == (not reason), "the cell of the lot is named"
    bench.submit("/bench/lists/run", form)
    assert store.count() == (2 if reason else 1)


END = "sae_37_flare,12,female_swivel"
COLUMNS = [
    "hose.standard",
    "hose.dash",
    *(f"{end}.{name}" for end in ("end_a", "end_b") for name in ("connection", "dash", "form")),
    "length_mm",
]


def test_each_pair_of_names_for_one_hose_is_one_lot_in_the_tables() -> None:
    assert frozenset(("EN 853 2SN", "SAE 100R2")) in tables().same_hose
    assert frozenset(("EN 856 4SP", "EN 856 4SH")) not in tables().same_hose
