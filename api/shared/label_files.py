"""Tags over the network: which templates there are, and the tags as files."""

from __future__ import annotations

import io
from collections.abc import Callable, Sequence
from typing import Literal

from api.settings import Settings
from tagger.errors import Problem, TemplateError
from tagger.messages import Message
from tagger.printing import pdf, plate, preflight, raster, template
from tagger.printing.content import Tag
from tagger.printing.kinds import Kinds
from tagger.store import Event, Kind, Store


def template_of(name: str, settings: Settings) -> template.Template:
    """A label template by its name. Raises TemplateError for one that is not there.

    Whoever asks over the network may name a template, but no file of this machine; only the
    settings may.
    """
    known = template.names(settings.label_template_dirs)
    if name not in known and name != settings.label_template:
        message = Message("printing-template-not-here", name=name, names=tuple(known))
        raise TemplateError(Problem("template", name, message))
    return settings.template(name)


def template_titles(settings: Settings, language: str) -> list[tuple[str, str]]:
    """The label templates there are: name and title, in a language."""
    listed = template.catalogue(settings.label_template_dirs, language)
    return [(one["name"], one["title"]) for one in listed]


def travellers(settings: Settings) -> list[str]:
    """The templates that stay in the shop, by name."""
    listed = template.catalogue(settings.label_template_dirs)
    return [one["name"] for one in listed if one["purpose"] == "traveller"]


def stopping_templates(settings: Settings) -> list[str]:
    """The templates for hoses that must not be used, by name."""
    listed = template.catalogue(settings.label_template_dirs)
    return [one["name"] for one in listed if one["purpose"] == "do_not_use"]


def papers(settings: Settings) -> list[str]:
    """The templates a print of which is no tag printed: those of the shop, and for hoses not to be used."""
    listed = template.catalogue(settings.label_template_dirs)
    return [one["name"] for one in listed if one["purpose"] != "tag"]


def tags_printed(store: Store, numbers: Sequence[str], settings: Settings) -> dict[str, list[Event]]:
    """The prints of each of these tags that was printed, oldest first; other papers do not count."""
    shop_only, found = papers(settings), dict[str, list[Event]]()
    for event in store.each(numbers, Kind.PRINTED):
        if event.data.get("template") not in shop_only:
            found.setdefault(event.number, []).append(event)
    return found


def sent_already(store: Store, numbers: Sequence[str], settings: Settings) -> set[str]:
    """Those of these whose tag was printed already, or stands in a print job that has not ended."""
    for_shop = papers(settings)
    jobs = [job for job in store.print_jobs(open_only=True, limit=200) if job.template not in for_shop]
    waiting = {number for job in jobs for number in job.numbers}
    return {*tags_printed(store, numbers, settings), *waiting.intersection(numbers)}


Form = Literal["pdf", "png", "svg", "dxf"]
MEDIA: dict[Form, str] = {
    "pdf": "application/pdf",
    "png": "image/png",
    "svg": "image/svg+xml",
    "dxf": "image/vnd.dxf",
}
"""What a tag can be a file of: SVG and DXF for an engraver."""


def to_print(tags: Sequence[Tag], wanted: template.Template, dpi: int, form: Form) -> bytes:
    """The file to print; of any form but PDF it holds the first tag alone.

    Raises TemplateError for SVG or DXF of a label that is for a printer, SymbolError where a label does not say what
    its tag says or would not scan, as a label round a hose that is too thin for it.
    """

    def scans(kinds: Kinds) -> None:
        preflight.refuse(kinds, wanted, dpi)

    if form == "pdf":
        return _pdf(tags, wanted, dpi, scans)
    if form == "png":
        kinds = Kinds()
        made = raster.png(tags[0], wanted, dpi, seen=kinds.add)
        scans(kinds)
        return made
    return plate.file(tags[0], wanted, form).encode()


def picture_of(tag: Tag, wanted: template.Template, dpi: int, form: Form) -> bytes:
    """One tag as a file to look at, as a specimen is. Raises TemplateError as ``to_print`` does."""
    if form == "svg" or form == "dxf":
        return plate.file(tag, wanted, form).encode()
    return raster.png(tag, wanted, dpi) if form == "png" else _pdf([tag], wanted, dpi)


def _pdf(
    tags: Sequence[Tag], wanted: template.Template, dpi: int, accept: Callable[[Kinds], None] | None = None
) -> bytes:
    out = io.BytesIO()
    pdf.write(tags, wanted, out, dpi=dpi, accept=accept)
    return out.getvalue()
