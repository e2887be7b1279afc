"""The form that says a hose was fitted: the same template on the server and, without a signal, on the phone."""

from __future__ import annotations

from collections.abc import Mapping

from api.scan import fill
from tagger.i18n import Translator

TYPED = ("fitted_on", "machine", "machine_hours", "fitted_by")


def fitted_form(
    t: Translator, number: str, typed: Mapping[str, str] | None = None, *, page: str | None = None
) -> str:
    """The form for a tag; ``typed``: what stands in it after a refusal; ``page``: where the reports are shown."""
    values = {name: (typed or {}).get(name, "") for name in TYPED}
    return fill.fill(
        "fitted", values | {"number_compact": number, "open": bool(typed), "page": page}, t.language
    )
