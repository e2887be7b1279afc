"""The order form: the same template on the server and, without a signal, on the phone."""

from __future__ import annotations

from collections.abc import Mapping

from api.scan import fill
from tagger import phrases
from tagger.i18n import Translator
from tagger.messages import length
from tagger.spec import AssemblySpec

TYPED = (
    "quantity", "needed_by", "reference", "name", "phone", "email", "company",
    "change_length", "change_end_a", "change_end_b", "change_cover", "change_other",
)  # fmt: skip
"""The fields that somebody types; what was typed stands in them again after a refusal."""


def order_form(
    spec: AssemblySpec,
    t: Translator,
    *,
    number: str = "",
    digits: str = "",
    spec_json: str = "",
    typed: Mapping[str, str] | None = None,
) -> str:
    """The form for a tag by ``number`` and ``digits``, or for a spec without a tag; ``typed``: what stands in it."""
    given = {name: (typed or {}).get(name, "") for name in TYPED}
    values = given | {
        "changed": any(given[name] for name in TYPED if name.startswith("change_")),
        "number_compact": number,
        "digits": digits,
        "spec_json": spec_json,
        "changes": not spec_json,
        "new_length": t("scan-order-new_length", length=length(spec.length_mm)),
        "new_end_a": t("scan-order-new_end_a", end=phrases.end(spec.end_a)),
        "new_end_b": t("scan-order-new_end_b", end=phrases.end(spec.end_b)),
    }
    return fill.fill("order", values, t.language)
