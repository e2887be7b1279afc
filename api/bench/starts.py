"""Where a build begins: blank, a scanned tag, an order request, a recipe, an earlier hose."""

from __future__ import annotations

from datetime import date
from typing import Any

from fastapi import APIRouter, Request
from starlette.responses import JSONResponse, Response

from api.bench import form as forms
from api.bench.page import spoken
from api.settings import ClockingSense
from api.shared.scan_look_up import Scanned, look_up, spec_on
from api.web.identity import Builder
from api.web.state import keys_of, settings_of, store_of
from tagger.errors import Problem
from tagger.record import recorded
from tagger.store import Assembly

router = APIRouter()


def begin(request: Request) -> dict[str, Any]:
    """The fields to begin with, as the page's address asks. Raises TaggerError."""
    return _in_mm(request, _begin(request))


def _in_mm(request: Request, fields: dict[str, Any]) -> dict[str, Any]:
    """Lengths of a spec are mm: said, where the shop reads a bare length as another unit."""
    return fields if settings_of(request).length_unit == "mm" else forms.in_unit(fields, "mm")


def _begin(request: Request) -> dict[str, Any]:
    store, sense, asked = store_of(request), settings_of(request).clocking_sense, request.query_params
    fields = forms.blank(date.today())
    if recipe := asked.get("recipe"):
        return fields | forms.fields_of(store.recipe(recipe).spec, sense)
    if reference := asked.get("order"):
        order = store.order(reference)
        ours = order.number if order.number and store.known(order.number) else None
        fields |= forms.fields_of(order.spec.to_build_again(), sense)
        fields |= {"replaces": ours or "", "order_reference": order.reference, "count": str(order.quantity)}
        fields |= (
            _placed(store.assembly(ours))
            if ours
            else {"customer": order.contact.company or order.contact.name}
        )
        return fields
    if text := asked.get("tag"):
        found, number = spec_on(store, text)
        fields |= forms.fields_of(found.to_build_again(), sense)
        if store.known(number):
            fields |= _placed(store.assembly(number))
            fields["replaces"] = number if asked.get("replaces") else ""
        return fields
    return fields | {
        name: asked[name] for name in asked if name in forms.BLANK and name not in ("key", "covers")
    }


def doubts(request: Request) -> tuple[Problem, ...]:
    """What to say of the tag that the page begins with, or that its order came from: that it is not ours,
    differs from its record, or is withdrawn."""
    store, asked = store_of(request), request.query_params
    reference = asked.get("order")
    text = store.order(reference).number if reference else asked.get("tag")
    found = look_up(store, text, keys_of(request)) if text else None
    if found is None or not (found.withdrawals or (found.doubtful and not reference)):
        return ()
    return (Problem("tag", found.number, found.say),)


@router.get("/scan")
def scan(request: Request, me: Builder, text: str = "") -> Response:
    """What was scanned into the build page: a tag, a lot seen before, or something not known.

    Answers JSON: ``kind`` is "tag", "fitting", "hose", "hose_lot", "fitting_lot" or "unknown"; ``fields`` are those
    of the page that follow from it; ``say`` tells the builder what it is.
    """
    found, sense = look_up(store_of(request), text, keys_of(request)), settings_of(request).clocking_sense
    said = spoken(request)["said"]
    return JSONResponse(
        {"kind": found.kind, "fields": _in_mm(request, _fields(found, sense)), "say": said(found.say)}
    )


def _fields(found: Scanned, sense: ClockingSense) -> dict[str, Any]:
    """The page's fields that follow from what was scanned."""
    if found.fitting is not None:
        return forms.end_fields(found.fitting.spec_end()) | {"lot": ""}
    if found.hoses and not found.several:
        own = found.hoses[0].as_hose()
        return {f"hose.{name}": str(own.get(name, "")) for name in ("standard", "dash", "edition", "part")}
    if found.spec is None:
        return {}
    if found.kind == "tag":
        fields = forms.fields_of(found.spec, sense)
        return fields | _placed(found.record) if found.record else fields
    if found.end is None:
        hose = found.spec.hose
        if found.several:
            return {"hose.lot": found.text}
        return {
            "hose.standard": hose.standard,
            "hose.dash": str(hose.dash),
            "hose.edition": hose.edition or "",
            "hose.part": hose.part or "",
            "hose.lot": found.text,
        }
    every = forms.fields_of(found.spec, ClockingSense.STANDARD)
    taken = {name.split(".")[1]: value for name, value in every.items() if name.startswith(f"{found.end}.")}
    taken.pop("same", None)
    return taken | {"lot": found.text}


def _placed(known: Assembly) -> dict[str, str]:
    return {name: text or "" for name, text in recorded(known).items()}
