"""Tags over the network: which templates there are, and the tags as files."""

from __future__ import annotations

import io
from collections.abc import Sequence
from typing import Literal

from api.settings import Settings
from tagger.errors import Problem, TemplateError
from tagger.printing import pdf, raster, template
from tagger.printing.content import Tag


def template_of(name: str, settings: Settings) -> template.Template:
    """A label template by its name. Raises TemplateError for one that is not there.

    Whoever asks over the network may name a template, but no file of this machine; only the
    settings may.
    """
    known = template.names(settings.label_template_dirs)
    if name not in known and name != settings.label_template:
        mend = f"Use one of: {', '.join(known)}."
        raise TemplateError(Problem("template", name, "is not a template here", mend))
    return settings.template(name)


def template_titles(settings: Settings) -> list[tuple[str, str]]:
    """The label templates there are: name and title."""
    folders = settings.label_template_dirs
    return [(name, str(template.load(name, folders).named)) for name in template.names(folders)]


def pdf_of(tags: Sequence[Tag], wanted: template.Template, dpi: int) -> bytes:
    out = io.BytesIO()
    pdf.write(tags, wanted, out, dpi=dpi)
    return out.getvalue()


def one_of(tag: Tag, wanted: template.Template, dpi: int, form: Literal["pdf", "png"]) -> bytes:
    """One tag as a file of that form."""
    return raster.png(tag, wanted, dpi) if form == "png" else pdf_of([tag], wanted, dpi)
