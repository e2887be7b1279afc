"""The certificate of a proof test, as one A4 page.

reportlab's platypus sets it: a document of running text and tables, unlike a tag.
"""

from __future__ import annotations

import io
from html import escape
from typing import Any

from reportlab.graphics.barcode.qr import QrCodeWidget
from reportlab.graphics.shapes import Drawing
from reportlab.lib import colors
from reportlab.lib.pagesizes import A4
from reportlab.lib.styles import ParagraphStyle
from reportlab.lib.units import mm
from reportlab.pdfbase import pdfmetrics
from reportlab.pdfbase.ttfonts import TTFont
from reportlab.platypus import Paragraph, SimpleDocTemplate, Spacer, Table, TableStyle

from api.settings import Settings
from tagger import units
from tagger.code import link
from tagger.code import number as tag_number
from tagger.printing import fonts
from tagger.store import Assembly, Event
from tagger.words import Words

_PLAIN, _BOLD = "Certificate", "Certificate-Bold"


def certificate(known: Assembly, test: Event, crimps: Event | None, settings: Settings) -> bytes:
    """The PDF's bytes. Says plainly when the test failed."""
    _register_fonts()
    words, out = Words(settings.language), io.BytesIO()
    number = tag_number.format(known.number)
    passed = bool(test.data["passed"])
    story: list[Any] = [
        _paragraph(settings.shop_name, 12, bold=True),
        *(
            _paragraph(line, 9)
            for line in (settings.shop_address, settings.shop_phone, settings.shop_email)
            if line
        ),
        Spacer(1, 8 * mm),
        _paragraph("Proof test of a hose assembly", 18, bold=True),
        _paragraph(f"Tag {number}: {'passed' if passed else 'FAILED - not to be used'}", 14, bold=True),
        Spacer(1, 4 * mm),
        _table([("Tag number", number), *_of_the_assembly(known, words)]),
        Spacer(1, 5 * mm),
        _paragraph("The test", 12, bold=True),
        _table(_of_the_test(test)),
    ]
    if crimps is not None:
        story += [
            Spacer(1, 5 * mm),
            _paragraph("Crimp diameters", 12, bold=True),
            _table(_of_the_crimps(crimps)),
        ]
    story += [
        Spacer(1, 5 * mm),
        _code(link.build(settings.base_url, known.number, known.digits)),
        _paragraph(
            "This page states what was recorded of one test of this assembly on that day. It says nothing of the "
            "assembly's state later: inspect it before use. The fitting maker's and hose maker's data come first.",
            9,
        ),
    ]
    document = SimpleDocTemplate(
        out, pagesize=A4, leftMargin=20 * mm, rightMargin=20 * mm, topMargin=18 * mm, bottomMargin=18 * mm,
        title=f"Proof test of {number}", author=settings.shop_name,
    )  # fmt: skip
    document.build(story)
    return out.getvalue()


def _of_the_assembly(known: Assembly, words: Words) -> list[tuple[str, str]]:
    spec = known.spec
    rows = [
        ("Hose", words.hose(spec.hose) + (f", lot {spec.hose.lot}" if spec.hose.lot else "")),
        ("End A", words.end(spec.end_a) + (f", lot {spec.end_a.lot}" if spec.end_a.lot else "")),
        ("End B", words.end(spec.end_b) + (f", lot {spec.end_b.lot}" if spec.end_b.lot else "")),
        ("Length", words.length(spec)),
        ("Clocking", words.clocking(spec) or ""),
        ("Working pressure", words.pressure(known.content.working_pressure_bar)),
        ("Source of it", known.assessment.working_pressure.source),
        ("Built on", known.built_on.isoformat() if known.built_on else ""),
        ("Customer", known.customer or ""),
        ("Machine, position", ", ".join(part for part in (known.machine, known.position) if part)),
    ]
    return [(name, text) for name, text in rows if text]


def _of_the_test(test: Event) -> list[tuple[str, str]]:
    data = test.data
    called = data.get("called_for_bar")
    rows = [
        ("Result", "passed" if data["passed"] else "failed"),
        ("Pressure", units.show_pressure(data["pressure_bar"])),
        (
            "Called for",
            units.show_pressure(called) if called else "not known: no proof pressure in the record",
        ),
        ("Held for", f"{data['hold_s']} s"),
        ("Medium", data["medium"]),
        ("Tested by", data["tester"]),
        ("Recorded", f"{test.at:%Y-%m-%d %H:%M} UTC"),
        ("Note", data.get("note", "")),
    ]
    return [(name, text) for name, text in rows if text]


def _of_the_crimps(crimps: Event) -> list[tuple[str, str]]:
    return [
        (f"End {c['end'].upper()}", f"{c['measured_mm']:g} mm, band {c['low_mm']:g} to {c['high_mm']:g} mm "
         f"({c['shell']}; {c['source']}): {'in its band' if c['holds'] else 'OUT OF ITS BAND'}")
        for c in crimps.data["crimps"]
    ]  # fmt: skip


def _paragraph(text: str, size: float, *, bold: bool = False) -> Paragraph:
    style = ParagraphStyle("p", fontName=_BOLD if bold else _PLAIN, fontSize=size, leading=size * 1.35)
    return Paragraph(escape(text), style)


def _table(rows: list[tuple[str, str]]) -> Table:
    cells = [[_paragraph(name, 10), _paragraph(text, 10, bold=name == "Result")] for name, text in rows]
    table = Table(cells, colWidths=[42 * mm, 128 * mm])
    table.setStyle(
        TableStyle([("LINEBELOW", (0, 0), (-1, -1), 0.4, colors.grey), ("VALIGN", (0, 0), (-1, -1), "TOP")])
    )
    return table


def _code(text: str) -> Drawing:
    widget = QrCodeWidget(text, barLevel="M", barWidth=26 * mm, barHeight=26 * mm, barBorder=4)
    drawing = Drawing(26 * mm, 26 * mm)
    drawing.add(widget)
    return drawing


def _register_fonts() -> None:
    if _PLAIN not in pdfmetrics.getRegisteredFontNames():
        folder = fonts.__path__[0]
        pdfmetrics.registerFont(TTFont(_PLAIN, f"{folder}/DejaVuSansCondensed.ttf"))
        pdfmetrics.registerFont(TTFont(_BOLD, f"{folder}/DejaVuSansCondensed-Bold.ttf"))
