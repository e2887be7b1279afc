"""From a record to the tag that is printed: the same on the command line, at the bench and by the JSON API."""

from __future__ import annotations

import unicodedata
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import replace
from datetime import date

from tagger.code import link, payload
from tagger.messages import Message
from tagger.printing.content import Tag
from tagger.record import Stop, recorded
from tagger.settings import ShopSettings
from tagger.spec import AssemblySpec, TagContent
from tagger.store import Assembly, Registration, Store
from tagger.store.overrated import as_of_today
from tagger.store.prepared import Drawn
from tagger.trade.results import Assessment

SPECIMEN = "SPEC1MEN000"
"""What stands on previews where a number will: it does not pass the check, nor is it one slip from one that does."""

_EXAMPLE = Stop((Message("printing-stop-example"),), Message("printing-stop-example"), date(2026, 1, 1))
"""What a preview of a "do not use" tag shows where the reason will stand."""


def tags_of(store: Store, assemblies: Sequence[Assembly], shop: ShopSettings) -> list[Tag]:
    """The tags of these records, as they were frozen when registered; pieces are counted within their run.

    A tag that is printed again never says more pressure than the tables of today allow.
    """
    sizes = {run: store.run_size(run) for run in {one.run for one in assemblies}}
    told = as_of_today(assemblies, shop.tables(store.held_rows()))
    stops = store.stops([one.number for one in assemblies])
    made = (
        _tag(
            one.number,
            one.digits if one.content == kept.content else payload.encode(one.content),
            one.content,
            one.spec,
            one.assessment,
            shop,
            place=one.place,
            of=sizes[one.run],
            order=one.order_reference,
            **recorded(one),
        )
        for one, kept in zip(told, assemblies, strict=True)
    )
    return [replace(tag, stop=stops.get(tag.number)) for tag in made]


def preview(row: Registration, shop: ShopSettings) -> Tag:
    """The row's first tag as it will print once it is registered, but for its number and the word across it.

    Whoever prints it has a picture of a tag, never a tag. Raises PayloadError.
    """
    content = row.assessment.content_of(row.spec, row.built_on)
    tag = _tag(
        SPECIMEN,
        payload.encode(content),
        content,
        row.spec,
        row.assessment,
        shop,
        place=1,
        of=row.count,
        order=row.order_reference,
        **recorded(row),
    )
    return replace(tag, stop=_EXAMPLE)


def tags_to_be(drawn: Drawn, shop: ShopSettings) -> Iterator[Tag]:
    """The tags of a run under the numbers drawn for it, each as it will print once the run is registered."""
    for place, (number, digits, content, row) in enumerate(drawn.each(), 1):
        yield _tag(
            number,
            digits,
            content,
            row.spec,
            row.assessment,
            shop,
            place=place,
            of=len(drawn.numbers),
            order=row.order_reference,
            **recorded(row),
        )


def _tag(
    number: str,
    digits: str,
    content: TagContent,
    spec: AssemblySpec,
    assessment: Assessment,
    shop: ShopSettings,
    *,
    place: int,
    of: int,
    **record: str | None,
) -> Tag:
    keys = shop.keys()
    return Tag(
        number=number,
        link=_link(number, digits, shop),
        signed_link=_link(number, keys.sign(number, digits), shop) if keys.private else "",
        content=content,
        assessment=assessment,
        serial=Message("printing-serial", place=place, of=of) if of > 1 else None,
        shop=_composed(shop.shop_line),
        shop_name=_composed(shop.shop_name) if shop.has_set("shop_name") else "",
        extra=_said({**record, "note": spec.note}),
        specimen=number == SPECIMEN,
        lots=_said({"end_a": spec.end_a.lot, "hose": spec.hose.lot, "end_b": spec.end_b.lot}),
    )


def _link(number: str, digits: str, shop: ShopSettings) -> str:
    prefix = shop.gs1_prefix or None
    return link.build(shop.base_url, number, digits, gs1_prefix=prefix, checked=number != SPECIMEN)


def _said(texts: Mapping[str, str | None]) -> dict[str, str]:
    return {name: _composed(text) for name, text in texts.items() if text}


def _composed(text: str) -> str:
    """Letters with their accents as one character each, which is what faces have: some keyboards and files part them."""
    return unicodedata.normalize("NFC", text)
