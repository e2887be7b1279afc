"""A tag for machines: JSON, JSON-LD in schema.org terms, and links by type.

The links follow RFC 9264 (linkset) with the link types of the GS1 Web Vocabulary, as GS1
Digital Link resolvers answer ``?linkType=``.
"""

from __future__ import annotations

from typing import Any

from api.scan.view import Shop, one_line, sections, short_end
from api.scan.visitor import Reader
from api.shared.known_tag import Tag
from tagger.code import number as tag_number
from tagger.i18n import LANGUAGES, Translator
from tagger.trade.results import Assessment

GS1 = "https://gs1.org/voc/"
# Link type, the part of the page it points at, and the message that names it.
LINK_TYPES = (
    ("pip", "#spec", "scan-the_hose"),  # product information page
    ("instructions", "#fit", "scan-fit"),
    ("safetyInfo", "#fit", "scan-fit"),
    ("support", "#order", "scan-order-again"),
)


def as_json(tag: Tag, assessed: Assessment | None, shop: Shop) -> dict[str, Any]:
    """The tag as plain values: the library's own JSON shapes. Lots stay with the shop."""
    record = tag.record
    return {
        "number": tag_number.format(tag.number),
        "link": shop.base_url + tag.path,
        "read_from": "record" if record else "tag",
        "digits": tag.digits_state,
        "signature": tag.signed.as_dict() if tag.signed else None,
        "withdrawn": [{"reason": w.reason, "since": w.at.isoformat()} for w in record.withdrawals]
        if record
        else None,
        "void": tag.void if record else None,
        "held": tag.held if record else None,
        "replaced_by": record.replaced_by and tag_number.format(record.replaced_by) if record else None,
        "replacement_built": record.replacement_built and tag_number.format(record.replacement_built)
        if record
        else None,
        "spec": (record.spec if record else tag.content.spec).without_lots().as_dict(),
        "tag": tag.content.model_dump(mode="json"),
        "assessment": assessed.model_dump(mode="json") if assessed else None,
    }


def json_ld(tag: Tag, reader: Reader, shop: Shop) -> dict[str, Any]:
    """The tag as a schema.org IndividualProduct."""
    t = reader.t
    properties = [
        {"@type": "PropertyValue", "name": label, "value": text}
        for _, label, text in sections(tag.content, t)
    ]
    if tag.withdrawn:
        state = {"@type": "PropertyValue", "name": t("scan-state"), "value": t("scan-withdrawn-title")}
        properties.insert(0, state)
    found: dict[str, Any] = {
        "@context": "https://schema.org",
        "@type": "IndividualProduct",
        "@id": shop.base_url + tag.path,
        "name": " – ".join(
            (
                t(one_line(tag.content)),
                t(short_end(tag.content.spec.end_a)),
                t(short_end(tag.content.spec.end_b)),
            )
        ),
        "serialNumber": tag_number.format(tag.number),
        "url": shop.base_url + tag.path,
        "additionalProperty": properties,
    }
    if tag.content.built_on:
        found["productionDate"] = tag.content.built_on.isoformat()
    return found


def linkset(tag: Tag, shop: Shop, t: Translator) -> dict[str, Any]:
    """Every link of the tag by its type, named in the visitor's language."""
    languages = list(LANGUAGES)
    page = shop.base_url + tag.path
    links: dict[str, Any] = {"anchor": page, f"{GS1}defaultLink": [_link(page, t("scan-tag"), languages)]}
    for kind, part, title in LINK_TYPES:
        links[GS1 + kind] = [_link(page + part, t(title), languages)]
    links[f"{GS1}masterData"] = [{"href": page, "title": t("scan-tag"), "type": "application/json"}]
    return {"linkset": [links]}


def _link(href: str, title: str, languages: list[str]) -> dict[str, Any]:
    return {"href": href, "title": title, "type": "text/html", "hreflang": languages}


def target(tag: Tag, link_type: str | None) -> str | None:
    """Where a link type leads, when not to the page itself; unknown types lead to the page."""
    kind = (link_type or "").removeprefix("gs1:").removeprefix(GS1)
    for name, part, _ in LINK_TYPES:
        if name == kind and part != "#spec":
            return tag.path + part
    return None


def page_links(tag: Tag) -> list[dict[str, str]]:
    """The link elements of the page: what machines may ask for instead."""
    found = [
        {"rel": "alternate", "href": tag.path, "type": "application/json"},
        {"rel": "linkset", "href": f"{tag.path}?linkType=all", "type": "application/linkset+json"},
    ]
    return found + [
        {"rel": "alternate", "href": f"{tag.path}?lang={lang}", "hreflang": lang, "type": "text/html"}
        for lang in LANGUAGES
    ]
