"""Papers, lists and looks that the bench has, by program: certificate, letters, call list, CSV, machine, scans."""

from __future__ import annotations

import csv
import io
from collections.abc import Callable
from typing import Any

import httpx
import openpyxl
import pypdfium2
import pytest

from api.rest.shared import EXAMPLE_SPEC
from api.shared import spreadsheets
from tagger import lists
from tagger.spec import AssemblySpec
from tagger.store import Role, Store
from tests.rest.examples import CRIMP

BODY = {"spec": EXAMPLE_SPEC, "customer": "Quarry North", "machine": "Loader 4", "position": "boom"}
TEST = {
    "pressure_bar": 345, "hold_s": 60, "medium": "water", "passed": True, "tester": "Bela",
    "rating_bar": 172, "rating_source": "data sheet 9",
}  # fmt: skip
CONTACT = {"name": "Mara", "phone": "555 0100"}


@pytest.fixture
def number(api: httpx.Client) -> str:
    return _made(api)


def _made(api: httpx.Client, **changes: Any) -> str:
    made: str = api.post("/assemblies", json={**BODY, **changes}).json()["numbers"][0]
    return made


def _words(pdf: bytes) -> str:
    document = pypdfium2.PdfDocument(pdf)
    return "\n".join(page.get_textpage().get_text_range() for page in document)


def test_the_certificate_tells_of_the_last_test(api: httpx.Client, number: str) -> None:
    path = f"/assemblies/{number}/certificate.pdf"
    assert api.get(path).status_code == 404
    assert api.get(path.replace(number, "00000-000001")).status_code == 404
    api.post(f"/assemblies/{number}/proof-tests", json={**TEST, "passed": False})
    assert "FAILED" in _words(api.get(path).content)
    assert api.post(f"/assemblies/{number}/proof-tests", json=TEST).status_code == 422
    api.post(f"/assemblies/{number}/proof-tests", json={**TEST, "note": "end A crimped again"})
    answer = api.get(path)
    assert answer.headers["content-type"] == "application/pdf"
    assert f"Tag {number}: passed" in _words(answer.content)


def test_a_withdrawal_has_its_letters_and_its_call_list(
    api: httpx.Client, number: str, device: Callable[[Role], httpx.Client]
) -> None:
    other = _made(api, customer="Harbour Cranes")
    found = api.get("/affected", params={"scope": "hose_lot", "value": "h-2291"}).json()["affected"]
    assert found == [number, other]
    done = api.post("/withdrawals", json={"reason": "blisters", "hose_lot": "H-2291"}).json()
    assert done["affected"] == found
    path = f"/withdrawals/{done['withdrawal']['id']}"
    called = api.get(f"{path}/call-list").json()
    assert [(c["customer"], c["number"]) for c in called] == [
        ("Harbour Cranes", other),
        ("Quarry North", number),
    ]
    text = api.get(f"{path}/call-list.csv").content.decode("utf-8-sig")
    empty = {"replaced_by": None, "contact": None, "phone": None, "email": None}
    assert [
        row | {name: row[name] or None for name in empty} for row in csv.DictReader(io.StringIO(text))
    ] == called
    letters = _words(api.get(f"{path}/letters.pdf").content)
    assert "Harbour Cranes" in letters and number in letters and "blisters" in letters
    assert device(Role.BUILDER).get(f"{path}/call-list").status_code == 200
    assert device(Role.BUILDER).get(f"{path}/letters.pdf").status_code == 403
    untouched = api.post("/withdrawals", json={"reason": "x", "hose_lot": "H-1"}).json()["withdrawal"]["id"]
    assert api.get(f"/withdrawals/{untouched}/letters.pdf").status_code == 404
    assert api.get("/withdrawals/99/call-list").status_code == 404


def test_what_is_found_comes_as_csv_and_xlsx_that_can_be_read_in_again(
    api: httpx.Client, number: str
) -> None:
    _made(api, customer="Harbour Cranes")
    asked = {"customer": "quarry"}
    text = api.get("/assemblies.csv", params=asked)
    [row] = list(csv.DictReader(io.StringIO(text.content.decode("utf-8-sig"))))
    assert (row["number"], tuple(row)) == (number, spreadsheets.heading())
    book = openpyxl.load_workbook(io.BytesIO(api.get("/assemblies.xlsx", params=asked).content))
    heading, cells = book.active.iter_rows(values_only=True)
    kept = [name for name in heading if name in lists.columns()]
    [again] = lists.read_rows([kept, [cells[heading.index(name)] for name in kept]])
    assert again.spec == AssemblySpec.read(EXAMPLE_SPEC)
    assert api.get("/assemblies.pdf").status_code == 422
    assert api.get("/assemblies.csv", params={"pressure_min_bar": "much"}).status_code == 422


def test_a_run_is_shown_in_order(api: httpx.Client) -> None:
    made = api.post("/runs", json={"rows": [{**BODY, "position": str(n)} for n in range(3)]}).json()
    shown = api.get(f"/runs/{made['run']}").json()
    assert [a["number"] for a in shown] == made["numbers"]
    assert [a["position"] for a in shown] == ["0", "1", "2"]
    assert api.get("/runs/99").status_code == 404


def test_registering_for_an_order_moves_it_on(api: httpx.Client, number: str) -> None:
    order = api.post("/orders", json={"number": number, "contact": CONTACT}).json()["reference"]
    built = _made(api, replaces=number, order_reference=order)
    now = api.get(f"/orders/{order}").json()
    assert (now["state"], now["built"]) == ("building", [built])


def test_a_spec_shows_its_tag_before_it_is_registered(api: httpx.Client, store: Store) -> None:
    picture = api.post("/check/tag.png", json=EXAMPLE_SPEC)
    assert picture.headers["content-type"] == "image/png"
    shown = api.post("/read/photo", files={"image": ("tag.png", picture.content)})
    assert shown.status_code == 422 and store.count() == 0, "a picture of a tag is no tag"
    assert api.post("/check/tag.pdf", json=EXAMPLE_SPEC).content.startswith(b"%PDF")
    wrong = api.post("/check/tag.pdf", json={**EXAMPLE_SPEC, "length_mm": 3})
    assert (wrong.status_code, wrong.json()["problems"][0]["field"]) == (422, "length_mm")
    assert api.post("/check/tag.pdf", json=EXAMPLE_SPEC, params={"template": "none"}).status_code == 422


def test_a_machine_shows_what_is_on_it_now_by_position(api: httpx.Client, number: str) -> None:
    arm, gone = _made(api, position="arm"), _made(api, position="tank")
    new = _made(api, replaces=number)
    api.post(f"/assemblies/{gone}/history", json={"kind": "removed"})
    _made(api, customer="Harbour Cranes")
    asked = {"machine": "loader 4", "customer": "QUARRY NORTH"}
    before = api.get("/machine", params=asked).json()
    assert [(a["number"], a["replacement_built"]) for a in before] == [(arm, None), (number, new)]
    api.post(f"/assemblies/{new}/history", json={"kind": "fitted"})
    shown = api.get("/machine", params=asked).json()
    assert [(a["position"], a["number"]) for a in shown] == [("arm", arm), ("boom", new)]
    assert api.get("/machine", params={"machine": "Loader"}).json() == []


def test_all_of_a_machine_is_ordered_or_nothing(
    api: httpx.Client, number: str, store: Store, device: Callable[[Role], httpx.Client]
) -> None:
    arm = _made(api, position="arm")
    body = {"machine": "Loader 4", "customer": "Quarry North", "reference": "PO 7", "contact": CONTACT}
    assert device(Role.BUILDER).post("/machine/order", json=body).status_code == 403
    assert api.post("/machine/order", json={**body, "numbers": [arm, "00000-000001"]}).status_code == 422
    assert api.post("/machine/order", json={**body, "machine": "Loader 5"}).status_code == 422
    assert store.orders() == []
    made = api.post("/machine/order", json=body).json()["orders"]
    assert [(o["number"], o["customer_reference"]) for o in made] == [(arm, "PO 7"), (number, "PO 7")]
    some = api.post("/machine/order", json={**body, "numbers": [arm, arm.lower()]}).json()["orders"]
    assert [o["number"] for o in some] == [arm], "named twice, ordered once"


def test_a_tag_whose_digits_are_not_those_of_its_record_is_told_wherever_it_is_read(
    api: httpx.Client, number: str, store: Store
) -> None:
    own = api.get(f"/assemblies/{number}").json()["link"]
    other = _made(api, spec={**EXAMPLE_SPEC, "length_mm": 900})
    digits = api.get(f"/assemblies/{other}").json()["link"].rsplit("/", 1)[1]
    swapped, damaged = f"{own.rsplit('/', 1)[0]}/{digits}", f"{own[:-1]}{(int(own[-1]) + 1) % 10}"
    found = api.get("/scans", params={"text": swapped}).json()
    assert (found["digits"], found["spec"]["length_mm"]) == ("differ", 1250)
    assert "the tag and our record differ" in found["say"]
    assert "the code on the tag is damaged" in api.get("/scans", params={"text": damaged}).json()["say"]
    assert api.get("/fit-steps", params={"tag": swapped}).json()["digits"] == "differ"
    for text, state in ((own, "same"), (swapped, "differ")):
        said = api.post("/read", json={"text": text}).json()
        assert (said["registered"], said["digits"]) == (True, state)
    unknown = api.post("/read", json={"text": own.replace(number.replace("-", ""), "00000000001")}).json()
    assert (unknown["registered"], unknown["digits"]) == (False, None)
    store.withdraw("blisters", tag=number)
    held = api.get("/scans", params={"text": swapped}).json()["say"]
    assert "differ" in held and "WITHDRAWN, do not use: blisters" in held


def test_a_scan_says_what_it_is(api: httpx.Client, number: str, store: Store) -> None:
    def scan(text: str) -> Any:
        return api.get("/scans", params={"text": text}).json()

    link = api.get(f"/assemblies/{number}").json()["link"]
    for text in (link, number, number.lower(), number.replace("-", " ")):
        found = scan(text)
        assert (found["kind"], found["number"], found["record"]["customer"]) == (
            "tag",
            number,
            "Quarry North",
        )
        assert "lot" not in found["spec"]["hose"]
        assert found["digits"] == ("same" if text == link else None)
    foreign = scan(link.replace(number.replace("-", ""), "00000000001"))
    assert "is not in our records" in foreign["say"] and foreign["digits"] is None
    assert (foreign["kind"], foreign["record"], foreign["spec"]["length_mm"]) == ("tag", None, 1250)
    for text in ("H-2291", "h-2291", "]C110H-2291", "(10)H-2291"):
        found = scan(text)
        assert (found["kind"], found["hose"]["standard"], found["withdrawals"]) == (
            "hose_lot",
            "SAE 100R2",
            [],
        )
    _made(api, spec={**EXAMPLE_SPEC, "end_b": {**EXAMPLE_SPEC["end_b"], "lot": "F-7"}})  # type: ignore[dict-item]
    bin_lot = scan("F-7")
    assert (bin_lot["kind"], bin_lot["end"]["shape"], bin_lot["hose"]) == ("fitting_lot", "elbow_90", None)
    store.withdraw("blisters", hose_lot="H-2291")
    held = scan("H-2291")
    assert held["withdrawals"][0]["reason"] == "blisters" and "do not use" in held["say"]
    store.withdraw("cracks", fitting_lot="F-99")
    unknown = scan("f-99")
    assert (unknown["kind"], unknown["withdrawals"][0]["reason"]) == ("unknown", "cracks")
    assert scan("nothing")["kind"] == "unknown"


def test_an_empty_list_can_be_filled_and_run(api: httpx.Client, store: Store) -> None:
    for form in ("csv", "xlsx"):
        empty = api.get(f"/lists/empty.{form}").content
        ran = api.post("/lists/run", files={"file": (f"list.{form}", empty)})
        assert ran.status_code == 201, ran.text
    assert store.count() == 2


def _pages(api: httpx.Client, path: str, **params: Any) -> list[Any]:
    """Every page of a list, followed by the header Link."""
    found: list[Any] = []
    answer = api.get(path, params={"limit": 2, **params})
    while True:
        assert answer.status_code == 200 and len(answer.json()) in (1, 2)
        found += answer.json()
        if "next" not in answer.links:
            return found
        answer = api.get(str(api.base_url.copy_with(raw_path=answer.links["next"]["url"].encode())))


def test_lists_come_in_pages_with_everything_once(api: httpx.Client, number: str, store: Store) -> None:
    for n in range(5):
        api.put(f"/recipes/rod {n} & 7", json=EXAMPLE_SPEC)
        api.put("/crimp-diameters", json={**CRIMP, "shell": f"F-{n}"})
        api.post("/withdrawals", json={"reason": "x", "hose_lot": f"H-{n}"})
        api.post("/orders", json={"number": number, "contact": CONTACT})
    api.put("/crimp-diameters", json={**CRIMP, "shell": "F-1", "diameter_mm": 32})
    for path, mark in (("/recipes", "name"), ("/crimp-diameters", "id"), ("/withdrawals", "id"),
                       ("/orders", "reference")):  # fmt: skip
        assert (all_ := _pages(api, path)) == api.get(path).json(), path
        assert len(all_) == len({item[mark] for item in all_}) == 5
    assert len(_pages(api, "/withdrawals", holds=True)) == 5
    assert [e["id"] for e in _pages(api, "/events")] == [e.id for e in store.events()]
    assert api.get("/crimp-diameters", params={"after": 99}).status_code == 422


def test_a_request_that_is_too_large_is_refused(api: httpx.Client) -> None:
    answers = [
        api.post("/lists/dry-run", files={"file": ("list.csv", b"x" * 21_000_000)}),
        api.post("/check", content=b" " * 21_000_000, headers={"content-type": "application/json"}),
    ]
    for answer in answers:
        assert (answer.status_code, answer.headers["content-type"]) == (413, "application/problem+json")
    smaller = api.post("/lists/dry-run", files={"file": ("list.csv", b"x" * 5_100_000)})
    assert (smaller.status_code, smaller.json()["problems"][0]["field"]) == (422, "file")


def test_what_a_path_names_is_not_there_for_writing_either(api: httpx.Client) -> None:
    for path, body in (
        ("/assemblies/00000000001/history", {"kind": "fitted"}),
        ("/assemblies/00000000001/proof-tests", TEST),
        ("/assemblies/00000000001/crimps", {"crimps": [{"end": "a", "measured_mm": 31, "shell": "F-12"}]}),
        ("/orders/R-NONE/steps", {"state": "accepted"}),
        ("/withdrawals/9/lift", {"reason": "x"}),
    ):
        assert api.post(path, json=body).status_code == 404, path


def test_a_field_that_cannot_be_read_is_named_with_its_value(api: httpx.Client, number: str) -> None:
    answer = api.post(f"/assemblies/{number}/proof-tests", json={**TEST, "medium": "wine", "colour": "red"})
    problems = {p["field"]: p for p in answer.json()["problems"]}
    assert problems.keys() == {"medium", "colour"}
    assert problems["medium"]["value"] == "wine" and "water" in problems["medium"]["mend"]
    assert problems["colour"]["mend"]
    long = api.post(f"/assemblies/{number}/history", json={"kind": "fitted", "data": {"note": "x" * 5000}})
    assert (long.status_code, long.json()["problems"][0]["field"]) == (422, "data")
