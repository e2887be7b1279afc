"""Asks every operation of the JSON API once, and keeps what was sent and answered.

``python -m tests.rest.examples`` writes api/rest/examples.json anew.
"""

from __future__ import annotations

import json
import tempfile
from datetime import date
from pathlib import Path
from typing import Any

import httpx

from api.rest.shared import EXAMPLE_SPEC
from api.settings import Settings
from api.web.limits import MOST_BYTES
from tagger.store import Role, Store
from tests.bench.served import serving

FILE = Path(__file__).parents[2] / "api" / "rest" / "examples.json"
ERRORS = FILE.with_name("error_examples.json")
CRIMP = {"hose_standard": "SAE 100R2", "hose_dash": 12, "shell": "F-12", "diameter_mm": 31.0,
         "minus_mm": 0.2, "plus_mm": 0.2, "source": "fitting maker's crimp chart"}  # fmt: skip
FITTING = {"fitting_series": "TW two-wire", "end": EXAMPLE_SPEC["end_a"], "cut_off_mm": 48.5,
           "cut_off_kind": "seat_to_hose_butt", "insertion_depth_mm": 30, "source": "fitting manufacturer's chart"}  # fmt: skip
FITTINGS = "stock_number,end.connection,end.dash,end.form,cut_off_mm,cut_off_kind,source\n" \
           "TW-1204,sae_37_flare,12,female_swivel,48.5,seat_to_hose_butt,fitting manufacturer's chart\n"  # fmt: skip
_UNRATED = {"connection": "jis_30", "size": "M22x1.5", "form": "female_swivel"}
ASKED_FOR: dict[str, Any] = {
    "hose": {"standard": "EN 853 2SN", "dash": 8},
    "end_a": {**_UNRATED, "rating": {"value_bar": 210, "source": "fitting catalogue, page 7"}},
    "end_b": _UNRATED,
    "length_mm": 1000,
}
"""An end that no source rates, with its manufacturer's figure."""
HOSES = "part,standard,dash,max_working_bar,source\n" \
        "TW 2W 8,SAE 100R2,8,270,hose manufacturer's data sheet 9\n"  # fmt: skip
CRIMPS = "hose_standard,hose_dash,hose_part,shell,diameter_mm,minus_mm,plus_mm,die,source\n" \
         "SAE 100R2,12,TW 2W 12,TW two-wire,31,0.2,0.2,31 set,fitting manufacturer's crimp chart\n"  # fmt: skip
PRINTER = "Bench 1"
LIST = "hose.standard,hose.dash,end_a.connection,end_a.dash,end_a.form,end_b.connection,end_b.dash,end_b.form,length_mm,qty\n" \
       "SAE 100R2,12,sae_37_flare,12,female_swivel,sae_37_flare,12,female_swivel,1250,2\n"  # fmt: skip


class Recorder:
    """Calls the API, each operation by its name in the description."""

    def __init__(self, api: httpx.Client) -> None:
        self.api = api
        self.kept: dict[str, dict[str, Any]] = {}

    def __call__(self, operation: str, sends: Any = None, files: Any = None, data: Any = None,
                 params: Any = None, **names: Any) -> Any:  # fmt: skip
        method, path = operation.split(" ")
        extra: dict[str, Any] = {"files": files, "data": data} if files else {"json": sends}
        answer = self.api.request(method, path.format(**names), params=params, **extra)
        assert answer.is_success, (operation, answer.text)
        media = answer.headers["content-type"].split(";")[0]
        if media.endswith("json"):
            kept: dict[str, Any] = {"answers": _short(_without_token(answer.json()))}
        elif media.startswith("text/"):
            kept = {"answers": answer.text.removeprefix("\ufeff")[:80] + "..."}
        else:
            kept = {"answers": _printable(answer.content[:8]) + "..."}
        if media != "application/json":
            kept["answers_as"] = media
        if sends is not None:
            kept["sends"] = sends
        if files:
            kept["sends"] = {name: f"(the file {value[0]})" for name, value in files.items()}
            kept["sends_as"] = "multipart/form-data"
        self.kept[operation] = kept
        return kept["answers"]


def _printable(start: bytes) -> str:
    return "".join(mark for mark in start.decode("latin-1") if mark.isascii() and mark.isprintable())


def _without_token(answers: Any) -> Any:
    """A token stands in no document, not even one of a database that is gone."""
    if isinstance(answers, dict) and "token" in answers:
        return {**answers, "token": answers["token"][:8] + "..."}
    return answers


def _short(answers: Any) -> Any:
    """One of the sources that disagree is enough in an example."""
    if isinstance(answers, list):
        return [_short(item) for item in answers]
    if isinstance(answers, dict):
        return {name: _short(value[:1] if name == "spread" else value) for name, value in answers.items()}
    return answers


def record(api: httpx.Client, store: Store) -> dict[str, dict[str, Any]]:
    """Every operation, in an order that each can follow from the ones before."""
    store.add_printer(PRINTER, "ipp://labels.invalid/ipp/print", 203, template="hang_tag", by="Mara")
    ask = Recorder(api)
    ask("POST /identify", {"form": "male", "thread_od": "1 1/16 in", "tpi": 12, "seat": "37"})
    ask(
        "POST /hose-by-layers",
        {"od": "22 mm", "kind": "wire_braid", "layers": 2, "lay_line": "EN 853 2SN -8"},
    )
    ask("POST /lay-line", {"text": "SAE 100R2AT / EN 853 2SN -12 WP 215 BAR"})
    ask("POST /check", EXAMPLE_SPEC)
    ask("POST /check/tag.{form}", EXAMPLE_SPEC, form="png")
    ask("POST /check/fitters-card.pdf", EXAMPLE_SPEC)
    body = {
        "spec": EXAMPLE_SPEC,
        "count": 1,
        "customer": "Quarry North",
        "machine": "Loader 4",
        "built_on": "2026-03-02",
        "cleanliness": "18/16/13",
    }
    [number] = ask("POST /assemblies", body)["numbers"]
    run = ask("POST /runs", {"rows": [body, {**body, "position": "dipper"}]})["run"]
    ask("GET /runs/{run}", run=run)
    ask("GET /runs/{run}/traveller.pdf", run=run)
    ask("GET /assemblies", params={"limit": 1})
    ask("GET /assemblies.{form}", form="csv")
    one = ask("GET /assemblies/{number}", number=number)
    ask("POST /compare", {"a": one["link"], "b": {**EXAMPLE_SPEC, "length_mm": 1200}})
    ask("POST /read", {"text": one["link"]})
    picture = api.get(f"/assemblies/{number}/tag.png").content
    ask("POST /read/photo", files={"image": ("tag.png", picture, "image/png")})
    ask("GET /scans", params={"text": "h-2291"})
    ask("GET /lots", params={"lot": "h-2291", "standard": "EN 857 2SC", "dash": 12})
    ask("GET /fit-steps", params={"tag": number})
    ask("GET /templates")
    ask("GET /assemblies/{number}/preflight", number=number)
    ask("GET /assemblies/{number}/tag.{form}", number=number, form="pdf")
    ask("GET /assemblies/{number}/fitters-card.pdf", number=number)
    ask("POST /prints", {"numbers": [number], "reason": "first print"})
    ask("GET /printers")
    job = api.post(
        "/prints",
        json={"numbers": [number], "printer": PRINTER, "reason": "a second tag is wanted", "again": True},
    )
    ask("GET /print-jobs/{job}", job=job.json()["id"])
    ask("POST /shop-values", {"spec": ASKED_FOR})
    ask("GET /shop-values")
    ask("POST /shop-values/{value}/withdraw", {"reason": "read from the wrong column"}, value=1)
    ask("GET /overrated")
    ask("PUT /crimp-diameters", CRIMP)
    ask("POST /crimp-diameters/import", files={"file": ("crimps.csv", CRIMPS.encode(), "text/csv")})
    ask("GET /crimp-diameters", params={"hose_dash": 12})
    ask("GET /crimp-diameters.{form}", form="csv")
    second = api.get("/crimp-diameters").json()[-1]["id"]
    ask("DELETE /crimp-diameters/{card}", card=second)
    crimp = {"end": "a", "measured_mm": 31.1, "shell": "F-12"}
    ask("POST /assemblies/{number}/crimps", {"crimps": [crimp]}, number=number)
    test = {
        "pressure_bar": 500, "hold_s": 60, "medium": "water", "passed": True, "tester": "Bela",
        "rating_bar": 172, "rating_source": "hose manufacturer's data sheet 9",
    }  # fmt: skip
    held = api.post(f"/assemblies/{number}/proof-tests", json={**test, "confirmed": True})
    assert held.json()["data"]["result"] == "held", held.text
    letter = {
        "allowed_by": "hose and fitting manufacturers",
        "allowed_on": "2026-01-05",
        "document": "letter 12",
    }
    ask("POST /assemblies/{number}/proof-allowances", letter, number=number)
    ask("POST /assemblies/{number}/proof-tests", {**test, "pressure_bar": 345}, number=number)
    ask("GET /assemblies/{number}/proof-tests", number=number)
    ask("GET /assemblies/{number}/certificate.pdf", number=number)
    batch = {
        **test, "pressure_bar": 345, "gauge": "G-7", "gauge_valid_until": "2030-06-30", "method": "work sheet 3",
    }  # fmt: skip
    members = [one["number"] for one in api.get(f"/runs/{run}").json()]
    ask("POST /crimps", {"crimps": [{**crimp, "number": one} for one in members]})
    ask("POST /proof-tests", {"numbers": members, "test": batch})
    ask(
        "POST /flushings",
        {"numbers": members, "method": "flushed 2 min with filtered oil", "flushed_by": "Bela"},
    )
    ask("GET /assemblies/{number}/batch-certificate.pdf", number=members[0])
    ask("POST /assemblies/{number}/history", {"kind": "fitted", "data": {"note": "boom"}}, number=number)
    ask("GET /assemblies/{number}/history", number=number)
    ask("PUT /recipes/{name}", EXAMPLE_SPEC, name="boom")
    correction = {"reason": "typed for the wrong yard", "customer": "Harbour Cranes", "hose_lot": "H-2292"}
    [slip] = api.post("/assemblies", json=body).json()["numbers"]
    ask("POST /assemblies/{number}/corrections", correction, number=slip)
    ask("POST /assemblies/{number}/void", {"reason": "registered twice"}, number=slip)
    ask("GET /recipes")
    ask("GET /recipes/{name}", name="boom")
    ask("DELETE /recipes/{name}", name="boom")
    hose = {"part": "TW 2W 12", "standard": "SAE 100R2", "dash": 12, "max_working_bar": 180, "bend_radius_mm": 250,
            "source": "hose manufacturer's data sheet 9"}  # fmt: skip
    ask("PUT /hoses", hose)
    ask("POST /hoses/import", files={"file": ("hoses.csv", HOSES.encode(), "text/csv")})
    ask("GET /hoses")
    ask("GET /hoses.{form}", form="csv")
    ask("DELETE /hoses", params={"part": "TW 2W 12", "dash": 12, "reason": "not stocked any more"})
    ask("PUT /fittings/{stock_number}", FITTING, stock_number="TW-1204")
    ask("POST /fittings/import", files={"file": ("fittings.csv", FITTINGS.encode(), "text/csv")})
    ask("GET /fittings", params={"text": "jic 12"})
    ask("GET /fittings/{stock_number}", stock_number="TW-1204")
    ask("GET /fittings.{form}", form="csv")
    ask("DELETE /fittings/{stock_number}", stock_number="TW-1204")
    ask("GET /lists/empty.{form}", form="csv")
    file = {"file": ("list.csv", LIST.encode(), "text/csv")}
    ask("POST /lists/dry-run", files=file)
    ask("POST /lists/run", files=file)
    order = {"number": number, "quantity": 2, "contact": {"name": "Mara", "phone": "555 0100"}}
    reference = ask("POST /orders", order)["reference"]
    ask("GET /orders", params={"limit": 1})
    ask("GET /orders/{reference}", reference=reference)
    ask("POST /orders/{reference}/steps", {"state": "accepted", "note": "Friday"}, reference=reference)
    day, photo = date(2026, 3, 9), {"fitted": b"(a JPEG)"}
    copied = store.report_fitted(number, fitted_on=day, machine="Crusher 2").id
    seen = store.report_fitted(number, fitted_on=day, machine="Loader 4", fitted_by="Bela", photos=photo).id
    ask("POST /fitted-reports/{report}/refuse", {"reason": "a copied tag"}, report=copied)
    ask("POST /fitted-reports/{report}/agree", report=seen)
    ask("GET /fitted-reports", params={"number": number})
    ask("GET /fitted-reports/{report}", report=seen)
    ask("GET /fitted-reports/{report}/photo.jpg", report=seen)
    ask("GET /customer", params={"name": "quarry north"})
    ask("POST /fitted-reports/{report}/erase", report=seen)
    ask("GET /retention")
    ask("POST /retention")
    ask("POST /orders/{reference}/erase-contact", reference=reference)
    machine = {"machine": "Loader 4", "customer": "Quarry North"}
    ask("GET /machine", params=machine)
    ask(
        "POST /machine/order",
        {**machine, "needed_by": "2026-04-20", "contact": {"name": "Mara", "phone": "555 0100"}},
    )
    ask("GET /affected", params={"scope": "hose_lot", "value": "h-2291"})
    done = ask("POST /withdrawals", {"reason": "cover blisters", "hose_lot": "H-2291"})["withdrawal"]["id"]
    ask("GET /withdrawals")
    ask("GET /withdrawals/{withdrawal}", withdrawal=done)
    ask("GET /withdrawals/{withdrawal}/call-list", withdrawal=done)
    ask("GET /withdrawals/{withdrawal}/call-list.csv", withdrawal=done)
    ask("GET /withdrawals/{withdrawal}/letters.pdf", withdrawal=done)
    ask("POST /withdrawals/{withdrawal}/lift", {"reason": "tested again"}, withdrawal=done)
    bela = ask("POST /people", {"name": "Bela", "role": "builder", "password": "a long pass phrase"})["id"]
    ask("GET /people")
    ask("GET /people/{person}", person=bela)
    ask("PATCH /people/{person}", {"role": "counter"}, person=bela)
    ask("POST /people/{person}/sign-out", person=bela)
    device = ask("POST /tokens", {"name": "scanner 2", "role": "builder"})["device"]["id"]
    ask("GET /tokens")
    ask("DELETE /tokens/{token_id}", token_id=device)
    ask("GET /figures", params={"days": 7})
    ask("GET /totals", params={"since": "2026-01-01"})
    ask("GET /events", params={"limit": 2})
    ask("GET /epcis", params={"after": 5})
    ask("GET /everything.zip")
    return ask.kept


def record_errors(api: httpx.Client, store: Store) -> dict[str, dict[str, Any]]:
    """An error of each status that the description tells of."""
    _, secret = store.make_token("scanner 3", Role.BUILDER)
    builder = {"Authorization": f"Bearer {secret}"}
    api.put("/recipes/boom", json=EXAMPLE_SPEC)
    once = {"Idempotency-Key": "a key"}
    order = {"quantity": 1, "spec": EXAMPLE_SPEC, "contact": {"name": "Mara", "phone": "555 0100"}}
    api.post("/orders", json=order, headers=once).raise_for_status()
    answers = [
        api.get("/recipes", headers={"Authorization": ""}),
        api.get("/people", headers=builder),
        api.get("/assemblies/00000-000001"),
        api.post("/orders", json={**order, "quantity": 2}, headers=once),
        api.post("/check", content=b" " * (MOST_BYTES + 1)),
        api.post("/check", json={**EXAMPLE_SPEC, "length_mm": "long"}),
        _too_many(store),
    ]
    return {str(answer.status_code): answer.json() for answer in answers}


def _too_many(store: Store) -> httpx.Response:
    """What a stranger is told who asks a second time where once a minute is allowed."""
    with serving(
        Settings(base_url="https://tags.example.com", public_requests_per_minute=1), store
    ) as narrow:
        return [httpx.get(f"{narrow.url}/api/v1/templates") for _ in range(2)][1]


def _written(file: Path, kept: dict[str, Any]) -> None:
    """A line for each, so that a change of one shows as one."""
    lines = [f"{json.dumps(name)}: {json.dumps(one, ensure_ascii=False)}" for name, one in kept.items()]
    file.write_text("{\n" + ",\n".join(lines) + "\n}\n", encoding="utf-8")


def main() -> None:
    with tempfile.TemporaryDirectory() as folder, Store.open(f"sqlite:///{folder}/tags.sqlite3") as store:
        _, secret = store.make_token("bench tablet", Role.MANAGER)
        with serving(Settings(base_url="https://tags.example.com"), store) as served:
            headers = {"Authorization": f"Bearer {secret}"}
            with httpx.Client(base_url=f"{served.url}/api/v1", headers=headers, timeout=30) as api:
                _written(FILE, record(api, store))
                _written(ERRORS, record_errors(api, store))


if __name__ == "__main__":
    main()
