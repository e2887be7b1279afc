"""Every label template at true size, with what it holds and what it was measured to survive."""

from __future__ import annotations

import io
from dataclasses import dataclass
from datetime import UTC, datetime

from fastapi import APIRouter, Request
from PIL.Image import Image
from starlette.responses import Response

from api.bench.page import NOT_FOUND, refused, render
from api.shared.label_files import template_of
from api.web.identity import Builder
from api.web.language import language_of
from api.web.state import settings_of, tables_of
from tagger.errors import Problem, TaggerError, TemplateError
from tagger.i18n import LANGUAGES
from tagger.messages import Message, length
from tagger.printing import fields, painter, plate, rating, survival
from tagger.printing import template as label_templates
from tagger.printing.content import Tag
from tagger.printing.layout import Page, lay_out
from tagger.printing.sample import SPEC
from tagger.printing.template import (
    BetweenBox,
    Box,
    CautionBox,
    Code128Box,
    EndBox,
    FieldBox,
    PressureBox,
    QrBox,
    SignBox,
    Template,
    TighteningBox,
)
from tagger.record_tag import preview
from tagger.spec import AssemblySpec
from tagger.store import Registration
from tagger.trade import assess

router = APIRouter()


@dataclass(frozen=True)
class Shown:
    """One template as the page shows it; ``problems``: why it cannot be laid out."""

    template: Template
    size: Message
    holds: tuple[Message, ...]
    symbols: tuple[Message, ...]
    survived: survival.Survival | None
    problems: tuple[Problem, ...] = ()


@router.get("/templates")
def templates(request: Request, me: Builder, label: str = "") -> Response:
    """The page; ``label``: the language of the labels on it, else the reader's."""
    settings, language = settings_of(request), _language(request, label)
    tag = _specimen(request)
    names = label_templates.names(settings.label_template_dirs)
    return render(
        request,
        "templates.html",
        title=Message("bench-templates-title"),
        shown=[
            _shown(template_of(name, settings).in_languages([language]), tag, settings.printer_dpi)
            for name in names
        ],
        wounds=[wound for wound in survival.WOUNDS if wound != "all"],
        label=language,
        dpi=settings.printer_dpi,
    )


@router.get("/templates/{name}.png")
def picture(request: Request, me: Builder, name: str, label: str = "") -> Response:
    """One label as its dots, a specimen: for looking at."""
    settings = settings_of(request)
    try:
        wanted = template_of(name, settings).in_languages([_language(request, label)])
        image = _dots(_specimen(request), wanted, settings.printer_dpi)
    except TaggerError as error:
        return refused(request, 404, NOT_FOUND, error)
    out = io.BytesIO()
    image.save(out, "PNG", dpi=(settings.printer_dpi, settings.printer_dpi))
    return Response(out.getvalue(), media_type="image/png", headers={"Cache-Control": "no-store"})


def _dots(tag: Tag, wanted: Template, dpi: int) -> Image:
    """The label as printed; a plate as the engraver's tool cuts it."""
    page = lay_out(tag, wanted, dpi)
    image = painter.draw(page.drawing, dpi)
    if wanted.engraved is None:
        return image
    return plate.cut(plate.plate(tag, wanted), wanted.size, wanted.engraved).resize(image.size)


def _language(request: Request, label: str) -> str:
    return label if label in LANGUAGES else language_of(request)


def _specimen(request: Request) -> Tag:
    """The invented sample, as this shop's tables rate it."""
    spec = AssemblySpec.read(SPEC)
    row = Registration(spec, assess(spec, tables_of(request)), built_on=datetime.now(UTC).date())
    return preview(row, settings_of(request))


def _shown(one: Template, tag: Tag, dpi: int) -> Shown:
    width, height = map(length, one.size)
    size = Message("bench-templates-size", width=width, height=height)
    holds = tuple(dict.fromkeys(said for box in one.box for said in _held(box)))
    try:
        page = lay_out(tag, one, dpi)
        return Shown(one, size, holds, _symbols(page), survival.measured(one))
    except TemplateError as error:
        return Shown(one, size, holds, (), None, tuple(error.problems))


def _held(box: Box) -> tuple[Message, ...]:
    """What one box shows, by the captions of its fields."""
    match box:
        case FieldBox():
            return tuple(fields.FIELDS[name].caption for name in box.fields)
        case PressureBox(duty=duty):
            return (rating.CAPTION, *_captions("dangers", "duty")) if duty else (rating.CAPTION,)
        case EndBox(end=end):
            return (*_captions(f"end_{end}"), Message("bench-templates-tightening"))
        case TighteningBox():
            return (Message("bench-templates-tightening"),)
        case BetweenBox():
            return _captions("hose", "length", "clocking")
        case CautionBox():
            return (Message("bench-templates-caution"),)
        case QrBox(holds="number"):
            return (Message("bench-templates-code-number"),)
        case QrBox():
            return (Message("bench-templates-code-all"),)
        case Code128Box():
            return (Message("bench-templates-bars"),)
        case SignBox():
            return (Message("bench-templates-sign"),)
    return ()


def _captions(*names: str) -> tuple[Message, ...]:
    return tuple(fields.FIELDS[name].caption for name in names)


def _symbols(page: Page) -> tuple[Message, ...]:
    """Each kind of QR code on the label: level, module, and how many."""
    codes = [placed for placed in page.symbols if placed.symbol.kind == "qr"]
    kinds = dict.fromkeys((placed.symbol.level, round(placed.module_mm, 2)) for placed in codes)
    return tuple(
        Message(
            "bench-templates-symbol",
            count=sum((p.symbol.level, round(p.module_mm, 2)) == (level, module) for p in codes),
            level=level,
            module=module,
        )
        for level, module in kinds
    )
