"""The JSON API of the shop's fittings: kept, found, imported, and the cut length of a spec that names them."""

from __future__ import annotations

import csv
import io
import json
import zipfile
from collections.abc import Callable, Iterator
from typing import Any

import httpx
import pytest

from api.rest.shared import EXAMPLE_SPEC
from tagger.store import Role, Store
from tests.databases import postgresql_server, postgresql_template, postgresql_url, sqlite_url
from tests.databases import url as database
from tests.rest.examples import CRIMPS, FITTING, FITTINGS, HOSES

__all__ = ["database", "postgresql_server", "postgresql_template", "postgresql_url", "sqlite_url"]


@pytest.fixture
def store(database: str) -> Iterator[Store]:
    with Store.open(database) as opened:
        yield opened


def _file(text: str) -> dict[str, Any]:
    return {"file": ("fittings.csv", text.encode(), "text/csv")}


def test_a_fitting_is_kept_found_and_dropped(api: httpx.Client, store: Store) -> None:
    kept = api.put("/fittings/TW-12/04", json=FITTING)
    assert kept.status_code == 200 and kept.json()["stock_number"] == "TW-12/04"
    assert api.get("/fittings/tw-12/04").json() == kept.json()
    assert [one["stock_number"] for one in api.get("/fittings", params={"text": "jic 12"}).json()] == [
        "TW-12/04"
    ]
    assert api.delete("/fittings/TW-12/04").json() == kept.json()
    assert api.get("/fittings/TW-12/04").status_code == 404
    assert api.delete("/fittings/TW-12/04").status_code == 404


def test_a_builder_reads_the_list_and_only_a_manager_changes_it(
    device: Callable[[Role], httpx.Client], api: httpx.Client
) -> None:
    builder = device(Role.BUILDER)
    assert builder.put("/fittings/TW-1", json=FITTING).status_code == 403
    assert builder.post("/fittings/import", files=_file(FITTINGS)).status_code == 403
    api.put("/fittings/TW-1", json=FITTING).raise_for_status()
    assert builder.delete("/fittings/TW-1").status_code == 403
    assert builder.get("/fittings/TW-1").status_code == 200


def test_what_is_exported_can_be_imported_again(api: httpx.Client, store: Store) -> None:
    api.put(
        "/fittings/-12 JIC", json={**FITTING, "rating_bar": 345, "rating_source": "a chart", "swivel": True}
    ).raise_for_status()
    before = store.fittings()
    for form in ("csv", "xlsx"):
        exported = api.get(f"/fittings.{form}").content
        api.delete("/fittings/-12 JIC").raise_for_status()
        answer = api.post("/fittings/import", files={"file": (f"fittings.{form}", exported)})
        assert answer.json() == {"fittings": ["-12 JIC"]}
        assert store.fittings() == before


def test_one_wrong_row_keeps_the_whole_list_out(api: httpx.Client, store: Store) -> None:
    wrong = FITTINGS + "TW-2,sae_37_flare,7,female_swivel,50,seat_to_hose_butt,a chart\n"
    refused = api.post("/fittings/import", files=_file(wrong))
    assert refused.status_code == 422
    assert [p["field"] for p in refused.json()["problems"]] == ["row 3.end.dash"]
    assert store.fittings() == []


def test_check_answers_the_cut_length(api: httpx.Client) -> None:
    api.post("/fittings/import", files=_file(FITTINGS)).raise_for_status()
    spec = {**EXAMPLE_SPEC, "end_a": {"fitting": "tw-1204"}, "end_b": {"fitting": "TW-1204"}}
    found = api.post("/check", json=spec).json()["cut_length"]
    assert found["length_mm"] == 1250 - 48.5 - 48.5
    assert found["arithmetic"]["text"] == "1250 mm − 48.5 mm (A) − 48.5 mm (B) = 1153 mm"
    said = api.post("/check", json=spec, headers={"Accept-Language": "fr"}).json()["cut_length"]
    assert said["arithmetic"]["text"] == "1250 mm − 48,5 mm (A) − 48,5 mm (B) = 1153 mm"
    unknown = api.post("/check", json=EXAMPLE_SPEC).json()["cut_length"]
    assert unknown["length_mm"] is None and len(unknown["unknown"]) == 2


def test_a_spec_is_registered_from_its_stock_numbers_and_never_with_another_end(
    api: httpx.Client, store: Store
) -> None:
    api.post("/fittings/import", files=_file(FITTINGS)).raise_for_status()
    spec = {**EXAMPLE_SPEC, "end_a": {"fitting": "tw-1204", "lot": "F-1"}}
    [number] = api.post("/assemblies", json={"spec": spec}).json()["numbers"]
    assert store.assembly(number).spec.end_a.fitting == "TW-1204"
    for path, body in (("/assemblies", {"spec": {**spec, "end_a": {"fitting": "TW-1204", "form": "male"}}}),
                       ("/check", {**spec, "end_b": {**EXAMPLE_SPEC["end_b"], "fitting": "TW-9"}})):  # type: ignore[dict-item]  # fmt: skip
        refused = api.post(path, json=body)
        assert refused.status_code == 422, path
        assert refused.json()["problems"][0]["field"].endswith(".fitting")
    assert store.count() == 1


def test_a_scanned_stock_number_tells_its_end(api: httpx.Client) -> None:
    api.post("/fittings/import", files=_file(FITTINGS)).raise_for_status()
    found = api.get("/scans", params={"text": "tw-1204"}).json()
    assert (found["kind"], found["end"]["fitting"], found["end"]["form"]) == (
        "fitting",
        "TW-1204",
        "female_swivel",
    )


def test_the_exported_list_has_a_column_for_each_figure(api: httpx.Client) -> None:
    api.post("/fittings/import", files=_file(FITTINGS)).raise_for_status()
    [row] = csv.DictReader(io.StringIO(api.get("/fittings.csv").text.removeprefix("\ufeff")))
    assert (row["stock_number"], row["end.dash"], row["cut_off_mm"], row["rating_bar"]) == (
        "TW-1204",
        "12",
        "48.5",
        "",
    )


def test_check_shows_the_crimp_card_and_says_what_is_not_approved_together(api: httpx.Client) -> None:
    api.put("/fittings/TW-1204", json=FITTING).raise_for_status()
    sent = {"files": {"file": ("crimps.csv", CRIMPS.encode(), "text/csv")}}
    [kept] = api.post("/crimp-diameters/import", **sent).json()  # type: ignore[arg-type]
    assert (kept["hose_part"], kept["die"], kept["diameter_mm"]) == ("TW 2W 12", "31 set", 31)
    spec = {
        **EXAMPLE_SPEC,
        "hose": {"standard": "SAE 100R2", "dash": 12, "part": "TW 2W 12"},
        "end_a": {"fitting": "TW-1204"},
    }
    cards = api.post("/check", json=spec).json()["crimp_cards"]
    assert (cards["a"]["approved"], cards["a"]["card"]["die"], cards["b"]["approved"]) == (
        True,
        "31 set",
        None,
    )
    other = {**spec, "hose": {**spec["hose"], "part": "TW 4W 12"}}  # type: ignore[dict-item]
    cards = api.post("/check", json=other).json()["crimp_cards"]
    assert cards["a"]["approved"] is False and "not approved together" in cards["a"]["message"]["text"]


def test_a_list_of_crimp_cards_with_one_wrong_row_is_kept_out(api: httpx.Client, store: Store) -> None:
    wrong = CRIMPS + "SAE 100R2,12,TW 2W 12,TW two-wire,wide,0.2,0.2,,a chart\n"
    refused = api.post("/crimp-diameters/import", files={"file": ("crimps.csv", wrong.encode(), "text/csv")})
    assert (refused.status_code, refused.json()["problems"][0]["field"]) == (422, "row 3.diameter_mm")
    assert store.crimps() == []


def test_a_crimp_card_is_deleted_and_the_exported_list_is_read_in_again(api: httpx.Client) -> None:
    api.post("/crimp-diameters/import", files={"file": ("crimps.csv", CRIMPS.encode(), "text/csv")})
    exported = api.get("/crimp-diameters.csv").content
    [card] = api.get("/crimp-diameters").json()
    assert api.delete(f"/crimp-diameters/{card['id']}").json()["die"] == "31 set"
    assert api.get("/crimp-diameters").json() == []
    assert api.delete(f"/crimp-diameters/{card['id']}").status_code == 404
    [again] = api.post("/crimp-diameters/import", files={"file": ("crimps.csv", exported)}).json()
    assert {k: v for k, v in again.items() if k != "id"} == {k: v for k, v in card.items() if k != "id"}


def test_a_list_of_hoses_is_kept_whole_or_not_at_all_and_exported_to_be_read_in_again(
    api: httpx.Client,
) -> None:
    wrong = HOSES + "TW 2W 99,SAE 100R2,99,270,a sheet\n"
    refused = api.post("/hoses/import", files=_file(wrong))
    assert (refused.status_code, refused.json()["problems"][0]["field"]) == (422, "row 3.dash")
    assert api.get("/hoses").json() == []
    [kept] = api.post("/hoses/import", files=_file(HOSES)).json()["hoses"]
    assert (kept["hose"]["part"], kept["hose"]["max_working_bar"]) == ("TW 2W 8", 270)
    exported = api.get("/hoses.csv").text.removeprefix("\ufeff")
    assert api.post("/hoses/import", files=_file(exported)).json()["hoses"] == [kept]


def test_the_whole_export_holds_the_fittings(api: httpx.Client) -> None:
    api.put("/fittings/TW-1204", json=FITTING).raise_for_status()
    with zipfile.ZipFile(io.BytesIO(api.get("/everything.zip").content)) as whole:
        [line] = whole.read("fittings.jsonl").decode().splitlines()
    kept = json.loads(line)
    assert (kept["stock_number"], kept["cut_off_mm"], kept["cut_off_kind"]) == (
        "TW-1204",
        48.5,
        "seat_to_hose_butt",
    )
