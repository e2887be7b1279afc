"""History as EPCIS 2.0.

Outside check: tests/outside/epcis_2_0_document.json tells what GS1's own JSON Schema asks. Where
TAGGER_TEST_EPCIS_SCHEMA names a file of GS1's schema, the document is held against that too.
"""

from __future__ import annotations

import copy
import json
import os
import uuid
from functools import cache
from pathlib import Path
from typing import TYPE_CHECKING, Any

import httpx
import pytest

from api.settings import Settings
from api.shared.epcis import document_lines, event, name_of
from tagger.store import Event, Kind, Store
from tests.rest.test_rest import BODY
from tests.store.samples import assessment, spec

OURS = Path(__file__).parents[1] / "outside" / "epcis_2_0_document.json"
SCHEMAS = [OURS, *(Path(path) for path in [os.environ.get("TAGGER_TEST_EPCIS_SCHEMA")] if path)]
if TYPE_CHECKING:
    from jsonschema import Draft7Validator
SETTINGS = Settings(base_url="https://tags.example.com")
GS1 = Settings(base_url="https://tags.example.com", gs1_prefix="0614141")


@pytest.fixture
def document(store: Store, request: pytest.FixtureRequest) -> dict[str, Any]:
    """The history of a tag to which everything has happened."""
    [known] = store.register(spec(), assessment())
    for kind in Kind:
        store.record(known.number, kind, {"passed": True, "note": "boom"})
    store.record(known.number, Kind.PROOF_TESTED, {"passed": False})
    store.record(known.number, Kind.SCANNED)
    made: dict[str, Any] = json.loads("".join(document_lines(store, getattr(request, "param", SETTINGS))))
    return made


@cache
def _validator(schema: Path) -> Draft7Validator:
    from jsonschema import Draft7Validator, FormatChecker  # here: it takes seconds to import

    return Draft7Validator(json.loads(schema.read_text(encoding="utf-8")), format_checker=FormatChecker())


@pytest.mark.parametrize("schema", SCHEMAS, ids=lambda path: path.name)
@pytest.mark.parametrize("document", [SETTINGS, GS1], ids=["own address", "GS1"], indirect=True)
def test_the_document_holds_to_the_schema(document: dict[str, Any], schema: Path) -> None:
    assert [error.message for error in _validator(schema).iter_errors(document)] == []
    kinds = {line["tagger:kind"] for line in document["epcisBody"]["eventList"]}
    assert kinds == {str(kind) for kind in Kind}


@pytest.mark.parametrize("schema", SCHEMAS, ids=lambda path: path.name)
@pytest.mark.parametrize(
    ("member", "value"),
    [
        ("action", None), ("action", "CHANGE"), ("bizStep", "crimping"), ("disposition", "broken"),
        ("eventTimeZoneOffset", "Z"), ("eventTime", None), ("kind", "crimped"), ("epcList", "one"),
        ("bizStep", "https://ns.gs1.org/cbv/BizStep-assembling"),
    ],
)  # fmt: skip
def test_the_schema_would_tell(document: dict[str, Any], schema: Path, member: str, value: object) -> None:
    wrong = copy.deepcopy(document)
    line = wrong["epcisBody"]["eventList"][1]
    line.pop(member, None) if value is None else line.update({member: value})
    assert not _validator(schema).is_valid(wrong)


def test_every_term_of_our_own_is_in_the_context(document: dict[str, Any]) -> None:
    """JSON-LD: a member with a prefix means something only where the context expands the prefix."""
    gs1, own = document["@context"]
    assert gs1 == "https://ref.gs1.org/standards/epcis/2.0.0/epcis-context.jsonld"
    used = {name.split(":")[0] for line in document["epcisBody"]["eventList"] for name in line if ":" in name}
    assert used == own.keys()
    assert all(address.startswith("https://") and address.endswith("#") for address in own.values())


@pytest.mark.parametrize("kind", list(Kind))
def test_an_events_name_is_the_same_each_time(kind: Kind, store: Store) -> None:
    source = Event(7, "00000000001", kind, store.now(), "anna", {"passed": False})
    found = event(source, SETTINGS)
    assert uuid.UUID(found["eventID"].removeprefix("urn:uuid:")).version == 5
    assert event(source, SETTINGS)["eventID"] == found["eventID"]


def test_the_document_holds_the_whole_history_in_order(api: httpx.Client, store: Store) -> None:
    numbers = api.post("/assemblies", json=BODY).json()["numbers"]
    store.record(numbers[0], Kind.FITTED, {"note": "boom"})
    events = api.get("/epcis").json()["epcisBody"]["eventList"]
    assert [e["bizStep"] for e in events] == ["commissioning", "commissioning", "installing"]
    assert events[0]["epcList"] == [f"https://tags.example.com/T/{numbers[0].replace('-', '')}"]


def test_a_shop_with_a_gs1_prefix_names_assemblies_by_giai() -> None:
    assert name_of("00000000001", GS1) == "https://tags.example.com/8004/061414100000000001"
