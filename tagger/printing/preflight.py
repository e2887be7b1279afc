"""Will it scan? What is known before printing, each finding with what to do about it."""

from __future__ import annotations

import math
from contextlib import suppress
from dataclasses import dataclass, field
from typing import Literal

import numpy as np

from tagger.code import link, payload
from tagger.drawing import Text
from tagger.errors import LinkError, Problem, Speaks, SymbolError, TemplateError
from tagger.messages import Message, Value, angle, english
from tagger.printing import around, curvature, raster, shrunk
from tagger.printing.boxes import Placed
from tagger.printing.content import Tag
from tagger.printing.grade import LETTERS, Grade, grades
from tagger.printing.kinds import LEGIBLE_MM, LONGEST_LINK, Kinds
from tagger.printing.layout import Page, lay_out
from tagger.printing.readers import Grey, grey, qr_readers
from tagger.printing.sizing import LEAST_DOTS, dot_mm
from tagger.printing.template import Sleeve, Template

LEAST_MODULE_MM = 0.35  # DIN SPEC 91406, the forerunner of IEC 61406-1
REACH = 10  # a symbol reads from ten times its side; common practice, no source
SHORTEST_REACH_MM = 150  # a phone held close; common practice, no source

Severity = Literal["refuse", "warn", "note"]


@dataclass(frozen=True)
class Finding:
    """``refuse``: do not print it; ``warn``: think; ``note``: good to know. ``code`` is stable."""

    severity: Severity
    code: str
    message: Message

    @property
    def text(self) -> str:
        """What was found, in English: for logs and tests."""
        return english(self.message)

    @property
    def mend(self) -> str:
        """What to do about it, in English: for logs and tests."""
        return english(self.message, "mend")

    def as_dict(self, t: Speaks | None = None) -> dict[str, object]:
        """As plain JSON values, its sentences in the language of ``t`` (default English)."""
        said = (
            {"text": t(self.message), "mend": t.mend(self.message)}
            if t
            else {"text": self.text, "mend": self.mend}
        )
        return {"severity": self.severity, "code": self.code, **self.message.as_json(), **said}


@dataclass(frozen=True)
class Preflight:
    """The answer. The figures are those of the smallest QR symbol on the label."""

    ok: bool
    module_mm: float
    dots_per_module: int
    version: int
    level: str
    payload_bytes: int
    side_mm: float
    symbols: int
    grade: str
    findings: tuple[Finding, ...] = field(default=())

    def as_dict(self, t: Speaks | None = None) -> dict[str, object]:
        """The shape of ``tagger preflight --json``, its sentences in the language of ``t``."""
        return {
            "ok": self.ok,
            "module_mm": round(self.module_mm, 3),
            "dots_per_module": self.dots_per_module,
            "version": self.version,
            "level": self.level,
            "payload_bytes": self.payload_bytes,
            "side_mm": round(self.side_mm, 1),
            "symbols": self.symbols,
            "grade": self.grade,
            "findings": [finding.as_dict(t) for finding in self.findings],
        }


def preflight(tag: Tag, template: Template, hose_od_mm: float | None = None, dpi: int = 203) -> Preflight:
    """Everything that can be known of this label on a printer of ``dpi``.

    ``hose_od_mm`` is the hose's outside diameter, for labels that bend with it; without it the
    assessment's is taken. Raises TemplateError where the label cannot be laid out at all.
    """
    page = lay_out(tag, template, dpi)
    codes = [placed for placed in page.symbols if placed.symbol.kind == "qr"]
    if not codes:
        raise TemplateError(Problem(template.file, None, Message("printing-flight-no-code")))
    smallest = min(codes, key=lambda placed: placed.module_mm)
    dots = grey(raster.draw(page.drawing, dpi))
    findings: list[Finding] = []
    findings += _modules(smallest, page)
    findings += _level(smallest)
    findings += _quiet_zones(page, dots)
    findings += _link(tag)
    findings += _signature(tag, codes)
    findings += _reach(codes)
    od = hose_od_mm or (tag.assessment.hose_od_mm if tag.assessment else None)
    findings += _text(page, shrunk.ratio(template.sleeve, od) if template.sleeve and od else 1.0)
    letter, read = _read(codes, dots, dpi)
    findings += read
    findings += _on_the_hose(codes, od, template)
    if template.sleeve:
        findings += _in_the_sleeve(codes, od, template.sleeve, dots, dpi)
    return Preflight(
        ok=not any(finding.severity == "refuse" for finding in findings),
        module_mm=smallest.module_mm,
        dots_per_module=smallest.dots,
        version=smallest.symbol.version,
        level=smallest.symbol.level,
        payload_bytes=_payload_bytes(tag),
        side_mm=smallest.symbol.size * smallest.module_mm,
        symbols=len(codes),
        grade=letter,
        findings=tuple(findings),
    )


def refuse(kinds: Kinds, template: Template, dpi: int) -> None:
    """Raises SymbolError where the labels of a run would not scan: the worst of each kind is looked at."""
    for tag in kinds.worst(bends=template.bends):
        if refusal := refused(preflight(tag, template, dpi=dpi), template.name):
            raise refusal


def refused(result: Preflight, name: str) -> SymbolError | None:
    """The findings that forbid printing as one error; None where there are none."""
    problems = [
        Problem(f"{name}: {one.code}", None, one.message)
        for one in result.findings
        if one.severity == "refuse"
    ]
    return SymbolError(problems) if problems else None


def _payload_bytes(tag: Tag) -> int:
    try:
        digits = link.parse(tag.link).digits
    except LinkError:
        digits = None
    return payload.byte_length(digits) if digits else 0


def _modules(placed: Placed, page: Page) -> list[Finding]:
    found = []
    if placed.dots < LEAST_DOTS:
        message = Message("printing-flight-dots", dots=placed.dots, least=LEAST_DOTS)
        found.append(Finding("refuse", "dots", message))
    if placed.module_mm < LEAST_MODULE_MM:
        module = math.floor(placed.module_mm * 1000) / 1000
        found.append(
            Finding("warn", "module", Message("printing-flight-module", module=module, least=LEAST_MODULE_MM))
        )
    dot = dot_mm(page.dpi)
    for one in page.symbols:
        off = max(abs(side / dot - round(side / dot)) for side in (one.x, one.y, one.module_mm))
        if off > 0.01:
            found.append(Finding("refuse", "grid", Message("printing-flight-grid", kind=one.symbol.kind)))
    return found


def _level(placed: Placed) -> list[Finding]:
    if placed.symbol.level in "QH":
        return []
    return [Finding("warn", "level", Message("printing-flight-level", level=placed.symbol.level))]


def _quiet_zones(page: Page, dots: Grey) -> list[Finding]:
    """The quiet zone as printed, dot by dot: nothing dark may stand in it, nor may the label end."""
    found = []
    dot, dark = dot_mm(page.dpi), dots < 128
    for placed in page.symbols:
        if placed.symbol.kind != "qr":  # bars keep theirs inside their own box
            continue
        quiet = placed.symbol.quiet * placed.dots
        across = placed.symbol.size * placed.dots
        left, top = round(placed.x / dot), round(placed.y / dot)
        inside = left >= quiet and top >= quiet
        inside = inside and left + across + quiet <= dots.shape[1] and top + across + quiet <= dots.shape[0]
        zone = dark[top - quiet : top + across + quiet, left - quiet : left + across + quiet]
        own = dark[top : top + across, left : left + across]
        if not inside or zone.sum() != own.sum():
            message = Message("printing-flight-quiet-zone", modules=placed.symbol.quiet)
            found.append(Finding("refuse", "quiet zone", message))
    return found


def _link(tag: Tag) -> list[Finding]:
    if len(tag.link) <= LONGEST_LINK:
        return []
    message = Message("printing-flight-link", length=len(tag.link), most=LONGEST_LINK)
    return [Finding("warn", "link", message)]


def _signature(tag: Tag, codes: list[Placed]) -> list[Finding]:
    """Whether the label of a shop that signs carries its signature, where it carries the specification at all."""
    texts = {placed.symbol.text for placed in codes}
    if not tag.signed_link or not texts & {tag.signed_link, tag.link}:
        return []
    if tag.signed_link in texts:
        return [Finding("note", "signature", Message("printing-flight-signed"))]
    return [Finding("warn", "signature", Message("printing-flight-unsigned"))]


def _reach(codes: list[Placed]) -> list[Finding]:
    largest = max(placed.symbol.size * placed.module_mm for placed in codes)
    reach = largest * REACH
    if reach < SHORTEST_REACH_MM:
        return [Finding("warn", "reach", Message("printing-flight-reach-short", cm=round(reach / 10)))]
    return [Finding("note", "reach", Message("printing-flight-reach", cm=round(reach / 10)))]


def _text(page: Page, shrinks_to: float) -> list[Finding]:
    sizes = [item.size * shrinks_to for item in page.drawing.items if isinstance(item, Text)]
    if not sizes or min(sizes) >= LEGIBLE_MM - 0.01:
        return []
    message = Message("printing-flight-text", size=round(min(sizes), 1), least=LEGIBLE_MM)
    return [Finding("warn", "text", message)]


def _read(codes: list[Placed], dots: Grey, dpi: int) -> tuple[str, list[Finding]]:
    """The letter grade, and what the readers on this machine say of the very dots to be printed.

    Codes repeated round a hose are read once: the others must be the same, dot by dot.
    """
    alike: dict[bytes, Grey] = {}
    for placed in codes:
        cut = _cut(placed, dots, dpi)
        alike.setdefault(cut.tobytes(), cut)
    whole = np.pad(dots, 24, constant_values=255)
    repeated = len(alike) < len(codes)
    pictures = [np.pad(cut, 24, constant_values=255) for cut in alike.values()] if repeated else [whole]
    found = []
    readers, texts, expected = qr_readers(), {placed.symbol.text for placed in codes}, len(alike)
    failed = [name for name, read in readers.items() if not all(texts & read(one) for one in pictures)]
    enough = len(readers) - len(failed) >= min(2, len(readers))
    if (
        enough and not repeated
    ):  # the odd one out may have lost its way on the label: it gets each code by itself, as a phone held close
        alone = [np.pad(cut, 24, constant_values=255) for cut in alike.values()]
        failed = [name for name in failed if not any(texts & readers[name](one) for one in alone)]
    if failed:
        message = Message("printing-flight-readers", failed=tuple(failed), count=len(readers))
        found.append(Finding("warn" if enough else "refuse", "decode", message))
    results: list[Grade] = []
    for picture in pictures:
        with suppress(SymbolError):
            results += grades(picture)
    if len(results) < expected:
        message = Message("printing-flight-codes", read=len(results), count=expected)
        found.append(Finding("refuse", "decode", message))
    letter = min((one.grade for one in results), default=0)
    shown = LETTERS[letter]
    if letter < 3:
        message = Message("printing-flight-grade", grade=shown)
        found.append(Finding("refuse" if letter < 2 else "warn", "grade", message))
    found.append(Finding("note", "contrast", Message("printing-flight-contrast")))
    return shown, found


def _on_the_hose(codes: list[Placed], od: float | None, template: Template) -> list[Finding]:
    """What becomes of the codes where the label bends with the hose."""
    if not (template.wraps or template.flag or template.on_hose):
        return []
    if od is None:
        return [Finding("warn", "curvature", Message("printing-flight-wrap-unknown"))]
    if template.flag:
        return _flag(codes, od, template)
    if template.on_hose:
        return _lying(codes, od, template)
    return [*_wrapped(codes, od, template), *_faces(codes, od, template), *_hidden(od, template)]


def _bent(codes: list[Placed], od: float) -> tuple[dict[str, Value], float, float]:
    """The narrowest code's figures for a message, its side, and the widest that reads round this hose."""
    placed = min(codes, key=lambda one: one.symbol.size * one.module_mm)
    symbol, side = placed.symbol, placed.symbol.size * placed.module_mm
    widest = curvature.widest_mm(symbol.version, symbol.level, float(od))
    thinnest = curvature.thinnest_hose_mm(symbol.version, symbol.level, round(side, 1))
    figures: dict[str, Value] = {
        "od": round(od, 1),
        "side": round(side, 1),
        "share": round(100 * curvature.edge_foreshortening(side, od)),
        "widest": math.floor(widest * 10) / 10,
        "thinnest": math.ceil(thinnest),
    }
    return figures, side, widest


def _cut(placed: Placed, dots: Grey, dpi: int) -> Grey:
    """A code's own dots, with its quiet zone."""
    quiet, across = placed.symbol.quiet * placed.dots, placed.symbol.full_size * placed.dots
    left, top = round(placed.x / dot_mm(dpi)) - quiet, round(placed.y / dot_mm(dpi)) - quiet
    return dots[max(0, top) : top + across, max(0, left) : left + across].copy()


def _wrapped(codes: list[Placed], od: float, template: Template) -> list[Finding]:
    figures, side, widest = _bent(codes, od)
    scans = figures.pop("thinnest")
    assert isinstance(scans, int)
    if side > widest:  # where one code scans, not every side shows one yet
        thinnest = around.thinnest_served_mm(codes, template, scans) or scans
        message = Message("printing-flight-wrap-thin", **figures, thinnest=thinnest)
        return [Finding("refuse", "curvature", message)]
    if side > 0.9 * widest:
        return [Finding("warn", "curvature", Message("printing-flight-wrap-near", **figures))]
    return [Finding("note", "curvature", Message("printing-flight-wrap", **figures))]


def _faces(codes: list[Placed], od: float, template: Template) -> list[Finding]:
    """From how many sides of the hose a code reads, and how wide the widest gap is: the worst side counts."""
    found = around.sides(codes, od, template)
    if not found.gaps:
        return [Finding("note", "facing", Message("printing-flight-facing", od=round(od, 1)))]
    widest = max(wide for _, wide in found.gaps)
    figures: dict[str, Value] = {
        "od": round(od, 1),
        "share": math.floor(100 * found.share),
        "gap": angle(widest),
    }
    if around.serves(found):
        return [Finding("warn", "facing", Message("printing-flight-facing-end", **figures))]
    return [
        Finding("refuse", "facing", Message("printing-flight-facing-away", **figures, label=template.name))
    ]


def _hidden(od: float, template: Template) -> list[Finding]:
    """Text that the overlap hides and that stands nowhere else."""
    lost = around.lost_boxes(template, od)
    if not lost:
        return []
    message = Message(
        "printing-flight-hidden",
        od=round(od, 1),
        boxes=tuple(f"{index + 1} ({template.box[index].kind})" for index in lost),
        thinnest=around.thinnest_whole_mm(template),
    )
    return [Finding("refuse", "hidden", message)]


def _flag(codes: list[Placed], od: float, template: Template) -> list[Finding]:
    """A flag's wings are shortened by what a thick hose takes."""
    thickest = math.floor(around.thickest_flag_mm(template, codes))
    if od > thickest:
        message = Message("printing-flight-flag-thick", od=round(od, 1), thickest=thickest)
        return [Finding("refuse", "curvature", message)]
    return [Finding("note", "curvature", Message("printing-flight-flag", thickest=thickest))]


def _lying(codes: list[Placed], od: float, template: Template) -> list[Finding]:
    """A label in a sleeve, or stuck on the hose: it bends, and its codes are read from straight above."""
    figures, side, widest = _bent(codes, od)
    if side <= widest:
        return [Finding("note", "curvature", Message("printing-flight-lying", od=round(od, 1)))]
    told: dict[str, Value] = {key: figures[key] for key in ("od", "side", "widest", "thinnest")}
    if template.on_hose == "always":
        return [Finding("refuse", "curvature", Message("printing-flight-sleeve-thin", **told))]
    return [Finding("warn", "curvature", Message("printing-flight-stuck-thin", **told))]


def _in_the_sleeve(
    codes: list[Placed], od: float | None, sleeve: Sleeve, dots: Grey, dpi: int
) -> list[Finding]:
    """Whether the sleeve goes over the hose and holds on it, and whether its codes read there, squeezed and bent."""
    sizes: dict[str, Value] = {"supplied": sleeve.supplied_mm, "recovered": sleeve.recovered_mm}
    if od is None:
        return [Finding("refuse", "sleeve", Message("printing-flight-shrink-unknown", **sizes))]
    if not sleeve.recovered_mm < od < sleeve.supplied_mm:
        fit = "loose" if od <= sleeve.recovered_mm else "tight"
        message = Message("printing-flight-shrink-fit", fit=fit, od=round(od, 1), **sizes)
        return [Finding("refuse", "sleeve", message)]
    ratio = shrunk.ratio(sleeve, od)
    placed = min(codes, key=lambda one: one.module_mm)
    narrowest = math.floor(placed.module_mm * ratio * 1000) / 1000
    told: dict[str, Value] = {"od": round(od, 1), "share": round(100 * ratio)}
    message = Message("printing-flight-shrink", **told, **sizes, source=sleeve.named)
    found = [Finding("warn" if sleeve.assumed else "note", "sleeve", message)]
    if narrowest < LEAST_MODULE_MM:
        message = Message("printing-flight-shrink-module", **told, module=narrowest, least=LEAST_MODULE_MM)
        found.append(Finding("warn", "module", message))
    if (unread := _unread_in_the_sleeve(codes, od, sleeve, dots, dpi)) is not None:
        found.append(Finding("refuse", "curvature", unread))
    elif any(
        _side_and_widest(one, od, ratio)[0] > 0.9 * _side_and_widest(one, od, ratio)[1] for one in codes
    ):
        found.append(Finding("warn", "curvature", Message("printing-flight-shrink-near", od=round(od, 1))))
    return found


def _unread_in_the_sleeve(
    codes: list[Placed], od: float, sleeve: Sleeve, dots: Grey, dpi: int
) -> Message | None:
    """What is wrong with the first code that does not read on the hose; None where all of them do."""
    tried: set[tuple[bytes, int, int]] = set()
    for placed in codes:
        look = (placed.symbol.modules.tobytes(), placed.dots, placed.turn % 180)  # upside down it reads alike
        if look in tried:
            continue
        tried.add(look)
        cut = _cut(placed, dots, dpi)
        failed = shrunk.unread_by(cut, placed.symbol.text, sleeve, dot_mm(dpi), od)
        side, widest = _side_and_widest(placed, od, shrunk.ratio(sleeve, od))
        if side > widest or failed:
            figures: dict[str, Value] = {
                "od": round(od, 1),
                "side": math.ceil(side * 10) / 10,
                "widest": math.floor(widest * 10) / 10,
            }
            return Message(
                "printing-flight-shrink-unread", **figures, unread=len(failed), failed=tuple(failed)
            )
    return None


def _side_and_widest(placed: Placed, od: float, ratio: float) -> tuple[float, float]:
    """How wide a code is on the hose that shrinking leaves ``ratio`` of, and the widest that reads there, mm."""
    side = placed.symbol.size * placed.module_mm * ratio
    return side, curvature.widest_mm(placed.symbol.version, placed.symbol.level, float(od))
