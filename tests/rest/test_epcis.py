"""History as EPCIS 2.0.

Outside check: the words of bizStep and disposition, and the members an ObjectEvent must have, as in
the JSON Schema that GS1 publishes beside EPCIS 2.0 (its repository "EPCIS", folder JSON-Schema:
bizStep, disposition and event definitions).
"""

from __future__ import annotations

import re
import uuid

import httpx
import pytest

from api.epcis import event, name_of
from api.settings import Settings
from tagger.store import Event, Kind, Store
from tests.rest.test_rest import BODY

BIZ_STEPS = {
    "accepting",
    "arriving",
    "assembling",
    "collecting",
    "commissioning",
    "consigning",
    "creating_class_instance",
    "cycle_counting",
    "decommissioning",
    "departing",
    "destroying",
    "disassembling",
    "dispensing",
    "encoding",
    "entering_exiting",
    "holding",
    "inspecting",
    "installing",
    "killing",
    "loading",
    "other",
    "packing",
    "picking",
    "receiving",
    "removing",
    "repackaging",
    "repairing",
    "replacing",
    "reserving",
    "retail_selling",
    "shipping",
    "staging_outbound",
    "stock_taking",
    "stocking",
    "storing",
    "transporting",
    "unloading",
    "unpacking",
    "void_shipping",
    "sensor_reporting",
    "sampling",
}
DISPOSITIONS = {
    "active",
    "container_closed",
    "damaged",
    "destroyed",
    "dispensed",
    "disposed",
    "encoded",
    "expired",
    "in_progress",
    "in_transit",
    "inactive",
    "no_pedigree_match",
    "non_sellable_other",
    "partially_dispensed",
    "recalled",
    "reserved",
    "retail_sold",
    "returned",
    "sellable_accessible",
    "sellable_not_accessible",
    "stolen",
    "unknown",
}
OFFSET = re.compile(r"^([+-])((0[0-9]|1[0-3]):([0-5][0-9])|14:00)$")


@pytest.mark.parametrize("kind", list(Kind))
def test_every_kind_of_history_has_its_words(kind: Kind, store: Store) -> None:
    source = Event(7, "00000000001", kind, store.now(), "anna", {"passed": False})
    found = event(source, Settings(base_url="https://tags.example.com"))
    assert found["bizStep"] in BIZ_STEPS
    assert found.get("disposition", "active") in DISPOSITIONS
    assert found["action"] in ("ADD", "OBSERVE", "DELETE")
    assert {"type", "eventTime", "eventTimeZoneOffset", "epcList", "action"} <= found.keys()
    assert OFFSET.match(found["eventTimeZoneOffset"])
    assert uuid.UUID(found["eventID"].removeprefix("urn:uuid:")).version == 5
    assert event(source, Settings(base_url="https://tags.example.com"))["eventID"] == found["eventID"]


def test_the_document_holds_the_whole_history_in_order(api: httpx.Client, store: Store) -> None:
    numbers = api.post("/assemblies", json=BODY).json()["numbers"]
    store.record(numbers[0], Kind.FITTED, {"note": "boom"})
    document = api.get("/epcis").json()
    assert (document["type"], document["schemaVersion"]) == ("EPCISDocument", "2.0")
    assert document["@context"][0] == "https://ref.gs1.org/standards/epcis/2.0.0/epcis-context.jsonld"
    events = document["epcisBody"]["eventList"]
    assert [e["bizStep"] for e in events] == ["commissioning", "commissioning", "installing"]
    assert events[0]["epcList"] == [f"https://tags.example.com/T/{numbers[0].replace('-', '')}"]


def test_a_shop_with_a_gs1_prefix_names_assemblies_by_giai() -> None:
    settings = Settings(base_url="https://tags.example.com", gs1_prefix="0614141")
    assert name_of("00000000001", settings) == "https://tags.example.com/8004/061414100000000001"
