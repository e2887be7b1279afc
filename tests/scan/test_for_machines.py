"""The pages as other programs take them: JSON, JSON-LD, GS1 link types, kept and packed answers."""

from __future__ import annotations

import gzip
import json
import re

from fastapi.testclient import TestClient

from tagger.code import link
from tagger.spec import AssemblySpec
from tagger.store import Assembly, Kind, Store
from tests.scan.conftest import OTHER_SHOP, path, scans, text


def test_the_same_address_answers_json(client: TestClient, store: Store, assembly: Assembly) -> None:
    answer = client.get(path(assembly), headers={"accept": "application/json"})
    assert answer.headers["content-type"] == "application/json"
    found = answer.json()
    assert AssemblySpec.read(found["spec"]) == assembly.spec.without_lots()
    assert found["read_from"] == "record"
    assert found["withdrawn"] == []
    assert link.parse(found["link"]).digits == assembly.digits
    other = client.get(f"/T/{OTHER_SHOP}/{assembly.digits}", headers={"accept": "application/json"}).json()
    assert other["read_from"] == "tag"
    assert other["withdrawn"] is None  # not known, which is not the same as not withdrawn
    assert AssemblySpec.read(other["spec"]) == assembly.spec.carried()


def test_a_refusal_as_json_names_field_why_and_mend(client: TestClient) -> None:
    answer = client.get("/T/7K3MQ9XWZR1", headers={"accept": "application/json"})
    assert answer.status_code == 404
    problem = answer.json()["problems"][0]
    assert problem["field"] == "number"
    assert problem["why"] and problem["mend"] and problem["text"]


def test_the_page_holds_json_ld_of_a_product(client: TestClient, assembly: Assembly) -> None:
    html = client.get(path(assembly)).text
    found = re.search(r'<script type="application/ld\+json">(.*?)</script>', html, re.DOTALL)
    assert found
    product = json.loads(found[1])
    assert product["@context"] == "https://schema.org"
    assert product["@type"] == "IndividualProduct"
    assert product["serialNumber"].replace("-", "") == assembly.number
    names = {entry["name"]: entry["value"] for entry in product["additionalProperty"]}
    assert names["Length"].startswith("1250 mm")
    alone = client.get(path(assembly), headers={"accept": "application/ld+json"})
    assert alone.json() == product


def test_gs1_digital_link_forms_resolve_to_the_page(client: TestClient, assembly: Assembly) -> None:
    giai = f"9506000{assembly.number}"
    own = client.get(path(assembly))
    for address in (
        f"/T/{assembly.digits}/8004/{giai}",
        f"/t/{assembly.digits}/8004/{giai.lower()}",
    ):
        answer = client.get(address)
        assert answer.status_code == 200
        assert text(answer.text) == text(own.text)
    for address in (f"/8004/{giai}", f"/01/09506000134352/21/{assembly.number}"):
        assert f"{assembly.number[:5]}-{assembly.number[5:]}" in text(client.get(address).text)
    assert client.get("/8004/950600012345678901").status_code == 404


def test_link_types_lead_to_their_part_of_the_page(client: TestClient, assembly: Assembly) -> None:
    address = f"/8004/9506000{assembly.number}"
    answer = client.get(address, params={"linkType": "gs1:instructions"}, follow_redirects=False)
    assert (answer.status_code, answer.headers["location"].split("#")[1]) == (307, "fit")
    assert client.get(address, params={"linkType": "gs1:pip"}, follow_redirects=False).status_code == 200
    everything = client.get(address, params={"linkType": "all"})
    assert everything.headers["content-type"] == "application/linkset+json"
    (links,) = everything.json()["linkset"]
    kinds = [key for key in links if key != "anchor"]
    assert all(kind.startswith("https://gs1.org/voc/") for kind in kinds)
    assert "https://gs1.org/voc/defaultLink" in kinds
    assert links["https://gs1.org/voc/instructions"][0]["href"].endswith("#fit")
    by_accept = client.get(address, headers={"accept": "application/linkset+json"})
    assert by_accept.json() == everything.json()


def test_an_unchanged_page_is_not_sent_again(client: TestClient, store: Store, assembly: Assembly) -> None:
    first = client.get(path(assembly))
    assert "must-revalidate" in first.headers["cache-control"]
    again = client.get(path(assembly), headers={"if-none-match": first.headers["etag"]})
    assert (again.status_code, again.content) == (304, b"")
    assert (
        client.get(path(assembly), headers={"accept-language": "de"}).headers["etag"] != first.headers["etag"]
    )
    store.withdraw("recalled", tag=assembly.number)
    after = client.get(path(assembly), headers={"if-none-match": first.headers["etag"]})
    assert after.status_code == 200
    assert "Withdrawn: do not use" in text(after.text)


def test_pages_are_packed_and_say_so(client: TestClient, assembly: Assembly) -> None:
    answer = client.get(path(assembly), headers={"accept-encoding": "gzip"})
    assert answer.headers["content-encoding"] == "gzip"
    assert int(answer.headers["content-length"]) < 20_000
    plain = client.get(path(assembly), headers={"accept-encoding": "identity"})
    assert "content-encoding" not in plain.headers
    assert "Accept-Encoding" in plain.headers["vary"]
    assert len(gzip.compress(plain.content)) < 20_000


def test_no_script_may_run_but_our_own_files(client: TestClient, assembly: Assembly) -> None:
    answer = client.get(path(assembly))
    policy = answer.headers["content-security-policy"]
    assert "script-src 'self'" in policy
    assert "unsafe" not in policy
    inline = re.findall(r"<script(?![^>]*\bsrc=)(?![^>]*application/ld\+json)[^>]*>", answer.text)
    assert not inline
    assert not re.search(r"\son\w+=", answer.text)
    assert not re.search(
        r'(?:src|href)="(?:https?:)?//', answer.text.split("<main")[0].replace("https://tags.example.com", "")
    )


def test_head_is_get_without_its_body_and_no_scan(
    client: TestClient, store: Store, assembly: Assembly
) -> None:
    asked = client.head(path(assembly))
    assert (asked.status_code, asked.content) == (200, b"")
    assert [event for event in store.history(assembly.number) if event.kind is Kind.SCANNED] == []
    got = client.get(path(assembly))
    assert asked.headers["etag"] == got.headers["etag"]
    scans(client).write()
    assert [event.kind for event in store.history(assembly.number)][-1] is Kind.SCANNED
