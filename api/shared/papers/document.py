"""Pages of running text as PDF: what the certificate and the letters share.

reportlab's platypus sets them: text and tables that flow, unlike a tag.
"""

from __future__ import annotations

import io
from collections.abc import Sequence
from html import escape
from typing import Any

from reportlab.lib import colors
from reportlab.lib.pagesizes import A4
from reportlab.lib.styles import ParagraphStyle
from reportlab.lib.units import mm
from reportlab.pdfbase import pdfmetrics
from reportlab.pdfbase.ttfonts import TTFont
from reportlab.platypus import Paragraph, SimpleDocTemplate, Spacer, Table, TableStyle

from api.settings import Settings
from tagger.printing import fonts

_PLAIN, _BOLD = "Paper", "Paper-Bold"


def to_pdf(story: Sequence[Any], *, title: str, settings: Settings) -> bytes:
    """The story on A4."""
    out = io.BytesIO()
    SimpleDocTemplate(
        out,
        pagesize=A4,
        leftMargin=20 * mm,
        rightMargin=20 * mm,
        topMargin=18 * mm,
        bottomMargin=18 * mm,
        title=title,
        author=settings.shop_name,
    ).build(list(story))
    return out.getvalue()


def head(settings: Settings) -> list[Any]:
    """The letterhead: name, address, phone, email."""
    lines = (settings.shop_address, settings.shop_phone, settings.shop_email)
    return [text(settings.shop_name, 12, bold=True), *(text(line, 9) for line in lines if line), gap(8)]


def text(words: str, size: float = 10, *, bold: bool = False) -> Paragraph:
    _register_fonts()
    style = ParagraphStyle("p", fontName=_BOLD if bold else _PLAIN, fontSize=size, leading=size * 1.35)
    return Paragraph(escape(words), style)


def gap(millimetres: float) -> Spacer:
    return Spacer(1, millimetres * mm)


def table(rows: Sequence[Sequence[str]], widths: Sequence[float], *, heading: bool = False) -> Table:
    """Cells of text; ``widths`` in mm; the first row repeats on every page when it is a heading."""
    cells = [[text(cell, 9, bold=heading and not place) for cell in row] for place, row in enumerate(rows)]
    made = Table(cells, colWidths=[width * mm for width in widths], repeatRows=int(heading))
    made.setStyle(
        TableStyle([("LINEBELOW", (0, 0), (-1, -1), 0.4, colors.grey), ("VALIGN", (0, 0), (-1, -1), "TOP")])
    )
    return made


def _register_fonts() -> None:
    if _PLAIN not in pdfmetrics.getRegisteredFontNames():
        folder = fonts.__path__[0]
        pdfmetrics.registerFont(TTFont(_PLAIN, f"{folder}/DejaVuSansCondensed.ttf"))
        pdfmetrics.registerFont(TTFont(_BOLD, f"{folder}/DejaVuSansCondensed-Bold.ttf"))
