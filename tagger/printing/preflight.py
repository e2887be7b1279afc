"""Will it scan? What is known before ink is spent, each finding with its mend."""

from __future__ import annotations

import math
from contextlib import suppress
from dataclasses import dataclass, field
from itertools import pairwise
from typing import Literal

import numpy as np

from tagger.code import link, payload
from tagger.drawing import Text
from tagger.errors import LinkError, Problem, SymbolError, TemplateError
from tagger.printing import curvature, raster
from tagger.printing.boxes import Placed
from tagger.printing.content import Tag
from tagger.printing.grade import Grade, grades
from tagger.printing.layout import Page, lay_out
from tagger.printing.readers import Grey, grey, qr_readers
from tagger.printing.sizing import LEAST_DOTS, dot_mm
from tagger.printing.template import Template

LEAST_MODULE_MM = 0.35  # DIN SPEC 91406, the forerunner of IEC 61406-1
LONGEST_LINK = 255  # characters; IEC 61406-1 as remembered, not confirmed
REACH = 10  # a symbol reads from ten times its side; common practice, no source
SHORTEST_REACH_MM = 150  # a phone held close; common practice, no source
WIDEST_GAP = 60  # degrees a symbol may be turned away; a step aside brings it round (common practice)
LEGIBLE_MM = 1.7  # em of the smallest text: about 5 pt

Severity = Literal["refuse", "warn", "note"]


@dataclass(frozen=True)
class Finding:
    """``refuse``: do not print it; ``warn``: think; ``note``: good to know."""

    severity: Severity
    code: str
    text: str
    mend: str = ""

    def as_dict(self) -> dict[str, str]:
        return {"severity": self.severity, "code": self.code, "text": self.text, "mend": self.mend}


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

    def as_dict(self) -> dict[str, object]:
        """The shape of ``tagger preflight --json``."""
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
            "findings": [finding.as_dict() for finding in self.findings],
        }


def preflight(tag: Tag, template: Template, hose_od_mm: float | None = None, dpi: int = 203) -> Preflight:
    """Everything that can be known of this label on a printer of ``dpi``.

    ``hose_od_mm`` is the hose's outside diameter, for labels that go round it; without it the
    assessment's is taken. Raises TemplateError where the label cannot be laid out at all.
    """
    page = lay_out(tag, template, dpi)
    codes = [placed for placed in page.symbols if placed.symbol.kind == "qr"]
    if not codes:
        mend = 'Add a box with kind = "qr".'
        raise TemplateError(
            Problem(template.file, None, "has no QR code, so nothing on it can be scanned", mend)
        )
    smallest = min(codes, key=lambda placed: placed.module_mm)
    dots = grey(raster.draw(page.drawing, dpi))
    findings: list[Finding] = []
    findings += _modules(smallest, page)
    findings += _level(smallest)
    findings += _quiet_zones(page, dots)
    findings += _link(tag)
    findings += _reach(codes)
    findings += _text(page)
    letter, read = _read(tag, dots, len(codes))
    findings += read
    if template.wraps:
        od = hose_od_mm or (tag.assessment.hose_od_mm if tag.assessment else None)
        findings += _wrapped(codes, od, template)
        findings += _faces(codes, od, template) if od else []
    return Preflight(
        ok=not any(finding.severity == "refuse" for finding in findings),
        module_mm=smallest.module_mm, dots_per_module=smallest.dots,
        version=smallest.symbol.version, level=smallest.symbol.level,
        payload_bytes=_payload_bytes(tag), side_mm=smallest.symbol.size * smallest.module_mm,
        symbols=len(codes), grade=letter, findings=tuple(findings),
    )  # fmt: skip


def refused(result: Preflight, name: str) -> SymbolError | None:
    """The findings that forbid printing as one error; None where there are none."""
    problems = [
        Problem(f"{name}: {one.code}", None, one.text, one.mend)
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
        text = f"A module is {placed.dots} printer dots wide; under {LEAST_DOTS} heat and ink that spread close it."
        found.append(Finding("refuse", "dots", text, "Give the QR code a larger box, or print at more dpi."))
    if placed.module_mm < LEAST_MODULE_MM:
        text = (
            f"A module is {placed.module_mm:.3f} mm; DIN SPEC 91406 asks for at least {LEAST_MODULE_MM} mm."
        )
        found.append(Finding("warn", "module", text, "Give the QR code a larger box."))
    dot = dot_mm(page.dpi)
    for one in page.symbols:
        off = max(abs(side / dot - round(side / dot)) for side in (one.x, one.y, one.module_mm))
        if off > 0.01:
            text = f"The {one.symbol.kind} symbol does not stand on whole printer dots."
            found.append(Finding("refuse", "grid", text, "Report this: the layout should have seen to it."))
    return found


def _level(placed: Placed) -> list[Finding]:
    if placed.symbol.level in "QH":
        return []
    text = f"Error correction is level {placed.symbol.level}; DIN SPEC 91406 prefers Q, and H outlives more dirt."
    return [Finding("warn", "level", text, "Give the QR code a larger box.")]


def _quiet_zones(page: Page, dots: Grey) -> list[Finding]:
    """The quiet zone as printed, dot by dot: nothing dark may stand in it, nor may the label end."""
    found = []
    dot = dot_mm(page.dpi)
    for placed in page.symbols:
        if placed.symbol.kind != "qr":  # bars keep theirs inside their own box
            continue
        quiet = placed.symbol.quiet * placed.dots
        across = placed.symbol.size * placed.dots
        left, top = round(placed.x / dot), round(placed.y / dot)
        inside = left >= quiet and top >= quiet
        inside = inside and left + across + quiet <= dots.shape[1] and top + across + quiet <= dots.shape[0]
        zone = dots[max(0, top - quiet) : top + across + quiet, max(0, left - quiet) : left + across + quiet]
        own = dots[top : top + across, left : left + across]
        if not inside or int((zone < 128).sum()) != int((own < 128).sum()):
            text = f"The quiet zone of {placed.symbol.quiet} modules round the QR code is not free."
            mend = "Move what stands in it, or move the QR code away from the label's edge."
            found.append(Finding("refuse", "quiet zone", text, mend))
    return found


def _link(tag: Tag) -> list[Finding]:
    if len(tag.link) <= LONGEST_LINK:
        return []
    text = f"The link has {len(tag.link)} characters; identification links keep to {LONGEST_LINK}."
    return [Finding("warn", "link", text, "Use a shorter web address.")]


def _reach(codes: list[Placed]) -> list[Finding]:
    largest = max(placed.symbol.size * placed.module_mm for placed in codes)
    reach = largest * REACH
    text = f"Reads from about {reach / 10:.0f} cm (ten times the symbol's side; common practice, no source)."
    if reach < SHORTEST_REACH_MM:
        return [
            Finding("warn", "reach", text, "Use a larger QR code, or expect to hold the phone very close.")
        ]
    return [Finding("note", "reach", text)]


def _text(page: Page) -> list[Finding]:
    sizes = [item.size for item in page.drawing.items if isinstance(item, Text)]
    if not sizes or min(sizes) >= LEGIBLE_MM - 0.01:
        return []
    text = f"The smallest text is {min(sizes):.1f} mm high; under {LEGIBLE_MM} mm it is hard to read."
    return [Finding("warn", "text", text, "Make its box larger.")]


def _read(tag: Tag, dots: Grey, expected: int) -> tuple[str, list[Finding]]:
    """The letter grade, and what the readers on this machine say of the very dots to be printed."""
    framed = np.pad(dots, 24, constant_values=255)
    found = []
    readers = qr_readers()
    failed = [name for name, read in readers.items() if tag.link not in read(framed)]
    if failed:
        text = f"{', '.join(failed)} of {len(readers)} readers here can't read the QR code from the dots to be printed."
        enough = len(readers) - len(failed) >= min(2, len(readers))
        found.append(
            Finding("warn" if enough else "refuse", "decode", text, "Give the QR code a larger box.")
        )
    results: list[Grade] = []
    with suppress(SymbolError):
        results = grades(framed)
    if len(results) < expected:
        text = f"{len(results)} of {expected} QR codes on the label can be read."
        found.append(Finding("refuse", "decode", text, "Move the others further apart, or make them larger."))
    letter = min((one.grade for one in results), default=0)
    shown = "FDCBA"[letter]
    if letter < 3:
        text = f"The printed dots grade {shown} by the parameters of ISO/IEC 15415."
        found.append(Finding("refuse" if letter < 2 else "warn", "grade", text, "Use larger modules."))
    contrast = (
        "Contrast is the stock's: print black on white or yellow; dark or clear stock needs a white ground."
    )
    found.append(Finding("note", "contrast", contrast))
    return shown, found


def _wrapped(codes: list[Placed], od: float | None, template: Template) -> list[Finding]:
    if od is None:
        text = "It goes round the hose, but the hose's outside diameter is not known."
        return [
            Finding("warn", "curvature", text, "Measure it and give --hose-od; or use a hang tag or a flag.")
        ]
    placed = min(codes, key=lambda one: one.symbol.size * one.module_mm)
    symbol, side = placed.symbol, placed.symbol.size * placed.module_mm
    widest = curvature.widest_mm(symbol.version, symbol.level, float(od))
    edge = curvature.edge_foreshortening(side, od)
    text = (
        f"Round a hose of {od:.1f} mm the symbol of {side:.1f} mm shows its outer modules at {edge:.0%} of their "
        f"width; up to {widest:.1f} mm reads."
    )
    if side > widest:
        thinnest = curvature.thinnest_hose_mm(symbol.version, symbol.level, round(side, 1))
        mend = f"Use a flag label or a hang tag; this label is for hoses from {thinnest:.0f} mm."
        return [Finding("refuse", "curvature", text, mend)]
    if side > 0.9 * widest:
        return [
            Finding("warn", "curvature", text, "It is near the limit: a flag label or a hang tag is surer.")
        ]
    return [Finding("note", "curvature", text)]


def _faces(codes: list[Placed], od: float, template: Template) -> list[Finding]:
    """How far from the viewer's side of the hose the nearest symbol can be."""
    axis = 0 if template.wraps == "across" else 1
    half = codes[0].symbol.size * codes[0].module_mm / 2
    around = sorted({round((placed.x, placed.y)[axis] + half, 2) for placed in codes})
    length = math.pi * od
    shown = [place for place in around if place > around[-1] - length]  # earlier ones lie under the last turn
    gaps = [b - a for a, b in pairwise([*shown, shown[0] + length])]
    off = max(gaps) / 2 / length * 360
    if off <= WIDEST_GAP:
        return [Finding("note", "facing", f"From any side a symbol faces you to within {off:.0f}°.")]
    text = f"From one side of the hose the nearest symbol is turned away by {off:.0f}°."
    return [
        Finding("warn", "facing", text, "Use a label printed further round, or a flag label or hang tag.")
    ]
