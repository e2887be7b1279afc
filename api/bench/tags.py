"""From a record to the tag that is printed."""

from __future__ import annotations

import io
from collections.abc import Sequence

from api.settings import Settings
from tagger.code import link
from tagger.code import number as tag_number
from tagger.errors import Problem, TemplateError
from tagger.printing import pdf, template
from tagger.printing.tag import Tag
from tagger.spec import AssemblySpec, TagContent
from tagger.store import Assembly, Store
from tagger.trade.assessment import Assessment

SAMPLE = "0000000000" + next(c for c in tag_number.ALPHABET if tag_number.is_valid("0000000000" + c))
"""A number that fits the check but is never given: it stands on previews."""


def shop_line(settings: Settings) -> str:
    return ", ".join(part for part in (settings.shop_name, settings.shop_phone) if part)


def tags_of(store: Store, assemblies: Sequence[Assembly], settings: Settings) -> list[Tag]:
    """The tags of these records, as they were frozen when registered."""
    sizes = {run: store.run_size(run) for run in {assembly.run for assembly in assemblies}}
    return [_tag(assembly, sizes[assembly.run], settings) for assembly in assemblies]


def _tag(assembly: Assembly, run_size: int, settings: Settings) -> Tag:
    extra = {
        "customer": assembly.customer, "machine": assembly.machine, "position": assembly.position,
        "order": assembly.order_reference, "note": assembly.spec.note,
    }  # fmt: skip
    return Tag(
        number=assembly.number,
        link=link.build(
            settings.base_url, assembly.number, assembly.digits, gs1_prefix=settings.gs1_prefix or None
        ),
        content=assembly.content,
        assessment=assembly.assessment,
        serial=f"{assembly.place} of {run_size}" if run_size > 1 else "",
        shop=shop_line(settings),
        extra={name: text for name, text in extra.items() if text},
    )


def preview(
    spec: AssemblySpec, content: TagContent, digits: str, assessment: Assessment, settings: Settings
) -> Tag:
    """The tag as it will print, with a number that nobody gets."""
    return Tag(
        number=SAMPLE,
        link=link.build(settings.base_url, SAMPLE, digits, gs1_prefix=settings.gs1_prefix or None),
        content=content,
        assessment=assessment,
        shop=shop_line(settings),
    )


def template_of(name: str, settings: Settings) -> template.Template:
    """A label template by its name. Raises TemplateError for one that is not there.

    Whoever asks over the network may name a template, but no file of this machine; only the
    settings may.
    """
    known = template.names(settings.label_template_dirs)
    if name not in known and name != settings.label_template:
        mend = f"Use one of: {', '.join(known)}."
        raise TemplateError(Problem("template", name, "is not a template here", mend))
    found = template.load(name, settings.label_template_dirs)
    return found.in_languages([settings.language]) if settings.language not in found.languages else found


def pdf_of(tags: Sequence[Tag], wanted: template.Template, dpi: int) -> bytes:
    out = io.BytesIO()
    pdf.write(tags, wanted, out, dpi=dpi)
    return out.getvalue()
