"""The JSON API: everything the bench does, with problems in words and nothing done twice."""

from __future__ import annotations

import csv
import io
import json
import zipfile
from collections.abc import Callable
from datetime import date

import httpx
import pytest

from api.rest.shared import EXAMPLE_SPEC
from tagger.code import link, payload
from tagger.i18n import LANGUAGES, Translator
from tagger.messages import Message
from tagger.spec import AssemblySpec
from tagger.store import CrimpValue, Kind, Role, Store
from tagger.trade import assess

BODY = {"spec": EXAMPLE_SPEC, "count": 2, "customer": "Quarry North", "machine": "Loader 4"}


def _number(api: httpx.Client) -> str:
    number: str = api.post("/assemblies", json={**BODY, "count": 1}).json()["numbers"][0]
    return number


def test_check_answers_with_the_assessment_and_registers_nothing(api: httpx.Client, store: Store) -> None:
    answer = api.post("/check", json=EXAMPLE_SPEC)
    assert answer.status_code == 200
    assert answer.json()["working_pressure"]["limited_by"] == "hose"
    assert store.count() == 0


def test_register_answers_with_numbers_and_links_that_decode(api: httpx.Client) -> None:
    answer = api.post("/assemblies", json=BODY)
    assert answer.status_code == 201
    numbers = answer.json()["numbers"]
    assert len(numbers) == 2
    one = api.get(f"/assemblies/{numbers[0].lower()}").json()
    assert one["spec"] == AssemblySpec.read(EXAMPLE_SPEC).as_dict()
    scanned = link.parse(one["link"])
    assert scanned.digits is not None
    assert payload.decode(scanned.digits).spec == AssemblySpec.read(EXAMPLE_SPEC).carried()


def test_what_was_rated_too_high_has_the_lower_pressure_and_says_so(api: httpx.Client, store: Store) -> None:
    spec = AssemblySpec.read(EXAMPLE_SPEC)
    then = assess(spec)
    rated = then.working_pressure.model_copy(update={"value_bar": 420})  # as an older program left it
    store.register(spec, then.model_copy(update={"working_pressure": rated}), customer="Old Yard")
    store.register(spec, then, customer="New Yard")
    now = then.working_pressure.value_bar
    found = {one["customer"]: one for one in api.get("/assemblies").json()["assemblies"]}
    old, new = found["Old Yard"], found["New Yard"]
    assert old["working_pressure_bar"] == new["working_pressure_bar"] == now
    assert "420 bar" in old["overrated"]["text"] and new["overrated"] is None
    assert "420" not in old["working_pressure_message"]["text"]
    assert old["assessment"]["working_pressure"]["value_bar"] == 420  # what was registered
    assert api.get(f"/assemblies/{old['number']}").json()["overrated"] == old["overrated"]
    lines = csv.DictReader(io.StringIO(api.get("/assemblies.csv").text.removeprefix("\ufeff")))
    assert [float(line["working_pressure_bar"]) for line in lines] == [now, now]


def test_the_same_idempotency_key_registers_once(api: httpx.Client, store: Store) -> None:
    headers = {"Idempotency-Key": "job-1"}
    first = api.post("/assemblies", json=BODY, headers=headers)
    again = api.post("/assemblies", json=BODY, headers=headers)
    assert first.json() == again.json()
    assert store.count() == 2
    other = api.post("/assemblies", json={**BODY, "count": 3}, headers=headers)
    assert other.status_code == 409
    assert store.count() == 2


def test_problems_come_as_problem_json_with_every_field(api: httpx.Client) -> None:
    wrong = {**EXAMPLE_SPEC, "length_mm": "long", "colour": "red"}
    answer = api.post("/assemblies", json={"spec": wrong})
    assert answer.status_code == 422
    assert answer.headers["content-type"] == "application/problem+json"
    problems = {problem["field"]: problem for problem in answer.json()["problems"]}
    assert problems.keys() == {"length_mm", "colour"}
    assert problems["length_mm"]["value"] == "long" and problems["length_mm"]["mend"]


def test_a_problem_says_its_id_its_values_and_its_text(api: httpx.Client) -> None:
    answer = api.patch("/people/1", json={})  # nobody has this id
    assert answer.status_code == 404
    person = api.post("/people", json={"name": "Bela", "role": "builder", "password": "a long phrase"}).json()
    [told] = api.patch(f"/people/{person['id']}", json={}).json()["problems"]
    assert told["id"] == "rest-nothing-to-change" and told["values"] == {}
    assert (
        told["text"]
        == f"{told['why']} {told['mend']}"
        == "The request changes nothing. Send role, active or password."
    )
    answer = api.post("/assemblies", json={**BODY, "built_on": "2999-12-31"}).json()
    [told] = answer["problems"]
    assert told["id"] == "rest-built-in-future" and told["values"] == {"date": {"date": "2999-12-31"}}
    assert answer["detail"] == f"built_on: {told['text']}"


@pytest.mark.parametrize("lang", LANGUAGES)
def test_warnings_are_in_the_language_that_is_asked_for(api: httpx.Client, lang: str) -> None:
    t, asked = Translator(lang), {"Accept-Language": lang}
    checked = api.post("/check", json=EXAMPLE_SPEC, headers=asked).json()["warnings"]
    kept = api.get(f"/assemblies/{_number(api)}", headers=asked).json()["assessment"]["warnings"]
    assert checked and checked == kept
    for warning in checked:
        assert warning["text"] == t(Message.from_json(warning))
    others = [{"spec": EXAMPLE_SPEC}, {"spec": {**EXAMPLE_SPEC, "length_mm": 1200}}]
    reasons = api.post(
        "/compare", json={"a": others[0]["spec"], "b": others[1]["spec"]}, headers=asked
    ).json()
    for field in reasons["fields"]:
        assert t(Message.from_json(field)) == field["text"] == field["reason"]


@pytest.mark.parametrize("lang", LANGUAGES)
def test_errors_are_in_the_language_that_is_asked_for(api: httpx.Client, lang: str) -> None:
    t = Translator(lang)
    asked = {"Accept-Language": f"{lang};q=0.9, xx"}
    answer = api.post("/assemblies", json={**BODY, "built_on": "2999-12-31"}, headers=asked)
    assert answer.headers["content-language"] == lang and "Accept-Language" in answer.headers["vary"]
    message = Message("rest-built-in-future", date=date(2999, 12, 31))
    [told] = answer.json()["problems"]
    assert (told["why"], told["mend"]) == (t(message), t.mend(message))
    for path, id in (("/nothing", "rest-no-such-address"), ("/assemblies?limit=0", "rest-cannot-be-read")):
        body = api.get(path, headers=asked).json()
        assert body["id"] == id and body["detail"] == f"{t(id)} {t.mend(Message(id))}"


@pytest.mark.parametrize(
    ("method", "path", "body", "status"),
    [
        ("GET", "/assemblies/0000000000Z", None, 422),
        ("GET", "/assemblies/00000000001", None, 404),
        ("GET", "/orders/R-NONE", None, 404),
        ("GET", "/withdrawals/9", None, 404),
        ("GET", "/assemblies?limit=0", None, 422),
        ("POST", "/assemblies", {"spec": EXAMPLE_SPEC, "colour": "red"}, 422),
        ("GET", "/nothing", None, 404),
        ("DELETE", "/assemblies", None, 405),
    ],
)
def test_every_error_is_problem_json(
    api: httpx.Client, method: str, path: str, body: object, status: int
) -> None:
    answer = api.request(method, path, json=body)
    assert answer.status_code == status
    assert answer.headers["content-type"] == "application/problem+json"
    assert answer.json()["status"] == status


def test_tokens_and_roles_hold(url: str, device: Callable[[Role], httpx.Client], store: Store) -> None:
    assert httpx.get(f"{url}/api/v1/assemblies").status_code == 401
    assert (
        httpx.get(f"{url}/api/v1/assemblies", headers={"Authorization": "Bearer tag_no"}).status_code == 401
    )
    builder = device(Role.BUILDER)
    assert builder.get("/assemblies").status_code == 200
    assert builder.post("/withdrawals", json={"reason": "x", "hose_lot": "H"}).status_code == 403
    assert builder.get("/everything.zip").status_code == 403
    store.revoke_token(store.tokens()[0].id)
    assert builder.get("/assemblies").status_code == 401


def test_a_run_is_all_or_nothing(api: httpx.Client, store: Store) -> None:
    bad = {"spec": {**EXAMPLE_SPEC, "length_mm": 3}}
    answer = api.post("/runs", json={"rows": [BODY, bad, BODY]})
    assert answer.status_code == 422
    assert [p["field"] for p in answer.json()["problems"]] == ["rows.2.length_mm"]
    assert store.count() == 0
    assert len(api.post("/runs", json={"rows": [BODY, BODY]}).json()["numbers"]) == 4


def test_pages_hold_every_assembly_once(api: httpx.Client) -> None:
    for _ in range(3):
        api.post("/assemblies", json={**BODY, "count": 3})
    seen, after = [], ""
    while True:
        page = api.get(
            "/assemblies", params={"limit": 4, "customer": "quarry", **({"after": after} if after else {})}
        ).json()
        seen += [a["number"] for a in page["assemblies"]]
        after = page["after"]
        if after is None:
            break
    assert len(seen) == len(set(seen)) == 9


def test_proving_blocks_and_unblocks_printing(api: httpx.Client, store: Store) -> None:
    number = _number(api)
    test = {
        "pressure_bar": 345, "hold_s": 60, "medium": "water", "passed": False, "tester": "Bela",
        "rating_bar": 172, "rating_source": "data sheet 9",
    }  # fmt: skip
    assert api.post(f"/assemblies/{number}/proof-tests", json=test).status_code == 201
    assert api.post("/prints", json={"numbers": [number]}).status_code == 422
    api.post(f"/assemblies/{number}/proof-tests", json={**test, "passed": True, "note": "seal renewed"})
    printed = api.post("/prints", json={"numbers": [number]})
    assert printed.content.startswith(b"%PDF")
    twice = api.post("/prints", json={"numbers": [number]})
    assert (twice.status_code, twice.json()["problems"][0]["field"]) == (409, "again")
    assert store.times_printed(number) == 1
    assert api.get(f"/assemblies/{number}/tag.png").content.startswith(b"\x89PNG")
    assert store.times_printed(number) == 1, "looking is not printing"
    kinds = [event["kind"] for event in api.get(f"/assemblies/{number}/history").json()]
    assert kinds == ["registered", "proof_tested", "proof_tested", "printed"]
    assert api.post("/prints", json={"numbers": [number], "again": True, "reason": "lost"}).status_code == 200
    assert store.times_printed(number) == 2


def test_a_label_that_would_not_scan_on_this_hose_is_refused(api: httpx.Client, store: Store) -> None:
    number = _number(api)
    asked = {"numbers": [number], "template": "wrap_label"}
    for answer in (
        api.post("/prints", json=asked),
        api.post("/prints", json={**asked, "form": "png"}),
        api.get(f"/assemblies/{number}/tag.png", params={"template": "wrap_label"}),
    ):
        assert answer.status_code == 422
        assert {one["field"] for one in answer.json()["problems"]} >= {"wrap_label: facing"}
    assert store.times_printed(number) == 0
    assert api.post("/prints", json={**asked, "template": "hang_tag"}).status_code == 200


def test_a_plate_is_had_as_lines_to_look_at_and_to_engrave(api: httpx.Client, store: Store) -> None:
    number, other = _number(api), _number(api)
    path = f"/assemblies/{number}/tag"
    for form, media in (("svg", "image/svg+xml"), ("dxf", "image/vnd.dxf")):
        seen = api.get(f"{path}.{form}", params={"template": "metal_plate"})
        assert (seen.status_code, seen.headers["content-type"]) == (200, media)
    assert store.times_printed(number) == 0
    shown = api.post("/check/tag.svg", params={"template": "metal_plate"}, json=EXAMPLE_SPEC)
    assert shown.text.startswith("<svg"), "of a spec that nobody registered"
    refused = api.get(f"{path}.svg", params={"template": "hang_tag"})
    assert refused.status_code == 422 and refused.json()["problems"][0]["field"] == "template"
    both = {"numbers": [number, other], "template": "metal_plate", "form": "svg"}
    assert api.post("/prints", json=both).json()["problems"][0]["field"] == "form"
    plate = api.post("/prints", json={**both, "numbers": [number]})
    assert plate.text == api.get(f"{path}.svg", params={"template": "metal_plate"}).text
    assert (store.times_printed(number), store.times_printed(other)) == (1, 0)


def test_a_proof_test_says_what_it_must_be_and_what_it_proves(
    api: httpx.Client, device: Callable[[Role], httpx.Client]
) -> None:
    hose = {"hose": {"standard": "EN 853 2SN", "dash": 12}}
    body = {"spec": {**EXAMPLE_SPEC, **hose}}
    [number] = api.post("/assemblies", json=body).json()["numbers"]
    path = f"/assemblies/{number}/proof-tests"
    asked = api.get(path).json()
    assert asked["result"] is None
    assert asked["required"] == {
        "pressure_bar": 413.6, "most_bar": 455, "burst_bar": 827.2, "burst_of": "end_a", "hold_min_s": 30,
        "hold_max_s": 60, "unknown": [], "unverified": [], "can_be_given": False,
    }  # fmt: skip
    test = {"hold_s": 60, "medium": "water", "passed": True, "tester": "Bela"}
    refused = api.post(path, json={**test, "pressure_bar": 6000})
    assert [p["id"] for p in refused.json()["problems"]] == ["store-proof-above-burst"]
    refused = api.post(path, json={**test, "pressure_bar": "500 bar"})
    assert [(p["field"], p["id"]) for p in refused.json()["problems"]] == [
        ("confirmed", "store-proof-over-unconfirmed")
    ]
    assert api.get(path).json()["tests"] == [], "a mistyped pressure holds nothing"
    data = api.post(path, json={**test, "pressure_bar": "500 bar", "confirmed": True}).json()["data"]
    assert (data["result"], data["passed"], "confirmed" in data) == ("held", False, False)
    letter = {"allowed_by": "both manufacturers", "allowed_on": "2026-01-05", "document": "letter 12"}
    allow = f"/assemblies/{number}/proof-allowances"
    assert device(Role.BUILDER).post(allow, json=letter).status_code == 403
    assert api.post(allow, json=letter).status_code == 201
    said = api.get(path).json()
    assert said["result"] == "tested" and "allowed it in writing" in said["why"]["text"]
    assert api.post(path, json={**test, "pressure_bar": "6000 psi"}).json()["data"]["result"] == "passed"
    assert [t["data"]["result"] for t in api.get(path).json()["tests"]] == ["held", "passed"]


def test_orders_and_withdrawals_go_their_way(api: httpx.Client) -> None:
    number = _number(api)
    order = api.post("/orders", json={"number": number, "quantity": 2, "contact": {"phone": "1"}}).json()
    moved = api.post(f"/orders/{order['reference']}/steps", json={"state": "accepted"}).json()
    assert [step["state"] for step in moved["steps"]] == ["received", "accepted"]
    assert [o["reference"] for o in api.get("/orders", params={"state": "accepted"}).json()] == [
        order["reference"]
    ]
    assert api.get("/orders", params={"after": order["reference"]}).json() == []
    done = api.post("/withdrawals", json={"reason": "cover blisters", "hose_lot": "h-2291"}).json()
    assert done["affected"] == [number]
    assert api.get(f"/assemblies/{number}").json()["withdrawals"][0]["reason"] == "cover blisters"
    lifted = api.post(f"/withdrawals/{done['withdrawal']['id']}/lift", json={"reason": "tested again"}).json()
    assert lifted["withdrawal"]["lifted_why"] == "tested again"


def test_the_description_has_every_route_with_a_summary(api: httpx.Client) -> None:
    described = api.get("/openapi.json").json()
    routes = [
        (path, verb, about) for path, verbs in described["paths"].items() for verb, about in verbs.items()
    ]
    assert len(routes) >= 20
    assert all(path.startswith("/api/v1/") for path, _, _ in routes)
    assert [r[:2] for r in routes if not r[2].get("summary")] == []
    assert "Idempotency-Key" in json.dumps(described)
    page = api.get("/docs").text
    assert all(path in page for path, _, _ in routes)


def test_everything_comes_as_open_formats(api: httpx.Client, store: Store) -> None:
    number = _number(api)
    store.save_recipe("boom & stick", store.assembly(number).spec, by="anna")
    store.keep_crimp(CrimpValue("SAE 100R2", 12, "two-wire", 33.4, 0.1, 0.2, "fitting maker's chart"))
    with zipfile.ZipFile(io.BytesIO(api.get("/everything.zip").content)) as whole:
        assert whole.testzip() is None
        [one] = [json.loads(line) for line in whole.read("assemblies.jsonl").splitlines()]
        assert AssemblySpec.read(one["spec"]) == store.assembly(number).spec
        events = [json.loads(line) for line in whole.read("events.jsonl").splitlines()]
        assert [event["kind"] for event in events] == [Kind.REGISTERED]
        read_me = whole.read("README.txt").decode()
        assert all(name in read_me for name in whole.namelist() if name != "README.txt"), read_me
        assert {"README.txt", "assemblies.csv", "orders.jsonl", "withdrawals.jsonl"} <= set(whole.namelist())
        [kept] = [json.loads(line) for line in whole.read("recipes.jsonl").splitlines()]
        assert (kept["name"], AssemblySpec.read(kept["spec"])) == (
            "boom & stick",
            store.recipe("boom & stick").spec,
        )
        [crimp] = [json.loads(line) for line in whole.read("crimps.jsonl").splitlines()]
        assert (crimp["diameter_mm"], crimp["source"]) == (33.4, "fitting maker's chart")


def test_events_are_read_on_from_the_last_one(api: httpx.Client) -> None:
    _number(api)
    first = api.get("/events", params={"limit": 1}).json()
    _number(api)
    more = api.get("/events", params={"after": first[-1]["id"]}).json()
    assert [e["kind"] for e in more] == ["registered"]


def test_a_reel_lot_of_another_hose_stops_and_goes_on_with_a_reason(api: httpx.Client, store: Store) -> None:
    _number(api)
    other = {**EXAMPLE_SPEC, "hose": {"standard": "EN 857 2SC", "dash": 12, "lot": "H-2291"}}
    refused = api.post("/assemblies", json={"spec": other})
    assert refused.status_code == 422
    assert "H-2291 is known as SAE 100R2 -12" in refused.json()["problems"][0]["why"]
    asked = {"lot": "H-2291", "standard": "EN 857 2SC", "dash": 12}
    found = api.get("/lots", params=asked).json()
    assert found["hoses"] == [{"standard": "SAE 100R2", "dash": 12}]
    assert found["another_hose"]["id"] == "store-lot-of-another-hose"
    assert api.get("/lots", params={**asked, "standard": "2SN"}).json()["another_hose"] is None
    done = api.post("/assemblies", json={"spec": other, "lot_reason": "other_manufacturer"})
    assert done.status_code == 201
    [first] = api.get(f"/assemblies/{done.json()['numbers'][0]}/history").json()
    assert first["data"]["lot_reason"] == "other_manufacturer"


def test_an_orders_change_is_made_or_considered_before_it_is_built(api: httpx.Client) -> None:
    order = {"number": _number(api), "contact": {"phone": "1"}, "changes": "100 mm longer"}
    body = {"spec": EXAMPLE_SPEC, "order_reference": api.post("/orders", json=order).json()["reference"]}
    refused = api.post("/assemblies", json=body)
    assert refused.status_code == 422
    assert refused.json()["problems"][0]["field"] == "changes_considered"
    assert api.post("/assemblies", json={**body, "changes_considered": True}).status_code == 201
    longer = {**body, "spec": {**EXAMPLE_SPEC, "length_mm": 1350}}
    assert api.post("/assemblies", json=longer).status_code == 201


def test_a_slip_is_corrected_or_made_void(api: httpx.Client, store: Store) -> None:
    number = _number(api)
    sent = {"reason": "wrong label", "hose_lot": "H-2292", "machine": None}
    done = api.post(f"/assemblies/{number}/corrections", json=sent).json()
    assert (done["spec"]["hose"]["lot"], done["machine"], done["customer"]) == (
        "H-2292",
        None,
        "Quarry North",
    )
    asked = {"scope": "hose_lot", "value": "H-2291"}
    assert api.get("/affected", params=asked).json()["affected"] == [number], "the old lot still counts"
    void = api.post(f"/assemblies/{number}/void", json={"reason": "registered twice"}).json()["void"]
    assert void["reason"] == "registered twice"
    late = _number(api)
    api.post(f"/assemblies/{late}/history", json={"kind": "fitted"})
    refused = api.post(f"/assemblies/{late}/void", json={"reason": "x"})
    assert refused.status_code == 422 and "installed on" in refused.json()["problems"][0]["why"]


def test_a_shop_that_tests_first_gives_no_tag_and_closes_no_order_before(
    api: httpx.Client, store: Store
) -> None:
    store.proof_first = True
    spec = {**EXAMPLE_SPEC, "hose": {"standard": "EN 853 2SN", "dash": 12}}
    number = api.post("/assemblies", json={"spec": spec}).json()["numbers"][0]
    refused = api.get(f"/assemblies/{number}/tag.pdf")
    assert refused.status_code == 422 and "proof test" in refused.json()["problems"][0]["why"]
    assert api.post("/prints", json={"numbers": [number]}).status_code == 422
    assert api.post(f"/assemblies/{number}/history", json={"kind": "fitted"}).status_code == 422
    assert api.get(f"/assemblies/{number}").json()["proof_test"] is None
    for_the_shop = {"numbers": [number], "template": "traveller_a5"}
    assert api.post("/prints", json=for_the_shop).status_code == 200
    bar = api.get(f"/assemblies/{number}/proof-tests").json()["required"]["pressure_bar"]
    test = {"pressure_bar": bar, "hold_s": 60, "medium": "water", "passed": True, "tester": "Bela"}
    answer = api.post(f"/assemblies/{number}/proof-tests", json=test)
    assert answer.status_code == 201, answer.text
    assert api.post("/prints", json={"numbers": [number]}).status_code == 200
    assert api.get("/assemblies").json()["assemblies"][0]["proof_test"] == "passed"
