"""Where a build begins: blank, a scanned tag, an order request, a recipe, an earlier hose."""

from __future__ import annotations

from datetime import date
from typing import Any
from urllib.parse import quote

from fastapi import APIRouter, Request
from starlette.responses import JSONResponse, Response

from api.bench import form as forms
from api.bench.page import go, settings_of, store_of
from api.identity import Builder
from api.settings import ClockingSense
from tagger.code import link, payload
from tagger.code import number as tag_number
from tagger.errors import LinkError, NumberError, Problem, StoreError, TaggerError
from tagger.spec import AssemblySpec, Hose
from tagger.store import Filter, Store

router = APIRouter()


def begin(request: Request) -> dict[str, Any]:
    """The fields to begin with, as the page's address asks. Raises TaggerError."""
    store, sense, asked = store_of(request), settings_of(request).clocking_sense, request.query_params
    fields = forms.blank(date.today())
    if recipe := asked.get("recipe"):
        return fields | forms.fields_of(store.recipe(recipe).spec, sense)
    if reference := asked.get("order"):
        order = store.order(reference)
        ours = order.number if order.number and store.known(order.number) else None
        fields |= forms.fields_of(_without_lots(order.spec), sense)
        fields |= {"replaces": ours or "", "order_reference": order.reference, "count": str(order.quantity)}
        fields |= _placed(store, ours) if ours else {"customer": order.contact.company or order.contact.name}
        return fields
    if text := asked.get("tag"):
        found, number = spec_on(store, text)
        fields |= forms.fields_of(_without_lots(found), sense)
        if number and store.known(number):
            fields |= _placed(store, number)
            fields["replaces"] = number if asked.get("replaces") else ""
        return fields
    return fields | {
        name: asked[name] for name in asked if name in forms.BLANK and name not in ("key", "covers")
    }


def spec_on(store: Store, text: str) -> tuple[AssemblySpec, str | None]:
    """The spec of a scanned or typed tag: of its record, else of its own digits."""
    scanned = link.parse(text)
    if store.known(scanned.number):
        return store.assembly(scanned.number).spec, scanned.number
    if scanned.digits:
        return payload.decode(scanned.digits).spec, scanned.number
    raise StoreError(
        Problem("tag", tag_number.format(scanned.number), "is not registered here, and the number alone holds no spec",
                "Scan the QR code on the tag: it holds the whole spec.")
    )  # fmt: skip


@router.get("/go")
def go_to(request: Request, me: Builder, text: str = "") -> Response:
    """The field at the top of every page: a tag opens its record, anything else is looked for."""
    try:
        number = link.parse(text).number
    except (LinkError, NumberError):
        return go(f"/bench/find?lot={_escaped(text)}")
    if store_of(request).known(number):
        return go(f"/bench/tag/{number}")
    return go(f"/bench/build?tag={_escaped(text)}")


@router.get("/scan")
def scan(request: Request, me: Builder, text: str = "") -> Response:
    """What was scanned into the build page: a tag, a lot seen before, or something not known.

    Answers JSON: ``kind`` is "tag", "hose_lot", "fitting_lot" or "unknown"; ``fields`` are those
    of the page that follow from it; ``say`` tells the builder in words.
    """
    text = _label(text)
    store, sense = store_of(request), settings_of(request).clocking_sense
    try:
        found, number = spec_on(store, text)
    except TaggerError:
        return JSONResponse(_lot(store, text))
    fields = forms.fields_of(_without_lots(found), sense)
    if number and store.known(number):
        fields |= _placed(store, number)
    name = tag_number.format(number) if number else ""
    return JSONResponse({"kind": "tag", "fields": fields, "say": f"Spec taken from tag {name}."})


def _label(text: str) -> str:
    """What a scanner sends for a label, without the mark of the symbology and of GS1's lot (AI 10)."""
    text = text.strip()
    if text.startswith("]") and len(text) > 3:
        text = text[3:]
        text = text[2:] if text.startswith("10") else text
    return text.removeprefix("(10)")


def _lot(store: Store, text: str) -> dict[str, Any]:
    """A lot says what it is where something has been built from it before."""
    for assembly in store.find(Filter(lot=text), limit=1).assemblies if text else ():
        spec, wanted = assembly.spec, " ".join(text.split()).upper()
        if (spec.hose.lot or "").upper() == wanted:
            fields = {"hose.standard": spec.hose.standard, "hose.dash": str(spec.hose.dash),
                      "hose.edition": spec.hose.edition or "", "hose.lot": text}  # fmt: skip
            return {"kind": "hose_lot", "fields": fields, "say": f"Hose lot {text}: {_hose(spec.hose)}."}
        end = "end_a" if (spec.end_a.lot or "").upper() == wanted else "end_b"
        every = forms.fields_of(spec, ClockingSense.STANDARD)
        taken = {name.split(".")[1]: value for name, value in every.items() if name.startswith(f"{end}.")}
        taken |= {"lot": text}
        taken.pop("same", None)
        return {"kind": "fitting_lot", "fields": taken, "say": f"Fitting lot {text}."}
    return {"kind": "unknown", "fields": {}, "say": f"{text}: nothing has been built from this lot before."}


def _hose(hose: Hose) -> str:
    return f"{hose.standard} -{hose.dash}"


def _placed(store: Store, number: str) -> dict[str, str]:
    known = store.assembly(number)
    return {name: getattr(known, name) or "" for name in ("customer", "machine", "position")}


def _without_lots(spec: AssemblySpec) -> AssemblySpec:
    """The next hose comes from other reels and bins: their lots must be given again."""
    return spec.carried().model_copy(update={"note": spec.note})


def _escaped(text: str) -> str:
    return quote(text.strip(), safe="")
