"""History as EPCIS 2.0 events (GS1 EPCIS 2.0, ISO/IEC 19987; vocabulary: CBV 2.0, ISO/IEC 19988).

An assembly is named by its link: a GS1 Digital Link where the shop has a GS1 company prefix, else
the tag's own address. What the vocabulary has no word for is told in terms of our own namespace.
"""

from __future__ import annotations

import json
import uuid
from collections.abc import Iterator
from datetime import UTC, datetime
from typing import Any

from api.settings import Settings
from tagger.store import Event, Kind, Result, Store, verdict

CONTEXT = "https://ref.gs1.org/standards/epcis/2.0.0/epcis-context.jsonld"
_NAMES = uuid.UUID("3f0e9f0c-7f4b-5d0a-9a53-0c1c5a5f9a11")  # ours: an event's id never changes

# kind: (action, bizStep, disposition); the words of CBV 2.0 as GS1 publishes them with its JSON Schema.
_STEPS: dict[Kind, tuple[str, str, str | None]] = {
    Kind.REGISTERED: ("ADD", "commissioning", "active"),
    Kind.CRIMPED: ("OBSERVE", "assembling", "in_progress"),
    Kind.FLUSHED: ("OBSERVE", "other", "in_progress"),
    Kind.PROOF_TESTED: ("OBSERVE", "inspecting", None),
    Kind.PROOF_ALLOWED: ("OBSERVE", "inspecting", None),
    Kind.PRINTED: ("OBSERVE", "encoding", "encoded"),
    Kind.FITTED: ("OBSERVE", "installing", "active"),
    Kind.INSPECTED: ("OBSERVE", "inspecting", None),
    Kind.SCANNED: ("OBSERVE", "other", None),
    Kind.ORDERED: ("OBSERVE", "other", None),
    Kind.REPLACEMENT_BUILT: ("OBSERVE", "other", None),
    Kind.REPLACED: ("OBSERVE", "replacing", None),
    Kind.REMOVED: ("DELETE", "removing", "inactive"),
    Kind.CORRECTED: ("OBSERVE", "other", None),
    Kind.VOIDED: ("DELETE", "decommissioning", "inactive"),
    Kind.WITHDRAWN: ("OBSERVE", "holding", "recalled"),
    Kind.WITHDRAWAL_LIFTED: ("OBSERVE", "other", "active"),
}


def event(source: Event, settings: Settings) -> dict[str, Any]:
    """One line of history as an ObjectEvent."""
    action, step, disposition = _STEPS[source.kind]
    if source.kind is Kind.PROOF_TESTED and verdict(source.data).result in (Result.FAILED, Result.HELD):
        disposition = "non_sellable_other"
    found: dict[str, Any] = {
        "type": "ObjectEvent",
        "eventID": f"urn:uuid:{uuid.uuid5(_NAMES, f'{settings.base_url} {source.id}')}",
        "eventTime": source.at.isoformat(timespec="milliseconds").replace("+00:00", "Z"),
        "eventTimeZoneOffset": "+00:00",
        "epcList": [name_of(source.number, settings)],
        "action": action,
        "bizStep": step,
    }
    if disposition:
        found["disposition"] = disposition
    found["tagger:kind"] = str(source.kind)
    if source.data:
        found["tagger:data"] = json.dumps(source.data, ensure_ascii=False, sort_keys=True)
    return found


def name_of(number: str, settings: Settings) -> str:
    """The URI of one assembly: GS1 Digital Link with the GIAI (8004), or the tag's own address."""
    if settings.gs1_prefix:
        return f"{settings.base_url}/8004/{settings.gs1_prefix}{number}"
    return f"{settings.base_url}/T/{number}"


def document_lines(store: Store, settings: Settings, *, after: int = 0) -> Iterator[str]:
    """The whole document, a piece at a time: it may be long."""
    head = {
        "@context": [CONTEXT, {"tagger": f"{settings.base_url}/api/v1/epcis/terms#"}],
        "type": "EPCISDocument",
        "schemaVersion": "2.0",
        "creationDate": datetime.now(UTC).isoformat(timespec="milliseconds").replace("+00:00", "Z"),
    }
    yield json.dumps(head, ensure_ascii=False)[:-1] + ', "epcisBody": {"eventList": [\n'
    first = True
    while events := store.events(after=after, limit=1000):
        for one in events:
            yield ("" if first else ",\n") + json.dumps(event(one, settings), ensure_ascii=False)
            first = False
        after = events[-1].id
    yield "\n]}}\n"
