"""What no program should send: it is refused in words, and the server goes on."""

from __future__ import annotations

import json
from urllib.parse import quote

import httpx
import pytest

from api.rest.shared import EXAMPLE_SPEC
from tagger.store import Store

BROKEN = ("http://[x/", "//[", "https://[1.2]/T/7K3MQ9XW2R1", "http://a\u2100b/")
TOO_WIDE = (2**63, -(2**63) - 1, 10**30)
BY_ID = (
    "GET /runs/{id}",
    "GET /runs/{id}/traveller.pdf",
    "GET /print-jobs/{id}",
    "GET /withdrawals/{id}",
    "GET /withdrawals/{id}/call-list.csv",
    "GET /people/{id}",
    "DELETE /tokens/{id}",
    "GET /withdrawals?after={id}",
    "GET /crimp-diameters?hose_dash={id}",
    "GET /events?after={id}",
    "GET /epcis?after={id}",
    "GET /assemblies?dash={id}",
    "GET /assemblies.csv?dash={id}",
)


def _refused(answer: httpx.Response) -> None:
    assert answer.status_code == 422, (answer.request.url, answer.status_code, answer.text)
    assert answer.headers["content-type"] == "application/problem+json"
    assert answer.json()["detail"]


def test_a_broken_address_is_no_tag_wherever_it_is_scanned(api: httpx.Client, url: str) -> None:
    for text in BROKEN:
        _refused(api.post("/read", json={"text": text}))
        _refused(api.get("/fit-steps", params={"tag": text}))
        _refused(api.post("/compare", json={"a": text, "b": EXAMPLE_SPEC}))
        assert api.get("/scans", params={"text": text}).json()["kind"] == "unknown"
        assert httpx.get(f"{url}/find?q={quote(text)}").status_code == 422


def test_a_number_wider_than_the_database_holds_is_refused(api: httpx.Client) -> None:
    for route in BY_ID:
        method, path = route.split(" ")
        for number in TOO_WIDE:
            _refused(api.request(method, path.format(id=number)))


@pytest.mark.parametrize(
    ("said", "message", "field"),
    [
        ('"a\\ud800b"', "spec-half-character", "hose.lot"),
        ('{"\\ud800": 1}', "spec-half-character", "hose.lot"),
        ("NaN", "spec-json-unreadable", "body"),
        ("-Infinity", "spec-json-unreadable", "body"),
        ("1e999", "spec-number-too-long", "body"),
        ("9" * 5000, "spec-number-too-long", "body"),
        ('"H-1", "lot": "H-2"', "spec-twice", "hose.lot"),
    ],
)
def test_what_is_no_json_by_its_standard_is_refused_by_its_field(
    api: httpx.Client, store: Store, said: str, message: str, field: str
) -> None:
    spec = {**EXAMPLE_SPEC, "hose": {"standard": "SAE 100R2", "dash": 12, "lot": "@"}}
    for path, prefix, body in (("/check", "", spec), ("/assemblies", "spec.", {"spec": spec})):
        text = json.dumps(body).replace('"@"', said)
        answer = api.post(path, content=text, headers={"Content-Type": "application/json"})
        _refused(answer)
        if problems := answer.json()["problems"]:
            wanted = field if field == "body" else prefix + field
            assert [(problem["id"], problem["field"]) for problem in problems] == [(message, wanted)]
        else:
            assert message == "spec-number-too-long"  # more digits than Python reads
    assert store.count() == 0


def test_a_whole_number_that_no_float_holds_is_refused(api: httpx.Client, store: Store) -> None:
    spec = {**EXAMPLE_SPEC, "length_mm": 10**400}
    for path, body in (("/check", spec), ("/assemblies", {"spec": spec})):
        answer = api.post(path, json=body)
        _refused(answer)
        assert [(one["field"], one["id"]) for one in answer.json()["problems"]] == [
            ("length_mm", "spec-unit-not-finite")
        ]
    assert store.count() == 0


def test_brackets_without_end_are_refused(api: httpx.Client) -> None:
    headers = {"Content-Type": "application/json"}
    for body in ("[" * 100_000, '{"a":' * 100_000, "\ufeff{}", b"\xff\xfe", b"\xed\xa0\x80"):
        _refused(api.post("/check", content=body, headers=headers))


def test_a_control_character_in_a_condition_is_an_error_and_no_file_that_breaks_off(
    api: httpx.Client, store: Store
) -> None:
    api.post("/assemblies", json={"spec": EXAMPLE_SPEC, "customer": "Quarry North"})
    for form in ("csv", "xlsx"):
        for name in ("customer", "lot", "order_reference", "machine"):
            _refused(api.get(f"/assemblies.{form}", params={name: "a\x01b"}))
    assert "Quarry North" in api.get("/assemblies.csv", params={"customer": "quarry"}).text


def test_signs_of_search_languages_find_the_names_that_have_them(api: httpx.Client) -> None:
    names = ('a" OR "b*', "NEAR(a b)", "100% e\u0301", "\u202etool")
    for name in names:
        assert api.post("/assemblies", json={"spec": EXAMPLE_SPEC, "machine": name}).status_code == 201
    asked = (
        '"', "*", '"a"', "a*", "or", "near(", "near(a b)", "NEAR", "%", "%%", "_", "\u00e9", "E\u0301", "\u202eT",
        "\ufffd", "x" * 10_000,
    )  # fmt: skip
    hits = []
    for text in asked:
        found = [
            one["machine"] for one in api.get("/assemblies", params={"machine": text}).json()["assemblies"]
        ]
        assert found == [name for name in reversed(names) if text.lower() in name.lower()], text
        hits.append(len(found))
    assert hits == [1, 1, 0, 0, 1, 1, 1, 1, 1, 0, 0, 0, 1, 1, 0, 0]
    assert httpx.get(f"{api.base_url}assemblies?machine=%ED%A0%80ab", headers=api.headers).status_code == 200


def test_a_hose_that_is_none_is_refused_by_its_field(api: httpx.Client) -> None:
    hose = {"lot": "H-1", "standard": "SAE 100R2", "dash": "12"}
    for field, value in (
        ("edition", ""),
        ("edition", " "),
        ("part", " "),
        ("standard", " "),
    ):
        answer = api.get("/lots", params={**hose, field: value})
        _refused(answer)
        assert [problem["field"] for problem in answer.json()["problems"]] == [field]


def test_a_form_from_an_origin_that_is_no_address_is_refused(url: str) -> None:
    form = {"name": "a", "password": "b"}
    answer = httpx.post(f"{url}/bench/sign-in", data=form, headers={"Origin": "http://[x"})
    assert answer.status_code == 403


def test_a_crimp_card_of_a_hose_size_that_is_none_is_refused(api: httpx.Client) -> None:
    card = {"hose_standard": "SAE 100R2", "shell": "F-12", "diameter_mm": 31, "plus_mm": 0.2, "minus_mm": 0.2}
    _refused(api.put("/crimp-diameters", json={**card, "hose_dash": 64, "source": "made up"}))
