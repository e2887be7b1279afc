"""All that is kept, as open formats in one ZIP: JSON lines for programs, CSV for people."""

from __future__ import annotations

import json
import tempfile
import zipfile
from collections.abc import Iterator
from dataclasses import asdict
from typing import Any

from api.shared import spreadsheets
from tagger.i18n import Translator
from tagger.messages import Message
from tagger.record import recorded
from tagger.store import Assembly, OrderRequest, Recipe, Store

_FILES = {
    "assemblies.jsonl": Message("papers-export-assemblies"),
    "assemblies.csv": Message("papers-export-table"),
    "events.jsonl": Message("papers-export-events"),
    "orders.jsonl": Message("papers-export-orders"),
    "withdrawals.jsonl": Message("papers-export-withdrawals"),
    "recipes.jsonl": Message("papers-export-recipes"),
    "crimps.jsonl": Message("papers-export-crimps"),
    "shop_values.jsonl": Message("papers-export-values"),
    "fittings.jsonl": Message("papers-export-fittings"),
    "fitted.jsonl": Message("papers-export-fitted"),
    "photos.jsonl": Message("papers-export-photos"),
}
"""What each file of the archive holds, in its order."""


def read_me(t: Translator) -> str:
    """What the archive holds, file by file, and what it leaves out."""
    files = "\n".join(f"{name:<19}{t(held)}" for name, held in _FILES.items())
    said = (t("papers-export-everything"), files, t("papers-export-left-out"), t("papers-export-digits"))
    return "\n\n".join(said) + "\n"


def archive(store: Store, language: str) -> Iterator[bytes]:
    """The ZIP, a piece at a time, its README in ``language``; made on disk first, of one view of the store, so that it is whole."""
    with tempfile.TemporaryFile() as file:
        with store.reading(), zipfile.ZipFile(file, "w", zipfile.ZIP_DEFLATED) as whole:
            whole.writestr("README.txt", read_me(Translator(language)))
            _lines(whole, "assemblies.jsonl", (assembly(item) for item in store.every()))
            with whole.open("assemblies.csv", "w", force_zip64=True) as out:
                for part in spreadsheets.csv_lines(spreadsheets.heading(), spreadsheets.rows(store)):
                    out.write(part)
            _lines(whole, "events.jsonl", _events(store))
            _lines(whole, "orders.jsonl", (order(item) for item in store.orders(limit=None)))
            _lines(whole, "withdrawals.jsonl", (asdict(item) for item in store.withdrawals()))
            _lines(whole, "recipes.jsonl", (recipe(item) for item in store.recipes()))
            _lines(whole, "fittings.jsonl", (one.as_dict() for one in store.fittings()))
            _lines(whole, "fitted.jsonl", (asdict(one) for one in store.fitted_reports(limit=None)))
            _lines(whole, "photos.jsonl", (asdict(one) for one in store.every_photo()))
            for one in store.every_photo():
                whole.writestr(f"photos/{one.id}.jpg", store.photo(one.id), zipfile.ZIP_STORED)
            _lines(whole, "crimps.jsonl", (asdict(item) for item in store.crimps()))
            _lines(whole, "shop_values.jsonl", (asdict(item) for item in store.shop_rows(ended=True)))
        file.seek(0)
        while part := file.read(1 << 16):
            yield part


def _lines(whole: zipfile.ZipFile, name: str, values: Iterator[dict[str, Any]]) -> None:
    with whole.open(name, "w", force_zip64=True) as out:
        for value in values:
            out.write(json.dumps(value, default=str, ensure_ascii=False).encode() + b"\n")


def _events(store: Store) -> Iterator[dict[str, Any]]:
    after = 0
    while events := store.events(after=after, limit=1000):
        yield from (asdict(event) for event in events)
        after = events[-1].id


def assembly(item: Assembly) -> dict[str, Any]:
    """One assembly as plain JSON values."""
    return {
        "number": item.number,
        "spec": item.spec.as_dict(),
        "assessment": item.assessment.model_dump(mode="json"),
        "content": item.content.model_dump(mode="json", exclude_none=True),
        "digits": item.digits,
        "built_on": item.built_on.isoformat() if item.built_on else None,
        **recorded(item),
        "replaces": item.replaces,
        "replaced_by": item.replaced_by,
        "replacement_built": item.replacement_built,
        "fitted": item.fitted,
        "order_reference": item.order_reference,
        "withdrawals": [asdict(withdrawal) for withdrawal in item.withdrawals],
        "registered_by": item.registered_by,
        "created_at": item.created_at.isoformat(),
        "run": item.run,
        "place": item.place,
    }


def order(item: OrderRequest) -> dict[str, Any]:
    """One order request as plain JSON values."""
    return {
        **{k: v for k, v in vars(item).items() if k not in ("spec", "contact", "steps")},
        "spec": item.spec.as_dict(),
        "contact": item.contact.model_dump(),
        "steps": [asdict(step) for step in item.steps],
    }


def recipe(item: Recipe) -> dict[str, Any]:
    """One recipe as plain JSON values."""
    return vars(item) | {"spec": item.spec.as_dict()}
